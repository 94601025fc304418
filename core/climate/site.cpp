// SPDX-License-Identifier: GPL-3.0-or-later
#include "climate/site.h"

#include "climate/angles.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace winterlarder::climate {

namespace {

constexpr double meanEarthRadiusKm = 6371.0088; // IUGG mean radius
constexpr double lapseRateKPerM = -0.0065;      // ISO 2533 standard atmosphere
constexpr double lowestPlaceM = -500;
constexpr double highestPlaceM = 9000;
constexpr Variability usualVariability{4.0, 3.0, 0.80, 0.5}; // judgement

void checkCoordinates(double latitude, std::optional<double> longitude, Problems& problems) {
    if (!(latitude >= -90 && latitude <= 90))
        problems.push_back(
            inputProblem(fmt::format("the latitude is {}", latitude), "it lies between -90 and 90 degrees"));
    if (longitude && !(*longitude >= -180 && *longitude <= 180))
        problems.push_back(
            inputProblem(fmt::format("the longitude is {}", *longitude), "it lies between -180 and 180 degrees"));
}

void checkElevation(std::optional<double> elevationM, Problems& problems) {
    if (elevationM && !(*elevationM >= lowestPlaceM && *elevationM <= highestPlaceM))
        problems.push_back(inputProblem(fmt::format("the elevation is {} m", *elevationM),
                                        fmt::format("it lies between {} and {} m", lowestPlaceM, highestPlaceM)));
}

Variability variabilityOf(const Station& station) {
    return {station.dailySdWinterK, station.dailySdSummerK, station.lag1,
            station.seasonOffsetSdK.value_or(usualSeasonOffsetSd(station.latitude, station.longitude))};
}

std::array<Temperature, 12> temperatures(const std::array<double, 12>& meanC, double shiftK) {
    std::array<Temperature, 12> result;
    std::transform(meanC.begin(), meanC.end(), result.begin(), [&](double mean) { return celsius(mean + shiftK); });
    return result;
}

double heightShift(const Station& station, std::optional<double> elevationM) {
    return elevationM ? lapseRateKPerM * (*elevationM - station.elevationM) : 0.0;
}

Outcome<Site> stationSite(const Station& station, double latitude, std::optional<double> elevationM) {
    const double shift = heightShift(station, elevationM);
    auto curve =
        ClimateCurve::fromMonthlyMeans(temperatures(station.monthlyMeanC, shift), latitude, variabilityOf(station));
    if (!curve) return curve.problems();
    return Site{std::move(curve).value(), station.place, station.country, false, station.id, std::nullopt, shift};
}

NearStation nearest(const ReferenceData& reference, double latitude, double longitude) {
    require(!reference.stations.empty(), "there are no climate stations");
    NearStation best{nullptr, INFINITY};
    for (const Station& station : reference.stations) {
        const double distance = distanceKm(latitude, longitude, station.latitude, station.longitude);
        if (distance < best.distanceKm) best = {&station, distance};
    }
    return best;
}

bool scatterComplete(const OwnClimate& own) {
    return own.dailySdWinterK && own.dailySdSummerK && own.lag1 && own.seasonOffsetSdK;
}

Variability overlaid(const OwnClimate& own, const Variability& fallback) {
    return {own.dailySdWinterK.value_or(fallback.dailySdWinter), own.dailySdSummerK.value_or(fallback.dailySdSummer),
            own.lag1.value_or(fallback.lag1), own.seasonOffsetSdK.value_or(fallback.seasonOffsetSd)};
}

} // namespace

double distanceKm(double latitude1, double longitude1, double latitude2, double longitude2) {
    const double acrossLatitude = std::sin(radians(latitude2 - latitude1) / 2);
    const double acrossLongitude = std::sin(radians(longitude2 - longitude1) / 2);
    const double haversine = acrossLatitude * acrossLatitude + std::cos(radians(latitude1)) *
                                                                   std::cos(radians(latitude2)) * acrossLongitude *
                                                                   acrossLongitude;
    return 2 * meanEarthRadiusKm * std::asin(std::sqrt(std::clamp(haversine, 0.0, 1.0)));
}

std::string countryCodeOf(std::string_view stationId) {
    std::string code(stationId.substr(0, stationId.find('-')));
    for (char& c : code)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return code;
}

std::vector<NearStation> stationsByDistance(const std::vector<Station>& stations, double latitude, double longitude) {
    std::vector<NearStation> result;
    result.reserve(stations.size());
    for (const Station& station : stations)
        result.push_back({&station, distanceKm(latitude, longitude, station.latitude, station.longitude)});
    std::stable_sort(result.begin(), result.end(),
                     [](const NearStation& a, const NearStation& b) { return a.distanceKm < b.distanceKm; });
    return result;
}

double usualSeasonOffsetSd(double latitude, double longitude) {
    if (hemisphereOf(latitude) == Hemisphere::South) return 0.26;
    if (longitude > 95) return 0.69;
    if (longitude > -30) return 0.51; // the mid-Atlantic parts Europe from America
    return longitude > -100 ? 0.75 : 0.30;
}

Outcome<Site> siteAtStation(const Station& station, std::optional<double> elevationM) {
    Problems problems;
    checkElevation(elevationM, problems);
    if (!problems.empty()) return problems;
    return stationSite(station, station.latitude, elevationM);
}

Outcome<Site> siteNear(const ReferenceData& reference, double latitude, double longitude,
                       std::optional<double> elevationM) {
    Problems problems;
    checkCoordinates(latitude, longitude, problems);
    checkElevation(elevationM, problems);
    if (!problems.empty()) return problems;
    const NearStation near = nearest(reference, latitude, longitude);
    Outcome<Site> site = stationSite(*near.station, latitude, elevationM);
    if (site) site->distanceKm = near.distanceKm;
    return site;
}

Outcome<Site> siteFromOwnClimate(const ReferenceData& reference, const OwnClimate& own) {
    Problems problems;
    checkCoordinates(own.latitude, own.longitude, problems);
    if (!problems.empty()) return problems;
    Site site;
    site.own = true;
    Variability fallback = usualVariability;
    if (own.longitude && !scatterComplete(own)) {
        const NearStation near = nearest(reference, own.latitude, *own.longitude);
        fallback = variabilityOf(*near.station);
        site.stationId = near.station->id;
        site.distanceKm = near.distanceKm;
    }
    auto curve =
        ClimateCurve::fromMonthlyMeans(temperatures(own.monthlyMeanC, 0), own.latitude, overlaid(own, fallback));
    if (!curve) return curve.problems();
    site.curve = std::move(curve).value();
    return site;
}

} // namespace winterlarder::climate
