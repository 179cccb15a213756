<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Examples</name>
    <message>
        <source>Blue Gate, back garden</source>
        <translation>Blue Gate, Garten hinter dem Haus</translation>
    </message>
    <message>
        <source>the old cooking apple</source>
        <translation>der alte Kochapfel</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>Stamm</translation>
    </message>
    <message>
        <source>north scaffold</source>
        <translation>Leitast Nord</translation>
    </message>
    <message>
        <source>east scaffold</source>
        <translation>Leitast Ost</translation>
    </message>
    <message>
        <source>west scaffold</source>
        <translation>Leitast West</translation>
    </message>
    <message>
        <source>path limb</source>
        <translation>Wegast</translation>
    </message>
    <message>
        <source>path limb side</source>
        <translation>Seitenast am Weg</translation>
    </message>
    <message>
        <source>bed limb</source>
        <translation>Beetast</translation>
    </message>
    <message>
        <source>east riser</source>
        <translation>Steilast Ost</translation>
    </message>
    <message>
        <source>north east limb</source>
        <translation>Ast Nordost</translation>
    </message>
    <message>
        <source>north west limb</source>
        <translation>Ast Nordwest</translation>
    </message>
    <message>
        <source>north riser</source>
        <translation>Steilast Nord</translation>
    </message>
    <message>
        <source>west limb</source>
        <translation>Ast West</translation>
    </message>
    <message>
        <source>south west limb</source>
        <translation>Ast Südwest</translation>
    </message>
    <message>
        <source>west riser</source>
        <translation>Steilast West</translation>
    </message>
    <message>
        <source>the gardener</source>
        <translation>selbst</translation>
    </message>
    <message>
        <source>Opened the middle. Left the path limb alone for its crop.</source>
        <translation>Die Mitte geöffnet. Den Wegast seiner Früchte wegen gelassen.</translation>
    </message>
    <message>
        <source>the gardener and a neighbour</source>
        <translation>selbst, mit einem Nachbarn</translation>
    </message>
    <message>
        <source>tomatoes</source>
        <translation>Tomaten</translation>
    </message>
    <message>
        <source>salad bed</source>
        <translation>Salatbeet</translation>
    </message>
    <message>
        <source>path to the gate</source>
        <translation>Weg zum Tor</translation>
    </message>
    <message>
        <source>tool shed</source>
        <translation>Geräteschuppen</translation>
    </message>
    <message>
        <source>glasshouse</source>
        <translation>Gewächshaus</translation>
    </message>
    <message>
        <source>back fence</source>
        <translation>Zaun hinten</translation>
    </message>
    <message>
        <source>Lövbacken, lawn side</source>
        <translation>Lövbacken, Rasenseite</translation>
    </message>
    <message>
        <source>the weeping birch</source>
        <translation>die Hängebirke</translation>
    </message>
    <message>
        <source>stem</source>
        <translation>Stamm</translation>
    </message>
    <message>
        <source>low east limb</source>
        <translation>unterer Ast Ost</translation>
    </message>
    <message>
        <source>low south limb</source>
        <translation>unterer Ast Süd</translation>
    </message>
    <message>
        <source>low west limb</source>
        <translation>unterer Ast West</translation>
    </message>
    <message>
        <source>low north limb</source>
        <translation>unterer Ast Nord</translation>
    </message>
    <message>
        <source>south-east limb</source>
        <translation>Ast Südost</translation>
    </message>
    <message>
        <source>north-east limb</source>
        <translation>Ast Nordost</translation>
    </message>
    <message>
        <source>high east limb</source>
        <translation>oberer Ast Ost</translation>
    </message>
    <message>
        <source>high south limb</source>
        <translation>oberer Ast Süd</translation>
    </message>
    <message>
        <source>high west limb</source>
        <translation>oberer Ast West</translation>
    </message>
    <message>
        <source>high north limb</source>
        <translation>oberer Ast Nord</translation>
    </message>
    <message>
        <source>crown east limb</source>
        <translation>Kronenast Ost</translation>
    </message>
    <message>
        <source>crown south west limb</source>
        <translation>Kronenast Südwest</translation>
    </message>
    <message>
        <source>low east limb fork</source>
        <translation>Gabel am unteren Ast Ost</translation>
    </message>
    <message>
        <source>low south limb fork</source>
        <translation>Gabel am unteren Ast Süd</translation>
    </message>
    <message>
        <source>low west limb fork</source>
        <translation>Gabel am unteren Ast West</translation>
    </message>
    <message>
        <source>south east limb fork</source>
        <translation>Gabel am Ast Südost</translation>
    </message>
    <message>
        <source>north east limb fork</source>
        <translation>Gabel am Ast Nordost</translation>
    </message>
    <message>
        <source>low north limb fork</source>
        <translation>Gabel am unteren Ast Nord</translation>
    </message>
    <message>
        <source>Secateurs only.</source>
        <translation>Nur mit der Gartenschere.</translation>
    </message>
    <message>
        <source>Too wet to cut, only taped.</source>
        <translation>Zu nass zum Schneiden, nur gemessen.</translation>
    </message>
    <message>
        <source>lawn</source>
        <translation>Rasen</translation>
    </message>
    <message>
        <source>azaleas</source>
        <translation>Azaleen</translation>
    </message>
    <message>
        <source>mower strip along the lawn</source>
        <translation>Mähstreifen am Rasen</translation>
    </message>
    <message>
        <source>bench under the curtain</source>
        <translation>Bank unter dem Vorhang</translation>
    </message>
    <message>
        <source>house</source>
        <translation>Haus</translation>
    </message>
    <message>
        <source>pond</source>
        <translation>Teich</translation>
    </message>
    <message>
        <source>paddock fence</source>
        <translation>Koppelzaun</translation>
    </message>
    <message>
        <source>Quarry Bend, front garden</source>
        <translation>Quarry Bend, Vorgarten</translation>
    </message>
    <message>
        <source>the maple by the drive</source>
        <translation>der Ahorn an der Zufahrt</translation>
    </message>
    <message>
        <source>west stem</source>
        <translation>Weststämmling</translation>
    </message>
    <message>
        <source>drive limb</source>
        <translation>Zufahrtsast</translation>
    </message>
    <message>
        <source>drive limb riser</source>
        <translation>Steilast am Zufahrtsast</translation>
    </message>
    <message>
        <source>drive limb spray</source>
        <translation>Zweige am Zufahrtsast</translation>
    </message>
    <message>
        <source>gate limb</source>
        <translation>Torast</translation>
    </message>
    <message>
        <source>gate limb riser</source>
        <translation>Steilast am Torast</translation>
    </message>
    <message>
        <source>gate limb spray</source>
        <translation>Zweige am Torast</translation>
    </message>
    <message>
        <source>no leaves beyond here since last summer</source>
        <translation>von hier an seit letztem Sommer ohne Laub</translation>
    </message>
    <message>
        <source>street limb</source>
        <translation>Straßenast</translation>
    </message>
    <message>
        <source>street limb fork</source>
        <translation>Gabel am Straßenast</translation>
    </message>
    <message>
        <source>lawn limb</source>
        <translation>Rasenast</translation>
    </message>
    <message>
        <source>lawn limb fork</source>
        <translation>Gabel am Rasenast</translation>
    </message>
    <message>
        <source>lawn limb side</source>
        <translation>Seitenast am Rasenast</translation>
    </message>
    <message>
        <source>hedge limb</source>
        <translation>Heckenast</translation>
    </message>
    <message>
        <source>hedge limb fork</source>
        <translation>Gabel am Heckenast</translation>
    </message>
    <message>
        <source>garage limb</source>
        <translation>Garagenast</translation>
    </message>
    <message>
        <source>garage limb fork</source>
        <translation>Gabel am Garagenast</translation>
    </message>
    <message>
        <source>south east limb</source>
        <translation>Ast Südost</translation>
    </message>
    <message>
        <source>north limb</source>
        <translation>Ast Nord</translation>
    </message>
    <message>
        <source>east limb</source>
        <translation>Ast Ost</translation>
    </message>
    <message>
        <source>south limb</source>
        <translation>Ast Süd</translation>
    </message>
    <message>
        <source>a certified arborist</source>
        <translation>ein geprüfter Baumpfleger</translation>
    </message>
    <message>
        <source>The old limb over the garage roof came off at its collar; the drive limb went back to its spray.</source>
        <translation>Der alte Ast über dem Garagendach kam an seinem Astring ab; der Zufahrtsast wurde bis auf seine Zweige zurückgenommen.</translation>
    </message>
    <message>
        <source>Only taped. The fork shows a dark seam of bark on its north side.</source>
        <translation>Nur gemessen. Die Gabel zeigt an ihrer Nordseite eine dunkle Rindennaht.</translation>
    </message>
    <message>
        <source>yew hedge</source>
        <translation>Eibenhecke</translation>
    </message>
    <message>
        <source>hostas at the foot</source>
        <translation>Funkien am Stammfuß</translation>
    </message>
    <message>
        <source>front lawn</source>
        <translation>Rasen vorn</translation>
    </message>
    <message>
        <source>drive</source>
        <translation>Zufahrt</translation>
    </message>
    <message>
        <source>path to the door</source>
        <translation>Weg zur Tür</translation>
    </message>
    <message>
        <source>garage</source>
        <translation>Garage</translation>
    </message>
    <message>
        <source>fence to the neighbours</source>
        <translation>Zaun zu den Nachbarn</translation>
    </message>
    <message>
        <source>line along the street</source>
        <translation>Leitung an der Straße</translation>
    </message>
</context>
</TS>
