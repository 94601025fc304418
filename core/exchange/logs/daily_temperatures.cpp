// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/daily_temperatures.h"

#include "exchange/json/suggestion.h"
#include "reference/csv_table.h"
#include "support/letters.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <optional>

namespace winterlarder::exchange {

namespace {

// The lowest and highest ever read on the ground lie well within these.
constexpr double coldestC = -90, hottestC = 60;

std::string withoutBlanksAround(const std::string& text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

char delimiterOf(std::string_view text) {
    while (text.substr(0, 1) == "#") {
        const auto end = text.find('\n');
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    const std::string_view header = text.substr(0, text.find('\n'));
    for (char delimiter : {',', ';', '\t'})
        if (header.find(delimiter) != std::string_view::npos) return delimiter;
    return ',';
}

std::optional<std::size_t> columnNamed(const CsvTable& table, const std::string& name) {
    const auto& header = table.header();
    for (std::size_t i = 0; i < header.size(); ++i)
        if (lowered(withoutBlanksAround(header[i].text)) == lowered(name)) return i;
    return std::nullopt;
}

// Positions of the columns that are read: mean, or minimum and maximum.
struct Positions {
    std::size_t date = 0;
    std::optional<std::size_t> mean, minimum, maximum;
};

Outcome<Positions> positionsIn(const CsvTable& table, const TemperatureColumns& columns) {
    Problems problems;
    std::vector<std::string> known;
    for (const CsvCell& cell : table.header()) known.push_back(withoutBlanksAround(cell.text));
    const auto missing = [&](const std::string& name) {
        problems.push_back(
            {ProblemKind::Input,
             {table.file(), table.header().front().line, 1},
             fmt::format("there is no column \"{}\"", name),
             suggestion(name, known) + "; name columns with date=...,mean=... or date=...,min=...,max=..."});
    };
    Positions positions;
    const auto date = columnNamed(table, columns.date);
    if (!date) missing(columns.date);
    positions.date = date.value_or(0);
    if (!columns.mean.empty()) positions.mean = columnNamed(table, columns.mean);
    if (positions.mean) return problems.empty() ? Outcome<Positions>(positions) : Outcome<Positions>(problems);
    if (columns.minimum.empty()) {
        missing(columns.mean);
        return problems;
    }
    positions.minimum = columnNamed(table, columns.minimum);
    positions.maximum = columnNamed(table, columns.maximum);
    if (!positions.minimum && !columns.mean.empty()) missing(columns.mean);
    else if (!positions.minimum) missing(columns.minimum);
    if (positions.minimum && !positions.maximum) missing(columns.maximum);
    if (!problems.empty()) return problems;
    return positions;
}

// Reads row after row, collecting days and faults.
class Rows {
public:
    Rows(const CsvTable& table, const Positions& positions, TemperatureScale scale)
        : table_(table), positions_(positions), scale_(scale) {}

    Outcome<std::vector<DailyTemperature>> all() {
        for (std::size_t row = 0; row < table_.rows(); ++row) read(row);
        if (!problems_.empty()) return std::move(problems_);
        return std::move(days_);
    }

private:
    void fault(const CsvCell& cell, std::string detail, std::string remedy) {
        problems_.push_back({ProblemKind::Input, table_.place(cell), std::move(detail), std::move(remedy)});
    }

    std::optional<Date> date(const CsvCell& cell) {
        std::string text = withoutBlanksAround(cell.text);
        std::replace(text.begin(), text.end(), '/', '-');
        const auto date = Date::parse(text);
        if (!date) {
            fault(cell, fmt::format("\"{}\" is not a date", cell.text), "YYYY-MM-DD or YYYY/MM/DD");
            return std::nullopt;
        }
        const auto [earlier, fresh] = lines_.emplace(*date, cell.line);
        if (!fresh)
            fault(cell, fmt::format("{} stands in line {} already", date->iso(), earlier->second), "each date once");
        return date;
    }

    // Nothing for a day without a reading and, with a fault, for a bad one.
    std::optional<double> reading(const CsvCell& cell) {
        const std::string text = withoutBlanksAround(cell.text);
        if (text.empty() || lowered(text) == "na") return std::nullopt;
        const auto number = numberFrom(text);
        if (!number) {
            fault(cell, fmt::format("\"{}\" is not a number", cell.text),
                  "a temperature with a decimal point, or an empty cell");
            return std::nullopt;
        }
        const double celsius = scale_ == TemperatureScale::Fahrenheit ? (*number - 32) / 1.8 : *number;
        if (celsius >= coldestC && celsius <= hottestC) return celsius;
        fault(cell, fmt::format("{} is no air temperature", text),
              fmt::format("{} to {} degC, or an empty cell", coldestC, hottestC));
        return std::nullopt;
    }

    std::optional<double> mean(std::size_t row) {
        if (positions_.mean) return reading(table_.cell(row, *positions_.mean));
        const CsvCell& lowest = table_.cell(row, *positions_.minimum);
        const auto low = reading(lowest), high = reading(table_.cell(row, *positions_.maximum));
        if (!low || !high) return std::nullopt;
        if (*low > *high)
            fault(lowest, "the minimum is above the maximum", "the lower reading in the column of minima");
        return (*low + *high) / 2;
    }

    void read(std::size_t row) {
        const auto day = date(table_.cell(row, positions_.date));
        const auto celsius = mean(row);
        if (day && celsius) days_.push_back({*day, *celsius});
    }

    const CsvTable& table_;
    const Positions& positions_;
    TemperatureScale scale_;
    std::map<Date, int> lines_;
    std::vector<DailyTemperature> days_;
    Problems problems_;
};

constexpr const char* columnsRemedy = "date=NAME,mean=NAME or date=NAME,min=NAME,max=NAME";

void setColumn(std::string_view part, std::map<std::string, std::string>& named, Problems& problems) {
    const auto equals = part.find('=');
    const std::string key(part.substr(0, equals));
    const std::string name =
        equals == std::string_view::npos ? "" : withoutBlanksAround(std::string(part.substr(equals + 1)));
    const bool known = key == "date" || key == "mean" || key == "min" || key == "max";
    if (!known || name.empty())
        problems.push_back({ProblemKind::Input, {}, fmt::format("\"{}\" names no column", part), columnsRemedy});
    else if (!named.emplace(key, name).second)
        problems.push_back({ProblemKind::Input, {}, fmt::format("\"{}\" is named twice", key), columnsRemedy});
}

} // namespace

Outcome<TemperatureColumns> temperatureColumns(std::string_view text) {
    if (text.empty()) return TemperatureColumns{};
    std::map<std::string, std::string> named;
    Problems problems;
    for (std::size_t at = 0; at <= text.size();) {
        const auto comma = std::min(text.find(',', at), text.size());
        setColumn(text.substr(at, comma - at), named, problems);
        at = comma + 1;
    }
    const bool pair = named.count("min") && named.count("max");
    const bool half = named.count("min") != named.count("max");
    if (problems.empty() && (half || pair == (named.count("mean") > 0)))
        problems.push_back(
            {ProblemKind::Input, {}, "neither the mean alone nor minimum and maximum are named", columnsRemedy});
    if (!problems.empty()) return problems;
    TemperatureColumns columns;
    if (named.count("date")) columns.date = named["date"];
    columns.mean = named["mean"];
    columns.minimum = named["min"];
    columns.maximum = named["max"];
    return columns;
}

Outcome<std::vector<DailyTemperature>> readDailyTemperatures(std::string_view text, const std::string& file,
                                                             const TemperatureColumns& columns,
                                                             TemperatureScale scale) {
    const auto table = CsvTable::parse(text, file, delimiterOf(text));
    if (!table) return table.problems();
    const auto positions = positionsIn(*table, columns);
    if (!positions) return positions.problems();
    return Rows(*table, *positions, scale).all();
}

} // namespace winterlarder::exchange
