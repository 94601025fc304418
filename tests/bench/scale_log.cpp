// SPDX-License-Identifier: GPL-3.0-or-later
// Twenty years of five-minute readings, two million rows: reading the file, and what it tells. The aim is under 5 s and 300 MB; the figures are
// printed, never asserted. The file is made in a folder of its own and taken away again.
#include "exchange/logs/scale_log.h"
#include "scale/summary.h"

#include <chrono>
#include <cmath>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <random>
#include <sys/resource.h>
#include <unistd.h>

namespace {

using namespace winterlarder;

constexpr std::int64_t rows = 2'103'840; // 20 years of 365.25 days

std::filesystem::path makeLog(const std::filesystem::path& folder) {
    const auto path = folder / "twenty_years.csv";
    std::ofstream file(path, std::ios::binary);
    file << "time,weight_kg\n";
    std::mt19937 random(1);
    std::normal_distribution<double> noise(0, 0.02);
    std::int64_t at = static_cast<std::int64_t>(scale::dayOf(*Date::of(2000, 1, 1))) * scale::secondsADay;
    double kg = 42;
    for (std::int64_t row = 0; row < rows; ++row, at += 300) {
        const Date date = scale::dateOfDay(scale::dayNumber(at));
        const int second = scale::secondOfDay(at), month = date.month();
        const bool flow = month >= 5 && month <= 7, day = second > 9 * 3600 && second < 19 * 3600;
        kg += flow && day ? 0.006 : month >= 4 && month <= 9 ? -0.0009 : -0.00013;
        if (second == 46800 && date.day() == 20 && month == 7) kg -= 16;
        if (second == 61200 && date.day() == 25 && month == 8) kg += 8;
        file << fmt::format("{} {:02}:{:02}:00,{:.2f}\n", date.iso(), second / 3600, second / 60 % 60,
                            kg + noise(random));
    }
    return path;
}

double memoryMb() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024;
}

double secondsSince(std::chrono::steady_clock::time_point begin) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

int report(const std::filesystem::path& path) {
    const double before = memoryMb();
    const auto begin = std::chrono::steady_clock::now();
    std::ifstream stream(path, std::ios::binary);
    auto log = exchange::readScaleLog(stream, path.string());
    if (!log) {
        fmt::print("the log cannot be read: {}\n", describe(log.problems().front()));
        return 1;
    }
    const double reading = secondsSince(begin);
    std::vector<scale::Reading> readings;
    readings.reserve(log->rows.size());
    for (const exchange::ScaleLogRow& row : log->rows)
        readings.push_back({row.seconds, kilograms(row.kg), 0, row.line});
    log->rows = {};
    const auto summary = scale::summarise(std::move(readings), scale::Times::WallClock);
    const double all = secondsSince(begin);
    fmt::print("{} rows, {:.0f} MB of text\n", summary.readings,
               static_cast<double>(std::filesystem::file_size(path)) / 1e6);
    fmt::print("read in {:.2f} s, summed up in {:.2f} s, together {:.2f} s (aim: under 5 s)\n", reading, all - reading,
               all);
    fmt::print("memory at most {:.0f} MB, {:.0f} MB before (aim: under 300 MB)\n", memoryMb(), before);
    fmt::print("{} days, {} months, {} steps (40 made), {} rows left out\n", summary.days.size(), summary.months.size(),
               summary.steps.size(), log->faults.size() + summary.leftOut.size());
    return 0;
}

} // namespace

int main() {
    const auto folder = std::filesystem::temp_directory_path() / fmt::format("winterlarder-bench-{}", getpid());
    std::filesystem::create_directories(folder);
    const int status = report(makeLog(folder));
    std::filesystem::remove_all(folder);
    return status;
}
