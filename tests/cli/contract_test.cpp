// SPDX-License-Identifier: GPL-3.0-or-later
// What other programs rely on: keys, exit statuses, error lines.
#include "calendar/date.h"
#include "cli/program.h"

#include <cmath>
#include <gmock/gmock.h>
#include <regex>

namespace winterlarder::contract_test {
namespace {

using exchange::JsonValue;
using ::testing::AllOf;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::StartsWith;
using namespace winterlarder::testing;

void expectKeys(const JsonValue& object, const std::vector<std::string>& keys) {
    for (const std::string& key : keys) EXPECT_NE(memberOf(object, key), nullptr) << key;
}

TEST(Contract, KeysOfAdvise) {
    const auto answer = jsonOf(runProgram("advise light.json --json --winters 300").out);
    expectKeys(answer, {"as_of",
                        "stores_kg",
                        "bees",
                        "use_kg",
                        "use_by_month_kg",
                        "need_kg",
                        "need_parts_kg",
                        "short_risk",
                        "reserve_kg",
                        "phase",
                        "headline",
                        "target",
                        "until_target",
                        "missing_kg",
                        "capacity_kg",
                        "weigh_line",
                        "expected_later",
                        "next_look",
                        "ask",
                        "good_practice",
                        "spring_reserve_kg",
                        "run_out",
                        "touch_reserve",
                        "verdict",
                        "harvest",
                        "feed",
                        "options",
                        "another_look",
                        "cautions",
                        "reasons",
                        "season",
                        "seed",
                        "winters"});
    for (const char* spread : {"stores_kg", "bees", "use_kg", "spring_reserve_kg"})
        expectKeys(at(answer, spread), {"low", "typical", "high"});
    for (const char* share : {"run_out", "touch_reserve"}) expectKeys(at(answer, share), {"share", "standard_error"});
    expectKeys(at(answer, "use_by_month_kg.0"), {"month", "low", "typical", "high"});
    expectKeys(at(answer, "feed"),
               {"kind", "sugar_kg", "water_l", "syrup_l", "ratio", "fondant_kg", "last_day", "visits"});
    expectKeys(at(answer, "feed.visits.0"), {"date", "kind", "sugar_kg", "syrup_l", "fondant_kg"});
    expectKeys(at(answer, "options.0"), {"name", "stores_after_kg", "run_out", "touch_reserve", "spring_reserve_kg"});
    expectKeys(at(answer, "another_look"), {"worth_it", "which", "why"});
    for (const char* list : {"cautions", "reasons"})
        for (const auto& remark : at(answer, list).items) {
            expectKeys(remark, {"id", "text", "source"});
            EXPECT_EQ(at(remark, "source").kind, JsonValue::Kind::Text) << at(remark, "id").text;
            EXPECT_THAT(at(remark, "text").text, AllOf(Not(HasSubstr("%")), EndsWith("."))) << at(remark, "id").text;
        }
    for (const char* date : {"last_income", "brood_stop", "brood_restart", "buildup", "forage", "feed_advised_by",
                             "syrup_deadline", "syrup_refused"})
        EXPECT_EQ(at(answer, std::string("season.") + date + ".from").text, "climate");
    EXPECT_EQ(at(answer, "verdict").text, "feed");
    EXPECT_EQ(at(answer, "seed").number, 1);
    EXPECT_EQ(at(answer, "winters").number, 300);
}

TEST(Contract, EveryVerdictHasItsParts) {
    const auto spare = jsonOf(runProgram("advise spare.json --json --winters 300").out);
    EXPECT_EQ(at(spare, "verdict").text, "harvest");
    EXPECT_GE(at(spare, "harvest.up_to_kg").number, 0.5);
    EXPECT_FALSE(at(spare, "harvest.combs").items.empty());
    EXPECT_EQ(at(spare, "feed").kind, JsonValue::Kind::Null);
    const auto weak = jsonOf(runProgram("advise weak.json --json --winters 300").out);
    EXPECT_EQ(at(weak, "verdict").text, "unite");
    const auto unsaid = jsonOf(runProgram("advise unsaid.json --json").out);
    EXPECT_EQ(at(unsaid, "verdict").text, "cannot_say");
    for (const char* unknown :
         {"stores_kg", "bees", "use_kg", "need_kg", "run_out", "touch_reserve", "spring_reserve_kg", "harvest", "feed"})
        EXPECT_EQ(at(unsaid, unknown).kind, JsonValue::Kind::Null) << unknown;
    std::vector<std::string> ids;
    for (const auto& reason : at(unsaid, "reasons").items) ids.push_back(at(reason, "id").text);
    EXPECT_THAT(ids, ::testing::ElementsAre("bees-unknown", "stores-unknown", "out-of-season", "after-forage"));
}

TEST(Contract, KeysOfTheOtherCommands) {
    expectKeys(jsonOf(runProgram("use light.json --from 2026-09-10 --to 2026-10-20 --daily --json --winters 100").out),
               {"from", "to", "total_kg", "by_month_kg", "parts_kg", "bees_at_end", "days"});
    expectKeys(jsonOf(runProgram("heat --bees 8900 --temperature 12 --json").out),
               {"power_w", "adult_power_w", "brood_power_w", "food_g_per_day", "food_mg_per_bee_per_day",
                "power_w_per_kg_bees"});
    expectKeys(jsonOf(runProgram("stores south.json --json --winters 100").out),
               {"stores_kg", "bees", "evidence", "combs", "free_room_kg"});
    expectKeys(jsonOf(runProgram("syrup --stores 5 --ratio 2:1 --json").out),
               {"sugar_kg", "water_l", "syrup_kg", "syrup_l", "mass_percent", "density_kg_per_l", "stores_kg"});
    expectKeys(at(jsonOf(runProgram("stations --near 51.7,-1.2 --json").out), "0"),
               {"id", "place", "country", "latitude", "longitude", "elevation_m", "distance_km", "mark"});
    expectKeys(jsonOf(runProgram("season gb-oxford --daily --json").out),
               {"winter_class", "brood_stop", "brood_restart", "buildup", "forage", "feed_advised_by", "syrup_deadline",
                "syrup_refused", "last_income", "days"});
    expectKeys(at(jsonOf(runProgram("hive-formats --json").out), "0"),
               {"id", "name", "comb_area_dm2", "combs_per_box", "pitch_mm", "full_comb_kg", "bees_per_comb"});
    expectKeys(at(jsonOf(runProgram("sources --json").out), "0"), {"id", "citation", "year", "mark", "used_by"});
}

// The model's description in DEVELOPERS.md, worked examples: one watt is 6.803 g a day; 8,900 bees without brood at 12
// degC eat 4.573 mg each a day, 4.573 without the swing of day and night (tolerance 0.002).
TEST(Contract, HeatOfTheWorkedExample) {
    const auto swinging = jsonOf(runProgram("heat --bees 8900 --temperature 12 --json").out);
    EXPECT_NEAR(at(swinging, "food_mg_per_bee_per_day").number, 4.573, 0.002);
    EXPECT_NEAR(at(swinging, "food_g_per_day").number, at(swinging, "power_w").number * 86400 / 12700, 1e-9);
    const auto steady = jsonOf(runProgram("heat --bees 8900 --temperature 12 --steady --json").out);
    EXPECT_NEAR(at(steady, "food_mg_per_bee_per_day").number, 4.573, 0.002);
}

// Oxford, 13,000 bees from 1 October to the day before forage (19 April): 12.261 kg in the noiseless winter (tolerance
// 0.5 %).
TEST(Contract, UseOfTheWorkedExample) {
    const std::string oxford = R"({"case": 1, "as_of": "2026-10-01", "site": {"station": "gb-oxford"},
      "hive": {"format": "langstroth-deep"}, "bees": {"count": 13000}})";
    const auto use = jsonOf(runProgram("use - --from 2026-10-01 --to 2027-04-18 --central --json", oxford).out);
    EXPECT_NEAR(at(use, "total_kg.typical").number, 12.261, 0.005 * 12.261);
    EXPECT_EQ(at(use, "total_kg.low").number, at(use, "total_kg.high").number);
    const double parts = at(use, "parts_kg.adults").number + at(use, "parts_kg.brood_heat").number +
                         at(use, "parts_kg.brood_food").number;
    EXPECT_NEAR(parts, at(use, "total_kg.mean").number, 1e-4 * parts) << "single-precision sums of 200 days";
    double months = 0;
    for (const auto& month : at(use, "by_month_kg").items) months += at(month, "mean").number;
    EXPECT_NEAR(months, at(use, "total_kg.mean").number, 1e-9);
}

