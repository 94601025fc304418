// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "quantity/text.h"
#include "reference/reference.h"

#include <QByteArray>
#include <QString>
#include <QStringList>

namespace winterlarder::desk {

enum class ColourScheme { AsSystem, Light, Dark };

//! What this keeper chose on this computer; nothing of it is in the book. Kept in the user's own settings file.
//! Tested: tests/app/pages_test.cpp.
namespace settings {

QStringList recentBooks(); //!< newest first, at most eight
void noteRecentBook(const QString& file);
void forgetRecentBook(const QString& file);

UnitSystem units(); //!< not chosen yet: as the system's language and country
void chooseUnits(UnitSystem system);
book::HiveRecord usualHive(const ReferenceData& reference); //!< what a new colony is proposed to live in
void chooseUsualHive(const QString& format, int boxes);
ColourScheme colours();
void chooseColours(ColourScheme scheme);
QString keeper();         //!< who signs edits; empty: the system's user
QByteArray windowPlace(); //!< as QWidget::saveGeometry wrote it; empty: not kept yet
void keepWindowPlace(const QByteArray& place);

} // namespace settings

} // namespace winterlarder::desk
