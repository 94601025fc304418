// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/climate_curve.h"
#include "climate/season.h"
#include "reference/model_constants.h"
#include "winter/question.h"

namespace winterlarder::winter {

//! 90th percentile of the longest run of days on which bees of a place cannot fly, the normal daily maximum below the locked-in limit, from the
//! season's first day to each winter's first forage [days]. From the weather of the place alone (normal, offset, day chain), so it is the same
//! whichever colony and whenever it is asked. The season must be derivable. Tested: tests/winter/locked_in_test.cpp.
double longestLockedIn(const climate::ClimateCurve& curve, const climate::SeasonDates& season,
                       const ModelConstants& constants, Sampling sampling);

} // namespace winterlarder::winter
