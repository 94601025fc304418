// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/comb_painter.h"

#include <QPixmap>

#include <map>

namespace winterlarder::desk {

//! Combs of a drawing as they were last painted: where the zones of a comb lie takes long to solve, and mostly one comb changes.
class PaintedCombs {
public:
    //! What paintComb would paint, of the comb of that number.
    void paint(QPainter& painter, int comb, const CombAppearance& look, const QRectF& into, const Colours& colours,
               double cell);

private:
    struct Key {
        CombAppearance look;
        QRectF into;
        bool dark = false;
        double cell = 0;
        double pixelRatio = 1;
        bool operator==(const Key&) const = default;
    };
    std::map<int, std::pair<Key, QPixmap>> painted_;
};

} // namespace winterlarder::desk
