// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/cluster.h"

#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace winterlarder::stores {

namespace {

constexpr double combsBeyond = 2;
constexpr double filledShare = 0.1;
constexpr double touching = 1e-9;

double halfOf(const hive::CombFormat& box) { return (box.combsPerBox - 1) / 2.0; }

bool hasBrood(const Comb& comb) { return comb.lookedAt() && comb.brood > 0; }

std::optional<int> longBox(const std::vector<hive::CombFormat>& boxes) {
    for (std::size_t i = 0; i < boxes.size(); ++i)
        if (boxes[i].combsPerBox >= hive::longHiveCombs) return static_cast<int>(i);
    return std::nullopt;
}

template <class Condition> std::set<int> boxesOf(const std::vector<Comb>& combs, Condition condition) {
    std::set<int> boxes;
    for (const Comb& comb : combs)
        if (condition(comb)) boxes.insert(comb.box);
    return boxes;
}

double meanBroodPlace(const std::vector<Comb>& combs, const std::vector<hive::CombFormat>& boxes) {
    double sum = 0, count = 0;
    for (const Comb& comb : combs) {
        if (!hasBrood(comb)) continue;
        sum += fromMiddle(comb, boxes);
        count += 1;
    }
    return sum / count;
}

std::set<int> boxesWithoutBrood(const std::vector<Comb>& combs, std::optional<int> longOne) {
    if (longOne) return {*longOne};
    std::set<int> nest = boxesOf(combs, [](const Comb& comb) { return !comb.inSuper; });
    if (nest.empty()) nest.insert(0);
    return nest;
}

//! Moves the cluster inside the walls.
double keptInside(double middle, double width, const hive::CombFormat& box) {
    const double room = std::max(0.0, (box.combsPerBox - width) / 2);
    return std::clamp(middle, -room, room);
}

//! Stores on one side of the cluster, all of them and the nearest two combs of it.
struct Side {
    Mass all{0}, near{0};
};

struct Beyond {
    double start = 0; //!< distance from the middle where the cluster ends
    const Cluster& cluster;
    double distance(double place) const { return std::abs(place - cluster.middle); }
    bool covers(double place) const { return distance(place) <= start + touching; }
    bool isNear(double place) const { return distance(place) <= start + combsBeyond + touching; }
};

//! Looks outward from the cluster along the long box, `step` -1 or +1: an empty comb or place, then stores.
struct Walk {
    bool gapBeforeStores = false, anyStores = false;
};
Walk walkOutward(const std::vector<const Comb*>& places, const hive::CombFormat& box, const Beyond& beyond, int step) {
    Walk walk;
    bool gap = false;
    const int count = static_cast<int>(places.size());
    for (int place = step > 0 ? 0 : count - 1; place >= 0 && place < count; place += step) {
        const double position = place - halfOf(box);
        if (beyond.covers(position) || (position - beyond.cluster.middle) * step < 0) continue;
        const Comb* comb = places[static_cast<std::size_t>(place)];
        if (comb == nullptr || holdsNothing(*comb)) gap = true;
        if (comb == nullptr || !holdsStores(*comb)) continue;
        walk.anyStores = true;
        walk.gapBeforeStores = walk.gapBeforeStores || gap;
    }
    return walk;
}

void lookAlongLongBox(ClusterReach& reach, const std::vector<Comb>& combs, const hive::CombFormat& box, int index,
                      const Beyond& beyond) {
    std::vector<const Comb*> places(static_cast<std::size_t>(box.combsPerBox), nullptr);
    for (const Comb& comb : combs)
        if (comb.box == index && comb.built > 0) places[static_cast<std::size_t>(comb.place)] = &comb;
    const Walk left = walkOutward(places, box, beyond, -1);
    const Walk right = walkOutward(places, box, beyond, +1);
    reach.gap = left.gapBeforeStores || right.gapBeforeStores;
    reach.bothSides = left.anyStores && right.anyStores;
}

} // namespace

bool holdsNothing(const Comb& comb) { return comb.built * (1 - comb.empty()) < filledShare; }

bool holdsStores(const Comb& comb) { return comb.built * (comb.capped + comb.open) >= filledShare; }

double fromMiddle(const Comb& comb, const std::vector<hive::CombFormat>& boxes) {
    require(comb.box >= 0 && comb.box < static_cast<int>(boxes.size()), "a comb in box {} of {}", comb.box,
            boxes.size());
    const hive::CombFormat& box = boxes[static_cast<std::size_t>(comb.box)];
    require(comb.place >= 0 && comb.place < box.combsPerBox, "a comb in place {} of {}", comb.place, box.combsPerBox);
    return comb.place - halfOf(box);
}

Cluster findCluster(const std::vector<Comb>& combs, const std::vector<hive::CombFormat>& boxes, double coveredCombs) {
    require(!boxes.empty(), "a hive without boxes has no cluster");
    const std::set<int> withBrood = boxesOf(combs, hasBrood);
    const auto longOne = longBox(boxes);
    const std::set<int> home = withBrood.empty() ? boxesWithoutBrood(combs, longOne) : withBrood;
    const hive::CombFormat& lowest = boxes[static_cast<std::size_t>(*home.begin())];

    Cluster cluster;
    cluster.lowestBox = *home.begin();
    cluster.seen = !withBrood.empty();
    cluster.width = std::max(1.0, coveredCombs / static_cast<double>(home.size()));
    double middle = 0;
    if (cluster.seen) middle = meanBroodPlace(combs, boxes);
    else if (longOne) middle = cluster.width / 2 - 0.5 - halfOf(lowest);
    cluster.middle = keptInside(middle, cluster.width, lowest);
    return cluster;
}

std::optional<ClusterReach> clusterReach(const std::vector<Comb>& combs, const std::vector<hive::CombFormat>& boxes,
                                         double coveredCombs, double openFactor) {
    const auto stores = storesOfCombs(combs, openFactor);
    if (!stores) return std::nullopt;
    const Cluster cluster = findCluster(combs, boxes, coveredCombs);
    const Beyond beyond{cluster.width / 2, cluster};
    ClusterReach reach;
    Side left, right;
    Mass all{0};
    for (std::size_t i = 0; i < combs.size(); ++i) {
        const double place = fromMiddle(combs[i], boxes);
        const Mass honey = (*stores)[i].total();
        all += honey;
        if (combs[i].box < cluster.lowestBox) continue;
        if (beyond.covers(place)) {
            reach.within += honey;
            continue;
        }
        Side& side = place < cluster.middle ? left : right;
        side.all += honey;
        if (beyond.isNear(place)) side.near += honey;
    }
    reach.within += left.all > right.all ? left.near : right.near;
    reach.beyond = all - reach.within;
    if (const auto longOne = longBox(boxes))
        lookAlongLongBox(reach, *withUnseenFilled(combs), boxes[static_cast<std::size_t>(*longOne)], *longOne, beyond);
    return reach;
}

} // namespace winterlarder::stores
