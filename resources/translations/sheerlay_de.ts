<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Window</name>
    <message>
        <source>Water, kg/m³</source>
        <translation>Wasser, kg/m³</translation>
    </message>
    <message>
        <source>Fresh water 1000, salt water 1025.</source>
        <translation>Süßwasser 1000, Salzwasser 1025.</translation>
    </message>
    <message>
        <source>Freeboard kept</source>
        <translation>Freibord mindestens</translation>
    </message>
    <message>
        <source>From the water to the lowest sheer at the largest load.</source>
        <translation>Vom Wasser bis zum tiefsten Punkt des Sprungs bei größter Zuladung.</translation>
    </message>
    <message>
        <source>She weighs</source>
        <translation>Bootsgewicht</translation>
    </message>
    <message>
        <source>from her parts</source>
        <translation>aus den Teilen</translation>
    </message>
    <message>
        <source>The boat alone, once you have weighed her.</source>
        <translation>Das Boot allein, sobald es gewogen ist.</translation>
    </message>
    <message>
        <source>Afloat</source>
        <translation>Im Wasser</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>As it stands on the sheet.</source>
        <translation>Wie er auf dem Blatt steht.</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>With clothes and boots.</source>
        <translation>Mit Kleidung und Stiefeln.</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>In the table&apos;s x.</source>
        <translation>Als x der Tabelle.</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Of the weight&apos;s own centre above the base line; a sitting paddler&apos;s is about 10 in above the seat.</source>
        <translation>Höhe des eigenen Schwerpunkts über der Basis; bei sitzenden Paddlern etwa 25 cm (10 in) über dem Sitz.</translation>
    </message>
    <message>
        <source>Off centre</source>
        <translation>Aus der Mitte</translation>
    </message>
    <message>
        <source>From the centreline; + to starboard, - to port.</source>
        <translation>Von der Mittellinie; + nach Steuerbord, - nach Backbord.</translation>
    </message>
    <message>
        <source>Aboard %1</source>
        <translation>An Bord %1</translation>
    </message>
    <message>
        <source>Part of her %1</source>
        <translation>Bootsteil %1</translation>
    </message>
    <message>
        <source>A paddler</source>
        <translation>Ein Paddler</translation>
    </message>
    <message>
        <source>Put amidships at first; give weight and place.</source>
        <translation>Zunächst mittschiffs; Gewicht und Stelle angeben.</translation>
    </message>
    <message>
        <source>Gear</source>
        <translation>Gepäck</translation>
    </message>
    <message>
        <source>A pack, a dog, a cooler; give weight and place.</source>
        <translation>Ein Packsack, ein Hund, eine Kühlbox; Gewicht und Stelle angeben.</translation>
    </message>
    <message>
        <source>A part of the boat</source>
        <translation>Ein Bootsteil</translation>
    </message>
    <message>
        <source>What the fit-out does not know of, such as a foot brace.</source>
        <translation>Was der Ausbau nicht kennt, etwa eine Fußstütze.</translation>
    </message>
    <message>
        <source>Cloth</source>
        <translation>Gewebe</translation>
    </message>
    <message>
        <source>Its weight: ounces to the square yard (6 oz), or grams to the square metre (200 g).</source>
        <translation>Sein Gewicht: Unzen je Quadratyard (6 oz) oder Gramm je Quadratmeter (200 g).</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Width of the roll it comes on.</source>
        <translation>Breite der Rolle, von der es kommt.</translation>
    </message>
    <message>
        <source>Laid</source>
        <translation>Gelegt</translation>
    </message>
    <message>
        <source>in fewest pieces</source>
        <translation>möglichst wenige Bahnen</translation>
    </message>
    <message>
        <source>in one drape</source>
        <translation>in einer Bahn</translation>
    </message>
    <message>
        <source>a piece a side</source>
        <translation>eine Bahn je Seite</translation>
    </message>
    <message>
        <source>One drape over the keel, or a piece a side with an overlap along it; the fewest pieces that the roll allows.</source>
        <translation>Eine Bahn quer über den Kiel oder je Seite eine, mit Überlappung am Kiel; oder so wenige, wie die Rollenbreite erlaubt.</translation>
    </message>
    <message>
        <source>Overlap</source>
        <translation>Überlappung</translation>
    </message>
    <message>
        <source>Where two pieces meet.</source>
        <translation>Wo zwei Bahnen zusammentreffen.</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Überstand</translation>
    </message>
    <message>
        <source>Past sheer and stems, cut off later.</source>
        <translation>Über Sprung und Steven hinaus; wird später abgeschnitten.</translation>
    </message>
    <message>
        <source>Fill coats</source>
        <translation>Füllschichten</translation>
    </message>
    <message>
        <source>Rolled on after the cloth is wetted out.</source>
        <translation>Aufgerollt, wenn das Gewebe getränkt ist.</translation>
    </message>
    <message>
        <source>Mixed</source>
        <translation>Gemischt</translation>
    </message>
    <message>
        <source>Parts of resin to parts of hardener as the maker prints them, such as “3 : 1 by volume” or “100 : 45 by weight”.</source>
        <translation>Teile Harz zu Teilen Härter, wie der Hersteller sie angibt, etwa „3 : 1 by volume“ (nach Volumen) oder „100 : 45 by weight“ (nach Gewicht).</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>“%1”; “3 : 1 by volume” or “by weight” would do.</source>
        <translation>„%1“; möglich wäre „3 : 1 by volume“ oder „by weight“.</translation>
    </message>
    <message>
        <source>Bare wood</source>
        <translation>Rohes Holz</translation>
    </message>
    <message>
        <source>no coat first</source>
        <translation>ohne Schicht davor</translation>
    </message>
    <message>
        <source>sealed first</source>
        <translation>erst versiegelt</translation>
    </message>
    <message>
        <source>A coat on the bare wood, so that the cloth does not starve.</source>
        <translation>Eine Schicht auf das rohe Holz, damit es dem Gewebe kein Harz entzieht.</translation>
    </message>
    <message>
        <source>Pot life, minutes</source>
        <translation>Topfzeit, Minuten</translation>
    </message>
    <message>
        <source>As the maker prints it; without it no batches are told.</source>
        <translation>Wie der Hersteller sie angibt; ohne sie werden keine Ansätze berechnet.</translation>
    </message>
    <message>
        <source>Pace, m²/min</source>
        <translation>Tempo, m²/min</translation>
    </message>
    <message>
        <source>Square metres that one pair of hands wets out or rolls in a minute.</source>
        <translation>Quadratmeter, die ein Paar Hände in der Minute tränkt oder rollt.</translation>
    </message>
    <message>
        <source>Waste, percent</source>
        <translation>Verlust, Prozent</translation>
    </message>
    <message>
        <source>Left in pots, rollers and on the floor; 15 percent in the published formula.</source>
        <translation>Was in Töpfen, Rollen und am Boden bleibt; 15 Prozent in der veröffentlichten Formel.</translation>
    </message>
    <message>
        <source>Wet-out, L/kg</source>
        <translation>Tränken, L/kg</translation>
    </message>
    <message>
        <source>Litres of mixed resin to a kilogram of cloth, without waste.</source>
        <translation>Liter gemischtes Harz je Kilogramm Gewebe, ohne Verlust.</translation>
    </message>
    <message>
        <source>Fill coat, L/m²</source>
        <translation>Füllschicht, L/m²</translation>
    </message>
    <message>
        <source>Litres to a square metre, without waste.</source>
        <translation>Liter je Quadratmeter, ohne Verlust.</translation>
    </message>
    <message>
        <source>Seal coat, L/m²</source>
        <translation>Versiegelung, L/m²</translation>
    </message>
    <message>
        <source>Litres to a square metre of bare wood.</source>
        <translation>Liter je Quadratmeter rohes Holz.</translation>
    </message>
    <message>
        <source>Sanded, percent</source>
        <translation>Abgeschliffen, Prozent</translation>
    </message>
    <message>
        <source>Part of the fill coats that is sanded away.</source>
        <translation>Teil der Füllschichten, der wieder abgeschliffen wird.</translation>
    </message>
    <message>
        <source>Liquid, kg/L</source>
        <translation>Flüssig, kg/L</translation>
    </message>
    <message>
        <source>Of the mixed resin, to buy by.</source>
        <translation>Des gemischten Harzes, für den Einkauf.</translation>
    </message>
    <message>
        <source>Cured, kg/L</source>
        <translation>Ausgehärtet, kg/L</translation>
    </message>
    <message>
        <source>Of the hard resin, to weigh by.</source>
        <translation>Des harten Harzes, für das Gewicht.</translation>
    </message>
    <message>
        <source>Resin</source>
        <translation>Harz</translation>
    </message>
    <message>
        <source>Spare, percent</source>
        <translation>Zugabe, Prozent</translation>
    </message>
    <message>
        <source>Cloth bought beyond the pieces.</source>
        <translation>Gewebe, das über die Bahnen hinaus gekauft wird.</translation>
    </message>
    <message>
        <source>Give, degrees</source>
        <translation>Nachgiebigkeit, Grad</translation>
    </message>
    <message>
        <source>How far the weave slides before it wrinkles and must be slit.</source>
        <translation>Wie weit sich das Gewebe verschiebt, ehe es Falten wirft und geschlitzt werden muss.</translation>
    </message>
    <message>
        <source>Cloth on both faces</source>
        <translation>Gewebe auf beiden Seiten</translation>
    </message>
    <message>
        <source>Coats</source>
        <translation>Anstriche</translation>
    </message>
    <message>
        <source>At least three keep the sun off.</source>
        <translation>Mindestens drei halten die Sonne ab.</translation>
    </message>
    <message>
        <source>Spread, m²/L</source>
        <translation>Ergiebigkeit, m²/L</translation>
    </message>
    <message>
        <source>Square metres that a litre covers once.</source>
        <translation>Quadratmeter, die ein Liter einmal deckt.</translation>
    </message>
    <message>
        <source>Film, g/m²</source>
        <translation>Film, g/m²</translation>
    </message>
    <message>
        <source>Left on the boat by a coat.</source>
        <translation>Was ein Anstrich auf dem Boot zurücklässt.</translation>
    </message>
    <message>
        <source>Varnish</source>
        <translation>Lack</translation>
    </message>
    <message>
        <source>Cloth outside</source>
        <translation>Gewebe außen</translation>
    </message>
    <message>
        <source>Cloth and resin over the planking, and the varnish with it.</source>
        <translation>Gewebe und Harz über der Beplankung, dazu der Lack.</translation>
    </message>
    <message>
        <source>Cloth inside</source>
        <translation>Gewebe innen</translation>
    </message>
    <message>
        <source>Cloth and resin inside.</source>
        <translation>Gewebe und Harz innen.</translation>
    </message>
    <message>
        <source>%1, width</source>
        <translation>%1, Breite</translation>
    </message>
    <message>
        <source>Across the stick.</source>
        <translation>Quer zum Stab.</translation>
    </message>
    <message>
        <source>%1, height</source>
        <translation>%1, Höhe</translation>
    </message>
    <message>
        <source>Up and down.</source>
        <translation>Von der Unter- zur Oberkante.</translation>
    </message>
    <message>
        <source>Of gunwales, seats, thwarts and yoke.</source>
        <translation>Von Dollborden, Sitzen, Duchten und Tragjoch.</translation>
    </message>
    <message>
        <source>Glass inside</source>
        <translation>Glas innen</translation>
    </message>
    <message>
        <source>Thickness of cloth and resin inside; every part fits against it.</source>
        <translation>Dicke von Gewebe und Harz innen; alle Teile werden daran angepasst.</translation>
    </message>
    <message>
        <source>Glass outside</source>
        <translation>Glas außen</translation>
    </message>
    <message>
        <source>Thickness of cloth and resin outside.</source>
        <translation>Dicke von Gewebe und Harz außen.</translation>
    </message>
    <message>
        <source>All parts</source>
        <translation>Alle Teile</translation>
    </message>
    <message>
        <source>Inner</source>
        <translation>Innen</translation>
    </message>
    <message>
        <source>Outer</source>
        <translation>Außen</translation>
    </message>
    <message>
        <source>They stand</source>
        <translation>Stellung</translation>
    </message>
    <message>
        <source>plumb</source>
        <translation>lotrecht</translation>
    </message>
    <message>
        <source>along the side</source>
        <translation>mit der Bordwand</translation>
    </message>
    <message>
        <source>Faces plumb, or flared with the planking.</source>
        <translation>Flächen lotrecht oder mit der Beplankung ausfallend.</translation>
    </message>
    <message>
        <source>At the edge</source>
        <translation>An der Kante</translation>
    </message>
    <message>
        <source>beside the planking</source>
        <translation>neben der Beplankung</translation>
    </message>
    <message>
        <source>lapping it</source>
        <translation>übergreifend</translation>
    </message>
    <message>
        <source>The outer one beside the planking&apos;s edge, or rabbeted to cover it.</source>
        <translation>Das äußere neben der Kante der Beplankung oder gefalzt darüber.</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>The longest piece to be had; what is longer is scarfed.</source>
        <translation>Der längste Stab, der zu haben ist; was länger ist, wird geschäftet.</translation>
    </message>
    <message>
        <source>Scarf slope</source>
        <translation>Schäftung</translation>
    </message>
    <message>
        <source>Length of a scarf over the stick&apos;s width; 10 holds as well as the wood.</source>
        <translation>Länge einer Schäftung zur Breite des Stabs; 10 hält so gut wie das Holz.</translation>
    </message>
    <message>
        <source>Over length</source>
        <translation>Überlänge</translation>
    </message>
    <message>
        <source>Left at each end, to be cut when it is fitted.</source>
        <translation>An jedem Ende; wird beim Anpassen abgeschnitten.</translation>
    </message>
    <message>
        <source>Screws apart</source>
        <translation>Schraubenabstand</translation>
    </message>
    <message>
        <source>6 to 8 in is common.</source>
        <translation>6 bis 8 in (150 bis 200 mm) sind üblich.</translation>
    </message>
    <message>
        <source>Screw heads</source>
        <translation>Schraubenköpfe</translation>
    </message>
    <message>
        <source>flush</source>
        <translation>bündig</translation>
    </message>
    <message>
        <source>under plugs</source>
        <translation>unter Pfropfen</translation>
    </message>
    <message>
        <source>Plugs of the same wood hide the heads.</source>
        <translation>Pfropfen aus demselben Holz verdecken die Köpfe.</translation>
    </message>
    <message>
        <source>Gunwales</source>
        <translation>Dollborde</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>Along the gunwale.</source>
        <translation>Entlang des Dollbords.</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Klotz</translation>
    </message>
    <message>
        <source>Wood between two openings.</source>
        <translation>Holz zwischen zwei Öffnungen.</translation>
    </message>
    <message>
        <source>Solid ends</source>
        <translation>Volle Enden</translation>
    </message>
    <message>
        <source>No opening nearer than this to either end.</source>
        <translation>Näher an beiden Enden liegt keine Öffnung.</translation>
    </message>
    <message>
        <source>Scuppers</source>
        <translation>Speigatten</translation>
    </message>
    <message>
        <source>bow</source>
        <translation>Bug</translation>
    </message>
    <message>
        <source>stern</source>
        <translation>Heck</translation>
    </message>
    <message>
        <source>At the</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>The end it closes off.</source>
        <translation>Das Ende, das es abschließt.</translation>
    </message>
    <message>
        <source>From the end</source>
        <translation>Vom Ende</translation>
    </message>
    <message>
        <source>From that end&apos;s outermost point to the face toward amidships.</source>
        <translation>Vom äußersten Punkt dieses Endes bis zur Fläche, die nach mittschiffs zeigt.</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Platte</translation>
    </message>
    <message>
        <source>Its thickness.</source>
        <translation>Ihre Dicke.</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Fuge</translation>
    </message>
    <message>
        <source>Left all round for glue or a strip of foam.</source>
        <translation>Ringsum frei für Leim oder einen Schaumstreifen.</translation>
    </message>
    <message>
        <source>Below the sheer</source>
        <translation>Unter dem Sprung</translation>
    </message>
    <message>
        <source>Its top under the line across the sheer.</source>
        <translation>Die Oberkante unter der Linie quer von Sprung zu Sprung.</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Balkenbucht</translation>
    </message>
    <message>
        <source>Rise of its top at the centreline over that line.</source>
        <translation>Um wie viel die Oberkante in der Mitte über dieser Linie steht.</translation>
    </message>
    <message>
        <source>Bulkhead %1</source>
        <translation>Schott %1</translation>
    </message>
    <message>
        <source>The end it covers.</source>
        <translation>Das Ende, das es deckt.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>From that end&apos;s outermost point to the deck&apos;s inner edge.</source>
        <translation>Vom äußersten Punkt dieses Endes bis zur Innenkante des Decks.</translation>
    </message>
    <message>
        <source>Rise at the centreline of its inner edge; sprung to one radius all along.</source>
        <translation>Höhe der Innenkante in der Mitte; überall mit einem Radius gewölbt.</translation>
    </message>
    <message>
        <source>Lands on</source>
        <translation>Liegt auf</translation>
    </message>
    <message>
        <source>the gunwales</source>
        <translation>den Dollborden</translation>
    </message>
    <message>
        <source>the planking</source>
        <translation>der Beplankung</translation>
    </message>
    <message>
        <source>What its edges are fitted against.</source>
        <translation>Woran die Kanten angepasst werden.</translation>
    </message>
    <message>
        <source>Deck %1</source>
        <translation>Deck %1</translation>
    </message>
    <message>
        <source>a seat without a height; give one of the two heights.</source>
        <translation>ein Sitz ohne Höhe; eine der beiden Höhen angeben.</translation>
    </message>
    <message>
        <source>As it stands on the sheets.</source>
        <translation>Wie er auf den Blättern steht.</translation>
    </message>
    <message>
        <source>Its middle, in the table&apos;s x.</source>
        <translation>Die Mitte, als x der Tabelle.</translation>
    </message>
    <message>
        <source>Above the bottom</source>
        <translation>Über dem Boden</translation>
    </message>
    <message>
        <source>The top of the seat&apos;s middle over the inside on the centreline.</source>
        <translation>Oberkante der Sitzmitte über der Innenseite auf der Mittellinie.</translation>
    </message>
    <message>
        <source>or below the sheer</source>
        <translation>oder unter dem Sprung</translation>
    </message>
    <message>
        <source>The top of the seat&apos;s middle under the line across the sheer.</source>
        <translation>Oberkante der Sitzmitte unter der Linie quer von Sprung zu Sprung.</translation>
    </message>
    <message>
        <source>or above the bottom</source>
        <translation>oder über dem Boden</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Fore and aft, over both rails.</source>
        <translation>Von vorn nach hinten, über beide Holme.</translation>
    </message>
    <message>
        <source>Tilt, degrees</source>
        <translation>Neigung, Grad</translation>
    </message>
    <message>
        <source>With + the forward edge is lower, as one likes it for kneeling.</source>
        <translation>Mit + liegt die vordere Kante tiefer, wie man es zum Knien mag.</translation>
    </message>
    <message>
        <source>Hangs on</source>
        <translation>Befestigt mit</translation>
    </message>
    <message>
        <source>hangers</source>
        <translation>Hängern</translation>
    </message>
    <message>
        <source>cleats</source>
        <translation>Auflagern</translation>
    </message>
    <message>
        <source>Bolts through the inner gunwale with hangers between, or cleats on the side.</source>
        <translation>Bolzen durch das innere Dollbord mit Hängern dazwischen oder Auflager an der Bordwand.</translation>
    </message>
    <message>
        <source>Bolts in</source>
        <translation>Bolzenabstand</translation>
    </message>
    <message>
        <source>half the gunwale</source>
        <translation>halbe Dollbordbreite</translation>
    </message>
    <message>
        <source>From the inner gunwale&apos;s inner edge.</source>
        <translation>Von der Innenkante des inneren Dollbords.</translation>
    </message>
    <message>
        <source>what the boat leaves</source>
        <translation>was das Boot hergibt</translation>
    </message>
    <message>
        <source>Between the side rails.</source>
        <translation>Zwischen den seitlichen Holmen.</translation>
    </message>
    <message>
        <source>Foot room</source>
        <translation>Fußraum</translation>
    </message>
    <message>
        <source>Wanted between the seat&apos;s underside and the bottom, for feet when kneeling.</source>
        <translation>Gewünscht zwischen Sitzunterseite und Boden, für die Füße beim Knien.</translation>
    </message>
    <message>
        <source>Seat %1</source>
        <translation>Sitz %1</translation>
    </message>
    <message>
        <source>Rail</source>
        <translation>Holm</translation>
    </message>
    <message>
        <source>Holes apart</source>
        <translation>Lochabstand</translation>
    </message>
    <message>
        <source>Middle to middle.</source>
        <translation>Von Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Hole</source>
        <translation>Loch</translation>
    </message>
    <message>
        <source>Across; what the cane needs drawn six ways.</source>
        <translation>Durchmesser; was das Flechtrohr bei sechsfachem Durchzug braucht.</translation>
    </message>
    <message>
        <source>From the edge</source>
        <translation>Von der Kante</translation>
    </message>
    <message>
        <source>From the opening to the holes&apos; middles.</source>
        <translation>Von der Öffnung bis zur Lochmitte.</translation>
    </message>
    <message>
        <source>Caning of seat %1</source>
        <translation>Flechtwerk von Sitz %1</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Stab</translation>
    </message>
    <message>
        <source>Thwart %1</source>
        <translation>Ducht %1</translation>
    </message>
    <message>
        <source>Yoke</source>
        <translation>Tragjoch</translation>
    </message>
    <message>
        <source>where she balances</source>
        <translation>am Gleichgewichtspunkt</translation>
    </message>
    <message>
        <source>An inner and an outer stick along the sheer on both sides.</source>
        <translation>Ein innerer und ein äußerer Stab entlang des Sprungs, auf beiden Seiten.</translation>
    </message>
    <message>
        <source>Openings under the inner gunwale, to drain her through.</source>
        <translation>Öffnungen unter dem inneren Dollbord, damit Wasser ablaufen kann.</translation>
    </message>
    <message>
        <source>A bulkhead</source>
        <translation>Ein Schott</translation>
    </message>
    <message>
        <source>Closes off the space in an end.</source>
        <translation>Schließt den Raum in einem Ende ab.</translation>
    </message>
    <message>
        <source>A deck</source>
        <translation>Ein Deck</translation>
    </message>
    <message>
        <source>Covers an end between the gunwales.</source>
        <translation>Deckt ein Ende zwischen den Dollborden.</translation>
    </message>
    <message>
        <source>A seat</source>
        <translation>Ein Sitz</translation>
    </message>
    <message>
        <source>Put amidships at first; give its place.</source>
        <translation>Zunächst mittschiffs; die Stelle angeben.</translation>
    </message>
    <message>
        <source>Holes round its opening, and cane drawn through them.</source>
        <translation>Löcher rings um die Öffnung, durch die Flechtrohr gezogen wird.</translation>
    </message>
    <message>
        <source>A thwart</source>
        <translation>Eine Ducht</translation>
    </message>
    <message>
        <source>A bar across the boat under the inner gunwales.</source>
        <translation>Ein Stab quer durchs Boot unter den inneren Dollborden.</translation>
    </message>
    <message>
        <source>A yoke</source>
        <translation>Ein Tragjoch</translation>
    </message>
    <message>
        <source>To carry her on your shoulders, where she balances.</source>
        <translation>Zum Tragen auf den Schultern, am Gleichgewichtspunkt.</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>a number that no row has; a whole number would do.</source>
        <translation>eine Zahl, die keine Reihe hat; möglich wäre eine ganze Zahl.</translation>
    </message>
    <message>
        <source>Only at</source>
        <translation>Nur bei</translation>
    </message>
    <message>
        <source>Places of the moulds in the table&apos;s x, one behind the other with semicolons between; instead of a spacing.</source>
        <translation>Stellen der Mallen als x der Tabelle, durch Strichpunkte getrennt; statt eines Abstands.</translation>
    </message>
    <message>
        <source>see above</source>
        <translation>siehe oben</translation>
    </message>
    <message>
        <source>%1; %2 would do.</source>
        <translation>%1; möglich wäre %2.</translation>
    </message>
    <message>
        <source>Thickness of the board that moulds and stem forms are sawn from.</source>
        <translation>Dicke der Platte, aus der Mallen und Stevenformen gesägt werden.</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>A mould stands at every multiple of this from the bow. Left empty, one stands at every station of the table.</source>
        <translation>An jedem Vielfachen davon, vom Bug gezählt, steht ein Mall. Bleibt das Feld leer, steht an jedem Spant der Tabelle eines.</translation>
    </message>
    <message>
        <source>at every station</source>
        <translation>an jedem Spant</translation>
    </message>
    <message>
        <source>Between parts</source>
        <translation>Zwischen Teilen</translation>
    </message>
    <message>
        <source>Kept free between two parts on a sheet: the saw&apos;s cut and room to steer it.</source>
        <translation>Was zwischen zwei Teilen auf einer Platte frei bleibt: der Sägeschnitt und Platz, die Säge zu führen.</translation>
    </message>
    <message>
        <source>Patterns</source>
        <translation>Schablonen</translation>
    </message>
    <message>
        <source>half, to be turned over</source>
        <translation>halb, zum Umwenden</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>ganz</translation>
    </message>
    <message>
        <source>A half pattern is drawn round twice, mirrored about the centreline, and so comes out alike on both sides.</source>
        <translation>Eine halbe Schablone wird zweimal umrissen, das zweite Mal an der Mittellinie gespiegelt; so werden beide Seiten gleich.</translation>
    </message>
    <message>
        <source>Moulds</source>
        <translation>Mallen</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Across the boat; the beam or ladder the moulds stand on.</source>
        <translation>Quer zum Boot; der Balken oder die Leiter, worauf die Mallen stehen.</translation>
    </message>
    <message>
        <source>From its foot to its top.</source>
        <translation>Vom Fuß bis zur Oberkante.</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Freiraum</translation>
    </message>
    <message>
        <source>Between its top and the highest point of the sheer: room for clamps and hands below the first strip.</source>
        <translation>Zwischen Oberkante und höchstem Punkt des Sprungs: Platz für Zwingen und Hände unter der ersten Leiste.</translation>
    </message>
    <message>
        <source>Strongback</source>
        <translation>Helling</translation>
    </message>
    <message>
        <source>Apart</source>
        <translation>Lochabstand</translation>
    </message>
    <message>
        <source>Along the mould&apos;s edge.</source>
        <translation>Entlang der Kante des Malls.</translation>
    </message>
    <message>
        <source>To the hole&apos;s middle.</source>
        <translation>Bis zur Mitte des Lochs.</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>What the clamp or cord needs.</source>
        <translation>Was Zwinge oder Schnur braucht.</translation>
    </message>
    <message>
        <source>Holes for clamps</source>
        <translation>Löcher für Zwingen</translation>
    </message>
    <message>
        <source>The longer side of the sheet.</source>
        <translation>Die längere Seite der Platte.</translation>
    </message>
    <message>
        <source>The shorter side of the sheet.</source>
        <translation>Die kürzere Seite der Platte.</translation>
    </message>
    <message>
        <source>To be had</source>
        <translation>Zu haben</translation>
    </message>
    <message>
        <source>as many as needed</source>
        <translation>so viele wie nötig</translation>
    </message>
    <message>
        <source>How many such sheets there are; the first size is begun first.</source>
        <translation>Wie viele solche Platten es gibt; die erste Größe wird zuerst angeschnitten.</translation>
    </message>
    <message>
        <source>Sheets of board %1</source>
        <translation>Platten %1</translation>
    </message>
    <message>
        <source>Another size of sheet</source>
        <translation>Noch eine Plattengröße</translation>
    </message>
    <message>
        <source>Such as offcuts you have; 8 by 4 ft at first.</source>
        <translation>Etwa vorhandene Reststücke; zunächst 8 mal 4 ft (2440 mal 1220 mm).</translation>
    </message>
    <message>
        <source>Small holes along every mould&apos;s edge, to hook a clamp or a cord into.</source>
        <translation>Kleine Löcher entlang der Kante jedes Malls, um eine Zwinge oder Schnur einzuhängen.</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Of the milled strip.</source>
        <translation>Der gefrästen Leiste.</translation>
    </message>
    <message>
        <source>From edge to edge, bead included.</source>
        <translation>Von Kante zu Kante, samt Rundung.</translation>
    </message>
    <message>
        <source>Covers</source>
        <translation>Deckbreite</translation>
    </message>
    <message>
        <source>What a strip covers once its bead sits in its neighbour&apos;s cove; square-edged strips cover their full width.</source>
        <translation>Was eine Leiste deckt, wenn ihre Rundung in der Kehle der Nachbarin sitzt; rechtkantige Leisten decken ihre volle Breite.</translation>
    </message>
    <message>
        <source>Of all strips that no other rule names.</source>
        <translation>Aller Leisten, die keine andere Regel nennt.</translation>
    </message>
    <message>
        <source>The strip</source>
        <translation>Die Leiste</translation>
    </message>
    <message>
        <source>Saw takes</source>
        <translation>Schnittfuge</translation>
    </message>
    <message>
        <source>Planer takes</source>
        <translation>Hobelabnahme</translation>
    </message>
    <message>
        <source>Off a ripped strip&apos;s thickness, both faces together.</source>
        <translation>Von der Dicke einer aufgetrennten Leiste, beide Seiten zusammen.</translation>
    </message>
    <message>
        <source>Straight edge</source>
        <translation>Gerade Kante</translation>
    </message>
    <message>
        <source>Taken off the board&apos;s width for a straight edge before ripping.</source>
        <translation>Von der Brettbreite für eine gerade Kante vor dem Auftrennen.</translation>
    </message>
    <message>
        <source>Surfacing</source>
        <translation>Aushobeln</translation>
    </message>
    <message>
        <source>Taken off the board&apos;s thickness, both faces together; nothing where boards are bought planed.</source>
        <translation>Von der Brettdicke, beide Seiten zusammen; nichts, wenn die Bretter gehobelt gekauft werden.</translation>
    </message>
    <message>
        <source>Each end</source>
        <translation>Je Ende</translation>
    </message>
    <message>
        <source>Lost at each end of a board to checks and to the planer&apos;s snipe.</source>
        <translation>Was an jedem Brettende durch Risse und Hobelschlag verloren geht.</translation>
    </message>
    <message>
        <source>Strips beyond those needed; 8 to 15 percent is common.</source>
        <translation>Leisten über den Bedarf hinaus; 8 bis 15 Prozent sind üblich.</translation>
    </message>
    <message>
        <source>Milling</source>
        <translation>Zuschnitt</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>Length of a scarf over the strip&apos;s thickness; 8 is common.</source>
        <translation>Länge einer Schäftung zur Dicke der Leiste; 8 ist üblich.</translation>
    </message>
    <message>
        <source>Longest piece</source>
        <translation>Längstes Stück</translation>
    </message>
    <message>
        <source>the board&apos;s length</source>
        <translation>die Länge des Bretts</translation>
    </message>
    <message>
        <source>The longest piece your shop can turn round.</source>
        <translation>Das längste Stück, das sich in der Werkstatt wenden lässt.</translation>
    </message>
    <message>
        <source>Shortest piece</source>
        <translation>Kürzestes Stück</translation>
    </message>
    <message>
        <source>No piece of a scarfed strip is shorter.</source>
        <translation>Kein Stück einer geschäfteten Leiste ist kürzer.</translation>
    </message>
    <message>
        <source>A joint is worth</source>
        <translation>Ein Stoß ist wert</translation>
    </message>
    <message>
        <source>Length of strip you would rather waste than glue one more scarf; 0 for the least wood.</source>
        <translation>So viel Leiste wird lieber verschwendet als noch eine Schäftung geleimt; 0 für den geringsten Holzverbrauch.</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Beide Seiten</translation>
    </message>
    <message>
        <source>joined alike</source>
        <translation>gleich gestoßen</translation>
    </message>
    <message>
        <source>joined in turn</source>
        <translation>versetzt gestoßen</translation>
    </message>
    <message>
        <source>book-matched</source>
        <translation>gestürzt</translation>
    </message>
    <message>
        <source>Port joined in the same mould bays as starboard, as in a mirror; in others; or alike, a pair cut side by side from one board</source>
        <translation>Backbord in denselben Mallfeldern gestoßen wie Steuerbord, wie im Spiegel; oder in anderen; oder gleich, ein Paar nebeneinander aus einem Brett</translation>
    </message>
    <message>
        <source>Scarfs</source>
        <translation>Schäftungen</translation>
    </message>
    <message>
        <source>Short; tells the boards apart on the sheets.</source>
        <translation>Kurz; hält die Bretter auf den Blättern auseinander.</translation>
    </message>
    <message>
        <source>Strips of a wood are cut from boards of it.</source>
        <translation>Leisten eines Holzes werden aus Brettern dieses Holzes geschnitten.</translation>
    </message>
    <message>
        <source>As it measures, not as it is called.</source>
        <translation>Das wirkliche Maß, nicht das Nennmaß.</translation>
    </message>
    <message>
        <source>As it measures: a 1x6 is 5 1/2 in wide.</source>
        <translation>Das wirkliche Maß: ein 1x6 ist 5 1/2 in (140 mm) breit.</translation>
    </message>
    <message>
        <source>Of one board.</source>
        <translation>Eines Bretts.</translation>
    </message>
    <message>
        <source>Charged as</source>
        <translation>Berechnet als</translation>
    </message>
    <message>
        <source>The thickness that board feet are reckoned with; at least 1 in.</source>
        <translation>Die Dicke, nach der Board Feet gerechnet werden; mindestens 1 in (25,4 mm).</translation>
    </message>
    <message>
        <source>How many such boards you can get.</source>
        <translation>Wie viele solche Bretter zu haben sind.</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Of one board, in whatever money you count.</source>
        <translation>Für ein Brett, in beliebiger Währung.</translation>
    </message>
    <message>
        <source>Boards %1</source>
        <translation>Bretter %1</translation>
    </message>
    <message>
        <source>Of these rows, over what stands before.</source>
        <translation>Dieser Reihen; hat Vorrang vor dem, was davor steht.</translation>
    </message>
    <message>
        <source>From row</source>
        <translation>Von Reihe</translation>
    </message>
    <message>
        <source>Counted from the start toward the keel; - above it.</source>
        <translation>Vom Anfang zum Kiel gezählt; - darüber.</translation>
    </message>
    <message>
        <source>To row</source>
        <translation>Bis Reihe</translation>
    </message>
    <message>
        <source>This row included.</source>
        <translation>Einschließlich dieser Reihe.</translation>
    </message>
    <message>
        <source>Every</source>
        <translation>Jede</translation>
    </message>
    <message>
        <source>1 for each of the rows, 2 for every second, counted from the first.</source>
        <translation>1 für jede der Reihen, 2 für jede zweite, von der ersten an.</translation>
    </message>
    <message>
        <source>Wood of some rows %1</source>
        <translation>Holz einiger Reihen %1</translation>
    </message>
    <message>
        <source>Boards</source>
        <translation>Bretter</translation>
    </message>
    <message>
        <source>Boards you can have, 1x6 of 12 ft at first: then the bench tells how many to buy.</source>
        <translation>Bretter, die zu haben sind, zunächst 1x6 von 12 ft (3,66 m); dann sagt die Werkbank, wie viele zu kaufen sind.</translation>
    </message>
    <message>
        <source>Another wood for some rows</source>
        <translation>Ein anderes Holz für einige Reihen</translation>
    </message>
    <message>
        <source>Such as an accent of light strips below the sheer.</source>
        <translation>Etwa ein Zierstreifen aus hellen Leisten unter dem Sprung.</translation>
    </message>
    <message>
        <source>The planking unrolled</source>
        <translation>Die Beplankung, abgewickelt</translation>
    </message>
    <message>
        <source>closing from row %1</source>
        <translation>Schluss ab Reihe %1</translation>
    </message>
    <message>
        <source>woven to row %1</source>
        <translation>verschränkt bis Reihe %1</translation>
    </message>
    <message>
        <source>port</source>
        <translation>Backbord</translation>
    </message>
    <message>
        <source>starboard</source>
        <translation>Steuerbord</translation>
    </message>
    <message>
        <source>stations as in the table</source>
        <translation>Spanten wie in der Tabelle</translation>
    </message>
    <message>
        <source>%1, %2. Edge bend %3: %4.</source>
        <translation>%1, %2. Hochkantbiegung %3: %4.</translation>
    </message>
    <message>
        <source>start: drag to move</source>
        <translation>Anfang: ziehen, um ihn zu verschieben</translation>
    </message>
    <message>
        <source> below the sheer: </source>
        <translation> unter dem Sprung: </translation>
    </message>
    <message>
        <source>hardest edge bend %1, row %2</source>
        <translation>stärkste Hochkantbiegung %1, Reihe %2</translation>
    </message>
    <message>
        <source>no line can be laid from there</source>
        <translation>von dort lässt sich keine Linie legen</translation>
    </message>
    <message>
        <source>Length to cut</source>
        <translation>Zuschnittlänge</translation>
    </message>
    <message>
        <source>%1 on the boat</source>
        <translation>%1 am Boot</translation>
    </message>
    <message>
        <source>Measured along the middle of the strip; laps and trim at both ends are in it. Good to a few millimetres, as good as the boat stands on its moulds.</source>
        <translation>Entlang der Leistenmitte gemessen, Überlappung und Beschnitt an beiden Enden eingeschlossen. Auf wenige Millimeter genau, so genau, wie das Boot auf seinen Mallen steht.</translation>
    </message>
    <message>
        <source>full width from end to end, before the ends are cut</source>
        <translation>volle Breite von Ende zu Ende, ehe die Enden geschnitten sind</translation>
    </message>
    <message>
        <source>at its widest, %1 from its bow end; it runs out to a point at both ends</source>
        <translation>an der breitesten Stelle, %1 vom Bugende; läuft an beiden Enden spitz aus</translation>
    </message>
    <message>
        <source>at its widest, %1 from its bow end; it runs out to a point at the %2</source>
        <translation>an der breitesten Stelle, %1 vom Bugende; läuft am %2 spitz aus</translation>
    </message>
    <message>
        <source>at its widest; narrowest %1, %2 from its bow end</source>
        <translation>an der breitesten Stelle; am schmalsten %1, %2 vom Bugende</translation>
    </message>
    <message>
        <source>What the strip covers, square to its middle, with its bead set in the neighbour&apos;s cove.</source>
        <translation>Was die Leiste deckt, quer zu ihrer Mitte, mit der Rundung in der Kehle der Nachbarin.</translation>
    </message>
    <message>
        <source>Edge bend</source>
        <translation>Hochkantbiegung</translation>
    </message>
    <message>
        <source>radius %1</source>
        <translation>Radius %1</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>%1: %2; most %3, hollow toward the %4</source>
        <translation>%1: %2; am stärksten %3, hohl zum %4 hin</translation>
    </message>
    <message>
        <source>keel</source>
        <translation>Kiel</translation>
    </message>
    <message>
        <source>sheer</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <source>%1: straight</source>
        <translation>%1: gerade</translation>
    </message>
    <message>
        <source>How far the uncut edge stands off a straight batten of that length where the strip bends most across its width. Holding it there takes about %1 over one mould bay, give or take a third, as wood goes.</source>
        <translation>Wie weit die unbeschnittene Kante von einer geraden Latte dieser Länge absteht, wo sich die Leiste am stärksten über ihre Breite biegt. Sie dort zu halten, erfordert etwa %1 über ein Mallfeld, auf ein Drittel genau, wie Holz eben ist.</translation>
    </message>
    <message>
        <source>Twist</source>
        <translation>Verdrehung</translation>
    </message>
    <message>
        <source>most %1</source>
        <translation>am stärksten %1</translation>
    </message>
    <message>
        <source>How fast the strip turns about its own length. Clamps take up to about 18° per foot (60° per metre) out of a quarter-inch strip.</source>
        <translation>Wie schnell sich die Leiste um ihre Längsachse dreht. Zwingen halten eine Viertelzoll-Leiste (6 mm) bis etwa 18° je Fuß (60° je Meter).</translation>
    </message>
    <message>
        <source>Bend over the moulds</source>
        <translation>Biegung über die Mallen</translation>
    </message>
    <message>
        <source>tightest %1</source>
        <translation>am engsten %1</translation>
    </message>
    <message>
        <source>Bending the easy way, flat over the moulds.</source>
        <translation>Die leichte Biegung, flach über die Mallen.</translation>
    </message>
    <message>
        <source>Strain in the wood</source>
        <translation>Dehnung im Holz</translation>
    </message>
    <message>
        <source>of what it should be asked to take, most %1</source>
        <translation>der zumutbaren Dehnung, am meisten %1</translation>
    </message>
    <message>
        <source>Edge bend, bend and twist together, against the allowed strain of the wood table. Clear wood differs by a quarter either way; a knot has no place in this strip if it is over 70 %.</source>
        <translation>Hochkantbiegung, Biegung und Verdrehung zusammen, gegen die zulässige Dehnung der Holztabelle. Fehlerfreies Holz schwankt um ein Viertel; über 70 % gehört kein Ast in diese Leiste.</translation>
    </message>
    <message>
        <source>Bow end</source>
        <translation>Bugende</translation>
    </message>
    <message>
        <source>Stern end</source>
        <translation>Heckende</translation>
    </message>
    <message>
        <source>%1, %2 up</source>
        <translation>%1, %2 hoch</translation>
    </message>
    <message>
        <source>; cut %1, bevel %2</source>
        <translation>; Schnitt %1, Schmiege %2</translation>
    </message>
    <message>
        <source>; fitted against the other side, which passes</source>
        <translation>; an die andere Seite angepasst, die durchläuft</translation>
    </message>
    <message>
        <source>; laps %1 past the centreline</source>
        <translation>; überlappt um %1 über die Mittellinie</translation>
    </message>
    <message>
        <source>The cut is the angle between the strip and the line it ends on, laid flat; the bevel is how far the end face leans from square. Cut a little long and pare to fit.</source>
        <translation>Der Schnitt ist der Winkel zwischen der Leiste und der Linie, an der sie endet, flach gelegt; die Schmiege ist, wie weit die Endfläche aus dem rechten Winkel steht. Etwas zu lang schneiden und mit dem Stecheisen einpassen.</translation>
    </message>
    <message>
        <source> Rounding of the table moves it by %1.</source>
        <translation> Das Runden der Tabellenwerte verschiebt es um %1.</translation>
    </message>
    <message>
        <source>%1 · %2 · piece %3 of %4 to lay</source>
        <translation>%1 · %2 · Stück %3 von %4</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Nothing to worry about</source>
        <translation>Nichts Bedenkliches</translation>
    </message>
    <message>
        <source>bow weave ends</source>
        <translation>Bug verschränkt bis</translation>
    </message>
    <message>
        <source>stern weave ends</source>
        <translation>Heck verschränkt bis</translation>
    </message>
    <message>
        <source>bow closing begins</source>
        <translation>Bugschluss beginnt</translation>
    </message>
    <message>
        <source>stern closing begins</source>
        <translation>Heckschluss beginnt</translation>
    </message>
    <message>
        <source>shutter</source>
        <translation>Schlussleiste</translation>
    </message>
    <message>
        <source>weave ends</source>
        <translation>Verschränkung endet</translation>
    </message>
    <message>
        <source>closing begins</source>
        <translation>Schluss beginnt</translation>
    </message>
    <message>
        <source>There is nothing to lay</source>
        <translation>Es gibt nichts zu legen</translation>
    </message>
    <message>
        <source>All %1 pieces are laid</source>
        <translation>Alle %1 Stücke liegen</translation>
    </message>
    <message>
        <source>over both sides</source>
        <translation>über beide Seiten</translation>
    </message>
    <message>
        <source>The shutter next: %1, %2</source>
        <translation>Schlussleiste %1, %2</translation>
    </message>
    <message>
        <source>Row %1 above the start: %2 next</source>
        <translation>Reihe %1 über dem Anfang: nun %2</translation>
    </message>
    <message>
        <source>Row %1 of %2, %3 next (%4)</source>
        <translation>Reihe %1 von %2, nun %3 (%4)</translation>
    </message>
    <message>
        <source>Lift everything (Home)</source>
        <translation>Alles abheben (Pos1)</translation>
    </message>
    <message>
        <source>Lift the last piece (Left; Shift for the row)</source>
        <translation>Das letzte Stück abheben (Pfeil links; mit Umschalt die Reihe)</translation>
    </message>
    <message>
        <source>Lay piece after piece (Space)</source>
        <translation>Stück um Stück legen (Leertaste)</translation>
    </message>
    <message>
        <source>Lay the next piece (Right; Shift for the row)</source>
        <translation>Das nächste Stück legen (Pfeil rechts; mit Umschalt die Reihe)</translation>
    </message>
    <message>
        <source>Lay everything (End)</source>
        <translation>Alles legen (Ende)</translation>
    </message>
    <message>
        <source>Pieces laid</source>
        <translation>Gelegte Stücke</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Spant</translation>
    </message>
    <message>
        <source>From bow</source>
        <translation>Vom Bug</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Mean off</source>
        <translation>Im Mittel</translation>
    </message>
    <message>
        <source>Most off</source>
        <translation>Höchstens</translation>
    </message>
    <message>
        <source>Open a project, and this bench shows how its table of offsets was lofted.</source>
        <translation>Erst ein Projekt öffnen; dann zeigt diese Werkbank, wie seine Aufmaßtabelle gestrakt wurde.</translation>
    </message>
    <message>
        <source>The lofted hull is %1 long and %2 wide. It runs within %3 of the table on average and %4 at most; rounding in the table alone accounts for %5. In the last column + is outside the loft, − inside.</source>
        <translation>Der gestrakte Rumpf ist %1 lang und %2 breit. Er weicht im Mittel um %3, höchstens um %4 von der Tabelle ab; das Runden der Tabellenwerte allein macht %5 aus. In der letzten Spalte heißt + außerhalb des Straks, − innerhalb.</translation>
    </message>
    <message>
        <source>Nothing odd was found in the table</source>
        <translation>In der Tabelle fand sich nichts Auffälliges</translation>
    </message>
    <message>
        <source>Found in the table: %1</source>
        <translation>In der Tabelle gefunden: %1</translation>
    </message>
    <message>
        <source>The first strip follows the sheer, and every strip below runs parallel to it.</source>
        <translation>Die erste Leiste folgt dem Sprung, und jede darunter läuft parallel dazu.</translation>
    </message>
    <message>
        <source>The first strip lies as a strip wants to lie, without edge bend. Above it come short fillers. Type how far below the sheer, or drag the line in the map.</source>
        <translation>Die erste Leiste liegt, wie eine Leiste liegen will, ohne Hochkantbiegung. Darüber kommen kurze Füllleisten. Angeben, wie weit unter dem Sprung, oder die Linie auf der Karte ziehen.</translation>
    </message>
    <message>
        <source>As the unbent line, but held to a bend: amidships, and growing toward the ends with the square and the fourth power of the way there; + toward the keel.</source>
        <translation>Wie die ungebogene Linie, aber mit einer vorgegebenen Biegung: mittschiffs, und zu den Enden hin mit dem Quadrat und der vierten Potenz des Wegs wachsend; + zum Kiel.</translation>
    </message>
    <message>
        <source>Both ways from the knuckle: the bottom below it, the sides above. For hulls that have one.</source>
        <translation>Vom Knick aus nach beiden Seiten: unter ihm der Boden, über ihm die Seiten. Für Rümpfe, die einen haben.</translation>
    </message>
    <message>
        <source>Searches the line from which the hardest strip comes out easiest. This takes a while.</source>
        <translation>Sucht die Linie, mit der die schwierigste Leiste am wenigsten Mühe macht. Das dauert eine Weile.</translation>
    </message>
    <message>
        <source>hardest strip %1, edge bend %2</source>
        <translation>schwierigste Leiste %1, Hochkantbiegung %2</translation>
    </message>
    <message>
        <source>no strip is bent edgewise</source>
        <translation>keine Leiste wird hochkant gebogen</translation>
    </message>
    <message>
        <source>%1 rows below the start, %2 above</source>
        <translation>%1 Reihen unter dem Anfang, %2 darüber</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 Reihen</translation>
    </message>
    <message>
        <source>no strip needs a taper</source>
        <translation>keine Leiste braucht eine Verjüngung</translation>
    </message>
    <message>
        <source>%1 rows a side tapered</source>
        <translation>%1 Reihen je Seite verjüngt</translation>
    </message>
    <message>
        <source>last plank %1 wide</source>
        <translation>letzte Leiste %1 breit</translation>
    </message>
    <message>
        <source>What it comes to</source>
        <translation>Was dabei herauskommt</translation>
    </message>
    <message>
        <source>along the sheer</source>
        <translation>entlang des Sprungs</translation>
    </message>
    <message>
        <source>along the knuckle</source>
        <translation>entlang des Knicks</translation>
    </message>
    <message>
        <source>an unbent line</source>
        <translation>eine ungebogene Linie</translation>
    </message>
    <message>
        <source>a bent line</source>
        <translation>eine gebogene Linie</translation>
    </message>
    <message>
        <source>the easiest line</source>
        <translation>die günstigste Linie</translation>
    </message>
    <message>
        <source>the knuckle</source>
        <translation>der Knick</translation>
    </message>
    <message>
        <source>Where the planking starts</source>
        <translation>Wo die Beplankung anfängt</translation>
    </message>
    <message>
        <source>First strip</source>
        <translation>Erste Leiste</translation>
    </message>
    <message>
        <source>The line the upper edge of row 1 follows</source>
        <translation>Die Linie, der die Oberkante von Reihe 1 folgt</translation>
    </message>
    <message>
        <source>Girth from the sheer down to the line, around the widest section</source>
        <translation>Umfang vom Sprung hinab zur Linie, am breitesten Querschnitt</translation>
    </message>
    <message>
        <source>amidships</source>
        <translation>mittschiffs</translation>
    </message>
    <message>
        <source>square</source>
        <translation>quadratisch</translation>
    </message>
    <message>
        <source>fourth</source>
        <translation>vierte</translation>
    </message>
    <message>
        <source>Edge bend per metre, %1</source>
        <translation>Hochkantbiegung je Meter, %1</translation>
    </message>
    <message>
        <source>Bend per metre</source>
        <translation>Biegung je Meter</translation>
    </message>
    <message>
        <source>One over the radius in metres; + toward the keel</source>
        <translation>Kehrwert des Radius in Metern; + zum Kiel</translation>
    </message>
    <message>
        <source>Set start lines side by side</source>
        <translation>Anfangslinien nebeneinanderstellen</translation>
    </message>
    <message>
        <source>Searches good lines, planks the boat from each, and shows what they ask of you</source>
        <translation>Sucht gute Linien, beplankt das Boot von jeder aus und zeigt, was sie verlangen</translation>
    </message>
    <message>
        <source>none, all at full width</source>
        <translation>keine, volle Breite</translation>
    </message>
    <message>
        <source>toward the ends only</source>
        <translation>nur zu den Enden hin</translation>
    </message>
    <message>
        <source>anywhere along it</source>
        <translation>überall</translation>
    </message>
    <message>
        <source>from wood and strip</source>
        <translation>aus Holz und Leiste</translation>
    </message>
    <message>
        <source>from the strip</source>
        <translation>aus der Leiste</translation>
    </message>
    <message>
        <source>Tapers and their limits</source>
        <translation>Verjüngungen und ihre Grenzen</translation>
    </message>
    <message>
        <source>Tapers</source>
        <translation>Verjüngungen</translation>
    </message>
    <message>
        <source>Planing a few strips narrower takes edge bend out of those below</source>
        <translation>Einige Leisten schmaler gehobelt nehmen denen darunter Hochkantbiegung ab</translation>
    </message>
    <message>
        <source>Tightest bend</source>
        <translation>Engste Biegung</translation>
    </message>
    <message>
        <source>Smallest radius of edge bend you allow</source>
        <translation>Der kleinste erlaubte Radius der Hochkantbiegung</translation>
    </message>
    <message>
        <source>Narrowest strip</source>
        <translation>Schmalste Leiste</translation>
    </message>
    <message>
        <source>No strip is planed narrower than this</source>
        <translation>Keine Leiste wird schmaler gehobelt</translation>
    </message>
    <message>
        <source>woven</source>
        <translation>verschränkt</translation>
    </message>
    <message>
        <source>mitred</source>
        <translation>auf Gehrung</translation>
    </message>
    <message>
        <source>on a stem piece</source>
        <translation>auf einem Steven</translation>
    </message>
    <message>
        <source>both sides together</source>
        <translation>beide Seiten zusammen</translation>
    </message>
    <message>
        <source>run over, then fit</source>
        <translation>durchlaufen, dann einpassen</translation>
    </message>
    <message>
        <source>herringbone</source>
        <translation>Fischgrät</translation>
    </message>
    <message>
        <source>split bottom</source>
        <translation>geteilter Boden</translation>
    </message>
    <message>
        <source>Ends and bottom</source>
        <translation>Enden und Boden</translation>
    </message>
    <message>
        <source>Ends at the bow</source>
        <translation>Enden am Bug</translation>
    </message>
    <message>
        <source>How port and starboard meet at the bow</source>
        <translation>Wie Backbord und Steuerbord sich am Bug treffen</translation>
    </message>
    <message>
        <source>Ends at the stern</source>
        <translation>Enden am Heck</translation>
    </message>
    <message>
        <source>How port and starboard meet at the stern</source>
        <translation>Wie Backbord und Steuerbord sich am Heck treffen</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <source>How the strips of both sides meet on the centreline</source>
        <translation>Wie die Leisten beider Seiten sich auf der Mittellinie treffen</translation>
    </message>
    <message>
        <source>Last plank of a wished width</source>
        <translation>Letzte Leiste in gewünschter Breite</translation>
    </message>
    <message>
        <source>Moves the start so that the last plank comes out between these parts of a strip</source>
        <translation>Verschiebt den Anfang so, dass die Breite der letzten Leiste zwischen diesen Bruchteilen einer Leistenbreite liegt</translation>
    </message>
    <message>
        <source>Least part of a strip</source>
        <translation>Kleinster Bruchteil einer Leiste</translation>
    </message>
    <message>
        <source>Most part of a strip</source>
        <translation>Größter Bruchteil einer Leiste</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Parts of a strip</source>
        <translation>Leistenbruchteile</translation>
    </message>
    <message>
        <source>%1

