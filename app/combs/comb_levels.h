// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hive/hive.h"
#include "models/comb_edits.h"

#include <utility>

namespace winterlarder::desk {

//! What is seen on a comb, as shares of its built face; the rest is empty cells.
struct CombFilling {
    double built = 1;
    double capped = 0, open = 0, brood = 0, beeBread = 0;
    bool operator==(const CombFilling&) const = default;
};
CombFilling fillingOf(const book::CombRecord& comb);

//! A place on a comb in units of its own: x from -1 to 1 across the wider side, y from 0 at the bar to 1 at the lower edge.
struct CombPoint {
    double x, y;
};

//! Every line of the comb drawing that can be dragged: the lower edge of the capped arch, of the open nectar under it, the rim of
//! the brood, of the bee bread around it, and the lower edge of what is built.
enum class CombEdge { Capped, Open, Brood, BeeBread, Built };
std::optional<Zone> zoneOf(CombEdge edge);
CombEdge edgeOf(Zone zone);

//! Where the zones of a comb lie as bees lay them: capped honey in an arch under the bar, open nectar below it, brood as an
//! ellipse in the lower middle with a rim of bee bread, the lower edge of a part-built comb rounded. The edges of arch and nest are
//! chosen so that each zone has the area of its share; integrated over columns, error under 0.1 % of the face.
//! Tested: tests/app/comb_levels_test.cpp.
class CombLevels {
public:
    CombLevels(const hive::Outline& outline, const CombFilling& filling);

    // ---- edges -------------------------------------------------------------------------------------------------------
    double halfWidthAt(double y) const;               //!< of the full outline
    std::pair<double, double> column(double x) const; //!< the built comb at x: from y to y; empty where second <= first
    double archAt(CombEdge edge, double x) const;     //!< y of the capped or open edge
    double builtAt(double x) const;                   //!< y of the lower edge of what is built
    CombPoint nestMiddle() const { return {0, nestY_}; }
    double nestReach(CombEdge edge) const { return edge == CombEdge::Brood ? brood_ : bread_; } //!< half its height
    double nestWidening() const { return nestWidth_; } //!< half its width against half its height

    // ---- dragging ----------------------------------------------------------------------------------------------------
    //! The share a zone would have if its edge went through a point (0..1); for Built the share of the full outline.
    double shareThrough(CombEdge edge, CombPoint point) const;
    //! Distance of a point from an edge where the face is so wide and so tall, in the same unit.
    double distance(CombEdge edge, CombPoint point, double wide, double tall) const;

private:
    double areaAbove(double level) const;
    double nestArea(double reach) const;
    double nestField(CombPoint point) const;
    void placeNest();

    double halfTop_, halfBottom_;
    double builtLevel_;
    double area_ = 0; //!< of what is built
    double capped_, open_;
    double nestY_ = 0.5, nestWidth_ = 1;
    double brood_ = 0, bread_ = 0;
};

} // namespace winterlarder::desk
