// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/comb_edits.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace winterlarder::desk {

namespace {

const std::optional<double>& field(const book::CombRecord& comb, Zone zone) {
    switch (zone) {
    case Zone::Capped: return comb.capped;
    case Zone::Open: return comb.open;
    case Zone::Brood: return comb.brood;
    case Zone::BeeBread: return comb.pollen;
    }
    return comb.capped;
}

std::optional<double>& field(book::CombRecord& comb, Zone zone) {
    return const_cast<std::optional<double>&>(field(std::as_const(comb), zone));
}

double tidy(double share) {
    return std::round(share * 1e6) / 1e6;
}

} // namespace

double shareOf(const book::CombRecord& comb, Zone zone) {
    return field(comb, zone).value_or(0);
}

double emptyShare(const book::CombRecord& comb) {
    double sum = 0;
    for (const auto zone : allZones) sum += shareOf(comb, zone);
    return std::max(0.0, tidy(1 - sum));
}

book::CombRecord withShare(const book::CombRecord& comb, Zone zone, double share) {
    book::CombRecord changed = comb;
    field(changed, zone) = std::clamp(share, 0.0, 1.0);
    double excess = 0;
    for (const auto each : allZones) excess += shareOf(changed, each);
    excess -= 1;
    for (const auto giving : {Zone::Open, Zone::Capped, Zone::BeeBread, Zone::Brood}) {
        if (giving == zone || excess <= 0) continue;
        const double given = std::min(excess, shareOf(changed, giving));
        if (given > 0) field(changed, giving) = tidy(shareOf(changed, giving) - given);
        excess -= given;
    }
    return changed;
}

} // namespace winterlarder::desk
