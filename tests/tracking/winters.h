// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/phases.h"
#include "support/require.h"
#include "tracking/follow.h"
#include "winter/places.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace winterlarder::tracking {

inline const winter::Sampling quick{1, 1500};

//! A colony of 13,000 bees at Oxford, decided on 1 October with so much in the hive.
inline FollowQuestion oxfordColony(double storesKg, double sdKg, int today) {
    FollowQuestion q{winter::questionAt("gb-oxford", 13000, -92)};
    q.winter.keepBrood = true;
    q.year = Winter(Hemisphere::North, 2026);
    q.decided = {-92};
    q.today = {today};
    q.stores.mean = kilograms(storesKg);
    q.stores.sd = kilograms(sdKg);
    q.tare = {kilograms(15), kilograms(2)};
    q.decisions = shipped().decisions;
    const auto days = advice::phaseDays(q.winter.season, q.decisions);
    q.days = {days.summer, days.closing, days.late, days.quietFrom, days.portionsInWinter, std::nullopt};
    q.fullComb = kilograms(2.3);
    return q;
}

inline Observation on(const FollowQuestion& q, int day, decltype(Observation::what) what, bool wet = false) {
    return {{day}, q.year.date({day}), std::move(what), wet};
}

inline Observation weighed(const FollowQuestion& q, int day, double grossKg, bool wet = false) {
    return on(q, day, WeightSeen{stores::WeighingKind::Scale, kilograms(grossKg)}, wet);
}

//! The winters of a question, simulated once for each test program.
inline const winter::DemandEnsemble& oxfordWinters() {
    static const winter::DemandEnsemble ensemble =
        *winter::simulate(oxfordColony(15, 2, 0).winter, constants(), quick, 2);
    return ensemble;
}
inline const HivePaths& oxfordPaths() {
    static const HivePaths paths(oxfordWinters(), {}, {-92}, constants());
    return paths;
}

//! What a scale should show on a day: the middle of all winters, if the stores were as believed.
inline double expectedGross(const FollowQuestion& q, int day) {
    std::vector<double> gross;
    for (std::size_t i = 0; i < oxfordPaths().winters(); ++i)
        gross.push_back(q.tare.mass.value() + q.beeBread.value() + q.stores.mean.value() +
                        oxfordPaths().lifeKg({day}, i) - static_cast<double>(oxfordPaths().lossUntil({day - 1}, i)));
    return winter::quantile(gross, 0.5);
}

inline Following followed(const FollowQuestion& q) { return *follow(q, constants(), quick, 2); }

inline bool says(const std::vector<Remark>& remarks, std::string_view id) {
    return std::any_of(remarks.begin(), remarks.end(), [&](const Remark& remark) { return remark.id == id; });
}

//! Mean of something over what is believed.
template <class Value> double believed(const Belief& belief, Value value) {
    double sum = 0;
    for (std::size_t p = 0; p < belief.particles(); ++p) sum += belief.weight[p] * value(p);
    return sum;
}

} // namespace winterlarder::tracking
