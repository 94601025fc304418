// SPDX-License-Identifier: GPL-3.0-or-later
// Data files describe themselves: title, source, licence, date, mark, and what every column holds in which unit.
#include "hygiene/source_tree.h"

#include "reference/csv_table.h"

#include <gtest/gtest.h>
#include <map>
#include <sstream>

namespace hygiene::data_files_test {
namespace {

std::vector<std::string> dataFiles() {
    std::vector<std::string> found = hygiene::files("shared");
    std::erase_if(found, [](const std::string& path) { return !path.ends_with(".csv"); });
    return found;
}

winterlarder::CsvTable table(const std::string& path) {
    auto read = winterlarder::CsvTable::read(hygiene::projectFolder() / path);
    if (!read) throw std::runtime_error(winterlarder::describe(read.problems().front()));
    return std::move(read).value();
}

// Text behind "KEY: " in the description; one line each.
std::vector<std::string> said(const winterlarder::CsvTable& data, const std::string& key) {
    std::vector<std::string> found;
    for (const std::string& line : data.description())
        if (line.starts_with(key + ": ")) found.push_back(line.substr(key.size() + 2));
    return found;
}

// Column name -> how often it is described.
std::map<std::string, int> describedColumns(const winterlarder::CsvTable& data) {
    std::map<std::string, int> described;
    for (const std::string& line : data.description()) {
        if (!line.starts_with("column ")) continue;
        std::istringstream names(line.substr(7, line.find(':') - 7));
        for (std::string name; std::getline(names, name, ',');) ++described[name.substr(name.find_first_not_of(' '))];
    }
    return described;
}

bool isUtf8(const std::string& text) {
    for (std::size_t i = 0; i < text.size();) {
        const auto byte = static_cast<unsigned char>(text[i]);
        const std::size_t length = byte < 0x80         ? 1
                                   : byte >> 5 == 0x6  ? 2
                                   : byte >> 4 == 0xE  ? 3
                                   : byte >> 3 == 0x1E ? 4
                                                       : 0;
        if (length == 0 || i + length > text.size()) return false;
        for (std::size_t k = 1; k < length; ++k)
            if ((static_cast<unsigned char>(text[i + k]) & 0xC0) != 0x80) return false;
        i += length;
    }
    return true;
}

TEST(DataFiles, AllOfThemAreHere) { EXPECT_GE(dataFiles().size(), 11U); }

TEST(DataFiles, OpenWithTitleSourceLicenceDateAndMark) {
    for (const std::string& path : dataFiles()) {
        const auto data = table(path);
        ASSERT_FALSE(data.description().empty()) << path;
        EXPECT_TRUE(data.description().front().starts_with("title: ")) << path;
        for (const char* key : {"title", "source", "licence", "date", "mark"}) {
            ASSERT_EQ(said(data, key).size(), 1U) << path << ": " << key;
            EXPECT_FALSE(said(data, key).front().empty()) << path << ": " << key;
        }
        EXPECT_TRUE(std::regex_match(said(data, "date").front(), std::regex(R"(\d{4}-\d{2}-\d{2})"))) << path;
    }
}

TEST(DataFiles, DescribeEveryColumnOnce) {
    for (const std::string& path : dataFiles()) {
        const auto data = table(path);
        auto described = describedColumns(data);
        for (const auto& column : data.header()) EXPECT_EQ(described[column.text], 1) << path << ": " << column.text;
        EXPECT_EQ(described.size(), data.header().size()) << path << " describes a column it does not have";
    }
}

TEST(DataFiles, AreUtf8WithPlainLineEnds) {
    for (const std::string& path : dataFiles()) {
        const std::string content = hygiene::text(path);
        EXPECT_TRUE(isUtf8(content)) << path;
        EXPECT_EQ(content.find('\r'), std::string::npos) << path;
        EXPECT_TRUE(content.ends_with('\n')) << path;
    }
}

TEST(DataFiles, ShipNoAddresses) {
    const std::regex address(R"(https?://|www\.|\b[\w-]+\.(com|org|net|de|uk|fr|se|dk|fi|eu|ca|at|ch|pl|cz)\b)");
    for (const std::string& path : dataFiles()) {
        std::istringstream lines(hygiene::text(path));
        int number = 0;
        for (std::string line; std::getline(lines, line);)
            if (++number; std::regex_search(line, address)) ADD_FAILURE() << path << ":" << number << ": " << line;
    }
}

TEST(DataFiles, DatesOfTheSeasonAgreeWithTheirSeasonDays) {
    const auto dates = table("shared/reference/season_dates.csv");
    const std::vector<int> lengths = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    int compared = 0;
    for (std::size_t row = 0; row < dates.rows(); ++row)
        for (const std::string name : {"end", "feed_by", "syrup", "syrup_hard", "off", "on", "spring", "forage"}) {
            const std::string day = dates.cell(row, name + "_w").text, date = dates.cell(row, name + "_mmdd").text;
            ASSERT_EQ(day.empty(), date.empty()) << dates.cell(row, "id").text << " " << name;
            if (day.empty()) continue;
            int dayOfYear = std::stoi(date.substr(3)) - 1;
            for (int month = 1; month < std::stoi(date.substr(0, 2)); ++month)
                dayOfYear += lengths[static_cast<std::size_t>(month) - 1];
            const int first = dates.cell(row, "hemisphere").text == "N" ? 0 : 181;
            int seasonDay = ((dayOfYear - first) % 365 + 365) % 365;
            if (seasonDay >= 212) seasonDay -= 365;
            EXPECT_EQ(std::stoi(day), seasonDay) << dates.cell(row, "id").text << " " << name;
            ++compared;
        }
    EXPECT_GT(compared, 1000);
}

} // namespace
} // namespace hygiene::data_files_test
