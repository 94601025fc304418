// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! Signs of disease: nothing is moved, taken or united; fed only what keeps the colony alive until the inspector comes (handbooks of bee health).
std::optional<Decided> diseaseRule(const Reckoning& reckoning);

//! Neither queen nor eggs seen and no brood, before the last day for syrup: make sure she is gone, then unite (common practice). Fed for
//! three weeks at most. After that day no eggs are normal.
std::optional<Decided> noQueenRule(const Reckoning& reckoning);

//! Too few bees to winter alone: unite, in closing and late while it is warm enough (rotherham-bka; judgement). Fed for three weeks at most.
std::optional<Decided> weakRule(const Reckoning& reckoning);

//! A hive of one long body: combs are brought side by side, no box goes upon another.
bool nothingGoesOnTop(const ColonyQuestion& question);

//! Typical bees on the day that decides: the earlier of the last day for syrup and the end of laying; once past, today.
double beesThatDecide(const Reckoning& reckoning);
//! Fewer than 7,000 then, no nucleus, a winter ahead, and not strong before mid September.
bool tooWeak(const Reckoning& reckoning);
//! The last day warm enough to unite (a usual mean of 8 degC); nothing where that is past.
std::optional<SeasonDay> lastDayToUnite(const Reckoning& reckoning);

} // namespace winterlarder::advice
