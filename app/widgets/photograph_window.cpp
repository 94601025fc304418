// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/photograph_window.h"

#include "models/comb_typing.h"
#include "models/words.h"
#include "widgets/comb_pattern.h"
#include "widgets/photograph_view.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QTabBar>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr double pixelsPerMm = 2.5;

std::optional<Zone> zoneOf(hive::TracedKind kind) {
    switch (kind) {
    case hive::TracedKind::Capped: return Zone::Capped;
    case hive::TracedKind::Open: return Zone::Open;
    case hive::TracedKind::Brood: return Zone::Brood;
    case hive::TracedKind::BeeBread: return Zone::BeeBread;
    case hive::TracedKind::Comb: break;
    }
    return std::nullopt;
}

QPainterPath pathOf(const std::vector<hive::PlanePoint>& curve, const Rectified& rectified) {
    QPainterPath path;
    for (const auto& point : curve) {
        if (path.isEmpty()) path.moveTo(rectified.pixel(point));
        else path.lineTo(rectified.pixel(point));
    }
    if (curve.size() >= 3) path.closeSubpath();
    return path;
}

QPointF picturePoint(hive::PlanePoint point) {
    return {point.x, point.y};
}

} // namespace

// ---- what is measured -----------------------------------------------------------------------------------------------------

book::CombRecord PhotographWindow::measured() const {
    return measuredComb(comb_.record, comb_.format.outline, faces_);
}

QStringList PhotographWindow::pictures() const {
    QStringList paths;
    for (const auto& each : faces_)
        if (each.traced()) paths << each.path;
    return paths;
}

QString PhotographWindow::readout() const {
    const int traced = static_cast<int>(pictures().size());
    if (traced == 0) return tr("Nothing is traced yet.");
    const auto drawn = redrawn(comb_, measured());
    const QString shares = tr("capped %1, open nectar %2, brood %3, bee bread %4, empty %5")
                               .arg(words::percent(shareOf(drawn.record, Zone::Capped)), words::percent(shareOf(drawn.record, Zone::Open)),
                                    words::percent(shareOf(drawn.record, Zone::Brood)), words::percent(shareOf(drawn.record, Zone::BeeBread)), words::percent(emptyShare(drawn.record)));
    if (traced == 1) return tr("One face: %1. %2. Good to 17.5 % instead of 20 % by eye; with the other face to 11.5 %.").arg(shares, drawn.kilograms);
    return tr("Both faces: %1. %2. Good to 11.5 % instead of 15 % by eye.").arg(shares, drawn.kilograms);
}

void PhotographWindow::showReadout() {
    readout_->setText(readout());
    take_->setEnabled(!pictures().isEmpty());
}

// ---- undo -----------------------------------------------------------------------------------------------------------------

void PhotographWindow::keep() {
    before_.push_back(faces_);
    after_.clear();
}

void PhotographWindow::restore(std::vector<std::vector<PhotographedFace>>& from, std::vector<std::vector<PhotographedFace>>& to) {
    if (from.empty()) return;
    to.push_back(faces_);
    faces_ = from.back();
    from.pop_back();
    if (curve_ && *curve_ >= face().tracings.size()) curve_.reset();
    showPicture();
}

void PhotographWindow::undo() {
    restore(before_, after_);
}

void PhotographWindow::redo() {
    restore(after_, before_);
}

// ---- what is shown --------------------------------------------------------------------------------------------------------

hive::Tracing* PhotographWindow::curve() {
    return curve_ && *curve_ < face().tracings.size() ? &face().tracings[*curve_] : nullptr;
}

void PhotographWindow::showFace(int shown) {
    shownFace_ = std::clamp(shown, 0, 1);
    const QSignalBlocker quiet(facesBar_);
    facesBar_->setCurrentIndex(shownFace_);
    curve_.reset();
    pickKind(kind_);
}

void PhotographWindow::showStep(Step step) {
    step_ = step;
    showPicture();
}

void PhotographWindow::pickKind(hive::TracedKind kind) {
    kind_ = kind;
    curve_.reset();
    const auto& tracings = face().tracings;
    for (std::size_t i = 0; i < tracings.size(); ++i)
        if (tracings[i].kind == kind) curve_ = i;
    if (auto* button = kinds_->button(static_cast<int>(kind))) button->setChecked(true);
    showPicture();
}

void PhotographWindow::beginCurve() {
    keep();
    face().tracings.push_back({kind_, {}});
    curve_ = face().tracings.size() - 1;
    showPicture();
}

bool PhotographWindow::traceable() const {
    return !face().picture.isNull() && planeOf(comb_.format.outline, face()).has_value();
}

void PhotographWindow::rectifyAnew() {
    const std::pair from(face().picture.cacheKey(), face().marks);
    if (rectified_ && from == rectifiedFrom_) return;
    rectified_ = rectify(comb_.format.outline, face(), pixelsPerMm);
    rectifiedFrom_ = from;
}

