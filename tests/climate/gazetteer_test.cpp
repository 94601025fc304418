// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/gazetteer.h"

#include "climate/shipped.h"
#include "climate/site.h"

#include <fmt/format.h>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace winterlarder::climate::gazetteer_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace fs = std::filesystem;

const Gazetteer& gazetteer() {
    static const Gazetteer read = [] {
        auto loaded = Gazetteer::load(SHARED_FOLDER, shipped());
        require(loaded.ok(), "{}", loaded.ok() ? std::string() : describe(loaded.problems().front()));
        return std::move(loaded).value();
    }();
    return read;
}

std::vector<std::string> named(std::string_view text, std::size_t most = 3) {
    std::vector<std::string> names;
    for (const FoundPlace& found : gazetteer().find(text, most)) names.push_back(gazetteer().fullName(*found.place));
    return names;
}

const GazetteerPlace& firstOf(std::string_view text) {
    const auto found = gazetteer().find(text, 1);
    require(!found.empty(), "nothing found for {}", text);
    return *found.front().place;
}

TEST(Gazetteer, HoldsThePlacesOfItsTables) { EXPECT_EQ(gazetteer().places().size(), 21523U); }

TEST(Gazetteer, KnowsTheSmallTownsOfTheOrchardCountry) {
    EXPECT_THAT(named("kentville"), ElementsAre("Kentville, Nova Scotia, Canada"));
    EXPECT_THAT(named("wolfville"), ElementsAre("Wolfville, Nova Scotia, Canada"));
    EXPECT_THAT(named("truro"), ElementsAre("Truro, England, United Kingdom", "Truro, Nova Scotia, Canada"));
    EXPECT_THAT(named("truro canada"), ElementsAre("Truro, Nova Scotia, Canada"));
    EXPECT_NEAR(firstOf("kentville").latitude, 45.08, 0.01);
}

// Coordinates as atlases give them, to a tenth of a degree; heights to 50 m.
TEST(Gazetteer, KnowsWherePlacesAre) {
    struct Known {
        const char* typed;
        double latitude, longitude, heightM;
    };
    for (const Known& known : {Known{"halifax canada", 44.65, -63.58, 30}, Known{"munich", 48.14, 11.58, 520},
                               Known{"wellington, nz", -41.29, 174.78, 20}, Known{"sao paulo", -23.55, -46.63, 760},
                               Known{"denver", 39.74, -104.98, 1600}}) {
        const GazetteerPlace& place = firstOf(known.typed);
        EXPECT_NEAR(place.latitude, known.latitude, 0.1) << known.typed;
        EXPECT_NEAR(place.longitude, known.longitude, 0.1) << known.typed;
        EXPECT_NEAR(place.heightM, known.heightM, 50) << known.typed;
    }
}

// Munich to Vienna is 355 km as the crow flies.
TEST(Gazetteer, DistancesBetweenItsPlacesAreThoseOfTheMap) {
    const GazetteerPlace &munich = firstOf("munich"), &vienna = firstOf("vienna");
    EXPECT_NEAR(distanceKm(munich.latitude, munich.longitude, vienna.latitude, vienna.longitude), 355, 5);
}

