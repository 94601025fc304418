// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/zone_legend.h"

#include "combs/comb_pattern.h"
#include "models/words.h"

#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <optional>
#include <vector>

namespace winterlarder::desk {

namespace {

constexpr int swatch = 14;
constexpr int legendGap = 14;
constexpr int near = 4;

struct Entry {
    std::optional<Zone> zone;
    std::optional<CombField> field;
    QString name, key;
    double left = 0, wide = 0, top = 0;
};

int lineHeight(const QFontMetrics& metrics) { return std::max(swatch + 2, metrics.height()) + 6; }

// On as many lines as the width asks for.
std::vector<Entry> entries(const QFontMetrics& metrics, int width) {
    std::vector<Entry> all;
    for (const auto zone : allZones) all.push_back({zone, fieldOf(zone), words::zone(zone), letterOf(fieldOf(zone))});
    all.push_back(
        {std::nullopt, std::nullopt, ZoneLegend::tr("empty"), ZoneLegend::tr("E", "key that empties a comb")});
    double x = near, top = 0;
    for (auto& entry : all) {
        entry.wide =
            swatch + near + metrics.horizontalAdvance(entry.name) + near + metrics.horizontalAdvance(entry.key) + 8;
        if (x > near && x + entry.wide + near + 1 > width) x = near, top += lineHeight(metrics);
        entry.left = x;
        entry.top = top;
        x += entry.wide + legendGap;
    }
    return all;
}

} // namespace

ZoneLegend::ZoneLegend(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Patterns: capped, open nectar, brood, bee bread, empty"));
    setToolTip(tr(
        "Type a letter to pick a zone, then digits: 7 is 70 %, 75 is 75 %. Shift with the letter: all empty cells. Space: as the last comb. "
        "E: empty. F: faces seen. W: through a window. U: built. Or drag an edge."));
    QSizePolicy policy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void ZoneLegend::pick(CombField field) {
    picked_ = field;
    update();
}

QRectF ZoneLegend::placeOf(CombField field) const {
    for (const auto& entry : entries(fontMetrics(), width()))
        if (entry.field == field) return QRectF(entry.left, entry.top, entry.wide, lineHeight(fontMetrics()));
    return {};
}

QSize ZoneLegend::sizeHint() const {
    const auto all = entries(fontMetrics(), QWIDGETSIZE_MAX);
    return {static_cast<int>(all.back().left + all.back().wide) + near + 1, lineHeight(fontMetrics())};
}

QSize ZoneLegend::minimumSizeHint() const {
    double widest = 0;
    for (const auto& entry : entries(fontMetrics(), QWIDGETSIZE_MAX)) widest = std::max(widest, entry.wide);
    return {static_cast<int>(widest) + 2 * near + 1, lineHeight(fontMetrics())};
}

int ZoneLegend::heightForWidth(int width) const {
    return static_cast<int>(entries(fontMetrics(), width).back().top) + lineHeight(fontMetrics());
}

void ZoneLegend::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& colours = coloursOf(*this);
    for (const auto& entry : entries(fontMetrics(), width())) {
        const double middle = entry.top + lineHeight(fontMetrics()) / 2.0;
        const bool chosen = entry.field == picked_;
        const QRectF box(entry.left + 0.5, middle - swatch / 2.0, swatch, swatch);
        painter.setPen(QPen(colours.combEdge, 1));
        painter.setBrush(patternOf(entry.zone, colours, devicePixelRatioF()));
        painter.drawRect(box);
        painter.setPen(chosen ? colours.text : colours.quietText);
        const double wide = fontMetrics().horizontalAdvance(entry.name);
        const QRectF name(box.right() + near, entry.top, wide + 2, lineHeight(fontMetrics()));
        painter.drawText(name, Qt::AlignLeft | Qt::AlignVCenter, entry.name);
        if (chosen)
            painter.drawLine(QPointF(name.left(), name.bottom() - 2.5), QPointF(name.right(), name.bottom() - 2.5));
        const QRectF cap(name.right() + near - 1, middle - fontMetrics().height() / 2.0,
                         fontMetrics().horizontalAdvance(entry.key) + 7, fontMetrics().height());
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colours.cardEdge, 1));
        painter.drawRoundedRect(cap, 3, 3);
        painter.setPen(chosen ? colours.text : colours.quietText);
        painter.drawText(cap, Qt::AlignCenter, entry.key);
    }
}

void ZoneLegend::mousePressEvent(QMouseEvent* event) {
    for (const auto& entry : entries(fontMetrics(), width()))
        if (entry.field && placeOf(*entry.field).adjusted(-near, 0, near, 0).contains(event->position()))
            return emit picked(*entry.field);
}

} // namespace winterlarder::desk
