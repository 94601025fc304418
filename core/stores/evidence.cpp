// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/evidence.h"

#include "numerics/normal_law.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::stores {

namespace {

constexpr double spreadStep = 0.005; // spreads are rounded to half a percentage point
constexpr double finestCount = 0.25; // of a comb

struct MeanShares {
    double capped = 0, open = 0, brood = 0, pollen = 0;
    int combs = 0;
};

//! Mean over the looked-at combs of one box; of all boxes where none is named.
MeanShares meanShares(const std::vector<Comb>& combs, std::optional<int> box) {
    MeanShares mean;
    for (const Comb& comb : combs) {
        if (!comb.lookedAt() || (box && comb.box != *box)) continue;
        mean.capped += comb.capped;
        mean.open += comb.open;
        mean.brood += comb.brood;
        mean.pollen += comb.pollen;
        ++mean.combs;
    }
    if (mean.combs == 0) return mean;
    mean.capped /= mean.combs;
    mean.open /= mean.combs;
    mean.brood /= mean.combs;
    mean.pollen /= mean.combs;
    return mean;
}

void fill(Comb& comb, const MeanShares& mean) {
    comb.capped = mean.capped;
    comb.open = mean.open;
    comb.brood = mean.brood;
    comb.pollen = mean.pollen;
}

//! Mean SD over the kilograms; over the combs where there are none.
double visitRelativeSd(const std::vector<Comb>& combs, const std::vector<CombStores>& stores,
                       const CombSpreads& spreads) {
    double kilogramsSd = 0, total = 0, plain = 0;
    for (std::size_t i = 0; i < combs.size(); ++i) {
        const double kg = stores[i].total().value(), relativeSd = relativeSdOf(combs[i], spreads);
        kilogramsSd += kg * relativeSd;
        total += kg;
        plain += relativeSd;
    }
    return total > 0 ? kilogramsSd / total : plain / static_cast<double>(combs.size());
}

} // namespace

Area areaOf(const Comb& comb) { return hive::faceArea(comb.format.outline, comb.built); }

Mass capacityOf(const Comb& comb) {
    return hive::fullComb(comb.format, hive::phiFor(comb.format.pitch, comb.inSuper), comb.built);
}

std::optional<std::vector<Comb>> withUnseenFilled(const std::vector<Comb>& combs) {
    const MeanShares ofAll = meanShares(combs, std::nullopt);
    if (ofAll.combs == 0) return std::nullopt;
    std::vector<Comb> filled = combs;
    for (Comb& comb : filled) {
        if (comb.lookedAt()) continue;
        const MeanShares ofBox = meanShares(combs, comb.box);
        fill(comb, ofBox.combs > 0 ? ofBox : ofAll);
    }
    return filled;
}

bool superAlone(const std::vector<Comb>& combs) {
    bool nest = false, nestSeen = false, superSeen = false;
    for (const Comb& comb : combs) {
        nest = nest || !comb.inSuper;
        (comb.inSuper ? superSeen : nestSeen) |= comb.lookedAt();
    }
    return nest && !nestSeen && superSeen;
}

double openFactor(bool freshlyFilled) { return freshlyFilled ? 0.25 : 0.65; }

std::optional<std::vector<CombStores>> storesOfCombs(const std::vector<Comb>& combs, double openFactor) {
    const auto filled = withUnseenFilled(combs);
    if (!filled) return std::nullopt;
    std::vector<CombStores> stores;
    stores.reserve(filled->size());
    for (const Comb& comb : *filled) {
        const Mass capacity = capacityOf(comb);
        stores.push_back({capacity * comb.capped, capacity * comb.open * openFactor});
    }
    return stores;
}

std::string idOf(EvidenceKind kind) {
    switch (kind) {
    case EvidenceKind::Combs: return "combs";
    case EvidenceKind::Heft: return "heft";
    case EvidenceKind::OneSidedLift: return "one-sided lift";
    case EvidenceKind::QuickCount: return "quick count";
    case EvidenceKind::Scale: return "scale";
    case EvidenceKind::TwoSidedLift: break;
    }
    return "two-sided lift";
}

bool isWeighed(EvidenceKind kind) {
    return kind == EvidenceKind::Scale || kind == EvidenceKind::OneSidedLift || kind == EvidenceKind::TwoSidedLift;
}

CombSpreads combSpreads(const ModelConstants& constants) {
    return {constants.combAreaSd,
            constants.photographAreaSd,
            constants.combFillSd,
            constants.unseenFaceSd,
            constants.combUnseenSd,
            constants.quickCountSd,
            kilograms(constants.combRoundingSd)};
}

double relativeSdOf(const Comb& comb, const CombSpreads& spreads) {
    if (!comb.lookedAt() || comb.throughWindow) return spreads.unseen;
    const double otherFace = comb.facesSeen == 1 ? spreads.unseenFace : 0;
    const double sd = std::hypot(comb.measured ? spreads.tracedArea : spreads.judgedArea, spreads.fill, otherFace);
    return spreadStep * std::round(sd / spreadStep);
}

Mass Evidence::sd(Mass at) const { return kilograms(std::hypot(relativeSd * at.value(), absoluteSd.value())); }

std::optional<Evidence> evidenceOfVisit(const std::vector<Comb>& combs, double openFactor, const CombSpreads& spreads,
                                        Date date) {
    const auto stores = storesOfCombs(combs, openFactor);
    if (!stores) return std::nullopt;
    Mass total{0};
    for (const CombStores& comb : *stores) total += comb.total();
    const Mass rounding = spreads.rounding * std::sqrt(static_cast<double>(stores->size()));
    return Evidence{EvidenceKind::Combs, date, total, visitRelativeSd(combs, *stores, spreads), rounding};
}

Mass quickFullComb(const hive::CombFormat& firstBox) { return hive::fullComb(firstBox, hive::phiQuickForm); }

Evidence evidenceOfCount(const QuickCount& count, Mass fullComb, double openFactor, const CombSpreads& spreads,
                         Date date) {
    require(count.full >= 0 && count.half >= 0, "a count of combs cannot be negative");
    require(count.cappedShare >= 0 && count.cappedShare <= 1, "capped share {} is not within 0..1", count.cappedShare);
    const double combs = count.full + count.half / 2;
    const Mass typical = fullComb * (combs * (count.cappedShare + (1 - count.cappedShare) * openFactor));
    const Mass uncounted = combs > 0 ? kilograms(0) : fullComb * finestCount;
    return {EvidenceKind::QuickCount, date, typical, spreads.counted, uncounted};
}

Spread<Mass> spreadOf(const CombStores& stores, const Comb& comb, const CombSpreads& spreads) {
    const double typical = stores.total().value();
    const double reach = tenthPercentile * std::hypot(typical * relativeSdOf(comb, spreads), spreads.rounding.value());
    return {kilograms(std::max(0.0, typical - reach)), kilograms(typical), kilograms(typical + reach)};
}

} // namespace winterlarder::stores
