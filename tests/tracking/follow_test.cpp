// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/winters.h"

#include "stores/bees.h"

#include <algorithm>
#include <fmt/format.h>
#include <gmock/gmock.h>

namespace winterlarder::tracking::follow_test {
namespace {

TEST(Follow, NothingSeenIsOnCourse) {
    const auto f = followed(oxfordColony(24, 1, 0));
    EXPECT_EQ(f.state, FollowState::OnCourse);
    EXPECT_NEAR(f.position, 0.5, 0.02);
    EXPECT_FALSE(f.feed);
    EXPECT_TRUE(says(f.reasons, "follow-course"));
    EXPECT_NEAR(f.now.touchReserve.share, f.autumn.touchReserve.share, 0.02);
}

TEST(Follow, AsForecastIsOnCourse) {
    auto q = oxfordColony(19, 1, 5);
    q.observations = {weighed(q, 0, expectedGross(q, 0))};
    EXPECT_EQ(followed(q).state, FollowState::OnCourse);
}

TEST(Follow, WhatIsMissingIsTheLeastThatKeepsTheRisk) {
    auto q = oxfordColony(11, 1, 20);
    const Mass missing = followed(q).missing;
    ASSERT_GT(missing.value(), 1);
    const auto shareWith = [&](double kg) {
        auto fed = q;
        fed.steps = {{q.today, KnownStep::Kind::Feed, kilograms(kg), kilograms(0)}};
        fed.today = q.today + 1;
        const auto now = forecastOf(fed, *track(fed, constants(), quick, 2), fed.today);
        return (now.touchReserve.share - now.out.share) / (1 - now.out.share); // of those that live
    };
    EXPECT_LE(shareWith(missing.value()), 0.2 + 0.005); // one day more has passed
    EXPECT_GT(shareWith(missing.value() - 0.2), 0.2 - 0.005);
}

TEST(Follow, ADeadOutIsDead) {
    auto q = oxfordColony(15, 1, 20);
    q.observations = {on(q, 10, DeadOut{})};
    const auto f = followed(q);
    EXPECT_EQ(f.state, FollowState::Dead);
    EXPECT_FALSE(f.feed);
    EXPECT_FALSE(f.nextWeighing);
    EXPECT_TRUE(says(f.reasons, "follow-dead"));
    EXPECT_TRUE(says(f.cautions, "dead-out"));
}

TEST(Follow, AContradictionCannotBeSaidUntilConfirmed) {
    auto q = oxfordColony(18, 1, 30);
    q.tare.sd = kilograms(0.5);
    q.observations = {weighed(q, 0, expectedGross(q, 0) - 10)};
    auto f = followed(q);
    EXPECT_EQ(f.state, FollowState::CannotSay);
    EXPECT_TRUE(says(f.reasons, "weighing-contradicts"));
    q.observations.push_back(weighed(q, 20, expectedGross(q, 20) - 10));
    f = followed(q);
    EXPECT_NE(f.state, FollowState::CannotSay);
    EXPECT_TRUE(says(f.reasons, "unexplained-change"));
}

TEST(Follow, WhatLiesAheadOfTodayIsNotKnown) {
    auto q = oxfordColony(18, 1, 0);
    q.observations = {weighed(q, 10, 3)};
    q.steps = {{{10}, KnownStep::Kind::Feed, kilograms(9), std::nullopt}};
    const auto f = followed(q);
    EXPECT_TRUE(f.judged.empty());
    EXPECT_EQ(f.state, FollowState::OnCourse);
}

TEST(Follow, AfterTheRunsEndItIsAsOnItsLastDay) {
    auto q = oxfordColony(24, 1, 205);
    auto last = q;
    last.today = winter::runEnd(q.winter, constants());
    ASSERT_LT(last.today, q.today);
    const auto after = followed(q), then = followed(last);
    EXPECT_EQ(after.state, then.state);
    EXPECT_EQ(after.now.today, then.now.today);
    EXPECT_EQ(after.now.out.share, then.now.out.share);
    q.observations = {on(q, 200, DeadOut{})};
    EXPECT_EQ(followed(q).state, FollowState::Dead);
}

TEST(Follow, AskedBeforeItWasDecidedIsAnError) { EXPECT_THROW(followed(oxfordColony(18, 1, -93)), ContractViolation); }

TEST(Follow, FeedsPlannedInAutumnBelongToThePlan) {
    auto q = oxfordColony(12, 1, 0);
    q.planned = {{{-85}, kilograms(7)}};
    q.steps = {{{-85}, KnownStep::Kind::Feed, kilograms(7), std::nullopt}};
    EXPECT_EQ(followed(q).state, FollowState::OnCourse);
    const double given = followed(q).now.today.typical.value();
    q.steps.clear(); // planned and never given
    EXPECT_NEAR(followed(q).now.today.typical.value(), given - 7, 0.3) << "no feed is taken for given";
    EXPECT_NEAR(followed(q).autumn.today.typical.value(), given, 0.5);
}

TEST(NextWeighing, IsWorthItWhereItChangesTheDecision) {
    const auto near = followed(oxfordColony(16, 2, -20)); // right at the need
    ASSERT_TRUE(near.nextWeighing);
    EXPECT_GE(near.nextWeighing->day, (SeasonDay{-13}));
    EXPECT_GE(near.nextWeighing->changes, 0.1);
    const auto plenty = followed(oxfordColony(40, 1, -20));
    EXPECT_FALSE(plenty.nextWeighing);
    EXPECT_TRUE(says(plenty.reasons, "no-more-weighing"));
}

TEST(Spring, SaysWhatToLeaveAndWhatMayBeTaken) {
    auto q = oxfordColony(30, 1, 80);
    q.observations = {weighed(q, 80, expectedGross(q, 80))};
    const auto format = hive::combFormat(*shipped().format("langstroth-deep"));
    q.boxes = {format, format};
    for (int i = 0; i < 20; ++i) {
        stores::Comb comb{format, i / 10, i % 10};
        comb.capped = 0.9;
        comb.fed = i == 19; // took syrup
        q.combs.push_back(comb);
    }
    q.coveredCombs = 6;
    auto f = followed(q);
    ASSERT_TRUE(f.spring);
    EXPECT_GE(f.spring->leave.value(), 4);
    ASSERT_EQ(f.state, FollowState::MoreThanNeeded);
    EXPECT_GT(f.spring->surplus.low.value(), 3);
    EXPECT_FALSE(f.spring->combs.empty());
    for (int comb : f.spring->combs) EXPECT_NE(comb, 19);
    EXPECT_TRUE(says(f.cautions, "old-feed-stays-down") || says(f.goodPractice, "old-feed-stays-down"));
    const auto surplusFor = [](const Following& each) {
        for (const auto& reason : each.reasons)
            if (reason.id == "spring-surplus") return std::get<std::string>(reason.details.at("class"));
        return std::string();
    };
    EXPECT_EQ(surplusFor(f), "take");
    q.treated = true;
    f = followed(q);
    EXPECT_EQ(surplusFor(f), "bees") << "what may not be taken is not said to come out";
    EXPECT_FALSE(f.spring->mayTake);
    EXPECT_TRUE(f.spring->combs.empty());
    EXPECT_TRUE(says(f.cautions, "treated-honey"));
}

TEST(Spring, IsNotSpokenOfInMidwinter) { EXPECT_FALSE(followed(oxfordColony(20, 1, 0)).spring); }

// Neither a surplus nor room for the queen comes out of a hive that may itself fall short, or that nobody weighed.
TEST(Spring, NothingComesOutUnlessMoreIsThereThanNeeded) {
    const auto nothing = [](const FollowQuestion& q) {
        const auto f = followed(q);
        ASSERT_TRUE(f.spring);
        EXPECT_EQ(f.spring->surplus.high, kilograms(0));
        EXPECT_TRUE(f.spring->combs.empty());
        EXPECT_FALSE(f.spring->queenRoom);
        EXPECT_FALSE(says(f.reasons, "spring-surplus"));
        EXPECT_FALSE(says(f.cautions, "old-feed-stays-down") || says(f.cautions, "spring-not-this-honey"));
        EXPECT_TRUE(says(f.cautions, "cold-spell"));
    };
    auto q = oxfordColony(13, 4, 80);
    const auto format = hive::combFormat(*shipped().format("langstroth-deep"));
    q.boxes = {format};
    for (int i = 0; i < 10; ++i) q.combs.push_back({format, 0, i});
    q.observations = {weighed(q, 80, expectedGross(q, 80))};
    EXPECT_TRUE(followed(q).fallsShort);
    EXPECT_GT(followed(q).now.atForage.high.value(), followed(q).spring->leave.value() + 0.5) << "in a good spring";
    nothing(q);
    nothing(oxfordColony(30, 1, 80));
}

TEST(Follow, HowFarItMayBeOpenedGoesByItsOwnNumber) {
    const auto howFar = [](const FollowQuestion& q) {
        const auto f = followed(q);
        for (const auto* said : {&f.cautions, &f.goodPractice})
            for (const auto& each : *said)
                if (each.id == "look-from-outside") {
                    const double warmest = std::get<Temperature>(each.details.at("temperature")).value();
                    return fmt::format("{} {}", std::get<std::string>(each.details.at("class")),
                                       warmest < 7    ? "<7"
                                       : warmest < 10 ? "<10"
                                                      : "<15");
                }
        return std::string();
    };
    auto well = oxfordColony(25, 2, 10);
    well.winter.curve = winter::questionAt("ca-halifax", 13000, -92).curve;
    EXPECT_EQ(howFar(well), "closed <7");
    EXPECT_EQ(howFar(oxfordColony(25, 2, 10)), "lid <10");
    EXPECT_EQ(howFar(oxfordColony(25, 2, 70)), "moment <15");
    auto starving = oxfordColony(8, 1, 60);
    starving.observations = {weighed(starving, 60, expectedGross(starving, 60) - 0.5)};
    EXPECT_THAT(howFar(starving), ::testing::StartsWith("fed")) << "the lid comes off for food that cannot wait";
}

TEST(Follow, WhetherItWillDoComesBeforeHowItWasEaten) {
    auto q = oxfordColony(11, 2, 10);
    q.observations = {weighed(q, 10, expectedGross(q, 10))};
    const auto f = followed(q);
    ASSERT_EQ(f.state, FollowState::OnCourse);
    ASSERT_TRUE(f.fallsShort);
    EXPECT_GT(f.now.touchReserve.share, q.shortRisk);
    EXPECT_EQ(f.reasons.front().id, "follow-reserve-by");
    EXPECT_EQ(std::count_if(f.reasons.begin(), f.reasons.end(),
                            [](const auto& each) { return each.id == "follow-reserve-by"; }),
              1);
    EXPECT_EQ(std::get<std::string>(f.reasons.at(1).details.at("class")), "short");
    int lighter = 0;
    for (const double stores : {15, 16, 17, 18})
        for (const double kg : {3.2, 3.6, 4.0}) {
            q = oxfordColony(stores, 2, 60);
            q.tare.sd = kilograms(0.5);
            q.observations = {weighed(q, 60, expectedGross(q, 60) - kg)};
            const auto less = followed(q);
            const bool likely = less.now.today.typical >= less.autumn.today.low;
            if (less.state != FollowState::OnCourse || !less.fallsShort || likely) continue;
            EXPECT_EQ(std::get<std::string>(less.reasons.at(1).details.at("class")), "less") << stores << ' ' << kg;
            ++lighter;
        }
    EXPECT_GT(lighter, 0) << "not eaten as expected, though nothing worse fits";
}

TEST(Spring, FullCombsLeaveTheQueenLittleRoom) {
    auto q = oxfordColony(30, 1, 80);
    q.observations = {weighed(q, 80, expectedGross(q, 80))};
    const auto format = hive::combFormat(*shipped().format("langstroth-deep"));
    q.boxes = {format};
    for (int i = 0; i < 10; ++i) q.combs.push_back({format, 0, i});
    const auto f = followed(q);
    ASSERT_TRUE(f.spring && f.spring->queenRoom);
    EXPECT_GT(f.spring->queenRoom->value(), 0);
    for (int i = 0; i < 30; ++i) q.combs.push_back({format, 0, i});
    EXPECT_FALSE(followed(q).spring->queenRoom);
}

// Where the winter is cold a colder one so far costs more, and the days measured are the same in every winter. (Where it is mild a
// cold one saves brood.)
TEST(Follow, TheWeatherSoFarCounts) {
    auto q = oxfordColony(18, 1, 0);
    q.winter = winter::questionAt("ca-winnipeg", 13000, -92);
    const auto loss = [&](double kelvin) {
        q.winter.weatherSoFar.clear();
        for (int day = -92; day < 0; ++day)
            q.winter.weatherSoFar.push_back({{day}, q.winter.curve.normal({day}).value() + kelvin});
        return followed(q).now.lost.typical.value();
    };
    EXPECT_GT(loss(-6), loss(0) + 0.1);
}

// A reading is stores with the rest taken off it: a kilogram more on the scale is a kilogram more of stores, as far as tare and bees are known.
TEST(Follow, WeighingsAreShownAsStores) {
    auto q = oxfordColony(19, 1, 20);
    q.tare.sd = kilograms(0.5);
    const double gross = expectedGross(q, 10);
    q.observations = {weighed(q, 10, gross)};
    const auto first = followed(q).seen;
    ASSERT_EQ(first.size(), 1u);
    EXPECT_EQ(first[0].day, SeasonDay{10});
    EXPECT_GT(first[0].sd.value(), 0.1);
    q.observations = {weighed(q, 10, gross + 1)};
    EXPECT_NEAR(followed(q).seen[0].stores.value() - first[0].stores.value(), 1, 0.35)
        << "part of it is laid to tare and bees";
    q.observations = {on(q, 10, StoresSeen{kilograms(12), kilograms(0.5)})};
    EXPECT_NEAR(followed(q).seen[0].stores.value(), 12, 1e-9);
}

// What was fed between the decision and the weighing is stores too.
TEST(Follow, AFeedBetweenIsPartOfTheStoresWeighed) {
    auto q = oxfordColony(19, 1, 20);
    q.tare.sd = kilograms(0.5);
    const double gross = expectedGross(q, 10);
    q.observations = {weighed(q, 10, gross)};
    const double without = followed(q).seen[0].stores.value();
    q.steps = {{SeasonDay{0}, KnownStep::Kind::Feed, kilograms(3), kilograms(0.1)}};
    q.observations = {weighed(q, 10, gross + 3)};
    EXPECT_NEAR(followed(q).seen[0].stores.value(), without + 3, 0.3);
}

} // namespace
} // namespace winterlarder::tracking::follow_test
