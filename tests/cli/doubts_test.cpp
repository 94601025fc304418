// SPDX-License-Identifier: GPL-3.0-or-later
// What the command line says of entries that cannot be or are not likely.
#include "cli/program.h"

#include <gmock/gmock.h>

namespace winterlarder {
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
        done("add-look", "--colony Russet --date 2026-09-10 --covered-combs 8 --combs -", R"({"full_of_stores": 8, "half": 2, "capped_share": 0.9})");
    }
    Ran book(const std::string& command, const std::string& arguments = "", const std::string& input = "") {
        return runProgram("book " + command + " '" + file() + "' " + arguments, input, "USER=ada LOGNAME=ada");
    }
    std::string done(const std::string& command, const std::string& arguments = "", const std::string& input = "") {
        const auto ran = book(command, arguments, input);
        EXPECT_EQ(ran.status, 0) << command << ' ' << arguments << '\n' << ran.err;
        return ran.out;
    }
    std::string file() const { return (folder.path() / "windfall.larder").string(); }

    TemporaryFolder folder;
};

TEST_F(DoubtedEntries, AnUnlikelyEntryIsAskedAboutAndKeptWhereTheKeeperIsSure) {
    const auto asked = book("add-weighing", "--colony Russet --date 2026-09-12 --gross 95");
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, AllOf(HasSubstr("95.0 kg cannot well be: 2 boxes of this size weigh 84.0 kg"), HasSubstr("--sure")));
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
    const std::string table = "colony,date,gross_kg\nRusset,2026-09-12,54\nRusset,2026-09-20,95\nRusset,2026-11-01,60\nRusset,2026-11-15,6.1\n";
    const auto asked = book("import", "--table weighings -", table);
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, AllOf(HasSubstr("<stdin>:3:1: 95.0 kg"), HasSubstr("<stdin>:5:1: 6.1 kg"), Not(HasSubstr("<stdin>:2:"))));
    const auto preview = book("import", "--preview --json --table weighings -", table);
    EXPECT_EQ(preview.status, 0);
    EXPECT_EQ(at(jsonOf(preview.out), "asked").items.size(), 2u);
    const std::string likely = "colony,date,gross_kg\nRusset,2026-09-12,54\nRusset,2026-09-20,95\n";
    EXPECT_EQ(book("import", "--table weighings -", likely).status, 2);
    done("import", "--sure --table weighings -", likely);
    EXPECT_THAT(done("export", "--table weighings"), AllOf(HasSubstr("95,,,,false,true,"), HasSubstr("54,,,,false,,")));
    EXPECT_THAT(done("import", "--preview --table weighings -", likely), HasSubstr("left out: 2")) << "sure or not, it is the same entry";
}

TEST_F(DoubtedEntries, ABookOfBeforeIsTakenAsItStandsAndNoAnswerBelievesIt) {
    auto document = done("export", "--json");
    const std::string none = "\"weighings\": [";
    document.insert(document.find(none) + none.size(), R"({"id": 1, "colony": 1, "date": "2026-09-12", "gross_kg": 120, "by": "ada"})");
    const auto asked = book("import", "-", document);
    EXPECT_EQ(asked.status, 2);
    EXPECT_THAT(asked.err, AllOf(HasSubstr("<stdin>:"), HasSubstr("120.0 kg cannot well be"), HasSubstr("--sure")));
    done("import", "--sure -", document);
    const auto advised = jsonOf(done("advise", "--json --as-of 2026-09-14 --winters 100"));
    EXPECT_EQ(at(advised, "reasons.0.id").text, "doubt-heavy");
    EXPECT_THAT(at(advised, "reasons.0.text").text, StartsWith("The weighing of 12 September 2026 is not counted. 120.0 kg cannot well be"));
    EXPECT_TRUE(at(advised, "another_look.worth_it").flag);
    EXPECT_LT(at(advised, "stores_kg.typical").number, 40);
    EXPECT_THAT(done("advise", "--as-of 2026-09-14 --winters 100"), HasSubstr("Something written down is in doubt"));
    const auto followed = jsonOf(done("follow", "--json --as-of 2026-10-20 --winters 100"));
    EXPECT_EQ(at(followed, "reasons.0.id").text, "doubt-heavy");
}

TEST(DoubtedCase, StoresSayWhatTheyDoWithout) {
    TemporaryFolder folder;
    const auto file = folder.file("case.json", R"({"case": 1, "as_of": "2026-09-12", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep", "boxes": 2},
 "bees": {"covered_combs": 8}, "weighings": [{"date": "2026-09-08", "gross_kg": 50}, {"date": "2026-09-10", "gross_kg": 95}]})");
    const auto stores = jsonOf(runProgram("stores --json --winters 100 '" + file.string() + "'").out);
    EXPECT_EQ(at(stores, "evidence").items.size(), 1u);
    EXPECT_EQ(at(stores, "set_aside.0.id").text, "doubt-heavy");
    EXPECT_THAT(runProgram("stores --winters 100 '" + file.string() + "'").out, HasSubstr("The weighing of 10 September 2026 is not counted."));
}

} // namespace
} // namespace winterlarder
