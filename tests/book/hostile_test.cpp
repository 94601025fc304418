// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"

#include "book/salvage.h"

#include <chrono>
#include <gmock/gmock.h>

//! Files somebody broke, by accident or on purpose: no crash, no hang, a sentence that says what is wrong.
namespace winterlarder::book::hostile_test {
namespace {

using namespace support;

class Hostile : public testing::Test {
protected:
    static void SetUpTestSuite() {
        BookFolder folder;
        {
            auto book = newBook(folder / "a.larder");
            furnish(book, 21, 4);
        }
        sound() = bytesOf(folder / "a.larder");
    }
    static std::string& sound() {
        static std::string bytes;
        return bytes;
    }

    //! Opens the bytes as a book, reads everything, edits and undoes: gives the first problem, or nothing.
    static std::string use(const std::filesystem::path& file, const std::string& bytes) {
        writeBytes(file, bytes);
        auto book = Book::open(file, shipped(), opening());
        if (!book) return describe(book.problems().at(0));
        std::string problem;
        const auto note = [&](const auto& outcome) {
            if (!outcome.ok() && problem.empty()) problem = describe(outcome.problems().at(0));
        };
        note(book->dump());
        note(book->all<Look>());
        note(book->of<Weighing>({1}));
        note(book->story(50));
        note(book->apply(SingleEdit(AddYard{orchard()}), later(1), "Ada"));
        note(book->undo(later(2), "Ada"));
        const auto faults = must(book->check());
        if (problem.empty() && !faults.empty()) problem = faults.front();
        return problem;
    }
};

TEST_F(Hostile, ASoundFileIsSound) {
    BookFolder folder;
    EXPECT_EQ(use(folder / "a.larder", sound()), "");
}

class HostileFlips : public Hostile, public testing::WithParamInterface<int> {};

//! Two hundred variants a test, a thousand in all. Every variant flips one to four bits; half of them within the first pages, where the
//! schema lies.
TEST_P(HostileFlips, FlippedFilesNeitherCrashNorHang) {
    BookFolder folder;
    Dice dice(static_cast<std::uint64_t>(GetParam()));
    int noticed = 0;
    for (int variant = 0; variant < 200; ++variant) {
        auto bytes = sound();
        for (auto flips = dice.below(4) + 1; flips > 0; --flips) {
            auto& byte = bytes[dice.below(variant % 2 ? bytes.size() : 16384)];
            byte = static_cast<char>(byte ^ (1 << dice.below(8)));
        }
        const auto start = std::chrono::steady_clock::now();
        const auto problem = use(folder / "a.larder", bytes);
        noticed += !problem.empty();
        ASSERT_LT(std::chrono::steady_clock::now() - start, std::chrono::seconds(20)) << "variant " << variant;
        std::filesystem::remove_all(backupFolderOf(folder / "a.larder"));
    }
    EXPECT_GT(noticed, 40) << "damage that matters is noticed";
}

INSTANTIATE_TEST_SUITE_P(AThousand, HostileFlips, testing::Range(1, 6));

TEST_F(Hostile, TruncatedFilesNeitherCrashNorHang) {
    BookFolder folder;
    for (std::size_t size = 0; size < sound().size(); size += size < 600 ? 37 : 4096 + 511) {
        const auto problem = use(folder / "a.larder", sound().substr(0, size));
        EXPECT_NE(problem, "") << size;
    }
}

TEST_F(Hostile, AWrongApplicationIdIsNoBook) {
    BookFolder folder;
    auto bytes = sound();
    bytes[68] = 'X';
    EXPECT_THAT(use(folder / "a.larder", bytes), testing::HasSubstr("this is not a book"));
}

TEST_F(Hostile, ManySmallDamagesSalvageToASoundBook) {
    Dice dice(77);
    int whole = 0, partly = 0;
    for (int variant = 0; variant < 60; ++variant) {
        BookFolder folder;
        auto bytes = sound();
        for (int flips = 0; flips < 30; ++flips)
            bytes[dice.below(bytes.size())] ^= static_cast<char>(1 << dice.below(8));
        writeBytes(folder / "a.larder", bytes);
        const auto salvaged = salvage(folder / "a.larder", folder / "b.larder", shipped(), opening().opener);
        EXPECT_EQ(bytesOf(folder / "a.larder"), bytes) << "the original is not touched";
        if (!salvaged) continue;
        ++(salvaged->lost.empty() ? whole : partly);
        auto book = openBook(folder / "b.larder");
        EXPECT_THAT(must(book.check()), testing::IsEmpty()) << "variant " << variant;
    }
    EXPECT_GT(partly, 20);
    EXPECT_GT(whole + partly, 50);
}

} // namespace
} // namespace winterlarder::book::hostile_test
