// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/places.h"
#include "winter/weather.h"

#include <cmath>
#include <numbers>

// Days already past: met exactly, and what follows and what lies between is drawn on from them.
namespace winterlarder::winter::weather_test {
namespace {

WinterQuestion halifax(int start = -92) { return questionAt("ca-halifax", 15000, start); }

double normalOn(const WinterQuestion& q, int day) { return q.curve.normal({day}).value(); }

TEST(WeatherSoFar, MeasuredDaysAreMetInEveryWinter) {
    auto q = halifax();
    for (int day = -92; day < -32; ++day) q.weatherSoFar.push_back({{day}, normalOn(q, day) - 3 + 0.1 * (day % 7)});
    const auto ensemble = *simulate(q, constants(), {1, 200}, 2);
    for (int day = -92; day < -32; day += 9)
        EXPECT_NEAR(ensemble.means({day}).temperatureC, normalOn(q, day) - 3 + 0.1 * (day % 7), 1e-9);
    // Met by every one of them: with the same bees and brood the use of the first day differs only by the colonies' luck, not by weather.
    auto twin = q;
    const auto other = *simulate(twin, constants(), {2, 200}, 2);
    EXPECT_NEAR(other.means({-50}).temperatureC, ensemble.means({-50}).temperatureC, 1e-9);
}

TEST(WeatherSoFar, NothingMeasuredIsThePlainChain) {
    const auto q = halifax();
    const auto offset = seasonOffset(q);
    EXPECT_EQ(offset.meanK, 0);
    EXPECT_EQ(offset.sdK, q.curve.variability().seasonOffsetSd);
}

// Posterior of the offset by brute force: density of the measured chain on a grid of offsets.
TEST(WeatherSoFar, OffsetAsByQuadrature) {
    auto q = halifax();
    const double r = q.curve.dailyPersistence(), so = q.curve.variability().seasonOffsetSd;
    for (int day : {-60, -59, -58, -55, -54, -40})
        q.weatherSoFar.push_back({{day}, normalOn(q, day) + 2.5 + 0.3 * (day % 5)});
    double mass = 0, mean = 0, squares = 0;
    for (double offset = -6; offset <= 6; offset += 0.002) {
        double log = -0.5 * offset * offset / (so * so), lastZ = 0;
        int last = 0;
        for (const auto& day : q.weatherSoFar) {
            const double z = (day.meanC - normalOn(q, day.day.w) - offset) / q.curve.dailySd(day.day).value();
            const double lag = &day == &q.weatherSoFar.front() ? 0 : std::pow(r, day.day.w - last);
            log -= 0.5 * std::pow(z - lag * lastZ, 2) / (1 - lag * lag);
            lastZ = z;
            last = day.day.w;
        }
        const double density = std::exp(log);
        mass += density;
        mean += density * offset;
        squares += density * offset * offset;
    }
    mean /= mass;
    const auto offset = seasonOffset(q);
    EXPECT_NEAR(offset.meanK, mean, 1e-6);
    EXPECT_NEAR(offset.sdK, std::sqrt(squares / mass - mean * mean), 1e-6);
    EXPECT_GT(offset.meanK, 0); // a warm autumn so far makes a warm winter likelier
}

// Anomalies after the last measured day fall back by the persistence a day; in a gap they are pulled from both sides.
TEST(WeatherSoFar, WhatFollowsIsDrawnOnFromIt) {
    auto q = halifax();
    const double warm = 8;
    q.weatherSoFar = {{{-92}, normalOn(q, -92)}, {{-60}, normalOn(q, -60) + warm}, {{-57}, normalOn(q, -57) + warm}};
    const winter::Sampling sampling{3, 6000};
    const auto ensemble = *simulate(q, constants(), sampling, 2);
    const auto offset = seasonOffset(q);
    const double r = q.curve.dailyPersistence();
    const auto anomaly = [&](int day) { return ensemble.means({day}).temperatureC - normalOn(q, day) - offset.meanK; };
    const auto z = [&](int day) { return anomaly(day) / q.curve.dailySd({day}).value(); };
    const double error = 4 / std::sqrt(6000.0); // four standard errors of a standardised mean
    const double lastZ = (warm - offset.meanK) / q.curve.dailySd({-57}).value();
    for (int ahead : {1, 2, 5}) EXPECT_NEAR(z(-57 + ahead), std::pow(r, ahead) * lastZ, error) << ahead;
    // Between two days of the chain three apart: (r(1 - r^4) a + r^2 (1 - r^2) b) / (1 - r^6).
    const double first = (warm - offset.meanK) / q.curve.dailySd({-60}).value(), q2 = r * r;
    EXPECT_NEAR(z(-59), (r * (1 - q2 * q2) * first + q2 * (1 - q2) * lastZ) / (1 - q2 * q2 * q2), error);
    EXPECT_NEAR(z(-30), 0, error);
}

// The gap keeps the variance a conditioned chain has: (1 - q)(1 - q^n)/(1 - q^(n+1)) for the first of n+1 steps.
TEST(WeatherSoFar, DaysBeforeTheStartMatterOnlyThroughTheChain) {
    auto q = halifax(-60);
    q.weatherSoFar = {{{-61}, normalOn(q, -61) - 9}};
    const auto ensemble = *simulate(q, constants(), {3, 4000}, 2);
    const auto offset = seasonOffset(q);
    const double expected = q.curve.dailyPersistence() * (-9 - offset.meanK) / q.curve.dailySd({-61}).value();
    const double z =
        (ensemble.means({-60}).temperatureC - normalOn(q, -60) - offset.meanK) / q.curve.dailySd({-60}).value();
    EXPECT_NEAR(z, expected, 4 / std::sqrt(4000.0));
}

TEST(WeatherSoFar, RefusesDaysOutOfOrder) {
    auto q = halifax();
    q.weatherSoFar = {{{-60}, 5}, {{-60}, 6}};
    EXPECT_THROW(static_cast<void>(simulate(q, constants(), {1, 16})), ContractViolation);
    q.weatherSoFar = {{{-60}, std::nan("")}};
    EXPECT_THROW(static_cast<void>(simulate(q, constants(), {1, 16})), ContractViolation);
}

} // namespace
} // namespace winterlarder::winter::weather_test
