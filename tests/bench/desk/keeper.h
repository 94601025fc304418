// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/main_window.h"
#include "watched.h"

namespace winterlarder::bench {

//! A keeper at the window: keys, clicks and drags at a person's pace, each counted as a turn of the interface thread.
class Keeper {
public:
    Keeper(desk::MainWindow& window, WatchedApplication& application) : window_(window), application_(application) {}

    void begin(const char* step) { application_.begin(QString::fromLatin1(step)); }
    void pause(int milliseconds) { application_.pause(milliseconds); }
    //! To where the keys go.
    void key(Qt::Key key, Qt::KeyboardModifiers with = {}, int pauseAfter = 120);
    void keys(Qt::Key key, int times, int pauseAfter = 120);
    void type(const QString& text);
    void click(QWidget* on);
    void clickAt(QWidget* on, QPoint at);
    void clickTab(QTabWidget* pages, int page);
    void focus(QWidget* on);
    //! The mouse goes along a line, sixty places a second; `held`: with the left button down.
    void move(QWidget* over, QPoint from, QPoint to, int milliseconds, bool held = false);
    void turnWheel(QAbstractScrollArea* over, int notches);

    desk::MainWindow& window() { return window_; }
    WatchedApplication& application() { return application_; }

private:
    desk::MainWindow& window_;
    WatchedApplication& application_;
};

} // namespace winterlarder::bench
