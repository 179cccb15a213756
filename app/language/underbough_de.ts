<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AddTreeSheet</name>
    <message>
        <source>Add a tree</source>
        <translation>Baum hinzufügen</translation>
    </message>
    <message>
        <source>Add the tree</source>
        <translation>Baum hinzufügen</translation>
    </message>
    <message>
        <source>Kind of tree, common or Latin name</source>
        <translation>Baumart, deutscher oder lateinischer Name</translation>
    </message>
    <message>
        <source>apple, silver birch, Acer…</source>
        <translation>Apfel, Hänge-Birke, Acer…</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Wie Sie ihn nennen</translation>
    </message>
    <message>
        <source>Known here as %1</source>
        <translation>Hier bekannt als %1</translation>
    </message>
    <message>
        <source>Stem at breast height</source>
        <translation>Stamm in Brusthöhe</translation>
    </message>
    <message>
        <source>Round it</source>
        <translation>Rundum</translation>
    </message>
    <message>
        <source>Through it</source>
        <translation>Hindurch</translation>
    </message>
    <message>
        <source>Girth by tape</source>
        <translation>Umfang mit dem Maßband</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>round the bark</source>
        <translation>um die Rinde herum</translation>
    </message>
    <message>
        <source>through the stem</source>
        <translation>durch den Stamm</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>üblich: %1</translation>
    </message>
    <message>
        <source>Length along the wall</source>
        <translation>Länge entlang der Wand</translation>
    </message>
    <message>
        <source>Spread of the crown</source>
        <translation>Kronenbreite</translation>
    </message>
    <message>
        <source>Lowest limb, above the ground</source>
        <translation>Unterster Ast, über dem Boden</translation>
    </message>
    <message>
        <source>Hide the helpers</source>
        <translation>Hilfen ausblenden</translation>
    </message>
    <message>
        <source>How high is it?</source>
        <translation>Wie hoch ist er?</translation>
    </message>
    <message>
        <source>Height by the shadow of a stick, or by an angle and a distance</source>
        <translation>Höhe aus dem Schatten eines Stabs oder aus Winkel und Entfernung</translation>
    </message>
    <message>
        <source>How it grows or was trained</source>
        <translation>Wie er wuchs oder erzogen wurde</translation>
    </message>
    <message>
        <source>Runs towards, degrees</source>
        <translation>Verläuft in Richtung, Grad</translation>
    </message>
    <message>
        <source>Stands east of the plan&apos;s middle by</source>
        <translation>Steht östlich der Planmitte um</translation>
    </message>
    <message>
        <source>Or drag the tree on the plan later</source>
        <translation>Oder den Baum später auf dem Plan ziehen</translation>
    </message>
    <message>
        <source>and north by</source>
        <translation>und nördlich um</translation>
    </message>
    <message>
        <source>A measure left empty takes the usual one. Every limb can be dragged afterwards, and the tree on the plan.</source>
        <translation>Für ein leeres Maß gilt das übliche. Danach lässt sich jeder Ast ziehen, und der Baum auf dem Plan auch.</translation>
    </message>
</context>
<context>
    <name>AnswersColumn</name>
    <message>
        <source>Is there room beneath it?</source>
        <translation>Ist darunter genug Platz?</translation>
    </message>
    <message>
        <source>What would a storm ask of it?</source>
        <translation>Was würde ein Sturm ihm abverlangen?</translation>
    </message>
    <message>
        <source>Do the plants get their sun?</source>
        <translation>Bekommen die Pflanzen ihre Sonne?</translation>
    </message>
    <message>
        <source>When must it be cut again?</source>
        <translation>Wann muss wieder geschnitten werden?</translation>
    </message>
</context>
<context>
    <name>Card</name>
    <message>
        <source>working…</source>
        <translation>rechnet…</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>angehalten</translation>
    </message>
</context>
<context>
    <name>CautionStrip</name>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Before you cut</source>
        <translation>Vor dem Schnitt</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Weniger</translation>
    </message>
    <message numerus="yes">
        <source>All %n cautions</source>
        <translation>
            <numerusform>Der eine Warnhinweis</numerusform>
            <numerusform>Alle %n Warnhinweise</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ConditionsPanel</name>
    <message>
        <source>Gusts</source>
        <translation>Böen</translation>
    </message>
    <message>
        <source>Gusts at 10 m over open ground</source>
        <translation>Böen in 10 m Höhe über freiem Gelände</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Day of the year</source>
        <translation>Tag des Jahres</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>Hour of the day</source>
        <translation>Stunde des Tages</translation>
    </message>
</context>
<context>
    <name>CutRow</name>
    <message>
        <source>Cut %1, %2: %3</source>
        <translation>Schnitt %1, %2: %3</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Leave this limb, and find other cuts</source>
        <translation>Diesen Ast lassen und andere Schnitte suchen</translation>
    </message>
    <message>
        <source>Take it anyway</source>
        <translation>Trotzdem nehmen</translation>
    </message>
    <message>
        <source>Take this limb whatever else is cut</source>
        <translation>Diesen Ast nehmen, was auch sonst geschnitten wird</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Why this number?</source>
        <translation>Warum diese Zahl?</translation>
    </message>
</context>
<context>
    <name>DayCard</name>
    <message>
        <source>Is today a day for it?</source>
        <translation>Ist heute ein Tag dafür?</translation>
    </message>
    <message>
        <source>Warmth, shade</source>
        <translation>Wärme, Schatten</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Gusts</source>
        <translation>Böen</translation>
    </message>
</context>
<context>
    <name>DiaryPage</name>
    <message>
        <source>Visits to %1</source>
        <translation>Besuche bei %1</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>Write a visit…</source>
        <translation>Besuch eintragen…</translation>
    </message>
    <message>
        <source>No visit has been written yet. Earlier ones can be written too: the day is yours to set.</source>
        <translation>Noch ist kein Besuch eingetragen. Auch frühere lassen sich eintragen: den Tag bestimmen Sie.</translation>
    </message>
    <message>
        <source>Pictures show the sketch with what each later visit took put back; what was redrawn since shows as it is drawn today.</source>
        <translation>Die Bilder zeigen die Skizze mit allem, was spätere Besuche wegnahmen; was seither neu gezeichnet wurde, erscheint wie heute gezeichnet.</translation>
    </message>
    <message>
        <source>How much leaf went this season?</source>
        <translation>Wie viel Laub ging in dieser Saison?</translation>
    </message>
    <message>
        <source>Seasons run from leaf fall to leaf fall.</source>
        <translation>Eine Saison reicht von Laubfall zu Laubfall.</translation>
    </message>
    <message>
        <source>How fast does it grow?</source>
        <translation>Wie schnell wächst er?</translation>
    </message>
    <message>
        <source>Are the wounds closing?</source>
        <translation>Schließen sich die Wunden?</translation>
    </message>
    <message>
        <source>As reckoned for the species; look, and note what you see.</source>
        <translation>Für die Baumart gerechnet; sehen Sie nach und notieren Sie, was Sie sehen.</translation>
    </message>
    <message>
        <source>It is closed</source>
        <translation>Sie ist geschlossen</translation>
    </message>
    <message>
        <source>A wound that is closed can still hide decay.</source>
        <translation>Auch unter einer geschlossenen Wunde kann noch Fäule stecken.</translation>
    </message>
</context>
<context>
    <name>DueCard</name>
    <message>
        <source>What is due in the garden?</source>
        <translation>Was ist im Garten fällig?</translation>
    </message>
    <message>
        <source>Put it in my calendar…</source>
        <translation>In meinen Kalender…</translation>
    </message>
    <message>
        <source>Writes a file that calendar programs import. Importing a newer one moves the reminders and adds none twice.</source>
        <translation>Schreibt eine Datei, die Kalenderprogramme einlesen. Eine neuere einzulesen verschiebt die Erinnerungen und verdoppelt keine.</translation>
    </message>
    <message>
        <source>Write the reminders for a calendar</source>
        <translation>Erinnerungen für einen Kalender schreiben</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
</context>
<context>
    <name>DueRow</name>
    <message>
        <source>Done…</source>
        <translation>Erledigt…</translation>
    </message>
    <message>
        <source>Write the visit that did it: %1, %2</source>
        <translation>Den Besuch eintragen, der es erledigte: %1, %2</translation>
    </message>
</context>
<context>
    <name>FactRow</name>
    <message>
        <source>after the cuts %1</source>
        <translation>nach den Schnitten %1</translation>
    </message>
</context>
<context>
    <name>FileFlow</name>
    <message>
        <source>Open a garden</source>
        <translation>Garten öffnen</translation>
    </message>
    <message>
        <source>Gardens (*.underbough *.json)</source>
        <translation>Gärten (*.underbough *.json)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Save the garden</source>
        <translation>Garten speichern</translation>
    </message>
    <message>
        <source>Garden files (*.underbough)</source>
        <translation>Gartendateien (*.underbough)</translation>
    </message>
    <message>
        <source>JSON, for other programs (*.json)</source>
        <translation>JSON, für andere Programme (*.json)</translation>
    </message>
</context>
<context>
    <name>FirstSteps</name>
    <message>
        <source>Nothing grows here yet</source>
        <translation>Hier wächst noch nichts</translation>
    </message>
    <message>
        <source>1. Add a tree: its kind, and the girth of its stem by tape. A first drawing comes of it.</source>
        <translation>1. Fügen Sie einen Baum hinzu: seine Art und den Stammumfang mit dem Maßband. Daraus entsteht eine erste Zeichnung.</translation>
    </message>
    <message>
        <source>2. Draw on the plan what lies under and beside it: paths, hedges, beds, buildings, wires.</source>
        <translation>2. Zeichnen Sie auf dem Plan, was darunter und daneben liegt: Wege, Hecken, Beete, Gebäude, Leitungen.</translation>
    </message>
    <message>
        <source>3. Drag the limbs into shape from the side. Loads, headroom and light answer as you drag.</source>
        <translation>3. Ziehen Sie in der Seitenansicht die Äste in Form. Lasten, lichte Höhe und Licht antworten beim Ziehen.</translation>
    </message>
    <message>
        <source>Add a tree</source>
        <translation>Baum hinzufügen</translation>
    </message>
    <message>
        <source>Draw on the plan</source>
        <translation>Auf dem Plan zeichnen</translation>
    </message>
</context>
<context>
    <name>GardenFile</name>
    <message>
        <source>%1 is there already and was left alone. Choose another name.</source>
        <translation>%1 gibt es schon und blieb unberührt. Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>it is no longer there (was it moved, or its disk taken away?)</source>
        <translation>sie ist nicht mehr da (wurde sie verschoben oder ihr Datenträger entfernt?)</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>the file or its folder can&apos;t be written</source>
        <translation>die Datei oder ihr Ordner ist nicht beschreibbar</translation>
    </message>
    <message>
        <source>another program is writing it</source>
        <translation>ein anderes Programm schreibt gerade hinein</translation>
    </message>
    <message>
        <source>another program changed it after it was opened here</source>
        <translation>ein anderes Programm hat sie nach dem Öffnen geändert</translation>
    </message>
    <message>
        <source>it is damaged</source>
        <translation>sie ist beschädigt</translation>
    </message>
    <message>
        <source>%1 can&apos;t be used. %2.</source>
        <translation>%1 ist nicht brauchbar. %2.</translation>
    </message>
    <message numerus="yes">
        <source>%1 can&apos;t be used. %2, and %n more.</source>
        <translation>
            <numerusform>%1 ist nicht brauchbar. %2, und %n weiterer Fehler.</numerusform>
            <numerusform>%1 ist nicht brauchbar. %2, und %n weitere Fehler.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 was not saved: %2. Your garden is still here; save it under another name, or try again once that is mended.</source>
        <translation>%1 wurde nicht gespeichert: %2. Ihr Garten ist noch hier; speichern Sie ihn unter einem anderen Namen, oder versuchen Sie es noch einmal, wenn das behoben ist.</translation>
    </message>
    <message>
        <source>%1 is open in another window: here it is only shown. Change it there, or save it here under another name.</source>
        <translation>%1 ist in einem anderen Fenster offen: hier wird es nur gezeigt. Ändern Sie es dort, oder speichern Sie es hier unter einem anderen Namen.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written. What you change is kept in this window only: save it under another name.</source>
        <translation>%1 ist nicht beschreibbar. Was Sie ändern, bleibt nur in diesem Fenster: speichern Sie es unter einem anderen Namen.</translation>
    </message>
    <message>
        <source>%1 was brought to this program&apos;s form. As it was, it is kept in %2.</source>
        <translation>%1 wurde in die Form dieses Programms gebracht. Wie es war, bleibt es in %2 erhalten.</translation>
    </message>
    <message>
        <source>%1 is damaged and was left alone. What could be read of it is open now, in %2: %3.</source>
        <translation>%1 ist beschädigt und blieb unberührt. Was davon lesbar war, ist jetzt in %2 offen: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1 was saved, but %n photos could not be found and are not in it.</source>
        <translation>
            <numerusform>%1 wurde gespeichert, aber %n Foto war nicht zu finden und fehlt darin.</numerusform>
            <numerusform>%1 wurde gespeichert, aber %n Fotos waren nicht zu finden und fehlen darin.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 was not saved: %2. Your garden is still here; save it under another name.</source>
        <translation>%1 wurde nicht gespeichert: %2. Ihr Garten ist noch hier; speichern Sie ihn unter einem anderen Namen.</translation>
    </message>
    <message>
        <source>trees: %1</source>
        <translation>Bäume: %1</translation>
    </message>
    <message>
        <source>limbs: %1</source>
        <translation>Äste: %1</translation>
    </message>
    <message>
        <source>visits: %1</source>
        <translation>Besuche: %1</translation>
    </message>
    <message>
        <source>other things: %1</source>
        <translation>anderes: %1</translation>
    </message>
    <message>
        <source>photos: %1</source>
        <translation>Fotos: %1</translation>
    </message>
    <message>
        <source>doubtful: %1</source>
        <translation>zweifelhaft: %1</translation>
    </message>
    <message>
        <source>%1; lost: %2</source>
        <translation>%1; verloren: %2</translation>
    </message>
    <message>
        <source>%1; lost: %2 and %3 more</source>
        <translation>%1; verloren: %2 und %3 weitere</translation>
    </message>
</context>
<context>
    <name>GardenSheet</name>
    <message>
        <source>About the garden</source>
        <translation>Über den Garten</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Measures to read and to type</source>
        <translation>Maße zum Lesen und Eingeben</translation>
    </message>
    <message>
        <source>Latitude, degrees north</source>
        <translation>Breite, Grad Nord</translation>
    </message>
    <message>
        <source>Longitude, degrees east</source>
        <translation>Länge, Grad Ost</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>What the wind crosses before it reaches the garden</source>
        <translation>Worüber der Wind kommt, bevor er den Garten erreicht</translation>
    </message>
    <message>
        <source>Gusts to bear</source>
        <translation>Auszuhaltende Böen</translation>
    </message>
    <message>
        <source>Fall of the ground</source>
        <translation>Gefälle des Bodens</translation>
    </message>
    <message>
        <source>level; or 8 %, or 1 in 12</source>
        <translation>eben; oder 8 %, oder 1:12</translation>
    </message>
    <message>
        <source>Water runs to the</source>
        <translation>Wasser läuft nach</translation>
    </message>
    <message>
        <source>Bright sunshine, share of the time it could shine</source>
        <translation>Sonnenschein, Anteil der möglichen Zeit</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Forget the sunshine of all months</source>
        <translation>Den Sonnenschein aller Monate vergessen</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>As the computer has it</source>
        <translation>Wie der Rechner</translation>
    </message>
    <message>
        <source>In this language from the next start of the program on.</source>
        <translation>In dieser Sprache ab dem nächsten Start des Programms.</translation>
    </message>
    <message>
        <source>Show me round the window</source>
        <translation>Das Fenster zeigen</translation>
    </message>
</context>
<context>
    <name>GoalsCard</name>
    <message>
        <source>What else do I want of it?</source>
        <translation>Was will ich noch von ihm?</translation>
    </message>
    <message>
        <source>Nothing beyond headroom over every strip.</source>
        <translation>Nichts außer lichter Höhe über jeder Fläche.</translation>
    </message>
    <message>
        <source>Relieve the limbs</source>
        <translation>Äste entlasten</translation>
    </message>
    <message>
        <source>Give sun</source>
        <translation>Sonne geben</translation>
    </message>
    <message>
        <source>Spare the leaf</source>
        <translation>Laub schonen</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Streichen</translation>
    </message>
    <message>
        <source>Drop the goal: %1</source>
        <translation>Ziel streichen: %1</translation>
    </message>
    <message>
        <source>What to ask for</source>
        <translation>Wonach gefragt wird</translation>
    </message>
    <message>
        <source>Planting</source>
        <translation>Pflanzung</translation>
    </message>
    <message>
        <source>to such as 80 %</source>
        <translation>auf etwa 80 %</translation>
    </message>
    <message>
        <source>hours a day, such as 4</source>
        <translation>Stunden am Tag, etwa 4</translation>
    </message>
    <message>
        <source>at most, such as 15 %</source>
        <translation>höchstens, etwa 15 %</translation>
    </message>
    <message>
        <source>How much: %1</source>
        <translation>Wie viel: %1</translation>
    </message>
    <message>
        <source>Ask for it</source>
        <translation>Danach fragen</translation>
    </message>
    <message>
        <source>Bear a gust</source>
        <translation>Einer Bö standhalten</translation>
    </message>
    <message>
        <source>Give light for growth</source>
        <translation>Licht zum Wachsen geben</translation>
    </message>
    <message>
        <source>such as 90 km/h</source>
        <translation>etwa 90 km/h</translation>
    </message>
    <message>
        <source>mol a day, such as 12</source>
        <translation>mol am Tag, etwa 12</translation>
    </message>
    <message>
        <source>Ask for an open middle of the crown</source>
        <translation>Eine offene Kronenmitte verlangen</translation>
    </message>
</context>
<context>
    <name>HeightHelper</name>
    <message>
        <source>Use %1</source>
        <translation>%1 übernehmen</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>An upright stick</source>
        <translation>Ein aufrechter Stab</translation>
    </message>
    <message>
        <source>Its shadow</source>
        <translation>Sein Schatten</translation>
    </message>
    <message>
        <source>The tree&apos;s shadow</source>
        <translation>Der Schatten des Baums</translation>
    </message>
    <message>
        <source>Angle to the top, °</source>
        <translation>Winkel zur Spitze, °</translation>
    </message>
    <message>
        <source>Distance to the stem</source>
        <translation>Entfernung zum Stamm</translation>
    </message>
    <message>
        <source>Your eye&apos;s height</source>
        <translation>Ihre Augenhöhe</translation>
    </message>
    <message>
        <source>Both want level ground, and a top that stands over the stem.</source>
        <translation>Beides braucht ebenen Boden und eine Spitze, die über dem Stamm steht.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Underbough: what may I cut from my trees, where, how much, when, and who should do it?
It works from a sketch of your garden, on your own computer.</source>
        <translation>Underbough: was darf ich an meinen Bäumen schneiden, wo, wie viel, wann, und wer soll es tun?
Es rechnet mit einer Skizze Ihres Gartens, auf Ihrem eigenen Computer.</translation>
    </message>
    <message>
        <source>Examples:
  underbough                                   open the window
  underbough garden.underbough                 open the window on your garden
  underbough check garden.underbough           is anything wrong with the file?
  underbough assess garden.json                the whole answer, to read
  underbough assess garden.json --tree maple --gust &quot;110 km/h&quot;
  underbough suggest garden.json --units us    only what to cut, in feet and pounds
  underbough assess garden.json --json         the same for a program (SI units)
  underbough due garden.json                   what is due, and when
  underbough diary garden.json --add --cut plan --by me
                                               write today&apos;s visit into the file
  underbough report garden.json -o work.pdf    a work sheet to carry outside

The answers are estimates from a sketch. They never say that a tree is safe.
&quot;underbough assess --help&quot; tells more about one command.

Exit status: 0 fine, 2 input that can&apos;t be used, 1 only with --fail-on-attention.</source>
        <translation>Beispiele:
  underbough                                   das Fenster öffnen
  underbough garden.underbough                 das Fenster mit Ihrem Garten öffnen
  underbough check garden.underbough           stimmt etwas nicht mit der Datei?
  underbough assess garden.json                die ganze Antwort zum Lesen
  underbough assess garden.json --tree maple --gust &quot;110 km/h&quot;
  underbough suggest garden.json --units us    nur, was zu schneiden ist, in Fuß und Pfund
  underbough assess garden.json --json         dasselbe für ein Programm (SI-Einheiten)
  underbough due garden.json                   was fällig ist, und wann
  underbough diary garden.json --add --cut plan --by me
                                               den Besuch von heute in die Datei schreiben
  underbough report garden.json -o work.pdf    ein Arbeitsblatt zum Mitnehmen

Die Antworten sind Schätzungen aus einer Skizze. Sie sagen nie, dass ein Baum sicher ist.
&quot;underbough assess --help&quot; sagt mehr zu einem Befehl.

Status am Ende: 0 gut, 2 unbrauchbare Eingabe, 1 nur mit --fail-on-attention.</translation>
    </message>
    <message>
        <source>Show this help</source>
        <translation>Diese Hilfe zeigen</translation>
    </message>
    <message>
        <source>Show the version</source>
        <translation>Die Version zeigen</translation>
    </message>
    <message>
        <source>A garden file to open in the window</source>
        <translation>Eine Gartendatei für das Fenster</translation>
    </message>
    <message>
        <source>Write a visit of --date to --tree into the file</source>
        <translation>Einen Besuch bei --tree am --date in die Datei schreiben</translation>
    </message>
    <message>
        <source>A cut made: plan, the number of one of the plan&apos;s,
&quot;removal:LIMB&quot;, &quot;reduction:LIMB=1.5 m&quot;,
&quot;thinning:LIMB=20 %&quot;, &quot;lifting:LIMB=2.1 m&quot;</source>
        <translation>Ein gemachter Schnitt: plan, die Nummer eines geplanten,
&quot;removal:AST&quot; (abgenommen), &quot;reduction:AST=1.5 m&quot; (eingekürzt),
&quot;thinning:AST=20 %&quot; (ausgelichtet), &quot;lifting:AST=2.1 m&quot;
(Hängetriebe gekürzt)</translation>
    </message>
    <message>
        <source>Share of the leaf that went, such as &quot;8 %&quot;; else
that of the plan&apos;s cuts</source>
        <translation>Anteil des entnommenen Laubs, etwa &quot;8 %&quot;; sonst
der der geplanten Schnitte</translation>
    </message>
    <message>
        <source>Headroom over a strip before and after, such as
&quot;path=1.9 m..2.4 m&quot;</source>
        <translation>Lichte Höhe über einer Fläche vorher und nachher, etwa
&quot;path=1.9 m..2.4 m&quot;</translation>
    </message>
    <message>
        <source>Tip of a limb before the cuts: where it is drawn, or
&quot;LIMB=EAST,NORTH,UP&quot; from the tree&apos;s base</source>
        <translation>Spitze eines Astes vor den Schnitten: wo sie gezeichnet ist,
oder &quot;AST=OST,NORD,HOCH&quot; vom Stammfuß aus</translation>
    </message>
    <message>
        <source>Who did it</source>
        <translation>Wer es war</translation>
    </message>
    <message>
        <source>In your words</source>
        <translation>In Ihren Worten</translation>
    </message>
    <message>
        <source>When to come again</source>
        <translation>Wann der nächste Besuch ist</translation>
    </message>
    <message>
        <source>Warmth in the shade, such as &quot;21 C&quot;</source>
        <translation>Wärme im Schatten, etwa &quot;21 C&quot;</translation>
    </message>
    <message>
        <source>Such as &quot;55 %&quot;</source>
        <translation>Etwa &quot;55 %&quot;</translation>
    </message>
    <message>
        <source>Gusts, such as &quot;20 km/h&quot;</source>
        <translation>Böen, etwa &quot;20 km/h&quot;</translation>
    </message>
    <message>
        <source>A photo to keep with the visit</source>
        <translation>Ein Foto, das beim Besuch bleibt</translation>
    </message>
    <message>
        <source>Note that a wound, by its number in this list, was
seen closed on --date</source>
        <translation>Eintragen, dass eine Wunde, nach ihrer Nummer in dieser
Liste, am --date geschlossen war</translation>
    </message>
    <message>
        <source>Make the cuts on the sketch too</source>
        <translation>Die Schnitte auch an der Skizze machen</translation>
    </message>
    <message>
        <source>Visits, leaf by season, growth, wounds, next due; adds a visit</source>
        <translation>Besuche, Laub je Saison, Wuchs, Wunden, Fälliges; neuer Besuch</translation>
    </message>
    <message>
        <source>What is due in the garden, and when</source>
        <translation>Was im Garten fällig ist, und wann</translation>
    </message>
    <message>
        <source>What is due, as a file for your calendar</source>
        <translation>Was fällig ist, als Datei für Ihren Kalender</translation>
    </message>
    <message>
        <source>A garden file, or - for standard input</source>
        <translation>Eine Gartendatei, oder - für die Standardeingabe</translation>
    </message>
    <message>
        <source>Where to write it, such as garden.ics; - for standard output</source>
        <translation>Wohin, etwa garden.ics; - für die Standardausgabe</translation>
    </message>
    <message>
        <source>Write JSON for a program instead of text</source>
        <translation>JSON für ein Programm statt Text</translation>
    </message>
    <message>
        <source>FROM is left as it is; a TO that is there already is never written over.</source>
        <translation>FROM bleibt, wie es ist; ein TO, das es schon gibt, wird nie überschrieben.</translation>
    </message>
    <message>
        <source>Write a garden as JSON, its photos beside it</source>
        <translation>Einen Garten als JSON schreiben, seine Fotos daneben</translation>
    </message>
    <message>
        <source>A garden file</source>
        <translation>Eine Gartendatei</translation>
    </message>
    <message>
        <source>The JSON file to write</source>
        <translation>Die JSON-Datei, die entsteht</translation>
    </message>
    <message>
        <source>Make a garden file of a garden in JSON and its photos</source>
        <translation>Aus einem Garten in JSON und seinen Fotos eine Gartendatei machen</translation>
    </message>
    <message>
        <source>A garden in JSON, its photos beside it</source>
        <translation>Ein Garten in JSON, seine Fotos daneben</translation>
    </message>
    <message>
        <source>The garden file to write, such as garden.underbough</source>
        <translation>Die Gartendatei, die entsteht, etwa garden.underbough</translation>
    </message>
    <message>
        <source>Save what can be read of a damaged garden file</source>
        <translation>Retten, was sich von einer beschädigten Gartendatei lesen lässt</translation>
    </message>
    <message>
        <source>The damaged garden file</source>
        <translation>Die beschädigte Gartendatei</translation>
    </message>
    <message>
        <source>The garden file to write</source>
        <translation>Die Gartendatei, die entsteht</translation>
    </message>
    <message>
        <source>Usage</source>
        <translation>Aufruf</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <translation>OPTIONEN</translation>
    </message>
    <message>
        <source>COMMAND</source>
        <translation>BEFEHL</translation>
    </message>
    <message>
        <source>(needed)</source>
        <translation>(verlangt)</translation>
    </message>
    <message>
        <source>Garden</source>
        <translation>Garten</translation>
    </message>
    <message>
        <source>Needs</source>
        <translation>Nur mit</translation>
    </message>
    <message>
        <source>Excludes</source>
        <translation>Nicht mit</translation>
    </message>
    <message>
        <source>CODE</source>
        <translation>SPRACHE</translation>
    </message>
    <message>
        <source>CUT</source>
        <translation>SCHNITT</translation>
    </message>
    <message>
        <source>DATE</source>
        <translation>DATUM</translation>
    </message>
    <message>
        <source>DEGREES</source>
        <translation>GRAD</translation>
    </message>
    <message>
        <source>FILE</source>
        <translation>DATEI</translation>
    </message>
    <message>
        <source>FOLDER</source>
        <translation>ORDNER</translation>
    </message>
    <message>
        <source>GUST</source>
        <translation>WIND</translation>
    </message>
    <message>
        <source>LENGTH</source>
        <translation>STRECKE</translation>
    </message>
    <message>
        <source>LIMB</source>
        <translation>AST</translation>
    </message>
    <message>
        <source>MONTH</source>
        <translation>MONAT</translation>
    </message>
    <message>
        <source>NAME</source>
        <translation>NAME</translation>
    </message>
    <message>
        <source>NUMBER</source>
        <translation>NUMMER</translation>
    </message>
    <message>
        <source>PAPER</source>
        <translation>PAPIER</translation>
    </message>
    <message>
        <source>PLANTING=HOURS</source>
        <translation>PFLANZUNG=STUNDEN</translation>
    </message>
    <message>
        <source>PLANTING=MOL</source>
        <translation>PFLANZUNG=MOL</translation>
    </message>
    <message>
        <source>SHARE</source>
        <translation>ANTEIL</translation>
    </message>
    <message>
        <source>SPEED</source>
        <translation>TEMPO</translation>
    </message>
    <message>
        <source>STRIP=HEIGHTS</source>
        <translation>WEG=VORHER..NACHHER</translation>
    </message>
    <message>
        <source>TABLE</source>
        <translation>TABELLE</translation>
    </message>
    <message>
        <source>TEMPERATURE</source>
        <translation>TEMPERATUR</translation>
    </message>
    <message>
        <source>TEXT</source>
        <translation>TEXT</translation>
    </message>
    <message>
        <source>THICKNESS</source>
        <translation>DICKE</translation>
    </message>
    <message>
        <source>TIME</source>
        <translation>ZEIT</translation>
    </message>
    <message>
        <source>TIP</source>
        <translation>SPITZE</translation>
    </message>
    <message>
        <source>UNITS</source>
        <translation>EINHEITEN</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>The answers are estimates from a sketch. They never say that a tree is safe.</source>
        <translation>Die Antworten sind Schätzungen aus einer Skizze. Sie sagen nie, dass ein Baum sicher ist.</translation>
    </message>
    <message>
        <source>All of it: headroom, loads, sun, what to cut, who cuts</source>
        <translation>Alles: lichte Höhe, Lasten, Sonne, was und wer schneidet</translation>
    </message>
    <message>
        <source>Gust as forecasts give it: &quot;90 km/h&quot;, &quot;56 mph&quot;,
25 (m/s), &quot;force 9&quot;, &quot;gusts of force 9&quot;,
&quot;severe thunderstorm&quot;; else the garden&apos;s own</source>
        <translation>Bö, wie Vorhersagen sie nennen: &quot;90 km/h&quot;, &quot;56 mph&quot;,
25 (m/s), &quot;force 9&quot;, &quot;gusts of force 9&quot;,
&quot;severe thunderstorm&quot; (schweres Gewitter);
sonst die des Gartens</translation>
    </message>
    <message>
        <source>Temperature of the air in that gust: &quot;5 C&quot;, &quot;41 F&quot;;
else 15 C. Cold air presses harder</source>
        <translation>Temperatur der Luft in dieser Bö: &quot;5 C&quot;, &quot;41 F&quot;;
sonst 15 C. Kalte Luft drückt stärker</translation>
    </message>
    <message>
        <source>Only this limb, by its name or id: every step from wind
and weight to its figures, with formulas and sources</source>
        <translation>Nur dieser Ast, nach Name oder Kennung: jeder Schritt
von Wind und Gewicht zu seinen Zahlen, mit Formeln
und Quellen</translation>
    </message>
    <message>
        <source>Loads with leaf and twigs wet</source>
        <translation>Lasten mit nassem Laub und nassen Zweigen</translation>
    </message>
    <message>
        <source>Loads with glaze ice this thick all round:
&quot;12 mm&quot;, &quot;0.5 in&quot;; else none</source>
        <translation>Lasten mit so dickem Klareis ringsum:
&quot;12 mm&quot;, &quot;0.5 in&quot;; sonst keines</translation>
    </message>
    <message>
        <source>What to cut for headroom, and who does it</source>
        <translation>Was für die lichte Höhe zu schneiden ist, und wer es tut</translation>
    </message>
    <message>
        <source>Headroom beyond what is needed, to be grown into,
such as &quot;30 cm&quot; or &quot;1 ft&quot;</source>
        <translation>Lichte Höhe über die nötige hinaus, zum Hineinwachsen,
etwa &quot;30 cm&quot; oder &quot;1 ft&quot;</translation>
    </message>
    <message>
        <source>Relieve every limb to this share of its expected strength
at the garden&apos;s gust, such as &quot;80 %&quot;</source>
        <translation>Jeden Ast bei der Bö des Gartens bis auf diesen Anteil
seiner erwarteten Festigkeit entlasten, etwa &quot;80 %&quot;</translation>
    </message>
    <message>
        <source>Give a planting so many hours of sun a day, such as
hedge=4; without a number: what its plant needs</source>
        <translation>Einer Pflanzung so viele Stunden Sonne am Tag geben,
etwa hedge=4; ohne Zahl: was ihre Pflanze braucht</translation>
    </message>
    <message>
        <source>Give a planting so many mol/m2 of light for growth a day,
such as bed=12; without a number: what its plant needs</source>
        <translation>Einer Pflanzung so viele mol/m2 Wuchslicht am Tag geben,
etwa bed=12; ohne Zahl: was ihre Pflanze braucht</translation>
    </message>
    <message>
        <source>Relieve every limb until it is expected to bear this gust,
such as &quot;90 km/h&quot; or &quot;56 mph&quot;</source>
        <translation>Jeden Ast entlasten, bis zu erwarten ist, dass er diese Bö
aushält, etwa &quot;90 km/h&quot; oder &quot;56 mph&quot;</translation>
    </message>
    <message>
        <source>Also what 5, 10, 15 % of the leaf and more would buy</source>
        <translation>Auch, was 5, 10, 15 % des Laubs und mehr brächten</translation>
    </message>
    <message>
        <source>A limb that stays, by its id</source>
        <translation>Ein Ast, der bleibt, nach seiner Kennung</translation>
    </message>
    <message>
        <source>A limb that goes, by its id</source>
        <translation>Ein Ast, der weg soll, nach seiner Kennung</translation>
    </message>
    <message>
        <source>Fruit trees: the middle of the crown free of upright limbs</source>
        <translation>Obstbäume: die Mitte der Krone frei von steilen Ästen</translation>
    </message>
    <message>
        <source>Take no more of the leaf, such as &quot;15 %&quot;</source>
        <translation>Nicht mehr vom Laub entnehmen, etwa &quot;15 %&quot;</translation>
    </message>
    <message>
        <source>A year of light on each planting, and who takes it</source>
        <translation>Ein Jahr Licht auf jeder Pflanzung, und wer es nimmt</translation>
    </message>
    <message>
        <source>One month in place of the growing season: 7, July</source>
        <translation>Ein Monat statt der Wuchszeit: 7, July</translation>
    </message>
    <message>
        <source>Only this planting, by its name or id</source>
        <translation>Nur diese Pflanzung, nach Name oder Kennung</translation>
    </message>
    <message>
        <source>Write JSON for a program instead of text, in SI units