before the last change:
%2</source>
        <translation>%1

vor der letzten Änderung:
%2</translation>
    </message>
    <message>
        <source>unbent, %1 down</source>
        <translation>ungebogen, %1 tief</translation>
    </message>
    <message>
        <source>bent, %1 down</source>
        <translation>gebogen, %1 tief</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>Hardest edge bend</source>
        <translation>Stärkste Hochkantbiegung</translation>
    </message>
    <message>
        <source>Rows to clamp</source>
        <translation>mit Zwingen</translation>
    </message>
    <message>
        <source>Pieces above</source>
        <translation>Stücke darüber</translation>
    </message>
    <message>
        <source>Rows to taper</source>
        <translation>verjüngt</translation>
    </message>
    <message>
        <source>Strip to cut</source>
        <translation>Leistenbedarf</translation>
    </message>
    <message>
        <source>Last plank</source>
        <translation>Letzte Leiste</translation>
    </message>
    <message>
        <source>The line the first strip follows</source>
        <translation>Die Linie, der die erste Leiste folgt</translation>
    </message>
    <message>
        <source>Of any strip at full width, and the row it is in</source>
        <translation>Einer Leiste in voller Breite, und die Reihe, in der sie liegt</translation>
    </message>
    <message>
        <source>Rows a side that need more than hands, tapers left out</source>
        <translation>Reihen je Seite, die mehr als Hände brauchen, ohne Verjüngungen</translation>
    </message>
    <message>
        <source>Short pieces a side between the start and the sheer; in brackets those under 6 mm wide</source>
        <translation>Kurze Stücke je Seite zwischen Anfang und Sprung; in Klammern die unter 6 mm Breite</translation>
    </message>
    <message>
        <source>Rows a side to plane narrower, so that no strip is bent past the limit</source>
        <translation>Reihen je Seite, die schmaler zu hobeln sind, damit keine Leiste über die Grenze gebogen wird</translation>
    </message>
    <message>
        <source>All pieces of both sides together</source>
        <translation>Alle Stücke beider Seiten zusammen</translation>
    </message>
    <message>
        <source>Where it is widest</source>
        <translation>Wo sie am breitesten ist</translation>
    </message>
    <message>
        <source>Start lines side by side, no strip tapered</source>
        <translation>Anfangslinien nebeneinander, ohne Verjüngungen</translation>
    </message>
    <message>
        <source>Start lines side by side</source>
        <translation>Anfangslinien nebeneinander</translation>
    </message>
    <message>
        <source>Start here</source>
        <translation>Hier anfangen</translation>
    </message>
    <message>
        <source>Plank her from the chosen line</source>
        <translation>Das Boot von der gewählten Linie aus beplanken</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source> · now</source>
        <translation> · jetzt</translation>
    </message>
    <message>
        <source>%1, row %2</source>
        <translation>%1, Reihe %2</translation>
    </message>
    <message>
        <source>can&apos;t be met</source>
        <translation>nicht einzuhalten</translation>
    </message>
    <message>
        <source>Click for what this means and how sure it is</source>
        <translation>Klicken zeigt, was das heißt und wie sicher es ist</translation>
    </message>
    <message>
        <source>The strip in hand</source>
        <translation>Die gewählte Leiste</translation>
    </message>
    <message>
        <source>Click a strip on the boat or on the map, and what there is to know about it stands here.</source>
        <translation>Auf eine Leiste am Boot oder auf der Karte klicken; hier steht dann, was über sie zu wissen ist.</translation>
    </message>
    <message>
        <source>How to hold it</source>
        <translation>Wie sie zu halten ist</translation>
    </message>
    <message>
        <source>%1 from the bow</source>
        <translation>%1 vom Bug</translation>
    </message>
    <message>
        <source>%1 over %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>%1° per foot</source>
        <translation>%1° je Fuß</translation>
    </message>
    <message>
        <source>%1° per metre</source>
        <translation>%1° je Meter</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>Reihe %1</translation>
    </message>
    <message>
        <source>row %1 above the start</source>
        <translation>Reihe %1 über dem Anfang</translation>
    </message>
    <message>
        <source>, port</source>
        <translation>, Backbord</translation>
    </message>
    <message>
        <source>, starboard</source>
        <translation>, Steuerbord</translation>
    </message>
    <message>
        <source>, over both sides</source>
        <translation>, über beide Seiten</translation>
    </message>
    <message>
        <source>strip laid whole, planed back to the centreline</source>
        <translation>ganz verlegte Leiste, auf die Mittellinie zurückgehobelt</translation>
    </message>
    <message>
        <source>full strip</source>
        <translation>volle Leiste</translation>
    </message>
    <message>
        <source>tapered strip</source>
        <translation>verjüngte Leiste</translation>
    </message>
    <message>
        <source>stealer</source>
        <translation>verlorene Leiste</translation>
    </message>
    <message>
        <source>filler at the sheer</source>
        <translation>Füllleiste am Sprung</translation>
    </message>
    <message>
        <source>shutter, the closing plank</source>
        <translation>Schlussleiste</translation>
    </message>
    <message>
        <source>on the stem</source>
        <translation>am Steven</translation>
    </message>
    <message>
        <source>on the keel line</source>
        <translation>auf der Kiellinie</translation>
    </message>
    <message>
        <source>on the transom</source>
        <translation>am Spiegel</translation>
    </message>
    <message>
        <source>on the sheer</source>
        <translation>am Sprung</translation>
    </message>
    <message>
        <source>on its neighbour</source>
        <translation>an der Nachbarin</translation>
    </message>
    <message>
        <source>in a nib</source>
        <translation>in einer Kerbe</translation>
    </message>
    <message>
        <source>Sheerlay: shop mode</source>
        <translation>Sheerlay: Werkstatt</translation>
    </message>
    <message>
        <source>Shop mode</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>The strip before (left arrow)</source>
        <translation>Die Leiste davor (Pfeil links)</translation>
    </message>
    <message>
        <source>Mark as laid, with today&apos;s date, and go on (Enter)</source>
        <translation>Als gelegt vermerken, mit heutigem Datum, und weiter (Eingabe)</translation>
    </message>
    <message>
        <source>Take the mark back (Backspace)</source>
        <translation>Den Vermerk zurücknehmen (Rücktaste)</translation>
    </message>
    <message>
        <source>Dark on light, or light on dark (L)</source>
        <translation>Dunkel auf hell oder hell auf dunkel (L)</translation>
    </message>
    <message>
        <source>Back to the benches (Esc)</source>
        <translation>Zurück zu den Werkbänken (Esc)</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Not laid after all</source>
        <translation>Doch nicht gelegt</translation>
    </message>
    <message>
        <source>Leave the shop</source>
        <translation>Werkstatt verlassen</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Laid: the last one</source>
        <translation>Gelegt: die letzte</translation>
    </message>
    <message>
        <source>Laid, next</source>
        <translation>Gelegt, weiter</translation>
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
        <source>%1, %2, length to cut %3</source>
        <translation>%1, %2, Zuschnittlänge %3</translation>
    </message>
    <message>
        <source>There is no plan to lay strips by. Open a project first.</source>
        <translation>Noch gibt es keinen Plan, nach dem sich legen ließe. Erst ein Projekt öffnen.</translation>
    </message>
    <message>
        <source>length to cut</source>
        <translation>Zuschnittlänge</translation>
    </message>
    <message>
        <source> · laid</source>
        <translation> · gelegt</translation>
    </message>
    <message>
        <source> · laid %1</source>
        <translation> · gelegt am %1</translation>
    </message>
    <message>
        <source>%1 · piece %2 of %3</source>
        <translation>%1 · Stück %2 von %3</translation>
    </message>
    <message>
        <source>Bow</source>
        <translation>Bug</translation>
    </message>
    <message>
        <source>Stern</source>
        <translation>Heck</translation>
    </message>
    <message>
        <source>, passes</source>
        <translation>, läuft durch</translation>
    </message>
    <message>
        <source>, fitted</source>
        <translation>, angepasst</translation>
    </message>
    <message>
        <source>Twist %1, %2</source>
        <translation>Verdrehung %1, %2</translation>
    </message>
    <message>
        <source>Unsprung, as seen from outside: keel side up, bow to the left; the width is drawn larger.</source>
        <translation>Ungespannt, von außen gesehen: Kielseite oben, Bug links; die Breite ist größer gezeichnet.</translation>
    </message>
    <message>
        <source> Port, shown as its starboard mirror image.</source>
        <translation> Backbord, gezeigt als Spiegelbild der Steuerbordleiste.</translation>
    </message>
    <message>
        <source>The boat can&apos;t be drawn here: this screen offers no OpenGL through X11.
