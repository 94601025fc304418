// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "climate/site.h"

#include <vector>

namespace winterlarder::climate {

//! One day of somebody's own temperature record.
struct DailyMean {
    Date date;
    double meanC;
};

struct RecordSummary {
    OwnClimate climate;
    int days = 0;
    int years = 0; //!< distinct calendar years touched
    int gaps = 0;  //!< missing days between the first and the last
};

//! A climate from daily means (one a date, any order): monthly means over the days there are (a month with fewer than 20 days in all
//! is a problem, as is a record shorter than 365 days); SDs of day minus curve over December-February and June-August
//! (south: swapped); lag 1 over consecutive winter days; season offset from the spread of winter means beyond what that daily
//! process explains, none under 8 winters. Doubles and values outside -60..45 degC are problems.
//! Tested: tests/climate/daily_record_test.cpp (Seattle 2010 hourly file, Nottingham Castle 1920-39, synthetic AR(1) truth).
Outcome<RecordSummary> summarise(const std::vector<DailyMean>& record, double latitude);

} // namespace winterlarder::climate
