// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"
#include "support/odd_books.h"

#include "exchange/book/book_csv.h"
#include "reference/csv_table.h"

#include <clocale>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::exchange::book_csv_test {
namespace {

using namespace book;
using namespace book::support;

CsvPreview preview(Book& book, const std::string& table, const std::string& text) {
    return must(previewCsv(book, table, text, "t.csv", "Bo"));
}

std::vector<std::string> faultsOf(Book& book, const std::string& table, const std::string& text) {
    const auto read = previewCsv(book, table, text, "t.csv", "Bo");
    std::vector<std::string> faults;
    if (!read)
        for (const auto& problem : read.problems()) faults.push_back(describe(problem));
    return faults;
}

Book bookOfOneColony(const BookFolder& folder) {
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "One")});
    return book;
}

TEST(BookCsv, HeadersAreTheNamesOfTheDataDictionary) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    edit(book, AddWeighing{weighingOf({1}, day("2026-09-10"), 54.5)});
    EXPECT_EQ(
        must(writeCsv(book, "weighings")),
        "id,colony,records.date,weighings.gross_kg,weighings.lift_kg.1,weighings.lift_kg.2,weighings.heft,weighings.wet,records.sure,records.note,records.by\n"
        "1,One,2026-09-10,54.5,,,,false,,,Ada\n");
    for (const auto& table : csvTables()) EXPECT_TRUE(writeCsv(book, table)) << table;
    EXPECT_FALSE(writeCsv(book, "weights"));
}

//! Every table of a random book, written as CSV, carried into an empty book one after the other.
RC_GTEST_PROP(BookCsv, ABookCarriedOverTableByTableIsTheSameBook, (std::uint64_t seed)) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, seed, 2);
    // CSV cannot tell an empty text from none: the one text that may be either is given a value.
    for (auto yard : must(book.all<Yard>())) yard.currency = "CAD", edit(book, ChangeYard{yard});
    for (auto feed : must(book.all<Feed>())) feed.feed.ratio = "3:2", edit(book, ChangeFeed{feed});
    for (auto look : must(book.all<Look>()))
        if (auto* combs = std::get_if<std::vector<CombRecord>>(&look.combs)) {
            for (auto& comb : *combs) comb.format.reset();
            edit(book, ChangeLook{look});
        }
    auto other = newBook(folder / "b.larder");
    for (const auto& table : csvTables()) {
        const auto read = preview(other, table, must(writeCsv(book, table)));
        must(importCsv(other, read, later(1), "Bo"));
        RC_ASSERT(must(writeCsv(other, table)) == must(writeCsv(book, table)));
    }
    RC_ASSERT(must(other.dump()) == must(book.dump()));
}

TEST(BookCsv, APreviewSaysWhatTheImportThenDoes) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    edit(book, AddWeighing{weighingOf({1}, day("2026-09-10"), 54.5)});
    const auto read = preview(book, "weighings",
                              "id,colony,date,gross_kg,note\n"
                              "1,One,2026-09-10,55,\n"   // changes number 1
                              ",One,2026-09-11,56,new\n" // new
                              ",One,2026-09-11,56,new\n" // the same again
                              ",#1,2026-09-12,57.25,\"a, \"\"b\"\"\"\n");
    EXPECT_THAT(read.changed, testing::ElementsAre(2));
    EXPECT_THAT(read.added, testing::ElementsAre(3, 5));
    EXPECT_THAT(read.duplicates, testing::ElementsAre(4));
    const auto before = must(book.dump());
    must(importCsv(book, read, later(1), "Bo"));
    const auto weighings = must(book.all<Weighing>());
    ASSERT_EQ(weighings.size(), 3u);
    EXPECT_EQ(std::get<ScaleReading>(weighings[0].weighing.reading).gross, kilograms(55));
    EXPECT_EQ(weighings[0].by, "Ada") << "the file has no such column: it stays";
    EXPECT_EQ(weighings[2].note, "a, \"b\"");
    EXPECT_EQ(weighings[2].by, "Bo");
    EXPECT_EQ(backupsOf(book.file()).size(), 1u);
    const auto again = preview(book, "weighings", must(writeCsv(book, "weighings")));
    EXPECT_TRUE(again.edit.targets.empty());
    EXPECT_EQ(again.duplicates.size(), 3u);
    must(book.undo(later(2), "Bo"));
    EXPECT_EQ(must(book.dump()), before) << "one step";
}

