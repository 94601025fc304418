// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/text.h"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

// A foreign mark with three digits behind it may part thousands as well as be a decimal mark.
namespace winterlarder::thousands_test {
namespace {

std::string readAs(const std::string& text, char decimalPoint) {
    const auto parsed = parseMass(text, MassUnit::Kilogram, {decimalPoint, UnitSystem::Metric});
    return parsed ? fmt::format("{} kg", parsed->value()) : parsed.problems().front().remedy;
}

TEST(Thousands, AreAskedForWithOneTwoAndThreeDigitsBeforeTheMark) {
    EXPECT_EQ(readAs("1,234 g", '.'), "write 1234 or 1.234");
    EXPECT_EQ(readAs("12,345 g", '.'), "write 12345 or 12.345");
    EXPECT_EQ(readAs("123,456 g", '.'), "write 123456 or 123.456");
    EXPECT_EQ(readAs("123.456 g", ','), "write 123456 or 123,456");
}

TEST(Thousands, NobodyPartsBehindFourDigits) {
    EXPECT_EQ(readAs("1234,567 kg", '.'), "1234.567 kg");
    EXPECT_EQ(readAs("1234.567 kg", ','), "1234.567 kg");
}

RC_GTEST_PROP(Thousands, AreNeverGuessed, ()) {
    const int digits = *rc::gen::inRange(1, 4), rest = *rc::gen::inRange(0, 1000);
    const int first = *rc::gen::inRange(1, 10);
    const std::string whole = std::to_string(first) + std::string(static_cast<std::size_t>(digits - 1), '7');
    const bool point = *rc::gen::arbitrary<bool>();
    const char decimal = point ? '.' : ',', other = point ? ',' : '.';
    const std::string asked = fmt::format("write {}{:03} or {}{}{:03}", whole, rest, whole, decimal, rest);
    RC_ASSERT(readAs(fmt::format("{}{}{:03} kg", whole, other, rest), decimal) == asked);
}

} // namespace
} // namespace winterlarder::thousands_test
