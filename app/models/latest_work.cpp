// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/latest_work.h"

#include <exception>

namespace winterlarder::desk {

LatestWork::LatestWork(QObject* parent, Pace pace) : QObject(parent), worker_([this, pace](const std::stop_token& end) { run(end, pace); }) {}

LatestWork::~LatestWork() {
    worker_.request_stop();
    {
        const std::lock_guard lock(mutex_);
        next_.reset();
        if (running_) running_->request_stop();
    }
    waiting_.notify_all();
    worker_.join();
}

void LatestWork::ask(Work work) {
    unfinished_ = ++newest_;
    {
        const std::lock_guard lock(mutex_);
        if (running_) running_->request_stop();
        next_ = Request{newest_, std::move(work), {}};
    }
    waiting_.notify_one();
}

void LatestWork::cancel() {
    const bool waited = !idle();
    unfinished_ = 0;
    {
        const std::lock_guard lock(mutex_);
        next_.reset();
        if (running_) running_->request_stop();
    }
    if (waited) emit idleAgain();
}

void LatestWork::run(const std::stop_token& end, Pace pace) {
    keepPace(pace);
    for (;;) {
        Request request;
        {
            std::unique_lock lock(mutex_);
            if (!waiting_.wait(lock, end, [this] { return next_.has_value(); })) return;
            request = std::move(*next_);
            next_.reset();
            running_ = request.stop;
        }
        Finish finish;
        try {
            finish = request.work(request.stop.get_token());
        } catch (const std::exception& error) {
            finish = [this, what = QString::fromUtf8(error.what())] { emit failed(what); };
        }
        {
            const std::lock_guard lock(mutex_);
            running_.reset();
        }
        QMetaObject::invokeMethod(this, [this, number = request.number, finish] { deliver(number, finish); }, Qt::QueuedConnection);
    }
}

void LatestWork::deliver(quint64 number, const Finish& finish) {
    if (number != unfinished_) return;
    unfinished_ = 0;
    if (finish) finish();
    if (idle()) emit idleAgain();
}

} // namespace winterlarder::desk
