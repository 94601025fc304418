// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/keepers_days.h"
#include "tracking/winters.h"

namespace winterlarder::tracking::winter_feed_test {
namespace {

int dueDays() { return static_cast<int>(shipped().decisions.dueDays); }

TEST(WinterFeed, IsOneVisitNotSoonerThanAWeekAheadOfItsNeed) {
    const auto f = followed(oxfordColony(12, 1, 0));
    ASSERT_TRUE(f.feed);
    EXPECT_FALSE(f.feed->plan);
    ASSERT_EQ(f.feed->lots.size(), 1u);
    EXPECT_GT(f.feed->begins(), SeasonDay{0});
    EXPECT_EQ(f.feed->by - f.feed->begins(), dueDays());
    EXPECT_LE(f.feed->fondant.value(), 2.5);
    EXPECT_NEAR(f.feed->stores.value(), 0.85 * f.feed->fondant.value(), 1e-9);
    EXPECT_NEAR(f.feed->drySugar.value(), f.feed->stores.value() / 1.05, 0.1);
    EXPECT_TRUE(f.nextWeighing && f.nextWeighing->day <= f.feed->begins()) << "it is weighed before";
}

TEST(WinterFeed, IsTodayWhereTheNeedIsNear) {
    auto q = oxfordColony(15, 1, 20);
    q.stores.mean += q.reserve + kilograms(0.2) - followed(q).now.today.typical;
    const auto f = followed(q);
    EXPECT_NE(f.state, FollowState::ActNow);
    ASSERT_TRUE(f.feed);
    EXPECT_EQ(f.feed->begins(), q.today);
    EXPECT_LT(f.feed->by - f.feed->begins(), dueDays());
}

TEST(WinterFeed, WhatElseMayBeWantedIsAnExpectation) {
    const auto f = followed(oxfordColony(10, 1, 20));
    ASSERT_TRUE(f.feed && f.expectedLater);
    EXPECT_GT(f.missing, f.feed->stores);
    EXPECT_EQ(f.expectedLater->sugar.high.value(), 0);
    EXPECT_GE(f.expectedLater->fondant.low.value(), 0);
    EXPECT_GT(f.expectedLater->fondant.high.value(), 0.5);
    EXPECT_LE(f.expectedLater->from, f.expectedLater->until);
    EXPECT_FALSE(followed(oxfordColony(26, 1, 20)).expectedLater);
}

TEST(WinterFeed, OfANucleusIsAKilogramAtMost) {
    auto q = oxfordColony(6, 1, 60);
    q.nucleus = true;
    const auto f = followed(q);
    ASSERT_EQ(f.state, FollowState::ActNow);
    EXPECT_LE(f.feed->fondant.value(), 1);
}

TEST(WinterFeed, IsOnTheKeepersWeekdayWhereThereIsTime) {
    auto q = oxfordColony(12, 1, 0);
    q.visitWeekdays = {6};
    const auto feed = followed(q).feed;
    ASSERT_TRUE(feed);
    EXPECT_EQ(feeding::isoWeekday(feed->lots.front().date), 6);
    EXPECT_LE(feed->by - feed->begins(), dueDays());
}

TEST(WinterFeed, IsNotGivenWithinAFortnightOfForageUnlessTheyStarve) {
    auto q = oxfordColony(15, 1, 0);
    const int quiet = q.days.quietFrom.w + 1;
    q.today = {quiet};
    q.stores.mean += kilograms(6) - followed(q).now.today.typical;
    q.reserve = kilograms(7);
    auto f = followed(q);
    EXPECT_NE(f.state, FollowState::ActNow);
    EXPECT_FALSE(f.feed) << "below the reserve, but forage is near";
    q.stores.mean -= kilograms(5.8);
    f = followed(q);
    EXPECT_EQ(f.state, FollowState::ActNow);
    ASSERT_TRUE(f.feed);
    EXPECT_EQ(f.feed->begins(), q.today);
}

TEST(WinterFeed, InClosingIsSyrupInUsualVisits) {
    const auto f = followed(oxfordColony(10, 1, -90));
    ASSERT_TRUE(f.feed && f.feed->plan);
    EXPECT_GT(f.feed->plan->syrup.sugar.value(), 3);
    EXPECT_GE(f.feed->stores.value(), f.missing.value() - 0.05);
    EXPECT_TRUE(f.feed->lots.empty());
    EXPECT_EQ(f.feed->by, f.feed->begins());
}

TEST(WinterFeed, InLateIsSmallPortions) {
    auto q = oxfordColony(8, 1, 0);
    q.today = q.days.closing + 1;
    const auto f = followed(q);
    ASSERT_TRUE(f.feed && f.feed->plan) << q.days.closing.w << ' ' << q.days.late.w;
    EXPECT_TRUE(f.feed->plan->limits.smallLotsOnly);
    for (const auto& visit : f.feed->plan->visits) EXPECT_LE(visit.syrup.value(), 1 + 1e-9);
    EXPECT_TRUE(f.expectedLater) << "the rest is told as an expectation";
}

TEST(WinterFeed, WhereBeesAreLockedInForLongIsABoardWhenTheHiveIsWrapped) {
    auto q = oxfordColony(10, 1, 0);
    q.today = q.days.late + 1;
    q.days.boardUntil = q.today;
    const auto f = followed(q);
    ASSERT_TRUE(f.feed);
    EXPECT_EQ(f.feed->begins(), q.today);
    EXPECT_GT(f.feed->fondant.value(), 2.5);
    EXPECT_LE(f.feed->fondant.value(), 5);
    q.days.boardUntil = q.today - 1;
    const auto later = followed(q).feed;
    EXPECT_TRUE(!later || later->begins() > q.today);
}

TEST(WinterFeed, OfSummerIsOnlyWhatKeepsThemAlive) {
    auto q = oxfordColony(9, 1, -92);
    q.days.summer = {-80}; // as if it were summer still
    q.days.closing = std::max(q.days.closing, q.days.summer);
    const auto f = followed(q);
    EXPECT_FALSE(f.feed) << "nothing is ordered for winter";
    ASSERT_TRUE(f.expectedLater);
    EXPECT_GT(f.expectedLater->sugar.typical.value(), 1);
    EXPECT_EQ(f.expectedLater->fondant.high.value(), 0);
}

TEST(WinterFeed, LongHivesGetItBesideTheCluster) {
    auto q = oxfordColony(8, 1, 60);
    q.longHive = true;
    EXPECT_TRUE(says(followed(q).cautions, "fondant-long-hive"));
}

TEST(WinterFeed, WhereItCannotBeSaidOnlyHungerIsFed) {
    auto q = oxfordColony(22, 1, 10);
    q.tare.sd = kilograms(0.5);
    q.observations = {weighed(q, 10, expectedGross(q, 10) + 9)};
    const auto f = followed(q);
    ASSERT_EQ(f.state, FollowState::CannotSay);
    EXPECT_FALSE(f.feed || f.expectedLater);
}

TEST(FollowedCautions, TellHowToFeedWhenItIsToBeDone) {
    const auto later = followed(oxfordColony(12, 1, 0));
    ASSERT_TRUE(later.feed && later.feed->begins() > SeasonDay{dueDays()});
    EXPECT_FALSE(says(later.cautions, "fondant-on-cluster") || says(later.goodPractice, "fondant-on-cluster"));
    EXPECT_TRUE(says(followed(oxfordColony(8, 1, 60)).cautions, "fondant-on-cluster"));
}

TEST(FollowedCautions, AreFiveAtMost) {
    auto q = oxfordColony(8, 1, 60);
    q.observations = {on(q, 58, FlyingSeen{})};
    const auto f = followed(q);
    EXPECT_LE(f.cautions.size(), 5u);
    EXPECT_TRUE(says(f.cautions, "fondant-on-cluster"));
    EXPECT_TRUE(says(f.goodPractice, "local-rules"));
}

} // namespace
} // namespace winterlarder::tracking::winter_feed_test
