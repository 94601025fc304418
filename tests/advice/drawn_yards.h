// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/drawn_colonies.h"
#include "advice/yards.h"

//! Random yards for what holds of every yard's plan.
namespace winterlarder::advice {

// Rich, poor or weak, healthy and queenright: of such colonies a yard's plan makes something.
inline void makeUnlike(ColonyDraw& draw, ColonyQuestion& q) {
    const double capped = draw.chance(0.5) ? 0.9 : 0.2;
    for (auto& comb : q.combs) comb.capped = capped + draw.between(-0.05, 0.05);
    if (!q.combs.empty()) q.weighings.clear();
    q.queenSeen = q.eggsSeen = true;
    q.nucleus = false;
    q.bees = BeeCount{draw.chance(0.2) ? 4000.0 : 16000.0};
}

// Nearly empty by its combs, half full by the scale: both too little, so a first visit does no harm.
inline void contradict(ColonyQuestion& q) {
    if (q.combs.empty()) return;
    for (auto& comb : q.combs) comb.capped = 0.03;
    q.weighings = {{.day = q.asOf, .date = q.winter.date(q.asOf), .reading = q.tare + kilograms(14)}};
}

// Colonies of one place and day, from the last weeks of summer to those of late autumn.
inline void furnish(TestYard& yard, unsigned seed) {
    static const char* const names[] = {"Gravenstein", "Russet", "Pippin", "Cortland", "Spy"};
    ColonyDraw draw(seed);
    const char* place = draw.station();
    const auto first = draw.colonyAt(place).question;
    const auto days = phaseDays(first.season, first.decisions);
    const SeasonDay day{draw.whole(std::max(-150, days.summer.w - 15), days.late.w)};
    const int colonies = draw.whole(2, 5);
    for (int i = 0; i < colonies; ++i) {
        auto question = draw.colonyAt(place, day).question;
        question.trouble = draw.chance(0.01);
        if (draw.chance(0.7)) makeUnlike(draw, question);
        if (draw.chance(0.15)) contradict(question);
        yard.add(names[i], std::move(question));
    }
}

} // namespace winterlarder::advice
