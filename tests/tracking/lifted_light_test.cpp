// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/lifted_light.h"
#include "tracking/winters.h"

namespace winterlarder::tracking::lifted_light_test {
namespace {

constexpr int lifted = 17;

// Well provided by its November weighing, and light by a lift of mid January.
FollowQuestion light(stores::HeftWord word = stores::HeftWord::Light, int today = lifted + 1) {
    auto q = oxfordColony(20, 2, today);
    q.tare.sd = kilograms(0.5);
    q.observations = {weighed(q, -55, expectedGross(q, -55)), on(q, lifted, HeftSeen{kilograms(6), word})};
    return q;
}

TEST(LiftedLight, OnePortionTodayAndAWeighing) {
    const auto f = followed(light());
    EXPECT_EQ(f.state, FollowState::ActNow);
    ASSERT_TRUE(f.feed);
    EXPECT_NEAR(f.feed->fondant.value(), 2.5, 1e-9);
    EXPECT_EQ(f.feed->begins(), SeasonDay{lifted + 1});
    ASSERT_TRUE(f.nextWeighing);
    EXPECT_LE(f.nextWeighing->day - f.feed->begins(), 3);
    EXPECT_TRUE(says(f.reasons, "follow-light"));
    EXPECT_FALSE(says(f.reasons, "follow-course"));
    EXPECT_FALSE(says(f.reasons, "follow-act-now")) << "how long the food lasts is not what decided";
}

TEST(LiftedLight, AWeighingOfTheFortnightBeforeIsAskedAgainInstead) {
    auto q = light();
    q.observations.push_back(weighed(q, lifted - 10, expectedGross(q, lifted - 10)));
    const auto f = followed(q);
    EXPECT_EQ(f.state, FollowState::OnCourse);
    EXPECT_FALSE(f.feed);
    ASSERT_TRUE(f.nextWeighing);
    EXPECT_EQ(f.nextWeighing->day, q.today);
    EXPECT_TRUE(says(f.reasons, "follow-light-weighed"));
}

TEST(LiftedLight, FairOldOrFedSinceIsNoReason) {
    EXPECT_FALSE(liftedLight(light(stores::HeftWord::Fair)));
    EXPECT_TRUE(liftedLight(light(stores::HeftWord::Light, lifted + 14)));
    EXPECT_FALSE(liftedLight(light(stores::HeftWord::Light, lifted + 15)));
    auto q = light();
    q.steps = {{{lifted}, KnownStep::Kind::Feed, kilograms(2), std::nullopt}};
    EXPECT_FALSE(liftedLight(q));
    q = light();
    q.observations.push_back(on(q, lifted + 1, HeftSeen{kilograms(12), stores::HeftWord::Fair}));
    EXPECT_FALSE(liftedLight(q)) << "the last lift counts";
}

TEST(LiftedLight, OnlyBetweenLateAutumnAndTheQuietTimeOfSpring) {
    auto q = light();
    q.days.late = q.today;
    EXPECT_FALSE(liftedLight(q));
    q = light();
    q.days.quietFrom = q.today + (-1);
    EXPECT_FALSE(liftedLight(q));
}

// ---- heavier than can be explained -------------------------------------------------------------------------------------------

FollowQuestion heavier(double more) {
    auto q = oxfordColony(20, 2, 10);
    q.observations = {weighed(q, 5, expectedGross(q, 5) + more)};
    return q;
}

TEST(HeavierThanExpected, AWeightFarAboveWhatWasExpectedIsSaid) {
    const auto f = followed(heavier(9.5));
    ASSERT_TRUE(f.heavier);
    EXPECT_GT(f.heavier->seen, f.heavier->high);
    EXPECT_EQ(f.state, FollowState::CannotSay);
    EXPECT_TRUE(says(f.reasons, "follow-heavier"));
}

TEST(HeavierThanExpected, OneABitAboveItIsNot) {
    EXPECT_FALSE(followed(heavier(4)).heavier);
    EXPECT_FALSE(followed(heavier(-9)).heavier);
}

} // namespace
} // namespace winterlarder::tracking::lifted_light_test
