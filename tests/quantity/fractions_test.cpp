// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/fractions.h"

#include "quantity/text.h"
#include "support/require.h"

#include <gtest/gtest.h>
#include <limits>

namespace winterlarder {
namespace {

TEST(Fractions, AreInLowestTerms) {
    EXPECT_EQ(formatFraction(0.236, 16), "1/4") << "6 mm on a rule of inches";
    EXPECT_EQ(formatFraction(0.394, 16), "3/8") << "10 mm";
    EXPECT_EQ(formatFraction(0.315, 16), "5/16") << "8 mm";
    EXPECT_EQ(formatFraction(16.85, 16), "16 7/8");
    EXPECT_EQ(formatFraction(1.5, 2), "1 1/2");
    EXPECT_EQ(formatFraction(1.99, 8), "2");
    EXPECT_EQ(formatFraction(0.02, 8), "0");
}

TEST(Fractions, AreReadBack) {
    const NumberStyle style{'.', UnitSystem::UnitedStates};
    EXPECT_NEAR(parseLength(formatFraction(16.85, 16) + " in", LengthUnit::Inch, style)->value(), 16.875 * 25.4, 1e-9);
    EXPECT_NEAR(parseLength(formatFraction(0.39, 8) + " in", LengthUnit::Inch, style)->value(), 0.375 * 25.4, 1e-9);
    EXPECT_NEAR(parseVolume(formatFraction(1.52, 4) + " gal", VolumeUnit::UsGallon, style)->value(), 1.5 * 3.785411784,
                1e-9);
}

TEST(Fractions, RefuseWhatIsNoNumber) {
    EXPECT_THROW(formatFraction(-1, 8), ContractViolation);
    EXPECT_THROW(formatFraction(std::numeric_limits<double>::quiet_NaN(), 8), ContractViolation);
    EXPECT_THROW(formatFraction(1, 3), ContractViolation);
}

} // namespace
} // namespace winterlarder
