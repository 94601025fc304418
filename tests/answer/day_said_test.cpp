// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/day_said.h"

#include <cstdlib>
#include <gtest/gtest.h>

namespace winterlarder::answer::day_said_test {
namespace {

class DaySaid : public ::testing::Test {
protected:
    void TearDown() override { ::unsetenv("WINTERLARDER_TODAY"); }
};

TEST_F(DaySaid, IsTheDayOfTheEnvironmentWhereItSaysOne) {
    ::unsetenv("WINTERLARDER_TODAY");
    EXPECT_EQ(daySaid("winterlarder").value(), std::nullopt);
    ::setenv("WINTERLARDER_TODAY", "", 1);
    EXPECT_EQ(daySaid("winterlarder").value(), std::nullopt) << "an empty one says nothing";
    ::setenv("WINTERLARDER_TODAY", "2026-09-14", 1);
    EXPECT_EQ(daySaid("winterlarder").value(), Date::of(2026, 9, 14));
}

TEST_F(DaySaid, IsAProblemWhereItIsNone) {
    ::setenv("WINTERLARDER_TODAY", "2026-09-31", 1);
    const auto none = daySaid("winterlarder");
    ASSERT_FALSE(none);
    EXPECT_EQ(describe(none.problems().front()),
              std::string("winterlarder: WINTERLARDER_TODAY is 2026-09-31; ") + dateForm);
}

} // namespace
} // namespace winterlarder::answer::day_said_test
