// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/places.h"

#include <array>
#include <cmath>
#include <numeric>
#include <rapidcheck/gtest.h>

namespace winterlarder::winter::ensemble_test {

namespace {

struct EnsembleRow {
    const char* station;
    double bees;
    int start;
    double use50, use90, loss50, loss80, loss90, loss95;
    double runsOut, reserve10, reserve50, reserve90; // with P80 + 4 kg: %, kg on the forage day
    double lockedIn90;
};

// The model's table of eight stations (20,000 winters of another generator).
constexpr std::array<EnsembleRow, 8> rows{{
    {"gb-oxford", 13000, -92, 12.5, 18.8, 11.8, 15.3, 17.8, 20.2, 6.4, 2.7, 8.1, 11.4, 12},
    {"se-stockholm", 14000, -92, 14.1, 20.1, 13.8, 17.2, 19.5, 21.4, 5.5, 2.9, 8.1, 11.6, 68},
    {"de-jena", 14000, -92, 11.8, 17.1, 11.5, 14.5, 16.7, 18.7, 5.3, 3.2, 7.8, 10.7, 35},
    {"ca-toronto", 20000, -92, 16.7, 23.5, 15.9, 19.9, 22.2, 24.2, 5.5, 2.7, 8.7, 13.1, 67},
    {"ca-winnipeg", 20000, -92, 21.1, 28.7, 20.4, 25.1, 27.8, 30.2, 6.9, 2.5, 9.5, 15.0, 142},
    {"us-ga-atlanta", 16000, -92, 10.5, 16.1, 8.6, 11.6, 13.7, 15.9, 5.5, 2.5, 7.3, 10.0, 10},
    {"pt-lisbon", 14000, -92, 12.9, 22.4, 6.4, 9.3, 11.4, 13.7, 5.6, 3.2, 7.3, 9.7, 0},
    {"au-melbourne", 16000, -91, 10.7, 16.1, 8.9, 11.6, 13.5, 15.4, 4.6, 2.6, 7.0, 9.6, 0},
}};

std::vector<double> lockedIn(const DemandEnsemble& ensemble) {
    std::vector<double> days;
    for (const auto& draw : ensemble.draws()) days.push_back(draw.longestLockedIn);
    return days;
}

bool same(std::span<const float> a, std::span<const float> b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end());
}

} // namespace

// Tolerances the model states for another generator with 2,500 winters: 4 % on the median, 5 % on P80 and P90, 8 % on P95.
TEST(Ensemble, EightStations) {
    for (const auto& row : rows) {
        SCOPED_TRACE(row.station);
        const auto ensemble = simulate(questionAt(row.station, row.bees, row.start), constants(), {1, 2500}, 2);
        const auto losses = lossesFrom(*ensemble, {row.start}, {});
        const auto near = [](double value, double expected, double share) {
            EXPECT_NEAR(value, expected, share * expected);
        };
        near(quantile(losses.used, 0.5), row.use50, 0.04);
        near(quantile(losses.used, 0.9), row.use90, 0.05);
        near(quantile(losses.largest, 0.5), row.loss50, 0.04);
        near(quantile(losses.largest, 0.8), row.loss80, 0.05);
        near(quantile(losses.largest, 0.9), row.loss90, 0.05);
        near(quantile(losses.largest, 0.95), row.loss95, 0.08);
        EXPECT_NEAR(quantile(lockedIn(*ensemble), 0.9), row.lockedIn90, 2);
        const auto outcome = follow(losses, kilograms(quantile(losses.largest, 0.8) + 4), kilograms(0), kilograms(4));
        EXPECT_NEAR(100 * outcome.runsOut.share, row.runsOut, 2); // five standard errors of a share of 5 %
        EXPECT_NEAR(outcome.touchesReserve.share, 0.2, 0.001);
        EXPECT_NEAR(outcome.atForage.low.value(), row.reserve10, 0.6);
        EXPECT_NEAR(outcome.atForage.typical.value(), row.reserve50, 0.06 * row.loss80);
        EXPECT_NEAR(outcome.atForage.high.value(), row.reserve90, 0.06 * row.loss80);
    }
}

TEST(Ensemble, ThreadsChangeNoDigit) {
    const auto question = questionAt("ca-halifax", 14000, -110);
    const auto one = simulate(question, constants(), {42, 333}, 1);
    for (int threads : {2, 3, 7}) {
        const auto many = simulate(question, constants(), {42, 333}, threads);
        for (SeasonDay day = one->firstDay(); day <= one->lastDay(); day = day + 1) {
            ASSERT_TRUE(same(one->netLoss(day), many->netLoss(day))) << day.w;
            ASSERT_TRUE(same(one->bees(day), many->bees(day))) << day.w;
            ASSERT_EQ(one->means(day).useG, many->means(day).useG) << day.w;
        }
    }
}

TEST(Ensemble, MoreWintersBeginWithTheSameOnes) {
    const auto question = questionAt("ca-halifax", 14000, -92);
    const auto few = simulate(question, constants(), {1, 50});
    const auto many = simulate(question, constants(), {1, 200});
    EXPECT_TRUE(same(few->netLoss({60}), many->netLoss({60}).first(50)));
}

