// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/photograph.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <rapidcheck/gtest.h>

namespace winterlarder::hive::photograph_test {

namespace {

const Outline frame{millimetres(428), millimetres(428), millimetres(205)};
const Outline sloping{millimetres(440), millimetres(174), millimetres(230)};

//! A camera 900 mm before the middle of a comb that is turned round an upright and a level axis; 2000 px focal length.
struct View {
    double turned = 0, tilted = 0, rolled = 0; //!< degrees
    double middle = 100;                       //!< mm below the bar it looks at
    PlanePoint operator()(PlanePoint p) const {
        const double k = std::numbers::pi / 180;
        double x = p.x, y = p.y - middle, z = 0;
        const auto turn = [](double& a, double& b, double angle) {
            const double old = a;
            a = old * std::cos(angle) - b * std::sin(angle);
            b = old * std::sin(angle) + b * std::cos(angle);
        };
        turn(x, z, turned * k);
        turn(y, z, tilted * k);
        turn(x, y, rolled * k);
        return {2000 + 2000 * x / (900 + z), 1500 + 2000 * y / (900 + z)};
    }
};

View anyView() {
    const auto angle = [](int most) { return static_cast<double>(*rc::gen::inRange(-most, most + 1)); };
    View view;
    view.turned = angle(30);
    view.tilted = angle(30);
    view.rolled = angle(20);
    return view;
}

PlanePoint anyPlace() { return {*rc::gen::inRange(-200, 201) * 1.0, *rc::gen::inRange(0, 201) * 1.0}; }

double apart(PlanePoint a, PlanePoint b) { return std::hypot(a.x - b.x, a.y - b.y); }

} // namespace

RC_GTEST_PROP(Photograph, FourCornersBringEveryPlaceBack, ()) {
    const auto view = anyView();
    const auto outline = *rc::gen::element(frame, sloping);
    std::array<PlanePoint, 4> marked;
    for (std::size_t i = 0; i < 4; ++i) marked[i] = view(cornersOf(outline)[i]);
    const auto plane = planeFromCorners(outline, marked);
    RC_ASSERT(plane.has_value());
    const auto place = anyPlace();
    RC_ASSERT(apart((*plane)(view(place)), place) < 1e-6);
}

RC_GTEST_PROP(Photograph, BarEndsSidesAndLowestPointBringEveryPlaceBack, ()) {
    const auto view = anyView();
    const double depth = *rc::gen::inRange(120, 231);
    const auto side = [&](double sign) {
        const double y = *rc::gen::inRange(60, 120);
        return view({sign * std::lerp(220.0, 87.0, y / 230), y});
    };
    const HangingMarks marked{view({-220, 0}), view({220, 0}), side(-1), side(1), view({0, depth})};
    const auto plane = planeFromHanging(sloping, marked, millimetres(depth));
    RC_ASSERT(plane.has_value());
    const auto place = anyPlace();
    RC_ASSERT(apart((*plane)(view(place)), place) < 1e-5);
}

RC_GTEST_PROP(Photograph, ThereAndBackIsWhereItWas, ()) {
    const auto view = anyView();
    std::array<PlanePoint, 4> marked;
    for (std::size_t i = 0; i < 4; ++i) marked[i] = view(cornersOf(frame)[i]);
    const auto plane = planeFromCorners(frame, marked);
    const auto place = anyPlace();
    RC_ASSERT(apart((*plane)(plane->inverse()(place)), place) < 1e-6);
}

TEST(Photograph, CornersOnALineDetermineNothing) {
    EXPECT_FALSE(planeFromCorners(frame, {{{0, 0}, {10, 0}, {20, 0}, {0, 10}}}));
    EXPECT_FALSE(planeFromCorners(frame, {{{5, 5}, {5, 5}, {5, 5}, {5, 5}}}));
    EXPECT_FALSE(planeFromCorners(frame, {{{0, 0}, {std::nan(""), 0}, {20, 10}, {0, 10}}}));
}

TEST(Photograph, StraightSidesMeetNowhere) {
    const View view{};
    const HangingMarks marked{view({-214, 0}), view({214, 0}), view({-214, 90}), view({214, 90}), view({0, 205})};
    EXPECT_FALSE(planeFromHanging(frame, marked, millimetres(205)));
}

} // namespace winterlarder::hive::photograph_test
