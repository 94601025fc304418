// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/damaged_file.h"

#include "book/file/guard.h"
#include "book/file/sql_values.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <fstream>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;
constexpr std::int64_t mostIds = 2000000; //!< no keeper has more of one kind; a damaged number may say anything

void putNumber(std::string& header, std::size_t at, std::uint32_t number, std::size_t bytes) {
    for (std::size_t byte = 0; byte < bytes; ++byte)
        header[at + byte] = static_cast<char>(number >> (8 * (bytes - 1 - byte)) & 0xFF);
}

//! The first 100 bytes of a book of so many pages (https://sqlite.org/fileformat2.html section 1.3): UTF-8, rollback journal, no
//! free pages.
std::string soundHeader(std::uint32_t pages, std::uint32_t pageSize) {
    std::string header(100, '\0');
    header.replace(0, 16, std::string("SQLite format 3\0", 16));
    putNumber(header, 16, pageSize == 65536 ? 1 : pageSize, 2);
    header[18] = header[19] = 1;
    header[21] = 64;
    header[22] = header[23] = 32;
    putNumber(header, 24, 1, 4);
    putNumber(header, 28, pages, 4);
    putNumber(header, 40, 1, 4);
    putNumber(header, 44, 4, 4);
    putNumber(header, 56, 1, 4);
    putNumber(header, 60, static_cast<std::uint32_t>(schemaVersion), 4);
    putNumber(header, 68, static_cast<std::uint32_t>(applicationId), 4);
    putNumber(header, 92, 1, 4);
    return header;
}

void writeHeader(const files::path& copy, std::uint32_t pageSize) {
    const auto pages = (files::file_size(copy) + pageSize - 1) / pageSize;
    files::resize_file(copy, pages * pageSize);
    std::fstream file(copy, std::ios::binary | std::ios::in | std::ios::out);
    const auto header = soundHeader(static_cast<std::uint32_t>(pages), pageSize);
    file.write(header.data(), static_cast<std::streamsize>(header.size()));
    if (!file.flush()) throw std::runtime_error("the copy for salvage cannot be written");
}

std::unique_ptr<SQLite::Database> openBroken(const files::path& copy) {
    auto database = std::make_unique<SQLite::Database>(files::absolute(copy).string(), SQLite::OPEN_READWRITE);
    allowBrokenSchema(*database); // before anything asks for the schema
    guard(*database, Connection::Reads);
    allowBrokenSchema(*database);
    return database;
}

//! Tables by the text they should have; everything else, indexes included, is forgotten.
void putSchemaRight(SQLite::Database& database, const std::vector<SchemaPart>& schema) {
    try {
        database.exec("DELETE FROM sqlite_schema WHERE type <> 'table'");
    } catch (const std::exception&) { // then they stay; tables are read without them
    }
    for (const auto& part : schema) {
        if (part.type != "table") continue;
        try {
            SQLite::Statement right(database, "UPDATE sqlite_schema SET sql = ? WHERE name = ? AND sql <> ?");
            right.bind(1, part.sql);
            right.bind(2, part.name);
            right.bind(3, part.sql);
            right.exec();
        } catch (const std::exception&) { // then this table will be reported as lost
        }
    }
}

Row rowAt(SQLite::Statement& statement, const Table& table) {
    Row row;
    for (std::size_t at = 0; at < table.columns.size(); ++at)
        row.values.push_back(valueAt(statement, static_cast<int>(at) + 1));
    row.lists.resize(table.lists.size());
    return row;
}

//! "3, 5 to 9 and 12"-like: runs of numbers, the first few.
std::string runs(const std::vector<std::int64_t>& numbers) {
    std::string text;
    int written = 0;
    for (std::size_t at = 0; at < numbers.size();) {
        std::size_t end = at;
        while (end + 1 < numbers.size() && numbers[end + 1] == numbers[end] + 1) ++end;
        if (++written > 10) return text + " and more";
        if (!text.empty()) text += ", ";
        text += end == at ? fmt::format("{}", numbers[at]) : fmt::format("{} to {}", numbers[at], numbers[end]);
        at = end + 1;
    }
    return text;
}

} // namespace

DamagedFile::DamagedFile(const files::path& copy, std::uint32_t pageSize, const std::vector<SchemaPart>& schema) {
    writeHeader(copy, pageSize);
    putSchemaRight(*openBroken(copy), schema);
    database_ = openBroken(copy);
}

