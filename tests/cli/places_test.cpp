// SPDX-License-Identifier: GPL-3.0-or-later
// A place by its name, wherever a station is given.
#include "cli/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace winterlarder::testing::places_test {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

const exchange::JsonValue& first(const exchange::JsonValue& list) { return at(list, "0"); }

TEST(Places, AreListedWithTheirStationAndHeight) {
    const Ran ran = runProgram("places halifax canada --json");
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto list = jsonOf(ran.out);
    EXPECT_EQ(at(first(list), "full_name").text, "Halifax, Nova Scotia, Canada");
    EXPECT_NEAR(at(first(list), "latitude").number, 44.65, 0.1);
    EXPECT_EQ(at(first(list), "station").text, "ca-halifax");
    EXPECT_LT(at(first(list), "distance_km").number, 60);
    const Ran text = runProgram("places Praha");
    EXPECT_THAT(text.out, HasSubstr("Prague, Hlavni mesto Praha, Czechia (Praha)"));
    EXPECT_THAT(text.out, HasSubstr("weather of"));
}

TEST(Places, TheirSiteIsTakenByACaseAsItStands) {
    const auto list = jsonOf(runProgram("places new glasgow canada --json").out);
    const auto& site = at(first(list), "site");
    const auto number = [&](const char* key) { return std::to_string(at(site, key).number); };
    const std::string record = "{\"case\":1,\"as_of\":\"2026-09-12\",\"site\":{\"latitude\":" + number("latitude") +
                               ",\"longitude\":" + number("longitude") + ",\"elevation_m\":" + number("elevation_m") +
                               "},\"hive\":{\"format\":\"langstroth-deep\",\"boxes\":2}}";
    const Ran season = runProgram("season --case - --json", record);
    ASSERT_EQ(season.status, 0) << season.err;
    EXPECT_EQ(at(jsonOf(season.out), "station").text, at(first(list), "station").text);
}

TEST(Places, WhereNothingIsFoundNearSpellingsAreTold) {
    const Ran ran = runProgram("places Halifaks");
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr("no place \"Halifaks\"; did you mean \"Halifax, Nova Scotia, Canada\""));
    EXPECT_THAT(ran.err, HasSubstr("name the nearest town, or give latitude and longitude"));
    EXPECT_EQ(runProgram("places halifax --most 0").status, 2);
    EXPECT_EQ(runProgram("places").status, 2);
}

TEST(Places, HaveASeasonOfTheirOwn) {
    const Ran ran = runProgram("season 'Denver' --json");
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(at(jsonOf(ran.out), "place").text, "Denver, Colorado, United States");
    EXPECT_THAT(ran.err, HasSubstr("weather of")) << "whose weather it is, is told";
    const Ran high = runProgram("season 'leadville' --json");
    EXPECT_EQ(high.status, 2);
    EXPECT_THAT(runProgram("season nowhere").err, HasSubstr("no station \"nowhere\""));
}

TEST(Places, OfOneNameAreToldApart) {
    const Ran two = runProgram("season halifax");
    EXPECT_EQ(two.status, 2);
    EXPECT_THAT(two.err, HasSubstr("\"Halifax, Nova Scotia, Canada\" or \"Halifax, England, United Kingdom\""));
    EXPECT_EQ(runProgram("season 'halifax, england'").status, 0);
    EXPECT_THAT(runProgram("season london --json").out, HasSubstr("London, England")) << "far larger than any other";
    EXPECT_EQ(runProgram("season 'springfi'").status, 2) << "the beginning of a name names no place";
}

TEST(Places, TheOneTakenIsInTheAnswerWithTheOthersOfItsName) {
    const Ran london = runProgram("season london --json");
    const auto taken = at(jsonOf(london.out), "place_taken");
    EXPECT_EQ(at(taken, "full_name").text, "London, England, United Kingdom");
    EXPECT_EQ(at(taken, "country").text, "GB");
    EXPECT_LT(at(taken, "distance_km").number, 100);
    EXPECT_EQ(at(taken, "other_places.0").text, "London, Ontario, Canada");
    EXPECT_THAT(london.err, HasSubstr("of that name too: \"London, Ontario, Canada\""));
    EXPECT_THAT(runProgram("season london").out, HasSubstr("The weather of")) << "in the text as well";
    EXPECT_THAT(runProgram("season 'london, england'").err, Not(HasSubstr("of that name")));
    EXPECT_THAT(runProgram("stations --near london").err, HasSubstr("London, Ontario, Canada"));
}

TEST(Places, TheOnlyOneKnownMayNotBeTheOneMeant) {
    const TemporaryFolder folder;
    const std::string file = (folder.path() / "yard.larder").string();
    const Ran made = runProgram("book new '" + file + "' --yard Orchard --place maidstone --json");
    ASSERT_EQ(made.status, 0) << made.err;
    EXPECT_EQ(at(jsonOf(made.out), "id").number, 1);
    EXPECT_EQ(at(jsonOf(made.out), "place_taken.full_name").text, "Maidstone, England, United Kingdom");
    EXPECT_TRUE(at(jsonOf(made.out), "place_taken.other_places").items.empty());
    EXPECT_THAT(made.err, HasSubstr("no other \"Maidstone\" is known here"));
    const Ran told = runProgram("book add-yard '" + file + "' --yard Hill --place 'maidstone, england'");
    EXPECT_THAT(told.err, AllOf(HasSubstr("Maidstone, England"), Not(HasSubstr("no other"))));
    EXPECT_EQ(told.out, "2\n");
}

TEST(Places, AreWhereStationsAreNear) {
    const Ran ran = runProgram("stations --near 'Halifax, Canada' --json");
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(at(first(jsonOf(ran.out)), "id").text, "ca-halifax");
    EXPECT_THAT(runProgram("stations --near xyzzy").err, HasSubstr("LAT,LON"));
}

TEST(Places, AYardStandsInOne) {
    const TemporaryFolder folder;
    const std::string file = (folder.path() / "yard.larder").string();
    const Ran made = runProgram("book new '" + file + "' --yard Orchard --place 'New Glasgow, Nova Scotia'");
    ASSERT_EQ(made.status, 0) << made.err;
    EXPECT_THAT(made.err, HasSubstr("New Glasgow, Nova Scotia, Canada: weather of"));
    const std::string yards = runProgram("book export '" + file + "' --table yards").out;
    EXPECT_THAT(yards, HasSubstr("45.583"));
    EXPECT_THAT(yards, HasSubstr("-62.6"));
    const std::string other = (folder.path() / "other.larder").string();
    EXPECT_THAT(runProgram("book new '" + other + "' --yard Orchard --place Halifaks").err, HasSubstr("did you mean"));
    EXPECT_THAT(runProgram("book new '" + other + "' --yard Orchard --place Denver --station ca-halifax").err,
                HasSubstr("said twice"));
    EXPECT_FALSE(std::filesystem::exists(other));
    EXPECT_EQ(runProgram("book add-yard '" + file + "' --yard Hill --place Denver --elevation 1700").status, 0);
    EXPECT_THAT(runProgram("book export '" + file + "' --table yards").out, HasSubstr("1700"));
}

} // namespace
} // namespace winterlarder::testing::places_test
