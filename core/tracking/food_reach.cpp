// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/food_reach.h"

#include "stores/cluster.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace winterlarder::tracking {

namespace {

const Observation* lastCluster(const FollowQuestion& q) {
    const Observation* last = nullptr;
    for (const auto& seen : q.observations)
        if (seen.day <= q.today && std::holds_alternative<ClusterSeen>(seen.what) && (!last || seen.day >= last->day))
            last = &seen;
    return last;
}

// What the last glimpse of combs on or after a day showed.
std::optional<bool> storesInSight(const FollowQuestion& q, SeasonDay since) {
    std::optional<bool> stores;
    SeasonDay day = since;
    for (const auto& seen : q.observations) {
        const auto* comb = std::get_if<CombGlimpsed>(&seen.what);
        if (!comb || seen.day < day || seen.day > q.today || (seen.day > since && !comb->stores)) continue;
        stores = comb->stores, day = seen.day;
    }
    return stores;
}

bool fedSince(const FollowQuestion& q, SeasonDay day) {
    return std::any_of(q.steps.begin(), q.steps.end(), [&](const KnownStep& step) {
        return step.kind == KnownStep::Kind::Feed && step.day >= day && step.day <= q.today;
    });
}

struct Places {
    int first, last;
};

// Places of a box that can be reached: outwards from the cluster's until so many empty combs lie in a row.
Places reachedIn(const std::vector<const stores::Comb*>& box, Places cluster, int gapCombs) {
    const auto storesAt = [&](int place) {
        return std::any_of(box.begin(), box.end(), [&](const stores::Comb* comb) {
            return comb->place == place && stores::holdsStores(*comb);
        });
    };
    int most = cluster.last;
    for (const auto* comb : box) most = std::max(most, comb->place);
    Places reached = cluster;
    for (int place = cluster.last + 1, empty = 0; place <= most && empty < gapCombs; ++place)
        if (storesAt(place)) reached.last = place, empty = 0;
        else ++empty;
    for (int place = cluster.first - 1, empty = 0; place >= 0 && empty < gapCombs; --place)
        if (storesAt(place)) reached.first = place, empty = 0;
        else ++empty;
    return reached;
}

bool acrossAGap(const FollowQuestion& q, const ClusterSeen& cluster, Mass eaten) {
    if (!cluster.firstComb || !cluster.seams) return false;
    const auto touched = static_cast<std::size_t>(std::ceil(*cluster.seams)) + 1;
    const auto reach = reachOf(q.combs, *cluster.firstComb, touched, static_cast<int>(q.decisions.gapCombs));
    return reach && reach->beyond.value() > 0 && reach->within <= eaten;
}

} // namespace

std::optional<Reach> reachOf(const std::vector<stores::Comb>& combs, std::size_t first, std::size_t count,
                             int gapCombs) {
    const auto filled = stores::withUnseenFilled(combs);
    if (!filled || first >= filled->size() || count == 0) return std::nullopt;
    const int box = (*filled)[first].box, place = (*filled)[first].place;
    const Places cluster{place, place + static_cast<int>(count) - 1};
    const auto honey = stores::storesOfCombs(*filled, stores::openFactor(false));
    if (!honey) return std::nullopt;
    Reach reach;
    std::map<int, Places> reached;
    for (std::size_t i = 0; i < filled->size(); ++i) {
        const auto& comb = (*filled)[i];
        if (comb.box < box) continue;
        if (!reached.contains(comb.box)) {
            std::vector<const stores::Comb*> mates;
            for (const auto& other : *filled)
                if (other.box == comb.box) mates.push_back(&other);
            reached[comb.box] = reachedIn(mates, cluster, gapCombs);
        }
        const Places& places = reached[comb.box];
        const bool within = comb.place >= places.first && comb.place <= places.last;
        (within ? reach.within : reach.beyond) += (*honey)[i].total();
    }
    return reach;
}

std::optional<OutOfReach> foodOutOfReach(const FollowQuestion& q, Mass eaten) {
    const Observation* seen = lastCluster(q);
    if (!seen || fedSince(q, seen->day)) return std::nullopt;
    const auto inSight = storesInSight(q, seen->day);
    if (inSight) return *inSight ? std::nullopt : std::optional(OutOfReach{seen->date, false});
    const bool fedAfterTheList = fedSince(q, q.decided);
    if (fedAfterTheList || !acrossAGap(q, std::get<ClusterSeen>(seen->what), eaten)) return std::nullopt;
    return OutOfReach{seen->date, true};
}

} // namespace winterlarder::tracking
