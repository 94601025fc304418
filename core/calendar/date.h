// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace winterlarder {

//! The years a date written by anybody may lie in: sixty days before and a year after any of them are still dates.
inline constexpr int firstKnownYear = 1800, lastKnownYear = 2200;
//! What would be right where such a date cannot be understood.
inline constexpr const char* dateForm = "a day of the calendar as YYYY-MM-DD, from 1800 to 2200";

//! A day of the proleptic Gregorian calendar, 1400-01-01 to 9999-12-31. There is no "not a date": every Date is a day,
//! a missing one is std::optional<Date>. Tested: tests/calendar/date_test.cpp.
class Date {
public:
    //! The day year-month-day; nothing where there is no such day (30 February, year 12).
    static std::optional<Date> of(int year, int month, int day);
    //! Reads exactly YYYY-MM-DD of the known years; nothing where the text is anything else. Books, cases and options all read by it.
    static std::optional<Date> parse(std::string_view iso);
    //! The same of any year of the calendar: for what clocks wrote.
    static std::optional<Date> parseAnyYear(std::string_view iso);
    bool inKnownYears() const { return year() >= firstKnownYear && year() <= lastKnownYear; }

    int year() const;
    int month() const; //!< 1..12
    int day() const;   //!< 1..31
    //! YYYY-MM-DD (ISO 8601).
    std::string iso() const;

    //! Real calendar days, leap days counted.
    Date plusDays(int days) const;
    //! Days from other to this; positive where this is later.
    int daysSince(Date other) const { return number_ - other.number_; }
    bool isLeapDay() const { return month() == 2 && day() == 29; }

    auto operator<=>(const Date&) const = default;

private:
    explicit Date(std::int32_t number) : number_(number) {}
    std::int32_t number_; //!< days since 1400-01-01
};

} // namespace winterlarder
