// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <QWidget>

#include <functional>

class QCheckBox;
class QLabel;
class QPushButton;
class QTableView;

namespace winterlarder::desk {

class PastForecastModel;

//! Past forecasts against what happened, what was learned from them, and whether that is used: switched on and off, begun anew.
//! Tested: tests/app/following_test.cpp.
class PastPage : public QWidget {
    Q_OBJECT

public:
    explicit PastPage(Yard* yard, QWidget* parent = nullptr);
    void refresh();
    QString said() const;
    QTableView* table() const { return table_; }

protected:
    void changeEvent(QEvent* event) override; //!< in other units it says the same

private:
    void change(const std::function<void(book::Yard&)>& change);
    QStringList lines() const;

    Yard* yard_;
    bool showing_ = false;
    QLabel* said_;
    QCheckBox* learn_;
    QLabel* since_;
    QPushButton* forget_;
    QPushButton* remember_;
    PastForecastModel* model_;
    QTableView* table_;
};

} // namespace winterlarder::desk
