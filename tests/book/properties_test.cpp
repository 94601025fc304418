// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/entry_rows.h"
#include "support/furnished_book.h"

#include "book/form/canonical.h"

#include <atomic>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>
#include <thread>

namespace winterlarder::book::properties_test {
namespace {

using namespace support;

RC_GTEST_PROP(BookProperties, RandomEditsFollowedByTheirInversesGiveTheIdenticalBook, (std::uint64_t seed)) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, seed, 1);
    Dice dice(seed);
    const auto before = must(book.dump());
    std::vector<PutEntries> inverses;
    for (int made = 0; made < 12; ++made)
        if (auto applied = applySome(book, dice, later(10 * made))) inverses.push_back(applied->inverse);
    for (auto inverse = inverses.rbegin(); inverse != inverses.rend(); ++inverse)
        must(book.apply(*inverse, later(900), "Ada"));
    RC_ASSERT(must(book.dump()) == before);
    RC_ASSERT(must(book.check()).empty());
}

RC_GTEST_PROP(BookProperties, UndoingEverythingAndRedoingItGivesBothEnds, (std::uint64_t seed)) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    const auto empty = must(book.dump());
    furnish(book, seed, 1);
    Dice dice(seed + 1);
    for (int made = 0; made < 10; ++made) applySome(book, dice, later(10 * made));
    const auto full = must(book.dump());
    while (book.canUndo()) must(book.undo(later(1000), "Ada"));
    RC_ASSERT(must(book.dump()) == empty);
    while (book.canRedo()) must(book.redo(later(1001), "Ada"));
    RC_ASSERT(must(book.dump()) == full);
}

RC_GTEST_PROP(BookProperties, AnEntryComesBackFromItsRowAndARowFromItsText, (std::uint64_t seed)) {
    Dice dice(seed);
    Known known;
    for (const auto& table : tables()) known.of(table.kind) = {1, 2, 77};
    for (const auto& table : tables()) {
        const auto row = someRow(dice, table.kind, limits(), known);
        RC_ASSERT(limits().faults(table, row).empty());
        const auto lines = linesOfText(textOf(linesOf(table, row)));
        RC_ASSERT(lines.has_value());
        RC_ASSERT(rowOfLines(table, *lines) == row);
    }
    const auto look = someEntry<Look>(dice, limits(), known);
    RC_ASSERT(*entryOf<Look>(0, rowOf(look)) == look);
    const auto yard = someEntry<Yard>(dice, limits(), known);
    RC_ASSERT(*entryOf<Yard>(0, rowOf(yard)) == yard);
    const auto weighing = someEntry<Weighing>(dice, limits(), known);
    RC_ASSERT(*entryOf<Weighing>(0, rowOf(weighing)) == weighing);
}

//! Each edit of the writer leaves the look and its weighing saying the same number; a reader that ever sees two numbers, or an odd
//! count of combs, has seen half an edit.
TEST(BookProperties, TwoReadersAndAWriterNeverSeeHalfAnEdit) {
    BookFolder folder;
    const auto file = folder / "a.larder";
    auto book = newBook(file);
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "One")});
    edit(book, AddLook{lookAt({1}, day("2026-09-10"))});
    edit(book, AddWeighing{weighingOf({1}, day("2026-09-10"), 0)});
    const auto write = [&](int number) {
        auto look = must(book.find(LookId{1})).value();
        auto weighing = must(book.find(WeighingId{1})).value();
        look.note = weighing.note = std::to_string(number);
        look.combs = std::vector<CombRecord>(static_cast<std::size_t>(number % 10), comb(0.5));
        must(book.apply(EditGroup{"both", {ChangeLook{look}, ChangeWeighing{weighing}}}, later(number), "Ada"));
    };
    write(0);
    std::atomic<bool> done{false};
    std::atomic<int> reads{0}, torn{0};
    const auto read = [&] {
        auto reader = openBook(file, OpenFor::Reading);
        while (!done) {
            must(reader.together([&] {
                const auto look = must(reader.find(LookId{1})).value();
                const auto weighing = must(reader.find(WeighingId{1})).value();
                const auto combs = std::get<std::vector<CombRecord>>(look.combs).size();
                if (look.note != weighing.note || combs != static_cast<std::size_t>(std::stoi(look.note) % 10)) ++torn;
            }));
            ++reads;
            std::this_thread::sleep_for(
                std::chrono::microseconds(200)); // a reader that never pauses starves any writer
        }
    };
    std::thread first(read), second(read);
    for (int number = 1; number <= 200; ++number) write(number);
    done = true;
    first.join();
    second.join();
    EXPECT_EQ(torn, 0);
    EXPECT_GT(reads, 20);
}

} // namespace
} // namespace winterlarder::book::properties_test
