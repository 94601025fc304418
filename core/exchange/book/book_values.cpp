// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/book/book_values.h"

#include "support/as_number.h"

#include <cmath>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <limits>

namespace winterlarder::exchange {
namespace {

using book::ColumnType;
using book::Value;

constexpr double largestWhole = 9007199254740992; // 2^53: beyond it a double skips whole numbers

template <class Number> std::optional<Value> numberOf(std::string_view text) {
    auto number = asNumber<Number>(text);
    if (!number) return std::nullopt;
    if constexpr (std::is_same_v<Number, double>) {
        if (!std::isfinite(*number)) return std::nullopt;
        if (*number == 0) number = 0; // no -0
    }
    return Value{*number};
}

std::optional<Value> wholeOf(double number) {
    if (number != std::floor(number) || std::abs(number) > largestWhole) return std::nullopt;
    return Value{static_cast<std::int64_t>(number)};
}

bool isTextual(ColumnType type) {
    return type == ColumnType::Text || type == ColumnType::Choice || type == ColumnType::Date ||
           type == ColumnType::DayOfYear || type == ColumnType::Digits || type == ColumnType::Weekdays;
}

bool mayBeEmpty(const book::Column& column) {
    return (column.type == ColumnType::Text && book::textLength(column).least == 0) ||
           column.type == ColumnType::Weekdays;
}

} // namespace

bool mustBeGiven(const book::Column& column, const book::Limits& limits) {
    return column.required && !mayBeEmpty(column) && limits.of(column).defaultText.empty();
}

Value defaultOf(const book::Column& column, const book::Limits& limits) {
    if (!column.required) return {};
    return valueOfText(column, limits.of(column).defaultText).value_or(Value{});
}

std::optional<Value> valueOfText(const book::Column& column, std::string_view text) {
    if (text.empty()) return column.required && mayBeEmpty(column) ? Value{std::string()} : Value{};
    switch (column.type) {
    case ColumnType::Number: return numberOf<double>(text);
    case ColumnType::Integer:
    case ColumnType::Reference: return numberOf<std::int64_t>(text);
    case ColumnType::Flag:
        if (text == "true") return Value{std::int64_t{1}};
        if (text == "false") return Value{std::int64_t{0}};
        return std::nullopt;
    default: return Value{std::string(text)};
    }
}

std::string textOfValue(const book::Column& column, const Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* number = std::get_if<double>(&value)) return book::shortest(*number);
    const auto* whole = std::get_if<std::int64_t>(&value);
    if (!whole) return {};
    if (column.type == ColumnType::Flag) return *whole ? "true" : "false";
    return std::to_string(*whole);
}

std::optional<Value> valueOfJson(const book::Column& column, const JsonValue& value) {
    using Form = JsonValue::Kind;
    if (value.kind == Form::Null) return Value{};
    if (isTextual(column.type)) return value.kind == Form::Text ? std::optional(Value{value.text}) : std::nullopt;
    if (column.type == ColumnType::Flag)
        return value.kind == Form::Flag ? std::optional(Value{std::int64_t{value.flag}}) : std::nullopt;
    if (value.kind != Form::Number) return std::nullopt;
    if (column.type == ColumnType::Number) return Value{value.number == 0 ? 0.0 : value.number};
    return wholeOf(value.number);
}

Json jsonOfValue(const book::Column& column, const Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* number = std::get_if<double>(&value)) return *number;
    const auto* whole = std::get_if<std::int64_t>(&value);
    if (!whole) return nullptr;
    if (column.type == ColumnType::Flag) return *whole == 1;
    return jsonOfWhole(*whole);
}

Json jsonOfWhole(std::int64_t number) {
    return number < 0 ? Json(static_cast<double>(number)) : Json(static_cast<std::uint64_t>(number));
}

std::string formOf(const book::Column& column) {
    switch (column.type) {
    case ColumnType::Text: return "text";
    case ColumnType::Number: return "a number with a decimal point";
    case ColumnType::Integer: return "a whole number";
    case ColumnType::Flag: return "true or false";
    case ColumnType::Choice: return fmt::format("one of {}", fmt::join(column.choices, ", "));
    case ColumnType::Date: return dateForm;
    case ColumnType::DayOfYear: return "month and day such as 05-19";
    case ColumnType::Digits: return "a whole number in quotes";
    case ColumnType::Weekdays: return "weekdays such as 1,4,6";
    case ColumnType::Reference: return "the number of an entry";
    }
    return {};
}

} // namespace winterlarder::exchange
