// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/words.h"
#include "book/form/limits.h"
#include "book/form/row.h"

#include <charconv>
#include <cmath>
#include <limits>
#include <type_traits>

//! How each type of member is kept in a column: Codec<T>::type, required, encode(T) -> Value, decode(Value) -> T or nothing
//! where the value is not one that encode gives. Tested: tests/book/tables_test.cpp, through every entry.
namespace winterlarder::book {

template <class T> struct Codec;

template <> struct Codec<std::string> {
    static constexpr ColumnType type = ColumnType::Text;
    static Value encode(const std::string& text) { return text; }
    static std::optional<std::string> decode(const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        if (!text || !isText(*text)) return std::nullopt;
        return *text;
    }
};

template <> struct Codec<double> {
    static constexpr ColumnType type = ColumnType::Number;
    static Value encode(double number) { return number == 0 ? 0.0 : number; } // no -0
    static std::optional<double> decode(const Value& value) {
        const auto* number = std::get_if<double>(&value);
        if (number && std::isfinite(*number)) return *number;
        return std::nullopt;
    }
};

//! Quantities, in the unit of their type.
template <class T>
requires units::traits::is_unit_t<T>::value struct Codec<T> {
    static constexpr ColumnType type = ColumnType::Number;
    static Value encode(const T& quantity) { return Codec<double>::encode(quantity.value()); }
    static std::optional<T> decode(const Value& value) {
        const auto number = Codec<double>::decode(value);
        if (!number) return std::nullopt;
        return T(*number);
    }
};

template <> struct Codec<int> {
    static constexpr ColumnType type = ColumnType::Integer;
    static Value encode(int number) { return std::int64_t{number}; }
    static std::optional<int> decode(const Value& value) {
        const auto* number = std::get_if<std::int64_t>(&value);
        if (!number || *number < std::numeric_limits<int>::min() || *number > std::numeric_limits<int>::max())
            return std::nullopt;
        return static_cast<int>(*number);
    }
};

template <> struct Codec<std::uint64_t> {
    static constexpr ColumnType type = ColumnType::Digits;
    static Value encode(std::uint64_t number) { return std::to_string(number); }
    static std::optional<std::uint64_t> decode(const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        if (!text || text->empty() || (text->size() > 1 && text->front() == '0')) return std::nullopt;
        std::uint64_t number = 0;
        const auto [end, error] = std::from_chars(text->data(), text->data() + text->size(), number);
        if (error != std::errc{} || end != text->data() + text->size()) return std::nullopt;
        return number;
    }
};

template <> struct Codec<bool> {
    static constexpr ColumnType type = ColumnType::Flag;
    static Value encode(bool flag) { return std::int64_t{flag}; }
    static std::optional<bool> decode(const Value& value) {
        const auto* number = std::get_if<std::int64_t>(&value);
        if (!number || *number < 0 || *number > 1) return std::nullopt;
        return *number == 1;
    }
};

template <> struct Codec<Date> {
    static constexpr ColumnType type = ColumnType::Date;
    static Value encode(Date date) { return date.iso(); }
    static std::optional<Date> decode(const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        return text ? Date::parse(*text) : std::nullopt;
    }
};

template <> struct Codec<DayOfYear> {
    static constexpr ColumnType type = ColumnType::DayOfYear;
    static Value encode(DayOfYear day) { return day.text(); }
    static std::optional<DayOfYear> decode(const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        return text ? DayOfYear::parse(*text) : std::nullopt;
    }
};

template <class Choice>
requires std::is_enum_v<Choice>
struct Codec<Choice> {
    static constexpr ColumnType type = ColumnType::Choice;
    static Value encode(Choice choice) { return wordOf(choice); }
    static std::optional<Choice> decode(const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        return text ? choiceOf<Choice>(*text) : std::nullopt;
    }
};

template <class Entry> struct Codec<Id<Entry>> {
    static constexpr ColumnType type = ColumnType::Reference;
    static Value encode(Id<Entry> id) { return id.number; }
    static std::optional<Id<Entry>> decode(const Value& value) {
        if (const auto* number = std::get_if<std::int64_t>(&value)) return Id<Entry>{*number};
        return std::nullopt;
    }
};

//! Weekdays of visits.
template <> struct Codec<std::vector<int>> {
    static constexpr ColumnType type = ColumnType::Weekdays;
    static Value encode(const std::vector<int>& days) {
        std::string text;
        for (const int day : days) {
            if (!text.empty()) text += ',';
            text += std::to_string(day);
        }
        return text;
    }
    static std::optional<std::vector<int>> decode(const Value& value) {
        const auto* text = std::get_if<std::string>(&value);
        if (!text || (!text->empty() && text->size() % 2 == 0)) return std::nullopt;
        std::vector<int> days;
        for (std::size_t at = 0; at < text->size(); ++at) {
            const char sign = (*text)[at];
            if (at % 2 == 1 ? sign != ',' : sign < '1' || sign > '7') return std::nullopt;
            if (at % 2 == 0) days.push_back(sign - '0');
        }
        return days;
    }
};

template <class T> struct IsOptional : std::false_type {};
template <class T> struct IsOptional<std::optional<T>> : std::true_type {};
template <class T> struct WithoutOptional { using type = T; };
template <class T> struct WithoutOptional<std::optional<T>> { using type = T; };

} // namespace winterlarder::book
