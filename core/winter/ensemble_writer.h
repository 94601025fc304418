// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "winter/kernel.h"

namespace winterlarder::winter {

//! Write access to an ensemble under construction. Blocks may finish in any order and on any thread (each touches only
//! its own winters); complete() adds the blocks' sums in their order, so means do not depend on threads.
class EnsembleWriter {
public:
    EnsembleWriter(DemandEnsemble& ensemble, SeasonDay medianForage, double autumnTrickle);

    WinterDraw& draw(int winter) { return ensemble_.draws_[static_cast<std::size_t>(winter)]; }
    BlockOutput output(int firstWinter, int lanes);
    void finish(int block, int firstWinter, BlockOutput output);
    void complete();

private:
    DemandEnsemble& ensemble_;
    std::vector<std::vector<DayMeans>> blockSums_;
};

} // namespace winterlarder::winter
