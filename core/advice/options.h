// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/basis.h"

namespace winterlarder::advice {

//! Leave everything as it is, the combs of the yard's plan too. All other options count these.
Option leaveOption(const AdviceBasis& basis);
//! Take honey off today: all of it is the amount, what counted of it leaves the stores.
Option takeOption(const AdviceBasis& basis, const HarvestAdvice& harvest);
//! Leave it for winter and take the surplus at first forage: the same winters as leaving.
Option springOption(const AdviceBasis& basis, const Option& leave);
//! Feed by the dated visits of a plan.
Option feedOption(const AdviceBasis& basis, const feeding::FeedingPlan& plan);
//! Give or take only the combs of the yard's plan.
Option moveOption(const AdviceBasis& basis);

//! What is above the reserve, never below 0.
Spread<Mass> aboveReserve(const Spread<Mass>& stores, Mass reserve);
//! The steps a feeding plan makes in the stores.
std::vector<winter::StoresStep> stepsOf(const feeding::FeedingPlan& plan);

//! Unite it: what becomes of the two together is for the yard's plan to say; until then the figures are those of leaving it.
Option uniteOption(const Option& leave);

} // namespace winterlarder::advice
