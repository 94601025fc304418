// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/main_window.h"

namespace winterlarder::desk {

//! Writes the settled window (light and dark), each colony's winter picture (PNG and SVG) and sheet (PDF), and the yard plan (PDF) into a folder.
//! Answers the files written; a problem where one could not be.
Outcome<QStringList> writePictures(MainWindow& window, const QString& folder);

} // namespace winterlarder::desk
