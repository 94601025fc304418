// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/json/boxed_list.h"
#include "support/input_limits.h"
#include "support/outcome.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder::exchange {

//! Where a value or key begins; both count from 1, columns in bytes.
struct Position {
    int line = 0;
    int column = 0;
    auto operator<=>(const Position&) const = default;
};

struct JsonMember;

//! A JSON value that knows where it stood, so that every later fault can be shown at its place.
struct JsonValue {
    enum class Kind : std::uint8_t { Null, Flag, Number, Text, List, Object };
    Kind kind = Kind::Null;
    bool flag = false;
    Position position;
    double number = 0;
    std::string text;
    BoxedList<JsonValue> items;
    BoxedList<JsonMember> members; //!< in the order written, doubles left out
};
struct JsonMember {
    std::string name;
    Position position;
    JsonValue value;
};
std::string_view name(JsonValue::Kind kind); //!< "an object", "a list", "a number", ... for messages

struct JsonReading {
    std::optional<JsonValue> value; //!< nothing where the text could not be read to its end
    Problems problems;              //!< may be there beside a value: doubled keys, numbers too large
};

//! Reads one JSON text (RFC 8259, UTF-8 checked, a byte-order mark allowed). Lines are counted from `firstLine`. Faults
//! with places: broken syntax, text after the end, bytes that are not UTF-8, nesting beyond limits::jsonNesting, more values than limits::jsonValues, a key given
//! twice (both places), a number beyond the range of a double. Tested: tests/exchange/json_tree_test.cpp.
JsonReading readJson(std::string_view text, const std::string& file, int firstLine = 1);

//! The text in double quotes, control characters as "?", at most 60 bytes: safe to repeat in a message.
std::string inQuotes(std::string_view text);

} // namespace winterlarder::exchange