(docs/command-line.md tells its form)</source>
        <translation>JSON für ein Programm statt Text, in SI-Einheiten
(seine Form steht in docs/command-line.md)</translation>
    </message>
    <message>
        <source>Units to read; uk is metric with wind in mph;
else as your system is set</source>
        <translation>Einheiten zum Lesen; uk ist metrisch mit Wind in mph;
sonst, wie Ihr System eingestellt ist</translation>
    </message>
    <message>
        <source>Exit with status 1 if something needs attention</source>
        <translation>Mit Status 1 enden, wenn etwas Beachtung braucht</translation>
    </message>
    <message>
        <source>Language of the sentences: de, en;
else as your system is set</source>
        <translation>Sprache der Sätze: de, en;
sonst, wie Ihr System eingestellt ist</translation>
    </message>
    <message>
        <source>Only this tree, by its name or id</source>
        <translation>Nur dieser Baum, nach Name oder Kennung</translation>
    </message>
    <message>
        <source>The day, such as 2025-07-14; else today</source>
        <translation>Der Tag, etwa 2025-07-14; sonst heute</translation>
    </message>
    <message>
        <source>Headroom over each strip of ground</source>
        <translation>Die lichte Höhe über jeder Fläche</translation>
    </message>
    <message>
        <source>Is anything wrong with a garden file?</source>
        <translation>Stimmt etwas nicht mit einer Gartendatei?</translation>
    </message>
    <message>
        <source>The work on paper, and tables for other programs</source>
        <translation>Die Arbeit auf Papier, und Tabellen für andere Programme</translation>
    </message>
    <message>
        <source>The file to write: work.pdf, work.html; with --csv or
--geojson any name, or - for standard output</source>
        <translation>Die Datei, die entsteht: work.pdf, work.html; mit --csv
oder --geojson jeder Name, oder - für die Standardausgabe</translation>
    </message>
    <message>
        <source>Size of the pages; else as is usual where you are</source>
        <translation>Größe der Seiten; sonst, wie es bei Ihnen üblich ist</translation>
    </message>
    <message>
        <source>One page for each tree with what an arborist asks for,
and what to ask of one</source>
        <translation>Eine Seite je Baum mit dem, was ein Baumpfleger wissen will
und was man ihn fragen soll</translation>
    </message>
    <message>
        <source>Write every figure as a PNG to this folder</source>
        <translation>Jede Abbildung als PNG in diesen Ordner schreiben</translation>
    </message>
    <message>
        <source>A table instead: inventory of the trees, visits,
or loads of all limbs</source>
        <translation>Stattdessen eine Tabelle: inventory (die Bäume),
visits (die Besuche) oder loads (Lasten aller Äste)</translation>
    </message>
    <message>
        <source>The plan as GeoJSON instead, in WGS 84</source>
        <translation>Stattdessen der Plan als GeoJSON, in WGS 84</translation>
    </message>
    <message>
        <source>Gust for the loads; else the garden&apos;s own</source>
        <translation>Bö für die Lasten; sonst die des Gartens</translation>
    </message>
    <message>
        <source>Warmth on the day of work: &quot;33 C&quot;</source>
        <translation>Wärme am Arbeitstag: &quot;33 C&quot;</translation>
    </message>
    <message>
        <source>Of the air that day: &quot;55 %&quot;</source>
        <translation>Luftfeuchte an diesem Tag: &quot;55 %&quot;</translation>
    </message>
    <message>
        <source>Gusts that day: &quot;30 km/h&quot;</source>
        <translation>Böen an diesem Tag: &quot;30 km/h&quot;</translation>
    </message>
    <message>
        <source>Does the weather speak against tree work?</source>
        <translation>Spricht das Wetter gegen Baumarbeit?</translation>
    </message>
    <message>
        <source>Warmth in the shade, such as &quot;33 C&quot; or &quot;91 F&quot;</source>
        <translation>Wärme im Schatten, etwa &quot;33 C&quot; oder &quot;91 F&quot;</translation>
    </message>
    <message>
        <source>Of the air, such as &quot;55 %&quot;; else 50 %</source>
        <translation>Luftfeuchte, etwa &quot;55 %&quot;; sonst 50 %</translation>
    </message>
    <message>
        <source>Gusts while you work, such as &quot;30 km/h&quot;</source>
        <translation>Böen, während Sie arbeiten, etwa &quot;30 km/h&quot;</translation>
    </message>
    <message>
        <source>Where the sun stands, as JSON</source>
        <translation>Wo die Sonne steht, als JSON</translation>
    </message>
    <message>
        <source>Latitude in degrees, north positive</source>
        <translation>Geografische Breite in Grad, Nord positiv</translation>
    </message>
    <message>
        <source>Longitude in degrees, east positive</source>
        <translation>Geografische Länge in Grad, Ost positiv</translation>
    </message>
    <message>
        <source>When, such as 2025-06-21T14:30:00+02:00; without a zone
UTC is meant; else now</source>
        <translation>Wann, etwa 2025-06-21T14:30:00+02:00; ohne Zone ist UTC
gemeint; sonst jetzt</translation>
    </message>
    <message>
        <source>JSON, which it writes anyway</source>
        <translation>JSON, das ohnehin geschrieben wird</translation>
    </message>
    <message>
        <source>elevation_deg is without refraction, apparent_elevation_deg with it;
azimuth_deg counts clockwise from north.</source>
        <translation>elevation_deg ist ohne Brechung der Luft, apparent_elevation_deg mit ihr;
azimuth_deg zählt im Uhrzeigersinn von Norden.</translation>
    </message>
</context>
<context>
    <name>LeafGauge</name>
    <message>
        <source>Leaf taken</source>
        <translation>Entnommenes Laub</translation>
    </message>
</context>
<context>
    <name>LimbHandle</name>
    <message>
        <source>Arrow keys move it, Shift moves it far, plus and minus change its thickness, Insert grows a limb, Delete erases the limb</source>
        <translation>Pfeiltasten bewegen ihn, mit Umschalt weiter, Plus und Minus ändern die Dicke, Einfg lässt einen Ast wachsen, Entf löscht den Ast</translation>
    </message>
</context>
<context>
    <name>LimbPanel</name>
    <message>
        <source>Click a limb, or Tab to a handle, to see its figures and to change it.</source>
        <translation>Klicken Sie einen Ast an, oder gehen Sie mit Tab zu einem Griff, um seine Zahlen zu sehen und ihn zu ändern.</translation>
    </message>
    <message>
        <source>No limb chosen</source>
        <translation>Kein Ast gewählt</translation>
    </message>
    <message>
        <source>Name of the chosen limb</source>
        <translation>Name des gewählten Astes</translation>
    </message>
    <message>
        <source>Measure…</source>
        <translation>Messen…</translation>
    </message>
    <message>
        <source>Girth by tape, union, leaf, crop and defects of the limb; copy, mirror and split it</source>
        <translation>Umfang, Ansatz, Laub, Früchte und Schäden des Astes; kopieren, spiegeln und teilen</translation>
    </message>
    <message>
        <source>Erase limb</source>
        <translation>Löschen</translation>
    </message>
</context>
<context>
    <name>LimbSheet</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Taped where</source>
        <translation>Wo gemessen</translation>
    </message>
    <message>
        <source>Girth there</source>
        <translation>Umfang dort</translation>
    </message>
    <message>
        <source>or through it</source>
        <translation>oder quer hindurch</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Its union</source>
        <translation>Sein Ansatz</translation>
    </message>
    <message>
        <source>Ripe crop on it</source>
        <translation>Reife Früchte daran</translation>
    </message>
    <message>
        <source>Leafy</source>
        <translation>Belaubt</translation>
    </message>
    <message>
        <source>Leaves from, along it</source>
        <translation>Laub ab, am Ast entlang</translation>
    </message>
    <message>
        <source>Leaf around it</source>
        <translation>Laub um ihn herum</translation>
    </message>
    <message>
        <source>Hanging shoots</source>
        <translation>Hängende Triebe</translation>
    </message>
    <message>
        <source>Foliage</source>
        <translation>Belaubung</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Was ihm fehlt</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take back: %1</source>
        <translation>Zurücknehmen: %1</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Schaden</translation>
    </message>
    <message>
        <source>How far along it</source>
        <translation>Wie weit am Ast entlang</translation>
    </message>
    <message>
        <source>Sound wood around it</source>
        <translation>Gesundes Holz ringsum</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>Vermerken</translation>
    </message>
    <message>
        <source>Copy it, a quarter turn on</source>
        <translation>Kopieren, eine Vierteldrehung weiter</translation>
    </message>
    <message>
        <source>Mirror it</source>
        <translation>Spiegeln</translation>
    </message>
    <message>
        <source>Split it in two</source>
        <translation>In zwei teilen</translation>
    </message>
</context>
<context>
    <name>LoadLegend</name>
    <message>
        <source>Strength asked of a limb</source>
        <translation>Beanspruchung des Astes</translation>
    </message>
</context>
<context>
    <name>LoadScale</name>
    <message>
        <source>light</source>
        <translation>gering</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>near its strength</source>
        <translation>nahe der Festigkeit</translation>
    </message>
    <message>
        <source>past its strength</source>
        <translation>über der Festigkeit</translation>
    </message>
</context>
<context>
    <name>MonthBars</name>
    <message>
        <source>Why this number?</source>
        <translation>Warum diese Zahl?</translation>
    </message>
</context>
<context>
    <name>NewGardenSheet</name>
    <message>
        <source>A new garden</source>
        <translation>Ein neuer Garten</translation>
    </message>
    <message>
        <source>Start the garden</source>
        <translation>Garten anlegen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Nearest city, for sun and clock</source>
        <translation>Nächste Stadt, für Sonne und Uhr</translation>
    </message>
    <message>
        <source>Type a city or a country</source>
        <translation>Stadt oder Land eingeben</translation>
    </message>
    <message>
        <source>Or latitude, degrees north</source>
        <translation>Oder Breite, Grad Nord</translation>
    </message>
    <message>
        <source>47.4, or 33.9 S</source>
        <translation>47.4 oder 33.9 S</translation>
    </message>
    <message>
        <source>Longitude, degrees east</source>
        <translation>Länge, Grad Ost</translation>
    </message>
    <message>
        <source>8.5, or 77.0 W</source>
        <translation>8.5 oder 77.0 W</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>Not known: sea level</source>
        <translation>Sonst Meereshöhe</translation>
    </message>
    <message>
        <source>What the wind crosses before it reaches the garden</source>
        <translation>Worüber der Wind kommt, bevor er den Garten erreicht</translation>
    </message>
    <message>
        <source>Gusts that your trees should bear</source>
        <translation>Böen, die Ihre Bäume aushalten sollen</translation>
    </message>
    <message>
        <source>As typed beside</source>
        <translation>Wie daneben eingegeben</translation>
    </message>
    <message>
        <source>Or typed</source>
        <translation>Oder eingegeben</translation>
    </message>
</context>
<context>
    <name>OfferCurve</name>
    <message>
        <source>Press to try its cuts out.</source>
        <translation>Drücken, um die Schnitte zu probieren.</translation>
    </message>
    <message>
        <source>Press to put all back.</source>
        <translation>Drücken, um alles zurückzusetzen.</translation>
    </message>
    <message>
        <source>no leaf</source>
        <translation>kein Laub</translation>
    </message>
    <message>
        <source>%1 of the leaf,
the most that may go now</source>
        <translation>%1 des Laubs,
mehr darf jetzt nicht weg</translation>
    </message>
</context>
<context>
    <name>OffersCard</name>
    <message>
        <source>What would more or less leaf buy?</source>
        <translation>Was brächte mehr oder weniger Laub?</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Weigh it</source>
        <translation>Abwägen</translation>
    </message>
    <message>
        <source>Headroom, relief and sun for 5, 10, 15 % of the leaf and more, each by itself</source>
        <translation>Lichte Höhe, Entlastung und Sonne für 5, 10, 15 % des Laubs und mehr, jedes für sich</translation>
    </message>
    <message>
        <source>Weighing leaf against what it buys</source>
        <translation>Laub wird gegen den Nutzen abgewogen</translation>
    </message>
    <message>
        <source>What is bought</source>
        <translation>Was es bringt</translation>
    </message>
    <message>
        <source>Each point is the best that was found for so much leaf, inside the guideline. Press one to try its cuts on the drawing. A square says that the search was cut short: less leaf may do as much.</source>
        <translation>Jeder Punkt ist das Beste, was für so viel Laub innerhalb des Richtwerts gefunden wurde. Drücken Sie auf einen, um seine Schnitte auf der Zeichnung zu probieren. Ein Quadrat sagt, dass die Suche abgebrochen wurde: weniger Laub könnte ebenso viel bringen.</translation>
    </message>
</context>
<context>
    <name>PaperSheet</name>
    <message>
        <source>Save the pages</source>
        <translation>Seiten speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Web page (*.html)</source>
        <translation>Webseite (*.html)</translation>
    </message>
    <message>
        <source>Work sheet</source>
        <translation>Arbeitsblatt</translation>
    </message>
    <message>
        <source>For an arborist</source>
        <translation>Für den Baumpfleger</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Some of this is an arborist&apos;s work: “For an arborist” is one page to hand over.</source>
        <translation>Ein Teil davon ist Arbeit für den Baumpfleger: „Für den Baumpfleger“ ist eine Seite zum Mitgeben.</translation>
    </message>
    <message numerus="yes">
        <source>%n pages: %1</source>
        <translation>
            <numerusform>%n Seite: %1</numerusform>
            <numerusform>%n Seiten: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Wird ausgearbeitet…</translation>
    </message>
    <message>
        <source>There is no tree to write about yet.</source>
        <translation>Es gibt noch keinen Baum, über den etwas zu schreiben wäre.</translation>
    </message>
    <message>
        <source>Name the folder for the pictures and tables</source>
        <translation>Ordner für Bilder und Tabellen benennen</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>Wovon</translation>
    </message>
    <message>
        <source>The chosen tree</source>
        <translation>Der gewählte Baum</translation>
    </message>
    <message>
        <source>The whole garden</source>
        <translation>Der ganze Garten</translation>
    </message>
    <message>
        <source>Pictures and tables…</source>
        <translation>Bilder, Tabellen…</translation>
    </message>
    <message>
        <source>Each figure, the trees, visits and loads as CSV, the plan as GeoJSON</source>
        <translation>Jede Zeichnung, die Bäume, Besuche und Lasten als CSV, der Plan als GeoJSON</translation>
    </message>
</context>
<context>
    <name>PhotoFiles</name>
    <message>
        <source>%1 was not written: there is another file of that name.</source>
        <translation>%1 wurde nicht geschrieben: es gibt schon eine andere Datei dieses Namens.</translation>
    </message>
    <message>
        <source>%1 was not written: %2.</source>
        <translation>%1 wurde nicht geschrieben: %2.</translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>Previous</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>It can be brought back with Undo</source>
        <translation>„Zurück“ in der Leiste oben holt es wieder</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Words under it</source>
        <translation>Worte darunter</translation>
    </message>
</context>
<context>
    <name>PhotoStrip</name>
    <message>
        <source>photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Add photos…</source>
        <translation>Fotos dazu…</translation>
    </message>
    <message>
        <source>Photos can be dropped here too</source>
        <translation>Fotos lassen sich auch hierher ziehen</translation>
    </message>
    <message>
        <source>Add photos</source>
        <translation>Fotos hinzufügen</translation>
    </message>
</context>
<context>
    <name>PhotoThumb</name>
    <message>
        <source>Show large: %1</source>
        <translation>Groß zeigen: %1</translation>
    </message>
</context>
<context>
    <name>PlanHandle</name>
    <message>
        <source>Arrow keys move it, Shift moves it far, Delete takes it off the plan</source>
        <translation>Pfeiltasten bewegen es, mit Umschalt weiter, Entf nimmt es vom Plan</translation>
    </message>
</context>
<context>
    <name>PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>%1 Plus and minus zoom, arrow keys move the view, 0 shows all.</source>
        <translation>%1 Plus und Minus zoomen, Pfeiltasten bewegen die Ansicht, 0 zeigt alles.</translation>
    </message>
    <message>
        <source>Done with the plan</source>
        <translation>Plan ist fertig</translation>
    </message>
    <message>
        <source>Draw on the plan</source>
        <translation>Auf dem Plan zeichnen</translation>
    </message>
    <message>
        <source>Shadow of the hour</source>
        <translation>Schatten der Stunde</translation>
    </message>
    <message>
        <source>Map of the sun</source>
        <translation>Sonnenkarte</translation>
    </message>
    <message>
        <source>Shows the shadows at the chosen day and hour</source>
        <translation>Zeigt die Schatten am gewählten Tag zur gewählten Stunde</translation>
    </message>
    <message>
        <source>Shows the hours of direct sun on the ground, mean of the growing season</source>
        <translation>Zeigt die Stunden direkter Sonne am Boden, im Mittel der Wachstumszeit</translation>
    </message>
    <message>
        <source>Larger plan</source>
        <translation>Plan größer</translation>
    </message>
    <message>
        <source>Smaller plan</source>
        <translation>Plan kleiner</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Show the whole garden</source>
        <translation>Den ganzen Garten zeigen</translation>
    </message>
    <message>
        <source>Where you stand for the side view: %1</source>
        <translation>Wo Sie für die Seitenansicht stehen: %1</translation>
    </message>
    <message>
        <source>Left and right arrow keys walk round the tree</source>
        <translation>Pfeiltasten links und rechts gehen um den Baum</translation>
    </message>
    <message>
        <source>Garden…</source>
        <translation>Garten…</translation>
    </message>
    <message>
        <source>Place, wind, slope and sunshine of the garden, and the measures to read</source>
        <translation>Standort, Wind, Gefälle und Sonnenschein des Gartens und die Maße zum Lesen</translation>
    </message>
</context>
<context>
    <name>PlanTools</name>
    <message>
        <source>End the drawing</source>
        <translation>Zeichnung beenden</translation>
    </message>
</context>
<context>
    <name>ProblemLine</name>
    <message>
        <source>I see</source>
        <translation>Verstanden</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>N</source>
        <comment>north on the plan</comment>
        <translation>N</translation>
    </message>
</context>
<context>
    <name>RoundPage</name>
    <message>
        <source>All round</source>
        <translation>Rundum</translation>
    </message>
    <message>
        <source>Back to the view from the side</source>
        <translation>Zurück zur Ansicht von der Seite</translation>
    </message>
    <message>
        <source>Try a cut</source>
        <translation>Probeschnitt</translation>
    </message>
    <message>
        <source>Press on a limb where you would cut it, and see what comes of it. With the keyboard: choose a limb, then Try it beside the answers.</source>
        <translation>Drücken Sie auf einen Ast, wo Sie ihn schneiden würden, und sehen Sie, was daraus wird. Mit der Tastatur: einen Ast wählen, dann „Probieren“ neben den Antworten.</translation>
    </message>
    <message>
        <source>What falls</source>
        <translation>Was fällt</translation>
    </message>
    <message>
        <source>Shows what the cuts take in a colour of its own, and still shows it when they are made</source>
        <translation>Zeigt in einer eigenen Farbe, was die Schnitte wegnehmen, und zeigt es auch noch, wenn sie gemacht sind</translation>
    </message>
    <message>
        <source>Tree and garden in three dimensions</source>
        <translation>Baum und Garten räumlich</translation>
    </message>
    <message>
        <source>%1 Arrow keys walk round and look from higher or lower, plus and minus go nearer or farther, 0 shows the whole tree, Page Down and Page Up choose the next limb and the one before.</source>
        <translation>%1 Pfeiltasten gehen herum und schauen von weiter oben oder unten, Plus und Minus gehen näher heran oder weiter weg, 0 zeigt den ganzen Baum, Bild ab und Bild auf wählen den nächsten Ast und den davor.</translation>
    </message>
    <message>
        <source>Here the window is drawn without a graphics card, so the tree can&apos;t be shown in three dimensions. The view from the side and the plan show the same tree.</source>
        <translation>Hier wird das Fenster ohne Grafikkarte gezeichnet, darum lässt sich der Baum nicht räumlich zeigen. Die Ansicht von der Seite und der Plan zeigen denselben Baum.</translation>
    </message>
    <message>
        <source>Nearer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Farther</source>
        <translation>Weiter weg</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Show the whole tree</source>
        <translation>Den ganzen Baum zeigen</translation>
    </message>
    <message>
        <source>Click a limb, or press Page Down, to see its figures.</source>
        <translation>Klicken Sie einen Ast an, oder drücken Sie Bild ab, um seine Zahlen zu sehen.</translation>
    </message>
</context>
<context>
    <name>SaveQuestion</name>
    <message>
        <source>Save your changes to %1?</source>
        <translation>Änderungen an %1 speichern?</translation>
    </message>
    <message>
        <source>If you don&apos;t save, what you drew since the last save is lost.</source>
        <translation>Ohne Speichern geht verloren, was Sie seit dem letzten Speichern gezeichnet haben.</translation>
    </message>
    <message>
        <source>Don&apos;t save</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>SearchField</name>
    <message>
        <source>%1. Up and Down choose, Enter takes.</source>
        <translation>%1. Auf und Ab wählen, Eingabe übernimmt.</translation>
    </message>
</context>
<context>
    <name>SearchLine</name>
    <message>
        <source>Stopped. Cuts, sun and ranges are not those of what is drawn now.</source>
        <translation>Angehalten. Schnitte, Sonne und Spannen gehören nicht zu dem, was jetzt gezeichnet ist.</translation>
    </message>
    <message>
        <source>Looking for the least that has to go…</source>
        <translation>Sucht das Wenigste, das weg muss…</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Ausrechnen</translation>
    </message>
    <message>
        <source>Stopped. The light over the year is not that of what is drawn now.</source>
        <translation>Angehalten. Das Licht übers Jahr gehört nicht zu dem, was jetzt gezeichnet ist.</translation>
    </message>
    <message>
        <source>Reckoning the light over the year…</source>
        <translation>Rechnet das Licht übers Jahr…</translation>
    </message>
</context>
<context>
    <name>ShapeHandle</name>
    <message>
        <source>Arrow up or plus: more, arrow down or minus: less, Shift for ten times as much</source>
        <translation>Pfeil auf oder Plus: mehr, Pfeil ab oder Minus: weniger, mit Umschalt das Zehnfache</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>SidePage</name>
    <message>
        <source>Draw a limb</source>
        <translation>Zeichnen</translation>
    </message>
    <message>
        <source>Draw one stroke from the limb it grows from. With the keyboard: Insert on a handle.</source>
        <translation>Ziehen Sie einen Strich von dem Ast aus, an dem er wächst. Mit der Tastatur: Einfg auf einem Griff.</translation>
    </message>
    <message>
        <source>Try a cut</source>
        <translation>Probeschnitt</translation>
    </message>
    <message>
        <source>Press on a limb where you would cut it, and see what comes of it. With the keyboard: choose a limb, then Try it beside the answers.</source>
        <translation>Drücken Sie auf einen Ast, wo Sie ihn schneiden würden, und sehen Sie, was daraus wird. Mit der Tastatur: einen Ast wählen, dann „Probieren“ neben den Antworten.</translation>
    </message>
    <message>
        <source>Side view</source>
        <translation>Seitenansicht</translation>
    </message>
    <message>
        <source>%1 Plus and minus zoom, arrow keys move the view, 0 shows all.</source>
        <translation>%1 Plus und Minus zoomen, Pfeiltasten bewegen die Ansicht, 0 zeigt alles.</translation>
    </message>
    <message>
        <source>Larger drawing</source>
        <translation>Zeichnung größer</translation>
    </message>
    <message>
        <source>Smaller drawing</source>
        <translation>Zeichnung kleiner</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Show the whole tree</source>
        <translation>Den ganzen Baum zeigen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Lay a photo under the drawing, to draw over it</source>
        <translation>Ein Foto unter die Zeichnung legen, um darüber zu zeichnen</translation>
    </message>
    <message>
        <source>All round</source>
        <translation>Rundum</translation>
    </message>
    <message>
        <source>The tree and its garden in three dimensions, with sun and shadow</source>
        <translation>Der Baum und sein Garten räumlich, mit Sonne und Schatten</translation>
    </message>
</context>
<context>
    <name>SideScene</name>
    <message>
        <source>needs %1</source>
        <translation>nötig %1</translation>
    </message>
    <message>
        <source>%1 clear</source>
        <translation>%1 frei</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>es fehlen %1</translation>
    </message>
</context>
<context>
    <name>StagesCard</name>
    <message>
        <source>How many visits will it take?</source>
        <translation>Wie viele Besuche braucht es?</translation>
    </message>
    <message>
        <source>Spreading the work over visits</source>
        <translation>Die Arbeit wird auf Besuche verteilt</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number and date of a visit</comment>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>ThingPanel</name>
    <message>
        <source>What is on the plan</source>
        <translation>Was auf dem Plan ist</translation>
    </message>
    <message>
        <source>Choose what to change</source>
        <translation>Wählen, was zu ändern ist</translation>
    </message>
    <message>
        <source>Choose a thing here or click it on the plan: its name, its sizes and its place stand here then, to be typed. Drag it by its middle or a corner.</source>
        <translation>Wählen Sie hier etwas aus, oder klicken Sie es auf dem Plan an: dann stehen hier Name, Maße und Standort zum Eintippen. Ziehen Sie es an der Mitte oder einer Ecke.</translation>
    </message>
    <message>
        <source>What you draw stands here: its name, its sizes and its place, to be typed.</source>
        <translation>Was Sie zeichnen, steht hier: Name, Maße und Standort, zum Eintippen.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>Plant, common or Latin name</source>
        <translation>Pflanze, deutscher oder lateinischer Name</translation>
    </message>
    <message>
        <source>Height of the wire</source>
        <translation>Höhe der Leitung</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Headroom wanted over it</source>
        <translation>Gewünschte lichte Höhe darüber</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>üblich: %1</translation>
    </message>
    <message>
        <source>Voltage, kV</source>
        <translation>Spannung, kV</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Stem, east</source>
        <translation>Stamm, östlich</translation>
    </message>
    <message>
        <source>Middle, east</source>
        <translation>Mitte, östlich</translation>
    </message>
    <message>
        <source>and north</source>
        <translation>und nördlich</translation>
    </message>
    <message>
        <source>Take it off the plan</source>
        <translation>Vom Plan nehmen</translation>
    </message>
    <message>
        <source>Kind of tree, common or Latin name</source>
        <translation>Baumart, deutscher oder lateinischer Name</translation>
    </message>
    <message>
        <source>Lowest leaf</source>
        <translation>Unterstes Laub</translation>
    </message>
    <message>
        <source>Stem</source>
        <translation>Stamm</translation>
    </message>
    <message>
        <source>Crown, length</source>
        <translation>Krone, Länge</translation>
    </message>
    <message>
        <source>and width</source>
        <translation>und Breite</translation>
    </message>
    <message>
        <source>Length towards</source>
        <translation>Länge nach</translation>
    </message>
</context>
<context>
    <name>TickRow</name>
    <message>
        <source>made otherwise</source>
        <translation>anders gemacht</translation>
    </message>
</context>
<context>
    <name>TopBar</name>
    <message>
        <source>New…</source>
        <translation>Neu…</translation>
    </message>
    <message>
        <source>Start a garden of your own</source>
        <translation>Einen eigenen Garten anlegen</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen…</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Sichern als…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Example gardens</source>
        <translation>Beispielgärten</translation>
    </message>
    <message>
        <source>Examples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>Diary</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>The diary is shown</source>
        <translation>Das Tagebuch wird gezeigt</translation>
    </message>
    <message>
        <source>The drawings are shown</source>
        <translation>Die Zeichnungen werden gezeigt</translation>
    </message>
    <message>
        <source>About it…</source>
        <translation>Daten…</translation>
    </message>
    <message>
        <source>Name, vigour, protection, signs seen, and taking the tree away</source>
        <translation>Name, Wuchskraft, Schutz, gesehene Zeichen, und den Baum herausnehmen</translation>
    </message>
    <message>
        <source>Add a tree…</source>
        <translation>Neuer Baum…</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholen: %1</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wieder</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Light colours</source>
        <translation>Helle Farben</translation>
    </message>
    <message>
        <source>Dark colours</source>
        <translation>Dunkle Farben</translation>
    </message>
    <message>
        <source>No tree yet</source>
        <translation>Noch kein Baum</translation>
    </message>
</context>
<context>
    <name>TreeSheet</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>What you call it</source>
        <translation>Wie Sie ihn nennen</translation>
    </message>
    <message>
        <source>Planted in</source>
        <translation>Gepflanzt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>How it fares</source>
        <translation>Wie es ihm geht</translation>
    </message>
    <message>
        <source>Protected?</source>
        <translation>Geschützt?</translation>
    </message>
    <message>
        <source>What you see from the ground</source>
        <translation>Was Sie vom Boden aus sehen</translation>
    </message>
    <message>
        <source>Take this tree out of the garden</source>
        <translation>Diesen Baum aus dem Garten nehmen</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Its buds break on</source>
        <translation>Austrieb am</translation>
    </message>
    <message>
        <source>by species and place</source>
        <translation>nach Art und Standort</translation>
    </message>
    <message>
        <source>Half of its leaves are down on</source>
        <translation>Hälfte des Laubs gefallen am</translation>
    </message>
</context>
<context>
    <name>TrialCard</name>
    <message>
        <source>What if I cut here?</source>
        <translation>Was, wenn ich hier schneide?</translation>
    </message>
    <message>
        <source>Press “Try a cut”, then a limb where you would saw. Nothing is changed by it.</source>
        <translation>Drücken Sie „Probeschnitt“, dann einen Ast, wo Sie sägen würden. Geändert wird dadurch nichts.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number and instruction of a cut</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurücksetzen</translation>
    </message>
    <message>
        <source>Put back: %1</source>
        <translation>Zurücksetzen: %1</translation>
    </message>
    <message>
        <source>Try without %1</source>
        <translation>Probieren: ohne %1</translation>
    </message>
    <message>
        <source>Start from the suggested cuts</source>
        <translation>Mit den vorgeschlagenen Schnitten beginnen</translation>
    </message>
    <message>
        <source>Put all back</source>
        <translation>Alle zurücksetzen</translation>
    </message>
    <message>
        <source>Try renewing its fruiting wood</source>
        <translation>Verjüngen des Fruchtholzes probieren</translation>
    </message>
    <message>
        <source>Try opening the middle</source>
        <translation>Öffnen der Mitte probieren</translation>
    </message>
</context>
<context>
    <name>UnderlayBar</name>
    <message>
        <source>A photo of the tree</source>
        <translation>Ein Foto des Baums</translation>
    </message>
    <message>
        <source>Choose a picture…</source>
        <translation>Bild wählen…</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Drag it under the drawing; arrow keys move it too</source>
        <translation>Unter der Zeichnung ziehen; auch die Pfeiltasten verschieben es</translation>
    </message>
    <message>
        <source>Known length</source>
        <translation>Bekannte Länge</translation>
    </message>
    <message>
        <source>Two presses on something whose length you know set the scale</source>
        <translation>Zwei Klicks auf etwas, dessen Länge Sie kennen, setzen den Maßstab</translation>
    </message>
    <message>
        <source>Upright edge</source>
        <translation>Senkrechte Kante</translation>
    </message>
    <message>
        <source>Two presses on an edge that is upright in truth take out how the camera was tilted</source>
        <translation>Zwei Klicks auf eine Kante, die in Wirklichkeit senkrecht ist, nehmen die Neigung der Kamera heraus</translation>
    </message>
    <message>
        <source>Turned %1</source>
        <translation>Gedreht %1</translation>
    </message>
    <message>
        <source>Turn the photo</source>
        <translation>Das Foto drehen</translation>
    </message>
    <message>
        <source>Strength %1</source>
        <translation>Stärke %1</translation>
    </message>
    <message>
        <source>How strong the photo is</source>
        <translation>Wie stark das Foto zu sehen ist</translation>
    </message>
    <message>
        <source>Take it away</source>
        <translation>Wegnehmen</translation>
    </message>
    <message>
        <source>It stays among the tree&apos;s photos in the diary</source>
        <translation>Es bleibt bei den Fotos des Baums im Tagebuch</translation>
    </message>
    <message>
        <source>Look that way</source>
        <translation>Dorthin blicken</translation>
    </message>
    <message>
        <source>Length between the two points</source>
        <translation>Länge zwischen den beiden Punkten</translation>
    </message>
    <message>
        <source>Set the scale</source>
        <translation>Maßstab setzen</translation>
    </message>
</context>
<context>
    <name>ViewBar</name>
    <message>
        <source>As it stands</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>After the cuts</source>
        <translation>Danach</translation>
    </message>
</context>
<context>
    <name>VisitRow</name>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>Take this visit out</source>
        <translation>Besuch herausnehmen</translation>
    </message>
    <message>
        <source>Take this visit out of the diary: %1</source>
        <translation>Diesen Besuch aus dem Tagebuch nehmen: %1</translation>
    </message>