TEST(Contract, UseRunsToTheLastDayOfTheModelAndNoFurther) {
    EXPECT_EQ(runProgram("use light.json --from 2026-09-04 --to 2027-06-30 --winters 50").status, 0)
        << "the weighing of 4 September is the look";
    const Ran early = runProgram("use light.json --from 2026-09-03 --to 2027-06-30");
    EXPECT_EQ(early.status, 2);
    EXPECT_THAT(early.err, HasSubstr("before the look on 2026-09-04"));
    const Ran late = runProgram("use light.json --from 2026-09-05 --to 2027-07-01");
    EXPECT_EQ(late.status, 2);
    EXPECT_THAT(late.err, HasSubstr("up to 2027-06-30"));
}

struct Wrong {
    const char* arguments;
    int status;
    const char* words;
};
class WrongUse : public ::testing::TestWithParam<Wrong> {};
TEST_P(WrongUse, LeavesStandardOutputEmptyAndSaysWhy) {
    const Ran ran = runProgram(GetParam().arguments);
    EXPECT_EQ(ran.status, GetParam().status) << GetParam().arguments;
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr(GetParam().words));
    for (const std::string& line : linesOf(ran.err)) EXPECT_THAT(line, HasSubstr("; ")) << "what would be right";
}

INSTANTIATE_TEST_SUITE_P(
    CommandLine, WrongUse,
    ::testing::Values(Wrong{"", 2, "command"}, Wrong{"advice spare.json", 2, "did you mean \"advise\"?"},
                      Wrong{"advise", 2, "CASE"}, Wrong{"advise spare.json --nonsense", 2, "--nonsense"},
                      Wrong{"advise spare.json --winters 0", 2, "--winters is 0"},
                      Wrong{"advise spare.json --winters many", 2, "--winters is many"},
                      Wrong{"advise spare.json --seed -1", 2, "--seed is -1"},
                      Wrong{"advise spare.json --threads 0", 2, "--threads is 0"},
                      Wrong{"advise nothing.json", 3, "nothing.json"}, Wrong{"advise - - ", 2, "more than once"},
                      Wrong{"stations --data /nowhere", 3, "--data"}, Wrong{"syrup --ratio 2:1", 2, "exactly one"},
                      Wrong{"syrup --ratio 2:1 --sugar 1 --stores 1", 2, "exactly one"},
                      Wrong{"syrup --ratio 2-1 --sugar 1", 2, "--ratio"},
                      Wrong{"syrup --ratio 2:1 --sugar 1 --by cups", 2, "--by is cups"},
                      Wrong{"heat --bees -1 --temperature 5", 2, "--bees"},
                      Wrong{"heat --bees 5 --temperature 99", 2, "--temperature"},
                      Wrong{"heat --bees 5 --temperature 9 --shell wood", 2, "--shell"},
                      Wrong{"stations --near here", 2, "LAT,LON"}, Wrong{"season nowhere", 2, "no station"},
                      Wrong{"season", 2, "exactly one"}, Wrong{"season gb-oxford --case light.json", 2, "exactly one"},
                      Wrong{"sources southwick", 2, "southwick-1985"},
                      Wrong{"climate spare.json --latitude 45", 2, "spare.json:"},
                      Wrong{"climate nothing.csv --latitude 45", 3, "nothing.csv"},
                      Wrong{"climate x.csv --latitude 95", 2, "--latitude"},
                      Wrong{"use unsaid.json --from 2026-10-01 --to 2026-10-02", 2, "how many bees"},
                      Wrong{"use light.json --from 2026-02-30 --to 2026-10-02", 2, "not a date"},
                      Wrong{"use light.json --from 2026-10-02 --to 2026-10-01", 2, "before --from"}));

