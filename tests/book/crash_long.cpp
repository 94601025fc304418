// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/kill_writer.h"

namespace {

using namespace winterlarder::book::support;

//! The full form of crash_test.cpp: two hundred kills within a thousand edits, on the disk the build lies on.
TEST(CrashLong, EveryAcknowledgedEditSurvivesAKillOnDisk) {
    const BookFolder folder(BUILD_FOLDER);
    killAndLook(folder, 200, 1000, 5);
}

} // namespace
