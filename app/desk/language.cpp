// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/language.h"

#include "support/require.h"

#include <QCoreApplication>
#include <QDir>
#include <QTranslator>

namespace winterlarder::desk {

namespace {
QString wordsFolder() { return QStringLiteral(":/translations"); }
} // namespace

QStringList languages() {
    const QString before = QStringLiteral("winterlarder_");
    QStringList found;
    for (const QString& file :
         QDir(wordsFolder()).entryList({before + QStringLiteral("*.qm")}, QDir::Files, QDir::Name))
        found << file.mid(before.size()).section(QLatin1Char('.'), 0, 0);
    return found;
}

void speakLanguageOf(const QLocale& locale, QCoreApplication& application) {
    auto* words = new QTranslator(&application);
    const bool known = words->load(locale, QStringLiteral("winterlarder"), QStringLiteral("_"), wordsFolder()) ||
                       words->load(QStringLiteral("winterlarder_en"), wordsFolder());
    require(known, "the program's own words are missing from its resources");
    QCoreApplication::installTranslator(words);
}

} // namespace winterlarder::desk
