// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/dead_hive.h"

#include "exchange/shipped_data.h"

#include <gtest/gtest.h>
#include <set>

namespace winterlarder::answer::dead_hive_test {
namespace {

book::WinterOutcome dead() { return {.date = *Date::parse("2027-02-10"), .alive = false}; }

TEST(DeadHive, PointsToNothingUntilSomethingIsAnswered) {
    auto outcome = dead();
    EXPECT_TRUE(pointsTo(outcome).empty());
    outcome.queen = false;
    ASSERT_EQ(pointsTo(outcome).size(), 1u);
    EXPECT_EQ(pointsTo(outcome)[0].question, "queen");
    EXPECT_EQ(pointsTo(outcome)[0].says.id, "dead-queen-missing");
    outcome.alive = true;
    EXPECT_TRUE(pointsTo(outcome).empty());
}

TEST(DeadHive, EveryAnswerHasItsOwnWordsAndAShippedRule) {
    std::set<std::string> ids;
    const auto take = [&](const book::WinterOutcome& outcome) {
        const auto said = pointsTo(outcome);
        ASSERT_EQ(said.size(), deathQuestions.size());
        for (std::size_t i = 0; i < said.size(); ++i) {
            EXPECT_EQ(said[i].question, deathQuestions[i]);
            EXPECT_TRUE(testing::shippedData().caution(said[i].says.id)) << said[i].says.id;
            ids.insert(said[i].says.id);
        }
    };
    for (const auto pattern : {book::BroodPattern::None, book::BroodPattern::Solid, book::BroodPattern::Patchy})
        for (const bool yes : {false, true}) {
            auto outcome = dead();
            outcome.foodLeft = outcome.headsInCells = outcome.mitesOnFloor = outcome.queen = yes;
            outcome.broodPattern = pattern;
            take(outcome);
        }
    EXPECT_EQ(ids.size(), 11u);
}

} // namespace
} // namespace winterlarder::answer::dead_hive_test
