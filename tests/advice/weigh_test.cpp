// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/amounts.h"
#include "advice/colonies.h"

#include <cmath>
#include <set>

namespace winterlarder::advice::weigh_test {

namespace {

double touching(const ColonyQuestion& q, const Advice& advice, double change, bool withFlow) {
    const auto answer = weigh(q, constants(), quick, 2);
    const auto flow = withFlow ? answer->workings.flow : winter::AutumnFlow{};
    const auto losses = winter::lossesFrom(*answer->workings.ensemble, q.asOf, flow);
    return winter::shareShort(losses.largest, advice.estimate->mean + kilograms(change), advice.storesSd, q.reserve, true).share;
}

ColonyQuestion rich() { return colony({.capped = 0.9, .combs = 20, .covered = 9}); }
ColonyQuestion poor() { return colony({.capped = 0.2, .brood = 0.2}); }

} // namespace

TEST(Weigh, HarvestIsTheLargestAmountThatKeepsTheWishedRisk) {
    const auto q = rich();
    const auto advice = adviceFor(q);
    ASSERT_EQ(advice.verdict, Verdict::Harvest);
    const double upTo = advice.harvest->upTo.value();
    EXPECT_GE(upTo, leastAmountKg);
    EXPECT_LE(touching(q, advice, -upTo, false), q.shortRisk);
    EXPECT_GT(touching(q, advice, -upTo - amountStepKg, false), q.shortRisk);
    EXPECT_NEAR(upTo * 10, std::round(upTo * 10), 1e-9);
    EXPECT_FALSE(advice.feed);
    EXPECT_EQ(option(advice, OptionKind::TakeNow)->springReserve, *advice.springReserve);
}

TEST(Weigh, CombsToTakeFitTheAmount) {
    const auto q = rich();
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.harvest);
    ASSERT_FALSE(advice.harvest->combs.empty());
    double hold = 0;
    std::set<int> taken;
    for (const int position : advice.harvest->combs) {
        ASSERT_LT(position, static_cast<int>(q.combs.size()));
        EXPECT_TRUE(taken.insert(position).second) << "comb " << position << " is taken twice";
        const auto& comb = q.combs[static_cast<std::size_t>(position)];
        hold += comb.capped * stores::capacityOf(comb).value(); // nothing open is on these combs
    }
    EXPECT_NEAR(advice.harvest->combsHold.value(), hold, 1e-9);
    EXPECT_LE(advice.harvest->combsHold, advice.harvest->upTo);
    const double oneComb = hold / static_cast<double>(taken.size());
    EXPECT_GT(hold + oneComb, advice.harvest->upTo.value()) << "another comb as full as these would still fit";
}

TEST(Weigh, FeedIsTheSmallestAmountThatReachesTheWishedRisk) {
    const auto q = poor();
    const auto answer = weigh(q, constants(), quick, 2);
    ASSERT_EQ(answer->advice.verdict, Verdict::Feed);
    ASSERT_TRUE(answer->advice.feed);
    const double fed = answer->advice.feed->stores.value();
    EXPECT_LE(touching(q, answer->advice, fed + 0.05, true), q.shortRisk); // plans round by at most 0.05 kg
    EXPECT_GT(touching(q, answer->advice, fed - amountStepKg - 0.05, true), q.shortRisk);
    EXPECT_FALSE(answer->advice.harvest);
}

TEST(Weigh, FeedingHelpsOnTheSameWinters) {
    const auto advice = adviceFor(poor());
    const Option* feed = option(advice, OptionKind::Feed);
    ASSERT_NE(feed, nullptr);
    EXPECT_LT(feed->runOut.share, advice.runOut->share);
    EXPECT_LE(feed->touchReserve.share, 0.21); // a feed later than today may cost a winter in a hundred
    EXPECT_GT(feed->springReserve.typical, option(advice, OptionKind::Leave)->springReserve.typical);
}

// Much is missing and a week is left: syrup as long as it may be given, and the rest another way.
TEST(Weigh, NothingLiquidAfterTheLastDay) {
    auto q = poor();
    const SeasonDay last = q.season.syrupDeadline->day;
    q.asOf = q.lookedOn = last - 7;
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.feed);
    int liquid = 0;
    for (const auto& visit : advice.feed->visits) {
        if (visit.syrup.value() <= 0) continue;
        ++liquid;
        EXPECT_LE(visit.day, last);
    }
    EXPECT_GT(liquid, 0);
    EXPECT_GT(advice.feed->fondant.value(), 0) << "so much does not go down as syrup in a week";
    q.asOf = q.lookedOn = last + 1;
    const auto tooLate = adviceFor(q);
    ASSERT_TRUE(tooLate.feed);
    for (const auto& visit : tooLate.feed->visits) EXPECT_EQ(visit.syrup.value(), 0) << visit.date.iso();
}

