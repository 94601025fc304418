// SPDX-License-Identifier: GPL-3.0-or-later
// The year, lifting a hive, and opening one.
#include "guide/drawn_parts.h"
#include "guide/guide_drawings.h"
#include "text/contexts.h"
#include "text/guide/guide_numbers.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace winterlarder::desk {

namespace {

struct Moment {
    QPointF at;
    QString what, when;
};

QPainterPath storesThroughTheYear(const std::vector<Moment>& moments) {
    QPainterPath curve(moments.front().at);
    for (std::size_t next = 1; next < moments.size(); ++next) {
        const QPointF from = moments[next - 1].at, to = moments[next].at;
        curve.cubicTo(from + QPointF((to.x() - from.x()) * 0.5, 0), to - QPointF((to.x() - from.x()) * 0.5, 0), to);
    }
    return curve;
}

// A hive lifted at one side by a hook, the reading beside the scale.
void drawLifted(SvgDrawing& d, double left, bool atLeft, const QString& reading) {
    constexpr double width = 110, ground = 194, tilt = 4;
    const QRectF body(left, ground - floorHeight - 78, width, 78);
    const double side = atLeft ? left - 3 : left + width + 3, other = atLeft ? left + width + 3 : left - 3;
    d.turn({other, ground}, atLeft ? tilt : -tilt);
    drawHiveFront(d, {body, 2});
    d.turn({}, 0);
    const double lifted = ground - (width + 6) * std::sin(tilt * 3.14159 / 180);
    const QRectF face = drawLuggageScale(d, {side, lifted - 2}, 130);
    d.arrow({side, face.top() - 16}, {side, face.top() - 36}, d.colours().accent);
    const QRectF room(atLeft ? face.right() + 8 : face.left() - 98, face.top() + 2, 90, 20);
    d.label(room, reading, atLeft ? Qt::AlignLeft | Qt::AlignVCenter : Qt::AlignRight | Qt::AlignVCenter,
            SvgDrawing::Weight::Strong);
    drawGround(d, ground, left - 26, left + width + 26);
}

} // namespace

void drawYear(SvgDrawing& d, const text::GuideReader&) {
    const Colours& c = d.colours();
    constexpr double foot = 148;
    const std::vector<Moment> moments{{{30, 74}, say::Guide::tr("every comb"), say::Guide::tr("honey off")},
                                      {{140, 58}, say::Guide::tr("weigh"), say::Guide::tr("last feed down")},
                                      {{285, 80}, say::Guide::tr("heft"), say::Guide::tr("cold, no brood")},
                                      {{400, 104}, say::Guide::tr("heft or weigh"), say::Guide::tr("brood again")},
                                      {{520, 136}, say::Guide::tr("heft"), say::Guide::tr("first nectar")}};
    const QPainterPath curve = storesThroughTheYear(moments);
    QPainterPath under = curve;
    under.lineTo(moments.back().at.x(), foot);
    under.lineTo(moments.front().at.x(), foot);
    under.closeSubpath();
    d.shape(under, {c.capped, {}, 0, false, 0.75});
    d.shape(curve, {{}, c.cappedInk, 2.2});
    d.line({20, foot}, {540, foot}, c.mark, 1.4);
    for (const Moment& each : moments) {
        const double x = std::clamp(each.at.x(), 52.0, guideWidth - 52);
        d.line({each.at.x(), 42}, {each.at.x(), foot + 4}, c.text, 1, true);
        d.oval(each.at, 5, 5, {c.card, c.text, 2});
        d.label({x - 52, 2, 104, 34}, each.what, Qt::AlignHCenter | Qt::AlignBottom, SvgDrawing::Weight::Strong);
        d.label({x - 52, foot + 6, 104, 34}, each.when, Qt::AlignHCenter | Qt::AlignTop, SvgDrawing::Weight::Quiet);
    }
}

void drawHeft(SvgDrawing& d, const text::GuideReader& reader) {
    const Colours& c = d.colours();
    constexpr double ground = 186, stand = 146, tilt = 4;
    const QRectF body(100, stand - floorHeight - 84, 120, 84);
    drawGround(d, ground, 20, 250);
    for (const double left : {body.left() + 16, body.right() - 16})
        d.box({left - 13, stand, 26, ground - stand}, {c.band, c.mark, 1.4}, 1);
    d.turn({body.right() + 3, stand}, tilt);
    drawHiveFront(d, {body, 2});
    d.turn({}, 0);
    drawHand(d, {body.left() - 6, stand - 8}, false);
    d.arrow({56, 116}, {56, 86}, c.accent);
    const text::GuideReader& r = reader;
    const DecisionConstants& k = r.reference.decisions;
    const std::array<std::pair<QString, double>, 3> words{{{say::Guide::tr("light"), k.heftLight},
                                                           {say::Guide::tr("fair"), k.heftFair},
                                                           {say::Guide::tr("heavy"), k.heftHeavy}}};
    constexpr double left = 340, whole = 116, top = 52, step = 36;
    d.label({left + whole - 100, 8, 200, 34}, say::Guide::tr("what is wanted that day"),
            Qt::AlignHCenter | Qt::AlignBottom, SvgDrawing::Weight::Quiet);
    d.line({left + whole, 44}, {left + whole, top + 3 * step}, c.text, 1.4, true);
    for (std::size_t each = 0; each < words.size(); ++each) {
        const double y = top + step * static_cast<double>(each);
        d.label({264, y, left - 272, 22}, words[each].first, Qt::AlignRight | Qt::AlignVCenter);
        d.box({left, y + 2, whole * words[each].second, 18}, {c.stores, c.cappedInk}, 2);
        d.label({left + whole * std::max(words[each].second, 1.0) + 6, y, 44, 22},
                say::Guide::tr("%1 %", "a share").arg(text::number(100 * words[each].second, 0, r.style)),
                Qt::AlignLeft | Qt::AlignVCenter);
    }
}

