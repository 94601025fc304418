// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "book/colony_history.h"

namespace winterlarder::answer {

//! What the plan of a yard did with a colony, by the advice that was acted on as the book keeps it.
struct AcceptedPlan {
    advice::PartInYard part; //!< combs given and received, and the colony it became one with
    // of a colony another was united onto, with that one: on the asking day
    std::optional<BeeCount> beesTogether;
    std::optional<Spread<Mass>> storesTogether;
    std::optional<Mass> tareTogether;
};

//! Nothing where no advice was acted on that day, the advice moved nothing, it cannot be read, or the combs were looked at again that day after it: then
//! what moved is in that look. A colony that was united onto it by what is written down, and counted there (united_case.h), is not in it again. Tested: tests/answer/accepted_plan_test.cpp.
std::optional<AcceptedPlan> acceptedPlan(const book::ColonyHistory& records, const book::ColonyCase& autumn,
                                         Date decided, const ReferenceData& reference);

//! The question of a colony with another united onto it; nothing where the plan unites none onto it. `alone`: the answer to the question without. The
//! other's brood is taken in the proportion of its bees.
std::optional<advice::ColonyQuestion> withColonyJoined(const advice::ColonyQuestion& autumn, const AcceptedPlan& plan,
                                                       const advice::Advice& alone);

} // namespace winterlarder::answer
