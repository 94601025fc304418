// SPDX-License-Identifier: GPL-3.0-or-later
#include "photograph/photograph_view.h"

#include "theme/colours.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr double reach = 12; // px around a point that take hold of it
constexpr double dot = 5;    // its radius
constexpr double loupeRadius = 74;
constexpr double loupeZoom = 4; // against the view, at least
constexpr double mostZoom = 16;
constexpr double seenEdge = 30; // px from the edge that a point moved by keys keeps
constexpr double fastSteps = 10;
constexpr QColor chosenColour(80, 150, 220);

} // namespace

PhotographView::PhotographView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("The photograph"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void PhotographView::showPicture(const QImage& picture) {
    const bool other = picture.size() != picture_.size();
    picture_ = picture;
    if (other) fit();
    update();
}

void PhotographView::showPoints(std::vector<Point> points, bool mayAdd) {
    points_ = std::move(points);
    mayAdd_ = mayAdd;
    chosen_ = std::min(chosen_, static_cast<int>(points_.size()) - 1);
    if (chosen_ < 0 && !points_.empty()) chosen_ = 0;
    announce();
    update();
}

void PhotographView::showCurves(std::vector<Curve> curves) {
    curves_ = std::move(curves);
    update();
}

void PhotographView::choosePoint(int point) {
    const int kept = std::clamp(point, -1, static_cast<int>(points_.size()) - 1);
    if (kept == chosen_) return;
    chosen_ = kept;
    announce();
    if (chosen_ >= 0) reveal(points_[static_cast<std::size_t>(chosen_)].at);
    update();
}

void PhotographView::announce() {
    if (chosen_ < 0 || chosen_ >= static_cast<int>(points_.size()))
        return setAccessibleDescription(tr("No point is marked"));
    const auto& point = points_[static_cast<std::size_t>(chosen_)];
    setAccessibleDescription(
        tr("%1, at %2, %3").arg(point.name).arg(point.at.x(), 0, 'f', 0).arg(point.at.y(), 0, 'f', 0));
}

// ---- zoom -----------------------------------------------------------------------------------------------------------------

void PhotographView::fit() {
    fitted_ = true;
    if (picture_.isNull()) return;
    zoom_ =
        std::min(static_cast<double>(width()) / picture_.width(), static_cast<double>(height()) / picture_.height());
    offset_ = QPointF(width() - picture_.width() * zoom_, height() - picture_.height() * zoom_) / 2;
    update();
}

void PhotographView::zoomAt(QPointF place, double factor) {
    if (picture_.isNull()) return;
    const double least = 0.5 * std::min(static_cast<double>(width()) / picture_.width(),
                                        static_cast<double>(height()) / picture_.height());
    const double wanted = std::clamp(zoom_ * factor, least, mostZoom);
    const QPointF kept = toPicture(place);
    zoom_ = wanted;
    offset_ = place - kept * zoom_;
    fitted_ = false;
    update();
}

void PhotographView::zoomAtChosen(double factor) {
    const bool any = chosen_ >= 0 && chosen_ < static_cast<int>(points_.size());
    zoomAt(any ? toWidget(points_[static_cast<std::size_t>(chosen_)].at) : QPointF(rect().center()), factor);
}

void PhotographView::reveal(QPointF at) {
    const QPointF shown = toWidget(at);
    const QPointF seen(
        std::clamp(shown.x(), std::min(seenEdge, width() / 2.0), std::max(width() - seenEdge, width() / 2.0)),
        std::clamp(shown.y(), std::min(seenEdge, height() / 2.0), std::max(height() - seenEdge, height() / 2.0)));
    if (fitted_ || seen == shown) return;
    offset_ += seen - shown;
    update();
}

void PhotographView::resizeEvent(QResizeEvent*) {
    if (fitted_) fit();
}

void PhotographView::wheelEvent(QWheelEvent* event) {
    zoomAt(event->position(), std::pow(1.0015, event->angleDelta().y()));
    event->accept();
}

// ---- painting -------------------------------------------------------------------------------------------------------------

void PhotographView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& colours = coloursOf(*this);
    painter.fillRect(rect(), colours.storesEmpty);
    if (picture_.isNull()) {
        painter.setPen(colours.quietText);
        painter.drawText(rect(), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("Open a photograph of the comb: one face, as square-on as it can be had."));
        return;
    }
    painter.setRenderHints(QPainter::SmoothPixmapTransform | QPainter::Antialiasing);
    if (zoom_ < 1)
        painter.drawPixmap(QRectF(offset_, QSizeF(picture_.size()) * zoom_), shrunk(), QRectF(shrunk().rect()));
    painter.save();
    painter.translate(offset_);
    painter.scale(zoom_, zoom_);
    if (zoom_ >= 1) painter.drawImage(QPointF(0, 0), picture_);
    for (const auto& curve : curves_) {
        QPen pen = curve.pen;
        pen.setCosmetic(true);
        painter.setPen(pen);
        painter.setBrush(curve.fill);
        painter.drawPath(curve.path);
    }
    painter.restore();
    for (int i = 0; i < static_cast<int>(points_.size()); ++i) {
        const QPointF at = toWidget(points_[static_cast<std::size_t>(i)].at);
        const bool chosen = i == chosen_;
        const double radius = chosen ? dot + 1.5 : dot;
        painter.setBrush(chosen ? QBrush(chosenColour) : QBrush(Qt::white));
        painter.setPen(QPen(lightEdge, chosen ? 5 : 3.5));
        painter.drawEllipse(at, radius, radius);
        painter.setPen(QPen(ink, chosen ? 2.5 : 1.5));
        painter.drawEllipse(at, radius, radius);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colours.accent, 2));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
    if (loupe_) paintLoupe(painter);
}

