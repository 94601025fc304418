// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_levels.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::desk {

namespace {

const hive::Outline frame{millimetres(428), millimetres(428), millimetres(205)};
const hive::Outline sloping{millimetres(440), millimetres(151), millimetres(250)};
const hive::Outline narrowUp{millimetres(200), millimetres(400), millimetres(173)};

CombFilling anyFilling() {
    CombFilling filling;
    filling.built = *rc::gen::inRange(30, 101) / 100.0;
    filling.capped = *rc::gen::inRange(0, 51) / 100.0;
    filling.open = *rc::gen::inRange(0, 21) / 100.0;
    filling.brood = *rc::gen::inRange(0, 21) / 100.0;
    filling.beeBread = *rc::gen::inRange(0, 9) / 100.0;
    return filling;
}

// Share of a grid of points of the built comb that a zone covers, counted one by one: independent of the columns integrated over.
struct Counted {
    double capped = 0, open = 0, nest = 0, brood = 0, built = 0;
};

Counted count(const CombLevels& levels, const hive::Outline& outline) {
    Counted counted;
    const double wide = std::max(outline.top.value(), outline.bottom.value());
    int all = 0, comb = 0;
    for (int row = 0; row < 300; ++row) {
        for (int column = 0; column < 300; ++column) {
            const CombPoint p{-1 + (column + 0.5) / 150, (row + 0.5) / 300};
            const double half = std::lerp(outline.top.value(), outline.bottom.value(), p.y) / wide;
            if (std::abs(p.x) > half) continue;
            ++all;
            if (p.y > levels.builtAt(p.x)) continue;
            ++comb;
            const double reach = std::hypot(p.x / levels.nestWidening(), p.y - levels.nestMiddle().y);
            if (p.y < levels.archAt(CombEdge::Capped, p.x)) ++counted.capped;
            else if (p.y < levels.archAt(CombEdge::Open, p.x)) ++counted.open;
            else if (reach < levels.nestReach(CombEdge::Brood)) ++counted.brood;
            else if (reach < levels.nestReach(CombEdge::BeeBread)) ++counted.nest;
        }
    }
    for (auto* each : {&counted.capped, &counted.open, &counted.nest, &counted.brood}) *each /= comb;
    counted.built = static_cast<double>(comb) / all;
    return counted;
}

} // namespace

// Counting 90 000 points errs by about the points on an edge, 0.4 % of the face.
RC_GTEST_PROP(CombLevels, EveryZoneHasTheAreaOfItsShare, ()) {
    const auto outline = *rc::gen::element(frame, sloping, narrowUp);
    const auto filling = anyFilling();
    const auto counted = count(CombLevels(outline, filling), outline);
    RC_ASSERT(std::abs(counted.built - filling.built) < 0.006);
    RC_ASSERT(std::abs(counted.capped - filling.capped) < 0.006);
    RC_ASSERT(std::abs(counted.open - filling.open) < 0.006);
    RC_ASSERT(std::abs(counted.brood - filling.brood) < 0.006);
    RC_ASSERT(std::abs(counted.nest - filling.beeBread) < 0.006);
}

// The bisections end within 1e-9; columns are cut off at 0.1 % of the face.
RC_GTEST_PROP(CombLevels, AnEdgeGoesThroughTheShareItHas, ()) {
    const auto outline = *rc::gen::element(frame, sloping, narrowUp);
    auto filling = anyFilling();
    filling.brood = std::max(filling.brood, 0.02);
    const CombLevels levels(outline, filling);
    const double x = 0.1;
    RC_ASSERT(std::abs(levels.shareThrough(CombEdge::Capped, {x, levels.archAt(CombEdge::Capped, x)}) -
                       filling.capped) < 0.001);
    RC_ASSERT(std::abs(levels.shareThrough(CombEdge::Open, {x, levels.archAt(CombEdge::Open, x)}) - filling.open) <
              0.001);
    const double low = levels.nestMiddle().y + levels.nestReach(CombEdge::Brood);
    RC_ASSERT(std::abs(levels.shareThrough(CombEdge::Brood, {0, low}) - filling.brood) < 0.001);
    RC_ASSERT(std::abs(levels.shareThrough(CombEdge::Built, {0, std::min(levels.builtAt(0), 2.0)}) - filling.built) <
              0.001);
}

TEST(CombLevels, DistanceIsZeroOnAnEdgeAndInPixelsBesideIt) {
    const CombLevels levels(frame, {1, 0.4, 0.1, 0.2, 0.05});
    const double edge = levels.archAt(CombEdge::Capped, 0.3);
    EXPECT_NEAR(levels.distance(CombEdge::Capped, {0.3, edge}, 400, 200), 0, 1e-9);
    EXPECT_NEAR(levels.distance(CombEdge::Capped, {0.3, edge + 0.1}, 400, 200), 20, 1e-9);
    const double side = levels.nestReach(CombEdge::Brood) * levels.nestWidening();
    EXPECT_NEAR(levels.distance(CombEdge::Brood, {side, levels.nestMiddle().y}, 400, 200), 0, 1e-9);
    EXPECT_NEAR(levels.distance(CombEdge::Brood, {side + 0.05, levels.nestMiddle().y}, 400, 200), 10, 0.01);
}

} // namespace winterlarder::desk
