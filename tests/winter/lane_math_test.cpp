// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/lane_math.h"

#include <cmath>
#include <gtest/gtest.h>

namespace winterlarder::winter::lane_math_test {

TEST(LaneMath, LogarithmKeepsItsBound) {
    for (double x = 1e-300; x < 1e300; x *= 1.37)
        EXPECT_NEAR(lane::log(x), std::log(x), 4e-15 * std::max(1.0, std::abs(std::log(x)))) << x;
    for (double x = 0.5; x < 2; x += 0.00037) EXPECT_NEAR(lane::log(x), std::log(x), 1e-15) << x;
}

TEST(LaneMath, ExponentialKeepsItsBound) {
    for (double x = -690; x < 690; x += 0.137)
        EXPECT_NEAR(lane::exp(x) / std::exp(x), 1, 4e-16 * (1 + std::abs(x)) + 4e-16) << x;
}

TEST(LaneMath, PowersOfTheModel) {
    for (double x = 1e-3; x < 1e5; x *= 1.9) {
        EXPECT_NEAR(lane::power(x, 2.0 / 3.0) / std::pow(x, 2.0 / 3.0), 1, 1e-14) << x;
        EXPECT_NEAR(lane::power(x, -0.48) / std::pow(x, -0.48), 1, 1e-14) << x;
    }
    EXPECT_LT(lane::power(1e-250, 2.0 / 3.0), 1e-160); // what stands for no brood
}

TEST(LaneMath, Clamps) {
    EXPECT_EQ(lane::clamp01(-2), 0);
    EXPECT_EQ(lane::clamp01(0.3), 0.3);
    EXPECT_EQ(lane::clamp01(7), 1);
}

} // namespace winterlarder::winter::lane_math_test
