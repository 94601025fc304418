// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"
#include "stores/harvest.h"

namespace winterlarder::advice {

//! In closing: what is to spare, in whole supers and then whole outer combs, if it is worth it: at least 3 kg, in combs at least two thirds capped, and more
//! than the dead band; what stays is not below the target nor below what is usual here, and falls below the reserve in no more winters than may
//! (honeyToSpare) (eu-2001-110 for what is honey; common practice; judgement).
std::optional<Decided> harvestRule(const AdviceBasis& basis);

//! What is to spare of honey [kg]: no more than leaves the share of winters that fall below the reserve, as the option tells it with all doubt of
//! the look, at or under the risk; of a flow still to come nothing counts.
Mass honeyToSpare(const AdviceBasis& basis);

//! Combs were only counted, and too little of them is capped for any to be honey for people.
bool tooLittleCapped(const ColonyQuestion& question);

//! Whole supers that weigh at most so much together; nothing where none may go or they hold under 3 kg. Supers kept for people are not in the stores:
//! they may always go, where their honey may.
std::optional<HarvestAdvice> wholeSupers(const AdviceBasis& basis, Mass toSpare);

//! Whether honey of this hive may be honey for people at all: no disease, no evidence in doubt, not too wet (20 % water, heather 23), no
//! other colony united onto it.
bool mayBeHoney(const AdviceBasis& basis);

//! Whether a box may give honey for people: nothing was fed since last spring's forage and no medicine given while it was on; a box put on
//! afterwards, empty, is free.
bool boxIsFree(const ColonyQuestion& question, const PhaseDays& days, int box);
//! Sugar was fed since last spring's forage, or a comb took syrup.
bool wasFed(const ColonyQuestion& question, const PhaseDays& days);

//! Most water honey may hold to be kept [%].
double mostWater(const ColonyQuestion& question);

//! Combs that may go, in the order to take them.
std::vector<stores::HarvestComb> combsToTake(const AdviceBasis& basis);

} // namespace winterlarder::advice
