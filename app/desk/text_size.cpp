// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/text_size.h"

#include <QApplication>
#include <QFont>
#include <QWidget>

#include <utility>
#include <vector>

namespace winterlarder::desk {

namespace {

constexpr const char* systemLetters = "systemLetters"; // of the application: the system's size [points]

QFont scaled(QFont font, double factor) {
    if (font.pointSizeF() > 0) font.setPointSizeF(font.pointSizeF() * factor);
    else font.setPixelSize(static_cast<int>(font.pixelSize() * factor + 0.5));
    return font;
}

std::vector<std::pair<QWidget*, QFont>> withSizesOfTheirOwn(double factor) {
    std::vector<std::pair<QWidget*, QFont>> found;
    for (auto* each : QApplication::allWidgets())
        if (each->testAttribute(Qt::WA_SetFont) && (each->font().resolveMask() & QFont::SizeResolved))
            found.emplace_back(each, scaled(each->font(), factor));
    return found;
}

} // namespace

// Sizes are all taken first: what a part wears follows that of what is around it.
void useTextSize(int percent) {
    const double now = QApplication::font().pointSizeF();
    if (!qApp->property(systemLetters).isValid()) qApp->setProperty(systemLetters, now);
    const double wanted = qApp->property(systemLetters).toDouble() * percent / 100;
    if (now <= 0 || qFuzzyCompare(now, wanted)) return;
    const auto larger = withSizesOfTheirOwn(wanted / now);
    QFont font = QApplication::font();
    font.setPointSizeF(wanted);
    QApplication::setFont(font);
    for (const auto& [widget, letters] : larger) widget->setFont(letters);
}

} // namespace winterlarder::desk
