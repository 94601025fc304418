// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/colonies.h"

#include <algorithm>
#include <random>
#include <string>

//! Random colonies for what holds of every answer: places of both halves of the earth, any day of their year, any filling.
namespace winterlarder::advice {

struct Drawn {
    ColonyQuestion question;
    std::string what; //!< to be told where something does not hold
};

inline const winter::Sampling rough{1, 200};
inline Advice roughly(const ColonyQuestion& q) { return weigh(q, constants(), rough)->advice; }

//! Draws one colony after another from a seed.
class ColonyDraw {
public:
    explicit ColonyDraw(unsigned seed) : seed_(seed), random_(seed) {}

    double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(random_); }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    bool chance(double p) { return between(0, 1) < p; }

    const char* station() {
        static const char* const stations[] = {"ca-halifax",      "gb-london",    "de-munich",       "ca-winnipeg",
                                               "us-ga-atlanta",   "pt-lisbon",    "fr-paris",        "us-co-denver",
                                               "ca-victoria",     "au-hobart",    "nz-invercargill", "ar-bariloche",
                                               "za-bloemfontein", "au-melbourne", "cl-temuco",       "nz-christchurch"};
        return stations[whole(0, static_cast<int>(std::size(stations)) - 1)];
    }
    //! A colony at a place on a day: none given, drawn.
    Drawn colonyAt(const char* place, std::optional<SeasonDay> day = {}) {
        Made made;
        made.station = place;
        made.capped = between(0, 0.95);
        made.combs = chance(0.5) ? 20 : 10;
        made.covered = between(2, 10);
        if (shipped().station(place)->latitude < 0) made.asOf = "2027-03-10";
        auto q = advice::colony(made);
        q.asOf = q.lookedOn = day ? *day : SeasonDay{whole(-150, q.season.forage->day.w - 1)};
        if (chance(0.2)) q.lookedOn = std::max(q.asOf - whole(1, 25), SeasonDay{-153});
        stock(q, made);
        bees(q, made);
        keeper(q);
        return {q, std::string(place) + " on day " + std::to_string(q.asOf.w) + ", seed " + std::to_string(seed_)};
    }
    Drawn colony() { return colonyAt(station()); }

private:
    void stock(ColonyQuestion& q, const Made& made) {
        if (chance(0.5)) q.brood.reset();
        for (auto& comb : q.combs) {
            comb.capped = std::clamp(made.capped + between(-0.2, 0.2), 0.0, 0.98);
            if (!q.brood) comb.broodSaid = false;
        }
        q.boxUses.resize(q.boxes.size());
        if (made.combs == 20 && chance(0.4)) {
            for (std::size_t i = 10; i < 20; ++i) q.combs[i].inSuper = true;
            q.boxUses[1].super = true;
        }
        if (chance(0.2))
            q.feeds.push_back({q.lookedOn - 10, kilograms(2), true, q.winter.date(q.lookedOn).plusDays(-10)});
        if (q.boxes.size() > 1 && chance(0.3)) q.boxUses[1].putOn = q.winter.date(q.lookedOn).plusDays(whole(-30, -1));
        if (chance(0.1)) q.treatments.push_back({q.winter.date(q.lookedOn).plusDays(whole(-40, -1)), std::nullopt});
        if (chance(0.2)) hefted(q);
        else if (chance(0.2)) weighed(q);
        if (chance(0.1)) q.moisturePercent = between(15, 24);
    }
    // A heft stands alone; a weight on a scale beside the combs, now and then contradicting them.
    void weighed(ColonyQuestion& q) { q.weighings.push_back(onScale(q, kilograms(between(25, 60)))); }
    void hefted(ColonyQuestion& q) {
        weighed(q);
        q.combs.clear();
        q.weighings.back().heft = static_cast<stores::HeftWord>(whole(0, 2));
    }
    void bees(ColonyQuestion& q, const Made& made) {
        if (chance(0.2)) q.nucleus = made.covered < 5;
        q.queenSeen = chance(0.5) ? std::optional(chance(0.8)) : std::nullopt;
        q.eggsSeen = q.queenSeen;
        q.trouble = chance(0.05);
    }
    void keeper(ColonyQuestion& q) {
        if (chance(0.3)) q.answers.supersFor = chance(0.5) ? SupersFor::People : SupersFor::Bees;
        if (chance(0.2)) q.answers.visitsInWinter = chance(0.5);
        if (chance(0.2)) q.answers.foodBeside = chance(0.5);
        if (chance(0.2)) q.flowStrength = 0.3;
        if (chance(0.15)) q.steps = feeding::poundSteps;
        if (chance(0.3)) q.visitEveryDays = whole(1, 10);
    }

    unsigned seed_;
    std::mt19937 random_;
};

inline Drawn drawnColony(unsigned seed) { return ColonyDraw(seed).colony(); }

} // namespace winterlarder::advice
