// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/comb_levels.h"
#include "guide/svg_drawing.h"
#include "hive/hive.h"

#include <functional>
#include <vector>

//! What the drawings of the guide are made of: cells, combs, hives, bees, a hand, a scale.
namespace winterlarder::desk {

enum class CellKind { Capped, Open, BeeBread, SealedBrood, Grub, Egg, Empty };
//! A cell of the comb as bees build it, a corner upward; half its height is `radius`.
void drawCell(SvgDrawing& drawing, QPointF centre, double radius, CellKind kind);

//! A comb of cells in its bar and frame; shares lie as in the drawing of a look, to a cell. `face` keeps the proportions of the outline
//! and is given back as it was used.
QRectF drawComb(SvgDrawing& drawing, const hive::Outline& outline, const CombFilling& filling, const QRectF& room,
                double radius);

void drawBee(SvgDrawing& drawing, QPointF centre, double length, double degrees);

//! A hive from the front: boxes, lid, and the entrance in its floor.
struct HiveFront {
    QRectF body; //!< of the boxes
    int boxes = 2;
};
void drawHiveFront(SvgDrawing& drawing, const HiveFront& hive);
inline constexpr double floorHeight = 12, lidHeight = 14;

//! A hive cut open parallel to its front: a slab a comb. Shares of the stores from the top of each; bees fill the gaps within the cluster.
struct HiveInside {
    QRectF body;
    std::vector<double> stores;
    QRectF cluster{}; //!< null: no bees
};
void drawHiveInside(SvgDrawing& drawing, const HiveInside& hive);
//! Where its combs hang.
std::vector<QRectF> slabsOf(const HiveInside& hive);

//! A box from above with its bars; bees fill each gap from the front up to the share given. A bar may be missing.
struct BoxFromAbove {
    QRectF body;
    int bars = 10;
    std::vector<double> bees{}; //!< gap by gap from the left
    int missing = -1;
};
void drawBoxFromAbove(SvgDrawing& drawing, const BoxFromAbove& box);
QRectF barOf(const BoxFromAbove& box, int bar);
QRectF gapOf(const BoxFromAbove& box, int gap); //!< right of the bar of the same number

//! A hand that comes from the left and holds an edge from below; `at` is where its fingers lie. Mirrored it comes from the right.
void drawHand(SvgDrawing& drawing, QPointF at, bool mirrored);
//! A luggage scale whose hook holds at `at`; above it is its face, given back: its reading stands beside it.
QRectF drawLuggageScale(SvgDrawing& drawing, QPointF at, double height);

void drawGround(SvgDrawing& drawing, double y, double from, double to);

} // namespace winterlarder::desk
