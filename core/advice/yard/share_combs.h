// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/yard/yard_colony.h"

#include <map>
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

//! Why a colony that has more than it needs gives no combs though another of the yard stays short: gives-none-usual (what is more does not go beyond what is
//! usual here), gives-none-unlisted (nobody said which of its combs are full), gives-none-combs (none without brood and of the right size that can go).
//! `receiver`: who is short most. By places in the yard; not there who gives, has no more than the dead band beyond its target, or where nobody is short after
//! `shared`.
std::map<std::size_t, Remark> whyNoneGiven(const std::vector<YardColony>& yard, const std::set<std::size_t>& apart,
                                           const std::vector<SharedCombs>& shared);

} // namespace winterlarder::advice
