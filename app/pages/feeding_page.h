// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fields/askable_label.h"
#include "models/job_table_model.h"
#include "models/yard.h"

#include <QWidget>

class QPushButton;
class QTableView;

namespace winterlarder::desk {

class RecordList;

//! Feeding: what to mix, on which visits it is given, the last day for it; and what was given.
class FeedingPage : public QWidget {
    Q_OBJECT

public:
    explicit FeedingPage(Yard* yard, QWidget* parent = nullptr);
    void show(ColonyId id);
    RecordList* given() const { return given_; }
    QPushButton* doneButton() const { return done_; }
    std::optional<std::string> ratioAdvised() const; //!< what a feed is proposed with

signals:
    void numberAsked(winterlarder::text::AskedNumber number, QPoint under);

private:
    void refresh();
    QWidget* buildAdvised();
    void buildGiven();
    std::optional<book::PlannedVisit> chosenVisit() const;
    void markDone();
    void skip();
    void showNothing(const QString& why);
    void showPlan(const ColonyEntry& colony);
    void showFollowed(const FollowedWinter& followed);

    Yard* yard_;
    ColonyId colony_;
    AskableLabel* recipe_;
    AskableLabel* why_;
    QLabel* limits_;
    QWidget* visits_;
    RecordList* given_;
    QPushButton* done_;
    QPushButton* skip_;
    JobTableModel* model_;
};

//! The recipe in one line: sugar and water, what it makes, and its ratio by mass.
QString recipeWords(const feeding::FeedingPlan& plan, text::NumberForm form = text::plainly);
//! Why this ratio.
QString ratioWords(const feeding::FeedingPlan& plan);
//! What limits the plan and what to mind, a sentence each.
QStringList limitWords(const feeding::FeedingPlan& plan, const Winter& winter, const text::WordStyle& told);

} // namespace winterlarder::desk
