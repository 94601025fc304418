// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/reading.h"

#include <cstddef>
#include <vector>

namespace winterlarder::scale {

//! Seconds of readings that are taken together before steps are looked for: somebody leaning on the hive for a minute is gone.
inline constexpr std::int64_t levelSeconds = 900;

//! The median of the readings of a quarter of an hour (of the log's even time).
struct Level {
    std::int64_t moment = 0; //!< mean of theirs
    double kg = 0;
    std::size_t first = 0, end = 0; //!< of the readings
};

//! One level a quarter of an hour that has any reading; readings by moment. Tested: tests/scale/levels_test.cpp.
std::vector<Level> levelsOf(const std::vector<Reading>& readings);

//! Usual seconds from one level to the next (lower median), 0 under two.
std::int64_t usualInterval(const std::vector<Level>& levels);

//! How much the level changes at most, within one interval, on a usual day: the largest change of each day of the log, and of these the
//! lower median over the other days within a week. A day of steps does not count for itself, so steps stand out from it.
class UsualChange {
public:
    UsualChange(const std::vector<Level>& levels, std::int64_t interval);
    //! [kg]; 0 where there are no other days.
    double at(std::int64_t moment) const;

private:
    std::int32_t first_ = 0;
    std::vector<double> usual_;
};

} // namespace winterlarder::scale
