// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/places.h"

#include <cmath>

// How far days nobody measured may lie from what their neighbours say. The daily anomaly is a stationary chain with lag r: given the
// days on both sides, a steps and b steps away, its variance is (1 - r^2a)(1 - r^2b) / (1 - r^2(a+b)); given one of them, 1 - r^2a.
namespace winterlarder::winter::bridged_weather_test {
namespace {

constexpr double persistence = 0.75, sdK = 4;
constexpr int winters = 3000;

WinterQuestion flatPlace() {
    auto question = questionAt("ca-halifax", 15000, -92);
    question.curve = climate::ClimateCurve::constant(celsius(5), 44.9,
                                                     {sdK, sdK, persistence, 0}); // no offset: scatter of days alone
    return question;
}

struct Scatter {
    double mean = 0, variance = 0;
};

// Temperatures of the days over winters drawn one by one, in units of their scatter.
std::vector<Scatter> scatterOf(const WinterQuestion& question, const std::vector<int>& days) {
    std::vector<Scatter> found(days.size());
    for (std::uint64_t seed = 1; seed <= winters; ++seed) {
        const auto winter = *simulate(question, constants(), {seed, 1});
        for (std::size_t i = 0; i < days.size(); ++i) {
            const double z = (winter.means({days[i]}).temperatureC - 5) / sdK;
            found[i].mean += z / winters;
            found[i].variance += z * z / winters;
        }
    }
    for (auto& each : found) each.variance -= each.mean * each.mean;
    return found;
}

double between(int fromBefore, int toAfter) {
    const double before = std::pow(persistence, 2 * fromBefore), after = std::pow(persistence, 2 * toAfter);
    return (1 - before) * (1 - after) / (1 - before * after);
}

// Four standard errors of a variance found from so many normal values.
double tolerance(double variance) { return 4 * variance * std::sqrt(2.0 / winters); }

TEST(BridgedWeather, ScattersAsAChainHeldAtBothEnds) {
    auto question = flatPlace();
    constexpr int first = -60, gap = 5;
    question.weatherSoFar = {{{first}, 9}, {{first + gap}, 2}};
    const std::vector<int> days{first + 1, first + 2, first + 3, first + 4};
    const auto found = scatterOf(question, days);
    for (int i = 1; i < gap; ++i) {
        const double expected = between(i, gap - i);
        EXPECT_NEAR(found[static_cast<std::size_t>(i - 1)].variance, expected, tolerance(expected))
            << i << " days into the gap";
    }
}

TEST(BridgedWeather, ScattersMoreTheFartherFromTheOnlyMeasuredDay) {
    auto question = flatPlace();
    question.weatherSoFar = {{{-60}, 9}};
    const std::vector<int> away{1, 3, 8};
    std::vector<int> days;
    for (const int by : away) days.push_back(-60 - by), days.push_back(-60 + by);
    const auto found = scatterOf(question, days);
    for (std::size_t i = 0; i < away.size(); ++i) {
        const double expected = 1 - std::pow(persistence, 2 * away[i]);
        EXPECT_NEAR(found[2 * i].variance, expected, tolerance(expected)) << away[i] << " days before";
        EXPECT_NEAR(found[2 * i + 1].variance, expected, tolerance(expected)) << away[i] << " days after";
    }
}

} // namespace
} // namespace winterlarder::winter::bridged_weather_test
