// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/words.h"
#include "plots/winter_plot.h"

#include <QLocale>
#include <QStringList>

#include <algorithm>

//! What the winter picture shows, in words and numbers.
namespace winterlarder::desk {

namespace {

QString oneDecimal(double value) { return QLocale().toString(value, 'f', 1); }

QString shownKg(double kilograms) { return oneDecimal(valueIn(Mass(kilograms), words::shownMass())); }

QString shownGrams(double value) { return oneDecimal(valueIn(grams(value), words::shownSmallMass())); }

QString stores(const DayReading& reading) {
    return words::fineSpread({Mass(reading.low), Mass(reading.middle), Mass(reading.high)});
}

// The day of spring forage, or the last one that is drawn.
std::size_t placeOfForage(const WinterPicture& picture) {
    const auto forage = std::find_if(picture.marks.begin(), picture.marks.end(),
                                     [](const auto& mark) { return mark.kind == SeasonMarkKind::Forage; });
    const SeasonDay day = forage == picture.marks.end() ? picture.last : std::min(forage->day, picture.last);
    return static_cast<std::size_t>(day - picture.first);
}

} // namespace

QString WinterPlot::readout(SeasonDay day) const {
    if (!picture_ || picture_->empty() || day < picture_->first || day > picture_->last) return {};
    const auto at = static_cast<std::size_t>(day - picture_->first);
    const auto& use = picture_->daily[at];
    const QString eaten =
        tr("a living colony eats %1 a day (adults %2, warmth for brood %3, food for brood %4) at %5")
            .arg(words::smallMass(grams(use.adults + use.broodWarmth + use.broodFood)),
                 words::smallMass(grams(use.adults)), words::smallMass(grams(use.broodWarmth)),
                 words::smallMass(grams(use.broodFood)), words::temperature(celsius(use.temperatureC), 0));
    QStringList said{words::date(picture_->winter.date(day))};
    for (const auto& mark : picture_->marks)
        if (mark.day == day) said << words::seasonMark(mark.kind); // its name may have had no room in the picture
    for (const auto& option : picture_->options) {
        if (!options_.contains(option.kind) || at >= option.readings.size()) continue;
        const auto& reading = option.readings[at];
        said << tr("%1 %2, under the reserve in %3 of 100 winters")
                    .arg(words::option(option.kind, told()), stores(reading),
                         words::ofHundred({reading.shareBelowReserve, 0}));
    }
    said << eaten;
    return said.join(tr("; "));
}

QString WinterPlot::numbers() const {
    if (!picture_ || picture_->empty()) return {};
    QStringList lines;
    QStringList head{tr("date")};
    const QString mass = words::name(words::shownMass()), food = words::name(words::shownSmallMass());
    for (const auto& option : picture_->options) {
        if (!options_.contains(option.kind)) continue;
        const QString name = words::option(option.kind, told());
        head << tr("%1: low, %2").arg(name, mass) << tr("%1: middle, %2").arg(name, mass)
             << tr("%1: high, %2").arg(name, mass) << tr("%1: under reserve, of 100").arg(name);
    }
    head << tr("adults, %1").arg(food) << tr("warmth for brood, %1").arg(food) << tr("food for brood, %1").arg(food)
         << tr("air, %1").arg(words::name(words::shownTemperature()));
    lines << head.join(QLatin1Char('\t'));
    for (std::size_t at = 0; at < picture_->daily.size(); ++at) {
        QStringList row{QString::fromStdString(picture_->winter.date(picture_->first + static_cast<int>(at)).iso())};
        for (const auto& option : picture_->options) {
            if (!options_.contains(option.kind)) continue;
            const auto reading = at < option.readings.size() ? option.readings[at] : DayReading();
            row << shownKg(reading.low) << shownKg(reading.middle) << shownKg(reading.high)
                << oneDecimal(100 * reading.shareBelowReserve);
        }
        const auto& use = picture_->daily[at];
        row << shownGrams(use.adults) << shownGrams(use.broodWarmth) << shownGrams(use.broodFood)
            << oneDecimal(valueIn(celsius(use.temperatureC), words::shownTemperature()));
        lines << row.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n'));
}

QString WinterPlot::summary() const {
    if (!picture_ || picture_->empty()) return {};
    QStringList said{tr("From %1 to %2")
                         .arg(words::longDate(picture_->winter.date(picture_->first)),
                              words::longDate(picture_->winter.date(picture_->last)))};
    const auto forage = placeOfForage(*picture_);
    for (const auto& option : picture_->options) {
        if (!options_.contains(option.kind) || forage >= option.readings.size()) continue;
        const auto& reading = option.readings[forage];
        said << tr("%1: %2 today, %3 as forage starts, then under the reserve in %4 of 100 winters")
                    .arg(words::option(option.kind, told()), stores(option.readings.front()), stores(reading),
                         words::ofHundred({reading.shareBelowReserve, 0}));
    }
    for (const auto& mark : picture_->marks)
        said << tr("%1 %2", "last nectar 30 Sep")
                    .arg(words::seasonMark(mark.kind), words::date(picture_->winter.date(mark.day)));
    said << tr("arrow keys read out each day");
    return said.join(tr("; "));
}

} // namespace winterlarder::desk
