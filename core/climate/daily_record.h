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

//! A climate from daily means (one a date, any order): monthly means over the days there are (a month with fewer than 20
//! days in all is a problem, as is a record of fewer than 365 days); SDs of day minus curve over December-February and
//! June-August (south: swapped); lag 1 over consecutive winter days (none where fewer than 20 pairs are consecutive).
//! Season offset: the so for which an AR(1) process of variance sw^2 - so^2 and lag-1 correlation
//! (lag1 sw^2 - so^2) / (sw^2 - so^2), with an offset of SD so on each winter, gives winter means of the variance found; 0
//! where the daily process alone gives it; none under 8 winters (a winter counts from 60 days on).
//! Problems: doubles, values not finite or outside -60..45 degC, latitude outside -90..90; all are listed.
//! Tested: tests/climate/daily_record_test.cpp (synthetic AR(1) truth; Seattle 2012-2015).
Outcome<RecordSummary> summarise(const std::vector<DailyMean>& record, double latitude);

} // namespace winterlarder::climate
