// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/site.h"

#include "climate/shipped.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace winterlarder::climate::site_test {
namespace {

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

Site accepted(Outcome<Site> site) {
    require(site.ok(), "{}", site.ok() ? std::string() : describe(site.problems().front()));
    return std::move(site).value();
}

// Great circles on a sphere: a quarter and half of 2 pi 6371.0088 km; one degree of latitude is 111.195 km.
TEST(Distance, KnownArcs) {
    EXPECT_NEAR(distanceKm(0, 0, 90, 0), 10007.557, 0.001);
    EXPECT_NEAR(distanceKm(0, 0, 0, 180), 20015.114, 0.001);
    EXPECT_NEAR(distanceKm(50, 8, 51, 8), 111.195, 0.001);
    EXPECT_NEAR(distanceKm(0, 179.5, 0, -179.5), 111.195, 0.001) << "over the date line";
    EXPECT_DOUBLE_EQ(distanceKm(44.9, -63.5, 44.9, -63.5), 0);
}

// London to Paris, 51.5074 N 0.1278 W to 48.8566 N 2.3522 E: 343.5 km, the usual worked example of the haversine formula.
TEST(Distance, LondonToParis) { EXPECT_NEAR(distanceKm(51.5074, -0.1278, 48.8566, 2.3522), 343.5, 0.5); }

RC_GTEST_PROP(DistanceProperty, IsSymmetricAndNeverBeyondTheAntipode, ()) {
    const auto latitude = [] { return *rc::gen::inRange(-900, 901) / 10.0; };
    const auto longitude = [] { return *rc::gen::inRange(-1800, 1801) / 10.0; };
    const double latitude1 = latitude(), longitude1 = longitude(), latitude2 = latitude(), longitude2 = longitude();
    const double there = distanceKm(latitude1, longitude1, latitude2, longitude2);
    RC_ASSERT(std::abs(there - distanceKm(latitude2, longitude2, latitude1, longitude1)) < 1e-9);
    RC_ASSERT(there >= 0 && there <= 20015.2);
}

TEST(Stations, NearestFirst) {
    const auto near = stationsByDistance(shipped().stations, 44.9, -63.5);
    ASSERT_EQ(near.size(), shipped().stations.size());
    EXPECT_EQ(near.front().station->id, "ca-halifax");
    for (std::size_t i = 1; i < near.size(); ++i) EXPECT_LE(near[i - 1].distanceKm, near[i].distanceKm);
}

TEST(SeasonOffset, RegionalMedians) {
    EXPECT_DOUBLE_EQ(usualSeasonOffsetSd(51.5, 0), 0.51);
    EXPECT_DOUBLE_EQ(usualSeasonOffsetSd(39.9, 32.9), 0.51) << "Turkey";
    EXPECT_DOUBLE_EQ(usualSeasonOffsetSd(64.1, -21.9), 0.51) << "Iceland";
    EXPECT_DOUBLE_EQ(usualSeasonOffsetSd(44.6, -63.5), 0.75) << "America east of 100 W";
    EXPECT_DOUBLE_EQ(usualSeasonOffsetSd(47.4, -122.3), 0.30) << "America west of 100 W";
    EXPECT_DOUBLE_EQ(usualSeasonOffsetSd(35.6, 139.8), 0.69) << "East Asia";
    EXPECT_DOUBLE_EQ(usualSeasonOffsetSd(-37.8, 145), 0.26) << "south";
    EXPECT_DOUBLE_EQ(usualSeasonOffsetSd(-33.4, -70.7), 0.26) << "south, America";
}

TEST(SiteAtStation, IsTheStationsOwnCurve) {
    const Station& oxford = shippedStation("gb-oxford");
    const Site site = accepted(siteAtStation(oxford, std::nullopt));
    EXPECT_EQ(site.stationId, "gb-oxford");
    EXPECT_FALSE(site.distanceKm);
    EXPECT_DOUBLE_EQ(site.heightShiftK, 0);
    EXPECT_DOUBLE_EQ(site.curve.latitude(), oxford.latitude);
    EXPECT_NEAR(monthMeanC(site.curve, 0), oxford.monthlyMeanC[0], 1e-9);
    EXPECT_DOUBLE_EQ(site.curve.variability().dailySdWinter, oxford.dailySdWinterK);
    EXPECT_DOUBLE_EQ(site.curve.variability().dailySdSummer, oxford.dailySdSummerK);
    EXPECT_DOUBLE_EQ(site.curve.variability().lag1, oxford.lag1);
}

// ISO 2533 standard atmosphere: -6.5 K per km.
TEST(SiteAtStation, HigherIsColder) {
    const Station& davos = shippedStation("ch-davos");
    const Site site = accepted(siteAtStation(davos, davos.elevationM + 1000));
    EXPECT_NEAR(site.heightShiftK, -6.5, 1e-12);
    for (std::size_t month = 0; month < 12; ++month)
        EXPECT_NEAR(monthMeanC(site.curve, month), davos.monthlyMeanC[month] - 6.5, 1e-9);
    EXPECT_NEAR(accepted(siteAtStation(davos, davos.elevationM - 200)).heightShiftK, 1.3, 1e-12);
    EXPECT_DOUBLE_EQ(accepted(siteAtStation(davos, davos.elevationM)).heightShiftK, 0);
}

TEST(SiteAtStation, MissingOffsetIsTheRegionsMedian) {
    Station station = shippedStation("jp-tokyo");
    station.seasonOffsetSdK.reset();
    EXPECT_DOUBLE_EQ(accepted(siteAtStation(station, std::nullopt)).curve.variability().seasonOffsetSd, 0.69);
    station.seasonOffsetSdK = 0.0;
    EXPECT_DOUBLE_EQ(accepted(siteAtStation(station, std::nullopt)).curve.variability().seasonOffsetSd, 0.0)
        << "none is not missing";
}

TEST(SiteAtStation, RefusesImpossibleHeights) {
    const Station& oxford = shippedStation("gb-oxford");
    for (const double height : {nothing, std::numeric_limits<double>::infinity(), -501.0, 9001.0})
        EXPECT_FALSE(siteAtStation(oxford, height)) << height;
    EXPECT_TRUE(siteAtStation(oxford, 0.0));
}

TEST(SiteNear, TakesTheNearestStationAndThePlacesLatitude) {
    const Site site = accepted(siteNear(shipped(), 45.2, -63.2, std::nullopt));
    const Station& halifax = shippedStation("ca-halifax");
    EXPECT_EQ(site.stationId, "ca-halifax");
    ASSERT_TRUE(site.distanceKm);
    EXPECT_NEAR(*site.distanceKm, distanceKm(45.2, -63.2, halifax.latitude, halifax.longitude), 1e-9);
    EXPECT_DOUBLE_EQ(site.curve.latitude(), 45.2);
    EXPECT_NEAR(monthMeanC(site.curve, 1), halifax.monthlyMeanC[1], 1e-9);
    EXPECT_DOUBLE_EQ(site.curve.dayLength({0}).value(), dayLength(45.2, 0).value());
}

TEST(SiteNear, ShiftsWithHeight) {
    const Station& halifax = shippedStation("ca-halifax");
    const Site site = accepted(siteNear(shipped(), 45.2, -63.2, halifax.elevationM + 100));
    EXPECT_NEAR(site.heightShiftK, -0.65, 1e-12);
}

TEST(SiteNear, AnOceanAwayIsSaidNotRefused) {
    const Site site = accepted(siteNear(shipped(), 40, -40, std::nullopt));
    EXPECT_GT(*site.distanceKm, farthestStationKm) << "the caller refuses";
}

TEST(SiteNear, RefusesImpossiblePlaces) {
    EXPECT_FALSE(siteNear(shipped(), 91, 0, std::nullopt));
    EXPECT_FALSE(siteNear(shipped(), 0, 181, std::nullopt));
    EXPECT_FALSE(siteNear(shipped(), nothing, 0, std::nullopt));
    EXPECT_FALSE(siteNear(shipped(), 0, nothing, std::nullopt));
    const auto all = siteNear(shipped(), 91, 181, -9999.0);
    ASSERT_FALSE(all);
    EXPECT_EQ(all.problems().size(), 3u);
}

OwnClimate ownClimate() {
    OwnClimate own;
    own.latitude = 44.9;
    own.monthlyMeanC = oxfordMeanC;
    return own;
}

TEST(OwnClimate, UnknownScatterIsJudgementWithoutLongitude) {
    const Site site = accepted(siteFromOwnClimate(shipped(), ownClimate()));
    EXPECT_EQ(site.curve.variability(), (Variability{4.0, 3.0, 0.80, 0.5}));
    EXPECT_EQ(site.stationId, "");
    EXPECT_FALSE(site.distanceKm);
    EXPECT_DOUBLE_EQ(site.curve.latitude(), 44.9);
    for (std::size_t month = 0; month < 12; ++month)
        EXPECT_NEAR(monthMeanC(site.curve, month), oxfordMeanC[month], 1e-9);
}

TEST(OwnClimate, UnknownScatterIsTheNearestStationsWithLongitude) {
    OwnClimate own = ownClimate();
    own.longitude = -63.5;
    own.lag1 = 0.5;
    const Site site = accepted(siteFromOwnClimate(shipped(), own));
    const Station& halifax = shippedStation("ca-halifax");
    EXPECT_EQ(site.stationId, "ca-halifax");
    EXPECT_TRUE(site.distanceKm);
    EXPECT_DOUBLE_EQ(site.curve.variability().dailySdWinter, halifax.dailySdWinterK);
    EXPECT_DOUBLE_EQ(site.curve.variability().dailySdSummer, halifax.dailySdSummerK);
    EXPECT_DOUBLE_EQ(site.curve.variability().lag1, 0.5) << "what is known stays";
}

TEST(OwnClimate, KnownScatterNeedsNoStation) {
    OwnClimate own = ownClimate();
    own.longitude = -63.5;
    own.dailySdWinterK = 5;
    own.dailySdSummerK = 2;
    own.lag1 = 0.7;
    own.seasonOffsetSdK = 1;
    const Site site = accepted(siteFromOwnClimate(shipped(), own));
    EXPECT_EQ(site.curve.variability(), (Variability{5, 2, 0.7, 1}));
    EXPECT_EQ(site.stationId, "");
    EXPECT_FALSE(site.distanceKm);
}

TEST(OwnClimate, RefusesWhatCannotBe) {
    OwnClimate own = ownClimate();
    own.monthlyMeanC[4] = nothing;
    EXPECT_FALSE(siteFromOwnClimate(shipped(), own));
    own = ownClimate();
    own.latitude = 95;
    EXPECT_FALSE(siteFromOwnClimate(shipped(), own));
    own = ownClimate();
    own.longitude = 500;
    EXPECT_FALSE(siteFromOwnClimate(shipped(), own));
    own = ownClimate();
    own.lag1 = 1.5;
    EXPECT_FALSE(siteFromOwnClimate(shipped(), own));
}

} // namespace
} // namespace winterlarder::climate::site_test
