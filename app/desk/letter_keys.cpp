// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/letter_keys.h"

#include <QComboBox>
#include <QKeyEvent>

namespace winterlarder::desk {

bool LetterKeys::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride || !qobject_cast<QComboBox*>(watched)) return false;
    auto* key = static_cast<QKeyEvent*>(event);
    const bool letter = key->key() >= Qt::Key_A && key->key() <= Qt::Key_Z;
    if (!letter || (key->modifiers() & ~Qt::ShiftModifier) != Qt::NoModifier) return false;
    event->accept();
    return true;
}

} // namespace winterlarder::desk
