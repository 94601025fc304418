// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_shape.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace winterlarder::desk {

namespace {

constexpr int steps = 64;

// Where along x a zone is drawn from: even steps, and the corners of the outline.
std::vector<double> evenSteps(const CombLevels& levels) {
    std::vector<double> xs;
    for (int i = 0; i <= steps; ++i) xs.push_back(-1 + 2.0 * i / steps);
    for (const double y : {0.0, 1.0})
        for (const double side : {-1.0, 1.0}) xs.push_back(side * levels.halfWidthAt(y));
    std::sort(xs.begin(), xs.end());
    return xs;
}

// Close steps where an ellipse turns round.
std::vector<double> roundSteps(double reach) {
    std::vector<double> xs;
    for (int i = 0; i <= steps; ++i) xs.push_back(-reach * std::cos(M_PI * i / steps));
    return xs;
}

template <class Top, class Bottom>
QPainterPath between(const std::vector<double>& xs, const Top& top, const Bottom& bottom, const QRectF& into) {
    std::vector<QPointF> upper, lower;
    for (const double x : xs) {
        if (std::abs(x) > 1) continue;
        const double from = top(x), to = bottom(x);
        if (to < from) continue;
        upper.push_back(placeOf({x, from}, into));
        lower.push_back(placeOf({x, to}, into));
    }
    QPainterPath path;
    if (upper.size() < 2) return path;
    path.moveTo(upper.front());
    for (std::size_t i = 1; i < upper.size(); ++i) path.lineTo(upper[i]);
    for (auto point = lower.rbegin(); point != lower.rend(); ++point) path.lineTo(*point);
    path.closeSubpath();
    return path;
}

QPainterPath outlineOf(const CombLevels& levels, const QRectF& into) {
    const double top = levels.halfWidthAt(0), bottom = levels.halfWidthAt(1);
    QPainterPath path;
    path.moveTo(placeOf({-top, 0}, into));
    path.lineTo(placeOf({top, 0}, into));
    path.lineTo(placeOf({bottom, 1}, into));
    path.lineTo(placeOf({-bottom, 1}, into));
    path.closeSubpath();
    return path;
}

double nestHalfHeight(const CombLevels& levels, double reach, double x) {
    const double across = x / levels.nestWidening();
    return std::sqrt(std::max(0.0, reach * reach - across * across));
}

QPainterPath nest(const CombLevels& levels, CombEdge edge, const QRectF& into) {
    const double reach = levels.nestReach(edge), middle = levels.nestMiddle().y;
    if (reach <= 0) return {};
    const auto top = [&](double x) {
        return std::max(
            {levels.column(x).first, levels.archAt(CombEdge::Open, x), middle - nestHalfHeight(levels, reach, x)});
    };
    const auto bottom = [&](double x) {
        return std::min(levels.column(x).second, middle + nestHalfHeight(levels, reach, x));
    };
    auto xs = roundSteps(reach * levels.nestWidening());
    for (const double x : evenSteps(levels))
        if (std::abs(x) < reach * levels.nestWidening()) xs.push_back(x);
    std::sort(xs.begin(), xs.end());
    return between(xs, top, bottom, into);
}

} // namespace

QPointF placeOf(CombPoint p, const QRectF& into) {
    return {into.left() + (p.x + 1) / 2 * into.width(), into.top() + p.y * into.height()};
}

CombPoint combPointAt(QPointF place, const QRectF& into) {
    return {2 * (place.x() - into.left()) / into.width() - 1, (place.y() - into.top()) / into.height()};
}

CombShape shapeOf(const CombLevels& levels, const QRectF& into) {
    const auto xs = evenSteps(levels);
    const auto from = [&](double x) { return levels.column(x).first; };
    const auto to = [&](double x) { return levels.column(x).second; };
    const auto arch = [&](CombEdge edge) {
        return [&levels, edge](double x) {
            const auto column = levels.column(x);
            return std::clamp(levels.archAt(edge, x), column.first, column.second);
        };
    };
    CombShape shape;
    shape.full = outlineOf(levels, into);
    shape.comb = between(xs, from, to, into);
    shape.capped = between(xs, from, arch(CombEdge::Capped), into);
    shape.open = between(xs, arch(CombEdge::Capped), arch(CombEdge::Open), into);
    shape.brood = nest(levels, CombEdge::Brood, into);
    if (levels.nestReach(CombEdge::BeeBread) > levels.nestReach(CombEdge::Brood)) {
        shape.beeBread = nest(levels, CombEdge::BeeBread, into);
        shape.beeBread.addPath(shape.brood);
        shape.beeBread.setFillRule(Qt::OddEvenFill);
    }
    return shape;
}

CombShape shapeOf(const hive::Outline& outline, const CombFilling& filling, const QRectF& into) {
    return shapeOf(CombLevels(outline, filling), into);
}

QPainterPath edgeLine(const CombLevels& levels, CombEdge edge, const QRectF& into) {
    if (edge == CombEdge::Brood || edge == CombEdge::BeeBread) return nest(levels, edge, into);
    QPainterPath line;
    for (const double x : evenSteps(levels)) {
        const auto [from, to] = levels.column(x);
        if (to <= from) continue;
        const double y = edge == CombEdge::Built ? to : std::clamp(levels.archAt(edge, x), from, to);
        const auto point = placeOf({x, y}, into);
        if (line.isEmpty()) line.moveTo(point);
        else line.lineTo(point);
    }
    return line;
}

} // namespace winterlarder::desk
