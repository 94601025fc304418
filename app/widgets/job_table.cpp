// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/job_table.h"

#include <QHeaderView>
#include <QTableView>

namespace winterlarder::desk {

QTableView* jobTable(QWidget* parent, JobTableModel* model, bool withColony, const QString& name) {
    auto* table = new QTableView(parent);
    table->setModel(model);
    table->setAccessibleName(name);
    table->setShowGrid(false);
    table->setAlternatingRowColors(true);
    table->setWordWrap(false);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(table->fontMetrics().height() + 10);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    if (withColony) table->horizontalHeader()->setStretchLastSection(true);
    else table->horizontalHeader()->setSectionResizeMode(JobTableModel::WhatColumn, QHeaderView::Stretch);
    table->setColumnHidden(JobTableModel::ColonyColumn, !withColony);
    return table;
}

} // namespace winterlarder::desk
