// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/season.h"

#include "climate/shipped.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::climate::given_dates_test {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

constexpr SeasonDay early{-153};

// Oxford: last income -89, feed by -94, stop -72, restart 10, buildup 62, forage 108, syrup -72, refused -57.
SeasonDates oxford() { return deriveSeason(curveOf(oxfordMeanC, oxfordLatitude), shipped().constants); }
SeasonDates lisbon() { return deriveSeason(curveOf(shippedStation("pt-lisbon")), shipped().constants); }
SeasonDates tropics() {
    std::array<double, 12> means;
    means.fill(26);
    return deriveSeason(curveOf(means, 5), shipped().constants);
}

Outcome<SeasonDates> laid(const SeasonDates& derived, const GivenDates& given, SeasonDay asOf = early) {
    return applyGivenDates(derived, given, asOf, shipped().constants);
}

SeasonDates accepted(const SeasonDates& derived, const GivenDates& given, SeasonDay asOf = early) {
    const auto result = laid(derived, given, asOf);
    require(result.ok(), "{}", result.ok() ? std::string() : describe(result.problems().front()));
    return *result;
}

std::string refusal(const SeasonDates& derived, const GivenDates& given) {
    const auto result = laid(derived, given);
    if (result.ok()) return "accepted";
    EXPECT_EQ(result.problems().size(), 1u);
    return describe(result.problems().front());
}

struct Field {
    std::optional<SeasonDate> SeasonDates::*date;
    std::optional<SeasonDay> GivenDates::*given;
    double ModelConstants::*sd;
};

constexpr Field fields[] = {{&SeasonDates::lastIncome, &GivenDates::lastIncome, &ModelConstants::incomeEndSd},
                            {&SeasonDates::broodStop, &GivenDates::broodStop, &ModelConstants::broodStopSd},
                            {&SeasonDates::broodRestart, &GivenDates::broodRestart, &ModelConstants::broodRestartSd},
                            {&SeasonDates::buildup, &GivenDates::buildup, &ModelConstants::buildupSd},
                            {&SeasonDates::forage, &GivenDates::forage, &ModelConstants::forageSd},
                            {&SeasonDates::feedAdvisedBy, &GivenDates::feedAdvisedBy, &ModelConstants::feedBySd},
                            {&SeasonDates::syrupDeadline, &GivenDates::syrupDeadline, &ModelConstants::syrupSd},
                            {&SeasonDates::syrupRefused, &GivenDates::syrupRefused, &ModelConstants::syrupRefusedSd}};

TEST(GivenDates, NothingGivenChangesNothing) {
    for (const SeasonDates& derived : {oxford(), lisbon(), tropics()}) {
        const SeasonDates dates = accepted(derived, {}, SeasonDay{100});
        for (const Field& field : fields) EXPECT_EQ(dates.*field.date, derived.*field.date);
        EXPECT_EQ(dates.winterClass, derived.winterClass);
        EXPECT_EQ(dates.atEdgeOfRules, derived.atEdgeOfRules);
    }
}

TEST(GivenDates, EachReplacesItsOwnAndKeepsTheRulesSpread) {
    for (const Field& field : fields) {
        GivenDates given;
        given.*field.given = (oxford().*field.date)->day + 1;
        const SeasonDates dates = accepted(oxford(), given);
        EXPECT_EQ((dates.*field.date)->day, *(given.*field.given));
        EXPECT_EQ((dates.*field.date)->origin, DateOrigin::Case);
        EXPECT_DOUBLE_EQ((dates.*field.date)->sdDays, shipped().constants.*field.sd);
        for (const Field& other : fields)
            if (other.date != field.date) {
                EXPECT_NE((dates.*other.date)->origin, DateOrigin::Case);
            }
    }
}

TEST(GivenDates, AreExactOnAndBeforeTheDayOfAsking) {
    GivenDates given;
    given.broodStop = SeasonDay{-60};
    EXPECT_FALSE(accepted(oxford(), given, SeasonDay{-61}).broodStop->exact);
    EXPECT_TRUE(accepted(oxford(), given, SeasonDay{-60}).broodStop->exact);
    EXPECT_TRUE(accepted(oxford(), given, SeasonDay{-59}).broodStop->exact);
    EXPECT_FALSE(accepted(oxford(), given, SeasonDay{-59}).lastIncome->exact) << "derived dates are never exact";
}

