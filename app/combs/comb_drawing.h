// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/drawn_combs.h"
#include "combs/painted_combs.h"
#include "models/comb_typing.h"
#include "theme/named_keys.h"

#include <QWidget>

#include <vector>

namespace winterlarder::desk {

//! All combs face on, box above box as they stand, seen from behind; boxes of more than twelve run over several rows from the
//! entrance end. What is dragged or typed is asked for with combEdited and shown at once; the owner shows the combs anew
//! when the records have changed, or as they were where it refuses.
//!
//! Mouse: a click chooses; an edge of a zone is dragged (Escape lets go of it as it was); a drag elsewhere in a comb brings the
//! edge of the picked zone to the pointer. Keys: arrows, Home, End and Enter move; letters, digits, plus and minus as in
//! CombTyping; Space gives the comb what the last one holds and goes on to the next; Delete empties it.
//! Tested: tests/app/comb_drawing_test.cpp.
class CombDrawing : public QWidget {
    Q_OBJECT

public:
    explicit CombDrawing(QWidget* parent = nullptr);

    void show(std::vector<DrawnComb> combs);
    void setEditable(bool editable) { editable_ = editable; }
    void choose(int comb); //!< -1 for none
    int chosen() const { return chosen_; }
    const std::vector<DrawnComb>& combs() const { return combs_; }
    int combAt(QPointF point) const; //!< -1 beside all combs
    QRectF faceOf(int comb) const;   //!< where its face is drawn

    CombField picked() const { return typing_.picked(); }
    void pick(CombField field);
    //! Asks for a share as if it were typed (for screen readers).
    void setShare(int comb, CombField field, double share);
    //! Fills the chosen comb like the last one entered and goes on.
    void repeatLast();

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;

    static std::vector<NamedKeys> namedKeys();

signals:
    void combChosen(int comb);
    void combEdited(const winterlarder::desk::CombEdit& edit);
    void fieldPicked(winterlarder::desk::CombField field);
    //! The chosen comb as the hand has dragged it so far; nothing is asked for yet.
    void combDragged(const winterlarder::desk::DrawnComb& comb);

protected:
    void paintEvent(QPaintEvent*) override;
    void changeEvent(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void leaveEvent(QEvent*) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    //! A press that may become, or is, a drag.
    struct Drag {
        int comb = -1;
        QPointF from;
        CombEdge edge = CombEdge::Capped;
        bool onEdge = false; //!< an edge was taken hold of, not the open comb
        bool moving = false;
        std::optional<book::CombRecord> record; //!< as dragged so far
    };

    void measureWords();
    std::vector<CombSlot> slots_() const;
    CombWords wordsOver(int lines) const;
    CombWords wordsIn(QSizeF size) const;
    const DrawnComb& at(int comb) const { return combs_[static_cast<std::size_t>(comb)]; }
    DrawnComb shown(int comb) const; //!< as dragged, where it is being dragged
    void paintSlot(QPainter& painter, const CombSlot& slot) const;
    void paintRowLabels(QPainter& painter, const std::vector<CombSlot>& places) const;

    std::optional<CombEdge> edgeAt(int comb, QPointF point) const;
    void hover(QPointF point);
    void drag(QPointF point);
    void letGo();
    void apply(const CombEdit& edit);
    void take(const CombTyping::Typed& typed);
    bool moveByKey(int key);
    void announce();

    std::vector<DrawnComb> combs_;
    mutable PaintedCombs painted_;
    double widestWhole_ = 0, widestBroken_ = 0; //!< of the words below the combs, in one line and in two
    int chosen_ = -1;
    bool editable_ = true;
    CombTyping typing_;
    std::optional<Drag> drag_;
    std::optional<std::pair<int, CombEdge>> hovered_;
};

} // namespace winterlarder::desk
