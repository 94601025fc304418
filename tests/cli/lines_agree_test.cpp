// SPDX-License-Identifier: GPL-3.0-or-later
// What one answer says in several lines must agree, as a keeper reads it.
#include "cli/program.h"

#include <fmt/format.h>
#include <gmock/gmock.h>
#include <regex>

namespace winterlarder::lines_agree_test {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;
using namespace winterlarder::testing;

const char* const oneDeepBox = R"({"format": "langstroth-deep"})";
const char* const hiveUnderSuper =
    R"({"boxes": [{"format": "langstroth-deep"}, {"format": "langstroth-medium", "super": true}], "supers_for": "people"})";

std::string listOf(int nest, double capped, int supers = 0) {
    std::string list;
    for (int i = 0; i < nest + supers; ++i)
        list += fmt::format(R"({}{{"capped": {}, "brood": 0{}}})", i ? ", " : "", i < nest ? capped : 0.9,
                            i < nest ? "" : R"(, "in_super": true)");
    return R"("combs": [)" + list + "]";
}

std::string combsOf(int nest, double capped, int supers = 0) {
    return R"("bees": {"covered_combs": 7}, )" + listOf(nest, capped, supers);
}

std::string wholeAnswer(const std::string& day, const std::string& hive, const std::string& rest,
                        const std::string& site = R"({"station": "ca-halifax"})") {
    const auto ran =
        runProgram("advise --winters 600 -", R"({"case": 1, "colony": "Russet", "as_of": ")" + day + R"(", "site": )" +
                                                 site + R"(, "hive": )" + hive + ", " + rest + "}");
    EXPECT_EQ(ran.status, 0) << ran.err;
    return std::regex_replace(ran.out, std::regex("\\s+"), " ");
}

TEST(LinesAgree, ASuperThatWasNotCountedChangesNothing) {
    const auto said = wholeAnswer("2026-08-25", hiveUnderSuper, combsOf(10, 0.6, 10));
    EXPECT_THAT(said, HasSubstr("Take the super off"));
    EXPECT_THAT(said, HasSubstr("was not counted: the bees keep their"));
    EXPECT_THAT(said, HasSubstr("Taking the super off changes nothing of that, for its honey was not counted."));
    EXPECT_THAT(said, Not(HasSubstr("to spare above")));
}

TEST(LinesAgree, ASummerThatIsSafeSaysWhatItsSharesLeaveOut) {
    const auto said = wholeAnswer("2026-08-08", oneDeepBox, combsOf(10, 0.35));
    EXPECT_THAT(said, HasSubstr("there is enough until the next look"));
    EXPECT_THAT(said, HasSubstr("If nothing were fed later, in "));
    EXPECT_THAT(said, Not(HasSubstr("Left as it is, in")));
}

TEST(LinesAgree, ASafeSummerSaysInItsHeadWhatWinterWillWant) {
    const auto said = wholeAnswer("2026-08-08", oneDeepBox, combsOf(10, 0.35));
    EXPECT_THAT(said,
                ::testing::ContainsRegex("until the next look\\. For winter .* of sugar are likely to be wanted"));
    EXPECT_THAT(said, HasSubstr("Weight to expect, hive and all, without what is fed later"));
}

TEST(LinesAgree, OpenCellsCountLessWhileAFlowIsOnAndItIsSaid) {
    const auto withFlow = [](const std::string& flow) {
        return wholeAnswer(
            "2026-09-05", oneDeepBox,
            R"("bees": {"covered_combs": 7}, "combs": {"full_of_stores": 4, "half": 4, "capped_share": 0.5})",
            R"({"station": "ca-halifax", "autumn_flow": ")" + flow + "\"}");
    };
    EXPECT_THAT(withFlow("fair"), HasSubstr("they count as 25 % of what they would weigh capped"));
    EXPECT_THAT(withFlow("none"), Not(HasSubstr("of what they would weigh capped")));
}

TEST(LinesAgree, TheLookThatIsDueIsNotSaidToBeNeedless) {
    const auto said = wholeAnswer("2026-08-08", oneDeepBox, combsOf(10, 0.35));
    std::smatch look, later;
    ASSERT_TRUE(std::regex_search(said, look, std::regex("look again on (\\d+ \\w+ \\d+)")));
    EXPECT_THAT(said, Not(HasSubstr("the bees need not be disturbed")));
    ASSERT_TRUE(std::regex_search(said, later, std::regex("Likely to be fed (?:from|by) (\\d+ \\w+ \\d+)")));
    EXPECT_LE(std::stoi(look[1]), std::stoi(later[1])) << "both in August: the look says how much";
}

