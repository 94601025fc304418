// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/record_rows.h"

#include <QAbstractTableModel>

namespace winterlarder::desk {

//! Entries of a colony as a table: day, what, details. Tested with QAbstractItemModelTester: tests/app/fields_test.cpp.
class RecordListModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { DateColumn, WhatColumn, DetailsColumn, ColumnCount };
    explicit RecordListModel(QObject* parent = nullptr);

    void show(std::vector<RecordRow> rows);
    const std::vector<RecordRow>& rows() const { return rows_; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<RecordRow> rows_;
};

} // namespace winterlarder::desk
