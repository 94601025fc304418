// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/kernel.h"

#include "winter/heat_law.h"

#include <algorithm>
#include <array>

// Wider vectors where the processor has them; contraction is off, so the digits are the same with all of them.
#if defined(__GNUC__) && !defined(__clang__) && defined(__x86_64__) && defined(__OPTIMIZE__) && \
    !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
#define WINTERLARDER_CLONES __attribute__((target_clones("default", "avx2", "avx512f")))
#else
#define WINTERLARDER_CLONES
#endif

namespace winterlarder::winter {

namespace {

constexpr int broodAges = 21;
constexpr int feedingAge = 6;         // days after laying when a larva's share of honey is counted
constexpr double fewestRampDays = 30; // of the winter laying ramp
constexpr double dailyDeathLimit = 0.1;
constexpr double incomeFromC = 8, incomeFullOverK = 6;

// State of a block of winters at the start of a day.
struct BlockState {
    Lanes bees, broodTotal, smoothedC;
    std::array<Lanes, broodAges> laid; // ring: slot of the day's eggs moves back by one each day
    Lanes netLoss, used, autumnIncome, usedToForage, lockedRun, longestRun;
};

// What one day did, per winter.
struct DayResult {
    Lanes temperature, eggs, adultPower, broodPower, use, broodFood, income, beesAtStart, brood;
};

WINTERLARDER_INLINE double autumnEggs(double day, double bees, double ew, double stop, bool broodless,
                                      const ModelConstants& k) {
    const double falling = k.autumnLaying * bees * lane::clamp01((stop - day) / k.autumnDecline);
    return broodless ? falling : lane::larger(falling, k.eggFloor * ew);
}

WINTERLARDER_INLINE double winterEggs(double day, double ew, double restart, double buildup, double burst,
                                      double smoothedC, const ModelConstants& k) {
    const double ramp = lane::clamp01((day - restart) / lane::larger(fewestRampDays, buildup - restart));
    const double warm = lane::clamp01((smoothedC - 4) / 4);
    return ew * (k.eggFloor + (1 - k.eggFloor) * ramp) * (1 + k.burstStrength * burst * warm);
}

WINTERLARDER_INLINE double springEggs(double day, double bees, double ew, double buildup, const ModelConstants& k) {
    const double room = lane::larger(0.0, lane::smaller(k.queenLimit, k.springLayingPerBee * bees) - ew);
    return ew + lane::clamp01((day - buildup) / k.springRamp) * room;
}

WINTERLARDER_CLONES
void oneDay(const KernelSetting& s, const BlockLuck& __restrict luck, int day, int slot, BlockState& __restrict state,
            DayResult& __restrict result) {
    const ModelConstants k = *s.constants; // a copy nothing can write to, so that it may stay in registers
    const double d = day;
    const double normal = s.normalC[static_cast<std::size_t>(day - s.start)];
    const double sd = s.dailySdK[static_cast<std::size_t>(day - s.start)];
    const Lanes& z = luck.weather[static_cast<std::size_t>(day - s.start)];
    Lanes& __restrict eggsToday = state.laid[static_cast<std::size_t>(slot)]; // the eggs of 21 days ago until overwritten
    const Lanes& __restrict fed = state.laid[static_cast<std::size_t>((slot + feedingAge) % broodAges)];

    for (std::size_t i = 0; i < laneCount; ++i) {
        const double t = normal + luck.offsetK[i] + sd * z[i];
        const double smoothed = state.smoothedC[i] + (t - state.smoothedC[i]) / 7;
        const double bees = state.bees[i];

        const double ew = k.winterLaying * lane::smaller(1.0, bees / k.winterLayingBees);
        const double autumn = autumnEggs(d, bees, ew, luck.broodStop[i], s.broodless, k);
        const double winter = winterEggs(d, ew, luck.broodRestart[i], luck.buildup[i], luck.burst[i], smoothed, k);
        const double spring = springEggs(d, bees, ew, luck.buildup[i], k);
        const double afterRestart = d < luck.buildup[i] ? winter : spring;
        const double afterStop = d < luck.broodRestart[i] ? 0.0 : afterRestart;
        const double wanted = d < luck.broodStop[i] ? autumn : afterStop;
        const double eggs = lane::smaller(luck.brood[i] * wanted, k.springLayingPerBee * bees);

        const double emerging = k.broodSurvival * eggsToday[i];
        const double brood = lane::larger(0.0, state.broodTotal[i] + eggs - eggsToday[i]);

        const HeatLaw heat = heatLaw(bees, brood, t, k.diurnalHalfRange, s.shell, s.race, k);
        const double adults = luck.use[i] * (luck.heat[i] * heat.adults);
        const double nest = luck.use[i] * heat.brood;
        const double rearing = luck.use[i] * (k.honeyPerWorker * k.broodSurvival * fed[i]);
        const double use = (adults + nest) * 86400.0 / k.honeyEnergy + rearing;

        const double flying = k.income * (bees / 10000) * lane::clamp01((t - incomeFromC) / incomeFullOverK);
        const double bloom = lane::clamp01((d - luck.forage[i] + k.bloomHalfWidth) / (2 * k.bloomHalfWidth));
        const double background = (s.dearth && d < luck.forage[i] - k.bloomHalfWidth) ? k.backgroundIncome : 0.0;
        const double income = flying * (bloom + background);
        const double autumnFlow = d <= luck.lastIncome[i] ? flying : 0.0;

        const double worn = k.winterDeath + (k.broodDeath - k.winterDeath) *
                                                lane::clamp01(brood / (k.fullBroodNest * lane::larger(bees, 1.0)));
        const double ageing = k.winterDeath +
                              k.autumnDeath * lane::clamp01((luck.broodStop[i] + broodAges - d) / k.autumnDecline);
        const double death = lane::smaller(dailyDeathLimit, luck.death[i] * lane::larger(worn, ageing));

        const bool beforeForage = d < luck.forage[i];
        const double run = (beforeForage && t + k.diurnalHalfRange < k.lockedInBelow) ? state.lockedRun[i] + 1 : 0.0;

        eggsToday[i] = eggs;
        state.smoothedC[i] = smoothed;
        state.broodTotal[i] = brood;
        state.bees[i] = bees * (1 - death) + emerging;
        state.netLoss[i] += (use - income) / 1000;
        state.used[i] += use / 1000;
        state.autumnIncome[i] += autumnFlow / 1000;
        state.usedToForage[i] += beforeForage ? use / 1000 : 0.0;
        state.lockedRun[i] = run;
        state.longestRun[i] = lane::larger(state.longestRun[i], run);

        result.temperature[i] = t;
        result.eggs[i] = eggs;
        result.adultPower[i] = adults;
        result.broodPower[i] = nest;
        result.use[i] = use;
        result.broodFood[i] = rearing;
        result.income[i] = income;
        result.beesAtStart[i] = bees;
        result.brood[i] = brood;
    }
}

BlockState startState(const KernelSetting& s, const BlockLuck& luck) {
    const ModelConstants& k = *s.constants;
    BlockState state{};
    for (std::size_t i = 0; i < laneCount; ++i) {
        const double bees = s.bees * luck.bees[i];
        state.bees[i] = bees;
        state.smoothedC[i] = s.normalC.front();
        double perAge = s.brood / broodAges;
        if (!s.broodSaid) {
            const double ew = k.winterLaying * std::min(1.0, bees / k.winterLayingBees);
            perAge = luck.brood[i] * autumnEggs(s.start, bees, ew, luck.broodStop[i], s.broodless, k);
        }
        for (auto& age : state.laid) age[i] = perAge;
        state.broodTotal[i] = broodAges * perAge;
    }
    return state;
}

double sum(const Lanes& lanes, int count) {
    double total = 0;
    for (int i = 0; i < count; ++i) total += lanes[static_cast<std::size_t>(i)];
    return total;
}

DayMeans sums(const DayResult& r, int count) {
    return {sum(r.temperature, count), sum(r.eggs, count), sum(r.beesAtStart, count), sum(r.brood, count),
            sum(r.adultPower, count), sum(r.broodPower, count), sum(r.use, count), sum(r.broodFood, count),
            sum(r.income, count)};
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
