// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace SQLite {
class Database;
}

namespace winterlarder::book {

//! Settings every connection of a book has: against strangers' files, and (writing) for edits that are on disk when the call returns:
//! rollback journal, synchronous=EXTRA, foreign keys.
void guard(SQLite::Database& database, bool writing);

//! Whether statements may do anything but read, add, change and delete rows of existing tables.
void allowRowsOnly(SQLite::Database& database, bool rowsOnly);

//! Turns the guard against broken schemas off: for salvage, on a copy of a damaged file.
void allowBrokenSchema(SQLite::Database& database);

} // namespace winterlarder::book
