// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "winter/demand.h"
#include "winter/seen_brood.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace winterlarder::winter {

//! Winters simulated together: one cache line of each row of the ensemble.
inline constexpr int laneCount = 16;
struct alignas(64) Lanes {
    double lane[laneCount];
    double& operator[](std::size_t i) { return lane[i]; }
    const double& operator[](std::size_t i) const { return lane[i]; }
    void fill(double value) {
        for (double& each : lane) each = value;
    }
    std::span<double> all() { return lane; }
};

//! Everything that is the same for all winters of a question, one entry a day from the first day of the season year on
//! (weather) or from the start day on.
struct KernelSetting {
    const ModelConstants* constants = nullptr;
    int start = 0, end = 0;                //!< season days, inclusive
    std::vector<double> normalC, dailySdK; //!< [day - start]
    double persistence = 0;                //!< of the daily anomaly, ClimateCurve::dailyPersistence()
    double bees = 0;                       //!< on the start day
    std::optional<SeenBrood> seen;         //!< nothing: the start brood follows from the date
    bool broodless = false;                //!< laying stops for a while
    bool dearth = false;                   //!< class C: bees fly and find something all winter
    double shell = 1, race = 1;            //!< factors on heat lost and on food, 1 is timber and the carniolan
};

//! What differs between the winters of one block.
struct BlockLuck {
    Lanes bees, heat, brood, death, burst, offsetK;
    Lanes broodSeen; //!< luck of laying from the day on that brood was seen; before it, brood
    Lanes use;       //!< multiplier on everything eaten: 1 unless something was learned
    Lanes broodStop, broodRestart, buildup, forage, lastIncome;
    std::vector<Lanes> weather; //!< [day - start], the standardised daily anomaly z
};

//! Where a block writes: rows of the ensemble at its first winter, and sums over its winters.
struct BlockOutput {
    float* netLoss = nullptr;
    float* used = nullptr;
    float* autumnIncome = nullptr;
    float* bees = nullptr;
    float* brood = nullptr; //!< nothing: not kept
    std::size_t stride = 0; //!< floats from one day to the next
    int lanes = laneCount;  //!< winters of this block that exist
    std::vector<DayMeans> sums;
    Lanes usedToForageKg{};
    Lanes longestLockedIn{};
};

//! Runs one block of winters through all days: the colony-day of the model, in its order of operations.
void runBlock(const KernelSetting& setting, const BlockLuck& luck, BlockOutput& output);

} // namespace winterlarder::winter
