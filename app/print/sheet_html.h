// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"
#include "report/sheet.h"
#include "text/style.h"

#include <QString>
#include <QStringList>

namespace winterlarder::desk::print {

//! What of a sheet is said in whole sentences, and how wide its picture is on the page.
struct SheetSentences {
    QString answer;        //!< what a person would say first
    QStringList below;     //!< how often it goes wrong, whether another look is worth it
    text::WordStyle style; //!< all else is told in
};

//! A sheet as HTML for QTextDocument: black on white, legible in grey, reasons and cautions in two columns with numbers of their
//! sources, the sources at the end. The winter picture is named "picture". `reference` has the citations.
QString htmlOf(const report::Sheet& sheet, const SheetSentences& sentences, const ReferenceData& reference);

} // namespace winterlarder::desk::print
