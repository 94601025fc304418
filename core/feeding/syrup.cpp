// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/syrup.h"

#include "support/require.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <fmt/format.h>
#include <optional>
#include <utility>

namespace winterlarder::feeding {

namespace {

// A ratio as written --------------------------------------------------------------------------------------------------

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::optional<double> positiveNumber(std::string_view text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    const bool whole = error == std::errc{} && end == text.data() + text.size();
    if (!whole || !std::isfinite(value) || value <= 0) return std::nullopt;
    return value;
}

double byMass(double sugar, double water, RatioBasis basis) {
    if (basis == RatioBasis::ByVolume) return sugar * sugarBulkKgPerL / (water * waterDensityKgPerL);
    if (basis == RatioBasis::KgPerL) return sugar / (water * waterDensityKgPerL);
    return sugar / water;
}

Problem notARatio(std::string_view text) {
    return inputProblem(fmt::format("\"{}\" is not a ratio of sugar to water", text),
                        "two numbers above 0 with a colon between them, such as 3:2 or 1:0.63");
}

Problem tooThick(std::string_view text) {
    return inputProblem(fmt::format("\"{}\" is more than 80 % sugar, which no longer flows", text),
                        "at most 4:1 by mass; syrup for winter stores is 3:2 or 2:1");
}

// Density -------------------------------------------------------------------------------------------------------------

// CRC Handbook of Chemistry and Physics, aqueous sucrose at 20 C, kg/L at 0, 10, 20, 30, 40 %.
constexpr std::array<double, 5> thinRows{waterDensityKgPerL, 1.0381, 1.0810, 1.1270, 1.1765};

double thinDensity(double massPercent) {
    const double position = massPercent / 10.0;
    double density = 0;
    for (std::size_t row = 0; row < thinRows.size(); ++row) {
        double weight = 1;
        for (std::size_t other = 0; other < thinRows.size(); ++other) {
            if (other == row) continue;
            const auto here = static_cast<double>(row), there = static_cast<double>(other);
            weight *= (position - there) / (here - there);
        }
        density += weight * thinRows[row];
    }
    return density;
}

double usualDensity(double massPercent) {
    const double above = massPercent - 60.0;
    return 1.28643 + 0.0058848 * above + 1.9391e-5 * above * above;
}

double thickDensity(double massPercent) {
    constexpr double at78 = 1.3986, at80 = 1.4117;
    if (massPercent > 78) return at78 + (at80 - at78) * (massPercent - 78) / 2;
    const double at76 = usualDensity(76);
    return at76 + (at78 - at76) * (massPercent - 76) / 2;
}

// Solubility ----------------------------------------------------------------------------------------------------------

struct SaturationRow {
    double celsius;
    double massPercent;
};

// Mohos 2010, appendix 2.
constexpr std::array<SaturationRow, 10> saturationRows{{{0, 64.18},
                                                        {5, 64.87},
                                                        {10, 65.58},
                                                        {15, 66.33},
                                                        {20, 67.09},
                                                        {25, 67.89},
                                                        {30, 68.70},
                                                        {40, 70.42},
                                                        {60, 74.18},
                                                        {100, 82.97}}};

double saturationWithin(double celsius) {
    const auto above = std::find_if(saturationRows.begin() + 1, saturationRows.end() - 1,
                                    [=](const SaturationRow& row) { return celsius <= row.celsius; });
    const auto below = above - 1;
    const double share = (celsius - below->celsius) / (above->celsius - below->celsius);
    return below->massPercent + share * (above->massPercent - below->massPercent);
}

// Batches -------------------------------------------------------------------------------------------------------------

double massFractionOf(const Ratio& ratio) { return ratio.sugarPerWater / (1 + ratio.sugarPerWater); }

bool isAmount(double amount) { return std::isfinite(amount) && amount >= 0; }

Problem notAnAmount(double amount, std::string_view what) {
    return inputProblem(fmt::format("{} cannot be {}", what, amount), "0 or more");
}

} // namespace

Outcome<Ratio> parseRatio(std::string_view text, RatioBasis basis) {
    const auto colon = text.find(':');
    if (colon == std::string_view::npos) return notARatio(text);
    const auto left = trimmed(text.substr(0, colon)), right = trimmed(text.substr(colon + 1));
    const auto sugar = positiveNumber(left), water = positiveNumber(right);
    if (!sugar || !water) return notARatio(text);
    const double ratio = byMass(*sugar, *water, basis);
    if (!(ratio <= thickestSugarPerWater)) return tooThick(text);
    if (basis == RatioBasis::ByMass) return Ratio{ratio, fmt::format("{}:{}", left, right)};
    return Ratio{ratio, fmt::format("{:.2f}:1", ratio)};
}

Outcome<double> syrupDensity(double massPercent) {
    if (!(massPercent >= 0 && massPercent <= 80))
        return inputProblem(fmt::format("the density of {} % sugar is not known", massPercent),
                            "0 to 80 % sugar by mass");
    if (massPercent < 40) return thinDensity(massPercent);
    if (massPercent <= 76) return usualDensity(massPercent);
    return thickDensity(massPercent);
}

Outcome<Syrup> mixForSugar(Mass sugar, const Ratio& ratio) {
    if (!isAmount(sugar.value())) return notAnAmount(sugar.value(), "sugar");
    const double fraction = massFractionOf(ratio);
    const auto density = syrupDensity(100 * fraction);
    if (!density) return density.problems();
    const Mass water = sugar / ratio.sugarPerWater;
    Syrup syrup;
    syrup.sugar = sugar;
    syrup.water = litres(water.value() / waterDensityKgPerL);
    syrup.mass = sugar + water;
    syrup.volume = litres(syrup.mass.value() / *density);
    syrup.massPercent = 100 * fraction;
    syrup.densityKgPerL = *density;
    syrup.stores = sugar * storesPerKgSugar(fraction);
    return syrup;
}

Outcome<Syrup> mixForStores(Mass stores, const Ratio& ratio) {
    if (!isAmount(stores.value())) return notAnAmount(stores.value(), "stores");
    const double gained = ratio.sugarPerWater > 0 ? storesPerKgSugar(massFractionOf(ratio)) : 0;
    if (gained <= 0)
        return inputProblem(fmt::format("syrup of {} is too thin to become stores", ratio.printed),
                            "3:2 or 2:1 by mass for winter stores");
    return mixForSugar(stores / gained, ratio);
}

Outcome<Syrup> mixForVolume(Volume syrup, const Ratio& ratio) {
    if (!isAmount(syrup.value())) return notAnAmount(syrup.value(), "syrup");
    const double fraction = massFractionOf(ratio);
    const auto density = syrupDensity(100 * fraction);
    if (!density) return density.problems();
    return mixForSugar(kilograms(syrup.value() * *density * fraction), ratio);
}

double storesPerKgSugar(double massFraction) {
    require(massFraction > 0 && massFraction <= 1, "a sugar mass fraction lies in 0..1, not {}", massFraction);
    constexpr double ripeWater = 0.18, burntPerKgWater = 0.32;
    const double evaporated = (1 - massFraction) / massFraction - ripeWater / (1 - ripeWater);
    const double burnt = std::clamp(burntPerKgWater * evaporated, 0.0, 1.0);
    return (1 - burnt) / (1 - ripeWater);
}

double mayCrystallise(double massPercent, Temperature at) {
    require(massPercent > 0 && massPercent <= 100, "sugar by mass lies in 0..100 %, not {}", massPercent);
    const double saturated = saturationWithin(std::clamp(at.value(), 0.0, 100.0));
    const double sugarPerWater = saturated / (100 - saturated);
    const double dissolvedPerKg = sugarPerWater * (100 - massPercent) / massPercent;
    return std::max(0.0, 1000 * (1 - dissolvedPerKg));
}

} // namespace winterlarder::feeding
