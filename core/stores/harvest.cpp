// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/harvest.h"

#include "stores/cluster.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace winterlarder::stores {

namespace {

constexpr double wellCapped = 0.80;
constexpr double readingError = 1e-9;

double cappedShare(const Comb& comb) { return comb.capped / (comb.capped + comb.open); }

bool mayBeTaken(const Comb& comb) {
    if (!comb.lookedAt() || comb.built <= 0 || comb.fed || comb.oldNest || comb.brood > 0) return false;
    return comb.capped > 0 && cappedShare(comb) >= leastCapped - readingError;
}

struct Candidate {
    HarvestComb comb;
    double distance = 0;
    int box = 0;
};

bool takenBefore(const Candidate& a, const Candidate& b) {
    const auto rank = [](const Candidate& c) { return std::tuple(c.comb.inSuper, c.distance, c.box, c.comb.position); };
    return rank(a) > rank(b);
}

HarvestComb described(const Comb& comb, int position, Mass honey) {
    return {position, honey, !comb.broodSaid && !comb.inSuper, cappedShare(comb) < wellCapped - readingError,
            comb.inSuper};
}

} // namespace

std::vector<HarvestComb> harvestOrder(const std::vector<Comb>& combs, const std::vector<hive::CombFormat>& boxes,
                                      double coveredCombs, double openFactor) {
    const auto stores = storesOfCombs(combs, openFactor);
    if (!stores) return {};
    const Cluster cluster = findCluster(combs, boxes, coveredCombs);
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < combs.size(); ++i) {
        if (!mayBeTaken(combs[i])) continue;
        candidates.push_back({described(combs[i], static_cast<int>(i), (*stores)[i].total()),
                              std::abs(fromMiddle(combs[i], boxes) - cluster.middle), combs[i].box});
    }
    std::sort(candidates.begin(), candidates.end(), takenBefore);
    std::vector<HarvestComb> order;
    for (const Candidate& candidate : candidates) order.push_back(candidate.comb);
    return order;
}

std::vector<HarvestComb> takeUpTo(const std::vector<HarvestComb>& order, Mass limit) {
    std::vector<HarvestComb> taken;
    Mass sum{0};
    for (const HarvestComb& comb : order) {
        if (sum + comb.honey > limit + kilograms(readingError)) continue;
        sum += comb.honey;
        taken.push_back(comb);
    }
    return taken;
}

} // namespace winterlarder::stores