// What is printed of a whole's parts adds up as printed.
TEST(LinesAgree, TheVisitsAddUpToTheSugar) {
    int severalVisits = 0;
    for (const double capped : {0.1, 0.2, 0.3, 0.35}) {
        const auto said = wholeAnswer("2026-09-05", oneDeepBox, combsOf(10, capped));
        std::smatch whole;
        ASSERT_TRUE(std::regex_search(said, whole, std::regex("Feeding Sugar ([0-9.]+) kg")));
        const std::regex visit("2026 syrup ([0-9.]+) kg ([0-9.]+) L");
        double sum = 0;
        int visits = 0;
        for (std::sregex_iterator at(said.begin(), said.end(), visit), none; at != none; ++at, ++visits)
            sum += std::stod((*at)[1]);
        ASSERT_GT(visits, 0) << said;
        severalVisits += visits > 1;
        EXPECT_NEAR(sum, std::stod(whole[1]), 1e-9) << capped;
    }
    EXPECT_GT(severalVisits, 1);
}

TEST(LinesAgree, AColonyWithoutAQueenHasNoWinterOfItsOwn) {
    const auto said =
        wholeAnswer("2026-09-05", oneDeepBox,
                    R"("bees": {"covered_combs": 7, "queen_seen": false, "eggs_seen": false}, )" + listOf(10, 0.6));
    ASSERT_THAT(said, HasSubstr("No sign of a queen"));
    EXPECT_THAT(said, HasSubstr("counts stores only: without a queen it does not live through winter"));
    EXPECT_THAT(said, Not(HasSubstr("For winter, on")));
    EXPECT_THAT(said, Not(HasSubstr("Left as it is, in")));
    EXPECT_THAT(said, Not(HasSubstr("better queen")));
}

TEST(LinesAgree, TheQuestionOfAFlowNamesThoseOfThePlace) {
    const auto asked = [](const char* site) {
        return wholeAnswer("2026-09-03", R"({"format": "national-deep"})",
                           R"("wish": {"visits_in_winter": true}, "full_combs": 0, "fed_or_treated": false, )"
                           R"("bees": {"covered_combs": 7, "queen_seen": true, "mites_counted": true}, )" +
                               listOf(10, 0.6),
                           site);
    };
    EXPECT_THAT(asked(R"({"latitude": 51.2, "longitude": 0.7})"),
                HasSubstr("a flow still to come near you, such as ivy"));
    EXPECT_THAT(asked(R"({"latitude": 51.2, "longitude": 0.7})"), Not(HasSubstr("goldenrod")));
}

TEST(LinesAgree, SugarIsNotTakenForStores) {
    const auto said = wholeAnswer("2026-09-05", oneDeepBox, combsOf(10, 0.35));
    EXPECT_THAT(said, ::testing::ContainsRegex("Feed [0-9.]+ kg \\([0-9]+ lb\\) of sugar"));
    EXPECT_THAT(said, ::testing::ContainsRegex("feed [0-9.]+ kg \\([0-9]+ lb\\) of sugar +[0-9.]+ kg"));
    EXPECT_THAT(said, HasSubstr("Option Of stores Stores after"));
}

TEST(LinesAgree, TheEmptyHiveIsNamedWhereNobodyWeighedIt) {
    EXPECT_THAT(wholeAnswer("2026-09-05", oneDeepBox, combsOf(10, 0.35)), HasSubstr("the empty hive taken as "));
    EXPECT_THAT(wholeAnswer("2026-09-05", R"({"format": "langstroth-deep", "tare_kg": 20})", combsOf(10, 0.35)),
                Not(HasSubstr("the empty hive taken as ")));
}

TEST(LinesAgree, NoDayForSyrupThatIsPast) {
    EXPECT_THAT(wholeAnswer("2026-09-05", oneDeepBox, combsOf(10, 0.35)), HasSubstr("Feeding best finished by"));
    EXPECT_THAT(wholeAnswer("2026-10-20", oneDeepBox, combsOf(10, 0.35)), Not(HasSubstr("Feeding best finished by")));
    EXPECT_THAT(wholeAnswer("2026-10-20", oneDeepBox, combsOf(10, 0.35)), HasSubstr("The end of laying"));
}

TEST(LinesAgree, ATenthOfADegreeIsNotWorthALine) {
    const auto at = [](int metres) {
        return wholeAnswer("2026-09-05", oneDeepBox, combsOf(10, 0.35),
                           fmt::format(R"({{"latitude": 45.03, "longitude": -64.5, "elevation_m": {}}})", metres));
    };
    EXPECT_THAT(at(140), Not(HasSubstr("For the height of the place")));
    EXPECT_THAT(at(400), HasSubstr("For the height of the place"));
}

