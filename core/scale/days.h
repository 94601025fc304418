// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/steps.h"

#include <optional>
#include <vector>

namespace winterlarder::scale {

//! Which readings a day's weight is made of.
enum class Basis {
    Night,     //!< midnight to 4 h: all bees at home, nothing comes in
    NearNight, //!< none at night: 21 h of the evening before to midnight, and 4 h to 6 h
    Day,       //!< neither: all readings of the day, foragers out
};

enum class DayKind {
    Nectar, //!< more came in than was eaten: heavier the next night by at least nectarDayKg and by what dampness does (scale/dampness.h)
    Eating,
    Wet, //!< heavier by nectarDayKg, but water may have done it
};
inline constexpr double nectarDayKg = 0.1; //!< judgement: less is lost in the scatter of two nights

//! One day's weight: the median of its readings, jumps taken out, those of the day added again; so what stands on the scale in that night.
struct DayWeight {
    Date date;
    Mass weight{0};
    Basis basis = Basis::Night;
    int readings = 0;     //!< it was made of
    bool wet = false;     //!< rain or snow on the hive that night
    Mass withoutJumps{0}; //!< all jumps since the log began taken out
    //! To the next day's night, jumps taken out; nothing where that day has no reading.
    std::optional<Mass> change;
    std::optional<DayKind> kind; //!< there where change is
};

//! Days that have any reading, by date; a day without one is not there. Readings in disturbed stretches are not used. A night in which the
//! weight rises by 0.15 kg from its first to its last hours is wet. Tested: tests/scale/days_test.cpp.
std::vector<DayWeight> dayWeights(const std::vector<Reading>& readings, const Jumps& found);

//! Sharpens the jumps by the days they fall on. With its jump out, a day should change as the days round it do: where a day between two dry
//! nights holds one jump and five or more of the ten days round it hold none, the difference from their median is shared between the jump
//! (its standard error) and the day (their scatter, at least 5 g), as the squares of both say. In winter, when every day is like the next, the
//! nights then tell the jump; in a flow, nothing changes. Nor does it where the difference is beyond three of both errors together:
//! then the day was no day like the others.
void sharpen(Jumps& found, const std::vector<DayWeight>& days, const std::vector<Reading>& readings);

enum class MonthEnd { Known, FirstMissing, LastMissing, BothMissing };

//! First to first of the month.
struct MonthChange {
    int year = 0, month = 0;
    std::optional<Mass> change; //!< jumps taken out; nothing where an end is missing
    MonthEnd ends = MonthEnd::Known;
    //! Sums over the days whose change is known, eaten positive: nectar less eaten is what these days changed by. Water that comes and goes
    //! again is counted with eaten, where it cancels but for what lies on the hive at the ends of the month.
    Mass nectar{0}, eaten{0};
    int nectarDays = 0, eatingDays = 0, wetDays = 0;
    int unknownDays = 0; //!< of the month's days: no weight then or on the next day
    bool byDay = false;  //!< an end is a weight of Basis::Day: foragers were out
    bool wet = false;    //!< an end is a wet night
};

//! Every month from the first day to the last. Tested: tests/scale/days_test.cpp.
std::vector<MonthChange> monthChanges(const std::vector<DayWeight>& days);

} // namespace winterlarder::scale
