// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/wheel_guard.h"

#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>
#include <QScrollBar>

namespace winterlarder::desk {

namespace {

QWidget* fieldOf(QObject* watched) {
    if (auto* choice = qobject_cast<QComboBox*>(watched)) return choice;
    if (auto* number = qobject_cast<QAbstractSpinBox*>(watched)) return number;
    if (qobject_cast<QScrollBar*>(watched)) return nullptr;
    return qobject_cast<QAbstractSlider*>(watched);
}

} // namespace

bool WheelGuard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel && event->type() != QEvent::Show) return false;
    auto* field = fieldOf(watched);
    if (!field) return false;
    // The wheel itself must not choose the field; it would do so before it comes here, so this is done as the field is shown.
    if (field->focusPolicy() == Qt::WheelFocus) field->setFocusPolicy(Qt::StrongFocus);
    if (event->type() == QEvent::Show || field->hasFocus()) return false;
    event->ignore(); // the page takes it
    return true;
}

} // namespace winterlarder::desk
