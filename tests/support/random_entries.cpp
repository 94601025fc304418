// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_entries.h"

#include "book/form/codec.h"

#include <algorithm>

namespace winterlarder::book::support {
namespace {

Date someDay(Dice& dice) { return Date::of(1900, 1, 1)->plusDays(static_cast<int>(dice.below(109000))); }

//! A value within the limits of its column.
Value someValue(Dice& dice, const Column& column, const Limits& limits, const Known& known) {
    const auto& field = limits.of(column);
    switch (column.type) {
    case ColumnType::Text: return column.name == "name" ? "n" + visible(someText(dice)) : someText(dice);
    case ColumnType::Number:
        return Codec<double>::encode(*field.minimum + dice.share() * (*field.maximum - *field.minimum));
    case ColumnType::Integer:
        return static_cast<std::int64_t>(*field.minimum) +
               static_cast<std::int64_t>(dice.below(static_cast<std::uint64_t>(*field.maximum - *field.minimum) + 1));
    case ColumnType::Flag: return static_cast<std::int64_t>(dice.below(2));
    case ColumnType::Choice: return dice.of(column.choices);
    case ColumnType::Date: return someDay(dice).iso();
    case ColumnType::DayOfYear:
        return DayOfYear{static_cast<int>(dice.below(12)) + 1, static_cast<int>(dice.below(28)) + 1}.text();
    case ColumnType::Digits: return std::to_string(dice.below(3) == 0 ? ~std::uint64_t{0} : dice.below(1000));
    case ColumnType::Weekdays: return std::string(dice.once(2) ? "" : "1,4,6");
    case ColumnType::Reference: return dice.of(known.of(*column.refersTo));
    }
    throw std::runtime_error("a column of no type");
}

Values someValues(Dice& dice, const std::vector<Column>& columns, const Limits& limits, const Known& known) {
    Values values;
    for (const auto& column : columns) {
        const bool nothingToPointTo = column.refersTo && known.of(*column.refersTo).empty();
        const bool leftOut = !column.required && (nothingToPointTo || dice.once(2));
        values.push_back(leftOut ? Value{} : someValue(dice, column, limits, known));
    }
    return values;
}

//! Makes what columns say together agree (combinationRules).
void reconcile(Dice& dice, const std::vector<Column>& columns, Values& values) {
    const auto at = [&](const std::string& name) -> Value* {
        for (std::size_t place = 0; place < columns.size(); ++place)
            if (columns[place].name == name) return &values[place];
        return nullptr;
    };
    const auto clear = [&](std::initializer_list<const char*> names) {
        for (const auto* name : names)
            if (auto* value = at(name)) *value = {};
    };
    const auto isNothing = [](const Value& value) { return std::holds_alternative<std::monostate>(value); };
    if (auto* station = at("site_station")) {
        const auto form = dice.below(3);
        if (form != 0) *station = {};
        else *station = std::string("ca-halifax");
        for (int month = 1; month <= 12; ++month)
            *at("site_monthly_mean_c_" + std::to_string(month)) = form == 2 ? Value{month - 6.5} : Value{};
        if (form == 0) clear({"site_latitude", "site_longitude"});
        else *at("site_latitude") = 44.9;
        if (form == 1) *at("site_longitude") = -64.5;
        if (form != 2)
            clear({"site_daily_sd_winter_c", "site_daily_sd_summer_c", "site_lag1", "site_season_offset_sd_c"});
    }
    if (auto* format = at("format"); format && at("format_pitch_mm")) {
        clear({"format_comb_width_mm", "format_comb_height_mm", "format_bottom_width_mm", "format_combs_per_box",
               "format_pitch_mm"});
        if (dice.once(2)) *format = std::string("langstroth-deep");
        else {
            *format = {};
            *at("format_comb_width_mm") = 420.5;
            *at("format_comb_height_mm") = 200.0;
            *at("format_combs_per_box") = std::int64_t{10};
            *at("format_pitch_mm") = 35.0;
        }
    }
    if (at("feeder_kind") && isNothing(*at("feeder_kind"))) clear({"feeder_capacity_l"});
    if (at("bees_seams") && dice.once(2)) clear({"bees_count", "bees_covered_combs"});
    else if (at("bees_seams")) clear({"bees_count", "bees_seams"});
    if (auto* form = at("combs_form")) {
        clear({"combs_full_of_stores", "combs_half", "combs_capped_share"});
        if (*form == Value{std::string("quick")}) {
            *at("combs_full_of_stores") = 6.0;
            *at("combs_half") = 2.5;
            *at("combs_capped_share") = 0.8;
        }
    }
    if (at("capped") && at("open"))
        for (const auto* name : {"capped", "open", "brood", "pollen"})
            if (auto* share = std::get_if<double>(at(name))) *share /= 4;
    if (at("gross_kg")) {
        const auto form = dice.below(4);
        clear({"gross_kg", "lift_kg_1", "lift_kg_2", "heft"});
        if (form == 0) *at("gross_kg") = 54.5;
        if (form == 1 || form == 2) *at("lift_kg_1") = 20.25;
        if (form == 2) *at("lift_kg_2") = 19.0;
        if (form == 3) *at("heft") = std::string("heavy");
    }
    if (auto* sure = at("sure"); sure && *sure == Value{std::int64_t{0}}) *sure = {}; // not said, as it is written
    if (at("ratio") && at("sugar_kg")) *at("sugar_kg") = 3.5;
    if (auto* saw = at("saw"); saw && *saw != Value{std::string("cluster")}) clear({"bees_seams"});
    if (auto* until = at("until"); until && !isNothing(*until))
        *until = std::max(std::get<std::string>(*until), std::get<std::string>(*at("date")));
    if (auto* fate = at("fate"); fate && *fate != Value{std::string("united")}) clear({"into"});
}

} // namespace

std::string someText(Dice& dice) {
    static const std::vector<std::string> words{"Row 2 east",
                                                "",
                                                "O'Neill; DROP TABLE looks;--",
                                                "\xF0\x9F\x90\x9D bees",
                                                "\xD7\x93\xD7\x91\xD7\xA9",
                                                "a\nb\r\nc",
                                                "\"quoted\" \\ back",
                                                "-",
                                                " ",
                                                "name value\n# yard 1\n",
                                                "\t",
                                                "\xE2\x80\xAEreversed",
                                                "null",
                                                "0"};
    return dice.of(words);
}

Row someRow(Dice& dice, Kind kind, const Limits& limits, const Known& known) {
    const auto& table = tableOf(kind);
    Row row{someValues(dice, table.columns, limits, known), {}};
    reconcile(dice, table.columns, row.values);
    if (auto& by = row.values.back(); std::get<std::string>(by).empty()) by = std::string("Ada");
    for (const auto& list : table.lists) {
        row.lists.emplace_back();
        const auto form = table.column("combs_form");
        if (list.name == "combs" && row.values[*form] != Value{std::string("listed")}) continue;
        for (auto count = dice.below(4); count > 0; --count) {
            row.lists.back().push_back(someValues(dice, list.columns, limits, known));
            reconcile(dice, list.columns, row.lists.back().back());
        }
    }
    return row;
}

} // namespace winterlarder::book::support
