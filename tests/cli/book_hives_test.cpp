// SPDX-License-Identifier: GPL-3.0-or-later
// Colonies, their names and their boxes, written from the command line.
#include "cli/program.h"

#include <gmock/gmock.h>

namespace winterlarder {
namespace {

using ::testing::HasSubstr;
using namespace winterlarder::testing;

class BookHives : public ::testing::Test {
protected:
    BookHives() {
        EXPECT_EQ(book("new", "--yard Orchard --station ca-halifax").status, 0);
        EXPECT_EQ(book("add-colony", "--name Russet --format langstroth-deep --boxes 2 --super langstroth-medium "
                                     "--super langstroth-shallow --supers-for bees")
                      .status,
                  0);
    }
    Ran book(const std::string& command, const std::string& arguments) {
        return runProgram("book " + command + " '" + (folder.path() / "orchard.larder").string() + "' " + arguments, "",
                          "USER=ada LOGNAME=ada");
    }
    std::string boxesOn(const std::string& day) {
        const auto ran = book("case", "--colony Russet --as-of " + day);
        EXPECT_EQ(ran.status, 0) << ran.err;
        std::string said;
        const auto made = jsonOf(ran.out);
        for (const auto& box : at(made, "hive.boxes").items)
            said += at(box, "format").text + (memberOf(box, "super") ? " super, " : ", ");
        return said;
    }
    TemporaryFolder folder;
};

TEST_F(BookHives, SupersStandOnTheBoxes) {
    EXPECT_EQ(boxesOn("2026-09-01"),
              "langstroth-deep, langstroth-deep, langstroth-medium super, langstroth-shallow super, ");
}

TEST_F(BookHives, OtherBoxesCountFromTheirDayAndTheRestStays) {
    ASSERT_EQ(book("add-boxes", "--colony Russet --date 2026-09-10 --format langstroth-deep").status, 0);
    const auto after = book("case", "--colony Russet --as-of 2026-09-10").out;
    EXPECT_THAT(after, HasSubstr("\"langstroth-deep\""));
    EXPECT_THAT(after, ::testing::Not(HasSubstr("langstroth-medium")));
    EXPECT_THAT(boxesOn("2026-09-09"), HasSubstr("langstroth-medium super"));
    EXPECT_THAT(book("case", "--colony Russet --as-of 2026-09-10").out, HasSubstr("\"supers_for\": \"bees\""));
}

TEST_F(BookHives, BoxesThereAreNotAreRefused) {
    for (const std::string command : {"add-boxes --colony Russet --date 2026-09-10", "add-colony --name Pear"}) {
        const auto space = command.find(' ');
        const auto tried = [&](const std::string& boxes) {
            return book(command.substr(0, space), command.substr(space) + boxes);
        };
        EXPECT_THAT(tried(" --format langstroth-deep --super langstroth-mediun").err,
                    HasSubstr("there is no hive format \"langstroth-mediun\"; did you mean \"langstroth-medium\""));
        EXPECT_THAT(tried(" --format langstroth-deep --boxes 13").err, HasSubstr("--boxes is 13; 1 to 12"));
        EXPECT_THAT(tried(" --format langstroth-deep --boxes 12 --super langstroth-medium").err,
                    HasSubstr("13 boxes with the supers; at most 12"));
    }
    EXPECT_THAT(boxesOn("2026-09-10"), HasSubstr("langstroth-medium super"));
}

TEST_F(BookHives, NoTwoColoniesGetOneName) {
    const auto second = book("add-colony", "--name Russet --format langstroth-deep");
    EXPECT_EQ(second.status, 2);
    EXPECT_THAT(second.err, HasSubstr("there is a colony \"Russet\" already, #1"));
    ASSERT_EQ(book("add-colony", "--name Pear --format langstroth-deep").status, 0);
    EXPECT_EQ(book("rename-colony", "--colony Pear --name Russet").status, 2);
    EXPECT_EQ(book("rename-colony", "--colony Pear --name Pear").status, 0) << "its own name is free for it";
    ASSERT_EQ(book("rename-colony", "--colony '#2' --name 'Pear 2'").status, 0);
    EXPECT_EQ(book("case", "--colony 'Pear 2' --as-of 2026-09-10").status, 0);
    ASSERT_EQ(book("undo", "").status, 0);
    EXPECT_EQ(book("case", "--colony Pear --as-of 2026-09-10").status, 0);
}

} // namespace
} // namespace winterlarder
