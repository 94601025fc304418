// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/invented.h"
#include "combs/comb_drawing.h"

#include <QTest>

//! Combs hung in a drawing of its own, and what an owner would do with its edits.
namespace winterlarder::desk::hanging {

//! As shipped.
inline stores::CombSpreads spreads() { return {0.10, 0.03, 0.11, 0.132}; }

inline hive::CombFormat frame() { return invented::format(); }

inline hive::CombFormat topBar() {
    return {"own", {millimetres(440), millimetres(210), millimetres(230)}, millimetres(36), {1000}, 20};
}

inline book::CombRecord unseen() {
    book::CombRecord record;
    record.facesSeen = 0;
    return record;
}

//! A drawing whose edits are made: the records change and are shown anew, as by the book.
class Desk {
public:
    Desk(std::vector<book::CombRecord> hung, std::vector<hive::CombFormat> boxes, QSize size = {1040, 240})
        : records(std::move(hung)), boxes_(std::move(boxes)) {
        drawing.resize(size);
        QObject::connect(&drawing, &CombDrawing::combEdited, &drawing, [this](const CombEdit& edit) {
            edits.push_back(edit);
            if (!grants) return show();
            records[static_cast<std::size_t>(edit.comb)] = edit.record;
            show();
        });
        show();
        drawing.setVisible(true);
        drawing.activateWindow();
        drawing.setFocus();
        QTest::qWait(1);
    }
    void show() { drawing.show(drawnCombs(records, boxes_, 0.65, spreads())); }

    const book::CombRecord& record(std::size_t comb) const { return records[comb]; }
    //! Where on the screen a place of a comb is.
    QPoint place(int comb, double x, double y) const { return placeOf({x, y}, drawing.faceOf(comb)).toPoint(); }
    CombLevels levels(int comb) const {
        return {drawing.combs()[static_cast<std::size_t>(comb)].format.outline,
                fillingOf(records[static_cast<std::size_t>(comb)])};
    }

    //! A drag with the hand: pressed, moved in steps, let go.
    void drag(QPoint from, QPoint to, int steps = 8) {
        QTest::mousePress(static_cast<QWidget*>(&drawing), Qt::LeftButton, {}, from);
        for (int i = 1; i <= steps; ++i) QTest::mouseMove(&drawing, from + (to - from) * i / steps);
        QTest::mouseRelease(static_cast<QWidget*>(&drawing), Qt::LeftButton, {}, to);
    }

    CombDrawing drawing;
    std::vector<book::CombRecord> records;
    std::vector<CombEdit> edits;
    bool grants = true;

private:
    std::vector<hive::CombFormat> boxes_;
};

} // namespace winterlarder::desk::hanging
