// SPDX-License-Identifier: GPL-3.0-or-later
// The demo yard as a book, made by its own script out of readable tables.
#include "cli/program.h"

#include <gmock/gmock.h>
#include <map>
#include <set>

namespace winterlarder::demo_test {
namespace {

using namespace winterlarder::testing;

class DemoBook : public ::testing::Test {
protected:
    DemoBook() {
        const std::string command = "'" SOURCE_FOLDER "/demo/make-book' '" + file() +
                                    "' '" BUILD_FOLDER "/winterlarder-cli' >'" + (folder_.path() / "said").string() +
                                    "' 2>&1";
        made_ = std::system(command.c_str());
    }
    std::string file() const { return (folder_.path() / "windfall.larder").string(); }
    std::string said() const { return textOfFile(folder_.path() / "said"); }
    int made_ = -1;

private:
    TemporaryFolder folder_;
};

TEST_F(DemoBook, IsMadeFromItsTablesAndSound) {
    ASSERT_EQ(made_, 0) << said();
    const auto info = jsonOf(runProgram("book info '" + file() + "' --json").out);
    EXPECT_EQ(at(info, "entries.yards").number, 1);
    EXPECT_EQ(at(info, "entries.colonies").number, 6);
    EXPECT_EQ(at(info, "entries.winter_outcomes").number, 9) << "four colonies in the first winter, five in the second";
    EXPECT_GE(at(info, "entries.weighings").number, 40);
}

TEST_F(DemoBook, ShowsEveryVerdictThisAutumn) {
    ASSERT_EQ(made_, 0) << said();
    std::map<std::string, std::string> verdicts;
    for (const auto& line :
         linesOf(runProgram("book advise '" + file() + "' --as-of 2026-09-14 --combs-stay --json").out)) {
        const auto answer = jsonOf(line);
        verdicts[at(answer, "colony").text] = at(answer, "verdict").text;
    }
    EXPECT_EQ(verdicts.size(), 6u);
    std::set<std::string> kinds;
    for (const auto& [colony, verdict] : verdicts) kinds.insert(verdict);
    EXPECT_EQ(kinds, (std::set<std::string>{"harvest", "leave", "feed", "unite"}));
}

TEST_F(DemoBook, AnswersForThePastTwoAutumnsToo) {
    ASSERT_EQ(made_, 0) << said();
    for (const char* day : {"2024-09-20", "2025-09-20"})
        for (const auto& line :
             linesOf(runProgram("book advise '" + file() + "' --as-of " + day + " --json --winters 200").out))
            EXPECT_NE(at(jsonOf(line), "verdict").text, "cannot_say") << line;
}

} // namespace
} // namespace winterlarder::demo_test
