// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/weighing.h"

#include "stores/bees.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::stores {

namespace {

constexpr Mass broodPerArea = grams(120);   // per dm2 of comb, both faces
constexpr Mass beeBreadPerFace = grams(95); // per dm2 of one face
constexpr double usualShareOfComb = 0.6;
constexpr int usualCombsOfLongHive = 10;

EvidenceKind evidenceOf(WeighingKind kind) {
    switch (kind) {
    case WeighingKind::Scale: return EvidenceKind::Scale;
    case WeighingKind::TwoSidedLift: return EvidenceKind::TwoSidedLift;
    case WeighingKind::OneSidedLift: break;
    }
    return EvidenceKind::OneSidedLift;
}

Mass grossOf(WeighingKind kind, Mass reading) {
    return kind == WeighingKind::TwoSidedLift ? reading / twoSidesRead : reading;
}

//! Error of the lifting alone, on top of the scale's and the tare's.
SplitSd liftSd(WeighingKind kind, Mass gross, bool longHive, const ModelConstants& constants) {
    switch (kind) {
    case WeighingKind::Scale: return {};
    case WeighingKind::TwoSidedLift: return {kilograms(0), kilograms(constants.liftTwoSidesSd)};
    case WeighingKind::OneSidedLift: break;
    }
    return splitOneSideSd(gross, longHive, constants);
}

SplitSd splitByShare(Mass sd, const ModelConstants& constants) {
    return {sd * std::sqrt(constants.lastingErrorShare), sd * std::sqrt(1 - constants.lastingErrorShare)};
}

} // namespace

Mass scaleSd(const Tare& tare) { return std::max(tare.sd, weighedTareSd); }

SplitSd splitTareSd(const Tare& tare, const ModelConstants& constants) {
    const double whole = (tare.sd > kilograms(0) ? tare.sd : weighedTareSd).value(),
                 fresh = std::min(whole, constants.scaleReadingSd);
    return {kilograms(std::sqrt(whole * whole - fresh * fresh)), kilograms(fresh)};
}

SplitSd splitOneSideSd(Mass gross, bool longHive, const ModelConstants& constants) {
    return splitByShare(gross * (longHive ? constants.liftOneSideLongHiveSd : constants.liftOneSideSd), constants);
}

SplitSd splitHeftSd(Mass standsFor, const ModelConstants& constants) {
    return splitByShare(standsFor * constants.heftSd, constants);
}

Evidence evidenceOfWeighing(WeighingKind kind, Mass reading, const HiveLoad& load, bool longHive,
                            const ModelConstants& constants, Date date) {
    const Mass gross = grossOf(kind, reading);
    const Mass notStores = load.tare.mass + load.beeMass * load.bees.count + broodMass(load.broodCells) +
                           load.beeBread + load.waxNotInTare;
    const SplitSd lift = liftSd(kind, gross, longHive, constants);
    const double sd = std::hypot(scaleSd(load.tare).value(), lift.lasting.value(), lift.fresh.value());
    Evidence evidence{evidenceOf(kind), date, gross - notStores, 0, kilograms(sd)};
    evidence.tareSd = splitTareSd(load.tare, constants).lasting;
    evidence.oneSideSd = lift.lasting;
    return evidence;
}

Mass broodMass(BeeCount cells) { return broodPerArea * (cells.count / (facesPerComb * cellsPerSquareDecimetre)); }

std::optional<Mass> beeBreadOnCombs(const std::vector<Comb>& combs) {
    const auto filled = withUnseenFilled(combs);
    if (!filled || superAlone(combs)) return std::nullopt;
    Mass beeBread{0};
    for (const Comb& comb : *filled) beeBread += beeBreadPerFace * (comb.pollen * areaOf(comb).value() * facesPerComb);
    return beeBread > kilograms(0) ? std::optional(beeBread) : std::nullopt;
}

double heftFactor(HeftWord word) {
    switch (word) {
    case HeftWord::Light: return 0.5;
    case HeftWord::Fair: return 0.9;
    case HeftWord::Heavy: break;
    }
    return 1.3;
}

double heftShare(HeftWord word, const DecisionConstants& rules) {
    switch (word) {
    case HeftWord::Light: return rules.heftLight;
    case HeftWord::Fair: return rules.heftFair;
    case HeftWord::Heavy: break;
    }
    return rules.heftHeavy;
}

HeftWord heftNearest(double share, const DecisionConstants& rules) {
    if (share < std::sqrt(rules.heftLight * rules.heftFair)) return HeftWord::Light;
    return share < std::sqrt(rules.heftFair * rules.heftHeavy) ? HeftWord::Fair : HeftWord::Heavy;
}

Mass usualWinterStores(const std::vector<hive::CombFormat>& boxes) {
    Mass usual{0};
    for (const hive::CombFormat& box : boxes) {
        const int combs = box.combsPerBox >= hive::longHiveCombs ? usualCombsOfLongHive : box.combsPerBox;
        usual += quickFullComb(box) * (usualShareOfComb * combs);
    }
    return usual;
}

Evidence evidenceOfHeft(double heftFactor, Mass usualStores, const ModelConstants& constants, Date date) {
    Evidence evidence{EvidenceKind::Heft, date, usualStores * heftFactor, constants.heftSd, kilograms(0)};
    evidence.heftSd = splitHeftSd(kilograms(1), constants).lasting.value();
    return evidence;
}

} // namespace winterlarder::stores
