// SPDX-License-Identifier: GPL-3.0-or-later
// Hives from outside, cut open and from above; bees, a hand, a scale.
#include "guide/drawn_parts.h"

#include <QTransform>

#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr double wall = 7;

Ink wood(const Colours& c) { return {c.wood, c.combEdge, 1.4}; }

void drawLidAndFloor(SvgDrawing& d, const QRectF& body) {
    const Colours& c = d.colours();
    d.box({body.left() - 6, body.top() - lidHeight, body.width() + 12, lidHeight}, {c.band, c.mark, 1.4}, 3);
    d.box({body.left() - 3, body.bottom(), body.width() + 6, floorHeight}, wood(c), 1);
    d.box({body.center().x() - body.width() * 0.22, body.bottom() + 2, body.width() * 0.44, floorHeight * 0.5},
          {c.dark ? c.desk : c.text, {}}, 1);
}

// Bees stand across a gap, head by turns left and right.
void fillGap(SvgDrawing& d, const QRectF& gap) {
    const double step = 7;
    int row = 0;
    for (double y = gap.top() + step / 2; y <= gap.bottom() - step / 2 + 0.1; y += step, ++row)
        drawBee(d, {gap.center().x(), y}, std::min(gap.width() + 2, 11.0), row % 2 ? 18 : 162);
}

} // namespace

void drawBee(SvgDrawing& drawing, QPointF centre, double length, double degrees) {
    const Colours& c = drawing.colours();
    const auto placed = QTransform::fromTranslate(centre.x(), centre.y()).rotate(degrees);
    const auto part = [&](double at, double across, double down, const Ink& ink) {
        QPainterPath path;
        path.addEllipse(QPointF(at * length, 0), across * length, down * length);
        drawing.shape(placed.map(path), ink);
    };
    part(0.12, 0.4, 0.24, {c.stores, c.broodInk, 0.9});
    part(-0.38, 0.17, 0.17, {c.broodInk, {}});
    for (const double stripe : {0.08, 0.28})
        drawing.line(placed.map(QPointF(stripe * length, -0.2 * length)),
                     placed.map(QPointF(stripe * length, 0.2 * length)), c.broodInk, length * 0.1);
}

void drawHiveFront(SvgDrawing& drawing, const HiveFront& hive) {
    const Colours& c = drawing.colours();
    const double height = hive.body.height() / hive.boxes;
    for (int each = 0; each < hive.boxes; ++each) {
        const QRectF box(hive.body.left(), hive.body.top() + each * height, hive.body.width(), height);
        drawing.box(box, wood(c), 1);
        drawing.box({box.center().x() - 14, box.top() + height * 0.3, 28, 6}, {c.combEdge, {}}, 3);
    }
    drawLidAndFloor(drawing, hive.body);
}

std::vector<QRectF> slabsOf(const HiveInside& hive) {
    const QRectF room = hive.body.adjusted(wall + 4, 4, -wall - 4, -5);
    const double pitch = room.width() / static_cast<double>(hive.stores.size());
    std::vector<QRectF> slabs;
    for (std::size_t each = 0; each < hive.stores.size(); ++each)
        slabs.emplace_back(room.left() + pitch * (static_cast<double>(each) + 0.21), room.top(), pitch * 0.58,
                           room.height());
    return slabs;
}

void drawHiveInside(SvgDrawing& drawing, const HiveInside& hive) {
    const Colours& c = drawing.colours();
    drawing.box(hive.body, wood(c), 1);
    drawing.box(hive.body.adjusted(wall, 0, -wall, 0), {c.card, c.combEdge});
    drawLidAndFloor(drawing, hive.body);
    const auto slabs = slabsOf(hive);
    for (std::size_t each = 0; each < slabs.size(); ++each) {
        const QRectF& slab = slabs[each];
        drawing.box(slab, {c.empty, c.combEdge, 0.9}, 1);
        const QRectF full(slab.topLeft(), QSizeF(slab.width(), slab.height() * hive.stores[each]));
        if (full.height() > 0) drawing.box(full, {c.capped, c.cappedInk, 0.9}, 1);
        for (double y = full.top() + 6; y < full.bottom() - 2; y += 7)
            drawing.line({full.left() + 1.5, y}, {full.right() - 1.5, y - 3}, c.cappedInk, 0.8);
    }
    if (hive.cluster.isNull()) return;
    drawing.oval(hive.cluster.center(), hive.cluster.width() / 2, hive.cluster.height() / 2,
                 {c.broodInk, c.broodInk, 1.4, true, 0.18});
    for (std::size_t each = 0; each + 1 < slabs.size(); ++each) {
        const double x = (slabs[each].right() + slabs[each + 1].left()) / 2,
                     off = 2 * (x - hive.cluster.center().x()) / hive.cluster.width();
        if (std::abs(off) >= 0.95) continue;
        const double half = hive.cluster.height() / 2 * std::sqrt(1 - off * off);
        fillGap(drawing, {slabs[each].right(), hive.cluster.center().y() - half,
                          slabs[each + 1].left() - slabs[each].right(), 2 * half});
    }
}

