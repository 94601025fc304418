// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/season_day.h"
#include "climate/climate_curve.h"
#include "reference/model_constants.h"
#include "support/outcome.h"

#include <optional>
#include <vector>

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

//! Dates a user gave, as season days of the winter asked about.
struct GivenDates {
    std::optional<SeasonDay> lastIncome, broodStop, broodRestart, buildup, forage, feedAdvisedBy, syrupDeadline,
        syrupRefused;
};

//! Lays the given dates over the derived ones. Given dates keep their rule's SD; one on or before asOf is exact. Order kept:
//! broodStop <= broodRestart, buildup >= broodRestart + 7, forage >= buildup + 7, feedAdvisedBy <= syrupDeadline <=
//! syrupRefused. A derived date in conflict with a given one is moved just far enough (ClimateMoved); two given dates in
//! conflict are a problem naming both (Problem::detail; the place is the caller's to fill in). Both brood dates given where
//! laying never stops make it stop; one alone there is a problem; a day outside -153..180 is a problem.
Outcome<SeasonDates> applyGivenDates(const SeasonDates& derived, const GivenDates& given, SeasonDay asOf,
                                     const ModelConstants& constants);

} // namespace winterlarder::climate
