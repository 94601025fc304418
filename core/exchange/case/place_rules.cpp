// SPDX-License-Identifier: GPL-3.0-or-later
// The rules of case_rules.h for where the bees stand and for the days of its season.
#include "exchange/case/case_rules.h"
#include "exchange/json/suggestion.h"

#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

constexpr std::string_view siteRemedy =
    "a station id, or latitude and longitude, or latitude and monthly_mean_c: exactly one of the three";
constexpr std::array<std::string_view, 4> scatterKeys{"daily_sd_winter_c", "daily_sd_summer_c", "lag1",
                                                      "season_offset_sd_c"};

void checkStationAlone(ObjectReader& site) {
    const auto alone = [&](std::string_view key) {
        site.oneOf({"station", key}, ObjectReader::Need::One, siteRemedy);
        site.passOver(key);
    };
    for (std::string_view key : {"latitude", "longitude", "monthly_mean_c"}) alone(key);
    for (std::string_view key : scatterKeys) alone(key);
}

// Scatter that is null is not known, as the command `climate` writes it.
void checkOwnClimate(ObjectReader& site) {
    site.demand("latitude", "the latitude of the place, degrees north");
    site.forbid("elevation_m", "is given beside monthly_mean_c",
                "leave elevation_m out: an own climate is already that of the place");
    for (std::string_view key : scatterKeys)
        if (const JsonValue* value = site.find(key); value && value->kind == JsonValue::Kind::Null) site.passOver(key);
}

void checkCoordinates(ObjectReader& site) {
    for (std::string_view key : scatterKeys) {
        site.forbid(key, "is given without \"monthly_mean_c\"", "the scatter belongs to an own climate");
        site.passOver(key);
    }
    const bool latitude = site.has("latitude"), longitude = site.has("longitude");
    const std::string_view given = latitude ? "latitude" : "longitude", missing = latitude ? "longitude" : "latitude";
    if (!latitude && !longitude)
        site.context().fault(site.position(), "the site says nothing of where it is", std::string(siteRemedy));
    else if (latitude != longitude)
        site.context().fault(site.keyPosition(given),
                             fmt::format("{} is given without {}", inQuotes(given), inQuotes(missing)),
                             std::string(siteRemedy));
}

// A given date must be a day the model of the winter asked about can reach.
struct DaysOfTheWinter {
    static constexpr bool reads = false, nested = true;
    ObjectReader& season;
    const Winter& winter;
    void field(std::string_view key, const std::optional<Date>& date) {
        if (!date || (winter.contains(*date) && winter.seasonDay(*date) <= lastSimulatedDay)) return;
        season.context().fault(
            season.find(key)->position,
            fmt::format("{} {} is not a day of the winter asked about", inQuotes(key), date->iso()),
            fmt::format("a day from {} to {}", winter.date(firstSeasonDay).iso(), winter.date(lastSimulatedDay).iso()));
    }
};

} // namespace

void checkKeys(ObjectReader& object, const book::SiteRecord&) {
    if (object.has("station")) return checkStationAlone(object);
    if (object.has("monthly_mean_c")) return checkOwnClimate(object);
    checkCoordinates(object);
}

void checkValues(ObjectReader& object, book::SiteRecord& site) {
    const auto* id = std::get_if<std::string>(&site.where);
    if (!id || object.context().reference().station(*id)) return;
    std::vector<std::string> known;
    for (const Station& station : object.context().reference().stations) known.push_back(station.id);
    object.context().fault(object.find("station")->position, fmt::format("no station {}", inQuotes(*id)),
                           nearWords(*id, known).empty() ? "an id that the command \"stations\" lists"
                                                         : suggestion(*id, known));
}

void checkValues(ObjectReader& object, book::SeasonRecord& season) {
    const auto winter = object.context().winter();
    if (!winter) return;
    DaysOfTheWinter days{object, *winter};
    book::describeSeason(days, "", season);
}

std::optional<double> latitudeOf(const book::SiteRecord& site, const ReferenceData& reference) {
    if (const auto* id = std::get_if<std::string>(&site.where)) {
        const auto* station = reference.station(*id);
        return station ? std::optional(station->latitude) : std::nullopt;
    }
    if (const auto* place = std::get_if<book::Coordinates>(&site.where)) return place->latitude;
    return std::get<book::OwnClimateRecord>(site.where).latitude;
}

} // namespace winterlarder::exchange
