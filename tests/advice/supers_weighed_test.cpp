// SPDX-License-Identifier: GPL-3.0-or-later
// What a lift, a scale and a harvest say of the stores where a super is kept for people.
#include "advice/looking/evidence_first.h"
#include "advice/looking/evidence_today.h"

#include "advice/colonies.h"

#include <gmock/gmock.h>

namespace winterlarder::advice::supers_weighed_test {

namespace {

//! A thin brood box under a well filled super, for people.
ColonyQuestion underSuper() {
    auto q = colony({.asOf = "2026-09-05", .capped = 0.25, .combs = 20});
    q.boxUses = {{false, {}}, {true, {}}};
    for (std::size_t i = 10; i < 20; ++i) q.combs[i].inSuper = true, q.combs[i].capped = 0.8;
    q.answers.supersFor = SupersFor::People;
    return q;
}

void hefted(ColonyQuestion& q, stores::HeftWord word) {
    q.weighings.push_back({.day = q.asOf, .date = q.winter.date(q.asOf), .heft = word});
}

void onScale(ColonyQuestion& q, Mass reading, int daysBefore) {
    const SeasonDay day = q.asOf - daysBefore;
    q.weighings.push_back({.day = day, .date = q.winter.date(day), .reading = reading});
}

Mass said(const Advice& advice, stores::EvidenceKind kind) {
    for (const auto& share : advice.estimate->shares)
        if (share.evidence.kind == kind) return share.evidence.typical;
    throw std::runtime_error("nothing of that kind was seen");
}

} // namespace

TEST(SupersWeighed, ALiftFeelsTheSuperToo) {
    auto q = underSuper();
    const Mass super = honeyInSupers(q);
    hefted(q, stores::HeftWord::Heavy);
    const auto apart = adviceFor(q);
    q.answers.supersFor = SupersFor::Bees;
    const auto counted = adviceFor(q);
    EXPECT_NEAR((said(counted, stores::EvidenceKind::Heft) - said(apart, stores::EvidenceKind::Heft)).value(),
                super.value(), 1e-9);
    EXPECT_FALSE(apart.estimate->contradictory) << "the super is what made it heavy";
}

TEST(SupersWeighed, AWordForAllBoxesIsNoSurerForTheSuperTakenOff) {
    auto q = underSuper();
    hefted(q, stores::HeftWord::Heavy);
    const auto apart = evidenceSeen(q, constants(), nullptr).back();
    q.answers.supersFor = SupersFor::Bees;
    const auto counted = evidenceSeen(q, constants(), nullptr).back();
    EXPECT_NEAR(apart.sd(apart.typical).value(), counted.sd(counted.typical).value(), 1e-9);
}

TEST(SupersWeighed, HoneyOfTheSuperIsTakenOffAWeightOnce) {
    auto q = underSuper();
    const Mass super = honeyInSupers(q);
    onScale(q, kilograms(70), 0);
    const Mass before = said(adviceFor(q), stores::EvidenceKind::Scale);
    q.harvests.push_back({q.asOf + 1, super, q.winter.date(q.asOf)}); // in the evening, after the look and the scale
    const auto advice = adviceFor(q);
    EXPECT_NEAR((before - said(advice, stores::EvidenceKind::Scale)).value(), 0, 1e-9);
    q.harvests.back().honey += kilograms(2);
    EXPECT_NEAR((before - said(adviceFor(q), stores::EvidenceKind::Scale)).value(), 2, 1e-9) << "came from below";
}

TEST(SupersWeighed, HoneyThatWasNotCountedIsNotMissedInTheCombs) {
    auto q = underSuper();
    const Mass before = said(adviceFor(q), stores::EvidenceKind::Combs);
    q.harvests.push_back({q.asOf + 1, honeyInSupers(q), q.winter.date(q.asOf)});
    EXPECT_EQ(said(adviceFor(q), stores::EvidenceKind::Combs), before);
    q.answers.supersFor = SupersFor::Bees;
    EXPECT_LT(said(adviceFor(q), stores::EvidenceKind::Combs), before + kilograms(1e-9)) << "where it counted, it is";
}

TEST(SupersWeighed, AWeightOfTheDayAfterTheSuperCameOffIsOfTheRest) {
    auto q = underSuper();
    q.lookedOn = q.asOf - 10;
    q.harvests.push_back({q.asOf - 5, honeyInSupers(q), q.winter.date(q.asOf - 5)});
    onScale(q, kilograms(40), 1);
    const auto counted = [&] {
        auto other = q;
        other.answers.supersFor = SupersFor::Bees;
        return evidenceSeen(other, constants(), nullptr).back().typical;
    };
    EXPECT_EQ(evidenceSeen(q, constants(), nullptr).back().typical, counted());
}

TEST(SupersWeighed, CombsOfASuperLeaveALiftAlone) {
    auto q = underSuper();
    for (std::size_t i = 0; i < 10; ++i) q.combs[i].facesSeen = 0;
    hefted(q, stores::HeftWord::Fair);
    EXPECT_EQ(heftAlone(q), stores::HeftWord::Fair) << "nobody looked at the nest";
    EXPECT_EQ(adviceFor(q).decidedBy, DecidedBy::Heft);
}

} // namespace winterlarder::advice::supers_weighed_test
