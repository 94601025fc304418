// SPDX-License-Identifier: GPL-3.0-or-later
// Combs, cells, seams and brood.
#include "guide/drawn_parts.h"
#include "guide/guide_drawings.h"
#include "stores/bees.h"
#include "text/contexts.h"
#include "text/guide/guide_numbers.h"

#include <array>
#include <cmath>
#include <numbers>

namespace winterlarder::desk {

namespace {

// A line from a place on a comb to what is said of it, which stands to the right.
void pointOut(SvgDrawing& d, QPointF place, double x, double y, const QString& words) {
    d.line(place, {x - 6, y}, d.colours().text, 1.2);
    d.oval(place, 2.6, 2.6, {d.colours().text, d.colours().card});
    d.label({x, y - 17, guideWidth - x - 4, 34}, words, Qt::AlignLeft | Qt::AlignVCenter);
}

QString kg(Mass mass, const text::GuideReader& reader) { return text::mass(mass, reader.style); }

} // namespace

void drawEighths(SvgDrawing& d, const text::GuideReader& reader) {
    constexpr double half = 0.5;
    const auto hive = text::exampleHive(reader);
    const QRectF face = drawComb(d, hive.format.outline, {1, half, 0, 0, 0}, {30, 20, 330, 152}, 7.5);
    const QColor& ink = d.colours().text;
    for (int column = 1; column < 4; ++column) {
        const double x = face.left() + face.width() * column / 4;
        d.line({x, face.top() + 2}, {x, face.bottom() - 2}, ink, 2, true);
    }
    d.line({face.left() + 2, face.center().y()}, {face.right() - 2, face.center().y()}, ink, 2, true);
    d.label({385, 30, 170, 40}, say::Guide::tr("four of eight fields are capped"), Qt::AlignLeft | Qt::AlignVCenter);
    d.label({385, 84, 170, 40}, say::Guide::tr("with both faces like this:"), Qt::AlignLeft | Qt::AlignBottom,
            SvgDrawing::Weight::Quiet);
    d.label({385, 126, 170, 20}, kg(text::capped(hive, half), reader), Qt::AlignLeft | Qt::AlignVCenter,
            SvgDrawing::Weight::Strong);
}

void drawPartFull(SvgDrawing& d, const text::GuideReader& reader) {
    const auto hive = text::exampleHive(reader);
    const std::array<std::pair<double, QString>, 3> shares{{{0.25, say::Guide::tr("a quarter: %1")},
                                                            {0.5, say::Guide::tr("half: %1")},
                                                            {0.75, say::Guide::tr("three quarters: %1")}}};
    double x = 34;
    for (const auto& [share, words] : shares) {
        drawComb(d, hive.format.outline, {1, share, 0, 0, 0}, {x, 14, 134, 82}, 4.4);
        d.label({x - 24, 108, 182, 22}, words.arg(kg(text::capped(hive, share), reader)), Qt::AlignCenter);
        x += 184;
    }
}

void drawCellKinds(SvgDrawing& d, const text::GuideReader&) {
    struct Kind {
        CellKind middle, around;
        QString name;
    };
    const std::array<Kind, 6> kinds{{{CellKind::Capped, CellKind::Capped, say::Guide::tr("capped honey")},
                                     {CellKind::Open, CellKind::Open, say::Guide::tr("open nectar")},
                                     {CellKind::BeeBread, CellKind::BeeBread, say::Guide::tr("bee bread")},
                                     {CellKind::SealedBrood, CellKind::SealedBrood, say::Guide::tr("sealed brood")},
                                     {CellKind::Grub, CellKind::Egg, say::Guide::tr("grub and eggs")},
                                     {CellKind::Empty, CellKind::Empty, say::Guide::tr("empty")}}};
    constexpr double radius = 16, middle = 48;
    const double across = radius * std::numbers::sqrt3;
    double x = 48;
    for (const Kind& kind : kinds) {
        for (const auto& [right, down] :
             {std::pair{-1.0, 0.0}, {1.0, 0.0}, {-0.5, -1.5}, {0.5, -1.5}, {-0.5, 1.5}, {0.5, 1.5}})
            drawCell(d, {x + right * across, middle + down * radius}, radius, kind.around);
        drawCell(d, {x, middle}, radius, kind.middle);
        d.label({x - 44, 94, 88, 34}, kind.name, Qt::AlignHCenter | Qt::AlignTop);
        x += 93;
    }
}

void drawZones(SvgDrawing& d, const text::GuideReader& reader) {
    const auto hive = text::exampleHive(reader);
    const QRectF face = drawComb(d, hive.format.outline, {1, 0.34, 0.12, 0.24, 0.1}, {30, 20, 330, 152}, 7.5);
    const auto at = [&](double x, double y) {
        return QPointF(face.left() + face.width() * x, face.top() + face.height() * y);
    };
    constexpr double x = 392;
    pointOut(d, at(0.9, 0.16), x, 26, say::Guide::tr("capped honey"));
    pointOut(d, at(0.86, 0.46), x, 62, say::Guide::tr("open nectar"));
    pointOut(d, at(0.78, 0.72), x, 98, say::Guide::tr("bee bread"));
    pointOut(d, at(0.55, 0.8), x, 134, say::Guide::tr("brood"));
    pointOut(d, at(0.95, 0.93), x, 170, say::Guide::tr("empty cells"));
}

void drawSeams(SvgDrawing& d, const text::GuideReader& reader) {
    const BoxFromAbove box{{30, 14, 290, 116}, 10, {0, 0, 0.5, 1, 1, 1, 1, 0.5, 0}, -1};
    drawBoxFromAbove(d, box);
    const double whole = 4 + 2 * 0.5;
    for (std::size_t gap = 0; gap < box.bees.size(); ++gap)
        if (box.bees[gap] > 0) {
            const QRectF below = gapOf(box, static_cast<int>(gap));
            d.label({below.center().x() - 13, 134, 26, 20},
                    box.bees[gap] < 1 ? QStringLiteral("\u00bd") : QStringLiteral("1"), Qt::AlignCenter,
                    SvgDrawing::Weight::Strong);
        }
    const auto hive = text::exampleHive(reader);
    d.label({350, 34, 200, 22}, say::Guide::tr("five seams"), Qt::AlignLeft | Qt::AlignVCenter,
            SvgDrawing::Weight::Strong);
    const double bees = 100 * std::round(whole * text::beesOfASeam(hive).count / 100);
    d.label({350, 60, 200, 60},
            say::Guide::tr("about %1 bees on combs of %2").arg(text::count(bees, reader.style), hive.name),
            Qt::AlignLeft | Qt::AlignTop, SvgDrawing::Weight::Quiet);
}

void drawBrood(SvgDrawing& d, const text::GuideReader& reader) {
    const auto hive = text::exampleHive(reader);
    const QRectF face = drawComb(d, hive.format.outline, {1, 0.4, 0.08, 0.1, 0.07}, {30, 20, 330, 145}, 7.5);
    const double palm = face.width() * 100 / std::max(hive.format.outline.top, hive.format.outline.bottom).value();
    const QRectF square(face.center().x() - palm / 2,
                        std::min(face.bottom() - palm - 2, face.top() + face.height() * 0.72 - palm / 2), palm, palm);
    d.box(square, {{}, d.colours().text, 2, true}, 4);
    const bool metric = reader.style.numbers.system == UnitSystem::Metric;
    const QString length = QString::fromStdString(format(millimetres(100), reader.style.numbers, metric ? 0 : 1));
    d.line({square.right(), square.center().y()}, {386, 80}, d.colours().text, 1.2);
    d.label({392, 46, 164, 34}, say::Guide::tr("a palm, %1 by %1").arg(length), Qt::AlignLeft | Qt::AlignVCenter,
            SvgDrawing::Weight::Strong);
    d.label({392, 82, 164, 50},
            say::Guide::tr("%1 cells of one face").arg(text::count(stores::cellsPerSquareDecimetre, reader.style)),
            Qt::AlignLeft | Qt::AlignTop, SvgDrawing::Weight::Quiet);
}

} // namespace winterlarder::desk
