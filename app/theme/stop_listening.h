// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace winterlarder::desk {

//! For the destructor of a widget that listens to its own fields: one of them that has the focus loses it while QWidget takes the
//! widget down, and would tell its value to what is gone by then. Held by the sanitizers.
inline void stopListeningToChildren(const QWidget* listener) {
    for (const QObject* child : listener->findChildren<QObject*>())
        QObject::disconnect(child, nullptr, listener, nullptr);
}

} // namespace winterlarder::desk