</context>
<context>
    <name>VisitSheet</name>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Who did it</source>
        <translation>Wer es war</translation>
    </message>
    <message>
        <source>Which of the planned cuts were made?</source>
        <translation>Welche der geplanten Schnitte wurden gemacht?</translation>
    </message>
    <message>
        <source>All of them</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Other cuts, or those of an earlier visit</source>
        <translation>Andere Schnitte, oder die eines früheren Besuchs</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove: %1</source>
        <translation>Entfernen: %1</translation>
    </message>
    <message>
        <source>Kind of cut</source>
        <translation>Art des Schnitts</translation>
    </message>
    <message>
        <source>Limb; one that is gone can be written in</source>
        <translation>Ast; einer, den es nicht mehr gibt, kann eingetippt werden</translation>
    </message>
    <message>
        <source>Thinned by</source>
        <translation>Ausgelichtet um</translation>
    </message>
    <message>
        <source>Lifted to</source>
        <translation>Angehoben auf</translation>
    </message>
    <message>
        <source>Shortened to</source>
        <translation>Gekürzt auf</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzu</translation>
    </message>
    <message>
        <source>Add this cut</source>
        <translation>Diesen Schnitt hinzufügen</translation>
    </message>
    <message>
        <source>Make these cuts on the sketch too</source>
        <translation>Diese Schnitte auch an der Skizze machen</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Was gemessen wurde</translation>
    </message>
    <message>
        <source>Headroom over %1 (%2)</source>
        <translation>Lichte Höhe über %1 (%2)</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Headroom over %1 before</source>
        <translation>Lichte Höhe über %1 vorher</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>Headroom over %1 after</source>
        <translation>Lichte Höhe über %1 nachher</translation>
    </message>
    <message>
        <source>Share of the leaf that went</source>
        <translation>Anteil des Laubs, der ging</translation>
    </message>
    <message>
        <source>Come again on</source>
        <translation>Nächster Besuch am</translation>
    </message>
    <message>
        <source>Warmth in the shade</source>
        <translation>Wärme im Schatten</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Gusts</source>
        <translation>Böen</translation>
    </message>
    <message>
        <source>In your words</source>
        <translation>In Ihren Worten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Write it in the diary</source>
        <translation>Ins Tagebuch schreiben</translation>
    </message>
    <message>
        <source>A limb whose tip you measured and drew where it is now</source>
        <translation>Ein Ast, dessen Spitze Sie gemessen und gezeichnet haben, wo sie jetzt ist</translation>
    </message>
    <message>
        <source>Note its tip</source>
        <translation>Spitze notieren</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Words under it</source>
        <translation>Worte darunter</translation>
    </message>
    <message>
        <source>Remove photo %1</source>
        <translation>Foto %1 entfernen</translation>
    </message>
</context>
<context>
    <name>WalkRound</name>
    <message>
        <source>Walk round the tree</source>
        <translation>Um den Baum gehen</translation>
    </message>
</context>
<context>
    <name>WalkThrough</name>
    <message>
        <source>A tree of somebody else&apos;s</source>
        <translation>Ein fremder Baum</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Was das bedeutet</translation>
    </message>
    <message>
        <source>What to cut</source>
        <translation>Was zu schneiden ist</translation>
    </message>
    <message>
        <source>Wind, day and hour</source>
        <translation>Wind, Tag und Stunde</translation>
    </message>
    <message>
        <source>The garden from above</source>
        <translation>Der Garten von oben</translation>
    </message>
    <message>
        <source>Now yours</source>
        <translation>Und nun Ihrer</translation>
    </message>
    <message>
        <source>Here it stands as somebody sees it from the side. Try it out: drag a dot to bend a limb, the slider walks round the tree. Undo takes everything back.</source>
        <translation>Hier steht er, wie man ihn von der Seite sieht. Probieren Sie es aus: Ziehen Sie an einem Punkt, und der Ast biegt sich; der Schieber führt um den Baum herum. „Zurück“ nimmt alles zurück.</translation>
    </message>
    <message>
        <source>The answers stand here and follow what you draw: room beneath it, what a storm asks of it, sun for the plants. Press a line to read it in full, and why it is that number.</source>
        <translation>Hier stehen die Antworten, und sie folgen dem, was Sie zeichnen: Platz darunter, was ein Sturm ihm abverlangt, Sonne für die Pflanzen. Drücken Sie auf eine Zeile, um sie ganz zu lesen, und warum die Zahl so ist.</translation>
    </message>
    <message>
        <source>The least that has to go for what you want of the tree, in working order. Leave or take a limb, and the rest is found again. Try a cut, over the drawing, shows what a cut of your own would do.</source>
        <translation>Das Wenigste, das für Ihre Ziele weg muss, in der Reihenfolge der Arbeit. Lassen Sie einen Ast oder nehmen Sie ihn, und der Rest wird neu gefunden. „Probeschnitt“ über der Zeichnung zeigt, was ein Schnitt von Ihnen bewirken würde.</translation>
    </message>
    <message>
        <source>All answers are for the wind, the day and the hour that are set here.</source>
        <translation>Alle Antworten gelten für den Wind, den Tag und die Stunde, die hier eingestellt sind.</translation>
    </message>
    <message>
        <source>What lies under the tree and beside it: paths, hedges, beds, buildings, wires. Draw on the plan makes it large.</source>
        <translation>Was unter dem Baum und neben ihm liegt: Wege, Hecken, Beete, Gebäude, Leitungen. „Auf dem Plan zeichnen“ macht ihn groß.</translation>
    </message>
    <message>
        <source>New starts your garden: its place, then a tree, by its kind and a tape round its stem. F1 shows this walk again. What you read are estimates from a sketch: none of it says that a tree is safe.</source>
        <translation>„Neu“ beginnt Ihren Garten: sein Ort, dann ein Baum, nach seiner Art und einem Maßband um den Stamm. F1 zeigt diesen Rundgang wieder. Was Sie lesen, sind Schätzungen aus einer Skizze: Nichts davon sagt, dass ein Baum sicher ist.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Hier bleiben</translation>
    </message>
    <message>
        <source>Enough</source>
        <translation>Genug</translation>
    </message>
    <message>
        <source>Ends the walk; F1 shows it again</source>
        <translation>Beendet den Rundgang; F1 zeigt ihn wieder</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>A garden of my own</source>
        <translation>Ein eigener Garten</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
</context>
<context>
    <name>WhoCard</name>
    <message>
        <source>Me, or a professional?</source>
        <translation>Ich, oder ein Fachmann?</translation>
    </message>
    <message>
        <source>Why? The rules and who wrote them</source>
        <translation>Warum? Die Regeln, und von wem sie sind</translation>
    </message>
</context>
<context>
    <name>WhyButton</name>
    <message>
        <source>Why this number?</source>
        <translation>Warum diese Zahl?</translation>
    </message>
</context>
<context>
    <name>WhyPage</name>
    <message>
        <source>Working it out…</source>
        <translation>Wird ausgearbeitet…</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Back to the answers</source>
        <translation>Zurück zu den Antworten</translation>
    </message>
    <message>
        <source>Numbers such as L10 or A2 are those of the formulas in %1 of the program&apos;s documentation.</source>
        <translation>Nummern wie L10 oder A2 sind die der Formeln in %1 der Dokumentation des Programms.</translation>
    </message>
