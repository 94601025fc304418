// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "winter/places.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

//! A colony asked about again and again while summer turns into autumn: what may move between two looks, and how far.
//! Limits are the
//! model specification's own (section 6), measured on all stations with a winter.
namespace winterlarder::winter::continuity {

//! Stations whose colonies stop laying: they have a winter.
inline std::vector<std::string> stationsWithAWinter() {
    std::vector<std::string> ids;
    for (const auto& station : shipped().stations)
        if (climate::deriveSeason(curveOf(station.id), constants()).broodless()) ids.push_back(station.id);
    return ids;
}

struct Colony {
    double bees = 0;
    std::optional<double> brood;
};

inline double median(std::span<const float> values) { return quantile({values.begin(), values.end()}, 0.5); }

//! One look at a place: the ensemble from that day on and what follows from it.
class LookedAt {
public:
    LookedAt(const climate::ClimateCurve& curve, Colony colony, int day, int winters, double beesLogSd)
        : day_(day), ensemble_(*simulate(question(curve, colony, day, beesLogSd), constants(), {1, winters}, 1)) {}

    //! P80 of the largest net loss + 4 kg.
    double need() const { return quantile(lossesFrom(ensemble_, {day_}, {}).largest, 0.8) + 4; }
    //! What half of the winters have at the start of a later day.
    Colony on(int day) const { return {median(ensemble_.bees({day})), median(ensemble_.brood({day - 1}))}; }
    double netLossUntil(int day) const { return quantile(netLossBetween(ensemble_, {}, {day_}, {day}), 0.5); }
    double logSdOfBees(int day) const {
        double sum = 0, squares = 0;
        for (float bees : ensemble_.bees({day})) {
            const double log = std::log(static_cast<double>(bees));
            sum += log, squares += log * log;
        }
        const double n = ensemble_.winters();
        return std::sqrt(squares / n - sum / n * sum / n);
    }

private:
    static WinterQuestion question(const climate::ClimateCurve& curve, Colony colony, int day, double beesLogSd) {
        auto asked = questionAt(curve, colony.bees, day);
        if (colony.brood) asked.brood = BeeCount{*colony.brood};
        asked.beesLogSd = beesLogSd;
        asked.keepBrood = true;
        return asked;
    }
    int day_;
    DemandEnsemble ensemble_;
};

inline constexpr int tenthOfAugust = -144, firstOfSeptember = -122, endOfOctober = -62;
//! 1 October, 1 April in the south.
inline int firstOfOctober(const climate::ClimateCurve& curve) {
    return curve.hemisphere() == Hemisphere::South ? -91 : -92;
}

//! Bees on 1 October over bees on 1 September, 8,000 to 25,000 bees and up to 0.8 brood cells a bee.
inline void expectFewerButNotFew(const std::string& station) {
    const auto curve = curveOf(station);
    for (double bees : {8000.0, 15000.0, 25000.0})
        for (double nest : {0.0, 0.05, 0.2, 0.4, 0.6, 0.8}) {
            auto asked = questionAt(curve, bees, firstOfSeptember);
            asked.brood = BeeCount{nest * bees};
            const double ratio = simulateCentral(asked, constants()).means({firstOfOctober(curve)}).bees / bees;
            EXPECT_GT(ratio, 0.5) << station << ", nest " << nest;
            EXPECT_LT(ratio, 1.3) << station << ", nest " << nest;
        }
}

//! The need a colony has on 1 September and a month later, with the bees and brood it has by then.
inline void expectNeedToHold(const std::string& station, int winters) {
    const auto curve = curveOf(station);
    const int later = firstOfOctober(curve);
    for (double bees : {8000.0, 15000.0, 25000.0})
        for (double nest : {0.0, 0.2, 0.4, 0.6, 0.8}) {
            const LookedAt september(curve, {bees, nest * bees}, firstOfSeptember, winters, constants().beesSd);
            const LookedAt october(curve, september.on(later), later, winters, constants().beesSd);
            const double less = september.need() - october.need();
            EXPECT_GT(less, -4.5) << station << ", " << bees << " bees, nest " << nest;
            EXPECT_LT(less, 7.5) << station << ", " << bees << " bees, nest " << nest;
        }
}

//! Asked again every week from 10 August to the end of October: need rises by no more than `rise` kg, and with what
//! was eaten added it
//! changes by no more than `jump` kg.
inline void expectNoJumps(const std::string& station, Colony colony, int winters, double rise, double jump) {
    const auto curve = curveOf(station);
    std::optional<double> need;
    double eaten = 0;
    for (int day = tenthOfAugust; day <= endOfOctober; day += 7) {
        const LookedAt look(curve, colony, day, winters, 0);
        if (need) {
            EXPECT_LT(look.need() - *need, rise) << station << ", " << colony.bees << " bees, day " << day;
            EXPECT_LT(std::abs(look.need() - *need + eaten), jump)
                << station << ", " << colony.bees << " bees, day " << day;
        }
        need = look.need();
        eaten = look.netLossUntil(day + 7);
        colony = look.on(day + 7);
    }
}

//! Places where laying stops by mid September and bees part less in a month than counted colonies do (0.2 at the
//! least): what the model gives there with 2,500 winters. Known disagreements, each held to its value; not passes.
inline const std::map<std::string, double>& tooAlike() {
    static const std::map<std::string, double> places{
        {"is-reykjavik", 0.153},    {"no-tromso", 0.153},       {"fi-sodankyla", 0.156},    {"ca-whitehorse", 0.156},
        {"ch-davos", 0.161},        {"us-ak-anchorage", 0.190}, {"ca-princegeorge", 0.190}, {"ca-thepas", 0.195},
        {"ca-princealbert", 0.199}, {"se-lulea", 0.199}};
    return places;
}

//! How far the winters' bees have parted after a month, as counts of colonies have (0.25). The standard error of a
//! spread over 400 winters is 0.007; known disagreements are held to within two of them.
inline void expectUsualSpread(const std::string& station, int winters) {
    const auto curve = curveOf(station);
    const auto known = tooAlike().find(station);
    for (double bees : {10000.0, 18000.0}) {
        const LookedAt september(curve, {bees, 0.7 * bees}, firstOfSeptember, winters, constants().beesSd);
        const double sd = september.logSdOfBees(firstOfOctober(curve));
        if (known != tooAlike().end()) {
            EXPECT_NEAR(sd, known->second, 0.014) << station << ": where it has become right, take it off the list";
            continue;
        }
        EXPECT_GT(sd, 0.2) << station;
        EXPECT_LT(sd, 0.35) << station;
    }
}

inline void expectAll(const std::string& station, int winters) {
    expectFewerButNotFew(station);
    expectNeedToHold(station, winters);
    for (double bees : {12000.0, 20000.0}) expectNoJumps(station, {bees, 0.75 * bees}, winters, 0.6, 1.8);
    for (const Colony& unusual : {Colony{20000, 6000}, Colony{28000, 28000}})
        expectNoJumps(station, unusual, winters, 3.5, 3.5);
    expectUsualSpread(station, winters);
}

} // namespace winterlarder::winter::continuity
