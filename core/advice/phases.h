// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/season.h"
#include "reference/decision_constants.h"

namespace winterlarder::advice {

//! The time of a colony's year that says what may be advised at all.
enum class Phase { Summer, Closing, Late, Winter, Spring };

//! The last day of each phase but the last, by the median dates of the colony; a phase includes its last day.
struct PhaseDays {
    SeasonDay summer; //!< feeding best finished by, less 28 days
    //! syrup deadline, at the latest 45 days after the last income; in a dearth climate, or without a deadline, the last income
    SeasonDay closing;
    SeasonDay late;   //!< syrup refused, or 21 days after the deadline; none in a dearth climate
    SeasonDay winter; //!< build-up
    SeasonDay forage;
    SeasonDay quietFrom;           //!< no feed from here to forage, unless bees would starve
    bool portionsInWinter = false; //!< syrup is taken on warm days of winter: a dearth climate or no deadline
};

//! Rule of the year's division (common practice; judgement for places without a winter). The season must be derivable. Tested:
//! tests/advice/phases_test.cpp.
PhaseDays phaseDays(const climate::SeasonDates& season, const DecisionConstants& rules);

Phase phaseOn(const PhaseDays& days, SeasonDay day);

//! The day winter stores are reckoned for: the end of closing, or the asking day once that is past.
SeasonDay winterFrom(const PhaseDays& days, SeasonDay asOf);

} // namespace winterlarder::advice
