// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"
#include "climate/climate_curve.h"
#include "reference/model_constants.h"
#include "support/outcome.h"

#include <optional>

namespace winterlarder::climate {

//! A confined winter; B bees fly in most weeks; C a dearth without a break in laying; N nothing can be derived.
enum class WinterClass { Confined, Flying, Dearth, NotDerivable };

enum class DateOrigin { Climate, ClimateMoved, Case };

//! One date of the season, how far it may be off, and where it comes from. An exact date (given, on or before the day of
//! asking) is neither drawn nor shifted.
struct SeasonDate {
    SeasonDay day;
    double sdDays = 0;
    DateOrigin origin = DateOrigin::Climate;
    bool exact = false;
    bool operator==(const SeasonDate&) const = default;
};

//! The dates a winter turns on. A missing date has its meaning: no broodStop and broodRestart = laying never stops;
//! no syrupDeadline = syrup can be taken all winter; no buildup or forage = class N.
struct SeasonDates {
    WinterClass winterClass = WinterClass::NotDerivable;
    std::optional<SeasonDate> lastIncome;
    std::optional<SeasonDate> broodStop;
    std::optional<SeasonDate> broodRestart;
    std::optional<SeasonDate> buildup;
    std::optional<SeasonDate> forage;
    std::optional<SeasonDate> feedAdvisedBy;
    std::optional<SeasonDate> syrupDeadline;
    std::optional<SeasonDate> syrupRefused;
    bool atEdgeOfRules = false; //!< lastIncome fell on -153 or forage on 165: high or arctic place

    bool broodless() const { return broodStop.has_value() && broodRestart.has_value(); }
    //! forage and buildup known: a winter can be simulated.
    bool derivable() const { return forage.has_value() && buildup.has_value(); }
};

//! The season rules: dates from the annual curve and day length; thresholds and SDs from the constants.
//! FALL(x, th) = first w in [-153, 20] with x(w) < th; RISE(x, th) = 1 + last w in [-100, 165] with x(w) < th, at most 165.
//! Tested: tests/climate/season_test.cpp against the dates of all shipped stations.
SeasonDates deriveSeason(const ClimateCurve& curve, const ModelConstants& constants);

//! True where lastIncome is derived and fell on the first day searched (-153) or forage on the last (165).
bool restsOnSearchLimit(const SeasonDates& dates);

//! Dates a user gave, as season days of the winter asked about.
struct GivenDates {
    std::optional<SeasonDay> lastIncome, broodStop, broodRestart, buildup, forage, feedAdvisedBy, syrupDeadline,
        syrupRefused;
};

//! Shortest times between the dates that follow one another [d]: buildup after broodRestart, forage after buildup.
inline constexpr int daysFromRestartToBuildup = 7;
inline constexpr int daysFromBuildupToForage = 7;
//! Where laying never stops, the model counts as if it stopped and began again on this day, the winter solstice.
inline constexpr SeasonDay solstice{-11};

//! Lays the given dates over the derived ones. Given dates keep their rule's SD; one on or before asOf is exact. Order kept:
//! broodStop <= broodRestart, buildup >= broodRestart + 7, forage >= buildup + 7 (the solstice stands for broodRestart where
//! laying never stops), feedAdvisedBy <= syrupDeadline <= syrupRefused (a missing one of these three counts as later than
//! any day). A derived date in conflict with a given one is moved just far enough (ClimateMoved), dates between two given
//! ones included; two given dates in conflict are a problem, and so is a given date that pushes a derived one out of
//! -153..180. Both brood dates given where laying never stops make it stop (class Dearth becomes Flying); one alone there is
//! a problem; a given day outside -153..180 is a problem. All problems are listed. Problem::detail begins with the key of
//! the date at fault in the case file ("brood_restart") and names the other; days are calendar dates where the winter is
//! told, season days otherwise; the place is the caller's to fill in. Whether a simulation starts after a given forage is the
//! caller's to check. Tested: tests/climate/given_dates_test.cpp.
Outcome<SeasonDates> applyGivenDates(const SeasonDates& derived, const GivenDates& given, SeasonDay asOf,
                                     const ModelConstants& constants,
                                     const std::optional<Winter>& winter = std::nullopt);

} // namespace winterlarder::climate
