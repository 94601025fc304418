// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/reference.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder::climate {

//! A place where people live (shared/climate/places.csv, more_places.csv).
struct GazetteerPlace {
    std::string name;     //!< in its own letters where known: "Köln"
    std::string state;    //!< as it is shown, may be empty
    std::string country;  //!< ISO 3166 code
    double latitude = 0;  //!< degrees north
    double longitude = 0; //!< degrees east
    double heightM = 0;   //!< above the sea
    int population = 0;
    std::vector<std::string> otherNames; //!< "Cologne"
};

//! A place that was searched for, and by which of its names.
struct FoundPlace {
    const GazetteerPlace* place = nullptr; //!< lives as long as the gazetteer
    std::string otherName;                 //!< the one that was typed; empty: its name
    bool whole = false;                    //!< the whole name was typed, not its beginning alone
};

//! Places of the world, read once, never changed, searched as a name is typed. Nearest station and height shift of a place are those
//! of siteNear (site.h) at its coordinates and height. Tested: tests/climate/gazetteer_test.cpp; speed: bench_gazetteer.
class Gazetteer {
public:
    //! Reads the four tables of the data folder; every fault of every row with its line. Not part of loadReference: most runs of the
    //! program ask for no place.
    static Outcome<Gazetteer> load(const std::filesystem::path& folder, const ReferenceData& reference);

    //! Places whose name, or the beginning of its words, was typed, in plain letters (plain_letters.h); after it the beginnings of the words of
    //! state or country, or their short forms: "halifax", "halifax, canada", "springfield il". Whole names first, then those that begin
    //! so, then later words; in each the larger places first. At most `most`; none for a text without letters.
    std::vector<FoundPlace> find(std::string_view text, std::size_t most) const;

    //! Places whose name is spelled nearly so (two letters wrong at most, a third of a short name), nearest first, then the larger.
    std::vector<const GazetteerPlace*> spelledLike(std::string_view text, std::size_t most) const;

    //! The place at these coordinates (within 100 m); null where there is none.
    const GazetteerPlace* at(double latitude, double longitude) const;

    //! "Halifax, Nova Scotia, Canada"; the state is left out where it is called as the place is.
    std::string fullName(const GazetteerPlace& place) const;
    //! Of a code; the code itself where it is not known.
    const std::string& countryName(const std::string& code) const;
    const std::vector<GazetteerPlace>& places() const { return places_; } //!< the larger first

private:
    friend class GazetteerReader;
    struct Region {
        std::string country, state, shown;
        std::string words; //!< all names of state and country, as those of Searched
    };
    //! All names of a place in plain letters, each word behind a blank, each name behind a line end: "\n koeln\n koln\n cologne\n".
    struct Searched {
        std::string names;
        std::size_t region = 0;
    };
    int rankOf(std::size_t place, const std::string& name, const std::vector<std::string>& where) const;
    std::vector<std::size_t> matching(const std::string& name, const std::vector<std::string>& where,
                                      std::size_t most) const;
    FoundPlace found(std::size_t place, const std::string& name) const;

    std::vector<GazetteerPlace> places_;
    std::vector<Searched> searched_; //!< of each place
    std::vector<Region> regions_;
    std::vector<std::pair<std::string, std::string>> countries_; //!< code, name; by code
};

} // namespace winterlarder::climate
