// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/form/limits.h"

#include "book/form/codec.h"
#include "calendar/other_date_forms.h"
#include "support/input_limits.h"
#include "support/require.h"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace winterlarder::book {
namespace {

Problem wrong(const Column& column, std::string what, std::string remedy) {
    return {ProblemKind::Input, {}, fmt::format("{} {}", column.header, what), std::move(remedy)};
}

std::string range(const FieldLimits& limits) {
    const auto unit = limits.unit.empty() ? "" : " " + limits.unit;
    if (limits.minimum && limits.maximum)
        return fmt::format("{} to {}{}", shortest(*limits.minimum), shortest(*limits.maximum), unit);
    if (limits.minimum) return fmt::format("{}{} or more", shortest(*limits.minimum), unit);
    return limits.maximum ? fmt::format("{}{} or less", shortest(*limits.maximum), unit) : "a number";
}

std::optional<Problem> numberFault(const Column& column, double number, const FieldLimits& limits) {
    if (!std::isfinite(number)) return wrong(column, "is not a number", range(limits));
    if ((limits.minimum && number < *limits.minimum) || (limits.maximum && number > *limits.maximum))
        return wrong(column, "is " + shortest(number), range(limits));
    return std::nullopt;
}

std::optional<Problem> textFault(const Column& column, const std::string& text) {
    if (!isText(text)) return wrong(column, "is not readable text", "text in UTF-8 without zero bytes");
    const auto length = static_cast<std::int64_t>(characters(text));
    const auto [least, most] = textLength(column);
    if (length < least) return wrong(column, "is empty", "write something");
    if (length > most) return wrong(column, fmt::format("has {} characters", length), fmt::format("at most {}", most));
    return std::nullopt;
}

template <class T> std::optional<Problem> formFault(const Column& column, const Value& value, const std::string& form) {
    if (Codec<T>::decode(value)) return std::nullopt;
    const auto* text = std::get_if<std::string>(&value);
    const auto shown =
        text && isText(*text) ? fmt::format("is \"{}\"", text->substr(0, 40)) : std::string("is of another type");
    return wrong(column, shown, form);
}

void mustAgree(const Column& column, const FieldLimits& limits) {
    require(column.choices.empty() || column.choices == limits.choices, "{} allows {} in fields.csv and {} in the book",
            column.field, limits.choices, column.choices);
}

} // namespace

TextLength textLength(const Column& column) {
    if (column.name == "name") return {1, limits::nameCharacters};
    return {0, limits::textCharacters};
}

std::optional<Problem> faultOfNewName(const Column& column, const Value& value) {
    const auto* text = std::get_if<std::string>(&value);
    if (column.name != "name" || !text) return std::nullopt;
    if (const auto fault = faultOfName(*text))
        return wrong(column, *fault, "one line of letters, digits, blanks and signs");
    return std::nullopt;
}

Limits::Limits(const std::vector<FieldLimits>& fields) {
    for (const auto& field : fields) fields_.emplace(field.name, field);
    for (const auto& table : tables()) {
        for (const auto& column : table.columns) mustAgree(column, of(column));
        for (const auto& list : table.lists)
            for (const auto& column : list.columns) mustAgree(column, of(column));
    }
}

const FieldLimits& Limits::of(const Column& column) const {
    static const FieldLimits reference = [] {
        FieldLimits limits;
        limits.minimum = 1;
        limits.maximum = static_cast<double>(largestId);
        return limits;
    }();
    if (column.refersTo) return reference;
    const auto found = fields_.find(column.field);
    require(found != fields_.end(), "fields.csv lacks {}", column.field);
    return found->second;
}

std::optional<Problem> Limits::fault(const Column& column, const Value& value) const {
    if (std::holds_alternative<std::monostate>(value)) {
        if (!column.required) return std::nullopt;
        return wrong(column, "is missing", "give it");
    }
    const auto& limits = of(column);
    const auto* text = std::get_if<std::string>(&value);
    switch (column.type) {
    case ColumnType::Text: return text ? textFault(column, *text) : wrong(column, "is of another type", "text");
    case ColumnType::Number:
        if (const auto* number = std::get_if<double>(&value)) return numberFault(column, *number, limits);
        return wrong(column, "is of another type", range(limits));
    case ColumnType::Integer:
    case ColumnType::Reference:
        if (const auto* number = std::get_if<std::int64_t>(&value))
            return numberFault(column, static_cast<double>(*number), limits);
        return wrong(column, "is of another type", range(limits));
    case ColumnType::Flag: return formFault<bool>(column, value, "true or false");
    case ColumnType::Date: return formFault<Date>(column, value, text ? dateMeant(*text) : dateForm);
    case ColumnType::DayOfYear: return formFault<DayOfYear>(column, value, "month and day such as 05-19, not 02-29");
    case ColumnType::Digits:
        return formFault<std::uint64_t>(column, value, "a whole number, 0 to 18446744073709551615");
    case ColumnType::Weekdays: return formFault<std::vector<int>>(column, value, "weekdays such as 1,4,6");
    case ColumnType::Choice:
        if (text && std::find(column.choices.begin(), column.choices.end(), *text) != column.choices.end())
            return std::nullopt;
        return wrong(column,
                     text && isText(*text) ? fmt::format("is \"{}\"", text->substr(0, 40)) : "is of another type",
                     fmt::format("one of {}", fmt::join(column.choices, ", ")));
    }
    return wrong(column, "is of a type this program does not know", "");
}

