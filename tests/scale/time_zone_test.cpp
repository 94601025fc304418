// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/time_zone.h"
#include "support/hive_log.h"
#include "support/require.h"

#include <gtest/gtest.h>

namespace winterlarder::scale::time_zone_test {
namespace {

using namespace winterlarder::testing;

// Central Europe in 2018: an hour ahead of UTC, two from 25 March 1 h UTC to 28 October 1 h UTC.
TimeZone europe() { return TimeZone(3600, {{secondsOf(2018, 3, 25, 1), 7200}, {secondsOf(2018, 10, 28, 1), 3600}}); }

TEST(TimeZones, TellTheOffsetOfAMoment) {
    EXPECT_EQ(europe().offsetAt(secondsOf(2018, 3, 25, 1) - 1), 3600);
    EXPECT_EQ(europe().offsetAt(secondsOf(2018, 3, 25, 1)), 7200);
    EXPECT_EQ(europe().offsetAt(secondsOf(2018, 12, 1)), 3600);
    EXPECT_EQ(TimeZone::fixed(-12600).offsetAt(0), -12600);
}

TEST(TimeZones, TellTheMomentOfAClock) {
    EXPECT_EQ(europe().momentOf(secondsOf(2018, 1, 10, 12)), secondsOf(2018, 1, 10, 11));
    EXPECT_EQ(europe().momentOf(secondsOf(2018, 7, 10, 12)), secondsOf(2018, 7, 10, 10));
    EXPECT_EQ(europe().momentOf(secondsOf(2018, 10, 28, 2.5)), secondsOf(2018, 10, 28, 0.5)) << "the first of two";
    EXPECT_EQ(europe().laterMomentOf(secondsOf(2018, 10, 28, 2.5)), secondsOf(2018, 10, 28, 1.5));
    EXPECT_EQ(europe().laterMomentOf(secondsOf(2018, 7, 10, 12)), secondsOf(2018, 7, 10, 10));
    EXPECT_EQ(europe().momentOf(secondsOf(2018, 3, 25, 2.5)), secondsOf(2018, 3, 25, 1.5)) << "no clock showed it";
}

TEST(TimeZones, ComeBackFromEveryMoment) {
    for (std::int64_t moment = secondsOf(2018, 3, 20); moment < secondsOf(2018, 11, 2); moment += 1800) {
        const std::int64_t local = moment + europe().offsetAt(moment);
        EXPECT_TRUE(europe().momentOf(local) == moment || europe().laterMomentOf(local) == moment) << moment;
    }
}

TEST(TimeZones, WantTheirChangesInOrder) { EXPECT_THROW(TimeZone(0, {{10, 3600}, {10, 0}}), ContractViolation); }

TEST(DayNumbers, CountFrom1970BothWays) {
    EXPECT_EQ(dayNumber(0), 0);
    EXPECT_EQ(dayNumber(-1), -1);
    EXPECT_EQ(dayNumber(-86400), -1);
    EXPECT_EQ(dayNumber(86399), 0);
    EXPECT_EQ(secondOfDay(-1), 86399);
    EXPECT_EQ(dateOfDay(dayOf(*Date::of(2018, 10, 28))).iso(), "2018-10-28");
}

} // namespace
} // namespace winterlarder::scale::time_zone_test
