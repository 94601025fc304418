// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/entries.h"
#include "book/form/row.h"
#include "support/outcome.h"

//! Entries as rows of their tables and back, by the description in book/describe.h. Tested: tests/book/properties_test.cpp,
//! tests/book/tables_test.cpp.
namespace winterlarder::book {

//! The entry as a row; its id is not part of it.
template <class Entry> Row rowOf(Entry entry);

//! The entry of a row; where a value is not one of its column's, all such columns (a damaged or foreign file).
template <class Entry> Outcome<Entry> entryOf(std::int64_t id, const Row& row);

} // namespace winterlarder::book
