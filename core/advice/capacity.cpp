// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/capacity.h"

#include "advice/reserve.h"
#include "stores/bees.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

struct CombSum {
    double honeyKg = 0;
    double faceDm2 = 0;
};

void add(CombSum& sum, const stores::Comb& comb) {
    sum.honeyKg += stores::capacityOf(comb).value();
    sum.faceDm2 += stores::areaOf(comb).value();
}

CombSum everyPlace(const ColonyQuestion& q, bool supersStay) {
    CombSum sum;
    for (std::size_t box = 0; box < q.boxes.size(); ++box) {
        if (!supersStay && isSuper(q, static_cast<int>(box))) continue;
        for (int place = 0; place < q.boxes[box].combsPerBox; ++place)
            add(sum, {q.boxes[box], static_cast<int>(box), place});
    }
    return sum;
}

CombSum combsThatStay(const ColonyQuestion& q) {
    const bool supersStay = supersCount(q);
    if (q.combs.empty()) return everyPlace(q, supersStay);
    CombSum sum;
    for (const auto& comb : q.combs)
        if (supersStay || !comb.inSuper) add(sum, comb);
    return sum;
}

} // namespace

Mass capacityOf(const AdviceBasis& r) {
    const CombSum all = combsThatStay(r.question);
    const Mass joined = r.question.joined ? r.question.joined->capacity : kilograms(0);
    if (all.faceDm2 <= 0) return joined;
    const double brood = r.ensemble.means(std::min(r.target.day, r.ensemble.lastDay())).broodCells;
    const double underBrood =
        brood / (stores::facesPerComb * stores::cellsPerSquareDecimetre) * all.honeyKg / all.faceDm2;
    return joined + kilograms(std::max(0.0, r.rules().capacityShare * all.honeyKg - underBrood));
}

Mass levelFor(const AdviceBasis& r) { return std::max(kilograms(0), r.stores() - r.target.netLoss); }

bool isFull(const AdviceBasis& r) { return r.level >= r.capacity * r.rules().fullShare; }

Mass oneFullComb(const ColonyQuestion& question) { return stores::quickFullComb(question.boxes.front()); }

} // namespace winterlarder::advice
