// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hive/hive.h"

#include <array>
#include <optional>

//! From a photograph of a comb to the comb's own plane.
namespace winterlarder::hive {

//! A point of a picture [px] or of a comb's plane [mm]: there x runs from the middle of the bar to the right, y down from the bar.
struct PlanePoint {
    double x = 0, y = 0;
    bool operator==(const PlanePoint&) const = default;
};

//! A projective map of one plane onto another: what a camera without distortion does to a flat comb. Eight numbers, so four points
//! no three of which lie on a line determine it. Tested: tests/hive/photograph_test.cpp.
class ProjectiveMap {
public:
    //! The map that takes each point of `from` to that of `to`; nothing where three of either lie on a line.
    static std::optional<ProjectiveMap> through(const std::array<PlanePoint, 4>& from,
                                                const std::array<PlanePoint, 4>& to);

    PlanePoint operator()(PlanePoint point) const;
    ProjectiveMap inverse() const;
    //! Row by row; a point (x, y, 1) is multiplied from the right, the result divided by its third part.
    const std::array<double, 9>& matrix() const { return m_; }

private:
    explicit ProjectiveMap(const std::array<double, 9>& m) : m_(m) {}
    std::array<double, 9> m_;
};

//! The outline's corners in the comb's plane: top left, top right, bottom right, bottom left.
std::array<PlanePoint, 4> cornersOf(const Outline& outline);

//! From a picture to the comb's plane by the four corners of the comb or its frame as marked in the picture (order of cornersOf):
//! determines the map for every outline whose lower corners can be seen.
std::optional<ProjectiveMap> planeFromCorners(const Outline& outline, const std::array<PlanePoint, 4>& marked);

//! Marks on a comb that hangs from a bar with sloping sides and ends in a rounded lower edge.
struct HangingMarks {
    PlanePoint leftEnd, rightEnd;   //!< where the comb's sides meet the bar
    PlanePoint leftSide, rightSide; //!< anywhere on the straight part of each side, the lower the better
    PlanePoint lowest;              //!< the lowest point, taken to hang below the middle of the bar
};
//! The same from the bar's ends, a point on each side and the lowest point, `depth` below the bar. Bar ends and lowest point alone
//! would leave two of the eight numbers open; the sides, which meet at a known point far below, give them: the four points are both
//! bar ends, that meeting point and the lowest. Nothing where the outline's sides do not slope (mark the corners then).
std::optional<ProjectiveMap> planeFromHanging(const Outline& outline, const HangingMarks& marked, Length depth);

} // namespace winterlarder::hive
