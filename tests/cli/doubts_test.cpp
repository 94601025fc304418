// SPDX-License-Identifier: GPL-3.0-or-later
// What the command line says of entries that cannot be or are not likely.
#include "cli/program.h"

#include "calendar/date.h"

#include <fmt/format.h>
#include <gmock/gmock.h>

namespace winterlarder::doubts_test {
namespace {

using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::SizeIs;
using ::testing::StartsWith;
using namespace winterlarder::testing;

class DoubtedEntries : public ::testing::Test {
protected:
    void SetUp() override {
        done("new", "--yard Orchard --station ca-halifax");
        done("add-colony", "--name Russet --format langstroth-deep --boxes 2");
        done("add-look", "--colony Russet --date 2026-09-10 --covered-combs 8 --combs -",
             R"({"full_of_stores": 8, "half": 2, "capped_share": 0.9})");
    }
    Ran book(const std::string& command, const std::string& arguments = "", const std::string& input = "") {
        return runProgram("book " + command + " '" + file() + "' " + arguments, input, "USER=ada LOGNAME=ada " + today);
    }
    std::string done(const std::string& command, const std::string& arguments = "", const std::string& input = "") {
        const auto ran = book(command, arguments, input);
        EXPECT_EQ(ran.status, 0) << command << ' ' << arguments << '\n' << ran.err;
        return ran.out;
    }
    std::string file() const { return (folder.path() / "windfall.larder").string(); }

    TemporaryFolder folder;
    std::string today; //!< "WINTERLARDER_TODAY=2026-09-20 "; empty: that of all tests
};

TEST_F(DoubtedEntries, AnEntryStillToComeIsAskedAboutWhateverItsKind) {
    today = "WINTERLARDER_TODAY=2026-09-20 ";
    done("add-weighing", "--colony Russet --date 2026-09-21 --gross 54");
    for (const std::string& add : std::vector<std::string>{
             "add-weighing --gross 53", "add-look --covered-combs 8", "add-feed --sugar 2", "add-harvest --kg 2",
             "add-treatment --what acid", "add-sighting --saw flying", "outcome --alive", "add-fate --fate sold",
             "add-boxes --format langstroth-deep --boxes 2"}) {
        const auto space = add.find(' ');
        const std::string rest = "--colony Russet --date 2026-09-22" + add.substr(space);
        const auto asked = book(add.substr(0, space), rest);
        EXPECT_EQ(asked.status, 0) << add;
        EXPECT_EQ(asked.out, add.starts_with("add-weighing") ? "2\n"
                             : add.starts_with("add-look")   ? "2\n"
                                                             : "1\n")
            << "taken as typed";
        EXPECT_THAT(
            asked.err,
            AllOf(HasSubstr("22 September 2026 is still to come: today is 20 September 2026; is the day right?"),
                  HasSubstr("entered as typed")))
            << add;
        done("undo");
        const auto certain = book(add.substr(0, space), rest + " --sure");
        EXPECT_EQ(certain.status, 0) << add;
        EXPECT_EQ(certain.err, "") << add;
    }
    const auto farOff = book("add-weighing", "--colony Russet --date 2027-09-22 --gross 53");
    EXPECT_EQ(farOff.status, 2) << "rather the year is wrong";
    EXPECT_THAT(farOff.err, AllOf(HasSubstr("22 September 2027 is still to come"), HasSubstr("--sure")));
    done("add-colony", "--name Pippin --format langstroth-deep --since 2026-10-01");
    const auto table = book("import", "--table treatments -", "colony,date,what\nPippin,2026-10-02,acid\n");
    EXPECT_EQ(table.status, 2);
    EXPECT_THAT(table.err, HasSubstr("<stdin>:2:1: 2 October 2026 is still to come"));
    done("import", "--sure --table treatments -", "colony,date,what\nPippin,2026-10-02,acid\n");
    const auto document = done("export", "--json");
    EXPECT_THAT(book("import", "-", document).err, HasSubstr("2 October 2026 is still to come"));
    today = "WINTERLARDER_TODAY=2026-10-02 ";
    done("import", "-", document);
    today = "WINTERLARDER_TODAY=2026-09-31 ";
    EXPECT_THAT(book("check").err, HasSubstr("WINTERLARDER_TODAY is 2026-09-31"));
}

TEST_F(DoubtedEntries, ACaseMayLieAhead) {
    const auto file = folder.file(
        "case.json",
        R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep", "boxes": 2},
 "bees": {"covered_combs": 8}, "weighings": [{"date": "2026-09-08", "gross_kg": 50}]})");
    const auto advised =
        runProgram("advise --winters 100 '" + file.string() + "'", "", "WINTERLARDER_TODAY=2025-09-12");
    EXPECT_EQ(advised.status, 0) << advised.err;
}

TEST_F(DoubtedEntries, AnEmptyWeightIsHeldAgainstTheHive) {
    const auto asked = book("add-colony", "--name Pippin --format langstroth-deep --boxes 2 --tare 45");
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, AllOf(HasSubstr("An empty weight of 45.0 kg is much"), HasSubstr("--sure")));
    EXPECT_EQ(done("add-colony", "--name Pippin --format langstroth-deep --boxes 2 --tare 45 --sure"), "2\n");
    EXPECT_EQ(book("add-colony", "--name Pear --format langstroth-deep --boxes 2 --tare 3 --sure").status, 2)
        << "it cannot be";
    const auto table = book("import", "--table housings -", "colony,date,tare_kg\nPippin,2026-09-15,3\n");
    EXPECT_EQ(table.status, 2) << table.out;
}

