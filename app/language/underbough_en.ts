<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>CautionStrip</name>
    <message numerus="yes">
        <source>All %n cautions</source>
        <translation>
            <numerusform>The caution</numerusform>
            <numerusform>All %n cautions</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>GardenFile</name>
    <message numerus="yes">
        <source>%1 can&apos;t be used. %2, and %n more.</source>
        <translation>
            <numerusform>%1 can&apos;t be used. %2, and %n more.</numerusform>
            <numerusform>%1 can&apos;t be used. %2, and %n more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was saved, but %n photos could not be found and are not in it.</source>
        <translation>
            <numerusform>%1 was saved, but %n photo could not be found and is not in it.</numerusform>
            <numerusform>%1 was saved, but %n photos could not be found and are not in it.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PaperSheet</name>
    <message numerus="yes">
        <source>%n pages: %1</source>
        <translation>
            <numerusform>%n page: %1</numerusform>
            <numerusform>%n pages: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>app::PlanViewModel</name>
    <message numerus="yes">
        <source>Plan of %1, north up: %n trees.</source>
        <translation>
            <numerusform>Plan of %1, north up: %n tree.</numerusform>
            <numerusform>Plan of %1, north up: %n trees.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>app::RoundViewModel</name>
    <message numerus="yes">
        <source>%1 and its garden, looking %2 from %3 above the ground: %n limbs.</source>
        <translation>
            <numerusform>%1 and its garden, looking %2 from %3 above the ground: %n limb.</numerusform>
            <numerusform>%1 and its garden, looking %2 from %3 above the ground: %n limbs.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>app::SideViewModel</name>
    <message numerus="yes">
        <source>%1 from the side, looking %2: %3 high, %n limbs.</source>
        <translation>
            <numerusform>%1 from the side, looking %2: %3 high, %n limb.</numerusform>
            <numerusform>%1 from the side, looking %2: %3 high, %n limbs.</numerusform>
        </translation>
    </message>
</context>
</TS>
