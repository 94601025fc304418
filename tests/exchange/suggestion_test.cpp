// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/json/suggestion.h"

#include <gmock/gmock.h>

namespace winterlarder::exchange::suggestion_test {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

TEST(Suggestion, NearestFirstAndNothingFarOff) {
    const std::vector<std::string> known{"station", "latitude", "longitude", "elevation_m"};
    EXPECT_THAT(nearWords("latitud", known), ElementsAre("latitude"));
    EXPECT_THAT(nearWords("elevation", known), ElementsAre("elevation_m"));
    EXPECT_THAT(nearWords("hive", known), IsEmpty());
    EXPECT_THAT(nearWords("first_forage", {"buildup", "forage"}), ElementsAre("forage")) << "one word inside the other";
    EXPECT_EQ(suggestion("staton", known), "did you mean \"station\"?");
    EXPECT_EQ(suggestion("hive", known), "known: station, latitude, longitude, elevation_m");
}

} // namespace
} // namespace winterlarder::exchange::suggestion_test
