// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "guide/svg_drawing.h"
#include "text/guide/guide.h"

namespace winterlarder::desk {

//! A drawing of the guide in the colours given, with words in the font's family and the reader's numbers, worked out as those of its page
//! are. Tested: tests/guide/drawings_test.cpp.
DrawnGuide drawGuide(text::GuideDrawing which, const text::GuideReader& reader, const Colours& colours,
                     const QFont& font);

// Each on a drawing that is as wide as guideWidth.
inline constexpr double guideWidth = 560;
void drawYear(SvgDrawing& drawing, const text::GuideReader& reader);
void drawHeft(SvgDrawing& drawing, const text::GuideReader& reader);
void drawBothSides(SvgDrawing& drawing, const text::GuideReader& reader);
void drawEighths(SvgDrawing& drawing, const text::GuideReader& reader);
void drawPartFull(SvgDrawing& drawing, const text::GuideReader& reader);
void drawCellKinds(SvgDrawing& drawing, const text::GuideReader& reader);
void drawZones(SvgDrawing& drawing, const text::GuideReader& reader);
void drawSeams(SvgDrawing& drawing, const text::GuideReader& reader);
void drawBrood(SvgDrawing& drawing, const text::GuideReader& reader);
void drawThermometer(SvgDrawing& drawing, const text::GuideReader& reader);
void drawOrder(SvgDrawing& drawing, const text::GuideReader& reader);
void drawSyrup(SvgDrawing& drawing, const text::GuideReader& reader);
void drawFeeder(SvgDrawing& drawing, const text::GuideReader& reader);
void drawReach(SvgDrawing& drawing, const text::GuideReader& reader);
void drawSnow(SvgDrawing& drawing, const text::GuideReader& reader);

} // namespace winterlarder::desk