</context>
<context>
    <name>WindWords</name>
    <message>
        <source>calm</source>
        <translation>Windstille</translation>
    </message>
    <message>
        <source>light air</source>
        <translation>leiser Zug</translation>
    </message>
    <message>
        <source>light breeze</source>
        <translation>leichte Brise</translation>
    </message>
    <message>
        <source>gentle breeze</source>
        <translation>schwache Brise</translation>
    </message>
    <message>
        <source>moderate breeze</source>
        <translation>mäßige Brise</translation>
    </message>
    <message>
        <source>fresh breeze</source>
        <translation>frische Brise</translation>
    </message>
    <message>
        <source>strong breeze</source>
        <translation>starker Wind</translation>
    </message>
    <message>
        <source>near gale</source>
        <translation>steifer Wind</translation>
    </message>
    <message>
        <source>gale</source>
        <translation>stürmischer Wind</translation>
    </message>
    <message>
        <source>severe gale</source>
        <translation>Sturm</translation>
    </message>
    <message>
        <source>storm</source>
        <translation>schwerer Sturm</translation>
    </message>
    <message>
        <source>violent storm</source>
        <translation>orkanartiger Sturm</translation>
    </message>
    <message>
        <source>hurricane force</source>
        <translation>Orkan</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1: %2</source>
        <comment>a tree, and what it is due for</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2).</source>
        <comment>when (overdue)</comment>
        <translation>%1 (%2).</translation>
    </message>
    <message>
        <source>Trees of the garden</source>
        <translation>Bäume des Gartens</translation>
    </message>
    <message>
        <source>%1 was not written: %2.</source>
        <translation>%1 wurde nicht geschrieben: %2.</translation>
    </message>
    <message>
        <source>%1 reminders were written to %2. Importing a newer one later moves them, and adds none twice.</source>
        <translation>%1 Erinnerungen wurden nach %2 geschrieben. Eine neuere später einzulesen verschiebt sie und verdoppelt keine.</translation>
    </message>
    <message>
        <source>it was changed by another program meanwhile; try again</source>
        <translation>ein anderes Programm hat sie inzwischen geändert; versuchen Sie es noch einmal</translation>
    </message>
    <message>
        <source>a visit on %1</source>
        <comment>a step of history</comment>
        <translation>ein Besuch am %1</translation>
    </message>
    <message>
        <source>Written to the diary of %1: %2.</source>
        <translation>Ins Tagebuch von %1 geschrieben: %2.</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Due in the garden on %1</source>
        <translation>Fällig im Garten am %1</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Nichts ist fällig.</translation>
    </message>
    <message>
        <source>No planting is drawn in this garden.</source>
        <translation>In diesem Garten ist keine Pflanzung gezeichnet.</translation>
    </message>
    <message>
        <source>cavity</source>
        <translation>Höhlung</translation>
    </message>
    <message>
        <source>open cavity</source>
        <translation>offene Höhlung</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>Riss</translation>
    </message>
    <message>
        <source>dead from here to the tip</source>
        <translation>von hier bis zur Spitze tot</translation>
    </message>
    <message>
        <source>%1 at %2 from its union</source>
        <translation>%1 %2 vom Ansatz</translation>
    </message>
    <message>
        <source>, %1 of sound wood left</source>
        <translation>, %1 gesundes Holz verbleiben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: bark pressed into its union.</source>
        <translation>%1: eingeschlossene Rinde am Ansatz.</translation>
    </message>
    <message>
        <source>%1: two stems of much the same size at its union.</source>
        <translation>%1: zwei fast gleich starke Stämmlinge am Ansatz.</translation>
    </message>
    <message>
        <source>No sign or defect was noted from the ground; nobody has climbed or probed it.</source>
        <translation>Vom Boden aus wurde kein Zeichen und kein Schaden notiert; niemand ist hinaufgestiegen oder hat das Holz untersucht.</translation>
    </message>
    <message>
        <source>%1 %2, %3 from the stem</source>
        <translation>%1 %2, %3 vom Stamm</translation>
    </message>
    <message>
        <source>overhead wire</source>
        <translation>Freileitung</translation>
    </message>
    <message>
        <source>structure</source>
        <translation>Bauwerk</translation>
    </message>
    <message>
        <source>ground in use</source>
        <translation>genutzter Boden</translation>
    </message>
    <message>
        <source>planting</source>
        <translation>Pflanzung</translation>
    </message>
    <message>
        <source>nothing drawn within %1</source>
        <translation>nichts gezeichnet im Umkreis von %1</translation>
    </message>
    <message>
        <source>, looking %1</source>
        <translation>, Blick nach %1</translation>
    </message>
    <message>
        <source>A look at the tree, and advice.</source>
        <translation>Ein Blick auf den Baum, und Rat.</translation>
    </message>
    <message>
        <source>%1) %2 of %3, wound %4, %5</source>
        <translation>%1) %2 von %3, Wunde %4, %5</translation>
    </message>
    <message>
        <source>shoots only</source>
        <translation>nur Triebe</translation>
    </message>
    <message>
        <source>A sketch suggests, for %1 of the leaf: %2. It is a question to the arborist, not an order.</source>
        <translation>Eine Skizze schlägt vor, für %1 des Laubs: %2. Das ist eine Frage an den Baumpfleger, kein Auftrag.</translation>
    </message>
    <message>
        <source>Legal protection: not known; the local authority has to be asked.</source>
        <translation>Gesetzlicher Schutz: nicht bekannt; die örtliche Behörde ist zu fragen.</translation>
    </message>
    <message>
        <source>Legal protection: none known to the owner.</source>
        <translation>Gesetzlicher Schutz: dem Eigentümer nicht bekannt.</translation>
    </message>
    <message>
        <source>Legal protection: the tree is protected; consent comes first.</source>
        <translation>Gesetzlicher Schutz: der Baum ist geschützt; zuerst kommt die Genehmigung.</translation>
    </message>
    <message>
        <source>Certified or licensed as the law here asks: the number, to look up with the body that gave it.</source>
        <translation>Geprüft oder zugelassen, wie es das Gesetz hier verlangt: die Nummer, zum Nachfragen bei der Stelle, die sie vergab.</translation>
    </message>
    <message>
        <source>Insured: certificates of liability and of cover for the workers, valid on the day; ring the insurer.</source>
        <translation>Versichert: Nachweise der Haftpflicht und der Unfallversicherung der Arbeitenden, am Tag gültig; rufen Sie den Versicherer an.</translation>
    </message>
    <message>
        <source>Works to the standard in force here for pruning and for safe work (ANSI A300 and Z133, BS 3998, EN or the local one). No topping, no lion&apos;s tails, no climbing spikes on a tree that stays.</source>
        <translation>Arbeitet nach dem hier geltenden Regelwerk für Schnitt und Arbeitssicherheit (ANSI A300 und Z133, BS 3998, EN oder das örtliche). Keine Kappung, kein Leerschneiden des Kroneninneren, keine Steigeisen an einem Baum, der stehen bleibt.</translation>
    </message>
    <message>
        <source>A written offer from a visit: what is cut, where, how much of the leaf, who carries it away, what it costs, when. Two or three offers.</source>
        <translation>Ein schriftliches Angebot nach Besichtigung: was geschnitten wird, wo, wie viel Laub, wer es abfährt, was es kostet, wann. Zwei oder drei Angebote.</translation>
    </message>
    <message>
        <source>Who rings the line&apos;s operator, asks the authority for permits, looks for nests and bats, and keeps the path shut.</source>
        <translation>Wer den Netzbetreiber anruft, die Behörde um Genehmigung fragt, nach Nestern und Fledermäusen sucht und den Weg sperrt.</translation>
    </message>
    <message>
        <source>References of like work. Be slow with who knocks at the door or wants the money first.</source>
        <translation>Referenzen ähnlicher Arbeiten. Vorsicht, wenn jemand an der Tür klingelt oder das Geld vorher will.</translation>
    </message>
    <message>
        <source>For an arborist: %1</source>
        <translation>Für den Baumpfleger: %1</translation>
    </message>
    <message>
        <source>Crown reaches %1 from the stem, about %2 above ground.</source>
        <translation>Die Krone reicht %1 vom Stamm, etwa %2 über dem Boden.</translation>
    </message>
    <message>
        <source>What is wanted, and why</source>
        <translation>Was gewünscht ist, und warum</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was gesehen wurde</translation>
    </message>
    <message>
        <source>Below and around</source>
        <translation>Darunter und ringsum</translation>
    </message>
    <message>
        <source>Access (width of the gate, slope, parking, soft ground): ______________________________________________</source>
        <translation>Zugang (Breite des Tors, Gefälle, Parken, weicher Boden): ______________________________________________</translation>
    </message>
    <message>
        <source>What to ask</source>
        <translation>Was zu fragen ist</translation>
    </message>
    <message>
        <source>All figures are estimates from a sketch, not an inspection. Local rules and the judgement of who stands under the tree come before anything said here.</source>
        <translation>Alle Zahlen sind Schätzungen aus einer Skizze, keine Baumkontrolle. Die örtlichen Vorschriften und das Urteil dessen, der unter dem Baum steht, gehen allem hier Gesagten vor.</translation>
    </message>
    <message>
        <source>%1 (from %2)</source>
        <translation>%1 (ab %2)</translation>
    </message>
    <message>
        <source>Limbs, lightest tint first: %1 of their expected strength in the gust.</source>
        <translation>Äste, hellste Farbe zuerst: %1 der erwarteten Festigkeit in der Bö.</translation>
    </message>
    <message>
        <source>The tree as it stands, looking %1.</source>
        <translation>Der Baum, wie er steht, Blick nach %1.</translation>
    </message>
    <message>
        <source>The tree as it stands, looking %1. Numbers: the cuts, in working order.</source>
        <translation>Der Baum, wie er steht, Blick nach %1. Zahlen: die Schnitte in Arbeitsfolge.</translation>
    </message>
    <message>
        <source>After the cuts; what has gone is dashed.</source>
        <translation>Nach den Schnitten; was wegging, ist gestrichelt.</translation>
    </message>
    <message>
        <source>From above, north up; dashed: where the side view is seen from.</source>
        <translation>Von oben, Norden oben; gestrichelt: von wo die Seitenansicht gesehen ist.</translation>
    </message>
    <message>
        <source>The garden from above, north up.</source>
        <translation>Der Garten von oben, Norden oben.</translation>
    </message>
    <message>
        <source>%1: hours of direct sun a day, month by month</source>
        <translation>%1: Stunden direkter Sonne am Tag, Monat für Monat</translation>
    </message>
    <message>
        <source>Tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Cuts</source>
        <translation>Schnitte</translation>
    </message>
    <message>
        <source>Leaf taken</source>
        <translation>Entnommenes Laub</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>As it stands on %1, for gusts of %2.</source>
        <translation>Wie er am %1 steht, für Böen von %2.</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>after the cuts</source>
        <translation>nach den Schnitten</translation>
    </message>
    <message>
        <source>needed: %1</source>
        <translation>nötig: %1</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>young</source>
        <translation>jung</translation>
    </message>
    <message>
        <source>mature</source>
        <translation>ausgewachsen</translation>
    </message>
    <message>
        <source>old</source>
        <translation>alt</translation>
    </message>
    <message>
        <source>under stress</source>
        <translation>unter Stress</translation>
    </message>
    <message>
        <source>%1, %2 tall, stem %3 thick at breast height, %4</source>
        <translation>%1, %2 hoch, Stamm %3 dick in Brusthöhe, %4</translation>
    </message>
    <message>
        <source>, planted %1</source>
        <translation>, gepflanzt %1</translation>
    </message>
    <message>
        <source>Before you trust or touch anything</source>
        <translation>Bevor Sie vertrauen oder etwas anfassen</translation>
    </message>
    <message>
        <source>Shoots, about %1, %2</source>
        <translation>Triebe, etwa %1, %2</translation>
    </message>
    <message>
        <source>%1) %2, about %3; %4 thick, %5 up, %6</source>
        <translation>%1) %2, etwa %3; %4 dick, %5 hoch, %6</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>%1, short by %2</source>
        <translation>%1, es fehlen %2</translation>
    </message>
    <message>
        <source>none to count on</source>
        <translation>keine, auf die zu zählen ist</translation>
    </message>
    <message>
        <source>any gust</source>
        <translation>jede Bö</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>Feels like, in the shade (heat and humidity)</source>
        <translation>Gefühlt, im Schatten (Hitze und Feuchte)</translation>
    </message>
    <message>
        <source>Feels like, in full sun</source>
        <translation>Gefühlt, in voller Sonne</translation>
    </message>
    <message>
        <source>Air, for the tree</source>
        <translation>Luft, für den Baum</translation>
    </message>
    <message>
        <source>Gusts while at work</source>
        <translation>Böen während der Arbeit</translation>
    </message>
    <message>
        <source>Frost</source>
        <translation>Frost</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>It comes down as</source>
        <translation>Es fällt an als</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Über</translation>
    </message>
    <message>
        <source>Needed</source>
        <translation>Nötig</translation>
    </message>
    <message>
        <source>At its heaviest</source>
        <translation>Am schwersten</translation>
    </message>
    <message>
        <source>After the cuts</source>
        <translation>Nach den Schnitten</translation>
    </message>
    <message>
        <source>Then at its heaviest</source>
        <translation>Dann am schwersten</translation>
    </message>
    <message>
        <source>Limb</source>
        <translation>Ast</translation>
    </message>
    <message>
        <source>Load now</source>
        <translation>Last jetzt</translation>
    </message>
    <message>
        <source>One in ten breaks in</source>
        <translation>Einer von zehn bricht bei</translation>
    </message>
    <message>
        <source>Half break in</source>
        <translation>Die Hälfte bricht bei</translation>
    </message>
    <message>
        <source>Nine in ten break in</source>
        <translation>Neun von zehn brechen bei</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>Planting</source>
        <translation>Pflanzung</translation>
    </message>
    <message>
        <source>Sun a day now</source>
        <translation>Sonne am Tag jetzt</translation>
    </message>
    <message>
        <source>Is that enough?</source>
        <translation>Reicht das?</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>avoid</source>
        <translation>meiden</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>On the day</source>
        <translation>Am Tag</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Not today</source>
        <translation>Heute nicht</translation>
    </message>
    <message>
        <source>Read off</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>%1 and less</source>
        <translation>%1 und weniger</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>Strength of green wood</source>
        <translation>Festigkeit des grünen Holzes</translation>
    </message>
    <message>
        <source>Weight of green limbs</source>
        <translation>Gewicht grüner Äste</translation>
    </message>
    <message>
        <source>How much leaf the crown bears</source>
        <translation>Wie viel Laub die Krone trägt</translation>
    </message>
    <message>
        <source>Good and bad months</source>
        <translation>Gute und schlechte Monate</translation>
    </message>
    <message>
        <source>How fast shoots grow</source>
        <translation>Wie schnell Triebe wachsen</translation>
    </message>
    <message>
        <source>Loads, headroom, light, regrowth and drop zones: the method notes of Underbough (docs/methods), each formula with its source.</source>
        <translation>Lasten, lichte Höhe, Licht, Nachwuchs und Fallbereiche: die Methodenseiten von Underbough (docs/methods), jede Formel mit ihrer Quelle.</translation>
    </message>
    <message>
        <source>%1: the work</source>
        <translation>%1: die Arbeit</translation>
    </message>
    <message>
        <source>What stands in the way:</source>
        <translation>Was im Weg steht:</translation>
    </message>
    <message>
        <source>The cuts, in working order</source>
        <translation>Die Schnitte, in Arbeitsfolge</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>Months for cutting %1 here:</source>
        <translation>Monate, um hier %1 zu schneiden:</translation>
    </message>
    <message>
        <source>Who does it, and why</source>
        <translation>Wer es macht, und warum</translation>
    </message>
    <message>
        <source>Before and after</source>
        <translation>Vorher und nachher</translation>
    </message>
    <message>
        <source>Headroom, dry and as it hangs at its heaviest, wet and in fruit:</source>
        <translation>Lichte Höhe, trocken und am schwersten, nass und mit Früchten:</translation>
    </message>
    <message>
        <source>Load in a gust of %1, as a share of the expected strength: at 100 % half of such limbs would be expected to fail, and some fail well before.</source>
        <translation>Last in einer Bö von %1, als Anteil der erwarteten Festigkeit: bei 100 % wäre zu erwarten, dass die Hälfte solcher Äste versagt, und manche versagen deutlich früher.</translation>
    </message>
    <message>
        <source>How long it holds</source>
        <translation>Wie lange es hält</translation>
    </message>
    <message>
        <source>The year of light</source>
        <translation>Das Lichtjahr</translation>
    </message>
    <message>
        <source>Where the figures come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>The cuts below take it off.</source>
        <translation>Die Schnitte unten nehmen ihn ab.</translation>
    </message>
    <message>
        <source>After the cuts: %1.</source>
        <translation>Nach den Schnitten: %1.</translation>
    </message>
    <message>
        <source>The other limbs are asked for less.</source>
        <translation>Den anderen Ästen wird weniger abverlangt.</translation>
    </message>
    <message>
        <source>Load in the gust</source>
        <translation>Last in der Bö</translation>
    </message>
    <message>
        <source>The tree weighs about %1 above ground, green. A gust of %2 reaches %3 at its top and bends it with %4 at the ground.</source>
        <translation>Der Baum wiegt über dem Boden etwa %1, grün. Eine Bö von %2 erreicht an seiner Spitze %3 und biegt ihn am Boden mit %4.</translation>
    </message>
    <message>
        <source>%1 of it is rain on leaf and twigs.</source>
        <translation>%1 davon sind Regen auf Laub und Zweigen.</translation>
    </message>
    <message>
        <source>%1 of it is ice. Wind takes a firmer hold of ice than reckoned here, so its gusts are worse than told.</source>
        <translation>%1 davon sind Eis. Wind packt Eis fester als hier gerechnet, seine Böen sind also schlimmer als angegeben.</translation>
    </message>
    <message>
        <source>100 % is where half of such limbs would be expected to fail: some fail well before. Gusts are three-second gusts as forecasts give them; a force is that of the steady wind that brings such gusts.</source>
        <translation>Bei 100 % wäre zu erwarten, dass die Hälfte solcher Äste versagt: manche versagen deutlich früher. Böen sind Drei-Sekunden-Böen, wie Vorhersagen sie angeben; eine Stärke meint den stetigen Wind, der solche Böen bringt.</translation>
    </message>
    <message>
        <source>How far limbs sag</source>
        <translation>Wie weit Äste sich senken</translation>
    </message>
    <message>
        <source>As drawn, some wood bends past all reckoning when the tree is %1: tape its thickness, and look at its load above.</source>
        <translation>So wie gezeichnet biegt sich manches Holz über jede Rechnung hinaus, wenn der Baum %1 ist: messen Sie seine Dicke nach, und sehen Sie sich seine Last oben an.</translation>
    </message>
    <message>
        <source>Hardly at all, even when the tree is %1.</source>
        <translation>Kaum, selbst wenn der Baum %1 ist.</translation>
    </message>
    <message>
        <source>When the tree is %1, against how it was drawn. Within a factor of two: it hangs on diameters, leaf and stiffness.</source>
        <translation>Wenn der Baum %1 ist, gegenüber der Zeichnung. Auf den Faktor zwei genau: es hängt an Durchmessern, Laub und Steifigkeit.</translation>
    </message>
    <message>
        <source>Sun on the plantings, %1</source>
        <translation>Sonne auf den Pflanzungen, %1</translation>
    </message>
    <message>
        <source>%1, assessed for %2 and gusts of %3: three-second gusts 10 m above open ground, as forecasts give them.</source>
        <translation>%1, beurteilt für den %2 und Böen von %3: Drei-Sekunden-Böen 10 m über freiem Gelände, wie Vorhersagen sie angeben.</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>No visit has been written yet.</source>
        <translation>Noch ist kein Besuch eingetragen.</translation>
    </message>
    <message>
        <source>Leaf by season, from leaf fall to leaf fall</source>
        <translation>Laub je Saison, von Laubfall zu Laubfall</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a season, and what was taken in it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Counted over the last twelve months, as plans are, %1 may go now.</source>
        <translation>Über die letzten zwölf Monate gezählt, wie bei den Plänen, dürfen jetzt %1 weg.</translation>
    </message>
    <message>
        <source>%1 (%2): %3.</source>
        <comment>when (overdue): what</comment>
        <translation>%1 (%2): %3.</translation>
    </message>
    <message>
        <source>Next due</source>
        <translation>Als Nächstes fällig</translation>
    </message>
    <message>
        <source>Growth</source>
        <translation>Wachstum</translation>
    </message>
    <message>
        <source>Wounds</source>
        <translation>Wunden</translation>
    </message>
    <message>
        <source>Closing is reckoned from how much wood the species puts on; wounds differ. A wound that is closed can still hide decay.</source>
        <translation>Das Schließen ist danach gerechnet, wie viel Holz die Baumart zulegt; Wunden sind verschieden. Auch unter einer geschlossenen Wunde kann noch Fäule stecken.</translation>
    </message>
    <message>
        <source>The gust that breaks it</source>
        <translation>Die Bö, die ihn bricht</translation>
    </message>
    <message>
        <source>%1 of %2: why the figures are what they are</source>
        <translation>%1 von %2: warum die Zahlen so sind</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>full sun, enough</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>sun, h</source>
        <translation>Sonne, h</translation>
    </message>
    <message>
        <source>open</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>mol</source>
        <translation>mol</translation>
    </message>
    <message>
        <source>No tree and no wall takes light worth telling.</source>
        <translation>Kein Baum und keine Wand nimmt nennenswert Licht.</translation>
    </message>
    <message>
        <source>Who takes it, mean day of %1:</source>
        <translation>Wer es nimmt, mittlerer Tag (%1):</translation>
    </message>
    <message>
        <source>Walls, fences and other plantings take %1 of sun.</source>
        <translation>Wände, Zäune und andere Pflanzungen nehmen %1 Sonne.</translation>
    </message>
    <message>
        <source>What a cut alone would give back, the cheapest hour of sun first:</source>
        <translation>Was ein Schnitt allein zurückgäbe, die billigste Sonnenstunde zuerst:</translation>
    </message>
    <message>
        <source>Cuts that cost more leaf for an hour of sun are left out here; --json has them all.</source>
        <translation>Schnitte, die für eine Sonnenstunde mehr Laub kosten, fehlen hier; --json hat sie alle.</translation>
    </message>
    <message>
        <source>Light on the plantings, %1</source>
        <translation>Licht auf den Pflanzungen, %1</translation>
    </message>
    <message>
        <source>Each cut is told by itself, for the mean day of %1. How much may go at once, where and by whom is what &quot;suggest&quot; answers.</source>
        <translation>Jeder Schnitt steht für sich, für den mittleren Tag (%1). Wie viel auf einmal gehen darf, wo und durch wen, beantwortet „suggest“.</translation>
    </message>
    <message>
        <source>Over several visits</source>
        <translation>Über mehrere Besuche</translation>
    </message>
    <message>
        <source>What more and less of the leaf buys</source>
        <translation>Was mehr und weniger Laub bringt</translation>
    </message>
    <message>
        <source>Each by itself, with the cuts that are best for it; what one set of cuts does for all of them is under “What to cut”.</source>
        <translation>Jedes für sich, mit den Schnitten, die dafür am besten sind; was eine Reihe von Schnitten für alle leistet, steht unter „Was zu schneiden ist“.</translation>
    </message>
    <message>
        <source>Afterwards:</source>
        <translation>Danach:</translation>
    </message>
    <message>
        <source>What you want of it</source>
        <translation>Was Sie von ihm wollen</translation>
    </message>
    <message>
        <source>Who does it</source>
        <translation>Wer es macht</translation>
    </message>
    <message>
        <source>%1: %2, %3 tall, stem %4 thick at breast height</source>
        <translation>%1: %2, %3 hoch, Stamm %4 dick in Brusthöhe</translation>
    </message>
    <message>
        <source>Headroom</source>
        <translation>Lichte Höhe</translation>
    </message>
    <message>
        <source>No strip of ground is drawn, so there is nothing to measure over.</source>
        <translation>Keine Fläche ist gezeichnet, also gibt es nichts, worüber zu messen wäre.</translation>
    </message>
    <message>
        <source>What to cut</source>
        <translation>Was zu schneiden ist</translation>
    </message>
    <message>
        <source>Path, drive or seat</source>
        <translation>Weg, Zufahrt oder Sitzplatz</translation>
    </message>
    <message>
        <source>Hedge</source>
        <translation>Hecke</translation>
    </message>
    <message>
        <source>Bed</source>
        <translation>Beet</translation>
    </message>
    <message>
        <source>Lawn</source>
        <translation>Rasen</translation>
    </message>
    <message>
        <source>Shrubs</source>
        <translation>Sträucher</translation>
    </message>
    <message>
        <source>Building, fence or pond</source>
        <translation>Gebäude, Zaun oder Teich</translation>
    </message>
    <message>
        <source>Electric line</source>
        <translation>Stromleitung</translation>
    </message>
    <message>
        <source>path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>hedge</source>
        <translation>Hecke</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>Beet</translation>
    </message>
    <message>
        <source>lawn</source>
        <translation>Rasen</translation>
    </message>
    <message>
        <source>shrubs</source>
        <translation>Sträucher</translation>
    </message>
    <message>
        <source>building</source>
        <translation>Gebäude</translation>
    </message>
    <message>
        <source>electric line</source>
        <translation>Stromleitung</translation>
    </message>
    <message>
        <source>Path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Walk-behind mower</source>
        <translation>Schiebemäher</translation>
    </message>
    <message>
        <source>Ride-on mower</source>
        <translation>Aufsitzmäher</translation>
    </message>
    <message>
        <source>Drive</source>
        <translation>Zufahrt</translation>
    </message>
    <message>
        <source>Seat</source>
        <translation>Sitzplatz</translation>
    </message>
    <message>
        <source>Play area</source>
        <translation>Spielplatz</translation>
    </message>
    <message>
        <source>Road</source>
        <translation>Straße</translation>
    </message>
    <message>
        <source>Other ground in use</source>
        <translation>Anderer genutzter Boden</translation>
    </message>
    <message>
        <source>Building</source>
        <translation>Gebäude</translation>
    </message>
    <message>
        <source>Fence or wall</source>
        <translation>Zaun oder Mauer</translation>
    </message>
    <message>
        <source>Glasshouse</source>
        <translation>Gewächshaus</translation>
    </message>
    <message>
        <source>Pond</source>
        <translation>Teich</translation>
    </message>
    <message>
        <source>Other</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>how strong its wood and its union are</source>
        <translation>wie fest sein Holz und sein Ansatz sind</translation>
    </message>
    <message>
        <source>how thick it is</source>
        <translation>wie dick er ist</translation>
    </message>
    <message>
        <source>how much leaf it bears</source>
        <translation>wie viel Laub er trägt</translation>
    </message>
    <message>
        <source>how hard wind pulls at its leaves</source>
        <translation>wie stark der Wind an seinen Blättern zieht</translation>
    </message>
    <message>
        <source>how much of the forecast&apos;s gust gets here</source>
        <translation>wie viel von der vorhergesagten Bö hier ankommt</translation>
    </message>
    <message>
        <source>%1, as force %2 (%3) brings</source>
        <translation>%1, wie Stärke %2 (%3) sie bringt</translation>
    </message>
    <message>
        <source>one in ten such limbs in still air, by weight alone</source>
        <translation>einer von zehn solchen Ästen schon bei Windstille, allein durch das Gewicht</translation>
    </message>
    <message>
        <source>one in ten such limbs at %1</source>
        <translation>einer von zehn solchen Ästen bei %1</translation>
    </message>
    <message>
        <source>Likely to break in still air, by weight alone.</source>
        <translation>Bricht wahrscheinlich schon bei Windstille, allein durch das Gewicht.</translation>
    </message>
    <message>
        <source>Likely to break only beyond any gust that a forecast names (%1).</source>
        <translation>Bricht wahrscheinlich erst jenseits jeder Bö, die eine Vorhersage nennt (%1).</translation>
    </message>
    <message>
        <source>Likely to break in a gust of about %1; %2.</source>
        <translation>Bricht wahrscheinlich in einer Bö von etwa %1; %2.</translation>
    </message>
    <message>
        <source>Likely to break in a gust of about %1; %2; nine in ten by %3.</source>
        <translation>Bricht wahrscheinlich in einer Bö von etwa %1; %2; neun von zehn bis %3.</translation>
    </message>
    <message>
        <source>As drawn it would hardly stand through an ordinary year: tape its girth again.</source>
        <translation>So wie gezeichnet überstünde er kaum ein gewöhnliches Jahr: messen Sie seinen Umfang noch einmal.</translation>
    </message>
    <message>
        <source>As drawn it would hardly stand through an ordinary year: look again how far its leaves reach.</source>
        <translation>So wie gezeichnet überstünde er kaum ein gewöhnliches Jahr: sehen Sie noch einmal nach, wie weit sein Laub reicht.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The range is as wide as it is because nobody knows well %1.</source>
        <translation>Die Spanne ist so weit, weil niemand genau weiß, %1.</translation>
    </message>
    <message>
        <source>Of what you can measure, its girth would narrow the range most: put a tape round it.</source>
        <translation>Von allem, was Sie messen können, würde sein Umfang die Spanne am meisten verengen: legen Sie ein Maßband um ihn.</translation>
    </message>
    <message>
        <source>Of what you can measure, its leaf would narrow the range most: look again how far it reaches and how dense it is.</source>
        <translation>Von allem, was Sie messen können, würde sein Laub die Spanne am meisten verengen: sehen Sie noch einmal nach, wie weit es reicht und wie dicht es ist.</translation>
    </message>
    <message>
        <source>Nothing that you can measure would narrow the range much.</source>
        <translation>Nichts, was Sie messen können, würde die Spanne viel verengen.</translation>
    </message>
    <message>
        <source>To narrow these ranges, first put a tape round %1.</source>
        <translation>Um diese Spannen zu verengen, legen Sie zuerst ein Maßband um %1.</translation>
    </message>
    <message>
        <source>These are estimates from a sketch, not an inspection. Nothing here says that a tree or a limb is safe: a tree with no visible defect can still fail.</source>
        <translation>Das sind Schätzungen aus einer Skizze, keine Baumkontrolle. Nichts hier sagt, dass ein Baum oder ein Ast sicher ist: auch ein Baum ohne sichtbaren Schaden kann versagen.</translation>
    </message>
    <message>
        <source>When in doubt, ask a certified arborist to look at the tree itself, and do so at once for a crack, a fresh lean, lifting soil, a hung-up branch or mushrooms at the base.</source>
        <translation>Bitten Sie im Zweifel einen geprüften Baumpfleger, sich den Baum selbst anzusehen, und zwar sofort bei einem Riss, einer frischen Neigung, sich hebendem Boden, einem hängengebliebenen Ast oder Pilzen am Stammfuß.</translation>
    </message>
    <message>
        <source>Every overhead wire counts as live. Within 3 m (10 ft) of one, or if a branch could fall that near, do not cut: call the line&apos;s operator. In the UK ask the operator first within 10 m.</source>
        <translation>Jede Freileitung gilt als unter Spannung. Im Umkreis von 3 m (10 ft), oder wenn ein Ast so nah fallen könnte, schneiden Sie nicht: rufen Sie den Netzbetreiber an. Im Vereinigten Königreich fragen Sie den Betreiber zuerst innerhalb von 10 m.</translation>
    </message>
    <message>
        <source>Ask your local authority before you cut: tree protection orders, conservation areas, permits and felling rules differ from place to place and come before anything said here.</source>
        <translation>Fragen Sie Ihre örtliche Behörde, bevor Sie schneiden: Baumschutzsatzungen, Schutzgebiete, Genehmigungen und Fällvorschriften sind von Ort zu Ort verschieden und gehen allem hier Gesagten vor.</translation>
    </message>
    <message>
        <source>Look for nests, bats and other animals first. Harming a nest in use or a roost is against the law in many countries.</source>
        <translation>Sehen Sie zuerst nach Nestern, Fledermäusen und anderen Tieren. Ein benutztes Nest oder Quartier zu schädigen ist in vielen Ländern verboten.</translation>
    </message>
    <message>
        <source>Never work alone, from a ladder with a saw, or above your shoulders with a chainsaw. Wear eye, hand and head protection, and keep people and pets well clear of where a piece can fall.</source>
        <translation>Arbeiten Sie nie allein, nie mit der Säge auf einer Leiter und nie mit der Motorsäge über Schulterhöhe. Tragen Sie Augen-, Hand- und Kopfschutz, und halten Sie Menschen und Tiere weit weg von allem, wohin ein Stück fallen kann.</translation>
    </message>
    <message>
        <source>Stop in strong wind, rain, poor light or great heat.</source>
        <translation>Hören Sie auf bei starkem Wind, Regen, schlechtem Licht oder großer Hitze.</translation>
    </message>
    <message>
        <source>Take off %1, %2 above the ground.</source>
        <translation>%1 abnehmen, %2 über dem Boden.</translation>
    </message>
    <message>
        <source>Shorten %1 to %2 from its union, %3 above the ground.</source>
        <translation>%1 auf %2 ab Ansatz einkürzen, %3 über dem Boden.</translation>
    </message>
    <message>
        <source>removal cut</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>reduction cut</source>
        <translation>Einkürzen</translation>
    </message>
    <message>
        <source>thinning</source>
        <translation>Auslichten</translation>
    </message>
    <message>
        <source>lifting</source>
        <translation>Anheben</translation>
    </message>
    <message>
        <source>Thin the small shoots of %1 by %2, evenly along it, from the tip inwards.</source>
        <translation>Die feinen Triebe von %1 um %2 auslichten, gleichmäßig über die Länge, von der Spitze nach innen.</translation>
    </message>
    <message>
        <source>Shorten the hanging shoots of %1 to %2 above the ground, each to a bud or side shoot.</source>
        <translation>Die hängenden Triebe von %1 auf %2 über dem Boden kürzen, jeden bis auf eine Knospe oder einen Seitentrieb.</translation>
    </message>
    <message>
        <source>About %1 of shoots come off; %2 of the leaf.</source>
        <translation>Etwa %1 Triebe kommen weg; %2 des Laubs.</translation>
    </message>
    <message>
        <source>Wound %1 across; what comes off is %2 long and weighs about %3; %4 of the leaf.</source>
        <translation>Wunde %1 breit; was wegkommt, ist %2 lang und wiegt etwa %3; %4 des Laubs.</translation>
    </message>
    <message>
        <source>Nothing has to be cut for headroom or for what must be reached.</source>
        <translation>Für die lichte Höhe und für das, was erreicht werden muss, ist nichts zu schneiden.</translation>
    </message>
    <message>
        <source>Nothing has to be cut for headroom.</source>
        <translation>Für die lichte Höhe ist nichts zu schneiden.</translation>
    </message>
    <message>
        <source>These cuts do what must be done, for %1 of the leaf; up to %2 may go now.</source>
        <translation>Diese Schnitte leisten, was sein muss, für %1 des Laubs; bis zu %2 dürfen jetzt weg.</translation>
    </message>
    <message>
        <source>These cuts give every strip its headroom for %1 of the leaf; up to %2 may go now.</source>
        <translation>Diese Schnitte geben jeder Fläche ihre lichte Höhe, für %1 des Laubs; bis zu %2 dürfen jetzt weg.</translation>
    </message>
    <message>
        <source>The headroom can&apos;t be had inside the guideline.</source>
        <translation>Die lichte Höhe ist innerhalb des Richtwerts nicht zu haben.</translation>
    </message>
    <message>
        <source>Not all that must be done can be had inside the guideline.</source>
        <translation>Nicht alles, was sein muss, ist innerhalb des Richtwerts zu haben.</translation>
    </message>
    <message>
        <source>These cuts come closest, for %1 of the leaf; up to %2 may go now.</source>
        <translation>Diese Schnitte kommen am nächsten, für %1 des Laubs; bis zu %2 dürfen jetzt weg.</translation>
    </message>
    <message>
        <source>Spread it over several years, or ask an arborist.</source>
        <translation>Verteilen Sie es auf mehrere Jahre, oder fragen Sie einen Baumpfleger.</translation>
    </message>
    <message>
        <source>If no rule of the guideline were kept, it would cost %1 of the leaf: ask an arborist.</source>
        <translation>Wenn keine Regel der Richtlinie gälte, würde es %1 des Laubs kosten: fragen Sie einen Baumpfleger.</translation>
    </message>
    <message>
        <source>Take anything thicker than %1 in three cuts, so that the bark does not tear: a third through from below, then off from above a little further out, then the stub at the collar.</source>
        <translation>Alles, was dicker als %1 ist, in drei Schnitten nehmen, damit die Rinde nicht reißt: ein Drittel von unten einsägen, dann etwas weiter außen von oben absägen, dann den Aststummel am Astring.</translation>
    </message>
    <message>
        <source>Take along: %1.</source>
        <translation>Mitnehmen: %1.</translation>
    </message>
    <message>
        <source>In the shade it feels like %1: at %2 and more people at work get heat stroke. Wait for a cooler day.</source>
        <translation>Im Schatten fühlt es sich an wie %1: ab %2 bekommen bei der Arbeit mehr Menschen einen Hitzschlag. Warten Sie auf einen kühleren Tag.</translation>
    </message>
    <message>
        <source>In the shade it feels like %1: from %2 on work in short turns, drink, and never alone.</source>
        <translation>Im Schatten fühlt es sich an wie %1: ab %2 in kurzen Schichten arbeiten, trinken, und nie allein.</translation>
    </message>
    <message>
        <source>In full sun it feels like %1: work in the shade or in the early morning only.</source>
        <translation>In voller Sonne fühlt es sich an wie %1: nur im Schatten oder am frühen Morgen arbeiten.</translation>
    </message>
    <message>
        <source>In full sun it feels like %1: cover your head and rest in the shade.</source>
        <translation>In voller Sonne fühlt es sich an wie %1: den Kopf bedecken und im Schatten ausruhen.</translation>
    </message>
    <message>
        <source>At %1 bared bark burns: leave heavy cuts for later.</source>
        <translation>Bei %1 verbrennt freigelegte Rinde: verschieben Sie starke Schnitte.</translation>
    </message>
    <message>
        <source>At %1 wood splits and footing is bad: wait for a thaw.</source>
        <translation>Bei %1 splittert Holz, und der Stand ist schlecht: warten Sie auf Tauwetter.</translation>
    </message>
    <message>
        <source>Gusts of %1: no tree work in wind of %2 and more.</source>
        <translation>Böen von %1: keine Baumarbeit bei Wind von %2 und mehr.</translation>
    </message>
    <message>
        <source>Gusts of %1: pieces swing and blow off course. Small work from the ground only.</source>
        <translation>Böen von %1: Stücke pendeln und werden abgetrieben. Nur kleine Arbeiten vom Boden aus.</translation>
    </message>
    <message>
        <source>Leave it for another day.</source>
        <translation>Lassen Sie es für einen anderen Tag.</translation>
    </message>
    <message>
        <source>Only with care.</source>
        <translation>Nur mit Vorsicht.</translation>
    </message>
    <message>
        <source>Nothing in the weather that was given speaks against it.</source>
        <translation>Nichts am angegebenen Wetter spricht dagegen.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>month and year</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>It was last measured at %1; %2 is needed.</source>
        <translation>Zuletzt gemessen: %1; nötig sind %2.</translation>
    </message>
    <message>
        <source>As drawn there is %1 at its heaviest; %2 is needed.</source>
        <translation>So wie gezeichnet sind es am schwersten %1; nötig sind %2.</translation>
    </message>
    <message>
        <source>One in ten such trees would be too low by %1.</source>
        <translation>Einer von zehn solchen Bäumen wäre zu tief bis %1.</translation>
    </message>
    <message>
        <source>Half of such trees would be too low by %1.</source>
        <translation>Die Hälfte solcher Bäume wäre zu tief bis %1.</translation>
    </message>
    <message>
        <source>You wrote it in the diary.</source>
        <translation>Sie haben es ins Tagebuch geschrieben.</translation>
    </message>
    <message>
        <source>You wrote it in the diary on %1.</source>
        <translation>Sie haben es am %1 ins Tagebuch geschrieben.</translation>
    </message>
    <message>
        <source>Headroom over %1: %2 before, %3 after.</source>
        <translation>Lichte Höhe über %1: %2 vorher, %3 nachher.</translation>
    </message>
    <message>
        <source>Headroom over %1: %2 before.</source>
        <translation>Lichte Höhe über %1: %2 vorher.</translation>
    </message>
    <message>
        <source>Headroom over %1: %2 after.</source>
        <translation>Lichte Höhe über %1: %2 nachher.</translation>
    </message>
    <message>
        <source>The tip of %1 was measured.</source>
        <translation>Die Spitze von %1 wurde gemessen.</translation>
    </message>
    <message>
        <source>humidity %1</source>
        <translation>Luftfeuchte %1</translation>
    </message>
    <message>
        <source>gusts of %1</source>
        <translation>Böen %1</translation>
    </message>
    <message>
        <source>Weather: %1.</source>
        <translation>Wetter: %1.</translation>
    </message>
    <message>
        <source>Headroom over %1</source>
        <translation>Lichte Höhe über %1</translation>
    </message>
    <message>
        <source>1 planned cut</source>
        <translation>1 geplanter Schnitt</translation>
    </message>
    <message>
        <source>The rest of the plan</source>
        <translation>Der Rest des Plans</translation>
    </message>
    <message>
        <source>%1 planned cuts</source>
        <translation>%1 geplante Schnitte</translation>
    </message>
    <message>
        <source>Look it over before the storms</source>
        <translation>Vor den Stürmen ansehen</translation>
    </message>
    <message>
        <source>Visit as you wrote</source>
        <translation>Besuch, wie Sie schrieben</translation>
    </message>
    <message>
        <source>now, as it is drawn</source>
        <translation>jetzt, wie er gezeichnet ist</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit dem %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>The guideline lets nothing more be cut before. Those are good months for the species after that.</source>
        <translation>Der Richtwert lässt vorher keinen weiteren Schnitt zu. Danach kommen für diese Baumart gute Monate.</translation>
    </message>
    <message>
        <source>Good months for cutting %1. Look at the plan first: dead wood and lost headroom need not wait for them.</source>
        <translation>Gute Monate, um %1 zu schneiden. Sehen Sie zuerst den Plan an: Totholz und fehlende lichte Höhe müssen nicht darauf warten.</translation>
    </message>
    <message>
        <source>Look from the ground for cracks, hung-up or dead limbs, a fresh lean, lifting soil and mushrooms, every year and after each storm. What you find is for a certified arborist.</source>
        <translation>Suchen Sie vom Boden aus nach Rissen, hängengebliebenen oder toten Ästen, einer frischen Neigung, sich hebendem Boden und Pilzen, jedes Jahr und nach jedem Sturm. Was Sie finden, ist Sache eines geprüften Baumpflegers.</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>later</source>
        <translation>später</translation>
    </message>
    <message>
        <source>%1 taken off</source>
        <translation>%1 abgenommen</translation>
    </message>
    <message>
        <source>%1 shortened to %2</source>
        <translation>%1 auf %2 eingekürzt</translation>
    </message>
    <message>
        <source>%1 thinned by %2</source>
        <translation>%1 um %2 ausgelichtet</translation>
    </message>
    <message>
        <source>%1 thinned</source>
        <translation>%1 ausgelichtet</translation>
    </message>
    <message>
        <source>%1 lifted to %2</source>
        <translation>%1 auf %2 angehoben</translation>
    </message>
    <message>
        <source>%1 lifted</source>
        <translation>%1 angehoben</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a date, and who came</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Nothing was cut.</source>
        <translation>Nichts wurde geschnitten.</translation>
    </message>
    <message>
        <source>Cut: %1.</source>
        <translation>Geschnitten: %1.</translation>
    </message>
    <message>
        <source>Planned and left: %1.</source>
        <translation>Geplant und gelassen: %1.</translation>
    </message>
    <message>
        <source>%1 of the leaf.</source>
        <translation>%1 des Laubs.</translation>
    </message>
    <message>
        <source>How much leaf went was not noted.</source>
        <translation>Wie viel Laub ging, wurde nicht notiert.</translation>
    </message>
    <message>
        <source>Photo: %1.</source>
        <translation>Foto: %1.</translation>
    </message>
    <message>
        <source>To come again: %1.</source>
        <translation>Nächster Besuch: %1.</translation>
    </message>
    <message>
        <source>%1 of the leaf taken; the guideline is %2.</source>
        <translation>%1 des Laubs entnommen; der Richtwert ist %2.</translation>
    </message>
    <message>
        <source>%1 of the leaf taken of the %2 that the guideline allows; %3 left.</source>
        <translation>%1 des Laubs entnommen von %2, die der Richtwert zulässt; %3 bleiben.</translation>
    </message>
    <message>
        <source>It was more: for %1 of the visits nobody noted how much.</source>
        <translation>Es war mehr: bei %1 der Besuche notierte niemand, wie viel.</translation>
    </message>
    <message>
        <source>The tip of %1 came %2 from %3 to %4, in %5 years of growth.</source>
        <translation>Die Spitze von %1 wuchs um %2 vom %3 bis zum %4, in %5 Wachstumsjahren.</translation>
    </message>
    <message>
        <source>Over %1 there was %2 more headroom on %4 than on %3.</source>
        <translation>Über %1 war am %4 um %2 mehr lichte Höhe als am %3.</translation>
    </message>
    <message>
        <source>Over %1 %2 of headroom grew shut from %3 to %4, in %5 years of growth.</source>
        <translation>Über %1 wuchsen %2 lichte Höhe zu, vom %3 bis zum %4, in %5 Wachstumsjahren.</translation>
    </message>
    <message>
        <source>%1 across, on %2, made on %3</source>
        <translation>%1 breit, an %2, vom %3</translation>
    </message>
    <message>
        <source>%1: seen closed on %2.</source>
        <translation>%1: am %2 als geschlossen gesehen.</translation>
    </message>
    <message>
        <source>%1: it should have closed by now. If it has not, or if it is soft, hollow or wet, ask a certified arborist.</source>
        <translation>%1: müsste schon geschlossen sein. Ist sie es nicht, oder ist sie weich, hohl oder nass, fragen Sie einen geprüften Baumpfleger.</translation>
    </message>
    <message>
        <source>%1: should be closed by now; look, and note it.</source>
        <translation>%1: dürfte jetzt geschlossen sein; sehen Sie nach, und notieren Sie es.</translation>
    </message>
    <message>
        <source>%1: about %2 open; not closed within twenty years.</source>
        <translation>%1: etwa %2 offen; auch in zwanzig Jahren nicht geschlossen.</translation>
    </message>
    <message>
        <source>%1: about %2 should be open; closed by about %3.</source>
        <translation>%1: etwa %2 dürften offen sein; geschlossen etwa %3.</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source>In the gust these limbs would be asked for more than their expected strength: %1.</source>
        <translation>In der Bö würde diesen Ästen mehr als ihre erwartete Festigkeit abverlangt: %1.</translation>
    </message>
    <message>
        <source>an unknown amount</source>
        <translation>eine unbekannte Menge</translation>
    </message>
    <message>
        <source>an earlier date</source>
        <translation>ein früherer Tag</translation>
    </message>
    <message>
        <source>The visit on %1 took leaf as well, but how much was not written down: cut less than the allowance says.</source>
        <translation>Auch der Besuch am %1 nahm Laub, aber wie viel, wurde nicht aufgeschrieben: schneiden Sie weniger, als erlaubt scheint.</translation>
    </message>
    <message>
        <source>The visit on %1 has taken %2 of the leaf already.</source>
        <translation>Der Besuch am %1 hat schon %2 des Laubs genommen.</translation>
    </message>
    <message>
        <source>The guideline lets at most %1 of this tree&apos;s leaf go within twelve months.</source>
        <translation>Der Richtwert lässt höchstens %1 des Laubs dieses Baums in zwölf Monaten gehen.</translation>
    </message>
    <message>
        <source>It would take %1 of the leaf, and %2 may go now.</source>
        <translation>Es würde %1 des Laubs kosten, und %2 dürfen jetzt weg.</translation>
    </message>
    <message>
        <source>A limb should not lose more than half of its leaf by shortening: then the whole limb goes, or it stays.</source>
        <translation>Ein Ast soll durch Einkürzen nicht mehr als die Hälfte seines Laubs verlieren: dann geht der ganze Ast, oder er bleibt.</translation>
    </message>
    <message>
        <source>Shortening takes %1 of the leaf of %2; over %3 is much for one limb.</source>
        <translation>Das Einkürzen nimmt %1 des Laubs von %2; über %3 ist viel für einen Ast.</translation>
    </message>
    <message>
        <source>Half of the leaf belongs in the lower two thirds of the crown, and more cutting low down would leave less.</source>
        <translation>Die Hälfte des Laubs gehört in die unteren zwei Drittel der Krone, und mehr Schnitt unten ließe weniger.</translation>
    </message>
    <message>
        <source>%1 of the leaf would be left in the lower two thirds of the crown; at least %2 belongs there.</source>
        <translation>%1 des Laubs blieben in den unteren zwei Dritteln der Krone; mindestens %2 gehören dorthin.</translation>
    </message>
    <message>
        <source>Lifting the crown further would leave too little living crown for the tree&apos;s height.</source>
        <translation>Den Kronenansatz weiter anzuheben ließe für die Höhe des Baums zu wenig lebende Krone.</translation>
    </message>
    <message>
        <source>The living crown would take up %1 of the tree&apos;s height; at least %2 is better.</source>
        <translation>Die lebende Krone nähme noch %1 der Baumhöhe ein; mindestens %2 sind besser.</translation>
    </message>
    <message>
        <source>All wounds together would come to more than a third of the stem&apos;s section, which is severe.</source>
        <translation>Alle Wunden zusammen kämen auf mehr als ein Drittel des Stammquerschnitts, und das ist ein schwerer Eingriff.</translation>
    </message>
    <message>
        <source>All wounds together come to %1 of the stem&apos;s section; more than %2 is severe.</source>
        <translation>Alle Wunden zusammen kommen auf %1 des Stammquerschnitts; mehr als %2 sind ein schwerer Eingriff.</translation>
    </message>
    <message>
        <source>This tree is old or under stress: about %1 of its leaf is all that should go in a year.</source>
        <translation>Dieser Baum ist alt oder unter Stress: etwa %1 des Laubs sind alles, was in einem Jahr gehen sollte.</translation>
    </message>
    <message>
        <source>%1 of the leaf is more than the %2 of an ordinary year: expect the tree to answer with strong new shoots.</source>
        <translation>%1 des Laubs sind mehr als die %2 eines gewöhnlichen Jahres: rechnen Sie damit, dass der Baum mit starken neuen Trieben antwortet.</translation>
    </message>
    <message>
        <source>The crown would be lifted by %1 of its height at once; %2 a visit is kinder.</source>
        <translation>Der Kronenansatz würde auf einmal um %1 der Baumhöhe angehoben; %2 je Besuch sind schonender.</translation>
    </message>
    <message>
        <source>The stem would be cut where no side branch can take over: that is topping, which starves the tree and lets rot in.</source>
        <translation>Der Stamm würde geschnitten, wo kein Seitenast übernehmen kann: das ist Kappung, die den Baum aushungert und Fäule einlässt.</translation>
    </message>
    <message>
        <source>No side branch grows where %1 would be cut: that leaves a stub.</source>
        <translation>Wo %1 geschnitten würde, wächst kein Seitenast: das lässt einen Aststummel.</translation>
    </message>
    <message>
        <source>The side branch that would take over from %1 is only %2 as thick as the cut; a third is the least.</source>
        <translation>Der Seitenast, der von %1 übernehmen würde, ist nur %2 so dick wie der Schnitt; ein Drittel ist das Mindeste.</translation>
    </message>
    <message>
        <source>%1 takes over and is %2 as thick as the cut; a half or more would be better.</source>
        <translation>%1 übernimmt und ist %2 so dick wie der Schnitt; die Hälfte oder mehr wäre besser.</translation>
    </message>
    <message>
        <source>%1 is %2 as thick as the wood it grows from: over %3 the wound closes badly, so shortening it would be better.</source>
        <translation>%1 ist %2 so dick wie das Holz, aus dem er wächst: über %3 schließt sich die Wunde schlecht, einkürzen wäre also besser.</translation>
    </message>
    <message>
        <source>The wound on %1 is %2 across: over %3 it closes slowly and decay can enter.</source>
        <translation>Die Wunde an %1 ist %2 breit: über %3 schließt sie sich langsam, und Fäule kann eindringen.</translation>
    </message>
    <message>
        <source>The wound on %1 is %2 across: a cut over %3 is an arborist&apos;s decision.</source>
        <translation>Die Wunde an %1 ist %2 breit: Schnitte über %3 sind Sache des Baumpflegers.</translation>
    </message>
    <message>
        <source>The wound on %1 is %2 across, and this species walls off decay poorly: over %3 ask an arborist.</source>
        <translation>Die Wunde an %1 ist %2 breit, und diese Baumart schottet Fäule schlecht ab: über %3 fragen Sie einen Baumpfleger.</translation>
    </message>
    <message>
        <source>The cut on %1 is %2 above the ground, beyond the %3 that a hand saw reaches with both feet on the ground.</source>
        <translation>Der Schnitt an %1 liegt %2 über dem Boden, mehr als die %3, die eine Handsäge mit beiden Füßen am Boden erreicht.</translation>
    </message>
    <message>
        <source>The cut on %1 is %2 above the ground, beyond the %3 that a pole saw reaches: it needs trained climbing or a platform.</source>
        <translation>Der Schnitt an %1 liegt %2 über dem Boden, mehr als die %3, die eine Stangensäge erreicht: das braucht Seilklettertechnik mit Ausbildung oder eine Hebebühne.</translation>
    </message>
    <message>
        <source>The piece from %1 weighs about %2, more than the %3 that one person should hold.</source>
        <translation>Das Stück von %1 wiegt etwa %2, mehr als die %3, die ein Mensch allein halten sollte.</translation>
    </message>
    <message>
        <source>The piece from %1 weighs about %2: over %3 it must be lowered on ropes by trained people.</source>
        <translation>Das Stück von %1 wiegt etwa %2: über %3 müssen ausgebildete Leute es an Seilen ablassen.</translation>
    </message>
    <message>
        <source>A warning sign was noted for this tree.</source>
        <translation>An diesem Baum wurde ein Warnzeichen notiert.</translation>
    </message>
    <message>
        <source>Noted for this tree: %1. That needs a professional&apos;s eyes.</source>
        <translation>An diesem Baum notiert: %1. Das muss ein Fachmann ansehen.</translation>
    </message>
    <message>
        <source>A piece or a tool can come within %1 of the wire %2. Inside %3 nobody may work but the line&apos;s operator or a line-clearance arborist: treat it as live.</source>
        <translation>Ein Stück oder ein Werkzeug kann der Leitung %2 bis auf %1 nahe kommen. Innerhalb von %3 darf niemand arbeiten außer dem Netzbetreiber oder einem Baumpfleger mit Zulassung für Freileitungen: sie gilt als unter Spannung.</translation>
    </message>
    <message>
        <source>The work is %1 on plan from the wire %2: inside %3 ask the line&apos;s operator before you start, and treat it as live.</source>
        <translation>Die Arbeit liegt im Plan %1 von der Leitung %2: innerhalb von %3 fragen Sie vorher den Netzbetreiber, und die Leitung gilt als unter Spannung.</translation>
    </message>
    <message>
        <source>%1 is %2 from where the wood is cut, and it can come down as far as %3 away.</source>
        <translation>%1 ist %2 von dort, wo das Holz geschnitten wird, und es kann bis zu %3 entfernt herunterkommen.</translation>
    </message>
    <message>
        <source>The piece comes down on %1.</source>
        <translation>Das Stück kommt auf %1 herunter.</translation>
    </message>
    <message>
        <source>%1 is dead or cracked wood that can&apos;t be counted on in any gust.</source>
        <translation>%1 ist totes oder gerissenes Holz, auf das in keiner Bö zu zählen ist.</translation>
    </message>
    <message>
        <source>%1 would be asked for %2 of its expected strength in the gust: more than it is likely to bear.</source>
        <translation>%1 würden in der Bö %2 der erwarteten Festigkeit abverlangt: mehr, als er wahrscheinlich trägt.</translation>
    </message>
    <message>
        <source>Pieces can come down on %1: lower them by hand, or lay boards over it.</source>
        <translation>Stücke können auf %1 herunterkommen: lassen Sie sie von Hand ab, oder legen Sie Bretter darüber.</translation>
    </message>
    <message>
        <source>%1 is dead wood in a tree %2 tall: above %3 it can break at a touch.</source>
        <translation>%1 ist Totholz in einem %2 hohen Baum: über %3 kann es bei einer Berührung brechen.</translation>
    </message>
    <message>
        <source>%1 has a crack or a hollow, so nobody can tell from a sketch what it still carries.</source>
        <translation>%1 hat einen Riss oder eine Höhlung, also kann niemand aus einer Skizze sagen, was er noch trägt.</translation>
    </message>
    <message>
        <source>The stem leans %1 from upright; over %2 an arborist should judge it.</source>
        <translation>Der Stamm neigt sich um %1 aus dem Lot; über %2 soll ein Baumpfleger ihn beurteilen.</translation>
    </message>
    <message>
        <source>This tree is protected: get the authority&apos;s written consent before any cut.</source>
        <translation>Dieser Baum ist geschützt: holen Sie vor jedem Schnitt die schriftliche Genehmigung der Behörde ein.</translation>
    </message>
    <message>
        <source>%1 is a month to avoid for cutting %2.</source>
        <translation>Der %1 ist ein Monat, in dem %2 besser nicht geschnitten wird.</translation>
    </message>
    <message>
        <source>%1 is a month to avoid for cutting %2 (%3).</source>
        <translation>Der %1 ist ein Monat, in dem %2 besser nicht geschnitten wird (%3).</translation>
    </message>
    <message>
        <source>Vase: a low fork, steep limbs that lean out</source>
        <translation>Vase: eine tiefe Gabel, steile, nach außen geneigte Äste</translation>
    </message>
    <message>
        <source>Spreading: a round head, limbs all round</source>
        <translation>Ausladend: runder Kopf, Äste ringsum</translation>
    </message>
    <message>
        <source>Weeping: limbs arch over, shoots hang</source>
        <translation>Hängeform: Äste im Bogen, Triebe hängen herab</translation>
    </message>
    <message>
        <source>Conical: a stem to the top, limbs shorter above</source>
        <translation>Kegel: Stamm bis zur Spitze, Äste oben kürzer</translation>
    </message>
    <message>
        <source>Columnar: a stem to the top, short steep limbs</source>
        <translation>Säule: Stamm bis zur Spitze, kurze steile Äste</translation>
    </message>
    <message>
        <source>Open centre: few limbs, light in the middle</source>
        <translation>Hohlkrone: wenige Äste, Licht in der Mitte</translation>
    </message>
    <message>
        <source>Central leader: limbs in tiers round a stem</source>
        <translation>Spindel: Äste in Etagen um einen Stamm</translation>
    </message>
    <message>
        <source>Espalier: flat, in level tiers</source>
        <translation>Spalier: flach, in waagerechten Etagen</translation>
    </message>
    <message>
        <source>Stem: between %1 and %2 thick.</source>
        <translation>Stamm: zwischen %1 und %2 dick.</translation>
    </message>
    <message>
        <source>Height: between %1 and %2.</source>
        <translation>Höhe: zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>Spread: between %1 and %2.</source>
        <translation>Kronenbreite: zwischen %1 und %2.</translation>
    </message>
    <message>
        <source>Lowest limb: between %1 and %2 above the ground, four fifths of the height.</source>
        <translation>Unterster Ast: zwischen %1 und %2 über dem Boden, vier Fünftel der Höhe.</translation>
    </message>
    <message>
        <source>A stem of %1 can&apos;t carry a tree of %2: is the girth right?</source>
        <translation>Ein Stamm von %1 kann keinen Baum von %2 tragen: stimmt der Umfang?</translation>
    </message>
    <message>
        <source>stem</source>
        <translation>Stamm</translation>
    </message>
    <message>
        <source>limb %1, %2</source>
        <comment>number from below, compass direction</comment>
        <translation>Ast %1, %2</translation>
    </message>
    <message>
        <source>branch %2 of limb %1</source>
        <translation>Seitenast %2 von Ast %1</translation>
    </message>
    <message>
        <source>stays at %1</source>
        <translation>bleibt bei %1</translation>
    </message>
    <message>
        <source>goes from %1 to %2</source>
        <translation>geht von %1 auf %2</translation>
    </message>
    <message>
        <source>The hardest pressed limb</source>
        <translation>Der am stärksten beanspruchte Ast</translation>
    </message>
    <message>
        <source>%1 has no sound wood to reckon with.</source>
        <translation>%1 hat kein gesundes Holz, mit dem zu rechnen wäre.</translation>
    </message>
    <message>
        <source>%1 goes, and its load with it.</source>
        <translation>%1 geht, und seine Last mit ihm.</translation>
    </message>
    <message>
        <source>%1, in a gust of %2 in full leaf and crop: the share of its expected strength %3; wanted is %4 at most.</source>
        <translation>%1, in einer Bö von %2 mit vollem Laub und Früchten: der Anteil der erwarteten Festigkeit %3; gewünscht sind höchstens %4.</translation>
    </message>
    <message>
        <source>%1: direct sun %2 a day; wanted are %3.</source>
        <translation>%1: direkte Sonne %2 am Tag; gewünscht sind %3.</translation>
    </message>
    <message>
        <source>Without this tree it would be %1: other things shade it too.</source>
        <translation>Ohne diesen Baum wären es %1: auch anderes beschattet es.</translation>
    </message>
    <message>
        <source>%1 is to stay.</source>
        <translation>%1 soll bleiben.</translation>
    </message>
    <message>
        <source>%1 is to go.</source>
        <translation>%1 soll weg.</translation>
    </message>
    <message>
        <source>No more than %1 of the leaf is to go.</source>
        <translation>Nicht mehr als %1 des Laubs soll weg.</translation>
    </message>
    <message>
        <source>Reached.</source>
        <translation>Erreicht.</translation>
    </message>
    <message>
        <source>for twenty years or more</source>
        <translation>zwanzig Jahre oder länger</translation>
    </message>
    <message>
        <source>till about %1</source>
        <translation>bis etwa %1</translation>
    </message>
    <message>
        <source>till about %1 (%2 at the earliest)</source>
        <translation>bis etwa %1 (frühestens %2)</translation>
    </message>
    <message>
        <source>till about %1 (between %2 and %3)</source>
        <translation>bis etwa %1 (zwischen %2 und %3)</translation>
    </message>
    <message>
        <source>Kept at that it wants about %1 cuts a year.</source>
        <translation>So gehalten braucht es etwa %1 Schnitte im Jahr.</translation>
    </message>
    <message>
        <source>Kept at that it wants about one cut a year.</source>
        <translation>So gehalten braucht es etwa einen Schnitt im Jahr.</translation>
    </message>
    <message>
        <source>Kept at that it wants a cut about every %1 years.</source>
        <translation>So gehalten braucht es etwa alle %1 Jahre einen Schnitt.</translation>
    </message>
    <message>
        <source>%1: still short of headroom.</source>
        <translation>%1: noch immer zu wenig lichte Höhe.</translation>
    </message>
    <message>
        <source>%1 has nothing to spare: the next that %2 grows is in the way again.</source>
        <translation>%1 hat nichts übrig: was %2 als Nächstes wächst, ist wieder im Weg.</translation>
    </message>
    <message>
        <source>%1 has %2 to spare and holds %3; %4 comes down first.</source>
        <translation>%1 hat %2 übrig und hält %3; zuerst kommt %4 herunter.</translation>
    </message>
    <message>
        <source>Reckoned with shoots of about %1 a year, as the species grows: no two visits in the diary measured the same strip. Tape it at every visit, and the next answer is about this tree.</source>
        <translation>Gerechnet mit Trieben von etwa %1 im Jahr, wie die Baumart wächst: keine zwei Besuche im Tagebuch maßen dieselbe Fläche. Messen Sie bei jedem Besuch, dann gilt die nächste Antwort diesem Baum.</translation>
    </message>
    <message>
        <source>Reckoned with shoots of about %1 a year; the species alone would say %2, the diary measured this tree over %3.</source>
        <translation>Gerechnet mit Trieben von etwa %1 im Jahr; die Baumart allein ergäbe %2, das Tagebuch maß diesen Baum über %3.</translation>
    </message>
    <message>
        <source>one stretch of growth</source>
        <translation>einen Wachstumsabschnitt</translation>
    </message>
    <message>
        <source>%1 stretches of growth</source>
        <translation>%1 Wachstumsabschnitte</translation>
    </message>
    <message>
        <source>%1 to spare: not inside the guideline.</source>
        <translation>%1 Vorrat: nicht innerhalb des Richtwerts.</translation>
    </message>
    <message>
        <source>nothing to spare: %1 of the leaf.</source>
        <translation>kein Vorrat: %1 des Laubs.</translation>
    </message>
    <message>
        <source>%1 to spare: %2 of the leaf; %3 holds %4.</source>
        <translation>%1 Vorrat: %2 des Laubs; %3 hält %4.</translation>
    </message>
    <message>
        <source>hanging shoots of %1 down to %2</source>
        <translation>hängende Triebe von %1 bis hinab auf %2</translation>
    </message>
    <message>
        <source>%1 down to %2</source>
        <translation>%1 bis hinab auf %2</translation>
    </message>
    <message>
        <source>Wet and in fruit it comes down to %1, which is still enough; %2 hangs lowest then.</source>
        <translation>Nass und mit Früchten sinkt es auf %1, was noch genügt; am tiefsten hängt dann %2.</translation>
    </message>
    <message>
        <source>When it is wet it comes down to %1, which is still enough; %2 hangs lowest then.</source>
        <translation>Wenn er nass ist, sinkt es auf %1, was noch genügt; am tiefsten hängt dann %2.</translation>
    </message>
    <message>
        <source>Wet and in fruit it comes down to %1, which is %2 short; %3 hangs lowest then.</source>
        <translation>Nass und mit Früchten sinkt es auf %1, das sind %2 zu wenig; am tiefsten hängt dann %3.</translation>
    </message>
    <message>
        <source>When it is wet it comes down to %1, which is %2 short; %3 hangs lowest then.</source>
        <translation>Wenn er nass ist, sinkt es auf %1, das sind %2 zu wenig; am tiefsten hängt dann %3.</translation>
    </message>
    <message>
        <source>Nothing overhangs %1.</source>
        <translation>Nichts hängt über %1.</translation>
    </message>
    <message>
        <source>%1: the lowest part hangs %2 above the ground; %3 is enough.</source>
        <translation>%1: der tiefste Teil hängt %2 über dem Boden; %3 genügen.</translation>
    </message>
    <message>
        <source>%1: headroom is %2 and %3 is needed, so it is %4 short.</source>
        <translation>%1: die lichte Höhe ist %2, und %3 sind nötig, es fehlen also %4.</translation>
    </message>
    <message>
        <source>In the way: %1.</source>
        <translation>Im Weg: %1.</translation>
    </message>
    <message>
        <source>a path</source>
        <translation>einen Weg</translation>
    </message>
    <message>
        <source>a walk-behind mower</source>
        <translation>einen Schiebemäher</translation>
    </message>
    <message>
        <source>a ride-on mower</source>
        <translation>einen Aufsitzmäher</translation>
    </message>
    <message>
        <source>a drive</source>
        <translation>eine Zufahrt</translation>
    </message>
    <message>
        <source>a seat</source>
        <translation>einen Sitzplatz</translation>
    </message>
    <message>
        <source>a play area</source>
        <translation>einen Spielplatz</translation>
    </message>
    <message>
        <source>a road</source>
        <translation>eine Straße</translation>
    </message>
    <message>
        <source>this use</source>
        <translation>diese Nutzung</translation>
    </message>
    <message>
        <source>Do it yourself, with someone in sight and call</source>
        <translation>Machen Sie es selbst, mit jemandem in Sicht- und Rufweite</translation>
    </message>
    <message>
        <source>Do it with a helper</source>
        <translation>Machen Sie es mit einem Helfer</translation>
    </message>
    <message>
        <source>Hire a certified arborist</source>
        <translation>Beauftragen Sie einen geprüften Baumpfleger</translation>
    </message>
    <message>
        <source>%1 of sun and %2</source>
        <translation>%1 Sonne und %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>That is enough for %1.</source>
        <translation>Das genügt für %1.</translation>
    </message>
    <message>
        <source>%1 lives with that, and does better with %2.</source>
        <translation>%1 kommt damit aus und gedeiht besser mit %2.</translation>
    </message>
    <message>
        <source>%1 lives with that, and does better with %2 a day.</source>
        <translation>%1 kommt damit aus und gedeiht besser mit %2 am Tag.</translation>
    </message>
    <message>
        <source>That is less than the %2 that %1 needs.</source>
        <translation>Das ist weniger als die %2, die %1 braucht.</translation>
    </message>
    <message>
        <source>That is less than the %2 a day that %1 needs.</source>
        <translation>Das ist weniger als die %2 am Tag, die %1 braucht.</translation>
    </message>
    <message>
        <source>How much light %1 needs is not known here.</source>
        <translation>Wie viel Licht %1 braucht, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>Take off %1</source>
        <translation>%1 abnehmen</translation>
    </message>
    <message>
        <source>Shorten %1 to %2 from its union</source>
        <translation>%1 auf %2 ab Ansatz einkürzen</translation>
    </message>
    <message>
        <source>Thin the small shoots of %1 by %2</source>
        <translation>Die feinen Triebe von %1 um %2 auslichten</translation>
    </message>
    <message>
        <source>Shorten the hanging shoots of %1 to %2 above the ground</source>
        <translation>Die hängenden Triebe von %1 auf %2 über dem Boden kürzen</translation>
    </message>
    <message>
        <source>full sun</source>
        <translation>volle Sonne</translation>
    </message>
    <message>
        <source>part sun</source>
        <translation>teils sonnig</translation>
    </message>
    <message>
        <source>part shade</source>
        <translation>halbschattig</translation>
    </message>
    <message>
        <source>full shade</source>
        <translation>schattig</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>genug</translation>
    </message>
    <message>
        <source>barely enough</source>
        <translation>knapp genug</translation>
    </message>
    <message>
        <source>too dark</source>
        <translation>zu dunkel</translation>
    </message>
    <message>
        <source>%1 face</source>
        <translation>Seite nach %1</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>%1, its %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2. Under a clear sky %3 of direct sun a day.</source>
        <translation>%1: %2. Unter klarem Himmel %3 direkte Sonne am Tag.</translation>
    </message>
    <message>
        <source>With this garden&apos;s clouds %1, of %2 in the open.</source>
        <translation>Mit den Wolken dieses Gartens %1, von %2 im Freien.</translation>
    </message>
    <message>
        <source>In the open it would be %1.</source>
        <translation>Im Freien wären es %1.</translation>
    </message>
    <message>
        <source>Light for growth is %1 a day, of %2.</source>
        <translation>Licht zum Wachsen sind %1 am Tag, von %2.</translation>
    </message>
    <message>
        <source>%1: without it %2 a day more.</source>
        <translation>%1: ohne ihn %2 mehr am Tag.</translation>
    </message>
    <message>
        <source>By itself it would take %1: the rest lies in the shade of other trees too.</source>
        <translation>Für sich allein nähme er %1: der Rest liegt auch im Schatten anderer Bäume.</translation>
    </message>
    <message>
        <source>Limb by limb: %1.</source>
        <translation>Ast für Ast: %1.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1: %2 a day for %3 of its leaf</source>
        <translation>%1: %2 am Tag für %3 seines Laubs</translation>
    </message>
    <message>
        <source>%1, %2 of sun for each percent.</source>
        <translation>%1, %2 Sonne für jedes Prozent.</translation>
    </message>
    <message>
        <source>Shorten %1 to %2</source>
        <translation>%1 auf %2 einkürzen</translation>
    </message>
    <message>
        <source>Thin %1 by %2</source>
        <translation>%1 um %2 auslichten</translation>
    </message>
    <message>
        <source>Lift %1 to %2</source>
        <translation>%1 auf %2 anheben</translation>
    </message>
    <message>
        <source>Under clear skies all year: no sunshine by month is set for this garden.</source>
        <translation>Unter klarem Himmel das ganze Jahr: für diesen Garten ist kein Sonnenschein je Monat eingetragen.</translation>
    </message>
    <message>
        <source>With the sunshine that is set for this garden, over the year %1 of what a clear sky would give.</source>
        <translation>Mit dem Sonnenschein, der für diesen Garten eingetragen ist, übers Jahr %1 dessen, was ein klarer Himmel gäbe.</translation>
    </message>
    <message>
        <source>%1&#xa0;min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>%1&#xa0;mol</source>
        <translation>%1&#xa0;mol</translation>
    </message>
    <message>
        <source>Young: growing fast</source>
        <translation>Jung: wächst schnell</translation>
    </message>
    <message>
        <source>Mature</source>
        <translation>Ausgewachsen</translation>
    </message>
    <message>
        <source>Old: growing little</source>
        <translation>Alt: wächst wenig</translation>
    </message>
    <message>
        <source>Stressed: drought, wounds, poor leaf</source>
        <translation>Gestresst: Trockenheit, Wunden, dürftiges Laub</translation>
    </message>
    <message>
        <source>Not known: ask the local authority</source>
        <translation>Nicht bekannt: fragen Sie die örtliche Behörde</translation>
    </message>
    <message>
        <source>Asked: not protected</source>
        <translation>Gefragt: nicht geschützt</translation>
    </message>
    <message>
        <source>Protected by law, order or by-law</source>
        <translation>Durch Gesetz, Verordnung oder Satzung geschützt</translation>
    </message>
    <message>
        <source>Sound: a collar, wood to wood</source>
        <translation>Gut: mit Astring, Holz an Holz</translation>
    </message>
    <message>
        <source>Codominant: two stems alike, no collar</source>
        <translation>Zwiesel: zwei gleiche Stämmlinge, kein Astring</translation>
    </message>
    <message>
        <source>Included bark: bark pressed between</source>
        <translation>Eingeschlossene Rinde: Rinde dazwischen gepresst</translation>
    </message>
    <message>
        <source>By tape</source>
        <translation>Mit dem Maßband</translation>
    </message>
    <message>
        <source>By eye</source>
        <translation>Nach Augenmaß</translation>
    </message>
    <message>
        <source>Guessed</source>
        <translation>Geschätzt</translation>
    </message>
    <message>
        <source>Hollow, closed</source>
        <translation>Höhlung, geschlossen</translation>
    </message>
    <message>
        <source>Hollow with an opening</source>
        <translation>Höhlung mit Öffnung</translation>
    </message>
    <message>
        <source>Crack</source>
        <translation>Riss</translation>
    </message>
    <message>
        <source>Dead from here to the tip</source>
        <translation>Tot von hier bis zur Spitze</translation>
    </message>
    <message>
        <source>Sparse</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Dense</source>
        <translation>Dicht</translation>
    </message>
    <message>
        <source>%1 along it</source>
        <translation>%1 entlang des Astes</translation>
    </message>
    <message>
        <source>at its union</source>
        <translation>am Ansatz</translation>
    </message>
    <message>
        <source>at the ground</source>
        <translation>am Boden</translation>
    </message>
    <message>
        <source>under its weight alone, for as long as it hangs</source>
        <translation>allein unter seinem Gewicht, so lange er hängt</translation>
    </message>
    <message>
        <source>by its own weight</source>
        <translation>durch das eigene Gewicht</translation>
    </message>
    <message>
        <source>with the wind from the %1</source>
        <translation>mit Wind aus %1</translation>
    </message>
    <message>
        <source>%1 is dead or cracked wood: it is given no strength at all, and can come down in any wind or none. It is work for a professional, or to be removed; keep from under it.</source>
        <translation>%1 ist totes oder gerissenes Holz: ihm wird gar keine Festigkeit zugerechnet, und es kann bei jedem Wind oder ohne herunterkommen. Das ist Arbeit für den Fachmann, oder der Ast muss weg; bleiben Sie darunter weg.</translation>
    </message>
    <message>
        <source>%1: %2 of its expected strength %3; bending moment %4 where it is %5 thick, %6.</source>
        <translation>%1: %2 der erwarteten Festigkeit %3; Biegemoment %4, wo er %5 dick ist, %6.</translation>
    </message>
    <message>
        <source>Open: fields, lawns or water around it</source>
        <translation>Offen: Felder, Rasen oder Wasser ringsum</translation>
    </message>
    <message>
        <source>Scattered: trees, hedges and houses here and there</source>
        <translation>Aufgelockert: hier und da Bäume, Hecken und Häuser</translation>
    </message>
    <message>
        <source>Built up: houses or woodland close together</source>
        <translation>Bebaut: Häuser oder Wald dicht beieinander</translation>
    </message>
    <message>
        <source>Walled: built up, and walls or tall hedges around it</source>
        <translation>Umschlossen: bebaut, ringsum Mauern oder hohe Hecken</translation>
    </message>
    <message>
        <source>%1: the strongest of most years</source>
        <translation>%1: die stärkste der meisten Jahre</translation>
    </message>
    <message>
        <source>%1: a storm as it comes every ten years or so</source>
        <translation>%1: ein Sturm, wie er etwa alle zehn Jahre kommt</translation>
    </message>
    <message>
        <source>%1: the wind that houses are built for, far from coasts</source>
        <translation>%1: der Wind, für den Häuser gebaut werden, fern der Küste</translation>
    </message>
    <message>
        <source>Lengths in feet and inches, wind in mph. Metres can be typed too: 2.4 m.</source>
        <translation>Längen in Fuß und Zoll, Wind in mph. Meter können auch eingegeben werden: 2.4 m.</translation>
    </message>
    <message>
        <source>Lengths in metres, wind in mph. Feet and inches can be typed too: 8 ft 2 in.</source>
        <translation>Längen in Metern, Wind in mph. Fuß und Zoll können auch eingegeben werden: 8 ft 2 in.</translation>
    </message>
    <message>
        <source>Lengths in metres, girths in centimetres, wind in km/h. Other units can be typed too: 8 ft 2 in.</source>
        <translation>Längen in Metern, Umfänge in Zentimetern, Wind in km/h. Andere Einheiten können auch eingegeben werden: 8 ft 2 in.</translation>
    </message>
    <message>
        <source>thinning the small shoots of %1</source>
        <translation>die feinen Triebe von %1 auslichten</translation>
    </message>
    <message>
        <source>taking off %1</source>
        <translation>%1 abnehmen</translation>
    </message>
    <message>
        <source>%1&#xa0;% of its strength</source>
        <translation>%1&#xa0;% der Festigkeit</translation>
    </message>
    <message>
        <source>%1, %2, %3 more gust</source>
        <translation>%1, %2, %3 mehr Bö</translation>
    </message>
    <message>
        <source>For each percent of the tree&apos;s leaf it is relieved most by %1.</source>
        <translation>Für jedes Prozent Laub des Baums entlastet am meisten: %1.</translation>
    </message>
    <message>
        <source>wet and in fruit</source>
        <translation>nass und mit Früchten</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>nass</translation>
    </message>
    <message>
        <source>%1 sinks by about %2 where it sinks most, %3 along it.</source>
        <translation>%1 senkt sich um etwa %2, wo er sich am meisten senkt, %3 entlang des Astes.</translation>
    </message>
    <message>
        <source>Its prop then bears about %1.</source>
        <translation>Seine Stütze trägt dann etwa %1.</translation>
    </message>
    <message>
        <source>After the cuts its tip springs back by about %1.</source>
        <translation>Nach den Schnitten federt seine Spitze etwa %1 zurück.</translation>
    </message>
    <message>
        <source>trees with a stem %1 thick weigh %2 to %3 dry, the sketch %4</source>
        <translation>Bäume mit einem %1 dicken Stamm wiegen trocken %2 bis %3, die Skizze %4</translation>
    </message>
    <message>
        <source>trees with a stem %1 thick have a crown %2 to %3 wide, the sketch %4</source>
        <translation>Bäume mit einem %1 dicken Stamm haben eine %2 bis %3 breite Krone, die Skizze %4</translation>
    </message>
    <message>
        <source>trees with a stem %1 thick bear %2 to %3 of leaf, the sketch %4</source>
        <translation>Bäume mit einem %1 dicken Stamm tragen %2 bis %3 Laub, die Skizze %4</translation>
    </message>
    <message>
        <source>The sketch is doubtful: %1. Wood and crown are both much for such a stem: tape its girth again.</source>
        <translation>Die Skizze ist zweifelhaft: %1. Holz und Krone sind beide viel für einen solchen Stamm: messen Sie seinen Umfang noch einmal.</translation>
    </message>
    <message>
        <source>The sketch is doubtful: %1. Wood and crown are both little for such a stem: tape its girth again, or draw the limbs that are missing.</source>
        <translation>Die Skizze ist zweifelhaft: %1. Holz und Krone sind beide wenig für einen solchen Stamm: messen Sie seinen Umfang noch einmal, oder zeichnen Sie die Äste, die fehlen.</translation>
    </message>
    <message>
        <source>The sketch is doubtful: %1. The crown fits the stem, so the limbs are probably drawn too thick: tape the thickest ones.</source>
        <translation>Die Skizze ist zweifelhaft: %1. Die Krone passt zum Stamm, also sind die Äste wohl zu dick gezeichnet: messen Sie die dicksten nach.</translation>
    </message>
    <message>
        <source>The sketch is doubtful: %1. The crown fits the stem, so limbs are probably drawn too thin, or are missing: tape the thickest ones.</source>
        <translation>Die Skizze ist zweifelhaft: %1. Die Krone passt zum Stamm, also sind Äste wohl zu dünn gezeichnet, oder es fehlen welche: messen Sie die dicksten nach.</translation>
    </message>
    <message>
        <source>The sketch is doubtful: %1. Look again how far the leafy parts reach.</source>
        <translation>Die Skizze ist zweifelhaft: %1. Sehen Sie noch einmal nach, wie weit die belaubten Teile reichen.</translation>
    </message>
    <message>
        <source>The sketch is doubtful: %1. Look again how far the leafy parts reach, and draw those that are missing.</source>
        <translation>Die Skizze ist zweifelhaft: %1. Sehen Sie noch einmal nach, wie weit die belaubten Teile reichen, und zeichnen Sie die, die fehlen.</translation>
    </message>
    <message>
        <source>The sketch is doubtful: %1. Look again how dense its leaf is.</source>
        <translation>Die Skizze ist zweifelhaft: %1. Sehen Sie noch einmal nach, wie dicht sein Laub ist.</translation>
    </message>
    <message>
        <source>The sketch is doubtful: %1. Look again whether its leaf is so sparse.</source>
        <translation>Die Skizze ist zweifelhaft: %1. Sehen Sie noch einmal nach, ob sein Laub so licht ist.</translation>
    </message>
    <message>
        <source>%1 visits, each as far as it may go, don&apos;t reach all of it: an arborist may know another way.</source>
        <translation>%1 Besuche, jeder so weit er gehen darf, schaffen nicht alles: ein Baumpfleger weiß vielleicht einen anderen Weg.</translation>
    </message>
    <message>
        <source>It takes %1 visits; fewer can&apos;t do it inside the guideline.</source>
        <translation>Es braucht %1 Besuche; mit weniger geht es innerhalb des Richtwerts nicht.</translation>
    </message>
    <message>
        <source>It can be done in %1 visits.</source>
        <translation>Es geht in %1 Besuchen.</translation>
    </message>
    <message>
        <source>The later ones are reckoned with shoots that grow %1 a year: look again when the day comes.</source>
        <translation>Die späteren sind mit Trieben gerechnet, die %1 im Jahr wachsen: sehen Sie wieder nach, wenn der Tag kommt.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a kind of cut and the limb</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1: nothing to cut.</source>
        <translation>%1: nichts zu schneiden.</translation>
    </message>
    <message>
        <source>%1, for %2 of the leaf: %3.</source>
        <translation>%1, für %2 des Laubs: %3.</translation>
    </message>
    <message>
        <source>The wind</source>
        <translation>Der Wind</translation>
    </message>
    <message>
        <source>The weight</source>
        <translation>Das Gewicht</translation>
    </message>
    <message>
        <source>What they ask of the wood</source>
        <translation>Was sie dem Holz abverlangen</translation>
    </message>
    <message>
        <source>What the wood bears</source>
        <translation>Was das Holz trägt</translation>
    </message>
    <message>
        <source>gust at the height where the wind takes hold</source>
        <translation>Bö in der Höhe, in der der Wind angreift</translation>
    </message>
    <message>
        <source>density of the air</source>
        <translation>Dichte der Luft</translation>
    </message>
    <message>
        <source>drag coefficient of the leaves in that gust</source>
        <translation>Widerstandsbeiwert des Laubs in dieser Bö</translation>
    </message>
    <message>
        <source>outline of what grows beyond, as that wind meets it</source>
        <translation>Umriss dessen, was jenseits wächst, wie dieser Wind ihn trifft</translation>
    </message>
    <message>
        <source>wind force = half the density x gust squared x coefficient x outline</source>
        <translation>Windkraft = halbe Dichte x Bö im Quadrat x Beiwert x Umriss</translation>
    </message>
    <message>
        <source>its lever arm about the place</source>
        <translation>ihr Hebelarm um die Stelle</translation>
    </message>
    <message>
        <source>bending by wind = force x arm</source>
        <translation>Biegung durch Wind = Kraft x Arm</translation>
    </message>
    <message>
        <source>wood beyond the place</source>
        <translation>Holz jenseits der Stelle</translation>
    </message>
    <message>
        <source>leaf and twigs beyond it</source>
        <translation>Laub und Zweige jenseits davon</translation>
    </message>
    <message>
        <source>crop beyond it</source>
        <translation>Früchte jenseits davon</translation>
    </message>
    <message>
        <source>rain or ice beyond it</source>
        <translation>Regen oder Eis jenseits davon</translation>
    </message>
    <message>
        <source>what props beyond it push up with</source>
        <translation>womit Stützen jenseits davon nach oben drücken</translation>
    </message>
    <message>
        <source>level distance of their common centre</source>
        <translation>waagerechter Abstand ihres gemeinsamen Schwerpunkts</translation>
    </message>
    <message>
        <source>bending by weight = mass x gravity x arm</source>
        <translation>Biegung durch Gewicht = Masse x Erdbeschleunigung x Arm</translation>
    </message>
    <message>
        <source>bending by both, added as arrows are</source>
        <translation>Biegung durch beides, wie Pfeile addiert</translation>
    </message>
    <message>
        <source>twisting by both</source>
        <translation>Verdrehung durch beides</translation>
    </message>
    <message>
        <source>pull along the limb (less than nothing is push)</source>
        <translation>Zug entlang des Astes (weniger als nichts ist Druck)</translation>
    </message>
    <message>
        <source>thickness at the place</source>
        <translation>Dicke an der Stelle</translation>
    </message>
    <message>
        <source>section modulus of the sound wood</source>
        <translation>Widerstandsmoment des gesunden Holzes</translation>
    </message>
    <message>
        <source>share of the solid wood&apos;s section modulus that the cavity leaves</source>
        <translation>Anteil am Widerstandsmoment des vollen Holzes, den die Höhlung lässt</translation>
    </message>
    <message>
        <source>stress by bending = moment / modulus</source>
        <translation>Spannung durch Biegung = Moment / Widerstandsmoment</translation>
    </message>
    <message>
        <source>stress by twisting</source>
        <translation>Spannung durch Verdrehung</translation>
    </message>
    <message>
        <source>stress by pull or push</source>
        <translation>Spannung durch Zug oder Druck</translation>
    </message>
    <message>
        <source>greatest stress, all three together</source>
        <translation>größte Spannung, alle drei zusammen</translation>
    </message>
    <message>
        <source>bending strength of clear green wood</source>
        <translation>Biegefestigkeit fehlerfreien grünen Holzes</translation>
    </message>
    <message>
        <source>share of it that a whole limb or stem, over bark, reaches</source>
        <translation>Anteil davon, den ein ganzer Ast oder Stamm, über Rinde, erreicht</translation>
    </message>
    <message>
        <source>thickness of the limb over that of the wood it grows from</source>
        <translation>Dicke des Astes zu der des Holzes, aus dem er wächst</translation>
    </message>
    <message>
        <source>share that the union leaves</source>
        <translation>Anteil, den der Ansatz lässt</translation>
    </message>
    <message>
        <source>share that is left under what hangs for hours, days or weeks</source>
        <translation>Anteil, der unter dem bleibt, was Stunden, Tage oder Wochen hängt</translation>
    </message>
    <message>
        <source>expected strength here = strength and shares multiplied</source>
        <translation>erwartete Festigkeit hier = Festigkeit und Anteile multipliziert</translation>
    </message>
    <message>
        <source>share of its expected strength that is asked for = stress / strength</source>
        <translation>abverlangter Anteil der erwarteten Festigkeit = Spannung / Festigkeit</translation>
    </message>
    <message>
        <source>none is counted on</source>
        <translation>keine wird angerechnet</translation>
    </message>
    <message>
        <source>%1 does better with %2.</source>
        <translation>%1 gedeiht besser mit %2.</translation>
    </message>
    <message>
        <source>What %1 needs counts from %2, not in %3.</source>
        <translation>Was %1 braucht, zählt von %2, nicht im %3.</translation>
    </message>
    <message>
        <source>Taken by trees: %1.</source>
        <translation>Von Bäumen genommen: %1.</translation>
    </message>
    <message>
        <source>%1: %2 of direct sun on a clear day, of %3 under an open sky.</source>
        <translation>%1: %2 direkte Sonne an einem klaren Tag, von %3 unter freiem Himmel.</translation>
    </message>
    <message>
        <source>nothing overhead</source>
        <translation>nichts darüber</translation>
    </message>
    <message>
        <source>no load</source>
        <translation>keine Last</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a strip and its headroom</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Headroom:</source>
        <translation>Lichte Höhe:</translation>
    </message>
    <message>
        <source>Share of its expected strength that the hardest pressed limb needs in a gust of %1:</source>
        <translation>Anteil der erwarteten Festigkeit, den eine Bö von %1 dem am stärksten beanspruchten Ast abverlangt:</translation>
    </message>
    <message>
        <source>Direct sun a day on %1 over the growing season:</source>
        <translation>Direkte Sonne am Tag auf %1 in der Wachstumszeit:</translation>
    </message>
    <message>
        <source>as it is: %1</source>
        <translation>wie es ist: %1</translation>
    </message>
    <message>
        <source>for %1 of the leaf: %2</source>
        <translation>für %1 des Laubs: %2</translation>
    </message>
    <message>
        <source>nothing inside the guideline changes that</source>
        <translation>nichts innerhalb des Richtwerts ändert das</translation>
    </message>
    <message>
        <source>A forecast of %1 is one of steady wind; over open country its gusts reach about %2.</source>
        <translation>Eine Vorhersage von %1 meint stetigen Wind; über freiem Land erreichen seine Böen etwa %2.</translation>
    </message>
    <message>
        <source>Gusts of %1 are taken as %2.</source>
        <translation>Böen mit %1 werden als %2 genommen.</translation>
    </message>
    <message>
        <source>The least gust of a severe thunderstorm is taken (%1): it can be stronger.</source>
        <translation>Genommen wird die geringste Bö eines schweren Gewitters (%1): sie kann stärker sein.</translation>
    </message>
    <message>
        <source>The air is taken as %1.</source>
        <translation>Die Luft wird mit %1 angenommen.</translation>
    </message>
    <message>
        <source>force %1, %2</source>
        <translation>Stärke %1, %2</translation>
    </message>
    <message>
        <source>the %1</source>
        <translation>Baum (%1)</translation>
    </message>
    <message>
        <source>brackets or mushrooms on stem or roots</source>
        <translation>Konsolen oder Pilze an Stamm oder Wurzeln</translation>
    </message>
    <message>
        <source>wet or bleeding bark</source>
        <translation>nasse oder blutende Rinde</translation>
    </message>
    <message>
        <source>soil lifting or cracking at the base</source>
        <translation>sich hebender oder reißender Boden am Stammfuß</translation>
    </message>
    <message>
        <source>a new or growing lean</source>
        <translation>eine neue oder wachsende Neigung</translation>
    </message>
    <message>
        <source>a broken branch caught in the crown</source>
        <translation>ein abgebrochener Ast, der in der Krone hängt</translation>
    </message>
    <message>
        <source>a top that has died back</source>
        <translation>eine abgestorbene Spitze</translation>
    </message>
    <message>
        <source>roots cut by digging or paving</source>
        <translation>durch Graben oder Pflastern gekappte Wurzeln</translation>
    </message>
    <message>
        <source>a hollow at the foot of the stem</source>
        <translation>eine Höhlung am Stammfuß</translation>
    </message>
    <message>
        <source>a hole that bats or birds use</source>
        <translation>ein Loch, das Fledermäuse oder Vögel nutzen</translation>
    </message>
    <message>
        <source>a nest in use</source>
        <translation>ein benutztes Nest</translation>
    </message>
    <message>
        <source>Take it down in %1 lengths, from the tip inwards: %2.</source>
        <translation>In %1 Stücken abtragen, von der Spitze nach innen: %2.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>secateurs</source>
        <translation>Gartenschere</translation>
    </message>
    <message>
        <source>loppers</source>
        <translation>Astschere</translation>
    </message>
    <message>
        <source>hand saw</source>
        <translation>Handsäge</translation>
    </message>
    <message>
        <source>pole pruner</source>
        <translation>Stangenschere</translation>
    </message>
    <message>
        <source>pole saw</source>
        <translation>Stangensäge</translation>
    </message>
    <message>
        <source>out of reach from the ground</source>
        <translation>vom Boden aus nicht erreichbar</translation>
    </message>
    <message>
        <source>%1 and about %2</source>
        <translation>%1 und etwa %2</translation>
    </message>
    <message>
        <source>off %1 at %2 from its union</source>
        <translation>%1 ab bei %2 vom Ansatz</translation>
    </message>
    <message>
        <source>%1 at its union</source>
        <translation>%1 am Ansatz</translation>
    </message>
    <message>
        <source>%1 (%2; %3 thick, %4 up; %5)</source>
        <translation>%1 (%2; %3 dick, %4 hoch; %5)</translation>
    </message>
    <message>
        <source>Pieces can come down up to %1 from the place under the cut.</source>
        <translation>Stücke können bis zu %1 von der Stelle unter dem Schnitt herunterkommen.</translation>
    </message>
    <message>
        <source>The shoots drop where they hang.</source>
        <translation>Die Triebe fallen, wo sie hängen.</translation>
    </message>
    <message>
        <source>There: %1.</source>
        <translation>Dort: %1.</translation>
    </message>
    <message>
        <source>Nothing held from the ground reaches it.</source>
        <translation>Nichts, was vom Boden aus gehalten wird, reicht hin.</translation>
    </message>
    <message>
        <source>With: %1.</source>
        <translation>Mit: %1.</translation>
    </message>
    <message>
        <source>%1 of brush on a heap (%2 to %3, as it packs)</source>
        <translation>%1 Reisig auf einem Haufen (%2 bis %3, je nachdem, wie dicht er liegt)</translation>
    </message>
    <message>
        <source>To carry away: about %1, %2.</source>
        <translation>Abzufahren: etwa %1, %2.</translation>
    </message>
    <message>
        <source>To carry away: about %1, %2, and %3 of logs stacked (%4, %5 thick and over).</source>
        <translation>Abzufahren: etwa %1, %2, und %3 gestapeltes Stammholz (%4, %5 dick und mehr).</translation>
    </message>
    <message>
        <source>What is wrong concerns the whole tree, so none of the cuts remains for you.</source>
        <translation>Was nicht stimmt, betrifft den ganzen Baum, also bleibt kein Schnitt für Sie.</translation>
    </message>
    <message>
        <source>None of the cuts remains for you.</source>
        <translation>Kein Schnitt bleibt für Sie.</translation>
    </message>
    <message>
        <source>By number, for the arborist: %1; for you: %2.</source>
        <translation>Nach Nummern, für den Baumpfleger: %1; für Sie: %2.</translation>
    </message>
    <message>
        <source>In brackets: the formula&apos;s number in %1, and the source.</source>
        <translation>In Klammern: die Nummer der Formel in %1, und die Quelle.</translation>
    </message>
    <message>
        <source>The leaf of the whole tree</source>
        <translation>Das Laub des ganzen Baums</translation>
    </message>
    <message>
        <source>Leaf area over each area of ground</source>
        <translation>Blattfläche über jeder Bodenfläche</translation>
    </message>
    <message>
        <source>Crown on plan</source>
        <translation>Krone im Grundriss</translation>
    </message>
    <message>
        <source>from the drawing</source>
        <translation>aus der Zeichnung</translation>
    </message>
    <message>
        <source>Leaf = index x crown on plan</source>
        <translation>Laub = Index x Krone im Grundriss</translation>
    </message>
    <message>
        <source>What comes off</source>
        <translation>Was wegkommt</translation>
    </message>
    <message>
        <source>Leaf of %1 that goes, of %2</source>
        <translation>Laub von %1, das geht, von %2</translation>
    </message>
    <message>
        <source>Leaf of %1, all of it</source>
        <translation>Laub von %1, alles</translation>
    </message>
    <message>
        <source>Share = leaf that goes / leaf of the whole tree</source>
        <translation>Anteil = Laub, das geht / Laub des ganzen Baums</translation>
    </message>
    <message>
        <source>What it weighs, green</source>
        <translation>Was es grün wiegt</translation>
    </message>
    <message>
        <source>Wood, at %1</source>
        <translation>Holz, mit %1</translation>
    </message>
    <message>
        <source>Leaf and twigs too fine to draw</source>
        <translation>Laub und Zweige, zu fein zum Zeichnen</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <source>All together</source>
        <translation>Alles zusammen</translation>
    </message>
    <message>
        <source>What may go</source>
        <translation>Was gehen darf</translation>
    </message>
    <message>
        <source>Left to go on the day</source>
        <translation>Darf am Tag noch gehen</translation>
    </message>
    <message>
        <source>Why so much leaf, and so heavy?</source>
        <translation>Warum so viel Laub, und so schwer?</translation>
    </message>
    <message>
        <source>%1: %2 of the leaf, about %3.</source>
        <translation>%1: %2 des Laubs, etwa %3.</translation>
    </message>
    <message>
        <source>Leaf is counted as drawn, in summer; each limb keeps what it has when another is cut.</source>
        <translation>Laub zählt, wie es gezeichnet ist, im Sommer; jeder Ast behält das seine, wenn ein anderer geschnitten wird.</translation>
    </message>
    <message>
        <source>height of the middle of %1 at the place</source>
        <translation>Höhe der Mitte von %1 an der Stelle</translation>
    </message>
    <message>
        <source>its leafy body reaches below that</source>
        <translation>sein Laub reicht darunter</translation>
    </message>
    <message>
        <source>its wood reaches below that</source>
        <translation>sein Holz reicht darunter</translation>
    </message>
    <message>
        <source>shoots hang below the leafy body</source>
        <translation>Triebe hängen unter das Laub</translation>
    </message>
    <message>
        <source>headroom = height less what reaches and hangs below it</source>
        <translation>lichte Höhe = Höhe weniger dem, was darunter reicht und hängt</translation>
    </message>
    <message>
        <source>What it needs</source>
        <translation>Was es braucht</translation>
    </message>
    <message>
        <source>you wrote it down</source>
        <translation>Sie haben es aufgeschrieben</translation>
    </message>
    <message>
        <source>headroom wanted</source>
        <translation>gewünschte lichte Höhe</translation>
    </message>
    <message>
        <source>headroom usual for %1</source>
        <translation>übliche lichte Höhe für %1</translation>
    </message>
    <message>
        <source>missing = what is needed less the lower headroom of the two</source>
        <translation>fehlend = nötige lichte Höhe weniger der kleineren der beiden</translation>
    </message>
    <message>
        <source>At its heaviest: %1</source>
        <translation>Am schwersten: %1</translation>
    </message>
    <message>
        <source>rain on leaf and twigs of the whole tree</source>
        <translation>Regen auf Laub und Zweigen des ganzen Baums</translation>
    </message>
    <message>
        <source>crop on the whole tree</source>
        <translation>Früchte am ganzen Baum</translation>
    </message>
    <message>
        <source>so much %1 sinks where it sinks most</source>
        <translation>so weit senkt sich %1, wo er sich am meisten senkt</translation>
    </message>
    <message>
        <source>%1 under %2 as drawn, %3 at its heaviest: %4 is missing.</source>
        <translation>%1 unter %2 wie gezeichnet, %3 am schwersten: es fehlen %4.</translation>
    </message>
    <message>
        <source>%1 under %2: %3 is missing.</source>
        <translation>%1 unter %2: es fehlen %3.</translation>
    </message>
    <message>
        <source>%1 under %2 as drawn, %3 at its heaviest: that is enough.</source>
        <translation>%1 unter %2 wie gezeichnet, %3 am schwersten: das genügt.</translation>
    </message>
    <message>
        <source>%1 under %2, which is enough.</source>
        <translation>%1 unter %2, das genügt.</translation>
    </message>
    <message>
        <source>Why this headroom over %1?</source>
        <translation>Warum diese lichte Höhe über %1?</translation>
    </message>
    <message>
        <source>The lowest wood, leaf or shoot of all limbs that reach over it counts; the ground is taken as level. The year&apos;s growth is not in it.</source>
        <translation>Es zählt das tiefste Holz, Laub oder der tiefste Trieb aller Äste, die darüber reichen; der Boden gilt als eben. Das Wachstum des Jahres ist nicht enthalten.</translation>
    </message>
    <message>
        <source>As it is drawn, dry and in still air</source>
        <translation>Wie gezeichnet, trocken und bei Windstille</translation>
    </message>
    <message>
        <source>Reckoned for %1, a gust of %2 (%3) and air of %4, at the place and in the wind that ask most of it.</source>
        <translation>Gerechnet für %1, eine Bö von %2 (%3) und Luft von %4, an der Stelle und in dem Wind, die ihm am meisten abverlangen.</translation>
    </message>
    <message>
        <source>nothing to cut</source>
        <translation>nichts zu schneiden</translation>
    </message>
    <message>
        <source>The sky</source>
        <translation>Der Himmel</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Day, from sunrise to sunset</source>
        <translation>Tag, von Sonnenaufgang bis Sonnenuntergang</translation>
    </message>
    <message>
        <source>The sun&apos;s height at noon</source>
        <translation>Sonnenhöhe am Mittag</translation>
    </message>
    <message>
        <source>Direct sun under an open sky: while it is strong enough to count</source>
        <translation>Direkte Sonne unter freiem Himmel: solange sie stark genug ist, um zu zählen</translation>
    </message>
    <message>
        <source>What stands in its way</source>
        <translation>Was ihr im Weg steht</translation>
    </message>
    <message>
        <source>Buildings, fences and hedges take</source>
        <translation>Gebäude, Zäune und Hecken nehmen</translation>
    </message>
    <message>
        <source>%1 alone takes</source>
        <translation>%1 allein nimmt</translation>
    </message>
    <message>
        <source>All trees together take</source>
        <translation>Alle Bäume zusammen nehmen</translation>
    </message>
    <message>
        <source>Direct sun = open sky less what walls and trees take</source>
        <translation>Direkte Sonne = freier Himmel weniger dem, was Wände und Bäume nehmen</translation>
    </message>
    <message>
        <source>What each takes alone need not add up: where one is cut, another may stand behind it.</source>
        <translation>Was jeder allein nimmt, muss sich nicht aufsummieren: wo einer geschnitten wird, kann dahinter ein anderer stehen.</translation>
    </message>
    <message>
        <source>The leaf of %1</source>
        <translation>Das Laub von %1</translation>
    </message>
    <message>
        <source>Share of it that hangs on the day</source>
        <translation>Anteil davon, der am Tag hängt</translation>
    </message>
    <message>
        <source>What %1 needs</source>
        <translation>Was %1 braucht</translation>
    </message>
    <message>
        <source>Direct sun a day, at the least</source>
        <translation>Direkte Sonne am Tag, mindestens</translation>
    </message>
    <message>
        <source>Direct sun a day, to do well</source>
        <translation>Direkte Sonne am Tag, um gut zu gedeihen</translation>
    </message>
    <message>
        <source>Why so much sun on %1?</source>
        <translation>Warum so viel Sonne auf %1?</translation>
    </message>
    <message>
        <source>Reckoned for %1, a cloudless day, as a mean over %2 places on it.</source>
        <translation>Gerechnet für %1, einen wolkenlosen Tag, als Mittel über %2 Stellen darauf.</translation>
    </message>
    <message>
        <source>Room over %1</source>
        <translation>Lichte Höhe über %1</translation>
    </message>
    <message>
        <source>Hardest pressed limb, in a gust of %1</source>
        <translation>Am stärksten beanspruchter Ast, in einer Bö von %1</translation>
    </message>
    <message>
        <source>Sun on %1</source>
        <translation>Sonne auf %1</translation>
    </message>
    <message>
        <source>%1, limit %2</source>
        <translation>%1, Grenze %2</translation>
    </message>
    <message>
        <source>Why me, a helper or a professional?</source>
        <translation>Warum ich, ein Helfer oder ein Fachmann?</translation>
    </message>
    <message>
        <source>Each of these rules alone decides. Local codes and what a licensed professional says on the spot go before all of them.</source>
        <translation>Jede dieser Regeln entscheidet für sich. Die örtlichen Vorschriften und das, was ein zugelassener Fachmann vor Ort sagt, gehen ihnen allen vor.</translation>
    </message>
    <message>
        <source>Asks for a certified arborist</source>
        <translation>Verlangt einen geprüften Baumpfleger</translation>
    </message>
    <message>
        <source>Asks for a helper</source>
        <translation>Verlangt einen Helfer</translation>
    </message>
    <message>
        <source>What was looked at</source>
        <translation>Was geprüft wurde</translation>
    </message>
    <message>
        <source>Heights, weights, wounds, electric lines, defects, what stands below: no rule asks for more than somebody in sight and call.</source>
        <translation>Höhen, Gewichte, Wunden, Stromleitungen, Schäden, was darunter steht: keine Regel verlangt mehr als jemanden in Sicht- und Rufweite.</translation>
    </message>
    <message>
        <source>a wound seen closed</source>
        <comment>a step of history</comment>
        <translation>eine Wunde als geschlossen gesehen</translation>
    </message>
    <message>
        <source>More photos: %1.</source>
        <translation>Weitere Fotos: %1.</translation>
    </message>
    <message>
        <source>the folder can&apos;t be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>looking %1</source>
        <translation>Blick nach %1</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Photo: %1, %2.</source>
        <comment>its file, and the words under it</comment>
        <translation>Foto: %1, %2.</translation>
    </message>
    <message>
        <source>Every other set of cuts was weighed: none does it with less leaf.</source>
        <translation>Jede andere Reihe von Schnitten wurde gewogen: keine schafft es mit weniger Laub.</translation>
    </message>
    <message>
        <source>The search was cut short: a set with less leaf may exist, but none that takes less than %1.</source>
        <translation>Die Suche wurde abgekürzt: eine Reihe mit weniger Laub kann es geben, aber keine, die weniger als %1 nimmt.</translation>
    </message>
    <message>
        <source>More cutting on one side would leave the crown hanging to the other.</source>
        <translation>Mehr Schnitt auf einer Seite ließe die Krone zur anderen hängen.</translation>
    </message>
    <message>
        <source>The weight of the crown, or its hold on the wind, would move %1 of the crown&apos;s reach to one side; over %2 is much.</source>
        <translation>Das Gewicht der Krone oder ihr Angriff für den Wind würde um %1 der Kronenreichweite zur Seite rücken; über %2 ist viel.</translation>
    </message>
    <message>
        <source>Fungi enter the wounds of %1 with rain: cut when it is dry and no rain is forecast; best are six weeks without.</source>
        <translation>Mit dem Regen dringen Pilze in die Wunden ein (%1): schneiden Sie, wenn es trocken und kein Regen vorhergesagt ist; am besten sind sechs Wochen ohne.</translation>
    </message>
    <message>
        <source>%1 would be stripped inside and keep its leaf at the end only, which makes it whip and break.</source>
        <translation>%1 würde innen ausgeputzt und behielte sein Laub nur am Ende; solche Äste peitschen und brechen.</translation>
    </message>
    <message>
        <source>%1 would keep only %2 of its leaf on its inner two thirds: under %3 it is stripped to a tail, whips and breaks more easily. Leave inner side branches on it.</source>
        <translation>%1 behielte nur %2 des Laubs auf den inneren zwei Dritteln: unter %3 ist ein Ast zum Löwenschwanz ausgeputzt, peitscht und bricht leichter. Lassen Sie innere Seitenäste stehen.</translation>
    </message>
    <message>
        <source>The limb that would break first</source>
        <translation>Der Ast, der als erster bräche</translation>
    </message>
    <message>
        <source>%1, in full leaf and crop: the gust in which it is expected to break %2, half of such limbs below it; wanted is %3 at least.</source>
        <translation>%1, mit vollem Laub und Früchten: die Bö, in der er voraussichtlich bricht, %2, die Hälfte solcher Äste schon darunter; gewünscht sind mindestens %3.</translation>
    </message>
    <message>
        <source>%1: light for growth %2 a day; wanted are %3.</source>
        <translation>%1: Licht zum Wachsen %2 am Tag; gewünscht sind %3.</translation>
    </message>
    <message>
        <source>The goal about “%1” is left aside: there is no such limb or planting, or nothing is known of the light it needs.</source>
        <translation>Das Ziel zu „%1“ bleibt außer Acht: Es gibt keinen solchen Ast und keine solche Pflanzung, oder über den Lichtbedarf ist nichts bekannt.</translation>
    </message>
    <message>
        <source>As the shoots grow it holds %1.</source>
        <translation>So wie die Triebe wachsen, hält das %1.</translation>
    </message>
    <message>
        <source>Besides these cuts a fruit tree is renewed each year: some of last year&apos;s shoots go, with old fruiting wood.</source>
        <translation>Neben diesen Schnitten wird ein Obstbaum jedes Jahr verjüngt: Ein Teil der vorjährigen Triebe kommt weg, mit altem Fruchtholz.</translation>
    </message>
    <message>
        <source>Besides these cuts, renew the fruiting wood of %1 each year: about %2 of last year&apos;s shoots go, upright ones that fill the open middle of the crown first, then old fruiting wood back to young shoots.</source>
        <translation>Verjüngen Sie neben diesen Schnitten jedes Jahr das Fruchtholz (%1): etwa %2 der vorjährigen Triebe kommen weg, zuerst aufrechte, die die offene Mitte der Krone füllen, dann altes Fruchtholz bis auf junge Triebe.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>two shares</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Tree next door</source>
        <translation>Nachbarbaum</translation>
    </message>
    <message>
        <source>tree next door</source>
        <translation>Nachbarbaum</translation>
    </message>
    <message>
        <source>Open crown</source>
        <translation>Lockere Krone</translation>
    </message>
    <message>
        <source>Crown of usual density</source>
        <translation>Krone üblicher Dichte</translation>
    </message>
    <message>
        <source>Dense crown</source>
        <translation>Dichte Krone</translation>
    </message>
    <message>
        <source>Direct sun under the open sky, mean day</source>
        <translation>Direkte Sonne unter freiem Himmel, mittlerer Tag</translation>
    </message>
    <message>
        <source>Light for growth under the open sky</source>
        <translation>Licht zum Wachsen unter freiem Himmel</translation>
    </message>
    <message>
        <source>Without %1 there would be more</source>
        <translation>Ohne %1 wäre es mehr</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>Light for growth that is left</source>
        <translation>Licht zum Wachsen, das bleibt</translation>
    </message>
    <message>
        <source>Why so much light, %1?</source>
        <translation>Warum so viel Licht, %1?</translation>
    </message>
    <message>
        <source>%1: %2 of direct sun a day and %3, of %4 and %5 in the open.</source>
        <translation>%1: %2 direkte Sonne am Tag und %3, von %4 und %5 im Freien.</translation>
    </message>
    <message>
        <source>A mean day of %1, over %2 places on it.</source>
        <translation>Ein mittlerer Tag, %1, im Mittel über %2 Stellen darauf.</translation>
    </message>
    <message>
        <source>broken</source>
        <translation>gebrochen</translation>
    </message>
    <message>
        <source>rubs on another limb</source>
        <translation>scheuert an einem anderen Ast</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>gewünscht</translation>
    </message>
    <message>
        <source>Sight triangle at a corner</source>
        <translation>Sichtdreieck an einer Ecke</translation>
    </message>
    <message>
        <source>Ground in fire country</source>
        <translation>Boden in Waldbrandgegend</translation>
    </message>
    <message>
        <source>Chimney, to its mouth</source>
        <translation>Schornstein, bis zur Mündung</translation>
    </message>
    <message>
        <source>Load, hardest pressed limb</source>
        <translation>Last, am stärksten beansprucht</translation>
    </message>
    <message>
        <source>Load, %1</source>
        <translation>Last, %1</translation>
    </message>
    <message>
        <source>First limb breaks in</source>
        <translation>Erster Ast bricht bei</translation>
    </message>
    <message>
        <source>Breaks in, %1</source>
        <translation>Bricht bei, %1</translation>
    </message>
    <message>
        <source>Sun a day, %1</source>
        <translation>Sonne am Tag, %1</translation>
    </message>
    <message>
        <source>Light for growth, %1</source>
        <translation>Licht zum Wachsen, %1</translation>
    </message>
    <message>
        <source>Limbs that fill the middle</source>
        <translation>Äste, die die Mitte füllen</translation>
    </message>
    <message>
        <source>the same, wet and in fruit</source>
        <translation>dasselbe, nass und in Frucht</translation>
    </message>
    <message>
        <source>Leaf of this sketch</source>
        <translation>Laub dieser Skizze</translation>
    </message>
    <message>
        <source>%1 at least</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>Take off %1 where it grows from %2, %3 above the ground, just outside the branch collar: neither flush with the wood behind it nor with a stub.</source>
        <translation>%1 dort abnehmen, wo er aus %2 wächst, %3 über dem Boden, knapp außerhalb des Astrings: weder stammparallel noch mit Stummel.</translation>
    </message>
    <message>
        <source>Cut the dead end off %1, %2 from its union, %3 above the ground: dead wood only, up to the swollen ring where it lives.</source>
        <translation>Das tote Ende von %1 abschneiden, %2 vom Ansatz, %3 über dem Boden: nur totes Holz, bis an den verdickten Ring, wo er lebt.</translation>
    </message>
    <message>
        <source>Shorten %1 back to its side branch %2, %3 from the union and %4 above the ground; %2 takes over. Cut just outside the ridge of bark between the two, without a stub.</source>
        <translation>%1 auf den Seitenast %2 zurücknehmen, %3 vom Ansatz und %4 über dem Boden; %2 übernimmt. Knapp außerhalb der Rindenleiste zwischen beiden schneiden, ohne Stummel.</translation>
    </message>
    <message>
        <source>renewal</source>
        <translation>Verjüngung</translation>
    </message>
    <message>
        <source>cleaning, %1</source>
        <comment>a kind of cut</comment>
        <translation>Kronenpflege, %1</translation>
    </message>
    <message>
        <source>Renew the fruiting wood of %1: take %2 of last year&apos;s shoots, upright ones first, and cut old fruiting wood back to young shoots.</source>
        <translation>Das Fruchtholz von %1 verjüngen: %2 der vorjährigen Triebe nehmen, aufrechte zuerst, und altes Fruchtholz auf junge Triebe zurückschneiden.</translation>
    </message>
    <message>
        <source>Wound %1 across; what comes off is %2 long and weighs about %3; not counted as leaf.</source>
        <translation>Wunde %1 breit; was wegkommt, ist %2 lang und wiegt etwa %3; zählt nicht als Laub.</translation>
    </message>
    <message>
        <source>The tree only has to be cleaned: dead, broken or rubbing wood goes, which is not counted as leaf.</source>
        <translation>Der Baum braucht nur Kronenpflege: totes, gebrochenes oder scheuerndes Holz kommt weg, und das zählt nicht als Laub.</translation>
    </message>
    <message>
        <source>%1 renewed by %2</source>
        <translation>%1 um %2 verjüngt</translation>
    </message>
    <message>
        <source>%1 renewed</source>
        <translation>%1 verjüngt</translation>
    </message>
    <message>
        <source>%1 stands upright in the middle of the crown: without it light and air reach the fruiting wood of the scaffold limbs.</source>
        <translation>%1 steht aufrecht in der Mitte der Krone: Ohne ihn kommen Licht und Luft an das Fruchtholz der Leitäste.</translation>
    </message>
    <message>
        <source>%1 of last year&apos;s shoots is less than the %2 that this fruit is usually renewed by: expect less young fruiting wood.</source>
        <translation>%1 der vorjährigen Triebe sind weniger als die %2, um die dieses Obst üblicherweise verjüngt wird: Es kommt weniger junges Fruchtholz.</translation>
    </message>
    <message>
        <source>%1 of last year&apos;s shoots is more than the %2 that this fruit is usually renewed by: expect strong new shoots and less fruit.</source>
        <translation>%1 der vorjährigen Triebe sind mehr als die %2, um die dieses Obst üblicherweise verjüngt wird: Es kommen starke neue Triebe und weniger Früchte.</translation>
    </message>
    <message>
        <source>%1 would be cut back to wood without green, and most conifers don&apos;t shoot from bare wood: it stays bare.</source>
        <translation>%1 würde bis ins Holz ohne Grün zurückgeschnitten, und die meisten Nadelbäume treiben aus kahlem Holz nicht aus: Er bleibt kahl.</translation>
    </message>
    <message>
        <source>The work is %1 on plan from the wire %2: here nothing starts inside %3 before the line&apos;s operator has been asked. Treat it as live.</source>
        <translation>Die Arbeit liegt im Grundriss %1 von der Leitung %2 entfernt: Innerhalb von %3 beginnt hier nichts, ehe der Betreiber der Leitung gefragt wurde. Behandeln Sie sie als unter Spannung.</translation>
    </message>
    <message>
        <source>%1 is broken where it is %2 thick: over %3 it can&apos;t be held in one hand, and the weight that comes off makes it jump.</source>
        <translation>%1 ist gebrochen, wo er %2 dick ist: Über %3 lässt er sich nicht mit einer Hand halten, und das Gewicht, das abgeht, lässt ihn hochschnellen.</translation>
    </message>
    <message>
        <source>Leaf or wood comes within %1 of the mouth of %2: inside %3 sparks can set it alight, so it should be kept clear.</source>
        <translation>Laub oder Holz kommt der Mündung von %2 bis auf %1 nahe: Innerhalb von %3 können Funken es anzünden, der Abstand ist freizuhalten.</translation>
    </message>
    <message>
        <source>Whether a law or an order protects this tree is not known: make no cut before the local authority has been asked.</source>
        <translation>Ob ein Gesetz oder eine Satzung diesen Baum schützt, ist nicht bekannt: Machen Sie keinen Schnitt, ehe die örtliche Behörde gefragt wurde.</translation>
    </message>
    <message>
        <source>Birds may be nesting in %1: make no cut before you have searched the tree, and wait if there is a nest in use.</source>
        <translation>Im %1 können Vögel nisten: Machen Sie keinen Schnitt, ehe Sie den Baum durchsucht haben, und warten Sie, wenn ein benutztes Nest da ist.</translation>
    </message>
    <message>
        <source>Oak wilt enters fresh wounds until the end of %1 where this garden lies: make no cut on an oak before then. If it can&apos;t wait, seal each wound at once.</source>
        <translation>Die Eichenwelke dringt dort, wo dieser Garten liegt, bis Ende %1 in frische Wunden ein: Machen Sie vorher keinen Schnitt an einer Eiche. Wenn es nicht warten kann, verschließen Sie jede Wunde sofort.</translation>
    </message>
    <message>
        <source>The middle of the crown is to be free of upright limbs: %1 stand in it, %2 afterwards.</source>
        <translation>Die Mitte der Krone soll frei von aufrechten Ästen sein: %1 stehen darin, danach %2.</translation>
    </message>
    <message>
        <source>Opening the middle of the crown is for fruit trees: it is left aside.</source>
        <translation>Das Öffnen der Kronenmitte ist für Obstbäume: Es bleibt außer Betracht.</translation>
    </message>
    <message>
        <source>a sight triangle</source>
        <translation>ein Sichtdreieck</translation>
    </message>
    <message>
        <source>ground in fire country</source>
        <translation>Boden in Waldbrandgegend</translation>
    </message>
    <message>
        <source>Renew the fruiting wood of %1 by %2</source>
        <translation>Das Fruchtholz von %1 um %2 verjüngen</translation>
    </message>
    <message>
        <source>Renew %1 by %2</source>
        <translation>%1 um %2 verjüngen</translation>
    </message>
    <message>
        <source>Broken here</source>
        <translation>Hier gebrochen</translation>
    </message>
    <message>
        <source>%1 touches another limb or nearly so away from their fork, and they rub each other&apos;s bark off. Where that is so in the tree too, one of them goes first of all, as dead and broken wood does: the thinner or the worse placed. Mark that one as rubbing.</source>
        <translation>%1 berührt abseits der Gabelung einen anderen Ast oder kommt ihm sehr nahe, und sie scheuern einander die Rinde ab. Wo das auch am Baum so ist, kommt einer von beiden vor allem anderen weg, wie totes und gebrochenes Holz: der dünnere oder der ungünstiger stehende. Markieren Sie diesen als scheuernd.</translation>
    </message>
    <message>
        <source>Clean first: what the list calls cleaning takes dead, broken or rubbing wood and is not counted as leaf. Look at the tree again before you go on.</source>
        <translation>Zuerst Kronenpflege: Was in der Liste so heißt, nimmt totes, gebrochenes oder scheuerndes Holz und zählt nicht als Laub. Sehen Sie den Baum danach neu an, ehe Sie weitermachen.</translation>
    </message>
    <message>
        <source>Rubs: this one goes</source>
        <translation>Scheuert: dieser geht</translation>
    </message>
    <message>
        <source>How long it would hold if you cut higher:</source>
        <translation>So lange würde es höher geschnitten halten:</translation>
    </message>
    <message>
        <source>No cuts inside the guideline were found that give the headroom; the search was cut short, so there may be some.</source>
        <translation>Innerhalb des Richtwerts wurden keine Schnitte gefunden, die die lichte Höhe geben; die Suche wurde abgebrochen, es kann also welche geben.</translation>
    </message>
    <message>
        <source>No cuts inside the guideline were found that do all that must be done; the search was cut short, so there may be some.</source>
        <translation>Innerhalb des Richtwerts wurden keine Schnitte gefunden, die alles tun, was sein muss; die Suche wurde abgebrochen, es kann also welche geben.</translation>
    </message>
    <message>
        <source>A wish given up: no cuts were found that reach it with the rest inside the guideline.</source>
        <translation>Ein Wunsch, der aufgegeben wurde: Es fanden sich keine Schnitte, die ihn mit dem Übrigen innerhalb des Richtwerts erfüllen.</translation>
    </message>
    <message>
        <source>What the cut lets through</source>
        <translation>Was der Schnitt durchlässt</translation>
    </message>
    <message>
        <source>Direct sun if this alone is cut, the same rays traced again</source>
        <translation>Direkte Sonne, wenn nur dies geschnitten wird, dieselben Strahlen noch einmal verfolgt</translation>
    </message>
    <message>
        <source>More than as it stands</source>
        <translation>Mehr als so, wie er steht</translation>
    </message>
    <message>
        <source>Light for growth then</source>
        <translation>Licht zum Wachsen dann</translation>
    </message>
    <message>
        <source>Share of the tree&apos;s leaf that it costs</source>
        <translation>Anteil am Laub des Baums, den es kostet</translation>
    </message>
    <message>
        <source>Sun for each percent = sun gained / percent of leaf</source>
        <translation>Sonne je Prozent = gewonnene Sonne / Prozent des Laubs</translation>
    </message>
    <message>
        <source>Why so much light for so much leaf?</source>
        <translation>Warum so viel Licht für so viel Laub?</translation>
    </message>
    <message>
        <source>%1, on a mean day of %2.</source>
        <translation>%1, an einem mittleren Tag, %2.</translation>
    </message>
    <message>
        <source>Not reached inside the guideline; these cuts come as close as any that were found.</source>
        <translation>Innerhalb des Richtwerts nicht erreicht; näher als diese kamen keine gefundenen Schnitte.</translation>
    </message>
    <message>
        <source>%1 from %L2 to %L3</source>
        <translation>%1, von %L2 bis %L3</translation>
    </message>
    <message>
        <source>%1 over 0 and up to %L2</source>
        <translation>%1, über 0 und bis %L2</translation>
    </message>
    <message>
        <source>a latitude in degrees</source>
        <translation>eine geographische Breite in Grad</translation>
    </message>
    <message>
        <source>a longitude in degrees</source>
        <translation>eine geographische Länge in Grad</translation>
    </message>
    <message>
        <source>metres above the sea</source>
        <translation>Meter über dem Meer</translation>
    </message>
    <message>
        <source>a share of the time that the sun could shine</source>
        <translation>ein Anteil der Zeit, in der die Sonne scheinen könnte</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>ein Monat</translation>
    </message>
    <message>
        <source>metres of fall in each metre</source>
        <translation>Meter Gefälle auf jeden Meter</translation>
    </message>
    <message>
        <source>a compass bearing in degrees</source>
        <translation>eine Himmelsrichtung in Grad</translation>
    </message>
    <message>
        <source>a height in metres</source>
        <translation>eine Höhe in Metern</translation>
    </message>
    <message>
        <source>metres above the ground</source>
        <translation>Meter über dem Boden</translation>
    </message>
    <message>
        <source>a height from %L1 cm below the ground to %L2 m above it</source>
        <translation>eine Höhe von %L1 cm unter dem Boden bis %L2 m darüber</translation>
    </message>
    <message>
        <source>a width in metres</source>
        <translation>eine Breite in Metern</translation>
    </message>
    <message>
        <source>a diameter in metres</source>
        <translation>ein Durchmesser in Metern</translation>
    </message>
    <message>
        <source>square metres of planting</source>
        <translation>Quadratmeter Pflanzung</translation>
    </message>
    <message>
        <source>kilovolts</source>
        <translation>Kilovolt</translation>
    </message>
    <message>
        <source>a gust in metres per second</source>
        <translation>eine Böe in Metern je Sekunde</translation>
    </message>
    <message>
        <source>metres a second</source>
        <translation>Meter je Sekunde</translation>
    </message>
    <message>
        <source>gust in m/s</source>
        <translation>Böe in m/s</translation>
    </message>
    <message>
        <source>metres east of the origin</source>
        <translation>Meter östlich des Nullpunkts</translation>
    </message>
    <message>
        <source>metres north of the origin</source>
        <translation>Meter nördlich des Nullpunkts</translation>
    </message>
    <message>
        <source>metres east of the tree&apos;s base</source>
        <translation>Meter östlich des Stammfußes</translation>
    </message>
    <message>
        <source>metres north of the tree&apos;s base</source>
        <translation>Meter nördlich des Stammfußes</translation>
    </message>
    <message>
        <source>metres of sound wood</source>
        <translation>Meter gesundes Holz</translation>
    </message>
    <message>
        <source>metres along the limb</source>
        <translation>Meter den Ast entlang</translation>
    </message>
    <message>
        <source>metres along the limb, before its tip,</source>
        <translation>Meter den Ast entlang, vor seiner Spitze</translation>
    </message>
    <message>
        <source>metres along the limb it grows from,</source>
        <translation>Meter den Ast entlang, aus dem er wächst</translation>
    </message>
    <message>
        <source>degrees of the way round</source>
        <translation>Grad des Umfangs</translation>
    </message>
    <message>
        <source>a radius in metres</source>
        <translation>ein Radius in Metern</translation>
    </message>
    <message>
        <source>a length in metres</source>
        <translation>eine Länge in Metern</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>ein Anteil</translation>
    </message>
    <message>
        <source>a share of the leaf</source>
        <translation>ein Anteil des Laubs</translation>
    </message>
    <message>
        <source>a share of the leaf, 0 to 1</source>
        <translation>ein Anteil des Laubs, 0 bis 1</translation>
    </message>
    <message>
        <source>kilograms of fruit</source>
        <translation>Kilogramm Früchte</translation>
    </message>
    <message>
        <source>a gust in m/s, up to 100</source>
        <translation>eine Böe in m/s, bis 100</translation>
    </message>
    <message>
        <source>mol/m2 of light a day</source>
        <translation>mol/m2 Licht am Tag</translation>
    </message>
    <message>
        <source>utilisation</source>
        <translation>Auslastung</translation>
    </message>
    <message>
        <source>hours of sun a day</source>
        <translation>Stunden Sonne am Tag</translation>
    </message>
    <message>
        <source>pixels</source>
        <translation>Bildpunkte</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>metres for one pixel</source>
        <translation>Meter je Bildpunkt</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>Grad Celsius</translation>
    </message>
    <message>
        <source>a year</source>
        <translation>ein Jahr</translation>
    </message>
    <message>
        <source>at most %L1 bytes (32 MB); is this a garden?</source>
        <translation>höchstens %L1 Byte (32 MB); ist das ein Garten?</translation>
    </message>
    <message>
        <source>a text of %L1 bytes</source>
        <translation>ein Text von %L1 Byte</translation>
    </message>
    <message>
        <source>%L1 bytes</source>
        <translation>%L1 Byte</translation>
    </message>
    <message>
        <source>at most %L1</source>
        <translation>höchstens %L1</translation>
    </message>
    <message>
        <source>at most %L1 %2</source>
        <translation>höchstens %L1 %2</translation>
    </message>
    <message>
        <source>corners</source>
        <translation>Ecken</translation>
    </message>
    <message>
        <source>months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>station</source>
        <translation>Messpunkt</translation>
    </message>
    <message>
        <source>stations</source>
        <translation>Messpunkte</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>numbers</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>defects</source>
        <translation>Schäden</translation>
    </message>
    <message>
        <source>props</source>
        <translation>Stützen</translation>
    </message>
    <message>
        <source>limbs</source>
        <translation>Äste</translation>
    </message>
    <message>
        <source>trees</source>
        <translation>Bäume</translation>
    </message>
    <message>
        <source>neighbours</source>
        <translation>Bäume nebenan</translation>
    </message>
    <message>
        <source>plantings</source>
        <translation>Pflanzungen</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <source>electric lines</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>structures</source>
        <translation>Bauwerke</translation>
    </message>
    <message>
        <source>observations</source>
        <translation>Beobachtungen</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>goals</source>
        <translation>Ziele</translation>
    </message>
    <message>
        <source>visits</source>
        <translation>Besuche</translation>
    </message>
    <message>
        <source>cuts</source>
        <translation>Schnitte</translation>
    </message>
    <message>
        <source>records</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>wounds</source>
        <translation>Wunden</translation>
    </message>
    <message>
        <source>twelve numbers, one for each month from January</source>
        <translation>zwölf Zahlen, eine für jeden Monat ab Januar</translation>
    </message>
    <message>
        <source>at least two points along the wire</source>
        <translation>mindestens zwei Punkte den Draht entlang</translation>
    </message>
    <message>
        <source>at least two: the union and the tip</source>
        <translation>mindestens zwei: Ansatz und Spitze</translation>
    </message>
    <message>
        <source>no limbs</source>
        <translation>keine Äste</translation>
    </message>
    <message>
        <source>at least the trunk</source>
        <translation>mindestens der Stamm</translation>
    </message>
    <message>
        <source>an empty text</source>
        <translation>ein leerer Text</translation>
    </message>
    <message>
        <source>a name of at least one letter</source>
        <translation>ein Name von mindestens einem Buchstaben</translation>
    </message>
    <message>
        <source>one line, without line breaks, tabs or control signs</source>
        <translation>eine Zeile, ohne Umbrüche, Tabulatoren oder Steuerzeichen</translation>
    </message>
    <message>
        <source>%1 a second time</source>
        <translation>%1 zum zweiten Mal</translation>
    </message>
    <message>
        <source>an id that nothing else here has</source>
        <translation>eine Kennung (id), die hier sonst nichts hat</translation>
    </message>
    <message>
        <source>an outline that needs at least three corners</source>
        <translation>ein Umriss mit weniger als drei Ecken</translation>
    </message>
    <message>
        <source>an outline that is thinner than a millimetre</source>
        <translation>ein Umriss, der dünner ist als ein Millimeter</translation>
    </message>
    <message>
        <source>an outline that has edges that cross</source>
        <translation>ein Umriss, dessen Kanten sich kreuzen</translation>
    </message>
    <message>
        <source>at least three corners in order round a patch of ground, without crossing</source>
        <translation>mindestens drei Ecken der Reihe nach um ein Stück Boden, ohne Kreuzung</translation>
    </message>
    <message>
        <source>year %L1, month %L2, day %L3</source>
        <translation>Jahr %L1, Monat %L2, Tag %L3</translation>
    </message>
    <message>
        <source>month %L1, day %L2</source>
        <translation>Monat %L1, Tag %L2</translation>
    </message>
    <message>
        <source>a day of the calendar in the years 1800 to 2200</source>
        <translation>ein Kalendertag in den Jahren 1800 bis 2200</translation>
    </message>
    <message>
        <source>a day of the calendar</source>
        <translation>ein Kalendertag</translation>
    </message>
    <message>
        <source>%L1 days after leaf_on</source>
        <translation>%L1 Tage nach leaf_on</translation>
    </message>
    <message>
        <source>a day at least %L1 days after leaf_on, round the year</source>
        <translation>ein Tag mindestens %L1 Tage nach leaf_on, auch über das Jahresende</translation>
    </message>
    <message>
        <source>a day before the visit</source>
        <translation>ein Tag vor dem Besuch</translation>
    </message>
    <message>
        <source>a day after it</source>
        <translation>ein Tag danach</translation>
    </message>
    <message>
        <source>a file beside the garden or in a folder below it</source>
        <translation>eine Datei neben dem Garten oder in einem Ordner darunter</translation>
    </message>
    <message>
        <source>the Latin name of a species in the tables</source>
        <translation>der lateinische Name einer Baumart aus den Tabellen</translation>
    </message>
    <message>
        <source>the Latin name of a species in the tables; did you mean %1?</source>
        <translation>der lateinische Name einer Baumart aus den Tabellen; meinten Sie %1?</translation>
    </message>
    <message>
        <source>the name of a plant in the tables</source>
        <translation>der Name einer Pflanze aus den Tabellen</translation>
    </message>
    <message>
        <source>the name of a plant in the tables; did you mean %1?</source>
        <translation>der Name einer Pflanze aus den Tabellen; meinten Sie %1?</translation>
    </message>
    <message>
        <source>a crown of at least 0.1 m below its top, which is %L1 m up</source>
        <translation>eine Krone von mindestens 0,1 m unter ihrer Spitze, die %L1 m hoch liegt</translation>
    </message>
    <message>
        <source>the same place as the station before</source>
        <translation>derselbe Ort wie der Messpunkt davor</translation>
    </message>
    <message>
        <source>a place farther along the limb</source>
        <translation>ein Ort weiter den Ast entlang</translation>
    </message>
    <message>
        <source>a thickest wall</source>
        <translation>eine dickste Wand</translation>
    </message>
    <message>
        <source>it only for a cavity that has a residual_wall_m too</source>
        <translation>sie nur bei einer Höhlung, die auch residual_wall_m hat</translation>
    </message>
    <message>
        <source>0: the trunk grows from no limb; is its parent missing?</source>
        <translation>0: der Stamm wächst aus keinem Ast; fehlt sein parent?</translation>
    </message>
    <message>
        <source>a trunk that starts %L1 m above and %L2 m beside the tree&apos;s base</source>
        <translation>ein Stamm, der %L1 m über dem Stammfuß und %L2 m daneben beginnt</translation>
    </message>
    <message>
        <source>the trunk&apos;s first station at the base, [0, 0, 0]</source>
        <translation>der erste Messpunkt des Stamms am Stammfuß, [0, 0, 0]</translation>
    </message>
    <message>
        <source>a union %L1 m from the middle of %2 at %L3 m along it</source>
        <translation>ein Ansatz %L1 m neben der Mitte von %2, nach %L3 m auf diesem Ast</translation>
    </message>
    <message>
        <source>one inside that limb, within %L1 m of its middle</source>
        <translation>einer in diesem Ast, höchstens %L1 m neben seiner Mitte</translation>
    </message>
    <message>
        <source>a limb no thicker at its union than %1, which is %L2 m there</source>
        <translation>ein Ast, der am Ansatz nicht dicker ist als %1, dort %L2 m dick</translation>
    </message>
    <message>
        <source>limbs that grow from the trunk, not from each other in a circle</source>
        <translation>Äste, die aus dem Stamm wachsen, nicht im Kreis auseinander</translation>
    </message>
    <message>
        <source>the id of a limb of this tree</source>
        <translation>die Kennung (id) eines Astes dieses Baums</translation>
    </message>
    <message>
        <source>the id of the limb it grows from: the trunk is %1 already</source>
        <translation>die Kennung (id) des Astes, aus dem er wächst: der Stamm ist schon %1</translation>
    </message>
    <message>
        <source>no limb without a parent</source>
        <translation>kein Ast ohne parent</translation>
    </message>
    <message>
        <source>one trunk: the limb that has no parent</source>
        <translation>ein Stamm: der Ast, der keinen parent hat</translation>
    </message>
    <message>
        <source>a list of %L1</source>
        <translation>eine Liste von %L1</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a text in double quotes</source>
        <translation>ein Text in doppelten Anführungszeichen</translation>
    </message>
    <message>
        <source>a list in [ ]</source>
        <translation>eine Liste in [ ]</translation>
    </message>
    <message>
        <source>an object in { }</source>
        <translation>ein Objekt in { }</translation>
    </message>
    <message>
        <source>a place on plan: [metres east, metres north]</source>
        <translation>ein Ort im Plan: [Meter nach Osten, Meter nach Norden]</translation>
    </message>
    <message>
        <source>a place: [metres east, metres north, metres up]</source>
        <translation>ein Ort: [Meter nach Osten, Meter nach Norden, Meter nach oben]</translation>
    </message>
    <message>
        <source>a date such as %1</source>
        <translation>ein Datum wie %1</translation>
    </message>
    <message>
        <source>a month and a day such as %1</source>
        <translation>ein Monat und ein Tag wie %1</translation>
    </message>
    <message>
        <source>one of the words %1 or %2</source>
        <translation>eines der Wörter %1 oder %2</translation>
    </message>
    <message>
        <source>this field, which is required</source>
        <translation>dieses Feld, das nicht fehlen darf</translation>
    </message>
    <message>
        <source>%1; is this a garden document?</source>
        <translation>%1; ist das ein Gartendokument?</translation>
    </message>
    <message>
        <source>version %L1 of the garden form</source>
        <translation>Version %L1 der Gartenform</translation>
    </message>
    <message>
        <source>version %L1 of the garden form or older: a newer Underbough wrote this garden, open it with that one</source>
        <translation>Version %L1 der Gartenform oder älter: ein neueres Underbough hat diesen Garten geschrieben, öffnen Sie ihn damit</translation>
    </message>
    <message>
        <source>the field a second time</source>
        <translation>das Feld zum zweiten Mal</translation>
    </message>
    <message>
        <source>each field once; keep the right one and delete the other</source>
        <translation>jedes Feld einmal; behalten Sie das richtige und löschen Sie das andere</translation>
    </message>
    <message>
        <source>%1 at line %L2, column %L3</source>
        <translation>%1 in Zeile %L2, Spalte %L3</translation>
    </message>
    <message>
        <source>the end of the text</source>
        <translation>das Ende des Textes</translation>
    </message>
    <message>
        <source>NaN or infinity</source>
        <translation>NaN oder unendlich</translation>
    </message>
    <message>
        <source>a number that is not beyond all measure</source>
        <translation>eine Zahl, die nicht über alles Maß hinausgeht</translation>
    </message>
    <message>
        <source>the rest of the document: it is cut short</source>
        <translation>der Rest des Dokuments: es ist abgeschnitten</translation>
    </message>
    <message>
        <source>the rest of the document: it is cut short inside a text</source>
        <translation>der Rest des Dokuments: es ist mitten in einem Text abgeschnitten</translation>
    </message>
    <message>
        <source>a number such as 12, 0.5 or -3e2</source>
        <translation>eine Zahl wie 12, 0.5 oder -3e2</translation>
    </message>
    <message>
        <source>a comma or a closing ]</source>
        <translation>ein Komma oder ein schließendes ]</translation>
    </message>
    <message>
        <source>a comma or a closing }</source>
        <translation>ein Komma oder ein schließendes }</translation>
    </message>
    <message>
        <source>a colon after the field&apos;s name</source>
        <translation>ein Doppelpunkt nach dem Namen des Feldes</translation>
    </message>
    <message>
        <source>a field&apos;s name in double quotes, and no comma before a closing }</source>
        <translation>der Name eines Feldes in doppelten Anführungszeichen, und kein Komma vor einem schließenden }</translation>
    </message>
    <message>
        <source>nothing more after the document</source>
        <translation>nichts mehr nach dem Dokument</translation>
    </message>
    <message>
        <source>a number, a text in double quotes, a list, an object, true, false or null</source>
        <translation>eine Zahl, ein Text in doppelten Anführungszeichen, eine Liste, ein Objekt, true, false oder null</translation>
    </message>
    <message>
        <source>nothing: the text is empty</source>
        <translation>nichts: der Text ist leer</translation>
    </message>
    <message>
        <source>a garden document</source>
        <translation>ein Gartendokument</translation>
    </message>
    <message>
        <source>a garden document saved as UTF-8</source>
        <translation>ein Gartendokument, als UTF-8 gespeichert</translation>
    </message>
    <message>
        <source>text in UTF-16 or UTF-32 (from byte 0)</source>
        <translation>Text in UTF-16 oder UTF-32 (ab Byte 0)</translation>
    </message>
    <message>
        <source>no text: byte 0x00 at offset %L1</source>
        <translation>kein Text: Byte 0x00 an Stelle %L1</translation>
    </message>
    <message>
        <source>byte %1 at offset %L2 (line %L3, column %L4), which is not UTF-8 text</source>
        <translation>Byte %1 an Stelle %L2 (Zeile %L3, Spalte %L4), das kein Text in UTF-8 ist</translation>
    </message>
    <message>
        <source>more than %L1 values</source>
        <translation>mehr als %L1 Werte</translation>
    </message>
    <message>
        <source>a garden; this is far more than one holds</source>
        <translation>ein Garten; das ist weit mehr, als einer enthält</translation>
    </message>
    <message>
        <source>lists or objects more than %L1 deep</source>
        <translation>Listen oder Objekte mehr als %L1-fach geschachtelt</translation>
    </message>
    <message>
        <source>a garden, which is 8 deep</source>
        <translation>ein Garten, der 8-fach geschachtelt ist</translation>
    </message>
    <message>
        <source>no file of that name</source>
        <translation>keine Datei dieses Namens</translation>
    </message>
    <message>
        <source>no folder of that name</source>
        <translation>kein Ordner dieses Namens</translation>
    </message>
    <message>
        <source>a folder to write it into</source>
        <translation>ein Ordner, in den sie geschrieben werden kann</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>ein Ordner</translation>
    </message>
    <message>
        <source>a garden file</source>
        <translation>eine Gartendatei</translation>
    </message>
    <message>
        <source>a garden file, as docs/garden.schema.json describes it</source>
        <translation>eine Gartendatei, wie docs/garden.schema.json sie beschreibt</translation>
    </message>
    <message>
        <source>more than %L1 MB</source>
        <translation>mehr als %L1 MB</translation>
    </message>
    <message>
        <source>a garden file, which is far smaller</source>
        <translation>eine Gartendatei, die viel kleiner ist</translation>
    </message>
    <message>
        <source>a file that can&apos;t be opened</source>
        <translation>eine Datei, die sich nicht öffnen lässt</translation>
    </message>
    <message>
        <source>a file that can&apos;t be read</source>
        <translation>eine Datei, die sich nicht lesen lässt</translation>
    </message>
    <message>
        <source>one that you may read</source>
        <translation>eine, die Sie lesen dürfen</translation>
    </message>
    <message>
        <source>a file that can&apos;t be written</source>
        <translation>eine Datei, die sich nicht schreiben lässt</translation>
    </message>
    <message>
        <source>a file that can&apos;t be written (%1)</source>
        <translation>eine Datei, die sich nicht schreiben lässt (%1)</translation>
    </message>
    <message>
        <source>a file or a folder that can&apos;t be written</source>
        <translation>eine Datei oder ein Ordner, die sich nicht schreiben lassen</translation>
    </message>
    <message>
        <source>one that you may write</source>
        <translation>eine, die Sie schreiben dürfen</translation>
    </message>
    <message>
        <source>ones that you may write</source>
        <translation>solche, die Sie schreiben dürfen</translation>
    </message>
    <message>
        <source>a file that another program is writing</source>
        <translation>eine Datei, die ein anderes Programm gerade schreibt</translation>
    </message>
    <message>
        <source>one that is left alone</source>
        <translation>eine, die in Ruhe gelassen wird</translation>
    </message>
    <message>
        <source>a full disk</source>
        <translation>ein voller Datenträger</translation>
    </message>
    <message>
        <source>room on it</source>
        <translation>Platz darauf</translation>
    </message>
    <message>
        <source>a disk that doesn&apos;t answer as it should</source>
        <translation>ein Datenträger, der nicht antwortet, wie er soll</translation>
    </message>
    <message>
        <source>one in working order</source>
        <translation>einer, der in Ordnung ist</translation>
    </message>
    <message>
        <source>a garden file in working order</source>
        <translation>eine Gartendatei, die in Ordnung ist</translation>
    </message>
    <message>
        <source>damage (%1)</source>
        <translation>Schaden (%1)</translation>
    </message>
    <message>
        <source>damage in the photo %1</source>
        <translation>Schaden im Foto %1</translation>
    </message>
    <message>
        <source>a garden file as it was written; &quot;underbough recover&quot; saves what can be read</source>
        <translation>eine Gartendatei, wie sie geschrieben wurde; &quot;underbough recover&quot; rettet, was lesbar ist</translation>
    </message>
    <message>
        <source>a history without its step %L1</source>
        <translation>ein Verlauf ohne seinen Schritt %L1</translation>
    </message>
    <message>
        <source>another program&apos;s SQLite file</source>
        <translation>die SQLite-Datei eines anderen Programms</translation>
    </message>
    <message>
        <source>a garden file of version %L1</source>
        <translation>eine Gartendatei der Version %L1</translation>
    </message>
    <message>
        <source>version %L1 or older; a newer program wrote this one and can open it</source>
        <translation>Version %L1 oder älter; ein neueres Programm hat sie geschrieben und kann sie öffnen</translation>
    </message>
    <message>
        <source>a garden file of no version</source>
        <translation>eine Gartendatei ohne Version</translation>
    </message>
    <message>
        <source>version 1 or newer</source>
        <translation>Version 1 oder neuer</translation>
    </message>
    <message>
        <source>a garden file of another version</source>
        <translation>eine Gartendatei anderer Version</translation>
    </message>
    <message>
        <source>the one opened</source>
        <translation>die geöffnete</translation>
    </message>
    <message>
        <source>a garden that another program changed</source>
        <translation>ein Garten, den ein anderes Programm geändert hat</translation>
    </message>
    <message>
        <source>the one that was opened</source>
        <translation>der, der geöffnet wurde</translation>
    </message>
    <message>
        <source>nothing that can be read</source>
        <translation>nichts, was sich lesen lässt</translation>
    </message>
    <message>
        <source>some part of a garden</source>
        <translation>irgendein Teil eines Gartens</translation>
    </message>
    <message>
        <source>rows of its own</source>
        <translation>eigene Zeilen</translation>
    </message>
    <message>
        <source>parts of %1</source>
        <translation>Teile von %1</translation>
    </message>
    <message>
        <source>a tree of that id to own them</source>
        <translation>ein Baum mit dieser Kennung (id), zu dem sie gehören</translation>
    </message>
    <message>
        <source>the id %1</source>
        <translation>die Kennung (id) %1</translation>
    </message>
    <message>
        <source>the id of its row, %1</source>
        <translation>die Kennung (id) seiner Zeile, %1</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 aus %2</translation>
    </message>
    <message>
        <source>%L1 %2</source>
        <translation>%L1 %2</translation>
    </message>
    <message>
        <source>found %1, expected %2</source>
        <translation>gefunden: %1; nötig: %2</translation>
    </message>
    <message>
        <source>%1: found %2, expected %3</source>
        <translation>%1: gefunden: %2; nötig: %3</translation>
    </message>
    <message>
        <source>a closing double quote before it; inside a text, write a line break as \n and a tab as \t</source>
        <translation>ein schließendes Anführungszeichen davor; in einem Text wird ein Zeilenumbruch als \n geschrieben, ein Tabulator als \t</translation>
    </message>
    <message>
        <source>one of \n \t \&quot; \\ \/ \uXXXX after a backslash</source>
        <translation>eines von \n \t \&quot; \\ \/ \uXXXX nach einem Rückstrich</translation>
    </message>
    <message>
        <source>four hexadecimal digits after \u</source>
        <translation>vier Hexadezimalziffern nach \u</translation>
    </message>
    <message>
        <source>a whole character: \uD800 to \uDFFF only stand in pairs</source>
        <translation>ein ganzes Zeichen: \uD800 bis \uDFFF stehen nur paarweise</translation>
    </message>
    <message>
        <source>the garden&apos;s place and gust, which are to be set anew</source>
        <translation>Ort und Böen des Gartens, die neu zu setzen sind</translation>
    </message>
    <message>
        <source>of %1 %2 (%3)</source>
        <translation>%2 von %3 (%1)</translation>
    </message>
    <message>
        <source>of %1 %2</source>
        <translation>%2 (%1)</translation>
    </message>
    <message>
        <source>all limbs of %1, for which a plain trunk stands</source>
        <translation>alle Äste von %1, für die ein einfacher Stamm steht</translation>
    </message>
    <message>
        <source>electric_lines</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>Least room over %1</source>
        <translation>Kleinste lichte Höhe über %1</translation>
    </message>
    <message>
        <source>%1 (%2): found %3, expected %4</source>
        <translation>%1 (%2): gefunden: %3; nötig: %4</translation>
    </message>
    <message>
        <source>That can&apos;t be drawn: it needs %1.</source>
        <translation>Das lässt sich nicht zeichnen. Nötig: %1.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be drawn like that: it needs %2.</source>
        <translation>%1 lässt sich so nicht zeichnen. Nötig: %2.</translation>
    </message>
    <message>
        <source>Likely to break at about %1; %2.</source>
        <translation>Bricht wahrscheinlich bei etwa %1; %2.</translation>
    </message>
    <message>
        <source>Likely to break at about %1; %2; nine in ten by %3.</source>
        <translation>Bricht wahrscheinlich bei etwa %1; %2; neun von zehn bis %3.</translation>
    </message>
    <message>
        <source>cleaning, dead wood, %1</source>
        <comment>a kind of cut</comment>
        <translation>Kronenpflege, totes Holz, %1</translation>
    </message>
    <message>
        <source>cleaning, broken wood, %1</source>
        <comment>a kind of cut</comment>
        <translation>Kronenpflege, gebrochenes Holz, %1</translation>
    </message>
    <message>
        <source>cleaning, rubbing wood, %1</source>
        <comment>a kind of cut</comment>
        <translation>Kronenpflege, scheuerndes Holz, %1</translation>
    </message>
    <message>
        <source>(and 1 more fault)</source>
        <translation>(und 1 weiterer Fehler)</translation>
    </message>
    <message>
        <source>(and %1 more faults)</source>
        <translation>(und %1 weitere Fehler)</translation>
    </message>
    <message>
        <source>and %1 more faults</source>
        <translation>und %1 weitere Fehler</translation>
    </message>
    <message>
        <source>can be used. Trees: %1, limbs: %2, plantings: %3, strips of ground: %4, wires: %5, structures: %6.</source>
        <translation>kann verwendet werden. Bäume: %1, Äste: %2, Pflanzungen: %3, Bodenstreifen: %4, Leitungen: %5, Bauwerke: %6.</translation>
    </message>
    <message>
        <source>%1: a field that this version doesn&apos;t know; it is kept as it is, but may be misspelt</source>
        <translation>%1: ein Feld, das diese Version nicht kennt; es bleibt, wie es ist, ist aber vielleicht falsch geschrieben</translation>
    </message>
    <message>
        <source>%1: a photo that can&apos;t be found</source>
        <translation>%1: ein Foto, das nicht zu finden ist</translation>
    </message>
    <message>
        <source>written. Photos: %1.</source>
        <translation>geschrieben. Fotos: %1.</translation>
    </message>
    <message>
        <source>%1: a photo that could not be found; the garden still names it</source>
        <translation>%1: ein Foto, das nicht zu finden war; der Garten nennt es weiter</translation>
    </message>
    <message>
        <source>found the ending of a garden file, but export writes JSON: name it .json, or make a garden file with import</source>
        <translation>gefunden die Endung einer Gartendatei, aber export schreibt JSON: nennen Sie sie .json, oder machen Sie mit import eine Gartendatei</translation>
    </message>
    <message>
        <source>is there already and was left alone; choose another name</source>
        <translation>gibt es schon und wurde in Ruhe gelassen; wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <source>written with what could be read; %1.</source>
        <translation>geschrieben mit dem, was zu lesen war; %1.</translation>
    </message>
    <message>
        <source>height clear under it, at its heaviest</source>
        <translation>freie Höhe darunter, wenn er am schwersten ist</translation>
    </message>
    <message>
        <source>share of its strength that is asked, less is better</source>
        <translation>Anteil der Festigkeit, der verlangt wird; weniger ist besser</translation>
    </message>
    <message>
        <source>direct sun a day over the growing season</source>
        <translation>direkte Sonne am Tag, im Mittel der Wachstumszeit</translation>
    </message>
    <message>
        <source>limb %1</source>
        <comment>a limb without a name, by its number</comment>
        <translation>Ast %1</translation>
    </message>
    <message>
        <source>Cut as well so that %1 keeps leaf inside: without this cut the others would leave it only %2 of its leaf on its inner two thirds.</source>
        <translation>Fällt mit, damit %1 innen Laub behält: Ohne diesen Schnitt ließen die anderen nur %2 seines Laubs auf den inneren zwei Dritteln.</translation>
    </message>
    <message>
        <source>People use %1: make no cut while anybody is within %2 of where the pieces come down. Close it, and have someone watch it.</source>
        <translation>Menschen benutzen %1: kein Schnitt, solange jemand näher als %2 an der Stelle ist, wo die Stücke herunterkommen. Absperren und bewachen lassen.</translation>
    </message>
    <message>
        <source>%1 is a road within %2 of where the piece comes down: only those who may stop the traffic can work there. Ask the local authority.</source>
        <translation>%1 ist eine Straße, näher als %2 an der Stelle, wo das Stück herunterkommt: dort kann nur arbeiten, wer den Verkehr anhalten darf. Bei der örtlichen Behörde fragen.</translation>
    </message>
    <message>
        <source>People use %1: make no cut while anybody is within %2 of where the piece comes down. Close it, and have someone watch it.</source>
        <translation>Menschen benutzen %1: kein Schnitt, solange jemand näher als %2 an der Stelle ist, wo das Stück herunterkommt. Absperren und bewachen lassen.</translation>
    </message>
