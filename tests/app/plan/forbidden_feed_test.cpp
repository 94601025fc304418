// SPDX-License-Identifier: GPL-3.0-or-later
// A feed that was planned and that the answer of today forbids: struck out with its reason, in no sum, on no sheet, nothing that is due.
#include "app/window_desk.h"
#include "models/job_table_model.h"
#include "models/yard_list_model.h"
#include "models/yard_plan.h"
#include "pages/answer_panel.h"
#include "print/yard_sheet.h"

#include <QFont>
#include <gmock/gmock.h>

namespace winterlarder::desk {

using advice::DecidedBy;
using advice::Verdict;
using report::NoFeed;

namespace {

AnsweredPointer decided(const book::ColonyCase& record, Verdict verdict, DecidedBy by) {
    auto made = std::make_shared<AnsweredColony>(*invented::answered(record, {verdict}));
    made->answer.advice.decidedBy = by;
    return made;
}

book::PlannedVisit syrupOn(const char* day, ColonyId id, std::int64_t number) {
    return {.id = {number},
            .colony = id,
            .date = invented::day(day),
            .what = book::VisitKind::Syrup,
            .sugar = kilograms(3),
            .syrup = litres(3.9)};
}

// A yard of one colony, fed by a plan of two visits.
struct PlannedYard : Yard {
    ColonyId id = invented::add(*this, invented::colony("Russet"));
    PlannedYard(Verdict verdict, DecidedBy by) {
        takeReading({.whole = true,
                     .day = find(id)->record.asOf,
                     .yards = {},
                     .shown = {},
                     .colonies = {{id, find(id)->record}},
                     .visits = {{id, {syrupOn("2026-09-14", id, 1), syrupOn("2026-09-18", id, 2)}}},
                     .open = {},
                     .problems = {}});
        takeAnswer(id, decided(find(id)->record, verdict, by));
    }
    QString dueSaid() { return YardListModel(this).index(1).data(YardListModel::DueRole).toString(); }
    QString paper() { return yardSheet(*this, {}, invented::shipped().get()).html; }
};

std::vector<PlannedJob> ofThePlan(const YardPlan& plan) {
    std::vector<PlannedJob> jobs;
    for (const auto& job : plan.jobs)
        if (job.visit) jobs.push_back(job);
    return jobs;
}

} // namespace

TEST(ForbiddenFeed, IsStruckOutWithItsReasonAndInNoSum) {
    struct Row {
        Verdict verdict;
        DecidedBy by;
        NoFeed reason;
        const char* said;
    };
    const Row rows[] = {
        {Verdict::Leave, DecidedBy::Full, NoFeed::HiveFull, "your plan, not now: the hive is full"},
        {Verdict::Leave, DecidedBy::Disease, NoFeed::Disease, "your plan, not now: signs of disease"},
        {Verdict::Harvest, DecidedBy::Harvest, NoFeed::HoneyComesOff, "your plan, not now: honey is to come off"}};
    for (const auto& row : rows) {
        SCOPED_TRACE(row.said);
        PlannedYard yard(row.verdict, row.by);
        const auto plan = planOf(yard);
        const auto planned = ofThePlan(plan);
        ASSERT_EQ(planned.size(), 2U) << "the keeper sees what became of the plan";
        EXPECT_EQ(planned[0].forbidden, row.reason);
        EXPECT_EQ(plan.totals.sugar, kilograms(0));
        JobTableModel model;
        model.show(planned);
        const auto cell = model.index(0, JobTableModel::WhatColumn);
        EXPECT_TRUE(cell.data(Qt::FontRole).value<QFont>().strikeOut());
        EXPECT_TRUE(cell.data(Qt::ForegroundRole).isValid());
        EXPECT_EQ(model.index(0, JobTableModel::WhoseColumn).data().toString(), QString::fromUtf8(row.said));
        EXPECT_FALSE(model.index(0, JobTableModel::WhoseColumn).data(Qt::FontRole).isValid()) << "the reason is read";
        EXPECT_FALSE(yard.dueSaid().contains(QStringLiteral("syrup"))) << yard.dueSaid().toStdString();
        EXPECT_FALSE(yard.paper().contains(QStringLiteral("syrup"))) << "not on paper";
        const auto jobs = jobsOf(*yard.find(yard.id));
        const auto onSheet = plannedColony(*yard.find(yard.id), jobs, nullptr).tasks;
        ASSERT_TRUE(onSheet);
        for (const auto& task : *onSheet) EXPECT_EQ(task.sugar, kilograms(0)) << "nor on the colony's own sheet";
    }
}

TEST(ForbiddenFeed, AnyOtherAnswerLetsThePlanStand) {
    for (const auto& [verdict, by] : {std::pair(Verdict::Feed, DecidedBy::Feed), {Verdict::Leave, DecidedBy::Enough}}) {
        PlannedYard yard(verdict, by);
        const auto plan = planOf(yard);
        ASSERT_EQ(ofThePlan(plan).size(), 2U);
        EXPECT_FALSE(ofThePlan(plan)[0].forbidden);
        EXPECT_EQ(plan.totals.sugar, kilograms(6));
        EXPECT_EQ(yard.dueSaid(), QStringLiteral("syrup today"));
        JobTableModel model;
        model.show(ofThePlan(plan));
        EXPECT_FALSE(model.index(0, JobTableModel::WhatColumn).data(Qt::FontRole).isValid());
    }
}

using ForbiddenFeedDesk = invented::WindowDesk;

TEST_F(ForbiddenFeedDesk, TheColonysPageDoesNotRemindOfIt) {
    struct SickAdviser : invented::SlowAdviser {
        SickAdviser() : SlowAdviser(std::chrono::milliseconds(1)) {}
        Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int at, std::stop_token stop) const override {
            if (!record.bees.trouble) return SlowAdviser::answer(record, at, stop);
            return decided(record, Verdict::Leave, DecidedBy::Disease);
        }
    };
    window.useAdviser(std::make_shared<SickAdviser>());
    open({invented::colony("A")});
    QTest::mouseClick(window.colonyView()->answer()->planButton(), Qt::LeftButton);
    settle();
    ASSERT_TRUE(small("visits of your plan are still to come"));
    auto look = window.yard()->lookToEdit(entry().id);
    look.bees.trouble = true;
    window.yard()->writeLook(look);
    settle();
    EXPECT_FALSE(small("still to come"));
    EXPECT_TRUE(small("The visits of your plan are not to be made now: signs of disease."));
}

} // namespace winterlarder::desk
