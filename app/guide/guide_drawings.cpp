// SPDX-License-Identifier: GPL-3.0-or-later
#include "guide/guide_drawings.h"

#include <array>

namespace winterlarder::desk {

namespace {

struct Sheet {
    double height;
    void (*draw)(SvgDrawing&, const text::GuideReader&);
};

// In the order of text::GuideDrawing.
constexpr std::array sheets{Sheet{190, drawYear},        Sheet{200, drawHeft},     Sheet{215, drawBothSides},
                            Sheet{190, drawEighths},     Sheet{135, drawPartFull}, Sheet{130, drawCellKinds},
                            Sheet{190, drawZones},       Sheet{170, drawSeams},    Sheet{180, drawBrood},
                            Sheet{120, drawThermometer}, Sheet{170, drawOrder},    Sheet{185, drawSyrup},
                            Sheet{215, drawFeeder},      Sheet{200, drawReach},    Sheet{190, drawSnow}};
static_assert(sheets.size() == text::allGuideDrawings.size());

} // namespace

DrawnGuide drawGuide(text::GuideDrawing which, const text::GuideReader& reader, const Colours& colours,
                     const QFont& font) {
    const Sheet& sheet = sheets.at(static_cast<std::size_t>(which));
    SvgDrawing drawing({guideWidth, sheet.height}, colours, font);
    sheet.draw(drawing, reader);
    return drawing.drawn();
}

} // namespace winterlarder::desk
