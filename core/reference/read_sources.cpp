// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/shipped_files.h"

#include <fmt/format.h>
#include <fstream>

namespace winterlarder {

namespace {

constexpr auto sourcesFile = "sources.csv";

Mark markOf(const std::string& kind, const std::string& howRead) {
    if (howRead.starts_with("memory")) return Mark::Memory;
    if (kind == "handbook") return Mark::Handbook;
    if (kind == "practice") return Mark::CommonPractice;
    if (kind == "judgement") return Mark::Judgement;
    return Mark::Published;
}

// The source a file names in its description, of which no more is read; the line it stands on.
std::pair<std::string, int> describedSource(std::istream& file) {
    const std::string key = "# source: ";
    int number = 1;
    for (std::string line; std::getline(file, line) && line.starts_with('#'); ++number)
        if (line.starts_with(key)) return {line.substr(key.size()), number};
    return {{}, 1};
}

} // namespace

void readSourcesOfPlaces(ShippedFolder& folder, SourceUses& uses) {
    for (const std::string shown : {placesFile, morePlacesFile, placeNamesFile, regionNamesFile}) {
        std::ifstream file(folder.path / shown, std::ios::binary);
        const Place place{(folder.path / shown).string(), 0, 0};
        if (!file) {
            folder.problems.push_back({ProblemKind::File, place, "cannot be opened", "a file that can be read"});
            continue;
        }
        const auto [id, line] = describedSource(file);
        if (!uses.use(id, shown))
            folder.problems.push_back({ProblemKind::Input,
                                       {place.file, line, 1},
                                       fmt::format("source {} is not a source", id),
                                       "an id of sources.csv"});
    }
}

std::vector<Source> readSources(ShippedFolder& folder) {
    const std::vector<std::string> kinds = {"paper",       "book",          "handbook",  "institute", "official",
                                            "association", "trade journal", "newspaper", "law",       "standard",
                                            "data",        "practice",      "judgement"};
    std::vector<Source> sources;
    auto table = folder.table(sourcesFile);
    if (!table) return sources;
    CheckedTable checked(std::move(*table), {"id", "citation", "year", "kind", "how_read"}, folder.problems);
    for (std::size_t row = 0; row < checked.rows(); ++row) {
        Source source;
        source.id = checked.uniqueId(row, "id");
        source.citation = checked.text(row, "citation");
        source.year = checked.optionalInteger(row, "year", {1500, 2100});
        const std::string kind = checked.oneOf(row, "kind", kinds);
        const bool somethingWasRead = kind != "practice" && kind != "judgement";
        source.mark = markOf(kind, somethingWasRead ? checked.text(row, "how_read") : std::string());
        sources.push_back(std::move(source));
    }
    return sources;
}

void readCheckValues(ShippedFolder& folder, SourceUses& uses) {
    for (const std::string shown : {"reference/winter_checks.csv", "reference/season_dates.csv",
                                    "reference/comb_checks.csv", "reference/syrup_checks.csv"}) {
        auto table = folder.table(shown);
        if (!table) continue;
        std::vector<std::string> columns;
        for (const CsvCell& named : table->header()) columns.push_back(named.text);
        const bool namesSources = table->column("source").has_value();
        CheckedTable checked(std::move(*table), columns, folder.problems);
        for (std::size_t row = 0; namesSources && row < checked.rows(); ++row)
            uses.refer(checked, row, "source", shown);
    }
}

} // namespace winterlarder
