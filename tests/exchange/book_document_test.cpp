// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"
#include "support/json_schema.h"
#include "support/odd_books.h"

#include "exchange/book/book_document.h"
#include "exchange/json/json_tree.h"

#include <cstdlib>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::exchange::book_document_test {
namespace {

using namespace book;
using namespace book::support;

std::vector<std::string> faultsOf(std::string_view text) {
    const auto read = readBook(text, "b.json", shipped());
    std::vector<std::string> faults;
    if (!read)
        for (const auto& problem : read.problems()) faults.push_back(describe(problem));
    return faults;
}

RC_GTEST_PROP(BookDocument, ImportOfAnExportIsTheSameBookAndTheSameBytes, (std::uint64_t seed)) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, seed, 2);
    const auto text = must(writeBook(book));
    auto other = newBook(folder / "b.larder");
    must(importBook(other, text, "b.json", later(1), "Bo"));
    RC_ASSERT(must(other.dump()) == must(book.dump()));
    RC_ASSERT(must(writeBook(other)) == text);
    RC_ASSERT(must(other.check()).empty());
}

TEST(BookDocument, ImportReplacesWhatWasThereAsOneStepAfterABackup) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 1);
    const auto text = must(writeBook(book));
    auto other = newBook(folder / "b.larder");
    furnish(other, 2, 3);
    const auto before = must(other.dump());
    must(importBook(other, text, "b.json", later(1), "Bo"));
    EXPECT_EQ(must(other.dump()), must(book.dump()));
    EXPECT_EQ(backupsOf(other.file()).size(), 1u);
    EXPECT_EQ(must(other.story(1)).front().verb, "import document");
    must(other.undo(later(2), "Bo"));
    EXPECT_EQ(must(other.dump()), before);
}

TEST(BookDocument, AnEmptyBookIsADocumentToo) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    const auto text = must(writeBook(book));
    EXPECT_THAT(text, testing::StartsWith("{\n\"larder\": 1,\n\"yards\": [],\n"));
    EXPECT_TRUE(must(readBook(text, "a.json", shipped())).empty());
}

TEST(BookDocument, LargeSeedsAndStrangeTextsKeepEveryDigitAndSign) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "\xF0\x9F\x90\x9D \"Row\" \\2")});
    auto noted = weighingOf({1}, day("2026-09-12"), 54.5);
    noted.note = "\xF0\x9F\x90\x9D \"Row\"\n\\2\t";
    edit(book, AddWeighing{noted});
    edit(book, AddActedAdvice{{.colony = {1},
                               .date = day("2026-09-12"),
                               .inputs = "{\"case\": 1}\n",
                               .seed = ~std::uint64_t{0},
                               .winters = 2500}});
    auto other = newBook(folder / "b.larder");
    must(importBook(other, must(writeBook(book)), "b.json", later(1), "Bo"));
    EXPECT_EQ(must(other.dump()), must(book.dump()));
    EXPECT_EQ(must(other.all<ActedAdvice>()).at(0).seed, ~std::uint64_t{0});
}

TEST(BookDocument, EveryFaultIsNamedWithItsPlace) {
    EXPECT_THAT(faultsOf("[]"), testing::ElementsAre("b.json:1:1: the document is not an object; begin it with {"));
    EXPECT_THAT(faultsOf("{}"), testing::ElementsAre("b.json:1:1: the key \"larder\" is missing; \"larder\": 1"));
    EXPECT_THAT(faultsOf("{\"larder\": 2}"),
                testing::ElementsAre("b.json:1:12: this form of document is not known; 1"));
    const auto faults = faultsOf(R"({"larder": 1,
"yards": [{"id": 1, "name": "Orchard", "site_station": "ca-halifax"}, {"id": 1, "name": ""}],
"colonies": [{"id": 1, "yard": 3, "name": "One", "boxes": [{"format": "x", "combs": 99}], "tempr": 1}],
"weighings": [{"id": 1, "colony": 1, "date": "2026-02-30", "gross_kg": "54"}],
"lokks": []})");
    EXPECT_THAT(faults,
                testing::UnorderedElementsAre(
                    testing::AllOf(testing::StartsWith("b.json:2:"), testing::HasSubstr("yards.name is empty")),
                    testing::AllOf(testing::StartsWith("b.json:2:"), testing::HasSubstr("yard 1 is there twice")),
                    testing::AllOf(testing::StartsWith("b.json:3:"), testing::HasSubstr("hive.boxes.combs is 99")),
                    testing::AllOf(testing::StartsWith("b.json:3:"), testing::HasSubstr("unknown key \"tempr\"")),
                    testing::AllOf(testing::StartsWith("b.json:4:"), testing::HasSubstr("\"2026-02-30\"")),
                    testing::AllOf(testing::StartsWith("b.json:4:"), testing::HasSubstr("\"gross_kg\" is a text")),
                    testing::AllOf(testing::StartsWith("b.json:5:"), testing::HasSubstr("did you mean \"looks\"?")),
                    testing::AllOf(testing::StartsWith("b.json:3:"), testing::HasSubstr("there is no yard 3"))));
}

