// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/words.h"

#include "text/contexts.h"

#include <algorithm>

namespace winterlarder::desk::words {

namespace {

using text::AskedNumber;

QString forageDate(const AnsweredColony& colony, text::NumberForm form) {
    const auto& forage = colony.answer.advice.season.forage;
    return forage ? form(AskedNumber::Forage, date(colony.question.winter.date(forage->day))) : QString();
}

QString storesSaid(const AnsweredColony& colony, text::NumberForm form) {
    return form(AskedNumber::Stores, wholeKilograms(colony.answer.advice.estimate->mean));
}

QString needSaid(const AnsweredColony& colony, text::NumberForm form) {
    return form(AskedNumber::Need, wholeKilograms(*colony.answer.advice.need));
}

QString cannotSay(const advice::Advice& advice) {
    if (advice.refusals.empty()) return say::WindowWords::tr("It cannot be said yet.");
    switch (advice.refusals.front()) {
    case advice::RefusalKind::FarFromStations: return say::WindowWords::tr("It cannot be said: no weather station is near enough to speak for this place.");
    case advice::RefusalKind::NoColony: return say::WindowWords::tr("There are no bees to winter.");
    case advice::RefusalKind::BeesUnknown: return say::WindowWords::tr("It cannot be said until the bees are counted: how many combs do they cover?");
    case advice::RefusalKind::StoresUnknown: return say::WindowWords::tr("It cannot be said until the stores are known: look at the combs, or heft or weigh the hive.");
    case advice::RefusalKind::OutOfSeason: return say::WindowWords::tr("It is too early: winter stores are judged from August on.");
    case advice::RefusalKind::SeasonNotDerivable: return say::WindowWords::tr("It cannot be said: this place's season cannot be told from its climate. Give the dates.");
    case advice::RefusalKind::AfterForage: return say::WindowWords::tr("The bees have forage again: this winter is over.");
    }
    return {};
}

QString harvestSentence(const AnsweredColony& colony, text::NumberForm form) {
    const auto& advice = colony.answer.advice;
    const auto combs = static_cast<int>(advice.harvest->combs.size());
    if (combs == 0)
        return say::WindowWords::tr("Up to %1 of honey may come off: about %2 in the hive, %3 needed until the first forage around %4.")
            .arg(form(AskedNumber::Spare, kilograms(advice.harvest->upTo)), storesSaid(colony, form), needSaid(colony, form), forageDate(colony, form));
    if (advice.harvest->upTo - advice.harvest->combsHold < Mass(0.1)) {
        const QString all = combs == 1
            ? say::WindowWords::tr("One comb may come off (%1): about %2 in the hive, %3 needed until the first forage around %4.")
            : say::WindowWords::tr("%n combs may come off (%1): about %2 in the hive, %3 needed until the first forage around %4.", nullptr, combs);
        return all.arg(form(AskedNumber::CombsOff, kilograms(advice.harvest->combsHold)), storesSaid(colony, form), needSaid(colony, form), forageDate(colony, form));
    }
    const QString said = combs == 1
        ? say::WindowWords::tr("One comb may come off (%1 of the %2 to spare): about %3 in the hive, %4 needed until the first forage around %5.")
        : say::WindowWords::tr("%n combs may come off (%1 of the %2 to spare): about %3 in the hive, %4 needed until the first forage around %5.", nullptr, combs);
    return said.arg(form(AskedNumber::CombsOff, kilograms(advice.harvest->combsHold)), form(AskedNumber::Spare, kilograms(advice.harvest->upTo)), storesSaid(colony, form), needSaid(colony, form), forageDate(colony, form));
}

// On average it would do; what is fed covers that nobody knows the stores so well.
QString feedToBeSafe(const AnsweredColony& colony, text::NumberForm form) {
    const auto& advice = colony.answer.advice;
    const auto& feed = *advice.feed;
    const QString there = storesSaid(colony, form), needed = needSaid(colony, form), forage = forageDate(colony, form);
    if (feed.syrup.sugar <= Mass(0.05))
        return say::WindowWords::tr("Feed %1 of fondant to be safe: about %2 in the hive for the %3 needed until the first forage around %4, but known only roughly.")
            .arg(form(AskedNumber::Fondant, kilograms(feed.fondant)), there, needed, forage);
    return say::WindowWords::tr("Feed %1 of sugar as syrup to be safe: about %2 in the hive for the %3 needed until the first forage around %4, but known only roughly.")
        .arg(form(AskedNumber::Sugar, kilograms(feed.syrup.sugar)), there, needed, forage);
}

QString feedSentence(const AnsweredColony& colony, text::NumberForm form) {
    const auto& advice = colony.answer.advice;
    const auto& feed = *advice.feed;
    if (*advice.need <= advice.estimate->mean) return feedToBeSafe(colony, form);
    const QString lastDay = feed.lastDay ? form(AskedNumber::LastDay, date(colony.question.winter.date(*feed.lastDay))) : QString();
    const bool syrup = feed.syrup.sugar > Mass(0.05);
    const bool fondant = feed.fondant > Mass(0.05);
    if (syrup && fondant)
        return say::WindowWords::tr("Feed %1 of sugar as syrup by %2, then %3 of fondant: about %4 in the hive, %5 needed until the first forage around %6.")
            .arg(form(AskedNumber::Sugar, kilograms(feed.syrup.sugar)), lastDay, form(AskedNumber::Fondant, kilograms(feed.fondant)), storesSaid(colony, form), needSaid(colony, form), forageDate(colony, form));
    if (fondant)
        return say::WindowWords::tr("Feed %1 of fondant: about %2 in the hive, %3 needed until the first forage around %4.")
            .arg(form(AskedNumber::Fondant, kilograms(feed.fondant)), storesSaid(colony, form), needSaid(colony, form), forageDate(colony, form));
    if (lastDay.isEmpty())
        return say::WindowWords::tr("Feed %1 of sugar as syrup: about %2 in the hive, %3 needed until the first forage around %4.")
            .arg(form(AskedNumber::Sugar, kilograms(feed.syrup.sugar)), storesSaid(colony, form), needSaid(colony, form), forageDate(colony, form));
    return say::WindowWords::tr("Feed %1 of sugar as syrup by %2: about %3 in the hive, %4 needed until the first forage around %5.")
        .arg(form(AskedNumber::Sugar, kilograms(feed.syrup.sugar)), lastDay, storesSaid(colony, form), needSaid(colony, form), forageDate(colony, form));
}

const advice::Option* find(const advice::Advice& advice, advice::OptionKind kind) {
    const auto found = std::find_if(advice.options.begin(), advice.options.end(), [kind](const auto& each) { return each.kind == kind; });
    return found == advice.options.end() ? nullptr : &*found;
}

QString about(const std::string& input) {
    if (input == "stores") return say::WindowWords::tr("how much is in the hive");
    if (input == "bees") return say::WindowWords::tr("how many bees there are");
    if (input == "forage") return say::WindowWords::tr("when the first forage comes");
    return say::WindowWords::tr("what the autumn still brings");
}

QString ofVerdict(const AnsweredColony& colony, text::NumberForm form) {
    const auto& advice = colony.answer.advice;
    if (advice.verdict == advice::Verdict::CannotSay || !advice.estimate || !advice.need) return cannotSay(advice);
    if (advice.verdict == advice::Verdict::Harvest && advice.harvest) return harvestSentence(colony, form);
    if (advice.verdict == advice::Verdict::Feed && advice.feed) return feedSentence(colony, form);
    if (advice.verdict == advice::Verdict::Unite)
        return say::WindowWords::tr("Too few bees to winter alone, about %1: unite it with a healthy neighbour while it is mild.")
            .arg(advice.bees ? form(AskedNumber::Bees, bees(*advice.bees)) : QString());
    return say::WindowWords::tr("Leave it alone: about %1 in the hive, %2 needed until the first forage around %3.")
        .arg(storesSaid(colony, form), needSaid(colony, form), forageDate(colony, form));
}

} // namespace

QString answerSentence(const AnsweredColony& colony, text::NumberForm form) {
    const QString words = ofVerdict(colony, form);
    if (!advice::setsAside(colony.answer.advice)) return words;
    return say::WindowWords::tr("Something written down is in doubt: settle that first, see Why. Until then: %1").arg(words);
}

namespace {

// What goes to neighbours is said before what is left to take.
QString givenLine(const AnsweredColony& colony, text::NumberForm form) {
    QStringList lines;
    for (const auto& gift : colony.answer.advice.gifts)
        if (gift.from == colony.question.colony)
            lines << say::WindowWords::tr("First %2, who is short, is to have %1 of it in combs.").arg(form(AskedNumber::Given, kilograms(gift.honey)), QString::fromStdString(gift.to));
    return lines.join(QLatin1Char(' '));
}

QString ownRisk(const AnsweredColony& colony, text::NumberForm form) {
    const auto& advice = colony.answer.advice;
    if (!advice.touchReserve || !advice.runOut) return {};
    const QString reserve = form(AskedNumber::Reserve, wholeKilograms(colony.question.reserve));
    const QString touches = form(AskedNumber::TouchesAlone, ofHundred(*advice.touchReserve)), runsOut = form(AskedNumber::RunsOutAlone, ofHundred(*advice.runOut));
    const QString alone = say::WindowWords::tr("Left alone it touches the %1 reserve in %2 and runs out in %3 of 100 simulated winters.")
                              .arg(reserve, touches, runsOut);
    const bool take = advice.verdict == advice::Verdict::Harvest;
    const auto* chosen = find(advice, take ? advice::OptionKind::TakeNow : advice::OptionKind::Feed);
    if (!chosen || advice.verdict == advice::Verdict::Leave) return alone;
    const QString asAdvised = form(AskedNumber::TouchesAsAdvised, ofHundred(chosen->touchReserve)), outAsAdvised = form(AskedNumber::RunsOutAsAdvised, ofHundred(chosen->runOut));
    if (take)
        return say::WindowWords::tr("Left alone it touches the %1 reserve in %2 and runs out in %3 of 100 simulated winters; with %4 off it touches it in %5 and runs out in %6.")
            .arg(reserve, touches, runsOut, form(AskedNumber::Spare, kilograms(chosen->amount)),
                 asAdvised, outAsAdvised);
    return say::WindowWords::tr("Left alone it touches the %1 reserve in %2 and runs out in %3 of 100 simulated winters; fed, it touches it in %4 and runs out in %5.")
        .arg(reserve, touches, runsOut, asAdvised, outAsAdvised);
}

} // namespace

QString riskLine(const AnsweredColony& colony, text::NumberForm form) {
    const QString given = givenLine(colony, form), risk = ownRisk(colony, form);
    return given.isEmpty() ? risk : risk + QLatin1Char(' ') + given;
}

QString lookLine(const AnsweredColony& colony, text::NumberForm form) {
    const auto& advice = colony.answer.advice;
    if (advice.verdict == advice::Verdict::CannotSay) return {};
    const auto& another = advice.anotherLook;
    const bool mayFlow = colony.question.flowStrength <= 0 && colony.question.season.lastIncome && colony.question.asOf < colony.question.season.lastIncome->day;
    if (mayFlow && (!another.worthIt || !another.which))
        return say::WindowWords::tr("Another look at combs or bees is not worth it. But nothing is counted that the autumn may still bring: if the bees do find something, say so in the yard's Place.");
    if (!another.worthIt || !another.which)
        return say::WindowWords::tr("Another look is not worth it: no likely count of bees or stores would change this.");
    if (another.narrowsFromKg <= another.narrowsToKg)
        return say::WindowWords::tr("Another look is worth it: this turns on %1. %2.").arg(about(another.about), look(*another.which));
    return say::WindowWords::tr("Another look is worth it: this turns on %1. %2: what is missing or spare, known within %3 now, would be known within %4.")
        .arg(about(another.about), look(*another.which), form(AskedNumber::KnownNow, kilograms(Mass(another.narrowsFromKg))), form(AskedNumber::KnownThen, kilograms(Mass(another.narrowsToKg))));
}

} // namespace winterlarder::desk::words
