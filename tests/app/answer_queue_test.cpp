// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/answer_queue.h"

#include "app/invented.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace winterlarder::desk {

using std::chrono::milliseconds;

TEST(AnswerQueue, TheNewestRequestOfAColonyWins) {
    const auto adviser = std::make_shared<invented::SlowAdviser>(milliseconds(60));
    AnswerQueue queue(adviser);
    std::vector<AnsweredPointer> answers;
    QObject::connect(&queue, &AnswerQueue::answered,
                     [&](ColonyId, const AnsweredPointer& answer) { answers.push_back(answer); });
    QSignalSpy idle(&queue, &AnswerQueue::idleAgain);
    queue.ask(ColonyId{1}, 0, invented::colony("A", 5), NewestWork::Turn::First);
    QTest::qWait(15);
    queue.ask(ColonyId{1}, 0, invented::colony("A", 6), NewestWork::Turn::First);
    queue.ask(ColonyId{1}, 0, invented::colony("A", 7), NewestWork::Turn::First);
    ASSERT_TRUE(idle.wait(5000));
    ASSERT_EQ(answers.size(), 1U) << "older requests are dropped, not answered late";
    EXPECT_EQ(answers.front()->record.bees.coveredCombs, 7);
    EXPECT_EQ(adviser->stopped, 1) << "the one under way was stopped";
    EXPECT_EQ(adviser->asked, 2) << "the one waiting was never begun";
}

TEST(AnswerQueue, AColonyLookedAtGoesFirst) {
    const auto adviser = std::make_shared<invented::SlowAdviser>(milliseconds(20));
    AnswerQueue queue(adviser);
    std::vector<std::int64_t> order;
    QObject::connect(&queue, &AnswerQueue::answered,
                     [&](ColonyId id, const AnsweredPointer&) { order.push_back(id.number); });
    QSignalSpy idle(&queue, &AnswerQueue::idleAgain);
    for (int i = 1; i <= 4; ++i) queue.ask(ColonyId{i}, i, invented::colony("A"), NewestWork::Turn::Last);
    QTest::qWait(5);
    queue.ask(ColonyId{9}, 9, invented::colony("B"), NewestWork::Turn::First);
    ASSERT_TRUE(idle.wait(5000));
    ASSERT_EQ(order.size(), 5U);
    EXPECT_LE(std::find(order.begin(), order.end(), 9) - order.begin(), 1);
}

TEST(AnswerQueue, WhatGoesFirstInterruptsTheOthersAndTheyGoOnInTheirOrder) {
    const auto adviser = std::make_shared<invented::SlowAdviser>(milliseconds(60));
    for (const bool hurried : {false, true}) {
        AnswerQueue queue(adviser);
        adviser->stopped = 0;
        std::vector<std::int64_t> order;
        QObject::connect(&queue, &AnswerQueue::answered,
                         [&](ColonyId id, const AnsweredPointer&) { order.push_back(id.number); });
        QSignalSpy idle(&queue, &AnswerQueue::idleAgain);
        for (int i = 1; i <= 3; ++i) queue.ask(ColonyId{i}, i, invented::colony("A"), NewestWork::Turn::Last);
        QTest::qWait(15);
        if (hurried) queue.hurry(ColonyId{3});
        else queue.ask(ColonyId{3}, 3, invented::colony("A"), NewestWork::Turn::First);
        queue.hurry(ColonyId{8}); // nothing was asked for it
        ASSERT_TRUE(idle.wait(5000));
        EXPECT_EQ(order, (std::vector<std::int64_t>{3, 1, 2}));
        EXPECT_EQ(adviser->stopped, 1);
    }
}

TEST(AnswerQueue, EndsAtOnceWhileWorkIsUnderWay) {
    const auto adviser = std::make_shared<invented::SlowAdviser>(milliseconds(20000));
    const auto began = std::chrono::steady_clock::now();
    {
        AnswerQueue queue(adviser);
        queue.ask(ColonyId{1}, 0, invented::colony("A"), NewestWork::Turn::First);
        QTest::qWait(20);
    }
    EXPECT_LT(std::chrono::steady_clock::now() - began, std::chrono::seconds(10));
}

} // namespace winterlarder::desk
