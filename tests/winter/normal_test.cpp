// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/normal.h"

#include <boost/math/distributions/normal.hpp>
#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace winterlarder::winter::normal_test {

// Reference: Boost.Math's quantile of the normal distribution. Stated bound of ours: 1e-9, reached: far below.
TEST(InverseNormal, AgreesWithBoost) {
    const boost::math::normal standard;
    std::vector<double> probabilities;
    for (int i = 1; i < 20000; ++i) probabilities.push_back(i / 20000.0);
    for (int power = 1; power <= 300; ++power) probabilities.push_back(std::pow(10.0, -power));
    for (int power = 5; power <= 15; ++power) probabilities.push_back(1 - std::pow(10.0, -power));
    for (double p : probabilities) {
        const double expected = boost::math::quantile(standard, p);
        EXPECT_NEAR(numerics::inverseNormal(p), expected, 1e-9 * std::max(1.0, std::abs(expected))) << "p = " << p;
    }
}

TEST(InverseNormal, ManyAtOnceGiveTheSameDigits) {
    std::vector<double> values;
    for (int i = 1; i < 1000; ++i) values.push_back(i / 1000.0);
    std::vector<double> expected;
    for (double p : values) expected.push_back(numerics::inverseNormal(p));
    numerics::inverseNormals(values);
    EXPECT_EQ(values, expected);
}

TEST(NormalBelow, UndoesTheInverse) {
    for (double p : {1e-12, 1e-4, 0.025, 0.5, 0.8, 0.999})
        EXPECT_NEAR(numerics::normalBelow(numerics::inverseNormal(p)), p, 1e-12);
}

} // namespace winterlarder::winter::normal_test
