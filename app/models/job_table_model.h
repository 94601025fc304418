// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard_plan.h"
#include "text/style.h"

#include <QAbstractTableModel>

namespace winterlarder::desk {

//! Jobs by day as a table; with or without the colony's name and whose they are; what the answer forbids is struck out and grey. Tested with QAbstractItemModelTester: tests/app/models_test.cpp.
class JobTableModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { DateColumn, ColonyColumn, WhatColumn, AmountColumn, WhoseColumn, ColumnCount };
    explicit JobTableModel(QObject* parent = nullptr);

    void show(std::vector<PlannedJob> jobs);
    const std::vector<PlannedJob>& jobs() const { return jobs_; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<PlannedJob> jobs_;
};

QString jobWords(JobKind kind, const text::WordStyle& style); //!< whatever colony it is for
QString jobWords(const PlannedJob& job); //!< with the combs that move, and the colony it is united with
QString jobAmount(const PlannedJob& job);
QString jobWhose(const PlannedJob& job); //!< "your plan", or as advised; and why it is not to be done
QString noFeedWords(report::NoFeed reason);

} // namespace winterlarder::desk
