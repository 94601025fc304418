// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/reference.h"

#include "reference/shipped_files.h"
#include "support/require.h"

#include <algorithm>

namespace winterlarder {

namespace {

template <class Entry>
const Entry* find(const std::vector<Entry>& entries, std::string Entry::*key, std::string_view wanted) {
    const auto found = std::find_if(entries.begin(), entries.end(), [&](const Entry& e) { return e.*key == wanted; });
    return found == entries.end() ? nullptr : &*found;
}

} // namespace

const Station* ReferenceData::station(std::string_view id) const { return find(stations, &Station::id, id); }
const HiveFormat* ReferenceData::format(std::string_view id) const { return find(formats, &HiveFormat::id, id); }
const FeederType* ReferenceData::feeder(std::string_view id) const { return find(feeders, &FeederType::id, id); }
const Source* ReferenceData::source(std::string_view id) const { return find(sources, &Source::id, id); }
const CautionRule* ReferenceData::caution(std::string_view id) const { return find(cautions, &CautionRule::id, id); }
std::vector<std::string> ReferenceData::sourcesOf(const Remark& remark) const {
    if (const auto own = remark.details.find("source"); own != remark.details.end())
        if (const auto* id = std::get_if<std::string>(&own->second)) return {*id};
    const CautionRule* rule = caution(remark.id);
    return rule ? rule->sources : std::vector<std::string>{};
}
const FieldLimits* ReferenceData::field(std::string_view name) const { return find(fields, &FieldLimits::name, name); }

NumberRange ReferenceData::range(std::string_view name) const {
    const FieldLimits* known = field(name);
    require(known != nullptr, "no field {}", name);
    const NumberRange open;
    return {known->minimum.value_or(open.least), known->maximum.value_or(open.most)};
}

std::optional<CsvTable> ShippedFolder::table(const std::string& shown) {
    auto table = CsvTable::read(path / shown);
    if (table) return std::move(table).value();
    problems.insert(problems.end(), table.problems().begin(), table.problems().end());
    return std::nullopt;
}

Outcome<ReferenceData> loadReference(const std::filesystem::path& path) {
    ShippedFolder folder{path, {}};
    ReferenceData data;
    data.sources = readSources(folder);
    SourceUses uses(data.sources);
    data.fields = readFields(folder, uses);
    data.constants = readConstants(folder, uses);
    data.decisions = readDecisions(folder, uses);
    data.stations = readStations(folder, uses, data.fields);
    data.formats = readFormats(folder, uses, data.fields);
    data.feeders = readFeeders(folder, uses, data.fields);
    data.cautions = readCautions(folder, uses);
    data.rules = readRules(folder, uses);
    data.usualStores = readUsualStores(folder, uses);
    data.lateFlows = readLateFlows(folder, uses);
    readSourcesOfPlaces(folder, uses);
    readCheckValues(folder, uses);
    if (!folder.problems.empty()) return std::move(folder.problems);
    return data;
}

} // namespace winterlarder
