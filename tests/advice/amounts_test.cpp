// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/amounts.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::advice::amounts_test {

namespace {

// A hundred winters that lose 5.0, 5.1 ... 14.9 kg.
std::vector<double> losses() {
    std::vector<double> largest;
    for (int i = 0; i < 100; ++i) largest.push_back(5 + i / 10.0);
    return largest;
}

Wish wish(double stores, double sd = 0, double risk = 0.2) { return {kilograms(stores), kilograms(sd), risk, kilograms(4)}; }

} // namespace

// Stores known exactly: 20 of 100 winters lose more than 12.9 kg, so 16.9 kg keep the reserve of 4 kg in 80.
TEST(Amounts, ByHand) {
    EXPECT_NEAR(spareOf(losses(), wish(20)).value(), 3.1, 0.1001); // the step at the edge may fall either way
    EXPECT_NEAR(missingOf(losses(), wish(10)).value(), 6.9, 0.1001);
    EXPECT_EQ(spareOf(losses(), wish(10)).value(), 0);
    EXPECT_EQ(missingOf(losses(), wish(20)).value(), 0);
}

TEST(Amounts, NeverMoreThanThereIs) {
    const std::vector<double> nothingLost(50, 0.0);
    EXPECT_LE(spareOf(nothingLost, {kilograms(6.05), kilograms(0), 0.2, kilograms(0)}).value(), 6.0 + 1e-9);
}

TEST(Amounts, VerdictByHalfAKilogram) {
    EXPECT_EQ(verdictOf({kilograms(0), kilograms(0.5)}, true), Verdict::Feed);
    EXPECT_EQ(verdictOf({kilograms(0), kilograms(0.4)}, true), Verdict::Leave);
    EXPECT_EQ(verdictOf({kilograms(0.5), kilograms(0)}, true), Verdict::Harvest);
    EXPECT_EQ(verdictOf({kilograms(5), kilograms(0)}, false), Verdict::Leave);
}

RC_GTEST_PROP(AmountsProperty, MoreStoresNeverWantMoreNorSpareLess, ()) {
    const double stores = *rc::gen::inRange(0, 300) / 10.0, sd = *rc::gen::inRange(0, 50) / 10.0;
    RC_ASSERT(missingOf(losses(), wish(stores + 0.3, sd)) <= missingOf(losses(), wish(stores, sd)));
    RC_ASSERT(spareOf(losses(), wish(stores + 0.3, sd)) >= spareOf(losses(), wish(stores, sd)));
}

RC_GTEST_PROP(AmountsProperty, ACautiousKeeperTakesLessAndFeedsMore, ()) {
    const double stores = *rc::gen::inRange(0, 300) / 10.0, sd = *rc::gen::inRange(0, 50) / 10.0;
    RC_ASSERT(missingOf(losses(), wish(stores, sd, 0.1)) >= missingOf(losses(), wish(stores, sd, 0.3)));
    RC_ASSERT(spareOf(losses(), wish(stores, sd, 0.1)) <= spareOf(losses(), wish(stores, sd, 0.3)));
}

} // namespace winterlarder::advice::amounts_test
