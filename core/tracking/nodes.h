// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/belief.h"

namespace winterlarder::tracking {

//! Nodes of every winter: the unknowns drawn from their normal given the winter, stores in strata, the rest given the stores. Fills
//! unknowns, changes and outDay; weights are made ready but not set.
void drawNodes(const FollowQuestion& question, const HivePaths& paths, const Unknowns& unknowns, std::uint64_t seed, Belief& belief);

//! What only a node can tell, 0 or more: signs of life, flights, glimpses, and weighings of a hive that had starved by then. A sign
//! that (nearly) no particle can explain contradicts: it is left out and noted among the judged.
std::vector<double> nodeFactors(const FollowQuestion& question, const HivePaths& paths, const Unknowns& unknowns,
                                const ModelConstants& constants, Belief& belief);

//! Nodes a winter; 8 leave less noise than 1,000 winters do.
inline constexpr int nodesPerWinter = 8;

} // namespace winterlarder::tracking
