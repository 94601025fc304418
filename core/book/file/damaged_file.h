// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/file/schema.h"
#include "book/form/row.h"

#include <cstdint>
#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

//! The inside of book/salvage.h: reading a file that SQLite would refuse.
namespace winterlarder::book {

//! Rows that could be read, by id, and sentences about what could not.
struct ReadRows {
    std::map<std::int64_t, Row> rows;
    std::vector<std::string> lost;
};

class DamagedFile {
public:
    //! Opens a copy of a damaged book, which is changed: its header is written anew (a book's is always the same but for its size and that
    //! of its pages) and its schema is put right where SQLite can still change it. Throws std::exception where that fails.
    DamagedFile(const std::filesystem::path& copy, std::uint32_t pageSize, const std::vector<SchemaPart>& schema);
    ~DamagedFile();

    //! Everything of the kind: all at once where the table is sound, number by number where it is not.
    ReadRows read(const Table& table);

private:
    std::int64_t largestId(const Table& table, std::int64_t atLeast);
    void readSome(const Table& table, ReadRows& read);
    void readOneByOne(const Table& table, ReadRows& read);
    void readLists(const Table& table, ReadRows& read);

    std::unique_ptr<SQLite::Database> database_;
};

} // namespace winterlarder::book
