// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/shipped_files.h"

#include "calendar/date.h"

#include <fmt/format.h>

namespace winterlarder {

namespace {

constexpr auto usualFile = "rules/usual_stores.csv";
constexpr auto flowsFile = "rules/late_flows.csv";

// Long hives and top-bar hives are one room, a box and a half is more than one, all that is larger counts as two.
HiveSize sizeOf(const std::string& hive) {
    if (hive == "any") return HiveSize::Any;
    if (hive.ends_with("nucleus")) return HiveSize::Nucleus;
    const bool more = hive.find("two") != std::string::npos || hive == "brood and a half";
    return more ? HiveSize::TwoBoxes : HiveSize::OneBox;
}

const std::vector<std::string>& knownHives() {
    static const std::vector<std::string> hives{"any",
                                                "nucleus",
                                                "mini-plus nucleus",
                                                "one box",
                                                "Dadant one box",
                                                "Dadant 10",
                                                "Dadant 12",
                                                "AZ hive 10 combs",
                                                "long hive, one room",
                                                "top bar",
                                                "brood and a half",
                                                "two boxes",
                                                "Langstroth two boxes",
                                                "two to three boxes",
                                                "two deeps and a medium",
                                                "two deeps and a super"};
    return hives;
}

std::optional<Mass> massIn(CheckedTable& table, std::size_t row, std::string_view column) {
    const auto kg = table.optionalNumber(row, column, {0, 200});
    return kg ? std::optional(kilograms(*kg)) : std::nullopt;
}

// Two ends of one figure: none, the lower alone, or both in order.
void checkEnds(CheckedTable& table, std::size_t row, std::string_view high, const std::optional<Mass>& low,
               const std::optional<Mass>& top) {
    if (top && (!low || *top < *low))
        table.fault(table.cell(row, high),
                    fmt::format("{} is {} without a low figure that is not above it", high, top->value()),
                    "the higher end of a range");
}

UsualStores::Use useIn(CheckedTable& table, std::size_t row) {
    const std::string word = table.oneOf(row, "use", {"no", "shown", "target"});
    return word == "target"  ? UsualStores::Use::Target
           : word == "shown" ? UsualStores::Use::Shown
                             : UsualStores::Use::No;
}

// A figure that can be compared with a target is a mass.
void checkTarget(CheckedTable& table, std::size_t row, const UsualStores& usual) {
    if (usual.use == UsualStores::Use::Target && !usual.low && !usual.grossLow)
        table.fault(table.cell(row, "use"), "use is target, but neither low_kg nor gross_low_kg is given",
                    "a mass, or another use");
}

MonthDay dayIn(CheckedTable& table, std::size_t row, std::string_view column) {
    const std::string text = table.text(row, column);
    if (const auto date = text.size() == 5 ? Date::parse("2001-" + text) : std::nullopt)
        return {date->month(), date->day()};
    if (!text.empty())
        table.fault(table.cell(row, column), fmt::format("{} {} is no day", column, text), "month and day as MM-DD");
    return {};
}

LateFlow::Typical typicalIn(CheckedTable& table, std::size_t row) {
    const std::string word = table.oneOf(row, "typical", {"none", "little", "fair", "strong"});
    return word == "strong"   ? LateFlow::Typical::Strong
           : word == "fair"   ? LateFlow::Typical::Fair
           : word == "little" ? LateFlow::Typical::Little
                              : LateFlow::Typical::None;
}

LateFlow::Stores storesIn(CheckedTable& table, std::size_t row) {
    const std::string word = table.oneOf(row, "stores_quality", {"fine", "sets hard", "dysentery risk"});
    return word == "sets hard" ? LateFlow::Stores::SetsHard
           : word == "fine"    ? LateFlow::Stores::Fine
                               : LateFlow::Stores::DysenteryRisk;
}

UsualStores usualRow(CheckedTable& table, std::size_t row, SourceUses& uses) {
    UsualStores usual;
    usual.id = table.uniqueId(row, "id");
    usual.country = table.countryCode(row, "country");
    usual.region = table.optionalText(row, "region");
    usual.latitude = table.number(row, "latitude", {-90, 90});
    usual.longitude = table.number(row, "longitude", {-180, 180});
    usual.winterClass = table.oneOf(row, "winter_class", {"", "confined", "flying", "dearth"});
    usual.hive = table.oneOf(row, "hive", knownHives());
    usual.size = sizeOf(usual.hive);
    table.number(row, "low", {0, 200});
    table.optionalNumber(row, "high", {0, 200});
    table.oneOf(row, "unit_printed", {"kg", "lb", "frames"});
    usual.low = massIn(table, row, "low_kg");
    usual.high = massIn(table, row, "high_kg");
    usual.grossLow = massIn(table, row, "gross_low_kg");
    usual.grossHigh = massIn(table, row, "gross_high_kg");
    checkEnds(table, row, "high_kg", usual.low, usual.high);
    checkEnds(table, row, "gross_high_kg", usual.grossLow, usual.grossHigh);
    usual.means = table.text(row, "means");
    usual.atDate = table.optionalText(row, "at_date");
    usual.use = useIn(table, row);
    checkTarget(table, row, usual);
    usual.quality = table.oneOf(row, "quality", {"A", "B", "C"}).front();
    usual.mark = table.mark(row, "mark");
    usual.source = table.text(row, "source_id");
    uses.refer(table, row, "source_id", usualFile);
    return usual;
}

LateFlow flowRow(CheckedTable& table, std::size_t row, SourceUses& uses) {
    LateFlow flow;
    flow.id = table.uniqueId(row, "id");
    flow.country = table.countryCode(row, "country");
    flow.region = table.optionalText(row, "region");
    flow.latitude = table.number(row, "latitude", {-90, 90});
    flow.longitude = table.number(row, "longitude", {-180, 180});
    flow.plant = table.text(row, "plant");
    flow.from = dayIn(table, row, "from");
    flow.to = dayIn(table, row, "to");
    flow.typical = typicalIn(table, row);
    flow.stores = storesIn(table, row);
    flow.note = table.optionalText(row, "note");
    flow.quality = table.oneOf(row, "quality", {"A", "B", "C"}).front();
    flow.mark = table.mark(row, "mark");
    flow.source = table.text(row, "source_id");
    uses.refer(table, row, "source_id", flowsFile);
    return flow;
}

template <class Row, class Read>
std::vector<Row> rowsOf(ShippedFolder& folder, const char* file, const std::vector<std::string>& columns, Read read) {
    std::vector<Row> rows;
    auto table = folder.table(file);
    if (!table) return rows;
    CheckedTable checked(std::move(*table), columns, folder.problems);
    for (std::size_t row = 0; row < checked.rows(); ++row) rows.push_back(read(checked, row));
    return rows;
}

} // namespace

std::vector<UsualStores> readUsualStores(ShippedFolder& folder, SourceUses& uses) {
    return rowsOf<UsualStores>(folder, usualFile,
                               {"id",           "country", "region",       "latitude",      "longitude",
                                "winter_class", "hive",    "low",          "high",          "unit_printed",
                                "low_kg",       "high_kg", "gross_low_kg", "gross_high_kg", "means",
                                "at_date",      "use",     "quality",      "mark",          "source_id"},
                               [&](CheckedTable& table, std::size_t row) { return usualRow(table, row, uses); });
}

std::vector<LateFlow> readLateFlows(ShippedFolder& folder, SourceUses& uses) {
    return rowsOf<LateFlow>(folder, flowsFile,
                            {"id", "country", "region", "latitude", "longitude", "plant", "from", "to", "typical",
                             "stores_quality", "note", "quality", "mark", "source_id"},
                            [&](CheckedTable& table, std::size_t row) { return flowRow(table, row, uses); });
}

} // namespace winterlarder
