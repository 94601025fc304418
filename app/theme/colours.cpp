// SPDX-License-Identifier: GPL-3.0-or-later
#include "theme/colours.h"

#include <QVariant>
#include <QWidget>

#include <cmath>

namespace winterlarder::desk {

namespace {

constexpr auto wornProperty = "winterlarderDark";

Colours makeLight() {
    Colours c;
    c.dark = false;
    c.desk = "#f3f1ea";
    c.card = "#fffefb";
    c.cardEdge = "#d9d4c7";
    c.hover = "#f0ede3";
    c.text = "#26282b";
    c.quietText = "#5d6066";
    c.chosen = "#e6ecf2";
    c.accent = "#33597d";
    c.accentText = "#ffffff";
    c.stores = "#d2902b";
    c.storesEmpty = "#e7e2d5";
    c.need = "#26282b";
    c.winter = "#4c7894";
    c.shortWinter = "#b0402a";
    c.reserve = "#a5391f";
    c.reserveFill = "#f7e6df";
    c.grid = "#e9e5da";
    c.mark = "#8b8d90";
    c.band = "#cfccc1";
    c.error = "#26282b";
    c.adults = "#a9bccb";
    c.broodWarmth = "#c58a5c";
    c.broodFood = "#7c8a45";
    c.temperature = "#5b4a8a";
    c.capped = "#dfa03a";
    c.cappedInk = "#b97a19";
    c.open = "#f4d78f";
    c.openInk = "#c39a35";
    c.brood = "#a9745b";
    c.broodInk = "#7c4a34";
    c.beeBread = "#8d9a4e";
    c.beeBreadInk = "#5f6b2a";
    c.empty = "#f6f0de";
    c.emptyInk = "#e2d8bd";
    c.wood = "#c3ad8a";
    c.combEdge = "#b59e78";
    return c;
}

Colours makeDark() {
    Colours c;
    c.dark = true;
    c.desk = "#1f2226";
    c.card = "#282c31";
    c.cardEdge = "#3d434a";
    c.hover = "#30353b";
    c.text = "#eceae4";
    c.quietText = "#b0b3b6";
    c.chosen = "#35424f";
    c.accent = "#8fb6d9";
    c.accentText = "#15202a";
    c.stores = "#d99a3a";
    c.storesEmpty = "#444a50";
    c.need = "#f4f2ec";
    c.winter = "#7fadc9";
    c.shortWinter = "#f0866a";
    c.reserve = "#f0866a";
    c.reserveFill = "#42302d";
    c.grid = "#363b41";
    c.mark = "#8f9499";
    c.band = "#4a5057";
    c.error = "#eceae4";
    c.adults = "#5f7486";
    c.broodWarmth = "#b07a50";
    c.broodFood = "#87964c";
    c.temperature = "#b9a7ea";
    c.capped = "#c98d30";
    c.cappedInk = "#8f5f16";
    c.open = "#cdb069";
    c.openInk = "#8a6d24";
    c.brood = "#94614a";
    c.broodInk = "#5d3423";
    c.beeBread = "#7b8843";
    c.beeBreadInk = "#495321";
    c.empty = "#4a4636";
    c.emptyInk = "#5d5844";
    c.wood = "#7d6c50";
    c.combEdge = "#938260";
    return c;
}

double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

constexpr auto sheet = R"(
QMainWindow, QDialog, #desk { background: %desk; }
QLabel { background: transparent; color: %text; }
#yardPane { background: %card; border: none; border-right: 1px solid %edge; }
#yardPane QListView { background: transparent; border: none; outline: none; }
QFrame[card="true"] { background: %card; border: 1px solid %edge; border-radius: 7px; }
#banner { background: %chosen; border: none; border-bottom: 1px solid %edge; }
#notices { background: %chosen; border: none; border-top: 1px solid %accent; }
QLabel[quiet="true"] { color: %quiet; }
QLabel[fault="true"] { color: %fault; font-weight: bold; }
QLineEdit[faulty="true"] { border: 2px solid %fault; }
QPushButton, QToolButton { background: %card; color: %text; border: 1px solid %edge; border-radius: 6px; padding: 4px 12px; }
QPushButton:hover, QToolButton:hover { background: %hover; }
QPushButton:focus, QToolButton:focus { border: 2px solid %accent; padding: 3px 11px; }
QPushButton:checked, QToolButton:checked { background: %chosen; border-color: %accent; }
QPushButton:disabled, QToolButton:disabled { color: %quiet; background: transparent; }
QPushButton[accent="true"] { background: %accent; color: %inkOnAccent; border-color: %accent; }
QPushButton[accent="true"]:focus { border: 2px solid %text; }
QPushButton[accent="true"]:disabled { background: transparent; color: %quiet; }
QPushButton[chip="true"], QToolButton[chip="true"] { border-radius: 9px; padding: 1px 11px; min-height: 20px; }
QPushButton[chip="true"]:focus, QToolButton[chip="true"]:focus { padding: 0px 10px; }
QToolButton[calendar="true"] { padding: 1px 3px; border-radius: 4px; min-height: 20px; }
QToolButton[calendar="true"]:focus { padding: 0px 2px; }
QToolButton[chip="true"] { padding-right: 20px; }
QToolButton[chip="true"]:focus { padding-right: 19px; }
QFileDialog QToolButton, QTabBar QToolButton, QPageSetupDialog QToolButton { padding: 2px; border-radius: 4px; }
QFileDialog QToolButton:focus, QTabBar QToolButton:focus { padding: 1px; }
QCheckBox, QRadioButton, QLineEdit, QComboBox, QAbstractSpinBox, QSlider { min-height: 24px; }
QPlainTextEdit { border: 1px solid %edge; border-radius: 4px; }
QPlainTextEdit:focus { border: 2px solid %accent; }
QDialogButtonBox { dialogbuttonbox-buttons-have-icons: 0; }
QToolButton::menu-indicator { subcontrol-position: right center; right: 7px; }
QTabWidget::pane { background: %card; border: 1px solid %edge; border-radius: 7px; border-top-left-radius: 0px; top: -1px; }
QTabBar::scroller { width: 26px; }
QTabBar { background: transparent; qproperty-drawBase: 0; }
QTabBar::tab { background: transparent; color: %quiet; padding: 5px 16px; border: 1px solid transparent; }
QTabBar::tab:selected { background: %card; color: %text; font-weight: bold; border: 1px solid %edge; border-bottom-color: %card;
  border-top-left-radius: 7px; border-top-right-radius: 7px; }
QTabBar::tab:hover:!selected { color: %text; }
QTabBar::tab:selected:focus { color: %accent; }
QTableView { background: %card; alternate-background-color: %hover; border: 1px solid transparent; gridline-color: %grid; selection-background-color: %chosen;
  selection-color: %text; }
QTableView:focus { border: 1px solid %accent; }
QHeaderView { background: %card; }
QHeaderView::section { background: %card; color: %quiet; border: none; border-bottom: 1px solid %edge; padding: 4px 6px; text-align: left; }
QTableView::item { padding: 0 3px; border: none; }
QScrollArea, #page { background: transparent; border: none; }
QCalendarWidget { min-width: 320px; }
QToolTip { background: %card; color: %text; border: 1px solid %edge; padding: 3px; }
QMenuBar { background: %desk; color: %text; }
QMenuBar::item { padding: 5px 11px; background: transparent; }
QMenuBar::item:selected { background: %chosen; border-radius: 5px; }
QMenu { background: %card; color: %text; border: 1px solid %edge; padding: 4px; }
QMenu::item { padding: 5px 26px 5px 22px; border-radius: 4px; }
QMenu::item:selected { background: %chosen; }
QMenu::item:disabled { color: %quiet; }
QMenu::separator { height: 1px; background: %edge; margin: 4px 8px; }
QTextBrowser { background: %card; border: none; }
QSplitter::handle { background: transparent; }
)";

} // namespace

