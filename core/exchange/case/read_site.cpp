// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_sections.h"
#include "exchange/json/suggestion.h"

#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

constexpr std::string_view siteRemedy =
    "a station id, or latitude and longitude, or latitude and monthly_mean_c: exactly one of the three";

std::optional<std::string> stationId(ObjectReader& site) {
    const auto id = site.text("station");
    if (!id || site.context().reference().station(*id)) return id;
    std::vector<std::string> known;
    for (const Station& station : site.context().reference().stations)
        known.push_back(station.id);
    auto near = nearWords(*id, known);
    site.context().fault(site.find("station")->position, fmt::format("no station {}", inQuotes(*id)),
                         near.empty() ? "an id that the command \"stations\" lists" : suggestion(*id, known));
    return std::nullopt;
}

std::optional<std::array<double, 12>> monthlyMeans(ObjectReader& site) {
    const JsonValue* list = site.list("monthly_mean_c");
    if (!list) return std::nullopt;
    std::array<double, 12> means{};
    if (list->items.size() != means.size()) {
        site.context().fault(list->position, fmt::format("\"monthly_mean_c\" has {} values", list->items.size()),
                             "12 values, January first");
        return std::nullopt;
    }
    bool sound = true;
    for (std::size_t month = 0; month < means.size(); ++month) {
        const auto mean = site.context().checkedNumber(list->items[month], "monthly_mean_c", "site.monthly_mean_c");
        sound = sound && mean;
        means[month] = mean.value_or(0);
    }
    return sound ? std::optional(means) : std::nullopt;
}

constexpr std::array<std::string_view, 4> scatterKeys{"daily_sd_winter_c", "daily_sd_summer_c", "lag1",
                                                      "season_offset_sd_c"};

std::optional<book::OwnClimateRecord> ownClimate(ObjectReader& site) {
    const auto latitude = site.number("latitude");
    const auto means = monthlyMeans(site);
    book::OwnClimateRecord own;
    own.longitude = site.number("longitude");
    own.dailySdWinter = site.numberOrNull("daily_sd_winter_c");
    own.dailySdSummer = site.numberOrNull("daily_sd_summer_c");
    own.lag1 = site.numberOrNull("lag1");
    own.seasonOffsetSd = site.numberOrNull("season_offset_sd_c");
    site.demand("latitude", "the latitude of the place, degrees north");
    site.forbid("elevation_m", "is given beside monthly_mean_c",
                "leave elevation_m out: an own climate is already that of the place");
    if (!latitude || !means) return std::nullopt;
    own.latitude = *latitude;
    own.monthlyMeanC = *means;
    return own;
}

std::optional<book::Coordinates> coordinates(ObjectReader& site) {
    const auto latitude = site.number("latitude"), longitude = site.number("longitude");
    if (site.has("latitude") != site.has("longitude")) {
        const std::string_view given = site.has("latitude") ? "latitude" : "longitude";
        site.context().fault(site.keyPosition(given),
                             fmt::format("{} is given without {}", inQuotes(given),
                                         given == "latitude" ? "\"longitude\"" : "\"latitude\""),
                             std::string(siteRemedy));
    }
    if (!latitude || !longitude) return std::nullopt;
    return book::Coordinates{*latitude, *longitude};
}

std::optional<decltype(book::SiteRecord::where)> whereabouts(ObjectReader& site) {
    if (site.has("station")) {
        for (std::string_view key : {"latitude", "longitude", "monthly_mean_c"})
            site.oneOf({"station", key}, true, siteRemedy);
        for (std::string_view key : scatterKeys)
            site.oneOf({"station", key}, true, siteRemedy);
        return stationId(site);
    }
    if (site.has("monthly_mean_c")) return ownClimate(site);
    for (std::string_view key : scatterKeys)
        site.forbid(key, "is given without \"monthly_mean_c\"", "the scatter belongs to an own climate");
    if (site.has("latitude") || site.has("longitude")) return coordinates(site);
    site.context().fault(site.position(), "the site says nothing of where it is", std::string(siteRemedy));
    return std::nullopt;
}

} // namespace

std::optional<book::SiteRecord> readSite(const JsonValue& value, CaseContext& context) {
    ObjectReader site(value, "site", "site", context);
    const auto where = whereabouts(site);
    book::SiteRecord record;
    record.elevationM = site.number("elevation_m");
    record.autumnFlow = site.choice("autumn_flow", flowWords);
    site.find("station");
    site.finish();
    if (!where) return std::nullopt;
    record.where = *where;
    return record;
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
