// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/job_table.h"

#include <QEvent>
#include <QHeaderView>
#include <QStyledItemDelegate>

#include <set>
#include <tuple>

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

JobTable::JobTable(QWidget* parent, JobTableModel* model, bool withColony, const QString& name)
    : QTableView(parent), jobs_(model) {
    setModel(model);
    setItemDelegate(new RoomyLines(this));
    setAccessibleName(name);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setWordWrap(true);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSectionResizeMode(JobTableModel::WhatColumn, QHeaderView::Stretch);
    for (const int column : {JobTableModel::ColonyColumn, JobTableModel::WhoseColumn})
        setColumnHidden(column, !withColony);
    connect(model, &QAbstractItemModel::modelReset, this, &JobTable::fit);
    connect(model, &QAbstractItemModel::dataChanged, this, &JobTable::fit);
    fit();
}

void JobTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit();
}

void JobTable::updateGeometries() {
    QTableView::updateGeometries();
    if (columnWidth(JobTableModel::WhatColumn) != fitted_) fitHeights();
}

void JobTable::fit() {
    fitWidths();
    fitHeights();
}

QSize JobTable::sizeIn(const QModelIndex& index, int width) const {
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    option.rect = QRect(0, 0, width, 1); // of no width: not broken into lines
    return itemDelegate()->sizeHint(option, index);
}

// Of rows that say the same in the column one is measured.
template <class Said> void JobTable::fitWidth(JobTableModel::Column column, Said said) {
    std::set<decltype(said(jobs_->jobs().front()))> measured;
    QModelIndex widest;
    int advance = 0;
    for (int row = 0; row < jobs_->rowCount(); ++row) {
        if (!measured.insert(said(jobs_->jobs()[static_cast<std::size_t>(row)])).second) continue;
        const auto index = jobs_->index(row, column);
        const int wide = fontMetrics().horizontalAdvance(index.data().toString());
        if (wide > advance) widest = index;
        advance = std::max(advance, wide);
    }
    const int words = widest.isValid() ? sizeIn(widest, 0).width() : 0;
    setColumnWidth(column, std::max(words, horizontalHeader()->sectionSizeHint(column)));
}

void JobTable::fitWidths() {
    fitWidth(JobTableModel::DateColumn, [](const PlannedJob& job) { return job.date; });
    fitWidth(JobTableModel::ColonyColumn, [](const PlannedJob& job) { return job.id; });
    fitWidth(JobTableModel::AmountColumn, [](const PlannedJob& job) {
        return std::tuple(job.kind, job.sugar, job.syrup, job.fondant, job.honey, job.combs, job.from);
    });
    fitWidth(JobTableModel::WhoseColumn,
             [](const PlannedJob& job) { return std::tuple(job.visit.has_value(), job.past, job.forbidden); });
}

// All rows are as tall as the tallest words need, so that none need be measured to know where another is.
void JobTable::fitHeights() {
    fitted_ = columnWidth(JobTableModel::WhatColumn);
    int tallest = fontMetrics().height() + 10;
    std::set<JobKind> measured;
    for (int row = 0; row < jobs_->rowCount(); ++row)
        if (measured.insert(jobs_->jobs()[static_cast<std::size_t>(row)].kind).second)
            tallest = std::max(tallest, sizeIn(jobs_->index(row, JobTableModel::WhatColumn), fitted_).height());
    verticalHeader()->setDefaultSectionSize(tallest);
}

} // namespace winterlarder::desk
