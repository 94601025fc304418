// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_file.h"
#include "exchange/shipped_data.h"

#include <gmock/gmock.h>

namespace winterlarder::exchange::case_faults_test {
namespace {

using ::testing::HasSubstr;
using winterlarder::testing::marked;
using winterlarder::testing::shippedData;

struct Fault {
    std::string with;  // the members besides case, as_of, site and hive; '@' before the place of the fault
    std::string words; // in the message
};

// A case that is right, one line, with the members given added.
std::string caseWith(const std::string& members) {
    return R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep", "boxes": 1}, )" +
           members + "}";
}

void expectOneFault(const std::string& with, const std::string& words) {
    const auto text = marked(with);
    const auto reading = readCaseWithPlaces(text.text, "case.json", shippedData());
    ASSERT_EQ(reading.problems.size(), 1u)
        << with
        << (reading.problems.empty() ? ""
                                     : "\n" + describe(reading.problems[0]) + "\n" +
                                           (reading.problems.size() > 1 ? describe(reading.problems[1]) : ""));
    const Problem& problem = reading.problems.front();
    EXPECT_EQ(problem.place, (Place{"case.json", text.line, text.column})) << describe(problem) << "\n" << with;
    EXPECT_THAT(describe(problem), HasSubstr(words)) << with;
    EXPECT_FALSE(problem.remedy.empty()) << describe(problem);
}

class CaseFault : public ::testing::TestWithParam<Fault> {};
TEST_P(CaseFault, IsOneLineAtItsPlace) { expectOneFault(caseWith(GetParam().with), GetParam().words); }

INSTANTIATE_TEST_SUITE_P(
    Keys, CaseFault,
    ::testing::Values(
        Fault{R"(@"colny": "A")", "did you mean \"colony\"?"}, Fault{R"(@"harvest": [])", "did you mean \"harvests\"?"},
        Fault{R"("colony": "A", @"colony": "B")", "given twice"}, Fault{R"("colony": @"")", "empty"},
        Fault{R"("colony": @7)", "a text in double quotes"}, Fault{R"("colony": @null)", "null"},
        Fault{R"("yard": @["Orchard"])", "a list"}, Fault{R"("bees": @[])", "an object"},
        Fault{R"("bees": {"covered_combs": 5, @"brood": 3})", "unknown key \"brood\" in \"bees\""},
        Fault{
            R"(@"zzz": 1)",
            "known: case, colony, yard, as_of, looked_on, sure, units, site, hive, bees, combs, weighings, moisture_percent, "
            "honey_kind, fed_or_treated, feeds, harvests, treatments, full_combs, season, feeder, wish, learned, "
            "fed_after_look, supers_for, visits_in_winter"}));

INSTANTIATE_TEST_SUITE_P(
    Dates, CaseFault,
    ::testing::Values(
        Fault{R"("looked_on": @"2026-09-13")", "later than \"as_of\" 2026-09-12 at 1:"},
        Fault{R"("looked_on": @"2026-07-13")", "61 days before"}, Fault{R"("looked_on": @"2026-02-30")", "not a date"},
        Fault{R"("looked_on": @"12.09.2026")", "not a date; write 2026-09-12"},
        Fault{R"("looked_on": @"3 September 2026")", "not a date; write 2026-09-03"},
        Fault{R"("looked_on": @"9/3/2026")", "write 2026-03-09 for 9 March, or 2026-09-03 for 3 September"},
        Fault{R"("looked_on": @"last week")", "YYYY-MM-DD"},
        Fault{R"("treatments": [{"date": @"2026-09-20", "what": "acid"}])", "later than"},
        Fault{R"("season": {"forage": @"May 3, 2027"})", "write 2027-05-03"},
        Fault{R"("looked_on": @20260912)", "YYYY-MM-DD"}, Fault{R"("looked_on": @"1026-09-12")", "from 1800"},
        Fault{R"("weighings": [{"date": @"2026-09-20", "gross_kg": 40}])", "later than"},
        Fault{R"("weighings": [{"date": @"2026-07-01", "gross_kg": 40}])", "at most 60 days"},
        Fault{R"("feeds": [{"date": @"2026-09-20", "kind": "syrup", "sugar_kg": 2}])", "later than"},
        Fault{R"("harvests": [{"date": @"2026-09-20", "kg": 2}])", "later than"},
        Fault{R"("season": {"forage": @"2026-05-19"})", "from 2026-08-01 to 2027-06-30"},
        Fault{R"("season": {"forage": @"2027-07-19"})", "not a day of the winter asked about"},
        Fault{R"("season": {@"first_forage": "2027-05-19"})", "did you mean \"forage\"?"}));

INSTANTIATE_TEST_SUITE_P(Bees, CaseFault,
                         ::testing::Values(Fault{R"("bees": {"count": 9000, @"seams": 5})", "beside \"count\" at 1:"},
                                           Fault{R"("bees": {"count": @-1})", "0 to 100000"},
                                           Fault{R"("bees": {"count": @100001})", "0 to 100000"},
                                           Fault{R"("bees": {"count": @"9000"})", "a text"},
                                           Fault{R"("bees": {"kind": @"carnolian"})", "did you mean \"carniolan\"?"},
                                           Fault{R"("bees": {"queen_seen": @"yes"})", "true or false"},
                                           Fault{R"("bees": {"spread": @-0.1})", "from 0"},
                                           Fault{R"("bees": {"covered_combs": @2.5}, "combs": [{"capped": 0.5}, {}])",
                                                 "2 combs are listed at 1:"}));

INSTANTIATE_TEST_SUITE_P(
    Combs, CaseFault,
    ::testing::Values(
        Fault{R"("combs": [@{"capped": 0.7, "open": 0.2, "brood": 0.1, "pollen": 0.1}])", "add up to 1.1"},
        Fault{R"("combs": [{"capped": @1.5}])", "from 0 to 1"},
        Fault{R"("combs": [{"faces_seen": @3}])", "from 0 to 2"},
        Fault{R"("combs": [{"faces_seen": @1.5}])", "whole number"},
        Fault{R"("combs": [{"width_mm": @24}])", "25 to 60 mm"},
        Fault{R"("combs": [{"format": @"langstroth-dep"}])", "langstroth-deep"}, Fault{R"("combs": [@5])", "a comb"},
        Fault{R"("combs": @"many")", "a list of combs"},
        Fault{R"("combs": [{@"caped": 0.5}])", "did you mean \"capped\"?"},
        Fault{R"("combs": @[{},{},{},{},{},{},{},{},{},{},{}])", "11 combs are listed, but the hive at 1:"},
        Fault{R"("combs": @{"full_of_stores": 8, "half": 3})", "11 combs"},
        Fault{R"("combs": @{"half": 3})", "\"full_of_stores\" is missing"},
        Fault{R"("combs": {"full_of_stores": 3, "capped_share": @2})", "from 0 to 1"}));

INSTANTIATE_TEST_SUITE_P(
    Events, CaseFault,
    ::testing::Values(
        Fault{R"("weighings": @{})", "a list"}, Fault{R"("weighings": [@{"gross_kg": 40}])", "\"date\" is missing"},
        Fault{R"("weighings": [@{"date": "2026-09-12"}])", "none of \"gross_kg\""},
        Fault{R"("weighings": [{"date": "2026-09-12", "gross_kg": 40, @"heft": "fair"}])", "beside \"gross_kg\""},
        Fault{R"("weighings": [{"date": "2026-09-12", "heft": @"medium"}])", "known: light, fair, heavy"},
        Fault{R"("weighings": [{"date": "2026-09-12", "lift_kg": @[1, 2, 3]}])", "[left, right]"},
        Fault{R"("weighings": [{"date": "2026-09-12", "lift_kg": [20, @-2]}])", "from 0 to 250 kg"},
        Fault{R"("feeds": [@{"date": "2026-09-01", "kind": "syrup"}])", "none of \"sugar_kg\", \"syrup_l\""},
        Fault{R"("feeds": [@{"date": "2026-09-01", "kind": "syrup", "syrup_l": 3}])", "\"ratio\" is missing"},
        Fault{R"("feeds": [{"date": "2026-09-01", "kind": "syrup", "syrup_l": 3, "ratio": @"3-2"}])",
              "such as \"3:2\""},
        Fault{R"("feeds": [{"date": "2026-09-01", "kind": "syrup", "syrup_l": 3, "ratio": @"0:2"}])", "above 0"},
        Fault{R"("feeds": [{"date": "2026-09-01", "kind": "fondant", "fondant_kg": 2, @"ratio": "3:2"}])", "fondant"},
        Fault{R"("feeds": [@{"date": "2026-09-01", "kind": "dry-sugar"}])", "\"sugar_kg\" is missing"},
        Fault{R"("feeds": [@{"date": "2026-09-01", "sugar_kg": 2}])", "\"kind\" is missing"},
        Fault{R"("harvests": [@{"date": "2026-09-01"}])", "\"kg\" is missing"},
        Fault{R"("moisture_percent": @5)", "10 to 40 %"}));

INSTANTIATE_TEST_SUITE_P(Ways, CaseFault,
                         ::testing::Values(Fault{R"("feeder": {"kind": @"bucket"})",
                                                 "known: round, top, box, contact, frame, end"},
                                           Fault{R"("wish": {"short_risk": @1.5})", "from 0.001 to 0.999"},
                                           Fault{R"("wish": {"visit_every_days": @0})", "from 1"},
                                           Fault{R"("wish": {"visit_weekdays": @6})", "a list"},
                                           Fault{R"("wish": {"visit_weekdays": ["sat", @6]})", "twice"},
                                           Fault{R"("wish": {"visit_weekdays": [@"someday"]})", "not a weekday"}));

class WholeCaseFault : public ::testing::TestWithParam<Fault> {};
TEST_P(WholeCaseFault, IsOneLineAtItsPlace) { expectOneFault(GetParam().with, GetParam().words); }

// SITE and HIVE stand in the table for parts that are right.
std::string whole(std::string text) {
    const auto replace = [&](const std::string& name, const std::string& value) {
        if (const auto at = text.find(name); at != std::string::npos) text.replace(at, name.size(), value);
    };
    replace("CASE", R"("case": 1, "as_of": "2026-09-12")");
    replace("SITE", R"("site": {"station": "ca-halifax"})");
    replace("HIVE", R"("hive": {"format": "langstroth-deep", "boxes": 1})");
    return text;
}

INSTANTIATE_TEST_SUITE_P(
    Required, WholeCaseFault,
    ::testing::Values(Fault{whole(R"(@{"as_of": "2026-09-12", SITE, HIVE})"), "\"case\" is missing"},
                      Fault{whole(R"({"case": @2, "as_of": "2026-09-12", SITE, HIVE})"), "\"case\" is 2"},
                      Fault{whole(R"({"case": @"1", "as_of": "2026-09-12", SITE, HIVE})"), "a text"},
                      Fault{whole(R"(@{"case": 1, SITE, HIVE})"), "\"as_of\" is missing"},
                      Fault{whole(R"(@{CASE, HIVE})"), "\"site\" is missing"},
                      Fault{whole(R"(@{CASE, SITE})"), "\"hive\" is missing"}, Fault{"@[1]", "a case is a list"},
                      Fault{"@", "empty"}));

INSTANTIATE_TEST_SUITE_P(
    Site, WholeCaseFault,
    ::testing::Values(
        Fault{whole("{CASE, HIVE,\n \"site\": @{}}"), "says nothing of where"},
        Fault{whole("{CASE, HIVE,\n \"site\": {\"station\": @\"ca-halifx\"}}"), "did you mean \"ca-halifax\""},
        Fault{whole("{CASE, HIVE, \"site\": {\"station\": \"ca-halifax\", @\"latitude\": 44}}"),
              "beside \"station\" at 1:"},
        Fault{whole("{CASE, HIVE, \"site\": {\"station\": \"ca-halifax\", @\"lag1\": \"high\"}}"),
              "beside \"station\" at 1:"},
        Fault{whole("{CASE, HIVE, \"site\": {\"station\": \"ca-halifax\", @\"monthly_mean_c\": 5}}"),
              "beside \"station\" at 1:"},
        Fault{
            whole("{CASE, HIVE, \"site\": {\"latitude\": 4, @\"zone\": 4, \"longitude\": 5}}"),
            "known: station, latitude, longitude, monthly_mean_c, daily_sd_winter_c, daily_sd_summer_c, lag1, season_offset_sd_c, elevation_m, autumn_flow"},
        Fault{whole("{CASE, HIVE, \"site\": {@\"latitude\": 44}}"), "without \"longitude\""},
        Fault{whole("{CASE, HIVE, \"site\": {@\"longitude\": 44}}"), "without \"latitude\""},
        Fault{whole("{CASE, HIVE, \"site\": {\"latitude\": @91, \"longitude\": 4}}"), "-90 to 90"},
        Fault{whole("{CASE, HIVE, \"site\": {\"latitude\": 9, \"longitude\": 4, @\"lag1\": 0.5}}"), "own climate"},
        Fault{whole("{CASE, HIVE, \"site\": @{\"monthly_mean_c\": [1,2,3,4,5,6,7,8,9,10,11,12]}}"),
              "\"latitude\" is missing"},
        Fault{whole("{CASE, HIVE, \"site\": {\"latitude\": 4, \"monthly_mean_c\": @[1,2,3]}}"),
              "12 values, January first"},
        Fault{whole("{CASE, HIVE, \"site\": {\"latitude\": 4, \"monthly_mean_c\": [1,2,3,4,5,@46,7,8,9,10,11,12]}}"),
              "-60 to 45"},
        Fault{whole("{CASE, HIVE, \"site\": {\"latitude\": 4, \"monthly_mean_c\": [1,2,3,4,5,6,7,8,9,10,11,12], "
                    "@\"elevation_m\": 5}}"),
              "beside monthly_mean_c"},
        Fault{whole("{CASE, HIVE, \"site\": {\"station\": \"ca-halifax\", \"autumn_flow\": @\"strng\"}}"),
              "did you mean \"strong\"?"}));

INSTANTIATE_TEST_SUITE_P(
    Hive, WholeCaseFault,
    ::testing::Values(
        Fault{whole("{CASE, SITE, \"hive\": @{\"boxes\": 2}}"), "\"format\" is missing"},
        Fault{whole("{CASE, SITE, \"hive\": {\"format\": @\"langstroth-dep\", \"boxes\": 2}}"),
              "did you mean \"langstroth-deep\""},
        Fault{whole("{CASE, SITE, \"hive\": {\"format\": \"langstroth-deep\", \"boxes\": @13}}"), "from 1 to 12"},
        Fault{whole("{CASE, SITE, \"hive\": {\"format\": \"langstroth-deep\", \"boxes\": @1.5}}"), "whole number"},
        Fault{whole("{CASE, SITE, \"hive\": {\"boxes\": @[]}}"), "0 boxes are listed"},
        Fault{whole("{CASE, SITE, \"hive\": {\"boxes\": [@{\"combs\": 10}]}}"), "\"format\" is missing"},
        Fault{whole("{CASE, SITE, \"hive\": {\"boxes\": [@10]}}"), "a box"},
        Fault{whole("{CASE, SITE, \"hive\": {\"format\": {\"comb_width_mm\": @49, \"comb_height_mm\": 200, "
                    "\"combs_per_box\": 20, \"pitch_mm\": 35}}}"),
              "50 to 1000 mm"},
        Fault{whole("{CASE, SITE, \"hive\": {\"format\": {\"comb_width_mm\": 400, \"comb_height_mm\": 200, "
                    "\"combs_per_box\": 20, \"pitch_mm\": @61}}}"),
              "25 to 60 mm"},
        Fault{whole("{CASE, SITE, \"hive\": {\"format\": @{\"comb_width_mm\": 400, \"comb_height_mm\": 200, "
                    "\"combs_per_box\": 20}}}"),
              "\"pitch_mm\" is missing"},
        Fault{whole("{CASE, SITE, \"hive\": {\"format\": \"langstroth-deep\", \"shell\": @\"wood\"}}"),
              "known: timber"},
        Fault{whole("{CASE, SITE, \"hive\": {\"format\": \"langstroth-deep\", \"tare_kg\": @-3}}"), "kg"}));

TEST(CaseFaults, AllOfAFileAreListedInOrder) {
    const auto reading = readCaseWithPlaces(R"({
  "case": 1, "as_of": "2026-09-12", "colny": "A",
  "site": {"station": "nowhere-at-all"},
  "hive": {"format": "langstroth-deep", "boxes": 99},
  "bees": {"count": 1e999},
  "combs": [{"capped": 2}, {"capped": 0.5, "capped": 0.6}],
  "wish": {"short_risk": "low"}
})",
                                            "f.json", shippedData());
    std::vector<int> lines;
    for (const Problem& problem : reading.problems) lines.push_back(problem.place.line);
    EXPECT_THAT(lines, ::testing::ElementsAre(2, 3, 4, 5, 6, 6, 7));
    EXPECT_FALSE(reading.datesSound);
}

