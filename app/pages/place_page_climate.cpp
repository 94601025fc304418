// SPDX-License-Identifier: GPL-3.0-or-later
// The climate part of the page of a place: own temperatures, the dates they give or the keeper knows, and the curve.
#include "answer/site_of_case.h"
#include "fields/day_field.h"
#include "fields/place_field.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "pages/place_page.h"
#include "plots/curve_plot.h"
#include "theme/card.h"

#include <QCheckBox>
#include <QGridLayout>

#include <algorithm>

namespace winterlarder::desk {

void PlacePage::addSeason(QGridLayout* grid, const QString& words,
                          std::optional<book::DayOfYear> book::YardSeason::*date,
                          std::optional<climate::SeasonDate> climate::SeasonDates::*derived) {
    const int row = grid->rowCount();
    SeasonField field{date, derived, new QCheckBox(words, this), new DayField(this, tr("Day: %1").arg(words)),
                      quietLabel(this, Lines::One)};
    field.own->setToolTip(tr("Ticked: the day you know, every year; else as the climate says"));
    field.day->leaveOutTheYear();
    field.day->setRange(Date::of(everyYear, 1, 1), Date::of(everyYear, 12, 31));
    grid->addWidget(field.own, row, 0);
    grid->addWidget(field.day, row, 1);
    grid->addWidget(field.said, row, 2);
    const auto write = [this, field] {
        if (showing_) return;
        field.day->setEnabled(field.own->isChecked());
        const Date day = field.day->day();
        const auto own = field.own->isChecked() ? book::DayOfYear::of(day.month(), day.day()) : std::nullopt;
        change([&](book::Yard& yard) { yard.season.*field.date = own; });
    };
    connect(field.own, &QCheckBox::toggled, this, write);
    connect(field.day, &DayField::valueEntered, this, write);
    season_.push_back(field);
}

QLayout* PlacePage::buildSeason() {
    using Own = book::YardSeason;
    using Derived = climate::SeasonDates;
    auto* grid = new QGridLayout;
    grid->addWidget(boldLabel(this, tr("The dates this winter turns on; tick those you know better")), 0, 0, 1, 3);
    addSeason(grid, tr("last nectar coming in"), &Own::lastIncome, &Derived::lastIncome);
    addSeason(grid, tr("advised end of feeding"), &Own::feedAdvisedBy, &Derived::feedAdvisedBy);
    addSeason(grid, tr("last day for syrup"), &Own::syrupDeadline, &Derived::syrupDeadline);
    addSeason(grid, tr("syrup no longer taken"), &Own::syrupRefused, &Derived::syrupRefused);
    addSeason(grid, tr("laying stops"), &Own::broodStop, &Derived::broodStop);
    addSeason(grid, tr("laying restarts"), &Own::broodRestart, &Derived::broodRestart);
    addSeason(grid, tr("build-up"), &Own::buildup, &Derived::buildup);
    addSeason(grid, tr("spring forage starts"), &Own::forage, &Derived::forage);
    grid->setColumnStretch(2, 1);
    return grid;
}

void PlacePage::writeOwnClimate() {
    if (showing_ || !own_->isChecked() || !latitude_->value()) return;
    book::OwnClimateRecord own;
    if (const auto* shown = yard_->shownYard())
        if (const auto* before = std::get_if<book::OwnClimateRecord>(&shown->site.where)) own = *before;
    own.latitude = *latitude_->value();
    for (std::size_t month = 0; month < 12; ++month) {
        const auto mean = months_[month]->value();
        if (!mean) return;
        own.monthlyMeanC[month] = *mean;
    }
    change([&own](book::Yard& yard) { yard.site.where = own; });
}

void PlacePage::showSeason(const book::Yard& yard) {
    const climate::SeasonDates* derived = nullptr;
    Winter winter(Hemisphere::North, 2000);
    for (const auto& colony : yard_->colonies())
        if (!derived && colony.answered) {
            derived = &colony.answered->answer.advice.season;
            winter = colony.answered->question.winter;
        }
    for (const auto& field : season_) {
        const auto& own = yard.season.*field.date;
        field.own->setChecked(own.has_value());
        field.day->setEnabled(own.has_value() && yard_->writable());
        const auto* date = derived && (derived->*field.derived) ? &*(derived->*field.derived) : nullptr;
        const QDate climateDay = date ? words::toQDate(winter.date(date->day)) : QDate(everyYear, 10, 1);
        const int day = own ? own->day : climateDay.day(), month = own ? own->month : climateDay.month();
        field.day->show(*Date::of(everyYear, month, std::min(day, QDate(everyYear, month, 1).daysInMonth())));
        field.said->setText(!date ? tr("not known")
                            : date->exact
                                ? words::date(winter.date(date->day))
                                : tr("%1, give or take %n days", nullptr, static_cast<int>(date->sdDays + 0.5))
                                      .arg(words::date(winter.date(date->day))));
    }
}

void PlacePage::showClimate(const book::Yard& yard) {
    const auto& reference = *yard_->book()->reference();
    const auto site = answer::siteOf(yard.site, {}, reference);
    if (!site.ok()) {
        curve_->clear();
        return said_->setText(problemWords(site.problems().front()));
    }
    curve_->show(site->curve,
                 Winter::containing(yard_->asOf().value_or(*Date::of(2000, 10, 1)), site->curve.hemisphere()));
    const auto* station = site->stationId.empty() ? nullptr : reference.station(site->stationId);
    const auto* source = station ? reference.source(station->source) : nullptr;
    QString said = station
                       ? tr("Curve of %1, %2 above the sea.")
                             .arg(placeWords(PlaceChoice(station->id), reference), words::height(station->elevationM))
                       : tr("Your own temperatures.");
    if (site->heightShiftK != 0)
        said = tr("%1 Corrected by %2 for the height.").arg(said, words::temperatureShift(kelvins(site->heightShiftK)));
    if (source) said = tr("%1 Source: %2").arg(said, QString::fromStdString(source->citation));
    said_->setText(said);
}

} // namespace winterlarder::desk
