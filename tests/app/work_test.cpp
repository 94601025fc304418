// SPDX-License-Identifier: GPL-3.0-or-later
// What was asked of another thread is told exactly once, on the thread that asked, whatever happens to it.
#include "app/book_desk.h"
#include "models/problem_words.h"
#include "work/newest_work.h"
#include "work/read_file.h"
#include "work/work_in_order.h"

#include <QSignalSpy>
#include <QThread>

#include <atomic>
#include <memory>

namespace winterlarder::desk {

using invented::BookDesk;
using invented::colony;
using invented::waitFor;

namespace {

//! What came back of each request, in order.
struct Told {
    QStringList came;
    void take(const char* name, const Outcome<int>& outcome) {
        EXPECT_EQ(QThread::currentThread(), qApp->thread()) << "told on the thread that asked";
        came << QStringLiteral("%1 %2").arg(QLatin1String(name)).arg(outcome.ok() ? *outcome : -1);
        if (!outcome.ok()) problems.insert(problems.end(), outcome.problems().begin(), outcome.problems().end());
    }
    Problems problems;
};

//! Work that goes on till it is let go or stopped.
struct Gate {
    std::atomic<bool> open{false};
    std::atomic<int> begun{0}, stopped{0};
    int pass(const std::stop_token& stop = {}) {
        ++begun;
        while (!open && !stop.stop_requested()) std::this_thread::sleep_for(std::chrono::milliseconds(1));
        if (stop.stop_requested()) ++stopped;
        return begun;
    }
};

int broken() { throw std::logic_error("broken"); }

} // namespace

// ---- in order ----------------------------------------------------------------------------------------------------------

TEST(WorkInOrder, EachIsToldOnceInTheOrderAskedAlsoWhereItThrows) {
    WorkInOrder work;
    QSignalSpy idle(&work, &WorkInOrder::idleAgain);
    Told told;
    work.ask(
        &work, [] { return 1; }, [&](const Outcome<int>& made) { told.take("a", made); });
    work.ask(
        &work, [] { return broken(); }, [&](const Outcome<int>& made) { told.take("b", made); });
    work.ask(
        &work, []() -> int { throw 7; }, [&](const Outcome<int>& made) { told.take("c", made); });
    work.ask(
        &work, []() -> Outcome<int> { return inputProblem("no number", {}); },
        [&](const Outcome<int>& made) { told.take("d", made); });
    work.ask(
        &work, [] { return 5; }, [&](const Outcome<int>& made) { told.take("e", made); });
    EXPECT_FALSE(work.idle());
    EXPECT_TRUE(told.came.isEmpty());
    ASSERT_TRUE(waitFor([&] { return work.idle(); }));
    EXPECT_EQ(told.came, (QStringList{"a 1", "b -1", "c -1", "d -1", "e 5"}));
    ASSERT_EQ(told.problems.size(), 3U);
    EXPECT_EQ(told.problems[0].kind, ProblemKind::Internal);
    EXPECT_EQ(told.problems[0].detail, "broken");
    EXPECT_EQ(told.problems[1].kind, ProblemKind::Internal);
    EXPECT_EQ(told.problems[2].kind, ProblemKind::Input);
    EXPECT_EQ(idle.count(), 1);
}

TEST(WorkInOrder, WhatWasAskedIsDoneWhenItEndsAndNothingIsToldAnyMore) {
    std::atomic<int> done{0};
    int told = 0;
    {
        WorkInOrder work;
        for (int i = 0; i < 5; ++i)
            work.ask(
                &work, [&] { return ++done; }, [&](const Outcome<int>&) { ++told; });
    }
    QTest::qWait(5);
    EXPECT_EQ(done, 5);
    EXPECT_EQ(told, 0);
}

TEST(WorkInOrder, ToldToNobodyOnceWhoAskedIsGone) {
    WorkInOrder work;
    auto asker = std::make_unique<QObject>();
    int told = 0;
    work.ask(
        asker.get(), [] { return 1; }, [&](const Outcome<int>&) { ++told; });
    work.ask(
        &work, [] { return 2; }, [&](const Outcome<int>&) { told += 10; });
    asker.reset();
    ASSERT_TRUE(waitFor([&] { return work.idle(); }));
    EXPECT_EQ(told, 10) << "and the next is told all the same";
}

// ---- the newest --------------------------------------------------------------------------------------------------------

TEST(NewestWork, OnlyTheNewestOfAKeyIsTold) {
    NewestWork work;
    Gate gate;
    Told told;
    const auto ask = [&](NewestWork::Key key, const char* name) {
        work.ask(
            key, NewestWork::Turn::Last, &work, [&](const std::stop_token& stop) { return gate.pass(stop); },
            [&, name](const Outcome<int>& made) { told.take(name, made); });
    };
    ask(1, "first");
    ASSERT_TRUE(waitFor([&] { return gate.begun == 1; }));
    ask(2, "other");
    ask(1, "second");
    ask(1, "third");
    gate.open = true;
    ASSERT_TRUE(waitFor([&] { return work.idle(); }));
    QTest::qWait(5);
    EXPECT_EQ(told.came, (QStringList{"other 2", "third 3"}));
    EXPECT_EQ(gate.begun, 3) << "the second was dropped before it began";
    EXPECT_EQ(gate.stopped, 1);
}

TEST(NewestWork, WhatIsDoneAndOvertakenBeforeItIsToldIsNotTold) {
    NewestWork work;
    std::atomic<int> done{0};
    Told told;
    const auto ask = [&](const char* name) {
        work.ask(
            &work, [&](const std::stop_token&) { return ++done; },
            [&, name](const Outcome<int>& made) { told.take(name, made); });
    };
    ask("first");
    while (done == 0) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    std::this_thread::sleep_for(std::chrono::milliseconds(20)); // its end waits to be told by now
    ask("second");
    ASSERT_TRUE(waitFor([&] { return work.idle(); }));
    EXPECT_EQ(told.came, QStringList{"second 2"});
}

TEST(NewestWork, WhatThrowsIsToldOnceAsAnErrorOfOurs) {
    NewestWork work;
    Told told;
    work.ask(
        &work, [](const std::stop_token&) { return broken(); },
        [&](const Outcome<int>& made) { told.take("a", made); });
    ASSERT_TRUE(waitFor([&] { return work.idle(); }));
    EXPECT_EQ(told.came, QStringList{"a -1"});
    ASSERT_EQ(told.problems.size(), 1U);
    EXPECT_EQ(told.problems[0].kind, ProblemKind::Internal);
    const QString said = problemWords(told.problems);
    for (const char* part : {"broken", "not of yours", "is kept", "report"})
        EXPECT_TRUE(said.contains(QLatin1String(part))) << said.toStdString();
    EXPECT_EQ(problemWords(inputProblem("the mass is missing", "say one")),
              QStringLiteral("the mass is missing; say one"));
}

TEST(NewestWork, WhatIsCancelledIsNotToldAndNothingIsWaitedFor) {
    NewestWork work;
    QSignalSpy idle(&work, &NewestWork::idleAgain);
    Gate gate;
    int told = 0;
    work.ask(
        &work, [&](const std::stop_token& stop) { return gate.pass(stop); }, [&](const Outcome<int>&) { ++told; });
    ASSERT_TRUE(waitFor([&] { return gate.begun == 1; }));
    work.cancel();
    EXPECT_TRUE(work.idle());
    EXPECT_EQ(idle.count(), 1);
    work.ask(
        &work, [](const std::stop_token&) { return 1; }, [&](const Outcome<int>&) { told += 10; });
    ASSERT_TRUE(waitFor([&] { return work.idle(); }));
    EXPECT_EQ(told, 10);
    EXPECT_EQ(gate.stopped, 1);
}

TEST(NewestWork, WhatIsInterruptedIsRunAgainAndToldOnce) {
    NewestWork work;
    Gate gate;
    Told told;
    work.ask(
        1, NewestWork::Turn::Last, &work, [&](const std::stop_token& stop) { return gate.pass(stop); },
        [&](const Outcome<int>& made) { told.take("slow", made); });
    ASSERT_TRUE(waitFor([&] { return gate.begun == 1; }));
    work.ask(
        2, NewestWork::Turn::First, &work, [](const std::stop_token&) { return 9; },
        [&](const Outcome<int>& made) { told.take("quick", made); });
    ASSERT_TRUE(waitFor([&] { return gate.begun == 2; }));
    gate.open = true;
    ASSERT_TRUE(waitFor([&] { return work.idle(); }));
    EXPECT_EQ(told.came, (QStringList{"quick 9", "slow 2"}));
}

TEST(NewestWork, ToldToNobodyOnceWhoAskedIsGone) {
    NewestWork work;
    auto asker = std::make_unique<QObject>();
    int told = 0;
    work.ask(
        asker.get(), [](const std::stop_token&) { return 1; }, [&](const Outcome<int>&) { ++told; });
    asker.reset();
    ASSERT_TRUE(waitFor([&] { return work.idle(); }));
    EXPECT_EQ(told, 0);
}

// ---- of a book ---------------------------------------------------------------------------------------------------------

TEST_F(BookDesk, WhatIsAskedOfTheBookIsToldOnceAlsoWhereItThrows) {
    open({colony("A")});
    Told told;
    book.ask(
        &book, [](book::Book&) { return 1; }, [&](const Outcome<int>& made) { told.take("a", made); });
    book.ask(
        &book, [](book::Book&) { return broken(); }, [&](const Outcome<int>& made) { told.take("b", made); });
    settle();
    EXPECT_EQ(told.came, (QStringList{"a 1", "b -1"}));
    EXPECT_EQ(told.problems.at(0).kind, ProblemKind::Internal);
}

TEST_F(BookDesk, WithoutABookThatIsTold) {
    Told told;
    book.ask(
        &book, [](book::Book&) { return 1; }, [&](const Outcome<int>& made) { told.take("a", made); });
    settle();
    EXPECT_EQ(told.came, QStringList{"a -1"});
    EXPECT_NE(told.problems.at(0).detail.find("no longer open"), std::string::npos);
}

TEST_F(BookDesk, WhatIsAskedOfAnEarlierBookIsNeitherDoneNorTold) {
    open({colony("A")});
    std::atomic<int> done{0};
    int told = 0;
    const auto ask = [&] {
        book.ask(
            &book, [&](book::Book&) { return ++done; }, [&](const Outcome<int>&) { ++told; });
    };
    book.close();
    ask();
    settle();
    EXPECT_EQ(done, 0);
    EXPECT_EQ(told, 0);
    book.open(file());
    settle();
    book.open(file()); // the same again: what was meant for the book as it was is not done either
    ask();
    settle();
    EXPECT_EQ(done, 0);
    EXPECT_EQ(told, 0);
    ask();
    settle();
    EXPECT_EQ(done, 1);
    EXPECT_EQ(told, 1);
}

TEST_F(BookDesk, WhereAnotherBookCannotBeOpenedTheOneAtHandGoesOn) {
    open({colony("A")});
    std::atomic<int> done{0};
    int told = 0;
    Problems why;
    book.open(file("none.larder"), book::OpenFor::Writing, [&](const Problems& problems) { why = problems; });
    book.ask(
        &book, [&](book::Book&) { return ++done; }, [&](const Outcome<int>&) { ++told; });
    settle();
    EXPECT_FALSE(why.empty()) << "told to who asked";
    EXPECT_EQ(done, 1);
    EXPECT_EQ(told, 1);
}

TEST_F(BookDesk, AnErrorWhileABookIsOpenedIsToldAndLeavesNone) {
    open({colony("A")});
    QSignalSpy failed(&book, &OpenBook::openFailed);
    int told = 0;
    book.create(
        file("new.larder"), [](book::YardId, book::ColonyId) -> book::EditGroup { throw std::logic_error("broken"); },
        [&](const Problems& problems) {
            told += problems.empty() ? 100 : 1;
            EXPECT_TRUE(isOurs(problems));
        });
    settle();
    EXPECT_EQ(told, 1);
    EXPECT_EQ(failed.count(), 1);
    EXPECT_TRUE(book.isOpen()) << "the one at hand stays";
    EXPECT_EQ(yard.colonies().size(), 1U);
}

// ---- files -------------------------------------------------------------------------------------------------------------

TEST(ReadFile, AStoppedReadingEnds) {
    const QTemporaryDir folder;
    const QString name = folder.filePath(QStringLiteral("long.csv"));
    {
        QFile file(name);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray(1 << 20, 'x'));
    }
    std::stop_source stop;
    EXPECT_EQ(readFile(name, limits::tableText, stop.get_token())->size(), 1U << 20);
    StoppableBuffer buffer(stop.get_token());
    ASSERT_TRUE(buffer.open(name.toStdString(), std::ios::in));
    std::istream stream(&buffer);
    EXPECT_EQ(stream.get(), 'x');
    stop.request_stop();
    std::string rest(std::istreambuf_iterator<char>(stream), {});
    EXPECT_LT(rest.size(), 1U << 19) << "no more than was read ahead";
    EXPECT_FALSE(readFile(name, limits::tableText, stop.get_token()).ok());
    EXPECT_FALSE(readFile(folder.filePath(QStringLiteral("none")), limits::tableText, {}).ok());
}

TEST(ReadFile, OneThatIsTooLargeIsRefusedAndAnEndlessOneToo) {
    const QTemporaryDir folder;
    const QString name = folder.filePath(QStringLiteral("case.json"));
    const auto write = [&](std::size_t bytes) {
        QFile file(name);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray(static_cast<qsizetype>(bytes), 'x'));
    };
    write(limits::caseText.bytes);
    EXPECT_EQ(readFile(name, limits::caseText, {})->size(), limits::caseText.bytes);
    write(limits::caseText.bytes + 1);
    for (const QString& large : {name, QStringLiteral("/dev/zero")}) {
        const auto refused = readFile(large, limits::caseText, {});
        ASSERT_FALSE(refused.ok());
        EXPECT_EQ(refused.problems().front(), limits::tooLarge({large.toStdString(), 0, 0}, limits::caseText));
    }
}

} // namespace winterlarder::desk
