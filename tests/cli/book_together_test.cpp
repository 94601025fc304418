// SPDX-License-Identifier: GPL-3.0-or-later
// One colony of a book asked about by name gets the answer it has among the others of its yard, to the last byte.
#include "cli/program.h"

#include <gmock/gmock.h>
#include <map>

namespace winterlarder::book_together_test {
namespace {

using namespace winterlarder::testing;

class BookTogether : public ::testing::Test {
protected:
    BookTogether() { std::filesystem::copy_file(BUILD_FOLDER "/demo/orchard.larder", file()); }
    std::string file() const { return (folder_.path() / "orchard.larder").string(); }
    Ran book(const std::string& command, const std::string& arguments) const {
        return runProgram("book " + command + " '" + file() + "' --as-of 2026-09-14 --winters 300 " + arguments, "",
                          "USER=ada LOGNAME=ada");
    }
    //! The answers of all colonies, each as its line.
    std::map<std::string, std::string> all(const std::string& arguments) const {
        std::map<std::string, std::string> answers;
        for (const auto& line : linesOf(book("advise", "--json " + arguments).out))
            answers[at(jsonOf(line), "colony").text] = line;
        return answers;
    }
    //! The answer frozen last.
    std::string frozen() const {
        const auto document = jsonOf(runProgram("book export '" + file() + "' --json").out);
        return at(memberOf(document, "acted_advice")->items.back(), "answer").text;
    }

private:
    TemporaryFolder folder_;
};

TEST_F(BookTogether, AdviseOfOneIsItsLineAmongAll) {
    const auto together = all(""), apart = all("--combs-stay");
    ASSERT_EQ(together.size(), 6u);
    EXPECT_NE(together, apart) << "else no comb moves";
    for (const auto& [colony, answer] : together) {
        EXPECT_EQ(book("advise", "--json --colony '" + colony + "'").out, answer + "\n");
        EXPECT_EQ(book("advise", "--json --combs-stay --colony '" + colony + "'").out, apart.at(colony) + "\n");
    }
}

TEST_F(BookTogether, WhatIsActedOnIsThatAnswer) {
    for (const char* moving : {"", "--combs-stay "})
        for (const char* colony : {"Russet", "Gravenstein", "Duchess"}) {
            const auto told = all(moving).at(colony);
            const auto acted = book("accept", moving + std::string("--colony ") + colony);
            ASSERT_EQ(acted.status, 0) << acted.err;
            EXPECT_EQ(frozen(), told) << colony;
        }
}

// Combs the accepted plan moved are in the stores a winter is followed from, at both ends.
TEST_F(BookTogether, AWinterIsFollowedFromWhatThePlanMoved) {
    const auto followed = [&](const std::string& colony, const char* moving) {
        EXPECT_EQ(book("accept", moving + std::string("--colony ") + colony).status, 0);
        const auto ran =
            runProgram("book follow '" + file() + "' --json --as-of 2026-09-25 --winters 300 --colony " + colony);
        EXPECT_EQ(ran.status, 0) << ran.err;
        return at(jsonOf(ran.out), "stores_kg.typical").number;
    };
    const auto answers = all("");
    const auto russet = jsonOf(answers.at("Russet")), gravenstein = jsonOf(answers.at("Gravenstein"));
    const double received = at(memberOf(*memberOf(russet, "plan"), "combs_from")->items.front(), "kg").number;
    ASSERT_GT(received, 1);
    EXPECT_NEAR(followed("Russet", "") - followed("Russet", "--combs-stay "), received, 0.05);
    double given = 0;
    for (const auto& gift : memberOf(*memberOf(gravenstein, "plan"), "combs_to")->items) given += at(gift, "kg").number;
    EXPECT_NEAR(followed("Gravenstein", "--combs-stay ") - followed("Gravenstein", ""), given, 0.05);
}

TEST_F(BookTogether, ANeighbourThatCannotBeAnsweredIsToldAndTheOtherAnswered) {
    runProgram("book add-colony '" + file() + "' --name Blank --format langstroth-deep --boxes 1 --since 2026-05-01");
    const auto alone = book("advise", "--json --colony Russet");
    EXPECT_EQ(alone.status, 0) << alone.err;
    EXPECT_EQ(alone.out, all("").at("Russet") + "\n");
}

TEST_F(BookTogether, TheYardIsAddedUpAfterItsColonies) {
    const std::string text = book("advise", "").out;
    const auto at = text.find("The yard Windfall orchard as a whole");
    ASSERT_NE(at, std::string::npos);
    const std::string yard = text.substr(at);
    double sugar = 0;
    for (const auto& [colony, answer] : all("")) {
        const auto document = jsonOf(answer);
        if (memberOf(document, "feed")->kind == exchange::JsonValue::Kind::Null) continue;
        sugar += winterlarder::testing::at(document, "feed.sugar_kg").number;
    }
    EXPECT_GT(sugar, 0);
    EXPECT_THAT(yard, ::testing::HasSubstr("Sugar               " + std::to_string(static_cast<int>(sugar)) + " kg"));
    EXPECT_THAT(yard, ::testing::HasSubstr("Frames to move first"));
    EXPECT_THAT(yard, ::testing::HasSubstr("From Gravenstein to Russet"));
    EXPECT_THAT(yard, ::testing::HasSubstr("What to do, by day"));
    EXPECT_THAT(book("advise", "--colony Russet").out, ::testing::Not(::testing::HasSubstr("as a whole")));
    EXPECT_THAT(book("advise", "--combs-stay").out, ::testing::Not(::testing::HasSubstr("Frames to move first")));
}

} // namespace
} // namespace winterlarder::book_together_test
