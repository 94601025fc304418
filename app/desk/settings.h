// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/records.h"
#include "quantity/text.h"
#include "reference/reference.h"

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <optional>

namespace winterlarder::desk {

enum class ColourScheme { AsSystem, Light, Dark };

//! How long the window says what was done.
enum class NoticeWish { HalfAMinute, TwoMinutes, UntilPutAway };

inline constexpr int usualTextSize = 100; //!< % of the system's letters
inline constexpr int textSizes[] = {90, usualTextSize, 115, 130, 150, 175, 200};

//! What this keeper chose on this computer; nothing of it is in the book. Kept in the user's own settings file.
//! Tested: tests/app/pages_test.cpp.
namespace settings {

QStringList recentBooks(); //!< newest first, at most eight
void noteRecentBook(const QString& file);
void forgetRecentBook(const QString& file);
QString yardsOf(const QString& file); //!< names of a recent book's yards, as last seen; empty: not known
void noteYards(const QString& file, const QString& names);

//! How the window was left, on one book.
struct Session {
    QString book; //!< its file; empty: none was kept
    qint64 yard = 0, colony = 0;
    int colonyPage = 0, yardPage = 0;
    bool picture = true;              //!< the winter picture is shown
    QByteArray halves;                //!< how picture and pages share the room, as QSplitter wrote it
    double firstDay = 0, lastDay = 0; //!< the days seen in the picture; none: the whole winter
    bool byName = false;              //!< the order of the list
};
Session session();
void keepSession(const Session& session);

std::optional<UnitSystem> chosenUnits(); //!< nothing: those of the place of the yard at hand
UnitSystem systemUnits();                //!< as the system's language and country, where no place says others
void chooseUnits(std::optional<UnitSystem> system);
book::HiveRecord usualHive(const ReferenceData& reference); //!< what a new colony is proposed to live in
void chooseUsualHive(const QString& format, int boxes);
ColourScheme colours();
void chooseColours(ColourScheme wish);
NoticeWish notices();
void chooseNotices(NoticeWish wish);
int textSize(); //!< one of textSizes
void chooseTextSize(int percent);
QString language(); //!< as "de" or "pt_BR"; empty: the system's
void chooseLanguage(const QString& language);
QString keeper();         //!< who signs edits; empty: the system's user
QByteArray windowPlace(); //!< as QWidget::saveGeometry wrote it; empty: not kept yet
void keepWindowPlace(const QByteArray& place);

} // namespace settings

} // namespace winterlarder::desk
