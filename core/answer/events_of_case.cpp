// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/events_of_case.h"

#include "stores/weighing.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::answer {

namespace {

// One before the season's first day counts on that day, but a feed or harvest later than the look stays later where both fall before the season's first day.
SeasonDay dayOfChange(Date date, Date lookedOn, const Winter& winter) {
    const SeasonDay day = winter.nearestSeasonDay(date);
    return date > lookedOn && day == firstSeasonDay && winter.nearestSeasonDay(lookedOn) == firstSeasonDay ? day + 1
                                                                                                           : day;
}

advice::WeighedHive weighed(const book::WeighingRecord& record, const advice::ColonyQuestion& question) {
    using Kind = stores::WeighingKind;
    advice::WeighedHive hive{
        .day = question.winter.nearestSeasonDay(record.date), .date = record.date, .longHive = question.longHive};
    if (const auto* scale = std::get_if<book::ScaleReading>(&record.reading)) {
        hive.reading = scale->gross;
    } else if (const auto* lift = std::get_if<book::LiftReading>(&record.reading)) {
        hive.kind = lift->sides.size() == 2 ? Kind::TwoSidedLift : Kind::OneSidedLift;
        hive.reading = lift->sides.size() == 2 ? lift->sides[0] + lift->sides[1] : 2 * lift->sides[0];
    } else {
        hive.heft = std::get<book::HeftWord>(record.reading);
    }
    return hive;
}

// Ripe stores a syrup becomes; without a ratio the one for winter stores is taken.
Mass storesOfSyrup(const book::FeedRecord& record) {
    const auto ratio = record.ratio ? feeding::parseRatio(*record.ratio) : Outcome<feeding::Ratio>(feeding::Ratio{});
    if (!ratio || !(record.syrup || record.sugar)) return kilograms(0);
    const auto syrup =
        record.syrup ? feeding::mixForVolume(*record.syrup, *ratio) : feeding::mixForSugar(*record.sugar, *ratio);
    return syrup ? syrup->stores : kilograms(0);
}

// One of the day of the look that came after it counts on top of what was seen.
SeasonDay dayItCounts(Date date, bool afterLook, const advice::ColonyQuestion& question, Date lookedOn) {
    return afterLook && date == lookedOn ? question.lookedOn + 1 : dayOfChange(date, lookedOn, question.winter);
}

advice::GivenFeed given(const book::FeedRecord& record, const advice::ColonyQuestion& question, Date lookedOn) {
    advice::GivenFeed feed;
    feed.day = dayItCounts(record.date, record.afterLook.value_or(false), question, lookedOn);
    feed.date = record.date;
    feed.liquid = record.kind == book::FeedKind::Syrup;
    feed.stores = storesOfFeed(record);
    return feed;
}

bool hasItsAmount(const book::FeedRecord& feed) {
    if (feed.kind == book::FeedKind::Fondant) return feed.fondant.has_value();
    return feed.sugar || (feed.kind == book::FeedKind::Syrup && feed.syrup);
}

// Open stores are thin while they are fresh (openThinDays): counted from the later of the last feed and, with a flow, the day it ends
// or the question is asked.
bool freshlyFilled(const book::ColonyCase& record, const advice::ColonyQuestion& question,
                   const DecisionConstants& rules) {
    std::optional<SeasonDay> last;
    for (const advice::GivenFeed& feed : question.feeds) last = last ? std::max(*last, feed.day) : feed.day;
    if (record.site.autumnFlow.value_or(book::FlowStrength::None) != book::FlowStrength::None) {
        const SeasonDay end =
            question.season.lastIncome ? std::min(question.asOf, question.season.lastIncome->day) : question.asOf;
        last = last ? std::max(*last, end) : end;
    }
    return last && question.asOf - *last < rules.openThinDays;
}

} // namespace

Mass storesOfFeed(const book::FeedRecord& feed) {
    switch (feed.kind) {
    case book::FeedKind::Fondant: return feeding::storesPerKgFondant * feed.fondant.value_or(kilograms(0));
    case book::FeedKind::DrySugar: return feeding::storesPerKgDrySugar * feed.sugar.value_or(kilograms(0));
    case book::FeedKind::Syrup: break;
    }
    return storesOfSyrup(feed);
}

void checkFeeds(const book::ColonyCase& record, const exchange::CasePlaces& places, Problems& problems) {
    for (std::size_t i = 0; i < record.feeds.size(); ++i) {
        const book::FeedRecord& feed = record.feeds[i];
        if (!hasItsAmount(feed))
            problems.push_back(
                {ProblemKind::Input, places.of(fmt::format("feeds[{}]", i)),
                 fmt::format("how much was fed on {} is not said in the measure of its kind", feed.date.iso()),
                 "syrup in kg of sugar or in litres, fondant in kg of fondant, dry sugar in kg of sugar"});
        if (feed.kind != book::FeedKind::Syrup || !feed.ratio) continue;
        const auto ratio = feeding::parseRatio(*feed.ratio);
        const auto syrup =
            ratio ? feeding::mixForSugar(kilograms(1), *ratio) : Outcome<feeding::Syrup>(ratio.problems());
        if (syrup) continue;
        Problem problem = syrup.problems().front();
        problem.place = places.of(fmt::format("feeds[{}].ratio", i));
        problems.push_back(std::move(problem));
    }
}

void fillEvents(advice::ColonyQuestion& question, const book::ColonyCase& record, const DecisionConstants& rules) {
    const Date lookedOn = record.lookedOn.value_or(record.asOf);
    for (const book::WeighingRecord& weighing : record.weighings)
        question.weighings.push_back(weighed(weighing, question));
    for (const book::FeedRecord& feed : record.feeds) question.feeds.push_back(given(feed, question, lookedOn));
    for (const book::HarvestRecord& harvest : record.harvests)
        question.harvests.push_back({dayItCounts(harvest.date, harvest.afterLook.value_or(false), question, lookedOn),
                                     harvest.honey, harvest.date});
    for (const book::TreatmentRecord& treatment : record.treatments)
        question.treatments.push_back({treatment.date, treatment.until});
    question.treated = question.treated || !question.treatments.empty();
    question.freshlyFilled = freshlyFilled(record, question, rules);
    question.usualStores = stores::usualWinterStores(question.boxes);
}

} // namespace winterlarder::answer
