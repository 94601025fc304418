// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeyEvent>

namespace winterlarder::desk {

//! Whether a search line leaves this event to what is listed below it: a key pressed that moves up or down there.
inline bool isForTheList(const QEvent& event) {
    if (event.type() != QEvent::KeyPress) return false;
    switch (static_cast<const QKeyEvent&>(event).key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown: return true;
    default: return false;
    }
}

} // namespace winterlarder::desk
