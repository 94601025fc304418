// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/guide/guide_numbers.h"

#include "stores/bees.h"
#include "stores/weighing.h"

namespace winterlarder::text {

Mass capped(const GuideHive& hive, double share) {
    return hive::fullComb(hive.format, hive::phiFor(hive.format.pitch, false)) * share;
}

Mass oneField(const GuideHive& hive) { return capped(hive, 1.0 / guideEighths) / stores::facesPerComb; }

Mass cappedPalm(const GuideHive& hive) {
    return hive::honeyPerSquareDecimetre(hive.format.pitch, hive::phiFor(hive.format.pitch, false));
}

BeeCount beesOfASeam(const GuideHive& hive) { return stores::beesFrom(stores::BeesSeen::Seams, 1, {}, hive.format); }

double combSd(int facesSeen, const ModelConstants& constants) {
    stores::Comb comb;
    comb.facesSeen = facesSeen;
    return stores::relativeSdOf(comb, stores::combSpreads(constants));
}

BothSides exampleLift() {
    const Mass left = kilograms(23.5), right = kilograms(26.5);
    return {left, right, (left + right) / stores::twoSidesRead};
}

Mass offByOneSide(Mass gross, const ModelConstants& constants) { return gross * constants.liftOneSideSd; }

stores::Tare emptyHive(const GuideHive& hive) { return stores::tareFromParts({.boxes = {hive.format}, .combs = {}}); }

std::vector<Recipe> recipes(UnitSystem system) {
    const Mass sugar = system == UnitSystem::Metric ? kilograms(5) : massOf(10, MassUnit::Pound);
    std::vector<Recipe> all;
    for (const char* ratio : {"1:1", "3:2", "2:1"}) {
        const auto read = *feeding::parseRatio(ratio);
        all.push_back({read, *feeding::mixForSugar(sugar, read)});
    }
    return all;
}

double twoCupsToOne() { return feeding::parseRatio("2:1", feeding::RatioBasis::ByVolume)->sugarPerWater; }

} // namespace winterlarder::text
