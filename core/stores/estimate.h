// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stores/evidence.h"

namespace winterlarder::stores {

struct EvidenceShare {
    Evidence evidence;
    Spread<Mass> says; //!< cut at 0
    double weight = 0; //!< in the combined value; all weights sum to 1 (0 each where they contradict)
};

struct StoresEstimate {
    Mass mean;
    Mass sd;
    Spread<Mass> spread; //!< mean -/+ 1.2816 SD, cut at 0
    std::vector<EvidenceShare> shares;
    bool contradictory = false;                          //!< two pieces differ by more than 3 sqrt(sa^2 + sb^2)
    EvidenceKind firstContradicting{}, secondContradicting{}; //!< of the two that differ most, where contradictory
};

//! Combines pieces that all speak of the same day by inverse variance, relative errors taken at the combined value (two
//! passes). Contradiction: the answer is the pieces' wider spread (lowest low to highest high), its middle and the SD
//! that fits it. Nothing for an empty list.
std::optional<StoresEstimate> combine(const std::vector<Evidence>& pieces);

} // namespace winterlarder::stores
