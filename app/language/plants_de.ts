<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Plants</name>
    <message>
        <source>silver maple</source>
        <translation>Silber-Ahorn</translation>
    </message>
    <message>
        <source>red maple</source>
        <translation>Rot-Ahorn</translation>
    </message>
    <message>
        <source>sugar maple</source>
        <translation>Zucker-Ahorn</translation>
    </message>
    <message>
        <source>Norway maple</source>
        <translation>Spitz-Ahorn</translation>
    </message>
    <message>
        <source>Japanese maple</source>
        <translation>Fächer-Ahorn</translation>
    </message>
    <message>
        <source>box elder</source>
        <translation>Eschen-Ahorn</translation>
    </message>
    <message>
        <source>horse chestnut</source>
        <translation>Rosskastanie</translation>
    </message>
    <message>
        <source>river birch</source>
        <translation>Schwarz-Birke</translation>
    </message>
    <message>
        <source>silver birch</source>
        <translation>Hänge-Birke</translation>
    </message>
    <message>
        <source>paper birch</source>
        <translation>Papier-Birke</translation>
    </message>
    <message>
        <source>European hornbeam</source>
        <translation>Hainbuche</translation>
    </message>
    <message>
        <source>pecan</source>
        <translation>Pekannuss</translation>
    </message>
    <message>
        <source>northern catalpa</source>
        <translation>Prächtiger Trompetenbaum</translation>
    </message>
    <message>
        <source>common hackberry</source>
        <translation>Amerikanischer Zürgelbaum</translation>
    </message>
    <message>
        <source>eastern redbud</source>
        <translation>Kanadischer Judasbaum</translation>
    </message>
    <message>
        <source>flowering dogwood</source>
        <translation>Blüten-Hartriegel</translation>
    </message>
    <message>
        <source>American beech</source>
        <translation>Amerikanische Buche</translation>
    </message>
    <message>
        <source>European beech</source>
        <translation>Rotbuche</translation>
    </message>
    <message>
        <source>white ash</source>
        <translation>Weiß-Esche</translation>
    </message>
    <message>
        <source>European ash</source>
        <translation>Gemeine Esche</translation>
    </message>
    <message>
        <source>green ash</source>
        <translation>Rot-Esche</translation>
    </message>
    <message>
        <source>ginkgo</source>
        <translation>Ginkgo</translation>
    </message>
    <message>
        <source>honey locust</source>
        <translation>Amerikanische Gleditschie</translation>
    </message>
    <message>
        <source>jacaranda</source>
        <translation>Palisanderholzbaum</translation>
    </message>
    <message>
        <source>black walnut</source>
        <translation>Schwarznuss</translation>
    </message>
    <message>
        <source>English walnut</source>
        <translation>Walnuss</translation>
    </message>
    <message>
        <source>crape myrtle</source>
        <translation>Chinesische Kräuselmyrte</translation>
    </message>
    <message>
        <source>sweetgum</source>
        <translation>Amerikanischer Amberbaum</translation>
    </message>
    <message>
        <source>tulip tree</source>
        <translation>Tulpenbaum</translation>
    </message>
    <message>
        <source>southern magnolia</source>
        <translation>Immergrüne Magnolie</translation>
    </message>
    <message>
        <source>white mulberry</source>
        <translation>Weiße Maulbeere</translation>
    </message>
    <message>
        <source>London plane</source>
        <translation>Ahornblättrige Platane</translation>
    </message>
    <message>
        <source>American sycamore</source>
        <translation>Amerikanische Platane</translation>
    </message>
    <message>
        <source>eastern cottonwood</source>
        <translation>Kanadische Schwarz-Pappel</translation>
    </message>
    <message>
        <source>black / Lombardy poplar</source>
        <translation>Schwarz- / Pyramiden-Pappel</translation>
    </message>
    <message>
        <source>quaking aspen</source>
        <translation>Amerikanische Zitter-Pappel</translation>
    </message>
    <message>
        <source>Japanese flowering cherry</source>
        <translation>Japanische Blütenkirsche</translation>
    </message>
    <message>
        <source>Higan cherry</source>
        <translation>Higan-Kirsche</translation>
    </message>
    <message>
        <source>Callery pear</source>
        <translation>Chinesische Birne</translation>
    </message>
    <message>
        <source>white oak</source>
        <translation>Weiß-Eiche</translation>
    </message>
    <message>
        <source>bur oak</source>
        <translation>Klettenfrüchtige Eiche</translation>
    </message>
    <message>
        <source>pin oak</source>
        <translation>Sumpf-Eiche</translation>
    </message>
    <message>
        <source>English oak</source>
        <translation>Stiel-Eiche</translation>
    </message>
    <message>
        <source>northern red oak</source>
        <translation>Rot-Eiche</translation>
    </message>
    <message>
        <source>live oak</source>
        <translation>Virginia-Eiche</translation>
    </message>
    <message>
        <source>black locust</source>
        <translation>Robinie</translation>
    </message>
    <message>
        <source>white willow</source>
        <translation>Silber-Weide</translation>
    </message>
    <message>
        <source>weeping willow</source>
        <translation>Trauerweide</translation>
    </message>
    <message>
        <source>black willow</source>
        <translation>Schwarz-Weide</translation>
    </message>
    <message>
        <source>pepper tree</source>
        <translation>Peruanischer Pfefferbaum</translation>
    </message>
    <message>
        <source>rowan</source>
        <translation>Eberesche</translation>
    </message>
    <message>
        <source>American basswood</source>
        <translation>Amerikanische Linde</translation>
    </message>
    <message>
        <source>little-leaf linden</source>
        <translation>Winter-Linde</translation>
    </message>
    <message>
        <source>American elm</source>
        <translation>Amerikanische Ulme</translation>
    </message>
    <message>
        <source>Chinese elm</source>
        <translation>Chinesische Ulme</translation>
    </message>
    <message>
        <source>Japanese zelkova</source>
        <translation>Japanische Zelkove</translation>
    </message>
    <message>
        <source>apple</source>
        <translation>Apfel</translation>
    </message>
    <message>
        <source>European pear</source>
        <translation>Birne</translation>
    </message>
    <message>
        <source>quince</source>
        <translation>Quitte</translation>
    </message>
    <message>
        <source>sweet cherry</source>
        <translation>Süßkirsche</translation>
    </message>
    <message>
        <source>sour cherry</source>
        <translation>Sauerkirsche</translation>
    </message>
    <message>
        <source>European plum</source>
        <translation>Pflaume</translation>
    </message>
    <message>
        <source>Japanese plum</source>
        <translation>Japanische Pflaume</translation>
    </message>
    <message>
        <source>peach / nectarine</source>
        <translation>Pfirsich / Nektarine</translation>
    </message>
    <message>
        <source>apricot</source>
        <translation>Aprikose</translation>
    </message>
    <message>
        <source>almond</source>
        <translation>Mandel</translation>
    </message>
    <message>
        <source>fig</source>
        <translation>Feige</translation>
    </message>
    <message>
        <source>Oriental persimmon</source>
        <translation>Kakipflaume</translation>
    </message>
    <message>
        <source>American persimmon</source>
        <translation>Amerikanische Kakipflaume</translation>
    </message>
    <message>
        <source>sweet chestnut</source>
        <translation>Esskastanie</translation>
    </message>
    <message>
        <source>hazel</source>
        <translation>Hasel</translation>
    </message>
    <message>
        <source>sweet orange</source>
        <translation>Orange</translation>
    </message>
    <message>
        <source>lemon</source>
        <translation>Zitrone</translation>
    </message>
    <message>
        <source>olive</source>
        <translation>Olive</translation>
    </message>
    <message>
        <source>avocado</source>
        <translation>Avocado</translation>
    </message>
    <message>
        <source>pomegranate</source>
        <translation>Granatapfel</translation>
    </message>
    <message>
        <source>black mulberry</source>
        <translation>Schwarze Maulbeere</translation>
    </message>
    <message>
        <source>white fir</source>
        <translation>Kolorado-Tanne</translation>
    </message>
    <message>
        <source>deodar cedar</source>
        <translation>Himalaya-Zeder</translation>
    </message>
    <message>
        <source>Leyland cypress</source>
        <translation>Leyland-Zypresse</translation>
    </message>
    <message>
        <source>eastern red cedar</source>
        <translation>Virginischer Wacholder</translation>
    </message>
    <message>
        <source>dawn redwood</source>
        <translation>Urweltmammutbaum</translation>
    </message>
    <message>
        <source>Norway spruce</source>
        <translation>Gemeine Fichte</translation>
    </message>
    <message>
        <source>blue spruce</source>
        <translation>Blau-Fichte</translation>
    </message>
    <message>
        <source>eastern white pine</source>
        <translation>Weymouth-Kiefer</translation>
    </message>
    <message>
        <source>Scots pine</source>
        <translation>Wald-Kiefer</translation>
    </message>
    <message>
        <source>Douglas-fir</source>
        <translation>Douglasie</translation>
    </message>
    <message>
        <source>coast redwood</source>
        <translation>Küstenmammutbaum</translation>
    </message>
    <message>
        <source>bald cypress</source>
        <translation>Sumpfzypresse</translation>
    </message>
    <message>
        <source>northern white cedar</source>
        <translation>Abendländischer Lebensbaum</translation>
    </message>
    <message>
        <source>western red cedar</source>
        <translation>Riesen-Lebensbaum</translation>
    </message>
    <message>
        <source>eastern hemlock</source>
        <translation>Kanadische Hemlocktanne</translation>
    </message>
    <message>
        <source>English yew</source>
        <translation>Eibe</translation>
    </message>
    <message>
        <source>Japanese yew</source>
        <translation>Japanische Eibe</translation>
    </message>
    <message>
        <source>boxwood</source>
        <translation>Buchsbaum</translation>
    </message>
    <message>
        <source>garden privet</source>
        <translation>Ovalblättriger Liguster</translation>
    </message>
    <message>
        <source>wild privet</source>
        <translation>Gemeiner Liguster</translation>
    </message>
    <message>
        <source>wax-leaf privet</source>
        <translation>Japanischer Liguster</translation>
    </message>
    <message>
        <source>cherry laurel</source>
        <translation>Lorbeerkirsche</translation>
    </message>
    <message>
        <source>Portugal laurel</source>
        <translation>Portugiesische Lorbeerkirsche</translation>
    </message>
    <message>
        <source>hornbeam</source>
        <translation>Hainbuche</translation>
    </message>
    <message>
        <source>English holly</source>
        <translation>Stechpalme</translation>
    </message>
    <message>
        <source>American holly</source>
        <translation>Amerikanische Stechpalme</translation>
    </message>
    <message>
        <source>Japanese holly</source>
        <translation>Japanische Stechpalme</translation>
    </message>
    <message>
        <source>red-tip photinia</source>
        <translation>Rotlaubige Glanzmispel</translation>
    </message>
    <message>
        <source>hawthorn</source>
        <translation>Weißdorn</translation>
    </message>
    <message>
        <source>firethorn</source>
        <translation>Feuerdorn</translation>
    </message>
    <message>
        <source>shrub honeysuckle</source>
        <translation>Heckenmyrte</translation>
    </message>
    <message>
        <source>escallonia</source>
        <translation>Escallonie</translation>
    </message>
    <message>
        <source>griselinia</source>
        <translation>Griselinie</translation>
    </message>
    <message>
        <source>rosemary</source>
        <translation>Rosmarin</translation>
    </message>
    <message>
        <source>lavender</source>
        <translation>Lavendel</translation>
    </message>
    <message>
        <source>bigleaf hydrangea</source>
        <translation>Garten-Hortensie</translation>
    </message>
    <message>
        <source>panicle hydrangea</source>
        <translation>Rispen-Hortensie</translation>
    </message>
    <message>
        <source>smooth hydrangea</source>
        <translation>Schneeball-Hortensie</translation>
    </message>
    <message>
        <source>rhododendron</source>
        <translation>Rhododendron</translation>
    </message>
    <message>
        <source>azalea</source>
        <translation>Azalee</translation>
    </message>
    <message>
        <source>camellia</source>
        <translation>Kamelie</translation>
    </message>
    <message>
        <source>garden rose</source>
        <translation>Gartenrose</translation>
    </message>
    <message>
        <source>lilac</source>
        <translation>Flieder</translation>
    </message>
    <message>
        <source>forsythia</source>
        <translation>Forsythie</translation>
    </message>
    <message>
        <source>arrowwood viburnum</source>
        <translation>Gezähnter Schneeball</translation>
    </message>
    <message>
        <source>Japanese laurel</source>
        <translation>Aukube</translation>
    </message>
    <message>
        <source>Oregon grape</source>
        <translation>Mahonie</translation>
    </message>
    <message>
        <source>pieris</source>
        <translation>Lavendelheide</translation>
    </message>
    <message>
        <source>red-twig dogwood</source>
        <translation>Seidiger Hartriegel</translation>
    </message>
    <message>
        <source>spirea</source>
        <translation>Spierstrauch</translation>
    </message>
    <message>
        <source>rose of Sharon</source>
        <translation>Straucheibisch</translation>
    </message>
    <message>
        <source>alpine currant</source>
        <translation>Alpen-Johannisbeere</translation>
    </message>
    <message>
        <source>tomato</source>
        <translation>Tomate</translation>
    </message>
    <message>
        <source>pepper</source>
        <translation>Paprika</translation>
    </message>
    <message>
        <source>eggplant</source>
        <translation>Aubergine</translation>
    </message>
    <message>
        <source>cucumber</source>
        <translation>Gurke</translation>
    </message>
    <message>
        <source>squash, zucchini</source>
        <translation>Kürbis, Zucchini</translation>
    </message>
    <message>
        <source>melon</source>
        <translation>Melone</translation>
    </message>
    <message>
        <source>sweet corn</source>
        <translation>Zuckermais</translation>
    </message>
    <message>
        <source>okra</source>
        <translation>Okra</translation>
    </message>
    <message>
        <source>bush bean</source>
        <translation>Buschbohne</translation>
    </message>
    <message>
        <source>pea</source>
        <translation>Erbse</translation>
    </message>
    <message>
        <source>asparagus</source>
        <translation>Spargel</translation>
    </message>
    <message>
        <source>artichoke</source>
        <translation>Artischocke</translation>
    </message>
    <message>
        <source>potato</source>
        <translation>Kartoffel</translation>
    </message>
    <message>
        <source>carrot</source>
        <translation>Möhre</translation>
    </message>
    <message>
        <source>beet</source>
        <translation>Rote Bete</translation>
    </message>
    <message>
        <source>radish</source>
        <translation>Radieschen</translation>
    </message>
    <message>
        <source>broccoli</source>
        <translation>Brokkoli</translation>
    </message>
    <message>
        <source>cabbage</source>
        <translation>Kohl</translation>
    </message>
    <message>
        <source>kale</source>
        <translation>Grünkohl</translation>
    </message>
    <message>
        <source>chard</source>
        <translation>Mangold</translation>
    </message>
    <message>
        <source>lettuce</source>
        <translation>Salat</translation>
    </message>
    <message>
        <source>spinach</source>
        <translation>Spinat</translation>
    </message>
    <message>
        <source>arugula</source>
        <translation>Rucola</translation>
    </message>
    <message>
        <source>bok choy</source>
        <translation>Pak Choi</translation>
    </message>
    <message>
        <source>garlic</source>
        <translation>Knoblauch</translation>
    </message>
    <message>
        <source>chives</source>
        <translation>Schnittlauch</translation>
    </message>
    <message>
        <source>parsley</source>
        <translation>Petersilie</translation>
    </message>
    <message>
        <source>mint</source>
        <translation>Minze</translation>
    </message>
    <message>
        <source>cilantro</source>
        <translation>Koriander</translation>
    </message>
    <message>
        <source>basil</source>
        <translation>Basilikum</translation>
    </message>
    <message>
        <source>rhubarb</source>
        <translation>Rhabarber</translation>
    </message>
    <message>
        <source>strawberry</source>
        <translation>Erdbeere</translation>
    </message>
    <message>
        <source>highbush blueberry</source>
        <translation>Kultur-Heidelbeere</translation>
    </message>
    <message>
        <source>raspberry</source>
        <translation>Himbeere</translation>
    </message>
    <message>
        <source>blackberry</source>
        <translation>Brombeere</translation>
    </message>
    <message>
        <source>black currant</source>
        <translation>Schwarze Johannisbeere</translation>
    </message>
    <message>
        <source>gooseberry</source>
        <translation>Stachelbeere</translation>
    </message>
    <message>
        <source>grape</source>
        <translation>Weinrebe</translation>
    </message>
    <message>
        <source>peach</source>
        <translation>Pfirsich</translation>
    </message>
    <message>
        <source>orange</source>
        <translation>Orange</translation>
    </message>
    <message>
        <source>hosta</source>
        <translation>Funkie</translation>
    </message>
    <message>
        <source>astilbe</source>
        <translation>Prachtspiere</translation>
    </message>
    <message>
        <source>ferns</source>
        <translation>Farne</translation>
    </message>
    <message>
        <source>coral bells</source>
        <translation>Purpurglöckchen</translation>
    </message>
    <message>
        <source>hellebore</source>
        <translation>Nieswurz</translation>
    </message>
    <message>
        <source>daylily</source>
        <translation>Taglilie</translation>
    </message>
    <message>
        <source>peony</source>
        <translation>Pfingstrose</translation>
    </message>
    <message>
        <source>coneflower</source>
        <translation>Sonnenhut</translation>
    </message>
    <message>
        <source>meadow sage</source>
        <translation>Steppen-Salbei</translation>
    </message>
    <message>
        <source>impatiens</source>
        <translation>Fleißiges Lieschen</translation>
    </message>
    <message>
        <source>marigold</source>
        <translation>Studentenblume</translation>
    </message>
    <message>
        <source>petunia</source>
        <translation>Petunie</translation>
    </message>
    <message>
        <source>zinnia</source>
        <translation>Zinnie</translation>
    </message>
    <message>
        <source>common bermudagrass</source>
        <translation>Hundszahngras</translation>
    </message>
    <message>
        <source>hybrid bermudagrass</source>
        <translation>Hybrid-Hundszahngras</translation>
    </message>
    <message>
        <source>wide-blade zoysia</source>
        <translation>Japanisches Zoysiagras</translation>
    </message>
    <message>
        <source>fine-blade zoysia</source>
        <translation>Feinblättriges Zoysiagras</translation>
    </message>
    <message>
        <source>St Augustine grass</source>
        <translation>St.-Augustin-Gras</translation>
    </message>
    <message>
        <source>centipede grass</source>
        <translation>Tausendfüßlergras</translation>
    </message>
    <message>
        <source>seashore paspalum</source>
        <translation>Strand-Paspalum</translation>
    </message>
    <message>
        <source>tall fescue</source>
        <translation>Rohr-Schwingel</translation>
    </message>
    <message>
        <source>fine fescues</source>
        <translation>Rot-Schwingel</translation>
    </message>
    <message>
        <source>Kentucky bluegrass</source>
        <translation>Wiesen-Rispengras</translation>
    </message>
    <message>
        <source>perennial ryegrass</source>
        <translation>Deutsches Weidelgras</translation>
    </message>
    <message>
        <source>creeping bentgrass</source>
        <translation>Flecht-Straußgras</translation>
    </message>
</context>
</TS>
