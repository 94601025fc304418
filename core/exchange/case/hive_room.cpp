// SPDX-License-Identifier: GPL-3.0-or-later
// What a hive has room for.
#include "exchange/case/case_file.h"
#include "exchange/json/json_output.h"

#include <fmt/format.h>
#include <limits>

namespace winterlarder::exchange {

namespace {

int placesOfBox(const book::BoxRecord& box, const ReferenceData& reference) {
    if (box.combs) return *box.combs;
    if (const auto* own = std::get_if<book::OwnFormat>(&box.format)) return own->combsPerBox;
    const HiveFormat* format = reference.format(std::get<std::string>(box.format));
    return format ? format->combsPerBox : 0;
}

std::string shownPlace(const Place& place) {
    return place.line > 0 ? fmt::format(" at {}:{}", place.line, place.column) : std::string();
}

Problem coveredFault(const book::ColonyCase& record, const CasePlaces& places, const std::string& room) {
    return {ProblemKind::Input, places.of("bees.covered_combs"),
            fmt::format("\"covered_combs\" is {}, but {}", shortestNumber(*record.bees.coveredCombs), room),
            "combs fully covered on both sides: not more than there are"};
}

} // namespace

int placesOf(const book::HiveRecord& hive, const ReferenceData& reference) {
    int places = 0;
    for (const book::BoxRecord& box : hive.boxes) places += placesOfBox(box, reference);
    return places;
}

double combsSaid(const book::CombsRecord& combs) {
    if (const auto* list = std::get_if<std::vector<book::CombRecord>>(&combs)) return static_cast<double>(list->size());
    const auto* quick = std::get_if<book::QuickCountRecord>(&combs);
    return quick ? quick->fullOfStores + quick->half : 0;
}

Problems roomFaults(const book::ColonyCase& record, const CasePlaces& places, const ReferenceData* reference) {
    Problems problems;
    const double room = reference ? placesOf(record.hive, *reference) : std::numeric_limits<double>::infinity();
    const std::string hive = fmt::format("the hive{} has {} places", shownPlace(places.of("hive")), room);
    if (const double said = combsSaid(record.combs); said > room)
        problems.push_back({ProblemKind::Input, places.of("combs"),
                            fmt::format("{} combs are listed, but {}", shortestNumber(said), hive),
                            "at most one comb a place"});
    if (record.bees.coveredCombs.value_or(0) > room) problems.push_back(coveredFault(record, places, hive));
    return problems;
}

Problems hiveFaults(const book::ColonyCase& record, const CasePlaces& places, const ReferenceData* reference) {
    const auto* list = std::get_if<std::vector<book::CombRecord>>(&record.combs);
    if (!list || record.bees.coveredCombs.value_or(0) <= static_cast<double>(list->size()))
        return roomFaults(record, places, reference);
    auto counted = record;
    counted.bees.coveredCombs.reset(); // said once, of the combs listed
    Problems problems = roomFaults(counted, places, reference);
    problems.push_back(coveredFault(
        record, places, fmt::format("{} combs are listed{}", list->size(), shownPlace(places.of("combs")))));
    return problems;
}

} // namespace winterlarder::exchange
