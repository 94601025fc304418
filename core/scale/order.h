// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/reading.h"

#include <vector>

namespace winterlarder::scale {

enum class LeftOutWhy {
    SameTime,  //!< an earlier row has this time
    ClockBack, //!< the clock was put back: its time contradicts the order of the rows
};
struct LeftOut {
    std::int32_t line = 0;
    LeftOutWhy why = LeftOutWhy::SameTime;
    std::int32_t other = 0; //!< SameTime: the line that was kept
    bool operator==(const LeftOut&) const = default;
};

//! Where the log's clock jumped.
struct ClockJump {
    enum class Kind { Back, DaylightSaving };
    Kind kind = Kind::Back;
    std::int64_t local = 0;   //!< what the clock showed before
    std::int64_t seconds = 0; //!< how far it was put: forward positive, back negative
    std::int32_t line = 0;    //!< first row after it
    bool operator==(const ClockJump&) const = default;
};

enum class RowOrder { ByTime, NewestFirst, Mixed };

//! Readings by moment, each moment once.
struct OrderedReadings {
    std::vector<Reading> readings;
    std::vector<LeftOut> leftOut; //!< by line
    std::vector<ClockJump> jumps;
    RowOrder order = RowOrder::ByTime;
    std::size_t merged = 0;    //!< readings that were merged with others of their time
    std::int64_t interval = 0; //!< the usual seconds from one reading to the next (median), 0 under two readings
};

//! What the times of a log are: those of a wall clock, which daylight saving puts to and fro, or moments of a clock that runs on.
enum class Times { WallClock, Moments };

//! Brings readings, given in the order of their file, into the order of time.
//! - Newest first is turned round. Where more than one row in twenty comes before its predecessor, rows are in no order: sorted.
//! - Times of a wall clock: a jump of one hour (give or take half an interval, at most 25 minutes) in the first
//!   four hours of a Sunday of March, April, September, October or November is daylight saving: `moment` runs on through it, `offset` changes.
//! - Blocks of rows that do not overlap in time but stand in another order are put in order.
//! - Where blocks overlap (the clock was put back, ran ahead for a while, or fell back to its first day) the longest run of rows whose times
//!   rise is kept, the others are left out.
//! - Of several rows of one time the first is kept. Where more than a quarter of all rows share their time with another the
//!   times are coarse: readings of one time become their median.
//! Tested: tests/scale/order_test.cpp.
OrderedReadings inOrder(std::vector<Reading> readings, Times times);

} // namespace winterlarder::scale