TEST(LinesAgree, WhyMoreIsLeftStandsWithTheNumber) {
    const char* const quebec = R"({"station": "ca-quebec"})";
    const auto two =
        wholeAnswer("2027-01-20", R"({"format": "langstroth-deep", "boxes": 2})", combsOf(20, 0.3), quebec);
    EXPECT_THAT(two, HasSubstr("5 kg (11 lb) are to be left because the hive has more than one brood box"));
    EXPECT_THAT(two, ::testing::ContainsRegex("they reach only food that touches them: so enough is to be left in 90"));
    EXPECT_THAT(two, Not(HasSubstr("when nothing can be fed")));
    const auto one = wholeAnswer("2026-09-05", oneDeepBox, combsOf(10, 0.35), quebec);
    EXPECT_THAT(one, Not(HasSubstr("more than one brood box")));
    EXPECT_THAT(one, HasSubstr("when nothing can be fed: so enough is to be left in 90 of 100 winters, not in 80"));
}

TEST(LinesAgree, ThickSyrupSaysWhyAndHowItIsKept) {
    const auto said = wholeAnswer("2026-09-05", oneDeepBox, combsOf(10, 0.35));
    EXPECT_THAT(said, HasSubstr("less than the five weeks that 3:2 wants"));
    EXPECT_THAT(said, Not(HasSubstr("drop out of this syrup")));
}

TEST(LinesAgree, WhatTheCombsHoldIsNotLessThanWhatIsFedToThem) {
    const auto said = wholeAnswer(
        "2026-09-01", R"({"format": "langstroth-deep", "boxes": [{"format": "langstroth-deep", "combs": 8}]})",
        combsOf(8, 0.3));
    std::smatch holds, after;
    ASSERT_TRUE(std::regex_search(said, holds, std::regex("The frames hold ([0-9.]+) kg \\(")));
    ASSERT_TRUE(std::regex_search(said, after, std::regex("of sugar +[0-9.]+ kg +([0-9.]+) kg")));
    if (std::stod(after[1]) > std::stod(holds[1]))
        EXPECT_THAT(said, HasSubstr("which are today's stores and all the feed"));
}

TEST(LinesAgree, AHeavyHiveIsNotSaidToHoldMoreThanIsWanted) {
    const auto said = wholeAnswer("2026-12-20", R"({"format": "national-deep", "boxes": 2})",
                                  R"("bees": {"seams": 7}, "weighings": [{"date": "2026-12-20", "heft": "heavy"}])",
                                  R"({"latitude": 51.27, "longitude": 1.08, "elevation_m": 20})");
    EXPECT_THAT(said, HasSubstr("Heavy at this time of year stands for about"));
    EXPECT_THAT(said, Not(HasSubstr("more than is wanted")));
}

TEST(LinesAgree, NoFoodIsSaidInWords) {
    const auto apart = wholeAnswer(
        "2027-03-10", R"({"format": "national-deep"})",
        R"("bees": {"seams": 5, "food_beside": false}, "weighings": [{"date": "2027-03-10", "gross_kg": 24}])",
        R"({"station": "gb-braemar"})");
    EXPECT_THAT(apart, HasSubstr("lies where the bees can reach it in the cold"));
    EXPECT_THAT(apart, Not(HasSubstr("only 0 kg")));
    const auto empty =
        wholeAnswer("2027-01-15", R"({"format": "layens"})",
                    R"("bees": {"covered_combs": 6}, "weighings": [{"date": "2027-01-15", "lift_kg": [9.2]}])",
                    R"({"latitude": 37.39, "longitude": -5.98, "elevation_m": 10})");
    EXPECT_THAT(empty, HasSubstr("Next to nothing is left in the hive."));
    EXPECT_THAT(empty, Not(HasSubstr("Fondant has to touch"))) << "syrup is fed";
}

TEST(LinesAgree, CountedMitesAreNotToBeCountedFirst) {
    const auto said = wholeAnswer("2026-08-08", oneDeepBox,
                                  R"("bees": {"covered_combs": 7, "mites_per_100_bees": 4}, )" + listOf(10, 0.35));
    EXPECT_THAT(said, HasSubstr("Treat where the count of mites calls for it, and look again on"));
    EXPECT_THAT(said, HasSubstr("You have counted the mites"));
    EXPECT_THAT(said, Not(HasSubstr("Count them now")));
    EXPECT_THAT(wholeAnswer("2026-08-08", oneDeepBox, combsOf(10, 0.35)), HasSubstr("Count the mites, and look again"));
}

//! The weight told for a day: "1 November 2026 53.5 kg".
double weightOn(const std::string& said, const std::string& day) {
    std::smatch found;
    const auto from = said.find("Weight to expect");
    const std::string line = said.substr(std::min(from, said.size()));
    return std::regex_search(line, found, std::regex(day + R"( ([\d.]+) kg)")) ? std::stod(found[1]) : -1;
}