const QPixmap& PhotographView::shrunk() const {
    const QSize wanted = (QSizeF(picture_.size()) * zoom_ * devicePixelRatioF()).toSize().expandedTo({1, 1});
    const std::pair from(picture_.cacheKey(), wanted);
    if (shrunk_.isNull() || from != shrunkFrom_) {
        shrunk_ = QPixmap::fromImage(picture_.scaled(wanted, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
        shrunkFrom_ = from;
    }
    return shrunk_;
}

// In the corner away from the point, so that neither hand nor loupe hides it.
void PhotographView::paintLoupe(QPainter& painter) const {
    if (chosen_ < 0 || chosen_ >= static_cast<int>(points_.size())) return;
    const QPointF at = points_[static_cast<std::size_t>(chosen_)].at;
    const QPointF shown = toWidget(at);
    const double edge = loupeRadius + 8;
    const QPointF middle(shown.x() < width() / 2.0 ? width() - edge : edge,
                         shown.y() < height() / 2.0 ? height() - edge : edge);
    QPainterPath lens;
    lens.addEllipse(middle, loupeRadius, loupeRadius);
    painter.save();
    painter.setClipPath(lens);
    painter.fillRect(rect(), Qt::darkGray);
    const double scale = std::max(zoom_ * loupeZoom, 1.0);
    painter.translate(middle - at * scale);
    painter.scale(scale, scale);
    painter.drawImage(QPointF(0, 0), picture_);
    painter.restore();
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, 3));
    painter.drawPath(lens);
    painter.setPen(QPen(Qt::black, 1));
    painter.drawPath(lens);
    for (const auto& colour : {QPen(Qt::white, 3), QPen(Qt::black, 1)}) {
        painter.setPen(colour);
        painter.drawLine(middle - QPointF(14, 0), middle + QPointF(14, 0));
        painter.drawLine(middle - QPointF(0, 14), middle + QPointF(0, 14));
    }
}

// ---- hand -----------------------------------------------------------------------------------------------------------------

int PhotographView::pointAt(QPointF place) const {
    int nearest = -1;
    double closest = reach;
    for (int i = 0; i < static_cast<int>(points_.size()); ++i) {
        const QPointF away = toWidget(points_[static_cast<std::size_t>(i)].at) - place;
        const double distance = std::hypot(away.x(), away.y());
        if (distance >= closest) continue;
        closest = distance;
        nearest = i;
    }
    return nearest;
}

QPointF PhotographView::kept(QPointF at) const {
    return {std::clamp(at.x(), -0.25 * picture_.width(), 1.25 * picture_.width()),
            std::clamp(at.y(), -0.25 * picture_.height(), 1.25 * picture_.height())};
}

void PhotographView::put(int point, QPointF at) {
    points_[static_cast<std::size_t>(point)].at = at;
    announce();
    update();
}

