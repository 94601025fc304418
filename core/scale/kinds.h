// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "scale/days.h"
#include "scale/steps.h"

#include <vector>

namespace winterlarder::scale {

enum class StepKind { Equipment, Feed, Harvest, Unknown };

//! Which rule gave a step its kind; all of them judgement.
enum class StepRule {
    CameAndWent, //!< equipment: as much was put on and taken off again within 200 days (to 0.4 kg or a tenth; to 0.25 kg where half of
    //!< it came in as nectar meanwhile), or taken off and put back within a week (to 0.4 kg or a fiftieth)
    AfterFeed, //!< equipment: up to 3 kg taken off within 60 days of a feed, the feeder
    ShrankLikeSyrup, //!< feed: up to 16 kg, in the next ten days lost eight hundredths of it and 0.15 kg beyond what was eaten before
    NothingComesIn, //!< feed: 1 to 16 kg while the colony lives on its stores before and after
    RoomInAFlow,    //!< equipment: put on while nectar comes in
    TooMuchForFood, //!< equipment: put on, more than a feeder holds
    TookWhatCameIn, //!< harvest: 3 kg or more taken off, and since the last harvest at least half of it came in as nectar
    LikeASwarm,     //!< unknown: 1 to 4 kg gone at once by day while nectar comes in, a swarm perhaps
    InAGap,         //!< unknown: it happened while nothing was recorded
    NoRule,         //!< unknown
};

struct Step {
    Jump jump;
    Date date;              //!< local, half-way through
    std::int64_t local = 0; //!< the same as a time on the clock at the hive
    StepKind kind = StepKind::Unknown;
    StepRule rule = StepRule::NoRule;
    bool operator==(const Step&) const = default;
};

inline constexpr double feederFullKg = 16; //!< 12 L of thick syrup, the largest feeder of the trade's tables

//! Gives each jump its kind by what came before and after, in the order of the rules: gap, came and went, then for what is put on: too much,
//! shrank, flow, nothing comes in; for what is taken off: harvest, feeder, swarm. "Nectar comes in": the median change of the seven days
//! before or of the five after is at least half of nectarDayKg. Says what a keeper should confirm, no more.
//! Tested: tests/scale/kinds_test.cpp.
std::vector<Step> stepsOf(const std::vector<Jump>& jumps, const std::vector<DayWeight>& days,
                          const std::vector<Reading>& readings);

} // namespace winterlarder::scale
