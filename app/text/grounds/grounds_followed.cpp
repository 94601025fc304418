// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/normal_law.h"
#include "text/contexts.h"
#include "text/grounds/grounds.h"
#include "text/grounds/grounds_parts.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::text {

namespace {

class FollowedWriter : GroundsWriter {
public:
    FollowedWriter(const tracking::FollowQuestion& q, const tracking::Following& f, const ReferenceData& reference,
                   const WordStyle& style)
        : GroundsWriter(reference, style), q_(q), f_(f) {}

    std::optional<Grounds> of(AskedNumber number);

private:
    QString day(SeasonDay day) const {
        return date(q_.year.date(std::clamp(day, firstSeasonDay, lastSeasonDay)), style_);
    }
    void reasons(std::initializer_list<const char*> ids) { remarks(f_.reasons, ids); }

    void winters();
    void seen();
    std::optional<Grounds> leftToday();
    std::optional<Grounds> expectedToday();
    enum class Of { TouchingReserve, RunningOut };
    enum class Forecast { Now, InAutumn };
    std::optional<Grounds> shareOf(const Share& share, Of of, Forecast forecast);
    std::optional<Grounds> feedNow();
    std::optional<Grounds> feedBy();
    std::optional<Grounds> reserveGone();
    enum class Weighing { Day, ChanceOfChange };
    std::optional<Grounds> weighBy(Weighing told);
    std::optional<Grounds> forage();

