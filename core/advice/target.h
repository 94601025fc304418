// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/basis.h"

namespace winterlarder::advice {

//! What the colony should hold on the day winter begins for it, and what of it will be missing then: target - S + eaten - found. The band of what is
//! missing counts the look's doubt, the use until that day and the count of bees; the target does not, so a vaguer look never raises an amount. Asked for with
//! `question`, `ensemble`, `flow`, `today`, `days` of the basis filled in. Tested: tests/advice/told_test.cpp.
TargetBasis reckonTarget(const AdviceBasis& basis);

//! Missing or to spare below this is enough as it is: the largest of 1 kg, a tenth of the target and a quarter of the band, at most 4 kg. Judgement.
Mass deadBand(Mass target, const Spread<Mass>& missing, const DecisionConstants& rules);

//! Whether honey stays for what is usual here: what keepers say alone, nothing published (quality C), holds none back.
bool usualHoldsBack(const ColonyQuestion& question);

//! The need counted from the asking day, in parts that add up.
NeedParts needParts(const AdviceBasis& basis);

//! The target as it is told: kilograms, full combs, gross weight.
Target targetOf(const AdviceBasis& basis);

} // namespace winterlarder::advice
