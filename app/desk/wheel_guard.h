// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace winterlarder::desk {

//! A page is scrolled with the wheel, whatever field passes below the pointer: a field takes the wheel only after it was chosen with
//! a click or a key, else a record would be changed unseen. Installed on the application.
//! Tested: tests/app/wheel_guard_test.cpp.
class WheelGuard : public QObject {
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace winterlarder::desk
