// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"
#include "support/odd_books.h"

#include <gmock/gmock.h>

//! A program was killed within a change: who comes next, even to read only, finds the book as it was before that change.
namespace winterlarder::book::interrupted_test {
namespace {

using namespace support;
namespace files = std::filesystem;
using testing::AllOf;
using testing::HasSubstr;

constexpr const char* change = "UPDATE looks SET note = note || '"
                               "half a change"
                               "'; UPDATE steps SET who = 'nobody'";

class Interrupted : public testing::Test {
protected:
    void SetUp() override {
        {
            auto book = newBook(file);
            furnish(book, 3, 6);
            dump = must(book.dump());
        }
        interruptWithin(file, change);
        ASSERT_TRUE(files::exists(journal));
    }
    Problem problem(const Opening& opening) {
        const auto opened = Book::open(file, shipped(), opening);
        return opened ? Problem{} : opened.problems().front();
    }

    BookFolder folder;
    files::path file = folder / "a.larder", journal = folder / "a.larder-journal";
    std::string dump;
};

TEST_F(Interrupted, TheFileAloneIsHalfAChange) {
    files::copy_file(file, folder / "b.larder");
    const auto alone = Book::open(folder / "b.larder", shipped(), opening(OpenFor::Reading));
    EXPECT_TRUE(!alone || bytesOf(folder / "b.larder").find("half a change") != std::string::npos)
        << "the test needs something to take back";
}

TEST_F(Interrupted, AReaderTakesItBack) {
    auto book = openBook(file, OpenFor::Reading);
    EXPECT_EQ(book.access(), Access::AskedReadOnly);
    EXPECT_EQ(must(book.dump()), dump);
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
    EXPECT_FALSE(files::exists(journal));
    EXPECT_FALSE(files::exists(lockFileOf(file))) << "the lock was held for a moment only";
}

TEST_F(Interrupted, AReaderTakesItBackThroughASymbolicLink) {
    files::create_symlink(file, folder / "link.larder");
    EXPECT_EQ(must(openBook(folder / "link.larder", OpenFor::Reading).dump()), dump);
    EXPECT_FALSE(files::exists(journal));
}

TEST_F(Interrupted, AWriterTakesItBackToo) { EXPECT_EQ(must(openBook(file).dump()), dump); }

TEST_F(Interrupted, WhileItIsOpenElsewhereTheReaderIsToldAndNothingIsTouched) {
    writeBytes(lockFileOf(file), "Bo\nthe laptop\n2026-09-11T07:00:00Z\n");
    const auto before = bytesOf(file), kept = bytesOf(journal);
    const auto said = describe(problem(opening(OpenFor::Reading)));
    EXPECT_THAT(said, AllOf(HasSubstr("the last change was interrupted"), HasSubstr("by Bo on the laptop"),
                            HasSubstr("a copy without a.larder-journal beside it is damaged")));
    EXPECT_EQ(bytesOf(file), before);
    EXPECT_EQ(bytesOf(journal), kept);
    EXPECT_TRUE(must(Book::open(file, shipped(), {opening().opener, OpenFor::TakingOver})).writable())
        << "taken over, it is taken back";
}

TEST_F(Interrupted, WhereNothingCanBeWrittenTheReaderIsToldSo) {
    files::permissions(file, files::perms(0444));
    files::permissions(journal, files::perms(0444));
    files::permissions(folder.path(), files::perms(0555));
    const auto before = bytesOf(file);
    EXPECT_TRUE(asBoundUser([&] {
        for (const auto purpose : {OpenFor::Reading, OpenFor::Writing}) {
            const auto said = describe(problem(opening(purpose)));
            if (said.find("nothing can be written here") == said.npos || said.find("a.larder-journal") == said.npos)
                return false;
        }
        return true;
    }));
    EXPECT_EQ(bytesOf(file), before);
}

TEST_F(Interrupted, WhereOnlyTheFileCannotBeWrittenTheReaderIsToldSo) {
    files::permissions(file, files::perms(0444));
    files::permissions(folder.path(), files::perms(0777));
    EXPECT_TRUE(asBoundUser([&] {
        return describe(problem(opening(OpenFor::Reading))).find("its file cannot be written here") !=
               std::string::npos;
    }));
}

TEST_F(Interrupted, WhoReadsAlreadyIsToldToOpenAgain) {
    auto reading = openBook(file, OpenFor::Reading);
    interruptWithin(file, change);
    const auto refused = reading.all<Look>();
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problems().front().detail,
              "the last change was interrupted and has to be taken back before the book can be read");
    EXPECT_THAT(refused.problems().front().remedy,
                AllOf(HasSubstr("open the book again"), HasSubstr("keep a.larder-journal beside it")));
    EXPECT_EQ(must(openBook(file, OpenFor::Reading).dump()), dump);
    EXPECT_TRUE(reading.all<Look>()) << "once taken back it can be read on";
}

TEST_F(Interrupted, ABackupThatWasInterruptedIsNotRestored) {
    auto book = newBook(folder / "b.larder");
    edit(book, AddYard{orchard()});
    const auto refused = book.restore(file, later(10), "Ada");
    ASSERT_FALSE(refused);
    EXPECT_THAT(describe(refused.problems().front()),
                AllOf(HasSubstr("the last change was interrupted"), HasSubstr("-journal")));
    EXPECT_TRUE(files::exists(journal));
}

TEST(Replaced, AFileReplacedWhileTheBookIsOpenIsSaidToBe) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    files::copy_file(folder / "a.larder", folder / "b.larder");
    files::rename(folder / "b.larder", folder / "a.larder");
    const auto refused = book.apply(SingleEdit(AddYard{orchard()}), later(1), "Ada");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problems().front().detail,
              "the file was moved, removed or replaced by another while the book was open");
    EXPECT_THAT(refused.problems().front().remedy, HasSubstr("open the book again"));
}

} // namespace
} // namespace winterlarder::book::interrupted_test
