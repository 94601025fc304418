// SPDX-License-Identifier: GPL-3.0-or-later
// What stands under the headline: the target, what is there, what comes of it in a hundred winters.
#include "text/words.h"

#include "text/contexts.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::text {

using advice::Advice;
using advice::DecidedBy;

namespace {

//! The gross weight, and of what empty hive where nobody weighed it.
QString grossOf(const advice::Target& target, const WordStyle& style) {
    const QString weight = amount(target.gross, style);
    const QString gross = target.withoutSuper ? say::Words::tr("without your super %1", "weight").arg(weight) : weight;
    return target.tareGiven ? say::Words::tr("%1 with hive and bees").arg(gross)
                            : say::Words::tr("%1 with hive and bees, the empty hive taken as %2")
                                  .arg(gross, amount(target.tare, style));
}

} // namespace

QString targetSentence(const Advice& advice, const WordStyle& style, NumberForm form) {
    if (!advice.target || advice.decidedBy == DecidedBy::NoQueen) return {}; // it has no winter of its own
    const auto& target = *advice.target;
    const QString combs = fullCombs(target.combs, style);
    const QString gross = grossOf(target, style);
    if (target.date == advice.asOf)
        return say::Words::tr("Today it should hold about %1 of stores: %2, %3.", "stores, full combs, weight")
            .arg(form(AskedNumber::Target, amount(target.stores, style)), combs, gross);
    return say::Words::tr("For winter, on %1: about %2 of stores, %3, %4.", "day, stores, full combs, weight")
        .arg(date(target.date, style), form(AskedNumber::Target, amount(target.stores, style)), combs, gross);
}

QString thereSentence(const Advice& advice, const WordStyle& style, NumberForm form) {
    if (!advice.estimate) return {};
    if (advice.decidedBy == DecidedBy::Contradiction && advice.bees)
        return say::Words::tr(
                   "There now: %1 bees; what stores there are nobody can say before one of the two is found wrong.")
            .arg(form(AskedNumber::Bees, bees(*advice.bees, style)));
    const QString there = form(AskedNumber::Stores, amount(advice.estimate->spread, style));
    if (advice.alone && advice.bees && advice.plan)
        return say::Words::tr("There now: %1 of stores, %2 bees. With %3 united onto it: %4 and %5 bees.",
                              "stores, bees, colony, stores, bees")
            .arg(amount(advice.alone->stores, style), bees(advice.alone->bees, style),
                 advice.plan->uniteWith.empty() ? say::Words::tr("the other")
                                                : QString::fromStdString(advice.plan->uniteWith),
                 there, form(AskedNumber::Bees, bees(*advice.bees, style)));
    if (!advice.bees) return say::Words::tr("There now: %1 of stores.").arg(there);
    return say::Words::tr("There now: %1 of stores, %2 bees.")
        .arg(there, form(AskedNumber::Bees, bees(*advice.bees, style)));
}

namespace {

const advice::Option* advisedOption(const Advice& advice) {
    const auto kind =
        advice.verdict == advice::Verdict::Harvest ? advice::OptionKind::TakeNow : advice::OptionKind::Feed;
    const auto found = std::find_if(advice.options.begin(), advice.options.end(),
                                    [kind](const auto& each) { return each.kind == kind; });
    return found == advice.options.end() || (kind == advice::OptionKind::Feed && !advice.feed) ? nullptr : &*found;
}

bool takesWhatNeverCounted(const Advice& advice) {
    return advice.verdict == advice::Verdict::Harvest && advice.harvest && advice.harvest->fromStores <= Mass(0);
}

// In summer the sugar for winter is still to come. %1 the reserve, %2 kept, %3 runs out.
QString aloneSentence(const Advice& advice) {
    if (advice.phase == advice::Phase::Summer)
        return say::Words::tr(
            "If nothing were fed later, in %2 simulated winters %1 or more would be left when spring forage starts; in %3 the food would run out.");
    return say::Words::tr(
        "Left as it is, in %2 simulated winters %1 or more are left when spring forage starts; in %3 the food runs out.");
}

// %1 the sentence before, %2 kept, %3 runs out.
QString thenSentence(const Advice& advice) {
    switch (advice.decidedBy) {
    case DecidedBy::SummerHarvest:
        return say::Words::tr(
            "%1 With the honey off and nothing fed later, so much is left in %2, and the food runs out in %3.");
    case DecidedBy::Harvest:
        return say::Words::tr("%1 With the honey off, so much is left in %2, and the food runs out in %3.");
    case DecidedBy::Feed:
        if (advice.expectedLater && advice.expectedLater->fondant.high > Mass(0))
            return say::Words::tr(
                "%1 Fed as advised and with no fondant in winter, so much is left in %2, and the food runs out in %3.");
        return say::Words::tr("%1 Fed as advised, so much is left in %2, and the food runs out in %3.");
    default:
        return say::Words::tr("%1 With this feed and no other, so much is left in %2, and the food runs out in %3.");
    }
}

} // namespace