TEST(Gazetteer, FindsWithAndWithoutAccentsAndByOtherNames) {
    for (const char* typed : {"München", "Munchen", "Muenchen", "MUNICH", "münch"})
        EXPECT_EQ(firstOf(typed).name, "Munich") << typed;
    for (const char* typed : {"Köln", "Koln", "Koeln", "Cologne"}) EXPECT_EQ(firstOf(typed).name, "Köln") << typed;
    for (const char* typed : {"Düsseldorf", "Dusseldorf", "duesseldorf"})
        EXPECT_EQ(firstOf(typed).name, "Düsseldorf") << typed;
    for (const char* typed : {"Genève", "Geneve", "Geneva, Switzerland", "Genf"})
        EXPECT_EQ(firstOf(typed).name, "Genève") << typed;
    for (const char* typed : {"Göteborg", "Goteborg", "Goeteborg", "Gothenburg"})
        EXPECT_EQ(firstOf(typed).name, "Göteborg") << typed;
    for (const char* typed : {"Århus", "Arhus", "Aarhus"}) EXPECT_EQ(firstOf(typed).name, "Århus") << typed;
    for (const char* typed : {"Łódź", "Lodz"}) EXPECT_EQ(firstOf(typed).name, "Łódź") << typed;
    for (const char* typed : {"São Paulo", "Sao Paulo", "sao pau"})
        EXPECT_EQ(firstOf(typed).name, "São Paulo") << typed;
    for (const char* typed : {"St. John's", "St Johns", "Saint John's", "st john s"})
        EXPECT_EQ(firstOf(typed).name, "St. John's") << typed;
    EXPECT_EQ(firstOf("Praha").name, "Prague");
    EXPECT_EQ(firstOf("Lisboa").name, "Lisbon");
    EXPECT_EQ(firstOf("Wien").name, "Vienna");
    EXPECT_EQ(firstOf("Firenze").name, "Florence");
    EXPECT_EQ(firstOf("Den Haag").name, "The Hague");
}

TEST(Gazetteer, TellsByWhichNameAPlaceWasFound) {
    EXPECT_EQ(gazetteer().find("Firenze", 1).front().otherName, "Firenze");
    EXPECT_EQ(gazetteer().find("florence, italy", 1).front().otherName, "");
    EXPECT_EQ(gazetteer().find("muenchen", 1).front().otherName, "München");
    EXPECT_TRUE(gazetteer().find("Firenze", 1).front().whole);
    EXPECT_FALSE(gazetteer().find("Firen", 1).front().whole);
}

TEST(Gazetteer, WholeNamesComeFirstThenBeginningsThenLaterWordsTheLargerFirst) {
    const auto york = gazetteer().find("york", 200);
    ASSERT_GT(york.size(), 5U);
    EXPECT_EQ(gazetteer().fullName(*york[0].place), "York, England, United Kingdom")
        << "not New York, though that is larger";
    EXPECT_EQ(gazetteer().fullName(*york[1].place), "York, Pennsylvania, United States");
    const auto place = [&](const char* name) {
        return std::find_if(york.begin(), york.end(),
                            [&](const FoundPlace& found) { return found.place->name == name; }) -
               york.begin();
    };
    EXPECT_LT(place("Yorkville"), place("New York City"));
    EXPECT_LT(place("New York City"), static_cast<std::ptrdiff_t>(york.size()));
    EXPECT_EQ(named("halifax").front(), "Halifax, Nova Scotia, Canada") << "the larger";
    EXPECT_EQ(named("lond").front(), "London, England, United Kingdom");
}

TEST(Gazetteer, StateAndCountryNarrowTheSearch) {
    EXPECT_THAT(named("halifax, uk"), ElementsAre("Halifax, England, United Kingdom"));
    EXPECT_THAT(named("Halifax England"), ElementsAre("Halifax, England, United Kingdom"));
    EXPECT_THAT(named("Springfield IL"), ElementsAre("Springfield, Illinois, United States"));
    EXPECT_EQ(named("springfield, ma").front(), "Springfield, Massachusetts, United States")
        << "a short form before Maine and Maryland";
    EXPECT_THAT(named("Springfield, Ohio"), ElementsAre("Springfield, Ohio, United States"));
    EXPECT_THAT(named("Sydney nova sco"), ElementsAre("Sydney, Nova Scotia, Canada"));
    EXPECT_THAT(named("Munich, Deutschland"), ElementsAre("Munich, Bavaria, Germany"));
    EXPECT_THAT(named("London, Ontario, Canada"), ElementsAre("London, Ontario, Canada"));
    EXPECT_THAT(named("Halifax, Kanada"), ElementsAre("Halifax, Nova Scotia, Canada"));
    EXPECT_EQ(named("Vienna, Austria").front(), "Vienna, Austria") << "no state of the same name";
}

