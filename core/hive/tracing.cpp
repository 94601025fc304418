// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/tracing.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace winterlarder::hive {

namespace {

constexpr int pieces = 16;
constexpr double lineDistance = 0.5; // mm

using Interval = std::pair<double, double>;
using Intervals = std::vector<Interval>; // in order, apart

PlanePoint between(PlanePoint a, PlanePoint b, double from, double to, double at) {
    if (to - from < 1e-12) return a;
    const double share = (at - from) / (to - from);
    return {std::lerp(a.x, b.x, share), std::lerp(a.y, b.y, share)};
}

double knotAfter(double knot, PlanePoint a, PlanePoint b) { return knot + std::sqrt(std::hypot(b.x - a.x, b.y - a.y)); }

// The piece from b to c by the pyramid of Barry and Goldman.
PlanePoint onPiece(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d, double share) {
    const double t0 = 0, t1 = knotAfter(t0, a, b), t2 = knotAfter(t1, b, c), t3 = knotAfter(t2, c, d);
    const double t = std::lerp(t1, t2, share);
    const auto a1 = between(a, b, t0, t1, t), a2 = between(b, c, t1, t2, t), a3 = between(c, d, t2, t3, t);
    return between(between(a1, a2, t0, t2, t), between(a2, a3, t1, t3, t), t1, t2, t);
}

// Where a horizontal line lies inside a closed polygon (even-odd).
Intervals inside(const std::vector<PlanePoint>& polygon, double y) {
    std::vector<double> crossings;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const auto& a = polygon[i];
        const auto& b = polygon[(i + 1) % polygon.size()];
        if ((a.y <= y) == (b.y <= y)) continue;
        crossings.push_back(a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x));
    }
    std::sort(crossings.begin(), crossings.end());
    Intervals found;
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) found.emplace_back(crossings[i], crossings[i + 1]);
    return found;
}

Intervals both(const Intervals& one, const Intervals& other) {
    Intervals common;
    for (const auto& a : one)
        for (const auto& b : other)
            if (std::min(a.second, b.second) > std::max(a.first, b.first))
                common.emplace_back(std::max(a.first, b.first), std::min(a.second, b.second));
    std::sort(common.begin(), common.end());
    return common;
}

Intervals either(Intervals one, const Intervals& other) {
    one.insert(one.end(), other.begin(), other.end());
    std::sort(one.begin(), one.end());
    Intervals joined;
    for (const auto& each : one) {
        if (!joined.empty() && each.first <= joined.back().second)
            joined.back().second = std::max(joined.back().second, each.second);
        else joined.push_back(each);
    }
    return joined;
}

double lengthOf(const Intervals& intervals) {
    double sum = 0;
    for (const auto& each : intervals) sum += each.second - each.first;
    return sum;
}

struct Outlined {
    TracedKind kind;
    std::vector<PlanePoint> polygon;
};

Intervals ofKind(const std::vector<Outlined>& all, TracedKind kind, double y) {
    Intervals found;
    for (const auto& each : all)
        if (each.kind == kind) found = either(std::move(found), inside(each.polygon, y));
    return found;
}

} // namespace

std::vector<PlanePoint> smoothClosed(const std::vector<PlanePoint>& points) {
    std::vector<PlanePoint> apart;
    for (const auto& point : points)
        if (apart.empty() || !(point == apart.back())) apart.push_back(point);
    while (apart.size() > 1 && apart.front() == apart.back()) apart.pop_back();
    const auto count = apart.size();
    if (count < 3) return apart;
    std::vector<PlanePoint> curve;
    curve.reserve(count * pieces);
    for (std::size_t i = 0; i < count; ++i)
        for (int piece = 0; piece < pieces; ++piece)
            curve.push_back(onPiece(apart[(i + count - 1) % count], apart[i], apart[(i + 1) % count],
                                    apart[(i + 2) % count], static_cast<double>(piece) / pieces));
    return curve;
}

TracedShares sharesOf(const Outline& outline, const std::vector<Tracing>& tracings) {
    std::vector<Outlined> all;
    for (const auto& tracing : tracings)
        if (tracing.points.size() >= 3) all.push_back({tracing.kind, smoothClosed(tracing.points)});
    const bool combTraced =
        std::any_of(all.begin(), all.end(), [](const Outlined& each) { return each.kind == TracedKind::Comb; });
    const auto corners = cornersOf(outline);
    const std::vector<PlanePoint> whole(corners.begin(), corners.end());

    constexpr TracedKind firstToLast[] = {TracedKind::Brood, TracedKind::BeeBread, TracedKind::Capped,
                                          TracedKind::Open};
    double areas[4] = {}, comb = 0, full = 0;
    const auto lines = std::max(1, static_cast<int>(std::ceil(outline.height.value() / lineDistance)));
    for (int line = 0; line < lines; ++line) {
        const double y = (line + 0.5) * outline.height.value() / lines;
        const auto allowed = inside(whole, y);
        const auto built = combTraced ? both(allowed, ofKind(all, TracedKind::Comb, y)) : allowed;
        full += lengthOf(allowed);
        comb += lengthOf(built);
        Intervals taken;
        double before = 0;
        for (std::size_t i = 0; i < 4; ++i) {
            taken = either(std::move(taken), both(built, ofKind(all, firstToLast[i], y)));
            areas[i] += lengthOf(taken) - before;
            before = lengthOf(taken);
        }
    }
    TracedShares shares;
    if (full <= 0 || comb <= 0) return {0, 0, 0, 0, 0};
    shares.built = comb / full;
    shares.brood = areas[0] / comb;
    shares.beeBread = areas[1] / comb;
    shares.capped = areas[2] / comb;
    shares.open = areas[3] / comb;
    return shares;
}

} // namespace winterlarder::hive
