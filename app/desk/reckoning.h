// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/adviser.h"
#include "models/background.h"

#include <QObject>

#include <condition_variable>
#include <deque>
#include <map>
#include <mutex>
#include <set>
#include <thread>

namespace winterlarder::desk {

//! Computes answers on a thread of its own. For each colony the newest request wins: an older one still waiting is dropped,
//! one under way is stopped, and whatever comes back late is thrown away. One that goes first is begun at once; what it interrupts
//! waits right behind it. Lives and signals on the thread that made it.
//! Tested: tests/app/reckoning_test.cpp.
class Reckoning : public QObject {
    Q_OBJECT

public:
    explicit Reckoning(std::shared_ptr<const Adviser> adviser, Pace pace = Pace::Steady, QObject* parent = nullptr);
    ~Reckoning() override;

    //! Asks for an answer; `first` puts it before those that wait (the colony being looked at).
    void ask(ColonyId id, int position, const book::ColonyCase& record, bool first);
    //! What was asked for this colony goes before the others that wait.
    void hurry(ColonyId id);
    //! Requests for other colonies than these are dropped: their yard is no longer shown.
    void keepOnly(const std::set<ColonyId>& wanted);
    bool idle() const { return newest_.empty(); }

signals:
    void answered(winterlarder::desk::ColonyId id, winterlarder::desk::AnsweredPointer answered);
    void contradicted(winterlarder::desk::ColonyId id, winterlarder::book::ColonyCase record, winterlarder::Problems problems);
    void idleAgain(); //!< nothing waits and nothing runs

private:
    struct Request {
        ColonyId id;
        int position = 0;
        quint64 number = 0;
        book::ColonyCase record;
        std::stop_source stop;
        bool first = false;
    };
    void interruptForFirst();
    void work(const std::stop_token& end);
    std::optional<Request> next(const std::stop_token& end);
    void deliver(const Request& request, const Outcome<AnsweredPointer>& outcome);

    std::shared_ptr<const Adviser> adviser_;
    std::map<ColonyId, quint64> newest_; //!< requests not yet answered; touched on the owner's thread only
    quint64 lastNumber_ = 0;

    std::mutex mutex_; //!< guards what follows
    std::condition_variable_any waiting_;
    std::deque<Request> queue_;
    std::optional<Request> running_;

    std::jthread worker_;
};

} // namespace winterlarder::desk