TEST(BookCsv, EveryBadCellIsNamedWithRowAndColumn) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    const auto faults = faultsOf(book, "weighings",
                                 "colony,date,gross_kg,heft\n"
                                 "Two,2026-09-10,54.5,\n"
                                 "One,10.9.2026,\"54,5\",\n"
                                 "One,2026-09-10,900,light-ish\n");
    EXPECT_THAT(faults,
                testing::ElementsAre(
                    testing::StartsWith("t.csv:2:1: there is no colony \"Two\""),
                    testing::StartsWith("t.csv:3:5: records.date is \"10.9.2026\"; write 2026-09-10"),
                    testing::StartsWith("t.csv:3:15: weighings.gross_kg is \"54,5\"; a number with a decimal point"),
                    testing::StartsWith("t.csv:4:16: weighings.gross_kg is 900"),
                    testing::StartsWith("t.csv:4:20: weighings.heft is \"light-ish\"")));
    EXPECT_THAT(faultsOf(book, "weighings", "colony,gross_kg,wieght\nOne,5,6\n"),
                testing::ElementsAre(testing::HasSubstr("unknown column \"wieght\""),
                                     testing::HasSubstr("records.date is missing")));
    EXPECT_TRUE(must(book.all<Weighing>()).empty());
}

TEST(BookCsv, ANameThatIsThereTwiceNeedsItsNumber) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    edit(book, AddColony{colonyIn({1}, "One")});
    edit(book, AddWeighing{weighingOf({2}, day("2026-09-10"), 54.5)});
    EXPECT_THAT(must(writeCsv(book, "weighings")), testing::HasSubstr("1,#2,2026-09-10"));
    EXPECT_THAT(faultsOf(book, "weighings", "colony,date,gross_kg\nOne,2026-09-10,54.5\n"),
                testing::ElementsAre(testing::HasSubstr("2 of them are called \"One\"; say which, such as #1")));
}

TEST(BookCsv, CombsReplaceTheListOfTheirLook) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    edit(book, AddLook{{.colony = {1}, .date = day("2026-09-10")}});
    const auto read = preview(book, "look_combs", "owner,place,capped,brood\n1,1,0.5,\n1,0,0.25,0.5\n");
    must(importCsv(book, read, later(1), "Bo"));
    const auto combs = std::get<std::vector<CombRecord>>(must(book.all<Look>()).at(0).combs);
    ASSERT_EQ(combs.size(), 2u);
    EXPECT_EQ(combs[0], comb(0.25, 0.5));
    EXPECT_EQ(combs[1], comb(0.5));
    EXPECT_THAT(faultsOf(book, "look_combs", "owner,place,capped\n9,0,0.5\n"),
                testing::ElementsAre(testing::HasSubstr("there is no look")));
}

TEST(BookCsv, BoxesMayNameTheirColony) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "One")});
    const auto preview = must(previewCsv(
        book, "colony_boxes", "owner,hive.boxes.format\nOne,langstroth-deep\n#1,langstroth-medium\n", "b.csv", "Ada"));
    must(importCsv(book, preview, later(1), "Ada"));
    const auto boxes = must(book.find(ColonyId{1})).value().hive.boxes;
    ASSERT_EQ(boxes.size(), 2u);
    EXPECT_EQ(boxes[1].format, FormatChoice(std::string("langstroth-medium")));
    EXPECT_THAT(
        describe(previewCsv(book, "colony_boxes", "owner,hive.boxes.format\nTwo,langstroth-deep\n", "b.csv", "Ada")
                     .problems()
                     .front()),
        testing::HasSubstr("b.csv:2:1: there is no colony \"Two\""));
}

TEST(BookCsv, TheLocaleChangesNothing) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    edit(book, AddWeighing{weighingOf({1}, day("2026-09-10"), 54.5)});
    const auto plain = must(writeCsv(book, "weighings"));
    const std::string before = std::setlocale(LC_ALL, nullptr);
    for (const char* locale : {"de_DE.UTF-8", "fr_FR.UTF-8", "tr_TR.UTF-8", "C"})
        if (std::setlocale(LC_ALL, locale)) {
            EXPECT_EQ(must(writeCsv(book, "weighings")), plain) << locale;
            EXPECT_EQ(preview(book, "weighings", plain).duplicates.size(), 1u) << locale;
        }
    std::setlocale(LC_ALL, before.c_str());
}