TEST(BookDocument, NumbersNoEntryCanHaveAreRefusedWithTheirPlace) {
    for (const std::string number :
         {"9007199254740992", "9007199254740993", "9223372036854775807", "1e300", "0", "-1"}) {
        const auto faults = faultsOf("{\"larder\": 1,\n\"yards\": [{\"id\": " + number +
                                     ", \"name\": \"Orchard\", \"site_station\": \"ca-halifax\"}]}");
        EXPECT_THAT(faults, testing::ElementsAre(testing::StartsWith("b.json:2:18: "))) << number;
    }
    EXPECT_THAT(
        faultsOf(
            "{\"larder\": 1,\n\"yards\": [{\"id\": 9007199254740991, \"name\": \"Orchard\", \"site_station\": \"ca-halifax\"}]}"),
        testing::IsEmpty());
}

TEST(BookDocument, NamesThatCannotBeShownAreRefusedWithTheirPlace) {
    EXPECT_THAT(
        faultsOf(
            "{\"larder\": 1,\n\"yards\": [{\"id\": 1, \"name\": \"Orch\\u001bard\", \"site_station\": \"ca-halifax\"}]}"),
        testing::ElementsAre(
            "b.json:2:29: yards.name holds a control character (\\u{1b}); one line of letters, digits, blanks and signs"));
}

//! A book of somebody else may hold such numbers: what is written is then exactly what it holds, and is not read again.
TEST(BookDocument, ANumberOfNoBookIsWrittenWithEveryDigit) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
    }
    runSql(folder / "a.larder", "UPDATE yards SET id = 9223372036854775807");
    auto strange = openBook(folder / "a.larder", OpenFor::Reading);
    const auto text = must(writeBook(strange));
    EXPECT_THAT(text, testing::HasSubstr("{\"id\":9223372036854775807,"));
    EXPECT_THAT(faultsOf(text), testing::ElementsAre(testing::HasSubstr("\"id\"")));
}

TEST(BookDocument, AFaultyDocumentChangesNothing) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 1);
    const auto before = must(book.dump());
    EXPECT_FALSE(importBook(book, R"({"larder": 1, "yards": [{"id": 1}]})", "b.json", later(1), "Bo"));
    EXPECT_FALSE(
        importBook(book, R"({"larder": 1, "yards": [{"id": 1, "name": "no place"}]})", "b.json", later(1), "Bo"));
    EXPECT_EQ(must(book.dump()), before);
}

std::string shippedSchema() { return bytesOf(SOURCE_FOLDER "/shared/reference/book.schema.json"); }

TEST(BookSchema, TheShippedFileIsThatOfTheEntries) {
    const auto ofTheEntries = bookSchema(shipped().fields);
    if (const char* update = std::getenv("WINTERLARDER_UPDATE_GOLDEN"); update && *update == '1')
        writeBytes(SOURCE_FOLDER "/shared/reference/book.schema.json", ofTheEntries);
    EXPECT_TRUE(shippedSchema() == ofTheEntries)
        << "run this test with WINTERLARDER_UPDATE_GOLDEN=1 and look at what changes";
}

JsonValue parsed(const std::string& text) {
    auto reading = readJson(text, "text");
    if (!reading.value) throw std::runtime_error(describe(reading.problems.front()));
    return std::move(*reading.value);
}

RC_GTEST_PROP(BookSchema, EveryBookWrittenMeetsIt, (std::uint64_t seed)) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, seed, 2);
    const auto faults = schemaFaults(parsed(must(writeBook(book))), parsed(shippedSchema()));
    if (!faults.empty()) RC_FAIL(faults.front());
}

TEST(BookSchema, WhatIsNoBookDoesNotMeetIt) {
    const auto schema = parsed(shippedSchema());
    for (
        const char* wrong :
        {"{}", "{\"larder\": 2}", "{\"larder\": 1, \"lokks\": []}", "{\"larder\": 1, \"looks\": {}}",
         "{\"larder\": 1, \"yards\": [{\"id\": 0, \"name\": \"a\"}]}", "{\"larder\": 1, \"yards\": [{\"id\": 1}]}",
         "{\"larder\": 1, \"moves\": [{\"id\": 1, \"colony\": 1, \"yard\": 1, \"date\": \"tomorrow\"}]}",
         "{\"larder\": 1, \"looks\": [{\"id\": 1, \"colony\": 1, \"date\": \"2026-09-12\", \"combs\": [{\"capped\": 2}]}]}"})
        EXPECT_FALSE(schemaFaults(parsed(wrong), schema).empty()) << wrong;
}

} // namespace
} // namespace winterlarder::exchange::book_document_test
