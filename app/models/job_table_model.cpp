// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/job_table_model.h"

#include "models/words.h"

namespace winterlarder::desk {

QString jobWords(JobKind kind) {
    switch (kind) {
    case JobKind::Syrup: return JobTableModel::tr("feed syrup, in the evening");
    case JobKind::Fondant: return JobTableModel::tr("lay on fondant, touching the cluster");
    case JobKind::Check: return JobTableModel::tr("check: sealed? weigh, feeder off, mouse guard on");
    case JobKind::TakeHoney: return JobTableModel::tr("take honey off, before feeding or treating");
    case JobKind::Unite: return JobTableModel::tr("unite with a healthy neighbour");
    case JobKind::WeighAgain: return JobTableModel::tr("weigh again");
    case JobKind::Weigh: return JobTableModel::tr("weigh again when the last forage is over");
    case JobKind::CountBees: return JobTableModel::tr("count the combs the bees cover");
    case JobKind::MoveCombs: return JobTableModel::tr("hang in combs from a neighbour, before feeding");
    case JobKind::RecordStores: return JobTableModel::tr("look at the stores, or weigh");
    }
    return {};
}

QString jobAmount(const PlannedJob& job) {
    if (job.kind == JobKind::Syrup) return JobTableModel::tr("%1 (%2 of sugar)").arg(words::litres(job.syrup), words::kilograms(job.sugar));
    if (job.kind == JobKind::Fondant) return words::kilograms(job.fondant);
    if (job.kind == JobKind::MoveCombs)
        return (job.combs == 1 ? JobTableModel::tr("one comb (%1) from %2") : JobTableModel::tr("%n combs (%1) from %2", nullptr, job.combs))
            .arg(words::kilograms(job.honey), QString::fromStdString(job.from));
    if (job.kind == JobKind::TakeHoney) return JobTableModel::tr("up to %1").arg(words::kilograms(job.honey));
    return {};
}

QString jobWhose(const PlannedJob& job) {
    if (!job.visit) return JobTableModel::tr("advised");
    return job.past ? JobTableModel::tr("your plan, past") : JobTableModel::tr("your plan");
}

JobTableModel::JobTableModel(QObject* parent) : QAbstractTableModel(parent) {}

void JobTableModel::show(std::vector<PlannedJob> jobs) {
    if (jobs == jobs_ && !jobs_.empty()) {
        emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1)); // the words may be others: another unit
        return;
    }
    beginResetModel();
    jobs_ = std::move(jobs);
    endResetModel();
}

int JobTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(jobs_.size());
}

int JobTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant JobTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& job = jobs_[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case DateColumn: return job.date ? words::dateWithWeekday(*job.date) : tr("any day");
    case ColonyColumn: return job.colony;
    case WhatColumn: return jobWords(job.kind);
    case AmountColumn: return jobAmount(job);
    case WhoseColumn: return jobWhose(job);
    default: return {};
    }
}

QVariant JobTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if ((role != Qt::DisplayRole && role != Qt::ToolTipRole) || orientation != Qt::Horizontal) return {};
    const bool full = role == Qt::ToolTipRole;
    switch (section) {
    case DateColumn: return full ? tr("The day it is due") : tr("day");
    case ColonyColumn: return full ? tr("The colony it is for") : tr("colony");
    case WhatColumn: return full ? tr("What is to be done") : tr("what");
    case AmountColumn: return full ? tr("How much syrup, fondant or honey; in brackets the sugar it takes") : tr("how much");
    case WhoseColumn: return full ? tr("Your plan, or what today's answers advise") : tr("whose");
    default: return {};
    }
}

} // namespace winterlarder::desk