TEST(BookCsv, TextASpreadsheetWouldTakeForAFormulaIsWrittenSafely) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    edit(book, AddColony{colonyIn({1}, "=cmd|'/C calc'!A0")});
    for (const char* note : {"+1", "-5 kg", "@SUM(A1)", "\tx", "\rx", "\nx", "'=1", "''@", "'tis", "5-3"}) {
        auto weighing = weighingOf({2}, day("2026-09-10"), 54.5);
        weighing.note = note;
        edit(book, AddWeighing{weighing});
    }
    auto yard = must(book.find(YardId{1})).value();
    yard.site.elevationM = -5;
    edit(book, ChangeYard{yard});
    const auto csv = must(writeCsv(book, "weighings"));
    EXPECT_THAT(csv, testing::HasSubstr("\n1,'=cmd|'/C calc'!A0,2026-09-10,54.5,"));
    for (const char* note : {",'+1,", ",'-5 kg,", ",'@SUM(A1),", ",'\tx,", ",\"'\rx\",", ",\"'\nx\",", ",''=1,",
                             ",'''@,", ",'tis,", ",5-3,"})
        EXPECT_THAT(csv, testing::HasSubstr(note));
    EXPECT_THAT(must(writeCsv(book, "colonies")), testing::HasSubstr("\n2,Orchard,'=cmd|'/C calc'!A0,"));
    EXPECT_THAT(must(writeCsv(book, "yards")), testing::HasSubstr(",-5,")) << "numbers stay numbers";
    const auto before = must(book.dump());
    for (const char* table : {"yards", "colonies", "weighings"})
        EXPECT_TRUE(preview(book, table, must(writeCsv(book, table))).edit.targets.empty()) << table;
    must(importCsv(book, preview(book, "weighings", "id,note\n1,=2\n2,\n"), later(1), "Bo"));
    EXPECT_EQ(must(book.find(WeighingId{1}))->note, "=2") << "what was typed bare is taken as it is";
    must(book.undo(later(2), "Bo"));
    EXPECT_EQ(must(book.dump()), before);
}

std::string textOf(const std::vector<std::uint8_t>& choices, const std::vector<std::string>& signs) {
    std::string text;
    for (const auto choice : choices) text += signs[choice % signs.size()];
    return text;
}

bool isFormula(const std::string& cell) {
    return !cell.empty() && std::string("=+-@\t\r\n").find(cell.front()) != std::string::npos;
}

//! Any text out of signs that matter comes back byte for byte, and no cell of text begins as a formula does.
RC_GTEST_PROP(BookCsv, AnyTextComesBackByteForByte, (const std::vector<std::vector<std::uint8_t>>& texts)) {
    const std::vector<std::string> signs{"=",  "+",  "-", "@", "'", "\t", "\r",
                                         "\n", "\"", ",", "a", " ", "#",  "\xC3\xA9"};
    const std::vector<std::string> nameSigns{"=", "+", "-", "@", "'", "\"", ",", "a", " ", "#", "\xC3\xA9"};
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    EditGroup all{"all", {}};
    for (std::size_t at = 0; at < texts.size() && at < 8; ++at) {
        auto colony = colonyIn({1}, textOf(texts[at], nameSigns) + "z");
        colony.origin = colony.note = textOf(texts[at], signs);
        all.edits.emplace_back(AddColony{colony});
        auto weighing = weighingOf({static_cast<std::int64_t>(at) + 1}, day("2026-09-10"), 54.5);
        weighing.note = textOf(texts[at], signs);
        all.edits.emplace_back(AddWeighing{weighing});
    }
    must(book.apply(all, morning, "Ada"));
    auto other = newBook(folder / "b.larder");
    for (const auto& table : csvTables()) {
        const auto text = must(writeCsv(book, table));
        must(importCsv(other, preview(other, table, text), later(1), "Bo"));
        RC_ASSERT(must(writeCsv(other, table)) == text);
    }
    RC_ASSERT(must(other.dump()) == must(book.dump()));
    for (const char* table : {"colonies", "weighings"}) {
        const auto csv = must(CsvTable::parse(must(writeCsv(book, table)), table));
        for (std::size_t row = 0; row < csv.rows(); ++row)
            for (const char* column : {"records.note", "colony", "colonies.name", "colonies.origin"})
                if (csv.column(column)) RC_ASSERT(!isFormula(csv.cell(row, column).text));
    }
}

