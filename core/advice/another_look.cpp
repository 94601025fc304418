// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/another_look.h"

#include "advice/verdict.h"
#include "numerics/normal_law.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

namespace winterlarder::advice {

namespace {


// One observation that could be made: what it costs rises down the list, and how well it tells stores and bees.
struct PossibleLook {
    Look look;
    double relativeSd;  // of the stores; 0 = none
    double absoluteKg;  // of the stores; 0 = none
    double beesLogSd;   // 0 = tells nothing of the bees
};
constexpr std::array<PossibleLook, 5> possibleLooks{{
    {Look::Heft, 0.35, 0, 0},
    {Look::Weigh, 0, 1.5, 0},
    {Look::LookThroughWindow, 0.35, 0, 0.21},
    {Look::CountCombs, 0.20, 0, 0.15},
    {Look::Open, 0.15, 0.3, 0.15},
}};

// A part of the winters, with its own losses.
struct Part {
    std::vector<double> withFlow, withoutFlow;
    double bees = 0;
};

template <class Key>
std::array<Part, 3> fifths(const Reckoning& r, Key key) {
    const auto draws = r.ensemble.draws();
    const auto bees = r.ensemble.bees(r.question.asOf);
    std::vector<std::size_t> order(draws.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return key(draws[a]) < key(draws[b]); });
    const std::size_t fifth = std::max<std::size_t>(1, order.size() / 5);
    const std::array<std::size_t, 3> starts{0, (order.size() - fifth) / 2, order.size() - fifth};
    std::array<Part, 3> parts;
    for (std::size_t p = 0; p < parts.size(); ++p) {
        std::vector<double> count;
        for (std::size_t i = starts[p]; i < starts[p] + fifth; ++i) {
            parts[p].withFlow.push_back(r.withFlow.largest[order[i]]);
            parts[p].withoutFlow.push_back(r.withoutFlow.largest[order[i]]);
            count.push_back(static_cast<double>(bees[order[i]]));
        }
        parts[p].bees = winter::quantile(std::move(count), 0.5);
    }
    return parts;
}

Verdict verdictWith(const Reckoning& r, const Part& part, const Wish& wish) {
    return verdictFor(r, {spareOf(part.withoutFlow, wish), missingOf(part.withFlow, wish)}, part.bees);
}

double typicalBees(const Reckoning& r) {
    const auto bees = r.ensemble.bees(r.question.asOf);
    return winter::quantile(std::vector<double>(bees.begin(), bees.end()), 0.5);
}

bool changesOver(const Reckoning& r, const std::array<Part, 3>& parts, Verdict verdict) {
    return std::any_of(parts.begin(), parts.end(),
                       [&](const Part& part) { return verdictWith(r, part, r.wish) != verdict; });
}

// Stores known to `halfBand` on either side of what is thought now, and no better.
bool storesSettle(const Reckoning& r, const Part& all, Verdict verdict, double halfBand, double sd) {
    for (double side : {-1.0, 0.0, 1.0}) {
        Wish wish = r.wish;
        wish.mean = kilograms(std::max(0.0, r.wish.mean.value() + side * halfBand));
        wish.sd = kilograms(sd);
        if (verdictWith(r, all, wish) != verdict) return false;
    }
    return true;
}

double earlySd(const Reckoning& r) {
    const double early = r.wish.sd.value() * r.wish.sd.value() - r.estimate.sd.value() * r.estimate.sd.value();
    return std::sqrt(std::max(0.0, early));
}

double sdAfter(const Reckoning& r, const PossibleLook& look) {
    const double now = r.estimate.sd.value();
    const double own = std::hypot(look.relativeSd * r.estimate.mean.value(), look.absoluteKg);
    return now > 0 ? 1 / std::sqrt(1 / (now * now) + 1 / (own * own)) : 0;
}

bool possibleHere(const Reckoning& r, const PossibleLook& look) {
    return look.look != Look::LookThroughWindow || r.question.longHive; // only long hives commonly have one
}

// What would still move the verdict after an observation is how far the better-known mean may turn out to lie.
AnotherLook lookForStores(const Reckoning& r, const Part& all, Verdict verdict) {
    AnotherLook answer{true, std::nullopt, "stores", 2 * tenthPercentile * r.estimate.sd.value(), 0};
    double best = r.estimate.sd.value();
    for (const auto& look : possibleLooks) {
        if (!possibleHere(r, look)) continue;
        const double after = sdAfter(r, look);
        const bool settles = storesSettle(r, all, verdict, tenthPercentile * after, earlySd(r));
        if (!settles && after >= 0.98 * best) continue;
        answer.which = look.look;
        answer.narrowsToKg = 2 * tenthPercentile * after;
        best = after;
        if (settles) break;
    }
    answer.worthIt = answer.which.has_value();
    return answer;
}

double needOf(const Reckoning& r, const Part& part) {
    return winter::quantile(part.withFlow, 1 - r.wish.shortRisk);
}

AnotherLook lookForBees(const Reckoning& r, const std::array<Part, 3>& parts) {
    const double width = std::abs(needOf(r, parts[2]) - needOf(r, parts[0]));
    for (const auto& look : possibleLooks) {
        if (look.beesLogSd <= 0 || !possibleHere(r, look) || r.question.beesLogSd <= 0) continue;
        const double own = 1 / (look.beesLogSd * look.beesLogSd);
        const double now = 1 / (r.question.beesLogSd * r.question.beesLogSd);
        const double after = std::sqrt(1 / (own + now)) / r.question.beesLogSd;
        if (after < 0.9) return {true, look.look, "bees", width, width * after};
    }
    return {false, std::nullopt, "bees", width, width};
}

double neighbourFlow(double strength, int step) {
    constexpr std::array<double, 4> levels{0, 0.1, 0.3, 1};
    const auto at = std::find(levels.begin(), levels.end(), strength) - levels.begin();
    return levels[static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(at + step, 0, 3))];
}

