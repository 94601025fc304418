// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "work/task.h"

#include <condition_variable>
#include <deque>
#include <mutex>
#include <thread>

namespace winterlarder::desk {

//! A worker thread with a queue, first in, first out. Nothing asked is dropped: when this is destroyed it is waited for,
//! only what was to follow is left out. Lives on the thread that made it. Tested: tests/app/work_test.cpp.
class WorkInOrder : public QObject {
    Q_OBJECT

public:
    explicit WorkInOrder(QObject* parent = nullptr);
    ~WorkInOrder() override;

    //! Runs work() on the worker, then then(Outcome) here: exactly once, in the order asked, whatever work() throws; not
    //! at all once `context` is destroyed.
    template <class Work, class Then> void ask(QObject* context, Work work, Then then) {
        auto unstopped = [work = std::move(work)](const std::stop_token&) mutable { return work(); };
        put(taskOf(context, std::move(unstopped), std::move(then)));
    }
    bool idle() const { return following_.empty(); } //!< nothing waits, runs, or is still to follow

signals:
    void idleAgain();
    void workDone(QPrivateSignal); //!< from the worker

private:
    void put(Task task);
    void run();
    void finish(); //!< of the work asked first, once it is done

    std::deque<std::function<void()>> following_; //!< touched on the asking thread only

    std::mutex mutex_; //!< guards what follows
    std::condition_variable waiting_;
    std::deque<std::function<void(const std::stop_token&)>> queue_;
    int done_ = 0; //!< of which what follows has not begun
    bool ending_ = false;

    std::thread thread_;
};

} // namespace winterlarder::desk
