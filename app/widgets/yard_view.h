// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/job_table_model.h"
#include "models/yard.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QTableView;

namespace winterlarder::desk {

class AnswerPanel;

//! The yard as a whole: what it asks for, what to buy, what can come off, and every visit by day.
class YardView : public QWidget {
    Q_OBJECT

public:
    explicit YardView(Yard* yard, QWidget* parent = nullptr);

    void refresh();
    QTableView* table() const { return table_; }
    const JobTableModel* model() const { return model_; }

signals:
    void colonyChosen(winterlarder::desk::ColonyId id);

private:
    QWidget* buildTotals();
    void showTotals(const YardPlan& plan);

    Yard* yard_;
    AnswerPanel* answer_;
    QLabel* sugar_;
    QLabel* fondant_;
    QLabel* honey_;
    QLabel* gifts_;
    JobTableModel* model_;
    QTableView* table_;
};

//! The yard's state in a sentence.
QString yardSentence(const YardPlan& plan);
//! What to buy and by when; empty where nothing is fed.
QString yardSmallLine(const YardPlan& plan);
//! Combs that could go from one colony to another.
QString giftWords(const advice::CombGift& gift);

} // namespace winterlarder::desk
