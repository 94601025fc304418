// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/entries/plain_text.h"

#include <gmock/gmock.h>

namespace winterlarder::book::plain_text_test {
namespace {

TEST(PlainText, NamesOfAnyScriptAreNames) {
    for (const char* name : {"Row 2 east", "O'Neill; --", "\xD7\x9B\xD7\x95\xD7\xA8\xD7\xAA", "\xF0\x9F\x90\x9D", " a ",
                             "#3", "=1", "\xE2\x80\x8F\xD7\x90"})
        EXPECT_EQ(faultOfName(name), std::nullopt) << name;
}

TEST(PlainText, WhatCannotBeShownOnALineIsNoName) {
    EXPECT_EQ(faultOfName("a\nb"), "holds a line break");
    EXPECT_EQ(faultOfName("a\r"), "holds a line break");
    EXPECT_EQ(faultOfName("a\xC2\x85"), "holds a line break");
    EXPECT_EQ(faultOfName("a\xE2\x80\xA8"), "holds a line break");
    EXPECT_EQ(faultOfName("\x1b[31mred"), "holds a control character (\\u{1b})");
    EXPECT_EQ(faultOfName("a\tb"), "holds a control character (\\u{9})");
    EXPECT_EQ(faultOfName("a\x7f"), "holds a control character (\\u{7f})");
    EXPECT_EQ(faultOfName("a\xC2\x9B"), "holds a control character (\\u{9b})");
    EXPECT_EQ(faultOfName("\xE2\x80\xAEgnitset"), "holds a mark that turns the direction of reading (\\u{202e})");
    EXPECT_EQ(faultOfName("a\xE2\x81\xA7"), "holds a mark that turns the direction of reading (\\u{2067})");
    for (const char* blank : {" ", "\xC2\xA0", "\xE3\x80\x80 ", "\xE2\x80\x8B", "\xEF\xBB\xBF"})
        EXPECT_EQ(faultOfName(blank), "is only blanks");
}

TEST(PlainText, ShownItIsOnOneLineAndSteersNothing) {
    EXPECT_EQ(visible("Row 2 \xF0\x9F\x90\x9D \xC3\xA9 \\ 'q'"), "Row 2 \xF0\x9F\x90\x9D \xC3\xA9 \\ 'q'");
    EXPECT_EQ(visible("a\x1b[2J\x07\nb"), "a\\u{1b}[2J\\u{7}\\u{a}b");
    EXPECT_EQ(visible("a\xC2\x9B"
                      "b\xE2\x80\xAE"
                      "c"),
              "a\\u{9b}b\\u{202e}c");
    EXPECT_EQ(visible("\xFF\xC3"), "\\x{ff}\\x{c3}") << "a byte alone is no text";
    EXPECT_EQ(visible(std::string_view("a\0b", 3)), "a\\u{0}b");
}

} // namespace
} // namespace winterlarder::book::plain_text_test
