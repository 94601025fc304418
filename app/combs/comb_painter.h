// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "combs/comb_shape.h"
#include "theme/colours.h"

#include <QPainter>

namespace winterlarder::desk {

//! What a comb is drawn with.
struct CombAppearance {
    hive::Outline outline;
    CombFilling filling;
    Seen seen = Seen::BothFaces;
    bool measured = false;
    bool chosen = false;
    std::optional<CombEdge> grip; //!< this edge is under the pointer or being dragged
    bool operator==(const CombAppearance&) const = default;
};

//! Where the face of a comb lies in the rectangle it is painted into: below its bar, a little narrower.
QRectF faceIn(const QRectF& into);

//! Paints a comb hanging from its bar into a rectangle (bar included). The rectangle has the proportions of the comb; `cell` is the
//! size of the pattern [px]. How it was seen is told by marks on the bar: a disc for each face, a ring for a face not seen, a
//! square for a window, a lens for a photograph.
void paintComb(QPainter& painter, const CombAppearance& look, const QRectF& into, const Colours& colours,
               double cell = 5);

} // namespace winterlarder::desk
