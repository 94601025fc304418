// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/colony_edits.h"

#include "app/invented.h"

#include <gtest/gtest.h>

namespace winterlarder::desk {

TEST(ColonyEdits, BeesAreToldInOneWayOnly) {
    auto record = invented::colony("A", 7);
    record.bees.logSd = 0.1;
    const auto counted = withBees(record, BeesToldBy::Count, 14000);
    EXPECT_EQ(beesToldBy(counted.bees), BeesToldBy::Count);
    EXPECT_EQ(beesTold(counted.bees), 14000);
    EXPECT_FALSE(counted.bees.coveredCombs.has_value());
    EXPECT_FALSE(counted.bees.logSd.has_value()) << "the spread belonged to the other way of counting";
    EXPECT_EQ(beesToldBy(withBees(record, BeesToldBy::NotTold, 0).bees), BeesToldBy::NotTold);
}

TEST(ColonyEdits, SameWayKeepsItsSpread) {
    auto record = invented::colony("A", 7);
    record.bees.logSd = 0.1;
    EXPECT_EQ(withBees(record, BeesToldBy::CoveredCombs, 8).bees.logSd, 0.1);
}

TEST(ColonyEdits, TheNewestWeighingIsTheOneReplaced) {
    auto record = invented::colony("A");
    record.weighings = {{invented::day("2026-09-12"), book::ScaleReading{kilograms(40)}}, {invented::day("2026-09-01"), book::HeftWord::Heavy}};
    EXPECT_EQ(weighedBy(record), WeighedBy::Scale);
    const auto hefted = withNewestWeighing(record, book::WeighingRecord{invented::day("2026-09-13"), book::HeftWord::Light});
    ASSERT_EQ(hefted.weighings.size(), 2U);
    EXPECT_EQ(weighedBy(hefted), WeighedBy::Heft);
    EXPECT_EQ(hefted.weighings[1], record.weighings[1]);
    const auto without = withNewestWeighing(record, std::nullopt);
    ASSERT_EQ(without.weighings.size(), 1U);
    EXPECT_EQ(without.weighings[0], record.weighings[1]);
}

TEST(ColonyEdits, AFirstWeighingIsAdded) {
    const auto record = withNewestWeighing(invented::colony("A"), book::WeighingRecord{invented::day("2026-09-13"), book::LiftReading{{kilograms(17), kilograms(18)}}});
    EXPECT_EQ(weighedBy(record), WeighedBy::BothSides);
    EXPECT_EQ(weighedBy(invented::colony("A")), WeighedBy::NotWeighed);
}

} // namespace winterlarder::desk
