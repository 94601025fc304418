// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/evidence.h"

#include "learning/keeper.h"
#include "tracking/winters.h"

#include <cmath>

namespace winterlarder::learning::evidence_test {
namespace {

using tracking::on;
using tracking::weighed;

const winter::Sampling sampling{1, 1200};

PastWinter lastWinter(double stores = 22) { return {tracking::oxfordColony(stores, 0.5, 110), std::nullopt}; }

WinterEnd found(const PastWinter& past, int day, bool alive) {
    return {{day}, past.question.year.date({day}), alive, std::nullopt, 0.15, std::nullopt};
}

Lasting useOf(const PastWinter& past) {
    const auto evidence = *evidenceOf(past, constants(), sampling, 2);
    return learn({{1, 1, evidence}}, constants()).colonies.at(1).use;
}

TEST(Evidence, AddsUp) {
    WinterEvidence sum{1, 2, 3, 4, 5};
    sum += WinterEvidence{10, 20, 30, 40, 50};
    EXPECT_EQ(sum.useUse, 11);
    EXPECT_EQ(sum.useDeath, 22);
    EXPECT_EQ(sum.deathDeath, 33);
    EXPECT_EQ(sum.use, 44);
    EXPECT_EQ(sum.death, 55);
    EXPECT_FALSE(WinterEvidence{}.saysAnything());
}

TEST(Evidence, AWinterWithoutObservationsSaysNothing) {
    EXPECT_FALSE(evidenceOf(lastWinter(), constants(), sampling, 2)->saysAnything());
}

TEST(Evidence, HeavyHivesAteLittleLightOnesMuch) {
    auto heavy = lastWinter(), light = lastWinter();
    for (int day : {-60, 0, 60}) {
        const double gross = tracking::expectedGross(heavy.question, day), off = 0.015 * (day + 92);
        heavy.question.observations.push_back(weighed(heavy.question, day, gross + off));
        light.question.observations.push_back(weighed(light.question, day, gross - off));
    }
    EXPECT_LT(useOf(heavy).logMean, -0.03);
    EXPECT_GT(useOf(light).logMean, 0.03);
    EXPECT_LT(useOf(heavy).logSd, 0.2);
}

TEST(Evidence, StoresLeftOfALivingColonyTellTheUse) {
    auto past = lastWinter();
    past.end = found(past, 100, true);
    past.end->storesLeft = kilograms(16);
    EXPECT_LT(useOf(past).logMean, -0.1);
}

TEST(Evidence, BeesLeftTellTheDeaths) {
    auto past = lastWinter();
    past.end = found(past, 60, true);
    past.end->bees = BeeCount{14000};
    const auto evidence = *evidenceOf(past, constants(), sampling, 2);
    EXPECT_LT(learn({{1, 1, evidence}}, constants()).colonies.at(1).death.logMean, -0.02);
}

// A dead colony with stores left ate little because it was dead: it says nothing at all.
TEST(Evidence, ADeadColonyIsNeverTakenForOneThatAteLittle) {
    auto past = lastWinter();
    past.question.observations = {weighed(past.question, 60, tracking::expectedGross(past.question, 60) + 6)};
    past.end = found(past, 80, false);
    past.end->storesLeft = kilograms(15);
    EXPECT_FALSE(evidenceOf(past, constants(), sampling, 2)->saysAnything());
    past.end->storesLeft.reset();
    EXPECT_FALSE(evidenceOf(past, constants(), sampling, 2)->saysAnything());
}

TEST(Evidence, WhatWasSeenWhileItLivedStillCounts) {
    auto past = lastWinter();
    past.question.observations = {weighed(past.question, -30, tracking::expectedGross(past.question, -30) - 1.5),
                                  on(past.question, 0, tracking::ClusterSeen{}),
                                  weighed(past.question, 60, tracking::expectedGross(past.question, 60) + 6)};
    past.end = found(past, 80, false);
    const auto told = asTold(past);
    ASSERT_EQ(told.observations.size(), 2u);
    EXPECT_EQ(told.observations[1].day, (SeasonDay{0}));
}

// A colony that starved says only that it ate at least what it had.
TEST(Evidence, AStarvedColonyAteAtLeastWhatItHad) {
    auto past = lastWinter(16);
    past.end = found(past, 90, false);
    past.end->storesLeft = kilograms(0);
    const auto use = useOf(past);
    EXPECT_GT(use.logMean, 0.02);
    past.question.stores.mean = kilograms(5); // had it been given so little, starving would say next to nothing
    EXPECT_LT(useOf(past).logMean, use.logMean);
}

TEST(Evidence, StopsWhenAsked) {
    std::stop_source stop;
    stop.request_stop();
    auto past = lastWinter();
    past.end = found(past, 60, true);
    EXPECT_FALSE(evidenceOf(past, constants(), sampling, 1, stop.get_token()));
}

} // namespace
} // namespace winterlarder::learning::evidence_test
