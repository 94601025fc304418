// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/observation.h"

namespace winterlarder::tracking {

bool isWeighed(const Observation& observation) {
    return std::holds_alternative<WeightSeen>(observation.what) || std::holds_alternative<HeftSeen>(observation.what) ||
           std::holds_alternative<StoresSeen>(observation.what);
}

bool showsAlive(const Observation& observation) {
    return std::holds_alternative<BeesSeen>(observation.what) || std::holds_alternative<ClusterSeen>(observation.what);
}

bool isDead(const Observation& observation) {
    return std::holds_alternative<DeadOut>(observation.what) || std::holds_alternative<StarvedOut>(observation.what);
}

} // namespace winterlarder::tracking