</context>
<context>
    <name>WorkCard</name>
    <message>
        <source>What would I cut?</source>
        <translation>Was würde ich schneiden?</translation>
    </message>
</context>
<context>
    <name>WorkingLine</name>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
</context>
<context>
    <name>YearCard</name>
    <message>
        <source>How is the light over the year?</source>
        <translation>Wie ist das Licht übers Jahr?</translation>
    </message>
    <message>
        <source>Planting</source>
        <translation>Pflanzung</translation>
    </message>
    <message>
        <source>Without it, more sun a day</source>
        <translation>Ohne ihn, mehr Sonne am Tag</translation>
    </message>
    <message>
        <source>What a cut alone gives, for what share of its leaf: the cheapest hour first</source>
        <translation>Was ein Schnitt allein gibt, für welchen Anteil seines Laubs: die billigste Stunde zuerst</translation>
    </message>
    <message>
        <source>Bars: direct sun a day; outlines: in the open. Long dashes: %1; short ones: where it does well. Press a month to see why.</source>
        <translation>Balken: direkte Sonne am Tag; Umrisse: im Freien. Lange Striche: %1; kurze: wo sie gut gedeiht. Drücken Sie auf einen Monat, um zu sehen, warum.</translation>
    </message>
    <message>
        <source>Bars: direct sun a day; outlines: in the open. Press a month to see why.</source>
        <translation>Balken: direkte Sonne am Tag; Umrisse: im Freien. Drücken Sie auf einen Monat, um zu sehen, warum.</translation>
    </message>