The map below shows the same strips, and everything else works as usual.</source>
        <translation>Das Boot lässt sich hier nicht zeichnen: Dieser Bildschirm bietet kein OpenGL über X11.
Die Karte darunter zeigt dieselben Leisten, und alles andere geht wie gewohnt.</translation>
    </message>
    <message>
        <source>up to %1 (radius %2)</source>
        <translation>bis %1 (Radius %2)</translation>
    </message>
    <message>
        <source>over %1 (radius %2)</source>
        <translation>über %1 (Radius %2)</translation>
    </message>
    <message>
        <source>Edge bend of the uncut edge</source>
        <translation>Hochkantbiegung der unbeschnittenen Kante</translation>
    </message>
    <message>
        <source>Lay some rows, then measure along each mould from the row&apos;s lower edge to the centreline. Type what the tape says at a few stations, and work it out: you see what it does to the rows to come before anything changes.</source>
        <translation>Einige Reihen legen, dann an jedem Mall von der Unterkante der Reihe bis zur Mittellinie messen. Eintragen, was das Maßband an einigen Spanten zeigt, und ausrechnen lassen: Was das für die kommenden Reihen heißt, ist zu sehen, ehe sich etwas ändert.</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Ausrechnen</translation>
    </message>
    <message>
        <source>Accept the new plan</source>
        <translation>Den neuen Plan annehmen</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>The row whose lower edge was measured from; 0 for the bare moulds</source>
        <translation>Die Reihe, von deren Unterkante gemessen wurde; 0 für die leeren Mallen</translation>
    </message>
    <message>
        <source>both sides</source>
        <translation>beiden Seiten</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Measured below row</source>
        <translation>Gemessen unter Reihe</translation>
    </message>
    <message>
        <source>on</source>
        <translation>auf</translation>
    </message>
    <message>
        <source>A round with the tape</source>
        <translation>Eine Runde mit dem Maßband</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Leiste</translation>
    </message>
    <message>
        <source>Length to cut, was</source>
        <translation>Länge bisher</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Edge bend, was</source>
        <translation>Hochkant bisher</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <source>Left by the plan</source>
        <translation>Bleibt nach Plan</translation>
    </message>
    <message>
        <source>The tape says</source>
        <translation>Maßband zeigt</translation>
    </message>
    <message>
        <source>Girth left at station %1</source>
        <translation>Verbleibender Umfang an Spant %1</translation>
    </message>
    <message>
        <source>not there</source>
        <translation>nicht da</translation>
    </message>
    <message>
        <source>%1: %2; %3 would do.</source>
        <translation>%1: %2; möglich wäre %3.</translation>
    </message>
    <message>
        <source>Nothing is typed yet. The tape at two or three stations would do for a start.</source>
        <translation>Noch ist nichts eingetragen. Zwei oder drei Spanten genügen für den Anfang.</translation>
    </message>
    <message>
        <source>Planning the rows to come…</source>
        <translation>Die kommenden Reihen werden geplant…</translation>
    </message>
    <message>
        <source>The reading is kept, but the rows to come stay as they were planned.</source>
        <translation>Die Messung wird aufbewahrt, aber die kommenden Reihen bleiben wie geplant.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Reading below row %1</source>
        <translation>Messung unter Reihe %1</translation>
    </message>
    <message>
        <source>Reading the table…</source>
        <translation>Die Tabelle wird gelesen…</translation>
    </message>
    <message>
        <source>Lofting the hull…</source>
        <translation>Der Rumpf wird gestrakt…</translation>
    </message>
    <message>
        <source>lofted</source>
        <translation>straken</translation>
    </message>
    <message>
        <source>Laying the strips…</source>
        <translation>Die Leisten werden gelegt…</translation>
    </message>
    <message>
        <source>Searching the easiest start… %1 %</source>
        <translation>Der günstigste Anfang wird gesucht… %1 %</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>beplanken</translation>
    </message>
    <message>
        <source>Looking for what would do…</source>
        <translation>Es wird gesucht, was möglich wäre…</translation>
    </message>
    <message>
        <source>Drawing the boat…</source>
        <translation>Das Boot wird gezeichnet…</translation>
    </message>
    <message>
        <source>line %1 · </source>
        <translation>Zeile %1 · </translation>
    </message>
    <message>
        <source>Your changes are not kept beside the file. %1</source>
        <translation>Die Änderungen ließen sich nicht neben der Datei aufbewahren. %1</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Linien</translation>
    </message>
    <message>
        <source>Planking</source>
        <translation>Beplankung</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>Fitting out</source>
        <translation>Ausbau</translation>
    </message>
    <message>
        <source>Millimetres, or feet and inches (U)</source>
        <translation>Millimeter oder Fuß und Zoll (U)</translation>
    </message>
    <message>
        <source>Every strip of the boat, before a board is milled</source>
        <translation>Jede Leiste des Bootes, ehe ein Brett gesägt ist</translation>
    </message>
    <message>
        <source>Open a project…</source>
        <translation>Ein Projekt öffnen…</translation>
    </message>
    <message>
        <source>feet and inches</source>
        <translation>Fuß, Zoll</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source> The boat below is the one from before the change.</source>
        <translation> Das Boot unten ist noch das vor der Änderung.</translation>
    </message>
    <message>
        <source>One thing in %1 can&apos;t be used as it stands.</source>
        <translation>Eine Angabe in %1 ist so nicht zu gebrauchen.</translation>
    </message>
    <message>
        <source>%1 things in %2 can&apos;t be used as they stand.</source>
        <translation>%1 Angaben in %2 sind so nicht zu gebrauchen.</translation>
    </message>
    <message>
        <source>The hull of %1 can&apos;t be %2.</source>
        <translation>Der Rumpf von %1 lässt sich nicht %2.</translation>
    </message>
    <message>
        <source>%1 was read, with this left out or odd:</source>
        <translation>%1 wurde gelesen; Folgendes blieb weg oder ist auffällig:</translation>
    </message>
    <message>
        <source>Open a project</source>
        <translation>Ein Projekt öffnen</translation>
    </message>
    <message>
        <source>Sheerlay projects (*.sheerlay)</source>
        <translation>Sheerlay-Projekte (*.sheerlay)</translation>
    </message>
    <message>
        <source>Save the picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Another folder would do.</source>
        <translation>Das Bild ließ sich nicht nach %1 schreiben. Möglich wäre ein anderer Ordner.</translation>
    </message>
    <message>
        <source>%1: %2 would do.</source>
        <translation>%1: möglich wäre %2.</translation>
    </message>
    <message>
        <source>One strip at a time over the whole screen, to work by (F11)</source>
        <translation>Eine Leiste nach der anderen über den ganzen Bildschirm, zum Arbeiten (F11)</translation>
    </message>
    <message>
        <source>Project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>Open, save, and the last projects</source>
        <translation>Öffnen, speichern und die letzten Projekte</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save picture of the boat…</source>
        <translation>Bild des Bootes speichern…</translation>
    </message>
    <message>
        <source>Edit</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Take back, or do again</source>
        <translation>Rückgängig machen oder wiederholen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>The project was not saved. %1.</source>
        <translation>Das Projekt wurde nicht gespeichert. %1.</translation>
    </message>
    <message>
        <source>Free the folder or the disk and save again, or save as another file; until then your changes stay here.</source>
        <translation>Den Ordner oder Datenträger freigeben und noch einmal speichern, oder unter anderem Namen speichern; bis dahin bleiben die Änderungen hier.</translation>
    </message>
    <message>
        <source>The changed file can&apos;t be used as it stands, so the boat here is yours alone. Saving replaces it, and keeps it as %1.</source>
        <translation>Die geänderte Datei ist so nicht zu gebrauchen; dieses Boot gibt es deshalb nur noch hier. Speichern ersetzt die Datei und bewahrt sie als %1 auf.</translation>
    </message>
    <message>
        <source>%1 was changed on disk, and there are changes here that are not saved.</source>
        <translation>%1 wurde außerhalb geändert, und hier gibt es Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Your decisions can go on top of the changed file, or be discarded for it.</source>
        <translation>Die Entscheidungen hier lassen sich auf die geänderte Datei übertragen oder zu ihren Gunsten verwerfen.</translation>
    </message>
    <message>
        <source>Keep mine on top</source>
        <translation>Meine übertragen</translation>
    </message>
    <message>
        <source>Take the file as it is</source>
        <translation>Datei übernehmen</translation>
    </message>
    <message>
        <source>There are changes from an earlier session that were not saved.%1</source>
        <translation>Von einer früheren Sitzung gibt es Änderungen, die nicht gespeichert wurden.%1</translation>
    </message>
    <message>
        <source> The file was changed after them.</source>
        <translation> Die Datei wurde danach geändert.</translation>
    </message>
    <message>
        <source>Take them up</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Changes from last time</source>
        <translation>Änderungen vom letzten Mal</translation>
    </message>
    <message>
        <source>Discard them</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Changes not saved</source>
        <translation>Änderungen nicht gespeichert</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Go on working</source>
        <translation>Weiterarbeiten</translation>
    </message>
    <message>
        <source>%1 laid</source>
        <translation>%1 gelegt</translation>
    </message>
    <message>
        <source>%1 not laid</source>
        <translation>%1 nicht gelegt</translation>
    </message>
    <message>
        <source>… and %1 more</source>
        <translation>… und %1 weitere</translation>
    </message>
    <message>
        <source>Open a project, and this bench holds its sheets for the wall.</source>
        <translation>Erst ein Projekt öffnen; dann liegen auf dieser Werkbank seine Blätter für die Wand.</translation>
    </message>
    <message>
        <source>Print cut sheets…</source>
        <translation>Schnittblätter drucken…</translation>
    </message>
    <message>
        <source>%1 sheets, the lines and the wall map</source>
        <translation>%1 Blätter, Linienriss und Wandkarte</translation>
    </message>
    <message>
        <source>Open a project, and this bench holds its moulds and their strongback.</source>
        <translation>Erst ein Projekt öffnen; dann stehen auf dieser Werkbank seine Mallen und ihre Helling.</translation>
    </message>
    <message>
        <source>Print patterns…</source>
        <translation>Schablonen drucken…</translation>
    </message>
    <message>
        <source>%1 pages. A pattern is shown whole here and printed in tiles at full size.</source>
        <translation>%1 Seiten. Eine Schablone ist hier ganz zu sehen und wird in Kacheln in voller Größe gedruckt.</translation>
    </message>
    <message>
        <source>Open a project, and this bench holds its boards.</source>
        <translation>Erst ein Projekt öffnen; dann liegen auf dieser Werkbank seine Bretter.</translation>
    </message>
    <message>
        <source>No boards are described yet. Add those you can have under “Boards and milling”, or in the project&apos;s file, and this bench says how many to buy, how to mill them and where every scarf falls:

