// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/timestamp.h"
#include "support/outcome.h"

#include <cstdint>
#include <filesystem>
#include <vector>

namespace SQLite {
class Database;
}

namespace winterlarder::book {

inline constexpr std::size_t backupsKept = 10;

//! A copy of a book beside it (beside the file, where the name is a symbolic link), in the folder "BOOK-backups", named after its moment.
struct Backup {
    std::filesystem::path file;
    Timestamp at;
    std::uintmax_t bytes = 0;
};

std::filesystem::path backupFolderOf(const std::filesystem::path& book);
//! Newest first.
std::vector<Backup> backupsOf(const std::filesystem::path& book);

//! Whether the moment is more than a day after now: the clock was ahead then, or is behind now.
bool isAhead(Timestamp at, Timestamp now);

//! Copies the open book (SQLite's online backup), opens the copy again and checks its integrity, gives it its name only then, and
//! removes the oldest beyond backupsKept: never the one just made, and those dated ahead of now before all others, for their true
//! age is not known. An "unfinished" copy in the folder, which a crash has left, is written over. Tested: tests/book/backup_test.cpp.
Outcome<Backup> makeBackup(SQLite::Database& book, const std::filesystem::path& file, Timestamp now);

//! What "PRAGMA integrity_check" finds first, a sentence each; empty = sound.
std::vector<std::string> integrityFaults(SQLite::Database& database);

} // namespace winterlarder::book
