// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/words.h"

#include "text/contexts.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::text {

namespace {

using advice::Advice;
using advice::DecidedBy;

//! "one full comb", "2.5 full combs"
QString fullCombs(double count, const WordStyle& style) {
    if (count == 1) return worded(say::Words::tr("one full %{comb}"), style);
    return worded(say::Words::tr("%1 full %{combs}"), style)
        .arg(number(count, count == std::floor(count) ? 0 : 1, style));
}

// The sentence of what to do next, by the rule that gave the verdict.
class Headline {
public:
    Headline(const Advice& advice, const WordStyle& style, NumberForm form) : a_(advice), style_(style), form_(form) {}

    //! What the yard's plan does comes first.
    QString words() const {
        QStringList first = movedCombs();
        const bool left = a_.decidedBy == DecidedBy::Enough || a_.decidedBy == DecidedBy::Full;
        if (left && !first.isEmpty()) return first.join(QLatin1Char(' ')) + again();
        QString words = decided();
        if (!words.isEmpty()) words.front() = words.front().toUpper();
        first << words;
        return first.join(QLatin1Char(' '));
    }

private:
    QString decided() const {
        switch (a_.decidedBy) {
        case DecidedBy::CannotSay: return say::Words::tr("This cannot be said: see the reasons.");
        case DecidedBy::Disease: return disease();
        case DecidedBy::NoFoodInReach:
            return say::Words::tr("The bees cannot reach their food: %1, then weigh.").arg(feed());
        case DecidedBy::ActNow:
            return say::Words::tr("There may be food for less than three weeks: %1, then weigh.").arg(feed());
        case DecidedBy::NoQueen: return withFeed(noQueen());
        case DecidedBy::Contradiction: return contradiction();
        case DecidedBy::Heft: return heft();
        case DecidedBy::Weak: return withFeed(weak());
        case DecidedBy::SummerPortion:
            return say::Words::tr("Too little to be safe until the next look: %1.").arg(feed()) + again();
        case DecidedBy::SummerHarvest: return harvest() + again();
        case DecidedBy::SummerSafe: return say::Words::tr("Leave it: there is enough until the next look.") + again();
        case DecidedBy::Full: return say::Words::tr("The hive is full: leave it and feed nothing.");
        case DecidedBy::Feed: return feed() + QLatin1Char('.');
        case DecidedBy::SmallPortions: return portions();
        case DecidedBy::Board: return say::Words::tr("Too late for syrup: %1, and wrap the hive.").arg(feed());
        case DecidedBy::LateBoard:
            return say::Words::tr("Late, but better than nothing: %1, and wrap the hive.").arg(feed());
        case DecidedBy::WinterVisit: return say::Words::tr("Stores run low: %1.").arg(feed()) + again();
        case DecidedBy::ShortLater: return say::Words::tr("Nothing is fed today.") + later() + again();
        case DecidedBy::Harvest: return harvest();
        case DecidedBy::Enough: return say::Words::tr("Leave it as it is.") + again();
        }
        return {};
    }

    QStringList movedCombs() const {
        QStringList said;
        if (!a_.plan) return said;
        if (a_.verdict != advice::Verdict::Unite && a_.plan->uniteBy)
            said << say::Words::tr("Unite %1 onto it %2.").arg(named(a_.plan->uniteWith), by(*a_.plan->uniteBy));
        for (const auto& gift : a_.plan->given)
            said << say::Words::tr("Give %1 (%2) to %3.", "combs, their places, colony")
                        .arg(fullCombs(gift.combs.size()), places(gift), named(gift.to));
        for (const auto& gift : a_.plan->received)
            said << say::Words::tr("Hang in %1 from %2 (its %3).", "combs, colony, their places")
                        .arg(fullCombs(gift.combs.size()), named(gift.from), places(gift));
        return said;
    }
    static QString named(const std::string& colony) {
        return colony.empty() ? say::Words::tr("another colony of the yard") : QString::fromStdString(colony);
    }
    QString fullCombs(std::size_t count) const { return text::fullCombs(static_cast<double>(count), style_); }
    QString places(const advice::CombGift& gift) const {
        return combPlaces(gift.places, static_cast<std::size_t>(gift.boxes), style_);
    }

