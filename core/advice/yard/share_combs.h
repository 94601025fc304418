// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/yard/yard_colony.h"

#include <set>
#include <vector>

namespace winterlarder::advice {

//! Combs that go from one colony of a yard to another, by their places in it.
struct SharedCombs {
    std::size_t from = 0, to = 0;
    CombGift gift;
};

//! Full outer combs go from colonies with more than they need to those that miss most, in place of their emptiest outer combs, until what is missing is under
//! the dead band or nobody has more to spare. A giver keeps its target and what is usual; supers kept for people stay; combs that were fed may go. Only until
//! late autumn and while it is warm enough to open a hive, never to or from a colony of `apart` (common practice; judgement). Tested:
//! tests/advice/share_combs_test.cpp.
std::vector<SharedCombs> combsToShare(const std::vector<YardColony>& yard, const std::set<std::size_t>& apart);

} // namespace winterlarder::advice
