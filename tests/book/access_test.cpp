// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"
#include "support/odd_books.h"
#include "support/system_calls.h"

#include <SQLiteCpp/Database.h>
#include <gmock/gmock.h>
#include <sys/wait.h>
#include <unistd.h>

//! Who may write: one program at a time, and only where and what this release can.
namespace winterlarder::book::access_test {
namespace {

using namespace support;
namespace files = std::filesystem;

Opening by(const char* who, const char* machine, OpenFor purpose = OpenFor::Writing) {
    return {{who, machine, morning}, purpose};
}

TEST(Access, TheSecondProgramIsToldByWhomAndSinceWhen) {
    BookFolder folder;
    auto first = newBook(folder / "a.larder");
    edit(first, AddYard{orchard()});
    auto second = must(Book::open(folder / "a.larder", shipped(), {{"Bo", "test machine", later(60)}}));
    EXPECT_EQ(second.access(), Access::OpenElsewhere);
    EXPECT_EQ(second.whyReadOnly(), "The book is open elsewhere: by Ada on test machine since 2026-09-12T08:00:00Z.");
    EXPECT_EQ(second.holder(), (LockHolder{"Ada", "test machine", morning}));
    EXPECT_EQ(must(second.all<Yard>()).size(), 1u) << "but it can be read";
    const auto refused = second.apply(SingleEdit(AddYard{orchard()}), morning, "Bo");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problems().at(0).kind, ProblemKind::File);
    EXPECT_THAT(refused.problems().at(0).detail, testing::HasSubstr("by Ada"));
    { const auto closed = std::move(first); }
    EXPECT_TRUE(openBook(folder / "a.larder").writable()) << "closed, it is free";
}

TEST(Access, TheSignOfAKilledProgramIsTakenOver) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    const pid_t child = ::fork();
    if (child == 0) {
        auto book = Book::open(folder / "a.larder", shipped(), by("Bo", "test machine"));
        ::kill(::getpid(), SIGKILL);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    ASSERT_TRUE(WIFSIGNALED(status));
    ASSERT_TRUE(files::exists(lockFileOf(folder / "a.larder"))) << "the killed program left its sign";
    EXPECT_TRUE(openBook(folder / "a.larder").writable());
    EXPECT_FALSE(files::exists(lockFileOf(folder / "a.larder")));
}

TEST(Access, TheSignOfAnotherMachineCountsUntilSomebodySaysItIsStale) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    writeBytes(lockFileOf(folder / "a.larder"), "Bo\nthe laptop\n2026-09-11T07:00:00Z\n");
    {
        const auto book = must(Book::open(folder / "a.larder", shipped(), by("Ada", "test machine")));
        EXPECT_EQ(book.access(), Access::OpenElsewhere);
        EXPECT_EQ(book.holder(), (LockHolder{"Bo", "the laptop", at("2026-09-11T07:00:00Z")}));
    }
    EXPECT_TRUE(files::exists(lockFileOf(folder / "a.larder")));
    EXPECT_TRUE(
        must(Book::open(folder / "a.larder", shipped(), by("Ada", "test machine", OpenFor::TakingOver))).writable());
    EXPECT_FALSE(files::exists(lockFileOf(folder / "a.larder")));
}

TEST(Access, AskedForReadingOnlyItLeavesNoTrace) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    const auto before = bytesOf(folder / "a.larder");
    {
        auto book = openBook(folder / "a.larder", OpenFor::Reading);
        EXPECT_EQ(book.access(), Access::AskedReadOnly);
        EXPECT_FALSE(files::exists(lockFileOf(folder / "a.larder")));
        EXPECT_FALSE(book.apply(SingleEdit(AddYard{orchard()}), morning, "Ada"));
    }
    EXPECT_EQ(bytesOf(folder / "a.larder"), before);
}

TEST(Access, WhereNothingCanBeWrittenItIsReadOnly) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    files::permissions(folder / "a.larder", files::perms(0444));
    files::permissions(folder.path(), files::perms(0555));
    EXPECT_TRUE(asBoundUser([&] {
        auto book = openBook(folder / "a.larder");
        return book.access() == Access::MediumReadOnly && !book.apply(SingleEdit(AddYard{orchard()}), morning, "Ada");
    }));
}

