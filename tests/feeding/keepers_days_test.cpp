// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/keepers_days.h"

#include "support/require.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::feeding::keepers_days_test {
namespace {

Date date(const char* iso) { return Date::parse(iso).value(); }

TEST(IsoWeekday, OfKnownDays) {
    EXPECT_EQ(isoWeekday(date("2001-01-01")), 1);
    EXPECT_EQ(isoWeekday(date("1969-07-20")), 7); // first steps on the moon, a Sunday
    EXPECT_EQ(isoWeekday(date("1999-12-31")), 5);
    EXPECT_EQ(isoWeekday(date("2024-02-29")), 4);
    EXPECT_EQ(isoWeekday(date("2026-09-01")), 2);
    EXPECT_EQ(isoWeekday(*Date::of(1582, 10, 15)), 5); // the Gregorian calendar's first day, a Friday
}

RC_GTEST_PROP(IsoWeekday, FollowsTheDayBefore, ()) {
    const Date day = date("1900-01-01").plusDays(*rc::gen::inRange(-100000, 100000));
    RC_ASSERT(isoWeekday(day.plusDays(1)) == isoWeekday(day) % 7 + 1);
}

const Winter autumn2026(Hemisphere::North, 2026);

SeasonDay dayOf(const char* iso) { return autumn2026.seasonDay(date(iso)); }

TEST(KeepersDays, AnyDayWhereNoneIsNamed) {
    const KeepersDays keeper(autumn2026, {});
    EXPECT_EQ(keeper.onOrAfter(dayOf("2026-09-01")), dayOf("2026-09-01"));
    EXPECT_EQ(keeper.onOrAfter(lastSeasonDay + 1), std::nullopt);
}

TEST(KeepersDays, TheNextNamedDayOfTheWeek) {
    const KeepersDays weekend(autumn2026, {6, 7});
    EXPECT_EQ(weekend.onOrAfter(dayOf("2026-09-01")), dayOf("2026-09-05")); // a Saturday
    EXPECT_EQ(weekend.onOrAfter(dayOf("2026-09-06")), dayOf("2026-09-06"));
    EXPECT_EQ(weekend.onOrAfter(dayOf("2026-12-28")), dayOf("2027-01-02"));
    EXPECT_FALSE(weekend.comesOn(dayOf("2026-09-01")));
}

TEST(KeepersDays, TheLastNamedDayOfASpan) {
    const KeepersDays sundays(autumn2026, {7});
    EXPECT_EQ(sundays.lastWithin(dayOf("2026-09-01"), dayOf("2026-09-12")), dayOf("2026-09-06"));
    EXPECT_EQ(sundays.lastWithin(dayOf("2026-09-01"), dayOf("2026-09-05")), std::nullopt);
    EXPECT_EQ(sundays.lastWithin(dayOf("2026-09-07"), dayOf("2026-09-06")), std::nullopt);
}

TEST(KeepersDays, ADayTheWeekDoesNotHaveIsABrokenPromise) {
    EXPECT_THROW(KeepersDays(autumn2026, {0}), ContractViolation);
    EXPECT_THROW(KeepersDays(autumn2026, {8}), ContractViolation);
}

} // namespace
} // namespace winterlarder::feeding::keepers_days_test
