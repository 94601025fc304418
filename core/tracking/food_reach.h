// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/follow_question.h"

namespace winterlarder::tracking {

//! The sight that says the food is out of the cluster's reach.
struct OutOfReach {
    Date day;
    bool gap = false; //!< empty combs lie between, by the list of combs; else no stores were in sight
};

//! The last cluster seen, where nothing was fed from that day on: no stores in sight beside it; or, where it is known on which comb it begins and the
//! combs were listed, and no stores were seen beside it either, two empty combs between the combs it touches and every comb with stores, of its own box
//! and of those above, once what was within its reach when the combs were listed has been eaten (bees follow stores upwards, not down; across empty
//! combs they do not move in the cold: melathopoulos; judgement). `eaten`: net loss since the combs were listed. Tested: tests/tracking/food_reach_test.cpp.
std::optional<OutOfReach> foodOutOfReach(const FollowQuestion& question, Mass eaten);

//! Honey within the reach of a cluster that touches `count` combs from `first` on, place in `combs`; nothing where that is no comb of the list.
struct Reach {
    Mass within{0}, beyond{0};
};
std::optional<Reach> reachOf(const std::vector<stores::Comb>& combs, std::size_t first, std::size_t count,
                             int gapCombs);

} // namespace winterlarder::tracking
