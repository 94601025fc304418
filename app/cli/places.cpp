// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commands.h"
#include "cli/named_place.h"
#include "cli/table.h"
#include "climate/site.h"
#include "exchange/json/json_tree.h"
#include "text/contexts.h"
#include "text/place_words.h"

#include <fmt/format.h>

namespace winterlarder::cli {

namespace {

using exchange::Json;

constexpr int mostPlaces = 1000;

std::string queryOf(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "" : " ") + word;
    return text;
}

// `site` is what a case file takes as it stands.
Json placeJson(const climate::FoundPlace& found, const climate::Gazetteer& places, const climate::Site& site) {
    const auto& place = *found.place;
    const auto coordinates = [&](Json object) {
        return std::move(
            object.add("latitude", place.latitude).add("longitude", place.longitude).add("elevation_m", place.heightM));
    };
    Json object = coordinates(Json::object()
                                  .add("name", place.name)
                                  .add("state", place.state)
                                  .add("country", place.country)
                                  .add("full_name", places.fullName(place)));
    object.add("population", place.population).add("station", site.stationId).add("distance_km", *site.distanceKm);
    object.add("height_shift_c", site.heightShiftK);
    return std::move(object.add("site", coordinates(Json::object())));
}

} // namespace

Status places(Session& session, const PlacesOptions& options) {
    if (options.most < 1 || options.most > mostPlaces)
        return session.fail(
            {argumentProblem(fmt::format("--most is {}", options.most), fmt::format("1 to {}", mostPlaces))});
    const auto places = placesOf(session);
    if (!places) return session.fail(places.problems());
    const auto found = places->find(queryOf(options.query), static_cast<std::size_t>(options.most));
    if (found.empty()) return session.fail(placeNamed(*places, queryOf(options.query)).problems());
    TextTable table({say::CommandLine::tr("Place"), say::CommandLine::tr(">Latitude"),
                     say::CommandLine::tr(">Longitude"), say::CommandLine::tr(">Height"),
                     say::CommandLine::tr("Climate")});
    Json list = Json::list();
    for (const auto& each : found) {
        const auto& place = *each.place;
        const auto site = climate::siteNear(session.reference, place.latitude, place.longitude, place.heightM);
        if (!site) return session.fail(site.problems());
        list.push(placeJson(each, *places, *site));
        table.add({text::foundName(each, *places), text::number(place.latitude, 2, session.style),
                   text::number(place.longitude, 2, session.style), text::height(place.heightM, session.style),
                   text::weatherOf(*site, session.reference, place.heightM, session.style)});
    }
    if (session.json) session.print(list);
    else session.print(table.text());
    return Status::Done;
}

} // namespace winterlarder::cli
