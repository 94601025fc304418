// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/case_of.h"
#include "book/verb_examples.h"

#include <atomic>
#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>
#include <thread>

namespace winterlarder::book::colony_history_test {
namespace {

using namespace support;

class ColonyHistoryTest : public testing::Test {
protected:
    BookFolder folder;
    Book book = newBook(folder / "a.larder");
};

TEST_F(ColonyHistoryTest, HoldsEveryRecordOfTheColonyAndNoOther) {
    furnish(book, 5, 4);
    for (const auto& colony : must(book.all<Colony>())) {
        const auto history = must(historyOf(book, colony.id));
        EXPECT_EQ(history.colony, colony);
        int lists = 0;
        eachList(history, [&]<class Entry>(const std::vector<Entry>& list) {
            EXPECT_EQ(list, must(book.of<Entry>(colony.id))) << tableOf(kindOf<Entry>).name;
            ++lists;
        });
        EXPECT_EQ(lists, kindCount - 3) << "all kinds but yards, colonies and weather";
    }
}

TEST_F(ColonyHistoryTest, AColonyThatIsGoneHasNone) {
    EXPECT_EQ(must(findHistory(book, {1})), std::nullopt);
    const auto none = historyOf(book, {1});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.problems().front().detail, "there is no colony 1");
}

TEST_F(ColonyHistoryTest, OnADayThereIsNothingOfLaterDaysButPlans) {
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "Pear")});
    for (const char* date : {"2026-09-10", "2026-09-11"}) {
        edit(book, AddLook{lookAt({1}, day(date))});
        edit(book, AddWeighing{weighingOf({1}, day(date), 40)});
        edit(book, AddPlannedVisit{{.colony = {1}, .date = day(date)}});
    }
    const auto then = historyUntil(must(historyOf(book, {1})), day("2026-09-10"));
    ASSERT_EQ(then.looks.size(), 1U);
    EXPECT_EQ(then.looks[0].date, day("2026-09-10"));
    ASSERT_EQ(then.weighings.size(), 1U);
    EXPECT_EQ(then.weighings[0].weighing.date, day("2026-09-10"));
    EXPECT_EQ(then.visits.size(), 2U);
}

//! A writer adds a look and a weighing in one edit; a reader that finds other than as many of one as of the other has read two moments.
TEST_F(ColonyHistoryTest, IsReadInOneTransaction) {
    edit(book, AddYard{orchard()});
    edit(book, AddColony{colonyIn({1}, "Pear")});
    std::atomic<bool> done{false};
    std::atomic<int> reads{0}, torn{0};
    std::thread reader([&] {
        auto mine = openBook(folder / "a.larder", OpenFor::Reading);
        while (!done) {
            const auto history = must(historyOf(mine, {1}));
            if (history.looks.size() != history.weighings.size()) ++torn;
            ++reads;
            std::this_thread::sleep_for(std::chrono::microseconds(100));
        }
    });
    for (int number = 1; number <= 150; ++number)
        must(book.apply(
            EditGroup{"both",
                      {AddLook{lookAt({1}, day("2026-09-10"))}, AddWeighing{weighingOf({1}, day("2026-09-10"), 40)}}},
            later(number), "Ada"));
    done = true;
    reader.join();
    EXPECT_EQ(torn, 0);
    EXPECT_GT(reads, 20);
}

// ---- edits of the value ---------------------------------------------------------------------------------------------------

bool holds(const ColonyHistory& history, const Touched& entry) {
    bool found = entry.kind == Kind::Colony && history.colony.id.number == entry.id;
    eachList(history, [&]<class Entry>(const std::vector<Entry>& list) {
        if (kindOf<Entry> == entry.kind)
            for (const auto& each : list) found = found || each.id.number == entry.id;
    });
    return found;
}

//! The edit changes an entry the history does not hold, or nothing at all.
bool concernsOthers(const Applied& applied, const ColonyHistory& history) {
    return applied.touched.empty() ||
           std::any_of(applied.touched.begin(), applied.touched.end(),
                       [&](const Touched& entry) { return entry.how != ChangeHow::Add && !holds(history, entry); });
}

//! Numbers as the book will give them.
NewNumber numbersOf(Book& book) {
    std::map<Kind, std::int64_t> next;
    for (const auto& table : tables()) next[table.kind] = must(book.nextId(table.kind));
    return [next](Kind kind) mutable { return next[kind]++; };
}

struct Compared {
    int told = 0;  //!< histories that told what the edit makes of them
    int wrong = 0; //!< otherwise than the book, or told nothing of an edit of their own
};

