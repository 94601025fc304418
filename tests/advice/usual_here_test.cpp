// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/usual_here.h"

#include "colonies.h"

#include <gmock/gmock.h>

namespace winterlarder::advice::usual_here_test {
namespace {

using climate::WinterClass;
using From = UsualFigure::From;

UsualStores figure(const char* id, const char* country, const char* region, double latitude, double longitude,
                   HiveSize size, double low, double high, char quality = 'B') {
    UsualStores row;
    row.id = id, row.country = country, row.region = region;
    row.latitude = latitude, row.longitude = longitude;
    row.winterClass = "confined";
    row.size = size;
    row.low = kilograms(low), row.high = kilograms(high);
    row.use = UsualStores::Use::Target;
    row.quality = quality;
    return row;
}

//! A place at 45 N 64 W; a degree of latitude is 111 km.
const UsualAsked here{{45, -64, "CA"}, WinterClass::Confined, HiveSize::TwoBoxes};

std::optional<UsualFigure> among(std::vector<UsualStores>& rows, const UsualAsked& asked = here) {
    return usualHere(asked, rows, constants());
}

TEST(UsualHere, ARegionOfTheCountryNearEnoughComesFirst) {
    std::vector<UsualStores> rows{figure("whole", "CA", "", 60, -100, HiveSize::TwoBoxes, 30, 30),
                                  figure("far", "CA", "Far", 46.5, -64, HiveSize::TwoBoxes, 20, 22),
                                  figure("near", "CA", "Near", 46, -64, HiveSize::TwoBoxes, 24, 28)};
    const auto usual = among(rows);
    ASSERT_TRUE(usual);
    EXPECT_EQ(usual->row->id, "near");
    EXPECT_EQ(usual->from, From::Region);
    EXPECT_NEAR(*usual->distanceKm, 111, 1);
    EXPECT_EQ(usual->low, kilograms(24));
    EXPECT_EQ(usual->high, kilograms(28));
    EXPECT_TRUE(usual->holdsBackHarvest);
}

TEST(UsualHere, BeyondThatOrInAnotherWinterTheCountrysFigureHolds) {
    std::vector<UsualStores> rows{figure("whole", "CA", "", 60, -100, HiveSize::TwoBoxes, 30, 30),
                                  figure("far", "CA", "Far", 47.8, -64, HiveSize::TwoBoxes, 20, 22),
                                  figure("mild", "CA", "Mild", 45, -64, HiveSize::TwoBoxes, 15, 15)};
    rows[2].winterClass = "flying";
    EXPECT_EQ(among(rows)->row->id, "whole") << "311 km away, and another winter";
    EXPECT_EQ(among(rows)->from, From::Country);
    EXPECT_FALSE(among(rows)->distanceKm);
    rows[1].latitude = 47.6;
    EXPECT_EQ(among(rows)->row->id, "far") << "289 km away";
}

TEST(UsualHere, OnTheBorderOfTwoWintersTheCountrysOwnRegionComesBeforeAForeignOne) {
    std::vector<UsualStores> rows{figure("foreign", "US", "Maine", 45, -65, HiveSize::TwoBoxes, 27, 27),
                                  figure("own", "CA", "Mild", 46, -64, HiveSize::TwoBoxes, 20, 20)};
    rows[1].winterClass = "flying";
    EXPECT_EQ(among(rows)->row->id, "own");
    EXPECT_EQ(among(rows)->from, From::RegionOfOtherWinter);
    auto flying = here;
    flying.winterClass = WinterClass::Flying;
    rows[1].winterClass = "confined";
    EXPECT_EQ(among(rows, flying)->row->id, "own");
    rows[1].winterClass = "dearth";
    EXPECT_EQ(among(rows)->row->id, "foreign") << "stores for a dearth are none for a winter";
    rows[1].winterClass = "flying";
    rows[1].latitude = 47.8;
    EXPECT_EQ(among(rows)->row->id, "foreign") << "311 km away";
    rows.push_back(figure("whole", "CA", "", 60, -100, HiveSize::TwoBoxes, 30, 30));
    rows[1].latitude = 46;
    EXPECT_EQ(among(rows)->row->id, "whole");
}

TEST(UsualHere, OfACountryWithoutFiguresTheNearestOfTheSameHemisphereAndWinterSpeaks) {
    std::vector<UsualStores> rows{figure("neighbour", "US", "Maine", 45, -69.5, HiveSize::TwoBoxes, 27, 27),
                                  figure("farther", "US", "", 41, -69.5, HiveSize::TwoBoxes, 20, 20)};
    EXPECT_EQ(among(rows)->row->id, "neighbour");
    EXPECT_EQ(among(rows)->from, From::Neighbour);
    rows[0].winterClass = "flying";
    EXPECT_EQ(among(rows)->row->id, "farther") << "a whole country's figure counts from its middle";
    rows[1].latitude = 37.9; // 900 km
    EXPECT_EQ(among(rows)->from, From::ClassMedian);
    auto equator = here;
    equator.place.latitude = -1;
    rows[1].latitude = 1, rows[1].longitude = -64;
    EXPECT_EQ(among(rows, equator)->from, From::ClassMedian) << "222 km away, but its autumn is in September";
    rows[1].latitude = -2;
    EXPECT_EQ(among(rows, equator)->from, From::Neighbour);
}

TEST(UsualHere, ElseTheMedianOfThatWinterWhichHoldsNoHarvestBack) {
    std::vector<UsualStores> rows{figure("a", "JP", "", 35, 139, HiveSize::TwoBoxes, 10, 12),
                                  figure("b", "DE", "", 51, 10, HiveSize::TwoBoxes, 18, 22),
                                  figure("c", "AT", "", 48, 14, HiveSize::TwoBoxes, 20, 30),
                                  figure("d", "PT", "", 40, -8, HiveSize::TwoBoxes, 5, 5)};
    rows[3].winterClass = "flying";
    const auto usual = among(rows);
    ASSERT_TRUE(usual);
    EXPECT_EQ(usual->from, From::ClassMedian);
    EXPECT_EQ(usual->row, nullptr);
    EXPECT_EQ(usual->low, kilograms(18));
    EXPECT_EQ(usual->high, kilograms(22));
    EXPECT_FALSE(usual->holdsBackHarvest);
    auto dearth = here;
    dearth.winterClass = WinterClass::Dearth;
    EXPECT_FALSE(among(rows, dearth)) << "nothing is known of such winters";
    dearth.winterClass = WinterClass::NotDerivable;
    rows[0].winterClass.clear();
    EXPECT_FALSE(among(rows, dearth)) << "two that are not known are not alike";
}

TEST(UsualHere, TheSizeOfTheHiveComesBeforeAFigureForAny) {
    std::vector<UsualStores> rows{figure("any", "CA", "Here", 45, -64, HiveSize::Any, 22, 22),
                                  figure("one", "CA", "Near", 45.5, -64, HiveSize::OneBox, 15, 15)};
    EXPECT_EQ(among(rows)->row->id, "any");
    EXPECT_TRUE(among(rows)->forAnySize);
    auto one = here;
    one.size = HiveSize::OneBox;
    EXPECT_EQ(among(rows, one)->row->id, "one");
    auto nucleus = here;
    nucleus.size = HiveSize::Nucleus;
    EXPECT_FALSE(among(rows, nucleus)) << "what any hive needs is far too much for a nucleus";
    rows.push_back(figure("nucleus", "CA", "", 50, -97, HiveSize::Nucleus, 6.4, 6.4));
    EXPECT_EQ(among(rows, nucleus)->row->id, "nucleus");
    auto three = here;
    three.moreThanTwoBoxes = true;
    EXPECT_FALSE(among(rows, three)->twoBoxesForMore) << "the figure is for any";
    rows.push_back(figure("two", "CA", "Here", 45, -64, HiveSize::TwoBoxes, 27, 36));
    EXPECT_TRUE(among(rows, three)->twoBoxesForMore);
    EXPECT_FALSE(among(rows)->twoBoxesForMore);
}

TEST(UsualHere, AHivesWeightBecomesStoresByThisHivesOwnWeight) {
    auto gross = figure("gross", "CA", "Here", 45, -64, HiveSize::TwoBoxes, 0, 0);
    gross.low = gross.high = std::nullopt;
    gross.grossLow = kilograms(45);
    std::vector<UsualStores> rows{gross};
    auto asked = here;
    asked.withoutStores = kilograms(21);
    EXPECT_EQ(among(rows, asked)->low, kilograms(24));
    EXPECT_EQ(among(rows, asked)->high, kilograms(24)) << "a lower bound has no other end";
    EXPECT_TRUE(among(rows, asked)->fromGross);
    asked.withoutStores = kilograms(50);
    EXPECT_EQ(among(rows, asked)->low, kilograms(0)) << "never less than nothing";
    rows.push_back(figure("stores", "CA", "Here", 45, -64, HiveSize::TwoBoxes, 20, 22));
    EXPECT_EQ(among(rows, asked)->row->id, "stores") << "of two figures of a place the one in stores";
    EXPECT_FALSE(among(rows, asked)->fromGross);
}

TEST(UsualHere, CommonPracticeIsShownButHoldsNoHarvestBack) {
    std::vector<UsualStores> rows{figure("practice", "CA", "Here", 45, -64, HiveSize::TwoBoxes, 27, 36, 'C')};
    EXPECT_FALSE(among(rows)->holdsBackHarvest);
    rows.push_back(figure("official", "CA", "Here", 45, -64, HiveSize::TwoBoxes, 25, 25, 'A'));
    EXPECT_EQ(among(rows)->row->id, "official") << "of two figures of a place the better one";
    EXPECT_TRUE(among(rows)->holdsBackHarvest);
}

TEST(UsualHere, WhatKeepersOfARegionSayComesAfterWhatIsPublishedForTheCountry) {
    std::vector<UsualStores> rows{figure("practice", "CA", "Here", 45, -64, HiveSize::TwoBoxes, 27, 36, 'C'),
                                  figure("whole", "CA", "", 50, -97, HiveSize::TwoBoxes, 31.8, 31.8)};
    EXPECT_EQ(among(rows)->row->id, "whole");
    rows[1].quality = 'C';
    EXPECT_EQ(among(rows)->row->id, "practice") << "of two that are hearsay the nearer one";
    rows[1] = figure("neighbour", "US", "Maine", 45, -69.5, HiveSize::TwoBoxes, 25, 25);
    EXPECT_EQ(among(rows)->row->id, "practice") << "one's own country first";
}

TEST(UsualHere, FiguresOfAnotherMeaningAreShownAndNeverTheTarget) {
    auto shown = figure("shown", "CA", "Here", 45, -64, HiveSize::Any, 40, 40);
    shown.use = UsualStores::Use::Shown;
    auto sugar = figure("sugar", "CA", "Here", 45, -64, HiveSize::TwoBoxes, 15, 15);
    sugar.use = UsualStores::Use::No;
    std::vector<UsualStores> rows{shown, sugar, figure("whole", "CA", "", 50, -97, HiveSize::TwoBoxes, 31.8, 31.8)};
    const auto usual = among(rows);
    EXPECT_EQ(usual->row->id, "whole");
    ASSERT_EQ(usual->shown.size(), 1u);
    EXPECT_EQ(usual->shown[0]->id, "shown");
}

TEST(UsualHere, NovaScotiaGermanyAndHobartAsShipped) {
    const auto at = [](const char* station, HiveSize size) {
        const Station& place = *shipped().station(station);
        const std::string country = climate::countryCodeOf(station);
        const auto season = climate::deriveSeason(climate::siteAtStation(place, {}).value().curve, constants());
        return *usualHere({{place.latitude, place.longitude, country}, season.winterClass, size}, shipped().usualStores,
                          constants());
    };
    const auto halifax = at("ca-halifax", HiveSize::TwoBoxes);
    EXPECT_EQ(halifax.low, kilograms(31.8)) << "published for the country, before what keepers of the region say";
    EXPECT_TRUE(halifax.holdsBackHarvest);
    EXPECT_EQ(placeOf(at("de-jena", HiveSize::TwoBoxes), shipped().stations), "Lower Bavaria (Passau), Germany");
    EXPECT_EQ(placeOf(at("ca-halifax", HiveSize::OneBox), shipped().stations), "Canada");
    EXPECT_EQ(placeOf({}, shipped().stations), "") << "of a median";
    EXPECT_EQ(at("ca-halifax", HiveSize::OneBox).low, kilograms(24.9)) << "one deep box: the country's figure";
    EXPECT_TRUE(at("ca-halifax", HiveSize::OneBox).holdsBackHarvest);
    EXPECT_EQ(at("de-jena", HiveSize::TwoBoxes).row->region, "Lower Bavaria (Passau)") << "285 km away";
    EXPECT_EQ(at("de-frankfurt", HiveSize::TwoBoxes).low, kilograms(15)) << "farther than that: the country's figure";
    EXPECT_EQ(at("au-hobart", HiveSize::TwoBoxes).row->country, "AU");
}

TEST(UsualHere, EveryRowsWinterIsThatOfTheNearestStation) {
    const auto word = [](WinterClass winter) {
        return winter == WinterClass::Confined ? "confined" : winter == WinterClass::Flying ? "flying" : "dearth";
    };
    for (const UsualStores& row : shipped().usualStores) {
        const auto site = climate::siteNear(shipped(), row.latitude, row.longitude, std::nullopt);
        const auto season = climate::deriveSeason(site.value().curve, constants());
        if (*site.value().distanceKm > climate::farthestStationKm || season.winterClass == WinterClass::NotDerivable)
            EXPECT_EQ(row.winterClass, "") << row.id;
        else EXPECT_EQ(row.winterClass, word(season.winterClass)) << row.id;
    }
}

TEST(SizeOfHive, SupersDoNotCountAndMoreThanTwoAreTwo) {
    auto q = colony({.combs = 30});
    EXPECT_EQ(sizeOfHive(q).size, HiveSize::TwoBoxes);
    EXPECT_TRUE(sizeOfHive(q).moreThanTwoBoxes);
    q.boxUses = {{}, {}, {true, {}}};
    EXPECT_EQ(sizeOfHive(q).size, HiveSize::TwoBoxes);
    EXPECT_FALSE(sizeOfHive(q).moreThanTwoBoxes);
    q.boxUses = {{}, {true, {}}, {true, {}}};
    EXPECT_EQ(sizeOfHive(q).size, HiveSize::OneBox);
    q.nucleus = true;
    EXPECT_EQ(sizeOfHive(q).size, HiveSize::Nucleus);
}

LateFlow flow(const char* id, const char* region, double latitude, MonthDay from, MonthDay to,
              const char* plant = "ivy") {
    LateFlow row;
    row.id = id, row.country = "IE", row.region = region;
    row.latitude = latitude, row.longitude = -8;
    row.plant = plant;
    row.from = from, row.to = to;
    row.typical = LateFlow::Typical::Fair;
    return row;
}

std::vector<std::string> idsNear(double latitude, const char* from, const char* to,
                                 const std::vector<LateFlow>& flows) {
    std::vector<std::string> ids;
    for (const auto& each :
         lateFlowsNear({latitude, -8, "IE"}, *Date::parse(from), *Date::parse(to), flows, constants()))
        ids.push_back(each.flow->id);
    return ids;
}

TEST(LateFlowsNear, ThoseOfThePlaceThatStillRun) {
    using testing::ElementsAre;
    using testing::IsEmpty;
    const std::vector<LateFlow> flows{
        flow("far", "North", 56, {9, 1}, {10, 31}), flow("near", "West", 53.5, {9, 15}, {11, 15}),
        flow("country", "", 53, {8, 1}, {9, 10}, "heather"), flow("winter", "South", 52, {12, 1}, {2, 15}, "rosemary")};
    EXPECT_THAT(idsNear(53, "2026-09-12", "2026-10-15", flows), ElementsAre("near")) << "the far one is 334 km away";
    EXPECT_THAT(idsNear(53.4, "2026-09-01", "2026-10-15", flows), ElementsAre("near", "country"))
        << "each plant once, the nearest";
    EXPECT_THAT(idsNear(53, "2026-11-16", "2026-11-30", flows), IsEmpty()) << "all over by then";
    EXPECT_THAT(idsNear(53, "2027-01-10", "2027-01-20", flows), ElementsAre("winter")) << "over the new year";
    EXPECT_THAT(idsNear(53, "2027-02-15", "2027-02-20", flows), ElementsAre("winter")) << "its last day counts";
    EXPECT_THAT(idsNear(53, "2027-02-16", "2027-02-20", flows), IsEmpty());
    EXPECT_TRUE(lateFlowsNear({53, std::nullopt, ""}, *Date::parse("2026-09-12"), *Date::parse("2026-10-01"), flows,
                              constants())
                    .empty());
}

TEST(LateFlowsNear, IvyInIrelandAsShipped) {
    const auto found = lateFlowsNear({53.3, -6.3, "IE"}, *Date::parse("2026-09-12"), *Date::parse("2026-10-15"),
                                     shipped().lateFlows, constants());
    ASSERT_FALSE(found.empty());
    EXPECT_THAT(found.front().flow->plant, testing::HasSubstr("ivy"));
}

} // namespace
} // namespace winterlarder::advice::usual_here_test
