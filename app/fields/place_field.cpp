// SPDX-License-Identifier: GPL-3.0-or-later
#include "fields/place_field.h"

#include "climate/site.h"
#include "models/words.h"
#include "text/place_words.h"
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

constexpr int mostFound = 7;

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
    static const QRegularExpression form(QStringLiteral(
        "^\\s*([-+]?\\d+(?:[.,]\\d+)?)\\s*\u00b0?\\s*([NSns]?)\\s*[,;/ ]\\s*([-+]?\\d+(?:[.,]\\d+)?)\\s*\u00b0?\\s*([EWew]?)\\s*$"));
    const auto match = form.match(text);
    if (!match.hasMatch()) return std::nullopt;
    const auto latitude = degrees(match.captured(1), match.captured(2), 90),
               longitude = degrees(match.captured(3), match.captured(4), 180);
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

QString placeWords(const PlaceChoice& place, const ReferenceData& reference, std::optional<double> heightM,
                   const climate::Gazetteer* places) {
    if (const auto* id = std::get_if<std::string>(&place)) {
        const auto* station = reference.station(*id);
        return station ? nameOf(*station) : QString::fromStdString(*id);
    }
    const auto* coordinates = std::get_if<book::Coordinates>(&place);
    if (!coordinates) return PlaceField::tr("own climate");
    const QLocale locale;
    const auto* known = places ? places->at(coordinates->latitude, coordinates->longitude) : nullptr;
    const QString where = known ? QString::fromStdString(places->fullName(*known))
                                : PlaceField::tr("%1, %2").arg(locale.toString(coordinates->latitude, 'f', 2),
                                                               locale.toString(coordinates->longitude, 'f', 2));
    const auto site = climate::siteNear(reference, coordinates->latitude, coordinates->longitude, heightM);
    if (!site.ok()) return where;
    return PlaceField::tr("%1: %2", "a place, and its weather")
        .arg(where, text::weatherOf(*site, reference, heightM, words::style()));
}

PlaceField::PlaceField(QWidget* parent) : QWidget(parent) {
    search_ = new QLineEdit(this);
    search_->setAccessibleName(tr("Where the bees stand: a town, or latitude and longitude"));
    search_->setPlaceholderText(tr("a town near by, or 45.1, -64.5"));
    search_->setClearButtonEnabled(true);
    search_->installEventFilter(this);
    found_ = new QListWidget(this);
    found_->setAccessibleName(tr("Places found"));
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

void PlaceField::usePlaces(std::shared_ptr<const climate::Gazetteer> places) {
    places_ = std::move(places);
    if (search_->hasFocus() && search_->isModified()) look(search_->text());
    say();
}

void PlaceField::show(const PlaceChoice& place, std::optional<double> heightM) {
    if (place_ == place && heightM_ == heightM) return;
    const bool moved = place_ != place;
    place_ = place;
    heightM_ = heightM;
    if (moved) search_->clear();
    found_->hide();
    say();
}

std::string PlaceField::country() const {
    if (!place_ || !reference_) return {};
    if (const auto* id = std::get_if<std::string>(&*place_)) return climate::countryCodeOf(*id);
    const auto* at = std::get_if<book::Coordinates>(&*place_);
    if (!at) return {};
    if (const auto* known = places_ ? places_->at(at->latitude, at->longitude) : nullptr) return known->country;
    const auto site = climate::siteNear(*reference_, at->latitude, at->longitude, {});
    return site.ok() ? climate::countryCodeOf(site->stationId) : std::string();
}

void PlaceField::look(const QString& text) {
    offered_.clear();
    nearlySpelled_ = false;
    if (!reference_) return;
    if (const auto coordinates = readCoordinates(text)) {
        place_ = *coordinates;
        heightM_.reset();
        listOffered();
        say();
        emit chosen();
        return;
    }
    offer(text);
    listOffered();
    say();
}

void PlaceField::lookFor(const QString& name) {
    search_->setText(name);
    search_->setModified(true);
    search_->setFocus();
    look(name);
}

void PlaceField::offer(const QString& text) {
    if (places_) return offerPlaces(text);
    for (const auto* station : stationsNamed(*reference_, text, mostFound))
        offered_.push_back({station->id, {}, nameOf(*station)});
}

void PlaceField::offerPlaces(const QString& text) {
    const auto add = [this](const climate::FoundPlace& found) {
        offered_.push_back({book::Coordinates{found.place->latitude, found.place->longitude}, found.place->heightM,
                            text::foundName(found, *places_)});
    };
    for (const auto& found : places_->find(text.toStdString(), mostFound)) add(found);
    if (!offered_.empty()) return;
    for (const auto* like : places_->spelledLike(text.toStdString(), mostFound)) add({like, {}, false});
    nearlySpelled_ = !offered_.empty();
}

void PlaceField::listOffered() {
    found_->clear();
    for (const auto& each : offered_) new QListWidgetItem(each.words, found_);
    found_->setVisible(found_->count() > 0);
    if (found_->count() > 0)
        found_->setFixedHeight(found_->sizeHintForRow(0) * found_->count() + 2 * found_->frameWidth() + 2);
}

void PlaceField::take(int row) {
    if (row < 0 || row >= found_->count()) return;
    const auto taken = offered_[static_cast<std::size_t>(row)];
    place_ = taken.place;
    heightM_ = taken.heightM;
    search_->setText(taken.words);
    offered_.clear();
    nearlySpelled_ = false;
    found_->hide();
    say();
    emit chosen();
}

// What was typed and is no place is said so; else the place chosen.
void PlaceField::say() {
    constexpr int telling = 3; // letters
    const bool typed =
        search_->isModified() && search_->text().trimmed().size() >= telling && !readCoordinates(search_->text());
    QString words;
    if (typed && nearlySpelled_) words = tr("No place is spelled so. Do you mean one of these?");
    else if (typed && reference_ && offered_.empty())
        words = tr(
            "No place of that name is known here. Take the nearest town, or type latitude and longitude, as 43.05, -76.15.");
    else if (place_ && reference_)
        words = std::holds_alternative<std::string>(*place_)
                    ? tr("Climate: %1").arg(placeWords(*place_, *reference_))
                    : placeWords(*place_, *reference_, heightM_, places_.get());
    said_->setText(words);
    said_->setVisible(!words.isEmpty());
}

QString PlaceField::said() const { return said_->isHidden() ? QString() : said_->text(); }

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
