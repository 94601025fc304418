// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/colonies.h"

#include <cmath>

namespace winterlarder::advice::weigh_test {

namespace {

ColonyQuestion rich() { return colony({.capped = 0.9, .combs = 20, .covered = 9}); }
ColonyQuestion poor() { return colony({.capped = 0.2, .brood = 0.2}); }

} // namespace

TEST(Weigh, FeedingHelpsOnTheSameWinters) {
    const auto advice = adviceFor(poor());
    const Option* feed = option(advice, OptionKind::Feed);
    ASSERT_NE(feed, nullptr);
    EXPECT_LT(feed->runOut.share, advice.runOut->share);
    EXPECT_LT(feed->touchReserve.share, advice.touchReserve->share);
    EXPECT_GT(feed->springReserve.typical, option(advice, OptionKind::Leave)->springReserve.typical);
}

TEST(Weigh, AnEarlyLookIsRougher) {
    const auto early = adviceFor(colony({.asOf = "2026-09-20"}));
    const auto late = adviceFor(colony({.asOf = "2026-10-05"}));
    EXPECT_NEAR(early.storesSd.value(), std::hypot(early.estimate->sd.value(), 2), 1e-12);
    EXPECT_EQ(late.storesSd, late.estimate->sd);
    EXPECT_TRUE(says(early.goodPractice, "early-look"));
    EXPECT_FALSE(says(late.goodPractice, "early-look"));
    auto noNectar = colony({.asOf = "2026-09-20"});
    noNectar.season.lastIncome->day = noNectar.asOf - 5;
    EXPECT_FALSE(says(adviceFor(noNectar).goodPractice, "early-look")) << "what it bids to wait for is past";
}

// A weighing of July lies before the season's first day: it counts on that day, and the look's bees are those of its own day.
TEST(Weigh, AWeighingBeforeTheSeasonBeginsCountsOnItsFirstDay) {
    auto q = colony({.asOf = "2026-09-05", .brood = 0.15});
    const double usual = adviceFor(q).bees->typical.count;
    const auto weighedOn = [&q](const char* date, SeasonDay day) {
        auto weighed = q;
        weighed.weighings.push_back({.day = day, .date = *Date::parse(date), .reading = kilograms(52)});
        return adviceFor(weighed);
    };
    const auto july = weighedOn("2026-07-20", firstSeasonDay), first = weighedOn("2026-08-01", firstSeasonDay),
               later = weighedOn("2026-08-20", firstSeasonDay + 19);
    EXPECT_NEAR(july.bees->typical.count, usual, 0.1 * usual);
    EXPECT_EQ(july.estimate->shares.size(), 2U);
    EXPECT_EQ(july.estimate->mean, first.estimate->mean);
    EXPECT_EQ(july.estimate->sd, first.estimate->sd);
    EXPECT_NE(july.estimate->mean, later.estimate->mean);
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

} // namespace winterlarder::advice::weigh_test
