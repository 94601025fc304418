<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pl" sourcelanguage="en">
<context>
    <name>Arguments</name>
    <message>
        <source>%1 needs a folder after it</source>
        <translation>po %1 trzeba podać folder</translation>
    </message>
    <message>
        <source>--day needs a day after it, as 2026-09-14</source>
        <translation>po --day trzeba podać dzień, np. 2026-09-14</translation>
    </message>
    <message>
        <source>unknown option %1; --help lists them</source>
        <translation>nieznana opcja %1; --help podaje wszystkie</translation>
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
        <translation>Użycie: winterlarder [PLIK...]
        winterlarder --pictures FOLDER [PLIK...]

Otwiera w oknie dziennik albo rodziny z plików danych; bez plików ostatnio otwarty dziennik.
Czy to, co jest w ulu, wystarczy do początku pożytków wiosennych?

  --demo             otwiera przykładową pasiekę: sześć zmyślonych rodzin w sadzie
  --day DZIEŃ        liczy na ten dzień (2026-09-14) zamiast na dziś
  --pictures FOLDER  zapisuje w folderze okno, obraz zimy i kartę każdej rodziny oraz plan pasieki,
                     wypisuje ich nazwy i kończy; nie wymaga ekranu
  --language KOD     mówi w tym języku (en) zamiast w wybranym w Ustawieniach lub systemowym
  --data FOLDER      bierze dołączone dane z innego folderu
  --version          podaje wersję programu
  --help             pokazuje ten tekst
</translation>
    </message>
</context>
<context>
    <name>Choices</name>
    <message>
        <source>no more than weeds and ivy bring</source>
        <translation>tylko tyle, ile dają chwasty i&#xa0;bluszcz</translation>
    </message>
    <message>
        <source>a trickle</source>
        <translation>słaby pożytek</translation>
    </message>
    <message>
        <source>a fair flow</source>
        <translation>średni pożytek</translation>
    </message>
    <message>
        <source>a strong flow</source>
        <translation>silny pożytek</translation>
    </message>
    <message>
        <source>timber</source>
        <translation>drewno</translation>
    </message>
    <message>
        <source>thick timber</source>
        <translation>grube drewno</translation>
    </message>
    <message>
        <source>wrapped</source>
        <translation>owinięty</translation>
    </message>
    <message>
        <source>polystyrene</source>
        <translation>styropian</translation>
    </message>
    <message>
        <source>straw</source>
        <translation>słoma</translation>
    </message>
    <message>
        <source>dark bee</source>
        <translation>środkowoeuropejska</translation>
    </message>
    <message>
        <source>carniolan</source>
        <translation>kraińska</translation>
    </message>
    <message>
        <source>buckfast</source>
        <translation>buckfast</translation>
    </message>
    <message>
        <source>italian</source>
        <translation>włoska</translation>
    </message>
    <message>
        <source>light</source>
        <translation>lekki</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>średni</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>ciężki</translation>
    </message>
    <message>
        <source>round feeder</source>
        <translation>podkarmiaczka okrągła</translation>
    </message>
    <message>
        <source>tray on top</source>
        <translation>podkarmiaczka powałkowa</translation>
    </message>
    <message>
        <source>bucket in an empty box</source>
        <translation>wiadro w&#xa0;pustym korpusie</translation>
    </message>
    <message>
        <source>contact feeder</source>
        <translation>odwrócone wiaderko</translation>
    </message>
    <message>
        <source>frame feeder</source>
        <translation>podkarmiaczka ramkowa</translation>
    </message>
    <message>
        <source>feeder at the end of the bars</source>
        <translation>podkarmiaczka za zatworem</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>syrop</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>ciasto</translation>
    </message>
    <message>
        <source>dry sugar</source>
        <translation>suchy cukier</translation>
    </message>
    <message>
        <source>white</source>
        <translation>biały</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>żółty</translation>
    </message>
    <message>
        <source>red</source>
        <translation>czerwony</translation>
    </message>
    <message>
        <source>green</source>
        <translation>zielony</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>niebieski</translation>
    </message>
    <message>
        <source>united with another</source>
        <translation>połączona z&#xa0;inną</translation>
    </message>
    <message>
        <source>sold or given away</source>
        <translation>sprzedana lub oddana</translation>
    </message>
    <message>
        <source>died</source>
        <translation>zginęła</translation>
    </message>
    <message>
        <source>gentle</source>
        <translation>łagodna</translation>
    </message>
    <message>
        <source>calm</source>
        <translation>spokojna</translation>
    </message>
    <message>
        <source>nervous</source>
        <translation>nerwowa</translation>
    </message>
    <message>
        <source>fierce</source>
        <translation>złośliwa</translation>
    </message>
    <message>
        <source>%{combs} put in</source>
        <translation>wstawione ramki</translation>
    </message>
    <message>
        <source>%{combs} taken out</source>
        <translation>wyjęte ramki</translation>
    </message>
    <message>
        <source>%{combs} given to another colony</source>
        <translation>ramki oddane innej rodzinie</translation>
    </message>
    <message>
        <source>boxes put on</source>
        <translation>dostawione korpusy</translation>
    </message>
    <message>
        <source>boxes taken off</source>
        <translation>zdjęte korpusy</translation>
    </message>
    <message>
        <source>boxes given to another colony</source>
        <translation>korpusy oddane innej rodzinie</translation>
    </message>
    <message>
        <source>give syrup</source>
        <translation>podać syrop</translation>
    </message>
    <message>
        <source>lay on fondant</source>
        <translation>położyć ciasto</translation>
    </message>
    <message>
        <source>check and weigh</source>
        <translation>sprawdzić i&#xa0;zważyć</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>zaplanowana</translation>
    </message>
    <message>
        <source>done</source>
        <translation>wykonana</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>pominięta</translation>
    </message>
    <message>
        <source>bees flying</source>
        <translation>pszczoły latają</translation>
    </message>
    <message>
        <source>the cluster</source>
        <translation>kłąb</translation>
    </message>
    <message>
        <source>stores under the cover</source>
        <translation>zapasy pod powałką</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>martwa</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>bez czerwiu</translation>
    </message>
    <message>
        <source>solid</source>
        <translation>zwarty</translation>
    </message>
    <message>
        <source>patchy</source>
        <translation>rozstrzelony</translation>
    </message>
</context>
<context>
    <name>CombTyping</name>
    <message>
        <source>E</source>
        <comment>key that empties a comb</comment>
        <translation>U</translation>
    </message>
    <message>
        <source>F</source>
        <comment>key for the faces seen</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>W</source>
        <comment>key for seen through a window</comment>
        <translation>K</translation>
    </message>
    <message>
        <source>built</source>
        <translation>odbudowane</translation>
    </message>
    <message>
        <source>C</source>
        <comment>key that picks capped stores</comment>
        <translation>Z</translation>
    </message>
    <message>
        <source>O</source>
        <comment>key that picks open nectar</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>B</source>
        <comment>key that picks brood</comment>
        <translation>C</translation>
    </message>
    <message>
        <source>P</source>
        <comment>key that picks bee bread (pollen)</comment>
        <translation>P</translation>
    </message>
    <message>
        <source>U</source>
        <comment>key that picks how much is built</comment>
        <translation>O</translation>
    </message>
    <message>
        <source>picks %1: digits set its share</source>
        <translation>wybiera: %1; cyfry podają udział</translation>
    </message>
    <message>
        <source>gives the zone all cells that are empty</source>
        <translation>oddaje strefie wszystkie puste komórki</translation>
    </message>
    <message>
        <source>the share in tenths; a second digit makes it finer: 7 is 70 %, 75 is 75 %</source>
        <translation>udział w&#xa0;dziesiątych; druga cyfra podaje dokładniej: 7 to 70%, 75 to 75%</translation>
    </message>
    <message>
        <source>5 % more or less</source>
        <translation>5% więcej lub mniej</translation>
    </message>
    <message>
        <source>empties the comb</source>
        <translation>opróżnia plaster</translation>
    </message>
    <message>
        <source>both faces seen, one, or none</source>
        <translation>widziane obie strony, jedna albo żadna</translation>
    </message>
    <message>
        <source>seen through a window, or not</source>
        <translation>widziany przez okienko albo nie</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>Reasons</source>
        <translation>Powody</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Na co uważać</translation>
    </message>
    <message>
        <source>Good practice</source>
        <translation>Dobra praktyka pszczelarska</translation>
    </message>
    <message>
        <source>Colony without a name</source>
        <translation>Rodzina bez nazwy</translation>
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
        <translation>Jedno pytanie: %1</translation>
    </message>
    <message>
        <source>Its own stores</source>
        <translation>Jej własne zapasy</translation>
    </message>
    <message>
        <source>Its own bees</source>
        <translation>Jej własne pszczoły</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Zapasy</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>od %1 do %2</translation>
    </message>
    <message>
        <source>Stores of both</source>
        <translation>Zapasy obu rodzin</translation>
    </message>
    <message>
        <source>Bees of both</source>
        <translation>Pszczoły obu rodzin</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Pszczoły</translation>
    </message>
    <message>
        <source>Eaten until spring forage</source>
        <translation>Zużycie do pożytków wiosennych</translation>
    </message>
    <message>
        <source>Need</source>
        <translation>Zapotrzebowanie</translation>
    </message>
    <message>
        <source>%1: typically eaten %2, for a harder winter %3, to be left %4</source>
        <translation>%1: zwykle zużyją %2, na surowszą zimę %3, ma zostać %4</translation>
    </message>
    <message>
        <source>Until %1</source>
        <translation>Do %1</translation>
    </message>
    <message>
        <source>eaten %1, found %2</source>
        <translation>zużycie %1, przyniesione %2</translation>
    </message>
    <message>
        <source>The %{combs} hold</source>
        <translation>Plastry mieszczą</translation>
    </message>
    <message>
        <source>Left when spring forage starts</source>
        <translation>Zostanie na początku pożytków wiosennych</translation>
    </message>
    <message>
        <source>Empty comb at the look</source>
        <translation>Pusty susz przy przeglądzie</translation>
    </message>
    <message>
        <source>Figures (10th to 90th percentile in brackets)</source>
        <translation>Liczby (w nawiasach od 10. do 90. percentyla)</translation>
    </message>
    <message>
        <source>Missing on %1</source>
        <translation>Brakuje na dzień %1</translation>
    </message>
    <message>
        <source>%1 (from %2 to spare to %3 missing)</source>
        <translation>%1 (od %2 nadwyżki do %3 niedoboru)</translation>
    </message>
    <message>
        <source>To spare on %1</source>
        <translation>Nadwyżka na dzień %1</translation>
    </message>
    <message>
        <source>%1 (from %2 missing to %3 to spare)</source>
        <translation>%1 (od %2 niedoboru do %3 nadwyżki)</translation>
    </message>
    <message>
        <source>%1 (%2, exact)</source>
        <translation>%1 (%2, dokładnie)</translation>
    </message>
    <message>
        <source>%1 ± %2 days (%3)</source>
        <translation>%1 ± %2 dni (%3)</translation>
    </message>
    <message>
        <source>Weight to expect, hive and all, without what is fed later</source>
        <translation>Spodziewana masa całego ula, bez tego, co zostanie podane później</translation>
    </message>
    <message>
        <source>Weight to expect, hive and all</source>
        <translation>Spodziewana masa całego ula</translation>
    </message>
    <message>
        <source>With your super on, and the honey that is in it now.</source>
        <translation>Z nałożoną nadstawką i miodem, który teraz w niej jest.</translation>
    </message>
    <message>
        <source>With your super off.</source>
        <translation>Bez nadstawki.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Dzień</translation>
    </message>
    <message>
        <source>&gt;Weight</source>
        <translation>&gt;Masa</translation>
    </message>
    <message>
        <source>Use by month</source>
        <translation>Zużycie w miesiącach</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Miesiąc</translation>
    </message>
    <message>
        <source>&gt;Use</source>
        <translation>&gt;Zużycie</translation>
    </message>
    <message>
        <source>Options once %1 is united onto it, over the same %2 simulated winters</source>
        <translation>Możliwości po dołączeniu rodziny %1, na tych samych symulowanych zimach (%2)</translation>
    </message>
    <message>
        <source>Options, over the same %1 simulated winters</source>
        <translation>Możliwości, na tych samych symulowanych zimach (%1)</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Możliwość</translation>
    </message>
    <message>
        <source>&gt;Of stores</source>
        <translation>&gt;Z zapasów</translation>
    </message>
    <message>
        <source>&gt;Stores after</source>
        <translation>&gt;Zapasy potem</translation>
    </message>
    <message>
        <source>&gt;Runs out</source>
        <translation>&gt;Kończą się</translation>
    </message>
    <message>
        <source>&gt;Falls below %1</source>
        <translation>&gt;Poniżej %1</translation>
    </message>
    <message>
        <source>&gt;Left in spring</source>
        <translation>&gt;Zostaje na wiosnę</translation>
    </message>
    <message>
        <source>Unite it soon, at the latest on %1. %2</source>
        <translation>Połączyć wkrótce, najpóźniej %1. %2</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Karmienie</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Cukier</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Woda</translation>
    </message>
    <message>
        <source>Syrup</source>
        <translation>Syrop</translation>
    </message>
    <message>
        <source>%1, %2 by mass</source>
        <translation>%1, %2 wagowo</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Ciasto</translation>
    </message>
    <message>
        <source>Last day for syrup</source>
        <translation>Ostatni dzień na syrop</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Wizyta</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Co</translation>
    </message>
    <message>
        <source>&gt;Sugar</source>
        <translation>&gt;Cukier</translation>
    </message>
    <message>
        <source>&gt;Syrup</source>
        <translation>&gt;Syrop</translation>
    </message>
    <message>
        <source>&gt;Fondant</source>
        <translation>&gt;Ciasto</translation>
    </message>
    <message>
        <source>From %1 to %2: %3 (%4).</source>
        <translation>Z rodziny %1 do rodziny %2: %3 (%4).</translation>
    </message>
    <message>
        <source>%1 As many of the emptiest outer %{combs} go back, and are taken off that weight.</source>
        <translation>%1 Tyle samo najbardziej pustych skrajnych ramek wraca; odliczono je już od tej masy.</translation>
    </message>
    <message>
        <source>%1 Back go: %2.</source>
        <translation>%1 Wracają: %2.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Miodobranie</translation>
    </message>
    <message>
        <source>%1 in all: %2.</source>
        <translation>Razem %1: %2.</translation>
    </message>
    <message>
        <source>%{Combs} to move within the yard</source>
        <translation>Ramki do przestawienia w pasiece</translation>
    </message>
    <message numerus="yes">
        <source>%1: not answered, %n faults
</source>
        <comment>a case file</comment>
        <translation>
            <numerusform>%1: bez odpowiedzi, %n błąd
</numerusform>
            <numerusform>%1: bez odpowiedzi, %n błędy
</numerusform>
            <numerusform>%1: bez odpowiedzi, %n błędów
</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: not answered
</source>
        <comment>a colony</comment>
        <translation>%1: bez odpowiedzi
</translation>
    </message>
    <message>
        <source>new: %1 lines, changed: %2, already in the book and left out: %3
</source>
        <translation>nowe wiersze: %1, zmienione: %2, pominięte, bo są już w dzienniku: %3
</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Kiedy</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Kto</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stan</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Plik</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Rozmiar</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 bajtów</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Założono</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Kroki</translation>
    </message>
    <message>
        <source>sound
</source>
        <translation>bez uszkodzeń
</translation>
    </message>
    <message>
        <source>&gt;Bytes</source>
        <translation>&gt;Bajty</translation>
    </message>
    <message>
        <source>lost: %1
</source>
        <translation>utracono: %1
</translation>
    </message>
    <message>
        <source>%1: not followed
</source>
        <comment>a colony</comment>
        <translation>%1: nie śledzono
</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Rodzina</translation>
    </message>
    <message>
        <source>&gt;Deaths</source>
        <translation>&gt;Ubywanie pszczół</translation>
    </message>
    <message>
        <source>weighings: %1, feeds: %2, harvests: %3, changes of equipment: %4; on days the book has already: %5
</source>
        <translation>ważenia: %1, karmienia: %2, miodobrania: %3, zmiany wyposażenia: %4; w dniach, które dziennik już zna: %5
</translation>
    </message>
    <message>
        <source>too few years to tell</source>
        <translation>za mało lat, by to stwierdzić</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Dni</translation>
    </message>
    <message>
        <source>%1 in %2 calendar years, %3 missing between them</source>
        <translation>%1 w ciągu %2 lat kalendarzowych, brakuje pomiędzy nimi: %3</translation>
    </message>
    <message>
        <source>Daily SD in winter, °C</source>
        <translation>Odch. std. dni zimą, °C</translation>
    </message>
    <message>
        <source>Daily SD in summer, °C</source>
        <translation>Odch. std. dni latem, °C</translation>
    </message>
    <message>
        <source>Correlation of consecutive days</source>
        <translation>Korelacja kolejnych dni</translation>
    </message>
    <message>
        <source>SD of a whole season, °C</source>
        <translation>Odch. std. całego sezonu, °C</translation>
    </message>
    <message>
        <source>&gt;Mean °C</source>
        <translation>&gt;Średnia °C</translation>
    </message>
    <message>
        <source>With --json this is printed as a site that a case file accepts.</source>
        <translation>Z --json wypisuje to jako miejsce, które przyjmuje plik danych rodziny.</translation>
    </message>
    <message>
        <source>&gt;Forecast in autumn</source>
        <translation>&gt;Prognoza z jesieni</translation>
    </message>
    <message>
        <source>&gt;Forecast now</source>
        <translation>&gt;Prognoza teraz</translation>
    </message>
    <message>
        <source>Stores today</source>
        <translation>Zapasy dziś</translation>
    </message>
    <message>
        <source>Lost since</source>
        <translation>Ubyło odtąd</translation>
    </message>
    <message>
        <source>Fall below %1</source>
        <translation>Spada poniżej %1</translation>
    </message>
    <message>
        <source>Run out</source>
        <translation>Kończą się</translation>
    </message>
    <message>
        <source>Below %1</source>
        <translation>Poniżej %1</translation>
    </message>
    <message>
        <source>Nothing left</source>
        <translation>Nic nie zostaje</translation>
    </message>
    <message>
        <source>Spring forage starts</source>
        <translation>Początek pożytków wiosennych</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (od %2 do %3)</translation>
    </message>
    <message>
        <source>most likely by now</source>
        <translation>najprawdopodobniej już</translation>
    </message>
    <message>
        <source>perhaps by now</source>
        <translation>być może już</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>od %1</translation>
    </message>
    <message>
        <source>%1, half by %2</source>
        <translation>%1, w połowie zim do %2</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Podać</translation>
    </message>
    <message>
        <source>Becomes stores</source>
        <translation>Da zapasów</translation>
    </message>
    <message>
        <source>Needed by</source>
        <translation>Potrzebne do</translation>
    </message>
    <message>
        <source>&gt;Amount</source>
        <translation>&gt;Ilość</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>ciasto</translation>
    </message>
    <message>
        <source>Seen since</source>
        <translation>Obserwacje odtąd</translation>
    </message>
    <message>
        <source>&gt;Read</source>
        <translation>&gt;Odczyt</translation>
    </message>
    <message>
        <source>&gt;Expected</source>
        <translation>&gt;Oczekiwano</translation>
    </message>
    <message>
        <source>What was found points to</source>
        <translation>Na co wskazuje to, co znaleziono</translation>
    </message>
    <message>
        <source>Look, and write it down with the outcome</source>
        <translation>Sprawdzić i zapisać razem z wynikiem zimowli</translation>
    </message>
    <message>
        <source>It cannot be followed.</source>
        <translation>Nie można śledzić tej zimy.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a point of the guide and what is said of it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Źródła</translation>
    </message>
    <message>
        <source>Judging stores</source>
        <translation>Jak oceniać zapasy</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Moc</translation>
    </message>
    <message>
        <source>  adult bees</source>
        <translation>  dorosłe pszczoły</translation>
    </message>
    <message>
        <source>  brood nest</source>
        <translation>  gniazdo z czerwiem</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Pokarm</translation>
    </message>
    <message>
        <source>%1 g a day</source>
        <translation>%1 g dziennie</translation>
    </message>
    <message>
        <source>Food for each bee</source>
        <translation>Pokarm na pszczołę</translation>
    </message>
    <message>
        <source>%1 mg a day</source>
        <translation>%1 mg dziennie</translation>
    </message>
    <message>
        <source>Power for each kg of bees</source>
        <translation>Moc na kg pszczół</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Stosunek</translation>
    </message>
    <message>
        <source>%1 sugar to water, by mass</source>
        <translation>%1 cukru do wody, wagowo</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Stężenie</translation>
    </message>
    <message>
        <source>%1 % sugar by mass, %2 kg/L at 20 °C</source>
        <translation>%1% cukru wagowo, %2 kg/l w 20 °C</translation>
    </message>
    <message>
        <source>Stores gained</source>
        <translation>Przybędzie zapasów</translation>
    </message>
    <message>
        <source>%1, ripened</source>
        <translation>%1, po przerobieniu</translation>
    </message>
    <message>
        <source>; %1 where not said</source>
        <translation>; %1, jeśli nie podano</translation>
    </message>
    <message>
        <source>%1 (%2%3): %4</source>
        <translation>%1 (%2%3): %4</translation>
    </message>
    <message>
        <source>One entry changed
</source>
        <translation>Zmieniono jeden wpis
</translation>
    </message>
    <message numerus="yes">
        <source>%n entries changed
</source>
        <translation>
            <numerusform>Zmieniono %n wpis
</numerusform>
            <numerusform>Zmieniono %n wpisy
</numerusform>
            <numerusform>Zmieniono %n wpisów
</numerusform>
        </translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Miejsce</translation>
    </message>
    <message>
        <source>&gt;Latitude</source>
        <translation>&gt;Szerokość</translation>
    </message>
    <message>
        <source>&gt;Longitude</source>
        <translation>&gt;Długość</translation>
    </message>
    <message>
        <source>&gt;Height</source>
        <translation>&gt;Wysokość</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Klimat</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>kolumna %1</translation>
    </message>
    <message>
        <source>%1, &quot;%2&quot;</source>
        <translation>%1, „%2”</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>, in UTC</source>
        <translation>, w UTC</translation>
    </message>
    <message>
        <source>, with their distance from UTC</source>
        <translation>, z odległością od UTC</translation>
    </message>
    <message>
        <source>, in seconds since 1970</source>
        <translation>, w sekundach od 1970</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Data</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Godzina</translation>
    </message>
    <message>
        <source>Date order</source>
        <translation>Kolejność daty</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Jednostka</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Odczyty</translation>
    </message>
    <message>
        <source>%1, one in %2 minutes</source>
        <translation>%1, jeden co %2 min</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Kolejność</translation>
    </message>
    <message>
        <source>newest first, turned round</source>
        <translation>od najnowszych, odwrócono</translation>
    </message>
    <message>
        <source>rows were not in the order of time and are sorted</source>
        <translation>wiersze nie szły po kolei w czasie i zostały posortowane</translation>
    </message>
    <message>
        <source>Same time</source>
        <translation>Ten sam czas</translation>
    </message>
    <message>
        <source>%1 rows share their time with another and are taken together</source>
        <translation>%1 wierszy ma ten sam czas co inny wiersz; liczą się razem</translation>
    </message>
    <message>
        <source>of UTC; --time-zone gives those of the place</source>
        <translation>według UTC; --time-zone daje dni miejsca</translation>
    </message>
    <message>
        <source>no time of day is given: taken as noon</source>
        <translation>brak godziny: przyjęto południe</translation>
    </message>
    <message>
        <source>&gt;Change kg</source>
        <translation>&gt;Zmiana kg</translation>
    </message>
    <message>
        <source>&gt;Nectar days</source>
        <translation>&gt;Dni z nektarem</translation>
    </message>
    <message>
        <source>&gt;kg</source>
        <translation>&gt;kg</translation>
    </message>
    <message>
        <source>&gt;Eating days</source>
        <translation>&gt;Dni zużycia</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Uwaga</translation>
    </message>
    <message>
        <source>an end was weighed by day, foragers out</source>
        <translation>jeden z końców zważono w dzień, bez pszczół lotnych</translation>
    </message>
    <message>
        <source>an end in the wet</source>
        <translation>jeden z końców na mokro</translation>
    </message>
    <message>
        <source>%1 days unknown</source>
        <translation>dni nieznanych: %1</translation>
    </message>
    <message>
        <source>Water in the wood and on the hive moves this log by about %1 kg from day to day: while it is too cold to fly a single day of nectar is water. The months themselves are right.</source>
        <translation>Woda w drewnie i na ulu zmienia ten zapis z dnia na dzień o około %1 kg: dopóki jest za zimno na loty, pojedynczy dzień z nektarem to woda. Same miesiące są wiarygodne.</translation>
    </message>
    <message>
        <source>No steps: nothing was put on, taken off or poured in.</source>
        <translation>Brak skoków: niczego nie dostawiono, nie zdjęto ani nie wlano.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Skok</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Rodzaj</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Dlaczego</translation>
    </message>
    <message>
        <source>late evening and early morning</source>
        <translation>późny wieczór i wczesny ranek</translation>
    </message>
    <message>
        <source>by day</source>
        <translation>w dzień</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>na mokro</translation>
    </message>
    <message>
        <source>and %1 more; --json lists them all</source>
        <translation>i jeszcze %1; --json podaje wszystkie</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>wiersz %1: %2</translation>
    </message>
    <message>
        <source>Rows left out: %1</source>
        <translation>Pominięte wiersze: %1</translation>
    </message>
    <message>
        <source>%1: %2 minutes back</source>
        <translation>%1: %2 min wstecz</translation>
    </message>
    <message>
        <source>%1: %2 minutes forward</source>
        <translation>%1: %2 min do przodu</translation>
    </message>
    <message>
        <source> (daylight saving)</source>
        <translation> (zmiana czasu)</translation>
    </message>
    <message>
        <source>%1: %2 kg of rain or snow</source>
        <translation>%1: %2 kg deszczu lub śniegu</translation>
    </message>
    <message>
        <source>%1: %2 kg and back</source>
        <translation>%1: %2 kg i z powrotem</translation>
    </message>
    <message>
        <source>Gaps: %1</source>
        <translation>Luki: %1</translation>
    </message>
    <message>
        <source>Clock put back or forward: %1</source>
        <translation>Przestawienia zegara: %1</translation>
    </message>
    <message>
        <source>Disturbed: %1</source>
        <translation>Zakłócenia: %1</translation>
    </message>
    <message>
        <source>Neither temperature nor day length ever falls far enough: no season can be derived here, give its dates yourself.</source>
        <translation>Ani temperatura, ani długość dnia nigdy nie spada tu dostatecznie: sezonu nie da się wyznaczyć, trzeba podać jego daty.</translation>
    </message>
    <message>
        <source>Laying never stops here, so there are no dates for its end and new start.</source>
        <translation>Czerwienie tu nie ustaje, więc nie ma daty jego końca ani wznowienia.</translation>
    </message>
    <message>
        <source>It never gets too cold for syrup to be taken and ripened.</source>
        <translation>Nigdy nie jest tu za zimno na pobranie i przerobienie syropu.</translation>
    </message>
    <message>
        <source>It never gets too cold for syrup to be taken.</source>
        <translation>Nigdy nie jest tu za zimno na pobieranie syropu.</translation>
    </message>
    <message>
        <source>The season lies at the edge of the rules: compare its dates with your own.</source>
        <translation>Sezon leży na skraju tego, co obejmują reguły: jego daty warto porównać z własnymi.</translation>
    </message>
    <message>
        <source>&gt;± SD</source>
        <translation>&gt;± odch.</translation>
    </message>
    <message>
        <source>&gt;Day length h</source>
        <translation>&gt;Długość dnia h</translation>
    </message>
    <message>
        <source>Own climate: %1</source>
        <translation>Własny klimat: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>  The %1</source>
        <comment>weather of a station</comment>
        <translation>  %1</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Stacja</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>Kraj</translation>
    </message>
    <message>
        <source>&gt;Distance</source>
        <translation>&gt;Odległość</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Oznaczenie</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nazwa</translation>
    </message>
    <message>
        <source>&gt;Comb face</source>
        <translation>&gt;Strona plastra</translation>
    </message>
    <message>
        <source>&gt;Combs</source>
        <translation>&gt;Plastry</translation>
    </message>
    <message>
        <source>&gt;Pitch</source>
        <translation>&gt;Odstęp</translation>
    </message>
    <message>
        <source>&gt;Full comb</source>
        <translation>&gt;Pełny plaster</translation>
    </message>
    <message>
        <source>&gt;Bees a comb</source>
        <translation>&gt;Pszczół na plaster</translation>
    </message>
    <message>
        <source>used by %1</source>
        <translation>użyte w: %1</translation>
    </message>
    <message>
        <source>&gt;%{Comb}</source>
        <translation>&gt;Ramka</translation>
    </message>
    <message>
        <source>&gt;Capped</source>
        <translation>&gt;Zasklepione</translation>
    </message>
    <message>
        <source>&gt;Open, as ripe honey</source>
        <translation>&gt;Nakrop, jako dojrzały miód</translation>
    </message>
    <message>
        <source>What says so</source>
        <translation>Skąd wiadomo</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Z dnia</translation>
    </message>
    <message>
        <source>&gt;Stores</source>
        <translation>&gt;Zapasy</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nieznane</translation>
    </message>
    <message>
        <source>Room in the %{combs}</source>
        <translation>Miejsce w plastrach</translation>
    </message>
    <message>
        <source>These contradict each other; the answer spans both.</source>
        <translation>Te dane są sprzeczne; odpowiedź obejmuje oba przypadki.</translation>
    </message>
    <message>
        <source>&gt;Use g</source>
        <translation>&gt;Zużycie g</translation>
    </message>
    <message>
        <source>&gt;Income g</source>
        <translation>&gt;Dopływ g</translation>
    </message>
    <message>
        <source>&gt;Bees</source>
        <translation>&gt;Pszczoły</translation>
    </message>
    <message>
        <source>&gt;Brood cells</source>
        <translation>&gt;Komórki czerwiu</translation>
    </message>
    <message>
        <source>&gt;Power W</source>
        <translation>&gt;Moc W</translation>
    </message>
    <message>
        <source>Use from %1 to %2</source>
        <translation>Zużycie od %1 do %2</translation>
    </message>
    <message>
        <source>Food eaten</source>
        <translation>Zjedzony pokarm</translation>
    </message>
    <message>
        <source>%1, mean %2</source>
        <translation>%1, średnio %2</translation>
    </message>
    <message>
        <source>  warmth for brood</source>
        <translation>  ciepło dla czerwiu</translation>
    </message>
    <message>
        <source>  food for brood</source>
        <translation>  pokarm dla czerwiu</translation>
    </message>
    <message>
        <source>Income</source>
        <translation>Dopływ nektaru</translation>
    </message>
    <message>
        <source>Bees at the end</source>
        <translation>Pszczoły na końcu</translation>
    </message>
    <message>
        <source>&gt;Mean</source>
        <translation>&gt;Średnia</translation>
    </message>
    <message>
        <source>The yard %1 as a whole</source>
        <translation>Pasieka %1 jako całość</translation>
    </message>
    <message>
        <source>Honey to take</source>
        <translation>Miód do odebrania</translation>
    </message>
    <message>
        <source>Nothing to buy</source>
        <translation>Nic nie trzeba kupować</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Do kupienia</translation>
    </message>
    <message>
        <source>%{Combs} to move first</source>
        <translation>Ramki do przestawienia najpierw</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>dowolny dzień</translation>
    </message>
    <message>
        <source>What to do, by day</source>
        <translation>Co zrobić, według dni</translation>
    </message>
</context>
<context>
    <name>Days</name>
    <message>
        <source>today</source>
        <translation>dziś</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>wczoraj</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>This cannot be read as a day of the year. Type it as %1.</source>
        <translation>Nie da się tego odczytać jako dnia roku. Należy wpisać np. %1.</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>This cannot be read as a day. Type it as %1, as %2, or “yesterday”.</source>
        <translation>Nie da się tego odczytać jako dnia. Można wpisać np. %1, %2 albo „wczoraj”.</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <translation>MMMM yyyy</translation>
    </message>
    <message>
        <source>There is no day %1 in %2; it ends with day %3.</source>
        <translation>Nie ma dnia %1 %2; ostatnim dniem tego miesiąca jest %3.</translation>
    </message>
    <message>
        <source>%1 is too late here. Type a day from %2 to %3.</source>
        <translation>%1 to tutaj za późno. Należy wpisać dzień od %2 do %3.</translation>
    </message>
    <message>
        <source>%1 is too early here. Type a day from %2 to %3.</source>
        <translation>%1 to tutaj za wcześnie. Należy wpisać dzień od %2 do %3.</translation>
    </message>
    <message>
        <source>%1 is too late here. Type %2 or a day before it.</source>
        <translation>%1 to tutaj za późno. Należy wpisać %2 lub wcześniejszy dzień.</translation>
    </message>
    <message>
        <source>%1 is too early here. Type %2 or a day after it.</source>
        <translation>%1 to tutaj za wcześnie. Należy wpisać %2 lub późniejszy dzień.</translation>
    </message>
</context>
<context>
    <name>DrawnCombs</name>
    <message>
        <source>%{Comb} %1 of the super</source>
        <translation>Ramka %1 nadstawki</translation>
    </message>
    <message>
        <source>%{Comb} %1 of box %2</source>
        <translation>Ramka %1, korpus %2</translation>
    </message>
    <message>
        <source>one face seen</source>
        <translation>widziana jedna strona</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>widziane przez okienko</translation>
    </message>
    <message>
        <source>measured on a photograph</source>
        <translation>zmierzone na zdjęciu</translation>
    </message>
    <message>
        <source>both faces seen</source>
        <translation>widziane obie strony</translation>
    </message>
    <message>
        <source>%1: not looked at, taken as the mean of the others; %2</source>
        <translation>%1: nie oglądano, przyjęto średnią z&#xa0;pozostałych; %2</translation>
    </message>
    <message>
        <source>%1: capped %2, open nectar %3, brood %4, bee bread %5, empty %6; %7; %8</source>
        <translation>%1: zasklepione %2, nakrop %3, czerw %4, pierzga %5, puste %6; %7; %8</translation>
    </message>
</context>
<context>
    <name>EntryForms</name>
    <message>
        <source>&amp;Boxes, as they stand</source>
        <translation>&amp;Korpusy, jak stoją</translation>
    </message>
    <message>
        <source>&amp;Walls</source>
        <translation>Ś&amp;ciany</translation>
    </message>
    <message>
        <source>Insulated on &amp;top</source>
        <translation>Ocieplony od &amp;góry</translation>
    </message>
    <message>
        <source>Kept &amp;small on purpose</source>
        <translation>Celowo &amp;mała rodzina</translation>
    </message>
    <message>
        <source>&amp;Empty weight, if known</source>
        <translation>Masa p&amp;ustego ula, jeśli znana</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nie podano</translation>
    </message>
    <message>
        <source>A new colony</source>
        <translation>Nowa rodzina</translation>
    </message>
    <message>
        <source>The colony</source>
        <translation>Rodzina</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nazwa</translation>
    </message>
    <message>
        <source>&amp;Kind of bees</source>
        <translation>&amp;Rasa pszczół</translation>
    </message>
    <message>
        <source>Year of the &amp;queen</source>
        <translation>R&amp;ok matki</translation>
    </message>
    <message>
        <source>&amp;Colour of her mark, if another than her year&apos;s</source>
        <translation>Ko&amp;lor opalitka, jeśli inny niż jej roku</translation>
    </message>
    <message>
        <source>&amp;Feeder</source>
        <translation>&amp;Podkarmiaczka</translation>
    </message>
    <message>
        <source>It &amp;holds</source>
        <translation>Poj&amp;emność</translation>
    </message>
    <message>
        <source>Where it ca&amp;me from</source>
        <translation>&amp;Skąd pochodzi</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>No&amp;tatka</translation>
    </message>
    <message>
        <source>The colony needs a name.</source>
        <translation>Rodzina musi mieć nazwę.</translation>
    </message>
    <message>
        <source>The hive</source>
        <translation>Ul</translation>
    </message>
    <message>
        <source>From this &amp;day on</source>
        <translation>Od tego &amp;dnia</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notatka</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Co się z&#xa0;nią stało</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Dzień</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Co</translation>
    </message>
    <message>
        <source>&amp;Into</source>
        <translation>Do &amp;rodziny</translation>
    </message>
    <message>
        <source>&amp;Of what, as far as is known</source>
        <translation>Z&#xa0;jakiego po&amp;wodu, o&#xa0;ile wiadomo</translation>
    </message>
    <message>
        <source>The colony leaves the yard from this day on; everything written of it stays in the book. Where disease may be the cause, the bee inspector comes first.</source>
        <translation>Od tego dnia rodziny nie ma już w&#xa0;pasiece; wszystko, co o&#xa0;niej zapisano, zostaje w&#xa0;dzienniku. Jeśli przyczyną może być choroba, najpierw powiatowy lekarz weterynarii.</translation>
    </message>
    <message>
        <source>Into which colony?</source>
        <translation>Do której rodziny?</translation>
    </message>
    <message>
        <source>A new yard</source>
        <translation>Nowa pasieka</translation>
    </message>
    <message>
        <source>&amp;Where it is</source>
        <translation>&amp;Gdzie stoi</translation>
    </message>
    <message>
        <source>The yard needs a name.</source>
        <translation>Pasieka musi mieć nazwę.</translation>
    </message>
    <message>
        <source>Choose a place from the list, or type latitude and longitude.</source>
        <translation>Należy wybrać miejsce z&#xa0;listy albo wpisać szerokość i&#xa0;długość geograficzną.</translation>
    </message>
    <message>
        <source>To another yard</source>
        <translation>Do innej pasieki</translation>
    </message>
    <message>
        <source>It stands &amp;in</source>
        <translation>Stoi &amp;w pasiece</translation>
    </message>
    <message>
        <source>Change the look</source>
        <translation>Zmiana przeglądu</translation>
    </message>
    <message>
        <source>A new look</source>
        <translation>Nowy przegląd</translation>
    </message>
    <message>
        <source>&amp;Bees</source>
        <translation>&amp;Pszczoły</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nie liczono</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>obsiadane plastry</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>obsiadane uliczki</translation>
    </message>
    <message>
        <source>bees, counted</source>
        <translation>pszczoły, policzone</translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation>&amp;Ile</translation>
    </message>
    <message>
        <source>&amp;Queen seen</source>
        <translation>Widziano &amp;matkę</translation>
    </message>
    <message>
        <source>&amp;Eggs seen</source>
        <translation>Widziano &amp;jajeczka</translation>
    </message>
    <message>
        <source>&amp;Sealed brood seen</source>
        <translation>Widziano czerw zask&amp;lepiony</translation>
    </message>
    <message>
        <source>&amp;Pollen coming in</source>
        <translation>Pszczoły noszą p&amp;yłek</translation>
    </message>
    <message>
        <source>&amp;Temper</source>
        <translation>&amp;Usposobienie</translation>
    </message>
    <message>
        <source>&amp;Water in the honey, %</source>
        <translation>&amp;Woda w&#xa0;miodzie, %</translation>
    </message>
    <message>
        <source>S&amp;igns of disease</source>
        <translation>O&amp;bjawy choroby</translation>
    </message>
    <message>
        <source>Which si&amp;gns</source>
        <translation>Ja&amp;kie objawy</translation>
    </message>
    <message>
        <source>How many bees, %{combs} or seams were there?</source>
        <translation>Ile było pszczół, plastrów lub uliczek?</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Notatka</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Nic nie wpisano.</translation>
    </message>
    <message>
        <source>Change the weighing</source>
        <translation>Zmiana ważenia</translation>
    </message>
    <message>
        <source>A new weighing</source>
        <translation>Nowe ważenie</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>&amp;Jak</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>na wadze</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>z&#xa0;obu stron</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>z&#xa0;jednej strony</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>w&#xa0;ręku</translation>
    </message>
    <message>
        <source>&amp;Whole hive</source>
        <translation>&amp;Cały ul</translation>
    </message>
    <message>
        <source>&amp;One side</source>
        <translation>Jedna &amp;strona</translation>
    </message>
    <message>
        <source>The o&amp;ther side</source>
        <translation>D&amp;ruga strona</translation>
    </message>
    <message>
        <source>Rain or snow lay &amp;on it</source>
        <translation>Ul &amp;mokry lub pod śniegiem</translation>
    </message>
    <message>
        <source>It &amp;felt</source>
        <translation>Ciężar w&#xa0;ręk&amp;u</translation>
    </message>
    <message>
        <source>How much did it weigh?</source>
        <translation>Ile ważył ul?</translation>
    </message>
    <message>
        <source>Change the feed</source>
        <translation>Zmiana karmienia</translation>
    </message>
    <message>
        <source>What was fed</source>
        <translation>Co podano</translation>
    </message>
    <message>
        <source>&amp;Sugar in it</source>
        <translation>W&#xa0;tym c&amp;ukru</translation>
    </message>
    <message>
        <source>or s&amp;yrup</source>
        <translation>lub s&amp;yropu</translation>
    </message>
    <message>
        <source>s&amp;ugar to water, by weight</source>
        <translation>cukier do wody, &amp;wagowo</translation>
    </message>
    <message>
        <source>&amp;Fondant</source>
        <translation>Ci&amp;asto</translation>
    </message>
    <message>
        <source>How much was fed?</source>
        <translation>Ile podano?</translation>
    </message>
    <message>
        <source>Change the harvest</source>
        <translation>Zmiana miodobrania</translation>
    </message>
    <message>
        <source>What was taken</source>
        <translation>Co odebrano</translation>
    </message>
    <message>
        <source>&amp;Honey</source>
        <translation>&amp;Miód</translation>
    </message>
    <message>
        <source>&amp;%{Combs}</source>
        <translation>&amp;Ramki</translation>
    </message>
    <message>
        <source>&amp;Water in it, %</source>
        <translation>&amp;Woda w&#xa0;nim, %</translation>
    </message>
    <message>
        <source>Change the treatment</source>
        <translation>Zmiana zabiegu</translation>
    </message>
    <message>
        <source>A treatment</source>
        <translation>Zabieg leczniczy</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Od</translation>
    </message>
    <message>
        <source>It is &amp;over</source>
        <translation>&amp;Zakończony</translation>
    </message>
    <message>
        <source>&amp;Until</source>
        <translation>&amp;Do</translation>
    </message>
    <message>
        <source>&amp;What was given</source>
        <translation>&amp;Co podano</translation>
    </message>
    <message>
        <source>Used only to warn about the honey. Which medicine may be given, how and when, the label, the vet and local law say.</source>
        <translation>Służy tylko do ostrzegania przed miodem. Jaki lek wolno podać, jak i&#xa0;kiedy, mówią etykieta, lekarz weterynarii i&#xa0;miejscowe prawo.</translation>
    </message>
    <message>
        <source>What was given?</source>
        <translation>Co podano?</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Koniec jest przed początkiem.</translation>
    </message>
    <message>
        <source>How the winter went</source>
        <translation>Jak przebiegła zimowla</translation>
    </message>
    <message>
        <source>&amp;Found out on</source>
        <translation>Stwierdzono &amp;dnia</translation>
    </message>
    <message>
        <source>It is &amp;alive</source>
        <translation>Rodzina ż&amp;yje</translation>
    </message>
    <message>
        <source>%{Combs} &amp;covered with bees</source>
        <translation>Plastry &amp;obsiadane przez pszczoły</translation>
    </message>
    <message>
        <source>&amp;Stores left</source>
        <translation>Zostało z&amp;apasów</translation>
    </message>
    <message>
        <source>A glance in winter</source>
        <translation>Szybki rzut oka zimą</translation>
    </message>
    <message>
        <source>What was &amp;seen</source>
        <translation>Co &amp;widziano</translation>
    </message>
    <message>
        <source>Seams the cluster &amp;fills</source>
        <translation>Uliczki &amp;kłębu</translation>
    </message>
    <message>
        <source>Sealed s&amp;tores in sight</source>
        <translation>Widać zask&amp;lepione zapasy</translation>
    </message>
</context>
<context>
    <name>Fields</name>
    <message>
        <source>name</source>
        <translation>nazwa</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>pasieka</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>rodzina</translation>
    </message>
    <message>
        <source>day</source>
        <translation>dzień</translation>
    </message>
    <message>
        <source>note</source>
        <translation>notatka</translation>
    </message>
    <message>
        <source>written by</source>
        <translation>zapisane przez</translation>
    </message>
    <message>
        <source>climate station</source>
        <translation>stacja klimatyczna</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>szerokość geograficzna</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>długość geograficzna</translation>
    </message>
    <message>
        <source>mean temperature of a month</source>
        <translation>średnia temperatura miesiąca</translation>
    </message>
    <message>
        <source>scatter of winter days</source>
        <translation>rozrzut dni zimowych</translation>
    </message>
    <message>
        <source>scatter of summer days</source>
        <translation>rozrzut dni letnich</translation>
    </message>
    <message>
        <source>likeness of one day to the next</source>
        <translation>podobieństwo kolejnych dni</translation>
    </message>
    <message>
        <source>scatter of whole winters</source>
        <translation>rozrzut całych zim</translation>
    </message>
    <message>
        <source>height above the sea</source>
        <translation>wysokość nad poziomem morza</translation>
    </message>
    <message>
        <source>autumn flow still to come</source>
        <translation>oczekiwany pożytek jesienny</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>koniec pożytków</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>koniec czerwienia</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>wznowienie czerwienia</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>rozwój wiosenny</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>początek pożytków wiosennych</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>zalecany koniec karmienia</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>ostatni dzień na syrop</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>koniec pobierania syropu</translation>
    </message>
    <message>
        <source>accepted risk</source>
        <translation>przyjęte ryzyko</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>żelazna rezerwa</translation>
    </message>
    <message>
        <source>days between visits</source>
        <translation>dni między wizytami</translation>
    </message>
    <message>
        <source>weekdays for visits</source>
        <translation>dni tygodnia na wizyty</translation>
    </message>
    <message>
        <source>can be reached in winter</source>
        <translation>zimą można dotrzeć</translation>
    </message>
    <message>
        <source>what flowers here</source>
        <translation>co tu kwitnie</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>waluta</translation>
    </message>
    <message>
        <source>price of a kilogram of sugar</source>
        <translation>cena kilograma cukru</translation>
    </message>
    <message>
        <source>a bag of sugar</source>
        <translation>worek cukru</translation>
    </message>
    <message>
        <source>full %{combs} in store</source>
        <translation>pełne ramki w&#xa0;zapasie</translation>
    </message>
    <message>
        <source>units</source>
        <translation>jednostki</translation>
    </message>
    <message>
        <source>walls of the hive</source>
        <translation>ściany ula</translation>
    </message>
    <message>
        <source>insulation on top</source>
        <translation>ocieplenie od góry</translation>
    </message>
    <message>
        <source>medicine was in the hive</source>
        <translation>w&#xa0;ulu był lek</translation>
    </message>
    <message>
        <source>kept small on purpose</source>
        <translation>celowo mała rodzina</translation>
    </message>
    <message>
        <source>empty weight</source>
        <translation>masa pustego ula</translation>
    </message>
    <message>
        <source>the supers are for</source>
        <translation>nadstawki są dla</translation>
    </message>
    <message>
        <source>feeder</source>
        <translation>podkarmiaczka</translation>
    </message>
    <message>
        <source>what the feeder holds</source>
        <translation>pojemność podkarmiaczki</translation>
    </message>
    <message>
        <source>kind of bees</source>
        <translation>rasa pszczół</translation>
    </message>
    <message>
        <source>year of the queen</source>
        <translation>rok matki</translation>
    </message>
    <message>
        <source>colour of the queen&apos;s mark</source>
        <translation>kolor opalitka</translation>
    </message>
    <message>
        <source>where it came from</source>
        <translation>skąd pochodzi</translation>
    </message>
    <message>
        <source>here since</source>
        <translation>tu od</translation>
    </message>
    <message>
        <source>what became of it</source>
        <translation>co się z&#xa0;nią stało</translation>
    </message>
    <message>
        <source>united into</source>
        <translation>połączona z</translation>
    </message>
    <message>
        <source>cause</source>
        <translation>przyczyna</translation>
    </message>
    <message>
        <source>number of bees</source>
        <translation>liczba pszczół</translation>
    </message>
    <message>
        <source>%{combs} covered with bees</source>
        <translation>plastry obsiadane przez pszczoły</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>obsiadane uliczki</translation>
    </message>
    <message>
        <source>how unsure the count is</source>
        <translation>niepewność liczenia</translation>
    </message>
    <message>
        <source>brood cells</source>
        <translation>komórki czerwiu</translation>
    </message>
    <message>
        <source>queen seen</source>
        <translation>widziano matkę</translation>
    </message>
    <message>
        <source>eggs seen</source>
        <translation>widziano jajeczka</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>objawy choroby</translation>
    </message>
    <message>
        <source>mites counted</source>
        <translation>policzono osyp roztoczy</translation>
    </message>
    <message>
        <source>mites on 100 bees</source>
        <translation>roztocza na 100 pszczół</translation>
    </message>
    <message>
        <source>mites treated</source>
        <translation>wykonano zabieg przeciw warrozie</translation>
    </message>
    <message>
        <source>food beside the bees</source>
        <translation>pokarm obok pszczół</translation>
    </message>
    <message>
        <source>kind of honey</source>
        <translation>rodzaj miodu</translation>
    </message>
    <message>
        <source>fed or treated while this honey was made</source>
        <translation>karmienie lub leczenie, gdy powstawał ten miód</translation>
    </message>
    <message>
        <source>how the %{combs} were looked at</source>
        <translation>jak oglądano plastry</translation>
    </message>
    <message>
        <source>%{combs} full of stores</source>
        <translation>ramki pełne pokarmu</translation>
    </message>
    <message>
        <source>%{combs} half full</source>
        <translation>ramki w&#xa0;połowie pełne</translation>
    </message>
    <message>
        <source>share of it capped</source>
        <translation>jaka część zasklepiona</translation>
    </message>
    <message>
        <source>sealed brood seen</source>
        <translation>widziano czerw zasklepiony</translation>
    </message>
    <message>
        <source>pollen coming in</source>
        <translation>pszczoły noszą pyłek</translation>
    </message>
    <message>
        <source>temper</source>
        <translation>usposobienie</translation>
    </message>
    <message>
        <source>water in the honey, per cent</source>
        <translation>woda w&#xa0;miodzie, procent</translation>
    </message>
    <message>
        <source>signs of trouble</source>
        <translation>niepokojące objawy</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>weight of one side</source>
        <translation>masa z&#xa0;jednej strony</translation>
    </message>
    <message>
        <source>weight of the other side</source>
        <translation>masa z&#xa0;drugiej strony</translation>
    </message>
    <message>
        <source>heft</source>
        <translation>ciężar w&#xa0;ręku</translation>
    </message>
    <message>
        <source>said to be right, however unlikely</source>
        <translation>potwierdzone, choć mało prawdopodobne</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>rodzaj</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>cukier</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>syrop</translation>
    </message>
    <message>
        <source>sugar to water</source>
        <translation>cukier do wody</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>ciasto</translation>
    </message>
    <message>
        <source>after the look of that day</source>
        <translation>po przeglądzie z&#xa0;tego dnia</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miód</translation>
    </message>
    <message>
        <source>%{combs}</source>
        <translation>ramki</translation>
    </message>
    <message>
        <source>until</source>
        <translation>do</translation>
    </message>
    <message>
        <source>what</source>
        <translation>co</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>ile</translation>
    </message>
    <message>
        <source>to the colony</source>
        <translation>do rodziny</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>zalecenie</translation>
    </message>
    <message>
        <source>what it was computed from</source>
        <translation>z&#xa0;czego obliczono</translation>
    </message>
    <message>
        <source>the whole answer</source>
        <translation>cała odpowiedź</translation>
    </message>
    <message>
        <source>seed</source>
        <translation>ziarno losowe</translation>
    </message>
    <message>
        <source>past winters are learned from</source>
        <translation>wnioski z&#xa0;minionych zim</translation>
    </message>
    <message>
        <source>learned from since</source>
        <translation>wnioski od</translation>
    </message>
    <message>
        <source>wet hive</source>
        <translation>ul mokry</translation>
    </message>
    <message>
        <source>change of weight</source>
        <translation>zmiana masy</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>widziano</translation>
    </message>
    <message>
        <source>stores in sight</source>
        <translation>widoczne zapasy</translation>
    </message>
    <message>
        <source>first %{comb} of the cluster</source>
        <translation>pierwszy plaster kłębu</translation>
    </message>
    <message>
        <source>mean temperature</source>
        <translation>średnia temperatura</translation>
    </message>
    <message>
        <source>simulated winters</source>
        <translation>symulowane zimy</translation>
    </message>
    <message>
        <source>version of the program</source>
        <translation>wersja programu</translation>
    </message>
    <message>
        <source>state</source>
        <translation>stan</translation>
    </message>
    <message>
        <source>done on</source>
        <translation>wykonano dnia</translation>
    </message>
    <message>
        <source>from the advice</source>
        <translation>z&#xa0;zalecenia</translation>
    </message>
    <message>
        <source>alive in spring</source>
        <translation>żyje wiosną</translation>
    </message>
    <message>
        <source>stores left</source>
        <translation>pozostałe zapasy</translation>
    </message>
    <message>
        <source>food within reach of the dead bees</source>
        <translation>pokarm w&#xa0;zasięgu martwych pszczół</translation>
    </message>
    <message>
        <source>bees head down in the cells</source>
        <translation>pszczoły głowami w&#xa0;komórkach</translation>
    </message>
    <message>
        <source>many mites on the floor</source>
        <translation>dużo roztoczy na dennicy</translation>
    </message>
    <message>
        <source>brood in the dead hive</source>
        <translation>czerw w&#xa0;martwym ulu</translation>
    </message>
    <message>
        <source>queen found</source>
        <translation>znaleziono matkę</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>zasklepione</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>nakrop</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>czerw</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pierzga</translation>
    </message>
    <message>
        <source>hive format</source>
        <translation>typ ula</translation>
    </message>
    <message>
        <source>bar width, mm</source>
        <translation>szerokość snozy, mm</translation>
    </message>
    <message>
        <source>built</source>
        <translation>odbudowane</translation>
    </message>
    <message>
        <source>faces seen</source>
        <translation>widziane strony</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>widziany przez okienko</translation>
    </message>
    <message>
        <source>measured on a photograph</source>
        <translation>zmierzony na zdjęciu</translation>
    </message>
    <message>
        <source>in a super</source>
        <translation>w&#xa0;nadstawce</translation>
    </message>
    <message>
        <source>took syrup</source>
        <translation>dostał syrop</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>stary plaster</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation>zdjęcie</translation>
    </message>
    <message>
        <source>comb width, mm</source>
        <translation>szerokość plastra, mm</translation>
    </message>
    <message>
        <source>comb height, mm</source>
        <translation>wysokość plastra, mm</translation>
    </message>
    <message>
        <source>comb width at the bottom, mm</source>
        <translation>szerokość plastra u&#xa0;dołu, mm</translation>
    </message>
    <message>
        <source>%{combs} in a box</source>
        <translation>ramek w&#xa0;korpusie</translation>
    </message>
    <message>
        <source>a super</source>
        <translation>nadstawka</translation>
    </message>
    <message>
        <source>put on</source>
        <translation>dostawiono</translation>
    </message>
    <message>
        <source>number of boxes</source>
        <translation>liczba korpusów</translation>
    </message>
    <message>
        <source>number of %{combs}</source>
        <translation>liczba ramek</translation>
    </message>
    <message>
        <source>number of days</source>
        <translation>liczba dni</translation>
    </message>
    <message>
        <source>number of photographs</source>
        <translation>liczba zdjęć</translation>
    </message>
    <message>
        <source>%{comb} %1: %2</source>
        <translation>ramka %1: %2</translation>
    </message>
    <message>
        <source>box %1: %2</source>
        <translation>korpus %1: %2</translation>
    </message>
    <message>
        <source>day %1: %2</source>
        <translation>dzień %1: %2</translation>
    </message>
    <message>
        <source>%2 %1</source>
        <translation>%2 %1</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1%</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>tak</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nie</translation>
    </message>
</context>
<context>
    <name>FollowSections</name>
    <message>
        <source>Dates that matter</source>
        <translation>Ważne daty</translation>
    </message>
    <message>
        <source>To feed</source>
        <translation>Do podania</translation>
    </message>
    <message>
        <source>What was found points to</source>
        <translation>Na co wskazuje to, co znaleziono</translation>
    </message>
    <message>
        <source>Look, and write it down with how the winter went</source>
        <translation>Sprawdzić i&#xa0;zapisać razem z&#xa0;przebiegiem zimowli</translation>
    </message>
    <message>
        <source>The safe way</source>
        <translation>Bezpieczny sposób</translation>
    </message>
    <message>
        <source>In spring</source>
        <translation>Wiosną</translation>
    </message>
    <message>
        <source>Seen since the decision</source>
        <translation>Obserwacje od decyzji</translation>
    </message>
    <message>
        <source>It falls below %1 from %2 on in a tenth of these winters, by %3 in half.</source>
        <translation>W&#xa0;jednej dziesiątej tych zim zapasy spadają poniżej %1 od %2, w&#xa0;połowie do %3.</translation>
    </message>
    <message>
        <source>It falls below %1 from %2 on in a tenth of these winters.</source>
        <translation>W&#xa0;jednej dziesiątej tych zim zapasy spadają poniżej %1 od %2.</translation>
    </message>
    <message>
        <source>Nothing is left from %1 in a tenth, by %2 in half.</source>
        <translation>W&#xa0;jednej dziesiątej zim od %1 nie zostaje nic, w&#xa0;połowie do %2.</translation>
    </message>
    <message>
        <source>Nothing is left from %1 in a tenth.</source>
        <translation>W&#xa0;jednej dziesiątej zim od %1 nie zostaje nic.</translation>
    </message>
    <message>
        <source>Spring forage starts around %1 (%2 to %3); about %4 left by then.</source>
        <translation>Początek pożytków wiosennych około %1 (od %2 do %3); do tego czasu zostanie około %4.</translation>
    </message>
    <message>
        <source>%1: %2 of fondant touching the cluster</source>
        <translation>%1: %2 ciasta, tak by dotykało kłębu</translation>
    </message>
    <message>
        <source>It is wanted by %1.</source>
        <translation>Potrzebne najpóźniej %1.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Spring forage should carry it from about %1 (%2 to %3).</source>
        <translation>Pożytki wiosenne powinny utrzymać rodzinę od około %1 (od %2 do %3).</translation>
    </message>
    <message>
        <source>Leave %1 for a cold spell until forage is steady.</source>
        <translation>Na nawrót zimna zostawić %1, dopóki pożytek nie będzie stały.</translation>
    </message>
    <message>
        <source>Nothing is to come out.</source>
        <translation>Nie ma czego wyjmować.</translation>
    </message>
    <message>
        <source>Above that %1 or more are left in 9 winters of 10, and may come out.</source>
        <translation>Ponad to w&#xa0;9 na 10 zim zostaje %1 lub więcej i&#xa0;tyle można wyjąć.</translation>
    </message>
    <message>
        <source>Take out about %1 of full %{combs}, so that the queen finds cells to lay in.</source>
        <translation>Wyjąć około %1 w&#xa0;pełnych ramkach, żeby matka miała komórki do czerwienia.</translation>
    </message>
    <message>
        <source>None of it is honey to eat: the hive was treated meanwhile.</source>
        <translation>To nie jest miód do jedzenia: w&#xa0;tym czasie rodzina była leczona.</translation>
    </message>
    <message>
        <source>%{Combs} that may be taken: %1 (they took no syrup and were not in a treated hive).</source>
        <translation>Ramki, które można odebrać: %1 (nie dostały syropu i&#xa0;nie były w&#xa0;leczonym ulu).</translation>
    </message>
    <message>
        <source>No %{comb} is known to be honey that may be taken: %{combs} that took syrup are for the bees.</source>
        <translation>Nie wiadomo o&#xa0;żadnej ramce, że jest w&#xa0;niej miód, który można odebrać: ramki, które dostały syrop, są dla pszczół.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3, where %4 was expected: it contradicts every winter.</source>
        <translation>%1: %2, %3, a&#xa0;oczekiwano %4: nie pasuje do żadnej zimy.</translation>
    </message>
    <message>
        <source>%1: %2, %3, where %4 was expected.</source>
        <translation>%1: %2, %3, a&#xa0;oczekiwano %4.</translation>
    </message>
</context>
<context>
    <name>Following</name>
    <message>
        <source>feed %1 of sugar as syrup</source>
        <translation>podać %1 cukru w&#xa0;syropie</translation>
    </message>
    <message>
        <source>lay %1 of fondant on the bees</source>
        <translation>położyć %1 ciasta na pszczołach</translation>
    </message>
    <message>
        <source> Today %1.</source>
        <translation> Dziś %1.</translation>
    </message>
    <message>
        <source> On %2 %1.</source>
        <translation> %2 %1.</translation>
    </message>
    <message>
        <source> Check the scale.</source>
        <translation> Sprawdzić wagę.</translation>
    </message>
    <message>
        <source>Eating faster than planned: likely below %1 by %2.</source>
        <translation>Zjada więcej niż przewidziano: do %2 zapasy prawdopodobnie spadną poniżej %1.</translation>
    </message>
    <message>
        <source>Eating faster than planned: perhaps below %1 from %2 on.</source>
        <translation>Zjada więcej niż przewidziano: od %2 zapasy mogą spaść poniżej %1.</translation>
    </message>
    <message>
        <source>Eating faster than planned, but it should last.</source>
        <translation>Zjada więcej niż przewidziano, ale powinno wystarczyć.</translation>
    </message>
    <message>
        <source>Act now: food for less than three weeks is left.</source>
        <translation>Działać od razu: pokarmu zostało na mniej niż trzy tygodnie.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %1: %2 today, then weigh both sides.</source>
        <comment>day, feed</comment>
        <translation>Przy unoszeniu %1 ul był lekki: dziś %2, potem zważyć z&#xa0;obu stron.</translation>
    </message>
    <message>
        <source>Act now: the stores have most likely run out. See today from outside whether it lives; if so %1 at once.</source>
        <translation>Działać od razu: zapasy najprawdopodobniej się skończyły. Jeszcze dziś sprawdzić z&#xa0;zewnątrz, czy rodzina żyje; jeśli tak, natychmiast %1.</translation>
    </message>
    <message>
        <source>Act now: %1 today, then weigh again.</source>
        <translation>Działać od razu: dziś %1, potem znów zważyć.</translation>
    </message>
    <message>
        <source>The food is out of the cluster&apos;s reach.</source>
        <translation>Kłąb jest oderwany od zapasów.</translation>
    </message>
    <message>
        <source>Not enough to reach spring forage without feeding: %1 winters fall below %2.</source>
        <translation>Bez karmienia zapasów nie wystarczy do pożytków wiosennych: w&#xa0;%1 zim spadają poniżej %2.</translation>
    </message>
    <message>
        <source>It may not be enough to reach spring forage without feeding: %1 winters fall below %2.</source>
        <translation>Bez karmienia zapasów może nie wystarczyć do pożytków wiosennych: w&#xa0;%1 zim spadają poniżej %2.</translation>
    </message>
    <message>
        <source> Nothing is fed today.</source>
        <translation> Dziś nic się nie podaje.</translation>
    </message>
    <message>
        <source> Nothing is fed today; weigh it by %1.</source>
        <translation> Dziś nic się nie podaje; zważyć najpóźniej %1.</translation>
    </message>
    <message>
        <source>Was the feed planned from %1 on given? Write it down; until then it is not counted.</source>
        <comment>day</comment>
        <translation>Czy pokarm zaplanowany od %1 został podany? Trzeba to zapisać; do tego czasu nie jest liczony.</translation>
    </message>
    <message>
        <source>Without it there is enough as well.</source>
        <translation>Bez niego też wystarczy.</translation>
    </message>
    <message>
        <source>The colony is dead.</source>
        <translation>Rodzina jest martwa.</translation>
    </message>
    <message>
        <source>It is heavier than can be explained: check the scale, and what was added, then weigh it again.</source>
        <translation>Ul jest cięższy, niż da się wyjaśnić: sprawdzić wagę i&#xa0;to, co dodano, potem znów zważyć.</translation>
    </message>
    <message>
        <source>It cannot be said: what was seen contradicts every winter.</source>
        <translation>Nie można powiedzieć: to, co widziano, nie pasuje do żadnej zimy.</translation>
    </message>
    <message>
        <source>Dwindling: far fewer bees than a winter leaves. On a day of %1 put them together in a small space between two full %{combs}.</source>
        <translation>Ubywa pszczół: jest ich o&#xa0;wiele mniej, niż zostaje po zimie. W&#xa0;dzień, gdy jest %1, skupić je ciasno między dwiema pełnymi ramkami.</translation>
    </message>
    <message>
        <source>Less was in the hive than was thought.</source>
        <translation>W&#xa0;ulu było mniej zapasów, niż sądzono.</translation>
    </message>
    <message>
        <source>More is there than is needed: nothing to do before spring.</source>
        <translation>Jest więcej, niż potrzeba: do wiosny nie trzeba nic robić.</translation>
    </message>
    <message>
        <source>More is there than is needed: feed nothing, and once forage has begun make room for the queen to lay.</source>
        <translation>Jest więcej, niż potrzeba: nie karmić, a gdy zacznie się pożytek, zrobić matce miejsce do czerwienia.</translation>
    </message>
    <message>
        <source>More is there than is needed: feed nothing.</source>
        <translation>Jest więcej, niż potrzeba: nie karmić.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %1: weigh it again before anything is fed.</source>
        <translation>Przy unoszeniu %1 ul był lekki: zważyć ponownie, zanim cokolwiek się poda.</translation>
    </message>
    <message>
        <source>On course.</source>
        <translation>Zgodnie z&#xa0;prognozą.</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>martwa</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>nie można powiedzieć</translation>
    </message>
    <message>
        <source>food out of reach</source>
        <translation>kłąb oderwany od zapasów</translation>
    </message>
    <message>
        <source>act now</source>
        <translation>działać od razu</translation>
    </message>
    <message>
        <source>dwindling</source>
        <translation>ubywa pszczół</translation>
    </message>
    <message>
        <source>less than thought</source>
        <translation>mniej niż sądzono</translation>
    </message>
    <message>
        <source>feed not written down</source>
        <translation>karmienie niezapisane</translation>
    </message>
    <message>
        <source>eating faster</source>
        <translation>zjada więcej</translation>
    </message>
    <message>
        <source>more than needed</source>
        <translation>więcej niż potrzeba</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>zgodnie z&#xa0;prognozą</translation>
    </message>
    <message>
        <source>About %1 left today, where the autumn expected %2. If nothing is done, %4 winters that fit what was seen fall below %3 and %5 run out (as forecast in autumn: %6 and %7).</source>
        <translation>Dziś zostało około %1, a&#xa0;jesienią oczekiwano %2. Jeśli nic się nie zrobi, w&#xa0;%4 zim zgodnych z&#xa0;obserwacjami zapasy spadną poniżej %3, a&#xa0;w&#xa0;%5 skończą się (według prognozy z&#xa0;jesieni: %6 i&#xa0;%7).</translation>
    </message>
    <message>
        <source>Look through what was written down of this winter: something was harvested, fed or weighed on another day or in another amount.</source>
        <translation>Przejrzeć wpisy z&#xa0;tej zimy: jakieś miodobranie, karmienie lub ważenie odbyło się innego dnia albo w&#xa0;innej ilości.</translation>
    </message>
    <message>
        <source>Weigh it again, and look for a feed that was not written down or ticked off, and for a lid, a box or a stone that was on or off.</source>
        <translation>Zważyć ponownie, poszukać karmienia, którego nie zapisano lub nie odhaczono, i&#xa0;sprawdzić, czy nie dołożono lub nie zdjęto daszka, korpusu albo kamienia.</translation>
    </message>
    <message>
        <source>Weigh on %1, before more is fed.</source>
        <translation>Zważyć %1, zanim poda się więcej.</translation>
    </message>
    <message>
        <source>Weigh again by %1: in %2 of 100 cases that would change what to do.</source>
        <translation>Zważyć ponownie najpóźniej %1: w&#xa0;%2 na 100 przypadków zmieniłoby to zalecenie.</translation>
    </message>
    <message>
        <source>No further weighing before forage (around %1) would change what to do.</source>
        <translation>Kolejne ważenie przed pożytkami (około %1) nie zmieniłoby zalecenia.</translation>
    </message>
    <message>
        <source>Was food left within reach of the bees?</source>
        <translation>Czy w&#xa0;zasięgu pszczół był jeszcze pokarm?</translation>
    </message>
    <message>
        <source>Were dead bees head down in the cells?</source>
        <translation>Czy martwe pszczoły tkwiły głowami w&#xa0;komórkach?</translation>
    </message>
    <message>
        <source>Were there many mites on the floor?</source>
        <translation>Czy na dennicy było dużo roztoczy?</translation>
    </message>
    <message>
        <source>Was there brood, and was it solid or patchy?</source>
        <translation>Czy był czerw i&#xa0;czy był zwarty, czy rozstrzelony?</translation>
    </message>
    <message>
        <source>Was the queen found?</source>
        <translation>Czy znaleziono matkę?</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>waga</translation>
    </message>
    <message>
        <source>lifted on two sides</source>
        <translation>ważenie z&#xa0;obu stron</translation>
    </message>
    <message>
        <source>lifted on one side</source>
        <translation>ważenie z&#xa0;jednej strony</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>ocena w&#xa0;ręku</translation>
    </message>
    <message>
        <source>%{combs} looked at</source>
        <translation>obejrzane ramki</translation>
    </message>
    <message>
        <source>bees counted</source>
        <translation>policzone pszczoły</translation>
    </message>
    <message>
        <source>cluster seen</source>
        <translation>widziany kłąb</translation>
    </message>
    <message>
        <source>bees flying</source>
        <translation>pszczoły latają</translation>
    </message>
    <message>
        <source>%{comb} glimpsed</source>
        <translation>plaster widziany przelotnie</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>hefts</comment>
        <translation>%1 (od %2 do %3)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nic</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>masses</comment>
        <translation>od %1 do %2</translation>
    </message>
    <message>
        <source>nothing to %1</source>
        <translation>od zera do %1</translation>
    </message>
    <message>
        <source>Syrup, %1, in the evening</source>
        <translation>Syrop, %1, wieczorem</translation>
    </message>
    <message>
        <source>Syrup, in the evening</source>
        <translation>Syrop, wieczorem</translation>
    </message>
    <message>
        <source>Fondant, %1</source>
        <translation>Ciasto, %1</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Ciasto</translation>
    </message>
    <message>
        <source>unite it with a healthy colony, today at the latest, in the evening</source>
        <translation>połączyć ze zdrową rodziną, najpóźniej dziś wieczorem</translation>
    </message>
    <message>
        <source>unite it with %1, today at the latest, in the evening</source>
        <translation>połączyć z&#xa0;rodziną %1, najpóźniej dziś wieczorem</translation>
    </message>
    <message>
        <source>another colony of the yard</source>
        <translation>z&#xa0;tej samej pasieki</translation>
    </message>
    <message>
        <source>hang in one full %{comb} from %1 (%2)</source>
        <translation>wstawić jedną pełną ramkę z&#xa0;rodziny %1 (%2)</translation>
    </message>
    <message>
        <source>hang in %1 full %{combs} from %2 (%3)</source>
        <translation>wstawić z&#xa0;rodziny %2 pełnych ramek %1 (%3)</translation>
    </message>
    <message>
        <source>Check the feeding</source>
        <translation>Sprawdzić karmienie</translation>
    </message>
    <message>
        <source>take %1 of honey off by today</source>
        <translation>odebrać %1 miodu najpóźniej dziś</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>zważyć ponownie</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>policzyć osyp roztoczy i&#xa0;znów obejrzeć zapasy</translation>
    </message>
    <message>
        <source>call the bee inspector, move nothing</source>
        <translation>zawiadomić powiatowego lekarza weterynarii, niczego nie przenosić</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>policzyć plastry obsiadane przez pszczoły</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>obejrzeć zapasy albo zważyć</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>wstawić ramkę z&#xa0;jajeczkami z&#xa0;innej rodziny</translation>
    </message>
    <message>
        <source>look for queen cells on the %{comb} with eggs</source>
        <translation>poszukać mateczników na ramce z&#xa0;jajeczkami</translation>
    </message>
    <message>
        <source>take %1 of honey off, at the latest</source>
        <translation>odebrać %1 miodu, najpóźniej tego dnia</translation>
    </message>
    <message>
        <source>%1 (%2 of sugar)</source>
        <comment>syrup</comment>
        <translation>%1 (%2 cukru)</translation>
    </message>
    <message>
        <source>unite it with a healthy colony, at the latest, in the evening</source>
        <translation>połączyć ze zdrową rodziną, najpóźniej tego dnia wieczorem</translation>
    </message>
    <message>
        <source>unite it with %1, at the latest, in the evening</source>
        <translation>połączyć z&#xa0;rodziną %1, najpóźniej tego dnia wieczorem</translation>
    </message>
    <message>
        <source>%{Combs} side by side behind a sheet of newspaper, the bees misted with water.</source>
        <translation>Ramki obok siebie, oddzielone arkuszem gazety, pszczoły spryskane wodą.</translation>
    </message>
    <message>
        <source>Newspaper between.</source>
        <translation>Przez gazetę.</translation>
    </message>
    <message>
        <source>%1 Only once it is certain that it has no queen, on a warm evening.</source>
        <comment>how to unite</comment>
        <translation>%1 Tylko gdy jest pewne, że rodzina nie ma matki, w&#xa0;ciepły wieczór.</translation>
    </message>
    <message>
        <source>%1 The better queen stays. Earlier is better, on a warm evening.</source>
        <comment>how to unite</comment>
        <translation>%1 Zostaje lepsza matka. Im wcześniej, tym lepiej, w&#xa0;ciepły wieczór.</translation>
    </message>
    <message>
        <source>%1 of sugar. Inside the hive, all colonies of the yard the same evening.</source>
        <translation>%1 cukru. Wewnątrz ula, wszystkie rodziny w&#xa0;pasiece tego samego wieczoru.</translation>
    </message>
    <message>
        <source>Inside the hive, all colonies of the yard the same evening.</source>
        <translation>Wewnątrz ula, wszystkie rodziny w&#xa0;pasiece tego samego wieczoru.</translation>
    </message>
    <message>
        <source>So that it touches the bees, at once. Weigh both sides afterwards.</source>
        <translation>Tak, by dotykało pszczół, natychmiast. Potem zważyć z&#xa0;obu stron.</translation>
    </message>
    <message>
        <source>Weigh both sides from outside first. Lay it so that it touches the bees.</source>
        <translation>Najpierw zważyć z&#xa0;zewnątrz z&#xa0;obu stron. Położyć tak, by dotykało pszczół.</translation>
    </message>
    <message>
        <source>Taken and sealed? Weigh; feeder off, mouse guard on.</source>
        <translation>Pobrany i&#xa0;zasklepiony? Zważyć; zdjąć podkarmiaczkę, zabezpieczyć wylotek przed myszami.</translation>
    </message>
    <message>
        <source>Before feeding and treating.</source>
        <translation>Przed karmieniem i&#xa0;leczeniem.</translation>
    </message>
    <message>
        <source>Both sides, without opening. Write it down and ask again.</source>
        <translation>Z&#xa0;obu stron, bez otwierania. Zapisać i&#xa0;sprawdzić odpowiedź.</translation>
    </message>
    <message>
        <source>There are signs of disease.</source>
        <translation>Są objawy choroby.</translation>
    </message>
    <message>
        <source>Until then nothing can be said of this colony&apos;s winter.</source>
        <translation>Do tego czasu nic nie da się powiedzieć o&#xa0;zimie tej rodziny.</translation>
    </message>
    <message>
        <source>Before anything is fed.</source>
        <translation>Zanim cokolwiek się poda.</translation>
    </message>
    <message>
        <source>From a healthy colony. It shows whether there is a queen.</source>
        <translation>Ze zdrowej rodziny. Pokaże, czy jest matka.</translation>
    </message>
    <message>
        <source>Queen cells mean that the queen is gone: unite it. None mean that there is one: look for eggs, and ask again.</source>
        <translation>Mateczniki znaczą, że matki nie ma: połączyć. Brak mateczników znaczy, że matka jest: poszukać jajeczek i&#xa0;sprawdzić odpowiedź.</translation>
    </message>
    <message>
        <source>It was planned for %1 and is not ticked off. If it was given, write it down.</source>
        <translation>Zaplanowano to na %1 i&#xa0;nie odhaczono. Jeśli pokarm podano, należy to zapisać.</translation>
    </message>
    <message>
        <source>%1: the records of its winter fit none, so it is not known when to weigh or feed</source>
        <translation>%1: wpisy z&#xa0;tej zimy nie pasują do żadnej, więc nie wiadomo, kiedy ważyć ani karmić</translation>
    </message>
    <message>
        <source>Bees</source>
        <comment>name of the calendar that is written out</comment>
        <translation>Pszczoły</translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>Stores</source>
        <translation>Zapasy</translation>
    </message>
    <message>
        <source>stores</source>
        <translation>zapasy</translation>
    </message>
    <message>
        <source>What the bees can live on in the hive: capped honey, and open nectar or syrup as far as it will ripen. Bee bread is not counted.</source>
        <translation>Wszystko, czym pszczoły mogą żyć w&#xa0;ulu: zasklepiony miód oraz nakrop lub syrop, o&#xa0;ile dojrzeje. Pierzga się nie liczy.</translation>
    </message>
    <message>
        <source>need</source>
        <translation>zapotrzebowanie</translation>
    </message>
    <message>
        <source>The stores that must be in the hive today so that as few winters go short as you accept. It reaches to the day spring forage starts and holds the reserve.</source>
        <translation>Zapasy, które muszą być dziś w&#xa0;ulu, żeby zabrakło ich w&#xa0;nie większej liczbie zim, niż się dopuszcza. Sięga do początku pożytków wiosennych i&#xa0;obejmuje żelazną rezerwę.</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>żelazna rezerwa</translation>
    </message>
    <message>
        <source>Stores that should still be there on the worst day, for what nobody foresees. You set it on the page Place.</source>
        <translation>Zapasy, które powinny zostać nawet w&#xa0;najgorszym dniu, na to, czego nikt nie przewidzi. Ustawia się ją na stronie „Miejsce”.</translation>
    </message>
    <message>
        <source>falls below the reserve</source>
        <translation>spada poniżej żelaznej rezerwy</translation>
    </message>
    <message>
        <source>Less than the reserve is left on some day before spring forage starts. The bees are not starving yet, but little is left.</source>
        <translation>Przed początkiem pożytków wiosennych zostaje któregoś dnia mniej niż żelazna rezerwa. Pszczoły jeszcze nie głodują, ale zostało niewiele.</translation>
    </message>
    <message>
        <source>runs out</source>
        <translation>kończą się</translation>
    </message>
    <message>
        <source>No stores are left on some day before spring forage starts. Without help the colony starves.</source>
        <translation>Przed początkiem pożytków wiosennych któregoś dnia nie zostaje nic. Bez pomocy rodzina zginie z&#xa0;głodu.</translation>
    </message>
    <message>
        <source>accepted risk</source>
        <translation>przyjęte ryzyko</translation>
    </message>
    <message>
        <source>How many winters of a hundred may fall below the reserve before the program advises you to feed or to leave honey. You set it on the page Place.</source>
        <translation>W&#xa0;ilu zimach na sto zapasy mogą spaść poniżej żelaznej rezerwy, zanim program zaleci karmienie lub pozostawienie miodu. Ustawia się je na stronie „Miejsce”.</translation>
    </message>
    <message>
        <source>empty weight</source>
        <translation>masa pustego ula</translation>
    </message>
    <message>
        <source>The weight of the hive without bees, brood and stores: boxes, frames, floor and roof. Known, it makes every weighing tell more.</source>
        <translation>Masa ula bez pszczół, czerwiu i&#xa0;zapasów: korpusy, ramki, dennica i&#xa0;daszek. Gdy jest znana, każde ważenie mówi więcej.</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>w&#xa0;ręku</translation>
    </message>
    <message>
        <source>Lifted a little by hand, to feel whether the hive is light, fair or heavy. Rougher than a scale, but quick.</source>
        <translation>Ul lekko uniesiony, żeby poczuć, czy jest lekki, średni czy ciężki. Mniej dokładne niż waga, ale szybkie.</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>z&#xa0;obu stron</translation>
    </message>
    <message>
        <source>A hanging scale lifts the hive at one side and then at the other; the two readings added are about its weight.</source>
        <translation>Waga hakowa unosi ul najpierw z&#xa0;jednej, potem z&#xa0;drugiej strony; suma obu odczytów to mniej więcej jego masa.</translation>
    </message>
    <message>
        <source>%{Combs} and bees</source>
        <translation>Ramki i&#xa0;pszczoły</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>zasklepione</translation>
    </message>
    <message>
        <source>Sealed with wax: ripe honey that keeps. The share of it capped says how much of the stores on a %{comb} is sealed.</source>
        <translation>Zamknięte woskiem: dojrzały miód, który się nie psuje. Udział zasklepionego mówi, jaka część zapasów na plastrze jest zasklepiona.</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>nakrop</translation>
    </message>
    <message>
        <source>Cells with nectar or syrup not sealed yet. Much of it is water, so it counts for less, and late in the year it may never be capped.</source>
        <translation>Nektar lub syrop w&#xa0;komórkach jeszcze niezasklepionych. W&#xa0;dużej części to woda, więc liczy się mniej, a&#xa0;późną porą może już nie zostać zasklepiony.</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pierzga</translation>
    </message>
    <message>
        <source>Pollen the bees have stored in cells. It feeds the brood and does not count as stores.</source>
        <translation>Pyłek złożony przez pszczoły w&#xa0;komórkach. Służy za pokarm czerwiowi i&#xa0;nie liczy się do zapasów.</translation>
    </message>
    <message>
        <source>built</source>
        <translation>odbudowane</translation>
    </message>
    <message>
        <source>How much of the space in the frame, or under the bar, the bees have filled with comb.</source>
        <translation>Jaką część miejsca w&#xa0;ramce albo pod snozą pszczoły wypełniły plastrem.</translation>
    </message>
    <message>
        <source>face</source>
        <translation>strona plastra</translation>
    </message>
    <message>
        <source>One side of a %{comb}.</source>
        <translation>Jedna z&#xa0;dwóch powierzchni plastra.</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>stary plaster</translation>
    </message>
    <message>
        <source>Dark comb in which brood was raised for years. Honey in it is left to the bees.</source>
        <translation>Ciemny plaster, w&#xa0;którym latami wychowywał się czerw. Miód z&#xa0;niego zostawia się pszczołom.</translation>
    </message>
    <message>
        <source>spacing, or bar width</source>
        <translation>odległość plastrów albo szerokość snozy</translation>
    </message>
    <message>
        <source>From the middle of one %{comb} to the middle of the next. The wider it is, the thicker the comb and the more honey it holds.</source>
        <translation>Od środka jednego plastra do środka następnego. Im większa, tym grubszy plaster i&#xa0;tym więcej miodu mieści.</translation>
    </message>
    <message>
        <source>super</source>
        <translation>nadstawka</translation>
    </message>
    <message>
        <source>A box above the brood for honey.</source>
        <translation>Korpus na miód nad czerwiem.</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>obsiadane uliczki</translation>
    </message>
    <message>
        <source>Gaps between %{combs} that are filled with bees, counted from above. Half a gap counts as a half.</source>
        <translation>Przestrzenie między plastrami wypełnione pszczołami, liczone z&#xa0;góry. Pół uliczki liczy się jako pół.</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>obsiadane plastry</translation>
    </message>
    <message>
        <source>%{Combs} covered by bees on both sides. One side covered counts as a half.</source>
        <translation>Plastry obsiadane przez pszczoły z&#xa0;obu stron. Plaster obsiadany z&#xa0;jednej strony liczy się jako pół.</translation>
    </message>
    <message>
        <source>cluster</source>
        <translation>kłąb</translation>
    </message>
    <message>
        <source>The ball in which bees keep each other warm in the cold. It can only eat what it touches.</source>
        <translation>Skupisko, w&#xa0;którym pszczoły ogrzewają się nawzajem na mrozie. Może jeść tylko to, czego dotyka.</translation>
    </message>
    <message>
        <source>Kept small on purpose</source>
        <translation>Celowo mała rodzina</translation>
    </message>
    <message>
        <source>A small colony that is meant to be small, such as one with a spare queen. It is not judged weak for it.</source>
        <translation>Mała rodzina, która ma być mała, na przykład z&#xa0;matką zapasową. Nie jest z&#xa0;tego powodu uznawana za słabą.</translation>
    </message>
    <message>
        <source>follower</source>
        <translation>zatwór</translation>
    </message>
    <message>
        <source>A board that hangs like a %{comb} and closes off the empty part of a hive.</source>
        <translation>Deska wieszana jak ramka, która odgradza pustą część ula.</translation>
    </message>
    <message>
        <source>robbers</source>
        <translation>rabujące pszczoły</translation>
    </message>
    <message>
        <source>Bees of other colonies, or wasps, that carry stores away from a hive too weak to defend itself.</source>
        <translation>Pszczoły z&#xa0;innych rodzin albo osy, które wynoszą zapasy z&#xa0;ula zbyt słabego, by się bronić.</translation>
    </message>
    <message>
        <source>cleansing flights</source>
        <translation>obloty</translation>
    </message>
    <message>
        <source>Short flights on mild winter days; bees do not soil the hive.</source>
        <translation>Krótkie loty w&#xa0;łagodne dni zimy, na których pszczoły się oczyszczają; nie brudzą w&#xa0;ulu.</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>ciasto</translation>
    </message>
    <message>
        <source>A stiff sugar dough. Bees can eat it in the cold, when syrup is no longer taken.</source>
        <translation>Gęste ciasto cukrowe. Pszczoły mogą je jeść na zimnie, kiedy syropu już nie pobierają.</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>Sezon</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>koniec pożytków</translation>
    </message>
    <message>
        <source>The day after which bees here usually bring no more nectar home in autumn.</source>
        <translation>Dzień, po którym pszczoły zwykle nie przynoszą tu już jesienią nektaru.</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>zalecany koniec karmienia</translation>
    </message>
    <message>
        <source>The day by which feeding should be over, so that there is time to ripen and seal the food.</source>
        <translation>Dzień, do którego karmienie powinno się skończyć, żeby starczyło czasu na przerobienie i&#xa0;zasklepienie pokarmu.</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>ostatni dzień na syrop</translation>
    </message>
    <message>
        <source>The last day on which syrup can still be dried by the bees, as the air is here.</source>
        <translation>Ostatni dzień, kiedy pszczoły mogą jeszcze odparować syrop przy tutejszych temperaturach.</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>koniec pobierania syropu</translation>
    </message>
    <message>
        <source>From this day on it is usually too cold for bees to come down to a feeder.</source>
        <translation>Od tego dnia jest zwykle za zimno, by pszczoły schodziły do podkarmiaczki.</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>koniec czerwienia</translation>
    </message>
    <message>
        <source>The day the queen usually ceases laying for the winter. Food lasts longest from now on.</source>
        <translation>Dzień, w&#xa0;którym matka zwykle przestaje czerwić na zimę. Odtąd pokarmu starcza na najdłużej.</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>wznowienie czerwienia</translation>
    </message>
    <message>
        <source>The day she begins again, often in the middle of winter. Brood must be kept warm, so more is eaten.</source>
        <translation>Dzień, w&#xa0;którym matka zaczyna znów czerwić, często w&#xa0;środku zimy. Czerw trzeba grzać, więc zużycie rośnie.</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>rozwój wiosenny</translation>
    </message>
    <message>
        <source>The weeks in spring in which brood grows quickly. Most food is eaten in them, and most colonies that starve do so then.</source>
        <translation>Tygodnie wiosną, w&#xa0;których czerwiu szybko przybywa. Zużywa się wtedy najwięcej pokarmu i&#xa0;wtedy najczęściej rodziny giną z&#xa0;głodu.</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>początek pożytków wiosennych</translation>
    </message>
    <message>
        <source>The day from which nectar comes in reliably in spring. Up to it the stores must last.</source>
        <translation>Dzień, od którego wiosną na nektar można już liczyć. Do tego dnia muszą starczyć zapasy.</translation>
    </message>
    <message>
        <source>dearth</source>
        <translation>okres bezpożytkowy</translation>
    </message>
    <message>
        <source>Weeks without nectar although it is warm enough to fly.</source>
        <translation>Tygodnie bez nektaru, choć jest dość ciepło na loty.</translation>
    </message>
    <message>
        <source>autumn flow</source>
        <translation>pożytek jesienny</translation>
    </message>
    <message>
        <source>Nectar that may still come in before winter, beyond the little that weeds and ivy bring every autumn, which is always counted.</source>
        <translation>Nektar, który może jeszcze nadejść przed zimą, ponad to niewiele, co każdej jesieni dają chwasty i&#xa0;bluszcz i&#xa0;co liczy się zawsze.</translation>
    </message>
    <message>
        <source>give or take</source>
        <translation>plus minus</translation>
    </message>
    <message>
        <source>About two years of three lie no further from the day given than this.</source>
        <translation>Mniej więcej w&#xa0;dwóch latach na trzy odchylenie od podanego dnia nie jest większe.</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Prawdopodobieństwo</translation>
    </message>
    <message>
        <source>simulated winters</source>
        <translation>symulowane zimy</translation>
    </message>
    <message>
        <source>The program lets the same colony live through hundreds or thousands of winters as they may happen here, some mild and some hard, with colonies that eat more or less. “17 of 100” means that it happened in 17 of every hundred of them.</source>
        <translation>Program przeprowadza tę samą rodzinę przez setki lub tysiące zim, jakie mogą się tu zdarzyć, łagodnych i&#xa0;surowych, z&#xa0;rodzinami, które jedzą więcej lub mniej. „17 na 100” znaczy, że zdarzyło się to w&#xa0;17 zimach na każde sto.</translation>
    </message>
    <message>
        <source>Left alone</source>
        <translation>Gdy nic się nie robi</translation>
    </message>
    <message>
        <source>What happens if you do nothing at all from today on.</source>
        <translation>Co się stanie, jeśli od dziś nie zrobi się zupełnie nic.</translation>
    </message>
    <message>
        <source>in brackets</source>
        <translation>w&#xa0;nawiasie</translation>
    </message>
    <message>
        <source>29.5 kg (24–34) means most probably near 29.5 kg; what is there, wanted, fed or taken is told to half a kilogram, or a pound. The figures in brackets are the spread: unless it is said otherwise, the truth lies between them in eight cases of ten.</source>
        <translation>29,5 kg (24–34) znaczy, że najprawdopodobniej jest blisko 29,5 kg; to, co jest, co potrzebne, co się podaje lub odbiera, program podaje co pół kilograma albo co funt. Liczby w&#xa0;nawiasie to przedział: jeśli nie powiedziano inaczej, prawdziwa wartość leży między nimi w&#xa0;ośmiu przypadkach na dziesięć.</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>przedział</translation>
    </message>
    <message>
        <source>How far the truth may lie from a figure. A look at every %{comb} narrows it; a glance through a window leaves it wide.</source>
        <translation>Jak daleko od podanej liczby może leżeć prawdziwa wartość. Przegląd każdej ramki go zwęża, szybki rzut oka przez okienko zostawia go szerokim.</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>odch. std.</translation>
    </message>
    <message>
        <source>Standard deviation, a measure of spread. About two cases of three lie within one SD of the figure, nineteen of twenty within two.</source>
        <translation>Odchylenie standardowe, miara rozrzutu. Około dwóch przypadków na trzy leży w&#xa0;granicach jednego odchylenia od podanej liczby, dziewiętnaście na dwadzieścia w&#xa0;granicach dwóch.</translation>
    </message>
    <message>
        <source>nine in ten</source>
        <translation>dziewięć na dziesięć</translation>
    </message>
    <message>
        <source>A band so wide that nine of ten cases lie in it.</source>
        <translation>Pasmo tak szerokie, że leży w&#xa0;nim dziewięć przypadków na dziesięć.</translation>
    </message>
    <message>
        <source>eighty of a hundred</source>
        <translation>osiemdziesiąt na sto</translation>
    </message>
    <message>
        <source>A band so wide that eight of ten winters lie in it; one of ten lies above and one below.</source>
        <translation>Pasmo tak szerokie, że leży w&#xa0;nim osiem zim na dziesięć; jedna na dziesięć leży powyżej, jedna poniżej.</translation>
    </message>
    <message>
        <source>percentile</source>
        <translation>percentyl</translation>
    </message>
    <message>
        <source>One case of ten lies below the 10th percentile, nine of ten lie below the 90th.</source>
        <translation>Jeden przypadek na dziesięć leży poniżej 10. percentyla, dziewięć na dziesięć poniżej 90.</translation>
    </message>
    <message>
        <source>Another look</source>
        <translation>Kolejny przegląd</translation>
    </message>
    <message>
        <source>Whether opening the hive again could change the advice, and which look would tell most.</source>
        <translation>Czy ponowne otwarcie ula mogłoby zmienić zalecenie i&#xa0;który przegląd powiedziałby najwięcej.</translation>
    </message>
    <message>
        <source>Following and looking back</source>
        <translation>Śledzenie zimy i&#xa0;ocena po niej</translation>
    </message>
    <message>
        <source>On course</source>
        <translation>Zgodnie z&#xa0;prognozą</translation>
    </message>
    <message>
        <source>What has been weighed and seen since autumn agrees with the forecast, and the stores will last.</source>
        <translation>To, co zważono i&#xa0;widziano od jesieni, zgadza się z&#xa0;prognozą, a&#xa0;zapasów wystarczy.</translation>
    </message>
    <message>
        <source>glance</source>
        <translation>szybki rzut oka</translation>
    </message>
    <message>
        <source>What can be seen without taking the hive apart: flight, the cluster from above, stores through a window.</source>
        <translation>To, co widać bez rozbierania ula: loty, kłąb od góry, zapasy przez okienko.</translation>
    </message>
    <message>
        <source>contradicts every simulated winter</source>
        <translation>nie pasuje do żadnej symulowanej zimy</translation>
    </message>
    <message>
        <source>No winter that may happen here fits this reading. Most often something was weighed that is not bees or food, or something was done and not written down.</source>
        <translation>Tego odczytu nie wyjaśnia żadna zima, jaka może się tu zdarzyć. Najczęściej zważono coś, co nie jest pszczołami ani pokarmem, albo zrobiono coś, czego nie zapisano.</translation>
    </message>
    <message>
        <source>mean score</source>
        <translation>średnia ocena</translation>
    </message>
    <message>
        <source>How far forecasts of past winters were from what happened, on average, in the unit of the stores. Smaller is better. A forecast that was sure and wrong loses most.</source>
        <translation>Jak bardzo prognozy minionych zim różniły się średnio od tego, co się stało, w&#xa0;jednostce zapasów. Im mniej, tym lepiej. Najwięcej traci prognoza pewna siebie i&#xa0;błędna.</translation>
    </message>
    <message>
        <source>handbook figure</source>
        <translation>liczba z&#xa0;poradnika</translation>
    </message>
    <message>
        <source>The stores that printed advice for your region gives for every colony alike. The program&apos;s forecasts are held against it.</source>
        <translation>Zapasy, które drukowane zalecenia dla regionu podają jednakowo dla każdej rodziny. Z&#xa0;nimi porównuje się prognozy programu.</translation>
    </message>
    <message>
        <source>learned</source>
        <translation>wnioski</translation>
    </message>
    <message>
        <source>What your own past winters told about how much these bees eat and how fast they die. It corrects the forecast where you want it to.</source>
        <translation>Co własne minione zimy powiedziały o&#xa0;tym, ile te pszczoły jedzą i&#xa0;jak szybko ich ubywa. Poprawia to prognozę, jeśli się tego chce.</translation>
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
        <translation>%2, %1: %3; nic więcej nie wiadomo.</translation>
    </message>
    <message>
        <source>%2, %1: %3; counts for %4 of 100 parts.</source>
        <translation>%2, %1: %3; liczy się w&#xa0;%4 na 100 części.</translation>
    </message>
    <message>
        <source>Of a comb: the area of its capped and open cells times what a square decimetre of sealed comb holds; open nectar counts as %1 of that. Each comb&apos;s share stands on the page In the hive.</source>
        <translation>Plaster: powierzchnia komórek zasklepionych i&#xa0;otwartych razy to, co mieści decymetr kwadratowy zasklepionego plastra; nakrop liczy się jako %1 tego. Udział każdego plastra jest na stronie „W&#xa0;ulu”.</translation>
    </message>
    <message>
        <source>Of a weighing: the reading less the empty hive, taken as %1, and less its bees and bee bread.</source>
        <translation>Ważenie: odczyt bez pustego ula, przyjętego jako %1, i&#xa0;bez pszczół i&#xa0;pierzgi.</translation>
    </message>
    <message>
        <source>Each counts the more the more exact it is: by one over its variance.</source>
        <translation>Każda wartość liczy się tym bardziej, im jest dokładniejsza: odwrotnie do wariancji.</translation>
    </message>
    <message>
        <source>Weighings share the error of the empty weight: all of them together are no surer than that.</source>
        <translation>Wszystkie ważenia mają ten sam błąd masy pustego ula: nawet razem nie są od niej pewniejsze.</translation>
    </message>
    <message>
        <source>Lifts of one side lean the same way each time, and so do lifts by hand: many are hardly surer than one.</source>
        <translation>Ważenie z&#xa0;jednej strony myli się za każdym razem w&#xa0;tę samą stronę, tak samo ocena w&#xa0;ręku: wiele takich ocen jest niewiele pewniejszych od jednej.</translation>
    </message>
    <message>
        <source>Stores on %1: %2</source>
        <translation>Zapasy na dzień %1: %2</translation>
    </message>
    <message>
        <source>From %1 until spring forage starts the bees eat %2 in %3 simulated winters.</source>
        <translation>Od %1 do początku pożytków wiosennych pszczoły zjadają %2 w&#xa0;symulowanych zimach (%3).</translation>
    </message>
    <message>
        <source>From %1 until spring forage starts the bees eat %2 in %3 simulated winters: on average %4 the adult bees, %5 to warm brood, %6 to feed it.</source>
        <translation>Od %1 do początku pożytków wiosennych pszczoły zjadają %2 w&#xa0;symulowanych zimach (%3): średnio %4 dorosłe pszczoły, %5 na ogrzanie czerwiu, %6 na jego wykarmienie.</translation>
    </message>
    <message>
        <source>Before spring forage starts, mostly in early spring, they bring in %1 on average.</source>
        <translation>Przed początkiem pożytków wiosennych, głównie wczesną wiosną, przynoszą średnio %1.</translation>
    </message>
    <message>
        <source>Adult bees eat for the heat their cluster loses: the colder the more, and the less for each bee the larger the cluster, up to %1 of bees.</source>
        <translation>Dorosłe pszczoły jedzą na ciepło, które traci kłąb: tym więcej, im zimniej, a&#xa0;na pszczołę tym mniej, im większy kłąb, do %1 pszczół.</translation>
    </message>
    <message>
        <source>A gram of honey holds %1 kilojoules.</source>
        <translation>Gram miodu zawiera %1 kilodżuli.</translation>
    </message>
    <message>
        <source>Brood is kept at %1, and each worker reared takes %2 of honey.</source>
        <translation>Czerw jest utrzymywany w&#xa0;%1, a&#xa0;wychowanie każdej robotnicy kosztuje %2 miodu.</translation>
    </message>
    <message>
        <source>Bees that emerge beside little brood live through the winter, those that emerge beside much of it die within weeks: colonies shrink from August to November.</source>
        <translation>Pszczoły wygryzające się przy małej ilości czerwiu dożywają wiosny, przy dużej giną po kilku tygodniach: od sierpnia do listopada rodziny maleją.</translation>
    </message>
    <message>
        <source>Weather, heat, brood and deaths of bees differ from winter to winter as they do in nature.</source>
        <translation>Pogoda, ciepło, czerw i&#xa0;ubywanie pszczół różnią się z&#xa0;zimy na zimę, tak jak w&#xa0;przyrodzie.</translation>
    </message>
    <message>
        <source>With so much in the hive on %1 the stores fall below the reserve of %2 before spring forage starts in no more than %3 of 100 simulated winters. Reserve and risk are yours to set, in the yard&apos;s Place.</source>
        <translation>Przy takiej ilości w&#xa0;ulu na dzień %1 zapasy spadają przed początkiem pożytków wiosennych poniżej żelaznej rezerwy %2 najwyżej w&#xa0;%3 na 100 symulowanych zim. Rezerwę i&#xa0;ryzyko ustawia się w&#xa0;pasiece na stronie „Miejsce”.</translation>
    </message>
    <message>
        <source>They are about %1 bees.</source>
        <translation>To około %1 pszczół.</translation>
    </message>
    <message>
        <source>Needed on %1 to last until spring forage starts: %2</source>
        <translation>Potrzebne %1, by starczyło do początku pożytków wiosennych: %2</translation>
    </message>
    <message>
        <source>With so much in the hive on %1, the day winter begins for it, the stores fall below %2 before spring forage starts in no more than %3 of 100 simulated winters.</source>
        <translation>Przy takiej ilości w&#xa0;ulu %1, w&#xa0;dniu, gdy zaczyna się dla niej zima, zapasy spadają przed początkiem pożytków wiosennych poniżej %2 najwyżej w&#xa0;%3 na 100 symulowanych zim.</translation>
    </message>
    <message>
        <source>Until then about %1 are eaten and %2 of nectar found, as stores.</source>
        <translation>Do tego czasu, licząc w&#xa0;zapasach, zostanie zjedzone około %1, a&#xa0;przyniesione %2 nektaru.</translation>
    </message>
    <message>
        <source>With the empty hive, taken as %1, its bees, brood and bee bread it then weighs %2.</source>
        <translation>Z&#xa0;pustym ulem, przyjętym jako %1, z&#xa0;pszczołami, czerwiem i&#xa0;pierzgą waży wtedy %2.</translation>
    </message>
    <message>
        <source>Wanted on %1: %2 of stores</source>
        <translation>Potrzebne %1: %2 zapasów</translation>
    </message>
    <message>
        <source>The day was given in the yard&apos;s Place and not derived from the climate.</source>
        <translation>Ten dzień podano w&#xa0;pasiece na stronie „Miejsce”; nie wynika z&#xa0;klimatu.</translation>
    </message>
    <message>
        <source>The day the climate gives was moved just far enough to follow a date given in the yard&apos;s Place.</source>
        <translation>Dzień wynikający z&#xa0;klimatu przesunięto tylko o&#xa0;tyle, by następował po dacie podanej w&#xa0;pasiece na stronie „Miejsce”.</translation>
    </message>
    <message>
        <source>Spring forage starts: %1</source>
        <translation>Początek pożytków wiosennych: %1</translation>
    </message>
    <message>
        <source>A warm or a cold spring moves it: in every simulated winter spring forage starts on a day of its own.</source>
        <translation>Ciepła lub zimna wiosna go przesuwa: w&#xa0;każdej symulowanej zimie pożytki wiosenne zaczynają się innego dnia.</translation>
    </message>
    <message>
        <source>Spring forage starts: around %1 (%2 to %3 in 80 of 100 winters)</source>
        <translation>Początek pożytków wiosennych: około %1 (od %2 do %3 w&#xa0;80 na 100 zim)</translation>
    </message>
    <message>
        <source>From the %{combs} or seams the bees cover, or the number given, carried to %1 by the model.</source>
        <translation>Z&#xa0;plastrów lub uliczek obsiadanych przez pszczoły albo z&#xa0;podanej liczby, przeliczone przez model na %1.</translation>
    </message>
    <message>
        <source>Bees on %1: %2</source>
        <translation>Pszczoły %1: %2</translation>
    </message>
    <message>
        <source>So wide is the range in which 80 of 100 likely values of what is missing or spare lie.</source>
        <translation>Tak szeroki jest zakres, w&#xa0;którym leży 80 na 100 prawdopodobnych wartości niedoboru lub nadwyżki.</translation>
    </message>
    <message>
        <source>What is missing or spare, known now within %1</source>
        <translation>Niedobór lub nadwyżka, teraz znane z&#xa0;dokładnością do %1</translation>
    </message>
    <message>
        <source>It is what would be left of it after that look, given how exact such a look is.</source>
        <translation>Tyle by z&#xa0;tego zostało po takim przeglądzie, zważywszy, jak jest on dokładny.</translation>
    </message>
    <message>
        <source>What is missing or spare, known after another look within %1</source>
        <translation>Niedobór lub nadwyżka, po kolejnym przeglądzie znane z&#xa0;dokładnością do %1</translation>
    </message>
    <message>
        <source>Counted over %1 simulated winters: those in which less than the reserve of %2 is left on some day before spring forage starts.</source>
        <translation>Policzone w&#xa0;symulowanych zimach (%1): te, w&#xa0;których przed początkiem pożytków wiosennych zostaje któregoś dnia mniej niż żelazna rezerwa %2.</translation>
    </message>
    <message>
        <source>Counted over %1 simulated winters: those in which nothing is left on some day before spring forage starts.</source>
        <translation>Policzone w&#xa0;symulowanych zimach (%1): te, w&#xa0;których przed początkiem pożytków wiosennych któregoś dnia nie zostaje nic.</translation>
    </message>
    <message>
        <source>Each begins with other stores, as widely spread as they are known: %1.</source>
        <translation>Każda zaczyna się od innych zapasów, rozrzuconych tak szeroko, jak je znamy: %1.</translation>
    </message>
    <message>
        <source>They are the same winters for everything that can be done, so the figures can be compared.</source>
        <translation>Dla wszystkiego, co można zrobić, są to te same zimy, więc liczby można porównywać.</translation>
    </message>
    <message>
        <source>That is %1; in the others so much or more is left.</source>
        <translation>To %1; w&#xa0;pozostałych zostaje tyle lub więcej.</translation>
    </message>
    <message>
        <source>%2 or more left, if you do as advised: %1 simulated winters</source>
        <translation>Zostaje %2 lub więcej, jeśli postąpi się według zalecenia: w&#xa0;%1 symulowanych zim</translation>
    </message>
    <message>
        <source>%2 or more left, left alone: %1 simulated winters</source>
        <translation>Zostaje %2 lub więcej, gdy nic się nie robi: w&#xa0;%1 symulowanych zim</translation>
    </message>
    <message>
        <source>Runs out, if you do as advised: %1 simulated winters</source>
        <translation>Zapasy kończą się, jeśli postąpi się według zalecenia: w&#xa0;%1 symulowanych zim</translation>
    </message>
    <message>
        <source>Runs out, left alone: %1 simulated winters</source>
        <translation>Zapasy kończą się, gdy nic się nie robi: w&#xa0;%1 symulowanych zim</translation>
    </message>
    <message>
        <source>%1 wide and %2 high</source>
        <translation>%1 szerokości i&#xa0;%2 wysokości</translation>
    </message>
    <message>
        <source>%1 wide at the bar, %2 below, and %3 high</source>
        <translation>%1 szerokości przy snozie, %2 u&#xa0;dołu i&#xa0;%3 wysokości</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>widziany przez okienko</translation>
    </message>
    <message>
        <source>one face traced on a photograph</source>
        <translation>jedna strona obrysowana na zdjęciu</translation>
    </message>
    <message>
        <source>one face seen</source>
        <translation>widziana jedna strona</translation>
    </message>
    <message>
        <source>both faces traced on a photograph</source>
        <translation>obie strony obrysowane na zdjęciu</translation>
    </message>
    <message>
        <source>both faces seen</source>
        <translation>widziane obie strony</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The comb is %1, built to %2 of 100 parts, %3 from its neighbours&apos; middle. Sealed from edge to edge on both faces it would hold %4: honey between the cell bottoms and the cappings, less the wax.</source>
        <translation>Plaster ma %1, jest odbudowany w&#xa0;%2 na 100 części, środki sąsiednich dzieli %3. Zasklepiony z&#xa0;obu stron od brzegu do brzegu mieściłby %4: miód między dnem komórek a&#xa0;zasklepem, bez wosku.</translation>
    </message>
    <message>
        <source>It was not looked at and is taken as the mean of the combs that were; how far that may be off is known only roughly.</source>
        <translation>Nie był oglądany; przyjęto średnią z&#xa0;obejrzanych plastrów, a&#xa0;jak bardzo może się mylić, wiadomo tylko z&#xa0;grubsza.</translation>
    </message>
    <message>
        <source>Capped are %1 of 100 parts: %2.</source>
        <translation>Zasklepione jest %1 na 100 części: %2.</translation>
    </message>
    <message>
        <source>Open nectar is on %1 of 100 parts. It is thinner and less deep than sealed honey and counts as %2 of it: %3.</source>
        <translation>Nakrop zajmuje %1 na 100 części. Jest rzadszy i&#xa0;płytszy niż zasklepiony miód i&#xa0;liczy się jako %2 tego: %3.</translation>
    </message>
    <message>
        <source>%1: one standard deviation is %2 of 100 parts, from the judged area and from how deep cells are filled.</source>
        <translation>%1: jedno odchylenie standardowe to %2 na 100 części, z&#xa0;oszacowania powierzchni i&#xa0;z&#xa0;głębokości napełnienia komórek.</translation>
    </message>
    <message>
        <source>That is the target less what will be there when winter begins: about %1 now, %2 wanted from today on.</source>
        <translation>To docelowy zapas bez tego, co będzie na początku zimy: teraz około %1, od dziś potrzebne %2.</translation>
    </message>
    <message>
        <source>A kilogram of white sugar fed as %1 becomes %2 kg of ripe stores: the water goes down to 18 parts of 100, and driving it off costs the bees food.</source>
        <translation>Kilogram białego cukru podany jako %1 daje %2 kg dojrzałych zapasów: woda spada do 18 części na 100, a&#xa0;jej odparowanie kosztuje pszczoły pokarm.</translation>
    </message>
    <message>
        <source>%1 of sugar in %2 of water make %3 of syrup, which become %4 of stores.</source>
        <translation>%1 cukru w&#xa0;%2 wody daje %3 syropu, a&#xa0;z&#xa0;niego powstaje %4 zapasów.</translation>
    </message>
    <message>
        <source>White sugar to feed: %1</source>
        <translation>Biały cukier do podania: %1</translation>
    </message>
    <message>
        <source>Fondant is for what can no longer be had as syrup.</source>
        <translation>Ciasto jest na to, czego nie da się już podać w&#xa0;syropie.</translation>
    </message>
    <message>
        <source>Fondant to feed: %1</source>
        <translation>Ciasto do podania: %1</translation>
    </message>
    <message>
        <source>The rule: the first day on which the air&apos;s daily mean of usual years is below %1. Later syrup is no longer taken and ripened for certain.</source>
        <translation>Reguła: pierwszy dzień, w&#xa0;którym średnia dobowa powietrza w&#xa0;zwykłym roku spada poniżej %1. Później nie jest pewne, że syrop zostanie pobrany i&#xa0;przerobiony.</translation>
    </message>
    <message>
        <source>A warm or a cold autumn moves it by some %1 days.</source>
        <translation>Ciepła lub zimna jesień przesuwa go o&#xa0;jakieś %1 dni.</translation>
    </message>
    <message>
        <source>Last day for syrup: %1</source>
        <translation>Ostatni dzień na syrop: %1</translation>
    </message>
    <message>
        <source>%1 winters were simulated from %2 on. What was seen since makes those that fit it count more; as many as %3 equal ones are left.</source>
        <translation>Od %2 symulowano zimy w&#xa0;liczbie %1. Obserwacje sprawiają, że zgodne z&#xa0;nimi liczą się bardziej; zostaje tyle, co %3 równych.</translation>
    </message>
    <message>
        <source>Weighed or judged on %1, as stores: %2.</source>
        <translation>Zważone lub ocenione %1, w&#xa0;przeliczeniu na zapasy: %2.</translation>
    </message>
    <message>
        <source>Nothing was weighed since; the figure rests on the autumn&apos;s forecast alone.</source>
        <translation>Od tego czasu nic nie zważono; liczba opiera się tylko na prognozie z&#xa0;jesieni.</translation>
    </message>
    <message>
        <source>A reading becomes stores when the hive&apos;s own weight, its bees and its bee bread are taken off. A later reading teaches what the hive itself weighs, and then earlier ones are read anew.</source>
        <translation>Odczyt staje się zapasami po odjęciu masy samego ula, pszczół i&#xa0;pierzgi. Późniejszy odczyt uczy, ile waży sam ul, i&#xa0;wtedy wcześniejsze odczytuje się od nowa.</translation>
    </message>
    <message>
        <source>Left on %1: %2</source>
        <translation>Zostało %1: %2</translation>
    </message>
    <message>
        <source>The forecast of %1, before anything was seen since: stores of %2 with one standard deviation of %3, less what is eaten, with the feeds and harvests that were planned then.</source>
        <translation>Prognoza z&#xa0;%1, zanim cokolwiek zaobserwowano: zapasy %2 z&#xa0;odchyleniem standardowym %3, bez tego, co zjedzone, z&#xa0;zaplanowanymi wtedy karmieniami i&#xa0;miodobraniami.</translation>
    </message>
    <message>
        <source>Expected in autumn for %1: %2</source>
        <translation>Oczekiwane jesienią na %1: %2</translation>
    </message>
    <message>
        <source>Counted over the winters: those in which less than the reserve of %1 is left on some day before spring forage starts.</source>
        <translation>Policzone w&#xa0;zimach: te, w&#xa0;których przed początkiem pożytków wiosennych zostaje któregoś dnia mniej niż żelazna rezerwa %1.</translation>
    </message>
    <message>
        <source>Counted over the winters: those in which nothing is left on some day before spring forage starts.</source>
        <translation>Policzone w&#xa0;zimach: te, w&#xa0;których przed początkiem pożytków wiosennych któregoś dnia nie zostaje nic.</translation>
    </message>
    <message>
        <source>As it was forecast on %1, before anything was seen since.</source>
        <translation>Według prognozy z&#xa0;%1, zanim cokolwiek zaobserwowano.</translation>
    </message>
    <message>
        <source>Falls below the reserve, as forecast in autumn: %1 winters</source>
        <translation>Spada poniżej żelaznej rezerwy według prognozy z&#xa0;jesieni: w&#xa0;%1 zim</translation>
    </message>
    <message>
        <source>Falls below the reserve, if nothing is done: %1 winters</source>
        <translation>Spada poniżej żelaznej rezerwy, jeśli nic się nie zrobi: w&#xa0;%1 zim</translation>
    </message>
    <message>
        <source>Runs out, as forecast in autumn: %1 winters</source>
        <translation>Zapasy kończą się według prognozy z&#xa0;jesieni: w&#xa0;%1 zim</translation>
    </message>
    <message>
        <source>Runs out, if nothing is done: %1 winters</source>
        <translation>Zapasy kończą się, jeśli nic się nie zrobi: w&#xa0;%1 zim</translation>
    </message>
    <message>
        <source>With %3 more in the hive it falls below %1 in no more than %2 of 100 winters that fit what was seen.</source>
        <translation>Gdy w&#xa0;ulu jest o&#xa0;%3 więcej, zapasy spadają poniżej %1 najwyżej w&#xa0;%2 na 100 zim zgodnych z&#xa0;obserwacjami.</translation>
    </message>
    <message>
        <source>Syrup is still taken; its visits stand on the page Feeding.</source>
        <translation>Syrop jest jeszcze pobierany; wizyty są na stronie „Karmienie”.</translation>
    </message>
    <message>
        <source>Sugar to feed: %1, for %2 of stores</source>
        <translation>Cukier do podania: %1, na %2 zapasów</translation>
    </message>
    <message>
        <source>One visit with no more than %1; what is still missing then is told by the next weighing.</source>
        <translation>Jedna wizyta, najwyżej %1; ile potem jeszcze brakuje, powie następne ważenie.</translation>
    </message>
    <message>
        <source>Fondant to lay on: %1, for %2 of stores</source>
        <translation>Ciasto do położenia: %1, na %2 zapasów</translation>
    </message>
    <message>
        <source>A week before %1, when bees that eat much (4 winters of 5 eat less) come down to %2.</source>
        <translation>Tydzień przed %1, kiedy pszczołom o&#xa0;dużym apetycie (w&#xa0;4 zimach na 5 zjadają mniej) zostaje %2.</translation>
    </message>
    <message>
        <source>Today: it cannot wait, or is taken best now.</source>
        <translation>Dziś: to nie może czekać albo teraz pszczoły pobiorą najlepiej.</translation>
    </message>
    <message>
        <source>Feed on %1</source>
        <translation>Karmić %1</translation>
    </message>
    <message>
        <source>On that day half of the winters that fit what was seen are below the reserve of %1.</source>
        <translation>Tego dnia w&#xa0;połowie zim zgodnych z&#xa0;obserwacjami zapasy są poniżej żelaznej rezerwy %1.</translation>
    </message>
    <message>
        <source>On that day a tenth of the winters that fit what was seen are below the reserve of %1.</source>
        <translation>Tego dnia w&#xa0;jednej dziesiątej zim zgodnych z&#xa0;obserwacjami zapasy są poniżej żelaznej rezerwy %1.</translation>
    </message>
    <message>
        <source>Below the reserve: %1</source>
        <translation>Poniżej żelaznej rezerwy: %1</translation>
    </message>
    <message>
        <source>Fondant is laid on one visit at a time, and the next follows a weighing: before the visit that is planned, or two weeks after that of today.</source>
        <translation>Ciasto kładzie się po jednej wizycie naraz, a&#xa0;następna zależy od ważenia: przed zaplanowaną wizytą albo dwa tygodnie po dzisiejszej.</translation>
    </message>
    <message>
        <source>Weigh on %1</source>
        <translation>Zważyć %1</translation>
    </message>
    <message>
        <source>Were the hive weighed on that day, its reading would change whether to feed in %1 of 100 cases, told from the winters that fit what was seen.</source>
        <translation>Gdyby ul zważono tego dnia, odczyt zmieniłby decyzję o&#xa0;karmieniu w&#xa0;%1 na 100 przypadków, sądząc po zimach zgodnych z&#xa0;obserwacjami.</translation>
    </message>
    <message>
        <source>It is the first day on which a weighing is worth it; before, it would change too seldom what to do.</source>
        <translation>To pierwszy dzień, w&#xa0;którym warto zważyć; wcześniej zbyt rzadko zmieniłoby to zalecenie.</translation>
    </message>
    <message>
        <source>A weighing on %1 changes what to do in %2 of 100 cases</source>
        <translation>Ważenie %1 zmienia zalecenie w&#xa0;%2 na 100 przypadków</translation>
    </message>
    <message>
        <source>Weigh again by %1</source>
        <translation>Zważyć ponownie najpóźniej %1</translation>
    </message>
    <message>
        <source>What the colony was seen to eat makes winters with an early or a late spring count more, so colonies of one yard may differ.</source>
        <translation>To, ile rodzina zjadała, sprawia, że bardziej liczą się zimy z&#xa0;wczesną albo z&#xa0;późną wiosną, dlatego rodziny z&#xa0;jednej pasieki mogą się różnić.</translation>
    </message>
    <message>
        <source>What stays is never below what the colony should winter on, nor below what is usual here; what comes off are whole supers and whole outer %{combs}.</source>
        <translation>Zostaje zawsze co najmniej tyle, ile rodzina powinna mieć na zimę, i&#xa0;nie mniej niż tu zwykle przyjęte; zdejmuje się całe nadstawki i&#xa0;całe skrajne ramki.</translation>
    </message>
    <message>
        <source>About %1 are in the hive, %2 are needed.</source>
        <translation>W&#xa0;ulu jest około %1, potrzeba %2.</translation>
    </message>
    <message>
        <source>To spare on %1: %2</source>
        <translation>Nadwyżka na dzień %1: %2</translation>
    </message>
    <message>
        <source>The super is for people: its honey was not counted with what the bees have, and its %{combs} hold no brood.</source>
        <translation>Nadstawka jest dla ludzi: jej miodu nie policzono do zapasów pszczół, a&#xa0;w&#xa0;jej ramkach nie ma czerwiu.</translation>
    </message>
    <message>
        <source>A comb&apos;s honey is its area times what a square decimetre of sealed comb holds.</source>
        <translation>Miód w&#xa0;plastrze to jego powierzchnia razy to, co mieści decymetr kwadratowy zasklepionego plastra.</translation>
    </message>
    <message>
        <source>Honey in the super: %1</source>
        <translation>Miód w&#xa0;nadstawce: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} that hold no brood, are capped enough, took no syrup and are not of the old brood nest weigh together no more than what is to spare.</source>
        <translation>
            <numerusform>%n ramka bez czerwiu, dość zasklepiona, bez syropu i&#xa0;nie ze starego gniazda, waży nie więcej niż nadwyżka.</numerusform>
            <numerusform>%n ramki bez czerwiu, dość zasklepione, bez syropu i&#xa0;nie ze starego gniazda, ważą razem nie więcej niż nadwyżka.</numerusform>
            <numerusform>%n ramek bez czerwiu, dość zasklepionych, bez syropu i&#xa0;nie ze starego gniazda, waży razem nie więcej niż nadwyżka.</numerusform>
        </translation>
    </message>
    <message>
        <source>To spare are %1.</source>
        <translation>Nadwyżka wynosi %1.</translation>
    </message>
    <message>
        <source>Honey in the %{combs} that may come off: %1</source>
        <translation>Miód w&#xa0;ramkach, które można odebrać: %1</translation>
    </message>
    <message>
        <source>%1 to %2, which lacks stores.</source>
        <translation>%1 dla rodziny %2, której brakuje zapasów.</translation>
    </message>
    <message>
        <source>%{Combs} within the yard come before sugar; a colony gives no more than it can spare at the risk you accept.</source>
        <translation>Ramki z&#xa0;tej samej pasieki mają pierwszeństwo przed cukrem; rodzina nie oddaje więcej, niż może przy przyjętym ryzyku.</translation>
    </message>
    <message>
        <source>Honey in %{combs} to give: %1</source>
        <translation>Miód w&#xa0;ramkach do oddania: %1</translation>
    </message>
    <message>
        <source>In 80 of 100 cases the truth lies between the two figures in brackets, in 10 below, in 10 above.</source>
        <translation>W&#xa0;80 na 100 przypadków prawdziwa wartość leży między obiema liczbami w&#xa0;nawiasie, w&#xa0;10 poniżej, w&#xa0;10 powyżej.</translation>
    </message>
    <message>
        <source>Were other winters drawn, it would differ by some %1 of 100.</source>
        <translation>Przy innym losowaniu zim różniłoby się to o&#xa0;jakieś %1 na 100.</translation>
    </message>
    <message>
        <source>The rule: the first day from which the air&apos;s daily mean of usual years stays above %1 and the day is longer than %2 hours.</source>
        <translation>Reguła: pierwszy dzień, od którego średnia dobowa powietrza w&#xa0;zwykłym roku jest stale wyższa niż %1, a&#xa0;dzień trwa dłużej niż %2 godzin.</translation>
    </message>
    <message>
        <source>A kilogram of fondant becomes %1 kg of stores; kept low on purpose.</source>
        <translation>Kilogram ciasta daje %1 kg zapasów; celowo liczony ostrożnie.</translation>
    </message>
    <message>
        <source>The reserve is yours to set, in the yard&apos;s Place: what you wish to be left at the worst moment before spring forage starts.</source>
        <translation>Żelazną rezerwę ustawia się w&#xa0;pasiece na stronie „Miejsce”: tyle ma zostać w&#xa0;najgorszej chwili przed początkiem pożytków wiosennych.</translation>
    </message>
    <message>
        <source>You accept that less is left in %1 of 100 winters.</source>
        <translation>Dopuszcza się, że mniej zostanie w&#xa0;%1 na 100 zim.</translation>
    </message>
    <message>
        <source>Reserve: %1</source>
        <translation>Żelazna rezerwa: %1</translation>
    </message>
    <message>
        <source>%1 g</source>
        <translation>%1 g</translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>sugar %1</source>
        <translation>cukier %1</translation>
    </message>
    <message>
        <source>water %1</source>
        <translation>woda %1</translation>
    </message>
    <message>
        <source>heights stand for weights</source>
        <translation>wysokości oznaczają masę</translation>
    </message>
    <message>
        <source>lid on tight</source>
        <translation>daszek szczelnie zamknięty</translation>
    </message>
    <message>
        <source>syrup under a float</source>
        <translation>syrop pod pływakiem</translation>
    </message>
    <message>
        <source>the bees come up inside</source>
        <translation>pszczoły wchodzą od środka</translation>
    </message>
    <message>
        <source>over the bees, not beside them</source>
        <translation>nad pszczołami, nie obok</translation>
    </message>
    <message>
        <source>narrow entrance</source>
        <translation>zwężony wylotek</translation>
    </message>
    <message>
        <source>stores touch the bees</source>
        <translation>zapasy dotykają pszczół</translation>
    </message>
    <message>
        <source>empty combs between: out of reach</source>
        <translation>puste plastry pomiędzy: poza zasięgiem</translation>
    </message>
    <message>
        <source>snow on top may stay</source>
        <translation>śnieg na daszku może leżeć</translation>
    </message>
    <message>
        <source>so may snow around it</source>
        <translation>śnieg wokół także</translation>
    </message>
    <message>
        <source>entrance free, mouse guard in front</source>
        <translation>wylotek wolny, zabezpieczony przed myszami</translation>
    </message>
    <message>
        <source>four of eight fields are capped</source>
        <translation>zasklepione są cztery pola z&#xa0;ośmiu</translation>
    </message>
    <message>
        <source>with both faces like this:</source>
        <translation>gdy obie strony są takie:</translation>
    </message>
    <message>
        <source>a quarter: %1</source>
        <translation>ćwierć: %1</translation>
    </message>
    <message>
        <source>half: %1</source>
        <translation>pół: %1</translation>
    </message>
    <message>
        <source>three quarters: %1</source>
        <translation>trzy czwarte: %1</translation>
    </message>
    <message>
        <source>capped honey</source>
        <translation>zasklepiony miód</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>nakrop</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pierzga</translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>czerw zasklepiony</translation>
    </message>
    <message>
        <source>grub and eggs</source>
        <translation>larwy i&#xa0;jajeczka</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>puste</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>czerw</translation>
    </message>
    <message>
        <source>empty cells</source>
        <translation>puste komórki</translation>
    </message>
    <message>
        <source>five seams</source>
        <translation>pięć uliczek</translation>
    </message>
    <message>
        <source>about %1 bees on combs of %2</source>
        <translation>około %1 pszczół na plastrach %2</translation>
    </message>
    <message>
        <source>a palm, %1 by %1</source>
        <translation>dłoń, %1 na %1</translation>
    </message>
    <message>
        <source>%1 cells of one face</source>
        <translation>%1 komórek jednej strony</translation>
    </message>
    <message>
        <source>every comb</source>
        <translation>każdy plaster</translation>
    </message>
    <message>
        <source>honey off</source>
        <translation>miód odebrany</translation>
    </message>
    <message>
        <source>weigh</source>
        <translation>zważyć</translation>
    </message>
    <message>
        <source>last feed down</source>
        <translation>ostatni pokarm pobrany</translation>
    </message>
    <message>
        <source>heft</source>
        <translation>unieść</translation>
    </message>
    <message>
        <source>cold, no brood</source>
        <translation>zimno, bez czerwiu</translation>
    </message>
    <message>
        <source>heft or weigh</source>
        <translation>unieść lub zważyć</translation>
    </message>
    <message>
        <source>brood again</source>
        <translation>znów czerw</translation>
    </message>
    <message>
        <source>first nectar</source>
        <translation>pierwszy nektar</translation>
    </message>
    <message>
        <source>light</source>
        <translation>lekki</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>średni</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>ciężki</translation>
    </message>
    <message>
        <source>what is wanted that day</source>
        <translation>tyle potrzeba tego dnia</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>a share</comment>
        <translation>%1%</translation>
    </message>
    <message>
        <source>the whole hive</source>
        <translation>cały ul</translation>
    </message>
    <message>
        <source>keep it closed</source>
        <translation>nie otwierać</translation>
    </message>
    <message>
        <source>the lid alone</source>
        <translation>tylko daszek</translation>
    </message>
    <message>
        <source>half a minute</source>
        <translation>pół minuty</translation>
    </message>
    <message>
        <source>a full look</source>
        <translation>pełny przegląd</translation>
    </message>
    <message>
        <source>1. aside, in the shade</source>
        <translation>1. na bok, w&#xa0;cień</translation>
    </message>
    <message>
        <source>2. then one by one</source>
        <translation>2. potem jedna po drugiej</translation>
    </message>
    <message>
        <source>the nest last: eggs are enough, leave the queen be</source>
        <translation>gniazdo na końcu: wystarczą jajeczka, matki nie szukać</translation>
    </message>
    <message>
        <source>Only my hives</source>
        <translation>Tylko moje ule</translation>
    </message>
    <message>
        <source>Every hive</source>
        <translation>Każdy ul</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Źródła: %1.</translation>
    </message>
    <message>
        <source>When to look, and why</source>
        <translation>Kiedy zaglądać i&#xa0;po co</translation>
    </message>
    <message>
        <source>Hefting and weighing</source>
        <translation>Ocena w&#xa0;ręku i&#xa0;ważenie</translation>
    </message>
    <message>
        <source>What a comb holds</source>
        <translation>Ile mieści plaster</translation>
    </message>
    <message>
        <source>What is in the cells</source>
        <translation>Co jest w&#xa0;komórkach</translation>
    </message>
    <message>
        <source>Counting bees and brood</source>
        <translation>Liczenie pszczół i&#xa0;czerwiu</translation>
    </message>
    <message>
        <source>Opening a hive gently</source>
        <translation>Spokojne otwieranie ula</translation>
    </message>
    <message>
        <source>Mixing and giving feed</source>
        <translation>Przygotowanie i&#xa0;podawanie pokarmu</translation>
    </message>
    <message>
        <source>Checks in winter</source>
        <translation>Kontrole zimą</translation>
    </message>
    <message>
        <source>Hive</source>
        <translation>Ul</translation>
    </message>
    <message>
        <source>Sugar to water</source>
        <translation>Cukier do wody</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Cukier</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Woda</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Daje</translation>
    </message>
    <message>
        <source>Becomes stores of</source>
        <translation>Da zapasów</translation>
    </message>
    <message>
        <source>Ratios here are by weight, sugar to water. Two cups of sugar on one of water are only %1 to 1 by weight: use a scale.</source>
        <translation>Stosunki podano tu wagowo, cukier do wody. Dwie szklanki cukru na jedną wody to wagowo tylko %1 do 1: trzeba użyć wagi.</translation>
    </message>
    <message>
        <source>The same sugar with less and less water: 1 to 1, 3 to 2 and 2 to 1 by weight.</source>
        <translation>Ten sam cukier z&#xa0;coraz mniejszą ilością wody: wagowo 1 do 1, 3 do 2 i&#xa0;2 do 1.</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mieszanie</translation>
    </message>
    <message>
        <source>Stir white granulated sugar into water of %1 until it is clear. Never boil, no acid, no brown or icing sugar. Give it lukewarm.</source>
        <translation>Biały cukier kryształ wsypać do wody o&#xa0;temperaturze %1 i&#xa0;mieszać, aż będzie przejrzysta. Nigdy nie gotować, bez kwasu, bez cukru brązowego ani pudru. Podawać letni.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Jaki</translation>
    </message>
    <message>
        <source>For winter stores 3:2 while five weeks of warm days remain before the last day for syrup, then 2:1: less water to drive off. 1:1 only helps a small colony along.</source>
        <translation>Na zapasy zimowe 3:2, dopóki do ostatniego dnia na syrop zostało pięć tygodni ciepłych dni, potem 2:1: mniej wody do odparowania. 1:1 pomaga tylko małej rodzinie się utrzymać.</translation>
    </message>
    <message>
        <source>A feeder over the %{combs} and under the lid: bees come up inside, nothing gets in from outside, the entrance is narrow.</source>
        <translation>Podkarmiaczka nad ramkami i&#xa0;pod daszkiem: pszczoły wchodzą od środka, z&#xa0;zewnątrz nic się nie dostanie, wylotek jest zwężony.</translation>
    </message>
    <message>
        <source>Feeder</source>
        <translation>Podkarmiaczka</translation>
    </message>
    <message>
        <source>Inside and above the bees, tight against those from outside, with a float so that none drown. Supers whose honey is for people come off first.</source>
        <translation>Wewnątrz ula i&#xa0;nad pszczołami, szczelna dla obcych, z&#xa0;pływakiem, żeby pszczoły się nie topiły. Najpierw zdjąć nadstawki z&#xa0;miodem dla ludzi.</translation>
    </message>
    <message>
        <source>Robbers and wasps</source>
        <translation>Rabunek i&#xa0;osy</translation>
    </message>
    <message>
        <source>Feed all colonies the same evening, spill nothing, narrow the entrance to %1 by %2 at most, for a weak colony to one bee.</source>
        <translation>Wszystkie rodziny karmić tego samego wieczoru, niczego nie rozlać, wylotek zwęzić najwyżej do %1 na %2, w&#xa0;słabej rodzinie na jedną pszczołę.</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Ostatni dzień</translation>
    </message>
    <message>
        <source>Syrup needs %1 weeks to be sealed, and under %2 it is hardly taken. The page Feeding says the day for your yard.</source>
        <translation>Syrop potrzebuje %1 tygodni, by został zasklepiony, a&#xa0;poniżej %2 prawie nie jest pobierany. Dzień dla danej pasieki podaje strona „Karmienie”.</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Ciasto</translation>
    </message>
    <message>
        <source>In winter the only feed: on the bars over the cluster so that it touches the bees, covered, at most %1 a visit, for a nucleus %2. In a long hive stand it beside the cluster. Never feed honey of unknown origin.</source>
        <translation>Zimą jedyny pokarm: na beleczkach nad kłębem, tak by dotykało pszczół, przykryte, najwyżej %1 na wizytę, w&#xa0;odkładzie %2. W&#xa0;leżaku postawić je obok kłębu. Nigdy nie podawać miodu niewiadomego pochodzenia.</translation>
    </message>
    <message>
        <source>In winter you help from outside. Go round every two weeks and after each storm: entrance, weight, tracks.</source>
        <translation>Zimą pomaga się z&#xa0;zewnątrz. Obchód co dwa tygodnie i&#xa0;po każdej wichurze: wylotek, ciężar, ślady.</translation>
    </message>
    <message>
        <source>A hive in snow: snow around it may stay, the entrance is free and behind a mouse guard.</source>
        <translation>Ul w&#xa0;śniegu: śnieg wokół może leżeć, wylotek jest wolny i&#xa0;zabezpieczony przed myszami.</translation>
    </message>
    <message>
        <source>Entrance</source>
        <translation>Wylotek</translation>
    </message>
    <message>
        <source>Keep it open: draw dead bees out with a bent wire, break ice away. Loose snow around the hive is a coat. Fit a mouse guard, openings about %1, before days stay below %2.</source>
        <translation>Ma być drożny: martwe pszczoły wygarnąć zgiętym drutem, lód odłupać. Sypki śnieg wokół ula jest jak kożuch. Zabezpieczenie przed myszami, o&#xa0;otworach około %1, założyć, zanim dni będą stale poniżej %2.</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Masa</translation>
    </message>
    <message>
        <source>Heft the same side each time, or read the scale. Loss is slow until brood begins, then several times as fast.</source>
        <translation>Unosić zawsze z&#xa0;tej samej strony albo odczytać wagę. Ubywa powoli, dopóki nie ma czerwiu, potem kilka razy szybciej.</translation>
    </message>
    <message>
        <source>Left: stores touch the cluster. Right: empty %{combs} lie between, and in the cold the bees do not cross them.</source>
        <translation>Po lewej: zapasy dotykają kłębu. Po prawej: pomiędzy są puste plastry, a&#xa0;na mrozie pszczoły przez nie nie przejdą.</translation>
    </message>
    <message>
        <source>In reach</source>
        <translation>W&#xa0;zasięgu</translation>
    </message>
    <message>
        <source>The cluster eats only what it touches. %1 empty %{combs} between it and the stores are a wall in the cold: on a day of %2 hang a full %{comb} against the bees.</source>
        <translation>Kłąb je tylko to, czego dotyka. Puste plastry między nim a&#xa0;zapasami (%1) są na mrozie ścianą: w&#xa0;dzień, gdy jest %2, wstawić pełną ramkę tuż przy pszczołach.</translation>
    </message>
    <message>
        <source>Act now</source>
        <translation>Działać od razu</translation>
    </message>
    <message>
        <source>It comes up by itself when hefted; food for fewer than %1 days; bees right under the lid with no capped comb beside them; bees head down in empty cells. Lay fondant on the bees today, weigh, and come again.</source>
        <translation>Ul sam idzie w&#xa0;górę przy unoszeniu; pokarmu na mniej niż %1 dni; pszczoły tuż pod powałką i&#xa0;żadnego zasklepionego plastra obok; pszczoły głowami w&#xa0;pustych komórkach. Jeszcze dziś położyć ciasto na pszczołach, zważyć i&#xa0;przyjść znowu.</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Martwa rodzina</translation>
    </message>
    <message>
        <source>Close it the same day, or robbers carry away what killed it. Nothing of it goes to another colony until disease is ruled out.</source>
        <translation>Ul zamknąć tego samego dnia, inaczej rabujące pszczoły rozniosą to, co ją zabiło. Dopóki choroba nie jest wykluczona, nic z&#xa0;niego nie trafia do innej rodziny.</translation>
    </message>
    <message>
        <source>Signs of disease are for the bee inspector, medicines for the vet and the label. Local codes on registering, moving, feeding and burning come before anything said here. No honey for children under twelve months.</source>
        <translation>Objawami choroby zajmuje się powiatowy lekarz weterynarii, lekami lekarz weterynarii i&#xa0;etykieta. Miejscowe przepisy o&#xa0;zgłaszaniu, przewożeniu, karmieniu i&#xa0;paleniu są ważniejsze niż to, co tu napisano. Dzieciom poniżej dwunastu miesięcy nie podaje się miodu.</translation>
    </message>
    <message>
        <source>All of it, both faces</source>
        <translation>Cały, obie strony</translation>
    </message>
    <message>
        <source>Half of it</source>
        <translation>Połowa</translation>
    </message>
    <message>
        <source>One field of one face</source>
        <translation>Jedno pole jednej strony</translation>
    </message>
    <message>
        <source>Bees of a seam, or of a covered %{comb}</source>
        <translation>Pszczoły w&#xa0;uliczce albo na obsiadanym plastrze</translation>
    </message>
    <message>
        <source>Hold the %{comb} over the hive and ask one thing of each face: what share of the comb is capped? Leave the wood out.</source>
        <translation>Trzymać ramkę nad ulem i&#xa0;przy każdej stronie zadać jedno pytanie: jaka część plastra jest zasklepiona? Drewna nie liczyć.</translation>
    </message>
    <message>
        <source>One face of a comb of %1 cut into eight fields. Here %2 of the face is capped.</source>
        <translation>Jedna strona plastra %1 podzielona na osiem pól. Zasklepione jest tu %2 strony.</translation>
    </message>
    <message>
        <source>Count fields</source>
        <translation>Liczenie pól</translation>
    </message>
    <message>
        <source>Think of the face as eight fields, four across and two down. Count those that are capped; two half ones make one.</source>
        <translation>Stronę plastra podzielić w&#xa0;myśli na osiem pól, cztery w&#xa0;poprzek i&#xa0;dwa w&#xa0;dół. Policzyć zasklepione; dwa do połowy to jedno.</translation>
    </message>
    <message>
        <source>Both faces</source>
        <translation>Obie strony</translation>
    </message>
    <message>
        <source>They seldom match: judge both and take the mean. Where only one was seen, say so; it counts as less sure.</source>
        <translation>Rzadko są takie same: ocenić obie i&#xa0;wziąć średnią. Gdy widziano tylko jedną, trzeba to zaznaczyć; liczy się jako mniej pewna.</translation>
    </message>
    <message>
        <source>Bands deceive</source>
        <translation>Pasy mylą</translation>
    </message>
    <message>
        <source>A band under the top bar looks like more than it is. A band of a quarter of the height is a quarter of the comb.</source>
        <translation>Pas pod górną beleczką wydaje się większy, niż jest. Pas na ćwierć wysokości to ćwierć plastra.</translation>
    </message>
    <message>
        <source>A quarter, a half and three quarters of a comb of %1 capped, and what each holds with both faces alike.</source>
        <translation>Ćwierć, pół i&#xa0;trzy czwarte plastra %1 zasklepione i&#xa0;ile każdy mieści, gdy obie strony są jednakowe.</translation>
    </message>
    <message>
        <source>By the palm</source>
        <translation>Na dłonie</translation>
    </message>
    <message>
        <source>A palm of capped comb, %1 by %1, holds about %2 with both faces capped.</source>
        <translation>Dłoń zasklepionego plastra, %1 na %1, mieści około %2, gdy obie strony są zasklepione.</translation>
    </message>
    <message>
        <source>Thick combs</source>
        <translation>Grube plastry</translation>
    </message>
    <message>
        <source>The wider combs hang, the thicker they are drawn. With %1 from comb to comb instead of %2 a full one holds %3 instead of %4: give the width where it differs.</source>
        <translation>Im szerzej wiszą plastry, tym są grubsze. Przy %1 od plastra do plastra zamiast %2 pełny mieści %3 zamiast %4: jeśli odległość jest inna, trzeba ją podać.</translation>
    </message>
    <message>
        <source>“Full”</source>
        <translation>„Pełna”</translation>
    </message>
    <message>
        <source>A comb called full has rims. Where combs were only counted, a full one is therefore taken for %1.</source>
        <translation>Ramka nazywana pełną ma puste brzegi. Gdzie ramki tylko policzono, pełną przyjmuje się więc jako %1.</translation>
    </message>
    <message>
        <source>Capped honey of one %{comb}:</source>
        <translation>Zasklepiony miód w&#xa0;jednej ramce:</translation>
    </message>
    <message>
        <source>Five things may be in a cell. Stand with the sun over your shoulder, so that it shines into the cells.</source>
        <translation>W&#xa0;komórce może być pięć rzeczy. Stanąć tak, by słońce świeciło zza ramienia do wnętrza komórek.</translation>
    </message>
    <message>
        <source>Cells face on: capped honey, open nectar, bee bread, sealed brood, eggs and grubs, and empty ones.</source>
        <translation>Komórki od przodu: zasklepiony miód, nakrop, pierzga, czerw zasklepiony, jajeczka i&#xa0;larwy oraz puste.</translation>
    </message>
    <message>
        <source>Capped honey</source>
        <translation>Zasklepiony miód</translation>
    </message>
    <message>
        <source>Flat or slightly sunken lids of wax, white to brown, without holes. Dry-looking lids have air under them, wet-looking ones touch the honey; both count in full.</source>
        <translation>Płaskie lub lekko wklęsłe wieczka z&#xa0;wosku, białe do brązowych, bez dziurek. Pod wieczkami, które wyglądają na suche, jest powietrze, mokre dotykają miodu; jedne i&#xa0;drugie liczą się w&#xa0;całości.</translation>
    </message>
    <message>
        <source>Open nectar or syrup</source>
        <translation>Nakrop lub syrop</translation>
    </message>
    <message>
        <source>Glistens. Hold the %{comb} flat and jerk it once: what spatters is raw. Its area counts for %1 of capped honey within a week of a feed or a flow, later for %2.</source>
        <translation>Błyszczy. Ramkę trzymać poziomo i&#xa0;raz szarpnąć: co pryska, jest niedojrzałe. Jego powierzchnia liczy się do tygodnia po karmieniu lub pożytku jako %1 zasklepionego miodu, później jako %2.</translation>
    </message>
    <message>
        <source>Bee bread</source>
        <translation>Pierzga</translation>
    </message>
    <message>
        <source>Matt and packed, in many colours. It feeds brood, is no winter food, and makes a %{comb} feel heavy.</source>
        <translation>Matowa i&#xa0;ubita, w&#xa0;wielu kolorach. To pokarm dla czerwiu, a&#xa0;nie na zimę, i&#xa0;przez nią ramka wydaje się ciężka.</translation>
    </message>
    <message>
        <source>Sealed brood</source>
        <translation>Czerw zasklepiony</translation>
    </message>
    <message>
        <source>Even tan lids, slightly domed, matt as a biscuit. Sunken, greasy or pierced lids are signs of disease: close the hive, move nothing, call the bee inspector.</source>
        <translation>Równe, brązowawe wieczka, lekko wypukłe, matowe jak biszkopt. Wieczka zapadnięte, tłuste lub podziurawione to objawy choroby: ul zamknąć, niczego nie przenosić, zawiadomić powiatowego lekarza weterynarii.</translation>
    </message>
    <message>
        <source>Eggs and grubs</source>
        <translation>Jajeczka i&#xa0;larwy</translation>
    </message>
    <message>
        <source>Eggs stand like tiny grains of rice, grubs lie curled and white. Eggs mean a queen within three days. Late in the year there may be none.</source>
        <translation>Jajeczka stoją jak drobne ziarenka ryżu, larwy leżą zwinięte i&#xa0;białe. Jajeczka znaczą, że w&#xa0;ciągu trzech dni matka była. Późną porą może ich nie być.</translation>
    </message>
    <message>
        <source>Where they lie on a %{comb}: capped honey in an arch on top, open nectar under it, brood in the lower middle with bee bread around.</source>
        <translation>Gdzie co leży na plastrze: u&#xa0;góry łukiem zasklepiony miód, pod nim nakrop, w&#xa0;środku u&#xa0;dołu czerw z&#xa0;pierzgą dookoła.</translation>
    </message>
    <message>
        <source>Write down the share of each; what is left is empty. From syrup to sealed takes %1 weeks, so what is open when the cold begins often stays so. Honey for people: only %{combs} with at least %2 of their stores capped.</source>
        <translation>Zapisać udział każdego; reszta jest pusta. Od syropu do zasklepienia mija %1 tygodni, więc co jest otwarte na początku mrozów, często takie zostaje. Miód dla ludzi: tylko ramki, w&#xa0;których zasklepione jest co najmniej %2 zapasów.</translation>
    </message>
    <message>
        <source>Count on a cool morning before they fly, when all are at home. At noon many are out. Count before you smoke: smoke moves them.</source>
        <translation>Liczyć w&#xa0;chłodny ranek, przed lotami, gdy wszystkie są w&#xa0;domu. W&#xa0;południe wielu nie ma. Liczyć przed użyciem dymu: dym je przegania.</translation>
    </message>
    <message>
        <source>A box from above: bees fill four gaps between the %{combs} from end to end and two by half, which makes five seams.</source>
        <translation>Korpus od góry: cztery uliczki są pełne pszczół od końca do końca, dwie do połowy, razem pięć uliczek.</translation>
    </message>
    <message>
        <source>Seams</source>
        <translation>Uliczki</translation>
    </message>
    <message>
        <source>Lift lid and cover and look down. A gap filled with bees from end to end is one seam, half filled it is a half. With two boxes tip the upper one and count the lower one too. Seams are good to %1.</source>
        <translation>Zdjąć daszek i&#xa0;powałkę i&#xa0;spojrzeć w&#xa0;dół. Uliczka pełna pszczół od końca do końca to jedna, pełna do połowy to pół. Przy dwóch korpusach górny przechylić i&#xa0;policzyć też dolny. Dokładność liczenia uliczek: %1.</translation>
    </message>
    <message>
        <source>Covered %{combs}</source>
        <translation>Obsiadane plastry</translation>
    </message>
    <message>
        <source>A %{comb} so full of bees on both sides that hardly any cell shows is one; one side is a half. A loose cover shows comb between the bees and counts for half to two thirds. This is good to %1.</source>
        <translation>Plaster obsiadany na czarno z&#xa0;obu stron, tak że prawie nie widać komórek, to jeden; z&#xa0;jednej strony to pół. Przy luźnym obsiadaniu widać plaster między pszczołami i&#xa0;liczy się pół do dwóch trzecich. Dokładność: %1.</translation>
    </message>
    <message>
        <source>In the cold</source>
        <translation>Na zimnie</translation>
    </message>
    <message>
        <source>The cluster draws together and fills fewer seams than there are bees for. Write it down as seen in winter, not as a count.</source>
        <translation>Kłąb się ściąga i&#xa0;zajmuje mniej uliczek, niż jest pszczół. Zapisać to jako rzut oka zimą, a&#xa0;nie jako liczenie pszczół.</translation>
    </message>
    <message>
        <source>Brood</source>
        <translation>Czerw</translation>
    </message>
    <message>
        <source>Lay your palm on it: %1 by %1 of one face are %2 cells. Judge it as a share of the comb, like honey. It tells whether the queen lays, and what food and warmth it will take.</source>
        <translation>Przyłożyć dłoń: %1 na %1 jednej strony to %2 komórek. Oceniać jako część plastra, tak jak miód. Mówi, czy matka czerwi i&#xa0;ile pójdzie na to pokarmu i&#xa0;ciepła.</translation>
    </message>
    <message>
        <source>The last brood of the year: a patch of the size of a palm near the middle of a %{comb}.</source>
        <translation>Ostatni czerw w&#xa0;roku: łata wielkości dłoni blisko środka plastra.</translation>
    </message>
    <message>
        <source>Too few</source>
        <translation>Za mało</translation>
    </message>
    <message>
        <source>Under %1 well covered %{combs}, or %2 bees, before winter: unite with a healthy neighbour, unless it is a nucleus kept small on purpose.</source>
        <translation>Poniżej %1 dobrze obsiadanych plastrów albo %2 pszczół przed zimą: połączyć z&#xa0;inną zdrową rodziną, chyba że to celowo mały odkład.</translation>
    </message>
    <message>
        <source>Way of judging</source>
        <translation>Sposób oceny</translation>
    </message>
    <message>
        <source>Give or take</source>
        <comment>heading: two of three cases lie within</comment>
        <translation>Plus minus</translation>
    </message>
    <message>
        <source>every %{comb}, both faces</source>
        <translation>każda ramka, obie strony</translation>
    </message>
    <message>
        <source>every %{comb}, one face</source>
        <translation>każda ramka, jedna strona</translation>
    </message>
    <message>
        <source>full and half %{combs} only counted</source>
        <translation>tylko policzone ramki pełne i&#xa0;w&#xa0;połowie pełne</translation>
    </message>
    <message>
        <source>on a scale, empty hive weighed too</source>
        <translation>na wadze, pusty ul też zważony</translation>
    </message>
    <message>
        <source>on a scale, empty weight assumed</source>
        <translation>na wadze, masa pustego ula przyjęta</translation>
    </message>
    <message>
        <source>hefted by hand</source>
        <translation>oceniony w&#xa0;ręku</translation>
    </message>
    <message>
        <source>In autumn you decide what a colony can no longer put right by itself: whether honey comes off, whether it is left alone, how much it is fed. A few %{combs} too little and it starves in spring; far too much and the queen has no room. So look before you take.</source>
        <translation>Jesienią decyduje się o&#xa0;tym, czego rodzina sama już nie naprawi: czy odebrać miód, czy ją zostawić, ile jej podać. O&#xa0;kilka ramek za mało i&#xa0;wiosną zginie z&#xa0;głodu; o&#xa0;wiele za dużo i&#xa0;matka nie ma miejsca. Dlatego najpierw obejrzeć, potem odbierać.</translation>
    </message>
    <message>
        <source>Stores through the year: high when the honey is off, slowly down in the cold, steeply down while brood grows in spring.</source>
        <translation>Zapasy w&#xa0;ciągu roku: dużo po miodobraniu, powoli w&#xa0;dół na zimnie, stromo w&#xa0;dół, gdy wiosną przybywa czerwiu.</translation>
    </message>
    <message>
        <source>When the honey is off</source>
        <translation>Po miodobraniu</translation>
    </message>
    <message>
        <source>Look at every %{comb}, some %1 days before feeding is best finished. One look tells stores, brood, bees and empty comb, and there is still time to feed.</source>
        <translation>Obejrzeć każdą ramkę, jakieś %1 dni przed dniem, do którego najlepiej zakończyć karmienie. Jeden przegląd mówi o&#xa0;zapasach, czerwiu, pszczołach i&#xa0;suszu, a&#xa0;na karmienie jest jeszcze czas.</translation>
    </message>
    <message>
        <source>When the last feed is down</source>
        <translation>Po pobraniu ostatniego pokarmu</translation>
    </message>
    <message>
        <source>Weigh, and write it down. Every later weight is read against this one.</source>
        <translation>Zważyć i&#xa0;zapisać. Z&#xa0;tą masą porównuje się każdą późniejszą.</translation>
    </message>
    <message>
        <source>Leave the %{combs} alone. Heft every two weeks; once there is brood again, weigh every two to three.</source>
        <translation>Ramek nie ruszać. Unosić ul co dwa tygodnie; gdy znów jest czerw, ważyć co dwa, trzy tygodnie.</translation>
    </message>
    <message>
        <source>In spring</source>
        <translation>Wiosną</translation>
    </message>
    <message>
        <source>These weeks take most. Colonies that starve mostly do so now, with brood to keep warm, not in midwinter: go on hefting until nectar comes in every day.</source>
        <translation>Te tygodnie zabierają najwięcej. Rodziny najczęściej giną z&#xa0;głodu właśnie wtedy, gdy trzeba grzać czerw, a&#xa0;nie w&#xa0;środku zimy: unosić ule dalej, aż nektar będzie codziennie.</translation>
    </message>
    <message>
        <source>No way of judging is exact, and each is wrong in its own way. The eye errs alike on every %{comb} of a visit; a scale does not know what the empty hive weighs. Two ways together tell more than one way twice. In two of three cases the truth lies within this:</source>
        <translation>Żaden sposób oceny nie jest dokładny i&#xa0;każdy myli się inaczej. Oko myli się tak samo przy każdej ramce tej samej wizyty; waga nie wie, ile waży pusty ul. Dwa sposoby razem mówią więcej niż jeden dwa razy. W&#xa0;dwóch przypadkach na trzy prawda leży w&#xa0;tych granicach:</translation>
    </message>
    <message>
        <source>A closed hive tells most for least: two minutes, and no bee disturbed. Take stones, feeder and wet snow off first, or write down that they are on.</source>
        <translation>Zamknięty ul mówi najwięcej najmniejszym kosztem: dwie minuty i&#xa0;żadna pszczoła nie jest niepokojona. Najpierw zdjąć kamienie, podkarmiaczkę i&#xa0;mokry śnieg albo zapisać, że leżą.</translation>
    </message>
    <message>
        <source>A hand under the edge of the floor lifts one side of the hive by a finger&apos;s breadth.</source>
        <translation>Dłoń pod krawędzią dennicy unosi ul z&#xa0;jednej strony na szerokość palca.</translation>
    </message>
    <message>
        <source>Heft</source>
        <translation>Ocena w&#xa0;ręku</translation>
    </message>
    <message>
        <source>Hold the floor by its edge and lift that side by a finger&apos;s breadth, slowly, always the same side. A heavy hive feels nailed down, a fair one comes up with a pull, a light one by itself. Light is taken for %1 of what is wanted that day, fair for %2, heavy for %3: good for a warning, never for an amount.</source>
        <translation>Chwycić dennicę za krawędź i&#xa0;unieść ul z&#xa0;tej strony na szerokość palca, powoli, zawsze z&#xa0;tej samej strony. Ciężki ul jest jak przybity, średni idzie z&#xa0;oporem, lekki sam. Lekki przyjmuje się jako %1 tego, co tego dnia potrzeba, średni jako %2, ciężki jako %3: wystarcza na ostrzeżenie, nigdy na podanie ilości.</translation>
    </message>
    <message>
        <source>One side on a scale</source>
        <translation>Jedna strona na wadze</translation>
    </message>
    <message>
        <source>Hook a luggage scale to the middle of that edge, pull straight up until light shows under it, read while it hangs still. Twice the reading is roughly the whole, but stores seldom lie in the middle: at %1 it may be off by %2.</source>
        <translation>Wagę bagażową zaczepić pośrodku tej krawędzi, ciągnąć prosto w&#xa0;górę, aż pojawi się szpara, i&#xa0;odczytać, gdy wisi spokojnie. Podwójny odczyt to z&#xa0;grubsza całość, ale zapasy rzadko leżą pośrodku: przy %1 może się mylić o&#xa0;%2.</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Obie strony</translation>
    </message>
    <message>
        <source>Lift the other side too and add the two. The sum is the whole hive, never half of it. A lifted side reads %1 low, which is put right for you: %2 and %3 make %4.</source>
        <translation>Unieść też drugą stronę i&#xa0;dodać oba odczyty. Suma to cały ul, nigdy połowa. Uniesiona strona pokazuje o&#xa0;%1 za mało, co program poprawia: %2 i&#xa0;%3 dają %4.</translation>
    </message>
    <message>
        <source>The same hive lifted at its left and at its right; the two readings are added.</source>
        <translation>Ten sam ul uniesiony z&#xa0;lewej i&#xa0;z&#xa0;prawej; oba odczyty się dodaje.</translation>
    </message>
    <message>
        <source>Stores are what is left once the empty hive, bees, brood and bee bread are taken off. Not told, one box of %1 with drawn combs, floor and lids is taken to weigh %2, give or take %3. Weigh an empty one once, and every weighing tells more. Mind your back: lift with a straight one.</source>
        <translation>Zapasy to to, co zostaje po odjęciu pustego ula, pszczół, czerwiu i&#xa0;pierzgi. Jeśli nie podano, dla jednego korpusu %1 z&#xa0;suszem, dennicą i&#xa0;daszkiem przyjmuje się %2, plus minus %3. Raz zważony pusty ul sprawia, że każde ważenie mówi więcej. Uwaga na kręgosłup: podnosić z&#xa0;prostymi plecami.</translation>
    </message>
    <message>
        <source>Every opening costs warmth, and in the cold food. Ask first whether a weight would tell enough. If not, choose the day and know what you want to see.</source>
        <translation>Każde otwarcie kosztuje ciepło, a&#xa0;na zimnie pokarm. Najpierw zastanowić się, czy nie wystarczy ważenie. Jeśli nie, wybrać dzień i&#xa0;wiedzieć, co chce się zobaczyć.</translation>
    </message>
    <message>
        <source>From %1 a full look, from %2 half a minute, from %3 the lid alone; below that the hive stays closed.</source>
        <translation>Od %1 pełny przegląd, od %2 pół minuty, od %3 tylko daszek; poniżej ul zostaje zamknięty.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Kiedy nie</translation>
    </message>
    <message>
        <source>Not below %1 for a full look or %2 for half a minute; in winter lift the lid alone, from %3. Not in wind or rain. Not in a dearth at noon, when robbers search: then go toward evening.</source>
        <translation>Nie poniżej %1 na pełny przegląd ani %2 na pół minuty; zimą unosić tylko daszek, od %3. Nie w&#xa0;wiatr ani deszcz. Nie w&#xa0;południe w&#xa0;okresie bezpożytkowym, gdy pszczoły szukają, gdzie rabować: wtedy pod wieczór.</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>Dym</translation>
    </message>
    <message>
        <source>Three quiet puffs into the entrance, wait a minute, one under the lid. More drives the queen about.</source>
        <translation>Trzy spokojne dmuchnięcia w&#xa0;wylotek, odczekać minutę, jedno pod daszek. Więcej dymu przegania matkę.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Kolejność</translation>
    </message>
    <message>
        <source>Begin with an outer %{comb} and stand it beside, in the shade: now there is room. Go on %{comb} by %{comb}, lifting slowly so that no bee is rolled, and hang each back in its place, the same way round. Look for eggs, not for the queen. Cover what you are not looking at.</source>
        <translation>Zacząć od skrajnej ramki i&#xa0;odstawić ją obok, w&#xa0;cień: teraz jest miejsce. Dalej ramka po ramce, unosząc powoli, by nie zgnieść żadnej pszczoły, i&#xa0;każdą wieszać z&#xa0;powrotem na jej miejscu, tą samą stroną. Szukać jajeczek, nie matki. Przykrywać to, czego się nie ogląda.</translation>
    </message>
    <message>
        <source>Seen from above: first the outer %{comb} comes out, then one after the other moves into the gap.</source>
        <translation>Widok z&#xa0;góry: najpierw wychodzi skrajna ramka, potem jedna po drugiej przesuwa się w&#xa0;wolne miejsce.</translation>
    </message>
    <message>
        <source>Comb without a frame</source>
        <translation>Plaster bez ramki</translation>
    </message>
    <message>
        <source>Free its sides first, keep it upright, begin at the empty end, and leave it alone in heat.</source>
        <translation>Najpierw odciąć boki, trzymać pionowo, zaczynać od pustego końca, w&#xa0;upał nie ruszać.</translation>
    </message>
    <message>
        <source>Robbing</source>
        <translation>Rabunek</translation>
    </message>
    <message>
        <source>Bees wrestle at the entrance, search the joints, and leave heavy. Close up, narrow the entrance to one bee, open no other hive that day.</source>
        <translation>Pszczoły walczą na wylotku, szukają szpar i&#xa0;odlatują ciężkie. Zamknąć ul, zwęzić wylotek na jedną pszczołę, tego dnia nie otwierać innego ula.</translation>
    </message>
    <message>
        <source>In a yard</source>
        <translation>W&#xa0;pasiece</translation>
    </message>
    <message>
        <source>Healthy colonies first, doubtful ones last; wash hands and tools after these. With an allergy to stings never work alone.</source>
        <translation>Najpierw zdrowe rodziny, podejrzane na końcu; po nich umyć ręce i&#xa0;narzędzia. Przy uczuleniu na użądlenia nigdy nie pracować w&#xa0;pojedynkę.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>the book&apos;s file, such as windfall.larder</source>
        <translation>plik dziennika, np. windfall.larder</translation>
    </message>
    <message>
        <source>who writes (default: the user of the system)</source>
        <translation>kto zapisuje (domyślnie: użytkownik systemu)</translation>
    </message>
    <message>
        <source>another machine&apos;s sign that the book is open there is stale</source>
        <translation>znak innego komputera, że dziennik jest tam otwarty, jest nieaktualny</translation>
    </message>
    <message>
        <source>its name, or its number where none has the name</source>
        <translation>jej nazwa albo numer, jeśli żadna nie ma takiej nazwy</translation>
    </message>
    <message>
        <source>day of the record, YYYY-MM-DD</source>
        <translation>dzień wpisu, YYYY-MM-DD</translation>
    </message>
    <message>
        <source>what else is to be remembered</source>
        <translation>co jeszcze warto zapamiętać</translation>
    </message>
    <message>
        <source>it is right, unlikely as it may be</source>
        <translation>zgadza się, choćby było mało prawdopodobne</translation>
    </message>
    <message>
        <source>name of the yard</source>
        <translation>nazwa pasieki</translation>
    </message>
    <message>
        <source>climate station it is near</source>
        <translation>stacja klimatyczna, w pobliżu której leży</translation>
    </message>
    <message>
        <source>town it is near: its coordinates, height and the nearest station are used</source>
        <translation>miejscowość, w pobliżu której leży: używane są jej współrzędne, wysokość i najbliższa stacja</translation>
    </message>
    <message>
        <source>degrees, north positive; the nearest station is used</source>
        <translation>stopnie, na północ dodatnie; używana jest najbliższa stacja</translation>
    </message>
    <message>
        <source>degrees, east positive</source>
        <translation>stopnie, na wschód dodatnie</translation>
    </message>
    <message>
        <source>height in metres; shifts the station&apos;s temperatures</source>
        <translation>wysokość w metrach; przesuwa temperatury stacji</translation>
    </message>
    <message>
        <source>nectar still to come in autumn: none, trickle, fair, strong</source>
        <translation>nektar, który jesienią jeszcze nadejdzie: none, trickle, fair, strong</translation>
    </message>
    <message>
        <source>the hives can be reached in the middle of winter</source>
        <translation>w środku zimy można dotrzeć do uli</translation>
    </message>
    <message>
        <source>full combs (frames) of honey in store</source>
        <translation>pełne ramki miodu w zapasie</translation>
    </message>
    <message>
        <source>metric, us, imperial (default: those of the country)</source>
        <translation>metric, us, imperial (domyślnie: jak w danym kraju)</translation>
    </message>
    <message>
        <source>the day asked for (default: today); later records do not count</source>
        <translation>dzień, na który liczymy (domyślnie: dziś); późniejsze wpisy się nie liczą</translation>
    </message>
    <message>
        <source>only this one</source>
        <translation>tylko ta jedna</translation>
    </message>
    <message>
        <source>the colony; it must be named</source>
        <translation>rodzina; trzeba ją podać</translation>
    </message>
    <message>
        <source>leave out what past winters taught</source>
        <translation>bez wniosków z minionych zim</translation>
    </message>
    <message>
        <source>comma, semicolon, tab</source>
        <translation>comma, semicolon, tab</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>comma lub point</translation>
    </message>
    <message>
        <source>column of the times, by name or number</source>
        <translation>kolumna z godzinami, według nazwy lub numeru</translation>
    </message>
    <message>
        <source>column of the dates, where they stand apart</source>
        <translation>kolumna z datami, jeśli stoją osobno</translation>
    </message>
    <message>
        <source>column of the weights</source>
        <translation>kolumna z masami</translation>
    </message>
    <message>
        <source>kg, g or lb</source>
        <translation>kg, g lub lb</translation>
    </message>
    <message>
        <source>dmy, mdy or ymd</source>
        <translation>dmy, mdy lub ymd</translation>
    </message>
    <message>
        <source>where the hive stands: America/Halifax, UTC, +02:00</source>
        <translation>gdzie stoi ul: America/Halifax, UTC, +02:00</translation>
    </message>
    <message>
        <source>what the logger&apos;s clock shows, where that is another zone</source>
        <translation>co pokazuje zegar rejestratora, jeśli to inna strefa</translation>
    </message>
    <message>
        <source>begin a book with its first yard</source>
        <translation>zakłada dziennik z pierwszą pasieką</translation>
    </message>
    <message>
        <source>a further yard</source>
        <translation>kolejna pasieka</translation>
    </message>
    <message>
        <source>hive format, see winterlarder-cli hive-formats</source>
        <translation>typ ula, patrz winterlarder-cli hive-formats</translation>
    </message>
    <message>
        <source>boxes of that format (default 1)</source>
        <translation>korpusy tego typu (domyślnie 1)</translation>
    </message>
    <message>
        <source>a super of this format on them; once for each</source>
        <translation>nadstawka tego typu na nich; raz na każdą</translation>
    </message>
    <message>
        <source>a colony and its hive</source>
        <translation>rodzina i jej ul</translation>
    </message>
    <message>
        <source>name of the colony</source>
        <translation>nazwa rodziny</translation>
    </message>
    <message>
        <source>where it stands, if the book has several yards</source>
        <translation>gdzie stoi, jeśli dziennik ma kilka pasiek</translation>
    </message>
    <message>
        <source>timber (default), thick-timber, wrapped, polystyrene, straw</source>
        <translation>timber (domyślnie), thick-timber, wrapped, polystyrene, straw</translation>
    </message>
    <message>
        <source>insulation above the combs</source>
        <translation>ocieplenie nad ramkami</translation>
    </message>
    <message>
        <source>weight of the hive with its empty combs</source>
        <translation>masa ula z pustym suszem</translation>
    </message>
    <message>
        <source>whom the honey of the supers is for: people, bees</source>
        <translation>dla kogo jest miód z nadstawek: people, bees</translation>
    </message>
    <message>
        <source>round, top, box, contact, frame, end</source>
        <translation>round, top, box, contact, frame, end</translation>
    </message>
    <message>
        <source>bees: dark, carniolan, buckfast, italian</source>
        <translation>pszczoły: dark, carniolan, buckfast, italian</translation>
    </message>
    <message>
        <source>year the queen was raised</source>
        <translation>rok wychowania matki</translation>
    </message>
    <message>
        <source>where the colony came from</source>
        <translation>skąd pochodzi rodzina</translation>
    </message>
    <message>
        <source>day the colony began</source>
        <translation>dzień, od którego rodzina istnieje</translation>
    </message>
    <message>
        <source>the boxes a hive has from a day on; the rest of the hive stays as it was</source>
        <translation>korpusy, które ul ma od danego dnia; reszta ula zostaje, jak była</translation>
    </message>
    <message>
        <source>weight of the hive with these boxes and their empty combs</source>
        <translation>masa ula z tymi korpusami i ich pustym suszem</translation>
    </message>
    <message>
        <source>another name for a colony</source>
        <translation>inna nazwa rodziny</translation>
    </message>
    <message>
        <source>its name, or #ID</source>
        <translation>jej nazwa albo #ID</translation>
    </message>
    <message>
        <source>the new name</source>
        <translation>nowa nazwa</translation>
    </message>
    <message>
        <source>what was seen in a hive</source>
        <translation>co widziano w ulu</translation>
    </message>
    <message>
        <source>the combs of a case file as a JSON file, or - for standard input</source>
        <translation>plastry z pliku danych rodziny jako plik JSON albo - dla standardowego wejścia</translation>
    </message>
    <message>
        <source>combs (frames) covered with bees on both sides</source>
        <translation>plastry obsiadane przez pszczoły z obu stron</translation>
    </message>
    <message>
        <source>gaps between combs (frames) filled with bees</source>
        <translation>uliczki pełne pszczół</translation>
    </message>
    <message>
        <source>bees, counted or weighed</source>
        <translation>pszczoły, policzone lub zważone</translation>
    </message>
    <message>
        <source>cells with brood of all ages</source>
        <translation>komórki z czerwiem w każdym wieku</translation>
    </message>
    <message>
        <source>water in the honey, percent</source>
        <translation>woda w miodzie, procent</translation>
    </message>
    <message>
        <source>the queen was seen</source>
        <translation>widziano matkę</translation>
    </message>
    <message>
        <source>eggs were seen</source>
        <translation>widziano jajeczka</translation>
    </message>
    <message>
        <source>there are signs of disease</source>
        <translation>są objawy choroby</translation>
    </message>
    <message>
        <source>mites were counted this season</source>
        <translation>w tym sezonie policzono osyp roztoczy</translation>
    </message>
    <message>
        <source>mites on 100 bees, as counted</source>
        <translation>roztocza na 100 pszczół, jak policzono</translation>
    </message>
    <message>
        <source>mites were treated this season</source>
        <translation>w tym sezonie wykonano zabieg przeciw warrozie</translation>
    </message>
    <message>
        <source>food is beside or right above the bees</source>
        <translation>pokarm jest obok pszczół albo tuż nad nimi</translation>
    </message>
    <message>
        <source>sugar or medicine was in the hive while its honey was made</source>
        <translation>gdy powstawał ten miód, w ulu był cukier lub lek</translation>
    </message>
    <message>
        <source>blossom, honeydew, heather</source>
        <translation>blossom, honeydew, heather</translation>
    </message>
    <message>
        <source>a weight, a lift or a heft</source>
        <translation>ważenie na wadze, przez unoszenie albo ocena w ręku</translation>
    </message>
    <message>
        <source>the whole hive on a scale</source>
        <translation>cały ul na wadze</translation>
    </message>
    <message>
        <source>a side lifted, or both one after the other</source>
        <translation>uniesiona strona albo obie po kolei</translation>
    </message>
    <message>
        <source>light, fair or heavy</source>
        <translation>light, fair lub heavy</translation>
    </message>
    <message>
        <source>rain or snow lay on the hive</source>
        <translation>ul był mokry od deszczu lub leżał na nim śnieg</translation>
    </message>
    <message>
        <source>syrup, fondant or dry sugar that was given</source>
        <translation>podany syrop, ciasto lub suchy cukier</translation>
    </message>
    <message>
        <source>sugar in it</source>
        <translation>cukier w tym</translation>
    </message>
    <message>
        <source>litres of syrup, with --ratio</source>
        <translation>litry syropu, z --ratio</translation>
    </message>
    <message>
        <source>sugar to water by mass</source>
        <translation>cukier do wody, wagowo</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>ciasto</translation>
    </message>
    <message>
        <source>syrup (default), fondant, dry-sugar</source>
        <translation>syrup (domyślnie), fondant, dry-sugar</translation>
    </message>
    <message>
        <source>it came after the look of that day (default: where that look is written down already)</source>
        <translation>było po przeglądzie z tego dnia (domyślnie: jeśli ten przegląd jest już zapisany)</translation>
    </message>
    <message>
        <source>honey that was taken</source>
        <translation>odebrany miód</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miód</translation>
    </message>
    <message>
        <source>combs (frames) taken</source>
        <translation>odebrane ramki</translation>
    </message>
    <message>
        <source>medicine given; its honey is then not for people</source>
        <translation>podany lek; miód nie jest potem dla ludzi</translation>
    </message>
    <message>
        <source>what was given</source>
        <translation>co podano</translation>
    </message>
    <message>
        <source>last day its honey is not for people, as the label says</source>
        <translation>ostatni dzień, kiedy miód nie jest dla ludzi, według etykiety</translation>
    </message>
    <message>
        <source>how a colony left: united, sold or dead</source>
        <translation>jak rodzina odeszła: united, sold lub dead</translation>
    </message>
    <message>
        <source>united, sold or dead</source>
        <translation>united, sold lub dead</translation>
    </message>
    <message>
        <source>the colony it was united into</source>
        <translation>rodzina, z którą ją połączono</translation>
    </message>
    <message>
        <source>what it died of</source>
        <translation>na co zginęła</translation>
    </message>
    <message>
        <source>a glance in winter: bees flying, the cluster, stores, a dead-out</source>
        <translation>rzut oka zimą: latające pszczoły, kłąb, zapasy, martwy ul</translation>
    </message>
    <message>
        <source>flying, cluster, stores or dead</source>
        <translation>flying, cluster, stores lub dead</translation>
    </message>
    <message>
        <source>gaps between combs the cluster fills</source>
        <translation>uliczki, które zajmuje kłąb</translation>
    </message>
    <message>
        <source>sealed stores were in sight beside the bees</source>
        <translation>obok pszczół widać było zasklepione zapasy</translation>
    </message>
    <message>
        <source>first comb with bees of the cluster, from the left, from 1</source>
        <translation>pierwszy plaster z pszczołami kłębu, od lewej, od 1</translation>
    </message>
    <message>
        <source>there were none</source>
        <translation>nie było ich widać</translation>
    </message>
    <message>
        <source>daily temperatures of a yard from a CSV table; they replace simulated days already past</source>
        <translation>temperatury dobowe pasieki z tabeli CSV; zastępują minione symulowane dni</translation>
    </message>
    <message>
        <source>CSV table, or - for standard input</source>
        <translation>tabela CSV albo - dla standardowego wejścia</translation>
    </message>
    <message>
        <source>whose, if the book has several yards</source>
        <translation>której, jeśli dziennik ma kilka pasiek</translation>
    </message>
    <message>
        <source>date=D,mean=T or date=D,min=TMIN,max=TMAX</source>
        <translation>date=D,mean=T lub date=D,min=TMIN,max=TMAX</translation>
    </message>
    <message>
        <source>c (default) or f</source>
        <translation>c (domyślnie) lub f</translation>
    </message>
    <message>
        <source>days still to come are right</source>
        <translation>dni, które dopiero będą, są poprawne</translation>
    </message>
    <message>
        <source>a few weighings and every feed, harvest and change of equipment out of a scale&apos;s log</source>
        <translation>kilka ważeń oraz każde karmienie, miodobranie i zmiana wyposażenia z zapisu wagi</translation>
    </message>
    <message>
        <source>CSV table of times and weights, or - for standard input</source>
        <translation>tabela CSV z czasem i masą albo - dla standardowego wejścia</translation>
    </message>
    <message>
        <source>of the syrup fed meanwhile, sugar to water by mass</source>
        <translation>syropu podanego w tym czasie, cukier do wody, wagowo</translation>
    </message>
    <message>
        <source>only say what would be added, and what is asked about it</source>
        <translation>mówi tylko, co zostałoby dodane i o co trzeba zapytać</translation>
    </message>
    <message>
        <source>unlikely records are right</source>
        <translation>mało prawdopodobne wpisy są poprawne</translation>
    </message>
    <message>
        <source>the answer for every living colony, or one</source>
        <translation>odpowiedź dla każdej żywej rodziny albo dla jednej</translation>
    </message>
    <message>
        <source>plan yards without moving combs between hives</source>
        <translation>planuje pasieki bez przestawiania ramek między ulami</translation>
    </message>
    <message>
        <source>a colony as a case file for advise</source>
        <translation>rodzina jako plik danych dla advise</translation>
    </message>
    <message>
        <source>act on the advice of a colony: freeze it in the book, plan its visits</source>
        <translation>przyjmuje zalecenie dla rodziny: zachowuje je w dzienniku i planuje jego wizyty</translation>
    </message>
    <message>
        <source>as its yard is planned without moving combs between hives</source>
        <translation>według planu pasieki bez przestawiania ramek między ulami</translation>
    </message>
    <message>
        <source>how the winter of every living colony goes: forecast then and now, what to do</source>
        <translation>przebieg zimy każdej żywej rodziny: prognoza wtedy i teraz, co robić</translation>
    </message>
    <message>
        <source>every day in the JSON, not every seventh</source>
        <translation>w JSON każdy dzień, a nie co siódmy</translation>
    </message>
    <message>
        <source>how a winter ended</source>
        <translation>jak skończyła się zima</translation>
    </message>
    <message>
        <source>the colony lives</source>
        <translation>rodzina żyje</translation>
    </message>
    <message>
        <source>it died</source>
        <translation>zginęła</translation>
    </message>
    <message>
        <source>combs its bees cover</source>
        <translation>plastry, które obsiadają jej pszczoły</translation>
    </message>
    <message>
        <source>stores left</source>
        <translation>pozostałe zapasy</translation>
    </message>
    <message>
        <source>food was left within reach of the dead bees</source>
        <translation>w zasięgu martwych pszczół był pokarm</translation>
    </message>
    <message>
        <source>dead bees were head down in the cells</source>
        <translation>martwe pszczoły tkwiły głowami w komórkach</translation>
    </message>
    <message>
        <source>many mites lay on the floor</source>
        <translation>na dennicy było dużo roztoczy</translation>
    </message>
    <message>
        <source>brood in the dead hive: none, solid, patchy</source>
        <translation>czerw w martwym ulu: none, solid, patchy</translation>
    </message>
    <message>
        <source>the queen was found</source>
        <translation>znaleziono matkę</translation>
    </message>
    <message>
        <source>what past winters taught, and how good their forecasts were</source>
        <translation>czego nauczyły minione zimy i jak dobre były ich prognozy</translation>
    </message>
    <message>
        <source>what is due as an iCalendar file: visits, and what answers ask</source>
        <translation>terminy jako plik iCalendar: wizyty i to, czego wymagają odpowiedzi</translation>
    </message>
    <message>
        <source>as yards are planned without moving combs between hives</source>
        <translation>według planów pasiek bez przestawiania ramek między ulami</translation>
    </message>
    <message>
        <source>every step of the book, newest first</source>
        <translation>każdy krok w dzienniku, od najnowszych</translation>
    </message>
    <message>
        <source>at most so many steps (default 100)</source>
        <translation>najwyżej tyle kroków (domyślnie 100)</translation>
    </message>
    <message>
        <source>what the book holds</source>
        <translation>co zawiera dziennik</translation>
    </message>
    <message>
        <source>look for damage; 0 = sound</source>
        <translation>szuka uszkodzeń; 0 = bez uszkodzeń</translation>
    </message>
    <message>
        <source>take the last step back</source>
        <translation>cofa ostatni krok</translation>
    </message>
    <message>
        <source>do again the step undone last</source>
        <translation>ponawia ostatnio cofnięty krok</translation>
    </message>
    <message>
        <source>the whole book as JSON (--json), or one table as CSV</source>
        <translation>cały dziennik jako JSON (--json) albo jedna tabela jako CSV</translation>
    </message>
    <message>
        <source>such as looks, look_combs, weighings</source>
        <translation>np. looks, look_combs, weighings</translation>
    </message>
    <message>
        <source>a JSON document in place of all there is, or CSV rows into one table; undoable</source>
        <translation>dokument JSON w miejsce wszystkiego albo wiersze CSV do jednej tabeli; można cofnąć</translation>
    </message>
    <message>
        <source>document or table, or - for standard input</source>
        <translation>dokument lub tabela albo - dla standardowego wejścia</translation>
    </message>
    <message>
        <source>the table of a CSV file (default: its name)</source>
        <translation>tabela pliku CSV (domyślnie: jego nazwa)</translation>
    </message>
    <message>
        <source>only say what a table would add, and what is asked about it</source>
        <translation>mówi tylko, co tabela by dodała i o co trzeba zapytać</translation>
    </message>
    <message>
        <source>unlikely entries are right</source>
        <translation>mało prawdopodobne wpisy są poprawne</translation>
    </message>
    <message>
        <source>a compact copy in one file</source>
        <translation>zwarta kopia w jednym pliku</translation>
    </message>
    <message>
        <source>file to write; never one that is there</source>
        <translation>plik do zapisania; nigdy istniejący</translation>
    </message>
    <message>
        <source>the backups beside the book, newest first</source>
        <translation>kopie zapasowe obok dziennika, od najnowszych</translation>
    </message>
    <message>
        <source>make one now</source>
        <translation>tworzy kopię teraz</translation>
    </message>
    <message>
        <source>the book as it was in a backup; undoable</source>
        <translation>dziennik taki, jak w kopii zapasowej; można cofnąć</translation>
    </message>
    <message>
        <source>file, or its name as backups lists it</source>
        <translation>plik albo jego nazwa z listy backups</translation>
    </message>
    <message>
        <source>what can be read of a damaged book, in a new one</source>
        <translation>to, co da się odczytać z uszkodzonego dziennika, w nowym</translation>
    </message>
    <message>
        <source>the new book&apos;s file</source>
        <translation>plik nowego dziennika</translation>
    </message>
    <message>
        <source>Usage</source>
        <comment>heading of the help</comment>
        <translation>Użycie</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <comment>in the usage line: winterlarder-cli [OPTIONS] SUBCOMMAND</comment>
        <translation>OPCJE</translation>
    </message>
    <message>
        <source>SUBCOMMAND</source>
        <comment>in the usage line</comment>
        <translation>POLECENIE</translation>
    </message>
    <message>
        <source>Positionals</source>
        <comment>heading: arguments told by their place</comment>
        <translation>Argumenty</translation>
    </message>
    <message>
        <source>REQUIRED</source>
        <comment>an option that must be given</comment>
        <translation>WYMAGANE</translation>
    </message>
    <message>
        <source>Winter stores of honey bee colonies: take honey, leave it, or feed.</source>
        <translation>Zapasy zimowe rodzin pszczelich: odebrać miód, zostawić czy karmić.</translation>
    </message>
    <message>
        <source>Print this help message and exit</source>
        <translation>Pokazuje tę pomoc i kończy</translation>
    </message>
    <message>
        <source>Display program version information and exit</source>
        <translation>Podaje wersję programu i kończy</translation>
    </message>
    <message>
        <source>Exit status: 0 done, 2 input or arguments are wrong, 3 a file cannot be read or written, 70 an error of the program.
Cases are JSON files; &quot;-&quot; reads JSON Lines from standard input. See winterlarder-cli(1).</source>
        <translation>Kod wyjścia: 0 gotowe, 2 błędne dane lub argumenty, 3 pliku nie da się czytać lub zapisać,
70 błąd programu.
Dane rodzin to pliki JSON; &quot;-&quot; czyta JSON Lines ze standardowego wejścia. Patrz winterlarder-cli(1).</translation>
    </message>
    <message>
        <source>print one JSON document (JSON Lines for a batch)</source>
        <translation>wypisuje jeden dokument JSON (przy wielu: JSON Lines)</translation>
    </message>
    <message>
        <source>simulated winters (default 2500)</source>
        <translation>symulowane zimy (domyślnie 2500)</translation>
    </message>
    <message>
        <source>seed of the random numbers (default 1)</source>
        <translation>ziarno liczb losowych (domyślnie 1)</translation>
    </message>
    <message>
        <source>threads at work (default: all cores); changes no digit</source>
        <translation>wątki obliczeń (domyślnie: wszystkie rdzenie); nie zmieniają żadnej cyfry</translation>
    </message>
    <message>
        <source>language of what is said, as en (default: the system&apos;s); keys of JSON and words of arguments stay as they are</source>
        <translation>język wypowiedzi, np. en (domyślnie: systemowy); klucze JSON i słowa argumentów zostają bez zmian</translation>
    </message>
    <message>
        <source>folder of the shipped data</source>
        <translation>folder dołączonych danych</translation>
    </message>
    <message>
        <source>metric, us or imperial (default: %1)</source>
        <comment>the first three are typed as they stand</comment>
        <translation>metric, us lub imperial (domyślnie: %1)</translation>
    </message>
    <message>
        <source>stores, need, verdict, feeding, harvest, cautions of one or several colonies</source>
        <translation>zapasy, zapotrzebowanie, decyzja, karmienie, miodobranie i ostrzeżenia dla jednej lub wielu rodzin</translation>
    </message>
    <message>
        <source>the case&apos;s, else those of its place</source>
        <translation>z danych rodziny, inaczej jak w jej miejscu</translation>
    </message>
    <message>
        <source>case files, or - for JSON Lines on standard input</source>
        <translation>pliki danych rodzin albo - dla JSON Lines na standardowym wejściu</translation>
    </message>
    <message>
        <source>what a colony eats between two days, by month and cause</source>
        <translation>ile rodzina zjada między dwoma dniami, według miesięcy i przyczyn</translation>
    </message>
    <message>
        <source>case file, or - for standard input</source>
        <translation>plik danych rodziny albo - dla standardowego wejścia</translation>
    </message>
    <message>
        <source>first day, YYYY-MM-DD, not before the look</source>
        <translation>pierwszy dzień, YYYY-MM-DD, nie przed przeglądem</translation>
    </message>
    <message>
        <source>last day, counted in</source>
        <translation>ostatni dzień, włącznie</translation>
    </message>
    <message>
        <source>day by day as well</source>
        <translation>także dzień po dniu</translation>
    </message>
    <message>
        <source>one noiseless winter with median constants</source>
        <translation>jedna zima bez losowości, ze środkowymi wartościami stałych</translation>
    </message>
    <message>
        <source>power and food of a colony on one day</source>
        <translation>moc i pokarm rodziny jednego dnia</translation>
    </message>
    <message>
        <source>adult bees</source>
        <translation>dorosłe pszczoły</translation>
    </message>
    <message>
        <source>mean of the day, degC</source>
        <translation>średnia dnia, degC</translation>
    </message>
    <message>
        <source>cells with brood of all ages (default 0)</source>
        <translation>komórki z czerwiem w każdym wieku (domyślnie 0)</translation>
    </message>
    <message>
        <source>dark, carniolan (default), buckfast, italian</source>
        <translation>dark, carniolan (domyślnie), buckfast, italian</translation>
    </message>
    <message>
        <source>no swing between day and night</source>
        <translation>bez wahań między dniem a nocą</translation>
    </message>
    <message>
        <source>stores and bees of a colony today, and what each observation says</source>
        <translation>zapasy i pszczoły rodziny dziś i co mówi każda obserwacja</translation>
    </message>
    <message>
        <source>sugar, water and litres of a syrup, and the stores it becomes</source>
        <translation>cukier, woda i litry syropu oraz zapasy, które z niego powstaną</translation>
    </message>
    <message>
        <source>kilograms of sugar</source>
        <translation>kilogramy cukru</translation>
    </message>
    <message>
        <source>kilograms of stores wanted</source>
        <translation>kilogramy potrzebnych zapasów</translation>
    </message>
    <message>
        <source>sugar to water, decimals allowed</source>
        <translation>cukier do wody, dopuszczalne ułamki dziesiętne</translation>
    </message>
    <message>
        <source>what the ratio counts: mass (default), volume, kg-l (kg to litres)</source>
        <translation>co liczy stosunek: mass (domyślnie), volume, kg-l (kg na litry)</translation>
    </message>
    <message>
        <source>places of the world by name, each with its weather station and height</source>
        <translation>miejsca na świecie według nazwy, każde ze swoją stacją i wysokością</translation>
    </message>
    <message>
        <source>name or its beginning, then state or country: wolfville, halifax canada, springfield il</source>
        <translation>nazwa lub jej początek, potem stan lub kraj: wolfville, halifax canada, springfield il</translation>
    </message>
    <message>
        <source>how many at most (default 10)</source>
        <translation>ile najwyżej (domyślnie 10)</translation>
    </message>
    <message>
        <source>the shipped climate stations</source>
        <translation>dołączone stacje klimatyczne</translation>
    </message>
    <message>
        <source>nearest first, to LAT,LON or to a place by its name</source>
        <translation>najbliższe najpierw, do LAT,LON albo do miejsca według nazwy</translation>
    </message>
    <message>
        <source>only those whose id, place or country holds the text</source>
        <translation>tylko te, których id, miejsce lub kraj zawiera ten tekst</translation>
    </message>
    <message>
        <source>cold-season curve and the dates derived from it</source>
        <translation>krzywa zimnej pory roku i wyznaczone z niej daty</translation>
    </message>
    <message>
        <source>id of a shipped station, or the name of a place</source>
        <translation>id dołączonej stacji albo nazwa miejsca</translation>
    </message>
    <message>
        <source>the place and dates of a case instead</source>
        <translation>zamiast tego miejsce i daty z danych rodziny</translation>
    </message>
    <message>
        <source>the winter whose autumn lies in this year (default 2026, or the case&apos;s)</source>
        <translation>zima, której jesień przypada w tym roku (domyślnie 2026 albo z danych rodziny)</translation>
    </message>
    <message>
        <source>every day of the curve</source>
        <translation>każdy dzień krzywej</translation>
    </message>
    <message>
        <source>a climate of your own from a table of daily temperatures</source>
        <translation>własny klimat z tabeli temperatur dobowych</translation>
    </message>
    <message>
        <source>degrees, north positive</source>
        <translation>stopnie, na północ dodatnie</translation>
    </message>
    <message>
        <source>daily weights, months and steps from the log of a hive scale</source>
        <translation>masy dobowe, miesiące i skoki z zapisu wagi pasiecznej</translation>
    </message>
    <message>
        <source>every day&apos;s weight as well (--json always has them)</source>
        <translation>także masa każdego dnia (--json ma ją zawsze)</translation>
    </message>
    <message>
        <source>the shipped hive formats with comb area and honey of a full comb</source>
        <translation>dołączone typy uli z powierzchnią plastra i miodem pełnego plastra</translation>
    </message>
    <message>
        <source>keys of a case file and columns of a book&apos;s tables, and what they may be</source>
        <translation>klucze pliku danych rodziny i kolumny tabel dziennika oraz co mogą zawierać</translation>
    </message>
    <message>
        <source>only this key, or all of a group: hive, bees, combs, weighings, ...</source>
        <translation>tylko ten klucz albo wszystkie z grupy: hive, bees, combs, weighings, ...</translation>
    </message>
    <message>
        <source>where the shipped numbers come from</source>
        <translation>skąd pochodzą dołączone liczby</translation>
    </message>
    <message>
        <source>only this source</source>
        <translation>tylko to źródło</translation>
    </message>
    <message>
        <source>how stores, bees and brood are judged, page by page</source>
        <translation>jak ocenia się zapasy, pszczoły i czerw, strona po stronie</translation>
    </message>
    <message>
        <source>only this page; without one the contents</source>
        <translation>tylko ta strona; bez niej spis treści</translation>
    </message>
    <message>
        <source>numbers of this hive only</source>
        <translation>tylko liczby tego ula</translation>
    </message>
    <message>
        <source>a keeper&apos;s book: years of yards, colonies and records in one file</source>
        <translation>dziennik pszczelarza: lata pasiek, rodzin i wpisów w jednym pliku</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <comment>heading of the help</comment>
        <translation>Polecenia</translation>
    </message>
    <message>
        <source>winterlarder-cli --help tells how</source>
        <translation>winterlarder-cli --help mówi, jak</translation>
    </message>
</context>
<context>
    <name>Learned</name>
    <message>
        <source>Nothing has been learned yet. A winter counts once it is over: what was weighed and how it went is used from July on (January in the south).</source>
        <translation>Wniosków jeszcze nie ma. Zima liczy się, gdy minie: to, co zważono i&#xa0;jak przebiegła, używane jest od lipca (na południu od stycznia).</translation>
    </message>
    <message>
        <source>Learned from one winter of a colony</source>
        <translation>Wnioski z&#xa0;jednej zimy rodziny</translation>
    </message>
    <message numerus="yes">
        <source>Learned from %n winters of colonies</source>
        <translation>
            <numerusform>Wnioski z&#xa0;%n zimy rodzin</numerusform>
            <numerusform>Wnioski z&#xa0;%n zim rodzin</numerusform>
            <numerusform>Wnioski z&#xa0;%n zim rodzin</numerusform>
        </translation>
    </message>
    <message>
        <source>They eat %1 % more than the model says (give or take %2 %).</source>
        <translation>Jedzą o&#xa0;%1% więcej, niż mówi model (plus minus %2%).</translation>
    </message>
    <message>
        <source>They eat %1 % less than the model says (give or take %2 %).</source>
        <translation>Jedzą o&#xa0;%1% mniej, niż mówi model (plus minus %2%).</translation>
    </message>
    <message>
        <source>They eat as the model says (give or take %1 %).</source>
        <translation>Jedzą tyle, ile mówi model (plus minus %1%).</translation>
    </message>
    <message>
        <source>They lose bees %1 % faster than the model says (give or take %2 %).</source>
        <translation>Ubywa ich o&#xa0;%1% szybciej, niż mówi model (plus minus %2%).</translation>
    </message>
    <message>
        <source>They lose bees %1 % more slowly than the model says (give or take %2 %).</source>
        <translation>Ubywa ich o&#xa0;%1% wolniej, niż mówi model (plus minus %2%).</translation>
    </message>
    <message>
        <source>They lose bees as the model says (give or take %1 %).</source>
        <translation>Ubywa ich tak, jak mówi model (plus minus %1%).</translation>
    </message>
    <message>
        <source>So much holds of all the bees of this keeper. Each colony differs from them by what its own winters and its yard&apos;s told; all of it together, times what the model says, is what its next answer counts with:</source>
        <translation>Tyle dotyczy wszystkich pszczół tego pszczelarza. Każda rodzina różni się od nich o&#xa0;to, co powiedziały jej własne zimy i&#xa0;zimy jej pasieki; wszystko razem, pomnożone przez to, co mówi model, wchodzi do jej następnej odpowiedzi:</translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days later than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>Pożytki wiosenne zaczynają się o&#xa0;%1 dni później, niż mówi klimat (plus minus %2; %n wiosna).</numerusform>
            <numerusform>Pożytki wiosenne zaczynają się o&#xa0;%1 dni później, niż mówi klimat (plus minus %2; %n wiosny).</numerusform>
            <numerusform>Pożytki wiosenne zaczynają się o&#xa0;%1 dni później, niż mówi klimat (plus minus %2; %n wiosen).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>Pożytki wiosenne zaczynają się o&#xa0;%1 dni wcześniej, niż mówi klimat (plus minus %2; %n wiosna).</numerusform>
            <numerusform>Pożytki wiosenne zaczynają się o&#xa0;%1 dni wcześniej, niż mówi klimat (plus minus %2; %n wiosny).</numerusform>
            <numerusform>Pożytki wiosenne zaczynają się o&#xa0;%1 dni wcześniej, niż mówi klimat (plus minus %2; %n wiosen).</numerusform>
        </translation>
    </message>
    <message>
        <source>Spring forage starts %1 days later than the climate says (give or take %2; one spring).</source>
        <translation>Pożytki wiosenne zaczynają się o&#xa0;%1 dni później, niż mówi klimat (plus minus %2; jedna wiosna).</translation>
    </message>
    <message>
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; one spring).</source>
        <translation>Pożytki wiosenne zaczynają się o&#xa0;%1 dni wcześniej, niż mówi klimat (plus minus %2; jedna wiosna).</translation>
    </message>
    <message>
        <source>the winter of %1 of %2: its records fit no winter, so nothing was learned from it</source>
        <translation>zima %1, rodzina %2: wpisy nie pasują do żadnej zimy, więc nie wyciągnięto z&#xa0;niej wniosków</translation>
    </message>
    <message>
        <source>One forecast can be compared with what happened: %1 lay within its band of nine in ten. Its score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>Jedną prognozę można porównać z&#xa0;tym, co się stało; w&#xa0;paśmie dziewięciu na dziesięć: %1. Jej ocena to %2, liczby z&#xa0;poradnika dla regionu %3 (jak bardzo się mylą, im mniej, tym lepiej).</translation>
    </message>
    <message numerus="yes">
        <source>%n forecasts can be compared with what happened: %1 lay within their bands of nine in ten. Their mean score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>
            <numerusform>%n prognozę można porównać z&#xa0;tym, co się stało; w&#xa0;paśmie dziewięciu na dziesięć: %1. Średnia ocena to %2, liczby z&#xa0;poradnika dla regionu %3 (jak bardzo się mylą, im mniej, tym lepiej).</numerusform>
            <numerusform>%n prognozy można porównać z&#xa0;tym, co się stało; w&#xa0;swoich pasmach dziewięciu na dziesięć: %1. Ich średnia ocena to %2, liczby z&#xa0;poradnika dla regionu %3 (jak bardzo się mylą, im mniej, tym lepiej).</numerusform>
            <numerusform>%n prognoz można porównać z&#xa0;tym, co się stało; w&#xa0;swoich pasmach dziewięciu na dziesięć: %1. Ich średnia ocena to %2, liczby z&#xa0;poradnika dla regionu %3 (jak bardzo się mylą, im mniej, tym lepiej).</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too few to judge by: it takes five or more.</source>
        <translation>To za mało, by ocenić: potrzeba pięciu lub więcej.</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>{} is not a number of an entry</source>
        <translation>{} nie jest numerem wpisu</translation>
    </message>
    <message>
        <source>a whole number from 1 to {}</source>
        <translation>liczba całkowita od 1 do {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is missing</source>
        <translation>brakuje &quot;{}&quot;</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is {}</source>
        <translation>&quot;{}&quot; to {}</translation>
    </message>
    <message>
        <source>{} has {} members</source>
        <translation>{} ma {} elementów</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>najwyżej {}</translation>
    </message>
    <message>
        <source>{} boxes are listed</source>
        <translation>liczba podanych korpusów: {}</translation>
    </message>
    <message>
        <source>from 1 to {} boxes</source>
        <translation>od 1 do {} korpusów</translation>
    </message>
    <message>
        <source>a list of combs, or {&quot;full_of_stores&quot;: ..., &quot;half&quot;: ..., &quot;capped_share&quot;: ...}</source>
        <translation>lista plastrów albo {&quot;full_of_stores&quot;: ..., &quot;half&quot;: ..., &quot;capped_share&quot;: ...}</translation>
    </message>
    <message>
        <source>&quot;case&quot; is {}</source>
        <translation>&quot;case&quot; to {}</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} lub {}</translation>
    </message>
    <message>
        <source>name the nearest town, or give latitude and longitude</source>
        <translation>podać najbliższą miejscowość albo szerokość i długość geograficzną</translation>
    </message>
    <message>
        <source>did you mean {}? Else name the nearest town, or give latitude and longitude</source>
        <translation>może chodzi o {}? Jeśli nie, podać najbliższą miejscowość albo szerokość i długość geograficzną</translation>
    </message>
    <message>
        <source>no place {}</source>
        <translation>nie ma miejsca {}</translation>
    </message>
</context>
<context>
    <name>Photograph</name>
    <message>
        <source>top left corner</source>
        <translation>lewy górny róg</translation>
    </message>
    <message>
        <source>top right corner</source>
        <translation>prawy górny róg</translation>
    </message>
    <message>
        <source>bottom right corner</source>
        <translation>prawy dolny róg</translation>
    </message>
    <message>
        <source>bottom left corner</source>
        <translation>lewy dolny róg</translation>
    </message>
    <message>
        <source>left end of the comb at the bar</source>
        <translation>lewy koniec plastra przy snozie</translation>
    </message>
    <message>
        <source>right end of the comb at the bar</source>
        <translation>prawy koniec plastra przy snozie</translation>
    </message>
    <message>
        <source>somewhere low on the left side</source>
        <translation>nisko po lewej stronie</translation>
    </message>
    <message>
        <source>somewhere low on the right side</source>
        <translation>nisko po prawej stronie</translation>
    </message>
    <message>
        <source>lowest point</source>
        <translation>najniższy punkt</translation>
    </message>
    <message>
        <source>%1 is no picture that can be read (%2). Choose a JPEG or PNG file.</source>
        <translation>%1 nie jest obrazem, który da się odczytać (%2). Należy wybrać plik JPEG lub PNG.</translation>
    </message>
</context>
<context>
    <name>Places</name>
    <message>
        <source>under 1 km</source>
        <translation>poniżej 1 km</translation>
    </message>
    <message>
        <source>no weather station is near enough: the nearest, %1, is %2 away. Give monthly temperatures of your own</source>
        <translation>żadna stacja meteorologiczna nie leży dość blisko: najbliższa, %1, jest w&#xa0;odległości %2. Trzeba podać własne temperatury miesięczne</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, at its height</source>
        <translation>pogoda ze stacji %1, odległość %2, na jej wysokości</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, about as high</source>
        <translation>pogoda ze stacji %1, odległość %2, na podobnej wysokości</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, %3 higher: here it is %4 warmer</source>
        <translation>pogoda ze stacji %1, odległość %2, leży o&#xa0;%3 wyżej: tu jest o&#xa0;%4 cieplej</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, %3 lower: here it is %4 colder</source>
        <translation>pogoda ze stacji %1, odległość %2, leży o&#xa0;%3 niżej: tu jest o&#xa0;%4 zimniej</translation>
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
        <translation>zapasy, %1</translation>
    </message>
    <message>
        <source>eaten, %1 a day</source>
        <translation>zużycie, %1 dziennie</translation>
    </message>
    <message>
        <source>air, %1</source>
        <translation>powietrze, %1</translation>
    </message>
    <message>
        <source>as forage starts,
1 dot = 2 in 100</source>
        <translation>na początku pożytków,
1 punkt = 2 na 100</translation>
    </message>
    <message>
        <source>adult bees</source>
        <translation>dorosłe pszczoły</translation>
    </message>
    <message>
        <source>warmth for brood</source>
        <translation>ciepło dla czerwiu</translation>
    </message>
    <message>
        <source>food for brood</source>
        <translation>pokarm dla czerwiu</translation>
    </message>
    <message>
        <source>air, mean of the day</source>
        <translation>powietrze, średnia dobowa</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>reserve
%1</source>
        <translation>żelazna rezerwa
%1</translation>
    </message>
</context>
<context>
    <name>RecordRows</name>
    <message>
        <source>bees on %1 %{combs}</source>
        <translation>obsiadane plastry: %1</translation>
    </message>
    <message>
        <source>%1 seams of bees</source>
        <translation>obsiadane uliczki: %1</translation>
    </message>
    <message>
        <source>%1 bees</source>
        <translation>%1 pszczół</translation>
    </message>
    <message>
        <source>one %{comb} looked at</source>
        <translation>obejrzana jedna ramka</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} looked at</source>
        <translation>
            <numerusform>obejrzana %n ramka</numerusform>
            <numerusform>obejrzane %n ramki</numerusform>
            <numerusform>obejrzanych %n ramek</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %{combs} full, %2 half full, by count</source>
        <translation>policzone ramki: pełne %1, w&#xa0;połowie pełne %2</translation>
    </message>
    <message>
        <source>queen seen</source>
        <translation>widziano matkę</translation>
    </message>
    <message>
        <source>queen not seen</source>
        <translation>nie widziano matki</translation>
    </message>
    <message>
        <source>eggs</source>
        <translation>jajeczka</translation>
    </message>
    <message>
        <source>no eggs</source>
        <translation>bez jajeczek</translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>czerw zasklepiony</translation>
    </message>
    <message>
        <source>no sealed brood</source>
        <translation>bez czerwiu zasklepionego</translation>
    </message>
    <message>
        <source>pollen coming in</source>
        <translation>pszczoły noszą pyłek</translation>
    </message>
    <message>
        <source>no pollen coming in</source>
        <translation>pszczoły nie noszą pyłku</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>objawy choroby</translation>
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
        <translation>na wadze: %1</translation>
    </message>
    <message>
        <source>hefted: %1</source>
        <translation>w&#xa0;ręku: %1</translation>
    </message>
    <message>
        <source>both sides lifted: %1 and %2</source>
        <translation>z&#xa0;obu stron: %1 i&#xa0;%2</translation>
    </message>
    <message>
        <source>one side lifted: %1</source>
        <translation>z&#xa0;jednej strony: %1</translation>
    </message>
    <message>
        <source>%1 of sugar</source>
        <translation>%1 cukru</translation>
    </message>
    <message>
        <source>%1, %2 by weight</source>
        <translation>%1, %2 wagowo</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 on one %{comb}</source>
        <translation>%1 w&#xa0;jednej ramce</translation>
    </message>
    <message numerus="yes">
        <source>%1 on %n %{combs}</source>
        <translation>
            <numerusform>%1 w&#xa0;%n ramce</numerusform>
            <numerusform>%1 w&#xa0;%n ramkach</numerusform>
            <numerusform>%1 w&#xa0;%n ramkach</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, do %2</translation>
    </message>
    <message>
        <source>%1, not ended yet</source>
        <translation>%1, jeszcze niezakończony</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>one box, %1</source>
        <translation>jeden korpus, %1</translation>
    </message>
    <message numerus="yes">
        <source>%n boxes, %1</source>
        <translation>
            <numerusform>%n korpus, %1</numerusform>
            <numerusform>%n korpusy, %1</numerusform>
            <numerusform>%n korpusów, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>to another yard</source>
        <translation>do innej pasieki</translation>
    </message>
    <message numerus="yes">
        <source>%1; from %n simulated winters</source>
        <translation>
            <numerusform>%1; z&#xa0;%n symulowanej zimy</numerusform>
            <numerusform>%1; z&#xa0;%n symulowanych zim</numerusform>
            <numerusform>%1; z&#xa0;%n symulowanych zim</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 dnia %2</translation>
    </message>
    <message>
        <source>alive</source>
        <translation>żyje</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>martwa</translation>
    </message>
    <message>
        <source>%1 of stores left</source>
        <translation>zostało %1 zapasów</translation>
    </message>
    <message>
        <source>food within reach</source>
        <translation>pokarm w&#xa0;zasięgu</translation>
    </message>
    <message>
        <source>no food within reach</source>
        <translation>brak pokarmu w&#xa0;zasięgu</translation>
    </message>
    <message>
        <source>heads in the cells</source>
        <translation>głowy w&#xa0;komórkach</translation>
    </message>
    <message>
        <source>no heads in the cells</source>
        <translation>bez głów w&#xa0;komórkach</translation>
    </message>
    <message>
        <source>many mites</source>
        <translation>dużo roztoczy</translation>
    </message>
    <message>
        <source>few mites</source>
        <translation>mało roztoczy</translation>
    </message>
    <message>
        <source>brood: %1</source>
        <translation>czerw: %1</translation>
    </message>
    <message>
        <source>queen found</source>
        <translation>znaleziono matkę</translation>
    </message>
    <message>
        <source>no queen found</source>
        <translation>nie znaleziono matki</translation>
    </message>
    <message>
        <source>stores in sight</source>
        <translation>widoczne zapasy</translation>
    </message>
    <message>
        <source>no stores in sight</source>
        <translation>nie widać zapasów</translation>
    </message>
    <message>
        <source>note</source>
        <translation>notatka</translation>
    </message>
</context>
<context>
    <name>Remark</name>
    <message>
        <source>Robbers and %{wasps}: work in the evening, feed inside the hive only, spill nothing, and narrow the entrance: %{=6 mm} high and about %{=7 cm} to %{=12 cm} wide, for a weak colony one bee&apos;s width.</source>
        <translation>Rabunek i&#xa0;osy: pracować wieczorem, karmić tylko wewnątrz ula, niczego nie rozlać i&#xa0;zwęzić wylotek: na wysokość %{=6 mm} i&#xa0;szerokość około %{=7 cm} do %{=12 cm}, w&#xa0;słabej rodzinie na jedną pszczołę.</translation>
    </message>
    <message>
        <source>Feed inside the hive only: feed in the open brings robbers and carries disease.</source>
        <translation>Karmić tylko wewnątrz ula: karmienie na otwartym powietrzu ściąga rabujące pszczoły i&#xa0;roznosi choroby.</translation>
    </message>
    <message>
        <source>Foulbrood has to be reported: close the hive, narrow the entrance, wash hands and tools, and open no other hive before.</source>
        <translation>Zgnilec podlega zgłoszeniu: ul zamknąć, wylotek zwęzić, umyć ręce i&#xa0;narzędzia, a&#xa0;wcześniej nie otwierać innego ula.</translation>
    </message>
    <message>
        <source>Fondant has to touch the bees, under a cover that keeps them warm; the lid is off for half a minute, no %{comb} is drawn.</source>
        <translation>Ciasto musi dotykać pszczół i&#xa0;być przykryte tak, by im było ciepło; daszek zdjąć na pół minuty, żadnej ramki nie wyciągać.</translation>
    </message>
    <message>
        <source>So near to spring forage what is fed may end up in honey: no super goes on before it is eaten.</source>
        <translation>Tak blisko pożytków wiosennych podany pokarm może trafić do miodu: nadstawki nie dostawiać, dopóki nie zostanie zjedzony.</translation>
    </message>
    <message>
        <source>The refractometer shows %{water:1} % water. Honey keeps with at most 18 %, measured on several %{combs}; food law allows 20 %, heather 23 %.</source>
        <translation>Refraktometr pokazuje %{water:1}% wody. Miód nie psuje się, gdy ma najwyżej 18% wody, zmierzonej w&#xa0;kilku ramkach; prawo żywnościowe dopuszcza 20%, w&#xa0;miodzie wrzosowym 23%.</translation>
    </message>
    <message>
        <source>Measure the water with a refractometer on several %{combs} before taking any: honey keeps with at most 18 %, food law allows 20 %, heather 23 %.</source>
        <translation>Przed odebraniem miodu zmierzyć w&#xa0;nim wodę refraktometrem w&#xa0;kilku ramkach: miód nie psuje się, gdy ma jej najwyżej 18%, prawo żywnościowe dopuszcza 20%, w&#xa0;miodzie wrzosowym 23%.</translation>
    </message>
    <message>
        <source>Before weighing again: is the empty weight that of this hive as it stands, are stones, feeder and wet snow off, is a super left out of the list?</source>
        <translation>Przed ponownym ważeniem: czy podana masa pustego ula dotyczy tego ula, tak jak stoi, czy zdjęto kamienie, podkarmiaczkę i&#xa0;mokry śnieg, czy na liście nie brakuje nadstawki?</translation>
    </message>
    <message>
        <source>Thick syrup is right now, but left standing in the cold to be expected before the last day it lets up to %{percent:0} % of its weight settle as sugar: give it lukewarm and in portions that are soon taken.</source>
        <translation>Gęsty syrop jest teraz dobry, ale gdy postoi na zimnie, jakiego trzeba się spodziewać do ostatniego dnia, nawet %{percent:0}% jego masy może się osadzić jako cukier: podawać letni, w&#xa0;dawkach, które pszczoły szybko pobiorą.</translation>
    </message>
    <message>
        <source>Unite healthy colonies only, by %{day}: in the evening, the %{combs} of the weak one hung beside those of the strong one behind a sheet of newspaper, the bees misted with water, the better queen kept. Later it is too cold for the bees to come together.</source>
        <translation>Łączyć tylko zdrowe rodziny, najpóźniej %{day}: wieczorem, ramki słabej wstawić obok ramek silnej za arkuszem gazety, pszczoły spryskać wodą, zostawić lepszą matkę. Później jest za zimno, by pszczoły się połączyły.</translation>
    </message>
    <message>
        <source>Unite healthy colonies only, by %{day}: in the evening, the weak one above the strong one with a sheet of newspaper between, the better queen kept. Later it is too cold for the bees to come together.</source>
        <translation>Łączyć tylko zdrowe rodziny, najpóźniej %{day}: wieczorem, przez gazetę, słabą postawić na silnej, zostawić lepszą matkę. Później jest za zimno, by pszczoły się połączyły.</translation>
    </message>
    <message>
        <source>A small colony, and too late to unite: narrow it into a nucleus box with full %{combs} on both sides, and insulate it.</source>
        <translation>Mała rodzina, a&#xa0;na łączenie za późno: ścieśnić ją w&#xa0;uliku odkładowym, z&#xa0;pełnymi ramkami po obu stronach, i&#xa0;ocieplić.</translation>
    </message>
    <message>
        <source>Mites first: good stores do not save a colony treated too late. Count them now and treat once the honey is off; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Najpierw warroza: dobre zapasy nie uratują rodziny leczonej za późno. Policzyć osyp roztoczy teraz i&#xa0;leczyć po odebraniu miodu; o&#xa0;środkach decydują etykieta, lekarz weterynarii i&#xa0;powiatowy lekarz weterynarii.</translation>
    </message>
    <message>
        <source>Mites first: good stores do not save a colony treated too late. Count them now, and treat without delay, for what is in the super stays with the bees; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Najpierw warroza: dobre zapasy nie uratują rodziny leczonej za późno. Policzyć osyp roztoczy teraz i&#xa0;leczyć bez zwłoki, bo miód z&#xa0;nadstawki zostaje u&#xa0;pszczół; o&#xa0;środkach decydują etykieta, lekarz weterynarii i&#xa0;powiatowy lekarz weterynarii.</translation>
    </message>
    <message>
        <source>You have treated against mites: count them again two to three weeks after it, for a treatment may fail and robbers bring mites home.</source>
        <translation>Zabieg przeciw warrozie wykonano: dwa do trzech tygodni po nim znów policzyć osyp roztoczy, bo zabieg może zawieść, a&#xa0;rabujące pszczoły przynoszą roztocza.</translation>
    </message>
    <message>
        <source>%{mites:0} mites on 100 bees are too many: stores do not save such a colony. Treat as soon as no honey for people is on, before anything else, and count again two to three weeks after it; the label, your vet and the bee inspector decide on the means.</source>
        <translation>%{mites:0} roztoczy na 100 pszczół to za dużo: zapasy nie uratują takiej rodziny. Leczyć przed wszystkim innym, gdy tylko na ulu nie ma miodu dla ludzi, i policzyć ponownie po dwóch–trzech tygodniach; o środku decydują etykieta, lekarz weterynarii i powiatowy lekarz weterynarii.</translation>
    </message>
    <message>
        <source>You have counted the mites: where the count calls for it treat as soon as no honey for people is on, and count again two to three weeks after it. Good stores do not save a colony treated too late; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Osyp roztoczy policzono: jeśli liczba tego wymaga, leczyć, gdy tylko w&#xa0;ulu nie ma miodu dla ludzi, i&#xa0;policzyć znów dwa do trzech tygodni po zabiegu. Dobre zapasy nie uratują rodziny leczonej za późno; o&#xa0;środkach decydują etykieta, lekarz weterynarii i&#xa0;powiatowy lekarz weterynarii.</translation>
    </message>
    <message>
        <source>Good stores do not save a colony treated too late: in a trial, colonies treated against varroa in July or August were lost a third less often. Count the mites; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Dobre zapasy nie uratują rodziny leczonej za późno: w&#xa0;doświadczeniu rodziny leczone z&#xa0;warrozy w&#xa0;lipcu lub sierpniu ginęły o&#xa0;jedną trzecią rzadziej. Policzyć osyp roztoczy; o&#xa0;środkach decydują etykieta, lekarz weterynarii i&#xa0;powiatowy lekarz weterynarii.</translation>
    </message>
    <message>
        <source>Good stores do not save a colony treated too late, that is after January or February. Count the mites where varroa is; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Dobre zapasy nie uratują rodziny leczonej za późno, czyli po styczniu lub lutym. Tam, gdzie jest warroza, policzyć osyp roztoczy; o&#xa0;środkach decydują etykieta, lekarz weterynarii i&#xa0;powiatowy lekarz weterynarii.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so when brood grows in March and April, not in midwinter: heft it again then.</source>
        <translation>Rodziny najczęściej giną z&#xa0;głodu, gdy przybywa czerwiu, w&#xa0;marcu i&#xa0;kwietniu, a&#xa0;nie w&#xa0;środku zimy: wtedy znów ocenić ciężar ula w&#xa0;ręku.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so when brood grows in August and September, not in midwinter: heft it again then.</source>
        <translation>Rodziny najczęściej giną z&#xa0;głodu, gdy przybywa czerwiu, w&#xa0;sierpniu i&#xa0;wrześniu, a&#xa0;nie w&#xa0;środku zimy: wtedy znów ocenić ciężar ula w&#xa0;ręku.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so while brood grows before spring forage starts, not in midwinter: heft it often then.</source>
        <translation>Rodziny najczęściej giną z&#xa0;głodu, gdy przed początkiem pożytków wiosennych przybywa czerwiu, a&#xa0;nie w&#xa0;środku zimy: wtedy często oceniać ciężar ula w&#xa0;ręku.</translation>
    </message>
    <message>
        <source>The nectar counted on here may fail. Weigh again when no more comes in.</source>
        <translation>Pożytek, na który się tu liczy, może zawieść. Zważyć ponownie, gdy nektaru już nie przybywa.</translation>
    </message>
    <message>
        <source>Where a super stays on as winter food take the queen excluder out before laying stops, or the queen is left below in the cold.</source>
        <translation>Jeśli nadstawka zostaje jako pokarm zimowy, przed końcem czerwienia wyjąć kratę odgrodową, inaczej matka zostanie na dole na zimnie.</translation>
    </message>
    <message>
        <source>Neither queen nor eggs were seen: make sure of a laying queen before anything else.</source>
        <translation>Nie widziano ani matki, ani jajeczek: przede wszystkim upewnić się, że jest czerwiąca matka.</translation>
    </message>
    <message>
        <source>Hardly any brood was seen, though laying usually stops around %{day} only. The amounts here are those of a queen that lays: if she has stopped, %{need:amount} are enough. Look for eggs in a week.</source>
        <translation>Czerwiu prawie nie widziano, choć matka przestaje tu czerwić zwykle dopiero około %{day}. Podane ilości są dla matki, która czerwi: jeśli przestała, wystarczy %{need:amount}. Za tydzień poszukać jajeczek.</translation>
    </message>
    <message>
        <source>Hardly any brood was seen, though the queen should still have been laying. The amounts here are those of a queen that lays: if she has stopped, %{need:amount} are enough. Look for eggs in a week.</source>
        <translation>Czerwiu prawie nie widziano, choć matka powinna jeszcze czerwić. Podane ilości są dla matki, która czerwi: jeśli przestała, wystarczy %{need:amount}. Za tydzień poszukać jajeczek.</translation>
    </message>
    <message>
        <source>This is an early look, and rougher for it. Weigh again when no more nectar comes in.</source>
        <translation>To wczesna ocena i&#xa0;przez to mniej dokładna. Zważyć ponownie, gdy nektar już nie przybywa.</translation>
    </message>
    <message>
        <source>Next: weigh it on %{day}, both sides, without opening.</source>
        <translation>Następnie: %{day} zważyć z&#xa0;obu stron, bez otwierania.</translation>
    </message>
    <message>
        <source>Next: on %{day} look at the stores, and count the mites.</source>
        <translation>Następnie: %{day} obejrzeć zapasy i&#xa0;policzyć osyp roztoczy.</translation>
    </message>
    <message>
        <source>Next: on %{day} look for queen cells on the %{comb} with eggs.</source>
        <translation>Następnie: %{day} poszukać mateczników na ramce z&#xa0;jajeczkami.</translation>
    </message>
    <message>
        <source>Next: on %{day} see whether the feed is taken and being capped.</source>
        <translation>Następnie: %{day} sprawdzić, czy pokarm jest pobierany i&#xa0;zasklepiany.</translation>
    </message>
    <message>
        <source>Take supers whose honey is meant for people off before any syrup goes on, or syrup ends up in it.</source>
        <translation>Nadstawki z&#xa0;miodem dla ludzi zdjąć przed podaniem syropu, inaczej syrop do nich trafi.</translation>
    </message>
    <message>
        <source>Honey stored while a colony was fed or treated is for the bees, not for people. After medicines the label, the vet and the law decide.</source>
        <translation>Miód złożony w&#xa0;czasie karmienia lub leczenia jest dla pszczół, nie dla ludzi. Po lekach decydują etykieta, lekarz weterynarii i&#xa0;prawo.</translation>
    </message>
    <message>
        <source>Take a %{comb} only if at least two thirds of its stores are capped; under four fifths the honey may be too wet to keep.</source>
        <translation>Ramkę odbierać tylko wtedy, gdy zasklepione są co najmniej dwie trzecie jej zapasów; poniżej czterech piątych miód może mieć za dużo wody, by się przechował.</translation>
    </message>
    <message>
        <source>No honey for children under twelve months.</source>
        <translation>Dzieciom poniżej dwunastu miesięcy nie podaje się miodu.</translation>
    </message>
    <message>
        <source>Never feed honey whose origin you do not know: it can carry foulbrood.</source>
        <translation>Nigdy nie karmić miodem niewiadomego pochodzenia: może przenosić zgnilec.</translation>
    </message>
    <message>
        <source>Use white granulated sugar only. Brown, raw and icing sugar and molasses hold what bees cannot digest.</source>
        <translation>Używać tylko białego cukru kryształu. Cukier brązowy, surowy i&#xa0;puder oraz melasa zawierają to, czego pszczoły nie trawią.</translation>
    </message>
    <message>
        <source>Do not boil syrup, and add no acid or vinegar: both make HMF, which poisons bees.</source>
        <translation>Syropu nie gotować i&#xa0;nie dodawać kwasu ani octu: z&#xa0;obu powstaje HMF, który truje pszczoły.</translation>
    </message>
    <message>
        <source>Lay floats or straw on the syrup of an open feeder, so that bees do not drown.</source>
        <translation>Na syrop w&#xa0;otwartej podkarmiaczce położyć pływaki lub słomę, żeby pszczoły się nie topiły.</translation>
    </message>
    <message>
        <source>Stores from ivy or rape set hard; heather honey and honeydew can scour bees that cannot fly. Where such stores come in, give some syrup on top; where the cold is long, replace those %{combs}.</source>
        <translation>Zapasy z&#xa0;bluszczu lub rzepaku twardnieją; miód wrzosowy i&#xa0;spadź mogą wywołać biegunkę u&#xa0;pszczół, które nie mogą wylecieć. Gdzie trafiają się takie zapasy, dać do tego trochę syropu; gdzie zimno trwa długo, wymienić te ramki.</translation>
    </message>
    <message>
        <source>It may be too cool to open: a full look from %{=15 °C}, half a minute from %{=10 °C}, in winter the lid alone from %{=7 °C}.</source>
        <translation>Na otwieranie może być za chłodno: pełny przegląd od %{=15 °C}, pół minuty od %{=10 °C}, zimą tylko daszek od %{=7 °C}.</translation>
    </message>
    <message>
        <source>About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. Hang full %{combs} beside the bees and above them, without an empty %{comb} between.</source>
        <translation>W&#xa0;zasięgu kłębu leży około %{within:amount}, a&#xa0;długi mróz może zabrać %{needed:amount}. Pełne ramki wstawić obok pszczół i&#xa0;nad nimi, bez pustej ramki pomiędzy.</translation>
    </message>
    <message>
        <source>In this long hive stores lie on both sides of the bees, or beyond an empty %{comb}: bees that have eaten to one end do not come back in the cold. Put the bees at one end and all the stores on one side of them.</source>
        <translation>W&#xa0;tym leżaku zapasy leżą po obu stronach pszczół albo za pustą ramką: pszczoły, które dojadły do jednego końca, na zimnie już nie wrócą. Zebrać pszczoły na jednym końcu, a&#xa0;wszystkie zapasy po jednej ich stronie.</translation>
    </message>
    <message>
        <source>About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. On a day of %{=10 °C} hang a full %{comb} against the bees; should they run short before, lay fondant on them.</source>
        <translation>W&#xa0;zasięgu kłębu leży około %{within:amount}, a&#xa0;długi mróz może zabrać %{needed:amount}. W&#xa0;dzień, gdy jest %{=10 °C}, wstawić pełną ramkę tuż przy pszczołach; gdyby wcześniej miało zabraknąć, położyć na nich ciasto.</translation>
    </message>
    <message>
        <source>Where the cold is long, insulation above the %{combs} saves food.</source>
        <translation>Gdzie zimno trwa długo, ocieplenie nad ramkami oszczędza pokarm.</translation>
    </message>
    <message>
        <source>Let moisture leave: entrance clear, hive tilted slightly forward, nothing cold and wet above the bees.</source>
        <translation>Wilgoć musi mieć ujście: wylotek drożny, ul lekko pochylony do przodu, nad pszczołami nic zimnego i&#xa0;mokrego.</translation>
    </message>
    <message>
        <source>Fit a mouse guard with openings of %{=6 mm} to %{=8 mm} before days stay below %{=5 °C}.</source>
        <translation>Zanim dni będą stale poniżej %{=5 °C}, zabezpieczyć wylotek przed myszami, otwory %{=6 mm} do %{=8 mm}.</translation>
    </message>
    <message>
        <source>Heft every two weeks; once brood has started, weigh every two to three weeks.</source>
        <translation>Co dwa tygodnie oceniać ciężar ula w&#xa0;ręku; gdy pojawi się czerw, ważyć co dwa do trzech tygodni.</translation>
    </message>
    <message>
        <source>Close a dead hive the same day. Nothing of it goes to another colony until disease is ruled out; a notifiable disease has to be reported.</source>
        <translation>Martwy ul zamknąć tego samego dnia. Dopóki choroba nie jest wykluczona, nic z&#xa0;niego nie trafia do innej rodziny; chorobę zwalczaną z&#xa0;urzędu trzeba zgłosić.</translation>
    </message>
    <message>
        <source>A full deep box weighs up to %{=40 kg}: lift %{combs} rather than boxes.</source>
        <translation>Pełny wysoki korpus waży do %{=40 kg}: lepiej podnosić ramki niż korpusy.</translation>
    </message>
    <message>
        <source>Stings can be dangerous: with an allergy never work alone, and keep the emergency number at hand.</source>
        <translation>Użądlenia mogą być groźne: przy uczuleniu nigdy nie pracować w&#xa0;pojedynkę i&#xa0;mieć pod ręką numer alarmowy.</translation>
    </message>
    <message>
        <source>Water of %{=50 °C} to %{=60 °C} dissolves sugar well enough; hotter syrup scalds, and spoils.</source>
        <translation>Woda o&#xa0;temperaturze %{=50 °C} do %{=60 °C} rozpuszcza cukier dość dobrze; gorętszy syrop parzy i&#xa0;się psuje.</translation>
    </message>
    <message>
        <source>Comb without a frame breaks easily: free its sides first, keep it vertical, begin at the empty end, and leave it alone in heat.</source>
        <translation>Plaster bez ramki łatwo się łamie: najpierw odciąć boki, trzymać pionowo, zaczynać od pustego końca, w&#xa0;upał nie ruszać.</translation>
    </message>
    <message>
        <source>In a long hive the feeder goes behind the follower, and fondant stands as a slab beside the cluster, not over the bars.</source>
        <translation>W&#xa0;leżaku podkarmiaczka stoi za zatworem, a&#xa0;ciasto jako płyta obok kłębu, nie na beleczkach.</translation>
    </message>
    <message>
        <source>Only about %{pollen} of bee bread was seen. With under half a kilogram when laying stops, brood has little to start on: keep %{combs} with pollen beside the nest.</source>
        <translation>Pierzgi widziano tylko około %{pollen}. Gdy na koniec czerwienia jest jej mniej niż pół kilograma, czerw nie ma na czym zacząć: ramki z&#xa0;pierzgą trzymać przy gnieździe.</translation>
    </message>
    <message>
        <source>Laying has begun again by now, and nothing was said of brood: how much of it there is would tell more than anything else.</source>
        <translation>Matka zaczęła już znów czerwić, a&#xa0;o&#xa0;czerwiu nic nie podano: jego ilość powiedziałaby więcej niż wszystko inne.</translation>
    </message>
    <message>
        <source>%{Combs} move between healthy colonies only, in a yard without foulbrood: brush the bees off, work at dusk, and leave the giver its own need.</source>
        <translation>Ramki przestawia się tylko między zdrowymi rodzinami, w&#xa0;pasiece bez zgnilca: pszczoły strząsnąć, pracować o&#xa0;zmierzchu, a&#xa0;oddającej zostawić tyle, ile sama potrzebuje.</translation>
    </message>
    <message>
        <source>More is left than spring needs: make room for the queen in time. Old winter feed never goes up into supers.</source>
        <translation>Zostało więcej, niż potrzeba na wiosnę: w&#xa0;porę zrobić miejsce dla matki. Stary pokarm zimowy nigdy nie idzie w&#xa0;górę do nadstawek.</translation>
    </message>
    <message>
        <source>Whether a %{comb} named here holds brood was not said: look before taking it, and leave it if it does.</source>
        <translation>Nie podano, czy w&#xa0;wymienionej tu ramce jest czerw: przed odebraniem sprawdzić i&#xa0;zostawić ją, jeśli jest.</translation>
    </message>
    <message>
        <source>Where disease, medicines or local law are concerned, the bee inspector, the vet and the law come first.</source>
        <translation>W&#xa0;sprawach chorób, leków i&#xa0;miejscowego prawa najpierw powiatowy lekarz weterynarii, lekarz weterynarii i&#xa0;przepisy.</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>
            <numerusform>%{weight} to raczej niemożliwe: %n korpus tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy to %{number:1} lb, czyli %{meant}?</numerusform>
            <numerusform>%{weight} to raczej niemożliwe: %n korpusy tej wielkości ważą %{most}, gdy każda ramka jest pełna miodu. Czy to %{number:1} lb, czyli %{meant}?</numerusform>
            <numerusform>%{weight} to raczej niemożliwe: %n korpusów tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy to %{number:1} lb, czyli %{meant}?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>%{weight} to raczej niemożliwe: jeden korpus tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy to %{number:1} lb, czyli %{meant}?</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>
            <numerusform>%{weight} to raczej niemożliwe: %n korpus tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy to %{meant}?</numerusform>
            <numerusform>%{weight} to raczej niemożliwe: %n korpusy tej wielkości ważą %{most}, gdy każda ramka jest pełna miodu. Czy to %{meant}?</numerusform>
            <numerusform>%{weight} to raczej niemożliwe: %n korpusów tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy to %{meant}?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>%{weight} to raczej niemożliwe: jeden korpus tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy to %{meant}?</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>
            <numerusform>%{weight} to raczej niemożliwe: %n korpus tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy jakiś korpus nie jest zapisany?</numerusform>
            <numerusform>%{weight} to raczej niemożliwe: %n korpusy tej wielkości ważą %{most}, gdy każda ramka jest pełna miodu. Czy jakiś korpus nie jest zapisany?</numerusform>
            <numerusform>%{weight} to raczej niemożliwe: %n korpusów tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy jakiś korpus nie jest zapisany?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>%{weight} to raczej niemożliwe: jeden korpus tej wielkości waży %{most}, gdy każda ramka jest pełna miodu. Czy jakiś korpus nie jest zapisany?</translation>
    </message>
    <message>
        <source>%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Is it %{meant}?</source>
        <translation>%{weight} to raczej niemożliwe: ten ul waży co najmniej %{least}, gdy jest pusty. Czy to %{meant}?</translation>
    </message>
    <message>
        <source>%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Was all of it on the scale?</source>
        <translation>%{weight} to raczej niemożliwe: ten ul waży co najmniej %{least}, gdy jest pusty. Czy cały stał na wadze?</translation>
    </message>
    <message>
        <source>%{side} on one side cannot well be: one side of this hive weighs %{least} or more when it is empty. Was it lifted clear, and is it in the right unit?</source>
        <translation>%{side} po jednej stronie raczej nie może się zgadzać: jedna strona tego ula waży pusta %{least} lub więcej. Czy była całkiem uniesiona i czy jednostka jest właściwa?</translation>
    </message>
    <message>
        <source>%{weight} does not go with the %{other} of %{day}: ten times as much. Has a decimal point slipped?</source>
        <translation>%{weight} nie zgadza się z&#xa0;%{other} z&#xa0;dnia %{day}: dziesięć razy tyle. Czy nie przesunął się przecinek?</translation>
    </message>
    <message>
        <source>%{weight} does not go with the %{other} of %{day}: as much as pounds differ from kilograms. Which is it?</source>
        <translation>%{weight} nie zgadza się z&#xa0;%{other} z&#xa0;dnia %{day}: różnica taka, jak między funtami a&#xa0;kilogramami. Która jednostka jest właściwa?</translation>
    </message>
    <message numerus="yes">
        <source>%{taken} of honey cannot well come out of %n boxes of this size, which hold %{most} at the most. Is a box not written down?</source>
        <translation>
            <numerusform>%{taken} miodu to raczej niemożliwe: %n korpus tej wielkości mieści najwyżej %{most}. Czy jakiś korpus nie jest zapisany?</numerusform>
            <numerusform>%{taken} miodu to raczej niemożliwe: %n korpusy tej wielkości mieszczą najwyżej %{most}. Czy jakiś korpus nie jest zapisany?</numerusform>
            <numerusform>%{taken} miodu to raczej niemożliwe: %n korpusów tej wielkości mieści najwyżej %{most}. Czy jakiś korpus nie jest zapisany?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{taken} of honey cannot well come out of one box of this size, which holds %{most} at the most. Is a box not written down?</source>
        <translation>%{taken} miodu to raczej niemożliwe: jeden korpus tej wielkości mieści najwyżej %{most}. Czy jakiś korpus nie jest zapisany?</translation>
    </message>
    <message>
        <source>%{taken} of honey is more than can have been there: at most %{most}, going by the weight of %{day}. Is it right?</source>
        <translation>%{taken} miodu to więcej, niż mogło tam być: najwyżej %{most}, sądząc po masie z&#xa0;dnia %{day}. Czy to się zgadza?</translation>
    </message>
    <message>
        <source>%{taken} of honey is more than can have been there: at most %{most}, going by the %{combs} of %{day}. Is it right?</source>
        <translation>%{taken} miodu to więcej, niż mogło tam być: najwyżej %{most}, sądząc po ramkach z&#xa0;dnia %{day}. Czy to się zgadza?</translation>
    </message>
    <message numerus="yes">
        <source>A feed that makes %{stores} of stores cannot be: %n boxes of this size hold %{most}. How much was it?</source>
        <translation>
            <numerusform>Karmienie, które daje %{stores} zapasów, jest niemożliwe: %n korpus tej wielkości mieści %{most}. Ile tego było?</numerusform>
            <numerusform>Karmienie, które daje %{stores} zapasów, jest niemożliwe: %n korpusy tej wielkości mieszczą %{most}. Ile tego było?</numerusform>
            <numerusform>Karmienie, które daje %{stores} zapasów, jest niemożliwe: %n korpusów tej wielkości mieści %{most}. Ile tego było?</numerusform>
        </translation>
    </message>
    <message>
        <source>A feed that makes %{stores} of stores cannot be: one box of this size holds %{most}. How much was it?</source>
        <translation>Karmienie, które daje %{stores} zapasów, jest niemożliwe: jeden korpus tej wielkości mieści %{most}. Ile tego było?</translation>
    </message>
    <message>
        <source>%{given} in one day is much: few feeders let bees take more than %{most}. Is it right?</source>
        <translation>%{given} jednego dnia to dużo: mało która podkarmiaczka pozwala pobrać więcej niż %{most}. Czy to się zgadza?</translation>
    </message>
    <message numerus="yes">
        <source>The feeds of %n days make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>
            <numerusform>Karmienia z&#xa0;%n dnia dają %{stores} zapasów, a&#xa0;ten ul mieści %{most}. Czy to się zgadza?</numerusform>
            <numerusform>Karmienia z&#xa0;%n dni dają %{stores} zapasów, a&#xa0;ten ul mieści %{most}. Czy to się zgadza?</numerusform>
            <numerusform>Karmienia z&#xa0;%n dni dają %{stores} zapasów, a&#xa0;ten ul mieści %{most}. Czy to się zgadza?</numerusform>
        </translation>
    </message>
    <message>
        <source>The feeds of a day make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>Karmienia z&#xa0;jednego dnia dają %{stores} zapasów, a&#xa0;ten ul mieści %{most}. Czy to się zgadza?</translation>
    </message>
    <message>
        <source>%{covered:1} covered %{combs} are more than the %{most:0} places of this hive. How many were covered on both sides?</source>
        <translation>Obsiadanych plastrów podano %{covered:1}, a&#xa0;ten ul ma miejsc: %{most:0}. Ile było obsiadanych z&#xa0;obu stron?</translation>
    </message>
    <message>
        <source>%{seams:1} seams are more than the %{most:0} this hive has. How many were filled with bees?</source>
        <translation>Uliczek podano %{seams:1}, a&#xa0;ten ul ma ich %{most:0}. Ile było pełnych pszczół?</translation>
    </message>
    <message>
        <source>%{bees:hundreds} bees are more than this hive houses, %{most:hundreds} at the very most. Is it right?</source>
        <translation>%{bees:hundreds} pszczół to więcej, niż ten ul pomieści, najwyżej %{most:hundreds}. Czy to się zgadza?</translation>
    </message>
    <message>
        <source>%{cells:hundreds} cells of brood leave no room for food: all %{combs} of this hive have %{most:hundreds} cells. Is it right?</source>
        <translation>%{cells:hundreds} komórek czerwiu nie zostawia miejsca na pokarm: wszystkie plastry tego ula mają %{most:hundreds} komórek. Czy to się zgadza?</translation>
    </message>
    <message>
        <source>%{combs:1} %{combs} with stores are more than the %{most:0} places of this hive. How many were there?</source>
        <translation>Ramek z&#xa0;zapasami podano %{combs:1}, a&#xa0;ten ul ma miejsc: %{most:0}. Ile ich było?</translation>
    </message>
    <message numerus="yes">
        <source>%{stores} of stores cannot well be left in %n boxes of this size, which hold %{most} at the most. Is it right?</source>
        <translation>
            <numerusform>%{stores} zapasów to raczej niemożliwe: %n korpus tej wielkości mieści najwyżej %{most}. Czy to się zgadza?</numerusform>
            <numerusform>%{stores} zapasów to raczej niemożliwe: %n korpusy tej wielkości mieszczą najwyżej %{most}. Czy to się zgadza?</numerusform>
            <numerusform>%{stores} zapasów to raczej niemożliwe: %n korpusów tej wielkości mieści najwyżej %{most}. Czy to się zgadza?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{stores} of stores cannot well be left in one box of this size, which holds %{most} at the most. Is it right?</source>
        <translation>%{stores} zapasów to raczej niemożliwe: jeden korpus tej wielkości mieści najwyżej %{most}. Czy to się zgadza?</translation>
    </message>
    <message>
        <source>%{water:1} % of water is out of the usual: honey in combs has %{low:0} to %{high:0} %. Is it right?</source>
        <translation>%{water:1}% wody to niezwykłe: miód w&#xa0;plastrach ma od %{low:0} do %{high:0}%. Czy to się zgadza?</translation>
    </message>
    <message>
        <source>%{day} is still to come: today is %{today}. Is the day right?</source>
        <translation>%{day} to data przyszła: dziś jest %{today}. Czy dzień się zgadza?</translation>
    </message>
    <message>
        <source>It had other boxes then than when it was looked at, so its weight does not tell its stores. What is in it now?</source>
        <translation>Ul miał wtedy inne korpusy niż w&#xa0;dniu przeglądu, więc jego masa nie mówi, ile ma zapasów. Co jest w&#xa0;nim teraz?</translation>
    </message>
    <message numerus="yes">
        <source>An empty weight of %{weight} is much: %n boxes of this size weigh up to %{most} with all %{combs} drawn and no honey in them. Is it right?</source>
        <translation>
            <numerusform>Masa pustego ula %{weight} to dużo: %n korpus tej wielkości waży do %{most}, z&#xa0;suszem w&#xa0;każdej ramce i&#xa0;bez miodu. Czy to się zgadza?</numerusform>
            <numerusform>Masa pustego ula %{weight} to dużo: %n korpusy tej wielkości ważą do %{most}, z&#xa0;suszem w&#xa0;każdej ramce i&#xa0;bez miodu. Czy to się zgadza?</numerusform>
            <numerusform>Masa pustego ula %{weight} to dużo: %n korpusów tej wielkości waży do %{most}, z&#xa0;suszem w&#xa0;każdej ramce i&#xa0;bez miodu. Czy to się zgadza?</numerusform>
        </translation>
    </message>
    <message>
        <source>An empty weight of %{weight} is much: one box of this size weighs up to %{most} with all %{combs} drawn and no honey in it. Is it right?</source>
        <translation>Masa pustego ula %{weight} to dużo: jeden korpus tej wielkości waży do %{most}, z&#xa0;suszem w&#xa0;każdej ramce i&#xa0;bez miodu. Czy to się zgadza?</translation>
    </message>
    <message>
        <source>An empty weight of %{weight} is little: this hive weighs %{least} or more without a single %{comb}. Was all of it on the scale?</source>
        <translation>Masa pustego ula %{weight} to mało: ten ul waży co najmniej %{least} bez ani jednej ramki. Czy cały stał na wadze?</translation>
    </message>
    <message>
        <source>%{day} is before the colony was there, from %{since} on. Is the day right?</source>
        <translation>%{day} rodziny jeszcze nie było, jest od %{since}. Czy dzień się zgadza?</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside and do not open: a dry, still day, no knocking, the hive set down gently.</source>
        <translation>Przy najwyższej temperaturze dnia około %{temperature} ważyć lub unosić ul z&#xa0;zewnątrz i&#xa0;nie otwierać: dzień suchy i&#xa0;bezwietrzny, bez stukania, ul stawiać delikatnie.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside; the lid alone may be lifted, no %{comb} is drawn: a dry, still day, no knocking.</source>
        <translation>Przy najwyższej temperaturze dnia około %{temperature} ważyć lub unosić ul z&#xa0;zewnątrz; można zdjąć sam daszek, żadnej ramki nie wyciągać: dzień suchy i&#xa0;bezwietrzny, bez stukania.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside; the hive may be open for half a minute in the mildest hour, with the cluster left as it is. A full look waits for %{=15 °C}.</source>
        <translation>Przy najwyższej temperaturze dnia około %{temperature} ważyć lub unosić ul z&#xa0;zewnątrz; o&#xa0;najcieplejszej godzinie ul może być otwarty pół minuty, kłębu nie ruszać. Pełny przegląd dopiero od %{=15 °C}.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} the food goes on in the mildest hour, dry and still: the lid is off for half a minute only, no %{comb} is lifted, no knocking. All other looks and weighings are from outside.</source>
        <translation>Przy najwyższej temperaturze dnia około %{temperature} pokarm podać o&#xa0;najcieplejszej godzinie, gdy jest sucho i&#xa0;bez wiatru: daszek zdjąć tylko na pół minuty, żadnej ramki nie unosić, bez stukania. Wszystkie inne kontrole i&#xa0;ważenia z&#xa0;zewnątrz.</translation>
    </message>
    <message>
        <source>Lay the fondant flat on the top bars right over the cluster, touching it: cut a window into its wrapping, lay that downwards, and cover it warmly. A block a hand&apos;s breadth away is not found in the cold.</source>
        <translation>Ciasto położyć płasko na beleczkach dokładnie nad kłębem, tak by go dotykało: w&#xa0;opakowaniu wyciąć okienko, położyć nim w&#xa0;dół i&#xa0;ciepło przykryć. Ciasta o&#xa0;szerokość dłoni dalej pszczoły na mrozie nie znajdą.</translation>
    </message>
    <message>
        <source>In a long hive stand the fondant as a slab beside the cluster, on the side where its stores are, touching the outermost %{comb} with bees, with no empty %{comb} between.</source>
        <translation>W&#xa0;leżaku ciasto postawić jako płytę obok kłębu, po tej stronie, gdzie są zapasy, tak by dotykało skrajnego plastra z&#xa0;pszczołami, bez pustej ramki pomiędzy.</translation>
    </message>
    <message>
        <source>If there is no fondant, %{sugar:amount} of dry white sugar in all will do in need: on paper on the top bars over the cluster, misted with water, or the bees carry it out.</source>
        <translation>Jeśli nie ma ciasta, w&#xa0;potrzebie wystarczy razem %{sugar:amount} suchego białego cukru: na papierze na beleczkach nad kłębem, spryskany wodą, inaczej pszczoły go wyniosą.</translation>
    </message>
    <message>
        <source>Bees that fly from a dead colony are robbers. Look for pollen coming in or cleansing flights, or listen at the hive, before you call it alive.</source>
        <translation>Pszczoły wylatujące z&#xa0;martwego ula to obce pszczoły, które rabują. Zanim uzna się rodzinę za żywą, sprawdzić, czy pszczoły noszą pyłek lub robią oblot, albo posłuchać przy ulu.</translation>
    </message>
    <message>
        <source>Take only %{combs} that never took syrup and were not in the hive while it was treated; everything else is for the bees.</source>
        <translation>Odbierać tylko ramki, które nigdy nie dostały syropu i&#xa0;nie były w&#xa0;ulu w&#xa0;czasie leczenia; wszystko inne jest dla pszczół.</translation>
    </message>
    <message>
        <source>Old winter feed never goes up into a super: what is in the way is taken out, kept for light colonies, or left below.</source>
        <translation>Stary pokarm zimowy nigdy nie idzie w&#xa0;górę do nadstawki: to, co przeszkadza, wyjąć i&#xa0;zachować dla lekkich rodzin albo zostawić na dole.</translation>
    </message>
    <message>
        <source>Most colonies starve in spring, not in midwinter. With brood in every %{comb} a week of cold rain can empty a hive: leave %{leave:amount} until forage is steady.</source>
        <translation>Rodziny giną z&#xa0;głodu najczęściej wiosną, a&#xa0;nie w&#xa0;środku zimy. Gdy w&#xa0;każdym plastrze jest czerw, tydzień zimnego deszczu może opróżnić ul: zostawić %{leave:amount}, dopóki pożytek nie będzie stały.</translation>
    </message>
    <message>
        <source>It was eaten as expected: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.</source>
        <translation>Zużycie było takie, jak oczekiwano: zostało około %{stores:amount}; jesienią oczekiwano na dziś %{planned:amount}.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are left, less than the %{planned:amount} the autumn expected for today.</source>
        <translation>Zostało około %{stores:amount}, mniej niż %{planned:amount}, których jesienią oczekiwano na dziś.</translation>
    </message>
    <message>
        <source>On course: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.</source>
        <translation>Zgodnie z&#xa0;prognozą: zostało około %{stores:amount}; jesienią oczekiwano na dziś %{planned:amount}.</translation>
    </message>
    <message>
        <source>No advice was acted on: it is followed as it was found on %{day}, with nothing but what is written down as fed and taken since.</source>
        <translation>Żadnego zalecenia nie przyjęto jako planu: śledzona jest tak, jak ją zastano %{day}, tylko z&#xa0;tym, co odtąd zapisano jako podane i&#xa0;odebrane.</translation>
    </message>
    <message>
        <source>Until its winter is followed, from %{day} on, what is to be done is what the answer of the day says, in the plan of its yard.</source>
        <translation>Dopóki jej zimowla nie jest śledzona, od %{day}, obowiązuje to, co mówi odpowiedź dnia, w planie jej pasieki.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are left: less than these bees may eat in %{days:0} days. That cannot wait for better weather.</source>
        <translation>Zostało około %{stores:amount}: mniej, niż te pszczoły mogą zjeść w&#xa0;%{days:0} dni. To nie może czekać na lepszą pogodę.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}, and no weighing of the fortnight before says otherwise: one portion does no harm, and a weighing tells what more it needs.</source>
        <translation>Przy unoszeniu %{day} ul był lekki i&#xa0;żadne ważenie z&#xa0;poprzednich dwóch tygodni temu nie przeczy: jedna dawka nie zaszkodzi, a&#xa0;ważenie powie, ile jeszcze trzeba.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}, though the weighing of %{weighed} does not say so: weigh it again before anything is fed.</source>
        <translation>Przy unoszeniu %{day} ul był lekki, choć ważenie z&#xa0;%{weighed} tego nie potwierdza: zważyć ponownie, zanim cokolwiek się poda.</translation>
    </message>
    <message>
        <source>On %{day} it weighed %{seen}, where %{low} to %{high} were expected: more than any winter explains. Was a feed, a box, a stone or another colony added that is not written down? Else check the scale and the empty weight.</source>
        <translation>%{day} ul ważył %{seen}, a&#xa0;oczekiwano od %{low} do %{high}: więcej, niż wyjaśnia jakakolwiek zima. Czy przybyło pokarmu, korpusu, kamienia albo innej rodziny, czego nie zapisano? Jeśli nie, sprawdzić wagę i&#xa0;masę pustego ula.</translation>
    </message>
    <message>
        <source>On %{day} no stores were in sight beside the cluster. However heavy the hive is, food the cluster does not touch is not found in the cold: it starves beside full %{combs}.</source>
        <translation>%{day} obok kłębu nie było widać zapasów. Choćby ul był bardzo ciężki, pokarmu, którego kłąb nie dotyka, pszczoły na mrozie nie znajdą: giną z&#xa0;głodu obok pełnych ramek.</translation>
    </message>
    <message>
        <source>Where the cluster sat on %{day} empty %{combs} lie between it and the stores. In the cold it does not cross them.</source>
        <translation>Tam, gdzie kłąb siedział %{day}, między nim a&#xa0;zapasami są puste plastry. Na mrozie przez nie nie przejdzie.</translation>
    </message>
    <message>
        <source>About %{seen:0} bees were seen on %{day}, where even a poor winter leaves %{least:0}: the colony dwindles.</source>
        <translation>%{day} widziano około %{seen:0} pszczół, a&#xa0;nawet po złej zimie zostaje ich %{least:0}: rodzina słabnie.</translation>
    </message>
    <message>
        <source>Less was in the hive than was thought: on %{day} more likely about %{now:amount} than %{thought:amount}. The bees do not eat faster for it.</source>
        <translation>W&#xa0;ulu było mniej zapasów, niż sądzono: %{day} raczej około %{now:amount} niż %{thought:amount}. Pszczoły nie jedzą przez to więcej.</translation>
    </message>
    <message>
        <source>Feed for about %{stores:amount} of stores was planned from %{day} on, and it is not written down that it was given. Was it? Until you say so it is not counted.</source>
        <translation>Od %{day} planowano pokarm na około %{stores:amount} zapasów, a&#xa0;nie zapisano, że go podano. Czy podano? Dopóki nie jest to zapisane, nie liczy się.</translation>
    </message>
    <message>
        <source>Between %{from} and %{until} the hive lost %{lost}, where about %{expected} was expected: these bees eat faster than forecast.</source>
        <translation>Między %{from} a&#xa0;%{until} ubyło w&#xa0;ulu %{lost}, a&#xa0;oczekiwano około %{expected}: te pszczoły jedzą więcej niż przewidziano.</translation>
    </message>
    <message>
        <source>So much is hardly eaten: check the scale, and whether a lid, a box or a stone was on or off on %{day}, and look for robbers.</source>
        <translation>Tyle raczej nie zostało zjedzone: sprawdzić wagę i&#xa0;to, czy %{day} nie dołożono lub nie zdjęto daszka, korpusu albo kamienia, i&#xa0;czy nie ma rabunku.</translation>
    </message>
    <message>
        <source>More is there than the colony needs: in 9 winters of 10 %{stores:amount} or more will be left when spring forage starts.</source>
        <translation>Jest więcej, niż rodzina potrzebuje: w&#xa0;9 na 10 zim na początku pożytków wiosennych zostanie %{stores:amount} lub więcej.</translation>
    </message>
    <message>
        <source>On a day of %{=10 °C} or more hang a full %{comb} right against the cluster, no empty one between, and weigh the hive.</source>
        <translation>W&#xa0;dzień, gdy jest %{=10 °C} lub więcej, wstawić pełną ramkę tuż przy kłębie, bez pustej pomiędzy, i&#xa0;zważyć ul.</translation>
    </message>
    <message>
        <source>Narrow the entrance and keep it warm from above. On a day of %{=10 °C} or more put the bees together in a small space, a full %{comb} on either side, and see whether there is a queen. Unite it with no other while there may be disease.</source>
        <translation>Zwęzić wylotek i&#xa0;ocieplić od góry. W&#xa0;dzień, gdy jest %{=10 °C} lub więcej, skupić pszczoły ciasno, z&#xa0;pełną ramką po obu stronach, i&#xa0;sprawdzić, czy jest matka. Nie łączyć z&#xa0;inną rodziną, dopóki może to być choroba.</translation>
    </message>
    <message>
        <source>No food within reach: it starved, or could not get at what was left elsewhere.</source>
        <translation>Brak pokarmu w&#xa0;zasięgu: rodzina zginęła z&#xa0;głodu albo nie mogła dojść do tego, co zostało gdzie indziej.</translation>
    </message>
    <message>
        <source>Food within reach: it did not starve for want of stores. Look at mites, the queen and the size of the cluster.</source>
        <translation>Pokarm w&#xa0;zasięgu: nie zginęła z&#xa0;braku zapasów. Sprawdzić roztocza, matkę i&#xa0;wielkość kłębu.</translation>
    </message>
    <message>
        <source>Bees head down in the cells: they starved; with food elsewhere in the hive, because the cold held them away from it.</source>
        <translation>Pszczoły głowami w&#xa0;komórkach: zginęły z&#xa0;głodu; jeśli pokarm był gdzie indziej w&#xa0;ulu, to dlatego, że nie puścił ich do niego mróz.</translation>
    </message>
    <message>
        <source>No bees head down in the cells: hunger is not the likely cause.</source>
        <translation>Pszczoły nie tkwią głowami w&#xa0;komórkach: głód nie jest prawdopodobną przyczyną.</translation>
    </message>
    <message>
        <source>Many mites on the floor: the winter bees were raised with varroa and its viruses; treat earlier, and count afterwards.</source>
        <translation>Dużo roztoczy na dennicy: pszczoły zimowe wychowały się z&#xa0;warrozą i&#xa0;jej wirusami; leczyć wcześniej i&#xa0;potem policzyć osyp.</translation>
    </message>
    <message>
        <source>Few mites on the floor: varroa is less likely, but a colony that lost its bees in autumn leaves few behind.</source>
        <translation>Mało roztoczy na dennicy: warroza jest mniej prawdopodobna, ale rodzina, która straciła pszczoły jesienią, zostawia ich niewiele.</translation>
    </message>
    <message>
        <source>No brood: it died while laying had stopped, or had no laying queen any more.</source>
        <translation>Bez czerwiu: zginęła, gdy matka nie czerwiła, albo nie miała już czerwiącej matki.</translation>
    </message>
    <message>
        <source>Solid brood: the queen laid well until a sudden end, by cold or hunger.</source>
        <translation>Zwarty czerw: matka czerwiła dobrze aż do nagłego końca, z&#xa0;zimna albo z&#xa0;głodu.</translation>
    </message>
    <message>
        <source>Patchy brood, dead in its cells: varroa or a brood disease. Close the hive against robbers, and show the %{comb} to the bee inspector before any of it is used again.</source>
        <translation>Rozstrzelony czerw, martwy w&#xa0;komórkach: warroza albo choroba czerwiu. Zamknąć ul przed rabunkiem i&#xa0;pokazać plaster powiatowemu lekarzowi weterynarii, zanim cokolwiek z&#xa0;niego się wykorzysta.</translation>
    </message>
    <message>
        <source>The queen was there to the end: it was not queenless.</source>
        <translation>Matka była do końca: rodzina nie była bezmateczna.</translation>
    </message>
    <message>
        <source>No queen among the dead: with few bees and drone brood or none it was probably queenless.</source>
        <translation>Wśród martwych nie ma matki: przy małej liczbie pszczół i&#xa0;czerwiu trutowym lub jego braku rodzina była pewnie bezmateczna.</translation>
    </message>
    <message>
        <source>The colony was found dead on %{day}.</source>
        <translation>%{day} rodzinę znaleziono martwą.</translation>
    </message>
    <message>
        <source>If nothing is done it falls below %{reserve:amount} in %{in:0} of 100 winters that fit what was seen, by about %{day}.</source>
        <translation>Jeśli nic się nie zrobi, w&#xa0;%{in:0} na 100 zim zgodnych z&#xa0;obserwacjami zapasy spadną poniżej %{reserve:amount}, mniej więcej do %{day}.</translation>
    </message>
    <message>
        <source>Weigh again by %{day}: from then on a weighing may change what to do.</source>
        <translation>Zważyć ponownie najpóźniej %{day}: odtąd ważenie może zmienić zalecenie.</translation>
    </message>
    <message>
        <source>Weigh on %{day}, before more is fed: how much it is to be follows from that.</source>
        <translation>Zważyć %{day}, zanim poda się więcej: z&#xa0;tego wyniknie, ile podać.</translation>
    </message>
    <message>
        <source>No further weighing before forage would change what to do.</source>
        <translation>Kolejne ważenie przed pożytkami nie zmieniłoby zalecenia.</translation>
    </message>
    <message>
        <source>The weighing of %{day} contradicts every simulated winter: it says %{seen}, where %{low} to %{high} was expected. Weigh again, and look for a feed that was not written down or ticked off, for a lid, a box or a stone that was on or off, and for robbers.</source>
        <translation>Ważenie z&#xa0;%{day} nie pasuje do żadnej symulowanej zimy: pokazuje %{seen}, a&#xa0;oczekiwano od %{low} do %{high}. Zważyć ponownie, poszukać karmienia, którego nie zapisano lub nie odhaczono, i&#xa0;sprawdzić, czy nie dołożono lub nie zdjęto daszka, korpusu albo kamienia i&#xa0;czy nie ma rabunku.</translation>
    </message>
    <message>
        <source>Before %{day} the hive changed by about %{change} more than any winter explains, and a later weighing agrees. The forecast goes on from there.</source>
        <translation>Przed %{day} masa ula zmieniła się o&#xa0;około %{change} bardziej, niż wyjaśnia jakakolwiek zima, i&#xa0;późniejsze ważenie to potwierdza. Prognoza biegnie dalej od tego miejsca.</translation>
    </message>
    <message>
        <source>What was seen on %{day} contradicts every simulated winter, all of which had run out of stores by then. Weigh the hive.</source>
        <translation>To, co widziano %{day}, nie pasuje do żadnej symulowanej zimy: we wszystkich zapasy już się do tego czasu skończyły. Zważyć ul.</translation>
    </message>
    <message>
        <source>The records fit no winter: of about %{had:amount} on %{decided}, with %{given:amount} fed and %{taken:amount} taken since, nothing can have been left before %{day}, yet stores were found then. Look at what was written down between these days: until it is set right there is no forecast but the autumn&apos;s.</source>
        <translation>Wpisy nie pasują do żadnej zimy: z&#xa0;około %{had:amount} w&#xa0;dniu %{decided}, przy %{given:amount} podanych i&#xa0;%{taken:amount} odebranych od tego czasu, przed %{day} nic nie mogło zostać, a&#xa0;jednak znaleziono wtedy zapasy. Sprawdzić wpisy z&#xa0;tych dni: dopóki nie zostaną poprawione, jest tylko prognoza z&#xa0;jesieni.</translation>
    </message>
    <message>
        <source>Rain or snow lay on the hive on %{day}: that weighing counts for less.</source>
        <translation>%{day} ul był mokry od deszczu lub leżał na nim śnieg: to ważenie liczy się mniej.</translation>
    </message>
    <message>
        <source>Few of the winters first drawn fitted what was seen; they were drawn again around it.</source>
        <translation>Z&#xa0;pierwszych wylosowanych zim mało która zgadzała się z&#xa0;obserwacjami; wylosowano je ponownie wokół nich.</translation>
    </message>
    <message>
        <source>Only about %{winters:0} of the simulated winters fit what was seen, so the shares are rough.</source>
        <translation>Tylko około %{winters:0} symulowanych zim zgadza się z&#xa0;obserwacjami, więc udziały są przybliżone.</translation>
    </message>
    <message numerus="yes">
        <source>Measured temperatures of %n days stand for the weather so far.</source>
        <translation>
            <numerusform>Za dotychczasową pogodę przyjęto temperatury zmierzone w&#xa0;ciągu %n dnia.</numerusform>
            <numerusform>Za dotychczasową pogodę przyjęto temperatury zmierzone w&#xa0;ciągu %n dni.</numerusform>
            <numerusform>Za dotychczasową pogodę przyjęto temperatury zmierzone w&#xa0;ciągu %n dni.</numerusform>
        </translation>
    </message>
    <message>
        <source>The measured temperature of one day stands for the weather so far.</source>
        <translation>Za dotychczasową pogodę przyjęto temperaturę zmierzoną jednego dnia.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % more than the model says; used from now on.</source>
        <translation>
            <numerusform>W&#xa0;ciągu %n zimy te pszczoły jadły o&#xa0;%{percent:0}% więcej, niż mówi model; odtąd to uwzględniono.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim te pszczoły jadły o&#xa0;%{percent:0}% więcej, niż mówi model; odtąd to uwzględniono.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim te pszczoły jadły o&#xa0;%{percent:0}% więcej, niż mówi model; odtąd to uwzględniono.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, %{percent:0} % more than the model says; used from now on.</source>
        <translation>W&#xa0;ciągu jednej zimy te pszczoły jadły, o&#xa0;ile można z&#xa0;niej sądzić, o&#xa0;%{percent:0}% więcej, niż mówi model; odtąd to uwzględniono.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % less than the model says; used from now on.</source>
        <translation>
            <numerusform>W&#xa0;ciągu %n zimy te pszczoły jadły o&#xa0;%{percent:0}% mniej, niż mówi model; odtąd to uwzględniono.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim te pszczoły jadły o&#xa0;%{percent:0}% mniej, niż mówi model; odtąd to uwzględniono.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim te pszczoły jadły o&#xa0;%{percent:0}% mniej, niż mówi model; odtąd to uwzględniono.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, %{percent:0} % less than the model says; used from now on.</source>
        <translation>W&#xa0;ciągu jednej zimy te pszczoły jadły, o&#xa0;ile można z&#xa0;niej sądzić, o&#xa0;%{percent:0}% mniej, niż mówi model; odtąd to uwzględniono.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate what the model says, within 2 %.</source>
        <translation>
            <numerusform>W&#xa0;ciągu %n zimy te pszczoły jadły tyle, ile mówi model, z&#xa0;dokładnością do 2%.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim te pszczoły jadły tyle, ile mówi model, z&#xa0;dokładnością do 2%.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim te pszczoły jadły tyle, ile mówi model, z&#xa0;dokładnością do 2%.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, what the model says, within 2 %.</source>
        <translation>W&#xa0;ciągu jednej zimy te pszczoły jadły, o&#xa0;ile można z&#xa0;niej sądzić, tyle, ile mówi model, z&#xa0;dokładnością do 2%.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % faster than the model says; used from now on.</source>
        <translation>
            <numerusform>W&#xa0;ciągu %n zimy pszczół ubywało o&#xa0;%{percent:0}% szybciej, niż mówi model; odtąd to uwzględniono.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim pszczół ubywało o&#xa0;%{percent:0}% szybciej, niż mówi model; odtąd to uwzględniono.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim pszczół ubywało o&#xa0;%{percent:0}% szybciej, niż mówi model; odtąd to uwzględniono.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter they lost bees, as far as it tells, %{percent:0} % faster than the model says; used from now on.</source>
        <translation>W&#xa0;ciągu jednej zimy pszczół ubywało, o&#xa0;ile można z&#xa0;niej sądzić, o&#xa0;%{percent:0}% szybciej, niż mówi model; odtąd to uwzględniono.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>
            <numerusform>W&#xa0;ciągu %n zimy pszczół ubywało o&#xa0;%{percent:0}% wolniej, niż mówi model; odtąd to uwzględniono.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim pszczół ubywało o&#xa0;%{percent:0}% wolniej, niż mówi model; odtąd to uwzględniono.</numerusform>
            <numerusform>W&#xa0;ciągu %n zim pszczół ubywało o&#xa0;%{percent:0}% wolniej, niż mówi model; odtąd to uwzględniono.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter they lost bees, as far as it tells, %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>W&#xa0;ciągu jednej zimy pszczół ubywało, o&#xa0;ile można z&#xa0;niej sądzić, o&#xa0;%{percent:0}% wolniej, niż mówi model; odtąd to uwzględniono.</translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>
            <numerusform>Sądząc po %n wiośnie, pożytki wiosenne zaczynają się tu o&#xa0;%{days:1} dni później, niż mówi klimat; odtąd to uwzględniono.</numerusform>
            <numerusform>Sądząc po %n wiosnach, pożytki wiosenne zaczynają się tu o&#xa0;%{days:1} dni później, niż mówi klimat; odtąd to uwzględniono.</numerusform>
            <numerusform>Sądząc po %n wiosnach, pożytki wiosenne zaczynają się tu o&#xa0;%{days:1} dni później, niż mówi klimat; odtąd to uwzględniono.</numerusform>
        </translation>
    </message>
    <message>
        <source>Going by one spring, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>Sądząc po jednej wiośnie, pożytki wiosenne zaczynają się tu o&#xa0;%{days:1} dni później, niż mówi klimat; odtąd to uwzględniono.</translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>
            <numerusform>Sądząc po %n wiośnie, pożytki wiosenne zaczynają się tu o&#xa0;%{days:1} dni wcześniej, niż mówi klimat; odtąd to uwzględniono.</numerusform>
            <numerusform>Sądząc po %n wiosnach, pożytki wiosenne zaczynają się tu o&#xa0;%{days:1} dni wcześniej, niż mówi klimat; odtąd to uwzględniono.</numerusform>
            <numerusform>Sądząc po %n wiosnach, pożytki wiosenne zaczynają się tu o&#xa0;%{days:1} dni wcześniej, niż mówi klimat; odtąd to uwzględniono.</numerusform>
        </translation>
    </message>
    <message>
        <source>Going by one spring, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>Sądząc po jednej wiośnie, pożytki wiosenne zaczynają się tu o&#xa0;%{days:1} dni wcześniej, niż mówi klimat; odtąd to uwzględniono.</translation>
    </message>
    <message>
        <source>Spring forage should carry the colony from about %{day}.</source>
        <translation>Mniej więcej od %{day} rodzinę powinny utrzymać pożytki wiosenne.</translation>
    </message>
    <message>
        <source>Leave %{leave:amount} for a cold spell until forage is steady.</source>
        <translation>Na nawrót zimna zostawić %{leave:amount}, dopóki pożytek nie będzie stały.</translation>
    </message>
    <message>
        <source>More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts. It is for bees alone: full %{combs} of it may help a light, healthy colony, or be kept for one.</source>
        <translation>Jest więcej niż tyle: w 9 na 10 zim na początku wiosennego pożytku zostaje ponad to %{surplus:amount} lub więcej. To tylko dla pszczół: pełne ramki mogą pomóc lekkiej, zdrowej rodzinie albo zostać dla niej odłożone.</translation>
    </message>
    <message>
        <source>More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts, and may come out.</source>
        <translation>Jest więcej niż tyle: w&#xa0;9 na 10 zim na początku pożytków wiosennych zostaje ponad to %{surplus:amount} lub więcej i&#xa0;tyle można wyjąć.</translation>
    </message>
    <message>
        <source>Take out about %{room:amount} of full %{combs} when forage has begun, so that the queen has room to lay.</source>
        <translation>Gdy pożytek się zacznie, wyjąć około %{room:amount} w&#xa0;pełnych ramkach, żeby matka miała miejsce do czerwienia.</translation>
    </message>
    <message>
        <source>The nearest climate station is %{km:distance} away, and beyond %{farthest:distance} none speaks for a place: give a climate of your own.</source>
        <translation>Najbliższa stacja klimatyczna leży w&#xa0;odległości %{km:distance}, a&#xa0;powyżej %{farthest:distance} żadna nie mówi już o&#xa0;miejscu: podać własny klimat.</translation>
    </message>
    <message>
        <source>No climate station lies within %{farthest:distance} of the place: give a climate of your own.</source>
        <translation>W&#xa0;odległości do %{farthest:distance} od miejsca nie ma stacji klimatycznej: podać własny klimat.</translation>
    </message>
    <message>
        <source>There are no bees in the hive.</source>
        <translation>W&#xa0;ulu nie ma pszczół.</translation>
    </message>
    <message>
        <source>Nothing tells how many bees there are: count the %{combs} or the seams they cover.</source>
        <translation>Nic nie mówi, ile jest pszczół: policzyć plastry lub uliczki, które obsiadają.</translation>
    </message>
    <message>
        <source>By its weight on %{day} there are %{low:amount} to %{high:amount} of stores, with %{tare:amount} for the empty hive and what few or many bees weigh.</source>
        <translation>Z&#xa0;masy ula %{day} wynika od %{low:amount} do %{high:amount} zapasów, przy %{tare:amount} na pusty ul i&#xa0;przy masie małej lub dużej liczby pszczół.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}. How many bees there are nobody counts in the cold, and without that no amount can be said: one portion does no harm, and a weighing tells whether more is wanted.</source>
        <translation>Przy unoszeniu %{day} ul był lekki. Na mrozie nikt nie policzy pszczół, a&#xa0;bez tego nie da się podać ilości: jedna dawka nie zaszkodzi, a&#xa0;ważenie powie, czy trzeba więcej.</translation>
    </message>
    <message>
        <source>Nothing tells what stores there are: look at the %{combs}, weigh the hive, or heft it.</source>
        <translation>Nic nie mówi, ile jest zapasów: obejrzeć ramki, zważyć ul albo ocenić jego ciężar w&#xa0;ręku.</translation>
    </message>
    <message>
        <source>The day asked about lies in the month before the season begins: ask from 1 August on, in the south from the end of January.</source>
        <translation>Dzień, na który liczymy, leży w&#xa0;miesiącu przed początkiem sezonu: odpowiedź jest możliwa od 1 sierpnia, na południu od końca stycznia.</translation>
    </message>
    <message>
        <source>This climate has no cold or dark season to derive a dearth from: give the dates of the build-up and of the start of spring forage.</source>
        <translation>Ten klimat nie ma zimnej ani ciemnej pory, z&#xa0;której dałoby się wyznaczyć okres bezpożytkowy: podać daty rozwoju wiosennego i&#xa0;początku pożytków wiosennych.</translation>
    </message>
    <message>
        <source>Spring forage has started: no winter is left to ask about.</source>
        <translation>Pożytki wiosenne już się zaczęły: nie ma już zimy, o&#xa0;którą można by pytać.</translation>
    </message>
    <message>
        <source>With signs of disease nothing else counts: no honey, no %{combs} and no bees leave this hive before the inspector has seen it. It is fed only to live until then.</source>
        <translation>Przy objawach choroby nic innego się nie liczy: żaden miód, żadna ramka i&#xa0;żadna pszczoła nie opuszcza tego ula, zanim nie obejrzy go powiatowy lekarz weterynarii. Karmi się tylko po to, by rodzina do tego czasu przeżyła.</translation>
    </message>
    <message>
        <source>Of about %{stores:amount} in the hive only %{within:amount} lie where the bees can reach them in the cold.</source>
        <translation>Z&#xa0;około %{stores:amount} w&#xa0;ulu tylko %{within:amount} leży tam, gdzie pszczoły dosięgną na mrozie.</translation>
    </message>
    <message>
        <source>Nothing of the about %{stores:amount} in the hive lies where the bees can reach it in the cold.</source>
        <translation>Z&#xa0;około %{stores:amount} w&#xa0;ulu nic nie leży tam, gdzie pszczoły dosięgną na mrozie.</translation>
    </message>
    <message>
        <source>About %{stores:amount} of stores may last less than %{days:0} days.</source>
        <translation>Około %{stores:amount} zapasów może starczyć na mniej niż %{days:0} dni.</translation>
    </message>
    <message>
        <source>Next to nothing is left in the hive.</source>
        <translation>W&#xa0;ulu nie zostało prawie nic.</translation>
    </message>
    <message>
        <source>Neither queen nor eggs nor brood were seen, and it is not yet too late in the year for eggs: such a colony does not live through winter alone. Give it a %{comb} with eggs of another colony, and look after four days: queen cells on it mean she is gone.</source>
        <translation>Nie widziano ani matki, ani jajeczek, ani czerwiu, a&#xa0;na jajeczka nie jest jeszcze za późno w&#xa0;roku: taka rodzina sama nie przeżyje zimy. Dać jej ramkę z&#xa0;jajeczkami z&#xa0;innej rodziny i&#xa0;zajrzeć po czterech dniach: mateczniki na niej znaczą, że matki nie ma.</translation>
    </message>
    <message>
        <source>%{first:evidence} says %{low:amount}, %{second:evidence} says %{high:amount}: no amount is told before one of them is found wrong.</source>
        <translation>%{first:evidence} daje %{low:amount}, %{second:evidence} daje %{high:amount}: nie podaje się żadnej ilości, dopóki nie wiadomo, co jest błędne.</translation>
    </message>
    <message>
        <source>Light at this time of year stands for about %{stores:amount}, give or take a third: one portion at once, then weigh.</source>
        <translation>Lekki o&#xa0;tej porze roku znaczy około %{stores:amount}, plus minus jedna trzecia: od razu jedna dawka, potem zważyć.</translation>
    </message>
    <message>
        <source>Fair at this time of year stands for about %{stores:amount}, give or take a third: too rough to decide by.</source>
        <translation>Średni o&#xa0;tej porze roku znaczy około %{stores:amount}, plus minus jedna trzecia: za mało dokładnie, by na tym polegać.</translation>
    </message>
    <message>
        <source>Heavy at this time of year stands for about %{stores:amount}, give or take a third; no honey is taken on a heft.</source>
        <translation>Ciężki o&#xa0;tej porze roku znaczy około %{stores:amount}, plus minus jedna trzecia; na podstawie oceny w&#xa0;ręku miodu się nie odbiera.</translation>
    </message>
    <message>
        <source>About %{bees:hundreds} bees going into winter are too few to winter well alone; 7,000 are the least.</source>
        <translation>Około %{bees:hundreds} pszczół na początku zimy to za mało, by dobrze zimowały same; potrzeba co najmniej 7000.</translation>
    </message>
    <message>
        <source>%{safety:amount} are to be in the hive so that it is safe until the next look; there are about %{stores:amount}. What it needs for winter is fed later.</source>
        <translation>W&#xa0;ulu ma być %{safety:amount}, żeby było bezpiecznie do następnego przeglądu; jest około %{stores:amount}. To, czego trzeba na zimę, poda się później.</translation>
    </message>
    <message>
        <source>%{safety:amount} stay in the hive until the next look; what is taken now is fed as sugar later, once the mites are treated.</source>
        <translation>Do następnego przeglądu w&#xa0;ulu zostaje %{safety:amount}; to, co teraz odebrane, poda się później jako cukier, po leczeniu z&#xa0;warrozy.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are in the hive, and %{safety:amount} are enough until the next look: nothing is decided for winter yet.</source>
        <translation>W&#xa0;ulu jest około %{stores:amount}, a&#xa0;do następnego przeglądu wystarczy %{safety:amount}: o&#xa0;zimie jeszcze się nie rozstrzyga.</translation>
    </message>
    <message>
        <source>Nectar or syrup is fresh in the open cells: they count as %{share:0} % of what they would weigh capped, until a look finds them ripe.</source>
        <translation>W&#xa0;otwartych komórkach jest świeży nakrop lub syrop: liczy się jako %{share:0}% tego, co ważyłby zasklepiony, dopóki przegląd nie pokaże, że dojrzał.</translation>
    </message>
    <message>
        <source>The %{combs} hold about %{room:amount}, and they are full.</source>
        <translation>Plastry mieszczą około %{room:amount} i&#xa0;są pełne.</translation>
    </message>
    <message>
        <source>About %{missing:amount} of stores are missing on %{day}.</source>
        <translation>Na dzień %{day} brakuje około %{missing:amount} zapasów.</translation>
    </message>
    <message>
        <source>In a dearth bees take thick syrup in small portions, right over the cluster, on days that are warm enough.</source>
        <translation>W&#xa0;okresie bezpożytkowym pszczoły pobierają gęsty syrop w&#xa0;małych dawkach, tuż nad kłębem, w&#xa0;dość ciepłe dni.</translation>
    </message>
    <message>
        <source>After the last day for syrup bees take small portions only, warm, thick and right over the cluster, and fewer from week to week.</source>
        <translation>Po ostatnim dniu na syrop pszczoły pobierają tylko małe dawki, ciepłe, gęste i&#xa0;tuż nad kłębem, z&#xa0;tygodnia na tydzień coraz mniej.</translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end: what is missing goes on as %{board} before the hive is wrapped.</source>
        <translation>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dzień: czego brakuje, podać jako ciasto przed owinięciem ula.</numerusform>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dni z&#xa0;rzędu: czego brakuje, podać jako ciasto przed owinięciem ula.</numerusform>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dni z&#xa0;rzędu: czego brakuje, podać jako ciasto przed owinięciem ula.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{Board} should have been on before the hive was wrapped. Cold may lock the bees in for %n days on end, and most winters would starve them as they are: laid on now it still helps, if the bees can get at it.</source>
        <translation>
            <numerusform>Ciasto powinno było znaleźć się w&#xa0;ulu przed jego owinięciem. Mróz może uwięzić pszczoły w&#xa0;ulu na %n dzień i&#xa0;w&#xa0;większości zim tak, jak jest, zginęłyby z&#xa0;głodu: położone teraz jeszcze pomoże, jeśli pszczoły do niego dojdą.</numerusform>
            <numerusform>Ciasto powinno było znaleźć się w&#xa0;ulu przed jego owinięciem. Mróz może uwięzić pszczoły w&#xa0;ulu na %n dni z&#xa0;rzędu i&#xa0;w&#xa0;większości zim tak, jak jest, zginęłyby z&#xa0;głodu: położone teraz jeszcze pomoże, jeśli pszczoły do niego dojdą.</numerusform>
            <numerusform>Ciasto powinno było znaleźć się w&#xa0;ulu przed jego owinięciem. Mróz może uwięzić pszczoły w&#xa0;ulu na %n dni z&#xa0;rzędu i&#xa0;w&#xa0;większości zim tak, jak jest, zginęłyby z&#xa0;głodu: położone teraz jeszcze pomoże, jeśli pszczoły do niego dojdą.</numerusform>
        </translation>
    </message>
    <message>
        <source>About %{stores:amount} are left, and %{reserve:amount} are to be kept: one visit now, the next after weighing.</source>
        <translation>Zostało około %{stores:amount}, a&#xa0;ma pozostać %{reserve:amount}: jedna wizyta teraz, następna po zważeniu.</translation>
    </message>
    <message>
        <source>Nothing can or need be fed today; whether it will be wanted a later weighing tells.</source>
        <translation>Dziś nic nie można ani nie trzeba podawać; czy będzie potrzebne, powie późniejsze ważenie.</translation>
    </message>
    <message>
        <source>The honey of the super is for people and was not counted: the bees keep their %{stores:amount} when it comes off.</source>
        <translation>Miód z&#xa0;nadstawki jest dla ludzi i&#xa0;nie był liczony: po jej zdjęciu pszczoły zachowują swoje %{stores:amount}.</translation>
    </message>
    <message>
        <source>About %{spare:amount} are to spare above what the colony should winter on and what is usual here.</source>
        <translation>Nadwyżka to około %{spare:amount} ponad to, co rodzina powinna mieć na zimę, i&#xa0;ponad to, co tu zwykle przyjęte.</translation>
    </message>
    <message>
        <source>About %{spare:amount} are to spare above what the colony should winter on.</source>
        <translation>Nadwyżka to około %{spare:amount} ponad to, co rodzina powinna mieć na zimę.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted: that is enough, and what is more stays with the bees.</source>
        <translation>Będzie około %{stores:amount}, a&#xa0;potrzeba %{need:amount}: to wystarczy, a&#xa0;co ponad to, zostaje u&#xa0;pszczół.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted; but %{usual:amount} or more are usual here, and less than that is never left after a harvest: what is more stays with the bees.</source>
        <translation>Będzie około %{stores:amount}, a&#xa0;potrzeba %{need:amount}; ale tu zwykle przyjęte jest %{usual:amount} lub więcej i&#xa0;po miodobraniu nigdy nie zostawia się mniej: co ponad to, zostaje u&#xa0;pszczół.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted: a difference of less than %{dead:amount} is neither fed nor taken.</source>
        <translation>Będzie około %{stores:amount}, a&#xa0;potrzeba %{need:amount}: różnicy mniejszej niż %{dead:amount} ani się nie dokarmia, ani nie odbiera.</translation>
    </message>
    <message>
        <source>No brood was seen, though the queen usually still lays: if she has stopped, %{stopped:amount} are enough instead of %{need:amount}.</source>
        <translation>Nie widziano czerwiu, choć matka zwykle jeszcze czerwi: jeśli przestała, zamiast %{need:amount} wystarczy %{stopped:amount}.</translation>
    </message>
    <message>
        <source>No eggs at this time of year are normal: that is no sign that the queen is gone.</source>
        <translation>Brak jajeczek jest o&#xa0;tej porze roku normalny: to nie znak, że matki nie ma.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then give drawn comb or a box of it (no foundation now), or full %{combs} from store or a healthy neighbour.</source>
        <translation>Potrzeba %{need:amount}, a&#xa0;plastry mieszczą około %{room:amount}: najpierw zważyć, potem dać susz lub korpus z&#xa0;suszem (węzy teraz nie) albo pełne ramki z&#xa0;zapasu lub z&#xa0;innej zdrowej rodziny.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: give drawn comb or a box of it (no foundation now), or full %{combs} from store or a healthy neighbour.</source>
        <translation>Potrzeba %{need:amount}, a&#xa0;plastry mieszczą około %{room:amount}: dać susz lub korpus z&#xa0;suszem (węzy teraz nie) albo pełne ramki z&#xa0;zapasu lub z&#xa0;innej zdrowej rodziny.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: change empty %{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Potrzeba %{need:amount}, a&#xa0;plastry mieszczą około %{room:amount}: puste ramki wymienić na pełne z&#xa0;zapasu lub z&#xa0;innej zdrowej rodziny; zimą ważyć i&#xa0;położyć ciasto, jeśli wtedy nadal brakuje.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then change empty %{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Potrzeba %{need:amount}, a&#xa0;plastry mieszczą około %{room:amount}: najpierw zważyć, potem puste ramki wymienić na pełne z&#xa0;zapasu lub z&#xa0;innej zdrowej rodziny; zimą ważyć i&#xa0;położyć ciasto, jeśli wtedy nadal brakuje.</translation>
    </message>
    <message>
        <source>On %{day} it should hold about %{need:amount}: %{combs:halves} full %{combs}, %{gross:amount} with hive and bees.</source>
        <translation>%{day} w&#xa0;ulu powinno być około %{need:amount}: pełnych ramek %{combs:halves}, z&#xa0;ulem i&#xa0;pszczołami %{gross:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}.</source>
        <translation>Tu zwykle przyjęte (%{place}): od %{low:amount} do %{high:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}.</source>
        <translation>Tu zwykle przyjęte (%{place}): %{low:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters.</source>
        <translation>Tu zwykle przyjęte (%{place}): %{low:amount}. Ta odpowiedź mówi %{need:amount}, bo uwzględnia pszczoły, ul i&#xa0;zimy tej rodziny.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters.</source>
        <translation>Tu zwykle przyjęte (%{place}): od %{low:amount} do %{high:amount}. Ta odpowiedź mówi %{need:amount}, bo uwzględnia pszczoły, ul i&#xa0;zimy tej rodziny.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.</source>
        <translation>Tu zwykle przyjęte (%{place}): od %{low:amount} do %{high:amount}. Ta odpowiedź mówi %{need:amount}, bo uwzględnia pszczoły, ul i&#xa0;zimy tej rodziny. Tamta liczba to opinia pszczelarzy, nic nie opublikowano: nie wstrzymuje ona odbioru miodu.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.</source>
        <translation>Tu zwykle przyjęte (%{place}): %{low:amount}. Ta odpowiedź mówi %{need:amount}, bo uwzględnia pszczoły, ul i&#xa0;zimy tej rodziny. Tamta liczba to opinia pszczelarzy, nic nie opublikowano: nie wstrzymuje ona odbioru miodu.</translation>
    </message>
    <message>
        <source>Counted from today %{need:amount} are wanted: then %{reserve:amount} or more are left in %{in:0} of 100 winters when spring forage starts, around %{forage}.</source>
        <translation>Licząc od dziś, potrzeba %{need:amount}: wtedy na początku pożytków wiosennych, około %{forage}, w&#xa0;%{in:0} na 100 zim zostaje %{reserve:amount} lub więcej.</translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when nothing can be fed: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dzień, kiedy nic nie można podać: dlatego ma wystarczyć w&#xa0;%{in:0} na 100 zim, a&#xa0;nie w&#xa0;80.</numerusform>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dni z&#xa0;rzędu, kiedy nic nie można podać: dlatego ma wystarczyć w&#xa0;%{in:0} na 100 zim, a&#xa0;nie w&#xa0;80.</numerusform>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dni z&#xa0;rzędu, kiedy nic nie można podać: dlatego ma wystarczyć w&#xa0;%{in:0} na 100 zim, a&#xa0;nie w&#xa0;80.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when they reach only food that touches them: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dzień, kiedy dosięgną tylko pokarmu, który ich dotyka: dlatego ma wystarczyć w&#xa0;%{in:0} na 100 zim, a&#xa0;nie w&#xa0;80.</numerusform>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dni z&#xa0;rzędu, kiedy dosięgną tylko pokarmu, który ich dotyka: dlatego ma wystarczyć w&#xa0;%{in:0} na 100 zim, a&#xa0;nie w&#xa0;80.</numerusform>
            <numerusform>Mróz może uwięzić pszczoły w&#xa0;ulu na %n dni z&#xa0;rzędu, kiedy dosięgną tylko pokarmu, który ich dotyka: dlatego ma wystarczyć w&#xa0;%{in:0} na 100 zim, a&#xa0;nie w&#xa0;80.</numerusform>
        </translation>
    </message>
    <message>
        <source>%{reserve:amount} are to be left because the hive has more than one brood box; of one box it would be %{one:amount}.</source>
        <translation>Ma zostać %{reserve:amount}, bo ul ma więcej niż jeden korpus gniazdowy; przy jednym byłoby to %{one:amount}.</translation>
    </message>
    <message>
        <source>There is empty comb for only about %{room:amount}: no more is fed than finds a place.</source>
        <translation>Pustego suszu starcza tylko na około %{room:amount}: nie podaje się więcej, niż się zmieści.</translation>
    </message>
    <message>
        <source>Not all of it can be taken by the last day for syrup; full %{combs} may make up the rest; else weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Całości nie da się pobrać do ostatniego dnia na syrop; resztę mogą uzupełnić pełne ramki; inaczej zimą ważyć i&#xa0;położyć ciasto, jeśli wtedy nadal brakuje.</translation>
    </message>
    <message>
        <source>Feeding is best finished by %{day}; this plan goes on after it.</source>
        <translation>Karmienie najlepiej zakończyć do %{day}; ten plan trwa dłużej.</translation>
    </message>
    <message>
        <source>The honey holds %{water:1} % water, more than %{most:0} %, and would ferment: it stays with the bees, now and in spring.</source>
        <translation>Miód ma %{water:1}% wody, więcej niż %{most:0}%, i&#xa0;by sfermentował: zostaje u&#xa0;pszczół, teraz i&#xa0;wiosną.</translation>
    </message>
    <message>
        <source>The honey holds %{water:1} % water: it may be kept, but driest honey keeps best.</source>
        <translation>Miód ma %{water:1}% wody: można go przechować, ale najlepiej przechowuje się najbardziej suchy.</translation>
    </message>
    <message>
        <source>Sugar was fed since last spring: no %{comb} that was on the hive then is honey for people, now or in spring.</source>
        <translation>Od zeszłej wiosny podawano cukier: żadna ramka, która była wtedy w&#xa0;ulu, nie jest miodem dla ludzi, ani teraz, ani wiosną.</translation>
    </message>
    <message>
        <source>About %{spare:amount} to spare may go as %{combs} to bees: to your own nuclei or to a healthy colony of this yard.</source>
        <translation>Około %{spare:amount} nadwyżki może pójść w&#xa0;ramkach dla pszczół: do własnych odkładów albo do zdrowej rodziny z&#xa0;tej pasieki.</translation>
    </message>
    <message>
        <source>What is to spare may also stay and be taken in spring: typically %{spare:amount} more than is wanted when spring forage starts.</source>
        <translation>Nadwyżka może też zostać i&#xa0;być odebrana wiosną: na początku pożytków wiosennych zwykle %{spare:amount} więcej, niż potrzeba.</translation>
    </message>
    <message>
        <source>There is no winter here, only a dearth between the last nectar of autumn and the first of spring. Local flows decide it, and the error is twice that of colder places.</source>
        <translation>Nie ma tu zimy, jest tylko okres bezpożytkowy między końcem nektaru jesienią a&#xa0;początkiem wiosną. Rozstrzygają miejscowe pożytki, a&#xa0;błąd jest dwa razy większy niż w&#xa0;chłodniejszych miejscach.</translation>
    </message>
    <message>
        <source>The climate is your own climate, as you gave it.</source>
        <translation>Klimat jest własny, tak jak go podano.</translation>
    </message>
    <message>
        <source>The climate is that of the station for %{place}, %{km:distance} away.</source>
        <translation>Klimat pochodzi ze stacji dla: %{place}, w&#xa0;odległości %{km:distance}.</translation>
    </message>
    <message>
        <source>The climate is that of the station for %{place}.</source>
        <translation>Klimat pochodzi ze stacji dla: %{place}.</translation>
    </message>
    <message>
        <source>Nectar still coming in is counted: %{strength:flow}.</source>
        <translation>Uwzględniono nektar, który jeszcze nadejdzie: %{strength:flow}.</translation>
    </message>
    <message>
        <source>About %{bees:hundreds} bees are fewer than the 4,000 from which colonies have been measured: the figures are less sure.</source>
        <translation>Około %{bees:hundreds} pszczół to mniej niż 4000, od których zaczynają się pomiary rodzin: liczby są mniej pewne.</translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{used} used since.</source>
        <translation>
            <numerusform>Ostatni przegląd był %n dzień przed dniem, na który liczymy; model liczy od tego czasu %{used} zużycia.</numerusform>
            <numerusform>Ostatni przegląd był %n dni przed dniem, na który liczymy; model liczy od tego czasu %{used} zużycia.</numerusform>
            <numerusform>Ostatni przegląd był %n dni przed dniem, na który liczymy; model liczy od tego czasu %{used} zużycia.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last look was the day before the day asked about; the model counts %{used} used since.</source>
        <translation>Ostatni przegląd był w przeddzień dnia, na który liczymy; model liczy od tego czasu %{used} zużycia.</translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>
            <numerusform>Ostatni przegląd był %n dzień przed dniem, na który liczymy; model liczy od tego czasu %{gained} przyniesione.</numerusform>
            <numerusform>Ostatni przegląd był %n dni przed dniem, na który liczymy; model liczy od tego czasu %{gained} przyniesione.</numerusform>
            <numerusform>Ostatni przegląd był %n dni przed dniem, na który liczymy; model liczy od tego czasu %{gained} przyniesione.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last look was the day before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>Ostatni przegląd był w przeddzień dnia, na który liczymy; model liczy od tego czasu %{gained} przyniesione.</translation>
    </message>
    <message numerus="yes">
        <source>Syrup 3:2 by mass: %n warm days are left to ripen it.</source>
        <translation>
            <numerusform>Syrop 3:2 wagowo: na jego przerobienie został %n ciepły dzień.</numerusform>
            <numerusform>Syrop 3:2 wagowo: na jego przerobienie zostały %n ciepłe dni.</numerusform>
            <numerusform>Syrop 3:2 wagowo: na jego przerobienie zostało %n ciepłych dni.</numerusform>
        </translation>
    </message>
    <message>
        <source>Syrup 3:2 by mass: one warm day is left to ripen it.</source>
        <translation>Syrop 3:2 wagowo: na jego przerobienie został jeden ciepły dzień.</translation>
    </message>
    <message numerus="yes">
        <source>Syrup 2:1 by mass: %n warm days are left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>
            <numerusform>Syrop 2:1 wagowo: został %n ciepły dzień, mniej niż pięć tygodni, których wymaga 3:2, więc pszczoły powinny mieć mniej wody do odparowania.</numerusform>
            <numerusform>Syrop 2:1 wagowo: zostały %n ciepłe dni, mniej niż pięć tygodni, których wymaga 3:2, więc pszczoły powinny mieć mniej wody do odparowania.</numerusform>
            <numerusform>Syrop 2:1 wagowo: zostało %n ciepłych dni, mniej niż pięć tygodni, których wymaga 3:2, więc pszczoły powinny mieć mniej wody do odparowania.</numerusform>
        </translation>
    </message>
    <message>
        <source>Syrup 2:1 by mass: one warm day is left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>Syrop 2:1 wagowo: został jeden ciepły dzień, mniej niż pięć tygodni, których wymaga 3:2, więc pszczoły powinny mieć mniej wody do odparowania.</translation>
    </message>
    <message>
        <source>No single %{comb} may be taken: each holds brood, hangs over or beside the bees, is not capped enough, took syrup, is old, or weighs more than can be spared.</source>
        <translation>Żadnej pojedynczej ramki nie można odebrać: w&#xa0;każdej jest czerw, wisi nad pszczołami lub obok nich, nie jest dość zasklepiona, dostała syrop, jest stara albo waży więcej, niż wynosi nadwyżka.</translation>
    </message>
    <message>
        <source>About %{spare:amount} would be to spare if it is as thought; but with the doubt of what is there more than %{in:0} of 100 winters would fall below %{reserve:amount} without it, so it stays with the bees.</source>
        <translation>Nadwyżka wynosiłaby około %{spare:amount}, jeśli jest tak, jak się wydaje; ale przy niepewności co do zapasów bez niej w&#xa0;ponad %{in:0} na 100 zim zapasy spadłyby poniżej %{reserve:amount}, więc zostaje u&#xa0;pszczół.</translation>
    </message>
    <message>
        <source>Only %{percent:0} % of the stores are capped: honey is ripe from two thirds on, so none is taken before more is.</source>
        <translation>Zasklepione jest tylko %{percent:0}% zapasów: miód jest dojrzały od dwóch trzecich, więc nie odbiera się go, dopóki nie będzie więcej.</translation>
    </message>
    <message>
        <source>%{Combs} were only counted, so none can be named.</source>
        <translation>Ramki tylko policzono, więc żadnej nie można wskazać.</translation>
    </message>
    <message>
        <source>The hive was treated while this honey was in it, so none of it is taken.</source>
        <translation>Rodzina była leczona, gdy ten miód był w&#xa0;ulu, więc nie odbiera się go.</translation>
    </message>
    <message>
        <source>%{Combs} that stood for years in the brood nest are not taken.</source>
        <translation>Ramek, które latami były w&#xa0;gnieździe, nie odbiera się.</translation>
    </message>
    <message>
        <source>Honey the autumn flow has yet to bring is never counted for harvest.</source>
        <translation>Miód, który pożytek jesienny ma dopiero przynieść, nigdy nie liczy się do miodobrania.</translation>
    </message>
    <message>
        <source>%{built:0} %{combs} are built, the bees cover %{covered:halves}, and %{empty:0} are empty: take empty %{combs} out before winter, or put a follower beside the nest.</source>
        <translation>Odbudowane ramki: %{built:0}, obsiadane przez pszczoły: %{covered:halves}, puste: %{empty:0}. Przed zimą puste wyjąć albo wstawić zatwór obok gniazda.</translation>
    </message>
    <message>
        <source>About %{open:amount} are open stores that may not be capped before the cold.</source>
        <translation>Około %{open:amount} to otwarte zapasy, które przed mrozami mogą nie zostać zasklepione.</translation>
    </message>
    <message>
        <source>The season lies at the edge of the rules, as in high and far northern places: compare its dates with your own.</source>
        <translation>Sezon leży na skraju tego, co obejmują reguły, jak w&#xa0;miejscach wysokich i&#xa0;daleko na północy: jego daty porównać z&#xa0;własnymi.</translation>
    </message>
    <message>
        <source>The derived date of %{which:season} gave way to a given one and is now %{to}.</source>
        <translation>Wyznaczona data (%{which:season}) ustąpiła podanej i&#xa0;wypada teraz %{to}.</translation>
    </message>
    <message>
        <source>Dates of the season were given and not derived.</source>
        <translation>Daty sezonu podano; nie wynikają z&#xa0;klimatu.</translation>
    </message>
    <message>
        <source>For the height of the place all temperatures are shifted by %{kelvin:kelvins}.</source>
        <translation>Ze względu na wysokość miejsca wszystkie temperatury przesunięto o&#xa0;%{kelvin:kelvins}.</translation>
    </message>
    <message>
        <source>The weighing of %1 is not counted.</source>
        <translation>Ważenie z&#xa0;%1 nie jest liczone.</translation>
    </message>
    <message>
        <source>The feed of %1 is not counted.</source>
        <translation>Karmienie z&#xa0;%1 nie jest liczone.</translation>
    </message>
    <message>
        <source>The harvest of %1 is not counted.</source>
        <translation>Miodobranie z&#xa0;%1 nie jest liczone.</translation>
    </message>
    <message>
        <source>The bees seen on %1 are not counted.</source>
        <translation>Pszczoły widziane %1 nie są liczone.</translation>
    </message>
    <message>
        <source>The brood seen on %1 is not counted.</source>
        <translation>Czerw widziany %1 nie jest liczony.</translation>
    </message>
    <message>
        <source>The %{combs} of %1 are not counted.</source>
        <translation>Ramki z&#xa0;%1 nie są liczone.</translation>
    </message>
    <message>
        <source>The water measured on %1 is not counted.</source>
        <translation>Woda zmierzona %1 nie jest liczona.</translation>
    </message>
    <message>
        <source>The empty weight that is given is not counted.</source>
        <translation>Podana masa pustego ula nie jest liczona.</translation>
    </message>
    <message>
        <source>The seams seen on %1 are not counted.</source>
        <translation>Uliczki widziane %1 nie są liczone.</translation>
    </message>
    <message>
        <source>What was found on %1 is not counted.</source>
        <translation>To, co znaleziono %1, nie jest liczone.</translation>
    </message>
    <message>
        <source>%{from} is united onto this colony by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.</source>
        <translation>Najpóźniej %{day} rodzina %{from} zostanie dołączona do tej rodziny: jej pszczoły, czerw i&#xa0;zapasy liczą się razem z&#xa0;tutejszymi i&#xa0;żadna z&#xa0;nich nie oddaje ani nie dostaje ramek.</translation>
    </message>
    <message>
        <source>Another colony of the yard is united onto this one by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.</source>
        <translation>Najpóźniej %{day} inna rodzina z&#xa0;tej pasieki zostanie dołączona do tej rodziny: jej pszczoły, czerw i&#xa0;zapasy liczą się razem z&#xa0;tutejszymi i&#xa0;żadna z&#xa0;nich nie oddaje ani nie dostaje ramek.</translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from %{from}.</source>
        <translation>
            <numerusform>Zanim kupi się cukier: %n ramka z&#xa0;około %{kg:amount} może przyjść z&#xa0;rodziny %{from}.</numerusform>
            <numerusform>Zanim kupi się cukier: %n ramki z&#xa0;około %{kg:amount} mogą przyjść z&#xa0;rodziny %{from}.</numerusform>
            <numerusform>Zanim kupi się cukier: %n ramek z&#xa0;około %{kg:amount} może przyjść z&#xa0;rodziny %{from}.</numerusform>
        </translation>
    </message>
    <message>
        <source>Before buying sugar: one %{comb} with about %{kg:amount} can come from %{from}.</source>
        <translation>Zanim kupi się cukier: jedna ramka z&#xa0;około %{kg:amount} może przyjść z&#xa0;rodziny %{from}.</translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>
            <numerusform>Zanim kupi się cukier: %n ramka z&#xa0;około %{kg:amount} może przyjść z&#xa0;innej rodziny w&#xa0;pasiece.</numerusform>
            <numerusform>Zanim kupi się cukier: %n ramki z&#xa0;około %{kg:amount} mogą przyjść z&#xa0;innej rodziny w&#xa0;pasiece.</numerusform>
            <numerusform>Zanim kupi się cukier: %n ramek z&#xa0;około %{kg:amount} może przyjść z&#xa0;innej rodziny w&#xa0;pasiece.</numerusform>
        </translation>
    </message>
    <message>
        <source>Before buying sugar: one %{comb} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>Zanim kupi się cukier: jedna ramka z&#xa0;około %{kg:amount} może przyjść z&#xa0;innej rodziny w&#xa0;pasiece.</translation>
    </message>
    <message>
        <source>%{Combs} with about %{kg:amount} more than those that come back go to %{receiver}, which is short: this hive keeps what it should winter on.</source>
        <translation>Ramki, w&#xa0;których jest o&#xa0;około %{kg:amount} więcej niż w&#xa0;tych, które wrócą, idą do rodziny %{receiver}, której brakuje: temu ulowi zostaje tyle, ile powinien mieć na zimę.</translation>
    </message>
    <message>
        <source>%{Combs} with about %{kg:amount} more than those that come back go to another colony of the yard, which is short: this hive keeps what it should winter on.</source>
        <translation>Ramki, w&#xa0;których jest o&#xa0;około %{kg:amount} więcej niż w&#xa0;tych, które wrócą, idą do innej rodziny w&#xa0;pasiece, której brakuje: temu ulowi zostaje tyle, ile powinien mieć na zimę.</translation>
    </message>
    <message>
        <source>When they have become one, after about a week, sort the %{combs}: brood and the full ones stay, in two boxes at most, and the boxes with empty ones come off.</source>
        <translation>Gdy rodziny się połączą, po mniej więcej tygodniu, uporządkować ramki: czerw i&#xa0;pełne zostają, najwyżej w&#xa0;dwóch korpusach, a&#xa0;korpusy z&#xa0;pustymi zdjąć.</translation>
    </message>
    <message>
        <source>%{from} may be united onto this colony by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask again when they are one.</source>
        <translation>Rodzinę %{from} można dołączyć do tej rodziny najpóźniej %{day}, gdy będzie pewne, że nie ma matki. Do tego czasu tę waży się i&#xa0;karmi osobno; po połączeniu sprawdzić odpowiedź.</translation>
    </message>
    <message>
        <source>Another colony of the yard may be united onto this one by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask again when they are one.</source>
        <translation>Inną rodzinę z&#xa0;tej pasieki można dołączyć do tej rodziny najpóźniej %{day}, gdy będzie pewne, że nie ma matki. Do tego czasu tę waży się i&#xa0;karmi osobno; po połączeniu sprawdzić odpowiedź.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but beyond what keepers here leave a colony it is too little to give %{combs} away.</source>
        <translation>Rodzinie %{receiver} brakuje, a&#xa0;ta ma około %{kg:amount} ponad docelowy zapas; ale ponad to, co pszczelarze zwykle tu zostawiają rodzinie, jest tego za mało, by oddawać ramki.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but which of its %{combs} could go is not known: look at them one by one, write them down, and ask again.</source>
        <translation>Rodzinie %{receiver} brakuje, a&#xa0;ta ma około %{kg:amount} ponad docelowy zapas; ale nie wiadomo, które jej ramki mogłyby tam pójść: obejrzeć je po kolei, zapisać i&#xa0;sprawdzić odpowiedź.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but no whole %{comb} of it without brood can go there.</source>
        <translation>Rodzinie %{receiver} brakuje, a&#xa0;ta ma około %{kg:amount} ponad docelowy zapas; ale żadna jej cała ramka bez czerwiu nie może tam pójść.</translation>
    </message>
    <message>
        <source>%{from} was united onto this colony on %{day}: its bees, brood and stores, as they were seen on %{seen}, are counted with these.</source>
        <translation>Rodzinę %{from} dołączono do tej %{day}: jej pszczoły, czerw i&#xa0;zapasy, tak jak je widziano %{seen}, liczą się razem z&#xa0;tutejszymi.</translation>
    </message>
    <message>
        <source>The boxes of %{from} are taken to stand on top, with their %{combs}. If they do not, write down which boxes the hive has now.</source>
        <translation>Przyjęto, że korpusy rodziny %{from} stoją na wierzchu, razem z&#xa0;ramkami. Jeśli nie, zapisać, jakie korpusy ma teraz ul.</translation>
    </message>
    <message>
        <source>Nothing tells how many bees %{from} brought, which was united onto this colony on %{day}: count the %{combs} they cover now.</source>
        <translation>Nic nie mówi, ile pszczół przyszło z&#xa0;rodziną %{from}, dołączoną do tej %{day}: policzyć plastry, które teraz obsiadają.</translation>
    </message>
    <message>
        <source>Nothing tells what stores %{from} brought, which was united onto this colony on %{day}: they are not counted. Weigh the hive.</source>
        <translation>Nic nie mówi, jakie zapasy przyszły z&#xa0;rodziną %{from}, dołączoną do tej %{day}: nie są liczone. Zważyć ul.</translation>
    </message>
</context>
<context>
    <name>ScaleWords</name>
    <message>
        <source>there is no time</source>
        <translation>brak godziny</translation>
    </message>
    <message>
        <source>the time cannot be read</source>
        <translation>godziny nie da się odczytać</translation>
    </message>
    <message>
        <source>there is no such day</source>
        <translation>nie ma takiego dnia</translation>
    </message>
    <message>
        <source>the time is written in another form than in the rows before</source>
        <translation>czas zapisano inaczej niż we wcześniejszych wierszach</translation>
    </message>
    <message>
        <source>there is no weight</source>
        <translation>brak masy</translation>
    </message>
    <message>
        <source>the weight is no number</source>
        <translation>masa nie jest liczbą</translation>
    </message>
    <message>
        <source>no hive weighs that</source>
        <translation>tyle żaden ul nie waży</translation>
    </message>
    <message>
        <source>a quotation mark is not closed</source>
        <translation>cudzysłów nie jest zamknięty</translation>
    </message>
    <message>
        <source>the line is too long</source>
        <translation>wiersz jest za długi</translation>
    </message>
    <message>
        <source>the clock was put back: its time contradicts the order of the rows</source>
        <translation>zegar cofnięto: czas jest sprzeczny z&#xa0;kolejnością wierszy</translation>
    </message>
    <message>
        <source>line %1 has the same time</source>
        <translation>wiersz %1 ma ten sam czas</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>wyposażenie</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>karmienie</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>miodobranie</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>nieznane</translation>
    </message>
    <message>
        <source>as much was put on and taken off again</source>
        <translation>tyle samo dostawiono i&#xa0;zdjęto</translation>
    </message>
    <message>
        <source>soon after a feed: the feeder, perhaps</source>
        <translation>krótko po karmieniu: może podkarmiaczka</translation>
    </message>
    <message>
        <source>it lost weight afterwards as syrup does</source>
        <translation>potem masa malała tak jak przy syropie</translation>
    </message>
    <message>
        <source>put on while nothing came in</source>
        <translation>dostawiono, gdy nic nie przybywało</translation>
    </message>
    <message>
        <source>put on while nectar came in</source>
        <translation>dostawiono, gdy przybywał nektar</translation>
    </message>
    <message>
        <source>more than a feeder holds</source>
        <translation>więcej, niż mieści podkarmiaczka</translation>
    </message>
    <message>
        <source>taken off after as much nectar had come in</source>
        <translation>zdjęto, gdy przybyło tyle nektaru</translation>
    </message>
    <message>
        <source>gone at once by day in a flow: a swarm, perhaps</source>
        <translation>nagle ubyło w&#xa0;dzień w&#xa0;czasie pożytku: może rój</translation>
    </message>
    <message>
        <source>while nothing was recorded</source>
        <translation>w&#xa0;czasie bez zapisu</translation>
    </message>
    <message>
        <source>nothing tells</source>
        <translation>nic na to nie wskazuje</translation>
    </message>
    <message>
        <source>nectar</source>
        <translation>nektar</translation>
    </message>
    <message>
        <source>eating</source>
        <translation>zużycie</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mokro</translation>
    </message>
    <message>
        <source>no weight on the first</source>
        <translation>brak masy pierwszego dnia miesiąca</translation>
    </message>
    <message>
        <source>no weight on the first of the next month</source>
        <translation>brak masy pierwszego dnia następnego miesiąca</translation>
    </message>
    <message>
        <source>no weight on either first</source>
        <translation>brak masy pierwszego dnia obu miesięcy</translation>
    </message>
    <message>
        <source>as said</source>
        <translation>jak podano</translation>
    </message>
    <message>
        <source>by the header</source>
        <translation>z&#xa0;nagłówka</translation>
    </message>
    <message>
        <source>by its content</source>
        <translation>z&#xa0;zawartości</translation>
    </message>
    <message>
        <source>by the size of the weights</source>
        <translation>z&#xa0;wielkości mas</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>page %1 of %2</source>
        <translation>strona %1 z&#xa0;%2</translation>
    </message>
    <message>
        <source>%1 ± %2 days</source>
        <translation>%1 ± %2 dni</translation>
    </message>
    <message>
        <source>The answer</source>
        <translation>Odpowiedź</translation>
    </message>
    <message>
        <source>The winter</source>
        <translation>Zima</translation>
    </message>
    <message>
        <source>What can be done, on the same winters</source>
        <translation>Co można zrobić, na tych samych zimach</translation>
    </message>
    <message>
        <source>What the stores rest on</source>
        <translation>Na czym opiera się ocena zapasów</translation>
    </message>
    <message>
        <source>%{Combs} that may come off</source>
        <translation>Ramki, które można odebrać</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Karmienie</translation>
    </message>
    <message>
        <source>The season here</source>
        <translation>Sezon tutaj</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Dlaczego</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Na co uważać</translation>
    </message>
    <message>
        <source>To buy and to bring</source>
        <translation>Kupić i&#xa0;zabrać</translation>
    </message>
    <message>
        <source>Everything to do, by day</source>
        <translation>Wszystko do zrobienia, według dni</translation>
    </message>
    <message>
        <source>The colonies</source>
        <translation>Rodziny</translation>
    </message>
    <message>
        <source>%{Combs} to give to a neighbour</source>
        <translation>Ramki do oddania innej rodzinie</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>Przygotować</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Źródła</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>decyzja</translation>
    </message>
    <message>
        <source>honey that may come off</source>
        <translation>miód, który można odebrać</translation>
    </message>
    <message>
        <source>sugar to feed</source>
        <translation>cukier do podania</translation>
    </message>
    <message>
        <source>fondant to feed</source>
        <translation>ciasto do podania</translation>
    </message>
    <message>
        <source>in the hive</source>
        <translation>w&#xa0;ulu</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>potrzeba</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>żelazna rezerwa</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>pszczoły</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>początek pożytków wiosennych</translation>
    </message>
    <message>
        <source>below the reserve in</source>
        <translation>poniżej żelaznej rezerwy w</translation>
    </message>
    <message>
        <source>runs out in</source>
        <translation>kończą się w</translation>
    </message>
    <message>
        <source>next visit</source>
        <translation>następna wizyta</translation>
    </message>
    <message>
        <source>together they hold</source>
        <translation>razem zawierają</translation>
    </message>
    <message>
        <source>sugar to water by weight</source>
        <translation>cukier do wody, wagowo</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>cukier</translation>
    </message>
    <message>
        <source>water</source>
        <translation>woda</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>syrop</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>ciasto</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>ostatni dzień na syrop</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>koniec pożytków</translation>
    </message>
    <message>
        <source>feeding done by</source>
        <translation>karmienie zakończyć do</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>koniec czerwienia</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>wznowienie czerwienia</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>rozwój wiosenny</translation>
    </message>
    <message>
        <source>bags of sugar</source>
        <translation>worki cukru</translation>
    </message>
    <message>
        <source>sugar costs about</source>
        <translation>cukier kosztuje około</translation>
    </message>
    <message>
        <source>last day for syrup, of the earliest colony</source>
        <translation>ostatni dzień na syrop, dla najwcześniejszej rodziny</translation>
    </message>
    <message>
        <source>what is done</source>
        <translation>co się robi</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>ile</translation>
    </message>
    <message>
        <source>stores taken or added</source>
        <translation>zapasy odebrane lub dodane</translation>
    </message>
    <message>
        <source>left when spring forage starts</source>
        <translation>zostaje na początku pożytków wiosennych</translation>
    </message>
    <message>
        <source>by</source>
        <translation>na podstawie</translation>
    </message>
    <message>
        <source>day</source>
        <translation>dzień</translation>
    </message>
    <message>
        <source>says</source>
        <translation>wynika</translation>
    </message>
    <message>
        <source>box</source>
        <translation>korpus</translation>
    </message>
    <message>
        <source>%{comb}</source>
        <translation>ramka</translation>
    </message>
    <message>
        <source>what</source>
        <translation>co</translation>
    </message>
    <message>
        <source>done</source>
        <translation>zrobione</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>rodzina</translation>
    </message>
    <message>
        <source>from</source>
        <translation>z</translation>
    </message>
    <message>
        <source>to</source>
        <translation>do</translation>
    </message>
    <message>
        <source>%{combs}</source>
        <translation>ramki</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miód</translation>
    </message>
    <message>
        <source>take honey</source>
        <translation>odebrać miód</translation>
    </message>
    <message>
        <source>leave as it is</source>
        <translation>zostawić, jak jest</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>karmić</translation>
    </message>
    <message>
        <source>unite</source>
        <translation>łączyć</translation>
    </message>
    <message>
        <source>cannot be said</source>
        <translation>nie można powiedzieć</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>zgodnie z&#xa0;prognozą</translation>
    </message>
    <message>
        <source>eating faster than planned</source>
        <translation>zjada więcej niż przewidziano</translation>
    </message>
    <message>
        <source>food out of reach: feed today</source>
        <translation>kłąb oderwany od zapasów: karmić dziś</translation>
    </message>
    <message>
        <source>dwindling</source>
        <translation>ubywa pszczół</translation>
    </message>
    <message>
        <source>less than thought</source>
        <translation>mniej niż sądzono</translation>
    </message>
    <message>
        <source>was the feed given?</source>
        <translation>czy pokarm podano?</translation>
    </message>
    <message>
        <source>more than needed</source>
        <translation>więcej niż potrzeba</translation>
    </message>
    <message>
        <source>feed now</source>
        <translation>karmić teraz</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>martwa</translation>
    </message>
    <message>
        <source>take now</source>
        <translation>odebrać teraz</translation>
    </message>
    <message>
        <source>take in spring</source>
        <translation>odebrać wiosną</translation>
    </message>
    <message>
        <source>%{combs} from a neighbour</source>
        <translation>ramki z&#xa0;innej rodziny</translation>
    </message>
    <message>
        <source>syrup, in the evening</source>
        <translation>syrop, wieczorem</translation>
    </message>
    <message>
        <source>fondant, touching the cluster</source>
        <translation>ciasto, tak by dotykało kłębu</translation>
    </message>
    <message>
        <source>check: sealed? weigh, feeder off, mouse guard on</source>
        <translation>sprawdzić: zasklepione? zważyć, zdjąć podkarmiaczkę, zabezpieczyć wylotek przed myszami</translation>
    </message>
    <message>
        <source>take honey off, before feeding or treating</source>
        <translation>odebrać miód, przed karmieniem i&#xa0;leczeniem</translation>
    </message>
    <message>
        <source>weigh when the last forage is over</source>
        <translation>zważyć po ostatnim pożytku</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>zważyć ponownie</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>wstawić ramkę z&#xa0;jajeczkami z&#xa0;innej rodziny</translation>
    </message>
    <message>
        <source>see whether queen cells are on the %{comb} with eggs</source>
        <translation>sprawdzić, czy na ramce z&#xa0;jajeczkami są mateczniki</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>policzyć osyp roztoczy i&#xa0;znów obejrzeć zapasy</translation>
    </message>
    <message>
        <source>signs of disease: call the bee inspector, move nothing</source>
        <translation>objawy choroby: zawiadomić powiatowego lekarza weterynarii, niczego nie przenosić</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>policzyć plastry obsiadane przez pszczoły</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>obejrzeć zapasy albo zważyć</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>dowolny dzień</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nieznane</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 na 100</translation>
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
        <translation>%1 i&#xa0;inne</translation>
    </message>
    <message>
        <source>case files opened</source>
        <translation>otwarto pliki danych rodzin</translation>
    </message>
    <message>
        <source>yard begun</source>
        <translation>założono pasiekę</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 taken out</source>
        <translation>usunięto: %1</translation>
    </message>
    <message>
        <source>%1: from %2 to %3</source>
        <translation>%1: z&#xa0;%2 na %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: was %2</source>
        <translation>%1: było %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>and one more</source>
        <translation>i&#xa0;jeszcze jedno</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>yard</source>
        <translation>pasieka</translation>
    </message>
    <message>
        <source>yards</source>
        <translation>pasieki</translation>
    </message>
    <message>
        <source>yard added</source>
        <translation>dodano pasiekę</translation>
    </message>
    <message>
        <source>yard changed</source>
        <translation>zmieniono pasiekę</translation>
    </message>
    <message>
        <source>yard removed</source>
        <translation>usunięto pasiekę</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>rodzina</translation>
    </message>
    <message>
        <source>colonies</source>
        <translation>rodziny</translation>
    </message>
    <message>
        <source>colony added</source>
        <translation>dodano rodzinę</translation>
    </message>
    <message>
        <source>colony changed</source>
        <translation>zmieniono rodzinę</translation>
    </message>
    <message>
        <source>colony removed</source>
        <translation>usunięto rodzinę</translation>
    </message>
    <message>
        <source>move</source>
        <translation>przeniesienie</translation>
    </message>
    <message>
        <source>moves</source>
        <translation>przeniesienia</translation>
    </message>
    <message>
        <source>move added</source>
        <translation>dodano przeniesienie</translation>
    </message>
    <message>
        <source>move changed</source>
        <translation>zmieniono przeniesienie</translation>
    </message>
    <message>
        <source>move removed</source>
        <translation>usunięto przeniesienie</translation>
    </message>
    <message>
        <source>end of a colony</source>
        <translation>odejście rodziny</translation>
    </message>
    <message>
        <source>ends of colonies</source>
        <translation>odejścia rodzin</translation>
    </message>
    <message>
        <source>end of a colony recorded</source>
        <translation>zapisano odejście rodziny</translation>
    </message>
    <message>
        <source>end of a colony changed</source>
        <translation>zmieniono odejście rodziny</translation>
    </message>
    <message>
        <source>end of a colony removed</source>
        <translation>usunięto odejście rodziny</translation>
    </message>
    <message>
        <source>hive from a day on</source>
        <translation>ul od danego dnia</translation>
    </message>
    <message>
        <source>hives from a day on</source>
        <translation>ule od danego dnia</translation>
    </message>
    <message>
        <source>new hive recorded</source>
        <translation>zapisano nowy ul</translation>
    </message>
    <message>
        <source>new hive changed</source>
        <translation>zmieniono nowy ul</translation>
    </message>
    <message>
        <source>new hive removed</source>
        <translation>usunięto nowy ul</translation>
    </message>
    <message>
        <source>look</source>
        <translation>przegląd</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>przeglądy</translation>
    </message>
    <message>
        <source>look added</source>
        <translation>dodano przegląd</translation>
    </message>
    <message>
        <source>look changed</source>
        <translation>zmieniono przegląd</translation>
    </message>
    <message>
        <source>look removed</source>
        <translation>usunięto przegląd</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>ważenie</translation>
    </message>
    <message>
        <source>weighings</source>
        <translation>ważenia</translation>
    </message>
    <message>
        <source>weighing added</source>
        <translation>dodano ważenie</translation>
    </message>
    <message>
        <source>weighing changed</source>
        <translation>zmieniono ważenie</translation>
    </message>
    <message>
        <source>weighing removed</source>
        <translation>usunięto ważenie</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>karmienie</translation>
    </message>
    <message>
        <source>feeds</source>
        <translation>karmienia</translation>
    </message>
    <message>
        <source>feed added</source>
        <translation>dodano karmienie</translation>
    </message>
    <message>
        <source>feed changed</source>
        <translation>zmieniono karmienie</translation>
    </message>
    <message>
        <source>feed removed</source>
        <translation>usunięto karmienie</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>miodobranie</translation>
    </message>
    <message>
        <source>harvests</source>
        <translation>miodobrania</translation>
    </message>
    <message>
        <source>harvest added</source>
        <translation>dodano miodobranie</translation>
    </message>
    <message>
        <source>harvest changed</source>
        <translation>zmieniono miodobranie</translation>
    </message>
    <message>
        <source>harvest removed</source>
        <translation>usunięto miodobranie</translation>
    </message>
    <message>
        <source>treatment</source>
        <translation>zabieg leczniczy</translation>
    </message>
    <message>
        <source>treatments</source>
        <translation>zabiegi lecznicze</translation>
    </message>
    <message>
        <source>treatment added</source>
        <translation>dodano zabieg leczniczy</translation>
    </message>
    <message>
        <source>treatment changed</source>
        <translation>zmieniono zabieg leczniczy</translation>
    </message>
    <message>
        <source>treatment removed</source>
        <translation>usunięto zabieg leczniczy</translation>
    </message>
    <message>
        <source>work on the hive</source>
        <translation>praca przy ulu</translation>
    </message>
    <message>
        <source>work on hives</source>
        <translation>prace przy ulach</translation>
    </message>
    <message>
        <source>work on the hive recorded</source>
        <translation>zapisano pracę przy ulu</translation>
    </message>
    <message>
        <source>work on the hive changed</source>
        <translation>zmieniono pracę przy ulu</translation>
    </message>
    <message>
        <source>work on the hive removed</source>
        <translation>usunięto pracę przy ulu</translation>
    </message>
    <message>
        <source>advice acted on</source>
        <translation>przyjęte zalecenie</translation>
    </message>
    <message>
        <source>advice kept</source>
        <translation>zachowano zalecenie</translation>
    </message>
    <message>
        <source>kept advice changed</source>
        <translation>zmieniono zachowane zalecenie</translation>
    </message>
    <message>
        <source>kept advice removed</source>
        <translation>usunięto zachowane zalecenie</translation>
    </message>
    <message>
        <source>planned visit</source>
        <translation>zaplanowana wizyta</translation>
    </message>
    <message>
        <source>planned visits</source>
        <translation>zaplanowane wizyty</translation>
    </message>
    <message>
        <source>visit planned</source>
        <translation>zaplanowano wizytę</translation>
    </message>
    <message>
        <source>planned visit changed</source>
        <translation>zmieniono zaplanowaną wizytę</translation>
    </message>
    <message>
        <source>planned visit removed</source>
        <translation>usunięto zaplanowaną wizytę</translation>
    </message>
    <message>
        <source>outcome of a winter</source>
        <translation>wynik zimowli</translation>
    </message>
    <message>
        <source>outcomes of winters</source>
        <translation>wyniki zimowli</translation>
    </message>
    <message>
        <source>outcome of the winter recorded</source>
        <translation>zapisano wynik zimowli</translation>
    </message>
    <message>
        <source>outcome of the winter changed</source>
        <translation>zmieniono wynik zimowli</translation>
    </message>
    <message>
        <source>outcome of the winter removed</source>
        <translation>usunięto wynik zimowli</translation>
    </message>
    <message>
        <source>winter sighting</source>
        <translation>rzut oka zimą</translation>
    </message>
    <message>
        <source>winter sightings</source>
        <translation>rzuty oka zimą</translation>
    </message>
    <message>
        <source>winter sighting added</source>
        <translation>dodano rzut oka zimą</translation>
    </message>
    <message>
        <source>winter sighting changed</source>
        <translation>zmieniono rzut oka zimą</translation>
    </message>
    <message>
        <source>winter sighting removed</source>
        <translation>usunięto rzut oka zimą</translation>
    </message>
    <message>
        <source>log of temperatures</source>
        <translation>zapis temperatur</translation>
    </message>
    <message>
        <source>logs of temperatures</source>
        <translation>zapisy temperatur</translation>
    </message>
    <message>
        <source>temperatures added</source>
        <translation>dodano temperatury</translation>
    </message>
    <message>
        <source>temperatures changed</source>
        <translation>zmieniono temperatury</translation>
    </message>
    <message>
        <source>temperatures removed</source>
        <translation>usunięto temperatury</translation>
    </message>
    <message>
        <source>%{comb} changed</source>
        <translation>zmieniono ramkę</translation>
    </message>
    <message>
        <source>visit made</source>
        <translation>wykonano wizytę</translation>
    </message>
    <message>
        <source>visit skipped</source>
        <translation>pominięto wizytę</translation>
    </message>
    <message>
        <source>advice made the plan</source>
        <translation>przyjęto zalecenie jako plan</translation>
    </message>
    <message>
        <source>hive changed</source>
        <translation>zmieniono ul</translation>
    </message>
    <message>
        <source>%{combs} moved</source>
        <translation>przestawiono ramki</translation>
    </message>
    <message>
        <source>colonies united</source>
        <translation>połączono rodziny</translation>
    </message>
    <message>
        <source>whole book imported</source>
        <translation>wczytano cały dziennik</translation>
    </message>
    <message>
        <source>backup restored</source>
        <translation>przywrócono kopię zapasową</translation>
    </message>
    <message>
        <source>salvaged from a damaged book</source>
        <translation>odzyskano z&#xa0;uszkodzonego dziennika</translation>
    </message>
    <message>
        <source>imported: %1</source>
        <translation>wczytano: %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>wykonano</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>cofnięto</translation>
    </message>
    <message>
        <source>undone for good</source>
        <translation>cofnięto na stałe</translation>
    </message>
</context>
<context>
    <name>WindowWords</name>
    <message>
        <source>It cannot be said yet.</source>
        <translation>Nie można jeszcze powiedzieć.</translation>
    </message>
    <message>
        <source>It cannot be said: no weather station is near enough to speak for this place.</source>
        <translation>Nie można powiedzieć: żadna stacja meteorologiczna nie leży dość blisko, by mówić o&#xa0;tym miejscu.</translation>
    </message>
    <message>
        <source>There are no bees to winter.</source>
        <translation>Nie ma pszczół, które mogłyby zimować.</translation>
    </message>
    <message>
        <source>To answer, first: how many %{combs} do the bees cover?</source>
        <translation>Żeby odpowiedzieć, trzeba najpierw wiedzieć: ile plastrów obsiadają pszczoły?</translation>
    </message>
    <message>
        <source>To answer, first: look at the %{combs}, or heft or weigh the hive.</source>
        <translation>Żeby odpowiedzieć, trzeba najpierw obejrzeć ramki, zważyć ul albo ocenić jego ciężar w&#xa0;ręku.</translation>
    </message>
    <message>
        <source>It is too early: winter stores are judged from August on.</source>
        <translation>Za wcześnie: zapasy zimowe ocenia się od sierpnia.</translation>
    </message>
    <message>
        <source>It cannot be said: this place&apos;s season cannot be told from its climate. Give the dates.</source>
        <translation>Nie można powiedzieć: z&#xa0;klimatu tego miejsca nie da się wyznaczyć sezonu. Trzeba podać daty.</translation>
    </message>
    <message>
        <source>The bees have forage again: this winter is over.</source>
        <translation>Pszczoły mają znów pożytek: ta zima minęła.</translation>
    </message>
    <message>
        <source>First %2, who is short, is to have %1 of it in %{combs}.</source>
        <translation>Najpierw %1 z&#xa0;tego w&#xa0;ramkach dla rodziny %2, której brakuje.</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Tak</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nie</translation>
    </message>
    <message>
        <source>For me</source>
        <translation>Dla mnie</translation>
    </message>
    <message>
        <source>For the bees</source>
        <translation>Dla pszczół</translation>
    </message>
    <message>
        <source>This is an error of Winterlarder, not of yours (%1). What is written down is kept. Please report it, with what you did just before.</source>
        <translation>To błąd programu Winterlarder, nie pszczelarza (%1). Wszystko, co zapisano, zostaje. Warto to zgłosić i&#xa0;opisać, co robiono tuż przedtem.</translation>
    </message>
    <message>
        <source>feed %1 sugar</source>
        <translation>podać %1 cukru</translation>
    </message>
    <message>
        <source>feed %1 fondant</source>
        <translation>podać %1 ciasta</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>amount unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (od %2 do %3)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1%</translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation>mniej niż 1</translation>
    </message>
    <message>
        <source>d MMM</source>
        <comment>a day, as QLocale::toString takes it: d. MMM in German</comment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <comment>a day, as QLocale::toString takes it: d. MMM in German</comment>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <comment>a day, as QLocale::toString takes it: d. MMM in German</comment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>a day, as QLocale::toString takes it: d. MMM in German</comment>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>call the inspector</source>
        <translation>zawiadomić lekarza wet.</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>zważyć ponownie</translation>
    </message>
    <message>
        <source>look again, then take %1</source>
        <translation>obejrzeć, potem odebrać %1</translation>
    </message>
    <message>
        <source>take %1</source>
        <translation>odebrać %1</translation>
    </message>
    <message>
        <source>give %{combs}</source>
        <translation>oddać ramki</translation>
    </message>
    <message>
        <source>hang in %{combs}</source>
        <translation>wstawić ramki</translation>
    </message>
    <message>
        <source>feed later</source>
        <translation>karmić później</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>zasklepione</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>nakrop</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>czerw</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pierzga</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>nic pilnego</translation>
    </message>
    <message>
        <source>syrup was due %1</source>
        <translation>syrop miał być %1</translation>
    </message>
    <message>
        <source>syrup today</source>
        <translation>syrop dziś</translation>
    </message>
    <message>
        <source>next syrup %1</source>
        <translation>następny syrop %1</translation>
    </message>
    <message>
        <source>fondant was due %1</source>
        <translation>ciasto miało być %1</translation>
    </message>
    <message>
        <source>fondant today</source>
        <translation>ciasto dziś</translation>
    </message>
    <message>
        <source>fondant %1</source>
        <translation>ciasto %1</translation>
    </message>
    <message>
        <source>take honey by %1</source>
        <translation>odebrać miód do %1</translation>
    </message>
    <message>
        <source>when you like</source>
        <translation>kiedykolwiek</translation>
    </message>
    <message>
        <source>unite by %1</source>
        <translation>połączyć do %1</translation>
    </message>
    <message>
        <source>unite soon</source>
        <translation>połączyć wkrótce</translation>
    </message>
    <message>
        <source>count the mites today</source>
        <translation>policzyć osyp roztoczy dziś</translation>
    </message>
    <message>
        <source>mites and a look %1</source>
        <translation>roztocza i&#xa0;przegląd %1</translation>
    </message>
    <message>
        <source>call the bee inspector</source>
        <translation>zawiadomić powiatowego lekarza weterynarii</translation>
    </message>
    <message>
        <source>weigh again %1</source>
        <translation>zważyć ponownie %1</translation>
    </message>
    <message>
        <source>heft every two weeks</source>
        <translation>unosić ul co dwa tygodnie</translation>
    </message>
    <message>
        <source>count the bees</source>
        <translation>policzyć pszczoły</translation>
    </message>
    <message>
        <source>%{combs} to it today</source>
        <translation>ramki dla niej dziś</translation>
    </message>
    <message>
        <source>%{combs} to it %1</source>
        <translation>ramki dla niej %1</translation>
    </message>
    <message>
        <source>a %{comb} with eggs to it today</source>
        <translation>ramka z&#xa0;jajeczkami dla niej dziś</translation>
    </message>
    <message>
        <source>queen cells? look %1</source>
        <translation>mateczniki? sprawdzić %1</translation>
    </message>
    <message>
        <source>look at the stores</source>
        <translation>obejrzeć zapasy</translation>
    </message>
    <message>
        <source>check today</source>
        <translation>sprawdzić dziś</translation>
    </message>
    <message>
        <source>check %1</source>
        <translation>sprawdzić %1</translation>
    </message>
    <message>
        <source>leave as it is</source>
        <translation>zostawić, jak jest</translation>
    </message>
    <message>
        <source>take %1 now</source>
        <translation>odebrać teraz %1</translation>
    </message>
    <message>
        <source>take what is over in spring</source>
        <translation>nadwyżkę odebrać wiosną</translation>
    </message>
    <message>
        <source>feed up by %1 of stores</source>
        <translation>dokarmić o&#xa0;%1 zapasów</translation>
    </message>
    <message>
        <source>give it %{combs}, %1</source>
        <translation>dać ramki, %1</translation>
    </message>
    <message>
        <source>unite it with another colony</source>
        <translation>połączyć z&#xa0;inną rodziną</translation>
    </message>
    <message>
        <source>last nectar</source>
        <translation>koniec pożytków</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>ostatni dzień na syrop</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>koniec czerwienia</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>wznowienie czerwienia</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>rozwój wiosenny</translation>
    </message>
    <message>
        <source>spring forage</source>
        <translation>pożytki wiosenne</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Does the queen lay: have you seen her, or eggs?</source>
        <translation>Czy matka czerwi: widziano ją lub jajeczka?</translation>
    </message>
    <message>
        <source>Have you counted the mites, and treated where it was needed?</source>
        <translation>Czy policzono osyp roztoczy i, gdzie trzeba, wykonano zabieg?</translation>
    </message>
    <message>
        <source>Was sugar fed or medicine given while this honey was being made?</source>
        <translation>Czy w&#xa0;czasie powstawania tego miodu podawano cukier lub lek?</translation>
    </message>
    <message>
        <source>Is the super for you, or for the bees?</source>
        <translation>Czy nadstawka jest dla pszczelarza, czy dla pszczół?</translation>
    </message>
    <message>
        <source>What does the empty hive weigh, with its drawn %{combs}?</source>
        <translation>Ile waży pusty ul z&#xa0;suszem w&#xa0;ramkach?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you?</source>
        <translation>Czy w&#xa0;okolicy będzie jeszcze jakiś pożytek?</translation>
    </message>
    <message>
        <source>How many full %{combs} have you in store?</source>
        <translation>Ile pełnych ramek jest w&#xa0;zapasie?</translation>
    </message>
    <message>
        <source>Can you get to the hive in the second half of winter, to lift and feed it?</source>
        <translation>Czy w&#xa0;drugiej połowie zimy da się dotrzeć do ula, żeby go unieść i&#xa0;podać pokarm?</translation>
    </message>
    <message>
        <source>Is there food beside the bees, without an empty %{comb} between?</source>
        <translation>Czy obok pszczół jest pokarm, bez pustego plastra pomiędzy?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you, such as %1?</source>
        <translation>Czy w&#xa0;okolicy będzie jeszcze jakiś pożytek, na przykład %1?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you, such as %1 or %2?</source>
        <translation>Czy w&#xa0;okolicy będzie jeszcze jakiś pożytek, na przykład %1 lub %2?</translation>
    </message>
    <message>
        <source>top box</source>
        <translation>górny korpus</translation>
    </message>
    <message>
        <source>bottom box</source>
        <translation>dolny korpus</translation>
    </message>
    <message>
        <source>middle box</source>
        <translation>środkowy korpus</translation>
    </message>
    <message>
        <source>box %1 from the floor</source>
        <translation>korpus %1 od dołu</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>numbers of combs</comment>
        <translation>%1 i&#xa0;%2</translation>
    </message>
    <message>
        <source>%1, all %2 %{combs}</source>
        <translation>%1, wszystkie ramki (%2)</translation>
    </message>
    <message>
        <source>%{comb} %1 from the left</source>
        <translation>ramka %1 od lewej</translation>
    </message>
    <message>
        <source>%1, %{comb} %2 from the left</source>
        <translation>%1, ramka %2 od lewej</translation>
    </message>
    <message>
        <source>%{combs} %1 from the left</source>
        <translation>ramki %1 od lewej</translation>
    </message>
    <message>
        <source>%1, %{combs} %2 from the left</source>
        <translation>%1, ramki %2 od lewej</translation>
    </message>
    <message>
        <source>without your super %1</source>
        <comment>weight</comment>
        <translation>bez nadstawki %1</translation>
    </message>
    <message>
        <source>%1 with hive and bees</source>
        <translation>z&#xa0;ulem i&#xa0;pszczołami %1</translation>
    </message>
    <message>
        <source>%1 with hive and bees, the empty hive taken as %2</source>
        <translation>z&#xa0;ulem i&#xa0;pszczołami %1, przyjmując na pusty ul %2</translation>
    </message>
    <message>
        <source>Today it should hold about %1 of stores: %2, %3.</source>
        <comment>stores, full combs, weight</comment>
        <translation>Dziś w&#xa0;ulu powinno być około %1 zapasów: %2, %3.</translation>
    </message>
    <message>
        <source>For winter, on %1: about %2 of stores, %3, %4.</source>
        <comment>day, stores, full combs, weight</comment>
        <translation>Na zimę, w&#xa0;dniu %1: około %2 zapasów, %3, %4.</translation>
    </message>
    <message>
        <source>There now: %1 bees; what stores there are nobody can say before one of the two is found wrong.</source>
        <translation>Teraz jest: %1 pszczół; ile jest zapasów, nikt nie powie, dopóki nie wiadomo, która z&#xa0;tych dwóch danych jest błędna.</translation>
    </message>
    <message>
        <source>There now: %1 of stores, %2 bees. With %3 united onto it: %4 and %5 bees.</source>
        <comment>stores, bees, colony, stores, bees</comment>
        <translation>Teraz jest: %1 zapasów, %2 pszczół. Po dołączeniu rodziny %3: %4 i&#xa0;%5 pszczół.</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>z&#xa0;tej samej pasieki</translation>
    </message>
    <message>
        <source>There now: %1 of stores.</source>
        <translation>Teraz jest: %1 zapasów.</translation>
    </message>
    <message>
        <source>There now: %1 of stores, %2 bees.</source>
        <translation>Teraz jest: %1 zapasów, %2 pszczół.</translation>
    </message>
    <message>
        <source>If nothing were fed later, in %2 simulated winters %1 or more would be left when spring forage starts; in %3 the food would run out.</source>
        <translation>Gdyby później nic nie podano, w&#xa0;%2 symulowanych zim na początku pożytków wiosennych zostałoby %1 lub więcej; w&#xa0;%3 pokarm by się skończył.</translation>
    </message>
    <message>
        <source>Left as it is, in %2 simulated winters %1 or more are left when spring forage starts; in %3 the food runs out.</source>
        <translation>Jeśli zostawić, jak jest, w&#xa0;%2 symulowanych zim na początku pożytków wiosennych zostaje %1 lub więcej; w&#xa0;%3 pokarm się kończy.</translation>
    </message>
    <message>
        <source>%1 With the honey off and nothing fed later, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Po odebraniu miodu i&#xa0;bez późniejszego karmienia tyle zostaje w&#xa0;%2, a&#xa0;pokarm kończy się w&#xa0;%3.</translation>
    </message>
    <message>
        <source>%1 With the honey off, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Po odebraniu miodu tyle zostaje w&#xa0;%2, a&#xa0;pokarm kończy się w&#xa0;%3.</translation>
    </message>
    <message>
        <source>%1 Fed as advised and with no fondant in winter, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Przy karmieniu według zalecenia i&#xa0;bez ciasta zimą tyle zostaje w&#xa0;%2, a&#xa0;pokarm kończy się w&#xa0;%3.</translation>
    </message>
    <message>
        <source>%1 Fed as advised, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Przy karmieniu według zalecenia tyle zostaje w&#xa0;%2, a&#xa0;pokarm kończy się w&#xa0;%3.</translation>
    </message>
    <message>
        <source>%1 With this feed and no other, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Przy tej dawce i&#xa0;żadnej innej tyle zostaje w&#xa0;%2, a&#xa0;pokarm kończy się w&#xa0;%3.</translation>
    </message>
    <message>
        <source>%1 (between 80 and 90, for cold may lock the bees in for %2 days)</source>
        <translation>%1 (między 80 a&#xa0;90, bo mróz może uwięzić pszczoły w&#xa0;ulu na %2 dni)</translation>
    </message>
    <message>
        <source>%1 are aimed at; the %{combs} have no room for more.</source>
        <translation>Celem jest %1; w&#xa0;plastrach nie ma miejsca na więcej.</translation>
    </message>
    <message>
        <source>%1 are aimed at; it is fewer because what is there now is not known well. If it is as thought, it is %2.</source>
        <translation>Celem jest %1; wychodzi mniej, bo nie wiadomo dokładnie, ile jest teraz. Jeśli jest tyle, ile się przyjmuje, wychodzi %2.</translation>
    </message>
    <message>
        <source>What is told of winters here counts stores only: without a queen it does not live through winter, however much there is.</source>
        <translation>Podane liczby zim uwzględniają tylko zapasy: bez matki rodzina nie przeżyje zimy, choćby zapasów było dużo.</translation>
    </message>
    <message>
        <source>%1 Taking the super off changes nothing of that, for its honey was not counted.</source>
        <translation>%1 Zdjęcie nadstawki nic w&#xa0;tym nie zmienia, bo jej miód nie był liczony.</translation>
    </message>
    <message>
        <source>The %{combs} hold %1 when winter begins: of the %2, which are today&apos;s stores and all the feed, about %3 are eaten by %4.</source>
        <comment>capacity, stores after, eaten, day</comment>
        <translation>Na początku zimy plastry mieszczą %1: z&#xa0;%2, czyli dzisiejszych zapasów i&#xa0;całego podanego pokarmu, do %4 zostanie zjedzone około %3.</translation>
    </message>
    <message>
        <source>by %1</source>
        <comment>a day</comment>
        <translation>do %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <comment>two days</comment>
        <translation>od %1 do %2</translation>
    </message>
    <message>
        <source>Up to %1 of sugar may be wanted %2, more likely none.</source>
        <translation>Może trzeba będzie podać do %1 cukru (%2), ale raczej nie.</translation>
    </message>
    <message>
        <source>Up to %1 of fondant may be wanted %2, in most winters none.</source>
        <translation>Może trzeba będzie podać do %1 ciasta (%2), w&#xa0;większości zim nie.</translation>
    </message>
    <message>
        <source>Likely to be fed %1: up to %2 of sugar, more likely %3.</source>
        <translation>Zapewne do podania %1: najwyżej %2 cukru, raczej %3.</translation>
    </message>
    <message>
        <source>Likely to be wanted %1: up to %2 of fondant, more likely %3.</source>
        <translation>Zapewne potrzebne %1: najwyżej %2 ciasta, raczej %3.</translation>
    </message>
    <message>
        <source>Likely to be fed %1: %2 to %3 of sugar, more likely %4.</source>
        <translation>Zapewne do podania %1: od %2 do %3 cukru, raczej %4.</translation>
    </message>
    <message>
        <source>Likely to be wanted %1: %2 to %3 of fondant, more likely %4.</source>
        <translation>Zapewne potrzebne %1: od %2 do %3 ciasta, raczej %4.</translation>
    </message>
    <message>
        <source>one full %{comb}</source>
        <translation>jedna pełna ramka</translation>
    </message>
    <message>
        <source>%1 full %{combs}</source>
        <translation>pełnych ramek %1</translation>
    </message>
    <message>
        <source>The bees cannot reach their food: %1, then weigh.</source>
        <translation>Pszczoły nie dosięgną pokarmu: %1, potem zważyć.</translation>
    </message>
    <message>
        <source>There may be food for less than three weeks: %1, then weigh.</source>
        <translation>Pokarmu może starczyć na mniej niż trzy tygodnie: %1, potem zważyć.</translation>
    </message>
    <message>
        <source>Too little to be safe until the next look: %1.</source>
        <translation>Za mało, by było bezpiecznie do następnego przeglądu: %1.</translation>
    </message>
    <message>
        <source>Leave it: there is enough until the next look.</source>
        <translation>Zostawić: do następnego przeglądu wystarczy.</translation>
    </message>
    <message>
        <source>The hive is full: leave it and feed nothing.</source>
        <translation>Ul jest pełny: zostawić i&#xa0;nic nie podawać.</translation>
    </message>
    <message>
        <source>Too late for syrup: %1, and wrap the hive.</source>
        <translation>Na syrop za późno: %1 i&#xa0;owinąć ul.</translation>
    </message>
    <message>
        <source>Late, but better than nothing: %1, and wrap the hive.</source>
        <translation>Późno, ale lepiej niż wcale: %1 i&#xa0;owinąć ul.</translation>
    </message>
    <message>
        <source>Stores run low: %1.</source>
        <translation>Zapasy są na wyczerpaniu: %1.</translation>
    </message>
    <message>
        <source>Leave it as it is: no honey is taken now.</source>
        <translation>Zostawić, jak jest: miodu się teraz nie odbiera.</translation>
    </message>
    <message>
        <source>Leave it as it is.</source>
        <translation>Zostawić, jak jest.</translation>
    </message>
    <message>
        <source>To answer, first: count the %{combs} covered with bees, or the seams.</source>
        <translation>Żeby odpowiedzieć, trzeba najpierw policzyć obsiadane plastry albo uliczki.</translation>
    </message>
    <message>
        <source>To answer, first: weigh both sides, or look at the %{combs}.</source>
        <translation>Żeby odpowiedzieć, trzeba najpierw zważyć z&#xa0;obu stron albo obejrzeć ramki.</translation>
    </message>
    <message>
        <source>This cannot be said: see the reasons.</source>
        <translation>Nie można powiedzieć: patrz powody.</translation>
    </message>
    <message>
        <source>Unite %1 onto it %2.</source>
        <translation>Rodzinę %1 dołączyć do tej rodziny %2.</translation>
    </message>
    <message>
        <source>Give %1 (%2) to %3.</source>
        <comment>combs, their places, colony</comment>
        <translation>Oddać rodzinie %3: %1 (%2).</translation>
    </message>
    <message>
        <source>Hang in %1 from %2 (its %3).</source>
        <comment>combs, colony, their places</comment>
        <translation>Wstawić z&#xa0;rodziny %2: %1 (tam %3).</translation>
    </message>
    <message>
        <source>another colony of the yard</source>
        <translation>z&#xa0;tej samej pasieki</translation>
    </message>
    <message>
        <source>Too few bees to winter alone: unite it with %1 %2.</source>
        <translation>Za mało pszczół, by zimowały same: połączyć z&#xa0;rodziną %1 %2.</translation>
    </message>
    <message>
        <source>Too few bees to winter alone: unite it with a healthy colony %1.</source>
        <translation>Za mało pszczół, by zimowały same: połączyć ze zdrową rodziną %1.</translation>
    </message>
    <message>
        <source>No sign of a queen: make sure she is gone, then unite the bees with %1 %2.</source>
        <translation>Nic nie wskazuje na obecność matki: upewnić się, że jej nie ma, potem połączyć pszczoły z&#xa0;rodziną %1 %2.</translation>
    </message>
    <message>
        <source>No sign of a queen: make sure she is gone, then unite the bees with a queenright colony %1.</source>
        <translation>Nic nie wskazuje na obecność matki: upewnić się, że jej nie ma, potem połączyć pszczoły z&#xa0;rodziną, która ma matkę, %1.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>dziś</translation>
    </message>
    <message>
        <source>on %1</source>
        <comment>a day</comment>
        <translation>%1</translation>
    </message>
    <message>
        <source>soon, on a warm evening, at the latest on %1</source>
        <comment>a day</comment>
        <translation>wkrótce, w&#xa0;ciepły wieczór, najpóźniej %1</translation>
    </message>
    <message>
        <source>take your super off, then %1</source>
        <translation>zdjąć własną nadstawkę, potem %1</translation>
    </message>
    <message>
        <source>feed it</source>
        <translation>karmić</translation>
    </message>
    <message>
        <source>feed %1 of sugar as syrup %2 %3</source>
        <comment>amount, ratio, day</comment>
        <translation>podać %1 cukru w&#xa0;syropie %2, %3</translation>
    </message>
    <message>
        <source>feed %1 of sugar as syrup %2, the first of %3 visits %4</source>
        <translation>podać %1 cukru w&#xa0;syropie %2 w&#xa0;%3 wizytach, pierwsza %4</translation>
    </message>
    <message>
        <source>lay a candy board of %1 on the bees %2</source>
        <translation>położyć na pszczołach płytę cukrową %1, %2</translation>
    </message>
    <message>
        <source>lay %1 of fondant on the bees %2</source>
        <translation>położyć na pszczołach %1 ciasta, %2</translation>
    </message>
    <message>
        <source>Too late for much syrup: %1, in small warm portions over the cluster, as long as they are taken.</source>
        <translation>Na większą ilość syropu jest za późno: %1, w&#xa0;małych ciepłych dawkach nad kłębem, dopóki są pobierane.</translation>
    </message>
    <message>
        <source>%1, in small portions over the cluster, on days that are warm enough.</source>
        <translation>%1, w&#xa0;małych dawkach nad kłębem, w&#xa0;dość ciepłe dni.</translation>
    </message>
    <message>
        <source>That alone will not carry it: give it full %{combs} too, from store or a healthy neighbour, or unite it while days are warm.</source>
        <translation>Samo to nie wystarczy: dać też pełne ramki, z&#xa0;zapasu lub z&#xa0;innej zdrowej rodziny, albo połączyć, póki dni są ciepłe.</translation>
    </message>
    <message>
        <source>Nothing is fed today.</source>
        <translation>Dziś nic się nie podaje.</translation>
    </message>
    <message>
        <source>On these stores it will hardly live until spring, and it is too late for syrup: on the next mild day hang full %{combs} on both sides of the bees, from store or a healthy neighbour.</source>
        <translation>Na tych zapasach raczej nie dożyje wiosny, a na syrop jest za późno: w najbliższy łagodny dzień wstawić pełne ramki po obu stronach pszczół, z magazynu albo od zdrowej sąsiedniej rodziny.</translation>
    </message>
    <message>
        <source>What is missing beyond that is best given as full %{combs}, if you have any in store or a healthy neighbour can spare them.</source>
        <translation>To, czego brakuje ponad to, najlepiej dać w pełnych ramkach, jeśli są w magazynie albo może je oddać zdrowa sąsiednia rodzina.</translation>
    </message>
    <message>
        <source>%1 Until then: %2.</source>
        <translation>%1 Do tego czasu: %2.</translation>
    </message>
    <message>
        <source>Weigh it %1.</source>
        <translation>Zważyć %1.</translation>
    </message>
    <message>
        <source>Far too many mites: treat first, and look again %1.</source>
        <translation>O wiele za dużo roztoczy: najpierw leczyć i sprawdzić ponownie %1.</translation>
    </message>
    <message>
        <source>Treat where the count of mites calls for it, and look again %1.</source>
        <translation>Leczyć, jeśli policzony osyp roztoczy tego wymaga, i&#xa0;zajrzeć ponownie %1.</translation>
    </message>
    <message>
        <source>Count the mites, and look again %1.</source>
        <translation>Policzyć osyp roztoczy i&#xa0;zajrzeć ponownie %1.</translation>
    </message>
    <message>
        <source>Later up to %1 of fondant may be wanted.</source>
        <translation>Później może być potrzebne do %1 ciasta.</translation>
    </message>
    <message>
        <source>Later %1 to %2 of fondant are likely to be wanted.</source>
        <translation>Później będzie zapewne potrzebne od %1 do %2 ciasta.</translation>
    </message>
    <message>
        <source>For winter up to %1 of sugar may be wanted, from %2.</source>
        <translation>Na zimę może być potrzebne do %1 cukru, od %2.</translation>
    </message>
    <message>
        <source>For winter about %1 of sugar will be wanted, from %2.</source>
        <translation>Na zimę będzie potrzebne około %1 cukru, od %2.</translation>
    </message>
    <message>
        <source>For winter %1 to %2 of sugar are likely to be wanted, from %3.</source>
        <translation>Na zimę będzie zapewne potrzebne od %1 do %2 cukru, od %3.</translation>
    </message>
    <message>
        <source>Signs of disease: close the hive, narrow the entrance, move nothing, call the bee inspector.</source>
        <translation>Objawy choroby: zamknąć ul, zwęzić wylotek, niczego nie przenosić, zawiadomić powiatowego lekarza weterynarii.</translation>
    </message>
    <message>
        <source>%1 and %2 contradict each other: weigh again before anything else, and check the empty weight, the roof, stones, and whether a super was left out.</source>
        <translation>%1 i&#xa0;%2 są sprzeczne: przede wszystkim zważyć ponownie i&#xa0;sprawdzić masę pustego ula, daszek, kamienie oraz to, czy nie pominięto nadstawki.</translation>
    </message>
    <message>
        <source>%1 Both are short, so this does no harm: %2.</source>
        <translation>%1 Według obu brakuje, więc to nie zaszkodzi: %2.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>evidence and what it says</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>It is light: %1, then weigh both sides.</source>
        <translation>Ul jest lekki: %1, potem zważyć z&#xa0;obu stron.</translation>
    </message>
    <message>
        <source>It is heavy: leave it.</source>
        <translation>Ul jest ciężki: zostawić.</translation>
    </message>
    <message>
        <source>A heft decides neither honey nor feed: weigh both sides.</source>
        <translation>Ocena w&#xa0;ręku nie rozstrzyga ani o&#xa0;miodzie, ani o&#xa0;karmieniu: zważyć z&#xa0;obu stron.</translation>
    </message>
    <message>
        <source>Weigh both sides first</source>
        <translation>Najpierw zważyć z&#xa0;obu stron</translation>
    </message>
    <message>
        <source>Count the full %{combs} first</source>
        <translation>Najpierw policzyć pełne ramki</translation>
    </message>
    <message>
        <source>Count the bees first</source>
        <translation>Najpierw policzyć pszczoły</translation>
    </message>
    <message>
        <source>%1. If there are about as many as is thought, %2.</source>
        <comment>look, take</comment>
        <translation>%1. Jeśli jest ich mniej więcej tyle, ile się przyjmuje, %2.</translation>
    </message>
    <message>
        <source>%1. If that bears out about %2 of stores, %3.</source>
        <comment>look, stores, take</comment>
        <translation>%1. Jeśli potwierdzi się około %2 zapasów, %3.</translation>
    </message>
    <message>
        <source>take about %1 of honey, in whole capped %{combs}</source>
        <translation>odebrać około %1 miodu, w&#xa0;całych zasklepionych ramkach</translation>
    </message>
    <message>
        <source>take one %{comb} with %1 of honey</source>
        <translation>odebrać jedną ramkę, w&#xa0;niej %1 miodu</translation>
    </message>
    <message>
        <source>take the super off: %1 of honey in %2 %{combs}</source>
        <translation>zdjąć nadstawkę: %1 miodu w&#xa0;%2 ramkach</translation>
    </message>
    <message>
        <source>take %1 supers off: %2 of honey in %3 %{combs}</source>
        <translation>zdjąć nadstawki (%1): %2 miodu w&#xa0;%3 ramkach</translation>
    </message>
    <message>
        <source>take %1 of honey in %2 %{combs}</source>
        <translation>odebrać %1 miodu w&#xa0;%2 ramkach</translation>
    </message>
    <message>
        <source>Was the feed planned from %1 on given? Write it down first. If it was not: %2</source>
        <comment>day, what</comment>
        <translation>Czy pokarm zaplanowany od %1 został podany? Najpierw trzeba to zapisać. Jeśli nie: %2</translation>
    </message>
    <message>
        <source>Something written down is in doubt: settle that first, see the reasons. Until then: %1</source>
        <translation>Coś z&#xa0;wpisów budzi wątpliwości: najpierw to wyjaśnić, patrz powody. Do tego czasu: %1</translation>
    </message>
    <message>
        <source>how many bees there are</source>
        <translation>ile jest pszczół</translation>
    </message>
    <message>
        <source>what stores there are</source>
        <translation>ile jest zapasów</translation>
    </message>
    <message>
        <source>What may be taken hangs on %1: %2.</source>
        <translation>Ile można odebrać, zależy od tego, %1: %2.</translation>
    </message>
    <message>
        <source>Look again first, for the answer hangs on %1: %2.</source>
        <translation>Najpierw zajrzeć jeszcze raz, bo odpowiedź zależy od tego, %1: %2.</translation>
    </message>
    <message>
        <source>It can wait, but what will be wanted for winter hangs on %1: %2.</source>
        <translation>To może poczekać, ale ile będzie potrzeba na zimę, zależy od tego, %1: %2.</translation>
    </message>
    <message>
        <source>Worth a better look, for whether anything is missing or to spare hangs on %1: %2.</source>
        <translation>Warto zajrzeć dokładniej, bo czy czegoś brakuje, czy jest nadwyżka, zależy od tego, %1: %2.</translation>
    </message>
    <message>
        <source>The first visit need not wait. Look again before the second, for the amount hangs on %1: %2.</source>
        <translation>Z&#xa0;pierwszą wizytą nie trzeba czekać. Przed drugą zajrzeć jeszcze raz, bo ilość zależy od tego, %1: %2.</translation>
    </message>
    <message>
        <source>This feed need not wait. What more is wanted hangs on %1: %2.</source>
        <translation>Z&#xa0;tym karmieniem nie trzeba czekać. Ile jeszcze będzie potrzeba, zależy od tego, %1: %2.</translation>
    </message>
    <message>
        <source>A better look before %1 would not change what is to be done now.</source>
        <comment>a day</comment>
        <translation>Dokładniejszy przegląd przed %1 nie zmieniłby tego, co zrobić teraz.</translation>
    </message>
    <message>
        <source>Another look would not change what is to be done: the bees need not be disturbed for it.</source>
        <translation>Kolejny przegląd nie zmieniłby tego, co trzeba zrobić: nie ma po co niepokoić pszczół.</translation>
    </message>
    <message>
        <source>A better look at the stores would change nothing now.</source>
        <translation>Dokładniejsze obejrzenie zapasów nic by teraz nie zmieniło.</translation>
    </message>
    <message>
        <source>%1 What is known to within %2 now would be known to within %3.</source>
        <comment>the sentence before, now, then</comment>
        <translation>%1 To, co teraz jest znane z&#xa0;dokładnością do %2, byłoby znane z&#xa0;dokładnością do %3.</translation>
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
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message numerus="yes">
        <source>%n miles</source>
        <translation>
            <numerusform>%n mila</numerusform>
            <numerusform>%n mile</numerusform>
            <numerusform>%n mil</numerusform>
        </translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>a day, as QLocale::toString takes it: d. MMMM yyyy in German</comment>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <comment>a month, as QLocale::toString takes it</comment>
        <translation>MMMM yyyy</translation>
    </message>
    <message>
        <source>under 1 of 100</source>
        <translation>mniej niż 1 na 100</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 na 100</translation>
    </message>
    <message>
        <source>a healthy queenright colony that is strong enough</source>
        <translation>z&#xa0;czerwiącą matką, w&#xa0;dobrym zdrowiu i&#xa0;dość silnej</translation>
    </message>
    <message>
        <source>Once it is certain that it has no queen: in the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water.</source>
        <translation>Gdy będzie pewne, że nie ma matki: wieczorem, za arkuszem gazety, jej ramki wstawić obok ramek rodziny %1, pszczoły spryskać wodą.</translation>
    </message>
    <message>
        <source>In the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water; the better queen is kept.</source>
        <translation>Wieczorem, za arkuszem gazety, jej ramki wstawić obok ramek rodziny %1, pszczoły spryskać wodą; zostaje lepsza matka.</translation>
    </message>
    <message>
        <source>Once it is certain that it has no queen: in the evening, with a sheet of newspaper between, above %1.</source>
        <translation>Gdy będzie pewne, że nie ma matki: wieczorem, przez gazetę, postawić na ulu rodziny %1.</translation>
    </message>
    <message>
        <source>In the evening, with a sheet of newspaper between, above %1; the better queen is kept.</source>
        <translation>Wieczorem, przez gazetę, postawić na ulu rodziny %1; zostaje lepsza matka.</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>ramka</translation>
    </message>
    <message>
        <source>comb</source>
        <translation>plaster</translation>
    </message>
    <message>
        <source>frames</source>
        <translation>ramki</translation>
    </message>
    <message>
        <source>combs</source>
        <translation>plastry</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Ramka</translation>
    </message>
    <message>
        <source>Comb</source>
        <translation>Plaster</translation>
    </message>
    <message>
        <source>Frames</source>
        <translation>Ramki</translation>
    </message>
    <message>
        <source>Combs</source>
        <translation>Plastry</translation>
    </message>
    <message>
        <source>a candy board</source>
        <translation>płyta cukrowa</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>ciasto</translation>
    </message>
    <message>
        <source>A candy board</source>
        <translation>Płyta cukrowa</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Ciasto</translation>
    </message>
    <message>
        <source>yellowjackets</source>
        <translation>osy</translation>
    </message>
    <message>
        <source>wasps</source>
        <translation>osy</translation>
    </message>
    <message>
        <source>the last nectar coming in</source>
        <translation>koniec pożytków</translation>
    </message>
    <message>
        <source>the end of laying</source>
        <translation>koniec czerwienia</translation>
    </message>
    <message>
        <source>the new start of laying</source>
        <translation>wznowienie czerwienia</translation>
    </message>
    <message>
        <source>the build-up</source>
        <translation>rozwój wiosenny</translation>
    </message>
    <message>
        <source>the start of spring forage</source>
        <translation>początek pożytków wiosennych</translation>
    </message>
    <message>
        <source>feeding best finished by</source>
        <translation>zalecany koniec karmienia</translation>
    </message>
    <message>
        <source>the last day for syrup</source>
        <translation>ostatni dzień na syrop</translation>
    </message>
    <message>
        <source>the day syrup is no longer taken</source>
        <translation>koniec pobierania syropu</translation>
    </message>
    <message>
        <source>the %{comb} record</source>
        <translation>zapis ramek</translation>
    </message>
    <message>
        <source>%{combs} looked at</source>
        <translation>obejrzane ramki</translation>
    </message>
    <message>
        <source>the count of full %{combs}</source>
        <translation>liczenie pełnych ramek</translation>
    </message>
    <message>
        <source>%{combs} counted</source>
        <translation>policzone ramki</translation>
    </message>
    <message>
        <source>the weight on the scale</source>
        <translation>masa na wadze</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>waga</translation>
    </message>
    <message>
        <source>the two sides lifted</source>
        <translation>ważenie z&#xa0;obu stron</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>ważenie z&#xa0;obu stron</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>ważenie z&#xa0;jednej strony</translation>
    </message>
    <message>
        <source>the heft</source>
        <translation>ocena w&#xa0;ręku</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>ocena w&#xa0;ręku</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>odebrać miód</translation>
    </message>
    <message>
        <source>take</source>
        <translation>odebrać</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>zostawić</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>karmić</translation>
    </message>
    <message>
        <source>unite</source>
        <translation>łączyć</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>nie można powiedzieć</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>zostawić, jak jest</translation>
    </message>
    <message>
        <source>take now</source>
        <translation>odebrać teraz</translation>
    </message>
    <message>
        <source>take in spring</source>
        <translation>odebrać wiosną</translation>
    </message>
    <message>
        <source>give %{combs} of stores</source>
        <translation>oddać ramki z&#xa0;pokarmem</translation>
    </message>
    <message>
        <source>give %{combs}</source>
        <translation>oddać ramki</translation>
    </message>
    <message>
        <source>unite it with another colony</source>
        <translation>połączyć z&#xa0;inną rodziną</translation>
    </message>
    <message>
        <source>lay on %1 of fondant</source>
        <translation>położyć %1 ciasta</translation>
    </message>
    <message>
        <source>feed %1 of sugar</source>
        <translation>podać %1 cukru</translation>
    </message>
    <message>
        <source>heft the hive</source>
        <translation>ocenić ciężar ula w&#xa0;ręku</translation>
    </message>
    <message>
        <source>weigh both sides of the closed hive, which takes two minutes and disturbs no bee</source>
        <translation>zważyć zamknięty ul z&#xa0;obu stron, co trwa dwie minuty i&#xa0;nie niepokoi żadnej pszczoły</translation>
    </message>
    <message>
        <source>look through the window or from above</source>
        <translation>spojrzeć przez okienko albo z&#xa0;góry</translation>
    </message>
    <message>
        <source>count the full %{combs} and the %{combs} the bees cover</source>
        <translation>policzyć pełne ramki i&#xa0;plastry obsiadane przez pszczoły</translation>
    </message>
    <message>
        <source>count the seams filled with bees, from above</source>
        <translation>policzyć z&#xa0;góry uliczki pełne pszczół</translation>
    </message>
    <message>
        <source>open the hive and look at every %{comb}</source>
        <translation>otworzyć ul i&#xa0;obejrzeć każdą ramkę</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>syrop</translation>
    </message>
    <message>
        <source>check: %{combs} sealed? weigh, feeder off, mouse guard on</source>
        <translation>sprawdzić: plastry zasklepione? zważyć, zdjąć podkarmiaczkę, zabezpieczyć wylotek przed myszami</translation>
    </message>
    <message>
        <source>check</source>
        <translation>sprawdzić</translation>
    </message>
    <message>
        <source>a confined winter</source>
        <translation>zima bez lotów</translation>
    </message>
    <message>
        <source>a winter in which bees fly in most weeks</source>
        <translation>zima, w&#xa0;której pszczoły latają w&#xa0;większości tygodni</translation>
    </message>
    <message>
        <source>no winter, a dearth between the last nectar of autumn and the first of spring</source>
        <translation>bez zimy, okres bezpożytkowy między końcem nektaru jesienią a&#xa0;początkiem wiosną</translation>
    </message>
    <message>
        <source>no season can be derived; give the dates yourself</source>
        <translation>sezonu nie da się wyznaczyć; trzeba podać jego daty</translation>
    </message>
    <message>
        <source>none</source>
        <translation>brak</translation>
    </message>
    <message>
        <source>climate</source>
        <translation>klimat</translation>
    </message>
    <message>
        <source>climate, moved</source>
        <translation>klimat, przesunięte</translation>
    </message>
    <message>
        <source>case</source>
        <translation>podane w&#xa0;danych</translation>
    </message>
</context>
<context>
    <name>YardPlan</name>
    <message numerus="yes">
        <source>%n to feed</source>
        <translation>
            <numerusform>%n do karmienia</numerusform>
            <numerusform>%n do karmienia</numerusform>
            <numerusform>%n do karmienia</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to unite</source>
        <translation>
            <numerusform>%n do łączenia</numerusform>
            <numerusform>%n do łączenia</numerusform>
            <numerusform>%n do łączenia</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with honey to spare</source>
        <translation>
            <numerusform>%n z&#xa0;nadwyżką miodu</numerusform>
            <numerusform>%n z&#xa0;nadwyżką miodu</numerusform>
            <numerusform>%n z&#xa0;nadwyżką miodu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to leave alone</source>
        <translation>
            <numerusform>%n może zostać, jak jest</numerusform>
            <numerusform>%n mogą zostać, jak są</numerusform>
            <numerusform>%n może zostać, jak jest</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not known enough</source>
        <translation>
            <numerusform>%n zbyt mało znana</numerusform>
            <numerusform>%n zbyt mało znane</numerusform>
            <numerusform>%n zbyt mało znanych</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on course</source>
        <translation>
            <numerusform>%n zgodnie z&#xa0;prognozą</numerusform>
            <numerusform>%n zgodnie z&#xa0;prognozą</numerusform>
            <numerusform>%n zgodnie z&#xa0;prognozą</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n eating faster than planned</source>
        <translation>
            <numerusform>%n zjada więcej niż przewidziano</numerusform>
            <numerusform>%n zjadają więcej niż przewidziano</numerusform>
            <numerusform>%n zjada więcej niż przewidziano</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with the food out of reach</source>
        <translation>
            <numerusform>%n z&#xa0;kłębem oderwanym od zapasów</numerusform>
            <numerusform>%n z&#xa0;kłębem oderwanym od zapasów</numerusform>
            <numerusform>%n z&#xa0;kłębem oderwanym od zapasów</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dwindling</source>
        <translation>
            <numerusform>%n słabnie</numerusform>
            <numerusform>%n słabną</numerusform>
            <numerusform>%n słabnie</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with less than was thought</source>
        <translation>
            <numerusform>%n z&#xa0;mniejszymi zapasami, niż sądzono</numerusform>
            <numerusform>%n z&#xa0;mniejszymi zapasami, niż sądzono</numerusform>
            <numerusform>%n z&#xa0;mniejszymi zapasami, niż sądzono</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with a feed not written down</source>
        <translation>
            <numerusform>%n z&#xa0;niezapisanym karmieniem</numerusform>
            <numerusform>%n z&#xa0;niezapisanym karmieniem</numerusform>
            <numerusform>%n z&#xa0;niezapisanym karmieniem</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with more than is needed</source>
        <translation>
            <numerusform>%n z&#xa0;większymi zapasami, niż potrzeba</numerusform>
            <numerusform>%n z&#xa0;większymi zapasami, niż potrzeba</numerusform>
            <numerusform>%n z&#xa0;większymi zapasami, niż potrzeba</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to be fed now</source>
        <translation>
            <numerusform>%n do karmienia teraz</numerusform>
            <numerusform>%n do karmienia teraz</numerusform>
            <numerusform>%n do karmienia teraz</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dead</source>
        <translation>
            <numerusform>%n martwa</numerusform>
            <numerusform>%n martwe</numerusform>
            <numerusform>%n martwych</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n that must be weighed again</source>
        <translation>
            <numerusform>%n do ponownego ważenia</numerusform>
            <numerusform>%n do ponownego ważenia</numerusform>
            <numerusform>%n do ponownego ważenia</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n being worked out</source>
        <translation>
            <numerusform>%n w&#xa0;trakcie obliczeń</numerusform>
            <numerusform>%n w&#xa0;trakcie obliczeń</numerusform>
            <numerusform>%n w&#xa0;trakcie obliczeń</numerusform>
        </translation>
    </message>
    <message>
        <source>No colony stands in this yard yet.</source>
        <translation>W&#xa0;tej pasiece nie stoi jeszcze żadna rodzina.</translation>
    </message>
    <message>
        <source>One colony: %1.</source>
        <translation>Jedna rodzina: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n colonies: %1.</source>
        <translation>
            <numerusform>%n rodzina: %1.</numerusform>
            <numerusform>%n rodziny: %1.</numerusform>
            <numerusform>%n rodzin: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.</source>
        <translation>Kupić %1 białego cukru; ostatni syrop musi być pobrany do %2. Karmić wieczorem, wszystkie rodziny wyznaczone na dany dzień tego samego wieczoru.</translation>
    </message>
    <message>
        <source>Move the %{combs} first, then buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.</source>
        <translation>Najpierw przestawić ramki, potem kupić %1 białego cukru; ostatni syrop musi być pobrany do %2. Karmić wieczorem, wszystkie rodziny wyznaczone na dany dzień tego samego wieczoru.</translation>
    </message>
    <message>
        <source>Planned without moving %{combs} between hives.</source>
        <translation>Zaplanowano bez przestawiania ramek między ulami.</translation>
    </message>
    <message>
        <source>one %{comb} (%1) from %2 to %3: %4</source>
        <translation>jedna ramka (%1) z&#xa0;rodziny %2 do rodziny %3: %4</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} (%1) from %2 to %3: %4</source>
        <translation>
            <numerusform>%n ramka (%1) z&#xa0;rodziny %2 do rodziny %3: %4</numerusform>
            <numerusform>%n ramki (%1) z&#xa0;rodziny %2 do rodziny %3: %4</numerusform>
            <numerusform>%n ramek (%1) z&#xa0;rodziny %2 do rodziny %3: %4</numerusform>
        </translation>
    </message>
    <message>
        <source>none: with signs of disease in the yard nothing moves between hives</source>
        <translation>brak: przy objawach choroby w&#xa0;pasiece nic się między ulami nie przestawia</translation>
    </message>
    <message>
        <source>none: %{combs} stay in their hives</source>
        <translation>brak: ramki zostają w&#xa0;swoich ulach</translation>
    </message>
    <message>
        <source>none</source>
        <translation>brak</translation>
    </message>
    <message>
        <source>costs %1</source>
        <translation>kosztuje %1</translation>
    </message>
    <message>
        <source>one bag of %1</source>
        <translation>jeden worek %1</translation>
    </message>
    <message numerus="yes">
        <source>%n bags of %1</source>
        <translation>
            <numerusform>%n worek po %1</numerusform>
            <numerusform>%n worki po %1</numerusform>
            <numerusform>%n worków po %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; the sugar itself costs %2</source>
        <translation>%1; sam cukier kosztuje %2</translation>
    </message>
</context>
<context>
    <name>say::Help</name>
    <message>
        <source>Options</source>
        <comment>heading of the help</comment>
        <translation>Opcje</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <comment>heading of the help</comment>
        <translation>Polecenia</translation>
    </message>
</context>
<context>
    <name>winterlarder::Message</name>
    <message>
        <source>that would be {} bees</source>
        <translation>byłoby to {} pszczół</translation>
    </message>
    <message>
        <source>at most {} bees</source>
        <translation>najwyżej {} pszczół</translation>
    </message>
    <message>
        <source>how much was fed on {} is not said in the measure of its kind</source>
        <translation>ilości podanej {} nie wyrażono w mierze tego rodzaju pokarmu</translation>
    </message>
    <message>
        <source>syrup in kg of sugar or in litres, fondant in kg of fondant, dry sugar in kg of sugar</source>
        <translation>syrop w kg cukru lub w litrach, ciasto w kg ciasta, suchy cukier w kg cukru</translation>
    </message>
    <message>
        <source>it was moved to the other half of the earth after {}</source>
        <translation>po {} przeniesiono ją na drugą półkulę</translation>
    </message>
    <message>
        <source>a look after the move: the winter there is another one</source>
        <translation>przegląd po przeniesieniu: zima jest tam inna</translation>
    </message>
    <message>
        <source>there is no hive format {}</source>
        <translation>nie ma typu ula {}</translation>
    </message>
    <message>
        <source>one that winterlarder-cli hive-formats lists</source>
        <translation>jeden z podanych przez winterlarder-cli hive-formats</translation>
    </message>
    <message>
        <source>the hive has no box</source>
        <translation>ul nie ma korpusu</translation>
    </message>
    <message>
        <source>its boxes, from the floor up</source>
        <translation>jego korpusy, od dennicy w górę</translation>
    </message>
    <message>
        <source>no station &quot;{}&quot;</source>
        <translation>nie ma stacji &quot;{}&quot;</translation>
    </message>
    <message>
        <source>an id that the command &quot;stations&quot; lists</source>
        <translation>id podane przez polecenie &quot;stations&quot;</translation>
    </message>
    <message>
        <source>&quot;{}&quot; {} is not a day of the winter asked about</source>
        <translation>&quot;{}&quot; {} nie jest dniem zimy, na którą liczymy</translation>
    </message>
    <message>
        <source>a day from {} to {}</source>
        <translation>dzień od {} do {}</translation>
    </message>
    <message>
        <source>{} (at {}:{})</source>
        <translation>{} (w {}:{})</translation>
    </message>
    <message>
        <source>there is no such book</source>
        <translation>nie ma takiego dziennika</translation>
    </message>
    <message>
        <source>check the name, or make a new book</source>
        <translation>sprawdzić nazwę albo założyć nowy dziennik</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation>to nie jest plik</translation>
    </message>
    <message>
        <source>choose a .larder file</source>
        <translation>wybrać plik .larder</translation>
    </message>
    <message>
        <source>this is not a book</source>
        <translation>to nie jest dziennik</translation>
    </message>
    <message>
        <source>the book has no version</source>
        <translation>dziennik nie ma wersji</translation>
    </message>
    <message>
        <source>salvage what is readable into a new book</source>
        <translation>odzyskać to, co da się odczytać, do nowego dziennika</translation>
    </message>
    <message>
        <source>do not use it; salvage takes over what is readable</source>
        <translation>nie używać go; salvage przejmuje to, co da się odczytać</translation>
    </message>
    <message>
        <source>there is a file of that name</source>
        <translation>jest już plik o tej nazwie</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>wybrać inną nazwę</translation>
    </message>
    <message>
        <source>The book was opened for reading only.</source>
        <translation>Dziennik otwarto tylko do odczytu.</translation>
    </message>
    <message>
        <source>The book lies where nothing can be written.</source>
        <translation>Dziennik leży w miejscu, gdzie nie można zapisywać.</translation>
    </message>
    <message>
        <source>The book was made by a newer version of this program; this one only reads it.</source>
        <translation>Dziennik utworzyła nowsza wersja tego programu; ta może go tylko czytać.</translation>
    </message>
    <message>
        <source>The disk is full, so the book can only be read.</source>
        <translation>Dysk jest pełny, więc dziennik można tylko czytać.</translation>
    </message>
    <message>
        <source>The book&apos;s file has a second name (a hard link), so it is only read: a change under one name could not be taken back under the other. Make a copy and write in that, or remove the other name.</source>
        <translation>Plik dziennika ma drugą nazwę (dowiązanie twarde), więc jest tylko czytany: zmiany pod jedną nazwą nie dałoby się cofnąć pod drugą. Zrobić kopię i pisać w niej albo usunąć drugą nazwę.</translation>
    </message>
    <message>
        <source>The book is open elsewhere: {}.</source>
        <translation>Dziennik jest otwarty gdzie indziej: {}.</translation>
    </message>
    <message>
        <source>nothing was changed</source>
        <translation>niczego nie zmieniono</translation>
    </message>
    <message>
        <source>a newer version of this program made it</source>
        <translation>utworzyła to nowsza wersja tego programu</translation>
    </message>
    <message>
        <source>restore with that version</source>
        <translation>przywrócić tamtą wersją</translation>
    </message>
    <message>
        <source>{} {}: no entry has that number</source>
        <translation>{} {}: żaden wpis nie ma tego numeru</translation>
    </message>
    <message>
        <source>1 to {}</source>
        <translation>od 1 do {}</translation>
    </message>
    <message>
        <source>{} {}: there is no {} {}</source>
        <translation>{} {}: nie ma takiego wpisu: {} {}</translation>
    </message>
    <message>
        <source>name one that is in the book</source>
        <translation>podać taki, który jest w dzienniku</translation>
    </message>
    <message>
        <source>there is no {} called &quot;{}&quot;</source>
        <translation>nie ma takiego wpisu: {} &quot;{}&quot;</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>sprawdzić nazwę</translation>
    </message>
    <message>
        <source>{} of them are called &quot;{}&quot;</source>
        <translation>tę samą nazwę mają wpisy w liczbie {}: &quot;{}&quot;</translation>
    </message>
    <message>
        <source>rename all but one</source>
        <translation>zmienić nazwy wszystkich oprócz jednego</translation>
    </message>
    <message>
        <source>there is no colony {}</source>
        <translation>nie ma rodziny {}</translation>
    </message>
    <message>
        <source>check its number</source>
        <translation>sprawdzić jej numer</translation>
    </message>
    <message>
        <source>holds a line break</source>
        <translation>zawiera koniec wiersza</translation>
    </message>
    <message>
        <source>holds a control character ({})</source>
        <translation>zawiera znak sterujący ({})</translation>
    </message>
    <message>
        <source>holds a mark that turns the direction of reading ({})</source>
        <translation>zawiera znak odwracający kierunek czytania ({})</translation>
    </message>
    <message>
        <source>is only blanks</source>
        <translation>to same odstępy</translation>
    </message>
    <message>
        <source>nothing was changed; make room and do it again</source>
        <translation>niczego nie zmieniono; zrobić miejsce i powtórzyć</translation>
    </message>
    <message>
        <source>{} is outside what may be entered</source>
        <translation>{} wykracza poza to, co można wpisać</translation>
    </message>
    <message>
        <source>see the field&apos;s limits</source>
        <translation>patrz granice pola</translation>
    </message>
    <message>
        <source>an entry refers to one that is not in the book</source>
        <translation>wpis odsyła do takiego, którego nie ma w dzienniku</translation>
    </message>
    <message>
        <source>enter the other one first</source>
        <translation>najpierw wpisać tamten</translation>
    </message>
    <message>
        <source>the change breaks a rule of the file: {}</source>
        <translation>zmiana łamie regułę pliku: {}</translation>
    </message>
    <message>
        <source>the last change was interrupted and has to be taken back before the book can be read</source>
        <translation>ostatnia zmiana została przerwana i trzeba ją cofnąć, zanim dziennik da się czytać</translation>
    </message>
    <message>
        <source>open the book again where it can be written; keep {}-journal beside it, a copy without it is damaged</source>
        <translation>otworzyć dziennik jeszcze raz tam, gdzie można w nim zapisywać; {}-journal zostawić obok, kopia bez niego jest uszkodzona</translation>
    </message>
    <message>
        <source>the file was moved, removed or replaced by another while the book was open</source>
        <translation>gdy dziennik był otwarty, plik przeniesiono, usunięto albo zastąpiono innym</translation>
    </message>
    <message>
        <source>nothing was changed; open the book again and see what it holds</source>
        <translation>niczego nie zmieniono; otworzyć dziennik jeszcze raz i sprawdzić, co zawiera</translation>
    </message>
    <message>
        <source>the book cannot be written here</source>
        <translation>w dzienniku nie można tu zapisywać</translation>
    </message>
    <message>
        <source>nothing was changed; copy it to where it can</source>
        <translation>niczego nie zmieniono; skopiować go tam, gdzie można</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>dysk jest pełny</translation>
    </message>
    <message>
        <source>the disk does not read or write as it should</source>
        <translation>dysk nie czyta lub nie zapisuje, jak powinien</translation>
    </message>
    <message>
        <source>nothing was changed; check the disk and do it again</source>
        <translation>niczego nie zmieniono; sprawdzić dysk i powtórzyć</translation>
    </message>
    <message>
        <source>another program is using the book</source>
        <translation>dziennika używa inny program</translation>
    </message>
    <message>
        <source>nothing was changed; do it again in a moment</source>
        <translation>niczego nie zmieniono; za chwilę powtórzyć</translation>
    </message>
    <message>
        <source>the book is damaged</source>
        <translation>dziennik jest uszkodzony</translation>
    </message>
    <message>
        <source>salvage what is readable into a new book, or restore a backup</source>
        <translation>odzyskać to, co da się odczytać, do nowego dziennika albo przywrócić kopię zapasową</translation>
    </message>
    <message>
        <source>the book or its journal cannot be opened</source>
        <translation>nie można otworzyć dziennika lub jego pliku journal</translation>
    </message>
    <message>
        <source>check the folder and its permissions</source>
        <translation>sprawdzić folder i uprawnienia do niego</translation>
    </message>
    <message>
        <source>the book is damaged: reading it does not end</source>
        <translation>dziennik jest uszkodzony: odczyt się nie kończy</translation>
    </message>
    <message>
        <source>a text is too long</source>
        <translation>tekst jest za długi</translation>
    </message>
    <message>
        <source>shorten it</source>
        <translation>skrócić go</translation>
    </message>
    <message>
        <source>the book cannot be used: {}</source>
        <translation>dziennika nie można używać: {}</translation>
    </message>
    <message>
        <source>the last change was interrupted and has to be taken back before the book can be read, but {}</source>
        <translation>ostatnia zmiana została przerwana i trzeba ją cofnąć, zanim dziennik da się czytać, ale {}</translation>
    </message>
    <message>
        <source>{}; a copy without {}-journal beside it is damaged</source>
        <translation>{}; kopia bez {}-journal obok jest uszkodzona</translation>
    </message>
    <message>
        <source>it is open elsewhere: {}</source>
        <translation>jest otwarty gdzie indziej: {}</translation>
    </message>
    <message>
        <source>close it there</source>
        <translation>zamknąć go tam</translation>
    </message>
    <message>
        <source>make room and open it again</source>
        <translation>zrobić miejsce i otworzyć jeszcze raz</translation>
    </message>
    <message>
        <source>nothing can be written here</source>
        <translation>nie można tu zapisywać</translation>
    </message>
    <message>
        <source>open it where its file and folder can be written</source>
        <translation>otworzyć go tam, gdzie można zapisywać w jego pliku i folderze</translation>
    </message>
    <message>
        <source>its file cannot be written here</source>
        <translation>w jego pliku nie można tu zapisywać</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>nieznany</translation>
    </message>
    <message>
        <source>by {}</source>
        <translation>użytkownik {}</translation>
    </message>
    <message>
        <source>by {} on {}</source>
        <translation>użytkownik {}, komputer {}</translation>
    </message>
    <message>
        <source>by {} since {}</source>
        <translation>użytkownik {}, od {}</translation>
    </message>
    <message>
        <source>by {} on {} since {}</source>
        <translation>użytkownik {}, komputer {}, od {}</translation>
    </message>
    <message>
        <source>there is no {} {}</source>
        <translation>nie ma takiego wpisu: {} {}</translation>
    </message>
    <message>
        <source>it may have been removed meanwhile</source>
        <translation>może został w międzyczasie usunięty</translation>
    </message>
    <message>
        <source>look {} has no comb {}</source>
        <translation>przegląd {} nie ma ramki {}</translation>
    </message>
    <message>
        <source>count the combs it lists</source>
        <translation>policzyć ramki, które zawiera</translation>
    </message>
    <message>
        <source>yard {} is in use by {} colonies and {} moves</source>
        <translation>pasieka {} jest używana; rodziny: {}, przeniesienia: {}</translation>
    </message>
    <message>
        <source>move or remove its colonies first</source>
        <translation>najpierw przenieść lub usunąć jej rodziny</translation>
    </message>
    <message>
        <source>{} {}: {} is damaged</source>
        <translation>{} {}: uszkodzone jest {}</translation>
    </message>
    <message>
        <source>salvage the book</source>
        <translation>odzyskać dziennik (salvage)</translation>
    </message>
    <message>
        <source>{} to {}{}</source>
        <translation>od {} do {}{}</translation>
    </message>
    <message>
        <source>{}{} or more</source>
        <translation>{}{} lub więcej</translation>
    </message>
    <message>
        <source>{}{} or less</source>
        <translation>{}{} lub mniej</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>liczba</translation>
    </message>
    <message>
        <source>{} is not a number</source>
        <translation>{} nie jest liczbą</translation>
    </message>
    <message>
        <source>{} is {}</source>
        <translation>{} to {}</translation>
    </message>
    <message>
        <source>{} is not readable text</source>
        <translation>{} nie jest czytelnym tekstem</translation>
    </message>
    <message>
        <source>text in UTF-8 without zero bytes</source>
        <translation>tekst w UTF-8 bez bajtów zerowych</translation>
    </message>
    <message>
        <source>{} is empty</source>
        <translation>{} jest puste</translation>
    </message>
    <message>
        <source>write something</source>
        <translation>coś wpisać</translation>
    </message>
    <message>
        <source>{} has {} characters</source>
        <translation>{} ma {} znaków</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>najwyżej {}</translation>
    </message>
    <message>
        <source>{} is of another type</source>
        <translation>{} jest innego typu</translation>
    </message>
    <message>
        <source>{} is &quot;{}&quot;</source>
        <translation>{} to &quot;{}&quot;</translation>
    </message>
    <message>
        <source>one line of letters, digits, blanks and signs</source>
        <translation>jeden wiersz liter, cyfr, odstępów i znaków</translation>
    </message>
    <message>
        <source>{} is missing</source>
        <translation>brakuje {}</translation>
    </message>
    <message>
        <source>give it</source>
        <translation>podać to</translation>
    </message>
    <message>
        <source>text</source>
        <translation>tekst</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true lub false</translation>
    </message>
    <message>
        <source>month and day such as 05-19, not 02-29</source>
        <translation>miesiąc i dzień, np. 05-19, nie 02-29</translation>
    </message>
    <message>
        <source>a whole number, 0 to 18446744073709551615</source>
        <translation>liczba całkowita od 0 do 18446744073709551615</translation>
    </message>
    <message>
        <source>weekdays such as 1,4,6</source>
        <translation>dni tygodnia, np. 1,4,6</translation>
    </message>
    <message>
        <source>one of {}</source>
        <translation>jedno z: {}</translation>
    </message>
    <message>
        <source>{} is of a type this program does not know</source>
        <translation>{} jest typu, którego ten program nie zna</translation>
    </message>
    <message>
        <source>step {} of the history is damaged</source>
        <translation>krok {} historii jest uszkodzony</translation>
    </message>
    <message>
        <source>{} for {} {}</source>
        <translation>{} (to {} {})</translation>
    </message>
    <message>
        <source>write {}</source>
        <translation>wpisać {}</translation>
    </message>
    <message>
        <source>write {}, or {}</source>
        <translation>wpisać {} lub {}</translation>
    </message>
    <message>
        <source>the mean temperature of {} is {} degC</source>
        <translation>średnia temperatura, {}: {} degC</translation>
    </message>
    <message>
        <source>monthly means lie between {} and {} degC</source>
        <translation>średnie miesięczne leżą między {} a {} degC</translation>
    </message>
    <message>
        <source>the {} is {} K</source>
        <translation>{} wynosi {} K</translation>
    </message>
    <message>
        <source>it is 0 or more</source>
        <translation>wynosi 0 lub więcej</translation>
    </message>
    <message>
        <source>the correlation of consecutive days is {}</source>
        <translation>korelacja kolejnych dni wynosi {}</translation>
    </message>
    <message>
        <source>it lies between -1 and 1</source>
        <translation>leży między -1 a 1</translation>
    </message>
    <message>
        <source>the latitude is {}</source>
        <translation>szerokość geograficzna wynosi {}</translation>
    </message>
    <message>
        <source>it lies between -90 and 90 degrees</source>
        <translation>leży między -90 a 90 stopni</translation>
    </message>
    <message>
        <source>the mean of {} is {} degC</source>
        <translation>średnia, {}: {} degC</translation>
    </message>
    <message>
        <source>daily means lie between {} and {} degC</source>
        <translation>średnie dobowe leżą między {} a {} degC</translation>
    </message>
    <message>
        <source>{} is there twice</source>
        <translation>{} jest dwa razy</translation>
    </message>
    <message>
        <source>each date stands once</source>
        <translation>każda data raz</translation>
    </message>
    <message>
        <source>the record has {} days</source>
        <translation>zapis ma {} dni</translation>
    </message>
    <message>
        <source>at least {} are needed</source>
        <translation>potrzeba co najmniej {}</translation>
    </message>
    <message>
        <source>{} has {} days in all</source>
        <translation>{}: razem {} dni</translation>
    </message>
    <message>
        <source>each month needs at least {}</source>
        <translation>każdy miesiąc wymaga co najmniej {}</translation>
    </message>
    <message>
        <source>season day {}</source>
        <translation>dzień sezonu {}</translation>
    </message>
    <message>
        <source>{} is outside the winter asked about</source>
        <translation>{} leży poza zimą, na którą liczymy</translation>
    </message>
    <message>
        <source>its dates lie between {} and {}</source>
        <translation>jej daty leżą między {} a {}</translation>
    </message>
    <message>
        <source>{} is given alone where laying never stops by the climate</source>
        <translation>{} podano samo, a według klimatu czerwienie nigdy nie ustaje</translation>
    </message>
    <message>
        <source>give {} as well, or neither</source>
        <translation>podać też {} albo żadnego</translation>
    </message>
    <message>
        <source>{} is too early where laying never stops</source>
        <translation>{} jest za wcześnie tam, gdzie czerwienie nigdy nie ustaje</translation>
    </message>
    <message>
        <source>it is on or after {}</source>
        <translation>najwcześniej {}</translation>
    </message>
    <message>
        <source>{} is before {}</source>
        <translation>{} jest przed {}</translation>
    </message>
    <message>
        <source>{} is not earlier than {}</source>
        <translation>{} jest nie wcześniej niż {}</translation>
    </message>
    <message>
        <source>{} is less than {} days after {}</source>
        <translation>{} jest mniej niż {} dni po {}</translation>
    </message>
    <message>
        <source>{} is at least {} days after {}</source>
        <translation>{} jest co najmniej {} dni po {}</translation>
    </message>
    <message>
        <source>{} leaves no room for {} within the winter</source>
        <translation>{} nie zostawia w zimie miejsca na {}</translation>
    </message>
    <message>
        <source>give {} as well, or another {}</source>
        <translation>podać też {} albo inne {}</translation>
    </message>
    <message>
        <source>the longitude is {}</source>
        <translation>długość geograficzna wynosi {}</translation>
    </message>
    <message>
        <source>it lies between -180 and 180 degrees</source>
        <translation>leży między -180 a 180 stopni</translation>
    </message>
    <message>
        <source>the elevation is {} m</source>
        <translation>wysokość wynosi {} m</translation>
    </message>
    <message>
        <source>it lies between {} and {} m</source>
        <translation>leży między {} a {} m</translation>
    </message>
    <message>
        <source>there is no table &quot;{}&quot;</source>
        <translation>nie ma tabeli &quot;{}&quot;</translation>
    </message>
    <message>
        <source>unknown column {}</source>
        <translation>nieznana kolumna {}</translation>
    </message>
    <message>
        <source>the column owner is missing</source>
        <translation>brakuje kolumny owner</translation>
    </message>
    <message>
        <source>the entry each row belongs to, by its number, or a colony by its name</source>
        <translation>wpis, do którego należy każdy wiersz, według numeru albo rodzina według nazwy</translation>
    </message>
    <message>
        <source>give each number once</source>
        <translation>każdy numer podać raz</translation>
    </message>
    <message>
        <source>the place is not a number</source>
        <translation>miejsce nie jest liczbą</translation>
    </message>
    <message>
        <source>a whole number from 0</source>
        <translation>liczba całkowita od 0</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number of a {}</source>
        <translation>&quot;{}&quot; nie jest numerem dla: {}</translation>
    </message>
    <message>
        <source>such as #7</source>
        <translation>np. #7</translation>
    </message>
    <message>
        <source>there is no {} &quot;{}&quot;</source>
        <translation>nie ma takiego wpisu: {} &quot;{}&quot;</translation>
    </message>
    <message>
        <source>name one that is in the book, or enter it first</source>
        <translation>podać taki, który jest w dzienniku, albo najpierw go wpisać</translation>
    </message>
    <message>
        <source>say which, such as #{}</source>
        <translation>podać który, np. #{}</translation>
    </message>
    <message>
        <source>the document is not an object</source>
        <translation>dokument nie jest obiektem</translation>
    </message>
    <message>
        <source>begin it with {</source>
        <translation>zacząć go od {</translation>
    </message>
    <message>
        <source>unknown key {}</source>
        <translation>nieznany klucz {}</translation>
    </message>
    <message>
        <source>the key &quot;larder&quot; is missing</source>
        <translation>brakuje klucza &quot;larder&quot;</translation>
    </message>
    <message>
        <source>&quot;larder&quot;: {}</source>
        <translation>&quot;larder&quot;: {}</translation>
    </message>
    <message>
        <source>this form of document is not known</source>
        <translation>ta postać dokumentu nie jest znana</translation>
    </message>
    <message>
        <source>a list of entries</source>
        <translation>lista wpisów</translation>
    </message>
    <message>
        <source>{} is not an object</source>
        <translation>{} nie jest obiektem</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>obiekt</translation>
    </message>
    <message>
        <source>{} {} is there twice</source>
        <translation>{} {} jest dwa razy</translation>
    </message>
    <message>
        <source>number each once</source>
        <translation>każdy numer raz</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is {}</source>
        <translation>&quot;{}&quot; to {}</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>an item of &quot;{}&quot; is {}</source>
        <translation>element &quot;{}&quot; to {}</translation>
    </message>
    <message>
        <source>name one that is in the document</source>
        <translation>podać taki, który jest w dokumencie</translation>
    </message>
    <message>
        <source>a case is {}</source>
        <translation>dane rodziny to {}</translation>
    </message>
    <message>
        <source>one JSON object</source>
        <translation>jeden obiekt JSON</translation>
    </message>
    <message>
        <source>the day as YYYY-MM-DD</source>
        <translation>dzień jako YYYY-MM-DD</translation>
    </message>
    <message>
        <source>{} {} is later than {}</source>
        <translation>{} {} jest później niż {}</translation>
    </message>
    <message>
        <source>a day not later than as_of</source>
        <translation>dzień nie późniejszy niż as_of</translation>
    </message>
    <message>
        <source>{} {} is {} days before {}</source>
        <translation>{} {} jest {} dni przed {}</translation>
    </message>
    <message>
        <source>at most {} days before as_of: look again, or ask for an earlier day</source>
        <translation>najwyżej {} dni przed as_of: zrobić nowy przegląd albo pytać o wcześniejszy dzień</translation>
    </message>
    <message>
        <source>syrup is given as sugar_kg, or as syrup_l with its ratio</source>
        <translation>syrop podaje się jako sugar_kg albo jako syrup_l ze stosunkiem</translation>
    </message>
    <message>
        <source>{} does not go with syrup</source>
        <translation>{} nie pasuje do syropu</translation>
    </message>
    <message>
        <source>sugar_kg, or syrup_l with its ratio</source>
        <translation>sugar_kg albo syrup_l ze stosunkiem</translation>
    </message>
    <message>
        <source>sugar to water by mass, such as &quot;3:2&quot;</source>
        <translation>cukier do wody, wagowo, np. &quot;3:2&quot;</translation>
    </message>
    <message>
        <source>the kilograms given</source>
        <translation>podane kilogramy</translation>
    </message>
    <message>
        <source>{} does not go with fondant</source>
        <translation>{} nie pasuje do ciasta</translation>
    </message>
    <message>
        <source>{} does not go with dry sugar</source>
        <translation>{} nie pasuje do suchego cukru</translation>
    </message>
    <message>
        <source>{} alone</source>
        <translation>samo {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is given here and in &quot;{}&quot;</source>
        <translation>&quot;{}&quot; podano tutaj i w &quot;{}&quot;</translation>
    </message>
    <message>
        <source>one of the two</source>
        <translation>jedno z dwojga</translation>
    </message>
    <message>
        <source>the day the question is asked, as YYYY-MM-DD</source>
        <translation>dzień, na który liczymy, jako YYYY-MM-DD</translation>
    </message>
    <message>
        <source>where the bees stand: {&quot;station&quot;: ...}</source>
        <translation>gdzie stoją pszczoły: {&quot;station&quot;: ...}</translation>
    </message>
    <message>
        <source>the hive: {&quot;format&quot;: ..., &quot;boxes&quot;: ...}</source>
        <translation>ul: {&quot;format&quot;: ..., &quot;boxes&quot;: ...}</translation>
    </message>
    <message>
        <source>own measures need comb_width_mm, comb_height_mm, combs_per_box and pitch_mm</source>
        <translation>własne wymiary wymagają comb_width_mm, comb_height_mm, combs_per_box i pitch_mm</translation>
    </message>
    <message>
        <source>no hive format {}</source>
        <translation>nie ma typu ula {}</translation>
    </message>
    <message>
        <source>one of count, covered_combs and seams</source>
        <translation>jedno z count, covered_combs i seams</translation>
    </message>
    <message>
        <source>the number of combs full of stores; a list of combs is the other way to say it</source>
        <translation>liczba ramek pełnych pokarmu; inny sposób to lista plastrów</translation>
    </message>
    <message>
        <source>the shares of {} add up to {}</source>
        <translation>udziały {} dają razem {}</translation>
    </message>
    <message>
        <source>capped, open, brood and pollen together at most 1</source>
        <translation>capped, open, brood i pollen razem najwyżej 1</translation>
    </message>
    <message>
        <source>one of gross_kg, lift_kg and heft</source>
        <translation>jedno z gross_kg, lift_kg i heft</translation>
    </message>
    <message>
        <source>one of syrup, fondant and dry-sugar</source>
        <translation>jedno z syrup, fondant i dry-sugar</translation>
    </message>
    <message>
        <source>&quot;ratio&quot; is {}</source>
        <translation>&quot;ratio&quot; to {}</translation>
    </message>
    <message>
        <source>kg of sugar to kg of water, both above 0, such as &quot;3:2&quot;</source>
        <translation>kg cukru do kg wody, oba powyżej 0, np. &quot;3:2&quot;</translation>
    </message>
    <message>
        <source>the kilograms of honey taken</source>
        <translation>kilogramy odebranego miodu</translation>
    </message>
    <message>
        <source>&quot;until&quot; {} is before {}</source>
        <translation>&quot;until&quot; {} jest przed {}</translation>
    </message>
    <message>
        <source>the last day honey is not for people, as the label says</source>
        <translation>ostatni dzień, kiedy miód nie jest dla ludzi, według etykiety</translation>
    </message>
    <message>
        <source>{} combs are listed, but the hive has {} places</source>
        <translation>podano plastrów: {}, a ul ma miejsc: {}</translation>
    </message>
    <message>
        <source>at most one comb a place</source>
        <translation>najwyżej jeden plaster na miejsce</translation>
    </message>
    <message>
        <source>&quot;covered_combs&quot; is {}, but {}</source>
        <translation>&quot;covered_combs&quot; to {}, a {}</translation>
    </message>
    <message>
        <source>combs fully covered on both sides: not more than there are</source>
        <translation>plastry obsiadane całkowicie z obu stron: nie więcej, niż ich jest</translation>
    </message>
    <message>
        <source>this comb is said to be in a super, but the hive{} has no super</source>
        <translation>ten plaster ma być w nadstawce, ale ul{} nie ma nadstawki</translation>
    </message>
    <message>
        <source>the boxes from the floor up with &quot;super&quot;: true for the super, or no in_super</source>
        <translation>korpusy od dennicy w górę, z &quot;super&quot;: true dla nadstawki, albo bez in_super</translation>
    </message>
    <message>
        <source>{} combs are said to be in a super, but the supers of the hive{} have {} places</source>
        <translation>w nadstawce ma być plastrów: {}, a nadstawki ula{} mają miejsc: {}</translation>
    </message>
    <message>
        <source>at most one comb a place; combs without in_super fill the boxes from the floor up</source>
        <translation>najwyżej jeden plaster na miejsce; plastry bez in_super wypełniają korpusy od dennicy w górę</translation>
    </message>
    <message>
        <source>the hive{} has {} places</source>
        <translation>ul{} ma miejsc: {}</translation>
    </message>
    <message>
        <source>{} combs are listed, but {}</source>
        <translation>podano plastrów: {}, a {}</translation>
    </message>
    <message>
        <source>{} combs are listed{}</source>
        <translation>podano plastrów: {}{}</translation>
    </message>
    <message>
        <source>a whole number from {} to {}{}</source>
        <translation>liczba całkowita od {} do {}{}</translation>
    </message>
    <message>
        <source>a number from {} to {}{}</source>
        <translation>liczba od {} do {}{}</translation>
    </message>
    <message>
        <source>a whole number of at least {}{}</source>
        <translation>liczba całkowita co najmniej {}{}</translation>
    </message>
    <message>
        <source>a number of at least {}{}</source>
        <translation>liczba co najmniej {}{}</translation>
    </message>
    <message>
        <source>a whole number of at most {}{}</source>
        <translation>liczba całkowita najwyżej {}{}</translation>
    </message>
    <message>
        <source>a number of at most {}{}</source>
        <translation>liczba najwyżej {}{}</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>liczba całkowita</translation>
    </message>
    <message>
        <source>a date as YYYY-MM-DD in double quotes</source>
        <translation>data jako YYYY-MM-DD w cudzysłowie prostym</translation>
    </message>
    <message>
        <source>{} is {}, which is not a date</source>
        <translation>{} to {}, a to nie jest data</translation>
    </message>
    <message>
        <source>{} has {} bytes</source>
        <translation>{} ma {} bajtów</translation>
    </message>
    <message>
        <source>a text, or leave the key out</source>
        <translation>tekst albo pominąć klucz</translation>
    </message>
    <message>
        <source>a text in double quotes</source>
        <translation>tekst w cudzysłowie prostym</translation>
    </message>
    <message>
        <source>true or false, without quotes</source>
        <translation>true lub false, bez cudzysłowu</translation>
    </message>
    <message>
        <source>{} is not a weekday</source>
        <translation>{} nie jest dniem tygodnia</translation>
    </message>
    <message>
        <source>Monday to Sunday, or 1 (Monday) to 7 (Sunday)</source>
        <translation>od Monday do Sunday albo od 1 (poniedziałek) do 7 (niedziela)</translation>
    </message>
    <message>
        <source>the same weekday is given twice</source>
        <translation>ten sam dzień tygodnia podano dwa razy</translation>
    </message>
    <message>
        <source>each weekday once</source>
        <translation>każdy dzień tygodnia raz</translation>
    </message>
    <message>
        <source>the key {} is missing</source>
        <translation>brakuje klucza {}</translation>
    </message>
    <message>
        <source>{} has {} values</source>
        <translation>{} ma {} wartości</translation>
    </message>
    <message>
        <source>{} is given beside {} at {}:{}</source>
        <translation>{} podano obok {} w {}:{}</translation>
    </message>
    <message>
        <source>none of {} is given</source>
        <translation>nie podano żadnego z: {}</translation>
    </message>
    <message>
        <source>unknown key {}{}</source>
        <translation>nieznany klucz {}{}</translation>
    </message>
    <message>
        <source> in {}</source>
        <translation> w {}</translation>
    </message>
    <message>
        <source>the latitude of the place, degrees north</source>
        <translation>szerokość geograficzna miejsca, stopnie na północ</translation>
    </message>
    <message>
        <source>{} is given beside monthly_mean_c</source>
        <translation>{} podano obok monthly_mean_c</translation>
    </message>
    <message>
        <source>leave elevation_m out: an own climate is already that of the place</source>
        <translation>pominąć elevation_m: własny klimat jest już klimatem tego miejsca</translation>
    </message>
    <message>
        <source>{} is given without &quot;monthly_mean_c&quot;</source>
        <translation>{} podano bez &quot;monthly_mean_c&quot;</translation>
    </message>
    <message>
        <source>the scatter belongs to an own climate</source>
        <translation>rozrzut należy do własnego klimatu</translation>
    </message>
    <message>
        <source>the site says nothing of where it is</source>
        <translation>miejsce nie mówi, gdzie jest</translation>
    </message>
    <message>
        <source>{} is given without {}</source>
        <translation>{} podano bez {}</translation>
    </message>
    <message>
        <source>{} {} is not a day of the winter asked about</source>
        <translation>{} {} nie jest dniem zimy, na którą liczymy</translation>
    </message>
    <message>
        <source>no station {}</source>
        <translation>nie ma stacji {}</translation>
    </message>
    <message>
        <source>the key {} is given twice, first at {}:{}</source>
        <translation>klucz {} podano dwa razy, po raz pierwszy w {}:{}</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>każdy klucz raz</translation>
    </message>
    <message>
        <source>nested deeper than {} levels</source>
        <translation>zagnieżdżenie głębsze niż {} poziomów</translation>
    </message>
    <message>
        <source>a case as described in the manual</source>
        <translation>dane rodziny, jak opisano w podręczniku</translation>
    </message>
    <message>
        <source>there are too many values</source>
        <translation>jest za dużo wartości</translation>
    </message>
    <message>
        <source>a zero byte in the text</source>
        <translation>bajt zerowy w tekście</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>tekst w UTF-8</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot;?</source>
        <translation>może chodzi o &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot; or &quot;{}&quot;?</source>
        <translation>może chodzi o &quot;{}&quot; lub &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot; or &quot;{}&quot; or &quot;{}&quot;?</source>
        <translation>może chodzi o &quot;{}&quot; lub &quot;{}&quot;, lub &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>known: {}</source>
        <translation>znane: {}</translation>
    </message>
    <message>
        <source>there is no column &quot;{}&quot;</source>
        <translation>nie ma kolumny &quot;{}&quot;</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a date</source>
        <translation>&quot;{}&quot; nie jest datą</translation>
    </message>
    <message>
        <source>YYYY-MM-DD or YYYY/MM/DD</source>
        <translation>YYYY-MM-DD lub YYYY/MM/DD</translation>
    </message>
    <message>
        <source>{} stands in line {} already</source>
        <translation>{} jest już w wierszu {}</translation>
    </message>
    <message>
        <source>each date once</source>
        <translation>każda data raz</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a number</source>
        <translation>&quot;{}&quot; nie jest liczbą</translation>
    </message>
    <message>
        <source>a temperature with a decimal point, or an empty cell</source>
        <translation>temperatura z kropką dziesiętną albo pusta komórka</translation>
    </message>
    <message>
        <source>{} is no air temperature</source>
        <translation>{} nie jest temperaturą powietrza</translation>
    </message>
    <message>
        <source>{} to {} degC, or an empty cell</source>
        <translation>od {} do {} degC albo pusta komórka</translation>
    </message>
    <message>
        <source>the minimum is above the maximum</source>
        <translation>minimum jest większe niż maksimum</translation>
    </message>
    <message>
        <source>the lower reading in the column of minima</source>
        <translation>mniejszy odczyt w kolumnie z minimami</translation>
    </message>
    <message>
        <source>&quot;{}&quot; names no column</source>
        <translation>&quot;{}&quot; nie oznacza kolumny</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is named twice</source>
        <translation>&quot;{}&quot; podano dwa razy</translation>
    </message>
    <message>
        <source>neither the mean alone nor minimum and maximum are named</source>
        <translation>nie podano ani samej średniej, ani minimum i maksimum</translation>
    </message>
    <message>
        <source>which part of the dates is the year cannot be told</source>
        <translation>nie da się rozpoznać, która część dat jest rokiem</translation>
    </message>
    <message>
        <source>dates are written in two orders: the day first in line {}, the month first in line {}</source>
        <translation>daty zapisano w dwóch kolejnościach: w wierszu {} najpierw dzień, w wierszu {} najpierw miesiąc</translation>
    </message>
    <message>
        <source>whether day or month comes first in the dates cannot be told: {}/{}/{} in line {} may be either, and no number above 12 decides</source>
        <translation>nie da się rozpoznać, czy w datach najpierw jest dzień, czy miesiąc: {}/{}/{} w wierszu {} pasuje do obu, a nie ma liczby większej niż 12</translation>
    </message>
    <message>
        <source>--date-order dmy, mdy or ymd</source>
        <translation>--date-order dmy, mdy lub ymd</translation>
    </message>
    <message>
        <source>this is no text</source>
        <translation>to nie jest tekst</translation>
    </message>
    <message>
        <source>a table of times and weights in plain text (UTF-8)</source>
        <translation>tabela z czasem i masą jako zwykły tekst (UTF-8)</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>plik jest pusty</translation>
    </message>
    <message>
        <source>a table of times and weights</source>
        <translation>tabela z czasem i masą</translation>
    </message>
    <message>
        <source>cannot be read to its end</source>
        <translation>nie da się przeczytać do końca</translation>
    </message>
    <message>
        <source>a file that can be read</source>
        <translation>plik, który da się czytać</translation>
    </message>
    <message>
        <source>the log has more than {} readings</source>
        <translation>zapis ma więcej odczytów niż {}</translation>
    </message>
    <message>
        <source>at most {}: a part of it</source>
        <translation>najwyżej {}: jego część</translation>
    </message>
    <message>
        <source>no row has both a time and a weight</source>
        <translation>żaden wiersz nie ma jednocześnie czasu i masy</translation>
    </message>
    <message>
        <source>--time and --weight with the columns that hold them</source>
        <translation>--time i --weight z kolumnami, które je zawierają</translation>
    </message>
    <message>
        <source>no row has both a time and a weight; the first row left out has {}</source>
        <translation>żaden wiersz nie ma jednocześnie czasu i masy; pierwszy pominięty wiersz ma {}</translation>
    </message>
    <message>
        <source>the unit of the weights cannot be told: half of them are above {}</source>
        <translation>nie da się rozpoznać jednostki mas: połowa przekracza {}</translation>
    </message>
    <message>
        <source>--unit kg, g or lb</source>
        <translation>--unit kg, g lub lb</translation>
    </message>
    <message>
        <source>{} with one of them</source>
        <translation>{} z jedną z nich</translation>
    </message>
    <message>
        <source>there is no column {}</source>
        <translation>nie ma kolumny {}</translation>
    </message>
    <message>
        <source>{} with a name of the header{} or a number from 1 to {}</source>
        <translation>{} z nazwą z nagłówka{} albo z liczbą od 1 do {}</translation>
    </message>
    <message>
        <source>more than one column holds times: {}</source>
        <translation>czas jest w więcej niż jednej kolumnie: {}</translation>
    </message>
    <message>
        <source>no column holds times</source>
        <translation>w żadnej kolumnie nie ma czasu</translation>
    </message>
    <message>
        <source>a table of times and weights; --delimiter, --time or --date where it is one</source>
        <translation>tabela z czasem i masą; --delimiter, --time lub --date, gdzie to jest</translation>
    </message>
    <message>
        <source>more than one column holds dates: {}</source>
        <translation>daty są w więcej niż jednej kolumnie: {}</translation>
    </message>
    <message>
        <source>more than one column holds times of day: {}</source>
        <translation>godziny są w więcej niż jednej kolumnie: {}</translation>
    </message>
    <message>
        <source>more than one column may hold the weight: {}</source>
        <translation>masa może być w więcej niż jednej kolumnie: {}</translation>
    </message>
    <message>
        <source>no column holds weights</source>
        <translation>w żadnej kolumnie nie ma mas</translation>
    </message>
    <message>
        <source>a column of numbers, one a row; --delimiter or --weight where there is one</source>
        <translation>kolumna liczb, w każdym wierszu jedna; --delimiter lub --weight, gdzie ona jest</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a ratio of sugar to water</source>
        <translation>&quot;{}&quot; nie jest stosunkiem cukru do wody</translation>
    </message>
    <message>
        <source>two numbers above 0 with a colon between them, such as 3:2 or 1:0.63</source>
        <translation>dwie liczby powyżej 0 z dwukropkiem pomiędzy, np. 3:2 lub 1:0.63</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is more than 80 % sugar, which no longer flows</source>
        <translation>&quot;{}&quot; to ponad 80% cukru, a taki syrop już nie płynie</translation>
    </message>
    <message>
        <source>at most 4:1 by mass; syrup for winter stores is 3:2 or 2:1</source>
        <translation>wagowo najwyżej 4:1; syrop na zapasy zimowe to 3:2 lub 2:1</translation>
    </message>
    <message>
        <source>{} cannot be {}</source>
        <translation>{} nie może być {}</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 lub więcej</translation>
    </message>
    <message>
        <source>the density of {} % sugar is not known</source>
        <translation>gęstość {}% cukru nie jest znana</translation>
    </message>
    <message>
        <source>0 to 80 % sugar by mass</source>
        <translation>od 0 do 80% cukru, wagowo</translation>
    </message>
    <message>
        <source>syrup of {} is too thin to become stores</source>
        <translation>syrop {} jest za rzadki, by powstały z niego zapasy</translation>
    </message>
    <message>
        <source>3:2 or 2:1 by mass for winter stores</source>
        <translation>3:2 lub 2:1 wagowo na zapasy zimowe</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>nic nie wpisano</translation>
    </message>
    <message>
        <source>write a number and a unit</source>
        <translation>wpisać liczbę i jednostkę</translation>
    </message>
    <message>
        <source>two numbers stand side by side</source>
        <translation>dwie liczby stoją obok siebie</translation>
    </message>
    <message>
        <source>write one number, without spaces in it</source>
        <translation>wpisać jedną liczbę, bez odstępów w środku</translation>
    </message>
    <message>
        <source>a fraction has nothing below its line</source>
        <translation>ułamek nie ma nic pod kreską</translation>
    </message>
    <message>
        <source>write it like 1/8</source>
        <translation>wpisać np. 1/8</translation>
    </message>
    <message>
        <source>&quot;{}&quot; does not begin with a number</source>
        <translation>&quot;{}&quot; nie zaczyna się od liczby</translation>
    </message>
    <message>
        <source>write a number and a unit, like 1.5 kg</source>
        <translation>wpisać liczbę i jednostkę, np. 1.5 kg</translation>
    </message>
    <message>
        <source>&quot;{}&quot; has more than one decimal point</source>
        <translation>&quot;{}&quot; ma więcej niż jeden znak dziesiętny</translation>
    </message>
    <message>
        <source>write the number without marks between thousands</source>
        <translation>wpisać liczbę bez znaków między tysiącami</translation>
    </message>
    <message>
        <source>&quot;{}&quot; can be read in two ways</source>
        <translation>&quot;{}&quot; można odczytać na dwa sposoby</translation>
    </message>
    <message>
        <source>write {} or {}</source>
        <translation>wpisać {} lub {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number that can be held</source>
        <translation>&quot;{}&quot; nie jest liczbą, którą da się zapamiętać</translation>
    </message>
    <message>
        <source>write a smaller number</source>
        <translation>wpisać mniejszą liczbę</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no unit known here</source>
        <translation>&quot;{}&quot; nie jest znaną tu jednostką</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not the same in the United States and in Britain</source>
        <translation>&quot;{}&quot; znaczy co innego w Stanach Zjednoczonych i w Wielkiej Brytanii</translation>
    </message>
    <message>
        <source>write US {} or imp {}</source>
        <translation>wpisać US {} lub imp {}</translation>
    </message>
    <message>
        <source>a number has no unit</source>
        <translation>liczba nie ma jednostki</translation>
    </message>
    <message>
        <source>give each number its unit, like 3 lb 4 oz</source>
        <translation>podać jednostkę przy każdej liczbie, np. 3 lb 4 oz</translation>
    </message>
    <message>
        <source>the amount is negative</source>
        <translation>ilość jest ujemna</translation>
    </message>
    <message>
        <source>the parts do not go from the larger unit to the smaller</source>
        <translation>części nie idą od większej jednostki do mniejszej</translation>
    </message>
    <message>
        <source>write it like 3 lb 4 oz</source>
        <translation>wpisać np. 3 lb 4 oz</translation>
    </message>
    <message>
        <source>the amount is too large</source>
        <translation>ilość jest za duża</translation>
    </message>
    <message>
        <source>there is more than one number</source>
        <translation>jest więcej niż jedna liczba</translation>
    </message>
    <message>
        <source>write one temperature, like 7 °C</source>
        <translation>wpisać jedną temperaturę, np. 7 °C</translation>
    </message>
    <message>
        <source>the temperature is too large</source>
        <translation>temperatura jest za wysoka</translation>
    </message>
    <message>
        <source>the temperature lies under absolute zero</source>
        <translation>temperatura leży poniżej zera bezwzględnego</translation>
    </message>
    <message>
        <source>it is above -273.15 °C</source>
        <translation>jest wyższa niż -273.15 °C</translation>
    </message>
    <message>
        <source>{} could not be computed: {}</source>
        <translation>{}: nie udało się obliczyć: {}</translation>
    </message>
    <message>
        <source>this is an error of the program, not of the records; please report it with them</source>
        <translation>to błąd programu, a nie wpisów; warto go zgłosić razem z nimi</translation>
    </message>
    <message>
        <source>this is larger than {} may be</source>
        <translation>to więcej, niż {} może mieć</translation>
    </message>
    <message>
        <source>there is no such folder of shipped data</source>
        <translation>nie ma takiego folderu dołączonych danych</translation>
    </message>
    <message>
        <source>name it with --data or in WINTERLARDER_DATA</source>
        <translation>podać go przez --data albo w WINTERLARDER_DATA</translation>
    </message>
    <message>
        <source>{} is no time zone</source>
        <translation>{} nie jest strefą czasową</translation>
    </message>
    <message>
        <source>a name such as America/Halifax, UTC, or hours ahead of UTC such as +02:00</source>
        <translation>nazwa, np. America/Halifax, UTC, albo godziny przed UTC, np. +02:00</translation>
    </message>
    <message>
        <source>--clock: the times of the log say themselves how far from UTC they are</source>
        <translation>--clock: czasy w zapisie same mówią, jak daleko są od UTC</translation>
    </message>
    <message>
        <source>--time-zone where days of another place are wanted</source>
        <translation>--time-zone, jeśli potrzebne są dni innego miejsca</translation>
    </message>
    <message>
        <source>the weighing of {}: {}</source>
        <translation>ważenie z {}: {}</translation>
    </message>
    <message>
        <source>the feed of {}: {}</source>
        <translation>karmienie z {}: {}</translation>
    </message>
    <message>
        <source>the harvest of {}: {}</source>
        <translation>miodobranie z {}: {}</translation>
    </message>
    <message>
        <source>the line is too long to be a case</source>
        <translation>wiersz jest za długi, by być danymi rodziny</translation>
    </message>
    <message>
        <source>&quot;-&quot; is given more than once</source>
        <translation>&quot;-&quot; podano więcej niż raz</translation>
    </message>
    <message>
        <source>standard input can be read once</source>
        <translation>standardowe wejście można czytać tylko raz</translation>
    </message>
    <message>
        <source>standard input cannot be read</source>
        <translation>nie można czytać ze standardowego wejścia</translation>
    </message>
    <message>
        <source>{} is left out of the plan of its yard: {}</source>
        <translation>{} pominięto w planie pasieki: {}</translation>
    </message>
    <message>
        <source>which colony was not said</source>
        <translation>nie podano rodziny</translation>
    </message>
    <message>
        <source>--colony NAME</source>
        <translation>--colony NAZWA</translation>
    </message>
    <message>
        <source>there is no advice to act on: it cannot be said</source>
        <translation>nie ma zalecenia do przyjęcia: nie można powiedzieć</translation>
    </message>
    <message>
        <source>book advise tells why</source>
        <translation>book advise mówi dlaczego</translation>
    </message>
    <message>
        <source>{}: {}: its winter is followed: book follow tells how it goes</source>
        <translation>{}: {}: jej zima jest śledzona: book follow mówi, jak przebiega</translation>
    </message>
    <message>
        <source>{}: no colony is living on {}</source>
        <translation>{}: żadna rodzina nie żyje w dniu {}</translation>
    </message>
    <message>
        <source>there is no table {}</source>
        <translation>nie ma tabeli {}</translation>
    </message>
    <message>
        <source>what to export was not said</source>
        <translation>nie podano, co wyeksportować</translation>
    </message>
    <message>
        <source>--json for the whole book, or --table NAME for one table as CSV</source>
        <translation>--json dla całego dziennika albo --table NAZWA dla jednej tabeli jako CSV</translation>
    </message>
    <message>
        <source>--preview is for tables</source>
        <translation>--preview jest dla tabel</translation>
    </message>
    <message>
        <source>a JSON document replaces the whole book</source>
        <translation>dokument JSON zastępuje cały dziennik</translation>
    </message>
    <message>
        <source>--count is below 1</source>
        <translation>--count jest mniejsze niż 1</translation>
    </message>
    <message>
        <source>how many steps to show</source>
        <translation>ile kroków pokazać</translation>
    </message>
    <message>
        <source>book salvage, or restore a backup</source>
        <translation>book salvage albo przywrócić kopię zapasową</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>nie ma czego cofnąć</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>nie ma czego ponowić</translation>
    </message>
    <message>
        <source>book story shows every step</source>
        <translation>book story pokazuje każdy krok</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>nie ma takiego pliku</translation>
    </message>
    <message>
        <source>name a book</source>
        <translation>podać dziennik</translation>
    </message>
    <message>
        <source>how the winter ended was not said</source>
        <translation>nie podano, jak skończyła się zima</translation>
    </message>
    <message>
        <source>--alive or --dead</source>
        <translation>--alive lub --dead</translation>
    </message>
    <message>
        <source>--boxes is {}</source>
        <translation>--boxes to {}</translation>
    </message>
    <message>
        <source>{} boxes with the supers</source>
        <translation>razem z nadstawkami korpusów: {}</translation>
    </message>
    <message>
        <source>there is a colony {} already, #{}</source>
        <translation>jest już rodzina {}, #{}</translation>
    </message>
    <message>
        <source>another name, such as the place where it stands</source>
        <translation>inna nazwa, np. miejsca, gdzie stoi</translation>
    </message>
    <message>
        <source>where the yard is was said twice</source>
        <translation>położenie pasieki podano dwa razy</translation>
    </message>
    <message>
        <source>one of --station ID, --place NAME, or --latitude D and --longitude D</source>
        <translation>jedno z --station ID, --place NAZWA albo --latitude D i --longitude D</translation>
    </message>
    <message>
        <source>there is no station {}</source>
        <translation>nie ma stacji {}</translation>
    </message>
    <message>
        <source>where the yard is was not said</source>
        <translation>nie podano położenia pasieki</translation>
    </message>
    <message>
        <source>--place NAME, --station ID, or --latitude D and --longitude D</source>
        <translation>--place NAZWA, --station ID albo --latitude D i --longitude D</translation>
    </message>
    <message>
        <source>--covered-combs is {}, but {} combs are listed</source>
        <translation>--covered-combs to {}, a podano plastrów: {}</translation>
    </message>
    <message>
        <source>--covered-combs is {}, but the hive has {} places</source>
        <translation>--covered-combs to {}, a ul ma miejsc: {}</translation>
    </message>
    <message>
        <source>a weighing is said in one way</source>
        <translation>ważenie podaje się w jeden sposób</translation>
    </message>
    <message>
        <source>one of --gross KG, --lift KG [KG], --heft light|fair|heavy</source>
        <translation>jedno z --gross KG, --lift KG [KG], --heft light|fair|heavy</translation>
    </message>
    <message>
        <source>a feed is said in one way</source>
        <translation>karmienie podaje się w jeden sposób</translation>
    </message>
    <message>
        <source>one of --sugar KG, --syrup L, --fondant KG</source>
        <translation>jedno z --sugar KG, --syrup L, --fondant KG</translation>
    </message>
    <message>
        <source>--fondant is given for another kind of feed</source>
        <translation>--fondant podano przy innym rodzaju karmienia</translation>
    </message>
    <message>
        <source>--kind fondant</source>
        <translation>--kind fondant</translation>
    </message>
    <message>
        <source>--syrup is given for another kind of feed</source>
        <translation>--syrup podano przy innym rodzaju karmienia</translation>
    </message>
    <message>
        <source>--kind syrup</source>
        <translation>--kind syrup</translation>
    </message>
    <message>
        <source>--ratio is {}</source>
        <translation>--ratio to {}</translation>
    </message>
    <message>
        <source>A:B, sugar to water by mass, such as 3:2</source>
        <translation>A:B, cukier do wody, wagowo, np. 3:2</translation>
    </message>
    <message>
        <source>--syrup is given without its ratio</source>
        <translation>--syrup podano bez stosunku</translation>
    </message>
    <message>
        <source>--ratio A:B, sugar to water by mass</source>
        <translation>--ratio A:B, cukier do wody, wagowo</translation>
    </message>
    <message>
        <source>fondant without its amount</source>
        <translation>ciasto bez ilości</translation>
    </message>
    <message>
        <source>--fondant KG</source>
        <translation>--fondant KG</translation>
    </message>
    <message>
        <source>--latitude is outside -90 to 90</source>
        <translation>--latitude leży poza zakresem od -90 do 90</translation>
    </message>
    <message>
        <source>degrees, north positive</source>
        <translation>stopnie, na północ dodatnie</translation>
    </message>
    <message>
        <source>--longitude is outside -180 to 180</source>
        <translation>--longitude leży poza zakresem od -180 do 180</translation>
    </message>
    <message>
        <source>degrees, east positive</source>
        <translation>stopnie, na wschód dodatnie</translation>
    </message>
    <message>
        <source>no command {}</source>
        <translation>nie ma polecenia {}</translation>
    </message>
    <message>
        <source>a whole number from {} to {}</source>
        <translation>liczba całkowita od {} do {}</translation>
    </message>
    <message>
        <source>--hive is {}</source>
        <translation>--hive to {}</translation>
    </message>
    <message>
        <source>an id that &quot;hive-formats&quot; lists</source>
        <translation>id podane przez &quot;hive-formats&quot;</translation>
    </message>
    <message>
        <source>no page {}</source>
        <translation>nie ma strony {}</translation>
    </message>
    <message>
        <source>{} is {}, which is no number</source>
        <translation>{} to {}, a to nie jest liczba</translation>
    </message>
    <message>
        <source>a number from {} to {}</source>
        <translation>liczba od {} do {}</translation>
    </message>
    <message>
        <source>--sugar and --stores</source>
        <translation>--sugar i --stores</translation>
    </message>
    <message>
        <source>exactly one of the two</source>
        <translation>dokładnie jedno z dwojga</translation>
    </message>
    <message>
        <source>--by is {}</source>
        <translation>--by to {}</translation>
    </message>
    <message>
        <source>--shell is {}</source>
        <translation>--shell to {}</translation>
    </message>
    <message>
        <source>--kind is {}</source>
        <translation>--kind to {}</translation>
    </message>
    <message>
        <source>there is no key {}</source>
        <translation>nie ma klucza {}</translation>
    </message>
    <message>
        <source>--unit is {}</source>
        <translation>--unit to {}</translation>
    </message>
    <message>
        <source>c or f</source>
        <translation>c lub f</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} lub {}</translation>
    </message>
    <message>
        <source>several places may be {}</source>
        <translation>pasuje kilka miejsc: {}</translation>
    </message>
    <message>
        <source>say which, such as {}; or give latitude and longitude</source>
        <translation>podać które, np. {}; albo szerokość i długość geograficzną</translation>
    </message>
    <message>
        <source>no other {} is known here, smaller places are not: if yours is another, name a larger town near it, or give latitude and longitude</source>
        <translation>innego miejsca {} program nie zna, mniejszych nie ma na liście: jeśli chodzi o inne, podać większą miejscowość w pobliżu albo szerokość i długość geograficzną</translation>
    </message>
    <message>
        <source>of that name too: {}</source>
        <translation>tę samą nazwę mają też: {}</translation>
    </message>
    <message>
        <source>no climate station lies within {} km of {}</source>
        <translation>w promieniu {} km nie ma stacji klimatycznej, miejsce: {}</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>to miejsce</translation>
    </message>
    <message>
        <source>the book has {} yards</source>
        <translation>liczba pasiek w dzienniku: {}</translation>
    </message>
    <message>
        <source>book add-yard</source>
        <translation>book add-yard</translation>
    </message>
    <message>
        <source>--yard NAME</source>
        <translation>--yard NAZWA</translation>
    </message>
    <message>
        <source>--most is {}</source>
        <translation>--most to {}</translation>
    </message>
    <message>
        <source>comma, semicolon, tab or the sign itself</source>
        <translation>comma, semicolon, tab albo sam znak</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>comma lub point</translation>
    </message>
    <message>
        <source>kg, g or lb</source>
        <translation>kg, g lub lb</translation>
    </message>
    <message>
        <source>dmy, mdy or ymd</source>
        <translation>dmy, mdy lub ymd</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>to jest folder</translation>
    </message>
    <message>
        <source>name a file</source>
        <translation>podać plik</translation>
    </message>
    <message>
        <source>cannot be opened</source>
        <translation>nie można otworzyć</translation>
    </message>
    <message>
        <source>no station {} and {}</source>
        <translation>nie ma stacji {}; {}</translation>
    </message>
    <message>
        <source>a climate of your own</source>
        <translation>własny klimat</translation>
    </message>
    <message>
        <source>a station and --case</source>
        <translation>stacja i --case</translation>
    </message>
    <message>
        <source>--winter is {}</source>
        <translation>--winter to {}</translation>
    </message>
    <message>
        <source>a year from {} to {}</source>
        <translation>rok od {} do {}</translation>
    </message>
    <message>
        <source>{}, as --near LAT,LON</source>
        <translation>{}, jako --near LAT,LON</translation>
    </message>
    <message>
        <source>--near is {}</source>
        <translation>--near to {}</translation>
    </message>
    <message>
        <source>LAT,LON in degrees, north and east positive, such as 44.9,-64.2, or the name of a place</source>
        <translation>LAT,LON w stopniach, na północ i wschód dodatnie, np. 44.9,-64.2, albo nazwa miejsca</translation>
    </message>
    <message>
        <source>no source {}</source>
        <translation>nie ma źródła {}</translation>
    </message>
    <message>
        <source>an id that &quot;sources&quot; lists</source>
        <translation>id podane przez &quot;sources&quot;</translation>
    </message>
    <message>
        <source>see CASE FILES in the manual</source>
        <translation>patrz CASE FILES w podręczniku</translation>
    </message>
    <message>
        <source>nothing tells how many bees there are</source>
        <translation>nic nie mówi, ile jest pszczół</translation>
    </message>
    <message>
        <source>bees with count, covered_combs or seams</source>
        <translation>bees z count, covered_combs lub seams</translation>
    </message>
    <message>
        <source>there are no bees</source>
        <translation>nie ma pszczół</translation>
    </message>
    <message>
        <source>a colony with bees</source>
        <translation>rodzina z pszczołami</translation>
    </message>
    <message>
        <source>no season can be derived for the place</source>
        <translation>dla tego miejsca nie da się wyznaczyć sezonu</translation>
    </message>
    <message>
        <source>the dates buildup and forage in the part season</source>
        <translation>daty buildup i forage w części season</translation>
    </message>
    <message>
        <source>as_of lies outside the model&apos;s season</source>
        <translation>as_of leży poza sezonem modelu</translation>
    </message>
    <message>
        <source>a day of the season</source>
        <translation>dzień sezonu</translation>
    </message>
    <message>
        <source>--from {} is before the look on {}</source>
        <translation>--from {} jest przed przeglądem z {}</translation>
    </message>
    <message>
        <source>a day from the look on</source>
        <translation>dzień od przeglądu</translation>
    </message>
    <message>
        <source>--to {} is after the last day the model runs to</source>
        <translation>--to {} jest po ostatnim dniu, do którego liczy model</translation>
    </message>
    <message>
        <source>a day up to {}</source>
        <translation>dzień do {}</translation>
    </message>
    <message>
        <source>--to {} is before --from {}</source>
        <translation>--to {} jest przed --from {}</translation>
    </message>
    <message>
        <source>a later day</source>
        <translation>późniejszy dzień</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>nie można zapisać</translation>
    </message>
    <message>
        <source>choose another folder</source>
        <translation>wybrać inny folder</translation>
    </message>
    <message>
        <source>the demo book is not there</source>
        <translation>nie ma przykładowego dziennika</translation>
    </message>
    <message>
        <source>make it with demo/make-book</source>
        <translation>utworzyć go przez demo/make-book</translation>
    </message>
    <message>
        <source>name a folder that can be</source>
        <translation>podać folder, który może być</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>nie można utworzyć folderu</translation>
    </message>
    <message>
        <source>name another</source>
        <translation>podać inny</translation>
    </message>
    <message>
        <source>the book this was meant for is no longer open, and another was not touched</source>
        <translation>dziennik, którego to dotyczyło, nie jest już otwarty, a innego nie zmieniono</translation>
    </message>
    <message>
        <source>open that book again and enter it there</source>
        <translation>otworzyć ten dziennik ponownie i tam to wpisać</translation>
    </message>
    <message>
        <source>{} is no language this program speaks</source>
        <translation>{} nie jest językiem, którym mówi ten program</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::AnswerPanel</name>
    <message>
        <source>Verdict</source>
        <translation>Decyzja</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Odpowiedź</translation>
    </message>
    <message>
        <source>What to winter on</source>
        <translation>Ile zapasów na zimę</translation>
    </message>
    <message>
        <source>Another look</source>
        <translation>Kolejny przegląd</translation>
    </message>
    <message>
        <source>&amp;Why?</source>
        <translation>&amp;Dlaczego?</translation>
    </message>
    <message>
        <source>Why? Reasons and cautions with their sources</source>
        <translation>Dlaczego? Powody i&#xa0;na co uważać, ze źródłami</translation>
    </message>
    <message>
        <source>Make it the &amp;plan</source>
        <translation>Przy&amp;jmij jako plan</translation>
    </message>
    <message>
        <source>✓ It is the plan</source>
        <translation>✓ To jest plan</translation>
    </message>
    <message>
        <source>Its visits stand on the page Feeding; Undo takes it back</source>
        <translation>Jego wizyty są na stronie Karmienie; Cofnij to wycofuje</translation>
    </message>
    <message>
        <source>Keeps this advice in the book with all it was computed from, and plans its visits</source>
        <translation>Zachowuje to zalecenie w&#xa0;dzienniku ze wszystkim, z&#xa0;czego je obliczono, i&#xa0;planuje jego wizyty</translation>
    </message>
    <message>
        <source>The plan of the yard is still being worked out; it may change this advice</source>
        <translation>Plan pasieki jest jeszcze obliczany; może zmienić to zalecenie</translation>
    </message>
    <message>
        <source>This could not be worked out.</source>
        <translation>Tego nie udało się obliczyć.</translation>
    </message>
    <message>
        <source>These records disagree; put one of them right.</source>
        <translation>Te wpisy są sprzeczne; jeden z&#xa0;nich trzeba poprawić.</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Obliczanie…</translation>
    </message>
    <message>
        <source>The winters are being simulated from what you have written.</source>
        <translation>Trwa symulowanie zim na podstawie wpisów.</translation>
    </message>
    <message>
        <source>Chances</source>
        <translation>Prawdopodobieństwa</translation>
    </message>
    <message>
        <source>How this winter goes is being worked out from what was weighed and seen.</source>
        <translation>Z&#xa0;ważeń i&#xa0;obserwacji obliczany jest przebieg tej zimy.</translation>
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
        <translation>Kliknięcie liczby pokazuje, skąd się wzięła</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BackupsDialog</name>
    <message>
        <source>Backups</source>
        <translation>Kopie zapasowe</translation>
    </message>
    <message>
        <source>A backup is made at the first edit of a day and before anything large; the last ten are kept beside the book. Restoring one can be undone.</source>
        <translation>Kopia powstaje przy pierwszej zmianie w&#xa0;danym dniu i&#xa0;przed każdą większą operacją; obok dziennika przechowywanych jest dziesięć ostatnich. Przywrócenie można cofnąć.</translation>
    </message>
    <message>
        <source>Backups, newest first</source>
        <translation>Kopie zapasowe, od najnowszych</translation>
    </message>
    <message>
        <source>Make one &amp;now</source>
        <translation>&amp;Utwórz teraz</translation>
    </message>
    <message>
        <source>&amp;Restore it</source>
        <translation>&amp;Przywróć</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Czytanie…</translation>
    </message>
    <message>
        <source>There is none yet; the first edit of a day makes one.</source>
        <translation>Nie ma jeszcze żadnej; powstanie przy pierwszej zmianie w&#xa0;danym dniu.</translation>
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
        <translation>Pokaż wszystko</translation>
    </message>
    <message>
        <source>Something is wrong</source>
        <translation>Coś jest nie tak</translation>
    </message>
    <message>
        <source>Notice</source>
        <translation>Komunikat</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Zamknij</translation>
    </message>
    <message>
        <source>Close this notice: %1</source>
        <translation>Zamknij ten komunikat: %1</translation>
    </message>
    <message>
        <source>Show less</source>
        <translation>Pokaż mniej</translation>
    </message>
    <message>
        <source>Show all %1</source>
        <translation>Pokaż wszystkie (%1)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BeesField</name>
    <message>
        <source>How the bees were counted</source>
        <translation>Jak policzono pszczoły</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nie liczono</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>obsiadane uliczki</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>pszczoły</translation>
    </message>
    <message>
        <source>Number of %{combs}, seams or bees</source>
        <translation>Liczba plastrów, uliczek lub pszczół</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>obsiadane plastry</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BookActions</name>
    <message>
        <source>somebody</source>
        <translation>ktoś</translation>
    </message>
    <message>
        <source>%1 on %2, since %3</source>
        <translation>%1 na komputerze %2, od %3</translation>
    </message>
    <message>
        <source>This book was opened for reading only.</source>
        <translation>Ten dziennik otwarto tylko do odczytu.</translation>
    </message>
    <message>
        <source>This book lies where nothing can be written, so it can only be read. Copy it to where it can be changed.</source>
        <translation>Ten dziennik leży w&#xa0;miejscu, gdzie nie można zapisywać, więc można go tylko czytać. Należy go skopiować tam, gdzie da się go zmieniać.</translation>
    </message>
    <message>
        <source>A newer version of Winterlarder made this book; this one can only read it.</source>
        <translation>Ten dziennik utworzyła nowsza wersja programu Winterlarder; ta może go tylko czytać.</translation>
    </message>
    <message>
        <source>The disk is full, so this book can only be read. Make room and try again.</source>
        <translation>Dysk jest pełny, więc ten dziennik można tylko czytać. Należy zrobić miejsce i&#xa0;spróbować ponownie.</translation>
    </message>
    <message>
        <source>The file of this book has a second name (a hard link), so it can only be read: a change under one name could not be taken back under the other. Copy it, or remove the other name.</source>
        <translation>Plik tego dziennika ma drugą nazwę (dowiązanie twarde), więc można go tylko czytać: zmiany pod jedną nazwą nie dałoby się cofnąć pod drugą. Należy go skopiować albo usunąć drugą nazwę.</translation>
    </message>
    <message>
        <source>This book is open elsewhere (%1), so here it can only be read.</source>
        <translation>Ten dziennik jest otwarty gdzie indziej (%1), więc tutaj można go tylko czytać.</translation>
    </message>
    <message>
        <source>This could not be written down; the book is as it was before.
%1</source>
        <translation>Tego nie udało się zapisać; dziennik jest taki jak przedtem.
%1</translation>
    </message>
    <message>
        <source>Your book is kept in %1. Everything you enter is in it at once; there is nothing to save.</source>
        <translation>Dziennik jest w&#xa0;pliku %1. Wszystko, co się wpisze, jest w&#xa0;nim od razu; niczego nie trzeba zapisywać.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Otwórz</translation>
    </message>
    <message>
        <source>Books and case files (*.larder *.json);;All files (*)</source>
        <translation>Dzienniki i&#xa0;pliki danych rodzin (*.larder *.json);;Wszystkie pliki (*)</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Spróbuj ponownie</translation>
    </message>
    <message>
        <source>Copy it…</source>
        <translation>Skopiuj go…</translation>
    </message>
    <message>
        <source>It is closed there: take over</source>
        <translation>Tam jest zamknięty: przejmij</translation>
    </message>
    <message>
        <source>This yard is here to be tried out: what you change is kept only until the window closes.</source>
        <translation>Ta pasieka służy do wypróbowania: zmiany zostają tylko do zamknięcia okna.</translation>
    </message>
    <message>
        <source>Keep it as a book…</source>
        <translation>Zachowaj ją jako dziennik…</translation>
    </message>
    <message>
        <source>Salvage what is readable…</source>
        <translation>Odzyskaj, co da się odczytać…</translation>
    </message>
    <message>
        <source>The book could not be opened.
%1</source>
        <translation>Nie udało się otworzyć dziennika.
%1</translation>
    </message>
    <message>
        <source>%1 salvaged%2</source>
        <translation>%1 odzyskany%2</translation>
    </message>
    <message>
        <source>Salvage into a new book</source>
        <translation>Odzyskaj do nowego dziennika</translation>
    </message>
    <message>
        <source>Books (*.larder)</source>
        <translation>Dzienniki (*.larder)</translation>
    </message>
    <message>
        <source>Reading what can still be read of %1…</source>
        <translation>Odczytywanie tego, co jeszcze da się odczytać z&#xa0;%1…</translation>
    </message>
    <message>
        <source>Everything in the damaged book was saved into this one; the damaged file was not touched.</source>
        <translation>Wszystko z&#xa0;uszkodzonego dziennika jest teraz w&#xa0;tym; uszkodzony plik pozostał nietknięty.</translation>
    </message>
    <message>
        <source>What could be read is in this book; the damaged file was not touched. Lost:
%1</source>
        <translation>W&#xa0;tym dzienniku jest to, co dało się odczytać; uszkodzony plik pozostał nietknięty. Utracono:
%1</translation>
    </message>
    <message>
        <source>Copy the book to</source>
        <translation>Kopiuj dziennik do</translation>
    </message>
    <message>
        <source>The book was copied to %1.</source>
        <translation>Dziennik skopiowano do %1.</translation>
    </message>
    <message>
        <source>Open the copy</source>
        <translation>Otwórz kopię</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importuj</translation>
    </message>
    <message>
        <source>Tables and whole books (*.csv *.json);;All files (*)</source>
        <translation>Tabele i&#xa0;całe dzienniki (*.csv *.json);;Wszystkie pliki (*)</translation>
    </message>
    <message>
        <source>Everything written down is in %1. Steps that can be undone, and photographs, are not in it.</source>
        <translation>Wszystko, co zapisano, jest w&#xa0;%1. Nie ma tam kroków, które można cofnąć, ani zdjęć.</translation>
    </message>
    <message>
        <source>The book was not written out.
%1</source>
        <translation>Dziennika nie udało się zapisać do pliku.
%1</translation>
    </message>
    <message>
        <source>Nothing was written: %1 holds %2 already. Choose an empty folder.</source>
        <translation>Niczego nie zapisano: w&#xa0;%1 jest już %2. Należy wybrać pusty folder.</translation>
    </message>
    <message numerus="yes">
        <source>%n tables were written into %1.</source>
        <translation>
            <numerusform>Zapisano %n tabelę w&#xa0;%1.</numerusform>
            <numerusform>Zapisano %n tabele w&#xa0;%1.</numerusform>
            <numerusform>Zapisano %n tabel w&#xa0;%1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The tables were not all written.
%1</source>
        <translation>Nie wszystkie tabele udało się zapisać.
%1</translation>
    </message>
    <message>
        <source>The book as one document</source>
        <translation>Dziennik jako jeden dokument</translation>
    </message>
    <message>
        <source>Documents (*.json)</source>
        <translation>Dokumenty (*.json)</translation>
    </message>
    <message>
        <source>A folder for the tables</source>
        <translation>Folder na tabele</translation>
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
        <translation>&amp;Jeszcze jeden korpus na wierzch</translation>
    </message>
    <message>
        <source>super</source>
        <translation>nadstawka</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Zdejmij</translation>
    </message>
    <message>
        <source>own measures</source>
        <translation>własne wymiary</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>jak zwykle</translation>
    </message>
    <message>
        <source>%{combs}: </source>
        <translation>ramki: </translation>
    </message>
    <message>
        <source>Format of box %1 from the floor</source>
        <translation>Typ korpusu %1 od dołu</translation>
    </message>
    <message>
        <source>%{Combs} in box %1</source>
        <translation>Ramki w&#xa0;korpusie %1</translation>
    </message>
    <message>
        <source>Box %1 is a super</source>
        <translation>Korpus %1 jest nadstawką</translation>
    </message>
    <message>
        <source>Take box %1 off</source>
        <translation>Zdejmij korpus %1</translation>
    </message>
    <message>
        <source>Box %1 from the floor, %2</source>
        <translation>Korpus %1 od dołu, %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColoniesField</name>
    <message>
        <source>How many colonies</source>
        <translation>Ile rodzin</translation>
    </message>
    <message>
        <source>How &amp;many:</source>
        <translation>&amp;Ile:</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Rodzina %1</translation>
    </message>
    <message>
        <source>Name of colony %1</source>
        <translation>Nazwa rodziny %1</translation>
    </message>
    <message>
        <source>boxes: </source>
        <translation>korpusy: </translation>
    </message>
    <message>
        <source>Boxes of colony %1 in winter</source>
        <translation>Korpusy rodziny %1 zimą</translation>
    </message>
    <message>
        <source>Colony %1 needs a name.</source>
        <translation>Rodzina %1 musi mieć nazwę.</translation>
    </message>
    <message>
        <source>Two colonies are called %1; give each a name of its own.</source>
        <translation>Dwie rodziny nazywają się %1; każda musi mieć własną nazwę.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColonyView</name>
    <message>
        <source>Pages of the colony</source>
        <translation>Strony rodziny</translation>
    </message>
    <message>
        <source>&amp;In the hive</source>
        <translation>W&#xa0;&amp;ulu</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>&amp;Karmienie</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>&amp;Na wadze</translation>
    </message>
    <message>
        <source>S&amp;tory</source>
        <translation>Kron&amp;ika</translation>
    </message>
    <message>
        <source>Wh&amp;at if</source>
        <translation>A&#xa0;&amp;gdyby…</translation>
    </message>
    <message>
        <source>This advice is the plan now: its visits stand on the page Feeding, to be ticked off or skipped.</source>
        <translation>To zalecenie jest teraz planem: jego wizyty są na stronie „Karmienie”, gdzie można je odhaczyć lub pominąć.</translation>
    </message>
    <message>
        <source>The visits of your plan are not to be made now: %1.</source>
        <translation>Wizyt z&#xa0;planu nie należy teraz wykonywać: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n visits of your plan are still to come (page Feeding).</source>
        <translation>
            <numerusform>Z&#xa0;planu pozostała %n wizyta (strona „Karmienie”).</numerusform>
            <numerusform>Z&#xa0;planu pozostały %n wizyty (strona „Karmienie”).</numerusform>
            <numerusform>Z&#xa0;planu pozostało %n wizyt (strona „Karmienie”).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n planned visits are past and neither ticked off nor skipped (page Feeding); until then they count as not made.</source>
        <translation>
            <numerusform>%n zaplanowana wizyta minęła i&#xa0;nie jest ani odhaczona, ani pominięta (strona „Karmienie”); do tego czasu liczy się jako niewykonana.</numerusform>
            <numerusform>%n zaplanowane wizyty minęły i&#xa0;nie są ani odhaczone, ani pominięte (strona „Karmienie”); do tego czasu liczą się jako niewykonane.</numerusform>
            <numerusform>%n zaplanowanych wizyt minęło i&#xa0;nie są ani odhaczone, ani pominięte (strona „Karmienie”); do tego czasu liczą się jako niewykonane.</numerusform>
        </translation>
    </message>
    <message>
        <source>%{Comb} b&amp;y %{comb}</source>
        <translation>&amp;Ramka po ramce</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombDrawing</name>
    <message>
        <source>The combs of the hive</source>
        <translation>Plastry ula</translation>
    </message>
    <message>
        <source>No comb is recorded</source>
        <translation>Żaden plaster nie jest zapisany</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>korpus %1</translation>
    </message>
    <message>
        <source>super</source>
        <translation>nadstawka</translation>
    </message>
    <message>
        <source>Share of the comb: %1</source>
        <translation>Udział plastra: %1</translation>
    </message>
    <message>
        <source>the %{comb} before</source>
        <translation>poprzednia ramka</translation>
    </message>
    <message>
        <source>the next %{comb}</source>
        <translation>następna ramka</translation>
    </message>
    <message>
        <source>the %{comb} above or below</source>
        <translation>ramka powyżej lub poniżej</translation>
    </message>
    <message>
        <source>the first or the last %{comb}</source>
        <translation>pierwsza lub ostatnia ramka</translation>
    </message>
    <message>
        <source>holds what the %{comb} entered last holds, and goes on to the next</source>
        <translation>ma to samo co ramka wpisana ostatnio; przejście do następnej</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombFields</name>
    <message>
        <source>Share of the comb: %1</source>
        <translation>Udział plastra: %1</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Share of the comb that is built</source>
        <translation>Jaka część plastra jest odbudowana</translation>
    </message>
    <message>
        <source>built</source>
        <translation>odbudowane</translation>
    </message>
    <message>
        <source>Measure on a photo&amp;graph…</source>
        <translation>Zmierz na zdję&amp;ciu…</translation>
    </message>
    <message>
        <source>How the comb was seen</source>
        <translation>Jak oglądano plaster</translation>
    </message>
    <message>
        <source>One face, a window, or not at all: the less was seen, the wider the spread</source>
        <translation>Jedna strona, okienko albo wcale: im mniej widziano, tym szerszy przedział</translation>
    </message>
    <message>
        <source>both faces</source>
        <translation>obie strony</translation>
    </message>
    <message>
        <source>one face</source>
        <translation>jedna strona</translation>
    </message>
    <message>
        <source>through a window</source>
        <translation>przez okienko</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>nie oglądano</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>widziane</translation>
    </message>
    <message>
        <source>Bar width</source>
        <translation>Szerokość snozy</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>snoza</translation>
    </message>
    <message>
        <source>Super, %{comb} %1:</source>
        <translation>Nadstawka, ramka %1:</translation>
    </message>
    <message>
        <source>Box %1, %{comb} %2:</source>
        <translation>Korpus %1, ramka %2:</translation>
    </message>
    <message>
        <source>%{Comb} %1:</source>
        <translation>Ramka %1:</translation>
    </message>
    <message>
        <source>empty %1, measured</source>
        <translation>puste %1, zmierzone</translation>
    </message>
    <message>
        <source>empty %1</source>
        <translation>puste %1</translation>
    </message>
    <message>
        <source>holds %1</source>
        <translation>zawiera %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombPortrait</name>
    <message>
        <source>The comb of the row, drawn</source>
        <translation>Rysunek plastra z&#xa0;wiersza</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombQuickForm</name>
    <message>
        <source>Share of those stores that is capped</source>
        <translation>Jaka część tych zapasów jest zasklepiona</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>of it cappe&amp;d</source>
        <translation>z&#xa0;tego &amp;zasklepione</translation>
    </message>
    <message>
        <source>%{Combs} full of stores</source>
        <translation>Ramki pełne pokarmu</translation>
    </message>
    <message>
        <source>%{Combs} half full of stores</source>
        <translation>Ramki w&#xa0;połowie pełne pokarmu</translation>
    </message>
    <message>
        <source>%{combs} f&amp;ull</source>
        <translation>pełne r&amp;amki</translation>
    </message>
    <message>
        <source>%{combs} half fu&amp;ll</source>
        <translation>w&#xa0;p&amp;ołowie pełne ramki</translation>
    </message>
    <message>
        <source>A count is good to about %1, a look at both faces of each %{comb} to %2. Empty comb for feed, and %{combs} to take, are only known from a look.</source>
        <translation>Policzenie ramek jest dokładne do około %1, obejrzenie obu stron każdej do %2. Pusty susz na pokarm i ramki do odebrania są znane tylko z przeglądu.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombStrip</name>
    <message>
        <source>The hive from above</source>
        <translation>Ul z&#xa0;góry</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs}, the lowest box %1 from side to side</source>
        <translation>
            <numerusform>%n ramka, dolny korpus %1 od boku do boku</numerusform>
            <numerusform>%n ramki, dolny korpus %1 od boku do boku</numerusform>
            <numerusform>%n ramek, dolny korpus %1 od boku do boku</numerusform>
        </translation>
    </message>
    <message>
        <source>super</source>
        <translation>nadstawka</translation>
    </message>
    <message>
        <source>entrance</source>
        <translation>wylotek</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>korpus %1</translation>
    </message>
    <message>
        <source>%1, bar %2</source>
        <translation>%1, snoza %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombTableModel</name>
    <message>
        <source>super, %{comb} %1</source>
        <translation>nadstawka, ramka %1</translation>
    </message>
    <message>
        <source>box %1, %{comb} %2</source>
        <translation>korpus %1, ramka %2</translation>
    </message>
    <message>
        <source>%{comb} %1</source>
        <translation>ramka %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>open</source>
        <translation>nakrop</translation>
    </message>
    <message>
        <source>bread</source>
        <translation>pierzga</translation>
    </message>
    <message>
        <source>faces</source>
        <translation>strony</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>snoza</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>syrop</translation>
    </message>
    <message>
        <source>Share of the built comb that is %1, both faces together</source>
        <translation>Jaka część odbudowanego plastra to %1, obie strony razem</translation>
    </message>
    <message>
        <source>Where the %{comb} hangs: counted from the left, seen from behind, or from the entrance of a long hive</source>
        <translation>Gdzie wisi ramka: liczone od lewej, patrząc od tyłu, a&#xa0;w&#xa0;leżaku od wylotka</translation>
    </message>
    <message>
        <source>What is left of the built comb when all else is taken off</source>
        <translation>Co zostaje z&#xa0;odbudowanego plastra po odjęciu reszty</translation>
    </message>
    <message>
        <source>How much of the frame, or below the bar, is comb</source>
        <translation>Jaka część ramki albo miejsca pod snozą jest plastrem</translation>
    </message>
    <message>
        <source>Faces that were looked at; the fewer, the wider the spread</source>
        <translation>Obejrzane strony; im mniej, tym szerszy przedział</translation>
    </message>
    <message>
        <source>From the middle of this %{comb} to the middle of the next; thicker combs hold more</source>
        <translation>Od środka tego plastra do środka następnego; grubsze plastry mieszczą więcej</translation>
    </message>
    <message>
        <source>This %{comb} took syrup: what is in it is for the bees alone</source>
        <translation>Ta ramka dostała syrop: to, co w&#xa0;niej jest, jest tylko dla pszczół</translation>
    </message>
    <message>
        <source>Brood was reared in it for years, so its cells hold less</source>
        <translation>Latami wychowywał się w&#xa0;nim czerw, więc komórki mieszczą mniej</translation>
    </message>
    <message>
        <source>Honey and nectar in the %{comb}; in brackets eight in ten</source>
        <translation>Miód i&#xa0;nakrop w&#xa0;ramce; w&#xa0;nawiasie osiem przypadków na dziesięć</translation>
    </message>
    <message>
        <source>%{comb}</source>
        <translation>ramka</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>puste</translation>
    </message>
    <message>
        <source>built</source>
        <translation>odbudowane</translation>
    </message>
    <message>
        <source>faces seen</source>
        <translation>widziane strony</translation>
    </message>
    <message>
        <source>bar width</source>
        <translation>szerokość snozy</translation>
    </message>
    <message>
        <source>took syrup</source>
        <translation>dostała syrop</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>stary plaster</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miód</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombTablePage</name>
    <message>
        <source>The look as a table, a row a comb</source>
        <translation>Przegląd jako tabela, w&#xa0;każdym wierszu plaster</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CurvePlot</name>
    <message>
        <source>Temperatures of the year at this place</source>
        <translation>Temperatury roku w&#xa0;tym miejscu</translation>
    </message>
    <message>
        <source>coldest day of the year %1 on average</source>
        <translation>najzimniejszy dzień roku średnio %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::DayField</name>
    <message>
        <source>Calendar: %1</source>
        <translation>Kalendarz: %1</translation>
    </message>
    <message>
        <source>Choose the day from a calendar (Alt and the down arrow)</source>
        <translation>Wybór dnia z&#xa0;kalendarza (Alt i&#xa0;strzałka w&#xa0;dół)</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Co się nie zgadza</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>the next day, or the day before</source>
        <translation>następny lub poprzedni dzień</translation>
    </message>
    <message>
        <source>a month later or earlier</source>
        <translation>miesiąc później lub wcześniej</translation>
    </message>
    <message>
        <source>opens the calendar</source>
        <translation>otwiera kalendarz</translation>
    </message>
    <message>
        <source>takes what was typed</source>
        <translation>przyjmuje to, co wpisano</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::DoubtBar</name>
    <message>
        <source>A question about what was typed</source>
        <translation>Pytanie o&#xa0;to, co wpisano</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>To %1</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>Zgadza się</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::EntryForm</name>
    <message>
        <source>What is wrong</source>
        <translation>Co się nie zgadza</translation>
    </message>
    <message>
        <source>W&amp;rite down</source>
        <translation>&amp;Zapisz</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Anuluj</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nie podano</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>tak</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nie</translation>
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
        <translation>%1 białego cukru na %2 wody: %3 syropu, wagowo %4</translation>
    </message>
    <message>
        <source>%1 of fondant, touching the cluster</source>
        <translation>%1 ciasta, tak by dotykało kłębu</translation>
    </message>
    <message>
        <source>Thin enough to take quickly: %1 days with more than %2 at their warmest are usual before the last day, time to ripen it.</source>
        <translation>Dość rzadki, by pobrały go szybko: do ostatniego dnia bywa zwykle %1 dni, w&#xa0;których jest cieplej niż %2, dość czasu na przerobienie.</translation>
    </message>
    <message>
        <source>Thick, because only %1 days with more than %2 at their warmest are usual before the last day: less water to drive off.</source>
        <translation>Gęsty, bo do ostatniego dnia bywa zwykle tylko %1 dni, w&#xa0;których jest cieplej niż %2: mniej wody do odparowania.</translation>
    </message>
    <message>
        <source>Nothing liquid after %1: what is taken later no longer ripens.</source>
        <translation>Po %1 nic płynnego: co zostanie pobrane później, już nie dojrzeje.</translation>
    </message>
    <message>
        <source>There is no empty comb for more: take a full %{comb} out, or add drawn comb, before feeding on.</source>
        <translation>Na więcej nie ma pustego suszu: przed dalszym karmieniem wyjąć pełną ramkę albo dodać susz.</translation>
    </message>
    <message>
        <source>It is too late for syrup; fondant instead.</source>
        <translation>Na syrop jest za późno; zamiast niego ciasto.</translation>
    </message>
    <message>
        <source>So many bees cannot take all of it as syrup in time; the rest is given as fondant.</source>
        <translation>Tyle pszczół nie zdąży pobrać całości jako syropu; resztę podaje się jako ciasto.</translation>
    </message>
    <message>
        <source>Part of it comes later than is best: begin at once.</source>
        <translation>Część wypada później, niż najlepiej: zacząć od razu.</translation>
    </message>
    <message>
        <source>Thick syrup in small portions of %1 might still be taken, but may stay open.</source>
        <translation>Gęsty syrop w&#xa0;małych dawkach po %1 może jeszcze zostać pobrany, ale może pozostać niezasklepiony.</translation>
    </message>
    <message>
        <source>On the coldest likely night up to %1 of 100 parts of the sugar may set as crystals: warm the syrup, give it in small portions.</source>
        <translation>W&#xa0;najzimniejszą prawdopodobną noc do %1 na 100 części cukru może się wytrącić jako kryształy: syrop ogrzać i&#xa0;podawać w&#xa0;małych dawkach.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Przepis</translation>
    </message>
    <message>
        <source>Visits, by day</source>
        <translation>Wizyty, według dni</translation>
    </message>
    <message>
        <source>What was fed, and visits planned</source>
        <translation>Podany pokarm i&#xa0;zaplanowane wizyty</translation>
    </message>
    <message>
        <source>Nothing was fed yet. What you give, and the visits of a plan you made yours, stand here.</source>
        <translation>Nic jeszcze nie podano. Będzie tu to, co się poda, i&#xa0;wizyty z&#xa0;przyjętego planu.</translation>
    </message>
    <message>
        <source>Fe&amp;d…</source>
        <translation>Kar&amp;mienie…</translation>
    </message>
    <message>
        <source>Visit &amp;made</source>
        <translation>Wizyta wyk&amp;onana</translation>
    </message>
    <message>
        <source>S&amp;kip the visit</source>
        <translation>Pomiń wi&amp;zytę</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Obliczanie…</translation>
    </message>
    <message>
        <source>Whether to feed cannot be said yet. Once it can, the recipe, the visits and the last day stand here.</source>
        <translation>Czy karmić, nie można jeszcze powiedzieć. Gdy będzie można, będą tu przepis, wizyty i&#xa0;ostatni dzień.</translation>
    </message>
    <message>
        <source>No feeding is needed. If that changes, the recipe, the visits and the last day stand here.</source>
        <translation>Karmienie nie jest potrzebne. Jeśli to się zmieni, będą tu przepis, wizyty i&#xa0;ostatni dzień.</translation>
    </message>
    <message>
        <source>Only if it is wintered alone after all; better to unite it.</source>
        <translation>Tylko jeśli ma jednak zimować sama; lepiej ją połączyć.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FindDialog</name>
    <message>
        <source>Find</source>
        <translation>Znajdź</translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation>Czego szukać</translation>
    </message>
    <message>
        <source>a colony, a note, an entry, a place, a source…</source>
        <translation>rodzina, notatka, wpis, miejsce, źródło…</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Co znaleziono</translation>
    </message>
    <message>
        <source>Type some letters of what you look for.</source>
        <translation>Wpisać kilka liter tego, czego się szuka.</translation>
    </message>
    <message>
        <source>Nothing holds these letters.</source>
        <translation>Nic nie zawiera tych liter.</translation>
    </message>
    <message numerus="yes">
        <source>%n found. Enter shows what is chosen.</source>
        <translation>
            <numerusform>Znaleziono: %n. Enter pokazuje wybraną pozycję.</numerusform>
            <numerusform>Znaleziono: %n. Enter pokazuje wybraną pozycję.</numerusform>
            <numerusform>Znaleziono: %n. Enter pokazuje wybraną pozycję.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>More than %n; type more letters.</source>
        <translation>
            <numerusform>Więcej niż %n; wpisać więcej liter.</numerusform>
            <numerusform>Więcej niż %n; wpisać więcej liter.</numerusform>
            <numerusform>Więcej niż %n; wpisać więcej liter.</numerusform>
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
        <translation>Przebieg zimy</translation>
    </message>
    <message>
        <source>Broken lines: what eighty of a hundred winters left, as forecast in autumn. Band: what eighty of a hundred that fit leave from today. Points: what was weighed, as stores, with eighty in a hundred odds. Dotted: the reserve; upright lines: today and the day spring forage starts.</source>
        <translation>Linie przerywane: co według prognozy z&#xa0;jesieni zostaje w&#xa0;osiemdziesięciu na sto zim. Pasmo: co zostaje od dziś w&#xa0;osiemdziesięciu na sto zgodnych zim. Punkty: co zważono, w&#xa0;przeliczeniu na zapasy, z&#xa0;pewnością osiemdziesięciu na sto. Linia kropkowana: żelazna rezerwa; linie pionowe: dziś i&#xa0;początek pożytków wiosennych.</translation>
    </message>
    <message>
        <source>Following the winter…</source>
        <translation>Śledzenie zimy…</translation>
    </message>
    <message>
        <source>What was seen since autumn is being held against the simulated winters.</source>
        <translation>Obserwacje od jesieni są porównywane z&#xa0;symulowanymi zimami.</translation>
    </message>
    <message>
        <source>This winter cannot be followed yet.</source>
        <translation>Tej zimy nie można jeszcze śledzić.</translation>
    </message>
    <message>
        <source>This winter is still to be decided.</source>
        <translation>O&#xa0;tej zimie jeszcze nie zdecydowano.</translation>
    </message>
    <message>
        <source>From the day after the decision on, every weighing and glance is held against its forecast here.</source>
        <translation>Od następnego dnia po decyzji każde ważenie i&#xa0;każdy rzut oka porównuje się tu z&#xa0;prognozą.</translation>
    </message>
    <message>
        <source>On the way into winter: about %1 left, where the forecast expected %2.</source>
        <translation>W&#xa0;drodze do zimy: zostało około %1, a&#xa0;prognoza oczekiwała %2.</translation>
    </message>
    <message>
        <source>Until winter begins what to do is said above, from what is known today; then it is said here too.</source>
        <translation>Do początku zimy to, co robić, jest podane powyżej, na podstawie tego, co wiadomo dziś; potem będzie także tutaj.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FollowPlot</name>
    <message>
        <source>Forecast of autumn, forecast of now, and what was weighed</source>
        <translation>Prognoza z&#xa0;jesieni, prognoza teraz i&#xa0;to, co zważono</translation>
    </message>
    <message>
        <source>Points: %1</source>
        <translation>Punkty: %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FormatField</name>
    <message>
        <source>comb %1 by %2</source>
        <translation>plaster %1 na %2</translation>
    </message>
    <message>
        <source>%1, one room of %2 %{combs}</source>
        <translation>%1, jedna komora, ramek: %2</translation>
    </message>
    <message>
        <source>%1, %2 in a box</source>
        <translation>%1, w&#xa0;korpusie ramek: %2</translation>
    </message>
    <message>
        <source>Find a hive format by any word</source>
        <translation>Szukanie typu ula po dowolnym słowie</translation>
    </message>
    <message>
        <source>find: national, dadant, top bar, deep…</source>
        <translation>szukaj: wielkopolski, dadant, snozowy, głęboki…</translation>
    </message>
    <message>
        <source>Hive format</source>
        <translation>Typ ula</translation>
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
        <translation>Zwykłe w&#xa0;kraju: %1</translation>
    </message>
    <message>
        <source>No format has these words. Fewer letters find more; own measures are entered with the colony&apos;s hive.</source>
        <translation>Żaden typ nie ma tych słów. Mniej liter znajduje więcej; własne wymiary wpisuje się przy ulu rodziny.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GroundsPopup</name>
    <message>
        <source>How this number was got</source>
        <translation>Skąd wzięła się ta liczba</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GuideLink</name>
    <message>
        <source>How to judge this: %1</source>
        <translation>Jak to ocenić: %1</translation>
    </message>
    <message>
        <source>How to judge this</source>
        <translation>Jak to ocenić</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GuideWindow</name>
    <message>
        <source>Judging stores</source>
        <translation>Jak oceniać zapasy</translation>
    </message>
    <message>
        <source>Pages of the guide</source>
        <translation>Strony poradnika</translation>
    </message>
    <message>
        <source>The page</source>
        <translation>Strona</translation>
    </message>
    <message>
        <source>your own, %1 by %2</source>
        <comment>the measures of a comb</comment>
        <translation>własny, %1 na %2</translation>
    </message>
    <message>
        <source>The tables this guide takes its numbers from are not read yet. Open it again in a moment.</source>
        <translation>Tabele, z&#xa0;których ten poradnik bierze liczby, nie są jeszcze wczytane. Należy go za chwilę otworzyć ponownie.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HelpWindow</name>
    <message>
        <source>Show only what holds these letters</source>
        <translation>Pokaż tylko to, co zawiera te litery</translation>
    </message>
    <message>
        <source>look for…</source>
        <translation>szukaj…</translation>
    </message>
    <message>
        <source>Nothing here holds these letters.</source>
        <translation>Nic tu nie zawiera tych liter.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HistoryDialog</name>
    <message>
        <source>Every step of the book, newest first</source>
        <translation>Każdy krok w&#xa0;dzienniku, od najnowszych</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historia</translation>
    </message>
    <message>
        <source>Choose a step to go back to before it. What is taken back stays in this list and can be done again until something else is entered.</source>
        <translation>Wybór kroku pozwala wrócić do stanu sprzed niego. Cofnięte kroki zostają na tej liście i&#xa0;można je ponowić, dopóki nie wpisze się czegoś innego.</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>&amp;Cofnij</translation>
    </message>
    <message>
        <source>Do &amp;again</source>
        <translation>&amp;Ponów</translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be taken back.</source>
        <translation>
            <numerusform>Zostanie cofnięty %n krok.</numerusform>
            <numerusform>Zostaną cofnięte %n kroki.</numerusform>
            <numerusform>Zostanie cofniętych %n kroków.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be done again.</source>
        <translation>
            <numerusform>Zostanie ponowiony %n krok.</numerusform>
            <numerusform>Zostaną ponowione %n kroki.</numerusform>
            <numerusform>Zostanie ponowionych %n kroków.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is chosen that can be taken back or done again.</source>
        <translation>Nie wybrano niczego, co można cofnąć lub ponowić.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ImportDialog</name>
    <message>
        <source>Import %1</source>
        <translation>Import: %1</translation>
    </message>
    <message>
        <source>What the table holds</source>
        <translation>Co zawiera tabela</translation>
    </message>
    <message>
        <source>What would be imported</source>
        <translation>Co zostanie zaimportowane</translation>
    </message>
    <message>
        <source>What is wrong in the file, by line and column</source>
        <translation>Co się nie zgadza w&#xa0;pliku, według wierszy i&#xa0;kolumn</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importuj</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Anuluj</translation>
    </message>
    <message>
        <source>the table holds</source>
        <translation>tabela zawiera</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Są &amp;poprawne tak, jak są</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Czytanie…</translation>
    </message>
    <message numerus="yes">
        <source>A whole book of %n entries. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.</source>
        <translation>
            <numerusform>Cały dziennik, %n wpis. Obecny dziennik stanie się dokładnie takim; można to cofnąć, a&#xa0;przedtem powstanie kopia zapasowa.</numerusform>
            <numerusform>Cały dziennik, %n wpisy. Obecny dziennik stanie się dokładnie takim; można to cofnąć, a&#xa0;przedtem powstanie kopia zapasowa.</numerusform>
            <numerusform>Cały dziennik, %n wpisów. Obecny dziennik stanie się dokładnie takim; można to cofnąć, a&#xa0;przedtem powstanie kopia zapasowa.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take the &amp;book as it stands: no answer believes these</source>
        <translation>Przyjmij &amp;dziennik tak, jak jest: żadna odpowiedź nie uwierzy tym wpisom</translation>
    </message>
    <message>
        <source>%1; %2; %3. Everything or nothing is imported, as one step that can be undone; a backup is made first.</source>
        <translation>%1; %2; %3. Importuje się wszystko albo nic, jako jeden krok, który można cofnąć; przedtem powstaje kopia zapasowa.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n nowy</numerusform>
            <numerusform>%n nowe</numerusform>
            <numerusform>%n nowych</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n changed</source>
        <translation>
            <numerusform>%n zmieniony</numerusform>
            <numerusform>%n zmienione</numerusform>
            <numerusform>%n zmienionych</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n said already, left out</source>
        <translation>
            <numerusform>%n już jest, pominięty</numerusform>
            <numerusform>%n już są, pominięte</numerusform>
            <numerusform>%n już jest, pominiętych</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>Niczego nie zaimportowano.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing can be imported before this is put right in the file: %n faults.</source>
        <translation>
            <numerusform>Niczego nie można zaimportować, dopóki nie zostanie to poprawione w&#xa0;pliku: %n błąd.</numerusform>
            <numerusform>Niczego nie można zaimportować, dopóki nie zostanie to poprawione w&#xa0;pliku: %n błędy.</numerusform>
            <numerusform>Niczego nie można zaimportować, dopóki nie zostanie to poprawione w&#xa0;pliku: %n błędów.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::JobTableModel</name>
    <message>
        <source>feed syrup, in the evening</source>
        <translation>podać syrop, wieczorem</translation>
    </message>
    <message>
        <source>lay on fondant, touching the cluster</source>
        <translation>położyć ciasto, tak by dotykało kłębu</translation>
    </message>
    <message>
        <source>check: sealed? weigh, feeder off, mouse guard on</source>
        <translation>sprawdzić: zasklepione? zważyć, zdjąć podkarmiaczkę, zabezpieczyć wylotek przed myszami</translation>
    </message>
    <message>
        <source>take honey off, before feeding or treating</source>
        <translation>odebrać miód, przed karmieniem i&#xa0;leczeniem</translation>
    </message>
    <message>
        <source>unite with a healthy neighbour</source>
        <translation>połączyć z&#xa0;inną zdrową rodziną</translation>
    </message>
    <message>
        <source>weigh again, both sides, without opening</source>
        <translation>zważyć ponownie, z&#xa0;obu stron, bez otwierania</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>policzyć osyp roztoczy i&#xa0;znów obejrzeć zapasy</translation>
    </message>
    <message>
        <source>signs of disease: call the bee inspector, move nothing</source>
        <translation>objawy choroby: zawiadomić powiatowego lekarza weterynarii, niczego nie przenosić</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>policzyć plastry obsiadane przez pszczoły</translation>
    </message>
    <message>
        <source>hang in %{combs} from a neighbour</source>
        <translation>wstawić ramki z&#xa0;innej rodziny</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>obejrzeć zapasy albo zważyć</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>wstawić ramkę z&#xa0;jajeczkami z&#xa0;innej rodziny</translation>
    </message>
    <message>
        <source>look for queen cells on the %{comb} with eggs</source>
        <translation>poszukać mateczników na ramce z&#xa0;jajeczkami</translation>
    </message>
    <message>
        <source>hang in one full %{comb} from %1 (its %2)</source>
        <translation>wstawić jedną pełną ramkę z&#xa0;rodziny %1 (tam %2)</translation>
    </message>
    <message numerus="yes">
        <source>hang in %n full %{combs} from %1 (its %2)</source>
        <translation>
            <numerusform>wstawić %n pełną ramkę z&#xa0;rodziny %1 (tam %2)</numerusform>
            <numerusform>wstawić %n pełne ramki z&#xa0;rodziny %1 (tam %2)</numerusform>
            <numerusform>wstawić %n pełnych ramek z&#xa0;rodziny %1 (tam %2)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; to give back: %2</source>
        <translation>%1; do oddania w&#xa0;zamian: %2</translation>
    </message>
    <message>
        <source>unite it with %1, at the latest on this day, in the evening, newspaper between</source>
        <translation>połączyć z&#xa0;rodziną %1, najpóźniej tego dnia wieczorem, przez gazetę</translation>
    </message>
    <message>
        <source>%1 (%2 of sugar)</source>
        <translation>%1 (%2 cukru)</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>do %1</translation>
    </message>
    <message>
        <source>the hive is full</source>
        <translation>ul jest pełny</translation>
    </message>
    <message>
        <source>honey is to come off</source>
        <translation>ma być odebrany miód</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>objawy choroby</translation>
    </message>
    <message>
        <source>no bees are left</source>
        <translation>nie ma już pszczół</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>zalecane</translation>
    </message>
    <message>
        <source>your plan, not now: %1</source>
        <translation>przyjęty plan, nie teraz: %1</translation>
    </message>
    <message>
        <source>your plan, past</source>
        <translation>przyjęty plan, miniony</translation>
    </message>
    <message>
        <source>your plan</source>
        <translation>przyjęty plan</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>dowolny dzień</translation>
    </message>
    <message>
        <source>The day it is due</source>
        <translation>Dzień, na który przypada</translation>
    </message>
    <message>
        <source>day</source>
        <translation>dzień</translation>
    </message>
    <message>
        <source>The colony it is for</source>
        <translation>Rodzina, której dotyczy</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>rodzina</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <translation>Co trzeba zrobić</translation>
    </message>
    <message>
        <source>what</source>
        <translation>co</translation>
    </message>
    <message>
        <source>How much syrup, fondant or honey; in brackets the sugar it takes</source>
        <translation>Ile syropu, ciasta lub miodu; w&#xa0;nawiasie potrzebny cukier</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>ile</translation>
    </message>
    <message>
        <source>Your plan, or what today&apos;s answers advise</source>
        <translation>Przyjęty plan albo to, co zalecają dzisiejsze odpowiedzi</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>skąd</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::LookPage</name>
    <message>
        <source>Where the figure for the stores comes from</source>
        <translation>Skąd pochodzi liczba zapasów</translation>
    </message>
    <message>
        <source>&amp;New look</source>
        <translation>Now&amp;y przegląd</translation>
    </message>
    <message>
        <source>&amp;Queen, temper, note…</source>
        <translation>&amp;Matka, usposobienie, notatka…</translation>
    </message>
    <message>
        <source>Hive…</source>
        <translation>Ul…</translation>
    </message>
    <message>
        <source>Bees:</source>
        <translation>Pszczoły:</translation>
    </message>
    <message>
        <source>Weighed:</source>
        <translation>Zważono:</translation>
    </message>
    <message>
        <source>Not looked at lately.</source>
        <translation>Ostatnio nie oglądano.</translation>
    </message>
    <message>
        <source>Look of %1, seen from behind; boxes as they stand.</source>
        <translation>Przegląd z&#xa0;%1, widok od tyłu; korpusy, jak stoją.</translation>
    </message>
    <message>
        <source>Look of %1, from the entrance end.</source>
        <translation>Przegląd z&#xa0;%1, od strony wylotka.</translation>
    </message>
    <message>
        <source>Look of %1, seen from behind.</source>
        <translation>Przegląd z&#xa0;%1, widok od tyłu.</translation>
    </message>
    <message>
        <source>A new look of the day asked about; its %{combs} begin as they were seen within the last sixty days, else empty</source>
        <translation>Nowy przegląd z&#xa0;dnia, na który liczymy; ramki zaczynają tak, jak je widziano w&#xa0;ostatnich sześćdziesięciu dniach, inaczej puste</translation>
    </message>
    <message>
        <source>In the cold leave the hive closed: what can be told from outside (its weight, its heft, bees flying, a glance under the lid) is written down on the page On the scale. Once it is warm enough to open, “New look” hangs the hive&apos;s %{combs} here. Or only count them:</source>
        <translation>Na mrozie ula nie otwierać: to, co widać z&#xa0;zewnątrz (masa, ciężar w&#xa0;ręku, latające pszczoły, rzut oka pod daszek), zapisuje się na stronie „Na wadze”. Gdy będzie dość ciepło na otwarcie, „Nowy przegląd” wstawi tu ramki ula. Można też tylko je policzyć:</translation>
    </message>
    <message>
        <source>The %{combs} were counted, not looked at one by one; so no %{comb} can be drawn.</source>
        <translation>Ramki policzono, a&#xa0;nie obejrzano po kolei, więc żadnej nie można narysować.</translation>
    </message>
    <message>
        <source>No %{comb} was looked at within sixty days before this day. “New look” hangs the hive&apos;s empty %{combs} here; write on each what it holds, and count the %{combs} the bees cover. Or only count them:</source>
        <translation>W&#xa0;ciągu sześćdziesięciu dni przed tym dniem nie obejrzano żadnej ramki. „Nowy przegląd” wstawi tu puste ramki ula; na każdej zapisać, co zawiera, i&#xa0;policzyć plastry obsiadane przez pszczoły. Można też tylko je policzyć:</translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <translation>%1 %2 (%3)</translation>
    </message>
    <message>
        <source>Stores %1: %2.</source>
        <translation>Zapasy %1: %2.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1 Bees about %2.</source>
        <translation>%1 Pszczół około %2.</translation>
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
        <translation>%1 – %2, %3</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Cofnij</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Cofnij: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Ponów</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Ponów: %1</translation>
    </message>
    <message>
        <source>Due looks as a calendar</source>
        <translation>Terminy jako kalendarz</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Kalendarze (*.ics)</translation>
    </message>
    <message>
        <source>%1: its answer is not worked out, so of it only what is planned is in the calendar</source>
        <translation>%1: odpowiedź nie jest obliczona, więc w&#xa0;kalendarzu jest dla niej tylko to, co zaplanowano</translation>
    </message>
    <message>
        <source>What is due is in %1.</source>
        <translation>Terminy są w&#xa0;%1.</translation>
    </message>
    <message>
        <source>What is due could not be worked out.
%1</source>
        <translation>Terminów nie udało się obliczyć.
%1</translation>
    </message>
    <message>
        <source>The calendar could not be written to %1. Choose another folder.</source>
        <translation>Kalendarza nie udało się zapisać w&#xa0;%1. Należy wybrać inny folder.</translation>
    </message>
    <message>
        <source>Left out:</source>
        <translation>Pominięto:</translation>
    </message>
    <message>
        <source>&amp;Colony</source>
        <translation>&amp;Rodzina</translation>
    </message>
    <message>
        <source>&amp;New colony…</source>
        <translation>&amp;Nowa rodzina…</translation>
    </message>
    <message>
        <source>New &amp;look</source>
        <translation>Nowy &amp;przegląd</translation>
    </message>
    <message>
        <source>&amp;Weighed…</source>
        <translation>&amp;Ważenie…</translation>
    </message>
    <message>
        <source>&amp;Fed…</source>
        <translation>&amp;Karmienie…</translation>
    </message>
    <message>
        <source>&amp;Harvest…</source>
        <translation>&amp;Miodobranie…</translation>
    </message>
    <message>
        <source>&amp;Treatment…</source>
        <translation>&amp;Zabieg leczniczy…</translation>
    </message>
    <message>
        <source>A &amp;glance in winter…</source>
        <translation>Szybki &amp;rzut oka zimą…</translation>
    </message>
    <message>
        <source>How the wint&amp;er went…</source>
        <translation>&amp;Jak przebiegła zimowla…</translation>
    </message>
    <message>
        <source>N&amp;ote…</source>
        <translation>N&amp;otatka…</translation>
    </message>
    <message>
        <source>Name, &amp;queen, feeder…</source>
        <translation>Nazwa, m&amp;atka, podkarmiaczka…</translation>
    </message>
    <message>
        <source>Hi&amp;ve…</source>
        <translation>&amp;Ul…</translation>
    </message>
    <message>
        <source>To another &amp;yard…</source>
        <translation>Do &amp;innej pasieki…</translation>
    </message>
    <message>
        <source>What became of &amp;it…</source>
        <translation>&amp;Co się z&#xa0;nią stało…</translation>
    </message>
    <message>
        <source>&amp;Remove it with all its records</source>
        <translation>U&amp;suń ją ze wszystkimi wpisami</translation>
    </message>
    <message numerus="yes">
        <source>One file at a time, please: only case files can be opened together. Nothing was done with these %n.</source>
        <translation>
            <numerusform>Po jednym pliku naraz: tylko pliki danych rodzin można otwierać razem. Z&#xa0;tym %n plikiem nic nie zrobiono.</numerusform>
            <numerusform>Po jednym pliku naraz: tylko pliki danych rodzin można otwierać razem. Z&#xa0;tymi %n plikami nic nie zrobiono.</numerusform>
            <numerusform>Po jednym pliku naraz: tylko pliki danych rodzin można otwierać razem. Z&#xa0;tymi %n plikami nic nie zrobiono.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is no file that can be taken here. A book (.larder), a case file or a whole book (.json), a table or the log of a scale (.csv), or a photograph can be dropped.</source>
        <translation>%1 nie jest plikiem, który można tu przyjąć. Można upuścić dziennik (.larder), plik danych rodziny lub cały dziennik (.json), tabelę lub zapis wagi (.csv) albo zdjęcie.</translation>
    </message>
    <message>
        <source>%1 belongs to a book: open one that can be written first, then drop it again.</source>
        <translation>%1 musi trafić do dziennika: najpierw otworzyć taki, w&#xa0;którym można zapisywać, potem upuścić ponownie.</translation>
    </message>
    <message>
        <source>A table of entries…</source>
        <translation>Tabela wpisów…</translation>
    </message>
    <message>
        <source>The log of its scale…</source>
        <translation>Zapis jej wagi…</translation>
    </message>
    <message>
        <source>What is %1: a table of entries, or the log of the scale under the colony shown?</source>
        <translation>Czym jest %1: tabelą wpisów czy zapisem wagi spod wyświetlanej rodziny?</translation>
    </message>
    <message>
        <source>What is %1? Where it is the log of a scale, choose its colony and drop it again.</source>
        <translation>Czym jest %1? Jeśli to zapis wagi, wybrać jej rodzinę i&#xa0;upuścić ponownie.</translation>
    </message>
    <message>
        <source>A photograph measures one comb: choose the colony and the comb, then drop %1 on it.</source>
        <translation>Na zdjęciu mierzy się jeden plaster: wybrać rodzinę i&#xa0;plaster, potem upuścić na niego %1.</translation>
    </message>
    <message>
        <source>Save sheet</source>
        <translation>Zapisz kartę</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet was written to %1.</source>
        <translation>Kartę zapisano w&#xa0;%1.</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nie zapisano</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1. Choose another folder.</source>
        <translation>Karty nie udało się zapisać w&#xa0;%1. Należy wybrać inny folder.</translation>
    </message>
    <message>
        <source>The yard plan on paper</source>
        <translation>Plan pasieki na papierze</translation>
    </message>
    <message>
        <source>The colony sheet on paper</source>
        <translation>Karta rodziny na papierze</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>pasieka</translation>
    </message>
    <message>
        <source>note of the yard</source>
        <translation>notatka o&#xa0;pasiece</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>rodzina</translation>
    </message>
    <message>
        <source>note of the colony</source>
        <translation>notatka o&#xa0;rodzinie</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>guide</source>
        <translation>poradnik</translation>
    </message>
    <message>
        <source>climate station</source>
        <translation>stacja klimatyczna</translation>
    </message>
    <message>
        <source>source</source>
        <translation>źródło</translation>
    </message>
    <message>
        <source>place</source>
        <translation>miejsce</translation>
    </message>
    <message>
        <source>%1 is not among the living colonies of the day asked about. Choose an earlier day to see it.</source>
        <translation>%1 nie należy do żywych rodzin w&#xa0;dniu, na który liczymy. Aby ją zobaczyć, należy wybrać wcześniejszy dzień.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Źródła</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>Skąd pochodzą liczby</translation>
    </message>
    <message>
        <source>used in: %1</source>
        <translation>użyte w: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Pomoc</translation>
    </message>
    <message>
        <source>&amp;Judging stores</source>
        <translation>&amp;Jak oceniać zapasy</translation>
    </message>
    <message>
        <source>Words &amp;used here</source>
        <translation>&amp;Słowniczek</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Klawisze</translation>
    </message>
    <message>
        <source>&amp;Sources</source>
        <translation>Źródł&amp;a</translation>
    </message>
    <message>
        <source>&amp;Why this answer?</source>
        <translation>&amp;Dlaczego taka odpowiedź?</translation>
    </message>
    <message>
        <source>&amp;About Winterlarder</source>
        <translation>&amp;O programie Winterlarder</translation>
    </message>
    <message>
        <source>About Winterlarder</source>
        <translation>O&#xa0;programie Winterlarder</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Winterlarder %1&lt;/h3&gt;&lt;p&gt;Will what is in the hive last until the first reliable forage?&lt;/p&gt;&lt;p&gt;Where disease or medicines are concerned, the bee inspector, the vet and local law come first.&lt;/p&gt;&lt;p&gt;Places are from the GeoNames geographical database, CC BY 4.0.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Winterlarder %1&lt;/h3&gt;&lt;p&gt;Czy to, co jest w&#xa0;ulu, wystarczy do pierwszego pewnego pożytku?&lt;/p&gt;&lt;p&gt;W&#xa0;sprawach chorób i&#xa0;leków najpierw powiatowy lekarz weterynarii, lekarz weterynarii i&#xa0;miejscowe prawo.&lt;/p&gt;&lt;p&gt;Miejsca pochodzą z&#xa0;geograficznej bazy danych GeoNames, CC BY 4.0.&lt;/p&gt;&lt;p&gt;Wolne oprogramowanie na licencji GNU General Public License w&#xa0;wersji 3 lub późniejszej.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Words used here</source>
        <translation>Słowniczek</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Klawisze</translation>
    </message>
    <message>
        <source>Menu “%1”</source>
        <translation>Menu „%1”</translation>
    </message>
    <message>
        <source>On the %{combs} of the hive</source>
        <translation>Na ramkach ula</translation>
    </message>
    <message>
        <source>On the winter picture</source>
        <translation>Na obrazie zimy</translation>
    </message>
    <message>
        <source>In a field for a day</source>
        <translation>W&#xa0;polu z&#xa0;dniem</translation>
    </message>
    <message>
        <source>In a list of what was written down</source>
        <translation>Na liście wpisów</translation>
    </message>
    <message>
        <source>On a photograph</source>
        <translation>Na zdjęciu</translation>
    </message>
    <message>
        <source>Winterlarder</source>
        <translation>Winterlarder</translation>
    </message>
    <message>
        <source>Which yard</source>
        <translation>Która pasieka</translation>
    </message>
    <message>
        <source>Day asked about</source>
        <translation>Dzień, na który liczymy</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>The day asked about: what was written down later does not count yet</source>
        <translation>Dzień, na który liczymy: to, co zapisano później, jeszcze się nie liczy</translation>
    </message>
    <message>
        <source>as of</source>
        <translation>na dzień</translation>
    </message>
    <message>
        <source>The yard and its colonies</source>
        <translation>Pasieka i&#xa0;jej rodziny</translation>
    </message>
    <message>
        <source>bar: stores today, fading where unsure
tick: needed until spring forage starts</source>
        <translation>pasek: zapasy dziś, blednie tam, gdzie niepewne
kreska: potrzeba do pożytków wiosennych</translation>
    </message>
    <message>
        <source>%1, %2 – Winterlarder</source>
        <translation>%1, %2 – Winterlarder</translation>
    </message>
    <message>
        <source>Not everything could be opened.
%1</source>
        <translation>Nie wszystko udało się otworzyć.
%1</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Dziennik</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Otwórz…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Ostatnio otwie&amp;rane</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Nowy dziennik…</translation>
    </message>
    <message>
        <source>New &amp;yard in this book…</source>
        <translation>Nowa &amp;pasieka w&#xa0;tym dzienniku…</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importuj…</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Kopie &amp;zapasowe…</translation>
    </message>
    <message>
        <source>&amp;Copy the book to…</source>
        <translation>&amp;Kopiuj dziennik do…</translation>
    </message>
    <message>
        <source>C&amp;lose the book</source>
        <translation>Za&amp;mknij dziennik</translation>
    </message>
    <message>
        <source>&amp;Print yard plan…</source>
        <translation>&amp;Drukuj plan pasieki…</translation>
    </message>
    <message>
        <source>Previe&amp;w of the yard plan…</source>
        <translation>Podgląd p&amp;lanu pasieki…</translation>
    </message>
    <message>
        <source>Print colony &amp;sheet…</source>
        <translation>Drukuj k&amp;artę rodziny…</translation>
    </message>
    <message>
        <source>Preview of the colony s&amp;heet…</source>
        <translation>Podgląd karty rodzin&amp;y…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Eksport</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Zakoń&amp;cz</translation>
    </message>
    <message>
        <source>Save the book as one &amp;JSON document…</source>
        <translation>Zapisz dziennik jako dokument &amp;JSON…</translation>
    </message>
    <message>
        <source>Save every table as CS&amp;V…</source>
        <translation>Zapisz wszystkie tabele jako CS&amp;V…</translation>
    </message>
    <message>
        <source>Save yard plan as P&amp;DF…</source>
        <translation>Zapisz plan pasieki jako P&amp;DF…</translation>
    </message>
    <message>
        <source>Save colony sheet as PD&amp;F…</source>
        <translation>Zapisz kartę rodziny jako PD&amp;F…</translation>
    </message>
    <message>
        <source>Save winter pict&amp;ure…</source>
        <translation>Zapisz &amp;obraz zimy…</translation>
    </message>
    <message>
        <source>Save what is due as a c&amp;alendar…</source>
        <translation>Zapisz terminy jako &amp;kalendarz…</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Edycja</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation>&amp;Historia…</translation>
    </message>
    <message>
        <source>&amp;Copy the picture&apos;s numbers</source>
        <translation>&amp;Kopiuj liczby obrazu</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Znajdź…</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>&amp;Ustawienia…</translation>
    </message>
    <message>
        <source>Colours as the &amp;system&apos;s</source>
        <translation>Kolory jak w&#xa0;&amp;systemie</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Jasne</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>Cie&amp;mne</translation>
    </message>
    <message>
        <source>Units of the &amp;place</source>
        <translation>Jednostki miejs&amp;ca</translation>
    </message>
    <message>
        <source>&amp;Kilograms and litres</source>
        <translation>Kilogram&amp;y i&#xa0;litry</translation>
    </message>
    <message>
        <source>Pounds and US &amp;gallons</source>
        <translation>&amp;Funty i&#xa0;galony amerykańskie</translation>
    </message>
    <message>
        <source>Pounds and i&amp;mperial gallons</source>
        <translation>Funty i&#xa0;galony &amp;brytyjskie</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Widok</translation>
    </message>
    <message>
        <source>Most &amp;urgent first</source>
        <translation>Najpi&amp;lniejsze najpierw</translation>
    </message>
    <message>
        <source>By &amp;name</source>
        <translation>Według &amp;nazwy</translation>
    </message>
    <message>
        <source>&amp;Winter picture</source>
        <translation>&amp;Obraz zimy</translation>
    </message>
    <message>
        <source>F&amp;ewer days in the picture</source>
        <translation>Mni&amp;ej dni na obrazie</translation>
    </message>
    <message>
        <source>M&amp;ore days in the picture</source>
        <translation>&amp;Więcej dni na obrazie</translation>
    </message>
    <message>
        <source>The whole winte&amp;r</source>
        <translation>Cał&amp;a zima</translation>
    </message>
    <message>
        <source>&amp;In the hive</source>
        <translation>W&#xa0;&amp;ulu</translation>
    </message>
    <message>
        <source>%{Comb} &amp;by %{comb}</source>
        <translation>&amp;Ramka po ramce</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>&amp;Karmienie</translation>
    </message>
    <message>
        <source>On the sc&amp;ale</source>
        <translation>Na wa&amp;dze</translation>
    </message>
    <message>
        <source>S&amp;tory</source>
        <translation>Kron&amp;ika</translation>
    </message>
    <message>
        <source>W&amp;hat if</source>
        <translation>A&#xa0;&amp;gdyby…</translation>
    </message>
    <message>
        <source>The &amp;yard</source>
        <translation>&amp;Pasieka</translation>
    </message>
    <message>
        <source>Ne&amp;xt colony</source>
        <translation>Nas&amp;tępna rodzina</translation>
    </message>
    <message>
        <source>Pre&amp;vious colony</source>
        <translation>Popr&amp;zednia rodzina</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::NextEntry</name>
    <message>
        <source>To be answered, this colony needs:</source>
        <translation>Żeby odpowiedzieć, potrzeba:</translation>
    </message>
    <message>
        <source>or what the hive weighs, or how heavy it feels</source>
        <translation>albo ile ul waży lub jaki jest ciężki w&#xa0;ręku</translation>
    </message>
    <message>
        <source>Enter the %{combs}</source>
        <translation>Wpisz ramki</translation>
    </message>
    <message>
        <source>How many bees: %{combs} they cover, on both sides</source>
        <translation>Ile pszczół: plastry, które obsiadają z&#xa0;obu stron</translation>
    </message>
    <message>
        <source>What the %{combs} hold, %{comb} by %{comb} or counted quickly</source>
        <translation>Co jest w&#xa0;ramkach, ramka po ramce albo szybko policzone</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::OutlineDrawing</name>
    <message>
        <source>The comb face on; a measure is missing</source>
        <translation>Plaster od przodu; brakuje wymiaru</translation>
    </message>
    <message>
        <source>The comb face on: %1 wide at the top, %2 deep, %3 wide at the bottom</source>
        <translation>Plaster od przodu: szerokość u&#xa0;góry %1, wysokość %2, szerokość u&#xa0;dołu %3</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::OwnMeasures</name>
    <message>
        <source>comb width at the top</source>
        <translation>szerokość plastra u&#xa0;góry</translation>
    </message>
    <message>
        <source>comb depth</source>
        <translation>wysokość plastra</translation>
    </message>
    <message>
        <source>width at the bottom</source>
        <translation>szerokość u&#xa0;dołu</translation>
    </message>
    <message>
        <source>spacing, or bar width</source>
        <translation>odległość plastrów lub szerokość snozy</translation>
    </message>
    <message>
        <source>%{combs} the box holds</source>
        <translation>ramek w&#xa0;korpusie</translation>
    </message>
    <message>
        <source>as at the top</source>
        <translation>jak u&#xa0;góry</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Box %1, %2</source>
        <translation>Korpus %1, %2</translation>
    </message>
    <message>
        <source>A comb has %1 on each side; capped from edge to edge it holds about %2 of honey.</source>
        <translation>Plaster ma z&#xa0;każdej strony %1; zasklepiony od brzegu do brzegu mieści około %2 miodu.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PastForecastModel</name>
    <message>
        <source>%1: %2 to have for winter, %3 of it taken to be eaten</source>
        <translation>%1: na zimę ma być %2, z&#xa0;tego do zjedzenia przyjęto %3</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>tak</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>The autumn the forecast was made in, and the year after</source>
        <translation>Jesień, w&#xa0;której powstała prognoza, i&#xa0;następny rok</translation>
    </message>
    <message>
        <source>winter</source>
        <translation>zima</translation>
    </message>
    <message>
        <source>The colony it was made for</source>
        <translation>Rodzina, dla której powstała</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>rodzina</translation>
    </message>
    <message>
        <source>The day of the reading it is compared with</source>
        <translation>Dzień odczytu, z&#xa0;którym się ją porównuje</translation>
    </message>
    <message>
        <source>day</source>
        <translation>dzień</translation>
    </message>
    <message>
        <source>What the autumn&apos;s forecast said this reading would be; in brackets nine in ten</source>
        <translation>Jaki odczyt przewidziała prognoza z&#xa0;jesieni; w&#xa0;nawiasie dziewięć przypadków na dziesięć</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>prognoza</translation>
    </message>
    <message>
        <source>What was weighed or found</source>
        <translation>Co zważono lub znaleziono</translation>
    </message>
    <message>
        <source>happened</source>
        <translation>stało się</translation>
    </message>
    <message>
        <source>Whether it lay within the band of nine in ten</source>
        <translation>Czy leżało w&#xa0;paśmie dziewięciu na dziesięć</translation>
    </message>
    <message>
        <source>within</source>
        <translation>w&#xa0;paśmie</translation>
    </message>
    <message>
        <source>How far the middle of the forecast was from what happened</source>
        <translation>Jak daleko środek prognozy leżał od tego, co się stało</translation>
    </message>
    <message>
        <source>off by</source>
        <translation>różnica</translation>
    </message>
    <message>
        <source>How far off the region&apos;s handbook figure was</source>
        <translation>Jak bardzo myliła się liczba z&#xa0;poradnika dla regionu</translation>
    </message>
    <message>
        <source>handbook
off by</source>
        <translation>poradnik,
różnica</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PastPage</name>
    <message>
        <source>Past forecasts and what happened</source>
        <translation>Dawne prognozy i&#xa0;to, co się stało</translation>
    </message>
    <message>
        <source>What past winters taught</source>
        <translation>Czego nauczyły minione zimy</translation>
    </message>
    <message>
        <source>Past wi&amp;nters of these bees correct the forecast in this yard</source>
        <translation>Minione zim&amp;y tych pszczół poprawiają prognozę w&#xa0;tej pasiece</translation>
    </message>
    <message>
        <source>Be&amp;gin anew from today</source>
        <translation>Za&amp;cznij od dziś na nowo</translation>
    </message>
    <message>
        <source>Winters decided before the day asked about are no longer learned from; nothing is deleted</source>
        <translation>Z&#xa0;zim rozstrzygniętych przed dniem, na który liczymy, nie wyciąga się już wniosków; nic nie jest usuwane</translation>
    </message>
    <message>
        <source>&amp;Learn from all winters again</source>
        <translation>Uwzględnij znów w&amp;szystkie zimy</translation>
    </message>
    <message>
        <source>Past winters could not be looked at; nothing is learned from them for now.</source>
        <translation>Minionych zim nie udało się przejrzeć; na razie nie wyciąga się z&#xa0;nich wniosków.</translation>
    </message>
    <message>
        <source>Past winters are being looked at…</source>
        <translation>Przeglądanie minionych zim…</translation>
    </message>
    <message>
        <source>Learned from since %1.</source>
        <translation>Wnioski od %1.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PhotographView</name>
    <message>
        <source>The photograph</source>
        <translation>Zdjęcie</translation>
    </message>
    <message>
        <source>No point is marked</source>
        <translation>Żaden punkt nie jest zaznaczony</translation>
    </message>
    <message>
        <source>%1, at %2, %3</source>
        <translation>%1, w&#xa0;punkcie %2, %3</translation>
    </message>
    <message>
        <source>Open a photograph of the comb: one face, as square-on as it can be had.</source>
        <translation>Otworzyć zdjęcie plastra: jedna strona, możliwie dokładnie od przodu.</translation>
    </message>
    <message>
        <source>moves the point; with Shift ten times as far</source>
        <translation>przesuwa punkt; z&#xa0;klawiszem Shift dziesięć razy dalej</translation>
    </message>
    <message>
        <source>the next point</source>
        <translation>następny punkt</translation>
    </message>
    <message>
        <source>a new point in the middle</source>
        <translation>nowy punkt pośrodku</translation>
    </message>
    <message>
        <source>takes the point away</source>
        <translation>usuwa punkt</translation>
    </message>
    <message>
        <source>larger or smaller</source>
        <translation>większe lub mniejsze</translation>
    </message>
    <message>
        <source>the whole picture</source>
        <translation>całe zdjęcie</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PhotographWindow</name>
    <message>
        <source>Nothing is traced yet.</source>
        <translation>Nic jeszcze nie obrysowano.</translation>
    </message>
    <message>
        <source>capped %1, open nectar %2, brood %3, bee bread %4, empty %5</source>
        <translation>zasklepione %1, nakrop %2, czerw %3, pierzga %4, puste %5</translation>
    </message>
    <message>
        <source>One face: %1.
Honey %2, known to 17.5 % instead of 20 % by eye; with the other face traced too, to 11.5 %.</source>
        <translation>Jedna strona: %1.
Miód %2, znany z&#xa0;dokładnością do 17,5% zamiast 20% na oko; po obrysowaniu także drugiej strony do 11,5%.</translation>
    </message>
    <message>
        <source>Both faces: %1.
Honey %2, known to 11.5 % instead of 15 % by eye.</source>
        <translation>Obie strony: %1.
Miód %2, znany z&#xa0;dokładnością do 11,5% zamiast 15% na oko.</translation>
    </message>
    <message>
        <source>By keys: arrows move the marked point (Shift: faster), Space goes to the next, + and − or the wheel zoom, 0 shows all.</source>
        <translation>Z&#xa0;klawiatury: strzałki przesuwają zaznaczony punkt (z&#xa0;Shift szybciej), spacja przechodzi do następnego, + i&#xa0;− albo kółko myszy powiększają i&#xa0;pomniejszają, 0 pokazuje wszystko.</translation>
    </message>
    <message>
        <source>Photograph one face of the comb without bees, all of it in view, as square-on as it can be had; then open the picture here.</source>
        <translation>Sfotografować jedną stronę plastra bez pszczół, całą, możliwie dokładnie od przodu; potem otworzyć tu zdjęcie.</translation>
    </message>
    <message>
        <source>Drag the four points to the corners of the comb, inside the frame.</source>
        <translation>Przeciągnąć cztery punkty na rogi plastra, wewnątrz ramki.</translation>
    </message>
    <message>
        <source>Drag the points: where the comb begins and ends at the bar, low on either side, and its lowest point.</source>
        <translation>Przeciągnąć punkty: gdzie plaster zaczyna się i&#xa0;kończy przy snozie, nisko po obu stronach i&#xa0;w&#xa0;najniższym miejscu.</translation>
    </message>
    <message>
        <source>Click around each zone; the curve closes itself. Drag points, Delete takes one away. Where curves overlap, brood counts first, then bee bread, capped and open nectar.
By keys: Return adds a point to be moved on with the arrows (Shift: faster), Space goes to the next, + and − zoom, 0 shows all.</source>
        <translation>Klikać dookoła każdej strefy; krzywa zamyka się sama. Punkty można przeciągać, Delete usuwa punkt. Gdzie krzywe zachodzą na siebie, liczy się najpierw czerw, potem pierzga, zasklepione i&#xa0;nakrop.
Z&#xa0;klawiatury: Return dodaje punkt, który przesuwa się strzałkami (z&#xa0;Shift szybciej), spacja przechodzi do następnego, + i&#xa0;− powiększają i&#xa0;pomniejszają, 0 pokazuje wszystko.</translation>
    </message>
    <message>
        <source>point %1 of %2</source>
        <translation>punkt %1 z&#xa0;%2</translation>
    </message>
    <message>
        <source>the comb itself</source>
        <translation>sam plaster</translation>
    </message>
    <message>
        <source>Leave the photograph?</source>
        <translation>Opuścić zdjęcie?</translation>
    </message>
    <message>
        <source>What was traced is not taken into the comb yet, and would be lost.</source>
        <translation>Obrysowane strefy nie zostały jeszcze przejęte do plastra i&#xa0;przepadną.</translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation>&amp;Odrzuć</translation>
    </message>
    <message>
        <source>&amp;Go on tracing</source>
        <translation>&amp;Rysuj dalej</translation>
    </message>
    <message>
        <source>Measure on a photograph: %1</source>
        <translation>Pomiar na zdjęciu: %1</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Co zrobić</translation>
    </message>
    <message>
        <source>Face of the comb</source>
        <translation>Strona plastra</translation>
    </message>
    <message>
        <source>One &amp;face</source>
        <translation>Jedna &amp;strona</translation>
    </message>
    <message>
        <source>The ot&amp;her face</source>
        <translation>Dru&amp;ga strona</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Krok</translation>
    </message>
    <message>
        <source>&amp;1 Mark the comb</source>
        <translation>&amp;1 Zaznacz plaster</translation>
    </message>
    <message>
        <source>&amp;2 Trace the zones</source>
        <translation>&amp;2 Obrysuj strefy</translation>
    </message>
    <message>
        <source>&amp;Open picture…</source>
        <translation>&amp;Otwórz zdjęcie…</translation>
    </message>
    <message>
        <source>What is marked</source>
        <translation>Co jest zaznaczone</translation>
    </message>
    <message>
        <source>four corners</source>
        <translation>cztery rogi</translation>
    </message>
    <message>
        <source>bar ends, sides and lowest point</source>
        <translation>końce przy snozie, boki i&#xa0;najniższy punkt</translation>
    </message>
    <message>
        <source>marked are</source>
        <translation>zaznaczone są</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a zone and its key</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>&amp;Another patch</source>
        <translation>Kolejna &amp;plama</translation>
    </message>
    <message>
        <source>A zone in two places is traced as two patches; its key pressed again goes from one to the other</source>
        <translation>Strefę w&#xa0;dwóch miejscach obrysowuje się jako dwie plamy; ponowne naciśnięcie jej klawisza przechodzi od jednej do drugiej</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Co zmierzono</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Cofnij</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>Po&amp;nów</translation>
    </message>
    <message>
        <source>&amp;Closer</source>
        <translation>&amp;Bliżej</translation>
    </message>
    <message>
        <source>Farth&amp;er</source>
        <translation>&amp;Dalej</translation>
    </message>
    <message>
        <source>&amp;Whole picture</source>
        <translation>Całe &amp;zdjęcie</translation>
    </message>
    <message>
        <source>&amp;Take these shares</source>
        <translation>Przejmij &amp;udziały</translation>
    </message>
    <message>
        <source>A photograph of the comb</source>
        <translation>Zdjęcie plastra</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.tif *.tiff)</source>
        <translation>Obrazy (*.jpg *.jpeg *.png *.webp *.tif *.tiff)</translation>
    </message>
    <message>
        <source>Another picture…</source>
        <translation>Inne zdjęcie…</translation>
    </message>
    <message>
        <source>Opening %1…</source>
        <translation>Otwieranie %1…</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PicturePanel</name>
    <message>
        <source>Show:</source>
        <translation>Pokaż:</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>Zapisz obraz</translation>
    </message>
    <message>
        <source>Save the picture or its numbers</source>
        <translation>Zapisz obraz albo jego liczby</translation>
    </message>
    <message>
        <source>&amp;Save picture…</source>
        <translation>&amp;Zapisz obraz…</translation>
    </message>
    <message>
        <source>&amp;Copy numbers</source>
        <translation>&amp;Kopiuj liczby</translation>
    </message>
    <message>
        <source>Whole winter</source>
        <translation>Cała zima</translation>
    </message>
    <message>
        <source>Shows all days again (0)</source>
        <translation>Pokazuje znów wszystkie dni (0)</translation>
    </message>
    <message>
        <source>Show more days (-)</source>
        <translation>Pokaż więcej dni (-)</translation>
    </message>
    <message>
        <source>Show fewer days (+)</source>
        <translation>Pokaż mniej dni (+)</translation>
    </message>
    <message>
        <source>No winter can be simulated from what is known.</source>
        <translation>Z&#xa0;tego, co wiadomo, nie da się symulować żadnej zimy.</translation>
    </message>
    <message>
        <source>Twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %2.</source>
        <translation>Dwadzieścia zim z&#xa0;%1, każda przedstawia pięć na sto; przerywane spadają poniżej %2.</translation>
    </message>
    <message>
        <source>%2 to %3: twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %4.</source>
        <translation>Od %2 do %3: dwadzieścia zim z&#xa0;%1, każda przedstawia pięć na sto; przerywane spadają poniżej %4.</translation>
    </message>
    <message>
        <source>Simulating the winters…</source>
        <translation>Symulowanie zim…</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Pokaż: %1</translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg *.pdf)</source>
        <translation>Obrazy (*.png *.svg *.pdf)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Nie zapisano</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose another folder.</source>
        <translation>Obrazu nie udało się zapisać w&#xa0;%1. Należy wybrać inny folder.</translation>
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
        <translation>własny klimat</translation>
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
        <translation>Gdzie stoją pszczoły: miejscowość albo szerokość i&#xa0;długość geograficzna</translation>
    </message>
    <message>
        <source>a town near by, or 45.1, -64.5</source>
        <translation>miejscowość w&#xa0;pobliżu albo 45.1, -64.5</translation>
    </message>
    <message>
        <source>Places found</source>
        <translation>Znalezione miejsca</translation>
    </message>
    <message>
        <source>The place chosen</source>
        <translation>Wybrane miejsce</translation>
    </message>
    <message>
        <source>No place is spelled so. Do you mean one of these?</source>
        <translation>Żadne miejsce tak się nie pisze. Może jedno z&#xa0;tych?</translation>
    </message>
    <message>
        <source>No place of that name is known here. Take the nearest town, or type latitude and longitude, as 43.05, -76.15.</source>
        <translation>Miejsca o&#xa0;tej nazwie program nie zna. Należy wybrać najbliższe miasto albo wpisać szerokość i&#xa0;długość geograficzną, np. 43.05, -76.15.</translation>
    </message>
    <message>
        <source>Climate: %1</source>
        <translation>Klimat: %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PlacePage</name>
    <message>
        <source>Name of the yard</source>
        <translation>Nazwa pasieki</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Wysokość nad poziomem morza</translation>
    </message>
    <message>
        <source>I have my own temperatures of this place</source>
        <translation>Mam własne temperatury z&#xa0;tego miejsca</translation>
    </message>
    <message>
        <source>Autumn flow still to come</source>
        <translation>Oczekiwany pożytek jesienny</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nie podano</translation>
    </message>
    <message>
        <source>What flowers here, and when</source>
        <translation>Co tu kwitnie i&#xa0;kiedy</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Gdzie to jest</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nazwa</translation>
    </message>
    <message>
        <source>place</source>
        <translation>miejsce</translation>
    </message>
    <message>
        <source>height</source>
        <translation>wysokość</translation>
    </message>
    <message>
        <source>autumn flow</source>
        <translation>pożytek jesienny</translation>
    </message>
    <message>
        <source>forage</source>
        <translation>pożytki</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Szerokość geograficzna</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>szerokość geograficzna</translation>
    </message>
    <message>
        <source>Mean temperature of %1</source>
        <translation>Średnia temperatura: %1</translation>
    </message>
    <message>
        <source>Day: %1</source>
        <translation>Dzień: %1</translation>
    </message>
    <message>
        <source>Ticked: the day you know, every year; else as the climate says</source>
        <translation>Zaznaczone: znany dzień, co roku; inaczej według klimatu</translation>
    </message>
    <message>
        <source>The dates this winter turns on; tick those you know better</source>
        <translation>Daty, od których zależy ta zima; zaznaczyć te, które zna się lepiej</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>koniec pożytków</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>zalecany koniec karmienia</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>ostatni dzień na syrop</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>koniec pobierania syropu</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>koniec czerwienia</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>wznowienie czerwienia</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>rozwój wiosenny</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>początek pożytków wiosennych</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nieznane</translation>
    </message>
    <message numerus="yes">
        <source>%1, give or take %n days</source>
        <translation>
            <numerusform>%1, plus minus %n dzień</numerusform>
            <numerusform>%1, plus minus %n dni</numerusform>
            <numerusform>%1, plus minus %n dni</numerusform>
        </translation>
    </message>
    <message>
        <source>Curve of %1, %2 above the sea.</source>
        <translation>Krzywa %1, %2 nad poziomem morza.</translation>
    </message>
    <message>
        <source>Your own temperatures.</source>
        <translation>Własne temperatury.</translation>
    </message>
    <message>
        <source>%1 Corrected by %2 for the height.</source>
        <translation>%1 Poprawka na wysokość: %2.</translation>
    </message>
    <message>
        <source>%1 Source: %2</source>
        <translation>%1 Źródło: %2</translation>
    </message>
    <message>
        <source>Winters of a hundred that may fall below the reserve</source>
        <translation>Zimy na sto, w&#xa0;których zapasy mogą spaść poniżej żelaznej rezerwy</translation>
    </message>
    <message>
        <source>Reserve that should be left in spring</source>
        <translation>Żelazna rezerwa, która ma zostać wiosną</translation>
    </message>
    <message>
        <source>Days between visits</source>
        <translation>Dni między wizytami</translation>
    </message>
    <message>
        <source>Visits on %1</source>
        <translation>Wizyty: %1</translation>
    </message>
    <message>
        <source>Price of sugar</source>
        <translation>Cena cukru</translation>
    </message>
    <message>
        <source>Currency, three letters</source>
        <translation>Waluta, trzy litery</translation>
    </message>
    <message>
        <source>Sugar in a bag</source>
        <translation>Cukier w&#xa0;worku</translation>
    </message>
    <message>
        <source>past winters of these bees correct the forecast</source>
        <translation>minione zimy tych pszczół poprawiają prognozę</translation>
    </message>
    <message>
        <source>What you wish</source>
        <translation>Czego się oczekuje</translation>
    </message>
    <message>
        <source>winters of 100 that may fall below the reserve</source>
        <translation>zimy na 100 z&#xa0;zapasami poniżej żelaznej rezerwy</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>żelazna rezerwa</translation>
    </message>
    <message>
        <source>days between visits</source>
        <translation>dni między wizytami</translation>
    </message>
    <message>
        <source>visits only on (none: any day)</source>
        <translation>wizyty tylko w&#xa0;(nic: dowolny dzień)</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>waluta</translation>
    </message>
    <message>
        <source>a bag holds</source>
        <translation>worek ma</translation>
    </message>
    <message>
        <source>sugar, a pound costs</source>
        <translation>funt cukru kosztuje</translation>
    </message>
    <message>
        <source>sugar, a kilogram costs</source>
        <translation>kilogram cukru kosztuje</translation>
    </message>
    <message>
        <source>Price of a pound of sugar</source>
        <translation>Cena funta cukru</translation>
    </message>
    <message>
        <source>Price of a kilogram of sugar</source>
        <translation>Cena kilograma cukru</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::QuantityField</name>
    <message>
        <source>for a %1</source>
        <translation>za %1</translation>
    </message>
    <message>
        <source>Something must be written here.</source>
        <translation>Trzeba tu coś wpisać.</translation>
    </message>
    <message>
        <source>It must be %1 or more.</source>
        <translation>Musi być co najmniej %1.</translation>
    </message>
    <message>
        <source>It must be between %1 and %2.</source>
        <translation>Musi być od %1 do %2.</translation>
    </message>
    <message>
        <source>This is not a number.</source>
        <translation>To nie jest liczba.</translation>
    </message>
    <message>
        <source>It must be a whole number.</source>
        <translation>Musi to być liczba całkowita.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::RecordList</name>
    <message>
        <source>Change…</source>
        <translation>Zmień…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Usuń</translation>
    </message>
    <message>
        <source>opens the entry</source>
        <translation>otwiera wpis</translation>
    </message>
    <message>
        <source>takes the entry out of the book; undo brings it back</source>
        <translation>usuwa wpis z&#xa0;dziennika; cofnięcie go przywraca</translation>
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
        <translation>Dzień, którego dotyczy</translation>
    </message>
    <message>
        <source>day</source>
        <translation>dzień</translation>
    </message>
    <message>
        <source>What kind of entry it is</source>
        <translation>Jaki to wpis</translation>
    </message>
    <message>
        <source>what</source>
        <translation>co</translation>
    </message>
    <message>
        <source>What was written down</source>
        <translation>Co zapisano</translation>
    </message>
    <message>
        <source>details</source>
        <translation>szczegóły</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScaleLogDialog</name>
    <message>
        <source>The log of a scale: %1</source>
        <translation>Zapis wagi: %1</translation>
    </message>
    <message>
        <source>Unit of the weights</source>
        <translation>Jednostka mas</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>jak znaleziono</translation>
    </message>
    <message>
        <source>Order of day, month and year</source>
        <translation>Kolejność dnia, miesiąca i&#xa0;roku</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>dzień, miesiąc, rok</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>miesiąc, dzień, rok</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>rok, miesiąc, dzień</translation>
    </message>
    <message>
        <source>Clock of the place</source>
        <translation>Czas miejscowy</translation>
    </message>
    <message>
        <source>times as they are written; or America/Halifax, UTC, +02:00</source>
        <translation>czas tak, jak zapisano; albo America/Halifax, UTC, +02:00</translation>
    </message>
    <message>
        <source>Ratio of the syrup fed meanwhile, sugar to water</source>
        <translation>Stosunek podanego w&#xa0;tym czasie syropu, cukier do wody</translation>
    </message>
    <message>
        <source>3:2; empty: not known, the weight alone counts</source>
        <translation>3:2; puste: nieznany, liczy się sama masa</translation>
    </message>
    <message>
        <source>What was understood, and the steps found</source>
        <translation>Co zrozumiano i&#xa0;znalezione skoki</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Są &amp;poprawne tak, jak są</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>jednostka</translation>
    </message>
    <message>
        <source>date order</source>
        <translation>kolejność daty</translation>
    </message>
    <message>
        <source>clock of the place</source>
        <translation>czas miejscowy</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>syrop</translation>
    </message>
    <message>
        <source>W&amp;rite down</source>
        <translation>&amp;Zapisz</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Anuluj</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Czytanie…</translation>
    </message>
    <message>
        <source>column %1 (%2)</source>
        <translation>kolumna %1 (%2)</translation>
    </message>
    <message>
        <source>column %1, &quot;%2&quot; (%3)</source>
        <translation>kolumna %1, „%2” (%3)</translation>
    </message>
    <message>
        <source>Date: %1</source>
        <translation>Data: %1</translation>
    </message>
    <message>
        <source>Time: %1</source>
        <translation>Godzina: %1</translation>
    </message>
    <message>
        <source>Date order: %1 (%2)</source>
        <translation>Kolejność daty: %1 (%2)</translation>
    </message>
    <message>
        <source>Weight: %1, in %2 (%3)</source>
        <translation>Masa: %1, w&#xa0;%2 (%3)</translation>
    </message>
    <message>
        <source>Days: %1, %2 to %3</source>
        <translation>Dni: %1, od %2 do %3</translation>
    </message>
    <message>
        <source>Readings: %1</source>
        <translation>Odczyty: %1</translation>
    </message>
    <message>
        <source>Jumps of the clock, put right: %1</source>
        <translation>Przestawienia zegara, poprawione: %1</translation>
    </message>
    <message>
        <source>Days are those of UTC; name the clock of the place above for its own.</source>
        <translation>Dni są według UTC; aby były według miejsca, podać powyżej czas miejscowy.</translation>
    </message>
    <message>
        <source>What was understood</source>
        <translation>Co zrozumiano</translation>
    </message>
    <message>
        <source>Steps found</source>
        <translation>Znalezione skoki</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Brak.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Miesiące</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Rows left out: %1</source>
        <translation>Pominięte wiersze: %1</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>wiersz %1: %2</translation>
    </message>
    <message>
        <source>To be written down: weighings %1, feeds %2, harvests %3, changes of equipment %4; on days the book has already: %5.</source>
        <translation>Do zapisania: ważenia %1, karmienia %2, miodobrania %3, zmiany wyposażenia %4; w&#xa0;dniach, które dziennik już zna: %5.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePage</name>
    <message>
        <source>Weighings and glances, newest first</source>
        <translation>Ważenia i&#xa0;rzuty oka, od najnowszych</translation>
    </message>
    <message>
        <source>The hive was not weighed yet. A hand scale under one side, or a heft, already narrows what is in it.</source>
        <translation>Ula jeszcze nie ważono. Już waga hakowa z&#xa0;jednej strony albo ocena w&#xa0;ręku zwęża przedział tego, co w&#xa0;nim jest.</translation>
    </message>
    <message>
        <source>Wei&amp;gh…</source>
        <translation>&amp;Zważ…</translation>
    </message>
    <message>
        <source>A scale&apos;s &amp;log…</source>
        <translation>Zapi&amp;s wagi…</translation>
    </message>
    <message>
        <source>The log of a scale</source>
        <translation>Zapis wagi</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tabele (*.csv *.txt *.tsv);;Wszystkie pliki (*)</translation>
    </message>
    <message>
        <source>A gla&amp;nce…</source>
        <translation>Rzu&amp;t oka…</translation>
    </message>
    <message>
        <source>H&amp;ow the winter went…</source>
        <translation>Jak przebiegła zim&amp;owla…</translation>
    </message>
    <message>
        <source>Points: stores as weighed and seen, with eighty in a hundred odds. Band: what eighty of a hundred simulated winters leave.</source>
        <translation>Punkty: zapasy według ważeń i&#xa0;obserwacji, z&#xa0;pewnością osiemdziesięciu na sto. Pasmo: co zostaje w&#xa0;osiemdziesięciu na sto symulowanych zim.</translation>
    </message>
    <message>
        <source>Here what was measured stands against what the model expects, once both are known.</source>
        <translation>Gdy oba będą znane, będzie tu porównanie pomiarów z&#xa0;tym, czego oczekuje model.</translation>
    </message>
    <message>
        <source>Weights to expect are without what is fed later.</source>
        <translation>Spodziewane masy nie obejmują tego, co zostanie podane później.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePlot</name>
    <message>
        <source>Model against measurement</source>
        <translation>Model a&#xa0;pomiary</translation>
    </message>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation>
            <numerusform>%n pomiar</numerusform>
            <numerusform>%n pomiary</numerusform>
            <numerusform>%n pomiarów</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Ustawienia</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>On this computer, whatever book is open</source>
        <translation>Na tym komputerze, niezależnie od otwartego dziennika</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Jednostki</translation>
    </message>
    <message>
        <source>those of the yard&apos;s place</source>
        <translation>jak w&#xa0;miejscu pasieki</translation>
    </message>
    <message>
        <source>kilograms and litres</source>
        <translation>kilogramy i&#xa0;litry</translation>
    </message>
    <message>
        <source>pounds and US gallons</source>
        <translation>funty i&#xa0;galony amerykańskie</translation>
    </message>
    <message>
        <source>pounds and imperial gallons</source>
        <translation>funty i&#xa0;galony brytyjskie</translation>
    </message>
    <message>
        <source>&amp;units</source>
        <translation>&amp;jednostki</translation>
    </message>
    <message>
        <source>In which weights and measures are shown. Whatever you type may have a unit of its own beside it.</source>
        <translation>W&#xa0;jakich jednostkach pokazywane są masy i&#xa0;miary. Przy każdej wpisywanej liczbie można podać inną.</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Kolory</translation>
    </message>
    <message>
        <source>as the system&apos;s</source>
        <translation>jak w&#xa0;systemie</translation>
    </message>
    <message>
        <source>light</source>
        <translation>jasne</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>ciemne</translation>
    </message>
    <message>
        <source>&amp;colours</source>
        <translation>&amp;kolory</translation>
    </message>
    <message>
        <source>Of everything on the screen; what is printed is always dark on white.</source>
        <translation>Wszystkiego na ekranie; wydruk jest zawsze ciemny na białym.</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Wielkość liter</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1%</translation>
    </message>
    <message>
        <source>&amp;letters</source>
        <translation>&amp;litery</translation>
    </message>
    <message>
        <source>How large they are on the screen; paper keeps its own size.</source>
        <translation>Jak duże są na ekranie; papier ma własną wielkość.</translation>
    </message>
    <message>
        <source>Notices</source>
        <translation>Komunikaty</translation>
    </message>
    <message>
        <source>for half a minute</source>
        <translation>przez pół minuty</translation>
    </message>
    <message>
        <source>for two minutes</source>
        <translation>przez dwie minuty</translation>
    </message>
    <message>
        <source>until they are closed</source>
        <translation>do zamknięcia</translation>
    </message>
    <message>
        <source>&amp;notices</source>
        <translation>komu&amp;nikaty</translation>
    </message>
    <message>
        <source>How long the foot of the page says what was done. What went wrong always stays until it is closed.</source>
        <translation>Jak długo na dole strony widać, co zrobiono. Komunikat o&#xa0;tym, co się nie udało, zostaje zawsze do zamknięcia.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Język</translation>
    </message>
    <message>
        <source>lan&amp;guage</source>
        <translation>ję&amp;zyk</translation>
    </message>
    <message>
        <source>Taken up at once; where another window of the program is open, when that is closed. Where the system&apos;s is not in this list, English is spoken.</source>
        <translation>Działa od razu; jeśli otwarte jest inne okno programu, to po jego zamknięciu. Jeśli języka systemu nie ma na tej liście, program mówi po angielsku.</translation>
    </message>
    <message>
        <source>Of the yard “%1”; kept in its book, and undone as any entry is</source>
        <translation>Dla pasieki „%1”; zapisane w&#xa0;jej dzienniku i&#xa0;cofane jak każdy wpis</translation>
    </message>
    <message>
        <source>past winters correct the &amp;forecast</source>
        <translation>minione zimy &amp;poprawiają prognozę</translation>
    </message>
    <message>
        <source>learning</source>
        <translation>wnioski</translation>
    </message>
    <message>
        <source>Each winter written down to its end shows how much these bees use and how many die; forecasts for this yard are corrected by it.</source>
        <translation>Każda zima zapisana do końca pokazuje, ile te pszczoły zużywają i&#xa0;ile ich ginie; tym poprawia się prognozy dla tej pasieki.</translation>
    </message>
    <message>
        <source>Of the book that is open</source>
        <translation>Dla otwartego dziennika</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Kopie z&amp;apasowe…</translation>
    </message>
    <message>
        <source>backups lie in</source>
        <translation>kopie zapasowe leżą w</translation>
    </message>
    <message>
        <source>One is made at the first edit of a day and before anything large; the last ten are kept.</source>
        <translation>Kopia powstaje przy pierwszej zmianie w&#xa0;danym dniu i&#xa0;przed każdą większą operacją; przechowywanych jest dziesięć ostatnich.</translation>
    </message>
    <message>
        <source>Winters of a hundred that may fall below the reserve</source>
        <translation>Zimy na sto, w&#xa0;których zapasy mogą spaść poniżej żelaznej rezerwy</translation>
    </message>
    <message>
        <source>&amp;risk, winters of 100</source>
        <translation>&amp;ryzyko, zimy na 100</translation>
    </message>
    <message>
        <source>How many winters of a hundred may end below the reserve before more is fed. Empty: 10 to 20, fewer where nobody can help in winter.</source>
        <translation>W&#xa0;ilu zimach na sto zapasy mogą spaść poniżej żelaznej rezerwy, zanim poda się więcej. Puste: od 10 do 20, mniej tam, gdzie zimą nikt nie może pomóc.</translation>
    </message>
    <message>
        <source>Reserve that should be left in spring</source>
        <translation>Żelazna rezerwa, która ma zostać wiosną</translation>
    </message>
    <message>
        <source>rese&amp;rve</source>
        <translation>ż&amp;elazna rezerwa</translation>
    </message>
    <message>
        <source>Stores every hive should still hold when spring forage starts. Empty: what the size of its colony asks for.</source>
        <translation>Zapasy, które każdy ul powinien mieć jeszcze na początku pożytków wiosennych. Puste: tyle, ile wymaga wielkość rodziny.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StartPage</name>
    <message>
        <source>What is wrong</source>
        <translation>Co się nie zgadza</translation>
    </message>
    <message>
        <source>Be&amp;gin the book</source>
        <translation>&amp;Załóż dziennik</translation>
    </message>
    <message>
        <source>Will what is in the hive last until spring forage starts?</source>
        <translation>Czy to, co jest w&#xa0;ulu, wystarczy do początku pożytków wiosennych?</translation>
    </message>
    <message>
        <source>Three questions, then your yard. Everything you write is kept in one file on your computer, and every step can be taken back.</source>
        <translation>Trzy pytania, potem pasieka. Wszystko, co się wpisze, jest w&#xa0;jednym pliku na tym komputerze i&#xa0;każdy krok można cofnąć.</translation>
    </message>
    <message>
        <source>&amp;Try the demo</source>
        <translation>&amp;Wypróbuj przykładową pasiekę</translation>
    </message>
    <message>
        <source>An invented orchard yard to look round in; nothing of yours is changed</source>
        <translation>Zmyślona pasieka w&#xa0;sadzie, do rozejrzenia się; własnych wpisów to nie zmienia</translation>
    </message>
    <message>
        <source>&amp;Open a book or case files…</source>
        <translation>&amp;Otwórz dziennik lub pliki danych rodzin…</translation>
    </message>
    <message>
        <source>Bac&amp;k (Esc)</source>
        <translation>Ws&amp;tecz (Esc)</translation>
    </message>
    <message>
        <source>1. Where are your bees?</source>
        <translation>1. Gdzie stoją pszczoły?</translation>
    </message>
    <message>
        <source>Home yard</source>
        <translation>Pasieka przy domu</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Nazwa pasieki</translation>
    </message>
    <message>
        <source>What you call the place:</source>
        <translation>Jak się nazywa to miejsce:</translation>
    </message>
    <message>
        <source>2. What hive do they live in?</source>
        <translation>2. W&#xa0;jakim ulu żyją?</translation>
    </message>
    <message>
        <source>its combs have measures of their o&amp;wn</source>
        <translation>plastry mają włas&amp;ne wymiary</translation>
    </message>
    <message>
        <source>3. Which colonies?</source>
        <translation>3. Które rodziny?</translation>
    </message>
    <message>
        <source>Numbers in</source>
        <translation>Liczby w</translation>
    </message>
    <message>
        <source>kilograms and litres</source>
        <translation>kilogramach i&#xa0;litrach</translation>
    </message>
    <message>
        <source>pounds and US gallons</source>
        <translation>funtach i&#xa0;galonach amerykańskich</translation>
    </message>
    <message>
        <source>pounds and imperial gallons</source>
        <translation>funtach i&#xa0;galonach brytyjskich</translation>
    </message>
    <message>
        <source>%1 stays open until the new book is begun.</source>
        <translation>%1 pozostaje otwarty do założenia nowego dziennika.</translation>
    </message>
    <message>
        <source>Say where the bees are: choose a place from the list, or type latitude and longitude.</source>
        <translation>Trzeba podać, gdzie stoją pszczoły: wybrać miejsce z&#xa0;listy albo wpisać szerokość i&#xa0;długość geograficzną.</translation>
    </message>
    <message>
        <source>The yard needs a name.</source>
        <translation>Pasieka musi mieć nazwę.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StepListModel</name>
    <message>
        <source>taken back</source>
        <translation>cofnięty</translation>
    </message>
    <message>
        <source>taken back for good</source>
        <translation>cofnięty na stałe</translation>
    </message>
    <message>
        <source>When it was written into the book</source>
        <translation>Kiedy wpisano do dziennika</translation>
    </message>
    <message>
        <source>when</source>
        <translation>kiedy</translation>
    </message>
    <message>
        <source>Who wrote it</source>
        <translation>Kto wpisał</translation>
    </message>
    <message>
        <source>by</source>
        <translation>kto</translation>
    </message>
    <message>
        <source>The colony or yard it is about</source>
        <translation>Rodzina lub pasieka, której dotyczy</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>rodzina</translation>
    </message>
    <message>
        <source>What was changed; the newest first</source>
        <translation>Co zmieniono; od najnowszych</translation>
    </message>
    <message>
        <source>what was changed</source>
        <translation>co zmieniono</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StoryPage</name>
    <message>
        <source>What to read</source>
        <translation>Co czytać</translation>
    </message>
    <message>
        <source>everything written down of this colony</source>
        <translation>wszystko, co zapisano o&#xa0;tej rodzinie</translation>
    </message>
    <message>
        <source>every step of the whole book</source>
        <translation>każdy krok w&#xa0;całym dzienniku</translation>
    </message>
    <message>
        <source>past forecasts against what happened</source>
        <translation>dawne prognozy i&#xa0;to, co się stało</translation>
    </message>
    <message>
        <source>Everything written down of this colony, newest first</source>
        <translation>Wszystko, co zapisano o&#xa0;tej rodzinie, od najnowszych</translation>
    </message>
    <message>
        <source>Nothing is written down yet. Looks, weighings, feeds, harvests, treatments and notes will stand here.</source>
        <translation>Nic jeszcze nie zapisano. Będą tu przeglądy, ważenia, karmienia, miodobrania, zabiegi i&#xa0;notatki.</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>No&amp;tatka…</translation>
    </message>
    <message>
        <source>Ha&amp;rvest…</source>
        <translation>&amp;Miodobranie…</translation>
    </message>
    <message>
        <source>Treat&amp;ment…</source>
        <translation>&amp;Zabieg leczniczy…</translation>
    </message>
    <message>
        <source>H&amp;ow the winter went…</source>
        <translation>Jak przebiegła zim&amp;owla…</translation>
    </message>
    <message>
        <source>What became of it…</source>
        <translation>Co się z&#xa0;nią stało…</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherDialog</name>
    <message>
        <source>Daily temperatures: %1</source>
        <translation>Temperatury dobowe: %1</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Kolumny</translation>
    </message>
    <message>
        <source>date=D,mean=T or date=D,min=TMIN,max=TMAX</source>
        <translation>date=D,mean=T albo date=D,min=TMIN,max=TMAX</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Jednostka</translation>
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
        <translation>Co zostanie zaimportowane</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Są &amp;poprawne tak, jak są</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importuj</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Anuluj</translation>
    </message>
    <message>
        <source>columns (empty: date, and mean or min and max)</source>
        <translation>kolumny (puste: date oraz mean albo min i&#xa0;max)</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>jednostka</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Czytanie…</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
            <numerusform>i&#xa0;jeszcze %n</numerusform>
        </translation>
    </message>
    <message>
        <source>No day with a temperature is in it.</source>
        <translation>Nie ma w&#xa0;tym żadnego dnia z&#xa0;temperaturą.</translation>
    </message>
    <message>
        <source>Days: %1, %2 to %3, the coldest %4. They hold for every colony of the yard; where tables overlap the later one counts.</source>
        <translation>Dni: %1, od %2 do %3, najzimniejszy %4. Dotyczą każdej rodziny w&#xa0;pasiece; gdzie tabele się pokrywają, liczy się późniejsza.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherPart</name>
    <message>
        <source>The weather so far</source>
        <translation>Dotychczasowa pogoda</translation>
    </message>
    <message>
        <source>&amp;Daily temperatures…</source>
        <translation>Temperatury do&amp;bowe…</translation>
    </message>
    <message>
        <source>Your own daily temperatures since autumn stand in for the simulated days that are past</source>
        <translation>Własne temperatury dobowe od jesieni zastępują symulowane dni, które już minęły</translation>
    </message>
    <message>
        <source>Take the last table out</source>
        <translation>Usuń ostatnią tabelę</translation>
    </message>
    <message>
        <source>No measured temperatures yet: past days of a winter are simulated like those to come.</source>
        <translation>Nie ma jeszcze zmierzonych temperatur: minione dni zimy są symulowane tak samo jak przyszłe.</translation>
    </message>
    <message>
        <source>Days measured: %1, %2 to %3; the last table: %4.</source>
        <translation>Zmierzone dni: %1, od %2 do %3; ostatnia tabela: %4.</translation>
    </message>
    <message>
        <source>Daily temperatures</source>
        <translation>Temperatury dobowe</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tabele (*.csv *.txt *.tsv);;Wszystkie pliki (*)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeighLineTable</name>
    <message>
        <source>Weights to expect, hive and all</source>
        <translation>Spodziewane masy całego ula</translation>
    </message>
    <message>
        <source>day</source>
        <translation>dzień</translation>
    </message>
    <message>
        <source>weight to expect, hive and all (80 of 100 between)</source>
        <translation>spodziewana masa całego ula (80 na 100 pomiędzy)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeighingField</name>
    <message>
        <source>How the hive was weighed</source>
        <translation>Jak ważono ul</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>nie ważono</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>na wadze</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>z&#xa0;obu stron</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>z&#xa0;jednej strony</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>w&#xa0;ręku</translation>
    </message>
    <message>
        <source>Weight, all of the hive or the left side</source>
        <translation>Masa, cały ul albo lewa strona</translation>
    </message>
    <message>
        <source>Weight, right side</source>
        <translation>Masa, prawa strona</translation>
    </message>
    <message>
        <source>How heavy it felt</source>
        <translation>Jaki był ciężar w&#xa0;ręku</translation>
    </message>
    <message>
        <source>light or heavy?</source>
        <translation>lekki czy ciężki?</translation>
    </message>
    <message>
        <source>light</source>
        <translation>lekki</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>średni</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>ciężki</translation>
    </message>
    <message>
        <source>on</source>
        <translation>dnia</translation>
    </message>
    <message>
        <source>Day of weighing</source>
        <translation>Dzień ważenia</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WhatIfPage</name>
    <message>
        <source>Move a slider: the picture above and the chances here follow. Nothing is written down until you make it the plan.</source>
        <translation>Przesunąć suwak: obraz powyżej i&#xa0;prawdopodobieństwa tutaj podążają za nim. Nic nie jest zapisywane, dopóki nie przyjmie się tego jako planu.</translation>
    </message>
    <message>
        <source>Chances of what is tried</source>
        <translation>Prawdopodobieństwa dla próby</translation>
    </message>
    <message>
        <source>State of the reckoning</source>
        <translation>Stan obliczeń</translation>
    </message>
    <message>
        <source>Ma&amp;ke this the plan</source>
        <translation>Przyjmij &amp;to jako plan</translation>
    </message>
    <message>
        <source>Back t&amp;o what is</source>
        <translation>Wróć d&amp;o stanu obecnego</translation>
    </message>
    <message>
        <source>Slider: %1</source>
        <translation>Suwak: %1</translation>
    </message>
    <message>
        <source>take off now</source>
        <translation>odebrać teraz</translation>
    </message>
    <message>
        <source>feed sugar</source>
        <translation>podać cukier</translation>
    </message>
    <message>
        <source>more or fewer bees</source>
        <translation>więcej lub mniej pszczół</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>forage comes later by</source>
        <translation>pożytek później o</translation>
    </message>
    <message>
        <source> days</source>
        <translation> dni</translation>
    </message>
    <message>
        <source>the hive is wrappe&amp;d</source>
        <translation>ul jest owinięt&amp;y</translation>
    </message>
    <message>
        <source>Simulating these winters…</source>
        <translation>Symulowanie tych zim…</translation>
    </message>
    <message>
        <source>Simulating the winters…</source>
        <translation>Symulowanie zim…</translation>
    </message>
    <message>
        <source>What can be tried is the autumn&apos;s question; this winter is under way. The page “On the scale” says how it goes and what to do.</source>
        <translation>Próby dotyczą pytania jesiennego; ta zima już trwa. Jak przebiega i&#xa0;co robić, mówi strona „Na wadze”.</translation>
    </message>
    <message>
        <source>Nothing can be tried before there is an answer.</source>
        <translation>Niczego nie można próbować, dopóki nie ma odpowiedzi.</translation>
    </message>
    <message>
        <source>Tried out over %1 winters; nothing of it is written down.</source>
        <translation>Próba na zimach: %1; nic z&#xa0;tego nie jest zapisane.</translation>
    </message>
    <message>
        <source>As tried, %1 or more are left in %2 of 100 simulated winters, and in %3 the food runs out; left as it is, in %4, and in %5. About %6 would be left when spring forage starts.</source>
        <translation>W&#xa0;tej próbie %1 lub więcej zostaje w&#xa0;%2 na 100 symulowanych zim, a&#xa0;w&#xa0;%3 pokarm się kończy; bez zmian w&#xa0;%4 i&#xa0;w&#xa0;%5. Na początku pożytków wiosennych zostałoby około %6.</translation>
    </message>
    <message>
        <source>A first sight over few winters; the full answer follows.</source>
        <translation>Pierwsze przybliżenie z&#xa0;niewielu zim; pełna odpowiedź za chwilę.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WhyWindow</name>
    <message>
        <source>Reasons and cautions with their sources</source>
        <translation>Powody i&#xa0;na co uważać, ze źródłami</translation>
    </message>
    <message>
        <source>Good &amp;practice</source>
        <translation>Dobra &amp;praktyka</translation>
    </message>
    <message>
        <source>What holds for every hive at this time of the year</source>
        <translation>Co o&#xa0;tej porze roku dotyczy każdego ula</translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation>Dlaczego? %1</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Powody</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Na co uważać</translation>
    </message>
    <message>
        <source>Good practice</source>
        <translation>Dobra praktyka pszczelarska</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WinterPlot</name>
    <message>
        <source>Winter picture: stores through the winter</source>
        <translation>Obraz zimy: zapasy w&#xa0;ciągu zimy</translation>
    </message>
    <message>
        <source>Drawing of the winters</source>
        <translation>Wykres zim</translation>
    </message>
    <message>
        <source>reads out the day before or the next day</source>
        <translation>odczytuje poprzedni lub następny dzień</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>tydzień</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>miesiąc</translation>
    </message>
    <message>
        <source>the first or the last day</source>
        <translation>pierwszy lub ostatni dzień</translation>
    </message>
    <message>
        <source>fewer or more days</source>
        <translation>mniej lub więcej dni</translation>
    </message>
    <message>
        <source>the whole winter</source>
        <translation>cała zima</translation>
    </message>
    <message>
        <source>reads out no day; once more: the whole winter</source>
        <translation>nie odczytuje żadnego dnia; jeszcze raz: cała zima</translation>
    </message>
    <message>
        <source>a living colony eats %1 a day (adults %2, warmth for brood %3, food for brood %4) at %5</source>
        <translation>żywa rodzina zjada %1 dziennie (dorosłe %2, ciepło dla czerwiu %3, pokarm dla czerwiu %4) przy %5</translation>
    </message>
    <message>
        <source>%1 %2, under the reserve in %3 of 100 winters</source>
        <translation>%1 %2, poniżej żelaznej rezerwy w&#xa0;%3 na 100 zim</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>date</source>
        <translation>data</translation>
    </message>
    <message>
        <source>%1: low, %2</source>
        <translation>%1: dolna, %2</translation>
    </message>
    <message>
        <source>%1: middle, %2</source>
        <translation>%1: środkowa, %2</translation>
    </message>
    <message>
        <source>%1: high, %2</source>
        <translation>%1: górna, %2</translation>
    </message>
    <message>
        <source>%1: under reserve, of 100</source>
        <translation>%1: poniżej rezerwy, na 100</translation>
    </message>
    <message>
        <source>adults, %1</source>
        <translation>dorosłe, %1</translation>
    </message>
    <message>
        <source>warmth for brood, %1</source>
        <translation>ciepło dla czerwiu, %1</translation>
    </message>
    <message>
        <source>food for brood, %1</source>
        <translation>pokarm dla czerwiu, %1</translation>
    </message>
    <message>
        <source>air, %1</source>
        <translation>powietrze, %1</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>Od %1 do %2</translation>
    </message>
    <message>
        <source>%1: %2 today, %3 as forage starts, then under the reserve in %4 of 100 winters</source>
        <translation>%1: dziś %2, na początku pożytków %3, wtedy poniżej żelaznej rezerwy w&#xa0;%4 na 100 zim</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>last nectar 30 Sep</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>arrow keys read out each day</source>
        <translation>strzałki odczytują każdy dzień</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::Yard</name>
    <message>
        <source>The yard</source>
        <translation>Pasieka</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardDelegate</name>
    <message>
        <source>Yard</source>
        <translation>Pasieka</translation>
    </message>
    <message>
        <source>working it out</source>
        <translation>obliczanie</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardListModel</name>
    <message>
        <source>%1, the whole yard: %2</source>
        <translation>%1, cała pasieka: %2</translation>
    </message>
    <message>
        <source>One colony</source>
        <translation>Jedna rodzina</translation>
    </message>
    <message numerus="yes">
        <source>%n colonies</source>
        <translation>
            <numerusform>%n rodzina</numerusform>
            <numerusform>%n rodziny</numerusform>
            <numerusform>%n rodzin</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, nothing due this week</source>
        <translation>%1, w&#xa0;tym tygodniu nic do zrobienia</translation>
    </message>
    <message>
        <source>%1, %2 due this week</source>
        <translation>%1, w&#xa0;tym tygodniu do zrobienia: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2, %3; %4 in the hive</source>
        <translation>%1: %2, %3; w&#xa0;ulu %4</translation>
    </message>
    <message>
        <source>feed today</source>
        <translation>karmić dziś</translation>
    </message>
    <message>
        <source>feed by %1</source>
        <translation>karmić do %1</translation>
    </message>
    <message>
        <source>weigh by %1</source>
        <translation>zważyć do %1</translation>
    </message>
    <message>
        <source>Colony without a name</source>
        <translation>Rodzina bez nazwy</translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation>nie obliczono</translation>
    </message>
    <message>
        <source>records disagree</source>
        <translation>wpisy są sprzeczne</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardPane</name>
    <message>
        <source>Back to the page</source>
        <translation>Wróć do strony</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Show the whole list, and the day asked about</source>
        <translation>Pokaż całą listę i&#xa0;dzień, na który liczymy</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardView</name>
    <message>
        <source>Pages of the yard</source>
        <translation>Strony pasieki</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>Pl&amp;an</translation>
    </message>
    <message>
        <source>P&amp;lace</source>
        <translation>&amp;Miejsce</translation>
    </message>
    <message>
        <source>Everything to do, by day</source>
        <translation>Wszystko do zrobienia, według dni</translation>
    </message>
    <message>
        <source>“Advised” is what today&apos;s answers ask for; “Make it the plan” on a colony&apos;s page makes it yours. Enter on a row opens its colony.</source>
        <translation>„Zalecane” to, czego wymagają dzisiejsze odpowiedzi; „Przyjmij jako plan” na stronie rodziny czyni z&#xa0;tego przyjęty plan. Enter w&#xa0;wierszu otwiera rodzinę.</translation>
    </message>
    <message>
        <source>Visit &amp;made</source>
        <translation>Wizyta wyk&amp;onana</translation>
    </message>
    <message>
        <source>S&amp;kip the visit</source>
        <translation>Pomiń wi&amp;zytę</translation>
    </message>
    <message>
        <source>The yard is empty. Add a colony: its name and the hive it lives in. Then write down one look – which combs hold honey, and how many the bees cover – and the answer stands here: whether it lasts, what to feed, or what may come off.</source>
        <translation>Pasieka jest pusta. Należy dodać rodzinę: jej nazwę i&#xa0;ul, w&#xa0;którym żyje. Potem zapisać jeden przegląd – w&#xa0;których ramkach jest miód i&#xa0;ile plastrów obsiadają pszczoły – a&#xa0;będzie tu odpowiedź: czy wystarczy, co podać albo co można odebrać.</translation>
    </message>
    <message>
        <source>&amp;Add a colony…</source>
        <translation>Doda&amp;j rodzinę…</translation>
    </message>
    <message>
        <source>White sugar to buy</source>
        <translation>Biały cukier do kupienia</translation>
    </message>
    <message>
        <source>Fondant to buy</source>
        <translation>Ciasto do kupienia</translation>
    </message>
    <message>
        <source>Honey that may come off</source>
        <translation>Miód, który można odebrać</translation>
    </message>
    <message>
        <source>%{Combs} to move first</source>
        <translation>Ramki do przestawienia najpierw</translation>
    </message>
    <message>
        <source>Move %{combs} between hives</source>
        <translation>Przestawiaj ramki między ulami</translation>
    </message>
    <message>
        <source>Off: the plan and all answers as they are if every %{comb} stays in its hive</source>
        <translation>Wyłączone: plan i&#xa0;wszystkie odpowiedzi są takie, jakby każda ramka została w&#xa0;swoim ulu</translation>
    </message>
    <message>
        <source>none</source>
        <translation>brak</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>do %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ZoneLegend</name>
    <message>
        <source>empty</source>
        <translation>puste</translation>
    </message>
    <message>
        <source>E</source>
        <comment>key that empties a comb</comment>
        <translation>U</translation>
    </message>
    <message>
        <source>Patterns: capped, open nectar, brood, bee bread, empty</source>
        <translation>Wzory: zasklepione, nakrop, czerw, pierzga, puste</translation>
    </message>
    <message>
        <source>Type a letter to pick a zone, then digits: 7 is 70 %, 75 is 75 %. Shift with the letter: all empty cells. Space: as the last comb. E: empty. F: faces seen. W: through a window. U: built. Or drag an edge.</source>
        <translation>Litera wybiera strefę, potem cyfry: 7 to 70%, 75 to 75%. Shift z&#xa0;literą: wszystkie puste komórki. Spacja: jak ostatni plaster. U: puste. S: widziane strony. K: przez okienko. O: odbudowane. Albo przeciągnąć krawędź.</translation>
    </message>
</context>
</TS>
