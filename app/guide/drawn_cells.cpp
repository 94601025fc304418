// SPDX-License-Identifier: GPL-3.0-or-later
// Cells and combs of cells.
#include "guide/drawn_parts.h"

#include "combs/comb_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace winterlarder::desk {

namespace {

QPainterPath hexagon(QPointF centre, double radius) {
    QPainterPath path;
    for (int corner = 0; corner < 6; ++corner) {
        const double angle = std::numbers::pi * (corner / 3.0 + 0.5);
        const QPointF at = centre + radius * QPointF(std::cos(angle), std::sin(angle));
        if (corner) path.lineTo(at);
        else path.moveTo(at);
    }
    path.closeSubpath();
    return path;
}

QPainterPath arc(QPointF centre, double radius, double from, double sweep) {
    const QRectF around(centre - QPointF(radius, radius), QSizeF(2 * radius, 2 * radius));
    QPainterPath path;
    path.arcMoveTo(around, from);
    path.arcTo(around, from, sweep);
    return path;
}

Ink inkOf(CellKind kind, const Colours& c) {
    switch (kind) {
    case CellKind::Capped: return {c.capped, c.cappedInk};
    case CellKind::Open: return {c.open, c.openInk};
    case CellKind::BeeBread: return {c.beeBread, c.beeBreadInk};
    case CellKind::SealedBrood: return {c.brood, c.broodInk};
    default: return {c.empty, c.combEdge};
    }
}

// Each kind has a mark of its own beside its colour.
void drawMark(SvgDrawing& d, QPointF at, double r, CellKind kind) {
    const Colours& c = d.colours();
    const QColor pale = c.dark ? c.text : c.card;
    switch (kind) {
    case CellKind::Capped: d.shape(arc(at + QPointF(0, r * 0.1), r * 0.42, 20, 140), {{}, c.cappedInk, r * 0.1}); break;
    case CellKind::Open: d.shape(arc(at, r * 0.5, 100, 80), {{}, pale, r * 0.16}); break;
    case CellKind::BeeBread: d.oval(at, r * 0.5, r * 0.5, {c.beeBreadInk, {}}); break;
    case CellKind::SealedBrood: d.oval(at, r * 0.58, r * 0.58, {{}, c.broodInk, r * 0.14}); break;
    case CellKind::Grub: d.shape(arc(at, r * 0.36, 40, 280), {{}, c.dark ? c.text : c.quietText, r * 0.26}); break;
    case CellKind::Egg:
        d.line(at + QPointF(-r * 0.08, r * 0.28), at + QPointF(r * 0.1, -r * 0.24), c.dark ? c.text : c.quietText,
               r * 0.15);
        break;
    case CellKind::Empty: d.shape(hexagon(at, r * 0.55), {{}, c.emptyInk, r * 0.1}); break;
    }
}

CellKind kindAt(const CombShape& shape, QPointF at) {
    if (shape.brood.contains(at)) return CellKind::SealedBrood;
    if (shape.beeBread.contains(at)) return CellKind::BeeBread;
    if (shape.capped.contains(at)) return CellKind::Capped;
    return shape.open.contains(at) ? CellKind::Open : CellKind::Empty;
}

void drawFrame(SvgDrawing& d, const QRectF& face, bool sloping) {
    constexpr double bar = 9, side = 6, lug = 12;
    const Ink wood{d.colours().wood, d.colours().combEdge};
    if (!sloping) {
        d.box({face.left() - side, face.top(), side, face.height()}, wood);
        d.box({face.right(), face.top(), side, face.height()}, wood);
        d.box({face.left() - side, face.bottom(), face.width() + 2 * side, side}, wood);
    }
    d.box({face.left() - side - lug, face.top() - bar, face.width() + 2 * (side + lug), bar}, wood, 1.5);
}

} // namespace

void drawCell(SvgDrawing& drawing, QPointF centre, double radius, CellKind kind) {
    Ink ink = inkOf(kind, drawing.colours());
    ink.width = radius * 0.12;
    drawing.shape(hexagon(centre, radius * 0.97), ink);
    drawMark(drawing, centre, radius, kind);
}

QRectF drawComb(SvgDrawing& drawing, const hive::Outline& outline, const CombFilling& filling, const QRectF& room,
                double radius) {
    const double wide = std::max(outline.top, outline.bottom).value(),
                 scale = std::min(room.width() / wide, room.height() / outline.height.value());
    QRectF face(0, 0, wide * scale, outline.height.value() * scale);
    face.moveCenter(room.center());
    const CombShape shape = shapeOf(outline, filling, face);
    drawing.shape(shape.comb, {drawing.colours().empty, drawing.colours().combEdge});
    const double across = radius * std::numbers::sqrt3, down = radius * 1.5;
    int row = 0;
    for (double y = face.top() + radius; y <= face.bottom() - radius * 0.8; y += down, ++row)
        for (double x = face.left() + across * (row % 2 ? 1 : 0.5); x <= face.right() - across * 0.45; x += across)
            if (shape.comb.contains(QPointF(x - across * 0.45, y)) &&
                shape.comb.contains(QPointF(x + across * 0.45, y)))
                drawCell(drawing, {x, y}, radius, kindAt(shape, {x, y}));
    drawFrame(drawing, face, outline.top != outline.bottom);
    return face;
}

} // namespace winterlarder::desk
