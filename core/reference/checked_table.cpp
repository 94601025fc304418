// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/checked_table.h"

#include "reference/mark.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace winterlarder {

namespace {

std::string described(std::string_view what, NumberRange range) {
    const NumberRange any;
    const bool low = range.least > any.least, high = range.most < any.most;
    if (low && high) return fmt::format("{} from {} to {}", what, range.least, range.most);
    if (low) return fmt::format("{} of at least {}", what, range.least);
    if (high) return fmt::format("{} of at most {}", what, range.most);
    return std::string(what);
}

bool within(double value, NumberRange range) { return value >= range.least && value <= range.most; }

} // namespace

CheckedTable::CheckedTable(CsvTable table, const std::vector<std::string>& columns, Problems& problems)
    : table_(std::move(table)), problems_(problems) {
    checkColumns(columns);
}

void CheckedTable::checkColumns(const std::vector<std::string>& columns) {
    const std::string right = fmt::format("the columns are {}", fmt::join(columns, ", "));
    const auto wrong = [&](const CsvCell& at, std::string detail) {
        columnsAreRight_ = false;
        fault(at, std::move(detail), right);
    };
    for (const std::string& name : columns)
        if (!table_.column(name)) wrong(table_.header().front(), fmt::format("column {} is missing", name));
    for (const CsvCell& named : table_.header())
        if (std::find(columns.begin(), columns.end(), named.text) == columns.end())
            wrong(named, fmt::format("column {} is not known", named.text));
}

void CheckedTable::fault(const CsvCell& at, std::string detail, std::string remedy) {
    problems_.push_back({ProblemKind::Input, table_.place(at), std::move(detail), std::move(remedy)});
}

std::string CheckedTable::text(std::size_t row, std::string_view column) {
    const CsvCell& at = cell(row, column);
    if (at.text.empty()) fault(at, fmt::format("{} is empty", column), "say what it is");
    return at.text;
}

std::string CheckedTable::uniqueId(std::size_t row, std::string_view column) {
    const std::string id = text(row, column);
    const auto [first, fresh] = firstLineOfId_.emplace(id, cell(row, column).line);
    if (!fresh && !id.empty())
        fault(cell(row, column), fmt::format("{} {} is already in line {}", column, id, first->second),
              "give every row a name of its own");
    return id;
}

std::optional<double> CheckedTable::optionalNumber(std::size_t row, std::string_view column, NumberRange range) {
    const CsvCell& at = cell(row, column);
    if (at.text.empty()) return std::nullopt;
    const auto value = numberFrom(at.text);
    if (value && within(*value, range)) return value;
    fault(at,
          value ? fmt::format("{} {} is out of range", column, at.text)
                : fmt::format("{} \"{}\" is not a number", column, at.text),
          described("a number", range));
    return std::nullopt;
}

double CheckedTable::number(std::size_t row, std::string_view column, NumberRange range) {
    const CsvCell& at = cell(row, column);
    if (at.text.empty()) fault(at, fmt::format("{} is empty", column), described("a number", range));
    return optionalNumber(row, column, range).value_or(0);
}

std::optional<int> CheckedTable::optionalInteger(std::size_t row, std::string_view column, NumberRange range) {
    const CsvCell& at = cell(row, column);
    if (at.text.empty()) return std::nullopt;
    const NumberRange whole{std::max(range.least, double{std::numeric_limits<int>::min()}),
                            std::min(range.most, double{std::numeric_limits<int>::max()})};
    const auto value = numberFrom(at.text);
    if (value && within(*value, whole) && std::floor(*value) == *value) return static_cast<int>(*value);
    fault(at,
          value ? fmt::format("{} {} is out of range or not whole", column, at.text)
                : fmt::format("{} \"{}\" is not a number", column, at.text),
          described("a whole number", range));
    return std::nullopt;
}

int CheckedTable::integer(std::size_t row, std::string_view column, NumberRange range) {
    const CsvCell& at = cell(row, column);
    if (at.text.empty()) fault(at, fmt::format("{} is empty", column), described("a whole number", range));
    return optionalInteger(row, column, range).value_or(0);
}

std::string CheckedTable::oneOf(std::size_t row, std::string_view column, const std::vector<std::string>& allowed) {
    const CsvCell& at = cell(row, column);
    if (std::find(allowed.begin(), allowed.end(), at.text) != allowed.end()) return at.text;
    fault(at, fmt::format("{} \"{}\" is not known", column, at.text),
          fmt::format("one of: {}", fmt::join(allowed, ", ")));
    return allowed.front();
}

Mark CheckedTable::mark(std::size_t row, std::string_view column) { return *markFrom(oneOf(row, column, markNames())); }

std::string CheckedTable::countryCode(std::size_t row, std::string_view column) {
    const std::string country = text(row, column);
    const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
    if (country.size() != 2 || !capital(country[0]) || !capital(country[1]))
        fault(cell(row, column), fmt::format("country {} is no country code", country),
              "two capital letters, such as CA");
    return country;
}

std::vector<std::string> listedIn(std::string_view text) {
    std::vector<std::string> parts;
    while (!text.empty()) {
        const auto end = std::min(text.find(';'), text.size());
        std::string_view part = text.substr(0, end);
        while (part.starts_with(' ')) part.remove_prefix(1);
        while (part.ends_with(' ')) part.remove_suffix(1);
        parts.emplace_back(part);
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return parts;
}

std::vector<std::string> SourceUses::refer(CheckedTable& table, std::size_t row, std::string_view column,
                                           const std::string& shown) {
    const CsvCell& at = table.cell(row, column);
    std::vector<std::string> ids = listedIn(at.text);
    for (const std::string& id : ids)
        if (!use(id, shown)) table.fault(at, fmt::format("{} {} is not a source", column, id), "an id of sources.csv");
    return ids;
}

bool SourceUses::use(const std::string& id, const std::string& shown) {
    const auto found = std::find_if(sources_.begin(), sources_.end(), [&](const Source& s) { return s.id == id; });
    if (found == sources_.end()) return false;
    if (found->usedBy.empty() || found->usedBy.back() != shown) found->usedBy.push_back(shown);
    return true;
}

} // namespace winterlarder
