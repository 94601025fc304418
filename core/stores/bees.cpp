// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/bees.h"

#include "numerics/normal_law.h"
#include "stores/cluster.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::stores {

namespace {

constexpr double combsToSpare = 3;

struct FacesOfPart {
    double combs = 0;
    double beesPerComb = 0; //!< both faces; mean weighted by what is built, for bees hang where there is comb
};

FacesOfPart partOf(const std::vector<Comb>& combs, bool inSuper) {
    FacesOfPart part;
    double built = 0;
    for (const Comb& comb : combs) {
        if (comb.inSuper != inSuper || comb.built <= 0) continue;
        part.beesPerComb += comb.built * facesPerComb * comb.format.beesPerSide.count * comb.built;
        part.combs += 1;
        built += comb.built;
    }
    if (built > 0) part.beesPerComb /= built;
    return part;
}

//! The combs the cluster fills first, and those it fills after them.
struct Room {
    FacesOfPart first;
    double beesPerCombBeyond = 0;
};

Room roomFor(const std::vector<Comb>& combs, const hive::CombFormat& firstBox) {
    const FacesOfPart nest = partOf(combs, false);
    const FacesOfPart supers = partOf(combs, true);
    if (nest.beesPerComb > 0) return {nest, supers.beesPerComb > 0 ? supers.beesPerComb : nest.beesPerComb};
    if (supers.beesPerComb > 0) return {supers, supers.beesPerComb};
    const double perComb = facesPerComb * firstBox.beesPerSide.count;
    require(perComb > 0, "a comb format without bees on its faces");
    return {{1, perComb}, perComb};
}

} // namespace

double defaultLogSd(BeesSeen how, const ModelConstants& constants) {
    switch (how) {
    case BeesSeen::Counted: return constants.beesCountedSd;
    case BeesSeen::CoveredCombs: return constants.beesSd;
    case BeesSeen::Seams: break;
    }
    return constants.beesSeamsSd;
}

BeeCount beesOnCombs(double coveredCombs, const std::vector<Comb>& combs, const hive::CombFormat& firstBox) {
    require(coveredCombs >= 0, "{} combs cannot be covered", coveredCombs);
    const Room room = roomFor(combs, firstBox);
    const double inFirst = std::min(coveredCombs, room.first.combs);
    return {inFirst * room.first.beesPerComb + (coveredCombs - inFirst) * room.beesPerCombBeyond};
}

double coveredCombsOf(BeeCount bees, const std::vector<Comb>& combs, const hive::CombFormat& firstBox) {
    require(bees.count >= 0, "{} bees cannot cover combs", bees.count);
    const Room room = roomFor(combs, firstBox);
    const double firstHolds = room.first.combs * room.first.beesPerComb;
    if (bees.count <= firstHolds) return bees.count / room.first.beesPerComb;
    return room.first.combs + (bees.count - firstHolds) / room.beesPerCombBeyond;
}

BeeCount beesFrom(BeesSeen how, double amount, const std::vector<Comb>& combs, const hive::CombFormat& firstBox) {
    return how == BeesSeen::Counted ? BeeCount{amount} : beesOnCombs(amount, combs, firstBox);
}

Spread<BeeCount> spreadOf(BeeCount bees, double logSd) {
    const double reach = std::exp(tenthPercentile * logSd);
    return {{bees.count / reach}, bees, {bees.count * reach}};
}

std::optional<BeeCount> broodOnCombs(const std::vector<Comb>& combs) {
    const bool said = std::any_of(combs.begin(), combs.end(), [](const Comb& comb) { return comb.broodSaid; });
    const auto filled = withUnseenFilled(combs);
    if (!said || !filled || superAlone(combs)) return std::nullopt;
    double cells = 0;
    for (const Comb& comb : *filled)
        cells += comb.brood * areaOf(comb).value() * facesPerComb * cellsPerSquareDecimetre;
    return BeeCount{cells};
}

int emptyCombs(const std::vector<Comb>& combs) {
    return static_cast<int>(std::count_if(combs.begin(), combs.end(), [](const Comb& comb) {
        return comb.built > 0 && comb.lookedAt() && holdsNothing(comb);
    }));
}

bool nestTooWide(const std::vector<Comb>& combs, double coveredCombs) {
    const auto built = std::count_if(combs.begin(), combs.end(), [](const Comb& comb) { return comb.built > 0; });
    return static_cast<double>(built) > coveredCombs + combsToSpare && emptyCombs(combs) > combsToSpare;
}

} // namespace winterlarder::stores
