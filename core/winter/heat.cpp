// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/heat.h"

#include "winter/heat_law.h"

namespace winterlarder::winter {

HivePower hivePower(BeeCount bees, BeeCount brood, Temperature dailyMean, TemperatureDifference swing,
                    double shellFactor, double raceFactor, const ModelConstants& constants) {
    const HeatLaw law =
        heatLaw(bees.count, brood.count, dailyMean.value(), swing.value(), shellFactor, raceFactor, constants);
    return {watts(law.adults), watts(brood.count > 0 ? law.brood : 0)}; // what stands for no brood leaves a trace of it
}

Mass foodPerDay(Power power, const ModelConstants& constants) {
    return grams(power.value() * 86400.0 / constants.honeyEnergy);
}

} // namespace winterlarder::winter
