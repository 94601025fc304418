// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/scale_log_columns.h"

#include "exchange/json/json_tree.h"
#include "exchange/json/suggestion.h"
#include "exchange/logs/scale_log_cells.h"
#include "support/letters.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace winterlarder::exchange {

namespace {

using Cells = std::vector<std::string>;

constexpr double mostly = 0.5; // of a column's cells show what it holds

template <std::size_t N> bool holdsAny(std::string_view text, const std::array<const char*, N>& words) {
    const std::string small = lowered(text);
    return std::any_of(words.begin(), words.end(),
                       [&](const char* word) { return small.find(word) != std::string::npos; });
}

// Words of headers in the languages of the trade.
constexpr std::array<const char*, 15> weightWords = {"weight", "gewicht", "poids",    "peso",  "mass",
                                                     "masse",  "waga",    "hmotnost", "vikt",  "v\xC3\xA6gt",
                                                     "vekt",   "paino",   "scale",    "waage", "gross"};
constexpr std::array<const char*, 14> otherWords = {"temp", "hum",  "feucht", "batt", "volt", "rain",  "press",
                                                    "lati", "long", "signal", "rssi", "wind", "error", "status"};
constexpr std::array<const char*, 12> timeWords = {"time",  "date", "datum", "zeit", "fecha",  "hora",
                                                   "heure", "data", "tid",   "klok", "moment", "stamp"};

// What the cells of one column look like.
struct ColumnLook {
    std::size_t cells = 0, times = 0, dates = 0, clocks = 0, unixTimes = 0, numbers = 0;
    bool counter = true, still = true;
    std::optional<double> first, last;
    std::optional<MassUnit> unit;

    bool most(std::size_t of) const {
        return cells > 0 && static_cast<double>(of) >= mostly * static_cast<double>(cells);
    }
    bool isTime() const { return most(times + unixTimes); }
    bool isDate() const { return most(dates) && !isTime(); }
    bool isClock() const { return most(clocks); }
    bool isNumber() const { return most(numbers) && !most(unixTimes) && !isDate(); }
    bool says() const { return cells < 3 || !(counter || still); } // more than a counter or a constant

    void look(std::string_view cell) {
        if (isMissing(cell)) return;
        ++cells;
        if (const auto time = timeParts(cell)) {
            times += time->form == TimeParts::Form::DateAndTime;
            dates += time->form == TimeParts::Form::DateOnly;
            clocks += time->form == TimeParts::Form::TimeOnly;
            unixTimes += time->form == TimeParts::Form::UnixTime;
        }
        std::optional<double> number = weightIn(cell, '.');
        if (!number) number = weightIn(cell, ',');
        if (!number) return;
        ++numbers;
        if (!unit) unit = unitBehind(cell);
        counter = counter && (!last || std::abs(*number - *last) == 1) && std::floor(*number) == *number;
        still = still && (!first || *number == *first);
        if (!first) first = number;
        last = number;
    }
};

class LogTable {
public:
    LogTable(const std::vector<std::string>& lines, const std::vector<int>& numbers, const std::string& file,
             char delimiter, const ScaleLogOptions& options)
        : numbers_(numbers), file_(file), options_(options) {
        found_.columns.delimiter = delimiter;
        CellSplitter splitter(delimiter);
        std::vector<std::string_view> cells;
        for (const std::string& line : lines) {
            rows_.emplace_back();
            if (splitter.split(line, cells)) rows_.back().assign(cells.begin(), cells.end());
        }
    }

    //! How much was found: 0 nothing, 1 several times, 2 a time, 3 several weights beside it, 4 time and weight.
    int score() const { return score_; }

    Outcome<FoundColumns> find() {
        findData();
        lookAtColumns();
        const bool time = findTime();
        const bool weight = time && findWeight();
        score_ = weight ? 4 : (time ? 2 : 0) + (several_ ? 1 : 0);
        if (!problems_.empty()) return problems_;
        found_.columns.decimal = decimal();
        return found_;
    }

private:
    static bool anyTime(const Cells& row) {
        return std::any_of(row.begin(), row.end(), [](const std::string& cell) {
            const auto time = timeParts(cell);
            return time && time->form != TimeParts::Form::TimeOnly;
        });
    }
    void findData() {
        std::size_t first = 0;
        while (first < rows_.size() && !anyTime(rows_[first])) ++first;
        found_.dataFrom = first == rows_.size() ? 0 : first;
        if (found_.dataFrom == 0) return;
        const Cells& above = rows_[found_.dataFrom - 1];
        const bool words = std::any_of(above.begin(), above.end(), [](const std::string& cell) {
            return std::any_of(cell.begin(), cell.end(),
                               [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); });
        });
        if (above.size() < 2 || !words) return;
        header_ = above;
        found_.columns.headerLine = numbers_[found_.dataFrom - 1];
    }
    void lookAtColumns() {
        for (std::size_t row = found_.dataFrom; row < rows_.size(); ++row) {
            if (rows_[row].size() > columns_.size()) columns_.resize(std::min<std::size_t>(rows_[row].size(), 1000));
            for (std::size_t i = 0; i < rows_[row].size() && i < columns_.size(); ++i) columns_[i].look(rows_[row][i]);
        }
    }

