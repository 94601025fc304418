// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"

#include "book/file/migrations.h"
#include "book/file/store.h"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>

//! Books of other releases: older schemas, other limits, and the sample every released version keeps in tests/book/versions.
namespace winterlarder::book::migration_test {
namespace {

using namespace support;
namespace files = std::filesystem;

const std::string versionFolder = SOURCE_FOLDER "/tests/book/versions/";

std::string sampleName(int version, const char* extension) {
    return versionFolder + std::to_string(version) + extension;
}

class EveryVersion : public testing::TestWithParam<int> {};

TEST_P(EveryVersion, LoadsAndComesOutAsItsCanonicalText) {
    BookFolder folder;
    files::copy_file(sampleName(GetParam(), ".larder"), folder / "a.larder");
    const auto text = bytesOf(sampleName(GetParam(), ".txt"));
    ASSERT_GT(text.size(), 1000u);
    { EXPECT_EQ(must(openBook(folder / "a.larder", OpenFor::Reading).dump()), text) << "read only"; }
    auto book = openBook(folder / "a.larder");
    ASSERT_TRUE(book.writable());
    EXPECT_EQ(must(book.dump()), text);
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
    while (book.canUndo()) must(book.undo(later(1), "Ada"));
    EXPECT_EQ(must(book.dump()), "") << "its history is still that of all of it";
}

INSTANTIATE_TEST_SUITE_P(Released, EveryVersion, testing::Range(1, schemaVersion + 1));

//! Run by hand when a version is about to be released: --gtest_also_run_disabled_tests --gtest_filter=*WriteTheSample*
TEST(Versions, DISABLED_WriteTheSampleOfThisVersion) {
    const auto name = sampleName(schemaVersion, ".larder");
    ASSERT_FALSE(files::exists(name)) << "released samples never change";
    auto book = newBook(name);
    furnish(book, 1, 3);
    writeBytes(sampleName(schemaVersion, ".txt"), must(book.dump()));
}

// Ids of a calendar are made of it: it stays what it is, and no two books share it.
TEST(BookMark, IsDrawnOnceAndKeptByCopies) {
    BookFolder folder;
    std::string mark;
    {
        auto book = newBook(folder / "a.larder");
        mark = must(book.info()).mark;
        EXPECT_EQ(mark.size(), 32u);
        EXPECT_NE(must(newBook(folder / "b.larder").info()).mark, mark) << "the same maker at the same moment";
        edit(book, AddYard{orchard()});
        must(book.copyTo(folder / "copy.larder"));
    }
    EXPECT_EQ(must(openBook(folder / "a.larder", OpenFor::Reading).info()).mark, mark);
    EXPECT_EQ(must(openBook(folder / "copy.larder").info()).mark, mark);
}

TEST(BookMark, ABookOfBeforeHasNoneWhetherReadOrBroughtUpToDate) {
    BookFolder folder;
    files::copy_file(sampleName(3, ".larder"), folder / "a.larder");
    const auto before = must(openBook(folder / "a.larder", OpenFor::Reading).info());
    EXPECT_EQ(before.mark, "");
    EXPECT_TRUE(before.madeAt);
    auto book = openBook(folder / "a.larder");
    EXPECT_EQ(must(book.info()).mark, "");
    EXPECT_EQ(must(book.info()).madeAt, before.madeAt) << "what its calendar's ids were made of";
}

const std::vector<SchemaPart>& ours() {
    static const auto parts = schemaOf(limits());
    return parts;
}

TEST(Migration, CarriesEverythingOverAndEndsInExactlyTheSchemaOfToday) {
    BookFolder folder;
    std::string text;
    {
        auto book = newBook(folder / "a.larder");
        furnish(book, 9);
        text = must(book.dump());
    }
    { // as an imagined older release would have made it
        SQLite::Database older((folder / "a.larder").string(), SQLite::OPEN_READWRITE);
        older.exec(
            "ALTER TABLE looks RENAME COLUMN temper TO mood; ALTER TABLE yards DROP COLUMN bag_kg; DROP TABLE step_changes; PRAGMA user_version = 0");
    }
    {
        Store store(folder / "a.larder", OpenMode::Write);
        const auto lastLook = store.lastId(Kind::Look);
        migrate(store, 0, {{0, {"ALTER TABLE looks RENAME COLUMN mood TO temper"}}}, ours());
        EXPECT_TRUE(compareSchema(store.schema(), ours()).exactly);
        EXPECT_EQ(store.number("PRAGMA user_version"), 1);
        EXPECT_EQ(store.lastId(Kind::Look), lastLook) << "numbers are still never given twice";
        EXPECT_EQ(store.number("PRAGMA foreign_keys"), 1);
    }
    auto book = openBook(folder / "a.larder");
    std::string expected;
    for (std::size_t at = 0, end; at < text.size(); at = end + 1) {
        end = text.find('\n', at);
        if (!text.substr(at, end - at).starts_with("bag_kg ")) expected += text.substr(at, end - at + 1);
    }
    EXPECT_EQ(must(book.dump()), expected);
    edit(book, AddYard{orchard()});
}

TEST(Migration, AllOrNothing) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        furnish(book, 9);
    }
    const auto before = bytesOf(folder / "a.larder");
    {
        Store store(folder / "a.larder", OpenMode::Write);
        EXPECT_ANY_THROW(migrate(store, 1, {{1, {"UPDATE looks SET date = 'never'"}}}, ours()));
        EXPECT_ANY_THROW(migrate(store, 1, {{1, {"CREATE TABLE more (a)"}}}, ours()));
        EXPECT_ANY_THROW(migrate(store, 1, {{1, {"DELETE FROM yards"}}}, ours()));
        EXPECT_EQ(store.number("PRAGMA user_version"), schemaVersion);
    }
    EXPECT_EQ(bytesOf(folder / "a.larder"), before);
}

