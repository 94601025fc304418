// SPDX-License-Identifier: GPL-3.0-or-later
#include "learning/keeper.h"

#include "numerics/symmetric_system.h"
#include "support/require.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace winterlarder::learning {

double Lasting::median() const { return std::exp(logMean); }

std::optional<winter::LearnedMultipliers> KeeperLearned::multipliers(std::uint64_t yard, std::uint64_t colony) const {
    if (winters == 0) return std::nullopt;
    const auto inYard = yards.find(yard);
    const auto own = colonies.find(colony);
    const LastingPair& pair = own != colonies.end() ? own->second : inYard != yards.end() ? inYard->second : anywhere;
    return winter::LearnedMultipliers{pair.use.median(), pair.use.logSd, pair.death.median(), pair.death.logSd};
}

namespace {

// Places of the parts in the system: two for the keeper, two for each yard, two for each colony (use, death).
class Hierarchy {
public:
    Hierarchy(const std::vector<ColonyWinter>& colonyWinters, const ModelConstants& constants) : k(constants) {
        for (const auto& winter : colonyWinters) {
            yardPlace.try_emplace(winter.yard, 0);
            colonyPlace.try_emplace(winter.colony, 0);
            lastYard[winter.colony] = winter.yard;
        }
        std::size_t next = 2;
        for (auto& [id, place] : yardPlace) next = (place = next) + 2;
        for (auto& [id, place] : colonyPlace) next = (place = next) + 2;
        size = next;
    }

    double variance(bool death, double share) const {
        const double sd = death ? k.lastingDeathSd : k.lastingUseSd;
        return share * sd * sd;
    }
    double colonyShare() const { return 1 - k.lastingKeeperShare - k.lastingYardShare; }

    numerics::SymmetricSystem system(const std::vector<ColonyWinter>& colonyWinters, std::vector<double>& right) const {
        numerics::SymmetricSystem result(size);
        for (std::size_t part : {0u, 1u}) {
            result.add(part, part, 1 / variance(part == 1, k.lastingKeeperShare));
            for (const auto& [id, place] : yardPlace)
                result.add(place + part, place + part, 1 / variance(part == 1, k.lastingYardShare));
            for (const auto& [id, place] : colonyPlace)
                result.add(place + part, place + part, 1 / variance(part == 1, colonyShare()));
        }
        right.assign(size, 0);
        for (const auto& winter : colonyWinters) takeIn(winter, result, right);
        return result;
    }

    const ModelConstants& k;
    std::map<std::uint64_t, std::size_t> yardPlace, colonyPlace;
    std::map<std::uint64_t, std::uint64_t> lastYard;
    std::size_t size = 0;

private:
    void takeIn(const ColonyWinter& winter, numerics::SymmetricSystem& system, std::vector<double>& right) const {
        const WinterEvidence& e = winter.evidence;
        const std::array places{std::size_t{0}, yardPlace.at(winter.yard), colonyPlace.at(winter.colony)};
        for (std::size_t a : places) {
            right[a] += e.use;
            right[a + 1] += e.death;
            for (std::size_t b : places) {
                system.add(a, b, e.useUse);
                system.add(a, b + 1, e.useDeath);
                system.add(a + 1, b, e.useDeath);
                system.add(a + 1, b + 1, e.deathDeath);
            }
        }
    }
};

// What is believed of a sum of parts, with further variance that nothing was seen of.
Lasting sumOf(const numerics::SymmetricSystem& system, const std::vector<double>& mean,
              const std::vector<std::size_t>& places, std::size_t part, double unseenVariance) {
    std::vector<double> direction(system.size(), 0);
    double total = 0;
    for (std::size_t place : places) {
        direction[place + part] = 1;
        total += mean[place + part];
    }
    const auto solved = system.solve(direction);
    double variance = unseenVariance;
    for (std::size_t place : places) variance += solved[place + part];
    return {total, std::sqrt(variance)};
}

} // namespace

