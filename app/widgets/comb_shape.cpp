// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/comb_shape.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <vector>

namespace winterlarder::desk {

namespace {

// The face in units of its own: x from -1 to 1 across the wider side, y from 0 at the bar to 1 at the lower edge.
struct Point {
    double x, y;
};
using Field = std::function<double(Point)>;

constexpr int columns = 96;
constexpr int rows = 72;
constexpr double archSag = 0.16;  // how much lower the honey arch comes at the sides
constexpr double roundEdge = 0.35; // how much shallower a part-built comb is at the sides

struct Face {
    double halfTop, halfBottom; // of the wider side
    double half(double y) const { return std::lerp(halfTop, halfBottom, y); }
    bool has(Point p) const { return std::abs(p.x) <= half(p.y); }
};

std::vector<Point> pointsOf(const Face& face) {
    std::vector<Point> points;
    for (int row = 0; row < rows; ++row)
        for (int column = 0; column < columns; ++column) {
            const Point p{-1 + (column + 0.5) * 2 / columns, (row + 0.5) / rows};
            if (face.has(p)) points.push_back(p);
        }
    return points;
}

// Takes the `count` points with the lowest field out of `points`; answers the level that separates them.
double takeLowest(std::vector<Point>& points, const Field& field, double count) {
    const auto wanted = std::min(points.size(), static_cast<std::size_t>(std::max(0.0, std::round(count))));
    if (wanted == 0) return -std::numeric_limits<double>::infinity();
    std::sort(points.begin(), points.end(), [&field](Point a, Point b) { return field(a) < field(b); });
    const double below = field(points[wanted - 1]);
    const double above = wanted < points.size() ? field(points[wanted]) : below + 1;
    points.erase(points.begin(), points.begin() + static_cast<std::ptrdiff_t>(wanted));
    return wanted < points.size() + wanted ? (below + above) / 2 : below + 1;
}

double archField(Point p) {
    return p.y - archSag * p.x * p.x;
}

double edgeField(Point p) {
    return p.y + roundEdge * p.x * p.x;
}

QPointF place(Point p, const QRectF& into) {
    return {into.left() + (p.x + 1) / 2 * into.width(), into.top() + p.y * into.height()};
}

// Everything above the curve y = level + bend x^2.
QPainterPath above(double level, double bend, const QRectF& into) {
    QPainterPath path;
    if (!std::isfinite(level)) return path;
    path.moveTo(place({-1.1, -1}, into));
    for (int i = 0; i <= 48; ++i) {
        const double x = -1.1 + 2.2 * i / 48;
        path.lineTo(place({x, level + bend * x * x}, into));
    }
    path.lineTo(place({1.1, -1}, into));
    path.closeSubpath();
    return path;
}

QPainterPath trapezoid(const Face& face, const QRectF& into) {
    QPainterPath path;
    path.moveTo(place({-face.halfTop, 0}, into));
    path.lineTo(place({face.halfTop, 0}, into));
    path.lineTo(place({face.halfBottom, 1}, into));
    path.lineTo(place({-face.halfBottom, 1}, into));
    path.closeSubpath();
    return path;
}

struct Nest {
    Point middle;
    double width; // of the ellipse against its height
    double field(Point p) const { return std::hypot((p.x - middle.x) / width, p.y - middle.y); }
    QPainterPath within(double level, const QRectF& into) const {
        QPainterPath path;
        if (!std::isfinite(level)) return path;
        const double across = level * width * into.width() / 2;
        path.addEllipse(place(middle, into), across, level * into.height());
        return path;
    }
};

Nest nestBelow(const std::vector<Point>& points, const Face& face) {
    double top = 1, bottom = 0;
    for (const auto& p : points) {
        if (std::abs(p.x) > 0.05) continue;
        top = std::min(top, p.y);
        bottom = std::max(bottom, p.y);
    }
    const double middle = std::lerp(top, std::max(top, bottom), 0.54);
    const double deep = std::max(0.2, bottom - top) / 2;
    return {{0, middle}, std::clamp(face.half(middle) * 0.8 / deep, 0.9, 2.2)};
}

} // namespace

CombShape shapeOf(const hive::Outline& outline, const CombFilling& filling, const QRectF& into) {
    const double wide = std::max({outline.top.value(), outline.bottom.value(), 1.0});
    const Face face{outline.top.value() / wide, outline.bottom.value() / wide};
    auto points = pointsOf(face);
    const double built = std::clamp(filling.built, 0.0, 1.0);

    CombShape shape;
    shape.full = trapezoid(face, into);
    shape.comb = shape.full;
    if (built < 0.999) {
        auto bare = points;
        const double level = takeLowest(bare, edgeField, built * static_cast<double>(points.size()));
        std::erase_if(points, [level](Point p) { return edgeField(p) >= level; });
        shape.comb = shape.full.intersected(above(level, -roundEdge, into));
    }
    const auto all = static_cast<double>(points.size());
    const double cappedLevel = takeLowest(points, archField, filling.capped * all);
    const double openLevel = std::max(cappedLevel, takeLowest(points, archField, filling.open * all));
    const auto nest = nestBelow(points, face);
    const auto nestField = [&nest](Point p) { return nest.field(p); };
    const double broodLevel = takeLowest(points, nestField, filling.brood * all);
    const double breadLevel = filling.beeBread > 0 ? takeLowest(points, nestField, filling.beeBread * all) : broodLevel;

    const auto stores = above(openLevel, archSag, into);
    shape.capped = above(cappedLevel, archSag, into).intersected(shape.comb);
    shape.open = stores.subtracted(above(cappedLevel, archSag, into)).intersected(shape.comb);
    const auto broodNest = nest.within(broodLevel, into);
    const auto below = shape.comb.subtracted(stores);
    shape.brood = broodNest.intersected(below);
    shape.beeBread = nest.within(breadLevel, into).subtracted(broodNest).intersected(below);
    return shape;
}

} // namespace winterlarder::desk
