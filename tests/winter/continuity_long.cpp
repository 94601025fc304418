// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/continuity.h"

namespace winterlarder::winter {

TEST(ContinuityLong, HoldsAtAllStationsWithAWinter) {
    const auto stations = continuity::stationsWithAWinter();
    EXPECT_EQ(stations.size(), 173U);
    for (const auto& station : stations) continuity::expectAll(station, 2500);
}

} // namespace winterlarder::winter
