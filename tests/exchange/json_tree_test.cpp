// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json/json_tree.h"

#include "exchange/shipped_data.h"

#include <gmock/gmock.h>

namespace winterlarder::exchange::json_tree_test {
namespace {

using ::testing::HasSubstr;

TEST(JsonTree, EveryValueAndKeyKnowsItsPlace) {
    const auto reading = readJson("{ \"a\" : 1.5,\n  \"b\": [true,\r\n null, \"x\"],\n\"c\":{}}", "f");
    ASSERT_TRUE(reading.value);
    EXPECT_TRUE(reading.problems.empty());
    EXPECT_EQ(reading.value->position, (Position{1, 1}));
    const auto& members = reading.value->members;
    ASSERT_EQ(members.size(), 3u);
    EXPECT_EQ(members[0].position, (Position{1, 3}));
    EXPECT_EQ(members[0].value.position, (Position{1, 9}));
    EXPECT_EQ(members[0].value.number, 1.5);
    EXPECT_EQ(members[1].position, (Position{2, 3}));
    EXPECT_EQ(members[1].value.position, (Position{2, 8}));
    EXPECT_EQ(members[1].value.items.at(0).position, (Position{2, 9}));
    EXPECT_EQ(members[1].value.items.at(1).position, (Position{3, 2}));
    EXPECT_EQ(members[1].value.items.at(2).position, (Position{3, 8}));
    EXPECT_EQ(members[2].value.position, (Position{4, 5}));
}

TEST(JsonTree, ColumnsCountBytes) {
    const auto reading = readJson("{\"\xC3\xA9\": 7}", "f");
    EXPECT_EQ(reading.value->members.at(0).value.position, (Position{1, 8}));
}

TEST(JsonTree, LinesCountFromTheFirstLineGiven) {
    EXPECT_EQ(readJson("[1]", "f", 17).value->items.at(0).position, (Position{17, 2}));
}

TEST(JsonTree, NumbersReadExactly) {
    const auto reading = readJson("[0.1, -3e-5, 12345678901234567890, 5e-324, 1.7976931348623157e308, -0.0]", "f");
    ASSERT_TRUE(reading.value);
    const auto& items = reading.value->items;
    EXPECT_EQ(items[0].number, 0.1);
    EXPECT_EQ(items[1].number, -3e-5);
    EXPECT_EQ(items[2].number, 12345678901234567890.0);
    EXPECT_EQ(items[3].number, 5e-324);
    EXPECT_EQ(items[4].number, 1.7976931348623157e308);
    EXPECT_EQ(items[5].number, 0.0);
}

struct Fault {
    std::string with;  // '@' before the place
    std::string words; // in the message
};
class JsonFault : public ::testing::TestWithParam<Fault> {};

TEST_P(JsonFault, IsShownAtItsPlace) {
    const auto text = winterlarder::testing::marked(GetParam().with);
    const auto reading = readJson(text.text, "case.json");
    ASSERT_EQ(reading.problems.size(), 1u);
    const Problem& problem = reading.problems.front();
    EXPECT_EQ(problem.place, (Place{"case.json", text.line, text.column})) << describe(problem);
    EXPECT_THAT(describe(problem), HasSubstr(GetParam().words));
    EXPECT_FALSE(problem.remedy.empty());
}

INSTANTIATE_TEST_SUITE_P(Json, JsonFault,
                         ::testing::Values(Fault{"@", "empty"}, Fault{"{\"a\": 1} @x", "nothing after it"},
                                           Fault{"{\"a\": 1,\n @}", "Missing a name"},
                                           Fault{"{\"a\": @nan}", "Invalid value"},
                                           Fault{"{\"a\": @Infinity}", "Invalid value"},
                                           Fault{"{\"a\":\n @1e999}", "too large"},
                                           Fault{"{\"a\": 1, @\"a\": 2}", "first at 1:2"},
                                           Fault{"[1, 2@", "Missing a comma"}, Fault{"{\"a\": \"@\xff\"}", "UTF-8"},
                                           Fault{"{@'a': 1}", "double quotes"}, Fault{"{\"a\" @1}", "colon"},
                                           Fault{"[1.@]", "fraction"}, Fault{std::string("[1]@\0", 5), "zero byte"}));

TEST(JsonTree, SeveralHugeNumbersAndDoubledKeysAreAllListed) {
    const auto reading = readJson("{\"a\": 1e400, \"b\": -2e308,\n \"c\": 3, \"c\": 4}", "f");
    ASSERT_TRUE(reading.value) << "the rest is still read";
    ASSERT_EQ(reading.problems.size(), 3u);
    EXPECT_EQ(reading.problems[0].place.column, 7);
    EXPECT_EQ(reading.problems[1].place.column, 19);
    EXPECT_EQ(reading.problems[2].place.line, 2);
}

TEST(JsonTree, DeepNestingIsAFaultNotACrash) {
    for (std::size_t depth : {limits::jsonNesting + 1, std::size_t{200000}}) {
        const auto reading = readJson(std::string(depth, '['), "f");
        ASSERT_EQ(reading.problems.size(), 1u);
        EXPECT_THAT(reading.problems[0].detail, HasSubstr("nested deeper"));
        EXPECT_EQ(reading.problems[0].place.column, static_cast<int>(limits::jsonNesting) + 1);
    }
    const std::string allowed = std::string(limits::jsonNesting, '[') + std::string(limits::jsonNesting, ']');
    EXPECT_TRUE(readJson(allowed, "f").problems.empty());
}

// Looked through one by one for each other, so many keys would take minutes.
TEST(JsonTree, HundredsOfThousandsOfKeysEnd) {
    constexpr int many = 300000;
    std::string text = "{";
    for (int i = 0; i < many; ++i) text += "\"key" + std::to_string(i) + "\": 1,\n";
    const auto reading = readJson(text + "\"key7\": 2,\n\"key299999\": 3}", "f");
    ASSERT_TRUE(reading.value);
    EXPECT_EQ(reading.value->members.size(), static_cast<std::size_t>(many));
    ASSERT_EQ(reading.problems.size(), 2u);
    EXPECT_THAT(reading.problems[0].detail, HasSubstr("\"key7\" is given twice, first at 8:1"));
    EXPECT_THAT(reading.problems[1].detail, HasSubstr("first at 300000:1"));
}

// The same keys twice in objects of every size: few are looked through, many are kept by name.
TEST(JsonTree, DoubledKeysAreFoundHoweverMany) {
    for (int keys = 1; keys < 60; ++keys) {
        std::string text = "{";
        for (int i = 0; i < keys; ++i) text += "\"k" + std::to_string(i) + "\": {\"k0\": 1, \"k0\": 2},";
        for (int i = 0; i < keys; ++i) text += "\"k" + std::to_string(i) + (i + 1 < keys ? "\": 3," : "\": 3}");
        const auto reading = readJson(text, "f");
        EXPECT_EQ(reading.problems.size(), static_cast<std::size_t>(2 * keys)) << keys;
        EXPECT_EQ(reading.value->members.size(), static_cast<std::size_t>(keys));
    }
}

TEST(JsonTree, MoreValuesThanAnyBookHasAreAFault) {
    std::string text = "[";
    for (std::size_t i = 0; i < limits::jsonValues; ++i) text += "1,";
    const auto reading = readJson(text + "1]", "f");
    EXPECT_FALSE(reading.value);
    ASSERT_EQ(reading.problems.size(), 1u);
    EXPECT_EQ(reading.problems[0].detail, "there are too many values");
    EXPECT_EQ(reading.problems[0].remedy, "at most 10000000");
}

TEST(JsonTree, ValuesAreSmall) { EXPECT_LE(sizeof(JsonValue), 80u) << "a document holds millions"; }

TEST(JsonTree, AByteOrderMarkIsPassedOver) { EXPECT_TRUE(readJson("\xEF\xBB\xBF{}", "f").problems.empty()); }

TEST(JsonTree, RepeatedTextIsSafeToShow) {
    EXPECT_EQ(inQuotes("a\x1b[31mb\n"), "\"a?[31mb?\"");
    const std::string longText = std::string(59, 'a') + "\xC3\xA9" + "bcd";
    EXPECT_EQ(inQuotes(longText), '"' + std::string(59, 'a') + "...\"");
}

} // namespace
} // namespace winterlarder::exchange::json_tree_test
