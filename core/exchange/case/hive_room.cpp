// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/hive_room.h"

#include "exchange/json/json_output.h"

#include <algorithm>
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

// The first free place.
enum class Among { Supers, AllBoxes };
std::optional<CombAt> nextFree(const std::vector<BoxRoom>& boxes, std::vector<int>& hung, Among among) {
    for (std::size_t box = 0; box < boxes.size(); ++box) {
        if (among == Among::Supers && !boxes[box].super) continue;
        if (hung[box] < boxes[box].places) return CombAt{static_cast<int>(box), hung[box]++};
    }
    return std::nullopt;
}

using CombList = std::vector<book::CombRecord>;

bool inSuper(const book::CombRecord& comb) { return comb.inSuper; }

int placesInSupers(const book::HiveRecord& hive, const ReferenceData& reference) {
    int room = 0;
    for (const auto& box : hive.boxes) room += box.super ? placesOfBox(box, reference) : 0;
    return room;
}

// The first comb of a super that finds no place in one.
std::optional<std::size_t> beyondSupers(const CombList& combs, const book::HiveRecord& hive,
                                        const ReferenceData& reference) {
    int left = placesInSupers(hive, reference);
    for (std::size_t i = 0; i < combs.size(); ++i)
        if (combs[i].inSuper && --left < 0) return i;
    return std::nullopt;
}

// Where no box is said to be a super, one whose combs are all of a super is: the first such comb in a box that holds others too, or in a hive of
// which nothing else is listed.
std::optional<std::size_t> besideOthers(const CombList& combs, const book::HiveRecord& hive,
                                        const ReferenceData& reference) {
    const auto hang = whereCombsHang(combs, hive, reference);
    const bool alone = std::all_of(combs.begin(), combs.end(), inSuper);
    std::vector<bool> others(hive.boxes.size(), alone);
    for (std::size_t i = 0; i < hang.size(); ++i)
        if (!combs[i].inSuper) others[static_cast<std::size_t>(hang[i].box)] = true;
    for (std::size_t i = 0; i < hang.size(); ++i)
        if (combs[i].inSuper && others[static_cast<std::size_t>(hang[i].box)]) return i;
    return std::nullopt;
}

} // namespace

std::optional<Problem> superFault(const book::CombsRecord& record, const book::HiveRecord& hive,
                                  const CasePlaces& places, const ReferenceData& reference) {
    const auto* combs = std::get_if<CombList>(&record);
    if (!combs) return std::nullopt;
    const bool said = std::any_of(hive.boxes.begin(), hive.boxes.end(), [](const auto& box) { return box.super; });
    const auto astray = said ? beyondSupers(*combs, hive, reference) : besideOthers(*combs, hive, reference);
    if (!astray) return std::nullopt;
    const Place place = places.of(fmt::format("combs[{}].in_super", *astray));
    const std::string at = shownPlace(places.of("hive"));
    if (!said)
        return Problem{ProblemKind::Input, place,
                       fmt::format("this comb is said to be in a super, but the hive{} has no super", at),
                       R"(the boxes from the floor up with "super": true for the super, or no in_super)"};
    return Problem{ProblemKind::Input, place,
                   fmt::format("{} combs are said to be in a super, but the supers of the hive{} have {} places",
                               std::count_if(combs->begin(), combs->end(), inSuper), at,
                               placesInSupers(hive, reference)),
                   "at most one comb a place; combs without in_super fill the boxes from the floor up"};
}

double combsThere(const book::CombsRecord& combs, const book::HiveRecord& hive, const ReferenceData& reference) {
    const auto* list = std::get_if<CombList>(&combs);
    const bool supers = list && !list->empty() && std::all_of(list->begin(), list->end(), inSuper);
    return list && !supers ? static_cast<double>(list->size()) : placesOf(hive, reference);
}

std::vector<BoxRoom> roomOfBoxes(const book::HiveRecord& hive, const ReferenceData& reference) {
    std::vector<BoxRoom> boxes;
    for (const auto& box : hive.boxes) boxes.push_back({placesOfBox(box, reference), box.super});
    return boxes;
}

std::vector<CombAt> whereCombsHang(const std::vector<book::CombRecord>& combs, const std::vector<BoxRoom>& boxes) {
    std::vector<int> hung(boxes.size(), 0);
    std::vector<CombAt> places;
    for (const auto& comb : combs) {
        auto at = comb.inSuper ? nextFree(boxes, hung, Among::Supers) : std::nullopt;
        if (!at) at = nextFree(boxes, hung, Among::AllBoxes);
        if (!at) break;
        places.push_back(*at);
    }
    return places;
}

std::vector<CombAt> whereCombsHang(const std::vector<book::CombRecord>& combs, const book::HiveRecord& hive,
                                   const ReferenceData& reference) {
    return whereCombsHang(combs, roomOfBoxes(hive, reference));
}

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
    const auto* list = std::get_if<CombList>(&record.combs);
    if (reference)
        if (auto fault = superFault(record.combs, record.hive, places, *reference)) return {*std::move(fault)};
    if (!list || (reference && combsThere(record.combs, record.hive, *reference) > static_cast<double>(list->size())) ||
        record.bees.coveredCombs.value_or(0) <= static_cast<double>(list->size()))
        return roomFaults(record, places, reference);
    auto counted = record;
    counted.bees.coveredCombs.reset(); // said once, of the combs listed
    Problems problems = roomFaults(counted, places, reference);
    problems.push_back(coveredFault(
        record, places, fmt::format("{} combs are listed{}", list->size(), shownPlace(places.of("combs")))));
    return problems;
}

} // namespace winterlarder::exchange