TEST(LinesAgree, TheWeightToExpectIsWithoutTheSuperThatComesOffBeforeTheFeed) {
    const auto said = wholeAnswer("2026-09-08", hiveUnderSuper, combsOf(10, 0.3, 10));
    ASSERT_THAT(said, HasSubstr("Take your super off, then feed"));
    const double one = weightOn(wholeAnswer("2026-09-08", oneDeepBox, combsOf(10, 0.3)), "1 November 2026");
    ASSERT_GT(one, 20);
    EXPECT_NEAR(weightOn(said, "1 November 2026"), one, 1.5);
}

TEST(LinesAgree, SmallPortionsHoldSugarAndSyrupInOneProportion) {
    const auto said =
        wholeAnswer("2027-01-15", R"({"format": "layens"})",
                    R"("bees": {"covered_combs": 6}, "weighings": [{"date": "2027-01-15", "lift_kg": [9.2]}])",
                    R"({"latitude": 37.39, "longitude": -5.98, "elevation_m": 10})");
    ASSERT_THAT(said, HasSubstr("first of 10 visits"));
    EXPECT_FALSE(std::regex_search(said, std::regex(R"(syrup 1 kg 0\.5 L)"))) << "that is no syrup";
}

TEST(LinesAgree, WhatIsWeighedNextComesAfterUniting) {
    const auto said = wholeAnswer("2026-10-12", R"({"format": "zander"})",
                                  R"("bees": {"covered_combs": 3, "queen_seen": true}, )" + listOf(9, 0.3),
                                  R"({"station": "at-vienna"})");
    ASSERT_THAT(said, HasSubstr("unite it with a healthy colony"));
    EXPECT_THAT(said, HasSubstr("Next: weigh it on 19 October 2026"));
}

TEST(LinesAgree, SugarThatSettlesIsToldInPercent) {
    const auto said =
        wholeAnswer("2026-10-05", R"({"format": "langstroth-deep", "boxes": 2})",
                    R"("bees": {"covered_combs": 8}, "weighings": [{"date": "2026-10-04", "gross_kg": 41}])",
                    R"({"station": "us-or-eugene"})");
    EXPECT_THAT(said, HasSubstr(" % of its weight settle as sugar"));
    EXPECT_THAT(said, Not(HasSubstr(" g of sugar")));
}

TEST(LinesAgree, InLateAutumnWhatASmallFeedLeavesMissingIsGivenAsCombs) {
    const auto board = wholeAnswer("2026-10-20", oneDeepBox, combsOf(10, 0.4));
    EXPECT_THAT(board, HasSubstr("Too late for syrup: lay a candy board"));
    EXPECT_THAT(board, HasSubstr("full frames"));
    EXPECT_THAT(board, HasSubstr("from store or a healthy neighbour"));
    const auto inTime = wholeAnswer("2026-09-20", oneDeepBox, combsOf(10, 0.4));
    EXPECT_THAT(inTime, Not(HasSubstr("best given as full")));
}

TEST(LinesAgree, WhatWillHardlyLiveIsHelpedBeforeWinterAndLookedAtWithinAWeek) {
    const std::string quebec = R"({"latitude": 46.8, "longitude": -71.2})",
                      nucleus = R"({"format": "langstroth-deep", "nucleus": true})";
    const auto light = wholeAnswer("2026-10-28", nucleus, combsOf(10, 0.3), quebec);
    EXPECT_THAT(light, HasSubstr("it will hardly live until spring"));
    EXPECT_THAT(light, HasSubstr("Weigh it on 4 November 2026"));
    const auto filled = wholeAnswer("2026-10-28", nucleus, combsOf(10, 0.8), quebec);
    EXPECT_THAT(filled, Not(HasSubstr("hardly live")));
    EXPECT_THAT(filled, Not(HasSubstr("4 November")));
}

TEST(LinesAgree, WhereThereIsNoWinterASummerIsLookedAtEveryFourWeeks) {
    const auto said =
        wholeAnswer("2026-08-15", oneDeepBox, combsOf(10, 0.5), R"({"latitude": 28.5, "longitude": -81.4})");
    EXPECT_THAT(said, HasSubstr("look again on 12 September 2026"));
}

TEST(LinesAgree, WeightsSayWhetherASuperForPeopleIsInThem) {
    const auto on = wholeAnswer("2026-08-05", hiveUnderSuper, combsOf(10, 0.35));
    EXPECT_THAT(on, HasSubstr("without your super"));
    EXPECT_THAT(on, HasSubstr("With your super on, and the honey that is in it now."));
    const auto off = wholeAnswer("2026-08-25", hiveUnderSuper, combsOf(10, 0.6, 10));
    EXPECT_THAT(off, HasSubstr("With your super off."));
    EXPECT_THAT(wholeAnswer("2026-08-05", oneDeepBox, combsOf(10, 0.35)), Not(HasSubstr("your super")));
}

} // namespace
} // namespace winterlarder::lines_agree_test