TEST(Weigh, AWeakColonyIsToBeUnitedAndItsFeedIsFilledAllTheSame) {
    auto q = colony({.capped = 0.2, .covered = 2.5});
    const auto advice = adviceFor(q);
    EXPECT_EQ(advice.verdict, Verdict::Unite);
    EXPECT_TRUE(advice.feed);
    EXPECT_TRUE(says(advice.cautions, "weak-unite"));
    q.nucleus = true; // kept small on purpose
    EXPECT_NE(adviceFor(q).verdict, Verdict::Unite);
}

TEST(Weigh, NobodyIsUnitedOnceLayingHasStopped) {
    auto q = colony({.asOf = "2026-11-20", .capped = 0.2, .covered = 2.5});
    EXPECT_NE(adviceFor(q).verdict, Verdict::Unite);
}

TEST(Weigh, LeaveWhenNeitherIsHalfAKilogram) {
    const auto needed = *adviceFor(rich()).need;
    bool left = false;
    for (double capped = 0.3; capped < 0.95 && !left; capped += 0.01) {
        const auto advice = adviceFor(colony({.capped = capped, .combs = 12, .covered = 9}));
        left = advice.verdict == Verdict::Leave;
        if (!left) continue;
        EXPECT_FALSE(advice.feed);
        EXPECT_FALSE(advice.harvest);
        EXPECT_EQ(*advice.springReserve, option(advice, OptionKind::Leave)->springReserve);
        EXPECT_NEAR(advice.estimate->mean.value(), needed.value(), 4); // near the need, spread counted
    }
    EXPECT_TRUE(left) << "no filling between feeding and harvest";
}

TEST(Weigh, HoneyThatMayNotBeTakenIsLeft) {
    const auto verdictWith = [](auto change) {
        auto q = rich();
        change(q);
        return adviceFor(q);
    };
    EXPECT_EQ(verdictWith([](auto& q) { q.treated = true; }).verdict, Verdict::Leave);
    EXPECT_EQ(verdictWith([](auto& q) { q.moisturePercent = 18.6; }).verdict, Verdict::Leave);
    EXPECT_EQ(verdictWith([](auto& q) { q.moisturePercent = 17.6; }).verdict, Verdict::Harvest);
    EXPECT_EQ(verdictWith([](auto& q) { q.trouble = true; }).verdict, Verdict::Leave);
    const auto fed = verdictWith([](auto& q) {
        for (auto& comb : q.combs) comb.fed = true;
    });
    EXPECT_EQ(fed.verdict, Verdict::Leave);
    EXPECT_TRUE(says(fed.reasons, "fed-combs"));
}

TEST(Weigh, ContradictoryEvidenceIsNamedAndNeverHarvested) {
    auto q = rich();
    q.weighings.push_back({WeighedHive::Kind::Scale, q.asOf, q.winter.date(q.asOf), kilograms(32)});
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.estimate->contradictory);
    EXPECT_NE(advice.verdict, Verdict::Harvest);
    EXPECT_TRUE(says(advice.reasons, "contradiction"));
    EXPECT_TRUE(advice.anotherLook.worthIt);
}

TEST(Weigh, HarvestNeverCountsOnAutumnFlow) {
    auto q = rich();
    const auto without = adviceFor(q);
    q.flowStrength = 0.3;
    const auto with = adviceFor(q);
    EXPECT_EQ(with.harvest->upTo, without.harvest->upTo);
    EXPECT_LT(*with.need, *without.need);
}

TEST(Weigh, AnEarlyLookIsRougher) {
    const auto early = adviceFor(colony({.asOf = "2026-09-20"}));
    const auto late = adviceFor(colony({.asOf = "2026-10-05"}));
    EXPECT_NEAR(early.storesSd.value(), std::hypot(early.estimate->sd.value(), 2), 1e-12);
    EXPECT_EQ(late.storesSd, late.estimate->sd);
    EXPECT_TRUE(says(early.cautions, "early-look"));
    EXPECT_FALSE(says(late.cautions, "early-look"));
}

TEST(Weigh, NoBroodLongBeforeTheStopIsTakenForOneAndSaid) {
    const auto none = adviceFor(colony({.asOf = "2026-09-05"}));
    const auto some = adviceFor(colony({.asOf = "2026-09-05", .brood = 0.15}));
    EXPECT_TRUE(says(none.cautions, "laying-stopped"));
    EXPECT_FALSE(says(some.cautions, "laying-stopped"));
    EXPECT_LT(*none.need, *some.need - kilograms(3));
    EXPECT_FALSE(says(adviceFor(colony({.asOf = "2026-10-20"})).cautions, "laying-stopped")) << "it usually has by then";
}

