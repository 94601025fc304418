// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hive/hive.h"
#include "reference/csv_table.h"
#include "reference/reference.h"

#include <gtest/gtest.h>
#include <map>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

//! Published comb masses (shared/reference/comb_checks.csv) and the shipped formats, as the tests take them.
namespace winterlarder::stores::checks {

struct CombCheck {
    std::string id, format, formatId, test, condition, source, mark, group;
    std::optional<double> pitch, published, low, high, area; //!< mm, kg, dm2 of one face
};

//! Shown with every failure: which row, what it speaks of, and who printed it.
inline std::string says(const CombCheck& row) {
    return row.id + ": " + row.format + ", " + row.condition + " (source " + row.source + ", " + row.mark + ")";
}

class CombChecks : public testing::Test {
protected:
    void SetUp() override {
        const auto table = CsvTable::read(SHARED_FOLDER "/reference/comb_checks.csv");
        ASSERT_TRUE(table.ok()) << describe(table.problems().front());
        for (std::size_t row = 0; row < table->rows(); ++row) read(*table, row);
        auto read = loadReference(SHARED_FOLDER);
        ASSERT_TRUE(read.ok()) << describe(read.problems().front());
        reference = std::move(read.value());
    }

    const CombCheck& row(const std::string& id) const { return rows.at(id); }
    std::vector<CombCheck> rowsOf(const std::string& test) const {
        std::vector<CombCheck> found;
        for (const auto& [id, check] : rows)
            if (check.test == test) found.push_back(check);
        return found;
    }
    hive::CombFormat format(const std::string& id) const {
        const HiveFormat* found = reference->format(id);
        if (found == nullptr) throw std::runtime_error("no shipped format " + id);
        return hive::combFormat(*found);
    }
    double fullKg(const std::string& formatId, double phi = hive::phiComb) const {
        return hive::fullComb(format(formatId), phi).value();
    }

    std::map<std::string, CombCheck> rows;
    std::optional<ReferenceData> reference;

private:
    void read(const CsvTable& table, std::size_t row) {
        const auto text = [&](const char* column) { return table.cell(row, column).text; };
        const auto number = [&](const char* column) { return numberFrom(text(column)); };
        rows[text("id")] = {text("id"),
                            text("format"),
                            text("format_id"),
                            text("test"),
                            text("condition"),
                            text("source"),
                            text("mark"),
                            text("independence_group"),
                            number("pitch_mm"),
                            number("published_kg"),
                            number("low_kg"),
                            number("high_kg"),
                            number("comb_area_one_side_dm2")};
    }
};

} // namespace winterlarder::stores::checks
