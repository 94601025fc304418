// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/furnished_book.h"
#include "support/odd_books.h"

#include "book/file/schema.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <map>

namespace winterlarder::book::book_test {
namespace {

using namespace support;

TEST(Book, KeepsWhatWasEnteredAcrossRestarts) {
    BookFolder folder;
    LookId id;
    Look look = lookAt({1}, day("2026-09-10"));
    look.note = "a note \xF0\x9F\x90\x9D\nof two lines";
    look.photographs = {"photographs/1.jpg", "photographs/2.jpg"};
    {
        auto book = newBook(folder / "a.larder");
        EXPECT_EQ(edit(book, AddYard{orchard()}).added<Yard>(), YardId{1});
        EXPECT_EQ(edit(book, AddColony{colonyIn({1}, "Row 2 east")}).added<Colony>(), ColonyId{1});
        id = edit(book, AddLook{look}).added<Look>().value();
    }
    auto book = openBook(folder / "a.larder", OpenFor::Reading);
    look.id = id;
    look.by = "Ada";
    EXPECT_EQ(must(book.find(id)), look);
    EXPECT_EQ(must(book.of<Look>({1})), std::vector<Look>{look});
    EXPECT_EQ(must(book.yardNamed("Orchard")).site, orchard().site);
    EXPECT_EQ(must(book.colonyNamed("Row 2 east")).hive, twoDeeps());
    EXPECT_FALSE(book.colonyNamed("Row 3"));
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
}

TEST(Book, IsOneFileAtRest) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
    }
    std::vector<std::string> left;
    for (const auto& file : std::filesystem::directory_iterator(folder.path())) left.push_back(file.path().filename());
    EXPECT_THAT(left, testing::ElementsAre("a.larder"));
}

TEST(Book, NeverOverwritesAFile) {
    BookFolder folder;
    writeBytes(folder / "a.larder", "something of the keeper's");
    EXPECT_FALSE(Book::create(folder / "a.larder", shipped(), opening()));
    EXPECT_EQ(bytesOf(folder / "a.larder"), "something of the keeper's");
}

TEST(Book, ChangesThatChangeNothingAreNotRecorded) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    auto yard = orchard();
    yard.id = edit(book, AddYard{yard}).added<Yard>().value();
    yard.by = "Ada";
    const auto applied = edit(book, ChangeYard{yard});
    EXPECT_TRUE(applied.touched.empty());
    EXPECT_FALSE(applied.step);
    EXPECT_EQ(must(book.story(10)).size(), 1u);
}

TEST(Book, ConsecutiveEditsOfOneFieldMergeAndAreUndoneTogether) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    auto yard = orchard();
    yard.by = "Ada";
    yard.id = edit(book, AddYard{yard}).added<Yard>().value();
    const auto before = must(book.dump());
    for (const char* name : {"O", "Or", "Orc", "Orchard by the brook"}) {
        yard.name = name;
        edit(book, ChangeYard{yard});
    }
    EXPECT_EQ(must(book.story(10)).size(), 2u);
    const auto changed = must(book.story(1)).front().changes.at(0);
    EXPECT_EQ(changed.before.at("name"), "\"Orchard\"");
    EXPECT_EQ(changed.after.at("name"), "\"Orchard by the brook\"");
    must(book.undo(later(1), "Ada"));
    EXPECT_EQ(must(book.dump()), before);
    must(book.redo(later(2), "Ada"));
    EXPECT_EQ(must(book.find(yard.id))->name, "Orchard by the brook");
}

TEST(Book, EditsOfOtherFieldsPeopleOrTimesDoNotMerge) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    auto yard = orchard();
    yard.by = "Ada";
    yard.id = edit(book, AddYard{yard}).added<Yard>().value();
    const auto change = [&](Timestamp now, const char* who) {
        must(book.apply(SingleEdit(ChangeYard{yard}), now, who));
    };
    yard.name = "A", change(later(0), "Ada");
    yard.note = "b", change(later(0), "Ada");
    yard.note = "c", change(later(0), "Bo");
    yard.note = "d", change(later(mergeSeconds + 1), "Bo");
    yard.note = "e", change(later(mergeSeconds + 2), "Bo");
    EXPECT_EQ(must(book.story(10)).size(), 5u);
}

TEST(Book, AFieldTypedBackToWhatItWasLeavesNoStep) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    auto yard = orchard();
    yard.by = "Ada";
    yard.id = edit(book, AddYard{yard}).added<Yard>().value();
    yard.note = "x";
    edit(book, ChangeYard{yard});
    yard.note = "";
    EXPECT_FALSE(edit(book, ChangeYard{yard}).step);
    EXPECT_EQ(must(book.story(10)).size(), 1u);
}

