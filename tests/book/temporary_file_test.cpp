// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/book_folder.h"

#include "book/file/temporary_file.h"
#include "book/salvage.h"

#include <gmock/gmock.h>
#include <map>

//! What was there before stays, whatever its name.
namespace winterlarder::book::temporary_file_test {
namespace {

using namespace support;
namespace files = std::filesystem;

TEST(TemporaryFile, TakesANameNobodyHadAndGoesWithItsOwner) {
    BookFolder folder;
    writeBytes(folder / "a", "mine");
    writeBytes(folder / "a-2-journal", "mine too");
    files::path taken;
    {
        TemporaryFile file(folder / "a");
        taken = file.path();
        EXPECT_EQ(taken, folder / "a-3");
        EXPECT_TRUE(files::is_empty(taken));
        EXPECT_FALSE(file.giveName(folder / "a"));
    }
    EXPECT_FALSE(files::exists(taken));
    EXPECT_EQ(bytesOf(folder / "a"), "mine");
    EXPECT_EQ(bytesOf(folder / "a-2-journal"), "mine too");
    EXPECT_THROW(TemporaryFile(folder / "no folder" / "a"), std::system_error);
}

TEST(TemporaryFile, ALinkThatLeadsNowhereIsANameThatIsTaken) {
    BookFolder folder;
    files::create_symlink(folder / "nothing", folder / "a.larder");
    const auto made = Book::create(folder / "a.larder", shipped(), opening());
    ASSERT_FALSE(made);
    EXPECT_EQ(made.problems().front().detail, "there is a file of that name");
    EXPECT_TRUE(files::is_symlink(folder / "a.larder"));
}

TEST(TemporaryFile, MakingCopyingAndSalvagingLeaveOtherFilesAlone) {
    BookFolder folder;
    std::map<std::string, std::string> mine;
    for (const char* name : {"a.larder.new", "b.larder.new", "c.larder.new", "c.larder.salvage", "a.larder.new-journal",
                             "c.larder.salvage-journal"})
        writeBytes(folder / name, mine[name] = std::string("the keeper's own ") + name);
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
        must(book.copyTo(folder / "b.larder"));
    }
    must(salvage(folder / "a.larder", folder / "c.larder", shipped(), opening().opener));
    for (const auto& [name, bytes] : mine) EXPECT_EQ(bytesOf(folder / name), bytes) << name;
    std::size_t count = 0;
    for (const auto& file : files::directory_iterator(folder.path())) count += file.is_regular_file();
    EXPECT_EQ(count, mine.size() + 3) << "and nothing unfinished stays behind";
    EXPECT_EQ(must(openBook(folder / "c.larder", OpenFor::Reading).all<Yard>()).size(), 1u);
}

} // namespace
} // namespace winterlarder::book::temporary_file_test
