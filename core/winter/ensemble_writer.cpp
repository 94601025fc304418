// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/ensemble_writer.h"

namespace winterlarder::winter {

namespace {

void add(DayMeans& total, const DayMeans& part) {
    total.temperatureC += part.temperatureC;
    total.eggs += part.eggs;
    total.bees += part.bees;
    total.longLivedBees += part.longLivedBees;
    total.broodCells += part.broodCells;
    total.adultPowerW += part.adultPowerW;
    total.broodPowerW += part.broodPowerW;
    total.useG += part.useG;
    total.broodFoodG += part.broodFoodG;
    total.incomeG += part.incomeG;
}

void divide(DayMeans& total, double count) {
    for (double* value : {&total.temperatureC, &total.eggs, &total.bees, &total.longLivedBees, &total.broodCells,
                          &total.adultPowerW, &total.broodPowerW, &total.useG, &total.broodFoodG, &total.incomeG})
        *value /= count;
}

} // namespace

EnsembleWriter::EnsembleWriter(DemandEnsemble& ensemble, SeasonDay medianForage, double autumnTrickle)
    : ensemble_(ensemble), blockSums_(static_cast<std::size_t>((ensemble.winters() + laneCount - 1) / laneCount)) {
    ensemble_.medianForage_ = medianForage;
    ensemble_.autumnTrickle_ = autumnTrickle;
}

BlockOutput EnsembleWriter::output(int firstWinter, int lanes) {
    const auto at = static_cast<std::size_t>(firstWinter);
    BlockOutput output;
    output.netLoss = ensemble_.cells(DemandEnsemble::NetLoss) + at;
    output.used = ensemble_.cells(DemandEnsemble::Used) + at;
    output.autumnIncome = ensemble_.cells(DemandEnsemble::AutumnIncome) + at;
    output.bees = ensemble_.cells(DemandEnsemble::Bees) + at;
    if (ensemble_.keepsBrood()) output.brood = ensemble_.cells(DemandEnsemble::Brood) + at;
    output.stride = static_cast<std::size_t>(ensemble_.winters());
    output.lanes = lanes;
    output.sums.reserve(static_cast<std::size_t>(ensemble_.days()));
    return output;
}

void EnsembleWriter::finish(int block, int firstWinter, BlockOutput output) {
    for (int i = 0; i < output.lanes; ++i) {
        const auto lane = static_cast<std::size_t>(i);
        draw(firstWinter + i).usedToForageKg = output.usedToForageKg[lane];
        draw(firstWinter + i).longestLockedIn = static_cast<int>(output.longestLockedIn[lane]);
    }
    blockSums_[static_cast<std::size_t>(block)] = std::move(output.sums);
}

void EnsembleWriter::complete() {
    for (const auto& sums : blockSums_)
        for (std::size_t day = 0; day < sums.size(); ++day) add(ensemble_.means_[day], sums[day]);
    for (auto& mean : ensemble_.means_) divide(mean, ensemble_.winters());
}

} // namespace winterlarder::winter
