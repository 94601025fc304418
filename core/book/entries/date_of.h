// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"

namespace winterlarder::book {

//! The day of a record of a colony, wherever it keeps it; to be written too where the record may be.
template <class Entry> auto& dateOf(Entry& entry) {
    if constexpr (requires { entry.weighing; }) return entry.weighing.date;
    else if constexpr (requires { entry.feed; }) return entry.feed.date;
    else if constexpr (requires { entry.harvest; }) return entry.harvest.date;
    else return entry.date;
}

} // namespace winterlarder::book
