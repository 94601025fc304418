// SPDX-License-Identifier: GPL-3.0-or-later
// The number a constant's comment names is the one in the table it is read from.
#include "hygiene/source_tree.h"

#include "reference/csv_table.h"

#include <gtest/gtest.h>
#include <map>
#include <regex>

namespace hygiene::constants_test {
namespace {

// Value of each row by its name.
std::map<std::string, double> valuesIn(const std::string& path) {
    auto read = winterlarder::CsvTable::read(projectFolder() / path);
    if (!read) throw std::runtime_error(winterlarder::describe(read.problems().front()));
    std::map<std::string, double> values;
    for (std::size_t row = 0; row < read->rows(); ++row)
        if (const auto value = winterlarder::numberFrom(read->cell(row, "value").text))
            values[read->cell(row, "name").text] = *value;
    return values;
}

// As "double beesSd; //!< 0.15, covered combs", with a symbol or "w = " before the number or nothing; "1 is ..." tells what another value is measured by.
std::map<std::string, double> valuesSaidIn(const std::string& header) {
    static const std::regex line(R"(double (\w+); *//!< (?:w = |\w+, )?(-?\d+(?:\.\d+)?)(?=[ ,\n])(?! is ))");
    const std::string code = text(header);
    std::map<std::string, double> said;
    for (std::sregex_iterator found(code.begin(), code.end(), line), end; found != end; ++found)
        said[(*found)[1].str()] = std::stod((*found)[2].str());
    return said;
}

void expectSame(const std::string& header, const std::string& table, std::size_t least) {
    const auto said = valuesSaidIn(header);
    const auto values = valuesIn(table);
    EXPECT_GE(said.size(), least) << header;
    for (const auto& [name, value] : said) {
        ASSERT_TRUE(values.contains(name)) << name;
        EXPECT_EQ(value, values.at(name)) << name << " in " << header << " and " << table;
    }
}

TEST(Constants, CommentsNameTheValuesOfTheTables) {
    expectSame("core/reference/model_constants.h", "shared/model/constants.csv", 60);
    expectSame("core/reference/decision_constants.h", "shared/rules/decisions.csv", 70);
}

} // namespace
} // namespace hygiene::constants_test
