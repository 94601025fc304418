// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/seen_brood.h"

#include "winter/demand.h"
#include "winter/winter_dates.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::winter {

double yearlyBroodSd(const WinterQuestion& q, const ModelConstants& k) {
    return q.learned ? yearlySd(k.broodSd, k.lastingUseSd) : k.broodSd;
}

SeenBrood seenBrood(const WinterQuestion& q, const ModelConstants& k) {
    const SeasonDay day = q.seenOn.value_or(q.start);
    const int stop = q.season.broodless() ? q.season.broodStop->day.w : climate::solstice.w;
    const double seen = q.brood->count;
    const double expected =
        broodAges * k.autumnLaying * q.bees.count * std::clamp((stop - day.w + k.broodAge) / k.autumnDecline, 0.0, 1.0);
    if (day.w >= stop || expected <= 0) return {.day = day.w, .perAge = seen / broodAges};
    if (seen < k.stoppedBelow * expected) return {.day = day.w, .perAge = seen / broodAges, .stopped = true};
    const double variance = yearlyBroodSd(q, k) * yearlyBroodSd(q, k);
    const double weight = variance / (variance + k.broodCountSd * k.broodCountSd);
    const double ratio = std::clamp(std::log(seen / expected), -1.0, 1.0);
    return {.day = day.w,
            .perAge = std::sqrt(expected * seen) / broodAges,
            .logShift = weight * ratio,
            .zScale = std::sqrt(1 - weight)};
}

bool seenToHaveStopped(const WinterQuestion& question, const ModelConstants& constants) {
    return question.brood && seenBrood(question, constants).stopped;
}

double beesAtStart(const WinterQuestion& q, const ModelConstants& constants) {
    if (!q.seenOn || *q.seenOn == q.start || q.bees.count <= 0) return q.bees.count;
    WinterQuestion before = q;
    before.seenOn.reset();
    before.brood.reset();
    const DemandEnsemble run = simulateCentral(before, constants);
    return q.bees.count * q.bees.count / run.means(std::min(*q.seenOn, run.lastDay())).bees;
}

} // namespace winterlarder::winter
