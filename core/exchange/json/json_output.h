// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace winterlarder::exchange {

//! A JSON value to be written: built as a tree, members in the order they were added.
//! Numbers are written in the shortest form that reads back the same; there is no NaN (ContractViolation).
//! Tested: tests/exchange/json_output_test.cpp.
class Json {
public:
    using List = std::vector<Json>;
    using Object = std::vector<std::pair<std::string, Json>>;

    Json() = default; //!< null
    Json(std::nullptr_t) {}
    Json(bool flag) : value_(flag) {}
    Json(int number) : value_(static_cast<double>(number)) {}
    Json(std::uint64_t number) : value_(number) {}
    Json(double number);
    Json(const char* text) : value_(std::string(text)) {}
    Json(std::string text) : value_(std::move(text)) {}
    Json(std::string_view text) : value_(std::string(text)) {}
    Json(List items) : value_(std::move(items)) {}
    Json(Object members) : value_(std::move(members)) {}
    template <class T> Json(const std::optional<T>& value) {
        if (value) *this = Json(*value);
    }

    static Json object() { return Json(Object{}); }
    static Json list() { return Json(List{}); }
    //! Adds a member to an object, gives the object back.
    Json& add(std::string_view name, Json value);
    //! Gives a member that is there another value (ContractViolation where it is not); the object back.
    Json& replace(std::string_view name, Json value);
    //! Adds an item to a list.
    void push(Json value);
    bool empty() const;                                       //!< a list or object with nothing in it
    bool has(std::string_view name, const Json& value) const; //!< an object with that member, of that value
    bool operator==(const Json&) const = default;

    //! On one line.
    std::string compact() const;
    //! Indented by two, lists of plain values on one line, a line feed at the end.
    std::string pretty() const;

private:
    bool plain() const; //!< neither list nor object
    template <class Writer> void write(Writer& writer) const;
    template <class Writer> void writeList(Writer& writer, const List& items) const;
    std::variant<std::monostate, bool, double, std::uint64_t, std::string, List, Object> value_;
};

//! The shortest decimal form that reads back as the same double; no exponent between 1e-5 and 1e15.
std::string shortestNumber(double number);

} // namespace winterlarder::exchange
