// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/larder.h"

#include "numerics/golden.h"
#include "numerics/normal.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace winterlarder::winter {

namespace {

// Feeds and harvests laid in to the end of a day [kg].
double stepsUntil(const std::vector<StoresStep>& steps, SeasonDay day) {
    double total = 0;
    for (const auto& step : steps)
        if (step.day <= day) total += step.change.value();
    return total;
}

// Takes the autumn income up to a day off the losses of all winters: at its strength, to the last day of the flow, cut at the room there was.
void takeOffFlow(const DemandEnsemble& ensemble, const AutumnFlow& flow, SeasonDay day, std::vector<double>& loss) {
    const SeasonDay until = flow.lastDay ? std::min(day, *flow.lastDay) : day;
    const double strength = beyondTrickle(flow, ensemble);
    if (strength <= 0 || until < ensemble.firstDay()) return;
    const auto income = ensemble.autumnIncome(until);
    const double room = flow.room ? flow.room->value() : std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < loss.size(); ++i) loss[i] -= std::min(strength * static_cast<double>(income[i]), room);
}

// Net loss of every winter at the end of a day, autumn flow counted; 0 the day before the first.
void lossAt(const DemandEnsemble& ensemble, const AutumnFlow& flow, SeasonDay day, std::vector<double>& loss) {
    if (day < ensemble.firstDay()) {
        std::fill(loss.begin(), loss.end(), 0.0);
        return;
    }
    const auto net = ensemble.netLoss(day);
    for (std::size_t i = 0; i < loss.size(); ++i) loss[i] = static_cast<double>(net[i]);
    takeOffFlow(ensemble, flow, day, loss);
}

// The winters by their last day before forage, or of the run where that comes first; by day from `from`, earlier ones left out.
std::vector<std::vector<std::size_t>> byLastDay(const DemandEnsemble& ensemble, SeasonDay from) {
    std::vector<std::vector<std::size_t>> winters(static_cast<std::size_t>(ensemble.lastDay() - from) + 1);
    const auto draws = ensemble.draws();
    for (std::size_t i = 0; i < draws.size(); ++i) {
        const SeasonDay last = std::min(SeasonDay{draws[i].forage - 1}, ensemble.lastDay());
        if (last >= from) winters[static_cast<std::size_t>(last - from)].push_back(i);
    }
    return winters;
}

double usedBefore(const DemandEnsemble& ensemble, SeasonDay day, std::size_t winter) {
    return day <= ensemble.firstDay() ? 0.0 : static_cast<double>(ensemble.used(day - 1)[winter]);
}

} // namespace

double beyondTrickle(const AutumnFlow& flow, const DemandEnsemble& ensemble) {
    return std::max(0.0, flow.strength - ensemble.autumnTrickle());
}

WinterLosses lossesFrom(const DemandEnsemble& ensemble, SeasonDay from, const AutumnFlow& flow,
                        const std::vector<StoresStep>& steps, std::optional<SeasonDay> touchFrom) {
    require(from >= ensemble.firstDay() && from <= ensemble.lastDay(), "day {} is outside the simulated days", from.w);
    const auto count = static_cast<std::size_t>(ensemble.winters());
    const SeasonDay counting = touchFrom ? std::max(from, *touchFrom) : from;
    WinterLosses losses;
    const double nothingYet = touchFrom ? -std::numeric_limits<double>::infinity() : 0;
    losses.largest.assign(count, nothingYet);
    losses.largestBeforeForage.assign(count, nothingYet);
    losses.atForage.assign(count, 0);
    losses.used.assign(count, 0);
    const auto ending = byLastDay(ensemble, from);
    std::vector<double> base(count), loss(count);
    lossAt(ensemble, flow, from - 1, base);
    for (SeasonDay day = from; day <= ensemble.lastDay(); day = day + 1) {
        lossAt(ensemble, flow, day, loss);
        const double fed = stepsUntil(steps, day);
        for (std::size_t i = 0; i < count; ++i) loss[i] = loss[i] - base[i] - fed;
        if (day >= counting)
            for (std::size_t i = 0; i < count; ++i) losses.largest[i] = std::max(losses.largest[i], loss[i]);
        for (const std::size_t i : ending[static_cast<std::size_t>(day - from)]) {
            losses.atForage[i] = loss[i];
            losses.largestBeforeForage[i] = losses.largest[i];
            losses.used[i] = static_cast<double>(ensemble.used(day)[i]) - usedBefore(ensemble, from, i);
        }
    }
    return losses;
}

std::vector<double> netLossBetween(const DemandEnsemble& ensemble, const AutumnFlow& flow, SeasonDay from,
                                   SeasonDay to) {
    std::vector<double> before(static_cast<std::size_t>(ensemble.winters())), loss(before.size());
    lossAt(ensemble, flow, from - 1, before);
    lossAt(ensemble, flow, to - 1, loss);
    for (std::size_t i = 0; i < loss.size(); ++i) loss[i] -= before[i];
    return loss;
}

