// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"

namespace winterlarder::answer {

//! The answer of a day in a winter that is followed, for which no answer can be given by itself (`alone`, its refusals): what the followed winter means.
//! Verdict: feed where a visit is to be made that day, leave otherwise; nothing can be said where the followed winter cannot say or the colony is dead, and
//! nothing is to be fed. Feed: the next visit, whenever it is. Stores, chances, what may be wanted later, the next look (a weighing), reasons and cautions
//! are those of the followed winter. Tested: tests/cli/follow_test.cpp.
advice::Advice followedAdvice(advice::Advice alone, const FollowedColony& colony, const tracking::Following& following);

} // namespace winterlarder::answer
