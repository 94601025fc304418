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

double tidy(double share) { return std::round(share * 1e6) / 1e6; }

book::CombRecord judged(book::CombRecord comb) {
    if (comb.facesSeen == 0) comb = withSeen(comb, Seen::BothFaces);
    comb.measured = false;
    return comb;
}

} // namespace

double shareOf(const book::CombRecord& comb, Zone zone) { return field(comb, zone).value_or(0); }

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
    return judged(changed);
}

book::CombRecord withBuilt(const book::CombRecord& comb, double built) {
    book::CombRecord changed = comb;
    changed.built = std::clamp(built, 0.0, 1.0);
    return judged(changed);
}

book::CombRecord emptied(const book::CombRecord& comb) {
    book::CombRecord changed = comb;
    for (const auto zone : allZones) field(changed, zone) = 0;
    return judged(changed);
}

book::CombRecord withContentsOf(const book::CombRecord& comb, const book::CombRecord& other) {
    book::CombRecord changed = comb;
    for (const auto zone : allZones) field(changed, zone) = field(other, zone);
    changed.built = other.built;
    changed.facesSeen = other.facesSeen;
    changed.throughWindow = other.throughWindow;
    changed.measured = false;
    return changed;
}

Seen seenOf(const book::CombRecord& comb) {
    if (comb.facesSeen <= 0) return Seen::NotAtAll;
    if (comb.throughWindow) return Seen::ThroughWindow;
    return comb.facesSeen == 1 ? Seen::OneFace : Seen::BothFaces;
}

book::CombRecord withSeen(const book::CombRecord& comb, Seen seen) {
    book::CombRecord changed = comb;
    changed.facesSeen = seen == Seen::BothFaces ? 2 : seen == Seen::NotAtAll ? 0 : 1;
    changed.throughWindow = seen == Seen::ThroughWindow;
    return changed;
}

} // namespace winterlarder::desk
