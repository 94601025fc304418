// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "text/step_words.h"

#include <QSignalSpy>

namespace winterlarder::desk {

using invented::BookDesk;
using invented::colony;

namespace {

const std::vector<book::CombRecord>& combsOf(const book::ColonyCase& record) {
    return std::get<std::vector<book::CombRecord>>(record.combs);
}

} // namespace

TEST_F(BookDesk, AnEditIsShownAtOnceAndIsOnDiskSoonAfter) {
    open({colony("A")});
    auto comb = combsOf(first().record)[1];
    comb.capped = 0.55;
    yard.changeComb(first().id, 1, comb);
    EXPECT_EQ(combsOf(first().record)[1].capped, 0.55) << "before the disk has answered";
    EXPECT_TRUE(first().pending);
    settle();
    EXPECT_EQ(combsOf(first().record)[1].capped, 0.55);
    EXPECT_EQ(onDisk(), first().record);
    EXPECT_EQ(text::stepName(*book.state()->undo, {}).toStdString(), "comb 2: capped 55 %");
}

TEST_F(BookDesk, NewEntriesBeginWithTheDayAskedForAndTodayBeforeAnythingIsOpen) {
    EXPECT_EQ(yard.entryDay(), book.today());
    open({colony("A")});
    yard.showDay(invented::day("2026-09-01"));
    EXPECT_EQ(yard.entryDay(), invented::day("2026-09-01"));
}

TEST_F(BookDesk, UndoAndRedoGoThroughTheBook) {
    open({colony("A")});
    const auto before = first().record;
    auto look = yard.lookToEdit(first().id);
    look.bees.coveredCombs = 4.5;
    yard.writeLook(look);
    settle();
    const auto after = first().record;
    EXPECT_EQ(after.bees.coveredCombs, 4.5);
    book.undo();
    settle();
    EXPECT_EQ(first().record, before);
    EXPECT_EQ(onDisk(), before);
    ASSERT_TRUE(book.state()->redo.has_value());
    book.redo();
    settle();
    EXPECT_EQ(first().record, after);
}

TEST_F(BookDesk, ManyQuickEditsEndWithTheLastAndAreOneStep) {
    open({colony("A")});
    const auto before = first().record;
    for (int share = 36; share <= 55; ++share) {
        auto comb = combsOf(first().record)[1];
        comb.capped = share / 100.0;
        yard.changeComb(first().id, 1, comb);
        EXPECT_EQ(combsOf(first().record)[1].capped, share / 100.0) << "an older state never comes back";
        QTest::qWait(share % 3);
    }
    settle();
    EXPECT_EQ(combsOf(first().record)[1].capped, 0.55);
    book.undo();
    settle();
    EXPECT_EQ(first().record, before);
}

TEST_F(BookDesk, UndoWorksAfterTheBookWasClosedAndOpenedAgain) {
    open({colony("A")});
    const auto before = first().record;
    auto comb = combsOf(before)[0];
    comb.brood = 0.05;
    yard.changeComb(first().id, 0, comb);
    settle();
    book.close();
    settle();
    EXPECT_TRUE(yard.colonies().empty());
    book.open(file());
    settle();
    ASSERT_EQ(yard.colonies().size(), 1U);
    ASSERT_TRUE(book.state()->undo.has_value());
    book.undo();
    settle();
    EXPECT_EQ(first().record, before);
}

TEST_F(BookDesk, WhatTheBookRefusesIsTakenBackAndSaid) {
    open({colony("A")});
    const auto before = first().record;
    QSignalSpy refused(&book, &OpenBook::refused);
    auto comb = combsOf(before)[0];
    comb.capped = 1.5;
    yard.changeComb(first().id, 0, comb);
    settle();
    EXPECT_EQ(refused.count(), 1);
    EXPECT_EQ(first().record, before);
    EXPECT_EQ(onDisk(), before);
}

TEST_F(BookDesk, WhatIsAddedAndAtOnceChangedIsOneEntry) {
    open({colony("A")});
    yard.showDay(invented::day("2026-12-20")); // the look of September is too old by then
    settle();
    ASSERT_FALSE(first().record.lookedOn);
    for (const double combs : {4.0, 4.5, 5.0}) {
        auto look = yard.lookToEdit(first().id);
        look.bees.coveredCombs = combs;
        yard.writeLook(look);
        EXPECT_EQ(first().record.bees.coveredCombs, combs) << "before the disk has answered";
        EXPECT_EQ(first().record.lookedOn, yard.asOf());
    }
    const auto shown = first().record;
    settle();
    EXPECT_EQ(first().record, shown);
    const auto& looks = yard.records(first().id)->looks;
    ASSERT_EQ(looks.size(), 2U) << "the look of September and one of today";
    EXPECT_EQ(looks.back().bees.coveredCombs, 5.0);
    EXPECT_GT(looks.back().id.number, 0) << "the book's number";
}

TEST_F(BookDesk, WhatIsShownOfAnEditIsWhatTheBookThenHolds) {
    open({colony("A")});
    auto look = yard.lookToEdit(first().id);
    look.date = invented::day("2026-09-13");
    look.moisturePercent = 17.5;
    yard.writeLook(look);
    yard.writeWeighing(
        {.colony = first().id, .weighing = {invented::day("2026-09-14"), book::ScaleReading{kilograms(52)}}});
    const auto shown = first().record;
    ASSERT_FALSE(shown.weighings.empty());
    const auto history = *yard.records(first().id);
    int changed = 0;
    yard.onChange(&yard, {YardChange::Record}, [&changed] { ++changed; });
    settle();
    EXPECT_EQ(onDisk(), shown);
    EXPECT_EQ(changed, 0) << "nothing has to be answered twice";
    auto read = *yard.records(first().id);
    ASSERT_EQ(read.weighings.size(), history.weighings.size());
    for (std::size_t i = 0; i < read.weighings.size(); ++i)
        read.weighings[i].id = history.weighings[i].id; // the book's numbers
    EXPECT_EQ(read, history);
}

TEST_F(BookDesk, AChangeByAnotherProgramIsNoticed) {
    { auto made = invented::bookOf(file(), {colony("A"), colony("B")}); }
    book.open(file(), book::OpenFor::Reading);
    settle();
    ASSERT_EQ(yard.colonies().size(), 2U);
    EXPECT_FALSE(yard.writable());
    auto other = book::Book::open(file().toStdString(), *invented::shipped(), {invented::scribe("other").opener()});
    ASSERT_TRUE(other.ok());
    ASSERT_TRUE(other->apply(book::SingleEdit(book::RemoveColony{{2}}), {1789000100}, "other").ok());
    book.lookForChanges();
    settle();
    ASSERT_EQ(yard.colonies().size(), 1U);
    EXPECT_EQ(first().record.colony, "A");
}

TEST_F(BookDesk, OpenElsewhereIsReadOnlyAndEditsNothing) {
    auto other = invented::bookOf(file(), {colony("A")});
    book.open(file());
    settle();
    ASSERT_TRUE(book.isOpen());
    EXPECT_EQ(book.state()->access, book::Access::OpenElsewhere);
    EXPECT_EQ(book.state()->holder.who, "keeper");
    yard.look(first().id);
    settle();
    const auto before = first().record;
    auto comb = combsOf(before)[0];
    comb.capped = 0.1;
    yard.changeComb(first().id, 0, comb);
    settle();
    EXPECT_EQ(first().record, before);
}

TEST_F(BookDesk, AFileThatIsNoBookLeavesTheOneAtHandOpen) {
    open({colony("A")});
    QFile wrong(file("wrong.larder"));
    ASSERT_TRUE(wrong.open(QIODevice::WriteOnly));
    wrong.write("not a book at all, only a few words that say so and nothing else");
    wrong.close();
    QSignalSpy failed(&book, &OpenBook::openFailed);
    book.open(wrong.fileName());
    settle();
    ASSERT_EQ(failed.count(), 1);
    EXPECT_TRUE(failed[0][2].toBool()) << "salvage is offered";
    EXPECT_TRUE(book.isOpen());
    EXPECT_EQ(yard.colonies().size(), 1U);
}

TEST_F(BookDesk, ADayBeforeTheLookKnowsNothingOfIt) {
    open({colony("A")});
    yard.showDay(invented::day("2026-09-01"));
    settle();
    EXPECT_TRUE(std::holds_alternative<std::monostate>(first().record.combs));
    EXPECT_EQ(yard.asOf(), invented::day("2026-09-01"));
}

TEST_F(BookDesk, ColoniesOfOtherYardsStandInTheirs) {
    auto elsewhere = colony("C");
    elsewhere.yard = "Far away";
    book.create(file(), [=](book::YardId yards, book::ColonyId colonies) {
        return entriesOfCases({colony("A"), elsewhere}, yards, colonies);
    });
    settle();
    ASSERT_EQ(yard.yards().size(), 2U);
    ASSERT_EQ(yard.colonies().size(), 1U);
    yard.showYard(yard.yards()[1].id);
    settle();
    ASSERT_EQ(yard.colonies().size(), 1U);
    EXPECT_EQ(first().record.colony, "C");
    EXPECT_EQ(yard.title(), QStringLiteral("Far away"));
}

TEST(CasesAsEntries, TheDemoYardComesBackFromItsBook) {
    const QTemporaryDir folder;
    const auto cases = invented::demoYard();
    ASSERT_EQ(cases.size(), 6U);
    auto book = invented::bookOf(folder.filePath(QStringLiteral("demo.larder")), cases);
    const auto yards = book.all<book::Yard>();
    ASSERT_TRUE(yards.ok());
    std::int64_t id = 0;
    for (const auto& wanted : cases) {
        const auto found = book::caseOf(book, {++id}, wanted.asOf);
        ASSERT_TRUE(found.ok());
        auto expected = wanted;
        if (!expected.lookedOn && found->lookedOn) expected.lookedOn = expected.asOf;
        EXPECT_EQ(*found, expected) << *wanted.colony;
    }
}

} // namespace winterlarder::desk
