// SPDX-License-Identifier: GPL-3.0-or-later
#include "work/newest_work.h"

#include <algorithm>
#include <tuple>

namespace winterlarder::desk {

NewestWork::NewestWork(QObject* parent, Pace pace) : QObject(parent) {
    connect(this, &NewestWork::workDone, this, &NewestWork::deliver, Qt::QueuedConnection);
    thread_ = std::jthread([this, pace](const std::stop_token& end) {
        keepPace(pace);
        run(end);
    });
}

NewestWork::~NewestWork() {
    thread_.request_stop();
    {
        const std::lock_guard lock(mutex_);
        queue_.clear();
        if (running_) running_->stop.request_stop();
    }
    waiting_.notify_all();
    thread_.join();
}

void NewestWork::put(Key key, Turn turn, Task task) {
    Request request{key, ++lastNumber_, turn, std::move(task.work), {}};
    awaited_[key] = {request.number, std::move(task.then)};
    {
        const std::lock_guard lock(mutex_);
        std::erase_if(queue_, [key](const Request& waiting) { return waiting.key == key; });
        if (running_ && running_->key == key) running_->stop.request_stop();
        else if (turn == Turn::First) interruptForFirst();
        if (turn == Turn::First) queue_.push_front(std::move(request));
        else queue_.push_back(std::move(request));
    }
    waiting_.notify_one();
}

// Called with the lock held. A request that goes first is never interrupted itself; otherwise several could starve
// each other.
void NewestWork::interruptForFirst() {
    if (!running_ || running_->turn == Turn::First || running_->stop.stop_requested()) return;
    running_->stop.request_stop();
    queue_.push_front(*running_);
    queue_.front().stop = std::stop_source();
}

void NewestWork::hurry(Key key) {
    const std::lock_guard lock(mutex_);
    const auto ofKey = [key](const Request& waiting) { return waiting.key == key; };
    const auto found = std::find_if(queue_.begin(), queue_.end(), ofKey);
    if (found == queue_.end()) return;
    auto hurried = std::move(*found);
    queue_.erase(found);
    hurried.turn = Turn::First;
    interruptForFirst();
    queue_.push_front(std::move(hurried));
}

void NewestWork::drop(Key key) {
    std::set<Key> others;
    for (const auto& each : awaited_)
        if (each.first != key) others.insert(each.first);
    keepOnly(others);
}

void NewestWork::keepOnly(const std::set<Key>& wanted) {
    const bool waited = !idle();
    std::erase_if(awaited_, [&](const auto& each) { return !wanted.contains(each.first); });
    {
        const std::lock_guard lock(mutex_);
        std::erase_if(queue_, [&](const Request& waiting) { return !wanted.contains(waiting.key); });
        if (running_ && !wanted.contains(running_->key)) running_->stop.request_stop();
    }
    if (waited && idle()) emit idleAgain();
}

std::optional<NewestWork::Request> NewestWork::next(const std::stop_token& end) {
    std::unique_lock lock(mutex_);
    if (!waiting_.wait(lock, end, [this] { return !queue_.empty(); })) return std::nullopt;
    running_ = std::move(queue_.front());
    queue_.pop_front();
    return running_;
}

void NewestWork::run(const std::stop_token& end) {
    while (const auto request = next(end)) {
        request->work(request->stop.get_token());
        {
            const std::lock_guard lock(mutex_);
            running_.reset();
            if (request->stop.stop_requested()) continue;
            done_.emplace_back(request->key, request->number);
        }
        emit workDone(QPrivateSignal());
    }
}

// The signal only wakes; what was made on the worker is handed over under the lock.
void NewestWork::deliver() {
    Key key = 0;
    quint64 number = 0;
    {
        const std::lock_guard lock(mutex_);
        std::tie(key, number) = done_.front();
        done_.pop_front();
    }
    const auto newest = awaited_.find(key);
    if (newest == awaited_.end() || newest->second.number != number) return;
    const auto then = std::move(newest->second.then);
    awaited_.erase(newest);
    then();
    if (idle()) emit idleAgain();
}

} // namespace winterlarder::desk