// What was said to be right in a book is not asked about again in its case, which is answered as the book is.
TEST_F(DoubtedEntries, TheCaseOfABookIsNotAskedAboutAgain) {
    done("add-colony", "--name Pippin --format langstroth-deep --boxes 2 --tare 45 --sure");
    done("add-look", "--colony Pippin --date 2026-09-12 --covered-combs 6");
    done("add-weighing", "--colony Pippin --date 2026-09-12 --gross 60");
    const auto tare = folder.file("tare.json", done("case", "--colony Pippin --as-of 2026-09-14"));
    const auto ran = runProgram("advise --winters 100 '" + tare.string() + "'");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.err, "") << "the book asked before it took the empty weight";

    const std::string look = "--colony Russet --date 2026-09-12 --covered-combs 6 --brood-cells 120000 --combs -",
                      combs = R"({"full_of_stores": 8, "half": 2, "capped_share": 0.9})";
    ASSERT_EQ(book("add-look", look, combs).status, 2);
    done("add-look", look + " --sure", combs);
    const auto seen = folder.file("seen.json", done("case", "--colony Russet --as-of 2026-09-14"));
    const auto answer = runProgram("advise --winters 100 '" + seen.string() + "'");
    EXPECT_THAT(answer.out, Not(HasSubstr("is not counted")));
    EXPECT_THAT(done("advise", "--colony Russet --as-of 2026-09-14 --winters 100"), Not(HasSubstr("is not counted")));
}

