// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/colonies.h"
#include "report/colony_sheet.h"
#include "report/visits.h"
#include "report/yard_plan.h"

#include <algorithm>
#include <gtest/gtest.h>

//! Sheets as data: what they hold is what the answer says, whatever language they will be printed in.
namespace winterlarder::report::sheets_test {

namespace {

using advice::Made;
using advice::Verdict;

struct Weighed {
    advice::ColonyQuestion question;
    advice::Advice advice;
    Weighed(const char* name, const Made& made) : question(advice::colony(made)) {
        question.colony = name;
        question.yard = "Orchard";
        advice = advice::adviceFor(question);
    }
};

const Weighed& rich() {
    static const Weighed made("Gravenstein", {.capped = 0.95, .combs = 20});
    return made;
}
const Weighed& poor() {
    static const Weighed made("Russet", {.capped = 0.25});
    return made;
}
const Weighed& unknown() {
    static const Weighed made = [] {
        Weighed blind("Pippin", {});
        blind.question.combs.clear();
        blind.advice = advice::adviceFor(blind.question);
        return blind;
    }();
    return made;
}

Sheet sheetOf(const Weighed& colony) { return colonySheet(colony.question, colony.advice, shipped()); }

const Cell* fact(const Section* section, std::string_view id) {
    if (!section) return nullptr;
    for (const auto& each : section->facts)
        if (each.id == id) return &each.value;
    return nullptr;
}

template <class Value> Value value(const Cell* cell) {
    if (!cell || !std::holds_alternative<Value>(*cell)) throw std::runtime_error("no such value on the sheet");
    return std::get<Value>(*cell);
}

Sheet plan(const SugarPrice& price = {}) {
    const std::vector<PlannedColony> colonies{{&rich().question, &rich().advice},
                                              {&poor().question, &poor().advice},
                                              {&unknown().question, &unknown().advice}};
    return yardPlan("Orchard", *Date::parse("2026-09-14"), colonies, price, shipped());
}

} // namespace

TEST(ColonySheet, HoldsTheVerdictWithItsNumbers) {
    ASSERT_EQ(rich().advice.verdict, Verdict::Harvest);
    const auto sheet = sheetOf(rich());
    EXPECT_EQ(sheet.title, "Gravenstein");
    EXPECT_EQ(sheet.yard, "Orchard");
    EXPECT_EQ(sheet.date.iso(), "2026-09-14");
    const auto* answer = sheet.section("answer");
    EXPECT_EQ(value<Word>(fact(answer, "verdict")).id, "harvest");
    EXPECT_EQ(value<Mass>(fact(answer, "take")), rich().advice.harvest->upTo);
    EXPECT_EQ(value<Spread<Mass>>(fact(answer, "stores")), rich().advice.estimate->spread);
    EXPECT_EQ(value<Mass>(fact(answer, "needed")), *rich().advice.need);
    EXPECT_EQ(value<Share>(fact(answer, "runs-out")), *rich().advice.runOut);
    EXPECT_EQ(fact(answer, "feed-sugar"), nullptr);
    EXPECT_EQ(sheet.section("feeding"), nullptr) << "nothing is fed";
    ASSERT_NE(sheet.section("take"), nullptr);
    EXPECT_EQ(sheet.section("take")->table.rows.size(), rich().advice.harvest->combs.size());
}

TEST(ColonySheet, FeedingIsARecipeAndARowAVisit) {
    ASSERT_EQ(poor().advice.verdict, Verdict::Feed);
    const auto sheet = sheetOf(poor());
    const auto* feeding = sheet.section("feeding");
    EXPECT_EQ(value<Mass>(fact(feeding, "sugar")), poor().advice.feed->syrup.sugar);
    EXPECT_EQ(value<Volume>(fact(feeding, "water")), poor().advice.feed->syrup.water);
    ASSERT_EQ(feeding->table.rows.size(), poor().advice.feed->visits.size());
    Mass fed{0};
    for (const auto& row : feeding->table.rows) {
        ASSERT_EQ(row.size(), feeding->table.columns.size());
        if (const auto* sugar = std::get_if<Mass>(&row[3])) fed = fed + *sugar;
        EXPECT_TRUE(row.back().empty()) << "a place to tick";
    }
    EXPECT_NEAR(fed.value(), poor().advice.feed->syrup.sugar.value(), 1e-6);
}

TEST(ColonySheet, EveryReasonAndCautionIsThereWithItsSource) {
    for (const auto* colony : {&rich(), &poor(), &unknown()}) {
        const auto sheet = sheetOf(*colony);
        const auto* reasons = sheet.section("reasons");
        ASSERT_EQ(reasons ? reasons->remarks.size() : 0, colony->advice.reasons.size());
        const auto* cautions = sheet.section("cautions");
        ASSERT_EQ(cautions ? cautions->remarks.size() : 0, colony->advice.cautions.size());
        for (const auto* section : {reasons, cautions})
            for (const auto& remark : section ? section->remarks : std::vector<SourcedRemark>{}) {
                EXPECT_NE(shipped().source(remark.source), nullptr)
                    << remark.remark.id << " rests on " << remark.source;
                EXPECT_NE(std::find(sheet.sources.begin(), sheet.sources.end(), remark.source), sheet.sources.end());
            }
        auto unique = sheet.sources;
        std::sort(unique.begin(), unique.end());
        EXPECT_EQ(std::adjacent_find(unique.begin(), unique.end()), unique.end());
    }
}

TEST(ColonySheet, WhereNothingCanBeSaidNothingIsInvented) {
    ASSERT_EQ(unknown().advice.verdict, Verdict::CannotSay);
    const auto sheet = sheetOf(unknown());
    const auto* answer = sheet.section("answer");
    EXPECT_EQ(value<Word>(fact(answer, "verdict")).id, "cannot-say");
    EXPECT_EQ(fact(answer, "stores"), nullptr);
    EXPECT_EQ(fact(answer, "runs-out"), nullptr);
    EXPECT_EQ(sheet.section("picture"), nullptr);
    EXPECT_EQ(sheet.section("options"), nullptr);
}

TEST(YardPlan, EveryVisitOfEveryColonyIsThereByDay) {
    const auto sheet = plan();
    const auto* visits = sheet.section("visits");
    ASSERT_NE(visits, nullptr);
    std::size_t tasks = 0;
    for (const auto* colony : {&rich(), &poor(), &unknown()}) tasks += tasksOf(colony->question, colony->advice).size();
    EXPECT_EQ(visits->table.rows.size(), tasks);
    std::optional<Date> before;
    for (const auto& row : visits->table.rows) {
        ASSERT_EQ(row.size(), visits->table.columns.size());
        const auto* day = std::get_if<Date>(&row[0]);
        if (!day) continue;
        if (before) EXPECT_LE(*before, *day);
        before = *day;
    }
    EXPECT_EQ(sheet.section("colonies")->table.rows.size(), 3U);
}

TEST(YardPlan, WhatIsToBeBoughtAddsUp) {
    const auto sheet = plan({1.2, "CAD", kilograms(10)});
    const auto* buy = sheet.section("to-buy");
    const Mass sugar = poor().advice.feed->syrup.sugar;
    EXPECT_EQ(value<Mass>(fact(buy, "sugar")), sugar);
    EXPECT_EQ(value<Count>(fact(buy, "bags")).number, std::ceil(sugar.value() / 10));
    EXPECT_NEAR(value<Money>(fact(buy, "cost")).amount, 1.2 * sugar.value(), 1e-9);
    EXPECT_EQ(value<Mass>(fact(buy, "honey-to-take")), rich().advice.harvest->upTo);
    EXPECT_EQ(fact(plan().section("to-buy"), "cost"), nullptr) << "no price, no cost";
}

TEST(YardPlan, CombsThatComeAreNotTakenOffTheSugarAgain) {
    auto helped = poor();
    helped.advice.gifts.push_back({"Gravenstein", "Russet", {0, 1}, helped.advice.feed->stores / 2});
    const std::vector<PlannedColony> one{{&helped.question, &helped.advice}};
    const auto sheet = yardPlan("", *Date::parse("2026-09-14"), one, {}, shipped());
    EXPECT_EQ(value<Mass>(fact(sheet.section("to-buy"), "sugar")), helped.advice.feed->syrup.sugar)
        << "what it is fed is what is missing once they hang in";
}

TEST(YardPlan, CombsMayBeAllThatIsDone) {
    auto helped = poor();
    helped.advice.gifts.push_back({"Gravenstein", "Russet", {0, 1}, kilograms(5)});
    helped.advice.verdict = advice::Verdict::Leave;
    helped.advice.feed.reset();
    helped.advice.nextLook =
        advice::NextLook{helped.question.winter.date(helped.question.asOf).plusDays(20), advice::NextLookAt::Weigh};
    const auto tasks = tasksOf(helped.question, helped.advice);
    ASSERT_EQ(tasks.size(), 2U);
    EXPECT_EQ(tasks[0].kind, TaskKind::MoveCombs);
    EXPECT_EQ(tasks[0].date, helped.question.winter.date(helped.question.asOf));
    EXPECT_EQ(tasks[1].kind, TaskKind::WeighAgain);
}

TEST(YardPlan, CombsAreMovedBeforeTheFirstFeed) {
    auto helped = poor();
    helped.advice.gifts.push_back({"Gravenstein", "Russet", {0, 1}, kilograms(3)});
    const auto tasks = tasksOf(helped.question, helped.advice);
    ASSERT_EQ(tasks.size(), tasksOf(poor().question, poor().advice).size() + 1);
    EXPECT_EQ(tasks[0].kind, TaskKind::MoveCombs);
    EXPECT_EQ(tasks[0].date, helped.advice.feed->visits.front().date);
    EXPECT_EQ(tasks[0].honey, kilograms(3));
    EXPECT_EQ(tasks[0].combs, 2);
    EXPECT_EQ(tasks[0].from, "Gravenstein");
    auto giver = poor();
    giver.advice.gifts.push_back({"Russet", "Pippin", {0}, kilograms(1)});
    EXPECT_EQ(tasksOf(giver.question, giver.advice).front().kind, TaskKind::Syrup) << "it is listed where it is taken";
}

TEST(YardPlan, WhatTheKeeperPlannedStandsInPlaceOfTheAdvice) {
    Task fondant;
    fondant.kind = TaskKind::Fondant;
    fondant.date = Date::parse("2026-10-20");
    fondant.fondant = kilograms(2.5);
    const PlannedColony planned{&poor().question, &poor().advice, {}, std::vector{fondant}};
    const auto sheet = yardPlan("", *Date::parse("2026-09-14"), {planned}, {}, shipped());
    ASSERT_EQ(sheet.section("visits")->table.rows.size(), 1U);
    EXPECT_EQ(std::get<Word>(sheet.section("visits")->table.rows[0][2]).id, "fondant");
}

TEST(YardPlan, CautionsAreSaidOnceForAll) {
    const auto sheet = plan();
    const auto* cautions = sheet.section("cautions");
    ASSERT_NE(cautions, nullptr);
    std::vector<std::string> ids;
    for (const auto& remark : cautions->remarks) ids.push_back(remark.remark.id);
    std::sort(ids.begin(), ids.end());
    EXPECT_EQ(std::adjacent_find(ids.begin(), ids.end()), ids.end());
}

TEST(YardPlan, AFollowedWinterAsksForItsOwnVisits) {
    Task fondant;
    fondant.kind = TaskKind::Fondant;
    fondant.date = Date::parse("2027-01-20");
    fondant.fondant = kilograms(2.5);
    PlannedColony followed{&poor().question, &poor().advice,
                           FollowedPlan{tracking::FollowState::ActNow,
                                        {kilograms(2), kilograms(3), kilograms(4)},
                                        {0.8, 0.01},
                                        {0.5, 0.01},
                                        {fondant}}};
    const auto sheet = yardPlan("", *Date::parse("2027-01-15"), {followed}, {}, shipped());
    EXPECT_EQ(fact(sheet.section("to-buy"), "sugar"), nullptr) << "the autumn's syrup is past";
    EXPECT_EQ(value<Mass>(fact(sheet.section("to-buy"), "fondant")), kilograms(2.5));
    ASSERT_EQ(sheet.section("visits")->table.rows.size(), 1U);
    EXPECT_EQ(std::get<Word>(sheet.section("visits")->table.rows[0][2]).id, "fondant");
    EXPECT_EQ(std::get<Word>(sheet.section("colonies")->table.rows[0][1]).id, "act-now");
    EXPECT_EQ(sheet.section("to-mix"), nullptr);
}

TEST(Tasks, AColonyThatIsUnitedIsFedOnlyUntilThen) {
    auto weak = poor();
    weak.advice.verdict = Verdict::Unite;
    const auto kept = tasksOf(weak.question, weak.advice);
    EXPECT_EQ(kept.size(), weak.advice.feed->visits.size() + 1) << "what keeps it alive, where its answer has a feed";
    weak.advice.feed.reset();
    const auto tasks = tasksOf(weak.question, weak.advice);
    ASSERT_EQ(tasks.size(), 1U);
    EXPECT_EQ(tasks[0].kind, TaskKind::Unite);
    const std::vector<PlannedColony> one{{&weak.question, &weak.advice}};
    EXPECT_EQ(fact(yardPlan("", *Date::parse("2026-09-14"), one, {}, shipped()).section("to-buy"), "sugar"), nullptr);
}

TEST(Tasks, AColonyWithoutAQueenIsTestedBeforeItIsUnited) {
    auto queenless = poor();
    queenless.advice.verdict = Verdict::Unite;
    queenless.advice.decidedBy = advice::DecidedBy::NoQueen;
    queenless.advice.feed.reset();
    const Date today = queenless.question.winter.date(queenless.question.asOf);
    queenless.advice.unite = advice::UniteAdvice{"Birch", today.plusDays(20), false, true};
    queenless.advice.nextLook = advice::NextLook{today.plusDays(4), advice::NextLookAt::QueenCells};
    const auto tasks = tasksOf(queenless.question, queenless.advice);
    ASSERT_EQ(tasks.size(), 3U);
    EXPECT_EQ(tasks[0].kind, TaskKind::HangInEggs);
    EXPECT_EQ(tasks[0].date, today);
    EXPECT_EQ(tasks[1].kind, TaskKind::SeeQueenCells);
    EXPECT_EQ(tasks[1].date, today.plusDays(4));
    EXPECT_EQ(tasks[2].kind, TaskKind::Unite);
    EXPECT_TRUE(tasks[2].queenless);
}

} // namespace winterlarder::report::sheets_test
