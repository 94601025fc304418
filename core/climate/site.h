// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/climate_curve.h"
#include "reference/reference.h"

#include <optional>
#include <string>
#include <string_view>

namespace winterlarder::climate {

//! Great-circle distance [km], mean earth radius 6371.0088 km (haversine).
double distanceKm(double latitude1, double longitude1, double latitude2, double longitude2);

struct NearStation {
    const Station* station = nullptr;
    double distanceKm = 0;
};
//! Stations by distance, nearest first.
std::vector<NearStation> stationsByDistance(const std::vector<Station>& stations, double latitude, double longitude);

//! ISO 3166 code of the country a shipped station lies in, which its id begins with: "CA" of "ca-halifax".
std::string countryCodeOf(std::string_view stationId);

//! Beyond this no station speaks for a place, and no answer is given.
inline constexpr double farthestStationKm = 600;

//! Spread of a season's mean where a station gives none: 0.51 Europe, Turkey and elsewhere; America east of 100 W 0.75, west
//! of it 0.30; East Asia (longitude > 95 E) 0.69; south 0.26 (medians of daily records).
double usualSeasonOffsetSd(double latitude, double longitude);

//! Somebody's own climate: monthly means, with whatever is known of the scatter.
struct OwnClimate {
    double latitude = 0;
    std::optional<double> longitude;
    std::array<double, 12> monthlyMeanC{};
    std::optional<double> dailySdWinterK, dailySdSummerK, lag1, seasonOffsetSdK;
};

//! A place made ready for the model.
struct Site {
    ClimateCurve curve;
    std::string place, country;       //!< of that station, as its table names them (country: two letters)
    bool own = false;                 //!< somebody's own climate; the station gives its scatter at most
    std::string stationId;            //!< the station whose curve (or scatter) is used; empty: none
    std::optional<double> distanceKm; //!< from the place to that station, where the place was given by coordinates
    double heightShiftK = 0;          //!< -6.5 K/km x (place - station), ISO 2533
};

//! The station's own curve, shifted by -6.5 degC per km of height difference where elevationM is given.
Outcome<Site> siteAtStation(const Station& station, std::optional<double> elevationM);
//! The nearest station's curve with the place's own latitude for day length; distanceKm tells how far it is (a caller
//! refuses beyond farthestStationKm).
Outcome<Site> siteNear(const ReferenceData& reference, double latitude, double longitude,
                       std::optional<double> elevationM);
//! Own monthly means; scatter not given comes from the nearest station where longitude is known, else 4.0, 3.0, 0.80, 0.5
//! (judgement).
Outcome<Site> siteFromOwnClimate(const ReferenceData& reference, const OwnClimate& own);

} // namespace winterlarder::climate
