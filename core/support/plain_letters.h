// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace winterlarder {

//! A name as it can be typed on any keyboard, to be searched by: Latin letters small and without accents ("ø" is "o", "ł" is "l",
//! "ß" is "ss"), apostrophes left out, all other signs one space between words. Letters of other scripts stay as they are.
//! Bytes that are no UTF-8 are left out. Tested: tests/support/plain_letters_test.cpp.
std::string plainLetters(std::string_view text);

//! The same with the letters that are also written as two spelled so: "muenchen", "aarhus", "tromsoe".
std::string spelledOut(std::string_view text);

//! The words of a text in plain letters.
std::vector<std::string> plainWords(std::string_view text);

} // namespace winterlarder
