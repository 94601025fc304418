// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

//! Times as loggers and spreadsheets write them.
namespace winterlarder::exchange {

enum class DateOrder { DayMonthYear, MonthDayYear, YearMonthDay };

//! The parts of a time as written, before anybody knows which of them is the day.
struct TimeParts {
    enum class Form {
        DateAndTime,
        DateOnly,
        TimeOnly,
        UnixTime, //!< seconds since 1970 in `unixSeconds`; written in seconds or thousandths
    };
    Form form = Form::DateAndTime;
    std::int16_t parts[3] = {};         //!< of the date, in the order written
    std::int8_t digits[3] = {};         //!< they were written with
    std::int8_t namedMonth = -1;        //!< the part that was a name ("Oct"); -1 none
    char separator = 0;                 //!< between the parts
    std::int32_t second = 0;            //!< of the day; 86400 for 24:00
    std::optional<std::int32_t> offset; //!< seconds ahead of UTC where it is written: Z, UTC, +02:00, +0200, +02
    std::int64_t unixSeconds = 0;
};

//! Reads "2018-10-01T12:05:00Z", "1.10.2018 12:05", "10/1/18 2:05 PM", "01-Oct-2018 14:05:00.25", "20181001120500", "14:05", "1538395500",
//! "1538395500000", ...; fractions of a second are dropped. Nothing where the text is anything else; whether there is such a day is asked
//! later. Tested: tests/exchange/scale_log_time_test.cpp.
std::optional<TimeParts> timeParts(std::string_view text);

//! Days since 1970-01-01 of the date under an order; a two-digit year is of 1970..2069. A named month stands wherever it stands. Nothing
//! where there is no such day, or a year outside 1990..2100.
std::optional<std::int32_t> dayOfParts(const TimeParts& time, DateOrder order);

} // namespace winterlarder::exchange