TEST(CaseFaults, AnAnswerGivenTwiceIsNamedWhateverElseIsWrong) {
    const auto reading = readCaseWithPlaces(whole(R"({CASE, SITE, "supers_for": "people",
      "hive": {"format": "langstroth-deep", "boxes": 99, "supers_for": "bees"}})"),
                                            "f.json", shippedData());
    ASSERT_EQ(reading.problems.size(), 2u);
    EXPECT_THAT(describe(reading.problems[0]), HasSubstr("\"supers_for\" is given here and in \"hive\""));
    EXPECT_THAT(describe(reading.problems[1]), HasSubstr("from 1 to 12"));
}

// A case whose hive has a super of three places.
std::string superCase(const std::string& combs) {
    return R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"boxes": [{"format": "langstroth-deep"}, {"format": "langstroth-medium", "combs": 3, "super": true}]}, "combs": [)" +
           combs + "]}";
}

TEST(CaseFaults, CombsOfASuperNeedItsPlaces) {
    const std::string comb = R"({"in_super": true}, )";
    expectOneFault(caseWith(R"("combs": [{}, {"in_super": @true}])"), "the hive at 1:");
    expectOneFault(caseWith(R"("combs": [{}, {"in_super": @true}])"), "has no super");
    expectOneFault(caseWith(R"("combs": [{"in_super": @true}, {"in_super": true}])"), "has no super");
    expectOneFault(superCase("{}, " + comb + comb + comb + R"({"in_super": @true})"), "have 3 places");
    const auto none = readCaseWithPlaces(superCase(comb + comb + R"({"in_super": true})"), "f.json", shippedData());
    EXPECT_TRUE(none.problems.empty());
}

