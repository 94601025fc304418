// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/winters.h"

#include <gmock/gmock.h>

namespace winterlarder::tracking::contradictions_test {
namespace {

// The stores vanish between the first weighing and the second; the third is moved about.
struct Vanished {
    FollowQuestion q = oxfordColony(15, 2, 60);
    Vanished() {
        q.observations = {weighed(q, -30, expectedGross(q, -30)), weighed(q, 0, expectedGross(q, 0) - 9),
                          weighed(q, 20, expectedGross(q, 20) - 9)};
    }
    Belief belief() const { return reweigh(q, oxfordPaths(), {}, 1, constants()); }
    Belief with(double thirdKg) {
        q.observations[2] = weighed(q, 20, thirdKg);
        return belief();
    }
};

// What is expected of the third weighing reaches 1.2816 SD to either side; it confirms the second within two SD of the middle.
TEST(Contradictions, AreConfirmedByAWeighingThatAgreesAndByNoOther) {
    Vanished hive;
    const auto expected = hive.belief().judged[2].expected;
    const double sd = (expected.high - expected.low) / (2 * 1.2816);
    for (const double away : {0.0, 1.0, -1.0, 1.9, -1.9}) {
        const auto belief = hive.with(expected.typical + away * sd);
        ASSERT_TRUE(belief.judged[1].contradicts);
        EXPECT_TRUE(belief.judged[1].confirmed) << away << " SD";
    }
    for (const double away : {2.1, -2.1, 2.5, -2.5, 3.5, -3.5}) {
        const auto belief = hive.with(expected.typical + away * sd);
        EXPECT_FALSE(belief.judged[1].confirmed) << away << " SD";
        EXPECT_FALSE(belief.judged[2].contradicts) << away << " SD: doubtful, not impossible";
    }
}

// A hive as light as one that has starved, weighed over and over: each of the last three weighings may be the first such one, and no
// more cases are followed however many there were.
TEST(StarvedCases, AreThoseOfTheLastThreeWeighings) {
    auto q = oxfordColony(7, 2, 90);
    q.tare.sd = kilograms(0.6);
    for (const int day : {56, 62, 68, 74, 80, 86}) q.observations.push_back(weighed(q, day, 16.6));
    const auto belief = reweigh(q, oxfordPaths(), {}, 1, constants());
    std::vector<int> days;
    for (const auto& part : belief.parts)
        if (part.starvedBy) days.push_back(part.starvedBy->w);
    EXPECT_THAT(days, testing::ElementsAre(74, 80, 86));
}

} // namespace
} // namespace winterlarder::tracking::contradictions_test
