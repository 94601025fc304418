// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/days.h"
#include "scale/kinds.h"
#include "scale/order.h"

#include <vector>

namespace winterlarder::scale {

//! Where nothing was recorded for longer than three intervals and two hours.
struct Gap {
    std::int64_t from = 0, to = 0; //!< local: last reading before, first after
    bool operator==(const Gap&) const = default;
};

//! Everything a log tells.
struct Summary {
    std::vector<DayWeight> days;
    std::vector<MonthChange> months;
    std::vector<Step> steps;
    std::vector<Stretch> disturbed; //!< begin and end are local here
    std::vector<Gap> gaps;
    std::vector<ClockJump> jumps;
    std::vector<LeftOut> leftOut;
    RowOrder order = RowOrder::ByTime;
    std::size_t readings = 0, merged = 0;
    std::int64_t interval = 0; //!< usual seconds between readings
};

//! From readings in the order of their file. A constant added to all weights changes no step and no month; weights may be of any scale,
//! tared or not. Nothing to sum up (no readings) gives an empty summary. Tested: tests/scale/properties_test.cpp, steps_test.cpp, days_test.cpp.
Summary summarise(std::vector<Reading> readings, Times times);

} // namespace winterlarder::scale
