// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/book_folder.h"

#include "book/file/schema.h"
#include "book/form/canonical.h"
#include "book/form/limits.h"

#include <gmock/gmock.h>
#include <set>

//! Tables, limits, schema and canonical text: what follows from the one description of every entry.
namespace winterlarder::book::tables_test {
namespace {

using namespace support;

std::vector<std::pair<std::string, const std::vector<Column>*>> everyTable() {
    std::vector<std::pair<std::string, const std::vector<Column>*>> all;
    for (const auto& table : tables()) {
        all.emplace_back(table.name, &table.columns);
        for (const auto& list : table.lists) all.emplace_back(list.table, &list.columns);
    }
    return all;
}

TEST(Tables, EveryColumnHasItsFieldInTheDataDictionaryOfTheRightType) {
    const std::map<ColumnType, std::string> types{
        {ColumnType::Text, "text"},      {ColumnType::Number, "number"},  {ColumnType::Integer, "integer"},
        {ColumnType::Flag, "flag"},      {ColumnType::Choice, "choice"},  {ColumnType::Date, "date"},
        {ColumnType::DayOfYear, "text"}, {ColumnType::Digits, "integer"}, {ColumnType::Weekdays, "integer"}};
    for (const auto& [table, columns] : everyTable())
        for (const auto& column : *columns) {
            if (column.refersTo) continue;
            const auto* field = shipped().field(column.field);
            ASSERT_NE(field, nullptr) << table << " " << column.field;
            EXPECT_EQ(field->type, types.at(column.type)) << table << " " << column.field;
            EXPECT_EQ(field->choices, column.choices) << table << " " << column.field;
        }
}

TEST(Tables, NamesAndHeadersAreUniqueWithinATable) {
    for (const auto& [table, columns] : everyTable()) {
        std::set<std::string> names, headers;
        for (const auto& column : *columns) {
            EXPECT_TRUE(names.insert(column.name).second) << table << " " << column.name;
            EXPECT_TRUE(headers.insert(column.header).second) << table << " " << column.header;
        }
    }
}

TEST(Tables, WhatAnEntryRefersToStandsBeforeIt) {
    for (const auto& table : tables())
        for (const auto& column : table.columns)
            if (column.refersTo && *column.refersTo != table.kind)
                EXPECT_LT(*column.refersTo, table.kind) << table.name;
}

TEST(Limits, EachEndOfARangeIsAllowedAndWhatLiesBeyondIsNot) {
    const Limits limits(shipped().fields);
    int ranges = 0;
    for (const auto& [table, columns] : everyTable())
        for (const auto& column : *columns) {
            if (column.type != ColumnType::Number) continue;
            const auto& field = limits.of(column);
            EXPECT_FALSE(limits.fault(column, *field.minimum)) << column.field;
            EXPECT_FALSE(limits.fault(column, *field.maximum)) << column.field;
            EXPECT_TRUE(limits.fault(column, std::nextafter(*field.minimum, -1e300))) << column.field;
            EXPECT_TRUE(limits.fault(column, std::nextafter(*field.maximum, 1e300))) << column.field;
            EXPECT_TRUE(limits.fault(column, std::nan(""))) << column.field;
            EXPECT_TRUE(limits.fault(column, std::string("1"))) << column.field;
            EXPECT_EQ(limits.fault(column, Value{}).has_value(), column.required) << column.field;
            ++ranges;
        }
    EXPECT_GT(ranges, 50);
}

TEST(Limits, AMessageNamesFieldValueAndRange) {
    const Limits limits(shipped().fields);
    const auto& table = tableOf(Kind::Weighing);
    const auto problem = limits.fault(table.columns.at(*table.column("gross_kg")), 900.0);
    ASSERT_TRUE(problem);
    EXPECT_EQ(problem->detail, "weighings.gross_kg is 900");
    EXPECT_EQ(problem->remedy, "0 to 500 kg");
}

TEST(Limits, OnlyWellFormedUtf8IsText) {
    for (const char* text :
         {"", "plain", "\xC3\xA9", "\xE2\x82\xAC", "\xF0\x9F\x90\x9D", "\xEF\xBF\xBF", "\xF4\x8F\xBF\xBF"})
        EXPECT_TRUE(isText(text)) << text;
    for (const char* text : {"\x80", "\xC3", "\xC0\x80", "\xE0\x80\x80", "\xED\xA0\x80", "\xF0\x80\x80\x80",
                             "\xF4\x90\x80\x80", "\xFF", "a\xE2\x82"})
        EXPECT_FALSE(isText(text));
    EXPECT_FALSE(isText(std::string_view("a\0b", 3)));
    EXPECT_EQ(characters("a\xF0\x9F\x90\x9D\xC3\xA9"), 3u);
}

TEST(Schema, TwoSchemasWithOtherLimitsAreTheSameBook) {
    auto fields = shipped().fields;
    for (auto& field : fields)
        if (field.name == "weighings.gross_kg") field.maximum = 612.5;
    const auto ours = schemaOf(Limits(shipped().fields));
    const auto theirs = schemaOf(Limits(fields));
    const auto comparison = compareSchema(theirs, ours);
    EXPECT_THAT(comparison.surprises, testing::IsEmpty());
    EXPECT_FALSE(comparison.exactly);
    EXPECT_TRUE(compareSchema(ours, ours).exactly);
}

TEST(Schema, NumbersOfLimitsAreTakenOutAndNothingElse) {
    EXPECT_EQ(withoutNumbers("x BETWEEN -60 AND 45.5"), "x BETWEEN # AND #");
    EXPECT_EQ(withoutNumbers("x <= 1e+06 AND y1 = 2"), "x <= # AND y1 = #");
    EXPECT_NE(withoutNumbers("x BETWEEN 0 AND 1"), withoutNumbers("y BETWEEN 0 AND 1"));
}

TEST(Canonical, TextIsEscapedAndComesBack) {
    const Lines lines{{"note", "\"a\\nb\\\"c\\\\\""}, {"date", "\"2026-09-12\""}};
    EXPECT_EQ(linesOfText(textOf(lines)), lines);
    EXPECT_FALSE(linesOfText("no value on this line"));
    EXPECT_FALSE(rowOfLines(tableOf(Kind::Move), {{"unknown", "1"}}));
}

TEST(Canonical, ADifferenceLaidOverGivesTheOtherSide) {
    const Lines before{{"a", "1"}, {"b", "2"}}, after{{"b", "3"}, {"c", "4"}};
    const auto difference = differenceOf(before, after);
    EXPECT_EQ(laidOver(before, difference.after), after);
    EXPECT_EQ(laidOver(after, difference.before), before);
    EXPECT_EQ(textOf(difference.before), "a 1\nb 2\nc -\n");
}

TEST(TimestampText, ReadsWhatItWrites) {
    for (const char* text : {"1970-01-01T00:00:00Z", "1969-12-31T23:59:59Z", "2026-11-25T09:27:36Z",
                             "1900-02-28T12:00:00Z", "2200-12-31T23:59:59Z"})
        EXPECT_EQ(Timestamp::parse(text)->iso(), text);
    EXPECT_EQ(Timestamp::parse("2026-11-25T09:27:36Z")->seconds, 1795598856); // date -u -d 2026-11-25T09:27:36Z +%s
    for (const char* text : {"2026-11-25", "2026-11-25T24:00:00Z", "2026-11-25T09:60:00Z", "2026-11-25 09:27:36Z",
                             "2026-11-25T09:27:36+", "2026-02-30T00:00:00Z"})
        EXPECT_FALSE(Timestamp::parse(text)) << text;
}

} // namespace
} // namespace winterlarder::book::tables_test