TEST(Book, UndoWorksAcrossRestartsAndASecondPathAbandonsTheFirst) {
    BookFolder folder;
    std::string empty;
    {
        auto book = newBook(folder / "a.larder");
        empty = must(book.dump());
        edit(book, AddYard{orchard()});
        edit(book, AddColony{colonyIn({1}, "One")});
    }
    auto book = openBook(folder / "a.larder");
    ASSERT_TRUE(book.canUndo());
    must(book.undo(later(5), "Bo"));
    must(book.undo(later(6), "Bo"));
    EXPECT_EQ(must(book.dump()), empty);
    EXPECT_FALSE(book.canUndo());
    EXPECT_FALSE(must(book.undo(later(7), "Bo")).step) << "nothing left to undo";
    must(book.redo(later(8), "Bo"));
    EXPECT_EQ(edit(book, AddColony{colonyIn({1}, "Two")}).added<Colony>(), ColonyId{2})
        << "numbers are never given twice";
    EXPECT_FALSE(book.canRedo());
    const auto story = must(book.story(10));
    ASSERT_EQ(story.size(), 3u);
    EXPECT_EQ(story[0].state, StepState::Done);
    EXPECT_EQ(story[1].state, StepState::Abandoned);
    EXPECT_EQ(story[1].turnedBy, "Bo");
    EXPECT_EQ(story[1].changes.at(0).after.at("name"), "\"One\"") << "what was taken back can still be read";
    EXPECT_EQ(story[2].verb, "add yard");
}

TEST(Book, RefusesWhatTheDataDictionaryRefusesWithEveryFault) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "One")});
    const auto before = must(book.dump());
    auto look = lookAt({1}, day("2026-09-10"));
    look.combs = std::vector<CombRecord>{comb(1.5), comb(0.5, -1)};
    look.note = "bytes \xFF that are no text";
    const auto refused = book.apply(SingleEdit(AddLook{look}), morning, "Ada");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problems().size(), 3u);
    auto tooFull = lookAt({1}, day("2026-09-10"));
    tooFull.combs = std::vector<CombRecord>{comb(0.7, 0.4)};
    const auto sum = book.apply(SingleEdit(AddLook{tooFull}), morning, "Ada");
    ASSERT_FALSE(sum);
    EXPECT_EQ(sum.problems().at(0).detail, "the shares of a comb sum to more than 1");
    const auto nobody = book.apply(SingleEdit(AddWeighing{weighingOf({7}, day("2026-09-10"), 50)}), morning, "Ada");
    ASSERT_FALSE(nobody);
    EXPECT_EQ(nobody.problems().at(0).detail, "weighing 1: there is no colony 7");
    EXPECT_EQ(must(book.dump()), before);
}

TEST(Book, AYardInUseStaysAndAColonyGoesWithItsRecords) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 5);
    EXPECT_FALSE(book.apply(SingleEdit(RemoveYard{must(book.all<Colony>()).front().yard}), morning, "Ada"));
    const auto before = must(book.dump());
    edit(book, RemoveColony{{1}});
    EXPECT_THAT(must(book.of<Look>({1})), testing::IsEmpty());
    for (const auto& fate : must(book.all<Fate>())) EXPECT_NE(fate.into, std::optional(ColonyId{1}));
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
    must(book.undo(later(1), "Ada"));
    EXPECT_EQ(must(book.dump()), before);
}

TEST(Book, InfoCountsEntriesAndSteps) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "One")});
    edit(book, AddColony{colonyIn({1}, "Two")});
    const auto info = must(book.info());
    EXPECT_EQ(info.madeBy, "Ada");
    EXPECT_EQ(info.madeAt, morning);
    EXPECT_EQ(info.steps, 3);
    std::map<Kind, std::int64_t> counted(info.entries.begin(), info.entries.end());
    EXPECT_EQ(counted.size(), info.entries.size()) << "each kind once";
    EXPECT_EQ(counted.at(Kind::Yard), 1);
    EXPECT_EQ(counted.at(Kind::Colony), 2);
    std::int64_t all = 0;
    for (const auto& [kind, count] : counted) all += count;
    EXPECT_EQ(all, 3) << "and nothing that was never entered";
    EXPECT_TRUE(counted.contains(Kind::Look)) << "what there is none of is told too";
    EXPECT_GT(info.bytes, 0u);
}

