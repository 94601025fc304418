// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"

#include <SQLiteCpp/Database.h>
#include <cstdlib>
#include <gmock/gmock.h>
#include <sys/wait.h>
#include <unistd.h>

//! Who may write: one program at a time, and only where and what this release can.
namespace {

using namespace winterlarder;
using namespace winterlarder::book;
using namespace winterlarder::book::support;
namespace files = std::filesystem;

Opening by(const char* who, const char* machine, bool takeOver = false) { return {{who, machine, morning}, false, takeOver}; }

TEST(Access, TheSecondProgramIsToldByWhomAndSinceWhen) {
    BookFolder folder;
    auto first = newBook(folder / "a.larder");
    edit(first, AddYard{orchard()});
    auto second = must(Book::open(folder / "a.larder", shipped(), {{"Bo", "test machine", later(60)}, false, false}));
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
    EXPECT_TRUE(must(Book::open(folder / "a.larder", shipped(), by("Ada", "test machine", true))).writable());
    EXPECT_FALSE(files::exists(lockFileOf(folder / "a.larder")));
}

TEST(Access, AskedForReadingOnlyItLeavesNoTrace) {
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    const auto before = bytesOf(folder / "a.larder");
    {
        auto book = openBook(folder / "a.larder", true);
        EXPECT_EQ(book.access(), Access::AskedReadOnly);
        EXPECT_FALSE(files::exists(lockFileOf(folder / "a.larder")));
        EXPECT_FALSE(book.apply(SingleEdit(AddYard{orchard()}), morning, "Ada"));
    }
    EXPECT_EQ(bytesOf(folder / "a.larder"), before);
}

TEST(Access, WhereNothingCanBeWrittenItIsReadOnly) {
    if (::geteuid() == 0) { // root may write anywhere: do it as somebody else
        BookFolder folder;
        { newBook(folder / "a.larder"); }
        files::permissions(folder / "a.larder", files::perms(0444));
        files::permissions(folder.path(), files::perms(0555));
        const pid_t child = ::fork();
        if (child == 0) {
            if (::setuid(65534) != 0) ::_exit(1);
            auto book = Book::open(folder / "a.larder", shipped(), opening());
            const bool right = book && book->access() == Access::MediumReadOnly && !book->apply(SingleEdit(AddYard{orchard()}), morning, "Ada");
            ::_exit(right ? 0 : 2);
        }
        int status = 0;
        ::waitpid(child, &status, 0);
        EXPECT_EQ(WEXITSTATUS(status), 0);
        return;
    }
    BookFolder folder;
    { newBook(folder / "a.larder"); }
    files::permissions(folder.path(), files::perms(0555));
    auto book = openBook(folder / "a.larder");
    EXPECT_EQ(book.access(), Access::MediumReadOnly);
    EXPECT_FALSE(book.apply(SingleEdit(AddYard{orchard()}), morning, "Ada"));
}

TEST(Access, ABookOfANewerReleaseIsOnlyRead) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
    }
    {
        SQLite::Database newer((folder / "a.larder").string(), SQLite::OPEN_READWRITE);
        newer.exec("PRAGMA user_version = 99; ALTER TABLE yards ADD COLUMN bees_of_tomorrow TEXT; CREATE TABLE drones (id INTEGER) STRICT");
    }
    auto book = openBook(folder / "a.larder");
    EXPECT_EQ(book.access(), Access::NewerVersion);
    EXPECT_THAT(book.whyReadOnly(), testing::HasSubstr("newer version"));
    EXPECT_EQ(must(book.all<Yard>()).at(0).name, "Orchard");
    EXPECT_FALSE(book.apply(SingleEdit(AddYard{orchard()}), morning, "Ada"));
}

TEST(Access, NamesOfAnyKindAreJustNames) {
    BookFolder folder;
    for (const char* name : {":memory:", "file:x?mode=memory.larder", "a'b\"c;--.larder", "\xF0\x9F\x90\x9D.larder", "-rf.larder", "a%20b?.larder"}) {
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
    { SQLite::Database other((folder / "other.larder").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE); other.exec("CREATE TABLE a (b)"); }
    EXPECT_EQ(says("other.larder"), "this is not a book");
}

TEST(Access, WhatABookDoesNotHoldIsRefused) {
    for (const char* surprise :
         {"CREATE TRIGGER t AFTER INSERT ON looks BEGIN DELETE FROM yards; END", "CREATE VIEW v AS SELECT * FROM looks",
          "CREATE TABLE extra (a)", "DROP TABLE feeds", "ALTER TABLE yards ADD COLUMN more TEXT", "CREATE INDEX i ON looks (note)",
          "CREATE VIRTUAL TABLE words USING fts5(a)"}) {
        BookFolder folder;
        { newBook(folder / "a.larder"); }
        { SQLite::Database strange((folder / "a.larder").string(), SQLite::OPEN_READWRITE); strange.exec(surprise); }
        const auto opened = Book::open(folder / "a.larder", shipped(), opening());
        ASSERT_FALSE(opened) << surprise;
        EXPECT_THAT(opened.problems().at(0).detail, testing::StartsWith("this is not a book this program made")) << surprise;
    }
}

} // namespace