TEST(Gazetteer, FindsNothingWhereThereIsNothing) {
    EXPECT_THAT(named("xyzzy"), IsEmpty());
    EXPECT_THAT(named("halifax, japan"), IsEmpty());
    EXPECT_THAT(named(""), IsEmpty());
    EXPECT_THAT(named(" ,, "), IsEmpty());
    EXPECT_THAT(named(", canada"), IsEmpty());
    EXPECT_THAT(gazetteer().find("a", 0), IsEmpty());
}

TEST(Gazetteer, NearSpellingsAreOffered) {
    const auto first = [](std::string_view text) {
        return gazetteer().fullName(*gazetteer().spelledLike(text, 1).at(0));
    };
    EXPECT_EQ(first("Halifaks"), "Halifax, Nova Scotia, Canada");
    EXPECT_EQ(first("Edmonten, Canada"), "Edmonton, Alberta, Canada");
    EXPECT_THAT(gazetteer().spelledLike("xyzzyplugh", 5), IsEmpty());
    EXPECT_THAT(gazetteer().spelledLike("", 5), IsEmpty());
}

TEST(Gazetteer, EveryPlaceIsFoundByItsOwnName) {
    const std::vector<GazetteerPlace>& places = gazetteer().places();
    for (std::size_t i = 0; i < places.size(); i += 97) {
        bool met = false;
        for (const FoundPlace& found : gazetteer().find(gazetteer().fullName(places[i]), 20))
            met = met || found.place == &places[i];
        EXPECT_TRUE(met) << gazetteer().fullName(places[i]);
    }
}

TEST(Gazetteer, APlaceIsKnownByItsCoordinates) {
    const GazetteerPlace& halifax = firstOf("halifax canada");
    EXPECT_EQ(gazetteer().at(halifax.latitude, halifax.longitude), &halifax);
    EXPECT_EQ(gazetteer().at(halifax.latitude + 0.0005, halifax.longitude), &halifax);
    EXPECT_EQ(gazetteer().at(halifax.latitude + 0.01, halifax.longitude), nullptr);
}

// The climate of a place: that of the nearest of the stations, colder by 6.5 K a km it lies higher.
TEST(Gazetteer, ItsPlacesHaveAStationAndAHeightShift) {
    const GazetteerPlace& glasgow = firstOf("new glasgow canada");
    const auto site = siteNear(shipped(), glasgow.latitude, glasgow.longitude, glasgow.heightM);
    ASSERT_TRUE(site.ok());
    const Station& station = shippedStation(site->stationId);
    for (const Station& other : shipped().stations)
        EXPECT_LE(*site->distanceKm,
                  distanceKm(glasgow.latitude, glasgow.longitude, other.latitude, other.longitude) + 1e-9)
            << other.id;
    EXPECT_NEAR(site->heightShiftK, -0.0065 * (glasgow.heightM - station.elevationM), 1e-12);
}

// ---- broken tables ---------------------------------------------------------------------------------------------------