</context>
<context>
    <name>app::AddTreeViewModel</name>
    <message>
        <source>%1 through</source>
        <translation>%1 Durchmesser</translation>
    </message>
    <message>
        <source>%1 round</source>
        <translation>%1 Umfang</translation>
    </message>
    <message>
        <source>Height: a length such as %1.</source>
        <translation>Höhe: eine Länge wie %1.</translation>
    </message>
    <message>
        <source>Spread: a length such as %1.</source>
        <translation>Kronenbreite: eine Länge wie %1.</translation>
    </message>
    <message>
        <source>Lowest limb: a length such as %1.</source>
        <translation>Unterster Ast: eine Länge wie %1.</translation>
    </message>
    <message>
        <source>Runs along: a bearing from 0 to 360, such as 90 for east and west.</source>
        <translation>Verläuft in Richtung: eine Richtung von 0 bis 360, etwa 90 für Ost-West.</translation>
    </message>
    <message>
        <source>Place: lengths east and north, such as %1.</source>
        <translation>Standort: Längen nach Osten und Norden, etwa %1.</translation>
    </message>
    <message>
        <source>Type what kind of tree it is, by its common or its Latin name.</source>
        <translation>Geben Sie die Baumart ein, mit deutschem oder lateinischem Namen.</translation>
    </message>
    <message>
        <source>No species of that name is known here. A relative will do.</source>
        <translation>Keine Art dieses Namens ist hier bekannt. Eine verwandte genügt.</translation>
    </message>
    <message>
        <source>Choose one of the kinds found.</source>
        <translation>Wählen Sie eine der gefundenen Arten.</translation>
    </message>
    <message>
        <source>Put the tape round the stem at breast height: a length such as %1.</source>
        <translation>Legen Sie das Maßband in Brusthöhe um den Stamm: eine Länge wie %1.</translation>
    </message>
    <message>
        <source>Measure the stem through at breast height: a length such as %1.</source>
        <translation>Messen Sie den Stammdurchmesser in Brusthöhe: eine Länge wie %1.</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>%1 hinzufügen</translation>
    </message>
