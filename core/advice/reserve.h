// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/phases.h"
#include "advice/question.h"

namespace winterlarder::advice {

//! Boxes of brood-box size that stay on: those that are no supers and whose combs are at least three quarters of the largest. Judgement.
int broodBoxes(const ColonyQuestion& question);

//! Whether a box is a super: said of it, or of every comb listed in it.
bool isSuper(const ColonyQuestion& question, int box);

//! The reserve before spring: the keeper's own, else by size (judgement: a nucleus 2 kg, one box two full combs, more a little more).
Mass autumnReserve(const ColonyQuestion& question);

//! The reserve of a day: that of autumn up to build-up, then straight to 1 kg fourteen days before first forage, for what is left goes into the
//! first honey (common practice; judgement).
Mass reserveOn(const ColonyQuestion& question, const PhaseDays& days, SeasonDay day);

//! Share of winters that may end below the reserve: the keeper's own, else 20 of 100 where hives are hefted in winter, 10 where nobody comes, falling
//! from one to the other between 50 and 70 days locked in (judgement).
double shortRiskOf(const ColonyQuestion& question, double lockedInDays);

} // namespace winterlarder::advice