TEST(Book, LongAndStrangeTextsAndDaysComeBackAsTheyWere) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    const std::vector<std::string> names{"'; DROP TABLE looks; --", "\xD7\x9B\xD7\x95\xD7\xA8\xD7\xAA",
                                         "\xF0\x9F\x90\x9D\xF0\x9F\x8D\xAF", "#2", "=1+1"};
    for (const auto& name : names) edit(book, AddColony{colonyIn({1}, name)});
    for (const auto& name : names) EXPECT_EQ(must(book.colonyNamed(name)).name, name);
    for (const char* date : {"1900-01-01", "2200-12-31"}) {
        auto look = lookAt({1}, day(date));
        look.note = std::string(1 << 20, 'n');
        const auto id = edit(book, AddLook{look}).added<Look>().value();
        EXPECT_EQ(must(book.find(id))->note, look.note);
        EXPECT_EQ(must(book.find(id))->date, day(date));
    }
    auto look = lookAt({1}, day("2026-09-10"));
    look.note = std::string(2100000, 'n');
    const auto refused = book.apply(SingleEdit(AddLook{look}), morning, "Ada");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problems().at(0).detail, "look 3: records.note has 2100000 characters");
}

TEST(Book, NamesThatCannotBeShownAreRefusedOnEntry) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    for (const char* name : {"\xE2\x80\xAEgnitset", "Row\n2", "\x1b[31mRow", " "}) {
        const auto refused = book.apply(SingleEdit(AddColony{colonyIn({1}, name)}), morning, "Ada");
        ASSERT_FALSE(refused) << name;
        EXPECT_THAT(describe(refused.problems().front()), testing::StartsWith("colony 1: colonies.name "));
        EXPECT_THAT(describe(refused.problems().front()),
                    testing::EndsWith("; one line of letters, digits, blanks and signs"));
        auto yard = must(book.find(YardId{1})).value();
        yard.name = name;
        EXPECT_FALSE(book.apply(SingleEdit(ChangeYard{yard}), morning, "Ada")) << name;
    }
    EXPECT_EQ(must(book.info()).steps, 1);
}

TEST(Book, NamesOfOlderBooksStayAndCanBeChangedToFitOnes) {
    BookFolder folder;
    {
        auto book = newBook(folder / "a.larder");
        edit(book, AddYard{orchard()});
        edit(book, AddColony{colonyIn({1}, "One")});
    }
    runSql(folder / "a.larder", "UPDATE colonies SET name = 'Row' || char(10) || char(8238) || '2'");
    auto book = openBook(folder / "a.larder");
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
    const auto old = must(book.dump());
    auto colony = must(book.find(ColonyId{1})).value();
    colony.note = "by the brook";
    edit(book, ChangeColony{colony});
    colony.name = "Row 2";
    edit(book, ChangeColony{colony});
    EXPECT_EQ(must(book.colonyNamed("Row 2")).note, "by the brook");
    must(book.undo(later(1), "Ada"));
    must(book.undo(later(2), "Ada"));
    EXPECT_EQ(must(book.dump()), old) << "taking back is no entry";
    must(book.redo(later(3), "Ada"));
    const auto backup = must(book.backUp(later(4)));
    edit(book, RemoveColony{{1}});
    must(book.restore(backup.file, later(5), "Ada"));
    EXPECT_EQ(must(book.find(ColonyId{1})).value().note, "by the brook");
}

TEST(Book, EditsMadeAfterTheClockWentBackDoNotMerge) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    auto yard = orchard();
    yard.by = "Ada";
    yard.id = edit(book, AddYard{yard}).added<Yard>().value();
    yard.note = "b", must(book.apply(SingleEdit(ChangeYard{yard}), later(500), "Ada"));
    yard.note = "c", must(book.apply(SingleEdit(ChangeYard{yard}), later(499), "Ada"));
    const auto story = must(book.story(10));
    ASSERT_EQ(story.size(), 3u);
    EXPECT_EQ(story[0].at, later(499));
    EXPECT_EQ(story[1].at, later(500)) << "when it was done stays as it was";
    yard.note = "d", must(book.apply(SingleEdit(ChangeYard{yard}), later(499 + mergeSeconds), "Ada"));
    EXPECT_EQ(must(book.story(10)).size(), 3u);
}

TEST(Book, ItsMimeTypeNamesTheSameApplication) {
    const auto mime = bytesOf(SOURCE_FOLDER "/resources/org.winterlarder.Winterlarder.mime.xml");
    EXPECT_THAT(mime, testing::HasSubstr(fmt::format("offset=\"68\" value=\"0x{:08X}\"", applicationId)));
    EXPECT_THAT(mime, testing::HasSubstr(fmt::format("*{}", bookExtension)));
}

} // namespace
} // namespace winterlarder::book::book_test