Problems Limits::faults(const Table& table, const Row& row) const {
    require(row.values.size() == table.columns.size() && row.lists.size() == table.lists.size(),
            "a row of another table than {}", table.name);
    Problems problems;
    for (std::size_t at = 0; at < table.columns.size(); ++at)
        if (auto problem = fault(table.columns[at], row.values[at])) problems.push_back(std::move(*problem));
    for (std::size_t list = 0; list < table.lists.size(); ++list)
        for (std::size_t item = 0; item < row.lists[list].size(); ++item)
            for (std::size_t at = 0; at < table.lists[list].columns.size(); ++at) {
                auto problem = fault(table.lists[list].columns[at], row.lists[list][item].at(at));
                if (!problem) continue;
                problem->detail = fmt::format("{} {}: {}", table.lists[list].name, item + 1, problem->detail);
                problems.push_back(std::move(*problem));
            }
    return problems;
}

const std::vector<CombinationRule>& combinationRules() {
    const std::string ownOrShipped =
        R"(("format" IS NOT NULL) = ("format_comb_width_mm" IS NULL) AND ("format" IS NULL) =)"
        R"( ("format_comb_height_mm" IS NOT NULL AND "format_combs_per_box" IS NOT NULL)"
        R"( AND "format_pitch_mm" IS NOT NULL))";
    std::string months, noMonths;
    for (int month = 1; month <= 12; ++month) {
        months += fmt::format("{}\"site_monthly_mean_c_{}\" IS NOT NULL", month == 1 ? "" : " AND ", month);
        noMonths += fmt::format("{}\"site_monthly_mean_c_{}\" IS NULL", month == 1 ? "" : " AND ", month);
    }
    static const std::vector<CombinationRule> rules{
        {"yards_place", "yards", R"(("site_station" IS NULL) = ("site_latitude" IS NOT NULL))",
         "a yard stands at a station or at a latitude, not both", "give one of the two"},
        {"yards_climate", "yards", fmt::format(R"(({}) OR ("site_latitude" IS NOT NULL AND {}))", noMonths, months),
         "an own climate has a latitude and twelve monthly means", "give all of them or none"},
        {"yards_longitude", "yards",
         R"("site_station" IS NOT NULL OR "site_longitude" IS NOT NULL OR "site_monthly_mean_c_1" IS NOT NULL)",
         "a place has a latitude and a longitude", "give both"},
        {"colonies_feeder", "colonies", R"("feeder_kind" IS NOT NULL OR "feeder_capacity_l" IS NULL)",
         "a feeder's capacity needs its kind", "name the kind of feeder"},
        {"colony_boxes_format", "colony_boxes", ownOrShipped, "a box has a shipped format or own measures",
         "give a format, or width, height, combs and pitch"},
        {"housing_boxes_format", "housing_boxes", ownOrShipped, "a box has a shipped format or own measures",
         "give a format, or width, height, combs and pitch"},
        {"looks_bees", "looks",
         R"(("bees_count" IS NOT NULL) + ("bees_covered_combs" IS NOT NULL) + ("bees_seams" IS NOT NULL) <= 1)",
         "bees are counted in one way", "give one of count, covered combs and seams"},
        {"looks_quick", "looks",
         R"(("combs_form" = 'quick') = ("combs_full_of_stores" IS NOT NULL AND "combs_half" IS NOT NULL AND)"
         R"( "combs_capped_share" IS NOT NULL))",
         "the quick form counts full and half combs and the capped share", "give all three, or list the combs"},
        {"look_combs_shares", "look_combs",
         R"(coalesce("capped", 0) + coalesce("open", 0) + coalesce("brood", 0) + coalesce("pollen", 0) <= 1.000000001)",
         "the shares of a comb sum to more than 1", "make them sum to 1 or less"},
        {"weighings_one", "weighings",
         R"(("gross_kg" IS NOT NULL) + ("lift_kg_1" IS NOT NULL) + ("heft" IS NOT NULL) = 1 AND)"
         R"( ("lift_kg_1" IS NOT NULL OR "lift_kg_2" IS NULL))",
         "a weighing is a scale's reading, one or two lifts, or a word", "give one of the three"},
        {"feeds_amount", "feeds", R"("sugar_kg" IS NOT NULL OR "syrup_l" IS NOT NULL OR "fondant_kg" IS NOT NULL)",
         "a feed without an amount", "give kg of sugar, L of syrup or kg of fondant"},
        {"treatments_order", "treatments", R"("until" IS NULL OR "until" >= "date")",
         "a treatment ends before it begins", "give a last day on or after the first"},
        {"sightings_seams", "sightings", R"("saw" = 'cluster' OR "bees_seams" IS NULL)",
         "seams are counted of a cluster that was seen", "leave the seams out, or say cluster"},
        {"fates_into", "fates", R"("fate" = 'united' OR "into" IS NULL)", "only a united colony goes into another",
         "leave the other colony out"},
    };
    return rules;
}

} // namespace winterlarder::book
