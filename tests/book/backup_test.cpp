// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/failing_disk.h"
#include "support/furnished_book.h"

#include <gmock/gmock.h>

namespace winterlarder::book::backup_test {
namespace {

using namespace support;
namespace files = std::filesystem;
constexpr std::int64_t aDay = 86400;

TEST(Backup, TheFirstEditOfADayIsPrecededByOneAndTheLastTenAreKept) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    EXPECT_TRUE(backupsOf(book.file()).empty()) << "nothing was in the book before its first edit";
    for (int day = 1; day <= 13; ++day)
        for (int more = 0; more < 3; ++more)
            must(book.apply(SingleEdit(AddYard{orchard()}), later(day * aDay + more), "Ada"));
    const auto backups = backupsOf(book.file());
    ASSERT_EQ(backups.size(), backupsKept);
    EXPECT_EQ(backups.front().at, later(13 * aDay));
    EXPECT_EQ(backups.back().at, later(4 * aDay));
    auto yesterday = openBook(backups.front().file, OpenFor::Reading);
    EXPECT_EQ(must(yesterday.all<Yard>()).size(), 1u + 12 * 3) << "as it was before the day's first edit";
    EXPECT_THAT(must(yesterday.check()), testing::IsEmpty());
}

TEST(Backup, MoreThanTenWithinASecondKeepTheNewest) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    for (int made = 1; made <= 25; ++made) {
        edit(book, AddYard{orchard()});
        const auto backup = must(book.backUp(morning));
        EXPECT_EQ(backupsOf(book.file()).front().file, backup.file) << made;
    }
    ASSERT_EQ(backupsOf(book.file()).size(), backupsKept);
    EXPECT_EQ(must(openBook(backupsOf(book.file()).back().file, OpenFor::Reading).all<Yard>()).size(), 16u);
}

TEST(Backup, ADayIsADayAcrossRestarts) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
        must(book.apply(SingleEdit(AddYard{orchard()}), later(aDay), "Ada"));
    }
    auto book = openBook(folder / "a.larder");
    must(book.apply(SingleEdit(AddYard{orchard()}), later(aDay + 60), "Ada"));
    EXPECT_EQ(backupsOf(book.file()).size(), 1u);
}

TEST(Backup, RestoringOneIsAStepLikeAnyOther) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 7);
    const auto then = must(book.dump());
    const auto backup = must(book.backUp(later(100)));
    Dice dice(8);
    for (int made = 0; made < 15; ++made) applySome(book, dice, later(200 + made));
    const auto now = must(book.dump());
    ASSERT_NE(now, then);
    const auto applied = must(book.restore(backup.file, later(300), "Ada"));
    EXPECT_EQ(must(book.dump()), then);
    EXPECT_EQ(must(book.story(1)).front().verb, "restore backup");
    must(book.undo(later(400), "Ada"));
    EXPECT_EQ(must(book.dump()), now);
    must(book.redo(later(500), "Ada"));
    EXPECT_EQ(must(book.dump()), then);
    EXPECT_EQ(backupsOf(book.file()).front().at, later(300)) << "what was there before the restore is backed up";
    EXPECT_FALSE(book.restore(folder / "nothing.larder", later(600), "Ada"));
}

TEST(Backup, ADamagedOneIsNotRestored) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 7);
    const auto backup = must(book.backUp(later(100)));
    const auto before = must(book.dump());
    auto bytes = bytesOf(backup.file);
    bytes.resize(bytes.size() / 2);
    writeBytes(backup.file, bytes);
    EXPECT_FALSE(book.restore(backup.file, later(300), "Ada"));
    EXPECT_EQ(must(book.dump()), before);
}

TEST(Backup, ThatNoneCanBeMadeDoesNotStopTheKeeper) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    writeBytes(backupFolderOf(book.file()), "a file where the folder should be");
    const auto applied = must(book.apply(SingleEdit(AddYard{orchard()}), later(aDay), "Ada"));
    ASSERT_EQ(applied.notices.size(), 1u);
    EXPECT_THAT(applied.notices[0], testing::HasSubstr("no backup could be made"));
    EXPECT_EQ(must(book.all<Yard>()).size(), 2u);
}

TEST(Backup, ACopyIsOneCompactFileWithEverything) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 7, 4);
    for (const auto& look : must(book.all<Look>())) edit(book, RemoveLook{look.id});
    must(book.copyTo(folder / "copy.larder"));
    EXPECT_FALSE(book.copyTo(folder / "copy.larder")) << "never over a file";
    auto copy = openBook(folder / "copy.larder");
    EXPECT_EQ(must(copy.dump()), must(book.dump()));
    EXPECT_EQ(must(copy.story(1000)).size(), must(book.story(1000)).size()) << "the story goes along";
    EXPECT_LE(files::file_size(folder / "copy.larder"), files::file_size(folder / "a.larder"));
    edit(book, AddYard{orchard()});
    EXPECT_THAT(must(copy.check()), testing::IsEmpty());
}

