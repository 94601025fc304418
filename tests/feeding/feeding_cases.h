// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "feeding/schedule.h"

#include <cmath>
#include <memory>
#include <numbers>

namespace winterlarder::feeding {

//! Every day at one temperature: 16 C means a daily maximum of 20 C, warm enough for the full uptake.
inline climate::ClimateCurve everyDay(double celsiusMean) {
    return climate::ClimateCurve::constant(celsius(celsiusMean), 45, climate::Variability{});
}

//! A year with its coldest month in January (south: July).
inline climate::ClimateCurve yearOf(double meanC, double halfRangeK, double latitude) {
    std::array<Temperature, 12> months{};
    const double south = latitude < 0 ? 6 : 0;
    for (std::size_t month = 0; month < months.size(); ++month) {
        const double phase = 2 * std::numbers::pi * (static_cast<double>(month) - south) / 12;
        months[month] = celsius(meanC - halfRangeK * std::cos(phase));
    }
    return climate::ClimateCurve::fromMonthlyMeans(months, latitude, climate::Variability{4, 3, 0.8, 0.5}).value();
}

inline climate::SeasonDate on(int seasonDay) { return {SeasonDay{seasonDay}, 6}; }

//! 20,000 bees (4 L a day), 10 kg wanted on 3 September 2026, syrup advised till 3 October, taken till 23 October,
//! refused from 2 November; first forage on 1 May.
inline FeedingQuestion autumnQuestion(const climate::ClimateCurve& curve) {
    FeedingQuestion question{kilograms(10), Winter(Hemisphere::North, 2026), SeasonDay{-120}};
    question.curve = &curve;
    question.bees = {20000};
    question.season.feedAdvisedBy = on(-90);
    question.season.syrupDeadline = on(-70);
    question.season.syrupRefused = on(-60);
    question.season.buildup = on(90);
    question.season.forage = on(120);
    return question;
}

inline std::vector<Visit> visitsOf(const FeedingPlan& plan, VisitKind kind) {
    std::vector<Visit> visits;
    for (const Visit& visit : plan.visits)
        if (visit.kind == kind) visits.push_back(visit);
    return visits;
}

} // namespace winterlarder::feeding
