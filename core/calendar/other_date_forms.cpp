// SPDX-License-Identifier: GPL-3.0-or-later
#include "calendar/other_date_forms.h"

#include "calendar/date.h"
#include "calendar/months.h"
#include "support/letters.h"

#include <algorithm>
#include <fmt/format.h>
#include <optional>
#include <vector>

namespace winterlarder {

namespace {

constexpr std::size_t yearDigits = 4, wholeDate = 8;

// Runs of digits and of letters; nothing where any other sign than those between parts of a date stands there.
std::optional<std::vector<std::string>> runsOf(const std::string& text) {
    std::vector<std::string> runs;
    char before = ' ';
    for (const char c : text) {
        if (!isDigit(c) && !isLetter(c) && std::string_view(" ,./-").find(c) == std::string_view::npos) return {};
        const bool part = isDigit(c) || isLetter(c);
        if (part && (isDigit(c) != isDigit(before) || isLetter(c) != isLetter(before))) runs.emplace_back();
        if (part) runs.back() += c;
        before = c;
    }
    return runs;
}

bool saysNothing(const std::string& word) {
    return word == "st" || word == "nd" || word == "rd" || word == "th" || word == "of" || word == "the";
}

bool isYear(const std::string& run) { return isDigit(run.front()) && run.size() == yearDigits; }

int number(const std::string& run) { return run.size() <= yearDigits && isDigit(run.front()) ? std::stoi(run) : 0; }

using Days = std::vector<Date>;

void addDay(Days& days, int year, int month, int day) {
    const auto date = Date::of(year, month, day);
    if (date && date->inKnownYears() && std::find(days.begin(), days.end(), *date) == days.end()) days.push_back(*date);
}

// "3 September 2026", "September 3, 2026", "2026 September 3".
Days withNamedMonth(std::vector<std::string> runs, std::size_t at) {
    const int month = monthNamed(runs[at]);
    runs.erase(runs.begin() + static_cast<std::ptrdiff_t>(at));
    Days days;
    if (isYear(runs[1])) addDay(days, number(runs[1]), month, number(runs[0]));
    else if (isYear(runs[0])) addDay(days, number(runs[0]), month, number(runs[1]));
    return days;
}

// With dots the day comes before the month; else it may be either.
Days inNumbers(const std::vector<std::string>& runs, bool dots) {
    Days days;
    if (isYear(runs[0])) addDay(days, number(runs[0]), number(runs[1]), number(runs[2]));
    if (!isYear(runs[2])) return days;
    addDay(days, number(runs[2]), number(runs[1]), number(runs[0]));
    if (!dots || days.empty()) addDay(days, number(runs[2]), number(runs[0]), number(runs[1]));
    return days;
}

Days daysIn(const std::string& text) {
    auto runs = runsOf(text);
    if (!runs) return {};
    runs->erase(std::remove_if(runs->begin(), runs->end(), saysNothing), runs->end());
    if (runs->size() == 1 && runs->front().size() == wholeDate && isDigit(text.front()))
        return inNumbers({text.substr(0, 4), text.substr(4, 2), text.substr(6)}, false);
    if (runs->size() != 3) return {};
    for (std::size_t at = 0; at < runs->size(); ++at)
        if (isLetter((*runs)[at].front())) return withNamedMonth(*runs, at);
    return inNumbers(*runs, text.find('.') != std::string::npos);
}

std::string inWords(const Date& day) {
    return fmt::format("{} for {} {}", day.iso(), day.day(), monthNames[static_cast<std::size_t>(day.month() - 1)]);
}

} // namespace

std::string dateMeant(std::string_view written) {
    const Days days = daysIn(lowered(written));
    if (days.empty()) return dateForm;
    if (days.size() == 1) return "write " + days.front().iso();
    return fmt::format("write {}, or {}", inWords(days.front()), inWords(days.back()));
}

} // namespace winterlarder
