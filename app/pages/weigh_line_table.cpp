// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/weigh_line_table.h"

#include "models/words.h"

#include <QHeaderView>

namespace winterlarder::desk {

namespace {

QTableWidgetItem* cell(const QString& words, Qt::Alignment side) {
    auto* item = new QTableWidgetItem(words);
    item->setTextAlignment(side | Qt::AlignVCenter);
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    return item;
}

} // namespace

WeighLineTable::WeighLineTable(QWidget* parent) : QTableWidget(0, 2, parent) {
    setAccessibleName(tr("Weights to expect, hive and all"));
    setHorizontalHeaderLabels({tr("day"), tr("weight to expect, hive and all (80 of 100 between)")});
    verticalHeader()->hide();
    horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    horizontalHeader()->setStretchLastSection(true);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setMinimumHeight(6 * fontMetrics().height());
}

void WeighLineTable::show(const std::vector<advice::WeighPoint>& line) {
    setVisible(!line.empty());
    setRowCount(static_cast<int>(line.size()));
    for (int row = 0; row < rowCount(); ++row) {
        const auto& point = line[static_cast<std::size_t>(row)];
        setItem(row, 0, cell(words::date(point.date), Qt::AlignLeft));
        setItem(row, 1, cell(text::amount(point.gross, words::style()), Qt::AlignLeft));
    }
}

} // namespace winterlarder::desk
