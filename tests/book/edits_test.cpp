// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/verb_examples.h"

#include <gmock/gmock.h>

//! A walk over the whole list of edits: no verb without an inverse, no verb that undo and redo do not carry.
namespace winterlarder::book::edits_test {
namespace {

using namespace support;

//! The example of verb number `Verb` is carried out, taken back by its inverse, by undo, and done again by redo.
template <class Verb> void walk() {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 3);
    const SingleEdit single = Example{book}(static_cast<Verb*>(nullptr));
    const auto verb = verbOf(single);
    SCOPED_TRACE(verb);
    const auto before = must(book.dump());
    const auto applied = must(book.apply(single, later(3600), "Bo"));
    const auto after = must(book.dump());
    ASSERT_NE(after, before) << "the example changes nothing";
    ASSERT_TRUE(applied.step);
    EXPECT_FALSE(applied.touched.empty());
    EXPECT_EQ(must(book.story(1)).front().verb, verb);
    EXPECT_EQ(must(book.story(1)).front().who, "Bo");
    must(book.undo(later(3700), "Bo"));
    EXPECT_EQ(must(book.dump()), before) << "undo";
    must(book.redo(later(3800), "Bo"));
    EXPECT_EQ(must(book.dump()), after) << "redo";
    must(book.apply(applied.inverse, later(9000), "Bo"));
    EXPECT_EQ(must(book.dump()), before) << "inverse";
    must(book.undo(later(9100), "Bo"));
    EXPECT_EQ(must(book.dump()), after) << "the inverse can be undone as well";
    EXPECT_THAT(must(book.check()), testing::IsEmpty());
}

template <class... Verbs> void walkAll(std::variant<Verbs...>*) { (walk<Verbs>(), ...); }

TEST(Edits, EveryVerbHasAnInverse) { walkAll(static_cast<SingleEdit*>(nullptr)); }

template <class... Verbs> std::vector<std::string> verbNames(Book& book, std::variant<Verbs...>*) {
    return {verbOf(SingleEdit(Example{book}(static_cast<Verbs*>(nullptr))))...};
}

TEST(Edits, EveryVerbHasANameOfItsOwn) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 3);
    auto names = verbNames(book, static_cast<SingleEdit*>(nullptr));
    std::sort(names.begin(), names.end());
    EXPECT_EQ(std::adjacent_find(names.begin(), names.end()), names.end());
}

TEST(Edits, SeveralTogetherAreOneStepAndAllOrNothing) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 3);
    const auto before = must(book.dump());
    const EditGroup removal{"remove looks", {RemoveLook{{1}}, RemoveLook{{2}}}};
    must(book.apply(removal, later(60), "Ada"));
    EXPECT_EQ(must(book.story(1)).front().changes.size(), 2u);
    must(book.undo(later(61), "Ada"));
    EXPECT_EQ(must(book.dump()), before);
    const EditGroup halfWrong{"remove looks", {RemoveLook{{1}}, RemoveLook{{999}}}};
    const auto refused = book.apply(halfWrong, later(62), "Ada");
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.problems().at(0).detail, "there is no look 999");
    EXPECT_EQ(must(book.dump()), before);
}

TEST(Edits, AVisitDoneIsWrittenDownAsTheFeedItWas) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "One")});
    const SingleEdit accept = Example{book}(static_cast<AcceptAdvice*>(nullptr));
    edit(book, accept);
    const auto visit = must(book.all<PlannedVisit>()).front();
    EXPECT_EQ(visit.advice, ActedAdviceId{1});
    edit(book, MarkVisitDone{visit.id, day("2026-09-16"), "3:2"});
    EXPECT_EQ(must(book.find(visit.id))->state, VisitState::Done);
    const auto feeds = must(book.of<Feed>({1}));
    ASSERT_EQ(feeds.size(), 1u);
    EXPECT_EQ(feeds[0].feed.date, day("2026-09-16"));
    EXPECT_EQ(feeds[0].feed.sugar, kilograms(3));
}

TEST(Edits, DraggingACombMerges) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 3);
    const auto look = must(book.all<Look>()).back().id;
    const auto steps = must(book.info()).steps;
    for (const double capped : {0.3, 0.31, 0.32, 0.4}) edit(book, ChangeComb{look, 0, comb(capped)});
    EXPECT_EQ(must(book.info()).steps, steps + 1);
    edit(book, ChangeComb{look, 2, comb(0.1)});
    EXPECT_EQ(must(book.info()).steps, steps + 2) << "another comb is another step";
    EXPECT_FALSE(book.apply(SingleEdit(ChangeComb{look, 3, comb(0.1)}), morning, "Ada"));
}

} // namespace
} // namespace winterlarder::book::edits_test