KeeperLearned learn(const std::vector<ColonyWinter>& winters, const ModelConstants& constants) {
    const Hierarchy hierarchy(winters, constants);
    std::vector<double> right;
    numerics::SymmetricSystem system = hierarchy.system(winters, right);
    system.decompose();
    const auto mean = system.solve(right);
    const auto pair = [&](const std::vector<std::size_t>& places, double unseenShare) {
        return LastingPair{sumOf(system, mean, places, 0, hierarchy.variance(false, unseenShare)),
                           sumOf(system, mean, places, 1, hierarchy.variance(true, unseenShare))};
    };
    KeeperLearned learned;
    learned.winters = static_cast<int>(std::count_if(
        winters.begin(), winters.end(), [](const ColonyWinter& each) { return each.evidence.saysAnything(); }));
    learned.keeper = pair({0}, 0);
    learned.anywhere = pair({0}, hierarchy.colonyShare() + constants.lastingYardShare);
    for (const auto& [id, place] : hierarchy.yardPlace) learned.yards[id] = pair({0, place}, hierarchy.colonyShare());
    for (const auto& [id, place] : hierarchy.colonyPlace)
        learned.colonies[id] = pair({0, hierarchy.yardPlace.at(hierarchy.lastYard.at(id)), place}, 0);
    return learned;
}

std::optional<ForageSeen> forageTurn(const std::vector<DayWeight>& given, const ModelConstants& constants) {
    constexpr double clearGainKg = 1;
    std::vector<DayWeight> weighings;
    for (const auto& each : given)
        if (each.day > climate::solstice) weighings.push_back(each);
    std::stable_sort(weighings.begin(), weighings.end(),
                     [](const DayWeight& a, const DayWeight& b) { return a.day < b.day; });
    const auto lowest = std::min_element(weighings.begin(), weighings.end(),
                                         [](const DayWeight& a, const DayWeight& b) { return a.gross < b.gross; });
    if (lowest == weighings.end() || lowest == weighings.begin() || lowest + 1 == weighings.end()) return std::nullopt;
    const bool gains = std::any_of(lowest + 1, weighings.end(), [&](const DayWeight& each) {
        return each.gross.value() >= lowest->gross.value() + clearGainKg;
    });
    if (!gains) return std::nullopt;
    const double between = (lowest + 1)->day - (lowest - 1)->day;
    return ForageSeen{lowest->day, std::hypot(constants.forageSeenSd, between / 4)};
}

namespace {

double yearlyForageVariance(double ruleSdDays, const ModelConstants& constants) {
    return std::max(0.0, ruleSdDays * ruleSdDays - constants.lastingForageSd * constants.lastingForageSd);
}

} // namespace

ForageShift learnForage(const std::vector<ForageSeen>& seen, const climate::SeasonDates& season, double seasonOffsetSdK,
                        const ModelConstants& constants) {
    require(season.forage.has_value(), "no first forage to learn a shift of");
    const double byOffset = constants.springShift * seasonOffsetSdK;
    const double yearly = yearlyForageVariance(season.forage->sdDays, constants) + byOffset * byOffset;
    double precision = 1 / (constants.lastingForageSd * constants.lastingForageSd), pull = 0;
    for (const auto& each : seen) {
        const double variance = yearly + each.sdDays * each.sdDays;
        precision += 1 / variance;
        pull += (each.day - season.forage->day) / variance;
    }
    return {pull / precision, std::sqrt(1 / precision), static_cast<int>(seen.size())};
}

climate::SeasonDates withForage(climate::SeasonDates season, const ForageShift& shift,
                                const ModelConstants& constants) {
    if (shift.years == 0 || !season.forage || season.forage->origin == climate::DateOrigin::Case) return season;
    const double yearly = yearlyForageVariance(season.forage->sdDays, constants);
    SeasonDay moved = season.forage->day + static_cast<int>(std::lround(shift.meanDays));
    if (season.buildup) moved = std::max(moved, season.buildup->day + climate::daysFromBuildupToForage);
    season.forage->day = std::min(moved, lastSimulatedDay);
    season.forage->sdDays = std::sqrt(yearly + shift.sdDays * shift.sdDays);
    return season;
}

} // namespace winterlarder::learning
