// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/winters.h"

#include "tracking/redraw.h"

#include <cmath>

namespace winterlarder::tracking::track_test {
namespace {

double meanLoss(const Tracked& tracked, int day) {
    return believed(tracked.belief, [&](std::size_t p) {
        return static_cast<double>(tracked.paths->lossUntil({day}, tracked.belief.winterOf(p)));
    });
}

TEST(Track, AWinterAsExpectedIsNotDrawnAgain) {
    auto q = oxfordColony(15, 2, 30);
    q.observations = {weighed(q, 0, expectedGross(q, 0))};
    const auto tracked = *track(q, constants(), quick, 2);
    EXPECT_EQ(tracked.drawnAgain, 0);
    EXPECT_GT(tracked.belief.effectiveWinters, 0.3 * quick.winters);
}

// Five weighings that no usual winter meets: few of the first winters count, those drawn again count well, and what they say is what
// ten times as many plain winters say.
TEST(Track, WintersDrawnAgainSayWhatManyPlainOnesSay) {
    auto q = oxfordColony(15, 1, 70);
    q.tare.sd = kilograms(0.4);
    int n = 0;
    for (int day : {-60, -30, 0, 30, 60}) q.observations.push_back(weighed(q, day, expectedGross(q, day) - 0.75 * ++n));
    const winter::Sampling few{3, 400};
    auto rough = q;
    const auto again = *track(q, constants(), few, 2);
    EXPECT_GE(again.drawnAgain, 1);
    EXPECT_GT(again.belief.effectiveWinters, constants().redrawBelow * few.winters);

    ModelConstants neverAgain = constants();
    neverAgain.redrawBelow = 0;
    const auto many = *track(q, neverAgain, {4, 12000}, 2);
    EXPECT_EQ(many.drawnAgain, 0);
    EXPECT_LT(many.belief.effectiveWinters, 0.1 * 12000); // so far out that the few would have been lost
    // Standard error of either mean: the spread of the loss, about 0.7 kg, over the root of the winters that count.
    const double error = 0.7 * std::sqrt(1 / again.belief.effectiveWinters + 1 / many.belief.effectiveWinters);
    EXPECT_NEAR(meanLoss(again, 59), meanLoss(many, 59), 4 * error);
    EXPECT_NEAR(meanLoss(again, 100), meanLoss(many, 100), 4 * 2 * error); // spreads further on
    EXPECT_NEAR(again.belief.logEvidence, many.belief.logEvidence, 0.7);
}

TEST(LuckProposal, ItsRatiosAverageToOne) {
    std::vector<winter::WinterLuck> learned(500);
    for (std::uint32_t i = 0; i < 500; ++i) {
        learned[i] = winter::drawnLuck(5, 9, i);
        learned[i].z[winter::WinterLuck::Heat] = 2 + 0.3 * learned[i].z[winter::WinterLuck::Heat];
    }
    const LuckProposal proposal(learned, std::vector<double>(500, 1.0 / 500));
    const std::size_t n = 20000;
    const auto luck = proposal.draw(11, 9, n);
    double sum = 0, squares = 0, heat = 0;
    for (const auto& each : luck) {
        const double ratio = std::exp(proposal.logRatio(each));
        EXPECT_LE(ratio, 1 / LuckProposal::defensiveShare + 1e-9); // the defensive tenth bounds every weight
        sum += ratio;
        squares += ratio * ratio;
        heat += ratio * each[winter::WinterLuck::Heat];
    }
    const double mean = sum / static_cast<double>(n), sd = std::sqrt(squares / static_cast<double>(n) - mean * mean);
    EXPECT_NEAR(mean, 1, 4 * sd / std::sqrt(static_cast<double>(n)));
    EXPECT_NEAR(heat / sum, 0, 4 * 10 / std::sqrt(static_cast<double>(n))); // back at the first distribution's mean
}

TEST(Track, StopsWhenAsked) {
    std::stop_source stop;
    stop.request_stop();
    EXPECT_FALSE(track(oxfordColony(15, 2, 30), constants(), quick, 1, stop.get_token()));
}

} // namespace
} // namespace winterlarder::tracking::track_test
