// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_file.h"
#include "exchange/case/combs_file.h"
#include "exchange/case/hive_room.h"
#include "exchange/json/line_reader.h"
#include "fuzz/targets.h"
#include "support/book_folder.h"

#include <cmath>
#include <sstream>

namespace winterlarder::fuzz {

using book::support::shipped;

namespace {

// Every fault of a text has its line; one of what is missing may lie at the beginning of what would hold it.
void holdFaults(const Problems& problems, const std::string& file) {
    holdRefusal(problems, file);
    for (const auto& problem : problems) hold(problem.place.line >= 1, "a fault without its line: " + problem.detail);
}

} // namespace

void caseFile(std::string_view input) {
    const auto reading = exchange::readCaseWithPlaces(input, "case.json", shipped());
    if (!reading.record || !reading.problems.empty()) return holdFaults(reading.problems, "case.json");
    const auto text = exchange::writeCase(*reading.record);
    const auto again = exchange::readCase(text, "again.json", shipped());
    hold(again.ok(), "what is written cannot be read: " + text);
    hold(exchange::writeCase(*again) == text, "what is read back is written in another way: " + text);
    hold(exchange::writeCaseLine(*reading.record).find('\n') == std::string::npos, "a line of two lines");
}

void combsFile(std::string_view input) {
    book::HiveRecord hive;
    hive.boxes.resize(2);
    for (auto& box : hive.boxes) box.format = "langstroth-deep";
    const auto combs = exchange::readCombsFile(input, "combs.json", hive, shipped());
    if (!combs) return holdFaults(combs.problems(), "combs.json");
    const double there = exchange::combsThere(*combs, hive, shipped());
    hold(std::isfinite(there) && there >= 0, "a number of combs that is none");
    hold(exchange::combsSaid(*combs) <= exchange::placesOf(hive, shipped()), "more combs than places");
}

void jsonLines(std::string_view input) {
    std::istringstream stream{std::string(input)};
    exchange::LineReader lines(stream, 4096, 1 << 16);
    for (int before = 0; auto line = lines.next();) {
        hold(line->number > before, "lines that do not go on");
        hold(line->text.find('\n') == std::string::npos, "a line of two lines");
        hold(line->tooLong ? line->text.empty() : !line->text.empty() && line->text.size() <= 4096,
             "a line of no such length");
        before = line->number;
        const auto reading = exchange::readCaseWithPlaces(line->text, "lines", shipped(), line->number);
        for (const auto& problem : reading.problems)
            hold(problem.place.line >= line->number, "a fault before its line");
    }
}

} // namespace winterlarder::fuzz