TEST(Contract, FaultsOfACaseAreLinesWithTheirPlaces) {
    const TemporaryFolder folder;
    const auto file = folder.file(
        "bad.json", "{\n \"case\": 1, \"as_of\": \"2026-09-12\",\n \"site\": {\"station\": \"ca-halifax\"},\n"
                    " \"hive\": {\"format\": \"langstroth-deep\", \"boxs\": 1},\n \"bees\": {\"count\": -4},\n"
                    " \"season\": {\"buildup\": \"2027-05-01\", \"forage\": \"2027-05-02\"}}\n");
    const Ran ran = runProgram("advise '" + file.string() + "' --json");
    EXPECT_EQ(ran.status, 2);
    EXPECT_EQ(ran.out, "");
    const auto lines = linesOf(ran.err);
    ASSERT_EQ(lines.size(), 3u) << ran.err;
    EXPECT_THAT(lines[0], AllOf(StartsWith(file.string() + ":4:40: "), HasSubstr("boxs")));
    EXPECT_THAT(lines[1], StartsWith(file.string() + ":5:20: "));
    EXPECT_THAT(lines[2], AllOf(StartsWith(file.string() + ":6:"), HasSubstr("forage"), HasSubstr("buildup"),
                                HasSubstr("(at 6:")))
        << "dates in conflict are found together with the rest, both places named";
}

