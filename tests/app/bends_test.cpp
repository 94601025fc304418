// SPDX-License-Identifier: GPL-3.0-or-later
#include "series/bends.h"

#include <cmath>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace winterlarder::desk {

RC_GTEST_PROP(Bends, NoValueIsOffByMoreThanTheTolerance, ()) {
    const auto steps = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-20, 20));
    const double tolerance = *rc::gen::inRange(0, 30) / 10.0;
    std::vector<double> values{5};
    for (const int step : steps) values.push_back(values.back() + step / 10.0);
    const auto bends = bendsOf(values, tolerance);
    RC_ASSERT(bends.front() == 0U);
    RC_ASSERT(bends.back() == values.size() - 1);
    for (std::size_t bend = 1; bend < bends.size(); ++bend) {
        const auto from = bends[bend - 1], to = bends[bend];
        RC_ASSERT(from < to);
        for (auto at = from; at <= to; ++at) {
            const double straight = std::lerp(values[from], values[to], static_cast<double>(at - from) / static_cast<double>(to - from));
            RC_ASSERT(std::abs(straight - values[at]) <= tolerance + 1e-9);
        }
    }
}

TEST(Bends, AStraightLineHasOnlyItsEndsAndAStepItsEdges) {
    EXPECT_TRUE(bendsOf({}, 1).empty());
    EXPECT_EQ(bendsOf({3}, 1), (std::vector<std::size_t>{0}));
    EXPECT_EQ(bendsOf({9, 8, 7, 6, 5}, 0.01), (std::vector<std::size_t>{0, 4}));
    EXPECT_EQ(bendsOf({5, 5, 5, 9, 9, 9}, 0.01), (std::vector<std::size_t>{0, 2, 3, 5}));
}

} // namespace winterlarder::desk
