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
//! The most sugar a ratio may ask for [kg per kg water]: 80 %, where the density table ends.
inline constexpr double thickestSugarPerWater = 4.0;

//! Reads "A:B", decimals allowed ("1:0.63"), both above 0, at most 4:1 by mass. `printed` is always the ratio by mass: as
//! written where that is what was written, else "1.69:1". Problem: what is wrong, what would be right.
Outcome<Ratio> parseRatio(std::string_view text, RatioBasis basis = RatioBasis::ByMass);

//! Density of sucrose syrup at 20 C [kg/L]: 1.28643 + 0.0058848 (w-60) + 1.9391e-5 (w-60)^2 for 40-76 % (within 0.0001 of
//! the CRC Handbook table); below 40 % the curve through that table's rows at 0, 10, 20, 30, 40 % (straight lines would miss
//! its rows at 32 and 34 % by 0.0004); 76-80 % straight between its rows. Problem outside 0-80 %.
//! Tested: tests/feeding/syrup_test.cpp against every row of the table.
Outcome<double> syrupDensity(double massPercent);

//! A batch of syrup at 20 C. Volumes do not add: litres of syrup are water + 0.63 x kg sugar within 1 %.
struct Syrup {
    Mass sugar{0};
    Volume water{0};
    Mass mass{0};
    Volume volume{0};
    double massPercent = 0;
    double densityKgPerL = 0;
    Mass stores{0}; //!< gained once ripened, see storesPerKgSugar
};
//! The batch from one of its amounts. Problems: an amount below 0 or not finite, a ratio outside what syrupDensity knows;
//! for stores, a syrup so thin that ripening eats all of its sugar.
Outcome<Syrup> mixForSugar(Mass sugar, const Ratio& ratio);
Outcome<Syrup> mixForStores(Mass stores, const Ratio& ratio);
Outcome<Syrup> mixForVolume(Volume syrup, const Ratio& ratio);

//! kg of ripe stores per kg of sugar fed at sugar mass fraction w: with m = 0.18 water of ripe stores and k = 0.32,
//! e = (1-w)/w - m/(1-m) kg of water driven off; L = k e the share burnt doing it, 0..1; (1 - L) / (1 - m).
//! k is a fit to Curth (Hohenheim 1981; 0.15-0.45 fits as well). Ripening only: what the colony eats meanwhile is in the winter
//! model. massFraction above 0, at most 1. Tested: tests/feeding/syrup_test.cpp.
double storesPerKgSugar(double massFraction);
inline constexpr double storesPerKgFondant = 0.85;  //!< 0.78-0.96, low on purpose (judgement)
inline constexpr double storesPerKgDrySugar = 1.05; //!< 1.0-1.1, emergency only (common practice)

//! Grams per kg of sugar that may drop out of a syrup cooled to `at`, seeded and at equilibrium (0 where it stays dissolved): beyond
//! the saturation of sucrose in water, linear between the rows of Mohos 2010.
//! Below 0 C taken as at 0 C, above 100 C as at 100 C. massPercent above 0, at most 100.
double mayCrystallise(double massPercent, Temperature at);

} // namespace winterlarder::feeding
