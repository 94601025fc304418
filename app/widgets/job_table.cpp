// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/job_table.h"

#include <QHeaderView>
#include <QStyledItemDelegate>
#include <QTableView>

namespace winterlarder::desk {

namespace {

//! Room above and below what goes over several lines.
class RoomyLines : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(0, 8);
    }
};

} // namespace

QTableView* jobTable(QWidget* parent, JobTableModel* model, bool withColony, const QString& name) {
    auto* table = new QTableView(parent);
    table->setModel(model);
    table->setItemDelegate(new RoomyLines(table));
    table->setAccessibleName(name);
    table->setShowGrid(false);
    table->setAlternatingRowColors(true);
    table->setWordWrap(true);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 10);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    // What does not fit into its line goes on in the next: nothing is cut.
    table->horizontalHeader()->setSectionResizeMode(JobTableModel::WhatColumn, QHeaderView::Stretch);
    table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->verticalHeader()->setMinimumSectionSize(table->fontMetrics().height() + 10);
    table->setColumnHidden(JobTableModel::ColonyColumn, !withColony);
    return table;
}

} // namespace winterlarder::desk
