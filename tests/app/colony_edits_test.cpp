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
    const auto made = [](auto reading) {
        return std::optional(book::WeighingRecord{invented::day("2026-09-12"), reading});
    };
    EXPECT_EQ(weighedBy(std::nullopt), WeighedBy::NotWeighed);
    EXPECT_EQ(weighedBy(made(book::ScaleReading{kilograms(40)})), WeighedBy::Scale);
    EXPECT_EQ(weighedBy(made(book::LiftReading{{kilograms(17), kilograms(18)}})), WeighedBy::BothSides);
    EXPECT_EQ(weighedBy(made(book::LiftReading{{kilograms(17)}})), WeighedBy::OneSide);
    EXPECT_EQ(weighedBy(made(book::HeftWord::Heavy)), WeighedBy::Heft);
}

TEST(ColonyEdits, AFeedTicksOffTheVisitPlannedForIt) {
    const auto day = [](const char* iso) { return invented::day(iso); };
    const book::ColonyId colony{3};
    const std::vector<book::PlannedVisit> visits{
        {.id = {1}, .colony = colony, .date = day("2026-09-14"), .what = book::VisitKind::Syrup},
        {.id = {2}, .colony = colony, .date = day("2026-09-18"), .what = book::VisitKind::Syrup},
        {.id = {3}, .colony = colony, .date = day("2026-09-18"), .what = book::VisitKind::Fondant},
        {.id = {4}, .colony = {4}, .date = day("2026-09-17"), .what = book::VisitKind::Syrup}};
    const auto fed = [&](const char* iso) {
        return book::Feed{.colony = colony, .feed = {day(iso), book::FeedKind::Syrup, kilograms(2), {}, {}, {}}};
    };
    const auto edit = feedGiven(fed("2026-09-17"), visits);
    ASSERT_TRUE(std::holds_alternative<book::EditGroup>(edit));
    const auto& step = std::get<book::EditGroup>(edit);
    EXPECT_EQ(book::verbOf(edit), book::verbOf(book::SingleEdit(book::AddFeed{fed("2026-09-17")})))
        << "the history says that it was fed";
    ASSERT_EQ(step.edits.size(), 2U);
    const auto& made = std::get<book::ChangePlannedVisit>(step.edits[1]).entry;
    EXPECT_EQ(made.id, book::PlannedVisitId{2}) << "the nearest of its kind and colony";
    EXPECT_EQ(made.state, book::VisitState::Done);
    EXPECT_EQ(made.doneOn, day("2026-09-17"));
    EXPECT_TRUE(std::holds_alternative<book::SingleEdit>(feedGiven(fed("2026-09-25"), visits)))
        << "none was planned near it";
    auto changed = fed("2026-09-17");
    changed.id = {9};
    EXPECT_TRUE(std::holds_alternative<book::SingleEdit>(feedGiven(changed, visits))) << "only a new feed";
}

} // namespace winterlarder::desk
