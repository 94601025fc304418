<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Arguments</name>
    <message>
        <source>%1 needs a folder after it</source>
        <translation>después de %1 hace falta una carpeta</translation>
    </message>
    <message>
        <source>--day needs a day after it, as 2026-09-14</source>
        <translation>después de --day hace falta un día, como 2026-09-14</translation>
    </message>
    <message>
        <source>unknown option %1; --help lists them</source>
        <translation>opción desconocida: %1; --help las enumera</translation>
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
        <translation>Uso: winterlarder [ARCHIVO...]
     winterlarder --pictures CARPETA [ARCHIVO...]

Abre un cuaderno, o colonias de archivos de caso, en la ventana; sin archivos, el último cuaderno.
¿Alcanzará lo que hay en la colmena hasta que comience la floración de primavera?

  --demo              abre el colmenar de ejemplo: seis colonias inventadas en un huerto
  --day DÍA           pregunta por ese día (2026-09-14) y no por hoy
  --pictures CARPETA  escribe en la carpeta la imagen de la ventana, la del invierno y la ficha de
                      cada colonia y el plan del colmenar, dice sus nombres y termina; no necesita
                      pantalla
  --language CÓDIGO   habla este idioma (en) y no el elegido en Ajustes o, si no, el del sistema
  --data CARPETA      toma de otra carpeta los datos que trae el programa
  --version           dice qué versión es
  --help              muestra esta ayuda
</translation>
    </message>
</context>
<context>
    <name>Choices</name>
    <message>
        <source>no more than weeds and ivy bring</source>
        <translation>solo lo que dan las malas hierbas y la hiedra</translation>
    </message>
    <message>
        <source>a trickle</source>
        <translation>escasa</translation>
    </message>
    <message>
        <source>a fair flow</source>
        <translation>media</translation>
    </message>
    <message>
        <source>a strong flow</source>
        <translation>fuerte</translation>
    </message>
    <message>
        <source>timber</source>
        <translation>madera</translation>
    </message>
    <message>
        <source>thick timber</source>
        <translation>madera gruesa</translation>
    </message>
    <message>
        <source>wrapped</source>
        <translation>abrigada</translation>
    </message>
    <message>
        <source>polystyrene</source>
        <translation>poliestireno</translation>
    </message>
    <message>
        <source>straw</source>
        <translation>paja</translation>
    </message>
    <message>
        <source>dark bee</source>
        <translation>negra</translation>
    </message>
    <message>
        <source>carniolan</source>
        <translation>cárnica</translation>
    </message>
    <message>
        <source>buckfast</source>
        <translation>Buckfast</translation>
    </message>
    <message>
        <source>italian</source>
        <translation>italiana</translation>
    </message>
    <message>
        <source>light</source>
        <translation>ligera</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>media</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>round feeder</source>
        <translation>alimentador redondo</translation>
    </message>
    <message>
        <source>tray on top</source>
        <translation>alimentador de techo</translation>
    </message>
    <message>
        <source>bucket in an empty box</source>
        <translation>cubo en un alza vacía</translation>
    </message>
    <message>
        <source>contact feeder</source>
        <translation>alimentador invertido</translation>
    </message>
    <message>
        <source>frame feeder</source>
        <translation>alimentador de cuadro</translation>
    </message>
    <message>
        <source>feeder at the end of the bars</source>
        <translation>alimentador tras el separador</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>jarabe</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>dry sugar</source>
        <translation>azúcar seco</translation>
    </message>
    <message>
        <source>white</source>
        <translation>blanco</translation>
    </message>
    <message>
        <source>yellow</source>
        <translation>amarillo</translation>
    </message>
    <message>
        <source>red</source>
        <translation>rojo</translation>
    </message>
    <message>
        <source>green</source>
        <translation>verde</translation>
    </message>
    <message>
        <source>blue</source>
        <translation>azul</translation>
    </message>
    <message>
        <source>united with another</source>
        <translation>unida a otra</translation>
    </message>
    <message>
        <source>sold or given away</source>
        <translation>vendida o regalada</translation>
    </message>
    <message>
        <source>died</source>
        <translation>murió</translation>
    </message>
    <message>
        <source>gentle</source>
        <translation>mansas</translation>
    </message>
    <message>
        <source>calm</source>
        <translation>tranquilas</translation>
    </message>
    <message>
        <source>nervous</source>
        <translation>nerviosas</translation>
    </message>
    <message>
        <source>fierce</source>
        <translation>agresivas</translation>
    </message>
    <message>
        <source>%{combs} put in</source>
        <translation>cuadros añadidos</translation>
    </message>
    <message>
        <source>%{combs} taken out</source>
        <translation>cuadros quitados</translation>
    </message>
    <message>
        <source>%{combs} given to another colony</source>
        <translation>cuadros pasados a otra colonia</translation>
    </message>
    <message>
        <source>boxes put on</source>
        <translation>cuerpos puestos</translation>
    </message>
    <message>
        <source>boxes taken off</source>
        <translation>cuerpos quitados</translation>
    </message>
    <message>
        <source>boxes given to another colony</source>
        <translation>cuerpos pasados a otra colonia</translation>
    </message>
    <message>
        <source>give syrup</source>
        <translation>dar jarabe</translation>
    </message>
    <message>
        <source>lay on fondant</source>
        <translation>poner candi</translation>
    </message>
    <message>
        <source>check and weigh</source>
        <translation>comprobar y pesar</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>prevista</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecha</translation>
    </message>
    <message>
        <source>skipped</source>
        <translation>omitida</translation>
    </message>
    <message>
        <source>bees flying</source>
        <translation>abejas volando</translation>
    </message>
    <message>
        <source>the cluster</source>
        <translation>el racimo</translation>
    </message>
    <message>
        <source>stores under the cover</source>
        <translation>reservas bajo la tapa</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>muerta</translation>
    </message>
    <message>
        <source>no brood</source>
        <translation>sin cría</translation>
    </message>
    <message>
        <source>solid</source>
        <translation>compacta</translation>
    </message>
    <message>
        <source>patchy</source>
        <translation>salteada</translation>
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
        <translation>A</translation>
    </message>
    <message>
        <source>W</source>
        <comment>key for seen through a window</comment>
        <translation>T</translation>
    </message>
    <message>
        <source>built</source>
        <translation>construido</translation>
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
        <translation>U</translation>
    </message>
    <message>
        <source>picks %1: digits set its share</source>
        <translation>elige %1: las cifras fijan su parte</translation>
    </message>
    <message>
        <source>gives the zone all cells that are empty</source>
        <translation>da a la zona todas las celdas vacías</translation>
    </message>
    <message>
        <source>the share in tenths; a second digit makes it finer: 7 is 70 %, 75 is 75 %</source>
        <translation>la parte en décimas; una segunda cifra la afina: 7 es 70&#xa0;%, 75 es 75&#xa0;%</translation>
    </message>
    <message>
        <source>5 % more or less</source>
        <translation>un 5&#xa0;% más o menos</translation>
    </message>
    <message>
        <source>empties the comb</source>
        <translation>vacía el panal</translation>
    </message>
    <message>
        <source>both faces seen, one, or none</source>
        <translation>vistas ambas caras, una o ninguna</translation>
    </message>
    <message>
        <source>seen through a window, or not</source>
        <translation>visto por una ventana, o no</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>Reasons</source>
        <translation>Motivos</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Good practice</source>
        <translation>Buenas prácticas apícolas</translation>
    </message>
    <message>
        <source>Colony without a name</source>
        <translation>Colonia sin nombre</translation>
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
        <translation>Una pregunta: %1</translation>
    </message>
    <message>
        <source>Its own stores</source>
        <translation>Sus propias reservas</translation>
    </message>
    <message>
        <source>Its own bees</source>
        <translation>Sus propias abejas</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>Reservas</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>Stores of both</source>
        <translation>Reservas de las dos</translation>
    </message>
    <message>
        <source>Bees of both</source>
        <translation>Abejas de las dos</translation>
    </message>
    <message>
        <source>Bees</source>
        <translation>Abejas</translation>
    </message>
    <message>
        <source>Eaten until spring forage</source>
        <translation>Consumo hasta la floración de primavera</translation>
    </message>
    <message>
        <source>Need</source>
        <translation>Necesidad</translation>
    </message>
    <message>
        <source>%1: typically eaten %2, for a harder winter %3, to be left %4</source>
        <translation>%1: consumo habitual %2, por si el invierno es más duro %3, deben quedar %4</translation>
    </message>
    <message>
        <source>Until %1</source>
        <translation>Hasta el %1</translation>
    </message>
    <message>
        <source>eaten %1, found %2</source>
        <translation>consumido %1, encontrado %2</translation>
    </message>
    <message>
        <source>The %{combs} hold</source>
        <translation>Caben en los cuadros</translation>
    </message>
    <message>
        <source>Left when spring forage starts</source>
        <translation>Queda al comenzar la floración de primavera</translation>
    </message>
    <message>
        <source>Empty comb at the look</source>
        <translation>Panal vacío en la revisión</translation>
    </message>
    <message>
        <source>Figures (10th to 90th percentile in brackets)</source>
        <translation>Cifras (entre paréntesis, percentiles 10 y 90)</translation>
    </message>
    <message>
        <source>Missing on %1</source>
        <translation>Faltan el %1</translation>
    </message>
    <message>
        <source>%1 (from %2 to spare to %3 missing)</source>
        <translation>%1 (desde un excedente de %2 hasta que faltan %3)</translation>
    </message>
    <message>
        <source>To spare on %1</source>
        <translation>Excedente el %1</translation>
    </message>
    <message>
        <source>%1 (from %2 missing to %3 to spare)</source>
        <translation>%1 (desde que faltan %2 hasta un excedente de %3)</translation>
    </message>
    <message>
        <source>%1 (%2, exact)</source>
        <translation>%1 (%2, exacta)</translation>
    </message>
    <message>
        <source>%1 ± %2 days (%3)</source>
        <translation>%1 ± %2 días (%3)</translation>
    </message>
    <message>
        <source>Weight to expect, hive and all, without what is fed later</source>
        <translation>Peso total esperado, sin lo que se dé más tarde</translation>
    </message>
    <message>
        <source>Weight to expect, hive and all</source>
        <translation>Peso total esperado</translation>
    </message>
    <message>
        <source>With your super on, and the honey that is in it now.</source>
        <translation>Con el alza puesta y la miel que tiene ahora.</translation>
    </message>
    <message>
        <source>With your super off.</source>
        <translation>Sin el alza.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>&gt;Weight</source>
        <translation>&gt;Peso</translation>
    </message>
    <message>
        <source>Use by month</source>
        <translation>Consumo por meses</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>&gt;Use</source>
        <translation>&gt;Consumo</translation>
    </message>
    <message>
        <source>Options once %1 is united onto it, over the same %2 simulated winters</source>
        <translation>Opciones con %1 unida a ella, en los mismos %2 inviernos simulados</translation>
    </message>
    <message>
        <source>Options, over the same %1 simulated winters</source>
        <translation>Opciones, en los mismos %1 inviernos simulados</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Opción</translation>
    </message>
    <message>
        <source>&gt;Of stores</source>
        <translation>&gt;De reservas</translation>
    </message>
    <message>
        <source>&gt;Stores after</source>
        <translation>&gt;Reservas después</translation>
    </message>
    <message>
        <source>&gt;Runs out</source>
        <translation>&gt;Se agotan</translation>
    </message>
    <message>
        <source>&gt;Falls below %1</source>
        <translation>&gt;Bajan de %1</translation>
    </message>
    <message>
        <source>&gt;Left in spring</source>
        <translation>&gt;Queda en primavera</translation>
    </message>
    <message>
        <source>Unite it soon, at the latest on %1. %2</source>
        <translation>Conviene unirla pronto, a más tardar el %1. %2</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Azúcar</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Syrup</source>
        <translation>Jarabe</translation>
    </message>
    <message>
        <source>%1, %2 by mass</source>
        <translation>%1, %2 en peso</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Candi</translation>
    </message>
    <message>
        <source>Last day for syrup</source>
        <translation>Último día para dar jarabe</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>&gt;Sugar</source>
        <translation>&gt;Azúcar</translation>
    </message>
    <message>
        <source>&gt;Syrup</source>
        <translation>&gt;Jarabe</translation>
    </message>
    <message>
        <source>&gt;Fondant</source>
        <translation>&gt;Candi</translation>
    </message>
    <message>
        <source>From %1 to %2: %3 (%4).</source>
        <translation>De %1 a %2: %3 (%4).</translation>
    </message>
    <message>
        <source>%1 As many of the emptiest outer %{combs} go back, and are taken off that weight.</source>
        <translation>%1 A cambio vuelven otros tantos cuadros de los extremos, los más vacíos; ya están descontados de ese peso.</translation>
    </message>
    <message>
        <source>%1 Back go: %2.</source>
        <translation>%1 A cambio vuelven: %2.</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Cosecha</translation>
    </message>
    <message>
        <source>%1 in all: %2.</source>
        <translation>%1 en total: %2.</translation>
    </message>
    <message>
        <source>%{Combs} to move within the yard</source>
        <translation>Cuadros para pasar dentro del colmenar</translation>
    </message>
    <message numerus="yes">
        <source>%1: not answered, %n faults
</source>
        <comment>a case file</comment>
        <translation>
            <numerusform>%1: sin respuesta, %n fallo
</numerusform>
            <numerusform>%1: sin respuesta, %n fallos
</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: not answered
</source>
        <comment>a colony</comment>
        <translation>%1: sin respuesta
</translation>
    </message>
    <message>
        <source>new: %1 lines, changed: %2, already in the book and left out: %3
</source>
        <translation>nuevas: %1 líneas, cambiadas: %2, ya en el cuaderno y dejadas fuera: %3
</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Tamaño</translation>
    </message>
    <message>
        <source>%1 bytes</source>
        <translation>%1 bytes</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Formato</translation>
    </message>
    <message>
        <source>Begun</source>
        <translation>Empezado</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>sound
</source>
        <translation>en buen estado
</translation>
    </message>
    <message>
        <source>&gt;Bytes</source>
        <translation>&gt;Bytes</translation>
    </message>
    <message>
        <source>lost: %1
</source>
        <translation>perdido: %1
</translation>
    </message>
    <message>
        <source>%1: not followed
</source>
        <comment>a colony</comment>
        <translation>%1: sin seguimiento
</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonia</translation>
    </message>
    <message>
        <source>&gt;Deaths</source>
        <translation>&gt;Muertes</translation>
    </message>
    <message>
        <source>weighings: %1, feeds: %2, harvests: %3, changes of equipment: %4; on days the book has already: %5
</source>
        <translation>pesadas: %1, aportes de alimento: %2, cosechas: %3, cambios de material: %4; en días que el cuaderno ya tiene: %5
</translation>
    </message>
    <message>
        <source>too few years to tell</source>
        <translation>muy pocos años para saberlo</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>%1 in %2 calendar years, %3 missing between them</source>
        <translation>%1 en %2 años naturales, con %3 que faltan entre medias</translation>
    </message>
    <message>
        <source>Daily SD in winter, °C</source>
        <translation>Desviación típica diaria en invierno, °C</translation>
    </message>
    <message>
        <source>Daily SD in summer, °C</source>
        <translation>Desviación típica diaria en verano, °C</translation>
    </message>
    <message>
        <source>Correlation of consecutive days</source>
        <translation>Correlación de días seguidos</translation>
    </message>
    <message>
        <source>SD of a whole season, °C</source>
        <translation>Desviación típica de una temporada entera, °C</translation>
    </message>
    <message>
        <source>&gt;Mean °C</source>
        <translation>&gt;Media °C</translation>
    </message>
    <message>
        <source>With --json this is printed as a site that a case file accepts.</source>
        <translation>Con --json se escribe como un lugar que admite un archivo de caso.</translation>
    </message>
    <message>
        <source>&gt;Forecast in autumn</source>
        <translation>&gt;Previsión de otoño</translation>
    </message>
    <message>
        <source>&gt;Forecast now</source>
        <translation>&gt;Previsión de ahora</translation>
    </message>
    <message>
        <source>Stores today</source>
        <translation>Reservas hoy</translation>
    </message>
    <message>
        <source>Lost since</source>
        <translation>Perdido desde entonces</translation>
    </message>
    <message>
        <source>Fall below %1</source>
        <translation>Bajan de %1</translation>
    </message>
    <message>
        <source>Run out</source>
        <translation>Se agotan</translation>
    </message>
    <message>
        <source>Below %1</source>
        <translation>Por debajo de %1</translation>
    </message>
    <message>
        <source>Nothing left</source>
        <translation>No queda nada</translation>
    </message>
    <message>
        <source>Spring forage starts</source>
        <translation>Comienzo de la floración de primavera</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (del %2 al %3)</translation>
    </message>
    <message>
        <source>most likely by now</source>
        <translation>lo más probable es que ya</translation>
    </message>
    <message>
        <source>perhaps by now</source>
        <translation>quizá ya</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>%1, half by %2</source>
        <translation>%1; en la mitad, el %2</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Alimentar</translation>
    </message>
    <message>
        <source>Becomes stores</source>
        <translation>Se convierte en reservas</translation>
    </message>
    <message>
        <source>Needed by</source>
        <translation>Hace falta a más tardar el</translation>
    </message>
    <message>
        <source>&gt;Amount</source>
        <translation>&gt;Cantidad</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>Seen since</source>
        <translation>Visto desde entonces</translation>
    </message>
    <message>
        <source>&gt;Read</source>
        <translation>&gt;Leído</translation>
    </message>
    <message>
        <source>&gt;Expected</source>
        <translation>&gt;Esperado</translation>
    </message>
    <message>
        <source>What was found points to</source>
        <translation>Lo encontrado apunta a</translation>
    </message>
    <message>
        <source>Look, and write it down with the outcome</source>
        <translation>Mire esto y anótelo con el resultado del invierno</translation>
    </message>
    <message>
        <source>It cannot be followed.</source>
        <translation>No se puede seguir.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a point of the guide and what is said of it</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>Judging stores</source>
        <translation>Estimar las reservas</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>  adult bees</source>
        <translation>  abejas adultas</translation>
    </message>
    <message>
        <source>  brood nest</source>
        <translation>  nido de cría</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimento</translation>
    </message>
    <message>
        <source>%1 g a day</source>
        <translation>%1 g al día</translation>
    </message>
    <message>
        <source>Food for each bee</source>
        <translation>Alimento por abeja</translation>
    </message>
    <message>
        <source>%1 mg a day</source>
        <translation>%1 mg al día</translation>
    </message>
    <message>
        <source>Power for each kg of bees</source>
        <translation>Potencia por kg de abejas</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Proporción</translation>
    </message>
    <message>
        <source>%1 sugar to water, by mass</source>
        <translation>%1 de azúcar por agua, en peso</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Concentración</translation>
    </message>
    <message>
        <source>%1 % sugar by mass, %2 kg/L at 20 °C</source>
        <translation>%1&#xa0;% de azúcar en peso, %2 kg/L a 20&#xa0;°C</translation>
    </message>
    <message>
        <source>Stores gained</source>
        <translation>Reservas obtenidas</translation>
    </message>
    <message>
        <source>%1, ripened</source>
        <translation>%1, ya maduras</translation>
    </message>
    <message>
        <source>; %1 where not said</source>
        <translation>; %1 si no se indica</translation>
    </message>
    <message>
        <source>%1 (%2%3): %4</source>
        <translation>%1 (%2%3): %4</translation>
    </message>
    <message>
        <source>One entry changed
</source>
        <translation>Una anotación cambiada
</translation>
    </message>
    <message numerus="yes">
        <source>%n entries changed
</source>
        <translation>
            <numerusform>%n anotación cambiada
</numerusform>
            <numerusform>%n anotaciones cambiadas
</numerusform>
        </translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>&gt;Latitude</source>
        <translation>&gt;Latitud</translation>
    </message>
    <message>
        <source>&gt;Longitude</source>
        <translation>&gt;Longitud</translation>
    </message>
    <message>
        <source>&gt;Height</source>
        <translation>&gt;Altitud</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>%1, &quot;%2&quot;</source>
        <translation>%1, «%2»</translation>
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
        <translation>, con su diferencia respecto a UTC</translation>
    </message>
    <message>
        <source>, in seconds since 1970</source>
        <translation>, en segundos desde 1970</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Date order</source>
        <translation>Orden de la fecha</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Lecturas</translation>
    </message>
    <message>
        <source>%1, one in %2 minutes</source>
        <translation>%1, una cada %2 minutos</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>newest first, turned round</source>
        <translation>lo más reciente primero; se ha invertido</translation>
    </message>
    <message>
        <source>rows were not in the order of time and are sorted</source>
        <translation>las filas no estaban en orden de tiempo y se han ordenado</translation>
    </message>
    <message>
        <source>Same time</source>
        <translation>Misma hora</translation>
    </message>
    <message>
        <source>%1 rows share their time with another and are taken together</source>
        <translation>%1 filas comparten su hora con otra y se toman juntas</translation>
    </message>
    <message>
        <source>of UTC; --time-zone gives those of the place</source>
        <translation>de UTC; --time-zone da los del lugar</translation>
    </message>
    <message>
        <source>no time of day is given: taken as noon</source>
        <translation>no se da la hora: se toma el mediodía</translation>
    </message>
    <message>
        <source>&gt;Change kg</source>
        <translation>&gt;Cambio kg</translation>
    </message>
    <message>
        <source>&gt;Nectar days</source>
        <translation>&gt;Días de néctar</translation>
    </message>
    <message>
        <source>&gt;kg</source>
        <translation>&gt;kg</translation>
    </message>
    <message>
        <source>&gt;Eating days</source>
        <translation>&gt;Días de consumo</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Observación</translation>
    </message>
    <message>
        <source>an end was weighed by day, foragers out</source>
        <translation>un extremo se pesó de día, con pecoreadoras fuera</translation>
    </message>
    <message>
        <source>an end in the wet</source>
        <translation>un extremo se pesó con lluvia o nieve</translation>
    </message>
    <message>
        <source>%1 days unknown</source>
        <translation>%1 días desconocidos</translation>
    </message>
    <message>
        <source>Water in the wood and on the hive moves this log by about %1 kg from day to day: while it is too cold to fly a single day of nectar is water. The months themselves are right.</source>
        <translation>El agua en la madera y sobre la colmena mueve este registro alrededor de %1 kg de un día a otro: mientras haga demasiado frío para volar, un día suelto de néctar es agua. Los meses en sí son correctos.</translation>
    </message>
    <message>
        <source>No steps: nothing was put on, taken off or poured in.</source>
        <translation>Ningún salto: no se puso, quitó ni vertió nada.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Salto</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>late evening and early morning</source>
        <translation>última hora de la tarde y primera de la mañana</translation>
    </message>
    <message>
        <source>by day</source>
        <translation>de día</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mojada</translation>
    </message>
    <message>
        <source>and %1 more; --json lists them all</source>
        <translation>y %1 más; --json los enumera todos</translation>
    </message>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>línea %1: %2</translation>
    </message>
    <message>
        <source>Rows left out: %1</source>
        <translation>Filas dejadas fuera: %1</translation>
    </message>
    <message>
        <source>%1: %2 minutes back</source>
        <translation>%1: %2 minutos atrás</translation>
    </message>
    <message>
        <source>%1: %2 minutes forward</source>
        <translation>%1: %2 minutos adelante</translation>
    </message>
    <message>
        <source> (daylight saving)</source>
        <translation> (horario de verano)</translation>
    </message>
    <message>
        <source>%1: %2 kg of rain or snow</source>
        <translation>%1: %2 kg de lluvia o nieve</translation>
    </message>
    <message>
        <source>%1: %2 kg and back</source>
        <translation>%1: %2 kg y vuelta</translation>
    </message>
    <message>
        <source>Gaps: %1</source>
        <translation>Huecos: %1</translation>
    </message>
    <message>
        <source>Clock put back or forward: %1</source>
        <translation>Reloj atrasado o adelantado: %1</translation>
    </message>
    <message>
        <source>Disturbed: %1</source>
        <translation>Alterados: %1</translation>
    </message>
    <message>
        <source>Neither temperature nor day length ever falls far enough: no season can be derived here, give its dates yourself.</source>
        <translation>Ni la temperatura ni la duración del día bajan nunca lo bastante: aquí no se puede calcular ninguna temporada; indique usted sus fechas.</translation>
    </message>
    <message>
        <source>Laying never stops here, so there are no dates for its end and new start.</source>
        <translation>Aquí la puesta no se corta nunca, así que no hay fechas de corte ni de reanudación.</translation>
    </message>
    <message>
        <source>It never gets too cold for syrup to be taken and ripened.</source>
        <translation>Nunca hace demasiado frío para que tomen y maduren el jarabe.</translation>
    </message>
    <message>
        <source>It never gets too cold for syrup to be taken.</source>
        <translation>Nunca hace demasiado frío para que tomen el jarabe.</translation>
    </message>
    <message>
        <source>The season lies at the edge of the rules: compare its dates with your own.</source>
        <translation>La temporada está en el límite de las reglas: compare sus fechas con las que usted conoce.</translation>
    </message>
    <message>
        <source>&gt;± SD</source>
        <translation>&gt;± desv. típica</translation>
    </message>
    <message>
        <source>&gt;Day length h</source>
        <translation>&gt;Duración del día h</translation>
    </message>
    <message>
        <source>Own climate: %1</source>
        <translation>Clima propio: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>  The %1</source>
        <comment>weather of a station</comment>
        <translation>  El %1</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>Country</source>
        <translation>País</translation>
    </message>
    <message>
        <source>&gt;Distance</source>
        <translation>&gt;Distancia</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Señal</translation>
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
        <translation>Formato</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>&gt;Comb face</source>
        <translation>&gt;Cara del panal</translation>
    </message>
    <message>
        <source>&gt;Combs</source>
        <translation>&gt;Cuadros</translation>
    </message>
    <message>
        <source>&gt;Pitch</source>
        <translation>&gt;Distancia</translation>
    </message>
    <message>
        <source>&gt;Full comb</source>
        <translation>&gt;Cuadro lleno</translation>
    </message>
    <message>
        <source>&gt;Bees a comb</source>
        <translation>&gt;Abejas por cuadro</translation>
    </message>
    <message>
        <source>used by %1</source>
        <translation>usado por %1</translation>
    </message>
    <message>
        <source>&gt;%{Comb}</source>
        <translation>&gt;Cuadro</translation>
    </message>
    <message>
        <source>&gt;Capped</source>
        <translation>&gt;Operculado</translation>
    </message>
    <message>
        <source>&gt;Open, as ripe honey</source>
        <translation>&gt;Sin opercular, como miel madura</translation>
    </message>
    <message>
        <source>What says so</source>
        <translation>Según qué</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Visto el</translation>
    </message>
    <message>
        <source>&gt;Stores</source>
        <translation>&gt;Reservas</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Room in the %{combs}</source>
        <translation>Sitio en los cuadros</translation>
    </message>
    <message>
        <source>These contradict each other; the answer spans both.</source>
        <translation>Se contradicen; la respuesta abarca ambas.</translation>
    </message>
    <message>
        <source>&gt;Use g</source>
        <translation>&gt;Consumo g</translation>
    </message>
    <message>
        <source>&gt;Income g</source>
        <translation>&gt;Entrada g</translation>
    </message>
    <message>
        <source>&gt;Bees</source>
        <translation>&gt;Abejas</translation>
    </message>
    <message>
        <source>&gt;Brood cells</source>
        <translation>&gt;Celdas de cría</translation>
    </message>
    <message>
        <source>&gt;Power W</source>
        <translation>&gt;Potencia W</translation>
    </message>
    <message>
        <source>Use from %1 to %2</source>
        <translation>Consumo del %1 al %2</translation>
    </message>
    <message>
        <source>Food eaten</source>
        <translation>Alimento consumido</translation>
    </message>
    <message>
        <source>%1, mean %2</source>
        <translation>%1, media %2</translation>
    </message>
    <message>
        <source>  warmth for brood</source>
        <translation>  calor para la cría</translation>
    </message>
    <message>
        <source>  food for brood</source>
        <translation>  alimento para la cría</translation>
    </message>
    <message>
        <source>Income</source>
        <translation>Entrada de néctar</translation>
    </message>
    <message>
        <source>Bees at the end</source>
        <translation>Abejas al final</translation>
    </message>
    <message>
        <source>&gt;Mean</source>
        <translation>&gt;Media</translation>
    </message>
    <message>
        <source>The yard %1 as a whole</source>
        <translation>El colmenar %1 en conjunto</translation>
    </message>
    <message>
        <source>Honey to take</source>
        <translation>Miel que se puede quitar</translation>
    </message>
    <message>
        <source>Nothing to buy</source>
        <translation>Nada que comprar</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Para comprar</translation>
    </message>
    <message>
        <source>%{Combs} to move first</source>
        <translation>Cuadros para pasar primero</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>cualquier día</translation>
    </message>
    <message>
        <source>What to do, by day</source>
        <translation>Qué hacer, por días</translation>
    </message>
</context>
<context>
    <name>Days</name>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>This cannot be read as a day of the year. Type it as %1.</source>
        <translation>Esto no se puede leer como día del año. Escríbalo como %1.</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>This cannot be read as a day. Type it as %1, as %2, or “yesterday”.</source>
        <translation>Esto no se puede leer como día. Escríbalo como %1, como %2, o «ayer».</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <translation>MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>There is no day %1 in %2; it ends with day %3.</source>
        <translation>No hay un día %1 en %2; termina con el día %3.</translation>
    </message>
    <message>
        <source>%1 is too late here. Type a day from %2 to %3.</source>
        <translation>El %1 es demasiado tarde aquí. Escriba un día del %2 al %3.</translation>
    </message>
    <message>
        <source>%1 is too early here. Type a day from %2 to %3.</source>
        <translation>El %1 es demasiado pronto aquí. Escriba un día del %2 al %3.</translation>
    </message>
    <message>
        <source>%1 is too late here. Type %2 or a day before it.</source>
        <translation>El %1 es demasiado tarde aquí. Escriba %2 o un día anterior.</translation>
    </message>
    <message>
        <source>%1 is too early here. Type %2 or a day after it.</source>
        <translation>El %1 es demasiado pronto aquí. Escriba %2 o un día posterior.</translation>
    </message>
</context>
<context>
    <name>DrawnCombs</name>
    <message>
        <source>%{Comb} %1 of the super</source>
        <translation>Cuadro %1 del alza</translation>
    </message>
    <message>
        <source>%{Comb} %1 of box %2</source>
        <translation>Cuadro %1 del cuerpo %2</translation>
    </message>
    <message>
        <source>one face seen</source>
        <translation>vista una cara</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>visto por una ventana</translation>
    </message>
    <message>
        <source>measured on a photograph</source>
        <translation>medido en una foto</translation>
    </message>
    <message>
        <source>both faces seen</source>
        <translation>vistas ambas caras</translation>
    </message>
    <message>
        <source>%1: not looked at, taken as the mean of the others; %2</source>
        <translation>%1: no examinado, se toma la media de los demás; %2</translation>
    </message>
    <message>
        <source>%1: capped %2, open nectar %3, brood %4, bee bread %5, empty %6; %7; %8</source>
        <translation>%1: operculado %2, néctar sin opercular %3, cría %4, pan de abejas %5, vacío %6; %7; %8</translation>
    </message>
</context>
<context>
    <name>EntryForms</name>
    <message>
        <source>&amp;Boxes, as they stand</source>
        <translation>C&amp;uerpos, tal como están</translation>
    </message>
    <message>
        <source>&amp;Walls</source>
        <translation>Pared&amp;es</translation>
    </message>
    <message>
        <source>Insulated on &amp;top</source>
        <translation>Ais&amp;lante sobre los cuadros</translation>
    </message>
    <message>
        <source>Kept &amp;small on purpose</source>
        <translation>&amp;Mantenida pequeña a propósito</translation>
    </message>
    <message>
        <source>&amp;Empty weight, if known</source>
        <translation>Peso en &amp;vacío, si se conoce</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>A new colony</source>
        <translation>Una colonia nueva</translation>
    </message>
    <message>
        <source>The colony</source>
        <translation>La colonia</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nombre</translation>
    </message>
    <message>
        <source>&amp;Kind of bees</source>
        <translation>&amp;Tipo de abejas</translation>
    </message>
    <message>
        <source>Year of the &amp;queen</source>
        <translation>Año de la re&amp;ina</translation>
    </message>
    <message>
        <source>&amp;Colour of her mark, if another than her year&apos;s</source>
        <translation>&amp;Color de marca, si no es el de su año</translation>
    </message>
    <message>
        <source>&amp;Feeder</source>
        <translation>&amp;Alimentador</translation>
    </message>
    <message>
        <source>It &amp;holds</source>
        <translation>Capaci&amp;dad</translation>
    </message>
    <message>
        <source>Where it ca&amp;me from</source>
        <translation>&amp;Procedencia</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;ota</translation>
    </message>
    <message>
        <source>The colony needs a name.</source>
        <translation>La colonia necesita un nombre.</translation>
    </message>
    <message>
        <source>The hive</source>
        <translation>La colmena</translation>
    </message>
    <message>
        <source>From this &amp;day on</source>
        <translation>Desde este &amp;día</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Nota</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Qué fue de ella</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Día</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Qué</translation>
    </message>
    <message>
        <source>&amp;Into</source>
        <translation>&amp;Unida a</translation>
    </message>
    <message>
        <source>&amp;Of what, as far as is known</source>
        <translation>&amp;Causa, si se conoce</translation>
    </message>
    <message>
        <source>The colony leaves the yard from this day on; everything written of it stays in the book. Where disease may be the cause, the bee inspector comes first.</source>
        <translation>La colonia deja el colmenar desde este día; todo lo anotado de ella sigue en el cuaderno. Si la causa puede ser una enfermedad, hay que consultar primero a los servicios veterinarios oficiales.</translation>
    </message>
    <message>
        <source>Into which colony?</source>
        <translation>¿A qué colonia?</translation>
    </message>
    <message>
        <source>A new yard</source>
        <translation>Un colmenar nuevo</translation>
    </message>
    <message>
        <source>&amp;Where it is</source>
        <translation>&amp;Dónde está</translation>
    </message>
    <message>
        <source>The yard needs a name.</source>
        <translation>El colmenar necesita un nombre.</translation>
    </message>
    <message>
        <source>Choose a place from the list, or type latitude and longitude.</source>
        <translation>Elija un lugar de la lista o escriba la latitud y la longitud.</translation>
    </message>
    <message>
        <source>To another yard</source>
        <translation>A otro colmenar</translation>
    </message>
    <message>
        <source>It stands &amp;in</source>
        <translation>Está &amp;en</translation>
    </message>
    <message>
        <source>Change the look</source>
        <translation>Cambiar la revisión</translation>
    </message>
    <message>
        <source>A new look</source>
        <translation>Una revisión nueva</translation>
    </message>
    <message>
        <source>&amp;Bees</source>
        <translation>&amp;Abejas</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>cuadros cubiertos</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>calles de abejas</translation>
    </message>
    <message>
        <source>bees, counted</source>
        <translation>abejas, contadas</translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation>&amp;Cuántas</translation>
    </message>
    <message>
        <source>&amp;Queen seen</source>
        <translation>Re&amp;ina vista</translation>
    </message>
    <message>
        <source>&amp;Eggs seen</source>
        <translation>&amp;Huevos vistos</translation>
    </message>
    <message>
        <source>&amp;Sealed brood seen</source>
        <translation>Cría &amp;operculada vista</translation>
    </message>
    <message>
        <source>&amp;Pollen coming in</source>
        <translation>Entrada de &amp;polen</translation>
    </message>
    <message>
        <source>&amp;Temper</source>
        <translation>&amp;Mansedumbre</translation>
    </message>
    <message>
        <source>&amp;Water in the honey, %</source>
        <translation>Hum&amp;edad de la miel, %</translation>
    </message>
    <message>
        <source>S&amp;igns of disease</source>
        <translation>&amp;Signos de enfermedad</translation>
    </message>
    <message>
        <source>Which si&amp;gns</source>
        <translation>&amp;Qué signos</translation>
    </message>
    <message>
        <source>How many bees, %{combs} or seams were there?</source>
        <translation>¿Cuántas abejas, cuadros o calles había?</translation>
    </message>
    <message>
        <source>A note</source>
        <translation>Una nota</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>No se ha escrito nada.</translation>
    </message>
    <message>
        <source>Change the weighing</source>
        <translation>Cambiar la pesada</translation>
    </message>
    <message>
        <source>A new weighing</source>
        <translation>Una pesada nueva</translation>
    </message>
    <message>
        <source>&amp;How</source>
        <translation>&amp;Cómo</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>en báscula</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>por los dos lados</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>por un lado</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>sopesada</translation>
    </message>
    <message>
        <source>&amp;Whole hive</source>
        <translation>Colmena en&amp;tera</translation>
    </message>
    <message>
        <source>&amp;One side</source>
        <translation>&amp;Un lado</translation>
    </message>
    <message>
        <source>The o&amp;ther side</source>
        <translation>E&amp;l otro lado</translation>
    </message>
    <message>
        <source>Rain or snow lay &amp;on it</source>
        <translation>Tenía lluvia o nie&amp;ve encima</translation>
    </message>
    <message>
        <source>It &amp;felt</source>
        <translation>Al &amp;sopesarla</translation>
    </message>
    <message>
        <source>How much did it weigh?</source>
        <translation>¿Cuánto pesaba?</translation>
    </message>
    <message>
        <source>Change the feed</source>
        <translation>Cambiar el aporte de alimento</translation>
    </message>
    <message>
        <source>What was fed</source>
        <translation>Qué se dio</translation>
    </message>
    <message>
        <source>&amp;Sugar in it</source>
        <translation>&amp;Azúcar que contiene</translation>
    </message>
    <message>
        <source>or s&amp;yrup</source>
        <translation>o &amp;jarabe</translation>
    </message>
    <message>
        <source>s&amp;ugar to water, by weight</source>
        <translation>azúcar por a&amp;gua, en peso</translation>
    </message>
    <message>
        <source>&amp;Fondant</source>
        <translation>&amp;Candi</translation>
    </message>
    <message>
        <source>How much was fed?</source>
        <translation>¿Cuánto se dio?</translation>
    </message>
    <message>
        <source>Change the harvest</source>
        <translation>Cambiar la cosecha</translation>
    </message>
    <message>
        <source>What was taken</source>
        <translation>Qué se cosechó</translation>
    </message>
    <message>
        <source>&amp;Honey</source>
        <translation>&amp;Miel</translation>
    </message>
    <message>
        <source>&amp;%{Combs}</source>
        <translation>&amp;Cuadros</translation>
    </message>
    <message>
        <source>&amp;Water in it, %</source>
        <translation>&amp;Humedad, %</translation>
    </message>
    <message>
        <source>Change the treatment</source>
        <translation>Cambiar el tratamiento</translation>
    </message>
    <message>
        <source>A treatment</source>
        <translation>Un tratamiento</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Desde</translation>
    </message>
    <message>
        <source>It is &amp;over</source>
        <translation>Ha &amp;terminado</translation>
    </message>
    <message>
        <source>&amp;Until</source>
        <translation>&amp;Hasta</translation>
    </message>
    <message>
        <source>&amp;What was given</source>
        <translation>&amp;Qué se dio</translation>
    </message>
    <message>
        <source>Used only to warn about the honey. Which medicine may be given, how and when, the label, the vet and local law say.</source>
        <translation>Solo sirve para advertir sobre la miel. Qué medicamento se puede dar, cómo y cuándo, lo dicen la etiqueta, el veterinario y la ley del lugar.</translation>
    </message>
    <message>
        <source>What was given?</source>
        <translation>¿Qué se dio?</translation>
    </message>
    <message>
        <source>It ends before it begins.</source>
        <translation>Termina antes de empezar.</translation>
    </message>
    <message>
        <source>How the winter went</source>
        <translation>Cómo fue el invierno</translation>
    </message>
    <message>
        <source>&amp;Found out on</source>
        <translation>Se &amp;comprobó el</translation>
    </message>
    <message>
        <source>It is &amp;alive</source>
        <translation>Está &amp;viva</translation>
    </message>
    <message>
        <source>%{Combs} &amp;covered with bees</source>
        <translation>Cuadros cu&amp;biertos de abejas</translation>
    </message>
    <message>
        <source>&amp;Stores left</source>
        <translation>Re&amp;servas que quedan</translation>
    </message>
    <message>
        <source>A glance in winter</source>
        <translation>Un vistazo de invierno</translation>
    </message>
    <message>
        <source>What was &amp;seen</source>
        <translation>Qué &amp;se vio</translation>
    </message>
    <message>
        <source>Seams the cluster &amp;fills</source>
        <translation>&amp;Calles que ocupa el racimo</translation>
    </message>
    <message>
        <source>Sealed s&amp;tores in sight</source>
        <translation>Reservas &amp;operculadas a la vista</translation>
    </message>
</context>
<context>
    <name>Fields</name>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>colmenar</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>written by</source>
        <translation>anotado por</translation>
    </message>
    <message>
        <source>climate station</source>
        <translation>estación climática</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitud</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>mean temperature of a month</source>
        <translation>temperatura media de un mes</translation>
    </message>
    <message>
        <source>scatter of winter days</source>
        <translation>variación de los días de invierno</translation>
    </message>
    <message>
        <source>scatter of summer days</source>
        <translation>variación de los días de verano</translation>
    </message>
    <message>
        <source>likeness of one day to the next</source>
        <translation>parecido de un día con el siguiente</translation>
    </message>
    <message>
        <source>scatter of whole winters</source>
        <translation>variación de inviernos enteros</translation>
    </message>
    <message>
        <source>height above the sea</source>
        <translation>altitud sobre el mar</translation>
    </message>
    <message>
        <source>autumn flow still to come</source>
        <translation>floración de otoño por venir</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>fin de la entrada de néctar</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>corte de puesta</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reanudación de la puesta</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>desarrollo primaveral</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>comienzo de la floración de primavera</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>fin recomendado de la alimentación</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>último día para dar jarabe</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>ya no toman el jarabe</translation>
    </message>
    <message>
        <source>accepted risk</source>
        <translation>riesgo aceptado</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>margen de seguridad</translation>
    </message>
    <message>
        <source>days between visits</source>
        <translation>días entre visitas</translation>
    </message>
    <message>
        <source>weekdays for visits</source>
        <translation>días de la semana para visitas</translation>
    </message>
    <message>
        <source>can be reached in winter</source>
        <translation>se puede llegar en invierno</translation>
    </message>
    <message>
        <source>what flowers here</source>
        <translation>qué florece aquí</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>price of a kilogram of sugar</source>
        <translation>precio de un kilogramo de azúcar</translation>
    </message>
    <message>
        <source>a bag of sugar</source>
        <translation>un saco de azúcar</translation>
    </message>
    <message>
        <source>full %{combs} in store</source>
        <translation>cuadros llenos en almacén</translation>
    </message>
    <message>
        <source>units</source>
        <translation>unidades</translation>
    </message>
    <message>
        <source>walls of the hive</source>
        <translation>paredes de la colmena</translation>
    </message>
    <message>
        <source>insulation on top</source>
        <translation>aislante sobre los cuadros</translation>
    </message>
    <message>
        <source>medicine was in the hive</source>
        <translation>hubo medicamento en la colmena</translation>
    </message>
    <message>
        <source>kept small on purpose</source>
        <translation>mantenida pequeña a propósito</translation>
    </message>
    <message>
        <source>empty weight</source>
        <translation>peso en vacío</translation>
    </message>
    <message>
        <source>the supers are for</source>
        <translation>las alzas son para</translation>
    </message>
    <message>
        <source>feeder</source>
        <translation>alimentador</translation>
    </message>
    <message>
        <source>what the feeder holds</source>
        <translation>capacidad del alimentador</translation>
    </message>
    <message>
        <source>kind of bees</source>
        <translation>tipo de abejas</translation>
    </message>
    <message>
        <source>year of the queen</source>
        <translation>año de la reina</translation>
    </message>
    <message>
        <source>colour of the queen&apos;s mark</source>
        <translation>color de marca de la reina</translation>
    </message>
    <message>
        <source>where it came from</source>
        <translation>procedencia</translation>
    </message>
    <message>
        <source>here since</source>
        <translation>aquí desde</translation>
    </message>
    <message>
        <source>what became of it</source>
        <translation>qué fue de ella</translation>
    </message>
    <message>
        <source>united into</source>
        <translation>unida a</translation>
    </message>
    <message>
        <source>cause</source>
        <translation>causa</translation>
    </message>
    <message>
        <source>number of bees</source>
        <translation>número de abejas</translation>
    </message>
    <message>
        <source>%{combs} covered with bees</source>
        <translation>cuadros cubiertos de abejas</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>calles de abejas</translation>
    </message>
    <message>
        <source>how unsure the count is</source>
        <translation>cuánto puede fallar el recuento</translation>
    </message>
    <message>
        <source>brood cells</source>
        <translation>celdas de cría</translation>
    </message>
    <message>
        <source>queen seen</source>
        <translation>reina vista</translation>
    </message>
    <message>
        <source>eggs seen</source>
        <translation>huevos vistos</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>signos de enfermedad</translation>
    </message>
    <message>
        <source>mites counted</source>
        <translation>ácaros contados</translation>
    </message>
    <message>
        <source>mites on 100 bees</source>
        <translation>ácaros en 100 abejas</translation>
    </message>
    <message>
        <source>mites treated</source>
        <translation>ácaros tratados</translation>
    </message>
    <message>
        <source>food beside the bees</source>
        <translation>alimento junto a las abejas</translation>
    </message>
    <message>
        <source>kind of honey</source>
        <translation>clase de miel</translation>
    </message>
    <message>
        <source>fed or treated while this honey was made</source>
        <translation>alimentada o tratada mientras se hacía esta miel</translation>
    </message>
    <message>
        <source>how the %{combs} were looked at</source>
        <translation>cómo se examinaron los cuadros</translation>
    </message>
    <message>
        <source>%{combs} full of stores</source>
        <translation>cuadros llenos de reservas</translation>
    </message>
    <message>
        <source>%{combs} half full</source>
        <translation>cuadros a medio llenar</translation>
    </message>
    <message>
        <source>share of it capped</source>
        <translation>parte operculada</translation>
    </message>
    <message>
        <source>sealed brood seen</source>
        <translation>cría operculada vista</translation>
    </message>
    <message>
        <source>pollen coming in</source>
        <translation>entrada de polen</translation>
    </message>
    <message>
        <source>temper</source>
        <translation>mansedumbre</translation>
    </message>
    <message>
        <source>water in the honey, per cent</source>
        <translation>humedad de la miel, por ciento</translation>
    </message>
    <message>
        <source>signs of trouble</source>
        <translation>signos de problemas</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>weight of one side</source>
        <translation>peso de un lado</translation>
    </message>
    <message>
        <source>weight of the other side</source>
        <translation>peso del otro lado</translation>
    </message>
    <message>
        <source>heft</source>
        <translation>sopesado</translation>
    </message>
    <message>
        <source>said to be right, however unlikely</source>
        <translation>confirmado como correcto, aunque improbable</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>azúcar</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>jarabe</translation>
    </message>
    <message>
        <source>sugar to water</source>
        <translation>azúcar por agua</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>after the look of that day</source>
        <translation>después de la revisión de ese día</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miel</translation>
    </message>
    <message>
        <source>%{combs}</source>
        <translation>cuadros</translation>
    </message>
    <message>
        <source>until</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>cuántos</translation>
    </message>
    <message>
        <source>to the colony</source>
        <translation>a la colonia</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>recomendación</translation>
    </message>
    <message>
        <source>what it was computed from</source>
        <translation>de qué se calculó</translation>
    </message>
    <message>
        <source>the whole answer</source>
        <translation>la respuesta entera</translation>
    </message>
    <message>
        <source>seed</source>
        <translation>semilla</translation>
    </message>
    <message>
        <source>past winters are learned from</source>
        <translation>se aprende de los inviernos pasados</translation>
    </message>
    <message>
        <source>learned from since</source>
        <translation>se aprende desde</translation>
    </message>
    <message>
        <source>wet hive</source>
        <translation>colmena mojada</translation>
    </message>
    <message>
        <source>change of weight</source>
        <translation>cambio de peso</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>visto</translation>
    </message>
    <message>
        <source>stores in sight</source>
        <translation>reservas a la vista</translation>
    </message>
    <message>
        <source>first %{comb} of the cluster</source>
        <translation>primer cuadro del racimo</translation>
    </message>
    <message>
        <source>mean temperature</source>
        <translation>temperatura media</translation>
    </message>
    <message>
        <source>simulated winters</source>
        <translation>inviernos simulados</translation>
    </message>
    <message>
        <source>version of the program</source>
        <translation>versión del programa</translation>
    </message>
    <message>
        <source>state</source>
        <translation>estado</translation>
    </message>
    <message>
        <source>done on</source>
        <translation>hecha el</translation>
    </message>
    <message>
        <source>from the advice</source>
        <translation>de la recomendación</translation>
    </message>
    <message>
        <source>alive in spring</source>
        <translation>viva en primavera</translation>
    </message>
    <message>
        <source>stores left</source>
        <translation>reservas que quedan</translation>
    </message>
    <message>
        <source>food within reach of the dead bees</source>
        <translation>alimento al alcance de las abejas muertas</translation>
    </message>
    <message>
        <source>bees head down in the cells</source>
        <translation>abejas de cabeza en las celdas</translation>
    </message>
    <message>
        <source>many mites on the floor</source>
        <translation>muchos ácaros en el fondo</translation>
    </message>
    <message>
        <source>brood in the dead hive</source>
        <translation>cría en la colmena muerta</translation>
    </message>
    <message>
        <source>queen found</source>
        <translation>reina encontrada</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>operculado</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>néctar sin opercular</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>cría</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pan de abejas</translation>
    </message>
    <message>
        <source>hive format</source>
        <translation>tipo de colmena</translation>
    </message>
    <message>
        <source>bar width, mm</source>
        <translation>ancho de la barra, mm</translation>
    </message>
    <message>
        <source>built</source>
        <translation>construido</translation>
    </message>
    <message>
        <source>faces seen</source>
        <translation>caras vistas</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>visto por una ventana</translation>
    </message>
    <message>
        <source>measured on a photograph</source>
        <translation>medido en una foto</translation>
    </message>
    <message>
        <source>in a super</source>
        <translation>en un alza</translation>
    </message>
    <message>
        <source>took syrup</source>
        <translation>tomó jarabe</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>cuadro viejo de cría</translation>
    </message>
    <message>
        <source>photograph</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>comb width, mm</source>
        <translation>ancho del panal, mm</translation>
    </message>
    <message>
        <source>comb height, mm</source>
        <translation>alto del panal, mm</translation>
    </message>
    <message>
        <source>comb width at the bottom, mm</source>
        <translation>ancho del panal abajo, mm</translation>
    </message>
    <message>
        <source>%{combs} in a box</source>
        <translation>cuadros por cuerpo</translation>
    </message>
    <message>
        <source>a super</source>
        <translation>un alza</translation>
    </message>
    <message>
        <source>put on</source>
        <translation>puesto el</translation>
    </message>
    <message>
        <source>number of boxes</source>
        <translation>número de cuerpos</translation>
    </message>
    <message>
        <source>number of %{combs}</source>
        <translation>número de cuadros</translation>
    </message>
    <message>
        <source>number of days</source>
        <translation>número de días</translation>
    </message>
    <message>
        <source>number of photographs</source>
        <translation>número de fotos</translation>
    </message>
    <message>
        <source>%{comb} %1: %2</source>
        <translation>cuadro %1: %2</translation>
    </message>
    <message>
        <source>box %1: %2</source>
        <translation>cuerpo %1: %2</translation>
    </message>
    <message>
        <source>day %1: %2</source>
        <translation>día %1: %2</translation>
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
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>FollowSections</name>
    <message>
        <source>Dates that matter</source>
        <translation>Fechas que importan</translation>
    </message>
    <message>
        <source>To feed</source>
        <translation>Qué dar</translation>
    </message>
    <message>
        <source>What was found points to</source>
        <translation>Lo encontrado apunta a</translation>
    </message>
    <message>
        <source>Look, and write it down with how the winter went</source>
        <translation>Mire esto y anótelo con el resultado del invierno</translation>
    </message>
    <message>
        <source>The safe way</source>
        <translation>Cómo hacerlo sin riesgo</translation>
    </message>
    <message>
        <source>In spring</source>
        <translation>En primavera</translation>
    </message>
    <message>
        <source>Seen since the decision</source>
        <translation>Observado desde la decisión</translation>
    </message>
    <message>
        <source>It falls below %1 from %2 on in a tenth of these winters, by %3 in half.</source>
        <translation>Baja de %1 desde el %2 en uno de cada diez de estos inviernos; en la mitad, a más tardar el %3.</translation>
    </message>
    <message>
        <source>It falls below %1 from %2 on in a tenth of these winters.</source>
        <translation>Baja de %1 desde el %2 en uno de cada diez de estos inviernos.</translation>
    </message>
    <message>
        <source>Nothing is left from %1 in a tenth, by %2 in half.</source>
        <translation>No queda nada desde el %1 en uno de cada diez; en la mitad, a más tardar el %2.</translation>
    </message>
    <message>
        <source>Nothing is left from %1 in a tenth.</source>
        <translation>No queda nada desde el %1 en uno de cada diez.</translation>
    </message>
    <message>
        <source>Spring forage starts around %1 (%2 to %3); about %4 left by then.</source>
        <translation>La floración de primavera comienza hacia el %1 (del %2 al %3); quedan entonces alrededor de %4.</translation>
    </message>
    <message>
        <source>%1: %2 of fondant touching the cluster</source>
        <translation>%1: %2 de candi en contacto con el racimo</translation>
    </message>
    <message>
        <source>It is wanted by %1.</source>
        <translation>Hace falta a más tardar el %1.</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>Spring forage should carry it from about %1 (%2 to %3).</source>
        <translation>La floración de primavera debería bastarle desde alrededor del %1 (del %2 al %3).</translation>
    </message>
    <message>
        <source>Leave %1 for a cold spell until forage is steady.</source>
        <translation>Conviene dejar %1 para una ola de frío hasta que el néctar entre de forma constante.</translation>
    </message>
    <message>
        <source>Nothing is to come out.</source>
        <translation>No hay que quitar nada.</translation>
    </message>
    <message>
        <source>Above that %1 or more are left in 9 winters of 10, and may come out.</source>
        <translation>Por encima de eso quedan %1 o más en 9 de cada 10 inviernos, que se pueden quitar.</translation>
    </message>
    <message>
        <source>Take out about %1 of full %{combs}, so that the queen finds cells to lay in.</source>
        <translation>Conviene quitar alrededor de %1 en cuadros llenos, para que la reina encuentre celdas donde poner.</translation>
    </message>
    <message>
        <source>None of it is honey to eat: the hive was treated meanwhile.</source>
        <translation>Nada de ello es miel para consumo: mientras tanto se trató la colmena.</translation>
    </message>
    <message>
        <source>%{Combs} that may be taken: %1 (they took no syrup and were not in a treated hive).</source>
        <translation>Cuadros que se pueden quitar: %1 (no tomaron jarabe ni estuvieron en una colmena tratada).</translation>
    </message>
    <message>
        <source>No %{comb} is known to be honey that may be taken: %{combs} that took syrup are for the bees.</source>
        <translation>No consta ningún cuadro cuya miel se pueda quitar: los cuadros que tomaron jarabe son para las abejas.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2, %3, where %4 was expected: it contradicts every winter.</source>
        <translation>%1: %2, %3, donde se esperaba %4: contradice todos los inviernos.</translation>
    </message>
    <message>
        <source>%1: %2, %3, where %4 was expected.</source>
        <translation>%1: %2, %3, donde se esperaba %4.</translation>
    </message>
</context>
<context>
    <name>Following</name>
    <message>
        <source>feed %1 of sugar as syrup</source>
        <translation>hay que dar %1 de azúcar en jarabe</translation>
    </message>
    <message>
        <source>lay %1 of fondant on the bees</source>
        <translation>hay que poner %1 de candi sobre las abejas</translation>
    </message>
    <message>
        <source> Today %1.</source>
        <translation> Hoy %1.</translation>
    </message>
    <message>
        <source> On %2 %1.</source>
        <translation> El %2 %1.</translation>
    </message>
    <message>
        <source> Check the scale.</source>
        <translation> Revise la báscula.</translation>
    </message>
    <message>
        <source>Eating faster than planned: likely below %1 by %2.</source>
        <translation>Consume más de lo previsto: es probable que las reservas bajen de %1 a más tardar el %2.</translation>
    </message>
    <message>
        <source>Eating faster than planned: perhaps below %1 from %2 on.</source>
        <translation>Consume más de lo previsto: quizá las reservas bajen de %1 desde el %2.</translation>
    </message>
    <message>
        <source>Eating faster than planned, but it should last.</source>
        <translation>Consume más de lo previsto, pero debería alcanzarle.</translation>
    </message>
    <message>
        <source>Act now: food for less than three weeks is left.</source>
        <translation>Actuar ya: queda alimento para menos de tres semanas.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %1: %2 today, then weigh both sides.</source>
        <comment>day, feed</comment>
        <translation>Estaba ligera al sopesarla el %1: hoy %2 y después pesar por los dos lados.</translation>
    </message>
    <message>
        <source>Act now: the stores have most likely run out. See today from outside whether it lives; if so %1 at once.</source>
        <translation>Actuar ya: lo más probable es que las reservas se hayan agotado. Mire hoy desde fuera si la colonia vive; si es así, %1 enseguida.</translation>
    </message>
    <message>
        <source>Act now: %1 today, then weigh again.</source>
        <translation>Actuar ya: hoy %1 y después volver a pesar.</translation>
    </message>
    <message>
        <source>The food is out of the cluster&apos;s reach.</source>
        <translation>El racimo está separado de sus reservas.</translation>
    </message>
    <message>
        <source>Not enough to reach spring forage without feeding: %1 winters fall below %2.</source>
        <translation>No alcanza hasta la floración de primavera sin alimentar: en %1 inviernos baja de %2.</translation>
    </message>
    <message>
        <source>It may not be enough to reach spring forage without feeding: %1 winters fall below %2.</source>
        <translation>Puede que no alcance hasta la floración de primavera sin alimentar: en %1 inviernos baja de %2.</translation>
    </message>
    <message>
        <source> Nothing is fed today.</source>
        <translation> Hoy no se da nada.</translation>
    </message>
    <message>
        <source> Nothing is fed today; weigh it by %1.</source>
        <translation> Hoy no se da nada; conviene pesarla a más tardar el %1.</translation>
    </message>
    <message>
        <source>Was the feed planned from %1 on given? Write it down; until then it is not counted.</source>
        <comment>day</comment>
        <translation>¿Se dio el alimento previsto desde el %1? Anótelo; hasta entonces no se cuenta.</translation>
    </message>
    <message>
        <source>Without it there is enough as well.</source>
        <translation>Sin él también alcanza.</translation>
    </message>
    <message>
        <source>The colony is dead.</source>
        <translation>La colonia está muerta.</translation>
    </message>
    <message>
        <source>It is heavier than can be explained: check the scale, and what was added, then weigh it again.</source>
        <translation>Pesa más de lo que se puede explicar: revise la báscula y lo que se añadió, y vuelva a pesarla.</translation>
    </message>
    <message>
        <source>It cannot be said: what was seen contradicts every winter.</source>
        <translation>No se puede decir: lo observado contradice todos los inviernos.</translation>
    </message>
    <message>
        <source>Dwindling: far fewer bees than a winter leaves. On a day of %1 put them together in a small space between two full %{combs}.</source>
        <translation>Despoblación: muchas menos abejas de las que deja un invierno. Un día de %1 conviene juntarlas en un espacio pequeño entre dos cuadros llenos.</translation>
    </message>
    <message>
        <source>Less was in the hive than was thought.</source>
        <translation>En la colmena había menos de lo que se pensaba.</translation>
    </message>
    <message>
        <source>More is there than is needed: nothing to do before spring.</source>
        <translation>Hay más de lo necesario: nada que hacer antes de la primavera.</translation>
    </message>
    <message>
        <source>More is there than is needed: feed nothing, and once forage has begun make room for the queen to lay.</source>
        <translation>Hay más de lo necesario: no alimente, y cuando haya empezado la floración haga sitio para la puesta de la reina.</translation>
    </message>
    <message>
        <source>More is there than is needed: feed nothing.</source>
        <translation>Hay más de lo necesario: no alimente.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %1: weigh it again before anything is fed.</source>
        <translation>Estaba ligera al sopesarla el %1: vuelva a pesarla antes de dar nada.</translation>
    </message>
    <message>
        <source>On course.</source>
        <translation>Según lo previsto.</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>muerta</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>no se puede decir</translation>
    </message>
    <message>
        <source>food out of reach</source>
        <translation>separada de sus reservas</translation>
    </message>
    <message>
        <source>act now</source>
        <translation>actuar ya</translation>
    </message>
    <message>
        <source>dwindling</source>
        <translation>se despuebla</translation>
    </message>
    <message>
        <source>less than thought</source>
        <translation>menos de lo pensado</translation>
    </message>
    <message>
        <source>feed not written down</source>
        <translation>aporte sin anotar</translation>
    </message>
    <message>
        <source>eating faster</source>
        <translation>consume más de lo previsto</translation>
    </message>
    <message>
        <source>more than needed</source>
        <translation>más de lo necesario</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>según lo previsto</translation>
    </message>
    <message>
        <source>About %1 left today, where the autumn expected %2. If nothing is done, %4 winters that fit what was seen fall below %3 and %5 run out (as forecast in autumn: %6 and %7).</source>
        <translation>Hoy quedan alrededor de %1; en otoño se esperaban %2. Si no se hace nada, en %4 inviernos que encajan con lo observado las reservas bajan de %3 y en %5 se agotan (según la previsión de otoño: %6 y %7).</translation>
    </message>
    <message>
        <source>Look through what was written down of this winter: something was harvested, fed or weighed on another day or in another amount.</source>
        <translation>Repase lo anotado este invierno: algo se cosechó, se dio o se pesó otro día o en otra cantidad.</translation>
    </message>
    <message>
        <source>Weigh it again, and look for a feed that was not written down or ticked off, and for a lid, a box or a stone that was on or off.</source>
        <translation>Vuelva a pesarla y busque un aporte de alimento sin anotar o sin marcar, y una tapa, un cuerpo o una piedra que estaba o faltaba.</translation>
    </message>
    <message>
        <source>Weigh on %1, before more is fed.</source>
        <translation>Conviene pesar el %1, antes de dar más.</translation>
    </message>
    <message>
        <source>Weigh again by %1: in %2 of 100 cases that would change what to do.</source>
        <translation>Vuelva a pesar a más tardar el %1: en %2 de cada 100 casos eso cambiaría lo que hay que hacer.</translation>
    </message>
    <message>
        <source>No further weighing before forage (around %1) would change what to do.</source>
        <translation>Ninguna otra pesada antes de la floración (hacia el %1) cambiaría lo que hay que hacer.</translation>
    </message>
    <message>
        <source>Was food left within reach of the bees?</source>
        <translation>¿Quedaba alimento al alcance de las abejas?</translation>
    </message>
    <message>
        <source>Were dead bees head down in the cells?</source>
        <translation>¿Había abejas muertas de cabeza en las celdas?</translation>
    </message>
    <message>
        <source>Were there many mites on the floor?</source>
        <translation>¿Había muchos ácaros en el fondo?</translation>
    </message>
    <message>
        <source>Was there brood, and was it solid or patchy?</source>
        <translation>¿Había cría, y era compacta o salteada?</translation>
    </message>
    <message>
        <source>Was the queen found?</source>
        <translation>¿Se encontró la reina?</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>báscula</translation>
    </message>
    <message>
        <source>lifted on two sides</source>
        <translation>pesada por los dos lados</translation>
    </message>
    <message>
        <source>lifted on one side</source>
        <translation>pesada por un lado</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>sopesada</translation>
    </message>
    <message>
        <source>%{combs} looked at</source>
        <translation>cuadros revisados</translation>
    </message>
    <message>
        <source>bees counted</source>
        <translation>abejas contadas</translation>
    </message>
    <message>
        <source>cluster seen</source>
        <translation>racimo visto</translation>
    </message>
    <message>
        <source>bees flying</source>
        <translation>abejas volando</translation>
    </message>
    <message>
        <source>%{comb} glimpsed</source>
        <translation>cuadro entrevisto</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <comment>hefts</comment>
        <translation>%1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>masses</comment>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>nothing to %1</source>
        <translation>de nada a %1</translation>
    </message>
    <message>
        <source>Syrup, %1, in the evening</source>
        <translation>Jarabe, %1, al atardecer</translation>
    </message>
    <message>
        <source>Syrup, in the evening</source>
        <translation>Jarabe, al atardecer</translation>
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
        <translation>unirla con una colonia sana, hoy a más tardar, al atardecer</translation>
    </message>
    <message>
        <source>unite it with %1, today at the latest, in the evening</source>
        <translation>unirla con %1, hoy a más tardar, al atardecer</translation>
    </message>
    <message>
        <source>another colony of the yard</source>
        <translation>otra colonia del colmenar</translation>
    </message>
    <message>
        <source>hang in one full %{comb} from %1 (%2)</source>
        <translation>poner aquí, de %1, un cuadro lleno (%2)</translation>
    </message>
    <message>
        <source>hang in %1 full %{combs} from %2 (%3)</source>
        <translation>poner aquí, de %2, %1 cuadros llenos (%3)</translation>
    </message>
    <message>
        <source>Check the feeding</source>
        <translation>Comprobar la alimentación</translation>
    </message>
    <message>
        <source>take %1 of honey off by today</source>
        <translation>quitar %1 de miel, hoy a más tardar</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>volver a pesar</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>contar los ácaros y volver a revisar las reservas</translation>
    </message>
    <message>
        <source>call the bee inspector, move nothing</source>
        <translation>avisar a los servicios veterinarios oficiales y no trasladar nada</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>contar los cuadros que cubren las abejas</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>revisar las reservas o pesar</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>poner un cuadro con huevos de otra colonia</translation>
    </message>
    <message>
        <source>look for queen cells on the %{comb} with eggs</source>
        <translation>buscar celdas reales en el cuadro con huevos</translation>
    </message>
    <message>
        <source>take %1 of honey off, at the latest</source>
        <translation>quitar %1 de miel, a más tardar</translation>
    </message>
    <message>
        <source>%1 (%2 of sugar)</source>
        <comment>syrup</comment>
        <translation>%1 (%2 de azúcar)</translation>
    </message>
    <message>
        <source>unite it with a healthy colony, at the latest, in the evening</source>
        <translation>unirla con una colonia sana, a más tardar, al atardecer</translation>
    </message>
    <message>
        <source>unite it with %1, at the latest, in the evening</source>
        <translation>unirla con %1, a más tardar, al atardecer</translation>
    </message>
    <message>
        <source>%{Combs} side by side behind a sheet of newspaper, the bees misted with water.</source>
        <translation>Los cuadros unos junto a otros tras una hoja de papel de periódico, con las abejas rociadas con agua.</translation>
    </message>
    <message>
        <source>Newspaper between.</source>
        <translation>Con papel de periódico de por medio.</translation>
    </message>
    <message>
        <source>%1 Only once it is certain that it has no queen, on a warm evening.</source>
        <comment>how to unite</comment>
        <translation>%1 Solo cuando sea seguro que no tiene reina, en un atardecer templado.</translation>
    </message>
    <message>
        <source>%1 The better queen stays. Earlier is better, on a warm evening.</source>
        <comment>how to unite</comment>
        <translation>%1 Se queda la mejor reina. Cuanto antes, mejor, en un atardecer templado.</translation>
    </message>
    <message>
        <source>%1 of sugar. Inside the hive, all colonies of the yard the same evening.</source>
        <translation>%1 de azúcar. Dentro de la colmena y el mismo día al atardecer en todas las colonias del colmenar.</translation>
    </message>
    <message>
        <source>Inside the hive, all colonies of the yard the same evening.</source>
        <translation>Dentro de la colmena y el mismo día al atardecer en todas las colonias del colmenar.</translation>
    </message>
    <message>
        <source>So that it touches the bees, at once. Weigh both sides afterwards.</source>
        <translation>En contacto con las abejas, enseguida. Después, pesar por los dos lados.</translation>
    </message>
    <message>
        <source>Weigh both sides from outside first. Lay it so that it touches the bees.</source>
        <translation>Primero, pesar desde fuera por los dos lados. Ponerlo en contacto con las abejas.</translation>
    </message>
    <message>
        <source>Taken and sealed? Weigh; feeder off, mouse guard on.</source>
        <translation>¿Tomado y operculado? Pesar; quitar el alimentador y poner la rejilla contra ratones.</translation>
    </message>
    <message>
        <source>Before feeding and treating.</source>
        <translation>Antes de alimentar y tratar.</translation>
    </message>
    <message>
        <source>Both sides, without opening. Write it down and ask again.</source>
        <translation>Por los dos lados, sin abrir. Anótelo y vuelva a preguntar.</translation>
    </message>
    <message>
        <source>There are signs of disease.</source>
        <translation>Hay signos de enfermedad.</translation>
    </message>
    <message>
        <source>Until then nothing can be said of this colony&apos;s winter.</source>
        <translation>Hasta entonces no se puede decir nada del invierno de esta colonia.</translation>
    </message>
    <message>
        <source>Before anything is fed.</source>
        <translation>Antes de dar nada.</translation>
    </message>
    <message>
        <source>From a healthy colony. It shows whether there is a queen.</source>
        <translation>De una colonia sana. Muestra si hay reina.</translation>
    </message>
    <message>
        <source>Queen cells mean that the queen is gone: unite it. None mean that there is one: look for eggs, and ask again.</source>
        <translation>Si hay celdas reales, falta la reina: hay que unir la colonia. Si no las hay, tiene reina: busque huevos y vuelva a preguntar.</translation>
    </message>
    <message>
        <source>It was planned for %1 and is not ticked off. If it was given, write it down.</source>
        <translation>Estaba prevista para el %1 y no está marcada. Si se dio, anótelo.</translation>
    </message>
    <message>
        <source>%1: the records of its winter fit none, so it is not known when to weigh or feed</source>
        <translation>%1: las anotaciones de su invierno no encajan con ninguno, así que no se sabe cuándo pesar ni alimentar</translation>
    </message>
    <message>
        <source>Bees</source>
        <comment>name of the calendar that is written out</comment>
        <translation>Abejas</translation>
    </message>
</context>
<context>
    <name>Glossary</name>
    <message>
        <source>Stores</source>
        <translation>Reservas</translation>
    </message>
    <message>
        <source>stores</source>
        <translation>reservas</translation>
    </message>
    <message>
        <source>What the bees can live on in the hive: capped honey, and open nectar or syrup as far as it will ripen. Bee bread is not counted.</source>
        <translation>Aquello de lo que pueden vivir las abejas en la colmena: miel operculada, y néctar o jarabe sin opercular en la medida en que madure. El pan de abejas no se cuenta.</translation>
    </message>
    <message>
        <source>need</source>
        <translation>necesidad</translation>
    </message>
    <message>
        <source>The stores that must be in the hive today so that as few winters go short as you accept. It reaches to the day spring forage starts and holds the reserve.</source>
        <translation>Las reservas que debe haber hoy en la colmena para que solo falten en tantos inviernos como usted acepta. Llega hasta el día en que comienza la floración de primavera e incluye el margen de seguridad.</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>margen de seguridad</translation>
    </message>
    <message>
        <source>Stores that should still be there on the worst day, for what nobody foresees. You set it on the page Place.</source>
        <translation>Reservas que deberían quedar todavía el peor día, para lo que nadie prevé. Se fija en la página Lugar.</translation>
    </message>
    <message>
        <source>falls below the reserve</source>
        <translation>baja del margen de seguridad</translation>
    </message>
    <message>
        <source>Less than the reserve is left on some day before spring forage starts. The bees are not starving yet, but little is left.</source>
        <translation>Algún día antes de la floración de primavera queda menos que el margen de seguridad. Las abejas aún no mueren de hambre, pero queda poco.</translation>
    </message>
    <message>
        <source>runs out</source>
        <translation>se agota</translation>
    </message>
    <message>
        <source>No stores are left on some day before spring forage starts. Without help the colony starves.</source>
        <translation>Algún día antes de la floración de primavera no quedan reservas. Sin ayuda, la colonia muere de hambre.</translation>
    </message>
    <message>
        <source>accepted risk</source>
        <translation>riesgo aceptado</translation>
    </message>
    <message>
        <source>How many winters of a hundred may fall below the reserve before the program advises you to feed or to leave honey. You set it on the page Place.</source>
        <translation>Cuántos inviernos de cada cien pueden bajar del margen de seguridad antes de que el programa recomiende alimentar o dejar miel. Se fija en la página Lugar.</translation>
    </message>
    <message>
        <source>empty weight</source>
        <translation>peso en vacío</translation>
    </message>
    <message>
        <source>The weight of the hive without bees, brood and stores: boxes, frames, floor and roof. Known, it makes every weighing tell more.</source>
        <translation>El peso de la colmena sin abejas, cría ni reservas: cuerpos, cuadros, fondo y tapa. Si se conoce, cada pesada dice más.</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>sopesada</translation>
    </message>
    <message>
        <source>Lifted a little by hand, to feel whether the hive is light, fair or heavy. Rougher than a scale, but quick.</source>
        <translation>Levantada un poco con la mano, para notar si la colmena es ligera, media o pesada. Menos preciso que una báscula, pero rápido.</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>pesada por los dos lados</translation>
    </message>
    <message>
        <source>A hanging scale lifts the hive at one side and then at the other; the two readings added are about its weight.</source>
        <translation>Una báscula de mano levanta la colmena por un lado y después por el otro; las dos lecturas sumadas dan aproximadamente su peso.</translation>
    </message>
    <message>
        <source>%{Combs} and bees</source>
        <translation>Cuadros y abejas</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>operculado</translation>
    </message>
    <message>
        <source>Sealed with wax: ripe honey that keeps. The share of it capped says how much of the stores on a %{comb} is sealed.</source>
        <translation>Sellado con cera: miel madura que se conserva. La parte operculada dice cuánto de las reservas de un cuadro está sellado.</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>néctar sin opercular</translation>
    </message>
    <message>
        <source>Cells with nectar or syrup not sealed yet. Much of it is water, so it counts for less, and late in the year it may never be capped.</source>
        <translation>Celdas con néctar o jarabe aún sin sellar. Gran parte es agua, así que cuenta menos, y tarde en el año puede que no se opercule nunca.</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pan de abejas</translation>
    </message>
    <message>
        <source>Pollen the bees have stored in cells. It feeds the brood and does not count as stores.</source>
        <translation>Polen que las abejas han guardado en celdas. Alimenta a la cría y no cuenta como reservas.</translation>
    </message>
    <message>
        <source>built</source>
        <translation>construido</translation>
    </message>
    <message>
        <source>How much of the space in the frame, or under the bar, the bees have filled with comb.</source>
        <translation>Cuánto del hueco del cuadro, o de debajo de la barra, han llenado las abejas con panal.</translation>
    </message>
    <message>
        <source>face</source>
        <translation>cara</translation>
    </message>
    <message>
        <source>One side of a %{comb}.</source>
        <translation>Un lado del panal.</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>cuadro viejo de cría</translation>
    </message>
    <message>
        <source>Dark comb in which brood was raised for years. Honey in it is left to the bees.</source>
        <translation>Panal oscuro en el que se crió durante años. La miel que tiene se deja a las abejas.</translation>
    </message>
    <message>
        <source>spacing, or bar width</source>
        <translation>distancia o ancho de la barra</translation>
    </message>
    <message>
        <source>From the middle of one %{comb} to the middle of the next. The wider it is, the thicker the comb and the more honey it holds.</source>
        <translation>Del centro de un panal al centro del siguiente. Cuanto mayor es, más grueso es el panal y más miel contiene.</translation>
    </message>
    <message>
        <source>super</source>
        <translation>alza</translation>
    </message>
    <message>
        <source>A box above the brood for honey.</source>
        <translation>Cuerpo sobre la cría para la miel.</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>calles de abejas</translation>
    </message>
    <message>
        <source>Gaps between %{combs} that are filled with bees, counted from above. Half a gap counts as a half.</source>
        <translation>Espacios entre cuadros llenos de abejas, contados desde arriba. Media calle cuenta como media.</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>cuadros cubiertos</translation>
    </message>
    <message>
        <source>%{Combs} covered by bees on both sides. One side covered counts as a half.</source>
        <translation>Cuadros cubiertos de abejas por ambas caras. Una cara cubierta cuenta como medio.</translation>
    </message>
    <message>
        <source>cluster</source>
        <translation>racimo</translation>
    </message>
    <message>
        <source>The ball in which bees keep each other warm in the cold. It can only eat what it touches.</source>
        <translation>La bola en la que las abejas se dan calor unas a otras cuando hace frío. Solo puede comer lo que toca.</translation>
    </message>
    <message>
        <source>Kept small on purpose</source>
        <translation>Mantenida pequeña a propósito</translation>
    </message>
    <message>
        <source>A small colony that is meant to be small, such as one with a spare queen. It is not judged weak for it.</source>
        <translation>Colonia pequeña que debe serlo, como la que guarda una reina de repuesto. No se la considera débil por ello.</translation>
    </message>
    <message>
        <source>follower</source>
        <translation>separador</translation>
    </message>
    <message>
        <source>A board that hangs like a %{comb} and closes off the empty part of a hive.</source>
        <translation>Tabla que cuelga como un cuadro y cierra la parte vacía de la colmena.</translation>
    </message>
    <message>
        <source>robbers</source>
        <translation>pilladoras</translation>
    </message>
    <message>
        <source>Bees of other colonies, or wasps, that carry stores away from a hive too weak to defend itself.</source>
        <translation>Abejas de otras colonias, o avispas, que se llevan las reservas de una colmena demasiado débil para defenderse.</translation>
    </message>
    <message>
        <source>cleansing flights</source>
        <translation>vuelos de limpieza</translation>
    </message>
    <message>
        <source>Short flights on mild winter days; bees do not soil the hive.</source>
        <translation>Vuelos cortos en días suaves de invierno, en los que las abejas se vacían fuera para no ensuciar la colmena.</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>A stiff sugar dough. Bees can eat it in the cold, when syrup is no longer taken.</source>
        <translation>Pasta firme de azúcar. Las abejas pueden comerla con frío, cuando ya no toman jarabe.</translation>
    </message>
    <message>
        <source>The season</source>
        <translation>La temporada</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>fin de la entrada de néctar</translation>
    </message>
    <message>
        <source>The day after which bees here usually bring no more nectar home in autumn.</source>
        <translation>El día a partir del cual las abejas de aquí no suelen traer más néctar en otoño.</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>fin recomendado de la alimentación</translation>
    </message>
    <message>
        <source>The day by which feeding should be over, so that there is time to ripen and seal the food.</source>
        <translation>El día en que la alimentación debería haber terminado, para que haya tiempo de madurar y opercular el alimento.</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>último día para dar jarabe</translation>
    </message>
    <message>
        <source>The last day on which syrup can still be dried by the bees, as the air is here.</source>
        <translation>El último día en que las abejas todavía pueden deshidratar el jarabe, con el aire que hace aquí.</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>ya no toman el jarabe</translation>
    </message>
    <message>
        <source>From this day on it is usually too cold for bees to come down to a feeder.</source>
        <translation>Desde este día suele hacer demasiado frío para que las abejas acudan a un alimentador.</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>corte de puesta</translation>
    </message>
    <message>
        <source>The day the queen usually ceases laying for the winter. Food lasts longest from now on.</source>
        <translation>El día en que la reina suele dejar de poner por el invierno. A partir de ahí el alimento dura más.</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reanudación de la puesta</translation>
    </message>
    <message>
        <source>The day she begins again, often in the middle of winter. Brood must be kept warm, so more is eaten.</source>
        <translation>El día en que vuelve a poner, a menudo en pleno invierno. Hay que dar calor a la cría, así que se come más.</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>desarrollo primaveral</translation>
    </message>
    <message>
        <source>The weeks in spring in which brood grows quickly. Most food is eaten in them, and most colonies that starve do so then.</source>
        <translation>Las semanas de primavera en que la cría crece deprisa. En ellas se come más que nunca, y entonces mueren la mayoría de las colonias que mueren de hambre.</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>comienzo de la floración de primavera</translation>
    </message>
    <message>
        <source>The day from which nectar comes in reliably in spring. Up to it the stores must last.</source>
        <translation>El día a partir del cual el néctar entra con seguridad en primavera. Hasta entonces deben alcanzar las reservas.</translation>
    </message>
    <message>
        <source>dearth</source>
        <translation>escasez</translation>
    </message>
    <message>
        <source>Weeks without nectar although it is warm enough to fly.</source>
        <translation>Semanas sin néctar aunque haga bastante calor para volar.</translation>
    </message>
    <message>
        <source>autumn flow</source>
        <translation>floración de otoño</translation>
    </message>
    <message>
        <source>Nectar that may still come in before winter, beyond the little that weeds and ivy bring every autumn, which is always counted.</source>
        <translation>Néctar que aún puede entrar antes del invierno, además de lo poco que dan cada otoño las malas hierbas y la hiedra, que se cuenta siempre.</translation>
    </message>
    <message>
        <source>give or take</source>
        <translation>más o menos</translation>
    </message>
    <message>
        <source>About two years of three lie no further from the day given than this.</source>
        <translation>En dos de cada tres años, aproximadamente, la fecha no se aparta más que esto del día indicado.</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Probabilidades</translation>
    </message>
    <message>
        <source>simulated winters</source>
        <translation>inviernos simulados</translation>
    </message>
    <message>
        <source>The program lets the same colony live through hundreds or thousands of winters as they may happen here, some mild and some hard, with colonies that eat more or less. “17 of 100” means that it happened in 17 of every hundred of them.</source>
        <translation>El programa hace pasar a la misma colonia cientos o miles de inviernos posibles en este lugar, unos suaves y otros duros, con colonias que comen más o menos. «17 de cada 100» quiere decir que ocurrió en 17 de cada cien de esos inviernos.</translation>
    </message>
    <message>
        <source>Left alone</source>
        <translation>Sin hacer nada</translation>
    </message>
    <message>
        <source>What happens if you do nothing at all from today on.</source>
        <translation>Qué ocurre si desde hoy no se hace absolutamente nada.</translation>
    </message>
    <message>
        <source>in brackets</source>
        <translation>entre paréntesis</translation>
    </message>
    <message>
        <source>29.5 kg (24–34) means most probably near 29.5 kg; what is there, wanted, fed or taken is told to half a kilogram, or a pound. The figures in brackets are the spread: unless it is said otherwise, the truth lies between them in eight cases of ten.</source>
        <translation>29&#xa0;kg (24–34) quiere decir que lo más probable son alrededor de 29&#xa0;kg; lo que hay, hace falta, se da o se quita se dice al medio kilogramo, o a la libra. Las cifras entre paréntesis son el margen de error: si no se dice otra cosa, la verdad está entre ellas en ocho de cada diez casos.</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>margen de error</translation>
    </message>
    <message>
        <source>How far the truth may lie from a figure. A look at every %{comb} narrows it; a glance through a window leaves it wide.</source>
        <translation>Cuánto puede alejarse la verdad de una cifra. Una revisión de cada cuadro lo reduce; un vistazo por una ventana lo deja amplio.</translation>
    </message>
    <message>
        <source>SD</source>
        <translation>desv. típica</translation>
    </message>
    <message>
        <source>Standard deviation, a measure of spread. About two cases of three lie within one SD of the figure, nineteen of twenty within two.</source>
        <translation>Desviación típica (o desviación estándar), una medida del margen de error. Alrededor de dos de cada tres casos están a menos de una desviación de la cifra, y diecinueve de cada veinte a menos de dos.</translation>
    </message>
    <message>
        <source>nine in ten</source>
        <translation>nueve de cada diez</translation>
    </message>
    <message>
        <source>A band so wide that nine of ten cases lie in it.</source>
        <translation>Una franja tan ancha que en ella caben nueve de cada diez casos.</translation>
    </message>
    <message>
        <source>eighty of a hundred</source>
        <translation>ochenta de cada cien</translation>
    </message>
    <message>
        <source>A band so wide that eight of ten winters lie in it; one of ten lies above and one below.</source>
        <translation>Una franja tan ancha que en ella caben ocho de cada diez inviernos; uno de cada diez queda por encima y otro por debajo.</translation>
    </message>
    <message>
        <source>percentile</source>
        <translation>percentil</translation>
    </message>
    <message>
        <source>One case of ten lies below the 10th percentile, nine of ten lie below the 90th.</source>
        <translation>Uno de cada diez casos está por debajo del percentil 10, y nueve de cada diez por debajo del 90.</translation>
    </message>
    <message>
        <source>Another look</source>
        <translation>Otra revisión</translation>
    </message>
    <message>
        <source>Whether opening the hive again could change the advice, and which look would tell most.</source>
        <translation>Si abrir otra vez la colmena podría cambiar la recomendación, y qué clase de revisión diría más.</translation>
    </message>
    <message>
        <source>Following and looking back</source>
        <translation>Seguir el invierno y mirar atrás</translation>
    </message>
    <message>
        <source>On course</source>
        <translation>Según lo previsto</translation>
    </message>
    <message>
        <source>What has been weighed and seen since autumn agrees with the forecast, and the stores will last.</source>
        <translation>Lo pesado y lo visto desde otoño coincide con la previsión, y las reservas alcanzarán.</translation>
    </message>
    <message>
        <source>glance</source>
        <translation>vistazo</translation>
    </message>
    <message>
        <source>What can be seen without taking the hive apart: flight, the cluster from above, stores through a window.</source>
        <translation>Lo que se puede ver sin desmontar la colmena: vuelo, el racimo desde arriba, reservas por una ventana.</translation>
    </message>
    <message>
        <source>contradicts every simulated winter</source>
        <translation>contradice todos los inviernos simulados</translation>
    </message>
    <message>
        <source>No winter that may happen here fits this reading. Most often something was weighed that is not bees or food, or something was done and not written down.</source>
        <translation>Ningún invierno posible aquí encaja con esta lectura. Casi siempre se pesó algo que no son abejas ni alimento, o se hizo algo que no se anotó.</translation>
    </message>
    <message>
        <source>mean score</source>
        <translation>puntuación media</translation>
    </message>
    <message>
        <source>How far forecasts of past winters were from what happened, on average, in the unit of the stores. Smaller is better. A forecast that was sure and wrong loses most.</source>
        <translation>Cuánto se apartaron, de media, las previsiones de inviernos pasados de lo que ocurrió, en la unidad de las reservas. Cuanto menor, mejor. La que más pierde es una previsión segura y equivocada.</translation>
    </message>
    <message>
        <source>handbook figure</source>
        <translation>cifra de manual</translation>
    </message>
    <message>
        <source>The stores that printed advice for your region gives for every colony alike. The program&apos;s forecasts are held against it.</source>
        <translation>Las reservas que las recomendaciones impresas para su región dan por igual a todas las colonias. Con ella se comparan las previsiones del programa.</translation>
    </message>
    <message>
        <source>learned</source>
        <translation>aprendido</translation>
    </message>
    <message>
        <source>What your own past winters told about how much these bees eat and how fast they die. It corrects the forecast where you want it to.</source>
        <translation>Lo que sus propios inviernos pasados enseñaron sobre cuánto comen estas abejas y a qué ritmo mueren. Corrige la previsión donde usted lo quiera.</translation>
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
        <translation>%2, %1: %3; no se sabe nada más.</translation>
    </message>
    <message>
        <source>%2, %1: %3; counts for %4 of 100 parts.</source>
        <translation>%2, %1: %3; cuenta %4 partes de cada 100.</translation>
    </message>
    <message>
        <source>Of a comb: the area of its capped and open cells times what a square decimetre of sealed comb holds; open nectar counts as %1 of that. Each comb&apos;s share stands on the page In the hive.</source>
        <translation>De un panal: la superficie de sus celdas operculadas y sin opercular, por lo que contiene un decímetro cuadrado de panal sellado; el néctar sin opercular cuenta %1 de eso. La parte de cada panal está en la página «En la colmena».</translation>
    </message>
    <message>
        <source>Of a weighing: the reading less the empty hive, taken as %1, and less its bees and bee bread.</source>
        <translation>De una pesada: la lectura, menos la colmena vacía, tomada como %1, y menos sus abejas y el pan de abejas.</translation>
    </message>
    <message>
        <source>Each counts the more the more exact it is: by one over its variance.</source>
        <translation>Cada una cuenta tanto más cuanto más exacta es: por el inverso de su varianza.</translation>
    </message>
    <message>
        <source>Weighings share the error of the empty weight: all of them together are no surer than that.</source>
        <translation>Las pesadas comparten el error del peso en vacío: todas juntas no son más seguras que él.</translation>
    </message>
    <message>
        <source>Lifts of one side lean the same way each time, and so do lifts by hand: many are hardly surer than one.</source>
        <translation>Las pesadas por un lado fallan cada vez hacia el mismo sentido, y también los sopesados: muchas apenas son más seguras que una.</translation>
    </message>
    <message>
        <source>Stores on %1: %2</source>
        <translation>Reservas el %1: %2</translation>
    </message>
    <message>
        <source>From %1 until spring forage starts the bees eat %2 in %3 simulated winters.</source>
        <translation>Desde el %1 hasta que comienza la floración de primavera, las abejas comen %2 en %3 inviernos simulados.</translation>
    </message>
    <message>
        <source>From %1 until spring forage starts the bees eat %2 in %3 simulated winters: on average %4 the adult bees, %5 to warm brood, %6 to feed it.</source>
        <translation>Desde el %1 hasta que comienza la floración de primavera, las abejas comen %2 en %3 inviernos simulados: de media %4 las abejas adultas, %5 para calentar la cría y %6 para alimentarla.</translation>
    </message>
    <message>
        <source>Before spring forage starts, mostly in early spring, they bring in %1 on average.</source>
        <translation>Antes de que comience la floración de primavera, sobre todo a principios de primavera, traen %1 de media.</translation>
    </message>
    <message>
        <source>Adult bees eat for the heat their cluster loses: the colder the more, and the less for each bee the larger the cluster, up to %1 of bees.</source>
        <translation>Las abejas adultas comen por el calor que pierde su racimo: tanto más cuanto más frío hace, y tanto menos por abeja cuanto mayor es el racimo, hasta %1 de abejas.</translation>
    </message>
    <message>
        <source>A gram of honey holds %1 kilojoules.</source>
        <translation>Un gramo de miel contiene %1 kilojulios.</translation>
    </message>
    <message>
        <source>Brood is kept at %1, and each worker reared takes %2 of honey.</source>
        <translation>La cría se mantiene a %1, y cada obrera criada cuesta %2 de miel.</translation>
    </message>
    <message>
        <source>Bees that emerge beside little brood live through the winter, those that emerge beside much of it die within weeks: colonies shrink from August to November.</source>
        <translation>Las abejas que nacen con poca cría alrededor viven todo el invierno; las que nacen con mucha mueren en pocas semanas: las colonias menguan de agosto a noviembre.</translation>
    </message>
    <message>
        <source>Weather, heat, brood and deaths of bees differ from winter to winter as they do in nature.</source>
        <translation>El tiempo, el calor, la cría y las muertes de abejas varían de un invierno a otro como en la naturaleza.</translation>
    </message>
    <message>
        <source>With so much in the hive on %1 the stores fall below the reserve of %2 before spring forage starts in no more than %3 of 100 simulated winters. Reserve and risk are yours to set, in the yard&apos;s Place.</source>
        <translation>Con tanto en la colmena el %1, las reservas bajan del margen de seguridad de %2 antes de que comience la floración de primavera en no más de %3 de cada 100 inviernos simulados. El margen de seguridad y el riesgo los fija usted, en el Lugar del colmenar.</translation>
    </message>
    <message>
        <source>They are about %1 bees.</source>
        <translation>Son unas %1 abejas.</translation>
    </message>
    <message>
        <source>Needed on %1 to last until spring forage starts: %2</source>
        <translation>Hace falta el %1 para alcanzar hasta que comience la floración de primavera: %2</translation>
    </message>
    <message>
        <source>With so much in the hive on %1, the day winter begins for it, the stores fall below %2 before spring forage starts in no more than %3 of 100 simulated winters.</source>
        <translation>Con tanto en la colmena el %1, el día en que empieza para ella el invierno, las reservas bajan de %2 antes de que comience la floración de primavera en no más de %3 de cada 100 inviernos simulados.</translation>
    </message>
    <message>
        <source>Until then about %1 are eaten and %2 of nectar found, as stores.</source>
        <translation>Hasta entonces se comen alrededor de %1 y se encuentran %2 de néctar, en reservas.</translation>
    </message>
    <message>
        <source>With the empty hive, taken as %1, its bees, brood and bee bread it then weighs %2.</source>
        <translation>Con la colmena vacía, tomada como %1, y sus abejas, cría y pan de abejas, pesa entonces %2.</translation>
    </message>
    <message>
        <source>Wanted on %1: %2 of stores</source>
        <translation>Hace falta el %1: %2 de reservas</translation>
    </message>
    <message>
        <source>The day was given in the yard&apos;s Place and not derived from the climate.</source>
        <translation>El día se indicó en el Lugar del colmenar y no se calculó del clima.</translation>
    </message>
    <message>
        <source>The day the climate gives was moved just far enough to follow a date given in the yard&apos;s Place.</source>
        <translation>El día que da el clima se desplazó lo justo para quedar detrás de una fecha indicada en el Lugar del colmenar.</translation>
    </message>
    <message>
        <source>Spring forage starts: %1</source>
        <translation>Comienzo de la floración de primavera: %1</translation>
    </message>
    <message>
        <source>A warm or a cold spring moves it: in every simulated winter spring forage starts on a day of its own.</source>
        <translation>Una primavera cálida o fría lo desplaza: en cada invierno simulado la floración de primavera comienza en un día distinto.</translation>
    </message>
    <message>
        <source>Spring forage starts: around %1 (%2 to %3 in 80 of 100 winters)</source>
        <translation>Comienzo de la floración de primavera: hacia el %1 (del %2 al %3 en 80 de cada 100 inviernos)</translation>
    </message>
    <message>
        <source>From the %{combs} or seams the bees cover, or the number given, carried to %1 by the model.</source>
        <translation>A partir de los cuadros o calles que cubren las abejas, o del número indicado, llevado al %1 por el modelo.</translation>
    </message>
    <message>
        <source>Bees on %1: %2</source>
        <translation>Abejas el %1: %2</translation>
    </message>
    <message>
        <source>So wide is the range in which 80 of 100 likely values of what is missing or spare lie.</source>
        <translation>Así de ancho es el intervalo en el que están 80 de cada 100 valores probables de lo que falta o sobra.</translation>
    </message>
    <message>
        <source>What is missing or spare, known now within %1</source>
        <translation>Lo que falta o sobra, conocido ahora con un margen de error de %1</translation>
    </message>
    <message>
        <source>It is what would be left of it after that look, given how exact such a look is.</source>
        <translation>Es lo que quedaría de él después de esa revisión, según lo exacta que es una revisión así.</translation>
    </message>
    <message>
        <source>What is missing or spare, known after another look within %1</source>
        <translation>Lo que falta o sobra, conocido después de otra revisión con un margen de error de %1</translation>
    </message>
    <message>
        <source>Counted over %1 simulated winters: those in which less than the reserve of %2 is left on some day before spring forage starts.</source>
        <translation>Contado en %1 inviernos simulados: aquellos en los que algún día antes de la floración de primavera queda menos que el margen de seguridad de %2.</translation>
    </message>
    <message>
        <source>Counted over %1 simulated winters: those in which nothing is left on some day before spring forage starts.</source>
        <translation>Contado en %1 inviernos simulados: aquellos en los que algún día antes de la floración de primavera no queda nada.</translation>
    </message>
    <message>
        <source>Each begins with other stores, as widely spread as they are known: %1.</source>
        <translation>Cada uno empieza con otras reservas, repartidas según lo bien que se conocen: %1.</translation>
    </message>
    <message>
        <source>They are the same winters for everything that can be done, so the figures can be compared.</source>
        <translation>Son los mismos inviernos para todo lo que se puede hacer, así que las cifras se pueden comparar.</translation>
    </message>
    <message>
        <source>That is %1; in the others so much or more is left.</source>
        <translation>Eso es %1; en los demás queda eso o más.</translation>
    </message>
    <message>
        <source>%2 or more left, if you do as advised: %1 simulated winters</source>
        <translation>Quedan %2 o más, si se sigue la recomendación: %1 inviernos simulados</translation>
    </message>
    <message>
        <source>%2 or more left, left alone: %1 simulated winters</source>
        <translation>Quedan %2 o más, sin hacer nada: %1 inviernos simulados</translation>
    </message>
    <message>
        <source>Runs out, if you do as advised: %1 simulated winters</source>
        <translation>Se agota, si se sigue la recomendación: %1 inviernos simulados</translation>
    </message>
    <message>
        <source>Runs out, left alone: %1 simulated winters</source>
        <translation>Se agota, sin hacer nada: %1 inviernos simulados</translation>
    </message>
    <message>
        <source>%1 wide and %2 high</source>
        <translation>%1 de ancho y %2 de alto</translation>
    </message>
    <message>
        <source>%1 wide at the bar, %2 below, and %3 high</source>
        <translation>%1 de ancho en la barra, %2 abajo y %3 de alto</translation>
    </message>
    <message>
        <source>seen through a window</source>
        <translation>visto por una ventana</translation>
    </message>
    <message>
        <source>one face traced on a photograph</source>
        <translation>una cara trazada sobre una foto</translation>
    </message>
    <message>
        <source>one face seen</source>
        <translation>vista una cara</translation>
    </message>
    <message>
        <source>both faces traced on a photograph</source>
        <translation>ambas caras trazadas sobre una foto</translation>
    </message>
    <message>
        <source>both faces seen</source>
        <translation>vistas ambas caras</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The comb is %1, built to %2 of 100 parts, %3 from its neighbours&apos; middle. Sealed from edge to edge on both faces it would hold %4: honey between the cell bottoms and the cappings, less the wax.</source>
        <translation>El panal mide %1, está construido en %2 de cada 100 partes y a %3 del centro de sus vecinos. Sellado de borde a borde por ambas caras contendría %4: la miel entre el fondo de las celdas y los opérculos, menos la cera.</translation>
    </message>
    <message>
        <source>It was not looked at and is taken as the mean of the combs that were; how far that may be off is known only roughly.</source>
        <translation>No se examinó y se toma como la media de los que sí se examinaron; cuánto puede fallar eso solo se sabe de forma aproximada.</translation>
    </message>
    <message>
        <source>Capped are %1 of 100 parts: %2.</source>
        <translation>Operculadas están %1 de cada 100 partes: %2.</translation>
    </message>
    <message>
        <source>Open nectar is on %1 of 100 parts. It is thinner and less deep than sealed honey and counts as %2 of it: %3.</source>
        <translation>Hay néctar sin opercular en %1 de cada 100 partes. Es menos denso y menos profundo que la miel sellada y cuenta %2 de ella: %3.</translation>
    </message>
    <message>
        <source>%1: one standard deviation is %2 of 100 parts, from the judged area and from how deep cells are filled.</source>
        <translation>%1: una desviación típica es %2 de cada 100 partes, por la superficie estimada y por lo llenas que están las celdas.</translation>
    </message>
    <message>
        <source>That is the target less what will be there when winter begins: about %1 now, %2 wanted from today on.</source>
        <translation>Es el objetivo menos lo que habrá cuando empiece el invierno: alrededor de %1 ahora; hacen falta %2 desde hoy.</translation>
    </message>
    <message>
        <source>A kilogram of white sugar fed as %1 becomes %2 kg of ripe stores: the water goes down to 18 parts of 100, and driving it off costs the bees food.</source>
        <translation>Un kilogramo de azúcar blanco dado como %1 se convierte en %2 kg de reservas maduras: el agua baja a 18 partes de cada 100, y evaporarla les cuesta alimento a las abejas.</translation>
    </message>
    <message>
        <source>%1 of sugar in %2 of water make %3 of syrup, which become %4 of stores.</source>
        <translation>%1 de azúcar en %2 de agua dan %3 de jarabe, que se convierten en %4 de reservas.</translation>
    </message>
    <message>
        <source>White sugar to feed: %1</source>
        <translation>Azúcar blanco que hay que dar: %1</translation>
    </message>
    <message>
        <source>Fondant is for what can no longer be had as syrup.</source>
        <translation>El candi es para lo que ya no se puede dar como jarabe.</translation>
    </message>
    <message>
        <source>Fondant to feed: %1</source>
        <translation>Candi que hay que dar: %1</translation>
    </message>
    <message>
        <source>The rule: the first day on which the air&apos;s daily mean of usual years is below %1. Later syrup is no longer taken and ripened for certain.</source>
        <translation>La regla: el primer día en que la temperatura media del aire en años normales baja de %1. Después ya no es seguro que tomen y maduren el jarabe.</translation>
    </message>
    <message>
        <source>A warm or a cold autumn moves it by some %1 days.</source>
        <translation>Un otoño cálido o frío lo desplaza unos %1 días.</translation>
    </message>
    <message>
        <source>Last day for syrup: %1</source>
        <translation>Último día para dar jarabe: %1</translation>
    </message>
    <message>
        <source>%1 winters were simulated from %2 on. What was seen since makes those that fit it count more; as many as %3 equal ones are left.</source>
        <translation>Se simularon %1 inviernos desde el %2. Lo observado desde entonces hace que cuenten más los que encajan; quedan tantos como %3 iguales.</translation>
    </message>
    <message>
        <source>Weighed or judged on %1, as stores: %2.</source>
        <translation>Pesado o estimado el %1, en reservas: %2.</translation>
    </message>
    <message>
        <source>Nothing was weighed since; the figure rests on the autumn&apos;s forecast alone.</source>
        <translation>Desde entonces no se pesó nada; la cifra se apoya solo en la previsión de otoño.</translation>
    </message>
    <message>
        <source>A reading becomes stores when the hive&apos;s own weight, its bees and its bee bread are taken off. A later reading teaches what the hive itself weighs, and then earlier ones are read anew.</source>
        <translation>Una lectura se convierte en reservas al descontar el peso de la propia colmena, sus abejas y su pan de abejas. Una lectura posterior enseña cuánto pesa la colmena en sí, y entonces las anteriores se leen de nuevo.</translation>
    </message>
    <message>
        <source>Left on %1: %2</source>
        <translation>Quedan el %1: %2</translation>
    </message>
    <message>
        <source>The forecast of %1, before anything was seen since: stores of %2 with one standard deviation of %3, less what is eaten, with the feeds and harvests that were planned then.</source>
        <translation>La previsión del %1, antes de que se observara nada: reservas de %2 con una desviación típica de %3, menos lo que se come, con los aportes de alimento y cosechas previstos entonces.</translation>
    </message>
    <message>
        <source>Expected in autumn for %1: %2</source>
        <translation>Esperado en otoño para el %1: %2</translation>
    </message>
    <message>
        <source>Counted over the winters: those in which less than the reserve of %1 is left on some day before spring forage starts.</source>
        <translation>Contado en los inviernos: aquellos en los que algún día antes de la floración de primavera queda menos que el margen de seguridad de %1.</translation>
    </message>
    <message>
        <source>Counted over the winters: those in which nothing is left on some day before spring forage starts.</source>
        <translation>Contado en los inviernos: aquellos en los que algún día antes de la floración de primavera no queda nada.</translation>
    </message>
    <message>
        <source>As it was forecast on %1, before anything was seen since.</source>
        <translation>Como se previó el %1, antes de que se observara nada.</translation>
    </message>
    <message>
        <source>Falls below the reserve, as forecast in autumn: %1 winters</source>
        <translation>Baja del margen de seguridad, según la previsión de otoño: %1 inviernos</translation>
    </message>
    <message>
        <source>Falls below the reserve, if nothing is done: %1 winters</source>
        <translation>Baja del margen de seguridad, si no se hace nada: %1 inviernos</translation>
    </message>
    <message>
        <source>Runs out, as forecast in autumn: %1 winters</source>
        <translation>Se agota, según la previsión de otoño: %1 inviernos</translation>
    </message>
    <message>
        <source>Runs out, if nothing is done: %1 winters</source>
        <translation>Se agota, si no se hace nada: %1 inviernos</translation>
    </message>
    <message>
        <source>With %3 more in the hive it falls below %1 in no more than %2 of 100 winters that fit what was seen.</source>
        <translation>Con %3 más en la colmena, baja de %1 en no más de %2 de cada 100 inviernos que encajan con lo observado.</translation>
    </message>
    <message>
        <source>Syrup is still taken; its visits stand on the page Feeding.</source>
        <translation>Todavía toman jarabe; sus visitas están en la página «Alimentación».</translation>
    </message>
    <message>
        <source>Sugar to feed: %1, for %2 of stores</source>
        <translation>Azúcar que hay que dar: %1, para %2 de reservas</translation>
    </message>
    <message>
        <source>One visit with no more than %1; what is still missing then is told by the next weighing.</source>
        <translation>Una visita con no más de %1; lo que falte entonces lo dirá la pesada siguiente.</translation>
    </message>
    <message>
        <source>Fondant to lay on: %1, for %2 of stores</source>
        <translation>Candi que hay que poner: %1, para %2 de reservas</translation>
    </message>
    <message>
        <source>A week before %1, when bees that eat much (4 winters of 5 eat less) come down to %2.</source>
        <translation>Una semana antes del %1, cuando las abejas que comen mucho (en 4 de cada 5 inviernos comen menos) llegan a %2.</translation>
    </message>
    <message>
        <source>Today: it cannot wait, or is taken best now.</source>
        <translation>Hoy: no puede esperar, o es cuando mejor lo toman.</translation>
    </message>
    <message>
        <source>Feed on %1</source>
        <translation>Alimentar el %1</translation>
    </message>
    <message>
        <source>On that day half of the winters that fit what was seen are below the reserve of %1.</source>
        <translation>Ese día, la mitad de los inviernos que encajan con lo observado están por debajo del margen de seguridad de %1.</translation>
    </message>
    <message>
        <source>On that day a tenth of the winters that fit what was seen are below the reserve of %1.</source>
        <translation>Ese día, uno de cada diez inviernos que encajan con lo observado está por debajo del margen de seguridad de %1.</translation>
    </message>
    <message>
        <source>Below the reserve: %1</source>
        <translation>Por debajo del margen de seguridad: %1</translation>
    </message>
    <message>
        <source>Fondant is laid on one visit at a time, and the next follows a weighing: before the visit that is planned, or two weeks after that of today.</source>
        <translation>El candi se pone en cada visita, y la siguiente espera a una pesada: antes de la visita prevista, o dos semanas después de la de hoy.</translation>
    </message>
    <message>
        <source>Weigh on %1</source>
        <translation>Pesar el %1</translation>
    </message>
    <message>
        <source>Were the hive weighed on that day, its reading would change whether to feed in %1 of 100 cases, told from the winters that fit what was seen.</source>
        <translation>Si la colmena se pesara ese día, su lectura cambiaría si hay que alimentar o no en %1 de cada 100 casos, según los inviernos que encajan con lo observado.</translation>
    </message>
    <message>
        <source>It is the first day on which a weighing is worth it; before, it would change too seldom what to do.</source>
        <translation>Es el primer día en que merece la pena pesar; antes cambiaría muy pocas veces lo que hay que hacer.</translation>
    </message>
    <message>
        <source>A weighing on %1 changes what to do in %2 of 100 cases</source>
        <translation>Una pesada el %1 cambia lo que hay que hacer en %2 de cada 100 casos</translation>
    </message>
    <message>
        <source>Weigh again by %1</source>
        <translation>Volver a pesar a más tardar el %1</translation>
    </message>
    <message>
        <source>What the colony was seen to eat makes winters with an early or a late spring count more, so colonies of one yard may differ.</source>
        <translation>Lo que se vio comer a la colonia hace que cuenten más los inviernos con primavera temprana o tardía, así que las colonias de un mismo colmenar pueden diferir.</translation>
    </message>
    <message>
        <source>What stays is never below what the colony should winter on, nor below what is usual here; what comes off are whole supers and whole outer %{combs}.</source>
        <translation>Lo que queda nunca es menos de lo que la colonia necesita para invernar ni de lo habitual aquí; lo que se quita son alzas enteras y cuadros enteros de los extremos.</translation>
    </message>
    <message>
        <source>About %1 are in the hive, %2 are needed.</source>
        <translation>Hay alrededor de %1 en la colmena y hacen falta %2.</translation>
    </message>
    <message>
        <source>To spare on %1: %2</source>
        <translation>Excedente el %1: %2</translation>
    </message>
    <message>
        <source>The super is for people: its honey was not counted with what the bees have, and its %{combs} hold no brood.</source>
        <translation>El alza es para consumo humano: su miel no se contó con lo que tienen las abejas, y sus cuadros no tienen cría.</translation>
    </message>
    <message>
        <source>A comb&apos;s honey is its area times what a square decimetre of sealed comb holds.</source>
        <translation>La miel de un panal es su superficie por lo que contiene un decímetro cuadrado de panal sellado.</translation>
    </message>
    <message>
        <source>Honey in the super: %1</source>
        <translation>Miel en el alza: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} that hold no brood, are capped enough, took no syrup and are not of the old brood nest weigh together no more than what is to spare.</source>
        <translation>
            <numerusform>%n cuadro que no tiene cría, está bastante operculado, no tomó jarabe y no es del nido viejo de cría no pesa más que el excedente.</numerusform>
            <numerusform>%n cuadros que no tienen cría, están bastante operculados, no tomaron jarabe y no son del nido viejo de cría no pesan juntos más que el excedente.</numerusform>
        </translation>
    </message>
    <message>
        <source>To spare are %1.</source>
        <translation>El excedente es de %1.</translation>
    </message>
    <message>
        <source>Honey in the %{combs} that may come off: %1</source>
        <translation>Miel en los cuadros que se pueden quitar: %1</translation>
    </message>
    <message>
        <source>%1 to %2, which lacks stores.</source>
        <translation>%1 a %2, a la que le faltan reservas.</translation>
    </message>
    <message>
        <source>%{Combs} within the yard come before sugar; a colony gives no more than it can spare at the risk you accept.</source>
        <translation>Los cuadros del propio colmenar van antes que el azúcar; una colonia no da más de lo que le sobra con el riesgo que usted acepta.</translation>
    </message>
    <message>
        <source>Honey in %{combs} to give: %1</source>
        <translation>Miel en los cuadros que puede dar: %1</translation>
    </message>
    <message>
        <source>In 80 of 100 cases the truth lies between the two figures in brackets, in 10 below, in 10 above.</source>
        <translation>En 80 de cada 100 casos la verdad está entre las dos cifras entre paréntesis; en 10, por debajo, y en 10, por encima.</translation>
    </message>
    <message>
        <source>Were other winters drawn, it would differ by some %1 of 100.</source>
        <translation>Con otros inviernos al azar variaría en unos %1 de cada 100.</translation>
    </message>
    <message>
        <source>The rule: the first day from which the air&apos;s daily mean of usual years stays above %1 and the day is longer than %2 hours.</source>
        <translation>La regla: el primer día desde el que la temperatura media del aire en años normales se mantiene por encima de %1 y el día dura más de %2 horas.</translation>
    </message>
    <message>
        <source>A kilogram of fondant becomes %1 kg of stores; kept low on purpose.</source>
        <translation>Un kilogramo de candi se convierte en %1 kg de reservas; cifra baja a propósito.</translation>
    </message>
    <message>
        <source>The reserve is yours to set, in the yard&apos;s Place: what you wish to be left at the worst moment before spring forage starts.</source>
        <translation>El margen de seguridad lo fija usted, en el Lugar del colmenar: lo que desea que quede en el peor momento antes de la floración de primavera.</translation>
    </message>
    <message>
        <source>You accept that less is left in %1 of 100 winters.</source>
        <translation>Usted acepta que quede menos en %1 de cada 100 inviernos.</translation>
    </message>
    <message>
        <source>Reserve: %1</source>
        <translation>Margen de seguridad: %1</translation>
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
        <translation>azúcar %1</translation>
    </message>
    <message>
        <source>water %1</source>
        <translation>agua %1</translation>
    </message>
    <message>
        <source>heights stand for weights</source>
        <translation>las alturas son pesos</translation>
    </message>
    <message>
        <source>lid on tight</source>
        <translation>tapa bien cerrada</translation>
    </message>
    <message>
        <source>syrup under a float</source>
        <translation>jarabe bajo un flotador</translation>
    </message>
    <message>
        <source>the bees come up inside</source>
        <translation>las abejas suben por dentro</translation>
    </message>
    <message>
        <source>over the bees, not beside them</source>
        <translation>sobre las abejas, no al lado</translation>
    </message>
    <message>
        <source>narrow entrance</source>
        <translation>piquera reducida</translation>
    </message>
    <message>
        <source>stores touch the bees</source>
        <translation>las reservas tocan a las abejas</translation>
    </message>
    <message>
        <source>empty combs between: out of reach</source>
        <translation>cuadros vacíos en medio: no las alcanzan</translation>
    </message>
    <message>
        <source>snow on top may stay</source>
        <translation>la nieve de encima puede quedarse</translation>
    </message>
    <message>
        <source>so may snow around it</source>
        <translation>también la de alrededor</translation>
    </message>
    <message>
        <source>entrance free, mouse guard in front</source>
        <translation>piquera libre, con rejilla contra ratones</translation>
    </message>
    <message>
        <source>four of eight fields are capped</source>
        <translation>cuatro de ocho campos operculados</translation>
    </message>
    <message>
        <source>with both faces like this:</source>
        <translation>con ambas caras así:</translation>
    </message>
    <message>
        <source>a quarter: %1</source>
        <translation>un cuarto: %1</translation>
    </message>
    <message>
        <source>half: %1</source>
        <translation>la mitad: %1</translation>
    </message>
    <message>
        <source>three quarters: %1</source>
        <translation>tres cuartos: %1</translation>
    </message>
    <message>
        <source>capped honey</source>
        <translation>miel operculada</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>néctar sin opercular</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pan de abejas</translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>cría operculada</translation>
    </message>
    <message>
        <source>grub and eggs</source>
        <translation>larva y huevos</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>cría</translation>
    </message>
    <message>
        <source>empty cells</source>
        <translation>celdas vacías</translation>
    </message>
    <message>
        <source>five seams</source>
        <translation>cinco calles</translation>
    </message>
    <message>
        <source>about %1 bees on combs of %2</source>
        <translation>unas %1 abejas en panales de %2</translation>
    </message>
    <message>
        <source>a palm, %1 by %1</source>
        <translation>una palma, %1 por %1</translation>
    </message>
    <message>
        <source>%1 cells of one face</source>
        <translation>%1 celdas de una cara</translation>
    </message>
    <message>
        <source>every comb</source>
        <translation>cada cuadro</translation>
    </message>
    <message>
        <source>honey off</source>
        <translation>miel fuera</translation>
    </message>
    <message>
        <source>weigh</source>
        <translation>pesar</translation>
    </message>
    <message>
        <source>last feed down</source>
        <translation>fin de la alimentación</translation>
    </message>
    <message>
        <source>heft</source>
        <translation>sopesar</translation>
    </message>
    <message>
        <source>cold, no brood</source>
        <translation>frío, sin cría</translation>
    </message>
    <message>
        <source>heft or weigh</source>
        <translation>sopesar o pesar</translation>
    </message>
    <message>
        <source>brood again</source>
        <translation>otra vez cría</translation>
    </message>
    <message>
        <source>first nectar</source>
        <translation>primer néctar</translation>
    </message>
    <message>
        <source>light</source>
        <translation>ligera</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>media</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>what is wanted that day</source>
        <translation>lo que hace falta ese día</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>a share</comment>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>the whole hive</source>
        <translation>la colmena entera</translation>
    </message>
    <message>
        <source>keep it closed</source>
        <translation>no abrir</translation>
    </message>
    <message>
        <source>the lid alone</source>
        <translation>solo la tapa</translation>
    </message>
    <message>
        <source>half a minute</source>
        <translation>medio minuto</translation>
    </message>
    <message>
        <source>a full look</source>
        <translation>revisión completa</translation>
    </message>
    <message>
        <source>1. aside, in the shade</source>
        <translation>1. a un lado, a la sombra</translation>
    </message>
    <message>
        <source>2. then one by one</source>
        <translation>2. después, uno por uno</translation>
    </message>
    <message>
        <source>the nest last: eggs are enough, leave the queen be</source>
        <translation>el nido al final: bastan los huevos, deje en paz a la reina</translation>
    </message>
    <message>
        <source>Only my hives</source>
        <translation>Solo mis colmenas</translation>
    </message>
    <message>
        <source>Every hive</source>
        <translation>Todas las colmenas</translation>
    </message>
    <message>
        <source>Sources: %1.</source>
        <translation>Fuentes: %1.</translation>
    </message>
    <message>
        <source>When to look, and why</source>
        <translation>Cuándo revisar y por qué</translation>
    </message>
    <message>
        <source>Hefting and weighing</source>
        <translation>Sopesar y pesar</translation>
    </message>
    <message>
        <source>What a comb holds</source>
        <translation>Cuánto contiene un panal</translation>
    </message>
    <message>
        <source>What is in the cells</source>
        <translation>Qué hay en las celdas</translation>
    </message>
    <message>
        <source>Counting bees and brood</source>
        <translation>Contar abejas y cría</translation>
    </message>
    <message>
        <source>Opening a hive gently</source>
        <translation>Abrir la colmena con calma</translation>
    </message>
    <message>
        <source>Mixing and giving feed</source>
        <translation>Preparar y dar el alimento</translation>
    </message>
    <message>
        <source>Checks in winter</source>
        <translation>Comprobaciones en invierno</translation>
    </message>
    <message>
        <source>Hive</source>
        <translation>Colmena</translation>
    </message>
    <message>
        <source>Sugar to water</source>
        <translation>Azúcar por agua</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Azúcar</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Se obtiene</translation>
    </message>
    <message>
        <source>Becomes stores of</source>
        <translation>Reservas que resultan</translation>
    </message>
    <message>
        <source>Ratios here are by weight, sugar to water. Two cups of sugar on one of water are only %1 to 1 by weight: use a scale.</source>
        <translation>Las proporciones aquí son en peso, azúcar por agua. Dos tazas de azúcar por una de agua son solo %1 por 1 en peso: use una báscula.</translation>
    </message>
    <message>
        <source>The same sugar with less and less water: 1 to 1, 3 to 2 and 2 to 1 by weight.</source>
        <translation>El mismo azúcar con cada vez menos agua: 1 por 1, 3 por 2 y 2 por 1 en peso.</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mezclar</translation>
    </message>
    <message>
        <source>Stir white granulated sugar into water of %1 until it is clear. Never boil, no acid, no brown or icing sugar. Give it lukewarm.</source>
        <translation>Disuelva azúcar blanco granulado en agua a %1 hasta que quede claro. Nunca lo hierva; ni ácidos, ni azúcar moreno, ni azúcar glas. Delo tibio.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Cuál</translation>
    </message>
    <message>
        <source>For winter stores 3:2 while five weeks of warm days remain before the last day for syrup, then 2:1: less water to drive off. 1:1 only helps a small colony along.</source>
        <translation>Para las reservas de invierno, 3:2 mientras queden cinco semanas de días cálidos antes del último día para dar jarabe; después, 2:1, con menos agua que evaporar. El 1:1 solo sirve para sostener a una colonia pequeña.</translation>
    </message>
    <message>
        <source>A feeder over the %{combs} and under the lid: bees come up inside, nothing gets in from outside, the entrance is narrow.</source>
        <translation>Un alimentador sobre los cuadros y bajo la tapa: las abejas suben por dentro, desde fuera no entra nada y la piquera está reducida.</translation>
    </message>
    <message>
        <source>Feeder</source>
        <translation>Alimentador</translation>
    </message>
    <message>
        <source>Inside and above the bees, tight against those from outside, with a float so that none drown. Supers whose honey is for people come off first.</source>
        <translation>Dentro y encima de las abejas, cerrado a las de fuera y con un flotador para que ninguna se ahogue. Las alzas cuya miel es para consumo humano se quitan antes.</translation>
    </message>
    <message>
        <source>Robbers and wasps</source>
        <translation>Pilladoras y avispas</translation>
    </message>
    <message>
        <source>Feed all colonies the same evening, spill nothing, narrow the entrance to %1 by %2 at most, for a weak colony to one bee.</source>
        <translation>Alimente todas las colonias el mismo día al atardecer, no derrame nada y reduzca la piquera a %1 por %2 como mucho; en una colonia débil, al paso de una abeja.</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Syrup needs %1 weeks to be sealed, and under %2 it is hardly taken. The page Feeding says the day for your yard.</source>
        <translation>El jarabe necesita %1 semanas hasta quedar operculado, y por debajo de %2 apenas lo toman. La página «Alimentación» dice el día para su colmenar.</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Candi</translation>
    </message>
    <message>
        <source>In winter the only feed: on the bars over the cluster so that it touches the bees, covered, at most %1 a visit, for a nucleus %2. In a long hive stand it beside the cluster. Never feed honey of unknown origin.</source>
        <translation>En invierno, el único alimento: sobre los cabezales, encima del racimo y en contacto con las abejas, cubierto, como mucho %1 por visita y %2 en un núcleo. En una colmena horizontal se coloca de pie junto al racimo. Nunca dé miel de origen desconocido.</translation>
    </message>
    <message>
        <source>In winter you help from outside. Go round every two weeks and after each storm: entrance, weight, tracks.</source>
        <translation>En invierno se ayuda desde fuera. Pase cada dos semanas y después de cada temporal: piquera, peso, huellas.</translation>
    </message>
    <message>
        <source>A hive in snow: snow around it may stay, the entrance is free and behind a mouse guard.</source>
        <translation>Una colmena en la nieve: la nieve de alrededor puede quedarse; la piquera está libre, tras una rejilla contra ratones.</translation>
    </message>
    <message>
        <source>Entrance</source>
        <translation>Piquera</translation>
    </message>
    <message>
        <source>Keep it open: draw dead bees out with a bent wire, break ice away. Loose snow around the hive is a coat. Fit a mouse guard, openings about %1, before days stay below %2.</source>
        <translation>Manténgala abierta: saque las abejas muertas con un alambre doblado y rompa el hielo. La nieve suelta alrededor de la colmena abriga. Ponga una rejilla contra ratones, con huecos de alrededor de %1, antes de que los días se queden por debajo de %2.</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Heft the same side each time, or read the scale. Loss is slow until brood begins, then several times as fast.</source>
        <translation>Sopese siempre el mismo lado o lea la báscula. Se pierde poco a poco hasta que empieza la cría, y después varias veces más deprisa.</translation>
    </message>
    <message>
        <source>Left: stores touch the cluster. Right: empty %{combs} lie between, and in the cold the bees do not cross them.</source>
        <translation>Izquierda: las reservas tocan el racimo. Derecha: hay cuadros vacíos en medio, y con frío las abejas no los cruzan.</translation>
    </message>
    <message>
        <source>In reach</source>
        <translation>A su alcance</translation>
    </message>
    <message>
        <source>The cluster eats only what it touches. %1 empty %{combs} between it and the stores are a wall in the cold: on a day of %2 hang a full %{comb} against the bees.</source>
        <translation>El racimo solo come lo que toca. %1 cuadros vacíos entre él y las reservas son un muro cuando hace frío: un día de %2, ponga un cuadro lleno pegado a las abejas.</translation>
    </message>
    <message>
        <source>Act now</source>
        <translation>Actuar ya</translation>
    </message>
    <message>
        <source>It comes up by itself when hefted; food for fewer than %1 days; bees right under the lid with no capped comb beside them; bees head down in empty cells. Lay fondant on the bees today, weigh, and come again.</source>
        <translation>Se levanta sola al sopesarla; alimento para menos de %1 días; abejas justo bajo la tapa sin ningún panal operculado al lado; abejas de cabeza en celdas vacías. Ponga hoy candi sobre las abejas, pese y vuelva.</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Muerta</translation>
    </message>
    <message>
        <source>Close it the same day, or robbers carry away what killed it. Nothing of it goes to another colony until disease is ruled out.</source>
        <translation>Ciérrela el mismo día, o las pilladoras se llevan lo que la mató. Nada de ella pasa a otra colonia hasta que se descarte una enfermedad.</translation>
    </message>
    <message>
        <source>Signs of disease are for the bee inspector, medicines for the vet and the label. Local codes on registering, moving, feeding and burning come before anything said here. No honey for children under twelve months.</source>
        <translation>Los signos de enfermedad son cosa de los servicios veterinarios oficiales; los medicamentos, del veterinario y la etiqueta. Las normas del lugar sobre registro, traslado, alimentación y quema van antes que cualquier cosa dicha aquí. Nada de miel a niños menores de doce meses.</translation>
    </message>
    <message>
        <source>All of it, both faces</source>
        <translation>Entero, por ambas caras</translation>
    </message>
    <message>
        <source>Half of it</source>
        <translation>La mitad</translation>
    </message>
    <message>
        <source>One field of one face</source>
        <translation>Un campo de una cara</translation>
    </message>
    <message>
        <source>Bees of a seam, or of a covered %{comb}</source>
        <translation>Abejas de una calle, o de un cuadro cubierto</translation>
    </message>
    <message>
        <source>Hold the %{comb} over the hive and ask one thing of each face: what share of the comb is capped? Leave the wood out.</source>
        <translation>Sujete el cuadro sobre la colmena y pregúntese una sola cosa de cada cara: ¿qué parte del panal está operculada? No cuente la madera.</translation>
    </message>
    <message>
        <source>One face of a comb of %1 cut into eight fields. Here %2 of the face is capped.</source>
        <translation>Una cara de un panal de %1 dividida en ocho campos. Aquí está operculado %2 de la cara.</translation>
    </message>
    <message>
        <source>Count fields</source>
        <translation>Contar campos</translation>
    </message>
    <message>
        <source>Think of the face as eight fields, four across and two down. Count those that are capped; two half ones make one.</source>
        <translation>Imagine la cara como ocho campos, cuatro a lo ancho y dos a lo alto. Cuente los operculados; dos a medias hacen uno.</translation>
    </message>
    <message>
        <source>Both faces</source>
        <translation>Ambas caras</translation>
    </message>
    <message>
        <source>They seldom match: judge both and take the mean. Where only one was seen, say so; it counts as less sure.</source>
        <translation>Rara vez son iguales: estime las dos y tome la media. Si solo se vio una, indíquelo; cuenta como menos segura.</translation>
    </message>
    <message>
        <source>Bands deceive</source>
        <translation>Las franjas engañan</translation>
    </message>
    <message>
        <source>A band under the top bar looks like more than it is. A band of a quarter of the height is a quarter of the comb.</source>
        <translation>Una franja bajo el cabezal parece más de lo que es. Una franja de un cuarto de la altura es un cuarto del panal.</translation>
    </message>
    <message>
        <source>A quarter, a half and three quarters of a comb of %1 capped, and what each holds with both faces alike.</source>
        <translation>Un cuarto, la mitad y tres cuartos de un panal de %1 operculados, y lo que contiene cada uno con ambas caras iguales.</translation>
    </message>
    <message>
        <source>By the palm</source>
        <translation>Con la palma</translation>
    </message>
    <message>
        <source>A palm of capped comb, %1 by %1, holds about %2 with both faces capped.</source>
        <translation>Una palma de panal operculado, %1 por %1, contiene alrededor de %2 con ambas caras operculadas.</translation>
    </message>
    <message>
        <source>Thick combs</source>
        <translation>Panales gruesos</translation>
    </message>
    <message>
        <source>The wider combs hang, the thicker they are drawn. With %1 from comb to comb instead of %2 a full one holds %3 instead of %4: give the width where it differs.</source>
        <translation>Cuanto más separados cuelgan los panales, más gruesos se labran. Con %1 de un panal a otro en vez de %2, uno lleno contiene %3 en vez de %4: indique la distancia si es distinta.</translation>
    </message>
    <message>
        <source>“Full”</source>
        <translation>«Lleno»</translation>
    </message>
    <message>
        <source>A comb called full has rims. Where combs were only counted, a full one is therefore taken for %1.</source>
        <translation>Un panal que se llama lleno tiene bordes sin llenar. Por eso, donde los panales solo se contaron, uno lleno se toma como %1.</translation>
    </message>
    <message>
        <source>Capped honey of one %{comb}:</source>
        <translation>Miel operculada de un cuadro:</translation>
    </message>
    <message>
        <source>Five things may be in a cell. Stand with the sun over your shoulder, so that it shines into the cells.</source>
        <translation>En una celda puede haber cinco cosas. Póngase con el sol a la espalda, de modo que dé dentro de las celdas.</translation>
    </message>
    <message>
        <source>Cells face on: capped honey, open nectar, bee bread, sealed brood, eggs and grubs, and empty ones.</source>
        <translation>Celdas de frente: miel operculada, néctar sin opercular, pan de abejas, cría operculada, huevos y larvas, y vacías.</translation>
    </message>
    <message>
        <source>Capped honey</source>
        <translation>Miel operculada</translation>
    </message>
    <message>
        <source>Flat or slightly sunken lids of wax, white to brown, without holes. Dry-looking lids have air under them, wet-looking ones touch the honey; both count in full.</source>
        <translation>Opérculos de cera planos o un poco hundidos, de blancos a pardos, sin agujeros. Los de aspecto seco tienen aire debajo, los de aspecto húmedo tocan la miel; ambos cuentan por entero.</translation>
    </message>
    <message>
        <source>Open nectar or syrup</source>
        <translation>Néctar o jarabe sin opercular</translation>
    </message>
    <message>
        <source>Glistens. Hold the %{comb} flat and jerk it once: what spatters is raw. Its area counts for %1 of capped honey within a week of a feed or a flow, later for %2.</source>
        <translation>Brilla. Sujete el cuadro horizontal y dé una sacudida: lo que salpica no está maduro. Su superficie cuenta %1 de miel operculada durante la semana siguiente a un aporte de alimento o a una floración; más tarde, %2.</translation>
    </message>
    <message>
        <source>Bee bread</source>
        <translation>Pan de abejas</translation>
    </message>
    <message>
        <source>Matt and packed, in many colours. It feeds brood, is no winter food, and makes a %{comb} feel heavy.</source>
        <translation>Mate y apretado, de muchos colores. Alimenta a la cría, no es alimento de invierno y hace que un cuadro parezca pesado.</translation>
    </message>
    <message>
        <source>Sealed brood</source>
        <translation>Cría operculada</translation>
    </message>
    <message>
        <source>Even tan lids, slightly domed, matt as a biscuit. Sunken, greasy or pierced lids are signs of disease: close the hive, move nothing, call the bee inspector.</source>
        <translation>Opérculos parejos de color tostado, algo abombados, mates como una galleta. Los hundidos, grasientos o perforados son signos de enfermedad: cierre la colmena, no traslade nada y avise a los servicios veterinarios oficiales.</translation>
    </message>
    <message>
        <source>Eggs and grubs</source>
        <translation>Huevos y larvas</translation>
    </message>
    <message>
        <source>Eggs stand like tiny grains of rice, grubs lie curled and white. Eggs mean a queen within three days. Late in the year there may be none.</source>
        <translation>Los huevos están de pie como diminutos granos de arroz; las larvas, enroscadas y blancas. Si hay huevos, hubo reina en los últimos tres días. Tarde en el año puede no haberlos.</translation>
    </message>
    <message>
        <source>Where they lie on a %{comb}: capped honey in an arch on top, open nectar under it, brood in the lower middle with bee bread around.</source>
        <translation>Dónde está cada cosa en un cuadro: la miel operculada en arco arriba, debajo el néctar sin opercular, y la cría en el centro y abajo con pan de abejas alrededor.</translation>
    </message>
    <message>
        <source>Write down the share of each; what is left is empty. From syrup to sealed takes %1 weeks, so what is open when the cold begins often stays so. Honey for people: only %{combs} with at least %2 of their stores capped.</source>
        <translation>Anote la parte de cada cosa; lo que queda está vacío. Del jarabe al opérculo pasan %1 semanas, así que lo que está sin opercular cuando llega el frío suele quedarse así. Miel para consumo humano: solo cuadros con al menos %2 de sus reservas operculadas.</translation>
    </message>
    <message>
        <source>Count on a cool morning before they fly, when all are at home. At noon many are out. Count before you smoke: smoke moves them.</source>
        <translation>Cuente una mañana fresca antes de que vuelen, cuando todas están en casa. Al mediodía muchas están fuera. Cuente antes de dar humo: el humo las desplaza.</translation>
    </message>
    <message>
        <source>A box from above: bees fill four gaps between the %{combs} from end to end and two by half, which makes five seams.</source>
        <translation>Un cuerpo desde arriba: las abejas llenan de punta a punta cuatro espacios entre los cuadros, y dos a medias, lo que hace cinco calles.</translation>
    </message>
    <message>
        <source>Seams</source>
        <translation>Calles</translation>
    </message>
    <message>
        <source>Lift lid and cover and look down. A gap filled with bees from end to end is one seam, half filled it is a half. With two boxes tip the upper one and count the lower one too. Seams are good to %1.</source>
        <translation>Levante la tapa y la entretapa y mire hacia abajo. Un espacio lleno de abejas de punta a punta es una calle; lleno a medias, media. Con dos cuerpos, incline el de arriba y cuente también el de abajo. Las calles son fiables con un margen de %1.</translation>
    </message>
    <message>
        <source>Covered %{combs}</source>
        <translation>Cuadros cubiertos</translation>
    </message>
    <message>
        <source>A %{comb} so full of bees on both sides that hardly any cell shows is one; one side is a half. A loose cover shows comb between the bees and counts for half to two thirds. This is good to %1.</source>
        <translation>Un cuadro tan lleno de abejas por ambas caras que apenas se ve una celda cuenta como uno; una cara, como medio. Una capa suelta deja ver panal entre las abejas y cuenta de la mitad a dos tercios. Es fiable con un margen de %1.</translation>
    </message>
    <message>
        <source>In the cold</source>
        <translation>Con frío</translation>
    </message>
    <message>
        <source>The cluster draws together and fills fewer seams than there are bees for. Write it down as seen in winter, not as a count.</source>
        <translation>El racimo se aprieta y ocupa menos calles de las que llenarían sus abejas. Anótelo como visto en invierno, no como recuento.</translation>
    </message>
    <message>
        <source>Brood</source>
        <translation>Cría</translation>
    </message>
    <message>
        <source>Lay your palm on it: %1 by %1 of one face are %2 cells. Judge it as a share of the comb, like honey. It tells whether the queen lays, and what food and warmth it will take.</source>
        <translation>Ponga la palma encima: %1 por %1 de una cara son %2 celdas. Estímela como parte del panal, igual que la miel. Dice si la reina pone y cuánto alimento y calor costará.</translation>
    </message>
    <message>
        <source>The last brood of the year: a patch of the size of a palm near the middle of a %{comb}.</source>
        <translation>La última cría del año: una mancha del tamaño de una palma cerca del centro de un cuadro.</translation>
    </message>
    <message>
        <source>Too few</source>
        <translation>Demasiado pocas</translation>
    </message>
    <message>
        <source>Under %1 well covered %{combs}, or %2 bees, before winter: unite with a healthy neighbour, unless it is a nucleus kept small on purpose.</source>
        <translation>Con menos de %1 cuadros bien cubiertos, o de %2 abejas, antes del invierno: hay que unirla a una vecina sana, salvo que sea un núcleo mantenido pequeño a propósito.</translation>
    </message>
    <message>
        <source>Way of judging</source>
        <translation>Manera de estimar</translation>
    </message>
    <message>
        <source>Give or take</source>
        <comment>heading: two of three cases lie within</comment>
        <translation>Más o menos</translation>
    </message>
    <message>
        <source>every %{comb}, both faces</source>
        <translation>cada cuadro, ambas caras</translation>
    </message>
    <message>
        <source>every %{comb}, one face</source>
        <translation>cada cuadro, una cara</translation>
    </message>
    <message>
        <source>full and half %{combs} only counted</source>
        <translation>solo contados los cuadros llenos y a medio llenar</translation>
    </message>
    <message>
        <source>on a scale, empty hive weighed too</source>
        <translation>en báscula, pesada también la colmena vacía</translation>
    </message>
    <message>
        <source>on a scale, empty weight assumed</source>
        <translation>en báscula, con el peso en vacío supuesto</translation>
    </message>
    <message>
        <source>hefted by hand</source>
        <translation>sopesada con la mano</translation>
    </message>
    <message>
        <source>In autumn you decide what a colony can no longer put right by itself: whether honey comes off, whether it is left alone, how much it is fed. A few %{combs} too little and it starves in spring; far too much and the queen has no room. So look before you take.</source>
        <translation>En otoño se decide lo que una colonia ya no puede arreglar por sí sola: si se quita miel, si se deja como está, cuánto se alimenta. Unos cuadros de menos y muere de hambre en primavera; muchos de más y la reina no tiene sitio. Así que mire antes de quitar.</translation>
    </message>
    <message>
        <source>Stores through the year: high when the honey is off, slowly down in the cold, steeply down while brood grows in spring.</source>
        <translation>Las reservas a lo largo del año: altas cuando se ha quitado la miel, despacio hacia abajo con el frío, en picado mientras crece la cría en primavera.</translation>
    </message>
    <message>
        <source>When the honey is off</source>
        <translation>Cuando se ha quitado la miel</translation>
    </message>
    <message>
        <source>Look at every %{comb}, some %1 days before feeding is best finished. One look tells stores, brood, bees and empty comb, and there is still time to feed.</source>
        <translation>Mire cada cuadro, unos %1 días antes de la fecha en que conviene terminar la alimentación. Una sola revisión dice las reservas, la cría, las abejas y el panal vacío, y aún queda tiempo para alimentar.</translation>
    </message>
    <message>
        <source>When the last feed is down</source>
        <translation>Cuando han tomado el último alimento</translation>
    </message>
    <message>
        <source>Weigh, and write it down. Every later weight is read against this one.</source>
        <translation>Pese y anótelo. Todo peso posterior se compara con este.</translation>
    </message>
    <message>
        <source>Leave the %{combs} alone. Heft every two weeks; once there is brood again, weigh every two to three.</source>
        <translation>Deje los cuadros tranquilos. Sopese cada dos semanas; cuando vuelva a haber cría, pese cada dos o tres.</translation>
    </message>
    <message>
        <source>In spring</source>
        <translation>En primavera</translation>
    </message>
    <message>
        <source>These weeks take most. Colonies that starve mostly do so now, with brood to keep warm, not in midwinter: go on hefting until nectar comes in every day.</source>
        <translation>Estas semanas son las que más gastan. Casi todas las colonias que mueren de hambre lo hacen ahora, con cría que calentar, y no en pleno invierno: siga sopesando hasta que entre néctar todos los días.</translation>
    </message>
    <message>
        <source>No way of judging is exact, and each is wrong in its own way. The eye errs alike on every %{comb} of a visit; a scale does not know what the empty hive weighs. Two ways together tell more than one way twice. In two of three cases the truth lies within this:</source>
        <translation>Ninguna manera de estimar es exacta, y cada una falla a su modo. El ojo yerra igual en todos los cuadros de una visita; una báscula no sabe cuánto pesa la colmena vacía. Dos maneras juntas dicen más que una dos veces. En dos de cada tres casos la verdad está dentro de esto:</translation>
    </message>
    <message>
        <source>A closed hive tells most for least: two minutes, and no bee disturbed. Take stones, feeder and wet snow off first, or write down that they are on.</source>
        <translation>Una colmena cerrada es la que más dice por menos: dos minutos y ninguna abeja molesta. Quite antes las piedras, el alimentador y la nieve mojada, o anote que están puestos.</translation>
    </message>
    <message>
        <source>A hand under the edge of the floor lifts one side of the hive by a finger&apos;s breadth.</source>
        <translation>Una mano bajo el borde del fondo levanta un dedo un lado de la colmena.</translation>
    </message>
    <message>
        <source>Heft</source>
        <translation>Sopesar</translation>
    </message>
    <message>
        <source>Hold the floor by its edge and lift that side by a finger&apos;s breadth, slowly, always the same side. A heavy hive feels nailed down, a fair one comes up with a pull, a light one by itself. Light is taken for %1 of what is wanted that day, fair for %2, heavy for %3: good for a warning, never for an amount.</source>
        <translation>Tome el fondo por el borde y levante ese lado un dedo, despacio, siempre el mismo lado. Una colmena pesada parece clavada, una media cede con un tirón, una ligera se levanta sola. Ligera se toma como %1 de lo que hace falta ese día, media como %2, pesada como %3: sirve de alerta, nunca para una cantidad.</translation>
    </message>
    <message>
        <source>One side on a scale</source>
        <translation>Un lado en la báscula</translation>
    </message>
    <message>
        <source>Hook a luggage scale to the middle of that edge, pull straight up until light shows under it, read while it hangs still. Twice the reading is roughly the whole, but stores seldom lie in the middle: at %1 it may be off by %2.</source>
        <translation>Enganche una báscula de mano en el centro de ese borde, tire recto hacia arriba hasta que se vea luz por debajo y lea cuando esté quieta. El doble de la lectura es más o menos el total, pero las reservas rara vez están en el centro: con %1 puede fallar en %2.</translation>
    </message>
    <message>
        <source>Both sides</source>
        <translation>Los dos lados</translation>
    </message>
    <message>
        <source>Lift the other side too and add the two. The sum is the whole hive, never half of it. A lifted side reads %1 low, which is put right for you: %2 and %3 make %4.</source>
        <translation>Levante también el otro lado y sume los dos. La suma es la colmena entera, nunca la mitad. Un lado levantado marca %1 de menos, y eso se corrige por usted: %2 y %3 hacen %4.</translation>
    </message>
    <message>
        <source>The same hive lifted at its left and at its right; the two readings are added.</source>
        <translation>La misma colmena levantada por la izquierda y por la derecha; las dos lecturas se suman.</translation>
    </message>
    <message>
        <source>Stores are what is left once the empty hive, bees, brood and bee bread are taken off. Not told, one box of %1 with drawn combs, floor and lids is taken to weigh %2, give or take %3. Weigh an empty one once, and every weighing tells more. Mind your back: lift with a straight one.</source>
        <translation>Las reservas son lo que queda al descontar la colmena vacía, las abejas, la cría y el pan de abejas. Si no se indica, se supone que un cuerpo de %1 con panales labrados, fondo y tapas pesa %2, más o menos %3. Pese una vez una vacía y cada pesada dirá más. Cuide la espalda: levante con ella recta.</translation>
    </message>
    <message>
        <source>Every opening costs warmth, and in the cold food. Ask first whether a weight would tell enough. If not, choose the day and know what you want to see.</source>
        <translation>Cada apertura cuesta calor y, con frío, alimento. Pregúntese primero si bastaría con un peso. Si no, elija el día y sepa lo que quiere ver.</translation>
    </message>
    <message>
        <source>From %1 a full look, from %2 half a minute, from %3 the lid alone; below that the hive stays closed.</source>
        <translation>Desde %1, una revisión completa; desde %2, medio minuto; desde %3, solo la tapa; por debajo, la colmena no se abre.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
    <message>
        <source>Not below %1 for a full look or %2 for half a minute; in winter lift the lid alone, from %3. Not in wind or rain. Not in a dearth at noon, when robbers search: then go toward evening.</source>
        <translation>Nunca por debajo de %1 para una revisión completa ni de %2 para medio minuto; en invierno levante solo la tapa, desde %3. Ni con viento ni con lluvia. Ni al mediodía en época de escasez, cuando buscan las pilladoras: vaya entonces al atardecer.</translation>
    </message>
    <message>
        <source>Smoke</source>
        <translation>Humo</translation>
    </message>
    <message>
        <source>Three quiet puffs into the entrance, wait a minute, one under the lid. More drives the queen about.</source>
        <translation>Tres bocanadas tranquilas en la piquera, espere un minuto, y una bajo la tapa. Más humo hace correr a la reina.</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Begin with an outer %{comb} and stand it beside, in the shade: now there is room. Go on %{comb} by %{comb}, lifting slowly so that no bee is rolled, and hang each back in its place, the same way round. Look for eggs, not for the queen. Cover what you are not looking at.</source>
        <translation>Empiece por un cuadro del extremo y déjelo al lado, a la sombra: ya hay sitio. Siga cuadro por cuadro, levantando despacio para no arrollar a ninguna abeja, y devuelva cada uno a su lugar y en la misma posición. Busque huevos, no a la reina. Tape lo que no esté mirando.</translation>
    </message>
    <message>
        <source>Seen from above: first the outer %{comb} comes out, then one after the other moves into the gap.</source>
        <translation>Visto desde arriba: primero se quita el cuadro del extremo y después uno tras otro pasan al hueco.</translation>
    </message>
    <message>
        <source>Comb without a frame</source>
        <translation>Panal sin cuadro</translation>
    </message>
    <message>
        <source>Free its sides first, keep it upright, begin at the empty end, and leave it alone in heat.</source>
        <translation>Suelte primero los lados, manténgalo vertical, empiece por el extremo vacío y no lo toque con calor.</translation>
    </message>
    <message>
        <source>Robbing</source>
        <translation>Pillaje</translation>
    </message>
    <message>
        <source>Bees wrestle at the entrance, search the joints, and leave heavy. Close up, narrow the entrance to one bee, open no other hive that day.</source>
        <translation>Hay abejas que luchan en la piquera, buscan por las rendijas y se van cargadas. Cierre, reduzca la piquera al paso de una abeja y no abra otra colmena ese día.</translation>
    </message>
    <message>
        <source>In a yard</source>
        <translation>En un colmenar</translation>
    </message>
    <message>
        <source>Healthy colonies first, doubtful ones last; wash hands and tools after these. With an allergy to stings never work alone.</source>
        <translation>Primero las colonias sanas, al final las dudosas; después de estas, lávese las manos y lave las herramientas. Con alergia a las picaduras, no trabaje nunca a solas.</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>the book&apos;s file, such as windfall.larder</source>
        <translation>el archivo del cuaderno, por ejemplo windfall.larder</translation>
    </message>
    <message>
        <source>who writes (default: the user of the system)</source>
        <translation>quién escribe (si no, el usuario del sistema)</translation>
    </message>
    <message>
        <source>another machine&apos;s sign that the book is open there is stale</source>
        <translation>la señal de otro equipo de que el cuaderno está abierto allí ya no vale</translation>
    </message>
    <message>
        <source>its name, or its number where none has the name</source>
        <translation>su nombre, o su número si ninguno tiene ese nombre</translation>
    </message>
    <message>
        <source>day of the record, YYYY-MM-DD</source>
        <translation>día de la anotación, AAAA-MM-DD</translation>
    </message>
    <message>
        <source>what else is to be remembered</source>
        <translation>qué más hay que recordar</translation>
    </message>
    <message>
        <source>it is right, unlikely as it may be</source>
        <translation>es correcto, por improbable que sea</translation>
    </message>
    <message>
        <source>name of the yard</source>
        <translation>nombre del colmenar</translation>
    </message>
    <message>
        <source>climate station it is near</source>
        <translation>estación climática próxima</translation>
    </message>
    <message>
        <source>town it is near: its coordinates, height and the nearest station are used</source>
        <translation>población próxima: se usan sus coordenadas, su altitud y la estación más cercana</translation>
    </message>
    <message>
        <source>degrees, north positive; the nearest station is used</source>
        <translation>grados, norte positivo; se usa la estación más cercana</translation>
    </message>
    <message>
        <source>degrees, east positive</source>
        <translation>grados, este positivo</translation>
    </message>
    <message>
        <source>height in metres; shifts the station&apos;s temperatures</source>
        <translation>altitud en metros; desplaza las temperaturas de la estación</translation>
    </message>
    <message>
        <source>nectar still to come in autumn: none, trickle, fair, strong</source>
        <translation>néctar por venir en otoño: none, trickle, fair, strong (ninguno, escaso, medio, fuerte)</translation>
    </message>
    <message>
        <source>the hives can be reached in the middle of winter</source>
        <translation>se puede llegar a las colmenas en pleno invierno</translation>
    </message>
    <message>
        <source>full combs (frames) of honey in store</source>
        <translation>cuadros llenos de miel en almacén</translation>
    </message>
    <message>
        <source>metric, us, imperial (default: those of the country)</source>
        <translation>metric, us, imperial (si no, las del país)</translation>
    </message>
    <message>
        <source>the day asked for (default: today); later records do not count</source>
        <translation>el día por el que se pregunta (si no, hoy); lo anotado más tarde no cuenta</translation>
    </message>
    <message>
        <source>only this one</source>
        <translation>solo esta</translation>
    </message>
    <message>
        <source>the colony; it must be named</source>
        <translation>la colonia; hay que nombrarla</translation>
    </message>
    <message>
        <source>leave out what past winters taught</source>
        <translation>dejar fuera lo que enseñaron los inviernos pasados</translation>
    </message>
    <message>
        <source>comma, semicolon, tab</source>
        <translation>comma, semicolon, tab (coma, punto y coma, tabulador)</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>comma o point (coma o punto)</translation>
    </message>
    <message>
        <source>column of the times, by name or number</source>
        <translation>columna de las horas, por nombre o número</translation>
    </message>
    <message>
        <source>column of the dates, where they stand apart</source>
        <translation>columna de las fechas, si van aparte</translation>
    </message>
    <message>
        <source>column of the weights</source>
        <translation>columna de los pesos</translation>
    </message>
    <message>
        <source>kg, g or lb</source>
        <translation>kg, g o lb</translation>
    </message>
    <message>
        <source>dmy, mdy or ymd</source>
        <translation>dmy, mdy o ymd</translation>
    </message>
    <message>
        <source>where the hive stands: America/Halifax, UTC, +02:00</source>
        <translation>dónde está la colmena: America/Halifax, UTC, +02:00</translation>
    </message>
    <message>
        <source>what the logger&apos;s clock shows, where that is another zone</source>
        <translation>lo que marca el reloj del aparato, si es otra zona</translation>
    </message>
    <message>
        <source>begin a book with its first yard</source>
        <translation>empezar un cuaderno con su primer colmenar</translation>
    </message>
    <message>
        <source>a further yard</source>
        <translation>otro colmenar</translation>
    </message>
    <message>
        <source>hive format, see winterlarder-cli hive-formats</source>
        <translation>tipo de colmena, véase winterlarder-cli hive-formats</translation>
    </message>
    <message>
        <source>boxes of that format (default 1)</source>
        <translation>cuerpos de ese tipo (1 si no se indica)</translation>
    </message>
    <message>
        <source>a super of this format on them; once for each</source>
        <translation>un alza de este tipo encima; una vez por cada una</translation>
    </message>
    <message>
        <source>a colony and its hive</source>
        <translation>una colonia y su colmena</translation>
    </message>
    <message>
        <source>name of the colony</source>
        <translation>nombre de la colonia</translation>
    </message>
    <message>
        <source>where it stands, if the book has several yards</source>
        <translation>dónde está, si el cuaderno tiene varios colmenares</translation>
    </message>
    <message>
        <source>timber (default), thick-timber, wrapped, polystyrene, straw</source>
        <translation>timber (madera, si no se indica), thick-timber (gruesa), wrapped (abrigada), polystyrene, straw (paja)</translation>
    </message>
    <message>
        <source>insulation above the combs</source>
        <translation>aislante sobre los cuadros</translation>
    </message>
    <message>
        <source>weight of the hive with its empty combs</source>
        <translation>peso de la colmena con sus cuadros vacíos</translation>
    </message>
    <message>
        <source>whom the honey of the supers is for: people, bees</source>
        <translation>para quién es la miel de las alzas: people (personas), bees (abejas)</translation>
    </message>
    <message>
        <source>round, top, box, contact, frame, end</source>
        <translation>round, top, box, contact, frame, end (redondo, de techo, cubo en un alza, invertido, de cuadro, tras el separador)</translation>
    </message>
    <message>
        <source>bees: dark, carniolan, buckfast, italian</source>
        <translation>abejas: dark (negra), carniolan (cárnica), buckfast, italian (italiana)</translation>
    </message>
    <message>
        <source>year the queen was raised</source>
        <translation>año en que se crió la reina</translation>
    </message>
    <message>
        <source>where the colony came from</source>
        <translation>de dónde vino la colonia</translation>
    </message>
    <message>
        <source>day the colony began</source>
        <translation>día en que empezó la colonia</translation>
    </message>
    <message>
        <source>the boxes a hive has from a day on; the rest of the hive stays as it was</source>
        <translation>los cuerpos que tiene una colmena desde un día; lo demás de la colmena sigue como estaba</translation>
    </message>
    <message>
        <source>weight of the hive with these boxes and their empty combs</source>
        <translation>peso de la colmena con estos cuerpos y sus cuadros vacíos</translation>
    </message>
    <message>
        <source>another name for a colony</source>
        <translation>otro nombre para una colonia</translation>
    </message>
    <message>
        <source>its name, or #ID</source>
        <translation>su nombre, o #ID</translation>
    </message>
    <message>
        <source>the new name</source>
        <translation>el nombre nuevo</translation>
    </message>
    <message>
        <source>what was seen in a hive</source>
        <translation>lo que se vio en una colmena</translation>
    </message>
    <message>
        <source>the combs of a case file as a JSON file, or - for standard input</source>
        <translation>los cuadros de un archivo de caso como archivo JSON, o - para la entrada estándar</translation>
    </message>
    <message>
        <source>combs (frames) covered with bees on both sides</source>
        <translation>cuadros cubiertos de abejas por ambas caras</translation>
    </message>
    <message>
        <source>gaps between combs (frames) filled with bees</source>
        <translation>calles entre cuadros llenas de abejas</translation>
    </message>
    <message>
        <source>bees, counted or weighed</source>
        <translation>abejas, contadas o pesadas</translation>
    </message>
    <message>
        <source>cells with brood of all ages</source>
        <translation>celdas con cría de todas las edades</translation>
    </message>
    <message>
        <source>water in the honey, percent</source>
        <translation>humedad de la miel, por ciento</translation>
    </message>
    <message>
        <source>the queen was seen</source>
        <translation>se vio la reina</translation>
    </message>
    <message>
        <source>eggs were seen</source>
        <translation>se vieron huevos</translation>
    </message>
    <message>
        <source>there are signs of disease</source>
        <translation>hay signos de enfermedad</translation>
    </message>
    <message>
        <source>mites were counted this season</source>
        <translation>se contaron los ácaros esta temporada</translation>
    </message>
    <message>
        <source>mites on 100 bees, as counted</source>
        <translation>ácaros en 100 abejas, según el recuento</translation>
    </message>
    <message>
        <source>mites were treated this season</source>
        <translation>se trató contra los ácaros esta temporada</translation>
    </message>
    <message>
        <source>food is beside or right above the bees</source>
        <translation>hay alimento al lado o justo encima de las abejas</translation>
    </message>
    <message>
        <source>sugar or medicine was in the hive while its honey was made</source>
        <translation>hubo azúcar o un medicamento en la colmena mientras se hacía su miel</translation>
    </message>
    <message>
        <source>blossom, honeydew, heather</source>
        <translation>blossom, honeydew, heather (flores, mielato, brezo)</translation>
    </message>
    <message>
        <source>a weight, a lift or a heft</source>
        <translation>un peso, una pesada por los lados o un sopesado</translation>
    </message>
    <message>
        <source>the whole hive on a scale</source>
        <translation>la colmena entera en una báscula</translation>
    </message>
    <message>
        <source>a side lifted, or both one after the other</source>
        <translation>un lado levantado, o los dos uno tras otro</translation>
    </message>
    <message>
        <source>light, fair or heavy</source>
        <translation>light, fair o heavy (ligera, media o pesada)</translation>
    </message>
    <message>
        <source>rain or snow lay on the hive</source>
        <translation>la colmena tenía lluvia o nieve encima</translation>
    </message>
    <message>
        <source>syrup, fondant or dry sugar that was given</source>
        <translation>jarabe, candi o azúcar seco que se dio</translation>
    </message>
    <message>
        <source>sugar in it</source>
        <translation>azúcar que contiene</translation>
    </message>
    <message>
        <source>litres of syrup, with --ratio</source>
        <translation>litros de jarabe, con --ratio</translation>
    </message>
    <message>
        <source>sugar to water by mass</source>
        <translation>azúcar por agua, en peso</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>syrup (default), fondant, dry-sugar</source>
        <translation>syrup (jarabe, si no se indica), fondant (candi), dry-sugar (azúcar seco)</translation>
    </message>
    <message>
        <source>it came after the look of that day (default: where that look is written down already)</source>
        <translation>fue después de la revisión de ese día (si no se indica: cuando esa revisión ya está anotada)</translation>
    </message>
    <message>
        <source>honey that was taken</source>
        <translation>miel que se quitó</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miel</translation>
    </message>
    <message>
        <source>combs (frames) taken</source>
        <translation>cuadros quitados</translation>
    </message>
    <message>
        <source>medicine given; its honey is then not for people</source>
        <translation>medicamento dado; su miel no es entonces para consumo humano</translation>
    </message>
    <message>
        <source>what was given</source>
        <translation>qué se dio</translation>
    </message>
    <message>
        <source>last day its honey is not for people, as the label says</source>
        <translation>último día en que su miel no es para consumo humano, según la etiqueta</translation>
    </message>
    <message>
        <source>how a colony left: united, sold or dead</source>
        <translation>cómo dejó el colmenar una colonia: united, sold o dead</translation>
    </message>
    <message>
        <source>united, sold or dead</source>
        <translation>united, sold o dead (unida, vendida o muerta)</translation>
    </message>
    <message>
        <source>the colony it was united into</source>
        <translation>la colonia a la que se unió</translation>
    </message>
    <message>
        <source>what it died of</source>
        <translation>de qué murió</translation>
    </message>
    <message>
        <source>a glance in winter: bees flying, the cluster, stores, a dead-out</source>
        <translation>un vistazo de invierno: abejas volando, el racimo, reservas, una colonia muerta</translation>
    </message>
    <message>
        <source>flying, cluster, stores or dead</source>
        <translation>flying, cluster, stores o dead (vuelo, racimo, reservas o muerta)</translation>
    </message>
    <message>
        <source>gaps between combs the cluster fills</source>
        <translation>calles entre cuadros que ocupa el racimo</translation>
    </message>
    <message>
        <source>sealed stores were in sight beside the bees</source>
        <translation>había reservas operculadas a la vista junto a las abejas</translation>
    </message>
    <message>
        <source>first comb with bees of the cluster, from the left, from 1</source>
        <translation>primer cuadro con abejas del racimo, desde la izquierda, a partir de 1</translation>
    </message>
    <message>
        <source>there were none</source>
        <translation>no había ninguna</translation>
    </message>
    <message>
        <source>daily temperatures of a yard from a CSV table; they replace simulated days already past</source>
        <translation>temperaturas diarias de un colmenar, de una tabla CSV; sustituyen a los días simulados ya pasados</translation>
    </message>
    <message>
        <source>CSV table, or - for standard input</source>
        <translation>tabla CSV, o - para la entrada estándar</translation>
    </message>
    <message>
        <source>whose, if the book has several yards</source>
        <translation>de cuál, si el cuaderno tiene varios colmenares</translation>
    </message>
    <message>
        <source>date=D,mean=T or date=D,min=TMIN,max=TMAX</source>
        <translation>date=D,mean=T o date=D,min=TMIN,max=TMAX</translation>
    </message>
    <message>
        <source>c (default) or f</source>
        <translation>c (si no se indica) o f</translation>
    </message>
    <message>
        <source>days still to come are right</source>
        <translation>los días que aún no han llegado son correctos</translation>
    </message>
    <message>
        <source>a few weighings and every feed, harvest and change of equipment out of a scale&apos;s log</source>
        <translation>unas pocas pesadas y todo aporte de alimento, cosecha y cambio de material del registro de una báscula</translation>
    </message>
    <message>
        <source>CSV table of times and weights, or - for standard input</source>
        <translation>tabla CSV de horas y pesos, o - para la entrada estándar</translation>
    </message>
    <message>
        <source>of the syrup fed meanwhile, sugar to water by mass</source>
        <translation>del jarabe dado entretanto, azúcar por agua en peso</translation>
    </message>
    <message>
        <source>only say what would be added, and what is asked about it</source>
        <translation>decir solo qué se añadiría y qué se pregunta sobre ello</translation>
    </message>
    <message>
        <source>unlikely records are right</source>
        <translation>las anotaciones improbables son correctas</translation>
    </message>
    <message>
        <source>the answer for every living colony, or one</source>
        <translation>la respuesta para cada colonia viva, o para una</translation>
    </message>
    <message>
        <source>plan yards without moving combs between hives</source>
        <translation>planear los colmenares sin pasar cuadros de una colmena a otra</translation>
    </message>
    <message>
        <source>a colony as a case file for advise</source>
        <translation>una colonia como archivo de caso para advise</translation>
    </message>
    <message>
        <source>act on the advice of a colony: freeze it in the book, plan its visits</source>
        <translation>seguir la recomendación de una colonia: fijarla en el cuaderno y prever sus visitas</translation>
    </message>
    <message>
        <source>as its yard is planned without moving combs between hives</source>
        <translation>como se planea su colmenar sin pasar cuadros de una colmena a otra</translation>
    </message>
    <message>
        <source>how the winter of every living colony goes: forecast then and now, what to do</source>
        <translation>cómo va el invierno de cada colonia viva: previsión de entonces y de ahora, qué hacer</translation>
    </message>
    <message>
        <source>every day in the JSON, not every seventh</source>
        <translation>cada día en el JSON, no uno de cada siete</translation>
    </message>
    <message>
        <source>how a winter ended</source>
        <translation>cómo terminó un invierno</translation>
    </message>
    <message>
        <source>the colony lives</source>
        <translation>la colonia vive</translation>
    </message>
    <message>
        <source>it died</source>
        <translation>murió</translation>
    </message>
    <message>
        <source>combs its bees cover</source>
        <translation>cuadros que cubren sus abejas</translation>
    </message>
    <message>
        <source>stores left</source>
        <translation>reservas que quedan</translation>
    </message>
    <message>
        <source>food was left within reach of the dead bees</source>
        <translation>quedaba alimento al alcance de las abejas muertas</translation>
    </message>
    <message>
        <source>dead bees were head down in the cells</source>
        <translation>había abejas muertas de cabeza en las celdas</translation>
    </message>
    <message>
        <source>many mites lay on the floor</source>
        <translation>había muchos ácaros en el fondo</translation>
    </message>
    <message>
        <source>brood in the dead hive: none, solid, patchy</source>
        <translation>cría en la colmena muerta: none (ninguna), solid (compacta), patchy (salteada)</translation>
    </message>
    <message>
        <source>the queen was found</source>
        <translation>se encontró la reina</translation>
    </message>
    <message>
        <source>what past winters taught, and how good their forecasts were</source>
        <translation>lo que enseñaron los inviernos pasados y lo buenas que fueron sus previsiones</translation>
    </message>
    <message>
        <source>what is due as an iCalendar file: visits, and what answers ask</source>
        <translation>lo pendiente como archivo iCalendar: visitas y lo que piden las respuestas</translation>
    </message>
    <message>
        <source>as yards are planned without moving combs between hives</source>
        <translation>como se planean los colmenares sin pasar cuadros de una colmena a otra</translation>
    </message>
    <message>
        <source>every step of the book, newest first</source>
        <translation>todos los pasos del cuaderno, lo más reciente primero</translation>
    </message>
    <message>
        <source>at most so many steps (default 100)</source>
        <translation>como mucho tantos pasos (100 si no se indica)</translation>
    </message>
    <message>
        <source>what the book holds</source>
        <translation>qué contiene el cuaderno</translation>
    </message>
    <message>
        <source>look for damage; 0 = sound</source>
        <translation>buscar daños; 0 = en buen estado</translation>
    </message>
    <message>
        <source>take the last step back</source>
        <translation>deshacer el último paso</translation>
    </message>
    <message>
        <source>do again the step undone last</source>
        <translation>rehacer el último paso deshecho</translation>
    </message>
    <message>
        <source>the whole book as JSON (--json), or one table as CSV</source>
        <translation>el cuaderno entero como JSON (--json), o una tabla como CSV</translation>
    </message>
    <message>
        <source>such as looks, look_combs, weighings</source>
        <translation>por ejemplo looks, look_combs, weighings</translation>
    </message>
    <message>
        <source>a JSON document in place of all there is, or CSV rows into one table; undoable</source>
        <translation>un documento JSON en lugar de todo lo que hay, o filas CSV en una tabla; se puede deshacer</translation>
    </message>
    <message>
        <source>document or table, or - for standard input</source>
        <translation>documento o tabla, o - para la entrada estándar</translation>
    </message>
    <message>
        <source>the table of a CSV file (default: its name)</source>
        <translation>la tabla de un archivo CSV (si no, su nombre)</translation>
    </message>
    <message>
        <source>only say what a table would add, and what is asked about it</source>
        <translation>decir solo qué añadiría una tabla y qué se pregunta sobre ello</translation>
    </message>
    <message>
        <source>unlikely entries are right</source>
        <translation>las anotaciones improbables son correctas</translation>
    </message>
    <message>
        <source>a compact copy in one file</source>
        <translation>una copia compacta en un solo archivo</translation>
    </message>
    <message>
        <source>file to write; never one that is there</source>
        <translation>archivo que se escribe; nunca uno que ya existe</translation>
    </message>
    <message>
        <source>the backups beside the book, newest first</source>
        <translation>las copias de seguridad junto al cuaderno, lo más reciente primero</translation>
    </message>
    <message>
        <source>make one now</source>
        <translation>hacer una ahora</translation>
    </message>
    <message>
        <source>the book as it was in a backup; undoable</source>
        <translation>el cuaderno como estaba en una copia de seguridad; se puede deshacer</translation>
    </message>
    <message>
        <source>file, or its name as backups lists it</source>
        <translation>archivo, o su nombre tal como lo da backups</translation>
    </message>
    <message>
        <source>what can be read of a damaged book, in a new one</source>
        <translation>lo que se puede leer de un cuaderno dañado, en uno nuevo</translation>
    </message>
    <message>
        <source>the new book&apos;s file</source>
        <translation>el archivo del cuaderno nuevo</translation>
    </message>
    <message>
        <source>Usage</source>
        <comment>heading of the help</comment>
        <translation>Uso</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <comment>in the usage line: winterlarder-cli [OPTIONS] SUBCOMMAND</comment>
        <translation>OPCIONES</translation>
    </message>
    <message>
        <source>SUBCOMMAND</source>
        <comment>in the usage line</comment>
        <translation>COMANDO</translation>
    </message>
    <message>
        <source>Positionals</source>
        <comment>heading: arguments told by their place</comment>
        <translation>Argumentos</translation>
    </message>
    <message>
        <source>REQUIRED</source>
        <comment>an option that must be given</comment>
        <translation>OBLIGATORIO</translation>
    </message>
    <message>
        <source>Winter stores of honey bee colonies: take honey, leave it, or feed.</source>
        <translation>Reservas de invierno de las colonias de abejas: cosechar miel, dejarla o alimentar.</translation>
    </message>
    <message>
        <source>Print this help message and exit</source>
        <translation>Muestra esta ayuda y termina</translation>
    </message>
    <message>
        <source>Display program version information and exit</source>
        <translation>Muestra la versión del programa y termina</translation>
    </message>
    <message>
        <source>Exit status: 0 done, 2 input or arguments are wrong, 3 a file cannot be read or written, 70 an error of the program.
Cases are JSON files; &quot;-&quot; reads JSON Lines from standard input. See winterlarder-cli(1).</source>
        <translation>Código de salida: 0 hecho, 2 datos o argumentos incorrectos, 3 un archivo no se puede leer o escribir, 70 un error del programa.
Los casos son archivos JSON; «-» lee JSON Lines de la entrada estándar. Véase winterlarder-cli(1).</translation>
    </message>
    <message>
        <source>print one JSON document (JSON Lines for a batch)</source>
        <translation>escribe un documento JSON (JSON Lines si son varios casos)</translation>
    </message>
    <message>
        <source>simulated winters (default 2500)</source>
        <translation>inviernos simulados (2500 si no se indica)</translation>
    </message>
    <message>
        <source>seed of the random numbers (default 1)</source>
        <translation>semilla de los números al azar (1 si no se indica)</translation>
    </message>
    <message>
        <source>threads at work (default: all cores); changes no digit</source>
        <translation>hilos de trabajo (si no, todos los núcleos); no cambia ninguna cifra</translation>
    </message>
    <message>
        <source>language of what is said, as en (default: the system&apos;s); keys of JSON and words of arguments stay as they are</source>
        <translation>idioma de lo que se dice, como en (si no, el del sistema); las claves JSON y las palabras de los argumentos no cambian</translation>
    </message>
    <message>
        <source>folder of the shipped data</source>
        <translation>carpeta de los datos que trae el programa</translation>
    </message>
    <message>
        <source>metric, us or imperial (default: %1)</source>
        <comment>the first three are typed as they stand</comment>
        <translation>metric, us o imperial (si no se indica: %1)</translation>
    </message>
    <message>
        <source>stores, need, verdict, feeding, harvest, cautions of one or several colonies</source>
        <translation>reservas, necesidad, conclusión, alimentación, cosecha y precauciones de una o varias colonias</translation>
    </message>
    <message>
        <source>the case&apos;s, else those of its place</source>
        <translation>las del caso o, si no, las de su lugar</translation>
    </message>
    <message>
        <source>case files, or - for JSON Lines on standard input</source>
        <translation>archivos de caso, o - para JSON Lines de la entrada estándar</translation>
    </message>
    <message>
        <source>what a colony eats between two days, by month and cause</source>
        <translation>lo que come una colonia entre dos días, por meses y por causas</translation>
    </message>
    <message>
        <source>case file, or - for standard input</source>
        <translation>archivo de caso, o - para la entrada estándar</translation>
    </message>
    <message>
        <source>first day, YYYY-MM-DD, not before the look</source>
        <translation>primer día, AAAA-MM-DD, no anterior a la revisión</translation>
    </message>
    <message>
        <source>last day, counted in</source>
        <translation>último día, incluido</translation>
    </message>
    <message>
        <source>day by day as well</source>
        <translation>además, día por día</translation>
    </message>
    <message>
        <source>one noiseless winter with median constants</source>
        <translation>un solo invierno sin azar, con constantes medianas</translation>
    </message>
    <message>
        <source>power and food of a colony on one day</source>
        <translation>potencia y alimento de una colonia en un día</translation>
    </message>
    <message>
        <source>adult bees</source>
        <translation>abejas adultas</translation>
    </message>
    <message>
        <source>mean of the day, degC</source>
        <translation>media del día, degC</translation>
    </message>
    <message>
        <source>cells with brood of all ages (default 0)</source>
        <translation>celdas con cría de todas las edades (0 si no se indica)</translation>
    </message>
    <message>
        <source>dark, carniolan (default), buckfast, italian</source>
        <translation>dark (negra), carniolan (cárnica, si no se indica), buckfast, italian (italiana)</translation>
    </message>
    <message>
        <source>no swing between day and night</source>
        <translation>sin diferencia entre el día y la noche</translation>
    </message>
    <message>
        <source>stores and bees of a colony today, and what each observation says</source>
        <translation>reservas y abejas de una colonia hoy, y qué dice cada observación</translation>
    </message>
    <message>
        <source>sugar, water and litres of a syrup, and the stores it becomes</source>
        <translation>azúcar, agua y litros de un jarabe, y las reservas en que se convierte</translation>
    </message>
    <message>
        <source>kilograms of sugar</source>
        <translation>kilogramos de azúcar</translation>
    </message>
    <message>
        <source>kilograms of stores wanted</source>
        <translation>kilogramos de reservas deseados</translation>
    </message>
    <message>
        <source>sugar to water, decimals allowed</source>
        <translation>azúcar por agua, se admiten decimales</translation>
    </message>
    <message>
        <source>what the ratio counts: mass (default), volume, kg-l (kg to litres)</source>
        <translation>qué cuenta la proporción: mass (peso, si no se indica), volume (volumen), kg-l (kg por litros)</translation>
    </message>
    <message>
        <source>places of the world by name, each with its weather station and height</source>
        <translation>lugares del mundo por su nombre, cada uno con su estación meteorológica y su altitud</translation>
    </message>
    <message>
        <source>name or its beginning, then state or country: wolfville, halifax canada, springfield il</source>
        <translation>nombre o su comienzo, y después estado o país: wolfville, halifax canada, springfield il</translation>
    </message>
    <message>
        <source>how many at most (default 10)</source>
        <translation>cuántos como mucho (10 si no se indica)</translation>
    </message>
    <message>
        <source>the shipped climate stations</source>
        <translation>las estaciones climáticas que trae el programa</translation>
    </message>
    <message>
        <source>nearest first, to LAT,LON or to a place by its name</source>
        <translation>la más cercana primero, a LAT,LON o a un lugar por su nombre</translation>
    </message>
    <message>
        <source>only those whose id, place or country holds the text</source>
        <translation>solo aquellas cuyo id, lugar o país contiene el texto</translation>
    </message>
    <message>
        <source>cold-season curve and the dates derived from it</source>
        <translation>curva de la época fría y las fechas que se calculan de ella</translation>
    </message>
    <message>
        <source>id of a shipped station, or the name of a place</source>
        <translation>id de una estación del programa, o el nombre de un lugar</translation>
    </message>
    <message>
        <source>the place and dates of a case instead</source>
        <translation>en su lugar, el lugar y las fechas de un caso</translation>
    </message>
    <message>
        <source>the winter whose autumn lies in this year (default 2026, or the case&apos;s)</source>
        <translation>el invierno cuyo otoño cae en este año (2026 si no se indica, o el del caso)</translation>
    </message>
    <message>
        <source>every day of the curve</source>
        <translation>cada día de la curva</translation>
    </message>
    <message>
        <source>a climate of your own from a table of daily temperatures</source>
        <translation>un clima propio a partir de una tabla de temperaturas diarias</translation>
    </message>
    <message>
        <source>degrees, north positive</source>
        <translation>grados, norte positivo</translation>
    </message>
    <message>
        <source>daily weights, months and steps from the log of a hive scale</source>
        <translation>pesos diarios, meses y saltos del registro de una báscula de colmena</translation>
    </message>
    <message>
        <source>every day&apos;s weight as well (--json always has them)</source>
        <translation>además, el peso de cada día (--json los tiene siempre)</translation>
    </message>
    <message>
        <source>the shipped hive formats with comb area and honey of a full comb</source>
        <translation>los tipos de colmena del programa, con la superficie del panal y la miel de un cuadro lleno</translation>
    </message>
    <message>
        <source>keys of a case file and columns of a book&apos;s tables, and what they may be</source>
        <translation>claves de un archivo de caso y columnas de las tablas de un cuaderno, y qué pueden ser</translation>
    </message>
    <message>
        <source>only this key, or all of a group: hive, bees, combs, weighings, ...</source>
        <translation>solo esta clave, o todas las de un grupo: hive, bees, combs, weighings, ...</translation>
    </message>
    <message>
        <source>where the shipped numbers come from</source>
        <translation>de dónde vienen los números que trae el programa</translation>
    </message>
    <message>
        <source>only this source</source>
        <translation>solo esta fuente</translation>
    </message>
    <message>
        <source>how stores, bees and brood are judged, page by page</source>
        <translation>cómo se estiman las reservas, las abejas y la cría, página por página</translation>
    </message>
    <message>
        <source>only this page; without one the contents</source>
        <translation>solo esta página; sin ella, el índice</translation>
    </message>
    <message>
        <source>numbers of this hive only</source>
        <translation>números solo de esta colmena</translation>
    </message>
    <message>
        <source>a keeper&apos;s book: years of yards, colonies and records in one file</source>
        <translation>el cuaderno de un apicultor: años de colmenares, colonias y anotaciones en un solo archivo</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <comment>heading of the help</comment>
        <translation>Comandos</translation>
    </message>
    <message>
        <source>winterlarder-cli --help tells how</source>
        <translation>winterlarder-cli --help dice cómo</translation>
    </message>
</context>
<context>
    <name>Learned</name>
    <message>
        <source>Nothing has been learned yet. A winter counts once it is over: what was weighed and how it went is used from July on (January in the south).</source>
        <translation>Todavía no se ha aprendido nada. Un invierno cuenta cuando ha terminado: lo que se pesó y cómo fue se usa desde julio (desde enero en el hemisferio sur).</translation>
    </message>
    <message>
        <source>Learned from one winter of a colony</source>
        <translation>Aprendido de un invierno de una colonia</translation>
    </message>
    <message numerus="yes">
        <source>Learned from %n winters of colonies</source>
        <translation>
            <numerusform>Aprendido de %n invierno de colonias</numerusform>
            <numerusform>Aprendido de %n inviernos de colonias</numerusform>
        </translation>
    </message>
    <message>
        <source>They eat %1 % more than the model says (give or take %2 %).</source>
        <translation>Comen un %1&#xa0;% más de lo que dice el modelo (más o menos %2&#xa0;%).</translation>
    </message>
    <message>
        <source>They eat %1 % less than the model says (give or take %2 %).</source>
        <translation>Comen un %1&#xa0;% menos de lo que dice el modelo (más o menos %2&#xa0;%).</translation>
    </message>
    <message>
        <source>They eat as the model says (give or take %1 %).</source>
        <translation>Comen lo que dice el modelo (más o menos %1&#xa0;%).</translation>
    </message>
    <message>
        <source>They lose bees %1 % faster than the model says (give or take %2 %).</source>
        <translation>Pierden abejas un %1&#xa0;% más deprisa de lo que dice el modelo (más o menos %2&#xa0;%).</translation>
    </message>
    <message>
        <source>They lose bees %1 % more slowly than the model says (give or take %2 %).</source>
        <translation>Pierden abejas un %1&#xa0;% más despacio de lo que dice el modelo (más o menos %2&#xa0;%).</translation>
    </message>
    <message>
        <source>They lose bees as the model says (give or take %1 %).</source>
        <translation>Pierden abejas como dice el modelo (más o menos %1&#xa0;%).</translation>
    </message>
    <message>
        <source>So much holds of all the bees of this keeper. Each colony differs from them by what its own winters and its yard&apos;s told; all of it together, times what the model says, is what its next answer counts with:</source>
        <translation>Esto vale para todas las abejas de este cuaderno. Cada colonia se aparta de ellas según lo que enseñaron sus propios inviernos y los de su colmenar; todo junto, multiplicado por lo que dice el modelo, es con lo que cuenta su próxima respuesta:</translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days later than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>La floración de primavera comienza %1 días más tarde de lo que dice el clima (más o menos %2; %n primavera).</numerusform>
            <numerusform>La floración de primavera comienza %1 días más tarde de lo que dice el clima (más o menos %2; %n primaveras).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>La floración de primavera comienza %1 días antes de lo que dice el clima (más o menos %2; %n primavera).</numerusform>
            <numerusform>La floración de primavera comienza %1 días antes de lo que dice el clima (más o menos %2; %n primaveras).</numerusform>
        </translation>
    </message>
    <message>
        <source>Spring forage starts %1 days later than the climate says (give or take %2; one spring).</source>
        <translation>La floración de primavera comienza %1 días más tarde de lo que dice el clima (más o menos %2; una primavera).</translation>
    </message>
    <message>
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; one spring).</source>
        <translation>La floración de primavera comienza %1 días antes de lo que dice el clima (más o menos %2; una primavera).</translation>
    </message>
    <message>
        <source>the winter of %1 of %2: its records fit no winter, so nothing was learned from it</source>
        <translation>el invierno de %1 de %2: sus anotaciones no encajan con ningún invierno, así que no se aprendió nada de él</translation>
    </message>
    <message>
        <source>One forecast can be compared with what happened: %1 lay within its band of nine in ten. Its score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>Una previsión se puede comparar con lo que ocurrió: %1 cayó dentro de su franja de nueve de cada diez. Su puntuación es %2; la de la cifra de manual de la región, %3 (cuánto se apartaron; cuanto menor, mejor).</translation>
    </message>
    <message numerus="yes">
        <source>%n forecasts can be compared with what happened: %1 lay within their bands of nine in ten. Their mean score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>
            <numerusform>%n previsión se puede comparar con lo que ocurrió: %1 cayó dentro de su franja de nueve de cada diez. Su puntuación media es %2; la de la cifra de manual de la región, %3 (cuánto se apartaron; cuanto menor, mejor).</numerusform>
            <numerusform>%n previsiones se pueden comparar con lo que ocurrió: %1 cayeron dentro de su franja de nueve de cada diez. Su puntuación media es %2; la de la cifra de manual de la región, %3 (cuánto se apartaron; cuanto menor, mejor).</numerusform>
        </translation>
    </message>
    <message>
        <source>That is too few to judge by: it takes five or more.</source>
        <translation>Son muy pocas para juzgar: hacen falta cinco o más.</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>{} is not a number of an entry</source>
        <translation>{} no es el número de una anotación</translation>
    </message>
    <message>
        <source>a whole number from 1 to {}</source>
        <translation>un número entero de 1 a {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is missing</source>
        <translation>falta &quot;{}&quot;</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is {}</source>
        <translation>&quot;{}&quot; es {}</translation>
    </message>
    <message>
        <source>{} has {} members</source>
        <translation>{} tiene {} miembros</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>como mucho {}</translation>
    </message>
    <message>
        <source>{} boxes are listed</source>
        <translation>se enumeran {} cuerpos</translation>
    </message>
    <message>
        <source>from 1 to {} boxes</source>
        <translation>de 1 a {} cuerpos</translation>
    </message>
    <message>
        <source>a list of combs, or {&quot;full_of_stores&quot;: ..., &quot;half&quot;: ..., &quot;capped_share&quot;: ...}</source>
        <translation>una lista de cuadros, o {&quot;full_of_stores&quot;: ..., &quot;half&quot;: ..., &quot;capped_share&quot;: ...}</translation>
    </message>
    <message>
        <source>&quot;case&quot; is {}</source>
        <translation>&quot;case&quot; es {}</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} o {}</translation>
    </message>
    <message>
        <source>name the nearest town, or give latitude and longitude</source>
        <translation>nombre la población más cercana, o indique la latitud y la longitud</translation>
    </message>
    <message>
        <source>did you mean {}? Else name the nearest town, or give latitude and longitude</source>
        <translation>¿quiso decir {}? Si no, nombre la población más cercana, o indique la latitud y la longitud</translation>
    </message>
    <message>
        <source>no place {}</source>
        <translation>no hay ningún lugar {}</translation>
    </message>
</context>
<context>
    <name>Photograph</name>
    <message>
        <source>top left corner</source>
        <translation>esquina superior izquierda</translation>
    </message>
    <message>
        <source>top right corner</source>
        <translation>esquina superior derecha</translation>
    </message>
    <message>
        <source>bottom right corner</source>
        <translation>esquina inferior derecha</translation>
    </message>
    <message>
        <source>bottom left corner</source>
        <translation>esquina inferior izquierda</translation>
    </message>
    <message>
        <source>left end of the comb at the bar</source>
        <translation>extremo izquierdo del panal en la barra</translation>
    </message>
    <message>
        <source>right end of the comb at the bar</source>
        <translation>extremo derecho del panal en la barra</translation>
    </message>
    <message>
        <source>somewhere low on the left side</source>
        <translation>algún punto bajo del lado izquierdo</translation>
    </message>
    <message>
        <source>somewhere low on the right side</source>
        <translation>algún punto bajo del lado derecho</translation>
    </message>
    <message>
        <source>lowest point</source>
        <translation>punto más bajo</translation>
    </message>
    <message>
        <source>%1 is no picture that can be read (%2). Choose a JPEG or PNG file.</source>
        <translation>%1 no es una imagen que se pueda leer (%2). Elija un archivo JPEG o PNG.</translation>
    </message>
</context>
<context>
    <name>Places</name>
    <message>
        <source>under 1 km</source>
        <translation>menos de 1 km</translation>
    </message>
    <message>
        <source>no weather station is near enough: the nearest, %1, is %2 away. Give monthly temperatures of your own</source>
        <translation>no hay ninguna estación meteorológica bastante cerca: la más próxima, %1, está a %2. Indique temperaturas mensuales propias</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, at its height</source>
        <translation>tiempo de %1, a %2, a su altitud</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, about as high</source>
        <translation>tiempo de %1, a %2, casi a la misma altitud</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, %3 higher: here it is %4 warmer</source>
        <translation>tiempo de %1, a %2, %3 más arriba: aquí hace %4 más</translation>
    </message>
    <message>
        <source>weather of %1, %2 away, %3 lower: here it is %4 colder</source>
        <translation>tiempo de %1, a %2, %3 más abajo: aquí hace %4 menos</translation>
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
        <translation>reservas, %1</translation>
    </message>
    <message>
        <source>eaten, %1 a day</source>
        <translation>consumo, %1 al día</translation>
    </message>
    <message>
        <source>air, %1</source>
        <translation>aire, %1</translation>
    </message>
    <message>
        <source>as forage starts,
1 dot = 2 in 100</source>
        <translation>al comenzar la floración,
1 punto = 2 de cada 100</translation>
    </message>
    <message>
        <source>adult bees</source>
        <translation>abejas adultas</translation>
    </message>
    <message>
        <source>warmth for brood</source>
        <translation>calor para la cría</translation>
    </message>
    <message>
        <source>food for brood</source>
        <translation>alimento para la cría</translation>
    </message>
    <message>
        <source>air, mean of the day</source>
        <translation>aire, media del día</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>reserve
%1</source>
        <translation>margen de seguridad
%1</translation>
    </message>
</context>
<context>
    <name>RecordRows</name>
    <message>
        <source>bees on %1 %{combs}</source>
        <translation>abejas en %1 cuadros</translation>
    </message>
    <message>
        <source>%1 seams of bees</source>
        <translation>%1 calles de abejas</translation>
    </message>
    <message>
        <source>%1 bees</source>
        <translation>%1 abejas</translation>
    </message>
    <message>
        <source>one %{comb} looked at</source>
        <translation>un cuadro revisado</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} looked at</source>
        <translation>
            <numerusform>%n cuadro revisado</numerusform>
            <numerusform>%n cuadros revisados</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %{combs} full, %2 half full, by count</source>
        <translation>%1 cuadros llenos, %2 a medio llenar, contados</translation>
    </message>
    <message>
        <source>queen seen</source>
        <translation>reina vista</translation>
    </message>
    <message>
        <source>queen not seen</source>
        <translation>reina no vista</translation>
    </message>
    <message>
        <source>eggs</source>
        <translation>huevos</translation>
    </message>
    <message>
        <source>no eggs</source>
        <translation>sin huevos</translation>
    </message>
    <message>
        <source>sealed brood</source>
        <translation>cría operculada</translation>
    </message>
    <message>
        <source>no sealed brood</source>
        <translation>sin cría operculada</translation>
    </message>
    <message>
        <source>pollen coming in</source>
        <translation>entrada de polen</translation>
    </message>
    <message>
        <source>no pollen coming in</source>
        <translation>sin entrada de polen</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>signos de enfermedad</translation>
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
        <translation>en báscula: %1</translation>
    </message>
    <message>
        <source>hefted: %1</source>
        <translation>sopesada: %1</translation>
    </message>
    <message>
        <source>both sides lifted: %1 and %2</source>
        <translation>por los dos lados: %1 y %2</translation>
    </message>
    <message>
        <source>one side lifted: %1</source>
        <translation>por un lado: %1</translation>
    </message>
    <message>
        <source>%1 of sugar</source>
        <translation>%1 de azúcar</translation>
    </message>
    <message>
        <source>%1, %2 by weight</source>
        <translation>%1, %2 en peso</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 on one %{comb}</source>
        <translation>%1 en un cuadro</translation>
    </message>
    <message numerus="yes">
        <source>%1 on %n %{combs}</source>
        <translation>
            <numerusform>%1 en %n cuadro</numerusform>
            <numerusform>%1 en %n cuadros</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, hasta el %2</translation>
    </message>
    <message>
        <source>%1, not ended yet</source>
        <translation>%1, sin terminar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>one box, %1</source>
        <translation>un cuerpo, %1</translation>
    </message>
    <message numerus="yes">
        <source>%n boxes, %1</source>
        <translation>
            <numerusform>%n cuerpo, %1</numerusform>
            <numerusform>%n cuerpos, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>to another yard</source>
        <translation>a otro colmenar</translation>
    </message>
    <message numerus="yes">
        <source>%1; from %n simulated winters</source>
        <translation>
            <numerusform>%1; de %n invierno simulado</numerusform>
            <numerusform>%1; de %n inviernos simulados</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>alive</source>
        <translation>viva</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>muerta</translation>
    </message>
    <message>
        <source>%1 of stores left</source>
        <translation>%1 de reservas que quedan</translation>
    </message>
    <message>
        <source>food within reach</source>
        <translation>alimento a su alcance</translation>
    </message>
    <message>
        <source>no food within reach</source>
        <translation>sin alimento a su alcance</translation>
    </message>
    <message>
        <source>heads in the cells</source>
        <translation>cabezas en las celdas</translation>
    </message>
    <message>
        <source>no heads in the cells</source>
        <translation>sin cabezas en las celdas</translation>
    </message>
    <message>
        <source>many mites</source>
        <translation>muchos ácaros</translation>
    </message>
    <message>
        <source>few mites</source>
        <translation>pocos ácaros</translation>
    </message>
    <message>
        <source>brood: %1</source>
        <translation>cría: %1</translation>
    </message>
    <message>
        <source>queen found</source>
        <translation>reina encontrada</translation>
    </message>
    <message>
        <source>no queen found</source>
        <translation>reina no encontrada</translation>
    </message>
    <message>
        <source>stores in sight</source>
        <translation>reservas a la vista</translation>
    </message>
    <message>
        <source>no stores in sight</source>
        <translation>sin reservas a la vista</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
</context>
<context>
    <name>Remark</name>
    <message>
        <source>Robbers and %{wasps}: work in the evening, feed inside the hive only, spill nothing, and narrow the entrance: %{=6 mm} high and about %{=7 cm} to %{=12 cm} wide, for a weak colony one bee&apos;s width.</source>
        <translation>Pilladoras y avispas: trabaje al atardecer, alimente solo dentro de la colmena, no derrame nada y reduzca la piquera: %{=6 mm} de alto y entre %{=7 cm} y %{=12 cm} de ancho; en una colonia débil, el paso de una abeja.</translation>
    </message>
    <message>
        <source>Feed inside the hive only: feed in the open brings robbers and carries disease.</source>
        <translation>Alimente solo dentro de la colmena: el alimento al aire libre atrae pilladoras y propaga enfermedades.</translation>
    </message>
    <message>
        <source>Foulbrood has to be reported: close the hive, narrow the entrance, wash hands and tools, and open no other hive before.</source>
        <translation>La loque es de declaración obligatoria: cierre la colmena, reduzca la piquera, lávese las manos y lave las herramientas, y no abra antes ninguna otra colmena.</translation>
    </message>
    <message>
        <source>Fondant has to touch the bees, under a cover that keeps them warm; the lid is off for half a minute, no %{comb} is drawn.</source>
        <translation>El candi debe tocar a las abejas, bajo una cubierta que les conserve el calor; la tapa se quita medio minuto y no se saca ningún cuadro.</translation>
    </message>
    <message>
        <source>So near to spring forage what is fed may end up in honey: no super goes on before it is eaten.</source>
        <translation>Tan cerca de la floración de primavera, lo que se da puede acabar en la miel: no se pone ningún alza hasta que lo hayan comido.</translation>
    </message>
    <message>
        <source>The refractometer shows %{water:1} % water. Honey keeps with at most 18 %, measured on several %{combs}; food law allows 20 %, heather 23 %.</source>
        <translation>El refractómetro marca %{water:1}&#xa0;% de humedad. La miel se conserva con un 18&#xa0;% como mucho, medido en varios cuadros; la normativa alimentaria admite un 20&#xa0;%, y un 23&#xa0;% en la de brezo.</translation>
    </message>
    <message>
        <source>Measure the water with a refractometer on several %{combs} before taking any: honey keeps with at most 18 %, food law allows 20 %, heather 23 %.</source>
        <translation>Mida la humedad con un refractómetro en varios cuadros antes de quitar ninguno: la miel se conserva con un 18&#xa0;% como mucho; la normativa alimentaria admite un 20&#xa0;%, y un 23&#xa0;% en la de brezo.</translation>
    </message>
    <message>
        <source>Before weighing again: is the empty weight that of this hive as it stands, are stones, feeder and wet snow off, is a super left out of the list?</source>
        <translation>Antes de volver a pesar: ¿el peso en vacío es el de esta colmena tal como está?, ¿se han quitado piedras, alimentador y nieve mojada?, ¿falta algún alza en la lista?</translation>
    </message>
    <message>
        <source>Thick syrup is right now, but left standing in the cold to be expected before the last day it lets up to %{percent:0} % of its weight settle as sugar: give it lukewarm and in portions that are soon taken.</source>
        <translation>Ahora conviene jarabe denso, pero si se queda quieto con el frío que cabe esperar antes del último día, hasta un %{percent:0}&#xa0;% de su peso se deposita como azúcar: delo tibio y en raciones que tomen pronto.</translation>
    </message>
    <message>
        <source>Unite healthy colonies only, by %{day}: in the evening, the %{combs} of the weak one hung beside those of the strong one behind a sheet of newspaper, the bees misted with water, the better queen kept. Later it is too cold for the bees to come together.</source>
        <translation>Solo se unen colonias sanas, a más tardar el %{day}: al atardecer, los cuadros de la débil colgados junto a los de la fuerte tras una hoja de papel de periódico, con las abejas rociadas con agua; se queda la mejor reina. Más tarde hace demasiado frío para que las abejas se junten.</translation>
    </message>
    <message>
        <source>Unite healthy colonies only, by %{day}: in the evening, the weak one above the strong one with a sheet of newspaper between, the better queen kept. Later it is too cold for the bees to come together.</source>
        <translation>Solo se unen colonias sanas, a más tardar el %{day}: al atardecer, la débil sobre la fuerte con una hoja de papel de periódico en medio; se queda la mejor reina. Más tarde hace demasiado frío para que las abejas se junten.</translation>
    </message>
    <message>
        <source>A small colony, and too late to unite: narrow it into a nucleus box with full %{combs} on both sides, and insulate it.</source>
        <translation>Colonia pequeña, y ya es tarde para unirla: estréchela en una caja de núcleo con cuadros llenos a ambos lados y aíslela.</translation>
    </message>
    <message>
        <source>Mites first: good stores do not save a colony treated too late. Count them now and treat once the honey is off; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Primero, la varroa: unas buenas reservas no salvan a una colonia tratada demasiado tarde. Cuente los ácaros ahora y trate en cuanto se haya quitado la miel; con qué tratar lo deciden la etiqueta, el veterinario y los servicios oficiales.</translation>
    </message>
    <message>
        <source>Mites first: good stores do not save a colony treated too late. Count them now, and treat without delay, for what is in the super stays with the bees; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Primero, la varroa: unas buenas reservas no salvan a una colonia tratada demasiado tarde. Cuente los ácaros ahora y trate sin demora, pues lo que hay en el alza se queda para las abejas; con qué tratar lo deciden la etiqueta, el veterinario y los servicios oficiales.</translation>
    </message>
    <message>
        <source>You have treated against mites: count them again two to three weeks after it, for a treatment may fail and robbers bring mites home.</source>
        <translation>Ya ha tratado contra la varroa: vuelva a contar los ácaros dos o tres semanas después, porque un tratamiento puede fallar y las pilladoras traen ácaros a la colmena.</translation>
    </message>
    <message>
        <source>%{mites:0} mites on 100 bees are too many: stores do not save such a colony. Treat as soon as no honey for people is on, before anything else, and count again two to three weeks after it; the label, your vet and the bee inspector decide on the means.</source>
        <translation>%{mites:0} varroas por cada 100 abejas son demasiados: las reservas no salvan a una colonia así. Trate antes que nada, en cuanto no haya puesta miel para consumo humano, y vuelva a contar dos o tres semanas después; la etiqueta, su veterinario y los servicios veterinarios oficiales deciden el producto.</translation>
    </message>
    <message>
        <source>You have counted the mites: where the count calls for it treat as soon as no honey for people is on, and count again two to three weeks after it. Good stores do not save a colony treated too late; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Ya ha contado los ácaros: si el recuento lo pide, trate en cuanto no quede puesta miel para consumo humano, y vuelva a contar dos o tres semanas después. Unas buenas reservas no salvan a una colonia tratada demasiado tarde; con qué tratar lo deciden la etiqueta, el veterinario y los servicios oficiales.</translation>
    </message>
    <message>
        <source>Good stores do not save a colony treated too late: in a trial, colonies treated against varroa in July or August were lost a third less often. Count the mites; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Unas buenas reservas no salvan a una colonia tratada demasiado tarde: en un ensayo, entre las colonias tratadas contra la varroa en julio o agosto hubo un tercio menos de pérdidas. Cuente los ácaros; con qué tratar lo deciden la etiqueta, el veterinario y los servicios oficiales.</translation>
    </message>
    <message>
        <source>Good stores do not save a colony treated too late, that is after January or February. Count the mites where varroa is; the label, your vet and the bee inspector decide on the means.</source>
        <translation>Unas buenas reservas no salvan a una colonia tratada demasiado tarde, es decir, después de enero o febrero. Cuente los ácaros donde haya varroa; con qué tratar lo deciden la etiqueta, el veterinario y los servicios oficiales.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so when brood grows in March and April, not in midwinter: heft it again then.</source>
        <translation>La mayoría de las colonias que mueren de hambre mueren cuando crece la cría, en marzo y abril, y no en pleno invierno: vuelva a sopesarla entonces.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so when brood grows in August and September, not in midwinter: heft it again then.</source>
        <translation>La mayoría de las colonias que mueren de hambre mueren cuando crece la cría, en agosto y septiembre, y no en pleno invierno: vuelva a sopesarla entonces.</translation>
    </message>
    <message>
        <source>Most colonies that starve do so while brood grows before spring forage starts, not in midwinter: heft it often then.</source>
        <translation>La mayoría de las colonias que mueren de hambre mueren mientras crece la cría, antes de la floración de primavera, y no en pleno invierno: sopésela entonces a menudo.</translation>
    </message>
    <message>
        <source>The nectar counted on here may fail. Weigh again when no more comes in.</source>
        <translation>El néctar con el que aquí se cuenta puede fallar. Vuelva a pesar cuando ya no entre más.</translation>
    </message>
    <message>
        <source>Where a super stays on as winter food take the queen excluder out before laying stops, or the queen is left below in the cold.</source>
        <translation>Si se deja un alza como alimento de invierno, quite el excluidor de reina antes del corte de puesta; si no, la reina se queda abajo, en el frío.</translation>
    </message>
    <message>
        <source>Neither queen nor eggs were seen: make sure of a laying queen before anything else.</source>
        <translation>No se vio la reina ni huevos: antes de nada, asegúrese de que hay una reina en puesta.</translation>
    </message>
    <message>
        <source>Hardly any brood was seen, though laying usually stops around %{day} only. The amounts here are those of a queen that lays: if she has stopped, %{need:amount} are enough. Look for eggs in a week.</source>
        <translation>Apenas se vio cría, aunque la puesta no suele cortarse hasta alrededor del %{day}. Las cantidades de aquí valen para una reina en puesta: si ha dejado de poner, bastan %{need:amount}. Busque huevos dentro de una semana.</translation>
    </message>
    <message>
        <source>Hardly any brood was seen, though the queen should still have been laying. The amounts here are those of a queen that lays: if she has stopped, %{need:amount} are enough. Look for eggs in a week.</source>
        <translation>Apenas se vio cría, aunque la reina todavía debería haber estado en puesta. Las cantidades de aquí valen para una reina en puesta: si ha dejado de poner, bastan %{need:amount}. Busque huevos dentro de una semana.</translation>
    </message>
    <message>
        <source>This is an early look, and rougher for it. Weigh again when no more nectar comes in.</source>
        <translation>Esta es una primera estimación, hecha pronto y por eso menos precisa. Vuelva a pesar cuando ya no entre más néctar.</translation>
    </message>
    <message>
        <source>Next: weigh it on %{day}, both sides, without opening.</source>
        <translation>Lo siguiente: pesarla el %{day}, por los dos lados y sin abrir.</translation>
    </message>
    <message>
        <source>Next: on %{day} look at the stores, and count the mites.</source>
        <translation>Lo siguiente: el %{day}, revisar las reservas y contar los ácaros.</translation>
    </message>
    <message>
        <source>Next: on %{day} look for queen cells on the %{comb} with eggs.</source>
        <translation>Lo siguiente: el %{day}, buscar celdas reales en el cuadro con huevos.</translation>
    </message>
    <message>
        <source>Next: on %{day} see whether the feed is taken and being capped.</source>
        <translation>Lo siguiente: el %{day}, ver si toman el alimento y lo están operculando.</translation>
    </message>
    <message>
        <source>Take supers whose honey is meant for people off before any syrup goes on, or syrup ends up in it.</source>
        <translation>Quite las alzas cuya miel es para consumo humano antes de poner jarabe; si no, el jarabe acaba en ella.</translation>
    </message>
    <message>
        <source>Honey stored while a colony was fed or treated is for the bees, not for people. After medicines the label, the vet and the law decide.</source>
        <translation>La miel almacenada mientras se alimentaba o trataba una colonia es para las abejas, no para las personas. Después de un medicamento deciden la etiqueta, el veterinario y la ley.</translation>
    </message>
    <message>
        <source>Take a %{comb} only if at least two thirds of its stores are capped; under four fifths the honey may be too wet to keep.</source>
        <translation>Quite un cuadro solo si están operculados al menos dos tercios de sus reservas; por debajo de cuatro quintos, la miel puede tener demasiada humedad para conservarse.</translation>
    </message>
    <message>
        <source>No honey for children under twelve months.</source>
        <translation>Nada de miel a niños menores de doce meses.</translation>
    </message>
    <message>
        <source>Never feed honey whose origin you do not know: it can carry foulbrood.</source>
        <translation>Nunca dé miel de la que no conozca el origen: puede llevar loque.</translation>
    </message>
    <message>
        <source>Use white granulated sugar only. Brown, raw and icing sugar and molasses hold what bees cannot digest.</source>
        <translation>Use solo azúcar blanco granulado. El azúcar moreno, sin refinar o glas y la melaza llevan cosas que las abejas no pueden digerir.</translation>
    </message>
    <message>
        <source>Do not boil syrup, and add no acid or vinegar: both make HMF, which poisons bees.</source>
        <translation>No hierva el jarabe ni le añada ácido o vinagre: de las dos formas se produce HMF, que envenena a las abejas.</translation>
    </message>
    <message>
        <source>Lay floats or straw on the syrup of an open feeder, so that bees do not drown.</source>
        <translation>Ponga flotadores o paja sobre el jarabe de un alimentador abierto, para que las abejas no se ahoguen.</translation>
    </message>
    <message>
        <source>Stores from ivy or rape set hard; heather honey and honeydew can scour bees that cannot fly. Where such stores come in, give some syrup on top; where the cold is long, replace those %{combs}.</source>
        <translation>Las reservas de hiedra o colza se endurecen; la miel de brezo y el mielato pueden dar disentería a las abejas que no pueden volar. Si entran reservas así, dé además algo de jarabe; donde el frío dura mucho, cambie esos cuadros.</translation>
    </message>
    <message>
        <source>It may be too cool to open: a full look from %{=15 °C}, half a minute from %{=10 °C}, in winter the lid alone from %{=7 °C}.</source>
        <translation>Puede hacer demasiado fresco para abrir: una revisión completa, desde %{=15 °C}; medio minuto, desde %{=10 °C}; en invierno, solo la tapa, desde %{=7 °C}.</translation>
    </message>
    <message>
        <source>About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. Hang full %{combs} beside the bees and above them, without an empty %{comb} between.</source>
        <translation>Alrededor de %{within:amount} están al alcance del racimo, y una ola de frío larga puede costar %{needed:amount}. Ponga cuadros llenos junto a las abejas y encima de ellas, sin ningún cuadro vacío en medio.</translation>
    </message>
    <message>
        <source>In this long hive stores lie on both sides of the bees, or beyond an empty %{comb}: bees that have eaten to one end do not come back in the cold. Put the bees at one end and all the stores on one side of them.</source>
        <translation>En esta colmena horizontal hay reservas a ambos lados de las abejas, o más allá de un cuadro vacío: las abejas que han comido hasta un extremo no vuelven atrás con frío. Ponga las abejas en un extremo y todas las reservas al mismo lado de ellas.</translation>
    </message>
    <message>
        <source>About %{within:amount} lie within reach of the cluster, and a long cold spell may take %{needed:amount}. On a day of %{=10 °C} hang a full %{comb} against the bees; should they run short before, lay fondant on them.</source>
        <translation>Alrededor de %{within:amount} están al alcance del racimo, y una ola de frío larga puede costar %{needed:amount}. Un día de %{=10 °C}, ponga un cuadro lleno pegado a las abejas; si se quedan sin alimento antes, póngales candi encima.</translation>
    </message>
    <message>
        <source>Where the cold is long, insulation above the %{combs} saves food.</source>
        <translation>Donde el frío dura mucho, un aislante sobre los cuadros ahorra alimento.</translation>
    </message>
    <message>
        <source>Let moisture leave: entrance clear, hive tilted slightly forward, nothing cold and wet above the bees.</source>
        <translation>Deje salir la humedad: la piquera libre, la colmena un poco inclinada hacia delante y nada frío y mojado sobre las abejas.</translation>
    </message>
    <message>
        <source>Fit a mouse guard with openings of %{=6 mm} to %{=8 mm} before days stay below %{=5 °C}.</source>
        <translation>Ponga una rejilla contra ratones con huecos de %{=6 mm} a %{=8 mm} antes de que los días se queden por debajo de %{=5 °C}.</translation>
    </message>
    <message>
        <source>Heft every two weeks; once brood has started, weigh every two to three weeks.</source>
        <translation>Sopese cada dos semanas; cuando haya empezado la cría, pese cada dos o tres semanas.</translation>
    </message>
    <message>
        <source>Close a dead hive the same day. Nothing of it goes to another colony until disease is ruled out; a notifiable disease has to be reported.</source>
        <translation>Cierre una colmena muerta el mismo día. Nada de ella pasa a otra colonia hasta que se descarte una enfermedad; una enfermedad de declaración obligatoria hay que declararla.</translation>
    </message>
    <message>
        <source>A full deep box weighs up to %{=40 kg}: lift %{combs} rather than boxes.</source>
        <translation>Un cuerpo alto lleno pesa hasta %{=40 kg}: levante cuadros mejor que cuerpos.</translation>
    </message>
    <message>
        <source>Stings can be dangerous: with an allergy never work alone, and keep the emergency number at hand.</source>
        <translation>Las picaduras pueden ser peligrosas: con alergia, no trabaje nunca a solas y tenga a mano el número de emergencias.</translation>
    </message>
    <message>
        <source>Water of %{=50 °C} to %{=60 °C} dissolves sugar well enough; hotter syrup scalds, and spoils.</source>
        <translation>El agua de %{=50 °C} a %{=60 °C} disuelve bien el azúcar; más caliente, el jarabe quema y se estropea.</translation>
    </message>
    <message>
        <source>Comb without a frame breaks easily: free its sides first, keep it vertical, begin at the empty end, and leave it alone in heat.</source>
        <translation>El panal sin cuadro se rompe con facilidad: suelte primero los lados, manténgalo vertical, empiece por el extremo vacío y no lo toque con calor.</translation>
    </message>
    <message>
        <source>In a long hive the feeder goes behind the follower, and fondant stands as a slab beside the cluster, not over the bars.</source>
        <translation>En una colmena horizontal, el alimentador va tras el separador, y el candi se coloca de pie junto al racimo, no sobre los cabezales.</translation>
    </message>
    <message>
        <source>Only about %{pollen} of bee bread was seen. With under half a kilogram when laying stops, brood has little to start on: keep %{combs} with pollen beside the nest.</source>
        <translation>Solo se vieron alrededor de %{pollen} de pan de abejas. Con menos de medio kilogramo al corte de puesta, la cría tiene poco con que empezar: conserve cuadros con polen junto al nido de cría.</translation>
    </message>
    <message>
        <source>Laying has begun again by now, and nothing was said of brood: how much of it there is would tell more than anything else.</source>
        <translation>A estas alturas la reina ya ha vuelto a poner y no se indicó nada de la cría: saber cuánta hay diría más que ninguna otra cosa.</translation>
    </message>
    <message>
        <source>%{Combs} move between healthy colonies only, in a yard without foulbrood: brush the bees off, work at dusk, and leave the giver its own need.</source>
        <translation>Los cuadros pasan solo entre colonias sanas, en un colmenar sin loque: cepille las abejas, trabaje al anochecer y deje a la que da lo que ella misma necesita.</translation>
    </message>
    <message>
        <source>More is left than spring needs: make room for the queen in time. Old winter feed never goes up into supers.</source>
        <translation>Queda más de lo que pide la primavera: haga sitio a tiempo para la reina. El alimento viejo de invierno nunca se sube a las alzas.</translation>
    </message>
    <message>
        <source>Whether a %{comb} named here holds brood was not said: look before taking it, and leave it if it does.</source>
        <translation>No se indicó si un cuadro nombrado aquí tiene cría: mire antes de quitarlo y, si la tiene, déjelo.</translation>
    </message>
    <message>
        <source>Where disease, medicines or local law are concerned, the bee inspector, the vet and the law come first.</source>
        <translation>En lo que toca a enfermedades, medicamentos o la ley del lugar, deciden primero los servicios veterinarios oficiales, el veterinario y la ley.</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>
            <numerusform>No es posible que sean %{weight}: %n cuerpo de este tamaño pesa %{most} con todos los cuadros llenos de miel. ¿Son %{number:1} lb, es decir, %{meant}?</numerusform>
            <numerusform>No es posible que sean %{weight}: %n cuerpos de este tamaño pesan %{most} con todos los cuadros llenos de miel. ¿Son %{number:1} lb, es decir, %{meant}?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>No es posible que sean %{weight}: un cuerpo de este tamaño pesa %{most} con todos los cuadros llenos de miel. ¿Son %{number:1} lb, es decir, %{meant}?</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>
            <numerusform>No es posible que sean %{weight}: %n cuerpo de este tamaño pesa %{most} con todos los cuadros llenos de miel. ¿Son %{meant}?</numerusform>
            <numerusform>No es posible que sean %{weight}: %n cuerpos de este tamaño pesan %{most} con todos los cuadros llenos de miel. ¿Son %{meant}?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>No es posible que sean %{weight}: un cuerpo de este tamaño pesa %{most} con todos los cuadros llenos de miel. ¿Son %{meant}?</translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>
            <numerusform>No es posible que sean %{weight}: %n cuerpo de este tamaño pesa %{most} con todos los cuadros llenos de miel. ¿Falta algún cuerpo por anotar?</numerusform>
            <numerusform>No es posible que sean %{weight}: %n cuerpos de este tamaño pesan %{most} con todos los cuadros llenos de miel. ¿Falta algún cuerpo por anotar?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{weight} cannot well be: one box of this size weighs %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>No es posible que sean %{weight}: un cuerpo de este tamaño pesa %{most} con todos los cuadros llenos de miel. ¿Falta algún cuerpo por anotar?</translation>
    </message>
    <message>
        <source>%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Is it %{meant}?</source>
        <translation>No es posible que sean %{weight}: esta colmena pesa vacía %{least} o más. ¿Son %{meant}?</translation>
    </message>
    <message>
        <source>%{weight} cannot well be: this hive weighs %{least} or more when it is empty. Was all of it on the scale?</source>
        <translation>No es posible que sean %{weight}: esta colmena pesa vacía %{least} o más. ¿Estaba entera en la báscula?</translation>
    </message>
    <message>
        <source>%{side} on one side cannot well be: one side of this hive weighs %{least} or more when it is empty. Was it lifted clear, and is it in the right unit?</source>
        <translation>%{side} en un lado difícilmente puede ser: un lado de esta colmena pesa %{least} o más cuando está vacía. ¿Se levantó del todo y es correcta la unidad?</translation>
    </message>
    <message>
        <source>%{weight} does not go with the %{other} of %{day}: ten times as much. Has a decimal point slipped?</source>
        <translation>%{weight} no cuadra con el peso del %{day} (%{other}): es diez veces más. ¿Se corrió la coma o el punto decimal?</translation>
    </message>
    <message>
        <source>%{weight} does not go with the %{other} of %{day}: as much as pounds differ from kilograms. Which is it?</source>
        <translation>%{weight} no cuadra con el peso del %{day} (%{other}): la diferencia es la que hay entre libras y kilogramos. ¿Qué unidad es?</translation>
    </message>
    <message numerus="yes">
        <source>%{taken} of honey cannot well come out of %n boxes of this size, which hold %{most} at the most. Is a box not written down?</source>
        <translation>
            <numerusform>No es posible que salgan %{taken} de miel de %n cuerpo de este tamaño, en el que caben %{most} como mucho. ¿Falta algún cuerpo por anotar?</numerusform>
            <numerusform>No es posible que salgan %{taken} de miel de %n cuerpos de este tamaño, en los que caben %{most} como mucho. ¿Falta algún cuerpo por anotar?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{taken} of honey cannot well come out of one box of this size, which holds %{most} at the most. Is a box not written down?</source>
        <translation>No es posible que salgan %{taken} de miel de un cuerpo de este tamaño, en el que caben %{most} como mucho. ¿Falta algún cuerpo por anotar?</translation>
    </message>
    <message>
        <source>%{taken} of honey is more than can have been there: at most %{most}, going by the weight of %{day}. Is it right?</source>
        <translation>%{taken} de miel es más de lo que podía haber: como mucho %{most}, según el peso del %{day}. ¿Es correcto?</translation>
    </message>
    <message>
        <source>%{taken} of honey is more than can have been there: at most %{most}, going by the %{combs} of %{day}. Is it right?</source>
        <translation>%{taken} de miel es más de lo que podía haber: como mucho %{most}, según los cuadros del %{day}. ¿Es correcto?</translation>
    </message>
    <message numerus="yes">
        <source>A feed that makes %{stores} of stores cannot be: %n boxes of this size hold %{most}. How much was it?</source>
        <translation>
            <numerusform>No es posible un aporte de alimento que dé %{stores} de reservas: en %n cuerpo de este tamaño caben %{most}. ¿Cuánto fue?</numerusform>
            <numerusform>No es posible un aporte de alimento que dé %{stores} de reservas: en %n cuerpos de este tamaño caben %{most}. ¿Cuánto fue?</numerusform>
        </translation>
    </message>
    <message>
        <source>A feed that makes %{stores} of stores cannot be: one box of this size holds %{most}. How much was it?</source>
        <translation>No es posible un aporte de alimento que dé %{stores} de reservas: en un cuerpo de este tamaño caben %{most}. ¿Cuánto fue?</translation>
    </message>
    <message>
        <source>%{given} in one day is much: few feeders let bees take more than %{most}. Is it right?</source>
        <translation>%{given} en un día es mucho: pocos alimentadores dejan que las abejas tomen más de %{most}. ¿Es correcto?</translation>
    </message>
    <message numerus="yes">
        <source>The feeds of %n days make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>
            <numerusform>Los aportes de alimento de %n día dan %{stores} de reservas, y en esta colmena caben %{most}. ¿Es correcto?</numerusform>
            <numerusform>Los aportes de alimento de %n días dan %{stores} de reservas, y en esta colmena caben %{most}. ¿Es correcto?</numerusform>
        </translation>
    </message>
    <message>
        <source>The feeds of a day make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>Los aportes de alimento de un día dan %{stores} de reservas, y en esta colmena caben %{most}. ¿Es correcto?</translation>
    </message>
    <message>
        <source>%{covered:1} covered %{combs} are more than the %{most:0} places of this hive. How many were covered on both sides?</source>
        <translation>%{covered:1} cuadros cubiertos son más que los %{most:0} lugares de esta colmena. ¿Cuántos estaban cubiertos por ambas caras?</translation>
    </message>
    <message>
        <source>%{seams:1} seams are more than the %{most:0} this hive has. How many were filled with bees?</source>
        <translation>%{seams:1} calles son más que las %{most:0} que tiene esta colmena. ¿Cuántas estaban llenas de abejas?</translation>
    </message>
    <message>
        <source>%{bees:hundreds} bees are more than this hive houses, %{most:hundreds} at the very most. Is it right?</source>
        <translation>%{bees:hundreds} abejas son más de las que caben en esta colmena, %{most:hundreds} a lo sumo. ¿Es correcto?</translation>
    </message>
    <message>
        <source>%{cells:hundreds} cells of brood leave no room for food: all %{combs} of this hive have %{most:hundreds} cells. Is it right?</source>
        <translation>%{cells:hundreds} celdas de cría no dejan sitio para alimento: todos los cuadros de esta colmena tienen %{most:hundreds} celdas. ¿Es correcto?</translation>
    </message>
    <message>
        <source>%{combs:1} %{combs} with stores are more than the %{most:0} places of this hive. How many were there?</source>
        <translation>%{combs:1} cuadros con reservas son más que los %{most:0} lugares de esta colmena. ¿Cuántos había?</translation>
    </message>
    <message numerus="yes">
        <source>%{stores} of stores cannot well be left in %n boxes of this size, which hold %{most} at the most. Is it right?</source>
        <translation>
            <numerusform>No es posible que queden %{stores} de reservas en %n cuerpo de este tamaño, en el que caben %{most} como mucho. ¿Es correcto?</numerusform>
            <numerusform>No es posible que queden %{stores} de reservas en %n cuerpos de este tamaño, en los que caben %{most} como mucho. ¿Es correcto?</numerusform>
        </translation>
    </message>
    <message>
        <source>%{stores} of stores cannot well be left in one box of this size, which holds %{most} at the most. Is it right?</source>
        <translation>No es posible que queden %{stores} de reservas en un cuerpo de este tamaño, en el que caben %{most} como mucho. ¿Es correcto?</translation>
    </message>
    <message>
        <source>%{water:1} % of water is out of the usual: honey in combs has %{low:0} to %{high:0} %. Is it right?</source>
        <translation>%{water:1}&#xa0;% de humedad no es normal: la miel en panal tiene del %{low:0} al %{high:0}&#xa0;%. ¿Es correcto?</translation>
    </message>
    <message>
        <source>%{day} is still to come: today is %{today}. Is the day right?</source>
        <translation>El %{day} aún no ha llegado: hoy es el %{today}. ¿Es correcto el día?</translation>
    </message>
    <message>
        <source>It had other boxes then than when it was looked at, so its weight does not tell its stores. What is in it now?</source>
        <translation>Entonces tenía otros cuerpos que en la revisión, así que su peso no dice sus reservas. ¿Qué hay ahora en ella?</translation>
    </message>
    <message numerus="yes">
        <source>An empty weight of %{weight} is much: %n boxes of this size weigh up to %{most} with all %{combs} drawn and no honey in them. Is it right?</source>
        <translation>
            <numerusform>Un peso en vacío de %{weight} es mucho: %n cuerpo de este tamaño pesa hasta %{most} con todos los cuadros labrados y sin miel. ¿Es correcto?</numerusform>
            <numerusform>Un peso en vacío de %{weight} es mucho: %n cuerpos de este tamaño pesan hasta %{most} con todos los cuadros labrados y sin miel. ¿Es correcto?</numerusform>
        </translation>
    </message>
    <message>
        <source>An empty weight of %{weight} is much: one box of this size weighs up to %{most} with all %{combs} drawn and no honey in it. Is it right?</source>
        <translation>Un peso en vacío de %{weight} es mucho: un cuerpo de este tamaño pesa hasta %{most} con todos los cuadros labrados y sin miel. ¿Es correcto?</translation>
    </message>
    <message>
        <source>An empty weight of %{weight} is little: this hive weighs %{least} or more without a single %{comb}. Was all of it on the scale?</source>
        <translation>Un peso en vacío de %{weight} es poco: esta colmena pesa %{least} o más sin un solo cuadro. ¿Estaba entera en la báscula?</translation>
    </message>
    <message>
        <source>%{day} is before the colony was there, from %{since} on. Is the day right?</source>
        <translation>El %{day} es anterior a la colonia, que está desde el %{since}. ¿Es correcto el día?</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside and do not open: a dry, still day, no knocking, the hive set down gently.</source>
        <translation>Con una máxima de alrededor de %{temperature}, pese o sopese desde fuera y no abra: un día seco y sin viento, sin golpes, y posando la colmena con suavidad.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside; the lid alone may be lifted, no %{comb} is drawn: a dry, still day, no knocking.</source>
        <translation>Con una máxima de alrededor de %{temperature}, pese o sopese desde fuera; solo se puede levantar la tapa y no se saca ningún cuadro: un día seco y sin viento, y sin golpes.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} weigh or heft from outside; the hive may be open for half a minute in the mildest hour, with the cluster left as it is. A full look waits for %{=15 °C}.</source>
        <translation>Con una máxima de alrededor de %{temperature}, pese o sopese desde fuera; la colmena puede estar abierta medio minuto a la hora más suave, sin tocar el racimo. Para una revisión completa, espere a %{=15 °C}.</translation>
    </message>
    <message>
        <source>At a daily maximum of about %{temperature} the food goes on in the mildest hour, dry and still: the lid is off for half a minute only, no %{comb} is lifted, no knocking. All other looks and weighings are from outside.</source>
        <translation>Con una máxima de alrededor de %{temperature}, el alimento se pone a la hora más suave, sin lluvia ni viento: la tapa se quita solo medio minuto, no se levanta ningún cuadro y no se dan golpes. Todo lo demás se mira y se pesa desde fuera.</translation>
    </message>
    <message>
        <source>Lay the fondant flat on the top bars right over the cluster, touching it: cut a window into its wrapping, lay that downwards, and cover it warmly. A block a hand&apos;s breadth away is not found in the cold.</source>
        <translation>Ponga el candi plano sobre los cabezales, justo encima del racimo y tocándolo: abra una ventana en el envoltorio, póngala hacia abajo y abríguelo bien. Un bloque a un palmo de distancia no lo encuentran con frío.</translation>
    </message>
    <message>
        <source>In a long hive stand the fondant as a slab beside the cluster, on the side where its stores are, touching the outermost %{comb} with bees, with no empty %{comb} between.</source>
        <translation>En una colmena horizontal, coloque el candi de pie junto al racimo, por el lado donde están sus reservas, tocando el último cuadro con abejas y sin ningún cuadro vacío en medio.</translation>
    </message>
    <message>
        <source>If there is no fondant, %{sugar:amount} of dry white sugar in all will do in need: on paper on the top bars over the cluster, misted with water, or the bees carry it out.</source>
        <translation>Si no hay candi, en caso de apuro sirven %{sugar:amount} de azúcar blanco seco en total: en papel sobre los cabezales, encima del racimo, y rociado con agua; si no, las abejas lo sacan fuera.</translation>
    </message>
    <message>
        <source>Bees that fly from a dead colony are robbers. Look for pollen coming in or cleansing flights, or listen at the hive, before you call it alive.</source>
        <translation>Las abejas que vuelan de una colonia muerta son pilladoras. Antes de darla por viva, mire si entra polen o si hay vuelos de limpieza, o escuche en la colmena.</translation>
    </message>
    <message>
        <source>Take only %{combs} that never took syrup and were not in the hive while it was treated; everything else is for the bees.</source>
        <translation>Quite solo cuadros que nunca tomaron jarabe y que no estaban en la colmena mientras se trataba; todo lo demás es para las abejas.</translation>
    </message>
    <message>
        <source>Old winter feed never goes up into a super: what is in the way is taken out, kept for light colonies, or left below.</source>
        <translation>El alimento viejo de invierno nunca se sube a un alza: lo que estorba se quita, se guarda para colonias ligeras o se deja abajo.</translation>
    </message>
    <message>
        <source>Most colonies starve in spring, not in midwinter. With brood in every %{comb} a week of cold rain can empty a hive: leave %{leave:amount} until forage is steady.</source>
        <translation>La mayoría de las colonias mueren de hambre en primavera, no en pleno invierno. Con cría en todos los cuadros, una semana de lluvia fría puede vaciar una colmena: deje %{leave:amount} hasta que el néctar entre de forma constante.</translation>
    </message>
    <message>
        <source>It was eaten as expected: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.</source>
        <translation>Comió lo esperado: quedan alrededor de %{stores:amount}; en otoño se esperaban %{planned:amount} para hoy.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are left, less than the %{planned:amount} the autumn expected for today.</source>
        <translation>Quedan alrededor de %{stores:amount}, menos de lo que en otoño se esperaba para hoy, %{planned:amount}.</translation>
    </message>
    <message>
        <source>On course: about %{stores:amount} are left; the autumn expected %{planned:amount} for today.</source>
        <translation>Según lo previsto: quedan alrededor de %{stores:amount}; en otoño se esperaban %{planned:amount} para hoy.</translation>
    </message>
    <message>
        <source>No advice was acted on: it is followed as it was found on %{day}, with nothing but what is written down as fed and taken since.</source>
        <translation>No se adoptó ninguna recomendación: se sigue la colonia tal como se encontró el %{day}, contando solo lo que desde entonces está anotado como dado o quitado.</translation>
    </message>
    <message>
        <source>Until its winter is followed, from %{day} on, what is to be done is what the answer of the day says, in the plan of its yard.</source>
        <translation>Hasta que se siga su invierno, desde el %{day}, lo que hay que hacer es lo que dice la respuesta del día, en el plan de su colmenar.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are left: less than these bees may eat in %{days:0} days. That cannot wait for better weather.</source>
        <translation>Quedan alrededor de %{stores:amount}: menos de lo que estas abejas pueden comer en %{days:0} días. No puede esperar a que mejore el tiempo.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}, and no weighing of the fortnight before says otherwise: one portion does no harm, and a weighing tells what more it needs.</source>
        <translation>Estaba ligera al sopesarla el %{day}, y ninguna pesada de las dos semanas anteriores dice lo contrario: una ración no hace daño, y una pesada dirá qué más necesita.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}, though the weighing of %{weighed} does not say so: weigh it again before anything is fed.</source>
        <translation>Estaba ligera al sopesarla el %{day}, aunque la pesada del %{weighed} no lo confirma: vuelva a pesarla antes de dar nada.</translation>
    </message>
    <message>
        <source>On %{day} it weighed %{seen}, where %{low} to %{high} were expected: more than any winter explains. Was a feed, a box, a stone or another colony added that is not written down? Else check the scale and the empty weight.</source>
        <translation>El %{day} pesaba %{seen}, donde se esperaban de %{low} a %{high}: más de lo que explica ningún invierno. ¿Se añadió alimento, un cuerpo, una piedra u otra colonia sin anotarlo? Si no, revise la báscula y el peso en vacío.</translation>
    </message>
    <message>
        <source>On %{day} no stores were in sight beside the cluster. However heavy the hive is, food the cluster does not touch is not found in the cold: it starves beside full %{combs}.</source>
        <translation>El %{day} no había reservas a la vista junto al racimo. Por mucho que pese la colmena, con frío no se llega al alimento que el racimo no toca: la colonia muere de hambre junto a cuadros llenos.</translation>
    </message>
    <message>
        <source>Where the cluster sat on %{day} empty %{combs} lie between it and the stores. In the cold it does not cross them.</source>
        <translation>Donde estaba el racimo el %{day} hay cuadros vacíos entre él y las reservas. Con frío no los cruza.</translation>
    </message>
    <message>
        <source>About %{seen:0} bees were seen on %{day}, where even a poor winter leaves %{least:0}: the colony dwindles.</source>
        <translation>El %{day} se vieron unas %{seen:0} abejas, cuando hasta un mal invierno deja %{least:0}: la colonia se despuebla.</translation>
    </message>
    <message>
        <source>Less was in the hive than was thought: on %{day} more likely about %{now:amount} than %{thought:amount}. The bees do not eat faster for it.</source>
        <translation>En la colmena había menos de lo que se pensaba: el %{day}, más bien alrededor de %{now:amount} que %{thought:amount}. No por eso comen más deprisa las abejas.</translation>
    </message>
    <message>
        <source>Feed for about %{stores:amount} of stores was planned from %{day} on, and it is not written down that it was given. Was it? Until you say so it is not counted.</source>
        <translation>Desde el %{day} estaba previsto dar alimento para alrededor de %{stores:amount} de reservas y no está anotado que se diera. ¿Se dio? Mientras no lo indique, no se cuenta.</translation>
    </message>
    <message>
        <source>Between %{from} and %{until} the hive lost %{lost}, where about %{expected} was expected: these bees eat faster than forecast.</source>
        <translation>Entre el %{from} y el %{until} la colmena perdió %{lost}, cuando se esperaba alrededor de %{expected}: estas abejas consumen más de lo previsto.</translation>
    </message>
    <message>
        <source>So much is hardly eaten: check the scale, and whether a lid, a box or a stone was on or off on %{day}, and look for robbers.</source>
        <translation>Es difícil que hayan comido tanto: revise la báscula, y si el %{day} faltaba o sobraba una tapa, un cuerpo o una piedra, y mire si hay pilladoras.</translation>
    </message>
    <message>
        <source>More is there than the colony needs: in 9 winters of 10 %{stores:amount} or more will be left when spring forage starts.</source>
        <translation>Hay más de lo que la colonia necesita: en 9 de cada 10 inviernos quedarán %{stores:amount} o más al comenzar la floración de primavera.</translation>
    </message>
    <message>
        <source>On a day of %{=10 °C} or more hang a full %{comb} right against the cluster, no empty one between, and weigh the hive.</source>
        <translation>Un día de %{=10 °C} o más, ponga un cuadro lleno pegado al racimo, sin ninguno vacío en medio, y pese la colmena.</translation>
    </message>
    <message>
        <source>Narrow the entrance and keep it warm from above. On a day of %{=10 °C} or more put the bees together in a small space, a full %{comb} on either side, and see whether there is a queen. Unite it with no other while there may be disease.</source>
        <translation>Reduzca la piquera y abríguela por arriba. Un día de %{=10 °C} o más, junte las abejas en un espacio pequeño, con un cuadro lleno a cada lado, y mire si hay reina. No la una con ninguna otra mientras pueda haber una enfermedad.</translation>
    </message>
    <message>
        <source>No food within reach: it starved, or could not get at what was left elsewhere.</source>
        <translation>Sin alimento a su alcance: murió de hambre, o no pudo llegar a lo que quedaba en otra parte.</translation>
    </message>
    <message>
        <source>Food within reach: it did not starve for want of stores. Look at mites, the queen and the size of the cluster.</source>
        <translation>Con alimento a su alcance: no murió por falta de reservas. Piense en la varroa, en la reina y en el tamaño del racimo.</translation>
    </message>
    <message>
        <source>Bees head down in the cells: they starved; with food elsewhere in the hive, because the cold held them away from it.</source>
        <translation>Abejas de cabeza en las celdas: murieron de hambre; si quedaba alimento en otra parte de la colmena, porque el frío las tuvo lejos de él.</translation>
    </message>
    <message>
        <source>No bees head down in the cells: hunger is not the likely cause.</source>
        <translation>Ninguna abeja de cabeza en las celdas: el hambre no es la causa probable.</translation>
    </message>
    <message>
        <source>Many mites on the floor: the winter bees were raised with varroa and its viruses; treat earlier, and count afterwards.</source>
        <translation>Muchos ácaros en el fondo: las abejas de invierno se criaron con varroa y sus virus; trate antes y cuente después.</translation>
    </message>
    <message>
        <source>Few mites on the floor: varroa is less likely, but a colony that lost its bees in autumn leaves few behind.</source>
        <translation>Pocos ácaros en el fondo: la varroa es menos probable, pero una colonia que perdió sus abejas en otoño deja pocos.</translation>
    </message>
    <message>
        <source>No brood: it died while laying had stopped, or had no laying queen any more.</source>
        <translation>Sin cría: murió mientras la puesta estaba cortada, o ya no tenía reina en puesta.</translation>
    </message>
    <message>
        <source>Solid brood: the queen laid well until a sudden end, by cold or hunger.</source>
        <translation>Cría compacta: la reina puso bien hasta un final repentino, por frío o por hambre.</translation>
    </message>
    <message>
        <source>Patchy brood, dead in its cells: varroa or a brood disease. Close the hive against robbers, and show the %{comb} to the bee inspector before any of it is used again.</source>
        <translation>Cría salteada, muerta en sus celdas: varroa o una enfermedad de la cría. Cierre la colmena a las pilladoras y enseñe el cuadro a los servicios veterinarios oficiales antes de volver a usar nada de ella.</translation>
    </message>
    <message>
        <source>The queen was there to the end: it was not queenless.</source>
        <translation>La reina estuvo hasta el final: la colonia no estaba huérfana.</translation>
    </message>
    <message>
        <source>No queen among the dead: with few bees and drone brood or none it was probably queenless.</source>
        <translation>Ninguna reina entre las muertas: con pocas abejas y cría de zángano o ninguna, probablemente estaba huérfana.</translation>
    </message>
    <message>
        <source>The colony was found dead on %{day}.</source>
        <translation>La colonia se encontró muerta el %{day}.</translation>
    </message>
    <message>
        <source>If nothing is done it falls below %{reserve:amount} in %{in:0} of 100 winters that fit what was seen, by about %{day}.</source>
        <translation>Si no se hace nada, en %{in:0} de cada 100 inviernos que encajan con lo observado las reservas bajan de %{reserve:amount}, hacia el %{day}.</translation>
    </message>
    <message>
        <source>Weigh again by %{day}: from then on a weighing may change what to do.</source>
        <translation>Vuelva a pesar a más tardar el %{day}: desde entonces una pesada puede cambiar lo que hay que hacer.</translation>
    </message>
    <message>
        <source>Weigh on %{day}, before more is fed: how much it is to be follows from that.</source>
        <translation>Conviene pesar el %{day}, antes de dar más: de ahí sale cuánto hay que dar.</translation>
    </message>
    <message>
        <source>No further weighing before forage would change what to do.</source>
        <translation>Ninguna otra pesada antes de la floración cambiaría lo que hay que hacer.</translation>
    </message>
    <message>
        <source>The weighing of %{day} contradicts every simulated winter: it says %{seen}, where %{low} to %{high} was expected. Weigh again, and look for a feed that was not written down or ticked off, for a lid, a box or a stone that was on or off, and for robbers.</source>
        <translation>La pesada del %{day} contradice todos los inviernos simulados: marca %{seen}, donde se esperaban de %{low} a %{high}. Vuelva a pesar y busque un aporte de alimento sin anotar o sin marcar, una tapa, un cuerpo o una piedra que estaba o faltaba, y pilladoras.</translation>
    </message>
    <message>
        <source>Before %{day} the hive changed by about %{change} more than any winter explains, and a later weighing agrees. The forecast goes on from there.</source>
        <translation>Antes del %{day} la colmena cambió alrededor de %{change} más de lo que explica ningún invierno, y una pesada posterior lo confirma. La previsión sigue desde ahí.</translation>
    </message>
    <message>
        <source>What was seen on %{day} contradicts every simulated winter, all of which had run out of stores by then. Weigh the hive.</source>
        <translation>Lo observado el %{day} contradice todos los inviernos simulados, en los que para entonces ya se habían agotado las reservas. Pese la colmena.</translation>
    </message>
    <message>
        <source>The records fit no winter: of about %{had:amount} on %{decided}, with %{given:amount} fed and %{taken:amount} taken since, nothing can have been left before %{day}, yet stores were found then. Look at what was written down between these days: until it is set right there is no forecast but the autumn&apos;s.</source>
        <translation>Las anotaciones no encajan con ningún invierno: de alrededor de %{had:amount} el %{decided}, con %{given:amount} dados y %{taken:amount} quitados desde entonces, ya no podía quedar nada antes del %{day}, y sin embargo entonces se encontraron reservas. Mire lo anotado entre esos días: hasta que se corrija, no hay más previsión que la de otoño.</translation>
    </message>
    <message>
        <source>Rain or snow lay on the hive on %{day}: that weighing counts for less.</source>
        <translation>El %{day} la colmena tenía lluvia o nieve encima: esa pesada cuenta menos.</translation>
    </message>
    <message>
        <source>Few of the winters first drawn fitted what was seen; they were drawn again around it.</source>
        <translation>Pocos de los primeros inviernos simulados encajaban con lo observado; se volvieron a simular en torno a ello.</translation>
    </message>
    <message>
        <source>Only about %{winters:0} of the simulated winters fit what was seen, so the shares are rough.</source>
        <translation>Solo encajan con lo observado alrededor de %{winters:0} de los inviernos simulados, así que las proporciones son aproximadas.</translation>
    </message>
    <message numerus="yes">
        <source>Measured temperatures of %n days stand for the weather so far.</source>
        <translation>
            <numerusform>La temperatura medida de %n día sustituye al tiempo simulado hasta hoy.</numerusform>
            <numerusform>Las temperaturas medidas de %n días sustituyen al tiempo simulado hasta hoy.</numerusform>
        </translation>
    </message>
    <message>
        <source>The measured temperature of one day stands for the weather so far.</source>
        <translation>La temperatura medida de un día sustituye al tiempo simulado hasta hoy.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % more than the model says; used from now on.</source>
        <translation>
            <numerusform>En %n invierno estas abejas comieron un %{percent:0}&#xa0;% más de lo que dice el modelo; se tiene en cuenta desde ahora.</numerusform>
            <numerusform>En %n inviernos estas abejas comieron un %{percent:0}&#xa0;% más de lo que dice el modelo; se tiene en cuenta desde ahora.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, %{percent:0} % more than the model says; used from now on.</source>
        <translation>En un invierno estas abejas comieron, hasta donde se puede saber, un %{percent:0}&#xa0;% más de lo que dice el modelo; se tiene en cuenta desde ahora.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % less than the model says; used from now on.</source>
        <translation>
            <numerusform>En %n invierno estas abejas comieron un %{percent:0}&#xa0;% menos de lo que dice el modelo; se tiene en cuenta desde ahora.</numerusform>
            <numerusform>En %n inviernos estas abejas comieron un %{percent:0}&#xa0;% menos de lo que dice el modelo; se tiene en cuenta desde ahora.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, %{percent:0} % less than the model says; used from now on.</source>
        <translation>En un invierno estas abejas comieron, hasta donde se puede saber, un %{percent:0}&#xa0;% menos de lo que dice el modelo; se tiene en cuenta desde ahora.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate what the model says, within 2 %.</source>
        <translation>
            <numerusform>En %n invierno estas abejas comieron lo que dice el modelo, con menos de un 2&#xa0;% de diferencia.</numerusform>
            <numerusform>En %n inviernos estas abejas comieron lo que dice el modelo, con menos de un 2&#xa0;% de diferencia.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter these bees ate, as far as it tells, what the model says, within 2 %.</source>
        <translation>En un invierno estas abejas comieron, hasta donde se puede saber, lo que dice el modelo, con menos de un 2&#xa0;% de diferencia.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % faster than the model says; used from now on.</source>
        <translation>
            <numerusform>En %n invierno perdieron abejas un %{percent:0}&#xa0;% más deprisa de lo que dice el modelo; se tiene en cuenta desde ahora.</numerusform>
            <numerusform>En %n inviernos perdieron abejas un %{percent:0}&#xa0;% más deprisa de lo que dice el modelo; se tiene en cuenta desde ahora.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter they lost bees, as far as it tells, %{percent:0} % faster than the model says; used from now on.</source>
        <translation>En un invierno perdieron abejas, hasta donde se puede saber, un %{percent:0}&#xa0;% más deprisa de lo que dice el modelo; se tiene en cuenta desde ahora.</translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>
            <numerusform>En %n invierno perdieron abejas un %{percent:0}&#xa0;% más despacio de lo que dice el modelo; se tiene en cuenta desde ahora.</numerusform>
            <numerusform>En %n inviernos perdieron abejas un %{percent:0}&#xa0;% más despacio de lo que dice el modelo; se tiene en cuenta desde ahora.</numerusform>
        </translation>
    </message>
    <message>
        <source>Over one winter they lost bees, as far as it tells, %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>En un invierno perdieron abejas, hasta donde se puede saber, un %{percent:0}&#xa0;% más despacio de lo que dice el modelo; se tiene en cuenta desde ahora.</translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>
            <numerusform>Según %n primavera, aquí la floración de primavera comienza %{days:1} días más tarde de lo que dice el clima; se tiene en cuenta desde ahora.</numerusform>
            <numerusform>Según %n primaveras, aquí la floración de primavera comienza %{days:1} días más tarde de lo que dice el clima; se tiene en cuenta desde ahora.</numerusform>
        </translation>
    </message>
    <message>
        <source>Going by one spring, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>Según una primavera, aquí la floración de primavera comienza %{days:1} días más tarde de lo que dice el clima; se tiene en cuenta desde ahora.</translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>
            <numerusform>Según %n primavera, aquí la floración de primavera comienza %{days:1} días antes de lo que dice el clima; se tiene en cuenta desde ahora.</numerusform>
            <numerusform>Según %n primaveras, aquí la floración de primavera comienza %{days:1} días antes de lo que dice el clima; se tiene en cuenta desde ahora.</numerusform>
        </translation>
    </message>
    <message>
        <source>Going by one spring, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>Según una primavera, aquí la floración de primavera comienza %{days:1} días antes de lo que dice el clima; se tiene en cuenta desde ahora.</translation>
    </message>
    <message>
        <source>Spring forage should carry the colony from about %{day}.</source>
        <translation>La floración de primavera debería bastarle a la colonia desde alrededor del %{day}.</translation>
    </message>
    <message>
        <source>Leave %{leave:amount} for a cold spell until forage is steady.</source>
        <translation>Deje %{leave:amount} para una ola de frío hasta que el néctar entre de forma constante.</translation>
    </message>
    <message>
        <source>More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts. It is for bees alone: full %{combs} of it may help a light, healthy colony, or be kept for one.</source>
        <translation>Hay más que eso: en 9 de cada 10 inviernos quedan %{surplus:amount} o más por encima cuando empieza la floración de primavera. Es solo para las abejas: cuadros llenos pueden ayudar a una colonia ligera y sana, o guardarse para ella.</translation>
    </message>
    <message>
        <source>More is there than that: in 9 winters of 10 %{surplus:amount} or more beyond it are left when spring forage starts, and may come out.</source>
        <translation>Hay más que eso: en 9 de cada 10 inviernos sobran %{surplus:amount} o más al comenzar la floración de primavera, y se pueden quitar.</translation>
    </message>
    <message>
        <source>Take out about %{room:amount} of full %{combs} when forage has begun, so that the queen has room to lay.</source>
        <translation>Quite alrededor de %{room:amount} en cuadros llenos cuando haya comenzado la floración, para que la reina tenga sitio donde poner.</translation>
    </message>
    <message>
        <source>The nearest climate station is %{km:distance} away, and beyond %{farthest:distance} none speaks for a place: give a climate of your own.</source>
        <translation>La estación climática más próxima está a %{km:distance}, y más allá de %{farthest:distance} ninguna vale para un lugar: indique un clima propio.</translation>
    </message>
    <message>
        <source>No climate station lies within %{farthest:distance} of the place: give a climate of your own.</source>
        <translation>No hay ninguna estación climática a menos de %{farthest:distance} del lugar: indique un clima propio.</translation>
    </message>
    <message>
        <source>There are no bees in the hive.</source>
        <translation>No hay abejas en la colmena.</translation>
    </message>
    <message>
        <source>Nothing tells how many bees there are: count the %{combs} or the seams they cover.</source>
        <translation>Nada dice cuántas abejas hay: cuente los cuadros o las calles que cubren.</translation>
    </message>
    <message>
        <source>By its weight on %{day} there are %{low:amount} to %{high:amount} of stores, with %{tare:amount} for the empty hive and what few or many bees weigh.</source>
        <translation>Según su peso del %{day} hay de %{low:amount} a %{high:amount} de reservas, contando %{tare:amount} para la colmena vacía y lo que pesan pocas o muchas abejas.</translation>
    </message>
    <message>
        <source>It was light when it was lifted on %{day}. How many bees there are nobody counts in the cold, and without that no amount can be said: one portion does no harm, and a weighing tells whether more is wanted.</source>
        <translation>Estaba ligera al sopesarla el %{day}. Con frío nadie cuenta las abejas, y sin eso no se puede decir ninguna cantidad: una ración no hace daño, y una pesada dirá si hace falta más.</translation>
    </message>
    <message>
        <source>Nothing tells what stores there are: look at the %{combs}, weigh the hive, or heft it.</source>
        <translation>Nada dice qué reservas hay: revise los cuadros, pese la colmena o sopésela.</translation>
    </message>
    <message>
        <source>The day asked about lies in the month before the season begins: ask from 1 August on, in the south from the end of January.</source>
        <translation>El día de referencia cae en el mes anterior al comienzo de la temporada: pregunte desde el 1 de agosto; en el hemisferio sur, desde finales de enero.</translation>
    </message>
    <message>
        <source>This climate has no cold or dark season to derive a dearth from: give the dates of the build-up and of the start of spring forage.</source>
        <translation>Este clima no tiene ninguna época fría u oscura de la que calcular una escasez: indique las fechas del desarrollo primaveral y del comienzo de la floración de primavera.</translation>
    </message>
    <message>
        <source>Spring forage has started: no winter is left to ask about.</source>
        <translation>La floración de primavera ya ha comenzado: no queda ningún invierno por el que preguntar.</translation>
    </message>
    <message>
        <source>With signs of disease nothing else counts: no honey, no %{combs} and no bees leave this hive before the inspector has seen it. It is fed only to live until then.</source>
        <translation>Con signos de enfermedad no cuenta nada más: de esta colmena no se saca miel, ni cuadros, ni abejas hasta que la hayan visto los servicios veterinarios oficiales. Se alimenta solo para que viva hasta entonces.</translation>
    </message>
    <message>
        <source>Of about %{stores:amount} in the hive only %{within:amount} lie where the bees can reach them in the cold.</source>
        <translation>De lo que hay en la colmena, alrededor de %{stores:amount}, solo %{within:amount} están donde las abejas pueden llegar con frío.</translation>
    </message>
    <message>
        <source>Nothing of the about %{stores:amount} in the hive lies where the bees can reach it in the cold.</source>
        <translation>De lo que hay en la colmena, alrededor de %{stores:amount}, nada está donde las abejas pueden llegar con frío.</translation>
    </message>
    <message>
        <source>About %{stores:amount} of stores may last less than %{days:0} days.</source>
        <translation>Alrededor de %{stores:amount} de reservas pueden durar menos de %{days:0} días.</translation>
    </message>
    <message>
        <source>Next to nothing is left in the hive.</source>
        <translation>En la colmena no queda casi nada.</translation>
    </message>
    <message>
        <source>Neither queen nor eggs nor brood were seen, and it is not yet too late in the year for eggs: such a colony does not live through winter alone. Give it a %{comb} with eggs of another colony, and look after four days: queen cells on it mean she is gone.</source>
        <translation>No se vieron ni reina, ni huevos, ni cría, y aún no es tan tarde en el año como para que falten los huevos: una colonia así no pasa el invierno sola. Póngale un cuadro con huevos de otra colonia y mire a los cuatro días: si hay celdas reales en él, la reina falta.</translation>
    </message>
    <message>
        <source>%{first:evidence} says %{low:amount}, %{second:evidence} says %{high:amount}: no amount is told before one of them is found wrong.</source>
        <translation>%{first:evidence} indica %{low:amount}, %{second:evidence} indica %{high:amount}: no se dice ninguna cantidad hasta saber cuál de los dos datos falla.</translation>
    </message>
    <message>
        <source>Light at this time of year stands for about %{stores:amount}, give or take a third: one portion at once, then weigh.</source>
        <translation>Ligera, en esta época del año, equivale a alrededor de %{stores:amount}, un tercio más o menos: una ración enseguida y después pesar.</translation>
    </message>
    <message>
        <source>Fair at this time of year stands for about %{stores:amount}, give or take a third: too rough to decide by.</source>
        <translation>Media, en esta época del año, equivale a alrededor de %{stores:amount}, un tercio más o menos: demasiado impreciso para decidir.</translation>
    </message>
    <message>
        <source>Heavy at this time of year stands for about %{stores:amount}, give or take a third; no honey is taken on a heft.</source>
        <translation>Pesada, en esta época del año, equivale a alrededor de %{stores:amount}, un tercio más o menos; no se quita miel por un sopesado.</translation>
    </message>
    <message>
        <source>About %{bees:hundreds} bees going into winter are too few to winter well alone; 7,000 are the least.</source>
        <translation>Unas %{bees:hundreds} abejas al entrar en el invierno son muy pocas para invernar bien sola; 7000 son el mínimo.</translation>
    </message>
    <message>
        <source>%{safety:amount} are to be in the hive so that it is safe until the next look; there are about %{stores:amount}. What it needs for winter is fed later.</source>
        <translation>Debe haber %{safety:amount} en la colmena para que esté segura hasta la próxima revisión; hay alrededor de %{stores:amount}. Lo que necesita para el invierno se da más tarde.</translation>
    </message>
    <message>
        <source>%{safety:amount} stay in the hive until the next look; what is taken now is fed as sugar later, once the mites are treated.</source>
        <translation>%{safety:amount} se quedan en la colmena hasta la próxima revisión; lo que se quite ahora se dará más tarde en azúcar, cuando se haya tratado la varroa.</translation>
    </message>
    <message>
        <source>About %{stores:amount} are in the hive, and %{safety:amount} are enough until the next look: nothing is decided for winter yet.</source>
        <translation>Hay alrededor de %{stores:amount} en la colmena, y bastan %{safety:amount} hasta la próxima revisión: para el invierno aún no se decide nada.</translation>
    </message>
    <message>
        <source>Nectar or syrup is fresh in the open cells: they count as %{share:0} % of what they would weigh capped, until a look finds them ripe.</source>
        <translation>En las celdas sin opercular hay néctar o jarabe reciente: cuentan un %{share:0}&#xa0;% de lo que pesarían operculadas, hasta que una revisión lo encuentre maduro.</translation>
    </message>
    <message>
        <source>The %{combs} hold about %{room:amount}, and they are full.</source>
        <translation>En los cuadros caben alrededor de %{room:amount}, y están llenos.</translation>
    </message>
    <message>
        <source>About %{missing:amount} of stores are missing on %{day}.</source>
        <translation>El %{day} faltan alrededor de %{missing:amount} de reservas.</translation>
    </message>
    <message>
        <source>In a dearth bees take thick syrup in small portions, right over the cluster, on days that are warm enough.</source>
        <translation>En época de escasez las abejas toman jarabe denso en pequeñas raciones, justo encima del racimo, los días en que hace bastante calor.</translation>
    </message>
    <message>
        <source>After the last day for syrup bees take small portions only, warm, thick and right over the cluster, and fewer from week to week.</source>
        <translation>Pasado el último día para dar jarabe, las abejas solo toman pequeñas raciones, tibias, densas y justo encima del racimo, y cada semana menos.</translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end: what is missing goes on as %{board} before the hive is wrapped.</source>
        <translation>
            <numerusform>El frío puede tener confinadas a las abejas %n día seguido: lo que falta se da en candi antes de abrigar la colmena.</numerusform>
            <numerusform>El frío puede tener confinadas a las abejas %n días seguidos: lo que falta se da en candi antes de abrigar la colmena.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{Board} should have been on before the hive was wrapped. Cold may lock the bees in for %n days on end, and most winters would starve them as they are: laid on now it still helps, if the bees can get at it.</source>
        <translation>
            <numerusform>El candi debería haberse puesto antes de abrigar la colmena. El frío puede tener confinadas a las abejas %n día seguido, y tal como están morirían de hambre en la mayoría de los inviernos: puesto ahora todavía ayuda, si las abejas pueden llegar a él.</numerusform>
            <numerusform>El candi debería haberse puesto antes de abrigar la colmena. El frío puede tener confinadas a las abejas %n días seguidos, y tal como están morirían de hambre en la mayoría de los inviernos: puesto ahora todavía ayuda, si las abejas pueden llegar a él.</numerusform>
        </translation>
    </message>
    <message>
        <source>About %{stores:amount} are left, and %{reserve:amount} are to be kept: one visit now, the next after weighing.</source>
        <translation>Quedan alrededor de %{stores:amount}, y deben conservarse %{reserve:amount}: una visita ahora, la siguiente después de pesar.</translation>
    </message>
    <message>
        <source>Nothing can or need be fed today; whether it will be wanted a later weighing tells.</source>
        <translation>Hoy no se puede o no hace falta dar nada; una pesada posterior dirá si será necesario.</translation>
    </message>
    <message>
        <source>The honey of the super is for people and was not counted: the bees keep their %{stores:amount} when it comes off.</source>
        <translation>La miel del alza es para consumo humano y no se contó: las abejas conservan sus %{stores:amount} cuando se quite.</translation>
    </message>
    <message>
        <source>About %{spare:amount} are to spare above what the colony should winter on and what is usual here.</source>
        <translation>Sobran alrededor de %{spare:amount} por encima de lo que la colonia necesita para invernar y de lo habitual aquí.</translation>
    </message>
    <message>
        <source>About %{spare:amount} are to spare above what the colony should winter on.</source>
        <translation>Sobran alrededor de %{spare:amount} por encima de lo que la colonia necesita para invernar.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted: that is enough, and what is more stays with the bees.</source>
        <translation>Habrá alrededor de %{stores:amount} y hacen falta %{need:amount}: es suficiente, y lo que sobra se queda para las abejas.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted; but %{usual:amount} or more are usual here, and less than that is never left after a harvest: what is more stays with the bees.</source>
        <translation>Habrá alrededor de %{stores:amount} y hacen falta %{need:amount}; pero lo habitual aquí son %{usual:amount} o más, y después de una cosecha nunca se deja menos que eso: lo que sobra se queda para las abejas.</translation>
    </message>
    <message>
        <source>About %{stores:amount} will be there, and %{need:amount} are wanted: a difference of less than %{dead:amount} is neither fed nor taken.</source>
        <translation>Habrá alrededor de %{stores:amount} y hacen falta %{need:amount}: por una diferencia de menos de %{dead:amount} ni se alimenta ni se quita.</translation>
    </message>
    <message>
        <source>No brood was seen, though the queen usually still lays: if she has stopped, %{stopped:amount} are enough instead of %{need:amount}.</source>
        <translation>No se vio cría, aunque la reina suele estar todavía en puesta: si ha dejado de poner, bastan %{stopped:amount} en vez de %{need:amount}.</translation>
    </message>
    <message>
        <source>No eggs at this time of year are normal: that is no sign that the queen is gone.</source>
        <translation>Que no haya huevos en esta época del año es normal: no es señal de que falte la reina.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then give drawn comb or a box of it (no foundation now), or full %{combs} from store or a healthy neighbour.</source>
        <translation>Hacen falta %{need:amount} y en los cuadros caben alrededor de %{room:amount}: pésela primero y después dele cuadros labrados o un cuerpo de ellos (ahora, nada de cera estampada), o cuadros llenos del almacén o de una vecina sana.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: give drawn comb or a box of it (no foundation now), or full %{combs} from store or a healthy neighbour.</source>
        <translation>Hacen falta %{need:amount} y en los cuadros caben alrededor de %{room:amount}: dele cuadros labrados o un cuerpo de ellos (ahora, nada de cera estampada), o cuadros llenos del almacén o de una vecina sana.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: change empty %{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Hacen falta %{need:amount} y en los cuadros caben alrededor de %{room:amount}: cambie cuadros vacíos por llenos del almacén o de una vecina sana; pese en invierno y, si entonces sigue faltando, ponga candi.</translation>
    </message>
    <message>
        <source>%{need:amount} are wanted and the %{combs} hold about %{room:amount}: weigh it first, then change empty %{combs} for full ones from store or a healthy neighbour; weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Hacen falta %{need:amount} y en los cuadros caben alrededor de %{room:amount}: pésela primero y después cambie cuadros vacíos por llenos del almacén o de una vecina sana; pese en invierno y, si entonces sigue faltando, ponga candi.</translation>
    </message>
    <message>
        <source>On %{day} it should hold about %{need:amount}: %{combs:halves} full %{combs}, %{gross:amount} with hive and bees.</source>
        <translation>El %{day} debería tener alrededor de %{need:amount}: %{combs:halves} cuadros llenos, %{gross:amount} con colmena y abejas.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}.</source>
        <translation>Lo habitual aquí (%{place}): de %{low:amount} a %{high:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}.</source>
        <translation>Lo habitual aquí (%{place}): %{low:amount}.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters.</source>
        <translation>Lo habitual aquí (%{place}): %{low:amount}. Esta respuesta dice %{need:amount}, porque cuenta las abejas, la colmena y los inviernos de esta colonia.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters.</source>
        <translation>Lo habitual aquí (%{place}): de %{low:amount} a %{high:amount}. Esta respuesta dice %{need:amount}, porque cuenta las abejas, la colmena y los inviernos de esta colonia.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount} to %{high:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.</source>
        <translation>Lo habitual aquí (%{place}): de %{low:amount} a %{high:amount}. Esta respuesta dice %{need:amount}, porque cuenta las abejas, la colmena y los inviernos de esta colonia. Esa cifra es lo que dicen los apicultores, no algo publicado: por ella no se deja de cosechar miel.</translation>
    </message>
    <message>
        <source>Usual here (%{place}): %{low:amount}. This answer says %{need:amount}, for it counts this colony&apos;s bees, hive and winters. That figure is what keepers say, nothing published: it holds back no honey.</source>
        <translation>Lo habitual aquí (%{place}): %{low:amount}. Esta respuesta dice %{need:amount}, porque cuenta las abejas, la colmena y los inviernos de esta colonia. Esa cifra es lo que dicen los apicultores, no algo publicado: por ella no se deja de cosechar miel.</translation>
    </message>
    <message>
        <source>Counted from today %{need:amount} are wanted: then %{reserve:amount} or more are left in %{in:0} of 100 winters when spring forage starts, around %{forage}.</source>
        <translation>Contando desde hoy hacen falta %{need:amount}: así quedan %{reserve:amount} o más en %{in:0} de cada 100 inviernos al comenzar la floración de primavera, hacia el %{forage}.</translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when nothing can be fed: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>El frío puede tener confinadas a las abejas %n día seguido, en el que no se puede dar nada: por eso debe quedar bastante en %{in:0} de cada 100 inviernos, no en 80.</numerusform>
            <numerusform>El frío puede tener confinadas a las abejas %n días seguidos, en los que no se puede dar nada: por eso debe quedar bastante en %{in:0} de cada 100 inviernos, no en 80.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when they reach only food that touches them: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>El frío puede tener confinadas a las abejas %n día seguido, en el que solo llegan al alimento que las toca: por eso debe quedar bastante en %{in:0} de cada 100 inviernos, no en 80.</numerusform>
            <numerusform>El frío puede tener confinadas a las abejas %n días seguidos, en los que solo llegan al alimento que las toca: por eso debe quedar bastante en %{in:0} de cada 100 inviernos, no en 80.</numerusform>
        </translation>
    </message>
    <message>
        <source>%{reserve:amount} are to be left because the hive has more than one brood box; of one box it would be %{one:amount}.</source>
        <translation>Deben quedar %{reserve:amount} porque la colmena tiene más de una cámara de cría; con una serían %{one:amount}.</translation>
    </message>
    <message>
        <source>There is empty comb for only about %{room:amount}: no more is fed than finds a place.</source>
        <translation>Solo hay panal vacío para alrededor de %{room:amount}: no se da más de lo que cabe.</translation>
    </message>
    <message>
        <source>Not all of it can be taken by the last day for syrup; full %{combs} may make up the rest; else weigh in winter, and lay on fondant where it is still short then.</source>
        <translation>Hasta el último día para dar jarabe no pueden tomarlo todo; el resto se puede completar con cuadros llenos; si no, pese en invierno y, si entonces sigue faltando, ponga candi.</translation>
    </message>
    <message>
        <source>Feeding is best finished by %{day}; this plan goes on after it.</source>
        <translation>Conviene terminar la alimentación a más tardar el %{day}; este plan sigue después.</translation>
    </message>
    <message>
        <source>The honey holds %{water:1} % water, more than %{most:0} %, and would ferment: it stays with the bees, now and in spring.</source>
        <translation>La miel tiene un %{water:1}&#xa0;% de humedad, más del %{most:0}&#xa0;%, y fermentaría: se queda para las abejas, ahora y en primavera.</translation>
    </message>
    <message>
        <source>The honey holds %{water:1} % water: it may be kept, but driest honey keeps best.</source>
        <translation>La miel tiene un %{water:1}&#xa0;% de humedad: se puede guardar, pero la más seca es la que mejor se conserva.</translation>
    </message>
    <message>
        <source>Sugar was fed since last spring: no %{comb} that was on the hive then is honey for people, now or in spring.</source>
        <translation>Desde la primavera pasada se dio azúcar: ningún cuadro que entonces estaba en la colmena es miel para consumo humano, ni ahora ni en primavera.</translation>
    </message>
    <message>
        <source>About %{spare:amount} to spare may go as %{combs} to bees: to your own nuclei or to a healthy colony of this yard.</source>
        <translation>El excedente, alrededor de %{spare:amount}, puede darse en cuadros a otras abejas: a sus propios núcleos o a una colonia sana de este colmenar.</translation>
    </message>
    <message>
        <source>What is to spare may also stay and be taken in spring: typically %{spare:amount} more than is wanted when spring forage starts.</source>
        <translation>El excedente también puede quedarse y quitarse en primavera: por lo general, %{spare:amount} más de lo que hace falta cuando comienza la floración de primavera.</translation>
    </message>
    <message>
        <source>There is no winter here, only a dearth between the last nectar of autumn and the first of spring. Local flows decide it, and the error is twice that of colder places.</source>
        <translation>Aquí no hay invierno, solo una escasez entre el último néctar de otoño y el primero de primavera. La deciden las floraciones del lugar, y el error es el doble que en lugares más fríos.</translation>
    </message>
    <message>
        <source>The climate is your own climate, as you gave it.</source>
        <translation>El clima es su clima propio, tal como usted lo indicó.</translation>
    </message>
    <message>
        <source>The climate is that of the station for %{place}, %{km:distance} away.</source>
        <translation>El clima es el de la estación de %{place}, a %{km:distance}.</translation>
    </message>
    <message>
        <source>The climate is that of the station for %{place}.</source>
        <translation>El clima es el de la estación de %{place}.</translation>
    </message>
    <message>
        <source>Nectar still coming in is counted: %{strength:flow}.</source>
        <translation>Se cuenta el néctar que aún va a entrar; floración: %{strength:flow}.</translation>
    </message>
    <message>
        <source>About %{bees:hundreds} bees are fewer than the 4,000 from which colonies have been measured: the figures are less sure.</source>
        <translation>Unas %{bees:hundreds} abejas son menos que las 4000 desde las que se han medido colonias: las cifras son menos seguras.</translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{used} used since.</source>
        <translation>
            <numerusform>La última revisión fue %n día antes del día de referencia; desde entonces el modelo cuenta %{used} consumidos.</numerusform>
            <numerusform>La última revisión fue %n días antes del día de referencia; desde entonces el modelo cuenta %{used} consumidos.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last look was the day before the day asked about; the model counts %{used} used since.</source>
        <translation>La última revisión fue la víspera del día de referencia; desde entonces el modelo cuenta %{used} consumidos.</translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>
            <numerusform>La última revisión fue %n día antes del día de referencia; desde entonces el modelo cuenta %{gained} de entrada.</numerusform>
            <numerusform>La última revisión fue %n días antes del día de referencia; desde entonces el modelo cuenta %{gained} de entrada.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last look was the day before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>La última revisión fue la víspera del día de referencia; desde entonces el modelo cuenta %{gained} de entrada.</translation>
    </message>
    <message numerus="yes">
        <source>Syrup 3:2 by mass: %n warm days are left to ripen it.</source>
        <translation>
            <numerusform>Jarabe 3:2 en peso: queda %n día cálido para madurarlo.</numerusform>
            <numerusform>Jarabe 3:2 en peso: quedan %n días cálidos para madurarlo.</numerusform>
        </translation>
    </message>
    <message>
        <source>Syrup 3:2 by mass: one warm day is left to ripen it.</source>
        <translation>Jarabe 3:2 en peso: queda un día cálido para madurarlo.</translation>
    </message>
    <message numerus="yes">
        <source>Syrup 2:1 by mass: %n warm days are left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>
            <numerusform>Jarabe 2:1 en peso: queda %n día cálido, menos de las cinco semanas que pide el 3:2, así que conviene que las abejas tengan menos agua que evaporar.</numerusform>
            <numerusform>Jarabe 2:1 en peso: quedan %n días cálidos, menos de las cinco semanas que pide el 3:2, así que conviene que las abejas tengan menos agua que evaporar.</numerusform>
        </translation>
    </message>
    <message>
        <source>Syrup 2:1 by mass: one warm day is left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>Jarabe 2:1 en peso: queda un día cálido, menos de las cinco semanas que pide el 3:2, así que conviene que las abejas tengan menos agua que evaporar.</translation>
    </message>
    <message>
        <source>No single %{comb} may be taken: each holds brood, hangs over or beside the bees, is not capped enough, took syrup, is old, or weighs more than can be spared.</source>
        <translation>No se puede quitar ningún cuadro suelto: cada uno tiene cría, cuelga encima o al lado de las abejas, no está bastante operculado, tomó jarabe, es viejo o pesa más que el excedente.</translation>
    </message>
    <message>
        <source>About %{spare:amount} would be to spare if it is as thought; but with the doubt of what is there more than %{in:0} of 100 winters would fall below %{reserve:amount} without it, so it stays with the bees.</source>
        <translation>Sobrarían alrededor de %{spare:amount} si hay lo que se piensa; pero, con la duda sobre lo que hay, sin ellos más de %{in:0} de cada 100 inviernos bajarían de %{reserve:amount}, así que se quedan para las abejas.</translation>
    </message>
    <message>
        <source>Only %{percent:0} % of the stores are capped: honey is ripe from two thirds on, so none is taken before more is.</source>
        <translation>Solo está operculado un %{percent:0}&#xa0;% de las reservas: la miel está madura desde dos tercios, así que no se quita nada hasta que haya más.</translation>
    </message>
    <message>
        <source>%{Combs} were only counted, so none can be named.</source>
        <translation>Los cuadros solo se contaron, así que no se puede nombrar ninguno.</translation>
    </message>
    <message>
        <source>The hive was treated while this honey was in it, so none of it is taken.</source>
        <translation>La colmena se trató con esta miel dentro, así que no se quita nada de ella.</translation>
    </message>
    <message>
        <source>%{Combs} that stood for years in the brood nest are not taken.</source>
        <translation>No se quitan cuadros que estuvieron durante años en el nido de cría.</translation>
    </message>
    <message>
        <source>Honey the autumn flow has yet to bring is never counted for harvest.</source>
        <translation>La miel que aún ha de traer la floración de otoño nunca se cuenta para cosechar.</translation>
    </message>
    <message>
        <source>%{built:0} %{combs} are built, the bees cover %{covered:halves}, and %{empty:0} are empty: take empty %{combs} out before winter, or put a follower beside the nest.</source>
        <translation>Hay %{built:0} cuadros construidos, las abejas cubren %{covered:halves} y %{empty:0} están vacíos: quite cuadros vacíos antes del invierno o ponga un separador junto al nido.</translation>
    </message>
    <message>
        <source>About %{open:amount} are open stores that may not be capped before the cold.</source>
        <translation>Alrededor de %{open:amount} son reservas sin opercular que quizá no se operculen antes del frío.</translation>
    </message>
    <message>
        <source>The season lies at the edge of the rules, as in high and far northern places: compare its dates with your own.</source>
        <translation>La temporada está en el límite de las reglas, como en lugares altos y muy al norte: compare sus fechas con las que usted conoce.</translation>
    </message>
    <message>
        <source>The derived date of %{which:season} gave way to a given one and is now %{to}.</source>
        <translation>Una fecha calculada (%{which:season}) cedió ante otra indicada y ahora es el %{to}.</translation>
    </message>
    <message>
        <source>Dates of the season were given and not derived.</source>
        <translation>Hay fechas de la temporada indicadas y no calculadas.</translation>
    </message>
    <message>
        <source>For the height of the place all temperatures are shifted by %{kelvin:kelvins}.</source>
        <translation>Por la altitud del lugar, todas las temperaturas se desplazan en %{kelvin:kelvins}.</translation>
    </message>
    <message>
        <source>The weighing of %1 is not counted.</source>
        <translation>La pesada del %1 no se cuenta.</translation>
    </message>
    <message>
        <source>The feed of %1 is not counted.</source>
        <translation>El aporte de alimento del %1 no se cuenta.</translation>
    </message>
    <message>
        <source>The harvest of %1 is not counted.</source>
        <translation>La cosecha del %1 no se cuenta.</translation>
    </message>
    <message>
        <source>The bees seen on %1 are not counted.</source>
        <translation>Las abejas vistas el %1 no se cuentan.</translation>
    </message>
    <message>
        <source>The brood seen on %1 is not counted.</source>
        <translation>La cría vista el %1 no se cuenta.</translation>
    </message>
    <message>
        <source>The %{combs} of %1 are not counted.</source>
        <translation>Los cuadros del %1 no se cuentan.</translation>
    </message>
    <message>
        <source>The water measured on %1 is not counted.</source>
        <translation>La humedad medida el %1 no se cuenta.</translation>
    </message>
    <message>
        <source>The empty weight that is given is not counted.</source>
        <translation>El peso en vacío indicado no se cuenta.</translation>
    </message>
    <message>
        <source>The seams seen on %1 are not counted.</source>
        <translation>Las calles vistas el %1 no se cuentan.</translation>
    </message>
    <message>
        <source>What was found on %1 is not counted.</source>
        <translation>Lo encontrado el %1 no se cuenta.</translation>
    </message>
    <message>
        <source>%{from} is united onto this colony by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.</source>
        <translation>%{from} se une a esta colonia a más tardar el %{day}: sus abejas, cría y reservas se cuentan con las de esta, y ninguna de las dos pasa cuadros.</translation>
    </message>
    <message>
        <source>Another colony of the yard is united onto this one by %{day}: its bees, brood and stores are counted with these, and neither moves %{combs}.</source>
        <translation>Otra colonia del colmenar se une a esta a más tardar el %{day}: sus abejas, cría y reservas se cuentan con las de esta, y ninguna de las dos pasa cuadros.</translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from %{from}.</source>
        <translation>
            <numerusform>Antes de comprar azúcar: %n cuadro con alrededor de %{kg:amount} puede venir de %{from}.</numerusform>
            <numerusform>Antes de comprar azúcar: %n cuadros con alrededor de %{kg:amount} pueden venir de %{from}.</numerusform>
        </translation>
    </message>
    <message>
        <source>Before buying sugar: one %{comb} with about %{kg:amount} can come from %{from}.</source>
        <translation>Antes de comprar azúcar: un cuadro con alrededor de %{kg:amount} puede venir de %{from}.</translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>
            <numerusform>Antes de comprar azúcar: %n cuadro con alrededor de %{kg:amount} puede venir de otra colonia del colmenar.</numerusform>
            <numerusform>Antes de comprar azúcar: %n cuadros con alrededor de %{kg:amount} pueden venir de otra colonia del colmenar.</numerusform>
        </translation>
    </message>
    <message>
        <source>Before buying sugar: one %{comb} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>Antes de comprar azúcar: un cuadro con alrededor de %{kg:amount} puede venir de otra colonia del colmenar.</translation>
    </message>
    <message>
        <source>%{Combs} with about %{kg:amount} more than those that come back go to %{receiver}, which is short: this hive keeps what it should winter on.</source>
        <translation>Cuadros con alrededor de %{kg:amount} más que los que vuelven pasan a %{receiver}, a la que le faltan: esta colmena conserva lo que necesita para invernar.</translation>
    </message>
    <message>
        <source>%{Combs} with about %{kg:amount} more than those that come back go to another colony of the yard, which is short: this hive keeps what it should winter on.</source>
        <translation>Cuadros con alrededor de %{kg:amount} más que los que vuelven pasan a otra colonia del colmenar a la que le faltan: esta colmena conserva lo que necesita para invernar.</translation>
    </message>
    <message>
        <source>When they have become one, after about a week, sort the %{combs}: brood and the full ones stay, in two boxes at most, and the boxes with empty ones come off.</source>
        <translation>Cuando ya sean una sola, al cabo de una semana más o menos, ordene los cuadros: la cría y los llenos se quedan, en dos cuerpos como mucho, y los cuerpos con cuadros vacíos se quitan.</translation>
    </message>
    <message>
        <source>%{from} may be united onto this colony by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask again when they are one.</source>
        <translation>%{from} se puede unir a esta colonia a más tardar el %{day}, cuando sea seguro que no tiene reina. Hasta entonces esta se pesa y se alimenta sola; vuelva a preguntar cuando ya sean una sola.</translation>
    </message>
    <message>
        <source>Another colony of the yard may be united onto this one by %{day}, once it is certain that it has no queen. Until then this one is weighed and fed alone; ask again when they are one.</source>
        <translation>Otra colonia del colmenar se puede unir a esta a más tardar el %{day}, cuando sea seguro que no tiene reina. Hasta entonces esta se pesa y se alimenta sola; vuelva a preguntar cuando ya sean una sola.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but beyond what keepers here leave a colony it is too little to give %{combs} away.</source>
        <translation>A %{receiver} le faltan reservas, y esta colonia tiene alrededor de %{kg:amount} por encima de su objetivo; pero, más allá de lo que aquí se suele dejar a una colonia, es muy poco para dar cuadros.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but which of its %{combs} could go is not known: look at them one by one, write them down, and ask again.</source>
        <translation>A %{receiver} le faltan reservas, y esta colonia tiene alrededor de %{kg:amount} por encima de su objetivo; pero no se sabe cuáles de sus cuadros podrían pasar: mírelos uno por uno, anótelos y vuelva a preguntar.</translation>
    </message>
    <message>
        <source>%{receiver} is short, and this colony has about %{kg:amount} above its target; but no whole %{comb} of it without brood can go there.</source>
        <translation>A %{receiver} le faltan reservas, y esta colonia tiene alrededor de %{kg:amount} por encima de su objetivo; pero ningún cuadro entero suyo sin cría puede pasar allí.</translation>
    </message>
    <message>
        <source>%{from} was united onto this colony on %{day}: its bees, brood and stores, as they were seen on %{seen}, are counted with these.</source>
        <translation>%{from} se unió a esta colonia el %{day}: sus abejas, cría y reservas, tal como se vieron el %{seen}, se cuentan con las de esta.</translation>
    </message>
    <message>
        <source>The boxes of %{from} are taken to stand on top, with their %{combs}. If they do not, write down which boxes the hive has now.</source>
        <translation>Se supone que los cuerpos de %{from} están encima, con sus cuadros. Si no es así, anote qué cuerpos tiene ahora la colmena.</translation>
    </message>
    <message>
        <source>Nothing tells how many bees %{from} brought, which was united onto this colony on %{day}: count the %{combs} they cover now.</source>
        <translation>Nada dice cuántas abejas trajo %{from}, que se unió a esta colonia el %{day}: cuente los cuadros que cubren ahora.</translation>
    </message>
    <message>
        <source>Nothing tells what stores %{from} brought, which was united onto this colony on %{day}: they are not counted. Weigh the hive.</source>
        <translation>Nada dice qué reservas trajo %{from}, que se unió a esta colonia el %{day}: no se cuentan. Pese la colmena.</translation>
    </message>
</context>
<context>
    <name>ScaleWords</name>
    <message>
        <source>there is no time</source>
        <translation>no hay hora</translation>
    </message>
    <message>
        <source>the time cannot be read</source>
        <translation>la hora no se puede leer</translation>
    </message>
    <message>
        <source>there is no such day</source>
        <translation>ese día no existe</translation>
    </message>
    <message>
        <source>the time is written in another form than in the rows before</source>
        <translation>la hora está escrita de otra forma que en las filas anteriores</translation>
    </message>
    <message>
        <source>there is no weight</source>
        <translation>no hay peso</translation>
    </message>
    <message>
        <source>the weight is no number</source>
        <translation>el peso no es un número</translation>
    </message>
    <message>
        <source>no hive weighs that</source>
        <translation>ninguna colmena pesa eso</translation>
    </message>
    <message>
        <source>a quotation mark is not closed</source>
        <translation>unas comillas quedan sin cerrar</translation>
    </message>
    <message>
        <source>the line is too long</source>
        <translation>la línea es demasiado larga</translation>
    </message>
    <message>
        <source>the clock was put back: its time contradicts the order of the rows</source>
        <translation>el reloj se atrasó: su hora contradice el orden de las filas</translation>
    </message>
    <message>
        <source>line %1 has the same time</source>
        <translation>la línea %1 tiene la misma hora</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>material</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>cosecha</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>as much was put on and taken off again</source>
        <translation>se puso tanto como se quitó después</translation>
    </message>
    <message>
        <source>soon after a feed: the feeder, perhaps</source>
        <translation>poco después de un aporte de alimento: quizá el alimentador</translation>
    </message>
    <message>
        <source>it lost weight afterwards as syrup does</source>
        <translation>después perdió peso como lo pierde el jarabe</translation>
    </message>
    <message>
        <source>put on while nothing came in</source>
        <translation>puesto mientras no entraba nada</translation>
    </message>
    <message>
        <source>put on while nectar came in</source>
        <translation>puesto mientras entraba néctar</translation>
    </message>
    <message>
        <source>more than a feeder holds</source>
        <translation>más de lo que cabe en un alimentador</translation>
    </message>
    <message>
        <source>taken off after as much nectar had come in</source>
        <translation>quitado después de haber entrado otro tanto de néctar</translation>
    </message>
    <message>
        <source>gone at once by day in a flow: a swarm, perhaps</source>
        <translation>desaparecido de golpe, de día y en plena floración: quizá enjambró</translation>
    </message>
    <message>
        <source>while nothing was recorded</source>
        <translation>mientras no se registraba nada</translation>
    </message>
    <message>
        <source>nothing tells</source>
        <translation>nada lo dice</translation>
    </message>
    <message>
        <source>nectar</source>
        <translation>néctar</translation>
    </message>
    <message>
        <source>eating</source>
        <translation>consumo</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mojada</translation>
    </message>
    <message>
        <source>no weight on the first</source>
        <translation>sin peso el día primero</translation>
    </message>
    <message>
        <source>no weight on the first of the next month</source>
        <translation>sin peso el día primero del mes siguiente</translation>
    </message>
    <message>
        <source>no weight on either first</source>
        <translation>sin peso en ninguno de los dos días primeros</translation>
    </message>
    <message>
        <source>as said</source>
        <translation>como se indicó</translation>
    </message>
    <message>
        <source>by the header</source>
        <translation>por la cabecera</translation>
    </message>
    <message>
        <source>by its content</source>
        <translation>por su contenido</translation>
    </message>
    <message>
        <source>by the size of the weights</source>
        <translation>por el tamaño de los pesos</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>%1 ± %2 days</source>
        <translation>%1 ± %2 días</translation>
    </message>
    <message>
        <source>The answer</source>
        <translation>La respuesta</translation>
    </message>
    <message>
        <source>The winter</source>
        <translation>El invierno</translation>
    </message>
    <message>
        <source>What can be done, on the same winters</source>
        <translation>Qué se puede hacer, en los mismos inviernos</translation>
    </message>
    <message>
        <source>What the stores rest on</source>
        <translation>En qué se apoyan las reservas</translation>
    </message>
    <message>
        <source>%{Combs} that may come off</source>
        <translation>Cuadros que se pueden quitar</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>The season here</source>
        <translation>La temporada aquí</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>To buy and to bring</source>
        <translation>Para comprar y llevar</translation>
    </message>
    <message>
        <source>Everything to do, by day</source>
        <translation>Todo lo que hay que hacer, por días</translation>
    </message>
    <message>
        <source>The colonies</source>
        <translation>Las colonias</translation>
    </message>
    <message>
        <source>%{Combs} to give to a neighbour</source>
        <translation>Cuadros para dar a una vecina</translation>
    </message>
    <message>
        <source>To mix</source>
        <translation>Para preparar</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>conclusión</translation>
    </message>
    <message>
        <source>honey that may come off</source>
        <translation>miel que se puede quitar</translation>
    </message>
    <message>
        <source>sugar to feed</source>
        <translation>azúcar que hay que dar</translation>
    </message>
    <message>
        <source>fondant to feed</source>
        <translation>candi que hay que dar</translation>
    </message>
    <message>
        <source>in the hive</source>
        <translation>en la colmena</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>hace falta</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>margen de seguridad</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>abejas</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>comienzo de la floración de primavera</translation>
    </message>
    <message>
        <source>below the reserve in</source>
        <translation>baja del margen de seguridad en</translation>
    </message>
    <message>
        <source>runs out in</source>
        <translation>se agota en</translation>
    </message>
    <message>
        <source>next visit</source>
        <translation>próxima visita</translation>
    </message>
    <message>
        <source>together they hold</source>
        <translation>contienen en total</translation>
    </message>
    <message>
        <source>sugar to water by weight</source>
        <translation>azúcar por agua en peso</translation>
    </message>
    <message>
        <source>sugar</source>
        <translation>azúcar</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>jarabe</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>último día para dar jarabe</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>fin de la entrada de néctar</translation>
    </message>
    <message>
        <source>feeding done by</source>
        <translation>fin de la alimentación</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>corte de puesta</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reanudación de la puesta</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>desarrollo primaveral</translation>
    </message>
    <message>
        <source>bags of sugar</source>
        <translation>sacos de azúcar</translation>
    </message>
    <message>
        <source>sugar costs about</source>
        <translation>el azúcar cuesta alrededor de</translation>
    </message>
    <message>
        <source>last day for syrup, of the earliest colony</source>
        <translation>último día para dar jarabe, de la colonia más temprana</translation>
    </message>
    <message>
        <source>what is done</source>
        <translation>qué se hace</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>cuánto</translation>
    </message>
    <message>
        <source>stores taken or added</source>
        <translation>reservas quitadas o añadidas</translation>
    </message>
    <message>
        <source>left when spring forage starts</source>
        <translation>queda al comenzar la floración de primavera</translation>
    </message>
    <message>
        <source>by</source>
        <translation>según</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>says</source>
        <translation>indica</translation>
    </message>
    <message>
        <source>box</source>
        <translation>cuerpo</translation>
    </message>
    <message>
        <source>%{comb}</source>
        <translation>cuadro</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>%{combs}</source>
        <translation>cuadros</translation>
    </message>
    <message>
        <source>honey</source>
        <translation>miel</translation>
    </message>
    <message>
        <source>take honey</source>
        <translation>quitar miel</translation>
    </message>
    <message>
        <source>leave as it is</source>
        <translation>dejar como está</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>alimentar</translation>
    </message>
    <message>
        <source>unite</source>
        <translation>unir</translation>
    </message>
    <message>
        <source>cannot be said</source>
        <translation>no se puede decir</translation>
    </message>
    <message>
        <source>on course</source>
        <translation>según lo previsto</translation>
    </message>
    <message>
        <source>eating faster than planned</source>
        <translation>consume más de lo previsto</translation>
    </message>
    <message>
        <source>food out of reach: feed today</source>
        <translation>separada de sus reservas: alimentar hoy</translation>
    </message>
    <message>
        <source>dwindling</source>
        <translation>se despuebla</translation>
    </message>
    <message>
        <source>less than thought</source>
        <translation>menos de lo pensado</translation>
    </message>
    <message>
        <source>was the feed given?</source>
        <translation>¿se dio el alimento?</translation>
    </message>
    <message>
        <source>more than needed</source>
        <translation>más de lo necesario</translation>
    </message>
    <message>
        <source>feed now</source>
        <translation>alimentar ya</translation>
    </message>
    <message>
        <source>dead</source>
        <translation>muerta</translation>
    </message>
    <message>
        <source>take now</source>
        <translation>quitar ahora</translation>
    </message>
    <message>
        <source>take in spring</source>
        <translation>quitar en primavera</translation>
    </message>
    <message>
        <source>%{combs} from a neighbour</source>
        <translation>cuadros de una vecina</translation>
    </message>
    <message>
        <source>syrup, in the evening</source>
        <translation>jarabe, al atardecer</translation>
    </message>
    <message>
        <source>fondant, touching the cluster</source>
        <translation>candi, en contacto con el racimo</translation>
    </message>
    <message>
        <source>check: sealed? weigh, feeder off, mouse guard on</source>
        <translation>comprobar: ¿operculado? pesar, quitar el alimentador, poner la rejilla contra ratones</translation>
    </message>
    <message>
        <source>take honey off, before feeding or treating</source>
        <translation>quitar miel, antes de alimentar o tratar</translation>
    </message>
    <message>
        <source>weigh when the last forage is over</source>
        <translation>pesar cuando termine la última floración</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>volver a pesar</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>poner un cuadro con huevos de otra colonia</translation>
    </message>
    <message>
        <source>see whether queen cells are on the %{comb} with eggs</source>
        <translation>ver si hay celdas reales en el cuadro con huevos</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>contar los ácaros y volver a revisar las reservas</translation>
    </message>
    <message>
        <source>signs of disease: call the bee inspector, move nothing</source>
        <translation>signos de enfermedad: avisar a los servicios veterinarios oficiales y no trasladar nada</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>contar los cuadros que cubren las abejas</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>revisar las reservas o pesar</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>cualquier día</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 de cada 100</translation>
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
        <translation>%1 y más</translation>
    </message>
    <message>
        <source>case files opened</source>
        <translation>archivos de caso abiertos</translation>
    </message>
    <message>
        <source>yard begun</source>
        <translation>colmenar empezado</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 taken out</source>
        <translation>%1: quitado</translation>
    </message>
    <message>
        <source>%1: from %2 to %3</source>
        <translation>%1: de %2 a %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: was %2</source>
        <translation>%1: era %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>and one more</source>
        <translation>y uno más</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>yard</source>
        <translation>colmenar</translation>
    </message>
    <message>
        <source>yards</source>
        <translation>colmenares</translation>
    </message>
    <message>
        <source>yard added</source>
        <translation>colmenar añadido</translation>
    </message>
    <message>
        <source>yard changed</source>
        <translation>colmenar cambiado</translation>
    </message>
    <message>
        <source>yard removed</source>
        <translation>colmenar quitado</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>colonies</source>
        <translation>colonias</translation>
    </message>
    <message>
        <source>colony added</source>
        <translation>colonia añadida</translation>
    </message>
    <message>
        <source>colony changed</source>
        <translation>colonia cambiada</translation>
    </message>
    <message>
        <source>colony removed</source>
        <translation>colonia quitada</translation>
    </message>
    <message>
        <source>move</source>
        <translation>traslado</translation>
    </message>
    <message>
        <source>moves</source>
        <translation>traslados</translation>
    </message>
    <message>
        <source>move added</source>
        <translation>traslado añadido</translation>
    </message>
    <message>
        <source>move changed</source>
        <translation>traslado cambiado</translation>
    </message>
    <message>
        <source>move removed</source>
        <translation>traslado quitado</translation>
    </message>
    <message>
        <source>end of a colony</source>
        <translation>fin de una colonia</translation>
    </message>
    <message>
        <source>ends of colonies</source>
        <translation>fines de colonias</translation>
    </message>
    <message>
        <source>end of a colony recorded</source>
        <translation>fin de una colonia anotado</translation>
    </message>
    <message>
        <source>end of a colony changed</source>
        <translation>fin de una colonia cambiado</translation>
    </message>
    <message>
        <source>end of a colony removed</source>
        <translation>fin de una colonia quitado</translation>
    </message>
    <message>
        <source>hive from a day on</source>
        <translation>colmena desde un día</translation>
    </message>
    <message>
        <source>hives from a day on</source>
        <translation>colmenas desde un día</translation>
    </message>
    <message>
        <source>new hive recorded</source>
        <translation>colmena nueva anotada</translation>
    </message>
    <message>
        <source>new hive changed</source>
        <translation>colmena nueva cambiada</translation>
    </message>
    <message>
        <source>new hive removed</source>
        <translation>colmena nueva quitada</translation>
    </message>
    <message>
        <source>look</source>
        <translation>revisión</translation>
    </message>
    <message>
        <source>looks</source>
        <translation>revisiones</translation>
    </message>
    <message>
        <source>look added</source>
        <translation>revisión añadida</translation>
    </message>
    <message>
        <source>look changed</source>
        <translation>revisión cambiada</translation>
    </message>
    <message>
        <source>look removed</source>
        <translation>revisión quitada</translation>
    </message>
    <message>
        <source>weighing</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>weighings</source>
        <translation>pesadas</translation>
    </message>
    <message>
        <source>weighing added</source>
        <translation>pesada añadida</translation>
    </message>
    <message>
        <source>weighing changed</source>
        <translation>pesada cambiada</translation>
    </message>
    <message>
        <source>weighing removed</source>
        <translation>pesada quitada</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>aporte de alimento</translation>
    </message>
    <message>
        <source>feeds</source>
        <translation>aportes de alimento</translation>
    </message>
    <message>
        <source>feed added</source>
        <translation>aporte de alimento añadido</translation>
    </message>
    <message>
        <source>feed changed</source>
        <translation>aporte de alimento cambiado</translation>
    </message>
    <message>
        <source>feed removed</source>
        <translation>aporte de alimento quitado</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>cosecha</translation>
    </message>
    <message>
        <source>harvests</source>
        <translation>cosechas</translation>
    </message>
    <message>
        <source>harvest added</source>
        <translation>cosecha añadida</translation>
    </message>
    <message>
        <source>harvest changed</source>
        <translation>cosecha cambiada</translation>
    </message>
    <message>
        <source>harvest removed</source>
        <translation>cosecha quitada</translation>
    </message>
    <message>
        <source>treatment</source>
        <translation>tratamiento</translation>
    </message>
    <message>
        <source>treatments</source>
        <translation>tratamientos</translation>
    </message>
    <message>
        <source>treatment added</source>
        <translation>tratamiento añadido</translation>
    </message>
    <message>
        <source>treatment changed</source>
        <translation>tratamiento cambiado</translation>
    </message>
    <message>
        <source>treatment removed</source>
        <translation>tratamiento quitado</translation>
    </message>
    <message>
        <source>work on the hive</source>
        <translation>trabajo en la colmena</translation>
    </message>
    <message>
        <source>work on hives</source>
        <translation>trabajos en colmenas</translation>
    </message>
    <message>
        <source>work on the hive recorded</source>
        <translation>trabajo en la colmena anotado</translation>
    </message>
    <message>
        <source>work on the hive changed</source>
        <translation>trabajo en la colmena cambiado</translation>
    </message>
    <message>
        <source>work on the hive removed</source>
        <translation>trabajo en la colmena quitado</translation>
    </message>
    <message>
        <source>advice acted on</source>
        <translation>recomendación seguida</translation>
    </message>
    <message>
        <source>advice kept</source>
        <translation>recomendación guardada</translation>
    </message>
    <message>
        <source>kept advice changed</source>
        <translation>recomendación guardada cambiada</translation>
    </message>
    <message>
        <source>kept advice removed</source>
        <translation>recomendación guardada quitada</translation>
    </message>
    <message>
        <source>planned visit</source>
        <translation>visita prevista</translation>
    </message>
    <message>
        <source>planned visits</source>
        <translation>visitas previstas</translation>
    </message>
    <message>
        <source>visit planned</source>
        <translation>visita prevista añadida</translation>
    </message>
    <message>
        <source>planned visit changed</source>
        <translation>visita prevista cambiada</translation>
    </message>
    <message>
        <source>planned visit removed</source>
        <translation>visita prevista quitada</translation>
    </message>
    <message>
        <source>outcome of a winter</source>
        <translation>resultado de un invierno</translation>
    </message>
    <message>
        <source>outcomes of winters</source>
        <translation>resultados de inviernos</translation>
    </message>
    <message>
        <source>outcome of the winter recorded</source>
        <translation>resultado del invierno anotado</translation>
    </message>
    <message>
        <source>outcome of the winter changed</source>
        <translation>resultado del invierno cambiado</translation>
    </message>
    <message>
        <source>outcome of the winter removed</source>
        <translation>resultado del invierno quitado</translation>
    </message>
    <message>
        <source>winter sighting</source>
        <translation>vistazo de invierno</translation>
    </message>
    <message>
        <source>winter sightings</source>
        <translation>vistazos de invierno</translation>
    </message>
    <message>
        <source>winter sighting added</source>
        <translation>vistazo de invierno añadido</translation>
    </message>
    <message>
        <source>winter sighting changed</source>
        <translation>vistazo de invierno cambiado</translation>
    </message>
    <message>
        <source>winter sighting removed</source>
        <translation>vistazo de invierno quitado</translation>
    </message>
    <message>
        <source>log of temperatures</source>
        <translation>registro de temperaturas</translation>
    </message>
    <message>
        <source>logs of temperatures</source>
        <translation>registros de temperaturas</translation>
    </message>
    <message>
        <source>temperatures added</source>
        <translation>temperaturas añadidas</translation>
    </message>
    <message>
        <source>temperatures changed</source>
        <translation>temperaturas cambiadas</translation>
    </message>
    <message>
        <source>temperatures removed</source>
        <translation>temperaturas quitadas</translation>
    </message>
    <message>
        <source>%{comb} changed</source>
        <translation>cuadro cambiado</translation>
    </message>
    <message>
        <source>visit made</source>
        <translation>visita hecha</translation>
    </message>
    <message>
        <source>visit skipped</source>
        <translation>visita omitida</translation>
    </message>
    <message>
        <source>advice made the plan</source>
        <translation>recomendación adoptada como plan</translation>
    </message>
    <message>
        <source>hive changed</source>
        <translation>colmena cambiada</translation>
    </message>
    <message>
        <source>%{combs} moved</source>
        <translation>cuadros pasados</translation>
    </message>
    <message>
        <source>colonies united</source>
        <translation>colonias unidas</translation>
    </message>
    <message>
        <source>whole book imported</source>
        <translation>cuaderno entero importado</translation>
    </message>
    <message>
        <source>backup restored</source>
        <translation>copia de seguridad restaurada</translation>
    </message>
    <message>
        <source>salvaged from a damaged book</source>
        <translation>rescatado de un cuaderno dañado</translation>
    </message>
    <message>
        <source>imported: %1</source>
        <translation>importado: %1</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>deshecho</translation>
    </message>
    <message>
        <source>undone for good</source>
        <translation>deshecho para siempre</translation>
    </message>
</context>
<context>
    <name>WindowWords</name>
    <message>
        <source>It cannot be said yet.</source>
        <translation>Todavía no se puede decir.</translation>
    </message>
    <message>
        <source>It cannot be said: no weather station is near enough to speak for this place.</source>
        <translation>No se puede decir: ninguna estación meteorológica está bastante cerca para valer por este lugar.</translation>
    </message>
    <message>
        <source>There are no bees to winter.</source>
        <translation>No hay abejas que invernar.</translation>
    </message>
    <message>
        <source>To answer, first: how many %{combs} do the bees cover?</source>
        <translation>Para responder, primero: ¿cuántos cuadros cubren las abejas?</translation>
    </message>
    <message>
        <source>To answer, first: look at the %{combs}, or heft or weigh the hive.</source>
        <translation>Para responder, primero: revise los cuadros, o sopese o pese la colmena.</translation>
    </message>
    <message>
        <source>It is too early: winter stores are judged from August on.</source>
        <translation>Es demasiado pronto: las reservas de invierno se estiman desde agosto.</translation>
    </message>
    <message>
        <source>It cannot be said: this place&apos;s season cannot be told from its climate. Give the dates.</source>
        <translation>No se puede decir: la temporada de este lugar no se puede calcular de su clima. Indique las fechas.</translation>
    </message>
    <message>
        <source>The bees have forage again: this winter is over.</source>
        <translation>Las abejas vuelven a tener floración: este invierno ha terminado.</translation>
    </message>
    <message>
        <source>First %2, who is short, is to have %1 of it in %{combs}.</source>
        <translation>Antes hay que dar %1 en cuadros a %2, a la que le faltan reservas.</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>For me</source>
        <translation>Para mí</translation>
    </message>
    <message>
        <source>For the bees</source>
        <translation>Para las abejas</translation>
    </message>
    <message>
        <source>This is an error of Winterlarder, not of yours (%1). What is written down is kept. Please report it, with what you did just before.</source>
        <translation>Este es un error de Winterlarder, no suyo (%1). Lo anotado se conserva. Comuníquelo, por favor, con lo que hizo justo antes.</translation>
    </message>
    <message>
        <source>feed %1 sugar</source>
        <translation>dar %1 de azúcar</translation>
    </message>
    <message>
        <source>feed %1 fondant</source>
        <translation>dar %1 de candi</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>amount unit</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>fewer than 1</source>
        <translation>menos de 1</translation>
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
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>call the inspector</source>
        <translation>avisar a los veterinarios</translation>
    </message>
    <message>
        <source>weigh again</source>
        <translation>volver a pesar</translation>
    </message>
    <message>
        <source>look again, then take %1</source>
        <translation>revisar antes y quitar %1</translation>
    </message>
    <message>
        <source>take %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>give %{combs}</source>
        <translation>dar cuadros</translation>
    </message>
    <message>
        <source>hang in %{combs}</source>
        <translation>poner cuadros</translation>
    </message>
    <message>
        <source>feed later</source>
        <translation>alimentar más tarde</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>operculado</translation>
    </message>
    <message>
        <source>open nectar</source>
        <translation>néctar sin opercular</translation>
    </message>
    <message>
        <source>brood</source>
        <translation>cría</translation>
    </message>
    <message>
        <source>bee bread</source>
        <translation>pan de abejas</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>nada pendiente</translation>
    </message>
    <message>
        <source>syrup was due %1</source>
        <translation>jarabe, tocaba el %1</translation>
    </message>
    <message>
        <source>syrup today</source>
        <translation>jarabe hoy</translation>
    </message>
    <message>
        <source>next syrup %1</source>
        <translation>próximo jarabe el %1</translation>
    </message>
    <message>
        <source>fondant was due %1</source>
        <translation>candi, tocaba el %1</translation>
    </message>
    <message>
        <source>fondant today</source>
        <translation>candi hoy</translation>
    </message>
    <message>
        <source>fondant %1</source>
        <translation>candi el %1</translation>
    </message>
    <message>
        <source>take honey by %1</source>
        <translation>quitar miel: límite %1</translation>
    </message>
    <message>
        <source>when you like</source>
        <translation>cuando quiera</translation>
    </message>
    <message>
        <source>unite by %1</source>
        <translation>unir: límite %1</translation>
    </message>
    <message>
        <source>unite soon</source>
        <translation>unir pronto</translation>
    </message>
    <message>
        <source>count the mites today</source>
        <translation>contar los ácaros hoy</translation>
    </message>
    <message>
        <source>mites and a look %1</source>
        <translation>ácaros y revisión el %1</translation>
    </message>
    <message>
        <source>call the bee inspector</source>
        <translation>avisar a los servicios veterinarios</translation>
    </message>
    <message>
        <source>weigh again %1</source>
        <translation>volver a pesar el %1</translation>
    </message>
    <message>
        <source>heft every two weeks</source>
        <translation>sopesar cada dos semanas</translation>
    </message>
    <message>
        <source>count the bees</source>
        <translation>contar las abejas</translation>
    </message>
    <message>
        <source>%{combs} to it today</source>
        <translation>darle cuadros hoy</translation>
    </message>
    <message>
        <source>%{combs} to it %1</source>
        <translation>darle cuadros el %1</translation>
    </message>
    <message>
        <source>a %{comb} with eggs to it today</source>
        <translation>darle hoy un cuadro con huevos</translation>
    </message>
    <message>
        <source>queen cells? look %1</source>
        <translation>¿celdas reales? mirar el %1</translation>
    </message>
    <message>
        <source>look at the stores</source>
        <translation>revisar las reservas</translation>
    </message>
    <message>
        <source>check today</source>
        <translation>comprobar hoy</translation>
    </message>
    <message>
        <source>check %1</source>
        <translation>comprobar el %1</translation>
    </message>
    <message>
        <source>leave as it is</source>
        <translation>dejar como está</translation>
    </message>
    <message>
        <source>take %1 now</source>
        <translation>quitar %1 ahora</translation>
    </message>
    <message>
        <source>take what is over in spring</source>
        <translation>quitar lo que sobre en primavera</translation>
    </message>
    <message>
        <source>feed up by %1 of stores</source>
        <translation>alimentar hasta sumar %1 de reservas</translation>
    </message>
    <message>
        <source>give it %{combs}, %1</source>
        <translation>darle cuadros, %1</translation>
    </message>
    <message>
        <source>unite it with another colony</source>
        <translation>unirla con otra colonia</translation>
    </message>
    <message>
        <source>last nectar</source>
        <translation>último néctar</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>último día para dar jarabe</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>corte de puesta</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reanudación de la puesta</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>desarrollo primaveral</translation>
    </message>
    <message>
        <source>spring forage</source>
        <translation>floración de primavera</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Does the queen lay: have you seen her, or eggs?</source>
        <translation>¿La reina pone? ¿La ha visto usted, o ha visto huevos?</translation>
    </message>
    <message>
        <source>Have you counted the mites, and treated where it was needed?</source>
        <translation>¿Ha contado los ácaros y tratado donde hacía falta?</translation>
    </message>
    <message>
        <source>Was sugar fed or medicine given while this honey was being made?</source>
        <translation>¿Se dio azúcar o algún medicamento mientras se hacía esta miel?</translation>
    </message>
    <message>
        <source>Is the super for you, or for the bees?</source>
        <translation>¿El alza es para usted o para las abejas?</translation>
    </message>
    <message>
        <source>What does the empty hive weigh, with its drawn %{combs}?</source>
        <translation>¿Cuánto pesa la colmena vacía, con sus cuadros labrados?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you?</source>
        <translation>¿Queda por venir alguna floración cerca de usted?</translation>
    </message>
    <message>
        <source>How many full %{combs} have you in store?</source>
        <translation>¿Cuántos cuadros llenos tiene en almacén?</translation>
    </message>
    <message>
        <source>Can you get to the hive in the second half of winter, to lift and feed it?</source>
        <translation>¿Puede llegar a la colmena en la segunda mitad del invierno, para sopesarla y alimentarla?</translation>
    </message>
    <message>
        <source>Is there food beside the bees, without an empty %{comb} between?</source>
        <translation>¿Hay alimento junto a las abejas, sin ningún cuadro vacío en medio?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you, such as %1?</source>
        <translation>¿Queda por venir alguna floración cerca de usted, como %1?</translation>
    </message>
    <message>
        <source>Is a flow still to come near you, such as %1 or %2?</source>
        <translation>¿Queda por venir alguna floración cerca de usted, como %1 o %2?</translation>
    </message>
    <message>
        <source>top box</source>
        <translation>cuerpo de arriba</translation>
    </message>
    <message>
        <source>bottom box</source>
        <translation>cuerpo de abajo</translation>
    </message>
    <message>
        <source>middle box</source>
        <translation>cuerpo del medio</translation>
    </message>
    <message>
        <source>box %1 from the floor</source>
        <translation>cuerpo %1 desde el fondo</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>numbers of combs</comment>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>%1, all %2 %{combs}</source>
        <translation>%1, los %2 cuadros</translation>
    </message>
    <message>
        <source>%{comb} %1 from the left</source>
        <translation>cuadro %1 desde la izquierda</translation>
    </message>
    <message>
        <source>%1, %{comb} %2 from the left</source>
        <translation>%1, cuadro %2 desde la izquierda</translation>
    </message>
    <message>
        <source>%{combs} %1 from the left</source>
        <translation>cuadros %1 desde la izquierda</translation>
    </message>
    <message>
        <source>%1, %{combs} %2 from the left</source>
        <translation>%1, cuadros %2 desde la izquierda</translation>
    </message>
    <message>
        <source>without your super %1</source>
        <comment>weight</comment>
        <translation>sin el alza %1</translation>
    </message>
    <message>
        <source>%1 with hive and bees</source>
        <translation>%1 con colmena y abejas</translation>
    </message>
    <message>
        <source>%1 with hive and bees, the empty hive taken as %2</source>
        <translation>%1 con colmena y abejas, tomando la colmena vacía como %2</translation>
    </message>
    <message>
        <source>Today it should hold about %1 of stores: %2, %3.</source>
        <comment>stores, full combs, weight</comment>
        <translation>Hoy debería tener alrededor de %1 de reservas: %2, %3.</translation>
    </message>
    <message>
        <source>For winter, on %1: about %2 of stores, %3, %4.</source>
        <comment>day, stores, full combs, weight</comment>
        <translation>Para el invierno, el %1: alrededor de %2 de reservas, %3, %4.</translation>
    </message>
    <message>
        <source>There now: %1 bees; what stores there are nobody can say before one of the two is found wrong.</source>
        <translation>Hay ahora: %1 abejas; qué reservas hay no se puede decir hasta saber cuál de los dos datos falla.</translation>
    </message>
    <message>
        <source>There now: %1 of stores, %2 bees. With %3 united onto it: %4 and %5 bees.</source>
        <comment>stores, bees, colony, stores, bees</comment>
        <translation>Hay ahora: %1 de reservas, %2 abejas. Con %3 unida a ella: %4 y %5 abejas.</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>la otra</translation>
    </message>
    <message>
        <source>There now: %1 of stores.</source>
        <translation>Hay ahora: %1 de reservas.</translation>
    </message>
    <message>
        <source>There now: %1 of stores, %2 bees.</source>
        <translation>Hay ahora: %1 de reservas, %2 abejas.</translation>
    </message>
    <message>
        <source>If nothing were fed later, in %2 simulated winters %1 or more would be left when spring forage starts; in %3 the food would run out.</source>
        <translation>Si más tarde no se alimentara, en %2 inviernos simulados quedarían %1 o más al comenzar la floración de primavera; en %3 se agotaría el alimento.</translation>
    </message>
    <message>
        <source>Left as it is, in %2 simulated winters %1 or more are left when spring forage starts; in %3 the food runs out.</source>
        <translation>Si se deja como está, en %2 inviernos simulados quedan %1 o más al comenzar la floración de primavera; en %3 se agota el alimento.</translation>
    </message>
    <message>
        <source>%1 With the honey off and nothing fed later, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Quitando la miel y sin alimentar más tarde, queda al menos eso en %2, y el alimento se agota en %3.</translation>
    </message>
    <message>
        <source>%1 With the honey off, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Quitando la miel, queda al menos eso en %2, y el alimento se agota en %3.</translation>
    </message>
    <message>
        <source>%1 Fed as advised and with no fondant in winter, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Alimentando como se recomienda y sin candi en invierno, queda al menos eso en %2, y el alimento se agota en %3.</translation>
    </message>
    <message>
        <source>%1 Fed as advised, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Alimentando como se recomienda, queda al menos eso en %2, y el alimento se agota en %3.</translation>
    </message>
    <message>
        <source>%1 With this feed and no other, so much is left in %2, and the food runs out in %3.</source>
        <translation>%1 Con este aporte de alimento y ningún otro, queda al menos eso en %2, y el alimento se agota en %3.</translation>
    </message>
    <message>
        <source>%1 (between 80 and 90, for cold may lock the bees in for %2 days)</source>
        <translation>%1 (entre 80 y 90, porque el frío puede tener confinadas a las abejas %2 días)</translation>
    </message>
    <message>
        <source>%1 are aimed at; the %{combs} have no room for more.</source>
        <translation>El objetivo es %1; en los cuadros no cabe más.</translation>
    </message>
    <message>
        <source>%1 are aimed at; it is fewer because what is there now is not known well. If it is as thought, it is %2.</source>
        <translation>El objetivo es %1; son menos porque lo que hay ahora no se conoce bien. Si hay lo que se piensa, son %2.</translation>
    </message>
    <message>
        <source>What is told of winters here counts stores only: without a queen it does not live through winter, however much there is.</source>
        <translation>Lo que se dice aquí de los inviernos solo cuenta las reservas: sin reina no pasa el invierno, por mucho que haya.</translation>
    </message>
    <message>
        <source>%1 Taking the super off changes nothing of that, for its honey was not counted.</source>
        <translation>%1 Quitar el alza no cambia nada de eso, porque su miel no se contó.</translation>
    </message>
    <message>
        <source>The %{combs} hold %1 when winter begins: of the %2, which are today&apos;s stores and all the feed, about %3 are eaten by %4.</source>
        <comment>capacity, stores after, eaten, day</comment>
        <translation>En los cuadros caben %1 cuando empieza el invierno: de %2, entre las reservas de hoy y todo el alimento, se habrán comido alrededor de %3 para el %4.</translation>
    </message>
    <message>
        <source>by %1</source>
        <comment>a day</comment>
        <translation>a más tardar el %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <comment>two days</comment>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>Up to %1 of sugar may be wanted %2, more likely none.</source>
        <translation>Pueden hacer falta hasta %1 de azúcar %2; lo más probable es que nada.</translation>
    </message>
    <message>
        <source>Up to %1 of fondant may be wanted %2, in most winters none.</source>
        <translation>Pueden hacer falta hasta %1 de candi %2; en la mayoría de los inviernos, nada.</translation>
    </message>
    <message>
        <source>Likely to be fed %1: up to %2 of sugar, more likely %3.</source>
        <translation>Probablemente habrá que dar, %1: hasta %2 de azúcar, lo más probable %3.</translation>
    </message>
    <message>
        <source>Likely to be wanted %1: up to %2 of fondant, more likely %3.</source>
        <translation>Probablemente harán falta, %1: hasta %2 de candi, lo más probable %3.</translation>
    </message>
    <message>
        <source>Likely to be fed %1: %2 to %3 of sugar, more likely %4.</source>
        <translation>Probablemente habrá que dar, %1: de %2 a %3 de azúcar, lo más probable %4.</translation>
    </message>
    <message>
        <source>Likely to be wanted %1: %2 to %3 of fondant, more likely %4.</source>
        <translation>Probablemente harán falta, %1: de %2 a %3 de candi, lo más probable %4.</translation>
    </message>
    <message>
        <source>one full %{comb}</source>
        <translation>un cuadro lleno</translation>
    </message>
    <message>
        <source>%1 full %{combs}</source>
        <translation>%1 cuadros llenos</translation>
    </message>
    <message>
        <source>The bees cannot reach their food: %1, then weigh.</source>
        <translation>Las abejas no llegan a su alimento: %1 y después pesar.</translation>
    </message>
    <message>
        <source>There may be food for less than three weeks: %1, then weigh.</source>
        <translation>Puede que quede alimento para menos de tres semanas: %1 y después pesar.</translation>
    </message>
    <message>
        <source>Too little to be safe until the next look: %1.</source>
        <translation>Muy poco para estar segura hasta la próxima revisión: %1.</translation>
    </message>
    <message>
        <source>Leave it: there is enough until the next look.</source>
        <translation>Conviene dejarla: hay bastante hasta la próxima revisión.</translation>
    </message>
    <message>
        <source>The hive is full: leave it and feed nothing.</source>
        <translation>La colmena está llena: conviene dejarla y no dar nada.</translation>
    </message>
    <message>
        <source>Too late for syrup: %1, and wrap the hive.</source>
        <translation>Ya es tarde para jarabe: %1 y abrigar la colmena.</translation>
    </message>
    <message>
        <source>Late, but better than nothing: %1, and wrap the hive.</source>
        <translation>Es tarde, pero mejor que nada: %1 y abrigar la colmena.</translation>
    </message>
    <message>
        <source>Stores run low: %1.</source>
        <translation>Quedan pocas reservas: %1.</translation>
    </message>
    <message>
        <source>Leave it as it is: no honey is taken now.</source>
        <translation>Conviene dejarla como está: ahora no se quita miel.</translation>
    </message>
    <message>
        <source>Leave it as it is.</source>
        <translation>Conviene dejarla como está.</translation>
    </message>
    <message>
        <source>To answer, first: count the %{combs} covered with bees, or the seams.</source>
        <translation>Para responder, primero: cuente los cuadros cubiertos de abejas, o las calles.</translation>
    </message>
    <message>
        <source>To answer, first: weigh both sides, or look at the %{combs}.</source>
        <translation>Para responder, primero: pese por los dos lados o revise los cuadros.</translation>
    </message>
    <message>
        <source>This cannot be said: see the reasons.</source>
        <translation>Esto no se puede decir: vea los motivos.</translation>
    </message>
    <message>
        <source>Unite %1 onto it %2.</source>
        <translation>Hay que unir %1 a esta colonia, %2.</translation>
    </message>
    <message>
        <source>Give %1 (%2) to %3.</source>
        <comment>combs, their places, colony</comment>
        <translation>Pase %1 (%2) a %3.</translation>
    </message>
    <message>
        <source>Hang in %1 from %2 (its %3).</source>
        <comment>combs, colony, their places</comment>
        <translation>De %2 (%3), ponga aquí %1.</translation>
    </message>
    <message>
        <source>another colony of the yard</source>
        <translation>otra colonia del colmenar</translation>
    </message>
    <message>
        <source>Too few bees to winter alone: unite it with %1 %2.</source>
        <translation>Muy pocas abejas para invernar sola: hay que unirla con %1, %2.</translation>
    </message>
    <message>
        <source>Too few bees to winter alone: unite it with a healthy colony %1.</source>
        <translation>Muy pocas abejas para invernar sola: hay que unirla con una colonia sana, %1.</translation>
    </message>
    <message>
        <source>No sign of a queen: make sure she is gone, then unite the bees with %1 %2.</source>
        <translation>Ninguna señal de reina: asegúrese de que falta y entonces hay que unir las abejas con %1, %2.</translation>
    </message>
    <message>
        <source>No sign of a queen: make sure she is gone, then unite the bees with a queenright colony %1.</source>
        <translation>Ninguna señal de reina: asegúrese de que falta y entonces hay que unir las abejas con una colonia con reina, %1.</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>on %1</source>
        <comment>a day</comment>
        <translation>el %1</translation>
    </message>
    <message>
        <source>soon, on a warm evening, at the latest on %1</source>
        <comment>a day</comment>
        <translation>pronto, en un atardecer templado, a más tardar el %1</translation>
    </message>
    <message>
        <source>take your super off, then %1</source>
        <translation>primero quite su alza y después %1</translation>
    </message>
    <message>
        <source>feed it</source>
        <translation>hay que alimentarla</translation>
    </message>
    <message>
        <source>feed %1 of sugar as syrup %2 %3</source>
        <comment>amount, ratio, day</comment>
        <translation>hay que dar %1 de azúcar en jarabe %2 %3</translation>
    </message>
    <message>
        <source>feed %1 of sugar as syrup %2, the first of %3 visits %4</source>
        <translation>hay que dar %1 de azúcar en jarabe %2, en %3 visitas, la primera %4</translation>
    </message>
    <message>
        <source>lay a candy board of %1 on the bees %2</source>
        <translation>hay que poner una plancha de candi de %1 sobre las abejas %2</translation>
    </message>
    <message>
        <source>lay %1 of fondant on the bees %2</source>
        <translation>hay que poner %1 de candi sobre las abejas %2</translation>
    </message>
    <message>
        <source>Too late for much syrup: %1, in small warm portions over the cluster, as long as they are taken.</source>
        <translation>Ya es tarde para mucho jarabe: %1, en pequeñas raciones tibias sobre el racimo, mientras las tomen.</translation>
    </message>
    <message>
        <source>%1, in small portions over the cluster, on days that are warm enough.</source>
        <translation>%1, en pequeñas raciones sobre el racimo, los días en que haga bastante calor.</translation>
    </message>
    <message>
        <source>That alone will not carry it: give it full %{combs} too, from store or a healthy neighbour, or unite it while days are warm.</source>
        <translation>Solo con eso no le alcanzará: dele también cuadros llenos, del almacén o de una vecina sana, o únala mientras los días sean cálidos.</translation>
    </message>
    <message>
        <source>Nothing is fed today.</source>
        <translation>Hoy no se da nada.</translation>
    </message>
    <message>
        <source>On these stores it will hardly live until spring, and it is too late for syrup: on the next mild day hang full %{combs} on both sides of the bees, from store or a healthy neighbour.</source>
        <translation>Con estas reservas difícilmente llegará a la primavera, y ya es tarde para el jarabe: el próximo día templado ponga cuadros llenos a ambos lados de las abejas, del almacén o de una vecina sana.</translation>
    </message>
    <message>
        <source>What is missing beyond that is best given as full %{combs}, if you have any in store or a healthy neighbour can spare them.</source>
        <translation>Lo que falte además conviene darlo en cuadros llenos, si los tiene en el almacén o si una vecina sana puede cederlos.</translation>
    </message>
    <message>
        <source>%1 Until then: %2.</source>
        <translation>%1 Hasta entonces, %2.</translation>
    </message>
    <message>
        <source>Weigh it %1.</source>
        <translation>Conviene pesarla %1.</translation>
    </message>
    <message>
        <source>Far too many mites: treat first, and look again %1.</source>
        <translation>Demasiados varroas: trate primero y vuelva a mirar %1.</translation>
    </message>
    <message>
        <source>Treat where the count of mites calls for it, and look again %1.</source>
        <translation>Trate si el recuento de ácaros lo pide y vuelva a revisar %1.</translation>
    </message>
    <message>
        <source>Count the mites, and look again %1.</source>
        <translation>Cuente los ácaros y vuelva a revisar %1.</translation>
    </message>
    <message>
        <source>Later up to %1 of fondant may be wanted.</source>
        <translation>Más tarde pueden hacer falta hasta %1 de candi.</translation>
    </message>
    <message>
        <source>Later %1 to %2 of fondant are likely to be wanted.</source>
        <translation>Más tarde es probable que hagan falta de %1 a %2 de candi.</translation>
    </message>
    <message>
        <source>For winter up to %1 of sugar may be wanted, from %2.</source>
        <translation>Para el invierno pueden hacer falta hasta %1 de azúcar, desde el %2.</translation>
    </message>
    <message>
        <source>For winter about %1 of sugar will be wanted, from %2.</source>
        <translation>Para el invierno harán falta alrededor de %1 de azúcar, desde el %2.</translation>
    </message>
    <message>
        <source>For winter %1 to %2 of sugar are likely to be wanted, from %3.</source>
        <translation>Para el invierno es probable que hagan falta de %1 a %2 de azúcar, desde el %3.</translation>
    </message>
    <message>
        <source>Signs of disease: close the hive, narrow the entrance, move nothing, call the bee inspector.</source>
        <translation>Signos de enfermedad: cierre la colmena, reduzca la piquera, no traslade nada y avise a los servicios veterinarios oficiales.</translation>
    </message>
    <message>
        <source>%1 and %2 contradict each other: weigh again before anything else, and check the empty weight, the roof, stones, and whether a super was left out.</source>
        <translation>%1 y %2 se contradicen: antes de nada, vuelva a pesar y compruebe el peso en vacío, la tapa, las piedras y si falta algún alza.</translation>
    </message>
    <message>
        <source>%1 Both are short, so this does no harm: %2.</source>
        <translation>%1 Según los dos datos falta alimento, así que esto no hace daño: %2.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>evidence and what it says</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>It is light: %1, then weigh both sides.</source>
        <translation>Está ligera: %1 y después pesar por los dos lados.</translation>
    </message>
    <message>
        <source>It is heavy: leave it.</source>
        <translation>Está pesada: conviene dejarla.</translation>
    </message>
    <message>
        <source>A heft decides neither honey nor feed: weigh both sides.</source>
        <translation>Un sopesado no decide ni miel ni alimento: pese por los dos lados.</translation>
    </message>
    <message>
        <source>Weigh both sides first</source>
        <translation>Pese primero por los dos lados</translation>
    </message>
    <message>
        <source>Count the full %{combs} first</source>
        <translation>Cuente primero los cuadros llenos</translation>
    </message>
    <message>
        <source>Count the bees first</source>
        <translation>Cuente primero las abejas</translation>
    </message>
    <message>
        <source>%1. If there are about as many as is thought, %2.</source>
        <comment>look, take</comment>
        <translation>%1. Si hay más o menos las que se piensa, %2.</translation>
    </message>
    <message>
        <source>%1. If that bears out about %2 of stores, %3.</source>
        <comment>look, stores, take</comment>
        <translation>%1. Si se confirman alrededor de %2 de reservas, %3.</translation>
    </message>
    <message>
        <source>take about %1 of honey, in whole capped %{combs}</source>
        <translation>puede cosechar alrededor de %1 de miel, en cuadros enteros operculados</translation>
    </message>
    <message>
        <source>take one %{comb} with %1 of honey</source>
        <translation>puede quitar un cuadro con %1 de miel</translation>
    </message>
    <message>
        <source>take the super off: %1 of honey in %2 %{combs}</source>
        <translation>puede quitar el alza: %1 de miel en %2 cuadros</translation>
    </message>
    <message>
        <source>take %1 supers off: %2 of honey in %3 %{combs}</source>
        <translation>puede quitar %1 alzas: %2 de miel en %3 cuadros</translation>
    </message>
    <message>
        <source>take %1 of honey in %2 %{combs}</source>
        <translation>puede cosechar %1 de miel en %2 cuadros</translation>
    </message>
    <message>
        <source>Was the feed planned from %1 on given? Write it down first. If it was not: %2</source>
        <comment>day, what</comment>
        <translation>¿Se dio el alimento previsto desde el %1? Anótelo primero. Si no se dio: %2</translation>
    </message>
    <message>
        <source>Something written down is in doubt: settle that first, see the reasons. Until then: %1</source>
        <translation>Hay una anotación dudosa: aclárela primero, vea los motivos. Hasta entonces: %1</translation>
    </message>
    <message>
        <source>how many bees there are</source>
        <translation>cuántas abejas hay</translation>
    </message>
    <message>
        <source>what stores there are</source>
        <translation>qué reservas hay</translation>
    </message>
    <message>
        <source>What may be taken hangs on %1: %2.</source>
        <translation>Lo que se puede cosechar depende de %1: %2.</translation>
    </message>
    <message>
        <source>Look again first, for the answer hangs on %1: %2.</source>
        <translation>Primero vuelva a mirar, porque la respuesta depende de %1: %2.</translation>
    </message>
    <message>
        <source>It can wait, but what will be wanted for winter hangs on %1: %2.</source>
        <translation>Puede esperar, pero lo que hará falta para el invierno depende de %1: %2.</translation>
    </message>
    <message>
        <source>Worth a better look, for whether anything is missing or to spare hangs on %1: %2.</source>
        <translation>Merece una revisión mejor, porque de %1 depende si falta o sobra algo: %2.</translation>
    </message>
    <message>
        <source>The first visit need not wait. Look again before the second, for the amount hangs on %1: %2.</source>
        <translation>La primera visita no tiene que esperar. Vuelva a mirar antes de la segunda, porque la cantidad depende de %1: %2.</translation>
    </message>
    <message>
        <source>This feed need not wait. What more is wanted hangs on %1: %2.</source>
        <translation>Este aporte de alimento no tiene que esperar. Lo que haga falta después depende de %1: %2.</translation>
    </message>
    <message>
        <source>A better look before %1 would not change what is to be done now.</source>
        <comment>a day</comment>
        <translation>Una revisión mejor antes del %1 no cambiaría lo que hay que hacer ahora.</translation>
    </message>
    <message>
        <source>Another look would not change what is to be done: the bees need not be disturbed for it.</source>
        <translation>Otra revisión no cambiaría lo que hay que hacer: no hace falta molestar a las abejas por eso.</translation>
    </message>
    <message>
        <source>A better look at the stores would change nothing now.</source>
        <translation>Una revisión mejor de las reservas no cambiaría nada ahora.</translation>
    </message>
    <message>
        <source>%1 What is known to within %2 now would be known to within %3.</source>
        <comment>the sentence before, now, then</comment>
        <translation>%1 Lo que ahora se conoce con un margen de error de %2 se conocería con uno de %3.</translation>
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
            <numerusform>%n milla</numerusform>
            <numerusform>%n millas</numerusform>
        </translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <comment>a day, as QLocale::toString takes it: d. MMMM yyyy in German</comment>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <comment>a month, as QLocale::toString takes it</comment>
        <translation>MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>under 1 of 100</source>
        <translation>menos de 1 de cada 100</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 de cada 100</translation>
    </message>
    <message>
        <source>a healthy queenright colony that is strong enough</source>
        <translation>una colonia sana con reina y bastante fuerte</translation>
    </message>
    <message>
        <source>Once it is certain that it has no queen: in the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water.</source>
        <translation>Cuando sea seguro que no tiene reina: al atardecer, sus cuadros colgados junto a los de %1 tras una hoja de papel de periódico, con las abejas rociadas con agua.</translation>
    </message>
    <message>
        <source>In the evening, its %{combs} hung beside those of %1 behind a sheet of newspaper, the bees misted with water; the better queen is kept.</source>
        <translation>Al atardecer, sus cuadros colgados junto a los de %1 tras una hoja de papel de periódico, con las abejas rociadas con agua; se queda la mejor reina.</translation>
    </message>
    <message>
        <source>Once it is certain that it has no queen: in the evening, with a sheet of newspaper between, above %1.</source>
        <translation>Cuando sea seguro que no tiene reina: al atardecer, con una hoja de papel de periódico en medio, sobre %1.</translation>
    </message>
    <message>
        <source>In the evening, with a sheet of newspaper between, above %1; the better queen is kept.</source>
        <translation>Al atardecer, con una hoja de papel de periódico en medio, sobre %1; se queda la mejor reina.</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>cuadro</translation>
    </message>
    <message>
        <source>comb</source>
        <translation>cuadro</translation>
    </message>
    <message>
        <source>frames</source>
        <translation>cuadros</translation>
    </message>
    <message>
        <source>combs</source>
        <translation>cuadros</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Cuadro</translation>
    </message>
    <message>
        <source>Comb</source>
        <translation>Cuadro</translation>
    </message>
    <message>
        <source>Frames</source>
        <translation>Cuadros</translation>
    </message>
    <message>
        <source>Combs</source>
        <translation>Cuadros</translation>
    </message>
    <message>
        <source>a candy board</source>
        <translation>una plancha de candi</translation>
    </message>
    <message>
        <source>fondant</source>
        <translation>candi</translation>
    </message>
    <message>
        <source>A candy board</source>
        <translation>Una plancha de candi</translation>
    </message>
    <message>
        <source>Fondant</source>
        <translation>Candi</translation>
    </message>
    <message>
        <source>yellowjackets</source>
        <translation>avispas</translation>
    </message>
    <message>
        <source>wasps</source>
        <translation>avispas</translation>
    </message>
    <message>
        <source>the last nectar coming in</source>
        <translation>fin de la entrada de néctar</translation>
    </message>
    <message>
        <source>the end of laying</source>
        <translation>corte de puesta</translation>
    </message>
    <message>
        <source>the new start of laying</source>
        <translation>reanudación de la puesta</translation>
    </message>
    <message>
        <source>the build-up</source>
        <translation>desarrollo primaveral</translation>
    </message>
    <message>
        <source>the start of spring forage</source>
        <translation>comienzo de la floración de primavera</translation>
    </message>
    <message>
        <source>feeding best finished by</source>
        <translation>fin recomendado de la alimentación</translation>
    </message>
    <message>
        <source>the last day for syrup</source>
        <translation>último día para dar jarabe</translation>
    </message>
    <message>
        <source>the day syrup is no longer taken</source>
        <translation>día en que ya no toman el jarabe</translation>
    </message>
    <message>
        <source>the %{comb} record</source>
        <translation>la revisión de los cuadros</translation>
    </message>
    <message>
        <source>%{combs} looked at</source>
        <translation>cuadros revisados</translation>
    </message>
    <message>
        <source>the count of full %{combs}</source>
        <translation>el recuento de cuadros llenos</translation>
    </message>
    <message>
        <source>%{combs} counted</source>
        <translation>cuadros contados</translation>
    </message>
    <message>
        <source>the weight on the scale</source>
        <translation>el peso en la báscula</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>báscula</translation>
    </message>
    <message>
        <source>the two sides lifted</source>
        <translation>la pesada por los dos lados</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>pesada por los dos lados</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>la pesada por un lado</translation>
    </message>
    <message>
        <source>the heft</source>
        <translation>el sopesado</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>sopesada</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>cosechar</translation>
    </message>
    <message>
        <source>take</source>
        <translation>cosechar</translation>
    </message>
    <message>
        <source>leave</source>
        <translation>dejar</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>alimentar</translation>
    </message>
    <message>
        <source>unite</source>
        <translation>unir</translation>
    </message>
    <message>
        <source>cannot say</source>
        <translation>no se puede decir</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>dejarla como está</translation>
    </message>
    <message>
        <source>take now</source>
        <translation>quitar ahora</translation>
    </message>
    <message>
        <source>take in spring</source>
        <translation>quitar en primavera</translation>
    </message>
    <message>
        <source>give %{combs} of stores</source>
        <translation>pasarle cuadros de reservas</translation>
    </message>
    <message>
        <source>give %{combs}</source>
        <translation>pasarle cuadros</translation>
    </message>
    <message>
        <source>unite it with another colony</source>
        <translation>unirla con otra colonia</translation>
    </message>
    <message>
        <source>lay on %1 of fondant</source>
        <translation>poner %1 de candi</translation>
    </message>
    <message>
        <source>feed %1 of sugar</source>
        <translation>dar %1 de azúcar</translation>
    </message>
    <message>
        <source>heft the hive</source>
        <translation>sopesar la colmena</translation>
    </message>
    <message>
        <source>weigh both sides of the closed hive, which takes two minutes and disturbs no bee</source>
        <translation>pesar por los dos lados la colmena cerrada, que lleva dos minutos y no molesta a ninguna abeja</translation>
    </message>
    <message>
        <source>look through the window or from above</source>
        <translation>mirar por la ventana o desde arriba</translation>
    </message>
    <message>
        <source>count the full %{combs} and the %{combs} the bees cover</source>
        <translation>contar los cuadros llenos y los cuadros que cubren las abejas</translation>
    </message>
    <message>
        <source>count the seams filled with bees, from above</source>
        <translation>contar desde arriba las calles llenas de abejas</translation>
    </message>
    <message>
        <source>open the hive and look at every %{comb}</source>
        <translation>abrir la colmena y mirar cada cuadro</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>jarabe</translation>
    </message>
    <message>
        <source>check: %{combs} sealed? weigh, feeder off, mouse guard on</source>
        <translation>comprobar: ¿cuadros operculados? pesar, quitar el alimentador, poner la rejilla contra ratones</translation>
    </message>
    <message>
        <source>check</source>
        <translation>comprobar</translation>
    </message>
    <message>
        <source>a confined winter</source>
        <translation>un invierno de encierro</translation>
    </message>
    <message>
        <source>a winter in which bees fly in most weeks</source>
        <translation>un invierno en que las abejas vuelan casi todas las semanas</translation>
    </message>
    <message>
        <source>no winter, a dearth between the last nectar of autumn and the first of spring</source>
        <translation>sin invierno, una escasez entre el último néctar de otoño y el primero de primavera</translation>
    </message>
    <message>
        <source>no season can be derived; give the dates yourself</source>
        <translation>no se puede calcular ninguna temporada; indique usted las fechas</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>climate</source>
        <translation>clima</translation>
    </message>
    <message>
        <source>climate, moved</source>
        <translation>clima, desplazada</translation>
    </message>
    <message>
        <source>case</source>
        <translation>caso</translation>
    </message>
</context>
<context>
    <name>YardPlan</name>
    <message numerus="yes">
        <source>%n to feed</source>
        <translation>
            <numerusform>%n por alimentar</numerusform>
            <numerusform>%n por alimentar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to unite</source>
        <translation>
            <numerusform>%n por unir</numerusform>
            <numerusform>%n por unir</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with honey to spare</source>
        <translation>
            <numerusform>%n con excedente de miel</numerusform>
            <numerusform>%n con excedente de miel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to leave alone</source>
        <translation>
            <numerusform>%n que se deja como está</numerusform>
            <numerusform>%n que se dejan como están</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not known enough</source>
        <translation>
            <numerusform>%n sin datos suficientes</numerusform>
            <numerusform>%n sin datos suficientes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on course</source>
        <translation>
            <numerusform>%n según lo previsto</numerusform>
            <numerusform>%n según lo previsto</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n eating faster than planned</source>
        <translation>
            <numerusform>%n que consume más de lo previsto</numerusform>
            <numerusform>%n que consumen más de lo previsto</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with the food out of reach</source>
        <translation>
            <numerusform>%n separada de sus reservas</numerusform>
            <numerusform>%n separadas de sus reservas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dwindling</source>
        <translation>
            <numerusform>%n que se despuebla</numerusform>
            <numerusform>%n que se despueblan</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with less than was thought</source>
        <translation>
            <numerusform>%n con menos de lo pensado</numerusform>
            <numerusform>%n con menos de lo pensado</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with a feed not written down</source>
        <translation>
            <numerusform>%n con un aporte sin anotar</numerusform>
            <numerusform>%n con un aporte sin anotar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with more than is needed</source>
        <translation>
            <numerusform>%n con más de lo necesario</numerusform>
            <numerusform>%n con más de lo necesario</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to be fed now</source>
        <translation>
            <numerusform>%n por alimentar ya</numerusform>
            <numerusform>%n por alimentar ya</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dead</source>
        <translation>
            <numerusform>%n muerta</numerusform>
            <numerusform>%n muertas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n that must be weighed again</source>
        <translation>
            <numerusform>%n por volver a pesar</numerusform>
            <numerusform>%n por volver a pesar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n being worked out</source>
        <translation>
            <numerusform>%n todavía en cálculo</numerusform>
            <numerusform>%n todavía en cálculo</numerusform>
        </translation>
    </message>
    <message>
        <source>No colony stands in this yard yet.</source>
        <translation>Todavía no hay ninguna colonia en este colmenar.</translation>
    </message>
    <message>
        <source>One colony: %1.</source>
        <translation>Una colonia: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n colonies: %1.</source>
        <translation>
            <numerusform>%n colonia: %1.</numerusform>
            <numerusform>%n colonias: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.</source>
        <translation>Compre %1 de azúcar blanco; el último jarabe deben tomarlo a más tardar el %2. Alimente al atardecer y, de las que tocan un mismo día, todas a la vez.</translation>
    </message>
    <message>
        <source>Move the %{combs} first, then buy %1 of white sugar; the last syrup must be taken by %2. Feed in the evening, all that are due on a day the same evening.</source>
        <translation>Primero pase los cuadros y después compre %1 de azúcar blanco; el último jarabe deben tomarlo a más tardar el %2. Alimente al atardecer y, de las que tocan un mismo día, todas a la vez.</translation>
    </message>
    <message>
        <source>Planned without moving %{combs} between hives.</source>
        <translation>Plan sin pasar cuadros de una colmena a otra.</translation>
    </message>
    <message>
        <source>one %{comb} (%1) from %2 to %3: %4</source>
        <translation>un cuadro (%1) de %2 a %3: %4</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} (%1) from %2 to %3: %4</source>
        <translation>
            <numerusform>%n cuadro (%1) de %2 a %3: %4</numerusform>
            <numerusform>%n cuadros (%1) de %2 a %3: %4</numerusform>
        </translation>
    </message>
    <message>
        <source>none: with signs of disease in the yard nothing moves between hives</source>
        <translation>ninguno: con signos de enfermedad en el colmenar no se pasa nada de una colmena a otra</translation>
    </message>
    <message>
        <source>none: %{combs} stay in their hives</source>
        <translation>ninguno: los cuadros se quedan en sus colmenas</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>costs %1</source>
        <translation>cuesta %1</translation>
    </message>
    <message>
        <source>one bag of %1</source>
        <translation>un saco de %1</translation>
    </message>
    <message numerus="yes">
        <source>%n bags of %1</source>
        <translation>
            <numerusform>%n saco de %1</numerusform>
            <numerusform>%n sacos de %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; the sugar itself costs %2</source>
        <translation>%1; el azúcar en sí cuesta %2</translation>
    </message>
</context>
<context>
    <name>say::Help</name>
    <message>
        <source>Options</source>
        <comment>heading of the help</comment>
        <translation>Opciones</translation>
    </message>
    <message>
        <source>Subcommands</source>
        <comment>heading of the help</comment>
        <translation>Comandos</translation>
    </message>
</context>
<context>
    <name>winterlarder::Message</name>
    <message>
        <source>that would be {} bees</source>
        <translation>eso serían {} abejas</translation>
    </message>
    <message>
        <source>at most {} bees</source>
        <translation>como mucho {} abejas</translation>
    </message>
    <message>
        <source>how much was fed on {} is not said in the measure of its kind</source>
        <translation>lo que se dio el {} no está en la medida que corresponde a su tipo</translation>
    </message>
    <message>
        <source>syrup in kg of sugar or in litres, fondant in kg of fondant, dry sugar in kg of sugar</source>
        <translation>jarabe en kg de azúcar o en litros, candi en kg de candi, azúcar seco en kg de azúcar</translation>
    </message>
    <message>
        <source>it was moved to the other half of the earth after {}</source>
        <translation>después del {} se trasladó al otro hemisferio</translation>
    </message>
    <message>
        <source>a look after the move: the winter there is another one</source>
        <translation>una revisión posterior al traslado: allí el invierno es otro</translation>
    </message>
    <message>
        <source>there is no hive format {}</source>
        <translation>no hay ningún tipo de colmena {}</translation>
    </message>
    <message>
        <source>one that winterlarder-cli hive-formats lists</source>
        <translation>uno de los que enumera winterlarder-cli hive-formats</translation>
    </message>
    <message>
        <source>the hive has no box</source>
        <translation>la colmena no tiene ningún cuerpo</translation>
    </message>
    <message>
        <source>its boxes, from the floor up</source>
        <translation>sus cuerpos, del fondo hacia arriba</translation>
    </message>
    <message>
        <source>no station &quot;{}&quot;</source>
        <translation>no hay ninguna estación &quot;{}&quot;</translation>
    </message>
    <message>
        <source>an id that the command &quot;stations&quot; lists</source>
        <translation>un id de los que enumera el comando &quot;stations&quot;</translation>
    </message>
    <message>
        <source>&quot;{}&quot; {} is not a day of the winter asked about</source>
        <translation>&quot;{}&quot; {} no es un día del invierno por el que se pregunta</translation>
    </message>
    <message>
        <source>a day from {} to {}</source>
        <translation>un día del {} al {}</translation>
    </message>
    <message>
        <source>{} (at {}:{})</source>
        <translation>{} (en {}:{})</translation>
    </message>
    <message>
        <source>there is no such book</source>
        <translation>ese cuaderno no existe</translation>
    </message>
    <message>
        <source>check the name, or make a new book</source>
        <translation>compruebe el nombre o haga un cuaderno nuevo</translation>
    </message>
    <message>
        <source>this is not a file</source>
        <translation>esto no es un archivo</translation>
    </message>
    <message>
        <source>choose a .larder file</source>
        <translation>elija un archivo .larder</translation>
    </message>
    <message>
        <source>this is not a book</source>
        <translation>esto no es un cuaderno</translation>
    </message>
    <message>
        <source>the book has no version</source>
        <translation>el cuaderno no tiene versión</translation>
    </message>
    <message>
        <source>salvage what is readable into a new book</source>
        <translation>rescate lo que se pueda leer en un cuaderno nuevo</translation>
    </message>
    <message>
        <source>do not use it; salvage takes over what is readable</source>
        <translation>no lo use; el rescate se queda con lo que se puede leer</translation>
    </message>
    <message>
        <source>there is a file of that name</source>
        <translation>ya hay un archivo con ese nombre</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>elija otro nombre</translation>
    </message>
    <message>
        <source>The book was opened for reading only.</source>
        <translation>El cuaderno se abrió solo para leer.</translation>
    </message>
    <message>
        <source>The book lies where nothing can be written.</source>
        <translation>El cuaderno está donde no se puede escribir.</translation>
    </message>
    <message>
        <source>The book was made by a newer version of this program; this one only reads it.</source>
        <translation>El cuaderno lo hizo una versión más nueva de este programa; esta solo lo lee.</translation>
    </message>
    <message>
        <source>The disk is full, so the book can only be read.</source>
        <translation>El disco está lleno, así que el cuaderno solo se puede leer.</translation>
    </message>
    <message>
        <source>The book&apos;s file has a second name (a hard link), so it is only read: a change under one name could not be taken back under the other. Make a copy and write in that, or remove the other name.</source>
        <translation>El archivo del cuaderno tiene un segundo nombre (un enlace duro), así que solo se lee: un cambio hecho con un nombre no se podría deshacer con el otro. Haga una copia y escriba en ella, o quite el otro nombre.</translation>
    </message>
    <message>
        <source>The book is open elsewhere: {}.</source>
        <translation>El cuaderno está abierto en otro sitio: {}.</translation>
    </message>
    <message>
        <source>nothing was changed</source>
        <translation>no se cambió nada</translation>
    </message>
    <message>
        <source>a newer version of this program made it</source>
        <translation>lo hizo una versión más nueva de este programa</translation>
    </message>
    <message>
        <source>restore with that version</source>
        <translation>restáurelo con esa versión</translation>
    </message>
    <message>
        <source>{} {}: no entry has that number</source>
        <translation>{} {}: ninguna anotación tiene ese número</translation>
    </message>
    <message>
        <source>1 to {}</source>
        <translation>de 1 a {}</translation>
    </message>
    <message>
        <source>{} {}: there is no {} {}</source>
        <translation>{} {}: no existe {} {}</translation>
    </message>
    <message>
        <source>name one that is in the book</source>
        <translation>nombre una que esté en el cuaderno</translation>
    </message>
    <message>
        <source>there is no {} called &quot;{}&quot;</source>
        <translation>no existe {} con el nombre &quot;{}&quot;</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>compruebe el nombre</translation>
    </message>
    <message>
        <source>{} of them are called &quot;{}&quot;</source>
        <translation>{} de ellas se llaman &quot;{}&quot;</translation>
    </message>
    <message>
        <source>rename all but one</source>
        <translation>cambie el nombre de todas menos una</translation>
    </message>
    <message>
        <source>there is no colony {}</source>
        <translation>no existe la colonia {}</translation>
    </message>
    <message>
        <source>check its number</source>
        <translation>compruebe su número</translation>
    </message>
    <message>
        <source>holds a line break</source>
        <translation>contiene un salto de línea</translation>
    </message>
    <message>
        <source>holds a control character ({})</source>
        <translation>contiene un carácter de control ({})</translation>
    </message>
    <message>
        <source>holds a mark that turns the direction of reading ({})</source>
        <translation>contiene un signo que cambia el sentido de la lectura ({})</translation>
    </message>
    <message>
        <source>is only blanks</source>
        <translation>son solo espacios</translation>
    </message>
    <message>
        <source>nothing was changed; make room and do it again</source>
        <translation>no se cambió nada; haga sitio y repítalo</translation>
    </message>
    <message>
        <source>{} is outside what may be entered</source>
        <translation>{} está fuera de lo que se puede anotar</translation>
    </message>
    <message>
        <source>see the field&apos;s limits</source>
        <translation>vea los límites del campo</translation>
    </message>
    <message>
        <source>an entry refers to one that is not in the book</source>
        <translation>una anotación remite a otra que no está en el cuaderno</translation>
    </message>
    <message>
        <source>enter the other one first</source>
        <translation>anote primero la otra</translation>
    </message>
    <message>
        <source>the change breaks a rule of the file: {}</source>
        <translation>el cambio incumple una regla del archivo: {}</translation>
    </message>
    <message>
        <source>the last change was interrupted and has to be taken back before the book can be read</source>
        <translation>el último cambio se interrumpió y hay que deshacerlo antes de poder leer el cuaderno</translation>
    </message>
    <message>
        <source>open the book again where it can be written; keep {}-journal beside it, a copy without it is damaged</source>
        <translation>vuelva a abrir el cuaderno donde se pueda escribir; conserve {}-journal junto a él, una copia sin él está dañada</translation>
    </message>
    <message>
        <source>the file was moved, removed or replaced by another while the book was open</source>
        <translation>el archivo se trasladó, se borró o se sustituyó por otro mientras el cuaderno estaba abierto</translation>
    </message>
    <message>
        <source>nothing was changed; open the book again and see what it holds</source>
        <translation>no se cambió nada; vuelva a abrir el cuaderno y vea qué contiene</translation>
    </message>
    <message>
        <source>the book cannot be written here</source>
        <translation>aquí no se puede escribir en el cuaderno</translation>
    </message>
    <message>
        <source>nothing was changed; copy it to where it can</source>
        <translation>no se cambió nada; cópielo a donde se pueda</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>el disco está lleno</translation>
    </message>
    <message>
        <source>the disk does not read or write as it should</source>
        <translation>el disco no lee o no escribe como debería</translation>
    </message>
    <message>
        <source>nothing was changed; check the disk and do it again</source>
        <translation>no se cambió nada; revise el disco y repítalo</translation>
    </message>
    <message>
        <source>another program is using the book</source>
        <translation>otro programa está usando el cuaderno</translation>
    </message>
    <message>
        <source>nothing was changed; do it again in a moment</source>
        <translation>no se cambió nada; repítalo dentro de un momento</translation>
    </message>
    <message>
        <source>the book is damaged</source>
        <translation>el cuaderno está dañado</translation>
    </message>
    <message>
        <source>salvage what is readable into a new book, or restore a backup</source>
        <translation>rescate lo que se pueda leer en un cuaderno nuevo, o restaure una copia de seguridad</translation>
    </message>
    <message>
        <source>the book or its journal cannot be opened</source>
        <translation>no se puede abrir el cuaderno o su diario de cambios</translation>
    </message>
    <message>
        <source>check the folder and its permissions</source>
        <translation>compruebe la carpeta y sus permisos</translation>
    </message>
    <message>
        <source>the book is damaged: reading it does not end</source>
        <translation>el cuaderno está dañado: su lectura no termina</translation>
    </message>
    <message>
        <source>a text is too long</source>
        <translation>un texto es demasiado largo</translation>
    </message>
    <message>
        <source>shorten it</source>
        <translation>acórtelo</translation>
    </message>
    <message>
        <source>the book cannot be used: {}</source>
        <translation>el cuaderno no se puede usar: {}</translation>
    </message>
    <message>
        <source>the last change was interrupted and has to be taken back before the book can be read, but {}</source>
        <translation>el último cambio se interrumpió y hay que deshacerlo antes de poder leer el cuaderno, pero {}</translation>
    </message>
    <message>
        <source>{}; a copy without {}-journal beside it is damaged</source>
        <translation>{}; una copia sin {}-journal junto a ella está dañada</translation>
    </message>
    <message>
        <source>it is open elsewhere: {}</source>
        <translation>está abierto en otro sitio: {}</translation>
    </message>
    <message>
        <source>close it there</source>
        <translation>ciérrelo allí</translation>
    </message>
    <message>
        <source>make room and open it again</source>
        <translation>haga sitio y vuelva a abrirlo</translation>
    </message>
    <message>
        <source>nothing can be written here</source>
        <translation>aquí no se puede escribir nada</translation>
    </message>
    <message>
        <source>open it where its file and folder can be written</source>
        <translation>ábralo donde se pueda escribir en su archivo y su carpeta</translation>
    </message>
    <message>
        <source>its file cannot be written here</source>
        <translation>aquí no se puede escribir en su archivo</translation>
    </message>
    <message>
        <source>somebody</source>
        <translation>alguien</translation>
    </message>
    <message>
        <source>by {}</source>
        <translation>por {}</translation>
    </message>
    <message>
        <source>by {} on {}</source>
        <translation>por {} en {}</translation>
    </message>
    <message>
        <source>by {} since {}</source>
        <translation>por {} desde {}</translation>
    </message>
    <message>
        <source>by {} on {} since {}</source>
        <translation>por {} en {} desde {}</translation>
    </message>
    <message>
        <source>there is no {} {}</source>
        <translation>no existe {} {}</translation>
    </message>
    <message>
        <source>it may have been removed meanwhile</source>
        <translation>quizá se quitó entretanto</translation>
    </message>
    <message>
        <source>look {} has no comb {}</source>
        <translation>la revisión {} no tiene el cuadro {}</translation>
    </message>
    <message>
        <source>count the combs it lists</source>
        <translation>cuente los cuadros que enumera</translation>
    </message>
    <message>
        <source>yard {} is in use by {} colonies and {} moves</source>
        <translation>el colmenar {} está en uso por {} colonias y {} traslados</translation>
    </message>
    <message>
        <source>move or remove its colonies first</source>
        <translation>traslade o quite antes sus colonias</translation>
    </message>
    <message>
        <source>{} {}: {} is damaged</source>
        <translation>{} {}: {} está dañado</translation>
    </message>
    <message>
        <source>salvage the book</source>
        <translation>rescate el cuaderno</translation>
    </message>
    <message>
        <source>{} to {}{}</source>
        <translation>de {} a {}{}</translation>
    </message>
    <message>
        <source>{}{} or more</source>
        <translation>{}{} o más</translation>
    </message>
    <message>
        <source>{}{} or less</source>
        <translation>{}{} o menos</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>{} is not a number</source>
        <translation>{} no es un número</translation>
    </message>
    <message>
        <source>{} is {}</source>
        <translation>{} es {}</translation>
    </message>
    <message>
        <source>{} is not readable text</source>
        <translation>{} no es texto legible</translation>
    </message>
    <message>
        <source>text in UTF-8 without zero bytes</source>
        <translation>texto en UTF-8 sin bytes cero</translation>
    </message>
    <message>
        <source>{} is empty</source>
        <translation>{} está vacío</translation>
    </message>
    <message>
        <source>write something</source>
        <translation>escriba algo</translation>
    </message>
    <message>
        <source>{} has {} characters</source>
        <translation>{} tiene {} caracteres</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>como mucho {}</translation>
    </message>
    <message>
        <source>{} is of another type</source>
        <translation>{} es de otro tipo</translation>
    </message>
    <message>
        <source>{} is &quot;{}&quot;</source>
        <translation>{} es &quot;{}&quot;</translation>
    </message>
    <message>
        <source>one line of letters, digits, blanks and signs</source>
        <translation>una línea de letras, cifras, espacios y signos</translation>
    </message>
    <message>
        <source>{} is missing</source>
        <translation>falta {}</translation>
    </message>
    <message>
        <source>give it</source>
        <translation>indíquelo</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texto</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true o false</translation>
    </message>
    <message>
        <source>month and day such as 05-19, not 02-29</source>
        <translation>mes y día como 05-19, no 02-29</translation>
    </message>
    <message>
        <source>a whole number, 0 to 18446744073709551615</source>
        <translation>un número entero, de 0 a 18446744073709551615</translation>
    </message>
    <message>
        <source>weekdays such as 1,4,6</source>
        <translation>días de la semana como 1,4,6</translation>
    </message>
    <message>
        <source>one of {}</source>
        <translation>uno de {}</translation>
    </message>
    <message>
        <source>{} is of a type this program does not know</source>
        <translation>{} es de un tipo que este programa no conoce</translation>
    </message>
    <message>
        <source>step {} of the history is damaged</source>
        <translation>el paso {} del historial está dañado</translation>
    </message>
    <message>
        <source>{} for {} {}</source>
        <translation>{} para {} {}</translation>
    </message>
    <message>
        <source>write {}</source>
        <translation>escriba {}</translation>
    </message>
    <message>
        <source>write {}, or {}</source>
        <translation>escriba {}, o {}</translation>
    </message>
    <message>
        <source>the mean temperature of {} is {} degC</source>
        <translation>la temperatura media de {} es de {} degC</translation>
    </message>
    <message>
        <source>monthly means lie between {} and {} degC</source>
        <translation>las medias mensuales están entre {} y {} degC</translation>
    </message>
    <message>
        <source>the {} is {} K</source>
        <translation>{} es de {} K</translation>
    </message>
    <message>
        <source>it is 0 or more</source>
        <translation>debe ser 0 o más</translation>
    </message>
    <message>
        <source>the correlation of consecutive days is {}</source>
        <translation>la correlación de días seguidos es {}</translation>
    </message>
    <message>
        <source>it lies between -1 and 1</source>
        <translation>debe estar entre -1 y 1</translation>
    </message>
    <message>
        <source>the latitude is {}</source>
        <translation>la latitud es {}</translation>
    </message>
    <message>
        <source>it lies between -90 and 90 degrees</source>
        <translation>debe estar entre -90 y 90 grados</translation>
    </message>
    <message>
        <source>the mean of {} is {} degC</source>
        <translation>la media del {} es de {} degC</translation>
    </message>
    <message>
        <source>daily means lie between {} and {} degC</source>
        <translation>las medias diarias están entre {} y {} degC</translation>
    </message>
    <message>
        <source>{} is there twice</source>
        <translation>{} está dos veces</translation>
    </message>
    <message>
        <source>each date stands once</source>
        <translation>cada fecha va una sola vez</translation>
    </message>
    <message>
        <source>the record has {} days</source>
        <translation>el registro tiene {} días</translation>
    </message>
    <message>
        <source>at least {} are needed</source>
        <translation>hacen falta al menos {}</translation>
    </message>
    <message>
        <source>{} has {} days in all</source>
        <translation>{} tiene {} días en total</translation>
    </message>
    <message>
        <source>each month needs at least {}</source>
        <translation>cada mes necesita al menos {}</translation>
    </message>
    <message>
        <source>season day {}</source>
        <translation>día {} de la temporada</translation>
    </message>
    <message>
        <source>{} is outside the winter asked about</source>
        <translation>{} está fuera del invierno por el que se pregunta</translation>
    </message>
    <message>
        <source>its dates lie between {} and {}</source>
        <translation>sus fechas están entre {} y {}</translation>
    </message>
    <message>
        <source>{} is given alone where laying never stops by the climate</source>
        <translation>{} se indica sola donde, según el clima, la puesta no se corta nunca</translation>
    </message>
    <message>
        <source>give {} as well, or neither</source>
        <translation>indique también {}, o ninguna de las dos</translation>
    </message>
    <message>
        <source>{} is too early where laying never stops</source>
        <translation>{} es demasiado pronto donde la puesta no se corta nunca</translation>
    </message>
    <message>
        <source>it is on or after {}</source>
        <translation>debe ser {} o más tarde</translation>
    </message>
    <message>
        <source>{} is before {}</source>
        <translation>{} es anterior a {}</translation>
    </message>
    <message>
        <source>{} is not earlier than {}</source>
        <translation>{} no es anterior a {}</translation>
    </message>
    <message>
        <source>{} is less than {} days after {}</source>
        <translation>{} está a menos de {} días después de {}</translation>
    </message>
    <message>
        <source>{} is at least {} days after {}</source>
        <translation>{} está al menos {} días después de {}</translation>
    </message>
    <message>
        <source>{} leaves no room for {} within the winter</source>
        <translation>{} no deja sitio para {} dentro del invierno</translation>
    </message>
    <message>
        <source>give {} as well, or another {}</source>
        <translation>indique también {}, u otro valor de {}</translation>
    </message>
    <message>
        <source>the longitude is {}</source>
        <translation>la longitud es {}</translation>
    </message>
    <message>
        <source>it lies between -180 and 180 degrees</source>
        <translation>debe estar entre -180 y 180 grados</translation>
    </message>
    <message>
        <source>the elevation is {} m</source>
        <translation>la altitud es de {} m</translation>
    </message>
    <message>
        <source>it lies between {} and {} m</source>
        <translation>debe estar entre {} y {} m</translation>
    </message>
    <message>
        <source>there is no table &quot;{}&quot;</source>
        <translation>no hay ninguna tabla &quot;{}&quot;</translation>
    </message>
    <message>
        <source>unknown column {}</source>
        <translation>columna desconocida: {}</translation>
    </message>
    <message>
        <source>the column owner is missing</source>
        <translation>falta la columna owner</translation>
    </message>
    <message>
        <source>the entry each row belongs to, by its number, or a colony by its name</source>
        <translation>la anotación a la que pertenece cada fila, por su número, o una colonia por su nombre</translation>
    </message>
    <message>
        <source>give each number once</source>
        <translation>indique cada número una sola vez</translation>
    </message>
    <message>
        <source>the place is not a number</source>
        <translation>la posición no es un número</translation>
    </message>
    <message>
        <source>a whole number from 0</source>
        <translation>un número entero desde 0</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number of a {}</source>
        <translation>&quot;{}&quot; no es un número de {}</translation>
    </message>
    <message>
        <source>such as #7</source>
        <translation>por ejemplo #7</translation>
    </message>
    <message>
        <source>there is no {} &quot;{}&quot;</source>
        <translation>no existe {} &quot;{}&quot;</translation>
    </message>
    <message>
        <source>name one that is in the book, or enter it first</source>
        <translation>nombre una que esté en el cuaderno, o anótela antes</translation>
    </message>
    <message>
        <source>say which, such as #{}</source>
        <translation>indique cuál, por ejemplo #{}</translation>
    </message>
    <message>
        <source>the document is not an object</source>
        <translation>el documento no es un objeto</translation>
    </message>
    <message>
        <source>begin it with {</source>
        <translation>empiécelo con {</translation>
    </message>
    <message>
        <source>unknown key {}</source>
        <translation>clave desconocida: {}</translation>
    </message>
    <message>
        <source>the key &quot;larder&quot; is missing</source>
        <translation>falta la clave &quot;larder&quot;</translation>
    </message>
    <message>
        <source>&quot;larder&quot;: {}</source>
        <translation>&quot;larder&quot;: {}</translation>
    </message>
    <message>
        <source>this form of document is not known</source>
        <translation>esta forma de documento no se conoce</translation>
    </message>
    <message>
        <source>a list of entries</source>
        <translation>una lista de anotaciones</translation>
    </message>
    <message>
        <source>{} is not an object</source>
        <translation>{} no es un objeto</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>{} {} is there twice</source>
        <translation>{} {} está dos veces</translation>
    </message>
    <message>
        <source>number each once</source>
        <translation>dé cada número una sola vez</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is {}</source>
        <translation>&quot;{}&quot; es {}</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>an item of &quot;{}&quot; is {}</source>
        <translation>un elemento de &quot;{}&quot; es {}</translation>
    </message>
    <message>
        <source>name one that is in the document</source>
        <translation>nombre una que esté en el documento</translation>
    </message>
    <message>
        <source>a case is {}</source>
        <translation>un caso es {}</translation>
    </message>
    <message>
        <source>one JSON object</source>
        <translation>un objeto JSON</translation>
    </message>
    <message>
        <source>the day as YYYY-MM-DD</source>
        <translation>el día como AAAA-MM-DD</translation>
    </message>
    <message>
        <source>{} {} is later than {}</source>
        <translation>{} {} es posterior a {}</translation>
    </message>
    <message>
        <source>a day not later than as_of</source>
        <translation>un día no posterior a as_of</translation>
    </message>
    <message>
        <source>{} {} is {} days before {}</source>
        <translation>{} {} está {} días antes de {}</translation>
    </message>
    <message>
        <source>at most {} days before as_of: look again, or ask for an earlier day</source>
        <translation>como mucho {} días antes de as_of: vuelva a revisar, o pregunte por un día anterior</translation>
    </message>
    <message>
        <source>syrup is given as sugar_kg, or as syrup_l with its ratio</source>
        <translation>el jarabe se indica como sugar_kg, o como syrup_l con su proporción</translation>
    </message>
    <message>
        <source>{} does not go with syrup</source>
        <translation>{} no va con el jarabe</translation>
    </message>
    <message>
        <source>sugar_kg, or syrup_l with its ratio</source>
        <translation>sugar_kg, o syrup_l con su proporción</translation>
    </message>
    <message>
        <source>sugar to water by mass, such as &quot;3:2&quot;</source>
        <translation>azúcar por agua, en peso, como &quot;3:2&quot;</translation>
    </message>
    <message>
        <source>the kilograms given</source>
        <translation>los kilogramos dados</translation>
    </message>
    <message>
        <source>{} does not go with fondant</source>
        <translation>{} no va con el candi</translation>
    </message>
    <message>
        <source>{} does not go with dry sugar</source>
        <translation>{} no va con el azúcar seco</translation>
    </message>
    <message>
        <source>{} alone</source>
        <translation>{} solo</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is given here and in &quot;{}&quot;</source>
        <translation>&quot;{}&quot; se indica aquí y en &quot;{}&quot;</translation>
    </message>
    <message>
        <source>one of the two</source>
        <translation>uno de los dos</translation>
    </message>
    <message>
        <source>the day the question is asked, as YYYY-MM-DD</source>
        <translation>el día por el que se pregunta, como AAAA-MM-DD</translation>
    </message>
    <message>
        <source>where the bees stand: {&quot;station&quot;: ...}</source>
        <translation>dónde están las abejas: {&quot;station&quot;: ...}</translation>
    </message>
    <message>
        <source>the hive: {&quot;format&quot;: ..., &quot;boxes&quot;: ...}</source>
        <translation>la colmena: {&quot;format&quot;: ..., &quot;boxes&quot;: ...}</translation>
    </message>
    <message>
        <source>own measures need comb_width_mm, comb_height_mm, combs_per_box and pitch_mm</source>
        <translation>las medidas propias necesitan comb_width_mm, comb_height_mm, combs_per_box y pitch_mm</translation>
    </message>
    <message>
        <source>no hive format {}</source>
        <translation>no hay ningún tipo de colmena {}</translation>
    </message>
    <message>
        <source>one of count, covered_combs and seams</source>
        <translation>uno de count, covered_combs y seams</translation>
    </message>
    <message>
        <source>the number of combs full of stores; a list of combs is the other way to say it</source>
        <translation>el número de cuadros llenos de reservas; la otra manera de decirlo es una lista de cuadros</translation>
    </message>
    <message>
        <source>the shares of {} add up to {}</source>
        <translation>las partes de {} suman {}</translation>
    </message>
    <message>
        <source>capped, open, brood and pollen together at most 1</source>
        <translation>capped, open, brood y pollen suman como mucho 1</translation>
    </message>
    <message>
        <source>one of gross_kg, lift_kg and heft</source>
        <translation>uno de gross_kg, lift_kg y heft</translation>
    </message>
    <message>
        <source>one of syrup, fondant and dry-sugar</source>
        <translation>uno de syrup, fondant y dry-sugar</translation>
    </message>
    <message>
        <source>&quot;ratio&quot; is {}</source>
        <translation>&quot;ratio&quot; es {}</translation>
    </message>
    <message>
        <source>kg of sugar to kg of water, both above 0, such as &quot;3:2&quot;</source>
        <translation>kg de azúcar por kg de agua, ambos mayores que 0, como &quot;3:2&quot;</translation>
    </message>
    <message>
        <source>the kilograms of honey taken</source>
        <translation>los kilogramos de miel que se quitaron</translation>
    </message>
    <message>
        <source>&quot;until&quot; {} is before {}</source>
        <translation>&quot;until&quot; {} es anterior a {}</translation>
    </message>
    <message>
        <source>the last day honey is not for people, as the label says</source>
        <translation>el último día en que la miel no es para consumo humano, según la etiqueta</translation>
    </message>
    <message>
        <source>{} combs are listed, but the hive has {} places</source>
        <translation>se enumeran {} cuadros, pero la colmena tiene {} lugares</translation>
    </message>
    <message>
        <source>at most one comb a place</source>
        <translation>como mucho un cuadro por lugar</translation>
    </message>
    <message>
        <source>&quot;covered_combs&quot; is {}, but {}</source>
        <translation>&quot;covered_combs&quot; es {}, pero {}</translation>
    </message>
    <message>
        <source>combs fully covered on both sides: not more than there are</source>
        <translation>cuadros cubiertos del todo por ambas caras: no más de los que hay</translation>
    </message>
    <message>
        <source>this comb is said to be in a super, but the hive{} has no super</source>
        <translation>se dice que este cuadro está en un alza, pero la colmena{} no tiene ninguna</translation>
    </message>
    <message>
        <source>the boxes from the floor up with &quot;super&quot;: true for the super, or no in_super</source>
        <translation>los cuerpos del fondo hacia arriba, con &quot;super&quot;: true en el alza, o sin in_super</translation>
    </message>
    <message>
        <source>{} combs are said to be in a super, but the supers of the hive{} have {} places</source>
        <translation>se dice que {} cuadros están en un alza, pero las alzas de la colmena{} tienen {} lugares</translation>
    </message>
    <message>
        <source>at most one comb a place; combs without in_super fill the boxes from the floor up</source>
        <translation>como mucho un cuadro por lugar; los cuadros sin in_super llenan los cuerpos del fondo hacia arriba</translation>
    </message>
    <message>
        <source>the hive{} has {} places</source>
        <translation>la colmena{} tiene {} lugares</translation>
    </message>
    <message>
        <source>{} combs are listed, but {}</source>
        <translation>se enumeran {} cuadros, pero {}</translation>
    </message>
    <message>
        <source>{} combs are listed{}</source>
        <translation>se enumeran {} cuadros{}</translation>
    </message>
    <message>
        <source>a whole number from {} to {}{}</source>
        <translation>un número entero de {} a {}{}</translation>
    </message>
    <message>
        <source>a number from {} to {}{}</source>
        <translation>un número de {} a {}{}</translation>
    </message>
    <message>
        <source>a whole number of at least {}{}</source>
        <translation>un número entero de al menos {}{}</translation>
    </message>
    <message>
        <source>a number of at least {}{}</source>
        <translation>un número de al menos {}{}</translation>
    </message>
    <message>
        <source>a whole number of at most {}{}</source>
        <translation>un número entero de como mucho {}{}</translation>
    </message>
    <message>
        <source>a number of at most {}{}</source>
        <translation>un número de como mucho {}{}</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>a date as YYYY-MM-DD in double quotes</source>
        <translation>una fecha como AAAA-MM-DD entre comillas dobles</translation>
    </message>
    <message>
        <source>{} is {}, which is not a date</source>
        <translation>{} es {}, que no es una fecha</translation>
    </message>
    <message>
        <source>{} has {} bytes</source>
        <translation>{} tiene {} bytes</translation>
    </message>
    <message>
        <source>a text, or leave the key out</source>
        <translation>un texto, o deje fuera la clave</translation>
    </message>
    <message>
        <source>a text in double quotes</source>
        <translation>un texto entre comillas dobles</translation>
    </message>
    <message>
        <source>true or false, without quotes</source>
        <translation>true o false, sin comillas</translation>
    </message>
    <message>
        <source>{} is not a weekday</source>
        <translation>{} no es un día de la semana</translation>
    </message>
    <message>
        <source>Monday to Sunday, or 1 (Monday) to 7 (Sunday)</source>
        <translation>de Monday a Sunday, o de 1 (lunes) a 7 (domingo)</translation>
    </message>
    <message>
        <source>the same weekday is given twice</source>
        <translation>el mismo día de la semana está dos veces</translation>
    </message>
    <message>
        <source>each weekday once</source>
        <translation>cada día de la semana una sola vez</translation>
    </message>
    <message>
        <source>the key {} is missing</source>
        <translation>falta la clave {}</translation>
    </message>
    <message>
        <source>{} has {} values</source>
        <translation>{} tiene {} valores</translation>
    </message>
    <message>
        <source>{} is given beside {} at {}:{}</source>
        <translation>{} se indica junto a {} en {}:{}</translation>
    </message>
    <message>
        <source>none of {} is given</source>
        <translation>no se indica ninguno de {}</translation>
    </message>
    <message>
        <source>unknown key {}{}</source>
        <translation>clave desconocida: {}{}</translation>
    </message>
    <message>
        <source> in {}</source>
        <translation> en {}</translation>
    </message>
    <message>
        <source>the latitude of the place, degrees north</source>
        <translation>la latitud del lugar, en grados norte</translation>
    </message>
    <message>
        <source>{} is given beside monthly_mean_c</source>
        <translation>{} se indica junto a monthly_mean_c</translation>
    </message>
    <message>
        <source>leave elevation_m out: an own climate is already that of the place</source>
        <translation>deje fuera elevation_m: un clima propio ya es el del lugar</translation>
    </message>
    <message>
        <source>{} is given without &quot;monthly_mean_c&quot;</source>
        <translation>{} se indica sin &quot;monthly_mean_c&quot;</translation>
    </message>
    <message>
        <source>the scatter belongs to an own climate</source>
        <translation>la variación va con un clima propio</translation>
    </message>
    <message>
        <source>the site says nothing of where it is</source>
        <translation>el lugar no dice dónde está</translation>
    </message>
    <message>
        <source>{} is given without {}</source>
        <translation>{} se indica sin {}</translation>
    </message>
    <message>
        <source>{} {} is not a day of the winter asked about</source>
        <translation>{} {} no es un día del invierno por el que se pregunta</translation>
    </message>
    <message>
        <source>no station {}</source>
        <translation>no hay ninguna estación {}</translation>
    </message>
    <message>
        <source>the key {} is given twice, first at {}:{}</source>
        <translation>la clave {} está dos veces, la primera en {}:{}</translation>
    </message>
    <message>
        <source>each key once</source>
        <translation>cada clave una sola vez</translation>
    </message>
    <message>
        <source>nested deeper than {} levels</source>
        <translation>más de {} niveles de anidamiento</translation>
    </message>
    <message>
        <source>a case as described in the manual</source>
        <translation>un caso como lo describe el manual</translation>
    </message>
    <message>
        <source>there are too many values</source>
        <translation>hay demasiados valores</translation>
    </message>
    <message>
        <source>a zero byte in the text</source>
        <translation>un byte cero en el texto</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>texto en UTF-8</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot;?</source>
        <translation>¿quiso decir &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot; or &quot;{}&quot;?</source>
        <translation>¿quiso decir &quot;{}&quot; o &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>did you mean &quot;{}&quot; or &quot;{}&quot; or &quot;{}&quot;?</source>
        <translation>¿quiso decir &quot;{}&quot;, &quot;{}&quot; o &quot;{}&quot;?</translation>
    </message>
    <message>
        <source>known: {}</source>
        <translation>se conocen: {}</translation>
    </message>
    <message>
        <source>there is no column &quot;{}&quot;</source>
        <translation>no hay ninguna columna &quot;{}&quot;</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a date</source>
        <translation>&quot;{}&quot; no es una fecha</translation>
    </message>
    <message>
        <source>YYYY-MM-DD or YYYY/MM/DD</source>
        <translation>YYYY-MM-DD o YYYY/MM/DD (año, mes, día)</translation>
    </message>
    <message>
        <source>{} stands in line {} already</source>
        <translation>{} ya está en la línea {}</translation>
    </message>
    <message>
        <source>each date once</source>
        <translation>cada fecha una sola vez</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a number</source>
        <translation>&quot;{}&quot; no es un número</translation>
    </message>
    <message>
        <source>a temperature with a decimal point, or an empty cell</source>
        <translation>una temperatura con punto decimal, o una celda vacía</translation>
    </message>
    <message>
        <source>{} is no air temperature</source>
        <translation>{} no es una temperatura del aire</translation>
    </message>
    <message>
        <source>{} to {} degC, or an empty cell</source>
        <translation>de {} a {} degC, o una celda vacía</translation>
    </message>
    <message>
        <source>the minimum is above the maximum</source>
        <translation>la mínima es mayor que la máxima</translation>
    </message>
    <message>
        <source>the lower reading in the column of minima</source>
        <translation>la lectura más baja en la columna de mínimas</translation>
    </message>
    <message>
        <source>&quot;{}&quot; names no column</source>
        <translation>&quot;{}&quot; no nombra ninguna columna</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is named twice</source>
        <translation>&quot;{}&quot; se nombra dos veces</translation>
    </message>
    <message>
        <source>neither the mean alone nor minimum and maximum are named</source>
        <translation>no se nombran ni la media sola ni la mínima y la máxima</translation>
    </message>
    <message>
        <source>which part of the dates is the year cannot be told</source>
        <translation>no se puede saber qué parte de las fechas es el año</translation>
    </message>
    <message>
        <source>dates are written in two orders: the day first in line {}, the month first in line {}</source>
        <translation>las fechas están escritas en dos órdenes: el día primero en la línea {}, el mes primero en la línea {}</translation>
    </message>
    <message>
        <source>whether day or month comes first in the dates cannot be told: {}/{}/{} in line {} may be either, and no number above 12 decides</source>
        <translation>no se puede saber si en las fechas va primero el día o el mes: {}/{}/{} en la línea {} puede ser ambas cosas, y ningún número mayor que 12 lo decide</translation>
    </message>
    <message>
        <source>--date-order dmy, mdy or ymd</source>
        <translation>--date-order dmy, mdy o ymd</translation>
    </message>
    <message>
        <source>this is no text</source>
        <translation>esto no es texto</translation>
    </message>
    <message>
        <source>a table of times and weights in plain text (UTF-8)</source>
        <translation>una tabla de horas y pesos en texto sin formato (UTF-8)</translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation>el archivo está vacío</translation>
    </message>
    <message>
        <source>a table of times and weights</source>
        <translation>una tabla de horas y pesos</translation>
    </message>
    <message>
        <source>cannot be read to its end</source>
        <translation>no se puede leer hasta el final</translation>
    </message>
    <message>
        <source>a file that can be read</source>
        <translation>un archivo que se pueda leer</translation>
    </message>
    <message>
        <source>the log has more than {} readings</source>
        <translation>el registro tiene más de {} lecturas</translation>
    </message>
    <message>
        <source>at most {}: a part of it</source>
        <translation>como mucho {}: una parte de él</translation>
    </message>
    <message>
        <source>no row has both a time and a weight</source>
        <translation>ninguna fila tiene hora y peso</translation>
    </message>
    <message>
        <source>--time and --weight with the columns that hold them</source>
        <translation>--time y --weight con las columnas que los contienen</translation>
    </message>
    <message>
        <source>no row has both a time and a weight; the first row left out has {}</source>
        <translation>ninguna fila tiene hora y peso; la primera fila dejada fuera tiene {}</translation>
    </message>
    <message>
        <source>the unit of the weights cannot be told: half of them are above {}</source>
        <translation>no se puede saber la unidad de los pesos: la mitad de ellos pasan de {}</translation>
    </message>
    <message>
        <source>--unit kg, g or lb</source>
        <translation>--unit kg, g o lb</translation>
    </message>
    <message>
        <source>{} with one of them</source>
        <translation>{} con una de ellas</translation>
    </message>
    <message>
        <source>there is no column {}</source>
        <translation>no hay ninguna columna {}</translation>
    </message>
    <message>
        <source>{} with a name of the header{} or a number from 1 to {}</source>
        <translation>{} con un nombre de la cabecera{} o un número de 1 a {}</translation>
    </message>
    <message>
        <source>more than one column holds times: {}</source>
        <translation>más de una columna contiene horas: {}</translation>
    </message>
    <message>
        <source>no column holds times</source>
        <translation>ninguna columna contiene horas</translation>
    </message>
    <message>
        <source>a table of times and weights; --delimiter, --time or --date where it is one</source>
        <translation>una tabla de horas y pesos; --delimiter, --time o --date donde lo sea</translation>
    </message>
    <message>
        <source>more than one column holds dates: {}</source>
        <translation>más de una columna contiene fechas: {}</translation>
    </message>
    <message>
        <source>more than one column holds times of day: {}</source>
        <translation>más de una columna contiene horas del día: {}</translation>
    </message>
    <message>
        <source>more than one column may hold the weight: {}</source>
        <translation>más de una columna puede contener el peso: {}</translation>
    </message>
    <message>
        <source>no column holds weights</source>
        <translation>ninguna columna contiene pesos</translation>
    </message>
    <message>
        <source>a column of numbers, one a row; --delimiter or --weight where there is one</source>
        <translation>una columna de números, uno por fila; --delimiter o --weight donde la haya</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a ratio of sugar to water</source>
        <translation>&quot;{}&quot; no es una proporción de azúcar por agua</translation>
    </message>
    <message>
        <source>two numbers above 0 with a colon between them, such as 3:2 or 1:0.63</source>
        <translation>dos números mayores que 0 con dos puntos entre ellos, como 3:2 o 1:0.63</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is more than 80 % sugar, which no longer flows</source>
        <translation>&quot;{}&quot; es más de un 80&#xa0;% de azúcar, que ya no fluye</translation>
    </message>
    <message>
        <source>at most 4:1 by mass; syrup for winter stores is 3:2 or 2:1</source>
        <translation>como mucho 4:1 en peso; el jarabe para reservas de invierno es 3:2 o 2:1</translation>
    </message>
    <message>
        <source>{} cannot be {}</source>
        <translation>{} no puede ser {}</translation>
    </message>
    <message>
        <source>0 or more</source>
        <translation>0 o más</translation>
    </message>
    <message>
        <source>the density of {} % sugar is not known</source>
        <translation>no se conoce la densidad de un {}&#xa0;% de azúcar</translation>
    </message>
    <message>
        <source>0 to 80 % sugar by mass</source>
        <translation>de 0 a 80&#xa0;% de azúcar en peso</translation>
    </message>
    <message>
        <source>syrup of {} is too thin to become stores</source>
        <translation>el jarabe {} es demasiado líquido para convertirse en reservas</translation>
    </message>
    <message>
        <source>3:2 or 2:1 by mass for winter stores</source>
        <translation>3:2 o 2:1 en peso para reservas de invierno</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>no hay nada escrito</translation>
    </message>
    <message>
        <source>write a number and a unit</source>
        <translation>escriba un número y una unidad</translation>
    </message>
    <message>
        <source>two numbers stand side by side</source>
        <translation>hay dos números juntos</translation>
    </message>
    <message>
        <source>write one number, without spaces in it</source>
        <translation>escriba un solo número, sin espacios dentro</translation>
    </message>
    <message>
        <source>a fraction has nothing below its line</source>
        <translation>a una fracción le falta lo de debajo de la raya</translation>
    </message>
    <message>
        <source>write it like 1/8</source>
        <translation>escríbala como 1/8</translation>
    </message>
    <message>
        <source>&quot;{}&quot; does not begin with a number</source>
        <translation>&quot;{}&quot; no empieza por un número</translation>
    </message>
    <message>
        <source>write a number and a unit, like 1.5 kg</source>
        <translation>escriba un número y una unidad, como 12 kg</translation>
    </message>
    <message>
        <source>&quot;{}&quot; has more than one decimal point</source>
        <translation>&quot;{}&quot; tiene más de un signo decimal</translation>
    </message>
    <message>
        <source>write the number without marks between thousands</source>
        <translation>escriba el número sin signos entre los millares</translation>
    </message>
    <message>
        <source>&quot;{}&quot; can be read in two ways</source>
        <translation>&quot;{}&quot; se puede leer de dos maneras</translation>
    </message>
    <message>
        <source>write {} or {}</source>
        <translation>escriba {} o {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no number that can be held</source>
        <translation>&quot;{}&quot; no es un número que se pueda guardar</translation>
    </message>
    <message>
        <source>write a smaller number</source>
        <translation>escriba un número más pequeño</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is no unit known here</source>
        <translation>&quot;{}&quot; no es una unidad conocida aquí</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not the same in the United States and in Britain</source>
        <translation>&quot;{}&quot; no es lo mismo en Estados Unidos que en Gran Bretaña</translation>
    </message>
    <message>
        <source>write US {} or imp {}</source>
        <translation>escriba US {} o imp {}</translation>
    </message>
    <message>
        <source>a number has no unit</source>
        <translation>un número no tiene unidad</translation>
    </message>
    <message>
        <source>give each number its unit, like 3 lb 4 oz</source>
        <translation>dé a cada número su unidad, como 3 lb 4 oz</translation>
    </message>
    <message>
        <source>the amount is negative</source>
        <translation>la cantidad es negativa</translation>
    </message>
    <message>
        <source>the parts do not go from the larger unit to the smaller</source>
        <translation>las partes no van de la unidad mayor a la menor</translation>
    </message>
    <message>
        <source>write it like 3 lb 4 oz</source>
        <translation>escríbalo como 3 lb 4 oz</translation>
    </message>
    <message>
        <source>the amount is too large</source>
        <translation>la cantidad es demasiado grande</translation>
    </message>
    <message>
        <source>there is more than one number</source>
        <translation>hay más de un número</translation>
    </message>
    <message>
        <source>write one temperature, like 7 °C</source>
        <translation>escriba una temperatura, como 7 °C</translation>
    </message>
    <message>
        <source>the temperature is too large</source>
        <translation>la temperatura es demasiado alta</translation>
    </message>
    <message>
        <source>the temperature lies under absolute zero</source>
        <translation>la temperatura está por debajo del cero absoluto</translation>
    </message>
    <message>
        <source>it is above -273.15 °C</source>
        <translation>debe ser mayor que -273 °C</translation>
    </message>
    <message>
        <source>{} could not be computed: {}</source>
        <translation>{} no se pudo calcular: {}</translation>
    </message>
    <message>
        <source>this is an error of the program, not of the records; please report it with them</source>
        <translation>es un error del programa, no de las anotaciones; comuníquelo, por favor, junto con ellas</translation>
    </message>
    <message>
        <source>this is larger than {} may be</source>
        <translation>esto es mayor de lo que puede ser {}</translation>
    </message>
    <message>
        <source>there is no such folder of shipped data</source>
        <translation>esa carpeta de datos del programa no existe</translation>
    </message>
    <message>
        <source>name it with --data or in WINTERLARDER_DATA</source>
        <translation>nómbrela con --data o en WINTERLARDER_DATA</translation>
    </message>
    <message>
        <source>{} is no time zone</source>
        <translation>{} no es una zona horaria</translation>
    </message>
    <message>
        <source>a name such as America/Halifax, UTC, or hours ahead of UTC such as +02:00</source>
        <translation>un nombre como America/Halifax, UTC, o las horas de adelanto sobre UTC, como +02:00</translation>
    </message>
    <message>
        <source>--clock: the times of the log say themselves how far from UTC they are</source>
        <translation>--clock: las horas del registro dicen ellas mismas su diferencia respecto a UTC</translation>
    </message>
    <message>
        <source>--time-zone where days of another place are wanted</source>
        <translation>--time-zone donde se quieran los días de otro lugar</translation>
    </message>
    <message>
        <source>the weighing of {}: {}</source>
        <translation>la pesada del {}: {}</translation>
    </message>
    <message>
        <source>the feed of {}: {}</source>
        <translation>el aporte de alimento del {}: {}</translation>
    </message>
    <message>
        <source>the harvest of {}: {}</source>
        <translation>la cosecha del {}: {}</translation>
    </message>
    <message>
        <source>the line is too long to be a case</source>
        <translation>la línea es demasiado larga para ser un caso</translation>
    </message>
    <message>
        <source>&quot;-&quot; is given more than once</source>
        <translation>&quot;-&quot; se da más de una vez</translation>
    </message>
    <message>
        <source>standard input can be read once</source>
        <translation>la entrada estándar se puede leer una sola vez</translation>
    </message>
    <message>
        <source>standard input cannot be read</source>
        <translation>no se puede leer la entrada estándar</translation>
    </message>
    <message>
        <source>{} is left out of the plan of its yard: {}</source>
        <translation>{} queda fuera del plan de su colmenar: {}</translation>
    </message>
    <message>
        <source>which colony was not said</source>
        <translation>no se indicó qué colonia</translation>
    </message>
    <message>
        <source>--colony NAME</source>
        <translation>--colony NOMBRE</translation>
    </message>
    <message>
        <source>there is no advice to act on: it cannot be said</source>
        <translation>no hay ninguna recomendación que seguir: no se puede decir</translation>
    </message>
    <message>
        <source>book advise tells why</source>
        <translation>book advise dice por qué</translation>
    </message>
    <message>
        <source>{}: {}: its winter is followed: book follow tells how it goes</source>
        <translation>{}: {}: su invierno ya se está siguiendo: book follow dice cómo va</translation>
    </message>
    <message>
        <source>{}: no colony is living on {}</source>
        <translation>{}: ninguna colonia vive el {}</translation>
    </message>
    <message>
        <source>there is no table {}</source>
        <translation>no hay ninguna tabla {}</translation>
    </message>
    <message>
        <source>what to export was not said</source>
        <translation>no se indicó qué exportar</translation>
    </message>
    <message>
        <source>--json for the whole book, or --table NAME for one table as CSV</source>
        <translation>--json para el cuaderno entero, o --table NOMBRE para una tabla como CSV</translation>
    </message>
    <message>
        <source>--preview is for tables</source>
        <translation>--preview es para tablas</translation>
    </message>
    <message>
        <source>a JSON document replaces the whole book</source>
        <translation>un documento JSON sustituye al cuaderno entero</translation>
    </message>
    <message>
        <source>--count is below 1</source>
        <translation>--count es menor que 1</translation>
    </message>
    <message>
        <source>how many steps to show</source>
        <translation>cuántos pasos mostrar</translation>
    </message>
    <message>
        <source>book salvage, or restore a backup</source>
        <translation>book salvage, o restaure una copia de seguridad</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>no hay nada que deshacer</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>no hay nada que rehacer</translation>
    </message>
    <message>
        <source>book story shows every step</source>
        <translation>book story muestra todos los pasos</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>ese archivo no existe</translation>
    </message>
    <message>
        <source>name a book</source>
        <translation>nombre un cuaderno</translation>
    </message>
    <message>
        <source>how the winter ended was not said</source>
        <translation>no se indicó cómo terminó el invierno</translation>
    </message>
    <message>
        <source>--alive or --dead</source>
        <translation>--alive o --dead</translation>
    </message>
    <message>
        <source>--boxes is {}</source>
        <translation>--boxes es {}</translation>
    </message>
    <message>
        <source>{} boxes with the supers</source>
        <translation>{} cuerpos con las alzas</translation>
    </message>
    <message>
        <source>there is a colony {} already, #{}</source>
        <translation>ya existe una colonia {}, #{}</translation>
    </message>
    <message>
        <source>another name, such as the place where it stands</source>
        <translation>otro nombre, por ejemplo el lugar donde está</translation>
    </message>
    <message>
        <source>where the yard is was said twice</source>
        <translation>se indicó dos veces dónde está el colmenar</translation>
    </message>
    <message>
        <source>one of --station ID, --place NAME, or --latitude D and --longitude D</source>
        <translation>uno de --station ID, --place NOMBRE, o --latitude G y --longitude G</translation>
    </message>
    <message>
        <source>there is no station {}</source>
        <translation>no existe la estación {}</translation>
    </message>
    <message>
        <source>where the yard is was not said</source>
        <translation>no se indicó dónde está el colmenar</translation>
    </message>
    <message>
        <source>--place NAME, --station ID, or --latitude D and --longitude D</source>
        <translation>--place NOMBRE, --station ID, o --latitude G y --longitude G</translation>
    </message>
    <message>
        <source>--covered-combs is {}, but {} combs are listed</source>
        <translation>--covered-combs es {}, pero se enumeran {} cuadros</translation>
    </message>
    <message>
        <source>--covered-combs is {}, but the hive has {} places</source>
        <translation>--covered-combs es {}, pero la colmena tiene {} lugares</translation>
    </message>
    <message>
        <source>a weighing is said in one way</source>
        <translation>una pesada se indica de una sola manera</translation>
    </message>
    <message>
        <source>one of --gross KG, --lift KG [KG], --heft light|fair|heavy</source>
        <translation>uno de --gross KG, --lift KG [KG], --heft light|fair|heavy</translation>
    </message>
    <message>
        <source>a feed is said in one way</source>
        <translation>un aporte de alimento se indica de una sola manera</translation>
    </message>
    <message>
        <source>one of --sugar KG, --syrup L, --fondant KG</source>
        <translation>uno de --sugar KG, --syrup L, --fondant KG</translation>
    </message>
    <message>
        <source>--fondant is given for another kind of feed</source>
        <translation>--fondant se da con otro tipo de alimento</translation>
    </message>
    <message>
        <source>--kind fondant</source>
        <translation>--kind fondant</translation>
    </message>
    <message>
        <source>--syrup is given for another kind of feed</source>
        <translation>--syrup se da con otro tipo de alimento</translation>
    </message>
    <message>
        <source>--kind syrup</source>
        <translation>--kind syrup</translation>
    </message>
    <message>
        <source>--ratio is {}</source>
        <translation>--ratio es {}</translation>
    </message>
    <message>
        <source>A:B, sugar to water by mass, such as 3:2</source>
        <translation>A:B, azúcar por agua en peso, como 3:2</translation>
    </message>
    <message>
        <source>--syrup is given without its ratio</source>
        <translation>--syrup se da sin su proporción</translation>
    </message>
    <message>
        <source>--ratio A:B, sugar to water by mass</source>
        <translation>--ratio A:B, azúcar por agua en peso</translation>
    </message>
    <message>
        <source>fondant without its amount</source>
        <translation>candi sin su cantidad</translation>
    </message>
    <message>
        <source>--fondant KG</source>
        <translation>--fondant KG</translation>
    </message>
    <message>
        <source>--latitude is outside -90 to 90</source>
        <translation>--latitude está fuera de -90 a 90</translation>
    </message>
    <message>
        <source>degrees, north positive</source>
        <translation>grados, norte positivo</translation>
    </message>
    <message>
        <source>--longitude is outside -180 to 180</source>
        <translation>--longitude está fuera de -180 a 180</translation>
    </message>
    <message>
        <source>degrees, east positive</source>
        <translation>grados, este positivo</translation>
    </message>
    <message>
        <source>no command {}</source>
        <translation>no hay ningún comando {}</translation>
    </message>
    <message>
        <source>a whole number from {} to {}</source>
        <translation>un número entero de {} a {}</translation>
    </message>
    <message>
        <source>--hive is {}</source>
        <translation>--hive es {}</translation>
    </message>
    <message>
        <source>an id that &quot;hive-formats&quot; lists</source>
        <translation>un id de los que enumera &quot;hive-formats&quot;</translation>
    </message>
    <message>
        <source>no page {}</source>
        <translation>no hay ninguna página {}</translation>
    </message>
    <message>
        <source>{} is {}, which is no number</source>
        <translation>{} es {}, que no es un número</translation>
    </message>
    <message>
        <source>a number from {} to {}</source>
        <translation>un número de {} a {}</translation>
    </message>
    <message>
        <source>--sugar and --stores</source>
        <translation>--sugar y --stores</translation>
    </message>
    <message>
        <source>exactly one of the two</source>
        <translation>exactamente uno de los dos</translation>
    </message>
    <message>
        <source>--by is {}</source>
        <translation>--by es {}</translation>
    </message>
    <message>
        <source>--shell is {}</source>
        <translation>--shell es {}</translation>
    </message>
    <message>
        <source>--kind is {}</source>
        <translation>--kind es {}</translation>
    </message>
    <message>
        <source>there is no key {}</source>
        <translation>no hay ninguna clave {}</translation>
    </message>
    <message>
        <source>--unit is {}</source>
        <translation>--unit es {}</translation>
    </message>
    <message>
        <source>c or f</source>
        <translation>c o f</translation>
    </message>
    <message>
        <source>{} or {}</source>
        <translation>{} o {}</translation>
    </message>
    <message>
        <source>several places may be {}</source>
        <translation>varios lugares pueden ser {}</translation>
    </message>
    <message>
        <source>say which, such as {}; or give latitude and longitude</source>
        <translation>indique cuál, por ejemplo {}; o indique la latitud y la longitud</translation>
    </message>
    <message>
        <source>no other {} is known here, smaller places are not: if yours is another, name a larger town near it, or give latitude and longitude</source>
        <translation>aquí no se conoce ningún otro lugar {}, y los más pequeños no están: si el suyo es otro, nombre una población mayor cercana, o indique la latitud y la longitud</translation>
    </message>
    <message>
        <source>of that name too: {}</source>
        <translation>también con ese nombre: {}</translation>
    </message>
    <message>
        <source>no climate station lies within {} km of {}</source>
        <translation>no hay ninguna estación climática a menos de {} km de {}</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>el lugar</translation>
    </message>
    <message>
        <source>the book has {} yards</source>
        <translation>el cuaderno tiene {} colmenares</translation>
    </message>
    <message>
        <source>book add-yard</source>
        <translation>book add-yard</translation>
    </message>
    <message>
        <source>--yard NAME</source>
        <translation>--yard NOMBRE</translation>
    </message>
    <message>
        <source>--most is {}</source>
        <translation>--most es {}</translation>
    </message>
    <message>
        <source>comma, semicolon, tab or the sign itself</source>
        <translation>comma, semicolon, tab o el propio signo</translation>
    </message>
    <message>
        <source>comma or point</source>
        <translation>comma o point</translation>
    </message>
    <message>
        <source>kg, g or lb</source>
        <translation>kg, g o lb</translation>
    </message>
    <message>
        <source>dmy, mdy or ymd</source>
        <translation>dmy, mdy o ymd</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>esto es una carpeta</translation>
    </message>
    <message>
        <source>name a file</source>
        <translation>nombre un archivo</translation>
    </message>
    <message>
        <source>cannot be opened</source>
        <translation>no se puede abrir</translation>
    </message>
    <message>
        <source>no station {} and {}</source>
        <translation>no hay ninguna estación {} y {}</translation>
    </message>
    <message>
        <source>a climate of your own</source>
        <translation>un clima propio</translation>
    </message>
    <message>
        <source>a station and --case</source>
        <translation>una estación y --case</translation>
    </message>
    <message>
        <source>--winter is {}</source>
        <translation>--winter es {}</translation>
    </message>
    <message>
        <source>a year from {} to {}</source>
        <translation>un año de {} a {}</translation>
    </message>
    <message>
        <source>{}, as --near LAT,LON</source>
        <translation>{}, como --near LAT,LON</translation>
    </message>
    <message>
        <source>--near is {}</source>
        <translation>--near es {}</translation>
    </message>
    <message>
        <source>LAT,LON in degrees, north and east positive, such as 44.9,-64.2, or the name of a place</source>
        <translation>LAT,LON en grados, norte y este positivos, como 44.9,-64.2, o el nombre de un lugar</translation>
    </message>
    <message>
        <source>no source {}</source>
        <translation>no hay ninguna fuente {}</translation>
    </message>
    <message>
        <source>an id that &quot;sources&quot; lists</source>
        <translation>un id de los que enumera &quot;sources&quot;</translation>
    </message>
    <message>
        <source>see CASE FILES in the manual</source>
        <translation>véase CASE FILES en el manual</translation>
    </message>
    <message>
        <source>nothing tells how many bees there are</source>
        <translation>nada dice cuántas abejas hay</translation>
    </message>
    <message>
        <source>bees with count, covered_combs or seams</source>
        <translation>abejas con count, covered_combs o seams</translation>
    </message>
    <message>
        <source>there are no bees</source>
        <translation>no hay abejas</translation>
    </message>
    <message>
        <source>a colony with bees</source>
        <translation>una colonia con abejas</translation>
    </message>
    <message>
        <source>no season can be derived for the place</source>
        <translation>no se puede calcular ninguna temporada para el lugar</translation>
    </message>
    <message>
        <source>the dates buildup and forage in the part season</source>
        <translation>las fechas buildup y forage en la parte season</translation>
    </message>
    <message>
        <source>as_of lies outside the model&apos;s season</source>
        <translation>as_of está fuera de la temporada del modelo</translation>
    </message>
    <message>
        <source>a day of the season</source>
        <translation>un día de la temporada</translation>
    </message>
    <message>
        <source>--from {} is before the look on {}</source>
        <translation>--from {} es anterior a la revisión del {}</translation>
    </message>
    <message>
        <source>a day from the look on</source>
        <translation>un día desde la revisión</translation>
    </message>
    <message>
        <source>--to {} is after the last day the model runs to</source>
        <translation>--to {} es posterior al último día al que llega el modelo</translation>
    </message>
    <message>
        <source>a day up to {}</source>
        <translation>un día hasta el {}</translation>
    </message>
    <message>
        <source>--to {} is before --from {}</source>
        <translation>--to {} es anterior a --from {}</translation>
    </message>
    <message>
        <source>a later day</source>
        <translation>un día posterior</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>no se puede escribir</translation>
    </message>
    <message>
        <source>choose another folder</source>
        <translation>elija otra carpeta</translation>
    </message>
    <message>
        <source>the demo book is not there</source>
        <translation>el cuaderno de ejemplo no está</translation>
    </message>
    <message>
        <source>make it with demo/make-book</source>
        <translation>hágalo con demo/make-book</translation>
    </message>
    <message>
        <source>name a folder that can be</source>
        <translation>nombre una carpeta en la que se pueda</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>no se puede crear la carpeta</translation>
    </message>
    <message>
        <source>name another</source>
        <translation>nombre otra</translation>
    </message>
    <message>
        <source>the book this was meant for is no longer open, and another was not touched</source>
        <translation>el cuaderno para el que era esto ya no está abierto, y otro no se tocó</translation>
    </message>
    <message>
        <source>open that book again and enter it there</source>
        <translation>vuelva a abrir ese cuaderno y anótelo allí</translation>
    </message>
    <message>
        <source>{} is no language this program speaks</source>
        <translation>{} no es un idioma que hable este programa</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::AnswerPanel</name>
    <message>
        <source>Verdict</source>
        <translation>Conclusión</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>What to winter on</source>
        <translation>Con qué invernar</translation>
    </message>
    <message>
        <source>Another look</source>
        <translation>Otra revisión</translation>
    </message>
    <message>
        <source>&amp;Why?</source>
        <translation>¿Por &amp;qué?</translation>
    </message>
    <message>
        <source>Why? Reasons and cautions with their sources</source>
        <translation>¿Por qué? Motivos y precauciones con sus fuentes</translation>
    </message>
    <message>
        <source>Make it the &amp;plan</source>
        <translation>Adoptar como &amp;plan</translation>
    </message>
    <message>
        <source>✓ It is the plan</source>
        <translation>✓ Es el plan</translation>
    </message>
    <message>
        <source>Its visits stand on the page Feeding; Undo takes it back</source>
        <translation>Sus visitas están en la página Alimentación; Deshacer lo retira</translation>
    </message>
    <message>
        <source>Keeps this advice in the book with all it was computed from, and plans its visits</source>
        <translation>Guarda esta recomendación en el cuaderno con todo aquello de lo que se calculó y prevé sus visitas</translation>
    </message>
    <message>
        <source>The plan of the yard is still being worked out; it may change this advice</source>
        <translation>El plan del colmenar todavía se está calculando; puede cambiar esta recomendación</translation>
    </message>
    <message>
        <source>This could not be worked out.</source>
        <translation>Esto no se pudo calcular.</translation>
    </message>
    <message>
        <source>These records disagree; put one of them right.</source>
        <translation>Estas anotaciones no concuerdan; corrija una de ellas.</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Se está calculando…</translation>
    </message>
    <message>
        <source>The winters are being simulated from what you have written.</source>
        <translation>Se simulan los inviernos a partir de lo que usted anotó.</translation>
    </message>
    <message>
        <source>Chances</source>
        <translation>Probabilidades</translation>
    </message>
    <message>
        <source>How this winter goes is being worked out from what was weighed and seen.</source>
        <translation>Se está calculando cómo va este invierno a partir de lo pesado y lo visto.</translation>
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
        <translation>Haga clic en un número para ver cómo se obtuvo</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BackupsDialog</name>
    <message>
        <source>Backups</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>A backup is made at the first edit of a day and before anything large; the last ten are kept beside the book. Restoring one can be undone.</source>
        <translation>Se hace una copia de seguridad con el primer cambio de cada día y antes de cualquier operación grande; las diez últimas se guardan junto al cuaderno. Restaurar una se puede deshacer.</translation>
    </message>
    <message>
        <source>Backups, newest first</source>
        <translation>Copias de seguridad, lo más reciente primero</translation>
    </message>
    <message>
        <source>Make one &amp;now</source>
        <translation>Hacer una &amp;ahora</translation>
    </message>
    <message>
        <source>&amp;Restore it</source>
        <translation>&amp;Restaurarla</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Se está leyendo…</translation>
    </message>
    <message>
        <source>There is none yet; the first edit of a day makes one.</source>
        <translation>Todavía no hay ninguna; la hace el primer cambio de cada día.</translation>
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
        <translation>Mostrar todo</translation>
    </message>
    <message>
        <source>Something is wrong</source>
        <translation>Algo no está bien</translation>
    </message>
    <message>
        <source>Notice</source>
        <translation>Mensaje</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close this notice: %1</source>
        <translation>Cerrar este mensaje: %1</translation>
    </message>
    <message>
        <source>Show less</source>
        <translation>Mostrar menos</translation>
    </message>
    <message>
        <source>Show all %1</source>
        <translation>Mostrar los %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BeesField</name>
    <message>
        <source>How the bees were counted</source>
        <translation>Cómo se contaron las abejas</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>seams of bees</source>
        <translation>calles de abejas</translation>
    </message>
    <message>
        <source>bees</source>
        <translation>abejas</translation>
    </message>
    <message>
        <source>Number of %{combs}, seams or bees</source>
        <translation>Número de cuadros, calles o abejas</translation>
    </message>
    <message>
        <source>%{combs} covered</source>
        <translation>cuadros cubiertos</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BookActions</name>
    <message>
        <source>somebody</source>
        <translation>alguien</translation>
    </message>
    <message>
        <source>%1 on %2, since %3</source>
        <translation>%1 en %2, desde %3</translation>
    </message>
    <message>
        <source>This book was opened for reading only.</source>
        <translation>Este cuaderno se abrió solo para leer.</translation>
    </message>
    <message>
        <source>This book lies where nothing can be written, so it can only be read. Copy it to where it can be changed.</source>
        <translation>Este cuaderno está donde no se puede escribir, así que solo se puede leer. Cópielo a un lugar donde se pueda cambiar.</translation>
    </message>
    <message>
        <source>A newer version of Winterlarder made this book; this one can only read it.</source>
        <translation>Este cuaderno lo hizo una versión más nueva de Winterlarder; esta solo puede leerlo.</translation>
    </message>
    <message>
        <source>The disk is full, so this book can only be read. Make room and try again.</source>
        <translation>El disco está lleno, así que este cuaderno solo se puede leer. Haga sitio y vuelva a intentarlo.</translation>
    </message>
    <message>
        <source>The file of this book has a second name (a hard link), so it can only be read: a change under one name could not be taken back under the other. Copy it, or remove the other name.</source>
        <translation>El archivo de este cuaderno tiene un segundo nombre (un enlace duro), así que solo se puede leer: un cambio hecho con un nombre no se podría deshacer con el otro. Cópielo o quite el otro nombre.</translation>
    </message>
    <message>
        <source>This book is open elsewhere (%1), so here it can only be read.</source>
        <translation>Este cuaderno está abierto en otro sitio (%1), así que aquí solo se puede leer.</translation>
    </message>
    <message>
        <source>This could not be written down; the book is as it was before.
%1</source>
        <translation>Esto no se pudo anotar; el cuaderno está como estaba.
%1</translation>
    </message>
    <message>
        <source>Your book is kept in %1. Everything you enter is in it at once; there is nothing to save.</source>
        <translation>Su cuaderno se guarda en %1. Todo lo que anota queda en él al momento; no hay nada que guardar.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Books and case files (*.larder *.json);;All files (*)</source>
        <translation>Cuadernos y archivos de caso (*.larder *.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Volver a intentarlo</translation>
    </message>
    <message>
        <source>Copy it…</source>
        <translation>Copiarlo…</translation>
    </message>
    <message>
        <source>It is closed there: take over</source>
        <translation>Allí está cerrado: seguir aquí</translation>
    </message>
    <message>
        <source>This yard is here to be tried out: what you change is kept only until the window closes.</source>
        <translation>Este colmenar está para probar: lo que cambie se conserva solo hasta que se cierre la ventana.</translation>
    </message>
    <message>
        <source>Keep it as a book…</source>
        <translation>Guardarlo como cuaderno…</translation>
    </message>
    <message>
        <source>Salvage what is readable…</source>
        <translation>Rescatar lo que se pueda leer…</translation>
    </message>
    <message>
        <source>The book could not be opened.
%1</source>
        <translation>El cuaderno no se pudo abrir.
%1</translation>
    </message>
    <message>
        <source>%1 salvaged%2</source>
        <translation>%1 rescatado%2</translation>
    </message>
    <message>
        <source>Salvage into a new book</source>
        <translation>Rescatar en un cuaderno nuevo</translation>
    </message>
    <message>
        <source>Books (*.larder)</source>
        <translation>Cuadernos (*.larder)</translation>
    </message>
    <message>
        <source>Reading what can still be read of %1…</source>
        <translation>Se lee lo que aún se puede leer de %1…</translation>
    </message>
    <message>
        <source>Everything in the damaged book was saved into this one; the damaged file was not touched.</source>
        <translation>Todo lo del cuaderno dañado se rescató en este; el archivo dañado no se tocó.</translation>
    </message>
    <message>
        <source>What could be read is in this book; the damaged file was not touched. Lost:
%1</source>
        <translation>Lo que se pudo leer está en este cuaderno; el archivo dañado no se tocó. Se perdió:
%1</translation>
    </message>
    <message>
        <source>Copy the book to</source>
        <translation>Copiar el cuaderno en</translation>
    </message>
    <message>
        <source>The book was copied to %1.</source>
        <translation>El cuaderno se copió en %1.</translation>
    </message>
    <message>
        <source>Open the copy</source>
        <translation>Abrir la copia</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Tables and whole books (*.csv *.json);;All files (*)</source>
        <translation>Tablas y cuadernos enteros (*.csv *.json);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Everything written down is in %1. Steps that can be undone, and photographs, are not in it.</source>
        <translation>Todo lo anotado está en %1. Los pasos que se pueden deshacer y las fotos no están en él.</translation>
    </message>
    <message>
        <source>The book was not written out.
%1</source>
        <translation>El cuaderno no se escribió.
%1</translation>
    </message>
    <message>
        <source>Nothing was written: %1 holds %2 already. Choose an empty folder.</source>
        <translation>No se escribió nada: %1 ya contiene %2. Elija una carpeta vacía.</translation>
    </message>
    <message numerus="yes">
        <source>%n tables were written into %1.</source>
        <translation>
            <numerusform>Se escribió %n tabla en %1.</numerusform>
            <numerusform>Se escribieron %n tablas en %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The tables were not all written.
%1</source>
        <translation>No se escribieron todas las tablas.
%1</translation>
    </message>
    <message>
        <source>The book as one document</source>
        <translation>El cuaderno como un solo documento</translation>
    </message>
    <message>
        <source>Documents (*.json)</source>
        <translation>Documentos (*.json)</translation>
    </message>
    <message>
        <source>A folder for the tables</source>
        <translation>Una carpeta para las tablas</translation>
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
        <translation>Un cuerpo má&amp;s encima</translation>
    </message>
    <message>
        <source>super</source>
        <translation>alza</translation>
    </message>
    <message>
        <source>Off</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>own measures</source>
        <translation>medidas propias</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>lo habitual</translation>
    </message>
    <message>
        <source>%{combs}: </source>
        <translation>cuadros: </translation>
    </message>
    <message>
        <source>Format of box %1 from the floor</source>
        <translation>Tipo del cuerpo %1 desde el fondo</translation>
    </message>
    <message>
        <source>%{Combs} in box %1</source>
        <translation>Cuadros en el cuerpo %1</translation>
    </message>
    <message>
        <source>Box %1 is a super</source>
        <translation>El cuerpo %1 es un alza</translation>
    </message>
    <message>
        <source>Take box %1 off</source>
        <translation>Quitar el cuerpo %1</translation>
    </message>
    <message>
        <source>Box %1 from the floor, %2</source>
        <translation>Cuerpo %1 desde el fondo, %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColoniesField</name>
    <message>
        <source>How many colonies</source>
        <translation>Cuántas colonias</translation>
    </message>
    <message>
        <source>How &amp;many:</source>
        <translation>Cuán&amp;tas:</translation>
    </message>
    <message>
        <source>Colony %1</source>
        <translation>Colonia %1</translation>
    </message>
    <message>
        <source>Name of colony %1</source>
        <translation>Nombre de la colonia %1</translation>
    </message>
    <message>
        <source>boxes: </source>
        <translation>cuerpos: </translation>
    </message>
    <message>
        <source>Boxes of colony %1 in winter</source>
        <translation>Cuerpos de la colonia %1 en invierno</translation>
    </message>
    <message>
        <source>Colony %1 needs a name.</source>
        <translation>La colonia %1 necesita un nombre.</translation>
    </message>
    <message>
        <source>Two colonies are called %1; give each a name of its own.</source>
        <translation>Hay dos colonias llamadas %1; dé a cada una su propio nombre.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColonyView</name>
    <message>
        <source>Pages of the colony</source>
        <translation>Páginas de la colonia</translation>
    </message>
    <message>
        <source>&amp;In the hive</source>
        <translation>En la co&amp;lmena</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>&amp;Alimentación</translation>
    </message>
    <message>
        <source>On the &amp;scale</source>
        <translation>En la &amp;báscula</translation>
    </message>
    <message>
        <source>S&amp;tory</source>
        <translation>&amp;Historia</translation>
    </message>
    <message>
        <source>Wh&amp;at if</source>
        <translation>¿&amp;Y si…?</translation>
    </message>
    <message>
        <source>This advice is the plan now: its visits stand on the page Feeding, to be ticked off or skipped.</source>
        <translation>Esta recomendación es ahora el plan: sus visitas están en la página «Alimentación», para marcarlas u omitirlas.</translation>
    </message>
    <message>
        <source>The visits of your plan are not to be made now: %1.</source>
        <translation>Ahora no hay que hacer las visitas de su plan: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n visits of your plan are still to come (page Feeding).</source>
        <translation>
            <numerusform>Queda por venir %n visita de su plan (página «Alimentación»).</numerusform>
            <numerusform>Quedan por venir %n visitas de su plan (página «Alimentación»).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n planned visits are past and neither ticked off nor skipped (page Feeding); until then they count as not made.</source>
        <translation>
            <numerusform>%n visita prevista ya pasó y no está ni marcada ni omitida (página «Alimentación»); hasta entonces cuenta como no hecha.</numerusform>
            <numerusform>%n visitas previstas ya pasaron y no están ni marcadas ni omitidas (página «Alimentación»); hasta entonces cuentan como no hechas.</numerusform>
        </translation>
    </message>
    <message>
        <source>%{Comb} b&amp;y %{comb}</source>
        <translation>Cuadro a cuad&amp;ro</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombDrawing</name>
    <message>
        <source>The combs of the hive</source>
        <translation>Los cuadros de la colmena</translation>
    </message>
    <message>
        <source>No comb is recorded</source>
        <translation>No hay ningún cuadro anotado</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>cuerpo %1</translation>
    </message>
    <message>
        <source>super</source>
        <translation>alza</translation>
    </message>
    <message>
        <source>Share of the comb: %1</source>
        <translation>Parte del panal: %1</translation>
    </message>
    <message>
        <source>the %{comb} before</source>
        <translation>el cuadro anterior</translation>
    </message>
    <message>
        <source>the next %{comb}</source>
        <translation>el cuadro siguiente</translation>
    </message>
    <message>
        <source>the %{comb} above or below</source>
        <translation>el cuadro de encima o de debajo</translation>
    </message>
    <message>
        <source>the first or the last %{comb}</source>
        <translation>el primer o el último cuadro</translation>
    </message>
    <message>
        <source>holds what the %{comb} entered last holds, and goes on to the next</source>
        <translation>contiene lo mismo que el último cuadro anotado, y pasa al siguiente</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombFields</name>
    <message>
        <source>Share of the comb: %1</source>
        <translation>Parte del panal: %1</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Share of the comb that is built</source>
        <translation>Parte construida del panal</translation>
    </message>
    <message>
        <source>built</source>
        <translation>construido</translation>
    </message>
    <message>
        <source>Measure on a photo&amp;graph…</source>
        <translation>Medir en una &amp;foto…</translation>
    </message>
    <message>
        <source>How the comb was seen</source>
        <translation>Cómo se vio el panal</translation>
    </message>
    <message>
        <source>One face, a window, or not at all: the less was seen, the wider the spread</source>
        <translation>Una cara, una ventana o nada: cuanto menos se vio, mayor es el margen de error</translation>
    </message>
    <message>
        <source>both faces</source>
        <translation>ambas caras</translation>
    </message>
    <message>
        <source>one face</source>
        <translation>una cara</translation>
    </message>
    <message>
        <source>through a window</source>
        <translation>por una ventana</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>no examinado</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>visto</translation>
    </message>
    <message>
        <source>Bar width</source>
        <translation>Ancho de la barra</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra</translation>
    </message>
    <message>
        <source>Super, %{comb} %1:</source>
        <translation>Alza, cuadro %1:</translation>
    </message>
    <message>
        <source>Box %1, %{comb} %2:</source>
        <translation>Cuerpo %1, cuadro %2:</translation>
    </message>
    <message>
        <source>%{Comb} %1:</source>
        <translation>Cuadro %1:</translation>
    </message>
    <message>
        <source>empty %1, measured</source>
        <translation>vacío %1, medido</translation>
    </message>
    <message>
        <source>empty %1</source>
        <translation>vacío %1</translation>
    </message>
    <message>
        <source>holds %1</source>
        <translation>contiene %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombPortrait</name>
    <message>
        <source>The comb of the row, drawn</source>
        <translation>El cuadro de la fila, dibujado</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombQuickForm</name>
    <message>
        <source>Share of those stores that is capped</source>
        <translation>Parte de esas reservas que está operculada</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>of it cappe&amp;d</source>
        <translation>de ellas, opercula&amp;das</translation>
    </message>
    <message>
        <source>%{Combs} full of stores</source>
        <translation>Cuadros llenos de reservas</translation>
    </message>
    <message>
        <source>%{Combs} half full of stores</source>
        <translation>Cuadros a medio llenar de reservas</translation>
    </message>
    <message>
        <source>%{combs} f&amp;ull</source>
        <translation>cuad&amp;ros llenos</translation>
    </message>
    <message>
        <source>%{combs} half fu&amp;ll</source>
        <translation>cuadros a med&amp;io llenar</translation>
    </message>
    <message>
        <source>A count is good to about %1, a look at both faces of each %{comb} to %2. Empty comb for feed, and %{combs} to take, are only known from a look.</source>
        <translation>Un recuento acierta con un margen de alrededor del %1; una revisión de ambas caras de cada cuadro, del %2. El panal vacío para el alimento y los cuadros que se pueden quitar solo se conocen con una revisión.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombStrip</name>
    <message>
        <source>The hive from above</source>
        <translation>La colmena desde arriba</translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs}, the lowest box %1 from side to side</source>
        <translation>
            <numerusform>%n cuadro, el cuerpo más bajo de %1 de lado a lado</numerusform>
            <numerusform>%n cuadros, el cuerpo más bajo de %1 de lado a lado</numerusform>
        </translation>
    </message>
    <message>
        <source>super</source>
        <translation>alza</translation>
    </message>
    <message>
        <source>entrance</source>
        <translation>piquera</translation>
    </message>
    <message>
        <source>box %1</source>
        <translation>cuerpo %1</translation>
    </message>
    <message>
        <source>%1, bar %2</source>
        <translation>%1, barra %2</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombTableModel</name>
    <message>
        <source>super, %{comb} %1</source>
        <translation>alza, cuadro %1</translation>
    </message>
    <message>
        <source>box %1, %{comb} %2</source>
        <translation>cuerpo %1, cuadro %2</translation>
    </message>
    <message>
        <source>%{comb} %1</source>
        <translation>cuadro %1</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>open</source>
        <translation>néctar</translation>
    </message>
    <message>
        <source>bread</source>
        <translation>pan</translation>
    </message>
    <message>
        <source>faces</source>
        <translation>caras</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra</translation>
    </message>
    <message>
        <source>fed</source>
        <translation>jarabe</translation>
    </message>
    <message>
        <source>Share of the built comb that is %1, both faces together</source>
        <translation>Parte del panal construido que es %1, ambas caras juntas</translation>
    </message>
    <message>
        <source>Where the %{comb} hangs: counted from the left, seen from behind, or from the entrance of a long hive</source>
        <translation>Dónde cuelga el cuadro: contado desde la izquierda, visto desde atrás, o desde la piquera en una colmena horizontal</translation>
    </message>
    <message>
        <source>What is left of the built comb when all else is taken off</source>
        <translation>Lo que queda del panal construido al descontar todo lo demás</translation>
    </message>
    <message>
        <source>How much of the frame, or below the bar, is comb</source>
        <translation>Cuánto del cuadro, o de debajo de la barra, es panal</translation>
    </message>
    <message>
        <source>Faces that were looked at; the fewer, the wider the spread</source>
        <translation>Caras que se miraron; cuantas menos, mayor es el margen de error</translation>
    </message>
    <message>
        <source>From the middle of this %{comb} to the middle of the next; thicker combs hold more</source>
        <translation>Del centro de este cuadro al centro del siguiente; los panales más gruesos contienen más</translation>
    </message>
    <message>
        <source>This %{comb} took syrup: what is in it is for the bees alone</source>
        <translation>Este cuadro tomó jarabe: lo que tiene es solo para las abejas</translation>
    </message>
    <message>
        <source>Brood was reared in it for years, so its cells hold less</source>
        <translation>En él se crió durante años, así que sus celdas contienen menos</translation>
    </message>
    <message>
        <source>Honey and nectar in the %{comb}; in brackets eight in ten</source>
        <translation>Miel y néctar en el cuadro; entre paréntesis, ocho de cada diez casos</translation>
    </message>
    <message>
        <source>%{comb}</source>
        <translation>cuadro</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>built</source>
        <translation>construido</translation>
    </message>
    <message>
        <source>faces seen</source>
        <translation>caras vistas</translation>
    </message>
    <message>
        <source>bar width</source>
        <translation>ancho de la barra</translation>
    </message>
    <message>
        <source>took syrup</source>
        <translation>tomó jarabe</translation>
    </message>
    <message>
        <source>old nest</source>
        <translation>viejo</translation>
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
        <translation>La revisión como tabla, una fila por cuadro</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CurvePlot</name>
    <message>
        <source>Temperatures of the year at this place</source>
        <translation>Temperaturas del año en este lugar</translation>
    </message>
    <message>
        <source>coldest day of the year %1 on average</source>
        <translation>el día más frío del año, %1 de media</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::DayField</name>
    <message>
        <source>Calendar: %1</source>
        <translation>Calendario: %1</translation>
    </message>
    <message>
        <source>Choose the day from a calendar (Alt and the down arrow)</source>
        <translation>Elegir el día en un calendario (Alt y flecha abajo)</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Qué hay que corregir</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>d MMMM</source>
        <translation>d &apos;de&apos; MMMM</translation>
    </message>
    <message>
        <source>the next day, or the day before</source>
        <translation>el día siguiente o el anterior</translation>
    </message>
    <message>
        <source>a month later or earlier</source>
        <translation>un mes después o antes</translation>
    </message>
    <message>
        <source>opens the calendar</source>
        <translation>abre el calendario</translation>
    </message>
    <message>
        <source>takes what was typed</source>
        <translation>acepta lo escrito</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::DoubtBar</name>
    <message>
        <source>A question about what was typed</source>
        <translation>Una pregunta sobre lo escrito</translation>
    </message>
    <message>
        <source>It is %1</source>
        <translation>Son %1</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>Es correcto</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::EntryForm</name>
    <message>
        <source>What is wrong</source>
        <translation>Qué hay que corregir</translation>
    </message>
    <message>
        <source>W&amp;rite down</source>
        <translation>Anota&amp;r</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
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
        <translation>%1 de azúcar blanco en %2 de agua: %3 de jarabe, %4 en peso</translation>
    </message>
    <message>
        <source>%1 of fondant, touching the cluster</source>
        <translation>%1 de candi, en contacto con el racimo</translation>
    </message>
    <message>
        <source>Thin enough to take quickly: %1 days with more than %2 at their warmest are usual before the last day, time to ripen it.</source>
        <translation>Bastante líquido para que lo tomen deprisa: antes del último día suele haber %1 días con más de %2 de máxima, tiempo para madurarlo.</translation>
    </message>
    <message>
        <source>Thick, because only %1 days with more than %2 at their warmest are usual before the last day: less water to drive off.</source>
        <translation>Denso, porque antes del último día solo suele haber %1 días con más de %2 de máxima: menos agua que evaporar.</translation>
    </message>
    <message>
        <source>Nothing liquid after %1: what is taken later no longer ripens.</source>
        <translation>Nada líquido después del %1: lo que tomen más tarde ya no madura.</translation>
    </message>
    <message>
        <source>There is no empty comb for more: take a full %{comb} out, or add drawn comb, before feeding on.</source>
        <translation>No hay panal vacío para más: antes de seguir alimentando, quite un cuadro lleno o añada cuadros labrados.</translation>
    </message>
    <message>
        <source>It is too late for syrup; fondant instead.</source>
        <translation>Es demasiado tarde para jarabe; en su lugar, candi.</translation>
    </message>
    <message>
        <source>So many bees cannot take all of it as syrup in time; the rest is given as fondant.</source>
        <translation>Tantas abejas no pueden tomarlo todo en jarabe a tiempo; el resto se da en candi.</translation>
    </message>
    <message>
        <source>Part of it comes later than is best: begin at once.</source>
        <translation>Una parte llega más tarde de lo conveniente: empiece enseguida.</translation>
    </message>
    <message>
        <source>Thick syrup in small portions of %1 might still be taken, but may stay open.</source>
        <translation>Puede que aún tomen jarabe denso en pequeñas raciones de %1, pero quizá se quede sin opercular.</translation>
    </message>
    <message>
        <source>On the coldest likely night up to %1 of 100 parts of the sugar may set as crystals: warm the syrup, give it in small portions.</source>
        <translation>En la noche más fría que cabe esperar, hasta %1 de cada 100 partes del azúcar pueden cristalizar: caliente el jarabe y delo en pequeñas raciones.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Visits, by day</source>
        <translation>Visitas, por días</translation>
    </message>
    <message>
        <source>What was fed, and visits planned</source>
        <translation>Lo que se dio y las visitas previstas</translation>
    </message>
    <message>
        <source>Nothing was fed yet. What you give, and the visits of a plan you made yours, stand here.</source>
        <translation>Todavía no se dio nada. Aquí aparecen lo que usted dé y las visitas de un plan que haya adoptado.</translation>
    </message>
    <message>
        <source>Fe&amp;d…</source>
        <translation>Apo&amp;rte…</translation>
    </message>
    <message>
        <source>Visit &amp;made</source>
        <translation>Vi&amp;sita hecha</translation>
    </message>
    <message>
        <source>S&amp;kip the visit</source>
        <translation>O&amp;mitir la visita</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Se está calculando…</translation>
    </message>
    <message>
        <source>Whether to feed cannot be said yet. Once it can, the recipe, the visits and the last day stand here.</source>
        <translation>Todavía no se puede decir si hay que alimentar. Cuando se pueda, aquí aparecerán la receta, las visitas y el último día.</translation>
    </message>
    <message>
        <source>No feeding is needed. If that changes, the recipe, the visits and the last day stand here.</source>
        <translation>No hace falta alimentar. Si eso cambia, aquí aparecerán la receta, las visitas y el último día.</translation>
    </message>
    <message>
        <source>Only if it is wintered alone after all; better to unite it.</source>
        <translation>Solo si al final inverna sola; es mejor unirla.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FindDialog</name>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>What to look for</source>
        <translation>Qué se busca</translation>
    </message>
    <message>
        <source>a colony, a note, an entry, a place, a source…</source>
        <translation>una colonia, una nota, una anotación, un lugar, una fuente…</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Lo encontrado</translation>
    </message>
    <message>
        <source>Type some letters of what you look for.</source>
        <translation>Escriba algunas letras de lo que busca.</translation>
    </message>
    <message>
        <source>Nothing holds these letters.</source>
        <translation>Nada contiene estas letras.</translation>
    </message>
    <message numerus="yes">
        <source>%n found. Enter shows what is chosen.</source>
        <translation>
            <numerusform>%n resultado. Intro muestra el elegido.</numerusform>
            <numerusform>%n resultados. Intro muestra el elegido.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>More than %n; type more letters.</source>
        <translation>
            <numerusform>Más de %n; escriba más letras.</numerusform>
            <numerusform>Más de %n; escriba más letras.</numerusform>
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
        <translation>Cómo va el invierno</translation>
    </message>
    <message>
        <source>Broken lines: what eighty of a hundred winters left, as forecast in autumn. Band: what eighty of a hundred that fit leave from today. Points: what was weighed, as stores, with eighty in a hundred odds. Dotted: the reserve; upright lines: today and the day spring forage starts.</source>
        <translation>Líneas discontinuas: lo que dejaban ochenta de cada cien inviernos según la previsión de otoño. Franja: lo que dejan desde hoy ochenta de cada cien de los que encajan. Puntos: lo pesado, en reservas, con su intervalo de ochenta de cada cien. De puntos: el margen de seguridad; líneas verticales: hoy y el día en que comienza la floración de primavera.</translation>
    </message>
    <message>
        <source>Following the winter…</source>
        <translation>Se sigue el invierno…</translation>
    </message>
    <message>
        <source>What was seen since autumn is being held against the simulated winters.</source>
        <translation>Lo visto desde otoño se está comparando con los inviernos simulados.</translation>
    </message>
    <message>
        <source>This winter cannot be followed yet.</source>
        <translation>Este invierno todavía no se puede seguir.</translation>
    </message>
    <message>
        <source>This winter is still to be decided.</source>
        <translation>Este invierno está aún por decidir.</translation>
    </message>
    <message>
        <source>From the day after the decision on, every weighing and glance is held against its forecast here.</source>
        <translation>Desde el día siguiente a la decisión, cada pesada y cada vistazo se comparan aquí con su previsión.</translation>
    </message>
    <message>
        <source>On the way into winter: about %1 left, where the forecast expected %2.</source>
        <translation>Camino del invierno: quedan alrededor de %1; la previsión esperaba %2.</translation>
    </message>
    <message>
        <source>Until winter begins what to do is said above, from what is known today; then it is said here too.</source>
        <translation>Hasta que empiece el invierno, lo que hay que hacer se dice arriba, según lo que se sabe hoy; después se dice también aquí.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FollowPlot</name>
    <message>
        <source>Forecast of autumn, forecast of now, and what was weighed</source>
        <translation>Previsión de otoño, previsión de ahora y lo pesado</translation>
    </message>
    <message>
        <source>Points: %1</source>
        <translation>Puntos: %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FormatField</name>
    <message>
        <source>comb %1 by %2</source>
        <translation>panal de %1 por %2</translation>
    </message>
    <message>
        <source>%1, one room of %2 %{combs}</source>
        <translation>%1, un solo espacio de %2 cuadros</translation>
    </message>
    <message>
        <source>%1, %2 in a box</source>
        <translation>%1, %2 por cuerpo</translation>
    </message>
    <message>
        <source>Find a hive format by any word</source>
        <translation>Buscar un tipo de colmena por cualquier palabra</translation>
    </message>
    <message>
        <source>find: national, dadant, top bar, deep…</source>
        <translation>buscar: dadant, layens, langstroth, top-bar…</translation>
    </message>
    <message>
        <source>Hive format</source>
        <translation>Tipo de colmena</translation>
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
        <translation>Lo habitual en %1</translation>
    </message>
    <message>
        <source>No format has these words. Fewer letters find more; own measures are entered with the colony&apos;s hive.</source>
        <translation>Ningún tipo tiene estas palabras. Con menos letras se encuentra más; las medidas propias se indican en la colmena de la colonia.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GroundsPopup</name>
    <message>
        <source>How this number was got</source>
        <translation>Cómo se obtuvo este número</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GuideLink</name>
    <message>
        <source>How to judge this: %1</source>
        <translation>Cómo estimar esto: %1</translation>
    </message>
    <message>
        <source>How to judge this</source>
        <translation>Cómo estimar esto</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::GuideWindow</name>
    <message>
        <source>Judging stores</source>
        <translation>Estimar las reservas</translation>
    </message>
    <message>
        <source>Pages of the guide</source>
        <translation>Páginas de la guía</translation>
    </message>
    <message>
        <source>The page</source>
        <translation>La página</translation>
    </message>
    <message>
        <source>your own, %1 by %2</source>
        <comment>the measures of a comb</comment>
        <translation>medida propia, %1 por %2</translation>
    </message>
    <message>
        <source>The tables this guide takes its numbers from are not read yet. Open it again in a moment.</source>
        <translation>Las tablas de las que esta guía toma sus números aún no se han leído. Vuelva a abrirla dentro de un momento.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HelpWindow</name>
    <message>
        <source>Show only what holds these letters</source>
        <translation>Mostrar solo lo que contiene estas letras</translation>
    </message>
    <message>
        <source>look for…</source>
        <translation>buscar…</translation>
    </message>
    <message>
        <source>Nothing here holds these letters.</source>
        <translation>Nada de aquí contiene estas letras.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HistoryDialog</name>
    <message>
        <source>Every step of the book, newest first</source>
        <translation>Todos los pasos del cuaderno, lo más reciente primero</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Choose a step to go back to before it. What is taken back stays in this list and can be done again until something else is entered.</source>
        <translation>Elija un paso para volver al estado anterior a él. Lo que se deshace sigue en esta lista y se puede rehacer hasta que se anote otra cosa.</translation>
    </message>
    <message>
        <source>&amp;Go back</source>
        <translation>&amp;Volver atrás</translation>
    </message>
    <message>
        <source>Do &amp;again</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be taken back.</source>
        <translation>
            <numerusform>Se desharía %n paso.</numerusform>
            <numerusform>Se desharían %n pasos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be done again.</source>
        <translation>
            <numerusform>Se reharía %n paso.</numerusform>
            <numerusform>Se reharían %n pasos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is chosen that can be taken back or done again.</source>
        <translation>No hay nada elegido que se pueda deshacer o rehacer.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ImportDialog</name>
    <message>
        <source>Import %1</source>
        <translation>Importar %1</translation>
    </message>
    <message>
        <source>What the table holds</source>
        <translation>Qué contiene la tabla</translation>
    </message>
    <message>
        <source>What would be imported</source>
        <translation>Qué se importaría</translation>
    </message>
    <message>
        <source>What is wrong in the file, by line and column</source>
        <translation>Qué hay que corregir en el archivo, por línea y columna</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>the table holds</source>
        <translation>la tabla contiene</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Son &amp;correctas tal como están</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Se está leyendo…</translation>
    </message>
    <message numerus="yes">
        <source>A whole book of %n entries. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.</source>
        <translation>
            <numerusform>Un cuaderno entero de %n anotación. El cuaderno abierto pasa a ser este, ni más ni menos; se puede deshacer, y antes se hace una copia de seguridad.</numerusform>
            <numerusform>Un cuaderno entero de %n anotaciones. El cuaderno abierto pasa a ser este, ni más ni menos; se puede deshacer, y antes se hace una copia de seguridad.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take the &amp;book as it stands: no answer believes these</source>
        <translation>&amp;Aceptar el cuaderno tal como está: ninguna respuesta dará por buenas estas anotaciones</translation>
    </message>
    <message>
        <source>%1; %2; %3. Everything or nothing is imported, as one step that can be undone; a backup is made first.</source>
        <translation>%1; %2; %3. Se importa todo o nada, en un solo paso que se puede deshacer; antes se hace una copia de seguridad.</translation>
    </message>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n nueva</numerusform>
            <numerusform>%n nuevas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n changed</source>
        <translation>
            <numerusform>%n cambiada</numerusform>
            <numerusform>%n cambiadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n said already, left out</source>
        <translation>
            <numerusform>%n ya anotada, dejada fuera</numerusform>
            <numerusform>%n ya anotadas, dejadas fuera</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was imported.</source>
        <translation>No se importó nada.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing can be imported before this is put right in the file: %n faults.</source>
        <translation>
            <numerusform>No se puede importar nada hasta que se corrija esto en el archivo: %n fallo.</numerusform>
            <numerusform>No se puede importar nada hasta que se corrija esto en el archivo: %n fallos.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::JobTableModel</name>
    <message>
        <source>feed syrup, in the evening</source>
        <translation>dar jarabe, al atardecer</translation>
    </message>
    <message>
        <source>lay on fondant, touching the cluster</source>
        <translation>poner candi, en contacto con el racimo</translation>
    </message>
    <message>
        <source>check: sealed? weigh, feeder off, mouse guard on</source>
        <translation>comprobar: ¿operculado? pesar, quitar el alimentador, poner la rejilla contra ratones</translation>
    </message>
    <message>
        <source>take honey off, before feeding or treating</source>
        <translation>quitar miel, antes de alimentar o tratar</translation>
    </message>
    <message>
        <source>unite with a healthy neighbour</source>
        <translation>unir con una vecina sana</translation>
    </message>
    <message>
        <source>weigh again, both sides, without opening</source>
        <translation>volver a pesar, por los dos lados y sin abrir</translation>
    </message>
    <message>
        <source>count the mites, and look at the stores again</source>
        <translation>contar los ácaros y volver a revisar las reservas</translation>
    </message>
    <message>
        <source>signs of disease: call the bee inspector, move nothing</source>
        <translation>signos de enfermedad: avisar a los servicios veterinarios oficiales y no trasladar nada</translation>
    </message>
    <message>
        <source>count the %{combs} the bees cover</source>
        <translation>contar los cuadros que cubren las abejas</translation>
    </message>
    <message>
        <source>hang in %{combs} from a neighbour</source>
        <translation>poner cuadros de una vecina</translation>
    </message>
    <message>
        <source>look at the stores, or weigh</source>
        <translation>revisar las reservas o pesar</translation>
    </message>
    <message>
        <source>hang in a %{comb} with eggs from another colony</source>
        <translation>poner un cuadro con huevos de otra colonia</translation>
    </message>
    <message>
        <source>look for queen cells on the %{comb} with eggs</source>
        <translation>buscar celdas reales en el cuadro con huevos</translation>
    </message>
    <message>
        <source>hang in one full %{comb} from %1 (its %2)</source>
        <translation>poner aquí, de %1 (%2), un cuadro lleno</translation>
    </message>
    <message numerus="yes">
        <source>hang in %n full %{combs} from %1 (its %2)</source>
        <translation>
            <numerusform>poner aquí, de %1 (%2), %n cuadro lleno</numerusform>
            <numerusform>poner aquí, de %1 (%2), %n cuadros llenos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; to give back: %2</source>
        <translation>%1; para devolver: %2</translation>
    </message>
    <message>
        <source>unite it with %1, at the latest on this day, in the evening, newspaper between</source>
        <translation>unirla con %1, este día a más tardar, al atardecer, con papel de periódico en medio</translation>
    </message>
    <message>
        <source>%1 (%2 of sugar)</source>
        <translation>%1 (%2 de azúcar)</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>the hive is full</source>
        <translation>la colmena está llena</translation>
    </message>
    <message>
        <source>honey is to come off</source>
        <translation>hay que quitar miel</translation>
    </message>
    <message>
        <source>signs of disease</source>
        <translation>signos de enfermedad</translation>
    </message>
    <message>
        <source>no bees are left</source>
        <translation>no quedan abejas</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>recomendado</translation>
    </message>
    <message>
        <source>your plan, not now: %1</source>
        <translation>su plan, ahora no: %1</translation>
    </message>
    <message>
        <source>your plan, past</source>
        <translation>su plan, ya pasado</translation>
    </message>
    <message>
        <source>your plan</source>
        <translation>su plan</translation>
    </message>
    <message>
        <source>any day</source>
        <translation>cualquier día</translation>
    </message>
    <message>
        <source>The day it is due</source>
        <translation>El día en que toca</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>The colony it is for</source>
        <translation>Para qué colonia es</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <translation>Qué hay que hacer</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>How much syrup, fondant or honey; in brackets the sugar it takes</source>
        <translation>Cuánto jarabe, candi o miel; entre paréntesis, el azúcar que lleva</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>cuánto</translation>
    </message>
    <message>
        <source>Your plan, or what today&apos;s answers advise</source>
        <translation>Su plan, o lo que recomiendan las respuestas de hoy</translation>
    </message>
    <message>
        <source>whose</source>
        <translation>de quién</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::LookPage</name>
    <message>
        <source>Where the figure for the stores comes from</source>
        <translation>De dónde sale la cifra de las reservas</translation>
    </message>
    <message>
        <source>&amp;New look</source>
        <translation>&amp;Nueva revisión</translation>
    </message>
    <message>
        <source>&amp;Queen, temper, note…</source>
        <translation>Reina, &amp;mansedumbre, nota…</translation>
    </message>
    <message>
        <source>Hive…</source>
        <translation>Colmena…</translation>
    </message>
    <message>
        <source>Bees:</source>
        <translation>Abejas:</translation>
    </message>
    <message>
        <source>Weighed:</source>
        <translation>Pesada:</translation>
    </message>
    <message>
        <source>Not looked at lately.</source>
        <translation>Sin revisar últimamente.</translation>
    </message>
    <message>
        <source>Look of %1, seen from behind; boxes as they stand.</source>
        <translation>Revisión del %1, vista desde atrás; cuerpos tal como están.</translation>
    </message>
    <message>
        <source>Look of %1, from the entrance end.</source>
        <translation>Revisión del %1, desde el lado de la piquera.</translation>
    </message>
    <message>
        <source>Look of %1, seen from behind.</source>
        <translation>Revisión del %1, vista desde atrás.</translation>
    </message>
    <message>
        <source>A new look of the day asked about; its %{combs} begin as they were seen within the last sixty days, else empty</source>
        <translation>Una revisión nueva del día de referencia; sus cuadros empiezan como se vieron en los últimos sesenta días o, si no, vacíos</translation>
    </message>
    <message>
        <source>In the cold leave the hive closed: what can be told from outside (its weight, its heft, bees flying, a glance under the lid) is written down on the page On the scale. Once it is warm enough to open, “New look” hangs the hive&apos;s %{combs} here. Or only count them:</source>
        <translation>Con frío, no abra la colmena: lo que se puede saber desde fuera (el peso, el sopesado, abejas volando, un vistazo bajo la tapa) se anota en la página «En la báscula». Cuando haga bastante calor para abrir, «Nueva revisión» coloca aquí los cuadros de la colmena. O solo cuéntelos:</translation>
    </message>
    <message>
        <source>The %{combs} were counted, not looked at one by one; so no %{comb} can be drawn.</source>
        <translation>Los cuadros se contaron, no se miraron uno por uno; por eso no se puede dibujar ninguno.</translation>
    </message>
    <message>
        <source>No %{comb} was looked at within sixty days before this day. “New look” hangs the hive&apos;s empty %{combs} here; write on each what it holds, and count the %{combs} the bees cover. Or only count them:</source>
        <translation>No se revisó ningún cuadro en los sesenta días anteriores a este día. «Nueva revisión» coloca aquí los cuadros vacíos de la colmena; anote en cada uno lo que contiene y cuente los cuadros que cubren las abejas. O solo cuéntelos:</translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <translation>%1 %2 (%3)</translation>
    </message>
    <message>
        <source>Stores %1: %2.</source>
        <translation>Reservas %1: %2.</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>%1 Bees about %2.</source>
        <translation>%1 Abejas, unas %2.</translation>
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
        <translation>%1 – %2 en %3</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Deshacer: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Rehacer: %1</translation>
    </message>
    <message>
        <source>Due looks as a calendar</source>
        <translation>Lo pendiente como calendario</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Calendarios (*.ics)</translation>
    </message>
    <message>
        <source>%1: its answer is not worked out, so of it only what is planned is in the calendar</source>
        <translation>%1: su respuesta no está calculada, así que de ella el calendario solo tiene lo previsto</translation>
    </message>
    <message>
        <source>What is due is in %1.</source>
        <translation>Lo pendiente está en %1.</translation>
    </message>
    <message>
        <source>What is due could not be worked out.
%1</source>
        <translation>Lo pendiente no se pudo calcular.
%1</translation>
    </message>
    <message>
        <source>The calendar could not be written to %1. Choose another folder.</source>
        <translation>El calendario no se pudo escribir en %1. Elija otra carpeta.</translation>
    </message>
    <message>
        <source>Left out:</source>
        <translation>Dejado fuera:</translation>
    </message>
    <message>
        <source>&amp;Colony</source>
        <translation>C&amp;olonia</translation>
    </message>
    <message>
        <source>&amp;New colony…</source>
        <translation>&amp;Nueva colonia…</translation>
    </message>
    <message>
        <source>New &amp;look</source>
        <translation>Nueva &amp;revisión</translation>
    </message>
    <message>
        <source>&amp;Weighed…</source>
        <translation>&amp;Pesada…</translation>
    </message>
    <message>
        <source>&amp;Fed…</source>
        <translation>&amp;Aporte de alimento…</translation>
    </message>
    <message>
        <source>&amp;Harvest…</source>
        <translation>&amp;Cosecha…</translation>
    </message>
    <message>
        <source>&amp;Treatment…</source>
        <translation>&amp;Tratamiento…</translation>
    </message>
    <message>
        <source>A &amp;glance in winter…</source>
        <translation>&amp;Vistazo de invierno…</translation>
    </message>
    <message>
        <source>How the wint&amp;er went…</source>
        <translation>Cómo fue el &amp;invierno…</translation>
    </message>
    <message>
        <source>N&amp;ote…</source>
        <translation>N&amp;ota…</translation>
    </message>
    <message>
        <source>Name, &amp;queen, feeder…</source>
        <translation>Nombre, reina, ali&amp;mentador…</translation>
    </message>
    <message>
        <source>Hi&amp;ve…</source>
        <translation>Co&amp;lmena…</translation>
    </message>
    <message>
        <source>To another &amp;yard…</source>
        <translation>A otro colm&amp;enar…</translation>
    </message>
    <message>
        <source>What became of &amp;it…</source>
        <translation>&amp;Qué fue de ella…</translation>
    </message>
    <message>
        <source>&amp;Remove it with all its records</source>
        <translation>&amp;Borrar la colonia con todas sus anotaciones</translation>
    </message>
    <message numerus="yes">
        <source>One file at a time, please: only case files can be opened together. Nothing was done with these %n.</source>
        <translation>
            <numerusform>De uno en uno, por favor: solo los archivos de caso se pueden abrir juntos. Con este no se hizo nada (%n).</numerusform>
            <numerusform>De uno en uno, por favor: solo los archivos de caso se pueden abrir juntos. Con estos %n no se hizo nada.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is no file that can be taken here. A book (.larder), a case file or a whole book (.json), a table or the log of a scale (.csv), or a photograph can be dropped.</source>
        <translation>%1 no es un archivo que se pueda usar aquí. Se puede soltar un cuaderno (.larder), un archivo de caso o un cuaderno entero (.json), una tabla o el registro de una báscula (.csv), o una foto.</translation>
    </message>
    <message>
        <source>%1 belongs to a book: open one that can be written first, then drop it again.</source>
        <translation>%1 va dentro de un cuaderno: abra primero uno en el que se pueda escribir y vuelva a soltarlo.</translation>
    </message>
    <message>
        <source>A table of entries…</source>
        <translation>Una tabla de anotaciones…</translation>
    </message>
    <message>
        <source>The log of its scale…</source>
        <translation>El registro de su báscula…</translation>
    </message>
    <message>
        <source>What is %1: a table of entries, or the log of the scale under the colony shown?</source>
        <translation>¿Qué es %1: una tabla de anotaciones, o el registro de la báscula de la colonia que se muestra?</translation>
    </message>
    <message>
        <source>What is %1? Where it is the log of a scale, choose its colony and drop it again.</source>
        <translation>¿Qué es %1? Si es el registro de una báscula, elija su colonia y vuelva a soltarlo.</translation>
    </message>
    <message>
        <source>A photograph measures one comb: choose the colony and the comb, then drop %1 on it.</source>
        <translation>Una foto mide un panal: elija la colonia y el cuadro, y suelte %1 sobre él.</translation>
    </message>
    <message>
        <source>Save sheet</source>
        <translation>Guardar la ficha</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The sheet was written to %1.</source>
        <translation>La ficha se escribió en %1.</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>No se guardó</translation>
    </message>
    <message>
        <source>The sheet could not be written to %1. Choose another folder.</source>
        <translation>La ficha no se pudo escribir en %1. Elija otra carpeta.</translation>
    </message>
    <message>
        <source>The yard plan on paper</source>
        <translation>El plan del colmenar en papel</translation>
    </message>
    <message>
        <source>The colony sheet on paper</source>
        <translation>La ficha de la colonia en papel</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>colmenar</translation>
    </message>
    <message>
        <source>note of the yard</source>
        <translation>nota del colmenar</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>note of the colony</source>
        <translation>nota de la colonia</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>guide</source>
        <translation>guía</translation>
    </message>
    <message>
        <source>climate station</source>
        <translation>estación climática</translation>
    </message>
    <message>
        <source>source</source>
        <translation>fuente</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>%1 is not among the living colonies of the day asked about. Choose an earlier day to see it.</source>
        <translation>%1 no está entre las colonias vivas del día de referencia. Elija un día anterior para verla.</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Fuentes</translation>
    </message>
    <message>
        <source>Where the numbers come from</source>
        <translation>De dónde salen los números</translation>
    </message>
    <message>
        <source>used in: %1</source>
        <translation>usado en: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Ay&amp;uda</translation>
    </message>
    <message>
        <source>&amp;Judging stores</source>
        <translation>&amp;Estimar las reservas</translation>
    </message>
    <message>
        <source>Words &amp;used here</source>
        <translation>&amp;Términos usados aquí</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Atajos de teclado</translation>
    </message>
    <message>
        <source>&amp;Sources</source>
        <translation>&amp;Fuentes</translation>
    </message>
    <message>
        <source>&amp;Why this answer?</source>
        <translation>¿&amp;Por qué esta respuesta?</translation>
    </message>
    <message>
        <source>&amp;About Winterlarder</source>
        <translation>A&amp;cerca de Winterlarder</translation>
    </message>
    <message>
        <source>About Winterlarder</source>
        <translation>Acerca de Winterlarder</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Winterlarder %1&lt;/h3&gt;&lt;p&gt;Will what is in the hive last until the first reliable forage?&lt;/p&gt;&lt;p&gt;Where disease or medicines are concerned, the bee inspector, the vet and local law come first.&lt;/p&gt;&lt;p&gt;Places are from the GeoNames geographical database, CC BY 4.0.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Winterlarder %1&lt;/h3&gt;&lt;p&gt;¿Alcanzará lo que hay en la colmena hasta la primera floración segura?&lt;/p&gt;&lt;p&gt;En lo que toca a enfermedades o medicamentos, deciden primero los servicios veterinarios oficiales, el veterinario y la ley del lugar.&lt;/p&gt;&lt;p&gt;Los lugares son de la base de datos geográfica GeoNames, CC BY 4.0.&lt;/p&gt;&lt;p&gt;Software libre bajo la Licencia Pública General de GNU, versión 3 o posterior.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Words used here</source>
        <translation>Términos usados aquí</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Atajos de teclado</translation>
    </message>
    <message>
        <source>Menu “%1”</source>
        <translation>Menú «%1»</translation>
    </message>
    <message>
        <source>On the %{combs} of the hive</source>
        <translation>En los cuadros de la colmena</translation>
    </message>
    <message>
        <source>On the winter picture</source>
        <translation>En la imagen del invierno</translation>
    </message>
    <message>
        <source>In a field for a day</source>
        <translation>En un campo de fecha</translation>
    </message>
    <message>
        <source>In a list of what was written down</source>
        <translation>En una lista de lo anotado</translation>
    </message>
    <message>
        <source>On a photograph</source>
        <translation>En una foto</translation>
    </message>
    <message>
        <source>Winterlarder</source>
        <translation>Winterlarder</translation>
    </message>
    <message>
        <source>Which yard</source>
        <translation>Qué colmenar</translation>
    </message>
    <message>
        <source>Day asked about</source>
        <translation>Día de referencia</translation>
    </message>
    <message>
        <source>d MMMM yyyy</source>
        <translation>d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>The day asked about: what was written down later does not count yet</source>
        <translation>El día de referencia: lo anotado más tarde aún no cuenta</translation>
    </message>
    <message>
        <source>as of</source>
        <translation>a día</translation>
    </message>
    <message>
        <source>The yard and its colonies</source>
        <translation>El colmenar y sus colonias</translation>
    </message>
    <message>
        <source>bar: stores today, fading where unsure
tick: needed until spring forage starts</source>
        <translation>barra: reservas hoy, difuminada donde no son seguras
marca: lo que hace falta hasta la floración de primavera</translation>
    </message>
    <message>
        <source>%1, %2 – Winterlarder</source>
        <translation>%1, %2 – Winterlarder</translation>
    </message>
    <message>
        <source>Not everything could be opened.
%1</source>
        <translation>No se pudo abrir todo.
%1</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Cuaderno</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>&amp;New book…</source>
        <translation>&amp;Nuevo cuaderno…</translation>
    </message>
    <message>
        <source>New &amp;yard in this book…</source>
        <translation>Nuevo co&amp;lmenar en este cuaderno…</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importar…</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Copias de se&amp;guridad…</translation>
    </message>
    <message>
        <source>&amp;Copy the book to…</source>
        <translation>&amp;Copiar el cuaderno en…</translation>
    </message>
    <message>
        <source>C&amp;lose the book</source>
        <translation>Cerrar el c&amp;uaderno</translation>
    </message>
    <message>
        <source>&amp;Print yard plan…</source>
        <translation>Im&amp;primir el plan del colmenar…</translation>
    </message>
    <message>
        <source>Previe&amp;w of the yard plan…</source>
        <translation>&amp;Vista previa del plan del colmenar…</translation>
    </message>
    <message>
        <source>Print colony &amp;sheet…</source>
        <translation>Imprimir la &amp;ficha de la colonia…</translation>
    </message>
    <message>
        <source>Preview of the colony s&amp;heet…</source>
        <translation>Vista previa &amp;de la ficha de la colonia…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Exportar</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>Save the book as one &amp;JSON document…</source>
        <translation>Guardar el cuaderno como documento &amp;JSON…</translation>
    </message>
    <message>
        <source>Save every table as CS&amp;V…</source>
        <translation>Guardar todas las tablas como CS&amp;V…</translation>
    </message>
    <message>
        <source>Save yard plan as P&amp;DF…</source>
        <translation>Guardar el plan del colmenar como P&amp;DF…</translation>
    </message>
    <message>
        <source>Save colony sheet as PD&amp;F…</source>
        <translation>Guardar la ficha de la colonia como PD&amp;F…</translation>
    </message>
    <message>
        <source>Save winter pict&amp;ure…</source>
        <translation>Guardar la &amp;imagen del invierno…</translation>
    </message>
    <message>
        <source>Save what is due as a c&amp;alendar…</source>
        <translation>Guardar lo pendiente como &amp;calendario…</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;History…</source>
        <translation>&amp;Historial…</translation>
    </message>
    <message>
        <source>&amp;Copy the picture&apos;s numbers</source>
        <translation>&amp;Copiar los números de la imagen</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Buscar…</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>&amp;Ajustes…</translation>
    </message>
    <message>
        <source>Colours as the &amp;system&apos;s</source>
        <translation>Colores del &amp;sistema</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>Cla&amp;ro</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Oscuro</translation>
    </message>
    <message>
        <source>Units of the &amp;place</source>
        <translation>Unidades del &amp;lugar</translation>
    </message>
    <message>
        <source>&amp;Kilograms and litres</source>
        <translation>&amp;Kilogramos y litros</translation>
    </message>
    <message>
        <source>Pounds and US &amp;gallons</source>
        <translation>Libras y &amp;galones de EE. UU.</translation>
    </message>
    <message>
        <source>Pounds and i&amp;mperial gallons</source>
        <translation>Libras y galones i&amp;mperiales</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Most &amp;urgent first</source>
        <translation>Lo más &amp;urgente primero</translation>
    </message>
    <message>
        <source>By &amp;name</source>
        <translation>Por orden al&amp;fabético</translation>
    </message>
    <message>
        <source>&amp;Winter picture</source>
        <translation>&amp;Imagen del invierno</translation>
    </message>
    <message>
        <source>F&amp;ewer days in the picture</source>
        <translation>M&amp;enos días en la imagen</translation>
    </message>
    <message>
        <source>M&amp;ore days in the picture</source>
        <translation>Más &amp;días en la imagen</translation>
    </message>
    <message>
        <source>The whole winte&amp;r</source>
        <translation>Todo el in&amp;vierno</translation>
    </message>
    <message>
        <source>&amp;In the hive</source>
        <translation>En la &amp;colmena</translation>
    </message>
    <message>
        <source>%{Comb} &amp;by %{comb}</source>
        <translation>Cuadro &amp;por cuadro</translation>
    </message>
    <message>
        <source>&amp;Feeding</source>
        <translation>&amp;Alimentación</translation>
    </message>
    <message>
        <source>On the sc&amp;ale</source>
        <translation>En la &amp;báscula</translation>
    </message>
    <message>
        <source>S&amp;tory</source>
        <translation>&amp;Historia</translation>
    </message>
    <message>
        <source>W&amp;hat if</source>
        <translation>¿&amp;Y si…?</translation>
    </message>
    <message>
        <source>The &amp;yard</source>
        <translation>El colme&amp;nar</translation>
    </message>
    <message>
        <source>Ne&amp;xt colony</source>
        <translation>Pró&amp;xima colonia</translation>
    </message>
    <message>
        <source>Pre&amp;vious colony</source>
        <translation>Colonia an&amp;terior</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::NextEntry</name>
    <message>
        <source>To be answered, this colony needs:</source>
        <translation>Para responder, a esta colonia le falta:</translation>
    </message>
    <message>
        <source>or what the hive weighs, or how heavy it feels</source>
        <translation>o lo que pesa la colmena, o cómo está al sopesarla</translation>
    </message>
    <message>
        <source>Enter the %{combs}</source>
        <translation>Anotar los cuadros</translation>
    </message>
    <message>
        <source>How many bees: %{combs} they cover, on both sides</source>
        <translation>Cuántas abejas: cuadros que cubren, por ambas caras</translation>
    </message>
    <message>
        <source>What the %{combs} hold, %{comb} by %{comb} or counted quickly</source>
        <translation>Lo que contienen los cuadros, cuadro por cuadro o contados deprisa</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::OutlineDrawing</name>
    <message>
        <source>The comb face on; a measure is missing</source>
        <translation>El panal de frente; falta una medida</translation>
    </message>
    <message>
        <source>The comb face on: %1 wide at the top, %2 deep, %3 wide at the bottom</source>
        <translation>El panal de frente: %1 de ancho arriba, %2 de alto, %3 de ancho abajo</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::OwnMeasures</name>
    <message>
        <source>comb width at the top</source>
        <translation>ancho del panal arriba</translation>
    </message>
    <message>
        <source>comb depth</source>
        <translation>alto del panal</translation>
    </message>
    <message>
        <source>width at the bottom</source>
        <translation>ancho abajo</translation>
    </message>
    <message>
        <source>spacing, or bar width</source>
        <translation>distancia o ancho de la barra</translation>
    </message>
    <message>
        <source>%{combs} the box holds</source>
        <translation>cuadros por cuerpo</translation>
    </message>
    <message>
        <source>as at the top</source>
        <translation>como arriba</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Box %1, %2</source>
        <translation>Cuerpo %1, %2</translation>
    </message>
    <message>
        <source>A comb has %1 on each side; capped from edge to edge it holds about %2 of honey.</source>
        <translation>Un panal tiene %1 por cada cara; operculado de borde a borde contiene alrededor de %2 de miel.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PastForecastModel</name>
    <message>
        <source>%1: %2 to have for winter, %3 of it taken to be eaten</source>
        <translation>%1: %2 para el invierno, de los que se suponen comidos %3</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>The autumn the forecast was made in, and the year after</source>
        <translation>El otoño en que se hizo la previsión y el año siguiente</translation>
    </message>
    <message>
        <source>winter</source>
        <translation>invierno</translation>
    </message>
    <message>
        <source>The colony it was made for</source>
        <translation>Para qué colonia se hizo</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>The day of the reading it is compared with</source>
        <translation>El día de la lectura con la que se compara</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>What the autumn&apos;s forecast said this reading would be; in brackets nine in ten</source>
        <translation>Lo que la previsión de otoño decía que sería esta lectura; entre paréntesis, nueve de cada diez</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>previsión</translation>
    </message>
    <message>
        <source>What was weighed or found</source>
        <translation>Lo que se pesó o encontró</translation>
    </message>
    <message>
        <source>happened</source>
        <translation>ocurrió</translation>
    </message>
    <message>
        <source>Whether it lay within the band of nine in ten</source>
        <translation>Si cayó dentro de la franja de nueve de cada diez</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>How far the middle of the forecast was from what happened</source>
        <translation>Cuánto se apartó el centro de la previsión de lo que ocurrió</translation>
    </message>
    <message>
        <source>off by</source>
        <translation>diferencia</translation>
    </message>
    <message>
        <source>How far off the region&apos;s handbook figure was</source>
        <translation>Cuánto se apartó la cifra de manual de la región</translation>
    </message>
    <message>
        <source>handbook
off by</source>
        <translation>diferencia
manual</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PastPage</name>
    <message>
        <source>Past forecasts and what happened</source>
        <translation>Previsiones pasadas y lo que ocurrió</translation>
    </message>
    <message>
        <source>What past winters taught</source>
        <translation>Lo que enseñaron los inviernos pasados</translation>
    </message>
    <message>
        <source>Past wi&amp;nters of these bees correct the forecast in this yard</source>
        <translation>Los i&amp;nviernos pasados de estas abejas corrigen la previsión en este colmenar</translation>
    </message>
    <message>
        <source>Be&amp;gin anew from today</source>
        <translation>Empe&amp;zar de nuevo desde hoy</translation>
    </message>
    <message>
        <source>Winters decided before the day asked about are no longer learned from; nothing is deleted</source>
        <translation>Ya no se aprende de los inviernos decididos antes del día de referencia; no se borra nada</translation>
    </message>
    <message>
        <source>&amp;Learn from all winters again</source>
        <translation>Aprender otra vez de &amp;todos los inviernos</translation>
    </message>
    <message>
        <source>Past winters could not be looked at; nothing is learned from them for now.</source>
        <translation>Los inviernos pasados no se pudieron examinar; por ahora no se aprende nada de ellos.</translation>
    </message>
    <message>
        <source>Past winters are being looked at…</source>
        <translation>Se están examinando los inviernos pasados…</translation>
    </message>
    <message>
        <source>Learned from since %1.</source>
        <translation>Se aprende desde el %1.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PhotographView</name>
    <message>
        <source>The photograph</source>
        <translation>La foto</translation>
    </message>
    <message>
        <source>No point is marked</source>
        <translation>No hay ningún punto marcado</translation>
    </message>
    <message>
        <source>%1, at %2, %3</source>
        <translation>%1, en %2, %3</translation>
    </message>
    <message>
        <source>Open a photograph of the comb: one face, as square-on as it can be had.</source>
        <translation>Abra una foto del panal: una cara, lo más de frente que se pueda.</translation>
    </message>
    <message>
        <source>moves the point; with Shift ten times as far</source>
        <translation>desplaza el punto; con Mayús, diez veces más</translation>
    </message>
    <message>
        <source>the next point</source>
        <translation>el punto siguiente</translation>
    </message>
    <message>
        <source>a new point in the middle</source>
        <translation>un punto nuevo en el centro</translation>
    </message>
    <message>
        <source>takes the point away</source>
        <translation>quita el punto</translation>
    </message>
    <message>
        <source>larger or smaller</source>
        <translation>más grande o más pequeño</translation>
    </message>
    <message>
        <source>the whole picture</source>
        <translation>la imagen entera</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PhotographWindow</name>
    <message>
        <source>Nothing is traced yet.</source>
        <translation>Todavía no hay nada trazado.</translation>
    </message>
    <message>
        <source>capped %1, open nectar %2, brood %3, bee bread %4, empty %5</source>
        <translation>operculado %1, néctar sin opercular %2, cría %3, pan de abejas %4, vacío %5</translation>
    </message>
    <message>
        <source>One face: %1.
Honey %2, known to 17.5 % instead of 20 % by eye; with the other face traced too, to 11.5 %.</source>
        <translation>Una cara: %1.
Miel %2, conocida al 17½ % en vez del 20&#xa0;% a ojo; si se traza también la otra cara, al 11½ %.</translation>
    </message>
    <message>
        <source>Both faces: %1.
Honey %2, known to 11.5 % instead of 15 % by eye.</source>
        <translation>Ambas caras: %1.
Miel %2, conocida al 11½ % en vez del 15&#xa0;% a ojo.</translation>
    </message>
    <message>
        <source>By keys: arrows move the marked point (Shift: faster), Space goes to the next, + and − or the wheel zoom, 0 shows all.</source>
        <translation>Con el teclado: las flechas desplazan el punto marcado (Mayús: más deprisa), Espacio pasa al siguiente, + y − o la rueda acercan y alejan, 0 lo muestra todo.</translation>
    </message>
    <message>
        <source>Photograph one face of the comb without bees, all of it in view, as square-on as it can be had; then open the picture here.</source>
        <translation>Fotografíe una cara del panal sin abejas, entera y lo más de frente que se pueda; después abra aquí la imagen.</translation>
    </message>
    <message>
        <source>Drag the four points to the corners of the comb, inside the frame.</source>
        <translation>Arrastre los cuatro puntos a las esquinas del panal, por dentro del cuadro.</translation>
    </message>
    <message>
        <source>Drag the points: where the comb begins and ends at the bar, low on either side, and its lowest point.</source>
        <translation>Arrastre los puntos: dónde empieza y termina el panal en la barra, uno bajo a cada lado, y su punto más bajo.</translation>
    </message>
    <message>
        <source>Click around each zone; the curve closes itself. Drag points, Delete takes one away. Where curves overlap, brood counts first, then bee bread, capped and open nectar.
By keys: Return adds a point to be moved on with the arrows (Shift: faster), Space goes to the next, + and − zoom, 0 shows all.</source>
        <translation>Haga clic alrededor de cada zona; la curva se cierra sola. Arrastre los puntos; Supr quita uno. Donde las curvas se cruzan cuenta primero la cría, después el pan de abejas, lo operculado y el néctar sin opercular.
Con el teclado: Intro añade un punto, que se lleva con las flechas (Mayús: más deprisa), Espacio pasa al siguiente, + y − acercan y alejan, 0 lo muestra todo.</translation>
    </message>
    <message>
        <source>point %1 of %2</source>
        <translation>punto %1 de %2</translation>
    </message>
    <message>
        <source>the comb itself</source>
        <translation>el propio panal</translation>
    </message>
    <message>
        <source>Leave the photograph?</source>
        <translation>¿Dejar la foto?</translation>
    </message>
    <message>
        <source>What was traced is not taken into the comb yet, and would be lost.</source>
        <translation>Lo trazado aún no se ha pasado al panal y se perdería.</translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation>&amp;Descartarlo</translation>
    </message>
    <message>
        <source>&amp;Go on tracing</source>
        <translation>&amp;Seguir trazando</translation>
    </message>
    <message>
        <source>Measure on a photograph: %1</source>
        <translation>Medir en una foto: %1</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Face of the comb</source>
        <translation>Cara del panal</translation>
    </message>
    <message>
        <source>One &amp;face</source>
        <translation>Una &amp;cara</translation>
    </message>
    <message>
        <source>The ot&amp;her face</source>
        <translation>La &amp;otra cara</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>&amp;1 Mark the comb</source>
        <translation>&amp;1 Marcar el panal</translation>
    </message>
    <message>
        <source>&amp;2 Trace the zones</source>
        <translation>&amp;2 Trazar las zonas</translation>
    </message>
    <message>
        <source>&amp;Open picture…</source>
        <translation>Abrir ima&amp;gen…</translation>
    </message>
    <message>
        <source>What is marked</source>
        <translation>Qué se marca</translation>
    </message>
    <message>
        <source>four corners</source>
        <translation>cuatro esquinas</translation>
    </message>
    <message>
        <source>bar ends, sides and lowest point</source>
        <translation>extremos de la barra, lados y punto más bajo</translation>
    </message>
    <message>
        <source>marked are</source>
        <translation>se marcan</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a zone and its key</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>&amp;Another patch</source>
        <translation>Otra &amp;mancha</translation>
    </message>
    <message>
        <source>A zone in two places is traced as two patches; its key pressed again goes from one to the other</source>
        <translation>Una zona en dos sitios se traza como dos manchas; al pulsar otra vez su tecla se pasa de una a otra</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Lo medido</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Closer</source>
        <translation>Ac&amp;ercar</translation>
    </message>
    <message>
        <source>Farth&amp;er</source>
        <translation>A&amp;lejar</translation>
    </message>
    <message>
        <source>&amp;Whole picture</source>
        <translation>&amp;Imagen entera</translation>
    </message>
    <message>
        <source>&amp;Take these shares</source>
        <translation>&amp;Usar estas partes</translation>
    </message>
    <message>
        <source>A photograph of the comb</source>
        <translation>Una foto del panal</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp *.tif *.tiff)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png *.webp *.tif *.tiff)</translation>
    </message>
    <message>
        <source>Another picture…</source>
        <translation>Otra imagen…</translation>
    </message>
    <message>
        <source>Opening %1…</source>
        <translation>Se está abriendo %1…</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PicturePanel</name>
    <message>
        <source>Show:</source>
        <translation>Mostrar:</translation>
    </message>
    <message>
        <source>Save picture</source>
        <translation>Guardar imagen</translation>
    </message>
    <message>
        <source>Save the picture or its numbers</source>
        <translation>Guardar la imagen o sus números</translation>
    </message>
    <message>
        <source>&amp;Save picture…</source>
        <translation>&amp;Guardar imagen…</translation>
    </message>
    <message>
        <source>&amp;Copy numbers</source>
        <translation>&amp;Copiar números</translation>
    </message>
    <message>
        <source>Whole winter</source>
        <translation>Todo el invierno</translation>
    </message>
    <message>
        <source>Shows all days again (0)</source>
        <translation>Muestra otra vez todos los días (0)</translation>
    </message>
    <message>
        <source>Show more days (-)</source>
        <translation>Mostrar más días (-)</translation>
    </message>
    <message>
        <source>Show fewer days (+)</source>
        <translation>Mostrar menos días (+)</translation>
    </message>
    <message>
        <source>No winter can be simulated from what is known.</source>
        <translation>Con lo que se sabe no se puede simular ningún invierno.</translation>
    </message>
    <message>
        <source>Twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %2.</source>
        <translation>Veinte de %1 inviernos, cada uno por cinco de cada cien; los discontinuos bajan de %2.</translation>
    </message>
    <message>
        <source>%2 to %3: twenty of %1 winters, each standing for five in a hundred; dashed ones fall below %4.</source>
        <translation>Del %2 al %3: veinte de %1 inviernos, cada uno por cinco de cada cien; los discontinuos bajan de %4.</translation>
    </message>
    <message>
        <source>Simulating the winters…</source>
        <translation>Se simulan los inviernos…</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Mostrar: %1</translation>
    </message>
    <message>
        <source>Pictures (*.png *.svg *.pdf)</source>
        <translation>Imágenes (*.png *.svg *.pdf)</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Not saved</source>
        <translation>No se guardó</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose another folder.</source>
        <translation>La imagen no se pudo escribir en %1. Elija otra carpeta.</translation>
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
        <translation>clima propio</translation>
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
        <translation>Dónde están las abejas: una población, o latitud y longitud</translation>
    </message>
    <message>
        <source>a town near by, or 45.1, -64.5</source>
        <translation>una población cercana, o 45.1, -64.5</translation>
    </message>
    <message>
        <source>Places found</source>
        <translation>Lugares encontrados</translation>
    </message>
    <message>
        <source>The place chosen</source>
        <translation>El lugar elegido</translation>
    </message>
    <message>
        <source>No place is spelled so. Do you mean one of these?</source>
        <translation>Ningún lugar se escribe así. ¿Es uno de estos?</translation>
    </message>
    <message>
        <source>No place of that name is known here. Take the nearest town, or type latitude and longitude, as 43.05, -76.15.</source>
        <translation>Aquí no se conoce ningún lugar con ese nombre. Tome la población más próxima o escriba la latitud y la longitud, como 43.05, -76.15.</translation>
    </message>
    <message>
        <source>Climate: %1</source>
        <translation>Clima: %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PlacePage</name>
    <message>
        <source>Name of the yard</source>
        <translation>Nombre del colmenar</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Altitud sobre el mar</translation>
    </message>
    <message>
        <source>I have my own temperatures of this place</source>
        <translation>Tengo mis propias temperaturas de este lugar</translation>
    </message>
    <message>
        <source>Autumn flow still to come</source>
        <translation>Floración de otoño por venir</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>What flowers here, and when</source>
        <translation>Qué florece aquí y cuándo</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Dónde está</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altitud</translation>
    </message>
    <message>
        <source>autumn flow</source>
        <translation>floración de otoño</translation>
    </message>
    <message>
        <source>forage</source>
        <translation>floraciones</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitud</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitud</translation>
    </message>
    <message>
        <source>Mean temperature of %1</source>
        <translation>Temperatura media de %1</translation>
    </message>
    <message>
        <source>Day: %1</source>
        <translation>Día: %1</translation>
    </message>
    <message>
        <source>Ticked: the day you know, every year; else as the climate says</source>
        <translation>Marcado: el día que usted conoce, cada año; si no, lo que dice el clima</translation>
    </message>
    <message>
        <source>The dates this winter turns on; tick those you know better</source>
        <translation>Las fechas de las que depende este invierno; marque las que conozca mejor</translation>
    </message>
    <message>
        <source>last nectar coming in</source>
        <translation>fin de la entrada de néctar</translation>
    </message>
    <message>
        <source>advised end of feeding</source>
        <translation>fin recomendado de la alimentación</translation>
    </message>
    <message>
        <source>last day for syrup</source>
        <translation>último día para dar jarabe</translation>
    </message>
    <message>
        <source>syrup no longer taken</source>
        <translation>ya no toman el jarabe</translation>
    </message>
    <message>
        <source>laying stops</source>
        <translation>corte de puesta</translation>
    </message>
    <message>
        <source>laying restarts</source>
        <translation>reanudación de la puesta</translation>
    </message>
    <message>
        <source>build-up</source>
        <translation>desarrollo primaveral</translation>
    </message>
    <message>
        <source>spring forage starts</source>
        <translation>comienzo de la floración de primavera</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message numerus="yes">
        <source>%1, give or take %n days</source>
        <translation>
            <numerusform>%1, más o menos %n día</numerusform>
            <numerusform>%1, más o menos %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>Curve of %1, %2 above the sea.</source>
        <translation>Curva de %1, a %2 sobre el mar.</translation>
    </message>
    <message>
        <source>Your own temperatures.</source>
        <translation>Sus propias temperaturas.</translation>
    </message>
    <message>
        <source>%1 Corrected by %2 for the height.</source>
        <translation>%1 Corregido en %2 por la altitud.</translation>
    </message>
    <message>
        <source>%1 Source: %2</source>
        <translation>%1 Fuente: %2</translation>
    </message>
    <message>
        <source>Winters of a hundred that may fall below the reserve</source>
        <translation>Inviernos de cada cien que pueden bajar del margen de seguridad</translation>
    </message>
    <message>
        <source>Reserve that should be left in spring</source>
        <translation>Margen de seguridad que debería quedar en primavera</translation>
    </message>
    <message>
        <source>Days between visits</source>
        <translation>Días entre visitas</translation>
    </message>
    <message>
        <source>Visits on %1</source>
        <translation>Visitas: %1</translation>
    </message>
    <message>
        <source>Price of sugar</source>
        <translation>Precio del azúcar</translation>
    </message>
    <message>
        <source>Currency, three letters</source>
        <translation>Moneda, tres letras</translation>
    </message>
    <message>
        <source>Sugar in a bag</source>
        <translation>Azúcar por saco</translation>
    </message>
    <message>
        <source>past winters of these bees correct the forecast</source>
        <translation>los inviernos pasados de estas abejas corrigen la previsión</translation>
    </message>
    <message>
        <source>What you wish</source>
        <translation>Lo que usted desea</translation>
    </message>
    <message>
        <source>winters of 100 that may fall below the reserve</source>
        <translation>inviernos de cada 100 que pueden bajar del margen de seguridad</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>margen de seguridad</translation>
    </message>
    <message>
        <source>days between visits</source>
        <translation>días entre visitas</translation>
    </message>
    <message>
        <source>visits only on (none: any day)</source>
        <translation>visitas solo en (ninguno: cualquier día)</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>moneda</translation>
    </message>
    <message>
        <source>a bag holds</source>
        <translation>un saco contiene</translation>
    </message>
    <message>
        <source>sugar, a pound costs</source>
        <translation>azúcar, la libra cuesta</translation>
    </message>
    <message>
        <source>sugar, a kilogram costs</source>
        <translation>azúcar, el kilogramo cuesta</translation>
    </message>
    <message>
        <source>Price of a pound of sugar</source>
        <translation>Precio de una libra de azúcar</translation>
    </message>
    <message>
        <source>Price of a kilogram of sugar</source>
        <translation>Precio de un kilogramo de azúcar</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::QuantityField</name>
    <message>
        <source>for a %1</source>
        <translation>por %1</translation>
    </message>
    <message>
        <source>Something must be written here.</source>
        <translation>Aquí hay que escribir algo.</translation>
    </message>
    <message>
        <source>It must be %1 or more.</source>
        <translation>Debe ser %1 o más.</translation>
    </message>
    <message>
        <source>It must be between %1 and %2.</source>
        <translation>Debe estar entre %1 y %2.</translation>
    </message>
    <message>
        <source>This is not a number.</source>
        <translation>Esto no es un número.</translation>
    </message>
    <message>
        <source>It must be a whole number.</source>
        <translation>Debe ser un número entero.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::RecordList</name>
    <message>
        <source>Change…</source>
        <translation>Cambiar…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>opens the entry</source>
        <translation>abre la anotación</translation>
    </message>
    <message>
        <source>takes the entry out of the book; undo brings it back</source>
        <translation>quita la anotación del cuaderno; deshacer la devuelve</translation>
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
        <translation>El día al que corresponde</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>What kind of entry it is</source>
        <translation>Qué clase de anotación es</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>What was written down</source>
        <translation>Lo que se anotó</translation>
    </message>
    <message>
        <source>details</source>
        <translation>detalles</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScaleLogDialog</name>
    <message>
        <source>The log of a scale: %1</source>
        <translation>El registro de una báscula: %1</translation>
    </message>
    <message>
        <source>Unit of the weights</source>
        <translation>Unidad de los pesos</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>según se encuentre</translation>
    </message>
    <message>
        <source>Order of day, month and year</source>
        <translation>Orden de día, mes y año</translation>
    </message>
    <message>
        <source>day, month, year</source>
        <translation>día, mes, año</translation>
    </message>
    <message>
        <source>month, day, year</source>
        <translation>mes, día, año</translation>
    </message>
    <message>
        <source>year, month, day</source>
        <translation>año, mes, día</translation>
    </message>
    <message>
        <source>Clock of the place</source>
        <translation>Reloj del lugar</translation>
    </message>
    <message>
        <source>times as they are written; or America/Halifax, UTC, +02:00</source>
        <translation>horas tal como están escritas; o America/Halifax, UTC, +02:00</translation>
    </message>
    <message>
        <source>Ratio of the syrup fed meanwhile, sugar to water</source>
        <translation>Proporción del jarabe dado entretanto, azúcar por agua</translation>
    </message>
    <message>
        <source>3:2; empty: not known, the weight alone counts</source>
        <translation>3:2; vacío: no se sabe, cuenta solo el peso</translation>
    </message>
    <message>
        <source>What was understood, and the steps found</source>
        <translation>Lo que se entendió y los saltos encontrados</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Son &amp;correctas tal como están</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>date order</source>
        <translation>orden de la fecha</translation>
    </message>
    <message>
        <source>clock of the place</source>
        <translation>reloj del lugar</translation>
    </message>
    <message>
        <source>syrup</source>
        <translation>jarabe</translation>
    </message>
    <message>
        <source>W&amp;rite down</source>
        <translation>Anota&amp;r</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Se está leyendo…</translation>
    </message>
    <message>
        <source>column %1 (%2)</source>
        <translation>columna %1 (%2)</translation>
    </message>
    <message>
        <source>column %1, &quot;%2&quot; (%3)</source>
        <translation>columna %1, «%2» (%3)</translation>
    </message>
    <message>
        <source>Date: %1</source>
        <translation>Fecha: %1</translation>
    </message>
    <message>
        <source>Time: %1</source>
        <translation>Hora: %1</translation>
    </message>
    <message>
        <source>Date order: %1 (%2)</source>
        <translation>Orden de la fecha: %1 (%2)</translation>
    </message>
    <message>
        <source>Weight: %1, in %2 (%3)</source>
        <translation>Peso: %1, en %2 (%3)</translation>
    </message>
    <message>
        <source>Days: %1, %2 to %3</source>
        <translation>Días: %1, del %2 al %3</translation>
    </message>
    <message>
        <source>Readings: %1</source>
        <translation>Lecturas: %1</translation>
    </message>
    <message>
        <source>Jumps of the clock, put right: %1</source>
        <translation>Cambios de hora del reloj, corregidos: %1</translation>
    </message>
    <message>
        <source>Days are those of UTC; name the clock of the place above for its own.</source>
        <translation>Los días son los de UTC; para los del lugar, indique arriba su reloj.</translation>
    </message>
    <message>
        <source>What was understood</source>
        <translation>Lo que se entendió</translation>
    </message>
    <message>
        <source>Steps found</source>
        <translation>Saltos encontrados</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Ninguno.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Months</source>
        <translation>Meses</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Rows left out: %1</source>
        <translation>Filas dejadas fuera: %1</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>línea %1: %2</translation>
    </message>
    <message>
        <source>To be written down: weighings %1, feeds %2, harvests %3, changes of equipment %4; on days the book has already: %5.</source>
        <translation>Para anotar: pesadas %1, aportes de alimento %2, cosechas %3, cambios de material %4; en días que el cuaderno ya tiene: %5.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePage</name>
    <message>
        <source>Weighings and glances, newest first</source>
        <translation>Pesadas y vistazos, lo más reciente primero</translation>
    </message>
    <message>
        <source>The hive was not weighed yet. A hand scale under one side, or a heft, already narrows what is in it.</source>
        <translation>La colmena aún no se ha pesado. Una báscula de mano bajo un lado, o sopesarla, ya acota lo que hay en ella.</translation>
    </message>
    <message>
        <source>Wei&amp;gh…</source>
        <translation>Pe&amp;sar…</translation>
    </message>
    <message>
        <source>A scale&apos;s &amp;log…</source>
        <translation>Re&amp;gistro de una báscula…</translation>
    </message>
    <message>
        <source>The log of a scale</source>
        <translation>El registro de una báscula</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tablas (*.csv *.txt *.tsv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>A gla&amp;nce…</source>
        <translation>Vis&amp;tazo…</translation>
    </message>
    <message>
        <source>H&amp;ow the winter went…</source>
        <translation>Cómo fue el &amp;invierno…</translation>
    </message>
    <message>
        <source>Points: stores as weighed and seen, with eighty in a hundred odds. Band: what eighty of a hundred simulated winters leave.</source>
        <translation>Puntos: reservas según lo pesado y lo visto, con su intervalo de ochenta de cada cien. Franja: lo que dejan ochenta de cada cien inviernos simulados.</translation>
    </message>
    <message>
        <source>Here what was measured stands against what the model expects, once both are known.</source>
        <translation>Aquí lo medido se compara con lo que espera el modelo, cuando se conozcan ambos.</translation>
    </message>
    <message>
        <source>Weights to expect are without what is fed later.</source>
        <translation>Los pesos esperados no cuentan lo que se dé más tarde.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePlot</name>
    <message>
        <source>Model against measurement</source>
        <translation>El modelo frente a lo medido</translation>
    </message>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation>
            <numerusform>%n medición</numerusform>
            <numerusform>%n mediciones</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>On this computer, whatever book is open</source>
        <translation>En este equipo, sea cual sea el cuaderno abierto</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>those of the yard&apos;s place</source>
        <translation>las del lugar del colmenar</translation>
    </message>
    <message>
        <source>kilograms and litres</source>
        <translation>kilogramos y litros</translation>
    </message>
    <message>
        <source>pounds and US gallons</source>
        <translation>libras y galones de EE. UU.</translation>
    </message>
    <message>
        <source>pounds and imperial gallons</source>
        <translation>libras y galones imperiales</translation>
    </message>
    <message>
        <source>&amp;units</source>
        <translation>&amp;unidades</translation>
    </message>
    <message>
        <source>In which weights and measures are shown. Whatever you type may have a unit of its own beside it.</source>
        <translation>En qué pesos y medidas se muestra todo. Al escribir se puede poner al lado una unidad propia.</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>as the system&apos;s</source>
        <translation>los del sistema</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claros</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuros</translation>
    </message>
    <message>
        <source>&amp;colours</source>
        <translation>&amp;colores</translation>
    </message>
    <message>
        <source>Of everything on the screen; what is printed is always dark on white.</source>
        <translation>De todo lo que se ve en la pantalla; lo impreso siempre es oscuro sobre blanco.</translation>
    </message>
    <message>
        <source>Size of the letters</source>
        <translation>Tamaño de la letra</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>&amp;letters</source>
        <translation>&amp;letra</translation>
    </message>
    <message>
        <source>How large they are on the screen; paper keeps its own size.</source>
        <translation>Su tamaño en la pantalla; el papel conserva el suyo.</translation>
    </message>
    <message>
        <source>Notices</source>
        <translation>Mensajes</translation>
    </message>
    <message>
        <source>for half a minute</source>
        <translation>medio minuto</translation>
    </message>
    <message>
        <source>for two minutes</source>
        <translation>dos minutos</translation>
    </message>
    <message>
        <source>until they are closed</source>
        <translation>hasta cerrarlos</translation>
    </message>
    <message>
        <source>&amp;notices</source>
        <translation>&amp;mensajes</translation>
    </message>
    <message>
        <source>How long the foot of the page says what was done. What went wrong always stays until it is closed.</source>
        <translation>Cuánto tiempo dice el pie de la página lo que se hizo. Lo que falló se queda siempre hasta que se cierra.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>lan&amp;guage</source>
        <translation>&amp;idioma</translation>
    </message>
    <message>
        <source>Taken up at once; where another window of the program is open, when that is closed. Where the system&apos;s is not in this list, English is spoken.</source>
        <translation>Se aplica enseguida; si hay otra ventana del programa abierta, cuando se cierra. Si el del sistema no está en esta lista, se usa el inglés.</translation>
    </message>
    <message>
        <source>Of the yard “%1”; kept in its book, and undone as any entry is</source>
        <translation>Del colmenar «%1»; se guarda en su cuaderno y se deshace como cualquier anotación</translation>
    </message>
    <message>
        <source>past winters correct the &amp;forecast</source>
        <translation>los inviernos pasados corrigen la &amp;previsión</translation>
    </message>
    <message>
        <source>learning</source>
        <translation>aprendizaje</translation>
    </message>
    <message>
        <source>Each winter written down to its end shows how much these bees use and how many die; forecasts for this yard are corrected by it.</source>
        <translation>Cada invierno anotado hasta el final enseña cuánto consumen estas abejas y cuántas mueren; con ello se corrigen las previsiones de este colmenar.</translation>
    </message>
    <message>
        <source>Of the book that is open</source>
        <translation>Del cuaderno abierto</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Copias de se&amp;guridad…</translation>
    </message>
    <message>
        <source>backups lie in</source>
        <translation>las copias están en</translation>
    </message>
    <message>
        <source>One is made at the first edit of a day and before anything large; the last ten are kept.</source>
        <translation>Se hace una con el primer cambio de cada día y antes de cualquier operación grande; se guardan las diez últimas.</translation>
    </message>
    <message>
        <source>Winters of a hundred that may fall below the reserve</source>
        <translation>Inviernos de cada cien que pueden bajar del margen de seguridad</translation>
    </message>
    <message>
        <source>&amp;risk, winters of 100</source>
        <translation>&amp;riesgo, inviernos de cada 100</translation>
    </message>
    <message>
        <source>How many winters of a hundred may end below the reserve before more is fed. Empty: 10 to 20, fewer where nobody can help in winter.</source>
        <translation>Cuántos inviernos de cada cien pueden acabar por debajo del margen de seguridad antes de dar más alimento. Vacío: de 10 a 20, menos donde nadie puede ayudar en invierno.</translation>
    </message>
    <message>
        <source>Reserve that should be left in spring</source>
        <translation>Margen de seguridad que debería quedar en primavera</translation>
    </message>
    <message>
        <source>rese&amp;rve</source>
        <translation>margen de &amp;seguridad</translation>
    </message>
    <message>
        <source>Stores every hive should still hold when spring forage starts. Empty: what the size of its colony asks for.</source>
        <translation>Reservas que cada colmena debería tener todavía al comenzar la floración de primavera. Vacío: lo que pide el tamaño de su colonia.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StartPage</name>
    <message>
        <source>What is wrong</source>
        <translation>Qué hay que corregir</translation>
    </message>
    <message>
        <source>Be&amp;gin the book</source>
        <translation>Empe&amp;zar el cuaderno</translation>
    </message>
    <message>
        <source>Will what is in the hive last until spring forage starts?</source>
        <translation>¿Alcanzará lo que hay en la colmena hasta que comience la floración de primavera?</translation>
    </message>
    <message>
        <source>Three questions, then your yard. Everything you write is kept in one file on your computer, and every step can be taken back.</source>
        <translation>Tres preguntas y después su colmenar. Todo lo que escribe se guarda en un solo archivo en su equipo, y cada paso se puede deshacer.</translation>
    </message>
    <message>
        <source>&amp;Try the demo</source>
        <translation>&amp;Probar el ejemplo</translation>
    </message>
    <message>
        <source>An invented orchard yard to look round in; nothing of yours is changed</source>
        <translation>Un colmenar inventado en un huerto, para mirar con calma; no cambia nada suyo</translation>
    </message>
    <message>
        <source>&amp;Open a book or case files…</source>
        <translation>&amp;Abrir un cuaderno o archivos de caso…</translation>
    </message>
    <message>
        <source>Bac&amp;k (Esc)</source>
        <translation>Vo&amp;lver (Esc)</translation>
    </message>
    <message>
        <source>1. Where are your bees?</source>
        <translation>1. ¿Dónde están sus abejas?</translation>
    </message>
    <message>
        <source>Home yard</source>
        <translation>Colmenar de casa</translation>
    </message>
    <message>
        <source>Name of the yard</source>
        <translation>Nombre del colmenar</translation>
    </message>
    <message>
        <source>What you call the place:</source>
        <translation>Cómo llama al lugar:</translation>
    </message>
    <message>
        <source>2. What hive do they live in?</source>
        <translation>2. ¿En qué colmena viven?</translation>
    </message>
    <message>
        <source>its combs have measures of their o&amp;wn</source>
        <translation>sus panales tienen medidas p&amp;ropias</translation>
    </message>
    <message>
        <source>3. Which colonies?</source>
        <translation>3. ¿Qué colonias?</translation>
    </message>
    <message>
        <source>Numbers in</source>
        <translation>Números en</translation>
    </message>
    <message>
        <source>kilograms and litres</source>
        <translation>kilogramos y litros</translation>
    </message>
    <message>
        <source>pounds and US gallons</source>
        <translation>libras y galones de EE. UU.</translation>
    </message>
    <message>
        <source>pounds and imperial gallons</source>
        <translation>libras y galones imperiales</translation>
    </message>
    <message>
        <source>%1 stays open until the new book is begun.</source>
        <translation>%1 sigue abierto hasta que se empiece el cuaderno nuevo.</translation>
    </message>
    <message>
        <source>Say where the bees are: choose a place from the list, or type latitude and longitude.</source>
        <translation>Indique dónde están las abejas: elija un lugar de la lista o escriba la latitud y la longitud.</translation>
    </message>
    <message>
        <source>The yard needs a name.</source>
        <translation>El colmenar necesita un nombre.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StepListModel</name>
    <message>
        <source>taken back</source>
        <translation>deshecho</translation>
    </message>
    <message>
        <source>taken back for good</source>
        <translation>deshecho para siempre</translation>
    </message>
    <message>
        <source>When it was written into the book</source>
        <translation>Cuándo se escribió en el cuaderno</translation>
    </message>
    <message>
        <source>when</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>Who wrote it</source>
        <translation>Quién lo escribió</translation>
    </message>
    <message>
        <source>by</source>
        <translation>por</translation>
    </message>
    <message>
        <source>The colony or yard it is about</source>
        <translation>La colonia o el colmenar de que trata</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>What was changed; the newest first</source>
        <translation>Lo que se cambió; lo más reciente primero</translation>
    </message>
    <message>
        <source>what was changed</source>
        <translation>qué se cambió</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::StoryPage</name>
    <message>
        <source>What to read</source>
        <translation>Qué leer</translation>
    </message>
    <message>
        <source>everything written down of this colony</source>
        <translation>todo lo anotado de esta colonia</translation>
    </message>
    <message>
        <source>every step of the whole book</source>
        <translation>todos los pasos del cuaderno entero</translation>
    </message>
    <message>
        <source>past forecasts against what happened</source>
        <translation>previsiones pasadas frente a lo que ocurrió</translation>
    </message>
    <message>
        <source>Everything written down of this colony, newest first</source>
        <translation>Todo lo anotado de esta colonia, lo más reciente primero</translation>
    </message>
    <message>
        <source>Nothing is written down yet. Looks, weighings, feeds, harvests, treatments and notes will stand here.</source>
        <translation>Todavía no hay nada anotado. Aquí aparecerán revisiones, pesadas, aportes de alimento, cosechas, tratamientos y notas.</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>&amp;Nota…</translation>
    </message>
    <message>
        <source>Ha&amp;rvest…</source>
        <translation>Co&amp;secha…</translation>
    </message>
    <message>
        <source>Treat&amp;ment…</source>
        <translation>Trata&amp;miento…</translation>
    </message>
    <message>
        <source>H&amp;ow the winter went…</source>
        <translation>Cómo fue el &amp;invierno…</translation>
    </message>
    <message>
        <source>What became of it…</source>
        <translation>Qué fue de ella…</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherDialog</name>
    <message>
        <source>Daily temperatures: %1</source>
        <translation>Temperaturas diarias: %1</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Columnas</translation>
    </message>
    <message>
        <source>date=D,mean=T or date=D,min=TMIN,max=TMAX</source>
        <translation>date=D,mean=T o date=D,min=TMIN,max=TMAX</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
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
        <translation>Qué se importaría</translation>
    </message>
    <message>
        <source>They are &amp;right as they stand</source>
        <translation>Son &amp;correctas tal como están</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>columns (empty: date, and mean or min and max)</source>
        <translation>columnas (vacío: date, y mean o min y max)</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Se está leyendo…</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>No day with a temperature is in it.</source>
        <translation>No contiene ningún día con temperatura.</translation>
    </message>
    <message>
        <source>Days: %1, %2 to %3, the coldest %4. They hold for every colony of the yard; where tables overlap the later one counts.</source>
        <translation>Días: %1, del %2 al %3, el más frío %4. Valen para todas las colonias del colmenar; donde las tablas coinciden cuenta la posterior.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherPart</name>
    <message>
        <source>The weather so far</source>
        <translation>El tiempo hasta hoy</translation>
    </message>
    <message>
        <source>&amp;Daily temperatures…</source>
        <translation>&amp;Temperaturas diarias…</translation>
    </message>
    <message>
        <source>Your own daily temperatures since autumn stand in for the simulated days that are past</source>
        <translation>Sus propias temperaturas diarias desde otoño sustituyen a los días simulados ya pasados</translation>
    </message>
    <message>
        <source>Take the last table out</source>
        <translation>Quitar la última tabla</translation>
    </message>
    <message>
        <source>No measured temperatures yet: past days of a winter are simulated like those to come.</source>
        <translation>Todavía no hay temperaturas medidas: los días pasados de un invierno se simulan como los que vienen.</translation>
    </message>
    <message>
        <source>Days measured: %1, %2 to %3; the last table: %4.</source>
        <translation>Días medidos: %1, del %2 al %3; la última tabla: %4.</translation>
    </message>
    <message>
        <source>Daily temperatures</source>
        <translation>Temperaturas diarias</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tablas (*.csv *.txt *.tsv);;Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeighLineTable</name>
    <message>
        <source>Weights to expect, hive and all</source>
        <translation>Pesos totales esperados</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>weight to expect, hive and all (80 of 100 between)</source>
        <translation>peso total esperado (80 de cada 100 entre)</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeighingField</name>
    <message>
        <source>How the hive was weighed</source>
        <translation>Cómo se pesó la colmena</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>sin pesar</translation>
    </message>
    <message>
        <source>on a scale</source>
        <translation>en báscula</translation>
    </message>
    <message>
        <source>both sides lifted</source>
        <translation>por los dos lados</translation>
    </message>
    <message>
        <source>one side lifted</source>
        <translation>por un lado</translation>
    </message>
    <message>
        <source>hefted</source>
        <translation>sopesada</translation>
    </message>
    <message>
        <source>Weight, all of the hive or the left side</source>
        <translation>Peso, de toda la colmena o del lado izquierdo</translation>
    </message>
    <message>
        <source>Weight, right side</source>
        <translation>Peso, lado derecho</translation>
    </message>
    <message>
        <source>How heavy it felt</source>
        <translation>Cómo estaba al sopesarla</translation>
    </message>
    <message>
        <source>light or heavy?</source>
        <translation>¿ligera o pesada?</translation>
    </message>
    <message>
        <source>light</source>
        <translation>ligera</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>media</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>on</source>
        <translation>el</translation>
    </message>
    <message>
        <source>Day of weighing</source>
        <translation>Día de la pesada</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WhatIfPage</name>
    <message>
        <source>Move a slider: the picture above and the chances here follow. Nothing is written down until you make it the plan.</source>
        <translation>Desplace un control: la imagen de arriba y las probabilidades de aquí lo siguen. No se anota nada hasta que lo adopte como plan.</translation>
    </message>
    <message>
        <source>Chances of what is tried</source>
        <translation>Probabilidades de lo que se prueba</translation>
    </message>
    <message>
        <source>State of the reckoning</source>
        <translation>Estado del cálculo</translation>
    </message>
    <message>
        <source>Ma&amp;ke this the plan</source>
        <translation>Adopta&amp;r esto como plan</translation>
    </message>
    <message>
        <source>Back t&amp;o what is</source>
        <translation>Volver a la &amp;situación real</translation>
    </message>
    <message>
        <source>Slider: %1</source>
        <translation>Control: %1</translation>
    </message>
    <message>
        <source>take off now</source>
        <translation>quitar ahora</translation>
    </message>
    <message>
        <source>feed sugar</source>
        <translation>dar azúcar</translation>
    </message>
    <message>
        <source>more or fewer bees</source>
        <translation>más o menos abejas</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>forage comes later by</source>
        <translation>la floración se retrasa</translation>
    </message>
    <message>
        <source> days</source>
        <translation> días</translation>
    </message>
    <message>
        <source>the hive is wrappe&amp;d</source>
        <translation>la colmena está abriga&amp;da</translation>
    </message>
    <message>
        <source>Simulating these winters…</source>
        <translation>Se simulan estos inviernos…</translation>
    </message>
    <message>
        <source>Simulating the winters…</source>
        <translation>Se simulan los inviernos…</translation>
    </message>
    <message>
        <source>What can be tried is the autumn&apos;s question; this winter is under way. The page “On the scale” says how it goes and what to do.</source>
        <translation>Lo que aquí se puede probar es la pregunta de otoño; este invierno ya está en marcha. La página «En la báscula» dice cómo va y qué hacer.</translation>
    </message>
    <message>
        <source>Nothing can be tried before there is an answer.</source>
        <translation>No se puede probar nada hasta que haya una respuesta.</translation>
    </message>
    <message>
        <source>Tried out over %1 winters; nothing of it is written down.</source>
        <translation>Probado en %1 inviernos; nada de ello está anotado.</translation>
    </message>
    <message>
        <source>As tried, %1 or more are left in %2 of 100 simulated winters, and in %3 the food runs out; left as it is, in %4, and in %5. About %6 would be left when spring forage starts.</source>
        <translation>Con lo que se prueba quedan %1 o más en %2 de cada 100 inviernos simulados, y en %3 se agota el alimento; si se deja como está, en %4 y en %5. Al comenzar la floración de primavera quedarían alrededor de %6.</translation>
    </message>
    <message>
        <source>A first sight over few winters; the full answer follows.</source>
        <translation>Una primera idea con pocos inviernos; la respuesta completa viene después.</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WhyWindow</name>
    <message>
        <source>Reasons and cautions with their sources</source>
        <translation>Motivos y precauciones con sus fuentes</translation>
    </message>
    <message>
        <source>Good &amp;practice</source>
        <translation>Buenas &amp;prácticas</translation>
    </message>
    <message>
        <source>What holds for every hive at this time of the year</source>
        <translation>Lo que vale para cualquier colmena en esta época del año</translation>
    </message>
    <message>
        <source>Why? %1</source>
        <translation>¿Por qué? %1</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Motivos</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Good practice</source>
        <translation>Buenas prácticas apícolas</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WinterPlot</name>
    <message>
        <source>Winter picture: stores through the winter</source>
        <translation>Imagen del invierno: las reservas a lo largo del invierno</translation>
    </message>
    <message>
        <source>Drawing of the winters</source>
        <translation>Dibujo de los inviernos</translation>
    </message>
    <message>
        <source>reads out the day before or the next day</source>
        <translation>lee el día anterior o el siguiente</translation>
    </message>
    <message>
        <source>a week</source>
        <translation>una semana</translation>
    </message>
    <message>
        <source>a month</source>
        <translation>un mes</translation>
    </message>
    <message>
        <source>the first or the last day</source>
        <translation>el primer o el último día</translation>
    </message>
    <message>
        <source>fewer or more days</source>
        <translation>menos o más días</translation>
    </message>
    <message>
        <source>the whole winter</source>
        <translation>todo el invierno</translation>
    </message>
    <message>
        <source>reads out no day; once more: the whole winter</source>
        <translation>no lee ningún día; otra vez: todo el invierno</translation>
    </message>
    <message>
        <source>a living colony eats %1 a day (adults %2, warmth for brood %3, food for brood %4) at %5</source>
        <translation>una colonia viva come %1 al día (adultas %2, calor para la cría %3, alimento para la cría %4) a %5</translation>
    </message>
    <message>
        <source>%1 %2, under the reserve in %3 of 100 winters</source>
        <translation>%1 %2, por debajo del margen de seguridad en %3 de cada 100 inviernos</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>%1: low, %2</source>
        <translation>%1: bajo, %2</translation>
    </message>
    <message>
        <source>%1: middle, %2</source>
        <translation>%1: medio, %2</translation>
    </message>
    <message>
        <source>%1: high, %2</source>
        <translation>%1: alto, %2</translation>
    </message>
    <message>
        <source>%1: under reserve, of 100</source>
        <translation>%1: por debajo del margen de seguridad, de cada 100</translation>
    </message>
    <message>
        <source>adults, %1</source>
        <translation>adultas, %1</translation>
    </message>
    <message>
        <source>warmth for brood, %1</source>
        <translation>calor para la cría, %1</translation>
    </message>
    <message>
        <source>food for brood, %1</source>
        <translation>alimento para la cría, %1</translation>
    </message>
    <message>
        <source>air, %1</source>
        <translation>aire, %1</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>Del %1 al %2</translation>
    </message>
    <message>
        <source>%1: %2 today, %3 as forage starts, then under the reserve in %4 of 100 winters</source>
        <translation>%1: %2 hoy, %3 al comenzar la floración, por debajo del margen de seguridad en %4 de cada 100 inviernos</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>last nectar 30 Sep</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>arrow keys read out each day</source>
        <translation>las flechas leen cada día</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::Yard</name>
    <message>
        <source>The yard</source>
        <translation>El colmenar</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardDelegate</name>
    <message>
        <source>Yard</source>
        <translation>Colmenar</translation>
    </message>
    <message>
        <source>working it out</source>
        <translation>en cálculo</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardListModel</name>
    <message>
        <source>%1, the whole yard: %2</source>
        <translation>%1, el colmenar entero: %2</translation>
    </message>
    <message>
        <source>One colony</source>
        <translation>Una colonia</translation>
    </message>
    <message numerus="yes">
        <source>%n colonies</source>
        <translation>
            <numerusform>%n colonia</numerusform>
            <numerusform>%n colonias</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, nothing due this week</source>
        <translation>%1, nada pendiente esta semana</translation>
    </message>
    <message>
        <source>%1, %2 due this week</source>
        <translation>%1, %2 con algo pendiente esta semana</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2, %3; %4 in the hive</source>
        <translation>%1: %2, %3; %4 en la colmena</translation>
    </message>
    <message>
        <source>feed today</source>
        <translation>alimentar hoy</translation>
    </message>
    <message>
        <source>feed by %1</source>
        <translation>alimentar: límite %1</translation>
    </message>
    <message>
        <source>weigh by %1</source>
        <translation>pesar: límite %1</translation>
    </message>
    <message>
        <source>Colony without a name</source>
        <translation>Colonia sin nombre</translation>
    </message>
    <message>
        <source>not worked out</source>
        <translation>no se calculó</translation>
    </message>
    <message>
        <source>records disagree</source>
        <translation>anotaciones que no concuerdan</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardPane</name>
    <message>
        <source>Back to the page</source>
        <translation>Volver a la página</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Show the whole list, and the day asked about</source>
        <translation>Mostrar la lista entera y el día de referencia</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardView</name>
    <message>
        <source>Pages of the yard</source>
        <translation>Páginas del colmenar</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <source>P&amp;lace</source>
        <translation>&amp;Lugar</translation>
    </message>
    <message>
        <source>Everything to do, by day</source>
        <translation>Todo lo que hay que hacer, por días</translation>
    </message>
    <message>
        <source>“Advised” is what today&apos;s answers ask for; “Make it the plan” on a colony&apos;s page makes it yours. Enter on a row opens its colony.</source>
        <translation>«Recomendado» es lo que piden las respuestas de hoy; con «Adoptar como plan», en la página de una colonia, pasa a ser su plan. Intro en una fila abre su colonia.</translation>
    </message>
    <message>
        <source>Visit &amp;made</source>
        <translation>Vi&amp;sita hecha</translation>
    </message>
    <message>
        <source>S&amp;kip the visit</source>
        <translation>O&amp;mitir la visita</translation>
    </message>
    <message>
        <source>The yard is empty. Add a colony: its name and the hive it lives in. Then write down one look – which combs hold honey, and how many the bees cover – and the answer stands here: whether it lasts, what to feed, or what may come off.</source>
        <translation>El colmenar está vacío. Añada una colonia: su nombre y la colmena en que vive. Después anote una revisión (qué cuadros tienen miel y cuántos cubren las abejas) y aquí aparecerá la respuesta: si alcanza, qué hay que dar o qué se puede quitar.</translation>
    </message>
    <message>
        <source>&amp;Add a colony…</source>
        <translation>Aña&amp;dir una colonia…</translation>
    </message>
    <message>
        <source>White sugar to buy</source>
        <translation>Azúcar blanco para comprar</translation>
    </message>
    <message>
        <source>Fondant to buy</source>
        <translation>Candi para comprar</translation>
    </message>
    <message>
        <source>Honey that may come off</source>
        <translation>Miel que se puede quitar</translation>
    </message>
    <message>
        <source>%{Combs} to move first</source>
        <translation>Cuadros para pasar primero</translation>
    </message>
    <message>
        <source>Move %{combs} between hives</source>
        <translation>Pasar cuadros de una colmena a otra</translation>
    </message>
    <message>
        <source>Off: the plan and all answers as they are if every %{comb} stays in its hive</source>
        <translation>Desactivado: el plan y todas las respuestas, como si cada cuadro se quedara en su colmena</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ZoneLegend</name>
    <message>
        <source>empty</source>
        <translation>vacío</translation>
    </message>
    <message>
        <source>E</source>
        <comment>key that empties a comb</comment>
        <translation>V</translation>
    </message>
    <message>
        <source>Patterns: capped, open nectar, brood, bee bread, empty</source>
        <translation>Tramas: operculado, néctar sin opercular, cría, pan de abejas, vacío</translation>
    </message>
    <message>
        <source>Type a letter to pick a zone, then digits: 7 is 70 %, 75 is 75 %. Shift with the letter: all empty cells. Space: as the last comb. E: empty. F: faces seen. W: through a window. U: built. Or drag an edge.</source>
        <translation>Pulse una letra para elegir una zona y después cifras: 7 es 70&#xa0;%, 75 es 75&#xa0;%. Mayús con la letra: todas las celdas vacías. Espacio: como el último cuadro. V: vacío. A: caras vistas. T: por una ventana. U: construido. O arrastre un borde.</translation>
    </message>
</context>
</TS>
