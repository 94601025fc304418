// SPDX-License-Identifier: GPL-3.0-or-later
// Winters out of the book: follow, outcome, learned, calendar.
#include "cli/program.h"
#include "support/other_calendar_reader.h"

#include <gmock/gmock.h>

namespace winterlarder::follow_test {
namespace {

using ::testing::AllOf;
using ::testing::AnyOf;
using ::testing::HasSubstr;
using ::testing::Not;
using namespace winterlarder::testing;

class FollowCommands : public ::testing::Test {
protected:
    Ran book(const std::string& command, const std::string& arguments = "") {
        return runProgram("book " + command + " '" + (folder.path() / "windfall.larder").string() + "' " + arguments,
                          "", "USER=ada LOGNAME=ada");
    }
    std::string done(const std::string& command, const std::string& arguments = "") {
        const auto ran = book(command, arguments);
        EXPECT_EQ(ran.status, 0) << command << ' ' << arguments << '\n' << ran.err;
        return ran.out;
    }
    void furnish(const std::string& capped = "0.8", const std::string& station = "ca-halifax") {
        done("new", "--yard Orchard --station " + station);
        done("add-colony", "--name Pear --format langstroth-deep --boxes 2 --tare 24");
        std::string list = "[";
        for (int i = 0; i < 20; ++i)
            list += std::string(i ? ", " : "") + "{\"capped\": " + (i < 12 ? capped : "0") + "}";
        combs = folder.file("combs.json", list + "]").string();
        look("2026-09-20");
    }
    void look(const std::string& date) {
        done("add-look", "--colony Pear --date " + date + " --covered-combs 9 --combs '" + combs + "'");
    }
    exchange::JsonValue follow(const std::string& asOf, const std::string& more = "") {
        return jsonOf(done("follow", "--colony Pear --json --winters 500 --as-of " + asOf + " " + more));
    }
    void weigh(const std::string& date, double gross) {
        done("add-weighing", "--colony Pear --date " + date + " --gross " + std::to_string(gross));
    }
    //! What the scale is expected to show that day, from the document itself.
    double expected(const std::string& date) {
        weigh(date, 45);
        const double typical = at(follow(date), "observations.0.expected_kg.typical").number;
        done("undo");
        return typical;
    }

