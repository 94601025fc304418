// SPDX-License-Identifier: GPL-3.0-or-later
// What mouse and keys do on the picture of a comb.
#include "models/comb_typing.h"
#include "photograph/photograph_view.h"
#include "photograph/photograph_window.h"

#include <QKeyEvent>
#include <QMessageBox>
#include <QPushButton>
#include <QTabBar>

#include <algorithm>

namespace winterlarder::desk {

bool PhotographWindow::setPoint(int point, QPointF at) {
    const auto index = static_cast<std::size_t>(point);
    auto* traced = step_ == Step::Trace ? curve() : nullptr;
    if (traced && rectified_ && index < traced->points.size()) traced->points[index] = rectified_->millimetres(at);
    else if (step_ == Step::Mark && index < face().marks.size()) face().marks[index] = at;
    else return false;
    steps_->setTabEnabled(1, traceable());
    showCurves();
    showReadout();
    return true;
}

void PhotographWindow::movePoint(int point, QPointF at, bool finished) {
    history_.dragged();
    setPoint(point, at);
    if (!finished) return;
    history_.dragEnded();
    showUndo();
}

void PhotographWindow::nudgePoint(int point, QPointF at) {
    history_.keepForStep({shownFace_, step_ == Step::Trace, curve_, point});
    setPoint(point, at);
    showUndo();
}

hive::Tracing& PhotographWindow::curveToGrow() {
    if (!curve()) {
        face().tracings.push_back({kind_, {}});
        curve_ = face().tracings.size() - 1;
    }
    return *curve();
}

void PhotographWindow::addPoint(QPointF at) {
    if (step_ != Step::Trace || !rectified_) return;
    keep();
    const auto point = rectified_->millimetres(at);
    auto& points = curveToGrow().points;
    insertPoint(points, point);
    const auto place = std::find(points.begin(), points.end(), point) - points.begin();
    showPicture();
    view_->choosePoint(static_cast<int>(place));
}

void PhotographWindow::addPointAfter(int point, QPointF at) {
    if (step_ != Step::Trace || !rectified_) return;
    keep();
    auto& points = curveToGrow().points;
    const auto place = std::clamp(point + 1, 0, static_cast<int>(points.size()));
    points.insert(points.begin() + place, rectified_->millimetres(at));
    showPicture();
    view_->choosePoint(place);
}

void PhotographWindow::removePoint(int point) {
    auto* traced = step_ == Step::Trace ? curve() : nullptr;
    if (!traced || point >= static_cast<int>(traced->points.size())) return;
    keep();
    traced = curve();
    traced->points.erase(traced->points.begin() + point);
    showPicture();
}

void PhotographWindow::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Undo)) return undo();
    if (event->matches(QKeySequence::Redo)) return redo();
    if (step_ == Step::Trace && event->modifiers() == Qt::NoModifier) {
        for (const auto kind :
             {hive::TracedKind::Capped, hive::TracedKind::Open, hive::TracedKind::Brood, hive::TracedKind::BeeBread})
            if (QString::compare(event->text(), letterOf(fieldOf(*zoneOf(kind))), Qt::CaseInsensitive) == 0)
                return pickByHand(kind);
        if (QString::compare(event->text(), letterOf(CombField::Built), Qt::CaseInsensitive) == 0)
            return pickByHand(hive::TracedKind::Comb);
    }
    // Return is a key of the picture, not the end of the work.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return;
    QDialog::keyPressEvent(event);
}

void PhotographWindow::reject() {
    if (!pictures().isEmpty() && history_.canUndo()) {
        QMessageBox asked(QMessageBox::Question, tr("Leave the photograph?"),
                          tr("What was traced is not taken into the comb yet, and would be lost."),
                          QMessageBox::NoButton, this);
        auto* leave = asked.addButton(tr("&Throw it away"), QMessageBox::DestructiveRole);
        asked.setDefaultButton(asked.addButton(tr("&Go on tracing"), QMessageBox::RejectRole));
        asked.exec();
        if (asked.clickedButton() != leave) return;
    }
    QDialog::reject();
}

} // namespace winterlarder::desk