[stock]
[[stock.lot]]
nominal = &quot;1x6&quot;
length = &quot;12 ft&quot;</source>
        <translation>Noch sind keine Bretter beschrieben. Unter „Bretter und Zuschnitt“ oder in der Projektdatei eintragen, was zu haben ist; dann sagt diese Werkbank, wie viele zu kaufen sind, wie sie zugeschnitten werden und wo jede Schäftung sitzt:

[stock]
[[stock.lot]]
nominal = &quot;1x6&quot;
length = &quot;12 ft&quot;</translation>
    </message>
    <message>
        <source>Print lists…</source>
        <translation>Listen drucken…</translation>
    </message>
    <message>
        <source>%1 pages: what to buy, milling, scarfs and labels</source>
        <translation>%1 Seiten: Einkauf, Zuschnitt, Schäftungen und Etiketten</translation>
    </message>
    <message>
        <source>Open a project, and this bench holds what comes after the planking.</source>
        <translation>Erst ein Projekt öffnen; dann liegt auf dieser Werkbank, was nach der Beplankung kommt.</translation>
    </message>
    <message>
        <source>Nothing is asked for yet. Add what she shall have under “What she gets”, or in the project&apos;s file, and this bench tells lengths, angles, cloth, resin and how she floats:

[fitout]
[covering]
[afloat]

