// SPDX-License-Identifier: GPL-3.0-or-later
#include "plots/month_ticks.h"

#include <QLocale>
#include <qcustomplot.h>

#include <algorithm>

namespace winterlarder::desk {

QSharedPointer<QCPAxisTickerText> monthTicks(const Winter& winter, int first, int last, bool yearBelow) {
    QSharedPointer<QCPAxisTickerText> ticks(new QCPAxisTickerText);
    const QLocale locale;
    for (int day = std::max(first, firstSeasonDay.w); day <= std::min(last, lastSeasonDay.w); ++day) {
        const Date date = winter.date(SeasonDay{day});
        if (date.day() != 1) continue;
        const QString month = locale.standaloneMonthName(date.month(), QLocale::ShortFormat);
        ticks->addTick(day, date.month() == 1 ? month + QLatin1Char(yearBelow ? '\n' : ' ') + QString::number(date.year()) : month);
    }
    return ticks;
}

} // namespace winterlarder::desk
