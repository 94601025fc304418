// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/linear_belief.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace winterlarder::tracking::linear_belief_test {
namespace {

// One unknown x ~ N(10, 4) seen once with error variance 1 as 13: mean 10 + 4/5 x 3, variance 4/5, likelihood N(13; 10, 5).
TEST(LinearBelief, OneValueByHand) {
    LinearBelief belief(1);
    belief.add(10, 4);
    std::vector<double> likelihood{0};
    belief.observe({{0, 1}}, {13}, 1, likelihood);
    EXPECT_NEAR(belief.mean(0, 0), 12.4, 1e-12);
    EXPECT_NEAR(belief.variance(0, 0), 0.8, 1e-12);
    EXPECT_NEAR(likelihood[0], -0.5 * std::log(2 * std::numbers::pi * 5) - 0.5 * 9 / 5, 1e-12);
}

// Two readings on one scale: stores S ~ N(15, 4), tare error T ~ N(0, 9), each reading S + T with an error of 0.25. The joint normal
// of both readings has variance 13.25 and covariance 13; density and conditional mean are worked out from that 2 x 2 matrix.
TEST(LinearBelief, TwoReadingsShareTheTareError) {
    LinearBelief belief(1);
    belief.add(15, 4);
    belief.add(0, 9);
    std::vector<double> likelihood{0};
    const LinearBelief::Sum sum{{0, 1}, {1, 1}};
    belief.observe(sum, {17.0}, 0.25, likelihood);
    belief.observe(sum, {16.0}, 0.25, likelihood);
    const double a = 13.25, b = 13, det = a * a - b * b, r1 = 2, r2 = 1;
    const double square = (a * r1 * r1 - 2 * b * r1 * r2 + a * r2 * r2) / det;
    EXPECT_NEAR(likelihood[0], -std::log(2 * std::numbers::pi) - 0.5 * std::log(det) - 0.5 * square, 1e-10);
    const double gain = (r1 + r2) / (a + b);
    EXPECT_NEAR(belief.mean(0, 0), 15 + 4 * gain, 1e-10);
    EXPECT_NEAR(belief.mean(0, 1), 9 * gain, 1e-10);
    // Together the readings hardly tell stores from tare: 4 - 4 x 4 x 2 / (a + b).
    EXPECT_NEAR(belief.variance(0, 0), 4 - 32 / (a + b), 1e-10);
}

TEST(LinearBelief, OrderOfReadingsDoesNotMatter) {
    std::vector<double> first{0, 0}, second{0, 0};
    LinearBelief a(2), b(2);
    for (LinearBelief* belief : {&a, &b}) {
        belief->add(15, 4);
        belief->add(0, 9);
        belief->correlate(0, 1, -2);
    }
    a.observe({{0, 1}, {1, 1}}, {17, 18}, 0.3, first);
    a.observe({{0, 1}}, {12, 14}, 2, first);
    b.observe({{0, 1}}, {12, 14}, 2, second);
    b.observe({{0, 1}, {1, 1}}, {17, 18}, 0.3, second);
    for (std::size_t i : {0u, 1u}) {
        EXPECT_NEAR(first[i], second[i], 1e-10);
        EXPECT_NEAR(a.mean(i, 0), b.mean(i, 0), 1e-10);
    }
}

TEST(LinearBelief, RootGivesTheCovarianceBack) {
    LinearBelief belief(1);
    belief.add(0, 4);
    belief.add(0, 0); // known exactly
    belief.add(0, 9);
    belief.correlate(0, 2, 3);
    const auto root = belief.root();
    for (std::size_t a = 0; a < 3; ++a)
        for (std::size_t b = 0; b < 3; ++b) {
            double product = 0;
            for (std::size_t k = 0; k < 3; ++k) product += root[a][k] * root[b][k];
            EXPECT_NEAR(product, belief.variance(a, b), 1e-12);
        }
}

} // namespace
} // namespace winterlarder::tracking::linear_belief_test
