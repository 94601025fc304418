// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/hive.h"

#include "support/require.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <numbers>
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

// Geometry: a half hexagon of side s has the area 3 sqrt(3) / 4 s^2, whichever side is up.
TEST(HalfHexagon, HasItsAreaEitherWayUp) {
    for (const double side : {150.0, 200.0, 220.0}) {
        const double squareDecimetres = 3 * std::numbers::sqrt3 / 4 * side * side / 10000;
        EXPECT_NEAR(faceArea(halfHexagon(millimetres(side), WideSide::Up)).value(), squareDecimetres, 1e-12);
        EXPECT_NEAR(faceArea(halfHexagon(millimetres(side), WideSide::Down)).value(), squareDecimetres, 1e-12);
    }
}

TEST(HalfHexagon, WideSideUpHangsFromABarTwiceTheSide) {
    const Outline up = halfHexagon(millimetres(200), WideSide::Up);
    const Outline down = halfHexagon(millimetres(200), WideSide::Down);
    EXPECT_EQ(up.top, millimetres(400));
    EXPECT_EQ(up.bottom, millimetres(200));
    EXPECT_EQ(down.top, up.bottom);
    EXPECT_EQ(down.bottom, up.top);
    EXPECT_EQ(down.height, up.height);
}

// Sides of a half hexagon stand 30 degrees from the vertical: the sloping bottom must meet it.
TEST(SlopingBottom, MeetsTheHalfHexagon) {
    const Outline hexagon = halfHexagon(millimetres(220), WideSide::Up);
    EXPECT_NEAR(slopingBottom(hexagon.top, hexagon.height).value(), 220, 1e-9);
}

TEST(SlopingBottom, EndsInAPoint) { EXPECT_EQ(slopingBottom(millimetres(300), millimetres(400)), millimetres(0)); }

// Common top-bar hives: 120 degrees inside at the floor. Bottom widths printed to the millimetre.
TEST(SlopingBottom, MeetsTheCommonTopBarHives) {
    EXPECT_NEAR(slopingBottom(millimetres(380), millimetres(280)).value(), 57, 0.5);
    EXPECT_NEAR(slopingBottom(millimetres(440), millimetres(250)).value(), 151, 0.5);
    EXPECT_NEAR(slopingBottom(millimetres(440), millimetres(300)).value(), 94, 0.5);
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

// Standard density table of honey at 20 C, values to 0.001 kg/L.
TEST(HoneyDensity, MeetsTheStandardTable) {
    const struct { double water, density; } rows[] = {{13, 1.443}, {16, 1.427}, {18, 1.415}, {20, 1.400}};
    for (const auto& row : rows) {
        const auto density = honeyDensity(row.water);
        ASSERT_TRUE(density.ok());
        EXPECT_NEAR(*density, row.density, 0.001) << row.water << " % water, standard density table";
    }
}

TEST(HoneyDensity, IsRefusedOutsideItsRange) {
    EXPECT_TRUE(honeyDensity(13).ok());
    EXPECT_TRUE(honeyDensity(21).ok());
    for (const double water : {12.99, 21.01, std::numeric_limits<double>::quiet_NaN()}) {
        const auto density = honeyDensity(water);
        ASSERT_FALSE(density.ok());
        EXPECT_EQ(density.problems().front().remedy, "13 to 21 %");
    }
}

// Wedmore's table of refractive index and water at 20 C as reprinted by Bogdanov, Harmonised methods of the
// International Honey Commission. Water is printed to 0.1 %, n to 0.0001 (0.04 %): together within 0.09 %.
TEST(Refractometer, MeetsWedmoresTable) {
    const struct {
        double index, water;
    } rows[] = {{1.5044, 13.0}, {1.4940, 17.0}, {1.4915, 18.0}, {1.4865, 20.0}, {1.4740, 25.0}};
    for (const auto& row : rows) {
        const auto water = waterFromRefraction(row.index);
        ASSERT_TRUE(water.ok());
        EXPECT_NEAR(*water, row.water, 0.09) << "n " << row.index << ", Bogdanov";
    }
}

TEST(Refractometer, IsCorrectedForWarmth) {
    // 0.00023 per K: five degrees above 20 C read 0.00115 too low.
    EXPECT_NEAR(*waterFromRefraction(1.4915, celsius(25)), *waterFromRefraction(1.49265, celsius(20)), 1e-9);
    EXPECT_NEAR(*waterFromRefraction(1.4915, celsius(15)), *waterFromRefraction(1.49035, celsius(20)), 1e-9);
}

TEST(Refractometer, RefusesWhatIsNotHoney) {
    for (const double index : {1.333, 1.53, 0.5, std::numeric_limits<double>::quiet_NaN()})
        EXPECT_FALSE(waterFromRefraction(index).ok()) << index;
    EXPECT_FALSE(waterFromRefraction(1.49, celsius(61)).ok());
    EXPECT_FALSE(waterFromRefraction(1.49, celsius(-1)).ok());
}

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
