// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"
#include "support/outcome.h"

#include <string>
#include <string_view>

namespace winterlarder::feeding {

inline constexpr double waterDensityKgPerL = 0.99821; //!< at 20 C
inline constexpr double sugarBulkKgPerL = 0.845;      //!< granulated sugar, poured

//! What a ratio is counted in: kg to kg; litres of sugar to litres of water; kg of sugar to litres of water.
enum class RatioBasis { ByMass, ByVolume, KgPerL };

//! Sugar to water by mass. "3:2" by mass is 1.5; the printed form is kept for the words.
struct Ratio {
    double sugarPerWater = 1.5; //!< kg sugar per kg water
    std::string printed = "3:2";
};
//! Reads "A:B", decimals allowed ("1:0.63"), both above 0. Problem: what is wrong, what would be right.
Outcome<Ratio> parseRatio(std::string_view text, RatioBasis basis = RatioBasis::ByMass);

//! Density of sucrose syrup at 20 C [kg/L]: 1.28643 + 0.0058848 (w-60) + 1.9391e-5 (w-60)^2 for 40-76 % (within 0.0001 of the CRC table);
//! below 40 % and up to 80 % linear in the CRC table. Problem outside 0-80 %.
Outcome<double> syrupDensity(double massPercent);

//! A batch of syrup.
struct Syrup {
    Mass sugar;
    Volume water;
    Mass mass;
    Volume volume;
    double massPercent = 0;
    double densityKgPerL = 0;
    Mass stores; //!< gained once ripened, see storesPerKgSugar
};
Outcome<Syrup> mixForSugar(Mass sugar, const Ratio& ratio);
Outcome<Syrup> mixForStores(Mass stores, const Ratio& ratio);
Outcome<Syrup> mixForVolume(Volume syrup, const Ratio& ratio);

//! kg of ripe stores per kg of sugar fed at sugar mass fraction w: with m = 0.18 water of ripe stores and k = 0.32,
//! e = (1-w)/w - m/(1-m); L = max(0, k e); (1 - L) / (1 - m). Fit to Curth (Hohenheim 1981). Ripening only.
double storesPerKgSugar(double massFraction);
inline constexpr double storesPerKgFondant = 0.85;  //!< 0.78-0.96, low on purpose (judgement)
inline constexpr double storesPerKgDrySugar = 1.05; //!< 1.0-1.1, emergency only (common practice)

//! Saturation of sucrose in water [mass %], linear between the rows of Mohos 2010 (0-100 C); problem outside.
Outcome<double> saturation(Temperature at);
//! Grams per kg of sugar that may drop out of a syrup cooled to `at` (0 where it stays dissolved).
double mayCrystallise(double massPercent, Temperature at);

} // namespace winterlarder::feeding
