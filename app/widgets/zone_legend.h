// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace winterlarder::desk {

//! The patterns of the comb drawing and what they stand for.
class ZoneLegend : public QWidget {
    Q_OBJECT

public:
    explicit ZoneLegend(QWidget* parent = nullptr);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent*) override;
};

} // namespace winterlarder::desk
