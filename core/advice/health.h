// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! Signs of disease: nothing is moved, taken or united; fed only what keeps the colony alive until the inspector comes (handbooks of bee health).
std::optional<Decided> diseaseRule(const AdviceBasis& basis);

//! Neither queen nor eggs seen and no brood, before the last day for syrup: make sure she is gone, then unite (common practice). Fed for
//! three weeks at most. After that day no eggs are normal.
std::optional<Decided> noQueenRule(const AdviceBasis& basis);

//! Too few bees to winter alone: unite, in closing and late while it is warm enough (rotherham-bka; judgement). Fed for three weeks at most.
std::optional<Decided> weakRule(const AdviceBasis& basis);

//! A hive of one long body: combs are brought side by side, no box goes upon another.
bool nothingGoesOnTop(const ColonyQuestion& question);

//! Typical bees on the day that decides: the earlier of the last day for syrup and the end of laying; once past, today.
double beesThatDecide(const AdviceBasis& basis);
//! Fewer than 7,000 then, no nucleus, a winter ahead, and not strong before mid September.
bool tooWeak(const AdviceBasis& basis);
//! The last day warm enough to unite (a usual mean of 8 degC); nothing where that is past.
std::optional<SeasonDay> lastDayToUnite(const AdviceBasis& basis);

} // namespace winterlarder::advice
