// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/draws.h"

#include "winter/question.h"

#include <cmath>
#include <cstdint>
#include <gtest/gtest.h>
#include <set>

namespace winterlarder::winter::draws_test {

namespace {

double fromWords(std::uint32_t low, std::uint32_t high) {
    const std::uint64_t bits = (static_cast<std::uint64_t>(high) << 32) | low;
    return (static_cast<double>(bits >> 11) + 0.5) * 0x1.0p-53;
}

} // namespace

// Known answers of Philox 4x32-10 published with its paper (Salmon, Moraes, Dror, Shaw 2011, SC11):
// counter 0, key 0; counter and key all ones; digits of pi.
TEST(Draws, PublishedVectorOfZeros) {
    const auto pair = uniformPair(0, Luck::Weather, 0, 0, 0);
    EXPECT_EQ(pair[0], fromWords(0x6627e8d5u, 0xe169c58du));
    EXPECT_EQ(pair[1], fromWords(0xbc57ac4cu, 0x9b00dbd8u));
}

TEST(Draws, PublishedVectorOfOnes) {
    const auto pair = uniformPair(~0ull, Luck::Colony, ~0ull, ~0u, ~0u);
    EXPECT_EQ(pair[0], fromWords(0x408f276du, 0x41c83b0eu));
    EXPECT_EQ(pair[1], fromWords(0xa20bc7c6u, 0x6d5451fdu));
}

TEST(Draws, PublishedVectorOfPi) {
    // The counter's second word is the index halved, with the colony's bit: 0x85a308d3 = colony bit + 0x05a308d3.
    const auto pair =
        uniformPair(0x299f31d0a4093822ull, Luck::Colony, 0x0370734413198a2eull, 0x243f6a88u, 0x05a308d3u << 1);
    EXPECT_EQ(pair[0], fromWords(0xd16cfe09u, 0x94fdccebu));
    EXPECT_EQ(pair[1], fromWords(0x5001e420u, 0x24126ea1u));
}

TEST(Draws, StayInsideTheUnitInterval) {
    double sum = 0, squares = 0;
    const int n = 100000;
    for (int i = 0; i < n; ++i) {
        const double u = uniform(7, Luck::Weather, 0, static_cast<std::uint32_t>(i), 16);
        ASSERT_GT(u, 0);
        ASSERT_LT(u, 1);
        sum += u;
        squares += u * u;
    }
    // Five standard errors of the mean (sqrt(1/12/n)) and of the mean square (sqrt(4/45/n)).
    EXPECT_NEAR(sum / n, 0.5, 5 * std::sqrt(1.0 / 12 / n));
    EXPECT_NEAR(squares / n, 1.0 / 3, 5 * std::sqrt(4.0 / 45 / n));
}

TEST(Draws, WeatherAndColonyNeverShareANumber) {
    std::set<double> seen;
    for (std::uint32_t index = 0; index < 600; ++index) {
        seen.insert(uniform(1, Luck::Weather, 0, 3, index));
        seen.insert(uniform(1, Luck::Colony, 0, 3, index));
    }
    EXPECT_EQ(seen.size(), 1200u);
}

// FNV-1a 64: offset basis for the empty text and the published values for "a" and "foobar" (Fowler, Noll, Vo).
TEST(ColonyStream, IsFnv1a) {
    EXPECT_EQ(colonyStream(""), 0xcbf29ce484222325ull);
    EXPECT_EQ(colonyStream("a"), 0xaf63dc4c8601ec8cull);
    EXPECT_EQ(colonyStream("foobar"), 0x85944171f73967e8ull);
}

} // namespace winterlarder::winter::draws_test
