// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "report/sheet.h"
#include "report/visits.h"
#include "tracking/follow.h"

#include <optional>
#include <vector>

namespace winterlarder::report {

//! How a winter that is followed goes, and what it asks for in place of the autumn's advice.
struct FollowedPlan {
    tracking::FollowState state{};
    Spread<Mass> stores;
    Share touchReserve, runOut;
    std::vector<Task> tasks;
};

//! A colony as the yard plan sees it; both outlive the call.
struct PlannedColony {
    const advice::ColonyQuestion* question = nullptr;
    const advice::Advice* advice = nullptr;
    std::optional<FollowedPlan> followed{};
    //! to be done, where that is not just what the advice asks for: the keeper has a plan
    std::optional<std::vector<Task>> tasks{};
};

//! What the answers of a yard add up to: all that their visits feed (a first visit while evidence contradicts, and food until bees are united, too), and what
//! may come off. Combs that move were counted when the colonies were answered in their yard's plan.
struct YardTotals {
    Mass sugar{0}, fondant{0}, honey{0};
    Volume water{0};
    std::optional<Date> lastSyrupDay; //!< the earliest of the colonies that are fed syrup
};
//! Adds one colony. Tested: tests/report/sheets_test.cpp, plan_agrees_test.cpp.
void add(YardTotals& totals, const PlannedColony& colony);

//! What the keeper pays for sugar, as far as it is known.
struct SugarPrice {
    std::optional<double> perKg;
    std::string currency; //!< ISO 4217
    std::optional<Mass> bag;
};

//! The yard on one or two pages. Sections, each only where there is something to say:
//!   to-buy    facts sugar, bags, cost, water, fondant, honey-to-take, last-syrup-day
//!   visits    table day, colony, what, amount, sugar, done; by day, then as the yard lists its colonies
//!   colonies  table colony, verdict, stores, needed, bees, touches-reserve, runs-out
//!   gifts     table from, to, combs, honey
//!   to-mix    table colony, ratio, sugar, water, syrup
//!   cautions  of all colonies, each once, with their sources
//! Tested: tests/report/sheets_test.cpp.
Sheet yardPlan(const std::string& yard, Date date, const std::vector<PlannedColony>& colonies, const SugarPrice& price,
               const ReferenceData& reference);

} // namespace winterlarder::report
