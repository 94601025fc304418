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

} // namespace winterlarder::advice::refusals_test
