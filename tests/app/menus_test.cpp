// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/window_desk.h"

#include <QAction>

//! What the menus offer, and when.
namespace winterlarder::desk {

using invented::colony;
using invented::WindowDesk;

namespace {

QAction* offered(const MainWindow& window, const char* words) {
    for (auto* action : window.findChildren<QAction*>())
        if (action->text().remove(QLatin1Char('&')) == QString::fromUtf8(words)) return action;
    ADD_FAILURE() << "nothing is called " << words;
    return nullptr;
}

} // namespace

TEST_F(WindowDesk, WhatNeedsABookIsOfferedOnceOneIsOpen) {
    answerSlowly();
    const auto needed = {"Import\u2026",
                         "Backups\u2026",
                         "Copy the book to\u2026",
                         "Close the book",
                         "Print yard plan\u2026",
                         "Save yard plan as PDF\u2026",
                         "Save what is due as a calendar\u2026",
                         "New yard in this book\u2026"};
    for (const char* words : needed) EXPECT_FALSE(offered(window, words)->isEnabled()) << words;
    open({colony("Apple")});
    for (const char* words : needed) EXPECT_TRUE(offered(window, words)->isEnabled()) << words;
    window.book()->close();
    settle();
    for (const char* words : needed) EXPECT_FALSE(offered(window, words)->isEnabled()) << words;
    EXPECT_TRUE(offered(window, "New book\u2026")->isEnabled());
}

} // namespace winterlarder::desk
