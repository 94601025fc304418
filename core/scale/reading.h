// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "quantity/quantity.h"

#include <cstdint>

//! What a hive scale that logs by itself tells: from its readings to steps, daily weights, months.
namespace winterlarder::scale {

inline constexpr std::int64_t secondsAnHour = 3600;
inline double hours(std::int64_t seconds) { return static_cast<double>(seconds) / static_cast<double>(secondsAnHour); }
inline constexpr std::int64_t secondsADay = 86400;

//! One reading of the scale. `moment` runs evenly: seconds since 1970-01-01 00:00 UTC where that is known, else seconds of the log's own
//! clock. `moment + offset` is what a clock at the hive shows (seconds since 1970-01-01 00:00 on that clock).
struct Reading {
    std::int64_t moment = 0;
    Mass weight{0};
    std::int32_t offset = 0;
    std::int32_t line = 0; //!< of the file it came from, 0 = none
    std::int64_t local() const { return moment + offset; }
    bool operator==(const Reading&) const = default;
};

//! Days since 1970-01-01 of a local time, counted down before it.
constexpr std::int32_t dayNumber(std::int64_t local) {
    return static_cast<std::int32_t>(local >= 0 ? local / secondsADay : -((secondsADay - 1 - local) / secondsADay));
}
//! Seconds since midnight of a local time, 0..86399.
constexpr std::int32_t secondOfDay(std::int64_t local) {
    return static_cast<std::int32_t>(local - dayNumber(local) * secondsADay);
}
//! The date of a day number; ContractViolation outside the calendar.
Date dateOfDay(std::int32_t day);
//! Day number of a date.
std::int32_t dayOf(Date date);

} // namespace winterlarder::scale
