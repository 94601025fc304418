// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <QPalette>
#include <QString>

class QWidget;

namespace winterlarder::desk {

//! Every colour of the window, by what it is for. Text keeps at least 4.5:1 against what it stands on; nothing is told by
//! colour alone (patterns, dashes and shapes say the same). Tested: tests/app/window_test.cpp.
struct Colours {
    bool dark = false;
    QColor desk, card, cardEdge, hover; //!< behind everything, panels, their edge, under the pointer
    QColor text, quietText, chosen, accent, accentText;
    QColor stores, storesEmpty, need;                                          //!< the yard list's bar and tick
    QColor winter, shortWinter, reserve, reserveFill, grid, mark, band, error; //!< the winter picture
    QColor adults, broodWarmth, broodFood, temperature;
    QColor capped, cappedInk, open, openInk, brood, broodInk, beeBread, beeBreadInk, empty, emptyInk, wood, combEdge;
};

const Colours& lightColours();
const Colours& darkColours();

//! Light or dark as a palette's window colour is.
bool isDark(const QPalette& palette);
//! Says which colours a widget and everything inside it is painted in.
void wearColours(QWidget& widget, const Colours& colours);
//! The colours the widget or the nearest one around it wears (a style sheet may hide its palette); none: as its palette is.
const Colours& coloursOf(const QWidget& widget);

//! Qt's palette in these colours, for everything Qt draws by itself.
QPalette paletteIn(const Colours& colours);
//! Style sheet of the window: cards, chips, tabs, buttons, tables.
QString styleSheetIn(const Colours& colours);

} // namespace winterlarder::desk
