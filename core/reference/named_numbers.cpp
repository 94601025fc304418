// SPDX-License-Identifier: GPL-3.0-or-later
#include "reference/named_numbers.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder {

namespace {

const NamedNumber* numberNamed(const std::vector<NamedNumber>& numbers, std::string_view name) {
    const auto found =
        std::find_if(numbers.begin(), numbers.end(), [&](const NamedNumber& n) { return n.name == name; });
    return found == numbers.end() ? nullptr : &*found;
}

void checkUnit(CheckedTable& checked, std::size_t row, const NamedNumber& number) {
    const CsvCell& at = checked.cell(row, "unit");
    if (at.text != number.unit)
        checked.fault(at, fmt::format("{} has the unit {}", number.name, at.text),
                      fmt::format("give it in {}", number.unit));
}

double readValue(CheckedTable& checked, std::size_t row, std::string_view name) {
    const std::size_t before = checked.faults();
    const double value = checked.number(row, "value");
    if (checked.faults() > before) return value;
    const auto low = checked.optionalNumber(row, "low");
    const auto high = checked.optionalNumber(row, "high");
    if ((low && value < *low) || (high && value > *high))
        checked.fault(checked.cell(row, "value"), fmt::format("{} {} lies outside its own range", name, value),
                      fmt::format("a number from {} to {}", low.value_or(value), high.value_or(value)));
    return value;
}

void listMissing(CheckedTable& checked, std::string_view what, const std::vector<NamedNumber>& numbers,
                 const std::vector<std::string>& seen) {
    for (const NamedNumber& number : numbers)
        if (std::find(seen.begin(), seen.end(), number.name) == seen.end())
            checked.fault(checked.table().header().front(), fmt::format("{} {} is missing", what, number.name),
                          fmt::format("a row for every {} of the {}", what, what == "constant" ? "model" : "advice"));
}

} // namespace

void readNumbers(ShippedFolder& folder, SourceUses& uses, const char* file, const std::vector<std::string>& columns,
                 std::string_view what, const std::vector<NamedNumber>& numbers) {
    auto table = folder.table(file);
    if (!table) return;
    CheckedTable checked(std::move(*table), columns, folder.problems);
    std::vector<std::string> seen;
    for (std::size_t row = 0; row < checked.rows(); ++row) {
        seen.push_back(checked.uniqueId(row, "name"));
        const double value = readValue(checked, row, seen.back());
        checked.mark(row, "mark");
        checked.text(row, "source");
        checked.text(row, "meaning");
        uses.refer(checked, row, "source", file);
        if (const NamedNumber* number = numberNamed(numbers, seen.back())) {
            *number->value = value;
            checkUnit(checked, row, *number);
        } else {
            checked.fault(checked.cell(row, "name"), fmt::format("{} {} is not known", what, seen.back()),
                          fmt::format("the name of a {} of the {}", what, what == "constant" ? "model" : "advice"));
        }
    }
    if (checked.rows() > 0) listMissing(checked, what, numbers, seen);
}

} // namespace winterlarder
