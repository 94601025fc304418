// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/gazetteer.h"

#include "climate/site.h"
#include "support/edit_distance.h"
#include "support/plain_letters.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace winterlarder::climate {

namespace {

constexpr double samePlaceKm = 0.1;

// How well a place is met, the lower the better: the whole name, its beginning, a later word; by whole words of state and country
// before beginnings of them.
constexpr int wholeName = 0, beginsSo = 1, laterWord = 2, namePlaces = 3, ranks = 2 * namePlaces, notMet = ranks;

// Words joined, each behind a blank.
std::string joined(const std::vector<std::string>& words, std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i) text += ' ' + words[i];
    return text;
}

int rankOfName(const std::string& names, const std::string& name) {
    int best = namePlaces;
    for (std::size_t at = names.find(name); at != std::string::npos; at = names.find(name, at + 1)) {
        const bool begins = names[at - 1] == '\n', ends = names[at + name.size()] == '\n';
        best = std::min(best, begins && ends ? wholeName : begins ? beginsSo : laterWord);
    }
    return best;
}

enum class Met { Not, Beginning, Whole };

Met wordMet(const std::string& words, const std::string& word) {
    const std::string wanted = ' ' + word;
    Met met = Met::Not;
    for (std::size_t at = words.find(wanted); at != std::string::npos; at = words.find(wanted, at + 1)) {
        const char after = words[at + wanted.size()];
        if (after == ' ' || after == '\n') return Met::Whole;
        met = Met::Beginning;
    }
    return met;
}

// How many words are the name at most: those before a comma, else all.
std::size_t wordsOfName(std::string_view text, std::size_t all) {
    const auto comma = text.find(',');
    if (comma == std::string_view::npos) return all;
    return std::min(all, plainWords(text.substr(0, comma)).size());
}

bool isOfName(const std::string& name, const std::string& typed) {
    const auto begins = [&](const std::string& plain) { return (' ' + plain).find(typed) != std::string::npos; };
    return begins(plainLetters(name)) || begins(spelledOut(name));
}

} // namespace

int Gazetteer::rankOf(std::size_t place, const std::string& name, const std::vector<std::string>& where) const {
    const int rank = rankOfName(searched_[place].names, name);
    if (rank == namePlaces) return notMet;
    bool whole = true;
    for (const std::string& word : where) {
        const Met met = wordMet(regions_[searched_[place].region].words, word);
        if (met == Met::Not) return notMet;
        whole = whole && met == Met::Whole;
    }
    return whole ? rank : namePlaces + rank;
}

// Places stand by size, so each rank is filled with the larger first.
std::vector<std::size_t> Gazetteer::matching(const std::string& name, const std::vector<std::string>& where,
                                             std::size_t most) const {
    std::array<std::vector<std::size_t>, ranks> ranked;
    for (std::size_t place = 0; place < places_.size(); ++place)
        if (const int rank = rankOf(place, name, where); rank != notMet)
            if (auto& same = ranked[static_cast<std::size_t>(rank)]; same.size() < most) same.push_back(place);
    std::vector<std::size_t> best;
    for (const auto& same : ranked) best.insert(best.end(), same.begin(), same.end());
    if (best.size() > most) best.resize(most);
    return best;
}

FoundPlace Gazetteer::found(std::size_t place, const std::string& name) const {
    FoundPlace found{&places_[place], {}, rankOfName(searched_[place].names, name) == wholeName};
    if (isOfName(found.place->name, name)) return found;
    for (const std::string& other : found.place->otherNames)
        if (isOfName(other, name)) return {found.place, other, found.whole};
    return found;
}

std::vector<FoundPlace> Gazetteer::find(std::string_view text, std::size_t most) const {
    const std::vector<std::string> words = plainWords(text);
    const std::size_t ofName = wordsOfName(text, words.size());
    const std::size_t least = ofName < words.size() ? ofName : 1;
    std::vector<FoundPlace> all;
    for (std::size_t count = ofName; count >= std::max<std::size_t>(1, least) && all.empty(); --count) {
        const std::string name = joined(words, count);
        const std::vector<std::string> where(words.begin() + static_cast<std::ptrdiff_t>(count), words.end());
        for (const std::size_t place : matching(name, where, most)) all.push_back(found(place, name));
    }
    return all;
}

std::vector<const GazetteerPlace*> Gazetteer::spelledLike(std::string_view text, std::size_t most) const {
    const std::string typed = plainLetters(text.substr(0, text.find(',')));
    const int allowed = std::min(2, static_cast<int>(typed.size()) / 3);
    std::vector<std::pair<int, const GazetteerPlace*>> near;
    for (std::size_t place = 0; place < places_.size() && allowed > 0; ++place) {
        const std::string_view names = searched_[place].names;
        const std::string_view first = names.substr(2, names.find('\n', 2) - 2);
        const auto longer = static_cast<std::ptrdiff_t>(first.size()) - static_cast<std::ptrdiff_t>(typed.size());
        if (std::abs(longer) > allowed || first.front() != typed.front()) continue;
        if (const int edits = editDistance(first, typed); edits <= allowed) near.emplace_back(edits, &places_[place]);
    }
    std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<const GazetteerPlace*> nearest;
    for (std::size_t i = 0; i < std::min(most, near.size()); ++i) nearest.push_back(near[i].second);
    return nearest;
}

const GazetteerPlace* Gazetteer::at(double latitude, double longitude) const {
    for (const GazetteerPlace& place : places_)
        if (std::abs(place.latitude - latitude) < 0.01 &&
            distanceKm(place.latitude, place.longitude, latitude, longitude) < samePlaceKm)
            return &place;
    return nullptr;
}

std::string Gazetteer::fullName(const GazetteerPlace& place) const {
    const bool named = !place.state.empty() && plainLetters(place.state) != plainLetters(place.name);
    return place.name + (named ? ", " + place.state : std::string()) + ", " + countryName(place.country);
}

const std::string& Gazetteer::countryName(const std::string& code) const {
    const auto known = std::lower_bound(countries_.begin(), countries_.end(), code,
                                        [](const auto& row, const std::string& wanted) { return row.first < wanted; });
    return known != countries_.end() && known->first == code ? known->second : code;
}

} // namespace winterlarder::climate
