// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/photograph.h"

#include "support/require.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::hive {

namespace {

using Matrix = std::array<double, 9>;

Matrix product(const Matrix& a, const Matrix& b) {
    Matrix c{};
    for (std::size_t row = 0; row < 3; ++row)
        for (std::size_t column = 0; column < 3; ++column)
            for (std::size_t k = 0; k < 3; ++k) c[3 * row + column] += a[3 * row + k] * b[3 * k + column];
    return c;
}

double determinant(const Matrix& m) {
    return m[0] * (m[4] * m[8] - m[5] * m[7]) - m[1] * (m[3] * m[8] - m[5] * m[6]) + m[2] * (m[3] * m[7] - m[4] * m[6]);
}

// The inverse but for a factor, which a projective map does not have.
Matrix adjugate(const Matrix& m) {
    return {m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
            m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
            m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]};
}

double cross(PlanePoint a, PlanePoint b, PlanePoint c) { return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x); }

double spreadOf(const std::array<PlanePoint, 4>& points) {
    double widest = 0;
    for (const auto& a : points)
        for (const auto& b : points) widest = std::max(widest, std::hypot(a.x - b.x, a.y - b.y));
    return widest;
}

bool inGeneralPosition(const std::array<PlanePoint, 4>& p) {
    const double wide = spreadOf(p);
    const double least = 1e-6 * wide * wide;
    return std::isfinite(wide) && wide > 0 && std::abs(cross(p[0], p[1], p[2])) > least &&
           std::abs(cross(p[1], p[2], p[3])) > least && std::abs(cross(p[2], p[3], p[0])) > least &&
           std::abs(cross(p[3], p[0], p[1])) > least;
}

// The map that takes the three unit vectors and their sum to the four points.
Matrix fromBasis(const std::array<PlanePoint, 4>& p) {
    const Matrix columns{p[0].x, p[1].x, p[2].x, p[0].y, p[1].y, p[2].y, 1, 1, 1};
    const Matrix inverse = adjugate(columns);
    Matrix scaled = columns;
    for (std::size_t i = 0; i < 3; ++i) {
        const double factor = inverse[3 * i] * p[3].x + inverse[3 * i + 1] * p[3].y + inverse[3 * i + 2];
        for (std::size_t row = 0; row < 3; ++row) scaled[3 * row + i] *= factor;
    }
    return scaled;
}

Matrix normalised(Matrix m) {
    double largest = 0;
    for (const double each : m) largest = std::max(largest, std::abs(each));
    for (double& each : m) each /= largest;
    return m;
}

// Where the line a-b meets the line c-d; nothing where they run side by side.
std::optional<PlanePoint> meeting(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) {
    const double along = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
    const double lengths = std::hypot(b.x - a.x, b.y - a.y) * std::hypot(d.x - c.x, d.y - c.y);
    if (!(std::abs(along) > 1e-6 * lengths)) return std::nullopt;
    const double t = ((c.x - a.x) * (d.y - c.y) - (c.y - a.y) * (d.x - c.x)) / along;
    return PlanePoint{a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)};
}

} // namespace

std::optional<ProjectiveMap> ProjectiveMap::through(const std::array<PlanePoint, 4>& from,
                                                    const std::array<PlanePoint, 4>& to) {
    if (!inGeneralPosition(from) || !inGeneralPosition(to)) return std::nullopt;
    return ProjectiveMap(normalised(product(fromBasis(to), adjugate(fromBasis(from)))));
}

PlanePoint ProjectiveMap::operator()(PlanePoint p) const {
    const double w = m_[6] * p.x + m_[7] * p.y + m_[8];
    return {(m_[0] * p.x + m_[1] * p.y + m_[2]) / w, (m_[3] * p.x + m_[4] * p.y + m_[5]) / w};
}

ProjectiveMap ProjectiveMap::inverse() const {
    require(determinant(m_) != 0, "a projective map without an inverse");
    return ProjectiveMap(normalised(adjugate(m_)));
}

std::array<PlanePoint, 4> cornersOf(const Outline& outline) {
    const double top = outline.top.value() / 2, bottom = outline.bottom.value() / 2, tall = outline.height.value();
    return {PlanePoint{-top, 0}, PlanePoint{top, 0}, PlanePoint{bottom, tall}, PlanePoint{-bottom, tall}};
}

std::optional<ProjectiveMap> planeFromCorners(const Outline& outline, const std::array<PlanePoint, 4>& marked) {
    return ProjectiveMap::through(marked, cornersOf(outline));
}

std::optional<ProjectiveMap> planeFromHanging(const Outline& outline, const HangingMarks& marked, Length depth) {
    const auto corners = cornersOf(outline);
    const auto trueMeeting = meeting(corners[0], corners[3], corners[1], corners[2]);
    const auto seenMeeting = meeting(marked.leftEnd, marked.leftSide, marked.rightEnd, marked.rightSide);
    if (!trueMeeting || !seenMeeting) return std::nullopt;
    return ProjectiveMap::through({marked.leftEnd, marked.rightEnd, *seenMeeting, marked.lowest},
                                  {corners[0], corners[1], *trueMeeting, PlanePoint{0, depth.value()}});
}

} // namespace winterlarder::hive
