// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/tare.h"

#include "stores/sample_combs.h"

#include <cmath>
#include <gtest/gtest.h>

namespace winterlarder::stores::tare_test {
namespace {

using namespace samples;

constexpr double deepArea = 8.774;
constexpr double unsaidWaxKg = 0.0215; // per dm2, halfway between 12 and 31 g

hive::CombFormat dadant(int places) {
    return box("dadant-blatt-" + std::to_string(places), 415, 272, 37, 1400, places);
}
hive::CombFormat germanNormal() { return box("deutsch-normal", 350, 203, 35, 900, 10); }
hive::CombFormat warre() { return box("warre", 300, 195, 36, 760, 8); }
hive::CombFormat zander() { return box("zander", 400, 190, 35, 1000, 9); }

double tareKg(const TareQuestion& question) { return tareFromParts(question).mass.value(); }
double sdKg(const TareQuestion& question) { return tareFromParts(question).sd.value(); }

TEST(TareFromParts, LangstrothDeepsAddFramesWaxFloorAndCovers) {
    EXPECT_NEAR(tareKg({{deep()}, {}}), 1.8 + 0.8 + 3.9 + 6.2 + unsaidWaxKg * 10 * deepArea, 1e-9);
    EXPECT_NEAR(tareKg({{deep(), deep()}, {}}), 6.5 + 2 * (6.2 + unsaidWaxKg * 10 * deepArea), 1e-9);
    EXPECT_EQ(sdKg({{deep(), deep()}, {}}), 2);
}

TEST(TareFromParts, OnlyBuiltCombsCarryWax) {
    std::vector<Comb> combs;
    for (int place = 0; place < 6; ++place) combs.push_back(comb(deep(), place, 0.5));
    combs[0].oldNest = true;
    combs[1].inSuper = true;
    EXPECT_NEAR(tareKg({{deep()}, combs}), 6.5 + 6.2 + (4 * unsaidWaxKg + 0.031 + 0.012) * deepArea, 1e-9);
}

TEST(TareFromParts, LangstrothMediumComesWithCombs) {
    EXPECT_NEAR(tareKg({{deep(), medium()}, {}}) - tareKg({{deep()}, {}}), 4.7, 1e-9);
    const std::vector<Comb> oneComb{comb(medium(), 0, 0.5)};
    EXPECT_NEAR(tareKg({{medium()}, oneComb}), 6.5 + 4.7 - unsaidWaxKg * 9 * 5.778, 1e-9);
}

TEST(TareFromParts, OtherListedHives) {
    EXPECT_NEAR(tareKg({{dadant(10)}, {}}), 18, 1e-9); // 20 kg with bees, 2 kg of them
    EXPECT_NEAR(tareKg({{dadant(12)}, {}}), 21, 1e-9);
    EXPECT_NEAR(tareKg({{warre(), warre()}, {}}), 6.5 + 8, 1e-9);
    EXPECT_NEAR(tareKg({{germanNormal()}, {}}), 4.5 + 3.2 + 10 * 0.475 * 7.105 / deepArea, 1e-9);
    EXPECT_NEAR(tareKg({{deep(5)}, {}, Walls::Timber, true}), 12, 1e-9);
    for (const auto& boxes : {std::vector{dadant(10)}, std::vector{warre(), warre()}, std::vector{germanNormal()}})
        EXPECT_EQ(sdKg({boxes, {}}), 2) << boxes.front().id;
}

TEST(TareFromParts, PolystyreneSingleAndDouble) {
    EXPECT_NEAR(tareKg({{deep()}, {}, Walls::Polystyrene}), 10, 1e-9);
    EXPECT_NEAR(tareKg({{deep(), deep()}, {}, Walls::Polystyrene}), 17, 1e-9);
}

TEST(TareFromParts, AllElseGoesByTheRule) {
    EXPECT_NEAR(tareKg({{zander(), zander()}, {}}), 6.5 + 0.09 * 18 * 7.6, 1e-9);
    EXPECT_NEAR(tareKg({{zander()}, {}, Walls::Polystyrene}), 4.5 + 0.09 * 9 * 7.6, 1e-9);
    EXPECT_NEAR(tareKg({{deep()}, {}, Walls::Other}), 6.5 + 0.09 * 10 * deepArea, 1e-9);
    EXPECT_EQ(sdKg({{zander()}, {}}), 3);
    EXPECT_EQ(sdKg({{deep(), zander()}, {}}), 3) << "one box by the rule is enough";
}

TEST(TareFromParts, ANucleusInAFullBoxWeighsItsBox) {
    EXPECT_EQ(tareKg({{deep()}, {}, Walls::Timber, true}), tareKg({{deep()}, {}}));
}

// Twelve kilograms as published, up to six places; a box of seven goes by the rule.
TEST(TareFromParts, ANucleusHiveHasAtMostSixPlaces) {
    for (const int places : {1, 3, 5, 6})
        EXPECT_NEAR(tareKg({{deep(places)}, {}, Walls::Timber, true}), 12, 1e-9) << places;
    EXPECT_NEAR(tareKg({{deep(7)}, {}, Walls::Timber, true}), 6.5 + 0.09 * 7 * deepArea, 1e-9);
    EXPECT_NE(tareKg({{deep(6)}, {}, Walls::Timber, false}), 12) << "nobody said it is kept small";
}

TEST(TareFromParts, HalfEmptyLongHivesKeepTheirWood) {
    std::vector<Comb> combs;
    for (int place = 0; place < 12; ++place) combs.push_back(comb(longHive(), place, 0.5));
    EXPECT_NEAR(tareKg({{longHive()}, combs}), 6.5 + (0.09 + 0.07) * 12 * deepArea, 1e-9);
    EXPECT_NEAR(tareKg({{longHive()}, {}}), 6.5 + 0.09 * 24 * deepArea, 1e-9);
}

// Two independent figures for the same hive, 2 and 3 kg of spread: they must not lie farther apart than both allow.
TEST(TareFromParts, PartsAndRuleAgreeWithinTheirSpreads) {
    const std::vector<std::vector<hive::CombFormat>> hives = {{deep()},        {deep(), deep()}, {deep(), medium()},
                                                              {dadant(10)},    {dadant(12)},     {warre(), warre()},
                                                              {germanNormal()}};
    for (auto boxes : hives) {
        const double parts = tareKg({boxes, {}});
        for (auto& each : boxes) each.id.clear();
        EXPECT_NEAR(parts, tareKg({boxes, {}}), std::hypot(2, 3)) << boxes.size() << " boxes, " << parts << " kg";
    }
}

} // namespace
} // namespace winterlarder::stores::tare_test
