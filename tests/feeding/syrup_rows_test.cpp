// SPDX-License-Identifier: GPL-3.0-or-later
// Every row of shared/reference/syrup_checks.csv: densities (CRC Handbook of Chemistry and Physics, aqueous sucrose),
// saturation (Mohos 2010, appendix 2), the arithmetic of usual ratios on them, and recipes as published.
#include "feeding/syrup.h"
#include "reference/csv_table.h"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <regex>
#include <set>

namespace winterlarder::feeding::syrup_rows_test {
namespace {

// Stated bound of the density formula against the table it was fitted to.
constexpr double densityBound = 0.0001;

struct Row {
    std::map<std::string, std::string> cells;

    const std::string& text(const std::string& column) const { return cells.at(column); }
    bool has(const std::string& column) const { return !text(column).empty(); }
    double number(const std::string& column) const { return numberFrom(text(column)).value(); }
    // One in the last printed place: half of it for the value itself, half for the rounded amounts it is computed from.
    double printed(const std::string& column) const {
        const auto point = text(column).find('.');
        return point == std::string::npos ? 1.0 : std::pow(10.0, -double(text(column).size() - point - 1));
    }
    std::string about() const { return text("id") + " " + text("label") + ", source " + text("source"); }
    bool oneOf(std::string_view groups) const { return groups.find(text("id").front()) != std::string_view::npos; }
};

std::vector<Row> allRows() {
    const auto table = CsvTable::read(SHARED_FOLDER "/reference/syrup_checks.csv");
    std::vector<Row> rows;
    if (!table) return rows;
    for (std::size_t row = 0; row < table->rows(); ++row) {
        rows.emplace_back();
        for (std::size_t column = 0; column < table->header().size(); ++column)
            rows.back().cells[table->header()[column].text] = table->cell(row, column).text;
    }
    return rows;
}

std::vector<Row> rowsOf(std::string_view groups) {
    std::vector<Row> rows;
    for (const Row& row : allRows())
        if (row.oneOf(groups)) rows.push_back(row);
    return rows;
}

Ratio ratioOf(const Row& row) {
    if (row.text("basis") == "by mass") return {row.number("kg_sugar") / row.number("kg_water"), row.text("label")};
    return parseRatio(row.text("kg_sugar") + ":" + row.text("L_water"), RatioBasis::KgPerL).value();
}

// The number in front of the given words in the remark of a row.
double numberBefore(const Row& row, const std::string& words) {
    std::smatch found;
    const std::string& note = row.text("note");
    if (!std::regex_search(note, found, std::regex("([0-9.]+) " + words))) return std::nan("");
    return numberFrom(found[1].str()).value_or(std::nan(""));
}

TEST(SyrupRows, NoneIsLeftOut) {
    EXPECT_EQ(rowsOf("D").size(), 19u);
    EXPECT_EQ(rowsOf("S").size(), 10u);
    EXPECT_EQ(rowsOf("W").size(), 13u);
    EXPECT_EQ(rowsOf("L").size(), 5u);
    EXPECT_EQ(rowsOf("P").size(), 5u);
    EXPECT_EQ(rowsOf("C").size(), 5u);
    EXPECT_EQ(rowsOf("DSWLPC").size(), allRows().size());
}

TEST(SyrupRows, DensityOfTheTable) {
    for (const Row& row : rowsOf("D")) {
        const auto density = syrupDensity(row.number("mass_pct"));
        ASSERT_TRUE(density) << row.about();
        EXPECT_NEAR(*density, row.number("density_kg_per_L"), densityBound) << row.about();
    }
}

TEST(SyrupRows, BatchForTheSugarOfTheRow) {
    for (const Row& row : rowsOf("DWP")) {
        const auto batch = mixForSugar(kilograms(row.number("kg_sugar")), ratioOf(row));
        ASSERT_TRUE(batch) << row.about();
        EXPECT_NEAR(batch->massPercent, row.number("mass_pct"), row.printed("mass_pct")) << row.about();
        EXPECT_NEAR(batch->densityKgPerL, row.number("density_kg_per_L"),
                    densityBound + row.printed("density_kg_per_L"))
            << row.about();
        EXPECT_NEAR(batch->mass.value(), row.number("kg_syrup"), row.printed("kg_syrup")) << row.about();
        const double litresBound = row.number("L_syrup") * densityBound / batch->densityKgPerL;
        EXPECT_NEAR(batch->volume.value(), row.number("L_syrup"), litresBound + row.printed("L_syrup")) << row.about();
        if (!row.has("L_water")) continue;
        EXPECT_NEAR(batch->water.value(), row.number("L_water"), row.printed("L_water")) << row.about();
    }
}

TEST(SyrupRows, BatchThatFillsALitre) {
    for (const Row& row : rowsOf("L")) {
        const auto batch = mixForVolume(litres(row.number("L_syrup")), ratioOf(row));
        ASSERT_TRUE(batch) << row.about();
        EXPECT_NEAR(batch->sugar.value(), row.number("kg_sugar"), row.printed("kg_sugar")) << row.about();
        EXPECT_NEAR(batch->water.value(), row.number("L_water"), row.printed("L_water")) << row.about();
        EXPECT_NEAR(batch->mass.value(), row.number("kg_syrup"), densityBound + row.printed("kg_syrup")) << row.about();
    }
}

// Mass percent of a saturated solution, told by what drops out of a syrup that cannot stay dissolved.
double saturationAt(Temperature at) {
    const double thick = 90;
    const double perWater = (1 - mayCrystallise(thick, at) / 1000) * thick / (100 - thick);
    return 100 * perWater / (1 + perWater);
}

TEST(SyrupRows, SaturationAtEachTemperature) {
    for (const Row& row : rowsOf("S")) {
        const Temperature at = celsius(row.number("temp_C"));
        const double saturated = saturationAt(at);
        EXPECT_NEAR(saturated, row.number("mass_pct"), 0.5 * row.printed("mass_pct")) << row.about();
        // The same solubility as the source prints it in g per 100 g water, both rounded: 0.005 % is 0.04 to 0.2 g
        // here.
        const double perWater = 100 * saturated / (100 - saturated);
        EXPECT_NEAR(perWater, numberBefore(row, "g sugar per 100 g water"),
                    0.05 + 0.5 * perWater * 0.01 / (100 - saturated))
            << row.about();
        EXPECT_NEAR(mayCrystallise(row.number("mass_pct"), at), 0, 1e-9) << row.about();
    }
}

TEST(SyrupRows, DensityOfSyrupSaturatedAtTwentyDegrees) {
    int checked = 0;
    for (const Row& row : rowsOf("S")) {
        if (row.number("temp_C") != 20) continue;
        EXPECT_NEAR(syrupDensity(row.number("mass_pct")).value(), row.number("density_kg_per_L"), densityBound)
            << row.about();
        ++checked;
    }
    EXPECT_EQ(checked, 1);
}

TEST(SyrupRows, SugarThatDropsOutWhenTheSyrupCools) {
    for (const Row& row : rowsOf("C")) {
        const auto batch = mixForSugar(kilograms(row.number("kg_sugar")), ratioOf(row));
        ASSERT_TRUE(batch) << row.about();
        const Temperature at = celsius(row.number("temp_C"));
        const double drops = mayCrystallise(batch->massPercent, at);
        EXPECT_NEAR(drops, numberBefore(row, "g per kg sugar"), 0.5) << row.about();
        const double dissolved = numberBefore(row, "kg stays dissolved");
        // A tenth of a gram printed; solubility per water rounded to 0.1 g in 100 g (0.5 g on half a litre).
        EXPECT_NEAR(drops, std::max(0.0, 1000 * (1 - dissolved)), 0.05 + 0.5) << row.about();
    }
}

// What a source prints of a recipe beside what its density makes it, and by how much the print is off.
struct PrintedRecipe {
    const char* id;
    double printed;
    double (*computed)(const Syrup&);
    double off;
};

double kilogramsPerLitre(const Syrup& syrup) { return syrup.densityKgPerL; }
double litresInAll(const Syrup& syrup) { return syrup.volume.value(); }

TEST(SyrupRows, HowFarPublishedRecipesAreOff) {
    // P61-P63: Curth, Hohenheim 1981, prints the mass of one litre. P65: an association prints 3.75 L for 3 kg + 2 L.
    // P75: another prints 32 L for 24 kg + 16 L. Deviations to a tenth of a percent.
    const std::vector<PrintedRecipe> recipes{{"P61", 1.250, kilogramsPerLitre, 0.016},
                                             {"P62", 1.330, kilogramsPerLitre, 0.033},
                                             {"P63", 1.335, kilogramsPerLitre, 0.006},
                                             {"P65", 3.75, litresInAll, -0.034},
                                             {"P75", 32, litresInAll, 0.030}};
    std::set<std::string> seen;
    for (const Row& row : rowsOf("P"))
        for (const PrintedRecipe& recipe : recipes) {
            if (row.text("id") != recipe.id) continue;
            seen.insert(recipe.id);
            const auto batch = mixForSugar(kilograms(row.number("kg_sugar")), ratioOf(row));
            ASSERT_TRUE(batch) << row.about();
            EXPECT_NEAR(recipe.printed / recipe.computed(*batch) - 1, recipe.off, 0.001) << row.about();
        }
    EXPECT_EQ(seen.size(), recipes.size());
}

} // namespace
} // namespace winterlarder::feeding::syrup_rows_test