TEST_F(DoubtedEntries, TheLogOfAScaleIsAskedAboutOnceAndTogether) {
    const auto logFrom = [&](const char* name, double kg) {
        std::string log = "time,weight_kg\n";
        for (int hour = 0; hour < 45 * 24; ++hour)
            log += fmt::format("{} {:02}:00,{:.3f}\n", Date::of(2026, 9, 1)->plusDays(hour / 24).iso(), hour % 24,
                               kg - 0.03 * hour / 24);
        return "'" + folder.file(name, log).string() + "' --colony Russet ";
    };
    const auto file = logFrom("scale.csv", 95);
    const auto before = done("export", "--json");
    const auto asked = book("add-scale-log", file);
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, AllOf(HasSubstr("the weighing of 2026-09-01: 95.0 kg cannot well be"),
                                 HasSubstr("the weighing of 2026-10-01:"), HasSubstr("--sure")));
    EXPECT_EQ(done("export", "--json"), before);
    const auto preview = jsonOf(done("add-scale-log", file + "--preview --json"));
    EXPECT_EQ(at(preview, "asked").items.size(), linesOf(asked.err).size());
    done("add-scale-log", file + "--sure");
    EXPECT_THAT(done("export", "--table weighings"), HasSubstr("false,true,"));
    done("undo");
    today = "WINTERLARDER_TODAY=2026-09-20 ";
    EXPECT_THAT(
        book("add-scale-log", logFrom("later.csv", 54)).err,
        AllOf(HasSubstr("the weighing of 2026-10-01: 1 October 2026 is still to come"), Not(HasSubstr("2026-09-01"))));
    EXPECT_EQ(book("add-scale-log", logFrom("pounds.csv", 250) + "--sure").status, 2) << "it cannot be, however sure";
}

TEST_F(DoubtedEntries, AnUnlikelyEntryIsAskedAboutAndKeptWhereTheKeeperIsSure) {
    const auto asked = book("add-weighing", "--colony Russet --date 2026-09-12 --gross 95");
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err,
                AllOf(HasSubstr("95.0 kg cannot well be: 2 boxes of this size weigh 84.0 kg"), HasSubstr("--sure")));
    EXPECT_EQ(asked.out, "");
    EXPECT_EQ(done("add-weighing", "--colony Russet --date 2026-09-12 --gross 95 --sure"), "1\n");
    EXPECT_THAT(done("export", "--json"), HasSubstr("\"sure\":true"));
    EXPECT_THAT(done("export", "--table weighings"), HasSubstr("95,,,,false,true,"));
    EXPECT_THAT(done("case", "--colony Russet --as-of 2026-09-14"), HasSubstr("\"sure\": true"));
}

TEST_F(DoubtedEntries, AnImpossibleEntryIsRefusedHoweverSure) {
    for (const char* sure : {"", " --sure"}) {
        const auto refused = book("add-weighing", std::string("--colony Russet --date 2026-09-12 --gross 120") + sure);
        EXPECT_EQ(refused.status, 2);
        EXPECT_THAT(refused.err, AllOf(HasSubstr("is it 120.0 lb, which is 54.4 kg?"), Not(HasSubstr("--sure"))));
    }
    EXPECT_EQ(book("add-feed", "--colony Russet --date 2026-09-12 --sugar 90").status, 2);
    EXPECT_EQ(book("add-harvest", "--colony Russet --date 2026-09-12 --kg 90").status, 2);
    EXPECT_EQ(book("add-look", "--colony Russet --date 2026-09-12 --seams 40").status, 2);
    EXPECT_EQ(book("add-sighting", "--colony Russet --date 2027-01-05 --saw cluster --seams 40").status, 2);
    EXPECT_EQ(book("outcome", "--colony Russet --date 2027-04-10 --alive --stores 140").status, 2);
    EXPECT_EQ(linesOf(done("export", "--table weighings")).size(), 1u) << "the heading";
}

TEST_F(DoubtedEntries, ATableIsAskedAboutLineByLine) {
    const std::string table =
        "colony,date,gross_kg\nRusset,2026-09-12,54\nRusset,2026-09-20,95\nRusset,2026-11-01,60\nRusset,2026-11-15,6.1\n";
    const auto asked = book("import", "--table weighings -", table);
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, AllOf(HasSubstr("<stdin>:3:1: 95.0 kg"), HasSubstr("<stdin>:5:1: 6.1 kg"),
                                 Not(HasSubstr("<stdin>:2:"))));
    const auto preview = book("import", "--preview --json --table weighings -", table);
    EXPECT_EQ(preview.status, 0);
    EXPECT_EQ(at(jsonOf(preview.out), "asked").items.size(), 2u);
    const std::string likely = "colony,date,gross_kg\nRusset,2026-09-12,54\nRusset,2026-09-20,95\n";
    EXPECT_EQ(book("import", "--table weighings -", likely).status, 2);
    done("import", "--sure --table weighings -", likely);
    EXPECT_THAT(done("export", "--table weighings"), AllOf(HasSubstr("95,,,,false,true,"), HasSubstr("54,,,,false,,")));
    EXPECT_THAT(done("import", "--preview --table weighings -", likely), HasSubstr("left out: 2"))
        << "sure or not, it is the same entry";
}

