// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/reckoning.h"

#include <algorithm>
#include <exception>

namespace winterlarder::desk {

Reckoning::Reckoning(std::shared_ptr<const Adviser> adviser, Pace pace, QObject* parent)
    : QObject(parent), adviser_(std::move(adviser)), worker_([this, pace](const std::stop_token& end) {
          keepPace(pace);
          work(end);
      }) {}

Reckoning::~Reckoning() {
    worker_.request_stop();
    {
        const std::lock_guard lock(mutex_);
        queue_.clear();
        if (running_) running_->stop.request_stop();
    }
    waiting_.notify_all();
    worker_.join();
}

void Reckoning::ask(ColonyId id, int position, const book::ColonyCase& record, bool first) {
    Request request{id, position, ++lastNumber_, record, {}, first};
    newest_[id] = request.number;
    {
        const std::lock_guard lock(mutex_);
        std::erase_if(queue_, [id](const Request& waiting) { return waiting.id == id; });
        if (running_ && running_->id == id) running_->stop.request_stop();
        else if (first) interruptForFirst();
        if (first) queue_.push_front(std::move(request));
        else queue_.push_back(std::move(request));
    }
    waiting_.notify_one();
}

// Called with the lock held. What goes first itself is not interrupted, so that many of these do not keep each other from an end.
void Reckoning::interruptForFirst() {
    if (!running_ || running_->first || running_->stop.stop_requested()) return;
    running_->stop.request_stop();
    queue_.push_front(*running_);
    queue_.front().stop = std::stop_source();
}

void Reckoning::hurry(ColonyId id) {
    const std::lock_guard lock(mutex_);
    const auto found = std::find_if(queue_.begin(), queue_.end(), [id](const Request& waiting) { return waiting.id == id; });
    if (found == queue_.end()) return;
    auto hurried = std::move(*found);
    queue_.erase(found);
    hurried.first = true;
    interruptForFirst();
    queue_.push_front(std::move(hurried));
}

void Reckoning::keepOnly(const std::set<ColonyId>& wanted) {
    const bool waited = !idle();
    std::erase_if(newest_, [&](const auto& each) { return !wanted.contains(each.first); });
    {
        const std::lock_guard lock(mutex_);
        std::erase_if(queue_, [&](const Request& waiting) { return !wanted.contains(waiting.id); });
        if (running_ && !wanted.contains(running_->id)) running_->stop.request_stop();
    }
    if (waited && idle()) emit idleAgain();
}

std::optional<Reckoning::Request> Reckoning::next(const std::stop_token& end) {
    std::unique_lock lock(mutex_);
    if (!waiting_.wait(lock, end, [this] { return !queue_.empty(); })) return std::nullopt;
    running_ = std::move(queue_.front());
    queue_.pop_front();
    return running_;
}

void Reckoning::work(const std::stop_token& end) {
    while (const auto taken = next(end)) {
        const Request& request = *taken;
        Outcome<AnsweredPointer> outcome = AnsweredPointer();
        try {
            outcome = adviser_->answer(request.record, request.position, request.stop.get_token());
        } catch (const std::exception& failure) {
            outcome = Problem{ProblemKind::Input, {}, failure.what(), {}};
        }
        {
            const std::lock_guard lock(mutex_);
            running_.reset();
        }
        if (request.stop.stop_requested()) continue;
        QMetaObject::invokeMethod(this, [this, request, outcome] { deliver(request, outcome); }, Qt::QueuedConnection);
    }
}

void Reckoning::deliver(const Request& request, const Outcome<AnsweredPointer>& outcome) {
    const auto newest = newest_.find(request.id);
    if (newest == newest_.end() || newest->second != request.number) return;
    newest_.erase(newest);
    if (!outcome.ok()) emit contradicted(request.id, request.record, outcome.problems());
    else if (outcome.value()) emit answered(request.id, outcome.value());
    if (newest_.empty()) emit idleAgain();
}

} // namespace winterlarder::desk
