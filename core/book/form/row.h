// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/ids.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

//! Entries without their types: what the file, the history, the JSON document and CSV work on.
namespace winterlarder::book {

//! Nothing, a whole number (flags are 0 and 1, references the number of an id), a number, or text (dates in ISO 8601).
using Value = std::variant<std::monostate, std::int64_t, double, std::string>;

enum class ColumnType {
    Text,
    Number,
    Integer,
    Flag,
    Choice,
    Date,      //!< YYYY-MM-DD
    DayOfYear, //!< MM-DD
    Digits,    //!< a whole number up to 2^64-1, kept as text
    Weekdays,  //!< "1,4,6", may be empty
    Reference, //!< the number of another entry's id
};

struct Column {
    std::string field;  //!< entry of shared/fields.csv that limits it; empty for references
    std::string header; //!< what CSV calls it: the field, and a number where one field fills several columns
    std::string name;   //!< what the file and the JSON document call it
    ColumnType type = ColumnType::Text;
    bool required = false;
    std::vector<std::string> choices{};
    std::optional<Kind> refersTo{};
};

//! Items of an entry, in their order: the combs of a look, the boxes of a hive.
struct ListTable {
    std::string name;  //!< "combs"
    std::string table; //!< "look_combs"
    std::vector<Column> columns;
};

struct Table {
    Kind kind{};
    std::string name;     //!< "looks"
    std::string singular; //!< "look"
    std::vector<Column> columns;
    std::vector<ListTable> lists;

    std::optional<std::size_t> column(std::string_view name) const;
};

//! The tables of the book in the order of Kind, made once from book/describe.h.
const std::vector<Table>& tables();
const Table& tableOf(Kind kind);
std::optional<Kind> kindNamed(std::string_view tableName);

using Values = std::vector<Value>; //!< in the order of the columns
struct Row {
    Values values;
    std::vector<std::vector<Values>> lists; //!< in the order of Table::lists
    bool operator==(const Row&) const = default;
};

//! What an entry is to become; no row = it is to be gone.
struct Target {
    Kind kind{};
    std::int64_t id = 0;
    std::optional<Row> row;
    bool operator==(const Target&) const = default;
};

//! The text of a number: the shortest that reads back the same. -0 is 0.
std::string shortest(double number);

} // namespace winterlarder::book
