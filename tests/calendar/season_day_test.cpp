// SPDX-License-Identifier: GPL-3.0-or-later
#include "calendar/season_day.h"
#include "support/require.h"

#include <array>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::season_day_test {
namespace {

constexpr std::array hemispheres{Hemisphere::North, Hemisphere::South};

Date day(const char* iso) {
    const auto date = Date::parse(iso);
    require(date.has_value(), "{} is no date", iso);
    return *date;
}

int seasonDay(const char* iso, Hemisphere hemisphere) {
    return Winter::containing(day(iso), hemisphere).seasonDay(day(iso)).w;
}

// The calendar of the model's description in DEVELOPERS.md: days count from 1 January in the north, 1 July in the south.
TEST(SeasonDay, LandmarksOfTheNorth) {
    EXPECT_EQ(seasonDay("2027-01-01", Hemisphere::North), 0);
    EXPECT_EQ(seasonDay("2026-10-01", Hemisphere::North), -92);
    EXPECT_EQ(seasonDay("2026-08-01", Hemisphere::North), -153);
    EXPECT_EQ(seasonDay("2027-06-30", Hemisphere::North), 180);
    EXPECT_EQ(seasonDay("2027-07-31", Hemisphere::North), 211);
    EXPECT_EQ(seasonDay("2026-12-21", Hemisphere::North), -11);
}

TEST(SeasonDay, LandmarksOfTheSouth) {
    EXPECT_EQ(seasonDay("2026-07-01", Hemisphere::South), 0);
    EXPECT_EQ(seasonDay("2026-04-01", Hemisphere::South), -91);
    EXPECT_EQ(seasonDay("2026-01-29", Hemisphere::South), -153);
    EXPECT_EQ(seasonDay("2026-12-28", Hemisphere::South), 180);
    EXPECT_EQ(seasonDay("2027-01-28", Hemisphere::South), 211);
}

TEST(SeasonDay, LeapDayIsTheDayBefore) {
    EXPECT_EQ(seasonDay("2024-02-29", Hemisphere::North), seasonDay("2024-02-28", Hemisphere::North));
    EXPECT_EQ(seasonDay("2024-02-29", Hemisphere::South), seasonDay("2024-02-28", Hemisphere::South));
    EXPECT_EQ(dayOfYear(day("2024-02-29")), 58);
}

TEST(SeasonDay, LeapYearsShiftNothingElse) {
    for (const char* monthDay : {"01-01", "02-28", "03-01", "06-30", "08-01", "10-01", "12-31"})
        for (const Hemisphere hemisphere : hemispheres)
            EXPECT_EQ(seasonDay((std::string("2024-") + monthDay).c_str(), hemisphere),
                      seasonDay((std::string("2023-") + monthDay).c_str(), hemisphere))
                << monthDay;
}

TEST(SeasonDay, DayOfYear) {
    EXPECT_EQ(dayOfYear(day("2026-01-01")), 0);
    EXPECT_EQ(dayOfYear(day("2026-12-31")), 364);
    EXPECT_EQ(dayOfYear(day("2024-12-31")), 364);
    EXPECT_EQ(dayOfYear(day("2024-03-01")), 59);
    EXPECT_EQ(dayOfYear(SeasonDay{-91}, Hemisphere::South), 90);
    EXPECT_EQ(dayOfYear(SeasonDay{-92}, Hemisphere::North), 273);
    EXPECT_EQ(dayOfYear(SeasonDay{184}, Hemisphere::South), 0);
}

TEST(Winter, IsNamedByTheYearOfItsAutumn) {
    EXPECT_EQ(Winter::containing(day("2026-09-12"), Hemisphere::North).autumn(), 2026);
    EXPECT_EQ(Winter::containing(day("2027-03-01"), Hemisphere::North).autumn(), 2026);
    EXPECT_EQ(Winter::containing(day("2027-07-31"), Hemisphere::North).autumn(), 2026);
    EXPECT_EQ(Winter::containing(day("2027-08-01"), Hemisphere::North).autumn(), 2027);
    EXPECT_EQ(Winter::containing(day("2026-04-01"), Hemisphere::South).autumn(), 2026);
    EXPECT_EQ(Winter::containing(day("2027-01-28"), Hemisphere::South).autumn(), 2026);
    EXPECT_EQ(Winter::containing(day("2027-01-29"), Hemisphere::South).autumn(), 2027);
}

TEST(Winter, RefusesDatesOfAnotherWinter) {
    const Winter winter(Hemisphere::North, 2026);
    EXPECT_TRUE(winter.contains(day("2027-01-11")));
    EXPECT_FALSE(winter.contains(day("2026-01-11")));
    EXPECT_THROW((void)winter.seasonDay(day("2026-01-11")), ContractViolation);
    EXPECT_THROW((void)winter.date(SeasonDay{-154}), ContractViolation);
    EXPECT_THROW((void)winter.date(SeasonDay{212}), ContractViolation);
}

TEST(Winter, EverySeasonDayHasOneDateAndNoneIsALeapDay) {
    for (const Hemisphere hemisphere : hemispheres)
        for (int autumn = 1999; autumn <= 2009; ++autumn) {
            const Winter winter(hemisphere, autumn);
            for (SeasonDay w = firstSeasonDay; w <= lastSeasonDay; w = w + 1) {
                const Date date = winter.date(w);
                ASSERT_FALSE(date.isLeapDay());
                ASSERT_TRUE(winter.contains(date)) << date.iso();
                ASSERT_EQ(winter.seasonDay(date), w) << date.iso();
                ASSERT_EQ(dayOfYear(date), dayOfYear(w, hemisphere)) << date.iso();
            }
        }
}

TEST(Winter, DatesRunOnWithoutAGapFromWinterToWinter) {
    for (const Hemisphere hemisphere : hemispheres)
        for (int autumn = 2019; autumn <= 2028; ++autumn) {
            const Date last = Winter(hemisphere, autumn).date(lastSeasonDay);
            EXPECT_EQ(last.plusDays(1), Winter(hemisphere, autumn + 1).date(firstSeasonDay)) << last.iso();
        }
}

RC_GTEST_PROP(WinterProperty, EveryDateLiesInExactlyOneWinter, ()) {
    const Date date = day("1900-01-01").plusDays(*rc::gen::inRange(0, 100000));
    const Hemisphere hemisphere = *rc::gen::element(Hemisphere::North, Hemisphere::South);
    const Winter winter = Winter::containing(date, hemisphere);
    RC_ASSERT(winter.contains(date));
    RC_ASSERT(!Winter(hemisphere, winter.autumn() + 1).contains(date));
    RC_ASSERT(!Winter(hemisphere, winter.autumn() - 1).contains(date));
    const SeasonDay w = winter.seasonDay(date);
    RC_ASSERT(w >= firstSeasonDay && w <= lastSeasonDay);
    RC_ASSERT(winter.date(w) == date);
    RC_ASSERT(Winter(hemisphere, winter.autumn()).date(w) == (date.isLeapDay() ? date.plusDays(-1) : date));
}

TEST(Winters, HoldEveryLeapDayAsTheDayBefore) {
    int leapDays = 0;
    for (int year = 1900; year <= 2200; ++year) {
        const auto leapDay = Date::of(year, 2, 29);
        if (!leapDay) continue;
        ++leapDays;
        const Date before = leapDay->plusDays(-1);
        for (const Hemisphere hemisphere : hemispheres) {
            const Winter found = Winter::containing(*leapDay, hemisphere);
            EXPECT_EQ(found.autumn(), hemisphere == Hemisphere::North ? year - 1 : year) << year;
            EXPECT_EQ(found, Winter::containing(before, hemisphere)) << year;
            EXPECT_EQ(found.seasonDay(*leapDay), found.seasonDay(before)) << year;
            EXPECT_EQ(found.date(found.seasonDay(*leapDay)), *leapDay) << year;
            EXPECT_EQ(Winter(hemisphere, found.autumn()).date(found.seasonDay(*leapDay)), before) << year;
            EXPECT_FALSE(Winter(hemisphere, found.autumn() + 1).contains(*leapDay)) << year;
            EXPECT_FALSE(Winter(hemisphere, found.autumn() - 1).contains(*leapDay)) << year;
        }
    }
    EXPECT_EQ(leapDays, 73) << "1900, 2100 and 2200 have none";
    EXPECT_EQ(day("1900-01-01").plusDays(62881), day("2072-02-29"));
}

RC_GTEST_PROP(WinterProperty, SeasonDaysFollowTheCalendar, ()) {
    const Date date = day("1900-01-01").plusDays(*rc::gen::inRange(0, 100000));
    const Hemisphere hemisphere = *rc::gen::element(Hemisphere::North, Hemisphere::South);
    const Winter winter = Winter::containing(date, hemisphere);
    const Date next = date.plusDays(1);
    RC_PRE(winter.contains(next));
    RC_ASSERT(winter.seasonDay(next) - winter.seasonDay(date) == (next.isLeapDay() ? 0 : 1));
}

TEST(Hemisphere, FollowsLatitude) {
    EXPECT_EQ(hemisphereOf(51.8), Hemisphere::North);
    EXPECT_EQ(hemisphereOf(0), Hemisphere::North);
    EXPECT_EQ(hemisphereOf(-0.1), Hemisphere::South);
}

TEST(SeasonDay, Arithmetic) {
    EXPECT_EQ(SeasonDay{10} + 7, SeasonDay{17});
    EXPECT_EQ(SeasonDay{10} - 21, SeasonDay{-11});
    EXPECT_EQ(SeasonDay{10} - SeasonDay{-72}, 82);
    EXPECT_LT(SeasonDay{-72}, SeasonDay{10});
}

TEST(Winters, TakeADayOutsideAsTheirNearest) {
    const Winter north(Hemisphere::North, 2026);
    EXPECT_EQ(north.nearestSeasonDay(*Date::of(2026, 7, 31)), firstSeasonDay);
    EXPECT_EQ(north.nearestSeasonDay(*Date::of(2026, 6, 2)), firstSeasonDay);
    EXPECT_EQ(north.nearestSeasonDay(*Date::of(2026, 8, 1)), firstSeasonDay);
    EXPECT_EQ(north.nearestSeasonDay(*Date::of(2026, 8, 2)), firstSeasonDay + 1);
    EXPECT_EQ(north.nearestSeasonDay(*Date::of(2027, 7, 31)), lastSeasonDay);
    EXPECT_EQ(north.nearestSeasonDay(*Date::of(2027, 8, 1)), lastSeasonDay);
    EXPECT_EQ(Winter(Hemisphere::South, 2026).nearestSeasonDay(*Date::of(2026, 1, 28)), firstSeasonDay);
}

// 28 and 29 February are one season day; a winter asked about on the 29th tells it as that.
TEST(Winters, FoundByALeapDayTellIt) {
    const Winter found = Winter::containing(*Date::of(2028, 2, 29), Hemisphere::North);
    const SeasonDay day = found.seasonDay(*Date::of(2028, 2, 29));
    EXPECT_EQ(found.date(day), *Date::of(2028, 2, 29));
    EXPECT_EQ(found.date(day - 1), *Date::of(2028, 2, 27));
    EXPECT_EQ(found.date(day + 1), *Date::of(2028, 3, 1));
    EXPECT_EQ(Winter::containing(*Date::of(2028, 2, 28), Hemisphere::North).date(day), *Date::of(2028, 2, 28));
    EXPECT_EQ(found, Winter(Hemisphere::North, 2027));
    EXPECT_TRUE(found.contains(*Date::of(2028, 2, 28)));
}

} // namespace
} // namespace winterlarder::season_day_test