namespace {

constexpr double worthExplaining = 0.03; // a share below what is aimed at

// "80 of 100", with why where it lies between what is aimed at with and without long cold.
QString aimedAt(const Advice& advice, const WordStyle& style) {
    const QString aimed = ofHundred({1 - advice.shortRisk, 0}, style);
    const bool between = aimed != ofHundred({0.8, 0}, style) && aimed != ofHundred({0.9, 0}, style);
    const bool lockedIn = std::any_of(advice.reasons.begin(), advice.reasons.end(),
                                      [](const advice::Remark& reason) { return reason.id == "locked-in-long"; });
    return between && lockedIn && advice.lockedInDays
               ? say::Words::tr("%1 (between 80 and 90, for cold may lock the bees in for %2 days)")
                     .arg(aimed, count(*advice.lockedInDays, style))
               : aimed;
}

// Why fewer winters end well than are aimed at: the combs hold no more, or the stores are not known that well.
QString whyNotAsAimed(const Advice& advice, const advice::Option& advised, const WordStyle& style) {
    if (advice.decidedBy != DecidedBy::Feed || !advice.feed || !advice.shortAsPlanned) return {};
    const double most = advice.shortRisk + worthExplaining;
    const bool full = advice.room && *advice.room - advice.feed->stores < kilograms(1.5);
    const QString aimed = aimedAt(advice, style);
    if (advice.shortAsPlanned->share > most && !full) return {};
    if (full && advice.shortAsPlanned->share > most)
        return worded(say::Words::tr("%1 are aimed at; the %{combs} have no room for more."), style).arg(aimed);
    if (advised.touchReserve.share <= most) return {};
    return say::Words::
        tr("%1 are aimed at; it is fewer because what is there now is not known well. If it is as thought, it is %2.")
            .arg(aimed, ofHundred(advice.shortAsPlanned->others(), style));
}

} // namespace

QString riskSentence(const Advice& advice, const WordStyle& style, NumberForm form) {
    if (!advice.runOut || !advice.touchReserve || advice.decidedBy == DecidedBy::Contradiction) return {};
    if (advice.decidedBy == DecidedBy::NoQueen)
        return say::Words::tr(
            "What is told of winters here counts stores only: without a queen it does not live through winter, however much there is.");
    const QString reserve = form(AskedNumber::Reserve, amount(advice.reserve, style));
    const QString alone = aloneSentence(advice).arg(
        reserve, form(AskedNumber::KeptAlone, ofHundred(advice.touchReserve->others(), style)),
        form(AskedNumber::RunsOutAlone, ofHundred(*advice.runOut, style)));
    const auto* advised = advisedOption(advice);
    if (!advised) return alone;
    if (takesWhatNeverCounted(advice))
        return say::Words::tr("%1 Taking the super off changes nothing of that, for its honey was not counted.")
            .arg(alone);
    const QString then = thenSentence(advice).arg(
        alone, form(AskedNumber::KeptAsAdvised, ofHundred(advised->touchReserve.others(), style)),
        form(AskedNumber::RunsOutAsAdvised, ofHundred(advised->runOut, style)));
    const QString why = whyNotAsAimed(advice, *advised, style);
    return why.isEmpty() ? then : then + QLatin1Char(' ') + why;
}

QString fitsSentence(const Advice& advice, const WordStyle& style) {
    if (!advice.capacity || !advice.target || !advice.untilTarget || !advice.feed) return {};
    const auto* fed = advisedOption(advice);
    const Mass used = advice.untilTarget->eaten.typical - advice.untilTarget->found.typical;
    if (!fed || fed->storesAfter <= *advice.capacity || used <= Mass(0)) return {};
    return worded(
               say::Words::tr(
                   "The %{combs} hold %1 when winter begins: of the %2, which are today's stores and all the feed, about %3 are eaten by %4.",
                   "capacity, stores after, eaten, day"),
               style)
        .arg(amount(*advice.capacity, style), amount(fed->storesAfter, style), amount(used, style),
             date(advice.target->date, style));
}

QString laterSentence(const advice::ExpectedLater& later, const WordStyle& style) {
    const bool sugar = later.sugar.high > Mass(0);
    const auto& spread = sugar ? later.sugar : later.fondant;
    const QString until = date(later.until, style);
    const QString when = later.from == later.until
                             ? say::Words::tr("by %1", "a day").arg(until)
                             : say::Words::tr("from %1 to %2", "two days").arg(date(later.from, style), until);
    const QString low = amount(spread.low, style), high = amount(spread.high, style),
                  typical = amount(spread.typical, style);
    if (typical == amount(Mass(0), style))
        return (sugar ? say::Words::tr("Up to %1 of sugar may be wanted %2, more likely none.")
                      : say::Words::tr("Up to %1 of fondant may be wanted %2, in most winters none."))
            .arg(high, when);
    if (low == amount(Mass(0), style))
        return (sugar ? say::Words::tr("Likely to be fed %1: up to %2 of sugar, more likely %3.")
                      : say::Words::tr("Likely to be wanted %1: up to %2 of fondant, more likely %3."))
            .arg(when, high, typical);
    return (sugar ? say::Words::tr("Likely to be fed %1: %2 to %3 of sugar, more likely %4.")
                  : say::Words::tr("Likely to be wanted %1: %2 to %3 of fondant, more likely %4."))
        .arg(when, low, high, typical);
}

} // namespace winterlarder::text
