// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/decided.h"

namespace winterlarder::advice {

//! In summer nothing is ordered for winter: below the safety amount a portion now; whole supers may come off where it stays; else nothing
//! (coloss-beebook; common practice).
std::optional<Decided> summerRule(const AdviceBasis& basis);

//! What is to be in the hive so that it lasts until the next look: the 90th percentile of what is lost until then and 2 kg, at least 5 kg (nucleus 3).
Mass safetyAmount(const AdviceBasis& basis);

//! The day of the next look in summer: the last on which the 90th percentile of the loss leaves 2 kg of these stores, at least a week ahead, at most the
//! day after summer; in a place without a winter at most four weeks ahead.
SeasonDay summerLook(const AdviceBasis& basis, Mass stores);

} // namespace winterlarder::advice
