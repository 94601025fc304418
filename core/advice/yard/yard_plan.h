// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/yard/uniting.h"
#include "advice/yard/yard_colony.h"

#include <map>
#include <stop_token>
#include <vector>

namespace winterlarder::advice {

//! Whether the plan may move combs between hives, or shows the yard without that.
enum class MovingCombs { Allowed, Not };

//! What is done together in a yard: one part for each of its colonies, in their order, and the pairs that are united.
struct YardPlan {
    std::vector<PartInYard> parts;
    std::vector<UnitedPair> pairs;
    //! Why a colony gives no combs, though it has more than it needs and another is short (whyNoneGiven).
    std::map<std::size_t, Remark> noneGiven{};
};

//! The plan for a yard out of its colonies' answers alone. With signs of disease in any colony nothing moves between hives. Weak and queenless colonies are
//! united first; of the others combs go to those short of stores, then sugar is bought for what is still missing (common practice). Tested:
//! tests/advice/yard_plan_test.cpp.
YardPlan planFor(const std::vector<YardColony>& yard, MovingCombs combs);

//! A colony as its yard's plan has it.
struct ColonyInPlan {
    ColonyQuestion question;
    Answer answer; //!< its ensemble is empty where the colony was not weighed again
};

//! The answer of one colony in its yard's plan. One that gives or takes combs, or that another is united onto, is weighed again with that done on the asking day;
//! one to be united keeps its three weeks of food and has no winter of its own. Nothing comes back when stopped.
std::optional<ColonyInPlan> inPlan(const std::vector<YardColony>& yard, const YardPlan& plan, std::size_t place,
                                   const ModelConstants& constants, winter::Sampling sampling, int threads = 1,
                                   std::stop_token stop = {});

//! Whether inPlan would weigh a colony again.
bool weighedAgain(const YardPlan& plan, std::size_t place);

} // namespace winterlarder::advice
