// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/layout/widget_faults.h"
#include "plots/figures.h"

#include <QHeaderView>
#include <QTableView>

//! What is wrong with words in tables and on plots.
namespace winterlarder::desk::layout {

constexpr int rowsLookedAt = 200;

//! Width that the words of a cell are painted in.
inline int roomOf(const QTableView& table, const QModelIndex& index) {
    QStyleOptionViewItem option;
    option.initFrom(&table);
    option.features |= QStyleOptionViewItem::HasDisplay;
    option.text = index.data().toString();
    option.rect = QRect(0, 0, table.columnWidth(index.column()), table.rowHeight(index.row()));
    const int margin = table.style()->pixelMetric(QStyle::PM_FocusFrameHMargin, &option, &table) + 1;
    return table.style()->subElementRect(QStyle::SE_ItemViewItemText, &option, &table).width() - 2 * margin;
}

inline QString cellFault(const QTableView& table, const QModelIndex& index) {
    const QString words = index.data().toString();
    if (words.isEmpty() || index.data(Qt::ToolTipRole).toString().contains(words.toHtmlEscaped())) return {};
    const int room = roomOf(table, index);
    const auto metrics = table.fontMetrics();
    for (const auto& word : words.split(QLatin1Char(' ')))
        if (metrics.horizontalAdvance(word) > room) return QStringLiteral("\"%1\" is wider than its column").arg(word);
    const bool cut = table.wordWrap()
                         ? metrics.boundingRect(QRect(0, 0, room, 10000), Qt::TextWordWrap, words).height() >
                               table.rowHeight(index.row())
                         : metrics.horizontalAdvance(words) > room;
    return cut ? QStringLiteral("\"%1\" is cut").arg(words) : QString();
}

//! Columns under their longest word, and cells that are cut where no tool tip says the whole.
inline QStringList badColumns(const QWidget& window) {
    QStringList faults;
    for (const auto* table : window.findChildren<QTableView*>()) {
        if (!table->isVisible()) continue;
        for (int column = 0; column < table->model()->columnCount(); ++column) {
            if (table->isColumnHidden(column)) continue;
            const auto* head = table->horizontalHeader();
            if (head->isVisible() && head->sectionSizeHint(column) > head->sectionSize(column))
                faults << QStringLiteral("%1: the head of column %2 is cut").arg(called(*table)).arg(column);
            for (int row = 0; row < std::min(rowsLookedAt, table->model()->rowCount()); ++row)
                if (const QString fault = cellFault(*table, table->model()->index(row, column)); !fault.isEmpty())
                    faults << called(*table) + QStringLiteral(": ") + fault;
        }
    }
    return faults;
}

struct PlacedWords {
    QRectF at;
    QString words;
};

inline std::vector<PlacedWords> labelsOf(const QCustomPlot& plot) {
    std::vector<PlacedWords> labels;
    for (int i = 0; i < plot.itemCount(); ++i)
        if (const auto* text = qobject_cast<const QCPItemText*>(plot.item(i)); text && text->visible())
            labels.push_back({QRectF(text->topLeft->pixelPosition(), text->bottomRight->pixelPosition()).normalized(),
                              text->text()});
    return labels;
}

inline std::vector<PlacedWords> axisFiguresOf(const QCustomPlot& plot) {
    std::vector<PlacedWords> figures;
    for (const auto* rect : plot.axisRects()) {
        if (!rect->visible()) continue;
        for (const auto* axis : rect->axes())
            for (const auto& figure : figuresOf(*axis))
                figures.push_back({figure, QStringLiteral("a figure of the axis \"%1\"").arg(axis->label())});
    }
    return figures;
}

inline bool meets(const QRectF& rect, QPointF from, QPointF to) {
    constexpr int steps = 24; // of a line between two days: a few pixels each
    for (int i = 0; i <= steps; ++i)
        if (rect.contains(from + (to - from) * i / steps)) return true;
    return false;
}

//! Nothing is drawn to or from a point without a value.
inline bool meetsCurve(const QCPGraph& graph, const QRectF& rect) {
    QPointF before;
    bool inGap = true;
    if (!graph.keyAxis()->axisRect()->visible()) return false;
    for (int i = 0; i < graph.dataCount(); ++i) {
        const auto point = graph.data()->at(i);
        const bool gap = qIsNaN(point->value), afterGap = std::exchange(inGap, gap);
        if (gap) continue;
        const QPointF at = graph.coordsToPixels(point->key, point->value);
        const double half = graph.scatterStyle().isNone() ? 0 : graph.scatterStyle().size() / 2;
        if (rect.adjusted(-half, -half, half, half).contains(at)) return true;
        if (!afterGap && graph.lineStyle() != QCPGraph::lsNone && meets(rect, before, at)) return true;
        before = at;
    }
    return false;
}

//! Labels on curves, on each other or on figures; figures on each other; words out of their plot.
inline QStringList badPlots(const QWidget& window) {
    QStringList faults;
    for (auto* plot : window.findChildren<QCustomPlot*>()) {
        if (!plot->isVisible()) continue;
        const auto labels = labelsOf(*plot);
        auto all = labels;
        for (const auto& figure : axisFiguresOf(*plot)) all.push_back(figure);
        const QString of = called(*plot->parentWidget()) + QStringLiteral(": ");
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (!QRectF(plot->rect()).adjusted(-1, -1, 1, 1).contains(all[i].at))
                faults << of + all[i].words +
                              QStringLiteral(" reaches out of the plot, from %1 to %2 and %3 to %4")
                                  .arg(all[i].at.left())
                                  .arg(all[i].at.right())
                                  .arg(all[i].at.top())
                                  .arg(all[i].at.bottom());
            for (std::size_t j = 0; j < i; ++j)
                if (all[i].at.adjusted(0.5, 0.5, -0.5, -0.5).intersects(all[j].at))
                    faults << of + all[i].words + QStringLiteral(" lies on ") + all[j].words;
        }
        for (const auto& label : labels)
            for (int i = 0; i < plot->graphCount(); ++i)
                if (meetsCurve(*plot->graph(i), label.at)) {
                    faults << of + label.words + QStringLiteral(" lies on a curve");
                    break;
                }
    }
    return faults;
}

} // namespace winterlarder::desk::layout