TEST(CaseFaults, ABoxOfNothingButSuperCombsIsASuper) {
    const std::string boxes =
        R"("hive": {"boxes": [{"format": "langstroth-deep", "combs": 2}, {"format": "langstroth-deep"}]})";
    const auto read = [&](const std::string& combs) {
        return readCaseWithPlaces(R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, )" + boxes +
                                      R"(, "combs": [)" + combs + "]}",
                                  "f.json", shippedData());
    };
    EXPECT_TRUE(read(R"({}, {}, {"in_super": true})").problems.empty());
    EXPECT_EQ(read(R"({}, {"in_super": true}, {"in_super": true})").problems.size(), 1u);
}

TEST(CaseFaults, BeesMayCoverCombsOfANestNobodyLookedAt) {
    auto text = superCase(R"({"in_super": true})");
    text.insert(text.size() - 1, R"(, "bees": {"covered_combs": 8})");
    EXPECT_TRUE(readCaseWithPlaces(text, "f.json", shippedData()).problems.empty());
}

TEST(CaseFaults, MoreCoveredCombsThanPlacesWithoutAListOfCombs) {
    expectOneFault(caseWith(R"("bees": {"covered_combs": @11})"), "\"covered_combs\" is 11, but the hive at 1:");
    expectOneFault(
        caseWith(R"("bees": {"covered_combs": @10.5}, "combs": {"full_of_stores": 5, "half": 1, "capped_share": 1})"),
        "has 10 places");
    EXPECT_TRUE(
        readCaseWithPlaces(caseWith(R"("bees": {"covered_combs": 10})"), "f.json", shippedData()).problems.empty());
}

