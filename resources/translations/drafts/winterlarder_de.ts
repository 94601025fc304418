<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Arguments</name>
    <message>
        <source>%1 needs a folder after it</source>
        <translation>nach %1 fehlt ein Ordner</translation>
    </message>
    <message>
        <source>--day needs a day after it, as 2026-09-14</source>
        <translation>nach --day fehlt ein Tag, etwa 2026-09-14</translation>
    </message>
    <message>
        <source>unknown option %1; --help lists them</source>
        <translation>unbekannte Option %1; --help zeigt alle</translation>
    </message>
    <message>
        <source>Usage: winterlarder [FILE...]
       winterlarder --pictures FOLDER [FILE...]

Opens a book, or colonies from case files, on the desk; without files, the book last open.
Will what is in the hive last until spring forage starts?

  --demo             open the demo yard: six invented colonies in an orchard
  --day DAY          ask about this day (2026-09-14) instead of today
  --pictures FOLDER  write the window, each colony&apos;s winter picture and sheet, and the yard plan
                     into the folder, print their names, and end; needs no display
  --language CODE    speak this language (en) instead of the one chosen in Settings, else the system&apos;s
  --data FOLDER      take the shipped data from another folder
  --version          say which version this is
  --help             say this
</source>
        <translation>Aufruf: winterlarder [DATEI...]
        winterlarder --pictures ORDNER [DATEI...]

Öffnet ein Stockbuch oder Völker aus Falldateien im Fenster; ohne Datei das zuletzt geöffnete Buch.
Reicht das, was in der Beute ist, bis zur Frühtracht?

  --demo             den Beispielstand öffnen: sechs erfundene Völker in einem Obstgarten
  --day TAG          nach diesem Tag (2026-09-14) statt nach heute fragen
  --pictures ORDNER  das Fenster, von jedem Volk Winterbild und Blatt und den Plan für den Stand
                     in den Ordner schreiben, ihre Namen ausgeben und enden; ohne Bildschirm
  --language CODE    diese Sprache (en) statt der eingestellten, sonst der des Systems
  --data ORDNER      die mitgelieferten Daten aus einem anderen Ordner nehmen
  --version          die Version dieses Programms nennen
  --help             diesen Text zeigen
</translation>
    </message>
</context>
<context>
    <name>Choices</name>
    <message>
        <source>no more than weeds and ivy bring</source>
        <translation>nur was Wildkräuter und Efeu bringen</translation>
    </message>
    <message>
        <source>a trickle</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>a fair flow</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>a strong flow</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>timber</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>thick timber</source>
        <translation>dickes Holz</translation>
    </message>
    <message>
        <source>wrapped</source>
        <translation>eingepackt</translation>
    </message>
    <message>
        <source>polystyrene</source>
        <translation>Styropor</translation>
    </message>
    <message>
        <source>straw</source>
        <translation>Stroh</translation>
    </message>
    <message>
        <source>dark bee</source>
        <translation>Dunkle Biene</translation>
    </message>
    <message>
        <source>carniolan</source>
        <translation>Carnica</translation>
    </message>
    <message>
        <source>buckfast</source>
        <translation>Buckfast</translation>
    </message>
    <message>
        <source>italian</source>
        <translation>Italienerbiene</translation>
    </message>
    <message>
        <source>light</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>schwer</translation>
    </message>
    <message>
        <source>round feeder</source>
        <translation>Rundfütterer</translation>
    </message>
    <message>
        <source>tray on top</source>
        <translation>Futterzarge</translation>
    </message>
    <message>
        <source>bucket in an empty box</source>
        <translation>Futtereimer in der Leerzarge</translation>
    </message>
    <message>
        <source>contact feeder</source>
        <translation>umgedrehter Futtereimer</translation>
    </message>
    <message>
        <source>frame feeder</source>
        <translation>Futtertasche</translation>
    </message>
    <message>
        <source>feeder at the end of the bars</source>
        <translation>Futtergefäß hinter dem Schied</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>Zuckerwasser</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>dry sugar</source>
        <translation>trockener Zucker</translation>
    </message>
    <message>
        <source>white</source>
        <translation>weiß</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <source>green</source>
        <translation>grün</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>blau</translation>
    </message>
    <message>
        <source>united with another</source>
        <translation>mit einem anderen vereinigt</translation>
    </message>
    <message>
        <source>sold or given away</source>
        <translation>verkauft oder abgegeben</translation>
    </message>
    <message>
        <source>died</source>
        <translation>abgestorben</translation>
    </message>
    <message>
        <source>gentle</source>
        <translation>sanft</translation>
    </message>
    <message>
        <source>calm</source>
        <translation>ruhig</translation>
    </message>
    <message>
        <source>nervous</source>
        <translation>nervös</translation>
    </message>
    <message>
        <source>fierce</source>
        <translation>stechlustig</translation>
    </message>
    <message>
        <source>%{combs} put in</source>
        <translation>Waben eingehängt</translation>
    </message>
    <message>
        <source>%{combs} taken out</source>
        <translation>Waben entnommen</translation>
    </message>
    <message>
        <source>%{combs} given to another colony</source>
        <translation>Waben an ein anderes Volk gegeben</translation>
    </message>
    <message>
        <source>boxes put on</source>
        <translation>Zargen aufgesetzt</translation>
    </message>
    <message>
        <source>boxes taken off</source>
        <translation>Zargen abgenommen</translation>
    </message>
    <message>
        <source>boxes given to another colony</source>
        <translation>Zargen an ein anderes Volk gegeben</translation>
    </message>
    <message>
        <source>give syrup</source>
        <translation>Zuckerwasser geben</translation>
    </message>
    <message>
        <source>lay on fondant</source>
        <translation>Futterteig auflegen</translation>
    </message>
    <message>
        <source>check and weigh</source>
        <translation>nachsehen und wiegen</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>bees flying</source>
        <translation>Bienenflug</translation>
    </message>
    <message>
        <source>the cluster</source>
        <translation>die Wintertraube</translation>
    </message>
    <message>
        <source>stores under the cover</source>
        <translation>Futter unter der Abdeckung</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>abgestorben</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>keine Brut</translation>
    </message>
    <message>
        <source>solid</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>patchy</source>
        <translation>lückig</translation>
    </message>
</context>
<context>
    <name>CombTyping</name>
    <message>
        <source>E</source>
        <comment>key that empties a comb</comment>
        <translation>L</translation>
    </message>
    <message>
        <source>F</source>
        <comment>key for the faces seen</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>W</source>
        <comment>key for seen through a window</comment>
        <translation>F</translation>
    </message>
    <message>
        <source>built</source>
        <translation>ausgebaut</translation>
    </message>
    <message>
        <source>C</source>
        <comment>key that picks capped stores</comment>
        <translation>V</translation>
    </message>
    <message>
        <source>O</source>
        <comment>key that picks open nectar</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>B</source>
        <comment>key that picks brood</comment>
        <translation>B</translation>
    </message>
    <message>
        <source>P</source>
        <comment>key that picks bee bread (pollen)</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>U</source>
        <comment>key that picks how much is built</comment>
        <translation>A</translation>
    </message>
    <message>
        <source>picks %1: digits set its share</source>
        <translation>wählt „%1“; Ziffern geben den Anteil an</translation>
    </message>
    <message>
        <source>gives the zone all cells that are empty</source>
        <translation>gibt der Fläche alle leeren Zellen</translation>
    </message>
    <message>
        <source>the share in tenths; a second digit makes it finer: 7 is 70 %, 75 is 75 %</source>
        <translation>der Anteil in Zehnteln; eine zweite Ziffer macht ihn genauer: 7 ist 70&#xa0;%, 75 ist 75&#xa0;%</translation>
    </message>
    <message>
        <source>5 % more or less</source>
        <translation>5&#xa0;% mehr oder weniger</translation>
    </message>
    <message>
        <source>empties the comb</source>
        <translation>leert die Wabe</translation>
    </message>
    <message>
        <source>both faces seen, one, or none</source>
        <translation>beide Seiten gesehen, eine oder keine</translation>
    </message>
    <message>
        <source>seen through a window, or not</source>
        <translation>durch ein Sichtfenster gesehen oder nicht</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Good practice</source>
        <translation>Gute imkerliche Praxis</translation>
    </message>
    <message>
        <source>Colony without a name</source>
        <translation>Volk ohne Namen</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>One question: %1</source>
        <translation>Eine Frage: %1</translation>
    </message>
    <message>
        <source>Its own stores</source>
        <translation>Eigener Futtervorrat</translation>
    </message>
    <message>
        <source>Its own bees</source>
        <translation>Eigene Bienen</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Futtervorrat</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Stores of both</source>
        <translation>Futtervorrat beider</translation>
    </message>
    <message>
        <source>Bees of both</source>
        <translation>Bienen beider</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>Eaten until spring forage</source>
        <translation>Verbrauch bis zur Frühtracht</translation>
    </message>
    <message>
        <source>Need</source>
        <translation>Futterbedarf</translation>
    </message>
    <message>
        <source>%1: typically eaten %2, for a harder winter %3, to be left %4</source>
        <translation>%1: Verbrauch meist %2, für einen strengeren Winter %3, übrig bleiben sollen %4</translation>
    </message>
    <message>
        <source>Until %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>eaten %1, found %2</source>
        <translation>verbraucht %1, eingetragen %2</translation>
    </message>
    <message>
        <source>The %{combs} hold</source>
        <translation>Die Waben fassen</translation>
    </message>
    <message>
        <source>Left when spring forage starts</source>
        <translation>Übrig zu Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>Empty comb at the look</source>
        <translation>Leerwaben bei der Durchsicht</translation>
    </message>
    <message>
        <source>Figures (10th to 90th percentile in brackets)</source>
        <translation>Zahlen (in Klammern 10. bis 90. Perzentil)</translation>
    </message>
    <message>
        <source>Missing on %1</source>
        <translation>Es fehlen am %1</translation>
    </message>
    <message>
        <source>%1 (from %2 to spare to %3 missing)</source>
        <translation>%1 (von %2 übrig bis %3 zu wenig)</translation>
    </message>
    <message>
        <source>To spare on %1</source>
        <translation>Übrig am %1</translation>
    </message>
    <message>
        <source>%1 (from %2 missing to %3 to spare)</source>
        <translation>%1 (von %2 zu wenig bis %3 übrig)</translation>
    </message>
    <message>
        <source>%1 (%2, exact)</source>
        <translation>%1 (%2, genau)</translation>
    </message>
    <message>
        <source>%1 ± %2 days (%3)</source>
        <translation>%1 ± %2 Tage (%3)</translation>
    </message>
    <message>
        <source>Weight to expect, hive and all, without what is fed later</source>
        <translation>Zu erwartendes Gesamtgewicht, ohne spätere Futtergaben</translation>
    </message>
    <message>
        <source>Weight to expect, hive and all</source>
        <translation>Zu erwartendes Gesamtgewicht</translation>
    </message>
    <message>
        <source>With your super on, and the honey that is in it now.</source>
        <translation>Mit Ihrem aufgesetzten Honigraum und dem Honig, der jetzt darin ist.</translation>
    </message>
    <message>
        <source>With your super off.</source>
        <translation>Ohne Ihren Honigraum.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>&gt;Weight</source>
        <translation>&gt;Gewicht</translation>
    </message>
    <message>
        <source>Use by month</source>
        <translation>Verbrauch nach Monaten</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>&gt;Use</source>
        <translation>&gt;Verbrauch</translation>
    </message>
    <message>
        <source>Options once %1 is united onto it, over the same %2 simulated winters</source>
        <translation>Möglichkeiten nach dem Vereinigen mit %1, über dieselben %2 durchgerechneten Winter</translation>
    </message>
    <message>
        <source>Options, over the same %1 simulated winters</source>
        <translation>Möglichkeiten, über dieselben %1 durchgerechneten Winter</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Möglichkeit</translation>
    </message>
    <message>
        <source>&gt;Of stores</source>
        <translation>&gt;Futter</translation>
    </message>
    <message>
        <source>&gt;Stores after</source>
        <translation>&gt;Vorrat danach</translation>
    </message>
    <message>
        <source>&gt;Runs out</source>
        <translation>&gt;Geht aus</translation>
    </message>
    <message>
        <source>&gt;Falls below %1</source>
        <translation>&gt;Fällt unter %1</translation>
    </message>
    <message>
        <source>&gt;Left in spring</source>
        <translation>&gt;Übrig im Frühjahr</translation>
    </message>
    <message>
        <source>Unite it soon, at the latest on %1. %2</source>
        <translation>Vereinigen Sie bald, spätestens am %1. %2</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Fütterung</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Syrup</source>
        <translation>Zuckerwasser</translation>
    </message>
    <message>
        <source>%1, %2 by mass</source>
        <translation>%1, %2 nach Gewicht</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>Last day for syrup</source>
        <translation>Letzter Tag für Zuckerwasser</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>&gt;Sugar</source>
        <translation>&gt;Zucker</translation>
    </message>
    <message>
        <source>&gt;Syrup</source>
        <translation>&gt;Zuckerwasser</translation>
    </message>
    <message>
        <source>&gt;Fondant</source>
        <translation>&gt;Futterteig</translation>
    </message>
    <message>
        <source>From %1 to %2: %3 (%4).</source>
        <translation>Von %1 an %2: %3 (%4).</translation>
    </message>
    <message>
        <source>%1 As many of the emptiest outer %{combs} go back, and are taken off that weight.</source>
        <translation>%1 Ebenso viele der leersten Randwaben gehen zurück und sind von diesem Gewicht schon abgezogen.</translation>
    </message>
    <message>
        <source>%1 Back go: %2.</source>
        <translation>%1 Zurück gehen: %2.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Honigernte</translation>
    </message>
    <message>
        <source>%1 in all: %2.</source>
        <translation>Zusammen %1: %2.</translation>
    </message>
    <message>
        <source>%{Combs} to move within the yard</source>
        <translation>Waben zum Umhängen im Stand</translation>
    </message>
    <message numerus="yes">
        <source>%1: not answered, %n faults
</source>
        <comment>a case file</comment>
        <translation>
            <numerusform>%1: nicht beantwortet, ein Fehler
</numerusform>
            <numerusform>%1: nicht beantwortet, %n Fehler
</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: not answered
</source>
        <comment>a colony</comment>
        <translation>%1: nicht beantwortet
</translation>
    </message>
    <message>
        <source>new: %1 lines, changed: %2, already in the book and left out: %3
</source>
        <translation>neu: %1 Zeilen, geändert: %2, schon im Stockbuch und ausgelassen: %3
</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 Bytes</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Fassung</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Begonnen</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>sound
</source>
        <translation>in Ordnung
</translation>
    </message>
    <message>
        <source>&gt;Bytes</source>
        <translation>&gt;Bytes</translation>
    </message>
    <message>
        <source>lost: %1
</source>
        <translation>verloren: %1
</translation>
    </message>
    <message>
        <source>%1: not followed
</source>
        <comment>a colony</comment>
        <translation>%1: nicht verfolgt
</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>&gt;Deaths</source>
        <translation>&gt;Bienenverlust</translation>
    </message>
    <message>
        <source>weighings: %1, feeds: %2, harvests: %3, changes of equipment: %4; on days the book has already: %5
</source>
        <translation>Wägungen: %1, Futtergaben: %2, Ernten: %3, Beute geändert: %4; an Tagen schon im Buch: %5
</translation>
    </message>
    <message>
        <source>too few years to tell</source>
        <translation>zu wenige Jahre, um es zu sagen</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>%1 in %2 calendar years, %3 missing between them</source>
        <translation>%1 in %2 Kalenderjahren, dazwischen fehlen %3</translation>
    </message>
    <message>
        <source>Daily SD in winter, °C</source>
        <translation>Standardabweichung der Tage im Winter, °C</translation>
    </message>
    <message>
        <source>Daily SD in summer, °C</source>
        <translation>Standardabweichung der Tage im Sommer, °C</translation>
    </message>
    <message>
        <source>Correlation of consecutive days</source>
        <translation>Korrelation aufeinanderfolgender Tage</translation>
    </message>
    <message>
        <source>SD of a whole season, °C</source>
        <translation>Standardabweichung ganzer Winter, °C</translation>
    </message>
    <message>
        <source>&gt;Mean °C</source>
        <translation>&gt;Mittel °C</translation>
    </message>
    <message>
        <source>With --json this is printed as a site that a case file accepts.</source>
        <translation>Mit --json wird dies als Standort ausgegeben, den eine Falldatei annimmt.</translation>
    </message>
    <message>
        <source>&gt;Forecast in autumn</source>
        <translation>&gt;Prognose im Herbst</translation>
    </message>
    <message>
        <source>&gt;Forecast now</source>
        <translation>&gt;Prognose jetzt</translation>
    </message>
    <message>
        <source>Stores today</source>
        <translation>Futtervorrat heute</translation>
    </message>
    <message>
        <source>Lost since</source>
        <translation>Abnahme seither</translation>
    </message>
    <message>
        <source>Fall below %1</source>
        <translation>Winter unter %1</translation>
    </message>
    <message>
        <source>Run out</source>
        <translation>Winter ohne Futter</translation>
    </message>
    <message>
        <source>Below %1</source>
        <translation>Unter %1</translation>
    </message>
    <message>
        <source>Nothing left</source>
        <translation>Aufgebraucht</translation>
    </message>
    <message>
        <source>Spring forage starts</source>
        <translation>Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>most likely by now</source>
        <translation>wahrscheinlich schon jetzt</translation>
    </message>
    <message>
        <source>perhaps by now</source>
        <translation>vielleicht schon jetzt</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>%1, half by %2</source>
        <translation>%1, bei der Hälfte bis %2</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Futtergabe</translation>
    </message>
    <message>
        <source>Becomes stores</source>
        <translation>Ergibt Futtervorrat</translation>
    </message>
    <message>
        <source>Needed by</source>
        <translation>Nötig bis</translation>
    </message>
    <message>
        <source>&gt;Amount</source>
        <translation>&gt;Menge</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>Seen since</source>
        <translation>Seither gesehen</translation>
    </message>
    <message>
        <source>&gt;Read</source>
        <translation>&gt;Abgelesen</translation>
    </message>
    <message>
        <source>&gt;Expected</source>
        <translation>&gt;Erwartet</translation>
    </message>
    <message>
        <source>What was found points to</source>
        <translation>Worauf der Befund hinweist</translation>
    </message>
    <message>
        <source>Look, and write it down with the outcome</source>
        <translation>Sehen Sie nach und tragen Sie es mit dem Ausgang des Winters ein</translation>
    </message>
    <message>
        <source>It cannot be followed.</source>
        <translation>Dieser Winter lässt sich nicht verfolgen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a point of the guide and what is said of it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Judging stores</source>
        <translation>Futter schätzen</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Heizleistung</translation>
    </message>
    <message>
        <source>  adult bees</source>
        <translation>  Bienen</translation>
    </message>
    <message>
        <source>  brood nest</source>
        <translation>  Brutnest</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Futter</translation>
    </message>
    <message>
        <source>%1 g a day</source>
        <translation>%1&#xa0;g am Tag</translation>
    </message>
    <message>
        <source>Food for each bee</source>
        <translation>Futter je Biene</translation>
    </message>
    <message>
        <source>%1 mg a day</source>
        <translation>%1&#xa0;mg am Tag</translation>
    </message>
    <message>
        <source>Power for each kg of bees</source>
        <translation>Heizleistung je kg Bienen</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1&#xa0;W</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Mischung</translation>
    </message>
    <message>
        <source>%1 sugar to water, by mass</source>
        <translation>%1 Zucker zu Wasser, nach Gewicht</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Zuckergehalt</translation>
    </message>
    <message>
        <source>%1 % sugar by mass, %2 kg/L at 20 °C</source>
        <translation>%1&#xa0;% Zucker nach Gewicht, %2&#xa0;kg/l bei 20&#xa0;°C</translation>
    </message>
    <message>
        <source>Stores gained</source>
        <translation>Ergibt Futtervorrat</translation>
    </message>
    <message>
        <source>%1, ripened</source>
        <translation>%1, reif</translation>
    </message>
    <message>
        <source>; %1 where not said</source>
        <translation>; %1, wenn nichts angegeben ist</translation>
    </message>
    <message>
        <source>%1 (%2%3): %4</source>
        <translation>%1 (%2%3): %4</translation>
    </message>
    <message>
        <source>One entry changed
</source>
        <translation>Ein Eintrag geändert
</translation>
    </message>
    <message numerus="yes">
        <source>%n entries changed
</source>
        <translation>
            <numerusform>Ein Eintrag geändert
</numerusform>
            <numerusform>%n Einträge geändert
</numerusform>
        </translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>&gt;Latitude</source>
        <translation>&gt;Breite</translation>
    </message>
    <message>
        <source>&gt;Longitude</source>
        <translation>&gt;Länge</translation>
    </message>
    <message>
        <source>&gt;Height</source>
        <translation>&gt;Höhe</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Klima</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>%1, &quot;%2&quot;</source>
        <translation>%1, „%2“</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>, in UTC</source>
        <translation>, in UTC</translation>
    </message>
    <message>
        <source>, with their distance from UTC</source>
        <translation>, mit ihrem Abstand zu UTC</translation>
    </message>
    <message>
        <source>, in seconds since 1970</source>
        <translation>, in Sekunden seit 1970</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Date order</source>
        <translation>Reihenfolge im Datum</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>%1, one in %2 minutes</source>
        <translation>%1, einer alle %2 Minuten</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>newest first, turned round</source>
        <translation>Neueste zuerst, umgedreht</translation>
    </message>
    <message>
        <source>rows were not in the order of time and are sorted</source>
        <translation>die Zeilen standen nicht nach der Zeit und sind geordnet</translation>
    </message>
    <message>
        <source>Same time</source>
        <translation>Gleiche Zeit</translation>
    </message>
    <message>
        <source>%1 rows share their time with another and are taken together</source>
        <translation>%1 Zeilen haben dieselbe Zeit wie eine andere und sind zusammengefasst</translation>
    </message>
    <message>
        <source>of UTC; --time-zone gives those of the place</source>
        <translation>nach UTC; --time-zone gibt die des Ortes</translation>
    </message>
    <message>
        <source>no time of day is given: taken as noon</source>
        <translation>ohne Uhrzeit: als Mittag genommen</translation>
    </message>
    <message>
        <source>&gt;Change kg</source>
        <translation>&gt;Änderung kg</translation>
    </message>
    <message>
        <source>&gt;Nectar days</source>
        <translation>&gt;Trachttage</translation>
    </message>
    <message>
        <source>&gt;kg</source>
        <translation>&gt;kg</translation>
    </message>
    <message>
        <source>&gt;Eating days</source>
        <translation>&gt;Zehrtage</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>an end was weighed by day, foragers out</source>
        <translation>ein Ende bei Tag gewogen, Flugbienen draußen</translation>
    </message>
    <message>
        <source>an end in the wet</source>
        <translation>ein Ende bei Nässe</translation>
    </message>
    <message>
        <source>%1 days unknown</source>
        <translation>%1 Tage unbekannt</translation>
    </message>
    <message>
        <source>Water in the wood and on the hive moves this log by about %1 kg from day to day: while it is too cold to fly a single day of nectar is water. The months themselves are right.</source>
        <translation>Wasser im Holz und auf der Beute bewegt diese Waagendaten von Tag zu Tag um etwa %1&#xa0;kg: Solange es zum Fliegen zu kalt ist, ist ein einzelner Tag mit Nektareintrag Wasser. Die Monate selbst stimmen.</translation>
    </message>
    <message>
        <source>No steps: nothing was put on, taken off or poured in.</source>
        <translation>Keine Sprünge: Nichts wurde aufgesetzt, abgenommen oder eingefüllt.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>late evening and early morning</source>
        <translation>spätabends und frühmorgens</translation>
    </message>
    <message>
        <source>by day</source>
        <translation>bei Tag</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>nass</translation>
    </message>
    <message>
        <source>and %1 more; --json lists them all</source>
        <translation>und %1 weitere; --json nennt alle</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>Rows left out: %1</source>
        <translation>Ausgelassene Zeilen: %1</translation>
    </message>
    <message>
        <source>%1: %2 minutes back</source>
        <translation>%1: %2 Minuten zurück</translation>
    </message>
    <message>
        <source>%1: %2 minutes forward</source>
        <translation>%1: %2 Minuten vor</translation>
    </message>
    <message>
        <source> (daylight saving)</source>
        <translation> (Sommerzeit)</translation>
    </message>
    <message>
        <source>%1: %2 kg of rain or snow</source>
        <translation>%1: %2&#xa0;kg Regen oder Schnee</translation>
    </message>
    <message>
        <source>%1: %2 kg and back</source>
        <translation>%1: %2&#xa0;kg und zurück</translation>
    </message>
    <message>
        <source>Gaps: %1</source>
        <translation>Lücken: %1</translation>
    </message>
    <message>
        <source>Clock put back or forward: %1</source>
        <translation>Uhr zurück- oder vorgestellt: %1</translation>
    </message>
    <message>
        <source>Disturbed: %1</source>
        <translation>Gestört: %1</translation>
    </message>
    <message>
        <source>Neither temperature nor day length ever falls far enough: no season can be derived here, give its dates yourself.</source>
        <translation>Weder Temperatur noch Tageslänge sinken je weit genug: Hier lässt sich kein Jahreslauf ableiten, geben Sie die Tage selbst an.</translation>
    </message>
    <message>
        <source>Laying never stops here, so there are no dates for its end and new start.</source>
        <translation>Die Eilage hört hier nie auf, daher gibt es keine Tage für ihr Ende und ihren Wiederbeginn.</translation>
    </message>
    <message>
        <source>It never gets too cold for syrup to be taken and ripened.</source>
        <translation>Es wird nie zu kalt, um Zuckerwasser abzunehmen und einzudicken.</translation>
    </message>
    <message>
        <source>It never gets too cold for syrup to be taken.</source>
        <translation>Es wird nie zu kalt, um Zuckerwasser abzunehmen.</translation>
    </message>
    <message>
        <source>The season lies at the edge of the rules: compare its dates with your own.</source>
        <translation>Der Jahreslauf liegt am Rand der Regeln: Vergleichen Sie seine Tage mit Ihren eigenen.</translation>
    </message>
    <message>
        <source>&gt;± SD</source>
        <translation>&gt;± Abweichung</translation>
    </message>
    <message>
        <source>&gt;Day length h</source>
        <translation>&gt;Tageslänge h</translation>
    </message>
    <message>
        <source>Own climate: %1</source>
        <translation>Eigenes Klima: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>  The %1</source>
        <comment>weather of a station</comment>
        <translation>  Das %1</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>Land</translation>
    </message>
    <message>
        <source>&gt;Distance</source>
        <translation>&gt;Entfernung</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1&#xa0;m</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1&#xa0;km</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>&gt;Comb face</source>
        <translation>&gt;Wabenseite</translation>
    </message>
    <message>
        <source>&gt;Combs</source>
        <translation>&gt;Waben</translation>
    </message>
    <message>
        <source>&gt;Pitch</source>
        <translation>&gt;Wabenabstand</translation>
    </message>
    <message>
        <source>&gt;Full comb</source>
        <translation>&gt;Volle Wabe</translation>
    </message>
    <message>
        <source>&gt;Bees a comb</source>
        <translation>&gt;Bienen je Wabe</translation>
    </message>
    <message>
        <source>used by %1</source>
        <translation>verwendet von %1</translation>
    </message>
    <message>
        <source>&gt;%{Comb}</source>
        <translation>&gt;Wabe</translation>
    </message>
    <message>
        <source>&gt;Capped</source>
        <translation>&gt;Verdeckelt</translation>
    </message>
    <message>
        <source>&gt;Open, as ripe honey</source>
        <translation>&gt;Offen, als reifer Honig</translation>
    </message>
    <message>
        <source>What says so</source>
        <translation>Woher</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Gesehen am</translation>
    </message>
    <message>
        <source>&gt;Stores</source>
        <translation>&gt;Futter</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>Room in the %{combs}</source>
        <translation>Platz in den Waben</translation>
    </message>
    <message>
        <source>These contradict each other; the answer spans both.</source>
        <translation>Diese Angaben widersprechen sich; die Antwort umspannt beide.</translation>
    </message>
    <message>
        <source>&gt;Use g</source>
        <translation>&gt;Verbrauch g</translation>
    </message>
    <message>
        <source>&gt;Income g</source>
        <translation>&gt;Nektareintrag g</translation>
    </message>
    <message>
        <source>&gt;Bees</source>
        <translation>&gt;Bienen</translation>
    </message>
    <message>
        <source>&gt;Brood cells</source>
        <translation>&gt;Brutzellen</translation>
    </message>
    <message>
        <source>&gt;Power W</source>
        <translation>&gt;Heizleistung W</translation>
    </message>
    <message>
        <source>Use from %1 to %2</source>
        <translation>Verbrauch von %1 bis %2</translation>
    </message>
    <message>
        <source>Food eaten</source>
        <translation>Verbrauchtes Futter</translation>
    </message>
    <message>
        <source>%1, mean %2</source>
        <translation>%1, im Mittel %2</translation>
    </message>
    <message>
        <source>  warmth for brood</source>
        <translation>  Wärme für die Brut</translation>
    </message>
    <message>
        <source>  food for brood</source>
        <translation>  Futter für die Brut</translation>
    </message>
    <message>
        <source>Income</source>
        <translation>Nektareintrag</translation>
    </message>
    <message>
        <source>Bees at the end</source>
        <translation>Bienen am Ende</translation>
    </message>
    <message>
        <source>&gt;Mean</source>
        <translation>&gt;Mittel</translation>
    </message>
    <message>
        <source>The yard %1 as a whole</source>
        <translation>Der Stand %1 als Ganzes</translation>
    </message>
    <message>
        <source>Honey to take</source>
        <translation>Honig zu ernten</translation>
    </message>
    <message>
        <source>Nothing to buy</source>
        <translation>Nichts zu kaufen</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>%{Combs} to move first</source>
        <translation>Zuerst umzuhängende Waben</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>beliebiger Tag</translation>
    </message>
    <message>
        <source>What to do, by day</source>
        <translation>Was zu tun ist, nach Tagen</translation>
    </message>
</context>
<context>
    <name>Days</name>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>This cannot be read as a day of the year. Type it as %1.</source>
        <translation>Das lässt sich nicht als Tag im Jahr lesen. Schreiben Sie ihn wie %1.</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>This cannot be read as a day. Type it as %1, as %2, or “yesterday”.</source>
        <translation>Das lässt sich nicht als Tag lesen. Schreiben Sie ihn wie %1, wie %2 oder „gestern“.</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <translation>MMMM yyyy</translation>
    </message>
    <message>
        <source>There is no day %1 in %2; it ends with day %3.</source>
        <translation>Einen %1. %2 gibt es nicht; der Monat endet mit dem %3.</translation>
    </message>
    <message>
        <source>%1 is too late here. Type a day from %2 to %3.</source>
        <translation>%1 ist hier zu spät. Geben Sie einen Tag vom %2 bis zum %3 ein.</translation>
    </message>
    <message>
        <source>%1 is too early here. Type a day from %2 to %3.</source>
        <translation>%1 ist hier zu früh. Geben Sie einen Tag vom %2 bis zum %3 ein.</translation>
    </message>
    <message>
        <source>%1 is too late here. Type %2 or a day before it.</source>
        <translation>%1 ist hier zu spät. Geben Sie den %2 oder einen Tag davor ein.</translation>
    </message>
    <message>
        <source>%1 is too early here. Type %2 or a day after it.</source>
        <translation>%1 ist hier zu früh. Geben Sie den %2 oder einen Tag danach ein.</translation>
    </message>
</context>
<context>
    <name>DrawnCombs</name>
    <message>
        <source>%{Comb} %1 of the super</source>
        <translation>Wabe %1 im Honigraum</translation>
    </message>
    <message>
        <source>%{Comb} %1 of box %2</source>
        <translation>Wabe %1 in Zarge %2</translation>
    </message>
    <message>
        <source>one face seen</source>
        <translation>eine Seite gesehen</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>durch ein Sichtfenster gesehen</translation>
    </message>
    <message>
        <source>measured on a photograph</source>
        <translation>auf einem Foto gemessen</translation>
    </message>
    <message>
        <source>both faces seen</source>
        <translation>beide Seiten gesehen</translation>
    </message>
    <message>
        <source>%1: not looked at, taken as the mean of the others; %2</source>
        <translation>%1: nicht angesehen, als Mittel der anderen gerechnet; %2</translation>
    </message>
    <message>
        <source>%1: capped %2, open nectar %3, brood %4, bee bread %5, empty %6; %7; %8</source>
        <translation>%1: verdeckelt %2, offener Nektar %3, Brut %4, Bienenbrot %5, leer %6; %7; %8</translation>
    </message>
</context>
<context>
    <name>EntryForms</name>
    <message>
        <source>&amp;Boxes, as they stand</source>
        <translation>Zargen, wie sie st&amp;ehen</translation>
    </message>
    <message>
        <source>&amp;Walls</source>
        <translation>&amp;Wände</translation>
    </message>
    <message>
        <source>Insulated on &amp;top</source>
        <translation>&amp;Oben gedämmt</translation>
    </message>
    <message>
        <source>Kept &amp;small on purpose</source>
        <translation>&amp;Absichtlich klein gehalten</translation>
    </message>
    <message>
        <source>&amp;Empty weight, if known</source>
        <translation>&amp;Leergewicht, falls bekannt</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>A new colony</source>
        <translation>Neues Volk</translation>
    </message>
    <message>
        <source>The colony</source>
        <translation>Das Volk</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Kind of bees</source>
        <translation>&amp;Rasse</translation>
    </message>
    <message>
        <source>Year of the &amp;queen</source>
        <translation>&amp;Jahr der Königin</translation>
    </message>
    <message>
        <source>&amp;Colour of her mark, if another than her year&apos;s</source>
        <translation>Zeichen&amp;farbe, falls nicht die ihres Jahres</translation>
    </message>
    <message>
        <source>&amp;Feeder</source>
        <translation>F&amp;uttergefäß</translation>
    </message>
    <message>
        <source>It &amp;holds</source>
        <translation>Fass&amp;t</translation>
    </message>
    <message>
        <source>Where it ca&amp;me from</source>
        <translation>&amp;Herkunft</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>Noti&amp;z</translation>
    </message>
    <message>
        <source>The colony needs a name.</source>
        <translation>Das Volk braucht einen Namen.</translation>
    </message>
    <message>
        <source>The hive</source>
        <translation>Die Beute</translation>
    </message>
    <message>
        <source>From this &amp;day on</source>
        <translation>Von diesem &amp;Tag an</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Was aus ihm wurde</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <source>&amp;Into</source>
        <translation>&amp;In welches</translation>
    </message>
    <message>
        <source>&amp;Of what, as far as is known</source>
        <translation>Wo&amp;ran, soweit bekannt</translation>
    </message>
    <message>
        <source>The colony leaves the yard from this day on; everything written of it stays in the book. Where disease may be the cause, the bee inspector comes first.</source>
        <translation>Von diesem Tag an gehört das Volk nicht mehr zum Stand; was über es eingetragen ist, bleibt im Stockbuch. Könnte eine Krankheit die Ursache sein, rufen Sie zuerst den Bienensachverständigen.</translation>
    </message>
    <message>
        <source>Into which colony?</source>
        <translation>In welches Volk?</translation>
    </message>
    <message>
        <source>A new yard</source>
        <translation>Neuer Stand</translation>
    </message>
    <message>
        <source>&amp;Where it is</source>
        <translation>&amp;Wo er liegt</translation>
    </message>
    <message>
        <source>The yard needs a name.</source>
        <translation>Der Stand braucht einen Namen.</translation>
    </message>
    <message>
        <source>Choose a place from the list, or type latitude and longitude.</source>
        <translation>Wählen Sie einen Ort aus der Liste oder geben Sie Breite und Länge ein.</translation>
    </message>
    <message>
        <source>To another yard</source>
        <translation>An einen anderen Stand</translation>
    </message>
    <message>
        <source>It stands &amp;in</source>
        <translation>Es &amp;steht in</translation>
    </message>
    <message>
        <source>Change the look</source>
        <translation>Durchsicht ändern</translation>
    </message>
    <message>
        <source>A new look</source>
        <translation>Neue Durchsicht</translation>
    </message>
    <message>
        <source>&amp;Bees</source>
        <translation>&amp;Bienen</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>besetzte Waben</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>besetzte Wabengassen</translation>
    </message>
    <message>
        <source>bees, counted</source>
        <translation>Bienen, gezählt</translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation>&amp;Wie viele</translation>
    </message>
    <message>
        <source>&amp;Queen seen</source>
        <translation>&amp;Königin gesehen</translation>
    </message>
    <message>
        <source>&amp;Eggs seen</source>
        <translation>&amp;Stifte gesehen</translation>
    </message>
    <message>
        <source>&amp;Sealed brood seen</source>
        <translation>&amp;Verdeckelte Brut gesehen</translation>
    </message>
    <message>
        <source>&amp;Pollen coming in</source>
        <translation>&amp;Polleneintrag</translation>
    </message>
    <message>
        <source>&amp;Temper</source>
        <translation>Verh&amp;alten</translation>
    </message>
    <message>
        <source>&amp;Water in the honey, %</source>
        <translation>Wasser im &amp;Honig, %</translation>
    </message>
    <message>
        <source>S&amp;igns of disease</source>
        <translation>Krankhe&amp;itsanzeichen</translation>
    </message>
    <message>
        <source>Which si&amp;gns</source>
        <translation>W&amp;elche Anzeichen</translation>
    </message>
    <message>
        <source>How many bees, %{combs} or seams were there?</source>
        <translation>Wie viele Bienen, Waben oder Wabengassen waren es?</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>Change the weighing</source>
        <translation>Wägung ändern</translation>
    </message>
    <message>
        <source>A new weighing</source>
        <translation>Neue Wägung</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>&amp;Wie</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>auf einer Waage</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>an beiden Seiten gewogen</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>an einer Seite gewogen</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>von Hand angehoben</translation>
    </message>
    <message>
        <source>&amp;Whole hive</source>
        <translation>Gan&amp;ze Beute</translation>
    </message>
    <message>
        <source>&amp;One side</source>
        <translation>&amp;Eine Seite</translation>
    </message>
    <message>
        <source>The o&amp;ther side</source>
        <translation>Die &amp;andere Seite</translation>
    </message>
    <message>
        <source>Rain or snow lay &amp;on it</source>
        <translation>&amp;Regen oder Schnee lag darauf</translation>
    </message>
    <message>
        <source>It &amp;felt</source>
        <translation>Es &amp;fühlte sich an</translation>
    </message>
    <message>
        <source>How much did it weigh?</source>
        <translation>Wie viel hat es gewogen?</translation>
    </message>
    <message>
        <source>Change the feed</source>
        <translation>Futtergabe ändern</translation>
    </message>
    <message>
        <source>What was fed</source>
        <translation>Was gefüttert wurde</translation>
    </message>
    <message>
        <source>&amp;Sugar in it</source>
        <translation>&amp;Zucker darin</translation>
    </message>
    <message>
        <source>or s&amp;yrup</source>
        <translation>oder Zuckerwa&amp;sser</translation>
    </message>
    <message>
        <source>s&amp;ugar to water, by weight</source>
        <translation>Z&amp;ucker zu Wasser, nach Gewicht</translation>
    </message>
    <message>
        <source>&amp;Fondant</source>
        <translation>&amp;Futterteig</translation>
    </message>
    <message>
        <source>How much was fed?</source>
        <translation>Wie viel wurde gefüttert?</translation>
    </message>
    <message>
        <source>Change the harvest</source>
        <translation>Honigernte ändern</translation>
    </message>
    <message>
        <source>What was taken</source>
        <translation>Was geerntet wurde</translation>
    </message>
    <message>
        <source>&amp;Honey</source>
        <translation>&amp;Honig</translation>
    </message>
    <message>
        <source>&amp;%{Combs}</source>
        <translation>Wa&amp;ben</translation>
    </message>
    <message>
        <source>&amp;Water in it, %</source>
        <translation>&amp;Wasser darin, %</translation>
    </message>
    <message>
        <source>Change the treatment</source>
        <translation>Behandlung ändern</translation>
    </message>
    <message>
        <source>A treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <source>It is &amp;over</source>
        <translation>Sie ist &amp;beendet</translation>
    </message>
    <message>
        <source>&amp;Until</source>
        <translation>Bi&amp;s</translation>
    </message>
    <message>
        <source>&amp;What was given</source>
        <translation>&amp;Was gegeben wurde</translation>
    </message>
    <message>
        <source>Used only to warn about the honey. Which medicine may be given, how and when, the label, the vet and local law say.</source>
        <translation>Dient nur dazu, vor dem Honig zu warnen. Welches Tierarzneimittel wie und wann gegeben werden darf, sagen die Packungsbeilage, Ihre Tierarztpraxis und das Recht Ihres Landes.</translation>
    </message>
    <message>
        <source>What was given?</source>
        <translation>Was wurde gegeben?</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Sie endet, bevor sie beginnt.</translation>
    </message>
    <message>
        <source>How the winter went</source>
        <translation>Wie der Winter ausging</translation>
    </message>
    <message>
        <source>&amp;Found out on</source>
        <translation>Festgestellt a&amp;m</translation>
    </message>
    <message>
        <source>It is &amp;alive</source>
        <translation>Es &amp;lebt</translation>
    </message>
    <message>
        <source>%{Combs} &amp;covered with bees</source>
        <translation>Besetzte &amp;Waben</translation>
    </message>
    <message>
        <source>&amp;Stores left</source>
        <translation>Üb&amp;riges Futter</translation>
    </message>
    <message>
        <source>A glance in winter</source>
        <translation>Kurzer Blick im Winter</translation>
    </message>
    <message>
        <source>What was &amp;seen</source>
        <translation>&amp;Was gesehen wurde</translation>
    </message>
    <message>
        <source>Seams the cluster &amp;fills</source>
        <translation>&amp;Besetzte Wabengassen der Traube</translation>
    </message>
    <message>
        <source>Sealed s&amp;tores in sight</source>
        <translation>&amp;Verdeckeltes Futter zu sehen</translation>
    </message>
</context>
<context>
    <name>Fields</name>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>written by</source>
        <translation>eingetragen von</translation>
    </message>
    <message>
        <source>climate station</source>
        <translation>Klimastation</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>mean temperature of a month</source>
        <translation>Mitteltemperatur eines Monats</translation>
    </message>
    <message>
        <source>scatter of winter days</source>
        <translation>Schwankung der Wintertage</translation>
    </message>
    <message>
        <source>scatter of summer days</source>
        <translation>Schwankung der Sommertage</translation>
    </message>
    <message>
        <source>likeness of one day to the next</source>
        <translation>Ähnlichkeit eines Tages mit dem nächsten</translation>
    </message>
    <message>
        <source>scatter of whole winters</source>
        <translation>Schwankung ganzer Winter</translation>
    </message>
    <message>
        <source>height above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>autumn flow still to come</source>
        <translation>Spättracht, die noch kommt</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>Trachtende</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>Ende der Eilage</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>Wiederbeginn der Eilage</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>Frühjahrsentwicklung</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>empfohlenes Ende der Fütterung</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>letzter Tag für Zuckerwasser</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>Zuckerwasser nicht mehr abgenommen</translation>
    </message>
    <message>
        <source>accepted risk</source>
        <translation>akzeptiertes Risiko</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Sicherheitsreserve</translation>
    </message>
    <message>
        <source>days between visits</source>
        <translation>Tage zwischen den Terminen</translation>
    </message>
    <message>
        <source>weekdays for visits</source>
        <translation>Wochentage für Termine</translation>
    </message>
    <message>
        <source>can be reached in winter</source>
        <translation>im Winter erreichbar</translation>
    </message>
    <message>
        <source>what flowers here</source>
        <translation>was hier blüht</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>price of a kilogram of sugar</source>
        <translation>Preis für ein Kilogramm Zucker</translation>
    </message>
    <message>
        <source>a bag of sugar</source>
        <translation>ein Sack Zucker</translation>
    </message>
    <message>
        <source>full %{combs} in store</source>
        <translation>volle Futterwaben auf Vorrat</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>walls of the hive</source>
        <translation>Wände der Beute</translation>
    </message>
    <message>
        <source>insulation on top</source>
        <translation>Dämmung über den Waben</translation>
    </message>
    <message>
        <source>medicine was in the hive</source>
        <translation>Tierarzneimittel war in der Beute</translation>
    </message>
    <message>
        <source>kept small on purpose</source>
        <translation>absichtlich klein gehalten</translation>
    </message>
    <message>
        <source>empty weight</source>
        <translation>Leergewicht</translation>
    </message>
    <message>
        <source>the supers are for</source>
        <translation>die Honigräume sind für</translation>
    </message>
    <message>
        <source>feeder</source>
        <translation>Futtergefäß</translation>
    </message>
    <message>
        <source>what the feeder holds</source>
        <translation>Inhalt des Futtergefäßes</translation>
    </message>
    <message>
        <source>kind of bees</source>
        <translation>Rasse</translation>
    </message>
    <message>
        <source>year of the queen</source>
        <translation>Jahr der Königin</translation>
    </message>
    <message>
        <source>colour of the queen&apos;s mark</source>
        <translation>Zeichenfarbe der Königin</translation>
    </message>
    <message>
        <source>where it came from</source>
        <translation>Herkunft</translation>
    </message>
    <message>
        <source>here since</source>
        <translation>hier seit</translation>
    </message>
    <message>
        <source>what became of it</source>
        <translation>was aus ihm wurde</translation>
    </message>
    <message>
        <source>united into</source>
        <translation>vereinigt mit</translation>
    </message>
    <message>
        <source>cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>number of bees</source>
        <translation>Zahl der Bienen</translation>
    </message>
    <message>
        <source>%{combs} covered with bees</source>
        <translation>besetzte Waben</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>besetzte Wabengassen</translation>
    </message>
    <message>
        <source>how unsure the count is</source>
        <translation>wie unsicher die Zählung ist</translation>
    </message>
    <message>
        <source>brood cells</source>
        <translation>Brutzellen</translation>
    </message>
    <message>
        <source>queen seen</source>
        <translation>Königin gesehen</translation>
    </message>
    <message>
        <source>eggs seen</source>
        <translation>Stifte gesehen</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>Krankheitsanzeichen</translation>
    </message>
    <message>
        <source>mites counted</source>
        <translation>Milben gezählt</translation>
    </message>
    <message>
        <source>mites on 100 bees</source>
        <translation>Milben auf 100 Bienen</translation>
    </message>
    <message>
        <source>mites treated</source>
        <translation>gegen Milben behandelt</translation>
    </message>
    <message>
        <source>food beside the bees</source>
        <translation>Futter neben den Bienen</translation>
    </message>
    <message>
        <source>kind of honey</source>
        <translation>Honigsorte</translation>
    </message>
    <message>
        <source>fed or treated while this honey was made</source>
        <translation>gefüttert oder behandelt, als dieser Honig entstand</translation>
    </message>
    <message>
        <source>how the %{combs} were looked at</source>
        <translation>wie die Waben angesehen wurden</translation>
    </message>
    <message>
        <source>%{combs} full of stores</source>
        <translation>volle Futterwaben</translation>
    </message>
    <message>
        <source>%{combs} half full</source>
        <translation>halb volle Futterwaben</translation>
    </message>
    <message>
        <source>share of it capped</source>
        <translation>Anteil davon verdeckelt</translation>
    </message>
    <message>
        <source>sealed brood seen</source>
        <translation>verdeckelte Brut gesehen</translation>
    </message>
    <message>
        <source>pollen coming in</source>
        <translation>Polleneintrag</translation>
    </message>
    <message>
        <source>temper</source>
        <translation>Verhalten</translation>
    </message>
    <message>
        <source>water in the honey, per cent</source>
        <translation>Wassergehalt des Honigs in Prozent</translation>
    </message>
    <message>
        <source>signs of trouble</source>
        <translation>welche Krankheitsanzeichen</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>weight of one side</source>
        <translation>Gewicht der einen Seite</translation>
    </message>
    <message>
        <source>weight of the other side</source>
        <translation>Gewicht der anderen Seite</translation>
    </message>
    <message>
        <source>heft</source>
        <translation>Hebekontrolle</translation>
    </message>
    <message>
        <source>said to be right, however unlikely</source>
        <translation>als richtig bestätigt, obwohl unwahrscheinlich</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>Zuckerwasser</translation>
    </message>
    <message>
        <source>sugar to water</source>
        <translation>Zucker zu Wasser</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>after the look of that day</source>
        <translation>nach der Durchsicht dieses Tages</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>Honig</translation>
    </message>
    <message>
        <source>%{combs}</source>
        <translation>Waben</translation>
    </message>
    <message>
        <source>until</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>to the colony</source>
        <translation>an das Volk</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>Empfehlung</translation>
    </message>
    <message>
        <source>what it was computed from</source>
        <translation>woraus sie gerechnet ist</translation>
    </message>
    <message>
        <source>the whole answer</source>
        <translation>die ganze Antwort</translation>
    </message>
    <message>
        <source>seed</source>
        <translation>Startwert</translation>
    </message>
    <message>
        <source>past winters are learned from</source>
        <translation>aus vergangenen Wintern wird gelernt</translation>
    </message>
    <message>
        <source>learned from since</source>
        <translation>gelernt wird seit</translation>
    </message>
    <message>
        <source>wet hive</source>
        <translation>nasse Beute</translation>
    </message>
    <message>
        <source>change of weight</source>
        <translation>Änderung des Gewichts</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>stores in sight</source>
        <translation>Futter zu sehen</translation>
    </message>
    <message>
        <source>first %{comb} of the cluster</source>
        <translation>erste Wabe der Traube</translation>
    </message>
    <message>
        <source>mean temperature</source>
        <translation>Mitteltemperatur</translation>
    </message>
    <message>
        <source>simulated winters</source>
        <translation>durchgerechnete Winter</translation>
    </message>
    <message>
        <source>version of the program</source>
        <translation>Version des Programms</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>done on</source>
        <translation>erledigt am</translation>
    </message>
    <message>
        <source>from the advice</source>
        <translation>aus der Empfehlung</translation>
    </message>
    <message>
        <source>alive in spring</source>
        <translation>lebt im Frühjahr</translation>
    </message>
    <message>
        <source>stores left</source>
        <translation>übriges Futter</translation>
    </message>
    <message>
        <source>food within reach of the dead bees</source>
        <translation>Futter in Reichweite der toten Bienen</translation>
    </message>
    <message>
        <source>bees head down in the cells</source>
        <translation>Bienen kopfüber in den Zellen</translation>
    </message>
    <message>
        <source>many mites on the floor</source>
        <translation>viele Milben auf dem Boden</translation>
    </message>
    <message>
        <source>brood in the dead hive</source>
        <translation>Brut in der toten Beute</translation>
    </message>
    <message>
        <source>queen found</source>
        <translation>Königin gefunden</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>verdeckelt</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>offener Nektar</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>Bienenbrot</translation>
    </message>
    <message>
        <source>hive format</source>
        <translation>Beutentyp</translation>
    </message>
    <message>
        <source>bar width, mm</source>
        <translation>Leistenbreite, mm</translation>
    </message>
    <message>
        <source>built</source>
        <translation>ausgebaut</translation>
    </message>
    <message>
        <source>faces seen</source>
        <translation>gesehene Seiten</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>durch ein Sichtfenster gesehen</translation>
    </message>
    <message>
        <source>measured on a photograph</source>
        <translation>auf einem Foto gemessen</translation>
    </message>
    <message>
        <source>in a super</source>
        <translation>in einem Honigraum</translation>
    </message>
    <message>
        <source>took syrup</source>
        <translation>nahm Zuckerwasser auf</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>Altwabe</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>comb width, mm</source>
        <translation>Wabenbreite, mm</translation>
    </message>
    <message>
        <source>comb height, mm</source>
        <translation>Wabenhöhe, mm</translation>
    </message>
    <message>
        <source>comb width at the bottom, mm</source>
        <translation>Wabenbreite unten, mm</translation>
    </message>
    <message>
        <source>%{combs} in a box</source>
        <translation>Waben in einer Zarge</translation>
    </message>
    <message>
        <source>a super</source>
        <translation>Honigraum</translation>
    </message>
    <message>
        <source>put on</source>
        <translation>aufgesetzt</translation>
    </message>
    <message>
        <source>number of boxes</source>
        <translation>Zahl der Zargen</translation>
    </message>
    <message>
        <source>number of %{combs}</source>
        <translation>Zahl der Waben</translation>
    </message>
    <message>
        <source>number of days</source>
        <translation>Zahl der Tage</translation>
    </message>
    <message>
        <source>number of photographs</source>
        <translation>Zahl der Fotos</translation>
    </message>
    <message>
        <source>%{comb} %1: %2</source>
        <translation>Wabe %1: %2</translation>
    </message>
    <message>
        <source>box %1: %2</source>
        <translation>Zarge %1: %2</translation>
    </message>
    <message>
        <source>day %1: %2</source>
        <translation>Tag %1: %2</translation>
    </message>
    <message>
        <source>%2 %1</source>
        <translation>%2 %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
</context>
<context>
    <name>FollowSections</name>
    <message>
        <source>Dates that matter</source>
        <translation>Tage, auf die es ankommt</translation>
    </message>
    <message>
        <source>To feed</source>
        <translation>Zu füttern</translation>
    </message>
    <message>
        <source>What was found points to</source>
        <translation>Worauf der Befund hinweist</translation>
    </message>
    <message>
        <source>Look, and write it down with how the winter went</source>
        <translation>Sehen Sie nach und tragen Sie es beim Ausgang des Winters ein</translation>
    </message>
    <message>
        <source>The safe way</source>
        <translation>So gehen Sie sicher vor</translation>
    </message>
    <message>
        <source>In spring</source>
        <translation>Im Frühjahr</translation>
    </message>
    <message>
        <source>Seen since the decision</source>
        <translation>Seit der Entscheidung gesehen</translation>
    </message>
    <message>
        <source>It falls below %1 from %2 on in a tenth of these winters, by %3 in half.</source>
        <translation>Der Futtervorrat fällt in einem Zehntel dieser Winter ab dem %2 unter %1, in der Hälfte bis zum %3.</translation>
    </message>
    <message>
        <source>It falls below %1 from %2 on in a tenth of these winters.</source>
        <translation>Der Futtervorrat fällt in einem Zehntel dieser Winter ab dem %2 unter %1.</translation>
    </message>
    <message>
        <source>Nothing is left from %1 in a tenth, by %2 in half.</source>
        <translation>Aufgebraucht ist er in einem Zehntel ab dem %1, in der Hälfte bis zum %2.</translation>
    </message>
    <message>
        <source>Nothing is left from %1 in a tenth.</source>
        <translation>Aufgebraucht ist er in einem Zehntel ab dem %1.</translation>
    </message>
    <message>
        <source>Spring forage starts around %1 (%2 to %3); about %4 left by then.</source>
        <translation>Die Frühtracht beginnt um den %1 (%2 bis %3); dann sind noch etwa %4 übrig.</translation>
    </message>
    <message>
        <source>%1: %2 of fondant touching the cluster</source>
        <translation>%1: %2 Futterteig, der die Traube berührt</translation>
    </message>
    <message>
        <source>It is wanted by %1.</source>
        <translation>Es wird bis zum %1 gebraucht.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Spring forage should carry it from about %1 (%2 to %3).</source>
        <translation>Etwa ab dem %1 (%2 bis %3) sollte das Volk von der Frühtracht leben können.</translation>
    </message>
    <message>
        <source>Leave %1 for a cold spell until forage is steady.</source>
        <translation>Lassen Sie %1 für einen Kälteeinbruch, bis die Tracht beständig ist.</translation>
    </message>
    <message>
        <source>Nothing is to come out.</source>
        <translation>Es muss nichts entnommen werden.</translation>
    </message>
    <message>
        <source>Above that %1 or more are left in 9 winters of 10, and may come out.</source>
        <translation>Darüber hinaus sind in 9 von 10 Wintern %1 oder mehr übrig, die Sie entnehmen können.</translation>
    </message>
    <message>
        <source>Take out about %1 of full %{combs}, so that the queen finds cells to lay in.</source>
        <translation>Nehmen Sie etwa %1 in vollen Futterwaben heraus, damit die Königin Zellen zum Stiften findet.</translation>
    </message>
    <message>
        <source>None of it is honey to eat: the hive was treated meanwhile.</source>
        <translation>Nichts davon ist Honig zum Essen: Das Volk wurde inzwischen behandelt.</translation>
    </message>
    <message>
        <source>%{Combs} that may be taken: %1 (they took no syrup and were not in a treated hive).</source>
        <translation>Waben, die Sie entnehmen dürfen: %1 (sie nahmen kein Zuckerwasser auf und hingen in keiner behandelten Beute).</translation>
    </message>
    <message>
        <source>No %{comb} is known to be honey that may be taken: %{combs} that took syrup are for the bees.</source>
        <translation>Von keiner Wabe ist bekannt, dass ihr Honig geerntet werden darf: Waben, die Zuckerwasser aufnahmen, gehören den Bienen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3, where %4 was expected: it contradicts every winter.</source>
        <translation>%1: %2, %3; erwartet war %4. Das widerspricht jedem Winter.</translation>
    </message>
    <message>
        <source>%1: %2, %3, where %4 was expected.</source>
        <translation>%1: %2, %3; erwartet war %4.</translation>
    </message>
</context>
<context>
    <name>Following</name>
    <message>
        <source>feed %1 of sugar as syrup</source>
        <translation>%1 Zucker als Zuckerwasser</translation>
    </message>
    <message>
        <source>lay %1 of fondant on the bees</source>
        <translation>%1 Futterteig direkt auf die Bienen</translation>
    </message>
    <message>
        <source> Today %1.</source>
        <translation> Geben Sie heute %1.</translation>
    </message>
    <message>
        <source> On %2 %1.</source>
        <translation> Geben Sie am %2 %1.</translation>
    </message>
    <message>
        <source> Check the scale.</source>
        <translation> Prüfen Sie die Waage.</translation>
    </message>
    <message>
        <source>Eating faster than planned: likely below %1 by %2.</source>
        <translation>Das Volk verbraucht mehr als erwartet: wahrscheinlich fällt es bis zum %2 unter %1.</translation>
    </message>
    <message>
        <source>Eating faster than planned: perhaps below %1 from %2 on.</source>
        <translation>Das Volk verbraucht mehr als erwartet: vielleicht fällt es ab dem %2 unter %1.</translation>
    </message>
    <message>
        <source>Eating faster than planned, but it should last.</source>
        <translation>Das Volk verbraucht mehr als erwartet, aber das Futter sollte reichen.</translation>
    </message>
    <message>
        <source>Act now: food for less than three weeks is left.</source>
        <translation>Jetzt handeln: Das Futter reicht keine drei Wochen mehr.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %1: %2 today, then weigh both sides.</source>
        <comment>day, feed</comment>
        <translation>Beim Anheben am %1 war die Beute leicht: Geben Sie heute %2, dann wiegen Sie an beiden Seiten.</translation>
    </message>
    <message>
        <source>Act now: the stores have most likely run out. See today from outside whether it lives; if so %1 at once.</source>
        <translation>Jetzt handeln: Das Futter ist sehr wahrscheinlich aufgebraucht. Sehen Sie heute von außen nach, ob das Volk lebt; wenn ja, geben Sie sofort %1.</translation>
    </message>
    <message>
        <source>Act now: %1 today, then weigh again.</source>
        <translation>Jetzt handeln: Geben Sie heute %1, dann wiegen Sie noch einmal.</translation>
    </message>
    <message>
        <source>The food is out of the cluster&apos;s reach.</source>
        <translation>Futterabriss: Das Futter liegt außer Reichweite der Traube.</translation>
    </message>
    <message>
        <source>Not enough to reach spring forage without feeding: %1 winters fall below %2.</source>
        <translation>Ohne Fütterung reicht es nicht bis zur Frühtracht: In %1 Wintern fällt der Futtervorrat unter %2.</translation>
    </message>
    <message>
        <source>It may not be enough to reach spring forage without feeding: %1 winters fall below %2.</source>
        <translation>Ohne Fütterung reicht es vielleicht nicht bis zur Frühtracht: In %1 Wintern fällt der Futtervorrat unter %2.</translation>
    </message>
    <message>
        <source> Nothing is fed today.</source>
        <translation> Heute wird nichts gefüttert.</translation>
    </message>
    <message>
        <source> Nothing is fed today; weigh it by %1.</source>
        <translation> Heute wird nichts gefüttert; wiegen Sie bis zum %1.</translation>
    </message>
    <message>
        <source>Was the feed planned from %1 on given? Write it down; until then it is not counted.</source>
        <comment>day</comment>
        <translation>Wurde das ab %1 geplante Futter gegeben? Tragen Sie es ein; bis dahin zählt es nicht.</translation>
    </message>
    <message>
        <source>Without it there is enough as well.</source>
        <translation>Auch ohne dieses reicht es.</translation>
    </message>
    <message>
        <source>The colony is dead.</source>
        <translation>Das Volk ist abgestorben.</translation>
    </message>
    <message>
        <source>It is heavier than can be explained: check the scale, and what was added, then weigh it again.</source>
        <translation>Die Beute ist schwerer, als sich erklären lässt: Prüfen Sie die Waage und was dazugekommen ist, dann wiegen Sie noch einmal.</translation>
    </message>
    <message>
        <source>It cannot be said: what was seen contradicts every winter.</source>
        <translation>Keine Aussage möglich: Was gesehen wurde, widerspricht jedem Winter.</translation>
    </message>
    <message>
        <source>Dwindling: far fewer bees than a winter leaves. On a day of %1 put them together in a small space between two full %{combs}.</source>
        <translation>Das Volk schrumpft: Es sind viel weniger Bienen, als ein Winter übrig lässt. Setzen Sie sie an einem Tag mit %1 eng zusammen, zwischen zwei volle Futterwaben.</translation>
    </message>
    <message>
        <source>Less was in the hive than was thought.</source>
        <translation>Es war weniger in der Beute als gedacht.</translation>
    </message>
    <message>
        <source>More is there than is needed: nothing to do before spring.</source>
        <translation>Es ist mehr da als nötig: Vor dem Frühjahr ist nichts zu tun.</translation>
    </message>
    <message>
        <source>More is there than is needed: feed nothing, and once forage has begun make room for the queen to lay.</source>
        <translation>Es ist mehr da als nötig: Füttern Sie nichts, und schaffen Sie der Königin Platz zum Legen, sobald die Tracht begonnen hat.</translation>
    </message>
    <message>
        <source>More is there than is needed: feed nothing.</source>
        <translation>Es ist mehr da als nötig: Füttern Sie nichts.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %1: weigh it again before anything is fed.</source>
        <translation>Beim Anheben am %1 war die Beute leicht: Wiegen Sie noch einmal, bevor Sie füttern.</translation>
    </message>
    <message>
        <source>On course.</source>
        <translation>Im Plan.</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>abgestorben</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>keine Aussage möglich</translation>
    </message>
    <message>
        <source>food out of reach</source>
        <translation>Futterabriss</translation>
    </message>
    <message>
        <source>act now</source>
        <translation>jetzt handeln</translation>
    </message>
    <message>
        <source>dwindling</source>
        <translation>schrumpft</translation>
    </message>
    <message>
        <source>less than thought</source>
        <translation>weniger als gedacht</translation>
    </message>
    <message>
        <source>feed not written down</source>
        <translation>Futtergabe nicht eingetragen</translation>
    </message>
    <message>
        <source>eating faster</source>
        <translation>verbraucht mehr als erwartet</translation>
    </message>
    <message>
        <source>more than needed</source>
        <translation>mehr als nötig</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>im Plan</translation>
    </message>
    <message>
        <source>About %1 left today, where the autumn expected %2. If nothing is done, %4 winters that fit what was seen fall below %3 and %5 run out (as forecast in autumn: %6 and %7).</source>
        <translation>Heute sind noch etwa %1 da, im Herbst erwartet waren %2. Wenn nichts geschieht, fällt der Futtervorrat in %4 Wintern, die zum Gesehenen passen, unter %3, und in %5 geht er aus (Prognose im Herbst: %6 und %7).</translation>
    </message>
    <message>
        <source>Look through what was written down of this winter: something was harvested, fed or weighed on another day or in another amount.</source>
        <translation>Sehen Sie durch, was von diesem Winter eingetragen ist: Etwas wurde an einem anderen Tag oder in anderer Menge geerntet, gefüttert oder gewogen.</translation>
    </message>
    <message>
        <source>Weigh it again, and look for a feed that was not written down or ticked off, and for a lid, a box or a stone that was on or off.</source>
        <translation>Wiegen Sie noch einmal und suchen Sie nach einer Futtergabe, die nicht eingetragen oder nicht abgehakt ist, und nach einem Deckel, einer Zarge oder einem Stein, der fehlte oder dazukam.</translation>
    </message>
    <message>
        <source>Weigh on %1, before more is fed.</source>
        <translation>Wiegen Sie am %1, bevor Sie weiter füttern.</translation>
    </message>
    <message>
        <source>Weigh again by %1: in %2 of 100 cases that would change what to do.</source>
        <translation>Wiegen Sie bis zum %1 noch einmal: In %2 von 100 Fällen würde das ändern, was zu tun ist.</translation>
    </message>
    <message>
        <source>No further weighing before forage (around %1) would change what to do.</source>
        <translation>Weiteres Wiegen vor der Frühtracht (um den %1) würde nichts an dem ändern, was zu tun ist.</translation>
    </message>
    <message>
        <source>Was food left within reach of the bees?</source>
        <translation>War noch Futter in Reichweite der Bienen?</translation>
    </message>
    <message>
        <source>Were dead bees head down in the cells?</source>
        <translation>Steckten tote Bienen kopfüber in den Zellen?</translation>
    </message>
    <message>
        <source>Were there many mites on the floor?</source>
        <translation>Lagen viele Milben auf dem Boden?</translation>
    </message>
    <message>
        <source>Was there brood, and was it solid or patchy?</source>
        <translation>War Brut da, und war sie geschlossen oder lückig?</translation>
    </message>
    <message>
        <source>Was the queen found?</source>
        <translation>Wurde die Königin gefunden?</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>lifted on two sides</source>
        <translation>an beiden Seiten gewogen</translation>
    </message>
    <message>
        <source>lifted on one side</source>
        <translation>an einer Seite gewogen</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>von Hand angehoben</translation>
    </message>
    <message>
        <source>%{combs} looked at</source>
        <translation>Waben angesehen</translation>
    </message>
    <message>
        <source>bees counted</source>
        <translation>Bienen gezählt</translation>
    </message>
    <message>
        <source>cluster seen</source>
        <translation>Traube gesehen</translation>
    </message>
    <message>
        <source>bees flying</source>
        <translation>Bienenflug</translation>
    </message>
    <message>
        <source>%{comb} glimpsed</source>
        <translation>Wabe kurz gesehen</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>hefts</comment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>masses</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>nothing to %1</source>
        <translation>nichts bis %1</translation>
    </message>
    <message>
        <source>Syrup, %1, in the evening</source>
        <translation>Zuckerwasser, %1, abends</translation>
    </message>
    <message>
        <source>Syrup, in the evening</source>
        <translation>Zuckerwasser, abends</translation>
    </message>
    <message>
        <source>Fondant, %1</source>
        <translation>Futterteig, %1</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>unite it with a healthy colony, today at the latest, in the evening</source>
        <translation>mit einem gesunden Volk vereinigen, spätestens heute Abend</translation>
    </message>
    <message>
        <source>unite it with %1, today at the latest, in the evening</source>
        <translation>mit %1 vereinigen, spätestens heute Abend</translation>
    </message>
    <message>
        <source>another colony of the yard</source>
        <translation>einem anderen Volk des Standes</translation>
    </message>
    <message>
        <source>hang in one full %{comb} from %1 (%2)</source>
        <translation>eine volle Futterwabe von %1 einhängen (%2)</translation>
    </message>
    <message>
        <source>hang in %1 full %{combs} from %2 (%3)</source>
        <translation>%1 volle Futterwaben von %2 einhängen (%3)</translation>
    </message>
    <message>
        <source>Check the feeding</source>
        <translation>Fütterung nachsehen</translation>
    </message>
    <message>
        <source>take %1 of honey off by today</source>
        <translation>bis heute %1 Honig ernten</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>noch einmal wiegen</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>Milben zählen und noch einmal nach dem Futter sehen</translation>
    </message>
    <message>
        <source>call the bee inspector, move nothing</source>
        <translation>den Bienensachverständigen rufen, nichts umhängen</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>zählen, wie viele Waben die Bienen besetzen</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>nach dem Futter sehen oder wiegen</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>eine Wabe mit Stiften aus einem anderen Volk einhängen</translation>
    </message>
    <message>
        <source>look for queen cells on the %{comb} with eggs</source>
        <translation>auf der Wabe mit Stiften nach Weiselzellen sehen</translation>
    </message>
    <message>
        <source>take %1 of honey off, at the latest</source>
        <translation>spätestens an diesem Tag %1 Honig ernten</translation>
    </message>
    <message>
        <source>%1 (%2 of sugar)</source>
        <comment>syrup</comment>
        <translation>%1 (%2 Zucker)</translation>
    </message>
    <message>
        <source>unite it with a healthy colony, at the latest, in the evening</source>
        <translation>mit einem gesunden Volk vereinigen, spätestens an diesem Tag, abends</translation>
    </message>
    <message>
        <source>unite it with %1, at the latest, in the evening</source>
        <translation>mit %1 vereinigen, spätestens an diesem Tag, abends</translation>
    </message>
    <message>
        <source>%{Combs} side by side behind a sheet of newspaper, the bees misted with water.</source>
        <translation>Waben nebeneinander hinter ein Blatt Zeitungspapier hängen, die Bienen mit Wasser besprühen.</translation>
    </message>
    <message>
        <source>Newspaper between.</source>
        <translation>Zeitungspapier dazwischen.</translation>
    </message>
    <message>
        <source>%1 Only once it is certain that it has no queen, on a warm evening.</source>
        <comment>how to unite</comment>
        <translation>%1 Erst wenn sicher ist, dass es weisellos ist, an einem warmen Abend.</translation>
    </message>
    <message>
        <source>%1 The better queen stays. Earlier is better, on a warm evening.</source>
        <comment>how to unite</comment>
        <translation>%1 Die bessere Königin bleibt. Früher ist besser, an einem warmen Abend.</translation>
    </message>
    <message>
        <source>%1 of sugar. Inside the hive, all colonies of the yard the same evening.</source>
        <translation>%1 Zucker. In der Beute, alle Völker des Standes am selben Abend.</translation>
    </message>
    <message>
        <source>Inside the hive, all colonies of the yard the same evening.</source>
        <translation>In der Beute, alle Völker des Standes am selben Abend.</translation>
    </message>
    <message>
        <source>So that it touches the bees, at once. Weigh both sides afterwards.</source>
        <translation>So, dass er die Bienen berührt, sofort. Danach an beiden Seiten wiegen.</translation>
    </message>
    <message>
        <source>Weigh both sides from outside first. Lay it so that it touches the bees.</source>
        <translation>Vorher von außen an beiden Seiten wiegen. So auflegen, dass er die Bienen berührt.</translation>
    </message>
    <message>
        <source>Taken and sealed? Weigh; feeder off, mouse guard on.</source>
        <translation>Abgenommen und verdeckelt? Wiegen; Futtergefäß abnehmen, Mäusegitter anbringen.</translation>
    </message>
    <message>
        <source>Before feeding and treating.</source>
        <translation>Vor dem Füttern und Behandeln.</translation>
    </message>
    <message>
        <source>Both sides, without opening. Write it down and ask again.</source>
        <translation>An beiden Seiten, ohne zu öffnen. Eintragen und neu fragen.</translation>
    </message>
    <message>
        <source>There are signs of disease.</source>
        <translation>Es gibt Krankheitsanzeichen.</translation>
    </message>
    <message>
        <source>Until then nothing can be said of this colony&apos;s winter.</source>
        <translation>Bis dahin lässt sich über den Winter dieses Volkes nichts sagen.</translation>
    </message>
    <message>
        <source>Before anything is fed.</source>
        <translation>Bevor Sie füttern.</translation>
    </message>
    <message>
        <source>From a healthy colony. It shows whether there is a queen.</source>
        <translation>Aus einem gesunden Volk. Sie zeigt, ob eine Königin da ist.</translation>
    </message>
    <message>
        <source>Queen cells mean that the queen is gone: unite it. None mean that there is one: look for eggs, and ask again.</source>
        <translation>Weiselzellen heißen, dass die Königin fehlt: vereinigen. Keine heißen, dass eine da ist: nach Stiften sehen und neu fragen.</translation>
    </message>
    <message>
        <source>It was planned for %1 and is not ticked off. If it was given, write it down.</source>
        <translation>Geplant war es für den %1 und ist nicht abgehakt. Wenn es gegeben wurde, tragen Sie es ein.</translation>
    </message>
    <message>
        <source>%1: the records of its winter fit none, so it is not known when to weigh or feed</source>
        <translation>%1: Zu den Einträgen seines Winters passt kein Winter, daher ist nicht bekannt, wann zu wiegen oder zu füttern ist</translation>
    </message>
    <message>
        <source>Bees</source>
        <comment>name of the calendar that is written out</comment>
        <translation>Bienen</translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>Stores</source>
        <translation>Futtervorrat</translation>
    </message>
    <message>
        <source>stores</source>
        <translation>Futtervorrat</translation>
    </message>
    <message>
        <source>What the bees can live on in the hive: capped honey, and open nectar or syrup as far as it will ripen. Bee bread is not counted.</source>
        <translation>Wovon die Bienen in der Beute leben können: verdeckelter Honig oder verdeckeltes Futter und offener Nektar oder Zuckerwasser, soweit es reif wird. Bienenbrot zählt nicht dazu.</translation>
    </message>
    <message>
        <source>need</source>
        <translation>Futterbedarf</translation>
    </message>
    <message>
        <source>The stores that must be in the hive today so that as few winters go short as you accept. It reaches to the day spring forage starts and holds the reserve.</source>
        <translation>Der Futtervorrat, der heute in der Beute sein muss, damit nur so viele Winter zu knapp werden, wie Sie hinnehmen. Er reicht bis zum Beginn der Frühtracht und enthält die Sicherheitsreserve.</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Sicherheitsreserve</translation>
    </message>
    <message>
        <source>Stores that should still be there on the worst day, for what nobody foresees. You set it on the page Place.</source>
        <translation>Futter, das auch am schlechtesten Tag noch da sein soll, für das, was niemand vorhersieht. Sie legen sie auf der Seite Standort fest.</translation>
    </message>
    <message>
        <source>falls below the reserve</source>
        <translation>fällt unter die Sicherheitsreserve</translation>
    </message>
    <message>
        <source>Less than the reserve is left on some day before spring forage starts. The bees are not starving yet, but little is left.</source>
        <translation>An einem Tag vor dem Beginn der Frühtracht ist weniger als die Sicherheitsreserve übrig. Die Bienen hungern noch nicht, aber es ist wenig da.</translation>
    </message>
    <message>
        <source>runs out</source>
        <translation>geht aus</translation>
    </message>
    <message>
        <source>No stores are left on some day before spring forage starts. Without help the colony starves.</source>
        <translation>An einem Tag vor dem Beginn der Frühtracht ist kein Futter mehr da. Ohne Hilfe verhungert das Volk.</translation>
    </message>
    <message>
        <source>accepted risk</source>
        <translation>akzeptiertes Risiko</translation>
    </message>
    <message>
        <source>How many winters of a hundred may fall below the reserve before the program advises you to feed or to leave honey. You set it on the page Place.</source>
        <translation>Wie viele von hundert Wintern unter die Sicherheitsreserve fallen dürfen, bevor das Programm rät, zu füttern oder Honig zu lassen. Sie legen es auf der Seite Standort fest.</translation>
    </message>
    <message>
        <source>empty weight</source>
        <translation>Leergewicht</translation>
    </message>
    <message>
        <source>The weight of the hive without bees, brood and stores: boxes, frames, floor and roof. Known, it makes every weighing tell more.</source>
        <translation>Das Gewicht der Beute ohne Bienen, Brut und Futter: Zargen, Rähmchen, Boden und Deckel. Ist es bekannt, sagt jede Wägung mehr.</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>von Hand angehoben</translation>
    </message>
    <message>
        <source>Lifted a little by hand, to feel whether the hive is light, fair or heavy. Rougher than a scale, but quick.</source>
        <translation>Die Beute etwas anheben, um zu fühlen, ob sie leicht, mittel oder schwer ist. Gröber als eine Waage, aber schnell.</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>an beiden Seiten gewogen</translation>
    </message>
    <message>
        <source>A hanging scale lifts the hive at one side and then at the other; the two readings added are about its weight.</source>
        <translation>Eine Zugwaage hebt die Beute erst an der einen, dann an der anderen Seite; beide Werte zusammengezählt sind etwa ihr Gewicht.</translation>
    </message>
    <message>
        <source>%{Combs} and bees</source>
        <translation>Waben und Bienen</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>verdeckelt</translation>
    </message>
    <message>
        <source>Sealed with wax: ripe honey that keeps. The share of it capped says how much of the stores on a %{comb} is sealed.</source>
        <translation>Mit Wachs verschlossen: reifer Honig, der sich hält. Der verdeckelte Anteil sagt, wie viel vom Futter auf einer Wabe verdeckelt ist.</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>offener Nektar</translation>
    </message>
    <message>
        <source>Cells with nectar or syrup not sealed yet. Much of it is water, so it counts for less, and late in the year it may never be capped.</source>
        <translation>Zellen mit Nektar oder Zuckerwasser, noch nicht verdeckelt. Viel davon ist Wasser, daher zählt es weniger, und spät im Jahr wird es vielleicht nie verdeckelt.</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>Bienenbrot</translation>
    </message>
    <message>
        <source>Pollen the bees have stored in cells. It feeds the brood and does not count as stores.</source>
        <translation>Pollen, den die Bienen in Zellen eingelagert haben. Er nährt die Brut und zählt nicht zum Futtervorrat.</translation>
    </message>
    <message>
        <source>built</source>
        <translation>ausgebaut</translation>
    </message>
    <message>
        <source>How much of the space in the frame, or under the bar, the bees have filled with comb.</source>
        <translation>Wie viel vom Raum im Rähmchen oder unter der Trägerleiste die Bienen mit Wabe gefüllt haben.</translation>
    </message>
    <message>
        <source>face</source>
        <translation>Wabenseite</translation>
    </message>
    <message>
        <source>One side of a %{comb}.</source>
        <translation>Eine Seite einer Wabe.</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>Altwabe</translation>
    </message>
    <message>
        <source>Dark comb in which brood was raised for years. Honey in it is left to the bees.</source>
        <translation>Dunkle Wabe, in der jahrelang gebrütet wurde. Honig darin bleibt den Bienen.</translation>
    </message>
    <message>
        <source>spacing, or bar width</source>
        <translation>Wabenabstand, Leistenbreite</translation>
    </message>
    <message>
        <source>From the middle of one %{comb} to the middle of the next. The wider it is, the thicker the comb and the more honey it holds.</source>
        <translation>Von der Mitte einer Wabe bis zur Mitte der nächsten. Je größer der Abstand, desto dicker die Wabe und desto mehr Honig fasst sie.</translation>
    </message>
    <message>
        <source>super</source>
        <translation>Honigraum</translation>
    </message>
    <message>
        <source>A box above the brood for honey.</source>
        <translation>Eine Zarge über der Brut für den Honig.</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>besetzte Wabengassen</translation>
    </message>
    <message>
        <source>Gaps between %{combs} that are filled with bees, counted from above. Half a gap counts as a half.</source>
        <translation>Lücken zwischen Waben, die voller Bienen sind, von oben gezählt. Eine halbe Gasse zählt halb.</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>besetzte Waben</translation>
    </message>
    <message>
        <source>%{Combs} covered by bees on both sides. One side covered counts as a half.</source>
        <translation>Waben, die auf beiden Seiten von Bienen besetzt sind. Eine besetzte Seite zählt halb.</translation>
    </message>
    <message>
        <source>cluster</source>
        <translation>Wintertraube</translation>
    </message>
    <message>
        <source>The ball in which bees keep each other warm in the cold. It can only eat what it touches.</source>
        <translation>Die Kugel, in der die Bienen einander in der Kälte wärmen. Sie kann nur fressen, was sie berührt.</translation>
    </message>
    <message>
        <source>Kept small on purpose</source>
        <translation>absichtlich klein gehalten</translation>
    </message>
    <message>
        <source>A small colony that is meant to be small, such as one with a spare queen. It is not judged weak for it.</source>
        <translation>Ein kleines Volk, das klein sein soll, etwa mit einer Ersatzkönigin. Es gilt deshalb nicht als schwach.</translation>
    </message>
    <message>
        <source>follower</source>
        <translation>Schied</translation>
    </message>
    <message>
        <source>A board that hangs like a %{comb} and closes off the empty part of a hive.</source>
        <translation>Ein Brett, das wie eine Wabe hängt und den leeren Teil einer Beute abtrennt.</translation>
    </message>
    <message>
        <source>robbers</source>
        <translation>Räuber</translation>
    </message>
    <message>
        <source>Bees of other colonies, or wasps, that carry stores away from a hive too weak to defend itself.</source>
        <translation>Bienen anderer Völker oder Wespen, die Futter aus einer Beute wegtragen, die zu schwach ist, sich zu wehren.</translation>
    </message>
    <message>
        <source>cleansing flights</source>
        <translation>Reinigungsflüge</translation>
    </message>
    <message>
        <source>Short flights on mild winter days; bees do not soil the hive.</source>
        <translation>Kurze Flüge an milden Wintertagen; die Bienen verschmutzen ihre Beute nicht.</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>A stiff sugar dough. Bees can eat it in the cold, when syrup is no longer taken.</source>
        <translation>Ein steifer Zuckerteig. Die Bienen können ihn auch in der Kälte fressen, wenn sie kein Zuckerwasser mehr abnehmen.</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>Der Jahreslauf</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>Trachtende</translation>
    </message>
    <message>
        <source>The day after which bees here usually bring no more nectar home in autumn.</source>
        <translation>Der Tag, nach dem die Bienen hier im Herbst gewöhnlich keinen Nektar mehr heimbringen.</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>empfohlenes Ende der Fütterung</translation>
    </message>
    <message>
        <source>The day by which feeding should be over, so that there is time to ripen and seal the food.</source>
        <translation>Der Tag, bis zu dem die Fütterung abgeschlossen sein soll, damit das Futter noch eingedickt und verdeckelt wird.</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>letzter Tag für Zuckerwasser</translation>
    </message>
    <message>
        <source>The last day on which syrup can still be dried by the bees, as the air is here.</source>
        <translation>Der letzte Tag, an dem die Bienen Zuckerwasser bei der Luft, wie sie hier ist, noch eindicken können.</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>Zuckerwasser nicht mehr abgenommen</translation>
    </message>
    <message>
        <source>From this day on it is usually too cold for bees to come down to a feeder.</source>
        <translation>Von diesem Tag an ist es den Bienen gewöhnlich zu kalt, um ans Futtergefäß zu gehen.</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>Ende der Eilage</translation>
    </message>
    <message>
        <source>The day the queen usually ceases laying for the winter. Food lasts longest from now on.</source>
        <translation>Der Tag, an dem die Königin gewöhnlich für den Winter aufhört zu legen. Von jetzt an reicht das Futter am längsten.</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>Wiederbeginn der Eilage</translation>
    </message>
    <message>
        <source>The day she begins again, often in the middle of winter. Brood must be kept warm, so more is eaten.</source>
        <translation>Der Tag, an dem sie wieder zu legen beginnt, oft mitten im Winter. Die Brut muss warm gehalten werden, daher steigt der Verbrauch.</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>Frühjahrsentwicklung</translation>
    </message>
    <message>
        <source>The weeks in spring in which brood grows quickly. Most food is eaten in them, and most colonies that starve do so then.</source>
        <translation>Die Wochen im Frühjahr, in denen die Brut schnell wächst. In ihnen wird am meisten verbraucht, und die meisten Völker, die verhungern, verhungern dann.</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>The day from which nectar comes in reliably in spring. Up to it the stores must last.</source>
        <translation>Der Tag, von dem an im Frühjahr verlässlich Nektar hereinkommt. Bis dahin muss der Futtervorrat reichen.</translation>
    </message>
    <message>
        <source>dearth</source>
        <translation>Trachtlücke</translation>
    </message>
    <message>
        <source>Weeks without nectar although it is warm enough to fly.</source>
        <translation>Wochen ohne Nektar, obwohl es zum Fliegen warm genug ist.</translation>
    </message>
    <message>
        <source>autumn flow</source>
        <translation>Spättracht</translation>
    </message>
    <message>
        <source>Nectar that may still come in before winter, beyond the little that weeds and ivy bring every autumn, which is always counted.</source>
        <translation>Nektar, der vor dem Winter noch kommen kann, über das Wenige hinaus, das Wildkräuter und Efeu jeden Herbst bringen; dieses Wenige ist immer mitgerechnet.</translation>
    </message>
    <message>
        <source>give or take</source>
        <translation>± (plus oder minus)</translation>
    </message>
    <message>
        <source>About two years of three lie no further from the day given than this.</source>
        <translation>In etwa zwei von drei Jahren liegt der Tag nicht weiter vom angegebenen entfernt.</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Wahrscheinlichkeit</translation>
    </message>
    <message>
        <source>simulated winters</source>
        <translation>durchgerechnete Winter</translation>
    </message>
    <message>
        <source>The program lets the same colony live through hundreds or thousands of winters as they may happen here, some mild and some hard, with colonies that eat more or less. “17 of 100” means that it happened in 17 of every hundred of them.</source>
        <translation>Das Programm rechnet für dasselbe Volk hunderte oder tausende Winter durch, wie sie hier vorkommen können, milde und strenge, mit Völkern, die mehr oder weniger verbrauchen. „17 von 100“ heißt, dass es in 17 von je hundert dieser Winter geschah.</translation>
    </message>
    <message>
        <source>Left alone</source>
        <translation>So gelassen</translation>
    </message>
    <message>
        <source>What happens if you do nothing at all from today on.</source>
        <translation>Was geschieht, wenn Sie von heute an gar nichts tun.</translation>
    </message>
    <message>
        <source>in brackets</source>
        <translation>in Klammern</translation>
    </message>
    <message>
        <source>29.5 kg (24–34) means most probably near 29.5 kg; what is there, wanted, fed or taken is told to half a kilogram, or a pound. The figures in brackets are the spread: unless it is said otherwise, the truth lies between them in eight cases of ten.</source>
        <translation>29&#xa0;kg (24 bis 34) heißt: am wahrscheinlichsten etwa 29&#xa0;kg. Was da ist, gebraucht, gefüttert oder geerntet wird, ist auf ein halbes Kilogramm oder ein Pfund (lb) genau angegeben. Die Zahlen in Klammern sind die Spanne: Wenn nichts anderes dabeisteht, liegt die Wahrheit in acht von zehn Fällen dazwischen.</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>Spanne</translation>
    </message>
    <message>
        <source>How far the truth may lie from a figure. A look at every %{comb} narrows it; a glance through a window leaves it wide.</source>
        <translation>Wie weit die Wahrheit von einer Zahl entfernt liegen kann. Jede Wabe anzusehen macht sie enger; ein kurzer Blick durch ein Sichtfenster lässt sie weit.</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>Standardabweichung</translation>
    </message>
    <message>
        <source>Standard deviation, a measure of spread. About two cases of three lie within one SD of the figure, nineteen of twenty within two.</source>
        <translation>Ein Maß für die Spanne. Etwa zwei von drei Fällen liegen höchstens eine Standardabweichung von der Zahl entfernt, neunzehn von zwanzig höchstens zwei.</translation>
    </message>
    <message>
        <source>nine in ten</source>
        <translation>neun von zehn</translation>
    </message>
    <message>
        <source>A band so wide that nine of ten cases lie in it.</source>
        <translation>Ein Bereich, so breit, dass neun von zehn Fällen darin liegen.</translation>
    </message>
    <message>
        <source>eighty of a hundred</source>
        <translation>achtzig von hundert</translation>
    </message>
    <message>
        <source>A band so wide that eight of ten winters lie in it; one of ten lies above and one below.</source>
        <translation>Ein Bereich, so breit, dass acht von zehn Wintern darin liegen; einer von zehn liegt darüber und einer darunter.</translation>
    </message>
    <message>
        <source>percentile</source>
        <translation>Perzentil</translation>
    </message>
    <message>
        <source>One case of ten lies below the 10th percentile, nine of ten lie below the 90th.</source>
        <translation>Einer von zehn Fällen liegt unter dem 10. Perzentil, neun von zehn liegen unter dem 90.</translation>
    </message>
    <message>
        <source>Another look</source>
        <translation>Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>Whether opening the hive again could change the advice, and which look would tell most.</source>
        <translation>Ob es die Empfehlung ändern könnte, die Beute noch einmal zu öffnen, und welche Durchsicht am meisten sagen würde.</translation>
    </message>
    <message>
        <source>Following and looking back</source>
        <translation>Den Winter verfolgen und zurückblicken</translation>
    </message>
    <message>
        <source>On course</source>
        <translation>Im Plan</translation>
    </message>
    <message>
        <source>What has been weighed and seen since autumn agrees with the forecast, and the stores will last.</source>
        <translation>Was seit dem Herbst gewogen und gesehen wurde, stimmt mit der Prognose überein, und das Futter wird reichen.</translation>
    </message>
    <message>
        <source>glance</source>
        <translation>kurzer Blick</translation>
    </message>
    <message>
        <source>What can be seen without taking the hive apart: flight, the cluster from above, stores through a window.</source>
        <translation>Was zu sehen ist, ohne die Beute auseinanderzunehmen: Bienenflug, die Traube von oben, Futter durch ein Sichtfenster.</translation>
    </message>
    <message>
        <source>contradicts every simulated winter</source>
        <translation>widerspricht jedem durchgerechneten Winter</translation>
    </message>
    <message>
        <source>No winter that may happen here fits this reading. Most often something was weighed that is not bees or food, or something was done and not written down.</source>
        <translation>Kein Winter, der hier vorkommen kann, passt zu diesem Messwert. Meist wurde etwas mitgewogen, das weder Bienen noch Futter ist, oder etwas getan und nicht eingetragen.</translation>
    </message>
    <message>
        <source>mean score</source>
        <translation>mittlere Abweichung</translation>
    </message>
    <message>
        <source>How far forecasts of past winters were from what happened, on average, in the unit of the stores. Smaller is better. A forecast that was sure and wrong loses most.</source>
        <translation>Wie weit die Prognosen vergangener Winter im Mittel von dem entfernt lagen, was geschah, in der Einheit des Futtervorrats. Kleiner ist besser. Am meisten verliert eine Prognose, die sicher war und falsch.</translation>
    </message>
    <message>
        <source>handbook figure</source>
        <translation>Richtwert</translation>
    </message>
    <message>
        <source>The stores that printed advice for your region gives for every colony alike. The program&apos;s forecasts are held against it.</source>
        <translation>Der Futtervorrat, den gedruckte Ratschläge für Ihre Gegend für jedes Volk gleich nennen. Daran werden die Prognosen des Programms gemessen.</translation>
    </message>
    <message>
        <source>learned</source>
        <translation>gelernt</translation>
    </message>
    <message>
        <source>What your own past winters told about how much these bees eat and how fast they die. It corrects the forecast where you want it to.</source>
        <translation>Was Ihre eigenen vergangenen Winter darüber gesagt haben, wie viel diese Bienen verbrauchen und wie schnell sie weniger werden. Es berichtigt die Prognose, wo Sie das wollen.</translation>
    </message>
</context>
<context>
    <name>Grounds</name>
    <message>
        <source>%2, %1: %3.</source>
        <translation>%2, %1: %3.</translation>
    </message>
    <message>
        <source>%2, %1: %3; nothing else is known.</source>
        <translation>%2, %1: %3; sonst ist nichts bekannt.</translation>
    </message>
    <message>
        <source>%2, %1: %3; counts for %4 of 100 parts.</source>
        <translation>%2, %1: %3; zählt mit %4 von 100 Teilen.</translation>
    </message>
    <message>
        <source>Of a comb: the area of its capped and open cells times what a square decimetre of sealed comb holds; open nectar counts as %1 of that. Each comb&apos;s share stands on the page In the hive.</source>
        <translation>Bei einer Wabe: die Fläche ihrer verdeckelten und offenen Zellen mal dem, was ein Quadratdezimeter verdeckelter Wabe fasst; offener Nektar zählt mit dem Faktor %1. Der Anteil jeder Wabe steht auf der Seite In der Beute.</translation>
    </message>
    <message>
        <source>Of a weighing: the reading less the empty hive, taken as %1, and less its bees and bee bread.</source>
        <translation>Bei einer Wägung: der Messwert ohne die leere Beute, gerechnet mit %1, und ohne ihre Bienen und ihr Bienenbrot.</translation>
    </message>
    <message>
        <source>Each counts the more the more exact it is: by one over its variance.</source>
        <translation>Jede Angabe zählt umso mehr, je genauer sie ist: mit eins durch ihre Varianz.</translation>
    </message>
    <message>
        <source>Weighings share the error of the empty weight: all of them together are no surer than that.</source>
        <translation>Alle Wägungen haben denselben Fehler im Leergewicht: Zusammen sind sie nicht sicherer als er.</translation>
    </message>
    <message>
        <source>Lifts of one side lean the same way each time, and so do lifts by hand: many are hardly surer than one.</source>
        <translation>Wer immer dieselbe Seite wiegt, irrt immer in dieselbe Richtung, und beim Anheben von Hand ist es ebenso: Viele Messwerte sind kaum sicherer als einer.</translation>
    </message>
    <message>
        <source>Stores on %1: %2</source>
        <translation>Futtervorrat am %1: %2</translation>
    </message>
    <message>
        <source>From %1 until spring forage starts the bees eat %2 in %3 simulated winters.</source>
        <translation>Vom %1 bis zum Beginn der Frühtracht verbrauchen die Bienen in %3 durchgerechneten Wintern %2.</translation>
    </message>
    <message>
        <source>From %1 until spring forage starts the bees eat %2 in %3 simulated winters: on average %4 the adult bees, %5 to warm brood, %6 to feed it.</source>
        <translation>Vom %1 bis zum Beginn der Frühtracht verbrauchen die Bienen in %3 durchgerechneten Wintern %2: im Mittel die erwachsenen Bienen %4, die Wärme für die Brut %5, ihr Futter %6.</translation>
    </message>
    <message>
        <source>Before spring forage starts, mostly in early spring, they bring in %1 on average.</source>
        <translation>Vor dem Beginn der Frühtracht, meist im zeitigen Frühjahr, tragen sie im Mittel %1 ein.</translation>
    </message>
    <message>
        <source>Adult bees eat for the heat their cluster loses: the colder the more, and the less for each bee the larger the cluster, up to %1 of bees.</source>
        <translation>Die erwachsenen Bienen fressen für die Wärme, die ihre Traube verliert: je kälter, desto mehr, und je größer die Traube (bis %1 Bienen), desto weniger für jede Biene.</translation>
    </message>
    <message>
        <source>A gram of honey holds %1 kilojoules.</source>
        <translation>Ein Gramm Honig enthält %1 Kilojoule.</translation>
    </message>
    <message>
        <source>Brood is kept at %1, and each worker reared takes %2 of honey.</source>
        <translation>Die Brut wird auf %1 gehalten, und jede aufgezogene Arbeiterin braucht %2 Honig.</translation>
    </message>
    <message>
        <source>Bees that emerge beside little brood live through the winter, those that emerge beside much of it die within weeks: colonies shrink from August to November.</source>
        <translation>Bienen, die bei wenig Brut schlüpfen, leben den Winter durch; die bei viel Brut schlüpfen, sterben nach Wochen: Völker schrumpfen von August bis November.</translation>
    </message>
    <message>
        <source>Weather, heat, brood and deaths of bees differ from winter to winter as they do in nature.</source>
        <translation>Wetter, Wärme, Brut und Bienenverluste sind von Winter zu Winter verschieden, wie in der Natur.</translation>
    </message>
    <message>
        <source>With so much in the hive on %1 the stores fall below the reserve of %2 before spring forage starts in no more than %3 of 100 simulated winters. Reserve and risk are yours to set, in the yard&apos;s Place.</source>
        <translation>Ist am %1 so viel in der Beute, fällt der Futtervorrat vor dem Beginn der Frühtracht in höchstens %3 von 100 durchgerechneten Wintern unter die Sicherheitsreserve von %2. Sicherheitsreserve und Risiko legen Sie auf der Seite Standort des Standes fest.</translation>
    </message>
    <message>
        <source>They are about %1 bees.</source>
        <translation>Es sind etwa %1 Bienen.</translation>
    </message>
    <message>
        <source>Needed on %1 to last until spring forage starts: %2</source>
        <translation>Futterbedarf am %1, um bis zum Beginn der Frühtracht zu reichen: %2</translation>
    </message>
    <message>
        <source>With so much in the hive on %1, the day winter begins for it, the stores fall below %2 before spring forage starts in no more than %3 of 100 simulated winters.</source>
        <translation>Ist am %1, dem Tag, an dem für das Volk der Winter beginnt, so viel in der Beute, fällt der Futtervorrat vor dem Beginn der Frühtracht in höchstens %3 von 100 durchgerechneten Wintern unter %2.</translation>
    </message>
    <message>
        <source>Until then about %1 are eaten and %2 of nectar found, as stores.</source>
        <translation>Bis dahin werden etwa %1 verbraucht und %2 an Nektar eingetragen, als Futter gerechnet.</translation>
    </message>
    <message>
        <source>With the empty hive, taken as %1, its bees, brood and bee bread it then weighs %2.</source>
        <translation>Mit der leeren Beute, gerechnet mit %1, und mit Bienen, Brut und Bienenbrot wiegt sie dann %2.</translation>
    </message>
    <message>
        <source>Wanted on %1: %2 of stores</source>
        <translation>Zielvorrat am %1: %2 Futter</translation>
    </message>
    <message>
        <source>The day was given in the yard&apos;s Place and not derived from the climate.</source>
        <translation>Der Tag wurde auf der Seite Standort des Standes angegeben und nicht aus dem Klima abgeleitet.</translation>
    </message>
    <message>
        <source>The day the climate gives was moved just far enough to follow a date given in the yard&apos;s Place.</source>
        <translation>Der Tag aus dem Klima wurde gerade so weit verschoben, dass er auf einen Tag folgt, der auf der Seite Standort des Standes angegeben ist.</translation>
    </message>
    <message>
        <source>Spring forage starts: %1</source>
        <translation>Beginn der Frühtracht: %1</translation>
    </message>
    <message>
        <source>A warm or a cold spring moves it: in every simulated winter spring forage starts on a day of its own.</source>
        <translation>Ein warmes oder kaltes Frühjahr verschiebt ihn: In jedem durchgerechneten Winter beginnt die Frühtracht an einem eigenen Tag.</translation>
    </message>
    <message>
        <source>Spring forage starts: around %1 (%2 to %3 in 80 of 100 winters)</source>
        <translation>Beginn der Frühtracht: um den %1 (%2 bis %3 in 80 von 100 Wintern)</translation>
    </message>
    <message>
        <source>From the %{combs} or seams the bees cover, or the number given, carried to %1 by the model.</source>
        <translation>Aus den besetzten Waben oder Wabengassen oder der angegebenen Zahl, vom Modell bis zum %1 fortgerechnet.</translation>
    </message>
    <message>
        <source>Bees on %1: %2</source>
        <translation>Bienen am %1: %2</translation>
    </message>
    <message>
        <source>So wide is the range in which 80 of 100 likely values of what is missing or spare lie.</source>
        <translation>So breit ist der Bereich, in dem 80 von 100 wahrscheinlichen Werten dessen liegen, was fehlt oder übrig ist.</translation>
    </message>
    <message>
        <source>What is missing or spare, known now within %1</source>
        <translation>Was fehlt oder übrig ist, bekannt jetzt auf %1</translation>
    </message>
    <message>
        <source>It is what would be left of it after that look, given how exact such a look is.</source>
        <translation>So viel bliebe davon nach dieser Durchsicht, nach dem, wie genau eine solche Durchsicht ist.</translation>
    </message>
    <message>
        <source>What is missing or spare, known after another look within %1</source>
        <translation>Was fehlt oder übrig ist, bekannt nach einer weiteren Durchsicht auf %1</translation>
    </message>
    <message>
        <source>Counted over %1 simulated winters: those in which less than the reserve of %2 is left on some day before spring forage starts.</source>
        <translation>Gezählt über %1 durchgerechnete Winter: jene, in denen an einem Tag vor dem Beginn der Frühtracht weniger als die Sicherheitsreserve von %2 übrig ist.</translation>
    </message>
    <message>
        <source>Counted over %1 simulated winters: those in which nothing is left on some day before spring forage starts.</source>
        <translation>Gezählt über %1 durchgerechnete Winter: jene, in denen an einem Tag vor dem Beginn der Frühtracht nichts mehr übrig ist.</translation>
    </message>
    <message>
        <source>Each begins with other stores, as widely spread as they are known: %1.</source>
        <translation>Jeder beginnt mit einem anderen Futtervorrat aus der Spanne, in der er bekannt ist: %1.</translation>
    </message>
    <message>
        <source>They are the same winters for everything that can be done, so the figures can be compared.</source>
        <translation>Für alles, was getan werden kann, sind es dieselben Winter; deshalb lassen sich die Zahlen vergleichen.</translation>
    </message>
    <message>
        <source>That is %1; in the others so much or more is left.</source>
        <translation>Das sind %1; in den anderen ist so viel oder mehr übrig.</translation>
    </message>
    <message>
        <source>%2 or more left, if you do as advised: %1 simulated winters</source>
        <translation>%2 oder mehr übrig, wenn Sie der Empfehlung folgen: %1 durchgerechnete Winter</translation>
    </message>
    <message>
        <source>%2 or more left, left alone: %1 simulated winters</source>
        <translation>%2 oder mehr übrig, so gelassen: %1 durchgerechnete Winter</translation>
    </message>
    <message>
        <source>Runs out, if you do as advised: %1 simulated winters</source>
        <translation>Das Futter geht aus, wenn Sie der Empfehlung folgen: %1 durchgerechnete Winter</translation>
    </message>
    <message>
        <source>Runs out, left alone: %1 simulated winters</source>
        <translation>Das Futter geht aus, so gelassen: %1 durchgerechnete Winter</translation>
    </message>
    <message>
        <source>%1 wide and %2 high</source>
        <translation>%1 breit und %2 hoch</translation>
    </message>
    <message>
        <source>%1 wide at the bar, %2 below, and %3 high</source>
        <translation>%1 breit an der Leiste, %2 unten und %3 hoch</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>durch ein Sichtfenster gesehen</translation>
    </message>
    <message>
        <source>one face traced on a photograph</source>
        <translation>eine Seite auf einem Foto nachgezeichnet</translation>
    </message>
    <message>
        <source>one face seen</source>
        <translation>eine Seite gesehen</translation>
    </message>
    <message>
        <source>both faces traced on a photograph</source>
        <translation>beide Seiten auf einem Foto nachgezeichnet</translation>
    </message>
    <message>
        <source>both faces seen</source>
        <translation>beide Seiten gesehen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The comb is %1, built to %2 of 100 parts, %3 from its neighbours&apos; middle. Sealed from edge to edge on both faces it would hold %4: honey between the cell bottoms and the cappings, less the wax.</source>
        <translation>Die Wabe ist %1, zu %2 von 100 Teilen ausgebaut, %3 von der Mitte der nächsten entfernt. Auf beiden Seiten von Rand zu Rand verdeckelt würde sie %4 fassen: Honig zwischen Zellböden und Deckeln, ohne das Wachs.</translation>
    </message>
    <message>
        <source>It was not looked at and is taken as the mean of the combs that were; how far that may be off is known only roughly.</source>
        <translation>Sie wurde nicht angesehen und ist als Mittel der angesehenen Waben gerechnet; wie weit das danebenliegen kann, ist nur grob bekannt.</translation>
    </message>
    <message>
        <source>Capped are %1 of 100 parts: %2.</source>
        <translation>Verdeckelt sind %1 von 100 Teilen: %2.</translation>
    </message>
    <message>
        <source>Open nectar is on %1 of 100 parts. It is thinner and less deep than sealed honey and counts as %2 of it: %3.</source>
        <translation>Offener Nektar bedeckt %1 von 100 Teilen. Er ist dünner und steht weniger tief als verdeckelter Honig und zählt mit dem Faktor %2: %3.</translation>
    </message>
    <message>
        <source>%1: one standard deviation is %2 of 100 parts, from the judged area and from how deep cells are filled.</source>
        <translation>%1: Eine Standardabweichung ist %2 von 100 Teilen, aus der geschätzten Fläche und daraus, wie tief die Zellen gefüllt sind.</translation>
    </message>
    <message>
        <source>That is the target less what will be there when winter begins: about %1 now, %2 wanted from today on.</source>
        <translation>Das ist der Zielvorrat ohne das, was zu Winterbeginn da sein wird: jetzt etwa %1, von heute an gebraucht %2.</translation>
    </message>
    <message>
        <source>A kilogram of white sugar fed as %1 becomes %2 kg of ripe stores: the water goes down to 18 parts of 100, and driving it off costs the bees food.</source>
        <translation>Ein Kilogramm weißer Zucker, als Zuckerwasser %1 gefüttert, wird zu %2&#xa0;kg reifem Futter: Das Wasser sinkt auf 18 von 100 Teilen, und es auszutreiben kostet die Bienen Futter.</translation>
    </message>
    <message>
        <source>%1 of sugar in %2 of water make %3 of syrup, which become %4 of stores.</source>
        <translation>%1 Zucker in %2 Wasser ergeben %3 Zuckerwasser; daraus werden %4 Futter.</translation>
    </message>
    <message>
        <source>White sugar to feed: %1</source>
        <translation>Zucker zu füttern: %1</translation>
    </message>
    <message>
        <source>Fondant is for what can no longer be had as syrup.</source>
        <translation>Futterteig ist für das, was als Zuckerwasser nicht mehr abgenommen wird.</translation>
    </message>
    <message>
        <source>Fondant to feed: %1</source>
        <translation>Futterteig zu füttern: %1</translation>
    </message>
    <message>
        <source>The rule: the first day on which the air&apos;s daily mean of usual years is below %1. Later syrup is no longer taken and ripened for certain.</source>
        <translation>Die Regel: der erste Tag, an dem das Tagesmittel der Luft in gewöhnlichen Jahren unter %1 liegt. Späteres Zuckerwasser wird nicht mehr sicher abgenommen und eingedickt.</translation>
    </message>
    <message>
        <source>A warm or a cold autumn moves it by some %1 days.</source>
        <translation>Ein warmer oder kalter Herbst verschiebt ihn um etwa %1 Tage.</translation>
    </message>
    <message>
        <source>Last day for syrup: %1</source>
        <translation>Letzter Tag für Zuckerwasser: %1</translation>
    </message>
    <message>
        <source>%1 winters were simulated from %2 on. What was seen since makes those that fit it count more; as many as %3 equal ones are left.</source>
        <translation>Vom %2 an wurden %1 Winter durchgerechnet. Nach dem, was seither gesehen wurde, zählen die passenden mehr; zusammen sagen sie so viel wie %3 gleich zählende.</translation>
    </message>
    <message>
        <source>Weighed or judged on %1, as stores: %2.</source>
        <translation>Gewogen oder geschätzt am %1, als Futter gerechnet: %2.</translation>
    </message>
    <message>
        <source>Nothing was weighed since; the figure rests on the autumn&apos;s forecast alone.</source>
        <translation>Seither wurde nichts gewogen; die Zahl beruht allein auf der Prognose vom Herbst.</translation>
    </message>
    <message>
        <source>A reading becomes stores when the hive&apos;s own weight, its bees and its bee bread are taken off. A later reading teaches what the hive itself weighs, and then earlier ones are read anew.</source>
        <translation>Aus einem Messwert wird Futter, wenn das Gewicht der Beute selbst, ihrer Bienen und ihres Bienenbrots abgezogen ist. Ein späterer Messwert zeigt, was die Beute selbst wiegt; dann werden die früheren neu gelesen.</translation>
    </message>
    <message>
        <source>Left on %1: %2</source>
        <translation>Übrig am %1: %2</translation>
    </message>
    <message>
        <source>The forecast of %1, before anything was seen since: stores of %2 with one standard deviation of %3, less what is eaten, with the feeds and harvests that were planned then.</source>
        <translation>Die Prognose vom %1, bevor seither etwas gesehen wurde: ein Futtervorrat von %2 mit einer Standardabweichung von %3, ohne den Verbrauch, mit den Futtergaben und Ernten, die damals geplant waren.</translation>
    </message>
    <message>
        <source>Expected in autumn for %1: %2</source>
        <translation>Im Herbst erwartet für den %1: %2</translation>
    </message>
    <message>
        <source>Counted over the winters: those in which less than the reserve of %1 is left on some day before spring forage starts.</source>
        <translation>Gezählt über die Winter: jene, in denen an einem Tag vor dem Beginn der Frühtracht weniger als die Sicherheitsreserve von %1 übrig ist.</translation>
    </message>
    <message>
        <source>Counted over the winters: those in which nothing is left on some day before spring forage starts.</source>
        <translation>Gezählt über die Winter: jene, in denen an einem Tag vor dem Beginn der Frühtracht nichts mehr übrig ist.</translation>
    </message>
    <message>
        <source>As it was forecast on %1, before anything was seen since.</source>
        <translation>Nach der Prognose vom %1, bevor seither etwas gesehen wurde.</translation>
    </message>
    <message>
        <source>Falls below the reserve, as forecast in autumn: %1 winters</source>
        <translation>Fällt unter die Sicherheitsreserve, nach der Prognose vom Herbst: %1 Winter</translation>
    </message>
    <message>
        <source>Falls below the reserve, if nothing is done: %1 winters</source>
        <translation>Fällt unter die Sicherheitsreserve, wenn nichts geschieht: %1 Winter</translation>
    </message>
    <message>
        <source>Runs out, as forecast in autumn: %1 winters</source>
        <translation>Das Futter geht aus, nach der Prognose vom Herbst: %1 Winter</translation>
    </message>
    <message>
        <source>Runs out, if nothing is done: %1 winters</source>
        <translation>Das Futter geht aus, wenn nichts geschieht: %1 Winter</translation>
    </message>
    <message>
        <source>With %3 more in the hive it falls below %1 in no more than %2 of 100 winters that fit what was seen.</source>
        <translation>Mit %3 mehr in der Beute fällt der Futtervorrat in höchstens %2 von 100 Wintern, die zum Gesehenen passen, unter %1.</translation>
    </message>
    <message>
        <source>Syrup is still taken; its visits stand on the page Feeding.</source>
        <translation>Zuckerwasser wird noch abgenommen; die Termine stehen auf der Seite Fütterung.</translation>
    </message>
    <message>
        <source>Sugar to feed: %1, for %2 of stores</source>
        <translation>Zucker zu füttern: %1, für %2 Futter</translation>
    </message>
    <message>
        <source>One visit with no more than %1; what is still missing then is told by the next weighing.</source>
        <translation>Ein Termin mit höchstens %1; was dann noch fehlt, sagt die nächste Wägung.</translation>
    </message>
    <message>
        <source>Fondant to lay on: %1, for %2 of stores</source>
        <translation>Futterteig aufzulegen: %1, für %2 Futter</translation>
    </message>
    <message>
        <source>A week before %1, when bees that eat much (4 winters of 5 eat less) come down to %2.</source>
        <translation>Eine Woche vor dem %1, wenn Bienen mit hohem Verbrauch (4 von 5 Wintern brauchen weniger) bei %2 ankommen.</translation>
    </message>
    <message>
        <source>Today: it cannot wait, or is taken best now.</source>
        <translation>Heute: Es kann nicht warten oder wird jetzt am besten abgenommen.</translation>
    </message>
    <message>
        <source>Feed on %1</source>
        <translation>Futtergabe am %1</translation>
    </message>
    <message>
        <source>On that day half of the winters that fit what was seen are below the reserve of %1.</source>
        <translation>An diesem Tag liegt die Hälfte der Winter, die zum Gesehenen passen, unter der Sicherheitsreserve von %1.</translation>
    </message>
    <message>
        <source>On that day a tenth of the winters that fit what was seen are below the reserve of %1.</source>
        <translation>An diesem Tag liegt ein Zehntel der Winter, die zum Gesehenen passen, unter der Sicherheitsreserve von %1.</translation>
    </message>
    <message>
        <source>Below the reserve: %1</source>
        <translation>Unter der Sicherheitsreserve: %1</translation>
    </message>
    <message>
        <source>Fondant is laid on one visit at a time, and the next follows a weighing: before the visit that is planned, or two weeks after that of today.</source>
        <translation>Futterteig wird Termin für Termin aufgelegt, und der nächste richtet sich nach einer Wägung: vor dem geplanten Termin oder zwei Wochen nach dem heutigen.</translation>
    </message>
    <message>
        <source>Weigh on %1</source>
        <translation>Wiegen am %1</translation>
    </message>
    <message>
        <source>Were the hive weighed on that day, its reading would change whether to feed in %1 of 100 cases, told from the winters that fit what was seen.</source>
        <translation>Würde die Beute an diesem Tag gewogen, so würde der Messwert in %1 von 100 Fällen ändern, ob zu füttern ist; das zeigen die Winter, die zum Gesehenen passen.</translation>
    </message>
    <message>
        <source>It is the first day on which a weighing is worth it; before, it would change too seldom what to do.</source>
        <translation>Es ist der erste Tag, an dem sich eine Wägung lohnt; vorher würde sie zu selten ändern, was zu tun ist.</translation>
    </message>
    <message>
        <source>A weighing on %1 changes what to do in %2 of 100 cases</source>
        <translation>Eine Wägung am %1 ändert in %2 von 100 Fällen, was zu tun ist</translation>
    </message>
    <message>
        <source>Weigh again by %1</source>
        <translation>Noch einmal wiegen bis zum %1</translation>
    </message>
    <message>
        <source>What the colony was seen to eat makes winters with an early or a late spring count more, so colonies of one yard may differ.</source>
        <translation>Was das Volk nachweislich verbraucht hat, lässt Winter mit frühem oder spätem Frühjahr mehr zählen; deshalb können sich Völker eines Standes unterscheiden.</translation>
    </message>
    <message>
        <source>What stays is never below what the colony should winter on, nor below what is usual here; what comes off are whole supers and whole outer %{combs}.</source>
        <translation>Was bleibt, liegt nie unter dem, womit das Volk überwintern soll, und nie unter dem hier Üblichen; was abgenommen wird, sind ganze Honigräume und ganze Randwaben.</translation>
    </message>
    <message>
        <source>About %1 are in the hive, %2 are needed.</source>
        <translation>Etwa %1 sind in der Beute, %2 werden gebraucht.</translation>
    </message>
    <message>
        <source>To spare on %1: %2</source>
        <translation>Übrig am %1: %2</translation>
    </message>
    <message>
        <source>The super is for people: its honey was not counted with what the bees have, and its %{combs} hold no brood.</source>
        <translation>Der Honigraum ist für Sie bestimmt: Sein Honig wurde nicht zum Vorrat der Bienen gezählt, und in seinen Waben ist keine Brut.</translation>
    </message>
    <message>
        <source>A comb&apos;s honey is its area times what a square decimetre of sealed comb holds.</source>
        <translation>Der Honig einer Wabe ist ihre Fläche mal dem, was ein Quadratdezimeter verdeckelter Wabe fasst.</translation>
    </message>
    <message>
        <source>Honey in the super: %1</source>
        <translation>Honig im Honigraum: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} that hold no brood, are capped enough, took no syrup and are not of the old brood nest weigh together no more than what is to spare.</source>
        <translation>
            <numerusform>Eine Wabe, die keine Brut enthält, genug verdeckelt ist, kein Zuckerwasser aufnahm und nicht aus dem alten Brutnest stammt, wiegt nicht mehr, als übrig ist.</numerusform>
            <numerusform>%n Waben, die keine Brut enthalten, genug verdeckelt sind, kein Zuckerwasser aufnahmen und nicht aus dem alten Brutnest stammen, wiegen zusammen nicht mehr, als übrig ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>To spare are %1.</source>
        <translation>Übrig sind %1.</translation>
    </message>
    <message>
        <source>Honey in the %{combs} that may come off: %1</source>
        <translation>Honig in den Waben, die geerntet werden können: %1</translation>
    </message>
    <message>
        <source>%1 to %2, which lacks stores.</source>
        <translation>%1 für %2; dort fehlt Futter.</translation>
    </message>
    <message>
        <source>%{Combs} within the yard come before sugar; a colony gives no more than it can spare at the risk you accept.</source>
        <translation>Waben im Stand kommen vor Zucker; ein Volk gibt nicht mehr her, als es bei dem Risiko, das Sie hinnehmen, entbehren kann.</translation>
    </message>
    <message>
        <source>Honey in %{combs} to give: %1</source>
        <translation>Honig in Waben zum Abgeben: %1</translation>
    </message>
    <message>
        <source>In 80 of 100 cases the truth lies between the two figures in brackets, in 10 below, in 10 above.</source>
        <translation>In 80 von 100 Fällen liegt die Wahrheit zwischen den beiden Zahlen in Klammern, in 10 darunter, in 10 darüber.</translation>
    </message>
    <message>
        <source>Were other winters drawn, it would differ by some %1 of 100.</source>
        <translation>Mit anderen Wintern gerechnet, läge die Zahl etwa %1 von 100 daneben.</translation>
    </message>
    <message>
        <source>The rule: the first day from which the air&apos;s daily mean of usual years stays above %1 and the day is longer than %2 hours.</source>
        <translation>Die Regel: der erste Tag, von dem an das Tagesmittel der Luft in gewöhnlichen Jahren über %1 bleibt und der Tag länger als %2 Stunden ist.</translation>
    </message>
    <message>
        <source>A kilogram of fondant becomes %1 kg of stores; kept low on purpose.</source>
        <translation>Ein Kilogramm Futterteig wird zu %1&#xa0;kg Futter; bewusst niedrig gerechnet.</translation>
    </message>
    <message>
        <source>The reserve is yours to set, in the yard&apos;s Place: what you wish to be left at the worst moment before spring forage starts.</source>
        <translation>Die Sicherheitsreserve legen Sie auf der Seite Standort des Standes fest: was im schlechtesten Augenblick vor dem Beginn der Frühtracht noch übrig sein soll.</translation>
    </message>
    <message>
        <source>You accept that less is left in %1 of 100 winters.</source>
        <translation>Sie nehmen hin, dass in %1 von 100 Wintern weniger übrig ist.</translation>
    </message>
    <message>
        <source>Reserve: %1</source>
        <translation>Sicherheitsreserve: %1</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1&#xa0;g</translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>sugar %1</source>
        <translation>Zucker %1</translation>
    </message>
    <message>
        <source>water %1</source>
        <translation>Wasser %1</translation>
    </message>
    <message>
        <source>heights stand for weights</source>
        <translation>die Höhen stehen für Gewichte</translation>
    </message>
    <message>
        <source>lid on tight</source>
        <translation>Deckel dicht geschlossen</translation>
    </message>
    <message>
        <source>syrup under a float</source>
        <translation>Zuckerwasser unter einem Schwimmer</translation>
    </message>
    <message>
        <source>the bees come up inside</source>
        <translation>die Bienen kommen innen hoch</translation>
    </message>
    <message>
        <source>over the bees, not beside them</source>
        <translation>über den Bienen, nicht daneben</translation>
    </message>
    <message>
        <source>narrow entrance</source>
        <translation>enges Flugloch</translation>
    </message>
    <message>
        <source>stores touch the bees</source>
        <translation>Futter berührt die Bienen</translation>
    </message>
    <message>
        <source>empty combs between: out of reach</source>
        <translation>Leerwaben dazwischen: außer Reichweite</translation>
    </message>
    <message>
        <source>snow on top may stay</source>
        <translation>Schnee obenauf darf bleiben</translation>
    </message>
    <message>
        <source>so may snow around it</source>
        <translation>Schnee ringsum auch</translation>
    </message>
    <message>
        <source>entrance free, mouse guard in front</source>
        <translation>Flugloch frei, Mäusegitter davor</translation>
    </message>
    <message>
        <source>four of eight fields are capped</source>
        <translation>vier von acht Feldern sind verdeckelt</translation>
    </message>
    <message>
        <source>with both faces like this:</source>
        <translation>wenn beide Seiten so sind:</translation>
    </message>
    <message>
        <source>a quarter: %1</source>
        <translation>ein Viertel: %1</translation>
    </message>
    <message>
        <source>half: %1</source>
        <translation>die Hälfte: %1</translation>
    </message>
    <message>
        <source>three quarters: %1</source>
        <translation>drei Viertel: %1</translation>
    </message>
    <message>
        <source>capped honey</source>
        <translation>verdeckelter Honig</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>offener Nektar</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>Bienenbrot</translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>verdeckelte Brut</translation>
    </message>
    <message>
        <source>grub and eggs</source>
        <translation>Made und Stifte</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>empty cells</source>
        <translation>leere Zellen</translation>
    </message>
    <message>
        <source>five seams</source>
        <translation>fünf besetzte Wabengassen</translation>
    </message>
    <message>
        <source>about %1 bees on combs of %2</source>
        <translation>etwa %1 Bienen auf Waben von %2</translation>
    </message>
    <message>
        <source>a palm, %1 by %1</source>
        <translation>eine Handfläche, %1 mal %1</translation>
    </message>
    <message>
        <source>%1 cells of one face</source>
        <translation>%1 Zellen einer Seite</translation>
    </message>
    <message>
        <source>every comb</source>
        <translation>jede Wabe</translation>
    </message>
    <message>
        <source>honey off</source>
        <translation>Honig ab</translation>
    </message>
    <message>
        <source>weigh</source>
        <translation>wiegen</translation>
    </message>
    <message>
        <source>last feed down</source>
        <translation>letztes Futter abgenommen</translation>
    </message>
    <message>
        <source>heft</source>
        <translation>anheben</translation>
    </message>
    <message>
        <source>cold, no brood</source>
        <translation>kalt, keine Brut</translation>
    </message>
    <message>
        <source>heft or weigh</source>
        <translation>anheben oder wiegen</translation>
    </message>
    <message>
        <source>brood again</source>
        <translation>wieder Brut</translation>
    </message>
    <message>
        <source>first nectar</source>
        <translation>erster Nektar</translation>
    </message>
    <message>
        <source>light</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>schwer</translation>
    </message>
    <message>
        <source>what is wanted that day</source>
        <translation>was an diesem Tag nötig ist</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>a share</comment>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>the whole hive</source>
        <translation>die ganze Beute</translation>
    </message>
    <message>
        <source>keep it closed</source>
        <translation>geschlossen lassen</translation>
    </message>
    <message>
        <source>the lid alone</source>
        <translation>nur der Deckel</translation>
    </message>
    <message>
        <source>half a minute</source>
        <translation>eine halbe Minute</translation>
    </message>
    <message>
        <source>a full look</source>
        <translation>ganze Durchsicht</translation>
    </message>
    <message>
        <source>1. aside, in the shade</source>
        <translation>1. beiseite, in den Schatten</translation>
    </message>
    <message>
        <source>2. then one by one</source>
        <translation>2. dann eine nach der anderen</translation>
    </message>
    <message>
        <source>the nest last: eggs are enough, leave the queen be</source>
        <translation>das Brutnest zuletzt: Stifte genügen, die Königin in Ruhe lassen</translation>
    </message>
    <message>
        <source>Only my hives</source>
        <translation>Nur meine Beuten</translation>
    </message>
    <message>
        <source>Every hive</source>
        <translation>Alle Beuten</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Quellen: %1.</translation>
    </message>
    <message>
        <source>When to look, and why</source>
        <translation>Wann nachsehen und warum</translation>
    </message>
    <message>
        <source>Hefting and weighing</source>
        <translation>Anheben und Wiegen</translation>
    </message>
    <message>
        <source>What a comb holds</source>
        <translation>Was eine Wabe fasst</translation>
    </message>
    <message>
        <source>What is in the cells</source>
        <translation>Was in den Zellen ist</translation>
    </message>
    <message>
        <source>Counting bees and brood</source>
        <translation>Bienen und Brut zählen</translation>
    </message>
    <message>
        <source>Opening a hive gently</source>
        <translation>Eine Beute schonend öffnen</translation>
    </message>
    <message>
        <source>Mixing and giving feed</source>
        <translation>Futter mischen und geben</translation>
    </message>
    <message>
        <source>Checks in winter</source>
        <translation>Kontrollen im Winter</translation>
    </message>
    <message>
        <source>Hive</source>
        <translation>Beute</translation>
    </message>
    <message>
        <source>Sugar to water</source>
        <translation>Zucker zu Wasser</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>Becomes stores of</source>
        <translation>Wird zu Futter</translation>
    </message>
    <message>
        <source>Ratios here are by weight, sugar to water. Two cups of sugar on one of water are only %1 to 1 by weight: use a scale.</source>
        <translation>Alle Mischungen sind nach Gewicht, Zucker zu Wasser. Zwei Tassen Zucker auf eine Tasse Wasser sind nach Gewicht nur %1 zu 1: Nehmen Sie eine Waage.</translation>
    </message>
    <message>
        <source>The same sugar with less and less water: 1 to 1, 3 to 2 and 2 to 1 by weight.</source>
        <translation>Derselbe Zucker mit immer weniger Wasser: 1 zu 1, 3 zu 2 und 2 zu 1 nach Gewicht.</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mischen</translation>
    </message>
    <message>
        <source>Stir white granulated sugar into water of %1 until it is clear. Never boil, no acid, no brown or icing sugar. Give it lukewarm.</source>
        <translation>Rühren Sie weißen Kristallzucker in Wasser von %1, bis es klar ist. Nie kochen, keine Säure, kein brauner Zucker, kein Puderzucker. Geben Sie es lauwarm.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Welche Mischung</translation>
    </message>
    <message>
        <source>For winter stores 3:2 while five weeks of warm days remain before the last day for syrup, then 2:1: less water to drive off. 1:1 only helps a small colony along.</source>
        <translation>Für den Wintervorrat 3:2, solange vor dem letzten Tag für Zuckerwasser noch fünf warme Wochen bleiben, danach 2:1: Es ist weniger Wasser auszutreiben. 1:1 hilft nur einem kleinen Volk weiter.</translation>
    </message>
    <message>
        <source>A feeder over the %{combs} and under the lid: bees come up inside, nothing gets in from outside, the entrance is narrow.</source>
        <translation>Ein Futtergefäß über den Waben und unter dem Deckel: Die Bienen kommen innen hoch, von außen kommt nichts hinein, das Flugloch ist eng.</translation>
    </message>
    <message>
        <source>Feeder</source>
        <translation>Futtergefäß</translation>
    </message>
    <message>
        <source>Inside and above the bees, tight against those from outside, with a float so that none drown. Supers whose honey is for people come off first.</source>
        <translation>In der Beute und über den Bienen, dicht gegen die von außen, mit einem Schwimmer, damit keine ertrinkt. Honigräume, deren Honig Sie ernten wollen, kommen vorher ab.</translation>
    </message>
    <message>
        <source>Robbers and wasps</source>
        <translation>Räuber und Wespen</translation>
    </message>
    <message>
        <source>Feed all colonies the same evening, spill nothing, narrow the entrance to %1 by %2 at most, for a weak colony to one bee.</source>
        <translation>Füttern Sie alle Völker am selben Abend, verschütten Sie nichts, engen Sie das Flugloch auf höchstens %1 mal %2 ein, bei einem schwachen Volk auf eine Bienenbreite.</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Syrup needs %1 weeks to be sealed, and under %2 it is hardly taken. The page Feeding says the day for your yard.</source>
        <translation>Zuckerwasser braucht %1 Wochen, bis es verdeckelt ist, und unter %2 wird es kaum noch abgenommen. Die Seite Fütterung nennt den Tag für Ihren Stand.</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>In winter the only feed: on the bars over the cluster so that it touches the bees, covered, at most %1 a visit, for a nucleus %2. In a long hive stand it beside the cluster. Never feed honey of unknown origin.</source>
        <translation>Im Winter das einzige Futter: auf den Oberträgern über der Traube, so dass er sie berührt, zugedeckt, höchstens %1 je Termin, für einen Ableger %2. In einer Trogbeute stellen Sie ihn neben die Traube. Füttern Sie nie Honig unbekannter Herkunft.</translation>
    </message>
    <message>
        <source>In winter you help from outside. Go round every two weeks and after each storm: entrance, weight, tracks.</source>
        <translation>Im Winter helfen Sie von außen. Machen Sie alle zwei Wochen und nach jedem Sturm einen Rundgang: Flugloch, Gewicht, Spuren.</translation>
    </message>
    <message>
        <source>A hive in snow: snow around it may stay, the entrance is free and behind a mouse guard.</source>
        <translation>Eine Beute im Schnee: Der Schnee ringsum darf bleiben, das Flugloch ist frei und hinter einem Mäusegitter.</translation>
    </message>
    <message>
        <source>Entrance</source>
        <translation>Flugloch</translation>
    </message>
    <message>
        <source>Keep it open: draw dead bees out with a bent wire, break ice away. Loose snow around the hive is a coat. Fit a mouse guard, openings about %1, before days stay below %2.</source>
        <translation>Halten Sie es offen: Ziehen Sie tote Bienen mit einem gebogenen Draht heraus, brechen Sie Eis weg. Lockerer Schnee um die Beute ist ein Mantel. Bringen Sie ein Mäusegitter an, Öffnungen etwa %1, bevor die Tage unter %2 bleiben.</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Heft the same side each time, or read the scale. Loss is slow until brood begins, then several times as fast.</source>
        <translation>Heben Sie immer dieselbe Seite an oder lesen Sie die Waage ab. Die Abnahme ist gering, bis wieder Brut da ist, danach um ein Mehrfaches schneller.</translation>
    </message>
    <message>
        <source>Left: stores touch the cluster. Right: empty %{combs} lie between, and in the cold the bees do not cross them.</source>
        <translation>Links: Das Futter berührt die Traube. Rechts: Leerwaben liegen dazwischen, und in der Kälte überqueren die Bienen sie nicht.</translation>
    </message>
    <message>
        <source>In reach</source>
        <translation>In Reichweite</translation>
    </message>
    <message>
        <source>The cluster eats only what it touches. %1 empty %{combs} between it and the stores are a wall in the cold: on a day of %2 hang a full %{comb} against the bees.</source>
        <translation>Die Traube frisst nur, was sie berührt. %1 Leerwaben zwischen ihr und dem Futter sind in der Kälte eine Mauer: Hängen Sie an einem Tag mit %2 eine volle Futterwabe an den Bienensitz.</translation>
    </message>
    <message>
        <source>Act now</source>
        <translation>Jetzt handeln</translation>
    </message>
    <message>
        <source>It comes up by itself when hefted; food for fewer than %1 days; bees right under the lid with no capped comb beside them; bees head down in empty cells. Lay fondant on the bees today, weigh, and come again.</source>
        <translation>Die Beute kommt beim Anheben von selbst hoch; das Futter reicht keine %1 Tage; die Bienen sitzen direkt unter dem Deckel ohne verdeckelte Wabe daneben; Bienen stecken kopfüber in leeren Zellen. Legen Sie noch heute Futterteig auf die Bienen, wiegen Sie, und kommen Sie wieder.</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Abgestorben</translation>
    </message>
    <message>
        <source>Close it the same day, or robbers carry away what killed it. Nothing of it goes to another colony until disease is ruled out.</source>
        <translation>Verschließen Sie die Beute am selben Tag, sonst tragen Räuber fort, woran das Volk starb. Nichts daraus kommt zu einem anderen Volk, bevor eine Krankheit ausgeschlossen ist.</translation>
    </message>
    <message>
        <source>Signs of disease are for the bee inspector, medicines for the vet and the label. Local codes on registering, moving, feeding and burning come before anything said here. No honey for children under twelve months.</source>
        <translation>Krankheitsanzeichen sind Sache des Bienensachverständigen, Tierarzneimittel die von Tierarztpraxis und Packungsbeilage. Örtliche Vorschriften über Melden, Wandern, Füttern und Verbrennen gehen allem hier Gesagten vor. Kein Honig für Kinder unter zwölf Monaten.</translation>
    </message>
    <message>
        <source>All of it, both faces</source>
        <translation>Die ganze, beide Seiten</translation>
    </message>
    <message>
        <source>Half of it</source>
        <translation>Die Hälfte</translation>
    </message>
    <message>
        <source>One field of one face</source>
        <translation>Ein Feld einer Seite</translation>
    </message>
    <message>
        <source>Bees of a seam, or of a covered %{comb}</source>
        <translation>Bienen je Wabengasse oder besetzter Wabe</translation>
    </message>
    <message>
        <source>Hold the %{comb} over the hive and ask one thing of each face: what share of the comb is capped? Leave the wood out.</source>
        <translation>Halten Sie die Wabe über die Beute und fragen Sie sich bei jeder Seite nur eines: Welcher Anteil der Wabe ist verdeckelt? Das Holz zählt nicht mit.</translation>
    </message>
    <message>
        <source>One face of a comb of %1 cut into eight fields. Here %2 of the face is capped.</source>
        <translation>Eine Seite einer Wabe von %1, in acht Felder geteilt. Hier sind %2 der Seite verdeckelt.</translation>
    </message>
    <message>
        <source>Count fields</source>
        <translation>Felder zählen</translation>
    </message>
    <message>
        <source>Think of the face as eight fields, four across and two down. Count those that are capped; two half ones make one.</source>
        <translation>Denken Sie sich die Seite in acht Felder geteilt, vier nebeneinander und zwei übereinander. Zählen Sie die verdeckelten; zwei halbe sind eines.</translation>
    </message>
    <message>
        <source>Both faces</source>
        <translation>Beide Seiten</translation>
    </message>
    <message>
        <source>They seldom match: judge both and take the mean. Where only one was seen, say so; it counts as less sure.</source>
        <translation>Sie sind selten gleich: Schätzen Sie beide und nehmen Sie das Mittel. Wo nur eine gesehen wurde, geben Sie es an; sie zählt als weniger sicher.</translation>
    </message>
    <message>
        <source>Bands deceive</source>
        <translation>Streifen täuschen</translation>
    </message>
    <message>
        <source>A band under the top bar looks like more than it is. A band of a quarter of the height is a quarter of the comb.</source>
        <translation>Ein Streifen unter dem Oberträger sieht nach mehr aus, als er ist. Ein Streifen von einem Viertel der Höhe ist ein Viertel der Wabe.</translation>
    </message>
    <message>
        <source>A quarter, a half and three quarters of a comb of %1 capped, and what each holds with both faces alike.</source>
        <translation>Ein Viertel, die Hälfte und drei Viertel einer Wabe von %1 verdeckelt, und was jede fasst, wenn beide Seiten gleich sind.</translation>
    </message>
    <message>
        <source>By the palm</source>
        <translation>Mit der Handfläche</translation>
    </message>
    <message>
        <source>A palm of capped comb, %1 by %1, holds about %2 with both faces capped.</source>
        <translation>Eine Handfläche verdeckelter Wabe, %1 mal %1, enthält etwa %2, wenn beide Seiten verdeckelt sind.</translation>
    </message>
    <message>
        <source>Thick combs</source>
        <translation>Dicke Waben</translation>
    </message>
    <message>
        <source>The wider combs hang, the thicker they are drawn. With %1 from comb to comb instead of %2 a full one holds %3 instead of %4: give the width where it differs.</source>
        <translation>Je weiter Waben auseinander hängen, desto dicker werden sie ausgebaut. Mit %1 von Wabe zu Wabe statt %2 fasst eine volle %3 statt %4: Geben Sie den Abstand an, wenn er abweicht.</translation>
    </message>
    <message>
        <source>“Full”</source>
        <translation>„Voll“</translation>
    </message>
    <message>
        <source>A comb called full has rims. Where combs were only counted, a full one is therefore taken for %1.</source>
        <translation>Eine Wabe, die voll genannt wird, hat Ränder. Wo Waben nur gezählt wurden, wird eine volle deshalb mit %1 gerechnet.</translation>
    </message>
    <message>
        <source>Capped honey of one %{comb}:</source>
        <translation>Verdeckelter Honig einer Wabe:</translation>
    </message>
    <message>
        <source>Five things may be in a cell. Stand with the sun over your shoulder, so that it shines into the cells.</source>
        <translation>Fünferlei kann in einer Zelle sein. Stellen Sie sich so, dass die Sonne über Ihre Schulter in die Zellen scheint.</translation>
    </message>
    <message>
        <source>Cells face on: capped honey, open nectar, bee bread, sealed brood, eggs and grubs, and empty ones.</source>
        <translation>Zellen von vorn: verdeckelter Honig, offener Nektar, Bienenbrot, verdeckelte Brut, Stifte und Maden und leere.</translation>
    </message>
    <message>
        <source>Capped honey</source>
        <translation>Verdeckelter Honig</translation>
    </message>
    <message>
        <source>Flat or slightly sunken lids of wax, white to brown, without holes. Dry-looking lids have air under them, wet-looking ones touch the honey; both count in full.</source>
        <translation>Flache oder leicht eingesunkene Deckel aus Wachs, weiß bis braun, ohne Löcher. Unter trocken aussehenden Deckeln ist Luft, nass aussehende berühren den Honig; beide zählen voll.</translation>
    </message>
    <message>
        <source>Open nectar or syrup</source>
        <translation>Offener Nektar oder Zuckerwasser</translation>
    </message>
    <message>
        <source>Glistens. Hold the %{comb} flat and jerk it once: what spatters is raw. Its area counts for %1 of capped honey within a week of a feed or a flow, later for %2.</source>
        <translation>Glänzt. Halten Sie die Wabe flach und geben Sie ihr einen Ruck: Was spritzt, ist unreif. Seine Fläche zählt in der ersten Woche nach einer Futtergabe oder Tracht %1 von verdeckeltem Honig, später %2.</translation>
    </message>
    <message>
        <source>Bee bread</source>
        <translation>Bienenbrot</translation>
    </message>
    <message>
        <source>Matt and packed, in many colours. It feeds brood, is no winter food, and makes a %{comb} feel heavy.</source>
        <translation>Matt und festgestampft, in vielen Farben. Es nährt die Brut, ist kein Winterfutter und macht eine Wabe schwer.</translation>
    </message>
    <message>
        <source>Sealed brood</source>
        <translation>Verdeckelte Brut</translation>
    </message>
    <message>
        <source>Even tan lids, slightly domed, matt as a biscuit. Sunken, greasy or pierced lids are signs of disease: close the hive, move nothing, call the bee inspector.</source>
        <translation>Gleichmäßige hellbraune Deckel, leicht gewölbt, matt wie ein Keks. Eingesunkene, fettige oder durchlöcherte Deckel sind Krankheitsanzeichen: Schließen Sie die Beute, hängen Sie nichts um, rufen Sie den Bienensachverständigen.</translation>
    </message>
    <message>
        <source>Eggs and grubs</source>
        <translation>Stifte und Maden</translation>
    </message>
    <message>
        <source>Eggs stand like tiny grains of rice, grubs lie curled and white. Eggs mean a queen within three days. Late in the year there may be none.</source>
        <translation>Stifte stehen wie winzige Reiskörner, Maden liegen gekrümmt und weiß. Stifte heißen, dass vor höchstens drei Tagen eine Königin da war. Spät im Jahr kann es keine geben.</translation>
    </message>
    <message>
        <source>Where they lie on a %{comb}: capped honey in an arch on top, open nectar under it, brood in the lower middle with bee bread around.</source>
        <translation>Wo was auf einer Wabe liegt: verdeckelter Honig als Bogen oben, darunter offener Nektar, Brut in der Mitte unten mit Bienenbrot ringsum.</translation>
    </message>
    <message>
        <source>Write down the share of each; what is left is empty. From syrup to sealed takes %1 weeks, so what is open when the cold begins often stays so. Honey for people: only %{combs} with at least %2 of their stores capped.</source>
        <translation>Schreiben Sie von jedem den Anteil auf; der Rest ist leer. Vom Zuckerwasser bis verdeckelt vergehen %1 Wochen; was bei Beginn der Kälte offen ist, bleibt es oft. Honig ernten: nur von Waben, deren Futter zu mindestens %2 verdeckelt ist.</translation>
    </message>
    <message>
        <source>Count on a cool morning before they fly, when all are at home. At noon many are out. Count before you smoke: smoke moves them.</source>
        <translation>Zählen Sie an einem kühlen Morgen, bevor sie fliegen, wenn alle zu Hause sind. Mittags sind viele draußen. Zählen Sie vor dem Rauch: Rauch treibt sie umher.</translation>
    </message>
    <message>
        <source>A box from above: bees fill four gaps between the %{combs} from end to end and two by half, which makes five seams.</source>
        <translation>Eine Zarge von oben: Die Bienen füllen vier Wabengassen ganz und zwei halb, das sind fünf besetzte Wabengassen.</translation>
    </message>
    <message>
        <source>Seams</source>
        <translation>Wabengassen</translation>
    </message>
    <message>
        <source>Lift lid and cover and look down. A gap filled with bees from end to end is one seam, half filled it is a half. With two boxes tip the upper one and count the lower one too. Seams are good to %1.</source>
        <translation>Heben Sie Deckel und Abdeckung ab und schauen Sie hinunter. Eine von vorn bis hinten mit Bienen gefüllte Gasse ist eine besetzte Wabengasse, eine halb gefüllte eine halbe. Kippen Sie bei zwei Zargen die obere an und zählen Sie auch die untere. Wabengassen sind auf %1 genau.</translation>
    </message>
    <message>
        <source>Covered %{combs}</source>
        <translation>Besetzte Waben</translation>
    </message>
    <message>
        <source>A %{comb} so full of bees on both sides that hardly any cell shows is one; one side is a half. A loose cover shows comb between the bees and counts for half to two thirds. This is good to %1.</source>
        <translation>Eine Wabe, auf beiden Seiten so voller Bienen, dass kaum eine Zelle zu sehen ist, ist eine; eine Seite ist eine halbe. Lockerer Besatz lässt zwischen den Bienen Wabe sehen und zählt halb bis zwei Drittel. Das ist auf %1 genau.</translation>
    </message>
    <message>
        <source>In the cold</source>
        <translation>In der Kälte</translation>
    </message>
    <message>
        <source>The cluster draws together and fills fewer seams than there are bees for. Write it down as seen in winter, not as a count.</source>
        <translation>Die Traube zieht sich zusammen und füllt weniger Gassen, als Bienen da sind. Tragen Sie es als im Winter gesehen ein, nicht als Zählung.</translation>
    </message>
    <message>
        <source>Brood</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>Lay your palm on it: %1 by %1 of one face are %2 cells. Judge it as a share of the comb, like honey. It tells whether the queen lays, and what food and warmth it will take.</source>
        <translation>Legen Sie die Handfläche darauf: %1 mal %1 einer Seite sind %2 Zellen. Schätzen Sie sie wie Honig als Anteil der Wabe. Sie zeigt, ob die Königin legt und was an Futter und Wärme nötig wird.</translation>
    </message>
    <message>
        <source>The last brood of the year: a patch of the size of a palm near the middle of a %{comb}.</source>
        <translation>Die letzte Brut des Jahres: eine Stelle, so groß wie eine Handfläche, nahe der Mitte einer Wabe.</translation>
    </message>
    <message>
        <source>Too few</source>
        <translation>Zu wenige</translation>
    </message>
    <message>
        <source>Under %1 well covered %{combs}, or %2 bees, before winter: unite with a healthy neighbour, unless it is a nucleus kept small on purpose.</source>
        <translation>Weniger als %1 gut besetzte Waben oder %2 Bienen vor dem Winter: Vereinigen Sie es mit einem gesunden Nachbarvolk, wenn es kein Ableger ist, den Sie absichtlich klein halten.</translation>
    </message>
    <message>
        <source>Way of judging</source>
        <translation>Art zu schätzen</translation>
    </message>
    <message>
        <source>Give or take</source>
        <comment>heading: two of three cases lie within</comment>
        <translation>Plus oder minus</translation>
    </message>
    <message>
        <source>every %{comb}, both faces</source>
        <translation>jede Wabe, beide Seiten</translation>
    </message>
    <message>
        <source>every %{comb}, one face</source>
        <translation>jede Wabe, eine Seite</translation>
    </message>
    <message>
        <source>full and half %{combs} only counted</source>
        <translation>volle und halbe Waben nur gezählt</translation>
    </message>
    <message>
        <source>on a scale, empty hive weighed too</source>
        <translation>auf einer Waage, leere Beute auch gewogen</translation>
    </message>
    <message>
        <source>on a scale, empty weight assumed</source>
        <translation>auf einer Waage, Leergewicht angenommen</translation>
    </message>
    <message>
        <source>hefted by hand</source>
        <translation>von Hand angehoben</translation>
    </message>
    <message>
        <source>In autumn you decide what a colony can no longer put right by itself: whether honey comes off, whether it is left alone, how much it is fed. A few %{combs} too little and it starves in spring; far too much and the queen has no room. So look before you take.</source>
        <translation>Im Herbst entscheiden Sie, was ein Volk selbst nicht mehr richten kann: ob Honig geerntet wird, ob es so bleibt, wie viel es gefüttert wird. Ein paar Waben zu wenig, und es verhungert im Frühjahr; viel zu viel, und die Königin hat keinen Platz. Sehen Sie also nach, bevor Sie ernten.</translation>
    </message>
    <message>
        <source>Stores through the year: high when the honey is off, slowly down in the cold, steeply down while brood grows in spring.</source>
        <translation>Der Futtervorrat im Jahr: hoch, wenn der Honig ab ist, langsam fallend in der Kälte, steil fallend, wenn im Frühjahr die Brut wächst.</translation>
    </message>
    <message>
        <source>When the honey is off</source>
        <translation>Wenn der Honig ab ist</translation>
    </message>
    <message>
        <source>Look at every %{comb}, some %1 days before feeding is best finished. One look tells stores, brood, bees and empty comb, and there is still time to feed.</source>
        <translation>Sehen Sie jede Wabe an, etwa %1 Tage bevor die Fütterung am besten abgeschlossen ist. Eine Durchsicht zeigt Futter, Brut, Bienen und Leerwaben, und zum Füttern bleibt noch Zeit.</translation>
    </message>
    <message>
        <source>When the last feed is down</source>
        <translation>Wenn das letzte Futter abgenommen ist</translation>
    </message>
    <message>
        <source>Weigh, and write it down. Every later weight is read against this one.</source>
        <translation>Wiegen Sie und tragen Sie es ein. Jedes spätere Gewicht wird mit diesem verglichen.</translation>
    </message>
    <message>
        <source>Leave the %{combs} alone. Heft every two weeks; once there is brood again, weigh every two to three.</source>
        <translation>Lassen Sie die Waben in Ruhe. Heben Sie alle zwei Wochen an; sobald wieder Brut da ist, wiegen Sie alle zwei bis drei.</translation>
    </message>
    <message>
        <source>In spring</source>
        <translation>Im Frühjahr</translation>
    </message>
    <message>
        <source>These weeks take most. Colonies that starve mostly do so now, with brood to keep warm, not in midwinter: go on hefting until nectar comes in every day.</source>
        <translation>Diese Wochen zehren am meisten. Völker, die verhungern, verhungern meist jetzt, mit Brut, die gewärmt werden muss, und nicht mitten im Winter: Heben Sie weiter an, bis jeden Tag Nektar hereinkommt.</translation>
    </message>
    <message>
        <source>No way of judging is exact, and each is wrong in its own way. The eye errs alike on every %{comb} of a visit; a scale does not know what the empty hive weighs. Two ways together tell more than one way twice. In two of three cases the truth lies within this:</source>
        <translation>Keine Art zu schätzen ist genau, und jede irrt auf ihre Weise. Das Auge irrt bei jeder Wabe einer Durchsicht gleich; eine Waage weiß nicht, was die leere Beute wiegt. Zwei Arten zusammen sagen mehr als eine zweimal. In zwei von drei Fällen liegt die Wahrheit innerhalb von:</translation>
    </message>
    <message>
        <source>A closed hive tells most for least: two minutes, and no bee disturbed. Take stones, feeder and wet snow off first, or write down that they are on.</source>
        <translation>Eine geschlossene Beute sagt am meisten für den geringsten Aufwand: zwei Minuten, und keine Biene gestört. Nehmen Sie vorher Steine, Futtergefäß und nassen Schnee ab oder geben Sie an, dass sie darauf sind.</translation>
    </message>
    <message>
        <source>A hand under the edge of the floor lifts one side of the hive by a finger&apos;s breadth.</source>
        <translation>Eine Hand unter der Kante des Bodens hebt eine Seite der Beute fingerbreit an.</translation>
    </message>
    <message>
        <source>Heft</source>
        <translation>Anheben</translation>
    </message>
    <message>
        <source>Hold the floor by its edge and lift that side by a finger&apos;s breadth, slowly, always the same side. A heavy hive feels nailed down, a fair one comes up with a pull, a light one by itself. Light is taken for %1 of what is wanted that day, fair for %2, heavy for %3: good for a warning, never for an amount.</source>
        <translation>Fassen Sie den Boden an der Kante und heben Sie diese Seite langsam fingerbreit an, immer dieselbe Seite. Eine schwere Beute fühlt sich wie angenagelt an, eine mittlere kommt mit einem Zug, eine leichte von selbst. Leicht wird mit %1 dessen gerechnet, was an diesem Tag nötig ist, mittel mit %2, schwer mit %3: gut als Warnung, nie für eine Menge.</translation>
    </message>
    <message>
        <source>One side on a scale</source>
        <translation>Eine Seite auf der Waage</translation>
    </message>
    <message>
        <source>Hook a luggage scale to the middle of that edge, pull straight up until light shows under it, read while it hangs still. Twice the reading is roughly the whole, but stores seldom lie in the middle: at %1 it may be off by %2.</source>
        <translation>Haken Sie eine Kofferwaage in die Mitte dieser Kante, ziehen Sie gerade nach oben, bis Licht darunter zu sehen ist, und lesen Sie ab, wenn sie still hängt. Das Doppelte ist ungefähr das Ganze, aber das Futter liegt selten in der Mitte: Bei %1 kann es um %2 danebenliegen.</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Beide Seiten</translation>
    </message>
    <message>
        <source>Lift the other side too and add the two. The sum is the whole hive, never half of it. A lifted side reads %1 low, which is put right for you: %2 and %3 make %4.</source>
        <translation>Heben Sie auch die andere Seite und zählen Sie beide Werte zusammen. Die Summe ist die ganze Beute, nie die Hälfte davon. Eine gehobene Seite zeigt %1 zu wenig an; das wird für Sie berichtigt: %2 und %3 ergeben %4.</translation>
    </message>
    <message>
        <source>The same hive lifted at its left and at its right; the two readings are added.</source>
        <translation>Dieselbe Beute links und rechts gehoben; beide Werte werden zusammengezählt.</translation>
    </message>
    <message>
        <source>Stores are what is left once the empty hive, bees, brood and bee bread are taken off. Not told, one box of %1 with drawn combs, floor and lids is taken to weigh %2, give or take %3. Weigh an empty one once, and every weighing tells more. Mind your back: lift with a straight one.</source>
        <translation>Das Futter ist, was bleibt, wenn leere Beute, Bienen, Brut und Bienenbrot abgezogen sind. Ohne Angabe wird eine Zarge von %1 mit ausgebauten Waben, Boden und Deckeln mit %2 gerechnet, plus oder minus %3. Wiegen Sie einmal eine leere, und jede Wägung sagt mehr. Denken Sie an Ihren Rücken: Heben Sie mit geradem.</translation>
    </message>
    <message>
        <source>Every opening costs warmth, and in the cold food. Ask first whether a weight would tell enough. If not, choose the day and know what you want to see.</source>
        <translation>Jedes Öffnen kostet Wärme und in der Kälte Futter. Fragen Sie sich erst, ob ein Gewicht genug sagen würde. Wenn nicht, wählen Sie den Tag und wissen Sie vorher, was Sie sehen wollen.</translation>
    </message>
    <message>
        <source>From %1 a full look, from %2 half a minute, from %3 the lid alone; below that the hive stays closed.</source>
        <translation>Ab %1 eine ganze Durchsicht, ab %2 eine halbe Minute, ab %3 nur der Deckel; darunter bleibt die Beute geschlossen.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Nicht jetzt</translation>
    </message>
    <message>
        <source>Not below %1 for a full look or %2 for half a minute; in winter lift the lid alone, from %3. Not in wind or rain. Not in a dearth at noon, when robbers search: then go toward evening.</source>
        <translation>Nicht unter %1 für eine ganze Durchsicht oder %2 für eine halbe Minute; im Winter nur den Deckel heben, ab %3. Nicht bei Wind oder Regen. Nicht mittags in einer Trachtlücke, wenn Räuber suchen: Gehen Sie dann gegen Abend.</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>Rauch</translation>
    </message>
    <message>
        <source>Three quiet puffs into the entrance, wait a minute, one under the lid. More drives the queen about.</source>
        <translation>Drei ruhige Stöße ins Flugloch, eine Minute warten, einer unter den Deckel. Mehr treibt die Königin umher.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Begin with an outer %{comb} and stand it beside, in the shade: now there is room. Go on %{comb} by %{comb}, lifting slowly so that no bee is rolled, and hang each back in its place, the same way round. Look for eggs, not for the queen. Cover what you are not looking at.</source>
        <translation>Beginnen Sie mit einer Randwabe und stellen Sie sie daneben in den Schatten: Jetzt ist Platz. Gehen Sie Wabe für Wabe weiter, heben Sie langsam, damit keine Biene gequetscht wird, und hängen Sie jede an ihren Platz zurück, gleich herum. Suchen Sie Stifte, nicht die Königin. Decken Sie zu, was Sie gerade nicht ansehen.</translation>
    </message>
    <message>
        <source>Seen from above: first the outer %{comb} comes out, then one after the other moves into the gap.</source>
        <translation>Von oben gesehen: Erst kommt die Randwabe heraus, dann rückt eine nach der anderen in die Lücke.</translation>
    </message>
    <message>
        <source>Comb without a frame</source>
        <translation>Wabe ohne Rähmchen</translation>
    </message>
    <message>
        <source>Free its sides first, keep it upright, begin at the empty end, and leave it alone in heat.</source>
        <translation>Lösen Sie zuerst ihre Seiten, halten Sie sie aufrecht, beginnen Sie am leeren Ende, und lassen Sie sie bei Hitze in Ruhe.</translation>
    </message>
    <message>
        <source>Robbing</source>
        <translation>Räuberei</translation>
    </message>
    <message>
        <source>Bees wrestle at the entrance, search the joints, and leave heavy. Close up, narrow the entrance to one bee, open no other hive that day.</source>
        <translation>Bienen ringen am Flugloch, suchen an den Fugen und fliegen schwer ab. Schließen Sie, engen Sie das Flugloch auf eine Bienenbreite ein, öffnen Sie an diesem Tag keine andere Beute.</translation>
    </message>
    <message>
        <source>In a yard</source>
        <translation>Am Stand</translation>
    </message>
    <message>
        <source>Healthy colonies first, doubtful ones last; wash hands and tools after these. With an allergy to stings never work alone.</source>
        <translation>Gesunde Völker zuerst, zweifelhafte zuletzt; waschen Sie danach Hände und Werkzeug. Mit einer Allergie gegen Stiche arbeiten Sie nie allein.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>the book&apos;s file, such as windfall.larder</source>
        <translation>die Datei des Stockbuchs, etwa windfall.larder</translation>
    </message>
    <message>
        <source>who writes (default: the user of the system)</source>
        <translation>wer einträgt (sonst: wer am System angemeldet ist)</translation>
    </message>
    <message>
        <source>another machine&apos;s sign that the book is open there is stale</source>
        <translation>das Zeichen eines anderen Rechners, dass das Buch dort offen ist, ist veraltet</translation>
    </message>
    <message>
        <source>its name, or its number where none has the name</source>
        <translation>sein Name, oder seine Nummer, wo keines den Namen hat</translation>
    </message>
    <message>
        <source>day of the record, YYYY-MM-DD</source>
        <translation>Tag des Eintrags, YYYY-MM-DD</translation>
    </message>
    <message>
        <source>what else is to be remembered</source>
        <translation>was sonst noch zu merken ist</translation>
    </message>
    <message>
        <source>it is right, unlikely as it may be</source>
        <translation>es stimmt, so unwahrscheinlich es sein mag</translation>
    </message>
    <message>
        <source>name of the yard</source>
        <translation>Name des Standes</translation>
    </message>
    <message>
        <source>climate station it is near</source>
        <translation>Klimastation in der Nähe</translation>
    </message>
    <message>
        <source>town it is near: its coordinates, height and the nearest station are used</source>
        <translation>Ort in der Nähe: gilt mit seinen Koordinaten, seiner Höhe und der nächsten Station</translation>
    </message>
    <message>
        <source>degrees, north positive; the nearest station is used</source>
        <translation>Grad, Norden positiv; es gilt die nächste Station</translation>
    </message>
    <message>
        <source>degrees, east positive</source>
        <translation>Grad, Osten positiv</translation>
    </message>
    <message>
        <source>height in metres; shifts the station&apos;s temperatures</source>
        <translation>Höhe in Metern; verschiebt die Temperaturen der Station</translation>
    </message>
    <message>
        <source>nectar still to come in autumn: none, trickle, fair, strong</source>
        <translation>Spättracht, die noch kommt: none, trickle, fair, strong</translation>
    </message>
    <message>
        <source>the hives can be reached in the middle of winter</source>
        <translation>die Beuten sind mitten im Winter erreichbar</translation>
    </message>
    <message>
        <source>full combs (frames) of honey in store</source>
        <translation>volle Futterwaben auf Vorrat</translation>
    </message>
    <message>
        <source>metric, us, imperial (default: those of the country)</source>
        <translation>metric, us, imperial (sonst: die des Landes)</translation>
    </message>
    <message>
        <source>the day asked for (default: today); later records do not count</source>
        <translation>der Stichtag (sonst: heute); spätere Einträge zählen nicht</translation>
    </message>
    <message>
        <source>only this one</source>
        <translation>nur dieses</translation>
    </message>
    <message>
        <source>the colony; it must be named</source>
        <translation>das Volk; es muss genannt sein</translation>
    </message>
    <message>
        <source>leave out what past winters taught</source>
        <translation>ohne das, was vergangene Winter gezeigt haben</translation>
    </message>
    <message>
        <source>comma, semicolon, tab</source>
        <translation>comma, semicolon, tab</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>comma oder point</translation>
    </message>
    <message>
        <source>column of the times, by name or number</source>
        <translation>Spalte der Zeiten, nach Name oder Nummer</translation>
    </message>
    <message>
        <source>column of the dates, where they stand apart</source>
        <translation>Spalte der Tage, wo sie für sich stehen</translation>
    </message>
    <message>
        <source>column of the weights</source>
        <translation>Spalte der Gewichte</translation>
    </message>
    <message>
        <source>kg, g or lb</source>
        <translation>kg, g oder lb</translation>
    </message>
    <message>
        <source>dmy, mdy or ymd</source>
        <translation>dmy, mdy oder ymd</translation>
    </message>
    <message>
        <source>where the hive stands: America/Halifax, UTC, +02:00</source>
        <translation>wo die Beute steht: America/Halifax, UTC, +02:00</translation>
    </message>
    <message>
        <source>what the logger&apos;s clock shows, where that is another zone</source>
        <translation>was die Uhr der Waage zeigt, wo das eine andere Zone ist</translation>
    </message>
    <message>
        <source>begin a book with its first yard</source>
        <translation>ein Stockbuch mit dem ersten Stand beginnen</translation>
    </message>
    <message>
        <source>a further yard</source>
        <translation>ein weiterer Stand</translation>
    </message>
    <message>
        <source>hive format, see winterlarder-cli hive-formats</source>
        <translation>Beutentyp, siehe winterlarder-cli hive-formats</translation>
    </message>
    <message>
        <source>boxes of that format (default 1)</source>
        <translation>Zargen dieses Beutentyps (sonst 1)</translation>
    </message>
    <message>
        <source>a super of this format on them; once for each</source>
        <translation>ein Honigraum dieses Beutentyps darauf; für jeden einmal</translation>
    </message>
    <message>
        <source>a colony and its hive</source>
        <translation>ein Volk und seine Beute</translation>
    </message>
    <message>
        <source>name of the colony</source>
        <translation>Name des Volkes</translation>
    </message>
    <message>
        <source>where it stands, if the book has several yards</source>
        <translation>wo es steht, wenn das Stockbuch mehrere Stände hat</translation>
    </message>
    <message>
        <source>timber (default), thick-timber, wrapped, polystyrene, straw</source>
        <translation>timber (sonst), thick-timber, wrapped, polystyrene, straw</translation>
    </message>
    <message>
        <source>insulation above the combs</source>
        <translation>Dämmung über den Waben</translation>
    </message>
    <message>
        <source>weight of the hive with its empty combs</source>
        <translation>Gewicht der Beute mit ihren leeren Waben</translation>
    </message>
    <message>
        <source>whom the honey of the supers is for: people, bees</source>
        <translation>für wen der Honig der Honigräume ist: people, bees</translation>
    </message>
    <message>
        <source>round, top, box, contact, frame, end</source>
        <translation>round, top, box, contact, frame, end</translation>
    </message>
    <message>
        <source>bees: dark, carniolan, buckfast, italian</source>
        <translation>Bienen: dark, carniolan, buckfast, italian</translation>
    </message>
    <message>
        <source>year the queen was raised</source>
        <translation>Jahr, in dem die Königin schlüpfte</translation>
    </message>
    <message>
        <source>where the colony came from</source>
        <translation>woher das Volk kam</translation>
    </message>
    <message>
        <source>day the colony began</source>
        <translation>Tag, an dem das Volk begann</translation>
    </message>
    <message>
        <source>the boxes a hive has from a day on; the rest of the hive stays as it was</source>
        <translation>die Zargen einer Beute ab einem Tag; der Rest der Beute bleibt, wie er war</translation>
    </message>
    <message>
        <source>weight of the hive with these boxes and their empty combs</source>
        <translation>Gewicht der Beute mit diesen Zargen und ihren leeren Waben</translation>
    </message>
    <message>
        <source>another name for a colony</source>
        <translation>ein anderer Name für ein Volk</translation>
    </message>
    <message>
        <source>its name, or #ID</source>
        <translation>sein Name oder #ID</translation>
    </message>
    <message>
        <source>the new name</source>
        <translation>der neue Name</translation>
    </message>
    <message>
        <source>what was seen in a hive</source>
        <translation>was in einer Beute gesehen wurde</translation>
    </message>
    <message>
        <source>the combs of a case file as a JSON file, or - for standard input</source>
        <translation>die Waben einer Falldatei als JSON-Datei, oder - für die Standardeingabe</translation>
    </message>
    <message>
        <source>combs (frames) covered with bees on both sides</source>
        <translation>auf beiden Seiten besetzte Waben</translation>
    </message>
    <message>
        <source>gaps between combs (frames) filled with bees</source>
        <translation>besetzte Wabengassen</translation>
    </message>
    <message>
        <source>bees, counted or weighed</source>
        <translation>Bienen, gezählt oder gewogen</translation>
    </message>
    <message>
        <source>cells with brood of all ages</source>
        <translation>Zellen mit Brut jeden Alters</translation>
    </message>
    <message>
        <source>water in the honey, percent</source>
        <translation>Wassergehalt des Honigs in Prozent</translation>
    </message>
    <message>
        <source>the queen was seen</source>
        <translation>die Königin wurde gesehen</translation>
    </message>
    <message>
        <source>eggs were seen</source>
        <translation>Stifte wurden gesehen</translation>
    </message>
    <message>
        <source>there are signs of disease</source>
        <translation>es gibt Krankheitsanzeichen</translation>
    </message>
    <message>
        <source>mites were counted this season</source>
        <translation>die Milben wurden in dieser Saison gezählt</translation>
    </message>
    <message>
        <source>mites on 100 bees, as counted</source>
        <translation>Milben auf 100 Bienen, wie gezählt</translation>
    </message>
    <message>
        <source>mites were treated this season</source>
        <translation>gegen Milben wurde in dieser Saison behandelt</translation>
    </message>
    <message>
        <source>food is beside or right above the bees</source>
        <translation>Futter ist neben den Bienen oder direkt über ihnen</translation>
    </message>
    <message>
        <source>sugar or medicine was in the hive while its honey was made</source>
        <translation>Zucker oder Tierarzneimittel war in der Beute, als ihr Honig entstand</translation>
    </message>
    <message>
        <source>blossom, honeydew, heather</source>
        <translation>blossom, honeydew, heather</translation>
    </message>
    <message>
        <source>a weight, a lift or a heft</source>
        <translation>ein Gewicht, eine angehobene Seite oder eine Hebekontrolle</translation>
    </message>
    <message>
        <source>the whole hive on a scale</source>
        <translation>die ganze Beute auf einer Waage</translation>
    </message>
    <message>
        <source>a side lifted, or both one after the other</source>
        <translation>eine Seite gewogen, oder beide nacheinander</translation>
    </message>
    <message>
        <source>light, fair or heavy</source>
        <translation>light, fair oder heavy</translation>
    </message>
    <message>
        <source>rain or snow lay on the hive</source>
        <translation>Regen oder Schnee lag auf der Beute</translation>
    </message>
    <message>
        <source>syrup, fondant or dry sugar that was given</source>
        <translation>Zuckerwasser, Futterteig oder trockener Zucker, der gegeben wurde</translation>
    </message>
    <message>
        <source>sugar in it</source>
        <translation>Zucker darin</translation>
    </message>
    <message>
        <source>litres of syrup, with --ratio</source>
        <translation>Liter Zuckerwasser, mit --ratio</translation>
    </message>
    <message>
        <source>sugar to water by mass</source>
        <translation>Zucker zu Wasser nach Gewicht</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>syrup (default), fondant, dry-sugar</source>
        <translation>syrup (sonst), fondant, dry-sugar</translation>
    </message>
    <message>
        <source>it came after the look of that day (default: where that look is written down already)</source>
        <translation>es kam nach der Durchsicht dieses Tages (sonst: wo diese schon eingetragen ist)</translation>
    </message>
    <message>
        <source>honey that was taken</source>
        <translation>Honig, der geerntet wurde</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>Honig</translation>
    </message>
    <message>
        <source>combs (frames) taken</source>
        <translation>geerntete Waben</translation>
    </message>
    <message>
        <source>medicine given; its honey is then not for people</source>
        <translation>gegebenes Tierarzneimittel; der Honig wird dann nicht geerntet</translation>
    </message>
    <message>
        <source>what was given</source>
        <translation>was gegeben wurde</translation>
    </message>
    <message>
        <source>last day its honey is not for people, as the label says</source>
        <translation>letzter Tag der Wartezeit, laut Packungsbeilage</translation>
    </message>
    <message>
        <source>how a colony left: united, sold or dead</source>
        <translation>wie ein Volk abging: united, sold oder dead</translation>
    </message>
    <message>
        <source>united, sold or dead</source>
        <translation>united, sold oder dead</translation>
    </message>
    <message>
        <source>the colony it was united into</source>
        <translation>das Volk, mit dem es vereinigt wurde</translation>
    </message>
    <message>
        <source>what it died of</source>
        <translation>woran es starb</translation>
    </message>
    <message>
        <source>a glance in winter: bees flying, the cluster, stores, a dead-out</source>
        <translation>ein kurzer Blick im Winter: Bienenflug, die Traube, Futter, ein totes Volk</translation>
    </message>
    <message>
        <source>flying, cluster, stores or dead</source>
        <translation>flying, cluster, stores oder dead</translation>
    </message>
    <message>
        <source>gaps between combs the cluster fills</source>
        <translation>Wabengassen, die die Traube füllt</translation>
    </message>
    <message>
        <source>sealed stores were in sight beside the bees</source>
        <translation>neben den Bienen war verdeckeltes Futter zu sehen</translation>
    </message>
    <message>
        <source>first comb with bees of the cluster, from the left, from 1</source>
        <translation>erste Wabe mit Bienen der Traube, von links, ab 1</translation>
    </message>
    <message>
        <source>there were none</source>
        <translation>es gab keine</translation>
    </message>
    <message>
        <source>daily temperatures of a yard from a CSV table; they replace simulated days already past</source>
        <translation>Tagestemperaturen eines Standes aus einer CSV-Tabelle; sie ersetzen gerechnete Tage, die vorbei sind</translation>
    </message>
    <message>
        <source>CSV table, or - for standard input</source>
        <translation>CSV-Tabelle, oder - für die Standardeingabe</translation>
    </message>
    <message>
        <source>whose, if the book has several yards</source>
        <translation>wessen, wenn das Stockbuch mehrere Stände hat</translation>
    </message>
    <message>
        <source>date=D,mean=T or date=D,min=TMIN,max=TMAX</source>
        <translation>date=D,mean=T oder date=D,min=TMIN,max=TMAX</translation>
    </message>
    <message>
        <source>c (default) or f</source>
        <translation>c (sonst) oder f</translation>
    </message>
    <message>
        <source>days still to come are right</source>
        <translation>Tage, die noch kommen, stimmen</translation>
    </message>
    <message>
        <source>a few weighings and every feed, harvest and change of equipment out of a scale&apos;s log</source>
        <translation>einige Wägungen und jede Futtergabe, Ernte und Änderung der Beute aus Waagendaten</translation>
    </message>
    <message>
        <source>CSV table of times and weights, or - for standard input</source>
        <translation>CSV-Tabelle mit Zeiten und Gewichten, oder - für die Standardeingabe</translation>
    </message>
    <message>
        <source>of the syrup fed meanwhile, sugar to water by mass</source>
        <translation>des inzwischen gefütterten Zuckerwassers, Zucker zu Wasser nach Gewicht</translation>
    </message>
    <message>
        <source>only say what would be added, and what is asked about it</source>
        <translation>nur sagen, was hinzukäme und was dazu gefragt wird</translation>
    </message>
    <message>
        <source>unlikely records are right</source>
        <translation>unwahrscheinliche Einträge stimmen</translation>
    </message>
    <message>
        <source>the answer for every living colony, or one</source>
        <translation>die Antwort für jedes lebende Volk, oder für eines</translation>
    </message>
    <message>
        <source>plan yards without moving combs between hives</source>
        <translation>Stände planen, ohne Waben zwischen Beuten umzuhängen</translation>
    </message>
    <message>
        <source>a colony as a case file for advise</source>
        <translation>ein Volk als Falldatei für advise</translation>
    </message>
    <message>
        <source>act on the advice of a colony: freeze it in the book, plan its visits</source>
        <translation>die Empfehlung für ein Volk zum Plan machen: im Stockbuch festhalten, Termine planen</translation>
    </message>
    <message>
        <source>as its yard is planned without moving combs between hives</source>
        <translation>wie sein Stand geplant ist, ohne Waben zwischen Beuten umzuhängen</translation>
    </message>
    <message>
        <source>how the winter of every living colony goes: forecast then and now, what to do</source>
        <translation>wie der Winter jedes lebenden Volkes läuft: Prognose damals und jetzt, was zu tun ist</translation>
    </message>
    <message>
        <source>every day in the JSON, not every seventh</source>
        <translation>jeden Tag im JSON, nicht jeden siebten</translation>
    </message>
    <message>
        <source>how a winter ended</source>
        <translation>wie ein Winter ausging</translation>
    </message>
    <message>
        <source>the colony lives</source>
        <translation>das Volk lebt</translation>
    </message>
    <message>
        <source>it died</source>
        <translation>es ist abgestorben</translation>
    </message>
    <message>
        <source>combs its bees cover</source>
        <translation>besetzte Waben</translation>
    </message>
    <message>
        <source>stores left</source>
        <translation>übriges Futter</translation>
    </message>
    <message>
        <source>food was left within reach of the dead bees</source>
        <translation>in Reichweite der toten Bienen war Futter übrig</translation>
    </message>
    <message>
        <source>dead bees were head down in the cells</source>
        <translation>tote Bienen steckten kopfüber in den Zellen</translation>
    </message>
    <message>
        <source>many mites lay on the floor</source>
        <translation>viele Milben lagen auf dem Boden</translation>
    </message>
    <message>
        <source>brood in the dead hive: none, solid, patchy</source>
        <translation>Brut in der toten Beute: none, solid, patchy</translation>
    </message>
    <message>
        <source>the queen was found</source>
        <translation>die Königin wurde gefunden</translation>
    </message>
    <message>
        <source>what past winters taught, and how good their forecasts were</source>
        <translation>was vergangene Winter gezeigt haben, und wie gut ihre Prognosen waren</translation>
    </message>
    <message>
        <source>what is due as an iCalendar file: visits, and what answers ask</source>
        <translation>was fällig ist, als iCalendar-Datei: Termine und was Antworten verlangen</translation>
    </message>
    <message>
        <source>as yards are planned without moving combs between hives</source>
        <translation>wie Stände geplant sind, ohne Waben zwischen Beuten umzuhängen</translation>
    </message>
    <message>
        <source>every step of the book, newest first</source>
        <translation>jeder Schritt des Stockbuchs, neueste zuerst</translation>
    </message>
    <message>
        <source>at most so many steps (default 100)</source>
        <translation>höchstens so viele Schritte (sonst 100)</translation>
    </message>
    <message>
        <source>what the book holds</source>
        <translation>was das Stockbuch enthält</translation>
    </message>
    <message>
        <source>look for damage; 0 = sound</source>
        <translation>nach Schäden suchen; 0 = in Ordnung</translation>
    </message>
    <message>
        <source>take the last step back</source>
        <translation>den letzten Schritt zurücknehmen</translation>
    </message>
    <message>
        <source>do again the step undone last</source>
        <translation>den zuletzt zurückgenommenen Schritt wiederherstellen</translation>
    </message>
    <message>
        <source>the whole book as JSON (--json), or one table as CSV</source>
        <translation>das ganze Stockbuch als JSON (--json), oder eine Tabelle als CSV</translation>
    </message>
    <message>
        <source>such as looks, look_combs, weighings</source>
        <translation>etwa looks, look_combs, weighings</translation>
    </message>
    <message>
        <source>a JSON document in place of all there is, or CSV rows into one table; undoable</source>
        <translation>ein JSON-Dokument anstelle von allem, oder CSV-Zeilen in eine Tabelle; rückgängig zu machen</translation>
    </message>
    <message>
        <source>document or table, or - for standard input</source>
        <translation>Dokument oder Tabelle, oder - für die Standardeingabe</translation>
    </message>
    <message>
        <source>the table of a CSV file (default: its name)</source>
        <translation>die Tabelle einer CSV-Datei (sonst: ihr Name)</translation>
    </message>
    <message>
        <source>only say what a table would add, and what is asked about it</source>
        <translation>nur sagen, was eine Tabelle brächte und was dazu gefragt wird</translation>
    </message>
    <message>
        <source>unlikely entries are right</source>
        <translation>unwahrscheinliche Einträge stimmen</translation>
    </message>
    <message>
        <source>a compact copy in one file</source>
        <translation>eine kompakte Kopie in einer Datei</translation>
    </message>
    <message>
        <source>file to write; never one that is there</source>
        <translation>Datei, die geschrieben wird; nie eine, die es schon gibt</translation>
    </message>
    <message>
        <source>the backups beside the book, newest first</source>
        <translation>die Sicherungskopien neben dem Stockbuch, neueste zuerst</translation>
    </message>
    <message>
        <source>make one now</source>
        <translation>jetzt eine anlegen</translation>
    </message>
    <message>
        <source>the book as it was in a backup; undoable</source>
        <translation>das Stockbuch, wie es in einer Sicherungskopie war; rückgängig zu machen</translation>
    </message>
    <message>
        <source>file, or its name as backups lists it</source>
        <translation>Datei, oder ihr Name, wie backups ihn nennt</translation>
    </message>
    <message>
        <source>what can be read of a damaged book, in a new one</source>
        <translation>was sich von einem beschädigten Stockbuch lesen lässt, in einem neuen</translation>
    </message>
    <message>
        <source>the new book&apos;s file</source>
        <translation>die Datei des neuen Stockbuchs</translation>
    </message>
    <message>
        <source>Usage</source>
        <comment>heading of the help</comment>
        <translation>Aufruf</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <comment>in the usage line: winterlarder-cli [OPTIONS] SUBCOMMAND</comment>
        <translation>OPTIONEN</translation>
    </message>
    <message>
        <source>SUBCOMMAND</source>
        <comment>in the usage line</comment>
        <translation>BEFEHL</translation>
    </message>
    <message>
        <source>Positionals</source>
        <comment>heading: arguments told by their place</comment>
        <translation>Argumente</translation>
    </message>
    <message>
        <source>REQUIRED</source>
        <comment>an option that must be given</comment>
        <translation>NÖTIG</translation>
    </message>
    <message>
        <source>Winter stores of honey bee colonies: take honey, leave it, or feed.</source>
        <translation>Wintervorrat von Bienenvölkern: Honig ernten, lassen oder füttern.</translation>
    </message>
    <message>
        <source>Print this help message and exit</source>
        <translation>Diese Hilfe zeigen und enden</translation>
    </message>
    <message>
        <source>Display program version information and exit</source>
        <translation>Die Version des Programms nennen und enden</translation>
    </message>
    <message>
        <source>Exit status: 0 done, 2 input or arguments are wrong, 3 a file cannot be read or written, 70 an error of the program.
Cases are JSON files; &quot;-&quot; reads JSON Lines from standard input. See winterlarder-cli(1).</source>
        <translation>Rückgabe: 0 erledigt, 2 Eingabe falsch, 3 Datei nicht lesbar oder schreibbar, 70 Programmfehler.
Fälle sind JSON-Dateien; &quot;-&quot; liest JSON Lines von der Standardeingabe. Siehe winterlarder-cli(1).</translation>
    </message>
    <message>
        <source>print one JSON document (JSON Lines for a batch)</source>
        <translation>ein JSON-Dokument ausgeben (JSON Lines bei mehreren)</translation>
    </message>
    <message>
        <source>simulated winters (default 2500)</source>
        <translation>durchgerechnete Winter (sonst 2500)</translation>
    </message>
    <message>
        <source>seed of the random numbers (default 1)</source>
        <translation>Startwert der Zufallszahlen (sonst 1)</translation>
    </message>
    <message>
        <source>threads at work (default: all cores); changes no digit</source>
        <translation>Zahl der Threads (sonst: alle Kerne); ändert keine Ziffer</translation>
    </message>
    <message>
        <source>language of what is said, as en (default: the system&apos;s); keys of JSON and words of arguments stay as they are</source>
        <translation>Sprache der Ausgaben, etwa en (sonst: die des Systems); JSON-Schlüssel und Wörter der Argumente bleiben, wie sie sind</translation>
    </message>
    <message>
        <source>folder of the shipped data</source>
        <translation>Ordner der mitgelieferten Daten</translation>
    </message>
    <message>
        <source>metric, us or imperial (default: %1)</source>
        <comment>the first three are typed as they stand</comment>
        <translation>metric, us oder imperial (sonst: %1)</translation>
    </message>
    <message>
        <source>stores, need, verdict, feeding, harvest, cautions of one or several colonies</source>
        <translation>Futter, Bedarf, Empfehlung, Fütterung, Ernte, Vorsicht für ein oder mehrere Völker</translation>
    </message>
    <message>
        <source>the case&apos;s, else those of its place</source>
        <translation>die des Falls, sonst die seines Ortes</translation>
    </message>
    <message>
        <source>case files, or - for JSON Lines on standard input</source>
        <translation>Falldateien, oder - für JSON Lines von der Standardeingabe</translation>
    </message>
    <message>
        <source>what a colony eats between two days, by month and cause</source>
        <translation>was ein Volk zwischen zwei Tagen verbraucht, nach Monat und Ursache</translation>
    </message>
    <message>
        <source>case file, or - for standard input</source>
        <translation>Falldatei, oder - für die Standardeingabe</translation>
    </message>
    <message>
        <source>first day, YYYY-MM-DD, not before the look</source>
        <translation>erster Tag, YYYY-MM-DD, nicht vor der Durchsicht</translation>
    </message>
    <message>
        <source>last day, counted in</source>
        <translation>letzter Tag, mitgezählt</translation>
    </message>
    <message>
        <source>day by day as well</source>
        <translation>auch Tag für Tag</translation>
    </message>
    <message>
        <source>one noiseless winter with median constants</source>
        <translation>ein Winter ohne Zufall, mit mittleren Konstanten</translation>
    </message>
    <message>
        <source>power and food of a colony on one day</source>
        <translation>Heizleistung und Futter eines Volkes an einem Tag</translation>
    </message>
    <message>
        <source>adult bees</source>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>mean of the day, degC</source>
        <translation>Tagesmittel, degC</translation>
    </message>
    <message>
        <source>cells with brood of all ages (default 0)</source>
        <translation>Zellen mit Brut jeden Alters (sonst 0)</translation>
    </message>
    <message>
        <source>dark, carniolan (default), buckfast, italian</source>
        <translation>dark, carniolan (sonst), buckfast, italian</translation>
    </message>
    <message>
        <source>no swing between day and night</source>
        <translation>ohne Schwankung zwischen Tag und Nacht</translation>
    </message>
    <message>
        <source>stores and bees of a colony today, and what each observation says</source>
        <translation>Futter und Bienen eines Volkes heute, und was jede Beobachtung sagt</translation>
    </message>
    <message>
        <source>sugar, water and litres of a syrup, and the stores it becomes</source>
        <translation>Zucker, Wasser und Liter eines Zuckerwassers, und das Futter daraus</translation>
    </message>
    <message>
        <source>kilograms of sugar</source>
        <translation>Kilogramm Zucker</translation>
    </message>
    <message>
        <source>kilograms of stores wanted</source>
        <translation>gewünschtes Futter in Kilogramm</translation>
    </message>
    <message>
        <source>sugar to water, decimals allowed</source>
        <translation>Zucker zu Wasser, auch mit Nachkommastellen</translation>
    </message>
    <message>
        <source>what the ratio counts: mass (default), volume, kg-l (kg to litres)</source>
        <translation>was die Mischung zählt: mass (sonst), volume, kg-l (kg zu Litern)</translation>
    </message>
    <message>
        <source>places of the world by name, each with its weather station and height</source>
        <translation>Orte der Welt nach Namen, jeder mit Wetterstation und Höhe</translation>
    </message>
    <message>
        <source>name or its beginning, then state or country: wolfville, halifax canada, springfield il</source>
        <translation>Name oder sein Anfang, dann Bundesland oder Land: wolfville, halifax canada, springfield il</translation>
    </message>
    <message>
        <source>how many at most (default 10)</source>
        <translation>wie viele höchstens (sonst 10)</translation>
    </message>
    <message>
        <source>the shipped climate stations</source>
        <translation>die mitgelieferten Klimastationen</translation>
    </message>
    <message>
        <source>nearest first, to LAT,LON or to a place by its name</source>
        <translation>nächste zuerst, zu LAT,LON oder zu einem Ort mit Namen</translation>
    </message>
    <message>
        <source>only those whose id, place or country holds the text</source>
        <translation>nur die, deren Kennung, Ort oder Land den Text enthält</translation>
    </message>
    <message>
        <source>cold-season curve and the dates derived from it</source>
        <translation>Kurve der kalten Jahreszeit und die Tage, die aus ihr folgen</translation>
    </message>
    <message>
        <source>id of a shipped station, or the name of a place</source>
        <translation>Kennung einer mitgelieferten Station, oder der Name eines Ortes</translation>
    </message>
    <message>
        <source>the place and dates of a case instead</source>
        <translation>stattdessen Ort und Tage eines Falls</translation>
    </message>
    <message>
        <source>the winter whose autumn lies in this year (default 2026, or the case&apos;s)</source>
        <translation>der Winter, dessen Herbst in diesem Jahr liegt (sonst 2026 oder das des Falls)</translation>
    </message>
    <message>
        <source>every day of the curve</source>
        <translation>jeden Tag der Kurve</translation>
    </message>
    <message>
        <source>a climate of your own from a table of daily temperatures</source>
        <translation>ein eigenes Klima aus einer Tabelle mit Tagestemperaturen</translation>
    </message>
    <message>
        <source>degrees, north positive</source>
        <translation>Grad, Norden positiv</translation>
    </message>
    <message>
        <source>daily weights, months and steps from the log of a hive scale</source>
        <translation>Tagesgewichte, Monate und Sprünge aus den Daten einer Stockwaage</translation>
    </message>
    <message>
        <source>every day&apos;s weight as well (--json always has them)</source>
        <translation>auch jedes Tagesgewicht (--json enthält sie immer)</translation>
    </message>
    <message>
        <source>the shipped hive formats with comb area and honey of a full comb</source>
        <translation>die mitgelieferten Beutentypen mit Wabenfläche und Honig einer vollen Wabe</translation>
    </message>
    <message>
        <source>keys of a case file and columns of a book&apos;s tables, and what they may be</source>
        <translation>Schlüssel einer Falldatei und Spalten der Tabellen eines Stockbuchs, und was darin stehen darf</translation>
    </message>
    <message>
        <source>only this key, or all of a group: hive, bees, combs, weighings, ...</source>
        <translation>nur dieser Schlüssel, oder alle einer Gruppe: hive, bees, combs, weighings, ...</translation>
    </message>
    <message>
        <source>where the shipped numbers come from</source>
        <translation>woher die mitgelieferten Zahlen kommen</translation>
    </message>
    <message>
        <source>only this source</source>
        <translation>nur diese Quelle</translation>
    </message>
    <message>
        <source>how stores, bees and brood are judged, page by page</source>
        <translation>wie Futter, Bienen und Brut geschätzt werden, Seite für Seite</translation>
    </message>
    <message>
        <source>only this page; without one the contents</source>
        <translation>nur diese Seite; ohne Angabe das Inhaltsverzeichnis</translation>
    </message>
    <message>
        <source>numbers of this hive only</source>
        <translation>nur Zahlen dieser Beute</translation>
    </message>
    <message>
        <source>a keeper&apos;s book: years of yards, colonies and records in one file</source>
        <translation>ein Stockbuch: Jahre von Ständen, Völkern und Einträgen in einer Datei</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <comment>heading of the help</comment>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>winterlarder-cli --help tells how</source>
        <translation>winterlarder-cli --help sagt, wie es geht</translation>
    </message>
</context>
<context>
    <name>Learned</name>
    <message>
        <source>Nothing has been learned yet. A winter counts once it is over: what was weighed and how it went is used from July on (January in the south).</source>
        <translation>Noch ist nichts gelernt. Ein Winter zählt, sobald er vorbei ist: Was gewogen wurde und wie er ausging, wird ab Juli verwendet (im Süden ab Januar).</translation>
    </message>
    <message>
        <source>Learned from one winter of a colony</source>
        <translation>Gelernt aus einem Winter eines Volkes</translation>
    </message>
    <message numerus="yes">
        <source>Learned from %n winters of colonies</source>
        <translation>
            <numerusform>Gelernt aus einem Winter eines Volkes</numerusform>
            <numerusform>Gelernt aus %n Wintern von Völkern</numerusform>
        </translation>
    </message>
    <message>
        <source>They eat %1 % more than the model says (give or take %2 %).</source>
        <translation>Sie verbrauchen %1&#xa0;% mehr, als das Modell sagt (± %2&#xa0;%).</translation>
    </message>
    <message>
        <source>They eat %1 % less than the model says (give or take %2 %).</source>
        <translation>Sie verbrauchen %1&#xa0;% weniger, als das Modell sagt (± %2&#xa0;%).</translation>
    </message>
    <message>
        <source>They eat as the model says (give or take %1 %).</source>
        <translation>Sie verbrauchen, was das Modell sagt (± %1&#xa0;%).</translation>
    </message>
    <message>
        <source>They lose bees %1 % faster than the model says (give or take %2 %).</source>
        <translation>Sie verlieren Bienen um %1&#xa0;% schneller, als das Modell sagt (± %2&#xa0;%).</translation>
    </message>
    <message>
        <source>They lose bees %1 % more slowly than the model says (give or take %2 %).</source>
        <translation>Sie verlieren Bienen um %1&#xa0;% langsamer, als das Modell sagt (± %2&#xa0;%).</translation>
    </message>
    <message>
        <source>They lose bees as the model says (give or take %1 %).</source>
        <translation>Sie verlieren Bienen, wie das Modell sagt (± %1&#xa0;%).</translation>
    </message>
    <message>
        <source>So much holds of all the bees of this keeper. Each colony differs from them by what its own winters and its yard&apos;s told; all of it together, times what the model says, is what its next answer counts with:</source>
        <translation>So viel gilt für alle Ihre Bienen. Jedes Volk weicht davon um das ab, was seine eigenen Winter und die seines Standes gezeigt haben; alles zusammen, mal dem, was das Modell sagt, geht in seine nächste Antwort ein:</translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days later than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>Die Frühtracht beginnt %1 Tage später, als das Klima sagt (± %2; ein Frühjahr).</numerusform>
            <numerusform>Die Frühtracht beginnt %1 Tage später, als das Klima sagt (± %2; Frühjahre: %n).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>Die Frühtracht beginnt %1 Tage früher, als das Klima sagt (± %2; ein Frühjahr).</numerusform>
            <numerusform>Die Frühtracht beginnt %1 Tage früher, als das Klima sagt (± %2; Frühjahre: %n).</numerusform>
        </translation>
    </message>
    <message>
        <source>Spring forage starts %1 days later than the climate says (give or take %2; one spring).</source>
        <translation>Die Frühtracht beginnt %1 Tage später, als das Klima sagt (± %2; ein Frühjahr).</translation>
    </message>
    <message>
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; one spring).</source>
        <translation>Die Frühtracht beginnt %1 Tage früher, als das Klima sagt (± %2; ein Frühjahr).</translation>
    </message>
    <message>
        <source>the winter of %1 of %2: its records fit no winter, so nothing was learned from it</source>
        <translation>der Winter von %1 %2: Zu seinen Einträgen passt kein Winter, daher wurde nichts aus ihm gelernt</translation>
    </message>
    <message>
        <source>One forecast can be compared with what happened: %1 lay within its band of nine in ten. Its score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>Eine Prognose lässt sich mit dem vergleichen, was geschah: %1 davon lag in ihrem Bereich von neun aus zehn. Ihre mittlere Abweichung ist %2, die des Richtwerts der Gegend %3 (kleiner ist besser).</translation>
    </message>
    <message numerus="yes">
        <source>%n forecasts can be compared with what happened: %1 lay within their bands of nine in ten. Their mean score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>
            <numerusform>Eine Prognose lässt sich mit dem vergleichen, was geschah: %1 davon lag in ihrem Bereich von neun aus zehn. Ihre mittlere Abweichung ist %2, die des Richtwerts der Gegend %3 (kleiner ist besser).</numerusform>
            <numerusform>%n Prognosen lassen sich mit dem vergleichen, was geschah: %1 davon lagen in ihrem Bereich von neun aus zehn. Ihre mittlere Abweichung ist %2, die des Richtwerts der Gegend %3 (kleiner ist besser).</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too few to judge by: it takes five or more.</source>
        <translation>Das ist zu wenig für ein Urteil: Es braucht fünf oder mehr.</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>{} is not a number of an entry</source>
        <translation>{} ist keine Nummer eines Eintrags</translation>
    </message>
    <message>
        <source>a whole number from 1 to {}</source>
        <translation>eine ganze Zahl von 1 bis {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is missing</source>
        <translation>&quot;{}&quot; fehlt</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is {}</source>
        <translation>&quot;{}&quot; ist {}</translation>
    </message>
    <message>
        <source>{} has {} members</source>
        <translation>{} hat {} Elemente</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>höchstens {}</translation>
    </message>
    <message>
        <source>{} boxes are listed</source>
        <translation>{} Zargen sind angegeben</translation>
    </message>
    <message>
        <source>from 1 to {} boxes</source>
        <translation>1 bis {} Zargen</translation>
    </message>
    <message>
        <source>a list of combs, or {&quot;full_of_stores&quot;: ..., &quot;half&quot;: ..., &quot;capped_share&quot;: ...}</source>
        <translation>eine Liste von Waben, oder {&quot;full_of_stores&quot;: ..., &quot;half&quot;: ..., &quot;capped_share&quot;: ...}</translation>
    </message>
    <message>
        <source>&quot;case&quot; is {}</source>
        <translation>&quot;case&quot; ist {}</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} oder {}</translation>
    </message>
    <message>
        <source>name the nearest town, or give latitude and longitude</source>
        <translation>nennen Sie den nächsten größeren Ort, oder geben Sie Breite und Länge an</translation>
    </message>
    <message>
        <source>did you mean {}? Else name the nearest town, or give latitude and longitude</source>
        <translation>meinten Sie {}? Sonst nennen Sie den nächsten größeren Ort, oder geben Sie Breite und Länge an</translation>
    </message>
    <message>
        <source>no place {}</source>
        <translation>kein Ort {}</translation>
    </message>
</context>
<context>
    <name>Photograph</name>
    <message>
        <source>top left corner</source>
        <translation>Ecke oben links</translation>
    </message>
    <message>
        <source>top right corner</source>
        <translation>Ecke oben rechts</translation>
    </message>
    <message>
        <source>bottom right corner</source>
        <translation>Ecke unten rechts</translation>
    </message>
    <message>
        <source>bottom left corner</source>
        <translation>Ecke unten links</translation>
    </message>
    <message>
        <source>left end of the comb at the bar</source>
        <translation>linkes Ende der Wabe an der Leiste</translation>
    </message>
    <message>
        <source>right end of the comb at the bar</source>
        <translation>rechtes Ende der Wabe an der Leiste</translation>
    </message>
    <message>
        <source>somewhere low on the left side</source>
        <translation>irgendwo unten an der linken Seite</translation>
    </message>
    <message>
        <source>somewhere low on the right side</source>
        <translation>irgendwo unten an der rechten Seite</translation>
    </message>
    <message>
        <source>lowest point</source>
        <translation>tiefster Punkt</translation>
    </message>
    <message>
        <source>%1 is no picture that can be read (%2). Choose a JPEG or PNG file.</source>
        <translation>%1 ist kein lesbares Bild (%2). Wählen Sie eine JPEG- oder PNG-Datei.</translation>
    </message>
</context>
<context>
    <name>Places</name>
    <message>
        <source>under 1 km</source>
        <translation>unter 1 km</translation>
    </message>
    <message>
        <source>no weather station is near enough: the nearest, %1, is %2 away. Give monthly temperatures of your own</source>
        <translation>keine Wetterstation liegt nahe genug: Die nächste, %1, ist %2 entfernt. Geben Sie eigene Monatstemperaturen an</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, at its height</source>
        <translation>Wetter von %1, %2 entfernt, in gleicher Höhe</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, about as high</source>
        <translation>Wetter von %1, %2 entfernt, etwa gleich hoch</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, %3 higher: here it is %4 warmer</source>
        <translation>Wetter von %1, %2 entfernt, %3 höher: Hier ist es %4 wärmer</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, %3 lower: here it is %4 colder</source>
        <translation>Wetter von %1, %2 entfernt, %3 tiefer: Hier ist es %4 kälter</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>stores, %1</source>
        <translation>Futtervorrat, %1</translation>
    </message>
    <message>
        <source>eaten, %1 a day</source>
        <translation>Verbrauch, %1 am Tag</translation>
    </message>
    <message>
        <source>air, %1</source>
        <translation>Luft, %1</translation>
    </message>
    <message>
        <source>as forage starts,
1 dot = 2 in 100</source>
        <translation>bei Beginn der Frühtracht,
1 Punkt = 2 von 100</translation>
    </message>
    <message>
        <source>adult bees</source>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>warmth for brood</source>
        <translation>Wärme für die Brut</translation>
    </message>
    <message>
        <source>food for brood</source>
        <translation>Futter für die Brut</translation>
    </message>
    <message>
        <source>air, mean of the day</source>
        <translation>Luft, Tagesmittel</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>reserve
%1</source>
        <translation>Sicherheitsreserve
%1</translation>
    </message>
</context>
<context>
    <name>RecordRows</name>
    <message>
        <source>bees on %1 %{combs}</source>
        <translation>Bienen auf %1 Waben</translation>
    </message>
    <message>
        <source>%1 seams of bees</source>
        <translation>%1 besetzte Wabengassen</translation>
    </message>
    <message>
        <source>%1 bees</source>
        <translation>%1 Bienen</translation>
    </message>
    <message>
        <source>one %{comb} looked at</source>
        <translation>eine Wabe angesehen</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} looked at</source>
        <translation>
            <numerusform>eine Wabe angesehen</numerusform>
            <numerusform>%n Waben angesehen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %{combs} full, %2 half full, by count</source>
        <translation>%1 Futterwaben voll, %2 halb voll, gezählt</translation>
    </message>
    <message>
        <source>queen seen</source>
        <translation>Königin gesehen</translation>
    </message>
    <message>
        <source>queen not seen</source>
        <translation>Königin nicht gesehen</translation>
    </message>
    <message>
        <source>eggs</source>
        <translation>Stifte</translation>
    </message>
    <message>
        <source>no eggs</source>
        <translation>keine Stifte</translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>verdeckelte Brut</translation>
    </message>
    <message>
        <source>no sealed brood</source>
        <translation>keine verdeckelte Brut</translation>
    </message>
    <message>
        <source>pollen coming in</source>
        <translation>Polleneintrag</translation>
    </message>
    <message>
        <source>no pollen coming in</source>
        <translation>kein Polleneintrag</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>Krankheitsanzeichen</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>on a scale: %1</source>
        <translation>auf einer Waage: %1</translation>
    </message>
    <message>
        <source>hefted: %1</source>
        <translation>von Hand angehoben: %1</translation>
    </message>
    <message>
        <source>both sides lifted: %1 and %2</source>
        <translation>an beiden Seiten gewogen: %1 und %2</translation>
    </message>
    <message>
        <source>one side lifted: %1</source>
        <translation>an einer Seite gewogen: %1</translation>
    </message>
    <message>
        <source>%1 of sugar</source>
        <translation>%1 Zucker</translation>
    </message>
    <message>
        <source>%1, %2 by weight</source>
        <translation>%1, %2 nach Gewicht</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 on one %{comb}</source>
        <translation>%1 auf einer Wabe</translation>
    </message>
    <message numerus="yes">
        <source>%1 on %n %{combs}</source>
        <translation>
            <numerusform>%1 auf einer Wabe</numerusform>
            <numerusform>%1 auf %n Waben</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>%1, not ended yet</source>
        <translation>%1, noch nicht beendet</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>one box, %1</source>
        <translation>eine Zarge, %1</translation>
    </message>
    <message numerus="yes">
        <source>%n boxes, %1</source>
        <translation>
            <numerusform>eine Zarge, %1</numerusform>
            <numerusform>%n Zargen, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>to another yard</source>
        <translation>an einen anderen Stand</translation>
    </message>
    <message numerus="yes">
        <source>%1; from %n simulated winters</source>
        <translation>
            <numerusform>%1; aus einem durchgerechneten Winter</numerusform>
            <numerusform>%1; aus %n durchgerechneten Wintern</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>alive</source>
        <translation>lebt</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>abgestorben</translation>
    </message>
    <message>
        <source>%1 of stores left</source>
        <translation>%1 Futter übrig</translation>
    </message>
    <message>
        <source>food within reach</source>
        <translation>Futter in Reichweite</translation>
    </message>
    <message>
        <source>no food within reach</source>
        <translation>kein Futter in Reichweite</translation>
    </message>
    <message>
        <source>heads in the cells</source>
        <translation>Bienen kopfüber in den Zellen</translation>
    </message>
    <message>
        <source>no heads in the cells</source>
        <translation>keine Bienen kopfüber in den Zellen</translation>
    </message>
    <message>
        <source>many mites</source>
        <translation>viele Milben</translation>
    </message>
    <message>
        <source>few mites</source>
        <translation>wenige Milben</translation>
    </message>
    <message>
        <source>brood: %1</source>
        <translation>Brut: %1</translation>
    </message>
    <message>
        <source>queen found</source>
        <translation>Königin gefunden</translation>
    </message>
    <message>
        <source>no queen found</source>
        <translation>keine Königin gefunden</translation>
    </message>
    <message>
        <source>stores in sight</source>
        <translation>Futter zu sehen</translation>
    </message>
    <message>
        <source>no stores in sight</source>
        <translation>kein Futter zu sehen</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>Remark</name>
    <message>
        <source>Robbers and %{wasps}: work in the evening, feed inside the hive only, spill nothing, and narrow the entrance: %{=6 mm} high and about %{=7 cm} to %{=12 cm} wide, for a weak colony one bee&apos;s width.</source>
        <translation>Räuber und Wespen: Arbeiten Sie abends, füttern Sie nur in der Beute, verschütten Sie nichts und engen Sie das Flugloch ein: %{=6 mm} hoch und etwa %{=7 cm} bis %{=12 cm} breit, bei einem schwachen Volk eine Bienenbreite.</translation>
    </message>
    <message>
        <source>Feed inside the hive only: feed in the open brings robbers and carries disease.</source>
        <translation>Füttern Sie nur in der Beute: Futter im Freien lockt Räuber an und verschleppt Krankheiten.</translation>
    </message>
    <message>
        <source>Foulbrood has to be reported: close the hive, narrow the entrance, wash hands and tools, and open no other hive before.</source>
        <translation>Faulbrut ist anzeigepflichtig: Schließen Sie die Beute, engen Sie das Flugloch ein, waschen Sie Hände und Werkzeug, und öffnen Sie vorher keine andere Beute.</translation>
    </message>
    <message>
        <source>Fondant has to touch the bees, under a cover that keeps them warm; the lid is off for half a minute, no %{comb} is drawn.</source>
        <translation>Futterteig muss die Bienen berühren und warm zugedeckt sein; der Deckel ist nur eine halbe Minute ab, keine Wabe wird gezogen.</translation>
    </message>
    <message>
        <source>So near to spring forage what is fed may end up in honey: no super goes on before it is eaten.</source>
        <translation>So kurz vor der Frühtracht kann Futter im Honig landen: Setzen Sie keinen Honigraum auf, bevor es verzehrt ist.</translation>
    </message>
    <message>
        <source>The refractometer shows %{water:1} % water. Honey keeps with at most 18 %, measured on several %{combs}; food law allows 20 %, heather 23 %.</source>
        <translation>Das Refraktometer zeigt %{water:1}&#xa0;% Wasser. Honig hält sich mit höchstens 18&#xa0;%, gemessen an mehreren Waben; das Lebensmittelrecht erlaubt 20&#xa0;%, bei Heidehonig 23&#xa0;%.</translation>
    </message>
    <message>
        <source>Measure the water with a refractometer on several %{combs} before taking any: honey keeps with at most 18 %, food law allows 20 %, heather 23 %.</source>
        <translation>Messen Sie vor der Ernte den Wassergehalt mit einem Refraktometer an mehreren Waben: Honig hält sich mit höchstens 18&#xa0;%, das Lebensmittelrecht erlaubt 20&#xa0;%, bei Heidehonig 23&#xa0;%.</translation>
    </message>
    <message>
        <source>Before weighing again: is the empty weight that of this hive as it stands, are stones, feeder and wet snow off, is a super left out of the list?</source>
        <translation>Bevor Sie noch einmal wiegen: Stimmt das Leergewicht für diese Beute, so wie sie steht? Sind Steine, Futtergefäß und nasser Schnee ab? Fehlt ein Honigraum in der Liste?</translation>
    </message>
    <message>
        <source>Thick syrup is right now, but left standing in the cold to be expected before the last day it lets up to %{percent:0} % of its weight settle as sugar: give it lukewarm and in portions that are soon taken.</source>
        <translation>Dickes Zuckerwasser ist jetzt richtig. Bleibt es aber in der Kälte stehen, mit der vor dem letzten Tag zu rechnen ist, setzen sich bis zu %{percent:0}&#xa0;% seines Gewichts als Zucker ab: Geben Sie es lauwarm und in Portionen, die bald abgenommen sind.</translation>
    </message>
    <message>
        <source>Unite healthy colonies only, by %{day}: in the evening, the %{combs} of the weak one hung beside those of the strong one behind a sheet of newspaper, the bees misted with water, the better queen kept. Later it is too cold for the bees to come together.</source>
        <translation>Vereinigen Sie nur gesunde Völker, bis zum %{day}: abends, die Waben des schwachen neben die des starken gehängt, ein Blatt Zeitungspapier dazwischen, die Bienen mit Wasser besprüht; die bessere Königin bleibt. Später ist es zu kalt, und die Bienen finden nicht mehr zusammen.</translation>
    </message>
    <message>
        <source>Unite healthy colonies only, by %{day}: in the evening, the weak one above the strong one with a sheet of newspaper between, the better queen kept. Later it is too cold for the bees to come together.</source>
        <translation>Vereinigen Sie nur gesunde Völker, bis zum %{day}: abends, das schwache über das starke, ein Blatt Zeitungspapier dazwischen; die bessere Königin bleibt. Später ist es zu kalt, und die Bienen finden nicht mehr zusammen.</translation>
    </message>
    <message>
        <source>A small colony, and too late to unite: narrow it into a nucleus box with full %{combs} on both sides, and insulate it.</source>
        <translation>Ein kleines Volk, und zum Vereinigen zu spät: Engen Sie es in einen Ablegerkasten ein, auf beiden Seiten volle Futterwaben, und dämmen Sie ihn.</translation>
    </message>
    <message>
        <source>Mites first: good stores do not save a colony treated too late. Count them now and treat once the honey is off; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Zuerst die Milben: Ein guter Futtervorrat rettet kein Volk, das zu spät behandelt wurde. Zählen Sie jetzt und behandeln Sie, sobald der Honig ab ist; über die Mittel entscheiden die Packungsbeilage, Ihre Tierarztpraxis und der Bienensachverständige.</translation>
    </message>
    <message>
        <source>Mites first: good stores do not save a colony treated too late. Count them now, and treat without delay, for what is in the super stays with the bees; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Zuerst die Milben: Ein guter Futtervorrat rettet kein Volk, das zu spät behandelt wurde. Zählen Sie jetzt und behandeln Sie ohne Aufschub, denn was im Honigraum ist, bleibt den Bienen; über die Mittel entscheiden die Packungsbeilage, Ihre Tierarztpraxis und der Bienensachverständige.</translation>
    </message>
    <message>
        <source>You have treated against mites: count them again two to three weeks after it, for a treatment may fail and robbers bring mites home.</source>
        <translation>Sie haben gegen Milben behandelt: Zählen Sie zwei bis drei Wochen danach noch einmal, denn eine Behandlung kann fehlschlagen, und Räuber bringen Milben mit.</translation>
    </message>
    <message>
        <source>%{mites:0} mites on 100 bees are too many: stores do not save such a colony. Treat as soon as no honey for people is on, before anything else, and count again two to three weeks after it; the label, your vet and the bee inspector decide on the means.</source>
        <translation>%{mites:0} Milben auf 100 Bienen sind zu viele: Futter rettet ein solches Volk nicht. Behandeln Sie vor allem anderen, sobald kein Honig für Menschen mehr aufsitzt, und zählen Sie zwei bis drei Wochen danach wieder; über das Mittel entscheiden Packungsbeilage, Tierarztpraxis und Bienensachverständiger.</translation>
    </message>
    <message>
        <source>You have counted the mites: where the count calls for it treat as soon as no honey for people is on, and count again two to three weeks after it. Good stores do not save a colony treated too late; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Sie haben die Milben gezählt: Wo das Ergebnis es verlangt, behandeln Sie, sobald kein Honig zum Ernten mehr auf der Beute ist, und zählen Sie zwei bis drei Wochen danach noch einmal. Ein guter Futtervorrat rettet kein Volk, das zu spät behandelt wurde; über die Mittel entscheiden die Packungsbeilage, Ihre Tierarztpraxis und der Bienensachverständige.</translation>
    </message>
    <message>
        <source>Good stores do not save a colony treated too late: in a trial, colonies treated against varroa in July or August were lost a third less often. Count the mites; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Ein guter Futtervorrat rettet kein Volk, das zu spät behandelt wurde: In einem Versuch gingen Völker, die im Juli oder August gegen Varroa behandelt wurden, um ein Drittel seltener ein. Zählen Sie die Milben; über die Mittel entscheiden die Packungsbeilage, Ihre Tierarztpraxis und der Bienensachverständige.</translation>
    </message>
    <message>
        <source>Good stores do not save a colony treated too late, that is after January or February. Count the mites where varroa is; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Ein guter Futtervorrat rettet kein Volk, das zu spät behandelt wurde, also nach Januar oder Februar. Zählen Sie die Milben, wo es Varroa gibt; über die Mittel entscheiden die Packungsbeilage, Ihre Tierarztpraxis und der Bienensachverständige.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so when brood grows in March and April, not in midwinter: heft it again then.</source>
        <translation>Die meisten Völker, die verhungern, verhungern im März und April, wenn die Brut wächst, nicht mitten im Winter: Heben Sie die Beute dann wieder an.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so when brood grows in August and September, not in midwinter: heft it again then.</source>
        <translation>Die meisten Völker, die verhungern, verhungern im August und September, wenn die Brut wächst, nicht mitten im Winter: Heben Sie die Beute dann wieder an.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so while brood grows before spring forage starts, not in midwinter: heft it often then.</source>
        <translation>Die meisten Völker, die verhungern, verhungern vor dem Beginn der Frühtracht, wenn die Brut wächst, nicht mitten im Winter: Heben Sie die Beute dann oft an.</translation>
    </message>
    <message>
        <source>The nectar counted on here may fail. Weigh again when no more comes in.</source>
        <translation>Die Tracht, mit der hier gerechnet ist, kann ausfallen. Wiegen Sie noch einmal, wenn kein Nektar mehr hereinkommt.</translation>
    </message>
    <message>
        <source>Where a super stays on as winter food take the queen excluder out before laying stops, or the queen is left below in the cold.</source>
        <translation>Wo ein Honigraum als Winterfutter bleibt, nehmen Sie das Absperrgitter vor dem Ende der Eilage heraus, sonst bleibt die Königin unten in der Kälte zurück.</translation>
    </message>
    <message>
        <source>Neither queen nor eggs were seen: make sure of a laying queen before anything else.</source>
        <translation>Weder Königin noch Stifte wurden gesehen: Vergewissern Sie sich vor allem anderen, dass eine Königin in Eilage da ist.</translation>
    </message>
    <message>
        <source>Hardly any brood was seen, though laying usually stops around %{day} only. The amounts here are those of a queen that lays: if she has stopped, %{need:amount} are enough. Look for eggs in a week.</source>
        <translation>Es wurde kaum Brut gesehen, obwohl die Eilage gewöhnlich erst um den %{day} endet. Die Mengen hier gelten für eine Königin, die legt: Hat sie aufgehört, genügen %{need:amount}. Sehen Sie in einer Woche nach Stiften.</translation>
    </message>
    <message>
        <source>Hardly any brood was seen, though the queen should still have been laying. The amounts here are those of a queen that lays: if she has stopped, %{need:amount} are enough. Look for eggs in a week.</source>
        <translation>Es wurde kaum Brut gesehen, obwohl die Königin noch hätte legen sollen. Die Mengen hier gelten für eine Königin, die legt: Hat sie aufgehört, genügen %{need:amount}. Sehen Sie in einer Woche nach Stiften.</translation>
    </message>
    <message>
        <source>This is an early look, and rougher for it. Weigh again when no more nectar comes in.</source>
        <translation>Das ist eine frühe Antwort und deshalb gröber. Wiegen Sie noch einmal, wenn kein Nektar mehr hereinkommt.</translation>
    </message>
    <message>
        <source>Next: weigh it on %{day}, both sides, without opening.</source>
        <translation>Als Nächstes: Wiegen Sie am %{day} an beiden Seiten, ohne zu öffnen.</translation>
    </message>
    <message>
        <source>Next: on %{day} look at the stores, and count the mites.</source>
        <translation>Als Nächstes: Sehen Sie am %{day} nach dem Futter und zählen Sie die Milben.</translation>
    </message>
    <message>
        <source>Next: on %{day} look for queen cells on the %{comb} with eggs.</source>
        <translation>Als Nächstes: Sehen Sie am %{day} auf der Wabe mit Stiften nach Weiselzellen.</translation>
    </message>
    <message>
        <source>Next: on %{day} see whether the feed is taken and being capped.</source>
        <translation>Als Nächstes: Sehen Sie am %{day} nach, ob das Futter abgenommen und verdeckelt wird.</translation>
    </message>
    <message>
        <source>Take supers whose honey is meant for people off before any syrup goes on, or syrup ends up in it.</source>
        <translation>Nehmen Sie Honigräume, deren Honig Sie ernten wollen, ab, bevor Sie Zuckerwasser geben, sonst landet es darin.</translation>
    </message>
    <message>
        <source>Honey stored while a colony was fed or treated is for the bees, not for people. After medicines the label, the vet and the law decide.</source>
        <translation>Honig, der eingelagert wurde, während ein Volk gefüttert oder behandelt wurde, gehört den Bienen und wird nicht geerntet. Nach Tierarzneimitteln entscheiden Packungsbeilage, Tierarztpraxis und Gesetz.</translation>
    </message>
    <message>
        <source>Take a %{comb} only if at least two thirds of its stores are capped; under four fifths the honey may be too wet to keep.</source>
        <translation>Ernten Sie eine Wabe nur, wenn mindestens zwei Drittel ihres Futters verdeckelt sind; bei weniger als vier Fünfteln kann der Honig zu nass sein, um sich zu halten.</translation>
    </message>
    <message>
        <source>No honey for children under twelve months.</source>
        <translation>Kein Honig für Kinder unter zwölf Monaten.</translation>
    </message>
    <message>
        <source>Never feed honey whose origin you do not know: it can carry foulbrood.</source>
        <translation>Füttern Sie nie Honig, dessen Herkunft Sie nicht kennen: Er kann Faulbrut übertragen.</translation>
    </message>
    <message>
        <source>Use white granulated sugar only. Brown, raw and icing sugar and molasses hold what bees cannot digest.</source>
        <translation>Nehmen Sie nur weißen Kristallzucker. Brauner Zucker, Rohzucker, Puderzucker und Melasse enthalten, was Bienen nicht verdauen können.</translation>
    </message>
    <message>
        <source>Do not boil syrup, and add no acid or vinegar: both make HMF, which poisons bees.</source>
        <translation>Kochen Sie Zuckerwasser nicht, und geben Sie weder Säure noch Essig dazu: Beides bildet HMF, das Bienen vergiftet.</translation>
    </message>
    <message>
        <source>Lay floats or straw on the syrup of an open feeder, so that bees do not drown.</source>
        <translation>Legen Sie in offenen Futtergefäßen Schwimmer oder Stroh auf das Zuckerwasser, damit keine Bienen ertrinken.</translation>
    </message>
    <message>
        <source>Stores from ivy or rape set hard; heather honey and honeydew can scour bees that cannot fly. Where such stores come in, give some syrup on top; where the cold is long, replace those %{combs}.</source>
        <translation>Futter aus Efeu oder Raps wird hart; Heidehonig und Honigtau können bei Bienen, die nicht fliegen können, Ruhr auslösen. Wo solches Futter hereinkommt, füttern Sie zusätzlich etwas Zuckerwasser; wo die Kälte lang ist, tauschen Sie diese Waben aus.</translation>
    </message>
    <message>
        <source>It may be too cool to open: a full look from %{=15 °C}, half a minute from %{=10 °C}, in winter the lid alone from %{=7 °C}.</source>
        <translation>Es kann zum Öffnen zu kühl sein: ganze Durchsicht ab %{=15 °C}, eine halbe Minute ab %{=10 °C}, im Winter nur der Deckel ab %{=7 °C}.</translation>
    </message>
    <message>
        <source>About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. Hang full %{combs} beside the bees and above them, without an empty %{comb} between.</source>
        <translation>Etwa %{within:amount} liegen in Reichweite der Traube, und ein langer Kälteeinbruch kann %{needed:amount} kosten. Hängen Sie volle Futterwaben neben die Bienen und über sie, ohne Leerwabe dazwischen.</translation>
    </message>
    <message>
        <source>In this long hive stores lie on both sides of the bees, or beyond an empty %{comb}: bees that have eaten to one end do not come back in the cold. Put the bees at one end and all the stores on one side of them.</source>
        <translation>In dieser Trogbeute liegt das Futter auf beiden Seiten der Bienen oder hinter einer Leerwabe: Haben sich die Bienen bis an ein Ende durchgefressen, kommen sie in der Kälte nicht zurück. Setzen Sie die Bienen an ein Ende und alles Futter auf eine Seite von ihnen.</translation>
    </message>
    <message>
        <source>About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. On a day of %{=10 °C} hang a full %{comb} against the bees; should they run short before, lay fondant on them.</source>
        <translation>Etwa %{within:amount} liegen in Reichweite der Traube, und ein langer Kälteeinbruch kann %{needed:amount} kosten. Hängen Sie an einem Tag mit %{=10 °C} eine volle Futterwabe an den Bienensitz; wird es vorher knapp, legen Sie Futterteig auf die Bienen.</translation>
    </message>
    <message>
        <source>Where the cold is long, insulation above the %{combs} saves food.</source>
        <translation>Wo die Kälte lang ist, spart Dämmung über den Waben Futter.</translation>
    </message>
    <message>
        <source>Let moisture leave: entrance clear, hive tilted slightly forward, nothing cold and wet above the bees.</source>
        <translation>Lassen Sie Feuchtigkeit abziehen: Flugloch frei, Beute leicht nach vorn geneigt, nichts Kaltes und Nasses über den Bienen.</translation>
    </message>
    <message>
        <source>Fit a mouse guard with openings of %{=6 mm} to %{=8 mm} before days stay below %{=5 °C}.</source>
        <translation>Bringen Sie ein Mäusegitter mit Öffnungen von %{=6 mm} bis %{=8 mm} an, bevor die Tage unter %{=5 °C} bleiben.</translation>
    </message>
    <message>
        <source>Heft every two weeks; once brood has started, weigh every two to three weeks.</source>
        <translation>Heben Sie die Beute alle zwei Wochen an; sobald wieder Brut da ist, wiegen Sie alle zwei bis drei Wochen.</translation>
    </message>
    <message>
        <source>Close a dead hive the same day. Nothing of it goes to another colony until disease is ruled out; a notifiable disease has to be reported.</source>
        <translation>Verschließen Sie eine tote Beute noch am selben Tag. Nichts daraus kommt zu einem anderen Volk, bevor eine Krankheit ausgeschlossen ist; eine anzeigepflichtige Tierseuche ist zu melden.</translation>
    </message>
    <message>
        <source>A full deep box weighs up to %{=40 kg}: lift %{combs} rather than boxes.</source>
        <translation>Eine volle große Zarge wiegt bis zu %{=40 kg}: Heben Sie lieber Waben als Zargen.</translation>
    </message>
    <message>
        <source>Stings can be dangerous: with an allergy never work alone, and keep the emergency number at hand.</source>
        <translation>Stiche können gefährlich sein: Mit einer Allergie arbeiten Sie nie allein, und halten Sie die Notrufnummer bereit.</translation>
    </message>
    <message>
        <source>Water of %{=50 °C} to %{=60 °C} dissolves sugar well enough; hotter syrup scalds, and spoils.</source>
        <translation>Wasser von %{=50 °C} bis %{=60 °C} löst Zucker gut genug; heißeres Zuckerwasser verbrüht und verdirbt.</translation>
    </message>
    <message>
        <source>Comb without a frame breaks easily: free its sides first, keep it vertical, begin at the empty end, and leave it alone in heat.</source>
        <translation>Eine Wabe ohne Rähmchen bricht leicht: Lösen Sie zuerst ihre Seiten, halten Sie sie senkrecht, beginnen Sie am leeren Ende, und lassen Sie sie bei Hitze in Ruhe.</translation>
    </message>
    <message>
        <source>In a long hive the feeder goes behind the follower, and fondant stands as a slab beside the cluster, not over the bars.</source>
        <translation>In einer Trogbeute kommt das Futtergefäß hinter das Schied, und Futterteig steht als Platte neben der Traube, nicht über den Leisten.</translation>
    </message>
    <message>
        <source>Only about %{pollen} of bee bread was seen. With under half a kilogram when laying stops, brood has little to start on: keep %{combs} with pollen beside the nest.</source>
        <translation>Es wurde nur etwa %{pollen} Bienenbrot gesehen. Mit weniger als einem halben Kilogramm am Ende der Eilage hat die Brut wenig für den Anfang: Lassen Sie Waben mit Pollen am Brutnest.</translation>
    </message>
    <message>
        <source>Laying has begun again by now, and nothing was said of brood: how much of it there is would tell more than anything else.</source>
        <translation>Die Eilage hat jetzt wieder begonnen, und zur Brut gibt es keine Angabe: Wie viel davon da ist, würde mehr sagen als alles andere.</translation>
    </message>
    <message>
        <source>%{Combs} move between healthy colonies only, in a yard without foulbrood: brush the bees off, work at dusk, and leave the giver its own need.</source>
        <translation>Hängen Sie Waben nur zwischen gesunden Völkern um, an einem Stand ohne Faulbrut: Kehren Sie die Bienen ab, arbeiten Sie in der Dämmerung, und lassen Sie dem Spender, was er selbst braucht.</translation>
    </message>
    <message>
        <source>More is left than spring needs: make room for the queen in time. Old winter feed never goes up into supers.</source>
        <translation>Es ist mehr übrig, als das Frühjahr braucht: Schaffen Sie der Königin rechtzeitig Platz. Altes Winterfutter kommt nie in den Honigraum.</translation>
    </message>
    <message>
        <source>Whether a %{comb} named here holds brood was not said: look before taking it, and leave it if it does.</source>
        <translation>Ob eine hier genannte Wabe Brut enthält, ist nicht angegeben: Sehen Sie vor der Ernte nach, und lassen Sie sie hängen, wenn es so ist.</translation>
    </message>
    <message>
        <source>Where disease, medicines or local law are concerned, the bee inspector, the vet and the law come first.</source>
        <translation>Geht es um Krankheiten, Tierarzneimittel oder örtliches Recht, kommen Bienensachverständiger, Tierarztpraxis und Gesetz zuerst.</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>
            <numerusform>%{weight} kann kaum stimmen: Eine Zarge dieser Größe wiegt %{most}, wenn jede Wabe voll Honig ist. Sind es %{number:1} lb, also %{meant}?</numerusform>
            <numerusform>%{weight} kann kaum stimmen: %n Zargen dieser Größe wiegen %{most}, wenn jede Wabe voll Honig ist. Sind es %{number:1} lb, also %{meant}?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>%{weight} kann kaum stimmen: Eine Zarge dieser Größe wiegt %{most}, wenn jede Wabe voll Honig ist. Sind es %{number:1} lb, also %{meant}?</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>
            <numerusform>%{weight} kann kaum stimmen: Eine Zarge dieser Größe wiegt %{most}, wenn jede Wabe voll Honig ist. Sind es %{meant}?</numerusform>
            <numerusform>%{weight} kann kaum stimmen: %n Zargen dieser Größe wiegen %{most}, wenn jede Wabe voll Honig ist. Sind es %{meant}?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>%{weight} kann kaum stimmen: Eine Zarge dieser Größe wiegt %{most}, wenn jede Wabe voll Honig ist. Sind es %{meant}?</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>
            <numerusform>%{weight} kann kaum stimmen: Eine Zarge dieser Größe wiegt %{most}, wenn jede Wabe voll Honig ist. Ist eine Zarge nicht eingetragen?</numerusform>
            <numerusform>%{weight} kann kaum stimmen: %n Zargen dieser Größe wiegen %{most}, wenn jede Wabe voll Honig ist. Ist eine Zarge nicht eingetragen?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>%{weight} kann kaum stimmen: Eine Zarge dieser Größe wiegt %{most}, wenn jede Wabe voll Honig ist. Ist eine Zarge nicht eingetragen?</translation>
    </message>
    <message>
        <source>%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Is it %{meant}?</source>
        <translation>%{weight} kann kaum stimmen: Diese Beute wiegt leer mindestens %{least}. Sind es %{meant}?</translation>
    </message>
    <message>
        <source>%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Was all of it on the scale?</source>
        <translation>%{weight} kann kaum stimmen: Diese Beute wiegt leer mindestens %{least}. War sie ganz auf der Waage?</translation>
    </message>
    <message>
        <source>%{side} on one side cannot well be: one side of this hive weighs %{least} or more when it is empty. Was it lifted clear, and is it in the right unit?</source>
        <translation>%{side} auf einer Seite können kaum stimmen: Eine Seite dieser Beute wiegt schon leer %{least} oder mehr. War sie frei angehoben, und stimmt die Einheit?</translation>
    </message>
    <message>
        <source>%{weight} does not go with the %{other} of %{day}: ten times as much. Has a decimal point slipped?</source>
        <translation>%{weight} passt nicht zu den %{other} vom %{day}: Der eine Wert ist das Zehnfache des anderen. Ist ein Komma verrutscht?</translation>
    </message>
    <message>
        <source>%{weight} does not go with the %{other} of %{day}: as much as pounds differ from kilograms. Which is it?</source>
        <translation>%{weight} passt nicht zu den %{other} vom %{day}: Der Unterschied ist gerade der zwischen lb und kg. Was ist es?</translation>
    </message>
    <message numerus="yes">
        <source>%{taken} of honey cannot well come out of %n boxes of this size, which hold %{most} at the most. Is a box not written down?</source>
        <translation>
            <numerusform>%{taken} Honig können kaum aus einer Zarge dieser Größe kommen, die höchstens %{most} fasst. Ist eine Zarge nicht eingetragen?</numerusform>
            <numerusform>%{taken} Honig können kaum aus %n Zargen dieser Größe kommen, die höchstens %{most} fassen. Ist eine Zarge nicht eingetragen?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{taken} of honey cannot well come out of one box of this size, which holds %{most} at the most. Is a box not written down?</source>
        <translation>%{taken} Honig können kaum aus einer Zarge dieser Größe kommen, die höchstens %{most} fasst. Ist eine Zarge nicht eingetragen?</translation>
    </message>
    <message>
        <source>%{taken} of honey is more than can have been there: at most %{most}, going by the weight of %{day}. Is it right?</source>
        <translation>%{taken} Honig sind mehr, als da gewesen sein kann: höchstens %{most}, nach dem Gewicht vom %{day}. Stimmt das?</translation>
    </message>
    <message>
        <source>%{taken} of honey is more than can have been there: at most %{most}, going by the %{combs} of %{day}. Is it right?</source>
        <translation>%{taken} Honig sind mehr, als da gewesen sein kann: höchstens %{most}, nach den Waben vom %{day}. Stimmt das?</translation>
    </message>
    <message numerus="yes">
        <source>A feed that makes %{stores} of stores cannot be: %n boxes of this size hold %{most}. How much was it?</source>
        <translation>
            <numerusform>Eine Futtergabe, die %{stores} Futter ergibt, kann nicht sein: Eine Zarge dieser Größe fasst %{most}. Wie viel war es?</numerusform>
            <numerusform>Eine Futtergabe, die %{stores} Futter ergibt, kann nicht sein: %n Zargen dieser Größe fassen %{most}. Wie viel war es?</numerusform>
        </translation>
    </message>
    <message>
        <source>A feed that makes %{stores} of stores cannot be: one box of this size holds %{most}. How much was it?</source>
        <translation>Eine Futtergabe, die %{stores} Futter ergibt, kann nicht sein: Eine Zarge dieser Größe fasst %{most}. Wie viel war es?</translation>
    </message>
    <message>
        <source>%{given} in one day is much: few feeders let bees take more than %{most}. Is it right?</source>
        <translation>%{given} an einem Tag ist viel: Aus den wenigsten Futtergefäßen können Bienen mehr als %{most} abnehmen. Stimmt das?</translation>
    </message>
    <message numerus="yes">
        <source>The feeds of %n days make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>
            <numerusform>Die Futtergaben eines Tages ergeben %{stores} Futter, und diese Beute fasst %{most}. Stimmt das?</numerusform>
            <numerusform>Die Futtergaben von %n Tagen ergeben %{stores} Futter, und diese Beute fasst %{most}. Stimmt das?</numerusform>
        </translation>
    </message>
    <message>
        <source>The feeds of a day make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>Die Futtergaben eines Tages ergeben %{stores} Futter, und diese Beute fasst %{most}. Stimmt das?</translation>
    </message>
    <message>
        <source>%{covered:1} covered %{combs} are more than the %{most:0} places of this hive. How many were covered on both sides?</source>
        <translation>%{covered:1} besetzte Waben sind mehr als die %{most:0} Plätze dieser Beute. Wie viele waren auf beiden Seiten besetzt?</translation>
    </message>
    <message>
        <source>%{seams:1} seams are more than the %{most:0} this hive has. How many were filled with bees?</source>
        <translation>%{seams:1} Wabengassen sind mehr als die %{most:0} dieser Beute. Wie viele waren mit Bienen gefüllt?</translation>
    </message>
    <message>
        <source>%{bees:hundreds} bees are more than this hive houses, %{most:hundreds} at the very most. Is it right?</source>
        <translation>%{bees:hundreds} Bienen sind mehr, als in dieser Beute wohnen können, allerhöchstens %{most:hundreds}. Stimmt das?</translation>
    </message>
    <message>
        <source>%{cells:hundreds} cells of brood leave no room for food: all %{combs} of this hive have %{most:hundreds} cells. Is it right?</source>
        <translation>%{cells:hundreds} Brutzellen lassen keinen Platz für Futter: Alle Waben dieser Beute haben %{most:hundreds} Zellen. Stimmt das?</translation>
    </message>
    <message>
        <source>%{combs:1} %{combs} with stores are more than the %{most:0} places of this hive. How many were there?</source>
        <translation>%{combs:1} Futterwaben sind mehr als die %{most:0} Plätze dieser Beute. Wie viele waren es?</translation>
    </message>
    <message numerus="yes">
        <source>%{stores} of stores cannot well be left in %n boxes of this size, which hold %{most} at the most. Is it right?</source>
        <translation>
            <numerusform>%{stores} Futter können kaum in einer Zarge dieser Größe übrig sein, die höchstens %{most} fasst. Stimmt das?</numerusform>
            <numerusform>%{stores} Futter können kaum in %n Zargen dieser Größe übrig sein, die höchstens %{most} fassen. Stimmt das?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{stores} of stores cannot well be left in one box of this size, which holds %{most} at the most. Is it right?</source>
        <translation>%{stores} Futter können kaum in einer Zarge dieser Größe übrig sein, die höchstens %{most} fasst. Stimmt das?</translation>
    </message>
    <message>
        <source>%{water:1} % of water is out of the usual: honey in combs has %{low:0} to %{high:0} %. Is it right?</source>
        <translation>%{water:1}&#xa0;% Wasser sind ungewöhnlich: Honig in Waben hat %{low:0} bis %{high:0}&#xa0;%. Stimmt das?</translation>
    </message>
    <message>
        <source>%{day} is still to come: today is %{today}. Is the day right?</source>
        <translation>Der %{day} kommt erst noch: Heute ist der %{today}. Stimmt der Tag?</translation>
    </message>
    <message>
        <source>It had other boxes then than when it was looked at, so its weight does not tell its stores. What is in it now?</source>
        <translation>Die Beute hatte damals andere Zargen als bei der Durchsicht, daher sagt ihr Gewicht nichts über den Futtervorrat. Was ist jetzt darin?</translation>
    </message>
    <message numerus="yes">
        <source>An empty weight of %{weight} is much: %n boxes of this size weigh up to %{most} with all %{combs} drawn and no honey in them. Is it right?</source>
        <translation>
            <numerusform>Ein Leergewicht von %{weight} ist viel: Eine Zarge dieser Größe wiegt mit lauter ausgebauten Waben und ohne Honig bis zu %{most}. Stimmt das?</numerusform>
            <numerusform>Ein Leergewicht von %{weight} ist viel: %n Zargen dieser Größe wiegen mit lauter ausgebauten Waben und ohne Honig bis zu %{most}. Stimmt das?</numerusform>
        </translation>
    </message>
    <message>
        <source>An empty weight of %{weight} is much: one box of this size weighs up to %{most} with all %{combs} drawn and no honey in it. Is it right?</source>
        <translation>Ein Leergewicht von %{weight} ist viel: Eine Zarge dieser Größe wiegt mit lauter ausgebauten Waben und ohne Honig bis zu %{most}. Stimmt das?</translation>
    </message>
    <message>
        <source>An empty weight of %{weight} is little: this hive weighs %{least} or more without a single %{comb}. Was all of it on the scale?</source>
        <translation>Ein Leergewicht von %{weight} ist wenig: Diese Beute wiegt ohne eine einzige Wabe mindestens %{least}. War sie ganz auf der Waage?</translation>
    </message>
    <message>
        <source>%{day} is before the colony was there, from %{since} on. Is the day right?</source>
        <translation>Am %{day} war das Volk noch nicht da; es ist hier seit dem %{since}. Stimmt der Tag?</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside and do not open: a dry, still day, no knocking, the hive set down gently.</source>
        <translation>Bei Tageshöchstwerten um %{temperature} wiegen oder heben Sie die Beute nur von außen an und öffnen sie nicht: an einem trockenen, windstillen Tag, ohne Stöße; setzen Sie sie sanft ab.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside; the lid alone may be lifted, no %{comb} is drawn: a dry, still day, no knocking.</source>
        <translation>Bei Tageshöchstwerten um %{temperature} wiegen oder heben Sie die Beute von außen an; nur der Deckel darf kurz ab, keine Wabe wird gezogen: an einem trockenen, windstillen Tag, ohne Stöße.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside; the hive may be open for half a minute in the mildest hour, with the cluster left as it is. A full look waits for %{=15 °C}.</source>
        <translation>Bei Tageshöchstwerten um %{temperature} wiegen oder heben Sie die Beute von außen an; in der mildesten Stunde darf sie eine halbe Minute offen sein, die Traube bleibt, wie sie ist. Eine ganze Durchsicht wartet auf %{=15 °C}.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} the food goes on in the mildest hour, dry and still: the lid is off for half a minute only, no %{comb} is lifted, no knocking. All other looks and weighings are from outside.</source>
        <translation>Bei Tageshöchstwerten um %{temperature} kommt das Futter in der mildesten Stunde auf die Bienen, trocken und windstill: Der Deckel ist nur eine halbe Minute ab, keine Wabe wird gezogen, keine Stöße. Sonst wird nur von außen nachgesehen und gewogen.</translation>
    </message>
    <message>
        <source>Lay the fondant flat on the top bars right over the cluster, touching it: cut a window into its wrapping, lay that downwards, and cover it warmly. A block a hand&apos;s breadth away is not found in the cold.</source>
        <translation>Legen Sie den Futterteig flach auf die Oberträger, genau über die Traube, so dass er sie berührt: Schneiden Sie ein Fenster in die Verpackung, legen Sie es nach unten und decken Sie warm zu. Ein Block eine Handbreit daneben wird in der Kälte nicht gefunden.</translation>
    </message>
    <message>
        <source>In a long hive stand the fondant as a slab beside the cluster, on the side where its stores are, touching the outermost %{comb} with bees, with no empty %{comb} between.</source>
        <translation>In einer Trogbeute stellen Sie den Futterteig als Platte neben die Traube, auf die Seite, wo ihr Futter ist, an die äußerste Wabe mit Bienen, ohne Leerwabe dazwischen.</translation>
    </message>
    <message>
        <source>If there is no fondant, %{sugar:amount} of dry white sugar in all will do in need: on paper on the top bars over the cluster, misted with water, or the bees carry it out.</source>
        <translation>Ist kein Futterteig da, helfen zur Not insgesamt %{sugar:amount} trockener weißer Zucker: auf Papier auf den Oberträgern über der Traube, mit Wasser besprüht, sonst tragen die Bienen ihn hinaus.</translation>
    </message>
    <message>
        <source>Bees that fly from a dead colony are robbers. Look for pollen coming in or cleansing flights, or listen at the hive, before you call it alive.</source>
        <translation>Bienen, die aus einem toten Volk fliegen, sind Räuber. Achten Sie auf Polleneintrag oder Reinigungsflüge oder horchen Sie an der Beute, bevor Sie sagen, dass es lebt.</translation>
    </message>
    <message>
        <source>Take only %{combs} that never took syrup and were not in the hive while it was treated; everything else is for the bees.</source>
        <translation>Ernten Sie nur Waben, die nie Zuckerwasser aufnahmen und bei keiner Behandlung in der Beute waren; alles andere gehört den Bienen.</translation>
    </message>
    <message>
        <source>Old winter feed never goes up into a super: what is in the way is taken out, kept for light colonies, or left below.</source>
        <translation>Altes Winterfutter kommt nie in den Honigraum: Was im Weg ist, nehmen Sie heraus, heben es für leichte Völker auf oder lassen es unten.</translation>
    </message>
    <message>
        <source>Most colonies starve in spring, not in midwinter. With brood in every %{comb} a week of cold rain can empty a hive: leave %{leave:amount} until forage is steady.</source>
        <translation>Die meisten Völker verhungern im Frühjahr, nicht mitten im Winter. Mit Brut in jeder Wabe kann eine Woche kalter Regen eine Beute leeren: Lassen Sie %{leave:amount}, bis die Tracht beständig ist.</translation>
    </message>
    <message>
        <source>It was eaten as expected: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.</source>
        <translation>Der Verbrauch war wie erwartet: Etwa %{stores:amount} sind übrig; im Herbst erwartet waren für heute %{planned:amount}.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are left, less than the %{planned:amount} the autumn expected for today.</source>
        <translation>Etwa %{stores:amount} sind übrig, weniger als die %{planned:amount}, die im Herbst für heute erwartet waren.</translation>
    </message>
    <message>
        <source>On course: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.</source>
        <translation>Im Plan: Etwa %{stores:amount} sind übrig; im Herbst erwartet waren für heute %{planned:amount}.</translation>
    </message>
    <message>
        <source>No advice was acted on: it is followed as it was found on %{day}, with nothing but what is written down as fed and taken since.</source>
        <translation>Keine Empfehlung wurde zum Plan gemacht: Verfolgt wird das Volk so, wie es am %{day} gesehen wurde, mit nichts als dem, was seither als gefüttert und geerntet eingetragen ist.</translation>
    </message>
    <message>
        <source>Until its winter is followed, from %{day} on, what is to be done is what the answer of the day says, in the plan of its yard.</source>
        <translation>Bis sein Winter verfolgt wird, ab %{day}, gilt, was die Antwort des Tages sagt, im Plan seines Standes.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are left: less than these bees may eat in %{days:0} days. That cannot wait for better weather.</source>
        <translation>Etwa %{stores:amount} sind übrig: weniger, als diese Bienen in %{days:0} Tagen verbrauchen können. Das kann nicht auf besseres Wetter warten.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}, and no weighing of the fortnight before says otherwise: one portion does no harm, and a weighing tells what more it needs.</source>
        <translation>Beim Anheben am %{day} war die Beute leicht, und keine Wägung der zwei Wochen davor sagt etwas anderes: Eine Portion schadet nicht, und eine Wägung zeigt, was noch fehlt.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}, though the weighing of %{weighed} does not say so: weigh it again before anything is fed.</source>
        <translation>Beim Anheben am %{day} war die Beute leicht, obwohl die Wägung vom %{weighed} das nicht zeigt: Wiegen Sie noch einmal, bevor Sie füttern.</translation>
    </message>
    <message>
        <source>On %{day} it weighed %{seen}, where %{low} to %{high} were expected: more than any winter explains. Was a feed, a box, a stone or another colony added that is not written down? Else check the scale and the empty weight.</source>
        <translation>Am %{day} wog die Beute %{seen}, erwartet waren %{low} bis %{high}: mehr, als irgendein Winter erklärt. Kam eine Futtergabe, eine Zarge, ein Stein oder ein anderes Volk dazu, ohne dass es eingetragen ist? Wenn nicht, prüfen Sie die Waage und das Leergewicht.</translation>
    </message>
    <message>
        <source>On %{day} no stores were in sight beside the cluster. However heavy the hive is, food the cluster does not touch is not found in the cold: it starves beside full %{combs}.</source>
        <translation>Am %{day} war neben der Traube kein Futter zu sehen. So schwer die Beute auch ist: Futter, das die Traube nicht berührt, wird in der Kälte nicht gefunden. Das Volk verhungert neben vollen Futterwaben.</translation>
    </message>
    <message>
        <source>Where the cluster sat on %{day} empty %{combs} lie between it and the stores. In the cold it does not cross them.</source>
        <translation>Wo die Traube am %{day} saß, liegen Leerwaben zwischen ihr und dem Futter. In der Kälte überquert sie sie nicht.</translation>
    </message>
    <message>
        <source>About %{seen:0} bees were seen on %{day}, where even a poor winter leaves %{least:0}: the colony dwindles.</source>
        <translation>Am %{day} wurden etwa %{seen:0} Bienen gesehen, wo selbst ein schlechter Winter %{least:0} übrig lässt: Das Volk schrumpft.</translation>
    </message>
    <message>
        <source>Less was in the hive than was thought: on %{day} more likely about %{now:amount} than %{thought:amount}. The bees do not eat faster for it.</source>
        <translation>Es war weniger in der Beute als gedacht: am %{day} eher etwa %{now:amount} als %{thought:amount}. Die Bienen verbrauchen deshalb nicht mehr.</translation>
    </message>
    <message>
        <source>Feed for about %{stores:amount} of stores was planned from %{day} on, and it is not written down that it was given. Was it? Until you say so it is not counted.</source>
        <translation>Vom %{day} an waren Futtergaben für etwa %{stores:amount} Futter geplant, und dass sie gegeben wurden, ist nicht eingetragen. Wurden sie gegeben? Bis Sie es sagen, zählen sie nicht.</translation>
    </message>
    <message>
        <source>Between %{from} and %{until} the hive lost %{lost}, where about %{expected} was expected: these bees eat faster than forecast.</source>
        <translation>Zwischen dem %{from} und dem %{until} nahm die Beute um %{lost} ab, erwartet waren etwa %{expected}: Diese Bienen verbrauchen mehr als vorhergesagt.</translation>
    </message>
    <message>
        <source>So much is hardly eaten: check the scale, and whether a lid, a box or a stone was on or off on %{day}, and look for robbers.</source>
        <translation>So viel verzehrt kaum ein Volk: Prüfen Sie die Waage und ob am %{day} ein Deckel, eine Zarge oder ein Stein fehlte oder dazukam, und achten Sie auf Räuber.</translation>
    </message>
    <message>
        <source>More is there than the colony needs: in 9 winters of 10 %{stores:amount} or more will be left when spring forage starts.</source>
        <translation>Es ist mehr da, als das Volk braucht: In 9 von 10 Wintern sind bei Beginn der Frühtracht %{stores:amount} oder mehr übrig.</translation>
    </message>
    <message>
        <source>On a day of %{=10 °C} or more hang a full %{comb} right against the cluster, no empty one between, and weigh the hive.</source>
        <translation>Hängen Sie an einem Tag mit %{=10 °C} oder mehr eine volle Futterwabe direkt an die Traube, keine leere dazwischen, und wiegen Sie die Beute.</translation>
    </message>
    <message>
        <source>Narrow the entrance and keep it warm from above. On a day of %{=10 °C} or more put the bees together in a small space, a full %{comb} on either side, and see whether there is a queen. Unite it with no other while there may be disease.</source>
        <translation>Engen Sie das Flugloch ein und halten Sie das Volk von oben warm. Setzen Sie die Bienen an einem Tag mit %{=10 °C} oder mehr eng zusammen, auf jeder Seite eine volle Futterwabe, und sehen Sie nach, ob eine Königin da ist. Vereinigen Sie es mit keinem anderen, solange eine Krankheit möglich ist.</translation>
    </message>
    <message>
        <source>No food within reach: it starved, or could not get at what was left elsewhere.</source>
        <translation>Kein Futter in Reichweite: Das Volk ist verhungert oder kam an das nicht heran, was anderswo übrig war.</translation>
    </message>
    <message>
        <source>Food within reach: it did not starve for want of stores. Look at mites, the queen and the size of the cluster.</source>
        <translation>Futter in Reichweite: Das Volk starb nicht aus Mangel an Futter. Denken Sie an Milben, Königin und Größe der Traube.</translation>
    </message>
    <message>
        <source>Bees head down in the cells: they starved; with food elsewhere in the hive, because the cold held them away from it.</source>
        <translation>Bienen kopfüber in den Zellen: Sie sind verhungert; wenn anderswo in der Beute Futter war, weil die Kälte sie davon fernhielt.</translation>
    </message>
    <message>
        <source>No bees head down in the cells: hunger is not the likely cause.</source>
        <translation>Keine Bienen kopfüber in den Zellen: Hunger ist nicht die wahrscheinliche Ursache.</translation>
    </message>
    <message>
        <source>Many mites on the floor: the winter bees were raised with varroa and its viruses; treat earlier, and count afterwards.</source>
        <translation>Viele Milben auf dem Boden: Die Winterbienen wuchsen mit der Varroamilbe und ihren Viren auf; behandeln Sie früher, und zählen Sie danach.</translation>
    </message>
    <message>
        <source>Few mites on the floor: varroa is less likely, but a colony that lost its bees in autumn leaves few behind.</source>
        <translation>Wenige Milben auf dem Boden: Varroa ist weniger wahrscheinlich, aber ein Volk, das seine Bienen im Herbst verlor, hinterlässt nur wenige.</translation>
    </message>
    <message>
        <source>No brood: it died while laying had stopped, or had no laying queen any more.</source>
        <translation>Keine Brut: Das Volk starb, während die Eilage ruhte, oder hatte keine Königin in Eilage mehr.</translation>
    </message>
    <message>
        <source>Solid brood: the queen laid well until a sudden end, by cold or hunger.</source>
        <translation>Geschlossene Brut: Die Königin legte gut bis zu einem plötzlichen Ende durch Kälte oder Hunger.</translation>
    </message>
    <message>
        <source>Patchy brood, dead in its cells: varroa or a brood disease. Close the hive against robbers, and show the %{comb} to the bee inspector before any of it is used again.</source>
        <translation>Lückige Brut, in den Zellen abgestorben: Varroa oder eine Brutkrankheit. Verschließen Sie die Beute gegen Räuber, und zeigen Sie die Wabe dem Bienensachverständigen, bevor etwas davon wieder verwendet wird.</translation>
    </message>
    <message>
        <source>The queen was there to the end: it was not queenless.</source>
        <translation>Die Königin war bis zum Ende da: Das Volk war nicht weisellos.</translation>
    </message>
    <message>
        <source>No queen among the dead: with few bees and drone brood or none it was probably queenless.</source>
        <translation>Keine Königin unter den toten Bienen: Bei wenigen Bienen und Drohnenbrut oder gar keiner war das Volk vermutlich weisellos.</translation>
    </message>
    <message>
        <source>The colony was found dead on %{day}.</source>
        <translation>Das Volk wurde am %{day} tot gefunden.</translation>
    </message>
    <message>
        <source>If nothing is done it falls below %{reserve:amount} in %{in:0} of 100 winters that fit what was seen, by about %{day}.</source>
        <translation>Wenn nichts geschieht, fällt der Futtervorrat in %{in:0} von 100 Wintern, die zum Gesehenen passen, unter %{reserve:amount}, etwa bis zum %{day}.</translation>
    </message>
    <message>
        <source>Weigh again by %{day}: from then on a weighing may change what to do.</source>
        <translation>Wiegen Sie bis zum %{day} noch einmal: Von da an kann eine Wägung ändern, was zu tun ist.</translation>
    </message>
    <message>
        <source>Weigh on %{day}, before more is fed: how much it is to be follows from that.</source>
        <translation>Wiegen Sie am %{day}, bevor Sie weiter füttern: Danach richtet sich die Menge.</translation>
    </message>
    <message>
        <source>No further weighing before forage would change what to do.</source>
        <translation>Weiteres Wiegen vor der Frühtracht würde nichts an dem ändern, was zu tun ist.</translation>
    </message>
    <message>
        <source>The weighing of %{day} contradicts every simulated winter: it says %{seen}, where %{low} to %{high} was expected. Weigh again, and look for a feed that was not written down or ticked off, for a lid, a box or a stone that was on or off, and for robbers.</source>
        <translation>Die Wägung vom %{day} widerspricht jedem durchgerechneten Winter: Sie sagt %{seen}, erwartet waren %{low} bis %{high}. Wiegen Sie noch einmal, und suchen Sie nach einer Futtergabe, die nicht eingetragen oder nicht abgehakt ist, nach einem Deckel, einer Zarge oder einem Stein, der fehlte oder dazukam, und nach Räubern.</translation>
    </message>
    <message>
        <source>Before %{day} the hive changed by about %{change} more than any winter explains, and a later weighing agrees. The forecast goes on from there.</source>
        <translation>Vor dem %{day} änderte sich die Beute um etwa %{change} mehr, als irgendein Winter erklärt, und eine spätere Wägung bestätigt es. Die Prognose geht von dort weiter.</translation>
    </message>
    <message>
        <source>What was seen on %{day} contradicts every simulated winter, all of which had run out of stores by then. Weigh the hive.</source>
        <translation>Was am %{day} gesehen wurde, widerspricht jedem durchgerechneten Winter: In allen war das Futter bis dahin aufgebraucht. Wiegen Sie die Beute.</translation>
    </message>
    <message>
        <source>The records fit no winter: of about %{had:amount} on %{decided}, with %{given:amount} fed and %{taken:amount} taken since, nothing can have been left before %{day}, yet stores were found then. Look at what was written down between these days: until it is set right there is no forecast but the autumn&apos;s.</source>
        <translation>Die Einträge passen zu keinem Winter: Von etwa %{had:amount} am %{decided}, seither %{given:amount} gefüttert und %{taken:amount} geerntet, kann vor dem %{day} nichts übrig gewesen sein, und doch wurde da Futter gefunden. Sehen Sie durch, was zwischen diesen Tagen eingetragen ist: Bis das berichtigt ist, gibt es nur die Prognose vom Herbst.</translation>
    </message>
    <message>
        <source>Rain or snow lay on the hive on %{day}: that weighing counts for less.</source>
        <translation>Am %{day} lag Regen oder Schnee auf der Beute: Diese Wägung zählt weniger.</translation>
    </message>
    <message>
        <source>Few of the winters first drawn fitted what was seen; they were drawn again around it.</source>
        <translation>Von den zuerst gerechneten Wintern passten nur wenige zum Gesehenen; darum wurden neue in seiner Nähe gerechnet.</translation>
    </message>
    <message>
        <source>Only about %{winters:0} of the simulated winters fit what was seen, so the shares are rough.</source>
        <translation>Nur etwa %{winters:0} der durchgerechneten Winter passen zum Gesehenen, daher sind die Anteile grob.</translation>
    </message>
    <message numerus="yes">
        <source>Measured temperatures of %n days stand for the weather so far.</source>
        <translation>
            <numerusform>Die gemessene Temperatur eines Tages steht für das Wetter bis jetzt.</numerusform>
            <numerusform>Die gemessenen Temperaturen von %n Tagen stehen für das Wetter bis jetzt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The measured temperature of one day stands for the weather so far.</source>
        <translation>Die gemessene Temperatur eines Tages steht für das Wetter bis jetzt.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % more than the model says; used from now on.</source>
        <translation>
            <numerusform>In einem Winter verbrauchten diese Bienen %{percent:0}&#xa0;% mehr, als das Modell sagt; ab jetzt wird damit gerechnet.</numerusform>
            <numerusform>In %n Wintern verbrauchten diese Bienen %{percent:0}&#xa0;% mehr, als das Modell sagt; ab jetzt wird damit gerechnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, %{percent:0} % more than the model says; used from now on.</source>
        <translation>In einem Winter verbrauchten diese Bienen, soweit er es zeigt, %{percent:0}&#xa0;% mehr, als das Modell sagt; ab jetzt wird damit gerechnet.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % less than the model says; used from now on.</source>
        <translation>
            <numerusform>In einem Winter verbrauchten diese Bienen %{percent:0}&#xa0;% weniger, als das Modell sagt; ab jetzt wird damit gerechnet.</numerusform>
            <numerusform>In %n Wintern verbrauchten diese Bienen %{percent:0}&#xa0;% weniger, als das Modell sagt; ab jetzt wird damit gerechnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, %{percent:0} % less than the model says; used from now on.</source>
        <translation>In einem Winter verbrauchten diese Bienen, soweit er es zeigt, %{percent:0}&#xa0;% weniger, als das Modell sagt; ab jetzt wird damit gerechnet.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate what the model says, within 2 %.</source>
        <translation>
            <numerusform>In einem Winter verbrauchten diese Bienen auf 2&#xa0;% genau, was das Modell sagt.</numerusform>
            <numerusform>In %n Wintern verbrauchten diese Bienen auf 2&#xa0;% genau, was das Modell sagt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, what the model says, within 2 %.</source>
        <translation>In einem Winter verbrauchten diese Bienen, soweit er es zeigt, auf 2&#xa0;% genau, was das Modell sagt.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % faster than the model says; used from now on.</source>
        <translation>
            <numerusform>In einem Winter verloren sie Bienen um %{percent:0}&#xa0;% schneller, als das Modell sagt; ab jetzt wird damit gerechnet.</numerusform>
            <numerusform>In %n Wintern verloren sie Bienen um %{percent:0}&#xa0;% schneller, als das Modell sagt; ab jetzt wird damit gerechnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter they lost bees, as far as it tells, %{percent:0} % faster than the model says; used from now on.</source>
        <translation>In einem Winter verloren sie, soweit er es zeigt, Bienen um %{percent:0}&#xa0;% schneller, als das Modell sagt; ab jetzt wird damit gerechnet.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>
            <numerusform>In einem Winter verloren sie Bienen um %{percent:0}&#xa0;% langsamer, als das Modell sagt; ab jetzt wird damit gerechnet.</numerusform>
            <numerusform>In %n Wintern verloren sie Bienen um %{percent:0}&#xa0;% langsamer, als das Modell sagt; ab jetzt wird damit gerechnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter they lost bees, as far as it tells, %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>In einem Winter verloren sie, soweit er es zeigt, Bienen um %{percent:0}&#xa0;% langsamer, als das Modell sagt; ab jetzt wird damit gerechnet.</translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>
            <numerusform>Nach einem Frühjahr beginnt die Frühtracht hier %{days:1} Tage später, als das Klima sagt; ab jetzt wird damit gerechnet.</numerusform>
            <numerusform>Nach %n Frühjahren beginnt die Frühtracht hier %{days:1} Tage später, als das Klima sagt; ab jetzt wird damit gerechnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Going by one spring, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>Nach einem Frühjahr beginnt die Frühtracht hier %{days:1} Tage später, als das Klima sagt; ab jetzt wird damit gerechnet.</translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>
            <numerusform>Nach einem Frühjahr beginnt die Frühtracht hier %{days:1} Tage früher, als das Klima sagt; ab jetzt wird damit gerechnet.</numerusform>
            <numerusform>Nach %n Frühjahren beginnt die Frühtracht hier %{days:1} Tage früher, als das Klima sagt; ab jetzt wird damit gerechnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Going by one spring, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>Nach einem Frühjahr beginnt die Frühtracht hier %{days:1} Tage früher, als das Klima sagt; ab jetzt wird damit gerechnet.</translation>
    </message>
    <message>
        <source>Spring forage should carry the colony from about %{day}.</source>
        <translation>Etwa ab dem %{day} sollte das Volk von der Frühtracht leben können.</translation>
    </message>
    <message>
        <source>Leave %{leave:amount} for a cold spell until forage is steady.</source>
        <translation>Lassen Sie %{leave:amount} für einen Kälteeinbruch, bis die Tracht beständig ist.</translation>
    </message>
    <message>
        <source>More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts. It is for bees alone: full %{combs} of it may help a light, healthy colony, or be kept for one.</source>
        <translation>Es ist mehr da als das: In 9 von 10 Wintern sind zu Beginn der Frühtracht noch %{surplus:amount} oder mehr darüber hinaus übrig. Das ist nur für Bienen: Volle Waben davon können einem leichten, gesunden Volk helfen oder dafür aufgehoben werden.</translation>
    </message>
    <message>
        <source>More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts, and may come out.</source>
        <translation>Es ist mehr da: In 9 von 10 Wintern sind bei Beginn der Frühtracht darüber hinaus %{surplus:amount} oder mehr übrig, die Sie entnehmen können.</translation>
    </message>
    <message>
        <source>Take out about %{room:amount} of full %{combs} when forage has begun, so that the queen has room to lay.</source>
        <translation>Nehmen Sie etwa %{room:amount} in vollen Futterwaben heraus, wenn die Tracht begonnen hat, damit die Königin Platz zum Stiften hat.</translation>
    </message>
    <message>
        <source>The nearest climate station is %{km:distance} away, and beyond %{farthest:distance} none speaks for a place: give a climate of your own.</source>
        <translation>Die nächste Klimastation ist %{km:distance} entfernt, und jenseits von %{farthest:distance} spricht keine mehr für einen Ort: Geben Sie ein eigenes Klima an.</translation>
    </message>
    <message>
        <source>No climate station lies within %{farthest:distance} of the place: give a climate of your own.</source>
        <translation>Keine Klimastation liegt im Umkreis von %{farthest:distance}: Geben Sie ein eigenes Klima an.</translation>
    </message>
    <message>
        <source>There are no bees in the hive.</source>
        <translation>In der Beute sind keine Bienen.</translation>
    </message>
    <message>
        <source>Nothing tells how many bees there are: count the %{combs} or the seams they cover.</source>
        <translation>Nichts sagt, wie viele Bienen es sind: Zählen Sie die besetzten Waben oder Wabengassen.</translation>
    </message>
    <message>
        <source>By its weight on %{day} there are %{low:amount} to %{high:amount} of stores, with %{tare:amount} for the empty hive and what few or many bees weigh.</source>
        <translation>Nach ihrem Gewicht vom %{day} sind %{low:amount} bis %{high:amount} Futter in der Beute, mit %{tare:amount} für die leere Beute und dem, was wenige oder viele Bienen wiegen.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}. How many bees there are nobody counts in the cold, and without that no amount can be said: one portion does no harm, and a weighing tells whether more is wanted.</source>
        <translation>Beim Anheben am %{day} war die Beute leicht. Wie viele Bienen es sind, zählt in der Kälte niemand, und ohne das lässt sich keine Menge nennen: Eine Portion schadet nicht, und eine Wägung zeigt, ob mehr nötig ist.</translation>
    </message>
    <message>
        <source>Nothing tells what stores there are: look at the %{combs}, weigh the hive, or heft it.</source>
        <translation>Nichts sagt, wie viel Futter da ist: Sehen Sie die Waben an, wiegen Sie die Beute oder heben Sie sie an.</translation>
    </message>
    <message>
        <source>The day asked about lies in the month before the season begins: ask from 1 August on, in the south from the end of January.</source>
        <translation>Der Stichtag liegt im Monat vor dem Beginn der Zeit, für die das Programm antwortet: Fragen Sie vom 1. August an, im Süden von Ende Januar an.</translation>
    </message>
    <message>
        <source>This climate has no cold or dark season to derive a dearth from: give the dates of the build-up and of the start of spring forage.</source>
        <translation>Dieses Klima hat keine kalte oder dunkle Zeit, aus der sich eine Trachtlücke ableiten ließe: Geben Sie die Tage für die Frühjahrsentwicklung und den Beginn der Frühtracht an.</translation>
    </message>
    <message>
        <source>Spring forage has started: no winter is left to ask about.</source>
        <translation>Die Frühtracht hat begonnen: Der Winter, um den es gehen könnte, ist vorbei.</translation>
    </message>
    <message>
        <source>With signs of disease nothing else counts: no honey, no %{combs} and no bees leave this hive before the inspector has seen it. It is fed only to live until then.</source>
        <translation>Bei Krankheitsanzeichen zählt sonst nichts: Kein Honig, keine Wabe und keine Biene verlässt diese Beute, bevor der Bienensachverständige sie gesehen hat. Gefüttert wird nur, damit das Volk bis dahin lebt.</translation>
    </message>
    <message>
        <source>Of about %{stores:amount} in the hive only %{within:amount} lie where the bees can reach them in the cold.</source>
        <translation>Von etwa %{stores:amount} in der Beute liegen nur %{within:amount} dort, wo die Bienen in der Kälte herankommen.</translation>
    </message>
    <message>
        <source>Nothing of the about %{stores:amount} in the hive lies where the bees can reach it in the cold.</source>
        <translation>Von den etwa %{stores:amount} in der Beute liegt nichts dort, wo die Bienen in der Kälte herankommen.</translation>
    </message>
    <message>
        <source>About %{stores:amount} of stores may last less than %{days:0} days.</source>
        <translation>Etwa %{stores:amount} Futter reichen vielleicht keine %{days:0} Tage.</translation>
    </message>
    <message>
        <source>Next to nothing is left in the hive.</source>
        <translation>In der Beute ist so gut wie nichts mehr.</translation>
    </message>
    <message>
        <source>Neither queen nor eggs nor brood were seen, and it is not yet too late in the year for eggs: such a colony does not live through winter alone. Give it a %{comb} with eggs of another colony, and look after four days: queen cells on it mean she is gone.</source>
        <translation>Weder Königin noch Stifte noch Brut wurden gesehen, und für Stifte ist es im Jahr noch nicht zu spät: Ein solches Volk kommt allein nicht durch den Winter. Geben Sie ihm eine Wabe mit Stiften aus einem anderen Volk und sehen Sie nach vier Tagen nach: Weiselzellen darauf heißen, dass die Königin fehlt.</translation>
    </message>
    <message>
        <source>%{first:evidence} says %{low:amount}, %{second:evidence} says %{high:amount}: no amount is told before one of them is found wrong.</source>
        <translation>%{first:evidence} sagt %{low:amount}, %{second:evidence} sagt %{high:amount}: Es wird keine Menge genannt, bevor sich eines davon als falsch erweist.</translation>
    </message>
    <message>
        <source>Light at this time of year stands for about %{stores:amount}, give or take a third: one portion at once, then weigh.</source>
        <translation>Leicht heißt zu dieser Jahreszeit etwa %{stores:amount}, plus oder minus ein Drittel: sofort eine Portion, dann wiegen.</translation>
    </message>
    <message>
        <source>Fair at this time of year stands for about %{stores:amount}, give or take a third: too rough to decide by.</source>
        <translation>Mittel heißt zu dieser Jahreszeit etwa %{stores:amount}, plus oder minus ein Drittel: zu grob, um danach zu entscheiden.</translation>
    </message>
    <message>
        <source>Heavy at this time of year stands for about %{stores:amount}, give or take a third; no honey is taken on a heft.</source>
        <translation>Schwer heißt zu dieser Jahreszeit etwa %{stores:amount}, plus oder minus ein Drittel; nach bloßem Anheben wird kein Honig geerntet.</translation>
    </message>
    <message>
        <source>About %{bees:hundreds} bees going into winter are too few to winter well alone; 7,000 are the least.</source>
        <translation>Etwa %{bees:hundreds} Bienen zu Winterbeginn sind zu wenige, um allein gut zu überwintern; mindestens 7000 sollten es sein.</translation>
    </message>
    <message>
        <source>%{safety:amount} are to be in the hive so that it is safe until the next look; there are about %{stores:amount}. What it needs for winter is fed later.</source>
        <translation>%{safety:amount} sollen in der Beute sein, damit es bis zur nächsten Durchsicht sicher reicht; da sind etwa %{stores:amount}. Was für den Winter fehlt, wird später gefüttert.</translation>
    </message>
    <message>
        <source>%{safety:amount} stay in the hive until the next look; what is taken now is fed as sugar later, once the mites are treated.</source>
        <translation>%{safety:amount} bleiben bis zur nächsten Durchsicht in der Beute; was jetzt geerntet wird, wird später als Zucker gefüttert, wenn gegen die Milben behandelt ist.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are in the hive, and %{safety:amount} are enough until the next look: nothing is decided for winter yet.</source>
        <translation>Etwa %{stores:amount} sind in der Beute, und %{safety:amount} genügen bis zur nächsten Durchsicht: Für den Winter ist noch nichts entschieden.</translation>
    </message>
    <message>
        <source>Nectar or syrup is fresh in the open cells: they count as %{share:0} % of what they would weigh capped, until a look finds them ripe.</source>
        <translation>In den offenen Zellen ist frischer Nektar oder frisches Zuckerwasser: Sie zählen %{share:0}&#xa0;% dessen, was sie verdeckelt wögen, bis eine Durchsicht sie reif findet.</translation>
    </message>
    <message>
        <source>The %{combs} hold about %{room:amount}, and they are full.</source>
        <translation>Die Waben fassen etwa %{room:amount}, und sie sind voll.</translation>
    </message>
    <message>
        <source>About %{missing:amount} of stores are missing on %{day}.</source>
        <translation>Am %{day} fehlen etwa %{missing:amount} Futter.</translation>
    </message>
    <message>
        <source>In a dearth bees take thick syrup in small portions, right over the cluster, on days that are warm enough.</source>
        <translation>In einer Trachtlücke nehmen die Bienen dickes Zuckerwasser in kleinen Gaben ab, direkt über der Traube, an Tagen, die warm genug sind.</translation>
    </message>
    <message>
        <source>After the last day for syrup bees take small portions only, warm, thick and right over the cluster, and fewer from week to week.</source>
        <translation>Nach dem letzten Tag für Zuckerwasser nehmen die Bienen nur kleine Gaben ab, warm, dick und direkt über der Traube, und von Woche zu Woche weniger.</translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end: what is missing goes on as %{board} before the hive is wrapped.</source>
        <translation>
            <numerusform>Kälte kann die Bienen einen Tag lang einsperren: Was fehlt, kommt als Futterteig auf die Bienen, bevor die Beute eingepackt wird.</numerusform>
            <numerusform>Kälte kann die Bienen %n Tage am Stück einsperren: Was fehlt, kommt als Futterteig auf die Bienen, bevor die Beute eingepackt wird.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{Board} should have been on before the hive was wrapped. Cold may lock the bees in for %n days on end, and most winters would starve them as they are: laid on now it still helps, if the bees can get at it.</source>
        <translation>
            <numerusform>Futterteig hätte aufliegen sollen, bevor die Beute eingepackt wurde. Kälte kann die Bienen einen Tag lang einsperren, und so, wie sie sind, würden sie in den meisten Wintern verhungern: Jetzt aufgelegt hilft er noch, wenn die Bienen herankommen.</numerusform>
            <numerusform>Futterteig hätte aufliegen sollen, bevor die Beute eingepackt wurde. Kälte kann die Bienen %n Tage am Stück einsperren, und so, wie sie sind, würden sie in den meisten Wintern verhungern: Jetzt aufgelegt hilft er noch, wenn die Bienen herankommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>About %{stores:amount} are left, and %{reserve:amount} are to be kept: one visit now, the next after weighing.</source>
        <translation>Etwa %{stores:amount} sind übrig, und %{reserve:amount} sollen bleiben: jetzt ein Termin, der nächste nach dem Wiegen.</translation>
    </message>
    <message>
        <source>Nothing can or need be fed today; whether it will be wanted a later weighing tells.</source>
        <translation>Heute kann und muss nichts gefüttert werden; ob es nötig wird, zeigt eine spätere Wägung.</translation>
    </message>
    <message>
        <source>The honey of the super is for people and was not counted: the bees keep their %{stores:amount} when it comes off.</source>
        <translation>Der Honig im Honigraum ist für Sie und wurde nicht mitgezählt: Die Bienen behalten ihre %{stores:amount}, wenn er abkommt.</translation>
    </message>
    <message>
        <source>About %{spare:amount} are to spare above what the colony should winter on and what is usual here.</source>
        <translation>Etwa %{spare:amount} sind übrig, über das hinaus, womit das Volk überwintern soll und was hier üblich ist.</translation>
    </message>
    <message>
        <source>About %{spare:amount} are to spare above what the colony should winter on.</source>
        <translation>Etwa %{spare:amount} sind übrig, über das hinaus, womit das Volk überwintern soll.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted: that is enough, and what is more stays with the bees.</source>
        <translation>Etwa %{stores:amount} werden da sein, und %{need:amount} werden gebraucht: Das genügt, und was darüber ist, bleibt den Bienen.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted; but %{usual:amount} or more are usual here, and less than that is never left after a harvest: what is more stays with the bees.</source>
        <translation>Etwa %{stores:amount} werden da sein, und %{need:amount} werden gebraucht; hier üblich sind aber %{usual:amount} oder mehr, und weniger wird nach einer Honigernte nie gelassen: Was darüber ist, bleibt den Bienen.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted: a difference of less than %{dead:amount} is neither fed nor taken.</source>
        <translation>Etwa %{stores:amount} werden da sein, und %{need:amount} werden gebraucht: Bei weniger als %{dead:amount} Unterschied wird weder gefüttert noch geerntet.</translation>
    </message>
    <message>
        <source>No brood was seen, though the queen usually still lays: if she has stopped, %{stopped:amount} are enough instead of %{need:amount}.</source>
        <translation>Es wurde keine Brut gesehen, obwohl die Königin gewöhnlich noch legt: Hat sie aufgehört, genügen %{stopped:amount} statt %{need:amount}.</translation>
    </message>
    <message>
        <source>No eggs at this time of year are normal: that is no sign that the queen is gone.</source>
        <translation>Keine Stifte sind zu dieser Jahreszeit normal: Das heißt nicht, dass die Königin fehlt.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then give drawn comb or a box of it (no foundation now), or full %{combs} from store or a healthy neighbour.</source>
        <translation>%{need:amount} werden gebraucht, und die Waben fassen etwa %{room:amount}: Wiegen Sie zuerst, dann geben Sie ausgebaute Waben oder eine Zarge davon (jetzt keine Mittelwände) oder volle Futterwaben aus dem Vorrat oder von einem gesunden Nachbarvolk.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: give drawn comb or a box of it (no foundation now), or full %{combs} from store or a healthy neighbour.</source>
        <translation>%{need:amount} werden gebraucht, und die Waben fassen etwa %{room:amount}: Geben Sie ausgebaute Waben oder eine Zarge davon (jetzt keine Mittelwände) oder volle Futterwaben aus dem Vorrat oder von einem gesunden Nachbarvolk.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: change empty %{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>%{need:amount} werden gebraucht, und die Waben fassen etwa %{room:amount}: Tauschen Sie Leerwaben gegen volle Futterwaben aus dem Vorrat oder von einem gesunden Nachbarvolk; wiegen Sie im Winter, und legen Sie Futterteig auf, wo es dann noch fehlt.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then change empty %{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>%{need:amount} werden gebraucht, und die Waben fassen etwa %{room:amount}: Wiegen Sie zuerst, dann tauschen Sie Leerwaben gegen volle Futterwaben aus dem Vorrat oder von einem gesunden Nachbarvolk; wiegen Sie im Winter, und legen Sie Futterteig auf, wo es dann noch fehlt.</translation>
    </message>
    <message>
        <source>On %{day} it should hold about %{need:amount}: %{combs:halves} full %{combs}, %{gross:amount} with hive and bees.</source>
        <translation>Am %{day} sollte die Beute etwa %{need:amount} enthalten: %{combs:halves} volle Futterwaben, %{gross:amount} mit Beute und Bienen.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}.</source>
        <translation>Hier üblich (%{place}): %{low:amount} bis %{high:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}.</source>
        <translation>Hier üblich (%{place}): %{low:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters.</source>
        <translation>Hier üblich (%{place}): %{low:amount}. Diese Antwort nennt %{need:amount}, denn sie rechnet mit Bienen, Beute und Wintern dieses Volkes.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters.</source>
        <translation>Hier üblich (%{place}): %{low:amount} bis %{high:amount}. Diese Antwort nennt %{need:amount}, denn sie rechnet mit Bienen, Beute und Wintern dieses Volkes.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.</source>
        <translation>Hier üblich (%{place}): %{low:amount} bis %{high:amount}. Diese Antwort nennt %{need:amount}, denn sie rechnet mit Bienen, Beute und Wintern dieses Volkes. Jene Zahl haben Imkerinnen und Imker genannt, veröffentlicht ist sie nicht: Sie hält keinen Honig zurück.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.</source>
        <translation>Hier üblich (%{place}): %{low:amount}. Diese Antwort nennt %{need:amount}, denn sie rechnet mit Bienen, Beute und Wintern dieses Volkes. Jene Zahl haben Imkerinnen und Imker genannt, veröffentlicht ist sie nicht: Sie hält keinen Honig zurück.</translation>
    </message>
    <message>
        <source>Counted from today %{need:amount} are wanted: then %{reserve:amount} or more are left in %{in:0} of 100 winters when spring forage starts, around %{forage}.</source>
        <translation>Von heute an gerechnet werden %{need:amount} gebraucht: Dann sind bei Beginn der Frühtracht, um den %{forage}, in %{in:0} von 100 Wintern %{reserve:amount} oder mehr übrig.</translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when nothing can be fed: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>Kälte kann die Bienen einen Tag lang einsperren, und dann kann nichts gefüttert werden: Daher soll in %{in:0} von 100 Wintern genug übrig sein, nicht nur in 80.</numerusform>
            <numerusform>Kälte kann die Bienen %n Tage am Stück einsperren, und dann kann nichts gefüttert werden: Daher soll in %{in:0} von 100 Wintern genug übrig sein, nicht nur in 80.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when they reach only food that touches them: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>Kälte kann die Bienen einen Tag lang einsperren, und dann erreichen sie nur Futter, das sie berührt: Daher soll in %{in:0} von 100 Wintern genug übrig sein, nicht nur in 80.</numerusform>
            <numerusform>Kälte kann die Bienen %n Tage am Stück einsperren, und dann erreichen sie nur Futter, das sie berührt: Daher soll in %{in:0} von 100 Wintern genug übrig sein, nicht nur in 80.</numerusform>
        </translation>
    </message>
    <message>
        <source>%{reserve:amount} are to be left because the hive has more than one brood box; of one box it would be %{one:amount}.</source>
        <translation>%{reserve:amount} sollen übrig sein, weil der Brutraum mehr als eine Zarge hat; bei einer Zarge wären es %{one:amount}.</translation>
    </message>
    <message>
        <source>There is empty comb for only about %{room:amount}: no more is fed than finds a place.</source>
        <translation>Leerwaben sind nur für etwa %{room:amount} da: Mehr wird nicht gefüttert, als Platz findet.</translation>
    </message>
    <message>
        <source>Not all of it can be taken by the last day for syrup; full %{combs} may make up the rest; else weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Bis zum letzten Tag für Zuckerwasser kann nicht alles abgenommen werden; volle Futterwaben können den Rest ausgleichen; sonst wiegen Sie im Winter und legen Futterteig auf, wo es dann noch fehlt.</translation>
    </message>
    <message>
        <source>Feeding is best finished by %{day}; this plan goes on after it.</source>
        <translation>Die Fütterung ist am besten bis zum %{day} abgeschlossen; dieser Plan geht darüber hinaus.</translation>
    </message>
    <message>
        <source>The honey holds %{water:1} % water, more than %{most:0} %, and would ferment: it stays with the bees, now and in spring.</source>
        <translation>Der Honig hat %{water:1}&#xa0;% Wasser, mehr als %{most:0}&#xa0;%, und würde gären: Er bleibt den Bienen, jetzt und im Frühjahr.</translation>
    </message>
    <message>
        <source>The honey holds %{water:1} % water: it may be kept, but driest honey keeps best.</source>
        <translation>Der Honig hat %{water:1}&#xa0;% Wasser: Er hält sich, aber am besten hält sich der trockenste.</translation>
    </message>
    <message>
        <source>Sugar was fed since last spring: no %{comb} that was on the hive then is honey for people, now or in spring.</source>
        <translation>Seit dem letzten Frühjahr wurde Zucker gefüttert: Keine Wabe, die dabei in der Beute war, ist zum Ernten, weder jetzt noch im Frühjahr.</translation>
    </message>
    <message>
        <source>About %{spare:amount} to spare may go as %{combs} to bees: to your own nuclei or to a healthy colony of this yard.</source>
        <translation>Etwa %{spare:amount} sind übrig und können als Waben abgegeben werden: an Ihre eigenen Ableger oder an ein gesundes Volk dieses Standes.</translation>
    </message>
    <message>
        <source>What is to spare may also stay and be taken in spring: typically %{spare:amount} more than is wanted when spring forage starts.</source>
        <translation>Was übrig ist, kann auch bleiben und im Frühjahr geerntet werden: meist %{spare:amount} mehr, als bei Beginn der Frühtracht nötig ist.</translation>
    </message>
    <message>
        <source>There is no winter here, only a dearth between the last nectar of autumn and the first of spring. Local flows decide it, and the error is twice that of colder places.</source>
        <translation>Einen Winter gibt es hier nicht, nur eine Trachtlücke zwischen dem letzten Nektar des Herbstes und dem ersten des Frühjahrs. Es kommt auf die Trachten am Ort an, und der Fehler ist doppelt so groß wie in kälteren Gegenden.</translation>
    </message>
    <message>
        <source>The climate is your own climate, as you gave it.</source>
        <translation>Gerechnet ist mit Ihrem eigenen Klima, so wie Sie es angegeben haben.</translation>
    </message>
    <message>
        <source>The climate is that of the station for %{place}, %{km:distance} away.</source>
        <translation>Gerechnet ist mit dem Klima der Station für %{place}, %{km:distance} entfernt.</translation>
    </message>
    <message>
        <source>The climate is that of the station for %{place}.</source>
        <translation>Gerechnet ist mit dem Klima der Station für %{place}.</translation>
    </message>
    <message>
        <source>Nectar still coming in is counted: %{strength:flow}.</source>
        <translation>Eine Spättracht, die noch kommt, ist mitgerechnet: %{strength:flow}.</translation>
    </message>
    <message>
        <source>About %{bees:hundreds} bees are fewer than the 4,000 from which colonies have been measured: the figures are less sure.</source>
        <translation>Etwa %{bees:hundreds} Bienen sind weniger als die 4000, ab denen Völker gemessen wurden: Die Zahlen sind weniger sicher.</translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{used} used since.</source>
        <translation>
            <numerusform>Die letzte Durchsicht war %n Tag vor dem Stichtag; seither rechnet das Modell mit %{used} Verbrauch.</numerusform>
            <numerusform>Die letzte Durchsicht war %n Tage vor dem Stichtag; seither rechnet das Modell mit %{used} Verbrauch.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last look was the day before the day asked about; the model counts %{used} used since.</source>
        <translation>Die letzte Durchsicht war am Tag vor dem Stichtag; seither rechnet das Modell mit %{used} Verbrauch.</translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>
            <numerusform>Die letzte Durchsicht war %n Tag vor dem Stichtag; seither rechnet das Modell mit %{gained} Eintrag.</numerusform>
            <numerusform>Die letzte Durchsicht war %n Tage vor dem Stichtag; seither rechnet das Modell mit %{gained} Eintrag.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last look was the day before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>Die letzte Durchsicht war am Tag vor dem Stichtag; seither rechnet das Modell mit %{gained} Eintrag.</translation>
    </message>
    <message numerus="yes">
        <source>Syrup 3:2 by mass: %n warm days are left to ripen it.</source>
        <translation>
            <numerusform>Zuckerwasser 3:2 nach Gewicht: Es bleibt ein warmer Tag, um es einzudicken.</numerusform>
            <numerusform>Zuckerwasser 3:2 nach Gewicht: Es bleiben %n warme Tage, um es einzudicken.</numerusform>
        </translation>
    </message>
    <message>
        <source>Syrup 3:2 by mass: one warm day is left to ripen it.</source>
        <translation>Zuckerwasser 3:2 nach Gewicht: Es bleibt ein warmer Tag, um es einzudicken.</translation>
    </message>
    <message numerus="yes">
        <source>Syrup 2:1 by mass: %n warm days are left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>
            <numerusform>Zuckerwasser 2:1 nach Gewicht: Es bleibt ein warmer Tag, weniger als die fünf Wochen, die 3:2 braucht; so müssen die Bienen weniger Wasser austreiben.</numerusform>
            <numerusform>Zuckerwasser 2:1 nach Gewicht: Es bleiben %n warme Tage, weniger als die fünf Wochen, die 3:2 braucht; so müssen die Bienen weniger Wasser austreiben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Syrup 2:1 by mass: one warm day is left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>Zuckerwasser 2:1 nach Gewicht: Es bleibt ein warmer Tag, weniger als die fünf Wochen, die 3:2 braucht; so müssen die Bienen weniger Wasser austreiben.</translation>
    </message>
    <message>
        <source>No single %{comb} may be taken: each holds brood, hangs over or beside the bees, is not capped enough, took syrup, is old, or weighs more than can be spared.</source>
        <translation>Keine einzelne Wabe darf geerntet werden: Jede enthält Brut, hängt über oder neben den Bienen, ist nicht genug verdeckelt, nahm Zuckerwasser auf, ist alt oder wiegt mehr, als übrig ist.</translation>
    </message>
    <message>
        <source>About %{spare:amount} would be to spare if it is as thought; but with the doubt of what is there more than %{in:0} of 100 winters would fall below %{reserve:amount} without it, so it stays with the bees.</source>
        <translation>Ist es wie gedacht, wären etwa %{spare:amount} übrig. Wie viel da ist, ist aber so unsicher, dass der Futtervorrat ohne sie in mehr als %{in:0} von 100 Wintern unter %{reserve:amount} fiele; daher bleiben sie den Bienen.</translation>
    </message>
    <message>
        <source>Only %{percent:0} % of the stores are capped: honey is ripe from two thirds on, so none is taken before more is.</source>
        <translation>Nur %{percent:0}&#xa0;% des Futters sind verdeckelt: Honig ist ab zwei Dritteln reif, daher wird keiner geerntet, bevor mehr verdeckelt ist.</translation>
    </message>
    <message>
        <source>%{Combs} were only counted, so none can be named.</source>
        <translation>Die Waben wurden nur gezählt, daher lässt sich keine nennen.</translation>
    </message>
    <message>
        <source>The hive was treated while this honey was in it, so none of it is taken.</source>
        <translation>Die Beute wurde behandelt, während dieser Honig darin war; daher wird nichts davon geerntet.</translation>
    </message>
    <message>
        <source>%{Combs} that stood for years in the brood nest are not taken.</source>
        <translation>Waben, die jahrelang im Brutnest hingen, werden nicht geerntet.</translation>
    </message>
    <message>
        <source>Honey the autumn flow has yet to bring is never counted for harvest.</source>
        <translation>Honig, den die Spättracht erst noch bringen muss, wird nie zur Honigernte gezählt.</translation>
    </message>
    <message>
        <source>%{built:0} %{combs} are built, the bees cover %{covered:halves}, and %{empty:0} are empty: take empty %{combs} out before winter, or put a follower beside the nest.</source>
        <translation>%{built:0} Waben sind ausgebaut, die Bienen besetzen %{covered:halves}, und %{empty:0} sind leer: Nehmen Sie vor dem Winter Leerwaben heraus oder hängen Sie ein Schied neben das Nest.</translation>
    </message>
    <message>
        <source>About %{open:amount} are open stores that may not be capped before the cold.</source>
        <translation>Etwa %{open:amount} sind offenes Futter, das vor der Kälte vielleicht nicht mehr verdeckelt wird.</translation>
    </message>
    <message>
        <source>The season lies at the edge of the rules, as in high and far northern places: compare its dates with your own.</source>
        <translation>Der Jahreslauf liegt am Rand der Regeln, wie im Gebirge und im hohen Norden: Vergleichen Sie seine Tage mit Ihren eigenen.</translation>
    </message>
    <message>
        <source>The derived date of %{which:season} gave way to a given one and is now %{to}.</source>
        <translation>Der abgeleitete Tag „%{which:season}“ ist einem angegebenen gewichen und ist jetzt der %{to}.</translation>
    </message>
    <message>
        <source>Dates of the season were given and not derived.</source>
        <translation>Tage des Jahreslaufs wurden angegeben und nicht abgeleitet.</translation>
    </message>
    <message>
        <source>For the height of the place all temperatures are shifted by %{kelvin:kelvins}.</source>
        <translation>Wegen der Höhe des Ortes sind alle Temperaturen um %{kelvin:kelvins} verschoben.</translation>
    </message>
    <message>
        <source>The weighing of %1 is not counted.</source>
        <translation>Die Wägung vom %1 zählt nicht.</translation>
    </message>
    <message>
        <source>The feed of %1 is not counted.</source>
        <translation>Die Futtergabe vom %1 zählt nicht.</translation>
    </message>
    <message>
        <source>The harvest of %1 is not counted.</source>
        <translation>Die Honigernte vom %1 zählt nicht.</translation>
    </message>
    <message>
        <source>The bees seen on %1 are not counted.</source>
        <translation>Die am %1 gesehenen Bienen zählen nicht.</translation>
    </message>
    <message>
        <source>The brood seen on %1 is not counted.</source>
        <translation>Die am %1 gesehene Brut zählt nicht.</translation>
    </message>
    <message>
        <source>The %{combs} of %1 are not counted.</source>
        <translation>Die Waben vom %1 zählen nicht.</translation>
    </message>
    <message>
        <source>The water measured on %1 is not counted.</source>
        <translation>Der am %1 gemessene Wassergehalt zählt nicht.</translation>
    </message>
    <message>
        <source>The empty weight that is given is not counted.</source>
        <translation>Das angegebene Leergewicht zählt nicht.</translation>
    </message>
    <message>
        <source>The seams seen on %1 are not counted.</source>
        <translation>Die am %1 gesehenen Wabengassen zählen nicht.</translation>
    </message>
    <message>
        <source>What was found on %1 is not counted.</source>
        <translation>Was am %1 gefunden wurde, zählt nicht.</translation>
    </message>
    <message>
        <source>%{from} is united onto this colony by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.</source>
        <translation>Das Volk „%{from}“ wird bis zum %{day} mit diesem vereinigt: Seine Bienen, seine Brut und sein Futter sind hier mitgezählt, und keines der beiden gibt oder bekommt Waben.</translation>
    </message>
    <message>
        <source>Another colony of the yard is united onto this one by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.</source>
        <translation>Ein anderes Volk des Standes wird bis zum %{day} mit diesem vereinigt: Seine Bienen, seine Brut und sein Futter sind hier mitgezählt, und keines der beiden gibt oder bekommt Waben.</translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from %{from}.</source>
        <translation>
            <numerusform>Bevor Sie Zucker kaufen: Eine Wabe mit etwa %{kg:amount} kann vom Volk „%{from}“ kommen.</numerusform>
            <numerusform>Bevor Sie Zucker kaufen: %n Waben mit etwa %{kg:amount} können vom Volk „%{from}“ kommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Before buying sugar: one %{comb} with about %{kg:amount} can come from %{from}.</source>
        <translation>Bevor Sie Zucker kaufen: Eine Wabe mit etwa %{kg:amount} kann vom Volk „%{from}“ kommen.</translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>
            <numerusform>Bevor Sie Zucker kaufen: Eine Wabe mit etwa %{kg:amount} kann von einem anderen Volk des Standes kommen.</numerusform>
            <numerusform>Bevor Sie Zucker kaufen: %n Waben mit etwa %{kg:amount} können von einem anderen Volk des Standes kommen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Before buying sugar: one %{comb} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>Bevor Sie Zucker kaufen: Eine Wabe mit etwa %{kg:amount} kann von einem anderen Volk des Standes kommen.</translation>
    </message>
    <message>
        <source>%{Combs} with about %{kg:amount} more than those that come back go to %{receiver}, which is short: this hive keeps what it should winter on.</source>
        <translation>Waben mit etwa %{kg:amount} mehr als die, die zurückkommen, gehen an das Volk „%{receiver}“, dem Futter fehlt: Diese Beute behält, womit sie überwintern soll.</translation>
    </message>
    <message>
        <source>%{Combs} with about %{kg:amount} more than those that come back go to another colony of the yard, which is short: this hive keeps what it should winter on.</source>
        <translation>Waben mit etwa %{kg:amount} mehr als die, die zurückkommen, gehen an ein anderes Volk des Standes, dem Futter fehlt: Diese Beute behält, womit sie überwintern soll.</translation>
    </message>
    <message>
        <source>When they have become one, after about a week, sort the %{combs}: brood and the full ones stay, in two boxes at most, and the boxes with empty ones come off.</source>
        <translation>Wenn sie eins geworden sind, nach etwa einer Woche, ordnen Sie die Waben: Brut und volle Waben bleiben, in höchstens zwei Zargen, und die Zargen mit den leeren kommen ab.</translation>
    </message>
    <message>
        <source>%{from} may be united onto this colony by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask again when they are one.</source>
        <translation>Das Volk „%{from}“ kann bis zum %{day} mit diesem vereinigt werden, sobald sicher ist, dass es weisellos ist. Bis dahin wird dieses allein gewogen und gefüttert; fragen Sie neu, wenn sie eins sind.</translation>
    </message>
    <message>
        <source>Another colony of the yard may be united onto this one by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask again when they are one.</source>
        <translation>Ein anderes Volk des Standes kann bis zum %{day} mit diesem vereinigt werden, sobald sicher ist, dass es weisellos ist. Bis dahin wird dieses allein gewogen und gefüttert; fragen Sie neu, wenn sie eins sind.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but beyond what keepers here leave a colony it is too little to give %{combs} away.</source>
        <translation>Dem Volk „%{receiver}“ fehlt Futter, und dieses hier hat etwa %{kg:amount} über seinem Zielvorrat; über das hinaus, was Imkerinnen und Imker hier einem Volk lassen, ist es aber zu wenig, um Waben abzugeben.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but which of its %{combs} could go is not known: look at them one by one, write them down, and ask again.</source>
        <translation>Dem Volk „%{receiver}“ fehlt Futter, und dieses hier hat etwa %{kg:amount} über seinem Zielvorrat; welche seiner Waben abgegeben werden könnten, ist aber nicht bekannt: Sehen Sie sie einzeln an, tragen Sie sie ein und fragen Sie neu.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but no whole %{comb} of it without brood can go there.</source>
        <translation>Dem Volk „%{receiver}“ fehlt Futter, und dieses hier hat etwa %{kg:amount} über seinem Zielvorrat; aber keine ganze Wabe ohne Brut kann von ihm dorthin gehen.</translation>
    </message>
    <message>
        <source>%{from} was united onto this colony on %{day}: its bees, brood and stores, as they were seen on %{seen}, are counted with these.</source>
        <translation>Das Volk „%{from}“ wurde am %{day} mit diesem vereinigt: Seine Bienen, seine Brut und sein Futter, so wie sie am %{seen} gesehen wurden, sind hier mitgezählt.</translation>
    </message>
    <message>
        <source>The boxes of %{from} are taken to stand on top, with their %{combs}. If they do not, write down which boxes the hive has now.</source>
        <translation>Es wird angenommen, dass die Zargen des Volkes „%{from}“ mit ihren Waben obenauf stehen. Wenn nicht, tragen Sie ein, welche Zargen die Beute jetzt hat.</translation>
    </message>
    <message>
        <source>Nothing tells how many bees %{from} brought, which was united onto this colony on %{day}: count the %{combs} they cover now.</source>
        <translation>Nichts sagt, wie viele Bienen das Volk „%{from}“ mitbrachte, das am %{day} mit diesem vereinigt wurde: Zählen Sie die Waben, die sie jetzt besetzen.</translation>
    </message>
    <message>
        <source>Nothing tells what stores %{from} brought, which was united onto this colony on %{day}: they are not counted. Weigh the hive.</source>
        <translation>Nichts sagt, wie viel Futter das Volk „%{from}“ mitbrachte, das am %{day} mit diesem vereinigt wurde: Es ist nicht mitgezählt. Wiegen Sie die Beute.</translation>
    </message>
</context>
<context>
    <name>ScaleWords</name>
    <message>
        <source>there is no time</source>
        <translation>die Zeit fehlt</translation>
    </message>
    <message>
        <source>the time cannot be read</source>
        <translation>die Zeit lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>there is no such day</source>
        <translation>diesen Tag gibt es nicht</translation>
    </message>
    <message>
        <source>the time is written in another form than in the rows before</source>
        <translation>die Zeit ist anders geschrieben als in den Zeilen davor</translation>
    </message>
    <message>
        <source>there is no weight</source>
        <translation>das Gewicht fehlt</translation>
    </message>
    <message>
        <source>the weight is no number</source>
        <translation>das Gewicht ist keine Zahl</translation>
    </message>
    <message>
        <source>no hive weighs that</source>
        <translation>so viel wiegt keine Beute</translation>
    </message>
    <message>
        <source>a quotation mark is not closed</source>
        <translation>ein Anführungszeichen ist nicht geschlossen</translation>
    </message>
    <message>
        <source>the line is too long</source>
        <translation>die Zeile ist zu lang</translation>
    </message>
    <message>
        <source>the clock was put back: its time contradicts the order of the rows</source>
        <translation>die Uhr wurde zurückgestellt: Ihre Zeit widerspricht der Reihenfolge der Zeilen</translation>
    </message>
    <message>
        <source>line %1 has the same time</source>
        <translation>Zeile %1 hat dieselbe Zeit</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>Beute</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>Futtergabe</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>Honigernte</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>as much was put on and taken off again</source>
        <translation>ebenso viel wurde aufgesetzt und wieder abgenommen</translation>
    </message>
    <message>
        <source>soon after a feed: the feeder, perhaps</source>
        <translation>bald nach einer Futtergabe: vielleicht das Futtergefäß</translation>
    </message>
    <message>
        <source>it lost weight afterwards as syrup does</source>
        <translation>danach nahm das Gewicht ab wie bei Zuckerwasser</translation>
    </message>
    <message>
        <source>put on while nothing came in</source>
        <translation>aufgesetzt, als nichts hereinkam</translation>
    </message>
    <message>
        <source>put on while nectar came in</source>
        <translation>aufgesetzt, als Nektar hereinkam</translation>
    </message>
    <message>
        <source>more than a feeder holds</source>
        <translation>mehr, als ein Futtergefäß fasst</translation>
    </message>
    <message>
        <source>taken off after as much nectar had come in</source>
        <translation>abgenommen, nachdem ebenso viel Nektar hereingekommen war</translation>
    </message>
    <message>
        <source>gone at once by day in a flow: a swarm, perhaps</source>
        <translation>auf einmal fort, bei Tag und in der Tracht: vielleicht ein Schwarm</translation>
    </message>
    <message>
        <source>while nothing was recorded</source>
        <translation>während nichts aufgezeichnet wurde</translation>
    </message>
    <message>
        <source>nothing tells</source>
        <translation>nichts sagt es</translation>
    </message>
    <message>
        <source>nectar</source>
        <translation>Nektareintrag</translation>
    </message>
    <message>
        <source>eating</source>
        <translation>Zehrung</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>nass</translation>
    </message>
    <message>
        <source>no weight on the first</source>
        <translation>kein Gewicht am Ersten</translation>
    </message>
    <message>
        <source>no weight on the first of the next month</source>
        <translation>kein Gewicht am Ersten des nächsten Monats</translation>
    </message>
    <message>
        <source>no weight on either first</source>
        <translation>kein Gewicht an beiden Ersten</translation>
    </message>
    <message>
        <source>as said</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>by the header</source>
        <translation>laut Kopfzeile</translation>
    </message>
    <message>
        <source>by its content</source>
        <translation>nach dem Inhalt</translation>
    </message>
    <message>
        <source>by the size of the weights</source>
        <translation>nach der Größe der Gewichte</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>%1 ± %2 days</source>
        <translation>%1 ± %2 Tage</translation>
    </message>
    <message>
        <source>The answer</source>
        <translation>Die Antwort</translation>
    </message>
    <message>
        <source>The winter</source>
        <translation>Der Winter</translation>
    </message>
    <message>
        <source>What can be done, on the same winters</source>
        <translation>Möglichkeiten, über dieselben Winter</translation>
    </message>
    <message>
        <source>What the stores rest on</source>
        <translation>Worauf der Futtervorrat beruht</translation>
    </message>
    <message>
        <source>%{Combs} that may come off</source>
        <translation>Waben, die geerntet werden können</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Fütterung</translation>
    </message>
    <message>
        <source>The season here</source>
        <translation>Der Jahreslauf hier</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>To buy and to bring</source>
        <translation>Zu kaufen und mitzubringen</translation>
    </message>
    <message>
        <source>Everything to do, by day</source>
        <translation>Alles, was zu tun ist, nach Tagen</translation>
    </message>
    <message>
        <source>The colonies</source>
        <translation>Die Völker</translation>
    </message>
    <message>
        <source>%{Combs} to give to a neighbour</source>
        <translation>Waben für ein Nachbarvolk</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>Zu mischen</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>Empfehlung</translation>
    </message>
    <message>
        <source>honey that may come off</source>
        <translation>Honig, der geerntet werden kann</translation>
    </message>
    <message>
        <source>sugar to feed</source>
        <translation>Zucker zu füttern</translation>
    </message>
    <message>
        <source>fondant to feed</source>
        <translation>Futterteig zu füttern</translation>
    </message>
    <message>
        <source>in the hive</source>
        <translation>in der Beute</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Sicherheitsreserve</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>below the reserve in</source>
        <translation>unter der Sicherheitsreserve in</translation>
    </message>
    <message>
        <source>runs out in</source>
        <translation>Futter geht aus in</translation>
    </message>
    <message>
        <source>next visit</source>
        <translation>nächster Termin</translation>
    </message>
    <message>
        <source>together they hold</source>
        <translation>zusammen fassen sie</translation>
    </message>
    <message>
        <source>sugar to water by weight</source>
        <translation>Zucker zu Wasser nach Gewicht</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>Zuckerwasser</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>letzter Tag für Zuckerwasser</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>Trachtende</translation>
    </message>
    <message>
        <source>feeding done by</source>
        <translation>Fütterung abgeschlossen bis</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>Ende der Eilage</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>Wiederbeginn der Eilage</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>Frühjahrsentwicklung</translation>
    </message>
    <message>
        <source>bags of sugar</source>
        <translation>Säcke Zucker</translation>
    </message>
    <message>
        <source>sugar costs about</source>
        <translation>Zucker kostet etwa</translation>
    </message>
    <message>
        <source>last day for syrup, of the earliest colony</source>
        <translation>letzter Tag für Zuckerwasser, beim frühesten Volk</translation>
    </message>
    <message>
        <source>what is done</source>
        <translation>was geschieht</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>wie viel</translation>
    </message>
    <message>
        <source>stores taken or added</source>
        <translation>Futter geerntet oder gegeben</translation>
    </message>
    <message>
        <source>left when spring forage starts</source>
        <translation>übrig bei Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>by</source>
        <translation>nach</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>says</source>
        <translation>ergibt</translation>
    </message>
    <message>
        <source>box</source>
        <translation>Zarge</translation>
    </message>
    <message>
        <source>%{comb}</source>
        <translation>Wabe</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>an</translation>
    </message>
    <message>
        <source>%{combs}</source>
        <translation>Waben</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>Honig</translation>
    </message>
    <message>
        <source>take honey</source>
        <translation>Honig ernten</translation>
    </message>
    <message>
        <source>leave as it is</source>
        <translation>so lassen</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>füttern</translation>
    </message>
    <message>
        <source>unite</source>
        <translation>vereinigen</translation>
    </message>
    <message>
        <source>cannot be said</source>
        <translation>keine Aussage möglich</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>im Plan</translation>
    </message>
    <message>
        <source>eating faster than planned</source>
        <translation>verbraucht mehr als erwartet</translation>
    </message>
    <message>
        <source>food out of reach: feed today</source>
        <translation>Futterabriss: heute füttern</translation>
    </message>
    <message>
        <source>dwindling</source>
        <translation>schrumpft</translation>
    </message>
    <message>
        <source>less than thought</source>
        <translation>weniger als gedacht</translation>
    </message>
    <message>
        <source>was the feed given?</source>
        <translation>wurde das Futter gegeben?</translation>
    </message>
    <message>
        <source>more than needed</source>
        <translation>mehr als nötig</translation>
    </message>
    <message>
        <source>feed now</source>
        <translation>jetzt füttern</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>abgestorben</translation>
    </message>
    <message>
        <source>take now</source>
        <translation>jetzt ernten</translation>
    </message>
    <message>
        <source>take in spring</source>
        <translation>im Frühjahr ernten</translation>
    </message>
    <message>
        <source>%{combs} from a neighbour</source>
        <translation>Waben von einem Nachbarvolk</translation>
    </message>
    <message>
        <source>syrup, in the evening</source>
        <translation>Zuckerwasser, abends</translation>
    </message>
    <message>
        <source>fondant, touching the cluster</source>
        <translation>Futterteig, direkt an der Traube</translation>
    </message>
    <message>
        <source>check: sealed? weigh, feeder off, mouse guard on</source>
        <translation>nachsehen: verdeckelt? wiegen, Futtergefäß ab, Mäusegitter an</translation>
    </message>
    <message>
        <source>take honey off, before feeding or treating</source>
        <translation>Honig ernten, vor dem Füttern oder Behandeln</translation>
    </message>
    <message>
        <source>weigh when the last forage is over</source>
        <translation>wiegen, wenn die letzte Tracht vorbei ist</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>noch einmal wiegen</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>eine Wabe mit Stiften aus einem anderen Volk einhängen</translation>
    </message>
    <message>
        <source>see whether queen cells are on the %{comb} with eggs</source>
        <translation>nachsehen, ob auf der Wabe mit Stiften Weiselzellen sind</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>Milben zählen und noch einmal nach dem Futter sehen</translation>
    </message>
    <message>
        <source>signs of disease: call the bee inspector, move nothing</source>
        <translation>Krankheitsanzeichen: den Bienensachverständigen rufen, nichts umhängen</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>zählen, wie viele Waben die Bienen besetzen</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>nach dem Futter sehen oder wiegen</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>beliebiger Tag</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>Steps</name>
    <message>
        <source>%1 and more</source>
        <translation>%1 und weitere</translation>
    </message>
    <message>
        <source>case files opened</source>
        <translation>Falldateien geöffnet</translation>
    </message>
    <message>
        <source>yard begun</source>
        <translation>Stand begonnen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 taken out</source>
        <translation>%1 entfernt</translation>
    </message>
    <message>
        <source>%1: from %2 to %3</source>
        <translation>%1: von %2 auf %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: was %2</source>
        <translation>%1: war %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>and one more</source>
        <translation>und eine weitere Angabe</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere Angabe</numerusform>
            <numerusform>und %n weitere Angaben</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>yards</source>
        <translation>Stände</translation>
    </message>
    <message>
        <source>yard added</source>
        <translation>Stand angelegt</translation>
    </message>
    <message>
        <source>yard changed</source>
        <translation>Stand geändert</translation>
    </message>
    <message>
        <source>yard removed</source>
        <translation>Stand gelöscht</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>colonies</source>
        <translation>Völker</translation>
    </message>
    <message>
        <source>colony added</source>
        <translation>Volk angelegt</translation>
    </message>
    <message>
        <source>colony changed</source>
        <translation>Volk geändert</translation>
    </message>
    <message>
        <source>colony removed</source>
        <translation>Volk gelöscht</translation>
    </message>
    <message>
        <source>move</source>
        <translation>Standwechsel</translation>
    </message>
    <message>
        <source>moves</source>
        <translation>Standwechsel</translation>
    </message>
    <message>
        <source>move added</source>
        <translation>Standwechsel eingetragen</translation>
    </message>
    <message>
        <source>move changed</source>
        <translation>Standwechsel geändert</translation>
    </message>
    <message>
        <source>move removed</source>
        <translation>Standwechsel gelöscht</translation>
    </message>
    <message>
        <source>end of a colony</source>
        <translation>Abgang eines Volkes</translation>
    </message>
    <message>
        <source>ends of colonies</source>
        <translation>Abgänge von Völkern</translation>
    </message>
    <message>
        <source>end of a colony recorded</source>
        <translation>Abgang eines Volkes eingetragen</translation>
    </message>
    <message>
        <source>end of a colony changed</source>
        <translation>Abgang eines Volkes geändert</translation>
    </message>
    <message>
        <source>end of a colony removed</source>
        <translation>Abgang eines Volkes gelöscht</translation>
    </message>
    <message>
        <source>hive from a day on</source>
        <translation>Beute ab einem Tag</translation>
    </message>
    <message>
        <source>hives from a day on</source>
        <translation>Beuten ab einem Tag</translation>
    </message>
    <message>
        <source>new hive recorded</source>
        <translation>neue Beute eingetragen</translation>
    </message>
    <message>
        <source>new hive changed</source>
        <translation>neue Beute geändert</translation>
    </message>
    <message>
        <source>new hive removed</source>
        <translation>neue Beute gelöscht</translation>
    </message>
    <message>
        <source>look</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>Durchsichten</translation>
    </message>
    <message>
        <source>look added</source>
        <translation>Durchsicht eingetragen</translation>
    </message>
    <message>
        <source>look changed</source>
        <translation>Durchsicht geändert</translation>
    </message>
    <message>
        <source>look removed</source>
        <translation>Durchsicht gelöscht</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>Wägung</translation>
    </message>
    <message>
        <source>weighings</source>
        <translation>Wägungen</translation>
    </message>
    <message>
        <source>weighing added</source>
        <translation>Wägung eingetragen</translation>
    </message>
    <message>
        <source>weighing changed</source>
        <translation>Wägung geändert</translation>
    </message>
    <message>
        <source>weighing removed</source>
        <translation>Wägung gelöscht</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>Futtergabe</translation>
    </message>
    <message>
        <source>feeds</source>
        <translation>Futtergaben</translation>
    </message>
    <message>
        <source>feed added</source>
        <translation>Futtergabe eingetragen</translation>
    </message>
    <message>
        <source>feed changed</source>
        <translation>Futtergabe geändert</translation>
    </message>
    <message>
        <source>feed removed</source>
        <translation>Futtergabe gelöscht</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>Honigernte</translation>
    </message>
    <message>
        <source>harvests</source>
        <translation>Honigernten</translation>
    </message>
    <message>
        <source>harvest added</source>
        <translation>Honigernte eingetragen</translation>
    </message>
    <message>
        <source>harvest changed</source>
        <translation>Honigernte geändert</translation>
    </message>
    <message>
        <source>harvest removed</source>
        <translation>Honigernte gelöscht</translation>
    </message>
    <message>
        <source>treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <source>treatments</source>
        <translation>Behandlungen</translation>
    </message>
    <message>
        <source>treatment added</source>
        <translation>Behandlung eingetragen</translation>
    </message>
    <message>
        <source>treatment changed</source>
        <translation>Behandlung geändert</translation>
    </message>
    <message>
        <source>treatment removed</source>
        <translation>Behandlung gelöscht</translation>
    </message>
    <message>
        <source>work on the hive</source>
        <translation>Arbeit an der Beute</translation>
    </message>
    <message>
        <source>work on hives</source>
        <translation>Arbeiten an Beuten</translation>
    </message>
    <message>
        <source>work on the hive recorded</source>
        <translation>Arbeit an der Beute eingetragen</translation>
    </message>
    <message>
        <source>work on the hive changed</source>
        <translation>Arbeit an der Beute geändert</translation>
    </message>
    <message>
        <source>work on the hive removed</source>
        <translation>Arbeit an der Beute gelöscht</translation>
    </message>
    <message>
        <source>advice acted on</source>
        <translation>Empfehlung, der gefolgt wird</translation>
    </message>
    <message>
        <source>advice kept</source>
        <translation>Empfehlung festgehalten</translation>
    </message>
    <message>
        <source>kept advice changed</source>
        <translation>festgehaltene Empfehlung geändert</translation>
    </message>
    <message>
        <source>kept advice removed</source>
        <translation>festgehaltene Empfehlung gelöscht</translation>
    </message>
    <message>
        <source>planned visit</source>
        <translation>geplanter Termin</translation>
    </message>
    <message>
        <source>planned visits</source>
        <translation>geplante Termine</translation>
    </message>
    <message>
        <source>visit planned</source>
        <translation>Termin geplant</translation>
    </message>
    <message>
        <source>planned visit changed</source>
        <translation>geplanter Termin geändert</translation>
    </message>
    <message>
        <source>planned visit removed</source>
        <translation>geplanter Termin gelöscht</translation>
    </message>
    <message>
        <source>outcome of a winter</source>
        <translation>Ausgang eines Winters</translation>
    </message>
    <message>
        <source>outcomes of winters</source>
        <translation>Ausgänge von Wintern</translation>
    </message>
    <message>
        <source>outcome of the winter recorded</source>
        <translation>Ausgang des Winters eingetragen</translation>
    </message>
    <message>
        <source>outcome of the winter changed</source>
        <translation>Ausgang des Winters geändert</translation>
    </message>
    <message>
        <source>outcome of the winter removed</source>
        <translation>Ausgang des Winters gelöscht</translation>
    </message>
    <message>
        <source>winter sighting</source>
        <translation>kurzer Blick im Winter</translation>
    </message>
    <message>
        <source>winter sightings</source>
        <translation>kurze Blicke im Winter</translation>
    </message>
    <message>
        <source>winter sighting added</source>
        <translation>kurzer Blick im Winter eingetragen</translation>
    </message>
    <message>
        <source>winter sighting changed</source>
        <translation>kurzer Blick im Winter geändert</translation>
    </message>
    <message>
        <source>winter sighting removed</source>
        <translation>kurzer Blick im Winter gelöscht</translation>
    </message>
    <message>
        <source>log of temperatures</source>
        <translation>Temperaturreihe</translation>
    </message>
    <message>
        <source>logs of temperatures</source>
        <translation>Temperaturreihen</translation>
    </message>
    <message>
        <source>temperatures added</source>
        <translation>Temperaturen eingetragen</translation>
    </message>
    <message>
        <source>temperatures changed</source>
        <translation>Temperaturen geändert</translation>
    </message>
    <message>
        <source>temperatures removed</source>
        <translation>Temperaturen gelöscht</translation>
    </message>
    <message>
        <source>%{comb} changed</source>
        <translation>Wabe geändert</translation>
    </message>
    <message>
        <source>visit made</source>
        <translation>Termin erledigt</translation>
    </message>
    <message>
        <source>visit skipped</source>
        <translation>Termin ausgelassen</translation>
    </message>
    <message>
        <source>advice made the plan</source>
        <translation>Empfehlung zum Plan gemacht</translation>
    </message>
    <message>
        <source>hive changed</source>
        <translation>Beute geändert</translation>
    </message>
    <message>
        <source>%{combs} moved</source>
        <translation>Waben umgehängt</translation>
    </message>
    <message>
        <source>colonies united</source>
        <translation>Völker vereinigt</translation>
    </message>
    <message>
        <source>whole book imported</source>
        <translation>ganzes Stockbuch importiert</translation>
    </message>
    <message>
        <source>backup restored</source>
        <translation>Sicherungskopie wiederhergestellt</translation>
    </message>
    <message>
        <source>salvaged from a damaged book</source>
        <translation>aus einem beschädigten Stockbuch gerettet</translation>
    </message>
    <message>
        <source>imported: %1</source>
        <translation>importiert: %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>getan</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>rückgängig gemacht</translation>
    </message>
    <message>
        <source>undone for good</source>
        <translation>endgültig rückgängig gemacht</translation>
    </message>
</context>
<context>
    <name>WindowWords</name>
    <message>
        <source>It cannot be said yet.</source>
        <translation>Noch ist keine Aussage möglich.</translation>
    </message>
    <message>
        <source>It cannot be said: no weather station is near enough to speak for this place.</source>
        <translation>Keine Aussage möglich: Keine Wetterstation liegt nahe genug, um für diesen Ort zu sprechen.</translation>
    </message>
    <message>
        <source>There are no bees to winter.</source>
        <translation>Es sind keine Bienen da, die überwintern könnten.</translation>
    </message>
    <message>
        <source>To answer, first: how many %{combs} do the bees cover?</source>
        <translation>Für eine Antwort zuerst: Wie viele Waben besetzen die Bienen?</translation>
    </message>
    <message>
        <source>To answer, first: look at the %{combs}, or heft or weigh the hive.</source>
        <translation>Für eine Antwort zuerst: Sehen Sie die Waben an, oder heben Sie die Beute an oder wiegen Sie sie.</translation>
    </message>
    <message>
        <source>It is too early: winter stores are judged from August on.</source>
        <translation>Es ist zu früh: Der Wintervorrat wird ab August geschätzt.</translation>
    </message>
    <message>
        <source>It cannot be said: this place&apos;s season cannot be told from its climate. Give the dates.</source>
        <translation>Keine Aussage möglich: Der Jahreslauf dieses Ortes lässt sich aus seinem Klima nicht ableiten. Geben Sie die Tage an.</translation>
    </message>
    <message>
        <source>The bees have forage again: this winter is over.</source>
        <translation>Die Bienen haben wieder Tracht: Dieser Winter ist vorbei.</translation>
    </message>
    <message>
        <source>First %2, who is short, is to have %1 of it in %{combs}.</source>
        <translation>Zuerst soll %2, wo Futter fehlt, davon %1 in Waben bekommen.</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>For me</source>
        <translation>Für mich</translation>
    </message>
    <message>
        <source>For the bees</source>
        <translation>Für die Bienen</translation>
    </message>
    <message>
        <source>This is an error of Winterlarder, not of yours (%1). What is written down is kept. Please report it, with what you did just before.</source>
        <translation>Das ist ein Fehler von Winterlarder, nicht von Ihnen (%1). Was eingetragen ist, bleibt erhalten. Bitte melden Sie ihn und schreiben Sie dazu, was Sie gerade getan haben.</translation>
    </message>
    <message>
        <source>feed %1 sugar</source>
        <translation>%1 Zucker füttern</translation>
    </message>
    <message>
        <source>feed %1 fondant</source>
        <translation>%1 Futterteig füttern</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>amount unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation>weniger als 1</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>a day, as QLocale::toString takes it: d. MMM in German</comment>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <comment>a day, as QLocale::toString takes it: d. MMM in German</comment>
        <translation>ddd, d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>a day, as QLocale::toString takes it: d. MMM in German</comment>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>a day, as QLocale::toString takes it: d. MMM in German</comment>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>call the inspector</source>
        <translation>Sachverständigen rufen</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>noch einmal wiegen</translation>
    </message>
    <message>
        <source>look again, then take %1</source>
        <translation>nachsehen, dann %1 ernten</translation>
    </message>
    <message>
        <source>take %1</source>
        <translation>%1 ernten</translation>
    </message>
    <message>
        <source>give %{combs}</source>
        <translation>Waben abgeben</translation>
    </message>
    <message>
        <source>hang in %{combs}</source>
        <translation>Waben einhängen</translation>
    </message>
    <message>
        <source>feed later</source>
        <translation>später füttern</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>verdeckelt</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>offener Nektar</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>Bienenbrot</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>nichts fällig</translation>
    </message>
    <message>
        <source>syrup was due %1</source>
        <translation>Zuckerwasser war fällig am %1</translation>
    </message>
    <message>
        <source>syrup today</source>
        <translation>heute Zuckerwasser</translation>
    </message>
    <message>
        <source>next syrup %1</source>
        <translation>Zuckerwasser am %1</translation>
    </message>
    <message>
        <source>fondant was due %1</source>
        <translation>Futterteig war fällig am %1</translation>
    </message>
    <message>
        <source>fondant today</source>
        <translation>heute Futterteig</translation>
    </message>
    <message>
        <source>fondant %1</source>
        <translation>Futterteig am %1</translation>
    </message>
    <message>
        <source>take honey by %1</source>
        <translation>Honig ernten bis %1</translation>
    </message>
    <message>
        <source>when you like</source>
        <translation>wann Sie wollen</translation>
    </message>
    <message>
        <source>unite by %1</source>
        <translation>vereinigen bis %1</translation>
    </message>
    <message>
        <source>unite soon</source>
        <translation>bald vereinigen</translation>
    </message>
    <message>
        <source>count the mites today</source>
        <translation>heute Milben zählen</translation>
    </message>
    <message>
        <source>mites and a look %1</source>
        <translation>Milben und Futter am %1</translation>
    </message>
    <message>
        <source>call the bee inspector</source>
        <translation>Bienensachverständigen rufen</translation>
    </message>
    <message>
        <source>weigh again %1</source>
        <translation>wieder wiegen am %1</translation>
    </message>
    <message>
        <source>heft every two weeks</source>
        <translation>alle zwei Wochen anheben</translation>
    </message>
    <message>
        <source>count the bees</source>
        <translation>Bienen zählen</translation>
    </message>
    <message>
        <source>%{combs} to it today</source>
        <translation>heute Waben einhängen</translation>
    </message>
    <message>
        <source>%{combs} to it %1</source>
        <translation>Waben einhängen am %1</translation>
    </message>
    <message>
        <source>a %{comb} with eggs to it today</source>
        <translation>heute Wabe mit Stiften einhängen</translation>
    </message>
    <message>
        <source>queen cells? look %1</source>
        <translation>Weiselzellen? Nachsehen am %1</translation>
    </message>
    <message>
        <source>look at the stores</source>
        <translation>nach dem Futter sehen</translation>
    </message>
    <message>
        <source>check today</source>
        <translation>heute nachsehen</translation>
    </message>
    <message>
        <source>check %1</source>
        <translation>nachsehen am %1</translation>
    </message>
    <message>
        <source>leave as it is</source>
        <translation>so lassen</translation>
    </message>
    <message>
        <source>take %1 now</source>
        <translation>jetzt %1 ernten</translation>
    </message>
    <message>
        <source>take what is over in spring</source>
        <translation>Übriges im Frühjahr ernten</translation>
    </message>
    <message>
        <source>feed up by %1 of stores</source>
        <translation>auffüttern um %1 Futter</translation>
    </message>
    <message>
        <source>give it %{combs}, %1</source>
        <translation>Waben geben, %1</translation>
    </message>
    <message>
        <source>unite it with another colony</source>
        <translation>mit einem anderen Volk vereinigen</translation>
    </message>
    <message>
        <source>last nectar</source>
        <translation>Trachtende</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>letzter Tag für Zuckerwasser</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>Ende der Eilage</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>Wiederbeginn der Eilage</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>Frühjahrsentwicklung</translation>
    </message>
    <message>
        <source>spring forage</source>
        <translation>Frühtracht</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Does the queen lay: have you seen her, or eggs?</source>
        <translation>Legt die Königin: Haben Sie sie oder Stifte gesehen?</translation>
    </message>
    <message>
        <source>Have you counted the mites, and treated where it was needed?</source>
        <translation>Haben Sie die Milben gezählt und behandelt, wo es nötig war?</translation>
    </message>
    <message>
        <source>Was sugar fed or medicine given while this honey was being made?</source>
        <translation>Wurde Zucker gefüttert oder ein Tierarzneimittel gegeben, während dieser Honig entstand?</translation>
    </message>
    <message>
        <source>Is the super for you, or for the bees?</source>
        <translation>Ist der Honigraum für Sie oder für die Bienen?</translation>
    </message>
    <message>
        <source>What does the empty hive weigh, with its drawn %{combs}?</source>
        <translation>Was wiegt die leere Beute mit ihren ausgebauten Waben?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you?</source>
        <translation>Kommt bei Ihnen noch eine Tracht?</translation>
    </message>
    <message>
        <source>How many full %{combs} have you in store?</source>
        <translation>Wie viele volle Futterwaben haben Sie auf Vorrat?</translation>
    </message>
    <message>
        <source>Can you get to the hive in the second half of winter, to lift and feed it?</source>
        <translation>Kommen Sie in der zweiten Winterhälfte an die Beute, um sie anzuheben und zu füttern?</translation>
    </message>
    <message>
        <source>Is there food beside the bees, without an empty %{comb} between?</source>
        <translation>Ist neben den Bienen Futter, ohne Leerwabe dazwischen?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you, such as %1?</source>
        <translation>Kommt bei Ihnen noch eine Tracht, etwa %1?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you, such as %1 or %2?</source>
        <translation>Kommt bei Ihnen noch eine Tracht, etwa %1 oder %2?</translation>
    </message>
    <message>
        <source>top box</source>
        <translation>oberste Zarge</translation>
    </message>
    <message>
        <source>bottom box</source>
        <translation>unterste Zarge</translation>
    </message>
    <message>
        <source>middle box</source>
        <translation>mittlere Zarge</translation>
    </message>
    <message>
        <source>box %1 from the floor</source>
        <translation>Zarge %1 von unten</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>numbers of combs</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1, all %2 %{combs}</source>
        <translation>%1, alle %2 Waben</translation>
    </message>
    <message>
        <source>%{comb} %1 from the left</source>
        <translation>Wabe %1 von links</translation>
    </message>
    <message>
        <source>%1, %{comb} %2 from the left</source>
        <translation>%1, Wabe %2 von links</translation>
    </message>
    <message>
        <source>%{combs} %1 from the left</source>
        <translation>Waben %1 von links</translation>
    </message>
    <message>
        <source>%1, %{combs} %2 from the left</source>
        <translation>%1, Waben %2 von links</translation>
    </message>
    <message>
        <source>without your super %1</source>
        <comment>weight</comment>
        <translation>ohne Ihren Honigraum %1</translation>
    </message>
    <message>
        <source>%1 with hive and bees</source>
        <translation>%1 mit Beute und Bienen</translation>
    </message>
    <message>
        <source>%1 with hive and bees, the empty hive taken as %2</source>
        <translation>%1 mit Beute und Bienen, die leere Beute mit %2 gerechnet</translation>
    </message>
    <message>
        <source>Today it should hold about %1 of stores: %2, %3.</source>
        <comment>stores, full combs, weight</comment>
        <translation>Heute sollte die Beute etwa %1 Futter enthalten: %2, %3.</translation>
    </message>
    <message>
        <source>For winter, on %1: about %2 of stores, %3, %4.</source>
        <comment>day, stores, full combs, weight</comment>
        <translation>Für den Winter, am %1: etwa %2 Futter, %3, %4.</translation>
    </message>
    <message>
        <source>There now: %1 bees; what stores there are nobody can say before one of the two is found wrong.</source>
        <translation>Jetzt da: %1 Bienen; wie viel Futter da ist, kann niemand sagen, bevor sich eines von beiden als falsch erweist.</translation>
    </message>
    <message>
        <source>There now: %1 of stores, %2 bees. With %3 united onto it: %4 and %5 bees.</source>
        <comment>stores, bees, colony, stores, bees</comment>
        <translation>Jetzt da: %1 Futter, %2 Bienen. Mit %3 vereinigt: %4 und %5 Bienen.</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>dem anderen</translation>
    </message>
    <message>
        <source>There now: %1 of stores.</source>
        <translation>Jetzt da: %1 Futter.</translation>
    </message>
    <message>
        <source>There now: %1 of stores, %2 bees.</source>
        <translation>Jetzt da: %1 Futter, %2 Bienen.</translation>
    </message>
    <message>
        <source>If nothing were fed later, in %2 simulated winters %1 or more would be left when spring forage starts; in %3 the food would run out.</source>
        <translation>Würde später nichts gefüttert, wären bei Beginn der Frühtracht in %2 durchgerechneten Wintern %1 oder mehr übrig; in %3 ginge das Futter aus.</translation>
    </message>
    <message>
        <source>Left as it is, in %2 simulated winters %1 or more are left when spring forage starts; in %3 the food runs out.</source>
        <translation>So gelassen sind bei Beginn der Frühtracht in %2 durchgerechneten Wintern %1 oder mehr übrig; in %3 geht das Futter aus.</translation>
    </message>
    <message>
        <source>%1 With the honey off and nothing fed later, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Ist der Honig geerntet und wird später nichts gefüttert, ist so viel in %2 übrig, und in %3 geht das Futter aus.</translation>
    </message>
    <message>
        <source>%1 With the honey off, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Ist der Honig geerntet, ist so viel in %2 übrig, und in %3 geht das Futter aus.</translation>
    </message>
    <message>
        <source>%1 Fed as advised and with no fondant in winter, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Wie empfohlen gefüttert und ohne Futterteig im Winter, ist so viel in %2 übrig, und in %3 geht das Futter aus.</translation>
    </message>
    <message>
        <source>%1 Fed as advised, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Wie empfohlen gefüttert, ist so viel in %2 übrig, und in %3 geht das Futter aus.</translation>
    </message>
    <message>
        <source>%1 With this feed and no other, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Mit diesem Futter und sonst keinem ist so viel in %2 übrig, und in %3 geht das Futter aus.</translation>
    </message>
    <message>
        <source>%1 (between 80 and 90, for cold may lock the bees in for %2 days)</source>
        <translation>%1 (zwischen 80 und 90, denn Kälte kann die Bienen %2 Tage einsperren)</translation>
    </message>
    <message>
        <source>%1 are aimed at; the %{combs} have no room for more.</source>
        <translation>Angestrebt sind %1; in den Waben ist kein Platz für mehr.</translation>
    </message>
    <message>
        <source>%1 are aimed at; it is fewer because what is there now is not known well. If it is as thought, it is %2.</source>
        <translation>Angestrebt sind %1; es sind weniger, weil nicht genau bekannt ist, was jetzt da ist. Ist es wie gedacht, sind es %2.</translation>
    </message>
    <message>
        <source>What is told of winters here counts stores only: without a queen it does not live through winter, however much there is.</source>
        <translation>Was hier über die Winter steht, rechnet nur mit dem Futter: Ohne Königin kommt das Volk nicht durch den Winter, wie viel auch da ist.</translation>
    </message>
    <message>
        <source>%1 Taking the super off changes nothing of that, for its honey was not counted.</source>
        <translation>%1 Den Honigraum abzunehmen ändert daran nichts, denn sein Honig wurde nicht mitgezählt.</translation>
    </message>
    <message>
        <source>The %{combs} hold %1 when winter begins: of the %2, which are today&apos;s stores and all the feed, about %3 are eaten by %4.</source>
        <comment>capacity, stores after, eaten, day</comment>
        <translation>Zu Winterbeginn fassen die Waben %1: Von den %2, die der heutige Vorrat und alle Futtergaben zusammen ergeben, werden bis zum %4 etwa %3 verbraucht.</translation>
    </message>
    <message>
        <source>by %1</source>
        <comment>a day</comment>
        <translation>bis zum %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <comment>two days</comment>
        <translation>vom %1 bis zum %2</translation>
    </message>
    <message>
        <source>Up to %1 of sugar may be wanted %2, more likely none.</source>
        <translation>Bis zu %1 Zucker können %2 nötig werden, eher aber keiner.</translation>
    </message>
    <message>
        <source>Up to %1 of fondant may be wanted %2, in most winters none.</source>
        <translation>Bis zu %1 Futterteig können %2 nötig werden, in den meisten Wintern keiner.</translation>
    </message>
    <message>
        <source>Likely to be fed %1: up to %2 of sugar, more likely %3.</source>
        <translation>Voraussichtlich zu füttern %1: bis zu %2 Zucker, eher %3.</translation>
    </message>
    <message>
        <source>Likely to be wanted %1: up to %2 of fondant, more likely %3.</source>
        <translation>Voraussichtlich nötig %1: bis zu %2 Futterteig, eher %3.</translation>
    </message>
    <message>
        <source>Likely to be fed %1: %2 to %3 of sugar, more likely %4.</source>
        <translation>Voraussichtlich zu füttern %1: %2 bis %3 Zucker, eher %4.</translation>
    </message>
    <message>
        <source>Likely to be wanted %1: %2 to %3 of fondant, more likely %4.</source>
        <translation>Voraussichtlich nötig %1: %2 bis %3 Futterteig, eher %4.</translation>
    </message>
    <message>
        <source>one full %{comb}</source>
        <translation>eine volle Futterwabe</translation>
    </message>
    <message>
        <source>%1 full %{combs}</source>
        <translation>%1 volle Futterwaben</translation>
    </message>
    <message>
        <source>The bees cannot reach their food: %1, then weigh.</source>
        <translation>Die Bienen kommen nicht an ihr Futter: %1, dann wiegen Sie.</translation>
    </message>
    <message>
        <source>There may be food for less than three weeks: %1, then weigh.</source>
        <translation>Das Futter reicht vielleicht keine drei Wochen mehr: %1, dann wiegen Sie.</translation>
    </message>
    <message>
        <source>Too little to be safe until the next look: %1.</source>
        <translation>Bis zur nächsten Durchsicht ist es zu wenig: %1.</translation>
    </message>
    <message>
        <source>Leave it: there is enough until the next look.</source>
        <translation>Lassen Sie es so: Bis zur nächsten Durchsicht ist genug da.</translation>
    </message>
    <message>
        <source>The hive is full: leave it and feed nothing.</source>
        <translation>Die Beute ist voll: Lassen Sie sie so und füttern Sie nicht.</translation>
    </message>
    <message>
        <source>Too late for syrup: %1, and wrap the hive.</source>
        <translation>Für Zuckerwasser ist es zu spät: %1 und packen Sie die Beute ein.</translation>
    </message>
    <message>
        <source>Late, but better than nothing: %1, and wrap the hive.</source>
        <translation>Spät, aber besser als nichts: %1 und packen Sie die Beute ein.</translation>
    </message>
    <message>
        <source>Stores run low: %1.</source>
        <translation>Das Futter wird knapp: %1.</translation>
    </message>
    <message>
        <source>Leave it as it is: no honey is taken now.</source>
        <translation>Lassen Sie es so: Jetzt wird kein Honig geerntet.</translation>
    </message>
    <message>
        <source>Leave it as it is.</source>
        <translation>Lassen Sie es so.</translation>
    </message>
    <message>
        <source>To answer, first: count the %{combs} covered with bees, or the seams.</source>
        <translation>Für eine Antwort zuerst: Zählen Sie die besetzten Waben oder Wabengassen.</translation>
    </message>
    <message>
        <source>To answer, first: weigh both sides, or look at the %{combs}.</source>
        <translation>Für eine Antwort zuerst: Wiegen Sie an beiden Seiten oder sehen Sie die Waben an.</translation>
    </message>
    <message>
        <source>This cannot be said: see the reasons.</source>
        <translation>Keine Aussage möglich: siehe Gründe.</translation>
    </message>
    <message>
        <source>Unite %1 onto it %2.</source>
        <translation>Vereinigen Sie es mit %1: %2. Dieses Volk bleibt an seinem Platz.</translation>
    </message>
    <message>
        <source>Give %1 (%2) to %3.</source>
        <comment>combs, their places, colony</comment>
        <translation>Geben Sie %3 %1 (%2).</translation>
    </message>
    <message>
        <source>Hang in %1 from %2 (its %3).</source>
        <comment>combs, colony, their places</comment>
        <translation>Hängen Sie %1 von %2 ein (dort %3).</translation>
    </message>
    <message>
        <source>another colony of the yard</source>
        <translation>einem anderen Volk des Standes</translation>
    </message>
    <message>
        <source>Too few bees to winter alone: unite it with %1 %2.</source>
        <translation>Zu wenige Bienen, um allein zu überwintern. Vereinigen Sie das Volk mit %1: %2.</translation>
    </message>
    <message>
        <source>Too few bees to winter alone: unite it with a healthy colony %1.</source>
        <translation>Zu wenige Bienen, um allein zu überwintern. Vereinigen Sie das Volk mit einem gesunden: %1.</translation>
    </message>
    <message>
        <source>No sign of a queen: make sure she is gone, then unite the bees with %1 %2.</source>
        <translation>Kein Zeichen von einer Königin: Vergewissern Sie sich, dass sie fehlt. Dann vereinigen Sie die Bienen mit %1: %2.</translation>
    </message>
    <message>
        <source>No sign of a queen: make sure she is gone, then unite the bees with a queenright colony %1.</source>
        <translation>Kein Zeichen von einer Königin: Vergewissern Sie sich, dass sie fehlt. Dann vereinigen Sie die Bienen mit einem weiselrichtigen Volk: %1.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>on %1</source>
        <comment>a day</comment>
        <translation>am %1</translation>
    </message>
    <message>
        <source>soon, on a warm evening, at the latest on %1</source>
        <comment>a day</comment>
        <translation>bald, an einem warmen Abend, spätestens am %1</translation>
    </message>
    <message>
        <source>take your super off, then %1</source>
        <translation>Nehmen Sie zuerst Ihren Honigraum ab. %1</translation>
    </message>
    <message>
        <source>feed it</source>
        <translation>Füttern Sie das Volk</translation>
    </message>
    <message>
        <source>feed %1 of sugar as syrup %2 %3</source>
        <comment>amount, ratio, day</comment>
        <translation>Füttern Sie %3 %1 Zucker als Zuckerwasser %2</translation>
    </message>
    <message>
        <source>feed %1 of sugar as syrup %2, the first of %3 visits %4</source>
        <translation>Füttern Sie %1 Zucker als Zuckerwasser %2, die erste von %3 Gaben %4</translation>
    </message>
    <message>
        <source>lay a candy board of %1 on the bees %2</source>
        <translation>Legen Sie %2 eine Zuckerplatte von %1 auf die Bienen</translation>
    </message>
    <message>
        <source>lay %1 of fondant on the bees %2</source>
        <translation>Legen Sie %2 %1 Futterteig auf die Bienen</translation>
    </message>
    <message>
        <source>Too late for much syrup: %1, in small warm portions over the cluster, as long as they are taken.</source>
        <translation>Für viel Zuckerwasser ist es zu spät: %1, in kleinen warmen Gaben über der Traube, solange sie abgenommen werden.</translation>
    </message>
    <message>
        <source>%1, in small portions over the cluster, on days that are warm enough.</source>
        <translation>%1, in kleinen Gaben über der Traube, an Tagen, die warm genug sind.</translation>
    </message>
    <message>
        <source>That alone will not carry it: give it full %{combs} too, from store or a healthy neighbour, or unite it while days are warm.</source>
        <translation>Das allein bringt das Volk nicht durch: Geben Sie ihm auch volle Futterwaben, aus dem Vorrat oder von einem gesunden Nachbarvolk, oder vereinigen Sie es, solange die Tage warm sind.</translation>
    </message>
    <message>
        <source>Nothing is fed today.</source>
        <translation>Heute wird nichts gefüttert.</translation>
    </message>
    <message>
        <source>On these stores it will hardly live until spring, and it is too late for syrup: on the next mild day hang full %{combs} on both sides of the bees, from store or a healthy neighbour.</source>
        <translation>Mit diesem Vorrat überlebt es kaum bis zum Frühjahr, und für Zuckerwasser ist es zu spät: Hängen Sie am nächsten milden Tag volle Waben zu beiden Seiten der Bienen, aus dem Lager oder von einem gesunden Nachbarvolk.</translation>
    </message>
    <message>
        <source>What is missing beyond that is best given as full %{combs}, if you have any in store or a healthy neighbour can spare them.</source>
        <translation>Was darüber hinaus fehlt, geben Sie am besten als volle Waben, wenn Sie welche im Lager haben oder ein gesundes Nachbarvolk sie entbehren kann.</translation>
    </message>
    <message>
        <source>%1 Until then: %2.</source>
        <translation>%1 Bis dahin: %2.</translation>
    </message>
    <message>
        <source>Weigh it %1.</source>
        <translation>Wiegen Sie %1.</translation>
    </message>
    <message>
        <source>Far too many mites: treat first, and look again %1.</source>
        <translation>Viel zu viele Milben: Behandeln Sie zuerst, und sehen Sie %1 wieder nach.</translation>
    </message>
    <message>
        <source>Treat where the count of mites calls for it, and look again %1.</source>
        <translation>Behandeln Sie, wo die Zahl der Milben es verlangt, und sehen Sie %1 noch einmal nach.</translation>
    </message>
    <message>
        <source>Count the mites, and look again %1.</source>
        <translation>Zählen Sie die Milben und sehen Sie %1 noch einmal nach.</translation>
    </message>
    <message>
        <source>Later up to %1 of fondant may be wanted.</source>
        <translation>Später können bis zu %1 Futterteig nötig werden.</translation>
    </message>
    <message>
        <source>Later %1 to %2 of fondant are likely to be wanted.</source>
        <translation>Später werden voraussichtlich %1 bis %2 Futterteig nötig.</translation>
    </message>
    <message>
        <source>For winter up to %1 of sugar may be wanted, from %2.</source>
        <translation>Für den Winter können ab dem %2 bis zu %1 Zucker nötig werden.</translation>
    </message>
    <message>
        <source>For winter about %1 of sugar will be wanted, from %2.</source>
        <translation>Für den Winter werden ab dem %2 etwa %1 Zucker nötig.</translation>
    </message>
    <message>
        <source>For winter %1 to %2 of sugar are likely to be wanted, from %3.</source>
        <translation>Für den Winter werden ab dem %3 voraussichtlich %1 bis %2 Zucker nötig.</translation>
    </message>
    <message>
        <source>Signs of disease: close the hive, narrow the entrance, move nothing, call the bee inspector.</source>
        <translation>Krankheitsanzeichen: Schließen Sie die Beute, engen Sie das Flugloch ein, hängen Sie nichts um, rufen Sie den Bienensachverständigen.</translation>
    </message>
    <message>
        <source>%1 and %2 contradict each other: weigh again before anything else, and check the empty weight, the roof, stones, and whether a super was left out.</source>
        <translation>%1 und %2 widersprechen sich: Wiegen Sie vor allem anderen noch einmal und prüfen Sie Leergewicht, Deckel, Steine und ob ein Honigraum fehlt.</translation>
    </message>
    <message>
        <source>%1 Both are short, so this does no harm: %2.</source>
        <translation>%1 Nach beidem ist es zu wenig, daher schadet dies nicht: %2.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>evidence and what it says</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>It is light: %1, then weigh both sides.</source>
        <translation>Die Beute ist leicht: %1, dann wiegen Sie an beiden Seiten.</translation>
    </message>
    <message>
        <source>It is heavy: leave it.</source>
        <translation>Die Beute ist schwer: Lassen Sie es so.</translation>
    </message>
    <message>
        <source>A heft decides neither honey nor feed: weigh both sides.</source>
        <translation>Anheben allein entscheidet weder über Honig noch über Futter: Wiegen Sie an beiden Seiten.</translation>
    </message>
    <message>
        <source>Weigh both sides first</source>
        <translation>Wiegen Sie zuerst an beiden Seiten</translation>
    </message>
    <message>
        <source>Count the full %{combs} first</source>
        <translation>Zählen Sie zuerst die vollen Futterwaben</translation>
    </message>
    <message>
        <source>Count the bees first</source>
        <translation>Zählen Sie zuerst die Bienen</translation>
    </message>
    <message>
        <source>%1. If there are about as many as is thought, %2.</source>
        <comment>look, take</comment>
        <translation>%1. Sind es etwa so viele wie gedacht, %2.</translation>
    </message>
    <message>
        <source>%1. If that bears out about %2 of stores, %3.</source>
        <comment>look, stores, take</comment>
        <translation>%1. Bestätigt das etwa %2 Futter, %3.</translation>
    </message>
    <message>
        <source>take about %1 of honey, in whole capped %{combs}</source>
        <translation>ernten Sie etwa %1 Honig in ganzen verdeckelten Waben</translation>
    </message>
    <message>
        <source>take one %{comb} with %1 of honey</source>
        <translation>ernten Sie eine Wabe mit %1 Honig</translation>
    </message>
    <message>
        <source>take the super off: %1 of honey in %2 %{combs}</source>
        <translation>nehmen Sie den Honigraum ab: %1 Honig in %2 Waben</translation>
    </message>
    <message>
        <source>take %1 supers off: %2 of honey in %3 %{combs}</source>
        <translation>nehmen Sie %1 Honigräume ab: %2 Honig in %3 Waben</translation>
    </message>
    <message>
        <source>take %1 of honey in %2 %{combs}</source>
        <translation>ernten Sie %1 Honig in %2 Waben</translation>
    </message>
    <message>
        <source>Was the feed planned from %1 on given? Write it down first. If it was not: %2</source>
        <comment>day, what</comment>
        <translation>Wurde das ab %1 geplante Futter gegeben? Tragen Sie es zuerst ein. Wenn nicht: %2</translation>
    </message>
    <message>
        <source>Something written down is in doubt: settle that first, see the reasons. Until then: %1</source>
        <translation>An einem Eintrag bestehen Zweifel: Klären Sie ihn zuerst, siehe Gründe. Bis dahin: %1</translation>
    </message>
    <message>
        <source>how many bees there are</source>
        <translation>wie viele Bienen da sind</translation>
    </message>
    <message>
        <source>what stores there are</source>
        <translation>wie viel Futter da ist</translation>
    </message>
    <message>
        <source>What may be taken hangs on %1: %2.</source>
        <translation>Wie viel Sie ernten können, hängt davon ab, %1: %2.</translation>
    </message>
    <message>
        <source>Look again first, for the answer hangs on %1: %2.</source>
        <translation>Sehen Sie zuerst noch einmal nach, denn die Antwort hängt davon ab, %1: %2.</translation>
    </message>
    <message>
        <source>It can wait, but what will be wanted for winter hangs on %1: %2.</source>
        <translation>Es kann warten, aber was für den Winter nötig wird, hängt davon ab, %1: %2.</translation>
    </message>
    <message>
        <source>Worth a better look, for whether anything is missing or to spare hangs on %1: %2.</source>
        <translation>Genauer nachzusehen lohnt sich, denn ob etwas fehlt oder übrig ist, hängt davon ab, %1: %2.</translation>
    </message>
    <message>
        <source>The first visit need not wait. Look again before the second, for the amount hangs on %1: %2.</source>
        <translation>Die erste Gabe braucht nicht zu warten. Sehen Sie vor der zweiten noch einmal nach, denn die Menge hängt davon ab, %1: %2.</translation>
    </message>
    <message>
        <source>This feed need not wait. What more is wanted hangs on %1: %2.</source>
        <translation>Diese Gabe braucht nicht zu warten. Was noch nötig wird, hängt davon ab, %1: %2.</translation>
    </message>
    <message>
        <source>A better look before %1 would not change what is to be done now.</source>
        <comment>a day</comment>
        <translation>Vor dem %1 würde genaueres Nachsehen nichts an dem ändern, was jetzt zu tun ist.</translation>
    </message>
    <message>
        <source>Another look would not change what is to be done: the bees need not be disturbed for it.</source>
        <translation>Noch einmal nachzusehen würde nichts an dem ändern, was zu tun ist: Dafür brauchen Sie die Bienen nicht zu stören.</translation>
    </message>
    <message>
        <source>A better look at the stores would change nothing now.</source>
        <translation>Genauer nach dem Futter zu sehen würde jetzt nichts ändern.</translation>
    </message>
    <message>
        <source>%1 What is known to within %2 now would be known to within %3.</source>
        <comment>the sentence before, now, then</comment>
        <translation>%1 Was jetzt auf %2 genau bekannt ist, wäre dann auf %3 genau bekannt.</translation>
    </message>
    <message>
        <source>%1 qt</source>
        <translation>%1 qt</translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation>%1 gal</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>kilograms and pounds</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <comment>amount, lowest, highest</comment>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1&#xa0;km</translation>
    </message>
    <message numerus="yes">
        <source>%n miles</source>
        <translation>
            <numerusform>eine Meile</numerusform>
            <numerusform>%n Meilen</numerusform>
        </translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>a day, as QLocale::toString takes it: d. MMMM yyyy in German</comment>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <comment>a month, as QLocale::toString takes it</comment>
        <translation>MMMM yyyy</translation>
    </message>
    <message>
        <source>under 1 of 100</source>
        <translation>weniger als 1 von 100</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>a healthy queenright colony that is strong enough</source>
        <translation>einem gesunden, weiselrichtigen Volk, das stark genug ist</translation>
    </message>
    <message>
        <source>Once it is certain that it has no queen: in the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water.</source>
        <translation>Sobald sicher ist, dass es weisellos ist: abends die Waben neben die von %1 hängen, ein Blatt Zeitungspapier dazwischen, die Bienen mit Wasser besprühen.</translation>
    </message>
    <message>
        <source>In the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water; the better queen is kept.</source>
        <translation>Abends die Waben neben die von %1 hängen, ein Blatt Zeitungspapier dazwischen, die Bienen mit Wasser besprühen; die bessere Königin bleibt.</translation>
    </message>
    <message>
        <source>Once it is certain that it has no queen: in the evening, with a sheet of newspaper between, above %1.</source>
        <translation>Sobald sicher ist, dass es weisellos ist: abends auf die Zargen von %1 setzen, ein Blatt Zeitungspapier dazwischen.</translation>
    </message>
    <message>
        <source>In the evening, with a sheet of newspaper between, above %1; the better queen is kept.</source>
        <translation>Abends auf die Zargen von %1 setzen, ein Blatt Zeitungspapier dazwischen; die bessere Königin bleibt.</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Wabe</translation>
    </message>
    <message>
        <source>comb</source>
        <translation>Wabe</translation>
    </message>
    <message>
        <source>frames</source>
        <translation>Waben</translation>
    </message>
    <message>
        <source>combs</source>
        <translation>Waben</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Wabe</translation>
    </message>
    <message>
        <source>Comb</source>
        <translation>Wabe</translation>
    </message>
    <message>
        <source>Frames</source>
        <translation>Waben</translation>
    </message>
    <message>
        <source>Combs</source>
        <translation>Waben</translation>
    </message>
    <message>
        <source>a candy board</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>A candy board</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Futterteig</translation>
    </message>
    <message>
        <source>yellowjackets</source>
        <translation>Wespen</translation>
    </message>
    <message>
        <source>wasps</source>
        <translation>Wespen</translation>
    </message>
    <message>
        <source>the last nectar coming in</source>
        <translation>Trachtende</translation>
    </message>
    <message>
        <source>the end of laying</source>
        <translation>Ende der Eilage</translation>
    </message>
    <message>
        <source>the new start of laying</source>
        <translation>Wiederbeginn der Eilage</translation>
    </message>
    <message>
        <source>the build-up</source>
        <translation>Frühjahrsentwicklung</translation>
    </message>
    <message>
        <source>the start of spring forage</source>
        <translation>Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>feeding best finished by</source>
        <translation>Fütterung am besten abgeschlossen bis</translation>
    </message>
    <message>
        <source>the last day for syrup</source>
        <translation>letzter Tag für Zuckerwasser</translation>
    </message>
    <message>
        <source>the day syrup is no longer taken</source>
        <translation>Zuckerwasser nicht mehr abgenommen</translation>
    </message>
    <message>
        <source>the %{comb} record</source>
        <translation>die Wabendurchsicht</translation>
    </message>
    <message>
        <source>%{combs} looked at</source>
        <translation>Wabendurchsicht</translation>
    </message>
    <message>
        <source>the count of full %{combs}</source>
        <translation>die Zählung der vollen Futterwaben</translation>
    </message>
    <message>
        <source>%{combs} counted</source>
        <translation>Wabenzählung</translation>
    </message>
    <message>
        <source>the weight on the scale</source>
        <translation>das Gewicht auf der Waage</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Waage</translation>
    </message>
    <message>
        <source>the two sides lifted</source>
        <translation>das Wiegen an beiden Seiten</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>Wiegen an beiden Seiten</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>Wiegen an einer Seite</translation>
    </message>
    <message>
        <source>the heft</source>
        <translation>das Anheben von Hand</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>Anheben von Hand</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>ernten</translation>
    </message>
    <message>
        <source>take</source>
        <translation>ernten</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>lassen</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>füttern</translation>
    </message>
    <message>
        <source>unite</source>
        <translation>vereinigen</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>keine Aussage möglich</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>so lassen</translation>
    </message>
    <message>
        <source>take now</source>
        <translation>jetzt ernten</translation>
    </message>
    <message>
        <source>take in spring</source>
        <translation>im Frühjahr ernten</translation>
    </message>
    <message>
        <source>give %{combs} of stores</source>
        <translation>Futterwaben geben</translation>
    </message>
    <message>
        <source>give %{combs}</source>
        <translation>Waben geben</translation>
    </message>
    <message>
        <source>unite it with another colony</source>
        <translation>mit einem anderen Volk vereinigen</translation>
    </message>
    <message>
        <source>lay on %1 of fondant</source>
        <translation>%1 Futterteig auflegen</translation>
    </message>
    <message>
        <source>feed %1 of sugar</source>
        <translation>%1 Zucker füttern</translation>
    </message>
    <message>
        <source>heft the hive</source>
        <translation>die Beute anheben</translation>
    </message>
    <message>
        <source>weigh both sides of the closed hive, which takes two minutes and disturbs no bee</source>
        <translation>die geschlossene Beute an beiden Seiten wiegen, was zwei Minuten dauert und keine Biene stört</translation>
    </message>
    <message>
        <source>look through the window or from above</source>
        <translation>durch das Sichtfenster oder von oben hineinsehen</translation>
    </message>
    <message>
        <source>count the full %{combs} and the %{combs} the bees cover</source>
        <translation>die vollen Futterwaben und die besetzten Waben zählen</translation>
    </message>
    <message>
        <source>count the seams filled with bees, from above</source>
        <translation>die besetzten Wabengassen von oben zählen</translation>
    </message>
    <message>
        <source>open the hive and look at every %{comb}</source>
        <translation>die Beute öffnen und jede Wabe ansehen</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>Zuckerwasser</translation>
    </message>
    <message>
        <source>check: %{combs} sealed? weigh, feeder off, mouse guard on</source>
        <translation>nachsehen: Waben verdeckelt? wiegen, Futtergefäß ab, Mäusegitter an</translation>
    </message>
    <message>
        <source>check</source>
        <translation>nachsehen</translation>
    </message>
    <message>
        <source>a confined winter</source>
        <translation>ein Winter, der die Bienen lange einsperrt</translation>
    </message>
    <message>
        <source>a winter in which bees fly in most weeks</source>
        <translation>ein Winter, in dem die Bienen in den meisten Wochen fliegen</translation>
    </message>
    <message>
        <source>no winter, a dearth between the last nectar of autumn and the first of spring</source>
        <translation>kein Winter, eine Trachtlücke zwischen dem letzten Nektar des Herbstes und dem ersten des Frühjahrs</translation>
    </message>
    <message>
        <source>no season can be derived; give the dates yourself</source>
        <translation>es lässt sich kein Jahreslauf ableiten; geben Sie die Tage selbst an</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>climate</source>
        <translation>aus dem Klima</translation>
    </message>
    <message>
        <source>climate, moved</source>
        <translation>aus dem Klima, verschoben</translation>
    </message>
    <message>
        <source>case</source>
        <translation>angegeben</translation>
    </message>
</context>
<context>
    <name>YardPlan</name>
    <message numerus="yes">
        <source>%n to feed</source>
        <translation>
            <numerusform>%n zu füttern</numerusform>
            <numerusform>%n zu füttern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to unite</source>
        <translation>
            <numerusform>%n zu vereinigen</numerusform>
            <numerusform>%n zu vereinigen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with honey to spare</source>
        <translation>
            <numerusform>%n mit Honig übrig</numerusform>
            <numerusform>%n mit Honig übrig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to leave alone</source>
        <translation>
            <numerusform>%n so zu lassen</numerusform>
            <numerusform>%n so zu lassen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not known enough</source>
        <translation>
            <numerusform>%n zu wenig bekannt</numerusform>
            <numerusform>%n zu wenig bekannt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on course</source>
        <translation>
            <numerusform>%n im Plan</numerusform>
            <numerusform>%n im Plan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n eating faster than planned</source>
        <translation>
            <numerusform>%n mit mehr Verbrauch als erwartet</numerusform>
            <numerusform>%n mit mehr Verbrauch als erwartet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with the food out of reach</source>
        <translation>
            <numerusform>%n mit Futterabriss</numerusform>
            <numerusform>%n mit Futterabriss</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dwindling</source>
        <translation>
            <numerusform>%n schrumpft</numerusform>
            <numerusform>%n schrumpfen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with less than was thought</source>
        <translation>
            <numerusform>%n mit weniger als gedacht</numerusform>
            <numerusform>%n mit weniger als gedacht</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with a feed not written down</source>
        <translation>
            <numerusform>%n mit nicht eingetragener Futtergabe</numerusform>
            <numerusform>%n mit nicht eingetragener Futtergabe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with more than is needed</source>
        <translation>
            <numerusform>%n mit mehr als nötig</numerusform>
            <numerusform>%n mit mehr als nötig</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to be fed now</source>
        <translation>
            <numerusform>%n jetzt zu füttern</numerusform>
            <numerusform>%n jetzt zu füttern</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dead</source>
        <translation>
            <numerusform>%n abgestorben</numerusform>
            <numerusform>%n abgestorben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n that must be weighed again</source>
        <translation>
            <numerusform>%n noch einmal zu wiegen</numerusform>
            <numerusform>%n noch einmal zu wiegen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n being worked out</source>
        <translation>
            <numerusform>%n wird noch gerechnet</numerusform>
            <numerusform>%n werden noch gerechnet</numerusform>
        </translation>
    </message>
    <message>
        <source>No colony stands in this yard yet.</source>
        <translation>An diesem Stand steht noch kein Volk.</translation>
    </message>
    <message>
        <source>One colony: %1.</source>
        <translation>Ein Volk: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n colonies: %1.</source>
        <translation>
            <numerusform>Ein Volk: %1.</numerusform>
            <numerusform>%n Völker: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.</source>
        <translation>Kaufen Sie %1 weißen Zucker; das letzte Zuckerwasser muss bis zum %2 abgenommen sein. Füttern Sie abends, und zwar alle Völker, die an einem Tag an der Reihe sind, am selben Abend.</translation>
    </message>
    <message>
        <source>Move the %{combs} first, then buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.</source>
        <translation>Hängen Sie zuerst die Waben um, dann kaufen Sie %1 weißen Zucker; das letzte Zuckerwasser muss bis zum %2 abgenommen sein. Füttern Sie abends, und zwar alle Völker, die an einem Tag an der Reihe sind, am selben Abend.</translation>
    </message>
    <message>
        <source>Planned without moving %{combs} between hives.</source>
        <translation>Geplant, ohne Waben zwischen Beuten umzuhängen.</translation>
    </message>
    <message>
        <source>one %{comb} (%1) from %2 to %3: %4</source>
        <translation>eine Wabe (%1) von %2 an %3: %4</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} (%1) from %2 to %3: %4</source>
        <translation>
            <numerusform>eine Wabe (%1) von %2 an %3: %4</numerusform>
            <numerusform>%n Waben (%1) von %2 an %3: %4</numerusform>
        </translation>
    </message>
    <message>
        <source>none: with signs of disease in the yard nothing moves between hives</source>
        <translation>keine: Bei Krankheitsanzeichen am Stand wird nichts zwischen Beuten umgehängt</translation>
    </message>
    <message>
        <source>none: %{combs} stay in their hives</source>
        <translation>keine: Die Waben bleiben in ihren Beuten</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>costs %1</source>
        <translation>kostet %1</translation>
    </message>
    <message>
        <source>one bag of %1</source>
        <translation>ein Sack zu %1</translation>
    </message>
    <message numerus="yes">
        <source>%n bags of %1</source>
        <translation>
            <numerusform>ein Sack zu %1</numerusform>
            <numerusform>%n Säcke zu %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; the sugar itself costs %2</source>
        <translation>%1; der Zucker selbst kostet %2</translation>
    </message>
</context>
<context>
    <name>say::Help</name>
    <message>
        <source>Options</source>
        <comment>heading of the help</comment>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <comment>heading of the help</comment>
        <translation>Befehle</translation>
    </message>
</context>
<context>
    <name>winterlarder::Message</name>
    <message>
        <source>that would be {} bees</source>
        <translation>das wären {} Bienen</translation>
    </message>
    <message>
        <source>at most {} bees</source>
        <translation>höchstens {} Bienen</translation>
    </message>
    <message>
        <source>how much was fed on {} is not said in the measure of its kind</source>
        <translation>wie viel am {} gefüttert wurde, ist nicht im Maß dieser Futterart angegeben</translation>
    </message>
    <message>
        <source>syrup in kg of sugar or in litres, fondant in kg of fondant, dry sugar in kg of sugar</source>
        <translation>Zuckerwasser in kg Zucker oder in Litern, Futterteig in kg Futterteig, trockener Zucker in kg Zucker</translation>
    </message>
    <message>
        <source>it was moved to the other half of the earth after {}</source>
        <translation>es kam nach dem {} auf die andere Erdhälfte</translation>
    </message>
    <message>
        <source>a look after the move: the winter there is another one</source>
        <translation>eine Durchsicht nach dem Standwechsel: Dort ist der Winter ein anderer</translation>
    </message>
    <message>
        <source>there is no hive format {}</source>
        <translation>es gibt keinen Beutentyp {}</translation>
    </message>
    <message>
        <source>one that winterlarder-cli hive-formats lists</source>
        <translation>einer, den winterlarder-cli hive-formats nennt</translation>
    </message>
    <message>
        <source>the hive has no box</source>
        <translation>die Beute hat keine Zarge</translation>
    </message>
    <message>
        <source>its boxes, from the floor up</source>
        <translation>ihre Zargen, vom Boden aufwärts</translation>
    </message>
    <message>
        <source>no station &quot;{}&quot;</source>
        <translation>keine Station &quot;{}&quot;</translation>
    </message>
    <message>
        <source>an id that the command &quot;stations&quot; lists</source>
        <translation>eine Kennung, die der Befehl &quot;stations&quot; nennt</translation>
    </message>
    <message>
        <source>&quot;{}&quot; {} is not a day of the winter asked about</source>
        <translation>&quot;{}&quot; {} ist kein Tag des Winters, um den es geht</translation>
    </message>
    <message>
        <source>a day from {} to {}</source>
        <translation>ein Tag von {} bis {}</translation>
    </message>
    <message>
        <source>{} (at {}:{})</source>
        <translation>{} (bei {}:{})</translation>
    </message>
    <message>
        <source>there is no such book</source>
        <translation>dieses Stockbuch gibt es nicht</translation>
    </message>
    <message>
        <source>check the name, or make a new book</source>
        <translation>prüfen Sie den Namen, oder legen Sie ein neues Stockbuch an</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation>das ist keine Datei</translation>
    </message>
    <message>
        <source>choose a .larder file</source>
        <translation>wählen Sie eine .larder-Datei</translation>
    </message>
    <message>
        <source>this is not a book</source>
        <translation>das ist kein Stockbuch</translation>
    </message>
    <message>
        <source>the book has no version</source>
        <translation>das Stockbuch hat keine Version</translation>
    </message>
    <message>
        <source>salvage what is readable into a new book</source>
        <translation>retten Sie, was lesbar ist, in ein neues Stockbuch</translation>
    </message>
    <message>
        <source>do not use it; salvage takes over what is readable</source>
        <translation>verwenden Sie es nicht; Retten übernimmt, was lesbar ist</translation>
    </message>
    <message>
        <source>there is a file of that name</source>
        <translation>eine Datei dieses Namens gibt es schon</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <source>The book was opened for reading only.</source>
        <translation>Das Stockbuch wurde nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>The book lies where nothing can be written.</source>
        <translation>Das Stockbuch liegt, wo nichts geschrieben werden kann.</translation>
    </message>
    <message>
        <source>The book was made by a newer version of this program; this one only reads it.</source>
        <translation>Das Stockbuch stammt von einer neueren Version dieses Programms; diese hier liest es nur.</translation>
    </message>
    <message>
        <source>The disk is full, so the book can only be read.</source>
        <translation>Der Datenträger ist voll, daher lässt sich das Stockbuch nur lesen.</translation>
    </message>
    <message>
        <source>The book&apos;s file has a second name (a hard link), so it is only read: a change under one name could not be taken back under the other. Make a copy and write in that, or remove the other name.</source>
        <translation>Die Datei des Stockbuchs hat einen zweiten Namen (einen Hardlink), daher wird es nur gelesen: Eine Änderung unter dem einen Namen ließe sich unter dem anderen nicht rückgängig machen. Legen Sie eine Kopie an und tragen Sie dort ein, oder entfernen Sie den anderen Namen.</translation>
    </message>
    <message>
        <source>The book is open elsewhere: {}.</source>
        <translation>Das Stockbuch ist anderswo geöffnet: {}.</translation>
    </message>
    <message>
        <source>nothing was changed</source>
        <translation>es wurde nichts geändert</translation>
    </message>
    <message>
        <source>a newer version of this program made it</source>
        <translation>es stammt von einer neueren Version dieses Programms</translation>
    </message>
    <message>
        <source>restore with that version</source>
        <translation>stellen Sie es mit jener Version wieder her</translation>
    </message>
    <message>
        <source>{} {}: no entry has that number</source>
        <translation>{} {}: Kein Eintrag hat diese Nummer</translation>
    </message>
    <message>
        <source>1 to {}</source>
        <translation>1 bis {}</translation>
    </message>
    <message>
        <source>{} {}: there is no {} {}</source>
        <translation>{} {}: Es gibt {} {} nicht</translation>
    </message>
    <message>
        <source>name one that is in the book</source>
        <translation>nennen Sie etwas, was im Stockbuch steht</translation>
    </message>
    <message>
        <source>there is no {} called &quot;{}&quot;</source>
        <translation>es gibt nichts der Art {}, was &quot;{}&quot; heißt</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>prüfen Sie den Namen</translation>
    </message>
    <message>
        <source>{} of them are called &quot;{}&quot;</source>
        <translation>{} davon heißen &quot;{}&quot;</translation>
    </message>
    <message>
        <source>rename all but one</source>
        <translation>benennen Sie alle bis auf eines um</translation>
    </message>
    <message>
        <source>there is no colony {}</source>
        <translation>es gibt kein Volk {}</translation>
    </message>
    <message>
        <source>check its number</source>
        <translation>prüfen Sie die Nummer</translation>
    </message>
    <message>
        <source>holds a line break</source>
        <translation>enthält einen Zeilenumbruch</translation>
    </message>
    <message>
        <source>holds a control character ({})</source>
        <translation>enthält ein Steuerzeichen ({})</translation>
    </message>
    <message>
        <source>holds a mark that turns the direction of reading ({})</source>
        <translation>enthält ein Zeichen, das die Leserichtung umkehrt ({})</translation>
    </message>
    <message>
        <source>is only blanks</source>
        <translation>besteht nur aus Leerzeichen</translation>
    </message>
    <message>
        <source>nothing was changed; make room and do it again</source>
        <translation>es wurde nichts geändert; schaffen Sie Platz und versuchen Sie es noch einmal</translation>
    </message>
    <message>
        <source>{} is outside what may be entered</source>
        <translation>{} liegt außerhalb dessen, was eingetragen werden darf</translation>
    </message>
    <message>
        <source>see the field&apos;s limits</source>
        <translation>siehe die Grenzen des Feldes</translation>
    </message>
    <message>
        <source>an entry refers to one that is not in the book</source>
        <translation>ein Eintrag verweist auf einen, der nicht im Stockbuch steht</translation>
    </message>
    <message>
        <source>enter the other one first</source>
        <translation>tragen Sie den anderen zuerst ein</translation>
    </message>
    <message>
        <source>the change breaks a rule of the file: {}</source>
        <translation>die Änderung verletzt eine Regel der Datei: {}</translation>
    </message>
    <message>
        <source>the last change was interrupted and has to be taken back before the book can be read</source>
        <translation>die letzte Änderung wurde unterbrochen und muss zurückgenommen werden, bevor sich das Stockbuch lesen lässt</translation>
    </message>
    <message>
        <source>open the book again where it can be written; keep {}-journal beside it, a copy without it is damaged</source>
        <translation>öffnen Sie das Stockbuch dort noch einmal, wo geschrieben werden kann; lassen Sie {}-journal daneben liegen, eine Kopie ohne dieses ist beschädigt</translation>
    </message>
    <message>
        <source>the file was moved, removed or replaced by another while the book was open</source>
        <translation>die Datei wurde verschoben, entfernt oder durch eine andere ersetzt, während das Stockbuch offen war</translation>
    </message>
    <message>
        <source>nothing was changed; open the book again and see what it holds</source>
        <translation>es wurde nichts geändert; öffnen Sie das Stockbuch noch einmal und sehen Sie, was es enthält</translation>
    </message>
    <message>
        <source>the book cannot be written here</source>
        <translation>hier lässt sich das Stockbuch nicht schreiben</translation>
    </message>
    <message>
        <source>nothing was changed; copy it to where it can</source>
        <translation>es wurde nichts geändert; kopieren Sie es dorthin, wo es geht</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>the disk does not read or write as it should</source>
        <translation>der Datenträger liest oder schreibt nicht, wie er soll</translation>
    </message>
    <message>
        <source>nothing was changed; check the disk and do it again</source>
        <translation>es wurde nichts geändert; prüfen Sie den Datenträger und versuchen Sie es noch einmal</translation>
    </message>
    <message>
        <source>another program is using the book</source>
        <translation>ein anderes Programm benutzt das Stockbuch</translation>
    </message>
    <message>
        <source>nothing was changed; do it again in a moment</source>
        <translation>es wurde nichts geändert; versuchen Sie es gleich noch einmal</translation>
    </message>
    <message>
        <source>the book is damaged</source>
        <translation>das Stockbuch ist beschädigt</translation>
    </message>
    <message>
        <source>salvage what is readable into a new book, or restore a backup</source>
        <translation>retten Sie, was lesbar ist, in ein neues Stockbuch, oder stellen Sie eine Sicherungskopie wieder her</translation>
    </message>
    <message>
        <source>the book or its journal cannot be opened</source>
        <translation>das Stockbuch oder sein Journal lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>check the folder and its permissions</source>
        <translation>prüfen Sie den Ordner und seine Rechte</translation>
    </message>
    <message>
        <source>the book is damaged: reading it does not end</source>
        <translation>das Stockbuch ist beschädigt: Das Lesen nimmt kein Ende</translation>
    </message>
    <message>
        <source>a text is too long</source>
        <translation>ein Text ist zu lang</translation>
    </message>
    <message>
        <source>shorten it</source>
        <translation>kürzen Sie ihn</translation>
    </message>
    <message>
        <source>the book cannot be used: {}</source>
        <translation>das Stockbuch lässt sich nicht verwenden: {}</translation>
    </message>
    <message>
        <source>the last change was interrupted and has to be taken back before the book can be read, but {}</source>
        <translation>die letzte Änderung wurde unterbrochen und muss zurückgenommen werden, bevor sich das Stockbuch lesen lässt, aber {}</translation>
    </message>
    <message>
        <source>{}; a copy without {}-journal beside it is damaged</source>
        <translation>{}; eine Kopie ohne {}-journal daneben ist beschädigt</translation>
    </message>
    <message>
        <source>it is open elsewhere: {}</source>
        <translation>es ist anderswo geöffnet: {}</translation>
    </message>
    <message>
        <source>close it there</source>
        <translation>schließen Sie es dort</translation>
    </message>
    <message>
        <source>make room and open it again</source>
        <translation>schaffen Sie Platz und öffnen Sie es noch einmal</translation>
    </message>
    <message>
        <source>nothing can be written here</source>
        <translation>hier lässt sich nichts schreiben</translation>
    </message>
    <message>
        <source>open it where its file and folder can be written</source>
        <translation>öffnen Sie es dort, wo Datei und Ordner geschrieben werden können</translation>
    </message>
    <message>
        <source>its file cannot be written here</source>
        <translation>seine Datei lässt sich hier nicht schreiben</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
    <message>
        <source>by {}</source>
        <translation>von {}</translation>
    </message>
    <message>
        <source>by {} on {}</source>
        <translation>von {} an {}</translation>
    </message>
    <message>
        <source>by {} since {}</source>
        <translation>von {} seit {}</translation>
    </message>
    <message>
        <source>by {} on {} since {}</source>
        <translation>von {} an {} seit {}</translation>
    </message>
    <message>
        <source>there is no {} {}</source>
        <translation>es gibt {} {} nicht</translation>
    </message>
    <message>
        <source>it may have been removed meanwhile</source>
        <translation>vielleicht wurde es inzwischen gelöscht</translation>
    </message>
    <message>
        <source>look {} has no comb {}</source>
        <translation>Durchsicht {} hat keine Wabe {}</translation>
    </message>
    <message>
        <source>count the combs it lists</source>
        <translation>zählen Sie die Waben, die sie nennt</translation>
    </message>
    <message>
        <source>yard {} is in use by {} colonies and {} moves</source>
        <translation>Stand {} wird gebraucht: Völker {}, Standwechsel {}</translation>
    </message>
    <message>
        <source>move or remove its colonies first</source>
        <translation>versetzen oder löschen Sie zuerst seine Völker</translation>
    </message>
    <message>
        <source>{} {}: {} is damaged</source>
        <translation>{} {}: {} ist beschädigt</translation>
    </message>
    <message>
        <source>salvage the book</source>
        <translation>retten Sie das Stockbuch</translation>
    </message>
    <message>
        <source>{} to {}{}</source>
        <translation>{} bis {}{}</translation>
    </message>
    <message>
        <source>{}{} or more</source>
        <translation>{}{} oder mehr</translation>
    </message>
    <message>
        <source>{}{} or less</source>
        <translation>{}{} oder weniger</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>{} is not a number</source>
        <translation>{} ist keine Zahl</translation>
    </message>
    <message>
        <source>{} is {}</source>
        <translation>{} ist {}</translation>
    </message>
    <message>
        <source>{} is not readable text</source>
        <translation>{} ist kein lesbarer Text</translation>
    </message>
    <message>
        <source>text in UTF-8 without zero bytes</source>
        <translation>Text in UTF-8 ohne Nullbytes</translation>
    </message>
    <message>
        <source>{} is empty</source>
        <translation>{} ist leer</translation>
    </message>
    <message>
        <source>write something</source>
        <translation>schreiben Sie etwas</translation>
    </message>
    <message>
        <source>{} has {} characters</source>
        <translation>{} hat {} Zeichen</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>höchstens {}</translation>
    </message>
    <message>
        <source>{} is of another type</source>
        <translation>{} ist von anderer Art</translation>
    </message>
    <message>
        <source>{} is &quot;{}&quot;</source>
        <translation>{} ist &quot;{}&quot;</translation>
    </message>
    <message>
        <source>one line of letters, digits, blanks and signs</source>
        <translation>eine Zeile aus Buchstaben, Ziffern, Leerzeichen und Satzzeichen</translation>
    </message>
    <message>
        <source>{} is missing</source>
        <translation>{} fehlt</translation>
    </message>
    <message>
        <source>give it</source>
        <translation>geben Sie es an</translation>
    </message>
    <message>
        <source>text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>month and day such as 05-19, not 02-29</source>
        <translation>Monat und Tag, etwa 05-19, nicht 02-29</translation>
    </message>
    <message>
        <source>a whole number, 0 to 18446744073709551615</source>
        <translation>eine ganze Zahl, 0 bis 18446744073709551615</translation>
    </message>
    <message>
        <source>weekdays such as 1,4,6</source>
        <translation>Wochentage, etwa 1,4,6</translation>
    </message>
    <message>
        <source>one of {}</source>
        <translation>eines von {}</translation>
    </message>
    <message>
        <source>{} is of a type this program does not know</source>
        <translation>{} ist von einer Art, die dieses Programm nicht kennt</translation>
    </message>
    <message>
        <source>step {} of the history is damaged</source>
        <translation>Schritt {} des Verlaufs ist beschädigt</translation>
    </message>
    <message>
        <source>{} for {} {}</source>
        <translation>{} für {}. {}</translation>
    </message>
    <message>
        <source>write {}</source>
        <translation>schreiben Sie {}</translation>
    </message>
    <message>
        <source>write {}, or {}</source>
        <translation>schreiben Sie {} oder {}</translation>
    </message>
    <message>
        <source>the mean temperature of {} is {} degC</source>
        <translation>die Mitteltemperatur im Monat {} ist {} degC</translation>
    </message>
    <message>
        <source>monthly means lie between {} and {} degC</source>
        <translation>Monatsmittel liegen zwischen {} und {} degC</translation>
    </message>
    <message>
        <source>the {} is {} K</source>
        <translation>{} ist {} K</translation>
    </message>
    <message>
        <source>it is 0 or more</source>
        <translation>es ist 0 oder mehr</translation>
    </message>
    <message>
        <source>the correlation of consecutive days is {}</source>
        <translation>die Korrelation aufeinanderfolgender Tage ist {}</translation>
    </message>
    <message>
        <source>it lies between -1 and 1</source>
        <translation>sie liegt zwischen -1 und 1</translation>
    </message>
    <message>
        <source>the latitude is {}</source>
        <translation>die Breite ist {}</translation>
    </message>
    <message>
        <source>it lies between -90 and 90 degrees</source>
        <translation>sie liegt zwischen -90 und 90 Grad</translation>
    </message>
    <message>
        <source>the mean of {} is {} degC</source>
        <translation>das Mittel vom {} ist {} degC</translation>
    </message>
    <message>
        <source>daily means lie between {} and {} degC</source>
        <translation>Tagesmittel liegen zwischen {} und {} degC</translation>
    </message>
    <message>
        <source>{} is there twice</source>
        <translation>{} steht zweimal da</translation>
    </message>
    <message>
        <source>each date stands once</source>
        <translation>jeder Tag steht einmal da</translation>
    </message>
    <message>
        <source>the record has {} days</source>
        <translation>die Reihe hat {} Tage</translation>
    </message>
    <message>
        <source>at least {} are needed</source>
        <translation>mindestens {} sind nötig</translation>
    </message>
    <message>
        <source>{} has {} days in all</source>
        <translation>{} hat insgesamt {} Tage</translation>
    </message>
    <message>
        <source>each month needs at least {}</source>
        <translation>jeder Monat braucht mindestens {}</translation>
    </message>
    <message>
        <source>season day {}</source>
        <translation>Tag {} des Jahreslaufs</translation>
    </message>
    <message>
        <source>{} is outside the winter asked about</source>
        <translation>{} liegt außerhalb des Winters, um den es geht</translation>
    </message>
    <message>
        <source>its dates lie between {} and {}</source>
        <translation>seine Tage liegen zwischen {} und {}</translation>
    </message>
    <message>
        <source>{} is given alone where laying never stops by the climate</source>
        <translation>{} ist allein angegeben, wo die Eilage nach dem Klima nie aufhört</translation>
    </message>
    <message>
        <source>give {} as well, or neither</source>
        <translation>geben Sie auch {} an, oder keines von beiden</translation>
    </message>
    <message>
        <source>{} is too early where laying never stops</source>
        <translation>{} ist zu früh, wo die Eilage nie aufhört</translation>
    </message>
    <message>
        <source>it is on or after {}</source>
        <translation>es ist am {} oder danach</translation>
    </message>
    <message>
        <source>{} is before {}</source>
        <translation>{} liegt vor {}</translation>
    </message>
    <message>
        <source>{} is not earlier than {}</source>
        <translation>{} liegt nicht vor {}</translation>
    </message>
    <message>
        <source>{} is less than {} days after {}</source>
        <translation>{} liegt weniger als {} Tage nach {}</translation>
    </message>
    <message>
        <source>{} is at least {} days after {}</source>
        <translation>{} liegt mindestens {} Tage nach {}</translation>
    </message>
    <message>
        <source>{} leaves no room for {} within the winter</source>
        <translation>{} lässt innerhalb des Winters keinen Platz für {}</translation>
    </message>
    <message>
        <source>give {} as well, or another {}</source>
        <translation>geben Sie auch {} an, oder ein anderes {}</translation>
    </message>
    <message>
        <source>the longitude is {}</source>
        <translation>die Länge ist {}</translation>
    </message>
    <message>
        <source>it lies between -180 and 180 degrees</source>
        <translation>sie liegt zwischen -180 und 180 Grad</translation>
    </message>
    <message>
        <source>the elevation is {} m</source>
        <translation>die Höhe ist {} m</translation>
    </message>
    <message>
        <source>it lies between {} and {} m</source>
        <translation>sie liegt zwischen {} und {} m</translation>
    </message>
    <message>
        <source>there is no table &quot;{}&quot;</source>
        <translation>es gibt keine Tabelle &quot;{}&quot;</translation>
    </message>
    <message>
        <source>unknown column {}</source>
        <translation>unbekannte Spalte {}</translation>
    </message>
    <message>
        <source>the column owner is missing</source>
        <translation>die Spalte owner fehlt</translation>
    </message>
    <message>
        <source>the entry each row belongs to, by its number, or a colony by its name</source>
        <translation>der Eintrag, zu dem jede Zeile gehört, mit seiner Nummer, oder ein Volk mit seinem Namen</translation>
    </message>
    <message>
        <source>give each number once</source>
        <translation>geben Sie jede Nummer einmal an</translation>
    </message>
    <message>
        <source>the place is not a number</source>
        <translation>der Platz ist keine Zahl</translation>
    </message>
    <message>
        <source>a whole number from 0</source>
        <translation>eine ganze Zahl ab 0</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number of a {}</source>
        <translation>&quot;{}&quot; ist keine Nummer der Art {}</translation>
    </message>
    <message>
        <source>such as #7</source>
        <translation>etwa #7</translation>
    </message>
    <message>
        <source>there is no {} &quot;{}&quot;</source>
        <translation>es gibt {} &quot;{}&quot; nicht</translation>
    </message>
    <message>
        <source>name one that is in the book, or enter it first</source>
        <translation>nennen Sie etwas, was im Stockbuch steht, oder tragen Sie es zuerst ein</translation>
    </message>
    <message>
        <source>say which, such as #{}</source>
        <translation>sagen Sie, welches, etwa #{}</translation>
    </message>
    <message>
        <source>the document is not an object</source>
        <translation>das Dokument ist kein Objekt</translation>
    </message>
    <message>
        <source>begin it with {</source>
        <translation>beginnen Sie es mit {</translation>
    </message>
    <message>
        <source>unknown key {}</source>
        <translation>unbekannter Schlüssel {}</translation>
    </message>
    <message>
        <source>the key &quot;larder&quot; is missing</source>
        <translation>der Schlüssel &quot;larder&quot; fehlt</translation>
    </message>
    <message>
        <source>&quot;larder&quot;: {}</source>
        <translation>&quot;larder&quot;: {}</translation>
    </message>
    <message>
        <source>this form of document is not known</source>
        <translation>diese Fassung des Dokuments ist nicht bekannt</translation>
    </message>
    <message>
        <source>a list of entries</source>
        <translation>eine Liste von Einträgen</translation>
    </message>
    <message>
        <source>{} is not an object</source>
        <translation>{} ist kein Objekt</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>{} {} is there twice</source>
        <translation>{} {} steht zweimal da</translation>
    </message>
    <message>
        <source>number each once</source>
        <translation>nummerieren Sie jedes einmal</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is {}</source>
        <translation>&quot;{}&quot; ist {}</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>an item of &quot;{}&quot; is {}</source>
        <translation>ein Element von &quot;{}&quot; ist {}</translation>
    </message>
    <message>
        <source>name one that is in the document</source>
        <translation>nennen Sie etwas, was im Dokument steht</translation>
    </message>
    <message>
        <source>a case is {}</source>
        <translation>ein Fall ist {}</translation>
    </message>
    <message>
        <source>one JSON object</source>
        <translation>ein JSON-Objekt</translation>
    </message>
    <message>
        <source>the day as YYYY-MM-DD</source>
        <translation>der Tag als YYYY-MM-DD</translation>
    </message>
    <message>
        <source>{} {} is later than {}</source>
        <translation>{} {} ist später als {}</translation>
    </message>
    <message>
        <source>a day not later than as_of</source>
        <translation>ein Tag nicht nach as_of</translation>
    </message>
    <message>
        <source>{} {} is {} days before {}</source>
        <translation>{} {} liegt {} Tage vor {}</translation>
    </message>
    <message>
        <source>at most {} days before as_of: look again, or ask for an earlier day</source>
        <translation>höchstens {} Tage vor as_of: Sehen Sie noch einmal nach, oder fragen Sie für einen früheren Tag</translation>
    </message>
    <message>
        <source>syrup is given as sugar_kg, or as syrup_l with its ratio</source>
        <translation>Zuckerwasser wird als sugar_kg angegeben, oder als syrup_l mit seiner Mischung</translation>
    </message>
    <message>
        <source>{} does not go with syrup</source>
        <translation>{} passt nicht zu Zuckerwasser</translation>
    </message>
    <message>
        <source>sugar_kg, or syrup_l with its ratio</source>
        <translation>sugar_kg, oder syrup_l mit seiner Mischung</translation>
    </message>
    <message>
        <source>sugar to water by mass, such as &quot;3:2&quot;</source>
        <translation>Zucker zu Wasser nach Gewicht, etwa &quot;3:2&quot;</translation>
    </message>
    <message>
        <source>the kilograms given</source>
        <translation>die gegebenen Kilogramm</translation>
    </message>
    <message>
        <source>{} does not go with fondant</source>
        <translation>{} passt nicht zu Futterteig</translation>
    </message>
    <message>
        <source>{} does not go with dry sugar</source>
        <translation>{} passt nicht zu trockenem Zucker</translation>
    </message>
    <message>
        <source>{} alone</source>
        <translation>{} allein</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is given here and in &quot;{}&quot;</source>
        <translation>&quot;{}&quot; ist hier und in &quot;{}&quot; angegeben</translation>
    </message>
    <message>
        <source>one of the two</source>
        <translation>eines von beiden</translation>
    </message>
    <message>
        <source>the day the question is asked, as YYYY-MM-DD</source>
        <translation>der Stichtag, als YYYY-MM-DD</translation>
    </message>
    <message>
        <source>where the bees stand: {&quot;station&quot;: ...}</source>
        <translation>wo die Bienen stehen: {&quot;station&quot;: ...}</translation>
    </message>
    <message>
        <source>the hive: {&quot;format&quot;: ..., &quot;boxes&quot;: ...}</source>
        <translation>die Beute: {&quot;format&quot;: ..., &quot;boxes&quot;: ...}</translation>
    </message>
    <message>
        <source>own measures need comb_width_mm, comb_height_mm, combs_per_box and pitch_mm</source>
        <translation>eigene Maße brauchen comb_width_mm, comb_height_mm, combs_per_box und pitch_mm</translation>
    </message>
    <message>
        <source>no hive format {}</source>
        <translation>kein Beutentyp {}</translation>
    </message>
    <message>
        <source>one of count, covered_combs and seams</source>
        <translation>eines von count, covered_combs und seams</translation>
    </message>
    <message>
        <source>the number of combs full of stores; a list of combs is the other way to say it</source>
        <translation>die Zahl der vollen Futterwaben; eine Liste von Waben ist die andere Möglichkeit</translation>
    </message>
    <message>
        <source>the shares of {} add up to {}</source>
        <translation>die Anteile von {} ergeben zusammen {}</translation>
    </message>
    <message>
        <source>capped, open, brood and pollen together at most 1</source>
        <translation>capped, open, brood und pollen zusammen höchstens 1</translation>
    </message>
    <message>
        <source>one of gross_kg, lift_kg and heft</source>
        <translation>eines von gross_kg, lift_kg und heft</translation>
    </message>
    <message>
        <source>one of syrup, fondant and dry-sugar</source>
        <translation>eines von syrup, fondant und dry-sugar</translation>
    </message>
    <message>
        <source>&quot;ratio&quot; is {}</source>
        <translation>&quot;ratio&quot; ist {}</translation>
    </message>
    <message>
        <source>kg of sugar to kg of water, both above 0, such as &quot;3:2&quot;</source>
        <translation>kg Zucker zu kg Wasser, beide über 0, etwa &quot;3:2&quot;</translation>
    </message>
    <message>
        <source>the kilograms of honey taken</source>
        <translation>die geernteten Kilogramm Honig</translation>
    </message>
    <message>
        <source>&quot;until&quot; {} is before {}</source>
        <translation>&quot;until&quot; {} liegt vor {}</translation>
    </message>
    <message>
        <source>the last day honey is not for people, as the label says</source>
        <translation>der letzte Tag der Wartezeit, laut Packungsbeilage</translation>
    </message>
    <message>
        <source>{} combs are listed, but the hive has {} places</source>
        <translation>{} Waben sind angegeben, aber die Beute hat {} Plätze</translation>
    </message>
    <message>
        <source>at most one comb a place</source>
        <translation>höchstens eine Wabe je Platz</translation>
    </message>
    <message>
        <source>&quot;covered_combs&quot; is {}, but {}</source>
        <translation>&quot;covered_combs&quot; ist {}, aber {}</translation>
    </message>
    <message>
        <source>combs fully covered on both sides: not more than there are</source>
        <translation>auf beiden Seiten voll besetzte Waben: nicht mehr, als da sind</translation>
    </message>
    <message>
        <source>this comb is said to be in a super, but the hive{} has no super</source>
        <translation>diese Wabe soll in einem Honigraum sein, aber die Beute{} hat keinen Honigraum</translation>
    </message>
    <message>
        <source>the boxes from the floor up with &quot;super&quot;: true for the super, or no in_super</source>
        <translation>die Zargen vom Boden aufwärts, mit &quot;super&quot;: true für den Honigraum, oder kein in_super</translation>
    </message>
    <message>
        <source>{} combs are said to be in a super, but the supers of the hive{} have {} places</source>
        <translation>{} Waben sollen in einem Honigraum sein, aber die Honigräume der Beute{} haben {} Plätze</translation>
    </message>
    <message>
        <source>at most one comb a place; combs without in_super fill the boxes from the floor up</source>
        <translation>höchstens eine Wabe je Platz; Waben ohne in_super füllen die Zargen vom Boden aufwärts</translation>
    </message>
    <message>
        <source>the hive{} has {} places</source>
        <translation>die Beute{} hat {} Plätze</translation>
    </message>
    <message>
        <source>{} combs are listed, but {}</source>
        <translation>{} Waben sind angegeben, aber {}</translation>
    </message>
    <message>
        <source>{} combs are listed{}</source>
        <translation>{} Waben sind angegeben{}</translation>
    </message>
    <message>
        <source>a whole number from {} to {}{}</source>
        <translation>eine ganze Zahl von {} bis {}{}</translation>
    </message>
    <message>
        <source>a number from {} to {}{}</source>
        <translation>eine Zahl von {} bis {}{}</translation>
    </message>
    <message>
        <source>a whole number of at least {}{}</source>
        <translation>eine ganze Zahl, mindestens {}{}</translation>
    </message>
    <message>
        <source>a number of at least {}{}</source>
        <translation>eine Zahl, mindestens {}{}</translation>
    </message>
    <message>
        <source>a whole number of at most {}{}</source>
        <translation>eine ganze Zahl, höchstens {}{}</translation>
    </message>
    <message>
        <source>a number of at most {}{}</source>
        <translation>eine Zahl, höchstens {}{}</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a date as YYYY-MM-DD in double quotes</source>
        <translation>ein Datum als YYYY-MM-DD in doppelten Anführungszeichen</translation>
    </message>
    <message>
        <source>{} is {}, which is not a date</source>
        <translation>{} ist {}, und das ist kein Datum</translation>
    </message>
    <message>
        <source>{} has {} bytes</source>
        <translation>{} hat {} Bytes</translation>
    </message>
    <message>
        <source>a text, or leave the key out</source>
        <translation>ein Text, oder lassen Sie den Schlüssel weg</translation>
    </message>
    <message>
        <source>a text in double quotes</source>
        <translation>ein Text in doppelten Anführungszeichen</translation>
    </message>
    <message>
        <source>true or false, without quotes</source>
        <translation>true oder false, ohne Anführungszeichen</translation>
    </message>
    <message>
        <source>{} is not a weekday</source>
        <translation>{} ist kein Wochentag</translation>
    </message>
    <message>
        <source>Monday to Sunday, or 1 (Monday) to 7 (Sunday)</source>
        <translation>Monday bis Sunday, oder 1 (Montag) bis 7 (Sonntag)</translation>
    </message>
    <message>
        <source>the same weekday is given twice</source>
        <translation>derselbe Wochentag ist zweimal angegeben</translation>
    </message>
    <message>
        <source>each weekday once</source>
        <translation>jeden Wochentag einmal</translation>
    </message>
    <message>
        <source>the key {} is missing</source>
        <translation>der Schlüssel {} fehlt</translation>
    </message>
    <message>
        <source>{} has {} values</source>
        <translation>{} hat {} Werte</translation>
    </message>
    <message>
        <source>{} is given beside {} at {}:{}</source>
        <translation>{} ist neben {} angegeben, bei {}:{}</translation>
    </message>
    <message>
        <source>none of {} is given</source>
        <translation>nichts von {} ist angegeben</translation>
    </message>
    <message>
        <source>unknown key {}{}</source>
        <translation>unbekannter Schlüssel {}{}</translation>
    </message>
    <message>
        <source> in {}</source>
        <translation> in {}</translation>
    </message>
    <message>
        <source>the latitude of the place, degrees north</source>
        <translation>die Breite des Ortes, Grad Nord</translation>
    </message>
    <message>
        <source>{} is given beside monthly_mean_c</source>
        <translation>{} ist neben monthly_mean_c angegeben</translation>
    </message>
    <message>
        <source>leave elevation_m out: an own climate is already that of the place</source>
        <translation>lassen Sie elevation_m weg: Ein eigenes Klima ist schon das des Ortes</translation>
    </message>
    <message>
        <source>{} is given without &quot;monthly_mean_c&quot;</source>
        <translation>{} ist ohne &quot;monthly_mean_c&quot; angegeben</translation>
    </message>
    <message>
        <source>the scatter belongs to an own climate</source>
        <translation>die Schwankung gehört zu einem eigenen Klima</translation>
    </message>
    <message>
        <source>the site says nothing of where it is</source>
        <translation>der Standort sagt nicht, wo er liegt</translation>
    </message>
    <message>
        <source>{} is given without {}</source>
        <translation>{} ist ohne {} angegeben</translation>
    </message>
    <message>
        <source>{} {} is not a day of the winter asked about</source>
        <translation>{} {} ist kein Tag des Winters, um den es geht</translation>
    </message>
    <message>
        <source>no station {}</source>
        <translation>keine Station {}</translation>
    </message>
    <message>
        <source>the key {} is given twice, first at {}:{}</source>
        <translation>der Schlüssel {} ist zweimal angegeben, zuerst bei {}:{}</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>jeden Schlüssel einmal</translation>
    </message>
    <message>
        <source>nested deeper than {} levels</source>
        <translation>mehr als {} Ebenen tief verschachtelt</translation>
    </message>
    <message>
        <source>a case as described in the manual</source>
        <translation>ein Fall, wie im Handbuch beschrieben</translation>
    </message>
    <message>
        <source>there are too many values</source>
        <translation>es sind zu viele Werte</translation>
    </message>
    <message>
        <source>a zero byte in the text</source>
        <translation>ein Nullbyte im Text</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>Text in UTF-8</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot;?</source>
        <translation>meinten Sie &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot; or &quot;{}&quot;?</source>
        <translation>meinten Sie &quot;{}&quot; oder &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot; or &quot;{}&quot; or &quot;{}&quot;?</source>
        <translation>meinten Sie &quot;{}&quot; oder &quot;{}&quot; oder &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>known: {}</source>
        <translation>bekannt: {}</translation>
    </message>
    <message>
        <source>there is no column &quot;{}&quot;</source>
        <translation>es gibt keine Spalte &quot;{}&quot;</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a date</source>
        <translation>&quot;{}&quot; ist kein Datum</translation>
    </message>
    <message>
        <source>YYYY-MM-DD or YYYY/MM/DD</source>
        <translation>YYYY-MM-DD oder YYYY/MM/DD</translation>
    </message>
    <message>
        <source>{} stands in line {} already</source>
        <translation>{} steht schon in Zeile {}</translation>
    </message>
    <message>
        <source>each date once</source>
        <translation>jedes Datum einmal</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a number</source>
        <translation>&quot;{}&quot; ist keine Zahl</translation>
    </message>
    <message>
        <source>a temperature with a decimal point, or an empty cell</source>
        <translation>eine Temperatur mit Dezimalpunkt, oder eine leere Zelle</translation>
    </message>
    <message>
        <source>{} is no air temperature</source>
        <translation>{} ist keine Lufttemperatur</translation>
    </message>
    <message>
        <source>{} to {} degC, or an empty cell</source>
        <translation>{} bis {} degC, oder eine leere Zelle</translation>
    </message>
    <message>
        <source>the minimum is above the maximum</source>
        <translation>das Minimum liegt über dem Maximum</translation>
    </message>
    <message>
        <source>the lower reading in the column of minima</source>
        <translation>der tiefere Messwert in der Spalte der Minima</translation>
    </message>
    <message>
        <source>&quot;{}&quot; names no column</source>
        <translation>&quot;{}&quot; nennt keine Spalte</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is named twice</source>
        <translation>&quot;{}&quot; ist zweimal genannt</translation>
    </message>
    <message>
        <source>neither the mean alone nor minimum and maximum are named</source>
        <translation>weder das Mittel allein noch Minimum und Maximum sind genannt</translation>
    </message>
    <message>
        <source>which part of the dates is the year cannot be told</source>
        <translation>welcher Teil der Datumsangaben das Jahr ist, lässt sich nicht erkennen</translation>
    </message>
    <message>
        <source>dates are written in two orders: the day first in line {}, the month first in line {}</source>
        <translation>die Datumsangaben sind in zwei Reihenfolgen geschrieben: der Tag zuerst in Zeile {}, der Monat zuerst in Zeile {}</translation>
    </message>
    <message>
        <source>whether day or month comes first in the dates cannot be told: {}/{}/{} in line {} may be either, and no number above 12 decides</source>
        <translation>ob in den Datumsangaben Tag oder Monat zuerst kommt, lässt sich nicht erkennen: {}/{}/{} in Zeile {} kann beides sein, und keine Zahl über 12 entscheidet es</translation>
    </message>
    <message>
        <source>--date-order dmy, mdy or ymd</source>
        <translation>--date-order dmy, mdy oder ymd</translation>
    </message>
    <message>
        <source>this is no text</source>
        <translation>das ist kein Text</translation>
    </message>
    <message>
        <source>a table of times and weights in plain text (UTF-8)</source>
        <translation>eine Tabelle mit Zeiten und Gewichten als reiner Text (UTF-8)</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>die Datei ist leer</translation>
    </message>
    <message>
        <source>a table of times and weights</source>
        <translation>eine Tabelle mit Zeiten und Gewichten</translation>
    </message>
    <message>
        <source>cannot be read to its end</source>
        <translation>lässt sich nicht bis zum Ende lesen</translation>
    </message>
    <message>
        <source>a file that can be read</source>
        <translation>eine lesbare Datei</translation>
    </message>
    <message>
        <source>the log has more than {} readings</source>
        <translation>die Waagendaten haben mehr als {} Messwerte</translation>
    </message>
    <message>
        <source>at most {}: a part of it</source>
        <translation>höchstens {}: ein Teil davon</translation>
    </message>
    <message>
        <source>no row has both a time and a weight</source>
        <translation>keine Zeile hat eine Zeit und ein Gewicht</translation>
    </message>
    <message>
        <source>--time and --weight with the columns that hold them</source>
        <translation>--time und --weight mit den Spalten, in denen sie stehen</translation>
    </message>
    <message>
        <source>no row has both a time and a weight; the first row left out has {}</source>
        <translation>keine Zeile hat eine Zeit und ein Gewicht; die erste ausgelassene hat {}</translation>
    </message>
    <message>
        <source>the unit of the weights cannot be told: half of them are above {}</source>
        <translation>die Einheit der Gewichte lässt sich nicht erkennen: Die Hälfte liegt über {}</translation>
    </message>
    <message>
        <source>--unit kg, g or lb</source>
        <translation>--unit kg, g oder lb</translation>
    </message>
    <message>
        <source>{} with one of them</source>
        <translation>{} mit einer davon</translation>
    </message>
    <message>
        <source>there is no column {}</source>
        <translation>es gibt keine Spalte {}</translation>
    </message>
    <message>
        <source>{} with a name of the header{} or a number from 1 to {}</source>
        <translation>{} mit einem Namen der Kopfzeile{} oder einer Zahl von 1 bis {}</translation>
    </message>
    <message>
        <source>more than one column holds times: {}</source>
        <translation>mehr als eine Spalte enthält Zeiten: {}</translation>
    </message>
    <message>
        <source>no column holds times</source>
        <translation>keine Spalte enthält Zeiten</translation>
    </message>
    <message>
        <source>a table of times and weights; --delimiter, --time or --date where it is one</source>
        <translation>eine Tabelle mit Zeiten und Gewichten; --delimiter, --time oder --date, wenn es eine ist</translation>
    </message>
    <message>
        <source>more than one column holds dates: {}</source>
        <translation>mehr als eine Spalte enthält Tage: {}</translation>
    </message>
    <message>
        <source>more than one column holds times of day: {}</source>
        <translation>mehr als eine Spalte enthält Uhrzeiten: {}</translation>
    </message>
    <message>
        <source>more than one column may hold the weight: {}</source>
        <translation>mehr als eine Spalte kann das Gewicht enthalten: {}</translation>
    </message>
    <message>
        <source>no column holds weights</source>
        <translation>keine Spalte enthält Gewichte</translation>
    </message>
    <message>
        <source>a column of numbers, one a row; --delimiter or --weight where there is one</source>
        <translation>eine Spalte mit Zahlen, eine je Zeile; --delimiter oder --weight, wenn es eine gibt</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a ratio of sugar to water</source>
        <translation>&quot;{}&quot; ist keine Mischung von Zucker zu Wasser</translation>
    </message>
    <message>
        <source>two numbers above 0 with a colon between them, such as 3:2 or 1:0.63</source>
        <translation>zwei Zahlen über 0 mit einem Doppelpunkt dazwischen, etwa 3:2 oder 1:0.63</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is more than 80 % sugar, which no longer flows</source>
        <translation>&quot;{}&quot; ist mehr als 80&#xa0;% Zucker, das fließt nicht mehr</translation>
    </message>
    <message>
        <source>at most 4:1 by mass; syrup for winter stores is 3:2 or 2:1</source>
        <translation>höchstens 4:1 nach Gewicht; Zuckerwasser für den Winter ist 3:2 oder 2:1</translation>
    </message>
    <message>
        <source>{} cannot be {}</source>
        <translation>{} kann nicht {} sein</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 oder mehr</translation>
    </message>
    <message>
        <source>the density of {} % sugar is not known</source>
        <translation>die Dichte von {}&#xa0;% Zucker ist nicht bekannt</translation>
    </message>
    <message>
        <source>0 to 80 % sugar by mass</source>
        <translation>0 bis 80&#xa0;% Zucker nach Gewicht</translation>
    </message>
    <message>
        <source>syrup of {} is too thin to become stores</source>
        <translation>Zuckerwasser {} ist zu dünn, um Futter zu werden</translation>
    </message>
    <message>
        <source>3:2 or 2:1 by mass for winter stores</source>
        <translation>3:2 oder 2:1 nach Gewicht für den Wintervorrat</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>es steht nichts da</translation>
    </message>
    <message>
        <source>write a number and a unit</source>
        <translation>schreiben Sie eine Zahl und eine Einheit</translation>
    </message>
    <message>
        <source>two numbers stand side by side</source>
        <translation>zwei Zahlen stehen nebeneinander</translation>
    </message>
    <message>
        <source>write one number, without spaces in it</source>
        <translation>schreiben Sie eine Zahl, ohne Leerzeichen darin</translation>
    </message>
    <message>
        <source>a fraction has nothing below its line</source>
        <translation>bei einem Bruch steht nichts unter dem Strich</translation>
    </message>
    <message>
        <source>write it like 1/8</source>
        <translation>schreiben Sie ihn wie 1/8</translation>
    </message>
    <message>
        <source>&quot;{}&quot; does not begin with a number</source>
        <translation>&quot;{}&quot; beginnt nicht mit einer Zahl</translation>
    </message>
    <message>
        <source>write a number and a unit, like 1.5 kg</source>
        <translation>schreiben Sie eine Zahl und eine Einheit, etwa 12 kg</translation>
    </message>
    <message>
        <source>&quot;{}&quot; has more than one decimal point</source>
        <translation>&quot;{}&quot; hat mehr als ein Dezimalzeichen</translation>
    </message>
    <message>
        <source>write the number without marks between thousands</source>
        <translation>schreiben Sie die Zahl ohne Zeichen zwischen den Tausendern</translation>
    </message>
    <message>
        <source>&quot;{}&quot; can be read in two ways</source>
        <translation>&quot;{}&quot; lässt sich auf zwei Arten lesen</translation>
    </message>
    <message>
        <source>write {} or {}</source>
        <translation>schreiben Sie {} oder {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number that can be held</source>
        <translation>&quot;{}&quot; ist keine darstellbare Zahl</translation>
    </message>
    <message>
        <source>write a smaller number</source>
        <translation>schreiben Sie eine kleinere Zahl</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no unit known here</source>
        <translation>&quot;{}&quot; ist keine hier bekannte Einheit</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not the same in the United States and in Britain</source>
        <translation>&quot;{}&quot; ist in den Vereinigten Staaten und in Großbritannien nicht dasselbe</translation>
    </message>
    <message>
        <source>write US {} or imp {}</source>
        <translation>schreiben Sie US {} oder imp {}</translation>
    </message>
    <message>
        <source>a number has no unit</source>
        <translation>einer Zahl fehlt die Einheit</translation>
    </message>
    <message>
        <source>give each number its unit, like 3 lb 4 oz</source>
        <translation>geben Sie jeder Zahl ihre Einheit, etwa 3 lb 4 oz</translation>
    </message>
    <message>
        <source>the amount is negative</source>
        <translation>die Menge ist negativ</translation>
    </message>
    <message>
        <source>the parts do not go from the larger unit to the smaller</source>
        <translation>die Teile gehen nicht von der größeren zur kleineren Einheit</translation>
    </message>
    <message>
        <source>write it like 3 lb 4 oz</source>
        <translation>schreiben Sie es wie 3 lb 4 oz</translation>
    </message>
    <message>
        <source>the amount is too large</source>
        <translation>die Menge ist zu groß</translation>
    </message>
    <message>
        <source>there is more than one number</source>
        <translation>es ist mehr als eine Zahl</translation>
    </message>
    <message>
        <source>write one temperature, like 7 °C</source>
        <translation>schreiben Sie eine Temperatur, etwa 7 °C</translation>
    </message>
    <message>
        <source>the temperature is too large</source>
        <translation>die Temperatur ist zu hoch</translation>
    </message>
    <message>
        <source>the temperature lies under absolute zero</source>
        <translation>die Temperatur liegt unter dem absoluten Nullpunkt</translation>
    </message>
    <message>
        <source>it is above -273.15 °C</source>
        <translation>eine Temperatur über dem absoluten Nullpunkt</translation>
    </message>
    <message>
        <source>{} could not be computed: {}</source>
        <translation>{} ließ sich nicht berechnen: {}</translation>
    </message>
    <message>
        <source>this is an error of the program, not of the records; please report it with them</source>
        <translation>das ist ein Fehler des Programms, nicht der Einträge; bitte melden Sie ihn mit ihnen</translation>
    </message>
    <message>
        <source>this is larger than {} may be</source>
        <translation>das ist größer, als {} sein darf</translation>
    </message>
    <message>
        <source>there is no such folder of shipped data</source>
        <translation>diesen Ordner mitgelieferter Daten gibt es nicht</translation>
    </message>
    <message>
        <source>name it with --data or in WINTERLARDER_DATA</source>
        <translation>nennen Sie ihn mit --data oder in WINTERLARDER_DATA</translation>
    </message>
    <message>
        <source>{} is no time zone</source>
        <translation>{} ist keine Zeitzone</translation>
    </message>
    <message>
        <source>a name such as America/Halifax, UTC, or hours ahead of UTC such as +02:00</source>
        <translation>ein Name wie America/Halifax, UTC, oder Stunden vor UTC wie +02:00</translation>
    </message>
    <message>
        <source>--clock: the times of the log say themselves how far from UTC they are</source>
        <translation>--clock: Die Zeiten der Waagendaten sagen selbst, wie weit sie von UTC abweichen</translation>
    </message>
    <message>
        <source>--time-zone where days of another place are wanted</source>
        <translation>--time-zone, wo Tage eines anderen Ortes gewünscht sind</translation>
    </message>
    <message>
        <source>the weighing of {}: {}</source>
        <translation>die Wägung vom {}: {}</translation>
    </message>
    <message>
        <source>the feed of {}: {}</source>
        <translation>die Futtergabe vom {}: {}</translation>
    </message>
    <message>
        <source>the harvest of {}: {}</source>
        <translation>die Honigernte vom {}: {}</translation>
    </message>
    <message>
        <source>the line is too long to be a case</source>
        <translation>die Zeile ist zu lang für einen Fall</translation>
    </message>
    <message>
        <source>&quot;-&quot; is given more than once</source>
        <translation>&quot;-&quot; ist mehr als einmal angegeben</translation>
    </message>
    <message>
        <source>standard input can be read once</source>
        <translation>die Standardeingabe lässt sich nur einmal lesen</translation>
    </message>
    <message>
        <source>standard input cannot be read</source>
        <translation>die Standardeingabe lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>{} is left out of the plan of its yard: {}</source>
        <translation>{} ist aus dem Plan seines Standes ausgelassen: {}</translation>
    </message>
    <message>
        <source>which colony was not said</source>
        <translation>es ist nicht gesagt, welches Volk</translation>
    </message>
    <message>
        <source>--colony NAME</source>
        <translation>--colony NAME</translation>
    </message>
    <message>
        <source>there is no advice to act on: it cannot be said</source>
        <translation>es gibt keine Empfehlung, der zu folgen wäre: keine Aussage möglich</translation>
    </message>
    <message>
        <source>book advise tells why</source>
        <translation>book advise sagt, warum</translation>
    </message>
    <message>
        <source>{}: {}: its winter is followed: book follow tells how it goes</source>
        <translation>{}: {}: Sein Winter wird verfolgt: book follow sagt, wie er läuft</translation>
    </message>
    <message>
        <source>{}: no colony is living on {}</source>
        <translation>{}: Am {} lebt kein Volk</translation>
    </message>
    <message>
        <source>there is no table {}</source>
        <translation>es gibt keine Tabelle {}</translation>
    </message>
    <message>
        <source>what to export was not said</source>
        <translation>es ist nicht gesagt, was exportiert werden soll</translation>
    </message>
    <message>
        <source>--json for the whole book, or --table NAME for one table as CSV</source>
        <translation>--json für das ganze Stockbuch, oder --table NAME für eine Tabelle als CSV</translation>
    </message>
    <message>
        <source>--preview is for tables</source>
        <translation>--preview ist für Tabellen</translation>
    </message>
    <message>
        <source>a JSON document replaces the whole book</source>
        <translation>ein JSON-Dokument ersetzt das ganze Stockbuch</translation>
    </message>
    <message>
        <source>--count is below 1</source>
        <translation>--count ist kleiner als 1</translation>
    </message>
    <message>
        <source>how many steps to show</source>
        <translation>wie viele Schritte zu zeigen sind</translation>
    </message>
    <message>
        <source>book salvage, or restore a backup</source>
        <translation>book salvage, oder stellen Sie eine Sicherungskopie wieder her</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>es gibt nichts rückgängig zu machen</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>es gibt nichts wiederherzustellen</translation>
    </message>
    <message>
        <source>book story shows every step</source>
        <translation>book story zeigt jeden Schritt</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>name a book</source>
        <translation>nennen Sie ein Stockbuch</translation>
    </message>
    <message>
        <source>how the winter ended was not said</source>
        <translation>es ist nicht gesagt, wie der Winter ausging</translation>
    </message>
    <message>
        <source>--alive or --dead</source>
        <translation>--alive oder --dead</translation>
    </message>
    <message>
        <source>--boxes is {}</source>
        <translation>--boxes ist {}</translation>
    </message>
    <message>
        <source>{} boxes with the supers</source>
        <translation>{} Zargen mit den Honigräumen</translation>
    </message>
    <message>
        <source>there is a colony {} already, #{}</source>
        <translation>es gibt schon ein Volk {}, #{}</translation>
    </message>
    <message>
        <source>another name, such as the place where it stands</source>
        <translation>ein anderer Name, etwa der Platz, an dem es steht</translation>
    </message>
    <message>
        <source>where the yard is was said twice</source>
        <translation>es ist zweimal gesagt, wo der Stand liegt</translation>
    </message>
    <message>
        <source>one of --station ID, --place NAME, or --latitude D and --longitude D</source>
        <translation>eines von --station ID, --place NAME, oder --latitude D und --longitude D</translation>
    </message>
    <message>
        <source>there is no station {}</source>
        <translation>es gibt keine Station {}</translation>
    </message>
    <message>
        <source>where the yard is was not said</source>
        <translation>es ist nicht gesagt, wo der Stand liegt</translation>
    </message>
    <message>
        <source>--place NAME, --station ID, or --latitude D and --longitude D</source>
        <translation>--place NAME, --station ID, oder --latitude D und --longitude D</translation>
    </message>
    <message>
        <source>--covered-combs is {}, but {} combs are listed</source>
        <translation>--covered-combs ist {}, aber {} Waben sind angegeben</translation>
    </message>
    <message>
        <source>--covered-combs is {}, but the hive has {} places</source>
        <translation>--covered-combs ist {}, aber die Beute hat {} Plätze</translation>
    </message>
    <message>
        <source>a weighing is said in one way</source>
        <translation>eine Wägung wird auf eine Art angegeben</translation>
    </message>
    <message>
        <source>one of --gross KG, --lift KG [KG], --heft light|fair|heavy</source>
        <translation>eines von --gross KG, --lift KG [KG], --heft light|fair|heavy</translation>
    </message>
    <message>
        <source>a feed is said in one way</source>
        <translation>eine Futtergabe wird auf eine Art angegeben</translation>
    </message>
    <message>
        <source>one of --sugar KG, --syrup L, --fondant KG</source>
        <translation>eines von --sugar KG, --syrup L, --fondant KG</translation>
    </message>
    <message>
        <source>--fondant is given for another kind of feed</source>
        <translation>--fondant ist für eine andere Futterart angegeben</translation>
    </message>
    <message>
        <source>--kind fondant</source>
        <translation>--kind fondant</translation>
    </message>
    <message>
        <source>--syrup is given for another kind of feed</source>
        <translation>--syrup ist für eine andere Futterart angegeben</translation>
    </message>
    <message>
        <source>--kind syrup</source>
        <translation>--kind syrup</translation>
    </message>
    <message>
        <source>--ratio is {}</source>
        <translation>--ratio ist {}</translation>
    </message>
    <message>
        <source>A:B, sugar to water by mass, such as 3:2</source>
        <translation>A:B, Zucker zu Wasser nach Gewicht, etwa 3:2</translation>
    </message>
    <message>
        <source>--syrup is given without its ratio</source>
        <translation>--syrup ist ohne Mischung angegeben</translation>
    </message>
    <message>
        <source>--ratio A:B, sugar to water by mass</source>
        <translation>--ratio A:B, Zucker zu Wasser nach Gewicht</translation>
    </message>
    <message>
        <source>fondant without its amount</source>
        <translation>Futterteig ohne Menge</translation>
    </message>
    <message>
        <source>--fondant KG</source>
        <translation>--fondant KG</translation>
    </message>
    <message>
        <source>--latitude is outside -90 to 90</source>
        <translation>--latitude liegt nicht zwischen -90 und 90</translation>
    </message>
    <message>
        <source>degrees, north positive</source>
        <translation>Grad, Norden positiv</translation>
    </message>
    <message>
        <source>--longitude is outside -180 to 180</source>
        <translation>--longitude liegt nicht zwischen -180 und 180</translation>
    </message>
    <message>
        <source>degrees, east positive</source>
        <translation>Grad, Osten positiv</translation>
    </message>
    <message>
        <source>no command {}</source>
        <translation>kein Befehl {}</translation>
    </message>
    <message>
        <source>a whole number from {} to {}</source>
        <translation>eine ganze Zahl von {} bis {}</translation>
    </message>
    <message>
        <source>--hive is {}</source>
        <translation>--hive ist {}</translation>
    </message>
    <message>
        <source>an id that &quot;hive-formats&quot; lists</source>
        <translation>eine Kennung, die &quot;hive-formats&quot; nennt</translation>
    </message>
    <message>
        <source>no page {}</source>
        <translation>keine Seite {}</translation>
    </message>
    <message>
        <source>{} is {}, which is no number</source>
        <translation>{} ist {}, und das ist keine Zahl</translation>
    </message>
    <message>
        <source>a number from {} to {}</source>
        <translation>eine Zahl von {} bis {}</translation>
    </message>
    <message>
        <source>--sugar and --stores</source>
        <translation>--sugar und --stores</translation>
    </message>
    <message>
        <source>exactly one of the two</source>
        <translation>genau eines von beiden</translation>
    </message>
    <message>
        <source>--by is {}</source>
        <translation>--by ist {}</translation>
    </message>
    <message>
        <source>--shell is {}</source>
        <translation>--shell ist {}</translation>
    </message>
    <message>
        <source>--kind is {}</source>
        <translation>--kind ist {}</translation>
    </message>
    <message>
        <source>there is no key {}</source>
        <translation>es gibt keinen Schlüssel {}</translation>
    </message>
    <message>
        <source>--unit is {}</source>
        <translation>--unit ist {}</translation>
    </message>
    <message>
        <source>c or f</source>
        <translation>c oder f</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} oder {}</translation>
    </message>
    <message>
        <source>several places may be {}</source>
        <translation>mehrere Orte passen zu {}</translation>
    </message>
    <message>
        <source>say which, such as {}; or give latitude and longitude</source>
        <translation>sagen Sie, welcher, etwa {}; oder geben Sie Breite und Länge an</translation>
    </message>
    <message>
        <source>no other {} is known here, smaller places are not: if yours is another, name a larger town near it, or give latitude and longitude</source>
        <translation>ein anderes {} ist hier nicht bekannt, kleinere Orte fehlen: Ist Ihres ein anderes, nennen Sie einen größeren Ort in der Nähe, oder geben Sie Breite und Länge an</translation>
    </message>
    <message>
        <source>of that name too: {}</source>
        <translation>ebenfalls dieses Namens: {}</translation>
    </message>
    <message>
        <source>no climate station lies within {} km of {}</source>
        <translation>{2} hat im Umkreis von {1} km keine Klimastation</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>der Ort</translation>
    </message>
    <message>
        <source>the book has {} yards</source>
        <translation>das Stockbuch hat {} Stände</translation>
    </message>
    <message>
        <source>book add-yard</source>
        <translation>book add-yard</translation>
    </message>
    <message>
        <source>--yard NAME</source>
        <translation>--yard NAME</translation>
    </message>
    <message>
        <source>--most is {}</source>
        <translation>--most ist {}</translation>
    </message>
    <message>
        <source>comma, semicolon, tab or the sign itself</source>
        <translation>comma, semicolon, tab oder das Zeichen selbst</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>comma oder point</translation>
    </message>
    <message>
        <source>kg, g or lb</source>
        <translation>kg, g oder lb</translation>
    </message>
    <message>
        <source>dmy, mdy or ymd</source>
        <translation>dmy, mdy oder ymd</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>name a file</source>
        <translation>nennen Sie eine Datei</translation>
    </message>
    <message>
        <source>cannot be opened</source>
        <translation>lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>no station {} and {}</source>
        <translation>keine Station {}, und {}</translation>
    </message>
    <message>
        <source>a climate of your own</source>
        <translation>ein eigenes Klima</translation>
    </message>
    <message>
        <source>a station and --case</source>
        <translation>eine Station und --case</translation>
    </message>
    <message>
        <source>--winter is {}</source>
        <translation>--winter ist {}</translation>
    </message>
    <message>
        <source>a year from {} to {}</source>
        <translation>ein Jahr von {} bis {}</translation>
    </message>
    <message>
        <source>{}, as --near LAT,LON</source>
        <translation>{}, als --near LAT,LON</translation>
    </message>
    <message>
        <source>--near is {}</source>
        <translation>--near ist {}</translation>
    </message>
    <message>
        <source>LAT,LON in degrees, north and east positive, such as 44.9,-64.2, or the name of a place</source>
        <translation>LAT,LON in Grad, Nord und Ost positiv, etwa 44.9,-64.2, oder der Name eines Ortes</translation>
    </message>
    <message>
        <source>no source {}</source>
        <translation>keine Quelle {}</translation>
    </message>
    <message>
        <source>an id that &quot;sources&quot; lists</source>
        <translation>eine Kennung, die &quot;sources&quot; nennt</translation>
    </message>
    <message>
        <source>see CASE FILES in the manual</source>
        <translation>siehe CASE FILES im Handbuch</translation>
    </message>
    <message>
        <source>nothing tells how many bees there are</source>
        <translation>nichts sagt, wie viele Bienen es sind</translation>
    </message>
    <message>
        <source>bees with count, covered_combs or seams</source>
        <translation>Bienen mit count, covered_combs oder seams</translation>
    </message>
    <message>
        <source>there are no bees</source>
        <translation>es sind keine Bienen da</translation>
    </message>
    <message>
        <source>a colony with bees</source>
        <translation>ein Volk mit Bienen</translation>
    </message>
    <message>
        <source>no season can be derived for the place</source>
        <translation>für den Ort lässt sich kein Jahreslauf ableiten</translation>
    </message>
    <message>
        <source>the dates buildup and forage in the part season</source>
        <translation>die Tage buildup und forage im Teil season</translation>
    </message>
    <message>
        <source>as_of lies outside the model&apos;s season</source>
        <translation>as_of liegt außerhalb der Zeit, für die das Modell gilt</translation>
    </message>
    <message>
        <source>a day of the season</source>
        <translation>ein Tag in dieser Zeit</translation>
    </message>
    <message>
        <source>--from {} is before the look on {}</source>
        <translation>--from {} liegt vor der Durchsicht vom {}</translation>
    </message>
    <message>
        <source>a day from the look on</source>
        <translation>ein Tag ab der Durchsicht</translation>
    </message>
    <message>
        <source>--to {} is after the last day the model runs to</source>
        <translation>--to {} liegt nach dem letzten Tag, bis zu dem das Modell rechnet</translation>
    </message>
    <message>
        <source>a day up to {}</source>
        <translation>ein Tag bis {}</translation>
    </message>
    <message>
        <source>--to {} is before --from {}</source>
        <translation>--to {} liegt vor --from {}</translation>
    </message>
    <message>
        <source>a later day</source>
        <translation>ein späterer Tag</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>choose another folder</source>
        <translation>wählen Sie einen anderen Ordner</translation>
    </message>
    <message>
        <source>the demo book is not there</source>
        <translation>das Stockbuch des Beispielstands fehlt</translation>
    </message>
    <message>
        <source>make it with demo/make-book</source>
        <translation>legen Sie es mit demo/make-book an</translation>
    </message>
    <message>
        <source>name a folder that can be</source>
        <translation>nennen Sie einen Ordner, bei dem es geht</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>name another</source>
        <translation>nennen Sie einen anderen</translation>
    </message>
    <message>
        <source>the book this was meant for is no longer open, and another was not touched</source>
        <translation>das Stockbuch, für das dies bestimmt war, ist nicht mehr offen, und ein anderes wurde nicht angerührt</translation>
    </message>
    <message>
        <source>open that book again and enter it there</source>
        <translation>öffnen Sie jenes Stockbuch noch einmal und tragen Sie es dort ein</translation>
    </message>
    <message>
        <source>{} is no language this program speaks</source>
        <translation>{} ist keine Sprache, die dieses Programm spricht</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::AnswerPanel</name>
    <message>
        <source>Verdict</source>
        <translation>Empfehlung</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>What to winter on</source>
        <translation>Womit überwintert werden soll</translation>
    </message>
    <message>
        <source>Another look</source>
        <translation>Noch einmal nachsehen</translation>
    </message>
    <message>
        <source>&amp;Why?</source>
        <translation>&amp;Warum?</translation>
    </message>
    <message>
        <source>Why? Reasons and cautions with their sources</source>
        <translation>Warum? Gründe und Vorsicht mit ihren Quellen</translation>
    </message>
    <message>
        <source>Make it the &amp;plan</source>
        <translation>Zum &amp;Plan machen</translation>
    </message>
    <message>
        <source>✓ It is the plan</source>
        <translation>✓ Ist der Plan</translation>
    </message>
    <message>
        <source>Its visits stand on the page Feeding; Undo takes it back</source>
        <translation>Seine Gänge stehen auf der Seite Füttern; Rückgängig nimmt es zurück</translation>
    </message>
    <message>
        <source>Keeps this advice in the book with all it was computed from, and plans its visits</source>
        <translation>Hält diese Empfehlung mit allem, woraus sie gerechnet ist, im Stockbuch fest und plant ihre Termine</translation>
    </message>
    <message>
        <source>The plan of the yard is still being worked out; it may change this advice</source>
        <translation>Der Plan für den Stand wird noch gerechnet; er kann diese Empfehlung ändern</translation>
    </message>
    <message>
        <source>This could not be worked out.</source>
        <translation>Das ließ sich nicht berechnen.</translation>
    </message>
    <message>
        <source>These records disagree; put one of them right.</source>
        <translation>Diese Einträge widersprechen sich; berichtigen Sie einen davon.</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>The winters are being simulated from what you have written.</source>
        <translation>Aus Ihren Einträgen werden die Winter durchgerechnet.</translation>
    </message>
    <message>
        <source>Chances</source>
        <translation>Wie wahrscheinlich</translation>
    </message>
    <message>
        <source>How this winter goes is being worked out from what was weighed and seen.</source>
        <translation>Wie dieser Winter läuft, wird aus dem Gewogenen und Gesehenen berechnet.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::AskRow</name>
    <message>
        <source>%1 %2</source>
        <comment>question, answer</comment>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::AskableLabel</name>
    <message>
        <source>Click a number to see how it was got</source>
        <translation>Klicken Sie auf eine Zahl, um zu sehen, wie sie zustande kam</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BackupsDialog</name>
    <message>
        <source>Backups</source>
        <translation>Sicherungskopien</translation>
    </message>
    <message>
        <source>A backup is made at the first edit of a day and before anything large; the last ten are kept beside the book. Restoring one can be undone.</source>
        <translation>Eine Sicherungskopie entsteht bei der ersten Änderung eines Tages und vor allem Größeren; die letzten zehn liegen neben dem Stockbuch. Eine wiederherzustellen lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>Backups, newest first</source>
        <translation>Sicherungskopien, neueste zuerst</translation>
    </message>
    <message>
        <source>Make one &amp;now</source>
        <translation>&amp;Jetzt eine anlegen</translation>
    </message>
    <message>
        <source>&amp;Restore it</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message>
        <source>There is none yet; the first edit of a day makes one.</source>
        <translation>Es gibt noch keine; die erste Änderung eines Tages legt eine an.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::Banner</name>
    <message>
        <source>Show all</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>Something is wrong</source>
        <translation>Etwas stimmt nicht</translation>
    </message>
    <message>
        <source>Notice</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close this notice: %1</source>
        <translation>Diesen Hinweis schließen: %1</translation>
    </message>
    <message>
        <source>Show less</source>
        <translation>Weniger zeigen</translation>
    </message>
    <message>
        <source>Show all %1</source>
        <translation>Alle %1 zeigen</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BeesField</name>
    <message>
        <source>How the bees were counted</source>
        <translation>Wie die Bienen gezählt wurden</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>besetzte Wabengassen</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>Bienen</translation>
    </message>
    <message>
        <source>Number of %{combs}, seams or bees</source>
        <translation>Zahl der Waben, Wabengassen oder Bienen</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>besetzte Waben</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BookActions</name>
    <message>
        <source>somebody</source>
        <translation>jemand</translation>
    </message>
    <message>
        <source>%1 on %2, since %3</source>
        <translation>%1 an %2, seit %3</translation>
    </message>
    <message>
        <source>This book was opened for reading only.</source>
        <translation>Dieses Stockbuch wurde nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>This book lies where nothing can be written, so it can only be read. Copy it to where it can be changed.</source>
        <translation>Dieses Stockbuch liegt, wo nichts geschrieben werden kann; es lässt sich daher nur lesen. Kopieren Sie es dorthin, wo es geändert werden kann.</translation>
    </message>
    <message>
        <source>A newer version of Winterlarder made this book; this one can only read it.</source>
        <translation>Eine neuere Version von Winterlarder hat dieses Stockbuch geschrieben; diese hier kann es nur lesen.</translation>
    </message>
    <message>
        <source>The disk is full, so this book can only be read. Make room and try again.</source>
        <translation>Der Datenträger ist voll, daher lässt sich dieses Stockbuch nur lesen. Schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The file of this book has a second name (a hard link), so it can only be read: a change under one name could not be taken back under the other. Copy it, or remove the other name.</source>
        <translation>Die Datei dieses Stockbuchs hat einen zweiten Namen (einen Hardlink), daher lässt es sich nur lesen: Eine Änderung unter dem einen Namen ließe sich unter dem anderen nicht rückgängig machen. Kopieren Sie es oder entfernen Sie den anderen Namen.</translation>
    </message>
    <message>
        <source>This book is open elsewhere (%1), so here it can only be read.</source>
        <translation>Dieses Stockbuch ist anderswo geöffnet (%1), daher lässt es sich hier nur lesen.</translation>
    </message>
    <message>
        <source>This could not be written down; the book is as it was before.
%1</source>
        <translation>Das ließ sich nicht eintragen; das Stockbuch ist wie vorher.
%1</translation>
    </message>
    <message>
        <source>Your book is kept in %1. Everything you enter is in it at once; there is nothing to save.</source>
        <translation>Ihr Stockbuch liegt in %1. Alles, was Sie eintragen, steht sofort darin; zu speichern ist nichts.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Books and case files (*.larder *.json);;All files (*)</source>
        <translation>Stockbücher und Falldateien (*.larder *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Noch einmal versuchen</translation>
    </message>
    <message>
        <source>Copy it…</source>
        <translation>Kopieren…</translation>
    </message>
    <message>
        <source>It is closed there: take over</source>
        <translation>Dort ist es geschlossen: übernehmen</translation>
    </message>
    <message>
        <source>This yard is here to be tried out: what you change is kept only until the window closes.</source>
        <translation>Dieser Stand ist zum Ausprobieren da: Was Sie ändern, bleibt nur, bis das Fenster geschlossen wird.</translation>
    </message>
    <message>
        <source>Keep it as a book…</source>
        <translation>Als Stockbuch behalten…</translation>
    </message>
    <message>
        <source>Salvage what is readable…</source>
        <translation>Lesbares retten…</translation>
    </message>
    <message>
        <source>The book could not be opened.
%1</source>
        <translation>Das Stockbuch ließ sich nicht öffnen.
%1</translation>
    </message>
    <message>
        <source>%1 salvaged%2</source>
        <translation>%1 gerettet%2</translation>
    </message>
    <message>
        <source>Salvage into a new book</source>
        <translation>In ein neues Stockbuch retten</translation>
    </message>
    <message>
        <source>Books (*.larder)</source>
        <translation>Stockbücher (*.larder)</translation>
    </message>
    <message>
        <source>Reading what can still be read of %1…</source>
        <translation>Es wird gelesen, was von %1 noch zu lesen ist…</translation>
    </message>
    <message>
        <source>Everything in the damaged book was saved into this one; the damaged file was not touched.</source>
        <translation>Alles aus dem beschädigten Stockbuch wurde in dieses gerettet; die beschädigte Datei blieb unberührt.</translation>
    </message>
    <message>
        <source>What could be read is in this book; the damaged file was not touched. Lost:
%1</source>
        <translation>Was zu lesen war, steht in diesem Stockbuch; die beschädigte Datei blieb unberührt. Verloren:
%1</translation>
    </message>
    <message>
        <source>Copy the book to</source>
        <translation>Stockbuch kopieren nach</translation>
    </message>
    <message>
        <source>The book was copied to %1.</source>
        <translation>Das Stockbuch wurde nach %1 kopiert.</translation>
    </message>
    <message>
        <source>Open the copy</source>
        <translation>Kopie öffnen</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importieren</translation>
    </message>
    <message>
        <source>Tables and whole books (*.csv *.json);;All files (*)</source>
        <translation>Tabellen und ganze Stockbücher (*.csv *.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Everything written down is in %1. Steps that can be undone, and photographs, are not in it.</source>
        <translation>Alles Eingetragene steht in %1. Schritte, die sich rückgängig machen lassen, und Fotos sind nicht darin.</translation>
    </message>
    <message>
        <source>The book was not written out.
%1</source>
        <translation>Das Stockbuch wurde nicht exportiert.
%1</translation>
    </message>
    <message>
        <source>Nothing was written: %1 holds %2 already. Choose an empty folder.</source>
        <translation>Es wurde nichts geschrieben: %1 enthält schon %2. Wählen Sie einen leeren Ordner.</translation>
    </message>
    <message numerus="yes">
        <source>%n tables were written into %1.</source>
        <translation>
            <numerusform>Eine Tabelle wurde nach %1 geschrieben.</numerusform>
            <numerusform>%n Tabellen wurden nach %1 geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>The tables were not all written.
%1</source>
        <translation>Nicht alle Tabellen wurden geschrieben.
%1</translation>
    </message>
    <message>
        <source>The book as one document</source>
        <translation>Stockbuch als ein Dokument</translation>
    </message>
    <message>
        <source>Documents (*.json)</source>
        <translation>Dokumente (*.json)</translation>
    </message>
    <message>
        <source>A folder for the tables</source>
        <translation>Ordner für die Tabellen</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BoxesField</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>One more bo&amp;x on top</source>
        <translation>Noch e&amp;ine Zarge obenauf</translation>
    </message>
    <message>
        <source>super</source>
        <translation>Honigraum</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>own measures</source>
        <translation>eigene Maße</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>%{combs}: </source>
        <translation>Waben: </translation>
    </message>
    <message>
        <source>Format of box %1 from the floor</source>
        <translation>Beutentyp der Zarge %1 von unten</translation>
    </message>
    <message>
        <source>%{Combs} in box %1</source>
        <translation>Waben in Zarge %1</translation>
    </message>
    <message>
        <source>Box %1 is a super</source>
        <translation>Zarge %1 ist ein Honigraum</translation>
    </message>
    <message>
        <source>Take box %1 off</source>
        <translation>Zarge %1 abnehmen</translation>
    </message>
    <message>
        <source>Box %1 from the floor, %2</source>
        <translation>Zarge %1 von unten, %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColoniesField</name>
    <message>
        <source>How many colonies</source>
        <translation>Wie viele Völker</translation>
    </message>
    <message>
        <source>How &amp;many:</source>
        <translation>&amp;Wie viele:</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Volk %1</translation>
    </message>
    <message>
        <source>Name of colony %1</source>
        <translation>Name von Volk %1</translation>
    </message>
    <message>
        <source>boxes: </source>
        <translation>Zargen: </translation>
    </message>
    <message>
        <source>Boxes of colony %1 in winter</source>
        <translation>Zargen von Volk %1 im Winter</translation>
    </message>
    <message>
        <source>Colony %1 needs a name.</source>
        <translation>Volk %1 braucht einen Namen.</translation>
    </message>
    <message>
        <source>Two colonies are called %1; give each a name of its own.</source>
        <translation>Zwei Völker heißen %1; geben Sie jedem einen eigenen Namen.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColonyView</name>
    <message>
        <source>Pages of the colony</source>
        <translation>Seiten des Volkes</translation>
    </message>
    <message>
        <source>&amp;In the hive</source>
        <translation>&amp;In der Beute</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>&amp;Fütterung</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>Auf der &amp;Waage</translation>
    </message>
    <message>
        <source>S&amp;tory</source>
        <translation>Stock&amp;karte</translation>
    </message>
    <message>
        <source>Wh&amp;at if</source>
        <translation>Was wäre, we&amp;nn</translation>
    </message>
    <message>
        <source>This advice is the plan now: its visits stand on the page Feeding, to be ticked off or skipped.</source>
        <translation>Diese Empfehlung ist jetzt der Plan: Ihre Termine stehen auf der Seite Fütterung, zum Abhaken oder Auslassen.</translation>
    </message>
    <message>
        <source>The visits of your plan are not to be made now: %1.</source>
        <translation>Die Termine Ihres Plans sind jetzt nicht auszuführen: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n visits of your plan are still to come (page Feeding).</source>
        <translation>
            <numerusform>Ein Termin Ihres Plans steht noch bevor (Seite Fütterung).</numerusform>
            <numerusform>%n Termine Ihres Plans stehen noch bevor (Seite Fütterung).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n planned visits are past and neither ticked off nor skipped (page Feeding); until then they count as not made.</source>
        <translation>
            <numerusform>Ein geplanter Termin ist vorbei und weder abgehakt noch ausgelassen (Seite Fütterung); bis dahin gilt er als nicht ausgeführt.</numerusform>
            <numerusform>%n geplante Termine sind vorbei und weder abgehakt noch ausgelassen (Seite Fütterung); bis dahin gelten sie als nicht ausgeführt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%{Comb} b&amp;y %{comb}</source>
        <translation>Wa&amp;be für Wabe</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombDrawing</name>
    <message>
        <source>The combs of the hive</source>
        <translation>Die Waben der Beute</translation>
    </message>
    <message>
        <source>No comb is recorded</source>
        <translation>Keine Wabe ist eingetragen</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>Zarge %1</translation>
    </message>
    <message>
        <source>super</source>
        <translation>Honigraum</translation>
    </message>
    <message>
        <source>Share of the comb: %1</source>
        <translation>Anteil der Wabe: %1</translation>
    </message>
    <message>
        <source>the %{comb} before</source>
        <translation>die Wabe davor</translation>
    </message>
    <message>
        <source>the next %{comb}</source>
        <translation>die nächste Wabe</translation>
    </message>
    <message>
        <source>the %{comb} above or below</source>
        <translation>die Wabe darüber oder darunter</translation>
    </message>
    <message>
        <source>the first or the last %{comb}</source>
        <translation>die erste oder die letzte Wabe</translation>
    </message>
    <message>
        <source>holds what the %{comb} entered last holds, and goes on to the next</source>
        <translation>enthält dasselbe wie die zuletzt eingetragene Wabe; weiter zur nächsten</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombFields</name>
    <message>
        <source>Share of the comb: %1</source>
        <translation>Anteil der Wabe: %1</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Share of the comb that is built</source>
        <translation>Ausgebauter Anteil der Wabe</translation>
    </message>
    <message>
        <source>built</source>
        <translation>ausgebaut</translation>
    </message>
    <message>
        <source>Measure on a photo&amp;graph…</source>
        <translation>Auf einem Foto &amp;messen…</translation>
    </message>
    <message>
        <source>How the comb was seen</source>
        <translation>Wie die Wabe gesehen wurde</translation>
    </message>
    <message>
        <source>One face, a window, or not at all: the less was seen, the wider the spread</source>
        <translation>Eine Seite, durch ein Sichtfenster oder gar nicht: Je weniger gesehen wurde, desto weiter die Spanne</translation>
    </message>
    <message>
        <source>both faces</source>
        <translation>beide Seiten</translation>
    </message>
    <message>
        <source>one face</source>
        <translation>eine Seite</translation>
    </message>
    <message>
        <source>through a window</source>
        <translation>durch ein Sichtfenster</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>nicht angesehen</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>Bar width</source>
        <translation>Leistenbreite</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Leiste</translation>
    </message>
    <message>
        <source>Super, %{comb} %1:</source>
        <translation>Honigraum, Wabe %1:</translation>
    </message>
    <message>
        <source>Box %1, %{comb} %2:</source>
        <translation>Zarge %1, Wabe %2:</translation>
    </message>
    <message>
        <source>%{Comb} %1:</source>
        <translation>Wabe %1:</translation>
    </message>
    <message>
        <source>empty %1, measured</source>
        <translation>leer %1, gemessen</translation>
    </message>
    <message>
        <source>empty %1</source>
        <translation>leer %1</translation>
    </message>
    <message>
        <source>holds %1</source>
        <translation>enthält %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombPortrait</name>
    <message>
        <source>The comb of the row, drawn</source>
        <translation>Die Wabe der Zeile, gezeichnet</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombQuickForm</name>
    <message>
        <source>Share of those stores that is capped</source>
        <translation>Verdeckelter Anteil dieses Futters</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>of it cappe&amp;d</source>
        <translation>davon verde&amp;ckelt</translation>
    </message>
    <message>
        <source>%{Combs} full of stores</source>
        <translation>Volle Futterwaben</translation>
    </message>
    <message>
        <source>%{Combs} half full of stores</source>
        <translation>Halb volle Futterwaben</translation>
    </message>
    <message>
        <source>%{combs} f&amp;ull</source>
        <translation>Waben vo&amp;ll</translation>
    </message>
    <message>
        <source>%{combs} half fu&amp;ll</source>
        <translation>Waben halb v&amp;oll</translation>
    </message>
    <message>
        <source>A count is good to about %1, a look at both faces of each %{comb} to %2. Empty comb for feed, and %{combs} to take, are only known from a look.</source>
        <translation>Zählen ist auf etwa %1 genau, beide Seiten jeder Wabe anzusehen auf %2. Wie viel Leerwabe für Futter da ist und welche Waben geerntet werden können, zeigt nur die Durchsicht.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombStrip</name>
    <message>
        <source>The hive from above</source>
        <translation>Die Beute von oben</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs}, the lowest box %1 from side to side</source>
        <translation>
            <numerusform>eine Wabe, die unterste Zarge %1 von Seite zu Seite</numerusform>
            <numerusform>%n Waben, die unterste Zarge %1 von Seite zu Seite</numerusform>
        </translation>
    </message>
    <message>
        <source>super</source>
        <translation>Honigraum</translation>
    </message>
    <message>
        <source>entrance</source>
        <translation>Flugloch</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>Zarge %1</translation>
    </message>
    <message>
        <source>%1, bar %2</source>
        <translation>%1, Leiste %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombTableModel</name>
    <message>
        <source>super, %{comb} %1</source>
        <translation>Honigraum, Wabe %1</translation>
    </message>
    <message>
        <source>box %1, %{comb} %2</source>
        <translation>Zarge %1, Wabe %2</translation>
    </message>
    <message>
        <source>%{comb} %1</source>
        <translation>Wabe %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>bread</source>
        <translation>Brot</translation>
    </message>
    <message>
        <source>faces</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Leiste</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>gefüttert</translation>
    </message>
    <message>
        <source>Share of the built comb that is %1, both faces together</source>
        <translation>Anteil der ausgebauten Wabe: %1, beide Seiten zusammen</translation>
    </message>
    <message>
        <source>Where the %{comb} hangs: counted from the left, seen from behind, or from the entrance of a long hive</source>
        <translation>Wo die Wabe hängt: von links gezählt, von hinten gesehen, oder vom Flugloch einer Trogbeute aus</translation>
    </message>
    <message>
        <source>What is left of the built comb when all else is taken off</source>
        <translation>Was von der ausgebauten Wabe bleibt, wenn alles andere abgezogen ist</translation>
    </message>
    <message>
        <source>How much of the frame, or below the bar, is comb</source>
        <translation>Wie viel vom Rähmchen oder unter der Leiste Wabe ist</translation>
    </message>
    <message>
        <source>Faces that were looked at; the fewer, the wider the spread</source>
        <translation>Angesehene Seiten; je weniger, desto weiter die Spanne</translation>
    </message>
    <message>
        <source>From the middle of this %{comb} to the middle of the next; thicker combs hold more</source>
        <translation>Von der Mitte dieser Wabe bis zur Mitte der nächsten; dickere Waben fassen mehr</translation>
    </message>
    <message>
        <source>This %{comb} took syrup: what is in it is for the bees alone</source>
        <translation>Diese Wabe nahm Zuckerwasser auf: Was darin ist, gehört allein den Bienen</translation>
    </message>
    <message>
        <source>Brood was reared in it for years, so its cells hold less</source>
        <translation>Darin wurde jahrelang gebrütet, daher fassen ihre Zellen weniger</translation>
    </message>
    <message>
        <source>Honey and nectar in the %{comb}; in brackets eight in ten</source>
        <translation>Honig und Nektar in der Wabe; in Klammern acht von zehn</translation>
    </message>
    <message>
        <source>%{comb}</source>
        <translation>Wabe</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>built</source>
        <translation>ausgebaut</translation>
    </message>
    <message>
        <source>faces seen</source>
        <translation>gesehene Seiten</translation>
    </message>
    <message>
        <source>bar width</source>
        <translation>Leistenbreite</translation>
    </message>
    <message>
        <source>took syrup</source>
        <translation>nahm Zuckerwasser auf</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>Altwabe</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>Honig</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombTablePage</name>
    <message>
        <source>The look as a table, a row a comb</source>
        <translation>Die Durchsicht als Tabelle, eine Zeile je Wabe</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CurvePlot</name>
    <message>
        <source>Temperatures of the year at this place</source>
        <translation>Temperaturen des Jahres an diesem Ort</translation>
    </message>
    <message>
        <source>coldest day of the year %1 on average</source>
        <translation>kältester Tag des Jahres im Mittel %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::DayField</name>
    <message>
        <source>Calendar: %1</source>
        <translation>Kalender: %1</translation>
    </message>
    <message>
        <source>Choose the day from a calendar (Alt and the down arrow)</source>
        <translation>Den Tag in einem Kalender wählen (Alt und Pfeil nach unten)</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d. MMMM</translation>
    </message>
    <message>
        <source>the next day, or the day before</source>
        <translation>der nächste Tag oder der davor</translation>
    </message>
    <message>
        <source>a month later or earlier</source>
        <translation>ein Monat später oder früher</translation>
    </message>
    <message>
        <source>opens the calendar</source>
        <translation>öffnet den Kalender</translation>
    </message>
    <message>
        <source>takes what was typed</source>
        <translation>übernimmt, was eingegeben wurde</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::DoubtBar</name>
    <message>
        <source>A question about what was typed</source>
        <translation>Eine Frage zu dem, was eingegeben wurde</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>Es ist %1</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>Es stimmt so</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::EntryForm</name>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>W&amp;rite down</source>
        <translation>Eintra&amp;gen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FeedingPage</name>
    <message>
        <source>%1 of white sugar into %2 of water: %3 of syrup, %4 by mass</source>
        <translation>%1 weißer Zucker auf %2 Wasser: %3 Zuckerwasser, %4 nach Gewicht</translation>
    </message>
    <message>
        <source>%1 of fondant, touching the cluster</source>
        <translation>%1 Futterteig, der die Traube berührt</translation>
    </message>
    <message>
        <source>Thin enough to take quickly: %1 days with more than %2 at their warmest are usual before the last day, time to ripen it.</source>
        <translation>Noch dünn genug, um schnell abgenommen zu werden: Vor dem letzten Tag sind gewöhnlich %1 Tage mit mehr als %2 zu erwarten, Zeit genug zum Eindicken.</translation>
    </message>
    <message>
        <source>Thick, because only %1 days with more than %2 at their warmest are usual before the last day: less water to drive off.</source>
        <translation>Dick, weil vor dem letzten Tag gewöhnlich nur %1 Tage mit mehr als %2 zu erwarten sind: Es ist weniger Wasser auszutreiben.</translation>
    </message>
    <message>
        <source>Nothing liquid after %1: what is taken later no longer ripens.</source>
        <translation>Nichts Flüssiges nach dem %1: Was später abgenommen wird, wird nicht mehr reif.</translation>
    </message>
    <message>
        <source>There is no empty comb for more: take a full %{comb} out, or add drawn comb, before feeding on.</source>
        <translation>Für mehr ist keine Leerwabe da: Nehmen Sie eine volle Wabe heraus oder hängen Sie ausgebaute dazu, bevor Sie weiterfüttern.</translation>
    </message>
    <message>
        <source>It is too late for syrup; fondant instead.</source>
        <translation>Für Zuckerwasser ist es zu spät; stattdessen Futterteig.</translation>
    </message>
    <message>
        <source>So many bees cannot take all of it as syrup in time; the rest is given as fondant.</source>
        <translation>So viele Bienen können nicht alles rechtzeitig als Zuckerwasser abnehmen; den Rest geben Sie als Futterteig.</translation>
    </message>
    <message>
        <source>Part of it comes later than is best: begin at once.</source>
        <translation>Ein Teil kommt später, als am besten wäre: Beginnen Sie sofort.</translation>
    </message>
    <message>
        <source>Thick syrup in small portions of %1 might still be taken, but may stay open.</source>
        <translation>Dickes Zuckerwasser in kleinen Gaben von %1 wird vielleicht noch abgenommen, kann aber offen bleiben.</translation>
    </message>
    <message>
        <source>On the coldest likely night up to %1 of 100 parts of the sugar may set as crystals: warm the syrup, give it in small portions.</source>
        <translation>In der kältesten Nacht, mit der zu rechnen ist, können bis zu %1 von 100 Teilen des Zuckers auskristallisieren: Wärmen Sie das Zuckerwasser und geben Sie es in kleinen Gaben.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>Visits, by day</source>
        <translation>Termine nach Tagen</translation>
    </message>
    <message>
        <source>What was fed, and visits planned</source>
        <translation>Was gefüttert wurde, und geplante Termine</translation>
    </message>
    <message>
        <source>Nothing was fed yet. What you give, and the visits of a plan you made yours, stand here.</source>
        <translation>Noch wurde nichts gefüttert. Was Sie geben und die Termine eines Plans, den Sie übernehmen, stehen dann hier.</translation>
    </message>
    <message>
        <source>Fe&amp;d…</source>
        <translation>Gefü&amp;ttert…</translation>
    </message>
    <message>
        <source>Visit &amp;made</source>
        <translation>Termin er&amp;ledigt</translation>
    </message>
    <message>
        <source>S&amp;kip the visit</source>
        <translation>Termin a&amp;uslassen</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Wird berechnet…</translation>
    </message>
    <message>
        <source>Whether to feed cannot be said yet. Once it can, the recipe, the visits and the last day stand here.</source>
        <translation>Ob zu füttern ist, lässt sich noch nicht sagen. Sobald es geht, stehen hier Rezept, Termine und letzter Tag.</translation>
    </message>
    <message>
        <source>No feeding is needed. If that changes, the recipe, the visits and the last day stand here.</source>
        <translation>Füttern ist nicht nötig. Wenn sich das ändert, stehen hier Rezept, Termine und letzter Tag.</translation>
    </message>
    <message>
        <source>Only if it is wintered alone after all; better to unite it.</source>
        <translation>Nur falls es doch allein überwintern soll; besser ist es, das Volk zu vereinigen.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FindDialog</name>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation>Wonach gesucht wird</translation>
    </message>
    <message>
        <source>a colony, a note, an entry, a place, a source…</source>
        <translation>ein Volk, eine Notiz, ein Eintrag, ein Ort, eine Quelle…</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Type some letters of what you look for.</source>
        <translation>Geben Sie einige Buchstaben dessen ein, was Sie suchen.</translation>
    </message>
    <message>
        <source>Nothing holds these letters.</source>
        <translation>Nichts enthält diese Buchstaben.</translation>
    </message>
    <message numerus="yes">
        <source>%n found. Enter shows what is chosen.</source>
        <translation>
            <numerusform>Ein Treffer. Die Eingabetaste zeigt ihn.</numerusform>
            <numerusform>%n Treffer. Die Eingabetaste zeigt den gewählten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>More than %n; type more letters.</source>
        <translation>
            <numerusform>Mehr als einer; geben Sie weitere Buchstaben ein.</numerusform>
            <numerusform>Mehr als %n; geben Sie weitere Buchstaben ein.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 – %3</source>
        <translation>%1: %2 – %3</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FollowPanel</name>
    <message>
        <source>How the winter goes</source>
        <translation>Wie der Winter läuft</translation>
    </message>
    <message>
        <source>Broken lines: what eighty of a hundred winters left, as forecast in autumn. Band: what eighty of a hundred that fit leave from today. Points: what was weighed, as stores, with eighty in a hundred odds. Dotted: the reserve; upright lines: today and the day spring forage starts.</source>
        <translation>Gestrichelt: was achtzig von hundert Wintern nach der Prognose vom Herbst übrig ließen. Bereich: was achtzig von hundert passenden von heute an übrig lassen. Punkte: was gewogen wurde, als Futter gerechnet, mit der Spanne von achtzig aus hundert. Gepunktet: die Sicherheitsreserve; senkrechte Linien: heute und der Beginn der Frühtracht.</translation>
    </message>
    <message>
        <source>Following the winter…</source>
        <translation>Der Winter wird verfolgt…</translation>
    </message>
    <message>
        <source>What was seen since autumn is being held against the simulated winters.</source>
        <translation>Was seit dem Herbst gesehen wurde, wird mit den durchgerechneten Wintern verglichen.</translation>
    </message>
    <message>
        <source>This winter cannot be followed yet.</source>
        <translation>Dieser Winter lässt sich noch nicht verfolgen.</translation>
    </message>
    <message>
        <source>This winter is still to be decided.</source>
        <translation>Über diesen Winter ist noch zu entscheiden.</translation>
    </message>
    <message>
        <source>From the day after the decision on, every weighing and glance is held against its forecast here.</source>
        <translation>Vom Tag nach der Entscheidung an wird hier jede Wägung und jeder kurze Blick mit der Prognose verglichen.</translation>
    </message>
    <message>
        <source>On the way into winter: about %1 left, where the forecast expected %2.</source>
        <translation>Auf dem Weg in den Winter: noch etwa %1 übrig; die Prognose erwartete %2.</translation>
    </message>
    <message>
        <source>Until winter begins what to do is said above, from what is known today; then it is said here too.</source>
        <translation>Bis zum Winterbeginn steht oben, was zu tun ist, nach dem, was heute bekannt ist; danach auch hier.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FollowPlot</name>
    <message>
        <source>Forecast of autumn, forecast of now, and what was weighed</source>
        <translation>Prognose vom Herbst, Prognose von jetzt und was gewogen wurde</translation>
    </message>
    <message>
        <source>Points: %1</source>
        <translation>Punkte: %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FormatField</name>
    <message>
        <source>comb %1 by %2</source>
        <translation>Wabe %1 mal %2</translation>
    </message>
    <message>
        <source>%1, one room of %2 %{combs}</source>
        <translation>%1, ein Raum mit %2 Waben</translation>
    </message>
    <message>
        <source>%1, %2 in a box</source>
        <translation>%1, %2 in einer Zarge</translation>
    </message>
    <message>
        <source>Find a hive format by any word</source>
        <translation>Einen Beutentyp nach einem Wort suchen</translation>
    </message>
    <message>
        <source>find: national, dadant, top bar, deep…</source>
        <translation>suchen: Zander, Dadant, Deutsch Normal…</translation>
    </message>
    <message>
        <source>Hive format</source>
        <translation>Beutentyp</translation>
    </message>
    <message>
        <source>%1
%2</source>
        <comment>a hive format, its measures</comment>
        <translation>%1
%2</translation>
    </message>
    <message>
        <source>Usual in %1</source>
        <translation>Üblich in: %1</translation>
    </message>
    <message>
        <source>No format has these words. Fewer letters find more; own measures are entered with the colony&apos;s hive.</source>
        <translation>Kein Beutentyp enthält diese Wörter. Mit weniger Buchstaben finden Sie mehr; eigene Maße geben Sie bei der Beute des Volkes ein.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GroundsPopup</name>
    <message>
        <source>How this number was got</source>
        <translation>Wie diese Zahl zustande kam</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GuideLink</name>
    <message>
        <source>How to judge this: %1</source>
        <translation>So schätzen Sie das: %1</translation>
    </message>
    <message>
        <source>How to judge this</source>
        <translation>So schätzen Sie das</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GuideWindow</name>
    <message>
        <source>Judging stores</source>
        <translation>Futter schätzen</translation>
    </message>
    <message>
        <source>Pages of the guide</source>
        <translation>Seiten der Anleitung</translation>
    </message>
    <message>
        <source>The page</source>
        <translation>Die Seite</translation>
    </message>
    <message>
        <source>your own, %1 by %2</source>
        <comment>the measures of a comb</comment>
        <translation>Ihre eigene, %1 mal %2</translation>
    </message>
    <message>
        <source>The tables this guide takes its numbers from are not read yet. Open it again in a moment.</source>
        <translation>Die Tabellen, aus denen diese Anleitung ihre Zahlen nimmt, sind noch nicht gelesen. Öffnen Sie sie gleich noch einmal.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HelpWindow</name>
    <message>
        <source>Show only what holds these letters</source>
        <translation>Nur zeigen, was diese Buchstaben enthält</translation>
    </message>
    <message>
        <source>look for…</source>
        <translation>suchen nach…</translation>
    </message>
    <message>
        <source>Nothing here holds these letters.</source>
        <translation>Hier enthält nichts diese Buchstaben.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HistoryDialog</name>
    <message>
        <source>Every step of the book, newest first</source>
        <translation>Jeder Schritt des Stockbuchs, neueste zuerst</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Choose a step to go back to before it. What is taken back stays in this list and can be done again until something else is entered.</source>
        <translation>Wählen Sie einen Schritt, um vor ihn zurückzugehen. Was zurückgenommen ist, bleibt in dieser Liste und lässt sich wiederherstellen, bis etwas anderes eingetragen wird.</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>&amp;Zurückgehen</translation>
    </message>
    <message>
        <source>Do &amp;again</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be taken back.</source>
        <translation>
            <numerusform>Ein Schritt würde zurückgenommen.</numerusform>
            <numerusform>%n Schritte würden zurückgenommen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be done again.</source>
        <translation>
            <numerusform>Ein Schritt würde wiederhergestellt.</numerusform>
            <numerusform>%n Schritte würden wiederhergestellt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is chosen that can be taken back or done again.</source>
        <translation>Es ist nichts gewählt, was sich zurücknehmen oder wiederherstellen lässt.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ImportDialog</name>
    <message>
        <source>Import %1</source>
        <translation>%1 importieren</translation>
    </message>
    <message>
        <source>What the table holds</source>
        <translation>Was die Tabelle enthält</translation>
    </message>
    <message>
        <source>What would be imported</source>
        <translation>Was importiert würde</translation>
    </message>
    <message>
        <source>What is wrong in the file, by line and column</source>
        <translation>Was in der Datei nicht stimmt, nach Zeile und Spalte</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>the table holds</source>
        <translation>die Tabelle enthält</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Sie &amp;stimmen so</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message numerus="yes">
        <source>A whole book of %n entries. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.</source>
        <translation>
            <numerusform>Ein ganzes Stockbuch mit einem Eintrag. Das vorliegende Stockbuch wird genau dieses; das lässt sich rückgängig machen, und vorher wird eine Sicherungskopie angelegt.</numerusform>
            <numerusform>Ein ganzes Stockbuch mit %n Einträgen. Das vorliegende Stockbuch wird genau dieses; das lässt sich rückgängig machen, und vorher wird eine Sicherungskopie angelegt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take the &amp;book as it stands: no answer believes these</source>
        <translation>Das Stock&amp;buch nehmen, wie es ist: Keine Antwort glaubt diesen Einträgen</translation>
    </message>
    <message>
        <source>%1; %2; %3. Everything or nothing is imported, as one step that can be undone; a backup is made first.</source>
        <translation>%1; %2; %3. Importiert wird alles oder nichts, als ein Schritt, der sich rückgängig machen lässt; vorher wird eine Sicherungskopie angelegt.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n neu</numerusform>
            <numerusform>%n neu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n changed</source>
        <translation>
            <numerusform>%n geändert</numerusform>
            <numerusform>%n geändert</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n said already, left out</source>
        <translation>
            <numerusform>%n schon eingetragen, ausgelassen</numerusform>
            <numerusform>%n schon eingetragen, ausgelassen</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>Es wurde nichts importiert.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing can be imported before this is put right in the file: %n faults.</source>
        <translation>
            <numerusform>Nichts lässt sich importieren, bevor dies in der Datei berichtigt ist: %n Fehler.</numerusform>
            <numerusform>Nichts lässt sich importieren, bevor dies in der Datei berichtigt ist: %n Fehler.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::JobTableModel</name>
    <message>
        <source>feed syrup, in the evening</source>
        <translation>Zuckerwasser geben, abends</translation>
    </message>
    <message>
        <source>lay on fondant, touching the cluster</source>
        <translation>Futterteig auflegen, direkt an der Traube</translation>
    </message>
    <message>
        <source>check: sealed? weigh, feeder off, mouse guard on</source>
        <translation>nachsehen: verdeckelt? wiegen, Futtergefäß ab, Mäusegitter an</translation>
    </message>
    <message>
        <source>take honey off, before feeding or treating</source>
        <translation>Honig ernten, vor dem Füttern oder Behandeln</translation>
    </message>
    <message>
        <source>unite with a healthy neighbour</source>
        <translation>mit einem gesunden Nachbarvolk vereinigen</translation>
    </message>
    <message>
        <source>weigh again, both sides, without opening</source>
        <translation>noch einmal wiegen, an beiden Seiten, ohne zu öffnen</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>Milben zählen und noch einmal nach dem Futter sehen</translation>
    </message>
    <message>
        <source>signs of disease: call the bee inspector, move nothing</source>
        <translation>Krankheitsanzeichen: den Bienensachverständigen rufen, nichts umhängen</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>zählen, wie viele Waben die Bienen besetzen</translation>
    </message>
    <message>
        <source>hang in %{combs} from a neighbour</source>
        <translation>Waben von einem Nachbarvolk einhängen</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>nach dem Futter sehen oder wiegen</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>eine Wabe mit Stiften aus einem anderen Volk einhängen</translation>
    </message>
    <message>
        <source>look for queen cells on the %{comb} with eggs</source>
        <translation>auf der Wabe mit Stiften nach Weiselzellen sehen</translation>
    </message>
    <message>
        <source>hang in one full %{comb} from %1 (its %2)</source>
        <translation>eine volle Futterwabe von %1 einhängen (dort %2)</translation>
    </message>
    <message numerus="yes">
        <source>hang in %n full %{combs} from %1 (its %2)</source>
        <translation>
            <numerusform>eine volle Futterwabe von %1 einhängen (dort %2)</numerusform>
            <numerusform>%n volle Futterwaben von %1 einhängen (dort %2)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; to give back: %2</source>
        <translation>%1; zurückzugeben: %2</translation>
    </message>
    <message>
        <source>unite it with %1, at the latest on this day, in the evening, newspaper between</source>
        <translation>mit %1 vereinigen, spätestens an diesem Tag, abends, Zeitungspapier dazwischen</translation>
    </message>
    <message>
        <source>%1 (%2 of sugar)</source>
        <translation>%1 (%2 Zucker)</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis zu %1</translation>
    </message>
    <message>
        <source>the hive is full</source>
        <translation>die Beute ist voll</translation>
    </message>
    <message>
        <source>honey is to come off</source>
        <translation>Honig ist noch zu ernten</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>Krankheitsanzeichen</translation>
    </message>
    <message>
        <source>no bees are left</source>
        <translation>es sind keine Bienen mehr da</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>empfohlen</translation>
    </message>
    <message>
        <source>your plan, not now: %1</source>
        <translation>Ihr Plan, jetzt nicht: %1</translation>
    </message>
    <message>
        <source>your plan, past</source>
        <translation>Ihr Plan, vorbei</translation>
    </message>
    <message>
        <source>your plan</source>
        <translation>Ihr Plan</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>beliebiger Tag</translation>
    </message>
    <message>
        <source>The day it is due</source>
        <translation>Der Tag, an dem es fällig ist</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>The colony it is for</source>
        <translation>Das Volk, um das es geht</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>How much syrup, fondant or honey; in brackets the sugar it takes</source>
        <translation>Wie viel Zuckerwasser, Futterteig oder Honig; in Klammern der Zucker dafür</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>wie viel</translation>
    </message>
    <message>
        <source>Your plan, or what today&apos;s answers advise</source>
        <translation>Ihr Plan oder was die heutigen Antworten empfehlen</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>wessen</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::LookPage</name>
    <message>
        <source>Where the figure for the stores comes from</source>
        <translation>Woher die Zahl für den Futtervorrat kommt</translation>
    </message>
    <message>
        <source>&amp;New look</source>
        <translation>Neue &amp;Durchsicht</translation>
    </message>
    <message>
        <source>&amp;Queen, temper, note…</source>
        <translation>Köni&amp;gin, Verhalten, Notiz…</translation>
    </message>
    <message>
        <source>Hive…</source>
        <translation>Beute…</translation>
    </message>
    <message>
        <source>Bees:</source>
        <translation>Bienen:</translation>
    </message>
    <message>
        <source>Weighed:</source>
        <translation>Gewogen:</translation>
    </message>
    <message>
        <source>Not looked at lately.</source>
        <translation>In letzter Zeit nicht angesehen.</translation>
    </message>
    <message>
        <source>Look of %1, seen from behind; boxes as they stand.</source>
        <translation>Durchsicht vom %1, von hinten gesehen; Zargen, wie sie stehen.</translation>
    </message>
    <message>
        <source>Look of %1, from the entrance end.</source>
        <translation>Durchsicht vom %1, vom Flugloch aus.</translation>
    </message>
    <message>
        <source>Look of %1, seen from behind.</source>
        <translation>Durchsicht vom %1, von hinten gesehen.</translation>
    </message>
    <message>
        <source>A new look of the day asked about; its %{combs} begin as they were seen within the last sixty days, else empty</source>
        <translation>Eine neue Durchsicht für den Stichtag; ihre Waben beginnen so, wie sie in den letzten sechzig Tagen gesehen wurden, sonst leer</translation>
    </message>
    <message>
        <source>In the cold leave the hive closed: what can be told from outside (its weight, its heft, bees flying, a glance under the lid) is written down on the page On the scale. Once it is warm enough to open, “New look” hangs the hive&apos;s %{combs} here. Or only count them:</source>
        <translation>Lassen Sie die Beute in der Kälte geschlossen: Was von außen zu erkennen ist (Gewicht, Anheben, Bienenflug, ein kurzer Blick unter den Deckel), tragen Sie auf der Seite Auf der Waage ein. Ist es warm genug zum Öffnen, hängt „Neue Durchsicht“ die Waben der Beute hier auf. Oder zählen Sie sie nur:</translation>
    </message>
    <message>
        <source>The %{combs} were counted, not looked at one by one; so no %{comb} can be drawn.</source>
        <translation>Die Waben wurden gezählt, nicht einzeln angesehen; daher lässt sich keine zeichnen.</translation>
    </message>
    <message>
        <source>No %{comb} was looked at within sixty days before this day. “New look” hangs the hive&apos;s empty %{combs} here; write on each what it holds, and count the %{combs} the bees cover. Or only count them:</source>
        <translation>In den sechzig Tagen vor diesem Tag wurde keine Wabe angesehen. „Neue Durchsicht“ hängt die leeren Waben der Beute hier auf; tragen Sie bei jeder ein, was sie enthält, und zählen Sie die besetzten Waben. Oder zählen Sie sie nur:</translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <translation>%1 %2 (%3)</translation>
    </message>
    <message>
        <source>Stores %1: %2.</source>
        <translation>Futtervorrat %1: %2.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1 Bees about %2.</source>
        <translation>%1 Bienen: etwa %2.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::MainWindow</name>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 – %2 in %3</source>
        <translation>%1 – %2 in %3</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederherstellen: %1</translation>
    </message>
    <message>
        <source>Due looks as a calendar</source>
        <translation>Fälliges als Kalender</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>%1: its answer is not worked out, so of it only what is planned is in the calendar</source>
        <translation>%1: Die Antwort ist noch nicht berechnet, daher steht davon nur Geplantes im Kalender</translation>
    </message>
    <message>
        <source>What is due is in %1.</source>
        <translation>Was fällig ist, steht in %1.</translation>
    </message>
    <message>
        <source>What is due could not be worked out.
%1</source>
        <translation>Was fällig ist, ließ sich nicht berechnen.
%1</translation>
    </message>
    <message>
        <source>The calendar could not be written to %1. Choose another folder.</source>
        <translation>Der Kalender ließ sich nicht nach %1 schreiben. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Left out:</source>
        <translation>Ausgelassen:</translation>
    </message>
    <message>
        <source>&amp;Colony</source>
        <translation>&amp;Volk</translation>
    </message>
    <message>
        <source>&amp;New colony…</source>
        <translation>&amp;Neues Volk…</translation>
    </message>
    <message>
        <source>New &amp;look</source>
        <translation>Neue &amp;Durchsicht</translation>
    </message>
    <message>
        <source>&amp;Weighed…</source>
        <translation>&amp;Gewogen…</translation>
    </message>
    <message>
        <source>&amp;Fed…</source>
        <translation>Ge&amp;füttert…</translation>
    </message>
    <message>
        <source>&amp;Harvest…</source>
        <translation>&amp;Honigernte…</translation>
    </message>
    <message>
        <source>&amp;Treatment…</source>
        <translation>&amp;Behandlung…</translation>
    </message>
    <message>
        <source>A &amp;glance in winter…</source>
        <translation>&amp;Kurzer Blick im Winter…</translation>
    </message>
    <message>
        <source>How the wint&amp;er went…</source>
        <translation>&amp;Wie der Winter ausging…</translation>
    </message>
    <message>
        <source>N&amp;ote…</source>
        <translation>N&amp;otiz…</translation>
    </message>
    <message>
        <source>Name, &amp;queen, feeder…</source>
        <translation>Na&amp;me, Königin, Futtergefäß…</translation>
    </message>
    <message>
        <source>Hi&amp;ve…</source>
        <translation>Be&amp;ute…</translation>
    </message>
    <message>
        <source>To another &amp;yard…</source>
        <translation>An einen anderen &amp;Stand…</translation>
    </message>
    <message>
        <source>What became of &amp;it…</source>
        <translation>W&amp;as aus ihm wurde…</translation>
    </message>
    <message>
        <source>&amp;Remove it with all its records</source>
        <translation>Mit allen Einträgen &amp;löschen</translation>
    </message>
    <message numerus="yes">
        <source>One file at a time, please: only case files can be opened together. Nothing was done with these %n.</source>
        <translation>
            <numerusform>Bitte eine Datei auf einmal: Nur Falldateien lassen sich zusammen öffnen. Mit dieser hier geschah nichts.</numerusform>
            <numerusform>Bitte eine Datei auf einmal: Nur Falldateien lassen sich zusammen öffnen. Mit diesen %n geschah nichts.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is no file that can be taken here. A book (.larder), a case file or a whole book (.json), a table or the log of a scale (.csv), or a photograph can be dropped.</source>
        <translation>%1 ist keine Datei, die hier angenommen wird. Hierher ziehen lassen sich ein Stockbuch (.larder), eine Falldatei oder ein ganzes Stockbuch (.json), eine Tabelle oder Waagendaten (.csv) oder ein Foto.</translation>
    </message>
    <message>
        <source>%1 belongs to a book: open one that can be written first, then drop it again.</source>
        <translation>%1 gehört zu einem Stockbuch: Öffnen Sie zuerst eines, in das geschrieben werden kann, und ziehen Sie die Datei dann noch einmal hierher.</translation>
    </message>
    <message>
        <source>A table of entries…</source>
        <translation>Eine Tabelle mit Einträgen…</translation>
    </message>
    <message>
        <source>The log of its scale…</source>
        <translation>Die Daten seiner Waage…</translation>
    </message>
    <message>
        <source>What is %1: a table of entries, or the log of the scale under the colony shown?</source>
        <translation>Was ist %1: eine Tabelle mit Einträgen oder die Waagendaten des gezeigten Volkes?</translation>
    </message>
    <message>
        <source>What is %1? Where it is the log of a scale, choose its colony and drop it again.</source>
        <translation>Was ist %1? Wenn es Waagendaten sind, wählen Sie ihr Volk und ziehen Sie die Datei noch einmal hierher.</translation>
    </message>
    <message>
        <source>A photograph measures one comb: choose the colony and the comb, then drop %1 on it.</source>
        <translation>Ein Foto misst eine Wabe: Wählen Sie das Volk und die Wabe, dann ziehen Sie %1 darauf.</translation>
    </message>
    <message>
        <source>Save sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet was written to %1.</source>
        <translation>Das Blatt wurde nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1. Choose another folder.</source>
        <translation>Das Blatt ließ sich nicht nach %1 schreiben. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>The yard plan on paper</source>
        <translation>Der Plan für den Stand auf Papier</translation>
    </message>
    <message>
        <source>The colony sheet on paper</source>
        <translation>Das Blatt des Volkes auf Papier</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>note of the yard</source>
        <translation>Notiz zum Stand</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>note of the colony</source>
        <translation>Notiz zum Volk</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>guide</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>climate station</source>
        <translation>Klimastation</translation>
    </message>
    <message>
        <source>source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>%1 is not among the living colonies of the day asked about. Choose an earlier day to see it.</source>
        <translation>%1 gehört am Stichtag nicht zu den lebenden Völkern. Wählen Sie einen früheren Tag, um es zu sehen.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>Woher die Zahlen kommen</translation>
    </message>
    <message>
        <source>used in: %1</source>
        <translation>verwendet in: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Judging stores</source>
        <translation>&amp;Futter schätzen</translation>
    </message>
    <message>
        <source>Words &amp;used here</source>
        <translation>&amp;Begriffe</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Sources</source>
        <translation>&amp;Quellen</translation>
    </message>
    <message>
        <source>&amp;Why this answer?</source>
        <translation>&amp;Warum diese Antwort?</translation>
    </message>
    <message>
        <source>&amp;About Winterlarder</source>
        <translation>Über Winter&amp;larder</translation>
    </message>
    <message>
        <source>About Winterlarder</source>
        <translation>Über Winterlarder</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Winterlarder %1&lt;/h3&gt;&lt;p&gt;Will what is in the hive last until the first reliable forage?&lt;/p&gt;&lt;p&gt;Where disease or medicines are concerned, the bee inspector, the vet and local law come first.&lt;/p&gt;&lt;p&gt;Places are from the GeoNames geographical database, CC BY 4.0.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Winterlarder %1&lt;/h3&gt;&lt;p&gt;Reicht das, was in der Beute ist, bis zur ersten verlässlichen Tracht?&lt;/p&gt;&lt;p&gt;Geht es um Krankheiten oder Tierarzneimittel, kommen Bienensachverständiger, Tierarztpraxis und das Recht vor Ort zuerst.&lt;/p&gt;&lt;p&gt;Orte aus der geografischen Datenbank GeoNames, CC BY 4.0.&lt;/p&gt;&lt;p&gt;Freie Software unter der GNU General Public License, Version 3 oder später.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Words used here</source>
        <translation>Begriffe</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Menu “%1”</source>
        <translation>Menü „%1“</translation>
    </message>
    <message>
        <source>On the %{combs} of the hive</source>
        <translation>Auf den Waben der Beute</translation>
    </message>
    <message>
        <source>On the winter picture</source>
        <translation>Auf dem Winterbild</translation>
    </message>
    <message>
        <source>In a field for a day</source>
        <translation>In einem Feld für einen Tag</translation>
    </message>
    <message>
        <source>In a list of what was written down</source>
        <translation>In einer Liste von Einträgen</translation>
    </message>
    <message>
        <source>On a photograph</source>
        <translation>Auf einem Foto</translation>
    </message>
    <message>
        <source>Winterlarder</source>
        <translation>Winterlarder</translation>
    </message>
    <message>
        <source>Which yard</source>
        <translation>Welcher Stand</translation>
    </message>
    <message>
        <source>Day asked about</source>
        <translation>Stichtag</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d. MMMM yyyy</translation>
    </message>
    <message>
        <source>The day asked about: what was written down later does not count yet</source>
        <translation>Der Stichtag: Was später eingetragen ist, zählt noch nicht</translation>
    </message>
    <message>
        <source>as of</source>
        <translation>Stichtag</translation>
    </message>
    <message>
        <source>The yard and its colonies</source>
        <translation>Der Stand und seine Völker</translation>
    </message>
    <message>
        <source>bar: stores today, fading where unsure
tick: needed until spring forage starts</source>
        <translation>Balken: Futtervorrat heute, verblassend, wo unsicher
Strich: nötig bis zum Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>%1, %2 – Winterlarder</source>
        <translation>%1, %2 – Winterlarder</translation>
    </message>
    <message>
        <source>Not everything could be opened.
%1</source>
        <translation>Nicht alles ließ sich öffnen.
%1</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Stockbuch</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Neues Stockbuch…</translation>
    </message>
    <message>
        <source>New &amp;yard in this book…</source>
        <translation>Neuer &amp;Stand in diesem Stockbuch…</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importieren…</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Si&amp;cherungskopien…</translation>
    </message>
    <message>
        <source>&amp;Copy the book to…</source>
        <translation>Stockbuch &amp;kopieren nach…</translation>
    </message>
    <message>
        <source>C&amp;lose the book</source>
        <translation>Stockbuch sch&amp;ließen</translation>
    </message>
    <message>
        <source>&amp;Print yard plan…</source>
        <translation>&amp;Plan für den Stand drucken…</translation>
    </message>
    <message>
        <source>Previe&amp;w of the yard plan…</source>
        <translation>&amp;Vorschau des Plans für den Stand…</translation>
    </message>
    <message>
        <source>Print colony &amp;sheet…</source>
        <translation>&amp;Blatt des Volkes drucken…</translation>
    </message>
    <message>
        <source>Preview of the colony s&amp;heet…</source>
        <translation>Vorsc&amp;hau des Blatts…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Exportieren</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Been&amp;den</translation>
    </message>
    <message>
        <source>Save the book as one &amp;JSON document…</source>
        <translation>Stockbuch als ein &amp;JSON-Dokument speichern…</translation>
    </message>
    <message>
        <source>Save every table as CS&amp;V…</source>
        <translation>Alle Tabellen als CS&amp;V speichern…</translation>
    </message>
    <message>
        <source>Save yard plan as P&amp;DF…</source>
        <translation>Plan für den Stand als P&amp;DF speichern…</translation>
    </message>
    <message>
        <source>Save colony sheet as PD&amp;F…</source>
        <translation>Blatt des Volkes als PD&amp;F speichern…</translation>
    </message>
    <message>
        <source>Save winter pict&amp;ure…</source>
        <translation>&amp;Winterbild speichern…</translation>
    </message>
    <message>
        <source>Save what is due as a c&amp;alendar…</source>
        <translation>Fälliges als &amp;Kalender speichern…</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation>&amp;Verlauf…</translation>
    </message>
    <message>
        <source>&amp;Copy the picture&apos;s numbers</source>
        <translation>&amp;Zahlen des Bildes kopieren</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Suchen…</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>&amp;Einstellungen…</translation>
    </message>
    <message>
        <source>Colours as the &amp;system&apos;s</source>
        <translation>Farben wie im &amp;System</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>Dun&amp;kel</translation>
    </message>
    <message>
        <source>Units of the &amp;place</source>
        <translation>&amp;Einheiten des Ortes</translation>
    </message>
    <message>
        <source>&amp;Kilograms and litres</source>
        <translation>Kilogramm und &amp;Liter</translation>
    </message>
    <message>
        <source>Pounds and US &amp;gallons</source>
        <translation>Pfund (lb) und US-&amp;Gallonen</translation>
    </message>
    <message>
        <source>Pounds and i&amp;mperial gallons</source>
        <translation>&amp;Pfund (lb) und britische Gallonen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Most &amp;urgent first</source>
        <translation>&amp;Dringendste zuerst</translation>
    </message>
    <message>
        <source>By &amp;name</source>
        <translation>Nach &amp;Namen</translation>
    </message>
    <message>
        <source>&amp;Winter picture</source>
        <translation>Winter&amp;bild</translation>
    </message>
    <message>
        <source>F&amp;ewer days in the picture</source>
        <translation>Wenige&amp;r Tage im Bild</translation>
    </message>
    <message>
        <source>M&amp;ore days in the picture</source>
        <translation>&amp;Mehr Tage im Bild</translation>
    </message>
    <message>
        <source>The whole winte&amp;r</source>
        <translation>Ganzer Win&amp;ter</translation>
    </message>
    <message>
        <source>&amp;In the hive</source>
        <translation>&amp;In der Beute</translation>
    </message>
    <message>
        <source>%{Comb} &amp;by %{comb}</source>
        <translation>W&amp;abe für Wabe</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>&amp;Fütterung</translation>
    </message>
    <message>
        <source>On the sc&amp;ale</source>
        <translation>A&amp;uf der Waage</translation>
    </message>
    <message>
        <source>S&amp;tory</source>
        <translation>Sto&amp;ckkarte</translation>
    </message>
    <message>
        <source>W&amp;hat if</source>
        <translation>Was &amp;wäre, wenn</translation>
    </message>
    <message>
        <source>The &amp;yard</source>
        <translation>&amp;Zum Stand</translation>
    </message>
    <message>
        <source>Ne&amp;xt colony</source>
        <translation>Nächstes &amp;Volk</translation>
    </message>
    <message>
        <source>Pre&amp;vious colony</source>
        <translation>V&amp;origes Volk</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::NextEntry</name>
    <message>
        <source>To be answered, this colony needs:</source>
        <translation>Für eine Antwort fehlt bei diesem Volk:</translation>
    </message>
    <message>
        <source>or what the hive weighs, or how heavy it feels</source>
        <translation>oder was die Beute wiegt oder wie schwer sie sich anfühlt</translation>
    </message>
    <message>
        <source>Enter the %{combs}</source>
        <translation>Waben eintragen</translation>
    </message>
    <message>
        <source>How many bees: %{combs} they cover, on both sides</source>
        <translation>Wie viele Bienen: Waben, die sie auf beiden Seiten besetzen</translation>
    </message>
    <message>
        <source>What the %{combs} hold, %{comb} by %{comb} or counted quickly</source>
        <translation>Was die Waben enthalten, Wabe für Wabe oder schnell gezählt</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::OutlineDrawing</name>
    <message>
        <source>The comb face on; a measure is missing</source>
        <translation>Die Wabe von vorn; ein Maß fehlt</translation>
    </message>
    <message>
        <source>The comb face on: %1 wide at the top, %2 deep, %3 wide at the bottom</source>
        <translation>Die Wabe von vorn: oben %1 breit, %2 hoch, unten %3 breit</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::OwnMeasures</name>
    <message>
        <source>comb width at the top</source>
        <translation>Wabenbreite oben</translation>
    </message>
    <message>
        <source>comb depth</source>
        <translation>Wabenhöhe</translation>
    </message>
    <message>
        <source>width at the bottom</source>
        <translation>Breite unten</translation>
    </message>
    <message>
        <source>spacing, or bar width</source>
        <translation>Wabenabstand, Leistenbreite</translation>
    </message>
    <message>
        <source>%{combs} the box holds</source>
        <translation>Waben in der Zarge</translation>
    </message>
    <message>
        <source>as at the top</source>
        <translation>wie oben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Box %1, %2</source>
        <translation>Zarge %1, %2</translation>
    </message>
    <message>
        <source>A comb has %1 on each side; capped from edge to edge it holds about %2 of honey.</source>
        <translation>Eine Wabe hat auf jeder Seite %1; von Rand zu Rand verdeckelt fasst sie etwa %2 Honig.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PastForecastModel</name>
    <message>
        <source>%1: %2 to have for winter, %3 of it taken to be eaten</source>
        <translation>%1: %2 für den Winter, davon %3 Verbrauch angenommen</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>The autumn the forecast was made in, and the year after</source>
        <translation>Der Herbst, in dem die Prognose entstand, und das Jahr danach</translation>
    </message>
    <message>
        <source>winter</source>
        <translation>Winter</translation>
    </message>
    <message>
        <source>The colony it was made for</source>
        <translation>Das Volk, für das sie galt</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>The day of the reading it is compared with</source>
        <translation>Der Tag des Messwerts, mit dem sie verglichen wird</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>What the autumn&apos;s forecast said this reading would be; in brackets nine in ten</source>
        <translation>Welchen Messwert die Prognose vom Herbst erwartete; in Klammern neun von zehn</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>Prognose</translation>
    </message>
    <message>
        <source>What was weighed or found</source>
        <translation>Was gewogen oder gefunden wurde</translation>
    </message>
    <message>
        <source>happened</source>
        <translation>geschehen</translation>
    </message>
    <message>
        <source>Whether it lay within the band of nine in ten</source>
        <translation>Ob es im Bereich von neun aus zehn lag</translation>
    </message>
    <message>
        <source>within</source>
        <translation>im Bereich</translation>
    </message>
    <message>
        <source>How far the middle of the forecast was from what happened</source>
        <translation>Wie weit die Mitte der Prognose von dem entfernt war, was geschah</translation>
    </message>
    <message>
        <source>off by</source>
        <translation>Abweichung</translation>
    </message>
    <message>
        <source>How far off the region&apos;s handbook figure was</source>
        <translation>Wie weit der Richtwert der Gegend danebenlag</translation>
    </message>
    <message>
        <source>handbook
off by</source>
        <translation>Abweichung
Richtwert</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PastPage</name>
    <message>
        <source>Past forecasts and what happened</source>
        <translation>Vergangene Prognosen und was geschah</translation>
    </message>
    <message>
        <source>What past winters taught</source>
        <translation>Was vergangene Winter gezeigt haben</translation>
    </message>
    <message>
        <source>Past wi&amp;nters of these bees correct the forecast in this yard</source>
        <translation>Vergangene Winter dieser Bienen berichtigen an diesem Stand die Pro&amp;gnose</translation>
    </message>
    <message>
        <source>Be&amp;gin anew from today</source>
        <translation>Ab heute ne&amp;u beginnen</translation>
    </message>
    <message>
        <source>Winters decided before the day asked about are no longer learned from; nothing is deleted</source>
        <translation>Aus Wintern, über die vor dem Stichtag entschieden wurde, wird nicht mehr gelernt; gelöscht wird nichts</translation>
    </message>
    <message>
        <source>&amp;Learn from all winters again</source>
        <translation>Wieder aus allen Wintern &amp;lernen</translation>
    </message>
    <message>
        <source>Past winters could not be looked at; nothing is learned from them for now.</source>
        <translation>Vergangene Winter ließen sich nicht ansehen; vorerst wird nichts aus ihnen gelernt.</translation>
    </message>
    <message>
        <source>Past winters are being looked at…</source>
        <translation>Vergangene Winter werden angesehen…</translation>
    </message>
    <message>
        <source>Learned from since %1.</source>
        <translation>Gelernt wird seit dem %1.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PhotographView</name>
    <message>
        <source>The photograph</source>
        <translation>Das Foto</translation>
    </message>
    <message>
        <source>No point is marked</source>
        <translation>Kein Punkt ist markiert</translation>
    </message>
    <message>
        <source>%1, at %2, %3</source>
        <translation>%1, bei %2, %3</translation>
    </message>
    <message>
        <source>Open a photograph of the comb: one face, as square-on as it can be had.</source>
        <translation>Öffnen Sie ein Foto der Wabe: eine Seite, so gerade von vorn wie möglich.</translation>
    </message>
    <message>
        <source>moves the point; with Shift ten times as far</source>
        <translation>verschiebt den Punkt; mit Umschalt zehnmal so weit</translation>
    </message>
    <message>
        <source>the next point</source>
        <translation>der nächste Punkt</translation>
    </message>
    <message>
        <source>a new point in the middle</source>
        <translation>ein neuer Punkt in der Mitte</translation>
    </message>
    <message>
        <source>takes the point away</source>
        <translation>entfernt den Punkt</translation>
    </message>
    <message>
        <source>larger or smaller</source>
        <translation>größer oder kleiner</translation>
    </message>
    <message>
        <source>the whole picture</source>
        <translation>das ganze Bild</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PhotographWindow</name>
    <message>
        <source>Nothing is traced yet.</source>
        <translation>Noch ist nichts nachgezeichnet.</translation>
    </message>
    <message>
        <source>capped %1, open nectar %2, brood %3, bee bread %4, empty %5</source>
        <translation>verdeckelt %1, offener Nektar %2, Brut %3, Bienenbrot %4, leer %5</translation>
    </message>
    <message>
        <source>One face: %1.
Honey %2, known to 17.5 % instead of 20 % by eye; with the other face traced too, to 11.5 %.</source>
        <translation>Eine Seite: %1.
Honig %2, auf 17½&#xa0;% genau statt 20&#xa0;% nach Augenmaß; mit der anderen Seite auch nachgezeichnet auf 11½&#xa0;%.</translation>
    </message>
    <message>
        <source>Both faces: %1.
Honey %2, known to 11.5 % instead of 15 % by eye.</source>
        <translation>Beide Seiten: %1.
Honig %2, auf 11½&#xa0;% genau statt 15&#xa0;% nach Augenmaß.</translation>
    </message>
    <message>
        <source>By keys: arrows move the marked point (Shift: faster), Space goes to the next, + and − or the wheel zoom, 0 shows all.</source>
        <translation>Mit Tasten: Pfeile verschieben den markierten Punkt (Umschalt: schneller), die Leertaste geht zum nächsten, + und − oder das Mausrad vergrößern und verkleinern, 0 zeigt alles.</translation>
    </message>
    <message>
        <source>Photograph one face of the comb without bees, all of it in view, as square-on as it can be had; then open the picture here.</source>
        <translation>Fotografieren Sie eine Seite der Wabe ohne Bienen, ganz im Bild und so gerade von vorn wie möglich; dann öffnen Sie das Bild hier.</translation>
    </message>
    <message>
        <source>Drag the four points to the corners of the comb, inside the frame.</source>
        <translation>Ziehen Sie die vier Punkte in die Ecken der Wabe, innen am Rähmchen.</translation>
    </message>
    <message>
        <source>Drag the points: where the comb begins and ends at the bar, low on either side, and its lowest point.</source>
        <translation>Ziehen Sie die Punkte: wo die Wabe an der Leiste anfängt und endet, auf beiden Seiten unten, und an ihren tiefsten Punkt.</translation>
    </message>
    <message>
        <source>Click around each zone; the curve closes itself. Drag points, Delete takes one away. Where curves overlap, brood counts first, then bee bread, capped and open nectar.
By keys: Return adds a point to be moved on with the arrows (Shift: faster), Space goes to the next, + and − zoom, 0 shows all.</source>
        <translation>Klicken Sie um jede Fläche herum; die Kurve schließt sich von selbst. Punkte lassen sich ziehen, Entf nimmt einen weg. Wo sich Kurven überdecken, zählt zuerst Brut, dann Bienenbrot, Verdeckeltes und offener Nektar.
Mit Tasten: Die Eingabetaste setzt einen Punkt, den die Pfeile weiterschieben (Umschalt: schneller), die Leertaste geht zum nächsten, + und − vergrößern und verkleinern, 0 zeigt alles.</translation>
    </message>
    <message>
        <source>point %1 of %2</source>
        <translation>Punkt %1 von %2</translation>
    </message>
    <message>
        <source>the comb itself</source>
        <translation>die Wabe selbst</translation>
    </message>
    <message>
        <source>Leave the photograph?</source>
        <translation>Foto verlassen?</translation>
    </message>
    <message>
        <source>What was traced is not taken into the comb yet, and would be lost.</source>
        <translation>Was nachgezeichnet ist, ist noch nicht in die Wabe übernommen und ginge verloren.</translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <source>&amp;Go on tracing</source>
        <translation>&amp;Weiterzeichnen</translation>
    </message>
    <message>
        <source>Measure on a photograph: %1</source>
        <translation>Auf einem Foto messen: %1</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Face of the comb</source>
        <translation>Seite der Wabe</translation>
    </message>
    <message>
        <source>One &amp;face</source>
        <translation>Eine &amp;Seite</translation>
    </message>
    <message>
        <source>The ot&amp;her face</source>
        <translation>Die an&amp;dere Seite</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>&amp;1 Mark the comb</source>
        <translation>&amp;1 Wabe markieren</translation>
    </message>
    <message>
        <source>&amp;2 Trace the zones</source>
        <translation>&amp;2 Flächen nachzeichnen</translation>
    </message>
    <message>
        <source>&amp;Open picture…</source>
        <translation>&amp;Bild öffnen…</translation>
    </message>
    <message>
        <source>What is marked</source>
        <translation>Was markiert ist</translation>
    </message>
    <message>
        <source>four corners</source>
        <translation>vier Ecken</translation>
    </message>
    <message>
        <source>bar ends, sides and lowest point</source>
        <translation>Enden an der Leiste, Seiten und tiefster Punkt</translation>
    </message>
    <message>
        <source>marked are</source>
        <translation>markiert sind</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a zone and its key</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>&amp;Another patch</source>
        <translation>&amp;Noch eine Stelle</translation>
    </message>
    <message>
        <source>A zone in two places is traced as two patches; its key pressed again goes from one to the other</source>
        <translation>Eine Fläche an zwei Stellen wird als zwei Stellen nachgezeichnet; noch ein Druck auf ihre Taste wechselt zwischen ihnen</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Was gemessen wurde</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Closer</source>
        <translation>Nä&amp;her</translation>
    </message>
    <message>
        <source>Farth&amp;er</source>
        <translation>Wei&amp;ter weg</translation>
    </message>
    <message>
        <source>&amp;Whole picture</source>
        <translation>&amp;Ganzes Bild</translation>
    </message>
    <message>
        <source>&amp;Take these shares</source>
        <translation>Diese &amp;Anteile übernehmen</translation>
    </message>
    <message>
        <source>A photograph of the comb</source>
        <translation>Foto der Wabe</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.tif *.tiff)</source>
        <translation>Bilder (*.jpg *.jpeg *.png *.webp *.tif *.tiff)</translation>
    </message>
    <message>
        <source>Another picture…</source>
        <translation>Anderes Bild…</translation>
    </message>
    <message>
        <source>Opening %1…</source>
        <translation>%1 wird geöffnet…</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PicturePanel</name>
    <message>
        <source>Show:</source>
        <translation>Zeigen:</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Save the picture or its numbers</source>
        <translation>Das Bild oder seine Zahlen speichern</translation>
    </message>
    <message>
        <source>&amp;Save picture…</source>
        <translation>Bild sp&amp;eichern…</translation>
    </message>
    <message>
        <source>&amp;Copy numbers</source>
        <translation>&amp;Zahlen kopieren</translation>
    </message>
    <message>
        <source>Whole winter</source>
        <translation>Ganzer Winter</translation>
    </message>
    <message>
        <source>Shows all days again (0)</source>
        <translation>Zeigt wieder alle Tage (0)</translation>
    </message>
    <message>
        <source>Show more days (-)</source>
        <translation>Mehr Tage zeigen (-)</translation>
    </message>
    <message>
        <source>Show fewer days (+)</source>
        <translation>Weniger Tage zeigen (+)</translation>
    </message>
    <message>
        <source>No winter can be simulated from what is known.</source>
        <translation>Mit dem, was bekannt ist, lässt sich kein Winter durchrechnen.</translation>
    </message>
    <message>
        <source>Twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %2.</source>
        <translation>Zwanzig von %1 Wintern, jeder steht für fünf von hundert; gestrichelte fallen unter %2.</translation>
    </message>
    <message>
        <source>%2 to %3: twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %4.</source>
        <translation>%2 bis %3: zwanzig von %1 Wintern, jeder steht für fünf von hundert; gestrichelte fallen unter %4.</translation>
    </message>
    <message>
        <source>Simulating the winters…</source>
        <translation>Die Winter werden durchgerechnet…</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Zeigen: %1</translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg *.pdf)</source>
        <translation>Bilder (*.png *.svg *.pdf)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose another folder.</source>
        <translation>Das Bild ließ sich nicht nach %1 schreiben. Wählen Sie einen anderen Ordner.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PlaceField</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>own climate</source>
        <translation>eigenes Klima</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a place, and its weather</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Where the bees stand: a town, or latitude and longitude</source>
        <translation>Wo die Bienen stehen: ein Ort oder Breite und Länge</translation>
    </message>
    <message>
        <source>a town near by, or 45.1, -64.5</source>
        <translation>ein Ort in der Nähe oder 45.1, -64.5</translation>
    </message>
    <message>
        <source>Places found</source>
        <translation>Gefundene Orte</translation>
    </message>
    <message>
        <source>The place chosen</source>
        <translation>Der gewählte Ort</translation>
    </message>
    <message>
        <source>No place is spelled so. Do you mean one of these?</source>
        <translation>So schreibt sich kein Ort. Meinen Sie einen von diesen?</translation>
    </message>
    <message>
        <source>No place of that name is known here. Take the nearest town, or type latitude and longitude, as 43.05, -76.15.</source>
        <translation>Ein Ort dieses Namens ist hier nicht bekannt. Nehmen Sie den nächsten größeren, oder geben Sie Breite und Länge ein, etwa 43.05, -76.15.</translation>
    </message>
    <message>
        <source>Climate: %1</source>
        <translation>Klima: %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PlacePage</name>
    <message>
        <source>Name of the yard</source>
        <translation>Name des Standes</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>I have my own temperatures of this place</source>
        <translation>Ich habe eigene Temperaturen dieses Ortes</translation>
    </message>
    <message>
        <source>Autumn flow still to come</source>
        <translation>Spättracht, die noch kommt</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>What flowers here, and when</source>
        <translation>Was hier blüht und wann</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Wo er liegt</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>autumn flow</source>
        <translation>Spättracht</translation>
    </message>
    <message>
        <source>forage</source>
        <translation>Tracht</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Mean temperature of %1</source>
        <translation>Mitteltemperatur im %1</translation>
    </message>
    <message>
        <source>Day: %1</source>
        <translation>Tag: %1</translation>
    </message>
    <message>
        <source>Ticked: the day you know, every year; else as the climate says</source>
        <translation>Angekreuzt: der Tag, den Sie kennen, jedes Jahr; sonst nach dem Klima</translation>
    </message>
    <message>
        <source>The dates this winter turns on; tick those you know better</source>
        <translation>Die Tage, auf die es in diesem Winter ankommt; kreuzen Sie an, welche Sie besser kennen</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>Trachtende</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>empfohlenes Ende der Fütterung</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>letzter Tag für Zuckerwasser</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>Zuckerwasser nicht mehr abgenommen</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>Ende der Eilage</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>Wiederbeginn der Eilage</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>Frühjahrsentwicklung</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>Beginn der Frühtracht</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message numerus="yes">
        <source>%1, give or take %n days</source>
        <translation>
            <numerusform>%1, plus oder minus einen Tag</numerusform>
            <numerusform>%1, plus oder minus %n Tage</numerusform>
        </translation>
    </message>
    <message>
        <source>Curve of %1, %2 above the sea.</source>
        <translation>Kurve von %1, %2 über dem Meer.</translation>
    </message>
    <message>
        <source>Your own temperatures.</source>
        <translation>Ihre eigenen Temperaturen.</translation>
    </message>
    <message>
        <source>%1 Corrected by %2 for the height.</source>
        <translation>%1 Für die Höhe um %2 berichtigt.</translation>
    </message>
    <message>
        <source>%1 Source: %2</source>
        <translation>%1 Quelle: %2</translation>
    </message>
    <message>
        <source>Winters of a hundred that may fall below the reserve</source>
        <translation>Winter von hundert, die unter die Sicherheitsreserve fallen dürfen</translation>
    </message>
    <message>
        <source>Reserve that should be left in spring</source>
        <translation>Sicherheitsreserve, die im Frühjahr übrig sein soll</translation>
    </message>
    <message>
        <source>Days between visits</source>
        <translation>Tage zwischen den Terminen</translation>
    </message>
    <message>
        <source>Visits on %1</source>
        <translation>Termine am %1</translation>
    </message>
    <message>
        <source>Price of sugar</source>
        <translation>Zuckerpreis</translation>
    </message>
    <message>
        <source>Currency, three letters</source>
        <translation>Währung, drei Buchstaben</translation>
    </message>
    <message>
        <source>Sugar in a bag</source>
        <translation>Zucker in einem Sack</translation>
    </message>
    <message>
        <source>past winters of these bees correct the forecast</source>
        <translation>vergangene Winter dieser Bienen berichtigen die Prognose</translation>
    </message>
    <message>
        <source>What you wish</source>
        <translation>Was Sie wünschen</translation>
    </message>
    <message>
        <source>winters of 100 that may fall below the reserve</source>
        <translation>Winter von 100, die unter die Sicherheitsreserve fallen dürfen</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Sicherheitsreserve</translation>
    </message>
    <message>
        <source>days between visits</source>
        <translation>Tage zwischen den Terminen</translation>
    </message>
    <message>
        <source>visits only on (none: any day)</source>
        <translation>Termine nur am (ohne Wahl: jeden Tag)</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>a bag holds</source>
        <translation>ein Sack enthält</translation>
    </message>
    <message>
        <source>sugar, a pound costs</source>
        <translation>ein Pfund (lb) Zucker kostet</translation>
    </message>
    <message>
        <source>sugar, a kilogram costs</source>
        <translation>ein Kilogramm Zucker kostet</translation>
    </message>
    <message>
        <source>Price of a pound of sugar</source>
        <translation>Preis für ein Pfund (lb) Zucker</translation>
    </message>
    <message>
        <source>Price of a kilogram of sugar</source>
        <translation>Preis für ein Kilogramm Zucker</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::QuantityField</name>
    <message>
        <source>for a %1</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>Something must be written here.</source>
        <translation>Hier muss etwas stehen.</translation>
    </message>
    <message>
        <source>It must be %1 or more.</source>
        <translation>Es muss mindestens %1 sein.</translation>
    </message>
    <message>
        <source>It must be between %1 and %2.</source>
        <translation>Es muss zwischen %1 und %2 liegen.</translation>
    </message>
    <message>
        <source>This is not a number.</source>
        <translation>Das ist keine Zahl.</translation>
    </message>
    <message>
        <source>It must be a whole number.</source>
        <translation>Es muss eine ganze Zahl sein.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::RecordList</name>
    <message>
        <source>Change…</source>
        <translation>Ändern…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>opens the entry</source>
        <translation>öffnet den Eintrag</translation>
    </message>
    <message>
        <source>takes the entry out of the book; undo brings it back</source>
        <translation>nimmt den Eintrag aus dem Stockbuch; Rückgängig bringt ihn zurück</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::RecordListModel</name>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>The day it is of</source>
        <translation>Der Tag, von dem er ist</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>What kind of entry it is</source>
        <translation>Was für ein Eintrag es ist</translation>
    </message>
    <message>
        <source>what</source>
        <translation>was</translation>
    </message>
    <message>
        <source>What was written down</source>
        <translation>Was eingetragen ist</translation>
    </message>
    <message>
        <source>details</source>
        <translation>Einzelheiten</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScaleLogDialog</name>
    <message>
        <source>The log of a scale: %1</source>
        <translation>Waagendaten: %1</translation>
    </message>
    <message>
        <source>Unit of the weights</source>
        <translation>Einheit der Gewichte</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie gefunden</translation>
    </message>
    <message>
        <source>Order of day, month and year</source>
        <translation>Reihenfolge von Tag, Monat und Jahr</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>Tag, Monat, Jahr</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>Monat, Tag, Jahr</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>Jahr, Monat, Tag</translation>
    </message>
    <message>
        <source>Clock of the place</source>
        <translation>Uhr des Ortes</translation>
    </message>
    <message>
        <source>times as they are written; or America/Halifax, UTC, +02:00</source>
        <translation>Zeiten, wie sie dastehen; oder America/Halifax, UTC, +02:00</translation>
    </message>
    <message>
        <source>Ratio of the syrup fed meanwhile, sugar to water</source>
        <translation>Mischung des Zuckerwassers, das inzwischen gefüttert wurde, Zucker zu Wasser</translation>
    </message>
    <message>
        <source>3:2; empty: not known, the weight alone counts</source>
        <translation>3:2; leer: nicht bekannt, nur das Gewicht zählt</translation>
    </message>
    <message>
        <source>What was understood, and the steps found</source>
        <translation>Was verstanden wurde, und die gefundenen Sprünge</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Sie &amp;stimmen so</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>date order</source>
        <translation>Reihenfolge im Datum</translation>
    </message>
    <message>
        <source>clock of the place</source>
        <translation>Uhr des Ortes</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>Zuckerwasser</translation>
    </message>
    <message>
        <source>W&amp;rite down</source>
        <translation>Eintra&amp;gen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message>
        <source>column %1 (%2)</source>
        <translation>Spalte %1 (%2)</translation>
    </message>
    <message>
        <source>column %1, &quot;%2&quot; (%3)</source>
        <translation>Spalte %1, „%2“ (%3)</translation>
    </message>
    <message>
        <source>Date: %1</source>
        <translation>Datum: %1</translation>
    </message>
    <message>
        <source>Time: %1</source>
        <translation>Zeit: %1</translation>
    </message>
    <message>
        <source>Date order: %1 (%2)</source>
        <translation>Reihenfolge im Datum: %1 (%2)</translation>
    </message>
    <message>
        <source>Weight: %1, in %2 (%3)</source>
        <translation>Gewicht: %1, in %2 (%3)</translation>
    </message>
    <message>
        <source>Days: %1, %2 to %3</source>
        <translation>Tage: %1, %2 bis %3</translation>
    </message>
    <message>
        <source>Readings: %1</source>
        <translation>Messwerte: %1</translation>
    </message>
    <message>
        <source>Jumps of the clock, put right: %1</source>
        <translation>Sprünge der Uhr, berichtigt: %1</translation>
    </message>
    <message>
        <source>Days are those of UTC; name the clock of the place above for its own.</source>
        <translation>Die Tage sind die von UTC; nennen Sie oben die Uhr des Ortes, um seine eigenen zu bekommen.</translation>
    </message>
    <message>
        <source>What was understood</source>
        <translation>Was verstanden wurde</translation>
    </message>
    <message>
        <source>Steps found</source>
        <translation>Gefundene Sprünge</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Keine.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Monate</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Rows left out: %1</source>
        <translation>Ausgelassene Zeilen: %1</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>To be written down: weighings %1, feeds %2, harvests %3, changes of equipment %4; on days the book has already: %5.</source>
        <translation>Einzutragen: Wägungen %1, Futtergaben %2, Honigernten %3, Änderungen an der Beute %4; an Tagen, die schon im Stockbuch stehen: %5.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePage</name>
    <message>
        <source>Weighings and glances, newest first</source>
        <translation>Wägungen und kurze Blicke, neueste zuerst</translation>
    </message>
    <message>
        <source>The hive was not weighed yet. A hand scale under one side, or a heft, already narrows what is in it.</source>
        <translation>Die Beute wurde noch nicht gewogen. Schon eine Kofferwaage an einer Seite oder Anheben von Hand grenzt ein, was darin ist.</translation>
    </message>
    <message>
        <source>Wei&amp;gh…</source>
        <translation>Wie&amp;gen…</translation>
    </message>
    <message>
        <source>A scale&apos;s &amp;log…</source>
        <translation>Waagen&amp;daten…</translation>
    </message>
    <message>
        <source>The log of a scale</source>
        <translation>Waagendaten</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tabellen (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>A gla&amp;nce…</source>
        <translation>Kurzer Bli&amp;ck…</translation>
    </message>
    <message>
        <source>H&amp;ow the winter went…</source>
        <translation>Wie der Winter a&amp;usging…</translation>
    </message>
    <message>
        <source>Points: stores as weighed and seen, with eighty in a hundred odds. Band: what eighty of a hundred simulated winters leave.</source>
        <translation>Punkte: Futtervorrat, wie gewogen und gesehen, mit der Spanne von achtzig aus hundert. Bereich: was achtzig von hundert durchgerechneten Wintern übrig lassen.</translation>
    </message>
    <message>
        <source>Here what was measured stands against what the model expects, once both are known.</source>
        <translation>Hier steht, was gemessen wurde, neben dem, was das Modell erwartet, sobald beides bekannt ist.</translation>
    </message>
    <message>
        <source>Weights to expect are without what is fed later.</source>
        <translation>Die zu erwartenden Gewichte sind ohne spätere Futtergaben.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePlot</name>
    <message>
        <source>Model against measurement</source>
        <translation>Modell und Messung</translation>
    </message>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation>
            <numerusform>eine Messung</numerusform>
            <numerusform>%n Messungen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>On this computer, whatever book is open</source>
        <translation>Auf diesem Rechner, gleich welches Stockbuch offen ist</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>those of the yard&apos;s place</source>
        <translation>die des Ortes, an dem der Stand liegt</translation>
    </message>
    <message>
        <source>kilograms and litres</source>
        <translation>Kilogramm und Liter</translation>
    </message>
    <message>
        <source>pounds and US gallons</source>
        <translation>Pfund (lb) und US-Gallonen</translation>
    </message>
    <message>
        <source>pounds and imperial gallons</source>
        <translation>Pfund (lb) und britische Gallonen</translation>
    </message>
    <message>
        <source>&amp;units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>In which weights and measures are shown. Whatever you type may have a unit of its own beside it.</source>
        <translation>Worin Gewichte und Maße gezeigt werden. Was Sie eingeben, darf eine eigene Einheit neben sich haben.</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>as the system&apos;s</source>
        <translation>wie im System</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>&amp;colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>Of everything on the screen; what is printed is always dark on white.</source>
        <translation>Von allem auf dem Bildschirm; Gedrucktes ist immer dunkel auf weiß.</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Größe der Schrift</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>&amp;letters</source>
        <translation>&amp;Schrift</translation>
    </message>
    <message>
        <source>How large they are on the screen; paper keeps its own size.</source>
        <translation>Wie groß sie auf dem Bildschirm ist; Papier behält seine eigene Größe.</translation>
    </message>
    <message>
        <source>Notices</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>for half a minute</source>
        <translation>eine halbe Minute lang</translation>
    </message>
    <message>
        <source>for two minutes</source>
        <translation>zwei Minuten lang</translation>
    </message>
    <message>
        <source>until they are closed</source>
        <translation>bis sie geschlossen werden</translation>
    </message>
    <message>
        <source>&amp;notices</source>
        <translation>&amp;Hinweise</translation>
    </message>
    <message>
        <source>How long the foot of the page says what was done. What went wrong always stays until it is closed.</source>
        <translation>Wie lange unten auf der Seite steht, was getan wurde. Was misslang, bleibt immer, bis es geschlossen wird.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>lan&amp;guage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>Taken up at once; where another window of the program is open, when that is closed. Where the system&apos;s is not in this list, English is spoken.</source>
        <translation>Gilt sofort; ist ein anderes Fenster des Programms offen, sobald es geschlossen ist. Steht die Sprache des Systems nicht in dieser Liste, spricht das Programm Englisch.</translation>
    </message>
    <message>
        <source>Of the yard “%1”; kept in its book, and undone as any entry is</source>
        <translation>Vom Stand „%1“; steht in seinem Stockbuch und lässt sich wie jeder Eintrag rückgängig machen</translation>
    </message>
    <message>
        <source>past winters correct the &amp;forecast</source>
        <translation>vergangene Winter berichtigen die Pro&amp;gnose</translation>
    </message>
    <message>
        <source>learning</source>
        <translation>Lernen</translation>
    </message>
    <message>
        <source>Each winter written down to its end shows how much these bees use and how many die; forecasts for this yard are corrected by it.</source>
        <translation>Jeder bis zum Ende eingetragene Winter zeigt, wie viel diese Bienen verbrauchen und wie viele sterben; danach werden die Prognosen für diesen Stand berichtigt.</translation>
    </message>
    <message>
        <source>Of the book that is open</source>
        <translation>Vom geöffneten Stockbuch</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Si&amp;cherungskopien…</translation>
    </message>
    <message>
        <source>backups lie in</source>
        <translation>Sicherungskopien liegen in</translation>
    </message>
    <message>
        <source>One is made at the first edit of a day and before anything large; the last ten are kept.</source>
        <translation>Eine entsteht bei der ersten Änderung eines Tages und vor allem Größeren; die letzten zehn bleiben.</translation>
    </message>
    <message>
        <source>Winters of a hundred that may fall below the reserve</source>
        <translation>Winter von hundert, die unter die Sicherheitsreserve fallen dürfen</translation>
    </message>
    <message>
        <source>&amp;risk, winters of 100</source>
        <translation>&amp;Risiko, Winter von 100</translation>
    </message>
    <message>
        <source>How many winters of a hundred may end below the reserve before more is fed. Empty: 10 to 20, fewer where nobody can help in winter.</source>
        <translation>Wie viele Winter von hundert unter der Sicherheitsreserve enden dürfen, bevor mehr gefüttert wird. Leer: 10 bis 20, weniger, wo im Winter niemand helfen kann.</translation>
    </message>
    <message>
        <source>Reserve that should be left in spring</source>
        <translation>Sicherheitsreserve, die im Frühjahr übrig sein soll</translation>
    </message>
    <message>
        <source>rese&amp;rve</source>
        <translation>S&amp;icherheitsreserve</translation>
    </message>
    <message>
        <source>Stores every hive should still hold when spring forage starts. Empty: what the size of its colony asks for.</source>
        <translation>Futter, das jede Beute bei Beginn der Frühtracht noch haben soll. Leer: was die Größe des Volkes verlangt.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StartPage</name>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>Be&amp;gin the book</source>
        <translation>Stockbuch be&amp;ginnen</translation>
    </message>
    <message>
        <source>Will what is in the hive last until spring forage starts?</source>
        <translation>Reicht das, was in der Beute ist, bis zur Frühtracht?</translation>
    </message>
    <message>
        <source>Three questions, then your yard. Everything you write is kept in one file on your computer, and every step can be taken back.</source>
        <translation>Drei Fragen, dann Ihr Stand. Alles, was Sie eintragen, liegt in einer Datei auf Ihrem Rechner, und jeder Schritt lässt sich zurücknehmen.</translation>
    </message>
    <message>
        <source>&amp;Try the demo</source>
        <translation>&amp;Beispielstand ansehen</translation>
    </message>
    <message>
        <source>An invented orchard yard to look round in; nothing of yours is changed</source>
        <translation>Ein erfundener Stand in einem Obstgarten zum Umsehen; von Ihrem wird nichts geändert</translation>
    </message>
    <message>
        <source>&amp;Open a book or case files…</source>
        <translation>Stockbuch oder Falldateien ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Bac&amp;k (Esc)</source>
        <translation>&amp;Zurück (Esc)</translation>
    </message>
    <message>
        <source>1. Where are your bees?</source>
        <translation>1. Wo stehen Ihre Bienen?</translation>
    </message>
    <message>
        <source>Home yard</source>
        <translation>Stand am Haus</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Name des Standes</translation>
    </message>
    <message>
        <source>What you call the place:</source>
        <translation>Wie Sie den Stand nennen:</translation>
    </message>
    <message>
        <source>2. What hive do they live in?</source>
        <translation>2. In welcher Beute leben sie?</translation>
    </message>
    <message>
        <source>its combs have measures of their o&amp;wn</source>
        <translation>ihre Waben haben &amp;eigene Maße</translation>
    </message>
    <message>
        <source>3. Which colonies?</source>
        <translation>3. Welche Völker?</translation>
    </message>
    <message>
        <source>Numbers in</source>
        <translation>Zahlen in</translation>
    </message>
    <message>
        <source>kilograms and litres</source>
        <translation>Kilogramm und Liter</translation>
    </message>
    <message>
        <source>pounds and US gallons</source>
        <translation>Pfund (lb) und US-Gallonen</translation>
    </message>
    <message>
        <source>pounds and imperial gallons</source>
        <translation>Pfund (lb) und britische Gallonen</translation>
    </message>
    <message>
        <source>%1 stays open until the new book is begun.</source>
        <translation>%1 bleibt offen, bis das neue Stockbuch begonnen ist.</translation>
    </message>
    <message>
        <source>Say where the bees are: choose a place from the list, or type latitude and longitude.</source>
        <translation>Sagen Sie, wo die Bienen stehen: Wählen Sie einen Ort aus der Liste oder geben Sie Breite und Länge ein.</translation>
    </message>
    <message>
        <source>The yard needs a name.</source>
        <translation>Der Stand braucht einen Namen.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StepListModel</name>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>taken back for good</source>
        <translation>endgültig zurückgenommen</translation>
    </message>
    <message>
        <source>When it was written into the book</source>
        <translation>Wann es ins Stockbuch eingetragen wurde</translation>
    </message>
    <message>
        <source>when</source>
        <translation>wann</translation>
    </message>
    <message>
        <source>Who wrote it</source>
        <translation>Wer es eingetragen hat</translation>
    </message>
    <message>
        <source>by</source>
        <translation>von</translation>
    </message>
    <message>
        <source>The colony or yard it is about</source>
        <translation>Das Volk oder der Stand, um den es geht</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>Volk</translation>
    </message>
    <message>
        <source>What was changed; the newest first</source>
        <translation>Was geändert wurde; Neuestes zuerst</translation>
    </message>
    <message>
        <source>what was changed</source>
        <translation>was geändert wurde</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StoryPage</name>
    <message>
        <source>What to read</source>
        <translation>Was Sie lesen wollen</translation>
    </message>
    <message>
        <source>everything written down of this colony</source>
        <translation>alle Einträge dieses Volkes</translation>
    </message>
    <message>
        <source>every step of the whole book</source>
        <translation>jeder Schritt des ganzen Stockbuchs</translation>
    </message>
    <message>
        <source>past forecasts against what happened</source>
        <translation>vergangene Prognosen und was geschah</translation>
    </message>
    <message>
        <source>Everything written down of this colony, newest first</source>
        <translation>Alle Einträge dieses Volkes, neueste zuerst</translation>
    </message>
    <message>
        <source>Nothing is written down yet. Looks, weighings, feeds, harvests, treatments and notes will stand here.</source>
        <translation>Noch ist nichts eingetragen. Durchsichten, Wägungen, Futtergaben, Honigernten, Behandlungen und Notizen stehen dann hier.</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>N&amp;otiz…</translation>
    </message>
    <message>
        <source>Ha&amp;rvest…</source>
        <translation>Honi&amp;gernte…</translation>
    </message>
    <message>
        <source>Treat&amp;ment…</source>
        <translation>Behan&amp;dlung…</translation>
    </message>
    <message>
        <source>H&amp;ow the winter went…</source>
        <translation>Wie der Winter a&amp;usging…</translation>
    </message>
    <message>
        <source>What became of it…</source>
        <translation>Was aus ihm wurde…</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherDialog</name>
    <message>
        <source>Daily temperatures: %1</source>
        <translation>Tagestemperaturen: %1</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>date=D,mean=T or date=D,min=TMIN,max=TMAX</source>
        <translation>date=D,mean=T oder date=D,min=TMIN,max=TMAX</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>What would be imported</source>
        <translation>Was importiert würde</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Sie &amp;stimmen so</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importieren</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>columns (empty: date, and mean or min and max)</source>
        <translation>Spalten (leer: Datum und Mittel oder Min und Max)</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Wird gelesen…</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>No day with a temperature is in it.</source>
        <translation>Kein Tag mit einer Temperatur ist darin.</translation>
    </message>
    <message>
        <source>Days: %1, %2 to %3, the coldest %4. They hold for every colony of the yard; where tables overlap the later one counts.</source>
        <translation>Tage: %1, %2 bis %3, der kälteste %4. Sie gelten für jedes Volk des Standes; wo Tabellen sich überschneiden, zählt die spätere.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherPart</name>
    <message>
        <source>The weather so far</source>
        <translation>Das Wetter bis jetzt</translation>
    </message>
    <message>
        <source>&amp;Daily temperatures…</source>
        <translation>&amp;Tagestemperaturen…</translation>
    </message>
    <message>
        <source>Your own daily temperatures since autumn stand in for the simulated days that are past</source>
        <translation>Ihre eigenen Tagestemperaturen seit dem Herbst treten an die Stelle der durchgerechneten Tage, die vorbei sind</translation>
    </message>
    <message>
        <source>Take the last table out</source>
        <translation>Letzte Tabelle entfernen</translation>
    </message>
    <message>
        <source>No measured temperatures yet: past days of a winter are simulated like those to come.</source>
        <translation>Noch keine gemessenen Temperaturen: Vergangene Tage eines Winters werden gerechnet wie die künftigen.</translation>
    </message>
    <message>
        <source>Days measured: %1, %2 to %3; the last table: %4.</source>
        <translation>Gemessene Tage: %1, %2 bis %3; die letzte Tabelle: %4.</translation>
    </message>
    <message>
        <source>Daily temperatures</source>
        <translation>Tagestemperaturen</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tabellen (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeighLineTable</name>
    <message>
        <source>Weights to expect, hive and all</source>
        <translation>Zu erwartendes Gesamtgewicht</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>weight to expect, hive and all (80 of 100 between)</source>
        <translation>zu erwartendes Gesamtgewicht (dazwischen liegen 80 von 100)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeighingField</name>
    <message>
        <source>How the hive was weighed</source>
        <translation>Wie die Beute gewogen wurde</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>nicht gewogen</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>auf einer Waage</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>an beiden Seiten gewogen</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>an einer Seite gewogen</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>von Hand angehoben</translation>
    </message>
    <message>
        <source>Weight, all of the hive or the left side</source>
        <translation>Gewicht der ganzen Beute oder der linken Seite</translation>
    </message>
    <message>
        <source>Weight, right side</source>
        <translation>Gewicht der rechten Seite</translation>
    </message>
    <message>
        <source>How heavy it felt</source>
        <translation>Wie schwer sie sich anfühlte</translation>
    </message>
    <message>
        <source>light or heavy?</source>
        <translation>leicht oder schwer?</translation>
    </message>
    <message>
        <source>light</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>schwer</translation>
    </message>
    <message>
        <source>on</source>
        <translation>am</translation>
    </message>
    <message>
        <source>Day of weighing</source>
        <translation>Tag der Wägung</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WhatIfPage</name>
    <message>
        <source>Move a slider: the picture above and the chances here follow. Nothing is written down until you make it the plan.</source>
        <translation>Bewegen Sie einen Schieber: Das Bild oben und die Wahrscheinlichkeiten hier folgen. Eingetragen wird nichts, bis Sie es zum Plan machen.</translation>
    </message>
    <message>
        <source>Chances of what is tried</source>
        <translation>Wahrscheinlichkeiten für das Ausprobierte</translation>
    </message>
    <message>
        <source>State of the reckoning</source>
        <translation>Stand der Berechnung</translation>
    </message>
    <message>
        <source>Ma&amp;ke this the plan</source>
        <translation>Das zum Plan ma&amp;chen</translation>
    </message>
    <message>
        <source>Back t&amp;o what is</source>
        <translation>Zurück zum wirklichen S&amp;tand</translation>
    </message>
    <message>
        <source>Slider: %1</source>
        <translation>Schieber: %1</translation>
    </message>
    <message>
        <source>take off now</source>
        <translation>jetzt ernten</translation>
    </message>
    <message>
        <source>feed sugar</source>
        <translation>Zucker füttern</translation>
    </message>
    <message>
        <source>more or fewer bees</source>
        <translation>mehr oder weniger Bienen</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>forage comes later by</source>
        <translation>Frühtracht kommt später um</translation>
    </message>
    <message>
        <source> days</source>
        <translation> Tage</translation>
    </message>
    <message>
        <source>the hive is wrappe&amp;d</source>
        <translation>&amp;die Beute ist eingepackt</translation>
    </message>
    <message>
        <source>Simulating these winters…</source>
        <translation>Diese Winter werden durchgerechnet…</translation>
    </message>
    <message>
        <source>Simulating the winters…</source>
        <translation>Die Winter werden durchgerechnet…</translation>
    </message>
    <message>
        <source>What can be tried is the autumn&apos;s question; this winter is under way. The page “On the scale” says how it goes and what to do.</source>
        <translation>Was sich ausprobieren lässt, ist die Frage des Herbstes; dieser Winter läuft schon. Die Seite „Auf der Waage“ sagt, wie er läuft und was zu tun ist.</translation>
    </message>
    <message>
        <source>Nothing can be tried before there is an answer.</source>
        <translation>Bevor es eine Antwort gibt, lässt sich nichts ausprobieren.</translation>
    </message>
    <message>
        <source>Tried out over %1 winters; nothing of it is written down.</source>
        <translation>Ausprobiert über %1 Winter; nichts davon ist eingetragen.</translation>
    </message>
    <message>
        <source>As tried, %1 or more are left in %2 of 100 simulated winters, and in %3 the food runs out; left as it is, in %4, and in %5. About %6 would be left when spring forage starts.</source>
        <translation>So ausprobiert, sind in %2 von 100 durchgerechneten Wintern %1 oder mehr übrig, und in %3 geht das Futter aus; so gelassen, in %4, und in %5. Bei Beginn der Frühtracht wären etwa %6 übrig.</translation>
    </message>
    <message>
        <source>A first sight over few winters; the full answer follows.</source>
        <translation>Ein erster Blick über wenige Winter; die ganze Antwort folgt.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WhyWindow</name>
    <message>
        <source>Reasons and cautions with their sources</source>
        <translation>Gründe und Vorsicht mit ihren Quellen</translation>
    </message>
    <message>
        <source>Good &amp;practice</source>
        <translation>Gute imkerliche &amp;Praxis</translation>
    </message>
    <message>
        <source>What holds for every hive at this time of the year</source>
        <translation>Was um diese Jahreszeit für jede Beute gilt</translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation>Warum? %1</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Good practice</source>
        <translation>Gute imkerliche Praxis</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WinterPlot</name>
    <message>
        <source>Winter picture: stores through the winter</source>
        <translation>Winterbild: Futtervorrat durch den Winter</translation>
    </message>
    <message>
        <source>Drawing of the winters</source>
        <translation>Zeichnung der Winter</translation>
    </message>
    <message>
        <source>reads out the day before or the next day</source>
        <translation>liest den Tag davor oder danach ab</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>eine Woche</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>einen Monat</translation>
    </message>
    <message>
        <source>the first or the last day</source>
        <translation>den ersten oder den letzten Tag</translation>
    </message>
    <message>
        <source>fewer or more days</source>
        <translation>weniger oder mehr Tage</translation>
    </message>
    <message>
        <source>the whole winter</source>
        <translation>der ganze Winter</translation>
    </message>
    <message>
        <source>reads out no day; once more: the whole winter</source>
        <translation>liest keinen Tag ab; noch einmal: der ganze Winter</translation>
    </message>
    <message>
        <source>a living colony eats %1 a day (adults %2, warmth for brood %3, food for brood %4) at %5</source>
        <translation>ein lebendes Volk verbraucht %1 am Tag (Bienen %2, Wärme für die Brut %3, Futter für die Brut %4) bei %5</translation>
    </message>
    <message>
        <source>%1 %2, under the reserve in %3 of 100 winters</source>
        <translation>%1 %2, unter der Sicherheitsreserve in %3 von 100 Wintern</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>%1: low, %2</source>
        <translation>%1: unten, %2</translation>
    </message>
    <message>
        <source>%1: middle, %2</source>
        <translation>%1: Mitte, %2</translation>
    </message>
    <message>
        <source>%1: high, %2</source>
        <translation>%1: oben, %2</translation>
    </message>
    <message>
        <source>%1: under reserve, of 100</source>
        <translation>%1: unter der Sicherheitsreserve, von 100</translation>
    </message>
    <message>
        <source>adults, %1</source>
        <translation>Bienen, %1</translation>
    </message>
    <message>
        <source>warmth for brood, %1</source>
        <translation>Wärme für die Brut, %1</translation>
    </message>
    <message>
        <source>food for brood, %1</source>
        <translation>Futter für die Brut, %1</translation>
    </message>
    <message>
        <source>air, %1</source>
        <translation>Luft, %1</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>Vom %1 bis zum %2</translation>
    </message>
    <message>
        <source>%1: %2 today, %3 as forage starts, then under the reserve in %4 of 100 winters</source>
        <translation>%1: heute %2, bei Beginn der Frühtracht %3, dann unter der Sicherheitsreserve in %4 von 100 Wintern</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>last nectar 30 Sep</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>arrow keys read out each day</source>
        <translation>Pfeiltasten lesen jeden Tag ab</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::Yard</name>
    <message>
        <source>The yard</source>
        <translation>Der Stand</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardDelegate</name>
    <message>
        <source>Yard</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>working it out</source>
        <translation>wird berechnet</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardListModel</name>
    <message>
        <source>%1, the whole yard: %2</source>
        <translation>%1, der ganze Stand: %2</translation>
    </message>
    <message>
        <source>One colony</source>
        <translation>Ein Volk</translation>
    </message>
    <message numerus="yes">
        <source>%n colonies</source>
        <translation>
            <numerusform>Ein Volk</numerusform>
            <numerusform>%n Völker</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, nothing due this week</source>
        <translation>%1, diese Woche nichts fällig</translation>
    </message>
    <message>
        <source>%1, %2 due this week</source>
        <translation>%1, diese Woche fällig: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2, %3; %4 in the hive</source>
        <translation>%1: %2, %3; %4 in der Beute</translation>
    </message>
    <message>
        <source>feed today</source>
        <translation>heute füttern</translation>
    </message>
    <message>
        <source>feed by %1</source>
        <translation>füttern bis %1</translation>
    </message>
    <message>
        <source>weigh by %1</source>
        <translation>wiegen bis %1</translation>
    </message>
    <message>
        <source>Colony without a name</source>
        <translation>Volk ohne Namen</translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation>nicht berechnet</translation>
    </message>
    <message>
        <source>records disagree</source>
        <translation>Einträge widersprechen sich</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardPane</name>
    <message>
        <source>Back to the page</source>
        <translation>Zurück zur Seite</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Show the whole list, and the day asked about</source>
        <translation>Die ganze Liste und den Stichtag zeigen</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardView</name>
    <message>
        <source>Pages of the yard</source>
        <translation>Seiten des Standes</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <source>P&amp;lace</source>
        <translation>Stand&amp;ort</translation>
    </message>
    <message>
        <source>Everything to do, by day</source>
        <translation>Alles, was zu tun ist, nach Tagen</translation>
    </message>
    <message>
        <source>“Advised” is what today&apos;s answers ask for; “Make it the plan” on a colony&apos;s page makes it yours. Enter on a row opens its colony.</source>
        <translation>„empfohlen“ ist, was die heutigen Antworten verlangen; „Zum Plan machen“ auf der Seite eines Volkes macht es zu Ihrem. Die Eingabetaste auf einer Zeile öffnet das Volk.</translation>
    </message>
    <message>
        <source>Visit &amp;made</source>
        <translation>Termin er&amp;ledigt</translation>
    </message>
    <message>
        <source>S&amp;kip the visit</source>
        <translation>Termin a&amp;uslassen</translation>
    </message>
    <message>
        <source>The yard is empty. Add a colony: its name and the hive it lives in. Then write down one look – which combs hold honey, and how many the bees cover – and the answer stands here: whether it lasts, what to feed, or what may come off.</source>
        <translation>Der Stand ist leer. Legen Sie ein Volk an: seinen Namen und die Beute, in der es lebt. Dann tragen Sie eine Durchsicht ein – welche Waben Honig enthalten und wie viele die Bienen besetzen –, und hier steht die Antwort: ob es reicht, was zu füttern ist oder was geerntet werden kann.</translation>
    </message>
    <message>
        <source>&amp;Add a colony…</source>
        <translation>Volk anle&amp;gen…</translation>
    </message>
    <message>
        <source>White sugar to buy</source>
        <translation>Weißer Zucker zu kaufen</translation>
    </message>
    <message>
        <source>Fondant to buy</source>
        <translation>Futterteig zu kaufen</translation>
    </message>
    <message>
        <source>Honey that may come off</source>
        <translation>Honig, der geerntet werden kann</translation>
    </message>
    <message>
        <source>%{Combs} to move first</source>
        <translation>Zuerst umzuhängende Waben</translation>
    </message>
    <message>
        <source>Move %{combs} between hives</source>
        <translation>Waben zwischen Beuten umhängen</translation>
    </message>
    <message>
        <source>Off: the plan and all answers as they are if every %{comb} stays in its hive</source>
        <translation>Aus: der Plan und alle Antworten so, wie sie sind, wenn jede Wabe in ihrer Beute bleibt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis zu %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ZoneLegend</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>E</source>
        <comment>key that empties a comb</comment>
        <translation>L</translation>
    </message>
    <message>
        <source>Patterns: capped, open nectar, brood, bee bread, empty</source>
        <translation>Muster: verdeckelt, offener Nektar, Brut, Bienenbrot, leer</translation>
    </message>
    <message>
        <source>Type a letter to pick a zone, then digits: 7 is 70 %, 75 is 75 %. Shift with the letter: all empty cells. Space: as the last comb. E: empty. F: faces seen. W: through a window. U: built. Or drag an edge.</source>
        <translation>Ein Buchstabe wählt eine Fläche, dann Ziffern: 7 ist 70&#xa0;%, 75 ist 75&#xa0;%. Umschalt mit dem Buchstaben: alle leeren Zellen. Leertaste: wie die letzte Wabe. L: leer. S: gesehene Seiten. F: durch ein Sichtfenster. A: ausgebaut. Oder ziehen Sie eine Kante.</translation>
    </message>
</context>
</TS>