TEST_F(DoubtedEntries, ABookOfBeforeIsTakenAsItStandsAndNoAnswerBelievesIt) {
    auto document = done("export", "--json");
    const std::string none = "\"weighings\": [";
    document.insert(document.find(none) + none.size(),
                    R"({"id": 1, "colony": 1, "date": "2026-09-12", "gross_kg": 120, "by": "ada"})");
    const auto asked = book("import", "-", document);
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, AllOf(HasSubstr("<stdin>:"), HasSubstr("120.0 kg cannot well be"), HasSubstr("--sure")));
    done("import", "--sure -", document);
    const auto advised = jsonOf(done("advise", "--json --as-of 2026-09-14 --winters 100"));
    EXPECT_EQ(at(advised, "reasons.0.id").text, "doubt-heavy");
    EXPECT_THAT(at(advised, "reasons.0.text").text,
                StartsWith("The weighing of 12 September 2026 is not counted. 120.0 kg cannot well be"));
    EXPECT_TRUE(at(advised, "another_look.worth_it").flag);
    EXPECT_LT(at(advised, "stores_kg.typical").number, 40);
    EXPECT_THAT(done("advise", "--as-of 2026-09-14 --winters 100"), HasSubstr("Something written down is in doubt"));
    const auto followed = jsonOf(done("follow", "--json --as-of 2026-10-20 --winters 100"));
    EXPECT_EQ(at(followed, "reasons.1.id").text, "doubt-heavy");
}

TEST_F(DoubtedEntries, MeasuredDaysStillToComeAreAskedAboutBeforeTheyAreTaken) {
    today = "WINTERLARDER_TODAY=2026-11-20 ";
    const std::string days = "date,mean\n2026-11-19,3\n2026-11-22,-1\n2026-11-20,2\n";
    const auto asked = book("add-weather", "-", days);
    EXPECT_EQ(asked.status, 2);
    EXPECT_EQ(asked.out, "");
    EXPECT_THAT(
        asked.err,
        AllOf(HasSubstr("<stdin>: 22 November 2026 is still to come: today is 20 November 2026; is the day right?"),
              HasSubstr("--sure")));
    EXPECT_EQ(done("add-weather", "-", "date,mean\n2026-11-19,3\n2026-11-21,2\n"), "1\n") << "clocks of other zones";
    EXPECT_EQ(done("add-weather", "--sure -", days), "2\n");
    EXPECT_EQ(linesOf(done("export", "--table weather_log_days")).size(), 6u) << "the heading and every day of both";
    const auto document = done("export", "--json");
    EXPECT_THAT(book("import", "-", document).err, HasSubstr("22 November 2026 is still to come"));
    auto table = done("export", "--table weather_log_days");
    table.replace(table.find("2026-11-21"), 10, "2026-11-25");
    EXPECT_THAT(book("import", "--table weather_log_days -", table).err,
                AllOf(HasSubstr("<stdin>:2:1: 25 November 2026"), HasSubstr("--sure")));
    done("import", "--sure --table weather_log_days -", table);
    done("undo");
    today = "WINTERLARDER_TODAY=2026-11-21 ";
    done("import", "-", document);
}