void drawBothSides(SvgDrawing& d, const text::GuideReader& reader) {
    const text::BothSides lift = text::exampleLift();
    drawLifted(d, 50, true, text::mass(lift.left, reader.style));
    drawLifted(d, 250, false, text::mass(lift.right, reader.style));
    d.label({190, 110, 30, 30}, QStringLiteral("+"), Qt::AlignCenter, SvgDrawing::Weight::Strong);
    d.arrow({402, 126}, {424, 126}, d.colours().text);
    d.label({430, 104, 126, 20}, text::mass(lift.whole, reader.style), Qt::AlignLeft | Qt::AlignVCenter,
            SvgDrawing::Weight::Strong);
    d.label({430, 124, 126, 60}, say::Guide::tr("the whole hive"), Qt::AlignLeft | Qt::AlignTop,
            SvgDrawing::Weight::Quiet);
}

void drawThermometer(SvgDrawing& d, const text::GuideReader& reader) {
    const Colours& c = d.colours();
    struct Range {
        double to;
        QColor fill;
        QString may;
    };
    constexpr double warmest = 20;
    const auto degrees = [](const char* written) { return QString::fromLatin1(written).toDouble(); };
    const std::array<Range, 4> ranges{{{degrees(text::lidFrom), c.band, say::Guide::tr("keep it closed")},
                                       {degrees(text::briefLookFrom), c.open, say::Guide::tr("the lid alone")},
                                       {degrees(text::fullLookFrom), c.stores, say::Guide::tr("half a minute")},
                                       {warmest, c.beeBread, say::Guide::tr("a full look")}}};
    constexpr double left = 20, right = 540, y = 34, height = 22;
    const auto place = [](double at) { return left + (right - left) * at / warmest; };
    double from = 0;
    for (const Range& each : ranges) {
        const double begin = place(from), end = place(each.to);
        d.box({begin, y, end - begin, height}, {each.fill, c.text, 1.2});
        d.label({begin + 2, y + height + 6, end - begin - 4, 52}, each.may, Qt::AlignHCenter | Qt::AlignTop);
        if (each.to < warmest)
            d.label({end - 40, 6, 80, 24}, text::quantity(QStringLiteral("%1 \u00b0C").arg(each.to), reader.style),
                    Qt::AlignHCenter | Qt::AlignBottom, SvgDrawing::Weight::Strong);
        from = each.to;
    }
}

void drawOrder(SvgDrawing& d, const text::GuideReader&) {
    const Colours& c = d.colours();
    const BoxFromAbove box{{150, 14, 230, 110}, 10, {0, 0, 0.5, 1, 1, 1, 1, 0.5, 0}, 0};
    drawBoxFromAbove(d, box);
    const QRectF first = barOf(box, 0);
    const QRectF aside(84, first.top(), first.width(), first.height());
    d.box(aside, {c.wood, c.combEdge, 1.4}, 1.5);
    d.box(first, {{}, c.mark, 1.2, true}, 1.5);
    d.arrow({first.left() - 16, first.center().y()}, {aside.right() + 8, first.center().y()}, c.accent);
    d.label({60, 134, 78, 32}, say::Guide::tr("1. aside, in the shade"), Qt::AlignHCenter | Qt::AlignTop);
    const QRectF second = barOf(box, 1), third = barOf(box, 2);
    d.arrow({second.center().x() + 6, 133}, {first.center().x() + 2, 133}, c.accent);
    d.arrow({third.center().x() + 6, 133}, {second.center().x() + 10, 133}, c.accent);
    d.label({152, 144, 150, 24}, say::Guide::tr("2. then one by one"), Qt::AlignLeft | Qt::AlignTop);
    d.label({400, 40, 150, 60}, say::Guide::tr("the nest last: eggs are enough, leave the queen be"),
            Qt::AlignLeft | Qt::AlignVCenter, SvgDrawing::Weight::Quiet);
    d.arrow({396, 70}, {344, 70}, c.accent);
}

} // namespace winterlarder::desk
