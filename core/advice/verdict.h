// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/reckoning.h"

namespace winterlarder::advice {

//! Fewest bees a colony should go into winter with on its own [workers]; four fully covered combs or so.
inline constexpr double leastWinterBees = 7000;

//! Most water ripe honey may hold to be taken [%], by refractometer on several combs. Law allows 20 (EU 2001/110, Codex 12).
inline constexpr double mostMoisturePercent = 18;

//! Whether the colony should be united: fewer bees than that before laying stops, not kept small on purpose, and a winter ahead (not a dearth).
bool tooWeak(const ColonyQuestion& question, double typicalBees);

//! Whether honey may be harvested at all by anything but its amount: no contradiction in the evidence, no treatment, not too moist,
//! no signs of disease, and where combs are listed at least one that may be taken.
bool mayHarvest(const Reckoning& reckoning);

//! The verdict for some amounts and bees, in the order unite, feed, harvest, leave.
Verdict verdictFor(const Reckoning& reckoning, const Amounts& amounts, double typicalBees);

} // namespace winterlarder::advice
