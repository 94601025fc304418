// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/settings.h"

#include <QFileInfo>
#include <QLocale>
#include <QSettings>

#include <algorithm>

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

UnitSystem systemUnits() {
    switch (QLocale().measurementSystem()) {
    case QLocale::ImperialUSSystem: return UnitSystem::UnitedStates;
    default: return UnitSystem::Metric;
    }
}

} // namespace

QStringList recentBooks() { return stored().value(QStringLiteral("books/recent")).toStringList(); }

void noteRecentBook(const QString& file) {
    auto books = recentBooks();
    const QString whole = QFileInfo(file).absoluteFilePath();
    books.removeAll(whole);
    books.prepend(whole);
    write("books/recent", books.mid(0, mostRecent));
}

void forgetRecentBook(const QString& file) {
    auto books = recentBooks();
    books.removeAll(QFileInfo(file).absoluteFilePath());
    write("books/recent", books);
}

UnitSystem units() { return chosen("units", systemUnits(), 2); }
void chooseUnits(UnitSystem system) { write("units", static_cast<int>(system)); }
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
void chooseColours(ColourScheme scheme) { write("colours", static_cast<int>(scheme)); }
QString keeper() { return stored().value(QStringLiteral("keeper")).toString(); }
QByteArray windowPlace() { return stored().value(QStringLiteral("window")).toByteArray(); }
void keepWindowPlace(const QByteArray& place) { write("window", place); }

} // namespace winterlarder::desk::settings
