// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/followed_colony.h"

namespace winterlarder::answer {

//! The answer of a day in a winter that is followed, for which no answer can be given by itself (`alone`, its refusals): what the followed winter means.
//! Verdict: feed where a visit is to be made that day, leave otherwise; nothing can be said where the followed winter cannot say or the colony is dead, and
//! nothing is to be fed. Feed: the next visit, whenever it is. Stores, chances, what may be wanted later, the next look (a weighing), reasons and cautions
//! are those of the followed winter. Tested: tests/cli/follow_test.cpp.
advice::Advice followedAdvice(advice::Advice alone, const FollowedColony& colony, const tracking::Following& following);

//! Whether the answer of the day (`advice`) says what to do, and not the followed winter: as long as that does not lead (followLeads) and nothing was seen
//! since that the answer knows nothing of (a death, food out of reach, too few bees). Tested: tests/cli/follow_test.cpp.
bool adviceLeads(const FollowReading& reading, const tracking::Following& following, const advice::Advice& advice);

//! Begins the reasons of an answer of the day with feeds of its plan that are past and not written down (feed-not-recorded). Tested: tests/cli/follow_test.cpp.
void askAboutFeeds(advice::Advice& advice, const FollowReading& reading, const ReferenceData& reference);

//! The followed winter with what the answer of the day says is to be done in place of its own: feed, what is missing on the target's day, what may be wanted later, the
//! next weighing, reasons (first from when on the winter is followed: follow-not-begun, day), cautions. Forecasts, state and observations stay.
//! Tested: tests/cli/follow_test.cpp.
tracking::Following asAdvised(tracking::Following following, const FollowReading& reading,
                              const tracking::FollowQuestion& question, const advice::Advice& advice);

} // namespace winterlarder::answer
