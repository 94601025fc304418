// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/scores.h"

#include "numerics/normal.h"
#include "tracking/winters.h"

#include <cmath>
#include <numbers>
#include <rapidcheck/gtest.h>

namespace winterlarder::learning::scores_test {
namespace {

// By hand: values 1, 2, 4, observed 2. E|X - y| = (1 + 0 + 2)/3 = 1; E|X - X'| = 2 (1 + 3 + 2)/9 = 12/9; score 1 - 6/9 = 1/3.
TEST(RankedScore, ByHand) {
    EXPECT_NEAR(rankedScore({4, 1, 2}, {1, 1, 1}, 2), 1.0 / 3, 1e-12);
    // Weights 1/2, 1/4, 1/4: E|X - y| = 1/2 + 1/2 = 1; half of E|X - X'| = 1/8 + 3/8 + 2/16 = 0.625.
    EXPECT_NEAR(rankedScore({1, 2, 4}, {2, 1, 1}, 2), 1 - 0.625, 1e-12);
}

TEST(RankedScore, OneNumberScoresItsDistance) { EXPECT_EQ(rankedScore({7}, {1}, 5), 2); }

// Closed form for a normal (Gneiting and Raftery 2007): sd (z (2 Phi(z) - 1) + 2 phi(z) - 1/sqrt(pi)).
TEST(RankedScore, OfANormalIsItsClosedForm) {
    const int n = 20000;
    std::vector<double> values, weights(n, 1.0);
    for (int i = 0; i < n; ++i) values.push_back(10 + 2 * numerics::inverseNormal((i + 0.5) / n));
    for (double observed : {7.0, 10.0, 13.5}) {
        const double z = (observed - 10) / 2;
        const double density = std::exp(-0.5 * z * z) / std::sqrt(2 * std::numbers::pi);
        const double exact =
            2 * (z * (2 * numerics::normalBelow(z) - 1) + 2 * density - 1 / std::sqrt(std::numbers::pi));
        EXPECT_NEAR(rankedScore(values, weights, observed), exact, 1e-3); // strata of the tails
    }
}

RC_GTEST_PROP(RankedScoreProperty, IsNeverNegativeAndMovesWithItsUnit, ()) {
    const auto numbers = *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(-1000, 1000)));
    const double observed = *rc::gen::inRange(-1000, 1000);
    std::vector<double> values(numbers.begin(), numbers.end()), doubled;
    for (double value : values) doubled.push_back(2 * value + 3);
    const std::vector<double> weights(values.size(), 1.0);
    const double score = rankedScore(values, weights, observed);
    RC_ASSERT(score >= -1e-9);
    RC_ASSERT(std::abs(rankedScore(doubled, weights, 2 * observed + 3) - 2 * score) < 1e-6);
}

PastWinter lastWinter(double offBy) {
    PastWinter past{tracking::oxfordColony(22, 1, 90), std::nullopt};
    past.question.observations = {
        tracking::weighed(past.question, 60, tracking::expectedGross(past.question, 60) + offBy)};
    return past;
}

TEST(ForecastScore, AWeighingAsExpectedLiesInTheMiddle) {
    const auto score = *scoreOf(lastWinter(0), kilograms(13), constants(), tracking::quick, 2);
    EXPECT_TRUE(score.inside());
    EXPECT_NEAR(score.place, 0.5, 0.05);
    EXPECT_NEAR(score.typical, score.observed, 0.2);
    EXPECT_LT(score.low, score.typical);
    EXPECT_LT(score.typical, score.high);
    const auto far = *scoreOf(lastWinter(-9), kilograms(13), constants(), tracking::quick, 2);
    EXPECT_FALSE(far.inside());
    EXPECT_GT(far.score, score.score);
}

// The handbook's kilograms are spread evenly: here 152 of 200 days are past.
TEST(ForecastScore, TheHandbookKnowsOneNumber) {
    const auto a = *scoreOf(lastWinter(0), kilograms(0), constants(), tracking::quick, 2);
    const auto b = *scoreOf(lastWinter(-30), kilograms(0), constants(), tracking::quick, 2);
    EXPECT_GT(b.handbookScore, a.handbookScore);
    const auto c = *scoreOf(lastWinter(-30), kilograms(20), constants(), tracking::quick, 2);
    EXPECT_NEAR(b.handbookScore - c.handbookScore, 20 * 152.0 / 200, 1e-9);
}

TEST(ForecastScore, ADeadColonyScoresNothing) {
    auto past = lastWinter(0);
    past.end =
        WinterEnd{.day = {80}, .date = past.question.year.date({80}), .alive = false, .storesLeft = kilograms(0)};
    EXPECT_FALSE(scoreOf(past, kilograms(13), constants(), tracking::quick, 2));
}

// Fed and weighed on one day after the simulated run has ended: there is no forecast of that day, and what was fed then is no part of any.
TEST(ForecastScore, AWeighingAfterTheRunsEndIsNotScored) {
    auto past = lastWinter(0);
    const SeasonDay late = winter::runEnd(past.question.winter, constants()) + 5;
    past.question.today = late;
    past.question.steps = {{late, tracking::KnownStep::Kind::Feed, kilograms(3), std::nullopt}};
    const auto before = scoreOf(past, kilograms(13), constants(), tracking::quick, 2);
    past.question.observations.push_back(tracking::weighed(past.question, late.w, 38));
    const auto after = scoreOf(past, kilograms(13), constants(), tracking::quick, 2);
    ASSERT_TRUE(before && after);
    EXPECT_EQ(after->day, SeasonDay{60});
    EXPECT_EQ(after->observed, before->observed);
    past.question.observations.erase(past.question.observations.begin());
    EXPECT_FALSE(scoreOf(past, kilograms(13), constants(), tracking::quick, 2));
}

TEST(ForecastScore, SummaryIsTheMean) {
    const ForecastScore in{{0}, 5, 4, 5, 6, 0.5, 1, 2}, out{{0}, 9, 4, 5, 6, 1, 3, 4};
    const auto summary = summarise({in, out});
    EXPECT_EQ(summary.forecasts, 2);
    EXPECT_EQ(summary.inside, 0.5);
    EXPECT_EQ(summary.score, 2);
    EXPECT_EQ(summary.handbookScore, 3);
    EXPECT_EQ(summarise({}).forecasts, 0);
}

} // namespace
} // namespace winterlarder::learning::scores_test
