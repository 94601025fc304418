// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/scores.h"

#include "support/require.h"
#include "winter/draws.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace winterlarder::learning {

namespace {

std::vector<std::size_t> orderOf(const std::vector<double>& values) {
    std::vector<std::size_t> order(values.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return values[a] < values[b]; });
    return order;
}

double weightedQuantile(const std::vector<double>& values, const std::vector<double>& weights, double q) {
    double below = 0;
    const auto order = orderOf(values);
    for (std::size_t i : order) {
        below += weights[i];
        if (below >= q) return values[i];
    }
    return values[order.back()];
}

} // namespace

double rankedScore(std::vector<double> values, std::vector<double> weights, double observed) {
    require(!values.empty() && values.size() == weights.size(), "{} values with {} weights", values.size(),
            weights.size());
    const double total = std::accumulate(weights.begin(), weights.end(), 0.0);
    double distance = 0, half = 0, below = 0;
    for (std::size_t i : orderOf(values)) {
        const double weight = weights[i] / total;
        distance += weight * std::abs(values[i] - observed);
        half += weight * values[i] * (2 * below + weight - 1);
        below += weight;
    }
    return distance - half;
}

namespace {

const tracking::Observation* lastWeighed(const tracking::FollowQuestion& question) {
    const tracking::Observation* last = nullptr;
    for (const auto& seen : question.observations)
        if (tracking::isWeighed(seen) && seen.day <= question.today && seen.day > question.decided &&
            (!last || seen.day >= last->day))
            last = &seen;
    return last;
}

// The reading each particle would give, its own new error counted.
std::vector<double> readings(const tracking::FollowQuestion& question, const tracking::Tracked& tracked,
                             const tracking::Observation& seen, const ModelConstants& constants) {
    constexpr std::uint32_t noiseIndex = 1u << 18;
    const auto& belief = tracked.belief;
    const auto alive = belief.roster->reading(seen, question, constants),
               starved = belief.roster->reading(seen, question, constants, true);
    std::vector<double> values(belief.particles());
    for (std::size_t p = 0; p < values.size(); ++p) {
        const auto& reading = belief.outDay[p] < seen.day.w ? starved : alive;
        values[p] = tracking::Unknowns::winterPart(reading, *tracked.paths, seen.day, belief.winterOf(p));
        for (const auto& part : reading.sum) values[p] += part.factor * belief.unknowns[part.unknown][p];
        values[p] +=
            std::sqrt(reading.freshVariance) * winter::normal(2, winter::Luck::Colony, question.winter.colonyStream,
                                                              static_cast<std::uint32_t>(p), noiseIndex);
    }
    return values;
}

// The handbook knows the stores of autumn, what was given since, and one number for the winter.
double handbookReading(const tracking::FollowQuestion& question, const tracking::Tracked& tracked,
                       const tracking::Observation& seen, Mass use, const ModelConstants& constants) {
    const auto reading = tracked.belief.roster->reading(seen, question, constants);
    const double length = std::max(1, question.winter.season.forage->day - question.decided);
    const double past = std::clamp((seen.day - question.decided) / length, 0.0, 1.0);
    double life = 0;
    for (std::size_t i = 0; reading.ofWeight && i < tracked.paths->winters(); ++i)
        life += tracked.paths->lifeKg(seen.day, i);
    life /= static_cast<double>(tracked.paths->winters());
    return question.stores.mean.value() + reading.known + life - past * use.value();
}

} // namespace

std::optional<ForecastScore> scoreOf(const PastWinter& winter, Mass handbookUse, const ModelConstants& constants,
                                     winter::Sampling sampling, int threads, std::stop_token stop) {
    if (winter.end && !winter.end->alive) return std::nullopt;
    const tracking::FollowQuestion told = tracking::withinRun(asTold(winter), constants);
    const tracking::Observation* found = lastWeighed(told);
    if (!found) return std::nullopt;
    const tracking::Observation seen = *found;
    tracking::FollowQuestion blind = told;
    blind.observations.clear();
    blind.winter.weatherSoFar.clear();
    blind.today = seen.day;
    const auto tracked = tracking::track(blind, constants, sampling, threads, stop);
    if (!tracked) return std::nullopt;
    const auto values = readings(blind, *tracked, seen, constants);
    const auto& weights = tracked->belief.weight;
    ForecastScore score{seen.day, tracked->belief.roster->reading(seen, blind, constants).value};
    score.low = weightedQuantile(values, weights, 0.05);
    score.typical = weightedQuantile(values, weights, 0.5);
    score.high = weightedQuantile(values, weights, 0.95);
    for (std::size_t p = 0; p < values.size(); ++p) score.place += values[p] < score.observed ? weights[p] : 0;
    score.score = rankedScore(values, weights, score.observed);
    score.handbookScore = std::abs(handbookReading(blind, *tracked, seen, handbookUse, constants) - score.observed);
    return score;
}

ScoreSummary summarise(const std::vector<ForecastScore>& scores) {
    ScoreSummary summary;
    for (const auto& each : scores) {
        ++summary.forecasts;
        summary.inside += each.inside() ? 1 : 0;
        summary.score += each.score;
        summary.handbookScore += each.handbookScore;
    }
    if (summary.forecasts == 0) return summary;
    for (double* mean : {&summary.inside, &summary.score, &summary.handbookScore}) *mean /= summary.forecasts;
    return summary;
}

} // namespace winterlarder::learning
