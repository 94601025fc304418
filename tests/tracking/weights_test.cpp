// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/weights.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace winterlarder::tracking::weights_test {
namespace {

TEST(Weights, SumToOneHoweverSmallTheLikelihoods) {
    const auto weights = normalised({-5000, -5000 + std::log(3.0)});
    EXPECT_NEAR(weights[0], 0.25, 1e-12);
    EXPECT_NEAR(weights[1], 0.75, 1e-12);
}

TEST(Weights, AreEqualWhereNothingIsPossible) {
    const double never = -std::numeric_limits<double>::infinity();
    EXPECT_EQ(normalised({never, never}), (std::vector<double>{0.5, 0.5}));
}

TEST(Weights, EffectiveSizeLiesBetweenOneAndAll) {
    EXPECT_NEAR(effectiveSize({0.25, 0.25, 0.25, 0.25}), 4, 1e-12);
    EXPECT_NEAR(effectiveSize({1, 0, 0, 0}), 1, 1e-12);
    EXPECT_NEAR(effectiveSize({0.5, 0.5, 0, 0}), 2, 1e-12);
}

TEST(Weights, TemperingKeepsTheSizeAskedFor) {
    std::vector<double> logs, none(1000, 0.0);
    for (int i = 0; i < 1000; ++i) logs.push_back(-0.5 * std::pow((i - 500) / 5.0, 2));
    const double power = temperingPower(logs, none, 250);
    EXPECT_GT(power, 0);
    EXPECT_LT(power, 1);
    for (double& each : logs) each *= power;
    EXPECT_NEAR(effectiveSize(normalised(logs)), 250, 0.5);
}

TEST(Weights, TemperingLeavesALikelihoodThatHarmsNothing) { EXPECT_EQ(temperingPower({0, 0.1, 0.2}, {0, 0, 0}, 2), 1); }

TEST(WeightedKilograms, QuantilesAreThoseOfTheValues) {
    WeightedKilograms kilograms;
    for (int i = 0; i < 1000; ++i) kilograms.add(10 + i * 0.01, 1);
    EXPECT_NEAR(kilograms.quantile(0.5), 15, 0.011); // the grid is 10 g
    EXPECT_NEAR(kilograms.quantile(0.1), 11, 0.011);
    EXPECT_NEAR(kilograms.shareBelow(12), 0.2, 0.0011);
}

TEST(WeightedKilograms, StarvedColoniesHaveNothing) {
    WeightedKilograms kilograms;
    kilograms.add(-3, 0.6);
    kilograms.add(5, 0.4);
    EXPECT_EQ(kilograms.quantile(0.5), 0);
    kilograms.clear();
    kilograms.add(5, 1);
    EXPECT_NEAR(kilograms.quantile(0.1), 5, 0.011);
}

RC_GTEST_PROP(WeightedKilogramsProperty, QuantilesRise, ()) {
    WeightedKilograms kilograms;
    const auto values = *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(-500, 6000)));
    for (int value : values) kilograms.add(value / 100.0, 0.5);
    double before = 0;
    for (double q : {0.05, 0.1, 0.5, 0.9, 0.95}) {
        const double now = kilograms.quantile(q);
        RC_ASSERT(now >= before);
        before = now;
    }
}

} // namespace
} // namespace winterlarder::tracking::weights_test
