// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/portions.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

// The day from which a keeper who fed today comes again.
SeasonDay firstVisit(const ColonyQuestion& q) {
    const bool today = std::any_of(q.feeds.begin(), q.feeds.end(), [&](const GivenFeed& feed) { return feed.date == q.winter.date(q.asOf); });
    return today ? q.asOf + std::max(1, q.visitEveryDays) : q.asOf;
}

SeasonDay lastPortionDay(const Reckoning& r) {
    return r.days.portionsInWinter ? r.days.quietFrom : r.days.late;
}

Mass toLeastStep(Mass amount, Mass least, Mass most) { return std::min(std::max(amount, least), most); }

} // namespace

feeding::FeedingQuestion feedingQuestion(const Reckoning& r) {
    const ColonyQuestion& q = r.question;
    feeding::FeedingQuestion feeding{kilograms(1), q.winter, std::min(firstVisit(q), lastSimulatedDay)};
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

double storesPerKgSugar(const Reckoning& r) { return feeding::storesPerKgSugarToday(feedingQuestion(r), r.days.closing); }

Mass sugarFor(const Reckoning& r, Mass stores) {
    const double gives = storesPerKgSugar(r);
    const Mass step = r.question.steps.sugar;
    return std::min(feeding::stepsUp(stores / gives, step), feeding::stepsDown(r.room() / gives, step));
}

feeding::FeedingPlan syrupInVisits(const Reckoning& r, Mass sugar) {
    const bool closing = r.phase == Phase::Closing;
    const SeasonDay last = std::max(r.days.closing, r.question.asOf);
    return feeding::planSyrup(feedingQuestion(r), std::min(sugar, sugarFor(r, kilograms(1000))), r.question.steps.sugar, last, closing);
}

feeding::FeedingPlan smallPortions(const Reckoning& r, Mass stores) {
    return feeding::planSmallPortions(feedingQuestion(r), sugarFor(r, stores), r.question.steps.sugar, lastPortionDay(r),
                                      litres(r.rules().lateLitres), litres(r.rules().lateUptake));
}

bool takesPortions(const Reckoning& r) {
    const bool portionsNow = r.phase == Phase::Late || (r.days.portionsInWinter && r.phase >= Phase::Winter);
    return portionsNow && r.question.asOf <= lastPortionDay(r) &&
           feeding::portionTaken(feedingQuestion(r), r.question.asOf, litres(r.rules().lateUptake));
}

feeding::FeedingPlan fondantVisit(const Reckoning& r, Mass stores) {
    const Mass step = r.question.steps.fondant;
    const bool small = r.question.nucleus;
    const Mass most = feeding::stepsDown(kilograms(small ? r.rules().fondantNucleus : r.rules().fondantVisit), step);
    const Mass least = feeding::stepsUp(kilograms(small ? 0.5 : r.rules().fondantLeast), step);
    return feeding::planFondant(feedingQuestion(r), toLeastStep(feeding::stepsUp(stores / feeding::storesPerKgFondant, step), std::min(least, most), most));
}

feeding::FeedingPlan onePortion(const Reckoning& r, Mass stores, Mass mostSugar) {
    if (r.phase <= Phase::Closing) return syrupInVisits(r, std::min(sugarFor(r, stores), feeding::stepsDown(mostSugar, r.question.steps.sugar)));
    return takesPortions(r) ? smallPortions(r, std::min(stores, mostSugar * storesPerKgSugar(r))) : fondantVisit(r, stores);
}

Mass hardUseOf(const Reckoning& r, double days) {
    const SeasonDay last = r.question.asOf + (static_cast<int>(days) - 1);
    return kilograms(winter::quantile(winter::largestLossUntil(r.ensemble, r.flow, r.question.asOf, last), r.rules().hardUse));
}

Mass missingFor(const Reckoning& r, double days) { return std::max(kilograms(0), hardUseOf(r, days) - r.stores()); }

} // namespace winterlarder::advice
