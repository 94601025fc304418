// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/step_list_model.h"

#include <QDialog>

class QLabel;
class QPushButton;
class QTableView;

namespace winterlarder::desk {

//! The steps of a book as a table, one a row.
QTableView* stepTable(QWidget* parent, StepListModel* steps);

//! The steps of the book, newest first: all down to the one chosen are taken back at once, or those taken back are done again up to it.
//! Tested: tests/desk/history_test.cpp.
class HistoryDialog : public QDialog {
    Q_OBJECT

public:
    explicit HistoryDialog(OpenBook* book, QWidget* parent = nullptr);

    QTableView* table() const { return table_; }
    const StepListModel* steps() const { return model_; }
    QPushButton* goButton() const { return go_; }
    QLabel* said() const { return said_; }

private:
    //! How many steps lie between the book as it is and the one chosen; none where it cannot be turned.
    struct Way {
        int undone = 0, redone = 0;
    };
    Way way() const;
    void offer();
    void go();

    OpenBook* book_;
    StepListModel* model_;
    QTableView* table_;
    QLabel* said_;
    QPushButton* go_;
};

} // namespace winterlarder::desk