</context>
<context>
    <name>app::AnswersViewModel</name>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>It hangs over no path, drive or mower strip that you have drawn.</source>
        <translation>Er hängt über keinen Weg, keine Zufahrt und keine Mähfläche, die Sie gezeichnet haben.</translation>
    </message>
    <message>
        <source>Yes, over everything it hangs over.</source>
        <translation>Ja, über allem, worüber er hängt.</translation>
    </message>
    <message>
        <source>Not enough over %1.</source>
        <translation>Nicht genug über %1.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1 is dead or cracked wood: no strength is counted on. It is work for a professional, or to be removed.</source>
        <translation>%1 ist totes oder gerissenes Holz: auf seine Festigkeit wird nicht gezählt. Das ist Arbeit für den Fachmann, oder der Ast muss weg.</translation>
    </message>
    <message>
        <source>In gusts of %1 I would expect %2 to break.</source>
        <translation>Bei Böen von %1 wäre zu erwarten, dass %2 bricht.</translation>
    </message>
    <message>
        <source>Gusts of %1 ask most of %2: %3 of its expected strength.</source>
        <translation>Böen von %1 verlangen %2 am meisten ab: %3 der erwarteten Festigkeit.</translation>
    </message>
    <message>
        <source>The tree weighs about %1 above ground, %2 of it leaf and crop.</source>
        <translation>Der Baum wiegt über dem Boden etwa %1, davon %2 Laub und Früchte.</translation>
    </message>
    <message>
        <source>You have drawn no planting that wants light.</source>
        <translation>Sie haben keine Pflanzung gezeichnet, die Licht braucht.</translation>
    </message>
    <message>
        <source>Plants rest on %1: their need counts from %2.</source>
        <translation>Die Pflanzen ruhen am %1: ihr Bedarf zählt von %2.</translation>
    </message>
    <message>
        <source>On %1 every planting gets the least sun it needs.</source>
        <translation>Am %1 bekommt jede Pflanzung wenigstens so viel Sonne, wie sie braucht.</translation>
    </message>
    <message>
        <source>On %1 too little sun reaches %2.</source>
        <translation>Am %1 erreicht zu wenig Sonne %2.</translation>
    </message>
</context>
<context>
    <name>app::ConditionsViewModel</name>
    <message>
        <source>%1 (force %2)</source>
        <translation>%1 (Stärke %2)</translation>
    </message>
    <message>
        <source>The sun is down.</source>
        <translation>Die Sonne steht unter dem Horizont.</translation>
    </message>
    <message>
        <source>Sun in the %1, %2 high</source>
        <translation>Sonne im %1, %2 hoch</translation>
    </message>
</context>
<context>
    <name>app::DayViewModel</name>
    <message>
        <source>The warmth can&apos;t be read: write it such as %1.</source>
        <translation>Die Wärme ist nicht lesbar: schreiben Sie etwa %1.</translation>
    </message>
    <message>
        <source>The humidity can&apos;t be read: write it such as 55 %.</source>
        <translation>Die Luftfeuchte ist nicht lesbar: schreiben Sie etwa 55 %.</translation>
    </message>
    <message>
        <source>The gusts can&apos;t be read: write them such as %1.</source>
        <translation>Die Böen sind nicht lesbar: schreiben Sie etwa %1.</translation>
    </message>
    <message>
        <source>Write down warmth and gusts as you expect them while you work.</source>
        <translation>Tragen Sie Wärme und Böen ein, wie Sie sie während der Arbeit erwarten.</translation>
    </message>
    <message>
        <source>The warmth does not speak against it. How strong are the gusts?</source>
        <translation>Die Wärme spricht nicht dagegen. Wie stark sind die Böen?</translation>
    </message>
    <message>
        <source>The wind does not speak against it. How warm is it in the shade?</source>
        <translation>Der Wind spricht nicht dagegen. Wie warm ist es im Schatten?</translation>
    </message>
    <message>
        <source>Before every job look for nests, bats and other animals in the tree. If there are any, wait.</source>
        <translation>Suchen Sie vor jeder Arbeit nach Nestern, Fledermäusen und anderen Tieren im Baum. Sind welche da, warten Sie.</translation>
    </message>
    <message>
        <source>Not in rain, thunder or poor light, and never alone.</source>
        <translation>Nicht bei Regen, Gewitter oder schlechtem Licht, und nie allein.</translation>
    </message>
    <message>
        <source>The weather is not the whole of it: who may do the work is told above, and your local rules come first.</source>
        <translation>Das Wetter ist nicht alles: wer die Arbeit machen darf, steht oben, und die örtlichen Vorschriften gehen vor.</translation>
    </message>
</context>
<context>
    <name>app::DiaryViewModel</name>
    <message>
        <source>Looking through the garden…</source>
        <translation>Der Garten wird durchgesehen…</translation>
    </message>
    <message>
        <source>One thing is overdue.</source>
        <translation>Eine Sache ist überfällig.</translation>
    </message>
    <message>
        <source>%1 things are overdue.</source>
        <translation>%1 Sachen sind überfällig.</translation>
    </message>
    <message>
        <source>One thing is due now.</source>
        <translation>Eine Sache ist jetzt fällig.</translation>
    </message>
    <message>
        <source>%1 things are due now.</source>
        <translation>%1 Sachen sind jetzt fällig.</translation>
    </message>
    <message>
        <source>There is no tree in this garden yet.</source>
        <translation>In diesem Garten steht noch kein Baum.</translation>
    </message>
    <message>
        <source>Nothing is due now.</source>
        <translation>Zurzeit ist nichts fällig.</translation>
    </message>
    <message>
        <source>%1 (%2): %3.</source>
        <comment>when (overdue): what</comment>
        <translation>%1 (%2): %3.</translation>
    </message>
    <message>
        <source>Counted over the last twelve months, as plans are, %1 may go now.</source>
        <translation>Über die letzten zwölf Monate gezählt, wie bei den Plänen, dürfen jetzt %1 weg.</translation>
    </message>
    <message>
        <source>a wound seen closed</source>
        <comment>a step of history</comment>
        <translation>eine Wunde als geschlossen gesehen</translation>
    </message>
    <message>
        <source>a visit taken out</source>
        <comment>a step of history</comment>
        <translation>ein Besuch herausgenommen</translation>
    </message>
</context>
<context>
    <name>app::Document</name>
    <message>
        <source>New garden</source>
        <translation>Neuer Garten</translation>
    </message>
    <message>
        <source>This step can&apos;t be gone back to: it needs %1.</source>
        <translation>Zu diesem Schritt geht es nicht zurück. Nötig: %1.</translation>
    </message>
    <message>
        <source>%1 was changed by another program after it was opened here. Save your garden under another name, so that neither is lost.</source>
        <translation>%1 wurde nach dem Öffnen von einem anderen Programm geändert. Speichern Sie Ihren Garten unter einem anderen Namen, damit keiner von beiden verloren geht.</translation>
    </message>