TEST(Ensemble, ColoniesShareTheWeatherAndHaveLuckOfTheirOwn) {
    auto question = questionAt("ca-halifax", 14000, -92);
    const auto first = simulate(question, constants(), {1, 100});
    question.colonyStream = colonyStream("another");
    const auto second = simulate(question, constants(), {1, 100});
    EXPECT_EQ(first->means({-92}).temperatureC, second->means({-92}).temperatureC);
    EXPECT_EQ(first->draws()[7].seasonOffsetK, second->draws()[7].seasonOffsetK);
    EXPECT_NE(first->draws()[7].beesFactor, second->draws()[7].beesFactor);
}

TEST(Ensemble, ALaterStartMeetsTheSameWeather) {
    const auto early = simulate(questionAt("ca-halifax", 14000, -120), constants(), {1, 64});
    const auto late = simulate(questionAt("ca-halifax", 14000, -60), constants(), {1, 64});
    EXPECT_NEAR(early->means({-30}).temperatureC, late->means({-30}).temperatureC, 1e-12);
}

// Weather of the draws: daily means scatter round the normal with the station's spread, day and season together.
TEST(Ensemble, WeatherHasTheSpreadOfTheStation) {
    auto question = questionAt("ca-halifax", 14000, 0);
    const int winters = 4000;
    const auto ensemble = simulate(question, constants(), {3, winters}, 2);
    const double sd = question.curve.dailySd({14}).value();
    const double offset = question.curve.variability().seasonOffsetSd;
    const double error = std::sqrt((sd * sd + offset * offset) / winters);
    EXPECT_NEAR(ensemble->means({14}).temperatureC, question.curve.normal({14}).value(), 4 * error);
}

TEST(Ensemble, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    EXPECT_FALSE(simulate(questionAt("ca-halifax", 14000, -92), constants(), {1, 100}, 1, source.get_token()));
}

TEST(Ensemble, TellsItsProgress) {
    double last = 0;
    const auto ensemble =
        simulate(questionAt("ca-halifax", 14000, -92), constants(), {1, 100}, 1, {}, [&](double share) {
            EXPECT_GT(share, last);
            last = share;
        });
    ASSERT_TRUE(ensemble);
    EXPECT_EQ(last, 1);
}

// Whichever thread breaks, the caller hears of it, and once.
TEST(Ensemble, WhatBreaksOnAnyThreadIsThrownToTheCaller) {
    for (const int threads : {1, 4})
        EXPECT_THROW(simulate(questionAt("ca-halifax", 14000, -92), constants(), {1, 400}, threads, {},
                              [](double) { throw std::runtime_error("broken"); }),
                     std::runtime_error)
            << threads;
}

TEST(Ensemble, ExactDatesAreNeitherDrawnNorShifted) {
    auto question = questionAt("ca-halifax", 14000, 40);
    question.season.broodStop->exact = true;
    question.season.broodRestart->exact = true;
    question.season.forage = climate::SeasonDate{{118}, 9, climate::DateOrigin::Case, true};
    const auto ensemble = simulate(question, constants(), {1, 200});
    for (const auto& draw : ensemble->draws()) {
        EXPECT_EQ(draw.broodStop, question.season.broodStop->day.w);
        EXPECT_EQ(draw.broodRestart, question.season.broodRestart->day.w);
        EXPECT_EQ(draw.forage, 118);
        EXPECT_LE(draw.buildup, 111);
    }
}

RC_GTEST_PROP(EnsembleProperty, DatesKeepTheirOrder, ()) {
    auto question = questionAt("gb-oxford", 13000, -92);
    question.season.broodStop->day.w += *rc::gen::inRange(-40, 40);
    question.season.buildup->day.w += *rc::gen::inRange(-40, 20);
    const auto ensemble = simulate(question, constants(), {*rc::gen::arbitrary<std::uint64_t>(), 32});
    for (const auto& draw : ensemble->draws()) {
        RC_ASSERT(draw.broodStop <= draw.broodRestart);
        RC_ASSERT(draw.buildup >= draw.broodRestart + 7);
        RC_ASSERT(draw.forage >= draw.buildup + 7);
    }
}

// Start + in - used = end, day by day, for the means as for a single winter.
TEST(Ensemble, BalancesItsBooks) {
    const auto ensemble = simulate(questionAt("pt-lisbon", 14000, -92), constants(), {1, 128});
    double net = 0, used = 0;
    for (SeasonDay day = ensemble->firstDay(); day <= ensemble->lastDay(); day = day + 1) {
        net += (ensemble->means(day).useG - ensemble->means(day).incomeG) / 1000;
        used += ensemble->means(day).useG / 1000;
        const auto mean = [](std::span<const float> row) {
            return std::accumulate(row.begin(), row.end(), 0.0) / static_cast<double>(row.size());
        };
        ASSERT_NEAR(mean(ensemble->netLoss(day)), net, 1e-4) << day.w; // rows are single precision
        ASSERT_NEAR(mean(ensemble->used(day)), used, 1e-4) << day.w;
    }
}

} // namespace winterlarder::winter::ensemble_test
