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
    bool contradictory = false; //!< two pieces differ by more than 3 SD of their difference
    EvidenceKind firstContradicting{}, secondContradicting{}; //!< of the two that differ most, where contradictory
};

//! Combines pieces that all speak of the same day by generalised least squares, relative errors taken at the combined value (two
//! passes): by inverse variance where their errors are their own; what they share (SharedErrors) no number of them makes smaller.
//! Contradiction, where two differ by more than 3 sqrt(sa^2 + sb^2 - 2 cov), a kilogram of a tare's error being new on another day: the
//! answer is the pieces' wider spread (lowest low to highest high), its middle and the SD that fits it. Nothing for an empty list. Tested:
//! tests/stores/estimate_test.cpp.
std::optional<StoresEstimate> combine(const std::vector<Evidence>& pieces);

//! The weight of all weighings by a tare in a combined value: a kilogram the tare is wrong by moves it by so many.
double shareOfTare(const StoresEstimate& estimate);

//! The SD [kg] of two figures of one thing combined by least squares, whose errors have a covariance [kg2].
double sdTogether(double oneSd, double otherSd, double covariance);

} // namespace winterlarder::stores
