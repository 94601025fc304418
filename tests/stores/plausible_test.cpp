// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/plausible.h"

#include "exchange/shipped_data.h"
#include "stores/sample_combs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::stores::plausible_test {
namespace {

using namespace samples;
using winterlarder::testing::shippedData;

const ModelConstants& constants() { return shippedData().constants; }
HiveBounds twoDeeps(std::optional<Mass> tare = {}) { return boundsOf({{deep(), deep()}, {}}, tare, constants()); }
const Date september = *Date::of(2026, 9, 10);

enum class Judged { Likely, Asked, Impossible };
Judged judged(const std::optional<Doubt>& doubt) {
    return !doubt ? Judged::Likely : doubt->impossible ? Judged::Impossible : Judged::Asked;
}
std::string textIn(const std::optional<Doubt>& doubt, const char* detail) {
    return std::get<std::string>(doubt.value().says.details.at(detail));
}
double massIn(const std::optional<Doubt>& doubt, const char* detail) {
    return std::get<Mass>(doubt.value().says.details.at(detail)).value();
}

Judged weight(double kg, const HiveBounds& hive) { return judged(doubtOfWeight(kilograms(kg), hive, constants())); }

TEST(HiveBounds, AreThoseOfTheFullestAndTheEmptiestHive) {
    const auto hive = twoDeeps();
    EXPECT_EQ(hive.places, 20);
    EXPECT_EQ(hive.seams, 22);
    EXPECT_EQ(hive.bees, 44000);
    EXPECT_NEAR(hive.holds.value(), 20 * hive::fullComb(deep(), 0.88).value(), 1e-9);
    const double parts = tareFromParts({{deep(), deep()}, {}}).mass.value();
    EXPECT_NEAR(hive.lightest.value(), parts - 4, 1e-9);
    EXPECT_NEAR(hive.likelyEmpty.value(), parts - 2, 1e-9);
    EXPECT_NEAR(hive.heaviest.value(), parts + 2 + hive.holds.value() + 44000 * constants().beeMass, 1e-9);
}

TEST(HiveBounds, AWeighedEmptyHiveWidensThem) {
    EXPECT_NEAR(twoDeeps(kilograms(40)).likelyEmpty.value(), 39, 1e-9);
    EXPECT_NEAR((twoDeeps(kilograms(40)).heaviest - twoDeeps().heaviest).value(),
                40 - (tareFromParts({{deep(), deep()}, {}}).mass.value() + 2), 1e-9);
    EXPECT_EQ(twoDeeps(kilograms(40)).lightest, twoDeeps().lightest) << "a wrong tare makes no weight impossible";
    EXPECT_EQ(twoDeeps(kilograms(9)).lightest, kilograms(9));
}

TEST(HiveBounds, CombsWiderThanTheirPlaceHoldMore) {
    auto wide = comb(deep(), 0, 1);
    wide.format.pitch = millimetres(42);
    EXPECT_GT(boundsOf({{deep()}, {wide}}, {}, constants()).holds, boundsOf({{deep()}, {}}, {}, constants()).holds);
}

TEST(Weights, AreHeldAgainstTheHive) {
    const auto hive = twoDeeps();
    for (const double likely : {22.0, 30.0, 54.5, 77.0, 84.0})
        EXPECT_EQ(weight(likely, hive), Judged::Likely) << likely;
    for (const double asked : {18.0, 20.0, 86.0, 100.0}) EXPECT_EQ(weight(asked, hive), Judged::Asked) << asked;
    for (const double impossible : {0.0, 5.0, 13.0, 120.0, 500.0})
        EXPECT_EQ(weight(impossible, hive), Judged::Impossible) << impossible;
}

TEST(Weights, NameTheWeightThatMayBeMeant) {
    const auto hive = twoDeeps();
    const auto pounds = doubtOfWeight(kilograms(120), hive, constants());
    EXPECT_EQ(textIn(pounds, "class"), "pounds");
    EXPECT_NEAR(massIn(pounds, "meant"), 54.43, 0.01);
    const auto heavy = doubtOfWeight(kilograms(545), hive, constants());
    EXPECT_EQ(textIn(heavy, "class"), "comma");
    EXPECT_NEAR(massIn(heavy, "meant"), 54.5, 1e-9);
    const auto light = doubtOfWeight(kilograms(5.45), hive, constants());
    EXPECT_EQ(textIn(light, "class"), "comma");
    EXPECT_NEAR(massIn(light, "meant"), 54.5, 1e-9);
    EXPECT_EQ(textIn(doubtOfWeight(kilograms(19), hive, constants()), "class"), "plain");
}

TEST(Weights, OneSideIsNoLessThanHalfTheEmptyHive) {
    const auto hive = twoDeeps();
    const Mass half = hive.empty / 2;
    const auto side = [&](Mass kg) { return judged(doubtOfOneSide(kg, hive, constants())); };
    EXPECT_EQ(side(half + kilograms(0.1)), Judged::Likely);
    EXPECT_EQ(side(half - kilograms(0.1)), Judged::Asked);
    EXPECT_EQ(side(hive.lightest * 0.39), Judged::Impossible);
    EXPECT_EQ(side(hive.heaviest), Judged::Impossible) << "twice as much as it can be";
    const auto light = doubtOfOneSide(half - kilograms(1), hive, constants());
    EXPECT_EQ(textIn(light, "class"), "one-side");
    EXPECT_EQ(massIn(light, "least"), half.value());
}

TEST(TwoWeights, OfOneScaleDoNotDifferTenfold) {
    const auto pair = [](double a, double b, int days = 10) {
        return judged(doubtOfTwoWeights({kilograms(a), kilograms(b), september, days, 0}, constants()));
    };
    EXPECT_EQ(pair(36, 3.6), Judged::Asked);
    EXPECT_EQ(pair(3.6, 36), Judged::Asked);
    EXPECT_EQ(pair(66, 30), Judged::Asked) << "pounds and kilograms";
    EXPECT_EQ(pair(30, 66), Judged::Asked);
    EXPECT_EQ(pair(66, 30, 46), Judged::Likely) << "too far apart to tell";
    EXPECT_EQ(pair(45, 30), Judged::Likely);
    EXPECT_EQ(pair(30, 28), Judged::Likely);
}

TEST(TwoWeights, WhatWasFedTakenOrFoundExplainsTwiceTheWeight) {
    const auto pair = [](int flowDays, double fed, double taken) {
        return judged(doubtOfTwoWeights(
            {kilograms(66), kilograms(30), september, 20, flowDays, kilograms(fed), kilograms(taken)}, constants()));
    };
    EXPECT_EQ(pair(0, 0, 0), Judged::Asked);
    EXPECT_EQ(pair(20, 0, 0), Judged::Likely) << "a flow";
    EXPECT_EQ(pair(0, 31, 0), Judged::Likely);
    EXPECT_EQ(pair(0, 0, 31), Judged::Likely);
}

TEST(Harvests, AreHeldAgainstTheHiveAndWhatWasThere) {
    const auto hive = boundsOf({{deep()}, {}}, {}, constants());
    const auto taken = [&](double kg) { return judged(doubtOfHarvest(kilograms(kg), hive, constants())); };
    EXPECT_EQ(taken(20), Judged::Likely);
    EXPECT_EQ(taken(30), Judged::Asked);
    EXPECT_EQ(taken(60), Judged::Impossible);
    const auto there = [&](double kg, int days, int flowDays) {
        return judged(
            doubtOfHarvestOf(kilograms(kg), {september, kilograms(28), kilograms(16), flowDays, days}, constants()));
    };
    EXPECT_EQ(there(15, 5, 0), Judged::Likely);
    EXPECT_EQ(there(20, 5, 0), Judged::Asked);
    EXPECT_EQ(there(20, 5, 5), Judged::Likely) << "ten kilograms may have come in";
    EXPECT_EQ(there(60, 5, 0), Judged::Impossible) << "more than the whole hive weighed";
    EXPECT_EQ(judged(doubtOfHarvestOf(kilograms(60), {september, kilograms(0), kilograms(16)}, constants())),
              Judged::Asked)
        << "combs were only looked at";
}

TEST(Feeds, AreHeldAgainstWhatAHiveTakes) {
    const auto hive = twoDeeps();
    const auto feed = [&](double stores, double recently, std::optional<Volume> syrup, std::optional<Mass> solid) {
        return judged(doubtOfFeed({kilograms(stores), kilograms(recently), syrup, solid}, hive, constants()));
    };
    EXPECT_EQ(feed(12, 30, litres(12), {}), Judged::Likely);
    EXPECT_EQ(feed(12, 60, litres(12), {}), Judged::Asked) << "too much in three weeks";
    EXPECT_EQ(feed(30, 30, litres(31), {}), Judged::Asked);
    EXPECT_EQ(feed(13, 13, {}, kilograms(15)), Judged::Likely);
    EXPECT_EQ(feed(14, 14, {}, kilograms(16)), Judged::Asked);
    EXPECT_EQ(feed(115, 115, {}, kilograms(100)), Judged::Impossible);
}

TEST(Counts, AreHeldAgainstTheHive) {
    const auto hive = twoDeeps();
    EXPECT_EQ(judged(doubtOfCoveredCombs(20, hive, constants())), Judged::Likely);
    EXPECT_EQ(judged(doubtOfCoveredCombs(21, hive, constants())), Judged::Asked);
    EXPECT_EQ(judged(doubtOfCoveredCombs(40, hive, constants())), Judged::Impossible);
    EXPECT_EQ(judged(doubtOfSeams(22, hive, constants())), Judged::Likely);
    EXPECT_EQ(judged(doubtOfSeams(30, hive, constants())), Judged::Impossible);
    EXPECT_EQ(judged(doubtOfBees(88000, hive, constants())), Judged::Likely);
    EXPECT_EQ(judged(doubtOfBees(100000, hive, constants())), Judged::Asked);
    EXPECT_EQ(judged(doubtOfFullCombs(20, hive, constants())), Judged::Likely);
    EXPECT_EQ(judged(doubtOfFullCombs(22, hive, constants())), Judged::Asked);
    EXPECT_EQ(judged(doubtOfBrood(0.7 * hive.cells, hive, constants())), Judged::Likely);
    EXPECT_EQ(judged(doubtOfBrood(0.8 * hive.cells, hive, constants())), Judged::Asked);
    EXPECT_EQ(judged(doubtOfBrood(1.3 * hive.cells, hive, constants())), Judged::Impossible);
    EXPECT_EQ(judged(doubtOfStoresLeft(kilograms(50), hive, constants())), Judged::Likely);
    EXPECT_EQ(judged(doubtOfStoresLeft(kilograms(90), hive, constants())), Judged::Impossible);
}

TEST(Moisture, OfHoneyIsThirteenToTwentyFive) {
    for (const double likely : {13.0, 17.5, 25.0}) EXPECT_FALSE(doubtOfMoisture(likely, constants())) << likely;
    for (const double asked : {12.0, 26.0})
        EXPECT_EQ(judged(doubtOfMoisture(asked, constants())), Judged::Asked) << asked;
}

TEST(Tares, AreHeldAgainstTheParts) {
    const TareQuestion parts{{deep(), deep()}, {}};
    const auto given = [&](double kg) { return judged(doubtOfTare(kilograms(kg), parts, constants())); };
    for (const double likely : {15.5, 18.0, 24.0, 28.0}) EXPECT_EQ(given(likely), Judged::Likely) << likely;
    for (const double asked : {13.0, 32.0, 60.0}) EXPECT_EQ(given(asked), Judged::Asked) << asked;
    for (const double impossible : {0.0, 5.0, 90.0, 150.0})
        EXPECT_EQ(given(impossible), Judged::Impossible) << impossible;
    EXPECT_EQ(doubtOfTare(kilograms(32), parts, constants()).value().says.id, "doubt-tare-heavy");
    EXPECT_EQ(doubtOfTare(kilograms(13), parts, constants()).value().says.id, "doubt-tare-light");
}

TEST(Tares, OfAHiveWithFewCombsAreNotTooLight) {
    const TareQuestion parts{{deep(), deep()}, {comb(deep(), 0, 1)}};
    EXPECT_FALSE(doubtOfTare(tareFromParts(parts).mass, parts, constants()));
}

TEST(RecordDays, LieNotAheadAndNotBeforeTheColony) {
    const Date today = september;
    EXPECT_FALSE(doubtOfDay(today.plusDays(1), today, {})) << "where the hive stands it may be tomorrow";
    EXPECT_EQ(doubtOfDay(today.plusDays(2), today, {}).value().says.id, "doubt-later");
    EXPECT_TRUE(doubtOfDay(today.plusDays(366), today, {}).value().takenMeanwhile);
    EXPECT_FALSE(doubtOfDay(today.plusDays(367), today, {}).value().takenMeanwhile) << "rather the year is wrong";
    EXPECT_FALSE(doubtOfDay(today, today, today));
    EXPECT_EQ(doubtOfDay(today, today, today.plusDays(1)).value().says.id, "doubt-before");
    EXPECT_FALSE(doubtOfDay(today, today, today.plusDays(1)).value().takenMeanwhile);
}

TEST(Flow, IsPossibleWhileFlowersAreOut) {
    const auto days = [](const char* from, const char* to, double latitude) {
        return flowDaysBetween(*Date::parse(from), *Date::parse(to), latitude);
    };
    EXPECT_EQ(days("2026-09-21", "2026-10-11", 45), 10);
    EXPECT_EQ(days("2026-09-21", "2026-10-11", -38), 10);
    EXPECT_EQ(days("2026-09-21", "2026-10-11", 10), 20);
    EXPECT_NEAR(mostFlow(20, 10, constants()).value(), 23, 1e-9);
}

//! A colony with what fits into its hive is never asked about, in any hive.
RC_GTEST_PROP(LikelyEntries, AreNeverAskedAbout, ()) {
    const auto boxCount = *rc::gen::inRange(1, 5);
    const std::vector<hive::CombFormat> boxes(static_cast<std::size_t>(boxCount),
                                              *rc::gen::element(deep(), medium(), longHive()));
    const auto hive = boundsOf({boxes, {}}, {}, constants());
    const auto share = [] { return *rc::gen::inRange(0, 101) / 100.0; };
    const auto tare = tareFromParts({boxes, {}});
    const Mass empty = tare.mass + (2 * share() - 1) * tare.sd;
    const Mass gross = empty + share() * hive.holds + kilograms(constants().beeMass * share() * hive.bees);
    RC_ASSERT(!doubtOfWeight(gross, hive, constants()));
    RC_ASSERT(!doubtOfHarvest(share() * hive.holds, hive, constants()));
    RC_ASSERT(!doubtOfCoveredCombs(share() * hive.places, hive, constants()));
    RC_ASSERT(!doubtOfBrood(0.75 * share() * hive.cells, hive, constants()));
    RC_ASSERT(
        !doubtOfTwoWeights({gross, gross + share() * kilograms(6) - kilograms(3), september, 10, 0}, constants()));
}

} // namespace
} // namespace winterlarder::stores::plausible_test
