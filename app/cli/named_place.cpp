// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/named_place.h"

#include "climate/site.h"
#include "exchange/json/json_tree.h"
#include "text/place_words.h"

#include <fmt/format.h>

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

} // namespace

std::string noStationNear(const std::string& place) {
    return fmt::format("no climate station lies within {} km of {}", climate::farthestStationKm, place);
}

Outcome<climate::Gazetteer> placesOf(const Session& session) {
    return climate::Gazetteer::load(session.dataFolder, session.reference);
}

Outcome<climate::GazetteerPlace> placeNamed(const climate::Gazetteer& places, const std::string& text) {
    const auto found = places.find(text, mostListed);
    if (found.empty()) return noPlace(places, text);
    const bool alone =
        found.size() == 1 || !found[1].whole || found[0].place->population >= muchLarger * found[1].place->population;
    if (found.front().whole && alone) return *found.front().place;
    return severalPlaces(places, text, found);
}

Status tellPlace(Session& session, const climate::Gazetteer& places, const climate::GazetteerPlace& place) {
    const auto site = climate::siteNear(session.reference, place.latitude, place.longitude, place.heightM);
    if (!site) return session.fail(site.problems());
    session.tell(fmt::format("{}: {}", places.fullName(place),
                             text::weatherOf(*site, session.reference, place.heightM, session.style).toStdString()));
    return Status::Done;
}

} // namespace winterlarder::cli
