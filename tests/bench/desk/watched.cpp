// SPDX-License-Identifier: GPL-3.0-or-later
#include "watched.h"

#include <QMetaEnum>

#include <thread>

namespace winterlarder::bench {

namespace {

QString eventName(QEvent::Type type) {
    const char* name = QMetaEnum::fromType<QEvent::Type>().valueToKey(type);
    return name ? QString::fromLatin1(name) : QString::number(type);
}

} // namespace

bool WatchedApplication::notify(QObject* receiver, QEvent* event) {
    if (depth_ > 0) return QApplication::notify(receiver, event);
    ++events_;
    ++depth_;
    const auto* whose = receiver->metaObject(); // the receiver may be gone afterwards
    const auto type = event->type();
    const auto start = Clock::now();
    const bool taken = QApplication::notify(receiver, event);
    const double took = millisecondsSince(start);
    --depth_;
    if (took > longest_) {
        longest_ = took;
        longestEvent_ = QStringLiteral("%1 of %2, %3 ms")
                            .arg(eventName(type), QString::fromLatin1(whose->className()))
                            .arg(took, 0, 'f', 1);
    }
    return taken;
}

void WatchedApplication::startTurn() {
    start_ = Clock::now();
    computedBefore_ = millisecondsComputed();
    events_ = 0;
    longest_ = 0;
    longestEvent_.clear();
}

void WatchedApplication::note() {
    turns_.push_back({millisecondsSince(start_), millisecondsComputed() - computedBefore_, step_, longestEvent_});
}

// A turn in which nothing came is none.
void WatchedApplication::turn() {
    startTurn();
    processEvents();
    sendPostedEvents(nullptr, QEvent::DeferredDelete);
    if (events_ > 0) note();
    else std::this_thread::sleep_for(std::chrono::microseconds(500));
}

void WatchedApplication::pause(int milliseconds) {
    const auto start = Clock::now();
    do turn();
    while (millisecondsSince(start) < milliseconds);
}

} // namespace winterlarder::bench
