// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"

#include <gmock/gmock.h>

namespace {

using namespace winterlarder;
using namespace winterlarder::book;
using namespace winterlarder::book::support;
namespace files = std::filesystem;
constexpr std::int64_t aDay = 86400;

TEST(Backup, TheFirstEditOfADayIsPrecededByOneAndTheLastTenAreKept) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    EXPECT_TRUE(backupsOf(book.file()).empty()) << "nothing was in the book before its first edit";
    for (int day = 1; day <= 13; ++day)
        for (int more = 0; more < 3; ++more) must(book.apply(SingleEdit(AddYard{orchard()}), later(day * aDay + more), "Ada"));
    const auto backups = backupsOf(book.file());
    ASSERT_EQ(backups.size(), backupsKept);
    EXPECT_EQ(backups.front().at, later(13 * aDay));
    EXPECT_EQ(backups.back().at, later(4 * aDay));
    auto yesterday = openBook(backups.front().file, true);
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
    EXPECT_EQ(must(openBook(backupsOf(book.file()).back().file, true).all<Yard>()).size(), 16u);
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
    ASSERT_TRUE(must(book.copyTo(folder / "copy.larder")));
    EXPECT_FALSE(book.copyTo(folder / "copy.larder")) << "never over a file";
    auto copy = openBook(folder / "copy.larder");
    EXPECT_EQ(must(copy.dump()), must(book.dump()));
    EXPECT_EQ(must(copy.story(1000)).size(), must(book.story(1000)).size()) << "the story goes along";
    EXPECT_LE(files::file_size(folder / "copy.larder"), files::file_size(folder / "a.larder"));
    edit(book, AddYard{orchard()});
    EXPECT_THAT(must(copy.check()), testing::IsEmpty());
}

} // namespace
