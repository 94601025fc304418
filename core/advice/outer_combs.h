// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/question.h"

namespace winterlarder::advice {

//! A comb that may leave the brood boxes: well filled, in the highest box that is no super, and neither covered by bees nor, where they sit in that box,
//! beside them. With brood in a box further down, a whole box of stores lies between and every comb of the top box may go (common practice).
bool isFullOuterComb(const ColonyQuestion& question, const stores::Comb& comb);

//! The same for combs that go to other bees: above the box the bees breed in, every comb that does not hang over brood.
bool mayGoToBees(const ColonyQuestion& question, const stores::Comb& comb);

} // namespace winterlarder::advice
