// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/food_reach.h"
#include "tracking/winters.h"

namespace winterlarder::tracking::food_reach_test {
namespace {

// Boxes of combs, each by how much of it is capped, from the floor up.
std::vector<stores::Comb> combsOf(const std::vector<std::vector<double>>& boxes) {
    const auto format = hive::combFormat(*shipped().format("national-deep"));
    std::vector<stores::Comb> combs;
    for (std::size_t box = 0; box < boxes.size(); ++box)
        for (std::size_t place = 0; place < boxes[box].size(); ++place) {
            stores::Comb comb{format, static_cast<int>(box), static_cast<int>(place)};
            comb.capped = boxes[box][place];
            combs.push_back(comb);
        }
    return combs;
}

bool beyond(const std::vector<stores::Comb>& combs, std::size_t first, std::size_t count) {
    const auto reach = reachOf(combs, first, count, 2);
    return reach && reach->within.value() == 0 && reach->beyond.value() > 0;
}

TEST(Reach, EndsAtTwoEmptyCombsInARow) {
    const auto combs = combsOf({{0.9, 0.9, 0, 0, 0, 0, 0, 0}});
    EXPECT_TRUE(beyond(combs, 4, 3));
    EXPECT_FALSE(beyond(combs, 3, 3)) << "one empty comb is crossed";
    EXPECT_FALSE(beyond(combs, 1, 3)) << "it sits on stores";
    EXPECT_TRUE(beyond(combsOf({{0, 0, 0, 0, 0, 0.05, 0, 0.8}}), 1, 3)) << "a smear is no store";
}

TEST(Reach, AHalfBuiltCombHasStoresByWhatLiesOnItsWholeFace) {
    auto combs = combsOf({{0, 0, 0, 0, 0.18, 0, 0, 0.8}});
    EXPECT_FALSE(beyond(combs, 1, 3));
    combs[4].built = 0.5;
    EXPECT_TRUE(beyond(combs, 1, 3)) << "nine parts of a hundred of the face are no store";
}

TEST(Reach, GoesUpAndNotDown) {
    const std::vector<double> empty(8, 0.0), full(8, 0.9);
    EXPECT_FALSE(beyond(combsOf({empty, full}), 2, 3));
    const auto below = reachOf(combsOf({full, empty}), 8 + 2, 3, 2);
    ASSERT_TRUE(below);
    EXPECT_EQ(below->within.value(), 0);
    EXPECT_EQ(below->beyond.value(), 0) << "what lies below is another matter than a gap";
}

TEST(Reach, IsNotKnownWithoutThatComb) {
    EXPECT_FALSE(reachOf({}, 0, 3, 2));
    EXPECT_FALSE(reachOf(combsOf({{0.9, 0.9}}), 5, 1, 2));
}

FollowQuestion seenOn(std::optional<std::size_t> firstComb) {
    auto q = oxfordColony(12, 1, 10);
    q.combs = combsOf({{0.9, 0.9, 0.9, 0, 0, 0, 0, 0, 0, 0, 0}});
    q.observations = {on(q, 10, ClusterSeen{BeeCount{6000}, 2, firstComb})};
    return q;
}

TEST(FoodOutOfReach, WhereAGapLiesBetween) {
    EXPECT_TRUE(foodOutOfReach(seenOn(5), kilograms(0))->gap);
    EXPECT_FALSE(foodOutOfReach(seenOn(3), kilograms(0)));
    EXPECT_FALSE(foodOutOfReach(seenOn(std::nullopt), kilograms(0))) << "nobody said where the cluster sits";
    auto unlisted = seenOn(5);
    unlisted.combs.clear();
    EXPECT_FALSE(foodOutOfReach(unlisted, kilograms(0)));
}

TEST(FoodOutOfReach, WhatWasInReachIsEatenFirst) {
    auto q = seenOn(5);
    q.combs[6].capped = 0.5;
    EXPECT_FALSE(foodOutOfReach(q, kilograms(0.2)));
    EXPECT_TRUE(foodOutOfReach(q, kilograms(3)));
}

TEST(FoodOutOfReach, NotOnceStoresWereSeenOrFedSinceTheList) {
    auto q = seenOn(5);
    q.observations.push_back(on(q, 10, CombGlimpsed{true}));
    EXPECT_FALSE(foodOutOfReach(q, kilograms(0)));
    q = seenOn(5);
    q.steps = {{{-60}, KnownStep::Kind::Feed, kilograms(6), std::nullopt}};
    EXPECT_FALSE(foodOutOfReach(q, kilograms(0))) << "the combs are no longer as they were listed";
}

} // namespace
} // namespace winterlarder::tracking::food_reach_test
