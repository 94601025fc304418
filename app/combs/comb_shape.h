// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/comb_levels.h"

#include <QPainterPath>
#include <QRectF>

namespace winterlarder::desk {

//! A comb face on as bees lay it: capped honey in the upper arch, open nectar below it, brood in the lower middle with a
//! rim of bee bread, empty comb around, and below a rounded edge what is not built. Paths are clipped to the built comb; their areas are
//! the shares given, to 1 % of the face. Tested: tests/app/comb_shape_test.cpp.
struct CombShape {
    QPainterPath full; //!< the outline the hive allows
    QPainterPath comb; //!< what is built of it
    QPainterPath capped, open, brood, beeBread;
};

//! Draws into a rectangle whose width stands for the outline's wider side and whose height for its depth.
CombShape shapeOf(const CombLevels& levels, const QRectF& into);
CombShape shapeOf(const hive::Outline& outline, const CombFilling& filling, const QRectF& into);

//! An edge as an open line, for showing that it can be taken hold of.
QPainterPath edgeLine(const CombLevels& levels, CombEdge edge, const QRectF& into);

//! The point of a comb drawn into a rectangle, and back.
QPointF placeOf(CombPoint point, const QRectF& into);
CombPoint combPointAt(QPointF place, const QRectF& into);

} // namespace winterlarder::desk
