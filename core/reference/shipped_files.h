// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/checked_table.h"
#include "reference/reference.h"

namespace winterlarder {

//! The data folder while it is read: every file's faults end up in one list. Internal to loadReference.
struct ShippedFolder {
    std::filesystem::path path;
    Problems problems;
    //! The table of a file below the folder, or nothing (its faults are then listed).
    std::optional<CsvTable> table(const std::string& shown);
};

//! The tables of places: read by climate::Gazetteer where one is asked for.
inline constexpr auto placesFile = "climate/places.csv";
inline constexpr auto morePlacesFile = "climate/more_places.csv"; // of the same columns
inline constexpr auto placeNamesFile = "climate/place_names.csv";
inline constexpr auto regionNamesFile = "climate/region_names.csv";

// One function a shipped file; each takes what was read before it. Tested: tests/reference.
std::vector<Source> readSources(ShippedFolder& folder);
std::vector<FieldLimits> readFields(ShippedFolder& folder, SourceUses& uses);
ModelConstants readConstants(ShippedFolder& folder, SourceUses& uses);
DecisionConstants readDecisions(ShippedFolder& folder, SourceUses& uses);
std::vector<Station> readStations(ShippedFolder& folder, SourceUses& uses, const std::vector<FieldLimits>& fields);
std::vector<HiveFormat> readFormats(ShippedFolder& folder, SourceUses& uses, const std::vector<FieldLimits>& fields);
std::vector<FeederType> readFeeders(ShippedFolder& folder, SourceUses& uses, const std::vector<FieldLimits>& fields);
std::vector<CautionRule> readCautions(ShippedFolder& folder, SourceUses& uses);
std::vector<PublishedRule> readRules(ShippedFolder& folder, SourceUses& uses);
std::vector<UsualStores> readUsualStores(ShippedFolder& folder, SourceUses& uses);
std::vector<LateFlow> readLateFlows(ShippedFolder& folder, SourceUses& uses);
//! Checks the sources that the tables of places name in their description; their rows are not read here.
void readSourcesOfPlaces(ShippedFolder& folder, SourceUses& uses);
//! Checks the sources named by the files of check values.
void readCheckValues(ShippedFolder& folder, SourceUses& uses);

//! Limits the data dictionary sets for a field; none where it does not know the field (that is a fault of its own).
NumberRange limitsOf(const std::vector<FieldLimits>& fields, std::string_view name);

} // namespace winterlarder
