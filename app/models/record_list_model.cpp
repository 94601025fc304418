// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/record_list_model.h"

#include "models/plain_tip.h"
#include "models/words.h"

namespace winterlarder::desk {

RecordListModel::RecordListModel(QObject* parent) : QAbstractTableModel(parent) {}

void RecordListModel::show(std::vector<RecordRow> rows) {
    beginResetModel();
    rows_ = std::move(rows);
    endResetModel();
}

int RecordListModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int RecordListModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant RecordListModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& row = rows_[static_cast<std::size_t>(index.row())];
    if (role == Qt::ToolTipRole) return plainTip(row.details);
    if (role == Qt::AccessibleTextRole) return tr("%1, %2: %3").arg(words::longDate(row.date), row.what, row.details);
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case DateColumn: return words::dateWithYear(row.date);
    case WhatColumn: return row.what;
    case DetailsColumn: return row.details;
    default: return {};
    }
}

QVariant RecordListModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if ((role != Qt::DisplayRole && role != Qt::ToolTipRole) || orientation != Qt::Horizontal) return {};
    const bool full = role == Qt::ToolTipRole;
    switch (section) {
    case DateColumn: return full ? tr("The day it is of") : tr("day");
    case WhatColumn: return full ? tr("What kind of entry it is") : tr("what");
    case DetailsColumn: return full ? tr("What was written down") : tr("details");
    default: return {};
    }
}

} // namespace winterlarder::desk
