// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "text/asked.h"

#include <QLabel>

namespace winterlarder::desk {

//! A label whose numbers can be asked where they come from: by a click, or by Tab to the number and Enter. Tested: tests/app/asked_test.cpp.
class AskableLabel : public QLabel {
    Q_OBJECT

public:
    explicit AskableLabel(QWidget* parent = nullptr);

    //! A sentence with numbers in the form of text::askably(); without any it is a plain label.
    void say(const QString& sentence);
    QString said() const; //!< what is read, without marks

signals:
    //! `under`: the place on the screen below which the answer may stand.
    void numberClicked(winterlarder::text::AskedNumber number, QPoint under);

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void render(const QString& sentence);

    QString sentence_;
};

//! The same in the quiet colour, breaking its lines.
AskableLabel* quietAskable(QWidget* parent);

} // namespace winterlarder::desk
