// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/language.h"

#include "support/require.h"

#include <QCoreApplication>
#include <QTranslator>

namespace winterlarder::desk {

void speakLanguageOf(const QLocale& locale, QCoreApplication& application) {
    const QString folder = QStringLiteral(":/translations");
    auto* words = new QTranslator(&application);
    const bool known = words->load(locale, QStringLiteral("winterlarder"), QStringLiteral("_"), folder) ||
                       words->load(QStringLiteral("winterlarder_en"), folder);
    require(known, "the program's own words are missing from its resources");
    QCoreApplication::installTranslator(words);
}

} // namespace winterlarder::desk
