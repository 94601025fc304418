// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/kill_writer.h"

namespace winterlarder::book::crash_test {
namespace {

using namespace support;

//! Two hundred kills, fifty a test.
class Crash : public testing::TestWithParam<int> {};

TEST_P(Crash, EveryAcknowledgedEditSurvivesAKill) {
    const BookFolder folder;
    killAndLook(folder, 50, 150, static_cast<std::uint64_t>(GetParam()));
}

INSTANTIATE_TEST_SUITE_P(FiftyKills, Crash, testing::Values(1, 2, 3, 4));

} // namespace
} // namespace winterlarder::book::crash_test
