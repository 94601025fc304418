// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/colonies.h"
#include "advice/remarks/remarks.h"

namespace winterlarder::advice::refusals_test {

namespace {

std::vector<RefusalKind> refusals(const ColonyQuestion& q) {
    const auto advice = adviceFor(q);
    if (!advice.refusals.empty()) {
        EXPECT_EQ(advice.verdict, Verdict::CannotSay);
        EXPECT_FALSE(advice.need);
        EXPECT_FALSE(advice.feed);
        EXPECT_FALSE(advice.harvest);
        EXPECT_TRUE(says(advice.reasons, idOf(advice.refusals.front())));
    }
    return advice.refusals;
}

using Kinds = std::vector<RefusalKind>;

} // namespace

TEST(Refusals, NothingStandsInTheWayOfAnOrdinaryQuestion) { EXPECT_EQ(refusals(colony({})), Kinds{}); }

TEST(Refusals, NoBeesKnown) {
    auto q = colony({});
    q.bees.reset();
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::BeesUnknown});
    EXPECT_TRUE(adviceFor(q).estimate); // what the combs say stands
}

TEST(Refusals, AWeightWithoutBeesTellsARangeAndNoAmount) {
    auto q = weighedAt("2026-09-20", 50);
    q.bees.reset();
    q.tare = kilograms(22), q.tareSd = kilograms(1);
    q.usual = UsualHere{kilograms(20), kilograms(24), "here", "Here", 'B'};
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::BeesUnknown});
    const auto advice = adviceFor(q);
    EXPECT_FALSE(advice.estimate);
    const auto said = std::find_if(advice.reasons.begin(), advice.reasons.end(),
                                   [](const Remark& reason) { return reason.id == "weight-uncounted"; });
    ASSERT_NE(said, advice.reasons.end());
    // 50 - 22 - 0.7 of bee bread; 6,000 bees, or 25,000 with 15,000 cells of brood (0.15 g each); 1 kg of the empty hive's doubt
    const double bee = constants().beeMass;
    EXPECT_NEAR(std::get<Mass>(said->details.at("high")).value(), 27.3 - 6000 * bee + 1, 1e-9);
    EXPECT_NEAR(std::get<Mass>(said->details.at("low")).value(), 27.3 - 25000 * bee - 2.25 - 1, 1e-9);
    EXPECT_TRUE(says(advice.reasons, "usual-here"));
    q.weighings.front().heft = stores::HeftWord::Fair;
    EXPECT_FALSE(says(adviceFor(q).reasons, "weight-uncounted")) << "a word is no weight";
}

TEST(Refusals, NoColony) {
    auto q = colony({});
    q.bees = BeeCount{0};
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::NoColony});
}

TEST(Refusals, NoStoresKnown) {
    auto q = colony({});
    q.combs.clear();
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::StoresUnknown});
    q = colony({});
    for (auto& comb : q.combs) comb.facesSeen = 0;
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::StoresUnknown});
    EXPECT_FALSE(adviceFor(q).estimate);
}

TEST(Refusals, OnlyCombsInASuperForPeopleWereSeen) {
    auto q = colony({});
    for (auto& comb : q.combs) comb.inSuper = true;
    EXPECT_EQ(refusals(q), Kinds{}) << "not said: they count";
    q.answers.supersFor = SupersFor::People;
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::StoresUnknown}) << "nothing tells what the bees have";
}

TEST(Refusals, CombsOfASuperTellNothingOfANestNobodyLookedAt) {
    auto q = colony({.combs = 20});
    for (auto& comb : q.combs) comb.inSuper = comb.box == 1, comb.facesSeen = comb.inSuper ? 2 : 0;
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::StoresUnknown});
    q.combs.front().facesSeen = 1;
    EXPECT_EQ(refusals(q), Kinds{}) << "one comb of the nest stands for the rest of it";
}

TEST(Refusals, AfterForage) { EXPECT_EQ(refusals(colony({.asOf = "2027-06-10"})), Kinds{RefusalKind::AfterForage}); }

