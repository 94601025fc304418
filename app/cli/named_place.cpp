// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/named_place.h"

#include "climate/site.h"
#include "exchange/json/json_tree.h"
#include "support/plain_letters.h"
#include "text/place_words.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace winterlarder::cli {

namespace {

constexpr std::size_t mostListed = 5;
constexpr int muchLarger = 10;

Problem noPlace(const climate::Gazetteer& places, const std::string& text) {
    const QStringList near = text::likeSpelled(places, QString::fromStdString(text));
    const std::string meant =
        near.isEmpty() ? std::string()
                       : fmt::format("did you mean \"{}\"? Else ", near.join(QStringLiteral("\" or \"")).toStdString());
    return argumentProblem(fmt::format("no place {}", exchange::inQuotes(text)),
                           meant + "name the nearest town, or give latitude and longitude");
}

Problem severalPlaces(const climate::Gazetteer& places, const std::string& text,
                      const std::vector<climate::FoundPlace>& found) {
    std::string names;
    for (const auto& each : found)
        names += fmt::format("{}\"{}\"", names.empty() ? "" : " or ", places.fullName(*each.place));
    return argumentProblem(fmt::format("several places may be {}", exchange::inQuotes(text)),
                           fmt::format("say which, such as {}; or give latitude and longitude", names));
}

bool isNameAlone(const climate::FoundPlace& found, const std::string& text) {
    const std::string typed = plainLetters(text);
    return typed == plainLetters(found.place->name) || typed == plainLetters(found.otherName);
}

// What to do where this place is not the one; empty where the state or country was said.
std::string otherMeant(const NamedPlace& named) {
    if (named.others.empty())
        return named.nameAlone
                   ? fmt::format("no other {} is known here, smaller places are not: if yours is another, name a "
                                 "larger town near it, or give latitude and longitude",
                                 exchange::inQuotes(named.place.name))
                   : std::string();
    return fmt::format("of that name too: \"{}\"", fmt::join(named.others, "\", \""));
}

} // namespace

std::string noStationNear(const std::string& place) {
    return fmt::format("no climate station lies within {} km of {}", climate::farthestStationKm, place);
}

Outcome<climate::Gazetteer> placesOf(const Session& session) {
    return climate::Gazetteer::load(session.dataFolder, session.reference);
}

Outcome<NamedPlace> placeNamed(const climate::Gazetteer& places, const std::string& text) {
    const auto found = places.find(text, mostListed + 1);
    if (found.empty()) return noPlace(places, text);
    const bool alone =
        found.size() == 1 || !found[1].whole || found[0].place->population >= muchLarger * found[1].place->population;
    if (!found.front().whole || !alone) return severalPlaces(places, text, found);
    NamedPlace named{*found.front().place, {}, isNameAlone(found.front(), text)};
    for (std::size_t i = 1; i < found.size() && found[i].whole; ++i)
        named.others.push_back(places.fullName(*found[i].place));
    return named;
}

Status tellPlace(Session& session, const climate::Gazetteer& places, const NamedPlace& named) {
    const climate::GazetteerPlace& place = named.place;
    const auto site = climate::siteNear(session.reference, place.latitude, place.longitude, place.heightM);
    if (!site) return session.fail(site.problems());
    session.tell(fmt::format("{}: {}", places.fullName(place),
                             text::weatherOf(*site, session.reference, place.heightM, session.style).toStdString()));
    if (const std::string other = otherMeant(named); !other.empty()) session.tell(other);
    return Status::Done;
}

exchange::Json placeTaken(const Session& session, const climate::Gazetteer& places, const NamedPlace& named) {
    using exchange::Json;
    const climate::GazetteerPlace& place = named.place;
    Json taken = Json::object().add("full_name", places.fullName(place)).add("country", place.country);
    if (const auto site = climate::siteNear(session.reference, place.latitude, place.longitude, place.heightM))
        taken.add("station", site->stationId)
            .add("distance_km", *site->distanceKm)
            .add("height_shift_c", site->heightShiftK);
    Json others = Json::list();
    for (const std::string& other : named.others) others.push(other);
    return std::move(taken.add("other_places", std::move(others)));
}

} // namespace winterlarder::cli