//! Without the colonies united into it, which are read anew.
std::optional<ColonyHistory> ownPart(std::optional<ColonyHistory> history) {
    if (history) history->united.clear();
    return history;
}

//! Edits every colony's history and the book, and holds one against the other. Nothing where the book refuses the edit.
Compared compare(Book& book, const SingleEdit& single) {
    std::vector<ColonyHistory> before;
    std::vector<Outcome<std::optional<ColonyHistory>>> edited;
    for (const auto& colony : must(book.all<Colony>())) {
        before.push_back(must(historyOf(book, colony.id)));
        edited.push_back(afterEdit(Edit(single), before.back(), "Ada", numbersOf(book)));
    }
    Compared compared;
    const auto applied = book.apply(Edit(single), later(3600), "Ada");
    if (!applied) return compared;
    for (std::size_t i = 0; i < before.size(); ++i) {
        if (!edited[i]) {
            if (!concernsOthers(*applied, before[i])) ++compared.wrong;
            continue;
        }
        ++compared.told;
        if (ownPart(*edited[i]) != ownPart(must(findHistory(book, before[i].colony.id)))) ++compared.wrong;
    }
    return compared;
}

template <class Verb> void compareVerb() {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, 3);
    const SingleEdit single = Example{book}(static_cast<Verb*>(nullptr));
    SCOPED_TRACE(verbOf(single));
    const auto compared = compare(book, single);
    EXPECT_EQ(compared.wrong, 0);
    constexpr bool aboutYards = isAmong<Verb, std::variant<ChangeYard, RemoveYard, ChangeWeatherLog, RemoveWeatherLog>>;
    if (!aboutYards) EXPECT_GT(compared.told, 0) << "no history knew what becomes of it";
}

template <class... Verbs> void compareVerbs(std::variant<Verbs...>*) { (compareVerb<Verbs>(), ...); }

TEST(AfterEdit, EveryVerbMakesOfAHistoryWhatTheBookThenHolds) { compareVerbs(static_cast<AnyVerb*>(nullptr)); }

RC_GTEST_PROP(AfterEdit, RandomEditsMakeOfAHistoryWhatTheBookThenHolds, (std::uint64_t seed)) {
    BookFolder folder;
    auto book = newBook(folder / "a.larder");
    furnish(book, seed, 2);
    Dice dice(seed);
    for (int made = 0; made < 10; ++made)
        if (const auto single = someEdit(book, dice)) RC_ASSERT(compare(book, *single).wrong == 0);
}

TEST_F(ColonyHistoryTest, AnEditOfWhatTheHistoryDoesNotHoldIsAProblem) {
    furnish(book, 3);
    const auto history = must(historyOf(book, {1}));
    const auto gone = afterEdit(SingleEdit(RemoveLook{{999}}), history, "Ada", numbersOf(book));
    ASSERT_FALSE(gone);
    EXPECT_EQ(gone.problems().front().detail, "there is no look 999");
    EXPECT_EQ(must(afterEdit(SingleEdit(RemoveColony{{1}}), history, "Ada", numbersOf(book))), std::nullopt);
}

TEST_F(ColonyHistoryTest, SeveralEditsTogetherSeeOneAnother) {
    furnish(book, 3);
    const auto before = must(historyOf(book, {1}));
    const auto visits = must(book.of<PlannedVisit>({1})).size();
    const PlannedVisit planned{
        .colony = {1}, .date = day("2026-09-20"), .what = VisitKind::Syrup, .sugar = kilograms(3)};
    const auto number = must(book.nextId(Kind::PlannedVisit));
    const EditGroup both{"fed", {AddPlannedVisit{planned}, MarkVisitDone{{number}, day("2026-09-21"), "3:2"}}};
    const auto after = must(afterEdit(both, before, "Ada", numbersOf(book)));
    must(book.apply(both, later(60), "Ada"));
    EXPECT_EQ(after, must(findHistory(book, {1})));
    EXPECT_EQ(after->visits.size(), visits + 1);
}

TEST_F(ColonyHistoryTest, ACaseIsMadeOfTheValueAlone) {
    furnish(book, 8, 3);
    const auto yards = must(book.all<Yard>());
    for (const auto& colony : must(book.all<Colony>())) {
        const auto history = must(historyOf(book, colony.id));
        EXPECT_EQ(caseOf(history, yards, shipped(), day("2026-09-12")),
                  must(caseOf(book, colony.id, day("2026-09-12"))));
    }
}

} // namespace
} // namespace winterlarder::book::colony_history_test
