// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/portions.h"

#include "feeding/portions.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

bool fedToday(const ColonyQuestion& q) {
    return std::any_of(q.feeds.begin(), q.feeds.end(),
                       [&](const GivenFeed& feed) { return feed.date == q.winter.date(q.asOf); });
}

feeding::PortionDays portionDays(const AdviceBasis& r) {
    return {r.days.late, r.days.quietFrom, r.days.portionsInWinter};
}

} // namespace

feeding::FeedingQuestion feedingQuestion(const AdviceBasis& r) {
    const ColonyQuestion& q = r.question;
    feeding::FeedingQuestion feeding{
        kilograms(1), q.winter, std::min(feeding::firstVisit(q.asOf, fedToday(q), q.visitEveryDays), lastSimulatedDay)};
    feeding.curve = &q.site->curve;
    feeding.season = q.season;
    const auto bees = r.ensemble.bees(q.asOf);
    feeding.bees = {winter::quantile({bees.begin(), bees.end()}, 0.5)};
    feeding.feeder = q.feeder;
    feeding.visitEveryDays = q.visitEveryDays;
    feeding.visitWeekdays = q.visitWeekdays;
    feeding.diurnalHalfRange = kelvins(r.constants.diurnalHalfRange);
    return feeding;
}

double storesPerKgSugar(const AdviceBasis& r) {
    return feeding::storesPerKgSugarToday(feedingQuestion(r), r.days.closing);
}

Mass sugarFor(const AdviceBasis& r, Mass stores) {
    return feeding::sugarFor(stores, storesPerKgSugar(r), r.room(), r.question.steps.sugar);
}

feeding::FeedingPlan syrupInVisits(const AdviceBasis& r, Mass sugar) {
    const bool closing = r.phase == Phase::Closing;
    const SeasonDay last = std::max(r.days.closing, r.question.asOf);
    return feeding::planSyrup(feedingQuestion(r), std::min(sugar, sugarFor(r, kilograms(1000))), r.question.steps.sugar,
                              last, closing);
}

feeding::FeedingPlan smallPortions(const AdviceBasis& r, Mass stores) {
    return feeding::smallPortions(feedingQuestion(r), sugarFor(r, stores), r.question.steps.sugar, portionDays(r),
                                  r.rules());
}

bool takesPortions(const AdviceBasis& r) {
    const bool portionsNow = r.phase == Phase::Late || (r.days.portionsInWinter && r.phase >= Phase::Winter);
    return portionsNow && feeding::portionTaken(feedingQuestion(r), r.question.asOf, portionDays(r), r.rules());
}

feeding::FeedingPlan fondantVisit(const AdviceBasis& r, Mass stores) {
    return feeding::planFondant(
        feedingQuestion(r),
        feeding::fondantFor(stores, feeding::fondantVisits(r.rules(), r.question.nucleus, r.question.steps.fondant)));
}

feeding::FeedingPlan onePortion(const AdviceBasis& r, Mass stores, Mass mostSugar) {
    if (r.phase <= Phase::Closing)
        return syrupInVisits(r, std::min(sugarFor(r, stores), feeding::stepsDown(mostSugar, r.question.steps.sugar)));
    return takesPortions(r) ? smallPortions(r, std::min(stores, mostSugar * storesPerKgSugar(r)))
                            : fondantVisit(r, stores);
}

Mass hardUseOf(const AdviceBasis& r, double days) {
    const SeasonDay last = r.question.asOf + (static_cast<int>(days) - 1);
    return kilograms(
        winter::quantile(winter::largestLossUntil(r.ensemble, r.flow, r.question.asOf, last), r.rules().hardUse));
}

Mass missingFor(const AdviceBasis& r, double days) { return std::max(kilograms(0), hardUseOf(r, days) - r.stores()); }

} // namespace winterlarder::advice
