// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/drawn_colonies.h"
#include "advice/phases.h"

#include <map>

//! What holds of every answer, as checks over one random colony each: over few in the usual tests, over many in test_advice_long.
namespace winterlarder::advice::properties {

inline bool offers(const Advice& a, OptionKind kind) { return option(a, kind) != nullptr; }

inline void noDayIsPast(const Advice& a, const std::vector<Remark>& remarks, const std::string& what) {
    for (const auto& remark : remarks)
        for (const auto& detail : remark.details)
            if (const Date* day = std::get_if<Date>(&detail.second))
                EXPECT_GE(*day, a.asOf) << what << ": " << remark.id;
}

inline void daysToCome(const Advice& a, const std::string& what) {
    noDayIsPast(a, a.cautions, what);
    noDayIsPast(a, a.goodPractice, what);
    noDayIsPast(a, a.reasons, what);
    ASSERT_TRUE(a.nextLook && a.target) << what;
    EXPECT_GE(a.nextLook->date, a.asOf) << what;
    EXPECT_GE(a.target->date, a.asOf) << what;
    if (a.unite) EXPECT_GE(a.unite->by, a.asOf) << what;
    if (a.expectedLater)
        EXPECT_TRUE(a.expectedLater->from >= *a.asOf && a.expectedLater->from <= a.expectedLater->until) << what;
    for (const auto& point : a.weighLine) EXPECT_GE(point.date, a.asOf) << what;
    if (a.feed)
        for (const auto& visit : a.feed->visits) EXPECT_GE(visit.date, a.asOf) << what;
}

// No sugar beyond the room that will be there; what a visit brings is what the plan says.
inline void plansFit(const Advice& a, const std::string& what) {
    if (!a.feed) return;
    Mass stores{0}, sugar{0}, fondant{0};
    for (const auto& visit : a.feed->visits) stores += visit.stores, sugar += visit.sugar, fondant += visit.fondant;
    EXPECT_NEAR(stores.value(), a.feed->stores.value(), 1e-6) << what;
    EXPECT_NEAR(sugar.value(), a.feed->syrup.sugar.value(), 1e-6) << what;
    EXPECT_NEAR(fondant.value(), a.feed->fondant.value(), 1e-6) << what;
    if (sugar > kilograms(0)) EXPECT_LE(stores, *a.room + kilograms(0.01)) << what;
}

// The day from which sugar is in this year's honey: a year before the next spring forage.
inline Date honeyFrom(const ColonyQuestion& q) { return q.winter.date(q.season.forage->day).plusDays(-365); }

// Honey is taken in the work season alone, and only out of a box put on after the last sugar and medicine.
inline void honeyIsForPeople(const ColonyQuestion& q, const Advice& a, const std::string& what) {
    if (!a.harvest && !offers(a, OptionKind::TakeInSpring)) return;
    EXPECT_FALSE(q.trouble) << what;
    EXPECT_LE(q.moisturePercent.value_or(0), 20) << what;
    if (a.harvest) EXPECT_TRUE(a.phase == Phase::Summer || a.phase == Phase::Closing) << what;
    std::optional<Date> last;
    for (const auto& feed : q.feeds)
        if (feed.date >= honeyFrom(q)) last = std::max(last.value_or(*feed.date), *feed.date);
    for (const auto& medicine : q.treatments) last = std::max(last.value_or(medicine.date), medicine.date);
    if (!last) return;
    const auto putOnAfter = [&](std::size_t box) { return q.boxUses[box].putOn && *q.boxUses[box].putOn > *last; };
    if (!a.harvest) return;
    EXPECT_FALSE(a.harvest->combs.empty()) << what << ": an amount of no box in particular, after sugar or medicine";
    for (const int position : a.harvest->combs)
        EXPECT_TRUE(putOnAfter(static_cast<std::size_t>(q.combs[static_cast<std::size_t>(position)].box))) << what;
}

inline void partsAgree(const ColonyQuestion& q, const Advice& a, const std::string& what) {
    EXPECT_EQ(a.verdict == Verdict::Harvest, a.harvest.has_value()) << what;
    if (a.verdict == Verdict::Feed) EXPECT_TRUE(a.feed) << what;
    EXPECT_EQ(offers(a, OptionKind::Feed), a.feed.has_value()) << what;
    EXPECT_EQ(offers(a, OptionKind::TakeNow), a.harvest.has_value()) << what;
    EXPECT_EQ(offers(a, OptionKind::Unite), a.verdict == Verdict::Unite) << what;
    EXPECT_EQ(a.unite.has_value(), a.verdict == Verdict::Unite) << what;
    EXPECT_FALSE(a.feed && a.harvest) << what;
    if (q.trouble) EXPECT_TRUE(a.decidedBy == DecidedBy::Disease && !a.unite && a.gifts.empty()) << what;
    if (a.feed) EXPECT_NEAR(option(a, OptionKind::Feed)->amount.value(), a.feed->stores.value(), 1e-9) << what;
    if (a.harvest) EXPECT_EQ(option(a, OptionKind::TakeNow)->amount, a.harvest->upTo) << what;
    if (a.harvest && !a.harvest->combs.empty()) EXPECT_EQ(a.harvest->upTo, a.harvest->combsHold) << what;
    if (a.decidedBy == DecidedBy::Harvest && a.harvest->fromStores > kilograms(0))
        EXPECT_LE(option(a, OptionKind::TakeNow)->touchReserve.share, a.shortRisk + 1e-9) << what;
    if (const auto* spring = option(a, OptionKind::TakeInSpring))
        EXPECT_LE(spring->touchReserve.share, a.shortRisk + 1e-9) << what;
    EXPECT_NEAR((a.needParts->typicalUse + a.needParts->harderWinter + a.needParts->reserve).value(), a.need->value(),
                1e-9)
        << what;
    EXPECT_EQ(a.asOf, q.winter.date(q.asOf)) << what;
}

inline void cautionsOfTheirSeason(const ColonyQuestion& q, const Advice& a, const std::string& what) {
    EXPECT_LE(a.cautions.size(), 5u) << what;
    for (const auto& caution : a.cautions) EXPECT_FALSE(says(a.goodPractice, caution.id)) << what << ": " << caution.id;
    static const std::map<std::string, std::pair<Phase, Phase>> season{
        {"mouse-guard", {Phase::Closing, Phase::Late}},      {"varroa-first", {Phase::Summer, Phase::Closing}},
        {"top-insulation", {Phase::Closing, Phase::Late}},   {"condensation", {Phase::Closing, Phase::Late}},
        {"excluder-off", {Phase::Closing, Phase::Late}},     {"early-look", {Phase::Closing, Phase::Closing}},
        {"flow-not-sure", {Phase::Summer, Phase::Closing}},  {"setting-stores", {Phase::Summer, Phase::Closing}},
        {"honey-bound", {Phase::Spring, Phase::Spring}},     {"dead-out", {Phase::Spring, Phase::Spring}},
        {"spring-starvation", {Phase::Late, Phase::Spring}}, {"heft", {Phase::Closing, Phase::Spring}},
        {"cluster-gap", {Phase::Closing, Phase::Winter}},    {"no-super-yet", {Phase::Spring, Phase::Spring}}};
    const bool cold = a.phase >= Phase::Winter && q.season.winterClass != climate::WinterClass::Dearth;
    for (const auto* said : {&a.cautions, &a.goodPractice})
        for (const auto& remark : *said) {
            if (const auto own = season.find(remark.id); own != season.end())
                EXPECT_TRUE(a.phase >= own->second.first && a.phase <= own->second.second) << what << ": " << remark.id;
            if (cold)
                for (const char* id : {"robbing-and-wasps", "drowning", "hot-syrup"}) EXPECT_NE(remark.id, id) << what;
            const auto half = remark.details.find("class");
            const std::string* word = half == remark.details.end() ? nullptr : std::get_if<std::string>(&half->second);
            if (word && (*word == "north" || *word == "south"))
                EXPECT_EQ(*word == "south", q.winter.hemisphere() == Hemisphere::South) << what << ": " << remark.id;
        }
}

inline void expectAll(const Drawn& drawn, const Advice& a) {
    ASSERT_NE(a.verdict, Verdict::CannotSay) << drawn.what;
    plansFit(a, drawn.what);
    honeyIsForPeople(drawn.question, a, drawn.what);
    partsAgree(drawn.question, a, drawn.what);
    cautionsOfTheirSeason(drawn.question, a, drawn.what);
    daysToCome(a, drawn.what);
}

//! Colonies from `first` on; tells how many of each phase in each half of the earth there were, so that none is left out.
inline std::map<std::pair<Phase, Hemisphere>, int> expectOverColonies(unsigned first, unsigned count) {
    std::map<std::pair<Phase, Hemisphere>, int> seen;
    for (unsigned seed = first; seed < first + count; ++seed) {
        const Drawn drawn = drawnColony(seed);
        const auto a = roughly(drawn.question);
        expectAll(drawn, a);
        if (a.phase) ++seen[{*a.phase, drawn.question.winter.hemisphere()}];
    }
    return seen;
}

} // namespace winterlarder::advice::properties
