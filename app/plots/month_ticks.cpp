// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/month_ticks.h"

#include "models/words.h"

#include <QLocale>
#include <qcustomplot.h>

#include <algorithm>
#include <array>

namespace winterlarder::desk {

namespace {

// The days of a month that have a tick, from the first on; the last stands as far from the next month's first as from the one before it.
struct Closeness {
    int step;
    int lastDay;
};
constexpr std::array closest{Closeness{2, 29}, Closeness{7, 22}, Closeness{14, 15}};

template <typename Name>
QSharedPointer<QCPAxisTickerText> ticks(const Winter& winter, int first, int last, const Name& nameOf) {
    QSharedPointer<QCPAxisTickerText> made(new QCPAxisTickerText);
    for (int day = std::max(first, firstSeasonDay.w); day <= std::min(last, lastSeasonDay.w); ++day)
        if (const QString name = nameOf(winter.date(SeasonDay{day})); !name.isEmpty()) made->addTick(day, name);
    return made;
}

} // namespace

QSharedPointer<QCPAxisTickerText> monthTicks(const Winter& winter, int first, int last, bool yearBelow) {
    const QLocale locale;
    return ticks(winter, first, last, [&](Date date) {
        if (date.day() != 1) return QString();
        const QString month = locale.standaloneMonthName(date.month(), QLocale::ShortFormat);
        return date.month() == 1 ? month + QLatin1Char(yearBelow ? '\n' : ' ') + QString::number(date.year()) : month;
    });
}

QSharedPointer<QCPAxisTickerText> dayTicks(const Winter& winter, int first, int last, int most) {
    const auto fits = [&](const Closeness& each) { return (last - first) / each.step < most; };
    const auto chosen = std::find_if(closest.begin(), closest.end(), fits);
    if (chosen == closest.end()) return monthTicks(winter, first, last);
    return ticks(winter, first, last, [&](Date date) {
        if (date.day() % chosen->step != 1 || date.day() > chosen->lastDay) return QString();
        return date.day() == 1 && date.month() == 1 ? words::dateWithYear(date) : words::date(date);
    });
}

} // namespace winterlarder::desk
