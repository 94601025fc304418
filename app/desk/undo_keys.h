// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

namespace winterlarder::desk {

//! Undo and redo belong to the book wherever the cursor stands, but for a field in which something is typed and not entered yet: there
//! they take back letters. Tested: tests/app/fields_test.cpp.
class UndoKeys : public QObject {
public:
    using QObject::QObject;
    bool eventFilter(QObject* watched, QEvent* event) override;
};

} // namespace winterlarder::desk
