// SPDX-License-Identifier: GPL-3.0-or-later
// Every header can be the first a file includes.
#include "hygiene/headers_alone.h"

#include <gmock/gmock.h>

TEST(Headers, EveryOneOfCoreCompilesAlone) { EXPECT_THAT(hygiene::complaintsBelow("core"), testing::IsEmpty()); }

TEST(Headers, EveryOneOfTheProgramsCompilesAlone) { EXPECT_THAT(hygiene::complaintsBelow("app"), testing::IsEmpty()); }
