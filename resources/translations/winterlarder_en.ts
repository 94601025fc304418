<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_GB" sourcelanguage="en">
<context>
    <name>CommandLine</name>
    <message numerus="yes">
        <source>%n entries changed
</source>
        <translation>
            <numerusform>One entry changed
</numerusform>
            <numerusform>%n entries changed
</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Grounds</name>
    <message numerus="yes">
        <source>%n %{combs} that hold no brood, are capped enough, took no syrup and are not of the old brood nest weigh together no more than what is to spare.</source>
        <translation>
            <numerusform>One %{comb} that holds no brood, is capped enough, took no syrup and is not of the old brood nest weighs no more than what is to spare.</numerusform>
            <numerusform>%n %{combs} that hold no brood, are capped enough, took no syrup and are not of the old brood nest weigh together no more than what is to spare.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Learned</name>
    <message numerus="yes">
        <source>Learned from %n winters of colonies</source>
        <translation>
            <numerusform>Learned from one winter of a colony</numerusform>
            <numerusform>Learned from %n winters of colonies</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days later than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>Spring forage starts %1 days later than the climate says (give or take %2; one spring).</numerusform>
            <numerusform>Spring forage starts %1 days later than the climate says (give or take %2; %n springs).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Spring forage starts %1 days earlier than the climate says (give or take %2; %n springs).</source>
        <translation>
            <numerusform>Spring forage starts %1 days earlier than the climate says (give or take %2; one spring).</numerusform>
            <numerusform>Spring forage starts %1 days earlier than the climate says (give or take %2; %n springs).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n forecasts can be compared with what happened: %1 lay within their bands of nine in ten. Their mean score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</source>
        <translation>
            <numerusform>One forecast can be compared with what happened: %1 lay within its band of nine in ten. Its score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</numerusform>
            <numerusform>%n forecasts can be compared with what happened: %1 lay within their bands of nine in ten. Their mean score is %2, that of the region&apos;s handbook figure %3 (how far off, smaller is better).</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RecordRows</name>
    <message numerus="yes">
        <source>%n %{combs} looked at</source>
        <translation>
            <numerusform>one comb looked at</numerusform>
            <numerusform>%n %{combs} looked at</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 on %n %{combs}</source>
        <translation>
            <numerusform>%1 on one comb</numerusform>
            <numerusform>%1 on %n %{combs}</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n boxes, %1</source>
        <translation>
            <numerusform>one box, %1</numerusform>
            <numerusform>%n boxes, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; from %n simulated winters</source>
        <translation>
            <numerusform>%1; from one simulated winter</numerusform>
            <numerusform>%1; from %n simulated winters</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Remark</name>
    <message numerus="yes">
        <source>Measured temperatures of %n days stand for the weather so far.</source>
        <translation>
            <numerusform>Measured temperatures of one day stand for the weather so far.</numerusform>
            <numerusform>Measured temperatures of %n days stand for the weather so far.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % more than the model says; used from now on.</source>
        <translation>
            <numerusform>Over one winter these bees ate %{percent:0} % more than the model says; used from now on.</numerusform>
            <numerusform>Over %n winters these bees ate %{percent:0} % more than the model says; used from now on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate %{percent:0} % less than the model says; used from now on.</source>
        <translation>
            <numerusform>Over one winter these bees ate %{percent:0} % less than the model says; used from now on.</numerusform>
            <numerusform>Over %n winters these bees ate %{percent:0} % less than the model says; used from now on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters these bees ate what the model says, within 2 %.</source>
        <translation>
            <numerusform>Over one winter these bees ate what the model says, within 2 %.</numerusform>
            <numerusform>Over %n winters these bees ate what the model says, within 2 %.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % faster than the model says; used from now on.</source>
        <translation>
            <numerusform>Over one winter they lost bees %{percent:0} % faster than the model says; used from now on.</numerusform>
            <numerusform>Over %n winters they lost bees %{percent:0} % faster than the model says; used from now on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Over %n winters they lost bees %{percent:0} % more slowly than the model says; used from now on.</source>
        <translation>
            <numerusform>Over one winter they lost bees %{percent:0} % more slowly than the model says; used from now on.</numerusform>
            <numerusform>Over %n winters they lost bees %{percent:0} % more slowly than the model says; used from now on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days later here than the climate says; used from now on.</source>
        <translation>
            <numerusform>Going by one spring, spring forage starts %{days:1} days later here than the climate says; used from now on.</numerusform>
            <numerusform>Going by %n springs, spring forage starts %{days:1} days later here than the climate says; used from now on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Going by %n springs, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</source>
        <translation>
            <numerusform>Going by one spring, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</numerusform>
            <numerusform>Going by %n springs, spring forage starts %{days:1} days earlier here than the climate says; used from now on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{used} used since.</source>
        <translation>
            <numerusform>The last look was one day before the day asked about; the model counts %{used} used since.</numerusform>
            <numerusform>The last look was %n days before the day asked about; the model counts %{used} used since.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The last look was %n days before the day asked about; the model counts %{gained} brought in since.</source>
        <translation>
            <numerusform>The last look was one day before the day asked about; the model counts %{gained} brought in since.</numerusform>
            <numerusform>The last look was %n days before the day asked about; the model counts %{gained} brought in since.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Syrup 3:2 by mass: %n warm days are left to ripen it.</source>
        <translation>
            <numerusform>Syrup 3:2 by mass: one warm day is left to ripen it.</numerusform>
            <numerusform>Syrup 3:2 by mass: %n warm days are left to ripen it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Syrup 2:1 by mass: %n warm days are left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</source>
        <translation>
            <numerusform>Syrup 2:1 by mass: one warm day is left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</numerusform>
            <numerusform>Syrup 2:1 by mass: %n warm days are left, less than the five weeks that 3:2 wants, so the bees should have less water to drive off.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from %{from}.</source>
        <translation>
            <numerusform>Before buying sugar: one %{comb} with about %{kg:amount} can come from %{from}.</numerusform>
            <numerusform>Before buying sugar: %n %{combs} with about %{kg:amount} can come from %{from}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Before buying sugar: %n %{combs} with about %{kg:amount} can come from another colony of the yard.</source>
        <translation>
            <numerusform>Before buying sugar: one %{comb} with about %{kg:amount} can come from another colony of the yard.</numerusform>
            <numerusform>Before buying sugar: %n %{combs} with about %{kg:amount} can come from another colony of the yard.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</source>
        <translation>
            <numerusform>%{weight} cannot well be: %n box of this size weighs %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</numerusform>
            <numerusform>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{number:1} lb, which is %{meant}?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{meant}?</source>
        <translation>
            <numerusform>%{weight} cannot well be: %n box of this size weighs %{most} when every %{comb} is full of honey. Is it %{meant}?</numerusform>
            <numerusform>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is it %{meant}?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is a box not written down?</source>
        <translation>
            <numerusform>%{weight} cannot well be: %n box of this size weighs %{most} when every %{comb} is full of honey. Is a box not written down?</numerusform>
            <numerusform>%{weight} cannot well be: %n boxes of this size weigh %{most} when every %{comb} is full of honey. Is a box not written down?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{taken} of honey cannot well come out of %n boxes of this size, which hold %{most} at the most. Is a box not written down?</source>
        <translation>
            <numerusform>%{taken} of honey cannot well come out of %n box of this size, which holds %{most} at the most. Is a box not written down?</numerusform>
            <numerusform>%{taken} of honey cannot well come out of %n boxes of this size, which hold %{most} at the most. Is a box not written down?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A feed that makes %{stores} of stores cannot be: %n boxes of this size hold %{most}. How much was it?</source>
        <translation>
            <numerusform>A feed that makes %{stores} of stores cannot be: %n box of this size holds %{most}. How much was it?</numerusform>
            <numerusform>A feed that makes %{stores} of stores cannot be: %n boxes of this size hold %{most}. How much was it?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The feeds of %n days make %{stores} of stores, and this hive holds %{most}. Is it right?</source>
        <translation>
            <numerusform>The feeds of %n day make %{stores} of stores, and this hive holds %{most}. Is it right?</numerusform>
            <numerusform>The feeds of %n days make %{stores} of stores, and this hive holds %{most}. Is it right?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{stores} of stores cannot well be left in %n boxes of this size, which hold %{most} at the most. Is it right?</source>
        <translation>
            <numerusform>%{stores} of stores cannot well be left in %n box of this size, which holds %{most} at the most. Is it right?</numerusform>
            <numerusform>%{stores} of stores cannot well be left in %n boxes of this size, which hold %{most} at the most. Is it right?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>An empty weight of %{weight} is much: %n boxes of this size weigh up to %{most} with all %{combs} drawn and no honey in them. Is it right?</source>
        <translation>
            <numerusform>An empty weight of %{weight} is much: %n box of this size weighs up to %{most} with all %{combs} drawn and no honey in it. Is it right?</numerusform>
            <numerusform>An empty weight of %{weight} is much: %n boxes of this size weigh up to %{most} with all %{combs} drawn and no honey in them. Is it right?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%{Board} should have been on before the hive was wrapped. Cold may lock the bees in for %n days on end, and most winters would starve them as they are: laid on now it still helps, if the bees can get at it.</source>
        <translation>
            <numerusform>%{Board} should have been on before the hive was wrapped. Cold may lock the bees in for a day, and most winters would starve them as they are: laid on now it still helps, if the bees can get at it.</numerusform>
            <numerusform>%{Board} should have been on before the hive was wrapped. Cold may lock the bees in for %n days on end, and most winters would starve them as they are: laid on now it still helps, if the bees can get at it.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end: what is missing goes on as %{board} before the hive is wrapped.</source>
        <translation>
            <numerusform>Cold may lock the bees in for a day: what is missing goes on as %{board} before the hive is wrapped.</numerusform>
            <numerusform>Cold may lock the bees in for %n days on end: what is missing goes on as %{board} before the hive is wrapped.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when nothing can be fed: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>Cold may lock the bees in for a day, when nothing can be fed: so enough is to be left in %{in:0} of 100 winters, not in 80.</numerusform>
            <numerusform>Cold may lock the bees in for %n days on end, when nothing can be fed: so enough is to be left in %{in:0} of 100 winters, not in 80.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cold may lock the bees in for %n days on end, when they reach only food that touches them: so enough is to be left in %{in:0} of 100 winters, not in 80.</source>
        <translation>
            <numerusform>Cold may lock the bees in for a day, when they reach only food that touches them: so enough is to be left in %{in:0} of 100 winters, not in 80.</numerusform>
            <numerusform>Cold may lock the bees in for %n days on end, when they reach only food that touches them: so enough is to be left in %{in:0} of 100 winters, not in 80.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Steps</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and one more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>%n miles</source>
        <translation>
            <numerusform>%n mile</numerusform>
            <numerusform>%n miles</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>YardPlan</name>
    <message numerus="yes">
        <source>%n to feed</source>
        <translation>
            <numerusform>%n to feed</numerusform>
            <numerusform>%n to feed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to unite</source>
        <translation>
            <numerusform>%n to unite</numerusform>
            <numerusform>%n to unite</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with honey to spare</source>
        <translation>
            <numerusform>%n with honey to spare</numerusform>
            <numerusform>%n with honey to spare</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to leave alone</source>
        <translation>
            <numerusform>%n to leave alone</numerusform>
            <numerusform>%n to leave alone</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not known enough</source>
        <translation>
            <numerusform>%n not known enough</numerusform>
            <numerusform>%n not known enough</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on course</source>
        <translation>
            <numerusform>%n on course</numerusform>
            <numerusform>%n on course</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n eating faster than planned</source>
        <translation>
            <numerusform>%n eating faster than planned</numerusform>
            <numerusform>%n eating faster than planned</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with the food out of reach</source>
        <translation>
            <numerusform>%n with the food out of reach</numerusform>
            <numerusform>%n with the food out of reach</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dwindling</source>
        <translation>
            <numerusform>%n dwindling</numerusform>
            <numerusform>%n dwindling</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with less than was thought</source>
        <translation>
            <numerusform>%n with less than was thought</numerusform>
            <numerusform>%n with less than was thought</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with a feed not written down</source>
        <translation>
            <numerusform>%n with a feed not written down</numerusform>
            <numerusform>%n with a feed not written down</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with more than is needed</source>
        <translation>
            <numerusform>%n with more than is needed</numerusform>
            <numerusform>%n with more than is needed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to be fed now</source>
        <translation>
            <numerusform>%n to be fed now</numerusform>
            <numerusform>%n to be fed now</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dead</source>
        <translation>
            <numerusform>%n dead</numerusform>
            <numerusform>%n dead</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n that must be weighed again</source>
        <translation>
            <numerusform>%n that must be weighed again</numerusform>
            <numerusform>%n that must be weighed again</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n being worked out</source>
        <translation>
            <numerusform>%n being worked out</numerusform>
            <numerusform>%n being worked out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colonies: %1.</source>
        <translation>
            <numerusform>One colony: %1.</numerusform>
            <numerusform>%n colonies: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n %{combs} (%1) from %2 to %3: %4</source>
        <translation>
            <numerusform>one %{comb} (%1) from %2 to %3: %4</numerusform>
            <numerusform>%n %{combs} (%1) from %2 to %3: %4</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bags of %1</source>
        <translation>
            <numerusform>one bag of %1</numerusform>
            <numerusform>%n bags of %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::BookActions</name>
    <message numerus="yes">
        <source>%n tables were written into %1.</source>
        <translation>
            <numerusform>One table was written into %1.</numerusform>
            <numerusform>%n tables were written into %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ColonyView</name>
    <message numerus="yes">
        <source>%n planned visits are past and neither ticked off nor skipped (page Feeding); until then they count as not made.</source>
        <translation>
            <numerusform>One planned visit is past and neither ticked off nor skipped (page Feeding); until then it counts as not made.</numerusform>
            <numerusform>%n planned visits are past and neither ticked off nor skipped (page Feeding); until then they count as not made.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n visits of your plan are still to come (page Feeding).</source>
        <translation>
            <numerusform>One visit of your plan is still to come (page Feeding).</numerusform>
            <numerusform>%n visits of your plan are still to come (page Feeding).</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::CombStrip</name>
    <message numerus="yes">
        <source>%n %{combs}, the lowest box %1 from side to side</source>
        <translation>
            <numerusform>one %{comb}, the lowest box %1 from side to side</numerusform>
            <numerusform>%n %{combs}, the lowest box %1 from side to side</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::FindDialog</name>
    <message numerus="yes">
        <source>%n found. Enter shows what is chosen.</source>
        <translation>
            <numerusform>One found. Enter shows it.</numerusform>
            <numerusform>%n found. Enter shows what is chosen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>More than %n; type more letters.</source>
        <translation>
            <numerusform>More than one; type more letters.</numerusform>
            <numerusform>More than %n; type more letters.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::HistoryDialog</name>
    <message numerus="yes">
        <source>%n steps would be taken back.</source>
        <translation>
            <numerusform>One step would be taken back.</numerusform>
            <numerusform>%n steps would be taken back.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n steps would be done again.</source>
        <translation>
            <numerusform>One step would be done again.</numerusform>
            <numerusform>%n steps would be done again.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ImportDialog</name>
    <message numerus="yes">
        <source>%n new</source>
        <translation>
            <numerusform>%n new</numerusform>
            <numerusform>%n new</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n changed</source>
        <translation>
            <numerusform>%n changed</numerusform>
            <numerusform>%n changed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n said already, left out</source>
        <translation>
            <numerusform>%n said already, left out</numerusform>
            <numerusform>%n said already, left out</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A whole book of %n entries. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.</source>
        <translation>
            <numerusform>A whole book of one entry. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.</numerusform>
            <numerusform>A whole book of %n entries. The book at hand becomes this one, no more and no less; that can be undone, and a backup is made first.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Nothing can be imported before this is put right in the file: %n faults.</source>
        <translation>
            <numerusform>Nothing can be imported before this is put right in the file: one fault.</numerusform>
            <numerusform>Nothing can be imported before this is put right in the file: %n faults.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::JobTableModel</name>
    <message numerus="yes">
        <source>hang in %n full %{combs} from %1 (its %2)</source>
        <translation>
            <numerusform>hang in one full %{comb} from %1 (its %2)</numerusform>
            <numerusform>hang in %n full %{combs} from %1 (its %2)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::MainWindow</name>
    <message numerus="yes">
        <source>One file at a time, please: only case files can be opened together. Nothing was done with these %n.</source>
        <translation>
            <numerusform>One file at a time, please: only case files can be opened together. Nothing was done with this one.</numerusform>
            <numerusform>One file at a time, please: only case files can be opened together. Nothing was done with these %n.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::PlacePage</name>
    <message numerus="yes">
        <source>%1, give or take %n days</source>
        <translation>
            <numerusform>%1, give or take a day</numerusform>
            <numerusform>%1, give or take %n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScaleLogDialog</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and one more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::ScalePlot</name>
    <message numerus="yes">
        <source>%n measurements</source>
        <translation>
            <numerusform>one measurement</numerusform>
            <numerusform>%n measurements</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::WeatherDialog</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and one more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>winterlarder::desk::YardListModel</name>
    <message numerus="yes">
        <source>%n colonies</source>
        <translation>
            <numerusform>One colony</numerusform>
            <numerusform>%n colonies</numerusform>
        </translation>
    </message>
</context>
</TS>
