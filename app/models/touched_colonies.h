// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <optional>
#include <set>
#include <vector>

namespace winterlarder::desk {

//! Colonies that touched entries belong to; nothing where it cannot be told (an entry is gone, a yard changed): all may be.
//! Tested: tests/app/yard_test.cpp.
std::optional<std::set<book::ColonyId>> coloniesOf(book::Book& book, const std::vector<book::Touched>& touched);

} // namespace winterlarder::desk