TEST(GivenDates, RestartPushesTheSpring) {
    GivenDates given;
    given.broodRestart = SeasonDay{100};
    const SeasonDates dates = accepted(oxford(), given);
    EXPECT_EQ(dates.buildup->day.w, 107);
    EXPECT_EQ(dates.buildup->origin, DateOrigin::ClimateMoved);
    EXPECT_EQ(dates.forage->day.w, 114);
    EXPECT_EQ(dates.forage->origin, DateOrigin::ClimateMoved);
    EXPECT_EQ(dates.broodStop->origin, DateOrigin::Climate);
}

TEST(GivenDates, MovesNoFurtherThanNeeded) {
    GivenDates given;
    given.broodRestart = SeasonDay{60};
    const SeasonDates dates = accepted(oxford(), given);
    EXPECT_EQ(dates.buildup->day.w, 67);
    EXPECT_EQ(dates.forage->day.w, 108);
    EXPECT_EQ(dates.forage->origin, DateOrigin::Climate) << "it does not stand in the way";
}

TEST(GivenDates, EarlyForagePushesBuildupAndRestartBack) {
    GivenDates given;
    given.forage = SeasonDay{15};
    const SeasonDates dates = accepted(oxford(), given);
    EXPECT_EQ(dates.buildup->day.w, 8);
    EXPECT_EQ(dates.buildup->origin, DateOrigin::ClimateMoved);
    EXPECT_EQ(dates.broodRestart->day.w, 1);
    EXPECT_EQ(dates.broodRestart->origin, DateOrigin::ClimateMoved);
    EXPECT_EQ(dates.broodStop->origin, DateOrigin::Climate);
}

TEST(GivenDates, LateStopMovesTheRestart) {
    GivenDates given;
    given.broodStop = SeasonDay{20};
    const SeasonDates dates = accepted(oxford(), given);
    EXPECT_EQ(dates.broodRestart->day.w, 20);
    EXPECT_EQ(dates.broodRestart->origin, DateOrigin::ClimateMoved);
    EXPECT_EQ(dates.broodRestart->sdDays, shipped().constants.broodRestartSd);
}

TEST(GivenDates, EarlyRestartMovesTheStop) {
    GivenDates given;
    given.broodRestart = SeasonDay{-90};
    const SeasonDates dates = accepted(oxford(), given);
    EXPECT_EQ(dates.broodStop->day.w, -90);
    EXPECT_EQ(dates.broodStop->origin, DateOrigin::ClimateMoved);
}

TEST(GivenDates, BetweenTwoGivenDatesBothAreKept) {
    GivenDates given;
    given.broodRestart = SeasonDay{80};
    given.forage = SeasonDay{94};
    const SeasonDates dates = accepted(oxford(), given);
    EXPECT_EQ(dates.buildup->day.w, 87);
    EXPECT_EQ(dates.buildup->origin, DateOrigin::ClimateMoved);
}

TEST(GivenDates, SyrupDatesGiveWayToEachOther) {
    GivenDates given;
    given.syrupDeadline = SeasonDay{-120};
    EXPECT_EQ(accepted(oxford(), given).feedAdvisedBy->day.w, -120);
    EXPECT_EQ(accepted(oxford(), given).feedAdvisedBy->origin, DateOrigin::ClimateMoved);
    EXPECT_EQ(accepted(oxford(), given).syrupRefused->origin, DateOrigin::Climate);
    given = {};
    given.feedAdvisedBy = SeasonDay{-40};
    EXPECT_EQ(accepted(oxford(), given).syrupDeadline->day.w, -40);
    EXPECT_EQ(accepted(oxford(), given).syrupRefused->day.w, -40);
}

