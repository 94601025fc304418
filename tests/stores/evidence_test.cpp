// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/evidence.h"

#include "stores/sample_combs.h"
#include "support/require.h"
#include "support/shipped.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::stores::evidence_test {
namespace {

using namespace samples;

CombSpreads spreads() { return combSpreads(shipped().constants); }

constexpr double deepArea = 8.774; // dm2

TEST(StoresOfCombs, CountsCappedWholeAndOpenByItsFactor) {
    const auto stores = storesOfCombs({comb(deep(), 0, 0.7, 0.1)}, 0.65);
    ASSERT_TRUE(stores);
    EXPECT_NEAR(stores->front().capped.value(), 0.7 * sealedPerArea * deepArea, 1e-4);
    EXPECT_NEAR(stores->front().open.value(), 0.65 * 0.1 * sealedPerArea * deepArea, 1e-4);
}

TEST(StoresOfCombs, CombsOfSupersAreFilledBetter) {
    Comb inSuper = comb(deep(), 0, 1);
    inSuper.inSuper = true;
    const auto stores = storesOfCombs({comb(deep(), 0, 1), inSuper}, 0.65);
    EXPECT_NEAR((*stores)[1].capped / (*stores)[0].capped, 0.88 / 0.84, 1e-9);
}

TEST(StoresOfCombs, HalfBuiltCombsHoldHalf) {
    Comb half = comb(deep(), 0, 1);
    half.built = 0.5;
    const auto stores = storesOfCombs({comb(deep(), 0, 1), half}, 0.65);
    EXPECT_NEAR((*stores)[1].capped.value(), (*stores)[0].capped.value() / 2, 1e-12);
}

TEST(CombSpread, GrowsWithFacesNotSeen) {
    Comb oneFace = comb(deep(), 1, 0.5);
    oneFace.facesSeen = 1;
    EXPECT_NEAR(relativeSdOf(comb(deep(), 0, 0.5), spreads()), 0.15, 1e-12);
    EXPECT_NEAR(relativeSdOf(oneFace, spreads()), 0.20, 1e-12);
    EXPECT_NEAR(relativeSdOf(unseen(deep(), 2), spreads()), 0.35, 1e-12);
}

// Tracing betters the area of the faces seen and nothing else: not the honey, not the doubt of a face that was not seen (as much
// variance for a traced comb as for a judged one; spreads are rounded to half a percentage point), not what was not seen at all.
TEST(CombSpread, AreasFromAPhotographAreSurer) {
    std::vector<Comb> combs = {comb(deep(), 0, 0.5), comb(deep(), 1, 0.5), unseen(deep(), 2)};
    combs[1].facesSeen = 1;
    const auto sd = [](const Comb& seen, bool traced) {
        Comb one = seen;
        one.measured = traced;
        return relativeSdOf(one, spreads());
    };
    for (const std::size_t seen : {0u, 1u}) EXPECT_LT(sd(combs[seen], true), sd(combs[seen], false)) << seen;
    const auto ofTheOtherFace = [&](bool traced) {
        return sd(combs[1], traced) * sd(combs[1], traced) - sd(combs[0], traced) * sd(combs[0], traced);
    };
    EXPECT_GT(ofTheOtherFace(true), 0.01) << "a tenth of the stores at least";
    EXPECT_NEAR(ofTheOtherFace(true), ofTheOtherFace(false), 2 * 0.2 * 0.005);
    EXPECT_EQ(sd(combs[2], true), sd(combs[2], false)) << "what was not seen was not measured";
}

TEST(CombSpread, OfAWindowIsThatOfNotLooking) {
    Comb window = comb(deep(), 1, 1);
    window.facesSeen = 1;
    window.throughWindow = window.measured = true;
    EXPECT_NEAR(relativeSdOf(window, spreads()), 0.35, 1e-12);
    const auto stores = storesOfCombs({comb(deep(), 0, 0.5), window}, 0.65);
    EXPECT_NEAR((*stores)[1].capped / (*stores)[0].capped, 2, 1e-9) << "its shares are its own";
}

//! Area and fill of shared/model/constants.csv in quadrature, to half a percentage point.
TEST(CombSpread, IsAreaAndFillInQuadrature) {
    const auto& constants = shipped().constants;
    Comb judged = comb(deep(), 0, 0.5), traced = judged;
    traced.measured = true;
    EXPECT_NEAR(relativeSdOf(judged, spreads()), std::hypot(constants.combAreaSd, constants.combFillSd), 0.0025);
    EXPECT_NEAR(relativeSdOf(traced, spreads()), std::hypot(constants.photographAreaSd, constants.combFillSd), 0.0025);
    judged.facesSeen = 1;
    EXPECT_NEAR(relativeSdOf(judged, spreads()),
                std::hypot(constants.combAreaSd, constants.combFillSd, constants.unseenFaceSd), 0.0025);
    auto surer = constants;
    surer.combFillSd = 0.05;
    EXPECT_NEAR(relativeSdOf(traced, combSpreads(surer)), 0.06, 1e-12); // hypot(0.03, 0.05) = 0.058
}

TEST(CombSpread, BandOfOneCombIsItsShareAndTheRounding) {
    // A deviate of 1.2816 leaves a tenth above it: 1.2816 x hypot(0.15 x 2, 0.1).
    const auto band = spreadOf({kilograms(1.5), kilograms(0.5)}, comb(deep(), 0, 0.5), spreads());
    EXPECT_EQ(band.typical, kilograms(2));
    EXPECT_NEAR(band.high.value() - 2, 1.2816 * std::sqrt(0.1), 1e-12);
    EXPECT_NEAR(2 - band.low.value(), 1.2816 * std::sqrt(0.1), 1e-12);
    EXPECT_EQ(spreadOf({kilograms(0), kilograms(0.05)}, comb(deep(), 0, 0.5), spreads()).low, kilograms(0))
        << "no comb holds less than nothing";
}

TEST(StoresOfCombs, UnseenCombsTakeTheMeanOfTheirBox) {
    Comb above = comb(deep(), 0, 1);
    above.box = 1;
    const auto stores = storesOfCombs({comb(deep(), 0, 0.2), comb(deep(), 1, 0.6), unseen(deep(), 2), above}, 0.65);
    EXPECT_NEAR((*stores)[2].capped / (*stores)[0].capped, 2, 1e-9); // mean of 0.2 and 0.6
}

TEST(StoresOfCombs, UnseenCombsOfAnUnseenBoxTakeTheMeanOfAll) {
    const auto stores = storesOfCombs({comb(deep(), 0, 0.2), comb(deep(), 1, 0.6), unseen(deep(), 0, 1)}, 0.65);
    EXPECT_NEAR((*stores)[2].capped / (*stores)[0].capped, 2, 1e-9);
}

TEST(StoresOfCombs, NothingSeenIsNothingKnown) {
    EXPECT_FALSE(storesOfCombs({unseen(deep(), 0), unseen(deep(), 1)}, 0.65));
    EXPECT_FALSE(storesOfCombs({}, 0.65));
    EXPECT_FALSE(evidenceOfVisit({unseen(deep(), 0)}, 0.65, spreads(), day(9, 10)));
}

TEST(OpenFactor, IsLowWhileFreshlyFilled) {
    EXPECT_EQ(openFactor(true), 0.25);
    EXPECT_EQ(openFactor(false), 0.65);
}

TEST(Visit, ErrsTheSameWayOnAllCombsAndRoundsOnEach) {
    std::vector<Comb> combs;
    for (int place = 0; place < 9; ++place) combs.push_back(comb(deep(), place, 0.5));
    const auto visit = evidenceOfVisit(combs, 0.65, spreads(), day(9, 10));
    ASSERT_TRUE(visit);
    EXPECT_EQ(visit->kind, EvidenceKind::Combs);
    EXPECT_EQ(visit->date, day(9, 10));
    EXPECT_NEAR(visit->typical.value(), 9 * 0.5 * sealedPerArea * deepArea, 1e-3);
    EXPECT_NEAR(visit->relativeSd, 0.15, 1e-12);
    EXPECT_NEAR(visit->absoluteSd.value(), 0.3, 1e-12); // 0.1 kg x sqrt(9)
    EXPECT_NEAR(visit->sd(visit->typical).value(), std::hypot(0.15 * visit->typical.value(), 0.3), 1e-9);
}

TEST(Visit, SpreadIsTheSumOverCombs) {
    Comb oneFace = comb(deep(), 1, 1);
    oneFace.facesSeen = 1;
    const auto visit = evidenceOfVisit({comb(deep(), 0, 0.5), oneFace}, 0.65, spreads(), day(9, 10));
    EXPECT_NEAR(visit->relativeSd, (0.5 * 0.15 + 1 * 0.20) / 1.5, 1e-9);
}

TEST(Visit, EmptyCombsStillLeaveDoubt) {
    const auto visit = evidenceOfVisit({comb(deep(), 0, 0), comb(deep(), 1, 0)}, 0.65, spreads(), day(9, 10));
    EXPECT_EQ(visit->typical, kilograms(0));
    EXPECT_NEAR(visit->relativeSd, 0.15, 1e-12);
    EXPECT_NEAR(visit->sd(kilograms(0)).value(), 0.1 * std::sqrt(2.0), 1e-12);
}

TEST(QuickCountEvidence, HalfIsHalfACombAndOpenIsDiscounted) {
    const Mass full = quickFullComb(deep());
    EXPECT_NEAR(full.value(), sealedPerArea * 0.78 / 0.84 * deepArea, 1e-4);
    const Evidence count = evidenceOfCount({6, 2, 0.8}, full, 0.65, spreads(), day(9, 10));
    EXPECT_EQ(count.kind, EvidenceKind::QuickCount);
    EXPECT_NEAR(count.typical.value(), full.value() * 7 * (0.8 + 0.2 * 0.65), 1e-9);
    EXPECT_NEAR(count.sd(count.typical).value(), 0.2 * count.typical.value(), 1e-12);
}

TEST(QuickCountEvidence, NoCombCountedIsNotCertainty) {
    const Evidence count = evidenceOfCount({0, 0, 1}, kilograms(2.4), 0.65, spreads(), day(9, 10));
    EXPECT_EQ(count.typical, kilograms(0));
    EXPECT_NEAR(count.sd(count.typical).value(), 0.6, 1e-12);
}

TEST(QuickCountEvidence, ImpossibleCountsAreRefused) {
    EXPECT_THROW(evidenceOfCount({-1, 0, 1}, kilograms(2), 0.65, spreads(), day(9, 10)), ContractViolation);
    EXPECT_THROW(evidenceOfCount({1, 0, 1.2}, kilograms(2), 0.65, spreads(), day(9, 10)), ContractViolation);
}

RC_GTEST_PROP(CombProperty, ZonesSumToOneSeenOrNot, ()) {
    const auto filled = withUnseenFilled(anyCombs());
    RC_ASSERT(filled.has_value());
    for (const Comb& comb : *filled) {
        RC_ASSERT(std::abs(comb.capped + comb.open + comb.brood + comb.pollen + comb.empty() - 1) < 1e-12);
        RC_ASSERT(comb.empty() > -1e-12);
    }
}

RC_GTEST_PROP(CombProperty, FillingInChangesOnlyUnseenCombs, ()) {
    const auto combs = anyCombs();
    const auto filled = withUnseenFilled(combs);
    for (std::size_t i = 0; i < combs.size(); ++i) {
        RC_ASSERT((*filled)[i].facesSeen == combs[i].facesSeen);
        if (combs[i].lookedAt()) RC_ASSERT((*filled)[i].capped == combs[i].capped);
    }
}

RC_GTEST_PROP(CombProperty, MoreCappedNeverLowersStores, ()) {
    auto combs = anyCombs();
    const double factor = *rc::gen::inRange(0, 101) / 100.0;
    const auto before = evidenceOfVisit(combs, factor, spreads(), day(9, 10));
    const auto which = *rc::gen::inRange<std::size_t>(0, combs.size());
    const double share = *rc::gen::inRange(0, 101) / 100.0;
    const double sealed = share * combs[which].open, filled = share * std::max(0.0, combs[which].empty());
    combs[which].open -= sealed;
    combs[which].capped += sealed + filled;
    RC_ASSERT(evidenceOfVisit(combs, factor, spreads(), day(9, 10))->typical >= before->typical - kilograms(1e-9));
}

} // namespace
} // namespace winterlarder::stores::evidence_test
