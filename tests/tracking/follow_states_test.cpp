// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/course.h"
#include "tracking/winters.h"

// Each state and its opposite, and which comes first.
namespace winterlarder::tracking::follow_states_test {
namespace {

FollowState stateOf(const FollowQuestion& q) { return followed(q).state; }

// A hive with a weighed tare, as forecast in November; then so much lighter or heavier.
FollowQuestion weighedTwice(double lighterKg, int second = 20) {
    auto q = oxfordColony(20, 2, second + 1);
    q.tare.sd = kilograms(0.5);
    q.observations = {weighed(q, -55, expectedGross(q, -55)), weighed(q, second, expectedGross(q, second) - lighterKg)};
    return q;
}

FollowQuestion cluster(std::optional<bool> storesInSight, double seams = 5, double bees = 9000) {
    auto q = oxfordColony(20, 2, 0);
    q.observations = {on(q, -10, ClusterSeen{BeeCount{bees}, seams})};
    if (storesInSight) q.observations.push_back(on(q, -10, CombGlimpsed{*storesInSight}));
    return q;
}

// ---- food out of reach -----------------------------------------------------------------------------------------------------

TEST(FollowStates, AClusterWithoutStoresInSightHasItsFoodOutOfReach) {
    const auto f = followed(cluster(false));
    EXPECT_EQ(f.state, FollowState::FoodOutOfReach);
    ASSERT_TRUE(f.feed);
    EXPECT_EQ(f.feed->lots.at(0).day, SeasonDay{0}) << "on the bees today";
    EXPECT_NEAR(f.feed->fondant.value(), 2.5, 1e-9);
    EXPECT_GT(f.now.today.typical.value(), 12) << "the hive is full all the same";
    EXPECT_TRUE(says(f.reasons, "follow-out-of-reach"));
    EXPECT_TRUE(says(f.cautions, "comb-against-cluster"));
}

TEST(FollowStates, WithStoresInSightOrNothingSaidOfThemItHasNot) {
    EXPECT_EQ(stateOf(cluster(true)), FollowState::OnCourse);
    EXPECT_EQ(stateOf(cluster(std::nullopt)), FollowState::OnCourse);
}

TEST(FollowStates, FondantOfThatDayPutsFoodInReach) {
    auto q = cluster(false);
    q.steps = {{{-10}, KnownStep::Kind::Feed, kilograms(2), std::nullopt}};
    EXPECT_EQ(stateOf(q), FollowState::OnCourse);
    q.steps.front().day = {-20};
    EXPECT_EQ(stateOf(q), FollowState::FoodOutOfReach) << "what was given before is not in sight either";
}

TEST(FollowStates, ALaterSightDecides) {
    auto q = cluster(false);
    q.observations.push_back(on(q, -3, ClusterSeen{}));
    q.observations.push_back(on(q, -3, CombGlimpsed{true}));
    EXPECT_EQ(stateOf(q), FollowState::OnCourse);
}

// ---- act now ---------------------------------------------------------------------------------------------------------------

TEST(FollowStates, FoodForLessThanThreeWeeksMeansActNow) {
    auto q = oxfordColony(8, 1, 60);
    q.observations = {weighed(q, 60, expectedGross(q, 60) - 0.5)};
    const auto f = followed(q);
    ASSERT_EQ(f.state, FollowState::ActNow);
    ASSERT_TRUE(f.feed);
    EXPECT_FALSE(f.feed->plan);
    EXPECT_EQ(f.feed->lots.size(), 1u);
    EXPECT_EQ(f.feed->lots.front().day, q.today);
    EXPECT_LE(f.feed->fondant.value(), 2.5);
    EXPECT_TRUE(says(f.cautions, "fondant-on-cluster"));
    EXPECT_TRUE(says(f.reasons, "follow-act-now"));
    EXPECT_TRUE(f.nextWeighing && f.nextWeighing->day <= q.today + 14) << "then weigh again";
}

TEST(FollowStates, FoodForSixWeeksDoesNot) {
    const auto f = followed(oxfordColony(11, 1, 20));
    EXPECT_NE(f.state, FollowState::ActNow);
    EXPECT_TRUE(!f.feed || f.feed->begins() > SeasonDay{20});
}

TEST(FollowStates, WhatIsLaidOnTodayCountsToday) {
    auto q = oxfordColony(8, 1, 60);
    q.steps = {{{60}, KnownStep::Kind::Feed, kilograms(4), kilograms(0.1)}};
    EXPECT_NE(stateOf(q), FollowState::ActNow);
}

// ---- dwindling -------------------------------------------------------------------------------------------------------------

TEST(FollowStates, FarFewerBeesThanAPoorWinterLeavesDwindle) {
    const auto f = followed(cluster(true, 1, 1800));
    EXPECT_EQ(f.state, FollowState::Dwindling);
    EXPECT_TRUE(says(f.reasons, "follow-dwindling"));
    EXPECT_TRUE(says(f.cautions, "when-dwindling"));
}

TEST(FollowStates, AsManyAsAPoorWinterLeavesDoNot) {
    const double least = followed(cluster(true, 1, 1800)).dwindled->least.count;
    EXPECT_EQ(stateOf(cluster(true, 3, 0.65 * least)), FollowState::OnCourse);
    EXPECT_EQ(stateOf(cluster(true, 3, 0.55 * least)), FollowState::Dwindling);
}

// ---- less than thought, eating faster ---------------------------------------------------------------------------------------

TEST(FollowStates, BothWeighingsAsMuchTooLightMeanLessThanThought) {
    auto q = weighedTwice(5);
    q.observations.front() = weighed(q, -55, expectedGross(q, -55) - 5);
    const auto f = followed(q);
    EXPECT_EQ(f.state, FollowState::LessThanThought);
    EXPECT_FALSE(f.faster);
    EXPECT_TRUE(says(f.reasons, "follow-less-than-thought"));
    EXPECT_FALSE(says(f.reasons, "follow-faster"));
}

TEST(FollowStates, OneWeighingInsideItsBandIsOnCourse) {
    auto q = oxfordColony(20, 2, 10);
    q.tare.sd = kilograms(0.5);
    q.observations = {weighed(q, 10, expectedGross(q, 10) - 1.5)};
    const auto f = followed(q);
    EXPECT_GT(f.judged.front().seen, f.judged.front().expected.low);
    EXPECT_EQ(f.state, FollowState::OnCourse);
}

TEST(FollowStates, RightAndThenTooLightMeansEatingFaster) {
    const auto f = followed(weighedTwice(2.5));
    EXPECT_EQ(f.state, FollowState::EatingFaster);
    EXPECT_TRUE(says(f.reasons, "follow-faster"));
    EXPECT_FALSE(says(f.reasons, "check-the-scale"));
    EXPECT_NEAR((f.faster->lost - f.faster->expected).value(), 2.5, 0.4);
}

TEST(FollowStates, AsForecastTwiceOrHeavierIsNot) {
    EXPECT_EQ(stateOf(weighedTwice(0)), FollowState::OnCourse);
    EXPECT_EQ(stateOf(weighedTwice(0.4)), FollowState::OnCourse);
    EXPECT_FALSE(followed(weighedTwice(-1)).faster);
}

TEST(FollowStates, BeyondEveryWinterItIsSaidWithTheScaleToBeChecked) {
    const auto f = followed(weighedTwice(6));
    EXPECT_TRUE(f.judged.back().contradicts);
    EXPECT_EQ(f.state, FollowState::EatingFaster);
    EXPECT_TRUE(says(f.reasons, "check-the-scale"));
    EXPECT_FALSE(says(f.reasons, "weighing-contradicts"));
}

TEST(FollowStates, MuchHeavierCannotBeSaid) { EXPECT_EQ(stateOf(weighedTwice(-8)), FollowState::CannotSay); }

TEST(FollowStates, AFeedBetweenTheWeighingsIsTakenOff) {
    auto q = weighedTwice(0);
    q.steps = {{{-20}, KnownStep::Kind::Feed, kilograms(3), kilograms(0.1)}};
    EXPECT_TRUE(followed(q).faster) << "fed 3 kg and no heavier: they were eaten";
    q.observations.back() = weighed(q, 20, expectedGross(q, 20) + 3);
    EXPECT_FALSE(followed(q).faster);
}

TEST(FollowStates, ALiftAndAScaleAreNotCompared) {
    auto q = weighedTwice(2.5);
    q.observations.front().what =
        WeightSeen{stores::WeighingKind::TwoSidedLift, kilograms(expectedGross(q, -55) * stores::twoSidesRead)};
    EXPECT_FALSE(followed(q).faster);
}

TEST(FollowStates, AWeighingInDoubtIsNotComparedWith) {
    auto q = weighedTwice(0);
    q.observations.front() = weighed(q, -55, expectedGross(q, -55) + 12);
    EXPECT_TRUE(followed(q).judged.front().contradicts);
    EXPECT_FALSE(followed(q).faster);
}

// ---- a feed that is not written down -----------------------------------------------------------------------------------------

TEST(FollowStates, APlannedFeedThatIsPastIsAskedAbout) {
    auto q = oxfordColony(20, 2, 0);
    q.unticked = {{{-80}, q.year.date({-80}), kilograms(4)}};
    const auto f = followed(q);
    EXPECT_EQ(f.state, FollowState::FeedNotRecorded);
    EXPECT_TRUE(says(f.reasons, "feed-not-recorded"));
    q.unticked.clear();
    EXPECT_EQ(stateOf(q), FollowState::OnCourse);
}

// ---- more than needed --------------------------------------------------------------------------------------------------------

FollowQuestion plenty(double storesKg, int today) {
    auto q = oxfordColony(storesKg, 2, today);
    q.tare.sd = kilograms(0.5);
    q.observations = {weighed(q, today, expectedGross(q, today))};
    return q;
}

TEST(FollowStates, FourFullCombsAboveTheReserveAtForageAreMoreThanNeeded) {
    const auto f = followed(plenty(34, 0));
    EXPECT_EQ(f.state, FollowState::MoreThanNeeded);
    EXPECT_GE(f.now.atForage.low.value(), 1 + 4 * 2.3);
    EXPECT_FALSE(f.feed);
    EXPECT_FALSE(f.expectedLater);
    auto unweighed = plenty(34, 0);
    unweighed.observations.clear();
    EXPECT_EQ(stateOf(unweighed), FollowState::OnCourse) << "only after a weighing";
}

TEST(FollowStates, NearForageTwoFullCombsAre) {
    const auto early = followed(plenty(22, 0));
    EXPECT_LT(early.now.atForage.low.value(), 1 + 4 * 2.3);
    EXPECT_EQ(early.state, FollowState::OnCourse);
    const int near = early.now.forage.typical.w - 20;
    const auto late = followed(plenty(22, near));
    EXPECT_LT(late.now.atForage.low.value(), 1 + 4 * 2.3);
    EXPECT_EQ(late.state, FollowState::MoreThanNeeded);
}

// ---- which comes first -------------------------------------------------------------------------------------------------------

TEST(FollowStates, TheMostPressingIsSaidFirst) {
    auto q = cluster(false, 1, 1800);
    q.unticked = {{{-80}, q.year.date({-80}), kilograms(4)}};
    auto f = followed(q);
    EXPECT_EQ(f.state, FollowState::FoodOutOfReach);
    EXPECT_TRUE(says(f.reasons, "follow-dwindling") && says(f.reasons, "feed-not-recorded"))
        << "the rest is said beside it";
    q.observations.pop_back();
    EXPECT_EQ(stateOf(q), FollowState::Dwindling);
    q.observations.push_back(on(q, -5, DeadOut{}));
    f = followed(q);
    EXPECT_EQ(f.state, FollowState::Dead);
    EXPECT_FALSE(f.feed || f.expectedLater);
}

} // namespace
} // namespace winterlarder::tracking::follow_states_test
