// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/chosen_row.h"

#include <QItemSelectionModel>
#include <QKeyEvent>

namespace winterlarder::desk {

namespace {

//! Arrow keys of a table in which no row is chosen.
class FirstRowChosen : public QObject {
public:
    explicit FirstRowChosen(QTableView* table) : QObject(table), table_(table) { table->installEventFilter(this); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (watched != table_ || event->type() != QEvent::KeyPress || chosenRow(*table_) >= 0) return false;
        const auto key = static_cast<QKeyEvent*>(event)->key();
        if (key != Qt::Key_Up && key != Qt::Key_Down) return false;
        if (!table_->currentIndex().isValid()) return false;
        table_->setCurrentIndex(table_->currentIndex());
        return true;
    }

private:
    QTableView* table_;
};

} // namespace

int chosenRow(const QTableView& table) {
    const auto* selection = table.selectionModel();
    const auto rows = selection ? selection->selectedRows() : QModelIndexList();
    return rows.isEmpty() ? -1 : rows.front().row();
}

void onChosenRow(QTableView* table, QObject* context, const std::function<void()>& fit) {
    new FirstRowChosen(table);
    QObject::connect(table->selectionModel(), &QItemSelectionModel::selectionChanged, context, fit);
    QObject::connect(table->model(), &QAbstractItemModel::modelReset, context, fit, Qt::QueuedConnection);
    fit();
}

} // namespace winterlarder::desk
