// SPDX-License-Identifier: GPL-3.0-or-later
// The climate part of the page of a place: own temperatures, the dates they give and the curve.
#include "answer/site_of_case.h"
#include "fields/day_field.h"
#include "fields/place_field.h"
#include "models/problem_words.h"
#include "models/words.h"
#include "pages/place_page.h"
#include "plots/curve_plot.h"

#include <QCheckBox>

#include <algorithm>

namespace winterlarder::desk {

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
