// SPDX-License-Identifier: GPL-3.0-or-later
#include "calendar/date.h"

#include "support/require.h"

#include <boost/date_time/gregorian/gregorian_types.hpp>
#include <charconv>

namespace winterlarder {

namespace {

namespace greg = boost::gregorian;

const greg::date firstDay(1400, 1, 1);

greg::date toBoost(std::int32_t number) { return firstDay + greg::days(number); }

bool readDigits(std::string_view text, int& value) {
    for (char c : text)
        if (c < '0' || c > '9') return false;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size();
}

} // namespace

std::optional<Date> Date::of(int year, int month, int day) {
    if (year < 1400 || year > 9999 || month < 1 || month > 12 || day < 1) return std::nullopt;
    const auto y = static_cast<unsigned short>(year);
    const auto m = static_cast<unsigned short>(month);
    if (day > greg::gregorian_calendar::end_of_month_day(y, m)) return std::nullopt;
    const greg::date date(y, m, static_cast<unsigned short>(day));
    return Date(static_cast<std::int32_t>((date - firstDay).days()));
}

std::optional<Date> Date::parse(std::string_view iso) {
    const auto date = parseAnyYear(iso);
    return date && date->inKnownYears() ? date : std::nullopt;
}

std::optional<Date> Date::parseAnyYear(std::string_view iso) {
    if (iso.size() != 10 || iso[4] != '-' || iso[7] != '-') return std::nullopt;
    int year = 0, month = 0, day = 0;
    if (!readDigits(iso.substr(0, 4), year) || !readDigits(iso.substr(5, 2), month) ||
        !readDigits(iso.substr(8, 2), day))
        return std::nullopt;
    return of(year, month, day);
}

int Date::year() const { return toBoost(number_).year(); }
int Date::month() const { return toBoost(number_).month(); }
int Date::day() const { return toBoost(number_).day(); }

std::string Date::iso() const {
    const auto parts = toBoost(number_).year_month_day();
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(parts.year), static_cast<int>(parts.month),
                       static_cast<int>(parts.day));
}

Date Date::plusDays(int days) const {
    const Date result(number_ + days);
    require(result.number_ >= 0 && result.number_ <= (greg::date(9999, 12, 31) - firstDay).days(),
            "{} days from {} leaves the calendar", days, iso());
    return result;
}

} // namespace winterlarder
