// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/answer_parts.h"

namespace winterlarder::tracking {

//! What is likely there now, with what was given today.
Mass storesNow(const FollowBasis& r);

//! What hard winters use of the stores (their 80th percentile, over what is believed): largest net loss from today to the end of
//! today + i, for i from 0 to `last`, as far as the winters were simulated [kg]. Never falls.
std::vector<double> hardUse(const FollowBasis& r, SeasonDay last);

//! Less than three weeks of food at that use (judgement).
bool foodRunsShort(const FollowBasis& r);

//! The day on which hard use brings the stores to the reserve; nothing where it does not by `last`.
std::optional<SeasonDay> neededBy(const FollowBasis& r, SeasonDay last);

//! Stores that are still wanted by a day beyond what is there and `given`, over what is believed and lives, not below 0.
Spread<Mass> wantedBy(const FollowBasis& r, SeasonDay last, Mass given);

} // namespace winterlarder::tracking