TEST(Access, ABookOfANewerReleaseIsOnlyRead) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
    }
    {
        SQLite::Database newer((folder / "a.larder").string(), SQLite::OPEN_READWRITE);
        newer.exec(
            "PRAGMA user_version = 99; ALTER TABLE yards ADD COLUMN bees_of_tomorrow TEXT; CREATE TABLE drones (id INTEGER) STRICT");
    }
    auto book = openBook(folder / "a.larder");
    EXPECT_EQ(book.access(), Access::NewerVersion);
    EXPECT_THAT(book.whyReadOnly(), testing::HasSubstr("newer version"));
    EXPECT_EQ(must(book.all<Yard>()).at(0).name, "Orchard");
    EXPECT_FALSE(book.apply(SingleEdit(AddYard{orchard()}), morning, "Ada"));
}

TEST(Access, NamesOfAnyKindAreJustNames) {
    BookFolder folder;
    for (const char* name : {":memory:", "file:x?mode=memory.larder", "a'b\"c;--.larder", "\xF0\x9F\x90\x9D.larder",
                             "-rf.larder", "a%20b?.larder"}) {
        {
            auto book = newBook(folder / name);
            edit(book, AddYard{orchard()});
        }
        EXPECT_TRUE(files::exists(folder / name)) << name;
        EXPECT_EQ(must(openBook(folder / name).all<Yard>()).size(), 1u) << name;
    }
}

TEST(Access, WhatIsNoBookIsSaidToBeNone) {
    BookFolder folder;
    const auto says = [&](const char* name) {
        const auto opened = Book::open(folder / name, shipped(), opening());
        EXPECT_FALSE(files::exists(lockFileOf(folder / name)));
        return opened ? std::string("opened") : opened.problems().at(0).detail;
    };
    EXPECT_EQ(says("nothing.larder"), "there is no such book");
    files::create_directory(folder / "folder.larder");
    EXPECT_EQ(says("folder.larder"), "this is not a file");
    writeBytes(folder / "empty.larder", "");
    EXPECT_EQ(says("empty.larder"), "this is not a book");
    writeBytes(folder / "text.larder", std::string(5000, 'x'));
    EXPECT_EQ(says("text.larder"), "this is not a book");
    {
        SQLite::Database other((folder / "other.larder").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        other.exec("CREATE TABLE a (b)");
    }
    EXPECT_EQ(says("other.larder"), "this is not a book");
}

TEST(Access, WhatABookDoesNotHoldIsRefused) {
    for (const char* surprise :
         {"CREATE TRIGGER t AFTER INSERT ON looks BEGIN DELETE FROM yards; END", "CREATE VIEW v AS SELECT * FROM looks",
          "CREATE TABLE extra (a)", "DROP TABLE feeds", "ALTER TABLE yards ADD COLUMN more TEXT",
          "CREATE INDEX i ON looks (note)", "CREATE VIRTUAL TABLE words USING fts5(a)"}) {
        BookFolder folder;
        { newBook(folder / "a.larder"); }
        {
            SQLite::Database strange((folder / "a.larder").string(), SQLite::OPEN_READWRITE);
            strange.exec(surprise);
        }
        const auto opened = Book::open(folder / "a.larder", shipped(), opening());
        ASSERT_FALSE(opened) << surprise;
        EXPECT_THAT(opened.problems().at(0).detail, testing::StartsWith("this is not a book this program made"))
            << surprise;
    }
}

TEST(Access, EverySymbolicLinkLeadsToOneLockAndOneFolderOfBackups) {
    BookFolder folder;
    files::create_directory(folder / "elsewhere");
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
    }
    files::create_symlink(folder / "a.larder", folder / "elsewhere" / "link.larder");
    files::create_directory_symlink(folder.path(), folder / "elsewhere" / "again");
    const auto link = folder / "elsewhere" / "link.larder", again = folder / "elsewhere" / "again" / "a.larder";
    for (const auto& name : {link, again}) {
        EXPECT_EQ(lockFileOf(name), lockFileOf(folder / "a.larder"));
        EXPECT_EQ(backupFolderOf(name), backupFolderOf(folder / "a.larder"));
    }
    {
        auto first = openBook(link);
        ASSERT_TRUE(first.writable());
        EXPECT_TRUE(files::exists(folder / "a.larder.lock"));
        EXPECT_EQ(openBook(folder / "a.larder").access(), Access::OpenElsewhere);
        EXPECT_EQ(openBook(again).access(), Access::OpenElsewhere);
        must(first.backUp(later(5)));
    }
    EXPECT_EQ(backupsOf(again).size(), 1u);
    std::size_t beside = 0;
    for (const auto& file : files::directory_iterator(folder / "elsewhere")) beside += file.is_symlink();
    EXPECT_EQ(beside, 2u) << "nothing is put beside the links";
}

