// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers that records are taken by come from the shipped tables: each, moved, moves what is made of the records.
#include "answer/doubts.h"
#include "answer/followed_book.h"
#include "answer/learned_book.h"
#include "answer/question_of_case.h"
#include "exchange/case/case_file.h"
#include "exchange/shipped_data.h"

namespace winterlarder::answer::tables_used_test {
namespace {

struct Moved {
    double DecisionConstants::*number;
    double to;
};

ReferenceData with(const Moved& moved) {
    ReferenceData data = winterlarder::testing::shippedData();
    data.decisions.*(moved.number) = moved.to;
    return data;
}

advice::ColonyQuestion question(const char* members, const char* flow, const ReferenceData& data) {
    const auto inWords = [](const stores::Doubt&, Place place, const book::ColonyCase&) {
        return Problem{ProblemKind::Input, std::move(place), "in doubt", {}};
    };
    auto read = readQuestion(
        std::string(
            R"({"case": 1, "as_of": "2026-09-12", "hive": {"format": "langstroth-deep"}, "site": {"station": "ca-halifax", "autumn_flow": ")") +
            flow + "\"}" + members + "}",
        "case.json", data, 0, inWords);
    if (!read) throw std::runtime_error(describe(read.problems().front()));
    return std::move(read->question);
}

TEST(TablesUsed, FlowsAreSharesOfAFullBloomAndAStrongOneEnds) {
    EXPECT_EQ(question("", "trickle", with({&DecisionConstants::flowTrickle, 0.15})).flowStrength, 0.15);
    EXPECT_EQ(question("", "fair", with({&DecisionConstants::flowFair, 0.4})).flowStrength, 0.4);
    EXPECT_EQ(question("", "strong", with({&DecisionConstants::flowStrong, 0.8})).flowStrength, 0.8);
    const auto q = question("", "strong", with({&DecisionConstants::strongFlowDays, 9}));
    EXPECT_EQ(*q.flowLastDay - q.asOf, 9);
}

TEST(TablesUsed, AFeedKeepsOpenStoresThinForItsDays) {
    const char* fed = R"(, "feeds": [{"date": "2026-09-04", "kind": "syrup", "sugar_kg": 1}])";
    EXPECT_FALSE(question(fed, "none", winterlarder::testing::shippedData()).freshlyFilled);
    EXPECT_TRUE(question(fed, "none", with({&DecisionConstants::openThinDays, 9})).freshlyFilled);
}

TEST(TablesUsed, AFeederHoldsWhatItsRowSays) {
    ReferenceData data = winterlarder::testing::shippedData();
    for (auto& feeder : data.feeders)
        if (feeder.id == "end") feeder = {"end", litres(7), true, false, false};
    const auto q = question(R"(, "feeder": {"kind": "end"})", "none", data);
    EXPECT_EQ(q.feeder.capacity, litres(7));
    EXPECT_TRUE(q.feeder.top && !q.feeder.slow && !q.feeder.touchesCluster);
}

bool harvestDoubted(const Moved& moved) {
    const auto data = with(moved);
    const auto read = exchange::readCase(
        R"({"case": 1, "as_of": "2026-11-10", "looked_on": "2026-10-20", "hive": {"format": "langstroth-deep"},
        "site": {"station": "ca-halifax"}, "combs": [{"capped": 0.9}, {"capped": 0.9}], "harvests": [{"date": "2026-11-03", "kg": 15}]})",
        "case.json", data);
    for (const auto& doubt : doubtsOf(read.value(), data))
        if (doubt.part == DoubtedPart::Harvest) return true;
    return false;
}

TEST(TablesUsed, AHarvestIsHeldAgainstWhatALookSaw) {
    const double shipped = winterlarder::testing::shippedData().decisions.oldestSight;
    EXPECT_TRUE(harvestDoubted({&DecisionConstants::oldestSight, shipped}));
    EXPECT_FALSE(harvestDoubted({&DecisionConstants::oldestSight, 10})) << "the look is two weeks old";
    EXPECT_FALSE(harvestDoubted({&DecisionConstants::sightAtMostTimes, 6}));
    EXPECT_FALSE(harvestDoubted({&DecisionConstants::sightAtMostMore, 30}));
}

class TablesUsedByBook : public FollowedColonyTest {
protected:
    tracking::FollowQuestion followedWith(const char* date, const Moved& moved) {
        const auto reading = must(readToFollow(book, colony, day(date), nullptr));
        return *must(followedColony(reading, with(moved), few, 2)).question;
    }
    void weigh(const char* date, double kg) {
        edit(book, book::AddWeighing{{.colony = colony, .weighing = {day(date), book::ScaleReading{kilograms(kg)}}}});
    }
};

TEST_F(TablesUsedByBook, OneWeighingCountsInSoManyDays) {
    weigh("2026-12-01", 45);
    weigh("2026-12-06", 44.8);
    EXPECT_EQ(questionOn("2026-12-20").observations.size(), 1U);
    EXPECT_EQ(followedWith("2026-12-20", {&DecisionConstants::oneWeighingIn, 5}).observations.size(), 2U);
}

TEST_F(TablesUsedByBook, ALaterLookIsNeverSurerThanItMayBe) {
    look("2027-03-20");
    const auto stores = followedWith("2027-03-25", {&DecisionConstants::laterStoresSdLeast, 90}).observations.at(0);
    EXPECT_EQ(std::get<tracking::StoresSeen>(stores.what).sd, kilograms(90));
    const auto bees = followedWith("2027-03-25", {&DecisionConstants::laterBeesSdLeast, 0.9}).observations.at(1);
    EXPECT_EQ(std::get<tracking::BeesSeen>(bees.what).logSd, 0.9);
}

TEST_F(TablesUsedByBook, PastWintersAreAsManyAsLongAndAsFinelySimulatedAsTheTableSays) {
    const auto past = [&](const Moved& moved) {
        const auto data = with(moved);
        auto other = must(book::Book::open(folder / "a.larder", data, opening(book::OpenFor::Reading)));
        return must(readPast(other, day("2028-10-01"))).winters;
    };
    EXPECT_EQ(past({&DecisionConstants::pastWinters, 15}).size(), 1U);
    EXPECT_TRUE(past({&DecisionConstants::pastWinters, 1}).empty());
    EXPECT_EQ(past({&DecisionConstants::winterOverDay, 100}).at(0).reading.asOf, day("2027-04-11"));
    EXPECT_EQ(forLearning({1, 2500}, with({&DecisionConstants::learningWinters, 700}).decisions).winters, 700);
}

TEST(TablesUsed, AHandbooksReserveIsTheTables) {
    const auto site = question("", "none", winterlarder::testing::shippedData()).site;
    const auto told = handbookFor(*site, with({&DecisionConstants::handbookReserve, 5}));
    EXPECT_EQ(told.toHave - told.use, kilograms(5));
}

} // namespace
} // namespace winterlarder::answer::tables_used_test