bool changesWithFlow(const Reckoning& r, Verdict verdict, double bees) {
    for (int step : {-1, 1}) {
        winter::AutumnFlow flow = r.flow;
        flow.strength = neighbourFlow(flow.strength, step);
        if (flow.strength == r.flow.strength) continue;
        if (flow.strength == 1) flow.lastDay = r.question.asOf + 14;
        const auto losses = winter::lossesFrom(r.ensemble, r.question.asOf, flow);
        if (verdictWith(r, {losses.largest, r.withoutFlow.largest, bees}, r.wish) != verdict) return true;
    }
    return false;
}

bool onlySetAside(const Reckoning& r, const char* id) {
    const auto& aside = r.question.setAside;
    return !aside.empty() && std::all_of(aside.begin(), aside.end(), [id](const Remark& each) { return each.id == id; });
}

} // namespace

AnotherLook anotherLook(const Reckoning& r, Verdict verdict) {
    // Brood is counted again, and a hive that is another one is looked at; for anything else that was set aside the scale tells what is there.
    if (onlySetAside(r, "doubt-brood")) return {true, Look::Open, "bees", 0, 0};
    if (onlySetAside(r, "doubt-other-hive")) return {true, Look::Open, "stores", 0, 0};
    const Part all{r.withFlow.largest, r.withoutFlow.largest, typicalBees(r)};
    if (r.estimate.contradictory || !r.question.setAside.empty()) {
        AnotherLook weigh{true, Look::Weigh, "stores", 2 * tenthPercentile * r.estimate.sd.value(), 0};
        weigh.narrowsToKg = 2 * tenthPercentile * sdAfter(r, possibleLooks[1]);
        return weigh;
    }
    if (!storesSettle(r, all, verdict, tenthPercentile * r.estimate.sd.value(), earlySd(r))) {
        const AnotherLook stores = lookForStores(r, all, verdict);
        if (stores.worthIt) return stores;
    }
    const auto byBees = fifths(r, [](const winter::WinterDraw& draw) { return draw.beesFactor; });
    if (changesOver(r, byBees, verdict)) {
        const AnotherLook bees = lookForBees(r, byBees);
        if (bees.worthIt) return bees;
    }
    const bool incomeAhead = r.question.season.lastIncome && r.question.season.lastIncome->day > r.question.asOf;
    if (incomeAhead && changesWithFlow(r, verdict, all.bees)) {
        const double band = 2 * tenthPercentile * r.estimate.sd.value();
        return {true, Look::Weigh, "flow", band, 2 * tenthPercentile * sdAfter(r, possibleLooks[1])};
    }
    const auto byForage = fifths(r, [](const winter::WinterDraw& draw) { return draw.forage; });
    if (changesOver(r, byForage, verdict)) return {false, std::nullopt, "forage", 0, 0};
    return {};
}

} // namespace winterlarder::advice
