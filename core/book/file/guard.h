// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace SQLite {
class Database;
}

namespace winterlarder::book {

//! Settings every connection of a book has: against strangers' files, and (one that writes) for edits that are on disk when the call returns:
//! rollback journal, synchronous=EXTRA, foreign keys.
enum class Connection { Reads, Writes };
void guard(SQLite::Database& database, Connection connection);

//! Statements may read, add, change and delete rows of existing tables and nothing else, or may change tables too.
void allowRowsOnly(SQLite::Database& database);
void allowTablesToo(SQLite::Database& database);

//! Turns the guard against broken schemas off: for salvage, on a copy of a damaged file.
void allowBrokenSchema(SQLite::Database& database);

} // namespace winterlarder::book
