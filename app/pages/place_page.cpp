// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/place_page.h"

#include "fields/day_field.h"
#include "fields/place_field.h"
#include "models/words.h"
#include "pages/weather_part.h"
#include "plots/curve_plot.h"
#include "text/choice_words.h"
#include "theme/card.h"
#include "theme/columns.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QFormLayout>
#include <QGridLayout>
#include <QLocale>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace winterlarder::desk {

namespace {

using Quantity = QuantityField::Kind;
constexpr int columnGap = 26;   // px
constexpr int notesRest = 1000; // ms until a hand that types rests

} // namespace

PlacePage::PlacePage(Yard* yard, QWidget* parent) : QWidget(parent), yard_(yard) {
    yard_->onChange(this, {YardChange::Colonies, YardChange::Answer}, &PlacePage::refreshSoon);
    if (yard_->book()) connect(yard_->book(), &OpenBook::leaving, this, &PlacePage::writeNotes);
}

PlacePage::~PlacePage() { writeNotes(); }

// Once for many changes, and only while it is looked at.
void PlacePage::refreshSoon() {
    if (soon_ || !isVisible()) return;
    soon_ = true;
    QTimer::singleShot(0, this, [this] {
        soon_ = false;
        refresh();
    });
}

void PlacePage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void PlacePage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LocaleChange) refreshSoon();
}

// The fields need the shipped limits, so they are made once those are there.
void PlacePage::build() {
    built_ = true;
    curve_ = new CurvePlot(this);
    said_ = quietLabel(this);
    auto* left = new QVBoxLayout;
    left->setSpacing(6);
    left->addLayout(buildWhere());
    left->addLayout(buildWishes());
    left->addStretch(1);
    auto* right = new QVBoxLayout;
    right->setSpacing(6);
    right->addLayout(buildSeason());
    right->addWidget(curve_, 1);
    right->addWidget(said_);
    weather_ = new WeatherPart(yard_, this);
    right->addWidget(weather_);
    columns_ = new QBoxLayout(QBoxLayout::LeftToRight, this);
    columns_->setContentsMargins(16, 12, 16, 10);
    columns_->setSpacing(columnGap);
    columns_->addLayout(left, 1);
    columns_->addLayout(right, 1);
}

void PlacePage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (columns_ && besideWhereRoom(*columns_, width())) updateGeometry();
}

QSize PlacePage::minimumSizeHint() const { return columns_ ? leastOfColumns(*columns_) : QWidget::minimumSizeHint(); }

QuantityField* PlacePage::quantity(const QString& name, QuantityField::Kind kind, const char* field) {
    return new QuantityField(this, name, kind, yard_->book()->reference()->field(field));
}

QLayout* PlacePage::buildWhere() {
    name_ = new QLineEdit(this);
    name_->setAccessibleName(tr("Name of the yard"));
    place_ = new PlaceField(this);
    place_->useReference(yard_->book()->reference());
    place_->usePlaces(yard_->book()->places());
    connect(yard_->book(), &OpenBook::placesRead, place_, [this] { place_->usePlaces(yard_->book()->places()); });
    elevation_ = quantity(tr("Height above the sea"), Quantity::Height, "site.elevation_m");
    own_ = new QCheckBox(tr("I have my own temperatures of this place"), this);
    ownFields_ = new QWidget(this);
    ownFields_->setLayout(buildOwnClimate());
    flow_ = new QComboBox(this);
    flow_->setAccessibleName(tr("Autumn flow still to come"));
    flow_->addItem(tr("not said"), -1);
    for (const auto& [words, each] : text::choices<book::FlowStrength>()) flow_->addItem(words, static_cast<int>(each));
    notes_ = new QPlainTextEdit(this);
    notes_->setAccessibleName(tr("What flowers here, and when"));
    notes_->setTabChangesFocus(true);
    notes_->setFixedHeight(fontMetrics().height() * 4);
    auto* form = new QFormLayout;
    form->addRow(boldLabel(this, tr("Where it is")));
    form->addRow(tr("name"), name_);
    form->addRow(tr("place"), place_);
    form->addRow(tr("height"), elevation_);
    form->addRow(QString(), own_);
    form->addRow(ownFields_);
    form->addRow(tr("autumn flow"), flow_);
    form->addRow(tr("forage"), notes_);
    connect(name_, &QLineEdit::editingFinished, this, [this] {
        if (!name_->text().trimmed().isEmpty())
            change([this](book::Yard& yard) { yard.name = name_->text().trimmed().toStdString(); });
    });
    connect(place_, &PlaceField::chosen, this, [this] {
        change([this](book::Yard& yard) {
            yard.site.where = *place_->place();
            if (place_->heightM())
                yard.site.elevationM = place_->heightM(); // a place's own; else the one that was said stays
        });
    });
    connect(elevation_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        change([value](book::Yard& yard) { yard.site.elevationM = value; });
    });
    connect(flow_, &QComboBox::activated, this,
            [this] { change([this](book::Yard& yard) { yard.site.autumnFlow = chosenFlow(); }); });
    connect(own_, &QCheckBox::toggled, this, [this](bool on) {
        ownFields_->setVisible(on);
        if (on) writeOwnClimate();
    });
    // A row of letters is one edit: written when the hand rests, or when the notes are left.
    notesSoon_.setSingleShot(true);
    notesSoon_.setInterval(notesRest);
    notes_->installEventFilter(this);
    connect(&notesSoon_, &QTimer::timeout, this, &PlacePage::writeNotes);
    connect(notes_, &QPlainTextEdit::textChanged, this, &PlacePage::noteTyped);
    return form;
}

