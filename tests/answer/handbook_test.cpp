// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/handbook.h"

#include "answer/site_of_case.h"
#include "support/shipped.h"

#include <gtest/gtest.h>

namespace winterlarder::answer::handbook_test {
namespace {

climate::Site at(const char* station) {
    auto site = siteOf(book::SiteRecord{.where = std::string(station)}, {}, winterlarder::shipped());
    EXPECT_TRUE(site.ok());
    return *std::move(site);
}

// British Beekeepers Association: 18 to 22 kg; Beekeepers of the canton of Bern: 13.5 to 20 kg; Victoria: 15 to 20 kg.
TEST(Handbooks, SpeakForTheRegionNearest) {
    const auto oxford = handbookFor(at("gb-oxford"), winterlarder::shipped());
    EXPECT_NEAR(oxford.toHave.value(), 20, 1e-9) << oxford.source;
    EXPECT_NEAR(oxford.use.value(), 16, 1e-9) << "4 kg are never to be touched";
    EXPECT_EQ(oxford.source, "bbka-august");
    EXPECT_NEAR(handbookFor(at("ch-zurich"), winterlarder::shipped()).toHave.value(), 16.75, 1e-9);
    EXPECT_NEAR(handbookFor(at("au-melbourne"), winterlarder::shipped()).toHave.value(), 17.5, 1e-9);
    EXPECT_EQ(handbookFor(at("ca-halifax"), winterlarder::shipped()).region, "Pennsylvania")
        << "nobody nearer has printed one";
}

TEST(Handbooks, OfAPlaceWithoutAStationGiveTheMiddle) {
    climate::Site nowhere = at("gb-oxford");
    nowhere.stationId.clear();
    const auto middle = handbookFor(nowhere, winterlarder::shipped());
    int above = 0, below = 0;
    for (const auto& rule : winterlarder::shipped().rules) {
        if (rule.topic != handbookTopic || rule.region == "Victoria AU" || rule.region == "upper N Island NZ") continue;
        climate::Site there = nowhere;
        there.stationId = rule.condition.substr(rule.condition.rfind(' ') + 1);
        const Mass toHave = handbookFor(there, winterlarder::shipped()).toHave;
        above += toHave > middle.toHave, below += toHave < middle.toHave;
    }
    EXPECT_LE(std::abs(above - below), 2);
}

} // namespace
} // namespace winterlarder::answer::handbook_test
