// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "series/winter_series.h"

#include <vector>

namespace winterlarder::desk {

//! What the model expects on a day, left alone: 10th and 90th percentile of the simulated winters [kg of stores].
struct ExpectedDay {
    double day = 0;
    double low = 0, high = 0;
};

//! Model against measurement: the pieces of evidence as stores on their days, and the band the model draws from the day asked about.
struct ScaleSeries {
    std::vector<EvidencePoint> measured;
    std::vector<ExpectedDay> expected;
    int first = 0, last = 0; //!< days shown
    double mostKg = 10;
};

//! `daysAhead`: how far past the asking day the band is shown. Empty where there is neither. Tested: tests/app/what_if_test.cpp.
ScaleSeries scaleSeries(const WinterPicture& picture, int daysAhead = 75);

} // namespace winterlarder::desk