void PhotographView::mousePressEvent(QMouseEvent* event) {
    if (picture_.isNull()) return;
    loupe_ = false; // of keys
    const int point = pointAt(event->position());
    const bool left = event->button() == Qt::LeftButton;
    const bool pans = event->button() == Qt::RightButton || event->button() == Qt::MiddleButton ||
                      (event->modifiers() & Qt::ControlModifier) || (left && point < 0 && !mayAdd_);
    if (pans) {
        panFrom_ = event->position() - offset_;
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (!left) return;
    if (point < 0) return emit pointAdded(toPicture(event->position()));
    choosePoint(point);
    moving_ = loupe_ = true;
    grip_ = toWidget(points_[static_cast<std::size_t>(point)].at) - event->position();
    update();
}

void PhotographView::mouseMoveEvent(QMouseEvent* event) {
    if (panFrom_) {
        offset_ = event->position() - *panFrom_;
        fitted_ = false;
        update();
    } else if (moving_) {
        put(chosen_, kept(toPicture(event->position() + grip_)));
        emit pointMoved(chosen_, points_[static_cast<std::size_t>(chosen_)].at, false);
    } else {
        setCursor(pointAt(event->position()) >= 0 ? Qt::SizeAllCursor : mayAdd_ ? Qt::CrossCursor : Qt::OpenHandCursor);
    }
}

void PhotographView::mouseReleaseEvent(QMouseEvent* event) {
    if (panFrom_) {
        panFrom_.reset();
        unsetCursor();
    } else if (moving_) {
        moving_ = loupe_ = false;
        put(chosen_, kept(toPicture(event->position() + grip_)));
        emit pointMoved(chosen_, points_[static_cast<std::size_t>(chosen_)].at, true);
    }
}

// ---- keys -----------------------------------------------------------------------------------------------------------------

// A pixel of the screen, so that a step is seen however large the picture; closer in, one of the picture.
void PhotographView::moveByKey(QPointF by) {
    if (chosen_ < 0 || chosen_ >= static_cast<int>(points_.size())) return;
    loupe_ = true;
    put(chosen_, kept(points_[static_cast<std::size_t>(chosen_)].at + by * std::max(1.0, 1 / zoom_)));
    const QPointF at = points_[static_cast<std::size_t>(chosen_)].at;
    reveal(at);
    emit pointNudged(chosen_, at);
}

// Where the chosen point is, to be moved on from there.
void PhotographView::addByKey() {
    if (!mayAdd_) return;
    const bool any = chosen_ >= 0 && chosen_ < static_cast<int>(points_.size());
    emit pointAddedAfter(any ? chosen_ : -1,
                         any ? points_[static_cast<std::size_t>(chosen_)].at : toPicture(rect().center()));
}

std::vector<NamedKeys> PhotographView::namedKeys() {
    return {
        {{Qt::Key_Left, Qt::Key_Right, Qt::Key_Up, Qt::Key_Down}, tr("moves the point; with Shift ten times as far")},
        {{Qt::Key_Space}, tr("the next point")},
        {{Qt::Key_Insert, Qt::Key_Return}, tr("a new point in the middle")},
        {{Qt::Key_Delete, Qt::Key_Backspace}, tr("takes the point away")},
        {{Qt::Key_Plus, Qt::Key_Minus}, tr("larger or smaller")},
        {{Qt::Key_0}, tr("the whole picture")}};
}

void PhotographView::keyPressEvent(QKeyEvent* event) {
    const bool shift = event->modifiers() & Qt::ShiftModifier;
    const double step = shift ? fastSteps : 1;
    const int count = static_cast<int>(points_.size());
    switch (event->key()) {
    case Qt::Key_Left: return moveByKey({-step, 0});
    case Qt::Key_Right: return moveByKey({step, 0});
    case Qt::Key_Up: return moveByKey({0, -step});
    case Qt::Key_Down: return moveByKey({0, step});
    case Qt::Key_Space: return count > 0 ? choosePoint((chosen_ + (shift ? count - 1 : 1)) % count) : void();
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Insert: return addByKey();
    case Qt::Key_Delete:
    case Qt::Key_Backspace: return chosen_ >= 0 ? emit pointRemoved(chosen_) : void();
    case Qt::Key_Plus:
    case Qt::Key_Equal: return zoomAtChosen(zoomStep);
    case Qt::Key_Minus: return zoomAtChosen(1 / zoomStep);
    case Qt::Key_0: return fit();
    default: QWidget::keyPressEvent(event);
    }
}

void PhotographView::focusOutEvent(QFocusEvent* event) {
    loupe_ = false;
    QWidget::focusOutEvent(event);
}

} // namespace winterlarder::desk
