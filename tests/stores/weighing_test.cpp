// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/weighing.h"

#include "stores/sample_combs.h"
#include "support/shipped.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::stores::weighing_test {
namespace {

using namespace samples;

HiveLoad load(double tareSd = 0) {
    HiveLoad made;
    made.tare = {kilograms(22), kilograms(tareSd)};
    made.bees = {20000};
    made.beeMass = grams(0.115);
    made.broodCells = {4000};
    return made;
}
constexpr double notStores = 22 + 2.3 + 0.6 + 0.7; // tare, bees, 4,000 cells at 0.15 g, bee bread

Evidence weigh(WeighingKind kind, double reading, const HiveLoad& hive, bool longOne = false) {
    return evidenceOfWeighing(kind, kilograms(reading), hive, longOne, shipped().constants, day(9, 8));
}

TEST(Weighing, TakesOffAllThatIsNotStores) {
    const Evidence scale = weigh(WeighingKind::Scale, 50, load());
    EXPECT_EQ(scale.kind, EvidenceKind::Scale);
    EXPECT_EQ(scale.date, day(9, 8));
    EXPECT_NEAR(scale.typical.value(), 50 - notStores, 1e-9);
    EXPECT_NEAR(scale.sd(scale.typical).value(), 1.0, 1e-12);
}

TEST(Weighing, WaxAndBeeBreadAreTakenOffWhereKnown) {
    HiveLoad withoutCombs = load();
    withoutCombs.waxNotInTare = kilograms(1.9);
    withoutCombs.beeBread = kilograms(1.2);
    EXPECT_NEAR(weigh(WeighingKind::Scale, 50, withoutCombs).typical.value(), 50 - notStores - 1.9 - 0.5, 1e-9);
}

TEST(Weighing, AGuessedTareWidensTheSpread) {
    EXPECT_NEAR(weigh(WeighingKind::Scale, 50, load(2)).absoluteSd.value(), 2, 1e-12);
    EXPECT_NEAR(weigh(WeighingKind::Scale, 50, load(3)).absoluteSd.value(), 3, 1e-12);
}

// 0.3 kg of the error are new at each reading.
TEST(Weighing, AllButTheReadingLastsOfATaresError) {
    for (const auto kind : {WeighingKind::Scale, WeighingKind::TwoSidedLift, WeighingKind::OneSidedLift}) {
        EXPECT_NEAR(weigh(kind, 50, load(2)).tareSd.value(), std::sqrt(4 - 0.09), 1e-12);
        EXPECT_NEAR(weigh(kind, 50, load()).tareSd.value(), std::sqrt(1 - 0.09), 1e-12) << "the keeper weighed it";
    }
    EXPECT_EQ(evidenceOfHeft(0.9, kilograms(20), shipped().constants, day(9, 8)).tareSd, kilograms(0));
}

// Seven tenths of the variance of a lift of one side, and of a heft, are the same each time.
TEST(Weighing, LiftsSayWhatOfTheirErrorLasts) {
    const double lasts = std::sqrt(0.7);
    EXPECT_NEAR(weigh(WeighingKind::OneSidedLift, 50, load(2)).oneSideSd.value(), lasts * 0.11 * 50, 1e-12);
    EXPECT_NEAR(weigh(WeighingKind::OneSidedLift, 50, load(2), true).oneSideSd.value(), lasts * 0.05 * 50, 1e-12);
    for (const auto kind : {WeighingKind::Scale, WeighingKind::TwoSidedLift})
        EXPECT_EQ(weigh(kind, 50, load(2)).oneSideSd, kilograms(0)) << "a side for a side";
    EXPECT_NEAR(evidenceOfHeft(0.9, kilograms(20), shipped().constants, day(9, 8)).heftSd, lasts * 0.35, 1e-12);
}

TEST(Weighing, TwoSidesLiftedReadTwoPercentLow) {
    const Evidence lifted = weigh(WeighingKind::TwoSidedLift, 49, load());
    EXPECT_EQ(lifted.kind, EvidenceKind::TwoSidedLift);
    EXPECT_NEAR(lifted.typical.value(), 50 - notStores, 1e-9);
    EXPECT_NEAR(lifted.absoluteSd.value(), std::hypot(1, 0.7), 1e-12);
    EXPECT_NEAR(weigh(WeighingKind::TwoSidedLift, 49, load(2)).absoluteSd.value(), std::hypot(2, 0.7), 1e-12);
}

TEST(Weighing, OneSideDoubledIsRough) {
    const Evidence lifted = weigh(WeighingKind::OneSidedLift, 50, load());
    EXPECT_EQ(lifted.kind, EvidenceKind::OneSidedLift);
    EXPECT_NEAR(lifted.absoluteSd.value(), std::hypot(1, 0.11 * 50), 1e-12);
    EXPECT_NEAR(weigh(WeighingKind::OneSidedLift, 50, load(), true).absoluteSd.value(), std::hypot(1, 0.05 * 50),
                1e-12);
}

// Lever law: one side carries W (1/2 + e / L). With the mass 25 mm off the middle of 460 mm, doubling it is 2 e / L
// = 10.9 % out, shipped as 11 %.
TEST(Weighing, OneSideErrsAsTheLeverSays) {
    const Evidence lifted = weigh(WeighingKind::OneSidedLift, 100, load());
    EXPECT_NEAR(std::sqrt(std::pow(lifted.absoluteSd.value(), 2) - 1) / 100, 2 * 25.0 / 460, 0.005);
}

TEST(Weighing, MayComeOutBelowZero) { EXPECT_LT(weigh(WeighingKind::Scale, 25, load()).typical, kilograms(0)); }

TEST(BeeBread, Is95GramsADecimetreOfFace) {
    std::vector<Comb> combs{comb(deep(), 0, 0.5), comb(deep(), 1, 0.5)};
    EXPECT_FALSE(beeBreadOnCombs(combs)) << "not recorded";
    combs.front().pollen = 0.1;
    EXPECT_NEAR(beeBreadOnCombs(combs)->value(), 0.095 * 0.1 * 8.774 * 2, 1e-9);
    EXPECT_FALSE(beeBreadOnCombs({unseen(deep(), 0)}));
}

TEST(BroodMass, EightHundredCellsADecimetreOfComb) { EXPECT_NEAR(broodMass({800}).value(), 0.120, 1e-12); }

TEST(Heft, UsualStoresAreThreeFifthsOfTheCombs) {
    const double fullQuick = sealedPerArea * 0.78 / 0.84 * 8.774;
    EXPECT_NEAR(usualWinterStores({deep()}).value(), 0.6 * 10 * fullQuick, 1e-4);
    EXPECT_NEAR(usualWinterStores({deep(), deep()}).value(), 2 * 0.6 * 10 * fullQuick, 1e-4);
    EXPECT_NEAR(usualWinterStores({longHive()}).value(), 0.6 * 10 * fullQuick, 1e-4) << "of 24 combs ten count";
    EXPECT_NEAR(usualWinterStores({deep(16)}).value(), 0.6 * 10 * fullQuick, 1e-4);
    EXPECT_NEAR(usualWinterStores({deep(15)}).value(), 0.6 * 15 * fullQuick, 1e-4);
}

TEST(Heft, AWordIsAShareOfUsualStores) {
    EXPECT_EQ(heftFactor(HeftWord::Light), 0.5);
    EXPECT_EQ(heftFactor(HeftWord::Fair), 0.9);
    EXPECT_EQ(heftFactor(HeftWord::Heavy), 1.3);
    const Evidence heft = evidenceOfHeft(0.5, kilograms(14), shipped().constants, day(9, 8));
    EXPECT_EQ(heft.kind, EvidenceKind::Heft);
    EXPECT_NEAR(heft.typical.value(), 7, 1e-12);
    EXPECT_NEAR(heft.sd(heft.typical).value(), 0.35 * 7, 1e-12);
}

TEST(Heft, OfAShareIsTheNearestWord) {
    const auto& rules = shipped().decisions;
    for (const auto word : {HeftWord::Light, HeftWord::Fair, HeftWord::Heavy})
        EXPECT_EQ(heftNearest(heftShare(word, rules), rules), word);
    EXPECT_LT(heftShare(HeftWord::Light, rules), heftShare(HeftWord::Fair, rules));
    EXPECT_LT(heftShare(HeftWord::Fair, rules), heftShare(HeftWord::Heavy, rules));
    // Halfway by ratio: sqrt(0.45 x 0.8) = 0.6 and sqrt(0.8 x 1.25) = 1.
    EXPECT_EQ(heftNearest(0.599, rules), HeftWord::Light);
    EXPECT_EQ(heftNearest(0.601, rules), HeftWord::Fair);
    EXPECT_EQ(heftNearest(0.999, rules), HeftWord::Fair);
    EXPECT_EQ(heftNearest(1.001, rules), HeftWord::Heavy);
    EXPECT_EQ(heftNearest(0, rules), HeftWord::Light);
}

RC_GTEST_PROP(WeighingProperty, EveryKilogramOnTheScaleIsAKilogramOfStores, ()) {
    const double gross = *rc::gen::inRange(20, 100), more = *rc::gen::inRange(0, 100) / 10.0;
    const Mass difference =
        weigh(WeighingKind::Scale, gross + more, load()).typical - weigh(WeighingKind::Scale, gross, load()).typical;
    RC_ASSERT(std::abs(difference.value() - more) < 1e-9);
}

} // namespace
} // namespace winterlarder::stores::weighing_test