The README names their keys; the examples use them.</source>
        <translation>Noch ist nichts verlangt. Unter „Ausstattung“ oder in der Projektdatei eintragen, was es haben soll; dann nennt diese Werkbank Längen, Winkel, Gewebe und Harz und zeigt, wie das Boot schwimmt:

[fitout]
[covering]
[afloat]

Die README nennt die Schlüssel; die Beispiele verwenden sie.</translation>
    </message>
    <message>
        <source>Print pages…</source>
        <translation>Seiten drucken…</translation>
    </message>
    <message>
        <source>Strip in hand</source>
        <translation>Gewählte Leiste</translation>
    </message>
    <message>
        <source>What there is to know about the strip in hand</source>
        <translation>Was über die gewählte Leiste zu wissen ist</translation>
    </message>
    <message>
        <source>How she is planked</source>
        <translation>Wie beplankt wird</translation>
    </message>
    <message>
        <source>Start, tapers, ends and closing (P)</source>
        <translation>Anfang, Verjüngungen, Enden und Schluss (P)</translation>
    </message>
    <message>
        <source>Searching for good lines…</source>
        <translation>Gute Linien werden gesucht…</translation>
    </message>
    <message>
        <source>Searching for good lines: %1 percent</source>
        <translation>Gute Linien werden gesucht: %1 Prozent</translation>
    </message>
    <message>
        <source>Planking her from each of %1 lines…</source>
        <translation>Das Boot wird von jeder der %1 Linien aus beplankt…</translation>
    </message>
    <message>
        <source>Three-quarter</source>
        <translation>Schräg</translation>
    </message>
    <message>
        <source>From the bow quarter, above</source>
        <translation>Von schräg vorn oben</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Square from the side</source>
        <translation>Genau von der Seite</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Straight down</source>
        <translation>Genau von oben</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Square from the bow</source>
        <translation>Genau von vorn</translation>
    </message>
    <message>
        <source>before the change</source>
        <translation>vor der Änderung</translation>
    </message>
    <message>
        <source>Right way up</source>
        <translation>Kiel unten</translation>
    </message>
    <message>
        <source>Turn the boat over</source>
        <translation>Das Boot umdrehen</translation>
    </message>
    <message>
        <source>Show moulds and strongback</source>
        <translation>Mallen und Helling zeigen</translation>
    </message>
    <message>
        <source>Strips to come</source>
        <translation>Kommende Leisten</translation>
    </message>
    <message>
        <source>Outline the strips not yet laid</source>
        <translation>Umrisse der Leisten, die noch nicht liegen</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: %2</source>
        <translation>%1 lässt sich nicht schreiben: %2</translation>
    </message>
    <message>
        <source>Print at full size</source>
        <translation>In voller Größe drucken</translation>
    </message>
    <message>
        <source>Painting the pages…</source>
        <translation>Die Seiten werden gezeichnet…</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>%1 files written into %2</source>
        <translation>%1 Dateien nach %2 geschrieben</translation>
    </message>
    <message>
        <source>Written:
%1</source>
        <translation>Geschrieben:
