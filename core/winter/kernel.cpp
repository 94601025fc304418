// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/kernel.h"

#include "winter/heat_law.h"

#include <algorithm>
#include <array>

// Wider vectors where the processor has them; contraction is off, so the digits are the same with all of them.
#if defined(__GNUC__) && !defined(__clang__) && defined(__x86_64__) && defined(__OPTIMIZE__) &&                        \
    !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
#define WINTERLARDER_CLONES __attribute__((target_clones("default", "avx2", "avx512f")))
#else
#define WINTERLARDER_CLONES
#endif

namespace winterlarder::winter {

namespace {

// State of a block of winters at the start of a day. Bees live short or long; seen brood changes luck and stop.
struct BlockState {
    Lanes shortLived, longLived, broodTotal, smoothedC;
    Lanes broodLuck, broodStop;
    std::array<Lanes, broodAges> laid; // ring: slot of the day's eggs moves back by one each day
    Lanes netLoss, used, autumnIncome, usedToForage, lockedRun, longestRun;
};

// A division by what is the same for all winters is a product with its reciprocal, which is computed once a day.

// What one day did, per winter.
struct DayResult {
    Lanes temperature, eggs, adultPower, broodPower, use, broodFood, income, beesAtStart, longLivedAtStart, brood;
};

WINTERLARDER_INLINE double fullWinterEggs(double bees, const ModelConstants& k) {
    return k.winterLaying * lane::smaller(1.0, bees * (1 / k.winterLayingBees));
}

WINTERLARDER_INLINE double autumnEggs(double day, double bees, double ew, double stop, bool broodless,
                                      const ModelConstants& k) {
    const double falling = k.autumnLaying * bees * lane::clamp01((stop - day) * (1 / k.autumnDecline));
    return broodless ? falling : lane::larger(falling, k.eggFloor * ew);
}

WINTERLARDER_INLINE double winterEggs(double day, double ew, double restart, double buildup, double burst,
                                      double smoothedC, const ModelConstants& k) {
    const double ramp = lane::clamp01((day - restart) / lane::larger(k.shortestRamp, buildup - restart));
    const double warm = lane::clamp01((smoothedC - k.burstFrom) * (1 / k.burstFullOver));
    return ew * (k.winterLayingStart + (1 - k.winterLayingStart) * ramp) * (1 + k.burstStrength * burst * warm);
}

WINTERLARDER_INLINE double springEggs(double day, double bees, double ew, double buildup, const ModelConstants& k) {
    const double room = lane::larger(0.0, lane::smaller(k.queenLimit, k.springLayingPerBee * bees) - ew);
    return ew + lane::clamp01((day - buildup) * (1 / k.springRamp)) * room;
}

// Shares of the long-lived and the short-lived bees that die in a day, before the luck of the colony; nest: cells a bee.
WINTERLARDER_INLINE double longLivedDeath(double nest, const ModelConstants& k) {
    return k.winterDeath + (k.broodDeath - k.winterDeath) * lane::clamp01(nest * (1 / k.fullBroodNest));
}

WINTERLARDER_INLINE double shortLivedDeath(double day, double nest, double restart, const ModelConstants& k) {
    const double full = lane::smaller(1.0, nest * (1 / k.summerFullNest));
    const double summer = k.summerDeath * (1 - k.summerDeathByBrood + k.summerDeathByBrood * full);
    return day < restart ? summer : k.springDeath;
}

WINTERLARDER_CLONES
void oneDay(const KernelSetting& s, const BlockLuck& __restrict luck, int day, int slot, BlockState& __restrict state,
            DayResult& __restrict result) {
    const ModelConstants k = *s.constants; // a copy nothing can write to, so that it may stay in registers
    const double d = day;
    const double normal = s.normalC[static_cast<std::size_t>(day - s.start)];
    const double sd = s.dailySdK[static_cast<std::size_t>(day - s.start)];
    const Lanes& z = luck.weather[static_cast<std::size_t>(day - s.start)];
    Lanes& __restrict eggsToday =
        state.laid[static_cast<std::size_t>(slot)]; // the eggs of 21 days ago until overwritten
    const Lanes& __restrict fed =
        state.laid[static_cast<std::size_t>((slot + static_cast<int>(k.larvaFedAge)) % broodAges)];

    for (std::size_t i = 0; i < laneCount; ++i) {
        const double t = normal + luck.offsetK[i] + sd * z[i];
        const double smoothed = state.smoothedC[i] + (t - state.smoothedC[i]) * (1 / k.warmthMemory);
        const double shortLived = state.shortLived[i], longLived = state.longLived[i];
        const double bees = shortLived + longLived;

        const double ew = fullWinterEggs(bees, k);
        const double autumn = autumnEggs(d, bees, ew, state.broodStop[i], s.broodless, k);
        const double winter = winterEggs(d, ew, luck.broodRestart[i], luck.buildup[i], luck.burst[i], smoothed, k);
        const double spring = springEggs(d, bees, ew, luck.buildup[i], k);
        const double afterRestart = d < luck.buildup[i] ? winter : spring;
        const double afterStop = d < luck.broodRestart[i] ? 0.0 : afterRestart;
        const double wanted = d < state.broodStop[i] ? autumn : afterStop;
        const double eggs = lane::smaller(state.broodLuck[i] * wanted, k.springLayingPerBee * bees);

        const double emerging = k.broodSurvival * eggsToday[i];
        const double brood = lane::larger(0.0, state.broodTotal[i] + eggs - eggsToday[i]);

        const HeatLaw heat = heatLaw(bees, brood, t, k.diurnalHalfRange, s.shell, s.race, k);
        const double adults = luck.use[i] * (luck.heat[i] * heat.adults);
        const double warmth = luck.use[i] * heat.brood;
        const double rearing = luck.use[i] * (k.honeyPerWorker * k.broodSurvival * fed[i]);
        const double use = (adults + warmth) * (86400.0 / k.honeyEnergy) + rearing;

        const double flying = k.income * 1e-4 * bees * lane::clamp01((t - k.incomeFrom) * (1 / k.incomeFullOver));
        const double bloom = lane::clamp01((d - luck.forage[i] + k.bloomHalfWidth) * (0.5 / k.bloomHalfWidth));
        const double background = (s.dearth && d < luck.forage[i] - k.bloomHalfWidth) ? k.backgroundIncome : 0.0;
        const double autumnFlow = d <= luck.lastIncome[i] ? flying : 0.0;
        const double income = flying * (bloom + background) + k.autumnTrickle * autumnFlow;

        const double nest = brood / lane::larger(bees, 1.0);
        const double longShare = lane::clamp01(k.longLivedGain * (k.shortLivedNest - nest));
        const double longDeath = lane::smaller(k.mostDeath, luck.death[i] * longLivedDeath(nest, k));
        const double shortDeath =
            lane::smaller(k.mostDeath, luck.death[i] * shortLivedDeath(d, nest, luck.broodRestart[i], k));

        const bool beforeForage = d < luck.forage[i];
        const double run = (beforeForage && t + k.diurnalHalfRange < k.lockedInBelow) ? state.lockedRun[i] + 1 : 0.0;

        eggsToday[i] = eggs;
        state.smoothedC[i] = smoothed;
        state.broodTotal[i] = brood;
        state.shortLived[i] = shortLived * (1 - shortDeath) + (1 - longShare) * emerging;
        state.longLived[i] = longLived * (1 - longDeath) + longShare * emerging;
        state.netLoss[i] += (use - income) * 1e-3;
        state.used[i] += use * 1e-3;
        state.autumnIncome[i] += autumnFlow * 1e-3;
        state.usedToForage[i] += beforeForage ? use * 1e-3 : 0.0;
        state.lockedRun[i] = run;
        state.longestRun[i] = lane::larger(state.longestRun[i], run);

        result.temperature[i] = t;
        result.eggs[i] = eggs;
        result.adultPower[i] = adults;
        result.broodPower[i] = warmth;
        result.use[i] = use;
        result.broodFood[i] = rearing;
        result.income[i] = income;
        result.beesAtStart[i] = bees;
        result.longLivedAtStart[i] = longLived;
        result.brood[i] = brood;
    }
}

void fillBrood(BlockState& state, std::size_t lane, double perAge) {
    for (auto& age : state.laid) age[lane] = perAge;
    state.broodTotal[lane] = broodAges * perAge;
}

// Eggs a day behind the brood nobody spoke of: laid broodAge days back on the average; none between stop and restart.
double unseenEggs(const KernelSetting& s, const BlockLuck& luck, double bees, std::size_t i) {
    const ModelConstants& k = *s.constants;
    const double ew = fullWinterEggs(bees, k);
    const double restart = luck.broodRestart[i], buildup = luck.buildup[i];
    if (s.start <= restart)
        return luck.brood[i] * autumnEggs(s.start - k.broodAge, bees, ew, luck.broodStop[i], s.broodless, k);
    const double wanted = s.start < buildup ? winterEggs(s.start, ew, restart, buildup, 0, 0, k)
                                            : springEggs(s.start, bees, ew, buildup, k);
    return std::min(luck.brood[i] * wanted, k.springLayingPerBee * bees);
}

// Long-lived bees of a colony first seen: none until longLivedFrom days before laying stops, all from longLivedAll on.
double longLivedShare(double start, double stop, const ModelConstants& k) {
    return lane::clamp01((start - (stop - k.longLivedFrom)) / (k.longLivedFrom - k.longLivedAll));
}

BlockState startState(const KernelSetting& s, const BlockLuck& luck) {
    BlockState state{};
    for (std::size_t i = 0; i < laneCount; ++i) {
        const double bees = s.bees * luck.bees[i];
        const double share = longLivedShare(s.start, luck.broodStop[i], *s.constants);
        state.longLived[i] = share * bees;
        state.shortLived[i] = bees - share * bees;
        state.smoothedC[i] = s.normalC.front();
        fillBrood(state, i, unseenEggs(s, luck, bees, i));
    }
    state.broodLuck = luck.brood;
    state.broodStop = luck.broodStop;
    return state;
}

void takeInSeenBrood(const KernelSetting& s, const BlockLuck& luck, BlockState& state) {
    for (std::size_t i = 0; i < laneCount; ++i) fillBrood(state, i, s.seen->perAge);
    state.broodLuck = luck.broodSeen;
    if (s.seen->stopped && s.broodless) state.broodStop.fill(s.seen->day);
}

double sum(const Lanes& lanes, int count) {
    double total = 0;
    for (int i = 0; i < count; ++i) total += lanes[static_cast<std::size_t>(i)];
    return total;
}

DayMeans sums(const DayResult& r, int count) {
    return {
        sum(r.temperature, count), sum(r.eggs, count),       sum(r.beesAtStart, count), sum(r.longLivedAtStart, count),
        sum(r.brood, count),       sum(r.adultPower, count), sum(r.broodPower, count),  sum(r.use, count),
        sum(r.broodFood, count),   sum(r.income, count)};
}

void write(float* row, const Lanes& lanes, int count) {
    for (int i = 0; i < count; ++i) row[i] = static_cast<float>(lanes[static_cast<std::size_t>(i)]);
}

} // namespace

void runBlock(const KernelSetting& setting, const BlockLuck& luck, BlockOutput& output) {
    BlockState state = startState(setting, luck);
    DayResult result{};
    int slot = 0;
    for (int day = setting.start; day <= setting.end; ++day) {
        if (setting.seen && setting.seen->day == day) takeInSeenBrood(setting, luck, state);
        slot = slot == 0 ? broodAges - 1 : slot - 1; // the oldest eggs make room for today's
        oneDay(setting, luck, day, slot, state, result);
        const std::size_t at = static_cast<std::size_t>(day - setting.start) * output.stride;
        write(output.netLoss + at, state.netLoss, output.lanes);
        write(output.used + at, state.used, output.lanes);
        write(output.autumnIncome + at, state.autumnIncome, output.lanes);
        write(output.bees + at, result.beesAtStart, output.lanes);
        if (output.brood) write(output.brood + at, result.brood, output.lanes);
        output.sums.push_back(sums(result, output.lanes));
    }
    output.usedToForageKg = state.usedToForage;
    output.longestLockedIn = state.longestRun;
}

} // namespace winterlarder::winter
