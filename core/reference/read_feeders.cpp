// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/shipped_files.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder {

namespace {

constexpr auto feedersFile = "hives/feeders.csv";

bool yes(CheckedTable& checked, std::size_t row, const char* column) {
    return checked.oneOf(row, column, {"no", "yes"}) == "yes";
}

FeederType readFeeder(CheckedTable& checked, std::size_t row, NumberRange capacity) {
    FeederType feeder;
    feeder.id = checked.uniqueId(row, "id");
    feeder.capacity = litres(checked.number(row, "capacity_l", capacity));
    feeder.overAll = yes(checked, row, "over_all");
    feeder.atCluster = yes(checked, row, "at_cluster");
    feeder.slow = yes(checked, row, "slow");
    return feeder;
}

std::vector<std::string> kindsOf(const std::vector<FieldLimits>& fields) {
    for (const auto& field : fields)
        if (field.name == "feeder.kind") return field.choices;
    return {};
}

// One row for every word a keeper may choose, and no other.
void checkKinds(CheckedTable& checked, const std::vector<FeederType>& feeders, const std::vector<std::string>& kinds,
                ShippedFolder& folder) {
    for (std::size_t row = 0; row < feeders.size(); ++row)
        if (std::find(kinds.begin(), kinds.end(), feeders[row].id) == kinds.end())
            checked.fault(checked.cell(row, "id"), fmt::format("feeder {} is not known", feeders[row].id),
                          fmt::format("one of {}", fmt::join(kinds, ", ")));
    for (const auto& kind : kinds)
        if (std::none_of(feeders.begin(), feeders.end(), [&](const FeederType& each) { return each.id == kind; }))
            folder.problems.push_back({ProblemKind::Input,
                                       {(folder.path / feedersFile).string(), 0, 0},
                                       fmt::format("no row for feeder {}", kind),
                                       "one row for every choice of feeder.kind in fields.csv"});
}

} // namespace

std::vector<FeederType> readFeeders(ShippedFolder& folder, SourceUses& uses, const std::vector<FieldLimits>& fields) {
    std::vector<FeederType> feeders;
    auto table = folder.table(feedersFile);
    if (!table) return feeders;
    CheckedTable checked(std::move(*table),
                         {"id", "capacity_l", "over_all", "at_cluster", "slow", "source", "mark", "note"},
                         folder.problems);
    const NumberRange capacity = limitsOf(fields, "feeder.capacity_l");
    for (std::size_t row = 0; row < checked.rows(); ++row) {
        feeders.push_back(readFeeder(checked, row, capacity));
        checked.text(row, "source");
        uses.refer(checked, row, "source", feedersFile);
        checked.mark(row, "mark");
    }
    if (checked.rows() > 0) checkKinds(checked, feeders, kindsOf(fields), folder);
    return feeders;
}

} // namespace winterlarder
