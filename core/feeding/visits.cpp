// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/visits.h"

#include "feeding/schedule_parts.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::feeding {

namespace {

constexpr double aGram = 0.001;
constexpr Volume leastDose{
    0.5}; // where bees take less between two visits the visits are made rarer, not the doses smaller
Ratio thick() { return {2.0, "2:1"}; }

struct Doses {
    std::vector<Visit> visits;
    SeasonDay taken{};
};

Volume doseOf(const FeedingQuestion& question, SeasonDay first) {
    const Volume feeder =
        question.feeder.top ? question.feeder.capacity : std::min(question.feeder.capacity, portionOfAVisit);
    const Volume between = takenBetween(question, first, first + (std::max(1, question.visitEveryDays) - 1));
    return std::min(feeder, std::max(between, leastDose));
}

//! The sugar in equal visits, or nothing where it is not all taken by the last day.
std::optional<Doses> inEqualVisits(const FeedingQuestion& question, const KeepersDays& keeper, Mass sugar,
                                   PerKgSugar gives, SeasonDay last) {
    auto day = keeper.onOrAfter(question.today);
    if (!day) return std::nullopt;
    const Volume all = litres(sugar.value() * gives.litres), dose = doseOf(question, *day);
    if (dose <= Volume(0)) return std::nullopt;
    const int count = std::max(1, static_cast<int>(std::ceil((all / dose).value() - 1e-6)));
    Doses doses;
    for (int i = 0; i < count; ++i) {
        if (!day || *day > last) return std::nullopt;
        const Visit visit = syrupVisit(question, *day, sugar / count, gives);
        if (takenBetween(question, *day, last) < visit.syrup) return std::nullopt;
        doses.visits.push_back(visit);
        doses.taken = dayTaken(question, *day, visit.syrup, last);
        day = keeper.onOrAfter(earliestNext(question, *day, doses.taken));
    }
    return doses;
}

FeedingPlan emptyPlan(const FeedingQuestion& question, SeasonDay last) {
    requireAnswerable(question);
    FeedingPlan plan;
    plan.lastDay = dayOf(question.season.syrupDeadline);
    plan.advised = adviseRatio(*question.curve, question.today, last, question.diurnalHalfRange);
    plan.ratio = question.ratio.value_or(plan.advised.ratio);
    const auto advised = dayOf(question.season.feedAdvisedBy);
    plan.limits.afterAdvised = advised && question.today > *advised;
    return plan;
}

void lay(FeedingPlan& plan, const FeedingQuestion& question, Doses doses, SeasonDay last) {
    Mass sugar{0};
    for (const Visit& visit : doses.visits) {
        sugar += visit.sugar;
        plan.stores += visit.stores;
    }
    plan.syrup = mixForSugar(sugar, plan.ratio).value();
    plan.crystallisingGPerKg = mostCrystals(question, plan.syrup.massPercent, doses.visits.front().day, last);
    plan.visits = std::move(doses.visits);
}

} // namespace

Mass stepsUp(Mass amount, Mass step) {
    return step * std::ceil(std::max(0.0, (amount.value() - aGram) / step.value()));
}
Mass stepsDown(Mass amount, Mass step) {
    return step * std::floor(std::max(0.0, (amount.value() + aGram) / step.value()));
}

double storesPerKgSugarToday(const FeedingQuestion& question, SeasonDay last) {
    return perKgSugar(question.ratio.value_or(
                          adviseRatio(*question.curve, question.today, last, question.diurnalHalfRange).ratio))
        .stores;
}

FeedingPlan planSyrup(const FeedingQuestion& question, Mass sugar, Mass step, SeasonDay last, bool withCheck) {
    FeedingPlan plan = emptyPlan(question, last);
    const KeepersDays keeper(question.winter, question.visitWeekdays);
    const PerKgSugar gives = perKgSugar(plan.ratio);
    std::optional<Doses> doses;
    Mass given = sugar;
    while (given.value() > aGram && !(doses = inEqualVisits(question, keeper, given, gives, last))) {
        given = stepsDown(given - step * 0.5, step);
        plan.limits.tooSlow = true;
    }
    if (!doses) return plan;
    const SeasonDay lastDose = doses->visits.back().day, taken = doses->taken;
    plan.limits.afterAdvised = dayOf(question.season.feedAdvisedBy) && taken > *dayOf(question.season.feedAdvisedBy);
    lay(plan, question, *std::move(doses), last);
    if (withCheck) plan.visits.push_back(checkVisit(question, keeper, lastDose, taken));
    return plan;
}

bool portionTaken(const FeedingQuestion& question, SeasonDay day, Volume leastUptake) {
    FeedingQuestion over = question;
    over.feeder.touchesCluster = true;
    over.feeder.slow = false;
    return uptakeOn(over, day) >= leastUptake;
}

FeedingPlan planSmallPortions(const FeedingQuestion& question, Mass sugar, Mass step, SeasonDay last, Volume most,
                              Volume leastUptake) {
    FeedingPlan plan = emptyPlan(question, last);
    plan.ratio = question.ratio.value_or(thick());
    plan.limits.smallLotsOnly = true;
    const KeepersDays keeper(question.winter, question.visitWeekdays);
    const PerKgSugar gives = perKgSugar(plan.ratio);
    std::vector<SeasonDay> days;
    for (auto day = keeper.onOrAfter(question.today); day && *day <= last && portionTaken(question, *day, leastUptake);
         day = keeper.onOrAfter(*day + std::max(1, question.visitEveryDays)))
        days.push_back(*day);
    if (days.empty()) return plan;
    const Mass portion = kilograms(most.value() / gives.litres);
    const Mass possible = portion * static_cast<double>(days.size());
    plan.limits.tooSlow = possible < sugar;
    Mass given = std::min(sugar, possible);
    if (const Mass whole = stepsDown(given, step); whole > Mass(0)) given = whole;
    const auto count = static_cast<std::size_t>(std::max(1.0, std::ceil((given / portion).value() - 1e-6)));
    Doses doses;
    for (std::size_t i = 0; i < std::min(count, days.size()); ++i)
        doses.visits.push_back(syrupVisit(question, days[i], given / static_cast<double>(count), gives));
    lay(plan, question, std::move(doses), last);
    return plan;
}

FeedingPlan planFondant(const FeedingQuestion& question, Mass fondant) {
    FeedingPlan plan = emptyPlan(question, question.today);
    plan.visits.push_back(fondantVisit(question, question.today, fondant));
    plan.fondant = fondant;
    plan.stores = plan.visits.front().stores;
    plan.limits.deadlinePassed = plan.lastDay && question.today > *plan.lastDay;
    return plan;
}

} // namespace winterlarder::feeding