QLayout* PlacePage::buildOwnClimate() {
    auto* grid = new QGridLayout;
    grid->setContentsMargins(0, 0, 0, 0);
    latitude_ = quantity(tr("Latitude"), Quantity::Number, "site.latitude");
    grid->addWidget(plainLabel(this, tr("latitude")), 0, 0);
    grid->addWidget(latitude_, 0, 1, 1, 2);
    connect(latitude_, &QuantityField::valueEntered, this, &PlacePage::writeOwnClimate);
    const QLocale locale;
    for (int month = 0; month < 12; ++month) {
        const QString name = locale.standaloneMonthName(month + 1, QLocale::ShortFormat);
        auto* field = quantity(tr("Mean temperature of %1").arg(locale.standaloneMonthName(month + 1)),
                               Quantity::Temperature, "site.monthly_mean_c");
        field->setMaximumWidth(fontMetrics().averageCharWidth() * 11);
        auto* label = quietLabel(this, Lines::One);
        label->setText(name);
        const int row = 1 + 2 * (month / 6), column = month % 6;
        grid->addWidget(label, row, column);
        grid->addWidget(field, row + 1, column);
        connect(field, &QuantityField::valueEntered, this, &PlacePage::writeOwnClimate);
        months_.push_back(field);
    }
    return grid;
}

std::optional<book::FlowStrength> PlacePage::chosenFlow() const {
    const int chosen = flow_->currentData().toInt();
    return chosen < 0 ? std::nullopt : std::optional(static_cast<book::FlowStrength>(chosen));
}

void PlacePage::noteTyped() {
    const auto* shown = yard_->shownYard();
    if (showing_ || !shown) return;
    notesOf_ = shown->id;
    notesSoon_.start();
}

// To the yard they were typed for, also where another is shown by now.
void PlacePage::writeNotes() {
    notesSoon_.stop();
    const auto typedFor = std::exchange(notesOf_, book::YardId{});
    if (typedFor == book::YardId{} || !yard_->writable()) return;
    for (auto yard : yard_->yards()) {
        if (yard.id != typedFor) continue;
        yard.forageNotes = notes_->toPlainText().toStdString();
        return yard_->writeYard(yard);
    }
}

bool PlacePage::eventFilter(QObject* watched, QEvent* event) {
    if (watched == notes_ && event->type() == QEvent::FocusOut) writeNotes();
    return QWidget::eventFilter(watched, event);
}

void PlacePage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    writeNotes();
}

void PlacePage::change(const Change& change) {
    const auto* shown = yard_->shownYard();
    if (showing_ || !shown || !yard_->writable()) return;
    auto changed = *shown;
    change(changed);
    if (!(changed == *shown)) yard_->writeYard(changed);
}

// Once all twelve months and the latitude are there; till then the station goes on.
void PlacePage::refresh() {
    const auto* shown = yard_->shownYard();
    setEnabled(shown != nullptr);
    if (!shown || !yard_->book() || !yard_->book()->reference()) return;
    if (!built_) build();
    showing_ = true;
    const bool writable = yard_->writable();
    for (auto* child : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
        child->setEnabled(writable || child == curve_);
    if (!name_->hasFocus()) name_->setText(QString::fromStdString(shown->name));
    place_->show(shown->site.where, shown->site.elevationM);
    elevation_->show(shown->site.elevationM);
    flow_->setCurrentIndex(flow_->findData(shown->site.autumnFlow ? static_cast<int>(*shown->site.autumnFlow) : -1));
    const auto* own = std::get_if<book::OwnClimateRecord>(&shown->site.where);
    if (own) {
        own_->setChecked(true);
        latitude_->show(own->latitude);
        for (std::size_t month = 0; month < 12; ++month) months_[month]->show(own->monthlyMeanC[month]);
    }
    ownFields_->setVisible(own_->isChecked());
    if (notesOf_ != shown->id) writeNotes(); // before another yard's are shown
    const bool typing = notesOf_ == shown->id || (notes_->hasFocus() && notesShownOf_ == shown->id);
    notesShownOf_ = shown->id;
    if (notes_->toPlainText().toStdString() != shown->forageNotes && !typing)
        notes_->setPlainText(QString::fromStdString(shown->forageNotes));
    risk_->show(shown->wish.shortRisk ? std::optional(100 * *shown->wish.shortRisk) : std::nullopt);
    reserve_->show(shown->wish.reserve ? std::optional(shown->wish.reserve->value()) : std::nullopt);
    visits_->show(shown->wish.visitEveryDays);
    for (int day = 1; day <= 7; ++day)
        weekdays_[static_cast<std::size_t>(day - 1)]->setChecked(std::find(shown->wish.visitWeekdays.begin(),
                                                                           shown->wish.visitWeekdays.end(),
                                                                           day) != shown->wish.visitWeekdays.end());
    namePrice();
    price_->show(shown->sugarPricePerKg);
    bag_->show(shown->bag ? std::optional(shown->bag->value()) : std::nullopt);
    if (!currency_->hasFocus()) currency_->setText(QString::fromStdString(shown->currency.value_or("")));
    learn_->setChecked(shown->learn);
    showSeason(*shown);
    showClimate(*shown);
    weather_->refresh();
    showing_ = false;
}

} // namespace winterlarder::desk
