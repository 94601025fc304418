// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/gazetteer.h"
#include "climate/name_forms.h"
#include "reference/shipped_files.h"
#include "support/plain_letters.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <numeric>
#include <tuple>

namespace winterlarder::climate {

namespace {

constexpr double largestPopulation = 50e6;

using StateKey = std::pair<std::string, std::string>;               // country, state
using PlaceKey = std::tuple<std::string, std::string, std::string>; // country, state, name

} // namespace

//! Reads the tables one after the other; internal to Gazetteer::load.
class GazetteerReader {
public:
    GazetteerReader(const std::filesystem::path& path, const ReferenceData& reference)
        : folder_{path, {}}, latitude_(limitsOf(reference.fields, "site.latitude")),
          longitude_(limitsOf(reference.fields, "site.longitude")),
          height_(limitsOf(reference.fields, "site.elevation_m")) {}

    Outcome<Gazetteer> read() {
        readRegions();
        readPlaces(placesFile);
        readPlaces(morePlacesFile);
        readNames();
        if (!folder_.problems.empty()) return std::move(folder_.problems);
        showStates();
        sortBySize();
        return std::move(gazetteer_);
    }

private:
    struct NamedRegion {
        std::string shown;
        std::vector<std::string> also;
    };

    void readRegions() {
        auto table = folder_.table(regionNamesFile);
        if (!table) return;
        CheckedTable checked(std::move(*table), {"country", "state", "name", "also"}, folder_.problems);
        for (std::size_t row = 0; row < checked.rows(); ++row) {
            const StateKey key{checked.countryCode(row, "country"), checked.optionalText(row, "state")};
            const bool added =
                named_.emplace(key, NamedRegion{checked.text(row, "name"), listedIn(checked.cell(row, "also").text)})
                    .second;
            if (!added)
                checked.fault(checked.cell(row, "state"), fmt::format("{} {} is named twice", key.first, key.second),
                              "one row each");
            if (key.second.empty()) gazetteer_.countries_.emplace_back(key.first, checked.cell(row, "name").text);
        }
        std::sort(gazetteer_.countries_.begin(), gazetteer_.countries_.end());
    }

    void readPlaces(const char* file) {
        auto table = folder_.table(file);
        if (!table) return;
        CheckedTable checked(std::move(*table),
                             {"country", "name", "state", "latitude", "longitude", "height_m", "population"},
                             folder_.problems);
        gazetteer_.places_.reserve(gazetteer_.places_.size() + checked.rows());
        gazetteer_.searched_.reserve(gazetteer_.places_.size() + checked.rows());
        for (std::size_t row = 0; row < checked.rows(); ++row) addPlace(checked, row);
    }

    void addPlace(CheckedTable& checked, std::size_t row) {
        GazetteerPlace place;
        place.name = checked.text(row, "name");
        place.state = checked.optionalText(row, "state");
        place.country = checked.countryCode(row, "country");
        place.latitude = checked.number(row, "latitude", latitude_);
        place.longitude = checked.number(row, "longitude", longitude_);
        place.heightM = checked.number(row, "height_m", height_);
        place.population = checked.integer(row, "population", {0, largestPopulation});
        auto& namesakes = places_[{place.country, place.state, place.name}];
        checkTwice(checked, row, place, namesakes);
        namesakes.push_back(gazetteer_.places_.size());
        gazetteer_.searched_.push_back({{}, regionOf(checked, row, place)});
        forms_.emplace_back().add(place.name);
        gazetteer_.places_.push_back(std::move(place));
    }

    std::size_t regionOf(CheckedTable& checked, std::size_t row, const GazetteerPlace& place) {
        const auto [known, added] = regions_.emplace(StateKey{place.country, place.state}, gazetteer_.regions_.size());
        if (!added) return known->second;
        const auto country = named_.find({place.country, {}});
        if (country == named_.end())
            checked.fault(checked.cell(row, "country"), fmt::format("country {} has no name", place.country),
                          fmt::format("a row in {}", regionNamesFile));
        const auto state = named_.find(known->first);
        gazetteer_.regions_.push_back(
            {place.country, place.state, state == named_.end() ? place.state : state->second.shown, wordsOf(place)});
        return known->second;
    }