TEST(GivenDates, AMissingSyrupDateCountsAsLaterThanAnyDay) {
    ASSERT_FALSE(lisbon().syrupDeadline) << "syrup can be taken all winter there";
    GivenDates given;
    given.syrupRefused = SeasonDay{-30};
    const SeasonDates dates = accepted(lisbon(), given);
    ASSERT_TRUE(dates.syrupDeadline);
    EXPECT_EQ(dates.syrupDeadline->day.w, -30);
    EXPECT_EQ(dates.syrupDeadline->origin, DateOrigin::ClimateMoved);
    given = {};
    given.feedAdvisedBy = SeasonDay{0};
    EXPECT_FALSE(accepted(lisbon(), given).syrupDeadline) << "nothing asks for one";
}

TEST(GivenDates, LastIncomeIsBoundToNothing) {
    GivenDates given;
    given.lastIncome = SeasonDay{180};
    const SeasonDates dates = accepted(oxford(), given);
    for (const Field& field : fields)
        if (field.date != &SeasonDates::lastIncome) {
            EXPECT_EQ(dates.*field.date, oxford().*field.date);
        }
}

TEST(GivenDates, TwoInConflictAreAFaultThatNamesBoth) {
    GivenDates given;
    given.broodStop = SeasonDay{5};
    given.broodRestart = SeasonDay{4};
    EXPECT_EQ(refusal(oxford(), given), "brood_restart season day 4 is before brood_stop season day 5; "
                                        "brood_restart is not earlier than brood_stop");
    given = {};
    given.broodRestart = SeasonDay{10};
    given.buildup = SeasonDay{16};
    EXPECT_EQ(refusal(oxford(), given), "buildup season day 16 is less than 7 days after brood_restart season day 10; "
                                        "buildup is at least 7 days after brood_restart");
    given = {};
    given.buildup = SeasonDay{60};
    given.forage = SeasonDay{66};
    EXPECT_THAT(refusal(oxford(), given), StartsWith("forage season day 66 is less than 7 days after buildup"));
    given = {};
    given.broodRestart = SeasonDay{50};
    given.forage = SeasonDay{63};
    EXPECT_THAT(refusal(oxford(), given), StartsWith("forage season day 63 is less than 14 days after brood_restart"));
    given = {};
    given.broodStop = SeasonDay{50};
    given.forage = SeasonDay{63};
    EXPECT_THAT(refusal(oxford(), given), StartsWith("forage season day 63 is less than 14 days after brood_stop"));
    given = {};
    given.feedAdvisedBy = SeasonDay{-50};
    given.syrupDeadline = SeasonDay{-51};
    EXPECT_THAT(refusal(oxford(), given), StartsWith("syrup_deadline season day -51 is before feed_advised_by"));
    given = {};
    given.syrupDeadline = SeasonDay{-50};
    given.syrupRefused = SeasonDay{-51};
    EXPECT_THAT(refusal(oxford(), given), StartsWith("syrup_refused season day -51 is before syrup_deadline"));
    given = {};
    given.feedAdvisedBy = SeasonDay{-50};
    given.syrupRefused = SeasonDay{-51};
    EXPECT_THAT(refusal(oxford(), given), StartsWith("syrup_refused season day -51 is before feed_advised_by"));
}

TEST(GivenDates, OnTheEdgeOfTheOrderIsAllowed) {
    GivenDates given;
    given.broodStop = given.broodRestart = SeasonDay{10};
    given.buildup = SeasonDay{17};
    given.forage = SeasonDay{24};
    given.feedAdvisedBy = given.syrupDeadline = given.syrupRefused = SeasonDay{-60};
    const SeasonDates dates = accepted(oxford(), given);
    for (const Field& field : fields)
        if (given.*field.given) {
            EXPECT_EQ((dates.*field.date)->day, *(given.*field.given));
        }
}

TEST(GivenDates, EveryConflictIsListed) {
    GivenDates given;
    given.broodRestart = SeasonDay{10};
    given.buildup = SeasonDay{9};
    given.forage = SeasonDay{8};
    given.syrupDeadline = SeasonDay{-50};
    given.syrupRefused = SeasonDay{-51};
    const auto result = laid(oxford(), given);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().size(), 3u);
}

