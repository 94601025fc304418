// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/hive.h"

#include "support/require.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace winterlarder::hive::hive_test {
namespace {

Outline rectangle(double width, double height) { return {millimetres(width), millimetres(width), millimetres(height)}; }
Outline trapezoid(double top, double bottom, double height) {
    return {millimetres(top), millimetres(bottom), millimetres(height)};
}

TEST(Outline, RectangleIsWidthTimesHeight) {
    EXPECT_NEAR(faceArea(rectangle(428, 205)).value(), 8.774, 1e-12); // 428 x 205 mm = 87 740 mm2
}

TEST(Outline, TrapezoidIsMeanWidthTimesHeight) {
    EXPECT_NEAR(faceArea(trapezoid(380, 57, 280)).value(), 6.118, 1e-12); // 218.5 x 280 mm
    EXPECT_EQ(faceArea(trapezoid(57, 380, 280)), faceArea(trapezoid(380, 57, 280)));
}

TEST(Outline, BuiltShareScalesTheArea) {
    EXPECT_NEAR(faceArea(rectangle(400, 200), 0.9).value(), 7.2, 1e-12);
    EXPECT_EQ(faceArea(rectangle(400, 200), 0).value(), 0);
}

TEST(Outline, ImpossibleMeasuresAreRefused) {
    EXPECT_THROW(faceArea(rectangle(-1, 200)), ContractViolation);
    EXPECT_THROW(faceArea(rectangle(std::numeric_limits<double>::quiet_NaN(), 200)), ContractViolation);
    EXPECT_THROW(faceArea(rectangle(400, 200), 1.01), ContractViolation);
}

TEST(Frames, HangInEveryHiveButThoseWithBareBars) {
    const auto ofId = [](const char* id) { return hasFrames({id, rectangle(428, 205)}); };
    for (const char* id : {"langstroth-deep", "national-deep", "langstroth-long", "znidersic"})
        EXPECT_TRUE(ofId(id)) << id;
    for (const char* id : {"topbar-sloping-440", "topbar-straight-440", "warre", "alpine-bar"})
        EXPECT_FALSE(ofId(id)) << id;
    EXPECT_TRUE(isHorizontal({"topbar-straight-440", rectangle(440, 250)}));
    EXPECT_TRUE(isHorizontal({"layens", rectangle(310, 350)}));
    EXPECT_FALSE(isHorizontal({"warre", rectangle(300, 195)})) << "its boxes stand on each other";
    EXPECT_FALSE(isHorizontal({"langstroth-deep", rectangle(428, 205)}));
    EXPECT_TRUE(hasFrames({"", rectangle(300, 200)})) << "the keeper's own measures";
    EXPECT_FALSE(hasFrames({"", trapezoid(380, 57, 280)})) << "no frame has sloping sides";
}

// Honey per dm2 of comb face, both faces, at the spacings in use; figures rounded to the gram.
TEST(HoneyPerArea, GivesTheKnownFiguresAtCommonSpacings) {
    const struct {
        double pitch, gramsPerSquareDecimetre;
    } rows[] = {{32, 260}, {35, 295}, {36.5, 313}, {38, 331}, {43, 391}};
    for (const auto& row : rows)
        EXPECT_NEAR(honeyPerSquareDecimetre(millimetres(row.pitch), phiComb).value() * 1000,
                    row.gramsPerSquareDecimetre, 0.5)
            << row.pitch << " mm";
}

// Section combs of different thickness: Demuth G. S., Comb honey, USDA Farmers' Bulletin 503 (1912); Phillips E. F.,
// Beekeeping. Their masses rise by 12.5 g per dm2 and mm of thickness (three figures); sections are filled like super
// combs.
TEST(HoneyPerArea, RisesWithSpacingAsPublishedSectionCombsDo) {
    const double rise =
        (honeyPerSquareDecimetre(millimetres(50), phiSuper) - honeyPerSquareDecimetre(millimetres(38), phiSuper))
            .value();
    EXPECT_NEAR(rise * 1000 / 12, 12.5, 0.05) << "Demuth 1912, Phillips";
}

TEST(HoneyPerArea, EveryMillimetreOfBarIsWorthTwelveGrams) {
    const double rise =
        (honeyPerSquareDecimetre(millimetres(36), phiComb) - honeyPerSquareDecimetre(millimetres(35), phiComb)).value();
    EXPECT_NEAR(rise * 1000, 12, 0.5);
}

TEST(HoneyPerArea, IsNeverNegative) { EXPECT_EQ(honeyPerSquareDecimetre(millimetres(9), phiComb), kilograms(0)); }

TEST(HoneyPerArea, RefusesAnImpossibleShare) {
    EXPECT_THROW(honeyPerSquareDecimetre(millimetres(35), 1.1), ContractViolation);
    EXPECT_THROW(honeyPerSquareDecimetre(millimetres(std::numeric_limits<double>::infinity()), 0.8), ContractViolation);
}

TEST(HoneyShare, IsGreaterInSupersAndWideSpacings) {
    EXPECT_EQ(phiFor(millimetres(35), false), phiComb);
    EXPECT_EQ(phiFor(millimetres(35), true), phiSuper);
    EXPECT_EQ(phiFor(millimetres(41.9), false), phiComb);
    EXPECT_EQ(phiFor(millimetres(42), false), phiSuper);
}

TEST(FullComb, IsHoneyPerAreaTimesArea) {
    const CombFormat deep{"", rectangle(428, 205), millimetres(35), {1100}, 10};
    EXPECT_NEAR(fullComb(deep, phiComb).value(), 0.29533 * 8.774, 1e-3); // 14.177 g x 24.8 mm x 0.84 per dm2
    EXPECT_NEAR(fullComb(deep, phiComb, 0.5).value(), fullComb(deep, phiComb).value() / 2, 1e-12);
}

TEST(BeesPerFace, Is130PerSquareDecimetre) { EXPECT_NEAR(beesPerFace(rectangle(400, 200)).count, 1040, 1e-9); }

RC_GTEST_PROP(HoneyPerAreaProperty, WiderSpacingNeverHoldsLess, ()) {
    const double pitch = 25 + *rc::gen::inRange(0, 350) / 10.0;
    const double wider = pitch + *rc::gen::inRange(0, 100) / 10.0;
    RC_ASSERT(honeyPerSquareDecimetre(millimetres(wider), phiComb) >=
              honeyPerSquareDecimetre(millimetres(pitch), phiComb));
}

RC_GTEST_PROP(OutlineProperty, AreaIsTheSameEitherWayUp, ()) {
    const double top = *rc::gen::inRange(50, 1000), bottom = *rc::gen::inRange(0, 1000),
                 height = *rc::gen::inRange(50, 1000);
    RC_ASSERT(std::abs((faceArea(trapezoid(top, bottom, height)) - faceArea(trapezoid(bottom, top, height))).value()) <
              1e-9);
}

} // namespace
} // namespace winterlarder::hive::hive_test