    std::string wordsOf(const GazetteerPlace& place) const {
        NameForms forms;
        forms.add(place.state);
        forms.add(place.country);
        for (const StateKey& key : {StateKey{place.country, place.state}, StateKey{place.country, {}}})
            if (const auto known = named_.find(key); known != named_.end()) {
                forms.add(known->second.shown);
                for (const std::string& also : known->second.also) forms.add(also);
            }
        return forms.taken();
    }

    // Two rows may share a name in one state where they lie apart.
    void checkTwice(CheckedTable& checked, std::size_t row, const GazetteerPlace& place,
                    const std::vector<std::size_t>& namesakes) {
        for (const std::size_t other : namesakes) {
            const GazetteerPlace& known = gazetteer_.places_[other];
            if (known.latitude == place.latitude && known.longitude == place.longitude)
                checked.fault(checked.cell(row, "name"), fmt::format("{} is there twice", place.name),
                              "each place once");
        }
    }

    void readNames() {
        auto table = folder_.table(placeNamesFile);
        if (!table) return;
        CheckedTable checked(std::move(*table), {"country", "state", "name", "also"}, folder_.problems);
        for (std::size_t row = 0; row < checked.rows(); ++row) {
            const auto known = places_.find(
                {checked.countryCode(row, "country"), checked.optionalText(row, "state"), checked.text(row, "name")});
            const std::vector<std::string> also = listedIn(checked.text(row, "also"));
            if (known != places_.end() && known->second.size() == 1) addNames(known->second.front(), also);
            else
                checked.fault(checked.cell(row, "name"),
                              fmt::format("{} is {} of {}", checked.cell(row, "name").text,
                                          known == places_.end() ? "no place" : "several places", placesFile),
                              "country, state and name of one place");
        }
    }

    // A name that differs in accents alone is how the place is written.
    void addNames(std::size_t place, const std::vector<std::string>& also) {
        GazetteerPlace& named = gazetteer_.places_[place];
        const std::string plain = plainLetters(named.name);
        for (const std::string& other : also) {
            forms_[place].add(other);
            if (plainLetters(other) == plain || spelledOut(other) == plain) named.name = other;
            else named.otherNames.push_back(other);
        }
    }

    void showStates() {
        for (std::size_t i = 0; i < gazetteer_.places_.size(); ++i)
            gazetteer_.places_[i].state = gazetteer_.regions_[gazetteer_.searched_[i].region].shown;
    }

    void sortBySize() {
        auto& places = gazetteer_.places_;
        std::vector<std::size_t> order(places.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return places[a].population > places[b].population; });
        std::vector<GazetteerPlace> sorted;
        std::vector<Gazetteer::Searched> searched;
        sorted.reserve(places.size());
        searched.reserve(places.size());
        for (const std::size_t i : order) {
            sorted.push_back(std::move(places[i]));
            searched.push_back({forms_[i].taken(), gazetteer_.searched_[i].region});
        }
        places = std::move(sorted);
        gazetteer_.searched_ = std::move(searched);
    }

    ShippedFolder folder_;
    NumberRange latitude_, longitude_, height_;
    Gazetteer gazetteer_;
    std::map<StateKey, NamedRegion> named_;
    std::map<StateKey, std::size_t> regions_;
    std::map<PlaceKey, std::vector<std::size_t>> places_; // in the order they were read
    std::vector<NameForms> forms_;
};

Outcome<Gazetteer> Gazetteer::load(const std::filesystem::path& folder, const ReferenceData& reference) {
    return GazetteerReader(folder, reference).read();
}

} // namespace winterlarder::climate
