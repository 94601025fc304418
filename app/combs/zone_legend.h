// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/comb_typing.h"

#include <QWidget>

namespace winterlarder::desk {

//! The patterns of the comb drawing, what they stand for and the key that picks them. A click picks; the picked one is marked.
class ZoneLegend : public QWidget {
    Q_OBJECT

public:
    explicit ZoneLegend(QWidget* parent = nullptr);
    void pick(CombField field); //!< marks it
    QRectF placeOf(CombField field) const;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override; //!< one entry on each line
    int heightForWidth(int width) const override;

signals:
    void picked(winterlarder::desk::CombField field);

protected:
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    CombField picked_ = CombField::Capped;
};

} // namespace winterlarder::desk
