// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace winterlarder::desk {

//! Letters alone are keys of the colony's menu. A choice has its own use for them, to find what begins so: there they stay. (Fields that are
//! typed into keep theirs by themselves.) Tested: tests/desk/letter_keys_test.cpp.
class LetterKeys : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace winterlarder::desk
