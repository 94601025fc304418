// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/entries/timestamp.h"

#include "support/require.h"

#include <charconv>
#include <fmt/format.h>

namespace winterlarder::book {
namespace {

constexpr std::int64_t secondsInDay = 86400;

Date firstDay() { return *Date::of(1970, 1, 1); }

std::int64_t dayNumber(std::int64_t seconds) {
    return (seconds >= 0 ? seconds : seconds - (secondsInDay - 1)) / secondsInDay;
}

std::optional<int> twoDigits(std::string_view text, int limit) {
    int value = 0;
    for (const char digit : text) {
        if (digit < '0' || digit > '9') return std::nullopt;
        value = value * 10 + (digit - '0');
    }
    if (value >= limit) return std::nullopt;
    return value;
}

} // namespace

Date Timestamp::date() const {
    const auto day = dayNumber(seconds);
    require(day > -208000 && day < 2933000, "{} s after 1970 is outside the calendar", seconds);
    return firstDay().plusDays(static_cast<int>(day));
}

std::string Timestamp::iso() const {
    const auto rest = seconds - dayNumber(seconds) * secondsInDay;
    return fmt::format("{}T{:02}:{:02}:{:02}Z", date().iso(), rest / 3600, rest / 60 % 60, rest % 60);
}

std::optional<Timestamp> Timestamp::parse(std::string_view iso) {
    if (iso.size() != 20 || iso[10] != 'T' || iso[13] != ':' || iso[16] != ':' || iso[19] != 'Z') return std::nullopt;
    const auto day = Date::parseAnyYear(iso.substr(0, 10));
    const auto hour = twoDigits(iso.substr(11, 2), 24);
    const auto minute = twoDigits(iso.substr(14, 2), 60);
    const auto second = twoDigits(iso.substr(17, 2), 60);
    if (!day || !hour || !minute || !second) return std::nullopt;
    return Timestamp{day->daysSince(firstDay()) * secondsInDay + *hour * 3600 + *minute * 60 + *second};
}

} // namespace winterlarder::book
