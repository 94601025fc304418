// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json_output.h"

#include "exchange/json_tree.h"
#include "support/require.h"

#include <cmath>
#include <gmock/gmock.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace winterlarder::exchange {
namespace {

TEST(JsonOutput, NumbersInTheirShortestForm) {
    EXPECT_EQ(shortestNumber(0.1), "0.1");
    EXPECT_EQ(shortestNumber(2500), "2500");
    EXPECT_EQ(shortestNumber(100000), "100000");
    EXPECT_EQ(shortestNumber(-0.0), "0");
    EXPECT_EQ(shortestNumber(1e22), "1e+22");
    EXPECT_EQ(shortestNumber(1e-7), "1e-07");
}

RC_GTEST_PROP(JsonOutput, EveryDoubleReadsBackTheSame, (std::uint64_t bits)) {
    double number = 0;
    std::memcpy(&number, &bits, sizeof number);
    RC_PRE(std::isfinite(number));
    const auto reading = readJson("[" + shortestNumber(number) + "]", "f");
    RC_ASSERT(reading.value.has_value());
    RC_ASSERT(reading.value->items.at(0).number == number);
}

RC_GTEST_PROP(JsonOutput, EveryTextReadsBackTheSame, (std::string text)) {
    for (char& c : text)
        c = static_cast<char>(c & 0x7f);
    const auto reading = readJson(Json::list().compact() == "[]" ? Json(Json::List{Json(text)}).compact() : "", "f");
    RC_ASSERT(reading.value.has_value());
    RC_ASSERT(reading.value->items.at(0).text == text);
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
} // namespace winterlarder::exchange
