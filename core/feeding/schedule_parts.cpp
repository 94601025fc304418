// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/schedule_parts.h"

#include "numerics/normal_law.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::feeding {

namespace {

constexpr int checkAfterDays = 10;

} // namespace

Temperature usualMaximum(const FeedingQuestion& question, SeasonDay day) {
    return celsius(question.curve->normal(day).value() + question.diurnalHalfRange.value());
}

Volume uptakeOn(const FeedingQuestion& question, SeasonDay day) {
    return uptakePerDay(question.bees, usualMaximum(question, day), question.feeder);
}

Volume takenBetween(const FeedingQuestion& question, SeasonDay first, SeasonDay last) {
    Volume taken{0};
    for (SeasonDay day = first; day <= last; day = day + 1) taken += uptakeOn(question, day);
    return taken;
}

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

SeasonDay lastLiquidDay(const FeedingQuestion& question) {
    return std::min(dayOf(question.season.syrupDeadline).value_or(firstForage(question)), lastSimulatedDay);
}

PerKgSugar perKgSugar(const Ratio& ratio) {
    const auto batch = mixForSugar(kilograms(1), ratio);
    require(batch.ok(), "{} is no ratio to plan with", ratio.printed);
    return {batch->volume.value(), batch->stores.value()};
}

SeasonDay earliestNext(const FeedingQuestion& question, SeasonDay visit, SeasonDay emptied) {
    return std::max(visit + std::max(1, question.visitEveryDays), emptied + 1);
}

Visit syrupVisit(const FeedingQuestion& question, SeasonDay day, Mass sugar, PerKgSugar gives) {
    Visit visit{day, question.winter.date(day)};
    visit.kind = VisitKind::Syrup;
    visit.sugar = sugar;
    visit.syrup = litres(sugar.value() * gives.litres);
    visit.stores = sugar * gives.stores;
    return visit;
}

double mostCrystals(const FeedingQuestion& question, double massPercent, SeasonDay first, SeasonDay last) {
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

void requireAnswerable(const FeedingQuestion& question) {
    require(question.curve != nullptr, "a feeding plan needs a climate");
    require(question.today >= firstSeasonDay && question.today <= lastSimulatedDay,
            "season day {} lies outside what can be planned", question.today.w);
}

} // namespace winterlarder::feeding
