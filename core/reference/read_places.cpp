// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/shipped_files.h"

#include <array>

namespace winterlarder {

namespace {

constexpr auto stationsFile = "climate/stations.csv";
constexpr auto formatsFile = "hives/formats.csv";

constexpr std::array<const char*, 12> months = {"jan", "feb", "mar", "apr", "may", "jun",
                                                "jul", "aug", "sep", "oct", "nov", "dec"};

std::string oneSource(SourceUses& uses, CheckedTable& checked, std::size_t row, const std::string& shown) {
    checked.text(row, "source");
    const auto ids = uses.refer(checked, row, "source", shown);
    return ids.empty() ? std::string() : ids.front();
}

struct StationLimits {
    NumberRange latitude, longitude, elevation, monthly, winter, summer, lag1, offset;
    explicit StationLimits(const std::vector<FieldLimits>& fields)
        : latitude(limitsOf(fields, "site.latitude")), longitude(limitsOf(fields, "site.longitude")),
          elevation(limitsOf(fields, "site.elevation_m")), monthly(limitsOf(fields, "site.monthly_mean_c")),
          winter(limitsOf(fields, "site.daily_sd_winter_c")), summer(limitsOf(fields, "site.daily_sd_summer_c")),
          lag1(limitsOf(fields, "site.lag1")), offset(limitsOf(fields, "site.season_offset_sd_c")) {}
};

Station readStation(CheckedTable& checked, std::size_t row, const StationLimits& limits) {
    Station station;
    station.id = checked.uniqueId(row, "id");
    station.place = checked.text(row, "place");
    station.country = checked.text(row, "country");
    station.latitude = checked.number(row, "latitude", limits.latitude);
    station.longitude = checked.number(row, "longitude", limits.longitude);
    station.elevationM = checked.number(row, "elevation_m", limits.elevation);
    for (std::size_t month = 0; month < months.size(); ++month)
        station.monthlyMeanC[month] = checked.number(row, months[month], limits.monthly);
    station.dailySdWinterK = checked.number(row, "daily_sd_winter", limits.winter);
    station.dailySdSummerK = checked.number(row, "daily_sd_summer", limits.summer);
    station.lag1 = checked.number(row, "lag1", limits.lag1);
    station.seasonOffsetSdK = checked.optionalNumber(row, "season_offset_sd", limits.offset);
    station.mark = checked.mark(row, "mark");
    return station;
}

void checkWidths(CheckedTable& checked, std::size_t row, const HiveFormat& format) {
    if (format.pitchMax && *format.pitchMax < format.pitch)
        checked.fault(checked.cell(row, "pitch_max_mm"), "pitch_max_mm is below pitch_mm",
                      "the widest spacing, or nothing");
}

} // namespace

std::vector<Station> readStations(ShippedFolder& folder, SourceUses& uses, const std::vector<FieldLimits>& fields) {
    std::vector<Station> stations;
    auto table = folder.table(stationsFile);
    if (!table) return stations;
    std::vector<std::string> columns = {"id", "place", "country", "latitude", "longitude", "elevation_m"};
    columns.insert(columns.end(), months.begin(), months.end());
    for (const char* more : {"daily_sd_winter", "daily_sd_summer", "lag1", "season_offset_sd", "variability_basis",
                             "period", "mean_of", "source", "station_code", "mark"})
        columns.emplace_back(more);
    CheckedTable checked(std::move(*table), columns, folder.problems);
    const StationLimits limits(fields);
    for (std::size_t row = 0; row < checked.rows(); ++row) {
        Station station = readStation(checked, row, limits);
        station.source = oneSource(uses, checked, row, stationsFile);
        stations.push_back(std::move(station));
    }
    return stations;
}

std::vector<HiveFormat> readFormats(ShippedFolder& folder, SourceUses& uses, const std::vector<FieldLimits>& fields) {
    std::vector<HiveFormat> formats;
    auto table = folder.table(formatsFile);
    if (!table) return formats;
    CheckedTable checked(std::move(*table),
                         {"id",
                          "name",
                          "region",
                          "comb_width_mm",
                          "comb_height_mm",
                          "bottom_width_mm",
                          "combs_per_box",
                          "pitch_mm",
                          "pitch_max_mm",
                          "bees_per_side",
                          "published_full_comb_kg",
                          "size_mark",
                          "combs_mark",
                          "pitch_mark",
                          "full_comb_mark",
                          "bees_mark",
                          "source",
                          "note",
                          "family",
                          "countries"},
                         folder.problems);
    const NumberRange width = limitsOf(fields, "hive.format.comb_width_mm");
    const NumberRange height = limitsOf(fields, "hive.format.comb_height_mm");
    const NumberRange bottom = limitsOf(fields, "hive.format.bottom_width_mm");
    const NumberRange combs = limitsOf(fields, "hive.format.combs_per_box");
    const NumberRange pitch = limitsOf(fields, "hive.format.pitch_mm");
    for (std::size_t row = 0; row < checked.rows(); ++row) {
        HiveFormat format;
        format.id = checked.uniqueId(row, "id");
        format.name = checked.text(row, "name");
        format.region = checked.text(row, "region");
        format.combWidth = millimetres(checked.number(row, "comb_width_mm", width));
        format.combHeight = millimetres(checked.number(row, "comb_height_mm", height));
        format.bottomWidth = millimetres(checked.number(row, "bottom_width_mm", bottom));
        format.combsPerBox = checked.integer(row, "combs_per_box", combs);
        format.pitch = millimetres(checked.number(row, "pitch_mm", pitch));
        if (const auto widest = checked.optionalNumber(row, "pitch_max_mm", pitch))
            format.pitchMax = millimetres(*widest);
        format.beesPerSide = {checked.number(row, "bees_per_side", {50, 10000})};
        format.note = checked.optionalText(row, "note");
        format.family = checked.text(row, "family");
        format.countries = listedIn(checked.cell(row, "countries").text);
        for (const char* column : {"size_mark", "combs_mark", "pitch_mark", "bees_mark"}) checked.mark(row, column);
        checkWidths(checked, row, format);
        oneSource(uses, checked, row, formatsFile);
        formats.push_back(std::move(format));
    }
    return formats;
}

} // namespace winterlarder
