// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/bees.h"
#include "stores/harvest.h"
#include "stores/room.h"
#include "tracking/answer_parts.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

constexpr int springIsNearDays = 45;
constexpr int coldSpellDays = 14;
constexpr int broodGrowsDays = 30;

// Food a day around first forage, mean over all winters [kg].
double useAtForage(const FollowBasis& r) {
    const auto& ensemble = *r.tracked.ensemble;
    const SeasonDay day = std::clamp(ensemble.medianForage(), ensemble.firstDay(), ensemble.lastDay());
    return ensemble.means(day).useG / 1000;
}

std::optional<Mass> queenRoom(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    double area = 0, capacity = 0;
    for (const auto& comb : q.combs) {
        if (comb.inSuper) continue;
        area += stores::areaOf(comb).value();
        capacity += stores::capacityOf(comb).value();
    }
    if (area <= 0) return std::nullopt;
    const auto& ensemble = *r.tracked.ensemble;
    const SeasonDay later =
        std::clamp(ensemble.medianForage() + broodGrowsDays, ensemble.firstDay(), ensemble.lastDay());
    const double broodArea = ensemble.means(later).broodCells / (2 * stores::cellsPerSquareDecimetre);
    const double room = capacity * std::max(0.0, 1 - stores::clusterShare - broodArea / area);
    const double over = r.following.now.atForage.typical.value() - room;
    return over > 0 ? std::optional(kilograms(over)) : std::nullopt;
}

} // namespace

std::optional<SpringAdvice> springAdvice(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    const auto& forage = r.following.now.forage;
    if (q.today < forage.typical - springIsNearDays) return std::nullopt;
    SpringAdvice advice;
    advice.carries = forage;
    advice.leave = kilograms(std::max(q.reserve.value(), coldSpellDays * useAtForage(r)));
    advice.mayTake = !q.treated;
    if (r.following.state != FollowState::MoreThanNeeded || r.following.fallsShort) return advice;
    const auto above = [&](Mass stores) { return std::max(kilograms(0), stores - advice.leave); };
    const auto& left = r.following.now.atForage;
    advice.surplus = {above(left.low), above(left.typical), above(left.high)};
    advice.queenRoom = queenRoom(r);
    if (advice.mayTake && !q.combs.empty())
        for (const auto& comb : stores::takeUpTo(
                 stores::harvestOrder(q.combs, q.boxes, q.coveredCombs, stores::openFactor(false)), advice.surplus.low))
            advice.combs.push_back(comb.position);
    return advice;
}

} // namespace winterlarder::tracking