%1</translation>
    </message>
    <message>
        <source>Write files…</source>
        <translation>Dateien schreiben…</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>These are the sheets from before the change. They can be written and printed again once the file is mended.</source>
        <translation>Das sind noch die Blätter vor der Änderung. Sobald die Datei in Ordnung ist, lassen sie sich wieder schreiben und drucken.</translation>
    </message>
    <message>
        <source>Laying out the sheets…</source>
        <translation>Die Blätter werden angelegt…</translation>
    </message>
    <message>
        <source>, continued</source>
        <translation>, Fortsetzung</translation>
    </message>
    <message>
        <source>Folder for the files</source>
        <translation>Ordner für die Dateien</translation>
    </message>
    <message>
        <source>Writing the sheets…</source>
        <translation>Die Blätter werden geschrieben…</translation>
    </message>
    <message>
        <source>%1 higher</source>
        <translation>%1 höher</translation>
    </message>
    <message>
        <source>%1 farther out</source>
        <translation>%1 weiter außen</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 tiefer</translation>
    </message>
    <message>
        <source>%1 farther in</source>
        <translation>%1 weiter innen</translation>
    </message>
    <message>
        <source>The rest of the table wants about %1, give or take %2.</source>
        <translation>Der Rest der Tabelle spricht für etwa %1, auf %2 genau.</translation>
    </message>
    <message>
        <source>Likeliest: %1, %2 meant.</source>
        <translation>Am wahrscheinlichsten: %1, gemeint war %2.</translation>
    </message>
    <message>
        <source>The loft is made without this number until you settle it.</source>
        <translation>Gestrakt wird ohne diese Zahl, bis darüber entschieden ist.</translation>
    </message>
    <message>
        <source>%1: %2 can&apos;t stand here. Found: %3; what would do: %4.</source>
        <translation>%1: %2 kann hier nicht stehen. Gefunden: %3; möglich wäre: %4.</translation>
    </message>
    <message>
        <source>Until then nothing is given.</source>
        <translation>Bis dahin ist nichts angegeben.</translation>
    </message>
    <message>
        <source>Until then %1 stands.</source>
        <translation>Bis dahin gilt %1.</translation>
    </message>
    <message>
        <source>%1: nothing is given.</source>
        <translation>%1: nichts angegeben.</translation>
    </message>
    <message>
        <source>%1: the table has %2</source>
        <translation>%1: die Tabelle hat %2</translation>
    </message>
    <message>
        <source>, the loft %1: the table is %2.</source>
        <translation>, der Strak %1: Die Tabelle liegt %2.</translation>
    </message>
    <message>
        <source>Printed was %1; this number stands in its place.</source>
        <translation>Gedruckt war %1; stattdessen gilt diese Zahl.</translation>
    </message>
    <message>
        <source>Station at</source>
        <translation>Spant bei</translation>
    </message>
    <message>
        <source>Height · sheer</source>
        <translation>Höhe · Sprung</translation>
    </message>
    <message>
        <source>Half-breadth · sheer</source>
        <translation>Halbbreite · Sprung</translation>
    </message>
    <message>
        <source>Height · knuckle</source>
        <translation>Höhe · Knick</translation>
    </message>
    <message>
        <source>Half-breadth · knuckle</source>
        <translation>Halbbreite · Knick</translation>
    </message>
    <message>
        <source>Height · keel</source>
        <translation>Höhe · Kiel</translation>
    </message>
    <message>
        <source>Half-breadth · keel</source>
        <translation>Halbbreite · Kiel</translation>
    </message>
    <message>
        <source>Half-breadth · waterline %1</source>
        <translation>Halbbreite · Wasserlinie %1</translation>
    </message>
    <message>
        <source>Height · buttock %1</source>
        <translation>Höhe · Schnitt %1</translation>
    </message>
    <message>
        <source>Diagonal from %1</source>
        <translation>Sente von %1</translation>
    </message>
    <message>
        <source>Height · point %1</source>
        <translation>Höhe · Punkt %1</translation>
    </message>
    <message>
        <source>Half-breadth · point %1</source>
        <translation>Halbbreite · Punkt %1</translation>
    </message>
    <message>
        <source>How they are made</source>
        <translation>Wie sie gemacht werden</translation>
    </message>
    <message>
        <source>Boards and milling</source>
        <translation>Bretter und Zuschnitt</translation>
    </message>
    <message>
        <source>What she gets</source>
        <translation>Ausstattung</translation>
    </message>
    <message>
        <source>%1 pages: parts to fit, cloth and resin, afloat. A pattern is shown whole here and printed in tiles at full size.</source>
        <translation>%1 Seiten: Einbauten, Gewebe und Harz, im Wasser. Eine Schablone ist hier ganz zu sehen und wird in Kacheln in voller Größe gedruckt.</translation>
    </message>
    <message>
        <source>The kerf of the blade that rips the strips: 1/8 in for a full one, 3/32 in for a thin one, about 1/32 in for a band saw&apos;s. Best measured on a test cut.</source>
        <translation>Die Schnittfuge des Blatts, mit dem die Leisten aufgetrennt werden: 1/8 in (3,2 mm) bei einem dicken, 3/32 in (2,4 mm) bei einem dünnen, etwa 1/32 in (0,8 mm) bei einer Bandsäge. Am besten an einem Probeschnitt messen.</translation>
    </message>
    <message>
        <source>Not found any more: %1</source>
        <translation>Nicht mehr gefunden: %1</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>Blade</source>
        <translation>Sägeblatt</translation>
    </message>
    <message>
        <source>full kerf</source>
        <translation>volle Fuge</translation>
    </message>
    <message>
        <source>thin kerf</source>
        <translation>dünne Fuge</translation>
    </message>
    <message>
        <source>band saw</source>
        <translation>Bandsäge</translation>
    </message>
    <message>
        <source>Puts in what such a blade takes; a test cut tells better.</source>
        <translation>Trägt ein, was ein solches Blatt nimmt; ein Probeschnitt sagt es genauer.</translation>
    </message>
    <message>
        <source>Sold as</source>
        <translation>Gehandelt als</translation>
    </message>
    <message>
        <source>Puts in the sizes that dry, planed boards of that name have; a tape tells better.</source>
        <translation>Trägt die Maße ein, die trockene, gehobelte Bretter dieses Namens haben; ein Maßband sagt es genauer.</translation>
    </message>
    <message>
        <source>Ten laid</source>
        <translation>Zehn gelegt</translation>
    </message>
    <message>
        <source>What ten milled strips measure across, laid edge to edge: puts in what one covers.</source>
        <translation>Was zehn gefräste Leisten, Kante an Kante gelegt, zusammen messen: trägt ein, was eine deckt.</translation>
    </message>
    <message>
        <source>ten strips of this width can&apos;t measure that, look at the width</source>
        <translation>zehn Leisten dieser Breite können das nicht messen, bitte die Breite prüfen</translation>
    </message>
    <message>
        <source>Turned out</source>
        <translation>Umschlag</translation>
    </message>
    <message>
        <source>Onto the hull, along sides and bottom.</source>
        <translation>Auf den Rumpf, an Seiten und Boden entlang.</translation>
    </message>
    <message>
        <source>Faces</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <source>toward amidships</source>
        <translation>nach mittschiffs</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>Both keep damp out of the board where the space behind is open.</source>
        <translation>Beide halten Feuchte vom Holz, wo der Raum dahinter offen ist.</translation>
    </message>
    <message>
        <source>Cloth over bulkheads</source>
        <translation>Gewebe über Schotten</translation>
    </message>
    <message>
        <source>Glue, g/m²</source>
        <translation>Leim, g/m²</translation>
    </message>
    <message>
        <source>Grams to a square metre of glued face.</source>
        <translation>Gramm auf einen Quadratmeter Leimfläche.</translation>
    </message>
    <message>
        <source>Fillets</source>
        <translation>Hohlkehlen</translation>
    </message>
    <message>
        <source>Their radius, on both faces of a bulkhead; 0 leaves them out.</source>
        <translation>Ihr Radius, auf beiden Seiten eines Schotts; 0 lässt sie weg.</translation>
    </message>
    <message>
        <source>Laid flat and turned out onto the hull.</source>
        <translation>Flach aufgelegt und ringsum auf den Rumpf gezogen.</translation>
    </message>
    <message>
        <source>Bolts</source>
        <translation>Bolzen</translation>
    </message>
    <message>
        <source>Across, of seats, thwarts and yoke.</source>
        <translation>Durchmesser, bei Sitzen, Duchten und Tragjoch.</translation>
    </message>
    <message>
        <source>Screws</source>
        <translation>Schrauben</translation>
    </message>
    <message>
        <source>Across the shank.</source>
        <translation>Quer über den Schaft.</translation>
    </message>
    <message>
        <source>Screws, length</source>
        <translation>Schrauben, Länge</translation>
    </message>
    <message>
        <source>two thirds into the outer one</source>
        <translation>zwei Drittel in die äußere</translation>
    </message>
    <message>
        <source>Without it, as long as the sticks ask for.</source>
        <translation>Ohne sie so lang, wie die Leisten es verlangen.</translation>
    </message>
    <message>
        <source>Leg room</source>
        <translation>Beinraum</translation>
    </message>
    <message>
        <source>Wanted from its forward edge to the next thwart, seat or bulkhead before it; 0 where one sits facing aft.</source>
        <translation>Gewünscht von seiner Vorderkante bis zur nächsten Ducht, zum nächsten Sitz oder Schott davor; 0, wo man nach achtern sitzt.</translation>
    </message>
    <message>
        <source>Knee room</source>
        <translation>Knieraum</translation>
    </message>
    <message>
        <source>Wanted between its underside and the bottom, for knees and feet.</source>
        <translation>Gewünscht zwischen ihrer Unterseite und dem Boden, für Knie und Füße.</translation>
    </message>
    <message>
        <source>Off the roll, as wide as it is given.</source>
        <translation>Von der Rolle, so breit wie angegeben.</translation>
    </message>
    <message>
        <source>Milled, where no boards are described.</source>
        <translation>Gefräst, wo keine Bretter beschrieben sind.</translation>
    </message>
    <message>
        <source>Stick</source>
        <translation>Kantholz</translation>
    </message>
    <message>
        <source>Wood for gunwales, rails, thwarts and hangers.</source>
        <translation>Holz für Dollborde, Sitzleisten, Duchten und Hänger.</translation>
    </message>
    <message>
        <source>Plywood</source>
        <translation>Sperrholz</translation>
    </message>
    <message>
        <source>For bulkheads and decks.</source>
        <translation>Für Schotten und Decks.</translation>
    </message>
    <message>
        <source>Mould board</source>
        <translation>Mallenplatte</translation>
    </message>
    <message>
        <source>For moulds and stem forms.</source>
        <translation>Für Mallen und Stevenformen.</translation>
    </message>
    <message>
        <source>Without its hardener.</source>
        <translation>Ohne seinen Härter.</translation>
    </message>
    <message>
        <source>Hardener</source>
        <translation>Härter</translation>
    </message>
    <message>
        <source>Without the resin.</source>
        <translation>Ohne das Harz.</translation>
    </message>
    <message>
        <source>As it is sold.</source>
        <translation>Wie er verkauft wird.</translation>
    </message>
    <message>
        <source>Glue</source>
        <translation>Leim</translation>
    </message>
    <message>
        <source>For wood, on the strips&apos; edges.</source>
        <translation>Für Holz, an den Kanten der Leisten.</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>For the gunwales.</source>
        <translation>Für die Dollborde.</translation>
    </message>
    <message>
        <source>Plug</source>
        <translation>Pfropfen</translation>
    </message>
    <message>
        <source>Over a screw&apos;s head.</source>
        <translation>Über einem Schraubenkopf.</translation>
    </message>
    <message>
        <source>Bolt</source>
        <translation>Bolzen</translation>
    </message>
    <message>
        <source>With its nut and washers.</source>
        <translation>Mit Mutter und Scheiben.</translation>
    </message>
    <message>
        <source>Cane</source>
        <translation>Flechtrohr</translation>
    </message>
    <message>
        <source>For the seats.</source>
        <translation>Für die Sitze.</translation>
    </message>
    <message>
        <source>%1, a foot</source>
        <translation>%1, ein Fuß</translation>
    </message>
    <message>
        <source>%1, a metre</source>
        <translation>%1, ein Meter</translation>
    </message>
    <message>
        <source>%1, a yard</source>
        <translation>%1, ein Yard</translation>
    </message>
    <message>
        <source>%1, a gallon</source>
        <translation>%1, eine Gallone</translation>
    </message>
    <message>
        <source>%1, a litre</source>
        <translation>%1, ein Liter</translation>
    </message>
    <message>
        <source>%1, one</source>
        <translation>%1, Stück</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Preise</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>From the board&apos;s first end. Every board of the lot is cut clear of it; a board with knots of its own is a lot of one.</source>
        <translation>Vom ersten Ende des Bretts. Alle Bretter des Postens werden dort ausgespart; ein Brett mit eigenen Ästen ist ein Posten für sich.</translation>
    </message>
    <message>
        <source>Defect %1 of boards %2</source>
        <translation>Fehler %1 der Bretter %2</translation>
    </message>
    <message>
        <source>A defect of boards %1</source>
        <translation>Ein Fehler der Bretter %1</translation>
    </message>
    <message>
        <source>A knot or check that every board of the lot is cut clear of.</source>
        <translation>Ein Ast oder Riss, der bei jedem Brett des Postens ausgespart wird.</translation>
    </message>
    <message>
        <source>Rows that stand out</source>
        <translation>Reihen, die auffallen sollen</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>narrow</source>
        <translation>schmal</translation>
    </message>
    <message>
        <source>half</source>
        <translation>halb</translation>
    </message>
    <message>
        <source>most</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>as milled</source>
        <translation>wie gefräst</translation>
    </message>
    <message>
        <source>widest place up to %1 % of a strip</source>
        <translation>breiteste Stelle bis %1 % einer Leiste</translation>
    </message>
    <message>
        <source>Strain of the wood</source>
        <translation>Beanspruchung des Holzes</translation>
    </message>
    <message>
        <source>Shape of the strips</source>
        <translation>Form der Leisten</translation>
    </message>
    <message>
        <source>Woods</source>
        <translation>Hölzer</translation>
    </message>
    <message>
        <source>Laid, by the journal</source>
        <translation>Gelegt, laut Tagebuch</translation>
    </message>
    <message>
        <source>little</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>some</source>
        <translation>etwas</translation>
    </message>
    <message>
        <source>much</source>
        <translation>viel</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>flach</translation>
    </message>
    <message>
        <source>easy</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>round</source>
        <translation>rund</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>eng</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mäßig</translation>
    </message>
    <message>
        <source>close</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>zu viel</translation>
    </message>
    <message>
        <source>%1 % of what it bears</source>
        <translation>%1 % des Zulässigen</translation>
    </message>
    <message>
        <source>laid</source>
        <translation>gelegt</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>kommt noch</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>Cut the boat at a station and look into her</source>
        <translation>Das Boot an einem Spant schneiden und hineinsehen</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>What the colours of the strips tell</source>
        <translation>Was die Farben der Leisten sagen</translation>
    </message>
    <message>
        <source>the whole boat</source>
        <translation>das ganze Boot</translation>
    </message>
    <message>
        <source>at station %1</source>
        <translation>am Spant %1</translation>
    </message>
    <message>
        <source>Scarf of %1: %2 along the strip from its bow end, %3.</source>
        <translation>Schäftung von %1: %2 entlang der Leiste von ihrem Bugende, %3.</translation>
    </message>
    <message>
        <source>The mark stands %1, %2 from the bottom&apos;s middle, %3.</source>
        <translation>Die Marke steht %1, %2 von der Mitte des Bodens, %3.</translation>
    </message>
    <message>
        <source>Where does the tape begin? Click the boat or the map, or move the mark on the map with the arrows and press Enter.</source>
        <translation>Wo fängt das Maßband an? Boot oder Karte anklicken, oder die Marke auf der Karte mit den Pfeilen bewegen und Enter drücken.</translation>
    </message>
    <message>
        <source>And where does it end?</source>
        <translation>Und wo hört es auf?</translation>
    </message>
    <message>
        <source>%1 along the planking, in the middle of its thickness: %2 along the boat, %3 around her.</source>
        <translation>%1 entlang der Beplankung, in der Mitte ihrer Dicke: %2 längs des Bootes, %3 um den Rumpf.</translation>
    </message>
    <message>
        <source>The straight way runs past the planking&apos;s edge in between.</source>
        <translation>Der gerade Weg läuft dazwischen über die Kante der Beplankung hinaus.</translation>
    </message>
    <message>
        <source>What the tape says</source>
        <translation>Was das Maßband sagt</translation>
    </message>
    <message>
        <source>The station before</source>
        <translation>Der Spant davor</translation>
    </message>
    <message>
        <source>The next station</source>
        <translation>Der nächste Spant</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Leave it (Esc)</source>
        <translation>Lassen (Esc)</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leerzeichen</translation>
    </message>
    <message>
        <source>Below %1: what does the tape say along the mould, from the row&apos;s lower edge to the centreline?</source>
        <translation>Unter %1: Was sagt das Maßband am Mall entlang, von der unteren Kante der Reihe bis zur Mittellinie?</translation>
    </message>
    <message>
        <source>station %1: the plan leaves %2</source>
        <translation>Spant %1: der Plan lässt %2</translation>
    </message>
    <message>
        <source>Station %1: %2; %3 would do.</source>
        <translation>Spant %1: %2; möglich wäre %3.</translation>
    </message>
    <message>
        <source>Girth…</source>
        <translation>Umfang…</translation>
    </message>
    <message>
        <source>Write down what the tape says below this row (G)</source>
        <translation>Aufschreiben, was das Maßband unter dieser Reihe sagt (G)</translation>
    </message>
    <message>
        <source> · girth read at %1 stations</source>
        <translation> · Umfang an %1 Spanten gelesen</translation>
    </message>
    <message>
        <source>Edge bend %1, %2</source>
        <translation>Hochkantbiegung %1, %2</translation>
    </message>
    <message>
        <source>Language of the paper</source>
        <translation>Sprache der Blätter</translation>
    </message>
    <message>
        <source>Put the tape away</source>
        <translation>Maßband weglegen</translation>
    </message>
    <message>
        <source>Back to the strips (Esc)</source>
        <translation>Zurück zu den Leisten (Esc)</translation>
    </message>
    <message>
        <source>There is nothing to measure from there: click a strip that is laid, or any place of the planking on the map.</source>
        <translation>Von dort ist nichts zu messen: eine gelegte Leiste anklicken, oder irgendeine Stelle der Beplankung auf der Karte.</translation>
    </message>
    <message>
        <source>Mark on the map where strips are scarfed</source>
        <translation>Auf der Karte zeigen, wo Leisten geschäftet sind</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation>Maßband</translation>
    </message>
    <message>
        <source>Measure along the planking between two places (T)</source>
        <translation>Zwischen zwei Stellen entlang der Beplankung messen (T)</translation>
    </message>
    <message>
        <source>What all sheets and patterns are printed in; kept in the project. The window&apos;s own language is chosen in the Edit menu.</source>
        <translation>Worin alle Blätter und Schablonen gedruckt werden; steht im Projekt. Die Sprache des Fensters wird im Menü Bearbeiten gewählt.</translation>
    </message>
    <message>
        <source>Its language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Small rows share a cut sheet</source>
        <translation>Kleine Reihen auf einem Schnittblatt</translation>
    </message>
    <message>
        <source>On A3 and Tabloid two or three rows stand on a page where there is room, in the order of laying; A4 and Letter are too small for two. Kept in the project.</source>
        <translation>Auf A3 und Tabloid stehen zwei oder drei Reihen auf einer Seite, wo Platz ist, in der Legefolge; A4 und Letter sind für zwei zu klein. Steht im Projekt.</translation>
    </message>
    <message>
        <source>Rows a cut sheet</source>
        <translation>Reihen je Schnittblatt</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation>%1-mal Halt</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1-mal Vorsicht</translation>
    </message>
    <message>
        <source>%1 notes</source>
        <translation>%1 Hinweise</translation>
    </message>
    <message>
        <source>Lay or lift to anywhere (arrows)</source>
        <translation>Bis zu einer beliebigen Stelle legen oder abheben (Pfeile)</translation>
    </message>
    <message>
        <source>Lay up to here</source>
        <translation>Bis hierher legen</translation>
    </message>
    <message>
        <source>What each start line asks of you; choose one, then Start here</source>
        <translation>Was jede Anfangslinie verlangt; eine auswählen, dann „Hier anfangen“</translation>
    </message>
    <message>
        <source>The start stays as it is</source>
        <translation>Der Anfang bleibt, wie er ist</translation>
    </message>
    <message>
        <source>Take back the last sign (Backspace)</source>
        <translation>Das letzte Zeichen zurücknehmen (Rücktaste)</translation>
    </message>
    <message>
        <source>The sides that were measured; both where the tape says their mean</source>
        <translation>Die gemessenen Seiten; beide, wenn das Maßband ihr Mittel sagt</translation>
    </message>
    <message>
        <source>Plans the rows to come from what the tape says; nothing is changed yet</source>
        <translation>Plant die kommenden Reihen nach dem Maßband; noch ändert sich nichts</translation>
    </message>
    <message>
        <source>Writes the round into the journal, and the boat follows</source>
        <translation>Schreibt die Runde ins Tagebuch, und das Boot folgt</translation>
    </message>
    <message>
        <source>Along the mould, from the row&apos;s lower edge to the centreline</source>
        <translation>Am Mall entlang, von der unteren Kante der Reihe bis zur Mittellinie</translation>
    </message>
    <message>
        <source>Read; the window goes on as it is</source>
        <translation>Gelesen; weiter, wie es ist</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>The plan has changed meanwhile. Work it out again.</source>
        <translation>Der Plan hat sich inzwischen geändert. Noch einmal ausrechnen.</translation>
    </message>
    <message>
        <source>%1 pieces as before</source>
        <translation>%1 Stücke wie bisher</translation>
    </message>
    <message>
        <source>%1 pieces instead of %2</source>
        <translation>%1 Stücke statt %2</translation>
    </message>
    <message>
        <source>last plank %1</source>
        <translation>letzte Leiste %1</translation>
    </message>
    <message>
        <source>last plank %1 as before</source>
        <translation>letzte Leiste %1 wie bisher</translation>
    </message>
    <message>
        <source>last plank %1 instead of %2</source>
        <translation>letzte Leiste %1 statt %2</translation>
    </message>
    <message>
        <source>hardest edge bend %1 as before (%2)</source>
        <translation>stärkste Hochkantbiegung %1 wie bisher (%2)</translation>
    </message>
    <message>
        <source>hardest edge bend %1 instead of %2 (%3)</source>
        <translation>stärkste Hochkantbiegung %1 statt %2 (%3)</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the code of this language</comment>
        <translation>de</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::AccentFields</name>
    <message>
        <source>+  A row that stands out</source>
        <translation>+  Eine auffallende Reihe</translation>
    </message>
    <message>
        <source>Stays whole from end to end and is never tapered; the start moves by less than half a strip so that the first one runs where you ask</source>
        <translation>Bleibt von Ende zu Ende ganz und wird nie verjüngt; der Anfang rückt um weniger als eine halbe Leiste, damit die erste dort läuft, wo sie soll</translation>
    </message>
    <message>
        <source>Row that stands out, %1</source>
        <translation>Auffallende Reihe %1</translation>
    </message>
    <message>
        <source>A row that stands out needs a place; a length would do, or take it out.</source>
        <translation>Eine auffallende Reihe braucht einen Ort; möglich wäre eine Länge, oder sie herauszunehmen.</translation>
    </message>
    <message>
        <source>below the sheer</source>
        <translation>unter dem Sprung</translation>
    </message>
    <message>
        <source>above the base line</source>
        <translation>über der Basis</translation>
    </message>
    <message>
        <source>Girth below the sheer, around the hull, or height above the table&apos;s base line</source>
        <translation>Umfang unter dem Sprung, am Rumpf entlang, oder Höhe über der Basis der Tabelle</translation>
    </message>
    <message>
        <source>%1: measured from</source>
        <translation>%1: gemessen von</translation>
    </message>
    <message>
        <source>Take it out; Undo brings it back</source>
        <translation>Herausnehmen; Rückgängig holt sie zurück</translation>
    </message>
    <message>
        <source>%1: take out</source>
        <translation>%1: herausnehmen</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::ChoicesPanel</name>
    <message>
        <source>%1, open or shut</source>
        <translation>%1, auf oder zu</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>%1 goes out of the project; Undo brings it back</source>
        <translation>%1 wird aus dem Projekt genommen; Rückgängig bringt es zurück</translation>
    </message>
    <message>
        <source>Take out: %1</source>
        <translation>Herausnehmen: %1</translation>
    </message>
    <message>
        <source>Without %1</source>
        <translation>Ohne %1</translation>
    </message>
    <message>
        <source>To be added</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Add: %1</source>
        <translation>Hinzufügen: %1</translation>
    </message>
    <message>
        <source>%1 can&apos;t be left empty.</source>
        <translation>%1 darf nicht leer bleiben.</translation>
    </message>
    <message>
        <source>yes</source>
        <comment>whether a label inside a sentence begins with a small letter; no where nouns are written large</comment>
        <translation>no</translation>
    </message>
    <message>
        <source>Opens or shuts this part of the form</source>
        <translation>Öffnet oder schließt diesen Teil des Formulars</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::FindingsList</name>
    <message>
        <source>put aside</source>
        <translation>beiseitegelegt</translation>
    </message>
    <message>
        <source>put aside %1</source>
        <translation>beiseitegelegt am %1</translation>
    </message>
    <message>
        <source>Put aside: %1</source>
        <translation>Beiseitegelegt: %1</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::FindingsPane</name>
    <message>
        <source>Show the findings put aside</source>
        <translation>Die beiseitegelegten Befunde zeigen</translation>
    </message>
    <message>
        <source>stops</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Show stops: what can&apos;t be built as planned</source>
        <translation>Halt zeigen: was so nicht zu bauen ist</translation>
    </message>
    <message>
        <source>cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Show cautions: what will be hard or wasteful</source>
        <translation>Vorsicht zeigen: was schwierig oder verschwenderisch wird</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Show notes: what is good to know</source>
        <translation>Hinweise zeigen: was gut zu wissen ist</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation>Beiseitelegen</translation>
    </message>
    <message>
        <source>Words to look for in the findings</source>
        <translation>Wörter, die in den Befunden zu suchen sind</translation>
    </message>
    <message>
        <source>why it may rest</source>
        <translation>warum er ruhen darf</translation>
    </message>
    <message>
        <source>Why the finding may rest</source>
        <translation>Warum der Befund ruhen darf</translation>
    </message>
    <message>
        <source>The reason is kept in the project, and stands behind the finding on paper</source>
        <translation>Der Grund bleibt im Projekt und steht auf dem Papier hinter dem Befund</translation>
    </message>
    <message>
        <source>Findings: %1</source>
        <translation>Befunde: %1</translation>
    </message>
    <message>
        <source>%1 put aside</source>
        <translation>%1 beiseitegelegt</translation>
    </message>
    <message>
        <source>A stop can&apos;t be put aside: change what it names.</source>
        <translation>Ein Halt lässt sich nicht beiseitelegen; zu ändern ist, was er nennt.</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Take a finding back</source>
        <translation>Einen Befund zurückholen</translation>
    </message>
    <message>
        <source>Put a finding aside</source>
        <translation>Einen Befund beiseitelegen</translation>
    </message>
    <message>
        <source>words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>Shows the findings that hold all these words, or a strip&apos;s name</source>
        <translation>Zeigt die Befunde, in denen all diese Wörter stehen, oder der Name einer Leiste</translation>
    </message>
    <message>
        <source>Keeps a finding you have read at the end of the list, with the reason; it can be taken back</source>
        <translation>Stellt einen gelesenen Befund mit dem Grund ans Ende der Liste; lässt sich zurücknehmen</translation>
    </message>
    <message>
        <source>Shows the part there that the finding is about (double click)</source>
        <translation>Zeigt dort das Teil, um das es in dem Befund geht (Doppelklick)</translation>
    </message>
    <message>
        <source>Show it on the bench “%1”</source>
        <translation>Auf der Werkbank „%1“ zeigen</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::GirthPanel</name>
    <message>
        <source>What the readings would change; nothing is changed yet</source>
        <translation>Was die Messungen ändern würden; noch ändert sich nichts</translation>
    </message>
    <message>
        <source>Decide later</source>
        <translation>Später entscheiden</translation>
    </message>
    <message>
        <source>The readings wait on the Journal bench (Esc)</source>
        <translation>Die Messungen warten auf der Tagebuchbank (Esc)</translation>
    </message>
    <message>
        <source>Take the new plan</source>
        <translation>Den neuen Plan nehmen</translation>
    </message>
    <message>
        <source>The round goes into the journal, and the boat follows</source>
        <translation>Die Runde kommt ins Tagebuch, und das Boot folgt</translation>
    </message>
    <message>
        <source>Station %1: as planned.</source>
        <translation>Spant %1: wie geplant.</translation>
    </message>
    <message>
        <source>Station %1: %2 less than planned.</source>
        <translation>Spant %1: %2 weniger als geplant.</translation>
    </message>
    <message>
        <source>Station %1: %2 more than planned.</source>
        <translation>Spant %1: %2 mehr als geplant.</translation>
    </message>
    <message>
        <source>Station %1: %2 was read where the plan leaves %3, and strips and moulds are not so far off. Read it once more; Enter again keeps it.</source>
        <translation>Spant %1: %2 gemessen, wo der Plan %3 lässt, und Leisten und Mallen weichen nicht so weit ab. Noch einmal messen; mit Enter bleibt es dabei.</translation>
    </message>
    <message>
        <source>Write them down</source>
        <translation>Aufschreiben</translation>
    </message>
    <message>
        <source>Left out besides: %1.</source>
        <translation>Außerdem weggelassen: %1.</translation>
    </message>
    <message>
        <source>Below %1: what the new plan would change</source>
        <translation>Unter %1: was der neue Plan ändern würde</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::JournalBench</name>
    <message>
        <source>What the new plan changes</source>
        <translation>Was der neue Plan ändert</translation>
    </message>
    <message>
        <source>The journal so far</source>
        <translation>Das Tagebuch bisher</translation>
    </message>
    <message>
        <source>The readings below row %1 are typed and not part of the journal yet: work out what they change. Until you accept or clear them, they wait here.</source>
        <translation>Die Messungen unter Reihe %1 sind eingetragen, aber noch nicht im Tagebuch: ausrechnen lassen, was sie ändern. Bis sie angenommen oder gelöscht sind, warten sie hier.</translation>
    </message>
    <message>
        <source>Readings below row %1 still wait on the Journal bench. Accept or clear them there first.</source>
        <translation>Auf der Tagebuchbank warten noch Messungen unter Reihe %1. Zuerst dort annehmen oder löschen.</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::JournalLog</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>below row %1, starboard</source>
        <translation>unter Reihe %1, Steuerbord</translation>
    </message>
    <message>
        <source>below row %1, port</source>
        <translation>unter Reihe %1, Backbord</translation>
    </message>
    <message>
        <source>below row %1</source>
        <translation>unter Reihe %1</translation>
    </message>
    <message>
        <source>Nothing is laid or measured yet. Shop mode (F11) marks strips as they go on.</source>
        <translation>Noch ist nichts gelegt oder gemessen. Die Werkstatt (F11) vermerkt die Leisten, wie sie aufs Boot kommen.</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>Laid or measured</source>
        <translation>Gelegt oder gemessen</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Note, or what the tape said</source>
        <translation>Vermerk, oder was das Maßband sagte</translation>
    </message>
    <message>
        <source>The journal so far</source>
        <translation>Das Tagebuch bisher</translation>
    </message>
    <message>
        <source>The line in hand goes out of the journal; Undo brings it back</source>
        <translation>Die gewählte Zeile kommt aus dem Tagebuch; Zurücknehmen bringt sie wieder</translation>
    </message>
    <message>
        <source>%1 laid</source>
        <translation>%1 gelegt</translation>
    </message>
    <message>
        <source>Type a note on this strip</source>
        <translation>Einen Vermerk zu dieser Leiste schreiben</translation>
    </message>
    <message>
        <source>Note on %1</source>
        <translation>Vermerk zu %1</translation>
    </message>
    <message>
        <source>%1 not laid</source>
        <translation>%1 nicht gelegt</translation>
    </message>
    <message>
        <source>Without the reading below row %1</source>
        <translation>Ohne die Messung unter Reihe %1</translation>
    </message>
    <message>
        <source>%1: %2 (left out)</source>
        <translation>%1: %2 (weggelassen)</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::KeysCard</name>
    <message>
        <source>What the keys do</source>
        <translation>Was die Tasten tun</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::LinesBench</name>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Profile, half-breadths and body plan</source>
        <translation>Längsriss, Wasserlinienriss und Spantenriss</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Längsriss</translation>
    </message>
    <message>
        <source>From the side, with the buttocks</source>
        <translation>Von der Seite, mit den Schnitten</translation>
    </message>
    <message>
        <source>Half-breadths</source>
        <translation>Wasserlinienriss</translation>
    </message>
    <message>
        <source>From above, with the waterlines; diagonals below the centreline</source>
        <translation>Von oben, mit den Wasserlinien; Senten unter der Mittellinie</translation>
    </message>
    <message>
        <source>Body plan</source>
        <translation>Spantenriss</translation>
    </message>
    <message>
        <source>From the end: forward sections to the right, after ones to the left</source>
        <translation>Von den Enden: vordere Spanten rechts, hintere links</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>The whole drawing again</source>
        <translation>Wieder die ganze Zeichnung</translation>
    </message>
    <message>
        <source>Take the fair value, %1</source>
        <translation>Strakwert nehmen, %1</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 nehmen</translation>
    </message>
    <message>
        <source>Likeliest: %1</source>
        <translation>Am wahrscheinlichsten: %1</translation>
    </message>
    <message>
        <source>A cell that stands off the loft is coloured: blue outside it, brown inside, the deeper the farther. “?” marks a number the rest of the table contradicts.</source>
        <translation>Eine Zelle, die vom Strak abweicht, ist gefärbt: blau außerhalb, braun innerhalb, je weiter, desto kräftiger. „?“ steht an einer Zahl, der der Rest der Tabelle widerspricht.</translation>
    </message>
    <message>
        <source>One entry, marked “!”, can&apos;t stand yet.</source>
        <translation>Ein Eintrag, mit „!“ bezeichnet, kann noch nicht gelten.</translation>
    </message>
    <message>
        <source>%1 entries, marked “!”, can&apos;t stand yet.</source>
        <translation>%1 Einträge, mit „!“ bezeichnet, können noch nicht gelten.</translation>
    </message>
    <message>
        <source>%1: %2 would do.</source>
        <translation>%1: möglich wäre %2.</translation>
    </message>
    <message>
        <source>How closely the loft follows the table</source>
        <translation>Wie genau der Strak der Tabelle folgt</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::LinesBoard</name>
    <message>
        <source>Lines drawing</source>
        <translation>Linienriss</translation>
    </message>
    <message>
        <source>The wheel draws her larger or smaller, dragging moves the board, a double click shows all.</source>
        <translation>Das Rad zeichnet größer oder kleiner, Ziehen verschiebt den Riss, ein Doppelklick zeigt alles.</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::LoadPanel</name>
    <message>
        <source>Afloat</source>
        <translation>Im Wasser</translation>
    </message>
    <message>
        <source>Floating her…</source>
        <translation>Das Boot wird aufs Wasser gesetzt…</translation>
    </message>
    <message>
        <source>Nothing is asked of her afloat. Add a paddler under “What she gets”.</source>
        <translation>Fürs Wasser ist noch nichts verlangt. Unter „Ausstattung“ einen Paddler hinzufügen.</translation>
    </message>
    <message>
        <source>She could not be floated: %1.</source>
        <translation>Das Boot ließ sich nicht aufs Wasser setzen: %1.</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::LoftPanel</name>
    <message>
        <source>How the loft meets the table, station by station</source>
        <translation>Wie der Strak die Tabelle trifft, Spant für Spant</translation>
    </message>
    <message>
        <source>Part of the rounding</source>
        <translation>Teil der Rundung</translation>
    </message>
    <message>
        <source>How far the loft may miss the table on average, in parts of what rounding alone accounts for: %1 follows the numbers, %2 is as fair as their rounding allows</source>
        <translation>Wie weit der Strak die Tabelle im Mittel verfehlen darf, in Teilen dessen, was allein die Rundung ausmacht: %1 folgt den Zahlen, %2 ist so glatt, wie ihre Rundung es zulässt</translation>
    </message>
    <message>
        <source>Fair to within</source>
        <translation>Strakt bis auf</translation>
    </message>
    <message>
        <source>of the rounding</source>
        <translation>der Rundung</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::MainWindow</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>What the keys do (F1)</source>
        <translation>Was die Tasten tun (F1)</translation>
    </message>
    <message>
        <source>Open a project file, or drop one here. Edit it in any text editor beside this window: the boat follows when you save.
