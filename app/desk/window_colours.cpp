// SPDX-License-Identifier: GPL-3.0-or-later
// The colours of the main window, chosen by the keeper or by the system.
#include "desk/main_window.h"
#include "theme/colours.h"

#include <QApplication>
#include <QEvent>

namespace winterlarder::desk {

void MainWindow::useColours(ColourScheme scheme) {
    colourScheme_ = scheme;
    applyColours();
}

void MainWindow::applyColours() {
    applyingColours_ = true;
    QApplication::setPalette(QPalette()); // what the system has
    const bool dark = colourScheme_ == ColourScheme::Dark ||
                      (colourScheme_ == ColourScheme::AsSystem && isDark(QApplication::palette()));
    const auto& colours = dark ? darkColours() : lightColours();
    wearColours(*this, colours);
    setStyleSheet(styleSheetIn(colours));
    // Under a style sheet a palette does not reach the children by itself.
    const QPalette worn = paletteIn(colours);
    QApplication::setPalette(worn); // for what is made later
    for (auto* child : findChildren<QWidget*>()) child->setPalette(worn);
    applyingColours_ = false;
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::ApplicationPaletteChange && !applyingColours_) applyColours();
}

} // namespace winterlarder::desk