TEST(GivenDates, NamesCalendarDatesWhereTheWinterIsTold) {
    GivenDates given;
    given.broodStop = SeasonDay{5};
    given.broodRestart = SeasonDay{4};
    const auto result = applyGivenDates(oxford(), given, early, shipped().constants, Winter(Hemisphere::North, 2026));
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().detail, "brood_restart 2027-01-05 is before brood_stop 2027-01-06");
}

TEST(GivenDates, OutsideTheWinterIsAFault) {
    for (const Field& field : fields)
        for (const int w : {-154, 181, 211}) {
            GivenDates given;
            given.*field.given = SeasonDay{w};
            EXPECT_THAT(refusal(oxford(), given), HasSubstr("is outside the winter asked about")) << w;
        }
    GivenDates given;
    given.forage = SeasonDay{200};
    const auto result = applyGivenDates(oxford(), given, early, shipped().constants, Winter(Hemisphere::North, 2026));
    ASSERT_FALSE(result);
    EXPECT_EQ(describe(result.problems().front()), "forage 2027-07-20 is outside the winter asked about; its dates lie "
                                                   "between 2026-08-01 and 2027-06-30");
}

TEST(GivenDates, ADerivedDateIsNotPushedOutOfTheWinter) {
    GivenDates given;
    given.forage = SeasonDay{-150};
    const auto result = laid(oxford(), given);
    ASSERT_FALSE(result);
    EXPECT_THAT(result.problems().front().detail, HasSubstr("forage season day -150 leaves no room for brood_stop"));
    given = {};
    given.broodRestart = SeasonDay{170};
    EXPECT_THAT(refusal(oxford(), given), StartsWith("brood_restart season day 170 leaves no room for forage"));
}

TEST(GivenDates, BothBroodDatesMakeLayingStop) {
    ASSERT_EQ(lisbon().winterClass, WinterClass::Dearth);
    GivenDates given;
    given.broodStop = SeasonDay{-40};
    given.broodRestart = SeasonDay{0};
    const SeasonDates dates = accepted(lisbon(), given);
    EXPECT_TRUE(dates.broodless());
    EXPECT_EQ(dates.broodStop->day.w, -40);
    EXPECT_DOUBLE_EQ(dates.broodStop->sdDays, shipped().constants.broodStopSd);
    EXPECT_DOUBLE_EQ(dates.broodRestart->sdDays, shipped().constants.broodRestartSd);
    EXPECT_EQ(dates.winterClass, WinterClass::Flying);
    EXPECT_EQ(dates.forage, lisbon().forage);
}

TEST(GivenDates, OneBroodDateAloneWhereLayingNeverStopsIsAFault) {
    GivenDates given;
    given.broodStop = SeasonDay{-40};
    EXPECT_EQ(refusal(lisbon(), given),
              "brood_stop season day -40 is given alone where laying never stops by the climate; "
              "give brood_restart as well, or neither");
    given = {};
    given.broodRestart = SeasonDay{0};
    EXPECT_THAT(refusal(lisbon(), given), StartsWith("brood_restart season day 0 is given alone"));
    EXPECT_THAT(refusal(tropics(), given), StartsWith("brood_restart season day 0 is given alone"));
}

TEST(GivenDates, OneBroodDateAloneElsewhereIsNone) {
    GivenDates given;
    given.broodStop = SeasonDay{-40};
    EXPECT_TRUE(laid(oxford(), given));
}

TEST(GivenDates, WhereLayingNeverStopsTheSolsticeStandsForTheRestart) {
    GivenDates given;
    given.buildup = SeasonDay{-4};
    EXPECT_EQ(accepted(lisbon(), given).buildup->day.w, -4);
    given.buildup = SeasonDay{-5};
    EXPECT_EQ(refusal(lisbon(), given),
              "buildup season day -5 is too early where laying never stops; it is on or after season day -4");
    given = {};
    given.forage = SeasonDay{2};
    EXPECT_THAT(refusal(lisbon(), given), StartsWith("forage season day 2 is too early where laying never stops"));
    given.forage = SeasonDay{3};
    EXPECT_EQ(accepted(lisbon(), given).buildup->day.w, -4);
}

