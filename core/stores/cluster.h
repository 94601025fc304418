// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"

#include <optional>
#include <vector>

namespace winterlarder::stores {

//! Where the bees sit. Positions count in combs from the middle of a box, so boxes of different width compare; in a
//! long hive negative is towards the entrance end.
struct Cluster {
    double middle = 0;
    double width = 0; //!< combs it sits on in each of its boxes
    int lowestBox = 0;
    bool seen = false; //!< brood tells; false: assumed from the covered combs
};

//! Position of a comb on that scale; `boxes` from the floor up with combsPerBox = places. ContractViolation for a comb
//! outside them.
double fromMiddle(const Comb& comb, const std::vector<hive::CombFormat>& boxes);

//! Where the cluster is: the mean place of the combs with brood; without brood the middle of the covered combs counted
//! from the entrance end in a box of 16 combs or more, else the middle of the box. It is spread evenly over the boxes
//! with brood, or else over those that are not all super, or in a long hive over the long box. Judgement. Tested:
//! tests/stores/cluster_test.cpp.
Cluster findCluster(const std::vector<Comb>& combs, const std::vector<hive::CombFormat>& boxes, double coveredCombs);

//! Under a tenth of a comb's face, wax or none, is filled with anything: for bees that cannot move it is an empty comb. A tenth of it or more
//! is honey or nectar: it has stores. Judgement. Tested: tests/stores/cluster_test.cpp, bees_test.cpp.
bool holdsNothing(const Comb& comb);
bool holdsStores(const Comb& comb);

//! What the cluster can get at when it is too cold to move across combs.
struct ClusterReach {
    Mass within{0};         //!< on the combs it sits on and two beyond, on the side with the larger store
    Mass beyond{0};         //!< all the rest
    bool gap = false;       //!< long hive: an empty comb or place lies between the cluster and stores
    bool bothSides = false; //!< long hive: stores on both sides, one of which will not be reached
};

//! Honey within reach, for the locked-in rule: boxes from the cluster's lowest one up count, bees follow stores upwards
//! but not down. What an empty comb is, and one with stores: holdsNothing, holdsStores. Nothing where no comb was looked at. Model's description in DEVELOPERS.md. Tested: tests/stores/cluster_test.cpp.
std::optional<ClusterReach> clusterReach(const std::vector<Comb>& combs, const std::vector<hive::CombFormat>& boxes,
                                         double coveredCombs, double openFactor);

} // namespace winterlarder::stores