QRectF barOf(const BoxFromAbove& box, int bar) {
    const QRectF room = box.body.adjusted(wall, wall, -wall, -wall);
    const double pitch = room.width() / box.bars;
    return {room.left() + pitch * (bar + 0.19), room.top() + 2, pitch * 0.62, room.height() - 4};
}

QRectF gapOf(const BoxFromAbove& box, int gap) {
    const QRectF left = barOf(box, gap), right = barOf(box, gap + 1);
    return {left.right(), left.top(), right.left() - left.right(), left.height()};
}

void drawBoxFromAbove(SvgDrawing& drawing, const BoxFromAbove& box) {
    const Colours& c = drawing.colours();
    drawing.box(box.body, wood(c), 2);
    drawing.box(box.body.adjusted(wall, wall, -wall, -wall), {c.dark ? c.desk : c.empty, c.combEdge});
    for (int bar = 0; bar < box.bars; ++bar)
        if (bar != box.missing) drawing.box(barOf(box, bar), wood(c), 1.5);
    for (std::size_t gap = 0; gap < box.bees.size(); ++gap) {
        QRectF filled = gapOf(box, static_cast<int>(gap));
        filled.setTop(filled.bottom() - filled.height() * box.bees[gap]);
        if (box.bees[gap] > 0) fillGap(drawing, filled);
    }
}

void drawHand(SvgDrawing& drawing, QPointF at, bool mirrored) {
    const Colours& c = drawing.colours();
    const auto placed = QTransform::fromTranslate(at.x(), at.y()).scale(mirrored ? -1 : 1, 1);
    const Ink skin{c.storesEmpty, c.text, 1.5};
    QPainterPath arm;
    arm.moveTo(-74, 44);
    arm.cubicTo(-54, 26, -44, 14, -30, 4);
    arm.cubicTo(-24, -1, -16, 0, -10, 1);
    arm.lineTo(18, 1);
    arm.cubicTo(25, 1, 25, 12, 18, 12);
    arm.lineTo(-6, 13);
    arm.cubicTo(-22, 26, -32, 40, -46, 58);
    drawing.shape(placed.map(arm), skin);
    QPainterPath thumb;
    thumb.moveTo(-34, 9);
    thumb.cubicTo(-30, -8, -24, -20, -15, -21);
    thumb.cubicTo(-8, -21, -9, -13, -13, -10);
    thumb.cubicTo(-17, -5, -16, 2, -19, 8);
    drawing.shape(placed.map(thumb), skin);
}

QRectF drawLuggageScale(SvgDrawing& drawing, QPointF at, double height) {
    const Colours& c = drawing.colours();
    const QRectF face(at.x() - 15, at.y() - height, 30, 34);
    QPainterPath hook(QPointF(at.x(), face.bottom()));
    hook.lineTo(at.x(), at.y() - 8);
    hook.cubicTo(at.x() + 9, at.y() - 6, at.x() + 8, at.y() + 5, at.x(), at.y() + 4);
    hook.cubicTo(at.x() - 4, at.y() + 4, at.x() - 6, at.y() + 1, at.x() - 6, at.y() - 2);
    drawing.shape(hook, {{}, c.text, 2});
    drawing.box(face, {c.chosen, c.text, 1.5}, 6);
    drawing.box({face.left() + 5, face.top() + 7, 20, 12}, {c.card, c.text, 1}, 2);
    QPainterPath grip(QPointF(face.left() + 4, face.top()));
    grip.cubicTo(face.left() + 2, face.top() - 16, face.right() - 2, face.top() - 16, face.right() - 4, face.top());
    drawing.shape(grip, {{}, c.text, 2.4});
    return face;
}

void drawGround(SvgDrawing& drawing, double y, double from, double to) {
    drawing.line({from, y}, {to, y}, drawing.colours().mark, 1.6);
    for (double x = from + 6; x < to; x += 16) drawing.line({x, y + 2}, {x - 6, y + 8}, drawing.colours().mark, 1);
}

} // namespace winterlarder::desk
