// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/colours.h"
#include "widgets/comb_shape.h"

#include <QPainter>

namespace winterlarder::desk {

//! What a comb is drawn with.
struct CombLook {
    hive::Outline outline;
    CombFilling filling;
    bool unseen = false; //!< present but not looked at
    bool chosen = false;
};

//! Paints a comb hanging from its bar into a rectangle (bar included). The rectangle has the proportions of the comb; `cell` is the
//! size of the pattern [px].
void paintComb(QPainter& painter, const CombLook& look, const QRectF& into, const Colours& colours, double cell = 5);

} // namespace winterlarder::desk