    TemporaryFolder folder;
    std::string combs;
};

TEST_F(FollowCommands, AWinterAsForecastIsOnCourse) {
    furnish("1");
    weigh("2027-01-10", expected("2027-01-10"));
    const auto answer = follow("2027-01-15");
    EXPECT_EQ(at(answer, "state").text, "on_course");
    EXPECT_EQ(at(answer, "decided").text, "2026-09-20");
    EXPECT_EQ(at(answer, "observations.0.kind").text, "scale");
    EXPECT_FALSE(at(answer, "observations.0.contradicts").flag);
    EXPECT_NEAR(at(answer, "stores_kg.typical").number, at(answer, "autumn.stores_kg.typical").number, 1.5);
    EXPECT_EQ(at(answer, "days.1.date").text, "2026-09-27");
    EXPECT_EQ(at(follow("2027-01-15", "--daily"), "days.1.date").text, "2026-09-21");
    EXPECT_EQ(at(answer, "forage.typical").text.substr(0, 4), "2027");
    EXPECT_THAT(done("follow", "--colony Pear --winters 500 --as-of 2027-01-15"), HasSubstr("On course"));
}

TEST_F(FollowCommands, WhatWillNotDoIsSaidFirst) {
    furnish("0.5");
    weigh("2026-12-10", expected("2026-12-10"));
    const auto answer = follow("2026-12-15");
    ASSERT_EQ(at(answer, "state").text, "on_course");
    ASSERT_GT(at(answer, "touch_reserve.share").number, 0.2);
    const auto said = done("follow", "--colony Pear --winters 500 --as-of 2026-12-15");
    EXPECT_THAT(said, HasSubstr("Not enough to reach spring forage without feeding: "));
    EXPECT_THAT(said, Not(HasSubstr("On course")));
    EXPECT_EQ(at(answer, "reasons.0.id").text, "follow-reserve-by");
}

TEST_F(FollowCommands, WhatWasSeenIsShownAsItWasRead) {
    furnish();
    done("add-weighing", "--colony Pear --date 2026-12-01 --lift 22.5 --lift 23.5");
    done("add-weighing", "--colony Pear --date 2027-01-10 --heft heavy");
    const auto said = done("follow", "--colony Pear --winters 500 --as-of 2027-01-15");
    EXPECT_THAT(said, HasSubstr("46.0 kg")) << "the sum of the lifts, as in the book";
    EXPECT_THAT(said, ::testing::ContainsRegex("hefted +heavy +(light|fair|heavy)"));
}

TEST_F(FollowCommands, NoStoresBelowNothingAreExpected) {
    furnish("0.25");
    done("add-weighing", "--colony Pear --date 2027-03-20 --heft light");
    const auto answer = follow("2027-03-21");
    ASSERT_LT(at(answer, "observations.0.expected_kg.low").number, 0.5);
    EXPECT_THAT(done("follow", "--colony Pear --winters 500 --as-of 2027-03-21"),
                ::testing::ContainsRegex("hefted +light +light|hefted +light +fair"));
}

TEST_F(FollowCommands, FoodThatCannotWaitGoesOnBeforeItIsWeighed) {
    furnish("0.45");
    weigh("2027-02-10", expected("2027-02-10") - 3.5);
    ASSERT_EQ(at(follow("2027-02-12"), "state").text, "act_now");
    const auto said = done("follow", "--colony Pear --winters 500 --as-of 2027-02-12");
    EXPECT_THAT(said, HasSubstr("today, then weigh again"));
    EXPECT_THAT(said, ::testing::ContainsRegex("the food goes on in the mildest[ \n]+hour"));
    EXPECT_THAT(said, Not(HasSubstr("do not open")));
    EXPECT_THAT(done("calendar", "--winters 500 --as-of 2027-02-12"), HasSubstr("at once. Weigh both sides"));
}

TEST_F(FollowCommands, ALightHiveMustBeFed) {
    furnish("0.45");
    weigh("2027-02-10", expected("2027-02-10") - 3.5);
    const auto answer = follow("2027-02-12");
    EXPECT_EQ(at(answer, "state").text, "act_now");
    EXPECT_GT(at(answer, "feed.fondant_kg").number, 0);
    EXPECT_LE(at(answer, "feed.fondant_kg").number, 2.5);
    EXPECT_EQ(at(answer, "feed.lots").items.size(), 1u);
    EXPECT_GT(at(answer, "expected_later.fondant_kg.high").number, 0.5);
    EXPECT_LE(at(answer, "cautions").items.size(), 5u);
    EXPECT_EQ(at(answer, "feed.lots.0.date").text, "2027-02-12");
    EXPECT_THAT(done("follow", "--colony Pear --winters 500 --as-of 2027-02-12"), HasSubstr("Act now"));
    const double before = at(answer, "stores_kg.typical").number;
    done("add-feed", "--colony Pear --date 2027-02-13 --fondant 5");
    EXPECT_NEAR(at(follow("2027-02-14"), "stores_kg.typical").number, before + 0.85 * 5, 0.4) << "what was fed counts";
}

TEST_F(FollowCommands, BeforeNovemberTheAnswerOfTheDaySaysWhatIsDone) {
    furnish("0.5");
    for (const std::string date : {"2026-09-20", "2026-10-02"}) {
        const auto advised = jsonOf(done("advise", "--colony Pear --json --winters 500 --as-of " + date));
        const auto followed = follow(date);
        EXPECT_EQ(at(followed, "headline").text, at(advised, "headline").text);
        EXPECT_EQ(at(followed, "leads").text, "answer");
        EXPECT_EQ(at(followed, "feed.plan.sugar_kg").number, at(advised, "feed.sugar_kg").number);
        EXPECT_EQ(at(followed, "reasons.0.id").text, "follow-not-begun");
    }
    EXPECT_THAT(done("follow", "--winters 500 --as-of 2026-10-02"), HasSubstr("from 1 November 2026 on"));
    const auto later = follow("2026-11-02");
    EXPECT_EQ(at(later, "leads").text, "winter");
    EXPECT_NE(at(later, "reasons.0.id").text, "follow-not-begun");
}

TEST_F(FollowCommands, BeforeNovemberAColonyIsAnsweredInThePlanOfItsYard) {
    furnish("0.8");
    done("add-look",
         "--colony Pear --date 2026-09-21 --eggs-seen --queen-seen --covered-combs 9 --combs '" + combs + "'");
    done("add-colony", "--name Plum --format langstroth-deep --boxes 1");
    done("add-look", "--colony Plum --date 2026-09-20 --covered-combs 3 --combs '" +
                         folder.file("few.json", R"([{"capped": 0.5}, {"capped": 0.5}, {}, {}])").string() + "'");
    const auto plum = jsonOf(done("follow", "--colony Plum --json --winters 500 --as-of 2026-09-21"));
    EXPECT_THAT(at(plum, "headline").text, HasSubstr("unite it with Pear"));
    EXPECT_TRUE(at(plum, "feed").kind == exchange::JsonValue::Kind::Null) << "what is united has no feed of its own";
}

TEST_F(FollowCommands, WhatWasSeenInOctoberStillSaysItself) {
    furnish("1");
    done("add-fate", "--colony Pear --date 2026-10-10 --fate dead");
    const auto dead = follow("2026-10-11");
    EXPECT_EQ(at(dead, "state").text, "dead");
    EXPECT_EQ(at(dead, "leads").text, "winter");
}

TEST_F(FollowCommands, AFeedThatWasPlannedAndNotWrittenDownIsAskedAboutAndTheDayAnsweredAnew) {
    furnish("0.5");
    done("accept", "--colony Pear --winters 500 --as-of 2026-09-20");
    for (const std::string date : {"2026-10-02", "2026-10-09"}) {
        const auto advised = jsonOf(done("advise", "--colony Pear --json --winters 500 --as-of " + date));
        EXPECT_THAT(at(advised, "headline").text,
                    HasSubstr("Was the feed planned from 20 September 2026 on given? Write it down"));
        EXPECT_EQ(at(advised, "reasons.0.id").text, "feed-not-recorded");
        EXPECT_EQ(at(follow(date), "headline").text, at(advised, "headline").text);
    }
    const auto winter = follow("2027-01-10");
    EXPECT_EQ(at(winter, "state").text, "feed_not_recorded");
    EXPECT_THAT(at(winter, "headline").text, AllOf(HasSubstr("Was the feed planned from 20 September 2026 on given?"),
                                                   HasSubstr("without feeding")));
    done("add-feed", "--colony Pear --date 2026-09-25 --kind syrup --sugar 30 --sure");
    EXPECT_THAT(at(jsonOf(done("advise", "--colony Pear --json --winters 500 --as-of 2026-10-09")), "headline").text,
                Not(HasSubstr("Was the feed")));
}

TEST_F(FollowCommands, AdviceInWinterTellsHowTheWinterThatIsFollowedGoes) {
    furnish();
    weigh("2026-12-05", expected("2026-12-05"));
    const auto advice = book("advise", "--as-of 2027-01-18 --winters 300");
    EXPECT_EQ(advice.status, 0);
    EXPECT_EQ(advice.out, done("follow", "--as-of 2027-01-18 --winters 300"));
    EXPECT_THAT(advice.out, Not(HasSubstr("cannot be said")));
    EXPECT_THAT(advice.err, HasSubstr("book follow"));
    EXPECT_THAT(done("advise", "--as-of 2026-10-20 --winters 300"), HasSubstr("Options")) << "it is still decided";
}

TEST_F(FollowCommands, AdviceInWinterSaysTheSameInJson) {
    furnish();
    weigh("2026-12-05", expected("2026-12-05"));
    const std::string asked = " --as-of 2027-01-18 --winters 300 --json";
    const auto advice = jsonOf(done("advise", asked)), followed = jsonOf(done("follow", "--colony Pear" + asked));
    EXPECT_EQ(at(advice, "verdict").text, "leave");
    EXPECT_EQ(at(advice, "phase").text, "winter");
    EXPECT_EQ(at(advice, "headline").text, at(followed, "headline").text);
    EXPECT_EQ(at(advice, "stores_kg.typical").number, at(followed, "stores_kg.typical").number);
    EXPECT_EQ(at(advice, "follow.state").text, "on_course");
    EXPECT_EQ(at(advice, "follow.days.1.now_kg.typical").number, at(followed, "days.1.now_kg.typical").number);
    EXPECT_EQ(at(advice, "reasons.0.id").text, at(followed, "reasons.0.id").text);
    EXPECT_EQ(at(advice, "feed").kind, exchange::JsonValue::Kind::Null);
}

TEST_F(FollowCommands, AdviceInWinterFeedsInJsonWhereAVisitIsDue) {
    furnish("0.45");
    weigh("2027-02-10", expected("2027-02-10") - 3.5);
    const auto advice = jsonOf(done("advise", "--as-of 2027-02-12 --winters 300 --json"));
    EXPECT_EQ(at(advice, "follow.state").text, "act_now");
    EXPECT_EQ(at(advice, "verdict").text, "feed");
    EXPECT_EQ(at(advice, "feed.kind").text, "fondant");
    EXPECT_EQ(at(advice, "feed.visits.0.date").text, "2027-02-12");
    EXPECT_EQ(at(advice, "feed.visits.0.fondant_kg").number, at(advice, "follow.feed.fondant_kg").number);
    EXPECT_EQ(at(advice, "expected_later.fondant_kg.high").number,
              at(advice, "follow.expected_later.fondant_kg.high").number);
    EXPECT_EQ(at(advice, "next_look").text, at(advice, "follow.next_weighing.date").text);
    EXPECT_EQ(at(advice, "next_look_what").text, "weigh");
}

TEST_F(FollowCommands, LiftedLightIsFedAndWeighed) {
    furnish();
    weigh("2026-12-05", expected("2026-12-05"));
    done("add-weighing", "--colony Pear --date 2027-01-17 --heft light");
    const auto answer = follow("2027-01-18");
    EXPECT_EQ(at(answer, "state").text, "act_now");
    EXPECT_EQ(at(answer, "feed.lots.0.fondant_kg").number, 2.5);
    EXPECT_LT(at(answer, "observations.1.seen_kg").number, 12) << "light is short of what is wanted in January";
}

TEST_F(FollowCommands, EveryKindOfSightingCounts) {
    furnish();
    done("add-sighting", "--colony Pear --date 2027-01-05 --saw flying");
    done("add-sighting", "--colony Pear --date 2027-01-15 --saw cluster --seams 5 --stores-in-sight");
    done("add-sighting", "--colony Pear --date 2027-01-25 --saw stores --no-stores-in-sight");
    done("add-weighing", "--colony Pear --date 2027-02-01 --heft light");
    auto answer = follow("2027-02-02");
    std::string kinds;
    for (const auto& seen : at(answer, "observations").items) kinds += at(seen, "kind").text + ' ';
    EXPECT_EQ(kinds, "heft flying cluster glimpse glimpse ");
    done("add-sighting", "--colony Pear --date 2027-02-03 --saw dead");
    EXPECT_EQ(at(follow("2027-02-04"), "state").text, "dead");
    EXPECT_EQ(at(follow("2027-02-02"), "state").text, at(answer, "state").text) << "later records do not count";
}

// After a death five questions are asked, and what was found points somewhere.
TEST_F(FollowCommands, ADeathIsAskedAboutAndPointsSomewhere) {
    furnish();
    done("add-sighting", "--colony Pear --date 2027-02-03 --saw dead");
    auto answer = follow("2027-02-04");
    std::string ids;
    for (const auto& question : at(answer, "questions").items) ids += at(question, "id").text + ' ';
    EXPECT_EQ(ids, "food_left heads_in_cells mites_on_floor brood_pattern queen ");
    EXPECT_EQ(at(answer, "points_to").kind, exchange::JsonValue::Kind::Null);
    EXPECT_THAT(done("follow", "--colony Pear --winters 500 --as-of 2027-02-04"), HasSubstr("Was the queen found?"));
    done("outcome", "--colony Pear --date 2027-02-04 --dead --mites-on-floor --no-queen-found");
    answer = follow("2027-02-05");
    ASSERT_EQ(at(answer, "points_to").items.size(), 2u);
    EXPECT_EQ(at(answer, "points_to.0.id").text, "mites_on_floor");
    EXPECT_EQ(at(answer, "points_to.1.reason").text, "dead-queen-missing");
    const auto said = done("follow", "--colony Pear --winters 500 --as-of 2027-02-05");
    EXPECT_THAT(said, AllOf(HasSubstr("What was found points to"), HasSubstr("Was food left"),
                            Not(HasSubstr("Was the queen found?"))));
    EXPECT_EQ(memberOf(follow("2027-02-02"), "questions"), nullptr) << "while it lives nothing is asked";
}

TEST_F(FollowCommands, FoodOutOfReachIsSaidOfAFullHive) {
    furnish();
    done("add-sighting", "--colony Pear --date 2027-01-15 --saw cluster --seams 5 --no-stores-in-sight");
    const auto answer = follow("2027-01-15");
    EXPECT_EQ(at(answer, "state").text, "food_out_of_reach");
    EXPECT_EQ(at(answer, "feed.lots.0.date").text, "2027-01-15");
    EXPECT_THAT(done("follow", "--colony Pear --winters 500 --as-of 2027-01-15"),
                HasSubstr("out of the cluster's reach. Today lay 2.5 kg (6 lb) of fondant"));
}

TEST_F(FollowCommands, TheYardsWeatherCounts) {
    furnish();
    std::string table = "date,mean\n";
    for (int day = 1; day <= 30; ++day)
        table += "2026-11-" + std::string(day < 10 ? "0" : "") + std::to_string(day) + ",-6\n";
    const auto file = folder.file("weather.csv", table);
    done("add-weather", "'" + file.string() + "'");
    const auto answer = follow("2026-12-01");
    bool said = false;
    for (const auto& reason : at(answer, "reasons").items) said = said || at(reason, "id").text == "weather-so-far";
    EXPECT_TRUE(said);
}

TEST_F(FollowCommands, AColonyNobodyLookedIntoCannotBeFollowed) {
    furnish();
    done("add-colony", "--name Quince --format langstroth-deep");
    const auto answer = jsonOf(done("follow", "--colony Quince --json --winters 300 --as-of 2027-01-15"));
    EXPECT_EQ(at(answer, "state").text, "cannot_say");
    EXPECT_FALSE(at(answer, "reasons").items.empty());
    EXPECT_THAT(done("follow", "--colony Quince --winters 300 --as-of 2027-01-15"), HasSubstr("cannot be followed"));
}

TEST_F(FollowCommands, OutcomesAreWrittenDownAndLearnedFrom) {
    furnish();
    EXPECT_EQ(book("outcome", "--colony Pear --date 2027-04-10").status, 2);
    EXPECT_EQ(book("outcome", "--colony Pear --date 2027-04-10 --alive --dead").status, 2);
    weigh("2027-03-01", expected("2027-03-01") + 2);
    EXPECT_EQ(done("outcome", "--colony Pear --date 2027-04-10 --alive --covered-combs 8 --stores 14"), "1\n");
    EXPECT_EQ(at(follow("2027-03-15"), "learned").kind, exchange::JsonValue::Kind::Null) << "nothing is past yet";
    look("2027-09-20");
    const auto learned = jsonOf(done("learned", "--json --winters 500 --as-of 2027-10-01"));
    EXPECT_EQ(at(learned, "winters").number, 1);
    EXPECT_LT(at(learned, "colonies.0.use.typical").number, 1) << "it was heavier than forecast";
    EXPECT_EQ(at(learned, "forecasts.count").number, 1);
    EXPECT_GT(at(learned, "scores.0.score_kg").number, 0);
    EXPECT_THAT(done("learned", "--winters 500 --as-of 2027-10-01"), HasSubstr("less than the model says"));
    const auto answer = follow("2027-12-01");
    EXPECT_EQ(at(answer, "learned.use.typical").number, at(learned, "colonies.0.use.typical").number);
    EXPECT_EQ(at(follow("2027-12-01", "--without-learning"), "learned").kind, exchange::JsonValue::Kind::Null);
}

TEST_F(FollowCommands, WhatIsDueIsACalendar) {
    furnish("0.62");
    done("accept", "--colony Pear --as-of 2026-09-21 --winters 300");
    const std::string calendar = done("calendar", "--winters 500 --as-of 2026-09-22");
    const auto [status, said] = readByAnother(calendar);
    EXPECT_EQ(status, 0) << said << calendar;
    EXPECT_THAT(said, AnyOf(HasSubstr("Pear: Syrup"), HasSubstr("Pear: Check"), HasSubstr("Pear: weigh again")));
}

// In a warm place syrup is fed while the winter is followed already; the look after it is no syrup.
TEST_F(FollowCommands, TheCheckOfAFollowedPlanIsACheckInTheCalendar) {
    furnish("0.3", "us-ga-atlanta");
    look("2026-10-10");
    weigh("2026-10-25", 36);
    const auto followed = follow("2026-11-02");
    const auto& visits = at(followed, "feed.plan.visits").items;
    ASSERT_GE(visits.size(), 2u);
    ASSERT_EQ(at(visits.back(), "kind").text, "check");
    const auto [status, said] = readByAnother(done("calendar", "--winters 500 --as-of 2026-11-02"));
    ASSERT_EQ(status, 0) << said;
    for (const auto& line : linesOf(said)) {
        const bool check = line.rfind(at(visits.back(), "date").text, 0) == 0;
        EXPECT_THAT(line, HasSubstr(check ? "Pear: Check the feeding" : "Pear: Syrup"));
    }
    EXPECT_THAT(said, Not(HasSubstr("Syrup, 0 L")));
    EXPECT_EQ(linesOf(said).size(), visits.size());
}

// The answer of autumn uses what past winters taught, says so, and can do without.
TEST_F(FollowCommands, AdviceUsesWhatWasLearnedAndSaysSo) {
    furnish();
    weigh("2027-03-01", expected("2027-03-01") + 3);
    done("outcome", "--colony Pear --date 2027-04-10 --alive --covered-combs 8 --stores 16");
    look("2027-09-20");
    const std::string asked = "--colony Pear --winters 500 --as-of 2027-09-25 ";
    const auto taught = jsonOf(done("advise", asked + "--json")),
               plain = jsonOf(done("advise", asked + "--json --without-learning"));
    EXPECT_EQ(memberOf(plain, "learned"), nullptr);
    EXPECT_EQ(at(taught, "learned.winters").number, 1);
    EXPECT_LT(at(taught, "learned.use.typical").number, 1);
    EXPECT_LT(at(taught, "learned.use.low").number, at(taught, "learned.use.high").number);
    EXPECT_LT(at(taught, "use_kg.typical").number, at(plain, "use_kg.typical").number);
    bool said = false;
    for (const auto& reason : at(taught, "reasons").items) said = said || at(reason, "id").text == "learned-use";
    EXPECT_TRUE(said);
    EXPECT_THAT(done("advise", asked), HasSubstr("less than the model says; used from now\n    on"));
    EXPECT_EQ(done("advise", asked + "--json"), done("advise", asked + "--json")) << "the same to the last digit";
    // It goes out with the case, and gives the same answer there.
    const auto file = folder.file("case.json", done("case", asked));
    const auto alone = jsonOf(runProgram("advise '" + file.string() + "' --winters 500 --json").out);
    EXPECT_EQ(at(alone, "need_kg").number, at(taught, "need_kg").number);
    EXPECT_EQ(at(alone, "learned.use.typical").number, at(taught, "learned.use.typical").number);
}

} // namespace
} // namespace winterlarder::follow_test
