// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/row.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>

//! One text for one content: what two books are compared by, and how the history keeps what an entry was before.
//!
//! An entry is one line per value that is there, "name value", the names sorted: a column's name, or "combs.3.capped" for an item
//! of a list ("combs.size" counts them). Text is in double quotes with \n, \r, \" and \\ escaped; numbers are the shortest form
//! that reads back the same. Tested: tests/book/tables_test.cpp.
namespace winterlarder::book {

//! Name -> value as text; a value that is not there has no name.
using Lines = std::map<std::string, std::string, std::less<>>;

Lines linesOf(const Table& table, const Row& row);
//! The row of the lines; nothing where they are not those of a row of this table (damaged history).
std::optional<Row> rowOfLines(const Table& table, const Lines& lines);

std::string textOf(const Lines& lines);
std::optional<Lines> linesOfText(std::string_view text);

//! What differs: for every name in either, its text (or nothing) before and after.
struct LinesDifference {
    std::map<std::string, std::optional<std::string>> before, after;
    bool empty() const { return before.empty(); }
};
LinesDifference differenceOf(const Lines& before, const Lines& after);
//! As textOf, "name -" where the value is not there.
std::string textOf(const std::map<std::string, std::optional<std::string>>& side);
std::optional<std::map<std::string, std::optional<std::string>>> sideOfText(std::string_view text);
//! Applies one side of a difference to the lines.
Lines laidOver(Lines lines, const std::map<std::string, std::optional<std::string>>& side);

} // namespace winterlarder::book
