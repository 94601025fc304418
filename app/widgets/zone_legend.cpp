// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/zone_legend.h"

#include "models/words.h"
#include "widgets/comb_pattern.h"

#include <QPainter>

namespace winterlarder::desk {

namespace {

constexpr int swatch = 14;
constexpr int gap = 14;

struct Entry {
    std::optional<Zone> zone;
    QString name;
};

std::vector<Entry> entries() {
    std::vector<Entry> all;
    for (const auto zone : allZones) all.push_back({zone, words::zone(zone)});
    all.push_back({std::nullopt, ZoneLegend::tr("empty")});
    return all;
}

} // namespace

ZoneLegend::ZoneLegend(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Patterns: capped, open nectar, brood, bee bread, empty"));
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize ZoneLegend::sizeHint() const {
    int width = 0;
    for (const auto& entry : entries()) width += swatch + 5 + fontMetrics().horizontalAdvance(entry.name) + gap;
    return {width, std::max(swatch + 2, fontMetrics().height())};
}

void ZoneLegend::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& colours = coloursOf(*this);
    double x = 0;
    for (const auto& entry : entries()) {
        const QRectF box(x + 0.5, (height() - swatch) / 2.0, swatch, swatch);
        painter.setPen(QPen(colours.combEdge, 1));
        painter.setBrush(patternOf(entry.zone, colours, devicePixelRatioF()));
        painter.drawRect(box);
        painter.setPen(colours.quietText);
        const int wide = fontMetrics().horizontalAdvance(entry.name);
        painter.drawText(QRectF(x + swatch + 5, 0, wide + 2, height()), Qt::AlignLeft | Qt::AlignVCenter, entry.name);
        x += swatch + 5 + wide + gap;
    }
}

} // namespace winterlarder::desk
