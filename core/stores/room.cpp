// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/room.h"

#include <algorithm>

namespace winterlarder::stores {

namespace {

double hatchedByDeadline(std::optional<int> days) {
    return days ? std::clamp(static_cast<double>(*days) / hive::broodDays, 0.0, 1.0) : 1.0;
}

} // namespace

std::optional<Mass> freeRoom(const RoomQuestion& question) {
    const auto filled = withUnseenFilled(question.combs);
    if (!filled) return std::nullopt;
    const double hatched = hatchedByDeadline(question.daysToSyrupDeadline);
    Mass free{0}, capacity{0};
    for (const Comb& comb : *filled) {
        const Mass whole = capacityOf(comb);
        capacity += whole;
        free += whole * (std::max(0.0, comb.empty()) + (1 - question.openFactor) * comb.open + hatched * comb.brood);
    }
    const Mass meanComb = capacity / static_cast<double>(filled->size());
    return std::max(kilograms(0), free - meanComb * (clusterShare * question.coveredCombs));
}

} // namespace winterlarder::stores
