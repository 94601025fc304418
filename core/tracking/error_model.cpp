// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/error_model.h"

#include "support/require.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

double squared(double x) { return x * x; }

constexpr double beesOnScaleKg = 1.5; // of a usual colony, only to size the lean of a lift made before the decision

double grossAtDecision(const FollowQuestion& q) {
    return q.tare.mass.value() + std::max(0.0, q.stores.mean.value()) + q.beeBread.value() + beesOnScaleKg;
}

} // namespace

Mass stepSd(const KnownStep& step, const ModelConstants& constants) {
    if (step.sd) return *step.sd;
    if (step.kind == KnownStep::Kind::Equipment) return kilograms(constants.equipmentSd);
    return kilograms(constants.feedStepSd * std::abs(step.change.value()));
}

namespace {

ErrorParts inKilograms(const stores::SplitSd& sd) { return {sd.lasting.value(), sd.fresh.value()}; }

} // namespace

ErrorParts tareError(const stores::Tare& tare, const ModelConstants& constants) {
    return inKilograms(stores::splitTareSd(tare, constants));
}

ErrorParts oneSideError(Mass gross, bool longHive, const ModelConstants& constants) {
    return inKilograms(stores::splitOneSideSd(gross, longHive, constants));
}

ErrorParts heftError(Mass standsFor, const ModelConstants& constants, std::optional<double> relativeSd) {
    ErrorParts parts = inKilograms(stores::splitHeftSd(standsFor, constants));
    if (relativeSd)
        parts.freshSd = std::sqrt(std::max(0.0, squared(*relativeSd * standsFor.value()) - squared(parts.lastingSd)));
    return parts;
}

// Lasting errors of lifts and hefts are relative: kg a kg of weight, kg a kg of what the word stands for.
Unknowns::Unknowns(const FollowQuestion& q, std::size_t winters, const ModelConstants& constants) : belief_(winters) {
    const double tareVariance = squared(tareError(q.tare, constants).lastingSd);
    const double sideVariance = squared(oneSideError(kilograms(1), q.longHive, constants).lastingSd);
    const double heftVariance = squared(heftError(kilograms(1), constants).lastingSd);
    belief_.add(q.stores.mean.value(), squared(q.stores.sd.value()));
    belief_.add(0, tareVariance);
    belief_.add(0, sideVariance);
    belief_.add(0, heftVariance);
    shareErrors(q, tareVariance, sideVariance, heftVariance);
    addChanges(q, constants);
}

// The stores can share no more of an error than they have, which where lifts and hefts are told by their shares alone they might seem to. The
// lasting errors are independent of each other, so the covariances are possible while sum(covariance^2 / variance) <= variance of S.
void Unknowns::shareErrors(const FollowQuestion& q, double tareVariance, double sideVariance, double heftVariance) {
    const double ofTare = q.stores.weighedShare;
    const double ofSide = q.stores.oneSideShare * grossAtDecision(q);
    const double ofHeft = q.stores.heftShare * std::max(0.0, q.stores.mean.value());
    const double shared =
        squared(ofTare) * tareVariance + squared(ofSide) * sideVariance + squared(ofHeft) * heftVariance;
    const double variance = squared(q.stores.sd.value());
    const double possible = shared > variance ? std::sqrt(variance / shared) : 1;
    belief_.correlate(stores, tare, -possible * ofTare * tareVariance);
    belief_.correlate(stores, oneSide, -possible * ofSide * sideVariance);
    belief_.correlate(stores, heft, -possible * ofHeft * heftVariance);
}

void Unknowns::addChanges(const FollowQuestion& q, const ModelConstants& constants) {
    for (const KnownStep& step : q.steps) {
        if (step.day < q.decided || step.day > q.today) continue;
        Change change{step.day, step.change.value(), std::nullopt, step.kind != KnownStep::Kind::Equipment};
        const double sd = stepSd(step, constants).value();
        if (sd > 0) change.error = belief_.add(0, squared(sd));
        changes_.push_back(change);
    }
}

void Unknowns::allowUnexplained(SeasonDay before, const ModelConstants& constants) {
    changes_.push_back({before - 1, 0, belief_.add(0, squared(constants.unexplainedSd)), true});
}

Unknowns::Reading Unknowns::reading(const Observation& observation, const FollowQuestion& q,
                                    const ModelConstants& constants, bool starved) const {
    require(isWeighed(observation), "the observation of day {} is no weight", observation.day.w);
    Reading result;
    result.starved = starved;
    if (!starved) result.sum.push_back({stores, 1});
    if (const auto* weight = std::get_if<WeightSeen>(&observation.what)) {
        result.ofWeight = true;
        result.value = weight->reading.value();
        result.known = q.tare.mass.value() + q.beeBread.value();
        result.sum.push_back({tare, 1});
        result.freshVariance = squared(tareError(q.tare, constants).freshSd);
        if (weight->kind == stores::WeighingKind::TwoSidedLift) {
            result.value /= stores::twoSidesRead;
            result.freshVariance += squared(constants.liftTwoSidesSd);
        }
        if (weight->kind == stores::WeighingKind::OneSidedLift) {
            result.sum.push_back({oneSide, result.value});
            result.freshVariance += squared(oneSideError(weight->reading, q.longHive, constants).freshSd);
        }
        if (observation.wet) {
            result.known += constants.wetHiveExtra;
            result.freshVariance += squared(constants.wetHiveSd);
        }
    } else if (const auto* lifted = std::get_if<HeftSeen>(&observation.what)) {
        result.value = lifted->standsFor.value();
        result.sum.push_back({heft, result.value});
        result.freshVariance = squared(heftError(lifted->standsFor, constants, lifted->relativeSd).freshSd);
    } else {
        const auto& seen = std::get<StoresSeen>(observation.what);
        result.value = seen.typical.value();
        result.freshVariance = squared(seen.sd.value());
    }
    for (const Change& change : changes_) {
        const bool counts = change.ofStores ? !starved : result.ofWeight;
        if (change.day > observation.day || !counts) continue;
        result.known += change.kg;
        if (change.error) result.sum.push_back({*change.error, 1});
    }
    return result;
}

double Unknowns::winterPart(const Reading& reading, const HivePaths& paths, SeasonDay day, std::size_t winter) {
    const double life = reading.ofWeight ? paths.lifeKg(day, winter) : 0;
    const double lost = reading.starved ? 0 : static_cast<double>(paths.lossUntil(paths.within(day) - 1, winter));
    return reading.known + life - lost;
}

} // namespace winterlarder::tracking