TEST(Access, ABookOfTwoHardLinksIsOnlyRead) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
    }
    files::create_hard_link(folder / "a.larder", folder / "b.larder");
    for (const char* name : {"a.larder", "b.larder"}) {
        auto book = openBook(folder / name);
        EXPECT_EQ(book.access(), Access::ManyNames);
        EXPECT_THAT(book.whyReadOnly(), testing::HasSubstr("a second name (a hard link)"));
        EXPECT_EQ(must(book.all<Yard>()).size(), 1u);
        EXPECT_FALSE(book.apply(SingleEdit(AddYard{orchard()}), morning, "Ada"));
        EXPECT_FALSE(files::exists(lockFileOf(folder / name)));
    }
    must(openBook(folder / "a.larder").copyTo(folder / "c.larder"));
    EXPECT_TRUE(openBook(folder / "c.larder").writable()) << "a copy has one name";
    files::remove(folder / "a.larder");
    EXPECT_TRUE(openBook(folder / "b.larder").writable());
}

TEST(Access, AFullDiskIsSaidToBeFull) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    {
        const NoRoomLeft full;
        auto book = openBook(folder / "a.larder");
        EXPECT_EQ(book.access(), Access::DiskFull);
        EXPECT_THAT(book.whyReadOnly(), testing::HasSubstr("The disk is full"));
        EXPECT_EQ(must(book.all<Yard>()).size(), 0u);
    }
    EXPECT_FALSE(files::exists(lockFileOf(folder / "a.larder")));
    EXPECT_TRUE(openBook(folder / "a.larder").writable());
}

TEST(Access, ASignMayHoldAnythingAndIsShownHarmless) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    writeBytes(lockFileOf(folder / "a.larder"), "\x1b]0;Bo\x07\xFF\nthe \xE2\x80\xAElaptop\n2026-09-11T07:00:00Z\n");
    const auto book = openBook(folder / "a.larder");
    EXPECT_EQ(
        book.whyReadOnly(),
        "The book is open elsewhere: by \\u{1b}]0;Bo\\u{7}\\x{ff} on the \\u{202e}laptop since 2026-09-11T07:00:00Z.");
}

TEST(Access, AMachineOfAnyNameKnowsItsOwnSign) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    for (const std::string& machine : {std::string("a\tb\x1b"), std::string("\xFFx"), std::string(300, '\x01'),
                                       std::string(199, 'a') + "\xC3\xA9"}) {
        files::path lock;
        {
            const auto book = must(Book::open(folder / "a.larder", shipped(), by("Bo", machine.c_str())));
            ASSERT_TRUE(book.writable());
            files::copy_file(lockFileOf(folder / "a.larder"), folder / "left");
        }
        files::rename(folder / "left", lockFileOf(folder / "a.larder"));
        EXPECT_TRUE(must(Book::open(folder / "a.larder", shipped(), by("Ada", machine.c_str()))).writable());
    }
}

//! Between opening the sign and locking it, the program that held it goes and another takes its place.
TEST(Access, ALockOnASignThatWasReplacedIsNone) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    const auto sign = lockFileOf(folder / "a.larder");
    std::optional<BookLock> other;
    const BeforeNextLock replaced([&] {
        files::remove(sign);
        other = BookLock::take(folder / "a.larder", {"Bo", "test machine", morning}, BookLock::OtherSign::Holds).lock;
    });
    const auto attempt =
        BookLock::take(folder / "a.larder", {"Ada", "test machine", morning}, BookLock::OtherSign::Holds);
    ASSERT_TRUE(other) << "the test needs another holder";
    EXPECT_FALSE(attempt.lock);
    EXPECT_EQ(attempt.failure, BookLock::Failure::Held);
    EXPECT_EQ(attempt.holder.who, "Bo");
    other.reset();
    EXPECT_FALSE(files::exists(sign));
}

TEST(Access, ALockOnASignThatWasRemovedIsTakenAnew) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    const auto sign = lockFileOf(folder / "a.larder");
    const BeforeNextLock removed([&] { files::remove(sign); });
    const auto attempt =
        BookLock::take(folder / "a.larder", {"Ada", "test machine", morning}, BookLock::OtherSign::Holds);
    ASSERT_TRUE(attempt.lock);
    EXPECT_TRUE(files::exists(sign)) << "others must see it";
    EXPECT_EQ(openBook(folder / "a.larder").access(), Access::OpenElsewhere);
}

} // namespace
} // namespace winterlarder::book::access_test