    const tracking::FollowQuestion& q_;
    const tracking::Following& f_;
};

void FollowedWriter::winters() {
    line(
        say::Grounds::tr(
            "%1 winters were simulated from %2 on. What was seen since makes those that fit it count more; as many as %3 equal ones are left.")
            .arg(count(f_.winters, style_), day(q_.decided), count(std::round(f_.effectiveWinters), style_)),
        {"winter-model"});
    reasons({"drawn-again", "few-winters", "weather-so-far", "unexplained-change", "weighing-contradicts",
             "fits-no-winter", "learned-use", "learned-death"});
}

void FollowedWriter::seen() {
    for (const auto& one : f_.seen) {
        const Mass reach = tenthPercentile * one.sd;
        line(say::Grounds::tr("Weighed or judged on %1, as stores: %2.")
                 .arg(day(one.day),
                      mass(Spread<Mass>{std::max(Mass(0), one.stores - reach), one.stores, one.stores + reach},
                           style_)));
    }
    if (f_.seen.empty())
        line(say::Grounds::tr("Nothing was weighed since; the figure rests on the autumn's forecast alone."));
    else
        line(say::Grounds::tr(
            "A reading becomes stores when the hive's own weight, its bees and its bee bread are taken off. A later reading teaches what the hive itself "
            "weighs, and then earlier ones are read anew."));
}

std::optional<Grounds> FollowedWriter::leftToday() {
    seen();
    winters();
    bracketsLine();
    return under(say::Grounds::tr("Left on %1: %2").arg(day(q_.today), amount(f_.now.today, style_)));
}

std::optional<Grounds> FollowedWriter::expectedToday() {
    line(
        say::Grounds::tr(
            "The forecast of %1, before anything was seen since: stores of %2 with one standard deviation of %3, less what is eaten, with the feeds and harvests that were "
            "planned then.")
            .arg(day(q_.decided), amount(q_.stores.mean, style_), mass(q_.stores.sd, style_)),
        {"winter-model"});
    return under(say::Grounds::tr("Expected in autumn for %1: %2").arg(day(q_.today), amount(f_.autumn.today, style_)));
}

std::optional<Grounds> FollowedWriter::shareOf(const Share& share, Of of, Forecast forecast) {
    const bool touches = of == Of::TouchingReserve, inAutumn = forecast == Forecast::InAutumn;
    line(
        touches
            ? say::Grounds::tr(
                  "Counted over the winters: those in which less than the reserve of %1 is left on some day before spring forage starts.")
                  .arg(amount(q_.reserve, style_))
            : say::Grounds::tr(
                  "Counted over the winters: those in which nothing is left on some day before spring forage starts."));
    if (inAutumn)
        line(say::Grounds::tr("As it was forecast on %1, before anything was seen since.").arg(day(q_.decided)),
             {"winter-model"});
    else winters();
    otherWintersLine(share);
    const QString ofWinters = ofHundred(share, style_);
    if (touches)
        return under(inAutumn
                         ? say::Grounds::tr("Falls below the reserve, as forecast in autumn: %1 winters").arg(ofWinters)
                         : say::Grounds::tr("Falls below the reserve, if nothing is done: %1 winters").arg(ofWinters));
    return under(inAutumn ? say::Grounds::tr("Runs out, as forecast in autumn: %1 winters").arg(ofWinters)
                          : say::Grounds::tr("Runs out, if nothing is done: %1 winters").arg(ofWinters));
}

std::optional<Grounds> FollowedWriter::feedNow() {
    if (!f_.feed) return std::nullopt;
    line(say::Grounds::tr(
             "With %3 more in the hive it falls below %1 in no more than %2 of 100 winters that fit what was seen.")
             .arg(amount(q_.reserve, style_), count(std::round(100 * q_.shortRisk), style_),
                  amount(f_.missing, style_)));
    if (f_.feed->plan) {
        line(say::Grounds::tr("Syrup is still taken; its visits stand on the page Feeding."));
        return under(say::Grounds::tr("Sugar to feed: %1, for %2 of stores")
                         .arg(amount(f_.feed->plan->syrup.sugar, style_), amount(f_.feed->stores, style_)));
    }
    fondantLine();
    line(say::Grounds::tr("One visit with no more than %1; what is still missing then is told by the next weighing.")
             .arg(mass(Mass(q_.nucleus ? q_.decisions.fondantNucleus : q_.decisions.fondantVisit), style_)),
         {"nbu-bpg7", "apisavoir"});
    return under(say::Grounds::tr("Fondant to lay on: %1, for %2 of stores")
                     .arg(amount(f_.feed->fondant, style_), amount(f_.feed->stores, style_)));
}

std::optional<Grounds> FollowedWriter::feedBy() {
    if (!f_.feed) return std::nullopt;
    line(f_.feed->begins() > q_.today
             ? say::Grounds::tr("A week before %1, when bees that eat much (4 winters of 5 eat less) come down to %2.")
                   .arg(day(f_.feed->by), amount(q_.reserve, style_))
             : say::Grounds::tr("Today: it cannot wait, or is taken best now."),
         {"judgement"});
    reasons({"follow-reserve-by"});
    return under(say::Grounds::tr("Feed on %1").arg(day(f_.feed->begins())));
}

std::optional<Grounds> FollowedWriter::reserveGone() {
    const auto& by = f_.now.reserveBy;
    if (!by.typical && !by.low) return std::nullopt;
    line(
        by.typical
            ? say::Grounds::tr("On that day half of the winters that fit what was seen are below the reserve of %1.")
                  .arg(amount(q_.reserve, style_))
            : say::Grounds::tr("On that day a tenth of the winters that fit what was seen are below the reserve of %1.")
                  .arg(amount(q_.reserve, style_)));
    winters();
    return under(say::Grounds::tr("Below the reserve: %1").arg(day(by.typical ? *by.typical : *by.low)));
}

std::optional<Grounds> FollowedWriter::weighBy(Weighing told) {
    if (!f_.nextWeighing) return std::nullopt;
    if (f_.nextWeighing->forAVisit) {
        line(
            say::Grounds::tr(
                "Fondant is laid on one visit at a time, and the next follows a weighing: before the visit that is planned, or two weeks after that of today."),
            {"nbu-bpg7"});
        return under(say::Grounds::tr("Weigh on %1").arg(date(f_.nextWeighing->date, style_)));
    }
    line(
        say::Grounds::tr(
            "Were the hive weighed on that day, its reading would change whether to feed in %1 of 100 cases, told from the winters that fit what was seen.")
            .arg(count(std::round(100 * f_.nextWeighing->changes), style_)),
        {"winter-model"});
    line(say::Grounds::tr(
        "It is the first day on which a weighing is worth it; before, it would change too seldom what to do."));
    return under(
        told == Weighing::ChanceOfChange
            ? say::Grounds::tr("A weighing on %1 changes what to do in %2 of 100 cases")
                  .arg(date(f_.nextWeighing->date, style_), count(std::round(100 * f_.nextWeighing->changes), style_))
            : say::Grounds::tr("Weigh again by %1").arg(date(f_.nextWeighing->date, style_)));
}

std::optional<Grounds> FollowedWriter::forage() {
    const auto& f = f_.now.forage;
    forageRuleLine();
    line(
        say::Grounds::tr(
            "What the colony was seen to eat makes winters with an early or a late spring count more, so colonies of one yard may differ."),
        {"winter-model"});
    reasons({"learned-forage"});
    return under(say::Grounds::tr("Spring forage starts: around %1 (%2 to %3 in 80 of 100 winters)")
                     .arg(day(f.typical), day(f.low), day(f.high)));
}

std::optional<Grounds> FollowedWriter::of(AskedNumber number) {
    switch (number) {
    case AskedNumber::LeftToday: return leftToday();
    case AskedNumber::ExpectedToday: return expectedToday();
    case AskedNumber::TouchesNow: return shareOf(f_.now.touchReserve, Of::TouchingReserve, Forecast::Now);
    case AskedNumber::RunsOutNow: return shareOf(f_.now.runOut, Of::RunningOut, Forecast::Now);
    case AskedNumber::TouchedInAutumn: return shareOf(f_.autumn.touchReserve, Of::TouchingReserve, Forecast::InAutumn);
    case AskedNumber::RanOutInAutumn: return shareOf(f_.autumn.runOut, Of::RunningOut, Forecast::InAutumn);
    case AskedNumber::FeedNow: return feedNow();
    case AskedNumber::FeedBy: return feedBy();
    case AskedNumber::ReserveGone: return reserveGone();
    case AskedNumber::WeighBy: return weighBy(Weighing::Day);
    case AskedNumber::WeighingChanges: return weighBy(Weighing::ChanceOfChange);
    case AskedNumber::ForageNow: return forage();
    case AskedNumber::Reserve: return ofReserve(q_.reserve, q_.shortRisk);
    default: return std::nullopt;
    }
}

} // namespace

std::optional<Grounds> groundsOf(AskedNumber number, const tracking::FollowQuestion& question,
                                 const tracking::Following& following, const ReferenceData& reference,
                                 const WordStyle& style) {
    return FollowedWriter(question, following, reference, style).of(number);
}

} // namespace winterlarder::text
