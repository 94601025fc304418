// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/canonical.h"

#include "support/as_number.h"
#include "support/require.h"

#include <fmt/format.h>

namespace winterlarder::book {
namespace {

using Side = std::map<std::string, std::optional<std::string>>;

std::string escaped(std::string_view text) {
    std::string result = "\"";
    for (const char sign : text) {
        if (sign == '\n') result += "\\n";
        else if (sign == '\r') result += "\\r";
        else if (sign == '"' || sign == '\\') (result += '\\') += sign;
        else result += sign;
    }
    return result += '"';
}

std::optional<std::string> unescaped(std::string_view text) {
    if (text.size() < 2 || text.front() != '"' || text.back() != '"') return std::nullopt;
    text = text.substr(1, text.size() - 2);
    std::string result;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] != '\\') {
            result += text[at];
            continue;
        }
        if (++at == text.size()) return std::nullopt;
        result += text[at] == 'n' ? '\n' : text[at] == 'r' ? '\r' : text[at];
    }
    return result;
}

std::string textOfValue(const Value& value) {
    if (const auto* number = std::get_if<std::int64_t>(&value)) return std::to_string(*number);
    if (const auto* number = std::get_if<double>(&value)) return shortest(*number);
    return escaped(std::get<std::string>(value));
}

std::optional<Value> valueOf(ColumnType type, std::string_view text) {
    switch (type) {
    case ColumnType::Number: return asNumber<double>(text);
    case ColumnType::Integer:
    case ColumnType::Flag:
    case ColumnType::Reference: return asNumber<std::int64_t>(text);
    default: break;
    }
    auto plain = unescaped(text);
    if (!plain) return std::nullopt;
    return Value{std::move(*plain)};
}

void addLines(Lines& lines, const std::string& prefix, const std::vector<Column>& columns, const Values& values) {
    for (std::size_t at = 0; at < columns.size(); ++at)
        if (!std::holds_alternative<std::monostate>(values[at]))
            lines.emplace(prefix + columns[at].name, textOfValue(values[at]));
}

//! Takes the named values out of the lines; nothing where one cannot be read.
std::optional<Values> takeValues(Lines& lines, const std::string& prefix, const std::vector<Column>& columns) {
    Values values;
    for (const auto& column : columns) {
        const auto line = lines.find(prefix + column.name);
        if (line == lines.end()) {
            values.emplace_back();
            continue;
        }
        auto value = valueOf(column.type, line->second);
        if (!value) return std::nullopt;
        values.push_back(std::move(*value));
        lines.erase(line);
    }
    return values;
}

std::optional<std::vector<Values>> takeList(Lines& lines, const ListTable& list) {
    const auto line = lines.find(list.name + ".size");
    if (line == lines.end()) return std::vector<Values>{};
    const auto size = asNumber<std::int64_t>(line->second);
    if (!size || *size < 0 || *size > 1000000) return std::nullopt;
    lines.erase(line);
    std::vector<Values> items;
    for (std::int64_t item = 0; item < *size; ++item) {
        auto values = takeValues(lines, fmt::format("{}.{}.", list.name, item), list.columns);
        if (!values) return std::nullopt;
        items.push_back(std::move(*values));
    }
    return items;
}

} // namespace

Lines linesOf(const Table& table, const Row& row) {
    Lines lines;
    addLines(lines, "", table.columns, row.values);
    for (std::size_t list = 0; list < table.lists.size(); ++list) {
        const auto& items = row.lists[list];
        if (!items.empty()) lines.emplace(table.lists[list].name + ".size", std::to_string(items.size()));
        for (std::size_t item = 0; item < items.size(); ++item)
            addLines(lines, fmt::format("{}.{}.", table.lists[list].name, item), table.lists[list].columns,
                     items[item]);
    }
    return lines;
}

std::optional<Row> rowOfLines(const Table& table, const Lines& given) {
    Lines lines = given;
    auto values = takeValues(lines, "", table.columns);
    if (!values) return std::nullopt;
    Row row{std::move(*values), {}};
    for (const auto& list : table.lists) {
        auto items = takeList(lines, list);
        if (!items) return std::nullopt;
        row.lists.push_back(std::move(*items));
    }
    if (!lines.empty()) return std::nullopt;
    return row;
}

std::string textOf(const Lines& lines) {
    std::string text;
    for (const auto& [name, value] : lines) text += name + " " + value + "\n";
    return text;
}

std::string textOf(const Side& side) {
    std::string text;
    for (const auto& [name, value] : side) text += name + " " + value.value_or("-") + "\n";
    return text;
}

std::optional<Side> sideOfText(std::string_view text) {
    Side side;
    while (!text.empty()) {
        const auto end = text.find('\n');
        const auto gap = text.find(' ');
        if (end == text.npos || gap == text.npos || gap > end) return std::nullopt;
        auto value = text.substr(gap + 1, end - gap - 1);
        side[std::string(text.substr(0, gap))] = value == "-" ? std::nullopt : std::optional<std::string>(value);
        text.remove_prefix(end + 1);
    }
    return side;
}

std::optional<Lines> linesOfText(std::string_view text) {
    const auto side = sideOfText(text);
    if (!side) return std::nullopt;
    return laidOver({}, *side);
}

LinesDifference differenceOf(const Lines& before, const Lines& after) {
    LinesDifference difference;
    const auto note = [&](const std::string& name) {
        const auto old = before.find(name), now = after.find(name);
        if (old != before.end() && now != after.end() && old->second == now->second) return;
        difference.before[name] = old == before.end() ? std::nullopt : std::optional(old->second);
        difference.after[name] = now == after.end() ? std::nullopt : std::optional(now->second);
    };
    for (const auto& line : before) note(line.first);
    for (const auto& line : after) note(line.first);
    return difference;
}

Lines laidOver(Lines lines, const Side& side) {
    for (const auto& [name, value] : side) {
        if (value) lines[name] = *value;
        else lines.erase(name);
    }
    return lines;
}

} // namespace winterlarder::book
