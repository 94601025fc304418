// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/remarks.h"

#include "exchange/shipped_data.h"
#include "text/words.h"

#include <gmock/gmock.h>
#include <map>

namespace winterlarder::text::remarks_test {
namespace {

using advice::Remark;
using winterlarder::testing::shippedData;

std::string said(const Remark& remark) { return sentence(remark, {}).toStdString(); }

TEST(Remarks, EveryIdOfTheShippedTableHasWordsAndTheOtherWayRound) {
    std::vector<std::string> shipped;
    for (const CautionRule& rule : shippedData().cautions) shipped.push_back(rule.id);
    EXPECT_THAT(idsWithWords(), ::testing::UnorderedElementsAreArray(shipped));
}

bool doubtCounts(const std::string& id) {
    return id == "doubt-covered" || id == "doubt-seams" || id == "doubt-bees" || id == "doubt-brood" ||
           id == "doubt-full-combs";
}

// One of the classes a remark has a text for.
std::string classOf(const std::string& id) {
    static const std::map<std::string, std::string> classes{
        {"doubt-harvest-there", "seen"}, {"learned-forage", "later"},    {"heft-alone", "light"},
        {"more-than-it-holds", "comb"},  {"usual-here", "agrees"},       {"varroa-first", "summer"},
        {"next-look", "weigh"},          {"cluster-gap", "autumn"},      {"surplus", "alone"},
        {"small-portions", "late"},      {"spring-starvation", "north"}, {"locked-in-long", "before"},
        {"follow-course", "well"},       {"spring-surplus", "take"},     {"look-from-outside", "lid"},
        {"weak-unite", "boxes"}};
    if (const auto found = classes.find(id); found != classes.end()) return found->second;
    return id.rfind("doubt-", 0) == 0 ? "comma" : "more";
}

// Every detail a remark is given by the core, so that no sentence is left with a hole.
Remark withEverything(const std::string& id) {
    const Date day = *Date::of(2027, 5, 19);
    return {id,
            {{"need", kilograms(20)},
             {"reserve", kilograms(4)},
             {"one", kilograms(3)},
             {"in", 20.0},
             {"forage", day},
             {"spare", kilograms(3)},
             {"missing", kilograms(5)},
             {"stores", kilograms(12)},
             {"bees", 5000.0},
             {"which", std::string("buildup")},
             {"to", day},
             {"first", std::string("scale")},
             {"second", std::string("combs")},
             {"days", 12.0},
             {"ratio", std::string("3:2")},
             {"room", kilograms(2)},
             {"day", day},
             {"fondant", kilograms(2)},
             {"water", 19.0},
             {"from", std::string("Row 1")},
             {"receiver", std::string("Row 2")},
             {"kg", kilograms(4)},
             {"combs", 2.0},
             {"built", 14.0},
             {"covered", 8.5},
             {"empty", 5.0},
             {"open", kilograms(2)},
             {"station", std::string("ca-halifax")},
             {"km", 23.0},
             {"kelvin", -0.4},
             {"strength", std::string("trickle")},
             {"used", kilograms(1)},
             {"class", classOf(id)},
             {"safety", kilograms(5)},
             {"stopped", kilograms(11)},
             {"gross", kilograms(40)},
             {"dead", kilograms(2)},
             {"weighed", day},
             {"place", std::string("Canada, Nova Scotia")},
             {"springs", 3.0},
             {"g", 47.0},
             {"within", kilograms(3)},
             {"needed", kilograms(5)},
             {"pollen", kilograms(0.3)},
             {"planned", kilograms(11)},
             {"seen", kilograms(31)},
             {"low", kilograms(35)},
             {"high", kilograms(39)},
             {"change", kilograms(6)},
             {"winters", 40.0},
             {"percent", 12.0},
             {"temperature", celsius(4)},
             {"had", kilograms(12)},
             {"decided", day},
             {"given", kilograms(3)},
             {"taken", kilograms(9)},
             {"sugar", kilograms(3)},
             {"leave", kilograms(4)},
             {"surplus", kilograms(5)},
             {"weight", kilograms(120)},
             {"most", id.rfind("doubt-", 0) == 0 && doubtCounts(id) ? Detail(10.0) : Detail(kilograms(77))},
             {"least", kilograms(12)},
             {"meant", kilograms(54.4)},
             {"number", 120.0},
             {"boxes", 2.0},
             {"other", kilograms(30)},
             {"taken", kilograms(60)},
             {"given", litres(40)},
             {"seams", 15.0},
             {"cells", 90000.0},
             {"today", day},
             {"since", day}}};
}

void expectBegun(const std::string& id, const WordStyle& style) {
    const QString text = sentence(withEverything(id), style);
    ASSERT_FALSE(text.isEmpty()) << id;
    EXPECT_TRUE(text.front().isUpper() || text.front().isDigit()) << text.toStdString();
}

TEST(Remarks, EverySentenceBeginsAsOneInTheWordsOfEveryPlace) {
    for (const std::string& id : idsWithWords())
        for (const bool there : {false, true}) expectBegun(id, {.wording = {.frames = there, .candyBoard = there}});
}

TEST(Remarks, EverySentenceIsWhole) {
    for (const std::string& id : idsWithWords()) {
        const std::string text = said(withEverything(id));
        EXPECT_NE(text, id);
        EXPECT_THAT(text, ::testing::AnyOf(::testing::EndsWith("."), ::testing::EndsWith("?"))) << id;
        EXPECT_EQ(text.find("%{"), std::string::npos) << text;
        EXPECT_EQ(text.find("%n"), std::string::npos) << text;
        EXPECT_EQ(text.find("  "), std::string::npos) << text;
    }
}

TEST(Remarks, BeesTooFewAreFewerThanTheRuleSays) {
    const QString least = count(shippedData().decisions.weakBees, {});
    EXPECT_THAT(said(withEverything("weak-colony")), ::testing::HasSubstr(least.toStdString() + " are the least"));
}

TEST(Remarks, ColoniesThatWereMeasuredHadAsManyBeesAsTheRuleSays) {
    const QString least = count(shippedData().decisions.fewestMeasuredBees, {});
    EXPECT_THAT(said(withEverything("small-colony")),
                ::testing::HasSubstr("the " + least.toStdString() + " from which"));
}

TEST(Remarks, DetailsAreFilledInWithTheirUnits) {
    EXPECT_EQ(said(withEverything("need")),
              "Counted from today 20 kg are wanted: then 4 kg or more are left in 20 of 100 "
              "winters when spring forage starts, around 19 May 2027.");
    EXPECT_EQ(said(withEverything("date-moved")),
              "The derived date of the build-up gave way to a given one and is now 19 May 2027.");
    EXPECT_EQ(said(withEverything("height-shift")),
              "For the height of the place all temperatures are shifted by -0.4 °C.");
    EXPECT_EQ(said({"station-used", {{"place", std::string("USA, Missouri")}}}),
              "The climate is that of the station for USA, Missouri.");
    WordStyle pounds;
    pounds.numbers.system = UnitSystem::UnitedStates;
    EXPECT_EQ(sentence({"surplus", {{"spare", kilograms(1)}, {"class", std::string("usual")}}}, pounds).toStdString(),
              "About 2 lb are to spare above what the colony should winter on and what is usual here.");
}

TEST(Remarks, OneAndManyAreSaidDifferently) {
    const auto carried = [](double days) {
        return said({"stores-carried-forward", {{"days", days}, {"used", kilograms(0.5)}}});
    };
    EXPECT_THAT(carried(1), ::testing::HasSubstr("look was the day before"));
    EXPECT_THAT(carried(9), ::testing::HasSubstr("look was 9 days before"));
    EXPECT_THAT(said({"stores-carried-forward", {{"days", 9.0}, {"used", kilograms(-0.5)}}}),
                ::testing::HasSubstr("0.5 kg brought in"));
}

TEST(Remarks, WhatWasLearnedIsSaidWithItsNumbers) {
    const Remark less{"learned-use", {{"percent", 12.3}, {"class", std::string("less")}, {"winters", 3.0}}};
    EXPECT_EQ(said(less), "Over 3 winters these bees ate 12 % less than the model says; used from now on.");
    const Remark once{"learned-use", {{"percent", 12.3}, {"class", std::string("less")}, {"winters", 1.0}}};
    EXPECT_EQ(said(once),
              "Over one winter these bees ate, as far as it tells, 12 % less than the model says; used from now on.");
    EXPECT_EQ(said({"learned-forage", {{"days", 4.24}, {"class", std::string("later")}, {"springs", 2.0}}}),
              "Going by 2 springs, spring forage starts 4.2 days later here than the climate says; used from now on.");
}

TEST(Remarks, AnUnknownIdIsShownAsItStands) { EXPECT_EQ(said({"no-such-id", {}}), "no-such-id"); }

TEST(Words, EveryChoiceHasAName) {
    for (int i = 0; i < 6; ++i) { // an option or a look more than verdicts
        if (i < 5) EXPECT_FALSE(verdict(static_cast<advice::Verdict>(i)).isEmpty());
        EXPECT_FALSE(option(static_cast<advice::OptionKind>(i), {}).isEmpty());
        EXPECT_FALSE(look(static_cast<advice::LookKind>(i), {}).isEmpty());
    }
    EXPECT_EQ(seasonDate("syrup_deadline"), "the last day for syrup");
    EXPECT_EQ(evidence("two-sided lift", {}), "the two sides lifted");
    EXPECT_EQ(flow("fair"), "a fair flow");
}

TEST(Words, ChancesAreCountedOutOfAHundred) {
    EXPECT_EQ(ofHundred({0.173, 0}, {}), "17 of 100");
    EXPECT_EQ(ofHundred({0, 0}, {}), "0 of 100");
    EXPECT_EQ(ofHundred({0.004, 0}, {}), "under 1 of 100");
}

TEST(Words, DatesAndNumbers) {
    EXPECT_EQ(date(*Date::of(2027, 5, 9), {}), "9 May 2027");
    EXPECT_EQ(month(2026, 10, {}), "October 2026");
    EXPECT_EQ(bees({{9949}, {12345}, {15200}}, {}), "12,300 (9,900\u201315,200)");
}

} // namespace
} // namespace winterlarder::text::remarks_test
