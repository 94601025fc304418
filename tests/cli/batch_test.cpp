// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/program.h"

#include <gmock/gmock.h>

namespace winterlarder::batch_test {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using namespace winterlarder::testing;

// A case on one line under another name, in a yard if one is named.
std::string named(const std::string& caseName, const std::string& colony, const std::string& yard = "") {
    std::string line = oneLine(caseName);
    const auto start = line.find("\"colony\": \"");
    const auto end = line.find("\",", start);
    line.replace(start, end - start + 2,
                 "\"colony\": \"" + colony + "\"," + (yard.empty() ? "" : " \"yard\": \"" + yard + "\","));
    return line;
}

std::vector<std::string> colonies(const std::string& out) {
    std::vector<std::string> names;
    for (const std::string& line : linesOf(out)) {
        const auto answer = jsonOf(line);
        const auto* at = memberOf(answer, "case_at");
        names.push_back(at ? at->text : memberOf(answer, "colony")->text);
    }
    return names;
}

TEST(Batch, AnswersComeInTheOrderOfTheLinesAndFaultyOnesStandInTheirPlace) {
    const std::string lines = named("light.json", "one") + "this is no case\n" + "\n" + named("spare.json", "two") +
                              "{\"case\": 1}\n" + named("weak.json", "three");
    const Ran ran = runProgram("advise - --json --winters 100", lines);
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(colonies(ran.out), ElementsAre("one", "<stdin>:2", "two", "<stdin>:5", "three"));
    const auto fault = jsonOf(linesOf(ran.out)[3]);
    EXPECT_THAT(at(fault, "faults.0").text, ::testing::StartsWith("<stdin>:5:1: "));
    EXPECT_EQ(at(fault, "faults").items.size(), 3u) << "all faults of the line";
}

TEST(Batch, TheNumberOfThreadsChangesNoByte) {
    std::string lines;
    for (int i = 0; i < 9; ++i)
        lines += named(i % 3 == 0 ? "light.json" : "spare.json", "c" + std::to_string(i), i % 2 == 0 ? "Orchard" : "");
    const Ran one = runProgram("advise - --json --winters 200 --threads 1", lines);
    for (const char* threads : {"2", "5"}) {
        const Ran more = runProgram(std::string("advise - --json --winters 200 --threads ") + threads, lines);
        EXPECT_EQ(one.out, more.out) << threads;
    }
    EXPECT_EQ(runProgram("advise light.json --json --winters 200 --threads 1").out,
              runProgram("advise light.json --json --winters 200 --threads 3").out)
        << "a single case as well";
    EXPECT_NE(runProgram("advise light.json --json --winters 200 --seed 2").out,
              runProgram("advise light.json --json --winters 200").out);
}

TEST(Batch, ANamedColonyHasTheSameAnswerAloneAndInABatch) {
    const std::string alone = jsonOf(runProgram("advise light.json --json --winters 200").out).members.empty()
                                  ? ""
                                  : runProgram("advise - --json --winters 200", oneLine("light.json")).out;
    const Ran batch = runProgram("advise - --json --winters 200", named("weak.json", "first") + oneLine("light.json"));
    EXPECT_EQ(linesOf(alone).at(0), linesOf(batch.out).at(1));
}

TEST(Batch, NamelessColoniesDifferByTheirPosition) {
    const std::string nameless =
        R"({"case": 1, "as_of": "2026-10-01", "site": {"station": "gb-oxford"}, "hive": {"format": "langstroth-deep"}, "bees": {"count": 13000}, "weighings": [{"date": "2026-10-01", "heft": "fair"}]})"
        "\n";
    const auto lines = linesOf(runProgram("advise - --json --winters 100", nameless + nameless).out);
    ASSERT_EQ(lines.size(), 2u);
    EXPECT_NE(lines[0], lines[1]);
}

TEST(Batch, SeveralFilesAreABatch) {
    const Ran ran = runProgram("advise light.json nothing.json spare.json --json --winters 100");
    EXPECT_EQ(ran.status, 3) << "only a file could not be read";
    EXPECT_THAT(colonies(ran.out), ElementsAre("Light", "nothing.json", "Plenty"));
}

TEST(Batch, AsTextEachColonyStandsUnderItsName) {
    const Ran ran =
        runProgram("advise - --winters 100", named("light.json", "one") + "{}\n" + named("spare.json", "two"));
    EXPECT_EQ(ran.status, 2);
    EXPECT_LT(ran.out.find("one, 5 September 2026"), ran.out.find("<stdin>:2: not answered, 4 faults"));
    EXPECT_LT(ran.out.find("<stdin>:2: not answered"), ran.out.find("two, 10 October 2026"));
    EXPECT_THAT(ran.err, HasSubstr("<stdin>:2:1: "));
}

TEST(Batch, NothingInIsNothingOut) {
    const Ran ran = runProgram("advise - --json", "");
    EXPECT_EQ(ran.status, 0);
    EXPECT_EQ(ran.out, "");
}

TEST(Batch, CombsMoveWithinAYardOnly) {
    const std::string needy =
        R"({"case": 1, "colony": "Needy", YARD "as_of": "2026-10-10", "site": {"station": "ca-halifax"}, "hive": {"format": "langstroth-deep"}, "bees": {"covered_combs": 7}, "combs": {"full_of_stores": 4}})"
        "\n";
    const auto in = [&](const std::string& yard) { return std::string(needy).replace(needy.find("YARD"), 4, yard); };
    const auto moved = [&](const std::string& lines) {
        const auto out = linesOf(runProgram("advise - --json --winters 200", lines).out);
        return at(jsonOf(out.at(0)), "combs_moved").items.size();
    };
    EXPECT_EQ(moved(in("\"yard\": \"Orchard\",") + named("spare.json", "Plenty", "Orchard")), 1u);
    EXPECT_EQ(moved(in("\"yard\": \"Orchard\",") + named("spare.json", "Plenty", "Hill")), 0u);
    EXPECT_EQ(moved(in("") + named("spare.json", "Plenty")), 0u);
}

// A heavy and a light hive of one yard, and a weak one.
std::string yardOfThree(const char* yard) {
    const auto line = [&](const std::string& colony, const std::string& hive) {
        return "{\"case\": 1, \"colony\": \"" + colony + "\", \"yard\": \"" + yard +
               "\", \"as_of\": \"2026-09-14\", \"site\": {\"station\": \"ca-halifax\"}, " + hive + "}\n";
    };
    const auto combs = [](int count, const std::string& comb) {
        std::string all;
        for (int i = 0; i < count; ++i) all += (i > 0 ? ", " : "") + comb;
        return all;
    };
    const std::string box = "\"hive\": {\"format\": \"langstroth-deep\", \"boxes\": ",
                      queen = "\"queen_seen\": true}, \"combs\": [";
    return line("Heavy", box + "3}, \"bees\": {\"covered_combs\": 9, " + queen +
                             combs(10, "{\"capped\": 0.3, \"brood\": 0.2}") + ", " + combs(10, "{\"capped\": 0.7}") +
                             ", " + combs(10, "{\"capped\": 0.95}") + "]") +
           line("Light", box + "1}, \"bees\": {\"covered_combs\": 7, " + queen + combs(10, "{\"capped\": 0.3}") + "]") +
           line("Weak", box + "1}, \"bees\": {\"covered_combs\": 3, " + queen + combs(10, "{\"capped\": 0.3}") + "]");
}

std::string withoutTheLast(const std::string& lines) { return lines.substr(0, lines.rfind("{\"case\"")); }

TEST(Batch, AYardHasOnePlanAndASingleColonyNone) {
    const auto lines = linesOf(runProgram("advise - --json --winters 200", withoutTheLast(yardOfThree("Orchard"))).out);
    ASSERT_EQ(lines.size(), 2u);
    const auto giver = jsonOf(lines[0]), taker = jsonOf(lines[1]);
    EXPECT_EQ(at(giver, "plan.combs_to.0.colony").text, "Light");
    EXPECT_EQ(at(taker, "plan.combs_from.0.colony").text, "Heavy");
    EXPECT_EQ(at(taker, "plan.combs_from.0.kg").number, at(giver, "combs_moved.0.kg").number);
    EXPECT_EQ(at(taker, "plan.unite_with").kind, JsonValue::Kind::Null);
    EXPECT_THAT(at(giver, "headline").text, HasSubstr("to Light"));
    EXPECT_THAT(at(taker, "headline").text, HasSubstr("from Heavy"));
    EXPECT_EQ(memberOf(jsonOf(runProgram("advise light.json --json --winters 200").out), "plan"), nullptr);
}

TEST(Batch, AUnitedPairNamesEachOtherAndMovesNoCombs) {
    const auto lines = linesOf(runProgram("advise - --json --winters 200", yardOfThree("Orchard")).out);
    ASSERT_EQ(lines.size(), 3u);
    const auto light = jsonOf(lines[1]), weak = jsonOf(lines[2]);
    EXPECT_EQ(at(weak, "plan.unite_with").text, "Light") << "of the strong ones it gains most";
    EXPECT_EQ(at(light, "plan.unite_with").text, "Weak");
    EXPECT_THAT(at(weak, "headline").text, HasSubstr("unite it with Light"));
    EXPECT_TRUE(at(light, "combs_moved").items.empty());
    EXPECT_GT(at(light, "stores_kg.typical").number, 1.5 * at(weak, "stores_kg.typical").number) << "those of both";
}

TEST(Batch, CombsStayWhereThatIsAsked) {
    const auto two = withoutTheLast(yardOfThree("Orchard"));
    const auto moved = jsonOf(linesOf(runProgram("advise - --json --winters 200", two).out)[1]);
    const auto stay = jsonOf(linesOf(runProgram("advise - --json --winters 200 --combs-stay", two).out)[1]);
    EXPECT_TRUE(at(stay, "combs_moved").items.empty());
    EXPECT_TRUE(at(stay, "plan.combs_from").items.empty());
    EXPECT_GT(at(stay, "feed.sugar_kg").number, at(moved, "feed.sugar_kg").number);
}

} // namespace
} // namespace winterlarder::batch_test
