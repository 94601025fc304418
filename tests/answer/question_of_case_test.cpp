// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/question_of_case.h"

#include "answer/doubt_words.h"

#include "exchange/shipped_data.h"
#include "stores/weighing.h"

#include <gmock/gmock.h>

namespace winterlarder::answer::question_of_case_test {
namespace {

using advice::ColonyQuestion;
using advice::RefusalKind;
using ::testing::AllOf;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using winterlarder::testing::shippedData;

std::string with(const std::string& members, const std::string& site = R"({"station": "ca-halifax"})",
                 const std::string& hive = R"({"format": "langstroth-deep", "boxes": 2})") {
    return R"({"case": 1, "as_of": "2026-09-12", "site": )" + site + ", \"hive\": " + hive +
           (members.empty() ? "" : ", " + members) + "}";
}

ColonyQuestion question(const std::string& text, std::uint64_t position = 0) {
    auto read = readQuestion(text, "case.json", shippedData(), position);
    if (!read) throw std::runtime_error(describe(read.problems().front()));
    return std::move(read->question);
}

Problems problems(const std::string& text) {
    const auto read = readQuestion(text, "case.json", shippedData(), 0);
    return read ? Problems{} : read.problems();
}

TEST(QuestionOfCase, PlaceAndTime) {
    const auto q = question(with(R"("looked_on": "2026-08-20")"));
    EXPECT_EQ(q.winter, Winter(Hemisphere::North, 2026));
    EXPECT_EQ(q.winter.date(q.asOf).iso(), "2026-09-12");
    EXPECT_EQ(q.winter.date(q.lookedOn).iso(), "2026-08-20");
    EXPECT_EQ(q.site->stationId, "ca-halifax");
    EXPECT_TRUE(q.season.derivable());
    EXPECT_THAT(q.refusals, IsEmpty());
    EXPECT_EQ(question(with("", R"({"station": "au-melbourne"})")).winter.hemisphere(), Hemisphere::South);
}

TEST(QuestionOfCase, ALookBeforeTheSeasonCountsOnItsFirstDay) {
    const auto q =
        question(R"({"case": 1, "as_of": "2026-08-10", "looked_on": "2026-07-20", "site": {"station": "ca-halifax"},
      "hive": {"format": "langstroth-deep"}, "feeds": [{"date": "2026-07-25", "kind": "fondant", "fondant_kg": 1}, {"date": "2026-07-10", "kind": "fondant", "fondant_kg": 1}]})");
    EXPECT_EQ(q.lookedOn, firstSeasonDay);
    EXPECT_GT(q.feeds[0].day, q.lookedOn) << "given after the look, so it counts";
    EXPECT_EQ(q.feeds[1].day, q.lookedOn) << "given before the look, so it does not";
}

TEST(QuestionOfCase, AFeedOfTheEveningAfterTheLookCountsOnTopOfWhatWasSeen) {
    const auto fed = [](const char* after) {
        return question(
            std::string(
                R"({"case": 1, "as_of": "2026-09-12", "looked_on": "2026-09-12", "site": {"station": "ca-halifax"}, )") +
            after +
            R"("hive": {"format": "langstroth-deep"}, "feeds": [{"date": "2026-09-12", "kind": "fondant", "fondant_kg": 1}]})");
    };
    EXPECT_EQ(fed("").feeds[0].day, fed("").lookedOn) << "unless it is said it was in what was seen";
    const auto q = fed(R"("fed_after_look": true, )");
    EXPECT_GT(q.feeds[0].day, q.lookedOn);
    EXPECT_EQ(q.feeds[0].date->iso(), "2026-09-12") << "the day it was given stays what it is";
}

TEST(QuestionOfCase, AHarvestOfTheDayOfTheLookIsTakenFromWhatWasSeenWhereItCameAfter) {
    const auto taken = [](const char* after) {
        return question(
            std::string(
                R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep"},
            "harvests": [{"date": "2026-09-12", "kg": 5)") +
            after + "}]}");
    };
    EXPECT_EQ(taken("").harvests[0].day, taken("").lookedOn);
    EXPECT_EQ(taken(R"(, "after_look": false)").harvests[0].day, taken("").lookedOn);
    EXPECT_GT(taken(R"(, "after_look": true)").harvests[0].day, taken("").lookedOn);
}

TEST(QuestionOfCase, WhatWasNotAnsweredIsNotKnown) {
    const auto silent =
        question(
            R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep"}})")
            .answers;
    EXPECT_FALSE(silent.mitesCounted || silent.mitesTreated || silent.mitesPer100 || silent.fedOrTreated ||
                 silent.supersFor || silent.autumnFlow);
    EXPECT_FALSE(silent.fullCombs || silent.visitsInWinter || silent.foodBeside || silent.shortRisk || silent.reserve ||
                 silent.honeyKind || silent.units);
    const auto q = question(
        R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax", "autumn_flow": "none"}, "honey_kind": "heather",
        "hive": {"boxes": [{"format": "langstroth-deep"}, {"format": "langstroth-deep", "super": true, "put_on": "2026-08-20"}], "supers_for": "people"},
        "bees": {"mites_per_100_bees": 2}, "full_combs": 4, "fed_or_treated": false, "units": "imperial",
        "wish": {"visits_in_winter": false, "reserve_kg": 4, "short_risk": 0.2}, "treatments": [{"date": "2026-08-01", "until": "2026-08-15"}]})");
    EXPECT_EQ(q.answers.autumnFlow, 0.0) << "none was said";
    EXPECT_EQ(q.answers.honeyKind, advice::HoneyKind::Heather);
    EXPECT_EQ(q.answers.supersFor, advice::SupersFor::People);
    EXPECT_EQ(q.answers.mitesCounted, true) << "they have a number";
    EXPECT_EQ(q.answers.mitesTreated, true) << "a treatment is written down";
    EXPECT_EQ(q.answers.fullCombs, 4);
    EXPECT_EQ(q.answers.fedOrTreated, false);
    EXPECT_EQ(q.answers.units, UnitSystem::Imperial);
    EXPECT_EQ(q.answers.visitsInWinter, false);
    EXPECT_EQ(q.answers.reserve, kilograms(4));
    EXPECT_EQ(q.answers.shortRisk, 0.2);
    ASSERT_EQ(q.boxUses.size(), 2u);
    EXPECT_FALSE(q.boxUses[0].super || q.boxUses[0].putOn);
    EXPECT_TRUE(q.boxUses[1].super);
    EXPECT_EQ(q.boxUses[1].putOn->iso(), "2026-08-20");
    ASSERT_EQ(q.treatments.size(), 1u);
    EXPECT_TRUE(q.treated);
    EXPECT_FALSE(q.treatedWithoutDay) << "it has its days";
}

TEST(QuestionOfCase, TooFarFromEveryStationIsARefusalNotAFault) {
    const auto q = question(with("", R"({"latitude": -48.0, "longitude": -120.0})"));
    EXPECT_THAT(q.refusals, ElementsAre(RefusalKind::FarFromStations));
    EXPECT_FALSE(q.site);
    const auto near = question(with("", R"({"latitude": 44.9, "longitude": -64.2})"));
    EXPECT_THAT(near.refusals, IsEmpty());
    EXPECT_EQ(near.site->curve.latitude(), 44.9) << "day length of the place itself";
}

TEST(QuestionOfCase, ShellsAndKinds) {
    EXPECT_EQ(question(with("")).shellFactor, 1.0);
    const auto shell = [](const std::string& words) {
        return question(with("", R"({"station": "ca-halifax"})", R"({"format": "langstroth-deep", )" + words + "}"))
            .shellFactor;
    };
    EXPECT_DOUBLE_EQ(shell(R"("top_insulation": true)"), 0.85);
    EXPECT_DOUBLE_EQ(shell(R"("shell": "thick-timber", "top_insulation": true)"), 0.6 * 0.85);
    EXPECT_DOUBLE_EQ(shell(R"("shell": "polystyrene", "top_insulation": true)"), 0.7) << "only the two timbers gain";
    EXPECT_DOUBLE_EQ(shell(R"("shell": "straw")"), 0.4);
    EXPECT_DOUBLE_EQ(question(with(R"("bees": {"count": 9000, "kind": "dark"})")).raceFactor, 0.9);
    EXPECT_DOUBLE_EQ(question(with(R"("bees": {"count": 9000, "kind": "italian"})")).raceFactor, 1.1);
}

TEST(QuestionOfCase, BeesAndTheirSpread) {
    const double perFace = shippedData().format("langstroth-deep")->beesPerSide.count;
    const auto counted = question(with(R"("bees": {"count": 9000})"));
    EXPECT_EQ(counted.bees->count, 9000);
    EXPECT_EQ(counted.beesLogSd, 0.05);
    EXPECT_DOUBLE_EQ(counted.coveredCombs, 9000 / (2 * perFace));
    const auto covered = question(with(R"("bees": {"covered_combs": 6})"));
    EXPECT_DOUBLE_EQ(covered.bees->count, 12 * perFace);
    EXPECT_EQ(covered.beesLogSd, 0.15);
    EXPECT_EQ(question(with(R"("bees": {"seams": 6})")).beesLogSd, 0.21);
    EXPECT_EQ(question(with(R"("bees": {"seams": 6, "spread": 0})")).beesLogSd, 0) << "told exact";
    EXPECT_FALSE(question(with("")).bees);
}

TEST(QuestionOfCase, MoreBeesThanTheModelKnowsIsAFaultAtItsPlace) {
    const auto found = problems(with(R"("bees": {"covered_combs": 60})", R"({"station": "ca-halifax"})",
                                     R"({"format": "langstroth-deep", "boxes": 6})"));
    ASSERT_EQ(found.size(), 1u);
    EXPECT_THAT(found[0].detail, HasSubstr("132000 bees"));
    EXPECT_GT(found[0].place.column, 100);
}

TEST(QuestionOfCase, BroodNotSaidIsNeverZero) {
    EXPECT_FALSE(question(with(R"("combs": [{"capped": 0.5}])")).brood);
    EXPECT_EQ(question(with(R"("combs": [{"capped": 0.5, "brood": 0}])")).brood->count, 0);
    EXPECT_EQ(question(with(R"("bees": {"brood_cells": 300}, "combs": [{"brood": 0.5}])")).brood->count, 300)
        << "the count goes first";
    // Share 0.5 of 8.774 dm2, two faces of 400 cells/dm2.
    EXPECT_NEAR(question(with(R"("combs": [{"brood": 0.5}])")).brood->count, 0.5 * 4.28 * 2.05 * 2 * 400, 1e-6);
}

TEST(QuestionOfCase, SaysHowACombWasSeen) {
    EXPECT_TRUE(question(with(R"("combs": [{"capped": 0.5, "through_window": true}])")).combs.front().throughWindow);
    EXPECT_TRUE(question(with(R"("combs": [{"capped": 0.5, "measured": true}])")).combs.front().measured);
    EXPECT_FALSE(question(with(R"("combs": [{"capped": 0.5}])")).combs.front().measured);
}

TEST(QuestionOfCase, CombsFillTheBoxesFromTheFloor) {
    const auto q = question(with(
        R"("combs": [{}, {}, {"in_super": true}, {"width_mm": 38, "format": "dadant-blatt-10"}])",
        R"({"station": "ca-halifax"})",
        R"({"boxes": [{"format": "langstroth-deep", "combs": 2}, {"format": "langstroth-medium", "super": true}]})"));
    ASSERT_EQ(q.combs.size(), 4u);
    EXPECT_EQ(q.boxes[0].combsPerBox, 2);
    EXPECT_EQ(q.combs[1].box, 0);
    EXPECT_EQ(q.combs[2].box, 1);
    EXPECT_EQ(q.combs[2].place, 0);
    EXPECT_TRUE(q.combs[3].inSuper) << "its box is a super";
    EXPECT_FALSE(q.combs[0].inSuper);
    EXPECT_EQ(q.combs[3].format.pitch.value(), 38);
    EXPECT_EQ(q.combs[3].format.id, "dadant-blatt-10");
}

const char* const superAboveDeep =
    R"({"boxes": [{"format": "langstroth-deep"}, {"format": "langstroth-medium", "combs": 9, "super": true}]})";

TEST(QuestionOfCase, CombsOfASuperHangInIt) {
    const auto q = question(with(R"("combs": [{"capped": 0.1}, {"capped": 0.9, "in_super": true}, {"capped": 0.2}])",
                                 R"({"station": "ca-halifax"})", superAboveDeep));
    ASSERT_EQ(q.combs.size(), 3u);
    EXPECT_EQ(q.combs[1].box, 1);
    EXPECT_EQ(q.combs[1].place, 0);
    EXPECT_EQ(q.combs[1].format.id, "langstroth-medium");
    EXPECT_EQ(q.combs[2].box, 0);
    EXPECT_EQ(q.combs[2].place, 1);
}

TEST(QuestionOfCase, CombsOfASuperAloneLeaveTheNestUnseen) {
    const auto q = question(with(R"("combs": [{"capped": 0.9, "brood": 0, "in_super": true}, {"in_super": true}])",
                                 R"({"station": "ca-halifax"})", superAboveDeep));
    ASSERT_EQ(q.combs.size(), 12u) << "two as listed, and the ten of the deep";
    EXPECT_TRUE(q.combs[0].inSuper && q.combs[0].box == 1 && q.combs[0].lookedAt());
    for (std::size_t i = 2; i < 12; ++i) EXPECT_TRUE(!q.combs[i].inSuper && !q.combs[i].lookedAt()) << i;
    EXPECT_FALSE(q.brood) << "what the nest holds is not known";
    EXPECT_GT(q.supersTare.value(), 3);
    EXPECT_LT(q.supersTare.value(), 6);
}

TEST(QuestionOfCase, WeighingsFeedsAndHarvests) {
    const auto q = question(
        with(R"("weighings": [{"date": "2026-09-12", "lift_kg": 20}, {"date": "2026-09-12", "lift_kg": [20, 21]},
        {"date": "2026-09-12", "heft": "heavy"}], "harvests": [{"date": "2026-08-20", "kg": 7}],
        "feeds": [{"date": "2026-09-01", "kind": "syrup", "sugar_kg": 2, "ratio": "2:1"}, {"date": "2026-09-02", "kind": "fondant", "fondant_kg": 2},
                  {"date": "2026-09-03", "kind": "dry-sugar", "sugar_kg": 2}])"));
    using Kind = stores::WeighingKind;
    EXPECT_EQ(q.weighings[0].kind, Kind::OneSidedLift);
    EXPECT_EQ(q.weighings[0].reading.value(), 40) << "one side doubled";
    EXPECT_EQ(q.weighings[1].kind, Kind::TwoSidedLift);
    EXPECT_EQ(q.weighings[1].reading.value(), 41);
    EXPECT_EQ(q.weighings[2].heft, stores::HeftWord::Heavy);
    EXPECT_FALSE(q.weighings[1].heft);
    EXPECT_EQ(q.harvests[0].honey.value(), 7);
    // Curth, Hohenheim 1981: 1.110 kg of stores from a kilogram of sugar at 2:1 (fit, three printed digits).
    EXPECT_NEAR(q.feeds[0].stores.value(), 2 * 1.110, 0.002);
    EXPECT_TRUE(q.feeds[0].liquid);
    EXPECT_DOUBLE_EQ(q.feeds[1].stores.value(), 2 * 0.85);
    EXPECT_FALSE(q.feeds[1].liquid);
    EXPECT_DOUBLE_EQ(q.feeds[2].stores.value(), 2 * 1.05);
}

TEST(QuestionOfCase, OpenStoresAreFreshForAWeek) {
    const auto fresh = [](const std::string& members, const std::string& flow = "none") {
        return question(with(members, R"({"station": "ca-halifax", "autumn_flow": ")" + flow + "\"}")).freshlyFilled;
    };
    EXPECT_FALSE(fresh(""));
    EXPECT_TRUE(fresh(R"("feeds": [{"date": "2026-09-06", "kind": "syrup", "sugar_kg": 1}])"));
    EXPECT_FALSE(fresh(R"("feeds": [{"date": "2026-09-05", "kind": "syrup", "sugar_kg": 1}])"))
        << "seven days have passed";
    EXPECT_TRUE(fresh("", "trickle")) << "the flow is still on";
    EXPECT_FALSE(fresh(R"("season": {"last_income": "2026-09-01"})", "trickle")) << "it ended eleven days ago";
}

TEST(QuestionOfCase, FlowFeederAndWishes) {
    const auto q = question(with(
        R"("feeder": {"kind": "frame", "capacity_l": 2}, "wish": {"short_risk": 0.1, "reserve_kg": 6, "visit_every_days": 5, "visit_weekdays": [6]})",
        R"({"station": "ca-halifax", "autumn_flow": "strong"})"));
    EXPECT_EQ(q.flowStrength, 1);
    EXPECT_EQ(*q.flowLastDay - q.asOf, 14);
    EXPECT_EQ(q.feeder.capacity.value(), 2);
    EXPECT_TRUE(q.feeder.slow && q.feeder.touchesCluster);
    EXPECT_FALSE(q.feeder.top);
    EXPECT_EQ(q.answers.shortRisk, 0.1);
    EXPECT_EQ(q.answers.reserve, kilograms(6));
    EXPECT_EQ(q.visitEveryDays, 5);
    EXPECT_THAT(q.visitWeekdays, ElementsAre(6));
    const auto usual = question(with(""));
    EXPECT_EQ(usual.feeder.capacity.value(), 6);
    EXPECT_EQ(usual.flowStrength, 0);
    EXPECT_FALSE(usual.flowLastDay);
}

TEST(QuestionOfCase, StreamsComeFromTheNameElseThePosition) {
    EXPECT_EQ(question(with(R"("colony": "A")"), 7).stream, winter::colonyStream("A"));
    EXPECT_EQ(question(with(""), 7).stream, 7u);
}

TEST(QuestionOfCase, AWeighedTareIsExactAGuessedOneIsNot) {
    const auto weighed =
        question(with("", R"({"station": "ca-halifax"})", R"({"format": "langstroth-deep", "tare_kg": 21.5})"));
    EXPECT_EQ(weighed.tare.value(), 21.5);
    EXPECT_EQ(weighed.tareSd.value(), 0);
    EXPECT_GT(question(with("")).tareSd.value(), 0);
}

TEST(QuestionOfCase, DatesInConflictNameBothPlaces) {
    const auto found = problems("{\"case\": 1, \"as_of\": \"2026-09-12\", \"site\": {\"station\": \"ca-halifax\"}, "
                                "\"hive\": {\"format\": \"langstroth-deep\"},\n"
                                "\"season\": {\"buildup\": \"2027-05-01\",\n  \"forage\": \"2027-05-02\"}}");
    ASSERT_EQ(found.size(), 1u);
    EXPECT_THAT(describe(found[0]), AllOf(HasSubstr("buildup"), HasSubstr("forage")));
    EXPECT_GE(found[0].place.line, 2);
    EXPECT_THAT(found[0].detail, ::testing::AnyOf(HasSubstr("(at 2:"), HasSubstr("(at 3:")));
}

TEST(QuestionOfCase, DatesInConflictAreFoundBesideOtherFaults) {
    const auto found =
        problems(with(R"("season": {"buildup": "2027-05-01", "forage": "2027-05-02"}, "wish": {"short_risk": 7})"));
    EXPECT_EQ(found.size(), 2u);
}

TEST(QuestionOfCase, OneBroodDateAloneWhereLayingNeverStopsIsAFault) {
    const auto found = problems(with(R"("season": {"brood_stop": "2026-12-01"})", R"({"station": "pt-lisbon"})"));
    ASSERT_EQ(found.size(), 1u);
    EXPECT_THAT(found[0].detail, HasSubstr("brood_stop"));
    EXPECT_THAT(problems(with(R"("season": {"brood_stop": "2026-12-01", "brood_restart": "2027-01-11"})",
                              R"({"station": "pt-lisbon"})")),
                IsEmpty());
}

TEST(QuestionOfCase, AnImpossibleSyrupIsAFaultOfItsRatio) {
    const auto found =
        problems(with(R"("feeds": [{"date": "2026-09-01", "kind": "syrup", "sugar_kg": 2, "ratio": "9:1"}])"));
    ASSERT_EQ(found.size(), 1u);
    EXPECT_GT(found[0].place.column, 150);
}

} // namespace
} // namespace winterlarder::answer::question_of_case_test
