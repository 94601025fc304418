// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

//! What a text may be, and how a text from elsewhere is shown. Tested: tests/book/plain_text_test.cpp.
namespace winterlarder::book {

//! True for well-formed UTF-8 without zero bytes.
bool isText(std::string_view text);
//! Number of characters (code points) of well-formed UTF-8.
std::size_t characters(std::string_view text);

//! What keeps a well-formed text from being the name of a yard or colony: control characters, line breaks, marks that turn the
//! direction of reading, nothing but blanks. Nothing = it may be one (an empty text is for the limits to refuse).
std::optional<std::string> faultOfName(std::string_view text);

//! The text on one line and harmless on a terminal: control characters, line breaks and marks that turn the direction of reading
//! as "\u{1b}", bytes that are no UTF-8 as "\x{ff}". Everything else stays; text without them is given back unchanged.
std::string visible(std::string_view text);

} // namespace winterlarder::book