    std::string nameOf(std::size_t column) const { return column < header_.size() ? header_[column] : std::string(); }
    std::string shownColumn(std::size_t column) const {
        return nameOf(column).empty() ? fmt::format("{}", column + 1) : inQuotes(nameOf(column));
    }
    std::string shownColumns(const std::vector<std::size_t>& some) const {
        std::vector<std::string> names;
        for (std::size_t i = 0; i < some.size() && i < 12; ++i) names.push_back(shownColumn(some[i]));
        return fmt::format("{}{}", fmt::join(names, ", "), some.size() > names.size() ? ", ..." : "");
    }
    LogColumn column(std::size_t at, ToldBy told) const { return {static_cast<int>(at) + 1, nameOf(at), told}; }

    void problem(std::string detail, std::string remedy) {
        problems_.push_back({ProblemKind::Input, {file_, 0, 0}, std::move(detail), std::move(remedy)});
    }

    bool several(std::string detail, const char* option) {
        several_ = true;
        problem(std::move(detail), fmt::format("{} with one of them", option));
        return false;
    }

    // The column an option names: by header, else by number.
    std::optional<std::size_t> named(const std::string& wanted, const char* option) {
        for (std::size_t i = 0; i < header_.size(); ++i)
            if (lowered(header_[i]) == lowered(wanted)) return i;
        std::size_t number = 0;
        const auto [end, error] = std::from_chars(wanted.data(), wanted.data() + wanted.size(), number);
        if (error == std::errc() && end == wanted.data() + wanted.size() && number >= 1 && number <= columns_.size())
            return number - 1;
        problem(fmt::format("there is no column {}", inQuotes(wanted)),
                fmt::format("{} with a name of the header{} or a number from 1 to {}", option,
                            header_.empty() ? "" : " (" + fmt::format("{}", fmt::join(header_, ", ")) + ")",
                            columns_.size()));
        return std::nullopt;
    }

    template <class Is> std::vector<std::size_t> all(Is is) const {
        std::vector<std::size_t> some;
        for (std::size_t i = 0; i < columns_.size(); ++i)
            if (is(i)) some.push_back(i);
        return some;
    }
    // One of several by the words of its header; nothing where none or more than one has them.
    template <std::size_t N>
    std::optional<std::size_t> byWords(const std::vector<std::size_t>& some,
                                       const std::array<const char*, N>& words) const {
        std::optional<std::size_t> one;
        for (const std::size_t i : some) {
            if (!holdsAny(nameOf(i), words)) continue;
            if (one) return std::nullopt;
            one = i;
        }
        return one;
    }

    void setTime(std::size_t at, ToldBy told) {
        found_.time = at;
        found_.columns.time = column(at, told);
    }
    void setDate(std::size_t at, ToldBy told) {
        found_.date = at;
        found_.columns.date = column(at, told);
    }

    bool findTime() {
        if (!options_.date.empty()) {
            const auto at = named(options_.date, "--date");
            if (!at) return false;
            setDate(*at, ToldBy::Option);
        }
        if (!options_.time.empty()) {
            const auto at = named(options_.time, "--time");
            if (!at) return false;
            setTime(*at, ToldBy::Option);
            if (!found_.date && columns_[*at].isClock()) return findDateBeside();
            return true;
        }
        if (found_.date) return findClockBeside(found_.columns.date->told);
        const auto times = all([&](std::size_t i) { return columns_[i].isTime(); });
        if (times.size() == 1) return setTime(times[0], ToldBy::Content), true;
        if (times.size() > 1) {
            if (const auto one = byWords(times, timeWords)) return setTime(*one, ToldBy::Header), true;
            return several(fmt::format("more than one column holds times: {}", shownColumns(times)), "--time");
        }
        return findDateBeside();
    }
    bool findDateBeside() {
        const auto dates = all([&](std::size_t i) { return columns_[i].isDate(); });
        if (dates.empty()) {
            problem("no column holds times",
                    "a table of times and weights; --delimiter, --time or --date where it is one");
            return false;
        }
        const auto one = dates.size() == 1 ? std::optional<std::size_t>(dates[0]) : byWords(dates, timeWords);
        if (!one) return several(fmt::format("more than one column holds dates: {}", shownColumns(dates)), "--date");

        if (found_.columns.time.number > 0) return setDate(*one, ToldBy::Content), true;
        setDate(*one, dates.size() == 1 ? ToldBy::Content : ToldBy::Header);
        return findClockBeside(found_.columns.date->told);
    }
    bool findClockBeside(ToldBy told) {
        const auto clocks = all([&](std::size_t i) { return columns_[i].isClock(); });
        if (clocks.size() > 1)
            return several(fmt::format("more than one column holds times of day: {}", shownColumns(clocks)), "--time");

        if (clocks.size() == 1) return setTime(clocks[0], ToldBy::Content), true;
        setTime(*found_.date, told);
        found_.date.reset();
        found_.columns.date.reset();
        return true;
    }

