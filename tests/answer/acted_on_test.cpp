// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/followed_book.h"

#include "book/case_of.h"
#include "exchange/case/case_file.h"

namespace winterlarder::answer::acted_on_test {
namespace {

// The keeper acts on an advice, and feeds.
class ActedOnTest : public FollowedColonyTest {
protected:
    book::PlannedVisitId visit;

    void accept(const char* on, const std::string& inputs) {
        const book::ActedAdvice advice{.colony = colony,
                                       .date = day(on),
                                       .verdict = "feed",
                                       .inputs = inputs,
                                       .answer = "{}",
                                       .seed = 1,
                                       .winters = 300};
        const book::PlannedVisit planned{
            .colony = colony, .date = day(on), .what = book::VisitKind::Syrup, .sugar = kilograms(6)};
        visit = *edit(book, book::AcceptAdvice{advice, {planned}}).added<book::PlannedVisit>();
    }
    void acceptAsKnown(const char* on) {
        accept(on, exchange::writeCaseLine(must(book::caseOf(book, colony, day(on)))));
    }
    void feed(const char* on, double sugar) {
        edit(book,
             book::AddFeed{{.colony = colony, .feed = {day(on), book::FeedKind::Syrup, kilograms(sugar), {}, {}, {}}}});
    }
};

TEST_F(ActedOnTest, AFeedOfTheEveningThePlanWasMadeCountsOnce) {
    acceptAsKnown("2026-09-20");
    const auto before = questionOn("2026-12-01");
    feed("2026-09-20", 6);
    const auto q = questionOn("2026-12-01");
    EXPECT_EQ(q.stores.mean, before.stores.mean) << "it is not in what was there";
    ASSERT_EQ(q.steps.size(), 1u) << "it was given";
    ASSERT_EQ(q.planned.size(), 1u) << "and it was planned";
    EXPECT_NEAR(q.steps[0].change.value(), q.planned[0].change.value(), 1e-9);
    EXPECT_TRUE(q.unticked.empty());
}

TEST_F(ActedOnTest, APlanNobodyActedOnIsNoFactAndThatIsSaid) {
    const auto asFound = [](const FollowedColony& followed) {
        const auto reasons = tracking::follow(*followed.question, shipped().constants, few, 2)->reasons;
        return std::any_of(reasons.begin(), reasons.end(), [](const Remark& each) {
            return each.id == "follow-as-found" && std::get<Date>(each.details.at("day")) == day("2026-09-20");
        });
    };
    EXPECT_TRUE(on("2026-12-01").question->planned.empty());
    EXPECT_TRUE(asFound(on("2026-12-01")));
    acceptAsKnown("2026-09-20");
    EXPECT_FALSE(asFound(on("2026-12-01")));
}

TEST_F(ActedOnTest, APlanThatIsOverIsAskedAboutAndNotStillToBeMade) {
    acceptAsKnown("2026-09-20");
    const book::PlannedVisit second{
        .colony = colony, .date = day("2026-09-24"), .what = book::VisitKind::Syrup, .sugar = kilograms(2)};
    edit(book, book::AddPlannedVisit{second});
    const auto openOn = [&](const char* date) {
        return openVisits(must(readToFollow(book, colony, day(date), nullptr)), shipped()).size();
    };
    const auto askedOn = [&](const char* date) {
        return feedNotRecorded(must(readToFollow(book, colony, day(date), nullptr)), shipped());
    };
    EXPECT_EQ(openOn("2026-09-20"), 2u);
    EXPECT_FALSE(askedOn("2026-09-20")) << "it is still due";
    EXPECT_EQ(openOn("2026-09-22"), 2u) << "the plan goes on";
    ASSERT_TRUE(askedOn("2026-09-22"));
    EXPECT_EQ(std::get<Date>(askedOn("2026-09-22")->details.at("day")), day("2026-09-20"));
    EXPECT_EQ(openOn("2026-09-25"), 0u) << "after its last day";
    ASSERT_TRUE(askedOn("2026-09-25"));
    feed("2026-09-25", 8);
    EXPECT_FALSE(askedOn("2026-09-26"));
}

TEST_F(ActedOnTest, AFeedTheAdviceKnewOfIsInItsStores) {
    const auto without = questionOn("2026-12-01").stores.mean;
    feed("2026-09-20", 3);
    acceptAsKnown("2026-09-20");
    const auto q = questionOn("2026-12-01");
    EXPECT_GT(q.stores.mean.value(), without.value() + 2.5);
    EXPECT_TRUE(q.steps.empty());
    EXPECT_EQ(q.unticked.size(), 1u) << "what was planned on top of it was not given";
}

TEST_F(ActedOnTest, TickingAVisitOffThatEveningIsTheSame) {
    acceptAsKnown("2026-09-20");
    edit(book, book::MarkVisitDone{visit, day("2026-09-20"), std::nullopt});
    const auto q = questionOn("2026-12-01");
    EXPECT_EQ(q.steps.size(), 1u);
    EXPECT_EQ(q.planned.size(), 1u);
    EXPECT_TRUE(q.unticked.empty());
}

TEST_F(ActedOnTest, APlannedFeedThatIsPastAndNotWrittenDownIsAskedAbout) {
    acceptAsKnown("2026-09-20");
    EXPECT_TRUE(questionOn("2026-09-20").unticked.empty()) << "today is not past";
    ASSERT_EQ(questionOn("2026-09-21").unticked.size(), 1u);
    EXPECT_NEAR(questionOn("2026-09-21").unticked[0].stores.value(), 6 * 1.045, 0.05);
    EXPECT_TRUE(questionOn("2026-09-21").steps.empty()) << "and never taken for given";
    edit(book, book::SkipVisit{visit});
    EXPECT_TRUE(questionOn("2026-12-01").unticked.empty()) << "struck out";
}

TEST_F(ActedOnTest, WhatIsWrittenDownAsFedAnswersThePlan) {
    acceptAsKnown("2026-09-20");
    feed("2026-09-22", 3);
    ASSERT_EQ(questionOn("2026-12-01").unticked.size(), 1u) << "half of it";
    EXPECT_NEAR(questionOn("2026-12-01").unticked[0].stores.value(), 3 * 1.045, 0.05) << "no more is asked about";
    feed("2026-09-25", 3);
    EXPECT_TRUE(questionOn("2026-12-01").unticked.empty());
}

TEST_F(ActedOnTest, ADeadHivesFindingsAreKept) {
    EXPECT_FALSE(on("2027-02-12").deadHive);
    edit(book, book::AddWinterOutcome{{.colony = colony, .date = day("2027-02-10"), .alive = false, .foodLeft = true}});
    ASSERT_TRUE(on("2027-02-12").deadHive);
    EXPECT_EQ(on("2027-02-12").deadHive->foodLeft, true);
}

TEST_F(ActedOnTest, AClustersPlaceAndFoodSeenBesideItAreObservations) {
    edit(book, book::AddSighting{{.colony = colony,
                                  .date = day("2027-01-05"),
                                  .saw = book::SightingKind::Cluster,
                                  .seams = 4,
                                  .clusterFrom = 3}});
    auto seen = lookAt(colony, day("2027-01-20"));
    seen.bees.foodBeside = false;
    edit(book, book::AddLook{seen});
    const auto observations = questionOn("2027-01-25").observations;
    const auto& cluster = std::get<tracking::ClusterSeen>(observations.at(0).what);
    EXPECT_EQ(cluster.firstComb, 2u);
    EXPECT_EQ(cluster.seams, 4);
    EXPECT_TRUE(std::any_of(observations.begin(), observations.end(), [](const auto& each) {
        const auto* comb = std::get_if<tracking::CombGlimpsed>(&each.what);
        return comb && !comb->stores;
    }));
}

} // namespace
} // namespace winterlarder::answer::acted_on_test
