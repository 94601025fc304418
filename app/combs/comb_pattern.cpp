// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/comb_pattern.h"

#include <QPainter>
#include <QPixmap>
#include <QPixmapCache>

#include <cmath>

namespace winterlarder::desk {

namespace {

struct Inks {
    QColor ground, ink;
};

Inks inksOf(std::optional<Zone> zone, const Colours& c) {
    if (!zone) return {c.empty, c.emptyInk};
    switch (*zone) {
    case Zone::Capped: return {c.capped, c.cappedInk};
    case Zone::Open: return {c.open, c.openInk};
    case Zone::Brood: return {c.brood, c.broodInk};
    case Zone::BeeBread: return {c.beeBread, c.beeBreadInk};
    }
    return {c.empty, c.emptyInk};
}

// Two offset rows of cells, one tile of a honeycomb.
template <class DrawCell> void overCells(double cell, double tall, const DrawCell& draw) {
    for (const double x : {0.0, cell})
        for (const double y : {0.0, 2 * tall}) draw(QPointF(x, y));
    draw(QPointF(cell / 2, tall));
}

void drawMotif(QPainter& painter, std::optional<Zone> zone, const QColor& ink, double cell, double tall) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink);
    if (zone == Zone::Capped) {
        overCells(cell, tall, [&](QPointF at) { painter.drawEllipse(at, cell * 0.16, cell * 0.16); });
    } else if (zone == Zone::Brood) {
        overCells(cell, tall, [&](QPointF at) { painter.drawEllipse(at, cell * 0.30, cell * 0.30); });
    } else {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink, zone ? 1.0 : 0.9));
        if (zone == Zone::Open || zone == Zone::BeeBread)
            for (const double shift : {-1.0, 0.0, 1.0})
                painter.drawLine(QPointF(shift * cell, 2 * tall), QPointF((shift + 1) * cell, 0));
        if (zone == Zone::BeeBread)
            for (const double shift : {-1.0, 0.0, 1.0})
                painter.drawLine(QPointF(shift * cell, 0), QPointF((shift + 1) * cell, 2 * tall));
        if (!zone) overCells(cell, tall, [&](QPointF at) { painter.drawEllipse(at, cell * 0.34, cell * 0.34); });
    }
}

} // namespace

QBrush patternOf(std::optional<Zone> zone, const Colours& colours, double pixelRatio, double cell) {
    const auto inks = inksOf(zone, colours);
    const int width = qMax(3, qRound(cell * pixelRatio));
    const int height = qMax(4, qRound(cell * 1.732 * pixelRatio));
    const QString key = QStringLiteral("winterlarder/zone/%1/%2/%3/%4/%5")
                            .arg(zone ? static_cast<int>(*zone) : -1)
                            .arg(inks.ground.name(), inks.ink.name())
                            .arg(width)
                            .arg(height);
    QPixmap tile;
    if (QPixmapCache::find(key, &tile)) {
        tile.setDevicePixelRatio(pixelRatio);
        return QBrush(tile);
    }
    tile = QPixmap(width, height);
    tile.fill(inks.ground);
    QPainter painter(&tile);
    painter.setRenderHint(QPainter::Antialiasing);
    drawMotif(painter, zone, inks.ink, width, height / 2.0);
    painter.end();
    QPixmapCache::insert(key, tile);
    tile.setDevicePixelRatio(pixelRatio);
    return QBrush(tile);
}

} // namespace winterlarder::desk
