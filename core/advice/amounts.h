// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"

#include <vector>

namespace winterlarder::advice {

//! What the keeper wishes and the colony has, against which amounts are sought.
struct Wish {
    Mass mean;  //!< stores at the asking day
    Mass sd;
    double shortRisk = 0.2;
    Mass reserve;
};

//! Amounts move in steps of 0.1 kg; below half a kilogram nothing is worth doing.
inline constexpr double amountStepKg = 0.1;
inline constexpr double leastAmountKg = 0.5;

//! Largest amount, in 0.1 kg steps, that can be taken with the share touching the reserve still at or under the wished risk.
//! `largestLoss` must be without autumn flow: honey not yet made is never harvested. 0 where nothing can.
Mass spareOf(const std::vector<double>& largestLoss, const Wish& wish);

//! Smallest amount of stores, in 0.1 kg steps, that brings the share touching the reserve to the wished risk or under it.
Mass missingOf(const std::vector<double>& largestLoss, const Wish& wish);

struct Amounts {
    Mass spare;
    Mass missing;
};
//! Feed, harvest or leave by the amounts alone.
Verdict verdictOf(const Amounts& amounts, bool mayHarvest);

} // namespace winterlarder::advice
