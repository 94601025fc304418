// SPDX-License-Identifier: GPL-3.0-or-later
#include "photograph/photograph_window.h"

#include "combs/comb_pattern.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "photograph/photograph_view.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QPushButton>
#include <QStackedWidget>
#include <QStyle>
#include <QTabBar>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr double pixelsPerMm = 2.5;
constexpr NewestWork::Key straightening = 2;

constexpr double edgeWidth = 3; // px of a line's light edge, both sides together

QPainterPath pathOf(const std::vector<hive::PlanePoint>& curve, const Rectified& rectified) {
    QPainterPath path;
    for (const auto& point : curve) {
        if (path.elementCount() == 0) path.moveTo(rectified.pixel(point));
        else path.lineTo(rectified.pixel(point));
    }
    if (curve.size() >= 3) path.closeSubpath();
    return path;
}

void addLine(std::vector<PhotographView::Curve>& curves, const QPainterPath& path, double width, Qt::PenStyle style,
             const QBrush& fill) {
    curves.push_back(
        {path, QPen(PhotographView::lightEdge, width + edgeWidth, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin), fill});
    curves.push_back({path, QPen(PhotographView::ink, width, style, Qt::RoundCap, Qt::RoundJoin), Qt::NoBrush});
}

QPointF picturePoint(hive::PlanePoint point) { return {point.x, point.y}; }

} // namespace

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

// ---- what is measured -----------------------------------------------------------------------------------------------------

book::CombRecord PhotographWindow::measured() const {
    return measuredComb(comb_.record, comb_.format.outline, history_.faces);
}

QStringList PhotographWindow::pictures() const {
    QStringList paths;
    for (const auto& each : history_.faces)
        if (each.traced()) paths << each.path;
    return paths;
}

QString PhotographWindow::readout() const {
    const int traced = static_cast<int>(pictures().size());
    if (traced == 0) return tr("Nothing is traced yet.");
    const auto drawn = redrawn(comb_, measured());
    const QString shares =
        tr("capped %1, open nectar %2, brood %3, bee bread %4, empty %5")
            .arg(words::percent(shareOf(drawn.record, Zone::Capped)), words::percent(shareOf(drawn.record, Zone::Open)),
                 words::percent(shareOf(drawn.record, Zone::Brood)),
                 words::percent(shareOf(drawn.record, Zone::BeeBread)), words::percent(emptyShare(drawn.record)));
    if (traced == 1)
        return tr("One face: %1.\nHoney %2, known to 17.5 % instead of 20 % by eye; with the other face traced too, to 11.5 %.")
            .arg(shares, drawn.kilograms);
    return tr("Both faces: %1.\nHoney %2, known to 11.5 % instead of 15 % by eye.").arg(shares, drawn.kilograms);
}

void PhotographWindow::showReadout() {
    readout_->setText(readout());
    take_->setEnabled(!pictures().isEmpty());
}

// ---- undo -----------------------------------------------------------------------------------------------------------------

void PhotographWindow::keep() {
    history_.keep();
    showUndo();
}

void PhotographWindow::showUndo() {
    undoButton_->setEnabled(history_.canUndo());
    redoButton_->setEnabled(history_.canRedo());
}

void PhotographWindow::showRestored() {
    showUndo();
    if (curve_ && *curve_ >= face().tracings.size()) curve_.reset();
    showPicture();
}

void PhotographWindow::undo() {
    if (history_.undo()) showRestored();
}