TEST(GivenDates, MakeAWinterWhereNoneCanBeDerived) {
    GivenDates given;
    given.buildup = SeasonDay{20};
    given.forage = SeasonDay{60};
    const SeasonDates dates = accepted(tropics(), given);
    EXPECT_TRUE(dates.derivable());
    EXPECT_EQ(dates.winterClass, WinterClass::Dearth);
    given.broodStop = SeasonDay{-40};
    given.broodRestart = SeasonDay{0};
    EXPECT_EQ(accepted(tropics(), given).winterClass, WinterClass::Flying);
    given = {};
    given.forage = SeasonDay{60};
    EXPECT_EQ(accepted(tropics(), given).winterClass, WinterClass::NotDerivable) << "buildup is still unknown";
}

TEST(GivenDates, AGivenDateIsNotAtTheEdgeOfTheRules) {
    const SeasonDates lerwick = deriveSeason(curveOf(shippedStation("gb-lerwick")), shipped().constants);
    ASSERT_TRUE(lerwick.atEdgeOfRules);
    GivenDates given;
    given.lastIncome = SeasonDay{-140};
    EXPECT_FALSE(accepted(lerwick, given).atEdgeOfRules);
}

// Mostly near the derived date, so that many sets are accepted; sometimes anywhere.
std::optional<SeasonDay> anyGiven(const std::optional<SeasonDate>& derived) {
    const int kind = *rc::gen::inRange(0, 12);
    if (kind < 8) return std::nullopt;
    if (kind == 8 || !derived) return SeasonDay{*rc::gen::inRange(-153, 181)};
    return derived->day + *rc::gen::inRange(-40, 41);
}

// Whatever is given: a fault with words, or dates in order among which every given one stands as it was given.
RC_GTEST_PROP(GivenDatesProperty, OrderHoldsAndGivenDatesStand, ()) {
    const SeasonDates derived = *rc::gen::element(oxford(), lisbon());
    GivenDates given;
    for (const Field& field : fields) given.*field.given = anyGiven(derived.*field.date);
    const auto result = laid(derived, given, SeasonDay{*rc::gen::inRange(-153, 181)});
    RC_CLASSIFY(result.ok(), "accepted");
    if (!result.ok()) {
        RC_ASSERT(!result.problems().front().detail.empty());
        return;
    }
    const SeasonDates& dates = *result;
    for (const Field& field : fields) {
        if (given.*field.given) RC_ASSERT((dates.*field.date)->day == *(given.*field.given));
        if (dates.*field.date)
            RC_ASSERT((dates.*field.date)->day >= early && (dates.*field.date)->day <= lastSimulatedDay);
        if (dates.*field.date && (dates.*field.date)->origin == DateOrigin::Climate)
            RC_ASSERT((dates.*field.date)->day == (derived.*field.date)->day);
    }
    if (dates.broodless()) RC_ASSERT(dates.broodStop->day <= dates.broodRestart->day);
    const SeasonDay restart = dates.broodless() ? dates.broodRestart->day : solstice;
    RC_ASSERT(dates.buildup->day - restart >= 7);
    RC_ASSERT(dates.forage->day - dates.buildup->day >= 7);
    if (dates.syrupDeadline) RC_ASSERT(dates.feedAdvisedBy->day <= dates.syrupDeadline->day);
    if (dates.syrupRefused) RC_ASSERT(dates.syrupDeadline->day <= dates.syrupRefused->day);
}

// One given date alone that leaves room on both sides is never a fault in a broodless climate.
RC_GTEST_PROP(GivenDatesProperty, OneDateAloneIsAccepted, ()) {
    GivenDates given;
    const Field& field = fields[static_cast<std::size_t>(*rc::gen::inRange(0, 8))];
    given.*field.given = SeasonDay{*rc::gen::inRange(-139, 167)};
    RC_ASSERT(laid(oxford(), given).ok());
}

} // namespace
} // namespace winterlarder::climate::given_dates_test
