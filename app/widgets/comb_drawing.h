// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/colony.h"
#include "widgets/comb_painter.h"

#include <QWidget>

#include <vector>

namespace winterlarder::desk {

//! One comb as the drawing shows it.
struct DrawnComb {
    CombLook look;
    int box = 0;
    int place = 0;
    double widthMm = 35;
    bool inSuper = false;
    QString kilograms; //!< written below it
    QString spoken;    //!< what a screen reader says
};
//! The combs of a colony in their order; kilograms only where they belong to the records as they are now.
std::vector<DrawnComb> drawnCombs(const book::ColonyCase& record, const AnsweredColony* answered, bool current);

//! All combs face on, box above box as they stand, seen from behind; boxes of more than twelve run over several rows from the
//! entrance end. Arrow keys move, a click chooses. Tested: tests/app/comb_drawing_test.cpp.
class CombDrawing : public QWidget {
    Q_OBJECT

public:
    explicit CombDrawing(QWidget* parent = nullptr);

    void show(std::vector<DrawnComb> combs);
    void choose(int comb); //!< -1 for none
    int chosen() const { return chosen_; }
    int combAt(QPointF point) const; //!< -1 beside all combs

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return false; }

signals:
    void combChosen(int comb);

protected:
    void paintEvent(QPaintEvent*) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    struct Slot {
        int comb = -1;
        QRectF face;
        QRectF words;
    };
    struct Row {
        int box = 0;
        std::vector<int> combs;
    };
    std::vector<Row> rows() const;
    std::vector<Slot> layOut() const;
    double rowLabelWidth() const;
    void moveBy(int combs);
    void moveRow(int rowsDown);
    void announce();

    std::vector<DrawnComb> combs_;
    int chosen_ = -1;
};

} // namespace winterlarder::desk
