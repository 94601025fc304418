// SPDX-License-Identifier: GPL-3.0-or-later
// What the keeper is asked, answered through the commands of a book, comes out in the case that is asked with; not said is not there.
#include "cli/program.h"

#include <gmock/gmock.h>

namespace winterlarder::asked_test {
namespace {

using namespace winterlarder::testing;
using exchange::JsonValue;

class AskedInABook : public ::testing::Test {
protected:
    std::string file() const { return (folder.path() / "windfall.larder").string(); }
    Ran book(const std::string& command, const std::string& arguments) {
        return runProgram("book " + command + " '" + file() + "' " + arguments, "", "USER=ada LOGNAME=ada");
    }
    void done(const std::string& command, const std::string& arguments) {
        const auto ran = book(command, arguments);
        ASSERT_EQ(ran.status, 0) << command << ' ' << arguments << '\n' << ran.err;
    }
    JsonValue asCase(const char* day) {
        return jsonOf(book("case", std::string("--json --colony Pear --as-of ") + day).out);
    }
    static bool said(const JsonValue& whole, const char* path) {
        try {
            at(whole, path);
            return true;
        } catch (const std::runtime_error&) {
            return false;
        }
    }
    TemporaryFolder folder;
};

TEST_F(AskedInABook, EachAnswerReachesTheCase) {
    done(
        "new",
        "--yard Orchard --station ca-halifax --autumn-flow none --no-visits-in-winter --full-combs 4 --units imperial");
    done("add-colony", "--name Pear --format langstroth-deep --supers-for bees");
    done(
        "add-look",
        "--colony Pear --date 2026-09-10 --covered-combs 7 --no-queen-seen --eggs-seen --mites-counted --mites 1.5 --no-mites-treated "
        "--no-food-beside --fed-or-treated --honey-kind heather");
    const auto record = asCase("2026-09-12");
    EXPECT_EQ(at(record, "site.autumn_flow").text, "none");
    EXPECT_FALSE(at(record, "wish.visits_in_winter").flag);
    EXPECT_EQ(at(record, "full_combs").number, 4);
    EXPECT_EQ(at(record, "units").text, "imperial");
    EXPECT_EQ(at(record, "hive.supers_for").text, "bees");
    EXPECT_FALSE(at(record, "bees.queen_seen").flag);
    EXPECT_TRUE(at(record, "bees.eggs_seen").flag);
    EXPECT_TRUE(at(record, "bees.mites_counted").flag);
    EXPECT_EQ(at(record, "bees.mites_per_100_bees").number, 1.5);
    EXPECT_FALSE(at(record, "bees.mites_treated").flag);
    EXPECT_FALSE(at(record, "bees.food_beside").flag);
    EXPECT_TRUE(at(record, "fed_or_treated").flag);
    EXPECT_EQ(at(record, "honey_kind").text, "heather");
}

TEST_F(AskedInABook, WhatIsNotAnsweredIsNotThere) {
    done("new", "--yard Orchard --station ca-halifax");
    done("add-colony", "--name Pear --format langstroth-deep");
    done("add-look", "--colony Pear --date 2026-09-10 --covered-combs 7");
    const auto record = asCase("2026-09-12");
    for (const char* path : {"site.autumn_flow", "wish", "full_combs", "units", "hive.supers_for", "bees.queen_seen",
                             "bees.eggs_seen", "bees.mites_counted", "bees.mites_per_100_bees", "bees.mites_treated",
                             "bees.food_beside", "fed_or_treated", "honey_kind"})
        EXPECT_FALSE(said(record, path)) << path;
}

TEST_F(AskedInABook, WhatIsWrittenDownAfterTheLookCameAfterItUnlessItIsSaid) {
    done("new", "--yard Orchard --station ca-halifax");
    done("add-colony", "--name Pear --format langstroth-deep");
    done("add-harvest", "--colony Pear --date 2026-09-10 --kg 3");
    done("add-look", "--colony Pear --date 2026-09-10 --covered-combs 7");
    done("add-feed", "--colony Pear --date 2026-09-10 --fondant 1");
    done("add-feed", "--colony Pear --date 2026-09-10 --fondant 2 --no-after-look");
    done("add-harvest", "--colony Pear --date 2026-09-10 --kg 2");
    done("add-treatment", "--colony Pear --date 2026-08-20 --what 'formic acid' --until 2026-09-05");
    const auto record = asCase("2026-09-12");
    EXPECT_TRUE(at(record, "feeds.0.after_look").flag);
    EXPECT_FALSE(at(record, "feeds.1.after_look").flag);
    EXPECT_FALSE(at(record, "harvests.0.after_look").flag);
    EXPECT_TRUE(at(record, "harvests.1.after_look").flag);
    EXPECT_EQ(at(record, "treatments.0.until").text, "2026-09-05");
    EXPECT_FALSE(said(record, "hive.treated")) << "medicine with its days is told by its days";
}

TEST_F(AskedInABook, WhatADeadHiveTellsIsKept) {
    done("new", "--yard Orchard --station ca-halifax");
    done("add-colony", "--name Pear --format langstroth-deep");
    done(
        "outcome",
        "--colony Pear --date 2027-03-01 --dead --food-left --heads-in-cells --no-mites-on-floor --brood-pattern patchy --no-queen-found");
    done("add-sighting", "--colony Pear --date 2027-01-10 --saw cluster --seams 3 --cluster-from 4");
    const auto whole = book("export", "--json").out;
    for (const char* words : {R"("food_left":true)", R"("heads_in_cells":true)", R"("mites_on_floor":false)",
                              R"("brood_pattern":"patchy")", R"("queen":false)", R"("cluster_from":4)"})
        EXPECT_THAT(whole, ::testing::HasSubstr(words));
    EXPECT_EQ(book("outcome", "--colony Pear --date 2027-03-02 --dead --brood-pattern good").status, 2);
}

} // namespace
} // namespace winterlarder::asked_test
