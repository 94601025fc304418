// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/belief.h"

namespace winterlarder::tracking {

//! Nodes of every winter, case by case as belief.parts says: the unknowns drawn from their normal given the winter and the case,
//! stores in strata, the rest given the stores. Fills unknowns, changes and outDay; weights are made ready but not set.
void drawNodes(const FollowQuestion& question, const HivePaths& paths, const std::vector<Unknowns>& cases,
               std::uint64_t seed, Belief& belief);

//! What only a node can tell, 0 or more: whether it starved in the time its case says, signs of life, flights, glimpses. A sign that
//! (nearly) no particle can explain contradicts: it is left out and noted among the judged. belief.logLikelihood of each winter
//! must be there.
std::vector<double> nodeFactors(const FollowQuestion& question, const HivePaths& paths, const ModelConstants& constants,
                                Belief& belief);

//! Nodes a winter; 8 leave less noise than 1,000 winters do.
inline constexpr int nodesPerWinter = 8;
inline constexpr int nodesPerStarvedCase = 4;

} // namespace winterlarder::tracking
