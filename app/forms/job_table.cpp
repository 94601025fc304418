// SPDX-License-Identifier: GPL-3.0-or-later
#include "forms/job_table.h"

#include <QEvent>
#include <QHash>
#include <QHeaderView>
#include <QStyledItemDelegate>

#include <algorithm>
#include <map>

namespace winterlarder::desk {

namespace {

constexpr int roomAround = 8; // px above and below what goes over several lines
constexpr int leastRow = 26;  // px, to be hit

//! Room above and below what goes over several lines.
class RoomyLines : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        return QStyledItemDelegate::sizeHint(option, index) + QSize(0, roomAround);
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
    if (viewport()->width() != fitted_) fitToWidth();
}

void JobTable::fit() {
    measureWords();
    for (int column = 0; column < JobTableModel::ColumnCount; ++column)
        widths_[static_cast<std::size_t>(column)] = widthsOf(column);
    fitToWidth();
}

// Words are broken in what the style leaves of a cell's width; of no width: they are not.
QSize JobTable::sizeIn(const QString& words, int width) const {
    QStyleOptionViewItem option;
    initViewItemOption(&option);
    option.text = words;
    option.features |= QStyleOptionViewItem::HasDisplay | QStyleOptionViewItem::WrapText;
    option.rect = QRect(0, 0, width, 1);
    if (width > 0) option.rect.setWidth(style()->subElementRect(QStyle::SE_ItemViewItemText, &option, this).width());
    return style()->sizeFromContents(QStyle::CT_ItemViewItem, &option, {}, this) + QSize(0, roomAround);
}

// Words that stand in many rows are told once, and measured once.
void JobTable::measureWords() {
    rows_.assign(static_cast<std::size_t>(jobs_->rowCount()), {});
    for (std::size_t column = 0; column < words_.size(); ++column) {
        QHash<QString, std::size_t> known;
        words_[column].clear();
        for (std::size_t row = 0; row < rows_.size(); ++row) {
            const QString words = jobs_->index(static_cast<int>(row), static_cast<int>(column)).data().toString();
            const auto found = known.constFind(words);
            rows_[row][column] = found == known.constEnd() ? words_[column].size() : *found;
            if (found != known.constEnd()) continue;
            known.insert(words, words_[column].size());
            words_[column].push_back(words);
        }
    }
}

JobTable::Widths JobTable::widthsOf(int column) const {
    QString longest, longestWord;
    int whole = 0, word = 0;
    const auto note = [this](const QString& words, QString& kept, int& wide) {
        const int advance = fontMetrics().horizontalAdvance(words);
        if (advance <= wide) return;
        wide = advance;
        kept = words;
    };
    for (const auto& words : words_[static_cast<std::size_t>(column)]) {
        note(words, longest, whole);
        for (const auto& each : words.split(QLatin1Char(' '))) note(each, longestWord, word);
    }
    const int head = horizontalHeader()->sectionSizeHint(column);
    return {std::max(head, sizeIn(longest, 0).width()), std::max(head, sizeIn(longestWord, 0).width())};
}

// What to do has the room that is left, or a third; then the others are broken into lines, the widest first, as far as
// their longest words let them be.
void JobTable::fitToWidth() {
    fitted_ = viewport()->width();
    std::map<int, Widths> others;
    int taken = 0;
    for (const int column : {JobTableModel::DateColumn, JobTableModel::ColonyColumn, JobTableModel::AmountColumn,
                             JobTableModel::WhoseColumn}) {
        if (isColumnHidden(column)) continue;
        taken += (others[column] = widths_[static_cast<std::size_t>(column)]).whole;
    }
    const auto& what = widths_[JobTableModel::WhatColumn];
    const int wanted = std::min(what.whole, std::max(what.least, fitted_ / 3));
    while (fitted_ - taken < wanted) {
        auto widest = std::max_element(others.begin(), others.end(), [](const auto& a, const auto& b) {
            return a.second.whole - a.second.least < b.second.whole - b.second.least;
        });
        const int give =
            std::min(widest->second.whole - widest->second.least, std::max(1, (wanted - fitted_ + taken + 1) / 2));
        if (give <= 0) break;
        widest->second.whole -= give;
        taken -= give;
    }
    for (const auto& [column, widths] : others) setColumnWidth(column, widths.whole);
    setColumnWidth(JobTableModel::WhatColumn, std::max(what.least, fitted_ - taken));
    fitHeights();
}

// Each row is as tall as its words need.
void JobTable::fitHeights() {
    std::array<std::vector<int>, JobTableModel::ColumnCount> tall;
    for (std::size_t column = 0; column < tall.size(); ++column)
        for (const auto& words : words_[column])
            tall[column].push_back(isColumnHidden(static_cast<int>(column))
                                       ? 0
                                       : sizeIn(words, columnWidth(static_cast<int>(column))).height());
    const int least = std::max(leastRow, fontMetrics().height() + roomAround);
    for (std::size_t row = 0; row < rows_.size(); ++row) {
        int height = least;
        for (std::size_t column = 0; column < tall.size(); ++column)
            height = std::max(height, tall[column][rows_[row][column]]);
        if (rowHeight(static_cast<int>(row)) != height) setRowHeight(static_cast<int>(row), height);
    }
}

} // namespace winterlarder::desk
