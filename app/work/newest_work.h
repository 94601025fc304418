// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "work/pace.h"
#include "work/task.h"

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <map>
#include <mutex>
#include <set>
#include <thread>

namespace winterlarder::desk {

//! A worker thread on which the newest request wins. Requests have a key (a colony, a dialog); a newer one of the same
//! key takes the place of an older one, which is stopped if it runs. One whose turn is First interrupts others; they are
//! run again after it, from their beginning. Lives on the thread that made it. When it is destroyed what runs is stopped
//! and waited for. Tested: tests/app/work_test.cpp.
class NewestWork : public QObject {
    Q_OBJECT

public:
    using Key = std::int64_t;
    enum class Turn { First, Last };

    explicit NewestWork(QObject* parent = nullptr, Pace pace = Pace::Slow);
    ~NewestWork() override;

    //! Runs work(stop) on the worker, then then(Outcome) here: exactly once, whatever work() throws; not at all for a
    //! request that was overtaken or dropped, nor once `context` is destroyed.
    template <class Work, class Then> void ask(Key key, Turn turn, QObject* context, Work work, Then then) {
        put(key, turn, taskOf(context, std::move(work), std::move(then)));
    }
    template <class Work, class Then> void ask(QObject* context, Work work, Then then) {
        ask(0, Turn::Last, context, std::move(work), std::move(then));
    }
    //! What was asked for this key goes before the others that wait.
    void hurry(Key key);
    void drop(Key key);
    void keepOnly(const std::set<Key>& wanted); //!< all others are dropped
    void cancel() { keepOnly({}); }
    bool idle() const { return awaited_.empty(); } //!< nothing waits, runs, or is still to follow

signals:
    void idleAgain();
    void workDone(QPrivateSignal); //!< from the worker

private:
    struct Request {
        Key key = 0;
        quint64 number = 0;
        Turn turn = Turn::Last;
        std::function<void(const std::stop_token&)> work;
        std::stop_source stop;
    };
    struct Awaited {
        quint64 number = 0;
        std::function<void()> then;
    };
    void put(Key key, Turn turn, Task task);
    void interruptForFirst();
    void run(const std::stop_token& end);
    std::optional<Request> next(const std::stop_token& end);
    void deliver(); //!< what was done first

    std::map<Key, Awaited> awaited_; //!< the newest of each key; touched on the asking thread only
    quint64 lastNumber_ = 0;

    std::mutex mutex_; //!< guards what follows
    std::condition_variable_any waiting_;
    std::deque<Request> queue_;
    std::optional<Request> running_;
    std::deque<std::pair<Key, quint64>> done_; //!< key and number of which what follows has not begun

    std::jthread thread_;
};

} // namespace winterlarder::desk
