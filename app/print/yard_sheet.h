// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/yard.h"

#include <QString>

class QPagedPaintDevice;
class QPrinter;

namespace winterlarder::desk {

//! The yard on paper: what to buy, a row a colony, every visit by day, and cautions; always dark on light, legible in grey.
QString yardSheet(const Yard& yard);

//! Lays a sheet out on paper, page after page.
void printSheet(const QString& html, QPrinter& printer);
//! Writes it as PDF on A4; false where the file cannot be written.
bool saveSheet(const QString& html, const QString& path);

} // namespace winterlarder::desk
