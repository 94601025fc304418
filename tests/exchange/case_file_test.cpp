// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_file.h"

#include "exchange/any_case.h"
#include "exchange/shipped_data.h"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::exchange::case_file_test {
namespace {

using ::testing::ElementsAre;
using winterlarder::testing::shippedData;

book::ColonyCase read(const std::string& text) {
    auto outcome = readCase(text, "case.json", shippedData());
    if (!outcome) throw std::runtime_error(describe(outcome.problems().front()));
    return *std::move(outcome);
}

std::string with(const std::string& members) {
    return R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep", "boxes": 2})" +
           (members.empty() ? "}" : ", " + members + "}");
}

TEST(CaseFile, OnlyFourKeysAreNeededAndTheRestHasItsDefaults) {
    const auto record = read(with(""));
    EXPECT_EQ(record.asOf.iso(), "2026-09-12");
    EXPECT_EQ(std::get<std::string>(record.site.where), "ca-halifax");
    EXPECT_FALSE(record.site.autumnFlow) << "not said is not known";
    ASSERT_EQ(record.hive.boxes.size(), 2u);
    EXPECT_EQ(record.hive.shell, book::Shell::Timber);
    EXPECT_FALSE(record.colony || record.yard || record.lookedOn || record.feeder || record.moisturePercent);
    EXPECT_FALSE(record.bees.known());
    EXPECT_TRUE(std::holds_alternative<std::monostate>(record.combs));
    EXPECT_EQ(record.wish, book::WishRecord{});
    EXPECT_FALSE(record.wish.shortRisk || record.wish.reserve || record.wish.visitsInWinter)
        << "what is usual, not what was wished";
    EXPECT_EQ(record.wish.visitEveryDays, 3);
}

TEST(CaseFile, EveryPartOfAFullCaseIsRead) {
    const auto record = read(R"({
  "case": 1, "colony": "Row 2 east", "yard": "Orchard", "as_of": "2026-09-12", "looked_on": "2026-09-10",
  "site":  {"station": "ca-halifax", "elevation_m": 145, "autumn_flow": "trickle"},
  "hive":  {"format": "langstroth-deep", "boxes": 2, "shell": "timber", "top_insulation": true},
  "bees":  {"covered_combs": 1.5, "kind": "carniolan", "brood_cells": 6000},
  "combs": [{"capped": 0.70, "open": 0.10, "pollen": 0.05},
            {"capped": 0.35, "open": 0.15, "brood": 0.30, "pollen": 0.05, "width_mm": 38, "faces_seen": 1}],
  "weighings": [{"date": "2026-09-08", "gross_kg": 54.5}, {"date": "2026-09-09", "lift_kg": 25},
                {"date": "2026-09-09", "lift_kg": [25, 26]}, {"date": "2026-09-09", "heft": "heavy"}],
  "feeds": [{"date": "2026-08-01", "kind": "syrup", "syrup_l": 3, "ratio": "3:2"}],
  "harvests": [{"date": "2026-05-01", "kg": 12}],
  "season": {"last_income": "2026-09-28", "brood_stop": "2026-10-07", "brood_restart": "2027-01-11", "buildup": "2027-04-26",
             "forage": "2027-05-19", "feed_advised_by": "2026-09-25", "syrup_deadline": "2026-10-07", "syrup_refused": "2026-10-17"},
  "feeder": {"kind": "top", "capacity_l": 8},
  "wish":  {"short_risk": 0.1, "reserve_kg": 5, "visit_every_days": 7, "visit_weekdays": ["sat", "Sunday", 1]}
})");
    EXPECT_EQ(record.colony, "Row 2 east");
    EXPECT_EQ(record.lookedOn->iso(), "2026-09-10");
    EXPECT_EQ(record.site.elevationM, 145);
    EXPECT_EQ(record.site.autumnFlow, book::FlowStrength::Trickle);
    EXPECT_TRUE(record.hive.topInsulation);
    EXPECT_EQ(record.bees.coveredCombs, 1.5);
    const auto& combs = std::get<std::vector<book::CombRecord>>(record.combs);
    ASSERT_EQ(combs.size(), 2u);
    EXPECT_FALSE(combs[0].brood) << "brood not said is not zero";
    EXPECT_EQ(combs[1].brood, 0.3);
    EXPECT_EQ(combs[1].width->value(), 38);
    EXPECT_EQ(combs[1].facesSeen, 1);
    ASSERT_EQ(record.weighings.size(), 4u);
    EXPECT_EQ(std::get<book::ScaleReading>(record.weighings[0].reading).gross.value(), 54.5);
    EXPECT_EQ(std::get<book::LiftReading>(record.weighings[1].reading).sides.size(), 1u);
    EXPECT_EQ(std::get<book::LiftReading>(record.weighings[2].reading).sides.size(), 2u);
    EXPECT_EQ(std::get<book::HeftWord>(record.weighings[3].reading), book::HeftWord::Heavy);
    EXPECT_EQ(record.feeds.at(0).ratio, "3:2");
    EXPECT_EQ(record.harvests.at(0).honey.value(), 12);
    EXPECT_EQ(record.season.forage->iso(), "2027-05-19");
    EXPECT_EQ(record.season.syrupRefused->iso(), "2026-10-17");
    EXPECT_EQ(record.feeder->capacity->value(), 8);
    EXPECT_THAT(record.wish.visitWeekdays, ElementsAre(6, 7, 1));
}

