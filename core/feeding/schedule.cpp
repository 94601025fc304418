// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/schedule.h"

#include "feeding/schedule_parts.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace winterlarder::feeding {

namespace {

constexpr Mass notWorthAVisit{0.05};    // of stores
constexpr Volume smallestLateDose{0.5}; // where the last day cuts a dose shorter, it is left out
constexpr Mass fondantLot{15};
constexpr int fondantLotDays = 21;

// Sugar is weighed out in steps of 0.1 kg.
Mass weighedOut(Mass sugar) {
    const double tenths = std::floor(sugar.value() * 10 + 1e-9);
    return tenths < 1 ? sugar : kilograms(tenths / 10);
}

Mass sugarOfAFullFeeder(const Feeder& feeder, PerKgSugar gives) {
    const Volume fits = feeder.top ? feeder.capacity : std::min(feeder.capacity, portionOfAVisit);
    return weighedOut(kilograms(std::max(0.0, fits.value()) / gives.litres));
}

// Syrup ---------------------------------------------------------------------------------------------------------------

struct SyrupDoses {
    std::vector<Visit> visits;
    std::optional<SeasonDay> taken; // the last of it
    Mass storesLeft{0};             // not to be had as syrup
    bool roomFull = false;
    bool tooSlow = false;
};

SyrupDoses doseSyrup(const FeedingQuestion& question, const KeepersDays& keeper, PerKgSugar gives) {
    const SeasonDay last = lastLiquidDay(question);
    const Mass full = sugarOfAFullFeeder(question.feeder, gives);
    const Mass unlimited{std::numeric_limits<double>::infinity()};
    Mass room = question.freeRoom ? std::max(Mass(0), *question.freeRoom) : unlimited;
    SyrupDoses doses;
    doses.storesLeft = question.storesWanted;
    auto day = keeper.onOrAfter(question.today);
    while (doses.storesLeft >= notWorthAVisit) {
        doses.roomFull = room < notWorthAVisit;
        if (doses.roomFull) break;
        const Volume stillTaken = day ? takenBetween(question, *day, last) : Volume(0);
        doses.tooSlow = stillTaken < smallestLateDose || full <= Mass(0) || gives.stores <= 0;
        if (doses.tooSlow) break;
        const Mass wanted = std::min(doses.storesLeft, room) / gives.stores;
        const Mass sugar = std::min({wanted, full, kilograms(stillTaken.value() / gives.litres)});
        const Visit visit = syrupVisit(question, *day, sugar, gives);
        doses.visits.push_back(visit);
        doses.taken = dayTaken(question, *day, visit.syrup, last);
        doses.storesLeft -= visit.stores;
        room -= visit.stores;
        day = keeper.onOrAfter(earliestNext(question, *day, *doses.taken));
    }
    return doses;
}

// After the syrup -----------------------------------------------------------------------------------------------------

// Lots of 15 kg, each laid on when the one before is eaten; what would come after first forage is laid on with the
// last.
std::vector<Visit> layOnFondant(const FeedingQuestion& question, const KeepersDays& keeper, Mass stores,
                                SeasonDay first) {
    std::vector<Visit> visits;
    Mass left = stores / storesPerKgFondant;
    SeasonDay day = first;
    while (left > Mass(0)) {
        const auto next = keeper.onOrAfter(earliestNext(question, day, day + (fondantLotDays - 1)));
        const bool lastLot = !next || *next >= firstForage(question);
        const Mass lot = lastLot ? left : std::min(left, fondantLot);
        visits.push_back(fondantVisit(question, day, lot));
        left -= lot;
        day = next.value_or(day);
    }
    return visits;
}

SeasonDay firstFondantDay(const FeedingQuestion& question, const KeepersDays& keeper, const SyrupDoses& doses) {
    const SeasonDay lastVisit = doses.visits.empty() ? question.today : doses.visits.back().day;
    const SeasonDay earliest =
        doses.visits.empty() ? question.today : earliestNext(question, lastVisit, doses.taken.value());
    return keeper.onOrAfter(earliest).value_or(lastVisit);
}

// The plan ------------------------------------------------------------------------------------------------------------

FeedingLimits limitsOf(const FeedingQuestion& question, const SyrupDoses& doses) {
    const auto deadline = dayOf(question.season.syrupDeadline), refused = dayOf(question.season.syrupRefused),
               advised = dayOf(question.season.feedAdvisedBy);
    FeedingLimits limits;
    limits.deadlinePassed = deadline && question.today > *deadline;
    limits.smallLotsOnly = limits.deadlinePassed && (!refused || question.today <= *refused);
    limits.roomFull = doses.roomFull;
    limits.tooSlow = doses.tooSlow && !limits.deadlinePassed;
    limits.afterAdvised = advised && doses.taken && *doses.taken > *advised;
    return limits;
}

void addSyrup(FeedingPlan& plan, const FeedingQuestion& question, const KeepersDays& keeper, const SyrupDoses& doses) {
    if (doses.visits.empty()) return;
    plan.visits = doses.visits;
    Mass sugar{0};
    for (const Visit& visit : doses.visits) sugar += visit.sugar;
    plan.syrup = mixForSugar(sugar, plan.ratio).value();
    const SeasonDay first = doses.visits.front().day, lastDose = doses.visits.back().day, taken = doses.taken.value();
    plan.crystallisingGPerKg = mostCrystals(question, plan.syrup.massPercent, first, plan.lastDay.value_or(taken));
    plan.visits.push_back(checkVisit(question, keeper, lastDose, taken));
}

void addFondant(FeedingPlan& plan, const std::vector<Visit>& visits) {
    for (const Visit& visit : visits) plan.fondant += visit.fondant;
    plan.visits.insert(plan.visits.end(), visits.begin(), visits.end());
}

} // namespace

FeedingPlan planFeeding(const FeedingQuestion& question) {
    requireAnswerable(question);
    require(question.storesWanted > Mass(0) && std::isfinite(question.storesWanted.value()),
            "a feeding plan for {} kg of stores", question.storesWanted.value());
    const KeepersDays keeper(question.winter, question.visitWeekdays);
    FeedingPlan plan;
    plan.lastDay = dayOf(question.season.syrupDeadline);
    plan.advised = adviseRatio(*question.curve, question.today, plan.lastDay, question.diurnalHalfRange);
    plan.ratio = question.ratio.value_or(plan.advised.ratio);
    const SyrupDoses doses = doseSyrup(question, keeper, perKgSugar(plan.ratio));
    plan.limits = limitsOf(question, doses);
    addSyrup(plan, question, keeper, doses);
    if (doses.storesLeft >= notWorthAVisit)
        addFondant(plan, layOnFondant(question, keeper, doses.storesLeft, firstFondantDay(question, keeper, doses)));
    std::stable_sort(plan.visits.begin(), plan.visits.end(),
                     [](const Visit& one, const Visit& other) { return one.day < other.day; });
    for (const Visit& visit : plan.visits) plan.stores += visit.stores;
    return plan;
}

} // namespace winterlarder::feeding
