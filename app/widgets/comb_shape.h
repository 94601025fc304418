// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hive/hive.h"

#include <QPainterPath>
#include <QRectF>

namespace winterlarder::desk {

//! What is seen on a comb, as shares of its built face; the rest is empty cells.
struct CombFilling {
    double built = 1;
    double capped = 0, open = 0, brood = 0, beeBread = 0;
    bool operator==(const CombFilling&) const = default;
};

//! A comb face on as bees lay it: capped honey in the upper arch, open nectar below it, brood in the lower middle with a
//! rim of bee bread, empty comb around, and below a rounded edge what is not built. Paths are clipped to the built comb; their areas are
//! the shares given, to 1 % of the face. Tested: tests/app/comb_shape_test.cpp.
struct CombShape {
    QPainterPath full;  //!< the outline the hive allows
    QPainterPath comb;  //!< what is built of it
    QPainterPath capped, open, brood, beeBread;
};

//! Draws into a rectangle whose width stands for the outline's wider side and whose height for its depth.
CombShape shapeOf(const hive::Outline& outline, const CombFilling& filling, const QRectF& into);

} // namespace winterlarder::desk
