// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/book_folder.h"
#include "support/failing_disk.h"

#include <gmock/gmock.h>

//! Each of the first 300 writes of a session of edits fails in each way: the edit says so, the book is as it was before it, and the
//! same edit works once the disk does.
namespace winterlarder::book::failing_disk_test {
namespace {

using namespace support;

SingleEdit editNumber(int number) {
    auto look = lookAt({1}, day("2026-09-11"));
    look.note = std::string(static_cast<std::size_t>(number) * 200, 'n') + std::to_string(number);
    if (number % 3 == 2) {
        auto weighing = weighingOf({1}, day("2026-09-10"), 50 + number);
        return AddWeighing{weighing};
    }
    return AddLook{look};
}

constexpr int writesTested = 300;

void failEveryWrite(DiskFailure failure) {
    BookFolder folder;
    {
        auto book = newBook(folder / "begun.larder");
        edit(book, AddYard{orchard()});
        edit(book, AddColony{colonyIn({1}, "One")});
    }
    FailingDisk disk;
    for (int write = 0; write < writesTested; ++write) {
        SCOPED_TRACE(write);
        const auto file = folder / "a.larder";
        std::filesystem::copy_file(folder / "begun.larder", file, std::filesystem::copy_options::overwrite_existing);
        auto book = openBook(file);
        disk.failAt(write, failure);
        int number = 0;
        std::string before;
        while (true) {
            ASSERT_LT(number, 400) << "the write is never reached";
            const auto applied = book.apply(editNumber(number), later(number), "Ada");
            if (!applied) {
                EXPECT_EQ(applied.problems().at(0).kind, ProblemKind::File);
                EXPECT_THAT(applied.problems().at(0).detail, testing::HasSubstr("disk"));
                break;
            }
            ASSERT_FALSE(disk.failed()) << "an edit was acknowledged though its write failed";
            ++number;
        }
        disk.heal();
        ASSERT_THAT(must(book.check()), testing::IsEmpty());
        ASSERT_EQ(must(book.all<Look>()).size() + must(book.all<Weighing>()).size(), static_cast<std::size_t>(number))
            << "half an edit";
        must(book.apply(editNumber(number), later(number), "Ada"));
        ASSERT_EQ(must(book.all<Look>()).size() + must(book.all<Weighing>()).size(),
                  static_cast<std::size_t>(number) + 1);
    }
}

TEST(FailingDisk, AWriteErrorFailsTheEditAndNothingElse) { failEveryWrite(DiskFailure::Error); }
TEST(FailingDisk, AShortWriteFailsTheEditAndNothingElse) { failEveryWrite(DiskFailure::ShortWrite); }
TEST(FailingDisk, AFullDiskFailsTheEditAndNothingElse) { failEveryWrite(DiskFailure::Full); }
TEST(FailingDisk, ASyncErrorFailsTheEditAndNothingElse) { failEveryWrite(DiskFailure::Sync); }

TEST(FailingDisk, ADiskFullWhileABookIsMadeLeavesNoBook) {
    BookFolder folder;
    FailingDisk disk;
    for (int write = 0; write < 40; ++write) {
        disk.failAt(write, DiskFailure::Full);
        const auto book = Book::create(folder / "a.larder", shipped(), opening());
        const bool failed = disk.failed();
        disk.heal();
        ASSERT_EQ(book.ok(), !failed) << write;
        ASSERT_EQ(std::filesystem::exists(folder / "a.larder"), book.ok()) << write;
        std::filesystem::remove(folder / "a.larder");
    }
    EXPECT_TRUE(newBook(folder / "a.larder").writable());
}

} // namespace
} // namespace winterlarder::book::failing_disk_test
