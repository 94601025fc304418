// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/hive.h"

#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <numbers>
#include <string>
#include <utility>

namespace winterlarder::hive {

namespace {

constexpr Length passage = millimetres(8);
constexpr Length capping = millimetres(0.8);
constexpr Length midrib = millimetres(0.6);
constexpr Length wideSpacing = millimetres(42);
constexpr double storesWater = 17.5;
constexpr double refractionPerKelvin = 0.00023;

double densityAt(double waterPercent) {
    const double past17 = waterPercent - 17;
    return 1.42091 - 0.0062903 * past17 - 0.00020061 * past17 * past17;
}

void requireMeasure(Length length) {
    require(std::isfinite(length.value()) && length.value() >= 0, "a comb cannot measure {} mm", length.value());
}

Problem outside(std::string detail, std::string remedy) {
    Problem problem;
    problem.detail = std::move(detail);
    problem.remedy = std::move(remedy);
    return problem;
}

} // namespace

Area faceArea(const Outline& outline, double built) {
    requireMeasure(outline.top);
    requireMeasure(outline.bottom);
    requireMeasure(outline.height);
    require(built >= 0 && built <= 1, "built share {} is not within 0..1", built);
    const Length meanWidth = (outline.top + outline.bottom) / 2.0;
    return Area(meanWidth * outline.height) * built;
}

Length slopingBottom(Length top, Length depth) {
    requireMeasure(top);
    requireMeasure(depth);
    return std::max(millimetres(0), top - 2 * depth / std::numbers::sqrt3);
}

Outline halfHexagon(Length side, WideSide wideSide) {
    requireMeasure(side);
    const Length depth = side * (std::numbers::sqrt3 / 2);
    return wideSide == WideSide::Up ? Outline{2 * side, side, depth} : Outline{side, 2 * side, depth};
}

CombFormat combFormat(const HiveFormat& format) {
    return {format.id, Outline{format.combWidth, format.bottomWidth, format.combHeight}, format.pitch,
            format.beesPerSide, format.combsPerBox};
}

BeeCount beesPerFace(const Outline& outline) { return {beesPerSquareDecimetre * faceArea(outline).value()}; }

Mass honeyPerSquareDecimetre(Length pitch, double phi) {
    requireMeasure(pitch);
    require(phi >= 0 && phi <= 1, "honey share {} of a comb is not within 0..1", phi);
    const Length honey = std::max(millimetres(0), pitch - passage - 2 * capping - midrib);
    return grams(10 * honey.value() * densityAt(storesWater) * phi);
}

double phiFor(Length pitch, bool inSuper) { return inSuper || pitch >= wideSpacing ? phiSuper : phiComb; }

Mass fullComb(const CombFormat& format, double phi, double built) {
    return honeyPerSquareDecimetre(format.pitch, phi) * faceArea(format.outline, built).value();
}

Outcome<double> honeyDensity(double waterPercent) {
    if (waterPercent >= 13 && waterPercent <= 21) return densityAt(waterPercent);
    return outside(fmt::format("no honey density at {} % water", waterPercent), "13 to 21 %");
}

Outcome<double> waterFromRefraction(double refractiveIndex, Temperature at) {
    if (!(at >= celsius(0) && at <= celsius(60)))
        return outside(fmt::format("a refractometer cannot be read at {} C", at.value()), "0 to 60 C");
    const double at20 = refractiveIndex + refractionPerKelvin * (at.value() - 20);
    const double water = (-0.26810 - std::log10(at20 - 1)) / 0.002243;
    if (water >= 10 && water <= 30) return water;
    return outside(fmt::format("refractive index {} is not that of honey", refractiveIndex),
                   "about 1.462 to 1.512 at 20 C");
}

} // namespace winterlarder::hive
