// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_painter.h"

#include "combs/comb_pattern.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

double barThickness(const QRectF& into) { return std::clamp(into.height() * 0.07, 3.0, 7.0); }

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

void paintTopBar(QPainter& painter, const QRectF& into, const Colours& colours) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours.wood);
    painter.drawRoundedRect(QRectF(into.left(), into.top(), into.width(), barThickness(into)), 1.5, 1.5);
}

// Drawn in the lower right corner of the face, where nothing else tells how sure the comb is.
void paintSeen(QPainter& painter, const CombAppearance& look, const QRectF& face, const Colours& colours) {
    if (look.seen == Seen::BothFaces && !look.measured) return;
    const double size = std::clamp(face.height() * 0.11, 5.0, 9.0);
    double x = face.right() - size - 2;
    const double y = face.bottom() - size - 2;
    const auto next = [&] {
        const QRectF box(x, y, size, size);
        x -= size + 2;
        return box;
    };
    painter.setPen(QPen(colours.text, 1.2));
    if (look.measured) {
        const QRectF lens = next();
        painter.setBrush(colours.card);
        painter.drawRoundedRect(lens.adjusted(-1, 0.5, 1, -0.5), 1.5, 1.5);
        painter.setBrush(colours.text);
        painter.drawEllipse(lens.center(), size * 0.2, size * 0.2);
    }
    if (look.seen == Seen::OneFace) {
        painter.setBrush(colours.card);
        painter.drawEllipse(next());
        painter.setBrush(colours.text);
        painter.drawEllipse(next());
    } else if (look.seen == Seen::ThroughWindow) {
        const QRectF pane = next();
        painter.setBrush(colours.card);
        painter.drawRect(pane);
        painter.drawLine(QPointF(pane.center().x(), pane.top()), QPointF(pane.center().x(), pane.bottom()));
        painter.drawLine(QPointF(pane.left(), pane.center().y()), QPointF(pane.right(), pane.center().y()));
    }
}

void paintNotLookedAt(QPainter& painter, const CombAppearance& look, const CombShape& shape, const QRectF& face,
                      const Colours& colours) {
    if (look.seen != Seen::NotAtAll) return;
    painter.setPen(colours.text);
    QFont font = painter.font();
    font.setBold(true);
    font.setPixelSize(static_cast<int>(std::clamp(face.height() * 0.35, 10.0, 26.0)));
    painter.setFont(font);
    painter.drawText(shape.comb.boundingRect(), Qt::AlignCenter, QStringLiteral("?"));
}

} // namespace

QRectF faceIn(const QRectF& into) {
    return into.adjusted(into.width() * 0.03, barThickness(into), -into.width() * 0.03, 0);
}

void paintComb(QPainter& painter, const CombAppearance& look, const QRectF& into, const Colours& colours, double cell) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF face = faceIn(into);
    const CombLevels levels(look.outline, look.filling);
    const auto shape = shapeOf(levels, face);
    const bool unseen = look.seen == Seen::NotAtAll;
    if (look.filling.built < 0.999) {
        painter.setPen(QPen(colours.combEdge, 1, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(shape.full);
    }
    if (unseen) painter.setOpacity(0.35);
    paintZones(painter, shape, colours, cell);
    painter.setOpacity(1);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(look.chosen ? colours.text : colours.combEdge, look.chosen ? 2.2 : 1,
                        unseen ? Qt::DashLine : Qt::SolidLine));
    painter.drawPath(shape.comb);
    if (look.grip) {
        painter.setPen(QPen(colours.text, 2, Qt::SolidLine, Qt::RoundCap));
        painter.drawPath(edgeLine(levels, *look.grip, face));
    }
    paintSeen(painter, look, shape.comb.boundingRect(), colours);
    paintNotLookedAt(painter, look, shape, face, colours);
    paintTopBar(painter, into, colours);
    painter.restore();
}

} // namespace winterlarder::desk
