// SPDX-License-Identifier: GPL-3.0-or-later
// One yard, one set of numbers: option, plan, visits, totals, what is to be bought, and both sheets, over random yards with combs moved and with combs that stay.
#include "advice/drawn_yards.h"
#include "report/colony_sheet.h"
#include "report/yard_plan.h"

namespace winterlarder::report::plan_agrees_test {

namespace {

using advice::Advice;
using advice::MovingCombs;
using advice::OptionKind;
using advice::TestYard;
using advice::Verdict;

constexpr double tiny = 1e-6;

struct Named {
    const TestYard& yard;
    std::size_t place;
    std::string where;
    const Advice& advice() const { return yard.planned(place); }
    const advice::ColonyQuestion& question() const { return yard.inPlanOf(place).question; }
};

struct Sum {
    Mass sugar{0}, fondant{0}, honey{0}, moved{0};
};

Sum sumOf(const std::vector<Task>& tasks) {
    Sum sum;
    for (const auto& task : tasks) {
        sum.sugar += task.sugar, sum.fondant += task.fondant;
        if (task.kind == TaskKind::TakeHoney) sum.honey += task.honey;
        if (task.kind == TaskKind::MoveCombs) sum.moved += task.honey;
    }
    return sum;
}

Sum advised(const Advice& a, const std::string& colony) {
    Sum sum;
    if (a.feed) sum.sugar = a.feed->syrup.sugar, sum.fondant = a.feed->fondant;
    if (a.harvest) sum.honey = a.harvest->upTo;
    for (const auto& gift : a.gifts)
        if (gift.to == colony) sum.moved += gift.honey;
    return sum;
}

void expectSame(const Sum& a, const Sum& b, const std::string& where) {
    EXPECT_NEAR(a.sugar.value(), b.sugar.value(), tiny) << where << ": sugar";
    EXPECT_NEAR(a.fondant.value(), b.fondant.value(), tiny) << where << ": fondant";
    EXPECT_NEAR(a.honey.value(), b.honey.value(), tiny) << where << ": honey";
    EXPECT_NEAR(a.moved.value(), b.moved.value(), tiny) << where << ": combs";
}

const Cell* fact(const Section* section, std::string_view id) {
    if (!section) return nullptr;
    for (const auto& each : section->facts)
        if (each.id == id) return &each.value;
    return nullptr;
}

double massOf(const Section* section, std::string_view id) {
    const auto* cell = fact(section, id);
    const auto* mass = cell ? std::get_if<Mass>(cell) : nullptr;
    return mass ? mass->value() : 0;
}

// The sum of a column of masses.
double columnOf(const Section* section, std::string_view column) {
    if (!section) return 0;
    const auto& columns = section->table.columns;
    const auto at = static_cast<std::size_t>(std::find(columns.begin(), columns.end(), column) - columns.begin());
    double sum = 0;
    for (const auto& row : section->table.rows)
        if (const auto* mass = std::get_if<Mass>(&row.at(at))) sum += mass->value();
    return sum;
}

void optionsAgree(const Named& colony) {
    const auto& a = colony.advice();
    const Mass now = std::max(kilograms(0), a.estimate->mean + (a.plan ? a.plan->brought() : kilograms(0)));
    if (a.feed)
        EXPECT_NEAR(option(a, OptionKind::Feed)->storesAfter.value(), (now + a.feed->stores).value(), tiny)
            << colony.where;
    if (a.harvest)
        EXPECT_NEAR(option(a, OptionKind::TakeNow)->storesAfter.value(),
                    std::max(0.0, (now - a.harvest->fromStores).value()), tiny)
            << colony.where;
    const auto* moved = option(a, OptionKind::MoveCombs);
    EXPECT_EQ(moved != nullptr, a.plan && a.plan->brought() != kilograms(0)) << colony.where;
    if (moved) EXPECT_NEAR(moved->amount.value(), std::abs(a.plan->brought().value()), tiny) << colony.where;
    if (moved) EXPECT_NEAR(moved->storesAfter.value(), now.value(), tiny) << colony.where;
}

void sheetAgrees(const Named& colony, const std::vector<Task>& tasks) {
    const auto& a = colony.advice();
    const auto sheet = colonySheet(colony.question(), a, shipped());
    const auto wanted = sumOf(tasks);
    EXPECT_NEAR(massOf(sheet.section("answer"), "feed-sugar"), wanted.sugar.value(), tiny) << colony.where;
    EXPECT_NEAR(massOf(sheet.section("answer"), "feed-fondant"), wanted.fondant.value(), tiny) << colony.where;
    EXPECT_NEAR(massOf(sheet.section("answer"), "take"), wanted.honey.value(), tiny) << colony.where;
    EXPECT_NEAR(columnOf(sheet.section("feeding"), "sugar"), wanted.sugar.value(), tiny) << colony.where;
    EXPECT_NEAR(columnOf(sheet.section("feeding"), "fondant"), wanted.fondant.value(), tiny) << colony.where;
    EXPECT_NEAR(massOf(sheet.section("feeding"), "sugar"), wanted.sugar.value(), tiny) << colony.where;
    if (a.harvest && !a.harvest->combs.empty())
        EXPECT_NEAR(massOf(sheet.section("take"), "combs-hold"), wanted.honey.value(), tiny) << colony.where;
}

// Combs that are given do not come off as honey; who goes onto whom is said by both, with one last day, where it does not hang on whether there is
// a queen.
void partsAgree(const Named& colony) {
    const auto& a = colony.advice();
    if (!a.plan) return;
    for (const auto& gift : a.plan->given)
        for (const int comb : gift.combs)
            if (a.harvest)
                EXPECT_EQ(std::count(a.harvest->combs.begin(), a.harvest->combs.end(), comb), 0) << colony.where;
    if (a.unite) EXPECT_EQ(a.unite->partner, a.plan->uniteWith) << colony.where;
    if (!a.plan->uniteBy) return;
    for (std::size_t other = 0; other < colony.yard.size(); ++other) {
        if (colony.yard.question(other).colony != a.plan->uniteWith) continue;
        const bool undecided = a.decidedBy == advice::DecidedBy::NoQueen && colony.yard.part(other).uniteWith.empty();
        if (undecided) {
            EXPECT_TRUE(advice::says(colony.yard.planned(other).reasons, "may-be-united")) << colony.where;
            continue;
        }
        EXPECT_EQ(colony.yard.part(other).uniteWith, colony.question().colony) << colony.where;
        EXPECT_EQ(colony.yard.part(other).uniteBy, a.plan->uniteBy) << colony.where;
    }
    if (a.unite)
        for (const auto& task : tasksOf(colony.question(), a))
            if (task.kind == TaskKind::Unite) EXPECT_EQ(task.date, a.plan->uniteBy) << colony.where;
}

Mass givenIn(const TestYard& yard) {
    Mass given{0};
    for (std::size_t i = 0; i < yard.size(); ++i)
        for (const auto& gift : yard.part(i).given) given += gift.honey;
    return given;
}

void yardAgrees(const TestYard& yard, const std::string& where) {
    std::vector<PlannedColony> colonies;
    Sum all;
    YardTotals totals;
    for (std::size_t i = 0; i < yard.size(); ++i) {
        const Named colony{yard, i, where + ", " + yard.question(i).colony};
        const auto tasks = tasksOf(colony.question(), colony.advice());
        const auto asked = advised(colony.advice(), colony.question().colony);
        expectSame(sumOf(tasks), asked, colony.where);
        optionsAgree(colony);
        sheetAgrees(colony, tasks);
        partsAgree(colony);
        colonies.push_back({&colony.question(), &colony.advice()});
        add(totals, colonies.back());
        all.sugar += asked.sugar, all.fondant += asked.fondant, all.honey += asked.honey, all.moved += asked.moved;
    }
    expectSame({totals.sugar, totals.fondant, totals.honey, givenIn(yard)}, all, where + ", totals");
    const auto sheet = yardPlan("Yard", *yard.planned(0).asOf, colonies, {}, shipped());
    const auto* buy = sheet.section("to-buy");
    expectSame({kilograms(massOf(buy, "sugar")), kilograms(massOf(buy, "fondant")),
                kilograms(massOf(buy, "honey-to-take")), kilograms(columnOf(sheet.section("gifts"), "honey"))},
               all, where + ", paper");
    EXPECT_NEAR(columnOf(sheet.section("visits"), "sugar"), all.sugar.value(), tiny) << where;
    EXPECT_NEAR(columnOf(sheet.section("to-mix"), "sugar"), all.sugar.value(), tiny) << where;
}

struct Seen {
    int gifts = 0, unions = 0, harvests = 0, feeds = 0, fedOtherwise = 0;
};

void count(const TestYard& yard, Seen& seen) {
    for (std::size_t i = 0; i < yard.size(); ++i) {
        const auto& a = yard.planned(i);
        seen.gifts += static_cast<int>(yard.part(i).given.size());
        seen.unions += a.unite.has_value();
        seen.harvests += a.harvest.has_value();
        seen.feeds += a.verdict == Verdict::Feed;
        seen.fedOtherwise += a.verdict != Verdict::Feed && a.feed;
    }
}

} // namespace

TEST(PlanAgrees, InEveryNumberOfRandomYards) {
    Seen moved, stayed;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        TestYard yard({1, 100});
        advice::furnish(yard, seed);
        const std::string where = "yard " + std::to_string(seed);
        yard.plan();
        yardAgrees(yard, where);
        count(yard, moved);
        yard.plan(MovingCombs::Not);
        yardAgrees(yard, where + " without combs moved");
        count(yard, stayed);
    }
    for (const int seen : {moved.gifts, moved.unions, moved.harvests, moved.feeds, moved.fedOtherwise})
        EXPECT_GE(seen, 3) << "not tried: " << moved.gifts << ' ' << moved.unions << ' ' << moved.harvests << ' '
                           << moved.feeds << ' ' << moved.fedOtherwise;
    EXPECT_EQ(stayed.gifts, 0);
}

} // namespace winterlarder::report::plan_agrees_test
