// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/text.h"

#include "support/letters.h"
#include "support/require.h"

#include <charconv>
#include <cmath>
#include <optional>
#include <vector>

namespace winterlarder {

namespace {

bool isMark(char c) { return c == '.' || c == ','; }

// Lower case, no-break spaces as spaces, a true minus sign as a hyphen.
std::string plain(std::string_view text) {
    static constexpr std::pair<std::string_view, char> replaced[] = {
        {"\u00a0", ' '}, {"\u202f", ' '}, {"\u2009", ' '}, {"\u2212", '-'}};
    std::string result;
    for (std::size_t i = 0; i < text.size();) {
        bool found = false;
        for (const auto& [from, to] : replaced)
            if (text.substr(i, from.size()) == from) {
                result += to;
                i += from.size();
                found = true;
                break;
            }
        if (found) continue;
        const char c = text[i++];
        if (c == '\t') result += ' ';
        else result += lower(c);
    }
    return result;
}

// A number and the word after it.
struct Part {
    double number = 0;
    std::string unit;
};

class Reader {
public:
    Reader(std::string_view text, char decimalPoint) : text_(plain(text)), decimalPoint_(decimalPoint) {}

    Outcome<std::vector<Part>> read() {
        skipSpaces();
        if (done()) return inputProblem("nothing is written", "write a number and a unit");
        std::vector<Part> parts;
        while (!done()) {
            const Outcome<Part> part = readPart();
            if (!part) return part.problems();
            parts.push_back(*part);
        }
        return parts;
    }

private:
    bool done() const { return at_ == text_.size(); }
    char here() const { return done() ? '\0' : text_[at_]; }
    void skipSpaces() {
        while (here() == ' ') ++at_;
    }

    Outcome<Part> readPart() {
        const bool negative = here() == '-';
        if (negative || here() == '+') ++at_;
        skipSpaces();
        const Outcome<double> number = readMixedNumber();
        if (!number) return number.problems();
        skipSpaces();
        return Part{negative ? -*number : *number, readUnit()};
    }

    // Everything up to the next number or the end, single spaces inside; points and commas after letters drop out.
    std::string readUnit() {
        std::string unit;
        for (; !done() && !startsNumber(); ++at_)
            if (!isMark(here()) && (here() != ' ' || (!unit.empty() && unit.back() != ' '))) unit += here();
        while (!unit.empty() && unit.back() == ' ') unit.pop_back();
        return unit;
    }

    bool startsNumber() const {
        const char next = at_ + 1 < text_.size() ? text_[at_ + 1] : '\0';
        return isDigit(here()) || here() == '-' || here() == '+' || (isMark(here()) && isDigit(next));
    }

    // "9", "9.5", "1/8" or "9 1/8".
    Outcome<double> readMixedNumber() {
        const Outcome<double> first = readNumber();
        if (!first) return first;
        if (here() == '/') return readFraction(*first);
        const std::size_t before = at_;
        skipSpaces();
        if (isDigit(here())) {
            const Outcome<double> numerator = readNumber();
            if (numerator && here() == '/') {
                const Outcome<double> fraction = readFraction(*numerator);
                if (!fraction) return fraction;
                return *first + *fraction;
            }
            return inputProblem("two numbers stand side by side", "write one number, without spaces in it");
        }
        at_ = before;
        return first;
    }

    Outcome<double> readFraction(double numerator) {
        ++at_;
        const Outcome<double> denominator = readNumber();
        if (!denominator) return denominator;
        if (*denominator <= 0) return inputProblem("a fraction has nothing below its line", "write it like 1/8");
        return numerator / *denominator;
    }

    Outcome<double> readNumber() {
        const std::size_t start = at_;
        while (isDigit(here()) || isMark(here())) ++at_;
        std::string digits = text_.substr(start, at_ - start);
        const std::size_t mark = digits.find_first_of(".,");
        if (digits.find_first_of("0123456789") == std::string::npos) {
            at_ = start;
            return inputProblem(fmt::format("\"{}\" does not begin with a number", text_.substr(start)),
                                "write a number and a unit, like 1.5 kg");
        }
        if (mark != std::string::npos && digits.find_first_of(".,", mark + 1) != std::string::npos)
            return inputProblem(fmt::format("\"{}\" has more than one decimal point", digits),
                                "write the number without marks between thousands");
        if (mark != std::string::npos && couldBeThousands(digits, mark)) return ambiguous(digits, mark);
        if (mark != std::string::npos) digits[mark] = '.';
        return converted(digits);
    }

    bool couldBeThousands(const std::string& digits, std::size_t mark) const {
        return digits[mark] != decimalPoint_ && digits.size() - mark == 4 && mark >= 1 && mark <= 3 &&
               digits.front() != '0';
    }

