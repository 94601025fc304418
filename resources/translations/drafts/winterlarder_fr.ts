<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Arguments</name>
    <message>
        <source>%1 needs a folder after it</source>
        <translation>%1 doit être suivi d’un dossier</translation>
    </message>
    <message>
        <source>--day needs a day after it, as 2026-09-14</source>
        <translation>--day doit être suivi d’un jour, par exemple 2026-09-14</translation>
    </message>
    <message>
        <source>unknown option %1; --help lists them</source>
        <translation>option %1 inconnue&#x202f;; --help les énumère</translation>
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
        <translation>Usage&#xa0;: winterlarder [FICHIER...]
       winterlarder --pictures DOSSIER [FICHIER...]

Ouvre un carnet, ou les colonies de fichiers de cas ; sans fichier, le dernier carnet ouvert.
Ce que contient la ruche suffira-t-il jusqu’aux miellées de printemps&#x202f;?

  --demo             ouvrir le rucher d’exemple&#xa0;: six colonies inventées dans un verger
  --day JOUR         interroger ce jour (2026-09-14) au lieu d’aujourd’hui
  --pictures DOSSIER écrire dans le dossier la fenêtre, l’image de l’hiver et la fiche de chaque
                     colonie et le plan du rucher, afficher leurs noms, et finir ; sans écran
  --language CODE    parler cette langue (en) au lieu de celle des Paramètres, sinon du système
  --data DOSSIER     prendre dans un autre dossier les données fournies avec le programme
  --version          dire de quelle version il s’agit
  --help             dire ceci
</translation>
    </message>
</context>
<context>
    <name>Choices</name>
    <message>
        <source>no more than weeds and ivy bring</source>
        <translation>pas plus que les herbes folles et le lierre</translation>
    </message>
    <message>
        <source>a trickle</source>
        <translation>une faible miellée</translation>
    </message>
    <message>
        <source>a fair flow</source>
        <translation>une miellée moyenne</translation>
    </message>
    <message>
        <source>a strong flow</source>
        <translation>une forte miellée</translation>
    </message>
    <message>
        <source>timber</source>
        <translation>bois</translation>
    </message>
    <message>
        <source>thick timber</source>
        <translation>bois épais</translation>
    </message>
    <message>
        <source>wrapped</source>
        <translation>emballée</translation>
    </message>
    <message>
        <source>polystyrene</source>
        <translation>polystyrène</translation>
    </message>
    <message>
        <source>straw</source>
        <translation>paille</translation>
    </message>
    <message>
        <source>dark bee</source>
        <translation>abeille noire</translation>
    </message>
    <message>
        <source>carniolan</source>
        <translation>carniolienne</translation>
    </message>
    <message>
        <source>buckfast</source>
        <translation>Buckfast</translation>
    </message>
    <message>
        <source>italian</source>
        <translation>italienne</translation>
    </message>
    <message>
        <source>light</source>
        <translation>légère</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>lourde</translation>
    </message>
    <message>
        <source>round feeder</source>
        <translation>nourrisseur rond</translation>
    </message>
    <message>
        <source>tray on top</source>
        <translation>nourrisseur couvre-cadres</translation>
    </message>
    <message>
        <source>bucket in an empty box</source>
        <translation>seau dans une hausse vide</translation>
    </message>
    <message>
        <source>contact feeder</source>
        <translation>nourrisseur inversé</translation>
    </message>
    <message>
        <source>frame feeder</source>
        <translation>nourrisseur-cadre</translation>
    </message>
    <message>
        <source>feeder at the end of the bars</source>
        <translation>nourrisseur derrière la partition</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>dry sugar</source>
        <translation>sucre sec</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanc</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>jaune</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rouge</translation>
    </message>
    <message>
        <source>green</source>
        <translation>vert</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>bleu</translation>
    </message>
    <message>
        <source>united with another</source>
        <translation>réunie à une autre</translation>
    </message>
    <message>
        <source>sold or given away</source>
        <translation>vendue ou donnée</translation>
    </message>
    <message>
        <source>died</source>
        <translation>morte</translation>
    </message>
    <message>
        <source>gentle</source>
        <translation>douces</translation>
    </message>
    <message>
        <source>calm</source>
        <translation>calmes</translation>
    </message>
    <message>
        <source>nervous</source>
        <translation>nerveuses</translation>
    </message>
    <message>
        <source>fierce</source>
        <translation>agressives</translation>
    </message>
    <message>
        <source>%{combs} put in</source>
        <translation>cadres ajoutés</translation>
    </message>
    <message>
        <source>%{combs} taken out</source>
        <translation>cadres retirés</translation>
    </message>
    <message>
        <source>%{combs} given to another colony</source>
        <translation>cadres donnés à une autre colonie</translation>
    </message>
    <message>
        <source>boxes put on</source>
        <translation>éléments posés</translation>
    </message>
    <message>
        <source>boxes taken off</source>
        <translation>éléments retirés</translation>
    </message>
    <message>
        <source>boxes given to another colony</source>
        <translation>éléments donnés à une autre colonie</translation>
    </message>
    <message>
        <source>give syrup</source>
        <translation>donner du sirop</translation>
    </message>
    <message>
        <source>lay on fondant</source>
        <translation>poser du candi</translation>
    </message>
    <message>
        <source>check and weigh</source>
        <translation>contrôler et peser</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prévu</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>sauté</translation>
    </message>
    <message>
        <source>bees flying</source>
        <translation>abeilles en vol</translation>
    </message>
    <message>
        <source>the cluster</source>
        <translation>la grappe</translation>
    </message>
    <message>
        <source>stores under the cover</source>
        <translation>provisions sous le couvre-cadres</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>morte</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>pas de couvain</translation>
    </message>
    <message>
        <source>solid</source>
        <translation>compact</translation>
    </message>
    <message>
        <source>patchy</source>
        <translation>en mosaïque</translation>
    </message>
</context>
<context>
    <name>CombTyping</name>
    <message>
        <source>E</source>
        <comment>key that empties a comb</comment>
        <translation>V</translation>
    </message>
    <message>
        <source>F</source>
        <comment>key for the faces seen</comment>
        <translation>F</translation>
    </message>
    <message>
        <source>W</source>
        <comment>key for seen through a window</comment>
        <translation>T</translation>
    </message>
    <message>
        <source>built</source>
        <translation>bâti</translation>
    </message>
    <message>
        <source>C</source>
        <comment>key that picks capped stores</comment>
        <translation>O</translation>
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
        <translation>B</translation>
    </message>
    <message>
        <source>picks %1: digits set its share</source>
        <translation>choisit %1&#xa0;: les chiffres en fixent la part</translation>
    </message>
    <message>
        <source>gives the zone all cells that are empty</source>
        <translation>donne à la zone toutes les cellules vides</translation>
    </message>
    <message>
        <source>the share in tenths; a second digit makes it finer: 7 is 70 %, 75 is 75 %</source>
        <translation>la part en dixièmes&#x202f;; un second chiffre la précise&#xa0;: 7 veut dire 70&#xa0;%, 75 veut dire 75&#xa0;%</translation>
    </message>
    <message>
        <source>5 % more or less</source>
        <translation>5&#xa0;% de plus ou de moins</translation>
    </message>
    <message>
        <source>empties the comb</source>
        <translation>vide le cadre</translation>
    </message>
    <message>
        <source>both faces seen, one, or none</source>
        <translation>deux faces vues, une seule, ou aucune</translation>
    </message>
    <message>
        <source>seen through a window, or not</source>
        <translation>vu par une fenêtre, ou non</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>Reasons</source>
        <translation>Raisons</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Good practice</source>
        <translation>Bonnes pratiques apicoles</translation>
    </message>
    <message>
        <source>Colony without a name</source>
        <translation>Colonie sans nom</translation>
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
        <translation>Une question&#xa0;: %1</translation>
    </message>
    <message>
        <source>Its own stores</source>
        <translation>Ses propres provisions</translation>
    </message>
    <message>
        <source>Its own bees</source>
        <translation>Ses propres abeilles</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Provisions</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>Stores of both</source>
        <translation>Provisions des deux</translation>
    </message>
    <message>
        <source>Bees of both</source>
        <translation>Abeilles des deux</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Abeilles</translation>
    </message>
    <message>
        <source>Eaten until spring forage</source>
        <translation>Consommation jusqu’aux miellées de printemps</translation>
    </message>
    <message>
        <source>Need</source>
        <translation>Besoin</translation>
    </message>
    <message>
        <source>%1: typically eaten %2, for a harder winter %3, to be left %4</source>
        <translation>%1&#xa0;: consommation la plus probable %2, pour un hiver plus rigoureux %3, marge de sécurité %4</translation>
    </message>
    <message>
        <source>Until %1</source>
        <translation>D’ici au %1</translation>
    </message>
    <message>
        <source>eaten %1, found %2</source>
        <translation>consommation %1, rentrées %2</translation>
    </message>
    <message>
        <source>The %{combs} hold</source>
        <translation>Contenance des cadres</translation>
    </message>
    <message>
        <source>Left when spring forage starts</source>
        <translation>Reste au début des miellées de printemps</translation>
    </message>
    <message>
        <source>Empty comb at the look</source>
        <translation>Place libre dans les cadres à la visite</translation>
    </message>
    <message>
        <source>Figures (10th to 90th percentile in brackets)</source>
        <translation>Chiffres (du 10e au 90e centile entre parenthèses)</translation>
    </message>
    <message>
        <source>Missing on %1</source>
        <translation>Il manque au %1</translation>
    </message>
    <message>
        <source>%1 (from %2 to spare to %3 missing)</source>
        <translation>%1 (de %2 d’excédent à %3 de manque)</translation>
    </message>
    <message>
        <source>To spare on %1</source>
        <translation>Excédent au %1</translation>
    </message>
    <message>
        <source>%1 (from %2 missing to %3 to spare)</source>
        <translation>%1 (de %2 de manque à %3 d’excédent)</translation>
    </message>
    <message>
        <source>%1 (%2, exact)</source>
        <translation>%1 (%2, exact)</translation>
    </message>
    <message>
        <source>%1 ± %2 days (%3)</source>
        <translation>%1 ± %2 jours (%3)</translation>
    </message>
    <message>
        <source>Weight to expect, hive and all, without what is fed later</source>
        <translation>Poids à attendre, ruche comprise, sans ce qui sera donné plus tard</translation>
    </message>
    <message>
        <source>Weight to expect, hive and all</source>
        <translation>Poids à attendre, ruche comprise</translation>
    </message>
    <message>
        <source>With your super on, and the honey that is in it now.</source>
        <translation>Avec votre hausse en place, et le miel qu’elle contient maintenant.</translation>
    </message>
    <message>
        <source>With your super off.</source>
        <translation>Sans votre hausse.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>&gt;Weight</source>
        <translation>&gt;Poids</translation>
    </message>
    <message>
        <source>Use by month</source>
        <translation>Consommation par mois</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mois</translation>
    </message>
    <message>
        <source>&gt;Use</source>
        <translation>&gt;Consommation</translation>
    </message>
    <message>
        <source>Options once %1 is united onto it, over the same %2 simulated winters</source>
        <translation>Choix possibles une fois la colonie %1 réunie à celle-ci, sur les mêmes %2 hivers simulés</translation>
    </message>
    <message>
        <source>Options, over the same %1 simulated winters</source>
        <translation>Choix possibles, sur les mêmes %1 hivers simulés</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Choix</translation>
    </message>
    <message>
        <source>&gt;Of stores</source>
        <translation>&gt;En provisions</translation>
    </message>
    <message>
        <source>&gt;Stores after</source>
        <translation>&gt;Provisions après</translation>
    </message>
    <message>
        <source>&gt;Runs out</source>
        <translation>&gt;S’épuisent</translation>
    </message>
    <message>
        <source>&gt;Falls below %1</source>
        <translation>&gt;Descendent sous %1</translation>
    </message>
    <message>
        <source>&gt;Left in spring</source>
        <translation>&gt;Reste au printemps</translation>
    </message>
    <message>
        <source>Unite it soon, at the latest on %1. %2</source>
        <translation>Réunissez-la bientôt, au plus tard le %1. %2</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Nourrissement</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Sucre</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Syrup</source>
        <translation>Sirop</translation>
    </message>
    <message>
        <source>%1, %2 by mass</source>
        <translation>%1, %2 en poids</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Candi</translation>
    </message>
    <message>
        <source>Last day for syrup</source>
        <translation>Dernier jour pour le sirop</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>&gt;Sugar</source>
        <translation>&gt;Sucre</translation>
    </message>
    <message>
        <source>&gt;Syrup</source>
        <translation>&gt;Sirop</translation>
    </message>
    <message>
        <source>&gt;Fondant</source>
        <translation>&gt;Candi</translation>
    </message>
    <message>
        <source>From %1 to %2: %3 (%4).</source>
        <translation>De la colonie %1 à la colonie %2&#xa0;: %3 (%4).</translation>
    </message>
    <message>
        <source>%1 As many of the emptiest outer %{combs} go back, and are taken off that weight.</source>
        <translation>%1 Autant de cadres de rive, les plus vides, reviennent en échange et sont déduits de ce poids.</translation>
    </message>
    <message>
        <source>%1 Back go: %2.</source>
        <translation>%1 Reviennent&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Récolte</translation>
    </message>
    <message>
        <source>%1 in all: %2.</source>
        <translation>%1 en tout&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%{Combs} to move within the yard</source>
        <translation>Cadres à déplacer dans le rucher</translation>
    </message>
    <message numerus="yes">
        <source>%1: not answered, %n faults
</source>
        <comment>a case file</comment>
        <translation>
            <numerusform>%1&#xa0;: sans réponse, %n faute
</numerusform>
            <numerusform>%1&#xa0;: sans réponse, %n fautes
</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: not answered
</source>
        <comment>a colony</comment>
        <translation>%1&#xa0;: sans réponse
</translation>
    </message>
    <message>
        <source>new: %1 lines, changed: %2, already in the book and left out: %3
</source>
        <translation>nouvelles lignes&#xa0;: %1, modifiées&#xa0;: %2, déjà dans le carnet et laissées de côté&#xa0;: %3
</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 octets</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Commencé</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 par %2</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Étapes</translation>
    </message>
    <message>
        <source>sound
</source>
        <translation>intact
</translation>
    </message>
    <message>
        <source>&gt;Bytes</source>
        <translation>&gt;Octets</translation>
    </message>
    <message>
        <source>lost: %1
</source>
        <translation>perdu&#xa0;: %1
</translation>
    </message>
    <message>
        <source>%1: not followed
</source>
        <comment>a colony</comment>
        <translation>%1&#xa0;: sans suivi
</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonie</translation>
    </message>
    <message>
        <source>&gt;Deaths</source>
        <translation>&gt;Mortalité</translation>
    </message>
    <message>
        <source>weighings: %1, feeds: %2, harvests: %3, changes of equipment: %4; on days the book has already: %5
</source>
        <translation>pesées&#xa0;: %1, nourrissements&#xa0;: %2, récoltes&#xa0;: %3, changements de matériel&#xa0;: %4&#x202f;; à des jours déjà notés dans le carnet&#xa0;: %5
</translation>
    </message>
    <message>
        <source>too few years to tell</source>
        <translation>trop peu d’années pour le dire</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Jours</translation>
    </message>
    <message>
        <source>%1 in %2 calendar years, %3 missing between them</source>
        <translation>%1 sur %2 années civiles&#x202f;; jours manquants entre eux&#xa0;: %3</translation>
    </message>
    <message>
        <source>Daily SD in winter, °C</source>
        <translation>Écart type d’un jour en hiver, °C</translation>
    </message>
    <message>
        <source>Daily SD in summer, °C</source>
        <translation>Écart type d’un jour en été, °C</translation>
    </message>
    <message>
        <source>Correlation of consecutive days</source>
        <translation>Corrélation de deux jours consécutifs</translation>
    </message>
    <message>
        <source>SD of a whole season, °C</source>
        <translation>Écart type d’une saison entière, °C</translation>
    </message>
    <message>
        <source>&gt;Mean °C</source>
        <translation>&gt;Moyenne °C</translation>
    </message>
    <message>
        <source>With --json this is printed as a site that a case file accepts.</source>
        <translation>Avec --json, ceci s’affiche comme un site qu’un fichier de cas accepte.</translation>
    </message>
    <message>
        <source>&gt;Forecast in autumn</source>
        <translation>&gt;Prévision d’automne</translation>
    </message>
    <message>
        <source>&gt;Forecast now</source>
        <translation>&gt;Prévision actuelle</translation>
    </message>
    <message>
        <source>Stores today</source>
        <translation>Provisions aujourd’hui</translation>
    </message>
    <message>
        <source>Lost since</source>
        <translation>Perte depuis</translation>
    </message>
    <message>
        <source>Fall below %1</source>
        <translation>Descendent sous %1</translation>
    </message>
    <message>
        <source>Run out</source>
        <translation>S’épuisent</translation>
    </message>
    <message>
        <source>Below %1</source>
        <translation>Sous %1</translation>
    </message>
    <message>
        <source>Nothing left</source>
        <translation>Plus rien</translation>
    </message>
    <message>
        <source>Spring forage starts</source>
        <translation>Début des miellées de printemps</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (du %2 au %3)</translation>
    </message>
    <message>
        <source>most likely by now</source>
        <translation>très probablement déjà</translation>
    </message>
    <message>
        <source>perhaps by now</source>
        <translation>peut-être déjà</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>à partir du %1</translation>
    </message>
    <message>
        <source>%1, half by %2</source>
        <translation>%1, une fois sur deux d’ici au %2</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Nourrissement</translation>
    </message>
    <message>
        <source>Becomes stores</source>
        <translation>Provisions obtenues</translation>
    </message>
    <message>
        <source>Needed by</source>
        <translation>Nécessaire d’ici au</translation>
    </message>
    <message>
        <source>&gt;Amount</source>
        <translation>&gt;Quantité</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>Seen since</source>
        <translation>Constaté depuis</translation>
    </message>
    <message>
        <source>&gt;Read</source>
        <translation>&gt;Relevé</translation>
    </message>
    <message>
        <source>&gt;Expected</source>
        <translation>&gt;Attendu</translation>
    </message>
    <message>
        <source>What was found points to</source>
        <translation>Ce que les constats indiquent</translation>
    </message>
    <message>
        <source>Look, and write it down with the outcome</source>
        <translation>À regarder, et à noter avec l’issue de l’hiver</translation>
    </message>
    <message>
        <source>It cannot be followed.</source>
        <translation>Le suivi est impossible.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a point of the guide and what is said of it</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>Judging stores</source>
        <translation>Évaluer les provisions</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Puissance</translation>
    </message>
    <message>
        <source>  adult bees</source>
        <translation>  abeilles adultes</translation>
    </message>
    <message>
        <source>  brood nest</source>
        <translation>  nid à couvain</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Consommation</translation>
    </message>
    <message>
        <source>%1 g a day</source>
        <translation>%1&#xa0;g par jour</translation>
    </message>
    <message>
        <source>Food for each bee</source>
        <translation>Consommation par abeille</translation>
    </message>
    <message>
        <source>%1 mg a day</source>
        <translation>%1&#xa0;mg par jour</translation>
    </message>
    <message>
        <source>Power for each kg of bees</source>
        <translation>Puissance par kg d’abeilles</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1&#xa0;W</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Proportions</translation>
    </message>
    <message>
        <source>%1 sugar to water, by mass</source>
        <translation>%1 de sucre et d’eau, en poids</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Concentration</translation>
    </message>
    <message>
        <source>%1 % sugar by mass, %2 kg/L at 20 °C</source>
        <translation>%1&#xa0;% de sucre en poids, %2&#xa0;kg/L à 20&#xa0;°C</translation>
    </message>
    <message>
        <source>Stores gained</source>
        <translation>Provisions obtenues</translation>
    </message>
    <message>
        <source>%1, ripened</source>
        <translation>%1, une fois mûri</translation>
    </message>
    <message>
        <source>; %1 where not said</source>
        <translation>&#x202f;; %1 si rien n’est dit</translation>
    </message>
    <message>
        <source>%1 (%2%3): %4</source>
        <translation>%1 (%2%3)&#xa0;: %4</translation>
    </message>
    <message>
        <source>One entry changed
</source>
        <translation>Une note modifiée
</translation>
    </message>
    <message numerus="yes">
        <source>%n entries changed
</source>
        <translation>
            <numerusform>%n note modifiée
</numerusform>
            <numerusform>%n notes modifiées
</numerusform>
        </translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>&gt;Latitude</source>
        <translation>&gt;Latitude</translation>
    </message>
    <message>
        <source>&gt;Longitude</source>
        <translation>&gt;Longitude</translation>
    </message>
    <message>
        <source>&gt;Height</source>
        <translation>&gt;Altitude</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Climat</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>%1, &quot;%2&quot;</source>
        <translation>%1, «&#xa0;%2&#xa0;»</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>, in UTC</source>
        <translation>, en UTC</translation>
    </message>
    <message>
        <source>, with their distance from UTC</source>
        <translation>, avec leur décalage sur UTC</translation>
    </message>
    <message>
        <source>, in seconds since 1970</source>
        <translation>, en secondes depuis 1970</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Date order</source>
        <translation>Ordre de la date</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>%1, one in %2 minutes</source>
        <translation>%1, un toutes les %2 minutes</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>newest first, turned round</source>
        <translation>du plus récent au plus ancien, retourné</translation>
    </message>
    <message>
        <source>rows were not in the order of time and are sorted</source>
        <translation>les lignes n’étaient pas dans l’ordre du temps et ont été triées</translation>
    </message>
    <message>
        <source>Same time</source>
        <translation>Même heure</translation>
    </message>
    <message>
        <source>%1 rows share their time with another and are taken together</source>
        <translation>%1 lignes ont la même heure qu’une autre et sont prises ensemble</translation>
    </message>
    <message>
        <source>of UTC; --time-zone gives those of the place</source>
        <translation>ceux d’UTC&#x202f;; --time-zone donne ceux du lieu</translation>
    </message>
    <message>
        <source>no time of day is given: taken as noon</source>
        <translation>aucune heure n’est donnée&#xa0;: midi est retenu</translation>
    </message>
    <message>
        <source>&gt;Change kg</source>
        <translation>&gt;Variation kg</translation>
    </message>
    <message>
        <source>&gt;Nectar days</source>
        <translation>&gt;Jours de nectar</translation>
    </message>
    <message>
        <source>&gt;kg</source>
        <translation>&gt;kg</translation>
    </message>
    <message>
        <source>&gt;Eating days</source>
        <translation>&gt;Jours de consommation</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>an end was weighed by day, foragers out</source>
        <translation>un bout du mois pesé de jour, butineuses dehors</translation>
    </message>
    <message>
        <source>an end in the wet</source>
        <translation>un bout du mois pesé mouillé</translation>
    </message>
    <message>
        <source>%1 days unknown</source>
        <translation>%1 jours inconnus</translation>
    </message>
    <message>
        <source>Water in the wood and on the hive moves this log by about %1 kg from day to day: while it is too cold to fly a single day of nectar is water. The months themselves are right.</source>
        <translation>L’eau dans le bois et sur la ruche fait varier ces relevés d’environ %1&#xa0;kg d’un jour à l’autre&#xa0;: tant qu’il fait trop froid pour voler, un jour de nectar isolé n’est que de l’eau. Les mois eux-mêmes sont justes.</translation>
    </message>
    <message>
        <source>No steps: nothing was put on, taken off or poured in.</source>
        <translation>Aucun saut de poids&#xa0;: rien n’a été posé, retiré ni versé.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Saut</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>late evening and early morning</source>
        <translation>tard le soir et tôt le matin</translation>
    </message>
    <message>
        <source>by day</source>
        <translation>de jour</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mouillé</translation>
    </message>
    <message>
        <source>and %1 more; --json lists them all</source>
        <translation>et %1 de plus&#x202f;; --json donne tout</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>ligne %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Rows left out: %1</source>
        <translation>Lignes laissées de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2 minutes back</source>
        <translation>%1&#xa0;: %2 minutes en arrière</translation>
    </message>
    <message>
        <source>%1: %2 minutes forward</source>
        <translation>%1&#xa0;: %2 minutes en avant</translation>
    </message>
    <message>
        <source> (daylight saving)</source>
        <translation> (heure d’été ou d’hiver)</translation>
    </message>
    <message>
        <source>%1: %2 kg of rain or snow</source>
        <translation>%1&#xa0;: %2&#xa0;kg de pluie ou de neige</translation>
    </message>
    <message>
        <source>%1: %2 kg and back</source>
        <translation>%1&#xa0;: %2&#xa0;kg et retour</translation>
    </message>
    <message>
        <source>Gaps: %1</source>
        <translation>Trous&#xa0;: %1</translation>
    </message>
    <message>
        <source>Clock put back or forward: %1</source>
        <translation>Horloge reculée ou avancée&#xa0;: %1</translation>
    </message>
    <message>
        <source>Disturbed: %1</source>
        <translation>Perturbations&#xa0;: %1</translation>
    </message>
    <message>
        <source>Neither temperature nor day length ever falls far enough: no season can be derived here, give its dates yourself.</source>
        <translation>Ni la température ni la durée du jour ne baissent jamais assez&#xa0;: aucune saison ne peut être déduite ici, donnez-en les dates vous-même.</translation>
    </message>
    <message>
        <source>Laying never stops here, so there are no dates for its end and new start.</source>
        <translation>Ici, la ponte ne s’arrête jamais&#xa0;: il n’y a donc pas de dates d’arrêt et de reprise.</translation>
    </message>
    <message>
        <source>It never gets too cold for syrup to be taken and ripened.</source>
        <translation>Il ne fait jamais trop froid pour que le sirop soit pris et transformé.</translation>
    </message>
    <message>
        <source>It never gets too cold for syrup to be taken.</source>
        <translation>Il ne fait jamais trop froid pour que le sirop soit pris.</translation>
    </message>
    <message>
        <source>The season lies at the edge of the rules: compare its dates with your own.</source>
        <translation>La saison est à la limite des règles&#xa0;: comparez ses dates avec les vôtres.</translation>
    </message>
    <message>
        <source>&gt;± SD</source>
        <translation>&gt;± écart type</translation>
    </message>
    <message>
        <source>&gt;Day length h</source>
        <translation>&gt;Durée du jour h</translation>
    </message>
    <message>
        <source>Own climate: %1</source>
        <translation>Votre climat&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>  The %1</source>
        <comment>weather of a station</comment>
        <translation>  La %1</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>Pays</translation>
    </message>
    <message>
        <source>&gt;Distance</source>
        <translation>&gt;Distance</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marque</translation>
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
        <translation>Format</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>&gt;Comb face</source>
        <translation>&gt;Face</translation>
    </message>
    <message>
        <source>&gt;Combs</source>
        <translation>&gt;Cadres</translation>
    </message>
    <message>
        <source>&gt;Pitch</source>
        <translation>&gt;Entraxe</translation>
    </message>
    <message>
        <source>&gt;Full comb</source>
        <translation>&gt;Cadre plein</translation>
    </message>
    <message>
        <source>&gt;Bees a comb</source>
        <translation>&gt;Abeilles par cadre</translation>
    </message>
    <message>
        <source>used by %1</source>
        <translation>utilisé par %1</translation>
    </message>
    <message>
        <source>&gt;%{Comb}</source>
        <translation>&gt;Cadre</translation>
    </message>
    <message>
        <source>&gt;Capped</source>
        <translation>&gt;Operculé</translation>
    </message>
    <message>
        <source>&gt;Open, as ripe honey</source>
        <translation>&gt;Non operculé, en miel mûr</translation>
    </message>
    <message>
        <source>What says so</source>
        <translation>D’après</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Vu le</translation>
    </message>
    <message>
        <source>&gt;Stores</source>
        <translation>&gt;Provisions</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>Room in the %{combs}</source>
        <translation>Place dans les cadres</translation>
    </message>
    <message>
        <source>These contradict each other; the answer spans both.</source>
        <translation>Ces indications se contredisent&#x202f;; la réponse couvre les deux.</translation>
    </message>
    <message>
        <source>&gt;Use g</source>
        <translation>&gt;Consommation g</translation>
    </message>
    <message>
        <source>&gt;Income g</source>
        <translation>&gt;Rentrées g</translation>
    </message>
    <message>
        <source>&gt;Bees</source>
        <translation>&gt;Abeilles</translation>
    </message>
    <message>
        <source>&gt;Brood cells</source>
        <translation>&gt;Cellules de couvain</translation>
    </message>
    <message>
        <source>&gt;Power W</source>
        <translation>&gt;Puissance W</translation>
    </message>
    <message>
        <source>Use from %1 to %2</source>
        <translation>Consommation du %1 au %2</translation>
    </message>
    <message>
        <source>Food eaten</source>
        <translation>Nourriture consommée</translation>
    </message>
    <message>
        <source>%1, mean %2</source>
        <translation>%1, en moyenne %2</translation>
    </message>
    <message>
        <source>  warmth for brood</source>
        <translation>  chaleur du couvain</translation>
    </message>
    <message>
        <source>  food for brood</source>
        <translation>  nourriture du couvain</translation>
    </message>
    <message>
        <source>Income</source>
        <translation>Rentrées</translation>
    </message>
    <message>
        <source>Bees at the end</source>
        <translation>Abeilles à la fin</translation>
    </message>
    <message>
        <source>&gt;Mean</source>
        <translation>&gt;Moyenne</translation>
    </message>
    <message>
        <source>The yard %1 as a whole</source>
        <translation>Le rucher %1 dans son ensemble</translation>
    </message>
    <message>
        <source>Honey to take</source>
        <translation>Miel à récolter</translation>
    </message>
    <message>
        <source>Nothing to buy</source>
        <translation>Rien à acheter</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>À acheter</translation>
    </message>
    <message>
        <source>%{Combs} to move first</source>
        <translation>Cadres à déplacer d’abord</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>n’importe quel jour</translation>
    </message>
    <message>
        <source>What to do, by day</source>
        <translation>À faire, jour par jour</translation>
    </message>
</context>
<context>
    <name>Days</name>
    <message>
        <source>today</source>
        <translation>aujourd&apos;hui</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>This cannot be read as a day of the year. Type it as %1.</source>
        <translation>Impossible d’y lire un jour de l’année. Écrivez-le ainsi&#xa0;: %1.</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d MMMM</translation>
    </message>
    <message>
        <source>This cannot be read as a day. Type it as %1, as %2, or “yesterday”.</source>
        <translation>Impossible d’y lire un jour. Écrivez-le ainsi&#xa0;: %1, %2 ou «&#xa0;hier&#xa0;».</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <translation>MMMM yyyy</translation>
    </message>
    <message>
        <source>There is no day %1 in %2; it ends with day %3.</source>
        <translation>Il n’y a pas de jour %1 en %2&#x202f;; le mois finit au jour %3.</translation>
    </message>
    <message>
        <source>%1 is too late here. Type a day from %2 to %3.</source>
        <translation>Le %1 est trop tard ici. Tapez un jour du %2 au %3.</translation>
    </message>
    <message>
        <source>%1 is too early here. Type a day from %2 to %3.</source>
        <translation>Le %1 est trop tôt ici. Tapez un jour du %2 au %3.</translation>
    </message>
    <message>
        <source>%1 is too late here. Type %2 or a day before it.</source>
        <translation>Le %1 est trop tard ici. Tapez le %2 ou un jour d’avant.</translation>
    </message>
    <message>
        <source>%1 is too early here. Type %2 or a day after it.</source>
        <translation>Le %1 est trop tôt ici. Tapez le %2 ou un jour d’après.</translation>
    </message>
</context>
<context>
    <name>DrawnCombs</name>
    <message>
        <source>%{Comb} %1 of the super</source>
        <translation>Cadre %1 de la hausse</translation>
    </message>
    <message>
        <source>%{Comb} %1 of box %2</source>
        <translation>Cadre %1 de l’élément %2</translation>
    </message>
    <message>
        <source>one face seen</source>
        <translation>une face vue</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>vu par une fenêtre</translation>
    </message>
    <message>
        <source>measured on a photograph</source>
        <translation>mesuré sur une photo</translation>
    </message>
    <message>
        <source>both faces seen</source>
        <translation>deux faces vues</translation>
    </message>
    <message>
        <source>%1: not looked at, taken as the mean of the others; %2</source>
        <translation>%1&#xa0;: non examiné, compté comme la moyenne des autres&#x202f;; %2</translation>
    </message>
    <message>
        <source>%1: capped %2, open nectar %3, brood %4, bee bread %5, empty %6; %7; %8</source>
        <translation>%1&#xa0;: operculé %2, nectar non operculé %3, couvain %4, pain d’abeilles %5, vide %6&#x202f;; %7&#x202f;; %8</translation>
    </message>
</context>
<context>
    <name>EntryForms</name>
    <message>
        <source>&amp;Boxes, as they stand</source>
        <translation>É&amp;léments, comme ils sont posés</translation>
    </message>
    <message>
        <source>&amp;Walls</source>
        <translation>&amp;Parois</translation>
    </message>
    <message>
        <source>Insulated on &amp;top</source>
        <translation>I&amp;solation au-dessus des cadres</translation>
    </message>
    <message>
        <source>Kept &amp;small on purpose</source>
        <translation>&amp;Gardée petite volontairement</translation>
    </message>
    <message>
        <source>&amp;Empty weight, if known</source>
        <translation>Poids à v&amp;ide, si connu</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>A new colony</source>
        <translation>Nouvelle colonie</translation>
    </message>
    <message>
        <source>The colony</source>
        <translation>La colonie</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Kind of bees</source>
        <translation>&amp;Race d’abeilles</translation>
    </message>
    <message>
        <source>Year of the &amp;queen</source>
        <translation>&amp;Année de la reine</translation>
    </message>
    <message>
        <source>&amp;Colour of her mark, if another than her year&apos;s</source>
        <translation>&amp;Couleur de sa marque, si ce n’est pas celle de l’année</translation>
    </message>
    <message>
        <source>&amp;Feeder</source>
        <translation>Nourrisse&amp;ur</translation>
    </message>
    <message>
        <source>It &amp;holds</source>
        <translation>Con&amp;tenance</translation>
    </message>
    <message>
        <source>Where it ca&amp;me from</source>
        <translation>Pro&amp;venance</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>Re&amp;marque</translation>
    </message>
    <message>
        <source>The colony needs a name.</source>
        <translation>Il faut un nom à la colonie.</translation>
    </message>
    <message>
        <source>The hive</source>
        <translation>La ruche</translation>
    </message>
    <message>
        <source>From this &amp;day on</source>
        <translation>À partir de ce &amp;jour</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Remarque</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Ce qu’elle est devenue</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Jour</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Quoi</translation>
    </message>
    <message>
        <source>&amp;Into</source>
        <translation>Ré&amp;unie à</translation>
    </message>
    <message>
        <source>&amp;Of what, as far as is known</source>
        <translation>&amp;De quoi, pour autant qu’on le sache</translation>
    </message>
    <message>
        <source>The colony leaves the yard from this day on; everything written of it stays in the book. Where disease may be the cause, the bee inspector comes first.</source>
        <translation>La colonie quitte le rucher à partir de ce jour&#x202f;; tout ce qui a été noté d’elle reste dans le carnet. Si une maladie peut en être la cause, adressez-vous d’abord au technicien sanitaire apicole.</translation>
    </message>
    <message>
        <source>Into which colony?</source>
        <translation>Réunie à quelle colonie&#x202f;?</translation>
    </message>
    <message>
        <source>A new yard</source>
        <translation>Nouveau rucher</translation>
    </message>
    <message>
        <source>&amp;Where it is</source>
        <translation>&amp;Où il se trouve</translation>
    </message>
    <message>
        <source>The yard needs a name.</source>
        <translation>Il faut un nom au rucher.</translation>
    </message>
    <message>
        <source>Choose a place from the list, or type latitude and longitude.</source>
        <translation>Choisissez un lieu dans la liste, ou tapez latitude et longitude.</translation>
    </message>
    <message>
        <source>To another yard</source>
        <translation>Vers un autre rucher</translation>
    </message>
    <message>
        <source>It stands &amp;in</source>
        <translation>Elle est au ru&amp;cher</translation>
    </message>
    <message>
        <source>Change the look</source>
        <translation>Modifier la visite</translation>
    </message>
    <message>
        <source>A new look</source>
        <translation>Nouvelle visite</translation>
    </message>
    <message>
        <source>&amp;Bees</source>
        <translation>&amp;Abeilles</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>non comptées</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>cadres occupés</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>ruelles d’abeilles</translation>
    </message>
    <message>
        <source>bees, counted</source>
        <translation>abeilles, comptées</translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation>&amp;Combien</translation>
    </message>
    <message>
        <source>&amp;Queen seen</source>
        <translation>Rei&amp;ne vue</translation>
    </message>
    <message>
        <source>&amp;Eggs seen</source>
        <translation>Œu&amp;fs vus</translation>
    </message>
    <message>
        <source>&amp;Sealed brood seen</source>
        <translation>Couvain operculé &amp;vu</translation>
    </message>
    <message>
        <source>&amp;Pollen coming in</source>
        <translation>Rentrées de &amp;pollen</translation>
    </message>
    <message>
        <source>&amp;Temper</source>
        <translation>Co&amp;mportement</translation>
    </message>
    <message>
        <source>&amp;Water in the honey, %</source>
        <translation>Ea&amp;u dans le miel,&#xa0;%</translation>
    </message>
    <message>
        <source>S&amp;igns of disease</source>
        <translation>&amp;Signes de maladie</translation>
    </message>
    <message>
        <source>Which si&amp;gns</source>
        <translation>&amp;Quels signes</translation>
    </message>
    <message>
        <source>How many bees, %{combs} or seams were there?</source>
        <translation>Combien d’abeilles, de cadres ou de ruelles y avait-il&#x202f;?</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Une remarque</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Change the weighing</source>
        <translation>Modifier la pesée</translation>
    </message>
    <message>
        <source>A new weighing</source>
        <translation>Nouvelle pesée</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>&amp;Comment</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>sur une balance</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>pesée des deux côtés</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>pesée d’un seul côté</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>soupesée</translation>
    </message>
    <message>
        <source>&amp;Whole hive</source>
        <translation>Ruche en&amp;tière</translation>
    </message>
    <message>
        <source>&amp;One side</source>
        <translation>&amp;Un côté</translation>
    </message>
    <message>
        <source>The o&amp;ther side</source>
        <translation>L’&amp;autre côté</translation>
    </message>
    <message>
        <source>Rain or snow lay &amp;on it</source>
        <translation>P&amp;luie ou neige dessus</translation>
    </message>
    <message>
        <source>It &amp;felt</source>
        <translation>Elle &amp;semblait</translation>
    </message>
    <message>
        <source>How much did it weigh?</source>
        <translation>Combien pesait-elle&#x202f;?</translation>
    </message>
    <message>
        <source>Change the feed</source>
        <translation>Modifier le nourrissement</translation>
    </message>
    <message>
        <source>What was fed</source>
        <translation>Ce qui a été donné</translation>
    </message>
    <message>
        <source>&amp;Sugar in it</source>
        <translation>&amp;Sucre contenu</translation>
    </message>
    <message>
        <source>or s&amp;yrup</source>
        <translation>ou s&amp;irop</translation>
    </message>
    <message>
        <source>s&amp;ugar to water, by weight</source>
        <translation>sucre et ea&amp;u, en poids</translation>
    </message>
    <message>
        <source>&amp;Fondant</source>
        <translation>&amp;Candi</translation>
    </message>
    <message>
        <source>How much was fed?</source>
        <translation>Quelle quantité a été donnée&#x202f;?</translation>
    </message>
    <message>
        <source>Change the harvest</source>
        <translation>Modifier la récolte</translation>
    </message>
    <message>
        <source>What was taken</source>
        <translation>Ce qui a été récolté</translation>
    </message>
    <message>
        <source>&amp;Honey</source>
        <translation>&amp;Miel</translation>
    </message>
    <message>
        <source>&amp;%{Combs}</source>
        <translation>&amp;Cadres</translation>
    </message>
    <message>
        <source>&amp;Water in it, %</source>
        <translation>Teneur en ea&amp;u,&#xa0;%</translation>
    </message>
    <message>
        <source>Change the treatment</source>
        <translation>Modifier le traitement</translation>
    </message>
    <message>
        <source>A treatment</source>
        <translation>Traitement</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Du</translation>
    </message>
    <message>
        <source>It is &amp;over</source>
        <translation>Il est &amp;terminé</translation>
    </message>
    <message>
        <source>&amp;Until</source>
        <translation>&amp;Jusqu’au</translation>
    </message>
    <message>
        <source>&amp;What was given</source>
        <translation>&amp;Ce qui a été donné</translation>
    </message>
    <message>
        <source>Used only to warn about the honey. Which medicine may be given, how and when, the label, the vet and local law say.</source>
        <translation>Sert seulement à avertir au sujet du miel. Quel médicament vétérinaire donner, comment et quand, c’est à la notice, au vétérinaire et à la loi du pays de le dire.</translation>
    </message>
    <message>
        <source>What was given?</source>
        <translation>Qu’est-ce qui a été donné&#x202f;?</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Il finit avant de commencer.</translation>
    </message>
    <message>
        <source>How the winter went</source>
        <translation>Comment l’hiver s’est passé</translation>
    </message>
    <message>
        <source>&amp;Found out on</source>
        <translation>&amp;Constaté le</translation>
    </message>
    <message>
        <source>It is &amp;alive</source>
        <translation>Elle est &amp;vivante</translation>
    </message>
    <message>
        <source>%{Combs} &amp;covered with bees</source>
        <translation>Cadres &amp;occupés par les abeilles</translation>
    </message>
    <message>
        <source>&amp;Stores left</source>
        <translation>&amp;Provisions restantes</translation>
    </message>
    <message>
        <source>A glance in winter</source>
        <translation>Coup d’œil en hiver</translation>
    </message>
    <message>
        <source>What was &amp;seen</source>
        <translation>Ce qu’on a v&amp;u</translation>
    </message>
    <message>
        <source>Seams the cluster &amp;fills</source>
        <translation>Ruelles &amp;occupées par la grappe</translation>
    </message>
    <message>
        <source>Sealed s&amp;tores in sight</source>
        <translation>&amp;Provisions operculées en vue</translation>
    </message>
</context>
<context>
    <name>Fields</name>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>rucher</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
    <message>
        <source>written by</source>
        <translation>noté par</translation>
    </message>
    <message>
        <source>climate station</source>
        <translation>station climatique</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitude</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitude</translation>
    </message>
    <message>
        <source>mean temperature of a month</source>
        <translation>température moyenne d’un mois</translation>
    </message>
    <message>
        <source>scatter of winter days</source>
        <translation>dispersion des jours d’hiver</translation>
    </message>
    <message>
        <source>scatter of summer days</source>
        <translation>dispersion des jours d’été</translation>
    </message>
    <message>
        <source>likeness of one day to the next</source>
        <translation>ressemblance d’un jour au suivant</translation>
    </message>
    <message>
        <source>scatter of whole winters</source>
        <translation>dispersion d’un hiver à l’autre</translation>
    </message>
    <message>
        <source>height above the sea</source>
        <translation>altitude</translation>
    </message>
    <message>
        <source>autumn flow still to come</source>
        <translation>miellée d’automne encore à venir</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>fin des rentrées de nectar</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>arrêt de la ponte</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reprise de la ponte</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>développement printanier</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>début des miellées de printemps</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>fin conseillée du nourrissement</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>dernier jour pour le sirop</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>sirop qui n’est plus pris</translation>
    </message>
    <message>
        <source>accepted risk</source>
        <translation>risque accepté</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>marge de sécurité</translation>
    </message>
    <message>
        <source>days between visits</source>
        <translation>jours entre deux passages</translation>
    </message>
    <message>
        <source>weekdays for visits</source>
        <translation>jours de passage dans la semaine</translation>
    </message>
    <message>
        <source>can be reached in winter</source>
        <translation>accessible en hiver</translation>
    </message>
    <message>
        <source>what flowers here</source>
        <translation>ce qui fleurit ici</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>monnaie</translation>
    </message>
    <message>
        <source>price of a kilogram of sugar</source>
        <translation>prix d’un kilogramme de sucre</translation>
    </message>
    <message>
        <source>a bag of sugar</source>
        <translation>un sac de sucre</translation>
    </message>
    <message>
        <source>full %{combs} in store</source>
        <translation>cadres pleins gardés de côté</translation>
    </message>
    <message>
        <source>units</source>
        <translation>unités</translation>
    </message>
    <message>
        <source>walls of the hive</source>
        <translation>parois de la ruche</translation>
    </message>
    <message>
        <source>insulation on top</source>
        <translation>isolation au-dessus des cadres</translation>
    </message>
    <message>
        <source>medicine was in the hive</source>
        <translation>médicament donné dans la ruche</translation>
    </message>
    <message>
        <source>kept small on purpose</source>
        <translation>gardée petite volontairement</translation>
    </message>
    <message>
        <source>empty weight</source>
        <translation>poids à vide</translation>
    </message>
    <message>
        <source>the supers are for</source>
        <translation>destination des hausses</translation>
    </message>
    <message>
        <source>feeder</source>
        <translation>nourrisseur</translation>
    </message>
    <message>
        <source>what the feeder holds</source>
        <translation>contenance du nourrisseur</translation>
    </message>
    <message>
        <source>kind of bees</source>
        <translation>race d’abeilles</translation>
    </message>
    <message>
        <source>year of the queen</source>
        <translation>année de la reine</translation>
    </message>
    <message>
        <source>colour of the queen&apos;s mark</source>
        <translation>couleur de marquage de la reine</translation>
    </message>
    <message>
        <source>where it came from</source>
        <translation>provenance</translation>
    </message>
    <message>
        <source>here since</source>
        <translation>ici depuis</translation>
    </message>
    <message>
        <source>what became of it</source>
        <translation>ce qu’elle est devenue</translation>
    </message>
    <message>
        <source>united into</source>
        <translation>réunie à</translation>
    </message>
    <message>
        <source>cause</source>
        <translation>cause</translation>
    </message>
    <message>
        <source>number of bees</source>
        <translation>nombre d’abeilles</translation>
    </message>
    <message>
        <source>%{combs} covered with bees</source>
        <translation>cadres occupés</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>ruelles d’abeilles</translation>
    </message>
    <message>
        <source>how unsure the count is</source>
        <translation>incertitude du comptage</translation>
    </message>
    <message>
        <source>brood cells</source>
        <translation>cellules de couvain</translation>
    </message>
    <message>
        <source>queen seen</source>
        <translation>reine vue</translation>
    </message>
    <message>
        <source>eggs seen</source>
        <translation>œufs vus</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>signes de maladie</translation>
    </message>
    <message>
        <source>mites counted</source>
        <translation>varroas comptés</translation>
    </message>
    <message>
        <source>mites on 100 bees</source>
        <translation>varroas pour 100 abeilles</translation>
    </message>
    <message>
        <source>mites treated</source>
        <translation>traitement contre varroa fait</translation>
    </message>
    <message>
        <source>food beside the bees</source>
        <translation>nourriture à côté des abeilles</translation>
    </message>
    <message>
        <source>kind of honey</source>
        <translation>sorte de miel</translation>
    </message>
    <message>
        <source>fed or treated while this honey was made</source>
        <translation>nourrie ou traitée pendant que ce miel se faisait</translation>
    </message>
    <message>
        <source>how the %{combs} were looked at</source>
        <translation>manière d’examiner les cadres</translation>
    </message>
    <message>
        <source>%{combs} full of stores</source>
        <translation>cadres pleins de provisions</translation>
    </message>
    <message>
        <source>%{combs} half full</source>
        <translation>cadres à moitié pleins</translation>
    </message>
    <message>
        <source>share of it capped</source>
        <translation>part operculée</translation>
    </message>
    <message>
        <source>sealed brood seen</source>
        <translation>couvain operculé vu</translation>
    </message>
    <message>
        <source>pollen coming in</source>
        <translation>rentrées de pollen</translation>
    </message>
    <message>
        <source>temper</source>
        <translation>comportement</translation>
    </message>
    <message>
        <source>water in the honey, per cent</source>
        <translation>eau dans le miel, pour cent</translation>
    </message>
    <message>
        <source>signs of trouble</source>
        <translation>signes de maladie</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>poids</translation>
    </message>
    <message>
        <source>weight of one side</source>
        <translation>poids d’un côté</translation>
    </message>
    <message>
        <source>weight of the other side</source>
        <translation>poids de l’autre côté</translation>
    </message>
    <message>
        <source>heft</source>
        <translation>soupesée</translation>
    </message>
    <message>
        <source>said to be right, however unlikely</source>
        <translation>confirmé, même si c’est peu vraisemblable</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>type</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>sucre</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>sugar to water</source>
        <translation>sucre et eau</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>after the look of that day</source>
        <translation>après la visite de ce jour</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miel</translation>
    </message>
    <message>
        <source>%{combs}</source>
        <translation>cadres</translation>
    </message>
    <message>
        <source>until</source>
        <translation>jusqu’au</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>to the colony</source>
        <translation>à la colonie</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>conseil</translation>
    </message>
    <message>
        <source>what it was computed from</source>
        <translation>données du calcul</translation>
    </message>
    <message>
        <source>the whole answer</source>
        <translation>la réponse entière</translation>
    </message>
    <message>
        <source>seed</source>
        <translation>graine du tirage</translation>
    </message>
    <message>
        <source>past winters are learned from</source>
        <translation>les hivers passés corrigent la prévision</translation>
    </message>
    <message>
        <source>learned from since</source>
        <translation>correction par les hivers depuis</translation>
    </message>
    <message>
        <source>wet hive</source>
        <translation>ruche mouillée</translation>
    </message>
    <message>
        <source>change of weight</source>
        <translation>variation de poids</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vu</translation>
    </message>
    <message>
        <source>stores in sight</source>
        <translation>provisions en vue</translation>
    </message>
    <message>
        <source>first %{comb} of the cluster</source>
        <translation>premier cadre de la grappe</translation>
    </message>
    <message>
        <source>mean temperature</source>
        <translation>température moyenne</translation>
    </message>
    <message>
        <source>simulated winters</source>
        <translation>hivers simulés</translation>
    </message>
    <message>
        <source>version of the program</source>
        <translation>version du programme</translation>
    </message>
    <message>
        <source>state</source>
        <translation>état</translation>
    </message>
    <message>
        <source>done on</source>
        <translation>fait le</translation>
    </message>
    <message>
        <source>from the advice</source>
        <translation>tiré du conseil</translation>
    </message>
    <message>
        <source>alive in spring</source>
        <translation>vivante au printemps</translation>
    </message>
    <message>
        <source>stores left</source>
        <translation>provisions restantes</translation>
    </message>
    <message>
        <source>food within reach of the dead bees</source>
        <translation>nourriture à portée des abeilles mortes</translation>
    </message>
    <message>
        <source>bees head down in the cells</source>
        <translation>abeilles la tête dans les cellules</translation>
    </message>
    <message>
        <source>many mites on the floor</source>
        <translation>beaucoup de varroas sur le plancher</translation>
    </message>
    <message>
        <source>brood in the dead hive</source>
        <translation>couvain dans la ruche morte</translation>
    </message>
    <message>
        <source>queen found</source>
        <translation>reine retrouvée</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>operculé</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>nectar non operculé</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>couvain</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pain d’abeilles</translation>
    </message>
    <message>
        <source>hive format</source>
        <translation>modèle de ruche</translation>
    </message>
    <message>
        <source>bar width, mm</source>
        <translation>largeur de barrette, mm</translation>
    </message>
    <message>
        <source>built</source>
        <translation>bâti</translation>
    </message>
    <message>
        <source>faces seen</source>
        <translation>faces vues</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>vu par une fenêtre</translation>
    </message>
    <message>
        <source>measured on a photograph</source>
        <translation>mesuré sur une photo</translation>
    </message>
    <message>
        <source>in a super</source>
        <translation>dans une hausse</translation>
    </message>
    <message>
        <source>took syrup</source>
        <translation>a pris du sirop</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>vieux nid</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation>photo</translation>
    </message>
    <message>
        <source>comb width, mm</source>
        <translation>largeur du rayon, mm</translation>
    </message>
    <message>
        <source>comb height, mm</source>
        <translation>hauteur du rayon, mm</translation>
    </message>
    <message>
        <source>comb width at the bottom, mm</source>
        <translation>largeur du rayon en bas, mm</translation>
    </message>
    <message>
        <source>%{combs} in a box</source>
        <translation>cadres par élément</translation>
    </message>
    <message>
        <source>a super</source>
        <translation>une hausse</translation>
    </message>
    <message>
        <source>put on</source>
        <translation>posé</translation>
    </message>
    <message>
        <source>number of boxes</source>
        <translation>nombre d’éléments</translation>
    </message>
    <message>
        <source>number of %{combs}</source>
        <translation>nombre de cadres</translation>
    </message>
    <message>
        <source>number of days</source>
        <translation>nombre de jours</translation>
    </message>
    <message>
        <source>number of photographs</source>
        <translation>nombre de photos</translation>
    </message>
    <message>
        <source>%{comb} %1: %2</source>
        <translation>cadre %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>box %1: %2</source>
        <translation>élément %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>day %1: %2</source>
        <translation>jour %1&#xa0;: %2</translation>
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
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
</context>
<context>
    <name>FollowSections</name>
    <message>
        <source>Dates that matter</source>
        <translation>Les dates qui comptent</translation>
    </message>
    <message>
        <source>To feed</source>
        <translation>À donner</translation>
    </message>
    <message>
        <source>What was found points to</source>
        <translation>Ce que les constats indiquent</translation>
    </message>
    <message>
        <source>Look, and write it down with how the winter went</source>
        <translation>À regarder, et à noter avec l’issue de l’hiver</translation>
    </message>
    <message>
        <source>The safe way</source>
        <translation>Comment faire sans risque</translation>
    </message>
    <message>
        <source>In spring</source>
        <translation>Au printemps</translation>
    </message>
    <message>
        <source>Seen since the decision</source>
        <translation>Constaté depuis la décision</translation>
    </message>
    <message>
        <source>It falls below %1 from %2 on in a tenth of these winters, by %3 in half.</source>
        <translation>Les provisions descendent sous %1 à partir du %2 dans un dixième de ces hivers, d’ici au %3 dans la moitié.</translation>
    </message>
    <message>
        <source>It falls below %1 from %2 on in a tenth of these winters.</source>
        <translation>Les provisions descendent sous %1 à partir du %2 dans un dixième de ces hivers.</translation>
    </message>
    <message>
        <source>Nothing is left from %1 in a tenth, by %2 in half.</source>
        <translation>Il ne reste rien à partir du %1 dans un dixième, d’ici au %2 dans la moitié.</translation>
    </message>
    <message>
        <source>Nothing is left from %1 in a tenth.</source>
        <translation>Il ne reste rien à partir du %1 dans un dixième.</translation>
    </message>
    <message>
        <source>Spring forage starts around %1 (%2 to %3); about %4 left by then.</source>
        <translation>Les miellées de printemps commencent vers le %1 (du %2 au %3)&#x202f;; il reste alors environ %4.</translation>
    </message>
    <message>
        <source>%1: %2 of fondant touching the cluster</source>
        <translation>%1&#xa0;: %2 de candi, au contact de la grappe</translation>
    </message>
    <message>
        <source>It is wanted by %1.</source>
        <translation>Il en faut d’ici au %1.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1&#xa0;: %2 %3</translation>
    </message>
    <message>
        <source>Spring forage should carry it from about %1 (%2 to %3).</source>
        <translation>Les miellées de printemps devraient la nourrir à partir du %1 environ (du %2 au %3).</translation>
    </message>
    <message>
        <source>Leave %1 for a cold spell until forage is steady.</source>
        <translation>Laissez %1 pour un coup de froid, tant que les miellées ne sont pas régulières.</translation>
    </message>
    <message>
        <source>Nothing is to come out.</source>
        <translation>Il n’y a rien à retirer.</translation>
    </message>
    <message>
        <source>Above that %1 or more are left in 9 winters of 10, and may come out.</source>
        <translation>Au-delà, il reste %1 ou plus dans 9 hivers sur 10&#xa0;: vous pouvez les retirer.</translation>
    </message>
    <message>
        <source>Take out about %1 of full %{combs}, so that the queen finds cells to lay in.</source>
        <translation>Retirez environ %1 en cadres pleins, pour que la reine trouve des cellules où pondre.</translation>
    </message>
    <message>
        <source>None of it is honey to eat: the hive was treated meanwhile.</source>
        <translation>Rien de tout cela n’est du miel à manger&#xa0;: la ruche a été traitée entre-temps.</translation>
    </message>
    <message>
        <source>%{Combs} that may be taken: %1 (they took no syrup and were not in a treated hive).</source>
        <translation>Cadres qui peuvent être récoltés&#xa0;: %1 (ils n’ont pas pris de sirop et n’étaient pas dans une ruche traitée).</translation>
    </message>
    <message>
        <source>No %{comb} is known to be honey that may be taken: %{combs} that took syrup are for the bees.</source>
        <translation>On ne connaît aucun cadre dont le miel puisse être récolté&#xa0;: les cadres qui ont pris du sirop sont pour les abeilles.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3, where %4 was expected: it contradicts every winter.</source>
        <translation>%1&#xa0;: %2, %3, alors que %4 était attendu&#xa0;: cela contredit tous les hivers.</translation>
    </message>
    <message>
        <source>%1: %2, %3, where %4 was expected.</source>
        <translation>%1&#xa0;: %2, %3, alors que %4 était attendu.</translation>
    </message>
</context>
<context>
    <name>Following</name>
    <message>
        <source>feed %1 of sugar as syrup</source>
        <translation>donnez %1 de sucre en sirop</translation>
    </message>
    <message>
        <source>lay %1 of fondant on the bees</source>
        <translation>posez %1 de candi sur les abeilles</translation>
    </message>
    <message>
        <source> Today %1.</source>
        <translation> Aujourd’hui, %1.</translation>
    </message>
    <message>
        <source> On %2 %1.</source>
        <translation> Le %2, %1.</translation>
    </message>
    <message>
        <source> Check the scale.</source>
        <translation> Vérifiez la balance.</translation>
    </message>
    <message>
        <source>Eating faster than planned: likely below %1 by %2.</source>
        <translation>La colonie consomme plus que prévu&#xa0;: les provisions descendront sans doute sous %1 d’ici au %2.</translation>
    </message>
    <message>
        <source>Eating faster than planned: perhaps below %1 from %2 on.</source>
        <translation>La colonie consomme plus que prévu&#xa0;: les provisions pourraient descendre sous %1 à partir du %2.</translation>
    </message>
    <message>
        <source>Eating faster than planned, but it should last.</source>
        <translation>La colonie consomme plus que prévu, mais cela devrait suffire.</translation>
    </message>
    <message>
        <source>Act now: food for less than three weeks is left.</source>
        <translation>Agissez maintenant&#xa0;: il reste de la nourriture pour moins de trois semaines.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %1: %2 today, then weigh both sides.</source>
        <comment>day, feed</comment>
        <translation>Soupesée le %1, la ruche était légère&#xa0;: %2 aujourd’hui, puis pesez des deux côtés.</translation>
    </message>
    <message>
        <source>Act now: the stores have most likely run out. See today from outside whether it lives; if so %1 at once.</source>
        <translation>Agissez maintenant&#xa0;: les provisions sont très probablement épuisées. Voyez aujourd’hui, de l’extérieur, si la colonie vit&#x202f;; si oui, %1 aussitôt.</translation>
    </message>
    <message>
        <source>Act now: %1 today, then weigh again.</source>
        <translation>Agissez maintenant&#xa0;: %1 aujourd’hui, puis repesez.</translation>
    </message>
    <message>
        <source>The food is out of the cluster&apos;s reach.</source>
        <translation>La grappe est coupée de ses provisions.</translation>
    </message>
    <message>
        <source>Not enough to reach spring forage without feeding: %1 winters fall below %2.</source>
        <translation>Sans nourrissement, cela ne suffit pas jusqu’aux miellées de printemps&#xa0;: %1, les provisions descendent sous %2.</translation>
    </message>
    <message>
        <source>It may not be enough to reach spring forage without feeding: %1 winters fall below %2.</source>
        <translation>Sans nourrissement, cela pourrait ne pas suffire jusqu’aux miellées de printemps&#xa0;: %1, les provisions descendent sous %2.</translation>
    </message>
    <message>
        <source> Nothing is fed today.</source>
        <translation> Rien n’est à donner aujourd’hui.</translation>
    </message>
    <message>
        <source> Nothing is fed today; weigh it by %1.</source>
        <translation> Rien n’est à donner aujourd’hui&#x202f;; pesez la ruche d’ici au %1.</translation>
    </message>
    <message>
        <source>Was the feed planned from %1 on given? Write it down; until then it is not counted.</source>
        <comment>day</comment>
        <translation>Le nourrissement prévu à partir du %1 a-t-il été donné&#x202f;? Notez-le&#xa0;; d’ici là, il n’est pas compté.</translation>
    </message>
    <message>
        <source>Without it there is enough as well.</source>
        <translation>Sans lui, il y a assez aussi.</translation>
    </message>
    <message>
        <source>The colony is dead.</source>
        <translation>La colonie est morte.</translation>
    </message>
    <message>
        <source>It is heavier than can be explained: check the scale, and what was added, then weigh it again.</source>
        <translation>La ruche est plus lourde que tout ce qui peut s’expliquer&#xa0;: vérifiez la balance et ce qui a été ajouté, puis repesez.</translation>
    </message>
    <message>
        <source>It cannot be said: what was seen contradicts every winter.</source>
        <translation>Impossible à dire&#xa0;: ce qui a été vu contredit tous les hivers.</translation>
    </message>
    <message>
        <source>Dwindling: far fewer bees than a winter leaves. On a day of %1 put them together in a small space between two full %{combs}.</source>
        <translation>Dépeuplement&#xa0;: bien moins d’abeilles qu’un hiver n’en laisse. Un jour à %1, rassemblez-les à l’étroit entre deux cadres pleins.</translation>
    </message>
    <message>
        <source>Less was in the hive than was thought.</source>
        <translation>Il y avait moins dans la ruche qu’on ne le pensait.</translation>
    </message>
    <message>
        <source>More is there than is needed: nothing to do before spring.</source>
        <translation>Il y a plus de provisions qu’il n’en faut&#xa0;: rien à faire avant le printemps.</translation>
    </message>
    <message>
        <source>More is there than is needed: feed nothing, and once forage has begun make room for the queen to lay.</source>
        <translation>Il y a plus que nécessaire&#xa0;: ne nourrissez pas, et une fois les rentrées commencées, faites de la place à la reine pour pondre.</translation>
    </message>
    <message>
        <source>More is there than is needed: feed nothing.</source>
        <translation>Il y a plus que nécessaire&#xa0;: ne nourrissez pas.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %1: weigh it again before anything is fed.</source>
        <translation>Soupesée le %1, la ruche était légère&#xa0;: pesez-la avant de donner quoi que ce soit.</translation>
    </message>
    <message>
        <source>On course.</source>
        <translation>Tout va comme prévu.</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>morte</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>impossible à dire</translation>
    </message>
    <message>
        <source>food out of reach</source>
        <translation>coupée de ses provisions</translation>
    </message>
    <message>
        <source>act now</source>
        <translation>agir maintenant</translation>
    </message>
    <message>
        <source>dwindling</source>
        <translation>dépeuplement</translation>
    </message>
    <message>
        <source>less than thought</source>
        <translation>moins qu’on ne pensait</translation>
    </message>
    <message>
        <source>feed not written down</source>
        <translation>nourrissement non noté</translation>
    </message>
    <message>
        <source>eating faster</source>
        <translation>consomme plus que prévu</translation>
    </message>
    <message>
        <source>more than needed</source>
        <translation>plus qu’il n’en faut</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>comme prévu</translation>
    </message>
    <message>
        <source>About %1 left today, where the autumn expected %2. If nothing is done, %4 winters that fit what was seen fall below %3 and %5 run out (as forecast in autumn: %6 and %7).</source>
        <translation>Il reste environ %1 aujourd’hui&#x202f;; l’automne en attendait %2. Si rien n’est fait, parmi les hivers qui concordent avec ce qui a été vu, les provisions descendent %4 sous %3 et s’épuisent %5 (prévision d’automne&#xa0;: %6 et %7).</translation>
    </message>
    <message>
        <source>Look through what was written down of this winter: something was harvested, fed or weighed on another day or in another amount.</source>
        <translation>Relisez ce qui a été noté de cet hiver&#xa0;: quelque chose a été récolté, donné ou pesé un autre jour ou en une autre quantité.</translation>
    </message>
    <message>
        <source>Weigh it again, and look for a feed that was not written down or ticked off, and for a lid, a box or a stone that was on or off.</source>
        <translation>Repesez, et cherchez un nourrissement qui n’a pas été noté ou coché, ou bien un toit, un élément ou une pierre posés ou enlevés.</translation>
    </message>
    <message>
        <source>Weigh on %1, before more is fed.</source>
        <translation>Pesez le %1, avant de redonner de la nourriture.</translation>
    </message>
    <message>
        <source>Weigh again by %1: in %2 of 100 cases that would change what to do.</source>
        <translation>Repesez d’ici au %1&#xa0;: dans %2 cas sur 100, cela changerait ce qu’il faut faire.</translation>
    </message>
    <message>
        <source>No further weighing before forage (around %1) would change what to do.</source>
        <translation>Aucune autre pesée avant les miellées (vers le %1) ne changerait ce qu’il faut faire.</translation>
    </message>
    <message>
        <source>Was food left within reach of the bees?</source>
        <translation>Restait-il de la nourriture à portée des abeilles&#x202f;?</translation>
    </message>
    <message>
        <source>Were dead bees head down in the cells?</source>
        <translation>Y avait-il des abeilles mortes la tête dans les cellules&#x202f;?</translation>
    </message>
    <message>
        <source>Were there many mites on the floor?</source>
        <translation>Y avait-il beaucoup de varroas sur le plancher&#x202f;?</translation>
    </message>
    <message>
        <source>Was there brood, and was it solid or patchy?</source>
        <translation>Y avait-il du couvain, et était-il compact ou en mosaïque&#x202f;?</translation>
    </message>
    <message>
        <source>Was the queen found?</source>
        <translation>La reine a-t-elle été retrouvée&#x202f;?</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>balance</translation>
    </message>
    <message>
        <source>lifted on two sides</source>
        <translation>pesée des deux côtés</translation>
    </message>
    <message>
        <source>lifted on one side</source>
        <translation>pesée d’un seul côté</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>soupesée</translation>
    </message>
    <message>
        <source>%{combs} looked at</source>
        <translation>cadres examinés</translation>
    </message>
    <message>
        <source>bees counted</source>
        <translation>abeilles comptées</translation>
    </message>
    <message>
        <source>cluster seen</source>
        <translation>grappe vue</translation>
    </message>
    <message>
        <source>bees flying</source>
        <translation>abeilles en vol</translation>
    </message>
    <message>
        <source>%{comb} glimpsed</source>
        <translation>cadre entrevu</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>hefts</comment>
        <translation>%1 (de %2 à %3)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>masses</comment>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>nothing to %1</source>
        <translation>entre rien et %1</translation>
    </message>
    <message>
        <source>Syrup, %1, in the evening</source>
        <translation>Sirop, %1, le soir</translation>
    </message>
    <message>
        <source>Syrup, in the evening</source>
        <translation>Sirop, le soir</translation>
    </message>
    <message>
        <source>Fondant, %1</source>
        <translation>Candi, %1</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Candi</translation>
    </message>
    <message>
        <source>unite it with a healthy colony, today at the latest, in the evening</source>
        <translation>la réunir à une colonie saine, aujourd’hui au plus tard, le soir</translation>
    </message>
    <message>
        <source>unite it with %1, today at the latest, in the evening</source>
        <translation>la réunir à la colonie %1, aujourd’hui au plus tard, le soir</translation>
    </message>
    <message>
        <source>another colony of the yard</source>
        <translation>une autre colonie du rucher</translation>
    </message>
    <message>
        <source>hang in one full %{comb} from %1 (%2)</source>
        <translation>ajouter un cadre plein pris à %1 (%2)</translation>
    </message>
    <message>
        <source>hang in %1 full %{combs} from %2 (%3)</source>
        <translation>ajouter %1 cadres pleins pris à %2 (%3)</translation>
    </message>
    <message>
        <source>Check the feeding</source>
        <translation>Contrôler le nourrissement</translation>
    </message>
    <message>
        <source>take %1 of honey off by today</source>
        <translation>récolter %1 de miel, aujourd’hui au plus tard</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>repeser</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>compter les varroas et revoir les provisions</translation>
    </message>
    <message>
        <source>call the bee inspector, move nothing</source>
        <translation>appeler le technicien sanitaire apicole, ne rien déplacer</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>compter les cadres occupés</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>examiner les provisions, ou peser</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>ajouter un cadre avec des œufs pris à une autre colonie</translation>
    </message>
    <message>
        <source>look for queen cells on the %{comb} with eggs</source>
        <translation>chercher des cellules royales sur le cadre avec des œufs</translation>
    </message>
    <message>
        <source>take %1 of honey off, at the latest</source>
        <translation>récolter %1 de miel, au plus tard</translation>
    </message>
    <message>
        <source>%1 (%2 of sugar)</source>
        <comment>syrup</comment>
        <translation>%1 (%2 de sucre)</translation>
    </message>
    <message>
        <source>unite it with a healthy colony, at the latest, in the evening</source>
        <translation>la réunir à une colonie saine, au plus tard, le soir</translation>
    </message>
    <message>
        <source>unite it with %1, at the latest, in the evening</source>
        <translation>la réunir à la colonie %1, au plus tard, le soir</translation>
    </message>
    <message>
        <source>%{Combs} side by side behind a sheet of newspaper, the bees misted with water.</source>
        <translation>Cadres côte à côte, séparés par une feuille de papier journal, abeilles aspergées d’eau.</translation>
    </message>
    <message>
        <source>Newspaper between.</source>
        <translation>Papier journal entre les deux.</translation>
    </message>
    <message>
        <source>%1 Only once it is certain that it has no queen, on a warm evening.</source>
        <comment>how to unite</comment>
        <translation>%1 Seulement quand il est certain qu’elle est orpheline, par une soirée douce.</translation>
    </message>
    <message>
        <source>%1 The better queen stays. Earlier is better, on a warm evening.</source>
        <comment>how to unite</comment>
        <translation>%1 La meilleure reine est gardée. Le plus tôt est le mieux, par une soirée douce.</translation>
    </message>
    <message>
        <source>%1 of sugar. Inside the hive, all colonies of the yard the same evening.</source>
        <translation>%1 de sucre. Dans la ruche, toutes les colonies du rucher le même soir.</translation>
    </message>
    <message>
        <source>Inside the hive, all colonies of the yard the same evening.</source>
        <translation>Dans la ruche, toutes les colonies du rucher le même soir.</translation>
    </message>
    <message>
        <source>So that it touches the bees, at once. Weigh both sides afterwards.</source>
        <translation>Au contact des abeilles, tout de suite. Pesez ensuite des deux côtés.</translation>
    </message>
    <message>
        <source>Weigh both sides from outside first. Lay it so that it touches the bees.</source>
        <translation>Pesez d’abord des deux côtés, de l’extérieur. Posez-le au contact des abeilles.</translation>
    </message>
    <message>
        <source>Taken and sealed? Weigh; feeder off, mouse guard on.</source>
        <translation>Pris et operculé&#x202f;? Pesez&#x202f;; nourrisseur enlevé, grille anti-rongeurs posée.</translation>
    </message>
    <message>
        <source>Before feeding and treating.</source>
        <translation>Avant de nourrir et de traiter.</translation>
    </message>
    <message>
        <source>Both sides, without opening. Write it down and ask again.</source>
        <translation>Des deux côtés, sans ouvrir. Notez le poids et interrogez de nouveau le programme.</translation>
    </message>
    <message>
        <source>There are signs of disease.</source>
        <translation>Il y a des signes de maladie.</translation>
    </message>
    <message>
        <source>Until then nothing can be said of this colony&apos;s winter.</source>
        <translation>Jusque-là, on ne peut rien dire de l’hiver de cette colonie.</translation>
    </message>
    <message>
        <source>Before anything is fed.</source>
        <translation>Avant tout nourrissement.</translation>
    </message>
    <message>
        <source>From a healthy colony. It shows whether there is a queen.</source>
        <translation>Pris à une colonie saine. On verra s’il y a une reine.</translation>
    </message>
    <message>
        <source>Queen cells mean that the queen is gone: unite it. None mean that there is one: look for eggs, and ask again.</source>
        <translation>S’il y a des cellules royales, la reine a disparu&#xa0;: réunissez la colonie. S’il n’y en a pas, il y a une reine&#xa0;: cherchez des œufs et interrogez de nouveau le programme.</translation>
    </message>
    <message>
        <source>It was planned for %1 and is not ticked off. If it was given, write it down.</source>
        <translation>C’était prévu pour le %1 et n’est pas coché. Si cela a été donné, notez-le.</translation>
    </message>
    <message>
        <source>%1: the records of its winter fit none, so it is not known when to weigh or feed</source>
        <translation>%1&#xa0;: les notes de son hiver ne concordent avec aucun hiver&#x202f;; on ne sait donc pas quand peser ni quand nourrir</translation>
    </message>
    <message>
        <source>Bees</source>
        <comment>name of the calendar that is written out</comment>
        <translation>Abeilles</translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>Stores</source>
        <translation>Provisions</translation>
    </message>
    <message>
        <source>stores</source>
        <translation>provisions</translation>
    </message>
    <message>
        <source>What the bees can live on in the hive: capped honey, and open nectar or syrup as far as it will ripen. Bee bread is not counted.</source>
        <translation>Ce dont les abeilles peuvent vivre dans la ruche&#xa0;: le miel operculé, et le nectar ou le sirop non operculé dans la mesure où il mûrira. Le pain d’abeilles n’est pas compté.</translation>
    </message>
    <message>
        <source>need</source>
        <translation>besoin</translation>
    </message>
    <message>
        <source>The stores that must be in the hive today so that as few winters go short as you accept. It reaches to the day spring forage starts and holds the reserve.</source>
        <translation>Les provisions qui doivent être dans la ruche aujourd’hui pour qu’il n’y ait pas plus d’hivers trop courts que vous ne l’acceptez. Il va jusqu’au début des miellées de printemps et comprend la marge de sécurité.</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>marge de sécurité</translation>
    </message>
    <message>
        <source>Stores that should still be there on the worst day, for what nobody foresees. You set it on the page Place.</source>
        <translation>Les provisions qui devraient rester encore le jour le plus difficile, pour ce que personne ne prévoit. Vous la réglez à la page Lieu.</translation>
    </message>
    <message>
        <source>falls below the reserve</source>
        <translation>descend sous la marge de sécurité</translation>
    </message>
    <message>
        <source>Less than the reserve is left on some day before spring forage starts. The bees are not starving yet, but little is left.</source>
        <translation>Un jour au moins, avant le début des miellées de printemps, il reste moins que la marge de sécurité. Les abeilles n’ont pas encore faim, mais il reste peu.</translation>
    </message>
    <message>
        <source>runs out</source>
        <translation>s’épuise</translation>
    </message>
    <message>
        <source>No stores are left on some day before spring forage starts. Without help the colony starves.</source>
        <translation>Un jour au moins, avant le début des miellées de printemps, il ne reste aucune provision. Sans aide, la colonie meurt de faim.</translation>
    </message>
    <message>
        <source>accepted risk</source>
        <translation>risque accepté</translation>
    </message>
    <message>
        <source>How many winters of a hundred may fall below the reserve before the program advises you to feed or to leave honey. You set it on the page Place.</source>
        <translation>Le nombre d’hivers sur cent où les provisions peuvent descendre sous la marge de sécurité avant que le programme vous conseille de nourrir ou de laisser du miel. Vous le réglez à la page Lieu.</translation>
    </message>
    <message>
        <source>empty weight</source>
        <translation>poids à vide</translation>
    </message>
    <message>
        <source>The weight of the hive without bees, brood and stores: boxes, frames, floor and roof. Known, it makes every weighing tell more.</source>
        <translation>Le poids de la ruche sans abeilles, ni couvain, ni provisions&#xa0;: éléments, cadres, plancher et toit. Quand on le connaît, chaque pesée en dit davantage.</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>soupesée</translation>
    </message>
    <message>
        <source>Lifted a little by hand, to feel whether the hive is light, fair or heavy. Rougher than a scale, but quick.</source>
        <translation>Un peu soulevée à la main, pour sentir si la ruche est légère, moyenne ou lourde. Plus grossier qu’une balance, mais rapide.</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>pesée des deux côtés</translation>
    </message>
    <message>
        <source>A hanging scale lifts the hive at one side and then at the other; the two readings added are about its weight.</source>
        <translation>Un peson soulève la ruche d’un côté, puis de l’autre&#x202f;; la somme des deux relevés est à peu près son poids.</translation>
    </message>
    <message>
        <source>%{Combs} and bees</source>
        <translation>Cadres et abeilles</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>operculé</translation>
    </message>
    <message>
        <source>Sealed with wax: ripe honey that keeps. The share of it capped says how much of the stores on a %{comb} is sealed.</source>
        <translation>Fermé par de la cire&#xa0;: un miel mûr, qui se conserve. La part operculée dit quelle partie des provisions d’un cadre est fermée.</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>nectar non operculé</translation>
    </message>
    <message>
        <source>Cells with nectar or syrup not sealed yet. Much of it is water, so it counts for less, and late in the year it may never be capped.</source>
        <translation>Cellules de nectar ou de sirop qui ne sont pas encore fermées. C’est en bonne partie de l’eau&#xa0;: il compte donc moins et, tard dans l’année, il peut n’être jamais operculé.</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pain d’abeilles</translation>
    </message>
    <message>
        <source>Pollen the bees have stored in cells. It feeds the brood and does not count as stores.</source>
        <translation>Pollen que les abeilles ont emmagasiné dans les cellules. Il nourrit le couvain et ne compte pas comme provisions.</translation>
    </message>
    <message>
        <source>built</source>
        <translation>bâti</translation>
    </message>
    <message>
        <source>How much of the space in the frame, or under the bar, the bees have filled with comb.</source>
        <translation>La part de la place, dans le cadre ou sous la barrette, que les abeilles ont remplie de rayon.</translation>
    </message>
    <message>
        <source>face</source>
        <translation>face</translation>
    </message>
    <message>
        <source>One side of a %{comb}.</source>
        <translation>Un côté d’un cadre.</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>vieux nid</translation>
    </message>
    <message>
        <source>Dark comb in which brood was raised for years. Honey in it is left to the bees.</source>
        <translation>Rayon noir où du couvain a été élevé pendant des années. Le miel qui s’y trouve est laissé aux abeilles.</translation>
    </message>
    <message>
        <source>spacing, or bar width</source>
        <translation>entraxe, ou largeur de barrette</translation>
    </message>
    <message>
        <source>From the middle of one %{comb} to the middle of the next. The wider it is, the thicker the comb and the more honey it holds.</source>
        <translation>Du milieu d’un cadre au milieu du suivant. Plus il est grand, plus le rayon est épais et plus il contient de miel.</translation>
    </message>
    <message>
        <source>super</source>
        <translation>hausse</translation>
    </message>
    <message>
        <source>A box above the brood for honey.</source>
        <translation>Un élément placé au-dessus du couvain, pour le miel.</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>ruelles d’abeilles</translation>
    </message>
    <message>
        <source>Gaps between %{combs} that are filled with bees, counted from above. Half a gap counts as a half.</source>
        <translation>Espaces entre les cadres remplis d’abeilles, comptés d’en haut. Une ruelle à moitié remplie compte pour une demie.</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>cadres occupés</translation>
    </message>
    <message>
        <source>%{Combs} covered by bees on both sides. One side covered counts as a half.</source>
        <translation>Cadres couverts d’abeilles des deux côtés. Un seul côté couvert compte pour un demi.</translation>
    </message>
    <message>
        <source>cluster</source>
        <translation>grappe</translation>
    </message>
    <message>
        <source>The ball in which bees keep each other warm in the cold. It can only eat what it touches.</source>
        <translation>La boule où les abeilles se tiennent chaud par temps froid. Elle ne peut manger que ce qu’elle touche.</translation>
    </message>
    <message>
        <source>Kept small on purpose</source>
        <translation>Gardée petite volontairement</translation>
    </message>
    <message>
        <source>A small colony that is meant to be small, such as one with a spare queen. It is not judged weak for it.</source>
        <translation>Une petite colonie qui doit rester petite, par exemple avec une reine de secours. Elle n’est pas tenue pour faible.</translation>
    </message>
    <message>
        <source>follower</source>
        <translation>partition</translation>
    </message>
    <message>
        <source>A board that hangs like a %{comb} and closes off the empty part of a hive.</source>
        <translation>Une planche qui pend comme un cadre et ferme la partie vide de la ruche.</translation>
    </message>
    <message>
        <source>robbers</source>
        <translation>pillardes</translation>
    </message>
    <message>
        <source>Bees of other colonies, or wasps, that carry stores away from a hive too weak to defend itself.</source>
        <translation>Abeilles d’autres colonies, ou guêpes, qui emportent les provisions d’une ruche trop faible pour se défendre.</translation>
    </message>
    <message>
        <source>cleansing flights</source>
        <translation>vols de propreté</translation>
    </message>
    <message>
        <source>Short flights on mild winter days; bees do not soil the hive.</source>
        <translation>Courts vols par les journées douces d’hiver&#x202f;; les abeilles ne salissent pas la ruche.</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>A stiff sugar dough. Bees can eat it in the cold, when syrup is no longer taken.</source>
        <translation>Une pâte de sucre ferme. Les abeilles peuvent la manger par temps froid, quand le sirop n’est plus pris.</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>La saison</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>fin des rentrées de nectar</translation>
    </message>
    <message>
        <source>The day after which bees here usually bring no more nectar home in autumn.</source>
        <translation>Le jour après lequel les abeilles d’ici ne rentrent d’habitude plus de nectar en automne.</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>fin conseillée du nourrissement</translation>
    </message>
    <message>
        <source>The day by which feeding should be over, so that there is time to ripen and seal the food.</source>
        <translation>Le jour où le nourrissement devrait être terminé, pour que la nourriture ait le temps de mûrir et d’être operculée.</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>dernier jour pour le sirop</translation>
    </message>
    <message>
        <source>The last day on which syrup can still be dried by the bees, as the air is here.</source>
        <translation>Le dernier jour où les abeilles peuvent encore sécher le sirop, avec l’air qu’il fait ici.</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>sirop qui n’est plus pris</translation>
    </message>
    <message>
        <source>From this day on it is usually too cold for bees to come down to a feeder.</source>
        <translation>À partir de ce jour, il fait d’habitude trop froid pour que les abeilles aillent au nourrisseur.</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>arrêt de la ponte</translation>
    </message>
    <message>
        <source>The day the queen usually ceases laying for the winter. Food lasts longest from now on.</source>
        <translation>Le jour où la reine cesse d’habitude de pondre pour l’hiver. C’est à partir de là que les provisions durent le plus longtemps.</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reprise de la ponte</translation>
    </message>
    <message>
        <source>The day she begins again, often in the middle of winter. Brood must be kept warm, so more is eaten.</source>
        <translation>Le jour où elle recommence, souvent au milieu de l’hiver. Le couvain doit être tenu au chaud&#xa0;: la consommation augmente.</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>développement printanier</translation>
    </message>
    <message>
        <source>The weeks in spring in which brood grows quickly. Most food is eaten in them, and most colonies that starve do so then.</source>
        <translation>Les semaines de printemps où le couvain augmente vite. C’est là que la consommation est la plus forte, et que meurent de faim la plupart des colonies qui en meurent.</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>début des miellées de printemps</translation>
    </message>
    <message>
        <source>The day from which nectar comes in reliably in spring. Up to it the stores must last.</source>
        <translation>Le jour à partir duquel le nectar rentre régulièrement au printemps. C’est jusque-là que les provisions doivent suffire.</translation>
    </message>
    <message>
        <source>dearth</source>
        <translation>disette</translation>
    </message>
    <message>
        <source>Weeks without nectar although it is warm enough to fly.</source>
        <translation>Des semaines sans nectar, bien qu’il fasse assez chaud pour voler.</translation>
    </message>
    <message>
        <source>autumn flow</source>
        <translation>miellée d’automne</translation>
    </message>
    <message>
        <source>Nectar that may still come in before winter, beyond the little that weeds and ivy bring every autumn, which is always counted.</source>
        <translation>Le nectar qui peut encore rentrer avant l’hiver, en plus du peu que les herbes folles et le lierre donnent chaque automne et qui est toujours compté.</translation>
    </message>
    <message>
        <source>give or take</source>
        <translation>à … près</translation>
    </message>
    <message>
        <source>About two years of three lie no further from the day given than this.</source>
        <translation>Environ deux années sur trois ne s’écartent pas davantage du jour indiqué.</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Probabilité</translation>
    </message>
    <message>
        <source>simulated winters</source>
        <translation>hivers simulés</translation>
    </message>
    <message>
        <source>The program lets the same colony live through hundreds or thousands of winters as they may happen here, some mild and some hard, with colonies that eat more or less. “17 of 100” means that it happened in 17 of every hundred of them.</source>
        <translation>Le programme fait vivre à la même colonie des centaines ou des milliers d’hivers possibles ici, doux ou rigoureux, avec des colonies qui consomment plus ou moins. «&#xa0;17 fois sur 100&#xa0;» veut dire que la chose est arrivée dans 17 de ces hivers sur cent.</translation>
    </message>
    <message>
        <source>Left alone</source>
        <translation>Laissée telle quelle</translation>
    </message>
    <message>
        <source>What happens if you do nothing at all from today on.</source>
        <translation>Ce qui arrive si vous ne faites plus rien à partir d’aujourd’hui.</translation>
    </message>
    <message>
        <source>in brackets</source>
        <translation>entre parenthèses</translation>
    </message>
    <message>
        <source>29.5 kg (24–34) means most probably near 29.5 kg; what is there, wanted, fed or taken is told to half a kilogram, or a pound. The figures in brackets are the spread: unless it is said otherwise, the truth lies between them in eight cases of ten.</source>
        <translation>29,5&#xa0;kg (24–34) veut dire très probablement aux environs de 29,5&#xa0;kg&#x202f;; ce qu’il y a, ce qu’il faut, ce qui est donné ou récolté est indiqué au demi-kilogramme ou à la livre près. Les chiffres entre parenthèses sont la fourchette&#xa0;: sauf indication contraire, la vérité est entre les deux huit fois sur dix.</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>fourchette</translation>
    </message>
    <message>
        <source>How far the truth may lie from a figure. A look at every %{comb} narrows it; a glance through a window leaves it wide.</source>
        <translation>De combien la vérité peut s’écarter d’un chiffre. L’examen de chaque cadre la resserre&#x202f;; un coup d’œil par une fenêtre la laisse large.</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>écart type</translation>
    </message>
    <message>
        <source>Standard deviation, a measure of spread. About two cases of three lie within one SD of the figure, nineteen of twenty within two.</source>
        <translation>Une mesure de la fourchette. Environ deux cas sur trois sont à moins d’un écart type du chiffre, dix-neuf sur vingt à moins de deux.</translation>
    </message>
    <message>
        <source>nine in ten</source>
        <translation>neuf fois sur dix</translation>
    </message>
    <message>
        <source>A band so wide that nine of ten cases lie in it.</source>
        <translation>Une bande assez large pour contenir neuf cas sur dix.</translation>
    </message>
    <message>
        <source>eighty of a hundred</source>
        <translation>quatre-vingts sur cent</translation>
    </message>
    <message>
        <source>A band so wide that eight of ten winters lie in it; one of ten lies above and one below.</source>
        <translation>Une bande assez large pour contenir huit hivers sur dix&#x202f;; un sur dix est au-dessus et un en dessous.</translation>
    </message>
    <message>
        <source>percentile</source>
        <translation>centile</translation>
    </message>
    <message>
        <source>One case of ten lies below the 10th percentile, nine of ten lie below the 90th.</source>
        <translation>Un cas sur dix est sous le 10e centile, neuf sur dix sont sous le 90e.</translation>
    </message>
    <message>
        <source>Another look</source>
        <translation>Nouvel examen</translation>
    </message>
    <message>
        <source>Whether opening the hive again could change the advice, and which look would tell most.</source>
        <translation>S’il peut changer le conseil de rouvrir la ruche, et quel examen en dirait le plus.</translation>
    </message>
    <message>
        <source>Following and looking back</source>
        <translation>Suivi et bilan</translation>
    </message>
    <message>
        <source>On course</source>
        <translation>Comme prévu</translation>
    </message>
    <message>
        <source>What has been weighed and seen since autumn agrees with the forecast, and the stores will last.</source>
        <translation>Ce qui a été pesé et vu depuis l’automne concorde avec la prévision, et les provisions suffiront.</translation>
    </message>
    <message>
        <source>glance</source>
        <translation>coup d’œil</translation>
    </message>
    <message>
        <source>What can be seen without taking the hive apart: flight, the cluster from above, stores through a window.</source>
        <translation>Ce qu’on peut voir sans démonter la ruche&#xa0;: le vol, la grappe vue d’en haut, les provisions par une fenêtre.</translation>
    </message>
    <message>
        <source>contradicts every simulated winter</source>
        <translation>contredit tous les hivers simulés</translation>
    </message>
    <message>
        <source>No winter that may happen here fits this reading. Most often something was weighed that is not bees or food, or something was done and not written down.</source>
        <translation>Aucun hiver possible ici ne concorde avec ce relevé. Le plus souvent, on a pesé autre chose que des abeilles et de la nourriture, ou fait quelque chose sans le noter.</translation>
    </message>
    <message>
        <source>mean score</source>
        <translation>écart moyen</translation>
    </message>
    <message>
        <source>How far forecasts of past winters were from what happened, on average, in the unit of the stores. Smaller is better. A forecast that was sure and wrong loses most.</source>
        <translation>De combien les prévisions des hivers passés se sont écartées de ce qui est arrivé, en moyenne, dans l’unité des provisions. Plus il est petit, mieux c’est. Une prévision sûre d’elle et fausse perd le plus.</translation>
    </message>
    <message>
        <source>handbook figure</source>
        <translation>chiffre des manuels</translation>
    </message>
    <message>
        <source>The stores that printed advice for your region gives for every colony alike. The program&apos;s forecasts are held against it.</source>
        <translation>Les provisions que les conseils imprimés de votre région donnent pour toutes les colonies indistinctement. Les prévisions du programme leur sont comparées.</translation>
    </message>
    <message>
        <source>learned</source>
        <translation>appris</translation>
    </message>
    <message>
        <source>What your own past winters told about how much these bees eat and how fast they die. It corrects the forecast where you want it to.</source>
        <translation>Ce que vos propres hivers passés ont dit de la consommation de ces abeilles et de leur mortalité. La prévision en est corrigée là où vous le voulez.</translation>
    </message>
</context>
<context>
    <name>Grounds</name>
    <message>
        <source>%2, %1: %3.</source>
        <translation>%2, %1&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%2, %1: %3; nothing else is known.</source>
        <translation>%2, %1&#xa0;: %3&#x202f;; rien d’autre n’est connu.</translation>
    </message>
    <message>
        <source>%2, %1: %3; counts for %4 of 100 parts.</source>
        <translation>%2, %1&#xa0;: %3&#x202f;; compte pour %4 parts sur 100.</translation>
    </message>
    <message>
        <source>Of a comb: the area of its capped and open cells times what a square decimetre of sealed comb holds; open nectar counts as %1 of that. Each comb&apos;s share stands on the page In the hive.</source>
        <translation>Pour un cadre&#xa0;: la surface de ses cellules operculées et non operculées, multipliée par ce que contient un décimètre carré de rayon operculé&#x202f;; le nectar non operculé compte pour %1 de cela. La part de chaque cadre est à la page Dans la ruche.</translation>
    </message>
    <message>
        <source>Of a weighing: the reading less the empty hive, taken as %1, and less its bees and bee bread.</source>
        <translation>Pour une pesée&#xa0;: le relevé moins la ruche vide, comptée pour %1, moins ses abeilles et son pain d’abeilles.</translation>
    </message>
    <message>
        <source>Each counts the more the more exact it is: by one over its variance.</source>
        <translation>Chaque indication compte d’autant plus qu’elle est exacte&#xa0;: selon l’inverse de sa variance.</translation>
    </message>
    <message>
        <source>Weighings share the error of the empty weight: all of them together are no surer than that.</source>
        <translation>Les pesées partagent l’erreur du poids à vide&#xa0;: toutes ensemble, elles ne sont pas plus sûres que lui.</translation>
    </message>
    <message>
        <source>Lifts of one side lean the same way each time, and so do lifts by hand: many are hardly surer than one.</source>
        <translation>La pesée d’un seul côté se trompe chaque fois dans le même sens, et le soupesage aussi&#xa0;: plusieurs ne sont guère plus sûrs qu’un seul.</translation>
    </message>
    <message>
        <source>Stores on %1: %2</source>
        <translation>Provisions au %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>From %1 until spring forage starts the bees eat %2 in %3 simulated winters.</source>
        <translation>Du %1 au début des miellées de printemps, les abeilles consomment %2 dans %3 hivers simulés.</translation>
    </message>
    <message>
        <source>From %1 until spring forage starts the bees eat %2 in %3 simulated winters: on average %4 the adult bees, %5 to warm brood, %6 to feed it.</source>
        <translation>Du %1 au début des miellées de printemps, les abeilles consomment %2 dans %3 hivers simulés&#xa0;: en moyenne %4 pour les abeilles adultes, %5 pour chauffer le couvain, %6 pour le nourrir.</translation>
    </message>
    <message>
        <source>Before spring forage starts, mostly in early spring, they bring in %1 on average.</source>
        <translation>Avant le début des miellées de printemps, surtout en tout début de printemps, elles rentrent %1 en moyenne.</translation>
    </message>
    <message>
        <source>Adult bees eat for the heat their cluster loses: the colder the more, and the less for each bee the larger the cluster, up to %1 of bees.</source>
        <translation>Les abeilles adultes mangent pour la chaleur que perd leur grappe&#xa0;: d’autant plus qu’il fait froid, et d’autant moins par abeille que la grappe est grosse, jusqu’à %1 d’abeilles.</translation>
    </message>
    <message>
        <source>A gram of honey holds %1 kilojoules.</source>
        <translation>Un gramme de miel contient %1 kilojoules.</translation>
    </message>
    <message>
        <source>Brood is kept at %1, and each worker reared takes %2 of honey.</source>
        <translation>Le couvain est tenu à %1, et chaque ouvrière élevée demande %2 de miel.</translation>
    </message>
    <message>
        <source>Bees that emerge beside little brood live through the winter, those that emerge beside much of it die within weeks: colonies shrink from August to November.</source>
        <translation>Les abeilles nées à côté de peu de couvain vivent tout l’hiver, celles nées à côté de beaucoup de couvain meurent en quelques semaines&#xa0;: les colonies diminuent d’août à novembre.</translation>
    </message>
    <message>
        <source>Weather, heat, brood and deaths of bees differ from winter to winter as they do in nature.</source>
        <translation>Le temps, la chaleur, le couvain et la mortalité des abeilles changent d’un hiver à l’autre, comme dans la nature.</translation>
    </message>
    <message>
        <source>With so much in the hive on %1 the stores fall below the reserve of %2 before spring forage starts in no more than %3 of 100 simulated winters. Reserve and risk are yours to set, in the yard&apos;s Place.</source>
        <translation>Avec cette quantité dans la ruche le %1, les provisions descendent sous la marge de sécurité de %2 avant le début des miellées de printemps dans %3 hivers simulés sur 100 au plus. La marge et le risque se règlent à la page Lieu du rucher.</translation>
    </message>
    <message>
        <source>They are about %1 bees.</source>
        <translation>La colonie compte environ %1 abeilles.</translation>
    </message>
    <message>
        <source>Needed on %1 to last until spring forage starts: %2</source>
        <translation>Besoin au %1 pour tenir jusqu’au début des miellées de printemps&#xa0;: %2</translation>
    </message>
    <message>
        <source>With so much in the hive on %1, the day winter begins for it, the stores fall below %2 before spring forage starts in no more than %3 of 100 simulated winters.</source>
        <translation>Avec cette quantité dans la ruche le %1, jour où son hiver commence, les provisions descendent sous %2 avant le début des miellées de printemps dans %3 hivers simulés sur 100 au plus.</translation>
    </message>
    <message>
        <source>Until then about %1 are eaten and %2 of nectar found, as stores.</source>
        <translation>D’ici là, environ %1 sont consommés et %2 de nectar rentrés, comptés en provisions.</translation>
    </message>
    <message>
        <source>With the empty hive, taken as %1, its bees, brood and bee bread it then weighs %2.</source>
        <translation>Avec la ruche vide, comptée pour %1, ses abeilles, son couvain et son pain d’abeilles, elle pèse alors %2.</translation>
    </message>
    <message>
        <source>Wanted on %1: %2 of stores</source>
        <translation>Objectif au %1&#xa0;: %2 de provisions</translation>
    </message>
    <message>
        <source>The day was given in the yard&apos;s Place and not derived from the climate.</source>
        <translation>Ce jour a été indiqué à la page Lieu du rucher et non déduit du climat.</translation>
    </message>
    <message>
        <source>The day the climate gives was moved just far enough to follow a date given in the yard&apos;s Place.</source>
        <translation>Le jour tiré du climat a été déplacé juste assez pour suivre une date indiquée à la page Lieu du rucher.</translation>
    </message>
    <message>
        <source>Spring forage starts: %1</source>
        <translation>Début des miellées de printemps&#xa0;: %1</translation>
    </message>
    <message>
        <source>A warm or a cold spring moves it: in every simulated winter spring forage starts on a day of its own.</source>
        <translation>Un printemps chaud ou froid le déplace&#xa0;: dans chaque hiver simulé, les miellées de printemps commencent un autre jour.</translation>
    </message>
    <message>
        <source>Spring forage starts: around %1 (%2 to %3 in 80 of 100 winters)</source>
        <translation>Début des miellées de printemps&#xa0;: vers le %1 (du %2 au %3 dans 80 hivers sur 100)</translation>
    </message>
    <message>
        <source>From the %{combs} or seams the bees cover, or the number given, carried to %1 by the model.</source>
        <translation>D’après les cadres ou les ruelles occupés, ou le nombre donné, ramené au %1 par le modèle.</translation>
    </message>
    <message>
        <source>Bees on %1: %2</source>
        <translation>Abeilles au %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>So wide is the range in which 80 of 100 likely values of what is missing or spare lie.</source>
        <translation>C’est la largeur de l’intervalle où se trouvent 80 sur 100 des valeurs probables de ce qui manque ou dépasse.</translation>
    </message>
    <message>
        <source>What is missing or spare, known now within %1</source>
        <translation>Manque ou excédent, connu aujourd’hui à %1 près</translation>
    </message>
    <message>
        <source>It is what would be left of it after that look, given how exact such a look is.</source>
        <translation>C’est ce qui en resterait après cet examen, vu la précision d’un tel examen.</translation>
    </message>
    <message>
        <source>What is missing or spare, known after another look within %1</source>
        <translation>Manque ou excédent, connu après un nouvel examen à %1 près</translation>
    </message>
    <message>
        <source>Counted over %1 simulated winters: those in which less than the reserve of %2 is left on some day before spring forage starts.</source>
        <translation>Comptés sur %1 hivers simulés&#xa0;: ceux où il reste moins que la marge de sécurité de %2 un jour au moins avant le début des miellées de printemps.</translation>
    </message>
    <message>
        <source>Counted over %1 simulated winters: those in which nothing is left on some day before spring forage starts.</source>
        <translation>Comptés sur %1 hivers simulés&#xa0;: ceux où il ne reste rien un jour au moins avant le début des miellées de printemps.</translation>
    </message>
    <message>
        <source>Each begins with other stores, as widely spread as they are known: %1.</source>
        <translation>Chacun commence avec d’autres provisions, réparties dans la fourchette où elles sont connues&#xa0;: %1.</translation>
    </message>
    <message>
        <source>They are the same winters for everything that can be done, so the figures can be compared.</source>
        <translation>Ce sont les mêmes hivers pour tout ce qui peut être fait&#xa0;: les chiffres sont donc comparables.</translation>
    </message>
    <message>
        <source>That is %1; in the others so much or more is left.</source>
        <translation>Cela arrive %1&#x202f;; dans les autres hivers, il reste cette quantité ou plus.</translation>
    </message>
    <message>
        <source>%2 or more left, if you do as advised: %1 simulated winters</source>
        <translation>%2 ou plus restent si vous suivez le conseil&#xa0;: %1 (hivers simulés)</translation>
    </message>
    <message>
        <source>%2 or more left, left alone: %1 simulated winters</source>
        <translation>%2 ou plus restent si rien n’est fait&#xa0;: %1 (hivers simulés)</translation>
    </message>
    <message>
        <source>Runs out, if you do as advised: %1 simulated winters</source>
        <translation>Provisions épuisées si vous suivez le conseil&#xa0;: %1 (hivers simulés)</translation>
    </message>
    <message>
        <source>Runs out, left alone: %1 simulated winters</source>
        <translation>Provisions épuisées si rien n’est fait&#xa0;: %1 (hivers simulés)</translation>
    </message>
    <message>
        <source>%1 wide and %2 high</source>
        <translation>%1 de large et %2 de haut</translation>
    </message>
    <message>
        <source>%1 wide at the bar, %2 below, and %3 high</source>
        <translation>%1 de large à la barrette, %2 en bas, et %3 de haut</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>vu par une fenêtre</translation>
    </message>
    <message>
        <source>one face traced on a photograph</source>
        <translation>une face tracée sur une photo</translation>
    </message>
    <message>
        <source>one face seen</source>
        <translation>une face vue</translation>
    </message>
    <message>
        <source>both faces traced on a photograph</source>
        <translation>deux faces tracées sur une photo</translation>
    </message>
    <message>
        <source>both faces seen</source>
        <translation>deux faces vues</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>The comb is %1, built to %2 of 100 parts, %3 from its neighbours&apos; middle. Sealed from edge to edge on both faces it would hold %4: honey between the cell bottoms and the cappings, less the wax.</source>
        <translation>Le rayon fait %1, il est bâti à %2 parts sur 100, à %3 du milieu de ses voisins. Operculé d’un bord à l’autre sur les deux faces, il contiendrait %4&#xa0;: le miel entre le fond des cellules et les opercules, sans la cire.</translation>
    </message>
    <message>
        <source>It was not looked at and is taken as the mean of the combs that were; how far that may be off is known only roughly.</source>
        <translation>Il n’a pas été examiné et compte comme la moyenne de ceux qui l’ont été&#x202f;; de combien cela peut s’écarter n’est connu qu’en gros.</translation>
    </message>
    <message>
        <source>Capped are %1 of 100 parts: %2.</source>
        <translation>Operculé&#xa0;: %1 parts sur 100, soit %2.</translation>
    </message>
    <message>
        <source>Open nectar is on %1 of 100 parts. It is thinner and less deep than sealed honey and counts as %2 of it: %3.</source>
        <translation>Nectar non operculé&#xa0;: %1 parts sur 100. Il est plus liquide et moins profond que le miel operculé, et compte pour %2 de celui-ci&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1: one standard deviation is %2 of 100 parts, from the judged area and from how deep cells are filled.</source>
        <translation>%1&#xa0;: un écart type vaut %2 parts sur 100, d’après la surface estimée et la profondeur à laquelle les cellules sont remplies.</translation>
    </message>
    <message>
        <source>That is the target less what will be there when winter begins: about %1 now, %2 wanted from today on.</source>
        <translation>C’est l’objectif moins ce qu’il y aura au début de l’hiver&#xa0;: environ %1 aujourd’hui, %2 souhaités à partir d’aujourd’hui.</translation>
    </message>
    <message>
        <source>A kilogram of white sugar fed as %1 becomes %2 kg of ripe stores: the water goes down to 18 parts of 100, and driving it off costs the bees food.</source>
        <translation>Un kilogramme de sucre blanc donné en sirop %1 devient %2&#xa0;kg de provisions mûres&#xa0;: l’eau descend à 18 parts sur 100, et l’évaporer coûte de la nourriture aux abeilles.</translation>
    </message>
    <message>
        <source>%1 of sugar in %2 of water make %3 of syrup, which become %4 of stores.</source>
        <translation>%1 de sucre dans %2 d’eau font %3 de sirop, qui deviennent %4 de provisions.</translation>
    </message>
    <message>
        <source>White sugar to feed: %1</source>
        <translation>Sucre blanc à donner&#xa0;: %1</translation>
    </message>
    <message>
        <source>Fondant is for what can no longer be had as syrup.</source>
        <translation>Le candi sert pour ce qui ne peut plus être donné en sirop.</translation>
    </message>
    <message>
        <source>Fondant to feed: %1</source>
        <translation>Candi à donner&#xa0;: %1</translation>
    </message>
    <message>
        <source>The rule: the first day on which the air&apos;s daily mean of usual years is below %1. Later syrup is no longer taken and ripened for certain.</source>
        <translation>La règle&#xa0;: le premier jour où la moyenne journalière de l’air, en année ordinaire, est inférieure à %1. Plus tard, il n’est plus certain que le sirop soit pris et transformé.</translation>
    </message>
    <message>
        <source>A warm or a cold autumn moves it by some %1 days.</source>
        <translation>Un automne chaud ou froid le déplace de quelque %1 jours.</translation>
    </message>
    <message>
        <source>Last day for syrup: %1</source>
        <translation>Dernier jour pour le sirop&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 winters were simulated from %2 on. What was seen since makes those that fit it count more; as many as %3 equal ones are left.</source>
        <translation>%1 hivers ont été simulés à partir du %2. Avec ce qui a été vu depuis, ceux qui concordent comptent davantage&#x202f;; il reste l’équivalent de %3 hivers de même poids.</translation>
    </message>
    <message>
        <source>Weighed or judged on %1, as stores: %2.</source>
        <translation>Pesé ou estimé le %1, en provisions&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Nothing was weighed since; the figure rests on the autumn&apos;s forecast alone.</source>
        <translation>Rien n’a été pesé depuis&#x202f;; le chiffre repose sur la seule prévision d’automne.</translation>
    </message>
    <message>
        <source>A reading becomes stores when the hive&apos;s own weight, its bees and its bee bread are taken off. A later reading teaches what the hive itself weighs, and then earlier ones are read anew.</source>
        <translation>Un relevé devient des provisions quand on en retire le poids de la ruche elle-même, de ses abeilles et de son pain d’abeilles. Un relevé plus tardif apprend ce que pèse la ruche elle-même, et les précédents sont alors relus.</translation>
    </message>
    <message>
        <source>Left on %1: %2</source>
        <translation>Reste au %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>The forecast of %1, before anything was seen since: stores of %2 with one standard deviation of %3, less what is eaten, with the feeds and harvests that were planned then.</source>
        <translation>La prévision du %1, avant que rien n’ait été vu&#xa0;: des provisions de %2 avec un écart type de %3, moins la consommation, avec les nourrissements et les récoltes prévus alors.</translation>
    </message>
    <message>
        <source>Expected in autumn for %1: %2</source>
        <translation>Attendu en automne pour le %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Counted over the winters: those in which less than the reserve of %1 is left on some day before spring forage starts.</source>
        <translation>Comptés sur les hivers&#xa0;: ceux où il reste moins que la marge de sécurité de %1 un jour au moins avant le début des miellées de printemps.</translation>
    </message>
    <message>
        <source>Counted over the winters: those in which nothing is left on some day before spring forage starts.</source>
        <translation>Comptés sur les hivers&#xa0;: ceux où il ne reste rien un jour au moins avant le début des miellées de printemps.</translation>
    </message>
    <message>
        <source>As it was forecast on %1, before anything was seen since.</source>
        <translation>Comme c’était prévu le %1, avant que rien n’ait été vu.</translation>
    </message>
    <message>
        <source>Falls below the reserve, as forecast in autumn: %1 winters</source>
        <translation>Sous la marge de sécurité, d’après la prévision d’automne&#xa0;: %1</translation>
    </message>
    <message>
        <source>Falls below the reserve, if nothing is done: %1 winters</source>
        <translation>Sous la marge de sécurité, si rien n’est fait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Runs out, as forecast in autumn: %1 winters</source>
        <translation>Provisions épuisées, d’après la prévision d’automne&#xa0;: %1</translation>
    </message>
    <message>
        <source>Runs out, if nothing is done: %1 winters</source>
        <translation>Provisions épuisées, si rien n’est fait&#xa0;: %1</translation>
    </message>
    <message>
        <source>With %3 more in the hive it falls below %1 in no more than %2 of 100 winters that fit what was seen.</source>
        <translation>Avec %3 de plus dans la ruche, les provisions descendent sous %1 dans %2 hivers sur 100 au plus, parmi ceux qui concordent avec ce qui a été vu.</translation>
    </message>
    <message>
        <source>Syrup is still taken; its visits stand on the page Feeding.</source>
        <translation>Le sirop est encore pris&#x202f;; les passages sont à la page Nourrissement.</translation>
    </message>
    <message>
        <source>Sugar to feed: %1, for %2 of stores</source>
        <translation>Sucre à donner&#xa0;: %1, pour %2 de provisions</translation>
    </message>
    <message>
        <source>One visit with no more than %1; what is still missing then is told by the next weighing.</source>
        <translation>Un passage avec %1 au plus&#x202f;; ce qui manque encore ensuite, la pesée suivante le dira.</translation>
    </message>
    <message>
        <source>Fondant to lay on: %1, for %2 of stores</source>
        <translation>Candi à poser&#xa0;: %1, pour %2 de provisions</translation>
    </message>
    <message>
        <source>A week before %1, when bees that eat much (4 winters of 5 eat less) come down to %2.</source>
        <translation>Une semaine avant le %1, jour où des abeilles qui consomment beaucoup (4 hivers sur 5 consomment moins) descendent à %2.</translation>
    </message>
    <message>
        <source>Today: it cannot wait, or is taken best now.</source>
        <translation>Aujourd’hui&#xa0;: cela ne peut pas attendre, ou c’est maintenant que la nourriture est le mieux prise.</translation>
    </message>
    <message>
        <source>Feed on %1</source>
        <translation>À donner le %1</translation>
    </message>
    <message>
        <source>On that day half of the winters that fit what was seen are below the reserve of %1.</source>
        <translation>Ce jour-là, la moitié des hivers qui concordent avec ce qui a été vu sont sous la marge de sécurité de %1.</translation>
    </message>
    <message>
        <source>On that day a tenth of the winters that fit what was seen are below the reserve of %1.</source>
        <translation>Ce jour-là, un dixième des hivers qui concordent avec ce qui a été vu sont sous la marge de sécurité de %1.</translation>
    </message>
    <message>
        <source>Below the reserve: %1</source>
        <translation>Sous la marge de sécurité&#xa0;: %1</translation>
    </message>
    <message>
        <source>Fondant is laid on one visit at a time, and the next follows a weighing: before the visit that is planned, or two weeks after that of today.</source>
        <translation>Le candi se pose en un passage à la fois, et le suivant vient après une pesée&#xa0;: avant le passage prévu, ou deux semaines après celui d’aujourd’hui.</translation>
    </message>
    <message>
        <source>Weigh on %1</source>
        <translation>Peser le %1</translation>
    </message>
    <message>
        <source>Were the hive weighed on that day, its reading would change whether to feed in %1 of 100 cases, told from the winters that fit what was seen.</source>
        <translation>Si la ruche était pesée ce jour-là, le relevé changerait la décision de nourrir ou non dans %1 cas sur 100, d’après les hivers qui concordent avec ce qui a été vu.</translation>
    </message>
    <message>
        <source>It is the first day on which a weighing is worth it; before, it would change too seldom what to do.</source>
        <translation>C’est le premier jour où une pesée en vaut la peine&#x202f;; avant, elle changerait trop rarement ce qu’il faut faire.</translation>
    </message>
    <message>
        <source>A weighing on %1 changes what to do in %2 of 100 cases</source>
        <translation>Une pesée le %1 change ce qu’il faut faire dans %2 cas sur 100</translation>
    </message>
    <message>
        <source>Weigh again by %1</source>
        <translation>Repeser d’ici au %1</translation>
    </message>
    <message>
        <source>What the colony was seen to eat makes winters with an early or a late spring count more, so colonies of one yard may differ.</source>
        <translation>Ce que la colonie a consommé donne plus de poids aux hivers à printemps précoce ou à printemps tardif&#x202f;; les colonies d’un même rucher peuvent donc différer.</translation>
    </message>
    <message>
        <source>What stays is never below what the colony should winter on, nor below what is usual here; what comes off are whole supers and whole outer %{combs}.</source>
        <translation>Ce qui reste n’est jamais inférieur à ce qu’il faut à la colonie pour hiverner, ni à ce qui est d’usage ici&#x202f;; on récolte des hausses entières et des cadres de rive entiers.</translation>
    </message>
    <message>
        <source>About %1 are in the hive, %2 are needed.</source>
        <translation>La ruche contient environ %1, il en faut %2.</translation>
    </message>
    <message>
        <source>To spare on %1: %2</source>
        <translation>Excédent au %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>The super is for people: its honey was not counted with what the bees have, and its %{combs} hold no brood.</source>
        <translation>La hausse est pour la récolte&#xa0;: son miel n’a pas été compté avec ce qu’ont les abeilles, et ses cadres n’ont pas de couvain.</translation>
    </message>
    <message>
        <source>A comb&apos;s honey is its area times what a square decimetre of sealed comb holds.</source>
        <translation>Le miel d’un cadre est sa surface multipliée par ce que contient un décimètre carré de rayon operculé.</translation>
    </message>
    <message>
        <source>Honey in the super: %1</source>
        <translation>Miel dans la hausse&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} that hold no brood, are capped enough, took no syrup and are not of the old brood nest weigh together no more than what is to spare.</source>
        <translation>
            <numerusform>%n cadre sans couvain, assez operculé, qui n’a pas pris de sirop et ne vient pas du vieux nid à couvain, ne pèse pas plus que l’excédent.</numerusform>
            <numerusform>%n cadres sans couvain, assez operculés, qui n’ont pas pris de sirop et ne viennent pas du vieux nid à couvain, ne pèsent pas ensemble plus que l’excédent.</numerusform>
        </translation>
    </message>
    <message>
        <source>To spare are %1.</source>
        <translation>L’excédent est de %1.</translation>
    </message>
    <message>
        <source>Honey in the %{combs} that may come off: %1</source>
        <translation>Miel dans les cadres qui peuvent être récoltés&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 to %2, which lacks stores.</source>
        <translation>%1 pour %2, qui manque de provisions.</translation>
    </message>
    <message>
        <source>%{Combs} within the yard come before sugar; a colony gives no more than it can spare at the risk you accept.</source>
        <translation>Les cadres du rucher passent avant le sucre&#x202f;; une colonie ne donne pas plus que ce dont elle peut se passer au risque que vous acceptez.</translation>
    </message>
    <message>
        <source>Honey in %{combs} to give: %1</source>
        <translation>Miel dans les cadres à donner&#xa0;: %1</translation>
    </message>
    <message>
        <source>In 80 of 100 cases the truth lies between the two figures in brackets, in 10 below, in 10 above.</source>
        <translation>Dans 80 cas sur 100, la vérité est entre les deux chiffres entre parenthèses, dans 10 en dessous, dans 10 au-dessus.</translation>
    </message>
    <message>
        <source>Were other winters drawn, it would differ by some %1 of 100.</source>
        <translation>Si l’on tirait d’autres hivers, cela changerait d’environ %1 sur 100.</translation>
    </message>
    <message>
        <source>The rule: the first day from which the air&apos;s daily mean of usual years stays above %1 and the day is longer than %2 hours.</source>
        <translation>La règle&#xa0;: le premier jour à partir duquel la moyenne journalière de l’air, en année ordinaire, reste au-dessus de %1 et où le jour dure plus de %2 heures.</translation>
    </message>
    <message>
        <source>A kilogram of fondant becomes %1 kg of stores; kept low on purpose.</source>
        <translation>Un kilogramme de candi devient %1&#xa0;kg de provisions&#x202f;; valeur basse à dessein.</translation>
    </message>
    <message>
        <source>The reserve is yours to set, in the yard&apos;s Place: what you wish to be left at the worst moment before spring forage starts.</source>
        <translation>Vous réglez la marge de sécurité à la page Lieu du rucher&#xa0;: ce que vous voulez qu’il reste au pire moment avant le début des miellées de printemps.</translation>
    </message>
    <message>
        <source>You accept that less is left in %1 of 100 winters.</source>
        <translation>Vous acceptez qu’il reste moins dans %1 hivers sur 100.</translation>
    </message>
    <message>
        <source>Reserve: %1</source>
        <translation>Marge de sécurité&#xa0;: %1</translation>
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
        <translation>sucre %1</translation>
    </message>
    <message>
        <source>water %1</source>
        <translation>eau %1</translation>
    </message>
    <message>
        <source>heights stand for weights</source>
        <translation>les hauteurs représentent des poids</translation>
    </message>
    <message>
        <source>lid on tight</source>
        <translation>toit bien fermé</translation>
    </message>
    <message>
        <source>syrup under a float</source>
        <translation>sirop sous un flotteur</translation>
    </message>
    <message>
        <source>the bees come up inside</source>
        <translation>les abeilles montent à l’intérieur</translation>
    </message>
    <message>
        <source>over the bees, not beside them</source>
        <translation>au-dessus des abeilles, pas à côté</translation>
    </message>
    <message>
        <source>narrow entrance</source>
        <translation>entrée réduite</translation>
    </message>
    <message>
        <source>stores touch the bees</source>
        <translation>les provisions touchent les abeilles</translation>
    </message>
    <message>
        <source>empty combs between: out of reach</source>
        <translation>cadres vides entre deux&#xa0;: hors d’atteinte</translation>
    </message>
    <message>
        <source>snow on top may stay</source>
        <translation>la neige dessus peut rester</translation>
    </message>
    <message>
        <source>so may snow around it</source>
        <translation>celle d’autour aussi</translation>
    </message>
    <message>
        <source>entrance free, mouse guard in front</source>
        <translation>entrée libre, grille anti-rongeurs devant</translation>
    </message>
    <message>
        <source>four of eight fields are capped</source>
        <translation>quatre champs sur huit sont operculés</translation>
    </message>
    <message>
        <source>with both faces like this:</source>
        <translation>avec deux faces comme celle-ci&#xa0;:</translation>
    </message>
    <message>
        <source>a quarter: %1</source>
        <translation>un quart&#xa0;: %1</translation>
    </message>
    <message>
        <source>half: %1</source>
        <translation>la moitié&#xa0;: %1</translation>
    </message>
    <message>
        <source>three quarters: %1</source>
        <translation>trois quarts&#xa0;: %1</translation>
    </message>
    <message>
        <source>capped honey</source>
        <translation>miel operculé</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>nectar non operculé</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pain d’abeilles</translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>couvain operculé</translation>
    </message>
    <message>
        <source>grub and eggs</source>
        <translation>larves et œufs</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>couvain</translation>
    </message>
    <message>
        <source>empty cells</source>
        <translation>cellules vides</translation>
    </message>
    <message>
        <source>five seams</source>
        <translation>cinq ruelles</translation>
    </message>
    <message>
        <source>about %1 bees on combs of %2</source>
        <translation>environ %1 abeilles sur des cadres de %2</translation>
    </message>
    <message>
        <source>a palm, %1 by %1</source>
        <translation>une paume, %1 sur %1</translation>
    </message>
    <message>
        <source>%1 cells of one face</source>
        <translation>%1 cellules d’une face</translation>
    </message>
    <message>
        <source>every comb</source>
        <translation>chaque cadre</translation>
    </message>
    <message>
        <source>honey off</source>
        <translation>miel récolté</translation>
    </message>
    <message>
        <source>weigh</source>
        <translation>peser</translation>
    </message>
    <message>
        <source>last feed down</source>
        <translation>fin du nourrissement</translation>
    </message>
    <message>
        <source>heft</source>
        <translation>soupeser</translation>
    </message>
    <message>
        <source>cold, no brood</source>
        <translation>froid, pas de couvain</translation>
    </message>
    <message>
        <source>heft or weigh</source>
        <translation>soupeser ou peser</translation>
    </message>
    <message>
        <source>brood again</source>
        <translation>du couvain de nouveau</translation>
    </message>
    <message>
        <source>first nectar</source>
        <translation>premier nectar</translation>
    </message>
    <message>
        <source>light</source>
        <translation>légère</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>lourde</translation>
    </message>
    <message>
        <source>what is wanted that day</source>
        <translation>ce qu’il faut ce jour-là</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>a share</comment>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>the whole hive</source>
        <translation>la ruche entière</translation>
    </message>
    <message>
        <source>keep it closed</source>
        <translation>laisser fermé</translation>
    </message>
    <message>
        <source>the lid alone</source>
        <translation>le toit seul</translation>
    </message>
    <message>
        <source>half a minute</source>
        <translation>une demi-minute</translation>
    </message>
    <message>
        <source>a full look</source>
        <translation>visite complète</translation>
    </message>
    <message>
        <source>1. aside, in the shade</source>
        <translation>1. à côté, à l’ombre</translation>
    </message>
    <message>
        <source>2. then one by one</source>
        <translation>2. puis un par un</translation>
    </message>
    <message>
        <source>the nest last: eggs are enough, leave the queen be</source>
        <translation>le nid en dernier&#xa0;: des œufs suffisent, laissez la reine tranquille</translation>
    </message>
    <message>
        <source>Only my hives</source>
        <translation>Mes ruches seulement</translation>
    </message>
    <message>
        <source>Every hive</source>
        <translation>Toutes les ruches</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Sources&#xa0;: %1.</translation>
    </message>
    <message>
        <source>When to look, and why</source>
        <translation>Quand regarder, et pourquoi</translation>
    </message>
    <message>
        <source>Hefting and weighing</source>
        <translation>Soupeser et peser</translation>
    </message>
    <message>
        <source>What a comb holds</source>
        <translation>Ce que contient un cadre</translation>
    </message>
    <message>
        <source>What is in the cells</source>
        <translation>Ce qu’il y a dans les cellules</translation>
    </message>
    <message>
        <source>Counting bees and brood</source>
        <translation>Compter les abeilles et le couvain</translation>
    </message>
    <message>
        <source>Opening a hive gently</source>
        <translation>Ouvrir une ruche en douceur</translation>
    </message>
    <message>
        <source>Mixing and giving feed</source>
        <translation>Préparer et donner la nourriture</translation>
    </message>
    <message>
        <source>Checks in winter</source>
        <translation>Contrôles en hiver</translation>
    </message>
    <message>
        <source>Hive</source>
        <translation>Ruche</translation>
    </message>
    <message>
        <source>Sugar to water</source>
        <translation>Sucre et eau</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Sucre</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Donne</translation>
    </message>
    <message>
        <source>Becomes stores of</source>
        <translation>Devient en provisions</translation>
    </message>
    <message>
        <source>Ratios here are by weight, sugar to water. Two cups of sugar on one of water are only %1 to 1 by weight: use a scale.</source>
        <translation>Les proportions sont ici en poids, le sucre d’abord, l’eau ensuite. Deux tasses de sucre pour une d’eau ne font que %1 pour 1 en poids&#xa0;: prenez une balance.</translation>
    </message>
    <message>
        <source>The same sugar with less and less water: 1 to 1, 3 to 2 and 2 to 1 by weight.</source>
        <translation>Le même sucre avec de moins en moins d’eau&#xa0;: 1:1, 3:2 et 2:1 en poids.</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Préparer</translation>
    </message>
    <message>
        <source>Stir white granulated sugar into water of %1 until it is clear. Never boil, no acid, no brown or icing sugar. Give it lukewarm.</source>
        <translation>Remuez du sucre blanc cristallisé dans de l’eau à %1 jusqu’à ce qu’elle soit claire. Ne faites jamais bouillir&#x202f;; ni acide, ni sucre roux, ni sucre glace. Donnez tiède.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Lequel</translation>
    </message>
    <message>
        <source>For winter stores 3:2 while five weeks of warm days remain before the last day for syrup, then 2:1: less water to drive off. 1:1 only helps a small colony along.</source>
        <translation>Pour les provisions d’hiver&#xa0;: 3:2 tant qu’il reste cinq semaines de jours chauds avant le dernier jour pour le sirop, ensuite 2:1, qui laisse moins d’eau à évaporer. Le 1:1 ne fait que soutenir une petite colonie.</translation>
    </message>
    <message>
        <source>A feeder over the %{combs} and under the lid: bees come up inside, nothing gets in from outside, the entrance is narrow.</source>
        <translation>Un nourrisseur au-dessus des cadres et sous le toit&#xa0;: les abeilles montent à l’intérieur, rien n’entre du dehors, l’entrée est réduite.</translation>
    </message>
    <message>
        <source>Feeder</source>
        <translation>Nourrisseur</translation>
    </message>
    <message>
        <source>Inside and above the bees, tight against those from outside, with a float so that none drown. Supers whose honey is for people come off first.</source>
        <translation>À l’intérieur et au-dessus des abeilles, étanche aux abeilles du dehors, avec un flotteur pour qu’aucune ne se noie. Retirez d’abord les hausses destinées à la récolte.</translation>
    </message>
    <message>
        <source>Robbers and wasps</source>
        <translation>Pillardes et guêpes</translation>
    </message>
    <message>
        <source>Feed all colonies the same evening, spill nothing, narrow the entrance to %1 by %2 at most, for a weak colony to one bee.</source>
        <translation>Nourrissez toutes les colonies le même soir, ne renversez rien, réduisez l’entrée à %1 sur %2 au plus, à la largeur d’une abeille pour une colonie faible.</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Dernier jour</translation>
    </message>
    <message>
        <source>Syrup needs %1 weeks to be sealed, and under %2 it is hardly taken. The page Feeding says the day for your yard.</source>
        <translation>Il faut %1 semaines pour que le sirop soit operculé, et sous %2 il n’est presque plus pris. La page Nourrissement donne le jour pour votre rucher.</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Candi</translation>
    </message>
    <message>
        <source>In winter the only feed: on the bars over the cluster so that it touches the bees, covered, at most %1 a visit, for a nucleus %2. In a long hive stand it beside the cluster. Never feed honey of unknown origin.</source>
        <translation>En hiver, la seule nourriture&#xa0;: sur les têtes de cadres, au-dessus de la grappe et à son contact, couvert, %1 au plus par passage, %2 pour un nucléus. Dans une ruche horizontale, dressez-le à côté de la grappe. Ne donnez jamais de miel d’origine inconnue.</translation>
    </message>
    <message>
        <source>In winter you help from outside. Go round every two weeks and after each storm: entrance, weight, tracks.</source>
        <translation>En hiver, on aide de l’extérieur. Faites le tour toutes les deux semaines et après chaque tempête&#xa0;: entrée, poids, traces.</translation>
    </message>
    <message>
        <source>A hive in snow: snow around it may stay, the entrance is free and behind a mouse guard.</source>
        <translation>Une ruche sous la neige&#xa0;: celle d’autour peut rester, l’entrée est libre derrière une grille anti-rongeurs.</translation>
    </message>
    <message>
        <source>Entrance</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Keep it open: draw dead bees out with a bent wire, break ice away. Loose snow around the hive is a coat. Fit a mouse guard, openings about %1, before days stay below %2.</source>
        <translation>Tenez-la libre&#xa0;: tirez les abeilles mortes avec un fil de fer recourbé, cassez la glace. La neige légère autour de la ruche est un manteau. Posez une grille anti-rongeurs, à ouvertures d’environ %1, avant que les journées restent sous %2.</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Heft the same side each time, or read the scale. Loss is slow until brood begins, then several times as fast.</source>
        <translation>Soupesez toujours du même côté, ou lisez la balance. La perte est lente jusqu’au retour du couvain, puis plusieurs fois plus rapide.</translation>
    </message>
    <message>
        <source>Left: stores touch the cluster. Right: empty %{combs} lie between, and in the cold the bees do not cross them.</source>
        <translation>À gauche&#xa0;: les provisions touchent la grappe. À droite&#xa0;: des cadres vides les séparent et, par temps froid, les abeilles ne les franchissent pas.</translation>
    </message>
    <message>
        <source>In reach</source>
        <translation>À portée</translation>
    </message>
    <message>
        <source>The cluster eats only what it touches. %1 empty %{combs} between it and the stores are a wall in the cold: on a day of %2 hang a full %{comb} against the bees.</source>
        <translation>La grappe ne mange que ce qu’elle touche. Par temps froid, %1 cadres vides entre elle et les provisions sont un mur&#xa0;: un jour à %2, placez un cadre plein contre les abeilles.</translation>
    </message>
    <message>
        <source>Act now</source>
        <translation>Agir maintenant</translation>
    </message>
    <message>
        <source>It comes up by itself when hefted; food for fewer than %1 days; bees right under the lid with no capped comb beside them; bees head down in empty cells. Lay fondant on the bees today, weigh, and come again.</source>
        <translation>La ruche se soulève toute seule&#x202f;; de la nourriture pour moins de %1 jours&#x202f;; des abeilles juste sous le couvre-cadres, sans cadre operculé à côté&#x202f;; des abeilles la tête dans des cellules vides. Posez du candi sur les abeilles aujourd’hui, pesez, et revenez.</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Morte</translation>
    </message>
    <message>
        <source>Close it the same day, or robbers carry away what killed it. Nothing of it goes to another colony until disease is ruled out.</source>
        <translation>Fermez-la le jour même, sinon les pillardes emportent ce qui l’a tuée. Rien n’en passe à une autre colonie tant que la maladie n’est pas exclue.</translation>
    </message>
    <message>
        <source>Signs of disease are for the bee inspector, medicines for the vet and the label. Local codes on registering, moving, feeding and burning come before anything said here. No honey for children under twelve months.</source>
        <translation>Les signes de maladie regardent le technicien sanitaire apicole, les médicaments le vétérinaire et la notice. Les règles locales sur la déclaration, le déplacement, le nourrissement et le brûlage passent avant tout ce qui est dit ici. Pas de miel pour les enfants de moins de douze mois.</translation>
    </message>
    <message>
        <source>All of it, both faces</source>
        <translation>En entier, deux faces</translation>
    </message>
    <message>
        <source>Half of it</source>
        <translation>La moitié</translation>
    </message>
    <message>
        <source>One field of one face</source>
        <translation>Un champ d’une face</translation>
    </message>
    <message>
        <source>Bees of a seam, or of a covered %{comb}</source>
        <translation>Abeilles d’une ruelle, ou d’un cadre occupé</translation>
    </message>
    <message>
        <source>Hold the %{comb} over the hive and ask one thing of each face: what share of the comb is capped? Leave the wood out.</source>
        <translation>Tenez le cadre au-dessus de la ruche et posez-vous une seule question pour chaque face&#xa0;: quelle part du rayon est operculée&#x202f;? Ne comptez pas le bois.</translation>
    </message>
    <message>
        <source>One face of a comb of %1 cut into eight fields. Here %2 of the face is capped.</source>
        <translation>Une face d’un cadre de %1, partagée en huit champs. Ici, %2 de la face est operculé.</translation>
    </message>
    <message>
        <source>Count fields</source>
        <translation>Compter les champs</translation>
    </message>
    <message>
        <source>Think of the face as eight fields, four across and two down. Count those that are capped; two half ones make one.</source>
        <translation>Voyez la face comme huit champs, quatre en largeur et deux en hauteur. Comptez ceux qui sont operculés&#x202f;; deux moitiés en font un.</translation>
    </message>
    <message>
        <source>Both faces</source>
        <translation>Deux faces</translation>
    </message>
    <message>
        <source>They seldom match: judge both and take the mean. Where only one was seen, say so; it counts as less sure.</source>
        <translation>Elles se ressemblent rarement&#xa0;: estimez les deux et prenez la moyenne. Si vous n’en avez vu qu’une, dites-le&#x202f;; elle compte comme moins sûre.</translation>
    </message>
    <message>
        <source>Bands deceive</source>
        <translation>Les bandes trompent</translation>
    </message>
    <message>
        <source>A band under the top bar looks like more than it is. A band of a quarter of the height is a quarter of the comb.</source>
        <translation>Une bande sous la tête de cadre paraît plus grande qu’elle n’est. Une bande d’un quart de la hauteur est un quart du cadre.</translation>
    </message>
    <message>
        <source>A quarter, a half and three quarters of a comb of %1 capped, and what each holds with both faces alike.</source>
        <translation>Un quart, la moitié et trois quarts d’un cadre de %1 operculés, et ce que chacun contient si les deux faces sont pareilles.</translation>
    </message>
    <message>
        <source>By the palm</source>
        <translation>À la paume</translation>
    </message>
    <message>
        <source>A palm of capped comb, %1 by %1, holds about %2 with both faces capped.</source>
        <translation>Une paume de rayon operculé, %1 sur %1, contient environ %2 si les deux faces sont operculées.</translation>
    </message>
    <message>
        <source>Thick combs</source>
        <translation>Rayons épais</translation>
    </message>
    <message>
        <source>The wider combs hang, the thicker they are drawn. With %1 from comb to comb instead of %2 a full one holds %3 instead of %4: give the width where it differs.</source>
        <translation>Plus les cadres sont espacés, plus ils sont bâtis épais. Avec %1 d’un cadre à l’autre au lieu de %2, un cadre plein contient %3 au lieu de %4&#xa0;: indiquez l’entraxe s’il diffère.</translation>
    </message>
    <message>
        <source>“Full”</source>
        <translation>«&#xa0;Plein&#xa0;»</translation>
    </message>
    <message>
        <source>A comb called full has rims. Where combs were only counted, a full one is therefore taken for %1.</source>
        <translation>Un cadre dit plein a des bords vides. Quand les cadres ont seulement été comptés, un cadre plein est donc pris pour %1.</translation>
    </message>
    <message>
        <source>Capped honey of one %{comb}:</source>
        <translation>Miel operculé d’un cadre&#xa0;:</translation>
    </message>
    <message>
        <source>Five things may be in a cell. Stand with the sun over your shoulder, so that it shines into the cells.</source>
        <translation>Une cellule peut contenir cinq choses. Placez-vous le soleil dans le dos, pour qu’il éclaire le fond des cellules.</translation>
    </message>
    <message>
        <source>Cells face on: capped honey, open nectar, bee bread, sealed brood, eggs and grubs, and empty ones.</source>
        <translation>Cellules vues de face&#xa0;: miel operculé, nectar non operculé, pain d’abeilles, couvain operculé, œufs et larves, et cellules vides.</translation>
    </message>
    <message>
        <source>Capped honey</source>
        <translation>Miel operculé</translation>
    </message>
    <message>
        <source>Flat or slightly sunken lids of wax, white to brown, without holes. Dry-looking lids have air under them, wet-looking ones touch the honey; both count in full.</source>
        <translation>Opercules de cire plats ou un peu creux, du blanc au brun, sans trous. S’ils paraissent secs, il y a de l’air dessous&#x202f;; s’ils paraissent mouillés, ils touchent le miel&#x202f;; les deux comptent en entier.</translation>
    </message>
    <message>
        <source>Open nectar or syrup</source>
        <translation>Nectar ou sirop non operculé</translation>
    </message>
    <message>
        <source>Glistens. Hold the %{comb} flat and jerk it once: what spatters is raw. Its area counts for %1 of capped honey within a week of a feed or a flow, later for %2.</source>
        <translation>Il brille. Tenez le cadre à plat et donnez une secousse&#xa0;: ce qui gicle n’est pas mûr. Sa surface compte pour %1 de miel operculé dans la semaine qui suit un nourrissement ou une miellée, pour %2 ensuite.</translation>
    </message>
    <message>
        <source>Bee bread</source>
        <translation>Pain d’abeilles</translation>
    </message>
    <message>
        <source>Matt and packed, in many colours. It feeds brood, is no winter food, and makes a %{comb} feel heavy.</source>
        <translation>Mat et tassé, de toutes les couleurs. Il nourrit le couvain, n’est pas une nourriture d’hiver, et fait paraître un cadre lourd.</translation>
    </message>
    <message>
        <source>Sealed brood</source>
        <translation>Couvain operculé</translation>
    </message>
    <message>
        <source>Even tan lids, slightly domed, matt as a biscuit. Sunken, greasy or pierced lids are signs of disease: close the hive, move nothing, call the bee inspector.</source>
        <translation>Opercules réguliers, beiges, un peu bombés, mats comme un biscuit. Affaissés, gras ou percés, ils sont signes de maladie&#xa0;: fermez la ruche, ne déplacez rien, appelez le technicien sanitaire apicole.</translation>
    </message>
    <message>
        <source>Eggs and grubs</source>
        <translation>Œufs et larves</translation>
    </message>
    <message>
        <source>Eggs stand like tiny grains of rice, grubs lie curled and white. Eggs mean a queen within three days. Late in the year there may be none.</source>
        <translation>Les œufs sont dressés comme de minuscules grains de riz, les larves sont couchées en rond, blanches. Des œufs&#xa0;: une reine était là il y a trois jours au plus. Tard dans l’année, il peut n’y en avoir aucun.</translation>
    </message>
    <message>
        <source>Where they lie on a %{comb}: capped honey in an arch on top, open nectar under it, brood in the lower middle with bee bread around.</source>
        <translation>Où les trouver sur un cadre&#xa0;: le miel operculé en arc tout en haut, le nectar non operculé dessous, le couvain au milieu vers le bas, entouré de pain d’abeilles.</translation>
    </message>
    <message>
        <source>Write down the share of each; what is left is empty. From syrup to sealed takes %1 weeks, so what is open when the cold begins often stays so. Honey for people: only %{combs} with at least %2 of their stores capped.</source>
        <translation>Notez la part de chacun&#x202f;; le reste est vide. Il faut %1 semaines pour que le sirop soit operculé&#xa0;: ce qui ne l’est pas quand le froid commence le reste souvent. Miel pour la récolte&#xa0;: seulement des cadres dont au moins %2 des provisions sont operculés.</translation>
    </message>
    <message>
        <source>Count on a cool morning before they fly, when all are at home. At noon many are out. Count before you smoke: smoke moves them.</source>
        <translation>Comptez par un matin frais, avant le vol, quand toutes sont là. À midi, beaucoup sont dehors. Comptez avant d’enfumer&#xa0;: la fumée les déplace.</translation>
    </message>
    <message>
        <source>A box from above: bees fill four gaps between the %{combs} from end to end and two by half, which makes five seams.</source>
        <translation>Un élément vu d’en haut&#xa0;: les abeilles remplissent quatre ruelles de bout en bout et deux à moitié, ce qui fait cinq ruelles.</translation>
    </message>
    <message>
        <source>Seams</source>
        <translation>Ruelles</translation>
    </message>
    <message>
        <source>Lift lid and cover and look down. A gap filled with bees from end to end is one seam, half filled it is a half. With two boxes tip the upper one and count the lower one too. Seams are good to %1.</source>
        <translation>Enlevez le toit et le couvre-cadres et regardez d’en haut. Une ruelle remplie d’abeilles de bout en bout en fait une, à moitié remplie une demie. Avec deux éléments, basculez celui du haut et comptez aussi celui du bas. Les ruelles se comptent à %1 près.</translation>
    </message>
    <message>
        <source>Covered %{combs}</source>
        <translation>Cadres occupés</translation>
    </message>
    <message>
        <source>A %{comb} so full of bees on both sides that hardly any cell shows is one; one side is a half. A loose cover shows comb between the bees and counts for half to two thirds. This is good to %1.</source>
        <translation>Un cadre si plein d’abeilles des deux côtés qu’on ne voit presque plus de cellules compte pour un&#x202f;; un seul côté, pour un demi. Si l’on voit le rayon entre les abeilles, il compte de la moitié aux deux tiers. C’est juste à %1 près.</translation>
    </message>
    <message>
        <source>In the cold</source>
        <translation>Par temps froid</translation>
    </message>
    <message>
        <source>The cluster draws together and fills fewer seams than there are bees for. Write it down as seen in winter, not as a count.</source>
        <translation>La grappe se resserre et remplit moins de ruelles que son nombre d’abeilles ne le voudrait. Notez-la comme vue en hiver, non comme un comptage.</translation>
    </message>
    <message>
        <source>Brood</source>
        <translation>Couvain</translation>
    </message>
    <message>
        <source>Lay your palm on it: %1 by %1 of one face are %2 cells. Judge it as a share of the comb, like honey. It tells whether the queen lays, and what food and warmth it will take.</source>
        <translation>Posez la paume dessus&#xa0;: %1 sur %1 d’une face font %2 cellules. Estimez-le en part du cadre, comme le miel. Il dit si la reine pond, et ce qu’il demandera de nourriture et de chaleur.</translation>
    </message>
    <message>
        <source>The last brood of the year: a patch of the size of a palm near the middle of a %{comb}.</source>
        <translation>Le dernier couvain de l’année&#xa0;: une plaque de la taille d’une paume, près du milieu d’un cadre.</translation>
    </message>
    <message>
        <source>Too few</source>
        <translation>Trop peu</translation>
    </message>
    <message>
        <source>Under %1 well covered %{combs}, or %2 bees, before winter: unite with a healthy neighbour, unless it is a nucleus kept small on purpose.</source>
        <translation>Sous %1 cadres bien occupés, ou %2 abeilles, avant l’hiver&#xa0;: réunissez la colonie à une voisine saine, sauf si c’est un nucléus gardé petit volontairement.</translation>
    </message>
    <message>
        <source>Way of judging</source>
        <translation>Manière d’estimer</translation>
    </message>
    <message>
        <source>Give or take</source>
        <comment>heading: two of three cases lie within</comment>
        <translation>À … près</translation>
    </message>
    <message>
        <source>every %{comb}, both faces</source>
        <translation>chaque cadre, deux faces</translation>
    </message>
    <message>
        <source>every %{comb}, one face</source>
        <translation>chaque cadre, une face</translation>
    </message>
    <message>
        <source>full and half %{combs} only counted</source>
        <translation>cadres pleins et à moitié pleins seulement comptés</translation>
    </message>
    <message>
        <source>on a scale, empty hive weighed too</source>
        <translation>sur une balance, ruche vide pesée aussi</translation>
    </message>
    <message>
        <source>on a scale, empty weight assumed</source>
        <translation>sur une balance, poids à vide supposé</translation>
    </message>
    <message>
        <source>hefted by hand</source>
        <translation>soupesée à la main</translation>
    </message>
    <message>
        <source>In autumn you decide what a colony can no longer put right by itself: whether honey comes off, whether it is left alone, how much it is fed. A few %{combs} too little and it starves in spring; far too much and the queen has no room. So look before you take.</source>
        <translation>En automne, vous décidez de ce qu’une colonie ne peut plus corriger elle-même&#xa0;: si l’on récolte, si on la laisse, combien on lui donne. Quelques cadres de trop peu et elle meurt de faim au printemps&#x202f;; beaucoup trop, et la reine n’a plus de place. Regardez donc avant de récolter.</translation>
    </message>
    <message>
        <source>Stores through the year: high when the honey is off, slowly down in the cold, steeply down while brood grows in spring.</source>
        <translation>Les provisions au fil de l’année&#xa0;: hautes après la récolte, en lente baisse pendant le froid, en forte baisse quand le couvain augmente au printemps.</translation>
    </message>
    <message>
        <source>When the honey is off</source>
        <translation>Après la récolte</translation>
    </message>
    <message>
        <source>Look at every %{comb}, some %1 days before feeding is best finished. One look tells stores, brood, bees and empty comb, and there is still time to feed.</source>
        <translation>Examinez chaque cadre, quelque %1 jours avant la fin conseillée du nourrissement. Une seule visite dit les provisions, le couvain, les abeilles et la place libre, et il reste du temps pour nourrir.</translation>
    </message>
    <message>
        <source>When the last feed is down</source>
        <translation>Après le dernier nourrissement</translation>
    </message>
    <message>
        <source>Weigh, and write it down. Every later weight is read against this one.</source>
        <translation>Pesez, et notez le poids. Chaque poids ultérieur se lit par rapport à celui-là.</translation>
    </message>
    <message>
        <source>Leave the %{combs} alone. Heft every two weeks; once there is brood again, weigh every two to three.</source>
        <translation>Laissez les cadres tranquilles. Soupesez toutes les deux semaines&#x202f;; dès qu’il y a de nouveau du couvain, pesez toutes les deux à trois semaines.</translation>
    </message>
    <message>
        <source>In spring</source>
        <translation>Au printemps</translation>
    </message>
    <message>
        <source>These weeks take most. Colonies that starve mostly do so now, with brood to keep warm, not in midwinter: go on hefting until nectar comes in every day.</source>
        <translation>Ces semaines sont celles qui coûtent le plus. Les colonies qui meurent de faim meurent surtout maintenant, avec du couvain à chauffer, et non au cœur de l’hiver&#xa0;: continuez à soupeser jusqu’à ce que le nectar rentre tous les jours.</translation>
    </message>
    <message>
        <source>No way of judging is exact, and each is wrong in its own way. The eye errs alike on every %{comb} of a visit; a scale does not know what the empty hive weighs. Two ways together tell more than one way twice. In two of three cases the truth lies within this:</source>
        <translation>Aucune manière d’estimer n’est exacte, et chacune se trompe à sa façon. L’œil se trompe de la même façon sur tous les cadres d’une visite&#x202f;; une balance ne sait pas ce que pèse la ruche vide. Deux manières réunies en disent plus que deux fois la même. Deux fois sur trois, la vérité est dans cette limite&#xa0;:</translation>
    </message>
    <message>
        <source>A closed hive tells most for least: two minutes, and no bee disturbed. Take stones, feeder and wet snow off first, or write down that they are on.</source>
        <translation>Une ruche fermée en dit le plus pour le moins de peine&#xa0;: deux minutes, et pas une abeille dérangée. Enlevez d’abord pierres, nourrisseur et neige mouillée, ou notez qu’ils sont dessus.</translation>
    </message>
    <message>
        <source>A hand under the edge of the floor lifts one side of the hive by a finger&apos;s breadth.</source>
        <translation>Une main sous le bord du plancher soulève un côté de la ruche de la largeur d’un doigt.</translation>
    </message>
    <message>
        <source>Heft</source>
        <translation>Soupeser</translation>
    </message>
    <message>
        <source>Hold the floor by its edge and lift that side by a finger&apos;s breadth, slowly, always the same side. A heavy hive feels nailed down, a fair one comes up with a pull, a light one by itself. Light is taken for %1 of what is wanted that day, fair for %2, heavy for %3: good for a warning, never for an amount.</source>
        <translation>Prenez le plancher par son bord et soulevez ce côté de la largeur d’un doigt, lentement, toujours le même côté. Une ruche lourde semble clouée, une moyenne vient en tirant, une légère toute seule. Légère compte pour %1 de ce qu’il faut ce jour-là, moyenne pour %2, lourde pour %3&#xa0;: bon pour une alerte, jamais pour une quantité.</translation>
    </message>
    <message>
        <source>One side on a scale</source>
        <translation>Un côté au peson</translation>
    </message>
    <message>
        <source>Hook a luggage scale to the middle of that edge, pull straight up until light shows under it, read while it hangs still. Twice the reading is roughly the whole, but stores seldom lie in the middle: at %1 it may be off by %2.</source>
        <translation>Accrochez un peson à bagages au milieu de ce bord, tirez droit vers le haut jusqu’à voir le jour dessous, lisez quand il ne bouge plus. Le double du relevé est à peu près le total, mais les provisions sont rarement au milieu&#xa0;: à %1, l’erreur peut être de %2.</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Les deux côtés</translation>
    </message>
    <message>
        <source>Lift the other side too and add the two. The sum is the whole hive, never half of it. A lifted side reads %1 low, which is put right for you: %2 and %3 make %4.</source>
        <translation>Soulevez aussi l’autre côté et additionnez. La somme est la ruche entière, jamais la moitié. Un côté soulevé indique %1 de trop peu, ce que le programme corrige&#xa0;: %2 et %3 font %4.</translation>
    </message>
    <message>
        <source>The same hive lifted at its left and at its right; the two readings are added.</source>
        <translation>La même ruche soulevée à gauche et à droite&#x202f;; les deux relevés s’additionnent.</translation>
    </message>
    <message>
        <source>Stores are what is left once the empty hive, bees, brood and bee bread are taken off. Not told, one box of %1 with drawn combs, floor and lids is taken to weigh %2, give or take %3. Weigh an empty one once, and every weighing tells more. Mind your back: lift with a straight one.</source>
        <translation>Les provisions sont ce qui reste une fois retirés la ruche vide, les abeilles, le couvain et le pain d’abeilles. Si rien n’est dit, un élément de %1 avec cadres bâtis, plancher, couvre-cadres et toit est compté pour %2, à %3 près. Pesez-en un vide une fois, et chaque pesée en dira plus. Ménagez votre dos&#xa0;: soulevez le dos droit.</translation>
    </message>
    <message>
        <source>Every opening costs warmth, and in the cold food. Ask first whether a weight would tell enough. If not, choose the day and know what you want to see.</source>
        <translation>Chaque ouverture coûte de la chaleur et, par temps froid, de la nourriture. Demandez-vous d’abord si un poids en dirait assez. Sinon, choisissez le jour et sachez ce que vous voulez voir.</translation>
    </message>
    <message>
        <source>From %1 a full look, from %2 half a minute, from %3 the lid alone; below that the hive stays closed.</source>
        <translation>À partir de %1 une visite complète, de %2 une demi-minute, de %3 le toit seul&#x202f;; en dessous, la ruche reste fermée.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Not below %1 for a full look or %2 for half a minute; in winter lift the lid alone, from %3. Not in wind or rain. Not in a dearth at noon, when robbers search: then go toward evening.</source>
        <translation>Pas sous %1 pour une visite complète, ni sous %2 pour une demi-minute&#x202f;; en hiver, le toit seul, à partir de %3. Pas par vent ni pluie. Pas à midi en période de disette, quand les pillardes cherchent&#xa0;: allez-y alors vers le soir.</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>Fumée</translation>
    </message>
    <message>
        <source>Three quiet puffs into the entrance, wait a minute, one under the lid. More drives the queen about.</source>
        <translation>Trois bouffées calmes à l’entrée, attendez une minute, une sous le couvre-cadres. Davantage affole la reine.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>Begin with an outer %{comb} and stand it beside, in the shade: now there is room. Go on %{comb} by %{comb}, lifting slowly so that no bee is rolled, and hang each back in its place, the same way round. Look for eggs, not for the queen. Cover what you are not looking at.</source>
        <translation>Commencez par un cadre de rive et posez-le à côté, à l’ombre&#xa0;: il y a maintenant de la place. Continuez cadre par cadre, en soulevant lentement pour n’écraser aucune abeille, et remettez chacun à sa place, dans le même sens. Cherchez des œufs, pas la reine. Couvrez ce que vous n’examinez pas.</translation>
    </message>
    <message>
        <source>Seen from above: first the outer %{comb} comes out, then one after the other moves into the gap.</source>
        <translation>Vu d’en haut&#xa0;: d’abord le cadre de rive sort, puis les autres, un à un, passent dans le vide.</translation>
    </message>
    <message>
        <source>Comb without a frame</source>
        <translation>Rayon sans cadre</translation>
    </message>
    <message>
        <source>Free its sides first, keep it upright, begin at the empty end, and leave it alone in heat.</source>
        <translation>Détachez d’abord ses côtés, tenez-le droit, commencez par le bout vide, et n’y touchez pas par forte chaleur.</translation>
    </message>
    <message>
        <source>Robbing</source>
        <translation>Pillage</translation>
    </message>
    <message>
        <source>Bees wrestle at the entrance, search the joints, and leave heavy. Close up, narrow the entrance to one bee, open no other hive that day.</source>
        <translation>Des abeilles luttent à l’entrée, fouillent les joints, et repartent lourdes. Refermez, réduisez l’entrée à une abeille, n’ouvrez aucune autre ruche ce jour-là.</translation>
    </message>
    <message>
        <source>In a yard</source>
        <translation>Dans un rucher</translation>
    </message>
    <message>
        <source>Healthy colonies first, doubtful ones last; wash hands and tools after these. With an allergy to stings never work alone.</source>
        <translation>D’abord les colonies saines, en dernier les douteuses&#x202f;; ensuite lavez mains et outils. Si vous êtes allergique aux piqûres, ne travaillez jamais sans quelqu’un près de vous.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>the book&apos;s file, such as windfall.larder</source>
        <translation>le fichier du carnet, par exemple windfall.larder</translation>
    </message>
    <message>
        <source>who writes (default: the user of the system)</source>
        <translation>qui écrit (à défaut&#xa0;: l’utilisateur du système)</translation>
    </message>
    <message>
        <source>another machine&apos;s sign that the book is open there is stale</source>
        <translation>la marque d’une autre machine disant que le carnet y est ouvert est périmée</translation>
    </message>
    <message>
        <source>its name, or its number where none has the name</source>
        <translation>son nom, ou son numéro si aucune n’a ce nom</translation>
    </message>
    <message>
        <source>day of the record, YYYY-MM-DD</source>
        <translation>jour de la note, YYYY-MM-DD</translation>
    </message>
    <message>
        <source>what else is to be remembered</source>
        <translation>ce qu’il faut retenir d’autre</translation>
    </message>
    <message>
        <source>it is right, unlikely as it may be</source>
        <translation>c’est juste, même si c’est peu vraisemblable</translation>
    </message>
    <message>
        <source>name of the yard</source>
        <translation>nom du rucher</translation>
    </message>
    <message>
        <source>climate station it is near</source>
        <translation>station climatique proche</translation>
    </message>
    <message>
        <source>town it is near: its coordinates, height and the nearest station are used</source>
        <translation>ville proche&#xa0;: ses coordonnées, son altitude et la station la plus proche sont utilisées</translation>
    </message>
    <message>
        <source>degrees, north positive; the nearest station is used</source>
        <translation>degrés, nord positif&#x202f;; la station la plus proche est utilisée</translation>
    </message>
    <message>
        <source>degrees, east positive</source>
        <translation>degrés, est positif</translation>
    </message>
    <message>
        <source>height in metres; shifts the station&apos;s temperatures</source>
        <translation>altitude en mètres&#x202f;; décale les températures de la station</translation>
    </message>
    <message>
        <source>nectar still to come in autumn: none, trickle, fair, strong</source>
        <translation>nectar encore à venir en automne&#xa0;: none, trickle, fair, strong</translation>
    </message>
    <message>
        <source>the hives can be reached in the middle of winter</source>
        <translation>les ruches sont accessibles au cœur de l’hiver</translation>
    </message>
    <message>
        <source>full combs (frames) of honey in store</source>
        <translation>cadres pleins de miel gardés de côté</translation>
    </message>
    <message>
        <source>metric, us, imperial (default: those of the country)</source>
        <translation>metric, us, imperial (à défaut&#xa0;: celles du pays)</translation>
    </message>
    <message>
        <source>the day asked for (default: today); later records do not count</source>
        <translation>le jour considéré (à défaut&#xa0;: aujourd’hui)&#x202f;; les notes plus tardives ne comptent pas</translation>
    </message>
    <message>
        <source>only this one</source>
        <translation>seulement celle-ci</translation>
    </message>
    <message>
        <source>the colony; it must be named</source>
        <translation>la colonie&#x202f;; il faut la nommer</translation>
    </message>
    <message>
        <source>leave out what past winters taught</source>
        <translation>ne pas tenir compte de ce qu’ont appris les hivers passés</translation>
    </message>
    <message>
        <source>comma, semicolon, tab</source>
        <translation>comma, semicolon, tab</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>comma ou point</translation>
    </message>
    <message>
        <source>column of the times, by name or number</source>
        <translation>colonne des heures, par nom ou numéro</translation>
    </message>
    <message>
        <source>column of the dates, where they stand apart</source>
        <translation>colonne des dates, si elles sont à part</translation>
    </message>
    <message>
        <source>column of the weights</source>
        <translation>colonne des poids</translation>
    </message>
    <message>
        <source>kg, g or lb</source>
        <translation>kg, g ou lb</translation>
    </message>
    <message>
        <source>dmy, mdy or ymd</source>
        <translation>dmy, mdy ou ymd</translation>
    </message>
    <message>
        <source>where the hive stands: America/Halifax, UTC, +02:00</source>
        <translation>où se trouve la ruche&#xa0;: America/Halifax, UTC, +02:00</translation>
    </message>
    <message>
        <source>what the logger&apos;s clock shows, where that is another zone</source>
        <translation>ce qu’indique l’horloge de l’enregistreur, si c’est un autre fuseau</translation>
    </message>
    <message>
        <source>begin a book with its first yard</source>
        <translation>commencer un carnet avec son premier rucher</translation>
    </message>
    <message>
        <source>a further yard</source>
        <translation>un rucher de plus</translation>
    </message>
    <message>
        <source>hive format, see winterlarder-cli hive-formats</source>
        <translation>modèle de ruche, voir winterlarder-cli hive-formats</translation>
    </message>
    <message>
        <source>boxes of that format (default 1)</source>
        <translation>éléments de ce format (à défaut&#xa0;: 1)</translation>
    </message>
    <message>
        <source>a super of this format on them; once for each</source>
        <translation>une hausse de ce format par-dessus&#x202f;; une fois pour chacune</translation>
    </message>
    <message>
        <source>a colony and its hive</source>
        <translation>une colonie et sa ruche</translation>
    </message>
    <message>
        <source>name of the colony</source>
        <translation>nom de la colonie</translation>
    </message>
    <message>
        <source>where it stands, if the book has several yards</source>
        <translation>où elle se trouve, si le carnet a plusieurs ruchers</translation>
    </message>
    <message>
        <source>timber (default), thick-timber, wrapped, polystyrene, straw</source>
        <translation>timber (à défaut), thick-timber, wrapped, polystyrene, straw</translation>
    </message>
    <message>
        <source>insulation above the combs</source>
        <translation>isolation au-dessus des cadres</translation>
    </message>
    <message>
        <source>weight of the hive with its empty combs</source>
        <translation>poids de la ruche avec ses cadres vides</translation>
    </message>
    <message>
        <source>whom the honey of the supers is for: people, bees</source>
        <translation>pour qui est le miel des hausses&#xa0;: people, bees</translation>
    </message>
    <message>
        <source>round, top, box, contact, frame, end</source>
        <translation>round, top, box, contact, frame, end</translation>
    </message>
    <message>
        <source>bees: dark, carniolan, buckfast, italian</source>
        <translation>abeilles&#xa0;: dark, carniolan, buckfast, italian</translation>
    </message>
    <message>
        <source>year the queen was raised</source>
        <translation>année de naissance de la reine</translation>
    </message>
    <message>
        <source>where the colony came from</source>
        <translation>d’où vient la colonie</translation>
    </message>
    <message>
        <source>day the colony began</source>
        <translation>jour où la colonie a commencé</translation>
    </message>
    <message>
        <source>the boxes a hive has from a day on; the rest of the hive stays as it was</source>
        <translation>les éléments d’une ruche à partir d’un jour&#x202f;; le reste de la ruche ne change pas</translation>
    </message>
    <message>
        <source>weight of the hive with these boxes and their empty combs</source>
        <translation>poids de la ruche avec ces éléments et leurs cadres vides</translation>
    </message>
    <message>
        <source>another name for a colony</source>
        <translation>un autre nom pour une colonie</translation>
    </message>
    <message>
        <source>its name, or #ID</source>
        <translation>son nom, ou #ID</translation>
    </message>
    <message>
        <source>the new name</source>
        <translation>le nouveau nom</translation>
    </message>
    <message>
        <source>what was seen in a hive</source>
        <translation>ce qui a été vu dans une ruche</translation>
    </message>
    <message>
        <source>the combs of a case file as a JSON file, or - for standard input</source>
        <translation>les cadres d’un fichier de cas en fichier JSON, ou - pour l’entrée standard</translation>
    </message>
    <message>
        <source>combs (frames) covered with bees on both sides</source>
        <translation>cadres occupés, couverts d’abeilles des deux côtés</translation>
    </message>
    <message>
        <source>gaps between combs (frames) filled with bees</source>
        <translation>ruelles remplies d’abeilles</translation>
    </message>
    <message>
        <source>bees, counted or weighed</source>
        <translation>abeilles, comptées ou pesées</translation>
    </message>
    <message>
        <source>cells with brood of all ages</source>
        <translation>cellules de couvain de tout âge</translation>
    </message>
    <message>
        <source>water in the honey, percent</source>
        <translation>eau dans le miel, pour cent</translation>
    </message>
    <message>
        <source>the queen was seen</source>
        <translation>la reine a été vue</translation>
    </message>
    <message>
        <source>eggs were seen</source>
        <translation>des œufs ont été vus</translation>
    </message>
    <message>
        <source>there are signs of disease</source>
        <translation>il y a des signes de maladie</translation>
    </message>
    <message>
        <source>mites were counted this season</source>
        <translation>les varroas ont été comptés cette saison</translation>
    </message>
    <message>
        <source>mites on 100 bees, as counted</source>
        <translation>varroas pour 100 abeilles, tels que comptés</translation>
    </message>
    <message>
        <source>mites were treated this season</source>
        <translation>un traitement contre varroa a été fait cette saison</translation>
    </message>
    <message>
        <source>food is beside or right above the bees</source>
        <translation>il y a de la nourriture à côté des abeilles ou juste au-dessus</translation>
    </message>
    <message>
        <source>sugar or medicine was in the hive while its honey was made</source>
        <translation>du sucre ou un médicament était dans la ruche pendant que son miel se faisait</translation>
    </message>
    <message>
        <source>blossom, honeydew, heather</source>
        <translation>blossom, honeydew, heather</translation>
    </message>
    <message>
        <source>a weight, a lift or a heft</source>
        <translation>une pesée, d’un ou de deux côtés, ou un soupesage</translation>
    </message>
    <message>
        <source>the whole hive on a scale</source>
        <translation>la ruche entière sur une balance</translation>
    </message>
    <message>
        <source>a side lifted, or both one after the other</source>
        <translation>un côté soulevé, ou les deux l’un après l’autre</translation>
    </message>
    <message>
        <source>light, fair or heavy</source>
        <translation>light, fair ou heavy</translation>
    </message>
    <message>
        <source>rain or snow lay on the hive</source>
        <translation>il y avait de la pluie ou de la neige sur la ruche</translation>
    </message>
    <message>
        <source>syrup, fondant or dry sugar that was given</source>
        <translation>sirop, candi ou sucre sec qui a été donné</translation>
    </message>
    <message>
        <source>sugar in it</source>
        <translation>sucre contenu</translation>
    </message>
    <message>
        <source>litres of syrup, with --ratio</source>
        <translation>litres de sirop, avec --ratio</translation>
    </message>
    <message>
        <source>sugar to water by mass</source>
        <translation>sucre et eau, en poids</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>syrup (default), fondant, dry-sugar</source>
        <translation>syrup (à défaut), fondant, dry-sugar</translation>
    </message>
    <message>
        <source>it came after the look of that day (default: where that look is written down already)</source>
        <translation>donné après la visite de ce jour (à défaut&#xa0;: si cette visite est déjà notée)</translation>
    </message>
    <message>
        <source>honey that was taken</source>
        <translation>miel qui a été récolté</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miel</translation>
    </message>
    <message>
        <source>combs (frames) taken</source>
        <translation>cadres récoltés</translation>
    </message>
    <message>
        <source>medicine given; its honey is then not for people</source>
        <translation>médicament donné&#x202f;; son miel n’est alors pas pour la récolte</translation>
    </message>
    <message>
        <source>what was given</source>
        <translation>ce qui a été donné</translation>
    </message>
    <message>
        <source>last day its honey is not for people, as the label says</source>
        <translation>dernier jour où son miel n’est pas pour la récolte, selon la notice</translation>
    </message>
    <message>
        <source>how a colony left: united, sold or dead</source>
        <translation>comment une colonie est partie&#xa0;: united, sold ou dead</translation>
    </message>
    <message>
        <source>united, sold or dead</source>
        <translation>united, sold ou dead</translation>
    </message>
    <message>
        <source>the colony it was united into</source>
        <translation>la colonie à laquelle elle a été réunie</translation>
    </message>
    <message>
        <source>what it died of</source>
        <translation>de quoi elle est morte</translation>
    </message>
    <message>
        <source>a glance in winter: bees flying, the cluster, stores, a dead-out</source>
        <translation>un coup d’œil en hiver&#xa0;: abeilles en vol, grappe, provisions, colonie morte</translation>
    </message>
    <message>
        <source>flying, cluster, stores or dead</source>
        <translation>flying, cluster, stores ou dead</translation>
    </message>
    <message>
        <source>gaps between combs the cluster fills</source>
        <translation>ruelles occupées par la grappe</translation>
    </message>
    <message>
        <source>sealed stores were in sight beside the bees</source>
        <translation>des provisions operculées étaient en vue à côté des abeilles</translation>
    </message>
    <message>
        <source>first comb with bees of the cluster, from the left, from 1</source>
        <translation>premier cadre avec des abeilles de la grappe, à partir de la gauche, à partir de 1</translation>
    </message>
    <message>
        <source>there were none</source>
        <translation>il n’y en avait pas</translation>
    </message>
    <message>
        <source>daily temperatures of a yard from a CSV table; they replace simulated days already past</source>
        <translation>températures journalières d’un rucher, d’une table CSV&#x202f;; elles remplacent les jours simulés déjà passés</translation>
    </message>
    <message>
        <source>CSV table, or - for standard input</source>
        <translation>table CSV, ou - pour l’entrée standard</translation>
    </message>
    <message>
        <source>whose, if the book has several yards</source>
        <translation>de quel rucher, si le carnet en a plusieurs</translation>
    </message>
    <message>
        <source>date=D,mean=T or date=D,min=TMIN,max=TMAX</source>
        <translation>date=D,mean=T ou date=D,min=TMIN,max=TMAX</translation>
    </message>
    <message>
        <source>c (default) or f</source>
        <translation>c (à défaut) ou f</translation>
    </message>
    <message>
        <source>days still to come are right</source>
        <translation>les jours encore à venir sont justes</translation>
    </message>
    <message>
        <source>a few weighings and every feed, harvest and change of equipment out of a scale&apos;s log</source>
        <translation>quelques pesées et chaque nourrissement, récolte et changement de matériel, tirés des relevés d’une balance</translation>
    </message>
    <message>
        <source>CSV table of times and weights, or - for standard input</source>
        <translation>table CSV d’heures et de poids, ou - pour l’entrée standard</translation>
    </message>
    <message>
        <source>of the syrup fed meanwhile, sugar to water by mass</source>
        <translation>du sirop donné entre-temps, sucre et eau, en poids</translation>
    </message>
    <message>
        <source>only say what would be added, and what is asked about it</source>
        <translation>dire seulement ce qui serait ajouté, et ce qui est demandé à ce sujet</translation>
    </message>
    <message>
        <source>unlikely records are right</source>
        <translation>les notes peu vraisemblables sont justes</translation>
    </message>
    <message>
        <source>the answer for every living colony, or one</source>
        <translation>la réponse pour chaque colonie vivante, ou pour une seule</translation>
    </message>
    <message>
        <source>plan yards without moving combs between hives</source>
        <translation>faire le plan des ruchers sans déplacer de cadres entre ruches</translation>
    </message>
    <message>
        <source>a colony as a case file for advise</source>
        <translation>une colonie en fichier de cas pour advise</translation>
    </message>
    <message>
        <source>act on the advice of a colony: freeze it in the book, plan its visits</source>
        <translation>suivre le conseil d’une colonie&#xa0;: le fixer dans le carnet, prévoir ses passages</translation>
    </message>
    <message>
        <source>as its yard is planned without moving combs between hives</source>
        <translation>comme si le plan de son rucher se faisait sans déplacer de cadres entre ruches</translation>
    </message>
    <message>
        <source>how the winter of every living colony goes: forecast then and now, what to do</source>
        <translation>comment va l’hiver de chaque colonie vivante&#xa0;: prévision d’alors et d’aujourd’hui, ce qu’il y a à faire</translation>
    </message>
    <message>
        <source>every day in the JSON, not every seventh</source>
        <translation>chaque jour dans le JSON, et non un sur sept</translation>
    </message>
    <message>
        <source>how a winter ended</source>
        <translation>comment un hiver s’est terminé</translation>
    </message>
    <message>
        <source>the colony lives</source>
        <translation>la colonie vit</translation>
    </message>
    <message>
        <source>it died</source>
        <translation>elle est morte</translation>
    </message>
    <message>
        <source>combs its bees cover</source>
        <translation>cadres que ses abeilles occupent</translation>
    </message>
    <message>
        <source>stores left</source>
        <translation>provisions restantes</translation>
    </message>
    <message>
        <source>food was left within reach of the dead bees</source>
        <translation>il restait de la nourriture à portée des abeilles mortes</translation>
    </message>
    <message>
        <source>dead bees were head down in the cells</source>
        <translation>des abeilles mortes avaient la tête dans les cellules</translation>
    </message>
    <message>
        <source>many mites lay on the floor</source>
        <translation>il y avait beaucoup de varroas sur le plancher</translation>
    </message>
    <message>
        <source>brood in the dead hive: none, solid, patchy</source>
        <translation>couvain dans la ruche morte&#xa0;: none, solid, patchy</translation>
    </message>
    <message>
        <source>the queen was found</source>
        <translation>la reine a été retrouvée</translation>
    </message>
    <message>
        <source>what past winters taught, and how good their forecasts were</source>
        <translation>ce qu’ont appris les hivers passés, et ce que valaient leurs prévisions</translation>
    </message>
    <message>
        <source>what is due as an iCalendar file: visits, and what answers ask</source>
        <translation>ce qu’il y a à faire en fichier iCalendar&#xa0;: passages, et ce que demandent les réponses</translation>
    </message>
    <message>
        <source>as yards are planned without moving combs between hives</source>
        <translation>comme si le plan des ruchers se faisait sans déplacer de cadres entre ruches</translation>
    </message>
    <message>
        <source>every step of the book, newest first</source>
        <translation>chaque étape du carnet, de la plus récente à la plus ancienne</translation>
    </message>
    <message>
        <source>at most so many steps (default 100)</source>
        <translation>au plus tant d’étapes (à défaut&#xa0;: 100)</translation>
    </message>
    <message>
        <source>what the book holds</source>
        <translation>ce que contient le carnet</translation>
    </message>
    <message>
        <source>look for damage; 0 = sound</source>
        <translation>chercher des dommages&#x202f;; 0 = intact</translation>
    </message>
    <message>
        <source>take the last step back</source>
        <translation>annuler la dernière étape</translation>
    </message>
    <message>
        <source>do again the step undone last</source>
        <translation>rétablir la dernière étape annulée</translation>
    </message>
    <message>
        <source>the whole book as JSON (--json), or one table as CSV</source>
        <translation>le carnet entier en JSON (--json), ou une table en CSV</translation>
    </message>
    <message>
        <source>such as looks, look_combs, weighings</source>
        <translation>par exemple looks, look_combs, weighings</translation>
    </message>
    <message>
        <source>a JSON document in place of all there is, or CSV rows into one table; undoable</source>
        <translation>un document JSON à la place de tout ce qu’il y a, ou des lignes CSV dans une table&#x202f;; peut être annulé</translation>
    </message>
    <message>
        <source>document or table, or - for standard input</source>
        <translation>document ou table, ou - pour l’entrée standard</translation>
    </message>
    <message>
        <source>the table of a CSV file (default: its name)</source>
        <translation>la table d’un fichier CSV (à défaut&#xa0;: son nom)</translation>
    </message>
    <message>
        <source>only say what a table would add, and what is asked about it</source>
        <translation>dire seulement ce qu’une table ajouterait, et ce qui est demandé à ce sujet</translation>
    </message>
    <message>
        <source>unlikely entries are right</source>
        <translation>les notes peu vraisemblables sont justes</translation>
    </message>
    <message>
        <source>a compact copy in one file</source>
        <translation>une copie compacte en un seul fichier</translation>
    </message>
    <message>
        <source>file to write; never one that is there</source>
        <translation>fichier à écrire&#x202f;; jamais un qui existe déjà</translation>
    </message>
    <message>
        <source>the backups beside the book, newest first</source>
        <translation>les copies de sauvegarde à côté du carnet, de la plus récente à la plus ancienne</translation>
    </message>
    <message>
        <source>make one now</source>
        <translation>en faire une maintenant</translation>
    </message>
    <message>
        <source>the book as it was in a backup; undoable</source>
        <translation>le carnet tel qu’il était dans une copie de sauvegarde&#x202f;; peut être annulé</translation>
    </message>
    <message>
        <source>file, or its name as backups lists it</source>
        <translation>fichier, ou son nom comme backups l’énumère</translation>
    </message>
    <message>
        <source>what can be read of a damaged book, in a new one</source>
        <translation>ce qui peut être lu d’un carnet endommagé, dans un nouveau</translation>
    </message>
    <message>
        <source>the new book&apos;s file</source>
        <translation>le fichier du nouveau carnet</translation>
    </message>
    <message>
        <source>Usage</source>
        <comment>heading of the help</comment>
        <translation>Usage</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <comment>in the usage line: winterlarder-cli [OPTIONS] SUBCOMMAND</comment>
        <translation>OPTIONS</translation>
    </message>
    <message>
        <source>SUBCOMMAND</source>
        <comment>in the usage line</comment>
        <translation>COMMANDE</translation>
    </message>
    <message>
        <source>Positionals</source>
        <comment>heading: arguments told by their place</comment>
        <translation>Arguments</translation>
    </message>
    <message>
        <source>REQUIRED</source>
        <comment>an option that must be given</comment>
        <translation>OBLIGATOIRE</translation>
    </message>
    <message>
        <source>Winter stores of honey bee colonies: take honey, leave it, or feed.</source>
        <translation>Provisions d’hiver des colonies d’abeilles&#xa0;: récolter, laisser ou nourrir.</translation>
    </message>
    <message>
        <source>Print this help message and exit</source>
        <translation>Afficher cette aide et quitter</translation>
    </message>
    <message>
        <source>Display program version information and exit</source>
        <translation>Afficher la version du programme et quitter</translation>
    </message>
    <message>
        <source>Exit status: 0 done, 2 input or arguments are wrong, 3 a file cannot be read or written, 70 an error of the program.
Cases are JSON files; &quot;-&quot; reads JSON Lines from standard input. See winterlarder-cli(1).</source>
        <translation>Code de sortie&#xa0;: 0 fait, 2 entrée ou arguments incorrects, 3 fichier impossible à lire ou à écrire, 70 erreur du programme.
Les cas sont des fichiers JSON&#x202f;; «&#xa0;-&#xa0;» lit du JSON Lines sur l’entrée standard. Voir winterlarder-cli(1).</translation>
    </message>
    <message>
        <source>print one JSON document (JSON Lines for a batch)</source>
        <translation>afficher un document JSON (JSON Lines pour un lot)</translation>
    </message>
    <message>
        <source>simulated winters (default 2500)</source>
        <translation>hivers simulés (à défaut&#xa0;: 2500)</translation>
    </message>
    <message>
        <source>seed of the random numbers (default 1)</source>
        <translation>graine du tirage au hasard (à défaut&#xa0;: 1)</translation>
    </message>
    <message>
        <source>threads at work (default: all cores); changes no digit</source>
        <translation>fils d’exécution (à défaut&#xa0;: tous les cœurs)&#x202f;; ne change aucun chiffre</translation>
    </message>
    <message>
        <source>language of what is said, as en (default: the system&apos;s); keys of JSON and words of arguments stay as they are</source>
        <translation>langue des textes, par exemple en (à défaut&#xa0;: celle du système)&#x202f;; clés JSON et mots des arguments restent inchangés</translation>
    </message>
    <message>
        <source>folder of the shipped data</source>
        <translation>dossier des données fournies</translation>
    </message>
    <message>
        <source>metric, us or imperial (default: %1)</source>
        <comment>the first three are typed as they stand</comment>
        <translation>metric, us ou imperial (à défaut&#xa0;: %1)</translation>
    </message>
    <message>
        <source>stores, need, verdict, feeding, harvest, cautions of one or several colonies</source>
        <translation>provisions, besoin, conclusion, nourrissement, récolte, précautions d’une ou de plusieurs colonies</translation>
    </message>
    <message>
        <source>the case&apos;s, else those of its place</source>
        <translation>celles du cas, sinon celles de son lieu</translation>
    </message>
    <message>
        <source>case files, or - for JSON Lines on standard input</source>
        <translation>fichiers de cas, ou - pour du JSON Lines sur l’entrée standard</translation>
    </message>
    <message>
        <source>what a colony eats between two days, by month and cause</source>
        <translation>ce qu’une colonie consomme entre deux jours, par mois et par cause</translation>
    </message>
    <message>
        <source>case file, or - for standard input</source>
        <translation>fichier de cas, ou - pour l’entrée standard</translation>
    </message>
    <message>
        <source>first day, YYYY-MM-DD, not before the look</source>
        <translation>premier jour, YYYY-MM-DD, pas avant la visite</translation>
    </message>
    <message>
        <source>last day, counted in</source>
        <translation>dernier jour, compris</translation>
    </message>
    <message>
        <source>day by day as well</source>
        <translation>aussi jour par jour</translation>
    </message>
    <message>
        <source>one noiseless winter with median constants</source>
        <translation>un seul hiver sans hasard, avec les constantes médianes</translation>
    </message>
    <message>
        <source>power and food of a colony on one day</source>
        <translation>puissance et consommation d’une colonie un jour donné</translation>
    </message>
    <message>
        <source>adult bees</source>
        <translation>abeilles adultes</translation>
    </message>
    <message>
        <source>mean of the day, degC</source>
        <translation>moyenne du jour, degC</translation>
    </message>
    <message>
        <source>cells with brood of all ages (default 0)</source>
        <translation>cellules de couvain de tout âge (à défaut&#xa0;: 0)</translation>
    </message>
    <message>
        <source>dark, carniolan (default), buckfast, italian</source>
        <translation>dark, carniolan (à défaut), buckfast, italian</translation>
    </message>
    <message>
        <source>no swing between day and night</source>
        <translation>sans écart entre jour et nuit</translation>
    </message>
    <message>
        <source>stores and bees of a colony today, and what each observation says</source>
        <translation>provisions et abeilles d’une colonie aujourd’hui, et ce qu’en dit chaque observation</translation>
    </message>
    <message>
        <source>sugar, water and litres of a syrup, and the stores it becomes</source>
        <translation>sucre, eau et litres d’un sirop, et les provisions qu’il devient</translation>
    </message>
    <message>
        <source>kilograms of sugar</source>
        <translation>kilogrammes de sucre</translation>
    </message>
    <message>
        <source>kilograms of stores wanted</source>
        <translation>kilogrammes de provisions voulus</translation>
    </message>
    <message>
        <source>sugar to water, decimals allowed</source>
        <translation>sucre et eau, décimales permises</translation>
    </message>
    <message>
        <source>what the ratio counts: mass (default), volume, kg-l (kg to litres)</source>
        <translation>ce que compte la proportion&#xa0;: mass (à défaut), volume, kg-l (kg pour litres)</translation>
    </message>
    <message>
        <source>places of the world by name, each with its weather station and height</source>
        <translation>lieux du monde par leur nom, chacun avec sa station météo et son altitude</translation>
    </message>
    <message>
        <source>name or its beginning, then state or country: wolfville, halifax canada, springfield il</source>
        <translation>nom ou son début, puis État ou pays&#xa0;: wolfville, halifax canada, springfield il</translation>
    </message>
    <message>
        <source>how many at most (default 10)</source>
        <translation>combien au plus (à défaut&#xa0;: 10)</translation>
    </message>
    <message>
        <source>the shipped climate stations</source>
        <translation>les stations climatiques fournies</translation>
    </message>
    <message>
        <source>nearest first, to LAT,LON or to a place by its name</source>
        <translation>la plus proche d’abord, de LAT,LON ou d’un lieu par son nom</translation>
    </message>
    <message>
        <source>only those whose id, place or country holds the text</source>
        <translation>seulement celles dont l’identifiant, le lieu ou le pays contient le texte</translation>
    </message>
    <message>
        <source>cold-season curve and the dates derived from it</source>
        <translation>courbe de la saison froide et dates qui en sont déduites</translation>
    </message>
    <message>
        <source>id of a shipped station, or the name of a place</source>
        <translation>identifiant d’une station fournie, ou nom d’un lieu</translation>
    </message>
    <message>
        <source>the place and dates of a case instead</source>
        <translation>à la place, le lieu et les dates d’un cas</translation>
    </message>
    <message>
        <source>the winter whose autumn lies in this year (default 2026, or the case&apos;s)</source>
        <translation>l’hiver dont l’automne est dans cette année (à défaut&#xa0;: 2026, ou celui du cas)</translation>
    </message>
    <message>
        <source>every day of the curve</source>
        <translation>chaque jour de la courbe</translation>
    </message>
    <message>
        <source>a climate of your own from a table of daily temperatures</source>
        <translation>votre propre climat, d’une table de températures journalières</translation>
    </message>
    <message>
        <source>degrees, north positive</source>
        <translation>degrés, nord positif</translation>
    </message>
    <message>
        <source>daily weights, months and steps from the log of a hive scale</source>
        <translation>poids journaliers, mois et sauts de poids, d’après les relevés d’une balance</translation>
    </message>
    <message>
        <source>every day&apos;s weight as well (--json always has them)</source>
        <translation>aussi le poids de chaque jour (--json les a toujours)</translation>
    </message>
    <message>
        <source>the shipped hive formats with comb area and honey of a full comb</source>
        <translation>les modèles de ruche fournis, avec la surface d’un cadre et le miel d’un cadre plein</translation>
    </message>
    <message>
        <source>keys of a case file and columns of a book&apos;s tables, and what they may be</source>
        <translation>clés d’un fichier de cas et colonnes des tables d’un carnet, et leurs valeurs permises</translation>
    </message>
    <message>
        <source>only this key, or all of a group: hive, bees, combs, weighings, ...</source>
        <translation>seulement cette clé, ou toutes celles d’un groupe&#xa0;: hive, bees, combs, weighings, ...</translation>
    </message>
    <message>
        <source>where the shipped numbers come from</source>
        <translation>d’où viennent les nombres fournis</translation>
    </message>
    <message>
        <source>only this source</source>
        <translation>seulement cette source</translation>
    </message>
    <message>
        <source>how stores, bees and brood are judged, page by page</source>
        <translation>comment évaluer provisions, abeilles et couvain, page par page</translation>
    </message>
    <message>
        <source>only this page; without one the contents</source>
        <translation>seulement cette page&#x202f;; sans elle, le sommaire</translation>
    </message>
    <message>
        <source>numbers of this hive only</source>
        <translation>nombres de cette ruche seulement</translation>
    </message>
    <message>
        <source>a keeper&apos;s book: years of yards, colonies and records in one file</source>
        <translation>le carnet d’un apiculteur&#xa0;: des années de ruchers, de colonies et de notes en un seul fichier</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <comment>heading of the help</comment>
        <translation>Commandes</translation>
    </message>
    <message>
        <source>winterlarder-cli --help tells how</source>
        <translation>winterlarder-cli --help dit comment faire</translation>
    </message>
</context>
<context>
    <name>Learned</name>
    <message>
        <source>Nothing has been learned yet. A winter counts once it is over: what was weighed and how it went is used from July on (January in the south).</source>
        <translation>Rien n’a encore été appris. Un hiver compte une fois fini&#xa0;: ce qui a été pesé et comment il s’est passé servent à partir de juillet (de janvier dans le sud).</translation>
    </message>
    <message>
        <source>Learned from one winter of a colony</source>
        <translation>Appris d’un hiver d’une colonie</translation>
    </message>
    <message numerus="yes">
        <source>Learned from %n winters of colonies</source>
        <translation>
            <numerusform>Appris de %n hiver de colonie</numerusform>
            <numerusform>Appris de %n hivers de colonies</numerusform>
        </translation>
    </message>
    <message>
        <source>They eat %1 % more than the model says (give or take %2 %).</source>
        <translation>Elles consomment %1&#xa0;% de plus que ne le dit le modèle (à %2&#xa0;% près).</translation>
    </message>
    <message>
        <source>They eat %1 % less than the model says (give or take %2 %).</source>
        <translation>Elles consomment %1&#xa0;% de moins que ne le dit le modèle (à %2&#xa0;% près).</translation>
    </message>
    <message>
        <source>They eat as the model says (give or take %1 %).</source>
        <translation>Elles consomment ce que dit le modèle (à %1&#xa0;% près).</translation>
    </message>
    <message>
        <source>They lose bees %1 % faster than the model says (give or take %2 %).</source>
        <translation>Elles perdent des abeilles %1&#xa0;% plus vite que ne le dit le modèle (à %2&#xa0;% près).</translation>
    </message>
    <message>
        <source>They lose bees %1 % more slowly than the model says (give or take %2 %).</source>
        <translation>Elles perdent des abeilles %1&#xa0;% plus lentement que ne le dit le modèle (à %2&#xa0;% près).</translation>
    </message>
    <message>
        <source>They lose bees as the model says (give or take %1 %).</source>
        <translation>Elles perdent des abeilles comme le dit le modèle (à %1&#xa0;% près).</translation>
    </message>
    <message>
        <source>So much holds of all the bees of this keeper. Each colony differs from them by what its own winters and its yard&apos;s told; all of it together, times what the model says, is what its next answer counts with:</source>
        <translation>Cela vaut pour toutes les abeilles de cet apiculteur. Chaque colonie s’en écarte selon ses propres hivers et ceux de son rucher&#x202f;; tout cela réuni, multiplié par ce que dit le modèle, sert à sa prochaine réponse&#xa0;:</translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days later than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>Les miellées de printemps commencent %1 jours plus tard que ne le dit le climat (à %2 près&#x202f;; %n printemps).</numerusform>
            <numerusform>Les miellées de printemps commencent %1 jours plus tard que ne le dit le climat (à %2 près&#x202f;; %n printemps).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>Les miellées de printemps commencent %1 jours plus tôt que ne le dit le climat (à %2 près&#x202f;; %n printemps).</numerusform>
            <numerusform>Les miellées de printemps commencent %1 jours plus tôt que ne le dit le climat (à %2 près&#x202f;; %n printemps).</numerusform>
        </translation>
    </message>
    <message>
        <source>Spring forage starts %1 days later than the climate says (give or take %2; one spring).</source>
        <translation>Les miellées de printemps commencent %1 jours plus tard que ne le dit le climat (à %2 près&#x202f;; un seul printemps).</translation>
    </message>
    <message>
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; one spring).</source>
        <translation>Les miellées de printemps commencent %1 jours plus tôt que ne le dit le climat (à %2 près&#x202f;; un seul printemps).</translation>
    </message>
    <message>
        <source>the winter of %1 of %2: its records fit no winter, so nothing was learned from it</source>
        <translation>l’hiver commencé en %1 de la colonie %2&#xa0;: ses notes ne concordent avec aucun hiver, rien n’en a donc été appris</translation>
    </message>
    <message>
        <source>One forecast can be compared with what happened: %1 lay within its band of nine in ten. Its score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>Une prévision peut être comparée avec ce qui est arrivé (dans sa bande de neuf sur dix&#xa0;: %1). Son écart est de %2, celui du chiffre des manuels de la région de %3&#x202f;; plus l’écart est petit, mieux c’est.</translation>
    </message>
    <message numerus="yes">
        <source>%n forecasts can be compared with what happened: %1 lay within their bands of nine in ten. Their mean score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>
            <numerusform>%n prévision peut être comparée avec ce qui est arrivé (dans sa bande de neuf sur dix&#xa0;: %1). Son écart est de %2, celui du chiffre des manuels de la région de %3&#x202f;; plus l’écart est petit, mieux c’est.</numerusform>
            <numerusform>%n prévisions peuvent être comparées avec ce qui est arrivé (dans leur bande de neuf sur dix&#xa0;: %1). Leur écart moyen est de %2, celui du chiffre des manuels de la région de %3&#x202f;; plus l’écart est petit, mieux c’est.</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too few to judge by: it takes five or more.</source>
        <translation>C’est trop peu pour juger&#xa0;: il en faut cinq ou plus.</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>{} is not a number of an entry</source>
        <translation>{} n’est pas un numéro de note</translation>
    </message>
    <message>
        <source>a whole number from 1 to {}</source>
        <translation>un nombre entier de 1 à {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is missing</source>
        <translation>«&#xa0;{}&#xa0;» manque</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is {}</source>
        <translation>«&#xa0;{}&#xa0;» est {}</translation>
    </message>
    <message>
        <source>{} has {} members</source>
        <translation>{} a {} membres</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>au plus {}</translation>
    </message>
    <message>
        <source>{} boxes are listed</source>
        <translation>{} éléments sont énumérés</translation>
    </message>
    <message>
        <source>from 1 to {} boxes</source>
        <translation>de 1 à {} éléments</translation>
    </message>
    <message>
        <source>a list of combs, or {&quot;full_of_stores&quot;: ..., &quot;half&quot;: ..., &quot;capped_share&quot;: ...}</source>
        <translation>une liste de cadres, ou {&quot;full_of_stores&quot;: ..., &quot;half&quot;: ..., &quot;capped_share&quot;: ...}</translation>
    </message>
    <message>
        <source>&quot;case&quot; is {}</source>
        <translation>&quot;case&quot; est {}</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} ou {}</translation>
    </message>
    <message>
        <source>name the nearest town, or give latitude and longitude</source>
        <translation>nommez la ville la plus proche, ou indiquez latitude et longitude</translation>
    </message>
    <message>
        <source>did you mean {}? Else name the nearest town, or give latitude and longitude</source>
        <translation>vouliez-vous dire {}&#x202f;? Sinon, nommez la ville la plus proche, ou indiquez latitude et longitude</translation>
    </message>
    <message>
        <source>no place {}</source>
        <translation>aucun lieu {}</translation>
    </message>
</context>
<context>
    <name>Photograph</name>
    <message>
        <source>top left corner</source>
        <translation>coin en haut à gauche</translation>
    </message>
    <message>
        <source>top right corner</source>
        <translation>coin en haut à droite</translation>
    </message>
    <message>
        <source>bottom right corner</source>
        <translation>coin en bas à droite</translation>
    </message>
    <message>
        <source>bottom left corner</source>
        <translation>coin en bas à gauche</translation>
    </message>
    <message>
        <source>left end of the comb at the bar</source>
        <translation>bout gauche du rayon à la barrette</translation>
    </message>
    <message>
        <source>right end of the comb at the bar</source>
        <translation>bout droit du rayon à la barrette</translation>
    </message>
    <message>
        <source>somewhere low on the left side</source>
        <translation>un point vers le bas du côté gauche</translation>
    </message>
    <message>
        <source>somewhere low on the right side</source>
        <translation>un point vers le bas du côté droit</translation>
    </message>
    <message>
        <source>lowest point</source>
        <translation>point le plus bas</translation>
    </message>
    <message>
        <source>%1 is no picture that can be read (%2). Choose a JPEG or PNG file.</source>
        <translation>%1 n’est pas une image lisible (%2). Choisissez un fichier JPEG ou PNG.</translation>
    </message>
</context>
<context>
    <name>Places</name>
    <message>
        <source>under 1 km</source>
        <translation>moins de 1&#xa0;km</translation>
    </message>
    <message>
        <source>no weather station is near enough: the nearest, %1, is %2 away. Give monthly temperatures of your own</source>
        <translation>aucune station météo n’est assez proche&#xa0;: la plus proche, %1, est à %2. Donnez vos propres températures mensuelles</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, at its height</source>
        <translation>météo de la station %1, à %2, à son altitude</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, about as high</source>
        <translation>météo de la station %1, à %2, à peu près à la même altitude</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, %3 higher: here it is %4 warmer</source>
        <translation>météo de la station %1, à %2, %3 plus haut&#xa0;: ici, il fait %4 de plus</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, %3 lower: here it is %4 colder</source>
        <translation>météo de la station %1, à %2, %3 plus bas&#xa0;: ici, il fait %4 de moins</translation>
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
        <translation>provisions, %1</translation>
    </message>
    <message>
        <source>eaten, %1 a day</source>
        <translation>consommation, %1 par jour</translation>
    </message>
    <message>
        <source>air, %1</source>
        <translation>air, %1</translation>
    </message>
    <message>
        <source>as forage starts,
1 dot = 2 in 100</source>
        <translation>au début des miellées,
1 point = 2 sur 100</translation>
    </message>
    <message>
        <source>adult bees</source>
        <translation>abeilles adultes</translation>
    </message>
    <message>
        <source>warmth for brood</source>
        <translation>chaleur du couvain</translation>
    </message>
    <message>
        <source>food for brood</source>
        <translation>nourriture du couvain</translation>
    </message>
    <message>
        <source>air, mean of the day</source>
        <translation>air, moyenne du jour</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>reserve
%1</source>
        <translation>marge
%1</translation>
    </message>
</context>
<context>
    <name>RecordRows</name>
    <message>
        <source>bees on %1 %{combs}</source>
        <translation>abeilles sur %1 cadres</translation>
    </message>
    <message>
        <source>%1 seams of bees</source>
        <translation>%1 ruelles d’abeilles</translation>
    </message>
    <message>
        <source>%1 bees</source>
        <translation>%1 abeilles</translation>
    </message>
    <message>
        <source>one %{comb} looked at</source>
        <translation>un cadre examiné</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} looked at</source>
        <translation>
            <numerusform>%n cadre examiné</numerusform>
            <numerusform>%n cadres examinés</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %{combs} full, %2 half full, by count</source>
        <translation>%1 cadres pleins, %2 à moitié pleins, comptés</translation>
    </message>
    <message>
        <source>queen seen</source>
        <translation>reine vue</translation>
    </message>
    <message>
        <source>queen not seen</source>
        <translation>reine non vue</translation>
    </message>
    <message>
        <source>eggs</source>
        <translation>œufs</translation>
    </message>
    <message>
        <source>no eggs</source>
        <translation>pas d’œufs</translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>couvain operculé</translation>
    </message>
    <message>
        <source>no sealed brood</source>
        <translation>pas de couvain operculé</translation>
    </message>
    <message>
        <source>pollen coming in</source>
        <translation>rentrées de pollen</translation>
    </message>
    <message>
        <source>no pollen coming in</source>
        <translation>pas de rentrées de pollen</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>signes de maladie</translation>
    </message>
    <message>
        <source>; </source>
        <translation>&#x202f;; </translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1&#x202f;; %2</translation>
    </message>
    <message>
        <source>on a scale: %1</source>
        <translation>sur une balance&#xa0;: %1</translation>
    </message>
    <message>
        <source>hefted: %1</source>
        <translation>soupesée&#xa0;: %1</translation>
    </message>
    <message>
        <source>both sides lifted: %1 and %2</source>
        <translation>pesée des deux côtés&#xa0;: %1 et %2</translation>
    </message>
    <message>
        <source>one side lifted: %1</source>
        <translation>pesée d’un seul côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 of sugar</source>
        <translation>%1 de sucre</translation>
    </message>
    <message>
        <source>%1, %2 by weight</source>
        <translation>%1, %2 en poids</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 on one %{comb}</source>
        <translation>%1 sur un cadre</translation>
    </message>
    <message numerus="yes">
        <source>%1 on %n %{combs}</source>
        <translation>
            <numerusform>%1 sur %n cadre</numerusform>
            <numerusform>%1 sur %n cadres</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, jusqu’au %2</translation>
    </message>
    <message>
        <source>%1, not ended yet</source>
        <translation>%1, pas encore terminé</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>one box, %1</source>
        <translation>un élément, %1</translation>
    </message>
    <message numerus="yes">
        <source>%n boxes, %1</source>
        <translation>
            <numerusform>%n élément, %1</numerusform>
            <numerusform>%n éléments, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>to another yard</source>
        <translation>vers un autre rucher</translation>
    </message>
    <message numerus="yes">
        <source>%1; from %n simulated winters</source>
        <translation>
            <numerusform>%1&#x202f;; sur %n hiver simulé</numerusform>
            <numerusform>%1&#x202f;; sur %n hivers simulés</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>alive</source>
        <translation>vivante</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>morte</translation>
    </message>
    <message>
        <source>%1 of stores left</source>
        <translation>%1 de provisions restantes</translation>
    </message>
    <message>
        <source>food within reach</source>
        <translation>nourriture à portée</translation>
    </message>
    <message>
        <source>no food within reach</source>
        <translation>pas de nourriture à portée</translation>
    </message>
    <message>
        <source>heads in the cells</source>
        <translation>têtes dans les cellules</translation>
    </message>
    <message>
        <source>no heads in the cells</source>
        <translation>pas de têtes dans les cellules</translation>
    </message>
    <message>
        <source>many mites</source>
        <translation>beaucoup de varroas</translation>
    </message>
    <message>
        <source>few mites</source>
        <translation>peu de varroas</translation>
    </message>
    <message>
        <source>brood: %1</source>
        <translation>couvain&#xa0;: %1</translation>
    </message>
    <message>
        <source>queen found</source>
        <translation>reine retrouvée</translation>
    </message>
    <message>
        <source>no queen found</source>
        <translation>reine non retrouvée</translation>
    </message>
    <message>
        <source>stores in sight</source>
        <translation>provisions en vue</translation>
    </message>
    <message>
        <source>no stores in sight</source>
        <translation>pas de provisions en vue</translation>
    </message>
    <message>
        <source>note</source>
        <translation>remarque</translation>
    </message>
</context>
<context>
    <name>Remark</name>
    <message>
        <source>Robbers and %{wasps}: work in the evening, feed inside the hive only, spill nothing, and narrow the entrance: %{=6 mm} high and about %{=7 cm} to %{=12 cm} wide, for a weak colony one bee&apos;s width.</source>
        <translation>Pillardes et guêpes&#xa0;: travaillez le soir, nourrissez uniquement dans la ruche, ne renversez rien et réduisez l’entrée à %{=6&#xa0;mm} de haut sur %{=7 cm} à %{=12 cm} de large environ, à la largeur d’une abeille pour une colonie faible.</translation>
    </message>
    <message>
        <source>Feed inside the hive only: feed in the open brings robbers and carries disease.</source>
        <translation>Nourrissez uniquement dans la ruche&#xa0;: la nourriture laissée dehors attire les pillardes et transmet les maladies.</translation>
    </message>
    <message>
        <source>Foulbrood has to be reported: close the hive, narrow the entrance, wash hands and tools, and open no other hive before.</source>
        <translation>La loque est à déclaration obligatoire&#xa0;: fermez la ruche, réduisez l’entrée, lavez mains et outils, et n’ouvrez aucune autre ruche avant.</translation>
    </message>
    <message>
        <source>Fondant has to touch the bees, under a cover that keeps them warm; the lid is off for half a minute, no %{comb} is drawn.</source>
        <translation>Le candi doit toucher les abeilles, sous une couverture qui les garde au chaud&#x202f;; le toit n’est enlevé qu’une demi-minute, aucun cadre n’est sorti.</translation>
    </message>
    <message>
        <source>So near to spring forage what is fed may end up in honey: no super goes on before it is eaten.</source>
        <translation>Si près des miellées de printemps, ce qui est donné peut finir dans le miel&#xa0;: ne posez pas de hausse avant que tout soit consommé.</translation>
    </message>
    <message>
        <source>The refractometer shows %{water:1} % water. Honey keeps with at most 18 %, measured on several %{combs}; food law allows 20 %, heather 23 %.</source>
        <translation>Le réfractomètre indique %{water:1}&#xa0;% d’eau. Le miel se conserve avec 18&#xa0;% au plus, mesurés sur plusieurs cadres&#x202f;; la réglementation alimentaire admet 20&#xa0;%, 23&#xa0;% pour la bruyère.</translation>
    </message>
    <message>
        <source>Measure the water with a refractometer on several %{combs} before taking any: honey keeps with at most 18 %, food law allows 20 %, heather 23 %.</source>
        <translation>Avant de récolter, mesurez la teneur en eau au réfractomètre sur plusieurs cadres&#xa0;: le miel se conserve avec 18&#xa0;% au plus, la réglementation alimentaire admet 20&#xa0;%, 23&#xa0;% pour la bruyère.</translation>
    </message>
    <message>
        <source>Before weighing again: is the empty weight that of this hive as it stands, are stones, feeder and wet snow off, is a super left out of the list?</source>
        <translation>Avant de repeser&#xa0;: le poids à vide est-il bien celui de cette ruche telle qu’elle est, les pierres, le nourrisseur et la neige mouillée sont-ils enlevés, une hausse a-t-elle été oubliée dans la liste&#x202f;?</translation>
    </message>
    <message>
        <source>Thick syrup is right now, but left standing in the cold to be expected before the last day it lets up to %{percent:0} % of its weight settle as sugar: give it lukewarm and in portions that are soon taken.</source>
        <translation>Un sirop lourd convient maintenant&#x202f;; mais s’il reste dans le nourrisseur par le froid attendu avant le dernier jour, jusqu’à %{percent:0}&#xa0;% de son poids peuvent se déposer en sucre&#xa0;: donnez-le tiède, en doses vite prises.</translation>
    </message>
    <message>
        <source>Unite healthy colonies only, by %{day}: in the evening, the %{combs} of the weak one hung beside those of the strong one behind a sheet of newspaper, the bees misted with water, the better queen kept. Later it is too cold for the bees to come together.</source>
        <translation>Ne réunissez que des colonies saines, au plus tard le %{day}&#xa0;: le soir, les cadres de la faible suspendus à côté de ceux de la forte, séparés par une feuille de papier journal, les abeilles aspergées d’eau, la meilleure reine gardée. Plus tard, il fait trop froid pour que les abeilles se rejoignent.</translation>
    </message>
    <message>
        <source>Unite healthy colonies only, by %{day}: in the evening, the weak one above the strong one with a sheet of newspaper between, the better queen kept. Later it is too cold for the bees to come together.</source>
        <translation>Ne réunissez que des colonies saines, au plus tard le %{day}&#xa0;: le soir, la faible au-dessus de la forte avec une feuille de papier journal entre les deux, la meilleure reine gardée. Plus tard, il fait trop froid pour que les abeilles se rejoignent.</translation>
    </message>
    <message>
        <source>A small colony, and too late to unite: narrow it into a nucleus box with full %{combs} on both sides, and insulate it.</source>
        <translation>Une petite colonie, et il est trop tard pour la réunir&#xa0;: resserrez-la dans une ruchette avec des cadres pleins des deux côtés, et isolez-la.</translation>
    </message>
    <message>
        <source>Mites first: good stores do not save a colony treated too late. Count them now and treat once the honey is off; the label, your vet and the bee inspector decide on the means.</source>
        <translation>D’abord le varroa&#xa0;: de bonnes provisions ne sauvent pas une colonie traitée trop tard. Comptez les varroas maintenant et traitez dès que le miel est récolté&#x202f;; pour le choix du produit, suivez la notice, votre vétérinaire et le technicien sanitaire apicole.</translation>
    </message>
    <message>
        <source>Mites first: good stores do not save a colony treated too late. Count them now, and treat without delay, for what is in the super stays with the bees; the label, your vet and the bee inspector decide on the means.</source>
        <translation>D’abord le varroa&#xa0;: de bonnes provisions ne sauvent pas une colonie traitée trop tard. Comptez les varroas maintenant et traitez sans attendre, car ce qui est dans la hausse reste aux abeilles&#x202f;; pour le choix du produit, suivez la notice, votre vétérinaire et le technicien sanitaire apicole.</translation>
    </message>
    <message>
        <source>You have treated against mites: count them again two to three weeks after it, for a treatment may fail and robbers bring mites home.</source>
        <translation>Vous avez traité contre varroa&#xa0;: comptez de nouveau les varroas deux à trois semaines après, car un traitement peut échouer et les pillardes rapportent des varroas.</translation>
    </message>
    <message>
        <source>%{mites:0} mites on 100 bees are too many: stores do not save such a colony. Treat as soon as no honey for people is on, before anything else, and count again two to three weeks after it; the label, your vet and the bee inspector decide on the means.</source>
        <translation>%{mites:0} varroas pour 100 abeilles, c’est trop&#xa0;: les provisions ne sauvent pas une telle colonie. Traitez avant toute autre chose, dès qu’il n’y a plus de miel destiné à la récolte, et recomptez deux à trois semaines après&#x202f;; la notice, votre vétérinaire et le technicien sanitaire apicole décident du moyen.</translation>
    </message>
    <message>
        <source>You have counted the mites: where the count calls for it treat as soon as no honey for people is on, and count again two to three weeks after it. Good stores do not save a colony treated too late; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Vous avez compté les varroas&#xa0;: si leur nombre l’exige, traitez dès qu’il n’y a plus de miel à récolter sur la ruche, et comptez de nouveau deux à trois semaines après. De bonnes provisions ne sauvent pas une colonie traitée trop tard&#x202f;; pour le choix du produit, suivez la notice, votre vétérinaire et le technicien sanitaire apicole.</translation>
    </message>
    <message>
        <source>Good stores do not save a colony treated too late: in a trial, colonies treated against varroa in July or August were lost a third less often. Count the mites; the label, your vet and the bee inspector decide on the means.</source>
        <translation>De bonnes provisions ne sauvent pas une colonie traitée trop tard&#xa0;: dans un essai, les colonies traitées contre varroa en juillet ou en août ont été perdues un tiers moins souvent. Comptez les varroas&#x202f;; pour le choix du produit, suivez la notice, votre vétérinaire et le technicien sanitaire apicole.</translation>
    </message>
    <message>
        <source>Good stores do not save a colony treated too late, that is after January or February. Count the mites where varroa is; the label, your vet and the bee inspector decide on the means.</source>
        <translation>De bonnes provisions ne sauvent pas une colonie traitée trop tard, c’est-à-dire après janvier ou février. Comptez les varroas là où il y en a&#x202f;; pour le choix du produit, suivez la notice, votre vétérinaire et le technicien sanitaire apicole.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so when brood grows in March and April, not in midwinter: heft it again then.</source>
        <translation>La plupart des colonies qui meurent de faim meurent en mars et avril, quand le couvain augmente, et non au cœur de l’hiver&#xa0;: soupesez de nouveau à ce moment-là.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so when brood grows in August and September, not in midwinter: heft it again then.</source>
        <translation>La plupart des colonies qui meurent de faim meurent en août et septembre, quand le couvain augmente, et non au cœur de l’hiver&#xa0;: soupesez de nouveau à ce moment-là.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so while brood grows before spring forage starts, not in midwinter: heft it often then.</source>
        <translation>La plupart des colonies qui meurent de faim meurent quand le couvain augmente, avant les miellées de printemps, et non au cœur de l’hiver&#xa0;: soupesez souvent à ce moment-là.</translation>
    </message>
    <message>
        <source>The nectar counted on here may fail. Weigh again when no more comes in.</source>
        <translation>Le nectar compté ici peut ne pas venir. Repesez quand il n’en rentre plus.</translation>
    </message>
    <message>
        <source>Where a super stays on as winter food take the queen excluder out before laying stops, or the queen is left below in the cold.</source>
        <translation>Si une hausse reste comme nourriture d’hiver, enlevez la grille à reine avant l’arrêt de la ponte, sinon la reine reste en bas dans le froid.</translation>
    </message>
    <message>
        <source>Neither queen nor eggs were seen: make sure of a laying queen before anything else.</source>
        <translation>Ni reine ni œufs n’ont été vus&#xa0;: assurez-vous avant tout qu’il y a une reine en ponte.</translation>
    </message>
    <message>
        <source>Hardly any brood was seen, though laying usually stops around %{day} only. The amounts here are those of a queen that lays: if she has stopped, %{need:amount} are enough. Look for eggs in a week.</source>
        <translation>On n’a presque pas vu de couvain, alors que la ponte ne s’arrête d’habitude que vers le %{day}. Les quantités indiquées ici valent pour une reine qui pond&#xa0;: si elle a cessé, %{need:amount} suffisent. Cherchez des œufs dans une semaine.</translation>
    </message>
    <message>
        <source>Hardly any brood was seen, though the queen should still have been laying. The amounts here are those of a queen that lays: if she has stopped, %{need:amount} are enough. Look for eggs in a week.</source>
        <translation>On n’a presque pas vu de couvain, alors que la reine aurait dû pondre encore. Les quantités indiquées ici valent pour une reine qui pond&#xa0;: si elle a cessé, %{need:amount} suffisent. Cherchez des œufs dans une semaine.</translation>
    </message>
    <message>
        <source>This is an early look, and rougher for it. Weigh again when no more nectar comes in.</source>
        <translation>Cette réponse vient tôt dans la saison et n’en est que plus approximative. Repesez quand il ne rentre plus de nectar.</translation>
    </message>
    <message>
        <source>Next: weigh it on %{day}, both sides, without opening.</source>
        <translation>À faire ensuite&#xa0;: pesez le %{day}, des deux côtés, sans ouvrir.</translation>
    </message>
    <message>
        <source>Next: on %{day} look at the stores, and count the mites.</source>
        <translation>À faire ensuite&#xa0;: le %{day}, examinez les provisions et comptez les varroas.</translation>
    </message>
    <message>
        <source>Next: on %{day} look for queen cells on the %{comb} with eggs.</source>
        <translation>À faire ensuite&#xa0;: le %{day}, cherchez des cellules royales sur le cadre avec des œufs.</translation>
    </message>
    <message>
        <source>Next: on %{day} see whether the feed is taken and being capped.</source>
        <translation>À faire ensuite&#xa0;: le %{day}, voyez si la nourriture est prise et en train d’être operculée.</translation>
    </message>
    <message>
        <source>Take supers whose honey is meant for people off before any syrup goes on, or syrup ends up in it.</source>
        <translation>Retirez les hausses destinées à la récolte avant de donner du sirop, sinon il y finit.</translation>
    </message>
    <message>
        <source>Honey stored while a colony was fed or treated is for the bees, not for people. After medicines the label, the vet and the law decide.</source>
        <translation>Le miel emmagasiné pendant qu’une colonie était nourrie ou traitée est pour les abeilles, pas pour la récolte. Après un médicament, c’est la notice, le vétérinaire et la loi qui décident.</translation>
    </message>
    <message>
        <source>Take a %{comb} only if at least two thirds of its stores are capped; under four fifths the honey may be too wet to keep.</source>
        <translation>Ne récoltez un cadre que si les deux tiers au moins de ses provisions sont operculés&#x202f;; sous les quatre cinquièmes, le miel peut être trop humide pour se conserver.</translation>
    </message>
    <message>
        <source>No honey for children under twelve months.</source>
        <translation>Pas de miel pour les enfants de moins de douze mois.</translation>
    </message>
    <message>
        <source>Never feed honey whose origin you do not know: it can carry foulbrood.</source>
        <translation>Ne donnez jamais de miel dont vous ignorez l’origine&#xa0;: il peut transmettre la loque.</translation>
    </message>
    <message>
        <source>Use white granulated sugar only. Brown, raw and icing sugar and molasses hold what bees cannot digest.</source>
        <translation>Ne donnez que du sucre blanc cristallisé. Le sucre roux, brut ou glace et la mélasse contiennent ce que les abeilles ne peuvent pas digérer.</translation>
    </message>
    <message>
        <source>Do not boil syrup, and add no acid or vinegar: both make HMF, which poisons bees.</source>
        <translation>Ne faites pas bouillir le sirop et n’y ajoutez ni acide ni vinaigre&#xa0;: l’un comme l’autre forment du HMF, toxique pour les abeilles.</translation>
    </message>
    <message>
        <source>Lay floats or straw on the syrup of an open feeder, so that bees do not drown.</source>
        <translation>Mettez des flotteurs ou de la paille sur le sirop d’un nourrisseur ouvert, pour que les abeilles ne se noient pas.</translation>
    </message>
    <message>
        <source>Stores from ivy or rape set hard; heather honey and honeydew can scour bees that cannot fly. Where such stores come in, give some syrup on top; where the cold is long, replace those %{combs}.</source>
        <translation>Les provisions de lierre ou de colza durcissent&#x202f;; le miel de bruyère et le miellat peuvent donner la dysenterie à des abeilles qui ne peuvent pas voler. Là où il en rentre, donnez un peu de sirop par-dessus&#x202f;; là où le froid dure, remplacez ces cadres.</translation>
    </message>
    <message>
        <source>It may be too cool to open: a full look from %{=15 °C}, half a minute from %{=10 °C}, in winter the lid alone from %{=7 °C}.</source>
        <translation>Il fait peut-être trop frais pour ouvrir&#xa0;: une visite complète à partir de %{=15&#xa0;°C}, une demi-minute à partir de %{=10&#xa0;°C}, en hiver le toit seul à partir de %{=7&#xa0;°C}.</translation>
    </message>
    <message>
        <source>About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. Hang full %{combs} beside the bees and above them, without an empty %{comb} between.</source>
        <translation>Environ %{within:amount} sont à portée de la grappe, et un long coup de froid peut en demander %{needed:amount}. Placez des cadres pleins à côté des abeilles et au-dessus d’elles, sans cadre vide entre deux.</translation>
    </message>
    <message>
        <source>In this long hive stores lie on both sides of the bees, or beyond an empty %{comb}: bees that have eaten to one end do not come back in the cold. Put the bees at one end and all the stores on one side of them.</source>
        <translation>Dans cette ruche horizontale, les provisions sont des deux côtés des abeilles, ou au-delà d’un cadre vide&#xa0;: des abeilles arrivées à un bout en mangeant ne reviennent pas par temps froid. Mettez les abeilles à un bout et toutes les provisions d’un seul côté.</translation>
    </message>
    <message>
        <source>About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. On a day of %{=10 °C} hang a full %{comb} against the bees; should they run short before, lay fondant on them.</source>
        <translation>Environ %{within:amount} sont à portée de la grappe, et un long coup de froid peut en demander %{needed:amount}. Par un jour à %{=10&#xa0;°C}, placez un cadre plein contre les abeilles&#x202f;; si elles venaient à manquer avant, posez du candi sur elles.</translation>
    </message>
    <message>
        <source>Where the cold is long, insulation above the %{combs} saves food.</source>
        <translation>Là où le froid dure, une isolation au-dessus des cadres épargne de la nourriture.</translation>
    </message>
    <message>
        <source>Let moisture leave: entrance clear, hive tilted slightly forward, nothing cold and wet above the bees.</source>
        <translation>Laissez l’humidité s’échapper&#xa0;: entrée dégagée, ruche un peu penchée vers l’avant, rien de froid ni de mouillé au-dessus des abeilles.</translation>
    </message>
    <message>
        <source>Fit a mouse guard with openings of %{=6 mm} to %{=8 mm} before days stay below %{=5 °C}.</source>
        <translation>Posez une grille anti-rongeurs à ouvertures de %{=6&#xa0;mm} à %{=8&#xa0;mm} avant que les journées restent sous %{=5&#xa0;°C}.</translation>
    </message>
    <message>
        <source>Heft every two weeks; once brood has started, weigh every two to three weeks.</source>
        <translation>Soupesez toutes les deux semaines&#x202f;; dès que le couvain a repris, pesez toutes les deux à trois semaines.</translation>
    </message>
    <message>
        <source>Close a dead hive the same day. Nothing of it goes to another colony until disease is ruled out; a notifiable disease has to be reported.</source>
        <translation>Fermez une ruche morte le jour même. Rien n’en passe à une autre colonie tant que la maladie n’est pas exclue&#x202f;; une maladie à déclaration obligatoire doit être signalée.</translation>
    </message>
    <message>
        <source>A full deep box weighs up to %{=40 kg}: lift %{combs} rather than boxes.</source>
        <translation>Un corps plein pèse jusqu’à %{=40&#xa0;kg}&#xa0;: soulevez les cadres plutôt que les corps.</translation>
    </message>
    <message>
        <source>Stings can be dangerous: with an allergy never work alone, and keep the emergency number at hand.</source>
        <translation>Les piqûres peuvent être dangereuses&#xa0;: si vous êtes allergique, ne travaillez jamais sans quelqu’un près de vous et gardez le numéro d’urgence à portée de main.</translation>
    </message>
    <message>
        <source>Water of %{=50 °C} to %{=60 °C} dissolves sugar well enough; hotter syrup scalds, and spoils.</source>
        <translation>Une eau de %{=50&#xa0;°C} à %{=60&#xa0;°C} dissout assez bien le sucre&#x202f;; plus chaud, le sirop brûle la peau et se gâte.</translation>
    </message>
    <message>
        <source>Comb without a frame breaks easily: free its sides first, keep it vertical, begin at the empty end, and leave it alone in heat.</source>
        <translation>Un rayon sans cadre casse facilement&#xa0;: détachez d’abord ses côtés, tenez-le vertical, commencez par le bout vide, et n’y touchez pas par forte chaleur.</translation>
    </message>
    <message>
        <source>In a long hive the feeder goes behind the follower, and fondant stands as a slab beside the cluster, not over the bars.</source>
        <translation>Dans une ruche horizontale, le nourrisseur se place derrière la partition, et le candi se dresse en plaque à côté de la grappe, pas au-dessus des barrettes.</translation>
    </message>
    <message>
        <source>Only about %{pollen} of bee bread was seen. With under half a kilogram when laying stops, brood has little to start on: keep %{combs} with pollen beside the nest.</source>
        <translation>On n’a vu que %{pollen} de pain d’abeilles environ. Avec moins d’un demi-kilogramme à l’arrêt de la ponte, le couvain a peu pour repartir&#xa0;: gardez des cadres de pollen près du nid.</translation>
    </message>
    <message>
        <source>Laying has begun again by now, and nothing was said of brood: how much of it there is would tell more than anything else.</source>
        <translation>La ponte a déjà repris, et rien n’a été dit du couvain&#xa0;: sa quantité en dirait plus que tout le reste.</translation>
    </message>
    <message>
        <source>%{Combs} move between healthy colonies only, in a yard without foulbrood: brush the bees off, work at dusk, and leave the giver its own need.</source>
        <translation>Les cadres ne passent qu’entre colonies saines, dans un rucher sans loque&#xa0;: brossez les abeilles, travaillez à la tombée du jour, et laissez à celle qui donne ce dont elle a besoin.</translation>
    </message>
    <message>
        <source>More is left than spring needs: make room for the queen in time. Old winter feed never goes up into supers.</source>
        <translation>Il reste plus que ce que demande le printemps&#xa0;: faites de la place à la reine à temps. L’ancienne nourriture d’hiver ne monte jamais dans les hausses.</translation>
    </message>
    <message>
        <source>Whether a %{comb} named here holds brood was not said: look before taking it, and leave it if it does.</source>
        <translation>On n’a pas dit si un cadre nommé ici porte du couvain&#xa0;: regardez avant de le récolter, et laissez-le s’il en porte.</translation>
    </message>
    <message>
        <source>Where disease, medicines or local law are concerned, the bee inspector, the vet and the law come first.</source>
        <translation>Pour la maladie, les médicaments ou la loi du pays, le technicien sanitaire apicole, le vétérinaire et la loi passent avant tout.</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>
            <numerusform>%{weight}, c’est peu vraisemblable&#xa0;: %n élément de cette taille pèse %{most} quand tous les cadres sont pleins de miel. S’agit-il de %{number:1}&#xa0;lb, soit %{meant}&#x202f;?</numerusform>
            <numerusform>%{weight}, c’est peu vraisemblable&#xa0;: %n éléments de cette taille pèsent %{most} quand tous les cadres sont pleins de miel. S’agit-il de %{number:1}&#xa0;lb, soit %{meant}&#x202f;?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>%{weight}, c’est peu vraisemblable&#xa0;: un élément de cette taille pèse %{most} quand tous les cadres sont pleins de miel. S’agit-il de %{number:1}&#xa0;lb, soit %{meant}&#x202f;?</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>
            <numerusform>%{weight}, c’est peu vraisemblable&#xa0;: %n élément de cette taille pèse %{most} quand tous les cadres sont pleins de miel. S’agit-il de %{meant}&#x202f;?</numerusform>
            <numerusform>%{weight}, c’est peu vraisemblable&#xa0;: %n éléments de cette taille pèsent %{most} quand tous les cadres sont pleins de miel. S’agit-il de %{meant}&#x202f;?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>%{weight}, c’est peu vraisemblable&#xa0;: un élément de cette taille pèse %{most} quand tous les cadres sont pleins de miel. S’agit-il de %{meant}&#x202f;?</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>
            <numerusform>%{weight}, c’est peu vraisemblable&#xa0;: %n élément de cette taille pèse %{most} quand tous les cadres sont pleins de miel. Un élément n’est-il pas noté&#x202f;?</numerusform>
            <numerusform>%{weight}, c’est peu vraisemblable&#xa0;: %n éléments de cette taille pèsent %{most} quand tous les cadres sont pleins de miel. Un élément n’est-il pas noté&#x202f;?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>%{weight}, c’est peu vraisemblable&#xa0;: un élément de cette taille pèse %{most} quand tous les cadres sont pleins de miel. Un élément n’est-il pas noté&#x202f;?</translation>
    </message>
    <message>
        <source>%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Is it %{meant}?</source>
        <translation>%{weight}, c’est peu vraisemblable&#xa0;: cette ruche pèse %{least} ou plus à vide. S’agit-il de %{meant}&#x202f;?</translation>
    </message>
    <message>
        <source>%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Was all of it on the scale?</source>
        <translation>%{weight}, c’est peu vraisemblable&#xa0;: cette ruche pèse %{least} ou plus à vide. Était-elle tout entière sur la balance&#x202f;?</translation>
    </message>
    <message>
        <source>%{side} on one side cannot well be: one side of this hive weighs %{least} or more when it is empty. Was it lifted clear, and is it in the right unit?</source>
        <translation>%{side} d’un côté, ce n’est guère possible&#xa0;: un côté de cette ruche pèse %{least} ou plus quand elle est vide. Était-il bien soulevé, et l’unité est-elle la bonne&#x202f;?</translation>
    </message>
    <message>
        <source>%{weight} does not go with the %{other} of %{day}: ten times as much. Has a decimal point slipped?</source>
        <translation>%{weight} ne s’accorde pas avec les %{other} du %{day}&#xa0;: dix fois autant. La virgule s’est-elle déplacée&#x202f;?</translation>
    </message>
    <message>
        <source>%{weight} does not go with the %{other} of %{day}: as much as pounds differ from kilograms. Which is it?</source>
        <translation>%{weight} ne s’accorde pas avec les %{other} du %{day}&#xa0;: l’écart est celui entre livres et kilogrammes. Lequel des deux est-ce&#x202f;?</translation>
    </message>
    <message numerus="yes">
        <source>%{taken} of honey cannot well come out of %n boxes of this size, which hold %{most} at the most. Is a box not written down?</source>
        <translation>
            <numerusform>%{taken} de miel, c’est trop pour %n élément de cette taille, qui contient %{most} au plus. Un élément n’est-il pas noté&#x202f;?</numerusform>
            <numerusform>%{taken} de miel, c’est trop pour %n éléments de cette taille, qui contiennent %{most} au plus. Un élément n’est-il pas noté&#x202f;?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{taken} of honey cannot well come out of one box of this size, which holds %{most} at the most. Is a box not written down?</source>
        <translation>%{taken} de miel, c’est trop pour un élément de cette taille, qui contient %{most} au plus. Un élément n’est-il pas noté&#x202f;?</translation>
    </message>
    <message>
        <source>%{taken} of honey is more than can have been there: at most %{most}, going by the weight of %{day}. Is it right?</source>
        <translation>%{taken} de miel, c’est plus qu’il ne pouvait y en avoir&#xa0;: %{most} au plus, d’après le poids du %{day}. Est-ce juste&#x202f;?</translation>
    </message>
    <message>
        <source>%{taken} of honey is more than can have been there: at most %{most}, going by the %{combs} of %{day}. Is it right?</source>
        <translation>%{taken} de miel, c’est plus qu’il ne pouvait y en avoir&#xa0;: %{most} au plus, d’après les cadres du %{day}. Est-ce juste&#x202f;?</translation>
    </message>
    <message numerus="yes">
        <source>A feed that makes %{stores} of stores cannot be: %n boxes of this size hold %{most}. How much was it?</source>
        <translation>
            <numerusform>Un nourrissement qui fait %{stores} de provisions n’est pas possible&#xa0;: %n élément de cette taille contient %{most}. Combien était-ce&#x202f;?</numerusform>
            <numerusform>Un nourrissement qui fait %{stores} de provisions n’est pas possible&#xa0;: %n éléments de cette taille contiennent %{most}. Combien était-ce&#x202f;?</numerusform>
        </translation>
    </message>
    <message>
        <source>A feed that makes %{stores} of stores cannot be: one box of this size holds %{most}. How much was it?</source>
        <translation>Un nourrissement qui fait %{stores} de provisions n’est pas possible&#xa0;: un élément de cette taille contient %{most}. Combien était-ce&#x202f;?</translation>
    </message>
    <message>
        <source>%{given} in one day is much: few feeders let bees take more than %{most}. Is it right?</source>
        <translation>%{given} en un jour, c’est beaucoup&#xa0;: rares sont les nourrisseurs où les abeilles prennent plus de %{most}. Est-ce juste&#x202f;?</translation>
    </message>
    <message numerus="yes">
        <source>The feeds of %n days make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>
            <numerusform>Les nourrissements de %n jour font %{stores} de provisions, et cette ruche contient %{most}. Est-ce juste&#x202f;?</numerusform>
            <numerusform>Les nourrissements de %n jours font %{stores} de provisions, et cette ruche contient %{most}. Est-ce juste&#x202f;?</numerusform>
        </translation>
    </message>
    <message>
        <source>The feeds of a day make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>Les nourrissements d’un jour font %{stores} de provisions, et cette ruche contient %{most}. Est-ce juste&#x202f;?</translation>
    </message>
    <message>
        <source>%{covered:1} covered %{combs} are more than the %{most:0} places of this hive. How many were covered on both sides?</source>
        <translation>%{covered:1} cadres occupés, c’est plus que les %{most:0} places de cette ruche. Combien l’étaient des deux côtés&#x202f;?</translation>
    </message>
    <message>
        <source>%{seams:1} seams are more than the %{most:0} this hive has. How many were filled with bees?</source>
        <translation>%{seams:1} ruelles, c’est plus que les %{most:0} de cette ruche. Combien étaient remplies d’abeilles&#x202f;?</translation>
    </message>
    <message>
        <source>%{bees:hundreds} bees are more than this hive houses, %{most:hundreds} at the very most. Is it right?</source>
        <translation>%{bees:hundreds} abeilles, c’est plus que n’en loge cette ruche, %{most:hundreds} tout au plus. Est-ce juste&#x202f;?</translation>
    </message>
    <message>
        <source>%{cells:hundreds} cells of brood leave no room for food: all %{combs} of this hive have %{most:hundreds} cells. Is it right?</source>
        <translation>%{cells:hundreds} cellules de couvain ne laissent pas de place à la nourriture&#xa0;: tous les cadres de cette ruche ont %{most:hundreds} cellules. Est-ce juste&#x202f;?</translation>
    </message>
    <message>
        <source>%{combs:1} %{combs} with stores are more than the %{most:0} places of this hive. How many were there?</source>
        <translation>%{combs:1} cadres avec des provisions, c’est plus que les %{most:0} places de cette ruche. Combien y en avait-il&#x202f;?</translation>
    </message>
    <message numerus="yes">
        <source>%{stores} of stores cannot well be left in %n boxes of this size, which hold %{most} at the most. Is it right?</source>
        <translation>
            <numerusform>%{stores} de provisions restantes, c’est trop pour %n élément de cette taille, qui contient %{most} au plus. Est-ce juste&#x202f;?</numerusform>
            <numerusform>%{stores} de provisions restantes, c’est trop pour %n éléments de cette taille, qui contiennent %{most} au plus. Est-ce juste&#x202f;?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{stores} of stores cannot well be left in one box of this size, which holds %{most} at the most. Is it right?</source>
        <translation>%{stores} de provisions restantes, c’est trop pour un élément de cette taille, qui contient %{most} au plus. Est-ce juste&#x202f;?</translation>
    </message>
    <message>
        <source>%{water:1} % of water is out of the usual: honey in combs has %{low:0} to %{high:0} %. Is it right?</source>
        <translation>%{water:1}&#xa0;% d’eau, ce n’est pas habituel&#xa0;: le miel en cadres en a de %{low:0} à %{high:0}&#xa0;%. Est-ce juste&#x202f;?</translation>
    </message>
    <message>
        <source>%{day} is still to come: today is %{today}. Is the day right?</source>
        <translation>Le %{day} est encore à venir&#xa0;: nous sommes le %{today}. Le jour est-il juste&#x202f;?</translation>
    </message>
    <message>
        <source>It had other boxes then than when it was looked at, so its weight does not tell its stores. What is in it now?</source>
        <translation>La ruche avait alors d’autres éléments que lors de la visite&#xa0;: son poids ne dit donc pas ses provisions. Que contient-elle maintenant&#x202f;?</translation>
    </message>
    <message numerus="yes">
        <source>An empty weight of %{weight} is much: %n boxes of this size weigh up to %{most} with all %{combs} drawn and no honey in them. Is it right?</source>
        <translation>
            <numerusform>Un poids à vide de %{weight}, c’est beaucoup&#xa0;: %n élément de cette taille pèse jusqu’à %{most} avec tous les cadres bâtis et sans miel. Est-ce juste&#x202f;?</numerusform>
            <numerusform>Un poids à vide de %{weight}, c’est beaucoup&#xa0;: %n éléments de cette taille pèsent jusqu’à %{most} avec tous les cadres bâtis et sans miel. Est-ce juste&#x202f;?</numerusform>
        </translation>
    </message>
    <message>
        <source>An empty weight of %{weight} is much: one box of this size weighs up to %{most} with all %{combs} drawn and no honey in it. Is it right?</source>
        <translation>Un poids à vide de %{weight}, c’est beaucoup&#xa0;: un élément de cette taille pèse jusqu’à %{most} avec tous les cadres bâtis et sans miel. Est-ce juste&#x202f;?</translation>
    </message>
    <message>
        <source>An empty weight of %{weight} is little: this hive weighs %{least} or more without a single %{comb}. Was all of it on the scale?</source>
        <translation>Un poids à vide de %{weight}, c’est peu&#xa0;: cette ruche pèse %{least} ou plus sans un seul cadre. Était-elle tout entière sur la balance&#x202f;?</translation>
    </message>
    <message>
        <source>%{day} is before the colony was there, from %{since} on. Is the day right?</source>
        <translation>Le %{day}, la colonie n’était pas encore là&#xa0;: elle l’est depuis le %{since}. Le jour est-il juste&#x202f;?</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside and do not open: a dry, still day, no knocking, the hive set down gently.</source>
        <translation>Avec un maximum du jour d’environ %{temperature}, pesez ou soupesez de l’extérieur et n’ouvrez pas&#xa0;: un jour sec et sans vent, sans choc, la ruche reposée doucement.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside; the lid alone may be lifted, no %{comb} is drawn: a dry, still day, no knocking.</source>
        <translation>Avec un maximum du jour d’environ %{temperature}, pesez ou soupesez de l’extérieur&#x202f;; seul le toit peut être soulevé, aucun cadre n’est sorti&#xa0;: un jour sec et sans vent, sans choc.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside; the hive may be open for half a minute in the mildest hour, with the cluster left as it is. A full look waits for %{=15 °C}.</source>
        <translation>Avec un maximum du jour d’environ %{temperature}, pesez ou soupesez de l’extérieur&#x202f;; la ruche peut être ouverte une demi-minute à l’heure la plus douce, sans toucher à la grappe. Une visite complète attend %{=15&#xa0;°C}.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} the food goes on in the mildest hour, dry and still: the lid is off for half a minute only, no %{comb} is lifted, no knocking. All other looks and weighings are from outside.</source>
        <translation>Avec un maximum du jour d’environ %{temperature}, la nourriture se donne à l’heure la plus douce, par temps sec et sans vent&#xa0;: le toit n’est enlevé qu’une demi-minute, aucun cadre n’est soulevé, pas de choc. Tout autre examen et toute pesée se font de l’extérieur.</translation>
    </message>
    <message>
        <source>Lay the fondant flat on the top bars right over the cluster, touching it: cut a window into its wrapping, lay that downwards, and cover it warmly. A block a hand&apos;s breadth away is not found in the cold.</source>
        <translation>Posez le candi à plat sur les têtes de cadres, juste au-dessus de la grappe et à son contact&#xa0;: découpez une fenêtre dans l’emballage, posez-la vers le bas, et couvrez bien au chaud. Un bloc à une largeur de main n’est pas trouvé par temps froid.</translation>
    </message>
    <message>
        <source>In a long hive stand the fondant as a slab beside the cluster, on the side where its stores are, touching the outermost %{comb} with bees, with no empty %{comb} between.</source>
        <translation>Dans une ruche horizontale, dressez le candi en plaque à côté de la grappe, du côté de ses provisions, contre le dernier cadre occupé, sans cadre vide entre deux.</translation>
    </message>
    <message>
        <source>If there is no fondant, %{sugar:amount} of dry white sugar in all will do in need: on paper on the top bars over the cluster, misted with water, or the bees carry it out.</source>
        <translation>S’il n’y a pas de candi, %{sugar:amount} de sucre blanc sec en tout peuvent dépanner&#xa0;: sur du papier, sur les têtes de cadres au-dessus de la grappe, humectés d’eau, sinon les abeilles les sortent.</translation>
    </message>
    <message>
        <source>Bees that fly from a dead colony are robbers. Look for pollen coming in or cleansing flights, or listen at the hive, before you call it alive.</source>
        <translation>Des abeilles qui volent devant une colonie morte sont des pillardes. Cherchez des rentrées de pollen ou des vols de propreté, ou écoutez à la ruche, avant de la dire vivante.</translation>
    </message>
    <message>
        <source>Take only %{combs} that never took syrup and were not in the hive while it was treated; everything else is for the bees.</source>
        <translation>Ne récoltez que des cadres qui n’ont jamais pris de sirop et n’étaient pas dans la ruche pendant un traitement&#x202f;; tout le reste est pour les abeilles.</translation>
    </message>
    <message>
        <source>Old winter feed never goes up into a super: what is in the way is taken out, kept for light colonies, or left below.</source>
        <translation>L’ancienne nourriture d’hiver ne monte jamais dans une hausse&#xa0;: ce qui gêne est retiré, gardé pour des colonies légères, ou laissé en bas.</translation>
    </message>
    <message>
        <source>Most colonies starve in spring, not in midwinter. With brood in every %{comb} a week of cold rain can empty a hive: leave %{leave:amount} until forage is steady.</source>
        <translation>La plupart des colonies meurent de faim au printemps, non au cœur de l’hiver. Avec du couvain sur chaque cadre, une semaine de pluie froide peut vider une ruche&#xa0;: laissez %{leave:amount} tant que les miellées ne sont pas régulières.</translation>
    </message>
    <message>
        <source>It was eaten as expected: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.</source>
        <translation>La consommation est celle attendue&#xa0;: il reste environ %{stores:amount}&#x202f;; l’automne en attendait %{planned:amount} pour aujourd’hui.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are left, less than the %{planned:amount} the autumn expected for today.</source>
        <translation>Il reste environ %{stores:amount}, moins que les %{planned:amount} que l’automne attendait pour aujourd’hui.</translation>
    </message>
    <message>
        <source>On course: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.</source>
        <translation>Tout va comme prévu&#xa0;: il reste environ %{stores:amount}&#x202f;; l’automne en attendait %{planned:amount} pour aujourd’hui.</translation>
    </message>
    <message>
        <source>No advice was acted on: it is followed as it was found on %{day}, with nothing but what is written down as fed and taken since.</source>
        <translation>Aucun conseil n’a été suivi&#xa0;: la colonie est suivie telle qu’elle a été trouvée le %{day}, sans rien d’autre que ce qui est noté comme donné et récolté depuis.</translation>
    </message>
    <message>
        <source>Until its winter is followed, from %{day} on, what is to be done is what the answer of the day says, in the plan of its yard.</source>
        <translation>Tant que son hiver n’est pas suivi, à partir du %{day}, ce qui est à faire est ce que dit la réponse du jour, dans le plan de son rucher.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are left: less than these bees may eat in %{days:0} days. That cannot wait for better weather.</source>
        <translation>Il reste environ %{stores:amount}&#xa0;: moins que ce que ces abeilles peuvent consommer en %{days:0} jours. Cela ne peut pas attendre un temps meilleur.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}, and no weighing of the fortnight before says otherwise: one portion does no harm, and a weighing tells what more it needs.</source>
        <translation>Soupesée le %{day}, la ruche était légère, et aucune pesée des deux semaines précédentes ne dit le contraire&#xa0;: une dose ne fait pas de mal, et une pesée dira s’il en faut davantage.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}, though the weighing of %{weighed} does not say so: weigh it again before anything is fed.</source>
        <translation>Soupesée le %{day}, la ruche était légère, mais la pesée du %{weighed} ne le dit pas&#xa0;: repesez avant de donner quoi que ce soit.</translation>
    </message>
    <message>
        <source>On %{day} it weighed %{seen}, where %{low} to %{high} were expected: more than any winter explains. Was a feed, a box, a stone or another colony added that is not written down? Else check the scale and the empty weight.</source>
        <translation>Le %{day}, la ruche pesait %{seen}, alors que %{low} à %{high} étaient attendus&#xa0;: plus qu’aucun hiver ne l’explique. A-t-on ajouté, sans le noter, de la nourriture, un élément, une pierre ou une autre colonie&#x202f;? Sinon, vérifiez la balance et le poids à vide.</translation>
    </message>
    <message>
        <source>On %{day} no stores were in sight beside the cluster. However heavy the hive is, food the cluster does not touch is not found in the cold: it starves beside full %{combs}.</source>
        <translation>Le %{day}, aucune provision n’était en vue à côté de la grappe. Si lourde que soit la ruche, la nourriture que la grappe ne touche pas n’est pas trouvée par temps froid&#xa0;: elle meurt de faim à côté de cadres pleins.</translation>
    </message>
    <message>
        <source>Where the cluster sat on %{day} empty %{combs} lie between it and the stores. In the cold it does not cross them.</source>
        <translation>Là où se tenait la grappe le %{day}, des cadres vides la séparent des provisions. Par temps froid, elle ne les franchit pas.</translation>
    </message>
    <message>
        <source>About %{seen:0} bees were seen on %{day}, where even a poor winter leaves %{least:0}: the colony dwindles.</source>
        <translation>Environ %{seen:0} abeilles ont été vues le %{day}, alors que même un mauvais hiver en laisse %{least:0}&#xa0;: la colonie se dépeuple.</translation>
    </message>
    <message>
        <source>Less was in the hive than was thought: on %{day} more likely about %{now:amount} than %{thought:amount}. The bees do not eat faster for it.</source>
        <translation>Il y avait moins dans la ruche qu’on ne le pensait&#xa0;: le %{day}, plutôt environ %{now:amount} que %{thought:amount}. Les abeilles n’en consomment pas plus pour autant.</translation>
    </message>
    <message>
        <source>Feed for about %{stores:amount} of stores was planned from %{day} on, and it is not written down that it was given. Was it? Until you say so it is not counted.</source>
        <translation>De la nourriture pour environ %{stores:amount} de provisions était prévue à partir du %{day}, et il n’est pas noté qu’elle a été donnée. L’a-t-elle été&#x202f;? Tant que vous ne l’avez pas dit, elle n’est pas comptée.</translation>
    </message>
    <message>
        <source>Between %{from} and %{until} the hive lost %{lost}, where about %{expected} was expected: these bees eat faster than forecast.</source>
        <translation>Entre le %{from} et le %{until}, la ruche a perdu %{lost}, alors qu’environ %{expected} étaient attendus&#xa0;: ces abeilles consomment plus que prévu.</translation>
    </message>
    <message>
        <source>So much is hardly eaten: check the scale, and whether a lid, a box or a stone was on or off on %{day}, and look for robbers.</source>
        <translation>Une telle quantité n’a guère pu être mangée&#xa0;: vérifiez la balance, et si un toit, un élément ou une pierre avait été posé ou enlevé le %{day}, et cherchez un pillage.</translation>
    </message>
    <message>
        <source>More is there than the colony needs: in 9 winters of 10 %{stores:amount} or more will be left when spring forage starts.</source>
        <translation>Il y a plus que ce qu’il faut à la colonie&#xa0;: dans 9 hivers sur 10, il restera %{stores:amount} ou plus au début des miellées de printemps.</translation>
    </message>
    <message>
        <source>On a day of %{=10 °C} or more hang a full %{comb} right against the cluster, no empty one between, and weigh the hive.</source>
        <translation>Par un jour à %{=10&#xa0;°C} ou plus, placez un cadre plein tout contre la grappe, sans cadre vide entre deux, et pesez la ruche.</translation>
    </message>
    <message>
        <source>Narrow the entrance and keep it warm from above. On a day of %{=10 °C} or more put the bees together in a small space, a full %{comb} on either side, and see whether there is a queen. Unite it with no other while there may be disease.</source>
        <translation>Réduisez l’entrée et gardez le dessus au chaud. Par un jour à %{=10&#xa0;°C} ou plus, rassemblez les abeilles à l’étroit, un cadre plein de chaque côté, et voyez s’il y a une reine. Ne réunissez cette colonie à aucune autre tant qu’une maladie est possible.</translation>
    </message>
    <message>
        <source>No food within reach: it starved, or could not get at what was left elsewhere.</source>
        <translation>Pas de nourriture à portée&#xa0;: elle est morte de faim, ou n’a pas pu atteindre ce qui restait ailleurs.</translation>
    </message>
    <message>
        <source>Food within reach: it did not starve for want of stores. Look at mites, the queen and the size of the cluster.</source>
        <translation>De la nourriture à portée&#xa0;: elle n’est pas morte faute de provisions. Voyez du côté du varroa, de la reine et de la taille de la grappe.</translation>
    </message>
    <message>
        <source>Bees head down in the cells: they starved; with food elsewhere in the hive, because the cold held them away from it.</source>
        <translation>Des abeilles la tête dans les cellules&#xa0;: elles sont mortes de faim&#x202f;; s’il y avait de la nourriture ailleurs dans la ruche, c’est que le froid les en tenait éloignées.</translation>
    </message>
    <message>
        <source>No bees head down in the cells: hunger is not the likely cause.</source>
        <translation>Pas d’abeilles la tête dans les cellules&#xa0;: la faim n’est pas la cause probable.</translation>
    </message>
    <message>
        <source>Many mites on the floor: the winter bees were raised with varroa and its viruses; treat earlier, and count afterwards.</source>
        <translation>Beaucoup de varroas sur le plancher&#xa0;: les abeilles d’hiver ont été élevées avec le varroa et ses virus&#x202f;; traitez plus tôt, et comptez après.</translation>
    </message>
    <message>
        <source>Few mites on the floor: varroa is less likely, but a colony that lost its bees in autumn leaves few behind.</source>
        <translation>Peu de varroas sur le plancher&#xa0;: le varroa est moins probable, mais une colonie qui a perdu ses abeilles en automne en laisse peu.</translation>
    </message>
    <message>
        <source>No brood: it died while laying had stopped, or had no laying queen any more.</source>
        <translation>Pas de couvain&#xa0;: elle est morte pendant l’arrêt de la ponte, ou n’avait plus de reine en ponte.</translation>
    </message>
    <message>
        <source>Solid brood: the queen laid well until a sudden end, by cold or hunger.</source>
        <translation>Couvain compact&#xa0;: la reine pondait bien jusqu’à une fin soudaine, par le froid ou la faim.</translation>
    </message>
    <message>
        <source>Patchy brood, dead in its cells: varroa or a brood disease. Close the hive against robbers, and show the %{comb} to the bee inspector before any of it is used again.</source>
        <translation>Couvain en mosaïque, mort dans ses cellules&#xa0;: varroa ou maladie du couvain. Fermez la ruche contre le pillage, et montrez le cadre au technicien sanitaire apicole avant d’en réutiliser quoi que ce soit.</translation>
    </message>
    <message>
        <source>The queen was there to the end: it was not queenless.</source>
        <translation>La reine était là jusqu’au bout&#xa0;: la colonie n’était pas orpheline.</translation>
    </message>
    <message>
        <source>No queen among the dead: with few bees and drone brood or none it was probably queenless.</source>
        <translation>Pas de reine parmi les mortes&#xa0;: avec peu d’abeilles et du couvain de mâles ou aucun couvain, la colonie était probablement orpheline.</translation>
    </message>
    <message>
        <source>The colony was found dead on %{day}.</source>
        <translation>La colonie a été trouvée morte le %{day}.</translation>
    </message>
    <message>
        <source>If nothing is done it falls below %{reserve:amount} in %{in:0} of 100 winters that fit what was seen, by about %{day}.</source>
        <translation>Si rien n’est fait, les provisions descendent sous %{reserve:amount} dans %{in:0} hivers sur 100, parmi ceux qui concordent avec ce qui a été vu, vers le %{day}.</translation>
    </message>
    <message>
        <source>Weigh again by %{day}: from then on a weighing may change what to do.</source>
        <translation>Repesez d’ici au %{day}&#xa0;: à partir de là, une pesée peut changer ce qu’il faut faire.</translation>
    </message>
    <message>
        <source>Weigh on %{day}, before more is fed: how much it is to be follows from that.</source>
        <translation>Pesez le %{day}, avant de redonner de la nourriture&#xa0;: la quantité à donner en dépend.</translation>
    </message>
    <message>
        <source>No further weighing before forage would change what to do.</source>
        <translation>Aucune autre pesée avant les miellées ne changerait ce qu’il faut faire.</translation>
    </message>
    <message>
        <source>The weighing of %{day} contradicts every simulated winter: it says %{seen}, where %{low} to %{high} was expected. Weigh again, and look for a feed that was not written down or ticked off, for a lid, a box or a stone that was on or off, and for robbers.</source>
        <translation>La pesée du %{day} contredit tous les hivers simulés&#xa0;: elle dit %{seen}, alors que %{low} à %{high} étaient attendus. Repesez, et cherchez un nourrissement qui n’a pas été noté ou coché, un toit, un élément ou une pierre posés ou enlevés, et un pillage.</translation>
    </message>
    <message>
        <source>Before %{day} the hive changed by about %{change} more than any winter explains, and a later weighing agrees. The forecast goes on from there.</source>
        <translation>Avant le %{day}, la ruche a varié d’environ %{change} de plus qu’aucun hiver ne l’explique, et une pesée plus tardive le confirme. La prévision repart de là.</translation>
    </message>
    <message>
        <source>What was seen on %{day} contradicts every simulated winter, all of which had run out of stores by then. Weigh the hive.</source>
        <translation>Ce qui a été vu le %{day} contredit tous les hivers simulés&#xa0;: dans tous, les provisions étaient alors épuisées. Pesez la ruche.</translation>
    </message>
    <message>
        <source>The records fit no winter: of about %{had:amount} on %{decided}, with %{given:amount} fed and %{taken:amount} taken since, nothing can have been left before %{day}, yet stores were found then. Look at what was written down between these days: until it is set right there is no forecast but the autumn&apos;s.</source>
        <translation>Les notes ne concordent avec aucun hiver&#xa0;: d’environ %{had:amount} le %{decided}, avec %{given:amount} donnés et %{taken:amount} récoltés depuis, il ne pouvait rien rester avant le %{day}, et pourtant on a trouvé alors des provisions. Relisez ce qui a été noté entre ces jours&#xa0;: tant que ce n’est pas corrigé, il n’y a pas d’autre prévision que celle d’automne.</translation>
    </message>
    <message>
        <source>Rain or snow lay on the hive on %{day}: that weighing counts for less.</source>
        <translation>Il y avait de la pluie ou de la neige sur la ruche le %{day}&#xa0;: cette pesée compte moins.</translation>
    </message>
    <message>
        <source>Few of the winters first drawn fitted what was seen; they were drawn again around it.</source>
        <translation>Peu des hivers tirés d’abord concordaient avec ce qui a été vu&#x202f;; d’autres ont été tirés, plus proches.</translation>
    </message>
    <message>
        <source>Only about %{winters:0} of the simulated winters fit what was seen, so the shares are rough.</source>
        <translation>Environ %{winters:0} seulement des hivers simulés concordent avec ce qui a été vu&#xa0;: les fréquences sont donc approximatives.</translation>
    </message>
    <message numerus="yes">
        <source>Measured temperatures of %n days stand for the weather so far.</source>
        <translation>
            <numerusform>La température mesurée de %n jour tient lieu du temps qu’il a fait jusqu’ici.</numerusform>
            <numerusform>Les températures mesurées de %n jours tiennent lieu du temps qu’il a fait jusqu’ici.</numerusform>
        </translation>
    </message>
    <message>
        <source>The measured temperature of one day stands for the weather so far.</source>
        <translation>La température mesurée d’un jour tient lieu du temps qu’il a fait jusqu’ici.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % more than the model says; used from now on.</source>
        <translation>
            <numerusform>En %n hiver, ces abeilles ont consommé %{percent:0}&#xa0;% de plus que ne le dit le modèle&#x202f;; on en tient compte désormais.</numerusform>
            <numerusform>En %n hivers, ces abeilles ont consommé %{percent:0}&#xa0;% de plus que ne le dit le modèle&#x202f;; on en tient compte désormais.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, %{percent:0} % more than the model says; used from now on.</source>
        <translation>En un hiver, ces abeilles ont consommé, pour autant qu’il le dise, %{percent:0}&#xa0;% de plus que ne le dit le modèle&#x202f;; on en tient compte désormais.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % less than the model says; used from now on.</source>
        <translation>
            <numerusform>En %n hiver, ces abeilles ont consommé %{percent:0}&#xa0;% de moins que ne le dit le modèle&#x202f;; on en tient compte désormais.</numerusform>
            <numerusform>En %n hivers, ces abeilles ont consommé %{percent:0}&#xa0;% de moins que ne le dit le modèle&#x202f;; on en tient compte désormais.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, %{percent:0} % less than the model says; used from now on.</source>
        <translation>En un hiver, ces abeilles ont consommé, pour autant qu’il le dise, %{percent:0}&#xa0;% de moins que ne le dit le modèle&#x202f;; on en tient compte désormais.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate what the model says, within 2 %.</source>
        <translation>
            <numerusform>En %n hiver, ces abeilles ont consommé ce que dit le modèle, à 2&#xa0;% près.</numerusform>
            <numerusform>En %n hivers, ces abeilles ont consommé ce que dit le modèle, à 2&#xa0;% près.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, what the model says, within 2 %.</source>
        <translation>En un hiver, ces abeilles ont consommé, pour autant qu’il le dise, ce que dit le modèle, à 2&#xa0;% près.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % faster than the model says; used from now on.</source>
        <translation>
            <numerusform>En %n hiver, la colonie a perdu des abeilles %{percent:0}&#xa0;% plus vite que ne le dit le modèle&#x202f;; on en tient compte désormais.</numerusform>
            <numerusform>En %n hivers, la colonie a perdu des abeilles %{percent:0}&#xa0;% plus vite que ne le dit le modèle&#x202f;; on en tient compte désormais.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter they lost bees, as far as it tells, %{percent:0} % faster than the model says; used from now on.</source>
        <translation>En un hiver, la colonie a perdu des abeilles, pour autant qu’il le dise, %{percent:0}&#xa0;% plus vite que ne le dit le modèle&#x202f;; on en tient compte désormais.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>
            <numerusform>En %n hiver, la colonie a perdu des abeilles %{percent:0}&#xa0;% plus lentement que ne le dit le modèle&#x202f;; on en tient compte désormais.</numerusform>
            <numerusform>En %n hivers, la colonie a perdu des abeilles %{percent:0}&#xa0;% plus lentement que ne le dit le modèle&#x202f;; on en tient compte désormais.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter they lost bees, as far as it tells, %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>En un hiver, la colonie a perdu des abeilles, pour autant qu’il le dise, %{percent:0}&#xa0;% plus lentement que ne le dit le modèle&#x202f;; on en tient compte désormais.</translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>
            <numerusform>D’après %n printemps, les miellées de printemps commencent ici %{days:1} jours plus tard que ne le dit le climat&#x202f;; on en tient compte désormais.</numerusform>
            <numerusform>D’après %n printemps, les miellées de printemps commencent ici %{days:1} jours plus tard que ne le dit le climat&#x202f;; on en tient compte désormais.</numerusform>
        </translation>
    </message>
    <message>
        <source>Going by one spring, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>D’après un seul printemps, les miellées de printemps commencent ici %{days:1} jours plus tard que ne le dit le climat&#x202f;; on en tient compte désormais.</translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>
            <numerusform>D’après %n printemps, les miellées de printemps commencent ici %{days:1} jours plus tôt que ne le dit le climat&#x202f;; on en tient compte désormais.</numerusform>
            <numerusform>D’après %n printemps, les miellées de printemps commencent ici %{days:1} jours plus tôt que ne le dit le climat&#x202f;; on en tient compte désormais.</numerusform>
        </translation>
    </message>
    <message>
        <source>Going by one spring, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>D’après un seul printemps, les miellées de printemps commencent ici %{days:1} jours plus tôt que ne le dit le climat&#x202f;; on en tient compte désormais.</translation>
    </message>
    <message>
        <source>Spring forage should carry the colony from about %{day}.</source>
        <translation>Les miellées de printemps devraient nourrir la colonie à partir du %{day} environ.</translation>
    </message>
    <message>
        <source>Leave %{leave:amount} for a cold spell until forage is steady.</source>
        <translation>Laissez %{leave:amount} pour un coup de froid, tant que les miellées ne sont pas régulières.</translation>
    </message>
    <message>
        <source>More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts. It is for bees alone: full %{combs} of it may help a light, healthy colony, or be kept for one.</source>
        <translation>Il y a plus que cela&#xa0;: dans 9 hivers sur 10, il reste %{surplus:amount} ou plus au-delà quand commencent les premières miellées. C’est pour les abeilles seules&#xa0;: des cadres pleins peuvent aider une colonie légère et saine, ou lui être gardés.</translation>
    </message>
    <message>
        <source>More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts, and may come out.</source>
        <translation>Il y a plus que cela&#xa0;: dans 9 hivers sur 10, il reste encore %{surplus:amount} ou plus au-delà au début des miellées de printemps, que vous pouvez retirer.</translation>
    </message>
    <message>
        <source>Take out about %{room:amount} of full %{combs} when forage has begun, so that the queen has room to lay.</source>
        <translation>Retirez environ %{room:amount} en cadres pleins quand les miellées ont commencé, pour que la reine ait de la place où pondre.</translation>
    </message>
    <message>
        <source>The nearest climate station is %{km:distance} away, and beyond %{farthest:distance} none speaks for a place: give a climate of your own.</source>
        <translation>La station climatique la plus proche est à %{km:distance}, et au-delà de %{farthest:distance} aucune ne vaut pour un lieu&#xa0;: indiquez votre propre climat.</translation>
    </message>
    <message>
        <source>No climate station lies within %{farthest:distance} of the place: give a climate of your own.</source>
        <translation>Il n’y a pas de station climatique à moins de %{farthest:distance} du lieu&#xa0;: indiquez votre propre climat.</translation>
    </message>
    <message>
        <source>There are no bees in the hive.</source>
        <translation>Il n’y a pas d’abeilles dans la ruche.</translation>
    </message>
    <message>
        <source>Nothing tells how many bees there are: count the %{combs} or the seams they cover.</source>
        <translation>Rien ne dit combien il y a d’abeilles&#xa0;: comptez les cadres ou les ruelles qu’elles occupent.</translation>
    </message>
    <message>
        <source>By its weight on %{day} there are %{low:amount} to %{high:amount} of stores, with %{tare:amount} for the empty hive and what few or many bees weigh.</source>
        <translation>D’après son poids du %{day}, il y a de %{low:amount} à %{high:amount} de provisions, avec %{tare:amount} pour la ruche vide et ce que pèsent peu ou beaucoup d’abeilles.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}. How many bees there are nobody counts in the cold, and without that no amount can be said: one portion does no harm, and a weighing tells whether more is wanted.</source>
        <translation>Soupesée le %{day}, la ruche était légère. Personne ne compte les abeilles par temps froid, et sans leur nombre aucune quantité ne peut être dite&#xa0;: une dose ne fait pas de mal, et une pesée dira s’il en faut davantage.</translation>
    </message>
    <message>
        <source>Nothing tells what stores there are: look at the %{combs}, weigh the hive, or heft it.</source>
        <translation>Rien ne dit quelles provisions il y a&#xa0;: examinez les cadres, pesez la ruche, ou soupesez-la.</translation>
    </message>
    <message>
        <source>The day asked about lies in the month before the season begins: ask from 1 August on, in the south from the end of January.</source>
        <translation>Le jour considéré est dans le mois qui précède le début de la saison&#xa0;: interrogez à partir du 1er août, dans le sud à partir de la fin janvier.</translation>
    </message>
    <message>
        <source>This climate has no cold or dark season to derive a dearth from: give the dates of the build-up and of the start of spring forage.</source>
        <translation>Ce climat n’a ni saison froide ni saison sombre d’où déduire une disette&#xa0;: indiquez les dates du développement printanier et du début des miellées de printemps.</translation>
    </message>
    <message>
        <source>Spring forage has started: no winter is left to ask about.</source>
        <translation>Les miellées de printemps ont commencé&#xa0;: il n’y a plus d’hiver à prévoir.</translation>
    </message>
    <message>
        <source>With signs of disease nothing else counts: no honey, no %{combs} and no bees leave this hive before the inspector has seen it. It is fed only to live until then.</source>
        <translation>Avec des signes de maladie, rien d’autre ne compte&#xa0;: ni miel, ni cadres, ni abeilles ne quittent cette ruche avant que le technicien sanitaire apicole l’ait vue. On ne la nourrit que pour qu’elle vive jusque-là.</translation>
    </message>
    <message>
        <source>Of about %{stores:amount} in the hive only %{within:amount} lie where the bees can reach them in the cold.</source>
        <translation>Sur environ %{stores:amount} dans la ruche, %{within:amount} seulement sont là où les abeilles peuvent les atteindre par temps froid.</translation>
    </message>
    <message>
        <source>Nothing of the about %{stores:amount} in the hive lies where the bees can reach it in the cold.</source>
        <translation>Sur environ %{stores:amount} dans la ruche, rien n’est là où les abeilles peuvent l’atteindre par temps froid.</translation>
    </message>
    <message>
        <source>About %{stores:amount} of stores may last less than %{days:0} days.</source>
        <translation>Environ %{stores:amount} de provisions pourraient ne pas suffire pour %{days:0} jours.</translation>
    </message>
    <message>
        <source>Next to nothing is left in the hive.</source>
        <translation>Il ne reste presque rien dans la ruche.</translation>
    </message>
    <message>
        <source>Neither queen nor eggs nor brood were seen, and it is not yet too late in the year for eggs: such a colony does not live through winter alone. Give it a %{comb} with eggs of another colony, and look after four days: queen cells on it mean she is gone.</source>
        <translation>Ni reine, ni œufs, ni couvain n’ont été vus, et il n’est pas encore trop tard dans l’année pour des œufs&#xa0;: une telle colonie ne passe pas l’hiver seule. Donnez-lui un cadre avec des œufs pris à une autre colonie, et regardez après quatre jours&#xa0;: des cellules royales dessus veulent dire que la reine a disparu.</translation>
    </message>
    <message>
        <source>%{first:evidence} says %{low:amount}, %{second:evidence} says %{high:amount}: no amount is told before one of them is found wrong.</source>
        <translation>D’après %{first:evidence}&#xa0;: %{low:amount}&#x202f;; d’après %{second:evidence}&#xa0;: %{high:amount}. Aucune quantité n’est dite avant qu’une des deux indications soit reconnue fausse.</translation>
    </message>
    <message>
        <source>Light at this time of year stands for about %{stores:amount}, give or take a third: one portion at once, then weigh.</source>
        <translation>Légère, à cette époque, veut dire environ %{stores:amount}, à un tiers près&#xa0;: une dose tout de suite, puis pesez.</translation>
    </message>
    <message>
        <source>Fair at this time of year stands for about %{stores:amount}, give or take a third: too rough to decide by.</source>
        <translation>Moyenne, à cette époque, veut dire environ %{stores:amount}, à un tiers près&#xa0;: trop approximatif pour décider.</translation>
    </message>
    <message>
        <source>Heavy at this time of year stands for about %{stores:amount}, give or take a third; no honey is taken on a heft.</source>
        <translation>Lourde, à cette époque, veut dire environ %{stores:amount}, à un tiers près&#x202f;; on ne récolte pas de miel d’après un soupesage.</translation>
    </message>
    <message>
        <source>About %{bees:hundreds} bees going into winter are too few to winter well alone; 7,000 are the least.</source>
        <translation>Environ %{bees:hundreds} abeilles à l’entrée de l’hiver, c’est trop peu pour bien hiverner seules&#x202f;; il en faut au moins 7000.</translation>
    </message>
    <message>
        <source>%{safety:amount} are to be in the hive so that it is safe until the next look; there are about %{stores:amount}. What it needs for winter is fed later.</source>
        <translation>La ruche doit contenir %{safety:amount} pour être en sûreté jusqu’à la prochaine visite&#x202f;; elle en a environ %{stores:amount}. Ce qu’il lui faut pour l’hiver se donnera plus tard.</translation>
    </message>
    <message>
        <source>%{safety:amount} stay in the hive until the next look; what is taken now is fed as sugar later, once the mites are treated.</source>
        <translation>%{safety:amount} restent dans la ruche jusqu’à la prochaine visite&#x202f;; ce qui est récolté maintenant sera remplacé plus tard par du sucre, une fois le varroa traité.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are in the hive, and %{safety:amount} are enough until the next look: nothing is decided for winter yet.</source>
        <translation>La ruche contient environ %{stores:amount}, et %{safety:amount} suffisent jusqu’à la prochaine visite&#xa0;: rien n’est encore décidé pour l’hiver.</translation>
    </message>
    <message>
        <source>Nectar or syrup is fresh in the open cells: they count as %{share:0} % of what they would weigh capped, until a look finds them ripe.</source>
        <translation>Le nectar ou le sirop est frais dans les cellules non operculées&#xa0;: elles comptent pour %{share:0}&#xa0;% de ce qu’elles pèseraient operculées, jusqu’à ce qu’une visite les trouve mûres.</translation>
    </message>
    <message>
        <source>The %{combs} hold about %{room:amount}, and they are full.</source>
        <translation>Les cadres contiennent environ %{room:amount}, et ils sont pleins.</translation>
    </message>
    <message>
        <source>About %{missing:amount} of stores are missing on %{day}.</source>
        <translation>Il manque environ %{missing:amount} de provisions au %{day}.</translation>
    </message>
    <message>
        <source>In a dearth bees take thick syrup in small portions, right over the cluster, on days that are warm enough.</source>
        <translation>En période de disette, les abeilles prennent le sirop lourd en petites doses, juste au-dessus de la grappe, les jours assez chauds.</translation>
    </message>
    <message>
        <source>After the last day for syrup bees take small portions only, warm, thick and right over the cluster, and fewer from week to week.</source>
        <translation>Après le dernier jour pour le sirop, les abeilles ne prennent plus que de petites doses de sirop lourd et tiède, juste au-dessus de la grappe, et de moins en moins de semaine en semaine.</translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end: what is missing goes on as %{board} before the hive is wrapped.</source>
        <translation>
            <numerusform>Les abeilles peuvent être confinées par le froid %n jour de suite&#xa0;: ce qui manque se donne en candi avant d’emballer la ruche.</numerusform>
            <numerusform>Les abeilles peuvent être confinées par le froid %n jours de suite&#xa0;: ce qui manque se donne en candi avant d’emballer la ruche.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{Board} should have been on before the hive was wrapped. Cold may lock the bees in for %n days on end, and most winters would starve them as they are: laid on now it still helps, if the bees can get at it.</source>
        <translation>
            <numerusform>Le candi aurait dû être posé avant d’emballer la ruche. Les abeilles peuvent être confinées par le froid %n jour de suite et, telle quelle, la colonie mourrait de faim dans la plupart des hivers&#xa0;: posé maintenant, il aide encore, si les abeilles peuvent l’atteindre.</numerusform>
            <numerusform>Le candi aurait dû être posé avant d’emballer la ruche. Les abeilles peuvent être confinées par le froid %n jours de suite et, telle quelle, la colonie mourrait de faim dans la plupart des hivers&#xa0;: posé maintenant, il aide encore, si les abeilles peuvent l’atteindre.</numerusform>
        </translation>
    </message>
    <message>
        <source>About %{stores:amount} are left, and %{reserve:amount} are to be kept: one visit now, the next after weighing.</source>
        <translation>Il reste environ %{stores:amount}, et il faut en garder %{reserve:amount}&#xa0;: un passage maintenant, le suivant après une pesée.</translation>
    </message>
    <message>
        <source>Nothing can or need be fed today; whether it will be wanted a later weighing tells.</source>
        <translation>Aujourd’hui, rien ne peut ni ne doit être donné&#x202f;; s’il faudra le faire, une pesée le dira plus tard.</translation>
    </message>
    <message>
        <source>The honey of the super is for people and was not counted: the bees keep their %{stores:amount} when it comes off.</source>
        <translation>Le miel de la hausse est pour la récolte et n’a pas été compté&#xa0;: les abeilles gardent leurs %{stores:amount} quand on la retire.</translation>
    </message>
    <message>
        <source>About %{spare:amount} are to spare above what the colony should winter on and what is usual here.</source>
        <translation>Il y a environ %{spare:amount} d’excédent, au-delà de ce qu’il faut à la colonie pour hiverner et de ce qui est d’usage ici.</translation>
    </message>
    <message>
        <source>About %{spare:amount} are to spare above what the colony should winter on.</source>
        <translation>Il y a environ %{spare:amount} d’excédent, au-delà de ce qu’il faut à la colonie pour hiverner.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted: that is enough, and what is more stays with the bees.</source>
        <translation>Il y aura environ %{stores:amount}, et il en faut %{need:amount}&#xa0;: c’est assez, et le surplus reste aux abeilles.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted; but %{usual:amount} or more are usual here, and less than that is never left after a harvest: what is more stays with the bees.</source>
        <translation>Il y aura environ %{stores:amount}, et il en faut %{need:amount}&#x202f;; mais %{usual:amount} ou plus sont d’usage ici, et l’on ne laisse jamais moins après une récolte&#xa0;: le surplus reste aux abeilles.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted: a difference of less than %{dead:amount} is neither fed nor taken.</source>
        <translation>Il y aura environ %{stores:amount}, et il en faut %{need:amount}&#xa0;: une différence de moins de %{dead:amount} ne se donne ni ne se récolte.</translation>
    </message>
    <message>
        <source>No brood was seen, though the queen usually still lays: if she has stopped, %{stopped:amount} are enough instead of %{need:amount}.</source>
        <translation>On n’a pas vu de couvain, bien que d’habitude la reine ponde encore&#xa0;: si elle a cessé, %{stopped:amount} suffisent au lieu de %{need:amount}.</translation>
    </message>
    <message>
        <source>No eggs at this time of year are normal: that is no sign that the queen is gone.</source>
        <translation>L’absence d’œufs est normale à cette époque&#xa0;: ce n’est pas signe que la reine a disparu.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then give drawn comb or a box of it (no foundation now), or full %{combs} from store or a healthy neighbour.</source>
        <translation>Il faut %{need:amount}, et les cadres contiennent environ %{room:amount}&#xa0;: pesez d’abord, puis donnez des cadres bâtis ou un élément garni de tels cadres (pas de cire gaufrée maintenant), ou des cadres pleins gardés de côté ou pris à une voisine saine.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: give drawn comb or a box of it (no foundation now), or full %{combs} from store or a healthy neighbour.</source>
        <translation>Il faut %{need:amount}, et les cadres contiennent environ %{room:amount}&#xa0;: donnez des cadres bâtis ou un élément garni de tels cadres (pas de cire gaufrée maintenant), ou des cadres pleins gardés de côté ou pris à une voisine saine.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: change empty %{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Il faut %{need:amount}, et les cadres contiennent environ %{room:amount}&#xa0;: remplacez des cadres vides par des pleins, gardés de côté ou pris à une voisine saine&#x202f;; pesez en hiver, et posez du candi s’il en manque encore.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then change empty %{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Il faut %{need:amount}, et les cadres contiennent environ %{room:amount}&#xa0;: pesez d’abord, puis remplacez des cadres vides par des pleins, gardés de côté ou pris à une voisine saine&#x202f;; pesez en hiver, et posez du candi s’il en manque encore.</translation>
    </message>
    <message>
        <source>On %{day} it should hold about %{need:amount}: %{combs:halves} full %{combs}, %{gross:amount} with hive and bees.</source>
        <translation>Le %{day}, la ruche devrait contenir environ %{need:amount}&#xa0;: %{combs:halves} cadres pleins, %{gross:amount} avec la ruche et les abeilles.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}.</source>
        <translation>D’usage ici (%{place})&#xa0;: de %{low:amount} à %{high:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}.</source>
        <translation>D’usage ici (%{place})&#xa0;: %{low:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters.</source>
        <translation>D’usage ici (%{place})&#xa0;: %{low:amount}. Cette réponse dit %{need:amount}, car elle compte les abeilles, la ruche et les hivers de cette colonie.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters.</source>
        <translation>D’usage ici (%{place})&#xa0;: de %{low:amount} à %{high:amount}. Cette réponse dit %{need:amount}, car elle compte les abeilles, la ruche et les hivers de cette colonie.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.</source>
        <translation>D’usage ici (%{place})&#xa0;: de %{low:amount} à %{high:amount}. Cette réponse dit %{need:amount}, car elle compte les abeilles, la ruche et les hivers de cette colonie. Ce chiffre est ce que disent les apiculteurs, rien de publié&#xa0;: il ne retient pas de miel.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.</source>
        <translation>D’usage ici (%{place})&#xa0;: %{low:amount}. Cette réponse dit %{need:amount}, car elle compte les abeilles, la ruche et les hivers de cette colonie. Ce chiffre est ce que disent les apiculteurs, rien de publié&#xa0;: il ne retient pas de miel.</translation>
    </message>
    <message>
        <source>Counted from today %{need:amount} are wanted: then %{reserve:amount} or more are left in %{in:0} of 100 winters when spring forage starts, around %{forage}.</source>
        <translation>À partir d’aujourd’hui, il faut %{need:amount}&#xa0;: il reste alors %{reserve:amount} ou plus dans %{in:0} hivers sur 100 au début des miellées de printemps, vers le %{forage}.</translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when nothing can be fed: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>Les abeilles peuvent être confinées par le froid %n jour de suite, pendant lequel rien ne peut être donné&#xa0;: il doit donc rester assez dans %{in:0} hivers sur 100, et non dans 80.</numerusform>
            <numerusform>Les abeilles peuvent être confinées par le froid %n jours de suite, pendant lesquels rien ne peut être donné&#xa0;: il doit donc rester assez dans %{in:0} hivers sur 100, et non dans 80.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when they reach only food that touches them: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>Les abeilles peuvent être confinées par le froid %n jour de suite, pendant lequel elles n’atteignent que la nourriture qui les touche&#xa0;: il doit donc rester assez dans %{in:0} hivers sur 100, et non dans 80.</numerusform>
            <numerusform>Les abeilles peuvent être confinées par le froid %n jours de suite, pendant lesquels elles n’atteignent que la nourriture qui les touche&#xa0;: il doit donc rester assez dans %{in:0} hivers sur 100, et non dans 80.</numerusform>
        </translation>
    </message>
    <message>
        <source>%{reserve:amount} are to be left because the hive has more than one brood box; of one box it would be %{one:amount}.</source>
        <translation>Il doit rester %{reserve:amount} parce que la ruche a plus d’un corps&#x202f;; sur un seul corps, ce serait %{one:amount}.</translation>
    </message>
    <message>
        <source>There is empty comb for only about %{room:amount}: no more is fed than finds a place.</source>
        <translation>Il n’y a de place vide dans les cadres que pour environ %{room:amount}&#xa0;: on ne donne pas plus que ce qui y tient.</translation>
    </message>
    <message>
        <source>Not all of it can be taken by the last day for syrup; full %{combs} may make up the rest; else weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Tout ne peut pas être pris d’ici au dernier jour pour le sirop&#x202f;; des cadres pleins peuvent compléter&#x202f;; sinon, pesez en hiver, et posez du candi s’il en manque encore.</translation>
    </message>
    <message>
        <source>Feeding is best finished by %{day}; this plan goes on after it.</source>
        <translation>Le nourrissement est à terminer de préférence d’ici au %{day}&#x202f;; ce plan se poursuit au-delà.</translation>
    </message>
    <message>
        <source>The honey holds %{water:1} % water, more than %{most:0} %, and would ferment: it stays with the bees, now and in spring.</source>
        <translation>Le miel contient %{water:1}&#xa0;% d’eau, plus que %{most:0}&#xa0;%, et fermenterait&#xa0;: il reste aux abeilles, maintenant et au printemps.</translation>
    </message>
    <message>
        <source>The honey holds %{water:1} % water: it may be kept, but driest honey keeps best.</source>
        <translation>Le miel contient %{water:1}&#xa0;% d’eau&#xa0;: il peut se garder, mais plus un miel est sec, mieux il se garde.</translation>
    </message>
    <message>
        <source>Sugar was fed since last spring: no %{comb} that was on the hive then is honey for people, now or in spring.</source>
        <translation>Du sucre a été donné depuis le printemps dernier&#xa0;: aucun cadre qui était alors sur la ruche ne donne de miel à récolter, ni maintenant ni au printemps.</translation>
    </message>
    <message>
        <source>About %{spare:amount} to spare may go as %{combs} to bees: to your own nuclei or to a healthy colony of this yard.</source>
        <translation>Environ %{spare:amount} d’excédent peuvent être donnés en cadres à d’autres colonies&#xa0;: à vos propres nucléus ou à une colonie saine de ce rucher.</translation>
    </message>
    <message>
        <source>What is to spare may also stay and be taken in spring: typically %{spare:amount} more than is wanted when spring forage starts.</source>
        <translation>L’excédent peut aussi rester et être récolté au printemps&#xa0;: le plus probable est %{spare:amount} de plus que ce qu’il faut au début des miellées de printemps.</translation>
    </message>
    <message>
        <source>There is no winter here, only a dearth between the last nectar of autumn and the first of spring. Local flows decide it, and the error is twice that of colder places.</source>
        <translation>Il n’y a pas d’hiver ici, seulement une disette entre le dernier nectar d’automne et le premier du printemps. Ce sont les miellées du lieu qui en décident, et l’erreur est le double de celle des lieux plus froids.</translation>
    </message>
    <message>
        <source>The climate is your own climate, as you gave it.</source>
        <translation>Le climat est le vôtre, tel que vous l’avez indiqué.</translation>
    </message>
    <message>
        <source>The climate is that of the station for %{place}, %{km:distance} away.</source>
        <translation>Le climat est celui de la station %{place}, à %{km:distance}.</translation>
    </message>
    <message>
        <source>The climate is that of the station for %{place}.</source>
        <translation>Le climat est celui de la station %{place}.</translation>
    </message>
    <message>
        <source>Nectar still coming in is counted: %{strength:flow}.</source>
        <translation>Le nectar qui rentre encore est compté&#xa0;: %{strength:flow}.</translation>
    </message>
    <message>
        <source>About %{bees:hundreds} bees are fewer than the 4,000 from which colonies have been measured: the figures are less sure.</source>
        <translation>Environ %{bees:hundreds} abeilles, c’est moins que les 4000 à partir desquelles des colonies ont été mesurées&#xa0;: les chiffres sont moins sûrs.</translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{used} used since.</source>
        <translation>
            <numerusform>La dernière visite date de %n jour avant le jour considéré&#x202f;; le modèle compte depuis %{used} consommés.</numerusform>
            <numerusform>La dernière visite date de %n jours avant le jour considéré&#x202f;; le modèle compte depuis %{used} consommés.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last look was the day before the day asked about; the model counts %{used} used since.</source>
        <translation>La dernière visite date de la veille du jour considéré&#x202f;; le modèle compte depuis %{used} consommés.</translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>
            <numerusform>La dernière visite date de %n jour avant le jour considéré&#x202f;; le modèle compte depuis %{gained} rentrés.</numerusform>
            <numerusform>La dernière visite date de %n jours avant le jour considéré&#x202f;; le modèle compte depuis %{gained} rentrés.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last look was the day before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>La dernière visite date de la veille du jour considéré&#x202f;; le modèle compte depuis %{gained} rentrés.</translation>
    </message>
    <message numerus="yes">
        <source>Syrup 3:2 by mass: %n warm days are left to ripen it.</source>
        <translation>
            <numerusform>Sirop 3:2 en poids&#xa0;: il reste %n jour chaud pour le transformer.</numerusform>
            <numerusform>Sirop 3:2 en poids&#xa0;: il reste %n jours chauds pour le transformer.</numerusform>
        </translation>
    </message>
    <message>
        <source>Syrup 3:2 by mass: one warm day is left to ripen it.</source>
        <translation>Sirop 3:2 en poids&#xa0;: il reste un jour chaud pour le transformer.</translation>
    </message>
    <message numerus="yes">
        <source>Syrup 2:1 by mass: %n warm days are left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>
            <numerusform>Sirop 2:1 en poids&#xa0;: il reste %n jour chaud, moins que les cinq semaines que demande le 3:2&#x202f;; mieux vaut donc que les abeilles aient moins d’eau à évaporer.</numerusform>
            <numerusform>Sirop 2:1 en poids&#xa0;: il reste %n jours chauds, moins que les cinq semaines que demande le 3:2&#x202f;; mieux vaut donc que les abeilles aient moins d’eau à évaporer.</numerusform>
        </translation>
    </message>
    <message>
        <source>Syrup 2:1 by mass: one warm day is left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>Sirop 2:1 en poids&#xa0;: il reste un jour chaud, moins que les cinq semaines que demande le 3:2&#x202f;; mieux vaut donc que les abeilles aient moins d’eau à évaporer.</translation>
    </message>
    <message>
        <source>No single %{comb} may be taken: each holds brood, hangs over or beside the bees, is not capped enough, took syrup, is old, or weighs more than can be spared.</source>
        <translation>Aucun cadre ne peut être récolté&#xa0;: chacun porte du couvain, est au-dessus des abeilles ou à côté d’elles, n’est pas assez operculé, a pris du sirop, est vieux, ou pèse plus que l’excédent.</translation>
    </message>
    <message>
        <source>About %{spare:amount} would be to spare if it is as thought; but with the doubt of what is there more than %{in:0} of 100 winters would fall below %{reserve:amount} without it, so it stays with the bees.</source>
        <translation>Il y aurait environ %{spare:amount} d’excédent si tout est comme on le pense&#x202f;; mais, vu le doute sur ce qu’il y a, plus de %{in:0} hivers sur 100 descendraient sous %{reserve:amount} sans cela&#xa0;: il reste donc aux abeilles.</translation>
    </message>
    <message>
        <source>Only %{percent:0} % of the stores are capped: honey is ripe from two thirds on, so none is taken before more is.</source>
        <translation>Seuls %{percent:0}&#xa0;% des provisions sont operculés&#xa0;: le miel est mûr à partir des deux tiers, on n’en récolte donc pas avant.</translation>
    </message>
    <message>
        <source>%{Combs} were only counted, so none can be named.</source>
        <translation>Les cadres ont seulement été comptés&#xa0;: aucun ne peut donc être désigné.</translation>
    </message>
    <message>
        <source>The hive was treated while this honey was in it, so none of it is taken.</source>
        <translation>La ruche a été traitée pendant que ce miel y était&#xa0;: on n’en récolte donc pas.</translation>
    </message>
    <message>
        <source>%{Combs} that stood for years in the brood nest are not taken.</source>
        <translation>Les cadres restés des années dans le nid à couvain ne se récoltent pas.</translation>
    </message>
    <message>
        <source>Honey the autumn flow has yet to bring is never counted for harvest.</source>
        <translation>Le miel que la miellée d’automne doit encore apporter n’est jamais compté pour la récolte.</translation>
    </message>
    <message>
        <source>%{built:0} %{combs} are built, the bees cover %{covered:halves}, and %{empty:0} are empty: take empty %{combs} out before winter, or put a follower beside the nest.</source>
        <translation>%{built:0} cadres sont bâtis, les abeilles en occupent %{covered:halves}, et %{empty:0} sont vides&#xa0;: retirez des cadres vides avant l’hiver, ou placez une partition à côté du nid.</translation>
    </message>
    <message>
        <source>About %{open:amount} are open stores that may not be capped before the cold.</source>
        <translation>Environ %{open:amount} sont des provisions non operculées, qui ne le seront peut-être pas avant le froid.</translation>
    </message>
    <message>
        <source>The season lies at the edge of the rules, as in high and far northern places: compare its dates with your own.</source>
        <translation>La saison est à la limite des règles, comme dans les lieux élevés ou très au nord&#xa0;: comparez ses dates avec les vôtres.</translation>
    </message>
    <message>
        <source>The derived date of %{which:season} gave way to a given one and is now %{to}.</source>
        <translation>Pour %{which:season}, la date déduite a cédé devant une date indiquée&#xa0;: c’est maintenant le %{to}.</translation>
    </message>
    <message>
        <source>Dates of the season were given and not derived.</source>
        <translation>Des dates de la saison ont été indiquées et non déduites.</translation>
    </message>
    <message>
        <source>For the height of the place all temperatures are shifted by %{kelvin:kelvins}.</source>
        <translation>Pour l’altitude du lieu, toutes les températures sont décalées de %{kelvin:kelvins}.</translation>
    </message>
    <message>
        <source>The weighing of %1 is not counted.</source>
        <translation>La pesée du %1 n’est pas comptée.</translation>
    </message>
    <message>
        <source>The feed of %1 is not counted.</source>
        <translation>Le nourrissement du %1 n’est pas compté.</translation>
    </message>
    <message>
        <source>The harvest of %1 is not counted.</source>
        <translation>La récolte du %1 n’est pas comptée.</translation>
    </message>
    <message>
        <source>The bees seen on %1 are not counted.</source>
        <translation>Les abeilles vues le %1 ne sont pas comptées.</translation>
    </message>
    <message>
        <source>The brood seen on %1 is not counted.</source>
        <translation>Le couvain vu le %1 n’est pas compté.</translation>
    </message>
    <message>
        <source>The %{combs} of %1 are not counted.</source>
        <translation>Les cadres du %1 ne sont pas comptés.</translation>
    </message>
    <message>
        <source>The water measured on %1 is not counted.</source>
        <translation>La teneur en eau mesurée le %1 n’est pas comptée.</translation>
    </message>
    <message>
        <source>The empty weight that is given is not counted.</source>
        <translation>Le poids à vide indiqué n’est pas compté.</translation>
    </message>
    <message>
        <source>The seams seen on %1 are not counted.</source>
        <translation>Les ruelles vues le %1 ne sont pas comptées.</translation>
    </message>
    <message>
        <source>What was found on %1 is not counted.</source>
        <translation>Ce qui a été trouvé le %1 n’est pas compté.</translation>
    </message>
    <message>
        <source>%{from} is united onto this colony by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.</source>
        <translation>La colonie %{from} est réunie à celle-ci au plus tard le %{day}&#xa0;: ses abeilles, son couvain et ses provisions sont comptés avec ceux d’ici, et aucune des deux ne donne ni ne reçoit de cadres.</translation>
    </message>
    <message>
        <source>Another colony of the yard is united onto this one by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.</source>
        <translation>Une autre colonie du rucher est réunie à celle-ci au plus tard le %{day}&#xa0;: ses abeilles, son couvain et ses provisions sont comptés avec ceux d’ici, et aucune des deux ne donne ni ne reçoit de cadres.</translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from %{from}.</source>
        <translation>
            <numerusform>Avant d’acheter du sucre&#xa0;: %n cadre d’environ %{kg:amount} peut venir de la colonie %{from}.</numerusform>
            <numerusform>Avant d’acheter du sucre&#xa0;: %n cadres, avec environ %{kg:amount}, peuvent venir de la colonie %{from}.</numerusform>
        </translation>
    </message>
    <message>
        <source>Before buying sugar: one %{comb} with about %{kg:amount} can come from %{from}.</source>
        <translation>Avant d’acheter du sucre&#xa0;: un cadre d’environ %{kg:amount} peut venir de la colonie %{from}.</translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>
            <numerusform>Avant d’acheter du sucre&#xa0;: %n cadre d’environ %{kg:amount} peut venir d’une autre colonie du rucher.</numerusform>
            <numerusform>Avant d’acheter du sucre&#xa0;: %n cadres, avec environ %{kg:amount}, peuvent venir d’une autre colonie du rucher.</numerusform>
        </translation>
    </message>
    <message>
        <source>Before buying sugar: one %{comb} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>Avant d’acheter du sucre&#xa0;: un cadre d’environ %{kg:amount} peut venir d’une autre colonie du rucher.</translation>
    </message>
    <message>
        <source>%{Combs} with about %{kg:amount} more than those that come back go to %{receiver}, which is short: this hive keeps what it should winter on.</source>
        <translation>Des cadres contenant environ %{kg:amount} de plus que ceux qui reviennent vont à la colonie %{receiver}, qui en manque&#xa0;: cette ruche garde ce qu’il lui faut pour hiverner.</translation>
    </message>
    <message>
        <source>%{Combs} with about %{kg:amount} more than those that come back go to another colony of the yard, which is short: this hive keeps what it should winter on.</source>
        <translation>Des cadres contenant environ %{kg:amount} de plus que ceux qui reviennent vont à une autre colonie du rucher, qui en manque&#xa0;: cette ruche garde ce qu’il lui faut pour hiverner.</translation>
    </message>
    <message>
        <source>When they have become one, after about a week, sort the %{combs}: brood and the full ones stay, in two boxes at most, and the boxes with empty ones come off.</source>
        <translation>Quand elles n’en font plus qu’une, après une semaine environ, triez les cadres&#xa0;: le couvain et les pleins restent, sur deux éléments au plus, et les éléments garnis de cadres vides sont retirés.</translation>
    </message>
    <message>
        <source>%{from} may be united onto this colony by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask again when they are one.</source>
        <translation>La colonie %{from} peut être réunie à celle-ci au plus tard le %{day}, une fois certain qu’elle est orpheline. Jusque-là, celle-ci est pesée et nourrie seule&#x202f;; interrogez de nouveau quand elles n’en feront plus qu’une.</translation>
    </message>
    <message>
        <source>Another colony of the yard may be united onto this one by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask again when they are one.</source>
        <translation>Une autre colonie du rucher peut être réunie à celle-ci au plus tard le %{day}, une fois certain qu’elle est orpheline. Jusque-là, celle-ci est pesée et nourrie seule&#x202f;; interrogez de nouveau quand elles n’en feront plus qu’une.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but beyond what keepers here leave a colony it is too little to give %{combs} away.</source>
        <translation>La colonie %{receiver} manque de provisions, et celle-ci en a environ %{kg:amount} au-delà de son objectif&#x202f;; mais, au-delà de ce que les apiculteurs d’ici laissent à une colonie, c’est trop peu pour donner des cadres.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but which of its %{combs} could go is not known: look at them one by one, write them down, and ask again.</source>
        <translation>La colonie %{receiver} manque de provisions, et celle-ci en a environ %{kg:amount} au-delà de son objectif&#x202f;; mais on ne sait pas lesquels de ses cadres pourraient partir&#xa0;: examinez-les un par un, notez-les, et interrogez de nouveau.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but no whole %{comb} of it without brood can go there.</source>
        <translation>La colonie %{receiver} manque de provisions, et celle-ci en a environ %{kg:amount} au-delà de son objectif&#x202f;; mais aucun cadre entier sans couvain ne peut y aller.</translation>
    </message>
    <message>
        <source>%{from} was united onto this colony on %{day}: its bees, brood and stores, as they were seen on %{seen}, are counted with these.</source>
        <translation>La colonie %{from} a été réunie à celle-ci le %{day}&#xa0;: ses abeilles, son couvain et ses provisions, tels qu’ils ont été vus le %{seen}, sont comptés avec ceux d’ici.</translation>
    </message>
    <message>
        <source>The boxes of %{from} are taken to stand on top, with their %{combs}. If they do not, write down which boxes the hive has now.</source>
        <translation>On suppose les éléments de la colonie %{from} posés au-dessus, avec leurs cadres. Si ce n’est pas le cas, notez quels éléments la ruche a maintenant.</translation>
    </message>
    <message>
        <source>Nothing tells how many bees %{from} brought, which was united onto this colony on %{day}: count the %{combs} they cover now.</source>
        <translation>Rien ne dit combien d’abeilles a apportées la colonie %{from}, réunie à celle-ci le %{day}&#xa0;: comptez les cadres qu’elles occupent maintenant.</translation>
    </message>
    <message>
        <source>Nothing tells what stores %{from} brought, which was united onto this colony on %{day}: they are not counted. Weigh the hive.</source>
        <translation>Rien ne dit quelles provisions a apportées la colonie %{from}, réunie à celle-ci le %{day}&#xa0;: elles ne sont pas comptées. Pesez la ruche.</translation>
    </message>
</context>
<context>
    <name>ScaleWords</name>
    <message>
        <source>there is no time</source>
        <translation>il n’y a pas d’heure</translation>
    </message>
    <message>
        <source>the time cannot be read</source>
        <translation>l’heure ne peut pas être lue</translation>
    </message>
    <message>
        <source>there is no such day</source>
        <translation>ce jour n’existe pas</translation>
    </message>
    <message>
        <source>the time is written in another form than in the rows before</source>
        <translation>l’heure est écrite sous une autre forme que dans les lignes précédentes</translation>
    </message>
    <message>
        <source>there is no weight</source>
        <translation>il n’y a pas de poids</translation>
    </message>
    <message>
        <source>the weight is no number</source>
        <translation>le poids n’est pas un nombre</translation>
    </message>
    <message>
        <source>no hive weighs that</source>
        <translation>aucune ruche ne pèse cela</translation>
    </message>
    <message>
        <source>a quotation mark is not closed</source>
        <translation>un guillemet n’est pas fermé</translation>
    </message>
    <message>
        <source>the line is too long</source>
        <translation>la ligne est trop longue</translation>
    </message>
    <message>
        <source>the clock was put back: its time contradicts the order of the rows</source>
        <translation>l’horloge a été reculée&#xa0;: son heure contredit l’ordre des lignes</translation>
    </message>
    <message>
        <source>line %1 has the same time</source>
        <translation>la ligne %1 a la même heure</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>matériel</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>nourrissement</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>récolte</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>as much was put on and taken off again</source>
        <translation>autant a été posé puis retiré</translation>
    </message>
    <message>
        <source>soon after a feed: the feeder, perhaps</source>
        <translation>peu après un nourrissement&#xa0;: peut-être le nourrisseur</translation>
    </message>
    <message>
        <source>it lost weight afterwards as syrup does</source>
        <translation>la ruche a ensuite perdu du poids comme le fait le sirop</translation>
    </message>
    <message>
        <source>put on while nothing came in</source>
        <translation>posé alors que rien ne rentrait</translation>
    </message>
    <message>
        <source>put on while nectar came in</source>
        <translation>posé alors que du nectar rentrait</translation>
    </message>
    <message>
        <source>more than a feeder holds</source>
        <translation>plus que ne contient un nourrisseur</translation>
    </message>
    <message>
        <source>taken off after as much nectar had come in</source>
        <translation>retiré après qu’autant de nectar était rentré</translation>
    </message>
    <message>
        <source>gone at once by day in a flow: a swarm, perhaps</source>
        <translation>parti d’un coup, de jour, pendant une miellée&#xa0;: peut-être un essaim</translation>
    </message>
    <message>
        <source>while nothing was recorded</source>
        <translation>pendant que rien n’était enregistré</translation>
    </message>
    <message>
        <source>nothing tells</source>
        <translation>rien ne le dit</translation>
    </message>
    <message>
        <source>nectar</source>
        <translation>nectar</translation>
    </message>
    <message>
        <source>eating</source>
        <translation>consommation</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mouillé</translation>
    </message>
    <message>
        <source>no weight on the first</source>
        <translation>pas de poids le premier du mois</translation>
    </message>
    <message>
        <source>no weight on the first of the next month</source>
        <translation>pas de poids le premier du mois suivant</translation>
    </message>
    <message>
        <source>no weight on either first</source>
        <translation>pas de poids ces deux premiers du mois</translation>
    </message>
    <message>
        <source>as said</source>
        <translation>comme indiqué</translation>
    </message>
    <message>
        <source>by the header</source>
        <translation>d’après l’en-tête</translation>
    </message>
    <message>
        <source>by its content</source>
        <translation>d’après son contenu</translation>
    </message>
    <message>
        <source>by the size of the weights</source>
        <translation>d’après la grandeur des poids</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>%1 ± %2 days</source>
        <translation>%1 ± %2 jours</translation>
    </message>
    <message>
        <source>The answer</source>
        <translation>La réponse</translation>
    </message>
    <message>
        <source>The winter</source>
        <translation>L’hiver</translation>
    </message>
    <message>
        <source>What can be done, on the same winters</source>
        <translation>Ce qui peut être fait, sur les mêmes hivers</translation>
    </message>
    <message>
        <source>What the stores rest on</source>
        <translation>Sur quoi repose le chiffre des provisions</translation>
    </message>
    <message>
        <source>%{Combs} that may come off</source>
        <translation>Cadres qui peuvent être récoltés</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Nourrissement</translation>
    </message>
    <message>
        <source>The season here</source>
        <translation>La saison ici</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>To buy and to bring</source>
        <translation>À acheter et à apporter</translation>
    </message>
    <message>
        <source>Everything to do, by day</source>
        <translation>Tout ce qu’il y a à faire, jour par jour</translation>
    </message>
    <message>
        <source>The colonies</source>
        <translation>Les colonies</translation>
    </message>
    <message>
        <source>%{Combs} to give to a neighbour</source>
        <translation>Cadres à donner à une voisine</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>À préparer</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>conclusion</translation>
    </message>
    <message>
        <source>honey that may come off</source>
        <translation>miel qui peut être récolté</translation>
    </message>
    <message>
        <source>sugar to feed</source>
        <translation>sucre à donner</translation>
    </message>
    <message>
        <source>fondant to feed</source>
        <translation>candi à donner</translation>
    </message>
    <message>
        <source>in the hive</source>
        <translation>dans la ruche</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>besoin</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>marge de sécurité</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>abeilles</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>début des miellées de printemps</translation>
    </message>
    <message>
        <source>below the reserve in</source>
        <translation>sous la marge de sécurité</translation>
    </message>
    <message>
        <source>runs out in</source>
        <translation>provisions épuisées</translation>
    </message>
    <message>
        <source>next visit</source>
        <translation>prochain passage</translation>
    </message>
    <message>
        <source>together they hold</source>
        <translation>ensemble, ils contiennent</translation>
    </message>
    <message>
        <source>sugar to water by weight</source>
        <translation>sucre et eau, en poids</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>sucre</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>dernier jour pour le sirop</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>fin des rentrées de nectar</translation>
    </message>
    <message>
        <source>feeding done by</source>
        <translation>nourrissement terminé d’ici au</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>arrêt de la ponte</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reprise de la ponte</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>développement printanier</translation>
    </message>
    <message>
        <source>bags of sugar</source>
        <translation>sacs de sucre</translation>
    </message>
    <message>
        <source>sugar costs about</source>
        <translation>prix du sucre, environ</translation>
    </message>
    <message>
        <source>last day for syrup, of the earliest colony</source>
        <translation>dernier jour pour le sirop, de la colonie la plus pressée</translation>
    </message>
    <message>
        <source>what is done</source>
        <translation>ce qui est fait</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>stores taken or added</source>
        <translation>provisions récoltées ou ajoutées</translation>
    </message>
    <message>
        <source>left when spring forage starts</source>
        <translation>reste au début des miellées de printemps</translation>
    </message>
    <message>
        <source>by</source>
        <translation>d’après</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>says</source>
        <translation>indique</translation>
    </message>
    <message>
        <source>box</source>
        <translation>élément</translation>
    </message>
    <message>
        <source>%{comb}</source>
        <translation>cadre</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>à</translation>
    </message>
    <message>
        <source>%{combs}</source>
        <translation>cadres</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miel</translation>
    </message>
    <message>
        <source>take honey</source>
        <translation>récolter du miel</translation>
    </message>
    <message>
        <source>leave as it is</source>
        <translation>laisser telle quelle</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>nourrir</translation>
    </message>
    <message>
        <source>unite</source>
        <translation>réunir</translation>
    </message>
    <message>
        <source>cannot be said</source>
        <translation>impossible à dire</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>comme prévu</translation>
    </message>
    <message>
        <source>eating faster than planned</source>
        <translation>consomme plus que prévu</translation>
    </message>
    <message>
        <source>food out of reach: feed today</source>
        <translation>coupée de ses provisions&#xa0;: nourrir aujourd’hui</translation>
    </message>
    <message>
        <source>dwindling</source>
        <translation>dépeuplement</translation>
    </message>
    <message>
        <source>less than thought</source>
        <translation>moins qu’on ne pensait</translation>
    </message>
    <message>
        <source>was the feed given?</source>
        <translation>nourrissement donné&#x202f;?</translation>
    </message>
    <message>
        <source>more than needed</source>
        <translation>plus qu’il n’en faut</translation>
    </message>
    <message>
        <source>feed now</source>
        <translation>nourrir maintenant</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>morte</translation>
    </message>
    <message>
        <source>take now</source>
        <translation>récolter maintenant</translation>
    </message>
    <message>
        <source>take in spring</source>
        <translation>récolter au printemps</translation>
    </message>
    <message>
        <source>%{combs} from a neighbour</source>
        <translation>cadres d’une voisine</translation>
    </message>
    <message>
        <source>syrup, in the evening</source>
        <translation>sirop, le soir</translation>
    </message>
    <message>
        <source>fondant, touching the cluster</source>
        <translation>candi, au contact de la grappe</translation>
    </message>
    <message>
        <source>check: sealed? weigh, feeder off, mouse guard on</source>
        <translation>contrôle&#xa0;: operculé&#x202f;? peser, enlever le nourrisseur, poser la grille anti-rongeurs</translation>
    </message>
    <message>
        <source>take honey off, before feeding or treating</source>
        <translation>récolter le miel, avant de nourrir ou de traiter</translation>
    </message>
    <message>
        <source>weigh when the last forage is over</source>
        <translation>peser quand les dernières miellées sont finies</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>repeser</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>ajouter un cadre avec des œufs pris à une autre colonie</translation>
    </message>
    <message>
        <source>see whether queen cells are on the %{comb} with eggs</source>
        <translation>voir s’il y a des cellules royales sur le cadre avec des œufs</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>compter les varroas et revoir les provisions</translation>
    </message>
    <message>
        <source>signs of disease: call the bee inspector, move nothing</source>
        <translation>signes de maladie&#xa0;: appeler le technicien sanitaire apicole, ne rien déplacer</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>compter les cadres occupés</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>examiner les provisions, ou peser</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>n’importe quel jour</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 fois sur 100</translation>
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
        <translation>%1 et plus</translation>
    </message>
    <message>
        <source>case files opened</source>
        <translation>fichiers de cas ouverts</translation>
    </message>
    <message>
        <source>yard begun</source>
        <translation>rucher commencé</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 taken out</source>
        <translation>%1&#xa0;: effacé</translation>
    </message>
    <message>
        <source>%1: from %2 to %3</source>
        <translation>%1&#xa0;: de %2 à %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: was %2</source>
        <translation>%1&#xa0;: était %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>and one more</source>
        <translation>et un de plus</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>yard</source>
        <translation>rucher</translation>
    </message>
    <message>
        <source>yards</source>
        <translation>ruchers</translation>
    </message>
    <message>
        <source>yard added</source>
        <translation>rucher ajouté</translation>
    </message>
    <message>
        <source>yard changed</source>
        <translation>rucher modifié</translation>
    </message>
    <message>
        <source>yard removed</source>
        <translation>rucher supprimé</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>colonies</source>
        <translation>colonies</translation>
    </message>
    <message>
        <source>colony added</source>
        <translation>colonie ajoutée</translation>
    </message>
    <message>
        <source>colony changed</source>
        <translation>colonie modifiée</translation>
    </message>
    <message>
        <source>colony removed</source>
        <translation>colonie supprimée</translation>
    </message>
    <message>
        <source>move</source>
        <translation>déplacement</translation>
    </message>
    <message>
        <source>moves</source>
        <translation>déplacements</translation>
    </message>
    <message>
        <source>move added</source>
        <translation>déplacement ajouté</translation>
    </message>
    <message>
        <source>move changed</source>
        <translation>déplacement modifié</translation>
    </message>
    <message>
        <source>move removed</source>
        <translation>déplacement supprimé</translation>
    </message>
    <message>
        <source>end of a colony</source>
        <translation>fin d’une colonie</translation>
    </message>
    <message>
        <source>ends of colonies</source>
        <translation>fins de colonies</translation>
    </message>
    <message>
        <source>end of a colony recorded</source>
        <translation>fin d’une colonie notée</translation>
    </message>
    <message>
        <source>end of a colony changed</source>
        <translation>fin d’une colonie modifiée</translation>
    </message>
    <message>
        <source>end of a colony removed</source>
        <translation>fin d’une colonie supprimée</translation>
    </message>
    <message>
        <source>hive from a day on</source>
        <translation>ruche à partir d’un jour</translation>
    </message>
    <message>
        <source>hives from a day on</source>
        <translation>ruches à partir d’un jour</translation>
    </message>
    <message>
        <source>new hive recorded</source>
        <translation>nouvelle ruche notée</translation>
    </message>
    <message>
        <source>new hive changed</source>
        <translation>nouvelle ruche modifiée</translation>
    </message>
    <message>
        <source>new hive removed</source>
        <translation>nouvelle ruche supprimée</translation>
    </message>
    <message>
        <source>look</source>
        <translation>visite</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>visites</translation>
    </message>
    <message>
        <source>look added</source>
        <translation>visite ajoutée</translation>
    </message>
    <message>
        <source>look changed</source>
        <translation>visite modifiée</translation>
    </message>
    <message>
        <source>look removed</source>
        <translation>visite supprimée</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>pesée</translation>
    </message>
    <message>
        <source>weighings</source>
        <translation>pesées</translation>
    </message>
    <message>
        <source>weighing added</source>
        <translation>pesée ajoutée</translation>
    </message>
    <message>
        <source>weighing changed</source>
        <translation>pesée modifiée</translation>
    </message>
    <message>
        <source>weighing removed</source>
        <translation>pesée supprimée</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>nourrissement</translation>
    </message>
    <message>
        <source>feeds</source>
        <translation>nourrissements</translation>
    </message>
    <message>
        <source>feed added</source>
        <translation>nourrissement ajouté</translation>
    </message>
    <message>
        <source>feed changed</source>
        <translation>nourrissement modifié</translation>
    </message>
    <message>
        <source>feed removed</source>
        <translation>nourrissement supprimé</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>récolte</translation>
    </message>
    <message>
        <source>harvests</source>
        <translation>récoltes</translation>
    </message>
    <message>
        <source>harvest added</source>
        <translation>récolte ajoutée</translation>
    </message>
    <message>
        <source>harvest changed</source>
        <translation>récolte modifiée</translation>
    </message>
    <message>
        <source>harvest removed</source>
        <translation>récolte supprimée</translation>
    </message>
    <message>
        <source>treatment</source>
        <translation>traitement</translation>
    </message>
    <message>
        <source>treatments</source>
        <translation>traitements</translation>
    </message>
    <message>
        <source>treatment added</source>
        <translation>traitement ajouté</translation>
    </message>
    <message>
        <source>treatment changed</source>
        <translation>traitement modifié</translation>
    </message>
    <message>
        <source>treatment removed</source>
        <translation>traitement supprimé</translation>
    </message>
    <message>
        <source>work on the hive</source>
        <translation>travail sur la ruche</translation>
    </message>
    <message>
        <source>work on hives</source>
        <translation>travaux sur les ruches</translation>
    </message>
    <message>
        <source>work on the hive recorded</source>
        <translation>travail sur la ruche noté</translation>
    </message>
    <message>
        <source>work on the hive changed</source>
        <translation>travail sur la ruche modifié</translation>
    </message>
    <message>
        <source>work on the hive removed</source>
        <translation>travail sur la ruche supprimé</translation>
    </message>
    <message>
        <source>advice acted on</source>
        <translation>conseil suivi</translation>
    </message>
    <message>
        <source>advice kept</source>
        <translation>conseil retenu</translation>
    </message>
    <message>
        <source>kept advice changed</source>
        <translation>conseil retenu modifié</translation>
    </message>
    <message>
        <source>kept advice removed</source>
        <translation>conseil retenu supprimé</translation>
    </message>
    <message>
        <source>planned visit</source>
        <translation>passage prévu</translation>
    </message>
    <message>
        <source>planned visits</source>
        <translation>passages prévus</translation>
    </message>
    <message>
        <source>visit planned</source>
        <translation>passage inscrit au plan</translation>
    </message>
    <message>
        <source>planned visit changed</source>
        <translation>passage prévu modifié</translation>
    </message>
    <message>
        <source>planned visit removed</source>
        <translation>passage prévu supprimé</translation>
    </message>
    <message>
        <source>outcome of a winter</source>
        <translation>issue d’un hiver</translation>
    </message>
    <message>
        <source>outcomes of winters</source>
        <translation>issues d’hivers</translation>
    </message>
    <message>
        <source>outcome of the winter recorded</source>
        <translation>issue de l’hiver notée</translation>
    </message>
    <message>
        <source>outcome of the winter changed</source>
        <translation>issue de l’hiver modifiée</translation>
    </message>
    <message>
        <source>outcome of the winter removed</source>
        <translation>issue de l’hiver supprimée</translation>
    </message>
    <message>
        <source>winter sighting</source>
        <translation>coup d’œil d’hiver</translation>
    </message>
    <message>
        <source>winter sightings</source>
        <translation>coups d’œil d’hiver</translation>
    </message>
    <message>
        <source>winter sighting added</source>
        <translation>coup d’œil d’hiver ajouté</translation>
    </message>
    <message>
        <source>winter sighting changed</source>
        <translation>coup d’œil d’hiver modifié</translation>
    </message>
    <message>
        <source>winter sighting removed</source>
        <translation>coup d’œil d’hiver supprimé</translation>
    </message>
    <message>
        <source>log of temperatures</source>
        <translation>série de températures</translation>
    </message>
    <message>
        <source>logs of temperatures</source>
        <translation>séries de températures</translation>
    </message>
    <message>
        <source>temperatures added</source>
        <translation>températures ajoutées</translation>
    </message>
    <message>
        <source>temperatures changed</source>
        <translation>températures modifiées</translation>
    </message>
    <message>
        <source>temperatures removed</source>
        <translation>températures supprimées</translation>
    </message>
    <message>
        <source>%{comb} changed</source>
        <translation>cadre modifié</translation>
    </message>
    <message>
        <source>visit made</source>
        <translation>passage fait</translation>
    </message>
    <message>
        <source>visit skipped</source>
        <translation>passage sauté</translation>
    </message>
    <message>
        <source>advice made the plan</source>
        <translation>conseil adopté comme plan</translation>
    </message>
    <message>
        <source>hive changed</source>
        <translation>ruche modifiée</translation>
    </message>
    <message>
        <source>%{combs} moved</source>
        <translation>cadres déplacés</translation>
    </message>
    <message>
        <source>colonies united</source>
        <translation>colonies réunies</translation>
    </message>
    <message>
        <source>whole book imported</source>
        <translation>carnet entier importé</translation>
    </message>
    <message>
        <source>backup restored</source>
        <translation>copie de sauvegarde restaurée</translation>
    </message>
    <message>
        <source>salvaged from a damaged book</source>
        <translation>récupéré d’un carnet endommagé</translation>
    </message>
    <message>
        <source>imported: %1</source>
        <translation>importé&#xa0;: %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>annulé</translation>
    </message>
    <message>
        <source>undone for good</source>
        <translation>annulé pour de bon</translation>
    </message>
</context>
<context>
    <name>WindowWords</name>
    <message>
        <source>It cannot be said yet.</source>
        <translation>On ne peut pas encore le dire.</translation>
    </message>
    <message>
        <source>It cannot be said: no weather station is near enough to speak for this place.</source>
        <translation>Impossible à dire&#xa0;: aucune station météo n’est assez proche pour ce lieu.</translation>
    </message>
    <message>
        <source>There are no bees to winter.</source>
        <translation>Il n’y a pas d’abeilles à hiverner.</translation>
    </message>
    <message>
        <source>To answer, first: how many %{combs} do the bees cover?</source>
        <translation>Pour répondre, il faut d’abord savoir&#xa0;: combien de cadres les abeilles occupent-elles&#x202f;?</translation>
    </message>
    <message>
        <source>To answer, first: look at the %{combs}, or heft or weigh the hive.</source>
        <translation>Pour répondre, d’abord&#xa0;: examinez les cadres, ou soupesez ou pesez la ruche.</translation>
    </message>
    <message>
        <source>It is too early: winter stores are judged from August on.</source>
        <translation>Il est trop tôt&#xa0;: les provisions d’hiver s’estiment à partir d’août.</translation>
    </message>
    <message>
        <source>It cannot be said: this place&apos;s season cannot be told from its climate. Give the dates.</source>
        <translation>Impossible à dire&#xa0;: la saison de ce lieu ne peut pas être tirée de son climat. Indiquez les dates.</translation>
    </message>
    <message>
        <source>The bees have forage again: this winter is over.</source>
        <translation>Les miellées ont repris&#xa0;: cet hiver est terminé.</translation>
    </message>
    <message>
        <source>First %2, who is short, is to have %1 of it in %{combs}.</source>
        <translation>D’abord, %2, qui manque de provisions, doit en recevoir %1 en cadres.</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>For me</source>
        <translation>Pour moi</translation>
    </message>
    <message>
        <source>For the bees</source>
        <translation>Pour les abeilles</translation>
    </message>
    <message>
        <source>This is an error of Winterlarder, not of yours (%1). What is written down is kept. Please report it, with what you did just before.</source>
        <translation>C’est une erreur de Winterlarder, pas la vôtre (%1). Ce qui est noté est conservé. Signalez-la, s’il vous plaît, avec ce que vous faisiez juste avant.</translation>
    </message>
    <message>
        <source>feed %1 sugar</source>
        <translation>donner %1 de sucre</translation>
    </message>
    <message>
        <source>feed %1 fondant</source>
        <translation>donner %1 de candi</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>amount unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (de %2 à %3)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation>moins de 1</translation>
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
        <translation>appeler le technicien</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>repeser</translation>
    </message>
    <message>
        <source>look again, then take %1</source>
        <translation>réexaminer, puis récolter %1</translation>
    </message>
    <message>
        <source>take %1</source>
        <translation>récolter %1</translation>
    </message>
    <message>
        <source>give %{combs}</source>
        <translation>donner des cadres</translation>
    </message>
    <message>
        <source>hang in %{combs}</source>
        <translation>ajouter des cadres</translation>
    </message>
    <message>
        <source>feed later</source>
        <translation>nourrir plus tard</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>operculé</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>nectar non operculé</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>couvain</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pain d’abeilles</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>rien à faire</translation>
    </message>
    <message>
        <source>syrup was due %1</source>
        <translation>sirop prévu le %1</translation>
    </message>
    <message>
        <source>syrup today</source>
        <translation>sirop aujourd’hui</translation>
    </message>
    <message>
        <source>next syrup %1</source>
        <translation>prochain sirop le %1</translation>
    </message>
    <message>
        <source>fondant was due %1</source>
        <translation>candi prévu le %1</translation>
    </message>
    <message>
        <source>fondant today</source>
        <translation>candi aujourd’hui</translation>
    </message>
    <message>
        <source>fondant %1</source>
        <translation>candi le %1</translation>
    </message>
    <message>
        <source>take honey by %1</source>
        <translation>récolter d’ici au %1</translation>
    </message>
    <message>
        <source>when you like</source>
        <translation>quand vous voulez</translation>
    </message>
    <message>
        <source>unite by %1</source>
        <translation>réunir d’ici au %1</translation>
    </message>
    <message>
        <source>unite soon</source>
        <translation>réunir bientôt</translation>
    </message>
    <message>
        <source>count the mites today</source>
        <translation>compter les varroas aujourd’hui</translation>
    </message>
    <message>
        <source>mites and a look %1</source>
        <translation>varroas et visite le %1</translation>
    </message>
    <message>
        <source>call the bee inspector</source>
        <translation>appeler le technicien sanitaire</translation>
    </message>
    <message>
        <source>weigh again %1</source>
        <translation>repeser le %1</translation>
    </message>
    <message>
        <source>heft every two weeks</source>
        <translation>soupeser toutes les deux semaines</translation>
    </message>
    <message>
        <source>count the bees</source>
        <translation>compter les abeilles</translation>
    </message>
    <message>
        <source>%{combs} to it today</source>
        <translation>cadres à lui donner aujourd’hui</translation>
    </message>
    <message>
        <source>%{combs} to it %1</source>
        <translation>cadres à lui donner le %1</translation>
    </message>
    <message>
        <source>a %{comb} with eggs to it today</source>
        <translation>cadre avec des œufs aujourd’hui</translation>
    </message>
    <message>
        <source>queen cells? look %1</source>
        <translation>cellules royales&#x202f;? voir le %1</translation>
    </message>
    <message>
        <source>look at the stores</source>
        <translation>examiner les provisions</translation>
    </message>
    <message>
        <source>check today</source>
        <translation>contrôle aujourd’hui</translation>
    </message>
    <message>
        <source>check %1</source>
        <translation>contrôle le %1</translation>
    </message>
    <message>
        <source>leave as it is</source>
        <translation>laisser telle quelle</translation>
    </message>
    <message>
        <source>take %1 now</source>
        <translation>récolter %1 maintenant</translation>
    </message>
    <message>
        <source>take what is over in spring</source>
        <translation>récolter le surplus au printemps</translation>
    </message>
    <message>
        <source>feed up by %1 of stores</source>
        <translation>donner %1 de provisions</translation>
    </message>
    <message>
        <source>give it %{combs}, %1</source>
        <translation>lui donner des cadres, %1</translation>
    </message>
    <message>
        <source>unite it with another colony</source>
        <translation>la réunir à une autre colonie</translation>
    </message>
    <message>
        <source>last nectar</source>
        <translation>fin du nectar</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>dernier jour pour le sirop</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>arrêt de la ponte</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reprise de la ponte</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>développement printanier</translation>
    </message>
    <message>
        <source>spring forage</source>
        <translation>miellées de printemps</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Does the queen lay: have you seen her, or eggs?</source>
        <translation>La reine pond-elle&#xa0;: l’avez-vous vue, elle ou ses œufs&#x202f;?</translation>
    </message>
    <message>
        <source>Have you counted the mites, and treated where it was needed?</source>
        <translation>Avez-vous compté les varroas, et traité si c’était nécessaire&#x202f;?</translation>
    </message>
    <message>
        <source>Was sugar fed or medicine given while this honey was being made?</source>
        <translation>A-t-on donné du sucre ou un médicament pendant que ce miel se faisait&#x202f;?</translation>
    </message>
    <message>
        <source>Is the super for you, or for the bees?</source>
        <translation>La hausse est-elle pour vous, ou pour les abeilles&#x202f;?</translation>
    </message>
    <message>
        <source>What does the empty hive weigh, with its drawn %{combs}?</source>
        <translation>Que pèse la ruche vide, avec ses cadres bâtis&#x202f;?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you?</source>
        <translation>Une miellée est-elle encore à venir près de chez vous&#x202f;?</translation>
    </message>
    <message>
        <source>How many full %{combs} have you in store?</source>
        <translation>Combien de cadres pleins avez-vous gardés de côté&#x202f;?</translation>
    </message>
    <message>
        <source>Can you get to the hive in the second half of winter, to lift and feed it?</source>
        <translation>Pouvez-vous aller à la ruche dans la seconde moitié de l’hiver, pour la soupeser et la nourrir&#x202f;?</translation>
    </message>
    <message>
        <source>Is there food beside the bees, without an empty %{comb} between?</source>
        <translation>Y a-t-il de la nourriture à côté des abeilles, sans cadre vide entre deux&#x202f;?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you, such as %1?</source>
        <translation>Une miellée est-elle encore à venir près de chez vous, par exemple %1&#x202f;?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you, such as %1 or %2?</source>
        <translation>Une miellée est-elle encore à venir près de chez vous, par exemple %1 ou %2&#x202f;?</translation>
    </message>
    <message>
        <source>top box</source>
        <translation>élément du haut</translation>
    </message>
    <message>
        <source>bottom box</source>
        <translation>élément du bas</translation>
    </message>
    <message>
        <source>middle box</source>
        <translation>élément du milieu</translation>
    </message>
    <message>
        <source>box %1 from the floor</source>
        <translation>élément %1 à partir du plancher</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>numbers of combs</comment>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>%1, all %2 %{combs}</source>
        <translation>%1, les %2 cadres</translation>
    </message>
    <message>
        <source>%{comb} %1 from the left</source>
        <translation>cadre %1 à partir de la gauche</translation>
    </message>
    <message>
        <source>%1, %{comb} %2 from the left</source>
        <translation>%1, cadre %2 à partir de la gauche</translation>
    </message>
    <message>
        <source>%{combs} %1 from the left</source>
        <translation>cadres %1 à partir de la gauche</translation>
    </message>
    <message>
        <source>%1, %{combs} %2 from the left</source>
        <translation>%1, cadres %2 à partir de la gauche</translation>
    </message>
    <message>
        <source>without your super %1</source>
        <comment>weight</comment>
        <translation>sans votre hausse %1</translation>
    </message>
    <message>
        <source>%1 with hive and bees</source>
        <translation>%1 avec la ruche et les abeilles</translation>
    </message>
    <message>
        <source>%1 with hive and bees, the empty hive taken as %2</source>
        <translation>%1 avec la ruche et les abeilles, la ruche vide comptée pour %2</translation>
    </message>
    <message>
        <source>Today it should hold about %1 of stores: %2, %3.</source>
        <comment>stores, full combs, weight</comment>
        <translation>Aujourd’hui, elle devrait contenir environ %1 de provisions&#xa0;: %2, %3.</translation>
    </message>
    <message>
        <source>For winter, on %1: about %2 of stores, %3, %4.</source>
        <comment>day, stores, full combs, weight</comment>
        <translation>Pour l’hiver, le %1&#xa0;: environ %2 de provisions, %3, %4.</translation>
    </message>
    <message>
        <source>There now: %1 bees; what stores there are nobody can say before one of the two is found wrong.</source>
        <translation>Il y a maintenant %1 abeilles&#x202f;; quant aux provisions, personne ne peut les dire avant que l’une des deux indications soit reconnue fausse.</translation>
    </message>
    <message>
        <source>There now: %1 of stores, %2 bees. With %3 united onto it: %4 and %5 bees.</source>
        <comment>stores, bees, colony, stores, bees</comment>
        <translation>Il y a maintenant %1 de provisions, %2 abeilles. Une fois %3 réunie à elle&#xa0;: %4 et %5 abeilles.</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>l’autre</translation>
    </message>
    <message>
        <source>There now: %1 of stores.</source>
        <translation>Il y a maintenant %1 de provisions.</translation>
    </message>
    <message>
        <source>There now: %1 of stores, %2 bees.</source>
        <translation>Il y a maintenant %1 de provisions, %2 abeilles.</translation>
    </message>
    <message>
        <source>If nothing were fed later, in %2 simulated winters %1 or more would be left when spring forage starts; in %3 the food would run out.</source>
        <translation>Si rien n’était donné plus tard, il resterait %1 ou plus au début des miellées de printemps %2 dans les hivers simulés&#x202f;; %3, la nourriture s’épuiserait.</translation>
    </message>
    <message>
        <source>Left as it is, in %2 simulated winters %1 or more are left when spring forage starts; in %3 the food runs out.</source>
        <translation>Si elle est laissée telle quelle, il lui reste %1 ou plus au début des miellées de printemps %2 dans les hivers simulés&#x202f;; %3, la nourriture s’épuise.</translation>
    </message>
    <message>
        <source>%1 With the honey off and nothing fed later, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Le miel récolté et rien donné plus tard, il en reste autant %2, et la nourriture s’épuise %3.</translation>
    </message>
    <message>
        <source>%1 With the honey off, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Le miel récolté, il en reste autant %2, et la nourriture s’épuise %3.</translation>
    </message>
    <message>
        <source>%1 Fed as advised and with no fondant in winter, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Si elle est nourrie comme conseillé et sans candi en hiver, il lui en reste autant %2, et la nourriture s’épuise %3.</translation>
    </message>
    <message>
        <source>%1 Fed as advised, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Si elle est nourrie comme conseillé, il lui en reste autant %2, et la nourriture s’épuise %3.</translation>
    </message>
    <message>
        <source>%1 With this feed and no other, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Avec ce nourrissement et aucun autre, il lui en reste autant %2, et la nourriture s’épuise %3.</translation>
    </message>
    <message>
        <source>%1 (between 80 and 90, for cold may lock the bees in for %2 days)</source>
        <translation>%1 (entre 80 et 90, car le froid peut confiner les abeilles pendant %2 jours)</translation>
    </message>
    <message>
        <source>%1 are aimed at; the %{combs} have no room for more.</source>
        <translation>L’objectif est %1&#x202f;; les cadres n’ont pas de place pour davantage.</translation>
    </message>
    <message>
        <source>%1 are aimed at; it is fewer because what is there now is not known well. If it is as thought, it is %2.</source>
        <translation>L’objectif est %1&#x202f;; c’est moins parce que ce qu’il y a maintenant n’est pas bien connu. Si c’est comme on le pense, c’est %2.</translation>
    </message>
    <message>
        <source>What is told of winters here counts stores only: without a queen it does not live through winter, however much there is.</source>
        <translation>Ce qui est dit ici des hivers ne compte que les provisions&#xa0;: sans reine, la colonie ne passe pas l’hiver, quelle qu’en soit la quantité.</translation>
    </message>
    <message>
        <source>%1 Taking the super off changes nothing of that, for its honey was not counted.</source>
        <translation>%1 Retirer la hausse n’y change rien, car son miel n’a pas été compté.</translation>
    </message>
    <message>
        <source>The %{combs} hold %1 when winter begins: of the %2, which are today&apos;s stores and all the feed, about %3 are eaten by %4.</source>
        <comment>capacity, stores after, eaten, day</comment>
        <translation>Les cadres contiennent %1 au début de l’hiver&#xa0;: sur les %2 que font les provisions d’aujourd’hui et tout le nourrissement, environ %3 sont consommés d’ici au %4.</translation>
    </message>
    <message>
        <source>by %1</source>
        <comment>a day</comment>
        <translation>d’ici au %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <comment>two days</comment>
        <translation>du %1 au %2</translation>
    </message>
    <message>
        <source>Up to %1 of sugar may be wanted %2, more likely none.</source>
        <translation>Il faudra peut-être donner jusqu’à %1 de sucre %2, plus probablement rien.</translation>
    </message>
    <message>
        <source>Up to %1 of fondant may be wanted %2, in most winters none.</source>
        <translation>Il faudra peut-être donner jusqu’à %1 de candi %2&#x202f;; dans la plupart des hivers, rien.</translation>
    </message>
    <message>
        <source>Likely to be fed %1: up to %2 of sugar, more likely %3.</source>
        <translation>À donner probablement %1&#xa0;: jusqu’à %2 de sucre, plutôt %3.</translation>
    </message>
    <message>
        <source>Likely to be wanted %1: up to %2 of fondant, more likely %3.</source>
        <translation>À donner probablement %1&#xa0;: jusqu’à %2 de candi, plutôt %3.</translation>
    </message>
    <message>
        <source>Likely to be fed %1: %2 to %3 of sugar, more likely %4.</source>
        <translation>À donner probablement %1&#xa0;: de %2 à %3 de sucre, plutôt %4.</translation>
    </message>
    <message>
        <source>Likely to be wanted %1: %2 to %3 of fondant, more likely %4.</source>
        <translation>À donner probablement %1&#xa0;: de %2 à %3 de candi, plutôt %4.</translation>
    </message>
    <message>
        <source>one full %{comb}</source>
        <translation>un cadre plein</translation>
    </message>
    <message>
        <source>%1 full %{combs}</source>
        <translation>%1 cadres pleins</translation>
    </message>
    <message>
        <source>The bees cannot reach their food: %1, then weigh.</source>
        <translation>Les abeilles ne peuvent pas atteindre leur nourriture&#xa0;: %1, puis pesez.</translation>
    </message>
    <message>
        <source>There may be food for less than three weeks: %1, then weigh.</source>
        <translation>Il y a peut-être de la nourriture pour moins de trois semaines&#xa0;: %1, puis pesez.</translation>
    </message>
    <message>
        <source>Too little to be safe until the next look: %1.</source>
        <translation>Trop peu pour être en sûreté jusqu’à la prochaine visite&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Leave it: there is enough until the next look.</source>
        <translation>Laissez-la&#xa0;: il y a assez jusqu’à la prochaine visite.</translation>
    </message>
    <message>
        <source>The hive is full: leave it and feed nothing.</source>
        <translation>La ruche est pleine&#xa0;: laissez-la et ne donnez rien.</translation>
    </message>
    <message>
        <source>Too late for syrup: %1, and wrap the hive.</source>
        <translation>Trop tard pour le sirop&#xa0;: %1, et emballez la ruche.</translation>
    </message>
    <message>
        <source>Late, but better than nothing: %1, and wrap the hive.</source>
        <translation>Tard, mais mieux que rien&#xa0;: %1, et emballez la ruche.</translation>
    </message>
    <message>
        <source>Stores run low: %1.</source>
        <translation>Les provisions baissent&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Leave it as it is: no honey is taken now.</source>
        <translation>Laissez-la telle quelle&#xa0;: on ne récolte pas de miel maintenant.</translation>
    </message>
    <message>
        <source>Leave it as it is.</source>
        <translation>Laissez-la telle quelle.</translation>
    </message>
    <message>
        <source>To answer, first: count the %{combs} covered with bees, or the seams.</source>
        <translation>Pour répondre, d’abord&#xa0;: comptez les cadres occupés, ou les ruelles.</translation>
    </message>
    <message>
        <source>To answer, first: weigh both sides, or look at the %{combs}.</source>
        <translation>Pour répondre, d’abord&#xa0;: pesez des deux côtés, ou examinez les cadres.</translation>
    </message>
    <message>
        <source>This cannot be said: see the reasons.</source>
        <translation>Impossible à dire&#xa0;: voyez les raisons.</translation>
    </message>
    <message>
        <source>Unite %1 onto it %2.</source>
        <translation>Réunissez-lui %1, %2.</translation>
    </message>
    <message>
        <source>Give %1 (%2) to %3.</source>
        <comment>combs, their places, colony</comment>
        <translation>Donnez %1 (%2) à %3.</translation>
    </message>
    <message>
        <source>Hang in %1 from %2 (its %3).</source>
        <comment>combs, colony, their places</comment>
        <translation>Ajoutez %1 pris à %2 (%3).</translation>
    </message>
    <message>
        <source>another colony of the yard</source>
        <translation>une autre colonie du rucher</translation>
    </message>
    <message>
        <source>Too few bees to winter alone: unite it with %1 %2.</source>
        <translation>Trop peu d’abeilles pour hiverner seules&#xa0;: réunissez-les à %1, %2.</translation>
    </message>
    <message>
        <source>Too few bees to winter alone: unite it with a healthy colony %1.</source>
        <translation>Trop peu d’abeilles pour hiverner seules&#xa0;: réunissez-les à une colonie saine, %1.</translation>
    </message>
    <message>
        <source>No sign of a queen: make sure she is gone, then unite the bees with %1 %2.</source>
        <translation>Aucun signe de reine&#xa0;: assurez-vous qu’elle a disparu, puis réunissez les abeilles à %1, %2.</translation>
    </message>
    <message>
        <source>No sign of a queen: make sure she is gone, then unite the bees with a queenright colony %1.</source>
        <translation>Aucun signe de reine&#xa0;: assurez-vous qu’elle a disparu, puis réunissez les abeilles à une colonie qui a sa reine, %1.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>on %1</source>
        <comment>a day</comment>
        <translation>le %1</translation>
    </message>
    <message>
        <source>soon, on a warm evening, at the latest on %1</source>
        <comment>a day</comment>
        <translation>bientôt, par une soirée douce, au plus tard le %1</translation>
    </message>
    <message>
        <source>take your super off, then %1</source>
        <translation>retirez votre hausse, puis %1</translation>
    </message>
    <message>
        <source>feed it</source>
        <translation>nourrissez-la</translation>
    </message>
    <message>
        <source>feed %1 of sugar as syrup %2 %3</source>
        <comment>amount, ratio, day</comment>
        <translation>donnez %1 de sucre en sirop %2 %3</translation>
    </message>
    <message>
        <source>feed %1 of sugar as syrup %2, the first of %3 visits %4</source>
        <translation>donnez %1 de sucre en sirop %2, en %3 passages, le premier %4</translation>
    </message>
    <message>
        <source>lay a candy board of %1 on the bees %2</source>
        <translation>posez une plaque de candi de %1 sur les abeilles %2</translation>
    </message>
    <message>
        <source>lay %1 of fondant on the bees %2</source>
        <translation>posez %1 de candi sur les abeilles %2</translation>
    </message>
    <message>
        <source>Too late for much syrup: %1, in small warm portions over the cluster, as long as they are taken.</source>
        <translation>Trop tard pour beaucoup de sirop&#xa0;: %1, en petites doses tièdes au-dessus de la grappe, tant qu’elles sont prises.</translation>
    </message>
    <message>
        <source>%1, in small portions over the cluster, on days that are warm enough.</source>
        <translation>%1, en petites doses au-dessus de la grappe, les jours assez chauds.</translation>
    </message>
    <message>
        <source>That alone will not carry it: give it full %{combs} too, from store or a healthy neighbour, or unite it while days are warm.</source>
        <translation>Cela seul ne suffira pas&#xa0;: donnez-lui aussi des cadres pleins, gardés de côté ou pris à une voisine saine, ou réunissez-la tant que les jours sont chauds.</translation>
    </message>
    <message>
        <source>Nothing is fed today.</source>
        <translation>Rien n’est à donner aujourd’hui.</translation>
    </message>
    <message>
        <source>On these stores it will hardly live until spring, and it is too late for syrup: on the next mild day hang full %{combs} on both sides of the bees, from store or a healthy neighbour.</source>
        <translation>Avec ces provisions, elle ne vivra guère jusqu’au printemps, et il est trop tard pour le sirop&#xa0;: au prochain jour doux, mettez des cadres pleins des deux côtés des abeilles, pris en réserve ou à une voisine saine.</translation>
    </message>
    <message>
        <source>What is missing beyond that is best given as full %{combs}, if you have any in store or a healthy neighbour can spare them.</source>
        <translation>Ce qui manque au-delà se donne de préférence en cadres pleins, si vous en avez en réserve ou si une voisine saine peut en céder.</translation>
    </message>
    <message>
        <source>%1 Until then: %2.</source>
        <translation>%1 D’ici là&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Weigh it %1.</source>
        <translation>Pesez-la %1.</translation>
    </message>
    <message>
        <source>Far too many mites: treat first, and look again %1.</source>
        <translation>Beaucoup trop de varroas&#xa0;: traitez d’abord, et regardez de nouveau %1.</translation>
    </message>
    <message>
        <source>Treat where the count of mites calls for it, and look again %1.</source>
        <translation>Traitez si le nombre de varroas l’exige, et revenez voir %1.</translation>
    </message>
    <message>
        <source>Count the mites, and look again %1.</source>
        <translation>Comptez les varroas, et revenez voir %1.</translation>
    </message>
    <message>
        <source>Later up to %1 of fondant may be wanted.</source>
        <translation>Plus tard, il faudra peut-être jusqu’à %1 de candi.</translation>
    </message>
    <message>
        <source>Later %1 to %2 of fondant are likely to be wanted.</source>
        <translation>Plus tard, il faudra probablement de %1 à %2 de candi.</translation>
    </message>
    <message>
        <source>For winter up to %1 of sugar may be wanted, from %2.</source>
        <translation>Pour l’hiver, il faudra peut-être jusqu’à %1 de sucre, à partir du %2.</translation>
    </message>
    <message>
        <source>For winter about %1 of sugar will be wanted, from %2.</source>
        <translation>Pour l’hiver, il faudra environ %1 de sucre, à partir du %2.</translation>
    </message>
    <message>
        <source>For winter %1 to %2 of sugar are likely to be wanted, from %3.</source>
        <translation>Pour l’hiver, il faudra probablement de %1 à %2 de sucre, à partir du %3.</translation>
    </message>
    <message>
        <source>Signs of disease: close the hive, narrow the entrance, move nothing, call the bee inspector.</source>
        <translation>Signes de maladie&#xa0;: fermez la ruche, réduisez l’entrée, ne déplacez rien, appelez le technicien sanitaire apicole.</translation>
    </message>
    <message>
        <source>%1 and %2 contradict each other: weigh again before anything else, and check the empty weight, the roof, stones, and whether a super was left out.</source>
        <translation>%1 et %2 se contredisent&#xa0;: repesez avant toute autre chose, et vérifiez le poids à vide, le toit, les pierres, et si une hausse a été oubliée.</translation>
    </message>
    <message>
        <source>%1 Both are short, so this does no harm: %2.</source>
        <translation>%1 Les deux indiquent un manque, cela ne fait donc pas de mal&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>evidence and what it says</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>It is light: %1, then weigh both sides.</source>
        <translation>Elle est légère&#xa0;: %1, puis pesez des deux côtés.</translation>
    </message>
    <message>
        <source>It is heavy: leave it.</source>
        <translation>Elle est lourde&#xa0;: laissez-la.</translation>
    </message>
    <message>
        <source>A heft decides neither honey nor feed: weigh both sides.</source>
        <translation>Un soupesage ne décide ni du miel ni du nourrissement&#xa0;: pesez des deux côtés.</translation>
    </message>
    <message>
        <source>Weigh both sides first</source>
        <translation>Pesez d’abord des deux côtés</translation>
    </message>
    <message>
        <source>Count the full %{combs} first</source>
        <translation>Comptez d’abord les cadres pleins</translation>
    </message>
    <message>
        <source>Count the bees first</source>
        <translation>Comptez d’abord les abeilles</translation>
    </message>
    <message>
        <source>%1. If there are about as many as is thought, %2.</source>
        <comment>look, take</comment>
        <translation>%1. S’il y en a à peu près autant qu’on le pense, %2.</translation>
    </message>
    <message>
        <source>%1. If that bears out about %2 of stores, %3.</source>
        <comment>look, stores, take</comment>
        <translation>%1. Si cela confirme environ %2 de provisions, %3.</translation>
    </message>
    <message>
        <source>take about %1 of honey, in whole capped %{combs}</source>
        <translation>récoltez environ %1 de miel, en cadres entiers et operculés</translation>
    </message>
    <message>
        <source>take one %{comb} with %1 of honey</source>
        <translation>récoltez un cadre avec %1 de miel</translation>
    </message>
    <message>
        <source>take the super off: %1 of honey in %2 %{combs}</source>
        <translation>retirez la hausse&#xa0;: %1 de miel en %2 cadres</translation>
    </message>
    <message>
        <source>take %1 supers off: %2 of honey in %3 %{combs}</source>
        <translation>retirez %1 hausses&#xa0;: %2 de miel en %3 cadres</translation>
    </message>
    <message>
        <source>take %1 of honey in %2 %{combs}</source>
        <translation>récoltez %1 de miel en %2 cadres</translation>
    </message>
    <message>
        <source>Was the feed planned from %1 on given? Write it down first. If it was not: %2</source>
        <comment>day, what</comment>
        <translation>Le nourrissement prévu à partir du %1 a-t-il été donné&#x202f;? Notez-le d’abord. Sinon&#xa0;: %2</translation>
    </message>
    <message>
        <source>Something written down is in doubt: settle that first, see the reasons. Until then: %1</source>
        <translation>Une des notes est douteuse&#xa0;: réglez cela d’abord, voyez les raisons. D’ici là&#xa0;: %1</translation>
    </message>
    <message>
        <source>how many bees there are</source>
        <translation>du nombre d’abeilles</translation>
    </message>
    <message>
        <source>what stores there are</source>
        <translation>des provisions présentes</translation>
    </message>
    <message>
        <source>What may be taken hangs on %1: %2.</source>
        <translation>Ce qui peut être récolté dépend %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Look again first, for the answer hangs on %1: %2.</source>
        <translation>Examinez d’abord de nouveau la colonie, car la réponse dépend %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>It can wait, but what will be wanted for winter hangs on %1: %2.</source>
        <translation>Cela peut attendre, mais ce qu’il faudra pour l’hiver dépend %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Worth a better look, for whether anything is missing or to spare hangs on %1: %2.</source>
        <translation>Un meilleur examen en vaut la peine, car le manque ou l’excédent dépend %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>The first visit need not wait. Look again before the second, for the amount hangs on %1: %2.</source>
        <translation>Le premier passage n’a pas à attendre. Examinez de nouveau la colonie avant le deuxième, car la quantité dépend %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>This feed need not wait. What more is wanted hangs on %1: %2.</source>
        <translation>Ce nourrissement n’a pas à attendre. Ce qu’il faudra de plus dépend %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>A better look before %1 would not change what is to be done now.</source>
        <comment>a day</comment>
        <translation>Un meilleur examen avant le %1 ne changerait pas ce qu’il y a à faire maintenant.</translation>
    </message>
    <message>
        <source>Another look would not change what is to be done: the bees need not be disturbed for it.</source>
        <translation>Un nouvel examen ne changerait pas ce qu’il y a à faire&#xa0;: inutile de déranger les abeilles pour cela.</translation>
    </message>
    <message>
        <source>A better look at the stores would change nothing now.</source>
        <translation>Un meilleur examen des provisions ne changerait rien maintenant.</translation>
    </message>
    <message>
        <source>%1 What is known to within %2 now would be known to within %3.</source>
        <comment>the sentence before, now, then</comment>
        <translation>%1 Ce qui est connu à %2 près aujourd’hui le serait à %3 près.</translation>
    </message>
    <message>
        <source>%1 qt</source>
        <translation>%1&#xa0;qt</translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation>%1&#xa0;gal</translation>
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
        <translation>%1&#xa0;km</translation>
    </message>
    <message numerus="yes">
        <source>%n miles</source>
        <translation>
            <numerusform>%n mille</numerusform>
            <numerusform>%n milles</numerusform>
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
        <translation>moins d’une fois sur 100</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 fois sur 100</translation>
    </message>
    <message>
        <source>a healthy queenright colony that is strong enough</source>
        <translation>une colonie saine, avec reine et assez forte</translation>
    </message>
    <message>
        <source>Once it is certain that it has no queen: in the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water.</source>
        <translation>Une fois certain qu’elle est orpheline&#xa0;: le soir, ses cadres suspendus à côté de ceux de la colonie choisie (%1), séparés par une feuille de papier journal, les abeilles aspergées d’eau.</translation>
    </message>
    <message>
        <source>In the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water; the better queen is kept.</source>
        <translation>Le soir, ses cadres suspendus à côté de ceux de la colonie choisie (%1), séparés par une feuille de papier journal, les abeilles aspergées d’eau&#x202f;; la meilleure reine est gardée.</translation>
    </message>
    <message>
        <source>Once it is certain that it has no queen: in the evening, with a sheet of newspaper between, above %1.</source>
        <translation>Une fois certain qu’elle est orpheline&#xa0;: le soir, avec une feuille de papier journal entre les deux, au-dessus de l’autre (%1).</translation>
    </message>
    <message>
        <source>In the evening, with a sheet of newspaper between, above %1; the better queen is kept.</source>
        <translation>Le soir, avec une feuille de papier journal entre les deux, au-dessus de l’autre (%1)&#x202f;; la meilleure reine est gardée.</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>cadre</translation>
    </message>
    <message>
        <source>comb</source>
        <translation>cadre</translation>
    </message>
    <message>
        <source>frames</source>
        <translation>cadres</translation>
    </message>
    <message>
        <source>combs</source>
        <translation>cadres</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Cadre</translation>
    </message>
    <message>
        <source>Comb</source>
        <translation>Cadre</translation>
    </message>
    <message>
        <source>Frames</source>
        <translation>Cadres</translation>
    </message>
    <message>
        <source>Combs</source>
        <translation>Cadres</translation>
    </message>
    <message>
        <source>a candy board</source>
        <translation>une plaque de candi</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>du candi</translation>
    </message>
    <message>
        <source>A candy board</source>
        <translation>Une plaque de candi</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Le candi</translation>
    </message>
    <message>
        <source>yellowjackets</source>
        <translation>guêpes</translation>
    </message>
    <message>
        <source>wasps</source>
        <translation>guêpes</translation>
    </message>
    <message>
        <source>the last nectar coming in</source>
        <translation>la fin des rentrées de nectar</translation>
    </message>
    <message>
        <source>the end of laying</source>
        <translation>l’arrêt de la ponte</translation>
    </message>
    <message>
        <source>the new start of laying</source>
        <translation>la reprise de la ponte</translation>
    </message>
    <message>
        <source>the build-up</source>
        <translation>le développement printanier</translation>
    </message>
    <message>
        <source>the start of spring forage</source>
        <translation>le début des miellées de printemps</translation>
    </message>
    <message>
        <source>feeding best finished by</source>
        <translation>la fin conseillée du nourrissement</translation>
    </message>
    <message>
        <source>the last day for syrup</source>
        <translation>le dernier jour pour le sirop</translation>
    </message>
    <message>
        <source>the day syrup is no longer taken</source>
        <translation>le jour où le sirop n’est plus pris</translation>
    </message>
    <message>
        <source>the %{comb} record</source>
        <translation>les cadres notés</translation>
    </message>
    <message>
        <source>%{combs} looked at</source>
        <translation>cadres examinés</translation>
    </message>
    <message>
        <source>the count of full %{combs}</source>
        <translation>le compte des cadres pleins</translation>
    </message>
    <message>
        <source>%{combs} counted</source>
        <translation>cadres comptés</translation>
    </message>
    <message>
        <source>the weight on the scale</source>
        <translation>le poids sur la balance</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>balance</translation>
    </message>
    <message>
        <source>the two sides lifted</source>
        <translation>la pesée des deux côtés</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>pesée des deux côtés</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>pesée d’un seul côté</translation>
    </message>
    <message>
        <source>the heft</source>
        <translation>le soupesage</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>soupesée</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>récolter</translation>
    </message>
    <message>
        <source>take</source>
        <translation>récolter</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>laisser</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>nourrir</translation>
    </message>
    <message>
        <source>unite</source>
        <translation>réunir</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>impossible à dire</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>laisser telle quelle</translation>
    </message>
    <message>
        <source>take now</source>
        <translation>récolter maintenant</translation>
    </message>
    <message>
        <source>take in spring</source>
        <translation>récolter au printemps</translation>
    </message>
    <message>
        <source>give %{combs} of stores</source>
        <translation>donner des cadres de provisions</translation>
    </message>
    <message>
        <source>give %{combs}</source>
        <translation>donner des cadres</translation>
    </message>
    <message>
        <source>unite it with another colony</source>
        <translation>la réunir à une autre colonie</translation>
    </message>
    <message>
        <source>lay on %1 of fondant</source>
        <translation>poser %1 de candi</translation>
    </message>
    <message>
        <source>feed %1 of sugar</source>
        <translation>donner %1 de sucre</translation>
    </message>
    <message>
        <source>heft the hive</source>
        <translation>soupesez la ruche</translation>
    </message>
    <message>
        <source>weigh both sides of the closed hive, which takes two minutes and disturbs no bee</source>
        <translation>pesez des deux côtés la ruche fermée, ce qui prend deux minutes et ne dérange aucune abeille</translation>
    </message>
    <message>
        <source>look through the window or from above</source>
        <translation>regardez par la fenêtre ou d’en haut</translation>
    </message>
    <message>
        <source>count the full %{combs} and the %{combs} the bees cover</source>
        <translation>comptez les cadres pleins et les cadres occupés</translation>
    </message>
    <message>
        <source>count the seams filled with bees, from above</source>
        <translation>comptez d’en haut les ruelles d’abeilles</translation>
    </message>
    <message>
        <source>open the hive and look at every %{comb}</source>
        <translation>ouvrez la ruche et examinez chaque cadre</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>check: %{combs} sealed? weigh, feeder off, mouse guard on</source>
        <translation>contrôle&#xa0;: cadres operculés&#x202f;? peser, enlever le nourrisseur, poser la grille anti-rongeurs</translation>
    </message>
    <message>
        <source>check</source>
        <translation>contrôle</translation>
    </message>
    <message>
        <source>a confined winter</source>
        <translation>un hiver où les abeilles sont confinées</translation>
    </message>
    <message>
        <source>a winter in which bees fly in most weeks</source>
        <translation>un hiver où les abeilles volent presque chaque semaine</translation>
    </message>
    <message>
        <source>no winter, a dearth between the last nectar of autumn and the first of spring</source>
        <translation>pas d’hiver, une disette entre le dernier nectar d’automne et le premier du printemps</translation>
    </message>
    <message>
        <source>no season can be derived; give the dates yourself</source>
        <translation>aucune saison ne peut être déduite&#x202f;; indiquez les dates vous-même</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>climate</source>
        <translation>climat</translation>
    </message>
    <message>
        <source>climate, moved</source>
        <translation>climat, déplacé</translation>
    </message>
    <message>
        <source>case</source>
        <translation>cas</translation>
    </message>
</context>
<context>
    <name>YardPlan</name>
    <message numerus="yes">
        <source>%n to feed</source>
        <translation>
            <numerusform>%n à nourrir</numerusform>
            <numerusform>%n à nourrir</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to unite</source>
        <translation>
            <numerusform>%n à réunir</numerusform>
            <numerusform>%n à réunir</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with honey to spare</source>
        <translation>
            <numerusform>%n avec du miel en excédent</numerusform>
            <numerusform>%n avec du miel en excédent</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to leave alone</source>
        <translation>
            <numerusform>%n à laisser</numerusform>
            <numerusform>%n à laisser</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not known enough</source>
        <translation>
            <numerusform>%n pas assez connue</numerusform>
            <numerusform>%n pas assez connues</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on course</source>
        <translation>
            <numerusform>%n comme prévu</numerusform>
            <numerusform>%n comme prévu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n eating faster than planned</source>
        <translation>
            <numerusform>%n qui consomme plus que prévu</numerusform>
            <numerusform>%n qui consomment plus que prévu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with the food out of reach</source>
        <translation>
            <numerusform>%n coupée de ses provisions</numerusform>
            <numerusform>%n coupées de leurs provisions</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dwindling</source>
        <translation>
            <numerusform>%n qui se dépeuple</numerusform>
            <numerusform>%n qui se dépeuplent</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with less than was thought</source>
        <translation>
            <numerusform>%n avec moins qu’on ne pensait</numerusform>
            <numerusform>%n avec moins qu’on ne pensait</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with a feed not written down</source>
        <translation>
            <numerusform>%n avec un nourrissement non noté</numerusform>
            <numerusform>%n avec un nourrissement non noté</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with more than is needed</source>
        <translation>
            <numerusform>%n avec plus qu’il n’en faut</numerusform>
            <numerusform>%n avec plus qu’il n’en faut</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to be fed now</source>
        <translation>
            <numerusform>%n à nourrir maintenant</numerusform>
            <numerusform>%n à nourrir maintenant</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dead</source>
        <translation>
            <numerusform>%n morte</numerusform>
            <numerusform>%n mortes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n that must be weighed again</source>
        <translation>
            <numerusform>%n à repeser</numerusform>
            <numerusform>%n à repeser</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n being worked out</source>
        <translation>
            <numerusform>%n en cours de calcul</numerusform>
            <numerusform>%n en cours de calcul</numerusform>
        </translation>
    </message>
    <message>
        <source>No colony stands in this yard yet.</source>
        <translation>Il n’y a encore aucune colonie dans ce rucher.</translation>
    </message>
    <message>
        <source>One colony: %1.</source>
        <translation>Une colonie&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n colonies: %1.</source>
        <translation>
            <numerusform>%n colonie&#xa0;: %1.</numerusform>
            <numerusform>%n colonies&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.</source>
        <translation>Achetez %1 de sucre blanc&#x202f;; le dernier sirop doit être pris d’ici au %2. Nourrissez le soir, toutes les colonies prévues un même jour le même soir.</translation>
    </message>
    <message>
        <source>Move the %{combs} first, then buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.</source>
        <translation>Déplacez d’abord les cadres, puis achetez %1 de sucre blanc&#x202f;; le dernier sirop doit être pris d’ici au %2. Nourrissez le soir, toutes les colonies prévues un même jour le même soir.</translation>
    </message>
    <message>
        <source>Planned without moving %{combs} between hives.</source>
        <translation>Plan sans déplacer de cadres entre ruches.</translation>
    </message>
    <message>
        <source>one %{comb} (%1) from %2 to %3: %4</source>
        <translation>un cadre (%1) de la colonie %2 à la colonie %3&#xa0;: %4</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} (%1) from %2 to %3: %4</source>
        <translation>
            <numerusform>%n cadre (%1) de la colonie %2 à la colonie %3&#xa0;: %4</numerusform>
            <numerusform>%n cadres (%1) de la colonie %2 à la colonie %3&#xa0;: %4</numerusform>
        </translation>
    </message>
    <message>
        <source>none: with signs of disease in the yard nothing moves between hives</source>
        <translation>aucun&#xa0;: avec des signes de maladie dans le rucher, rien ne passe d’une ruche à l’autre</translation>
    </message>
    <message>
        <source>none: %{combs} stay in their hives</source>
        <translation>aucun&#xa0;: les cadres restent dans leurs ruches</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>costs %1</source>
        <translation>coûte %1</translation>
    </message>
    <message>
        <source>one bag of %1</source>
        <translation>un sac de %1</translation>
    </message>
    <message numerus="yes">
        <source>%n bags of %1</source>
        <translation>
            <numerusform>%n sac de %1</numerusform>
            <numerusform>%n sacs de %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; the sugar itself costs %2</source>
        <translation>%1&#x202f;; le sucre lui-même coûte %2</translation>
    </message>
</context>
<context>
    <name>say::Help</name>
    <message>
        <source>Options</source>
        <comment>heading of the help</comment>
        <translation>Options</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <comment>heading of the help</comment>
        <translation>Commandes</translation>
    </message>
</context>
<context>
    <name>winterlarder::Message</name>
    <message>
        <source>that would be {} bees</source>
        <translation>cela ferait {} abeilles</translation>
    </message>
    <message>
        <source>at most {} bees</source>
        <translation>au plus {} abeilles</translation>
    </message>
    <message>
        <source>how much was fed on {} is not said in the measure of its kind</source>
        <translation>la quantité donnée le {} n’est pas dite dans la mesure de son type</translation>
    </message>
    <message>
        <source>syrup in kg of sugar or in litres, fondant in kg of fondant, dry sugar in kg of sugar</source>
        <translation>sirop en kg de sucre ou en litres, candi en kg de candi, sucre sec en kg de sucre</translation>
    </message>
    <message>
        <source>it was moved to the other half of the earth after {}</source>
        <translation>elle a été déplacée dans l’autre hémisphère après le {}</translation>
    </message>
    <message>
        <source>a look after the move: the winter there is another one</source>
        <translation>une visite après le déplacement&#xa0;: l’hiver y est un autre</translation>
    </message>
    <message>
        <source>there is no hive format {}</source>
        <translation>il n’y a pas de modèle de ruche {}</translation>
    </message>
    <message>
        <source>one that winterlarder-cli hive-formats lists</source>
        <translation>un de ceux que winterlarder-cli hive-formats énumère</translation>
    </message>
    <message>
        <source>the hive has no box</source>
        <translation>la ruche n’a aucun élément</translation>
    </message>
    <message>
        <source>its boxes, from the floor up</source>
        <translation>ses éléments, du plancher vers le haut</translation>
    </message>
    <message>
        <source>no station &quot;{}&quot;</source>
        <translation>aucune station «&#xa0;{}&#xa0;»</translation>
    </message>
    <message>
        <source>an id that the command &quot;stations&quot; lists</source>
        <translation>un identifiant que la commande «&#xa0;stations&#xa0;» énumère</translation>
    </message>
    <message>
        <source>&quot;{}&quot; {} is not a day of the winter asked about</source>
        <translation>«&#xa0;{}&#xa0;» {} n’est pas un jour de l’hiver considéré</translation>
    </message>
    <message>
        <source>a day from {} to {}</source>
        <translation>un jour du {} au {}</translation>
    </message>
    <message>
        <source>{} (at {}:{})</source>
        <translation>{} (à {}:{})</translation>
    </message>
    <message>
        <source>there is no such book</source>
        <translation>ce carnet n’existe pas</translation>
    </message>
    <message>
        <source>check the name, or make a new book</source>
        <translation>vérifiez le nom, ou créez un nouveau carnet</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation>ce n’est pas un fichier</translation>
    </message>
    <message>
        <source>choose a .larder file</source>
        <translation>choisissez un fichier .larder</translation>
    </message>
    <message>
        <source>this is not a book</source>
        <translation>ce n’est pas un carnet</translation>
    </message>
    <message>
        <source>the book has no version</source>
        <translation>le carnet n’a pas de version</translation>
    </message>
    <message>
        <source>salvage what is readable into a new book</source>
        <translation>récupérez ce qui est lisible dans un nouveau carnet</translation>
    </message>
    <message>
        <source>do not use it; salvage takes over what is readable</source>
        <translation>ne l’utilisez pas&#x202f;; salvage reprend ce qui est lisible</translation>
    </message>
    <message>
        <source>there is a file of that name</source>
        <translation>il y a déjà un fichier de ce nom</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>choisissez un autre nom</translation>
    </message>
    <message>
        <source>The book was opened for reading only.</source>
        <translation>Le carnet a été ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>The book lies where nothing can be written.</source>
        <translation>Le carnet est à un endroit où rien ne peut être écrit.</translation>
    </message>
    <message>
        <source>The book was made by a newer version of this program; this one only reads it.</source>
        <translation>Le carnet a été fait par une version plus récente de ce programme&#x202f;; celle-ci ne fait que le lire.</translation>
    </message>
    <message>
        <source>The disk is full, so the book can only be read.</source>
        <translation>Le disque est plein&#xa0;: le carnet ne peut qu’être lu.</translation>
    </message>
    <message>
        <source>The book&apos;s file has a second name (a hard link), so it is only read: a change under one name could not be taken back under the other. Make a copy and write in that, or remove the other name.</source>
        <translation>Le fichier du carnet a un second nom (un lien physique)&#xa0;: il est donc seulement lu, car une modification sous un nom ne pourrait pas être annulée sous l’autre. Faites une copie et écrivez dans celle-ci, ou supprimez l’autre nom.</translation>
    </message>
    <message>
        <source>The book is open elsewhere: {}.</source>
        <translation>Le carnet est ouvert ailleurs&#xa0;: {}.</translation>
    </message>
    <message>
        <source>nothing was changed</source>
        <translation>rien n’a été modifié</translation>
    </message>
    <message>
        <source>a newer version of this program made it</source>
        <translation>une version plus récente de ce programme l’a fait</translation>
    </message>
    <message>
        <source>restore with that version</source>
        <translation>restaurez avec cette version</translation>
    </message>
    <message>
        <source>{} {}: no entry has that number</source>
        <translation>{} {}&#xa0;: aucune note n’a ce numéro</translation>
    </message>
    <message>
        <source>1 to {}</source>
        <translation>de 1 à {}</translation>
    </message>
    <message>
        <source>{} {}: there is no {} {}</source>
        <translation>{} {}&#xa0;: il n’y a pas de {} {}</translation>
    </message>
    <message>
        <source>name one that is in the book</source>
        <translation>nommez quelque chose qui est dans le carnet</translation>
    </message>
    <message>
        <source>there is no {} called &quot;{}&quot;</source>
        <translation>il n’y a pas de {} appelé «&#xa0;{}&#xa0;»</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>vérifiez le nom</translation>
    </message>
    <message>
        <source>{} of them are called &quot;{}&quot;</source>
        <translation>{} d’entre eux s’appellent «&#xa0;{}&#xa0;»</translation>
    </message>
    <message>
        <source>rename all but one</source>
        <translation>renommez-les tous sauf un</translation>
    </message>
    <message>
        <source>there is no colony {}</source>
        <translation>il n’y a pas de colonie {}</translation>
    </message>
    <message>
        <source>check its number</source>
        <translation>vérifiez son numéro</translation>
    </message>
    <message>
        <source>holds a line break</source>
        <translation>contient un saut de ligne</translation>
    </message>
    <message>
        <source>holds a control character ({})</source>
        <translation>contient un caractère de commande ({})</translation>
    </message>
    <message>
        <source>holds a mark that turns the direction of reading ({})</source>
        <translation>contient une marque qui change le sens de lecture ({})</translation>
    </message>
    <message>
        <source>is only blanks</source>
        <translation>ne contient que des espaces</translation>
    </message>
    <message>
        <source>nothing was changed; make room and do it again</source>
        <translation>rien n’a été modifié&#x202f;; faites de la place et recommencez</translation>
    </message>
    <message>
        <source>{} is outside what may be entered</source>
        <translation>{} est hors de ce qui peut être saisi</translation>
    </message>
    <message>
        <source>see the field&apos;s limits</source>
        <translation>voyez les limites du champ</translation>
    </message>
    <message>
        <source>an entry refers to one that is not in the book</source>
        <translation>une note renvoie à une autre qui n’est pas dans le carnet</translation>
    </message>
    <message>
        <source>enter the other one first</source>
        <translation>saisissez d’abord l’autre</translation>
    </message>
    <message>
        <source>the change breaks a rule of the file: {}</source>
        <translation>la modification enfreint une règle du fichier&#xa0;: {}</translation>
    </message>
    <message>
        <source>the last change was interrupted and has to be taken back before the book can be read</source>
        <translation>la dernière modification a été interrompue et doit être annulée avant que le carnet puisse être lu</translation>
    </message>
    <message>
        <source>open the book again where it can be written; keep {}-journal beside it, a copy without it is damaged</source>
        <translation>rouvrez le carnet là où l’on peut écrire&#x202f;; gardez {}-journal à côté, une copie sans lui est endommagée</translation>
    </message>
    <message>
        <source>the file was moved, removed or replaced by another while the book was open</source>
        <translation>le fichier a été déplacé, supprimé ou remplacé par un autre pendant que le carnet était ouvert</translation>
    </message>
    <message>
        <source>nothing was changed; open the book again and see what it holds</source>
        <translation>rien n’a été modifié&#x202f;; rouvrez le carnet et voyez ce qu’il contient</translation>
    </message>
    <message>
        <source>the book cannot be written here</source>
        <translation>le carnet ne peut pas être écrit ici</translation>
    </message>
    <message>
        <source>nothing was changed; copy it to where it can</source>
        <translation>rien n’a été modifié&#x202f;; copiez-le là où l’on peut écrire</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>le disque est plein</translation>
    </message>
    <message>
        <source>the disk does not read or write as it should</source>
        <translation>le disque ne lit pas ou n’écrit pas comme il faut</translation>
    </message>
    <message>
        <source>nothing was changed; check the disk and do it again</source>
        <translation>rien n’a été modifié&#x202f;; vérifiez le disque et recommencez</translation>
    </message>
    <message>
        <source>another program is using the book</source>
        <translation>un autre programme utilise le carnet</translation>
    </message>
    <message>
        <source>nothing was changed; do it again in a moment</source>
        <translation>rien n’a été modifié&#x202f;; recommencez dans un instant</translation>
    </message>
    <message>
        <source>the book is damaged</source>
        <translation>le carnet est endommagé</translation>
    </message>
    <message>
        <source>salvage what is readable into a new book, or restore a backup</source>
        <translation>récupérez ce qui est lisible dans un nouveau carnet, ou restaurez une copie de sauvegarde</translation>
    </message>
    <message>
        <source>the book or its journal cannot be opened</source>
        <translation>le carnet ou son journal ne peut pas être ouvert</translation>
    </message>
    <message>
        <source>check the folder and its permissions</source>
        <translation>vérifiez le dossier et ses droits d’accès</translation>
    </message>
    <message>
        <source>the book is damaged: reading it does not end</source>
        <translation>le carnet est endommagé&#xa0;: sa lecture n’en finit pas</translation>
    </message>
    <message>
        <source>a text is too long</source>
        <translation>un texte est trop long</translation>
    </message>
    <message>
        <source>shorten it</source>
        <translation>raccourcissez-le</translation>
    </message>
    <message>
        <source>the book cannot be used: {}</source>
        <translation>le carnet ne peut pas être utilisé&#xa0;: {}</translation>
    </message>
    <message>
        <source>the last change was interrupted and has to be taken back before the book can be read, but {}</source>
        <translation>la dernière modification a été interrompue et doit être annulée avant que le carnet puisse être lu, mais {}</translation>
    </message>
    <message>
        <source>{}; a copy without {}-journal beside it is damaged</source>
        <translation>{}&#x202f;; une copie sans {}-journal à côté est endommagée</translation>
    </message>
    <message>
        <source>it is open elsewhere: {}</source>
        <translation>il est ouvert ailleurs&#xa0;: {}</translation>
    </message>
    <message>
        <source>close it there</source>
        <translation>fermez-le là-bas</translation>
    </message>
    <message>
        <source>make room and open it again</source>
        <translation>faites de la place et rouvrez-le</translation>
    </message>
    <message>
        <source>nothing can be written here</source>
        <translation>rien ne peut être écrit ici</translation>
    </message>
    <message>
        <source>open it where its file and folder can be written</source>
        <translation>ouvrez-le là où l’on peut écrire son fichier et son dossier</translation>
    </message>
    <message>
        <source>its file cannot be written here</source>
        <translation>son fichier ne peut pas être écrit ici</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>quelqu’un</translation>
    </message>
    <message>
        <source>by {}</source>
        <translation>par {}</translation>
    </message>
    <message>
        <source>by {} on {}</source>
        <translation>par {} sur {}</translation>
    </message>
    <message>
        <source>by {} since {}</source>
        <translation>par {} depuis {}</translation>
    </message>
    <message>
        <source>by {} on {} since {}</source>
        <translation>par {} sur {} depuis {}</translation>
    </message>
    <message>
        <source>there is no {} {}</source>
        <translation>il n’y a pas de {} {}</translation>
    </message>
    <message>
        <source>it may have been removed meanwhile</source>
        <translation>cela a peut-être été supprimé entre-temps</translation>
    </message>
    <message>
        <source>look {} has no comb {}</source>
        <translation>la visite {} n’a pas de cadre {}</translation>
    </message>
    <message>
        <source>count the combs it lists</source>
        <translation>comptez les cadres qu’elle énumère</translation>
    </message>
    <message>
        <source>yard {} is in use by {} colonies and {} moves</source>
        <translation>le rucher {} sert à {} colonies et à {} déplacements</translation>
    </message>
    <message>
        <source>move or remove its colonies first</source>
        <translation>déplacez ou supprimez d’abord ses colonies</translation>
    </message>
    <message>
        <source>{} {}: {} is damaged</source>
        <translation>{} {}&#xa0;: {} est endommagé</translation>
    </message>
    <message>
        <source>salvage the book</source>
        <translation>récupérez le carnet avec salvage</translation>
    </message>
    <message>
        <source>{} to {}{}</source>
        <translation>de {} à {}{}</translation>
    </message>
    <message>
        <source>{}{} or more</source>
        <translation>{}{} ou plus</translation>
    </message>
    <message>
        <source>{}{} or less</source>
        <translation>{}{} ou moins</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>{} is not a number</source>
        <translation>{} n’est pas un nombre</translation>
    </message>
    <message>
        <source>{} is {}</source>
        <translation>{} est {}</translation>
    </message>
    <message>
        <source>{} is not readable text</source>
        <translation>{} n’est pas un texte lisible</translation>
    </message>
    <message>
        <source>text in UTF-8 without zero bytes</source>
        <translation>du texte en UTF-8 sans octet nul</translation>
    </message>
    <message>
        <source>{} is empty</source>
        <translation>{} est vide</translation>
    </message>
    <message>
        <source>write something</source>
        <translation>écrivez quelque chose</translation>
    </message>
    <message>
        <source>{} has {} characters</source>
        <translation>{} a {} caractères</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>au plus {}</translation>
    </message>
    <message>
        <source>{} is of another type</source>
        <translation>{} est d’un autre type</translation>
    </message>
    <message>
        <source>{} is &quot;{}&quot;</source>
        <translation>{} est «&#xa0;{}&#xa0;»</translation>
    </message>
    <message>
        <source>one line of letters, digits, blanks and signs</source>
        <translation>une ligne de lettres, chiffres, espaces et signes</translation>
    </message>
    <message>
        <source>{} is missing</source>
        <translation>{} manque</translation>
    </message>
    <message>
        <source>give it</source>
        <translation>indiquez-le</translation>
    </message>
    <message>
        <source>text</source>
        <translation>du texte</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true ou false</translation>
    </message>
    <message>
        <source>month and day such as 05-19, not 02-29</source>
        <translation>mois et jour, par exemple 05-19, pas 02-29</translation>
    </message>
    <message>
        <source>a whole number, 0 to 18446744073709551615</source>
        <translation>un nombre entier, de 0 à 18446744073709551615</translation>
    </message>
    <message>
        <source>weekdays such as 1,4,6</source>
        <translation>des jours de la semaine, par exemple 1,4,6</translation>
    </message>
    <message>
        <source>one of {}</source>
        <translation>l’un de {}</translation>
    </message>
    <message>
        <source>{} is of a type this program does not know</source>
        <translation>{} est d’un type que ce programme ne connaît pas</translation>
    </message>
    <message>
        <source>step {} of the history is damaged</source>
        <translation>l’étape {} de l’historique est endommagée</translation>
    </message>
    <message>
        <source>{} for {} {}</source>
        <translation>{} pour le {} {}</translation>
    </message>
    <message>
        <source>write {}</source>
        <translation>écrivez {}</translation>
    </message>
    <message>
        <source>write {}, or {}</source>
        <translation>écrivez {}, ou {}</translation>
    </message>
    <message>
        <source>the mean temperature of {} is {} degC</source>
        <translation>la température moyenne de {} est de {} degC</translation>
    </message>
    <message>
        <source>monthly means lie between {} and {} degC</source>
        <translation>les moyennes mensuelles sont entre {} et {} degC</translation>
    </message>
    <message>
        <source>the {} is {} K</source>
        <translation>{}&#xa0;: {} K</translation>
    </message>
    <message>
        <source>it is 0 or more</source>
        <translation>il faut 0 ou plus</translation>
    </message>
    <message>
        <source>the correlation of consecutive days is {}</source>
        <translation>la corrélation de deux jours consécutifs est {}</translation>
    </message>
    <message>
        <source>it lies between -1 and 1</source>
        <translation>elle est entre -1 et 1</translation>
    </message>
    <message>
        <source>the latitude is {}</source>
        <translation>la latitude est {}</translation>
    </message>
    <message>
        <source>it lies between -90 and 90 degrees</source>
        <translation>elle est entre -90 et 90 degrés</translation>
    </message>
    <message>
        <source>the mean of {} is {} degC</source>
        <translation>la moyenne de {} est de {} degC</translation>
    </message>
    <message>
        <source>daily means lie between {} and {} degC</source>
        <translation>les moyennes journalières sont entre {} et {} degC</translation>
    </message>
    <message>
        <source>{} is there twice</source>
        <translation>{} apparaît deux fois</translation>
    </message>
    <message>
        <source>each date stands once</source>
        <translation>chaque date ne figure qu’une fois</translation>
    </message>
    <message>
        <source>the record has {} days</source>
        <translation>la série a {} jours</translation>
    </message>
    <message>
        <source>at least {} are needed</source>
        <translation>il en faut au moins {}</translation>
    </message>
    <message>
        <source>{} has {} days in all</source>
        <translation>{} a {} jours en tout</translation>
    </message>
    <message>
        <source>each month needs at least {}</source>
        <translation>il en faut au moins {} par mois</translation>
    </message>
    <message>
        <source>season day {}</source>
        <translation>jour de saison {}</translation>
    </message>
    <message>
        <source>{} is outside the winter asked about</source>
        <translation>{} est hors de l’hiver considéré</translation>
    </message>
    <message>
        <source>its dates lie between {} and {}</source>
        <translation>ses dates sont entre {} et {}</translation>
    </message>
    <message>
        <source>{} is given alone where laying never stops by the climate</source>
        <translation>{} est indiqué seul, alors que d’après le climat la ponte ne s’arrête jamais</translation>
    </message>
    <message>
        <source>give {} as well, or neither</source>
        <translation>indiquez aussi {}, ou aucun des deux</translation>
    </message>
    <message>
        <source>{} is too early where laying never stops</source>
        <translation>{} est trop tôt là où la ponte ne s’arrête jamais</translation>
    </message>
    <message>
        <source>it is on or after {}</source>
        <translation>il faut le {} ou plus tard</translation>
    </message>
    <message>
        <source>{} is before {}</source>
        <translation>{} est avant {}</translation>
    </message>
    <message>
        <source>{} is not earlier than {}</source>
        <translation>{} ne doit pas être avant {}</translation>
    </message>
    <message>
        <source>{} is less than {} days after {}</source>
        <translation>{} est moins de {} jours après {}</translation>
    </message>
    <message>
        <source>{} is at least {} days after {}</source>
        <translation>{} doit être au moins {} jours après {}</translation>
    </message>
    <message>
        <source>{} leaves no room for {} within the winter</source>
        <translation>{} ne laisse pas de place à {} dans l’hiver</translation>
    </message>
    <message>
        <source>give {} as well, or another {}</source>
        <translation>indiquez aussi {}, ou un autre {}</translation>
    </message>
    <message>
        <source>the longitude is {}</source>
        <translation>la longitude est {}</translation>
    </message>
    <message>
        <source>it lies between -180 and 180 degrees</source>
        <translation>elle est entre -180 et 180 degrés</translation>
    </message>
    <message>
        <source>the elevation is {} m</source>
        <translation>l’altitude est de {}&#xa0;m</translation>
    </message>
    <message>
        <source>it lies between {} and {} m</source>
        <translation>elle est entre {} et {}&#xa0;m</translation>
    </message>
    <message>
        <source>there is no table &quot;{}&quot;</source>
        <translation>il n’y a pas de table «&#xa0;{}&#xa0;»</translation>
    </message>
    <message>
        <source>unknown column {}</source>
        <translation>colonne {} inconnue</translation>
    </message>
    <message>
        <source>the column owner is missing</source>
        <translation>la colonne owner manque</translation>
    </message>
    <message>
        <source>the entry each row belongs to, by its number, or a colony by its name</source>
        <translation>la note à laquelle appartient chaque ligne, par son numéro, ou une colonie par son nom</translation>
    </message>
    <message>
        <source>give each number once</source>
        <translation>donnez chaque numéro une seule fois</translation>
    </message>
    <message>
        <source>the place is not a number</source>
        <translation>la place n’est pas un nombre</translation>
    </message>
    <message>
        <source>a whole number from 0</source>
        <translation>un nombre entier à partir de 0</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number of a {}</source>
        <translation>«&#xa0;{}&#xa0;» n’est pas un numéro de {}</translation>
    </message>
    <message>
        <source>such as #7</source>
        <translation>par exemple #7</translation>
    </message>
    <message>
        <source>there is no {} &quot;{}&quot;</source>
        <translation>il n’y a pas de {} «&#xa0;{}&#xa0;»</translation>
    </message>
    <message>
        <source>name one that is in the book, or enter it first</source>
        <translation>nommez quelque chose qui est dans le carnet, ou saisissez-le d’abord</translation>
    </message>
    <message>
        <source>say which, such as #{}</source>
        <translation>précisez, par exemple #{}</translation>
    </message>
    <message>
        <source>the document is not an object</source>
        <translation>le document n’est pas un objet</translation>
    </message>
    <message>
        <source>begin it with {</source>
        <translation>commencez-le par {</translation>
    </message>
    <message>
        <source>unknown key {}</source>
        <translation>clé {} inconnue</translation>
    </message>
    <message>
        <source>the key &quot;larder&quot; is missing</source>
        <translation>la clé &quot;larder&quot; manque</translation>
    </message>
    <message>
        <source>&quot;larder&quot;: {}</source>
        <translation>&quot;larder&quot;&#xa0;: {}</translation>
    </message>
    <message>
        <source>this form of document is not known</source>
        <translation>cette forme de document n’est pas connue</translation>
    </message>
    <message>
        <source>a list of entries</source>
        <translation>une liste de notes</translation>
    </message>
    <message>
        <source>{} is not an object</source>
        <translation>{} n’est pas un objet</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objet</translation>
    </message>
    <message>
        <source>{} {} is there twice</source>
        <translation>{} {} apparaît deux fois</translation>
    </message>
    <message>
        <source>number each once</source>
        <translation>donnez à chacun un numéro à lui</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is {}</source>
        <translation>«&#xa0;{}&#xa0;» est {}</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>une liste</translation>
    </message>
    <message>
        <source>an item of &quot;{}&quot; is {}</source>
        <translation>un élément de «&#xa0;{}&#xa0;» est {}</translation>
    </message>
    <message>
        <source>name one that is in the document</source>
        <translation>nommez quelque chose qui est dans le document</translation>
    </message>
    <message>
        <source>a case is {}</source>
        <translation>un cas est {}</translation>
    </message>
    <message>
        <source>one JSON object</source>
        <translation>un objet JSON</translation>
    </message>
    <message>
        <source>the day as YYYY-MM-DD</source>
        <translation>le jour sous la forme YYYY-MM-DD</translation>
    </message>
    <message>
        <source>{} {} is later than {}</source>
        <translation>{} {} est après {}</translation>
    </message>
    <message>
        <source>a day not later than as_of</source>
        <translation>un jour qui n’est pas après as_of</translation>
    </message>
    <message>
        <source>{} {} is {} days before {}</source>
        <translation>{} {} est {} jours avant {}</translation>
    </message>
    <message>
        <source>at most {} days before as_of: look again, or ask for an earlier day</source>
        <translation>au plus {} jours avant as_of&#xa0;: regardez de nouveau, ou interrogez un jour antérieur</translation>
    </message>
    <message>
        <source>syrup is given as sugar_kg, or as syrup_l with its ratio</source>
        <translation>le sirop se donne en sugar_kg, ou en syrup_l avec ses proportions</translation>
    </message>
    <message>
        <source>{} does not go with syrup</source>
        <translation>{} ne va pas avec le sirop</translation>
    </message>
    <message>
        <source>sugar_kg, or syrup_l with its ratio</source>
        <translation>sugar_kg, ou syrup_l avec ses proportions</translation>
    </message>
    <message>
        <source>sugar to water by mass, such as &quot;3:2&quot;</source>
        <translation>sucre et eau, en poids, par exemple &quot;3:2&quot;</translation>
    </message>
    <message>
        <source>the kilograms given</source>
        <translation>les kilogrammes donnés</translation>
    </message>
    <message>
        <source>{} does not go with fondant</source>
        <translation>{} ne va pas avec le candi</translation>
    </message>
    <message>
        <source>{} does not go with dry sugar</source>
        <translation>{} ne va pas avec le sucre sec</translation>
    </message>
    <message>
        <source>{} alone</source>
        <translation>{} seul</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is given here and in &quot;{}&quot;</source>
        <translation>«&#xa0;{}&#xa0;» est indiqué ici et dans «&#xa0;{}&#xa0;»</translation>
    </message>
    <message>
        <source>one of the two</source>
        <translation>l’un des deux</translation>
    </message>
    <message>
        <source>the day the question is asked, as YYYY-MM-DD</source>
        <translation>le jour considéré, sous la forme YYYY-MM-DD</translation>
    </message>
    <message>
        <source>where the bees stand: {&quot;station&quot;: ...}</source>
        <translation>où se trouvent les abeilles&#xa0;: {&quot;station&quot;: ...}</translation>
    </message>
    <message>
        <source>the hive: {&quot;format&quot;: ..., &quot;boxes&quot;: ...}</source>
        <translation>la ruche&#xa0;: {&quot;format&quot;: ..., &quot;boxes&quot;: ...}</translation>
    </message>
    <message>
        <source>own measures need comb_width_mm, comb_height_mm, combs_per_box and pitch_mm</source>
        <translation>des mesures propres demandent comb_width_mm, comb_height_mm, combs_per_box et pitch_mm</translation>
    </message>
    <message>
        <source>no hive format {}</source>
        <translation>aucun modèle de ruche {}</translation>
    </message>
    <message>
        <source>one of count, covered_combs and seams</source>
        <translation>l’un de count, covered_combs et seams</translation>
    </message>
    <message>
        <source>the number of combs full of stores; a list of combs is the other way to say it</source>
        <translation>le nombre de cadres pleins de provisions&#x202f;; une liste de cadres est l’autre façon de le dire</translation>
    </message>
    <message>
        <source>the shares of {} add up to {}</source>
        <translation>les parts de {} font au total {}</translation>
    </message>
    <message>
        <source>capped, open, brood and pollen together at most 1</source>
        <translation>capped, open, brood et pollen ensemble au plus 1</translation>
    </message>
    <message>
        <source>one of gross_kg, lift_kg and heft</source>
        <translation>l’un de gross_kg, lift_kg et heft</translation>
    </message>
    <message>
        <source>one of syrup, fondant and dry-sugar</source>
        <translation>l’un de syrup, fondant et dry-sugar</translation>
    </message>
    <message>
        <source>&quot;ratio&quot; is {}</source>
        <translation>&quot;ratio&quot; est {}</translation>
    </message>
    <message>
        <source>kg of sugar to kg of water, both above 0, such as &quot;3:2&quot;</source>
        <translation>kg de sucre pour kg d’eau, tous deux au-dessus de 0, par exemple &quot;3:2&quot;</translation>
    </message>
    <message>
        <source>the kilograms of honey taken</source>
        <translation>les kilogrammes de miel récolté</translation>
    </message>
    <message>
        <source>&quot;until&quot; {} is before {}</source>
        <translation>&quot;until&quot; {} est avant {}</translation>
    </message>
    <message>
        <source>the last day honey is not for people, as the label says</source>
        <translation>le dernier jour où le miel n’est pas pour la récolte, selon la notice</translation>
    </message>
    <message>
        <source>{} combs are listed, but the hive has {} places</source>
        <translation>{} cadres sont énumérés, mais la ruche a {} places</translation>
    </message>
    <message>
        <source>at most one comb a place</source>
        <translation>au plus un cadre par place</translation>
    </message>
    <message>
        <source>&quot;covered_combs&quot; is {}, but {}</source>
        <translation>&quot;covered_combs&quot; est {}, mais {}</translation>
    </message>
    <message>
        <source>combs fully covered on both sides: not more than there are</source>
        <translation>des cadres entièrement couverts des deux côtés&#xa0;: pas plus qu’il n’y en a</translation>
    </message>
    <message>
        <source>this comb is said to be in a super, but the hive{} has no super</source>
        <translation>ce cadre est dit dans une hausse, mais la ruche{} n’a pas de hausse</translation>
    </message>
    <message>
        <source>the boxes from the floor up with &quot;super&quot;: true for the super, or no in_super</source>
        <translation>les éléments du plancher vers le haut, avec &quot;super&quot;: true pour la hausse, ou pas de in_super</translation>
    </message>
    <message>
        <source>{} combs are said to be in a super, but the supers of the hive{} have {} places</source>
        <translation>{} cadres sont dits dans une hausse, mais les hausses de la ruche{} ont {} places</translation>
    </message>
    <message>
        <source>at most one comb a place; combs without in_super fill the boxes from the floor up</source>
        <translation>au plus un cadre par place&#x202f;; les cadres sans in_super remplissent les éléments du plancher vers le haut</translation>
    </message>
    <message>
        <source>the hive{} has {} places</source>
        <translation>la ruche{} a {} places</translation>
    </message>
    <message>
        <source>{} combs are listed, but {}</source>
        <translation>{} cadres sont énumérés, mais {}</translation>
    </message>
    <message>
        <source>{} combs are listed{}</source>
        <translation>{} cadres sont énumérés{}</translation>
    </message>
    <message>
        <source>a whole number from {} to {}{}</source>
        <translation>un nombre entier de {} à {}{}</translation>
    </message>
    <message>
        <source>a number from {} to {}{}</source>
        <translation>un nombre de {} à {}{}</translation>
    </message>
    <message>
        <source>a whole number of at least {}{}</source>
        <translation>un nombre entier d’au moins {}{}</translation>
    </message>
    <message>
        <source>a number of at least {}{}</source>
        <translation>un nombre d’au moins {}{}</translation>
    </message>
    <message>
        <source>a whole number of at most {}{}</source>
        <translation>un nombre entier d’au plus {}{}</translation>
    </message>
    <message>
        <source>a number of at most {}{}</source>
        <translation>un nombre d’au plus {}{}</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un nombre entier</translation>
    </message>
    <message>
        <source>a date as YYYY-MM-DD in double quotes</source>
        <translation>une date sous la forme YYYY-MM-DD, entre guillemets droits</translation>
    </message>
    <message>
        <source>{} is {}, which is not a date</source>
        <translation>{} est {}, qui n’est pas une date</translation>
    </message>
    <message>
        <source>{} has {} bytes</source>
        <translation>{} a {} octets</translation>
    </message>
    <message>
        <source>a text, or leave the key out</source>
        <translation>un texte, ou enlevez la clé</translation>
    </message>
    <message>
        <source>a text in double quotes</source>
        <translation>un texte entre guillemets droits</translation>
    </message>
    <message>
        <source>true or false, without quotes</source>
        <translation>true ou false, sans guillemets</translation>
    </message>
    <message>
        <source>{} is not a weekday</source>
        <translation>{} n’est pas un jour de la semaine</translation>
    </message>
    <message>
        <source>Monday to Sunday, or 1 (Monday) to 7 (Sunday)</source>
        <translation>Monday à Sunday, ou 1 (lundi) à 7 (dimanche)</translation>
    </message>
    <message>
        <source>the same weekday is given twice</source>
        <translation>le même jour de la semaine est indiqué deux fois</translation>
    </message>
    <message>
        <source>each weekday once</source>
        <translation>chaque jour de la semaine une seule fois</translation>
    </message>
    <message>
        <source>the key {} is missing</source>
        <translation>la clé {} manque</translation>
    </message>
    <message>
        <source>{} has {} values</source>
        <translation>{} a {} valeurs</translation>
    </message>
    <message>
        <source>{} is given beside {} at {}:{}</source>
        <translation>{} est indiqué à côté de {} à {}:{}</translation>
    </message>
    <message>
        <source>none of {} is given</source>
        <translation>aucun de {} n’est indiqué</translation>
    </message>
    <message>
        <source>unknown key {}{}</source>
        <translation>clé {} inconnue{}</translation>
    </message>
    <message>
        <source> in {}</source>
        <translation> dans {}</translation>
    </message>
    <message>
        <source>the latitude of the place, degrees north</source>
        <translation>la latitude du lieu, en degrés nord</translation>
    </message>
    <message>
        <source>{} is given beside monthly_mean_c</source>
        <translation>{} est indiqué à côté de monthly_mean_c</translation>
    </message>
    <message>
        <source>leave elevation_m out: an own climate is already that of the place</source>
        <translation>enlevez elevation_m&#xa0;: un climat propre est déjà celui du lieu</translation>
    </message>
    <message>
        <source>{} is given without &quot;monthly_mean_c&quot;</source>
        <translation>{} est indiqué sans &quot;monthly_mean_c&quot;</translation>
    </message>
    <message>
        <source>the scatter belongs to an own climate</source>
        <translation>la dispersion appartient à un climat propre</translation>
    </message>
    <message>
        <source>the site says nothing of where it is</source>
        <translation>le site ne dit pas où il se trouve</translation>
    </message>
    <message>
        <source>{} is given without {}</source>
        <translation>{} est indiqué sans {}</translation>
    </message>
    <message>
        <source>{} {} is not a day of the winter asked about</source>
        <translation>{} {} n’est pas un jour de l’hiver considéré</translation>
    </message>
    <message>
        <source>no station {}</source>
        <translation>aucune station {}</translation>
    </message>
    <message>
        <source>the key {} is given twice, first at {}:{}</source>
        <translation>la clé {} est donnée deux fois, d’abord à {}:{}</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>chaque clé une seule fois</translation>
    </message>
    <message>
        <source>nested deeper than {} levels</source>
        <translation>plus de {} niveaux imbriqués</translation>
    </message>
    <message>
        <source>a case as described in the manual</source>
        <translation>un cas tel que le manuel le décrit</translation>
    </message>
    <message>
        <source>there are too many values</source>
        <translation>il y a trop de valeurs</translation>
    </message>
    <message>
        <source>a zero byte in the text</source>
        <translation>un octet nul dans le texte</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>du texte en UTF-8</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot;?</source>
        <translation>vouliez-vous dire «&#xa0;{}&#xa0;»&#x202f;?</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot; or &quot;{}&quot;?</source>
        <translation>vouliez-vous dire «&#xa0;{}&#xa0;» ou «&#xa0;{}&#xa0;»&#x202f;?</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot; or &quot;{}&quot; or &quot;{}&quot;?</source>
        <translation>vouliez-vous dire «&#xa0;{}&#xa0;», «&#xa0;{}&#xa0;» ou «&#xa0;{}&#xa0;»&#x202f;?</translation>
    </message>
    <message>
        <source>known: {}</source>
        <translation>connus&#xa0;: {}</translation>
    </message>
    <message>
        <source>there is no column &quot;{}&quot;</source>
        <translation>il n’y a pas de colonne «&#xa0;{}&#xa0;»</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a date</source>
        <translation>«&#xa0;{}&#xa0;» n’est pas une date</translation>
    </message>
    <message>
        <source>YYYY-MM-DD or YYYY/MM/DD</source>
        <translation>YYYY-MM-DD ou YYYY/MM/DD</translation>
    </message>
    <message>
        <source>{} stands in line {} already</source>
        <translation>{} est déjà à la ligne {}</translation>
    </message>
    <message>
        <source>each date once</source>
        <translation>chaque date une seule fois</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a number</source>
        <translation>«&#xa0;{}&#xa0;» n’est pas un nombre</translation>
    </message>
    <message>
        <source>a temperature with a decimal point, or an empty cell</source>
        <translation>une température avec un point décimal, ou une case vide</translation>
    </message>
    <message>
        <source>{} is no air temperature</source>
        <translation>{} n’est pas une température de l’air</translation>
    </message>
    <message>
        <source>{} to {} degC, or an empty cell</source>
        <translation>de {} à {} degC, ou une case vide</translation>
    </message>
    <message>
        <source>the minimum is above the maximum</source>
        <translation>le minimum est au-dessus du maximum</translation>
    </message>
    <message>
        <source>the lower reading in the column of minima</source>
        <translation>le relevé le plus bas dans la colonne des minima</translation>
    </message>
    <message>
        <source>&quot;{}&quot; names no column</source>
        <translation>«&#xa0;{}&#xa0;» ne nomme aucune colonne</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is named twice</source>
        <translation>«&#xa0;{}&#xa0;» est nommé deux fois</translation>
    </message>
    <message>
        <source>neither the mean alone nor minimum and maximum are named</source>
        <translation>ni la moyenne seule, ni le minimum et le maximum ne sont nommés</translation>
    </message>
    <message>
        <source>which part of the dates is the year cannot be told</source>
        <translation>impossible de savoir quelle partie des dates est l’année</translation>
    </message>
    <message>
        <source>dates are written in two orders: the day first in line {}, the month first in line {}</source>
        <translation>les dates sont écrites dans deux ordres&#xa0;: le jour d’abord à la ligne {}, le mois d’abord à la ligne {}</translation>
    </message>
    <message>
        <source>whether day or month comes first in the dates cannot be told: {}/{}/{} in line {} may be either, and no number above 12 decides</source>
        <translation>impossible de savoir si le jour ou le mois vient d’abord dans les dates&#xa0;: {}/{}/{} à la ligne {} peut se lire des deux façons, et aucun nombre au-dessus de 12 ne tranche</translation>
    </message>
    <message>
        <source>--date-order dmy, mdy or ymd</source>
        <translation>--date-order dmy, mdy ou ymd</translation>
    </message>
    <message>
        <source>this is no text</source>
        <translation>ce n’est pas du texte</translation>
    </message>
    <message>
        <source>a table of times and weights in plain text (UTF-8)</source>
        <translation>une table d’heures et de poids en texte simple (UTF-8)</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>le fichier est vide</translation>
    </message>
    <message>
        <source>a table of times and weights</source>
        <translation>une table d’heures et de poids</translation>
    </message>
    <message>
        <source>cannot be read to its end</source>
        <translation>ne peut pas être lu jusqu’au bout</translation>
    </message>
    <message>
        <source>a file that can be read</source>
        <translation>un fichier qui peut être lu</translation>
    </message>
    <message>
        <source>the log has more than {} readings</source>
        <translation>la table a plus de {} relevés</translation>
    </message>
    <message>
        <source>at most {}: a part of it</source>
        <translation>au plus {}&#xa0;: une partie</translation>
    </message>
    <message>
        <source>no row has both a time and a weight</source>
        <translation>aucune ligne n’a à la fois une heure et un poids</translation>
    </message>
    <message>
        <source>--time and --weight with the columns that hold them</source>
        <translation>--time et --weight avec les colonnes qui les contiennent</translation>
    </message>
    <message>
        <source>no row has both a time and a weight; the first row left out has {}</source>
        <translation>aucune ligne n’a à la fois une heure et un poids&#x202f;; la première ligne laissée de côté a {}</translation>
    </message>
    <message>
        <source>the unit of the weights cannot be told: half of them are above {}</source>
        <translation>impossible de savoir l’unité des poids&#xa0;: la moitié d’entre eux est au-dessus de {}</translation>
    </message>
    <message>
        <source>--unit kg, g or lb</source>
        <translation>--unit kg, g ou lb</translation>
    </message>
    <message>
        <source>{} with one of them</source>
        <translation>{} avec l’une d’elles</translation>
    </message>
    <message>
        <source>there is no column {}</source>
        <translation>il n’y a pas de colonne {}</translation>
    </message>
    <message>
        <source>{} with a name of the header{} or a number from 1 to {}</source>
        <translation>{} avec un nom de l’en-tête{} ou un nombre de 1 à {}</translation>
    </message>
    <message>
        <source>more than one column holds times: {}</source>
        <translation>plus d’une colonne contient des heures&#xa0;: {}</translation>
    </message>
    <message>
        <source>no column holds times</source>
        <translation>aucune colonne ne contient d’heures</translation>
    </message>
    <message>
        <source>a table of times and weights; --delimiter, --time or --date where it is one</source>
        <translation>une table d’heures et de poids&#x202f;; --delimiter, --time ou --date si c’en est une</translation>
    </message>
    <message>
        <source>more than one column holds dates: {}</source>
        <translation>plus d’une colonne contient des dates&#xa0;: {}</translation>
    </message>
    <message>
        <source>more than one column holds times of day: {}</source>
        <translation>plus d’une colonne contient des heures du jour&#xa0;: {}</translation>
    </message>
    <message>
        <source>more than one column may hold the weight: {}</source>
        <translation>plus d’une colonne peut contenir le poids&#xa0;: {}</translation>
    </message>
    <message>
        <source>no column holds weights</source>
        <translation>aucune colonne ne contient de poids</translation>
    </message>
    <message>
        <source>a column of numbers, one a row; --delimiter or --weight where there is one</source>
        <translation>une colonne de nombres, un par ligne&#x202f;; --delimiter ou --weight s’il y en a une</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a ratio of sugar to water</source>
        <translation>«&#xa0;{}&#xa0;» n’est pas une proportion de sucre et d’eau</translation>
    </message>
    <message>
        <source>two numbers above 0 with a colon between them, such as 3:2 or 1:0.63</source>
        <translation>deux nombres au-dessus de 0 séparés par deux-points, par exemple 3:2 ou 1:0.63</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is more than 80 % sugar, which no longer flows</source>
        <translation>«&#xa0;{}&#xa0;» a plus de 80&#xa0;% de sucre et ne coule plus</translation>
    </message>
    <message>
        <source>at most 4:1 by mass; syrup for winter stores is 3:2 or 2:1</source>
        <translation>au plus 4:1 en poids&#x202f;; le sirop pour les provisions d’hiver est 3:2 ou 2:1</translation>
    </message>
    <message>
        <source>{} cannot be {}</source>
        <translation>{}&#xa0;: {} n’est pas possible</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 ou plus</translation>
    </message>
    <message>
        <source>the density of {} % sugar is not known</source>
        <translation>la densité de {}&#xa0;% de sucre n’est pas connue</translation>
    </message>
    <message>
        <source>0 to 80 % sugar by mass</source>
        <translation>de 0 à 80&#xa0;% de sucre en poids</translation>
    </message>
    <message>
        <source>syrup of {} is too thin to become stores</source>
        <translation>un sirop de {} est trop dilué pour devenir des provisions</translation>
    </message>
    <message>
        <source>3:2 or 2:1 by mass for winter stores</source>
        <translation>3:2 ou 2:1 en poids pour les provisions d’hiver</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>rien n’est écrit</translation>
    </message>
    <message>
        <source>write a number and a unit</source>
        <translation>écrivez un nombre et une unité</translation>
    </message>
    <message>
        <source>two numbers stand side by side</source>
        <translation>deux nombres sont côte à côte</translation>
    </message>
    <message>
        <source>write one number, without spaces in it</source>
        <translation>écrivez un seul nombre, sans espaces</translation>
    </message>
    <message>
        <source>a fraction has nothing below its line</source>
        <translation>une fraction n’a rien sous sa barre</translation>
    </message>
    <message>
        <source>write it like 1/8</source>
        <translation>écrivez par exemple 1/8</translation>
    </message>
    <message>
        <source>&quot;{}&quot; does not begin with a number</source>
        <translation>«&#xa0;{}&#xa0;» ne commence pas par un nombre</translation>
    </message>
    <message>
        <source>write a number and a unit, like 1.5 kg</source>
        <translation>écrivez un nombre et une unité, par exemple 12&#xa0;kg</translation>
    </message>
    <message>
        <source>&quot;{}&quot; has more than one decimal point</source>
        <translation>«&#xa0;{}&#xa0;» a plus d’un signe décimal</translation>
    </message>
    <message>
        <source>write the number without marks between thousands</source>
        <translation>écrivez le nombre sans signe entre les milliers</translation>
    </message>
    <message>
        <source>&quot;{}&quot; can be read in two ways</source>
        <translation>«&#xa0;{}&#xa0;» peut se lire de deux façons</translation>
    </message>
    <message>
        <source>write {} or {}</source>
        <translation>écrivez {} ou {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number that can be held</source>
        <translation>«&#xa0;{}&#xa0;» est un nombre impossible à garder</translation>
    </message>
    <message>
        <source>write a smaller number</source>
        <translation>écrivez un nombre plus petit</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no unit known here</source>
        <translation>«&#xa0;{}&#xa0;» n’est pas une unité connue ici</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not the same in the United States and in Britain</source>
        <translation>«&#xa0;{}&#xa0;» n’est pas la même chose aux États-Unis et en Grande-Bretagne</translation>
    </message>
    <message>
        <source>write US {} or imp {}</source>
        <translation>écrivez US {} ou imp {}</translation>
    </message>
    <message>
        <source>a number has no unit</source>
        <translation>un nombre n’a pas d’unité</translation>
    </message>
    <message>
        <source>give each number its unit, like 3 lb 4 oz</source>
        <translation>donnez à chaque nombre son unité, par exemple 3&#xa0;lb 4 oz</translation>
    </message>
    <message>
        <source>the amount is negative</source>
        <translation>la quantité est négative</translation>
    </message>
    <message>
        <source>the parts do not go from the larger unit to the smaller</source>
        <translation>les parties ne vont pas de la plus grande unité à la plus petite</translation>
    </message>
    <message>
        <source>write it like 3 lb 4 oz</source>
        <translation>écrivez par exemple 3&#xa0;lb 4 oz</translation>
    </message>
    <message>
        <source>the amount is too large</source>
        <translation>la quantité est trop grande</translation>
    </message>
    <message>
        <source>there is more than one number</source>
        <translation>il y a plus d’un nombre</translation>
    </message>
    <message>
        <source>write one temperature, like 7 °C</source>
        <translation>écrivez une seule température, par exemple 7&#xa0;°C</translation>
    </message>
    <message>
        <source>the temperature is too large</source>
        <translation>la température est trop grande</translation>
    </message>
    <message>
        <source>the temperature lies under absolute zero</source>
        <translation>la température est sous le zéro absolu</translation>
    </message>
    <message>
        <source>it is above -273.15 °C</source>
        <translation>il faut plus de -273,15&#xa0;°C</translation>
    </message>
    <message>
        <source>{} could not be computed: {}</source>
        <translation>{} n’a pas pu être calculé&#xa0;: {}</translation>
    </message>
    <message>
        <source>this is an error of the program, not of the records; please report it with them</source>
        <translation>c’est une erreur du programme, et non des notes&#x202f;; signalez-la, s’il vous plaît, avec elles</translation>
    </message>
    <message>
        <source>this is larger than {} may be</source>
        <translation>{}&#xa0;: la taille permise est dépassée</translation>
    </message>
    <message>
        <source>there is no such folder of shipped data</source>
        <translation>ce dossier de données fournies n’existe pas</translation>
    </message>
    <message>
        <source>name it with --data or in WINTERLARDER_DATA</source>
        <translation>nommez-le avec --data ou dans WINTERLARDER_DATA</translation>
    </message>
    <message>
        <source>{} is no time zone</source>
        <translation>{} n’est pas un fuseau horaire</translation>
    </message>
    <message>
        <source>a name such as America/Halifax, UTC, or hours ahead of UTC such as +02:00</source>
        <translation>un nom comme America/Halifax ou UTC, ou des heures d’avance sur UTC comme +02:00</translation>
    </message>
    <message>
        <source>--clock: the times of the log say themselves how far from UTC they are</source>
        <translation>--clock&#xa0;: les heures de la table disent elles-mêmes leur écart avec UTC</translation>
    </message>
    <message>
        <source>--time-zone where days of another place are wanted</source>
        <translation>--time-zone si l’on veut les jours d’un autre lieu</translation>
    </message>
    <message>
        <source>the weighing of {}: {}</source>
        <translation>la pesée du {}&#xa0;: {}</translation>
    </message>
    <message>
        <source>the feed of {}: {}</source>
        <translation>le nourrissement du {}&#xa0;: {}</translation>
    </message>
    <message>
        <source>the harvest of {}: {}</source>
        <translation>la récolte du {}&#xa0;: {}</translation>
    </message>
    <message>
        <source>the line is too long to be a case</source>
        <translation>la ligne est trop longue pour être un cas</translation>
    </message>
    <message>
        <source>&quot;-&quot; is given more than once</source>
        <translation>«&#xa0;-&#xa0;» est donné plus d’une fois</translation>
    </message>
    <message>
        <source>standard input can be read once</source>
        <translation>l’entrée standard ne peut être lue qu’une fois</translation>
    </message>
    <message>
        <source>standard input cannot be read</source>
        <translation>l’entrée standard ne peut pas être lue</translation>
    </message>
    <message>
        <source>{} is left out of the plan of its yard: {}</source>
        <translation>{} est laissée hors du plan de son rucher&#xa0;: {}</translation>
    </message>
    <message>
        <source>which colony was not said</source>
        <translation>la colonie n’a pas été indiquée</translation>
    </message>
    <message>
        <source>--colony NAME</source>
        <translation>--colony NAME</translation>
    </message>
    <message>
        <source>there is no advice to act on: it cannot be said</source>
        <translation>il n’y a pas de conseil à suivre&#xa0;: impossible à dire</translation>
    </message>
    <message>
        <source>book advise tells why</source>
        <translation>book advise dit pourquoi</translation>
    </message>
    <message>
        <source>{}: {}: its winter is followed: book follow tells how it goes</source>
        <translation>{}&#xa0;: {}&#xa0;: son hiver est suivi&#xa0;: book follow dit comment il va</translation>
    </message>
    <message>
        <source>{}: no colony is living on {}</source>
        <translation>{}&#xa0;: aucune colonie ne vit le {}</translation>
    </message>
    <message>
        <source>there is no table {}</source>
        <translation>il n’y a pas de table {}</translation>
    </message>
    <message>
        <source>what to export was not said</source>
        <translation>on n’a pas dit quoi exporter</translation>
    </message>
    <message>
        <source>--json for the whole book, or --table NAME for one table as CSV</source>
        <translation>--json pour le carnet entier, ou --table NAME pour une table en CSV</translation>
    </message>
    <message>
        <source>--preview is for tables</source>
        <translation>--preview est pour les tables</translation>
    </message>
    <message>
        <source>a JSON document replaces the whole book</source>
        <translation>un document JSON remplace le carnet entier</translation>
    </message>
    <message>
        <source>--count is below 1</source>
        <translation>--count est inférieur à 1</translation>
    </message>
    <message>
        <source>how many steps to show</source>
        <translation>combien d’étapes montrer</translation>
    </message>
    <message>
        <source>book salvage, or restore a backup</source>
        <translation>book salvage, ou restaurez une copie de sauvegarde</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>il n’y a rien à annuler</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>il n’y a rien à rétablir</translation>
    </message>
    <message>
        <source>book story shows every step</source>
        <translation>book story montre chaque étape</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>ce fichier n’existe pas</translation>
    </message>
    <message>
        <source>name a book</source>
        <translation>nommez un carnet</translation>
    </message>
    <message>
        <source>how the winter ended was not said</source>
        <translation>on n’a pas dit comment l’hiver s’est terminé</translation>
    </message>
    <message>
        <source>--alive or --dead</source>
        <translation>--alive ou --dead</translation>
    </message>
    <message>
        <source>--boxes is {}</source>
        <translation>--boxes est {}</translation>
    </message>
    <message>
        <source>{} boxes with the supers</source>
        <translation>{} éléments avec les hausses</translation>
    </message>
    <message>
        <source>there is a colony {} already, #{}</source>
        <translation>il y a déjà une colonie {}, #{}</translation>
    </message>
    <message>
        <source>another name, such as the place where it stands</source>
        <translation>un autre nom, par exemple l’endroit où elle se trouve</translation>
    </message>
    <message>
        <source>where the yard is was said twice</source>
        <translation>l’endroit du rucher a été indiqué deux fois</translation>
    </message>
    <message>
        <source>one of --station ID, --place NAME, or --latitude D and --longitude D</source>
        <translation>l’un de --station ID, --place NAME, ou --latitude D et --longitude D</translation>
    </message>
    <message>
        <source>there is no station {}</source>
        <translation>il n’y a pas de station {}</translation>
    </message>
    <message>
        <source>where the yard is was not said</source>
        <translation>l’endroit du rucher n’a pas été indiqué</translation>
    </message>
    <message>
        <source>--place NAME, --station ID, or --latitude D and --longitude D</source>
        <translation>--place NAME, --station ID, ou --latitude D et --longitude D</translation>
    </message>
    <message>
        <source>--covered-combs is {}, but {} combs are listed</source>
        <translation>--covered-combs est {}, mais {} cadres sont énumérés</translation>
    </message>
    <message>
        <source>--covered-combs is {}, but the hive has {} places</source>
        <translation>--covered-combs est {}, mais la ruche a {} places</translation>
    </message>
    <message>
        <source>a weighing is said in one way</source>
        <translation>une pesée se dit d’une seule façon</translation>
    </message>
    <message>
        <source>one of --gross KG, --lift KG [KG], --heft light|fair|heavy</source>
        <translation>l’un de --gross KG, --lift KG [KG], --heft light|fair|heavy</translation>
    </message>
    <message>
        <source>a feed is said in one way</source>
        <translation>un nourrissement se dit d’une seule façon</translation>
    </message>
    <message>
        <source>one of --sugar KG, --syrup L, --fondant KG</source>
        <translation>l’un de --sugar KG, --syrup L, --fondant KG</translation>
    </message>
    <message>
        <source>--fondant is given for another kind of feed</source>
        <translation>--fondant est donné pour un autre type de nourrissement</translation>
    </message>
    <message>
        <source>--kind fondant</source>
        <translation>--kind fondant</translation>
    </message>
    <message>
        <source>--syrup is given for another kind of feed</source>
        <translation>--syrup est donné pour un autre type de nourrissement</translation>
    </message>
    <message>
        <source>--kind syrup</source>
        <translation>--kind syrup</translation>
    </message>
    <message>
        <source>--ratio is {}</source>
        <translation>--ratio est {}</translation>
    </message>
    <message>
        <source>A:B, sugar to water by mass, such as 3:2</source>
        <translation>A:B, sucre et eau, en poids, par exemple 3:2</translation>
    </message>
    <message>
        <source>--syrup is given without its ratio</source>
        <translation>--syrup est donné sans ses proportions</translation>
    </message>
    <message>
        <source>--ratio A:B, sugar to water by mass</source>
        <translation>--ratio A:B, sucre et eau, en poids</translation>
    </message>
    <message>
        <source>fondant without its amount</source>
        <translation>du candi sans sa quantité</translation>
    </message>
    <message>
        <source>--fondant KG</source>
        <translation>--fondant KG</translation>
    </message>
    <message>
        <source>--latitude is outside -90 to 90</source>
        <translation>--latitude est hors de -90 à 90</translation>
    </message>
    <message>
        <source>degrees, north positive</source>
        <translation>degrés, nord positif</translation>
    </message>
    <message>
        <source>--longitude is outside -180 to 180</source>
        <translation>--longitude est hors de -180 à 180</translation>
    </message>
    <message>
        <source>degrees, east positive</source>
        <translation>degrés, est positif</translation>
    </message>
    <message>
        <source>no command {}</source>
        <translation>aucune commande {}</translation>
    </message>
    <message>
        <source>a whole number from {} to {}</source>
        <translation>un nombre entier de {} à {}</translation>
    </message>
    <message>
        <source>--hive is {}</source>
        <translation>--hive est {}</translation>
    </message>
    <message>
        <source>an id that &quot;hive-formats&quot; lists</source>
        <translation>un identifiant que «&#xa0;hive-formats&#xa0;» énumère</translation>
    </message>
    <message>
        <source>no page {}</source>
        <translation>aucune page {}</translation>
    </message>
    <message>
        <source>{} is {}, which is no number</source>
        <translation>{} est {}, qui n’est pas un nombre</translation>
    </message>
    <message>
        <source>a number from {} to {}</source>
        <translation>un nombre de {} à {}</translation>
    </message>
    <message>
        <source>--sugar and --stores</source>
        <translation>--sugar et --stores</translation>
    </message>
    <message>
        <source>exactly one of the two</source>
        <translation>exactement l’un des deux</translation>
    </message>
    <message>
        <source>--by is {}</source>
        <translation>--by est {}</translation>
    </message>
    <message>
        <source>--shell is {}</source>
        <translation>--shell est {}</translation>
    </message>
    <message>
        <source>--kind is {}</source>
        <translation>--kind est {}</translation>
    </message>
    <message>
        <source>there is no key {}</source>
        <translation>il n’y a pas de clé {}</translation>
    </message>
    <message>
        <source>--unit is {}</source>
        <translation>--unit est {}</translation>
    </message>
    <message>
        <source>c or f</source>
        <translation>c ou f</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} ou {}</translation>
    </message>
    <message>
        <source>several places may be {}</source>
        <translation>plusieurs lieux peuvent être {}</translation>
    </message>
    <message>
        <source>say which, such as {}; or give latitude and longitude</source>
        <translation>précisez, par exemple {}&#x202f;; ou indiquez latitude et longitude</translation>
    </message>
    <message>
        <source>no other {} is known here, smaller places are not: if yours is another, name a larger town near it, or give latitude and longitude</source>
        <translation>aucun autre {} n’est connu ici, les lieux plus petits ne le sont pas&#xa0;: si le vôtre en est un autre, nommez une ville plus grande proche, ou indiquez latitude et longitude</translation>
    </message>
    <message>
        <source>of that name too: {}</source>
        <translation>du même nom aussi&#xa0;: {}</translation>
    </message>
    <message>
        <source>no climate station lies within {} km of {}</source>
        <translation>il n’y a pas de station climatique à moins de {}&#xa0;km de ce lieu&#xa0;: {}</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>le lieu</translation>
    </message>
    <message>
        <source>the book has {} yards</source>
        <translation>le carnet a {} ruchers</translation>
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
        <translation>--most est {}</translation>
    </message>
    <message>
        <source>comma, semicolon, tab or the sign itself</source>
        <translation>comma, semicolon, tab ou le signe lui-même</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>comma ou point</translation>
    </message>
    <message>
        <source>kg, g or lb</source>
        <translation>kg, g ou lb</translation>
    </message>
    <message>
        <source>dmy, mdy or ymd</source>
        <translation>dmy, mdy ou ymd</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>c’est un dossier</translation>
    </message>
    <message>
        <source>name a file</source>
        <translation>nommez un fichier</translation>
    </message>
    <message>
        <source>cannot be opened</source>
        <translation>ne peut pas être ouvert</translation>
    </message>
    <message>
        <source>no station {} and {}</source>
        <translation>aucune station {} et {}</translation>
    </message>
    <message>
        <source>a climate of your own</source>
        <translation>votre propre climat</translation>
    </message>
    <message>
        <source>a station and --case</source>
        <translation>une station et --case</translation>
    </message>
    <message>
        <source>--winter is {}</source>
        <translation>--winter est {}</translation>
    </message>
    <message>
        <source>a year from {} to {}</source>
        <translation>une année de {} à {}</translation>
    </message>
    <message>
        <source>{}, as --near LAT,LON</source>
        <translation>{}, comme --near LAT,LON</translation>
    </message>
    <message>
        <source>--near is {}</source>
        <translation>--near est {}</translation>
    </message>
    <message>
        <source>LAT,LON in degrees, north and east positive, such as 44.9,-64.2, or the name of a place</source>
        <translation>LAT,LON en degrés, nord et est positifs, par exemple 44.9,-64.2, ou le nom d’un lieu</translation>
    </message>
    <message>
        <source>no source {}</source>
        <translation>aucune source {}</translation>
    </message>
    <message>
        <source>an id that &quot;sources&quot; lists</source>
        <translation>un identifiant que «&#xa0;sources&#xa0;» énumère</translation>
    </message>
    <message>
        <source>see CASE FILES in the manual</source>
        <translation>voir CASE FILES dans le manuel</translation>
    </message>
    <message>
        <source>nothing tells how many bees there are</source>
        <translation>rien ne dit combien il y a d’abeilles</translation>
    </message>
    <message>
        <source>bees with count, covered_combs or seams</source>
        <translation>bees avec count, covered_combs ou seams</translation>
    </message>
    <message>
        <source>there are no bees</source>
        <translation>il n’y a pas d’abeilles</translation>
    </message>
    <message>
        <source>a colony with bees</source>
        <translation>une colonie avec des abeilles</translation>
    </message>
    <message>
        <source>no season can be derived for the place</source>
        <translation>aucune saison ne peut être déduite pour ce lieu</translation>
    </message>
    <message>
        <source>the dates buildup and forage in the part season</source>
        <translation>les dates buildup et forage dans la partie season</translation>
    </message>
    <message>
        <source>as_of lies outside the model&apos;s season</source>
        <translation>as_of est hors de la saison du modèle</translation>
    </message>
    <message>
        <source>a day of the season</source>
        <translation>un jour de la saison</translation>
    </message>
    <message>
        <source>--from {} is before the look on {}</source>
        <translation>--from {} est avant la visite du {}</translation>
    </message>
    <message>
        <source>a day from the look on</source>
        <translation>un jour à partir de la visite</translation>
    </message>
    <message>
        <source>--to {} is after the last day the model runs to</source>
        <translation>--to {} est après le dernier jour du modèle</translation>
    </message>
    <message>
        <source>a day up to {}</source>
        <translation>un jour jusqu’au {}</translation>
    </message>
    <message>
        <source>--to {} is before --from {}</source>
        <translation>--to {} est avant --from {}</translation>
    </message>
    <message>
        <source>a later day</source>
        <translation>un jour plus tardif</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>ne peut pas être écrit</translation>
    </message>
    <message>
        <source>choose another folder</source>
        <translation>choisissez un autre dossier</translation>
    </message>
    <message>
        <source>the demo book is not there</source>
        <translation>le carnet d’exemple n’est pas là</translation>
    </message>
    <message>
        <source>make it with demo/make-book</source>
        <translation>créez-le avec demo/make-book</translation>
    </message>
    <message>
        <source>name a folder that can be</source>
        <translation>nommez un dossier où cela est possible</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>le dossier ne peut pas être créé</translation>
    </message>
    <message>
        <source>name another</source>
        <translation>nommez-en un autre</translation>
    </message>
    <message>
        <source>the book this was meant for is no longer open, and another was not touched</source>
        <translation>le carnet concerné n’est plus ouvert, et un autre n’a pas été touché</translation>
    </message>
    <message>
        <source>open that book again and enter it there</source>
        <translation>rouvrez ce carnet et saisissez-le là</translation>
    </message>
    <message>
        <source>{} is no language this program speaks</source>
        <translation>{} n’est pas une langue de ce programme</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::AnswerPanel</name>
    <message>
        <source>Verdict</source>
        <translation>Conclusion</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Réponse</translation>
    </message>
    <message>
        <source>What to winter on</source>
        <translation>De quoi hiverner</translation>
    </message>
    <message>
        <source>Another look</source>
        <translation>Nouvel examen</translation>
    </message>
    <message>
        <source>&amp;Why?</source>
        <translation>Pourq&amp;uoi&#x202f;?</translation>
    </message>
    <message>
        <source>Why? Reasons and cautions with their sources</source>
        <translation>Pourquoi&#x202f;? Raisons et précautions, avec leurs sources</translation>
    </message>
    <message>
        <source>Make it the &amp;plan</source>
        <translation>En faire le p&amp;lan</translation>
    </message>
    <message>
        <source>✓ It is the plan</source>
        <translation>✓ C’est le plan</translation>
    </message>
    <message>
        <source>Its visits stand on the page Feeding; Undo takes it back</source>
        <translation>Ses passages figurent à la page Nourrissement&#xa0;; Annuler revient en arrière</translation>
    </message>
    <message>
        <source>Keeps this advice in the book with all it was computed from, and plans its visits</source>
        <translation>Garde ce conseil dans le carnet, avec tout ce qui a servi à le calculer, et inscrit ses passages au plan</translation>
    </message>
    <message>
        <source>The plan of the yard is still being worked out; it may change this advice</source>
        <translation>Le plan du rucher est encore en cours de calcul&#x202f;; il peut changer ce conseil</translation>
    </message>
    <message>
        <source>This could not be worked out.</source>
        <translation>Le calcul n’a pas pu être fait.</translation>
    </message>
    <message>
        <source>These records disagree; put one of them right.</source>
        <translation>Ces notes se contredisent&#x202f;; corrigez l’une d’elles.</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Calcul…</translation>
    </message>
    <message>
        <source>The winters are being simulated from what you have written.</source>
        <translation>Les hivers sont simulés à partir de ce que vous avez noté.</translation>
    </message>
    <message>
        <source>Chances</source>
        <translation>Probabilités</translation>
    </message>
    <message>
        <source>How this winter goes is being worked out from what was weighed and seen.</source>
        <translation>Le déroulement de cet hiver est calculé d’après ce qui a été pesé et vu.</translation>
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
        <translation>Cliquez sur un nombre pour voir d’où il vient</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BackupsDialog</name>
    <message>
        <source>Backups</source>
        <translation>Copies de sauvegarde</translation>
    </message>
    <message>
        <source>A backup is made at the first edit of a day and before anything large; the last ten are kept beside the book. Restoring one can be undone.</source>
        <translation>Une copie de sauvegarde est faite à la première modification de la journée et avant toute opération importante&#x202f;; les dix dernières sont gardées à côté du carnet. La restauration peut être annulée.</translation>
    </message>
    <message>
        <source>Backups, newest first</source>
        <translation>Copies de sauvegarde, de la plus récente à la plus ancienne</translation>
    </message>
    <message>
        <source>Make one &amp;now</source>
        <translation>En faire une &amp;maintenant</translation>
    </message>
    <message>
        <source>&amp;Restore it</source>
        <translation>La &amp;restaurer</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>There is none yet; the first edit of a day makes one.</source>
        <translation>Il n’y en a pas encore&#x202f;; la première modification de la journée en fait une.</translation>
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
        <translation>Tout montrer</translation>
    </message>
    <message>
        <source>Something is wrong</source>
        <translation>Quelque chose ne va pas</translation>
    </message>
    <message>
        <source>Notice</source>
        <translation>Message</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Close this notice: %1</source>
        <translation>Fermer ce message&#xa0;: %1</translation>
    </message>
    <message>
        <source>Show less</source>
        <translation>Montrer moins</translation>
    </message>
    <message>
        <source>Show all %1</source>
        <translation>Montrer les %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BeesField</name>
    <message>
        <source>How the bees were counted</source>
        <translation>Comment les abeilles ont été comptées</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>non comptées</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>ruelles d’abeilles</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>abeilles</translation>
    </message>
    <message>
        <source>Number of %{combs}, seams or bees</source>
        <translation>Nombre de cadres, de ruelles ou d’abeilles</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>cadres occupés</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BookActions</name>
    <message>
        <source>somebody</source>
        <translation>quelqu’un</translation>
    </message>
    <message>
        <source>%1 on %2, since %3</source>
        <translation>%1 sur %2, depuis %3</translation>
    </message>
    <message>
        <source>This book was opened for reading only.</source>
        <translation>Ce carnet a été ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>This book lies where nothing can be written, so it can only be read. Copy it to where it can be changed.</source>
        <translation>Ce carnet est à un endroit où rien ne peut être écrit&#xa0;: on ne peut que le lire. Copiez-le là où il peut être modifié.</translation>
    </message>
    <message>
        <source>A newer version of Winterlarder made this book; this one can only read it.</source>
        <translation>Ce carnet a été fait par une version plus récente de Winterlarder&#x202f;; celle-ci ne peut que le lire.</translation>
    </message>
    <message>
        <source>The disk is full, so this book can only be read. Make room and try again.</source>
        <translation>Le disque est plein&#xa0;: ce carnet ne peut qu’être lu. Faites de la place et réessayez.</translation>
    </message>
    <message>
        <source>The file of this book has a second name (a hard link), so it can only be read: a change under one name could not be taken back under the other. Copy it, or remove the other name.</source>
        <translation>Le fichier de ce carnet a un second nom (un lien physique)&#xa0;: on ne peut donc que le lire, car une modification sous un nom ne pourrait pas être annulée sous l’autre. Copiez-le, ou supprimez l’autre nom.</translation>
    </message>
    <message>
        <source>This book is open elsewhere (%1), so here it can only be read.</source>
        <translation>Ce carnet est ouvert ailleurs (%1)&#x202f;; ici, on ne peut que le lire.</translation>
    </message>
    <message>
        <source>This could not be written down; the book is as it was before.
%1</source>
        <translation>Cela n’a pas pu être noté&#x202f;; le carnet est tel qu’il était.
%1</translation>
    </message>
    <message>
        <source>Your book is kept in %1. Everything you enter is in it at once; there is nothing to save.</source>
        <translation>Votre carnet est conservé dans %1. Tout ce que vous saisissez y est aussitôt&#x202f;; il n’y a rien à enregistrer.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Books and case files (*.larder *.json);;All files (*)</source>
        <translation>Carnets et fichiers de cas (*.larder *.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Copy it…</source>
        <translation>Le copier…</translation>
    </message>
    <message>
        <source>It is closed there: take over</source>
        <translation>Il y est fermé&#xa0;: le reprendre ici</translation>
    </message>
    <message>
        <source>This yard is here to be tried out: what you change is kept only until the window closes.</source>
        <translation>Ce rucher sert à essayer&#xa0;: ce que vous modifiez n’est gardé que jusqu’à la fermeture de la fenêtre.</translation>
    </message>
    <message>
        <source>Keep it as a book…</source>
        <translation>Le garder comme carnet…</translation>
    </message>
    <message>
        <source>Salvage what is readable…</source>
        <translation>Récupérer ce qui est lisible…</translation>
    </message>
    <message>
        <source>The book could not be opened.
%1</source>
        <translation>Le carnet n’a pas pu être ouvert.
%1</translation>
    </message>
    <message>
        <source>%1 salvaged%2</source>
        <translation>%1 récupéré%2</translation>
    </message>
    <message>
        <source>Salvage into a new book</source>
        <translation>Récupérer dans un nouveau carnet</translation>
    </message>
    <message>
        <source>Books (*.larder)</source>
        <translation>Carnets (*.larder)</translation>
    </message>
    <message>
        <source>Reading what can still be read of %1…</source>
        <translation>Lecture de ce qui est encore lisible dans %1…</translation>
    </message>
    <message>
        <source>Everything in the damaged book was saved into this one; the damaged file was not touched.</source>
        <translation>Tout le contenu du carnet endommagé a été repris dans celui-ci&#x202f;; le fichier endommagé n’a pas été touché.</translation>
    </message>
    <message>
        <source>What could be read is in this book; the damaged file was not touched. Lost:
%1</source>
        <translation>Ce qui a pu être lu est dans ce carnet&#x202f;; le fichier endommagé n’a pas été touché. Perdu&#xa0;:
%1</translation>
    </message>
    <message>
        <source>Copy the book to</source>
        <translation>Copier le carnet vers</translation>
    </message>
    <message>
        <source>The book was copied to %1.</source>
        <translation>Le carnet a été copié vers %1.</translation>
    </message>
    <message>
        <source>Open the copy</source>
        <translation>Ouvrir la copie</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importer</translation>
    </message>
    <message>
        <source>Tables and whole books (*.csv *.json);;All files (*)</source>
        <translation>Tables et carnets entiers (*.csv *.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Everything written down is in %1. Steps that can be undone, and photographs, are not in it.</source>
        <translation>Tout ce qui a été noté est dans %1. Les étapes qui peuvent être annulées et les photos n’y sont pas.</translation>
    </message>
    <message>
        <source>The book was not written out.
%1</source>
        <translation>Le carnet n’a pas été exporté.
%1</translation>
    </message>
    <message>
        <source>Nothing was written: %1 holds %2 already. Choose an empty folder.</source>
        <translation>Rien n’a été écrit&#xa0;: %1 contient déjà %2. Choisissez un dossier vide.</translation>
    </message>
    <message numerus="yes">
        <source>%n tables were written into %1.</source>
        <translation>
            <numerusform>%n table a été écrite dans %1.</numerusform>
            <numerusform>%n tables ont été écrites dans %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The tables were not all written.
%1</source>
        <translation>Les tables n’ont pas toutes été écrites.
%1</translation>
    </message>
    <message>
        <source>The book as one document</source>
        <translation>Le carnet en un seul document</translation>
    </message>
    <message>
        <source>Documents (*.json)</source>
        <translation>Documents (*.json)</translation>
    </message>
    <message>
        <source>A folder for the tables</source>
        <translation>Un dossier pour les tables</translation>
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
        <translation>Un élément de plus au-&amp;dessus</translation>
    </message>
    <message>
        <source>super</source>
        <translation>hausse</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>own measures</source>
        <translation>mesures propres</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>comme d’habitude</translation>
    </message>
    <message>
        <source>%{combs}: </source>
        <translation>cadres&#xa0;: </translation>
    </message>
    <message>
        <source>Format of box %1 from the floor</source>
        <translation>Format de l’élément %1 à partir du plancher</translation>
    </message>
    <message>
        <source>%{Combs} in box %1</source>
        <translation>Cadres de l’élément %1</translation>
    </message>
    <message>
        <source>Box %1 is a super</source>
        <translation>L’élément %1 est une hausse</translation>
    </message>
    <message>
        <source>Take box %1 off</source>
        <translation>Retirer l’élément %1</translation>
    </message>
    <message>
        <source>Box %1 from the floor, %2</source>
        <translation>Élément %1 à partir du plancher, %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColoniesField</name>
    <message>
        <source>How many colonies</source>
        <translation>Combien de colonies</translation>
    </message>
    <message>
        <source>How &amp;many:</source>
        <translation>Com&amp;bien&#xa0;:</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonie %1</translation>
    </message>
    <message>
        <source>Name of colony %1</source>
        <translation>Nom de la colonie %1</translation>
    </message>
    <message>
        <source>boxes: </source>
        <translation>éléments&#xa0;: </translation>
    </message>
    <message>
        <source>Boxes of colony %1 in winter</source>
        <translation>Éléments de la colonie %1 en hiver</translation>
    </message>
    <message>
        <source>Colony %1 needs a name.</source>
        <translation>Il faut un nom à la colonie %1.</translation>
    </message>
    <message>
        <source>Two colonies are called %1; give each a name of its own.</source>
        <translation>Deux colonies s’appellent %1&#x202f;; donnez à chacune son nom.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColonyView</name>
    <message>
        <source>Pages of the colony</source>
        <translation>Pages de la colonie</translation>
    </message>
    <message>
        <source>&amp;In the hive</source>
        <translation>Dans la &amp;ruche</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>&amp;Nourrissement</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>Sur la &amp;balance</translation>
    </message>
    <message>
        <source>S&amp;tory</source>
        <translation>&amp;Journal</translation>
    </message>
    <message>
        <source>Wh&amp;at if</source>
        <translation>&amp;Et si…</translation>
    </message>
    <message>
        <source>This advice is the plan now: its visits stand on the page Feeding, to be ticked off or skipped.</source>
        <translation>Ce conseil est maintenant le plan&#xa0;: ses passages sont à la page Nourrissement, à cocher ou à sauter.</translation>
    </message>
    <message>
        <source>The visits of your plan are not to be made now: %1.</source>
        <translation>Les passages de votre plan ne sont pas à faire maintenant&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n visits of your plan are still to come (page Feeding).</source>
        <translation>
            <numerusform>%n passage de votre plan est encore à venir (page Nourrissement).</numerusform>
            <numerusform>%n passages de votre plan sont encore à venir (page Nourrissement).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n planned visits are past and neither ticked off nor skipped (page Feeding); until then they count as not made.</source>
        <translation>
            <numerusform>%n passage prévu est dépassé et n’est ni coché ni sauté (page Nourrissement)&#x202f;; d’ici là, il compte comme non fait.</numerusform>
            <numerusform>%n passages prévus sont dépassés et ne sont ni cochés ni sautés (page Nourrissement)&#x202f;; d’ici là, ils comptent comme non faits.</numerusform>
        </translation>
    </message>
    <message>
        <source>%{Comb} b&amp;y %{comb}</source>
        <translation>Cadre par cad&amp;re</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombDrawing</name>
    <message>
        <source>The combs of the hive</source>
        <translation>Les cadres de la ruche</translation>
    </message>
    <message>
        <source>No comb is recorded</source>
        <translation>Aucun cadre n’est noté</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>élément %1</translation>
    </message>
    <message>
        <source>super</source>
        <translation>hausse</translation>
    </message>
    <message>
        <source>Share of the comb: %1</source>
        <translation>Part du rayon&#xa0;: %1</translation>
    </message>
    <message>
        <source>the %{comb} before</source>
        <translation>le cadre précédent</translation>
    </message>
    <message>
        <source>the next %{comb}</source>
        <translation>le cadre suivant</translation>
    </message>
    <message>
        <source>the %{comb} above or below</source>
        <translation>le cadre au-dessus ou au-dessous</translation>
    </message>
    <message>
        <source>the first or the last %{comb}</source>
        <translation>le premier ou le dernier cadre</translation>
    </message>
    <message>
        <source>holds what the %{comb} entered last holds, and goes on to the next</source>
        <translation>reprend le contenu du dernier cadre saisi et passe au suivant</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombFields</name>
    <message>
        <source>Share of the comb: %1</source>
        <translation>Part du rayon&#xa0;: %1</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Share of the comb that is built</source>
        <translation>Part du cadre qui est bâtie</translation>
    </message>
    <message>
        <source>built</source>
        <translation>bâti</translation>
    </message>
    <message>
        <source>Measure on a photo&amp;graph…</source>
        <translation>Mesurer sur une p&amp;hoto…</translation>
    </message>
    <message>
        <source>How the comb was seen</source>
        <translation>Comment le cadre a été vu</translation>
    </message>
    <message>
        <source>One face, a window, or not at all: the less was seen, the wider the spread</source>
        <translation>Une face, une fenêtre, ou pas du tout&#xa0;: moins on a vu, plus la fourchette est large</translation>
    </message>
    <message>
        <source>both faces</source>
        <translation>deux faces</translation>
    </message>
    <message>
        <source>one face</source>
        <translation>une face</translation>
    </message>
    <message>
        <source>through a window</source>
        <translation>par une fenêtre</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>non examiné</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vu</translation>
    </message>
    <message>
        <source>Bar width</source>
        <translation>Largeur de barrette</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barrette</translation>
    </message>
    <message>
        <source>Super, %{comb} %1:</source>
        <translation>Hausse, cadre %1&#xa0;:</translation>
    </message>
    <message>
        <source>Box %1, %{comb} %2:</source>
        <translation>Élément %1, cadre %2&#xa0;:</translation>
    </message>
    <message>
        <source>%{Comb} %1:</source>
        <translation>Cadre %1&#xa0;:</translation>
    </message>
    <message>
        <source>empty %1, measured</source>
        <translation>vide %1, mesuré</translation>
    </message>
    <message>
        <source>empty %1</source>
        <translation>vide %1</translation>
    </message>
    <message>
        <source>holds %1</source>
        <translation>contient %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombPortrait</name>
    <message>
        <source>The comb of the row, drawn</source>
        <translation>Le cadre de la ligne, dessiné</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombQuickForm</name>
    <message>
        <source>Share of those stores that is capped</source>
        <translation>Part operculée de ces provisions</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>of it cappe&amp;d</source>
        <translation>dont operc&amp;ulé</translation>
    </message>
    <message>
        <source>%{Combs} full of stores</source>
        <translation>Cadres pleins de provisions</translation>
    </message>
    <message>
        <source>%{Combs} half full of stores</source>
        <translation>Cadres à moitié pleins de provisions</translation>
    </message>
    <message>
        <source>%{combs} f&amp;ull</source>
        <translation>cadres plein&amp;s</translation>
    </message>
    <message>
        <source>%{combs} half fu&amp;ll</source>
        <translation>cadres à moi&amp;tié pleins</translation>
    </message>
    <message>
        <source>A count is good to about %1, a look at both faces of each %{comb} to %2. Empty comb for feed, and %{combs} to take, are only known from a look.</source>
        <translation>Un comptage est juste à %1 près environ, l’examen des deux faces de chaque cadre à %2. La place libre pour le nourrissement, et les cadres à récolter, ne sont connus que par une visite.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombStrip</name>
    <message>
        <source>The hive from above</source>
        <translation>La ruche vue d’en haut</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs}, the lowest box %1 from side to side</source>
        <translation>
            <numerusform>%n cadre, l’élément du bas large de %1</numerusform>
            <numerusform>%n cadres, l’élément du bas large de %1</numerusform>
        </translation>
    </message>
    <message>
        <source>super</source>
        <translation>hausse</translation>
    </message>
    <message>
        <source>entrance</source>
        <translation>entrée</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>élément %1</translation>
    </message>
    <message>
        <source>%1, bar %2</source>
        <translation>%1, barrette %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombTableModel</name>
    <message>
        <source>super, %{comb} %1</source>
        <translation>hausse, cadre %1</translation>
    </message>
    <message>
        <source>box %1, %{comb} %2</source>
        <translation>élément %1, cadre %2</translation>
    </message>
    <message>
        <source>%{comb} %1</source>
        <translation>cadre %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>open</source>
        <translation>nectar</translation>
    </message>
    <message>
        <source>bread</source>
        <translation>pain</translation>
    </message>
    <message>
        <source>faces</source>
        <translation>faces</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barrette</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>Share of the built comb that is %1, both faces together</source>
        <translation>Part du rayon bâti&#xa0;: %1, deux faces ensemble</translation>
    </message>
    <message>
        <source>Where the %{comb} hangs: counted from the left, seen from behind, or from the entrance of a long hive</source>
        <translation>Où pend le cadre&#xa0;: compté à partir de la gauche, vu de derrière, ou à partir de l’entrée pour une ruche horizontale</translation>
    </message>
    <message>
        <source>What is left of the built comb when all else is taken off</source>
        <translation>Ce qui reste du rayon bâti quand tout le reste est retiré</translation>
    </message>
    <message>
        <source>How much of the frame, or below the bar, is comb</source>
        <translation>La part du cadre, ou de la place sous la barrette, qui est bâtie</translation>
    </message>
    <message>
        <source>Faces that were looked at; the fewer, the wider the spread</source>
        <translation>Faces examinées&#x202f;; moins il y en a, plus la fourchette est large</translation>
    </message>
    <message>
        <source>From the middle of this %{comb} to the middle of the next; thicker combs hold more</source>
        <translation>Du milieu de ce cadre au milieu du suivant&#x202f;; un rayon plus épais contient davantage</translation>
    </message>
    <message>
        <source>This %{comb} took syrup: what is in it is for the bees alone</source>
        <translation>Ce cadre a pris du sirop&#xa0;: son contenu est pour les abeilles seules</translation>
    </message>
    <message>
        <source>Brood was reared in it for years, so its cells hold less</source>
        <translation>Du couvain y a été élevé pendant des années&#xa0;: ses cellules contiennent moins</translation>
    </message>
    <message>
        <source>Honey and nectar in the %{comb}; in brackets eight in ten</source>
        <translation>Miel et nectar du cadre&#x202f;; entre parenthèses, huit fois sur dix</translation>
    </message>
    <message>
        <source>%{comb}</source>
        <translation>cadre</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>built</source>
        <translation>bâti</translation>
    </message>
    <message>
        <source>faces seen</source>
        <translation>faces vues</translation>
    </message>
    <message>
        <source>bar width</source>
        <translation>largeur de barrette</translation>
    </message>
    <message>
        <source>took syrup</source>
        <translation>a pris du sirop</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>vieux nid</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miel</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombTablePage</name>
    <message>
        <source>The look as a table, a row a comb</source>
        <translation>La visite en tableau, une ligne par cadre</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CurvePlot</name>
    <message>
        <source>Temperatures of the year at this place</source>
        <translation>Températures de l’année en ce lieu</translation>
    </message>
    <message>
        <source>coldest day of the year %1 on average</source>
        <translation>jour le plus froid de l’année&#xa0;: %1 en moyenne</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::DayField</name>
    <message>
        <source>Calendar: %1</source>
        <translation>Calendrier&#xa0;: %1</translation>
    </message>
    <message>
        <source>Choose the day from a calendar (Alt and the down arrow)</source>
        <translation>Choisir le jour dans un calendrier (Alt et flèche vers le bas)</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Ce qui ne va pas</translation>
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
        <translation>le jour suivant ou précédent</translation>
    </message>
    <message>
        <source>a month later or earlier</source>
        <translation>un mois plus tard ou plus tôt</translation>
    </message>
    <message>
        <source>opens the calendar</source>
        <translation>ouvre le calendrier</translation>
    </message>
    <message>
        <source>takes what was typed</source>
        <translation>prend ce qui a été tapé</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::DoubtBar</name>
    <message>
        <source>A question about what was typed</source>
        <translation>Une question sur ce qui a été tapé</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>C’est %1</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>C’est juste</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::EntryForm</name>
    <message>
        <source>What is wrong</source>
        <translation>Ce qui ne va pas</translation>
    </message>
    <message>
        <source>W&amp;rite down</source>
        <translation>Not&amp;er</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FeedingPage</name>
    <message>
        <source>%1 of white sugar into %2 of water: %3 of syrup, %4 by mass</source>
        <translation>%1 de sucre blanc dans %2 d’eau&#xa0;: %3 de sirop, %4 en poids</translation>
    </message>
    <message>
        <source>%1 of fondant, touching the cluster</source>
        <translation>%1 de candi, au contact de la grappe</translation>
    </message>
    <message>
        <source>Thin enough to take quickly: %1 days with more than %2 at their warmest are usual before the last day, time to ripen it.</source>
        <translation>Assez fluide pour être vite pris&#xa0;: avant le dernier jour, on compte d’habitude %1 jours à plus de %2 au plus chaud, le temps de le transformer.</translation>
    </message>
    <message>
        <source>Thick, because only %1 days with more than %2 at their warmest are usual before the last day: less water to drive off.</source>
        <translation>Lourd, car avant le dernier jour on ne compte d’habitude que %1 jours à plus de %2 au plus chaud&#xa0;: moins d’eau à évaporer.</translation>
    </message>
    <message>
        <source>Nothing liquid after %1: what is taken later no longer ripens.</source>
        <translation>Rien de liquide après le %1&#xa0;: ce qui est pris plus tard ne mûrit plus.</translation>
    </message>
    <message>
        <source>There is no empty comb for more: take a full %{comb} out, or add drawn comb, before feeding on.</source>
        <translation>Il n’y a pas de place vide dans les cadres pour davantage&#xa0;: retirez un cadre plein ou ajoutez des cadres bâtis avant de continuer à nourrir.</translation>
    </message>
    <message>
        <source>It is too late for syrup; fondant instead.</source>
        <translation>Il est trop tard pour le sirop&#x202f;; du candi à la place.</translation>
    </message>
    <message>
        <source>So many bees cannot take all of it as syrup in time; the rest is given as fondant.</source>
        <translation>Ce nombre d’abeilles ne peut pas tout prendre en sirop à temps&#x202f;; le reste se donne en candi.</translation>
    </message>
    <message>
        <source>Part of it comes later than is best: begin at once.</source>
        <translation>Une partie vient plus tard qu’il ne faudrait&#xa0;: commencez tout de suite.</translation>
    </message>
    <message>
        <source>Thick syrup in small portions of %1 might still be taken, but may stay open.</source>
        <translation>Du sirop lourd en petites doses de %1 peut encore être pris, mais risque de ne pas être operculé.</translation>
    </message>
    <message>
        <source>On the coldest likely night up to %1 of 100 parts of the sugar may set as crystals: warm the syrup, give it in small portions.</source>
        <translation>Par la nuit la plus froide à prévoir, jusqu’à %1 parts sur 100 du sucre peuvent cristalliser&#xa0;: tiédissez le sirop, donnez-le en petites doses.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Recette</translation>
    </message>
    <message>
        <source>Visits, by day</source>
        <translation>Passages, jour par jour</translation>
    </message>
    <message>
        <source>What was fed, and visits planned</source>
        <translation>Ce qui a été donné, et passages prévus</translation>
    </message>
    <message>
        <source>Nothing was fed yet. What you give, and the visits of a plan you made yours, stand here.</source>
        <translation>Rien n’a encore été donné. Ce que vous donnez, et les passages d’un plan que vous avez fait vôtre, s’inscrivent ici.</translation>
    </message>
    <message>
        <source>Fe&amp;d…</source>
        <translation>No&amp;urrir…</translation>
    </message>
    <message>
        <source>Visit &amp;made</source>
        <translation>Passage &amp;fait</translation>
    </message>
    <message>
        <source>S&amp;kip the visit</source>
        <translation>&amp;Sauter le passage</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Calcul…</translation>
    </message>
    <message>
        <source>Whether to feed cannot be said yet. Once it can, the recipe, the visits and the last day stand here.</source>
        <translation>On ne peut pas encore dire s’il faut nourrir. Dès que ce sera possible, la recette, les passages et le dernier jour seront ici.</translation>
    </message>
    <message>
        <source>No feeding is needed. If that changes, the recipe, the visits and the last day stand here.</source>
        <translation>Aucun nourrissement n’est nécessaire. Si cela change, la recette, les passages et le dernier jour seront ici.</translation>
    </message>
    <message>
        <source>Only if it is wintered alone after all; better to unite it.</source>
        <translation>Seulement si on l’hiverne quand même seule&#x202f;; mieux vaut la réunir.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FindDialog</name>
    <message>
        <source>Find</source>
        <translation>Rechercher</translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation>Ce qu’il faut chercher</translation>
    </message>
    <message>
        <source>a colony, a note, an entry, a place, a source…</source>
        <translation>une colonie, une remarque, une note, un lieu, une source…</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
        <source>Type some letters of what you look for.</source>
        <translation>Tapez quelques lettres de ce que vous cherchez.</translation>
    </message>
    <message>
        <source>Nothing holds these letters.</source>
        <translation>Rien ne contient ces lettres.</translation>
    </message>
    <message numerus="yes">
        <source>%n found. Enter shows what is chosen.</source>
        <translation>
            <numerusform>%n trouvé. Entrée montre ce qui est choisi.</numerusform>
            <numerusform>%n trouvés. Entrée montre ce qui est choisi.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>More than %n; type more letters.</source>
        <translation>
            <numerusform>Plus de %n&#x202f;; tapez d’autres lettres.</numerusform>
            <numerusform>Plus de %n&#x202f;; tapez d’autres lettres.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2 – %3</source>
        <translation>%1&#xa0;: %2 – %3</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FollowPanel</name>
    <message>
        <source>How the winter goes</source>
        <translation>Comment va l’hiver</translation>
    </message>
    <message>
        <source>Broken lines: what eighty of a hundred winters left, as forecast in autumn. Band: what eighty of a hundred that fit leave from today. Points: what was weighed, as stores, with eighty in a hundred odds. Dotted: the reserve; upright lines: today and the day spring forage starts.</source>
        <translation>Lignes brisées&#xa0;: ce que laissaient quatre-vingts hivers sur cent, prévision d’automne. Bande&#xa0;: ce que laissent à partir d’aujourd’hui quatre-vingts sur cent de ceux qui concordent. Points&#xa0;: ce qui a été pesé, en provisions, avec la fourchette de quatre-vingts sur cent. Pointillé&#xa0;: la marge de sécurité&#x202f;; lignes verticales&#xa0;: aujourd’hui et le début des miellées de printemps.</translation>
    </message>
    <message>
        <source>Following the winter…</source>
        <translation>Suivi de l’hiver…</translation>
    </message>
    <message>
        <source>What was seen since autumn is being held against the simulated winters.</source>
        <translation>Ce qui a été vu depuis l’automne est comparé aux hivers simulés.</translation>
    </message>
    <message>
        <source>This winter cannot be followed yet.</source>
        <translation>Cet hiver ne peut pas encore être suivi.</translation>
    </message>
    <message>
        <source>This winter is still to be decided.</source>
        <translation>Cet hiver reste à décider.</translation>
    </message>
    <message>
        <source>From the day after the decision on, every weighing and glance is held against its forecast here.</source>
        <translation>À partir du lendemain de la décision, chaque pesée et chaque coup d’œil sont comparés ici à sa prévision.</translation>
    </message>
    <message>
        <source>On the way into winter: about %1 left, where the forecast expected %2.</source>
        <translation>À l’approche de l’hiver&#xa0;: il reste environ %1, la prévision attendait %2.</translation>
    </message>
    <message>
        <source>Until winter begins what to do is said above, from what is known today; then it is said here too.</source>
        <translation>Jusqu’au début de l’hiver, ce qu’il y a à faire est dit plus haut, d’après ce qu’on sait aujourd’hui&#x202f;; ensuite, ce sera dit ici aussi.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FollowPlot</name>
    <message>
        <source>Forecast of autumn, forecast of now, and what was weighed</source>
        <translation>Prévision d’automne, prévision actuelle, et ce qui a été pesé</translation>
    </message>
    <message>
        <source>Points: %1</source>
        <translation>Points&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FormatField</name>
    <message>
        <source>comb %1 by %2</source>
        <translation>rayon de %1 sur %2</translation>
    </message>
    <message>
        <source>%1, one room of %2 %{combs}</source>
        <translation>%1, un seul espace de %2 cadres</translation>
    </message>
    <message>
        <source>%1, %2 in a box</source>
        <translation>%1, %2 par élément</translation>
    </message>
    <message>
        <source>Find a hive format by any word</source>
        <translation>Trouver un modèle de ruche par un mot quelconque</translation>
    </message>
    <message>
        <source>find: national, dadant, top bar, deep…</source>
        <translation>chercher&#xa0;: dadant, langstroth, warre, kenya…</translation>
    </message>
    <message>
        <source>Hive format</source>
        <translation>Modèle de ruche</translation>
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
        <translation>Courant dans ce pays&#xa0;: %1</translation>
    </message>
    <message>
        <source>No format has these words. Fewer letters find more; own measures are entered with the colony&apos;s hive.</source>
        <translation>Aucun modèle ne contient ces mots. Moins de lettres en trouvent plus&#x202f;; des mesures propres s’indiquent avec la ruche de la colonie.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GroundsPopup</name>
    <message>
        <source>How this number was got</source>
        <translation>D’où vient ce nombre</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GuideLink</name>
    <message>
        <source>How to judge this: %1</source>
        <translation>Comment l’estimer&#xa0;: %1</translation>
    </message>
    <message>
        <source>How to judge this</source>
        <translation>Comment l’estimer</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GuideWindow</name>
    <message>
        <source>Judging stores</source>
        <translation>Évaluer les provisions</translation>
    </message>
    <message>
        <source>Pages of the guide</source>
        <translation>Pages du guide</translation>
    </message>
    <message>
        <source>The page</source>
        <translation>La page</translation>
    </message>
    <message>
        <source>your own, %1 by %2</source>
        <comment>the measures of a comb</comment>
        <translation>le vôtre, %1 sur %2</translation>
    </message>
    <message>
        <source>The tables this guide takes its numbers from are not read yet. Open it again in a moment.</source>
        <translation>Les tables dont ce guide tire ses nombres ne sont pas encore lues. Rouvrez-le dans un instant.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HelpWindow</name>
    <message>
        <source>Show only what holds these letters</source>
        <translation>Ne montrer que ce qui contient ces lettres</translation>
    </message>
    <message>
        <source>look for…</source>
        <translation>chercher…</translation>
    </message>
    <message>
        <source>Nothing here holds these letters.</source>
        <translation>Rien ici ne contient ces lettres.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HistoryDialog</name>
    <message>
        <source>Every step of the book, newest first</source>
        <translation>Toutes les étapes du carnet, de la plus récente à la plus ancienne</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historique</translation>
    </message>
    <message>
        <source>Choose a step to go back to before it. What is taken back stays in this list and can be done again until something else is entered.</source>
        <translation>Choisissez une étape pour revenir à l’état d’avant. Ce qui est annulé reste dans cette liste et peut être rétabli tant que rien d’autre n’est saisi.</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>&amp;Revenir en arrière</translation>
    </message>
    <message>
        <source>Do &amp;again</source>
        <translation>Ré&amp;tablir</translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be taken back.</source>
        <translation>
            <numerusform>%n étape serait annulée.</numerusform>
            <numerusform>%n étapes seraient annulées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be done again.</source>
        <translation>
            <numerusform>%n étape serait rétablie.</numerusform>
            <numerusform>%n étapes seraient rétablies.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is chosen that can be taken back or done again.</source>
        <translation>Rien n’est choisi qui puisse être annulé ou rétabli.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ImportDialog</name>
    <message>
        <source>Import %1</source>
        <translation>Importer %1</translation>
    </message>
    <message>
        <source>What the table holds</source>
        <translation>Ce que contient la table</translation>
    </message>
    <message>
        <source>What would be imported</source>
        <translation>Ce qui serait importé</translation>
    </message>
    <message>
        <source>What is wrong in the file, by line and column</source>
        <translation>Ce qui ne va pas dans le fichier, par ligne et colonne</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importer</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>the table holds</source>
        <translation>la table contient</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>C’est &amp;juste tel quel</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message numerus="yes">
        <source>A whole book of %n entries. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.</source>
        <translation>
            <numerusform>Un carnet entier de %n note. Le carnet ouvert devient celui-ci, ni plus ni moins&#x202f;; cela peut être annulé, et une copie de sauvegarde est faite avant.</numerusform>
            <numerusform>Un carnet entier de %n notes. Le carnet ouvert devient celui-ci, ni plus ni moins&#x202f;; cela peut être annulé, et une copie de sauvegarde est faite avant.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take the &amp;book as it stands: no answer believes these</source>
        <translation>Prendre le &amp;carnet tel quel&#xa0;: aucune réponse ne croit ces notes</translation>
    </message>
    <message>
        <source>%1; %2; %3. Everything or nothing is imported, as one step that can be undone; a backup is made first.</source>
        <translation>%1&#x202f;; %2&#x202f;; %3. Tout est importé ou rien, en une seule étape qui peut être annulée&#x202f;; une copie de sauvegarde est faite avant.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n nouvelle</numerusform>
            <numerusform>%n nouvelles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n changed</source>
        <translation>
            <numerusform>%n modifiée</numerusform>
            <numerusform>%n modifiées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n said already, left out</source>
        <translation>
            <numerusform>%n déjà notée, laissée de côté</numerusform>
            <numerusform>%n déjà notées, laissées de côté</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>Rien n’a été importé.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing can be imported before this is put right in the file: %n faults.</source>
        <translation>
            <numerusform>Rien ne peut être importé avant que ceci soit corrigé dans le fichier&#xa0;: %n faute.</numerusform>
            <numerusform>Rien ne peut être importé avant que ceci soit corrigé dans le fichier&#xa0;: %n fautes.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::JobTableModel</name>
    <message>
        <source>feed syrup, in the evening</source>
        <translation>donner du sirop, le soir</translation>
    </message>
    <message>
        <source>lay on fondant, touching the cluster</source>
        <translation>poser du candi, au contact de la grappe</translation>
    </message>
    <message>
        <source>check: sealed? weigh, feeder off, mouse guard on</source>
        <translation>contrôle&#xa0;: operculé&#x202f;? peser, enlever le nourrisseur, poser la grille anti-rongeurs</translation>
    </message>
    <message>
        <source>take honey off, before feeding or treating</source>
        <translation>récolter le miel, avant de nourrir ou de traiter</translation>
    </message>
    <message>
        <source>unite with a healthy neighbour</source>
        <translation>réunir à une voisine saine</translation>
    </message>
    <message>
        <source>weigh again, both sides, without opening</source>
        <translation>repeser, des deux côtés, sans ouvrir</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>compter les varroas et revoir les provisions</translation>
    </message>
    <message>
        <source>signs of disease: call the bee inspector, move nothing</source>
        <translation>signes de maladie&#xa0;: appeler le technicien sanitaire apicole, ne rien déplacer</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>compter les cadres occupés</translation>
    </message>
    <message>
        <source>hang in %{combs} from a neighbour</source>
        <translation>ajouter des cadres pris à une voisine</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>examiner les provisions, ou peser</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>ajouter un cadre avec des œufs pris à une autre colonie</translation>
    </message>
    <message>
        <source>look for queen cells on the %{comb} with eggs</source>
        <translation>chercher des cellules royales sur le cadre avec des œufs</translation>
    </message>
    <message>
        <source>hang in one full %{comb} from %1 (its %2)</source>
        <translation>ajouter un cadre plein pris à %1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>hang in %n full %{combs} from %1 (its %2)</source>
        <translation>
            <numerusform>ajouter %n cadre plein pris à %1 (%2)</numerusform>
            <numerusform>ajouter %n cadres pleins pris à %1 (%2)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; to give back: %2</source>
        <translation>%1&#x202f;; à rendre&#xa0;: %2</translation>
    </message>
    <message>
        <source>unite it with %1, at the latest on this day, in the evening, newspaper between</source>
        <translation>la réunir à %1, au plus tard ce jour, le soir, papier journal entre les deux</translation>
    </message>
    <message>
        <source>%1 (%2 of sugar)</source>
        <translation>%1 (%2 de sucre)</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>jusqu’à %1</translation>
    </message>
    <message>
        <source>the hive is full</source>
        <translation>la ruche est pleine</translation>
    </message>
    <message>
        <source>honey is to come off</source>
        <translation>du miel est à récolter</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>signes de maladie</translation>
    </message>
    <message>
        <source>no bees are left</source>
        <translation>il ne reste pas d’abeilles</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>conseillé</translation>
    </message>
    <message>
        <source>your plan, not now: %1</source>
        <translation>votre plan, pas maintenant&#xa0;: %1</translation>
    </message>
    <message>
        <source>your plan, past</source>
        <translation>votre plan, dépassé</translation>
    </message>
    <message>
        <source>your plan</source>
        <translation>votre plan</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>n’importe quel jour</translation>
    </message>
    <message>
        <source>The day it is due</source>
        <translation>Le jour prévu</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>The colony it is for</source>
        <translation>La colonie concernée</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <translation>Ce qu’il y a à faire</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>How much syrup, fondant or honey; in brackets the sugar it takes</source>
        <translation>Combien de sirop, de candi ou de miel&#x202f;; entre parenthèses le sucre qu’il faut</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>combien</translation>
    </message>
    <message>
        <source>Your plan, or what today&apos;s answers advise</source>
        <translation>Votre plan, ou ce que conseillent les réponses d’aujourd’hui</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>de qui</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::LookPage</name>
    <message>
        <source>Where the figure for the stores comes from</source>
        <translation>D’où vient le chiffre des provisions</translation>
    </message>
    <message>
        <source>&amp;New look</source>
        <translation>Nou&amp;velle visite</translation>
    </message>
    <message>
        <source>&amp;Queen, temper, note…</source>
        <translation>Reine, co&amp;mportement, remarque…</translation>
    </message>
    <message>
        <source>Hive…</source>
        <translation>Ruche…</translation>
    </message>
    <message>
        <source>Bees:</source>
        <translation>Abeilles&#xa0;:</translation>
    </message>
    <message>
        <source>Weighed:</source>
        <translation>Pesée&#xa0;:</translation>
    </message>
    <message>
        <source>Not looked at lately.</source>
        <translation>Pas examinée récemment.</translation>
    </message>
    <message>
        <source>Look of %1, seen from behind; boxes as they stand.</source>
        <translation>Visite du %1, vue de derrière&#x202f;; éléments comme ils sont posés.</translation>
    </message>
    <message>
        <source>Look of %1, from the entrance end.</source>
        <translation>Visite du %1, vue du côté de l’entrée.</translation>
    </message>
    <message>
        <source>Look of %1, seen from behind.</source>
        <translation>Visite du %1, vue de derrière.</translation>
    </message>
    <message>
        <source>A new look of the day asked about; its %{combs} begin as they were seen within the last sixty days, else empty</source>
        <translation>Une nouvelle visite au jour considéré&#x202f;; ses cadres commencent comme ils ont été vus dans les soixante derniers jours, sinon vides</translation>
    </message>
    <message>
        <source>In the cold leave the hive closed: what can be told from outside (its weight, its heft, bees flying, a glance under the lid) is written down on the page On the scale. Once it is warm enough to open, “New look” hangs the hive&apos;s %{combs} here. Or only count them:</source>
        <translation>Par temps froid, laissez la ruche fermée&#xa0;: ce qui se voit de l’extérieur (poids, soupesage, abeilles en vol, coup d’œil sous le couvre-cadres) se note à la page Sur la balance. Quand il fera assez chaud pour ouvrir, «&#xa0;Nouvelle visite&#xa0;» placera ici les cadres de la ruche. Ou bien comptez-les seulement&#xa0;:</translation>
    </message>
    <message>
        <source>The %{combs} were counted, not looked at one by one; so no %{comb} can be drawn.</source>
        <translation>Les cadres ont été comptés, et non examinés un par un&#x202f;; aucun cadre ne peut donc être dessiné.</translation>
    </message>
    <message>
        <source>No %{comb} was looked at within sixty days before this day. “New look” hangs the hive&apos;s empty %{combs} here; write on each what it holds, and count the %{combs} the bees cover. Or only count them:</source>
        <translation>Aucun cadre n’a été examiné dans les soixante jours avant ce jour. «&#xa0;Nouvelle visite&#xa0;» place ici les cadres vides de la ruche&#x202f;; notez sur chacun ce qu’il contient, et comptez les cadres occupés. Ou bien comptez-les seulement&#xa0;:</translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <translation>%1 %2 (%3)</translation>
    </message>
    <message>
        <source>Stores %1: %2.</source>
        <translation>Provisions %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>&#x202f;; </translation>
    </message>
    <message>
        <source>%1 Bees about %2.</source>
        <translation>%1 Environ %2 abeilles.</translation>
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
        <translation>%1 – %2 dans %3</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Annuler&#xa0;: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Rétablir&#xa0;: %1</translation>
    </message>
    <message>
        <source>Due looks as a calendar</source>
        <translation>Ce qu’il y a à faire, en calendrier</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Calendriers (*.ics)</translation>
    </message>
    <message>
        <source>%1: its answer is not worked out, so of it only what is planned is in the calendar</source>
        <translation>%1&#xa0;: sa réponse n’est pas calculée&#x202f;; le calendrier ne contient donc d’elle que ce qui est prévu</translation>
    </message>
    <message>
        <source>What is due is in %1.</source>
        <translation>Ce qu’il y a à faire est dans %1.</translation>
    </message>
    <message>
        <source>What is due could not be worked out.
%1</source>
        <translation>Ce qu’il y a à faire n’a pas pu être calculé.
%1</translation>
    </message>
    <message>
        <source>The calendar could not be written to %1. Choose another folder.</source>
        <translation>Le calendrier n’a pas pu être écrit dans %1. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>Left out:</source>
        <translation>Laissé de côté&#xa0;:</translation>
    </message>
    <message>
        <source>&amp;Colony</source>
        <translation>C&amp;olonie</translation>
    </message>
    <message>
        <source>&amp;New colony…</source>
        <translation>&amp;Nouvelle colonie…</translation>
    </message>
    <message>
        <source>New &amp;look</source>
        <translation>Nouvelle &amp;visite</translation>
    </message>
    <message>
        <source>&amp;Weighed…</source>
        <translation>&amp;Pesée…</translation>
    </message>
    <message>
        <source>&amp;Fed…</source>
        <translation>No&amp;urrissement…</translation>
    </message>
    <message>
        <source>&amp;Harvest…</source>
        <translation>&amp;Récolte…</translation>
    </message>
    <message>
        <source>&amp;Treatment…</source>
        <translation>&amp;Traitement…</translation>
    </message>
    <message>
        <source>A &amp;glance in winter…</source>
        <translation>Coup d’œil en &amp;hiver…</translation>
    </message>
    <message>
        <source>How the wint&amp;er went…</source>
        <translation>Comment l’hiver s’est p&amp;assé…</translation>
    </message>
    <message>
        <source>N&amp;ote…</source>
        <translation>Remar&amp;que…</translation>
    </message>
    <message>
        <source>Name, &amp;queen, feeder…</source>
        <translation>N&amp;om, reine, nourrisseur…</translation>
    </message>
    <message>
        <source>Hi&amp;ve…</source>
        <translation>Ruch&amp;e…</translation>
    </message>
    <message>
        <source>To another &amp;yard…</source>
        <translation>Vers un autre ru&amp;cher…</translation>
    </message>
    <message>
        <source>What became of &amp;it…</source>
        <translation>Ce qu’elle est &amp;devenue…</translation>
    </message>
    <message>
        <source>&amp;Remove it with all its records</source>
        <translation>&amp;Supprimer avec toutes ses notes</translation>
    </message>
    <message numerus="yes">
        <source>One file at a time, please: only case files can be opened together. Nothing was done with these %n.</source>
        <translation>
            <numerusform>Un fichier à la fois&#xa0;: seuls des fichiers de cas peuvent être ouverts ensemble. Rien n’a été fait de ce %n fichier.</numerusform>
            <numerusform>Un fichier à la fois&#xa0;: seuls des fichiers de cas peuvent être ouverts ensemble. Rien n’a été fait de ces %n fichiers.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is no file that can be taken here. A book (.larder), a case file or a whole book (.json), a table or the log of a scale (.csv), or a photograph can be dropped.</source>
        <translation>%1 n’est pas un fichier qui peut être pris ici. On peut déposer un carnet (.larder), un fichier de cas ou un carnet entier (.json), une table ou les relevés d’une balance (.csv), ou une photo.</translation>
    </message>
    <message>
        <source>%1 belongs to a book: open one that can be written first, then drop it again.</source>
        <translation>%1 appartient à un carnet&#xa0;: ouvrez d’abord un carnet où l’on peut écrire, puis déposez-le de nouveau.</translation>
    </message>
    <message>
        <source>A table of entries…</source>
        <translation>Une table de notes…</translation>
    </message>
    <message>
        <source>The log of its scale…</source>
        <translation>Les relevés de sa balance…</translation>
    </message>
    <message>
        <source>What is %1: a table of entries, or the log of the scale under the colony shown?</source>
        <translation>Qu’est-ce que %1&#xa0;: une table de notes, ou les relevés de la balance sous la colonie affichée&#x202f;?</translation>
    </message>
    <message>
        <source>What is %1? Where it is the log of a scale, choose its colony and drop it again.</source>
        <translation>Qu’est-ce que %1&#x202f;? S’il s’agit des relevés d’une balance, choisissez la colonie et déposez-le de nouveau.</translation>
    </message>
    <message>
        <source>A photograph measures one comb: choose the colony and the comb, then drop %1 on it.</source>
        <translation>Une photo mesure un seul cadre&#xa0;: choisissez la colonie et le cadre, puis déposez-y %1.</translation>
    </message>
    <message>
        <source>Save sheet</source>
        <translation>Enregistrer la fiche</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet was written to %1.</source>
        <translation>La fiche a été écrite dans %1.</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Non enregistré</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1. Choose another folder.</source>
        <translation>La fiche n’a pas pu être écrite dans %1. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>The yard plan on paper</source>
        <translation>Le plan du rucher sur papier</translation>
    </message>
    <message>
        <source>The colony sheet on paper</source>
        <translation>La fiche de la colonie sur papier</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>rucher</translation>
    </message>
    <message>
        <source>note of the yard</source>
        <translation>remarque du rucher</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>note of the colony</source>
        <translation>remarque de la colonie</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>guide</source>
        <translation>guide</translation>
    </message>
    <message>
        <source>climate station</source>
        <translation>station climatique</translation>
    </message>
    <message>
        <source>source</source>
        <translation>source</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lieu</translation>
    </message>
    <message>
        <source>%1 is not among the living colonies of the day asked about. Choose an earlier day to see it.</source>
        <translation>%1 n’est pas parmi les colonies vivantes au jour considéré. Choisissez un jour antérieur pour la voir.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>D’où viennent les nombres</translation>
    </message>
    <message>
        <source>used in: %1</source>
        <translation>utilisé dans&#xa0;: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Ai&amp;de</translation>
    </message>
    <message>
        <source>&amp;Judging stores</source>
        <translation>É&amp;valuer les provisions</translation>
    </message>
    <message>
        <source>Words &amp;used here</source>
        <translation>&amp;Mots employés ici</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Raccourcis clavier</translation>
    </message>
    <message>
        <source>&amp;Sources</source>
        <translation>&amp;Sources</translation>
    </message>
    <message>
        <source>&amp;Why this answer?</source>
        <translation>&amp;Pourquoi cette réponse&#x202f;?</translation>
    </message>
    <message>
        <source>&amp;About Winterlarder</source>
        <translation>À pr&amp;opos de Winterlarder</translation>
    </message>
    <message>
        <source>About Winterlarder</source>
        <translation>À propos de Winterlarder</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Winterlarder %1&lt;/h3&gt;&lt;p&gt;Will what is in the hive last until the first reliable forage?&lt;/p&gt;&lt;p&gt;Where disease or medicines are concerned, the bee inspector, the vet and local law come first.&lt;/p&gt;&lt;p&gt;Places are from the GeoNames geographical database, CC BY 4.0.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Winterlarder %1&lt;/h3&gt;&lt;p&gt;Ce que contient la ruche suffira-t-il jusqu’aux premières miellées sûres&#x202f;?&lt;/p&gt;&lt;p&gt;Pour la maladie ou les médicaments, le technicien sanitaire apicole, le vétérinaire et la loi du pays passent avant tout.&lt;/p&gt;&lt;p&gt;Les lieux viennent de la base de données géographique GeoNames, CC BY 4.0.&lt;/p&gt;&lt;p&gt;Logiciel libre sous licence publique générale GNU, version 3 ou ultérieure.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Words used here</source>
        <translation>Mots employés ici</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Raccourcis clavier</translation>
    </message>
    <message>
        <source>Menu “%1”</source>
        <translation>Menu «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>On the %{combs} of the hive</source>
        <translation>Sur les cadres de la ruche</translation>
    </message>
    <message>
        <source>On the winter picture</source>
        <translation>Sur l’image de l’hiver</translation>
    </message>
    <message>
        <source>In a field for a day</source>
        <translation>Dans le champ d’un jour</translation>
    </message>
    <message>
        <source>In a list of what was written down</source>
        <translation>Dans une liste de ce qui a été noté</translation>
    </message>
    <message>
        <source>On a photograph</source>
        <translation>Sur une photo</translation>
    </message>
    <message>
        <source>Winterlarder</source>
        <translation>Winterlarder</translation>
    </message>
    <message>
        <source>Which yard</source>
        <translation>Quel rucher</translation>
    </message>
    <message>
        <source>Day asked about</source>
        <translation>Jour considéré</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d MMMM yyyy</translation>
    </message>
    <message>
        <source>The day asked about: what was written down later does not count yet</source>
        <translation>Le jour considéré&#xa0;: ce qui a été noté plus tard ne compte pas encore</translation>
    </message>
    <message>
        <source>as of</source>
        <translation>au</translation>
    </message>
    <message>
        <source>The yard and its colonies</source>
        <translation>Le rucher et ses colonies</translation>
    </message>
    <message>
        <source>bar: stores today, fading where unsure
tick: needed until spring forage starts</source>
        <translation>barre&#xa0;: provisions aujourd’hui, estompée là où c’est incertain
trait&#xa0;: besoin jusqu’au début des miellées de printemps</translation>
    </message>
    <message>
        <source>%1, %2 – Winterlarder</source>
        <translation>%1, %2 – Winterlarder</translation>
    </message>
    <message>
        <source>Not everything could be opened.
%1</source>
        <translation>Tout n’a pas pu être ouvert.
%1</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Carnet</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Ouvrir un carnet &amp;récent</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Nouveau carnet…</translation>
    </message>
    <message>
        <source>New &amp;yard in this book…</source>
        <translation>Nouveau ruc&amp;her dans ce carnet…</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importer…</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Copies de &amp;sauvegarde…</translation>
    </message>
    <message>
        <source>&amp;Copy the book to…</source>
        <translation>&amp;Copier le carnet vers…</translation>
    </message>
    <message>
        <source>C&amp;lose the book</source>
        <translation>&amp;Fermer le carnet</translation>
    </message>
    <message>
        <source>&amp;Print yard plan…</source>
        <translation>Imprimer le &amp;plan du rucher…</translation>
    </message>
    <message>
        <source>Previe&amp;w of the yard plan…</source>
        <translation>&amp;Aperçu du plan du rucher…</translation>
    </message>
    <message>
        <source>Print colony &amp;sheet…</source>
        <translation>I&amp;mprimer la fiche de la colonie…</translation>
    </message>
    <message>
        <source>Preview of the colony s&amp;heet…</source>
        <translation>Aperçu de &amp;la fiche de la colonie…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Exporter</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>Save the book as one &amp;JSON document…</source>
        <translation>Enregistrer le carnet en un seul document &amp;JSON…</translation>
    </message>
    <message>
        <source>Save every table as CS&amp;V…</source>
        <translation>Enregistrer chaque table en CS&amp;V…</translation>
    </message>
    <message>
        <source>Save yard plan as P&amp;DF…</source>
        <translation>Enregistrer le plan du rucher en P&amp;DF…</translation>
    </message>
    <message>
        <source>Save colony sheet as PD&amp;F…</source>
        <translation>Enregistrer la fiche de la colonie en PD&amp;F…</translation>
    </message>
    <message>
        <source>Save winter pict&amp;ure…</source>
        <translation>Enregistrer l’ima&amp;ge de l’hiver…</translation>
    </message>
    <message>
        <source>Save what is due as a c&amp;alendar…</source>
        <translation>Enregistrer ce qu’il y a à faire en c&amp;alendrier…</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>Éd&amp;ition</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation>&amp;Historique…</translation>
    </message>
    <message>
        <source>&amp;Copy the picture&apos;s numbers</source>
        <translation>&amp;Copier les chiffres de l’image</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>Rech&amp;ercher…</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>&amp;Paramètres…</translation>
    </message>
    <message>
        <source>Colours as the &amp;system&apos;s</source>
        <translation>Couleurs du &amp;système</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Clair</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>So&amp;mbre</translation>
    </message>
    <message>
        <source>Units of the &amp;place</source>
        <translation>Unités du &amp;lieu</translation>
    </message>
    <message>
        <source>&amp;Kilograms and litres</source>
        <translation>&amp;Kilogrammes et litres</translation>
    </message>
    <message>
        <source>Pounds and US &amp;gallons</source>
        <translation>Livres et &amp;gallons américains</translation>
    </message>
    <message>
        <source>Pounds and i&amp;mperial gallons</source>
        <translation>Livres et gallons im&amp;périaux</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>Most &amp;urgent first</source>
        <translation>Les plus &amp;urgentes d’abord</translation>
    </message>
    <message>
        <source>By &amp;name</source>
        <translation>Par ordre alphabéti&amp;que</translation>
    </message>
    <message>
        <source>&amp;Winter picture</source>
        <translation>Image de l’&amp;hiver</translation>
    </message>
    <message>
        <source>F&amp;ewer days in the picture</source>
        <translation>A&amp;fficher moins de jours dans l’image</translation>
    </message>
    <message>
        <source>M&amp;ore days in the picture</source>
        <translation>Afficher plus de &amp;jours dans l’image</translation>
    </message>
    <message>
        <source>The whole winte&amp;r</source>
        <translation>Tout l’hi&amp;ver</translation>
    </message>
    <message>
        <source>&amp;In the hive</source>
        <translation>&amp;Dans la ruche</translation>
    </message>
    <message>
        <source>%{Comb} &amp;by %{comb}</source>
        <translation>C&amp;adre par cadre</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>Nourr&amp;issement</translation>
    </message>
    <message>
        <source>On the sc&amp;ale</source>
        <translation>Sur la &amp;balance</translation>
    </message>
    <message>
        <source>S&amp;tory</source>
        <translation>J&amp;ournal</translation>
    </message>
    <message>
        <source>W&amp;hat if</source>
        <translation>E&amp;t si…</translation>
    </message>
    <message>
        <source>The &amp;yard</source>
        <translation>Le &amp;rucher</translation>
    </message>
    <message>
        <source>Ne&amp;xt colony</source>
        <translation>Colonie suivant&amp;e</translation>
    </message>
    <message>
        <source>Pre&amp;vious colony</source>
        <translation>Colo&amp;nie précédente</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::NextEntry</name>
    <message>
        <source>To be answered, this colony needs:</source>
        <translation>Pour une réponse, il manque à cette colonie&#xa0;:</translation>
    </message>
    <message>
        <source>or what the hive weighs, or how heavy it feels</source>
        <translation>ou ce que pèse la ruche, ou comment on la sent en la soupesant</translation>
    </message>
    <message>
        <source>Enter the %{combs}</source>
        <translation>Indiquer les cadres</translation>
    </message>
    <message>
        <source>How many bees: %{combs} they cover, on both sides</source>
        <translation>Combien d’abeilles&#xa0;: cadres occupés, des deux côtés</translation>
    </message>
    <message>
        <source>What the %{combs} hold, %{comb} by %{comb} or counted quickly</source>
        <translation>Ce que contiennent les cadres, un par un ou vite comptés</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::OutlineDrawing</name>
    <message>
        <source>The comb face on; a measure is missing</source>
        <translation>Le rayon vu de face&#x202f;; une mesure manque</translation>
    </message>
    <message>
        <source>The comb face on: %1 wide at the top, %2 deep, %3 wide at the bottom</source>
        <translation>Le rayon vu de face&#xa0;: %1 de large en haut, %2 de haut, %3 de large en bas</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::OwnMeasures</name>
    <message>
        <source>comb width at the top</source>
        <translation>largeur du rayon en haut</translation>
    </message>
    <message>
        <source>comb depth</source>
        <translation>hauteur du rayon</translation>
    </message>
    <message>
        <source>width at the bottom</source>
        <translation>largeur en bas</translation>
    </message>
    <message>
        <source>spacing, or bar width</source>
        <translation>entraxe, ou largeur de barrette</translation>
    </message>
    <message>
        <source>%{combs} the box holds</source>
        <translation>cadres par élément</translation>
    </message>
    <message>
        <source>as at the top</source>
        <translation>comme en haut</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Box %1, %2</source>
        <translation>Élément %1, %2</translation>
    </message>
    <message>
        <source>A comb has %1 on each side; capped from edge to edge it holds about %2 of honey.</source>
        <translation>Un rayon a %1 par face&#x202f;; operculé d’un bord à l’autre, il contient environ %2 de miel.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PastForecastModel</name>
    <message>
        <source>%1: %2 to have for winter, %3 of it taken to be eaten</source>
        <translation>%1&#xa0;: %2 à avoir pour l’hiver, dont %3 supposés consommés</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>The autumn the forecast was made in, and the year after</source>
        <translation>L’automne de la prévision, et l’année suivante</translation>
    </message>
    <message>
        <source>winter</source>
        <translation>hiver</translation>
    </message>
    <message>
        <source>The colony it was made for</source>
        <translation>La colonie concernée</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>The day of the reading it is compared with</source>
        <translation>Le jour du relevé auquel on la compare</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>What the autumn&apos;s forecast said this reading would be; in brackets nine in ten</source>
        <translation>Ce que la prévision d’automne annonçait pour ce relevé&#x202f;; entre parenthèses, neuf fois sur dix</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>prévu</translation>
    </message>
    <message>
        <source>What was weighed or found</source>
        <translation>Ce qui a été pesé ou trouvé</translation>
    </message>
    <message>
        <source>happened</source>
        <translation>arrivé</translation>
    </message>
    <message>
        <source>Whether it lay within the band of nine in ten</source>
        <translation>S’il était dans la bande de neuf sur dix</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dedans</translation>
    </message>
    <message>
        <source>How far the middle of the forecast was from what happened</source>
        <translation>De combien le milieu de la prévision s’est écarté de ce qui est arrivé</translation>
    </message>
    <message>
        <source>off by</source>
        <translation>écart</translation>
    </message>
    <message>
        <source>How far off the region&apos;s handbook figure was</source>
        <translation>De combien le chiffre des manuels de la région s’est écarté</translation>
    </message>
    <message>
        <source>handbook
off by</source>
        <translation>écart des
manuels</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PastPage</name>
    <message>
        <source>Past forecasts and what happened</source>
        <translation>Prévisions passées et ce qui est arrivé</translation>
    </message>
    <message>
        <source>What past winters taught</source>
        <translation>Ce qu’ont appris les hivers passés</translation>
    </message>
    <message>
        <source>Past wi&amp;nters of these bees correct the forecast in this yard</source>
        <translation>Les hivers passés de ces abeilles corri&amp;gent la prévision dans ce rucher</translation>
    </message>
    <message>
        <source>Be&amp;gin anew from today</source>
        <translation>Repartir de &amp;zéro aujourd’hui</translation>
    </message>
    <message>
        <source>Winters decided before the day asked about are no longer learned from; nothing is deleted</source>
        <translation>Les hivers décidés avant le jour considéré ne corrigent plus la prévision&#x202f;; rien n’est supprimé</translation>
    </message>
    <message>
        <source>&amp;Learn from all winters again</source>
        <translation>Tenir compte de nouveau de tous les hi&amp;vers</translation>
    </message>
    <message>
        <source>Past winters could not be looked at; nothing is learned from them for now.</source>
        <translation>Les hivers passés n’ont pas pu être examinés&#x202f;; rien n’en est tiré pour l’instant.</translation>
    </message>
    <message>
        <source>Past winters are being looked at…</source>
        <translation>Examen des hivers passés…</translation>
    </message>
    <message>
        <source>Learned from since %1.</source>
        <translation>Pris en compte depuis le %1.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PhotographView</name>
    <message>
        <source>The photograph</source>
        <translation>La photo</translation>
    </message>
    <message>
        <source>No point is marked</source>
        <translation>Aucun point n’est marqué</translation>
    </message>
    <message>
        <source>%1, at %2, %3</source>
        <translation>%1, à %2, %3</translation>
    </message>
    <message>
        <source>Open a photograph of the comb: one face, as square-on as it can be had.</source>
        <translation>Ouvrez une photo du cadre&#xa0;: une seule face, prise le plus possible de face.</translation>
    </message>
    <message>
        <source>moves the point; with Shift ten times as far</source>
        <translation>déplace le point&#x202f;; avec Maj, dix fois plus loin</translation>
    </message>
    <message>
        <source>the next point</source>
        <translation>le point suivant</translation>
    </message>
    <message>
        <source>a new point in the middle</source>
        <translation>un nouveau point au milieu</translation>
    </message>
    <message>
        <source>takes the point away</source>
        <translation>enlève le point</translation>
    </message>
    <message>
        <source>larger or smaller</source>
        <translation>plus grand ou plus petit</translation>
    </message>
    <message>
        <source>the whole picture</source>
        <translation>l’image entière</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PhotographWindow</name>
    <message>
        <source>Nothing is traced yet.</source>
        <translation>Rien n’est encore tracé.</translation>
    </message>
    <message>
        <source>capped %1, open nectar %2, brood %3, bee bread %4, empty %5</source>
        <translation>operculé %1, nectar non operculé %2, couvain %3, pain d’abeilles %4, vide %5</translation>
    </message>
    <message>
        <source>One face: %1.
Honey %2, known to 17.5 % instead of 20 % by eye; with the other face traced too, to 11.5 %.</source>
        <translation>Une face&#xa0;: %1.
Miel %2, connu à 17,5&#xa0;% près au lieu de 20&#xa0;% à l’œil&#x202f;; avec l’autre face tracée aussi, à 11,5&#xa0;%.</translation>
    </message>
    <message>
        <source>Both faces: %1.
Honey %2, known to 11.5 % instead of 15 % by eye.</source>
        <translation>Deux faces&#xa0;: %1.
Miel %2, connu à 11,5&#xa0;% près au lieu de 15&#xa0;% à l’œil.</translation>
    </message>
    <message>
        <source>By keys: arrows move the marked point (Shift: faster), Space goes to the next, + and − or the wheel zoom, 0 shows all.</source>
        <translation>Au clavier&#xa0;: les flèches déplacent le point marqué (Maj&#xa0;: plus vite), Espace passe au suivant, + et − ou la molette changent la taille, 0 montre tout.</translation>
    </message>
    <message>
        <source>Photograph one face of the comb without bees, all of it in view, as square-on as it can be had; then open the picture here.</source>
        <translation>Photographiez une face du cadre sans abeilles, bien entière et le plus possible de face&#x202f;; puis ouvrez l’image ici.</translation>
    </message>
    <message>
        <source>Drag the four points to the corners of the comb, inside the frame.</source>
        <translation>Faites glisser les quatre points sur les coins du rayon, à l’intérieur du cadre.</translation>
    </message>
    <message>
        <source>Drag the points: where the comb begins and ends at the bar, low on either side, and its lowest point.</source>
        <translation>Faites glisser les points&#xa0;: là où le rayon commence et finit à la barrette, bas de chaque côté, et son point le plus bas.</translation>
    </message>
    <message>
        <source>Click around each zone; the curve closes itself. Drag points, Delete takes one away. Where curves overlap, brood counts first, then bee bread, capped and open nectar.
By keys: Return adds a point to be moved on with the arrows (Shift: faster), Space goes to the next, + and − zoom, 0 shows all.</source>
        <translation>Cliquez autour de chaque zone&#x202f;; la courbe se ferme d’elle-même. Faites glisser les points, Suppr en enlève un. Là où des courbes se recouvrent, le couvain compte d’abord, puis le pain d’abeilles, le miel operculé et le nectar non operculé.
Au clavier&#xa0;: Entrée ajoute un point à déplacer avec les flèches (Maj&#xa0;: plus vite), Espace passe au suivant, + et − changent la taille, 0 montre tout.</translation>
    </message>
    <message>
        <source>point %1 of %2</source>
        <translation>point %1 sur %2</translation>
    </message>
    <message>
        <source>the comb itself</source>
        <translation>le rayon lui-même</translation>
    </message>
    <message>
        <source>Leave the photograph?</source>
        <translation>Quitter la photo&#x202f;?</translation>
    </message>
    <message>
        <source>What was traced is not taken into the comb yet, and would be lost.</source>
        <translation>Ce qui a été tracé n’est pas encore repris dans le cadre et serait perdu.</translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation>&amp;Jeter</translation>
    </message>
    <message>
        <source>&amp;Go on tracing</source>
        <translation>&amp;Continuer le tracé</translation>
    </message>
    <message>
        <source>Measure on a photograph: %1</source>
        <translation>Mesurer sur une photo&#xa0;: %1</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Ce qu’il y a à faire</translation>
    </message>
    <message>
        <source>Face of the comb</source>
        <translation>Face du cadre</translation>
    </message>
    <message>
        <source>One &amp;face</source>
        <translation>Une &amp;face</translation>
    </message>
    <message>
        <source>The ot&amp;her face</source>
        <translation>L’&amp;autre face</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>&amp;1 Mark the comb</source>
        <translation>&amp;1 Marquer le rayon</translation>
    </message>
    <message>
        <source>&amp;2 Trace the zones</source>
        <translation>&amp;2 Tracer les zones</translation>
    </message>
    <message>
        <source>&amp;Open picture…</source>
        <translation>&amp;Ouvrir une image…</translation>
    </message>
    <message>
        <source>What is marked</source>
        <translation>Ce qui est marqué</translation>
    </message>
    <message>
        <source>four corners</source>
        <translation>quatre coins</translation>
    </message>
    <message>
        <source>bar ends, sides and lowest point</source>
        <translation>bouts à la barrette, côtés et point le plus bas</translation>
    </message>
    <message>
        <source>marked are</source>
        <translation>sont marqués</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a zone and its key</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>&amp;Another patch</source>
        <translation>Au&amp;tre tache</translation>
    </message>
    <message>
        <source>A zone in two places is traced as two patches; its key pressed again goes from one to the other</source>
        <translation>Une zone en deux endroits se trace en deux taches&#x202f;; sa touche, pressée de nouveau, passe de l’une à l’autre</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Ce qui a été mesuré</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>A&amp;nnuler</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>&amp;Closer</source>
        <translation>Plus &amp;près</translation>
    </message>
    <message>
        <source>Farth&amp;er</source>
        <translation>Plus &amp;loin</translation>
    </message>
    <message>
        <source>&amp;Whole picture</source>
        <translation>&amp;Image entière</translation>
    </message>
    <message>
        <source>&amp;Take these shares</source>
        <translation>Prendre &amp;ces parts</translation>
    </message>
    <message>
        <source>A photograph of the comb</source>
        <translation>Une photo du cadre</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.tif *.tiff)</source>
        <translation>Images (*.jpg *.jpeg *.png *.webp *.tif *.tiff)</translation>
    </message>
    <message>
        <source>Another picture…</source>
        <translation>Une autre image…</translation>
    </message>
    <message>
        <source>Opening %1…</source>
        <translation>Ouverture de %1…</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PicturePanel</name>
    <message>
        <source>Show:</source>
        <translation>Afficher&#xa0;:</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>Enregistrer l’image</translation>
    </message>
    <message>
        <source>Save the picture or its numbers</source>
        <translation>Enregistrer l’image ou ses chiffres</translation>
    </message>
    <message>
        <source>&amp;Save picture…</source>
        <translation>&amp;Enregistrer l’image…</translation>
    </message>
    <message>
        <source>&amp;Copy numbers</source>
        <translation>&amp;Copier les chiffres</translation>
    </message>
    <message>
        <source>Whole winter</source>
        <translation>Tout l’hiver</translation>
    </message>
    <message>
        <source>Shows all days again (0)</source>
        <translation>Montre de nouveau tous les jours (0)</translation>
    </message>
    <message>
        <source>Show more days (-)</source>
        <translation>Montrer plus de jours (-)</translation>
    </message>
    <message>
        <source>Show fewer days (+)</source>
        <translation>Montrer moins de jours (+)</translation>
    </message>
    <message>
        <source>No winter can be simulated from what is known.</source>
        <translation>Avec ce qui est connu, aucun hiver ne peut être simulé.</translation>
    </message>
    <message>
        <source>Twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %2.</source>
        <translation>Vingt hivers sur %1, chacun en représente cinq sur cent&#x202f;; ceux en tirets descendent sous %2.</translation>
    </message>
    <message>
        <source>%2 to %3: twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %4.</source>
        <translation>Du %2 au %3&#xa0;: vingt hivers sur %1, chacun en représente cinq sur cent&#x202f;; ceux en tirets descendent sous %4.</translation>
    </message>
    <message>
        <source>Simulating the winters…</source>
        <translation>Simulation des hivers…</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Afficher&#xa0;: %1</translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg *.pdf)</source>
        <translation>Images (*.png *.svg *.pdf)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>Non enregistré</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose another folder.</source>
        <translation>L’image n’a pas pu être écrite dans %1. Choisissez un autre dossier.</translation>
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
        <translation>votre climat</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a place, and its weather</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Where the bees stand: a town, or latitude and longitude</source>
        <translation>Où sont les abeilles&#xa0;: une ville, ou latitude et longitude</translation>
    </message>
    <message>
        <source>a town near by, or 45.1, -64.5</source>
        <translation>une ville proche, ou 45.1, -64.5</translation>
    </message>
    <message>
        <source>Places found</source>
        <translation>Lieux trouvés</translation>
    </message>
    <message>
        <source>The place chosen</source>
        <translation>Le lieu choisi</translation>
    </message>
    <message>
        <source>No place is spelled so. Do you mean one of these?</source>
        <translation>Aucun lieu ne s’écrit ainsi. Voulez-vous dire l’un de ceux-ci&#x202f;?</translation>
    </message>
    <message>
        <source>No place of that name is known here. Take the nearest town, or type latitude and longitude, as 43.05, -76.15.</source>
        <translation>Aucun lieu de ce nom n’est connu ici. Prenez la ville la plus proche, ou tapez latitude et longitude, par exemple 43.05, -76.15.</translation>
    </message>
    <message>
        <source>Climate: %1</source>
        <translation>Climat&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PlacePage</name>
    <message>
        <source>Name of the yard</source>
        <translation>Nom du rucher</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>I have my own temperatures of this place</source>
        <translation>J’ai mes propres températures de ce lieu</translation>
    </message>
    <message>
        <source>Autumn flow still to come</source>
        <translation>Miellée d’automne encore à venir</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>What flowers here, and when</source>
        <translation>Ce qui fleurit ici, et quand</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Où il se trouve</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lieu</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altitude</translation>
    </message>
    <message>
        <source>autumn flow</source>
        <translation>miellée d’automne</translation>
    </message>
    <message>
        <source>forage</source>
        <translation>floraisons</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitude</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitude</translation>
    </message>
    <message>
        <source>Mean temperature of %1</source>
        <translation>Température moyenne en %1</translation>
    </message>
    <message>
        <source>Day: %1</source>
        <translation>Jour&#xa0;: %1</translation>
    </message>
    <message>
        <source>Ticked: the day you know, every year; else as the climate says</source>
        <translation>Coché&#xa0;: le jour que vous connaissez, chaque année&#x202f;; sinon, ce que dit le climat</translation>
    </message>
    <message>
        <source>The dates this winter turns on; tick those you know better</source>
        <translation>Les dates dont dépend cet hiver&#x202f;; cochez celles que vous connaissez mieux</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>fin des rentrées de nectar</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>fin conseillée du nourrissement</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>dernier jour pour le sirop</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>sirop qui n’est plus pris</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>arrêt de la ponte</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reprise de la ponte</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>développement printanier</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>début des miellées de printemps</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message numerus="yes">
        <source>%1, give or take %n days</source>
        <translation>
            <numerusform>%1, à %n jour près</numerusform>
            <numerusform>%1, à %n jours près</numerusform>
        </translation>
    </message>
    <message>
        <source>Curve of %1, %2 above the sea.</source>
        <translation>Courbe&#xa0;: %1, à %2 d’altitude.</translation>
    </message>
    <message>
        <source>Your own temperatures.</source>
        <translation>Vos propres températures.</translation>
    </message>
    <message>
        <source>%1 Corrected by %2 for the height.</source>
        <translation>%1 Corrigé de %2 pour l’altitude.</translation>
    </message>
    <message>
        <source>%1 Source: %2</source>
        <translation>%1 Source&#xa0;: %2</translation>
    </message>
    <message>
        <source>Winters of a hundred that may fall below the reserve</source>
        <translation>Hivers sur cent où les provisions peuvent descendre sous la marge de sécurité</translation>
    </message>
    <message>
        <source>Reserve that should be left in spring</source>
        <translation>Marge de sécurité qui devrait rester au printemps</translation>
    </message>
    <message>
        <source>Days between visits</source>
        <translation>Jours entre deux passages</translation>
    </message>
    <message>
        <source>Visits on %1</source>
        <translation>Passages le %1</translation>
    </message>
    <message>
        <source>Price of sugar</source>
        <translation>Prix du sucre</translation>
    </message>
    <message>
        <source>Currency, three letters</source>
        <translation>Monnaie, trois lettres</translation>
    </message>
    <message>
        <source>Sugar in a bag</source>
        <translation>Sucre par sac</translation>
    </message>
    <message>
        <source>past winters of these bees correct the forecast</source>
        <translation>les hivers passés de ces abeilles corrigent la prévision</translation>
    </message>
    <message>
        <source>What you wish</source>
        <translation>Ce que vous souhaitez</translation>
    </message>
    <message>
        <source>winters of 100 that may fall below the reserve</source>
        <translation>hivers sur 100 sous la marge de sécurité, au plus</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>marge de sécurité</translation>
    </message>
    <message>
        <source>days between visits</source>
        <translation>jours entre deux passages</translation>
    </message>
    <message>
        <source>visits only on (none: any day)</source>
        <translation>passages seulement le (aucun&#xa0;: n’importe quel jour)</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>monnaie</translation>
    </message>
    <message>
        <source>a bag holds</source>
        <translation>un sac contient</translation>
    </message>
    <message>
        <source>sugar, a pound costs</source>
        <translation>sucre, prix de la livre</translation>
    </message>
    <message>
        <source>sugar, a kilogram costs</source>
        <translation>sucre, prix du kilogramme</translation>
    </message>
    <message>
        <source>Price of a pound of sugar</source>
        <translation>Prix d’une livre de sucre</translation>
    </message>
    <message>
        <source>Price of a kilogram of sugar</source>
        <translation>Prix d’un kilogramme de sucre</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::QuantityField</name>
    <message>
        <source>for a %1</source>
        <translation>pour 1 %1</translation>
    </message>
    <message>
        <source>Something must be written here.</source>
        <translation>Il faut écrire quelque chose ici.</translation>
    </message>
    <message>
        <source>It must be %1 or more.</source>
        <translation>Il faut %1 ou plus.</translation>
    </message>
    <message>
        <source>It must be between %1 and %2.</source>
        <translation>Il faut entre %1 et %2.</translation>
    </message>
    <message>
        <source>This is not a number.</source>
        <translation>Ce n’est pas un nombre.</translation>
    </message>
    <message>
        <source>It must be a whole number.</source>
        <translation>Il faut un nombre entier.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::RecordList</name>
    <message>
        <source>Change…</source>
        <translation>Modifier…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>opens the entry</source>
        <translation>ouvre la note</translation>
    </message>
    <message>
        <source>takes the entry out of the book; undo brings it back</source>
        <translation>retire la note du carnet&#x202f;; Annuler la ramène</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::RecordListModel</name>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>The day it is of</source>
        <translation>Le jour de la note</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>What kind of entry it is</source>
        <translation>Le type de note</translation>
    </message>
    <message>
        <source>what</source>
        <translation>quoi</translation>
    </message>
    <message>
        <source>What was written down</source>
        <translation>Ce qui a été noté</translation>
    </message>
    <message>
        <source>details</source>
        <translation>détails</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScaleLogDialog</name>
    <message>
        <source>The log of a scale: %1</source>
        <translation>Relevés d’une balance&#xa0;: %1</translation>
    </message>
    <message>
        <source>Unit of the weights</source>
        <translation>Unité des poids</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>comme trouvé</translation>
    </message>
    <message>
        <source>Order of day, month and year</source>
        <translation>Ordre du jour, du mois et de l’année</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>jour, mois, année</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mois, jour, année</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>année, mois, jour</translation>
    </message>
    <message>
        <source>Clock of the place</source>
        <translation>Heure du lieu</translation>
    </message>
    <message>
        <source>times as they are written; or America/Halifax, UTC, +02:00</source>
        <translation>heures comme elles sont écrites&#x202f;; ou America/Halifax, UTC, +02:00</translation>
    </message>
    <message>
        <source>Ratio of the syrup fed meanwhile, sugar to water</source>
        <translation>Proportions du sirop donné entre-temps, sucre et eau</translation>
    </message>
    <message>
        <source>3:2; empty: not known, the weight alone counts</source>
        <translation>3:2&#x202f;; vide&#xa0;: inconnu, seul le poids compte</translation>
    </message>
    <message>
        <source>What was understood, and the steps found</source>
        <translation>Ce qui a été compris, et les sauts de poids trouvés</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>C’est &amp;juste tel quel</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>date order</source>
        <translation>ordre de la date</translation>
    </message>
    <message>
        <source>clock of the place</source>
        <translation>heure du lieu</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>sirop</translation>
    </message>
    <message>
        <source>W&amp;rite down</source>
        <translation>&amp;Noter</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>column %1 (%2)</source>
        <translation>colonne %1 (%2)</translation>
    </message>
    <message>
        <source>column %1, &quot;%2&quot; (%3)</source>
        <translation>colonne %1, «&#xa0;%2&#xa0;» (%3)</translation>
    </message>
    <message>
        <source>Date: %1</source>
        <translation>Date&#xa0;: %1</translation>
    </message>
    <message>
        <source>Time: %1</source>
        <translation>Heure&#xa0;: %1</translation>
    </message>
    <message>
        <source>Date order: %1 (%2)</source>
        <translation>Ordre de la date&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>Weight: %1, in %2 (%3)</source>
        <translation>Poids&#xa0;: %1, en %2 (%3)</translation>
    </message>
    <message>
        <source>Days: %1, %2 to %3</source>
        <translation>Jours&#xa0;: %1, du %2 au %3</translation>
    </message>
    <message>
        <source>Readings: %1</source>
        <translation>Relevés&#xa0;: %1</translation>
    </message>
    <message>
        <source>Jumps of the clock, put right: %1</source>
        <translation>Sauts de l’horloge, corrigés&#xa0;: %1</translation>
    </message>
    <message>
        <source>Days are those of UTC; name the clock of the place above for its own.</source>
        <translation>Les jours sont ceux d’UTC&#x202f;; indiquez plus haut l’heure du lieu pour avoir les siens.</translation>
    </message>
    <message>
        <source>What was understood</source>
        <translation>Ce qui a été compris</translation>
    </message>
    <message>
        <source>Steps found</source>
        <translation>Sauts de poids trouvés</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Aucun.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Mois</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Rows left out: %1</source>
        <translation>Lignes laissées de côté&#xa0;: %1</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>ligne %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>To be written down: weighings %1, feeds %2, harvests %3, changes of equipment %4; on days the book has already: %5.</source>
        <translation>À noter&#xa0;: pesées %1, nourrissements %2, récoltes %3, changements de matériel %4&#x202f;; à des jours déjà notés dans le carnet&#xa0;: %5.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePage</name>
    <message>
        <source>Weighings and glances, newest first</source>
        <translation>Pesées et coups d’œil, du plus récent au plus ancien</translation>
    </message>
    <message>
        <source>The hive was not weighed yet. A hand scale under one side, or a heft, already narrows what is in it.</source>
        <translation>La ruche n’a pas encore été pesée. Un peson sous un côté, ou un soupesage, précise déjà ce qu’elle contient.</translation>
    </message>
    <message>
        <source>Wei&amp;gh…</source>
        <translation>Pe&amp;ser…</translation>
    </message>
    <message>
        <source>A scale&apos;s &amp;log…</source>
        <translation>Rele&amp;vés de la balance…</translation>
    </message>
    <message>
        <source>The log of a scale</source>
        <translation>Relevés d’une balance</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tables (*.csv *.txt *.tsv);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>A gla&amp;nce…</source>
        <translation>Co&amp;up d’œil…</translation>
    </message>
    <message>
        <source>H&amp;ow the winter went…</source>
        <translation>Comment l’&amp;hiver s’est passé…</translation>
    </message>
    <message>
        <source>Points: stores as weighed and seen, with eighty in a hundred odds. Band: what eighty of a hundred simulated winters leave.</source>
        <translation>Points&#xa0;: provisions pesées et vues, avec la fourchette de quatre-vingts sur cent. Bande&#xa0;: ce que laissent quatre-vingts hivers simulés sur cent.</translation>
    </message>
    <message>
        <source>Here what was measured stands against what the model expects, once both are known.</source>
        <translation>Ici, ce qui a été mesuré est comparé à ce que le modèle attend, dès que l’un et l’autre sont connus.</translation>
    </message>
    <message>
        <source>Weights to expect are without what is fed later.</source>
        <translation>Les poids à attendre sont sans ce qui sera donné plus tard.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePlot</name>
    <message>
        <source>Model against measurement</source>
        <translation>Modèle et mesures</translation>
    </message>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation>
            <numerusform>%n mesure</numerusform>
            <numerusform>%n mesures</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Paramètres</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>On this computer, whatever book is open</source>
        <translation>Sur cet ordinateur, quel que soit le carnet ouvert</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>those of the yard&apos;s place</source>
        <translation>celles du lieu du rucher</translation>
    </message>
    <message>
        <source>kilograms and litres</source>
        <translation>kilogrammes et litres</translation>
    </message>
    <message>
        <source>pounds and US gallons</source>
        <translation>livres et gallons américains</translation>
    </message>
    <message>
        <source>pounds and imperial gallons</source>
        <translation>livres et gallons impériaux</translation>
    </message>
    <message>
        <source>&amp;units</source>
        <translation>&amp;unités</translation>
    </message>
    <message>
        <source>In which weights and measures are shown. Whatever you type may have a unit of its own beside it.</source>
        <translation>Dans lesquelles poids et mesures sont affichés. Vous pouvez toujours taper une autre unité à côté d’un nombre.</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Couleurs</translation>
    </message>
    <message>
        <source>as the system&apos;s</source>
        <translation>comme le système</translation>
    </message>
    <message>
        <source>light</source>
        <translation>clair</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>sombre</translation>
    </message>
    <message>
        <source>&amp;colours</source>
        <translation>&amp;couleurs</translation>
    </message>
    <message>
        <source>Of everything on the screen; what is printed is always dark on white.</source>
        <translation>De tout ce qui est à l’écran&#x202f;; ce qui s’imprime est toujours sombre sur blanc.</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Taille des lettres</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>&amp;letters</source>
        <translation>&amp;lettres</translation>
    </message>
    <message>
        <source>How large they are on the screen; paper keeps its own size.</source>
        <translation>Leur taille à l’écran&#x202f;; le papier garde la sienne.</translation>
    </message>
    <message>
        <source>Notices</source>
        <translation>Messages</translation>
    </message>
    <message>
        <source>for half a minute</source>
        <translation>pendant une demi-minute</translation>
    </message>
    <message>
        <source>for two minutes</source>
        <translation>pendant deux minutes</translation>
    </message>
    <message>
        <source>until they are closed</source>
        <translation>jusqu’à ce qu’on les ferme</translation>
    </message>
    <message>
        <source>&amp;notices</source>
        <translation>&amp;messages</translation>
    </message>
    <message>
        <source>How long the foot of the page says what was done. What went wrong always stays until it is closed.</source>
        <translation>Combien de temps le bas de la page dit ce qui a été fait. Ce qui a échoué reste toujours jusqu’à ce qu’on le ferme.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>lan&amp;guage</source>
        <translation>lan&amp;gue</translation>
    </message>
    <message>
        <source>Taken up at once; where another window of the program is open, when that is closed. Where the system&apos;s is not in this list, English is spoken.</source>
        <translation>Prise en compte aussitôt&#x202f;; si une autre fenêtre du programme est ouverte, quand elle sera fermée. Si celle du système n’est pas dans cette liste, c’est l’anglais.</translation>
    </message>
    <message>
        <source>Of the yard “%1”; kept in its book, and undone as any entry is</source>
        <translation>Du rucher «&#xa0;%1&#xa0;»&#x202f;; gardé dans son carnet, et annulé comme n’importe quelle note</translation>
    </message>
    <message>
        <source>past winters correct the &amp;forecast</source>
        <translation>les hivers passés corrigent la &amp;prévision</translation>
    </message>
    <message>
        <source>learning</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>Each winter written down to its end shows how much these bees use and how many die; forecasts for this yard are corrected by it.</source>
        <translation>Chaque hiver noté jusqu’au bout montre combien ces abeilles consomment et combien meurent&#x202f;; les prévisions de ce rucher en sont corrigées.</translation>
    </message>
    <message>
        <source>Of the book that is open</source>
        <translation>Du carnet ouvert</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Copies de &amp;sauvegarde…</translation>
    </message>
    <message>
        <source>backups lie in</source>
        <translation>copies de sauvegarde dans</translation>
    </message>
    <message>
        <source>One is made at the first edit of a day and before anything large; the last ten are kept.</source>
        <translation>Une copie est faite à la première modification de la journée et avant toute opération importante&#x202f;; les dix dernières sont gardées.</translation>
    </message>
    <message>
        <source>Winters of a hundred that may fall below the reserve</source>
        <translation>Hivers sur cent où les provisions peuvent descendre sous la marge de sécurité</translation>
    </message>
    <message>
        <source>&amp;risk, winters of 100</source>
        <translation>&amp;risque, hivers sur 100</translation>
    </message>
    <message>
        <source>How many winters of a hundred may end below the reserve before more is fed. Empty: 10 to 20, fewer where nobody can help in winter.</source>
        <translation>Combien d’hivers sur cent peuvent finir sous la marge de sécurité avant qu’on donne davantage. Vide&#xa0;: de 10 à 20, moins là où personne ne peut aider en hiver.</translation>
    </message>
    <message>
        <source>Reserve that should be left in spring</source>
        <translation>Marge de sécurité qui devrait rester au printemps</translation>
    </message>
    <message>
        <source>rese&amp;rve</source>
        <translation>marge &amp;de sécurité</translation>
    </message>
    <message>
        <source>Stores every hive should still hold when spring forage starts. Empty: what the size of its colony asks for.</source>
        <translation>Les provisions que chaque ruche devrait encore contenir au début des miellées de printemps. Vide&#xa0;: ce que demande la taille de la colonie.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StartPage</name>
    <message>
        <source>What is wrong</source>
        <translation>Ce qui ne va pas</translation>
    </message>
    <message>
        <source>Be&amp;gin the book</source>
        <translation>Co&amp;mmencer le carnet</translation>
    </message>
    <message>
        <source>Will what is in the hive last until spring forage starts?</source>
        <translation>Ce que contient la ruche suffira-t-il jusqu’aux miellées de printemps&#x202f;?</translation>
    </message>
    <message>
        <source>Three questions, then your yard. Everything you write is kept in one file on your computer, and every step can be taken back.</source>
        <translation>Trois questions, puis votre rucher. Tout ce que vous notez est gardé dans un seul fichier sur votre ordinateur, et chaque étape peut être annulée.</translation>
    </message>
    <message>
        <source>&amp;Try the demo</source>
        <translation>&amp;Essayer l’exemple</translation>
    </message>
    <message>
        <source>An invented orchard yard to look round in; nothing of yours is changed</source>
        <translation>Un rucher d’exemple, inventé, dans un verger, à visiter librement&#x202f;; rien de ce qui est à vous ne change</translation>
    </message>
    <message>
        <source>&amp;Open a book or case files…</source>
        <translation>Ou&amp;vrir un carnet ou des fichiers de cas…</translation>
    </message>
    <message>
        <source>Bac&amp;k (Esc)</source>
        <translation>&amp;Retour (Échap)</translation>
    </message>
    <message>
        <source>1. Where are your bees?</source>
        <translation>1. Où sont vos abeilles&#x202f;?</translation>
    </message>
    <message>
        <source>Home yard</source>
        <translation>Rucher de la maison</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Nom du rucher</translation>
    </message>
    <message>
        <source>What you call the place:</source>
        <translation>Comment vous appelez ce lieu&#xa0;:</translation>
    </message>
    <message>
        <source>2. What hive do they live in?</source>
        <translation>2. Dans quelle ruche vivent-elles&#x202f;?</translation>
    </message>
    <message>
        <source>its combs have measures of their o&amp;wn</source>
        <translation>ses rayons ont d’autres mes&amp;ures</translation>
    </message>
    <message>
        <source>3. Which colonies?</source>
        <translation>3. Quelles colonies&#x202f;?</translation>
    </message>
    <message>
        <source>Numbers in</source>
        <translation>Nombres en</translation>
    </message>
    <message>
        <source>kilograms and litres</source>
        <translation>kilogrammes et litres</translation>
    </message>
    <message>
        <source>pounds and US gallons</source>
        <translation>livres et gallons américains</translation>
    </message>
    <message>
        <source>pounds and imperial gallons</source>
        <translation>livres et gallons impériaux</translation>
    </message>
    <message>
        <source>%1 stays open until the new book is begun.</source>
        <translation>%1 reste ouvert jusqu’à ce que le nouveau carnet soit commencé.</translation>
    </message>
    <message>
        <source>Say where the bees are: choose a place from the list, or type latitude and longitude.</source>
        <translation>Dites où sont les abeilles&#xa0;: choisissez un lieu dans la liste, ou tapez latitude et longitude.</translation>
    </message>
    <message>
        <source>The yard needs a name.</source>
        <translation>Il faut un nom au rucher.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StepListModel</name>
    <message>
        <source>taken back</source>
        <translation>annulé</translation>
    </message>
    <message>
        <source>taken back for good</source>
        <translation>annulé pour de bon</translation>
    </message>
    <message>
        <source>When it was written into the book</source>
        <translation>Quand cela a été inscrit dans le carnet</translation>
    </message>
    <message>
        <source>when</source>
        <translation>quand</translation>
    </message>
    <message>
        <source>Who wrote it</source>
        <translation>Qui l’a écrit</translation>
    </message>
    <message>
        <source>by</source>
        <translation>par</translation>
    </message>
    <message>
        <source>The colony or yard it is about</source>
        <translation>La colonie ou le rucher concerné</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>What was changed; the newest first</source>
        <translation>Ce qui a été modifié&#x202f;; le plus récent d’abord</translation>
    </message>
    <message>
        <source>what was changed</source>
        <translation>ce qui a été modifié</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StoryPage</name>
    <message>
        <source>What to read</source>
        <translation>Ce qu’on veut lire</translation>
    </message>
    <message>
        <source>everything written down of this colony</source>
        <translation>tout ce qui a été noté de cette colonie</translation>
    </message>
    <message>
        <source>every step of the whole book</source>
        <translation>chaque étape de tout le carnet</translation>
    </message>
    <message>
        <source>past forecasts against what happened</source>
        <translation>prévisions passées et ce qui est arrivé</translation>
    </message>
    <message>
        <source>Everything written down of this colony, newest first</source>
        <translation>Tout ce qui a été noté de cette colonie, du plus récent au plus ancien</translation>
    </message>
    <message>
        <source>Nothing is written down yet. Looks, weighings, feeds, harvests, treatments and notes will stand here.</source>
        <translation>Rien n’est encore noté. Visites, pesées, nourrissements, récoltes, traitements et remarques seront ici.</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>Remar&amp;que…</translation>
    </message>
    <message>
        <source>Ha&amp;rvest…</source>
        <translation>Récol&amp;te…</translation>
    </message>
    <message>
        <source>Treat&amp;ment…</source>
        <translation>Traite&amp;ment…</translation>
    </message>
    <message>
        <source>H&amp;ow the winter went…</source>
        <translation>Comment l’&amp;hiver s’est passé…</translation>
    </message>
    <message>
        <source>What became of it…</source>
        <translation>Ce qu’elle est devenue…</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherDialog</name>
    <message>
        <source>Daily temperatures: %1</source>
        <translation>Températures journalières&#xa0;: %1</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Colonnes</translation>
    </message>
    <message>
        <source>date=D,mean=T or date=D,min=TMIN,max=TMAX</source>
        <translation>date=D,mean=T ou date=D,min=TMIN,max=TMAX</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
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
        <translation>Ce qui serait importé</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>C’est &amp;juste tel quel</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importer</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>columns (empty: date, and mean or min and max)</source>
        <translation>colonnes (vide&#xa0;: date, et moyenne ou min et max)</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
        </translation>
    </message>
    <message>
        <source>No day with a temperature is in it.</source>
        <translation>Il n’y a aucun jour avec une température.</translation>
    </message>
    <message>
        <source>Days: %1, %2 to %3, the coldest %4. They hold for every colony of the yard; where tables overlap the later one counts.</source>
        <translation>Jours&#xa0;: %1, du %2 au %3, le plus froid %4. Ils valent pour toutes les colonies du rucher&#x202f;; là où des tables se recouvrent, la dernière compte.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherPart</name>
    <message>
        <source>The weather so far</source>
        <translation>Le temps qu’il a fait</translation>
    </message>
    <message>
        <source>&amp;Daily temperatures…</source>
        <translation>Tempéra&amp;tures journalières…</translation>
    </message>
    <message>
        <source>Your own daily temperatures since autumn stand in for the simulated days that are past</source>
        <translation>Vos propres températures journalières depuis l’automne remplacent les jours simulés déjà passés</translation>
    </message>
    <message>
        <source>Take the last table out</source>
        <translation>Retirer la dernière table</translation>
    </message>
    <message>
        <source>No measured temperatures yet: past days of a winter are simulated like those to come.</source>
        <translation>Pas encore de températures mesurées&#xa0;: les jours passés de l’hiver sont simulés comme ceux à venir.</translation>
    </message>
    <message>
        <source>Days measured: %1, %2 to %3; the last table: %4.</source>
        <translation>Jours mesurés&#xa0;: %1, du %2 au %3&#x202f;; la dernière table&#xa0;: %4.</translation>
    </message>
    <message>
        <source>Daily temperatures</source>
        <translation>Températures journalières</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tables (*.csv *.txt *.tsv);;Tous les fichiers (*)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeighLineTable</name>
    <message>
        <source>Weights to expect, hive and all</source>
        <translation>Poids à attendre, ruche comprise</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>weight to expect, hive and all (80 of 100 between)</source>
        <translation>poids à attendre, ruche comprise (80 sur 100 entre les deux)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeighingField</name>
    <message>
        <source>How the hive was weighed</source>
        <translation>Comment la ruche a été pesée</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>pas pesée</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>sur une balance</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>pesée des deux côtés</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>pesée d’un seul côté</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>soupesée</translation>
    </message>
    <message>
        <source>Weight, all of the hive or the left side</source>
        <translation>Poids, de toute la ruche ou du côté gauche</translation>
    </message>
    <message>
        <source>Weight, right side</source>
        <translation>Poids, côté droit</translation>
    </message>
    <message>
        <source>How heavy it felt</source>
        <translation>Comment on l’a sentie</translation>
    </message>
    <message>
        <source>light or heavy?</source>
        <translation>léger ou lourd&#x202f;?</translation>
    </message>
    <message>
        <source>light</source>
        <translation>légère</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>moyenne</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>lourde</translation>
    </message>
    <message>
        <source>on</source>
        <translation>le</translation>
    </message>
    <message>
        <source>Day of weighing</source>
        <translation>Jour de la pesée</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WhatIfPage</name>
    <message>
        <source>Move a slider: the picture above and the chances here follow. Nothing is written down until you make it the plan.</source>
        <translation>Déplacez un curseur&#xa0;: l’image plus haut et les probabilités d’ici suivent. Rien n’est noté tant que vous n’en faites pas le plan.</translation>
    </message>
    <message>
        <source>Chances of what is tried</source>
        <translation>Probabilités de l’essai</translation>
    </message>
    <message>
        <source>State of the reckoning</source>
        <translation>État du calcul</translation>
    </message>
    <message>
        <source>Ma&amp;ke this the plan</source>
        <translation>En &amp;faire le plan</translation>
    </message>
    <message>
        <source>Back t&amp;o what is</source>
        <translation>Revenir à la &amp;situation réelle</translation>
    </message>
    <message>
        <source>Slider: %1</source>
        <translation>Curseur&#xa0;: %1</translation>
    </message>
    <message>
        <source>take off now</source>
        <translation>récolter maintenant</translation>
    </message>
    <message>
        <source>feed sugar</source>
        <translation>donner du sucre</translation>
    </message>
    <message>
        <source>more or fewer bees</source>
        <translation>plus ou moins d’abeilles</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>forage comes later by</source>
        <translation>retard des miellées</translation>
    </message>
    <message>
        <source> days</source>
        <translation> jours</translation>
    </message>
    <message>
        <source>the hive is wrappe&amp;d</source>
        <translation>la ruche est e&amp;mballée</translation>
    </message>
    <message>
        <source>Simulating these winters…</source>
        <translation>Simulation de ces hivers…</translation>
    </message>
    <message>
        <source>Simulating the winters…</source>
        <translation>Simulation des hivers…</translation>
    </message>
    <message>
        <source>What can be tried is the autumn&apos;s question; this winter is under way. The page “On the scale” says how it goes and what to do.</source>
        <translation>Ce qu’on peut essayer est la question de l’automne&#x202f;; cet hiver est déjà en cours. La page «&#xa0;Sur la balance&#xa0;» dit comment il va et ce qu’il y a à faire.</translation>
    </message>
    <message>
        <source>Nothing can be tried before there is an answer.</source>
        <translation>Rien ne peut être essayé avant d’avoir une réponse.</translation>
    </message>
    <message>
        <source>Tried out over %1 winters; nothing of it is written down.</source>
        <translation>Essayé sur %1 hivers&#x202f;; rien n’en est noté.</translation>
    </message>
    <message>
        <source>As tried, %1 or more are left in %2 of 100 simulated winters, and in %3 the food runs out; left as it is, in %4, and in %5. About %6 would be left when spring forage starts.</source>
        <translation>Avec cet essai, il reste %1 ou plus dans %2 hivers simulés sur 100, et dans %3 la nourriture s’épuise&#x202f;; laissée telle quelle, dans %4, et dans %5. Il resterait environ %6 au début des miellées de printemps.</translation>
    </message>
    <message>
        <source>A first sight over few winters; the full answer follows.</source>
        <translation>Un premier aperçu sur peu d’hivers&#x202f;; la réponse complète suit.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WhyWindow</name>
    <message>
        <source>Reasons and cautions with their sources</source>
        <translation>Raisons et précautions, avec leurs sources</translation>
    </message>
    <message>
        <source>Good &amp;practice</source>
        <translation>&amp;Bonnes pratiques apicoles</translation>
    </message>
    <message>
        <source>What holds for every hive at this time of the year</source>
        <translation>Ce qui vaut pour toutes les ruches à cette époque de l’année</translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation>Pourquoi&#x202f;? %1</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Raisons</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Good practice</source>
        <translation>Bonnes pratiques apicoles</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WinterPlot</name>
    <message>
        <source>Winter picture: stores through the winter</source>
        <translation>Image de l’hiver&#xa0;: les provisions au fil de l’hiver</translation>
    </message>
    <message>
        <source>Drawing of the winters</source>
        <translation>Dessin des hivers</translation>
    </message>
    <message>
        <source>reads out the day before or the next day</source>
        <translation>lit le jour précédent ou suivant</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>une semaine</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>un mois</translation>
    </message>
    <message>
        <source>the first or the last day</source>
        <translation>le premier ou le dernier jour</translation>
    </message>
    <message>
        <source>fewer or more days</source>
        <translation>moins ou plus de jours</translation>
    </message>
    <message>
        <source>the whole winter</source>
        <translation>tout l’hiver</translation>
    </message>
    <message>
        <source>reads out no day; once more: the whole winter</source>
        <translation>ne lit plus aucun jour&#x202f;; encore une fois&#xa0;: tout l’hiver</translation>
    </message>
    <message>
        <source>a living colony eats %1 a day (adults %2, warmth for brood %3, food for brood %4) at %5</source>
        <translation>une colonie vivante consomme %1 par jour (adultes %2, chaleur du couvain %3, nourriture du couvain %4) à %5</translation>
    </message>
    <message>
        <source>%1 %2, under the reserve in %3 of 100 winters</source>
        <translation>%1 %2, sous la marge de sécurité dans %3 hivers sur 100</translation>
    </message>
    <message>
        <source>; </source>
        <translation>&#x202f;; </translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>%1: low, %2</source>
        <translation>%1&#xa0;: bas, %2</translation>
    </message>
    <message>
        <source>%1: middle, %2</source>
        <translation>%1&#xa0;: milieu, %2</translation>
    </message>
    <message>
        <source>%1: high, %2</source>
        <translation>%1&#xa0;: haut, %2</translation>
    </message>
    <message>
        <source>%1: under reserve, of 100</source>
        <translation>%1&#xa0;: sous la marge de sécurité, sur 100</translation>
    </message>
    <message>
        <source>adults, %1</source>
        <translation>adultes, %1</translation>
    </message>
    <message>
        <source>warmth for brood, %1</source>
        <translation>chaleur du couvain, %1</translation>
    </message>
    <message>
        <source>food for brood, %1</source>
        <translation>nourriture du couvain, %1</translation>
    </message>
    <message>
        <source>air, %1</source>
        <translation>air, %1</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>Du %1 au %2</translation>
    </message>
    <message>
        <source>%1: %2 today, %3 as forage starts, then under the reserve in %4 of 100 winters</source>
        <translation>%1&#xa0;: %2 aujourd’hui, %3 au début des miellées, puis sous la marge de sécurité dans %4 hivers sur 100</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>last nectar 30 Sep</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>arrow keys read out each day</source>
        <translation>les flèches lisent chaque jour</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::Yard</name>
    <message>
        <source>The yard</source>
        <translation>Le rucher</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardDelegate</name>
    <message>
        <source>Yard</source>
        <translation>Rucher</translation>
    </message>
    <message>
        <source>working it out</source>
        <translation>calcul en cours</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardListModel</name>
    <message>
        <source>%1, the whole yard: %2</source>
        <translation>%1, tout le rucher&#xa0;: %2</translation>
    </message>
    <message>
        <source>One colony</source>
        <translation>Une colonie</translation>
    </message>
    <message numerus="yes">
        <source>%n colonies</source>
        <translation>
            <numerusform>%n colonie</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, nothing due this week</source>
        <translation>%1, rien à faire cette semaine</translation>
    </message>
    <message>
        <source>%1, %2 due this week</source>
        <translation>%1, %2 à faire cette semaine</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2, %3; %4 in the hive</source>
        <translation>%1&#xa0;: %2, %3&#x202f;; %4 dans la ruche</translation>
    </message>
    <message>
        <source>feed today</source>
        <translation>nourrir aujourd’hui</translation>
    </message>
    <message>
        <source>feed by %1</source>
        <translation>nourrir d’ici au %1</translation>
    </message>
    <message>
        <source>weigh by %1</source>
        <translation>peser d’ici au %1</translation>
    </message>
    <message>
        <source>Colony without a name</source>
        <translation>Colonie sans nom</translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation>non calculé</translation>
    </message>
    <message>
        <source>records disagree</source>
        <translation>notes contradictoires</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardPane</name>
    <message>
        <source>Back to the page</source>
        <translation>Retour à la page</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>Show the whole list, and the day asked about</source>
        <translation>Montrer toute la liste, et le jour considéré</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardView</name>
    <message>
        <source>Pages of the yard</source>
        <translation>Pages du rucher</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <source>P&amp;lace</source>
        <translation>&amp;Lieu</translation>
    </message>
    <message>
        <source>Everything to do, by day</source>
        <translation>Tout ce qu’il y a à faire, jour par jour</translation>
    </message>
    <message>
        <source>“Advised” is what today&apos;s answers ask for; “Make it the plan” on a colony&apos;s page makes it yours. Enter on a row opens its colony.</source>
        <translation>«&#xa0;Conseillé&#xa0;» est ce que demandent les réponses d’aujourd’hui&#x202f;; «&#xa0;En faire le plan&#xa0;», à la page d’une colonie, le fait vôtre. Entrée sur une ligne ouvre sa colonie.</translation>
    </message>
    <message>
        <source>Visit &amp;made</source>
        <translation>Passage &amp;fait</translation>
    </message>
    <message>
        <source>S&amp;kip the visit</source>
        <translation>&amp;Sauter le passage</translation>
    </message>
    <message>
        <source>The yard is empty. Add a colony: its name and the hive it lives in. Then write down one look – which combs hold honey, and how many the bees cover – and the answer stands here: whether it lasts, what to feed, or what may come off.</source>
        <translation>Le rucher est vide. Ajoutez une colonie&#xa0;: son nom et la ruche où elle vit. Puis notez une visite – quels cadres contiennent du miel, et combien les abeilles en occupent – et la réponse sera ici&#xa0;: si cela suffit, combien donner, ou ce qui peut être récolté.</translation>
    </message>
    <message>
        <source>&amp;Add a colony…</source>
        <translation>Ajo&amp;uter une colonie…</translation>
    </message>
    <message>
        <source>White sugar to buy</source>
        <translation>Sucre blanc à acheter</translation>
    </message>
    <message>
        <source>Fondant to buy</source>
        <translation>Candi à acheter</translation>
    </message>
    <message>
        <source>Honey that may come off</source>
        <translation>Miel qui peut être récolté</translation>
    </message>
    <message>
        <source>%{Combs} to move first</source>
        <translation>Cadres à déplacer d’abord</translation>
    </message>
    <message>
        <source>Move %{combs} between hives</source>
        <translation>Déplacer des cadres entre ruches</translation>
    </message>
    <message>
        <source>Off: the plan and all answers as they are if every %{comb} stays in its hive</source>
        <translation>Décoché&#xa0;: le plan et toutes les réponses comme si chaque cadre restait dans sa ruche</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>jusqu’à %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ZoneLegend</name>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>E</source>
        <comment>key that empties a comb</comment>
        <translation>V</translation>
    </message>
    <message>
        <source>Patterns: capped, open nectar, brood, bee bread, empty</source>
        <translation>Motifs&#xa0;: operculé, nectar non operculé, couvain, pain d’abeilles, vide</translation>
    </message>
    <message>
        <source>Type a letter to pick a zone, then digits: 7 is 70 %, 75 is 75 %. Shift with the letter: all empty cells. Space: as the last comb. E: empty. F: faces seen. W: through a window. U: built. Or drag an edge.</source>
        <translation>Tapez une lettre pour choisir une zone, puis des chiffres&#xa0;: 7 veut dire 70&#xa0;%, 75 veut dire 75&#xa0;%. Maj avec la lettre&#xa0;: toutes les cellules vides. Espace&#xa0;: comme le dernier cadre. V&#xa0;: vider. F&#xa0;: faces vues. T&#xa0;: par une fenêtre. B&#xa0;: bâti. Ou faites glisser un bord.</translation>
    </message>
</context>
</TS>
