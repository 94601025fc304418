// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/answer_queue.h"

#include "app/invented.h"

#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace winterlarder::desk {

using std::chrono::milliseconds;

namespace {

//! Answers nothing until it is let go on, and heeds being stopped only then: what is asked meanwhile surely comes while the first is under way.
class HeldAdviser : public Adviser {
public:
    Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int place, std::stop_token stop) const override {
        ++asked;
        for (int waited = 0; !goOn && waited < 10000; ++waited) std::this_thread::sleep_for(milliseconds(1));
        if (!stop.stop_requested()) return atOnce_.answer(record, place, stop);
        ++stopped;
        return AnsweredPointer();
    }
    std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>& yard,
                                          advice::MovingCombs moving) const override {
        return atOnce_.shareOut(yard, moving);
    }
    bool isAskedFirst() const {
        return QTest::qWaitFor([this] { return asked == 1; }, 5000);
    }

    mutable std::atomic<int> asked{0}, stopped{0};
    std::atomic<bool> goOn{false};

private:
    invented::SlowAdviser atOnce_{milliseconds(0)};
};

} // namespace

TEST(AnswerQueue, TheNewestRequestOfAColonyWins) {
    const auto adviser = std::make_shared<HeldAdviser>();
    AnswerQueue queue(adviser);
    std::vector<AnsweredPointer> answers;
    QObject::connect(&queue, &AnswerQueue::answered,
                     [&](ColonyId, const AnsweredPointer& answer) { answers.push_back(answer); });
    QSignalSpy idle(&queue, &AnswerQueue::idleAgain);
    queue.ask(ColonyId{1}, 0, invented::colony("A", 5), NewestWork::Turn::First);
    ASSERT_TRUE(adviser->isAskedFirst());
    queue.ask(ColonyId{1}, 0, invented::colony("A", 6), NewestWork::Turn::First);
    queue.ask(ColonyId{1}, 0, invented::colony("A", 7), NewestWork::Turn::First);
    adviser->goOn = true;
    ASSERT_TRUE(idle.wait(5000));
    ASSERT_EQ(answers.size(), 1U) << "older requests are dropped, not answered late";
    EXPECT_EQ(answers.front()->record.bees.coveredCombs, 7);
    EXPECT_EQ(adviser->stopped, 1) << "the one under way was stopped";
    EXPECT_EQ(adviser->asked, 2) << "the one waiting was never begun";
}

TEST(AnswerQueue, AColonyLookedAtGoesFirst) {
    const auto adviser = std::make_shared<HeldAdviser>();
    AnswerQueue queue(adviser);
    std::vector<std::int64_t> order;
    QObject::connect(&queue, &AnswerQueue::answered,
                     [&](ColonyId id, const AnsweredPointer&) { order.push_back(id.number); });
    QSignalSpy idle(&queue, &AnswerQueue::idleAgain);
    for (int i = 1; i <= 4; ++i) queue.ask(ColonyId{i}, i, invented::colony("A"), NewestWork::Turn::Last);
    ASSERT_TRUE(adviser->isAskedFirst());
    queue.ask(ColonyId{9}, 9, invented::colony("B"), NewestWork::Turn::First);
    adviser->goOn = true;
    ASSERT_TRUE(idle.wait(5000));
    ASSERT_EQ(order.size(), 5U);
    EXPECT_EQ(order.front(), 9);
}

TEST(AnswerQueue, WhatGoesFirstInterruptsTheOthersAndTheyGoOnInTheirOrder) {
    for (const bool hurried : {false, true}) {
        const auto adviser = std::make_shared<HeldAdviser>();
        AnswerQueue queue(adviser);
        std::vector<std::int64_t> order;
        QObject::connect(&queue, &AnswerQueue::answered,
                         [&](ColonyId id, const AnsweredPointer&) { order.push_back(id.number); });
        QSignalSpy idle(&queue, &AnswerQueue::idleAgain);
        for (int i = 1; i <= 3; ++i) queue.ask(ColonyId{i}, i, invented::colony("A"), NewestWork::Turn::Last);
        ASSERT_TRUE(adviser->isAskedFirst());
        if (hurried) queue.hurry(ColonyId{3});
        else queue.ask(ColonyId{3}, 3, invented::colony("A"), NewestWork::Turn::First);
        queue.hurry(ColonyId{8}); // nothing was asked for it
        adviser->goOn = true;
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
