// SPDX-License-Identifier: GPL-3.0-or-later
#include "hive/hive.h"

#include "support/require.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

namespace winterlarder::hive {

namespace {

constexpr Length passage = millimetres(8);
constexpr Length capping = millimetres(0.8);
constexpr Length midrib = millimetres(0.6);
constexpr Length wideSpacing = millimetres(42);
constexpr double storesWater = 17.5;

double densityAt(double waterPercent) {
    const double past17 = waterPercent - 17;
    return 1.42091 - 0.0062903 * past17 - 0.00020061 * past17 * past17;
}

void requireMeasure(Length length) {
    require(std::isfinite(length.value()) && length.value() >= 0, "a comb cannot measure {} mm", length.value());
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

CombFormat combFormat(const HiveFormat& format) {
    return {format.id, Outline{format.combWidth, format.bottomWidth, format.combHeight}, format.pitch,
            format.beesPerSide, format.combsPerBox};
}

bool hasFrames(const CombFormat& format) {
    if (format.id.empty()) return format.outline.bottom >= format.outline.top;
    constexpr std::array bare{std::string_view("topbar"), std::string_view("warre"), std::string_view("alpine-bar")};
    return std::none_of(bare.begin(), bare.end(), [&](auto start) { return format.id.starts_with(start); });
}

bool isHorizontal(const CombFormat& format) {
    return format.combsPerBox >= longHiveCombs || format.id.starts_with("topbar") || format.id.starts_with("layens");
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

} // namespace winterlarder::hive
