// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/followed_winter.h"

#include <vector>

namespace winterlarder::desk {

//! Stores at the end of a day: a tenth, half and nine tenths of what is believed [kg].
struct StoresBand {
    double day = 0;
    double low = 0, middle = 0, high = 0;
};

//! Something weighed or seen, as stores, with its standard deviation [kg].
struct SeenPoint {
    double day = 0;
    double kg = 0, sd = 0;
};

//! What was forecast in autumn, what is forecast now, and the points: all that the picture of a followed winter is drawn from.
struct FollowSeries {
    std::vector<StoresBand> autumn, now;
    std::vector<SeenPoint> seen;
    int first = 0, last = 0, today = 0;
    int forageLow = 0, forage = 0, forageHigh = 0;
    double reserveKg = 0, mostKg = 10;
};

//! Bands until nine tenths of the winters have forage; the forecast of now from today on. Empty where nothing is followed.
//! Tested: tests/app/following_test.cpp.
FollowSeries followSeries(const FollowedWinter& followed);

} // namespace winterlarder::desk
