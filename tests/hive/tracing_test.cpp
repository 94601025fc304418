// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/tracing.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <rapidcheck/gtest.h>

namespace winterlarder::hive::tracing_test {

namespace {

const Outline frame{millimetres(400), millimetres(400), millimetres(200)};
constexpr double faceArea_ = 400.0 * 200.0;

std::vector<PlanePoint> round(PlanePoint middle, double across, double down, int points) {
    std::vector<PlanePoint> found;
    for (int i = 0; i < points; ++i) {
        const double angle = 2 * std::numbers::pi * i / points;
        found.push_back({middle.x + across * std::cos(angle), middle.y + down * std::sin(angle)});
    }
    return found;
}

std::vector<PlanePoint> box(double left, double top, double right, double bottom) {
    std::vector<PlanePoint> found;
    // Close points along straight sides keep a smooth curve straight.
    for (int i = 0; i < 40; ++i) found.push_back({std::lerp(left, right, i / 40.0), top});
    for (int i = 0; i < 40; ++i) found.push_back({right, std::lerp(top, bottom, i / 40.0)});
    for (int i = 0; i < 40; ++i) found.push_back({std::lerp(right, left, i / 40.0), bottom});
    for (int i = 0; i < 40; ++i) found.push_back({left, std::lerp(bottom, top, i / 40.0)});
    return found;
}

} // namespace

// Points evenly on a circle: the spline's own area against the circle's, its sixteen pieces integrated by themselves: 0.9904 with eight
// points, 0.9980 with twelve. Lines 0.5 mm apart add at most 0.1 % of the face, 0.4 % of this circle.
TEST(Tracing, FewPointsMakeACircle) {
    const double circle = std::numbers::pi * 80 * 80;
    EXPECT_NEAR(sharesOf(frame, {{TracedKind::Brood, round({0, 100}, 80, 80, 12)}}).brood * faceArea_ / circle, 0.9980,
                0.004);
    const auto shares = sharesOf(frame, {{TracedKind::Brood, round({0, 100}, 80, 80, 8)}});
    EXPECT_NEAR(shares.brood * faceArea_ / circle, 0.9904, 0.004);
    EXPECT_EQ(shares.built, 1);
    EXPECT_EQ(shares.capped, 0);
}

TEST(Tracing, WhatLiesOutsideTheOutlineDoesNotCount) {
    const auto shares = sharesOf(frame, {{TracedKind::Capped, box(-300, -50, 300, 60)}});
    EXPECT_NEAR(shares.capped, 0.3, 0.001);
}

TEST(Tracing, BroodGoesBeforeBeeBreadBeforeCappedBeforeOpen) {
    const auto shares = sharesOf(frame, {{TracedKind::Open, box(-200, 0, 200, 100)},
                                         {TracedKind::Capped, box(-200, 0, 200, 60)},
                                         {TracedKind::BeeBread, round({0, 110}, 100, 70, 24)},
                                         {TracedKind::Brood, round({0, 110}, 80, 50, 24)}});
    const double brood = std::numbers::pi * 80 * 50 / faceArea_, nest = std::numbers::pi * 100 * 70 / faceArea_;
    EXPECT_NEAR(shares.brood, brood, 0.001);
    EXPECT_NEAR(shares.beeBread, nest - brood, 0.001);
    EXPECT_LT(shares.capped, 0.3) << "the nest took some";
    EXPECT_LE(shares.capped + shares.open + shares.brood + shares.beeBread, 1 + 1e-9);
}

TEST(Tracing, SharesAreOfTheTracedComb) {
    const auto shares =
        sharesOf(frame, {{TracedKind::Comb, box(-200, -10, 200, 100)}, {TracedKind::Capped, box(-200, -10, 200, 50)}});
    EXPECT_NEAR(shares.built, 0.5, 0.001);
    EXPECT_NEAR(shares.capped, 0.5, 0.001);
}

TEST(Tracing, TwoPatchesOfOneZoneAddUpAndOverlapOnce) {
    const auto apart = sharesOf(
        frame, {{TracedKind::Brood, round({-90, 100}, 40, 40, 24)}, {TracedKind::Brood, round({90, 100}, 40, 40, 24)}});
    const auto same = sharesOf(
        frame, {{TracedKind::Brood, round({0, 100}, 40, 40, 24)}, {TracedKind::Brood, round({0, 100}, 40, 40, 24)}});
    EXPECT_NEAR(apart.brood, 2 * same.brood, 0.001);
}

TEST(Tracing, TwoPointsAreNoZone) {
    EXPECT_EQ(sharesOf(frame, {{TracedKind::Capped, {{0, 0}, {10, 10}}}}).capped, 0);
    EXPECT_EQ(sharesOf(frame, {}).built, 1);
}

RC_GTEST_PROP(Tracing, ACurveGoesThroughItsPointsAndSharesStayShares, ()) {
    const auto any = [] { return PlanePoint{*rc::gen::inRange(-250, 251) * 1.0, *rc::gen::inRange(-20, 221) * 1.0}; };
    std::vector<Tracing> tracings;
    for (const auto kind :
         {TracedKind::Comb, TracedKind::Capped, TracedKind::Open, TracedKind::Brood, TracedKind::BeeBread}) {
        Tracing tracing{kind, {}};
        const int count = *rc::gen::inRange(3, 12);
        for (int i = 0; i < count; ++i) tracing.points.push_back(any());
        const auto curve = smoothClosed(tracing.points);
        for (const auto& point : curve) RC_ASSERT(std::isfinite(point.x) && std::isfinite(point.y));
        if (curve.size() >= 3)
            for (const auto& point : tracing.points)
                RC_ASSERT(std::any_of(curve.begin(), curve.end(), [&](const PlanePoint& each) {
                    return std::hypot(each.x - point.x, each.y - point.y) < 1e-6;
                }));
        tracings.push_back(std::move(tracing));
    }
    const auto shares = sharesOf(frame, tracings);
    RC_ASSERT(shares.built >= 0 && shares.built <= 1 + 1e-9);
    const double sum = shares.capped + shares.open + shares.brood + shares.beeBread;
    RC_ASSERT(sum <= 1 + 1e-9);
    for (const double each : {shares.capped, shares.open, shares.brood, shares.beeBread}) RC_ASSERT(each >= 0);
}

} // namespace winterlarder::hive::tracing_test
