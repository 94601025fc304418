// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"
#include "reference/reference.h"

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

//! Whether its combs hang in frames: not those of top-bar hives and of boxes with bare bars, nor combs of the keeper's own measures whose sides
//! slope. Tested: tests/hive/hive_test.cpp.
bool hasFrames(const CombFormat& format);
//! Whether it is one long body that no other is set upon: 16 combs or more, or by the start of its id. Tested: tests/hive/hive_test.cpp.
bool isHorizontal(const CombFormat& format);

//! Bees on one fully covered face of an outline the keeper measured: 130 bees per dm2 (handbook figure; the shipped
//! formats carry their own). Tested: tests/hive/hive_test.cpp, against every shipped format.
BeeCount beesPerFace(const Outline& outline);
inline constexpr double beesPerSquareDecimetre = 130;

//! Days from the egg to the adult worker.
inline constexpr int broodDays = 21;

//! Boxes this long are long hives: combs count from the entrance end, ten of them are usual winter stores.
inline constexpr int longHiveCombs = 16;

//! Honey of sealed comb, both faces, per dm2 of comb face [kg/dm2]: 10 (P - b - 2c - s) rho phi in g, with
//! b 8 mm between facing combs, c 0.8 capping, s 0.6 midrib, rho honey density at 17.5 % water: 1.42091 - 0.0062903 (w - 17) - 0.00020061 (w - 17)^2 kg/L
//! at 20 C, a fit to the standard density table of honey within 0.001. Never below 0.
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

} // namespace winterlarder::hive
