// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"

#include <compare>

namespace winterlarder {

enum class Hemisphere { North, South };

//! Hemisphere of a latitude in degrees: south below 0, else north.
constexpr Hemisphere hemisphereOf(double latitude) { return latitude < 0 ? Hemisphere::South : Hemisphere::North; }

//! Day of a 365-day model year counted from 1 January in the north, 1 July in the south, negative before it:
//! -153 (1 August / 29 January) .. 211 (31 July / 28 January). 29 February is the same day as 28 February.
//! All season rules and the winter model count in it, so the south follows by symmetry.
struct SeasonDay {
    int w = 0;
    auto operator<=>(const SeasonDay&) const = default;
    constexpr SeasonDay operator+(int days) const { return {w + days}; }
    constexpr SeasonDay operator-(int days) const { return {w - days}; }
    constexpr int operator-(SeasonDay other) const { return w - other.w; }
};

inline constexpr SeasonDay firstSeasonDay{-153};  //!< the earliest day a winter can be asked about
inline constexpr SeasonDay lastSimulatedDay{180}; //!< the latest day the model simulates
inline constexpr SeasonDay lastSeasonDay{211};    //!< the last day of the season year
inline constexpr int daysInYear = 365;

//! Day of year 0..364 (1 January = 0) of a date; 29 February counts as 28 February.
int dayOfYear(Date date);
//! Day of year 0..364 of a season day (wrapped).
int dayOfYear(SeasonDay day, Hemisphere hemisphere);

//! One winter: the season year whose autumn lies in calendar year `autumn`. Converts between dates and season days.
//! Tested: tests/calendar/season_day_test.cpp.
class Winter {
public:
    Winter(Hemisphere hemisphere, int autumn) : hemisphere_(hemisphere), autumn_(autumn) {}
    //! The winter whose season days -153..211 contain the date. Where that is a 29 February, date() tells that day by it.
    static Winter containing(Date date, Hemisphere hemisphere);

    Hemisphere hemisphere() const { return hemisphere_; }
    int autumn() const { return autumn_; }

    //! Season day of a date of this winter; ContractViolation where the date belongs to another winter.
    SeasonDay seasonDay(Date date) const;
    bool contains(Date date) const { return containing(date, hemisphere_) == *this; }
    //! Season day of any date: one before this winter counts as its first day, one after as its last.
    SeasonDay nearestSeasonDay(Date date) const;
    //! The date of a season day -153..211; 29 February only where the winter was found by it. ContractViolation outside.
    Date date(SeasonDay day) const;

    bool operator==(const Winter& other) const { return hemisphere_ == other.hemisphere_ && autumn_ == other.autumn_; }

private:
    Hemisphere hemisphere_;
    int autumn_;
    bool foundByLeapDay_ = false;
};

} // namespace winterlarder
