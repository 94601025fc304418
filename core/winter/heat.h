// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "quantity/quantity.h"
#include "reference/model_constants.h"

namespace winterlarder::winter {

struct HivePower {
    Power adults; //!< P
    Power brood;  //!< P_b
    Power total() const { return adults + brood; }
};

//! Mean power of one colony on one day (model specification, section 5, step 4): mean over T - swing, T, T + swing of the resting, restless and cold
//! branches, with the size law, plus the brood nest. Bees in workers, brood in cells of all ages, swing the diurnal half range (0 = steady).
//! Tested: tests/winter/heat_test.cpp (Harbo; Southwick 1985; Melathopoulos).
HivePower hivePower(BeeCount bees, BeeCount brood, Temperature dailyMean, TemperatureDifference swing,
                    double shellFactor, double raceFactor, const ModelConstants& constants);

//! Grams of honey a day that feed a power: P x 86400 / e_h.
Mass foodPerDay(Power power, const ModelConstants& constants);

} // namespace winterlarder::winter