TEST(Refusals, OutOfSeason) {
    EXPECT_EQ(refusals(colony({.asOf = "2027-07-10"})), (Kinds{RefusalKind::OutOfSeason, RefusalKind::AfterForage}));
}

TEST(Refusals, NoSeasonToBeDerived) {
    auto q = colony({});
    q.season.forage.reset();
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::SeasonNotDerivable});
}

TEST(Refusals, FarFromEveryStation) {
    auto q = colony({});
    q.refusals.push_back(RefusalKind::FarFromStations);
    q.site.reset();
    EXPECT_EQ(refusals(q), Kinds{RefusalKind::FarFromStations});
}

TEST(Refusals, AllAreNamed) {
    auto q = colony({});
    q.bees.reset();
    q.combs.clear();
    EXPECT_EQ(refusals(q), (Kinds{RefusalKind::BeesUnknown, RefusalKind::StoresUnknown}));
}

// Light in winter, and nobody counts bees in the cold ---------------------------------------------------------------------------

namespace {

ColonyQuestion liftedUnseen(const char* asOf, stores::HeftWord word, int daysAgo = 7) {
    auto q = colony({.asOf = asOf});
    q.bees.reset();
    q.combs.clear();
    WeighedHive lift{.day = q.asOf - daysAgo, .date = q.winter.date(q.asOf - daysAgo)};
    lift.heft = word;
    q.weighings.push_back(lift);
    return q;
}

} // namespace

TEST(LightWithoutBees, InWinterAndSpringOnePortionAndAWeighing) {
    for (const char* day : {"2027-01-20", "2027-04-25"}) {
        const auto advice = adviceFor(liftedUnseen(day, stores::HeftWord::Light));
        EXPECT_EQ(advice.verdict, Verdict::Feed) << day;
        ASSERT_TRUE(advice.feed) << day;
        EXPECT_NEAR(advice.feed->fondant.value(), 2.5, 1e-9);
        ASSERT_EQ(advice.feed->visits.size(), 1U);
        EXPECT_EQ(advice.feed->visits.front().date, *Date::parse(day));
        ASSERT_TRUE(advice.nextLook);
        EXPECT_EQ(advice.nextLook->what, NextLookAt::Weigh);
        EXPECT_FALSE(advice.estimate || advice.need || advice.missing || advice.target || advice.bees)
            << "no number where nothing is known";
        EXPECT_TRUE(says(advice.reasons, "light-bees-unknown"));
        EXPECT_FALSE(says(advice.reasons, "bees-unknown")) << "nobody counts them in the cold";
    }
    auto small = liftedUnseen("2027-01-20", stores::HeftWord::Light);
    small.nucleus = true;
    EXPECT_NEAR(adviceFor(small).feed->fondant.value(), 1, 1e-9);
}

TEST(LightWithoutBees, NothingElseIsAnsweredSo) {
    const auto refused = [](const ColonyQuestion& q) { return adviceFor(q).verdict == Verdict::CannotSay; };
    EXPECT_TRUE(refused(liftedUnseen("2027-01-20", stores::HeftWord::Fair)));
    EXPECT_TRUE(refused(liftedUnseen("2026-09-20", stores::HeftWord::Light))) << "syrup wants an amount";
    EXPECT_TRUE(refused(liftedUnseen("2027-01-20", stores::HeftWord::Light, 20))) << "too long ago";
    auto q = liftedUnseen("2027-01-20", stores::HeftWord::Light);
    q.trouble = true;
    EXPECT_TRUE(refused(q));
    q = liftedUnseen("2027-01-20", stores::HeftWord::Light);
    q.feeds.push_back({q.asOf - 2, kilograms(2), false, q.winter.date(q.asOf - 2)});
    EXPECT_TRUE(refused(q)) << "it had its portion";
    EXPECT_FALSE(adviceFor(q).estimate) << "a lift alone stands for no number";
}

} // namespace winterlarder::advice::refusals_test
