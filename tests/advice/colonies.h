// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "stores/bees.h"
#include "support/require.h"
#include "support/shipped.h"

#include <gtest/gtest.h>
#include <stdexcept>

namespace winterlarder::advice {

//! What the test colony is made of; every comb of its one box alike.
struct Made {
    const char* station = "ca-halifax";
    const char* asOf = "2026-09-14";
    const char* lookedOn = nullptr; //!< as asOf
    double capped = 0.8;
    double brood = 0;
    int combs = 10;
    double covered = 8;
};

inline ColonyQuestion colony(const Made& made) {
    ColonyQuestion q;
    q.colony = "Test";
    q.site = climate::siteAtStation(*shipped().station(made.station), std::nullopt).value();
    const Date asOf = *Date::parse(made.asOf);
    q.winter = Winter::containing(asOf, q.site->curve.hemisphere());
    q.asOf = q.winter.seasonDay(asOf);
    q.lookedOn = made.lookedOn ? q.winter.seasonDay(*Date::parse(made.lookedOn)) : q.asOf;
    q.season = climate::deriveSeason(q.site->curve, constants());
    const auto format = hive::combFormat(*shipped().format("langstroth-deep"));
    const int boxes = (made.combs + 9) / 10;
    for (int box = 0; box < boxes; ++box) q.boxes.push_back(format);
    for (int i = 0; i < made.combs; ++i) {
        stores::Comb comb{format, i / 10, i % 10};
        comb.capped = made.capped;
        comb.brood = made.brood;
        comb.broodSaid = true;
        q.combs.push_back(comb);
    }
    q.coveredCombs = made.covered;
    q.bees = stores::beesOnCombs(made.covered, q.combs, format);
    q.brood = stores::broodOnCombs(q.combs);
    q.tare = kilograms(20);
    q.decisions = shipped().decisions;
    q.stream = winter::colonyStream(q.colony);
    return q;
}

//! A hive on a scale on the day asked about.
inline WeighedHive onScale(const ColonyQuestion& q, Mass gross) {
    return {.day = q.asOf, .date = q.winter.date(q.asOf), .reading = gross};
}
//! Nothing is known of its stores but one weighing of that day.
inline ColonyQuestion weighedAt(const char* asOf, double grossKg, const char* station = "ca-halifax") {
    auto q = colony({.station = station, .asOf = asOf});
    q.combs.clear();
    q.brood.reset();
    q.weighings.push_back(onScale(q, kilograms(grossKg)));
    return q;
}

inline ColonyQuestion hefted(const char* asOf, stores::HeftWord word) {
    auto q = weighedAt(asOf, 0);
    q.weighings.front().heft = word;
    return q;
}

inline const winter::Sampling quick{1, 600};

inline Advice adviceFor(const ColonyQuestion& question) { return weigh(question, constants(), quick, 2)->advice; }

inline bool says(const std::vector<Remark>& remarks, std::string_view id) {
    for (const auto& remark : remarks)
        if (remark.id == id) return true;
    return false;
}

inline const Option* option(const Advice& advice, OptionKind kind) {
    for (const auto& each : advice.options)
        if (each.kind == kind) return &each;
    return nullptr;
}

} // namespace winterlarder::advice
