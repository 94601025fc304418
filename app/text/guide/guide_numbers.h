// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "feeding/syrup.h"
#include "stores/tare.h"
#include "text/guide/guide.h"

//! The numbers of the guide, each from the function of the core that answers are made with. Tested: tests/guide/words_test.cpp.
namespace winterlarder::text {

//! The warmth a hive may be opened in [degC], as rules rule-151 and rule-154 write it: for a full look, for half a minute, the lid alone.
inline constexpr const char *fullLookFrom = "15", *briefLookFrom = "10", *lidFrom = "7";

inline constexpr int guideEighths = 8; //!< fields a comb's face is cut into to judge it

Mass capped(const GuideHive& hive, double share); //!< honey of a comb, both faces capped to this share
Mass oneField(const GuideHive& hive);             //!< of one eighth of one face
Mass cappedPalm(const GuideHive& hive);           //!< of a square decimetre capped on both faces
BeeCount beesOfASeam(const GuideHive& hive);
double combSd(int facesSeen, const ModelConstants& constants); //!< relative, of a comb judged by eye

//! Two readings of an example and the weight they make; a hive of about fifty kilograms.
struct BothSides {
    Mass left, right, whole;
};
BothSides exampleLift();
Mass offByOneSide(Mass gross, const ModelConstants& constants); //!< one standard deviation
//! One box of the hive with drawn combs, floor and lids.
stores::Tare emptyHive(const GuideHive& hive);

//! Recipes of the guide: 1:1, 3:2 and 2:1, each for as much sugar as is easily weighed in the units of the reader.
struct Recipe {
    feeding::Ratio ratio;
    feeding::Syrup syrup;
};
std::vector<Recipe> recipes(UnitSystem system);
double twoCupsToOne(); //!< kg of sugar to a kg of water where two cups of sugar are poured on one of water

} // namespace winterlarder::text
