// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"
#include "reference/reference.h"
#include "support/outcome.h"

#include <vector>

namespace winterlarder::hive {

//! Comb outline: rectangle where top == bottom, else a trapezoid; a half hexagon of side s is the trapezoid 2s, s,
//! (sqrt 3 / 2) s either way up.
struct Outline {
    Length top;    //!< clear width along the bar
    Length bottom; //!< width at the lower edge
    Length height;
    bool operator==(const Outline&) const = default;
};

//! Face area [dm2] = (top + bottom) / 2 x height x built, lengths in mm / 10 000; built = share of the full comb that
//! is built. Geometry. ContractViolation for a negative or non-finite measure. Tested: tests/hive/hive_test.cpp.
Area faceArea(const Outline& outline, double built = 1);

//! Bottom width of a comb with sides sloping 30 degrees from the vertical (120 degrees inside at the floor):
//! top - 2 depth tan 30, not below 0. Tested: tests/hive/hive_test.cpp, against the shipped top-bar formats.
Length slopingBottom(Length top, Length depth);

//! Half hexagon of side s as a trapezoid: wide side 2s, narrow side s, depth (sqrt 3 / 2) s, so 3 sqrt 3 / 4 s^2 either
//! way up. Wide side up hangs from a straight bar 2s long. Tested: tests/hive/hive_test.cpp.
enum class WideSide { Up, Down };
Outline halfHexagon(Length side, WideSide wideSide);

//! Everything about a place for a comb that the arithmetic needs.
struct CombFormat {
    std::string id; //!< of the shipped format; empty: the keeper's own measures
    Outline outline;
    Length pitch;
    BeeCount beesPerSide;
    int combsPerBox = 0;
};
//! A shipped format as the arithmetic takes it; nothing is lost but names and notes.
CombFormat combFormat(const HiveFormat& format);

//! Bees on one fully covered face of an outline the keeper measured: 130 bees per dm2 (handbook figure; the shipped
//! formats carry their own). Tested: tests/hive/hive_test.cpp, against every shipped format.
BeeCount beesPerFace(const Outline& outline);
inline constexpr double beesPerSquareDecimetre = 130;

//! Boxes this long are long hives: combs count from the entrance end, ten of them are usual winter stores.
inline constexpr int longHiveCombs = 16;

//! Honey of sealed comb, both faces, per dm2 of comb face [kg/dm2]: 10 (P - b - 2c - s) rho phi in g, with
//! b 8 mm between facing combs, c 0.8 capping, s 0.6 midrib, rho honey density at 17.5 % water. Never below 0.
//! Units: P in mm; answer in kg per dm2. Sources: combs of the USDA bulletins (Demuth, Phillips), see DEVELOPERS.md.
//! Tested: tests/hive/hive_test.cpp (published slopes), tests/stores/comb_checks_test.cpp (published comb masses).
Mass honeyPerSquareDecimetre(Length pitch, double phi);

//! Share of the slab that is honey.
inline constexpr double phiComb = 0.84;      //!< combs given by shares
inline constexpr double phiSuper = 0.88;     //!< in a super, or pitch 42 mm or more
inline constexpr double phiQuickForm = 0.78; //!< combs called "full" have rims
//! Which of the first two holds for a comb given by shares.
double phiFor(Length pitch, bool inSuper);

//! Honey of one comb sealed from edge to edge [kg]: honey per dm2 x face area.
Mass fullComb(const CombFormat& format, double phi, double built = 1);

//! Honey density at 20 C [kg/L], water 13-21 %; a problem outside. Fit to the standard density table of honey within
//! 0.001: 1.42091 - 0.0062903 (w - 17) - 0.00020061 (w - 17)^2. Tested: tests/hive/hive_test.cpp.
Outcome<double> honeyDensity(double waterPercent);
//! Water [%] from the refractive index at a temperature (Wedmore): W = (-0.26810 - log10(n - 1)) / 0.002243, n +
//! 0.00023 per K above 20 C. A problem where the answer would lie outside 10-30 % (not honey) or the reading was taken
//! outside 0-60 C. Tested: tests/hive/hive_test.cpp (Bogdanov, harmonised methods of the International Honey
//! Commission).
Outcome<double> waterFromRefraction(double refractiveIndex, Temperature at = celsius(20));

} // namespace winterlarder::hive
