// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"
#include "support/odd_books.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <limits>
#include <set>

//! Numbers of entries: from 1 to 2^53 - 1, each given once, whatever a file says.
namespace winterlarder::book::ids_test {
namespace {

using namespace support;
using testing::Contains;
using testing::HasSubstr;

constexpr auto most = std::numeric_limits<std::int64_t>::max();

void begin(const std::filesystem::path& file) {
    auto book = newBook(file);
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "One")});
    edit(book, AddWeighing{weighingOf({1}, day("2026-09-10"), 50)});
}

//! Adds, removes and takes back; every number given is new and nothing that was there is changed.
void addWithoutLoss(const std::filesystem::path& file, std::set<std::int64_t> used) {
    auto book = openBook(file);
    auto present = must(book.all<Weighing>());
    for (int number = 0; number < 6; ++number) {
        const auto id = edit(book, AddWeighing{weighingOf({1}, day("2026-09-11"), 60 + number)}).added<Weighing>();
        ASSERT_TRUE(id);
        EXPECT_GE(id->number, 1);
        EXPECT_LE(id->number, largestId);
        EXPECT_TRUE(used.insert(id->number).second) << id->number << " is given twice";
        present.push_back(must(book.find(*id)).value());
        EXPECT_THAT(must(book.all<Weighing>()), testing::UnorderedElementsAreArray(present));
        if (number % 3 != 2) continue;
        if (number == 2) edit(book, RemoveWeighing{*id});
        else must(book.undo(later(number), "Ada"));
        present.pop_back();
    }
    EXPECT_EQ(must(book.story(100)).size(), static_cast<std::size_t>(must(book.info()).steps));
}

TEST(Ids, ACountAtItsEndNeitherOverflowsNorRepeats) {
    for (const auto count :
         {most, most - 1, largestId, largestId + 1, largestId - 1, largestId - (std::int64_t{1} << 32)}) {
        SCOPED_TRACE(count);
        BookFolder folder;
        begin(folder / "a.larder");
        runSql(folder / "a.larder", fmt::format("UPDATE sqlite_sequence SET seq = {}", count));
        addWithoutLoss(folder / "a.larder", {1});
    }
}

TEST(Ids, AnEntryAtTheEndNeitherOverflowsNorRepeats) {
    for (const auto last : {most, largestId, largestId + 1, largestId - 2, largestId - (std::int64_t{1} << 32),
                            largestId - (std::int64_t{1} << 32) - 1}) {
        SCOPED_TRACE(last);
        BookFolder folder;
        begin(folder / "a.larder");
        runSql(
            folder / "a.larder",
            fmt::format(
                "INSERT INTO weighings SELECT {}, colony, date, gross_kg, lift_kg_1, lift_kg_2, heft, wet, sure, note, \"by\" "
                "FROM weighings WHERE id = 1; UPDATE steps SET id = {} WHERE id = 3; "
                "UPDATE step_changes SET step = {} WHERE step = 3",
                last, last, last));
        auto book = openBook(folder / "a.larder");
        const auto id = edit(book, AddWeighing{weighingOf({1}, day("2026-09-11"), 60)}).added<Weighing>().value();
        const auto second = edit(book, AddWeighing{weighingOf({1}, day("2026-09-12"), 61)}).added<Weighing>().value();
        EXPECT_NE(id, second);
        EXPECT_GE(id.number, 2);
        EXPECT_LE(second.number, largestId);
        EXPECT_EQ(must(book.all<Weighing>()).size(), 4u);
        EXPECT_EQ(must(book.info()).steps, 5);
    }
}

TEST(Ids, ACheckFindsWhatNoBookNumbers) {
    BookFolder folder;
    begin(folder / "a.larder");
    runSql(
        folder / "a.larder",
        fmt::format(
            "UPDATE weighings SET id = {}; UPDATE sqlite_sequence SET seq = {} WHERE name = 'looks' OR name = 'weighings'; "
            "INSERT INTO sqlite_sequence VALUES ('looks', {}); UPDATE steps SET id = -3 WHERE id = 3; "
            "UPDATE step_changes SET step = -3 WHERE step = 3",
            largestId + 1, most, most));
    const auto faults = must(openBook(folder / "a.larder", OpenFor::Reading).check());
    EXPECT_THAT(faults, Contains(fmt::format("weighing {}: its number is not from 1 to {}", largestId + 1, largestId)));
    EXPECT_THAT(faults, Contains(HasSubstr("looks: the count of numbers given")));
    EXPECT_THAT(faults, Contains(HasSubstr("step -3 of the history: its number")));
}

TEST(Ids, NoEditGivesANumberBeyondTheLimits) {
    BookFolder folder;
    begin(folder / "a.larder");
    auto book = openBook(folder / "a.larder");
    const auto row = [&] {
        std::optional<Row> found;
        must(book.eachRow(Kind::Weighing, [&](std::int64_t, const Row& one) { found = one; }));
        return found.value();
    }();
    const auto before = must(book.dump());
    for (const auto id : {std::int64_t{0}, std::int64_t{-1}, largestId + 1, most}) {
        const auto refused = book.apply(PutEntries{"import weighings", {{Kind::Weighing, id, row}}}, later(1), "Ada");
        ASSERT_FALSE(refused) << id;
        EXPECT_EQ(describe(refused.problems().front()),
                  fmt::format("weighing {}: no entry has that number; 1 to {}", id, largestId));
    }
    EXPECT_EQ(must(book.dump()), before);
    auto colony = row;
    colony.values[0] = largestId + 1;
    EXPECT_FALSE(book.apply(PutEntries{"import weighings", {{Kind::Weighing, 7, colony}}}, later(1), "Ada"));
    must(book.apply(PutEntries{"import weighings", {{Kind::Weighing, largestId, row}}}, later(1), "Ada"));
    EXPECT_EQ(edit(book, AddWeighing{weighingOf({1}, day("2026-09-11"), 60)}).added<Weighing>(), WeighingId{2})
        << "there is room below";
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
}

TEST(Ids, AnEntryOfNoBooksNumberCanBeRemoved) {
    BookFolder folder;
    begin(folder / "a.larder");
    runSql(folder / "a.larder", fmt::format("UPDATE weighings SET id = {}", most));
    auto book = openBook(folder / "a.larder");
    edit(book, RemoveWeighing{{most}});
    EXPECT_TRUE(must(book.all<Weighing>()).empty());
}

} // namespace
} // namespace winterlarder::book::ids_test
