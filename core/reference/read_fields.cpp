// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/shipped_files.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder {

namespace {

constexpr auto fieldsFile = "fields.csv";

void checkDefault(CheckedTable& checked, std::size_t row, const FieldLimits& field) {
    const CsvCell& at = checked.cell(row, "default");
    if (field.defaultText.empty()) return;
    if (field.type == "choice" &&
        std::find(field.choices.begin(), field.choices.end(), field.defaultText) == field.choices.end())
        checked.fault(at, fmt::format("default {} is not one of the choices", field.defaultText), "one of the choices");
    if (field.type == "flag" && field.defaultText != "true" && field.defaultText != "false")
        checked.fault(at, fmt::format("default {} is neither true nor false", field.defaultText), "true or false");
    if (field.type == "number" || field.type == "integer")
        checked.optionalNumber(
            row, "default", {field.minimum.value_or(NumberRange{}.least), field.maximum.value_or(NumberRange{}.most)});
}

void checkLimits(CheckedTable& checked, std::size_t row, const FieldLimits& field) {
    const bool counts = field.type == "number" || field.type == "integer";
    if (counts != field.minimum.has_value() || counts != field.maximum.has_value() || counts != field.step.has_value())
        checked.fault(checked.cell(row, "min"), fmt::format("{} has the wrong limits", field.name),
                      "min, max and step for a number or an integer, none for anything else");
    if (field.minimum && field.maximum && *field.minimum > *field.maximum)
        checked.fault(checked.cell(row, "min"), fmt::format("min {} is above max {}", *field.minimum, *field.maximum),
                      "min not above max");
    if ((field.type == "choice") != !field.choices.empty())
        checked.fault(checked.cell(row, "choices"), fmt::format("{} has the wrong choices", field.name),
                      "words separated by ; for a choice, none for anything else");
}

} // namespace

std::vector<FieldLimits> readFields(ShippedFolder& folder, SourceUses& uses) {
    std::vector<FieldLimits> fields;
    auto table = folder.table(fieldsFile);
    if (!table) return fields;
    CheckedTable checked(std::move(*table),
                         {"name", "type", "unit", "min", "max", "step", "default", "choices", "source", "note"},
                         folder.problems);
    for (std::size_t row = 0; row < checked.rows(); ++row) {
        FieldLimits field;
        field.name = checked.uniqueId(row, "name");
        field.type = checked.oneOf(row, "type", {"number", "integer", "text", "date", "flag", "choice"});
        field.unit = checked.optionalText(row, "unit");
        field.minimum = checked.optionalNumber(row, "min");
        field.maximum = checked.optionalNumber(row, "max");
        field.step = checked.optionalNumber(row, "step", {1e-6, 1e6});
        field.defaultText = checked.optionalText(row, "default");
        field.choices = listedIn(checked.optionalText(row, "choices"));
        field.sources = uses.refer(checked, row, "source", fieldsFile);
        field.note = checked.text(row, "note");
        checkLimits(checked, row, field);
        checkDefault(checked, row, field);
        fields.push_back(std::move(field));
    }
    return fields;
}

NumberRange limitsOf(const std::vector<FieldLimits>& fields, std::string_view name) {
    const auto found = std::find_if(fields.begin(), fields.end(), [&](const FieldLimits& f) { return f.name == name; });
    if (found == fields.end() || !found->minimum || !found->maximum) return {};
    return {*found->minimum, *found->maximum};
}

} // namespace winterlarder
