// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"
#include "print/paper.h"

namespace winterlarder::desk {

//! The yard plan on one or two pages: what to buy and bring, every visit by day, a row a colony, and cautions; with the price of
//! sugar as the yard has it. Colonies stand in `order` (the window's list), those it does not name after them as the book has them.
//! Sources are cited from the book's reference data, or from `reference` where the yard has no book. Tested: tests/app/paper_test.cpp.
Paper yardSheet(const Yard& yard, const std::vector<ColonyId>& order, const ReferenceData* reference = nullptr);

//! One colony on one page, with its winter picture; nothing where it has no answer yet.
std::optional<Paper> colonySheet(const ColonyEntry& colony, const ReferenceData& reference);

} // namespace winterlarder::desk
