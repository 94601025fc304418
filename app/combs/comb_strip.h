// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/drawn_combs.h"

#include <QWidget>

namespace winterlarder::desk {

//! The hive from above: a slab a comb, as thick as its bar is wide, all boxes as they stand, filled from the front as its zones are
//! (stores, brood, empty). A click chooses. It shows what the comb drawing says; the keyboard works there. Tested:
//! tests/app/comb_drawing_test.cpp.
class CombStrip : public QWidget {
    Q_OBJECT

public:
    explicit CombStrip(QWidget* parent = nullptr);
    void show(const std::vector<DrawnComb>& combs, int chosen);
    void choose(int comb);
    QRectF slab(int comb) const; //!< where it is drawn
    int combAt(QPointF point) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {120, sizeHint().height()}; }

signals:
    void combChosen(int comb);

protected:
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    bool event(QEvent* event) override;

private:
    int boxes() const;
    static QString rowName(const DrawnComb& comb);
    double rowLabel() const;

    std::vector<DrawnComb> combs_;
    int chosen_ = -1;
};

} // namespace winterlarder::desk
