// SPDX-License-Identifier: GPL-3.0-or-later
#include "calendar/season_day.h"

#include "support/require.h"

#include <array>

namespace winterlarder {

namespace {

constexpr std::array<int, 13> monthStarts{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365};

// 1 January in the north, 1 July in the south.
constexpr int seasonStart(Hemisphere hemisphere) { return hemisphere == Hemisphere::North ? 0 : 181; }

int wrapped(int day) { return ((day % daysInYear) + daysInYear) % daysInYear; }

} // namespace

int dayOfYear(Date date) {
    const int day = date.isLeapDay() ? 28 : date.day();
    return monthStarts[static_cast<std::size_t>(date.month() - 1)] + day - 1;
}

int dayOfYear(SeasonDay day, Hemisphere hemisphere) { return wrapped(day.w + seasonStart(hemisphere)); }

namespace {

SeasonDay seasonDayOf(Date date, Hemisphere hemisphere) {
    int w = wrapped(dayOfYear(date) - seasonStart(hemisphere));
    if (w >= 212) w -= daysInYear;
    return {w};
}

// Calendar years between the year that holds the autumn and the one that holds this season day.
int yearsAfterAutumn(SeasonDay day, Hemisphere hemisphere) {
    const int j = day.w + seasonStart(hemisphere);
    if (hemisphere == Hemisphere::North) return j < 0 ? 0 : 1;
    return j < daysInYear ? 0 : 1;
}

} // namespace

Winter Winter::containing(Date date, Hemisphere hemisphere) {
    const SeasonDay day = seasonDayOf(date, hemisphere);
    Winter winter(hemisphere, date.year() - yearsAfterAutumn(day, hemisphere));
    winter.foundByLeapDay_ = date.isLeapDay();
    return winter;
}

SeasonDay Winter::seasonDay(Date date) const {
    require(contains(date), "{} is not a day of the winter of {}", date.iso(), autumn_);
    return seasonDayOf(date, hemisphere_);
}

SeasonDay Winter::nearestSeasonDay(Date date) const {
    if (contains(date)) return seasonDayOf(date, hemisphere_);
    return date < this->date(firstSeasonDay) ? firstSeasonDay : lastSeasonDay;
}

Date Winter::date(SeasonDay day) const {
    require(day >= firstSeasonDay && day <= lastSeasonDay, "season day {} is outside -153..211", day.w);
    const int j = dayOfYear(day, hemisphere_);
    std::size_t month = 1;
    while (monthStarts[month] <= j) ++month;
    const auto date =
        Date::of(autumn_ + yearsAfterAutumn(day, hemisphere_), static_cast<int>(month), j - monthStarts[month - 1] + 1);
    require(date.has_value(), "season day {} of {} is outside the calendar", day.w, autumn_);
    return foundByLeapDay_ && date->month() == 2 && date->day() == 28 ? date->plusDays(1) : *date;
}

} // namespace winterlarder
