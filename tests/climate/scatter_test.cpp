// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/records.h"

#include <cmath>
#include <gtest/gtest.h>

// What a record's scatter is counted from, on records whose scatter can be counted by hand.
namespace winterlarder::climate::scatter_test {
namespace {

constexpr double swingK = 3;

// 6 degC, warmer and colder by turns; the last of 31 days and of 29 is as it should be, so every month's mean is 6 to the digit.
double byTurns(Date date) {
    const bool unpaired = date.day() == 31 || date.day() == 29;
    if (unpaired && date.plusDays(1).day() == 1) return 6;
    return 6 + (date.day() % 2 ? swingK : -swingK);
}

// Variance of n values with their mean taken off is a sum over n - 1: in 2001 January and December have 30 days off the mean,
// February 28, June, July and August 30 each.
TEST(Scatter, IsTakenOverOneDayLess) {
    const OwnClimate found = accepted(recordOf(2001, 2001, byTurns), 45).climate;
    EXPECT_NEAR(*found.dailySdWinterK, swingK * std::sqrt(88.0 / (90 - 1)), 1e-9);
    EXPECT_NEAR(*found.dailySdSummerK, swingK * std::sqrt(90.0 / (92 - 1)), 1e-9);
}

bool tellsAnOffset(int firstYear, int lastYear) {
    return accepted(recordOf(firstYear, lastYear, byTurns), 45).climate.seasonOffsetSdK.has_value();
}

// A record begins in the middle of its first winter and ends with the December of its last: 59 days are none, the 60 of a leap
// year are one. Whole winters between: six, seven and seven.
TEST(Scatter, AWinterCountsFromSixtyDaysOn) {
    EXPECT_FALSE(tellsAnOffset(2001, 2007)) << "six winters, one of 59 days and one of 31";
    EXPECT_FALSE(tellsAnOffset(2001, 2008)) << "seven winters, one of 59 days and one of 31";
    EXPECT_TRUE(tellsAnOffset(2004, 2011)) << "seven winters and one of 60 days";
}

} // namespace
} // namespace winterlarder::climate::scatter_test
