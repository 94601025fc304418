// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/grams_apart.h"

namespace winterlarder::advice::grams_apart_test {

TEST(GramsApart, AskForNoMoreThanOneStepMore) {
    int changes = 0;
    for (unsigned seed = 1; seed <= 10; ++seed) changes += grams_apart::expectNoJumps(seed, 5);
    EXPECT_GT(changes, 20) << "else nothing was tried";
}

} // namespace winterlarder::advice::grams_apart_test
