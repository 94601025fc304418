// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures.h"

#include <QApplication>

namespace winterlarder::bench {

//! An application that is driven turn by turn and notes how long each turn kept the next key waiting. A turn is what the event loop does
//! before it looks for something new, or one key or click with all it sets off at once.
class WatchedApplication : public QApplication {
public:
    struct Turn {
        double milliseconds = 0;
        double computed = 0; //!< milliseconds of them that the thread had a core
        QString step;        //!< what the script was doing
        QString longest;     //!< the event in it that took longest: whose, which, how long
    };
    using QApplication::QApplication;

    //! What comes now is counted to this step.
    void begin(const QString& step) { step_ = step; }
    //! One act of the keeper.
    template <class Act> void act(const Act& act) {
        startTurn();
        events_ = 1;
        act();
        note();
    }
    //! Turns until the time is over.
    void pause(int milliseconds);
    //! Turns until it is done; false where it is not within the time.
    template <class Done> bool waitFor(const Done& done, int milliseconds = 300000) {
        const auto start = Clock::now();
        while (!done() && millisecondsSince(start) < milliseconds) turn();
        return done();
    }
    const std::vector<Turn>& turns() const { return turns_; }

    bool notify(QObject* receiver, QEvent* event) override;

private:
    void turn();
    void startTurn();
    void note();

    QString step_ = QStringLiteral("beginning");
    std::vector<Turn> turns_;
    Clock::time_point start_; //!< of this turn
    double computedBefore_ = 0;
    int events_ = 0; //!< of this turn
    int depth_ = 0;
    double longest_ = 0;
    QString longestEvent_;
};

} // namespace winterlarder::bench
