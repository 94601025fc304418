// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/colony_edits.h"

#include "app/invented.h"

#include <gtest/gtest.h>

namespace winterlarder::desk {

TEST(ColonyEdits, BeesAreToldInOneWayOnly) {
    auto record = invented::colony("A", 7);
    record.bees.logSd = 0.1;
    const auto counted = withBees(record.bees, BeesToldBy::Count, 14000);
    EXPECT_EQ(beesToldBy(counted), BeesToldBy::Count);
    EXPECT_EQ(beesTold(counted), 14000);
    EXPECT_FALSE(counted.coveredCombs.has_value());
    EXPECT_FALSE(counted.logSd.has_value()) << "the spread belonged to the other way of counting";
    EXPECT_EQ(beesToldBy(withBees(record.bees, BeesToldBy::NotTold, 0)), BeesToldBy::NotTold);
}

TEST(ColonyEdits, SameWayKeepsItsSpread) {
    auto record = invented::colony("A", 7);
    record.bees.logSd = 0.1;
    EXPECT_EQ(withBees(record.bees, BeesToldBy::CoveredCombs, 8).logSd, 0.1);
}

TEST(ColonyEdits, AWeighingTellsHowItWasMade) {
    const auto made = [](auto reading) { return std::optional(book::WeighingRecord{invented::day("2026-09-12"), reading}); };
    EXPECT_EQ(weighedBy(std::nullopt), WeighedBy::NotWeighed);
    EXPECT_EQ(weighedBy(made(book::ScaleReading{kilograms(40)})), WeighedBy::Scale);
    EXPECT_EQ(weighedBy(made(book::LiftReading{{kilograms(17), kilograms(18)}})), WeighedBy::BothSides);
    EXPECT_EQ(weighedBy(made(book::LiftReading{{kilograms(17)}})), WeighedBy::OneSide);
    EXPECT_EQ(weighedBy(made(book::HeftWord::Heavy)), WeighedBy::Heft);
}

} // namespace winterlarder::desk
