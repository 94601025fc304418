// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/outer_combs.h"

#include "advice/reserve.h"
#include "stores/cluster.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::advice {

namespace {

// The highest box that is no super.
int topBroodBox(const ColonyQuestion& q) {
    for (int box = static_cast<int>(q.boxes.size()) - 1; box > 0; --box)
        if (!isSuper(q, box)) return box;
    return 0;
}

// The highest box with brood; nothing where none was seen.
std::optional<int> highestBroodBox(const ColonyQuestion& q) {
    std::optional<int> highest;
    for (const auto& comb : q.combs)
        if (comb.lookedAt() && comb.brood > 0) highest = std::max(highest.value_or(comb.box), comb.box);
    return highest;
}

bool fullOnTop(const ColonyQuestion& q, const stores::Comb& comb) {
    return !comb.inSuper && comb.brood <= 0 && comb.box == topBroodBox(q) &&
           comb.capped + comb.open >= q.decisions.harvestCombFull;
}

// Whether it hangs between the outermost combs with brood, seen from above.
bool overBrood(const ColonyQuestion& q, const stores::Comb& comb) {
    const double place = stores::fromMiddle(comb, q.boxes);
    bool left = false, right = false;
    for (const auto& other : q.combs) {
        if (!other.lookedAt() || other.brood <= 0) continue;
        left = left || stores::fromMiddle(other, q.boxes) <= place;
        right = right || stores::fromMiddle(other, q.boxes) >= place;
    }
    return left && right;
}

} // namespace

bool mayGoToBees(const ColonyQuestion& q, const stores::Comb& comb) {
    const auto nest = highestBroodBox(q);
    if (!nest || comb.box <= *nest) return isFullOuterComb(q, comb);
    return fullOnTop(q, comb) && (comb.box > *nest + 1 || !overBrood(q, comb));
}

bool isFullOuterComb(const ColonyQuestion& q, const stores::Comb& comb) {
    if (!fullOnTop(q, comb)) return false;
    const auto nest = highestBroodBox(q);
    if (nest && comb.box > *nest + 1) return true;
    const bool mayLiveIn = !nest || comb.box <= *nest; // nobody saw where they sit: it may be here
    const auto cluster = stores::findCluster(q.combs, q.boxes, q.coveredCombs);
    return std::abs(stores::fromMiddle(comb, q.boxes) - cluster.middle) > cluster.width / 2 + (mayLiveIn ? 1 : 0);
}

} // namespace winterlarder::advice