std::vector<double> largestLossUntil(const DemandEnsemble& ensemble, const AutumnFlow& flow, SeasonDay from,
                                     SeasonDay last) {
    std::vector<double> before(static_cast<std::size_t>(ensemble.winters())), loss(before.size()),
        largest(before.size());
    lossAt(ensemble, flow, from - 1, before);
    for (SeasonDay day = from; day <= std::min(last, ensemble.lastDay()); day = day + 1) {
        lossAt(ensemble, flow, day, loss);
        for (std::size_t i = 0; i < loss.size(); ++i) largest[i] = std::max(largest[i], loss[i] - before[i]);
    }
    return largest;
}

Share shareShort(const std::vector<double>& largestLoss, Mass mean, Mass sd, Mass margin, Short when) {
    const bool strictly = when == Short::Undercut;
    require(!largestLoss.empty(), "no winters to take a share of");
    const double mu = mean.value(), spread = sd.value();
    double sum = 0, squares = 0;
    for (double loss : largestLoss) {
        const double limit = loss + margin.value();
        double p = 0;
        if (spread > 0) p = limit < 0 || (strictly && limit == 0) ? 0 : numerics::normalBelow((limit - mu) / spread);
        else p = (strictly ? std::max(0.0, mu) < limit : std::max(0.0, mu) <= limit) ? 1 : 0;
        sum += p;
        squares += p * p;
    }
    const double n = static_cast<double>(largestLoss.size());
    const double share = sum / n;
    const double variance = n > 1 ? std::max(0.0, (squares - n * share * share) / (n - 1)) : 0;
    return {share, std::sqrt(variance / n)};
}

namespace {

// Share of winters and stores with less than x left at forage.
double shareBelow(const WinterLosses& losses, double mu, double sd, double x) {
    double sum = 0;
    for (std::size_t i = 0; i < losses.atForage.size(); ++i) {
        const double limit = std::max(losses.largestBeforeForage[i], losses.atForage[i] + x);
        sum += sd > 0 ? numerics::normalBelow((limit - mu) / sd) : (std::max(0.0, mu) <= limit ? 1 : 0);
    }
    return sum / static_cast<double>(losses.atForage.size());
}

// Bisection of a function that never falls; the answer to 1 g.
double storesQuantile(const WinterLosses& losses, double mu, double sd, double q) {
    double low = 0, high = 1;
    if (shareBelow(losses, mu, sd, 0) >= q) return 0;
    while (shareBelow(losses, mu, sd, high) < q && high < 1e4) high *= 2;
    while (high - low > 5e-4) {
        const double middle = 0.5 * (low + high);
        (shareBelow(losses, mu, sd, middle) < q ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

Spread<Mass> knownStoresAtForage(const WinterLosses& losses, double mu) {
    std::vector<double> left(losses.atForage.size());
    for (std::size_t i = 0; i < left.size(); ++i)
        left[i] = mu <= losses.largestBeforeForage[i] ? 0 : std::max(0.0, mu - losses.atForage[i]);
    return massSpread(std::move(left));
}

} // namespace

Spread<Mass> storesAtForage(const WinterLosses& losses, Mass mean, Mass sd) {
    require(!losses.atForage.empty(), "no winters to take stores of");
    if (sd.value() <= 0) return knownStoresAtForage(losses, mean.value());
    const auto at = [&](double q) { return kilograms(storesQuantile(losses, mean.value(), sd.value(), q)); };
    return {at(0.1), at(0.5), at(0.9)};
}

std::vector<double> storesDrawn(std::size_t winters, Mass mean, Mass sd) {
    std::vector<double> stores(winters, std::max(0.0, mean.value()));
    if (sd.value() <= 0) return stores;
    for (std::size_t i = 0; i < winters; ++i) {
        const double turn = (static_cast<double>(i) + 0.5) * numerics::goldenPart, u = turn - std::floor(turn);
        stores[i] = std::max(0.0, mean.value() + sd.value() * numerics::inverseNormal(std::clamp(u, 1e-9, 1 - 1e-9)));
    }
    return stores;
}

Spread<Mass> massSpread(std::vector<double> kg) {
    std::sort(kg.begin(), kg.end());
    const auto at = [&](double q) { return kilograms(sortedQuantile(kg, q)); };
    return {at(0.1), at(0.5), at(0.9)};
}

LarderOutcome follow(const WinterLosses& losses, Mass mean, Mass sd, Mass reserve) {
    return {shareShort(losses.largest, mean, sd, kilograms(0), Short::Reached),
            shareShort(losses.largest, mean, sd, reserve, Short::Undercut), storesAtForage(losses, mean, sd)};
}

} // namespace winterlarder::winter