TEST(CaseFile, BoxesAsAListWithOwnMeasures) {
    const auto record = read(R"({"case": 1, "as_of": "2026-09-12", "site": {"latitude": 44.9, "longitude": -64.2},
      "hive": {"format": {"comb_width_mm": 430, "comb_height_mm": 200, "bottom_width_mm": 200, "combs_per_box": 28, "pitch_mm": 35},
               "boxes": [{"combs": 20}, {"format": "langstroth-medium", "super": true}], "nucleus": true, "treated": true}})");
    ASSERT_EQ(record.hive.boxes.size(), 2u);
    EXPECT_EQ(std::get<book::OwnFormat>(record.hive.boxes[0].format).bottomWidth->value(), 200)
        << "the hive's own format";
    EXPECT_EQ(record.hive.boxes[0].combs, 20);
    EXPECT_TRUE(record.hive.boxes[1].super);
    EXPECT_EQ(std::get<book::Coordinates>(record.site.where).longitude, -64.2);
}

TEST(CaseFile, AnOwnClimateMayLackItsSeasonOffset) {
    const auto record = read(R"({"case": 1, "as_of": "2026-09-12", "hive": {"format": "langstroth-deep"},
      "site": {"latitude": 44.9, "monthly_mean_c": [-5,-5,-1,5,10,15,19,19,15,9,4,-2], "season_offset_sd_c": null}})");
    EXPECT_FALSE(std::get<book::OwnClimateRecord>(record.site.where).seasonOffsetSd);
    EXPECT_EQ(record.hive.boxes.size(), 1u);
}

TEST(CaseFile, WhatTheKeeperIsAskedIsNotKnownUntilItIsAnswered) {
    const auto silent = read(with(""));
    EXPECT_FALSE(silent.honeyKind || silent.fedOrTreated || silent.fullCombs || silent.units || silent.hive.supersFor);
    EXPECT_FALSE(silent.bees.mitesCounted || silent.bees.mitesTreated || silent.bees.mitesPer100 ||
                 silent.bees.foodBeside);
    const auto said = read(
        R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax", "autumn_flow": "none"}, "units": "us",
      "hive": {"boxes": [{"format": "langstroth-deep"}, {"format": "langstroth-deep", "super": true, "put_on": "2026-08-20"}], "supers_for": "people"},
      "bees": {"seams": 6, "mites_counted": true, "mites_per_100_bees": 1.5, "mites_treated": false, "food_beside": false},
      "honey_kind": "heather", "fed_or_treated": false, "full_combs": 0, "wish": {"visits_in_winter": false},
      "treatments": [{"date": "2026-08-01", "until": "2026-08-28", "what": "formic acid"}, {"date": "2026-09-01"}]})");
    EXPECT_EQ(said.site.autumnFlow, book::FlowStrength::None);
    EXPECT_EQ(said.hive.supersFor, book::SupersFor::People);
    EXPECT_FALSE(said.hive.boxes[0].putOn);
    EXPECT_EQ(said.hive.boxes[1].putOn->iso(), "2026-08-20");
    EXPECT_EQ(said.bees.mitesPer100, 1.5);
    EXPECT_EQ(said.bees.mitesTreated, false) << "no is an answer";
    EXPECT_EQ(said.bees.foodBeside, false);
    EXPECT_EQ(said.honeyKind, book::HoneyKind::Heather);
    EXPECT_EQ(said.fedOrTreated, false);
    EXPECT_EQ(said.fullCombs, 0);
    EXPECT_EQ(said.units, book::UnitSystem::UnitedStates);
    EXPECT_EQ(said.wish.visitsInWinter, false);
    ASSERT_EQ(said.treatments.size(), 2u);
    EXPECT_EQ(said.treatments[0].until->iso(), "2026-08-28");
    EXPECT_FALSE(said.treatments[1].until) << "not ended yet";
    EXPECT_EQ(read(writeCase(said)), said) << "and back again";
}

