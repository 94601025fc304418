// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/csv_table.h"

#include "support/require.h"

#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::csv_table_test {
namespace {

CsvTable good(std::string_view text, char delimiter = ',') {
    auto table = CsvTable::parse(text, "t.csv", delimiter);
    if (!table) throw std::runtime_error(describe(table.problems().front()));
    return std::move(table).value();
}

std::vector<std::string> faults(std::string_view text) {
    std::vector<std::string> described;
    const auto table = CsvTable::parse(text, "t.csv");
    if (table.ok()) return described;
    for (const Problem& problem : table.problems()) described.push_back(describe(problem));
    return described;
}

std::string placeOf(const CsvTable& table, std::size_t row, std::string_view column) {
    const CsvCell& cell = table.cell(row, column);
    return std::to_string(cell.line) + ":" + std::to_string(cell.column);
}

TEST(CsvTable, KeepsTheDescriptionAside) {
    const CsvTable table = good("# title: T\n#  mark: x \nid,kg\na,1\n");
    EXPECT_THAT(table.description(), testing::ElementsAre("title: T", "mark: x"));
    EXPECT_EQ(table.rows(), 1U);
    EXPECT_EQ(table.cell(0, "kg").text, "1");
    EXPECT_EQ(table.column("kg"), 1U);
    EXPECT_EQ(table.column("lb"), std::nullopt);
    EXPECT_EQ(table.file(), "t.csv");
}

TEST(CsvTable, KnowsTheLineAndColumnOfEveryCell) {
    const CsvTable table = good("# t\nid,name,kg\na,\"x, y\",1\n\nb,\"two\nlines\",2\nc,,3\n");
    ASSERT_EQ(table.rows(), 3U);
    EXPECT_EQ(placeOf(table, 0, "id"), "3:1");
    EXPECT_EQ(placeOf(table, 0, "name"), "3:3");
    EXPECT_EQ(placeOf(table, 0, "kg"), "3:10");
    EXPECT_EQ(placeOf(table, 1, "id"), "5:1");
    EXPECT_EQ(placeOf(table, 1, "name"), "5:3");
    EXPECT_EQ(table.cell(1, "name").text, "two\nlines");
    EXPECT_EQ(placeOf(table, 1, "kg"), "6:8");
    EXPECT_EQ(placeOf(table, 2, "name"), "7:3");
    EXPECT_EQ(placeOf(table, 2, "kg"), "7:4");
}

TEST(CsvTable, ColumnsCountBytes) {
    const CsvTable table = good("id,kg\n\xC3\xA9,1\n");
    EXPECT_EQ(placeOf(table, 0, "kg"), "2:4");
}

TEST(CsvTable, AQuotedFirstCellKeepsItsPlace) {
    const CsvTable table = good("id,kg\n\"a,b\nc\",1\n");
    EXPECT_EQ(table.cell(0, "id").text, "a,b\nc");
    EXPECT_EQ(placeOf(table, 0, "id"), "2:1");
    EXPECT_EQ(placeOf(table, 0, "kg"), "3:4");
}

TEST(CsvTable, ReadsOtherDelimitersLineEndsAndAByteOrderMark) {
    const CsvTable table = good("\xEF\xBB\xBFid;kg\r\na,b;1\r\nc;2", ';');
    ASSERT_EQ(table.rows(), 2U);
    EXPECT_EQ(table.cell(0, "id").text, "a,b");
    EXPECT_EQ(placeOf(table, 1, "kg"), "3:3");
    const CsvTable tabs = good("id\tkg\na\t5\n", '\t');
    EXPECT_EQ(tabs.cell(0, "kg").text, "5");
}

TEST(CsvTable, ReadsDoubledQuotationMarks) {
    EXPECT_EQ(good("id\n\"say \"\"so\"\"\"\n").cell(0, "id").text, "say \"so\"");
}

TEST(CsvTable, ListsEveryRowOfAWrongLength) {
    EXPECT_THAT(faults("id,kg\na\nb,1\nc,1,2,3\n"),
                testing::ElementsAre("t.csv:2:1: the row has 1 cells; the header names 2",
                                     "t.csv:4:5: the row has 4 cells; the header names 2"));
}

TEST(CsvTable, ListsColumnsNamedTwiceOrNotAtAll) {
    EXPECT_THAT(faults("id,kg,id,\n"),
                testing::ElementsAre("t.csv:1:7: column id is there twice; name every column once",
                                     "t.csv:1:10: a column has no name; name every column"));
}

TEST(CsvTable, RefusesMoreColumnsThanAnyTableHas) {
    std::string header = "c0", twice = "c0";
    for (int i = 1; i < 200000; ++i) header += ",c" + std::to_string(i);
    for (std::size_t i = 1; i < limits::tableColumns; ++i) twice += ",c" + std::to_string(i / 2);
    EXPECT_THAT(faults(header + "\n"), testing::ElementsAre("t.csv:1:1: the table has 200000 columns; at most 10000"));
    EXPECT_EQ(faults(twice + "\n").size(), limits::tableColumns / 2) << "c0 twice and every second of the others";
}

TEST(CsvTable, RefusesUnbalancedQuotationMarks) {
    EXPECT_THAT(faults("id,kg\na,\"1\nb,2\n"),
                testing::ElementsAre("t.csv:2:3: a quotation mark is never closed; "
                                     "quote the whole cell and double each quotation mark inside it"));
    EXPECT_THAT(faults("id,kg\na,1\"2\n"),
                testing::ElementsAre("t.csv:2:4: a quotation mark stands where none may stand; "
                                     "quote the whole cell and double each quotation mark inside it"));
    EXPECT_THAT(faults("id,kg\na,\"1\"2\n"), testing::ElementsAre(testing::StartsWith("t.csv:2:6: ")));
}

TEST(CsvTable, AnEmptyTextIsNoTable) {
    EXPECT_THAT(faults(""), testing::ElementsAre("t.csv:1:1: the table is empty; a header row that names the columns"));
    EXPECT_THAT(faults("# only words\n"), testing::ElementsAre(testing::StartsWith("t.csv:2:1: the table is empty")));
}

TEST(CsvTable, AHeaderAloneHasNoRows) { EXPECT_EQ(good("id,kg\n").rows(), 0U); }

TEST(CsvTable, OutsideTheTableIsAProgrammersError) {
    const CsvTable table = good("id,kg\na,1\n");
    EXPECT_THROW(table.cell(1, std::size_t{0}), ContractViolation);
    EXPECT_THROW(table.cell(0, "lb"), ContractViolation);
}

TEST(CsvTable, AFileThatCannotBeReadIsAProblemOfTheFile) {
    const auto missing = CsvTable::read("/nowhere/at/all.csv");
    ASSERT_FALSE(missing.ok());
    EXPECT_EQ(missing.problems().front().kind, ProblemKind::File);
    EXPECT_EQ(missing.problems().front().place.file, "/nowhere/at/all.csv");
    EXPECT_EQ(CsvTable::read("/").problems().front().kind, ProblemKind::File);
}

TEST(CsvTable, NumbersAreWholeCellsOnly) {
    EXPECT_EQ(numberFrom("-1.5e3"), -1500.0);
    for (const char* wrong : {"", " 1", "1 ", "1,5", "0x10", "nan", "inf", "1e999", "+1", "1.5kg"})
        EXPECT_EQ(numberFrom(wrong), std::nullopt) << wrong;
}

std::string quoted(const std::string& text) {
    std::string out = "\"";
    for (char c : text) out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + "\"";
}

// Whatever stands in a cell comes back, and its place points at its opening quotation mark.
RC_GTEST_PROP(CsvTableProperty, QuotedCellsComeBackFromTheirPlace, ()) {
    const auto columns = *rc::gen::inRange<std::size_t>(1, 5);
    const auto cell = rc::gen::container<std::string>(rc::gen::elementOf(std::string("ab,;\"\n\r\t #")));
    const auto rows = *rc::gen::container<std::vector<std::vector<std::string>>>(
        rc::gen::container<std::vector<std::string>>(columns, cell));
    std::string text;
    for (std::size_t i = 0; i < columns; ++i) text += (i ? ",c" : "c") + std::to_string(i);
    text += '\n';
    std::vector<std::size_t> starts;
    for (const auto& row : rows)
        for (std::size_t i = 0; i < columns; ++i) {
            starts.push_back(text.size());
            text += quoted(row[i]) + (i + 1 < columns ? "," : "\n");
        }
    const CsvTable table = good(text);
    RC_ASSERT(table.rows() == rows.size());
    for (std::size_t i = 0; i < starts.size(); ++i) {
        const CsvCell& read = table.cell(i / columns, i % columns);
        RC_ASSERT(read.text == rows[i / columns][i % columns]);
        const std::string before = text.substr(0, starts[i]);
        RC_ASSERT(read.line == 1 + std::count(before.begin(), before.end(), '\n'));
        const auto lineStart = before.rfind('\n') + 1;
        RC_ASSERT(static_cast<std::size_t>(read.column) == starts[i] - lineStart + 1);
    }
}

} // namespace
} // namespace winterlarder::csv_table_test
