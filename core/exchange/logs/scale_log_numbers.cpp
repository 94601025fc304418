// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/logs/scale_log_columns.h"

#include "support/letters.h"

#include <array>
#include <charconv>
#include <cmath>

namespace winterlarder::exchange {

namespace {

std::optional<MassUnit> unitOfWord(std::string_view word) {
    for (const char* name : {"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramm"})
        if (word == name) return MassUnit::Kilogram;
    for (const char* name : {"g", "gr", "gram", "grams", "gramm"})
        if (word == name) return MassUnit::Gram;
    for (const char* name : {"lb", "lbs", "pound", "pounds"})
        if (word == name) return MassUnit::Pound;
    return std::nullopt;
}

// Number and unit of a cell apart.
std::pair<std::string_view, std::string_view> apart(std::string_view cell) {
    std::size_t end = cell.size();
    while (end > 0 && isLetter(cell[end - 1])) --end;
    std::string_view number = cell.substr(0, end);
    while (!number.empty() && number.back() == ' ') number.remove_suffix(1);
    return {number, cell.substr(end)};
}

std::optional<double> plainNumber(const char* begin, const char* end) {
    double value = 0;
    const auto [stopped, error] = std::from_chars(begin, end, value);
    if (error != std::errc() || stopped != end || !std::isfinite(value)) return std::nullopt;
    return value;
}

// Takes thousands signs out and makes the decimal sign a point; false where a sign stands wrong.
bool withoutThousands(std::string_view number, char decimal, std::array<char, 48>& text, std::size_t& length) {
    length = 0;
    int group = -1; // digits since the last thousands sign
    bool fraction = false;
    for (char c : number) {
        if (isDigit(c)) {
            if (group >= 0) ++group;
        } else if (c == decimal && !fraction) {
            if (group >= 0 && group != 3) return false;
            fraction = true;
            group = -1;
            c = '.';
        } else if ((c == ',' || c == '.' || c == ' ' || c == '\'') && !fraction && length > 0) {
            if (group >= 0 && group != 3) return false;
            group = 0;
            continue;
        } else {
            return false;
        }
        text[length++] = c;
    }
    return group < 0 || group == 3;
}

} // namespace

std::optional<double> weightIn(std::string_view cell, char decimal) {
    if (!cell.empty() && isLetter(cell.back())) {
        const auto [number, unit] = apart(cell);
        if (!unitOfWord(lowered(unit))) return std::nullopt;
        cell = number;
    }
    if (cell.empty() || cell.size() > 40) return std::nullopt;
    if (cell.front() == '+') cell.remove_prefix(1);
    const bool below = !cell.empty() && cell.front() == '-';
    if (below) cell.remove_prefix(1);
    if (cell.empty() || !(isDigit(cell.front()) || cell.front() == decimal)) return std::nullopt;
    std::optional<double> value;
    const bool plain = decimal == '.' && cell.find_first_of(", '") == std::string_view::npos;
    if (plain) value = plainNumber(cell.data(), cell.data() + cell.size());
    if (!value) {
        std::array<char, 48> text{};
        std::size_t length = 0;
        if (withoutThousands(cell, decimal, text, length)) value = plainNumber(text.data(), text.data() + length);
    }
    return value && below ? -*value : value;
}

std::optional<MassUnit> unitBehind(std::string_view cell) {
    const auto [number, unit] = apart(cell);
    if (number.empty() || !isDigit(number.back())) return std::nullopt;
    return unitOfWord(lowered(unit));
}

std::optional<MassUnit> unitInHeader(std::string_view header) {
    const std::string small = lowered(header);
    std::optional<MassUnit> found;
    for (std::size_t at = 0; at < small.size();) {
        std::size_t end = at;
        while (end < small.size() && (isLetter(small[end]) || static_cast<unsigned char>(small[end]) >= 0x80)) ++end;
        const std::string_view word = std::string_view(small).substr(at, end - at);
        if (auto unit = unitOfWord(word)) found = unit;
        // "weightKg", "weightlbs"
        if (!found && word.size() > 4 && word.starts_with("weight")) found = unitOfWord(word.substr(6));
        at = end + 1;
    }
    return found;
}

bool isMissing(std::string_view cell) {
    if (cell.empty()) return true;
    if (cell.size() > 5) return false;
    const std::string small = lowered(cell);
    for (const char* word : {"na", "n/a", "nan", "null", "none", "-", "--", "nil", "\\n"})
        if (small == word) return true;
    return false;
}

} // namespace winterlarder::exchange