TEST(CaseFile, TwoAnswersMayStandAtTheTopInstead) {
    const auto said = read(with(R"("supers_for": "bees", "visits_in_winter": true)"));
    EXPECT_EQ(said.hive.supersFor, book::SupersFor::Bees);
    EXPECT_EQ(said.wish.visitsInWinter, true);
}

TEST(CaseFile, FeedsAndHarvestsOfTheDayOfTheLookMayHaveComeAfterIt) {
    const std::string feeds = R"("feeds": [{"date": "2026-09-12", "kind": "fondant", "fondant_kg": 1},
        {"date": "2026-09-12", "kind": "fondant", "fondant_kg": 1, "after_look": false}, {"date": "2026-09-11", "kind": "fondant", "fondant_kg": 1}])";
    EXPECT_FALSE(read(with(feeds)).feeds[0].afterLook);
    const auto all = read(with(R"("fed_after_look": true, )" + feeds)).feeds;
    EXPECT_EQ(all[0].afterLook, true) << "said of all of them";
    EXPECT_EQ(all[1].afterLook, false) << "but not against what one says itself";
    EXPECT_FALSE(all[2].afterLook) << "of another day";
    const auto taken = read(with(R"("harvests": [{"date": "2026-09-12", "kg": 5, "after_look": true}])"));
    EXPECT_EQ(taken.harvests[0].afterLook, true);
    EXPECT_EQ(read(writeCase(taken)), taken);
}

TEST(CaseFile, BoundsAreAllowedThemselves) {
    EXPECT_EQ(read(with(R"("looked_on": "2026-07-14")")).lookedOn->iso(), "2026-07-14") << "sixty days before";
    EXPECT_EQ(read(with(R"("looked_on": "2026-09-12")")).lookedOn->iso(), "2026-09-12");
    EXPECT_EQ(read(with(R"("bees": {"count": 100000})")).bees.count, 100000);
    EXPECT_EQ(read(with(R"("combs": [{"capped": 0.7, "open": 0.1, "brood": 0.1, "pollen": 0.1}])")).combs.index(), 1u)
        << "sums to one but for rounding";
    EXPECT_EQ(read(with(R"("bees": {"covered_combs": 2}, "combs": [{}, {}])")).bees.coveredCombs, 2);
    EXPECT_EQ(read(with(R"("season": {"forage": "2027-06-30", "last_income": "2026-08-01"})")).season.forage->iso(),
              "2027-06-30");
    EXPECT_EQ(read(with(R"("feeds": [{"date": "2025-01-01", "kind": "fondant", "fondant_kg": 1}])")).feeds.size(), 1u)
        << "an old feed is no fault";
}

TEST(CaseFile, SouthernWintersSpanTheirOwnMonths) {
    const auto record = read(R"({"case": 1, "as_of": "2026-04-01", "site": {"station": "au-melbourne"},
      "hive": {"format": "langstroth-deep"}, "season": {"forage": "2026-09-11", "last_income": "2026-01-29"}})");
    EXPECT_EQ(record.season.forage->iso(), "2026-09-11");
}

TEST(CaseFile, MoistureStandsAloneOrWithAWeighing) {
    EXPECT_EQ(read(with(R"("moisture_percent": 17.5)")).moisturePercent, 17.5);
    EXPECT_EQ(
        read(with(R"("weighings": [{"date": "2026-09-12", "heft": "fair", "moisture_percent": 18}])")).moisturePercent,
        18);
}

RC_GTEST_PROP(CaseFile, WhatIsWrittenReadsBackTheSame, ()) {
    const auto record = winterlarder::testing::anyCase();
    for (const std::string& text : {writeCase(record), writeCaseLine(record)}) {
        const auto back = readCase(text, "f", shippedData());
        if (!back) RC_FAIL(describe(back.problems().front()) + "\n" + text);
        RC_ASSERT(*back == record);
    }
}

TEST(CaseFile, WrittenInTheManualsOrderAndOnlyWhatWasSaid) {
    EXPECT_EQ(
        writeCaseLine(read(with(""))),
        R"({"case":1,"as_of":"2026-09-12","site":{"station":"ca-halifax"},"hive":{"format":"langstroth-deep","boxes":2}})");
}

} // namespace
} // namespace winterlarder::exchange::case_file_test