TEST(Contract, OutputThatCannotBeWrittenIsFileTrouble) {
    const int ended = std::system("'" BUILD_FOLDER "/winterlarder-cli' stations >/dev/full 2>/dev/null");
    EXPECT_EQ(WEXITSTATUS(ended), 3);
}

TEST(Contract, NoColourButOnATerminal) { EXPECT_THAT(runProgram("advise unsaid.json").out, Not(HasSubstr("\x1b["))); }

TEST(Contract, NamesCannotSteerTheTerminal) {
    std::string text = oneLine("unsaid.json");
    text.replace(text.find("\"case\""), 6, "\"colony\": \"a\\u001b[31mb\", \"case\"");
    EXPECT_THAT(runProgram("stores -", text).out, AllOf(HasSubstr("a\\u{1b}[31mb"), Not(HasSubstr("\x1b"))));
}

TEST(Contract, TheDataFolderMayBeNamedInTheEnvironment) {
    EXPECT_EQ(runProgram("stations --find oxford", "", "WINTERLARDER_DATA='" SHARED_FOLDER "'").status, 0);
    EXPECT_EQ(runProgram("stations --find oxford", "", "WINTERLARDER_DATA=/nowhere").status, 3);
    EXPECT_EQ(runProgram("stations --find oxford --data '" SHARED_FOLDER "'", "", "WINTERLARDER_DATA=/nowhere").status,
              0);
}

std::vector<std::string> commands() {
    return {"advise", "use",     "heat",         "stores", "syrup",   "places", "stations",
            "season", "climate", "hive-formats", "keys",   "sources", "guide"};
}

TEST(Contract, HelpOfEveryCommandAndTheManPageTellTheSame) {
    std::string page = textOfFile(SOURCE_FOLDER "/resources/winterlarder-cli.1");
    page = std::regex_replace(page, std::regex("\\\\-"), "-");
    const Ran whole = runProgram("--help");
    EXPECT_EQ(whole.status, 0);
    for (const std::string& command : commands()) {
        EXPECT_THAT(whole.out, HasSubstr("  " + command));
        EXPECT_THAT(page, HasSubstr(command));
        const Ran help = runProgram(command + " --help");
        EXPECT_EQ(help.status, 0);
        EXPECT_EQ(help.err, "");
        const std::regex option("--[a-z][a-z-]+");
        for (auto found = std::sregex_iterator(help.out.begin(), help.out.end(), option);
             found != std::sregex_iterator(); ++found)
            EXPECT_THAT(page, HasSubstr(found->str())) << "of " << command;
    }
}

TEST(Contract, VersionIsPrinted) {
    const Ran ran = runProgram("--version");
    EXPECT_EQ(ran.status, 0);
    EXPECT_TRUE(std::regex_match(
        ran.out, std::regex("winterlarder-cli [0-9]+\\.[0-9]+\\.[0-9]+( \\(revision [0-9a-f]{12}\\+?\\))?\n")))
        << ran.out;
}

TEST(Contract, AnOwnClimateIsASiteThatACaseAccepts) {
    const TemporaryFolder folder;
    std::string table = "date,mean\n";
    const Date first = *Date::of(2020, 1, 1);
    for (int day = 0; day < 800; ++day) {
        const double angle = (day - 20) * 2 * 3.14159265 / 365.25;
        table += first.plusDays(day).iso() + "," +
                 std::to_string(7 - 12 * std::cos(angle) + (day * 7919 % 11 - 5) * 0.8) + "\n";
    }
    const auto file = folder.file("daily.csv", table);
    const Ran ran = runProgram("climate '" + file.string() + "' --latitude 45 --json");
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(at(jsonOf(ran.out), "season_offset_sd_c").kind, JsonValue::Kind::Null) << "under eight winters";
    EXPECT_EQ(at(jsonOf(ran.out), "monthly_mean_c").items.size(), 12u);
    const std::string text = "{\"case\": 1, \"as_of\": \"2026-09-20\", \"hive\": {\"format\": \"langstroth-deep\"}, "
                             "\"bees\": {\"count\": 12000}, "
                             "\"weighings\": [{\"date\": \"2026-09-20\", \"heft\": \"fair\"}], \"site\": " +
                             ran.out + "}";
    const Ran advised = runProgram("advise '" + folder.file("case.json", text).string() + "' --json --winters 100");
    EXPECT_EQ(advised.status, 0) << advised.err;
    EXPECT_NE(at(jsonOf(advised.out), "verdict").text, "cannot_say");
}

} // namespace
} // namespace winterlarder::contract_test