    void setWeight(std::size_t at, ToldBy told) {
        found_.weight = at;
        found_.columns.weight = column(at, told);
        found_.unit = unitInHeader(nameOf(at));
        found_.columns.unitTold = found_.unit ? ToldBy::Header : columns_[at].unit ? ToldBy::Content : ToldBy::Size;
        if (!found_.unit) found_.unit = columns_[at].unit;
    }

    bool findWeight() {
        if (!options_.weight.empty()) {
            const auto at = named(options_.weight, "--weight");
            if (at) setWeight(*at, ToldBy::Option);
            return at.has_value();
        }
        const auto numbers = all([&](std::size_t i) {
            return columns_[i].isNumber() && i != found_.time && (!found_.date || i != *found_.date);
        });
        const auto worded = all([&](std::size_t i) {
            return std::find(numbers.begin(), numbers.end(), i) != numbers.end() && holdsAny(nameOf(i), weightWords) &&
                   !holdsAny(nameOf(i), otherWords);
        });
        if (worded.size() == 1) return setWeight(worded[0], ToldBy::Header), true;
        if (worded.size() > 1) return askForWeight(worded);
        std::vector<std::size_t> united, telling;
        for (const std::size_t i : numbers) {
            if (unitInHeader(nameOf(i)) || columns_[i].unit) united.push_back(i);
            if (columns_[i].says() && !holdsAny(nameOf(i), otherWords)) telling.push_back(i);
        }
        if (united.size() == 1)
            return setWeight(united[0], columns_[united[0]].unit ? ToldBy::Content : ToldBy::Header), true;
        if (telling.size() == 1) return setWeight(telling[0], ToldBy::Content), true;
        if (numbers.size() == 1) return setWeight(numbers[0], ToldBy::Content), true;
        return askForWeight(telling.empty() ? numbers : telling);
    }
    bool askForWeight(const std::vector<std::size_t>& some) {
        if (!some.empty())
            return several(fmt::format("more than one column may hold the weight: {}", shownColumns(some)), "--weight");
        problem("no column holds weights",
                "a column of numbers, one a row; --delimiter or --weight where there is one");
        return false;
    }

    // Of comma and point the one that stands for decimals; where a weight shows both, the later.
    char decimal() const {
        if (options_.decimal) return *options_.decimal;
        std::size_t commas = 0, points = 0, thousands = 0;
        for (std::size_t row = found_.dataFrom; row < rows_.size(); ++row) {
            if (found_.weight >= rows_[row].size()) continue;
            const std::string& cell = rows_[row][found_.weight];
            const auto comma = cell.rfind(','), point = cell.rfind('.');
            if (comma != std::string::npos && point != std::string::npos) return comma > point ? ',' : '.';
            if (comma != std::string::npos) {
                ++commas;
                thousands += cell.size() - comma == 4 && comma > 0;
            }
            points += point != std::string::npos;
        }
        // "52,731" with grams in the header is fifty-two thousand; without, the weight is the same either way.
        const bool grams = found_.unit == MassUnit::Gram || options_.unit == MassUnit::Gram;
        if (commas > 0 && points == 0 && thousands == commas && grams) return '.';
        return commas > points ? ',' : '.';
    }

    const std::vector<int>& numbers_;
    const std::string& file_;
    const ScaleLogOptions& options_;
    std::vector<Cells> rows_;
    Cells header_;
    std::vector<ColumnLook> columns_;
    FoundColumns found_;
    Problems problems_;
    bool several_ = false;
    int score_ = 0;
};

} // namespace

Outcome<FoundColumns> findColumns(const std::vector<std::string>& lines, const std::vector<int>& numbers,
                                  const std::string& file, const ScaleLogOptions& options) {
    std::optional<Outcome<FoundColumns>> best;
    int score = -1;
    for (const char delimiter : {';', '\t', ',', '|'}) {
        if (options.delimiter && *options.delimiter != delimiter) continue;
        LogTable table(lines, numbers, file, delimiter, options);
        auto found = table.find();
        if (table.score() <= score) continue;
        score = table.score();
        best = std::move(found);
    }
    if (best) return *best;
    LogTable table(lines, numbers, file, options.delimiter.value_or(','), options);
    return table.find();
}

} // namespace winterlarder::exchange
