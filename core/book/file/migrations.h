// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/file/schema.h"

#include <string>
#include <vector>

namespace winterlarder::book {

class Store;

//! How books of one schema version become the next. The statements see the old tables and may change them as they need; afterwards every
//! table is made anew from book/describe.h and the columns both have are carried over.
struct Migration {
    int from = 0;
    std::vector<std::string> statements;
};

//! From version 1 on, without a gap. Tested: tests/book/migration_test.cpp, with a sample book of every released version.
const std::vector<Migration>& migrations();

//! Runs everything in one transaction: the book is either migrated or as it was. Throws SQLite::Exception where the file fails, its
//! content does not meet the present limits, or tables remain that no book has.
void migrate(Store& store, int from, const std::vector<Migration>& steps, const std::vector<SchemaPart>& target);

} // namespace winterlarder::book