    Problem ambiguous(const std::string& digits, std::size_t mark) const {
        const std::string whole = digits.substr(0, mark) + digits.substr(mark + 1);
        const std::string decimal = digits.substr(0, mark) + decimalPoint_ + digits.substr(mark + 1);
        return inputProblem(fmt::format("\"{}\" can be read in two ways", digits),
                            fmt::format("write {} or {}", whole, decimal));
    }

    static Outcome<double> converted(const std::string& digits) {
        double value = 0;
        const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
        if (error != std::errc() || !std::isfinite(value))
            return inputProblem(fmt::format("\"{}\" is no number that can be held", digits), "write a smaller number");
        return value;
    }

    std::string text_;
    char decimalPoint_;
    std::size_t at_ = 0;
};

template <class Unit> struct Word {
    std::string_view text;
    Unit unit;
};

constexpr Word<MassUnit> massWords[] = {
    {"kg", MassUnit::Kilogram},   {"kilogram", MassUnit::Kilogram}, {"kilograms", MassUnit::Kilogram},
    {"kilo", MassUnit::Kilogram}, {"kilos", MassUnit::Kilogram},    {"g", MassUnit::Gram},
    {"gram", MassUnit::Gram},     {"grams", MassUnit::Gram},        {"lb", MassUnit::Pound},
    {"lbs", MassUnit::Pound},     {"pound", MassUnit::Pound},       {"pounds", MassUnit::Pound},
    {"oz", MassUnit::Ounce},      {"ounce", MassUnit::Ounce},       {"ounces", MassUnit::Ounce}};
constexpr Word<LengthUnit> lengthWords[] = {
    {"mm", LengthUnit::Millimetre}, {"cm", LengthUnit::Centimetre}, {"m", LengthUnit::Metre},
    {"in", LengthUnit::Inch},       {"inch", LengthUnit::Inch},     {"inches", LengthUnit::Inch},
    {"\"", LengthUnit::Inch},       {"″", LengthUnit::Inch},        {"ft", LengthUnit::Foot},
    {"foot", LengthUnit::Foot},     {"feet", LengthUnit::Foot},     {"'", LengthUnit::Foot},
    {"′", LengthUnit::Foot}};
constexpr Word<TemperatureUnit> temperatureWords[] = {
    {"c", TemperatureUnit::Celsius},       {"°c", TemperatureUnit::Celsius},
    {"° c", TemperatureUnit::Celsius},     {"ºc", TemperatureUnit::Celsius},
    {"degc", TemperatureUnit::Celsius},    {"deg c", TemperatureUnit::Celsius},
    {"℃", TemperatureUnit::Celsius},       {"celsius", TemperatureUnit::Celsius},
    {"f", TemperatureUnit::Fahrenheit},    {"°f", TemperatureUnit::Fahrenheit},
    {"° f", TemperatureUnit::Fahrenheit},  {"ºf", TemperatureUnit::Fahrenheit},
    {"degf", TemperatureUnit::Fahrenheit}, {"deg f", TemperatureUnit::Fahrenheit},
    {"℉", TemperatureUnit::Fahrenheit},    {"fahrenheit", TemperatureUnit::Fahrenheit}};
constexpr Word<VolumeUnit> metricVolumeWords[] = {{"l", VolumeUnit::Litre},      {"litre", VolumeUnit::Litre},
                                                  {"litres", VolumeUnit::Litre}, {"liter", VolumeUnit::Litre},
                                                  {"liters", VolumeUnit::Litre}, {"ml", VolumeUnit::Millilitre}};
// The three measures two countries share by name.
constexpr std::string_view gallonWords[] = {"gal", "gallon", "gallons"};
constexpr std::string_view quartWords[] = {"qt", "quart", "quarts"};
constexpr std::string_view pintWords[] = {"pt", "pint", "pints"};
constexpr std::string_view unitedStatesWords[] = {"us"};
constexpr std::string_view imperialWords[] = {"imperial", "imp", "uk"};

template <class Words> bool holds(const Words& words, std::string_view text) {
    for (std::string_view word : words)
        if (word == text) return true;
    return false;
}

template <class Prefixes> bool takePrefix(const Prefixes& prefixes, std::string_view& text) {
    for (std::string_view prefix : prefixes)
        if (text.starts_with(prefix)) {
            text.remove_prefix(prefix.size());
            while (text.starts_with(' ')) text.remove_prefix(1);
            return true;
        }
    return false;
}

template <class Unit, std::size_t count>
std::optional<Unit> findWord(const Word<Unit> (&words)[count], std::string_view text) {
    for (const auto& word : words)
        if (word.text == text) return word.unit;
    return std::nullopt;
}

template <class Unit, std::size_t count>
Outcome<Unit> unitNamed(const Word<Unit> (&words)[count], std::string_view text, const char* remedy) {
    if (const auto unit = findWord(words, text)) return *unit;
    return inputProblem(fmt::format("\"{}\" is no unit known here", text), remedy);
}

Outcome<VolumeUnit> volumeUnitNamed(std::string_view text, UnitSystem system) {
    static constexpr const char* remedy = "use L, mL, US gal, US qt, US pt, imp gal, imp qt or imp pt";
    if (const auto unit = findWord(metricVolumeWords, text)) return *unit;
    std::string_view measure = text;
    bool unitedStates = takePrefix(unitedStatesWords, measure);
    const bool imperial = !unitedStates && takePrefix(imperialWords, measure);
    const bool gallon = holds(gallonWords, measure);
    const bool quart = holds(quartWords, measure);
    if (!gallon && !quart && !holds(pintWords, measure))
        return inputProblem(fmt::format("\"{}\" is no unit known here", text), remedy);
    if (!unitedStates && !imperial) {
        if (system == UnitSystem::Metric)
            return inputProblem(fmt::format("\"{}\" is not the same in the United States and in Britain", text),
                                fmt::format("write US {} or imp {}", text, text));
        unitedStates = system == UnitSystem::UnitedStates;
    }
    if (unitedStates) return gallon ? VolumeUnit::UsGallon : quart ? VolumeUnit::UsQuart : VolumeUnit::UsPint;
    return gallon ? VolumeUnit::ImperialGallon : quart ? VolumeUnit::ImperialQuart : VolumeUnit::ImperialPint;
}

// An amount adds up from parts in ever smaller units: 3 lb 4 oz.
template <class Unit, class NameUnit, class SizeOf>
Outcome<double> sumOfParts(std::string_view text, Unit bareNumber, const NumberStyle& style, NameUnit nameUnit,
                           SizeOf sizeOf) {
    const auto parts = Reader(text, style.decimalPoint).read();
    if (!parts) return parts.problems();
    double sum = 0;
    double previousSize = INFINITY;
    for (const Part& part : *parts) {
        if (part.unit.empty() && parts->size() > 1)
            return inputProblem("a number has no unit", "give each number its unit, like 3 lb 4 oz");
        const Outcome<Unit> unit = part.unit.empty() ? Outcome<Unit>(bareNumber) : nameUnit(part.unit);
        if (!unit) return unit.problems();
        if (std::signbit(part.number)) return inputProblem("the amount is negative", "it is 0 or more");
        if (sizeOf(1.0, *unit) >= previousSize)
            return inputProblem("the parts do not go from the larger unit to the smaller", "write it like 3 lb 4 oz");
        previousSize = sizeOf(1.0, *unit);
        sum += sizeOf(part.number, *unit);
    }
    if (!std::isfinite(sum)) return inputProblem("the amount is too large", "write a smaller number");
    return sum;
}

} // namespace

Outcome<Mass> parseMass(std::string_view text, MassUnit bareNumber, const NumberStyle& style) {
    const auto sum = sumOfParts(
        text, bareNumber, style,
        [](const std::string& name) { return unitNamed(massWords, name, "use kg, g, lb or oz"); },
        [](double value, MassUnit unit) { return massOf(value, unit).value(); });
    if (!sum) return sum.problems();
    return kilograms(*sum);
}

Outcome<Volume> parseVolume(std::string_view text, VolumeUnit bareNumber, const NumberStyle& style) {
    const auto sum = sumOfParts(
        text, bareNumber, style, [&](const std::string& name) { return volumeUnitNamed(name, style.system); },
        [](double value, VolumeUnit unit) { return volumeOf(value, unit).value(); });
    if (!sum) return sum.problems();
    return litres(*sum);
}

Outcome<Length> parseLength(std::string_view text, LengthUnit bareNumber, const NumberStyle& style) {
    const auto sum = sumOfParts(
        text, bareNumber, style,
        [](const std::string& name) { return unitNamed(lengthWords, name, "use mm, cm, m, in or ft"); },
        [](double value, LengthUnit unit) { return lengthOf(value, unit).value(); });
    if (!sum) return sum.problems();
    return millimetres(*sum);
}

Outcome<Temperature> parseTemperature(std::string_view text, TemperatureUnit bareNumber, const NumberStyle& style) {
    static constexpr double absoluteZeroC = -273.15;
    const auto parts = Reader(text, style.decimalPoint).read();
    if (!parts) return parts.problems();
    if (parts->size() > 1) return inputProblem("there is more than one number", "write one temperature, like 7 °C");
    const Part& part = parts->front();
    const auto unit = part.unit.empty() ? Outcome<TemperatureUnit>(bareNumber)
                                        : unitNamed(temperatureWords, part.unit, "use °C or °F");
    if (!unit) return unit.problems();
    const Temperature temperature = temperatureOf(part.number, *unit);
    if (!std::isfinite(temperature.value()))
        return inputProblem("the temperature is too large", "write a smaller number");
    if (temperature.value() < absoluteZeroC)
        return inputProblem("the temperature lies under absolute zero", "it is above -273.15 °C");
    return temperature;
}

} // namespace winterlarder
