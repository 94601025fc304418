// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/outline_drawing.h"

#include "combs/comb_shape.h"
#include "models/words.h"
#include "theme/colours.h"

#include <QEvent>
#include <QPainter>

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr double barWidth = 6;
constexpr double barBeyond = 10; // of the bar beyond the comb, on both sides
constexpr double tick = 3;       // half the mark that ends a measured line

void measureAcross(QPainter& painter, double left, double right, double y) {
    painter.drawLine(QPointF(left, y), QPointF(right, y));
    for (const double x : {left, right}) painter.drawLine(QPointF(x, y - tick), QPointF(x, y + tick));
}

void measureDown(QPainter& painter, double x, double top, double bottom) {
    painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    for (const double y : {top, bottom}) painter.drawLine(QPointF(x - tick, y), QPointF(x + tick, y));
}

} // namespace

OutlineDrawing::OutlineDrawing(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    speak();
}

void OutlineDrawing::show(const std::optional<hive::Outline>& outline) {
    if (outline == outline_) return;
    outline_ = outline;
    speak();
    update();
}

void OutlineDrawing::speak() {
    if (!outline_) return setAccessibleName(tr("The comb face on; a measure is missing"));
    setAccessibleName(
        tr("The comb face on: %1 wide at the top, %2 deep, %3 wide at the bottom")
            .arg(words::length(outline_->top), words::length(outline_->height), words::length(outline_->bottom)));
}

int OutlineDrawing::margin() const { return fontMetrics().height() + 8; }

QSize OutlineDrawing::sizeHint() const {
    const int em = fontMetrics().height();
    return {em * 14, em * 9};
}

QRectF OutlineDrawing::face() const {
    if (!outline_) return {};
    const double aside = fontMetrics().horizontalAdvance(words::length(outline_->height)) + 14;
    const QRectF room = QRectF(rect()).adjusted(barBeyond + 2, margin() + barWidth, -aside, -margin());
    const double wide = std::max(outline_->top, outline_->bottom).value(), deep = outline_->height.value();
    const double scale = std::min(room.width() / wide, room.height() / deep);
    return {room.center().x() - wide * scale / 2, room.top(), wide * scale, deep * scale};
}

void OutlineDrawing::paintEvent(QPaintEvent*) {
    const QRectF into = face();
    if (into.width() < 1 || into.height() < 1) return;
    const auto& colours = coloursOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.wood);
    const double wider = std::max(outline_->top, outline_->bottom).value();
    const double top = into.width() * outline_->top.value() / wider,
                 bottom = into.width() * outline_->bottom.value() / wider;
    painter.drawRect(
        QRectF(into.center().x() - top / 2 - barBeyond, into.top() - barWidth, top + 2 * barBeyond, barWidth));
    painter.setPen(QPen(colours.combEdge, 1));
    painter.setBrush(colours.empty);
    painter.drawPath(shapeOf(*outline_, {}, into).full);
    painter.setPen(QPen(colours.text, 1));
    const double middle = into.center().x(), left = middle - top / 2, under = into.bottom() + 8,
                 beside = into.right() + 8, over = into.top() - barWidth - 6;
    measureAcross(painter, left, left + top, over);
    measureAcross(painter, middle - bottom / 2, middle + bottom / 2, under);
    measureDown(painter, beside, into.top(), into.bottom());
    const int high = fontMetrics().height();
    const QRectF acrossAll(0, 0, width(), high);
    painter.drawText(acrossAll.translated(middle - width() / 2.0, over - high - 1), Qt::AlignCenter,
                     words::length(outline_->top));
    painter.drawText(acrossAll.translated(middle - width() / 2.0, under + 2), Qt::AlignCenter,
                     words::length(outline_->bottom));
    painter.drawText(QRectF(beside + 6, into.top(), width() - beside - 6, into.height()),
                     Qt::AlignVCenter | Qt::AlignLeft, words::length(outline_->height));
}

void OutlineDrawing::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::LocaleChange) return;
    speak();
    update();
}

} // namespace winterlarder::desk
