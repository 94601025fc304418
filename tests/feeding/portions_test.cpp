// SPDX-License-Identifier: GPL-3.0-or-later
#include "feeding/portions.h"

#include "support/shipped.h"

#include <gtest/gtest.h>

namespace winterlarder::feeding::portions_test {

namespace {

const DecisionConstants& rules() { return shipped().decisions; }
constexpr double pound = 0.45359237;

double kg(Mass mass) { return mass.value(); }

} // namespace

TEST(Portions, AVisitIsCutInWholeStepsWithinItsLimits) {
    const auto visits = fondantVisits(rules(), false, kilograms(0.5));
    EXPECT_NEAR(kg(visits.most), 2.5, 1e-9);
    EXPECT_NEAR(kg(fondantFor(kilograms(0.1), visits)), 1, 1e-9) << "no less than is worth a visit";
    EXPECT_NEAR(kg(fondantFor(kilograms(1.2), visits)), 1.5, 1e-9) << "1.41 kg of fondant, up";
    EXPECT_NEAR(kg(fondantFor(kilograms(9), visits)), 2.5, 1e-9);
}

TEST(Portions, ANucleusGetsAPoundOrHalfAKilogramAtLeast) {
    const auto metric = fondantVisits(rules(), true, kilograms(0.5)),
               pounds = fondantVisits(rules(), true, poundSteps.fondant);
    EXPECT_NEAR(kg(fondantFor(kilograms(0.1), metric)), 0.5, 1e-9);
    EXPECT_NEAR(kg(fondantFor(kilograms(9), metric)), 1, 1e-9);
    EXPECT_NEAR(kg(fondantFor(kilograms(0.1), pounds)), pound, 1e-9);
    EXPECT_NEAR(kg(fondantFor(kilograms(9), pounds)), 2 * pound, 1e-9) << "no more than a kilogram";
}

TEST(Portions, ABoardHoldsWhatIsMissingUpToItsSize) {
    EXPECT_NEAR(kg(boardFor(kilograms(2.6), rules(), kilograms(0.5))), 3.5, 1e-9);
    EXPECT_NEAR(kg(boardFor(kilograms(20), rules(), kilograms(0.5))), 5, 1e-9);
}

TEST(Portions, SugarGoesUpToAStepAndDownToTheRoom) {
    EXPECT_NEAR(kg(sugarFor(kilograms(5), 1.1, std::nullopt, kilograms(1))), 5, 1e-9);
    EXPECT_NEAR(kg(sugarFor(kilograms(5), 1.1, kilograms(3.5), kilograms(1))), 3, 1e-9);
    EXPECT_NEAR(kg(sugarFor(kilograms(5), 1.1, kilograms(30), kilograms(1))), 5, 1e-9);
}

TEST(Portions, WhoFedTodayComesAgainOnTheNextUsualDay) {
    EXPECT_EQ(firstVisit({-100}, false, 3), SeasonDay{-100});
    EXPECT_EQ(firstVisit({-100}, true, 3), SeasonDay{-97});
    EXPECT_EQ(firstVisit({-100}, true, 0), SeasonDay{-99});
}

TEST(Portions, FondantIsWantedFromMidJanuaryInAutumnAndAFortnightAfterTheLast) {
    EXPECT_EQ(fondantFrom({-80}, std::nullopt, true, rules()), SeasonDay{14});
    EXPECT_EQ(fondantFrom({10}, std::nullopt, true, rules()), SeasonDay{24}) << "a late autumn of a mild place";
    EXPECT_EQ(fondantFrom({20}, std::nullopt, false, rules()), SeasonDay{34});
    EXPECT_EQ(fondantFrom({20}, SeasonDay{30}, false, rules()), SeasonDay{44});
}

TEST(Portions, InADearthTheyGoOnToTheQuietTime) {
    const PortionDays autumn{{-60}, {100}}, dearth{{-60}, {100}, true};
    EXPECT_EQ(autumn.last(), SeasonDay{-60});
    EXPECT_EQ(dearth.last(), SeasonDay{100});
}

} // namespace winterlarder::feeding::portions_test