DamagedFile::~DamagedFile() = default;

ReadRows DamagedFile::read(const Table& table) {
    ReadRows read;
    try {
        readSome(table, read);
    } catch (const std::exception&) {
        readOneByOne(table, read);
    }
    readLists(table, read);
    return read;
}

void DamagedFile::readSome(const Table& table, ReadRows& read) {
    SQLite::Statement all(*database_, fmt::format("SELECT * FROM {} NOT INDEXED", quotedName(table.name)));
    if (all.getColumnCount() != static_cast<int>(table.columns.size()) + 1) throw std::runtime_error("another table");
    while (all.executeStep()) {
        read.rows.emplace(all.getColumn(0).getInt64(), rowAt(all, table));
        if (static_cast<std::int64_t>(read.rows.size()) > mostIds) throw std::runtime_error("the table does not end");
    }
}

std::int64_t DamagedFile::largestId(const Table& table, std::int64_t atLeast) {
    std::int64_t largest = atLeast;
    for (const auto& sql : {fmt::format("SELECT seq FROM sqlite_sequence WHERE name = '{}'", table.name),
                            fmt::format("SELECT max(id) FROM {} NOT INDEXED", quotedName(table.name))})
        try {
            SQLite::Statement one(*database_, sql);
            if (one.executeStep()) largest = std::max(largest, one.getColumn(0).getInt64());
        } catch (const std::exception&) { // the other may know
        }
    return std::min(largest, mostIds);
}

void DamagedFile::readOneByOne(const Table& table, ReadRows& read) {
    const auto last = read.rows.empty() ? 0 : read.rows.rbegin()->first;
    std::vector<std::int64_t> unreadable;
    try {
        const auto largest = largestId(table, last);
        SQLite::Statement one(*database_,
                              fmt::format("SELECT * FROM {} NOT INDEXED WHERE id = ?", quotedName(table.name)));
        if (one.getColumnCount() != static_cast<int>(table.columns.size()) + 1)
            throw std::runtime_error("another table");
        for (std::int64_t id = 1; id <= largest; ++id) {
            if (read.rows.contains(id)) continue;
            try {
                one.tryReset();
                one.bind(1, id);
                if (one.executeStep()) read.rows.emplace(id, rowAt(one, table));
            } catch (const std::exception&) {
                unreadable.push_back(id);
            }
        }
    } catch (const std::exception&) {
        read.lost.push_back(fmt::format("{}: the table cannot be read{}", table.name,
                                        last ? fmt::format(" beyond number {}", last) : ""));
        return;
    }
    if (!unreadable.empty())
        read.lost.push_back(fmt::format("{}: numbers {} cannot be read", table.name, runs(unreadable)));
    else
        read.lost.push_back(fmt::format("{}: the table is damaged; entries after number {} may be missing", table.name,
                                        read.rows.empty() ? 0 : read.rows.rbegin()->first));
}

void DamagedFile::readLists(const Table& table, ReadRows& read) {
    for (std::size_t list = 0; list < table.lists.size(); ++list) {
        const auto& items = table.lists[list];
        std::vector<std::int64_t> unreadable;
        try {
            SQLite::Statement some(
                *database_, fmt::format("SELECT * FROM {} WHERE owner = ? ORDER BY place", quotedName(items.table)));
            if (some.getColumnCount() != static_cast<int>(items.columns.size()) + 2)
                throw std::runtime_error("another table");
            for (auto& [id, row] : read.rows) {
                try {
                    some.tryReset();
                    some.bind(1, id);
                    while (some.executeStep()) {
                        Values values;
                        for (std::size_t at = 0; at < items.columns.size(); ++at)
                            values.push_back(valueAt(some, static_cast<int>(at) + 2));
                        row.lists[list].push_back(std::move(values));
                    }
                } catch (const std::exception&) {
                    unreadable.push_back(id);
                }
            }
        } catch (const std::exception&) {
            read.lost.push_back(fmt::format("{}: the {} of every {} are lost", table.name, items.name, table.singular));
        }
        if (!unreadable.empty())
            read.lost.push_back(fmt::format("{}: {} of numbers {} are lost, in part or whole", table.name, items.name,
                                            runs(unreadable)));
    }
}

} // namespace winterlarder::book
