// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QString>

namespace winterlarder::cli {

//! The words of the command line, ready for translation.
inline QString tr(const char* text) { return QCoreApplication::translate("CommandLine", text); }

} // namespace winterlarder::cli
