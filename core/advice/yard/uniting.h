// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/yard/yard_colony.h"

#include <vector>

namespace winterlarder::advice {

//! Two colonies of a yard that become one, by their places in it.
struct UnitedPair {
    std::size_t from = 0, onto = 0;
    bool operator==(const UnitedPair&) const = default;
};

//! Which colonies of a healthy yard go onto which: those that are to be united, each onto a queenright one that is strong enough and stands on the same
//! combs, the one with the fewest bees, for it gains most; where there are not enough of these, two of them together if they have more than 9,000 bees when
//! winter begins. Nobody has two partners (common practice: weak onto strong; judgement). Tested: tests/advice/uniting_test.cpp.
std::vector<UnitedPair> pairsOf(const std::vector<YardColony>& yard);

//! A queen or eggs were seen, or brood and nobody who looked for her missed her. Not known is not queenright.
bool knownQueenright(const ColonyQuestion& question);

//! The colony a partner was united onto: its bees, brood and stores with the other's added, on a stream of random numbers of its own. Bees and brood are
//! counted as on the day of its look, the other's in the same proportion as on the asking day.
ColonyQuestion unitedQuestion(const YardColony& onto, const YardColony& from);

} // namespace winterlarder::advice
