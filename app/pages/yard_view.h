// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/job_table_model.h"
#include "models/yard.h"

#include <QElapsedTimer>
#include <QWidget>

class QCheckBox;
class QGridLayout;
class QLabel;
class QPushButton;
class QTabWidget;
class QTableView;
class QTimer;

namespace winterlarder::desk {

class AnswerPanel;
class PlacePage;

//! The pages of a yard, in their order.
enum class YardPage { Plan, Place };

//! The yard as a whole: what it asks for, what to buy, what can come off, and every visit by day.
class YardView : public QWidget {
    Q_OBJECT

public:
    explicit YardView(Yard* yard, QWidget* parent = nullptr);

    void refresh(); //!< at once
    QTableView* table() const { return table_; }
    const JobTableModel* model() const { return model_; }

    QTabWidget* pages() const { return pages_; }
    void showPage(YardPage page);
    PlacePage* place() const { return place_; }

signals:
    void colonyWanted(); //!< a new one
    void colonyChosen(winterlarder::desk::ColonyId id);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refreshSoon();
    QWidget* buildTotals();
    void buildMovingSwitch();
    void nameMoving();
    QWidget* buildEmpty();
    QWidget* buildPlan();
    QWidget* buildVisitButtons();
    void showTotals(const YardPlan& plan);
    void fitVisitButtons();
    const PlannedJob* chosenVisit() const; //!< nothing where the row chosen is only advised

    Yard* yard_;
    AnswerPanel* answer_;
    QLabel* sugar_;
    QLabel* sugarElse_; //!< in how many bags it comes and what it costs
    QLabel* fondant_;
    QLabel* honey_;
    QLabel* gifts_;
    QLabel* giftsHead_;
    QCheckBox* moving_; //!< whether combs may move between hives
    JobTableModel* model_;
    QTableView* table_;
    QTabWidget* pages_;
    PlacePage* place_;
    QWidget* full_;
    QWidget* empty_;
    QPushButton* addColony_;
    QPushButton* made_;
    QPushButton* skip_;
    QTimer* soon_;
    QElapsedTimer refreshed_;
    bool stale_ = true; //!< something changed since the last refresh
};

} // namespace winterlarder::desk
