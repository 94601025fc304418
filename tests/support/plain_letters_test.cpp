// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/plain_letters.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace winterlarder::plain_letters_test {
namespace {

TEST(PlainLetters, AreSmallAndWithoutAccents) {
    EXPECT_EQ(plainLetters("München"), "munchen");
    EXPECT_EQ(plainLetters("GÖTEBORG"), "goteborg");
    EXPECT_EQ(plainLetters("Łódź"), "lodz");
    EXPECT_EQ(plainLetters("Tromsø"), "tromso");
    EXPECT_EQ(plainLetters("Logroño"), "logrono");
    EXPECT_EQ(plainLetters("Besançon"), "besancon");
    EXPECT_EQ(plainLetters("Großräschen"), "grossraschen");
    EXPECT_EQ(plainLetters("İstanbul, Muğla, Elazığ"), "istanbul mugla elazig");
    EXPECT_EQ(plainLetters("Timișoara Iaşi"), "timisoara iasi") << "comma below and cedilla";
    EXPECT_EQ(plainLetters("Đà Nẵng"), "da nang");
}

TEST(PlainLetters, AccentsOfTheirOwnAreLeftOut) {
    EXPECT_EQ(plainLetters("Mu\xCC\x88nchen"), "munchen") << "u and a combining diaeresis";
}

TEST(PlainLetters, ApostrophesGoAndOtherSignsPartWords) {
    EXPECT_EQ(plainLetters("St. John's"), "st johns");
    EXPECT_EQ(plainLetters("  Val-d’Or  (Québec) "), "val dor quebec");
    EXPECT_EQ(plainLetters(" ,;- "), "");
    EXPECT_THAT(plainWords("Stoke-on-Trent, GB"), testing::ElementsAre("stoke", "on", "trent", "gb"));
    EXPECT_THAT(plainWords(""), testing::IsEmpty());
}

TEST(PlainLetters, OtherScriptsStayAndBrokenBytesGo) {
    EXPECT_EQ(plainLetters("Москва"), "Москва");
    EXPECT_EQ(plainLetters("K\xFFln\xC3"), "kln");
}

TEST(PlainLetters, LettersOfTwoAreSpelledOut) {
    EXPECT_EQ(spelledOut("München"), "muenchen");
    EXPECT_EQ(spelledOut("Århus"), "aarhus");
    EXPECT_EQ(spelledOut("Ærøskøbing"), "aeroeskoebing");
    EXPECT_EQ(spelledOut("Genève"), "geneve");
}

} // namespace
} // namespace winterlarder::plain_letters_test