//! A book whose clock was a year ahead for twelve days.
Book bookAhead(const files::path& file) {
    auto book = newBook(file);
    edit(book, AddYard{orchard()});
    for (int made = 1; made <= 12; ++made)
        must(book.apply(SingleEdit(AddYard{orchard()}), later((365 + made) * aDay), "Ada"));
    return book;
}

TEST(Backup, AfterAClockThatWasAheadTheNewOnesStayAndTheOthersGo) {
    BookFolder folder;
    auto book = bookAhead(folder / "a.larder");
    ASSERT_EQ(backupsOf(book.file()).size(), backupsKept);
    std::vector<files::path> made;
    for (int day = 1; day <= 12; ++day) {
        const auto applied = must(book.apply(SingleEdit(AddYard{orchard()}), later(day * aDay), "Ada"));
        EXPECT_EQ(applied.notices.size(), day == 1 ? 1u : 0u) << "said once";
        if (day == 1)
            EXPECT_THAT(applied.notices.at(0),
                        testing::HasSubstr("9 of the backups are dated ahead of now, the last 2027-09-24T08:00:00Z"));
        made.push_back(must(book.backUp(later(day * aDay + 60))).file);
        EXPECT_TRUE(files::exists(made.back())) << day;
        const auto there = backupsOf(book.file());
        EXPECT_EQ(there.size(), backupsKept);
        EXPECT_EQ(
            std::count_if(there.begin(), there.end(), [](const Backup& one) { return one.at > later(365 * aDay); }),
            std::max(0, 10 - 2 * day))
            << day;
    }
    EXPECT_FALSE(files::exists(made.front()));
}

TEST(Backup, AfterAClockThatWasAheadADayStillHasOneAcrossRestarts) {
    BookFolder folder;
    { bookAhead(folder / "a.larder"); }
    for (int restart = 0; restart < 5; ++restart)
        must(openBook(folder / "a.larder").apply(SingleEdit(AddYard{orchard()}), later(aDay + restart), "Ada"));
    const auto there = backupsOf(folder / "a.larder");
    EXPECT_EQ(std::count_if(there.begin(), there.end(), [](const Backup& one) { return one.at < later(365 * aDay); }),
              1);
}

TEST(Backup, AfterAClockThatWasAheadRestoringWorks) {
    BookFolder folder;
    auto book = bookAhead(folder / "a.larder");
    const auto backup = backupsOf(book.file()).back();
    const auto then = must(openBook(backup.file, OpenFor::Reading).dump());
    must(book.restore(backup.file, later(aDay), "Ada"));
    EXPECT_EQ(must(book.dump()), then);
    EXPECT_EQ(backupsOf(book.file()).size(), backupsKept);
}

TEST(Backup, WhileTheClockIsBehindTheOneJustMadeStays) {
    BookFolder folder;
    auto book = bookAhead(folder / "a.larder");
    for (int made = 0; made < 15; ++made) EXPECT_TRUE(files::exists(must(book.backUp({made * aDay})).file)) << made;
    EXPECT_EQ(backupsOf(book.file()).size(), backupsKept);
}

TEST(Backup, AClockAFewHoursOffChangesNoOrder) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    for (int made = 0; made < 10; ++made) must(book.backUp(later(made * 60 + 3600)));
    const auto backup = must(book.backUp(later(0)));
    const auto there = backupsOf(book.file());
    ASSERT_EQ(there.size(), backupsKept);
    EXPECT_EQ(there.front().at, later(9 * 60 + 3600));
    EXPECT_EQ(there.back().file, backup.file);
}

TEST(Backup, AFullDiskIsSaidToBeFull) {
    BookFolder folder;
    auto book = [&] {
        FailingDisk disk;
        auto made = newBook(folder / "a.larder");
        edit(made, AddYard{orchard()});
        disk.failAt(0, DiskFailure::Full);
        const auto failed = made.backUp(later(1));
        EXPECT_FALSE(failed);
        EXPECT_EQ(failed.problems().at(0).detail, "no backup could be made: the disk is full");
        disk.heal();
        return must(made.backUp(later(2)));
    }();
    EXPECT_TRUE(files::exists(book.file));
    std::size_t left = 0;
    for (const auto& file : files::directory_iterator(backupFolderOf(folder / "a.larder")))
        left += !file.path().empty();
    EXPECT_EQ(left, 1u) << "nothing unfinished stays";
}

} // namespace
} // namespace winterlarder::book::backup_test