There is no project yet? Begin one from a table of offsets, half sections as drawn or a hull&apos;s surfaces: drop the file here.</source>
        <translation>Eine Projektdatei öffnen oder hier ablegen. Sie lässt sich neben diesem Fenster in jedem Texteditor ändern: Das Boot folgt beim Speichern.
Noch kein Projekt? Es lässt sich aus einer Aufmaßtabelle, gezeichneten halben Spanten oder den Flächen eines Rumpfs beginnen: die Datei hier ablegen.</translation>
    </message>
    <message>
        <source>Begin a boat…</source>
        <translation>Ein Boot beginnen…</translation>
    </message>
    <message>
        <source>Something went wrong inside the program: %1.</source>
        <translation>Im Programm ging etwas schief: %1.</translation>
    </message>
    <message>
        <source>Nothing of yours is lost. Undo the last change, or open the project again; what was not saved is offered then.</source>
        <translation>Es ist nichts verloren. Die letzte Änderung zurücknehmen oder das Projekt neu öffnen; was nicht gespeichert war, wird dann angeboten.</translation>
    </message>
    <message>
        <source>Laying, on the Planking bench</source>
        <translation>Legen, auf der Werkbank Beplankung</translation>
    </message>
    <message>
        <source>lay the next strip</source>
        <translation>die nächste Leiste legen</translation>
    </message>
    <message>
        <source>lift the last one</source>
        <translation>die letzte abheben</translation>
    </message>
    <message>
        <source>lay a row</source>
        <translation>eine Reihe legen</translation>
    </message>
    <message>
        <source>lift a row</source>
        <translation>eine Reihe abheben</translation>
    </message>
    <message>
        <source>bare moulds</source>
        <translation>leere Mallen</translation>
    </message>
    <message>
        <source>all laid</source>
        <translation>alles gelegt</translation>
    </message>
    <message>
        <source>play, or press the button in hand</source>
        <translation>ablaufen lassen oder den gewählten Knopf drücken</translation>
    </message>
    <message>
        <source>next finding</source>
        <translation>nächster Befund</translation>
    </message>
    <message>
        <source>map alone, and back</source>
        <translation>nur die Karte, und zurück</translation>
    </message>
    <message>
        <source>boat alone, and back</source>
        <translation>nur das Boot, und zurück</translation>
    </message>
    <message>
        <source>how she is planked</source>
        <translation>wie beplankt wird</translation>
    </message>
    <message>
        <source>Anywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Linien</translation>
    </message>
    <message>
        <source>Moulds</source>
        <translation>Mallen</translation>
    </message>
    <message>
        <source>Planking</source>
        <translation>Beplankung</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Tagebuch</translation>
    </message>
    <message>
        <source>Fitting out</source>
        <translation>Ausbau</translation>
    </message>
    <message>
        <source>%1 bench</source>
        <translation>Werkbank %1</translation>
    </message>
    <message>
        <source>millimetres, or feet and inches</source>
        <translation>Millimeter oder Fuß und Zoll</translation>
    </message>
    <message>
        <source>shop mode</source>
        <translation>Werkstatt</translation>
    </message>
    <message>
        <source>open a project</source>
        <translation>ein Projekt öffnen</translation>
    </message>
    <message>
        <source>begin a boat</source>
        <translation>ein Boot beginnen</translation>
    </message>
    <message>
        <source>save</source>
        <translation>speichern</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>rückgängig machen</translation>
    </message>
    <message>
        <source>do again</source>
        <translation>wiederholen</translation>
    </message>
    <message>
        <source>this card</source>
        <translation>diese Karte</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>ungesichert</translation>
    </message>
    <message>
        <source>There are changes that the project&apos;s file does not hold yet</source>
        <translation>Es gibt Änderungen, die noch nicht in der Projektdatei stehen</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 verschieben</translation>
    </message>
    <message>
        <source>Folder for the boat&apos;s files</source>
        <translation>Ordner für die Dateien des Bootes</translation>
    </message>
    <message>
        <source>Writing the boat&apos;s files…</source>
        <translation>Die Dateien des Bootes werden geschrieben…</translation>
    </message>
    <message>
        <source>Written into %1: %2</source>
        <translation>In %1 geschrieben: %2</translation>
    </message>
    <message>
        <source>That is the boat from before the change.</source>
        <translation>Das ist das Boot von vor der Änderung.</translation>
    </message>
    <message>
        <source>The files could not be written: %1. Another folder may do.</source>
        <translation>Die Dateien ließen sich nicht schreiben: %1. Vielleicht geht es in einem anderen Ordner.</translation>
    </message>
    <message>
        <source>Write the boat for other programs…</source>
        <translation>Das Boot für andere Programme schreiben…</translation>
    </message>
    <message>
        <source>Hull, moulds and strips as solids (STEP), pictures in space (glTF) and meshes (STL); tables as CSV</source>
        <translation>Rumpf, Mallen und Leisten als Körper (STEP), räumliche Bilder (glTF) und Netze (STL); Tabellen als CSV</translation>
    </message>
    <message>
        <source>Welcome. This is Brindlewick, an example to try out.</source>
        <translation>Willkommen. Das ist Brindlewick, ein Beispiel zum Ausprobieren.</translation>
    </message>
    <message>
        <source>The benches above follow the work: her lines, moulds, planking, boards, sheets for the wall, the journal, and fitting out.</source>
        <translation>Die Werkbänke oben folgen der Arbeit: Linien, Mallen, Beplankung, Holz, Blätter für die Wand, Tagebuch und Ausbau.</translation>
    </message>
    <message>
        <source>Lay her strip by strip.</source>
        <translation>Leiste für Leiste legen.</translation>
    </message>
    <message>
        <source>Arrow right lays the next strip, arrow left lifts it. The card beside the boat says how long to cut it and how hard it bends; click any strip, on the boat or on the map.</source>
        <translation>Pfeil rechts legt die nächste Leiste, Pfeil links hebt sie ab. Die Karte neben dem Boot sagt, wie lang sie zuzuschneiden ist und wie schwer sie sich biegt; jede Leiste lässt sich anklicken, am Boot oder auf der Karte.</translation>
    </message>
    <message>
        <source>Then make her yours.</source>
        <translation>Dann das eigene Boot daraus machen.</translation>
    </message>
    <message>
        <source>P shows where the planking starts, tapers and ends: change it, and undo it. F11 shows one strip at a time for the shop, F1 all the keys. Project, Begin a boat starts with your own table.</source>
        <translation>P zeigt, wo die Beplankung beginnt, sich verjüngt und endet: ändern, und zurücknehmen. F11 zeigt Leiste um Leiste für die Werkstatt, F1 alle Tasten. Projekt, Ein Boot beginnen fängt mit der eigenen Tabelle an.</translation>
    </message>
    <message>
        <source>Next, %1 of %2</source>
        <translation>Weiter, %1 von %2</translation>
    </message>
    <message>
        <source>Go to work</source>
        <translation>An die Arbeit</translation>
    </message>
    <message>
        <source>Skip, and never again</source>
        <translation>Überspringen, und nie wieder</translation>
    </message>
    <message>
        <source>tape: measure along the planking</source>
        <translation>Maßband: entlang der Beplankung messen</translation>
    </message>
    <message>
        <source>give up a long plan, or let go of tape or strip in hand</source>
        <translation>eine lange Planung aufgeben, oder Maßband oder Leiste loslassen</translation>
    </message>
    <message>
        <source>The hull&apos;s lines over the table of offsets, to judge and to correct</source>
        <translation>Der Linienriss über der Aufmaßtabelle, zum Beurteilen und Berichtigen</translation>
    </message>
    <message>
        <source>What she is built over: strongback, moulds and stem forms</source>
        <translation>Worüber gebaut wird: Helling, Mallen und Stevenformen</translation>
    </message>
    <message>
        <source>Strip by strip from the start to the shutter</source>
        <translation>Leiste um Leiste vom Anfang bis zur Schlussleiste</translation>
    </message>
    <message>
        <source>Boards to buy, strips to mill, and where they are scarfed</source>
        <translation>Bretter zu kaufen, Leisten zu fräsen, und wo sie geschäftet werden</translation>
    </message>
    <message>
        <source>What hangs on the shop&apos;s wall: a sheet for every row</source>
        <translation>Was in der Werkstatt an der Wand hängt: ein Blatt je Reihe</translation>
    </message>
    <message>
        <source>What was really laid and measured, and what it does to the rows to come</source>
        <translation>Was wirklich gelegt und gemessen wurde, und was daraus für die kommenden Reihen folgt</translation>
    </message>
    <message>
        <source>After the planking: gunwales, seats, cloth, and how she floats</source>
        <translation>Nach der Beplankung: Dollborde, Sitze, Gewebe, und wie das Boot schwimmt</translation>
    </message>
    <message>
        <source>A file that ends in .sheerlay (Ctrl+O)</source>
        <translation>Eine Datei, die auf .sheerlay endet (Strg+O)</translation>
    </message>
    <message>
        <source>From the starter, or from a table, drawing or surfaces of yours (Ctrl+N)</source>
        <translation>Vom Anfangsboot aus, oder aus eigener Tabelle, Zeichnung oder Flächen (Strg+N)</translation>
    </message>
    <message>
        <source>%1 is no file that can be opened. A project (.sheerlay) would do, or to begin a boat from: .csv, .tsv or .txt for a table, .dxf or .svg for sections, .step or .iges for surfaces.</source>
        <translation>%1 lässt sich nicht öffnen. Möglich wären ein Projekt (.sheerlay) oder, um ein Boot zu beginnen: .csv, .tsv oder .txt für eine Tabelle, .dxf oder .svg für Schnitte, .step oder .iges für Flächen.</translation>
    </message>
    <message>
        <source>%1 is no longer where it was: moved, renamed or deleted, or its folder is out of reach.</source>
        <translation>%1 ist nicht mehr dort, wo es war: verschoben, umbenannt oder gelöscht, oder sein Ordner ist nicht zu erreichen.</translation>
    </message>
    <message>
        <source>The boat here is whole. Saving writes her to that place again; if the file is put back, nothing is needed.</source>
        <translation>Das Boot hier ist vollständig. Speichern schreibt es wieder dorthin; kommt die Datei zurück, ist nichts zu tun.</translation>
    </message>
    <message>
        <source>Save it there again</source>
        <translation>Wieder dorthin speichern</translation>
    </message>
    <message>
        <source>%1 is no longer where it was, and the boat stands in no other file.</source>
        <translation>%1 ist nicht mehr dort, wo es war, und das Boot steht in keiner anderen Datei.</translation>
    </message>
    <message>
        <source>Writing %1…</source>
        <translation>%1 wird geschrieben…</translation>
    </message>
    <message>
        <source>No file was written.</source>
        <translation>Es wurde keine Datei geschrieben.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Save the project under another name</source>
        <translation>Das Projekt unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>A file stands there</source>
        <translation>Dort steht eine Datei</translation>
    </message>
    <message>
        <source>%1 is there already. Replaced, it is kept as %1~.</source>
        <translation>%1 gibt es schon. Wird sie ersetzt, bleibt sie als %1~ erhalten.</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Another folder or name would do.</source>
        <translation>Möglich wäre ein anderer Ordner oder Name.</translation>
    </message>
    <message>
        <source>Saved as %1, and the work goes on there. %2 stays as it was saved last.</source>
        <translation>Als %1 gespeichert; dort geht die Arbeit weiter. %2 bleibt, wie es zuletzt gespeichert war.</translation>
    </message>
    <message>
        <source>save under another name</source>
        <translation>unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>print the bench&apos;s pages, or go to the sheets</source>
        <translation>die Seiten der Werkbank drucken oder zu den Blättern gehen</translation>
    </message>
    <message>
        <source>quit</source>
        <translation>beenden</translation>
    </message>
    <message>
        <source>mark the strip as laid, and go on</source>
        <translation>die Leiste als gelegt vermerken und weiter</translation>
    </message>
    <message>
        <source>not laid after all</source>
        <translation>doch nicht gelegt</translation>
    </message>
    <message>
        <source>look at the strip before</source>
        <translation>die Leiste davor ansehen</translation>
    </message>
    <message>
        <source>look at the next strip</source>
        <translation>die nächste Leiste ansehen</translation>
    </message>
    <message>
        <source>write down what the tape says below this row</source>
        <translation>aufschreiben, was das Maßband unter dieser Reihe sagt</translation>
    </message>
    <message>
        <source>light or dark</source>
        <translation>hell oder dunkel</translation>
    </message>
    <message>
        <source>back to the benches</source>
        <translation>zurück zu den Werkbänken</translation>
    </message>
    <message>
        <source>this card; any key puts it away</source>
        <translation>diese Karte; jede Taste legt sie weg</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern als…</translation>
    </message>
    <message>
        <source>Print the pages…</source>
        <translation>Die Seiten drucken…</translation>
    </message>
    <message>
        <source>Quit</source>
        <translation>Beenden</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::NewBoat</name>
    <message>
        <source>Read it</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Write the project…</source>
        <translation>Das Projekt schreiben…</translation>
    </message>
    <message>
        <source>Begin a boat</source>
        <translation>Ein Boot beginnen</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>none: a boat to start from, to be edited</source>
        <translation>keine: ein Boot für den Anfang, zum Ändern</translation>
    </message>
    <message>
        <source>A table of offsets as text (CSV), half sections as DXF or SVG, or a hull&apos;s surfaces as STEP or IGES</source>
        <translation>Eine Aufmaßtabelle als Text (CSV), halbe Spanten als DXF oder SVG, oder die Flächen eines Rumpfs als STEP oder IGES</translation>
    </message>
    <message>
        <source>She is called</source>
        <translation>Name des Bootes</translation>
    </message>
    <message>
        <source>Read from</source>
        <translation>Gelesen aus</translation>
    </message>
    <message>
        <source>What the file doesn&apos;t say</source>
        <translation>Was die Datei nicht sagt</translation>
    </message>
    <message>
        <source>How it was read</source>
        <translation>Wie sie gelesen wurde</translation>
    </message>
    <message>
        <source>Without a file she begins as the example, which plans as it is.</source>
        <translation>Ohne Datei beginnt das Boot als Beispiel, das sich so planen lässt.</translation>
    </message>
    <message>
        <source>A line for each thing that isn&apos;t said or was read wrongly, such as “%1”.</source>
        <translation>Eine Zeile für alles, was fehlt oder falsch gelesen wurde, etwa „%1“.</translation>
    </message>
    <message>
        <source>This ending is none that can be read: .csv, .tsv or .txt would do for a table, .dxf or .svg for sections, .step or .iges for surfaces.</source>
        <translation>Diese Endung lässt sich nicht lesen; möglich wäre .csv, .tsv oder .txt für eine Tabelle, .dxf oder .svg für Spanten, .step oder .iges für Flächen.</translation>
    </message>
    <message>
        <source>She has no name yet; any will do.</source>
        <translation>Das Boot hat noch keinen Namen; jeder ist recht.</translation>
    </message>
    <message>
        <source>A boat to start from: put your own table in place of hers.</source>
        <translation>Ein Boot für den Anfang: Die eigene Tabelle tritt an die Stelle der seinen.</translation>
    </message>
    <message>
        <source>The name can&apos;t stand in a project file; plain text would do.</source>
        <translation>Der Name kann nicht in einer Projektdatei stehen; möglich wäre schlichter Text.</translation>
    </message>
    <message>
        <source>Finding the boat in her surfaces, and lofting her</source>
        <translation>Das Boot wird in den Flächen gesucht und gestrakt</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Wird gelesen</translation>
    </message>
    <message>
        <source>Something went wrong inside the program: %1.</source>
        <translation>Im Programm ging etwas schief: %1.</translation>
    </message>
    <message>
        <source>Given up; nothing was read.</source>
        <translation>Abgebrochen; nichts wurde gelesen.</translation>
    </message>
    <message>
        <source>Look it over; what is wrong is put right by a line above, such as “%1”.</source>
        <translation>Durchsehen; was falsch ist, berichtigt eine Zeile oben, etwa „%1“.</translation>
    </message>
    <message>
        <source>A table, sections or surfaces</source>
        <translation>Eine Tabelle, Spanten oder Flächen</translation>
    </message>
    <message>
        <source>Tables, sections, surfaces (*.csv *.tsv *.txt *.dxf *.svg *.step *.stp *.iges *.igs)</source>
        <translation>Tabellen, Spanten, Flächen (*.csv *.tsv *.txt *.dxf *.svg *.step *.stp *.iges *.igs)</translation>
    </message>
    <message>
        <source>Write the project</source>
        <translation>Das Projekt schreiben</translation>
    </message>
    <message>
        <source>Sheerlay projects (*.sheerlay)</source>
        <translation>Sheerlay-Projekte (*.sheerlay)</translation>
    </message>
    <message>
        <source>Look for the file</source>
        <translation>Die Datei suchen</translation>
    </message>
    <message>
        <source>Her name, as it stands on every sheet</source>
        <translation>Ihr Name, wie er auf jedem Blatt steht</translation>
    </message>
    <message>
        <source>What every row, column or line of the file was taken for</source>
        <translation>Wofür jede Zeile, Spalte oder Linie der Datei genommen wurde</translation>
    </message>
    <message>
        <source>Reads the file, with the lines above in mind, and says how</source>
        <translation>Liest die Datei mit den Angaben darüber und sagt, wie</translation>
    </message>
    <message>
        <source>Gives up the reading</source>
        <translation>Bricht das Lesen ab</translation>
    </message>
    <message>
        <source>Writes a project file, never over one that is there, and opens it</source>
        <translation>Schreibt eine Projektdatei, nie über eine vorhandene, und öffnet sie</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::OffsetsGrid</name>
    <message>
        <source>Table of offsets</source>
        <translation>Aufmaßtabelle</translation>
    </message>
    <message>
        <source>Nothing was pasted. Found: %1; what would do: %2.</source>
        <translation>Nichts wurde eingefügt. Gefunden: %1; möglich wäre: %2.</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>%1 of the pasted cells lie outside the table and were left off.</source>
        <translation>%1 der eingefügten Zellen liegen außerhalb der Tabelle und blieben weg.</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Füllen</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <source>Take the fair value, %1</source>
        <translation>Strakwert nehmen, %1</translation>
    </message>
    <message>
        <source>Take %1 (%2)</source>
        <translation>%1 nehmen (%2)</translation>
    </message>
    <message>
        <source>Go back to the printed %1</source>
        <translation>Zurück zum gedruckten %1</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Ausschneiden</translation>
    </message>
    <message>
        <source>Fill down</source>
        <translation>Nach unten füllen</translation>
    </message>
    <message>
        <source>Fill along</source>
        <translation>Nach rechts füllen</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::OffsetsModel</name>
    <message>
        <source>Station %1</source>
        <translation>Spant %1</translation>
    </message>
    <message>
        <source>%1 %2 cells</source>
        <comment>Paste 12 cells</comment>
        <translation>%1: %2 Zellen</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::SheetsBench</name>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>The sheets could not be laid out: %1. Undo the last change, or choose another paper.</source>
        <translation>Die Blätter ließen sich nicht anlegen: %1. Die letzte Änderung zurücknehmen oder ein anderes Papier wählen.</translation>
    </message>
    <message>
        <source>The sheets could not be written: %1. Another folder may do.</source>
        <translation>Die Blätter ließen sich nicht schreiben: %1. Vielleicht geht es in einem anderen Ordner.</translation>
    </message>
    <message>
        <source>Nothing was printed.</source>
        <translation>Nichts wurde gedruckt.</translation>
    </message>
    <message>
        <source>Laying out the pages for the printer…</source>
        <translation>Die Seiten für den Drucker werden angelegt…</translation>
    </message>
    <message>
        <source>The pages could not be laid out: %1. Undo the last change, or choose another paper.</source>
        <translation>Die Seiten ließen sich nicht anlegen: %1. Die letzte Änderung zurücknehmen oder ein anderes Papier wählen.</translation>
    </message>
    <message>
        <source>Sent %1 pages to the printer. Check the bar on the first one with a rule.</source>
        <translation>%1 Seiten an den Drucker gegeben. Den Maßstabsbalken auf der ersten mit einem Lineal prüfen.</translation>
    </message>
    <message>
        <source>The printer did not take the pages. Writing PDFs works without one.</source>
        <translation>Der Drucker nahm die Seiten nicht an. PDFs lassen sich auch ohne ihn schreiben.</translation>
    </message>
    <message>
        <source>Afloat</source>
        <translation>Im Wasser</translation>
    </message>
    <message>
        <source>Print the changed ones…</source>
        <translation>Nur geänderte drucken…</translation>
    </message>
    <message>
        <source>Only the sheets that say something else than at the last printing, marked with their revision</source>
        <translation>Nur die Blätter, auf denen anderes steht als beim letzten Druck, mit ihrem Stand bezeichnet</translation>
    </message>
    <message>
        <source>No sheet says anything else than at the last printing.</source>
        <translation>Auf keinem Blatt steht anderes als beim letzten Druck.</translation>
    </message>
    <message>
        <source>Size of the pages, on all benches; kept in the project</source>
        <translation>Größe der Seiten, überall; steht im Projekt</translation>
    </message>
    <message>
        <source>Everything of this bench into a folder: PDF, with drawings and tables for other programs</source>
        <translation>Alles von hier in einen Ordner: PDF, dazu Zeichnungen und Tabellen für andere Programme</translation>
    </message>
    <message>
        <source>Lays the pages out and shows them before they go to the printer</source>
        <translation>Legt die Seiten an und zeigt sie vor dem Drucken</translation>
    </message>
    <message>
        <source>The pages one by one, to print or to write</source>
        <translation>Die Seiten, eine um die andere, zum Drucken oder Schreiben</translation>
    </message>
    <message>
        <source>What the pages are made from, to be changed here</source>
        <translation>Woraus die Seiten entstehen, hier zu ändern</translation>
    </message>
    <message>
        <source>The boat in the water with her load, to be shifted with the mouse</source>
        <translation>Das Boot mit seiner Zuladung im Wasser; sie lässt sich mit der Maus verschieben</translation>
    </message>
    <message>
        <source>There are no pages yet. What they are made from is added under “%1”.</source>
        <translation>Noch gibt es keine Seiten. Woraus sie entstehen, kommt unter „%1“ dazu.</translation>
    </message>
    <message>
        <source>Print this page…</source>
        <translation>Diese Seite drucken…</translation>
    </message>
    <message>
        <source>The page shown here by itself; one larger than the paper goes out in pages to be joined</source>
        <translation>Nur die Seite, die hier zu sehen ist; was größer als das Papier ist, kommt in Seiten zum Zusammenlegen</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::TableTools</name>
    <message>
        <source>Found: %1; what would do: %2.</source>
        <translation>Gefunden: %1; möglich wäre: %2.</translation>
    </message>
    <message>
        <source>Put in</source>
        <translation>Einsetzen</translation>
    </message>
    <message>
        <source>Scale her</source>
        <translation>Skalieren</translation>
    </message>
    <message>
        <source>New station at</source>
        <translation>Spant bei</translation>
    </message>
    <message>
        <source>From the table&apos;s own zero, as the other stations; its numbers are read off the loft.</source>
        <translation>Vom Nullpunkt der Tabelle, wie die anderen Spanten; seine Zahlen werden vom Strak abgelesen.</translation>
    </message>
    <message>
        <source>The station of the cell in hand; at least three stay.</source>
        <translation>Das Spant der gewählten Zelle; mindestens drei bleiben.</translation>
    </message>
    <message>
        <source>Scale…</source>
        <translation>Skalieren…</translation>
    </message>
    <message>
        <source>Draw the whole boat longer, wider or deeper</source>
        <translation>Das ganze Boot länger, breiter oder tiefer zeichnen</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Everything along the boat: stations, stems, transoms</source>
        <translation>Alles entlang des Bootes: Spanten, Steven, Spiegel</translation>
    </message>
    <message>
        <source>Station spacing</source>
        <translation>Spantabstand</translation>
    </message>
    <message>
        <source>Beam</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>All half-breadths; half sidings stay</source>
        <translation>Alle Halbbreiten; halbe Kielbreiten bleiben</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>All heights above the base line</source>
        <translation>Alle Höhen über der Basis</translation>
    </message>
    <message>
        <source>Take out station %1</source>
        <translation>Spant %1 entfernen</translation>
    </message>
    <message>
        <source>Take out a station</source>
        <translation>Ein Spant entfernen</translation>
    </message>
    <message>
        <source>Station put in at %1</source>
        <translation>Spant bei %1 eingesetzt</translation>
    </message>
    <message>
        <source>Station %1 taken out</source>
        <translation>Spant %1 herausgenommen</translation>
    </message>
    <message>
        <source>The table has no such measure to scale.</source>
        <translation>Die Tabelle hat kein solches Maß zum Skalieren.</translation>
    </message>
    <message>
        <source>By the table she is %1.</source>
        <translation>Nach der Tabelle: %1.</translation>
    </message>
    <message>
        <source>Change a measure to see what she would become.</source>
        <translation>Ein Maß ändern, um zu sehen, was aus dem Boot würde.</translation>
    </message>
    <message>
        <source>She would be %1. Numbers are rounded as the table is; fittings and loads stay where they are.</source>
        <translation>Danach: %1. Zahlen werden gerundet wie die Tabelle; Einbauten und Lasten bleiben, wo sie sind.</translation>
    </message>
    <message>
        <source>Scale the boat</source>
        <translation>Boot skalieren</translation>
    </message>
    <message>
        <source>Waterline</source>
        <translation>Wasserlinie</translation>
    </message>
    <message>
        <source>Buttock</source>
        <translation>Schnitt</translation>
    </message>
    <message>
        <source>New line at</source>
        <translation>Linie bei</translation>
    </message>
    <message>
        <source>A waterline&apos;s height above the base line, or a buttock&apos;s distance from the centreline; its numbers are read off the loft.</source>
        <translation>Höhe einer Wasserlinie über der Basis oder Abstand eines Schnitts von der Mittellinie; die Zahlen werden vom Strak abgelesen.</translation>
    </message>
    <message>
        <source>Waterline put in at %1</source>
        <translation>Wasserlinie bei %1 eingesetzt</translation>
    </message>
    <message>
        <source>Buttock put in at %1</source>
        <translation>Schnitt bei %1 eingesetzt</translation>
    </message>
    <message>
        <source>Moves the stations apart or together; stems beyond them, and transoms, keep their form. Length instead stretches everything.</source>
        <translation>Rückt die Spanten auseinander oder zusammen; Steven außerhalb von ihnen und Spiegel behalten ihre Form. Die Länge dagegen streckt alles.</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::TypedField</name>
    <message>
        <source>%1: %2; %3 would do.</source>
        <translation>%1: %2; möglich wäre %3.</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a number such as 0.5</source>
        <translation>eine Zahl wie 0,5</translation>
    </message>
</context>
<context>
    <name>sheerlay::ui::WorkSlip</name>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Gives up this plan and takes back the change that asked for it (Esc)</source>
        <translation>Bricht diesen Plan ab und nimmt die Änderung zurück, die ihn auslöste (Esc)</translation>
    </message>
</context>
</TS>
