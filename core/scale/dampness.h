// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/days.h"

#include <vector>

namespace winterlarder::scale {

//! What a day must gain for it to be nectar [kg], day by day. Wood and snow take up water and give it off again, so in weeks without
//! flight a hive grows heavier by some days and lighter by others. Told from the log itself: the weeks round a day (10 days either way, at
//! least 10 changes known) are still where on the mean they lose no more than 0.12 kg and gain no more than 0.04 kg a day; still days on
//! end, four weeks at least, are a time without flight, and four of their robust standard deviations (1.4826 x median distance from the
//! median) are what dampness does in this log. A day of weeks that together gained more than that, or of which too little is known, needs
//! nectarDayKg; any other the larger of that and of what dampness does. Tested: tests/scale/dampness_test.cpp.
std::vector<double> nectarLimits(const std::vector<DayWeight>& days);

//! What dampness does to a day's change in this log, robust standard deviation [kg]; 0 where no time without flight is known.
double dampnessOf(const std::vector<DayWeight>& days);
//! From here on [kg] even four of them do not bar every winter's day whose water looks like income: a day or so in a winter passes.
inline constexpr double muchDampness = 0.2;

} // namespace winterlarder::scale