    QString weak() const {
        if (a_.plan && a_.plan->uniteBy)
            return say::Words::tr("Too few bees to winter alone: unite it with %1 %2.")
                .arg(named(a_.plan->uniteWith), by(a_.unite->by));
        return say::Words::tr("Too few bees to winter alone: unite it with a healthy colony %1.").arg(by(a_.unite->by));
    }
    QString noQueen() const {
        if (a_.plan && a_.plan->uniteBy)
            return say::Words::tr("No sign of a queen: make sure she is gone, then unite the bees with %1 %2.")
                .arg(named(a_.plan->uniteWith), by(a_.unite->by));
        return say::Words::tr(
                   "No sign of a queen: make sure she is gone, then unite the bees with a queenright colony %1.")
            .arg(by(a_.unite->by));
    }

    QString on(Date day) const {
        return day == a_.asOf ? say::Words::tr("today") : say::Words::tr("on %1", "a day").arg(date(day, style_));
    }
    QString by(Date last) const {
        return last == a_.asOf
                   ? say::Words::tr("today")
                   : say::Words::tr("soon, on a warm evening, at the latest on %1", "a day").arg(date(last, style_));
    }
    QString kg(Mass mass) const { return amount(mass, style_); }

    //! "feed 6 kg of sugar as syrup 3:2, the first of 2 visits today"
    QString feed() const {
        return a_.superOffFirst ? say::Words::tr("take your super off, then %1").arg(fed()) : fed();
    }

    QString fed() const {
        if (!a_.feed) return say::Words::tr("feed it");
        const auto& plan = *a_.feed;
        int visits = 0;
        for (const auto& visit : plan.visits) visits += visit.kind != feeding::VisitKind::Check;
        const QString first = plan.visits.empty() ? on(*a_.asOf) : on(plan.visits.front().date);
        if (plan.fondant > Mass(0)) return laidOn().arg(form_(AskedNumber::Fondant, kg(plan.fondant)), first);
        const QString ratio = QString::fromStdString(plan.ratio.printed),
                      sugar = form_(AskedNumber::Sugar, kg(plan.syrup.sugar));
        if (visits == 1)
            return say::Words::tr("feed %1 of sugar as syrup %2 %3", "amount, ratio, day").arg(sugar, ratio, first);
        return say::Words::tr("feed %1 of sugar as syrup %2, the first of %3 visits %4")
            .arg(sugar, ratio)
            .arg(visits)
            .arg(first);
    }

    //! %1 the amount, %2 the day.
    QString laidOn() const {
        if (a_.decidedBy == DecidedBy::Board && style_.wording.candyBoard)
            return say::Words::tr("lay a candy board of %1 on the bees %2");
        return say::Words::tr("lay %1 of fondant on the bees %2");
    }

    QString portions() const {
        const bool past = a_.season.syrupDeadline && a_.target && a_.target->day > a_.season.syrupDeadline->day;
        return past
                   ? say::Words::tr(
                         "Too late for much syrup: %1, in small warm portions over the cluster, as long as they are taken.")
                         .arg(feed())
                   : say::Words::tr("%1, in small portions over the cluster, on days that are warm enough.")
                         .arg(feed());
    }

    QString withFeed(const QString& words) const {
        return a_.feed ? say::Words::tr("%1 Until then: %2.").arg(words, feed()) : words;
    }

    QString again() const {
        if (!a_.nextLook) return {};
        const QString day = on(a_.nextLook->date);
        if (a_.nextLook->what == advice::NextLookAt::QueenCells) return {};
        if (a_.nextLook->what == advice::NextLookAt::CountMites)
            return QLatin1Char(' ') + say::Words::tr("Count the mites, and look again %1.").arg(day);
        return QLatin1Char(' ') + say::Words::tr("Weigh it %1.").arg(day);
    }

    QString later() const {
        if (!a_.expectedLater || a_.expectedLater->fondant.high <= Mass(0)) return {};
        const auto& fondant = a_.expectedLater->fondant;
        if (kg(fondant.low) == kg(Mass(0)))
            return QLatin1Char(' ') + say::Words::tr("Later up to %1 of fondant may be wanted.").arg(kg(fondant.high));
        return QLatin1Char(' ') + say::Words::tr("Later %1 to %2 of fondant are likely to be wanted.")
                                      .arg(kg(fondant.low), kg(fondant.high));
    }

