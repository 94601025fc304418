// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/later.h"

#include "advice/looking/evidence_today.h"
#include "advice/options.h"
#include "numerics/normal_law.h"
#include "stores/weighing.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

bool weighed(const AdviceBasis& r) {
    return std::any_of(r.question.weighings.begin(), r.question.weighings.end(),
                       [](const WeighedHive& weighing) { return !weighing.heft; });
}

Spread<Mass> grossOn(const AdviceBasis& r, const std::vector<winter::StoresStep>& steps,
                     const std::vector<double>& stores, Mass notOfTheBees, SeasonDay day) {
    const ColonyQuestion& q = r.question;
    const auto loss = winter::netLossBetween(r.ensemble, r.flow, q.asOf, day);
    const auto bees = r.ensemble.bees(day);
    double laidIn = 0;
    for (const auto& step : steps)
        if (step.day < day) laidIn += step.change.value();
    const double rest = notOfTheBees.value() + q.beeBread.value_or(stores::HiveLoad{}.beeBread).value() +
                        stores::broodMass({r.ensemble.means(day).broodCells}).value();
    std::vector<double> gross(loss.size());
    for (std::size_t i = 0; i < gross.size(); ++i)
        gross[i] =
            rest + r.constants.beeMass * static_cast<double>(bees[i]) + std::max(0.0, stores[i] + laidIn - loss[i]);
    std::sort(gross.begin(), gross.end());
    const auto at = [&](double quantile) { return winter::sortedQuantile(gross, quantile); };
    const double tareBand = weighed(r) ? 0 : tenthPercentile * q.tareSd.value(), middle = at(0.5);
    return {kilograms(middle - std::hypot(middle - at(0.1), tareBand)), kilograms(middle),
            kilograms(middle + std::hypot(at(0.9) - middle, tareBand))};
}

bool allSupersOff(const ColonyQuestion& q, const Decided& decided) {
    const auto supers = std::count_if(q.boxUses.begin(), q.boxUses.end(), [](const BoxUse& use) { return use.super; });
    return supers > 0 && decided.harvest && decided.harvest->wholeSupers == supers;
}

bool fedSyrup(const Decided& decided) { return decided.feed && decided.feed->syrup.sugar > Mass(0); }

// The empty hive: without supers that are taken off whole or, for people, before syrup goes on; or, as long as one for people stays on, with the honey in it.
Mass emptyHive(const AdviceBasis& r, const Decided& decided) {
    const ColonyQuestion& q = r.question;
    const bool off = allSupersOff(q, decided);
    if (supersCount(q) && !off) return q.tare;
    if (off || fedSyrup(decided)) return std::max(kilograms(0), q.tare - q.supersTare);
    return q.tare + honeyInSupers(q) - (decided.harvest ? decided.harvest->upTo : kilograms(0));
}

} // namespace

std::optional<bool> weighedWithSuper(const AdviceBasis& r, const Decided& decided) {
    if (!superForPeople(r.question)) return std::nullopt;
    return !allSupersOff(r.question, decided) && !fedSyrup(decided);
}

std::vector<WeighPoint> weighLine(const AdviceBasis& r, const Decided& decided) {
    const auto steps = stepsOf(r, decided);
    const auto stores = winter::storesDrawn(static_cast<std::size_t>(r.ensemble.winters()), r.stores(), r.estimate.sd);
    const Mass empty = emptyHive(r, decided);
    std::vector<WeighPoint> line;
    for (SeasonDay day = r.question.asOf + 1; day <= std::min(r.days.forage, r.ensemble.lastDay()); day = day + 1)
        if (r.on(day).day() == 1) line.push_back({r.on(day), grossOn(r, steps, stores, empty, day)});
    return line;
}

} // namespace winterlarder::advice
