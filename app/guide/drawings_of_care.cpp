// SPDX-License-Identifier: GPL-3.0-or-later
// Feeding, and hives in winter.
#include "guide/drawn_parts.h"
#include "guide/guide_drawings.h"
#include "text/contexts.h"
#include "text/guide/guide_numbers.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

void nameBeside(SvgDrawing& d, QPointF place, QPointF at, const QString& words) {
    d.line(place, {at.x() - 6, at.y()}, d.colours().text, 1.2);
    d.oval(place, 2.6, 2.6, {d.colours().text, d.colours().card});
    d.label({at.x(), at.y() - 17, guideWidth - at.x() - 4, 34}, words, Qt::AlignLeft | Qt::AlignVCenter);
}

QPainterPath drift(double left, double right, double foot, double height) {
    QPainterPath path(QPointF(left, foot));
    path.cubicTo(left + (right - left) * 0.2, foot - height * 1.1, left + (right - left) * 0.5, foot - height * 1.2,
                 left + (right - left) * 0.7, foot - height * 0.6);
    path.cubicTo(left + (right - left) * 0.85, foot - height * 0.2, right, foot - 4, right, foot);
    path.closeSubpath();
    return path;
}

} // namespace

void drawSyrup(SvgDrawing& d, const text::GuideReader& reader) {
    const Colours& c = d.colours();
    const auto recipes = text::recipes(reader.style.numbers.system);
    const double most = (recipes.front().syrup.sugar * 2).value();
    constexpr double foot = 140, tall = 118, width = 54;
    double x = 36;
    for (const auto& [ratio, syrup] : recipes) {
        const double sugar = tall * syrup.sugar.value() / most,
                     water = tall * (syrup.mass - syrup.sugar).value() / most;
        d.box({x, foot - sugar, width, sugar}, {c.card, c.text, 1.4});
        for (double y = foot - sugar + 8; y < foot - 3; y += 9)
            for (double dot = x + 7 + (static_cast<int>(y) % 2) * 4; dot < x + width - 3; dot += 10)
                d.oval({dot, y}, 1.1, 1.1, {c.mark, {}});
        d.box({x, foot - sugar - water, width, water}, {c.winter, c.text, 1.4}, 0);
        d.label({x - 30, foot + 6, width + 60, 20}, QString::fromStdString(ratio.printed), Qt::AlignCenter,
                SvgDrawing::Weight::Strong);
        d.label({x + width + 8, foot - sugar / 2 - 17, 96, 34},
                say::Guide::tr("sugar %1").arg(text::mass(syrup.sugar, reader.style)),
                Qt::AlignLeft | Qt::AlignVCenter);
        d.label({x + width + 8, foot - sugar - water / 2 - 17, 96, 34},
                say::Guide::tr("water %1").arg(text::volume(syrup.water, reader.style)),
                Qt::AlignLeft | Qt::AlignVCenter);
        x += 180;
    }
    d.label({20, 164, 520, 20}, say::Guide::tr("heights stand for weights"), Qt::AlignCenter,
            SvgDrawing::Weight::Quiet);
}

void drawFeeder(SvgDrawing& d, const text::GuideReader&) {
    const Colours& c = d.colours();
    const HiveInside hive{
        {110, 92, 190, 96}, {0.7, 0.6, 0.4, 0.3, 0.25, 0.25, 0.3, 0.4, 0.6, 0.7}, {150, 116, 110, 68}};
    drawHiveInside(d, hive);
    // The feeder stands between box and lid, so the lid drawn with the box is its floor.
    d.box({104, 78, 202, 14}, {c.wood, c.combEdge, 1.4}, 1);
    d.box({110, 30, 190, 50}, {c.wood, c.combEdge, 1.4}, 1);
    d.box({117, 34, 176, 46}, {c.card, c.combEdge});
    d.box({117, 52, 176, 28}, {c.open, c.openInk});
    d.box({190, 40, 30, 52}, {c.card, c.combEdge, 1.4});
    d.box({122, 49, 64, 5}, {c.wood, c.combEdge}, 2);
    d.box({224, 49, 64, 5}, {c.wood, c.combEdge}, 2);
    for (int bee = 0; bee < 4; ++bee) drawBee(d, {205.0 + (bee % 2 ? 6 : -6), 86.0 - 12 * bee}, 11, 250);
    d.box({104, 16, 202, 14}, {c.band, c.mark, 1.4}, 3);
    d.box({163, 190, 84, 6}, {c.wood, {}});
    d.box({198, 190, 14, 6}, {c.dark ? c.desk : c.text, {}}, 1);
    nameBeside(d, {296, 22}, {346, 22}, say::Guide::tr("lid on tight"));
    nameBeside(d, {270, 51}, {346, 58}, say::Guide::tr("syrup under a float"));
    nameBeside(d, {208, 62}, {346, 96}, say::Guide::tr("the bees come up inside"));
    nameBeside(d, {246, 144}, {346, 142}, say::Guide::tr("over the bees, not beside them"));
    nameBeside(d, {210, 193}, {346, 192}, say::Guide::tr("narrow entrance"));
}

void drawReach(SvgDrawing& d, const text::GuideReader&) {
    const HiveInside within{
        {40, 24, 190, 116}, {0.9, 0.9, 0.75, 0.5, 0.35, 0.3, 0.35, 0.5, 0.75, 0.9}, {74, 62, 122, 66}};
    const HiveInside beyond{{330, 24, 190, 116}, {0, 0, 0, 0, 0.05, 0.05, 0, 0, 0.9, 0.9}, {344, 48, 96, 74}};
    drawHiveInside(d, within);
    drawHiveInside(d, beyond);
    const auto slabs = slabsOf(beyond);
    d.line({slabs[6].left() - 2, 148 + floorHeight}, {slabs[7].right() + 2, 148 + floorHeight}, d.colours().shortWinter,
           3);
    d.label({30, 166, 210, 32}, say::Guide::tr("stores touch the bees"), Qt::AlignHCenter | Qt::AlignTop);
    d.label({310, 166, 230, 32}, say::Guide::tr("empty combs between: out of reach"), Qt::AlignHCenter | Qt::AlignTop);
}

void drawSnow(SvgDrawing& d, const text::GuideReader&) {
    const Colours& c = d.colours();
    constexpr double ground = 172;
    const QRectF body(120, 62, 150, 98);
    const Ink snow{c.dark ? c.quietText : c.card, c.winter, 1.6};
    drawGround(d, ground, 20, 370);
    drawHiveFront(d, {body, 2});
    const QRectF slot(body.center().x() - body.width() * 0.22, body.bottom() + 2, body.width() * 0.44, 6);
    for (double x = slot.left() + 4; x < slot.right(); x += 7)
        d.line({x, slot.top() - 1}, {x, slot.bottom() + 1}, c.mark, 1.6);
    d.shape(drift(24, 150, ground, 62), snow);
    QPainterPath right = QTransform(-1, 0, 0, 1, 390, 0).map(drift(24, 150, ground, 62));
    d.shape(right, snow);
    QPainterPath cap(QPointF(112, 48));
    cap.cubicTo(108, 24, 150, 18, 195, 20);
    cap.cubicTo(240, 18, 282, 24, 278, 48);
    cap.closeSubpath();
    d.shape(cap, snow);
    nameBeside(d, {240, 30}, {398, 30}, say::Guide::tr("snow on top may stay"));
    nameBeside(d, {320, 130}, {398, 100}, say::Guide::tr("so may snow around it"));
    nameBeside(d, {222, 165}, {398, 152}, say::Guide::tr("entrance free, mouse guard in front"));
}

} // namespace winterlarder::desk
