// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/colonies.h"
#include "advice/decided.h"

namespace winterlarder::advice::board_test {

TEST(Board, WhereBeesAreLockedInABoardGoesOnWhenTheHiveIsWrapped) {
    auto q = colony({.station = "ca-winnipeg", .asOf = "2026-10-05", .capped = 0.5});
    const auto days = phaseDays(q.season, q.decisions);
    q.asOf = q.lookedOn = days.late + 3;
    const auto advice = adviceFor(q);
    ASSERT_TRUE(advice.feed);
    EXPECT_EQ(advice.decidedBy, DecidedBy::Board);
    EXPECT_LE(advice.feed->fondant.value(), 5);
    q.asOf = q.lookedOn = days.late + 40;
    EXPECT_NE(adviceFor(q).decidedBy, DecidedBy::Board) << "a winter hive is not opened";
}

// A late board is better than none where most winters starve the colony; it is said that it is late.
TEST(Board, WhereMostWintersStarveALockedInColonyABoardStillGoesOn) {
    const auto inLapland = [](double capped, int daysLate, int combs = 10) {
        auto q = colony({.station = "fi-sodankyla", .asOf = "2026-09-20", .capped = capped, .combs = combs});
        const auto& deadline = *q.season.syrupDeadline;
        q.asOf = q.lookedOn = deadline.day + static_cast<int>(q.decisions.lateDays) + daysLate;
        return adviceFor(q);
    };
    const auto late = inLapland(0.25, 7);
    ASSERT_GT(late.runOut->share, 0.5);
    EXPECT_EQ(late.decidedBy, DecidedBy::LateBoard);
    EXPECT_EQ(late.verdict, Verdict::Feed);
    ASSERT_TRUE(late.feed);
    EXPECT_EQ(late.feed->fondant, kilograms(5));
    EXPECT_EQ(late.feed->visits.front().date, late.asOf);
    EXPECT_TRUE(says(late.reasons, "late-board"));
    EXPECT_LT(option(late, OptionKind::Feed)->runOut.share, late.runOut->share);
    EXPECT_EQ(inLapland(0.25, 0).decidedBy, DecidedBy::Board) << "in time it is not late";
    EXPECT_NE(inLapland(0.25, 22).decidedBy, DecidedBy::LateBoard) << "a winter hive is not opened";
    const auto some = inLapland(0.6, 7, 20);
    ASSERT_LT(some.runOut->share, 0.5);
    EXPECT_NE(some.decidedBy, DecidedBy::LateBoard) << "what most winters leave alive is weighed first";
}

} // namespace winterlarder::advice::board_test
