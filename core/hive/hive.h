// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"
#include "reference/reference.h"
#include "support/outcome.h"

#include <vector>

namespace winterlarder::hive {

//! Comb outline: rectangle where top == bottom, else a trapezoid; a half hexagon of side s is the trapezoid 2s, s, (sqrt 3 / 2) s either way up.
struct Outline {
    Length top;    //!< clear width along the bar
    Length bottom; //!< width at the lower edge
    Length height;
    bool operator==(const Outline&) const = default;
};

//! Face area [dm2] = (top + bottom) / 2 x height x built, lengths in mm / 10 000; built = share of the full comb that is built.
Area faceArea(const Outline& outline, double built = 1);

//! Bottom width of a comb with sides sloping 30 degrees from the vertical: top - 2 depth tan 30, not below 0.
Length slopingBottom(Length top, Length depth);

//! Everything about a place for a comb that the arithmetic needs.
struct CombFormat {
    std::string id; //!< of the shipped format; empty: the keeper's own measures
    Outline outline;
    Length pitch;
    BeeCount beesPerSide;
    int combsPerBox = 0;
};
CombFormat combFormat(const HiveFormat& format);

//! Honey of sealed comb, both faces, per dm2 of comb face [kg/dm2]: 10 (P - b - 2c - s) rho phi in g, with
//! b 8 mm between facing combs, c 0.8 capping, s 0.6 midrib, rho honey density at 17.5 % water. Never below 0.
//! Units: P in mm; answer in kg per dm2. Sources: combs of the USDA bulletins (Demuth, Phillips), see DEVELOPERS.md.
Mass honeyPerSquareDecimetre(Length pitch, double phi);

//! Share of the slab that is honey.
inline constexpr double phiComb = 0.84;      //!< combs given by shares
inline constexpr double phiSuper = 0.88;     //!< in a super, or pitch 42 mm or more
inline constexpr double phiQuickForm = 0.78; //!< combs called "full" have rims

//! Honey density at 20 C [kg/L], water 13-21 %; a problem outside.
Outcome<double> honeyDensity(double waterPercent);
//! Water [%] from the refractive index at a temperature (Wedmore): W = (-0.26810 - log10(n - 1)) / 0.002243, n + 0.00023 per K above 20 C.
Outcome<double> waterFromRefraction(double refractiveIndex, Temperature at = celsius(20));

} // namespace winterlarder::hive