void PhotographWindow::redo() {
    if (history_.redo()) showRestored();
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

void PhotographWindow::pickByHand(hive::TracedKind kind) {
    const auto shown = kind == kind_ ? curve_ : std::nullopt;
    pickKind(kind);
    view_->setFocus();
    if (!shown) return;
    const auto& tracings = face().tracings;
    for (std::size_t i = 1; i <= tracings.size(); ++i) {
        const auto other = (*shown + tracings.size() - i) % tracings.size();
        if (tracings[other].kind != kind) continue;
        curve_ = other;
        return showPicture();
    }
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
    rectified_ = emptyPlane(comb_.format.outline, pixelsPerMm);
    rectifiedFrom_ = from;
    work_.ask(
        straightening, NewestWork::Turn::Last, this,
        [outline = comb_.format.outline, face = face()](const std::stop_token&) {
            return rectify(outline, face, pixelsPerMm);
        },
        [this, from](const Outcome<std::optional<Rectified>>& made) {
            if (!made.ok()) return say(problemWords(made.problems()), true);
            if (from != rectifiedFrom_ || !*made) return;
            rectified_ = *made;
            if (step_ == Step::Trace) view_->showPicture(rectified_->picture);
        });
}

std::vector<QString> PhotographWindow::everyHint() {
    const QString keys = tr(
        "By keys: arrows move the marked point (Shift: faster), Space goes to the next, + and \u2212 or the wheel zoom, 0 shows all.");
    return {
        tr("Photograph one face of the comb without bees, all of it in view, as square-on as it can be had; then open the picture here."),
        tr("Drag the four points to the corners of the comb, inside the frame.") + QLatin1Char('\n') + keys,
        tr("Drag the points: where the comb begins and ends at the bar, low on either side, and its lowest point.") +
            QLatin1Char('\n') + keys,
        tr("Click around each zone; the curve closes itself. Drag points, Delete takes one away. Where curves overlap, brood counts first, then bee bread, capped and open nectar.\n"
           "By keys: Return adds a point to be moved on with the arrows (Shift: faster), Space goes to the next, + and \u2212 zoom, 0 shows all.")};
}

QString PhotographWindow::whatToDo() const {
    const bool marking = step_ == Step::Mark, corners = face().markedBy == MarkedBy::Corners;
    return everyHint()[face().picture.isNull() ? 0 : !marking ? 3 : corners ? 1 : 2];
}

// Room for the longest, so that another does not move the picture.
void PhotographWindow::resizeEvent(QResizeEvent* event) {
    QDialog::resizeEvent(event);
    const auto margins = layout()->contentsMargins();
    const QRect room(0, 0, width() - margins.left() - margins.right(), 10000);
    int tall = 0;
    for (const auto& each : everyHint())
        tall = std::max(tall, hint_->fontMetrics().boundingRect(room, Qt::TextWordWrap, each).height());
    hint_->setMinimumHeight(tall);
}

void PhotographWindow::say(const QString& words, bool fault) {
    hint_->setText(words);
    hint_->setProperty("fault", fault);
    hint_->style()->polish(hint_);
}

QString PhotographWindow::hint() const { return hint_->text(); }

void PhotographWindow::showPicture() {
    if (!traceable()) step_ = Step::Mark;
    const bool tracing = step_ == Step::Trace;
    const QSignalBlocker quietSteps(steps_), quietMarks(markedBy_);
    steps_->setCurrentIndex(tracing ? 1 : 0);
    steps_->setTabEnabled(1, traceable());
    markedBy_->setCurrentIndex(markedBy_->findData(static_cast<int>(face().markedBy)));
    markedBy_->setEnabled(!face().picture.isNull());
    tools_->setCurrentIndex(tracing ? 1 : 0);
    say(whatToDo(), false);
    std::vector<PhotographView::Point> points;
    if (tracing) {
        rectifyAnew();
        view_->showPicture(rectified_->picture);
        if (const auto* traced = curve())
            for (const auto& point : traced->points)
                points.push_back(
                    {rectified_->pixel(point), tr("point %1 of %2").arg(points.size() + 1).arg(nameOf(kind_))});
    } else {
        view_->showPicture(face().picture);
        const auto names = markNames(face().markedBy);
        for (std::size_t i = 0; i < face().marks.size(); ++i)
            points.push_back({face().marks[i], names[static_cast<qsizetype>(i)]});
    }
    view_->showPoints(std::move(points), tracing);
    showCurves();
    showReadout();
}

void PhotographWindow::showCurves() {
    std::vector<PhotographView::Curve> curves;
    const auto corners = hive::cornersOf(comb_.format.outline);
    QPainterPath outline;
    if (step_ == Step::Trace && rectified_) {
        outline = pathOf({corners.begin(), corners.end()}, *rectified_);
        addLine(curves, outline, 1, Qt::DotLine, Qt::NoBrush);
        for (std::size_t i = 0; i < face().tracings.size(); ++i) {
            const auto& tracing = face().tracings[i];
            const auto zone = zoneOf(tracing.kind);
            QColor tint = zone ? patternOf(zone, lightColours(), 1).textureImage().pixelColor(0, 0) : QColor(Qt::white);
            tint.setAlpha(zone ? 90 : 0);
            addLine(curves, pathOf(hive::smoothClosed(tracing.points), *rectified_), curve_ == i ? 2.5 : 1.2,
                    tracing.kind == hive::TracedKind::Comb ? Qt::DashLine : Qt::SolidLine, tint);
        }
    } else if (const auto plane = planeOf(comb_.format.outline, face())) {
        const auto back = plane->inverse();
        outline.moveTo(picturePoint(back(corners[0])));
        for (const auto& corner : {corners[1], corners[2], corners[3]}) outline.lineTo(picturePoint(back(corner)));
        outline.closeSubpath();
        addLine(curves, outline, 1.5, Qt::SolidLine, Qt::NoBrush);
    }
    view_->showCurves(std::move(curves));
}

QString nameOf(hive::TracedKind kind) {
    const auto zone = zoneOf(kind);
    return zone ? words::zone(*zone) : PhotographWindow::tr("the comb itself");
}

} // namespace winterlarder::desk
