// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/schema.h"

#include <algorithm>
#include <cctype>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <map>

namespace winterlarder::book {
namespace {

const char* sqlType(ColumnType type) {
    switch (type) {
    case ColumnType::Number: return "REAL";
    case ColumnType::Integer:
    case ColumnType::Flag:
    case ColumnType::Reference: return "INTEGER";
    default: return "TEXT";
    }
}

std::string between(const std::string& what, const FieldLimits& limits) {
    if (limits.minimum && limits.maximum)
        return fmt::format("{} BETWEEN {} AND {}", what, shortest(*limits.minimum), shortest(*limits.maximum));
    if (limits.minimum) return fmt::format("{} >= {}", what, shortest(*limits.minimum));
    return limits.maximum ? fmt::format("{} <= {}", what, shortest(*limits.maximum)) : "";
}

std::string condition(const Column& column, const FieldLimits& limits) {
    const auto name = quotedName(column.name);
    switch (column.type) {
    case ColumnType::Number:
    case ColumnType::Integer: return between(name, limits);
    case ColumnType::Text:
        return fmt::format("length({}) BETWEEN {} AND {}", name, textLength(column).least, textLength(column).most);
    case ColumnType::Flag: return name + " IN (0, 1)";
    case ColumnType::Choice: return fmt::format("{} IN ('{}')", name, fmt::join(column.choices, "', '"));
    case ColumnType::Date: return name + " GLOB '[0-9][0-9][0-9][0-9]-[0-1][0-9]-[0-3][0-9]'";
    case ColumnType::DayOfYear: return name + " GLOB '[0-1][0-9]-[0-3][0-9]'";
    case ColumnType::Digits: return name + " GLOB '[0-9]*' AND " + name + " NOT GLOB '*[^0-9]*'";
    case ColumnType::Weekdays: return name + " NOT GLOB '*[^1-7,]*'";
    case ColumnType::Reference: return "";
    }
    return "";
}

std::string columnSql(const Column& column, const Limits& limits) {
    auto sql = fmt::format("{} {}", quotedName(column.name), sqlType(column.type));
    if (column.required) sql += " NOT NULL";
    if (column.refersTo) sql += fmt::format(" REFERENCES {}(id)", quotedName(tableOf(*column.refersTo).name));
    if (const auto check = condition(column, limits.of(column)); !check.empty())
        sql += fmt::format(" CONSTRAINT {} CHECK ({})", quotedName(column.name), check);
    return sql;
}

std::string tableSql(const std::string& name, std::vector<std::string> lines, const std::vector<Column>& columns,
                     const Limits& limits, const char* end) {
    for (const auto& column : columns) lines.push_back(columnSql(column, limits));
    for (const auto& rule : combinationRules())
        if (rule.table == name)
            lines.push_back(fmt::format("CONSTRAINT {} CHECK ({})", quotedName(rule.name), rule.sql));
    return fmt::format("CREATE TABLE {} (\n  {}\n) {}", quotedName(name), fmt::join(lines, ",\n  "), end);
}

SchemaPart table(const std::string& name, std::string sql) { return {"table", name, name, std::move(sql)}; }

SchemaPart entryTable(const Table& entry, const Limits& limits) {
    return table(entry.name,
                 tableSql(entry.name, {"id INTEGER PRIMARY KEY AUTOINCREMENT"}, entry.columns, limits, "STRICT"));
}

SchemaPart listTable(const Table& owner, const ListTable& list, const Limits& limits) {
    return table(list.table, tableSql(list.table,
                                      {fmt::format("owner INTEGER NOT NULL REFERENCES {}(id)", quotedName(owner.name)),
                                       "place INTEGER NOT NULL CHECK (place >= 0)"},
                                      list.columns, limits, "STRICT, WITHOUT ROWID"));
}

//! WITHOUT ROWID tables need their key among the columns; it is put before the closing bracket.
SchemaPart keyed(SchemaPart part, const std::string& key) {
    part.sql.insert(part.sql.rfind("\n)"), ",\n  PRIMARY KEY (" + key + ")");
    return part;
}

void historyTables(std::vector<SchemaPart>& parts) {
    parts.push_back(table("steps", R"(CREATE TABLE "steps" (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  verb TEXT NOT NULL,
  state TEXT NOT NULL CHECK (state IN ('done', 'undone', 'abandoned')),
  turned_at TEXT,
  turned_by TEXT
) STRICT)"));
    parts.push_back(table("step_changes", R"(CREATE TABLE "step_changes" (
  step INTEGER NOT NULL REFERENCES "steps"(id),
  place INTEGER NOT NULL,
  kind TEXT NOT NULL,
  entry INTEGER NOT NULL,
  how TEXT NOT NULL CHECK (how IN ('add', 'change', 'remove')),
  before TEXT,
  after TEXT,
  PRIMARY KEY (step, place)
) STRICT, WITHOUT ROWID)"));
    parts.push_back({"index", "steps_by_state", "steps", R"(CREATE INDEX "steps_by_state" ON "steps" (state, id))"});
    parts.push_back(table("book_made", R"(CREATE TABLE "book_made" (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  mark TEXT CHECK (length(mark) = 32 AND mark NOT GLOB '*[^0-9a-f]*')
) STRICT)"));
}

bool isWordSign(char sign) {
    return std::isalnum(static_cast<unsigned char>(sign)) || sign == '_' || sign == '-' || sign == '"';
}

} // namespace

std::string quotedName(const std::string& name) { return "\"" + name + "\""; }

std::vector<SchemaPart> schemaOf(const Limits& limits) {
    std::vector<SchemaPart> parts;
    for (const auto& entry : tables()) {
        parts.push_back(entryTable(entry, limits));
        for (const auto& list : entry.lists) parts.push_back(keyed(listTable(entry, list, limits), "owner, place"));
        if (entry.column("colony") && entry.column("date"))
            parts.push_back({"index", entry.name + "_of_colony", entry.name,
                             fmt::format(R"(CREATE INDEX "{0}_of_colony" ON "{0}" ("colony", "date"))", entry.name)});
    }
    historyTables(parts);
    return parts;
}

std::string withoutNumbers(const std::string& sql) {
    std::string result;
    for (std::size_t at = 0; at < sql.size();) {
        const bool starts =
            std::isdigit(static_cast<unsigned char>(sql[at])) &&
            (at == 0 || !isWordSign(sql[at - 1]) || (sql[at - 1] == '-' && at > 1 && sql[at - 2] == ' '));
        if (!starts) {
            result += sql[at++];
            continue;
        }
        if (!result.empty() && result.back() == '-') result.pop_back();
        while (at < sql.size() && (std::isdigit(static_cast<unsigned char>(sql[at])) || sql[at] == '.' ||
                                   sql[at] == 'e' || (sql[at] == '+' && sql[at - 1] == 'e')))
            ++at;
        result += '#';
    }
    return result;
}

SchemaComparison compareSchema(const std::vector<SchemaPart>& found, const std::vector<SchemaPart>& ours) {
    SchemaComparison comparison;
    std::map<std::string, const SchemaPart*> expected;
    for (const auto& part : ours) expected[part.name] = &part;
    for (const auto& part : found) {
        if (part.name.starts_with("sqlite_")) continue; // SQLite's own bookkeeping; no other statement can make one
        const auto match = expected.find(part.name);
        if (match == expected.end() || match->second->type != part.type) {
            comparison.surprises.push_back(fmt::format("it holds a {} that no book has", part.type));
            continue;
        }
        if (withoutNumbers(part.sql) != withoutNumbers(match->second->sql))
            comparison.surprises.push_back(fmt::format("its {} {} is not as in a book", part.type, match->first));
        if (part.sql != match->second->sql) comparison.exactly = false;
        expected.erase(match);
    }
    for (const auto& missing : expected)
        comparison.surprises.push_back(fmt::format("it lacks the {} {}", missing.second->type, missing.first));
    return comparison;
}

} // namespace winterlarder::book
