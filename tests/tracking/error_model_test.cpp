// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/winters.h"

#include "stores/weighing.h"

#include <cmath>

namespace winterlarder::tracking::error_model_test {
namespace {

Date someDay() { return *Date::of(2026, 10, 1); }

double whole(const ErrorParts& parts) { return std::hypot(parts.lastingSd, parts.freshSd); }

// Both parts together are the error the evidence of that kind has (core/stores).
TEST(ErrorModel, PartsMakeUpTheWholeOfAScale) {
    EXPECT_NEAR(whole(tareError({kilograms(15), kilograms(2)}, constants())), 2, 1e-12);
    EXPECT_NEAR(whole(tareError({kilograms(15), kilograms(0)}, constants())), 1, 1e-12);
    EXPECT_EQ(tareError({kilograms(15), kilograms(2)}, constants()).freshSd, 0.3);
}

stores::Evidence evidence(stores::WeighingKind kind, bool longHive) {
    stores::HiveLoad load;
    load.tare = {kilograms(15), kilograms(2)};
    load.beeMass = kilograms(0.000115);
    return stores::evidenceOfWeighing(kind, kilograms(40), load, longHive, shipped().constants, someDay());
}

TEST(ErrorModel, ShippedSpreadsAreThoseOfTheEvidence) {
    const auto two = evidence(stores::WeighingKind::TwoSidedLift, false);
    EXPECT_NEAR(two.sd(two.typical).value(), std::hypot(2, constants().liftTwoSidesSd), 1e-9);
    for (bool longHive : {false, true}) {
        const auto one = evidence(stores::WeighingKind::OneSidedLift, longHive);
        EXPECT_NEAR(one.sd(one.typical).value(),
                    std::hypot(2, whole(oneSideError(kilograms(40), longHive, constants()))), 1e-9);
    }
    const auto heft = stores::evidenceOfHeft(0.9, kilograms(20), shipped().constants, someDay());
    EXPECT_NEAR(heft.sd(heft.typical).value(), whole(heftError(kilograms(18), constants())), 1e-9);
}

TEST(ErrorModel, SevenTenthsOfALiftsVarianceLasts) {
    const auto parts = oneSideError(kilograms(40), false, constants());
    EXPECT_NEAR(parts.lastingSd * parts.lastingSd / (whole(parts) * whole(parts)), 0.7, 1e-12);
}

TEST(ErrorModel, StepsErrAsGivenOrAsTheirKind) {
    EXPECT_NEAR(stepSd({{0}, KnownStep::Kind::Feed, kilograms(6), std::nullopt}, constants()).value(), 0.3, 1e-12);
    EXPECT_NEAR(stepSd({{0}, KnownStep::Kind::Harvest, kilograms(-6), std::nullopt}, constants()).value(), 0.3, 1e-12);
    EXPECT_NEAR(stepSd({{0}, KnownStep::Kind::Equipment, kilograms(5), std::nullopt}, constants()).value(), 0.2, 1e-12);
    EXPECT_NEAR(stepSd({{0}, KnownStep::Kind::Feed, kilograms(6), kilograms(1)}, constants()).value(), 1, 1e-12);
}

// Two weighings by a tare that is only assumed: their mean is surer than the tare.
TEST(ErrorModel, StoresShareNoMoreOfATaresErrorThanTheyHave) {
    auto q = oxfordColony(12, 2, 0);
    q.tare.sd = kilograms(4);
    q.stores.weighedShare = 1;
    const Unknowns unknowns(q, 10, constants());
    const auto reading = unknowns.reading(weighed(q, -30, 30), q, constants());
    const double tareSd = tareError(q.tare, constants()).lastingSd;
    EXPECT_NEAR(unknowns.belief().spread(reading.sum), (tareSd - 2) * (tareSd - 2), 1e-9);
}

TEST(ErrorModel, AWetHiveIsTakenLighterAndLessSurely) {
    const auto q = oxfordColony(15, 2, 0);
    const Unknowns unknowns(q, 10, constants());
    const auto dry = unknowns.reading(weighed(q, -30, 30), q, constants());
    const auto wet = unknowns.reading(weighed(q, -30, 30, true), q, constants());
    EXPECT_EQ(wet.known, dry.known + constants().wetHiveExtra);
    EXPECT_NEAR(wet.freshVariance, dry.freshVariance + constants().wetHiveSd * constants().wetHiveSd, 1e-12);
}

TEST(ErrorModel, TwoSidesReadTwoPercentLow) {
    const auto q = oxfordColony(15, 2, 0);
    const Unknowns unknowns(q, 10, constants());
    const auto reading =
        unknowns.reading(on(q, -30, WeightSeen{stores::WeighingKind::TwoSidedLift, kilograms(29.4)}), q, constants());
    EXPECT_NEAR(reading.value, 30, 1e-9);
}

TEST(ErrorModel, StepsCountFromTheirDayOn) {
    auto q = oxfordColony(15, 2, 0);
    q.steps = {{{-50}, KnownStep::Kind::Feed, kilograms(4), kilograms(0)},
               {{-40}, KnownStep::Kind::Equipment, kilograms(-5), kilograms(0)}};
    const Unknowns unknowns(q, 10, constants());
    const double bare = q.tare.mass.value() + q.beeBread.value();
    EXPECT_EQ(unknowns.reading(weighed(q, -51, 30), q, constants()).known, bare);
    EXPECT_EQ(unknowns.reading(weighed(q, -50, 30), q, constants()).known,
              bare + 4); // a feed of the same day is in the reading
    EXPECT_EQ(unknowns.reading(weighed(q, -30, 30), q, constants()).known, bare + 4 - 5);
    EXPECT_EQ(unknowns.reading(on(q, -30, StoresSeen{kilograms(12), kilograms(2)}), q, constants()).known,
              4); // no equipment in stores
}

// A scale took part in the belief about the stores with weight 0.8: one kilogram of error in the tare is 0.8 kg too little stores.
TEST(ErrorModel, StoresWeighedBeforeLeanAgainstTheTare) {
    auto q = oxfordColony(15, 2, 0);
    q.stores.weighedShare = 0.8;
    const Unknowns unknowns(q, 10, constants());
    EXPECT_NEAR(unknowns.belief().variance(Unknowns::stores, Unknowns::tare), -0.8 * (2 * 2 - 0.3 * 0.3), 1e-12);
}

} // namespace
} // namespace winterlarder::tracking::error_model_test
