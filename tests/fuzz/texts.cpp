// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/entries/timestamp.h"
#include "calendar/date.h"
#include "calendar/other_date_forms.h"
#include "exchange/calendar_file.h"
#include "fuzz/targets.h"
#include "quantity/text.h"

#include <algorithm>
#include <cmath>
#include <type_traits>

namespace winterlarder::fuzz {

namespace {

// What is shown with nine decimals is read back as far as nine decimals tell it.
std::string shownIn(Temperature value, TemperatureUnit, const NumberStyle& style) { return format(value, style, 9); }
template <class Amount, class Unit> std::string shownIn(Amount value, Unit unit, const NumberStyle& style) {
    return format(value, unit, style, 9);
}

template <class Amount, class Unit>
void tryQuantity(std::string_view text, Unit unit, const NumberStyle& style,
                 Outcome<Amount> (*parse)(std::string_view, Unit, const NumberStyle&)) {
    const auto read = parse(text, unit, style);
    if (!read) return holdRefusal(read.problems());
    const double value = read->value();
    hold(std::isfinite(value), "a quantity that is no number");
    hold(value >= 0 || std::is_same_v<Amount, Temperature>, "a negative amount");
    const std::string shown = shownIn(*read, unit, style);
    const auto again = parse(shown, unit, style);
    hold(again.ok(), "what is shown cannot be read: " + shown);
    hold(std::abs(again->value() - value) <= 1e-8 + 1e-12 * std::abs(value),
         "what is shown is another amount: " + shown);
}

} // namespace

void quantities(std::string_view input) {
    if (input.empty()) return;
    const auto choice = static_cast<unsigned char>(input.front());
    const std::string_view text = input.substr(1);
    const NumberStyle style{.decimalPoint = choice & 1 ? ',' : '.',
                            .system = static_cast<UnitSystem>((choice >> 1) % 3)};
    switch ((choice >> 3) % 4) {
    case 0: return tryQuantity(text, massUnit(style.system), style, parseMass);
    case 1: return tryQuantity(text, volumeUnit(style.system), style, parseVolume);
    case 2: return tryQuantity(text, lengthUnit(style.system), style, parseLength);
    default: return tryQuantity(text, temperatureUnit(style.system), style, parseTemperature);
    }
}

void dates(std::string_view input) {
    if (const auto date = Date::parse(input))
        hold(date->iso() == input, "a date is shown in another form than it was read");
    else hold(dateMeant(input).size() < 500, "a proposal without end");
    if (const auto date = Date::parseAnyYear(input)) hold(date->iso() == input, "a date of any year changes its form");
    if (const auto time = book::Timestamp::parse(input)) hold(time->iso() == input, "a time changes its form");
}

void calendarText(std::string_view input) {
    std::string part[3];
    for (std::size_t at = 0; auto& text : part) {
        const auto end = std::min(input.find('\n', at), input.size());
        text = at <= input.size() ? input.substr(at, end - at) : std::string_view{};
        at = std::min(end + 1, input.size());
    }
    const auto text = exchange::calendarFile(part[0], {{"a@b", *Date::of(2027, 2, 10), part[1], part[2]}},
                                             *book::Timestamp::parse("2026-11-25T09:27:36Z"));
    std::size_t begins = 0, alarms = 0;
    for (std::size_t at = 0; at < text.size();) {
        const auto end = text.find("\r\n", at);
        hold(end != std::string::npos, "a line that does not end in CR LF");
        const std::string_view line(text.data() + at, end - at);
        hold(line.size() <= 75, "a line longer than 75 bytes");
        for (const char c : line) hold(static_cast<unsigned char>(c) >= 32 || c == '\t', "a control character");
        begins += line == "BEGIN:VEVENT";
        alarms += line == "BEGIN:VALARM";
        at = end + 2;
    }
    hold(begins == 1 && alarms == 1, "a text made a part of the calendar of its own");
}

} // namespace winterlarder::fuzz
