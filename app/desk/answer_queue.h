// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/adviser.h"
#include "work/newest_work.h"

#include <QObject>

#include <set>

namespace winterlarder::desk {

//! Computes answers on a thread of its own. For each colony the newest request wins: an older one still waiting is dropped,
//! one under way is stopped, and whatever comes back late is thrown away. One that goes first is begun at once; what it interrupts
//! waits right behind it. Lives and signals on the thread that made it.
//! Tested: tests/app/answer_queue_test.cpp.
class AnswerQueue : public QObject {
    Q_OBJECT

public:
    explicit AnswerQueue(std::shared_ptr<const Adviser> adviser, Pace pace = Pace::Steady, QObject* parent = nullptr);

    //! Asks for an answer; the turn First puts it before those that wait (the colony being looked at).
    void ask(ColonyId id, int position, const book::ColonyCase& record, NewestWork::Turn turn);
    //! What was asked for this colony goes before the others that wait.
    void hurry(ColonyId id) { work_.hurry(id.number); }
    //! Requests for other colonies than these are dropped: their yard is no longer shown.
    void keepOnly(const std::set<ColonyId>& wanted);
    bool idle() const { return work_.idle(); }

signals:
    void answered(winterlarder::desk::ColonyId id, winterlarder::desk::AnsweredPointer answered);
    //! No answer: the records contradict each other, or it could not be worked out (a problem of kind Internal).
    void contradicted(winterlarder::desk::ColonyId id, winterlarder::book::ColonyCase record,
                      winterlarder::Problems problems);
    void idleAgain(); //!< nothing waits and nothing runs

private:
    std::shared_ptr<const Adviser> adviser_;
    NewestWork work_;
};

} // namespace winterlarder::desk
