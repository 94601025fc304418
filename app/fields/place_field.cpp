// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/place_field.h"

#include "climate/site.h"
#include "models/words.h"
#include "text/words.h"
#include "theme/card.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QLocale>
#include <QRegularExpression>
#include <QVBoxLayout>

namespace winterlarder::desk {

namespace {

constexpr int mostFound = 6;

QString nameOf(const Station& station) {
    return PlaceField::tr("%1 (%2)").arg(text::town(station.id), QString::fromStdString(station.place));
}

std::optional<double> degrees(const QString& number, const QString& side, double most) {
    bool right = false;
    double value = QString(number).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&right);
    const QString letter = side.toUpper();
    if (letter == QLatin1String("S") || letter == QLatin1String("W")) value = -value;
    return right && std::abs(value) <= most ? std::optional(value) : std::nullopt;
}

} // namespace

std::optional<book::Coordinates> readCoordinates(const QString& text) {
    static const QRegularExpression form(QStringLiteral("^\\s*([-+]?\\d+(?:[.,]\\d+)?)\\s*\u00b0?\\s*([NSns]?)\\s*[,;/ ]\\s*([-+]?\\d+(?:[.,]\\d+)?)\\s*\u00b0?\\s*([EWew]?)\\s*$"));
    const auto match = form.match(text);
    if (!match.hasMatch()) return std::nullopt;
    const auto latitude = degrees(match.captured(1), match.captured(2), 90), longitude = degrees(match.captured(3), match.captured(4), 180);
    if (!latitude || !longitude) return std::nullopt;
    return book::Coordinates{*latitude, *longitude};
}

std::vector<const Station*> stationsNamed(const ReferenceData& reference, const QString& text, int most) {
    std::vector<const Station*> begins, holds;
    const QString wanted = text.trimmed();
    if (wanted.isEmpty()) return {};
    for (const auto& station : reference.stations) {
        const QString name = nameOf(station);
        if (name.startsWith(wanted, Qt::CaseInsensitive)) begins.push_back(&station);
        else if (name.contains(wanted, Qt::CaseInsensitive)) holds.push_back(&station);
    }
    begins.insert(begins.end(), holds.begin(), holds.end());
    if (static_cast<int>(begins.size()) > most) begins.resize(static_cast<std::size_t>(most));
    return begins;
}

QString placeWords(const PlaceChoice& place, const ReferenceData& reference) {
    if (const auto* id = std::get_if<std::string>(&place)) {
        const auto* station = reference.station(*id);
        return station ? nameOf(*station) : QString::fromStdString(*id);
    }
    const auto* coordinates = std::get_if<book::Coordinates>(&place);
    if (!coordinates) return PlaceField::tr("own climate");
    const QLocale locale;
    const QString where = PlaceField::tr("%1, %2").arg(locale.toString(coordinates->latitude, 'f', 2), locale.toString(coordinates->longitude, 'f', 2));
    const auto near = climate::stationsByDistance(reference.stations, coordinates->latitude, coordinates->longitude);
    if (near.empty()) return where;
    return PlaceField::tr("%1; nearest station %2, %3").arg(where, nameOf(*near.front().station), words::distance(near.front().distanceKm));
}

PlaceField::PlaceField(QWidget* parent) : QWidget(parent) {
    search_ = new QLineEdit(this);
    search_->setAccessibleName(tr("Where the bees stand: a town, or latitude and longitude"));
    search_->setPlaceholderText(tr("a town near by, or 45.1, -64.5"));
    search_->setClearButtonEnabled(true);
    search_->installEventFilter(this);
    found_ = new QListWidget(this);
    found_->setAccessibleName(tr("Climate stations found"));
    found_->hide();
    said_ = quietLabel(this);
    said_->setAccessibleDescription(tr("The place chosen"));
    auto* down = new QVBoxLayout(this);
    down->setContentsMargins(0, 0, 0, 0);
    down->setSpacing(3);
    for (QWidget* part : std::initializer_list<QWidget*>{search_, found_, said_}) down->addWidget(part);
    setFocusProxy(search_);
    connect(search_, &QLineEdit::textEdited, this, &PlaceField::look);
    connect(found_, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) { take(found_->row(item)); });
    connect(found_, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) { take(found_->row(item)); });
    say();
}

void PlaceField::useReference(std::shared_ptr<const ReferenceData> reference) {
    reference_ = std::move(reference);
    look(search_->text());
    say();
}

void PlaceField::show(const PlaceChoice& place) {
    if (place_ == place) return;
    place_ = place;
    search_->clear();
    found_->hide();
    say();
}

void PlaceField::look(const QString& text) {
    found_->clear();
    if (!reference_) return;
    if (const auto coordinates = readCoordinates(text)) {
        place_ = *coordinates;
        found_->hide();
        say();
        emit chosen();
        return;
    }
    for (const auto* station : stationsNamed(*reference_, text, mostFound)) {
        auto* item = new QListWidgetItem(nameOf(*station), found_);
        item->setData(Qt::UserRole, QString::fromStdString(station->id));
    }
    found_->setVisible(found_->count() > 0);
    if (found_->count() > 0) found_->setFixedHeight(found_->sizeHintForRow(0) * found_->count() + 2 * found_->frameWidth() + 2);
    if (text.trimmed().size() > 2 && found_->count() == 0) said_->setText(tr("No station of that name ships with the program. Try a larger town, or type latitude and longitude, as 43.05, -76.15: the nearest climate is used."));
    else return say();
    said_->setVisible(true);
}

void PlaceField::take(int row) {
    if (row < 0 || row >= found_->count()) return;
    place_ = found_->item(row)->data(Qt::UserRole).toString().toStdString();
    search_->setText(found_->item(row)->text());
    found_->hide();
    say();
    emit chosen();
}

void PlaceField::say() {
    said_->setText(place_ && reference_ ? tr("Climate: %1").arg(placeWords(*place_, *reference_)) : QString());
    said_->setVisible(!said_->text().isEmpty());
}

void PlaceField::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LocaleChange) say();
}

// Enter takes the first found; down goes into the list.
bool PlaceField::eventFilter(QObject* watched, QEvent* event) {
    if (watched == search_ && event->type() == QEvent::KeyPress && found_->isVisible()) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Return || key == Qt::Key_Enter) return take(0), true;
        if (key == Qt::Key_Down) return found_->setFocus(), found_->setCurrentRow(0), true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace winterlarder::desk
