// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/surroundings.h"

#include "support/book_folder.h"

#include <gtest/gtest.h>

namespace winterlarder::answer::surroundings_test {
namespace {

using namespace book::support;

class SurroundingsOfABook : public ::testing::Test {
protected:
    BookFolder folder;
    book::Book book = newBook(folder / "a.larder");
    book::ColonyId colony;

    void SetUp() override {
        edit(book, book::AddYard{orchard()});
        colony = *edit(book, book::AddColony{colonyIn({1}, "Russet")}).added<book::Colony>();
        edit(book, book::AddLook{lookAt(colony, day("2026-09-10"))});
        edit(book, book::AddWeighing{weighingOf(colony, day("2026-09-10"), 54)});
    }
};

TEST_F(SurroundingsOfABook, AreTheColonysHistoryWhereItStandsNow) {
    auto south = orchard();
    south.name = "South";
    south.site.where = std::string("nz-christchurch");
    const auto yard = *edit(book, book::AddYard{south}).added<book::Yard>();
    edit(book, book::AddMove{book::Move{.colony = colony, .date = day("2026-11-01"), .yard = yard}});
    const auto known = must(surroundingsOf(book, colony));
    const auto history = must(book::historyOf(book, colony));
    EXPECT_EQ(known.site, south.site);
    EXPECT_EQ(known.colony, history.colony);
    EXPECT_EQ(known.looks, history.looks);
    EXPECT_EQ(known.weighings, history.weighings);
    EXPECT_TRUE(must(surroundingsOf(book, book::ColonyId{})).looks.empty()) << "of a colony still to be added";
    EXPECT_FALSE(surroundingsOf(book, book::ColonyId{77}));
}

TEST_F(SurroundingsOfABook, TakeAnEntryInPlaceOfTheOneOfItsNumber) {
    auto known = must(surroundingsOf(book, colony));
    auto seen = known.looks.front();
    seen.note = "seen again";
    put(known, seen);
    ASSERT_EQ(known.looks.size(), 1U);
    EXPECT_EQ(known.looks.front().note, "seen again");
    seen.id = {-1};
    put(known, seen);
    EXPECT_EQ(known.looks.size(), 2U);
    put(known, book::Sighting{.colony = colony, .date = day("2026-12-10")});
    EXPECT_EQ(known.looks.size() + known.weighings.size(), 3U) << "nothing is held against a glance";
}

} // namespace
} // namespace winterlarder::answer::surroundings_test
