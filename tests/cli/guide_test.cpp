// SPDX-License-Identifier: GPL-3.0-or-later
// The guide on the command line.
#include "cli/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace winterlarder::guide_test {
namespace {

using namespace winterlarder::testing;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

TEST(GuideCommand, ListsItsPagesAndPrintsEach) {
    const Ran contents = runProgram("guide --json");
    ASSERT_EQ(contents.status, 0) << contents.err;
    const auto pages = jsonOf(contents.out);
    ASSERT_EQ(pages.items.size(), 8u);
    const Ran listed = runProgram("guide");
    for (const auto& page : pages.items) {
        const std::string id = memberOf(page, "page")->text, title = memberOf(page, "title")->text;
        EXPECT_THAT(listed.out, AllOf(HasSubstr(id), HasSubstr(title)));
        const Ran text = runProgram("guide " + id), json = runProgram("guide --json " + id);
        EXPECT_EQ(text.status, 0);
        EXPECT_EQ(text.out.rfind(title, 0), 0u) << text.out;
        EXPECT_THAT(text.out, AllOf(HasSubstr("\nSources\n"), Not(HasSubstr("%1"))));
        const auto read = jsonOf(json.out);
        EXPECT_EQ(memberOf(read, "page")->text, id);
        EXPECT_GT(memberOf(read, "parts")->items.size(), 4u);
        EXPECT_FALSE(memberOf(read, "sources")->items.empty());
    }
}

TEST(GuideCommand, SpeaksOfOneHiveAndInItsUnits) {
    const Ran one = runProgram("guide full-comb --hive zander --units us");
    EXPECT_EQ(one.status, 0);
    EXPECT_THAT(one.out,
                AllOf(HasSubstr("Zander"), HasSubstr(" lb"), Not(HasSubstr(" kg")), Not(HasSubstr("Langstroth"))));
    EXPECT_THAT(runProgram("guide full-comb").out, AllOf(HasSubstr("Zander"), HasSubstr("Langstroth")));
}

TEST(GuideCommand, SaysWhatItDoesNotKnow) {
    const Ran page = runProgram("guide wieght"), hive = runProgram("guide bees --hive no-such");
    EXPECT_EQ(page.status, 2);
    EXPECT_EQ(page.out, "");
    EXPECT_THAT(page.err, HasSubstr("\"weight\""));
    EXPECT_EQ(hive.status, 2);
    EXPECT_THAT(hive.err, AllOf(HasSubstr("no-such"), HasSubstr("hive-formats")));
}

} // namespace
} // namespace winterlarder::guide_test
