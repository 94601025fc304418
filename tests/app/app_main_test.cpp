// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/language.h"
#include "desk/qt_types.h"
#include "theme/icons.h"

#include <QApplication>
#include <QLocale>
#include <QSettings>
#include <QStyleFactory>
#include <QTemporaryDir>
#include <gtest/gtest.h>

// The tests of the window draw into memory: no display is needed, and none is disturbed.
int main(int count, char** given) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&count, given);
    QApplication application(count, given);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    // The keeper's own settings are never touched.
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    winterlarder::desk::openResources();
    winterlarder::desk::speakLanguageOf(QLocale(), application);
    winterlarder::desk::registerQtTypes();
    return RUN_ALL_TESTS();
}
