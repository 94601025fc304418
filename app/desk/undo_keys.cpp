// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/undo_keys.h"

#include <QAbstractSpinBox>
#include <QKeyEvent>
#include <QLineEdit>

namespace winterlarder::desk {

namespace {

const QLineEdit* lineOf(const QObject* field) {
    if (const auto* line = qobject_cast<const QLineEdit*>(field)) return line;
    const auto* spin = qobject_cast<const QAbstractSpinBox*>(field);
    return spin ? spin->findChild<QLineEdit*>() : nullptr;
}

} // namespace

// A field asks for these keys before the menu gets them; one with nothing to take back is not heard.
bool UndoKeys::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    if (!key->matches(QKeySequence::Undo) && !key->matches(QKeySequence::Redo)) return false;
    const auto* line = lineOf(watched);
    if (!line || line->isModified()) return false;
    event->ignore();
    return true;
}

} // namespace winterlarder::desk
