// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json/json_output.h"

#include "exchange/json/json_tree.h"
#include "support/require.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace winterlarder::exchange::json_output_test {
namespace {

TEST(JsonOutput, NumbersInTheirShortestForm) {
    EXPECT_EQ(shortestNumber(0.1), "0.1");
    EXPECT_EQ(shortestNumber(2500), "2500");
    EXPECT_EQ(shortestNumber(100000), "100000");
    EXPECT_EQ(shortestNumber(-0.0), "0");
    EXPECT_EQ(shortestNumber(1e22), "1e+22");
    EXPECT_EQ(shortestNumber(1e-7), "1e-07");
}

TEST(JsonOutput, AMemberThatIsThereGetsAnotherValueInItsPlace) {
    auto json = Json::object().add("one", 1).add("two", 2);
    EXPECT_EQ(json.replace("one", "first").compact(), R"({"one":"first","two":2})");
    EXPECT_THROW(json.replace("three", 3), ContractViolation);
}

RC_GTEST_PROP(JsonOutput, EveryDoubleReadsBackTheSame, (std::uint64_t bits)) {
    double number = 0;
    std::memcpy(&number, &bits, sizeof number);
    RC_PRE(std::isfinite(number));
    const auto reading = readJson("[" + shortestNumber(number) + "]", "f");
    RC_ASSERT(reading.value.has_value());
    RC_ASSERT(reading.value->items.at(0).number == number);
}

// A character in UTF-8 (RFC 3629).
std::string utf8(std::uint32_t code) {
    const auto next = [&](int shift) { return static_cast<char>(0x80 | (code >> shift & 0x3F)); };
    if (code < 0x80) return {static_cast<char>(code)};
    if (code < 0x800) return {static_cast<char>(0xC0 | code >> 6), next(0)};
    if (code < 0x10000) return {static_cast<char>(0xE0 | code >> 12), next(6), next(0)};
    return {static_cast<char>(0xF0 | code >> 18), next(12), next(6), next(0)};
}

// From every range a text can draw on: controls, what JSON escapes, letters, other scripts, pictures; halves of pairs are no characters.
std::uint32_t anyCharacter() {
    return *rc::gen::oneOf(rc::gen::inRange<std::uint32_t>(0, 0x20),
                           rc::gen::element<std::uint32_t>('"', '\\', '/', 0x7F, 0x2028, 0xFEFF, 0xFFFF),
                           rc::gen::inRange<std::uint32_t>(0x20, 0x7F), rc::gen::inRange<std::uint32_t>(0x80, 0xD800),
                           rc::gen::inRange<std::uint32_t>(0xE000, 0x110000));
}

RC_GTEST_PROP(JsonOutput, EveryTextReadsBackTheSame, ()) {
    std::string text;
    const int length = *rc::gen::inRange(0, 30);
    for (int i = 0; i < length; ++i) text += utf8(anyCharacter());
    for (const std::string& written : {Json(Json::List{Json(text)}).compact(), Json(Json::List{Json(text)}).pretty()}) {
        const auto reading = readJson(written, "f");
        RC_ASSERT(reading.value.has_value());
        RC_ASSERT(reading.value->items.at(0).text == text);
    }
}

TEST(JsonOutput, OnOneLineAndIndented) {
    Json object = Json::object();
    Json list = Json::list();
    list.push(1);
    list.push(nullptr);
    object.add("a", std::move(list)).add("b", true).add("c", "x\"y").add("seed", std::uint64_t{18446744073709551615u});
    EXPECT_EQ(object.compact(), R"({"a":[1,null],"b":true,"c":"x\"y","seed":18446744073709551615})");
    EXPECT_EQ(object.pretty(), "{\n  \"a\": [1, null],\n  \"b\": true,\n  \"c\": \"x\\\"y\",\n  \"seed\": "
                               "18446744073709551615\n}\n");
    EXPECT_EQ(Json(std::optional<double>()).compact(), "null");
}

TEST(JsonOutput, ThereIsNoNotANumber) {
    EXPECT_THROW(Json{std::numeric_limits<double>::quiet_NaN()}, ContractViolation);
    EXPECT_THROW(Json{std::numeric_limits<double>::infinity()}, ContractViolation);
}

} // namespace
} // namespace winterlarder::exchange::json_output_test