class BrokenGazetteer : public testing::Test {
protected:
    void SetUp() override {
        folder_ =
            fs::path(BUILD_FOLDER) / "broken_gazetteer" / testing::UnitTest::GetInstance()->current_test_info()->name();
        fs::create_directories(folder_ / "climate");
        write("places.csv", "country,name,state,latitude,longitude,height_m,population\n"
                            "CA,New Glasgow,Nova Scotia,45.583,-62.649,11,18665\n"
                            "CA,Sydney,Nova Scotia,46.135,-60.183,6,105968\n");
        write("more_places.csv", "country,name,state,latitude,longitude,height_m,population\n"
                                 "CA,Kentville,Nova Scotia,45.077,-64.496,20,6600\n");
        write("region_names.csv", "country,state,name,also\nCA,,Canada,Kanada\n");
        write("place_names.csv", "country,state,name,also\nCA,Nova Scotia,Sydney,Cape Breton\n");
    }
    void TearDown() override { fs::remove_all(folder_); }
    void write(const std::string& file, const std::string& content) const {
        std::ofstream(folder_ / "climate" / file, std::ios::binary) << content;
    }
    void add(const std::string& file, const std::string& row) const {
        std::ofstream(folder_ / "climate" / file, std::ios::binary | std::ios::app) << row << '\n';
    }
    void expectFault(const std::string& file, const std::string& expected) const {
        const auto loaded = Gazetteer::load(folder_, shipped());
        ASSERT_FALSE(loaded.ok());
        ASSERT_EQ(loaded.problems().size(), 1U);
        EXPECT_EQ(describe(loaded.problems().front()), (folder_ / "climate" / file).string() + expected);
    }
    fs::path folder_;
};

TEST_F(BrokenGazetteer, TheTablesAsWrittenHereAreRight) {
    const auto loaded = Gazetteer::load(folder_, shipped());
    ASSERT_TRUE(loaded.ok()) << describe(loaded.problems().front());
    EXPECT_EQ(loaded->find("cape breton", 5).size(), 1U);
    EXPECT_EQ(loaded->find("kentville", 5).size(), 1U);
}

TEST_F(BrokenGazetteer, LatitudeOutOfRange) {
    add("places.csv", "CA,Nowhere,Nova Scotia,95.1,-63,5,1");
    expectFault("places.csv", ":4:24: latitude 95.1 is out of range; a number from -90 to 90");
}

TEST_F(BrokenGazetteer, PopulationIsNoNumber) {
    add("places.csv", "CA,Nowhere,Nova Scotia,45.1,-63,5,many");
    expectFault("places.csv", ":4:35: population \"many\" is not a number; a whole number from 0 to 50000000");
}

TEST_F(BrokenGazetteer, PlaceWithoutName) {
    add("places.csv", "CA,,Nova Scotia,45.1,-63,5,10");
    expectFault("places.csv", ":4:4: name is empty; say what it is");
}

TEST_F(BrokenGazetteer, PlaceTwice) {
    add("places.csv", "CA,Sydney,Nova Scotia,46.135,-60.183,6,105968");
    write("place_names.csv", "country,state,name,also\n");
    expectFault("places.csv", ":4:4: Sydney is there twice; each place once");
}

TEST_F(BrokenGazetteer, PlaceInBothTables) {
    add("more_places.csv", "CA,New Glasgow,Nova Scotia,45.583,-62.649,11,18665");
    expectFault("more_places.csv", ":3:4: New Glasgow is there twice; each place once");
}

TEST_F(BrokenGazetteer, CountryWithoutName) {
    add("places.csv", "ZZ,Elsewhere,,45.1,-63,5,10");
    expectFault("places.csv", ":4:1: country ZZ has no name; a row in climate/region_names.csv");
}

TEST_F(BrokenGazetteer, CountryThatIsNone) {
    add("region_names.csv", "canada,,Canada,");
    expectFault("region_names.csv", ":3:1: country canada is no country code; two capital letters, such as CA");
}

TEST_F(BrokenGazetteer, RegionTwice) {
    add("region_names.csv", "CA,,Canada,");
    expectFault("region_names.csv", ":3:4: CA  is named twice; one row each");
}

TEST_F(BrokenGazetteer, NameOfNoPlace) {
    add("place_names.csv", "CA,Nova Scotia,Sidney,Cape Breton");
    expectFault("place_names.csv",
                ":3:16: Sidney is no place of climate/places.csv; country, state and name of one place");
}

TEST_F(BrokenGazetteer, FileMissing) {
    fs::remove(folder_ / "climate" / "place_names.csv");
    expectFault("place_names.csv", ": cannot be opened; a file that can be read");
}

} // namespace
} // namespace winterlarder::climate::gazetteer_test
