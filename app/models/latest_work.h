// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/background.h"

#include <QObject>

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

namespace winterlarder::desk {

//! Does the newest piece of work on a thread of its own: what was asked before and has not begun is dropped, what is under way is
//! stopped, and what it brings late is thrown away. Lives on the thread that made it. Tested: tests/app/following_test.cpp.
class LatestWork : public QObject {
    Q_OBJECT

public:
    using Finish = std::function<void()>; //!< carried out on the owner's thread; may be empty
    using Work = std::function<Finish(std::stop_token)>;

    explicit LatestWork(QObject* parent = nullptr, Pace pace = Pace::Slow);
    ~LatestWork() override;

    void ask(Work work);
    void cancel(); //!< nothing of what was asked is finished any more
    bool idle() const { return unfinished_ == 0; }

signals:
    void idleAgain();
    void failed(const QString& what); //!< a programmer's error in the work

private:
    struct Request {
        quint64 number = 0;
        Work work;
        std::stop_source stop;
    };
    void run(const std::stop_token& end, Pace pace);
    void deliver(quint64 number, const Finish& finish);

    quint64 newest_ = 0;     //!< touched on the owner's thread only
    quint64 unfinished_ = 0; //!< number of the request that is waited for; 0: none

    std::mutex mutex_; //!< guards what follows
    std::condition_variable_any waiting_;
    std::optional<Request> next_;
    std::optional<std::stop_source> running_;

    std::jthread worker_;
};

} // namespace winterlarder::desk
