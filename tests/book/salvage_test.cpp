// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"

#include "book/salvage.h"

#include <gmock/gmock.h>

namespace {

using namespace winterlarder;
using namespace winterlarder::book;
using namespace winterlarder::book::support;

//! A book with 400 looks, and its dump.
std::string fill(const std::filesystem::path& file) {
    auto book = newBook(file);
    furnish(book, 4);
    Together many{"many", {}};
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

} // namespace
