// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/job_table.h"

#include "app/invented.h"

#include <QTest>
#include <gtest/gtest.h>

namespace winterlarder::desk {

namespace {

PlannedJob job(JobKind kind, const char* date, const char* colony, double sugarKg = 0) {
    PlannedJob made;
    made.kind = kind;
    made.date = invented::day(date);
    made.sugar = kilograms(sugarKg);
    made.syrup = litres(1.3 * sugarKg);
    made.id = {sugarKg > 0 ? 1 : 2};
    made.colony = QString::fromUtf8(colony);
    return made;
}

void expectNothingCut(const JobTable& table, const JobTableModel& model) {
    QTest::qWait(30); // columns stretch a little later
    for (int row = 0; row < model.rowCount(); ++row)
        for (int column = 0; column < model.columnCount(); ++column) {
            const QString said = model.index(row, column).data().toString();
            const QRect room(0, 0, table.columnWidth(column), 10000);
            EXPECT_LE(table.fontMetrics().boundingRect(room, Qt::TextWordWrap, said).height(), table.rowHeight(row))
                << said.toStdString();
            for (const auto& word : said.split(QLatin1Char(' ')))
                EXPECT_LE(table.fontMetrics().horizontalAdvance(word), table.columnWidth(column)) << said.toStdString();
        }
}

} // namespace

TEST(JobTable, NothingIsCutHoweverNarrowItIs) {
    JobTableModel model;
    JobTable table(nullptr, &model, true, QStringLiteral("Jobs"));
    table.resize(1200, 300);
    table.show();
    model.show({job(JobKind::Syrup, "2026-09-14", "A", 3),
                job(JobKind::Check, "2026-09-30", "The old hive under the walnut at the end of the long meadow"),
                job(JobKind::Syrup, "2026-09-21", "B", 123.5)});
    expectNothingCut(table, model);
    const int low = table.rowHeight(0), wide = table.columnWidth(JobTableModel::ColonyColumn);
    table.resize(700, 300);
    expectNothingCut(table, model);
    EXPECT_GT(table.rowHeight(1), low) << "the longest words go on in a second line";
    EXPECT_LT(table.rowHeight(0), table.rowHeight(1)) << "and the other rows stay as low as their own words let them";
    model.show({job(JobKind::Syrup, "2026-09-14", "A", 3)});
    expectNothingCut(table, model);
    EXPECT_LT(table.columnWidth(JobTableModel::ColonyColumn), wide);
}

TEST(JobTable, TheSameJobsKeepTheChosenRow) {
    JobTableModel model;
    JobTable table(nullptr, &model, true, QStringLiteral("Jobs"));
    const std::vector jobs{job(JobKind::Syrup, "2026-09-14", "A", 3), job(JobKind::Check, "2026-09-30", "B")};
    model.show(jobs);
    table.selectRow(1);
    model.show(jobs);
    EXPECT_EQ(table.currentIndex().row(), 1);
    model.show({jobs[0]});
    EXPECT_FALSE(table.currentIndex().isValid());
}

} // namespace winterlarder::desk
