// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/comb_painter.h"

#include "widgets/comb_pattern.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

void fill(QPainter& painter, const QPainterPath& path, const QBrush& brush) {
    if (!path.isEmpty()) painter.fillPath(path, brush);
}

void paintZones(QPainter& painter, const CombShape& shape, const Colours& colours, double cell) {
    const double ratio = painter.device()->devicePixelRatioF();
    fill(painter, shape.comb, patternOf(std::nullopt, colours, ratio, cell));
    fill(painter, shape.beeBread, patternOf(Zone::BeeBread, colours, ratio, cell));
    fill(painter, shape.brood, patternOf(Zone::Brood, colours, ratio, cell));
    fill(painter, shape.open, patternOf(Zone::Open, colours, ratio, cell));
    fill(painter, shape.capped, patternOf(Zone::Capped, colours, ratio, cell));
}

void paintBar(QPainter& painter, const QRectF& into, double thick, const Colours& colours) {
    const QRectF bar(into.left(), into.top(), into.width(), thick);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.wood);
    painter.drawRoundedRect(bar, 1.5, 1.5);
}

} // namespace

void paintComb(QPainter& painter, const CombLook& look, const QRectF& into, const Colours& colours, double cell) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const double thick = std::clamp(into.height() * 0.07, 3.0, 7.0);
    const QRectF face = into.adjusted(into.width() * 0.03, thick, -into.width() * 0.03, 0);
    const auto shape = shapeOf(look.outline, look.filling, face);
    if (look.filling.built < 0.999) {
        painter.setPen(QPen(colours.combEdge, 1, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(shape.full);
    }
    if (look.unseen) painter.setOpacity(0.45);
    paintZones(painter, shape, colours, cell);
    painter.setOpacity(1);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look.chosen ? colours.text : colours.combEdge, look.chosen ? 2.2 : 1, look.unseen ? Qt::DashLine : Qt::SolidLine));
    painter.drawPath(shape.comb);
    paintBar(painter, into, thick, colours);
    painter.restore();
}

} // namespace winterlarder::desk
