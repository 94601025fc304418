// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"
#include "support/odd_books.h"

#include "book/salvage.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace winterlarder::book::salvage_test {
namespace {

using namespace support;
namespace files = std::filesystem;

//! A book with 400 looks, and its dump.
std::string fill(const std::filesystem::path& file) {
    auto book = newBook(file);
    furnish(book, 4);
    EditGroup many{"many", {}};
    for (int made = 0; made < 400; ++made) {
        auto look = lookAt({1}, day("2026-05-01").plusDays(made % 100));
        look.note = std::string(120, 'n');
        many.edits.emplace_back(AddLook{look});
    }
    must(book.apply(many, later(1), "Ada"));
    return must(book.dump());
}

TEST(Salvage, ASoundBookComesThroughWhole) {
    BookFolder folder;
    const auto dump = fill(folder / "a.larder");
    const auto salvaged = must(salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener));
    EXPECT_THAT(salvaged.lost, testing::IsEmpty());
    auto book = openBook(folder / "b.larder");
    EXPECT_EQ(must(book.dump()), dump);
    EXPECT_EQ(must(book.story(5)).size(), 1u);
    EXPECT_EQ(must(book.story(5)).front().verb, "salvage");
}

TEST(Salvage, AnUnreadablePageCostsWhatIsOnItAndIsNamed) {
    BookFolder folder;
    fill(folder / "a.larder");
    auto bytes = bytesOf(folder / "a.larder");
    const auto page = bytes.find(std::string(120, 'n')) / 4096;
    ASSERT_GT(page, 1u);
    bytes.replace(page * 4096, 4096, std::string(4096, '\x55'));
    writeBytes(folder / "a.larder", bytes);
    const auto salvaged = must(salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener));
    EXPECT_THAT(salvaged.lost, testing::Contains(testing::MatchesRegex("looks: numbers .* cannot be read")));
    auto book = openBook(folder / "b.larder");
    const auto looks = must(book.all<Look>()).size();
    EXPECT_GT(looks, 340u);
    EXPECT_LT(looks, 403u);
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
}

TEST(Salvage, ATruncatedFileGivesItsBeginning) {
    BookFolder folder;
    fill(folder / "a.larder");
    auto bytes = bytesOf(folder / "a.larder");
    bytes.resize(bytes.size() * 3 / 4 + 100);
    writeBytes(folder / "a.larder", bytes);
    ASSERT_FALSE(Book::open(folder / "a.larder", shipped(), opening()));
    const auto salvaged = must(salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener));
    EXPECT_FALSE(salvaged.lost.empty());
    auto book = openBook(folder / "b.larder");
    EXPECT_GT(must(book.all<Look>()).size(), 50u);
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
}

TEST(Salvage, ADestroyedHeaderIsWrittenAnew) {
    BookFolder folder;
    const auto dump = fill(folder / "a.larder");
    auto bytes = bytesOf(folder / "a.larder");
    bytes.replace(0, 100, std::string(100, '\0'));
    writeBytes(folder / "a.larder", bytes);
    const auto salvaged = must(salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener));
    EXPECT_THAT(salvaged.lost, testing::IsEmpty());
    EXPECT_EQ(must(openBook(folder / "b.larder").dump()), dump);
}

TEST(Salvage, WhatIsNoBookGivesNothingAndNoBookIsOverwritten) {
    BookFolder folder;
    writeBytes(folder / "a.larder", std::string(20000, 'x'));
    const auto nothing = salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener);
    ASSERT_FALSE(nothing);
    EXPECT_THAT(nothing.problems().at(0).detail, testing::StartsWith("nothing could be salvaged"));
    EXPECT_FALSE(std::filesystem::exists(folder / "b.larder"));
    fill(folder / "c.larder");
    const auto before = bytesOf(folder / "c.larder");
    EXPECT_FALSE(salvage(folder / "c.larder", folder / "c.larder", shipped(), opening().opener));
    EXPECT_EQ(bytesOf(folder / "c.larder"), before);
}

