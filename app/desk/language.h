// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QStringList>

class QCoreApplication;

namespace winterlarder::desk {

//! Has the application speak the language of the locale where resources/translations has it, else English (whose own file holds its
//! plural forms). Numbers and dates stay the locale's. Tested: tests/app/translations_test.cpp.
void speakLanguageOf(const QLocale& locale, QCoreApplication& application);
//! The languages there are words of, as "en" or "pt_BR".
QStringList languages();

} // namespace winterlarder::desk
