// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/limits.h"
#include "book/form/row.h"

#include <cstdint>
#include <string>
#include <vector>

//! The SQL a book file is made of, from book/describe.h and shared/fields.csv.
namespace winterlarder::book {

//! "WLrd" in the header of the file (offset 68): what tells a book from other SQLite files.
inline constexpr std::int32_t applicationId = 0x574C7264;
//! The schema this program writes (user_version). Older ones are migrated (book/migrations.h), newer ones only read.
inline constexpr int schemaVersion = 4;

//! One table or index of the file.
struct SchemaPart {
    std::string type; //!< "table" or "index"
    std::string name;
    std::string table;
    std::string sql;
    bool operator==(const SchemaPart&) const = default;
};

//! Every table and index of a new book, in the order they are made. Tested: tests/book/tables_test.cpp.
std::vector<SchemaPart> schemaOf(const Limits& limits);

//! The statement with every number replaced by "#": equal for two schemas that differ in nothing but limits.
std::string withoutNumbers(const std::string& sql);

//! Everything in `found` that is not in a book: triggers, views, foreign tables, other columns or constraints. Limits may differ
//! (another release's); `exactly` says whether they do not.
struct SchemaComparison {
    std::vector<std::string> surprises; //!< one sentence each; empty = the schema is ours
    bool exactly = true;
};
SchemaComparison compareSchema(const std::vector<SchemaPart>& found, const std::vector<SchemaPart>& ours);

//! A name in double quotes.
std::string quotedName(const std::string& name);

} // namespace winterlarder::book