TEST(BookCsv, NumbersNoEntryCanHaveAreRefusedWithTheirPlace) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    edit(book, AddLook{lookAt({1}, day("2026-09-10"))});
    for (const std::string number :
         {"9223372036854775807", "9223372036854775808", "9007199254740992", "0", "-1", "#9007199254740992"}) {
        SCOPED_TRACE(number);
        EXPECT_THAT(faultsOf(book, "weighings", "id,colony,date,gross_kg\n" + number + ",One,2026-09-12,34\n"),
                    testing::ElementsAre("t.csv:2:1: \"" + number +
                                         "\" is not a number of an entry; a whole number from 1 to 9007199254740991"));
        EXPECT_THAT(faultsOf(book, "look_combs", "owner,place,capped\n" + number + ",0,0.5\n"),
                    testing::ElementsAre(testing::StartsWith("t.csv:2:1: ")));
    }
    EXPECT_THAT(faultsOf(book, "weighings", "colony,date,gross_kg\n#9007199254740992,2026-09-12,34\n"),
                testing::ElementsAre(testing::StartsWith("t.csv:2:1: ")));
    EXPECT_THAT(faultsOf(book, "look_combs", "owner,place,capped\n1,9223372036854775808,0.5\n"),
                testing::ElementsAre(testing::StartsWith("t.csv:2:3: ")));
}

TEST(BookCsv, TheLargestNumberLeavesRoomForMore) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    const auto read = preview(
        book, "weighings",
        "id,colony,date,gross_kg\n9007199254740991,One,2026-09-12,34\n,One,2026-09-13,35\n7,One,2026-09-14,36\n,One,2026-09-15,37\n");
    must(importCsv(book, read, later(1), "Bo"));
    edit(book, AddWeighing{weighingOf({1}, day("2026-09-16"), 38)});
    std::vector<std::int64_t> ids;
    for (const auto& weighing : must(book.all<Weighing>())) ids.push_back(weighing.id.number);
    EXPECT_THAT(ids, testing::ElementsAre(7, 8, 9, 10, 9007199254740991));
}

TEST(BookCsv, NamesThatCannotBeShownAreRefusedWithTheirPlaceAndOldOnesStay) {
    BookFolder folder;
    { bookOfOneColony(folder); }
    runSql(folder / "a.larder", "UPDATE colonies SET name = 'Row' || char(10) || '2'");
    auto book = openBook(folder / "a.larder");
    EXPECT_THAT(faultsOf(book, "colonies", "yard,name\nOrchard,\"a\tb\"\nOrchard,\" \"\nOrchard,fine\n"),
                testing::ElementsAre(
                    testing::StartsWith("t.csv:2:9: colonies.name holds a control character (\\u{9}); one line of"),
                    testing::StartsWith("t.csv:3:9: colonies.name is only blanks")));
    EXPECT_TRUE(preview(book, "colonies", must(writeCsv(book, "colonies"))).edit.targets.empty());
    must(importCsv(book, preview(book, "colonies", "id,name,note\n1,\"Row\n2\",by the brook\n"), later(1), "Bo"));
    EXPECT_EQ(must(book.find(ColonyId{1}))->note, "by the brook");
}

TEST(BookCsv, AfterAClockThatWasAheadAnImportWorks) {
    BookFolder folder;
    auto book = bookOfOneColony(folder);
    for (int made = 0; made < 12; ++made) must(book.backUp(later(31536000 + made * 86400)));
    must(importCsv(book, preview(book, "weighings", "colony,date,gross_kg\nOne,2026-09-12,34\n"), later(1), "Bo"));
    EXPECT_EQ(must(book.all<Weighing>()).size(), 1u);
}

} // namespace
} // namespace winterlarder::exchange::book_csv_test