const Colours& lightColours() {
    static const Colours colours = makeLight();
    return colours;
}

const Colours& darkColours() {
    static const Colours colours = makeDark();
    return colours;
}

bool isDark(const QPalette& palette) { return luminance(palette.color(QPalette::Window)) < 0.18; }

void wearColours(QWidget& widget, const Colours& colours) {
    widget.setProperty(wornProperty, colours.dark);
    widget.setPalette(paletteIn(colours));
}

const Colours& coloursOf(const QWidget& widget) {
    for (const QWidget* each = &widget; each; each = each->parentWidget()) {
        const QVariant dark = each->property(wornProperty);
        if (dark.isValid()) return dark.toBool() ? darkColours() : lightColours();
    }
    return isDark(widget.palette()) ? darkColours() : lightColours();
}

QPalette paletteIn(const Colours& c) {
    QPalette palette(c.card, c.desk);
    palette.setColor(QPalette::Window, c.desk);
    palette.setColor(QPalette::Base, c.card);
    palette.setColor(QPalette::AlternateBase, c.hover);
    palette.setColor(QPalette::Button, c.card);
    palette.setColor(QPalette::WindowText, c.text);
    palette.setColor(QPalette::Text, c.text);
    palette.setColor(QPalette::ButtonText, c.text);
    palette.setColor(QPalette::PlaceholderText, c.quietText);
    palette.setColor(QPalette::Highlight, c.chosen);
    palette.setColor(QPalette::HighlightedText, c.text);
    palette.setColor(QPalette::Link, c.accent);
    palette.setColor(QPalette::ToolTipBase, c.card);
    palette.setColor(QPalette::ToolTipText, c.text);
    palette.setColor(QPalette::Mid, c.cardEdge);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, c.quietText);
    return palette;
}

QString styleSheetIn(const Colours& c) {
    QString text = QString::fromUtf8(sheet);
    const auto put = [&text](const char* name, const QColor& colour) {
        text.replace(QLatin1String(name), colour.name());
    };
    put("%desk", c.desk);
    put("%card", c.card);
    put("%edge", c.cardEdge);
    put("%hover", c.hover);
    put("%text", c.text);
    put("%quiet", c.quietText);
    put("%chosen", c.chosen);
    put("%inkOnAccent", c.accentText);
    put("%accent", c.accent);
    put("%grid", c.grid);
    put("%fault", c.reserve);
    return text;
}

} // namespace winterlarder::desk
