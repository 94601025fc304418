// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/comb_shape.h"
#include "photograph/photograph.h"

#include <QPainter>

#include <cmath>
#include <random>

//! Combs of known areas, painted flat and seen through a camera at known angles.
namespace winterlarder::desk::photographed {

struct Comb {
    const char* name;
    hive::Outline outline;
    CombFilling filling;
};

inline const std::vector<Comb>& combs() {
    static const std::vector<Comb> all{
        {"honey", {millimetres(428), millimetres(428), millimetres(205)}, {1, 0.72, 0.13, 0, 0}},
        {"nest", {millimetres(428), millimetres(428), millimetres(205)}, {1, 0.24, 0.08, 0.38, 0.1}},
        {"sloping", {millimetres(440), millimetres(174), millimetres(230)}, {1, 0.35, 0.1, 0.25, 0.08}},
        {"part built", {millimetres(440), millimetres(174), millimetres(230)}, {0.75, 0.5, 0.15, 0, 0}},
    };
    return all;
}

//! A camera 700 mm before the middle of the comb, 2600 px focal length, 3000 x 2250 px: the view of a phone at arm's length.
struct View {
    double turned = 0, tilted = 0; //!< degrees about the upright and the level axis
    QPointF operator()(hive::PlanePoint p) const {
        const double k = M_PI / 180, turn = turned * k, tilt = tilted * k;
        const double x = p.x * std::cos(turn), z = p.x * std::sin(turn), below = p.y - 105;
        const double y = below * std::cos(tilt) - z * std::sin(tilt),
                     away = 700 + below * std::sin(tilt) + z * std::cos(tilt);
        return {1500 + 2600 * x / away, 1125 + 2600 * y / away};
    }
};

inline const std::vector<View>& views() {
    static const std::vector<View> all{{0, 0}, {15, 0}, {0, -20}, {30, 0}, {-30, 10}, {0, 30}, {20, 20}, {-25, -15}};
    return all;
}

inline const QColor cappedColour(220, 160, 60), openColour(250, 225, 140), broodColour(150, 90, 70),
    breadColour(120, 140, 60), emptyColour(245, 240, 225), woodColour(90, 60, 30);

inline QImage photograph(const Comb& comb, const View& view) {
    const double wide = std::max(comb.outline.top.value(), comb.outline.bottom.value()),
                 tall = comb.outline.height.value();
    const QRectF face(-wide / 2, 0, wide, tall);
    const auto shape = shapeOf(comb.outline, comb.filling, face);
    const auto at = [&](double x, double y) { return view({x, y}); };
    QTransform camera;
    const QPolygonF flat(QVector<QPointF>{{-wide / 2, 0}, {wide / 2, 0}, {wide / 2, tall}, {-wide / 2, tall}});
    const QPolygonF seen(QVector<QPointF>{at(-wide / 2, 0), at(wide / 2, 0), at(wide / 2, tall), at(-wide / 2, tall)});
    QTransform::quadToQuad(flat, seen, camera);
    QImage picture(3000, 2250, QImage::Format_RGB32);
    picture.fill(QColor(70, 90, 70));
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto paint = [&](const QPainterPath& path, const QColor& colour) {
        painter.fillPath(camera.map(path), colour);
    };
    paint(shape.full, woodColour);
    paint(shape.comb, emptyColour);
    paint(shape.beeBread, breadColour);
    paint(shape.brood, broodColour);
    paint(shape.open, openColour);
    paint(shape.capped, cappedColour);
    return picture;
}

inline QPointF shaken(QPointF at, double most, std::mt19937& hand) {
    std::uniform_real_distribution<double> off(-most, most);
    return at + QPointF(off(hand), off(hand));
}

//! Where a hand would click: along the arch and round outside the frame, round the nest.
inline std::vector<hive::Tracing> traced(const Comb& comb, double off, std::mt19937& hand) {
    const CombLevels levels(comb.outline, comb.filling);
    const double half = std::max(comb.outline.top.value(), comb.outline.bottom.value()) / 2,
                 tall = comb.outline.height.value();
    const auto place = [&](double x, double y) {
        const auto moved = shaken({x * half, y * tall}, off, hand);
        return hive::PlanePoint{moved.x(), moved.y()};
    };
    std::vector<hive::Tracing> tracings;
    const auto below = [&](hive::TracedKind kind, const auto& yAt) {
        hive::Tracing tracing{kind, {}};
        for (const double x : {-1.08, 0.0, 1.08}) tracing.points.push_back(place(x, -0.12));
        for (const double x : {1.08, 0.75, 0.4, 0.0, -0.4, -0.75, -1.08}) tracing.points.push_back(place(x, yAt(x)));
        tracings.push_back(tracing);
    };
    const auto nest = [&](hive::TracedKind kind, CombEdge edge) {
        hive::Tracing tracing{kind, {}};
        for (int i = 0; i < 12; ++i) {
            const double angle = M_PI * i / 6, reach = levels.nestReach(edge);
            tracing.points.push_back(place(reach * levels.nestWidening() * std::cos(angle),
                                           levels.nestMiddle().y + reach * std::sin(angle)));
        }
        tracings.push_back(tracing);
    };
    if (comb.filling.built < 1) below(hive::TracedKind::Comb, [&](double x) { return levels.builtAt(x); });
    if (comb.filling.open > 0)
        below(hive::TracedKind::Open, [&](double x) { return levels.archAt(CombEdge::Open, x); });
    if (comb.filling.capped > 0)
        below(hive::TracedKind::Capped, [&](double x) { return levels.archAt(CombEdge::Capped, x); });
    if (comb.filling.beeBread > 0) nest(hive::TracedKind::BeeBread, CombEdge::BeeBread);
    if (comb.filling.brood > 0) nest(hive::TracedKind::Brood, CombEdge::Brood);
    return tracings;
}

//! Shares of tracings that were clicked where the marks show the comb to be, not where it is: each point goes through the camera and
//! back through the marks.
inline hive::TracedShares seenThrough(const hive::Outline& outline, const PhotographedFace& face, const View& view) {
    const auto plane = planeOf(outline, face);
    auto tracings = face.tracings;
    for (auto& tracing : tracings)
        for (auto& point : tracing.points) {
            const auto seen = view(point);
            point = (*plane)({seen.x(), seen.y()});
        }
    return hive::sharesOf(outline, tracings);
}

//! Shares by counting colours inside the outline of a rectified picture.
inline hive::TracedShares colouredShares(const Rectified& rectified) {
    const auto& outline = rectified.outline;
    double capped = 0, open = 0, brood = 0, bread = 0, comb = 0, all = 0;
    const auto near = [](QRgb seen, const QColor& colour) {
        return std::abs(qRed(seen) - colour.red()) + std::abs(qGreen(seen) - colour.green()) +
               std::abs(qBlue(seen) - colour.blue());
    };
    for (int y = 0; y < rectified.picture.height(); ++y)
        for (int x = 0; x < rectified.picture.width(); ++x) {
            const auto at = rectified.millimetres({x + 0.5, y + 0.5});
            const double half =
                std::lerp(outline.top.value(), outline.bottom.value(), at.y / outline.height.value()) / 2;
            if (at.y < 0 || at.y > outline.height.value() || std::abs(at.x) > half) continue;
            ++all;
            const QRgb seen = rectified.picture.pixel(x, y);
            double* counts[] = {&capped, &open, &brood, &bread, nullptr, nullptr};
            const QColor* colours[] = {&cappedColour, &openColour,  &broodColour,
                                       &breadColour,  &emptyColour, &woodColour};
            int best = 0;
            for (int i = 1; i < 6; ++i)
                if (near(seen, *colours[i]) < near(seen, *colours[best])) best = i;
            if (best != 5) ++comb;
            if (counts[best]) ++*counts[best];
        }
    return {comb / all, capped / comb, open / comb, brood / comb, bread / comb};
}

} // namespace winterlarder::desk::photographed