// Each is named with its place; only the first ones are worth a search for near words.
TEST(CaseFaults, AHundredThousandUnknownKeysAreAllNamed) {
    std::string keys;
    for (int i = 0; i < 100000; ++i) keys += (i ? ",\"colny" : "\"colny") + std::to_string(i) + "\": 1";
    const auto reading = readCaseWithPlaces(caseWith(keys), "f.json", shippedData());
    ASSERT_EQ(reading.problems.size(), 100000u);
    EXPECT_THAT(describe(reading.problems.front()), HasSubstr("did you mean \"colony\"?"));
    EXPECT_THAT(describe(reading.problems.back()), HasSubstr("unknown key \"colny99999\""));
}

TEST(CaseFaults, NothingIsLargerThanTheTableOfLimitsSays) {
    std::string weighings = R"({"date": "2026-09-01", "heft": "fair"})";
    for (std::size_t i = 0; i < limits::listMembers; ++i) weighings += R"(, {"date": "2026-09-01", "heft": "fair"})";
    expectOneFault(caseWith(R"("weighings": @[)" + weighings + "]"), "\"weighings\" has 10001 members; at most 10000");
    expectOneFault(caseWith("\"colony\": @\"" + std::string(201, 'a') + "\""),
                   "\"colony\" has 201 characters; at most 200");
    std::string twoBytes;
    for (int i = 0; i < 200; ++i) twoBytes += "\xC3\xA9";
    EXPECT_TRUE(
        readCaseWithPlaces(caseWith("\"yard\": \"" + twoBytes + "\""), "f.json", shippedData()).problems.empty());
    const auto large = readCaseWithPlaces(caseWith(std::string(limits::caseText.bytes, ' ') + "\"colny\": 1"), "f.json",
                                          shippedData(), 7);
    ASSERT_EQ(large.problems.size(), 1u);
    EXPECT_EQ(describe(large.problems.front()), "f.json:7:1: this is larger than a case may be; at most 4 MiB");
}

TEST(CaseFaults, BrokenTextIsOneFaultAndNoCase) {
    const auto reading = readCaseWithPlaces("{\"case\": 1,", "f.json", shippedData());
    EXPECT_EQ(reading.problems.size(), 1u);
    EXPECT_FALSE(reading.record);
}

TEST(CaseFaults, PlacesFallBackToWhatHoldsThem) {
    const auto reading =
        readCaseWithPlaces(caseWith("\"season\": {\"forage\": \"2027-05-19\"}"), "f.json", shippedData());
    const Place forage = reading.places.of("season.forage");
    EXPECT_EQ(forage.line, 1);
    EXPECT_EQ(reading.places.of("season.buildup"), reading.places.of("season"));
    EXPECT_EQ(reading.places.of("combs[3].capped"), reading.places.of(""));
    EXPECT_EQ(CasePlaces{}.of("season.forage"), (Place{"", 0, 0}));
}

} // namespace
} // namespace winterlarder::exchange::case_faults_test
