// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "series/winter_series.h"

#include <set>

namespace winterlarder::desk {

//! The days of a picture that are seen, as places on its time axis. Tested: tests/app/day_window_test.cpp.
struct DayWindow {
    double first = 0;
    double last = 0;
    double days() const { return last - first; }
    bool operator==(const DayWindow&) const = default;
};

//! Fewer days than these are never shown: a line would have no shape left.
inline constexpr double leastDaysSeen = 14;

//! All the days a picture has: a few before the asking day, so that its points stand free, and back to the first thing seen.
DayWindow wholeWinter(const WinterPicture& picture);

//! The wanted days as far as they can be seen: moved into the whole, no fewer than the least and no more than all.
DayWindow fitted(DayWindow wanted, DayWindow whole);

//! The days that are seen `factor` times as many, the day `about` staying where it is.
DayWindow stretched(DayWindow seen, DayWindow whole, double factor, double about);

//! The days moved on (or back) far enough that `day` is among them.
DayWindow reaching(DayWindow seen, DayWindow whole, double day);

//! The scale the stores of these days need [kg]: twice the reserve, every point, dot and line of the options shown. What comes in long
//! after first forage may leave the picture at the top.
double highestSeen(const WinterPicture& picture, const std::set<advice::OptionKind>& options, DayWindow seen);

} // namespace winterlarder::desk
