// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/heat.h"

#include "winter/places.h"

#include <rapidcheck/gtest.h>

namespace winterlarder::winter::heat_test {

namespace {

double powerAt(double bees, double brood, double t, double swing = 4, double shell = 1, double race = 1) {
    return hivePower({bees}, {brood}, celsius(t), kelvins(swing), shell, race, constants()).total().value();
}

double mgPerBee(double bees, double t, double swing) {
    const auto power = hivePower({bees}, {0}, celsius(t), kelvins(swing), 1, 1, constants()).total();
    return foodPerDay(power, constants()).value() * 1e6 / bees;
}

} // namespace

// Worked example of the model: 1 W for a day is 86400 / 12700 g, printed 6.803.
TEST(Heat, OneWattForADay) { EXPECT_NEAR(foodPerDay(watts(1), constants()).value() * 1000, 6.803, 0.0005); }

// Worked example of the model: bees without brood at 12 degC, mg of honey per bee and day, with and without the swing of
// day and night; printed to 0.001, tolerance 0.002.
TEST(Heat, BeesAloneAtTwelveDegrees) {
    EXPECT_NEAR(mgPerBee(4400, 12, 4), 6.737, 0.002);
    EXPECT_NEAR(mgPerBee(8900, 12, 4), 4.573, 0.002);
    EXPECT_NEAR(mgPerBee(34000, 12, 4), 4.010, 0.002);
    EXPECT_NEAR(mgPerBee(4400, 12, 0), 6.737, 0.002);
    EXPECT_NEAR(mgPerBee(8900, 12, 0), 4.573, 0.002);
    EXPECT_NEAR(mgPerBee(34000, 12, 0), 4.010, 0.002);
}

// First day of the worked three-day example: P 4.9844 W, P_b 2.6290 W at 6 degC, 10,000 bees, 2839.686 cells.
TEST(Heat, FirstDayOfTheThreeDayExample) {
    const auto power = hivePower({10000}, {2839.686}, celsius(6), kelvins(4), 1, 1, constants());
    EXPECT_NEAR(power.adults.value(), 4.9844, 5e-5);
    EXPECT_NEAR(power.brood.value(), 2.6290, 5e-5);
}

TEST(Heat, NoBeesNoPower) {
    EXPECT_EQ(hivePower({0}, {0}, celsius(-10), kelvins(4), 1, 1, constants()).brood.value(), 0);
    EXPECT_NEAR(powerAt(0, 0, -10), 0, 1e-100);
}

RC_GTEST_PROP(HeatProperty, ColderNeverLowersBroodHeat, ()) {
    const double brood = *rc::gen::inRange(0, 30000);
    const double t = *rc::gen::inRange(-40, 35);
    const auto at = [&](double c) {
        return hivePower({12000}, {brood}, celsius(c), kelvins(4), 1, 1, constants()).brood.value();
    };
    RC_ASSERT(at(t - 1) >= at(t));
}

RC_GTEST_PROP(HeatProperty, BetterShellNeverCostsMore, ()) {
    const double t = *rc::gen::inRange(-40, 35);
    const double brood = *rc::gen::inRange(0, 20000);
    const double bees = *rc::gen::inRange(1, 40000);
    RC_ASSERT(powerAt(bees, brood, t, 4, 0.6) <= powerAt(bees, brood, t, 4, 1.0) * (1 + 1e-12));
}

RC_GTEST_PROP(HeatProperty, MoreBeesNeverEatLessTogetherNorMoreEach, ()) {
    const double bees = *rc::gen::inRange(500, 40000);
    const double t = *rc::gen::inRange(-30, 30);
    RC_ASSERT(powerAt(bees * 1.1, 0, t) >= powerAt(bees, 0, t) * (1 - 1e-12));
    RC_ASSERT(powerAt(bees * 1.1, 0, t) / (bees * 1.1) <= powerAt(bees, 0, t) / bees * (1 + 1e-12));
}

} // namespace winterlarder::winter::heat_test
