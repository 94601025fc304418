// SPDX-License-Identifier: GPL-3.0-or-later
// What a keeper wishes of a yard, on the page of its place: risk, reserve, days of visits, what sugar costs.
#include "models/words.h"
#include "pages/place_page.h"
#include "theme/card.h"
#include "theme/flow_layout.h"

#include <QCheckBox>
#include <QFormLayout>
#include <QLocale>

namespace winterlarder::desk {

namespace {

using Quantity = QuantityField::Kind;

} // namespace

QLayout* PlacePage::buildWishes() {
    risk_ =
        new QuantityField(this, tr("Winters of a hundred that may fall below the reserve"), Quantity::Number, nullptr);
    reserve_ = quantity(tr("Reserve that should be left in spring"), Quantity::Mass, "wish.reserve_kg");
    visits_ = quantity(tr("Days between visits"), Quantity::Whole, "wish.visit_every_days");
    auto* weekdayRow = new QWidget(this);
    auto* weekdays = new FlowLayout(weekdayRow, 8);
    for (int day = 1; day <= 7; ++day) {
        auto* box = new QCheckBox(QLocale().dayName(day, QLocale::ShortFormat), weekdayRow);
        box->setAccessibleName(tr("Visits on %1").arg(QLocale().dayName(day)));
        connect(box, &QCheckBox::toggled, this, [this] {
            change([this](book::Yard& yard) {
                yard.wish.visitWeekdays.clear();
                for (int at = 0; at < 7; ++at)
                    if (weekdays_[static_cast<std::size_t>(at)]->isChecked()) yard.wish.visitWeekdays.push_back(at + 1);
            });
        });
        weekdays_.push_back(box);
        weekdays->addWidget(box);
    }
    price_ = quantity(tr("Price of sugar"), Quantity::PricePerMass, "yards.sugar_price_per_kg");
    currency_ = new QLineEdit(this);
    currency_->setAccessibleName(tr("Currency, three letters"));
    currency_->setMaxLength(3);
    currency_->setMaximumWidth(fontMetrics().averageCharWidth() * 9);
    bag_ = quantity(tr("Sugar in a bag"), Quantity::Mass, "yards.bag_kg");
    learn_ = new QCheckBox(tr("past winters of these bees correct the forecast"), this);
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(boldLabel(this, tr("What you wish")));
    form->addRow(tr("winters of 100 that may fall below the reserve"), risk_);
    form->addRow(tr("reserve"), reserve_);
    form->addRow(tr("days between visits"), visits_);
    form->addRow(plainLabel(this, tr("visits only on (none: any day)")));
    form->addRow(weekdayRow);
    priceOf_ = plainLabel(this);
    form->addRow(priceOf_, price_);
    form->addRow(tr("currency"), currency_);
    form->addRow(tr("a bag holds"), bag_);
    form->addRow(QString(), learn_);
    connect(risk_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        change([value](book::Yard& yard) { yard.wish.shortRisk = value ? std::optional(*value / 100) : std::nullopt; });
    });
    connect(reserve_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        change([value](book::Yard& yard) { yard.wish.reserve = value ? std::optional(Mass(*value)) : std::nullopt; });
    });
    connect(visits_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        if (value) change([value](book::Yard& yard) { yard.wish.visitEveryDays = static_cast<int>(*value); });
    });
    connect(price_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        change([value](book::Yard& yard) { yard.sugarPricePerKg = value; });
    });
    connect(bag_, &QuantityField::valueEntered, this, [this](std::optional<double> value) {
        change([value](book::Yard& yard) { yard.bag = value ? std::optional(Mass(*value)) : std::nullopt; });
    });
    connect(currency_, &QLineEdit::editingFinished, this, [this] {
        const std::string letters = currency_->text().trimmed().toUpper().toStdString();
        change([&](book::Yard& yard) { yard.currency = letters.empty() ? std::nullopt : std::optional(letters); });
    });
    connect(learn_, &QCheckBox::toggled, this,
            [this](bool on) { change([on](book::Yard& yard) { yard.learn = on; }); });
    return form;
}

// A price is that of the unit sugar is weighed in.
void PlacePage::namePrice() {
    const bool pounds = words::shownMass() == MassUnit::Pound;
    priceOf_->setText(pounds ? tr("sugar, a pound costs") : tr("sugar, a kilogram costs"));
    price_->setAccessibleName(pounds ? tr("Price of a pound of sugar") : tr("Price of a kilogram of sugar"));
}

} // namespace winterlarder::desk
