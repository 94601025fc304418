// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/as_number.h"

#include <cstdint>
#include <gtest/gtest.h>

namespace winterlarder::as_number_test {

TEST(AsNumber, IsTheWholeTextOrNothing) {
    EXPECT_EQ(asNumber<std::int64_t>("-12"), -12);
    EXPECT_EQ(asNumber<double>("1.5"), 1.5);
    for (const char* none : {"", " 1", "1 ", "1x", "x", "1,5", "+1", "99999999999999999999"})
        EXPECT_FALSE(asNumber<std::int64_t>(none)) << none;
    EXPECT_FALSE(asNumber<std::int64_t>("1.5"));
    EXPECT_FALSE(asNumber<double>("1.5 kg"));
}

} // namespace winterlarder::as_number_test
