// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "theme/card.h"

#include <QLayout>

namespace winterlarder::desk {

//! What stands in a scrolled area and is scrolled only where its parts cannot be as low as they may be; a widget by itself would ask
//! for the height its parts like best.
class LeastHeight : public QWidget {
public:
    using QWidget::QWidget;
    int heightForWidth(int width) const override { return layout() ? layout()->minimumHeightForWidth(width) : -1; }
    QSize minimumSizeHint() const override { return layout() ? QSize(layout()->minimumSize().width(), 0) : QSize(); }
};

} // namespace winterlarder::desk
