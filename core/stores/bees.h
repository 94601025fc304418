// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"

#include <optional>
#include <vector>

namespace winterlarder::stores {

//! How the bees were counted.
enum class BeesSeen { Counted, CoveredCombs, Seams };

//! Spread of such a count, SD of the logarithm: 0.05 counted or weighed, beesSd from covered combs (0.15, 90 % within
//! +-25 %), 0.21 seams or a window (judgement). Tested: tests/stores/bees_test.cpp.
double defaultLogSd(BeesSeen how, const ModelConstants& constants);

//! Adult bees on so many fully covered combs (both faces). Faces hold what the comb's format says (130 bees per dm2 for
//! an outline of the keeper's own) x its built share. Where combs are listed: the mean, weighted by built shares (a bare bar carries no cluster), of those outside supers for as
//! many combs as there are of them, the mean of the supers' combs for the rest (the cluster sits in the brood boxes
//! first); none listed: the first box from the floor stands for all. Tested: tests/stores/bees_test.cpp.
BeeCount beesOnCombs(double coveredCombs, const std::vector<Comb>& combs, const hive::CombFormat& firstBox);

//! Fully covered combs that so many bees fill: the inverse of beesOnCombs. Not limited to the combs there are.
double coveredCombsOf(BeeCount bees, const std::vector<Comb>& combs, const hive::CombFormat& firstBox);

//! Bees from an amount of any kind: counted bees, covered combs, or seams. A seam is a gap between two combs with bees
//! in it: one face of each neighbour, so two faces, as many as one covered comb.
BeeCount beesFrom(BeesSeen how, double amount, const std::vector<Comb>& combs, const hive::CombFormat& firstBox);

//! 10th, 50th and 90th percentile of a count whose logarithm is normal: n exp(-/+ 1.2816 SD).
Spread<BeeCount> spreadOf(BeeCount bees, double logSd);

//! Brood at the start [cells of all ages]: share x built area x 2 faces x 400 cells/dm2, if any comb speaks of brood;
//! combs not looked at get mean shares. Nothing where no record speaks of brood, or supers alone were looked at: not said is never zero. Tested:
//! tests/stores/bees_test.cpp.
std::optional<BeeCount> broodOnCombs(const std::vector<Comb>& combs);
inline constexpr double cellsPerSquareDecimetre = 400; //!< one face
inline constexpr double facesPerComb = 2;

//! Built combs with under a tenth of their face filled with anything, as far as they were looked at.
int emptyCombs(const std::vector<Comb>& combs);

//! Built combs exceed the covered ones by more than three, and more than three are empty: a reason to take empty combs out or put a follower beside the
//! nest. A comb of honey the bees do not cover is their winter food and stays. Common practice. Tested: tests/stores/bees_test.cpp.
bool nestTooWide(const std::vector<Comb>& combs, double coveredCombs);

} // namespace winterlarder::stores
