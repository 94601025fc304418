// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"

namespace winterlarder::desk {

enum class Zone { Capped, Open, Brood, BeeBread };
inline constexpr Zone allZones[] = {Zone::Capped, Zone::Open, Zone::Brood, Zone::BeeBread};

double shareOf(const book::CombRecord& comb, Zone zone);
double emptyShare(const book::CombRecord& comb);

//! The comb with one zone set (0..1). The zone touched holds; empty cells give way first, beyond them open, capped, bee
//! bread and brood in this order, so that shares always sum to one. Shares that were not said stay unsaid unless touched. A comb
//! whose share is said was looked at; what is said by eye is no longer measured. Tested: tests/app/comb_edits_test.cpp.
book::CombRecord withShare(const book::CombRecord& comb, Zone zone, double share);
//! The same with so much of the full outline built (0..1); shares of the built face stay.
book::CombRecord withBuilt(const book::CombRecord& comb, double built);
//! The comb looked at and empty: every zone said to be nothing.
book::CombRecord emptied(const book::CombRecord& comb);
//! The comb with what another one holds and how it was seen; bar width, outline, box and history stay its own.
book::CombRecord withContentsOf(const book::CombRecord& comb, const book::CombRecord& other);

//! How a comb was seen, from best to least.
enum class Seen { BothFaces, OneFace, ThroughWindow, NotAtAll };
Seen seenOf(const book::CombRecord& comb);
book::CombRecord withSeen(const book::CombRecord& comb, Seen seen);

} // namespace winterlarder::desk
