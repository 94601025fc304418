// SPDX-License-Identifier: GPL-3.0-or-later
// The calendar of a book: every visit of the plan, with ids that stay and are no other book's, and nothing the answer forbids.
#include "cli/program.h"
#include "support/other_calendar_reader.h"

#include <gmock/gmock.h>
#include <map>
#include <set>
#include <thread>

namespace winterlarder::calendar_test {
namespace {

using ::testing::Contains;
using ::testing::EndsWith;
using ::testing::HasSubstr;
using ::testing::Not;
using namespace winterlarder::testing;

struct Event {
    std::string day, id, summary, details, minutes;
};

std::vector<Event> eventsOf(const std::string& calendar) {
    const auto [status, said] = readByAnother(calendar);
    EXPECT_EQ(status, 0) << said;
    std::vector<Event> events;
    for (const auto& line : linesOf(said)) {
        std::vector<std::string> parts(1);
        for (const char c : line) {
            if (c == '|') parts.emplace_back();
            else parts.back() += c;
        }
        if (parts.size() == 6) events.push_back({parts[0], parts[1], parts[2], parts[3], parts[4]});
        else ADD_FAILURE() << line;
    }
    return events;
}

std::set<std::string> idsOf(const std::vector<Event>& events) {
    std::set<std::string> ids;
    for (const auto& event : events) ids.insert(event.id);
    return ids;
}

std::vector<std::string> summariesOf(const std::vector<Event>& events, const std::string& colony) {
    std::vector<std::string> summaries;
    for (const auto& event : events)
        if (event.summary.rfind(colony + ": ", 0) == 0) summaries.push_back(event.summary);
    return summaries;
}

class BookCalendar : public ::testing::Test {
protected:
    BookCalendar() { std::filesystem::copy_file(BUILD_FOLDER "/demo/orchard.larder", file()); }
    std::string file(const std::string& name = "orchard") const {
        return (folder_.path() / (name + ".larder")).string();
    }
    Ran book(const std::string& command, const std::string& arguments) const {
        return runProgram("book " + command + " '" + file() + "' " + arguments, "", "USER=ada LOGNAME=ada");
    }
    std::vector<Event> events(const std::string& arguments = "", const std::string& day = "2026-09-14") const {
        const auto ran = book("calendar", "--winters 300 --as-of " + day + " " + arguments);
        EXPECT_EQ(ran.status, 0) << ran.err;
        return eventsOf(ran.out);
    }
    TemporaryFolder folder_;
};

TEST_F(BookCalendar, HoldsEveryVisitOfTheYardsPlanWithItsNumbers) {
    const auto all = events();
    std::map<std::string, exchange::JsonValue> answers;
    for (const auto& line : linesOf(book("advise", "--as-of 2026-09-14 --winters 300 --json").out))
        answers[at(jsonOf(line), "colony").text] = jsonOf(line);
    EXPECT_THAT(summariesOf(all, "Duchess"),
                Contains("Duchess: unite it with " + at(answers.at("Duchess"), "plan.unite_with").text +
                         ", today at the latest, in the evening"));
    EXPECT_THAT(summariesOf(all, "Russet"), Contains(HasSubstr("full frames from Gravenstein")));
    EXPECT_THAT(summariesOf(all, "Gravenstein"), Contains("Gravenstein: weigh again"));
    for (const auto& [colony, answer] : answers) {
        std::multiset<std::string> wanted, there;
        const auto& feed = at(answer, "feed");
        if (feed.kind != exchange::JsonValue::Kind::Null)
            for (const auto& visit : at(feed, "visits").items)
                wanted.insert(at(visit, "date").text +
                              (at(visit, "kind").text == "check" ? " check" : " " + at(visit, "kind").text));
        for (const auto& event : all) {
            if (event.summary.rfind(colony + ": ", 0) != 0) continue;
            if (event.summary.find(": Syrup") != std::string::npos) there.insert(event.day + " syrup");
            if (event.summary.find(": Fondant") != std::string::npos) there.insert(event.day + " fondant");
            if (event.summary.find(": Check") != std::string::npos) there.insert(event.day + " check");
            EXPECT_THAT(event.details, Not(HasSubstr(at(answer, "headline").text))) << "that is of today";
            EXPECT_THAT(event.details, Not(HasSubstr("today")));
        }
        EXPECT_EQ(there, wanted) << colony;
    }
}

TEST_F(BookCalendar, RemindsInTheEveningAndFeedsInTheEvening) {
    for (const auto& event : events()) {
        EXPECT_EQ(event.minutes, "-360") << "18 h the day before";
        if (event.summary.find("Syrup") != std::string::npos) EXPECT_THAT(event.summary, EndsWith("in the evening"));
    }
}

TEST_F(BookCalendar, IdsStayOverExportsAndDaysAndAreEachOnce) {
    const auto first = events(), again = events(), nextDay = events("", "2026-09-15");
    EXPECT_EQ(idsOf(first).size(), first.size());
    EXPECT_EQ(idsOf(first), idsOf(again));
    std::set<std::string> kept;
    for (const auto& id : idsOf(nextDay))
        if (idsOf(first).contains(id)) kept.insert(id);
    EXPECT_GE(kept.size(), first.size() / 2) << "the same things are not written twice a day later";
    ASSERT_EQ(book("accept", "--colony Russet --as-of 2026-09-14 --winters 300").status, 0);
    const auto accepted = events();
    EXPECT_EQ(idsOf(accepted).size(), accepted.size());
    EXPECT_EQ(summariesOf(accepted, "Russet"), summariesOf(first, "Russet")) << "the plan is what was advised";
}

TEST_F(BookCalendar, ACopyIsTheSameBookAndAnotherOfTheSameNameIsNot) {
    const auto mine = idsOf(events());
    ASSERT_EQ(book("copy", "'" + file("copy") + "'").status, 0);
    const auto copied = runProgram("book calendar '" + file("copy") + "' --winters 300 --as-of 2026-09-14");
    EXPECT_EQ(idsOf(eventsOf(copied.out)), mine);
    const auto document = folder_.file("all.json", runProgram("book export '" + file() + "' --json").out);
    ASSERT_EQ(runProgram("book import '" + file("other") + "' '" + document.string() + "'", "", "USER=ada LOGNAME=ada")
                  .status,
              0);
    const auto other =
        eventsOf(runProgram("book calendar '" + file("other") + "' --winters 300 --as-of 2026-09-14").out);
    EXPECT_EQ(other.size(), mine.size());
    for (const auto& id : idsOf(other)) EXPECT_FALSE(mine.contains(id)) << id;
}

// Made by one keeper, as fast as can be: nothing but their marks tells them apart.
TEST_F(BookCalendar, BooksMadeInTheSameSecondHaveIdsOfTheirOwn) {
    const auto document = folder_.file("all.json", runProgram("book export '" + file() + "' --json").out);
    std::set<std::string> ids;
    std::size_t events = 0;
    for (const char* name : {"one", "two", "three"})
        ASSERT_EQ(runProgram("book import '" + file(name) + "' '" + document.string() + "'", "", "USER=ada LOGNAME=ada")
                      .status,
                  0);
    for (const char* name : {"one", "two", "three"}) {
        const auto due =
            eventsOf(runProgram("book calendar '" + file(name) + "' --winters 300 --as-of 2026-09-14").out);
        events += due.size();
        ids.merge(idsOf(due));
    }
    EXPECT_GT(events, 3U);
    EXPECT_EQ(ids.size(), events);
}

TEST_F(BookCalendar, CombsThatStayAreNotInIt) {
    for (const auto& event : events("--combs-stay")) EXPECT_THAT(event.summary, Not(HasSubstr("hang in"))) << event.day;
}

TEST_F(BookCalendar, NothingIsDueForAColonyThatIsGone) {
    ASSERT_EQ(book("accept", "--colony Russet --as-of 2026-09-14 --winters 300").status, 0);
    ASSERT_EQ(book("add-fate", "--colony Russet --date 2026-09-15 --fate dead").status, 0);
    EXPECT_TRUE(events("--colony Russet", "2026-09-15").empty());
}

TEST_F(BookCalendar, AFeedThatWasNotGivenIsDueToday) {
    ASSERT_EQ(book("accept", "--colony Russet --as-of 2026-09-14 --winters 300 --combs-stay").status, 0);
    const auto syrupOf = [&](const std::string& day) {
        std::vector<Event> syrup;
        for (const auto& event : events("--colony Russet --combs-stay", day))
            if (event.summary.find(": Syrup") != std::string::npos) syrup.push_back(event);
        return syrup;
    };
    const auto planned = syrupOf("2026-09-14"), later = syrupOf("2026-09-15");
    ASSERT_FALSE(planned.empty());
    ASSERT_EQ(planned.front().day, "2026-09-14");
    ASSERT_EQ(later.size(), planned.size());
    EXPECT_EQ(later.front().day, "2026-09-15");
    EXPECT_EQ(later.front().id, planned.front().id) << "the same event, a day later";
    EXPECT_THAT(later.front().details, HasSubstr("14 September 2026"));
    ASSERT_EQ(book("add-feed", "--colony Russet --date 2026-09-14 --kind syrup --sugar 6").status, 0);
    EXPECT_TRUE(syrupOf("2026-09-15").empty() || syrupOf("2026-09-15").front().id != planned.front().id)
        << "what was written down as fed was given";
}

// Signs of disease after a plan was made: what the inspector is waited for stands alone.
TEST_F(BookCalendar, NoEventContradictsTheAnswer) {
    ASSERT_EQ(book("accept", "--colony Pippin --as-of 2026-09-14 --winters 300").status, 0);
    EXPECT_THAT(summariesOf(events("", "2026-09-15"), "Pippin"), Contains(HasSubstr("Syrup")));
    ASSERT_EQ(book("add-look", "--colony Pippin --date 2026-09-15 --covered-combs 6 --trouble").status, 0);
    const auto after = summariesOf(events("", "2026-09-15"), "Pippin");
    EXPECT_THAT(after, Contains(HasSubstr("call the bee inspector")));
    EXPECT_THAT(after, Not(Contains(HasSubstr("Syrup"))));
    for (const auto& event : events("", "2026-09-15"))
        EXPECT_THAT(event.summary, Not(HasSubstr("hang in"))) << "nothing moves in a yard with disease";
}

} // namespace
} // namespace winterlarder::calendar_test
