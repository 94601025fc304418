// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"
#include "text/grounds/grounds.h"

#include <QFrame>

class QTextBrowser;

namespace winterlarder::desk {

//! How one number was got, beside it, until something else is clicked or Escape is pressed. Tested: tests/app/asked_test.cpp.
class GroundsPopup : public QFrame {
    Q_OBJECT

public:
    explicit GroundsPopup(QWidget* parent);

    void show(const text::Grounds& grounds, const ReferenceData& reference, QPoint under);
    QString said() const;

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void fit(QPoint under);

    QTextBrowser* browser_;
};

} // namespace winterlarder::desk
