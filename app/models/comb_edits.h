// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/records.h"

namespace winterlarder::desk {

enum class Zone { Capped, Open, Brood, BeeBread };
inline constexpr Zone allZones[] = {Zone::Capped, Zone::Open, Zone::Brood, Zone::BeeBread};

double shareOf(const book::CombRecord& comb, Zone zone);
double emptyShare(const book::CombRecord& comb);

//! The comb with one zone set (0..1). Empty cells give way first; beyond them open, capped, bee bread and brood in this
//! order, so that shares never sum to more than one. Shares that were not said stay unsaid unless touched.
//! Tested: tests/app/comb_edits_test.cpp.
book::CombRecord withShare(const book::CombRecord& comb, Zone zone, double share);

} // namespace winterlarder::desk
