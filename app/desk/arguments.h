// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace winterlarder::desk {

//! What the window was started with.
struct Arguments {
    QStringList files;               //!< books and case files; none: the book last open
    bool demo = false;               //!< the demo yard instead
    std::optional<Date> day;         //!< the day asked about; nothing: today, or the day of the case files
    std::optional<QString> pictures; //!< folder to write pictures into instead of showing a window
    std::optional<QString> data;     //!< another folder of shipped data
    bool version = false;
    bool help = false;
    QString fault; //!< what is wrong with them; empty if nothing
};
//! Reads them; the program's own name first. Tested: tests/app/words_test.cpp.
Arguments readArguments(const QStringList& given);
QString helpText();

} // namespace winterlarder::desk
