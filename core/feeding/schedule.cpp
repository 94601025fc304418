// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/schedule.h"

#include "feeding/keepers_days.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace winterlarder::feeding {

namespace {

constexpr Mass notWorthAVisit{0.05};    // of stores
constexpr Volume smallestLateDose{0.5}; // where the last day cuts a dose shorter, it is left out
constexpr Volume portion{5};            // at a visit, but for the top feeder
constexpr Mass fondantLot{15};
constexpr int fondantLotDays = 21;
constexpr int checkAfterDays = 10;

Temperature usualMaximum(const FeedingQuestion& question, SeasonDay day) {
    return celsius(question.curve->normal(day).value() + question.diurnalHalfRange.value());
}

Volume uptakeOn(const FeedingQuestion& question, SeasonDay day) {
    return uptakePerDay(question.bees, usualMaximum(question, day), question.feeder);
}

Volume takenBetween(const FeedingQuestion& question, SeasonDay first, SeasonDay last) {
    Volume taken{0};
    for (SeasonDay day = first; day <= last; day = day + 1)
        taken += uptakeOn(question, day);
    return taken;
}

// The day on which a dose given on `given` is gone; at the latest `last`.
SeasonDay dayTaken(const FeedingQuestion& question, SeasonDay given, Volume dose, SeasonDay last) {
    constexpr double rounding = 1e-9;
    double left = dose.value();
    SeasonDay day = given;
    for (; day < last; day = day + 1) {
        left -= uptakeOn(question, day).value();
        if (left <= rounding) break;
    }
    return day;
}

std::optional<SeasonDay> dayOf(const std::optional<climate::SeasonDate>& date) {
    if (!date) return std::nullopt;
    return date->day;
}

SeasonDay firstForage(const FeedingQuestion& question) {
    return std::min(dayOf(question.season.forage).value_or(lastSimulatedDay), lastSimulatedDay);
}

// Where syrup is taken all winter a plan still ends with the first forage.
SeasonDay lastLiquidDay(const FeedingQuestion& question) {
    return std::min(dayOf(question.season.syrupDeadline).value_or(firstForage(question)), lastSimulatedDay);
}

struct PerKgSugar {
    double litres;
    double stores;
};

PerKgSugar perKgSugar(const Ratio& ratio) {
    const auto batch = mixForSugar(kilograms(1), ratio);
    require(batch.ok(), "{} is no ratio to plan with", ratio.printed);
    return {batch->volume.value(), batch->stores.value()};
}

// Sugar is weighed out in steps of 0.1 kg.
Mass weighedOut(Mass sugar) {
    const double tenths = std::floor(sugar.value() * 10 + 1e-9);
    return tenths < 1 ? sugar : kilograms(tenths / 10);
}

Mass sugarOfAFullFeeder(const Feeder& feeder, PerKgSugar gives) {
    const Volume fits = feeder.top ? feeder.capacity : std::min(feeder.capacity, portion);
    return weighedOut(kilograms(std::max(0.0, fits.value()) / gives.litres));
}

SeasonDay earliestNext(const FeedingQuestion& question, SeasonDay visit, SeasonDay emptied) {
    return std::max(visit + std::max(1, question.visitEveryDays), emptied + 1);
}

// Syrup ---------------------------------------------------------------------------------------------------------------

struct SyrupDoses {
    std::vector<Visit> visits;
    std::optional<SeasonDay> taken; // the last of it
    Mass storesLeft{0};             // not to be had as syrup
    bool roomFull = false;
    bool tooSlow = false;
};

Visit syrupVisit(const FeedingQuestion& question, SeasonDay day, Mass sugar, PerKgSugar gives) {
    Visit visit{day, question.winter.date(day)};
    visit.kind = VisitKind::Syrup;
    visit.sugar = sugar;
    visit.syrup = litres(sugar.value() * gives.litres);
    visit.stores = sugar * gives.stores;
    return visit;
}

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

// Grams per kg of sugar on the coldest likely night of these days.
double mostCrystals(const FeedingQuestion& question, double massPercent, SeasonDay first, SeasonDay last) {
    constexpr double tenthPercentile = 1.28;
    const double seasonSd = question.curve->variability().seasonOffsetSd;
    double most = 0;
    for (SeasonDay day = first; day <= last; day = day + 1) {
        const double sd = std::hypot(question.curve->dailySd(day).value(), seasonSd);
        const double lowest =
            question.curve->normal(day).value() - question.diurnalHalfRange.value() - tenthPercentile * sd;
        most = std::max(most, mayCrystallise(massPercent, celsius(lowest)));
    }
    return most;
}

// After the syrup -----------------------------------------------------------------------------------------------------

Visit checkVisit(const FeedingQuestion& question, const KeepersDays& keeper, SeasonDay lastDose, SeasonDay taken) {
    const SeasonDay earliest = std::max(lastDose + checkAfterDays, earliestNext(question, lastDose, taken));
    const auto refused = dayOf(question.season.syrupRefused);
    const SeasonDay latest = refused ? std::max(*refused, lastDose) : lastSeasonDay;
    auto day = keeper.onOrAfter(earliest);
    if (!day || *day > latest) day = keeper.lastWithin(lastDose + 1, latest);
    const SeasonDay checked = day.value_or(latest);
    return {checked, question.winter.date(checked), VisitKind::Check};
}

Visit fondantVisit(const FeedingQuestion& question, SeasonDay day, Mass fondant) {
    Visit visit{day, question.winter.date(day)};
    visit.kind = VisitKind::Fondant;
    visit.fondant = fondant;
    visit.stores = fondant * storesPerKgFondant;
    return visit;
}

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

void requireAnswerable(const FeedingQuestion& question) {
    require(question.curve != nullptr, "a feeding plan needs a climate");
    require(question.storesWanted > Mass(0) && std::isfinite(question.storesWanted.value()),
            "a feeding plan for {} kg of stores", question.storesWanted.value());
    require(question.today >= firstSeasonDay && question.today <= lastSimulatedDay,
            "season day {} lies outside what can be planned", question.today.w);
}

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
    for (const Visit& visit : doses.visits)
        sugar += visit.sugar;
    plan.syrup = mixForSugar(sugar, plan.ratio).value();
    const SeasonDay first = doses.visits.front().day, lastDose = doses.visits.back().day, taken = doses.taken.value();
    plan.crystallisingGPerKg = mostCrystals(question, plan.syrup.massPercent, first, plan.lastDay.value_or(taken));
    plan.visits.push_back(checkVisit(question, keeper, lastDose, taken));
}

void addFondant(FeedingPlan& plan, const std::vector<Visit>& visits) {
    for (const Visit& visit : visits)
        plan.fondant += visit.fondant;
    plan.visits.insert(plan.visits.end(), visits.begin(), visits.end());
}

} // namespace

FeedingPlan planFeeding(const FeedingQuestion& question) {
    requireAnswerable(question);
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
    for (const Visit& visit : plan.visits)
        plan.stores += visit.stores;
    return plan;
}

} // namespace winterlarder::feeding
