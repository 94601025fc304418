// SPDX-License-Identifier: GPL-3.0-or-later
#include "work/work_in_order.h"

namespace winterlarder::desk {

WorkInOrder::WorkInOrder(QObject* parent) : QObject(parent) {
    connect(this, &WorkInOrder::workDone, this, &WorkInOrder::finish, Qt::QueuedConnection);
    thread_ = std::thread([this] { run(); });
}

WorkInOrder::~WorkInOrder() {
    {
        const std::lock_guard lock(mutex_);
        ending_ = true;
    }
    waiting_.notify_all();
    thread_.join();
}

void WorkInOrder::put(Task task) {
    following_.push_back(std::move(task.then));
    {
        const std::lock_guard lock(mutex_);
        queue_.push_back(std::move(task.work));
    }
    waiting_.notify_one();
}

void WorkInOrder::run() {
    for (;;) {
        std::function<void(const std::stop_token&)> work;
        {
            std::unique_lock lock(mutex_);
            waiting_.wait(lock, [this] { return ending_ || !queue_.empty(); });
            if (queue_.empty()) return;
            work = std::move(queue_.front());
            queue_.pop_front();
        }
        work({});
        {
            const std::lock_guard lock(mutex_);
            ++done_;
        }
        emit workDone(QPrivateSignal());
    }
}

// The signal only wakes; what was made on the worker is handed over under the lock.
void WorkInOrder::finish() {
    {
        const std::lock_guard lock(mutex_);
        --done_;
    }
    const auto then = std::move(following_.front());
    following_.pop_front();
    then();
    if (idle()) emit idleAgain();
}

} // namespace winterlarder::desk
