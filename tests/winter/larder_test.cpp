// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/larder.h"

#include "numerics/normal.h"
#include "winter/places.h"

#include <cmath>
#include <numeric>
#include <random>
#include <rapidcheck/gtest.h>

namespace winterlarder::winter::larder_test {

namespace {

const DemandEnsemble& oxford() {
    static const DemandEnsemble ensemble = *simulate(questionAt("gb-oxford", 13000, -92), constants(), {1, 500}, 2);
    return ensemble;
}

const WinterLosses& oxfordLosses() {
    static const WinterLosses losses = lossesFrom(oxford(), {-92}, {});
    return losses;
}

double shortShare(double stores, double sd, double margin) {
    return shareShort(oxfordLosses().largest, kilograms(stores), kilograms(sd), kilograms(margin),
                      margin > 0 ? Short::Undercut : Short::Reached)
        .share;
}

} // namespace

// Winters that run out, followed day by day, are those whose largest net loss reaches the stores.
TEST(Larder, ShareByPathIsShareByLargestLoss) {
    const double stores = 14;
    int starved = 0;
    for (std::size_t i = 0; i < 500; ++i) {
        bool dead = false;
        for (SeasonDay day = oxford().firstDay(); day <= oxford().lastDay(); day = day + 1)
            dead = dead || stores - static_cast<double>(oxford().netLoss(day)[i]) <= 0;
        starved += dead;
    }
    EXPECT_EQ(shortShare(stores, 0, 0), starved / 500.0);
}

TEST(Larder, StandardErrorIsThatOfAShare) {
    const auto share = shareShort(oxfordLosses().largest, kilograms(16), kilograms(0), kilograms(0), Short::Reached);
    EXPECT_NEAR(share.standardError, std::sqrt(share.share * (1 - share.share) / 499), 1e-12);
}

// Against brute force: stores drawn from their normal spread for every winter.
TEST(Larder, SpreadOfStoresCountsAsIfDrawn) {
    std::mt19937_64 generator(5);
    std::normal_distribution<double> normal;
    const double mean = 15, sd = 2.5, reserve = 4;
    const auto& losses = oxfordLosses();
    std::vector<double> left;
    int out = 0, touched = 0;
    const int draws = 200;
    for (std::size_t i = 0; i < losses.largest.size(); ++i)
        for (int j = 0; j < draws; ++j) {
            const double stores = std::max(0.0, mean + sd * normal(generator));
            out += stores <= losses.largest[i];
            touched += stores < losses.largest[i] + reserve;
            left.push_back(stores <= losses.largestBeforeForage[i] ? 0 : std::max(0.0, stores - losses.atForage[i]));
        }
    const double n = static_cast<double>(left.size());
    const auto outcome = follow(losses, kilograms(mean), kilograms(sd), kilograms(reserve));
    EXPECT_NEAR(outcome.runsOut.share, out / n, 4 * std::sqrt(0.25 / n));
    EXPECT_NEAR(outcome.touchesReserve.share, touched / n, 4 * std::sqrt(0.25 / n));
    // Quantiles of 100,000 draws: density here is at least 0.02 a kg, so four standard errors are below 0.3 kg.
    EXPECT_NEAR(outcome.atForage.low.value(), quantile(left, 0.1), 0.15);
    EXPECT_NEAR(outcome.atForage.typical.value(), quantile(left, 0.5), 0.1);
    EXPECT_NEAR(outcome.atForage.high.value(), quantile(left, 0.9), 0.1);
}

TEST(Larder, ASpreadOfNothingIsTheLimitOfASmallOne) {
    const auto exact = follow(oxfordLosses(), kilograms(17), kilograms(0), kilograms(4));
    const auto nearly = follow(oxfordLosses(), kilograms(17), kilograms(1e-6), kilograms(4));
    EXPECT_NEAR(exact.atForage.typical.value(), nearly.atForage.typical.value(), 0.02); // between two of 500 winters
    EXPECT_EQ(exact.runsOut.share, nearly.runsOut.share);
}

TEST(Larder, AFeedLaterIsWorthLessThanNowAndMoreThanNever) {
    const auto with = [](std::vector<StoresStep> steps) {
        const auto losses = lossesFrom(oxford(), {-92}, {}, steps);
        return shareShort(losses.largest, kilograms(11), kilograms(0), kilograms(0), Short::Reached).share;
    };
    const double never = with({}), late = with({{{80}, kilograms(4)}}), now = with({{{-92}, kilograms(4)}});
    EXPECT_LT(now, late);
    EXPECT_LT(late, never);
    EXPECT_NEAR(now, shortShare(15, 0, 0), 1e-12);
}

TEST(Larder, TouchingCountsFromTheDayAsked) {
    const std::vector<StoresStep> steps{{{-80}, kilograms(16)}};
    const auto afterwards = lossesFrom(oxford(), {-92}, {}, steps, SeasonDay{-79});
    const auto whole = lossesFrom(oxford(), {-92}, {}, steps);
    const auto touch = [&](const WinterLosses& losses) {
        return shareShort(losses.largest, kilograms(3.5), kilograms(0), kilograms(4), Short::Undercut).share;
    };
    EXPECT_EQ(touch(whole), 1); // 3.5 kg lie under the reserve before the feed
    EXPECT_LT(touch(afterwards), 1);
}

TEST(Larder, AutumnFlowIsCutAtTheRoom) {
    const AutumnFlow wide{1, std::nullopt, std::nullopt}, narrow{1, std::nullopt, kilograms(2)};
    const auto none = netLossBetween(oxford(), {}, {-92}, {-40});
    const auto open = netLossBetween(oxford(), wide, {-92}, {-40});
    const auto cut = netLossBetween(oxford(), narrow, {-92}, {-40});
    for (std::size_t i = 0; i < none.size(); ++i) {
        EXPECT_LE(none[i] - cut[i], 2 + 1e-5);
        EXPECT_LE(open[i], cut[i] + 1e-12);
        EXPECT_LE(cut[i], none[i] + 1e-12);
    }
    EXPECT_GT(std::accumulate(none.begin(), none.end(), 0.0), std::accumulate(cut.begin(), cut.end(), 0.0) + 1);
}

// What weeds and ivy bring is in every answer, uncut; a flow counts by what it brings beyond.
TEST(Larder, TheTrickleOfEveryAutumnIsInWhateverTheFlow) {
    EXPECT_EQ(oxford().autumnTrickle(), constants().autumnTrickle);
    const auto none = netLossBetween(oxford(), {}, {-92}, {-40});
    const auto same = netLossBetween(oxford(), {constants().autumnTrickle, {}, kilograms(0)}, {-92}, {-40});
    const auto strong = netLossBetween(oxford(), {1, {}, {}}, {-92}, {-40});
    const auto income = oxford().autumnIncome({-41}), used = oxford().used({-41}), net = oxford().netLoss({-41});
    for (std::size_t i = 0; i < none.size(); ++i) {
        EXPECT_EQ(none[i], same[i]);
        EXPECT_NEAR(none[i] - strong[i], 0.95 * static_cast<double>(income[i]), 1e-5);
        EXPECT_NEAR(static_cast<double>(used[i] - net[i]), 0.05 * static_cast<double>(income[i]), 1e-4);
    }
}

TEST(Larder, QuantilesInterpolateBetweenOrderStatistics) {
    EXPECT_DOUBLE_EQ(quantile({4, 1, 3, 2}, 0.5), 2.5);
    EXPECT_DOUBLE_EQ(quantile({4, 1, 3, 2}, 0.1), 1.3);
    EXPECT_DOUBLE_EQ(quantile({7}, 0.9), 7);
    EXPECT_THROW(quantile({}, 0.5), ContractViolation);
}

RC_GTEST_PROP(LarderProperty, MoreStoresNeverRaiseTheShareThatRunsOut, ()) {
    const double stores = *rc::gen::inRange(0, 400) / 10.0, sd = *rc::gen::inRange(0, 40) / 10.0;
    RC_ASSERT(shortShare(stores + 0.1, sd, 0) <= shortShare(stores, sd, 0) + 1e-15);
    RC_ASSERT(shortShare(stores + 0.1, sd, 4) <= shortShare(stores, sd, 4) + 1e-15);
    RC_ASSERT(shortShare(stores, sd, 4) >= shortShare(stores, sd, 0));
}

RC_GTEST_PROP(LarderProperty, FeedingMoreNeverLowersTheSpringReserve, ()) {
    const double stores = *rc::gen::inRange(20, 250) / 10.0;
    const auto less = storesAtForage(oxfordLosses(), kilograms(stores), kilograms(2));
    const auto more = storesAtForage(oxfordLosses(), kilograms(stores + 0.5), kilograms(2));
    RC_ASSERT(more.low.value() >= less.low.value() - 1e-3); // found to 1 g
    RC_ASSERT(more.typical.value() >= less.typical.value() - 1e-3);
    RC_ASSERT(more.high.value() >= less.high.value() - 1e-3);
}

} // namespace winterlarder::winter::larder_test
