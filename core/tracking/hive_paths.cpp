// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/hive_paths.h"

#include "stores/weighing.h"
#include "support/require.h"

#include <algorithm>

namespace winterlarder::tracking {

HivePaths::HivePaths(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow, SeasonDay from,
                     const ModelConstants& constants)
    : first_(from), days_(ensemble.lastDay() - from + 1), winters_(static_cast<std::size_t>(ensemble.winters())),
      beeMass_(constants.beeMass) {
    require(ensemble.covers(from), "day {} is outside the simulated days", from.w);
    const std::size_t cells = static_cast<std::size_t>(days_) * winters_;
    loss_.reserve(cells);
    bees_.reserve(cells);
    brood_.reserve(cells);
    for (SeasonDay day = first_; day <= last(); day = day + 1) {
        for (double loss : winter::netLossBetween(ensemble, flow, first_, day + 1))
            loss_.push_back(static_cast<float>(loss));
        const auto bees = ensemble.bees(day), brood = ensemble.brood(day);
        bees_.insert(bees_.end(), bees.begin(), bees.end());
        brood_.insert(brood_.end(), brood.begin(), brood.end());
    }
    for (const auto& draw : ensemble.draws()) forage_.push_back(draw.forage);
}

SeasonDay HivePaths::within(SeasonDay day) const { return std::clamp(day, first_, last()); }

double HivePaths::bees(SeasonDay day, std::size_t winter) const {
    return static_cast<double>(bees_[static_cast<std::size_t>(within(day) - first_) * winters_ + winter]);
}

double HivePaths::lifeKg(SeasonDay day, std::size_t winter) const {
    const double brood =
        static_cast<double>(brood_[static_cast<std::size_t>(within(day) - first_) * winters_ + winter]);
    return beeMass_ * bees(day, winter) + stores::broodMass({brood}).value();
}

} // namespace winterlarder::tracking
