// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QThread>

namespace winterlarder::desk {

//! Whether the calling thread is the window's own, not one of work; true where there is no application yet.
inline bool onInterfaceThread() {
    const auto* application = QCoreApplication::instance();
    return !application || QThread::currentThread() == application->thread();
}

} // namespace winterlarder::desk