TEST(Salvage, EntriesOfNoBooksNumberAreLostAndNamed) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
        edit(book, AddColony{colonyIn({1}, "One")});
        for (int number = 0; number < 5; ++number)
            edit(book, AddWeighing{weighingOf({1}, day("2026-09-10"), 50 + number)});
    }
    runSql(folder / "a.larder", "UPDATE weighings SET id = -3 WHERE id = 2; UPDATE weighings SET id = 0 WHERE id = 3; "
                                "UPDATE weighings SET id = 9007199254740992 WHERE id = 4");
    const auto salvaged = must(salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener));
    EXPECT_THAT(salvaged.lost, testing::UnorderedElementsAre("weighing -3 is lost", "weighing 0 is lost",
                                                             "weighing 9007199254740992 is lost"));
    auto book = openBook(folder / "b.larder");
    std::vector<std::int64_t> ids;
    for (const auto& weighing : must(book.all<Weighing>())) ids.push_back(weighing.id.number);
    EXPECT_THAT(ids, testing::ElementsAre(1, 5));
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
}

TEST(Salvage, PagesOfAnySizeAreReadAlsoWithoutTheHeader) {
    for (const int size : {512, 2048, 65536})
        for (const bool headerDestroyed : {false, true}) {
            SCOPED_TRACE(fmt::format("{} {}", size, headerDestroyed));
            BookFolder folder;
            const auto dump = fill(folder / "a.larder");
            runSql(folder / "a.larder", fmt::format("PRAGMA page_size = {}; VACUUM", size));
            ASSERT_EQ(must(openBook(folder / "a.larder", OpenFor::Reading).dump()), dump) << "such a book is a book";
            if (headerDestroyed) {
                auto bytes = bytesOf(folder / "a.larder");
                bytes.replace(0, 100, std::string(100, '\0'));
                writeBytes(folder / "a.larder", bytes);
            }
            const auto salvaged = must(salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener));
            EXPECT_THAT(salvaged.lost, testing::IsEmpty());
            EXPECT_EQ(must(openBook(folder / "b.larder").dump()), dump);
        }
}

TEST(Salvage, AFileMostlyOfNothingIsJudgedBeforeItIsCopied) {
    BookFolder folder(BUILD_FOLDER); // where files may have holes
    writeBytes(folder / "a.larder", "nothing of a book");
    files::resize_file(folder / "a.larder", std::uintmax_t{200} << 30);
    const auto refused = salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problems().front().detail, "nothing could be salvaged: it holds no table of a book");
    EXPECT_FALSE(files::exists(folder / "b.larder.salvage"));
    EXPECT_FALSE(files::exists(folder / "b.larder"));
}

TEST(Salvage, HolesOfABookStayHoles) {
    BookFolder folder(BUILD_FOLDER);
    const auto dump = fill(folder / "a.larder");
    files::resize_file(folder / "a.larder", std::uintmax_t{200} << 30);
    const auto salvaged = must(salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener));
    EXPECT_EQ(must(openBook(folder / "b.larder").dump()), dump);
}

TEST(Salvage, NamesNoEntryMayHaveAreKeptAsTheyAreShown) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
        for (const char* name : {"One", "Two"}) edit(book, AddColony{colonyIn({1}, name)});
    }
    runSql(
        folder / "a.larder",
        "UPDATE colonies SET name = char(27) || '[2JRow' || char(10) || '2' WHERE id = 1; UPDATE colonies SET name = '  ' WHERE id = 2");
    const auto salvaged = must(salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener));
    EXPECT_EQ(salvaged.lost.size(), 2u);
    auto book = openBook(folder / "b.larder");
    EXPECT_EQ(must(book.find(ColonyId{1}))->name, "\\u{1b}[2JRow\\u{a}2");
    EXPECT_EQ(must(book.find(ColonyId{2}))->name, "colony 2");
}

} // namespace
} // namespace winterlarder::book::salvage_test
