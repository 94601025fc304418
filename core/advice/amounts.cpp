// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/amounts.h"

#include <cmath>

namespace winterlarder::advice {

namespace {

constexpr int mostSteps = 20000; // 2 t: beyond any hive, so a search always ends

Mass steps(int count) { return kilograms(count / 10.0); }

bool safeWith(const std::vector<double>& largestLoss, const Wish& wish, Mass stores) {
    return winter::shareShort(largestLoss, stores, wish.sd, wish.reserve, true).share <= wish.shortRisk;
}

// First count in 0..mostSteps for which `holds` (false, then true); mostSteps where it never does.
template <class Predicate>
int firstThat(Predicate holds) {
    int low = -1, high = 1;
    while (high < mostSteps && !holds(high)) {
        low = high;
        high *= 2;
    }
    high = std::min(high, mostSteps);
    while (high - low > 1) {
        const int middle = (low + high) / 2;
        (holds(middle) ? high : low) = middle;
    }
    return high;
}

} // namespace

Mass spareOf(const std::vector<double>& largestLoss, const Wish& wish) {
    const int all = static_cast<int>(std::floor(wish.mean.value() * 10 + 1e-9));
    const auto unsafe = [&](int count) {
        return count > all || !safeWith(largestLoss, wish, wish.mean - steps(count));
    };
    return steps(std::max(0, firstThat(unsafe) - 1));
}

Mass missingOf(const std::vector<double>& largestLoss, const Wish& wish) {
    return steps(firstThat([&](int count) { return safeWith(largestLoss, wish, wish.mean + steps(count)); }));
}

Verdict verdictOf(const Amounts& amounts, bool mayHarvest) {
    if (amounts.missing.value() >= leastAmountKg) return Verdict::Feed;
    if (mayHarvest && amounts.spare.value() >= leastAmountKg) return Verdict::Harvest;
    return Verdict::Leave;
}

} // namespace winterlarder::advice
