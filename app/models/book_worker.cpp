// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/book_worker.h"

#include <exception>

namespace winterlarder::desk {

BookWorker::BookWorker(QObject* parent) : QObject(parent), thread_([this] { run(); }) {}

BookWorker::~BookWorker() {
    {
        const std::lock_guard lock(mutex_);
        ending_ = true;
    }
    waiting_.notify_all();
    thread_.join();
}

void BookWorker::ask(Work work) {
    ++unfinished_;
    {
        const std::lock_guard lock(mutex_);
        queue_.push_back(std::move(work));
    }
    waiting_.notify_one();
}

void BookWorker::run() {
    std::optional<book::Book> book;
    for (;;) {
        Work work;
        {
            std::unique_lock lock(mutex_);
            waiting_.wait(lock, [this] { return ending_ || !queue_.empty(); });
            if (queue_.empty()) return;
            work = std::move(queue_.front());
            queue_.pop_front();
        }
        Finish after;
        try {
            after = work(book);
        } catch (const std::exception& error) {
            after = [this, what = QString::fromUtf8(error.what())] { emit failed(what); };
        }
        QMetaObject::invokeMethod(this, [this, after] { finish(after); }, Qt::QueuedConnection);
    }
}

void BookWorker::finish(const Finish& finish) {
    --unfinished_;
    if (finish) finish();
    if (idle()) emit idleAgain();
}

} // namespace winterlarder::desk
