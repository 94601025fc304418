// SPDX-License-Identifier: GPL-3.0-or-later
#include "combs/painted_combs.h"

#include <QPainter>

namespace winterlarder::desk {

namespace {

constexpr int beyond = 4; // px that edges and marks may reach beyond the comb

QPixmap pixmapOf(const QRect& place, double pixelRatio) {
    QPixmap pixmap(place.size() * pixelRatio);
    pixmap.setDevicePixelRatio(pixelRatio);
    pixmap.fill(Qt::transparent);
    return pixmap;
}

} // namespace

void PaintedCombs::paint(QPainter& painter, int comb, const CombAppearance& look, const QRectF& into,
                         const Colours& colours, double cell) {
    const Key key{look, into, colours.dark, cell, painter.device()->devicePixelRatioF()};
    const QRect place = into.toAlignedRect().adjusted(-beyond, -beyond, beyond, beyond);
    auto& [known, pixmap] = painted_[comb];
    if (pixmap.isNull() || known != key) {
        known = key;
        pixmap = pixmapOf(place, key.pixelRatio);
        QPainter onPixmap(&pixmap);
        onPixmap.setFont(painter.font());
        onPixmap.translate(-place.topLeft());
        paintComb(onPixmap, look, into, colours, cell);
    }
    painter.drawPixmap(place.topLeft(), pixmap);
}

} // namespace winterlarder::desk
