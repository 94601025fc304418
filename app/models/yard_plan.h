// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <string>
#include <vector>

namespace winterlarder::desk {

enum class JobKind { Syrup, Fondant, Check, TakeHoney, Unite, Weigh, CountBees, RecordStores };

//! One thing to do at one colony on one day; nothing for a date = no day is pressing.
struct PlannedJob {
    std::optional<Date> date;
    ColonyId id;
    QString colony;
    JobKind kind = JobKind::Check;
    Mass sugar{0};
    Volume syrup{0};
    Mass fondant{0};
    Mass honey{0};
};

//! Everything the yard asks for, added up.
struct YardPlan {
    std::vector<PlannedJob> jobs; //!< by day, then by colony
    Mass sugar{0};
    Volume water{0};
    Mass fondant{0};
    Mass honey{0};
    std::optional<Date> lastSyrupDay; //!< the earliest of the colonies that are fed syrup
    int feed = 0, harvest = 0, leave = 0, unite = 0, cannotSay = 0, waiting = 0;
    std::vector<advice::CombGift> gifts;
};

//! Tested: tests/app/models_test.cpp.
YardPlan planOf(const Yard& yard);
//! The jobs at one colony alone, by day.
std::vector<PlannedJob> jobsOf(const ColonyEntry& colony);

} // namespace winterlarder::desk
