// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/job_table_model.h"

#include "models/words.h"
#include "text/words.h"

#include <QFont>
#include <QGuiApplication>
#include <QPalette>

namespace winterlarder::desk {

QString jobWords(JobKind kind, const text::WordStyle& style) {
    switch (kind) {
    case JobKind::Syrup: return JobTableModel::tr("feed syrup, in the evening");
    case JobKind::Fondant: return JobTableModel::tr("lay on fondant, touching the cluster");
    case JobKind::Check: return JobTableModel::tr("check: sealed? weigh, feeder off, mouse guard on");
    case JobKind::TakeHoney: return JobTableModel::tr("take honey off, before feeding or treating");
    case JobKind::Unite: return JobTableModel::tr("unite with a healthy neighbour");
    case JobKind::WeighAgain: return JobTableModel::tr("weigh again, both sides, without opening");
    case JobKind::CountMites: return JobTableModel::tr("count the mites, and look at the stores again");
    case JobKind::CallInspector: return JobTableModel::tr("signs of disease: call the bee inspector, move nothing");
    case JobKind::CountBees: return worded(JobTableModel::tr("count the %{combs} the bees cover"), style);
    case JobKind::MoveCombs: return worded(JobTableModel::tr("hang in %{combs} from a neighbour"), style);
    case JobKind::RecordStores: return JobTableModel::tr("look at the stores, or weigh");
    case JobKind::HangInEggs:
        return worded(JobTableModel::tr("hang in a %{comb} with eggs from another colony"), style);
    case JobKind::SeeQueenCells:
        return worded(JobTableModel::tr("look for queen cells on the %{comb} with eggs"), style);
    }
    return {};
}

namespace {

// "hang in 2 full combs from Pear (its middle box, combs 1 and 2 from the left); to give back: combs 1 and 10 from the left"
QString exchangeWords(const CombExchange& exchange, const text::WordStyle& style) {
    const auto& gift = exchange.gift;
    const auto combs = static_cast<int>(gift.combs.size());
    const QString in =
        worded(combs == 1 ? JobTableModel::tr("hang in one full %{comb} from %1 (its %2)")
                          : JobTableModel::tr("hang in %n full %{combs} from %1 (its %2)", nullptr, combs),
               style)
            .arg(QString::fromStdString(gift.from),
                 text::combPlaces(gift.places, static_cast<std::size_t>(gift.boxes), style));
    if (exchange.back.empty()) return in;
    return JobTableModel::tr("%1; to give back: %2")
        .arg(in, text::combPlaces(exchange.back, static_cast<std::size_t>(exchange.boxes), style));
}

} // namespace

QString jobWords(const PlannedJob& job) {
    const auto style = words::styleOf(job.framed);
    if (job.exchange) return exchangeWords(*job.exchange, style);
    if (!job.partner.isEmpty())
        return JobTableModel::tr("unite it with %1, at the latest on this day, in the evening, newspaper between")
            .arg(job.partner);
    return jobWords(job.kind, style);
}

QString jobAmount(const PlannedJob& job) {
    if (job.kind == JobKind::Syrup)
        return JobTableModel::tr("%1 (%2 of sugar)")
            .arg(text::amount(job.syrup, words::style()), words::amount(job.sugar));
    if (job.kind == JobKind::Fondant) return words::amount(job.fondant);
    if (job.kind == JobKind::MoveCombs) return words::amount(job.honey);
    if (job.kind == JobKind::TakeHoney) return JobTableModel::tr("up to %1").arg(words::amount(job.honey));
    return {};
}

QString noFeedWords(report::NoFeed reason) {
    switch (reason) {
    case report::NoFeed::HiveFull: return JobTableModel::tr("the hive is full");
    case report::NoFeed::HoneyComesOff: return JobTableModel::tr("honey is to come off");
    case report::NoFeed::Disease: return JobTableModel::tr("signs of disease");
    case report::NoFeed::NoBees: return JobTableModel::tr("no bees are left");
    }
    return {};
}

QString jobWhose(const PlannedJob& job) {
    if (!job.visit) return JobTableModel::tr("advised");
    if (job.forbidden) return JobTableModel::tr("your plan, not now: %1").arg(noFeedWords(*job.forbidden));
    return job.past ? JobTableModel::tr("your plan, past") : JobTableModel::tr("your plan");
}

namespace {

QFont struckOut() {
    QFont font;
    font.setStrikeOut(true);
    return font;
}

} // namespace

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

int JobTableModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant JobTableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& job = jobs_[static_cast<std::size_t>(index.row())];
    if (role == Qt::TextAlignmentRole) return QVariant(Qt::AlignLeft | Qt::AlignVCenter);
    if (job.forbidden && index.column() != WhoseColumn && role == Qt::FontRole) return struckOut();
    if (job.forbidden && role == Qt::ForegroundRole)
        return QGuiApplication::palette().brush(QPalette::Disabled, QPalette::Text);
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case DateColumn: return job.date ? words::dateWithWeekday(*job.date) : tr("any day");
    case ColonyColumn: return job.colony;
    case WhatColumn: return jobWords(job);
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
    case AmountColumn:
        return full ? tr("How much syrup, fondant or honey; in brackets the sugar it takes") : tr("how much");
    case WhoseColumn: return full ? tr("Your plan, or what today's answers advise") : tr("whose");
    default: return {};
    }
}

} // namespace winterlarder::desk