void PhotographWindow::showPicture() {
    if (!traceable()) step_ = Step::Mark;
    const bool tracing = step_ == Step::Trace;
    const QSignalBlocker quietSteps(steps_), quietMarks(markedBy_);
    steps_->setCurrentIndex(tracing ? 1 : 0);
    steps_->setTabEnabled(1, traceable());
    markedBy_->setCurrentIndex(markedBy_->findData(static_cast<int>(face().markedBy)));
    markedBy_->setVisible(!tracing && markedBy_->count() > 1 && !face().picture.isNull());
    kindsRow_->setVisible(tracing);
    hint_->setText(tracing ? tr("Click around each zone; the curve closes itself. Drag points, Delete takes one away. Of bee bread trace the outer edge: brood inside it is counted as brood.")
                   : face().markedBy == MarkedBy::Corners ? tr("Drag the four points to the corners of the comb, inside the frame. Zoom with the wheel.")
                                                          : tr("Drag the points: where the comb begins and ends at the bar, low on either side, and its lowest point. Zoom with the wheel."));
    std::vector<PhotographView::Point> points;
    if (tracing) {
        rectifyAnew();
        view_->showPicture(rectified_->picture);
        if (const auto* traced = curve())
            for (const auto& point : traced->points) points.push_back({rectified_->pixel(point), tr("point %1 of %2").arg(points.size() + 1).arg(nameOf(kind_))});
    } else {
        view_->showPicture(face().picture);
        const auto names = markNames(face().markedBy);
        for (std::size_t i = 0; i < face().marks.size(); ++i) points.push_back({face().marks[i], names[static_cast<qsizetype>(i)]});
    }
    view_->showPoints(std::move(points), tracing);
    showCurves();
    showReadout();
}

void PhotographWindow::showCurves() {
    std::vector<PhotographView::Curve> curves;
    const QPen halo(QColor(0, 0, 0, 160), 3.5);
    const auto corners = hive::cornersOf(comb_.format.outline);
    QPainterPath outline;
    if (step_ == Step::Trace && rectified_) {
        for (std::size_t i = 0; i < face().tracings.size(); ++i) {
            const auto& tracing = face().tracings[i];
            const auto path = pathOf(hive::smoothClosed(tracing.points), *rectified_);
            const auto zone = zoneOf(tracing.kind);
            QColor tint = zone ? patternOf(zone, lightColours(), 1).textureImage().pixelColor(0, 0) : QColor(Qt::white);
            tint.setAlpha(zone ? 90 : 0);
            curves.push_back({path, halo, tint});
            curves.push_back({path, QPen(curve_ == i ? Qt::white : Qt::lightGray, curve_ == i ? 2 : 1.2, tracing.kind == hive::TracedKind::Comb ? Qt::DashLine : Qt::SolidLine), Qt::NoBrush});
        }
        outline = pathOf({corners.begin(), corners.end()}, *rectified_);
    } else if (const auto plane = planeOf(comb_.format.outline, face())) {
        const auto back = plane->inverse();
        outline.moveTo(picturePoint(back(corners[0])));
        for (const auto& corner : {corners[1], corners[2], corners[3]}) outline.lineTo(picturePoint(back(corner)));
        outline.closeSubpath();
    }
    curves.push_back({outline, halo, Qt::NoBrush});
    curves.push_back({outline, QPen(Qt::white, 1.5, Qt::DotLine), Qt::NoBrush});
    view_->showCurves(std::move(curves));
}

// ---- the hand -------------------------------------------------------------------------------------------------------------

void PhotographWindow::movePoint(int point, QPointF at, bool finished) {
    const auto index = static_cast<std::size_t>(point);
    if (!moving_) moving_ = faces_;
    auto* traced = step_ == Step::Trace ? curve() : nullptr;
    if (traced && rectified_ && index < traced->points.size()) traced->points[index] = rectified_->millimetres(at);
    else if (step_ == Step::Mark && index < face().marks.size()) face().marks[index] = at;
    if (finished) {
        before_.push_back(*moving_);
        after_.clear();
        moving_.reset();
        steps_->setTabEnabled(1, traceable());
    }
    showCurves();
    showReadout();
}

void PhotographWindow::addPoint(QPointF at) {
    if (step_ != Step::Trace || !rectified_) return;
    keep();
    if (!curve()) {
        face().tracings.push_back({kind_, {}});
        curve_ = face().tracings.size() - 1;
    }
    const auto point = rectified_->millimetres(at);
    insertPoint(curve()->points, point);
    showPicture();
    const auto& points = curve()->points;
    view_->choosePoint(static_cast<int>(std::find(points.begin(), points.end(), point) - points.begin()));
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
        for (const auto kind : {hive::TracedKind::Capped, hive::TracedKind::Open, hive::TracedKind::Brood, hive::TracedKind::BeeBread})
            if (QString::compare(event->text(), letterOf(fieldOf(*zoneOf(kind))), Qt::CaseInsensitive) == 0) return pickKind(kind);
        if (QString::compare(event->text(), letterOf(CombField::Built), Qt::CaseInsensitive) == 0) return pickKind(hive::TracedKind::Comb);
    }
    // Return is a key of the picture, not the end of the work.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return;
    QDialog::keyPressEvent(event);
}

QString nameOf(hive::TracedKind kind) {
    const auto zone = zoneOf(kind);
    return zone ? words::zone(*zone) : PhotographWindow::tr("the comb itself");
}

} // namespace winterlarder::desk
