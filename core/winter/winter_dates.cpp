// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/winter_dates.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::winter {

namespace {

double drawn(const climate::SeasonDate& date, double z) { return date.day.w + (date.exact ? 0 : date.sdDays * z); }

double shifted(const climate::SeasonDate& date, double z, double earlierBy) {
    return drawn(date, z) - (date.exact ? 0 : earlierBy);
}

int rounded(double day) { return static_cast<int>(std::nearbyint(day)); }

struct Laying {
    double stop = climate::solstice.w,
           restart = climate::solstice.w; // where laying never stops autumn laying passes into winter laying here
};

Laying drawLaying(const climate::SeasonDates& season, const DateLuck& luck) {
    if (!season.broodless()) return {};
    Laying laying;
    laying.stop = std::min(drawn(*season.broodStop, luck.broodStop), double(season.broodRestart->day.w));
    laying.restart = std::max(drawn(*season.broodRestart, luck.broodRestart), laying.stop);
    return laying;
}

} // namespace

void drawDates(const WinterQuestion& question, const ModelConstants& constants, const DateLuck& luck,
               WinterDraw& draw) {
    const auto& season = question.season;
    const double earlier = constants.springShift * luck.seasonOffsetK;
    const double earliness = constants.forageWithBuildup * luck.springEarliness + constants.forageOwn * luck.forage;
    Laying laying = drawLaying(season, luck);
    double spring = shifted(*season.buildup, luck.springEarliness, earlier);
    double forage = shifted(*season.forage, earliness, earlier);
    if (!season.buildup->exact) spring = std::max(spring, laying.restart + constants.datesApart);
    if (season.forage->exact) spring = std::min(spring, forage - constants.datesApart);
    else forage = std::max(forage, spring + constants.datesApart);
    laying.restart = std::min(laying.restart, spring - constants.datesApart);
    laying.stop = std::min(laying.stop, laying.restart);

    draw.broodStop = rounded(laying.stop);
    draw.broodRestart = rounded(laying.restart);
    draw.buildup = rounded(spring);
    draw.forage = rounded(forage);
    draw.lastIncome = season.lastIncome ? rounded(drawn(*season.lastIncome, luck.lastIncome)) : WinterDraw::neverIncome;
}

} // namespace winterlarder::winter
