// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "answer/doubts.h"
#include "book/form/edits.h"
#include "models/yard.h"

#include <optional>

namespace winterlarder::desk {

//! What is known of the colony being looked at, for entries to be held against; nothing while its records are not read.
std::optional<answer::Surroundings> surroundingsIn(const Yard& yard, ColonyId id);

//! What is in doubt of the entry an edit writes, on the clock's day whatever day is asked about; nothing where it is likely, or is none of
//! those that are judged (answer/judged_entries.h).
//! Tested: tests/app/entry_doubts_test.cpp.
std::optional<stores::Doubt> doubtOfEdit(const book::Edit& edit, const Yard& yard);
//! The edit whose entry says whether the keeper is sure of it.
book::Edit withSure(book::Edit edit, bool sure);

} // namespace winterlarder::desk
