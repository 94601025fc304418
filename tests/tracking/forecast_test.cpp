// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/winters.h"

#include "winter/larder.h"

#include <cmath>

namespace winterlarder::tracking::forecast_test {
namespace {

Tracked asExpected(const FollowQuestion& q) { return *track(q, constants(), quick, 2); }

// Before anything is seen the forecast is the larder's answer over the same winters: nodes instead of an integral.
TEST(Forecast, WithoutObservationsIsTheLarders) {
    const auto q = oxfordColony(15, 2, -92);
    const auto now = forecastOf(q, asExpected(q), q.today);
    const auto losses = winter::lossesFrom(oxfordWinters(), {-92}, {});
    const auto larder = winter::follow(losses, kilograms(15), kilograms(2), kilograms(4));
    const double noise = 4 * std::sqrt(0.25 / (8.0 * quick.winters)); // four standard errors of a share over all nodes
    EXPECT_NEAR(now.runOut.share, larder.runsOut.share, noise);
    EXPECT_NEAR(now.touchReserve.share, larder.touchesReserve.share, noise);
    EXPECT_NEAR(now.atForage.typical.value(), larder.atForage.typical.value(), 0.1);
    EXPECT_NEAR(now.atForage.low.value(), larder.atForage.low.value(), 0.15);
    EXPECT_NEAR(now.atForage.high.value(), larder.atForage.high.value(), 0.15);
    EXPECT_EQ(now.out.share, 0);
    EXPECT_NEAR(now.today.typical.value(), 15, 0.05);
}

TEST(Forecast, StepsLieInTheBandsFromTheirDayOn) {
    auto q = oxfordColony(15, 0, 0);
    const auto bare = forecastOf(q, asExpected(q), q.today);
    q.steps = {{{-40}, KnownStep::Kind::Feed, kilograms(5), kilograms(0)}};
    const auto fed = forecastOf(q, asExpected(q), q.today);
    const auto band = [](const Forecast& f, int day) {
        return f.bands[static_cast<std::size_t>(day + 92)].stores.typical.value();
    };
    EXPECT_EQ(fed.bands[0].day, (SeasonDay{-92}));
    EXPECT_NEAR(band(fed, -41), band(bare, -41), 0.011);
    EXPECT_NEAR(band(fed, -40), band(bare, -40) + 5, 0.011);
    EXPECT_NEAR(band(fed, 0), band(bare, 0) + 5, 0.011);
}

TEST(Forecast, BooksBalance) {
    const auto q = oxfordColony(15, 0, 20);
    const auto now = forecastOf(q, asExpected(q), q.today);
    EXPECT_NEAR(now.today.typical.value() + now.lost.typical.value(), 15, 0.03); // two medians on a grid of 10 g
    EXPECT_NEAR(now.bands[111].stores.typical.value(), now.today.typical.value(),
                0.011); // end of day 19 is the start of day 20
}

TEST(Forecast, DaysComeInOrder) {
    const auto q = oxfordColony(9, 2, -20);
    const auto now = forecastOf(q, asExpected(q), q.today);
    ASSERT_TRUE(now.reserveBy.low && now.reserveBy.typical && now.outBy.low);
    EXPECT_LE(*now.reserveBy.low, *now.reserveBy.typical);
    EXPECT_LT(*now.reserveBy.low, *now.outBy.low);
    EXPECT_GE(*now.reserveBy.low, q.today);
    EXPECT_GT(now.touchReserve.share, now.runOut.share);
    double before = 0;
    for (const auto& band : now.bands) {
        EXPECT_GE(band.out, before);
        EXPECT_LE(band.stores.low, band.stores.high);
        before = band.out;
    }
    EXPECT_NEAR(before, now.runOut.share, 1e-9);
}

// Honey is taken today, down to less than the reserve: it is touched today, in every winter.
TEST(Forecast, TheReserveIsTouchedOnTheDayItHappens) {
    auto q = oxfordColony(20, 0, -80);
    q.steps = {{q.today, KnownStep::Kind::Harvest, kilograms(-17), kilograms(0)}};
    const auto now = forecastOf(q, asExpected(q), q.today);
    ASSERT_GT(now.today.low, q.reserve) << "this morning there was enough";
    EXPECT_NEAR(now.touchReserve.share, 1, 1e-9);
    EXPECT_EQ(now.reserveBy.low, q.today);
    EXPECT_EQ(now.reserveBy.high, q.today);
}

TEST(Forecast, AHiveWithPlentyTouchesNothing) {
    const auto q = oxfordColony(45, 1, -20);
    const auto now = forecastOf(q, asExpected(q), q.today);
    EXPECT_LT(now.touchReserve.share, 0.005); // a winter in a thousand needs more than 40 kg
    EXPECT_FALSE(now.reserveBy.low);
    EXPECT_FALSE(now.outBy.low);
}

TEST(Forecast, OutlooksAgreeWithTheForecast) {
    const auto q = oxfordColony(12, 2, -20);
    const auto tracked = asExpected(q);
    const auto now = forecastOf(q, tracked, q.today);
    const auto ahead = outlooks(q, tracked, {q.today, {20}});
    ASSERT_EQ(ahead.size(), 2u);
    const double touching = believed(tracked.belief, [&](std::size_t p) {
        return ahead[0].least[p] < 4 || ahead[0].stores[p] < 4 || tracked.belief.outDay[p] != Belief::neverOut ? 1.0
                                                                                                               : 0.0;
    });
    EXPECT_NEAR(touching, now.touchReserve.share, 1e-6);
    for (std::size_t p = 0; p < 100; ++p) EXPECT_LE(ahead[0].least[p], ahead[1].least[p]);
}

} // namespace
} // namespace winterlarder::tracking::forecast_test
