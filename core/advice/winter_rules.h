// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! From late autumn on: the cluster was seen and has not three weeks of food within its reach, though the hive has: fondant on the bees today
//! (judgement; melathopoulos on clusters that starve beside their stores).
std::optional<Decided> noFoodInReachRule(const AdviceBasis& basis);

//! From late autumn on: less than three weeks of food at the use of hard winters: one portion today, whatever else is known (handbooks' emergency feed).
std::optional<Decided> actNowRule(const AdviceBasis& basis);

//! In winter and spring, where a board no longer goes on (see lateFeedRule), one visit at a time, dated today, once hard use may bring stores to the reserve within a week; in a dearth small portions on
//! warm days; no feed within a fortnight of first forage (nbu-bpg7; apisavoir; judgement).
std::optional<Decided> winterFeedRule(const AdviceBasis& basis);

//! In late autumn: small warm portions while they are taken; where bees are locked in for long a board of fondant when the hive is wrapped, for
//! lateBoardDays after its last day (in winter too) where more than lateBoardStarve of the winters starve the colony (judgement).
std::optional<Decided> lateFeedRule(const AdviceBasis& basis);

//! Stores the cluster can get at without moving across combs; nothing where its place was not seen or combs are not listed.
std::optional<Mass> foodInReach(const AdviceBasis& basis);

//! Whether most winters starve it as it is, no feed is decided for, and until the solstice full combs can still be hung in (common practice). It is
//! looked at again within a week then.
bool hardlyLives(const AdviceBasis& basis, const Decided& decided);

} // namespace winterlarder::advice
