// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"
#include "report/visits.h"
#include "report/yard_plan.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace winterlarder::desk {

using JobKind = report::TaskKind;

//! Combs that hang in from another colony of the yard, and the places in this one they are exchanged for.
struct CombExchange {
    advice::CombGift gift;
    std::vector<advice::CombPlace> back{}; //!< of the combs that go back; fewer where places are free
    int boxes = 1;                         //!< of this colony's hive
    bool operator==(const CombExchange&) const = default;
};

//! One thing to do at one colony: as advised, or as the keeper made it the plan.
struct PlannedJob : report::Task {
    ColonyId id;
    QString colony;
    std::optional<book::PlannedVisitId> visit{}; //!< nothing: advised
    bool past = false; //!< planned for a day before the one asked about, and neither made nor skipped
    std::optional<report::NoFeed> forbidden{}; //!< planned, but the answer wants nothing fed: it is in no sum
    std::optional<CombExchange> exchange{};    //!< of combs to hang in
    bool framed = true;                        //!< the colony's combs hang in frames
    QString partner{};                         //!< the colony it is united with; empty: none is known
    bool operator==(const PlannedJob&) const = default;
};

//! Everything the yard asks for, added up as on the printed plan.
struct YardPlan {
    //! by day, then by colony; what is planned stands in place of what is advised of its kind, unless the answer forbids it
    std::vector<PlannedJob> jobs;
    report::YardTotals totals;
    int feed = 0, harvest = 0, leave = 0, unite = 0, cannotSay = 0, waiting = 0;
    //! colonies whose winter is followed, by how it goes; they count nowhere else
    std::map<tracking::FollowState, int> followed;
    std::vector<advice::CombGift> gifts;
    std::set<std::string> bareBars{}; //!< colonies whose combs hang in no frames, and are combs everywhere
    advice::MovingCombs moving = advice::MovingCombs::Allowed; //!< as the keeper chose
    bool disease = false;                                      //!< signs of it in a colony: nothing moves between hives
};

//! Tested: tests/app/models_test.cpp.
YardPlan planOf(const Yard& yard);
//! A colony as the printed plan sees it; where the keeper has a plan, the jobs say what is to be done, less what is forbidden. The entry outlives what is made.
//! `leading`: its winter, where that is the answer to give.
report::PlannedColony plannedColony(const ColonyEntry& colony, const std::vector<PlannedJob>& jobs,
                                    const FollowedWinter* leading);
//! Why nothing planned to be fed is to be given, by its answer or (where that leads) by how its winter goes.
std::optional<report::NoFeed> forbiddenOf(const ColonyEntry& colony, const FollowedWinter* leading);
//! The jobs of one colony, by day: what is planned, and what its answer asks for beyond that.
std::vector<PlannedJob> jobsOf(const ColonyEntry& colony);
//! Those a followed winter asks for.
std::vector<PlannedJob> jobsOf(const FollowedWinter& followed, ColonyId id);

} // namespace winterlarder::desk
