// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QTextDocument>

namespace winterlarder::desk {

//! Words as a tool tip shows them as they are. A tool tip guesses whether it holds markup, and markup can open files: what it would take
//! for markup is escaped, all else is left alone. For every tool tip whose words may come from a book or a file.
//! Tested: tests/app/foreign_words_test.cpp.
inline QString plainTip(const QString& words) {
    if (!Qt::mightBeRichText(words)) return words;
    return QStringLiteral("<qt>%1</qt>").arg(words.toHtmlEscaped().replace(QLatin1Char('\n'), QStringLiteral("<br>")));
}

} // namespace winterlarder::desk