ReferenceData withHeavierHives() {
    auto data = shipped();
    for (auto& field : data.fields)
        if (field.name == "weighings.gross_kg") field.maximum = 612.5;
    return data;
}

TEST(Migration, LimitsOfAnotherReleaseBecomeThoseOfTodayAfterABackup) {
    BookFolder folder;
    const auto other = withHeavierHives();
    std::string text;
    {
        auto book = must(Book::create(folder / "a.larder", other, opening()));
        edit(book, AddYard{orchard()});
        edit(book, AddColony{colonyIn({1}, "One")});
        edit(book, AddWeighing{weighingOf({1}, day("2026-09-10"), 54.5)});
        text = must(book.dump());
    }
    EXPECT_EQ(must(openBook(folder / "a.larder", OpenFor::Reading).dump()), text) << "only read, it is left alone";
    auto book = openBook(folder / "a.larder");
    EXPECT_THAT(book.notices(), testing::ElementsAre(testing::HasSubstr("brought up to date")));
    EXPECT_EQ(backupsOf(book.file()).size(), 1u);
    EXPECT_EQ(must(book.dump()), text);
    EXPECT_FALSE(book.apply(SingleEdit(AddWeighing{weighingOf({1}, day("2026-09-11"), 600)}), morning, "Ada"));
    must(book.undo(later(1), "Ada"));
    EXPECT_TRUE(must(book.all<Weighing>()).empty()) << "the history came along";
}

TEST(Migration, WhatDoesNotMeetTheLimitsOfTodayKeepsItsOwn) {
    BookFolder folder;
    const auto other = withHeavierHives();
    {
        auto book = must(Book::create(folder / "a.larder", other, opening()));
        edit(book, AddYard{orchard()});
        edit(book, AddColony{colonyIn({1}, "One")});
        edit(book, AddWeighing{weighingOf({1}, day("2026-09-10"), 600)});
    }
    auto book = openBook(folder / "a.larder");
    EXPECT_THAT(book.notices(), testing::ElementsAre(testing::HasSubstr("keeps its older limits")));
    EXPECT_EQ(must(book.all<Weighing>()).size(), 1u);
    edit(book, AddWeighing{weighingOf({1}, day("2026-09-11"), 60)});
}

} // namespace
} // namespace winterlarder::book::migration_test
