// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <functional>

class QComboBox;

namespace winterlarder::desk {

//! A choice that changes what is entered beside it. One picked from its list is meant at once. One that is come upon by the arrow keys, a
//! letter or the wheel may only be passed by: it is shown, and meant once the choice is left or Return is pressed.
//! Tested: tests/app/fields_test.cpp.
class SettledChoice : public QObject {
    Q_OBJECT

public:
    enum class How { Picked, Stepped };
    //! `shown`: what is chosen is another; `meant`: it is what the keeper wants.
    SettledChoice(QComboBox* choice, std::function<void()> shown, std::function<void(How)> meant);
    bool isOpen() const { return open_; } //!< come upon, and not yet meant or left
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void choose();
    void settle();

    QComboBox* choice_;
    std::function<void()> shown_;
    std::function<void(How)> meant_;
    bool stepping_ = false, open_ = false;
};

} // namespace winterlarder::desk
