// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"

#include <QObject>
#include <QString>

#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>

namespace winterlarder::desk {

//! Carries out work on one book, in the order asked, on a thread of its own: the window never waits for a disk. What is asked is
//! always done, also when the window closes meanwhile. Lives on the interface thread. Tested: tests/app/yard_test.cpp.
class BookWorker : public QObject {
    Q_OBJECT

public:
    using Finish = std::function<void()>; //!< carried out on the interface thread afterwards; may be empty
    using Work = std::function<Finish(std::optional<book::Book>& book)>;

    explicit BookWorker(QObject* parent = nullptr);
    //! Waits for everything asked; the book is closed.
    ~BookWorker() override;

    void ask(Work work);
    bool idle() const { return unfinished_ == 0; } //!< nothing waits, runs, or is still to be finished here

signals:
    void failed(const QString& what); //!< a programmer's error in the work; the work after it goes on
    void idleAgain();

private:
    void run();
    void finish(const Finish& finish);

    int unfinished_ = 0; //!< touched on the interface thread only
    std::mutex mutex_;   //!< guards what follows
    std::condition_variable waiting_;
    std::deque<Work> queue_;
    bool ending_ = false;

    std::thread thread_;
};

} // namespace winterlarder::desk
