// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/places.h"

#include <array>
#include <cmath>
#include <numeric>
#include <rapidcheck/gtest.h>

namespace winterlarder::winter {

namespace {

struct EnsembleRow {
    const char* station;
    double bees;
    int start;
    double use50, use90, loss50, loss80, loss90, loss95, lockedIn90;
};

// The model's table of eight stations (20,000 winters of another generator).
constexpr std::array<EnsembleRow, 8> rows{{
    {"gb-oxford", 13000, -92, 13.1, 19.0, 13.0, 16.4, 18.8, 21.2, 12},
    {"se-stockholm", 14000, -92, 11.5, 15.4, 11.3, 13.7, 15.1, 16.5, 69},
    {"de-jena", 14000, -92, 11.2, 15.5, 11.1, 13.7, 15.5, 17.3, 35},
    {"ca-toronto", 20000, -92, 15.0, 20.7, 14.6, 18.0, 20.1, 22.1, 67},
    {"ca-winnipeg", 20000, -92, 16.9, 22.7, 16.5, 20.0, 22.1, 24.0, 142},
    {"us-ga-atlanta", 16000, -92, 13.9, 22.0, 13.2, 17.8, 20.9, 23.9, 10},
    {"pt-lisbon", 14000, -92, 19.0, 32.1, 10.0, 14.4, 17.5, 20.6, 0},
    {"au-melbourne", 16000, -91, 13.3, 20.1, 12.3, 16.0, 18.6, 21.1, 0},
}};

std::vector<double> lockedIn(const DemandEnsemble& ensemble) {
    std::vector<double> days;
    for (const auto& draw : ensemble.draws()) days.push_back(draw.longestLockedIn);
    return days;
}

bool same(std::span<const float> a, std::span<const float> b) { return std::equal(a.begin(), a.end(), b.begin(), b.end()); }

} // namespace

// Tolerances the model states for another generator with 2,500 winters: 4 % on the median, 5 % on P80 and P90, 8 % on P95.
TEST(Ensemble, EightStations) {
    for (const auto& row : rows) {
        SCOPED_TRACE(row.station);
        const auto ensemble = simulate(questionAt(row.station, row.bees, row.start), constants(), {1, 2500}, 2);
        const auto losses = lossesFrom(*ensemble, {row.start}, {});
        const auto near = [](double value, double expected, double share) { EXPECT_NEAR(value, expected, share * expected); };
        near(quantile(losses.used, 0.5), row.use50, 0.04);
        near(quantile(losses.used, 0.9), row.use90, 0.05);
        near(quantile(losses.largest, 0.5), row.loss50, 0.04);
        near(quantile(losses.largest, 0.8), row.loss80, 0.05);
        near(quantile(losses.largest, 0.9), row.loss90, 0.05);
        near(quantile(losses.largest, 0.95), row.loss95, 0.08);
        EXPECT_NEAR(quantile(lockedIn(*ensemble), 0.9), row.lockedIn90, 2);
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
    const auto ensemble = simulate(questionAt("ca-halifax", 14000, -92), constants(), {1, 100}, 1, {}, [&](double share) {
        EXPECT_GT(share, last);
        last = share;
    });
    ASSERT_TRUE(ensemble);
    EXPECT_EQ(last, 1);
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

} // namespace winterlarder::winter