TEST(DoubtedCase, AClimateOfDaysStillToComeIsAskedAbout) {
    std::string days = "date,mean\n";
    for (int day = 0; day < 400; ++day)
        days += fmt::format("{},{}\n", Date::of(2025, 10, 1)->plusDays(day).iso(), 8 - 10 * (day % 365 < 180));
    const auto asked = runProgram("climate - --latitude 45", days, "WINTERLARDER_TODAY=2026-10-01");
    EXPECT_EQ(asked.status, 2);
    EXPECT_EQ(asked.out, "");
    EXPECT_THAT(asked.err, AllOf(HasSubstr("<stdin>: 4 November 2026 is still to come"), HasSubstr("--sure")));
    const auto certain = runProgram("climate - --sure --latitude 45", days, "WINTERLARDER_TODAY=2026-10-01");
    EXPECT_EQ(certain.status, 0) << certain.err;
    EXPECT_EQ(runProgram("climate - --latitude 45", days, "WINTERLARDER_TODAY=2026-11-04").out, certain.out);
}

TEST(DoubtedCase, AnEmptyWeightThatIsNotLikelyIsAskedAboutOnStandardError) {
    TemporaryFolder folder;
    const std::string text =
        R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep", "boxes": 2, "tare_kg": 45},
 "bees": {"covered_combs": 8}, "weighings": [{"date": "2026-09-08", "gross_kg": 60}]})";
    const auto file = folder.file("case.json", text);
    const auto asked = HasSubstr("case.json:1:132: An empty weight of 45.0 kg is much");
    for (const char* command : {"advise", "stores", "use --from 2026-10-01 --to 2026-11-01"}) {
        const auto ran = runProgram(std::string(command) + " --winters 100 '" + file.string() + "'");
        EXPECT_EQ(ran.status, 0) << command;
        EXPECT_THAT(ran.err, asked) << command;
        EXPECT_THAT(ran.out, Not(HasSubstr("is not counted"))) << command;
    }
    std::string line = text;
    line.erase(line.find('\n'), 1);
    const auto batch = runProgram("advise --json --winters 100 -", line + "\n");
    EXPECT_EQ(batch.status, 0);
    EXPECT_THAT(batch.err, HasSubstr("<stdin>:1:132: An empty weight of 45.0 kg is much"));
}

TEST(DoubtedCase, UseSaysWhatItDoesWithout) {
    TemporaryFolder folder;
    const auto file = folder.file(
        "case.json",
        R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep", "boxes": 2},
 "bees": {"covered_combs": 8, "brood_cells": 120000}, "feeds": [{"date": "2026-09-11", "kind": "fondant", "fondant_kg": 20}]})");
    const std::string use = "use --winters 100 --from 2026-10-01 --to 2026-11-01 '" + file.string() + "'";
    const auto json = jsonOf(runProgram("--json " + use).out);
    EXPECT_EQ(at(json, "set_aside").items.size(), 2u);
    EXPECT_THAT(runProgram(use).out, AllOf(HasSubstr("The brood seen on 12 September 2026 is not counted."),
                                           HasSubstr("The feed of 11 September 2026 is not counted.")));
}

TEST(DoubtedCase, StoresSayWhatTheyDoWithout) {
    TemporaryFolder folder;
    const auto file = folder.file(
        "case.json",
        R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep", "boxes": 2},
 "bees": {"covered_combs": 8}, "weighings": [{"date": "2026-09-08", "gross_kg": 50}, {"date": "2026-09-10", "gross_kg": 95}]})");
    const auto stores = jsonOf(runProgram("stores --json --winters 100 '" + file.string() + "'").out);
    EXPECT_EQ(at(stores, "evidence").items.size(), 1u);
    EXPECT_EQ(at(stores, "set_aside.0.id").text, "doubt-heavy");
    EXPECT_THAT(runProgram("stores --winters 100 '" + file.string() + "'").out,
                HasSubstr("The weighing of 10 September 2026 is not counted."));
}

} // namespace
} // namespace winterlarder::doubts_test
