// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/settings.h"

#include <QFileInfo>
#include <QLocale>
#include <QSettings>

#include <algorithm>
#include <iterator>

namespace winterlarder::desk::settings {

namespace {

constexpr int mostRecent = 8;

QSettings stored() {
    return QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("winterlarder"),
                     QStringLiteral("winterlarder"));
}

template <class Choice> Choice chosen(const char* key, Choice otherwise, int most) {
    bool isNumber = false;
    auto settings = stored();
    const int value = settings.value(QLatin1String(key)).toInt(&isNumber);
    return isNumber && value >= 0 && value <= most ? static_cast<Choice>(value) : otherwise;
}

void write(const char* key, const QVariant& value) {
    auto settings = stored();
    settings.setValue(QLatin1String(key), value);
}

// Slashes would part a key.
QString keyOfYards(const QString& file) {
    return QStringLiteral("yards/") + QString::fromLatin1(QFileInfo(file).absoluteFilePath().toUtf8().toHex());
}

} // namespace

QStringList recentBooks() { return stored().value(QStringLiteral("books/recent")).toStringList(); }

void noteRecentBook(const QString& file) {
    auto books = recentBooks();
    const QString whole = QFileInfo(file).absoluteFilePath();
    books.removeAll(whole);
    books.prepend(whole);
    auto settings = stored();
    for (const QString& each : books.mid(mostRecent)) settings.remove(keyOfYards(each));
    settings.setValue(QStringLiteral("books/recent"), books.mid(0, mostRecent));
}

void forgetRecentBook(const QString& file) {
    auto books = recentBooks();
    books.removeAll(QFileInfo(file).absoluteFilePath());
    write("books/recent", books);
    stored().remove(keyOfYards(file));
}

QString yardsOf(const QString& file) { return stored().value(keyOfYards(file)).toString(); }
void noteYards(const QString& file, const QString& names) { stored().setValue(keyOfYards(file), names); }

Session session() {
    auto settings = stored();
    settings.beginGroup(QStringLiteral("session"));
    const auto value = [&](const char* key, const QVariant& otherwise = {}) {
        return settings.value(QLatin1String(key), otherwise);
    };
    return {value("book").toString(),        value("yard").toLongLong(),    value("colony").toLongLong(),
            value("colony-page").toInt(),    value("yard-page").toInt(),    value("picture", true).toBool(),
            value("halves").toByteArray(),   value("first-day").toDouble(), value("last-day").toDouble(),
            value("by-name", false).toBool()};
}

void keepSession(const Session& session) {
    auto settings = stored();
    settings.beginGroup(QStringLiteral("session"));
    const auto keep = [&](const char* key, const QVariant& value) { settings.setValue(QLatin1String(key), value); };
    keep("book", session.book);
    keep("yard", session.yard);
    keep("colony", session.colony);
    keep("colony-page", session.colonyPage);
    keep("yard-page", session.yardPage);
    keep("picture", session.picture);
    keep("halves", session.halves);
    keep("first-day", session.firstDay);
    keep("last-day", session.lastDay);
    keep("by-name", session.byName);
}

UnitSystem systemUnits() {
    switch (QLocale().measurementSystem()) {
    case QLocale::ImperialUSSystem: return UnitSystem::UnitedStates;
    default: return UnitSystem::Metric;
    }
}

std::optional<UnitSystem> chosenUnits() {
    const int chosenOrNone = chosen("units", -1, 2);
    return chosenOrNone < 0 ? std::nullopt : std::optional(static_cast<UnitSystem>(chosenOrNone));
}

void chooseUnits(std::optional<UnitSystem> system) {
    write("units", system ? QVariant(static_cast<int>(*system)) : QVariant(QString()));
}

book::HiveRecord usualHive(const ReferenceData& reference) {
    const auto settings = stored();
    const std::string chosen = settings.value(QStringLiteral("hive/format")).toString().toStdString();
    const std::string format = reference.format(chosen) ? chosen : reference.formats.front().id;
    const int boxes = std::clamp(settings.value(QStringLiteral("hive/boxes"), 1).toInt(), 1, 6);
    book::HiveRecord hive;
    for (int box = 0; box < boxes; ++box) hive.boxes.push_back({format, std::nullopt, false});
    return hive;
}

void chooseUsualHive(const QString& format, int boxes) {
    write("hive/format", format);
    write("hive/boxes", boxes);
}

ColourScheme colours() { return chosen("colours", ColourScheme::AsSystem, 2); }
void chooseColours(ColourScheme wish) { write("colours", static_cast<int>(wish)); }
NoticeWish notices() { return chosen("notices", NoticeWish::HalfAMinute, 2); }
void chooseNotices(NoticeWish wish) { write("notices", static_cast<int>(wish)); }

int textSize() {
    const int kept = chosen("text-size", usualTextSize, 1000);
    return std::find(std::begin(textSizes), std::end(textSizes), kept) == std::end(textSizes) ? usualTextSize : kept;
}

void chooseTextSize(int percent) { write("text-size", percent); }
QString language() { return stored().value(QStringLiteral("language")).toString(); }
void chooseLanguage(const QString& language) { write("language", language); }
QString keeper() { return stored().value(QStringLiteral("keeper")).toString(); }
QByteArray windowPlace() { return stored().value(QStringLiteral("window")).toByteArray(); }
void keepWindowPlace(const QByteArray& place) { write("window", place); }

} // namespace winterlarder::desk::settings
