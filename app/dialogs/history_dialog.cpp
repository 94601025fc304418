// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/history_dialog.h"

#include "theme/card.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace winterlarder::desk {

QTableView* stepTable(QWidget* parent, StepListModel* steps) {
    auto* table = new QTableView(parent);
    table->setModel(steps);
    table->setAccessibleName(HistoryDialog::tr("Every step of the book, newest first"));
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(parent->fontMetrics().height() + 8);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(StepListModel::WhatColumn, QHeaderView::Stretch);
    return table;
}

HistoryDialog::HistoryDialog(OpenBook* book, QWidget* parent) : QDialog(parent), book_(book) {
    setWindowTitle(tr("History"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* lead = quietLabel(this);
    lead->setText(tr(
        "Choose a step to go back to before it. What is taken back stays in this list and can be done again until something else is entered."));
    model_ = new StepListModel(book, this);
    table_ = stepTable(this, model_);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    said_ = quietLabel(this);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    go_ = buttons->addButton(tr("&Go back"), QDialogButtonBox::ActionRole);
    buttons->button(QDialogButtonBox::Close)->setDefault(true);
    auto* down = new QVBoxLayout(this);
    down->addWidget(lead);
    down->addWidget(table_, 1);
    down->addWidget(said_);
    down->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 30);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(go_, &QPushButton::clicked, this, &HistoryDialog::go);
    connect(table_->selectionModel(), &QItemSelectionModel::selectionChanged, this, &HistoryDialog::offer);
    connect(model_, &QAbstractItemModel::modelReset, this, &HistoryDialog::offer);
    connect(book, &OpenBook::stateChanged, model_, &StepListModel::refresh);
    connect(book, &OpenBook::leaving, this, &QDialog::reject); // another book has another history
    offer();
    model_->refresh();
}

// What was taken back stands above what is done; undo turns the newest that is done, redo the lowest that was taken back.
HistoryDialog::Way HistoryDialog::way() const {
    const auto chosen = table_->selectionModel()->selectedRows(); // the current row is one nobody chose, on entering
    const int row = chosen.isEmpty() ? -1 : chosen.front().row();
    const auto& steps = model_->steps();
    if (row < 0 || row >= static_cast<int>(steps.size()) || !book_->writable()) return {};
    Way way;
    const auto wanted = steps[static_cast<std::size_t>(row)].state;
    for (int at = 0; at < static_cast<int>(steps.size()); ++at) {
        const auto state = steps[static_cast<std::size_t>(at)].state;
        if (wanted == book::StepState::Done && state == wanted && at <= row) ++way.undone;
        if (wanted == book::StepState::Undone && state == wanted && at >= row) ++way.redone;
    }
    return way;
}

void HistoryDialog::offer() {
    const auto [undone, redone] = way();
    go_->setEnabled(undone + redone > 0);
    go_->setText(redone > 0 ? tr("Do &again") : tr("&Go back"));
    said_->setText(undone > 0   ? tr("%n steps would be taken back.", nullptr, undone)
                   : redone > 0 ? tr("%n steps would be done again.", nullptr, redone)
                                : tr("Nothing is chosen that can be taken back or done again."));
}

void HistoryDialog::go() {
    const auto [undone, redone] = way();
    go_->setEnabled(false); // till the list is read anew
    for (int step = 0; step < undone; ++step) book_->undo();
    for (int step = 0; step < redone; ++step) book_->redo();
}

} // namespace winterlarder::desk
