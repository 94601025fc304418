// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/step_list_model.h"
#include "models/yard.h"

#include <QWidget>

class QComboBox;
class QStackedWidget;
class QTableView;

namespace winterlarder::desk {

class PastPage;
class RecordList;

//! Story: everything recorded of the colony, newest first, to be changed and added to; or the history of the book, step by step; or past
//! forecasts against what happened.
class StoryPage : public QWidget {
    Q_OBJECT

public:
    explicit StoryPage(Yard* yard, QWidget* parent = nullptr);

    void show(ColonyId id);
    RecordList* records() const { return records_; }
    QTableView* steps() const { return steps_; }
    PastPage* past() const { return past_; }
    QComboBox* which() const { return which_; }

protected:
    void showEvent(QShowEvent* event) override;

private:
    void buildSteps();
    void fit();

    Yard* yard_;
    ColonyId colony_;
    QComboBox* which_;
    QStackedWidget* stack_;
    RecordList* records_;
    StepListModel* stepModel_;
    QTableView* steps_;
    PastPage* past_;
};

} // namespace winterlarder::desk
