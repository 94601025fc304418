// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/sql_values.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

namespace winterlarder::book {

void bindValue(SQLite::Statement& statement, int place, const Value& value) {
    if (const auto* number = std::get_if<std::int64_t>(&value)) statement.bind(place, *number);
    else if (const auto* real = std::get_if<double>(&value)) statement.bind(place, *real);
    else if (const auto* text = std::get_if<std::string>(&value)) statement.bind(place, *text);
    else statement.bind(place);
}

void bindValues(SQLite::Statement& statement, int first, const Values& values) {
    for (std::size_t at = 0; at < values.size(); ++at) bindValue(statement, first + static_cast<int>(at), values[at]);
}

Value valueAt(SQLite::Statement& statement, int column) {
    const auto cell = statement.getColumn(column);
    if (cell.isNull()) return {};
    if (cell.isInteger()) return cell.getInt64();
    if (cell.isFloat()) return cell.getDouble();
    return cell.getString();
}

} // namespace winterlarder::book
