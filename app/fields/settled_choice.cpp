// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/settled_choice.h"

#include <QComboBox>
#include <QFocusEvent>
#include <QKeyEvent>

namespace winterlarder::desk {

SettledChoice::SettledChoice(QComboBox* choice, std::function<void()> shown, std::function<void(How)> meant)
    : QObject(choice), choice_(choice), shown_(std::move(shown)), meant_(std::move(meant)) {
    connect(choice_, &QComboBox::activated, this, &SettledChoice::choose);
    choice_->installEventFilter(this);
}

void SettledChoice::choose() {
    shown_();
    open_ = stepping_;
    if (!stepping_) meant_(How::Picked);
}

void SettledChoice::settle() {
    if (!open_) return;
    open_ = false;
    meant_(How::Stepped);
}

bool SettledChoice::eventFilter(QObject* watched, QEvent* event) {
    if (watched != choice_) return false;
    if (event->type() == QEvent::FocusOut && static_cast<QFocusEvent*>(event)->reason() != Qt::PopupFocusReason)
        settle();
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::Wheel) return false;
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) settle();
    }
    stepping_ = true; // what the list is opened by is no step, and chooses nothing yet
    choice_->event(event);
    stepping_ = false;
    return true;
}

} // namespace winterlarder::desk