TEST(Weigh, OnceLayingHasRestartedBroodIsAskedFor) {
    auto q = colony({.asOf = "2027-02-10"});
    EXPECT_FALSE(says(adviceFor(q).cautions, "brood-not-said"));
    q.brood.reset();
    EXPECT_TRUE(says(adviceFor(q).cautions, "brood-not-said"));
    q = colony({.asOf = "2026-12-10"});
    q.brood.reset();
    EXPECT_FALSE(says(adviceFor(q).cautions, "brood-not-said"));
}

// A weighing of July lies before the season's first day: it counts on that day, and the look's bees are those of its own day.
TEST(Weigh, AWeighingBeforeTheSeasonBeginsCountsOnItsFirstDay) {
    auto q = colony({.asOf = "2026-09-05", .brood = 0.15});
    const double usual = adviceFor(q).bees->typical.count;
    q.weighings.push_back({WeighedHive::Kind::Scale, firstSeasonDay, *Date::parse("2026-07-20"), kilograms(52)});
    const auto advice = adviceFor(q);
    EXPECT_NEAR(advice.bees->typical.count, usual, 0.1 * usual);
    EXPECT_EQ(advice.estimate->shares.size(), 2U);
}

TEST(Weigh, StoresSeenEarlierAreCarriedToTheAskingDay) {
    const auto fresh = adviceFor(colony({.asOf = "2026-10-05"}));
    auto q = colony({.asOf = "2026-10-25", .lookedOn = "2026-10-05"});
    const auto carried = adviceFor(q);
    EXPECT_LT(carried.estimate->mean, fresh.estimate->mean - kilograms(0.5));
    EXPECT_TRUE(says(carried.reasons, "stores-carried-forward"));
    q.feeds.push_back({q.lookedOn + 3, kilograms(3)});
    q.harvests.push_back({q.lookedOn + 4, kilograms(1)});
    EXPECT_NEAR(adviceFor(q).estimate->mean.value(), carried.estimate->mean.value() + 2, 1e-9);
    q.feeds.front().day = q.lookedOn; // already in the combs that were seen
    EXPECT_NEAR(adviceFor(q).estimate->mean.value(), carried.estimate->mean.value() - 1, 1e-9);
}

TEST(Weigh, UseByMonthAddsUpToTheUse) {
    const auto advice = adviceFor(rich());
    double sum = 0;
    for (const auto& month : advice.useByMonth) sum += month.use.typical.value();
    EXPECT_NEAR(sum, advice.use->typical.value(), 0.05 * sum); // medians do not quite add
    EXPECT_EQ(advice.useByMonth.front().month, 9);
    EXPECT_EQ(advice.useByMonth.back().month, 5);
}

TEST(Weigh, StopsWhenAsked) {
    std::stop_source source;
    source.request_stop();
    EXPECT_FALSE(weigh(rich(), constants(), quick, 1, source.get_token()));
}

TEST(Weigh, SameSeedSameAnswer) {
    const auto one = weigh(rich(), constants(), quick, 1)->advice;
    const auto two = weigh(rich(), constants(), quick, 2)->advice;
    EXPECT_EQ(one.need, two.need);
    EXPECT_EQ(one.runOut, two.runOut);
    EXPECT_EQ(one.harvest->upTo, two.harvest->upTo);
}

TEST(Weigh, InDearthClimatesNobodyIsUnitedAndTheAnswerSaysWhatItIs) {
    const auto advice = adviceFor(colony({.station = "pt-lisbon", .asOf = "2026-10-05", .capped = 0.2, .covered = 3}));
    EXPECT_NE(advice.verdict, Verdict::Unite);
    EXPECT_NE(advice.verdict, Verdict::CannotSay);
    EXPECT_TRUE(says(advice.reasons, "dearth-climate"));
}

TEST(Weigh, TheThreeClassesOfMidwinterAreForMidwinterOnly) {
    EXPECT_TRUE(says(adviceFor(colony({.asOf = "2027-01-14"})).reasons, "middle-winter-class"));
    EXPECT_FALSE(says(adviceFor(colony({.asOf = "2026-10-20"})).reasons, "middle-winter-class")) << "laying has stopped, but it is autumn";
    EXPECT_FALSE(says(adviceFor(colony({.asOf = "2027-03-14"})).reasons, "middle-winter-class"));
}

TEST(Weigh, MidwinterShortageBecomesFondant) {
    const auto advice = adviceFor(colony({.asOf = "2027-01-20", .capped = 0.1, .covered = 6}));
    ASSERT_EQ(advice.verdict, Verdict::Feed);
    EXPECT_EQ(advice.feed->syrup.sugar.value(), 0);
    EXPECT_GT(advice.feed->fondant.value(), 0);
    EXPECT_TRUE(says(advice.cautions, "emergency"));
}

} // namespace winterlarder::advice::weigh_test
