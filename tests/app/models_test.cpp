// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/book_desk.h"
#include "models/comb_table_model.h"
#include "models/due.h"
#include "models/job_table_model.h"
#include "models/yard_list_model.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <gtest/gtest.h>

#include <optional>
#include <set>

namespace winterlarder::desk {

using invented::add;
using invented::answered;
using invented::colony;
using invented::day;

TEST(Yard, AStaleAnswerIsRefused) {
    Yard yard;
    const auto id = add(yard, colony("A"));
    const auto old = answered(yard.find(id)->record);
    auto after = yard.find(id)->record;
    after.bees.coveredCombs = 3;
    yard.takeReading({.whole = true,
                      .day = after.asOf,
                      .yards = {},
                      .shown = {},
                      .colonies = {{id, after}},
                      .open = {},
                      .problems = {}});
    EXPECT_FALSE(yard.takeAnswer(id, old));
    EXPECT_TRUE(yard.find(id)->pending);
    EXPECT_TRUE(yard.takeAnswer(id, answered(after)));
    EXPECT_FALSE(yard.find(id)->pending);
    EXPECT_FALSE(yard.takeAnswer(ColonyId{99}, old)) << "the colony is gone";
}

namespace {

std::optional<Date> dueOn(const advice::Advice& advice) {
    auto made = *answered(colony("A"));
    made.answer.advice = advice;
    return dueOf(made).date;
}

advice::Advice adviceWith(advice::Verdict verdict) { return answered(colony("A"), {verdict})->answer.advice; }

} // namespace

// Feeding is due when its plan begins; honey comes off by the advised end of feeding, uniting has its last day, what is left alone its next look.
TEST(Due, EachVerdictHasItsDay) {
    using advice::Verdict;
    EXPECT_EQ(dueOn(adviceWith(Verdict::Feed)), day("2026-09-14"));
    auto harvest = adviceWith(Verdict::Harvest);
    harvest.season.feedAdvisedBy->day = harvest.season.feedAdvisedBy->day + 5;
    EXPECT_EQ(dueOn(harvest), day("2026-09-30"));
    auto leave = adviceWith(Verdict::Leave);
    leave.nextLook->date = day("2026-10-03");
    EXPECT_EQ(dueOn(leave), day("2026-10-03"));
    auto unite = adviceWith(Verdict::Unite);
    unite.unite->by = day("2026-10-11");
    EXPECT_EQ(dueOn(unite), day("2026-10-11"));
    leave.nextLook = advice::NextLook{day("2026-08-20"), advice::NextLookAt::CountMites};
    auto summer = *answered(colony("A"));
    summer.answer.advice = leave;
    EXPECT_EQ(dueOf(summer).kind, DueKind::CountMites);
    summer.answer.advice.nextLook->what = advice::NextLookAt::Inspector;
    EXPECT_EQ(dueOf(summer).kind, DueKind::CallInspector);
    const auto unknown = dueOf(*answered(colony("A"), {Verdict::CannotSay}));
    EXPECT_EQ(unknown.kind, DueKind::CountBees);
    EXPECT_EQ(unknown.date, colony("A").asOf) << "without it nothing can be said: now";
}

// On real answers: nothing is due before it is asked for, no feed waits for a later visit than its first, syrup and uniting come in time.
TEST(Due, LeavesTimeForWhatIsToBeDone) {
    std::set<advice::Verdict> met;
    for (const auto& answer : invented::demoAnswers()) {
        const auto& advice = answer->answer.advice;
        const auto due = dueOf(*answer);
        if (!due.date) continue;
        SCOPED_TRACE(*answer->record.colony);
        met.insert(advice.verdict);
        EXPECT_GE(*due.date, answer->record.asOf);
        const SeasonDay day = answer->question.winter.seasonDay(*due.date);
        if (advice.verdict == advice::Verdict::Feed)
            for (const auto& visit : advice.feed->visits) EXPECT_LE(*due.date, visit.date);
        if (due.kind == DueKind::Syrup || advice.verdict == advice::Verdict::Harvest)
            EXPECT_LE(day, advice.season.syrupDeadline->day);
        if (advice.verdict == advice::Verdict::Unite)
            EXPECT_EQ(*due.date, advice.unite->by) << "days are still mild enough for the bees to come together";
    }
    EXPECT_GE(met.size(), 3U) << "the demo yard shows several verdicts";
}

TEST(YardListModel, TheYardComesFirstThenTheMostUrgent) {
    Yard yard;
    YardListModel model(&yard);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto leave = add(yard, colony("Apple"));
    const auto feed = add(yard, colony("Pear"));
    yard.takeAnswer(leave, answered(yard.find(leave)->record, {advice::Verdict::Leave}));
    yard.takeAnswer(feed, answered(yard.find(feed)->record, {advice::Verdict::Feed, 9, 20}));
    ASSERT_EQ(model.rowCount(), 3);
    EXPECT_EQ(model.colonyAt(0), ColonyId{});
    EXPECT_EQ(model.index(0).data().toString(), QStringLiteral("Test orchard"));
    EXPECT_EQ(model.colonyAt(1), feed);
    EXPECT_EQ(model.index(1).data(YardListModel::VerdictRole).toString(), QStringLiteral("feed 6 kg sugar"));
    EXPECT_EQ(model.index(1).data(YardListModel::NeedRole).toDouble(), 20);
    model.setOrder(YardOrder::Name);
    EXPECT_EQ(model.colonyAt(1), leave);
}

TEST(YardListModel, ARowFollowsItsColonyWhenTheOrderChanges) {
    Yard yard;
    YardListModel model(&yard);
    const auto first = add(yard, colony("A"));
    const auto second = add(yard, colony("B"));
    const QPersistentModelIndex held(model.index(2));
    yard.takeAnswer(first, answered(yard.find(first)->record, {advice::Verdict::Leave}));
    yard.takeAnswer(second, answered(yard.find(second)->record, {advice::Verdict::Feed}));
    EXPECT_EQ(model.colonyAt(held.row()), second);
    EXPECT_EQ(held.row(), 1);
}

TEST(CombTableModel, TypedSharesGoOutAsAWishAndComeBackWithTheRecords) {
    CombTableModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    auto record = colony("A");
    model.show(record, answered(record), true);
    auto wished = std::get<std::vector<book::CombRecord>>(record.combs);
    model.onEdited([&](std::size_t place, const book::CombRecord& comb) { wished.at(place) = comb; });
    const auto cell = model.index(1, CombTableModel::CappedColumn);
    EXPECT_EQ(cell.data().toString(), QStringLiteral("50 %"));
    ASSERT_TRUE(model.setData(cell, 60.0, Qt::EditRole));
    EXPECT_EQ(wished.at(1).capped, 0.6);
    EXPECT_EQ(cell.data().toString(), QStringLiteral("50 %")) << "nothing changes before the records do";
    record.combs = wished;
    model.show(record, nullptr, false);
    EXPECT_EQ(model.index(1, CombTableModel::CappedColumn).data().toString(), QStringLiteral("60 %"));
    EXPECT_EQ(model.index(1, CombTableModel::HoneyColumn).data().toString(), QStringLiteral("\u2026"))
        << "an old figure is not shown";
}

TEST(CombTableModel, RefusesWhatCannotBe) {
    CombTableModel model;
    model.useLimits(*invented::shipped());
    const auto record = colony("A");
    model.show(record, answered(record), true);
    bool asked = false;
    model.onEdited([&](std::size_t, const book::CombRecord&) { asked = true; });
    EXPECT_FALSE(model.setData(model.index(0, CombTableModel::CappedColumn), 101.0, Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(0, CombTableModel::CappedColumn), QStringLiteral("much"), Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(0, CombTableModel::FacesColumn), 1.5, Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(0, CombTableModel::WidthColumn), 90.0, Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(0, CombTableModel::HoneyColumn), 3.0, Qt::EditRole));
    EXPECT_FALSE(asked);
    EXPECT_TRUE(model.setData(model.index(0, CombTableModel::FedColumn), Qt::Checked, Qt::CheckStateRole));
    EXPECT_TRUE(asked);
}

TEST(CombTableModel, RowsComeAndGoWithTheColony) {
    CombTableModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    const auto record = colony("A");
    model.show(record, answered(record), true);
    EXPECT_EQ(model.rowCount(), 4);
    auto bare = record;
    bare.combs = std::monostate();
    model.show(bare, answered(bare), true);
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(YardPlan, AddsUpWhatTheYardAsksFor) {
    Yard yard;
    const auto addNamed = [&](const char* name, advice::Verdict verdict) {
        const auto id = invented::add(yard, colony(name));
        yard.takeAnswer(id, answered(yard.find(id)->record, {verdict}));
    };
    addNamed("A", advice::Verdict::Feed);
    addNamed("B", advice::Verdict::Feed);
    addNamed("C", advice::Verdict::Harvest);
    addNamed("D", advice::Verdict::Unite);
    addNamed("E", advice::Verdict::Leave);
    add(yard, colony("F"));
    const auto plan = planOf(yard);
    EXPECT_DOUBLE_EQ(plan.totals.sugar.value(), 12) << "a colony that is to be united is not fed on its own";
    EXPECT_DOUBLE_EQ(plan.totals.honey.value(), 3.1);
    EXPECT_EQ(plan.totals.lastSyrupDay, invented::day("2026-10-07"));
    EXPECT_EQ(plan.waiting, 1);
    ASSERT_EQ(plan.jobs.size(), 7U);
    for (std::size_t i = 1; i < plan.jobs.size(); ++i) EXPECT_LE(*plan.jobs[i - 1].date, *plan.jobs[i].date);
    JobTableModel model;
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.show(plan.jobs);
    EXPECT_EQ(model.rowCount(), 7);
    EXPECT_EQ(model.index(0, JobTableModel::ColonyColumn).data().toString(), QStringLiteral("A"));
    EXPECT_EQ(model.index(0, JobTableModel::WhoseColumn).data().toString(), QStringLiteral("advised"));
}

TEST(YardPlan, WhatIsPlannedStandsInPlaceOfWhatIsAdvised) {
    Yard yard;
    const auto id = invented::add(yard, colony("A"));
    yard.takeAnswer(id, answered(yard.find(id)->record, {advice::Verdict::Feed}));
    const auto advised = jobsOf(*yard.find(id));
    ASSERT_TRUE(
        std::all_of(advised.begin(), advised.end(), [](const auto& job) { return job.kind == JobKind::Syrup; }));
    ASSERT_FALSE(advised.empty());
    book::PlannedVisit late{.id = {7},
                            .colony = id,
                            .date = invented::day("2026-09-12"),
                            .what = book::VisitKind::Syrup,
                            .sugar = kilograms(2)};
    book::PlannedVisit next = late, check = late;
    check.id = {9};
    check.date = invented::day("2026-10-01");
    check.what = book::VisitKind::Check;
    check.sugar.reset();
    next.id = {8};
    next.date = invented::day("2026-09-20");
    int told = 0;
    yard.onChange(&yard, {YardChange::Visits}, [&told] { ++told; });
    const YardReading planned{.whole = true,
                              .day = yard.find(id)->record.asOf,
                              .yards = {},
                              .shown = {},
                              .colonies = {{id, yard.find(id)->record}},
                              .visits = {{id, {late, next, check}}},
                              .open = {},
                              .problems = {}};
    YardListModel list(&yard);
    const QAbstractItemModelTester tester(&list, QAbstractItemModelTester::FailureReportingMode::Fatal);
    yard.takeReading(planned);
    EXPECT_EQ(told, 1);
    yard.takeReading(planned);
    EXPECT_EQ(told, 1) << "nothing changed";
    const auto plan = planOf(yard);
    ASSERT_EQ(plan.jobs.size(), 3U) << "the advised syrup gives way";
    EXPECT_EQ(plan.jobs[0].visit, book::PlannedVisitId{7});
    EXPECT_TRUE(plan.jobs[0].past);
    EXPECT_EQ(plan.jobs[0].sugar, kilograms(2));
    EXPECT_EQ(plan.jobs[1].visit, book::PlannedVisitId{8});
    EXPECT_FALSE(plan.jobs[1].past);
    EXPECT_EQ(plan.jobs[2].kind, JobKind::Check);
    JobTableModel model;
    model.show(plan.jobs);
    EXPECT_EQ(model.index(0, JobTableModel::WhoseColumn).data().toString(), QStringLiteral("your plan, past"));
    EXPECT_EQ(model.index(1, JobTableModel::WhoseColumn).data().toString(), QStringLiteral("your plan"));
    EXPECT_EQ(list.index(1).data(YardListModel::DueRole).toString(), QStringLiteral("syrup was due 12 Sept"));
    EXPECT_EQ(jobsOf(*yard.find(id)).size(), 3U) << "on the colony's page as in the yard's plan";
    EXPECT_EQ(plan.totals.sugar, kilograms(4)) << "what is to be bought is what the rows add up to";
    YardReading checked = planned;
    checked.visits = {{id, {check}}};
    yard.takeReading(checked);
    EXPECT_EQ(planOf(yard).jobs.size(), advised.size() + 1) << "what is not planned stays as advised";
}

} // namespace winterlarder::desk