    QString disease() const {
        return withFeed(say::Words::tr(
            "Signs of disease: close the hive, narrow the entrance, move nothing, call the bee inspector."));
    }

    QString contradiction() const {
        const auto& estimate = *a_.estimate;
        const QString words =
            say::Words::tr(
                "%1 and %2 contradict each other: weigh again before anything else, and check the empty weight, the roof, stones, and whether a super was left out.")
                .arg(saidBy(estimate.firstContradicting), saidBy(estimate.secondContradicting));
        return a_.feed ? say::Words::tr("%1 Both are short, so this does no harm: %2.").arg(words, feed()) : words;
    }

    //! "the weight on the scale (5 kg)"
    QString saidBy(stores::EvidenceKind kind) const {
        for (const auto& share : a_.estimate->shares)
            if (share.evidence.kind == kind)
                return say::Words::tr("%1 (%2)", "evidence and what it says")
                    .arg(evidence(stores::idOf(kind), style_), kg(std::max(Mass(0), share.evidence.typical)));
        return evidence(stores::idOf(kind), style_);
    }

    QString heft() const {
        if (a_.feed) return say::Words::tr("It is light: %1, then weigh both sides.").arg(feed());
        if (a_.heft == stores::HeftWord::Heavy) return say::Words::tr("It is heavy: leave it.");
        return say::Words::tr("A heft decides neither honey nor feed: weigh both sides.");
    }

    QString harvest() const {
        if (!a_.lookFirst) return taken() + QLatin1Char('.');
        const QString first = a_.anotherLook.which == advice::Look::Weigh ? say::Words::tr("Weigh both sides first")
                              : a_.anotherLook.which == advice::Look::CountCombs
                                  ? worded(say::Words::tr("Count the full %{combs} first"), style_)
                                  : say::Words::tr("Count the bees first");
        if (a_.anotherLook.about == "bees")
            return say::Words::tr("%1. If there are about as many as is thought, %2.", "look, take")
                .arg(first, taken());
        return say::Words::tr("%1. If that bears out about %2 of stores, %3.", "look, stores, take")
            .arg(first, kg(a_.estimate->spread.typical), taken());
    }

    //! "take 6 kg of honey in 3 combs"
    QString taken() const {
        const auto& harvest = *a_.harvest;
        const QString honey = kg(harvest.upTo);
        if (harvest.combs.empty())
            return worded(say::Words::tr("take about %1 of honey, in whole capped %{combs}"), style_)
                .arg(form_(AskedNumber::Spare, honey));
        const QString combs = form_(AskedNumber::CombsOff, honey);
        if (harvest.combs.size() == 1)
            return worded(say::Words::tr("take one %{comb} with %1 of honey"), style_).arg(combs);
        if (harvest.wholeSupers == 1)
            return worded(say::Words::tr("take the super off: %1 of honey in %2 %{combs}"), style_)
                .arg(combs)
                .arg(harvest.combs.size());
        if (harvest.wholeSupers > 1)
            return worded(say::Words::tr("take %1 supers off: %2 of honey in %3 %{combs}"), style_)
                .arg(harvest.wholeSupers)
                .arg(combs)
                .arg(harvest.combs.size());
        return worded(say::Words::tr("take %1 of honey in %2 %{combs}"), style_).arg(combs).arg(harvest.combs.size());
    }

    const Advice& a_;
    const WordStyle& style_;
    const NumberForm form_;
};

} // namespace

QString headline(const Advice& advice, const WordStyle& style, NumberForm form) {
    const QString words = Headline(advice, style, form).words();
    if (advice.verdict == advice::Verdict::CannotSay || !advice::setsAside(advice)) return words;
    return say::Words::tr("Something written down is in doubt: settle that first, see the reasons. Until then: %1")
        .arg(words);
}

namespace {

//! The gross weight, and of what empty hive where nobody weighed it.
QString grossOf(const advice::Target& target, const WordStyle& style) {
    const QString gross = amount(target.gross, style);
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
