// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/model_constants.h"
#include "winter/demand.h"
#include "winter/larder.h"

#include <vector>

namespace winterlarder::tracking {

//! What every winter of an ensemble did since a day: net loss of stores, autumn flow counted, and the weight of bees and brood.
//! A hive's weight changes by income - use - m_b x bees lost + brood; its stores by income - use. Bee bread is taken as constant.
//! Tested: tests/tracking/hive_paths_test.cpp.
class HivePaths {
public:
    //! The ensemble must have kept its brood. It is not kept here.
    HivePaths(const winter::DemandEnsemble& ensemble, const winter::AutumnFlow& flow, SeasonDay from,
              const ModelConstants& constants);

    SeasonDay first() const { return first_; }
    SeasonDay last() const { return first_ + (days_ - 1); }
    std::size_t winters() const { return winters_; }
    SeasonDay within(SeasonDay day) const; //!< the nearest day there is

    //! Net loss from the start of first() to the end of a day [kg]; the day before first(): 0.
    float lossUntil(SeasonDay endOf, std::size_t winter) const {
        return endOf < first_ ? 0.0F : loss_[static_cast<std::size_t>(endOf - first_) * winters_ + winter];
    }
    const float* lossRow(SeasonDay endOf) const {
        return loss_.data() + static_cast<std::size_t>(endOf - first_) * winters_;
    }
    //! Adult bees at the start of a day.
    double bees(SeasonDay day, std::size_t winter) const;
    //! Bees and brood at the start of a day [kg].
    double lifeKg(SeasonDay day, std::size_t winter) const;
    int forage(std::size_t winter) const { return forage_[winter]; } //!< season day of that winter

private:
    SeasonDay first_;
    int days_;
    std::size_t winters_;
    double beeMass_;
    std::vector<float> loss_, bees_, brood_; //!< [day][winter]
    std::vector<int> forage_;
};

} // namespace winterlarder::tracking
