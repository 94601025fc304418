// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/phases.h"

#include "advice/colonies.h"
#include "advice/reserve.h"

namespace winterlarder::advice::phases_test {

namespace {

const DecisionConstants& rules() { return shipped().decisions; }
PhaseDays daysAt(const char* station) { return phaseDays(colony({.station = station}).season, rules()); }

} // namespace

TEST(Phases, EachIncludesItsLastDay) {
    const auto days = daysAt("gb-london");
    EXPECT_EQ(phaseOn(days, days.summer), Phase::Summer);
    EXPECT_EQ(phaseOn(days, days.summer + 1), Phase::Closing);
    EXPECT_EQ(phaseOn(days, days.closing), Phase::Closing);
    EXPECT_EQ(phaseOn(days, days.closing + 1), Phase::Late);
    EXPECT_EQ(phaseOn(days, days.late + 1), Phase::Winter);
    EXPECT_EQ(phaseOn(days, days.winter), Phase::Winter);
    EXPECT_EQ(phaseOn(days, days.winter + 1), Phase::Spring);
}

TEST(Phases, ClosingBeginsFourWeeksBeforeFeedingIsBestFinished) {
    const auto season = colony({.station = "gb-london"}).season;
    EXPECT_EQ(daysAt("gb-london").summer, season.feedAdvisedBy->day - 28);
}

TEST(Phases, WhereSyrupIsTakenUntilChristmasWinterStoresAreSettledSixWeeksAfterTheLastIncome) {
    auto season = colony({.station = "gb-london"}).season;
    season.syrupDeadline->day = season.lastIncome->day + 60;
    EXPECT_EQ(phaseDays(season, rules()).closing, season.lastIncome->day + 45);
    season.syrupDeadline->day = season.lastIncome->day + 30;
    EXPECT_EQ(phaseDays(season, rules()).closing, season.syrupDeadline->day);
}

TEST(Phases, ADearthClosesWithItsLastIncomeAndHasNoLateAutumn) {
    const auto season = colony({.station = "pt-lisbon"}).season;
    const auto days = daysAt("pt-lisbon");
    ASSERT_EQ(season.winterClass, climate::WinterClass::Dearth);
    EXPECT_EQ(days.closing, season.lastIncome->day);
    EXPECT_EQ(days.late, days.closing);
    EXPECT_TRUE(days.portionsInWinter);
    EXPECT_FALSE(daysAt("ca-halifax").portionsInWinter);
}

TEST(Phases, WinterStoresAreForTheEndOfClosingAndLaterForTheDayAsked) {
    const auto days = daysAt("ca-halifax");
    EXPECT_EQ(winterFrom(days, days.closing - 30), days.closing);
    EXPECT_EQ(winterFrom(days, days.closing + 9), days.closing + 9);
}

TEST(Phases, TheyFollowEachOtherAtEveryStation) {
    for (const auto& station : shipped().stations) {
        const auto season = colony({.station = station.id.c_str()}).season;
        if (!season.derivable()) continue;
        const auto days = phaseDays(season, rules());
        EXPECT_LT(days.summer, days.closing) << station.id;
        EXPECT_LE(days.closing, days.late) << station.id;
        EXPECT_LE(days.late, days.winter) << station.id;
        EXPECT_LT(days.winter, days.forage) << station.id;
    }
}

TEST(Reserve, GoesByTheHivesSizeAndTheKeepersWordGoesBefore) {
    auto q = colony({});
    EXPECT_EQ(autumnReserve(q), kilograms(4));
    q.boxes.push_back(q.boxes.front());
    EXPECT_EQ(autumnReserve(q), kilograms(5));
    q.boxUses = {{false, {}}, {true, {}}};
    EXPECT_EQ(autumnReserve(q), kilograms(4)) << "a super is no brood box";
    q.nucleus = true;
    EXPECT_EQ(autumnReserve(q), kilograms(2));
    q.answers.reserve = kilograms(6);
    EXPECT_EQ(autumnReserve(q), kilograms(6));
}

TEST(Reserve, ShallowBoxesAreNoBroodBoxes) {
    auto q = colony({});
    q.boxes.push_back(q.boxes.front());
    q.boxes.back().outline.height = q.boxes.front().outline.height * 0.6;
    EXPECT_EQ(broodBoxes(q), 1);
}

TEST(Reserve, FallsStraightFromBuildUpToAFortnightBeforeForage) {
    const auto q = colony({});
    const auto days = phaseDays(q.season, rules());
    EXPECT_EQ(reserveOn(q, days, days.winter - 60), kilograms(4));
    EXPECT_EQ(reserveOn(q, days, days.winter), kilograms(4));
    EXPECT_NEAR(reserveOn(q, days, days.quietFrom).value(), 1, 1e-9);
    EXPECT_NEAR(reserveOn(q, days, days.forage).value(), 1, 1e-9);
    const int half = (days.quietFrom - days.winter) / 2;
    EXPECT_NEAR(reserveOn(q, days, days.winter + half).value(), 2.5, 0.2);
}

TEST(ShortRisk, IsHalfWhereNobodyComesOrTheBeesAreLockedIn) {
    auto q = colony({});
    EXPECT_DOUBLE_EQ(shortRiskOf(q, 20), 0.2);
    EXPECT_DOUBLE_EQ(shortRiskOf(q, 60), 0.15);
    EXPECT_DOUBLE_EQ(shortRiskOf(q, 90), 0.1);
    q.answers.visitsInWinter = true;
    EXPECT_DOUBLE_EQ(shortRiskOf(q, 20), 0.2);
    q.answers.visitsInWinter = false;
    EXPECT_DOUBLE_EQ(shortRiskOf(q, 20), 0.1);
    q.answers.shortRisk = 0.25;
    EXPECT_DOUBLE_EQ(shortRiskOf(q, 90), 0.25) << "the keeper's own word goes before";
}

} // namespace winterlarder::advice::phases_test