</context>
<context>
    <name>app::GardenViewModel</name>
    <message>
        <source>%1%2 - Underbough</source>
        <comment>garden&apos;s name, mark of unsaved changes</comment>
        <translation>%1%2 - Underbough</translation>
    </message>
    <message>
        <source>Only shown</source>
        <comment>a garden that another window has open</comment>
        <translation>Nur gezeigt</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>All saved</source>
        <translation>Alles gespeichert</translation>
    </message>
    <message>
        <source>%1, %2 high, stem %3 thick at breast height</source>
        <translation>%1, %2 hoch, Stamm %3 dick in Brusthöhe</translation>
    </message>
</context>
<context>
    <name>app::GoalsViewModel</name>
    <message>
        <source>%1 of its strength at most in a storm: %2</source>
        <translation>Im Sturm höchstens %1 der Festigkeit: %2</translation>
    </message>
    <message>
        <source>every limb</source>
        <translation>jeder Ast</translation>
    </message>
    <message>
        <source>%1 of sun on %2</source>
        <translation>%1 Sonne auf %2</translation>
    </message>
    <message>
        <source>The sun that it needs on %1</source>
        <translation>Die Sonne, die es braucht, auf %1</translation>
    </message>
    <message>
        <source>%1 stays</source>
        <translation>%1 bleibt</translation>
    </message>
    <message>
        <source>%1 goes</source>
        <translation>%1 kommt weg</translation>
    </message>
    <message>
        <source>No more than %1 of the leaf</source>
        <translation>Nicht mehr als %1 des Laubs</translation>
    </message>
    <message>
        <source>reached</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>aufgegeben</translation>
    </message>
    <message>
        <source>not in full</source>
        <translation>nicht ganz</translation>
    </message>
    <message>
        <source>left aside</source>
        <translation>beiseitegelassen</translation>
    </message>
    <message>
        <source>leave a limb</source>
        <translation>Ast lassen</translation>
    </message>
    <message>
        <source>take a limb</source>
        <translation>Ast nehmen</translation>
    </message>
    <message>
        <source>a share of its strength such as 80 %</source>
        <translation>einen Anteil der Festigkeit wie 80 %</translation>
    </message>
    <message>
        <source>relieve the limbs</source>
        <translation>die Äste entlasten</translation>
    </message>
    <message>
        <source>hours of sun a day such as 4.5</source>
        <translation>Sonnenstunden am Tag wie 4.5</translation>
    </message>
    <message>
        <source>give light</source>
        <translation>Licht geben</translation>
    </message>
    <message>
        <source>a share of the leaf such as 15 %</source>
        <translation>einen Laubanteil wie 15 %</translation>
    </message>
    <message>
        <source>spare the leaf</source>
        <translation>das Laub schonen</translation>
    </message>
    <message>
        <source>drop a goal</source>
        <translation>ein Ziel streichen</translation>
    </message>
    <message>
        <source>Found “%1”, expected %2.</source>
        <translation>„%1“ gefunden, %2 erwartet.</translation>
    </message>
    <message>
        <source>A gust of %1 borne: %2</source>
        <translation>Einer Bö von %1 standhalten: %2</translation>
    </message>
    <message>
        <source>%1 of light for growth on %2</source>
        <translation>%1 Licht zum Wachsen für %2</translation>
    </message>
    <message>
        <source>The light for growth that it needs on %1</source>
        <translation>So viel Licht zum Wachsen, wie gebraucht wird: %1</translation>
    </message>
    <message>
        <source>mol a day such as 12</source>
        <translation>mol am Tag, etwa 12</translation>
    </message>
    <message>
        <source>a gust such as 90 km/h</source>
        <translation>eine Bö, etwa 90 km/h</translation>
    </message>
    <message>
        <source>bear a gust</source>
        <translation>einer Bö standhalten</translation>
    </message>
    <message>
        <source>The middle of the crown open</source>
        <translation>Die Mitte der Krone offen</translation>
    </message>
    <message>
        <source>open the middle</source>
        <translation>die Mitte öffnen</translation>
    </message>
</context>
<context>
    <name>app::GroundsViewModel</name>
    <message>
        <source>change the garden&apos;s %1</source>
        <translation>%1 des Gartens ändern</translation>
    </message>
    <message>
        <source>Give the garden a name.</source>
        <translation>Geben Sie dem Garten einen Namen.</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Latitude: degrees north such as 47.4, or south such as 33.9 S.</source>
        <translation>Breite: Grad Nord wie 47.4 oder Süd wie 33.9 S.</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>Longitude: degrees east such as 8.5, or west such as 77.0 W.</source>
        <translation>Länge: Grad Ost wie 8.5 oder West wie 77.0 W.</translation>
    </message>
    <message>
        <source>Height above the sea: a height such as %1.</source>
        <translation>Höhe über dem Meer: eine Höhe wie %1.</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Gust: a wind speed such as %1.</source>
        <translation>Bö: eine Windgeschwindigkeit wie %1.</translation>
    </message>
    <message>
        <source>Fall of the ground: such as 8 %, or 1 in 12; empty: level.</source>
        <translation>Gefälle des Bodens: etwa 8 % oder 1:12; leer: eben.</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>Gefälle</translation>
    </message>
    <message>
        <source>level ground</source>
        <translation>ebener Boden</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a direction and its bearing</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Not known: light is reckoned for cloudless skies. A weather service tells it as the share of the hours that the sun could shine.</source>
        <translation>Nicht bekannt: Das Licht wird für wolkenlosen Himmel gerechnet. Ein Wetterdienst nennt ihn als Anteil der Stunden, in denen die Sonne scheinen könnte.</translation>
    </message>
    <message>
        <source>%1 of 12 months are here; light is reckoned with them once all are.</source>
        <translation>%1 von 12 Monaten sind da; das Licht wird damit gerechnet, sobald alle da sind.</translation>
    </message>
    <message>
        <source>Light over the year is reckoned with these.</source>
        <translation>Das Licht übers Jahr wird damit gerechnet.</translation>
    </message>
    <message>
        <source>Sunshine: a share of the time it could shine, such as 45 %.</source>
        <translation>Sonnenschein: ein Anteil der möglichen Zeit, etwa 45 %.</translation>
    </message>
    <message>
        <source>sunshine</source>
        <translation>Sonnenschein</translation>
    </message>
    <message>
        <source>Metres, kilograms, km/h</source>
        <translation>Meter, Kilogramm, km/h</translation>
    </message>
    <message>
        <source>Metres, kilograms, mph</source>
        <translation>Meter, Kilogramm, mph</translation>
    </message>
    <message>
        <source>Feet, pounds, mph</source>
        <translation>Fuß, Pfund, mph</translation>
    </message>
</context>
<context>
    <name>app::HandleModel</name>
    <message>
        <source>Union of %1</source>
        <translation>Ansatz von %1</translation>
    </message>
    <message>
        <source>End of %1</source>
        <translation>Ende von %1</translation>
    </message>
    <message>
        <source>Bend in %1</source>
        <translation>Biegung in %1</translation>
    </message>
    <message>
        <source>%1: %2 above the ground, %3 thick</source>
        <translation>%1: %2 über dem Boden, %3 dick</translation>
    </message>
</context>
<context>
    <name>app::LightViewModel</name>
    <message>
        <source>You have drawn no planting that wants light.</source>
        <translation>Sie haben keine Pflanzung gezeichnet, die Licht braucht.</translation>
    </message>
    <message>
        <source>%1: %2 of direct sun a day and %3, of %4 and %5 in the open.</source>
        <translation>%1: %2 direkte Sonne am Tag und %3, von %4 und %5 im Freien.</translation>
    </message>
    <message>
        <source>%1 needs %2</source>
        <translation>%1 braucht %2</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
</context>
<context>
    <name>app::LimbShapeViewModel</name>
    <message>
        <source>change the girth of %1</source>
        <translation>Umfang von %1 ändern</translation>
    </message>
    <message>
        <source>change the hanging shoots of %1</source>
        <translation>hängende Triebe von %1 ändern</translation>
    </message>
    <message>
        <source>change the leaf of %1</source>
        <translation>Laub von %1 ändern</translation>
    </message>
    <message>
        <source>Thickness of %1</source>
        <translation>Dicke von %1</translation>
    </message>
    <message>
        <source>Where the leaf of %1 starts</source>
        <translation>Wo das Laub von %1 beginnt</translation>
    </message>
    <message>
        <source>How wide the leaf of %1 is</source>
        <translation>Wie breit das Laub von %1 ist</translation>
    </message>
    <message>
        <source>How low the shoots of %1 hang</source>
        <translation>Wie tief die Triebe von %1 hängen</translation>
    </message>
</context>
<context>
    <name>app::LimbViewModel</name>
    <message>
        <source>change the %1 of %2</source>
        <translation>%1 von %2 ändern</translation>
    </message>
    <message>
        <source>%1: a length such as %2.</source>
        <translation>%1: eine Länge wie %2.</translation>
    </message>
    <message>
        <source>At its union</source>
        <translation>Am Astansatz</translation>
    </message>
    <message>
        <source>At the ground</source>
        <translation>Am Boden</translation>
    </message>
    <message>
        <source>At its end</source>
        <translation>An der Spitze</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 hoch</translation>
    </message>
    <message>
        <source>Girth: a length such as %1.</source>
        <translation>Umfang: eine Länge wie %1.</translation>
    </message>
    <message>
        <source>girth</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>measuring</source>
        <translation>Messart</translation>
    </message>
    <message>
        <source>union</source>
        <translation>Ansatz</translation>
    </message>
    <message>
        <source>leaf</source>
        <translation>Laub</translation>
    </message>
    <message>
        <source>Leaves from</source>
        <translation>Laub ab</translation>
    </message>
    <message>
        <source>Leaf around it</source>
        <translation>Laub ringsum</translation>
    </message>
    <message>
        <source>Hanging shoots</source>
        <translation>Hängende Triebe</translation>
    </message>
    <message>
        <source>hanging shoots</source>
        <translation>hängende Triebe</translation>
    </message>
    <message>
        <source>Fruit: a weight such as %1.</source>
        <translation>Früchte: ein Gewicht wie %1.</translation>
    </message>
    <message>
        <source>crop</source>
        <translation>Früchte</translation>
    </message>
    <message>
        <source>%1, %2 along it</source>
        <translation>%1, %2 entlang des Astes</translation>
    </message>
    <message>
        <source>Where along the limb</source>
        <translation>Wo entlang des Astes</translation>
    </message>
    <message>
        <source>Sound wood around it: a thickness such as %1.</source>
        <translation>Gesundes Holz ringsum: eine Dicke wie %1.</translation>
    </message>
    <message>
        <source>defects</source>
        <translation>Schäden</translation>
    </message>
    <message>
        <source>copy %1</source>
        <translation>%1 kopieren</translation>
    </message>
    <message>
        <source>mirror %1</source>
        <translation>%1 spiegeln</translation>
    </message>
    <message>
        <source>split %1</source>
        <translation>%1 teilen</translation>
    </message>
    <message>
        <source>That limb is too short to be split.</source>
        <translation>Dieser Ast ist zu kurz zum Teilen.</translation>
    </message>
</context>
<context>
    <name>app::NewGardenViewModel</name>
    <message>
        <source>%1, %2</source>
        <comment>city, country</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>My garden</source>
        <translation>Mein Garten</translation>
    </message>
    <message>
        <source>By the clock of %1.</source>
        <translation>Nach der Uhr von %1.</translation>
    </message>
    <message>
        <source>By the clock of %1, %2 km away.</source>
        <translation>Nach der Uhr von %1, %2 km entfernt.</translation>
    </message>
    <message>
        <source>Give the garden a name.</source>
        <translation>Geben Sie dem Garten einen Namen.</translation>
    </message>
    <message>
        <source>Find the nearest city, or type latitude and longitude.</source>
        <translation>Suchen Sie die nächste Stadt, oder geben Sie Breite und Länge ein.</translation>
    </message>
    <message>
        <source>Latitude: degrees north such as 47.4, or south such as 33.9 S.</source>
        <translation>Breite: Grad Nord wie 47.4 oder Süd wie 33.9 S.</translation>
    </message>
    <message>
        <source>Longitude: degrees east such as 8.5, or west such as 77.0 W.</source>
        <translation>Länge: Grad Ost wie 8.5 oder West wie 77.0 W.</translation>
    </message>
    <message>
        <source>Height above the sea: a height such as %1.</source>
        <translation>Höhe über dem Meer: eine Höhe wie %1.</translation>
    </message>
    <message>
        <source>Gust: a wind speed such as %1.</source>
        <translation>Bö: eine Windgeschwindigkeit wie %1.</translation>
    </message>
    <message>
        <source>That can&apos;t be a garden: it needs %1.</source>
        <translation>Das kann kein Garten sein. Nötig: %1.</translation>
    </message>
</context>
<context>
    <name>app::OffersViewModel</name>
    <message>
        <source>Nothing is lacking that leaf could buy.</source>
        <translation>Es fehlt nichts, was Laub bringen könnte.</translation>
    </message>
    <message>
        <source>As it is: %1.</source>
        <translation>Wie es ist: %1.</translation>
    </message>
    <message>
        <source>wanted: %1</source>
        <translation>gewünscht: %1</translation>
    </message>
    <message>
        <source>Nothing inside the guideline changes %1.</source>
        <translation>Nichts innerhalb des Richtwerts ändert etwas an: %1.</translation>
    </message>
    <message>
        <source>%1: %2 as it is, %3 for %4 of the leaf.</source>
        <translation>%1: %2 wie es ist, %3 für %4 des Laubs.</translation>
    </message>
    <message>
        <source>For %1 of the leaf: %2. Nothing does as much for less.</source>
        <translation>Für %1 des Laubs: %2. Nichts bringt so viel für weniger.</translation>
    </message>
    <message>
        <source>For %1 of the leaf: %2. Less leaf may do, too.</source>
        <translation>Für %1 des Laubs: %2. Weniger Laub reicht vielleicht auch.</translation>
    </message>
</context>
<context>
    <name>app::PaperViewModel</name>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another place.</source>
        <translation>%1 ließ sich nicht schreiben: %2. Wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
        <source>No program here opens PDF files: save the pages and print them elsewhere.</source>
        <translation>Kein Programm hier öffnet PDF-Dateien: speichern Sie die Seiten und drucken Sie sie anderswo.</translation>
    </message>
    <message>
        <source>Opened in your PDF viewer: print it from there.</source>
        <translation>In Ihrem PDF-Betrachter geöffnet: drucken Sie von dort.</translation>
    </message>
    <message>
        <source>There is nothing to write yet.</source>
        <translation>Es gibt noch nichts zu schreiben.</translation>
    </message>
    <message>
        <source>Pictures, tables and plan are in %1.</source>
        <translation>Bilder, Tabellen und Plan liegen in %1.</translation>
    </message>
    <message>
        <source>Not all of it could be written. %1. Choose another place.</source>
        <translation>Nicht alles ließ sich schreiben. %1. Wählen Sie einen anderen Ort.</translation>
    </message>
</context>
<context>
    <name>app::PhotoPicture</name>
    <message>
        <source>This photo can&apos;t be found.</source>
        <translation>Dieses Foto ist nicht zu finden.</translation>
    </message>
</context>
<context>
    <name>app::PhotosViewModel</name>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG *.webp *.tif *.tiff *.bmp)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG *.webp *.tif *.tiff *.bmp)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1: photo %2 of %3</source>
        <translation>%1: Foto %2 von %3</translation>
    </message>
    <message>
        <source>%1, visit of %2: photo %3 of %4</source>
        <translation>%1, Besuch am %2: Foto %3 von %4</translation>
    </message>
    <message>
        <source>a photo</source>
        <comment>a step of history</comment>
        <translation>ein Foto</translation>
    </message>
    <message>
        <source>%1 photos</source>
        <comment>a step of history</comment>
        <translation>%1 Fotos</translation>
    </message>
    <message>
        <source>words under a photo</source>
        <comment>a step of history</comment>
        <translation>Worte unter einem Foto</translation>
    </message>
    <message>
        <source>a photo taken away</source>
        <comment>a step of history</comment>
        <translation>ein Foto weggenommen</translation>
    </message>
</context>
<context>
    <name>app::PlanEditorViewModel</name>
    <message>
        <source>Drag it by its middle or by a corner, or type its sizes.</source>
        <translation>Ziehen Sie es an der Mitte oder an einer Ecke, oder geben Sie die Maße ein.</translation>
    </message>
    <message>
        <source>Choose what to draw, or click what is there to change it.</source>
        <translation>Wählen Sie, was Sie zeichnen wollen, oder klicken Sie an, was da ist, um es zu ändern.</translation>
    </message>
    <message>
        <source>Drag along the wire, or click its points. Enter ends it; with nothing clicked it puts one in the middle.</source>
        <translation>Ziehen Sie entlang der Leitung, oder klicken Sie ihre Punkte an. Eingabe beendet sie; ohne Klick kommt eine in die Mitte.</translation>
    </message>
    <message>
        <source>Drag a box, or click its corners one by one. Enter ends it; with nothing clicked it puts one in the middle.</source>
        <translation>Ziehen Sie ein Rechteck, oder klicken Sie die Ecken einzeln an. Eingabe schließt es; ohne Klick kommt eines in die Mitte.</translation>
    </message>
    <message>
        <source>Click the next corner. Backspace takes one back, Escape all.</source>
        <translation>Klicken Sie die nächste Ecke an. Rücktaste nimmt eine zurück, Esc alle.</translation>
    </message>
    <message>
        <source>Click on, or press Enter to end the wire.</source>
        <translation>Klicken Sie weiter, oder beenden Sie die Leitung mit Eingabe.</translation>
    </message>
    <message>
        <source>Click on, or press Enter or the first corner to close it.</source>
        <translation>Klicken Sie weiter; Eingabe oder die erste Ecke schließt es.</translation>
    </message>
    <message>
        <source>draw a %1</source>
        <translation>%1 zeichnen</translation>
    </message>
    <message>
        <source>move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Where %1 stands</source>
        <translation>Wo %1 steht</translation>
    </message>
    <message>
        <source>All of %1</source>
        <translation>%1 als Ganzes</translation>
    </message>
    <message>
        <source>A corner of %1</source>
        <translation>Eine Ecke von %1</translation>
    </message>
</context>
<context>
    <name>app::PlanViewModel</name>
    <message numerus="yes">
        <source>Plan of %1, north up: %n trees.</source>
        <translation>
            <numerusform>Plan von %1, Norden oben: %n Baum.</numerusform>
            <numerusform>Plan von %1, Norden oben: %n Bäume.</numerusform>
        </translation>
    </message>
    <message>
        <source>worst wind for %1</source>
        <translation>ärgster Wind für %1</translation>
    </message>
</context>
<context>
    <name>app::RoundViewModel</name>
    <message>
        <source>There is no tree in this garden yet.</source>
        <translation>In diesem Garten steht noch kein Baum.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and its garden, looking %2 from %3 above the ground: %n limbs.</source>
        <translation>
            <numerusform>%1 und der Garten, Blick nach %2 aus %3 Höhe über dem Boden: %n Ast.</numerusform>
            <numerusform>%1 und der Garten, Blick nach %2 aus %3 Höhe über dem Boden: %n Äste.</numerusform>
        </translation>
    </message>
    <message>
        <source>N</source>
        <comment>north, on a compass</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>E</source>
        <comment>east, on a compass</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>S</source>
        <comment>south, on a compass</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>W</source>
        <comment>west, on a compass</comment>
        <translation>W</translation>
    </message>
</context>
<context>
    <name>app::SideViewModel</name>
    <message>
        <source>Looking %1</source>
        <translation>Blick nach %1</translation>
    </message>
    <message>
        <source>There is no tree in this garden yet.</source>
        <translation>In diesem Garten steht noch kein Baum.</translation>
    </message>
    <message numerus="yes">
        <source>%1 from the side, looking %2: %3 high, %n limbs.</source>
        <translation>
            <numerusform>%1 von der Seite, Blick nach %2: %3 hoch, %n Ast.</numerusform>
            <numerusform>%1 von der Seite, Blick nach %2: %3 hoch, %n Äste.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 long, %2 thick at its union, %3 at its end</source>
        <translation>%1 lang, %2 dick am Ansatz, %3 an der Spitze</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>Tints of the limbs, lightest load first: %1</source>
        <translation>Farben der Äste, geringste Last zuerst: %1</translation>
    </message>
    <message>
        <source>move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>change the girth of %1</source>
        <translation>Umfang von %1 ändern</translation>
    </message>
    <message>
        <source>Start the stroke on the limb that the new one grows from.</source>
        <translation>Beginnen Sie den Strich auf dem Ast, aus dem der neue wächst.</translation>
    </message>
    <message>
        <source>draw a limb</source>
        <translation>einen Ast zeichnen</translation>
    </message>
    <message>
        <source>rename %1</source>
        <translation>%1 umbenennen</translation>
    </message>
    <message>
        <source>erase %1</source>
        <translation>%1 löschen</translation>
    </message>
</context>
<context>
    <name>app::StagesViewModel</name>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>%1 of the leaf, of %2 that may go then</source>
        <translation>%1 des Laubs, von %2, die dann gehen dürfen</translation>
    </message>
    <message>
        <source>No number of visits reaches all of it without breaking a rule that waiting doesn&apos;t heal. An arborist may know another way.</source>
        <translation>Keine Zahl von Besuchen schafft alles, ohne eine Regel zu brechen, die Warten nicht heilt. Ein Baumpfleger weiß vielleicht einen anderen Weg.</translation>
    </message>
</context>
<context>
    <name>app::ThingViewModel</name>
    <message>
        <source>%1 (%2)</source>
        <comment>common name, Latin name</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>change the %1 of %2</source>
        <translation>%1 von %2 ändern</translation>
    </message>
    <message>
        <source>%1: a length such as %2.</source>
        <translation>%1: eine Länge wie %2.</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>Pflanze</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Headroom</source>
        <translation>Lichte Höhe</translation>
    </message>
    <message>
        <source>headroom</source>
        <translation>lichte Höhe</translation>
    </message>
    <message>
        <source>Voltage: kilovolts, such as 0.4 for the wires to a house; leave it empty if nobody knows.</source>
        <translation>Spannung: Kilovolt, etwa 0.4 für die Leitung zum Haus; leer lassen, wenn niemand sie kennt.</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>East</source>
        <translation>Osten</translation>
    </message>
    <message>
        <source>North</source>
        <translation>Norden</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>Lowest leaf</source>
        <translation>Unterstes Laub</translation>
    </message>
    <message>
        <source>lowest leaf</source>
        <translation>unterstes Laub</translation>
    </message>
    <message>
        <source>Thickness of the stem</source>
        <translation>Dicke des Stamms</translation>
    </message>
    <message>
        <source>stem</source>
        <translation>Stamm</translation>
    </message>
    <message>
        <source>Bearing: degrees clockwise from north, from 0 to 360, such as %1 for east.</source>
        <translation>Richtung: Grad im Uhrzeigersinn von Norden, von 0 bis 360, etwa %1 für Osten.</translation>
    </message>
    <message>
        <source>bearing</source>
        <translation>Richtung</translation>
    </message>
</context>
<context>
    <name>app::TreeViewModel</name>
    <message>
        <source>rename %1</source>
        <translation>%1 umbenennen</translation>
    </message>
    <message>
        <source>change the year of %1</source>
        <translation>Pflanzjahr von %1 ändern</translation>
    </message>
    <message>
        <source>Planted: a year such as 1987; leave it empty if nobody knows.</source>
        <translation>Gepflanzt: ein Jahr wie 1987; leer lassen, wenn niemand es weiß.</translation>
    </message>
    <message>
        <source>change the vigour of %1</source>
        <translation>Wuchskraft von %1 ändern</translation>
    </message>
    <message>
        <source>change the protection of %1</source>
        <translation>Schutz von %1 ändern</translation>
    </message>
    <message>
        <source>note %1</source>
        <translation>%1 notieren</translation>
    </message>
    <message>
        <source>take back %1</source>
        <translation>%1 zurücknehmen</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>change the leaf dates of %1</source>
        <translation>Laubtage von %1 ändern</translation>
    </message>
    <message>
        <source>Leaf: a day such as %1; leave it empty if nobody has looked.</source>
        <translation>Laub: ein Tag wie %1; leer lassen, wenn niemand darauf geachtet hat.</translation>
    </message>
</context>
<context>
    <name>app::TrialViewModel</name>
    <message>
        <source>clear</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>Hardest pressed limb</source>
        <translation>Am stärksten beanspruchter Ast</translation>
    </message>
    <message>
        <source>%1, as a share of its expected strength.</source>
        <translation>%1, als Anteil der erwarteten Festigkeit.</translation>
    </message>
    <message>
        <source>%1 now, %2 then, as a share of their expected strength.</source>
        <translation>Jetzt %1, danach %2, als Anteil der erwarteten Festigkeit.</translation>
    </message>
    <message>
        <source>Bending at the foot of the stem</source>
        <translation>Biegung am Stammfuß</translation>
    </message>
    <message>
        <source>In the gust that is asked about, from the worst side.</source>
        <translation>In der gefragten Bö, von der ungünstigsten Seite.</translation>
    </message>
    <message>
        <source>Sun on %1</source>
        <translation>Sonne auf %1</translation>
    </message>
    <message>
        <source>Direct sun on the day that is asked about.</source>
        <translation>Direkte Sonne am gefragten Tag.</translation>
    </message>
    <message>
        <source>%1 of the leaf, of %2 that may go now</source>
        <translation>%1 des Laubs, von %2, die jetzt gehen dürfen</translation>
    </message>
    <message>
        <source>The guideline will not have this.</source>
        <translation>Der Richtwert lässt das nicht zu.</translation>
    </message>
    <message>
        <source>This does all that is wanted, inside the guideline.</source>
        <translation>Das leistet alles Gewünschte, innerhalb des Richtwerts.</translation>
    </message>
    <message>
        <source>Inside the guideline, but not all that is wanted.</source>
        <translation>Innerhalb des Richtwerts, aber nicht alles Gewünschte.</translation>
    </message>
    <message>
        <source>Least room over %1</source>
        <translation>Kleinste lichte Höhe über %1</translation>
    </message>
</context>
<context>
    <name>app::UnderlayViewModel</name>
    <message>
        <source>A photo lies under the view %1.</source>
        <translation>Unter der Ansicht nach %1 liegt ein Foto.</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG *.webp *.tif *.tiff *.bmp)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG *.webp *.tif *.tiff *.bmp)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Drag the photo until its stem stands on the drawn one. Arrow keys move it too.</source>
        <translation>Ziehen Sie das Foto, bis sein Stamm auf dem gezeichneten steht. Auch die Pfeiltasten verschieben es.</translation>
    </message>
    <message>
        <source>Press one end of something whose length you know, beside the stem: a pole, a person, a door.</source>
        <translation>Klicken Sie neben dem Stamm auf ein Ende von etwas, dessen Länge Sie kennen: eine Stange, eine Person, eine Tür.</translation>
    </message>
    <message>
        <source>Now the other end.</source>
        <translation>Nun das andere Ende.</translation>
    </message>
    <message>
        <source>How long is it?</source>
        <translation>Wie lang ist es?</translation>
    </message>
    <message>
        <source>Press a point low down on an edge that is upright in truth: a wall, a plumb line. Best far from the middle.</source>
        <translation>Klicken Sie auf einen Punkt weit unten an einer Kante, die in Wirklichkeit senkrecht ist: eine Wand, ein Lot. Am besten weit von der Mitte.</translation>
    </message>
    <message>
        <source>Now a point high up on the same edge.</source>
        <translation>Nun ein Punkt weit oben an derselben Kante.</translation>
    </message>
    <message>
        <source>Drop a picture on the drawing, or choose one. Look the way it was taken first.</source>
        <translation>Legen Sie ein Bild auf der Zeichnung ab oder wählen Sie eines. Blicken Sie zuerst in die Richtung, in der es aufgenommen wurde.</translation>
    </message>
    <message>
        <source>The camera looked up by %1.</source>
        <translation>Die Kamera blickte um %1 nach oben.</translation>
    </message>
    <message>
        <source>The camera looked down by %1.</source>
        <translation>Die Kamera blickte um %1 nach unten.</translation>
    </message>
    <message>
        <source>lay a photo under it</source>
        <translation>ein Foto darunterlegen</translation>
    </message>
    <message>
        <source>take the photo away</source>
        <translation>das Foto wegnehmen</translation>
    </message>
    <message>
        <source>move the photo</source>
        <translation>das Foto verschieben</translation>
    </message>
    <message>
        <source>That edge can&apos;t be stood upright: press two points of a wall&apos;s edge, one above the other.</source>
        <translation>Diese Kante lässt sich nicht aufrichten: Klicken Sie auf zwei Punkte einer Wandkante, einen über dem anderen.</translation>
    </message>
    <message>
        <source>set the photo upright</source>
        <translation>das Foto aufrichten</translation>
    </message>
    <message>
        <source>Found “%1”, expected a length such as %2.</source>
        <translation>„%1“ gefunden, erwartet wird eine Länge wie %2.</translation>
    </message>
    <message>
        <source>The two points lie too close together.</source>
        <translation>Die beiden Punkte liegen zu nah beieinander.</translation>
    </message>
    <message>
        <source>scale the photo</source>
        <translation>den Maßstab des Fotos setzen</translation>
    </message>
    <message>
        <source>change how strong the photo is</source>
        <translation>ändern, wie stark das Foto zu sehen ist</translation>
    </message>
    <message>
        <source>turn the photo</source>
        <translation>das Foto drehen</translation>
    </message>
</context>
<context>
    <name>app::Units</name>
    <message>
        <source>north</source>
        <translation>Norden</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>Nordosten</translation>
    </message>
    <message>
        <source>east</source>
        <translation>Osten</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>Südosten</translation>
    </message>
    <message>
        <source>south</source>
        <translation>Süden</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>Südwesten</translation>
    </message>
    <message>
        <source>west</source>
        <translation>Westen</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>Nordwesten</translation>
    </message>
</context>
<context>
    <name>app::VisitForm</name>
    <message>
        <source>A visit to %1</source>
        <translation>Besuch bei %1</translation>
    </message>
    <message>
        <source>Thinned by</source>
        <translation>Ausgelichtet um</translation>
    </message>
    <message>
        <source>Cut at, from its union</source>
        <translation>Geschnitten bei, ab Ansatz</translation>
    </message>
    <message>
        <source>Lifted to, above the ground</source>
        <translation>Angehoben auf, über dem Boden</translation>
    </message>
    <message>
        <source>drawn: %1</source>
        <translation>gezeichnet: %1</translation>
    </message>
    <message>
        <source>%1 by the plan</source>
        <translation>%1 laut Plan</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Which limb was it? Choose one, or write its name.</source>
        <translation>Welcher Ast war es? Wählen Sie einen, oder schreiben Sie seinen Namen.</translation>
    </message>
    <message>
        <source>By how much was it thinned? Write a share such as 20 %.</source>
        <translation>Um wie viel wurde ausgelichtet? Schreiben Sie einen Anteil wie 20 %.</translation>
    </message>
    <message>
        <source>Where was it cut? Write a length such as %1.</source>
        <translation>Wo wurde geschnitten? Schreiben Sie eine Länge wie %1.</translation>
    </message>
    <message>
        <source>Cut %1 was changed: write how, such as %2.</source>
        <translation>Schnitt %1 wurde geändert: schreiben Sie wie, etwa %2.</translation>
    </message>
    <message>
        <source>The share of the leaf can&apos;t be read: write one such as 8 %.</source>
        <translation>Der Laubanteil ist nicht lesbar: schreiben Sie etwa 8 %.</translation>
    </message>
    <message>
        <source>The day can&apos;t be read: write it such as %1.</source>
        <translation>Der Tag ist nicht lesbar: schreiben Sie etwa %1.</translation>
    </message>
    <message>
        <source>The day to come again can&apos;t be read: write it such as %1.</source>
        <translation>Der Tag des nächsten Besuchs ist nicht lesbar: schreiben Sie etwa %1.</translation>
    </message>
    <message>
        <source>The day to come again lies before the visit.</source>
        <translation>Der Tag des nächsten Besuchs liegt vor dem Besuch.</translation>
    </message>
    <message>
        <source>The headroom over %1 can&apos;t be read: write it such as %2.</source>
        <translation>Die lichte Höhe über %1 ist nicht lesbar: schreiben Sie etwa %2.</translation>
    </message>
    <message>
        <source>The warmth can&apos;t be read: write it such as %1.</source>
        <translation>Die Wärme ist nicht lesbar: schreiben Sie etwa %1.</translation>
    </message>
    <message>
        <source>The humidity can&apos;t be read: write it such as 55 %.</source>
        <translation>Die Luftfeuchte ist nicht lesbar: schreiben Sie etwa 55 %.</translation>
    </message>
    <message>
        <source>The gusts can&apos;t be read: write them such as %1.</source>
        <translation>Die Böen sind nicht lesbar: schreiben Sie etwa %1.</translation>
    </message>
    <message>
        <source>a visit on %1</source>
        <comment>a step of history</comment>
        <translation>ein Besuch am %1</translation>
    </message>
    <message>
        <source>One of the cuts can&apos;t be made on the sketch as it is drawn. Untick &quot;cut the sketch too&quot;, or change that cut.</source>
        <translation>Einer der Schnitte lässt sich an der Skizze, wie sie ist, nicht machen. Nehmen Sie das Häkchen bei „auch an der Skizze“ weg, oder ändern Sie den Schnitt.</translation>
    </message>
    <message>
        <source>Tip of %1, as drawn %2 above the ground</source>
        <translation>Spitze von %1, wie gezeichnet %2 über dem Boden</translation>
    </message>
    <message>
        <source>Renewed by</source>
        <translation>Verjüngt um</translation>
    </message>
</context>
<context>
    <name>app::WhyViewModel</name>
    <message>
        <source>All %1 cuts together</source>
        <translation>Alle %1 Schnitte zusammen</translation>
    </message>
</context>
<context>
    <name>app::WorkViewModel</name>
    <message>
        <source>%1 of the leaf, of %2 that may go now</source>
        <translation>%1 des Laubs, von %2, die jetzt gehen dürfen</translation>
    </message>
    <message>
        <source>Every other set of cuts was weighed: none does it with less leaf.</source>
        <translation>Jede andere Reihe von Schnitten wurde gewogen: keine schafft es mit weniger Laub.</translation>
    </message>
    <message>
        <source>The search was cut short: a set with less leaf may exist.</source>
        <translation>Die Suche wurde abgekürzt: eine Reihe mit weniger Laub kann es geben.</translation>
    </message>
</context>
</TS>
