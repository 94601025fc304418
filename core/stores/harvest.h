// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"

#include <vector>

namespace winterlarder::stores {

//! A comb that may be taken before winter.
struct HarvestComb {
    int position = 0;       //!< in the list of combs
    Mass honey{0};          //!< stores that leave with it, open ones as ripe equivalent
    bool checkComb = false; //!< nobody said there is no brood in it: look before taking
    bool lowCapped = false; //!< less than 80 % of its stores are sealed
    bool inSuper = false;
};

//! A comb is ripe for people where at least so much of its stores is sealed.
inline constexpr double leastCapped = 2.0 / 3;

//! Combs that may be taken, in the order to take them. Taken may be: built, looked at, with stores of which at least
//! leastCapped is sealed, without brood (not said is let through with checkComb, in a super without), not fed into, not years
//! in the nest. Order: supers first, then farthest from the cluster, upper boxes before lower ones at equal distance,
//! then the later in the list. `boxes` from the floor up with combsPerBox = places. Sources: capped share EU 2001/110
//! and harvest rules of associations, see shared/rules/feeding.csv. Whether anything may be taken at all (need,
//! treatment, moisture) is for the advice to say. Tested: tests/stores/harvest_test.cpp.
std::vector<HarvestComb> harvestOrder(const std::vector<Comb>& combs, const std::vector<hive::CombFormat>& boxes,
                                      double coveredCombs, double openFactor);

//! Those of the order that fit within a limit, in order; one too heavy is passed over for the next.
std::vector<HarvestComb> takeUpTo(const std::vector<HarvestComb>& order, Mass limit);

} // namespace winterlarder::stores
