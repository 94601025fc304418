// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/job_table_model.h"
#include "models/yard.h"

#include <QWidget>

class QLabel;
class QTableView;

namespace winterlarder::desk {

//! Feeding: what to mix, on which visits it is given, and the last day for it.
class FeedingPage : public QWidget {
    Q_OBJECT

public:
    explicit FeedingPage(Yard* yard, QWidget* parent = nullptr);
    void show(ColonyId id);

private:
    void refresh();
    void showNothing(const QString& why);
    void showPlan(const ColonyEntry& colony);

    Yard* yard_;
    ColonyId colony_;
    QLabel* recipe_;
    QLabel* why_;
    QLabel* limits_;
    QWidget* visits_;
    JobTableModel* model_;
};

//! The recipe in one line: sugar and water, what it makes, and its ratio by mass.
QString recipeWords(const feeding::FeedingPlan& plan);
//! Why this ratio.
QString ratioWords(const feeding::FeedingPlan& plan);
//! What limits the plan and what to mind, a sentence each.
QStringList limitWords(const feeding::FeedingPlan& plan, const Winter& winter);

} // namespace winterlarder::desk
