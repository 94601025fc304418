// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/observation.h"

namespace winterlarder::tracking {

namespace {

struct KindOfSeen {
    SeenKind operator()(const WeightSeen& seen) const {
        if (seen.kind == stores::WeighingKind::Scale) return SeenKind::Scale;
        return seen.kind == stores::WeighingKind::TwoSidedLift ? SeenKind::TwoSidedLift : SeenKind::OneSidedLift;
    }
    SeenKind operator()(const HeftSeen&) const { return SeenKind::Heft; }
    SeenKind operator()(const StoresSeen&) const { return SeenKind::Combs; }
    SeenKind operator()(const BeesSeen&) const { return SeenKind::Bees; }
    SeenKind operator()(const ClusterSeen&) const { return SeenKind::Cluster; }
    SeenKind operator()(const FlyingSeen&) const { return SeenKind::Flying; }
    SeenKind operator()(const CombGlimpsed&) const { return SeenKind::Glimpse; }
    SeenKind operator()(const DeadOut&) const { return SeenKind::Dead; }
    SeenKind operator()(const StarvedOut&) const { return SeenKind::Dead; }
};

} // namespace

SeenKind seenKind(const Observation& observation) { return std::visit(KindOfSeen{}, observation.what); }

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
