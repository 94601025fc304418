// SPDX-License-Identifier: GPL-3.0-or-later
// The keys of a case on the command line.
#include "cli/program.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace winterlarder::keys_test {
namespace {

using namespace winterlarder::testing;
using ::testing::AllOf;
using ::testing::HasSubstr;
using ::testing::Not;

TEST(KeysCommand, KeysOfACaseAreListedWithUnitAndLimits) {
    const Ran hive = runProgram("keys hive");
    EXPECT_EQ(hive.status, 0);
    EXPECT_THAT(hive.out, AllOf(HasSubstr("hive.tare_kg (0 to 150 kg)"), HasSubstr("timber, thick-timber"),
                                Not(HasSubstr("bees.count"))));
    EXPECT_THAT(runProgram("keys weighings.gross_kg").out, HasSubstr("whole hive on a scale"));
    EXPECT_EQ(at(jsonOf(runProgram("keys hive.tare_kg --json").out), "0.max").number, 150);
    const Ran wrong = runProgram("keys wieghings");
    EXPECT_EQ(wrong.status, 2);
    EXPECT_THAT(wrong.err, HasSubstr("weighings"));
}

} // namespace
} // namespace winterlarder::keys_test
