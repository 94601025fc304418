// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/words.h"

#include "text/contexts.h"
#include "text/remarks.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::text {

QString fullCombs(double count, const WordStyle& style) {
    if (count == 1) return worded(say::Words::tr("one full %{comb}"), style);
    return worded(say::Words::tr("%1 full %{combs}"), style)
        .arg(number(count, count == std::floor(count) ? 0 : 1, style));
}

namespace {

using advice::Advice;
using advice::DecidedBy;

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
        case DecidedBy::CannotSay: return cannotSay();
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
            return say::Words::tr("Too little to be safe until the next look: %1.").arg(feed()) + later() + again();
        case DecidedBy::SummerHarvest: return harvest() + again();
        case DecidedBy::SummerSafe:
            return say::Words::tr("Leave it: there is enough until the next look.") + later() + again();
        case DecidedBy::Full: return say::Words::tr("The hive is full: leave it and feed nothing.");
        case DecidedBy::Feed: return feed() + QLatin1Char('.') + notEnough();
        case DecidedBy::SmallPortions: return portions() + restInCombs();
        case DecidedBy::Board:
            return say::Words::tr("Too late for syrup: %1, and wrap the hive.").arg(feed()) + restInCombs();
        case DecidedBy::LateBoard:
            return say::Words::tr("Late, but better than nothing: %1, and wrap the hive.").arg(feed());
        case DecidedBy::WinterVisit: return say::Words::tr("Stores run low: %1.").arg(feed()) + again();
        case DecidedBy::ShortLater: return shortLater() + later() + again();
        case DecidedBy::Harvest: return harvest();
        case DecidedBy::Enough:
            return (moreIsThere() ? say::Words::tr("Leave it as it is: no honey is taken now.")
                                  : say::Words::tr("Leave it as it is.")) +
                   again();
        }
        return {};
    }

    //! What is to be found out before anything can be said, where one thing is.
    QString cannotSay() const {
        if (a_.refusals == std::vector{advice::RefusalKind::BeesUnknown})
            return worded(say::Words::tr("To answer, first: count the %{combs} covered with bees, or the seams."),
                          style_);
        if (a_.refusals == std::vector{advice::RefusalKind::StoresUnknown})
            return worded(say::Words::tr("To answer, first: weigh both sides, or look at the %{combs}."), style_);
        return say::Words::tr("This cannot be said: see the reasons.");
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
        const bool board = a_.decidedBy == DecidedBy::Board || a_.decidedBy == DecidedBy::LateBoard;
        if (board && style_.wording.candyBoard) return say::Words::tr("lay a candy board of %1 on the bees %2");
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

    //! Where most winters starve it even when it is so fed.
    QString notEnough() const {
        if (std::none_of(a_.options.begin(), a_.options.end(), [](const advice::Option& option) {
                return option.kind == advice::OptionKind::Feed && option.runOut.share > 0.5;
            }))
            return {};
        const QString said = say::Words::tr(
            "That alone will not carry it: give it full %{combs} too, from store or a healthy neighbour, or unite it while days are warm.");
        return QLatin1Char(' ') + worded(said, style_);
    }

    QString shortLater() const {
        if (!a_.hardlyLives) return say::Words::tr("Nothing is fed today.");
        return worded(
            say::Words::tr(
                "On these stores it will hardly live until spring, and it is too late for syrup: on the next mild day hang full %{combs} on both sides of the bees, from store or a healthy neighbour."),
            style_);
    }

    //! In late autumn what a small feed leaves missing is given as combs, if there are any.
    QString restInCombs() const {
        const QString alone = notEnough();
        if (!alone.isEmpty() || a_.phase != advice::Phase::Late || !a_.missing || !a_.feed) return alone;
        const Mass fed = a_.feed->stores;
        if (a_.missing->typical - fed <= a_.deadBand) return {};
        return QLatin1Char(' ') +
               worded(
                   say::Words::tr(
                       "What is missing beyond that is best given as full %{combs}, if you have any in store or a healthy neighbour can spare them."),
                   style_);
    }

    QString withFeed(const QString& words) const {
        return a_.feed ? say::Words::tr("%1 Until then: %2.").arg(words, feed()) : words;
    }

    QString again() const {
        if (!a_.nextLook || a_.nextLook->what == advice::NextLookAt::QueenCells) return {};
        const bool mites = a_.nextLook->what == advice::NextLookAt::CountMites;
        const QString said = !mites ? say::Words::tr("Weigh it %1.")
                             : isSaid(a_.cautions, "varroa-first", "many")
                                 ? say::Words::tr("Far too many mites: treat first, and look again %1.")
                             : isSaid(a_.cautions, "varroa-first", "counted")
                                 ? say::Words::tr("Treat where the count of mites calls for it, and look again %1.")
                                 : say::Words::tr("Count the mites, and look again %1.");
        return QLatin1Char(' ') + said.arg(on(a_.nextLook->date));
    }

    QString later() const {
        if (!a_.expectedLater) return {};
        const auto& [sugar, fondant, from, until] = *a_.expectedLater;
        if (sugar.high > Mass(0)) return QLatin1Char(' ') + sugarLater(sugar, from);
        if (fondant.high <= Mass(0)) return {};
        if (kg(fondant.low) == kg(Mass(0)))
            return QLatin1Char(' ') + say::Words::tr("Later up to %1 of fondant may be wanted.").arg(kg(fondant.high));
        return QLatin1Char(' ') + say::Words::tr("Later %1 to %2 of fondant are likely to be wanted.")
                                      .arg(kg(fondant.low), kg(fondant.high));
    }
    QString sugarLater(const Spread<Mass>& sugar, Date from) const {
        const QString day = date(from, style_);
        if (kg(sugar.low) == kg(Mass(0)))
            return say::Words::tr("For winter up to %1 of sugar may be wanted, from %2.").arg(kg(sugar.high), day);
        if (kg(sugar.low) == kg(sugar.high))
            return say::Words::tr("For winter about %1 of sugar will be wanted, from %2.").arg(kg(sugar.high), day);
        return say::Words::tr("For winter %1 to %2 of sugar are likely to be wanted, from %3.")
            .arg(kg(sugar.low), kg(sugar.high), day);
    }

    //! More than winter wants, while honey might still be taken: the reasons say why none is.
    bool moreIsThere() const {
        return a_.phase <= advice::Phase::Closing &&
               std::any_of(a_.reasons.begin(), a_.reasons.end(), [](const Remark& reason) {
                   return reason.id == "enough" && std::get<std::string>(reason.details.at("class")) != "same";
               });
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
        const QString first = a_.anotherLook.which == advice::LookKind::Weigh ? say::Words::tr("Weigh both sides first")
                              : a_.anotherLook.which == advice::LookKind::CountCombs
                                  ? worded(say::Words::tr("Count the full %{combs} first"), style_)
                                  : say::Words::tr("Count the bees first");
        if (a_.anotherLook.about == advice::LookAbout::Bees)
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

namespace {

const Remark* feedNotRecorded(const Advice& advice) {
    const auto found = std::find_if(advice.reasons.begin(), advice.reasons.end(),
                                    [](const Remark& reason) { return reason.id == "feed-not-recorded"; });
    return found == advice.reasons.end() ? nullptr : &*found;
}

} // namespace

QString headline(const Advice& advice, const WordStyle& style, NumberForm form) {
    QString words = Headline(advice, style, form).words();
    if (const auto* feed = feedNotRecorded(advice))
        words =
            say::Words::tr("Was the feed planned from %1 on given? Write it down first. If it was not: %2", "day, what")
                .arg(date(std::get<Date>(feed->details.at("day")), style), words);
    if (advice.verdict == advice::Verdict::CannotSay || !advice::setsAside(advice)) return words;
    return say::Words::tr("Something written down is in doubt: settle that first, see the reasons. Until then: %1")
        .arg(words);
}

} // namespace winterlarder::text
