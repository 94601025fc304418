// SPDX-License-Identifier: GPL-3.0-or-later
#include "calendar/date.h"
#include "calendar/months.h"
#include "calendar/other_date_forms.h"
#include "support/require.h"

#include <chrono>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::date_test {
namespace {

Date day(const char* iso) {
    const auto date = Date::parse(iso);
    require(date.has_value(), "{} is no date", iso);
    return *date;
}

TEST(Date, ReadsItsParts) {
    const auto date = Date::of(2026, 9, 12);
    ASSERT_TRUE(date);
    EXPECT_EQ(date->year(), 2026);
    EXPECT_EQ(date->month(), 9);
    EXPECT_EQ(date->day(), 12);
    EXPECT_EQ(date->iso(), "2026-09-12");
}

TEST(Date, RefusesDaysThatDoNotExist) {
    EXPECT_FALSE(Date::of(2026, 2, 29));
    EXPECT_FALSE(Date::of(2026, 2, 30));
    EXPECT_FALSE(Date::of(2026, 4, 31));
    EXPECT_FALSE(Date::of(2026, 13, 1));
    EXPECT_FALSE(Date::of(2026, 0, 1));
    EXPECT_FALSE(Date::of(2026, 1, 0));
    EXPECT_FALSE(Date::of(2026, 1, -1));
    EXPECT_FALSE(Date::of(1399, 12, 31));
    EXPECT_FALSE(Date::of(10000, 1, 1));
    EXPECT_FALSE(Date::of(-2026, 1, 1));
}

// Gregorian rule: every fourth year, not the centuries, but every fourth century (ISO 8601).
TEST(Date, KnowsLeapYears) {
    EXPECT_TRUE(Date::of(2024, 2, 29));
    EXPECT_TRUE(Date::of(2000, 2, 29));
    EXPECT_FALSE(Date::of(1900, 2, 29));
    EXPECT_FALSE(Date::of(2100, 2, 29));
    EXPECT_TRUE(day("2024-02-29").isLeapDay());
    EXPECT_FALSE(day("2024-02-28").isLeapDay());
    EXPECT_FALSE(day("2023-03-29").isLeapDay());
}

TEST(Months, AreKnownByTheirNamesAndTheFirstLettersOfThem) {
    EXPECT_EQ(monthNamed("January"), 1);
    EXPECT_EQ(monthNamed("DECEMBER"), 12);
    EXPECT_EQ(monthNamed("mar"), 3);
    EXPECT_EQ(monthNamed("sept"), 9);
    for (const char* word : {"", "ma", "Septembers", "sextember", "Mai"}) EXPECT_EQ(monthNamed(word), 0) << word;
}

TEST(Date, WrittenInAnotherWayIsToldAsItIsToBeWritten) {
    for (const char* text :
         {"3 September 2026", "Sept 3 2026", "sep 3, 2026", "September 3rd, 2026", "3rd of September 2026", "3.9.2026",
          "03.09.2026", "3. 9. 2026", "2026/09/03", "2026-9-3", "20260903", "3-Sep-2026"})
        EXPECT_EQ(dateMeant(text), "write 2026-09-03") << text;
    EXPECT_EQ(dateMeant("9/13/2026"), "write 2026-09-13") << "no thirteenth month";
    EXPECT_EQ(dateMeant("13/9/2026"), "write 2026-09-13");
    EXPECT_EQ(dateMeant("9/9/2026"), "write 2026-09-09") << "either way the same day";
}

TEST(Date, WhereDayAndMonthCannotBeToldApartBothAreNamed) {
    for (const char* text : {"9/3/2026", "09-03-2026", "9 3 2026"})
        EXPECT_EQ(dateMeant(text), "write 2026-03-09 for 9 March, or 2026-09-03 for 3 September") << text;
}

TEST(Date, WhatIsNoDayInAnyWayIsToldTheForm) {
    for (const char* text :
         {"", "soon", "3 September", "9/3/26", "31 June 2026", "2026-02-30", "3 Sextember 2026", "3.9.1026",
          "1/2/3/2026", "3 9 2026 2027", "202609031", "ma 3 2026", "99999999999999999999/1/2026"})
        EXPECT_EQ(dateMeant(text), dateForm) << text;
}

TEST(Date, ParsesNothingButIso) {
    for (const char* text : {"", "2026-9-12", "2026-09-1", "26-09-12", "2026/09/12", "2026-09-12 ", " 2026-09-12",
                             "20260912", "2026-09-1a", "+026-09-12", "2026-02-30", "2026-09-12T00", "2026-+9-12"})
        EXPECT_FALSE(Date::parse(text)) << '"' << text << '"';
    EXPECT_TRUE(Date::parseAnyYear("1400-01-01"));
    EXPECT_TRUE(Date::parseAnyYear("9999-12-31"));
    for (const char* known : {"1800-01-01", "2200-12-31"}) EXPECT_TRUE(Date::parse(known)) << known;
    for (const char* unknown : {"1400-01-01", "1799-12-31", "2201-01-01", "9999-12-31"})
        EXPECT_FALSE(Date::parse(unknown)) << unknown;
}

TEST(Date, CountsDays) {
    EXPECT_EQ(day("2025-01-01").daysSince(day("2024-01-01")), 366);
    EXPECT_EQ(day("2024-01-01").daysSince(day("2025-01-01")), -366);
    EXPECT_EQ(day("2026-12-31").plusDays(1), day("2027-01-01"));
    EXPECT_EQ(day("2024-02-28").plusDays(1), day("2024-02-29"));
    EXPECT_EQ(day("2027-01-01").plusDays(-1), day("2026-12-31"));
    EXPECT_LT(day("2026-12-31"), day("2027-01-01"));
}

TEST(Date, DoesNotLeaveTheCalendar) {
    EXPECT_THROW((void)day("9999-12-31").plusDays(1), ContractViolation);
    EXPECT_THROW((void)day("1400-01-01").plusDays(-1), ContractViolation);
}

// Independent count of days: std::chrono's civil calendar.
RC_GTEST_PROP(DateProperty, AgreesWithChrono, ()) {
    using namespace std::chrono;
    const int offset = *rc::gen::inRange(-200000, 2000000);
    const sys_days expected = sys_days{year{2000} / 1 / 1} + days{offset};
    const year_month_day parts{expected};
    const Date date = day("2000-01-01").plusDays(offset);
    RC_ASSERT(date.year() == int(parts.year()));
    RC_ASSERT(date.month() == int(unsigned(parts.month())));
    RC_ASSERT(date.day() == int(unsigned(parts.day())));
    RC_ASSERT(date.daysSince(day("2000-01-01")) == offset);
    RC_ASSERT(Date::parseAnyYear(date.iso()) == date);
}

} // namespace
} // namespace winterlarder::date_test
