// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/climate_curve.h"
#include "reference/csv_table.h"
#include "reference/reference.h"
#include "support/require.h"

#include <array>
#include <string>

namespace winterlarder::climate {

//! The shipped data, read once; a fault in them ends every test that asks.
inline const ReferenceData& shipped() {
    static const ReferenceData data = [] {
        auto loaded = loadReference(SHARED_FOLDER);
        require(loaded.ok(), "{}", loaded.ok() ? std::string() : describe(loaded.problems().front()));
        return std::move(loaded).value();
    }();
    return data;
}

inline const Station& shippedStation(std::string_view id) {
    const Station* station = shipped().station(id);
    require(station != nullptr, "there is no station {}", id);
    return *station;
}

//! A table of check values below shared/reference.
inline CsvTable checkValues(const std::string& name) {
    auto table = CsvTable::read(std::string(SHARED_FOLDER) + "/reference/" + name);
    require(table.ok(), "{}", table.ok() ? std::string() : describe(table.problems().front()));
    return std::move(table).value();
}

inline std::array<Temperature, 12> temperatures(const std::array<double, 12>& values) {
    std::array<Temperature, 12> result;
    for (std::size_t i = 0; i < 12; ++i) result[i] = celsius(values[i]);
    return result;
}

inline ClimateCurve curveOf(const std::array<double, 12>& meanC, double latitude, const Variability& variability = {}) {
    auto curve = ClimateCurve::fromMonthlyMeans(temperatures(meanC), latitude, variability);
    require(curve.ok(), "{}", curve.ok() ? std::string() : describe(curve.problems().front()));
    return std::move(curve).value();
}

inline ClimateCurve curveOf(const Station& station) { return curveOf(station.monthlyMeanC, station.latitude); }

//! Oxford, the worked example of the model's description in DEVELOPERS.md.
inline constexpr std::array<double, 12> oxfordMeanC{5.2, 5.5, 7.5, 9.8, 12.9, 15.9, 18.1, 17.8, 15.0, 11.5, 7.9, 5.4};
inline constexpr double oxfordLatitude = 51.76;

inline constexpr std::array<int, 13> monthStarts{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365};

//! Mean of the daily normals of a month (0 = January).
inline double monthMeanC(const ClimateCurve& curve, std::size_t month) {
    const int shift = curve.hemisphere() == Hemisphere::North ? 0 : 181;
    double sum = 0;
    for (int day = monthStarts[month]; day < monthStarts[month + 1]; ++day) sum += curve.normal({day - shift}).value();
    return sum / (monthStarts[month + 1] - monthStarts[month]);
}

} // namespace winterlarder::climate
