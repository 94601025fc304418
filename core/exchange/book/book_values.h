// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/form/limits.h"
#include "book/form/row.h"
#include "exchange/json/json_output.h"
#include "exchange/json/json_tree.h"

#include <optional>
#include <string>
#include <string_view>

//! Values of a book's columns as text of a CSV cell and as JSON. Both are the same for every locale: decimal points, ISO dates.
namespace winterlarder::exchange {

//! Whether an entry is nothing without this column: a date, a name, an amount. Others have a default in shared/fields.csv, or are empty.
bool mustBeGiven(const book::Column& column, const book::Limits& limits);
//! What holds where a column that need not be given is not.
book::Value defaultOf(const book::Column& column, const book::Limits& limits);

//! The value a cell's text means; an empty cell is nothing (empty for a text that is always there). Nothing where it means none of
//! the column's type; limits are not looked at. Flags are true and false.
std::optional<book::Value> valueOfText(const book::Column& column, std::string_view text);
std::string textOfValue(const book::Column& column, const book::Value& value);

//! The same for JSON: numbers, true and false, texts; null is nothing.
std::optional<book::Value> valueOfJson(const book::Column& column, const JsonValue& value);
Json jsonOfValue(const book::Column& column, const book::Value& value);
//! A whole number with all its digits, also beyond what the program itself would read again.
Json jsonOfWhole(std::int64_t number);

//! What would be right: "a whole number", "true or false", ...
std::string formOf(const book::Column& column);

} // namespace winterlarder::exchange
