// SPDX-License-Identifier: GPL-3.0-or-later
// One yard, one set of words: headline, row of the yard, its plan and its calendar say what the answer says, over random yards with combs moved and with
// combs that stay. That the numbers agree: tests/report/plan_agrees_test.cpp.
#include "advice/drawn_yards.h"
#include "answer/due_looks.h"
#include "app/book_desk.h"
#include "models/words.h"
#include "models/yard_list_model.h"
#include "models/yard_plan.h"
#include "text/task_words.h"
#include "text/words.h"

#include <map>

namespace winterlarder::desk {

namespace {

using advice::Advice;
using advice::DecidedBy;
using advice::MovingCombs;
using advice::TestYard;
using advice::Verdict;
using report::TaskKind;

// A yard of the window that shows the answers of the plan.
struct ShownYard : Yard {
    std::vector<ColonyId> ids;
    std::vector<report::Task> tasks; //!< all that is asked for
    explicit ShownYard(const TestYard& yard) {
        for (std::size_t i = 0; i < yard.size(); ++i) {
            auto record = invented::colony(yard.question(i).colony.c_str());
            record.asOf = *yard.planned(0).asOf;
            record.lookedOn.reset();
            ids.push_back(invented::add(*this, record));
            auto made = std::make_shared<AnsweredColony>(
                AnsweredColony{record, yard.inPlanOf(i).question, {yard.planned(i), {}}, {}, {}, nullptr});
            EXPECT_TRUE(takeAnswer(ids.back(), made));
            for (auto& task : report::tasksOf(yard.inPlanOf(i).question, yard.planned(i))) tasks.push_back(task);
        }
    }
};

bool holds(const QString& text, const QString& part) { return text.contains(part, Qt::CaseInsensitive); }

// What the answer orders stands in the sentence, and no order stands there that the answer does not give.
void headlineAgrees(const Advice& a, const QString& said) {
    const auto kg = [](Mass mass) { return words::amount(mass); };
    if (a.feed && a.feed->fondant > Mass(0))
        EXPECT_TRUE(holds(said, QStringLiteral("lay %1 of fondant").arg(kg(a.feed->fondant))));
    else if (a.feed) EXPECT_TRUE(holds(said, QStringLiteral("feed %1 of sugar").arg(kg(a.feed->syrup.sugar))));
    EXPECT_EQ(holds(said, QStringLiteral("as syrup")), a.feed && !(a.feed->fondant > Mass(0)));
    EXPECT_EQ(holds(said, QStringLiteral("of fondant on the bees")), a.feed && a.feed->fondant > Mass(0));
    if (a.harvest) EXPECT_TRUE(holds(said, kg(a.harvest->upTo)));
    EXPECT_EQ(said.contains(QStringLiteral("of honey")), a.harvest.has_value());
    EXPECT_EQ(said.contains(QStringLiteral("unite"), Qt::CaseInsensitive),
              a.verdict == Verdict::Unite || (a.plan && a.plan->uniteBy));
    if (a.plan && a.plan->uniteBy) EXPECT_TRUE(holds(said, QString::fromStdString(a.plan->uniteWith)));
    if (!a.plan) return;
    for (const auto& gift : a.plan->received) EXPECT_TRUE(holds(said, QString::fromStdString(gift.from)));
    for (const auto& gift : a.plan->given) EXPECT_TRUE(holds(said, QString::fromStdString(gift.to)));
}

// Two or three words and a drawing: the same order, or none.
void rowAgrees(const Advice& a, const QString& row, const QString& icon) {
    EXPECT_EQ(icon, words::iconName(a.verdict));
    switch (a.verdict) {
    case Verdict::Feed:
        EXPECT_TRUE(row.startsWith(QStringLiteral("feed ")));
        EXPECT_TRUE(holds(row, words::amount(a.feed->fondant > Mass(0) ? a.feed->fondant : a.feed->syrup.sugar)));
        break;
    case Verdict::Harvest: EXPECT_TRUE(holds(row, words::amount(a.harvest->upTo))); break;
    case Verdict::Leave:
        EXPECT_FALSE(row.startsWith(QStringLiteral("feed")));
        EXPECT_FALSE(holds(row, QStringLiteral("take")));
        if (a.plan && !a.plan->given.empty()) EXPECT_EQ(row, QStringLiteral("give combs"));
        break;
    case Verdict::Unite:
    case Verdict::CannotSay: EXPECT_EQ(row, words::verdictName(a.verdict)); break;
    }
}

void coloniesAgree(const TestYard& yard, ShownYard& shown, const std::string& where) {
    YardListModel list(&shown);
    for (std::size_t i = 0; i < yard.size(); ++i) {
        const auto& a = yard.planned(i);
        const QString said = text::headline(a, words::style());
        const auto row = list.index(list.rowOf(shown.ids[i]));
        const QString inShort = row.data(YardListModel::VerdictRole).toString();
        SCOPED_TRACE(where + ", " + yard.question(i).colony + ": " + said.toStdString() + " / " +
                     inShort.toStdString());
        headlineAgrees(a, said);
        rowAgrees(a, inShort, row.data(YardListModel::IconRole).toString());
    }
}

// The page Plan counts, sums and lists what the answers ask for.
void planAgrees(const TestYard& yard, const ShownYard& shown) {
    const auto plan = planOf(shown);
    std::map<Verdict, int> verdicts;
    Mass sugar{0}, fondant{0}, honey{0};
    std::size_t gifts = 0;
    for (std::size_t i = 0; i < yard.size(); ++i) {
        const auto& a = yard.planned(i);
        ++verdicts[a.verdict];
        if (a.feed) sugar += a.feed->syrup.sugar, fondant += a.feed->fondant;
        if (a.harvest) honey += a.harvest->upTo;
        if (a.plan) gifts += a.plan->given.size();
    }
    EXPECT_EQ(plan.feed, verdicts[Verdict::Feed]);
    EXPECT_EQ(plan.harvest, verdicts[Verdict::Harvest]);
    EXPECT_EQ(plan.leave, verdicts[Verdict::Leave]);
    EXPECT_EQ(plan.unite, verdicts[Verdict::Unite]);
    EXPECT_NEAR(plan.totals.sugar.value(), sugar.value(), 1e-6);
    EXPECT_NEAR(plan.totals.fondant.value(), fondant.value(), 1e-6);
    EXPECT_NEAR(plan.totals.honey.value(), honey.value(), 1e-6);
    EXPECT_EQ(plan.gifts.size(), gifts);
    EXPECT_EQ(plan.jobs.size(), shown.tasks.size());
}

// The calendar of a colony whose winter is not followed yet.
std::vector<exchange::DueOn> calendarOf(const advice::ColonyInPlan& colony) {
    const auto& a = colony.answer.advice;
    answer::ReadDue due{
        {.records = {}, .asOf = *a.asOf, .decided = *a.asOf, .now = {.asOf = *a.asOf}, .autumn = {.asOf = *a.asOf}},
        answer::advisedDue(colony.question, a, words::style())};
    due.reading.records.colony.name = colony.question.colony;
    due.reading.winter = colony.question.winter;
    return answer::dueLooks("mark", {due}, *invented::shipped(), {1, 10}, 1, words::style()).due;
}

std::vector<report::Task> visitsOf(const advice::Advice& a) {
    std::vector<report::Task> tasks;
    if (a.feed)
        for (const auto& visit : a.feed->visits) tasks.push_back(report::taskOf(visit));
    return tasks;
}

// Every visit, comb, union and harvest of the answer has its event on its day with its amount, and there is no other.
void calendarAgrees(const advice::ColonyInPlan& colony) {
    const auto& a = colony.answer.advice;
    std::multimap<Date, std::string> events;
    for (const auto& event : calendarOf(colony)) {
        events.emplace(event.day, event.summary);
        EXPECT_EQ(event.details.find("today"), std::string::npos) << "said on its own day: " << event.details;
    }
    const auto take = [&](Date day, const QString& part) {
        for (auto [at, end] = events.equal_range(day); at != end; ++at)
            if (QString::fromStdString(at->second).contains(part)) return events.erase(at), true;
        return false;
    };
    for (const auto& visit : text::asShown(visitsOf(a), words::style()))
        EXPECT_TRUE(take(*visit.date, visit.kind == report::TaskKind::Syrup ? text::amount(visit.syrup, words::style())
                                      : visit.kind == report::TaskKind::Fondant ? words::amount(visit.fondant)
                                                                                : QStringLiteral("Check")));
    if (a.plan)
        for (std::size_t i = 0; i < a.plan->received.size(); ++i) {
            const bool fed = a.feed && !a.feed->visits.empty();
            EXPECT_TRUE(
                take(fed ? a.feed->visits.front().date : *a.asOf, QString::fromStdString(a.plan->received[i].from)));
        }
    if (a.unite) EXPECT_TRUE(take(a.unite->by, QStringLiteral("unite")));
    if (a.decidedBy == advice::DecidedBy::NoQueen) {
        EXPECT_TRUE(take(*a.asOf, QStringLiteral("with eggs")));
        EXPECT_TRUE(take(a.nextLook->date, QStringLiteral("queen cells")));
    }
    for (auto at = events.begin(); at != events.end();) { // the next look, and honey by the day it must be off
        const auto said = QString::fromStdString(at->second);
        const bool honey = a.harvest && said.contains(words::amount(a.harvest->upTo));
        const bool look = a.nextLook && at->first == a.nextLook->date && !said.contains(QStringLiteral("Syrup"));
        const bool queenTest = a.decidedBy == advice::DecidedBy::NoQueen && said.contains(QStringLiteral("with eggs"));
        EXPECT_TRUE(honey || look || queenTest) << at->second;
        at = events.erase(at);
    }
}

} // namespace

TEST(PlanAgreesInWords, InEverySentenceOfRandomYards) {
    std::map<Verdict, int> seen;
    for (unsigned seed = 1; seed <= 40; ++seed)
        for (const auto combs : {MovingCombs::Allowed, MovingCombs::Not}) {
            TestYard yard({1, 100});
            advice::furnish(yard, seed);
            yard.plan(combs);
            const std::string where = "yard " + std::to_string(seed);
            ShownYard shown(yard);
            coloniesAgree(yard, shown, where);
            SCOPED_TRACE(where);
            planAgrees(yard, shown);
            for (std::size_t i = 0; i < yard.size(); ++i) {
                ++seen[yard.planned(i).verdict];
                SCOPED_TRACE(yard.question(i).colony);
                calendarAgrees(yard.inPlanOf(i));
            }
        }
    for (const auto verdict : {Verdict::Feed, Verdict::Harvest, Verdict::Leave, Verdict::Unite})
        EXPECT_GE(seen[verdict], 5) << "not tried: " << words::verdictName(verdict).toStdString();
}

} // namespace winterlarder::desk
