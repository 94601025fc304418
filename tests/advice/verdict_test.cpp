// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/verdict.h"

#include "advice/colonies.h"

namespace winterlarder::advice::verdict_test {

namespace {

ColonyQuestion weakOn(SeasonDay day) {
    auto q = colony({.capped = 0.2, .covered = 2.5});
    q.asOf = q.lookedOn = day;
    return q;
}

} // namespace

// Once laying stops no uniting helps any more: the last day for it is the day before.
TEST(TooWeak, IsSaidUntilTheDayBeforeLayingStops) {
    const SeasonDay stop = colony({}).season.broodStop->day;
    EXPECT_EQ(adviceFor(weakOn(stop - 1)).verdict, Verdict::Unite);
    EXPECT_NE(adviceFor(weakOn(stop)).verdict, Verdict::Unite);
    EXPECT_NE(adviceFor(weakOn(stop + 1)).verdict, Verdict::Unite);
}

TEST(TooWeak, SevenThousandBeesAreEnough) {
    const auto q = colony({});
    EXPECT_TRUE(tooWeak(q, 6999));
    EXPECT_FALSE(tooWeak(q, 7000));
}

} // namespace winterlarder::advice::verdict_test
