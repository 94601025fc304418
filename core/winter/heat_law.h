// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/model_constants.h"
#include "winter/lane_math.h"

namespace winterlarder::winter {

//! Plain numbers of the heat law, one colony and one day [W, degC, bees, cells]; shared by hivePower() and the ensemble kernel.
struct HeatLaw {
    double adults = 0; //!< P without the luck of the colony
    double brood = 0;  //!< P_b
};

WINTERLARDER_INLINE HeatLaw heatLaw(double bees, double broodCells, double meanC, double swingK, double shell,
                                    double race, const ModelConstants& k) {
    const double mass = k.beeMass * bees;
    const double size = lane::larger(1.0, lane::power(lane::larger(mass, 1e-6) * (1 / k.sizeLawMass), -k.sizeExponent));
    const double core = k.coreTemperature + (k.broodTemperature - k.coreTemperature) *
                                                lane::smaller(1.0, broodCells * (1 / k.broodForFullCore));
    const double conductance = (0.5 + 0.5 * shell) * k.clusterConductance;
    double perKg = 0;
    double broodGap = 0;
    for (int step = -1; step <= 1; ++step) {
        const double t = meanC + step * swingK;
        const double restless =
            lane::smaller(k.restlessCeiling, k.restingFloor + k.restlessSlope * lane::larger(0.0, t - k.restlessFrom));
        perKg += lane::larger(restless, conductance * lane::larger(0.0, core - t));
        broodGap += lane::larger(0.0, k.broodTemperature - t);
    }
    const double cells = lane::power(lane::larger(broodCells, 1e-250), 2.0 / 3.0);
    return {race * size * mass * perKg * (1.0 / 3), shell * k.broodConductance * cells * broodGap * (1.0 / 3)};
}

} // namespace winterlarder::winter
