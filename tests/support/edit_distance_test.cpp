// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/edit_distance.h"

#include <gtest/gtest.h>
#include <string>

namespace winterlarder::edit_distance_test {
namespace {

TEST(EditDistance, CountsEditsBetweenWords) {
    EXPECT_EQ(editDistance("forage", "forage"), 0);
    EXPECT_EQ(editDistance("Forage", "forage"), 0);
    EXPECT_EQ(editDistance("forgae", "forage"), 1) << "two neighbours swapped";
    EXPECT_EQ(editDistance("kitten", "sitting"), 3);
    EXPECT_EQ(editDistance("", "abc"), 3);
}

TEST(EditDistance, VeryLongWordsCostNothing) { EXPECT_GT(editDistance(std::string(1000000, 'a'), "forage"), 6); }

} // namespace
} // namespace winterlarder::edit_distance_test
