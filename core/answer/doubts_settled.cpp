// SPDX-License-Identifier: GPL-3.0-or-later
// What becomes of records that are in doubt: set aside by an answer, a fault of a case file, or a question.
#include "answer/doubts.h"

#include "answer/question_of_case.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

const char* nameOf(DoubtedPart part) {
    switch (part) {
    case DoubtedPart::Weighing: return "weighing";
    case DoubtedPart::Feed: return "feed";
    case DoubtedPart::Harvest: return "harvest";
    case DoubtedPart::Bees: return "bees";
    case DoubtedPart::Brood: return "brood";
    case DoubtedPart::Combs: return "combs";
    case DoubtedPart::Moisture: return "moisture";
    case DoubtedPart::Tare: return "tare";
    }
    return "";
}

template <class Record>
void leaveOut(std::vector<Record>& records, DoubtedPart part, const std::vector<DoubtedRecord>& aside) {
    std::vector<Record> kept;
    for (std::size_t i = 0; i < records.size(); ++i) {
        const bool out = std::any_of(aside.begin(), aside.end(),
                                     [&](const DoubtedRecord& each) { return each.part == part && each.index == i; });
        if (!out) kept.push_back(std::move(records[i]));
    }
    records = std::move(kept);
}

void leaveOutOfLook(book::ColonyCase& record, DoubtedPart part) {
    if (part == DoubtedPart::Bees)
        record.bees.count.reset(), record.bees.coveredCombs.reset(), record.bees.seams.reset();
    if (part == DoubtedPart::Brood) record.bees.broodCells.reset();
    if (part == DoubtedPart::Combs) record.combs = std::monostate();
    if (part == DoubtedPart::Moisture) record.moisturePercent.reset();
    if (part == DoubtedPart::Tare) record.hive.tare.reset();
}

// A weight is not held against an empty weight that cannot be.
std::optional<Mass> possibleTare(const stores::TareQuestion& parts, std::optional<Mass> tare,
                                 const ModelConstants& constants) {
    const auto doubt = tare ? stores::doubtOfTare(*tare, parts, constants) : std::nullopt;
    return doubt && doubt->impossible ? std::nullopt : tare;
}

} // namespace

namespace {

//! An empty weight that is possible and not likely.
std::optional<stores::Doubt> unlikelyTare(const book::ColonyCase& record, const ReferenceData& reference) {
    const auto& hive = record.hive;
    if (!hive.tare || hive.boxes.empty() || !unknownFormats(record, {}, reference).empty()) return std::nullopt;
    auto doubt = stores::doubtOfTare(*hive.tare, partsOf(record, reference), reference.constants);
    return doubt && doubt->impossible ? std::nullopt : doubt;
}

} // namespace

stores::HiveBounds boundsOfCase(const book::ColonyCase& record, const ReferenceData& reference) {
    const auto parts = partsOf(record, reference);
    return stores::boundsOf(parts, possibleTare(parts, record.hive.tare, reference.constants), reference.constants);
}

Remark setAsideRemark(const stores::Doubt& doubt, std::string record, Date day) {
    Remark remark = doubt.says;
    remark.details["record"] = std::move(record);
    remark.details["recorded"] = day;
    return remark;
}

BelievedCase believed(book::ColonyCase record, const ReferenceData& reference, const std::vector<HiveChange>& changes) {
    auto aside = doubtsOf(record, reference, changes);
    std::erase_if(aside, [](const DoubtedRecord& each) { return each.sure && !each.doubt.impossible; });
    BelievedCase result{std::move(record), {}};
    for (const Date day : result.record.weighedInOtherHive)
        result.setAside.push_back(setAsideRemark({false, {"doubt-other-hive", {}}}, "weighing", day));
    for (const auto& each : aside) {
        result.setAside.push_back(setAsideRemark(each.doubt, nameOf(each.part), each.day));
        leaveOutOfLook(result.record, each.part);
    }
    leaveOut(result.record.weighings, DoubtedPart::Weighing, aside);
    leaveOut(result.record.feeds, DoubtedPart::Feed, aside);
    leaveOut(result.record.harvests, DoubtedPart::Harvest, aside);
    return result;
}

Problems impossibleRecords(const book::ColonyCase& record, const exchange::CasePlaces& places,
                           const ReferenceData& reference, const DoubtInWords& inWords) {
    Problems problems;
    for (const auto& each : doubtsOf(record, reference))
        if (each.doubt.impossible) problems.push_back(inWords(each.doubt, places.of(each.path), record));
    return problems;
}

Problems askedOfCase(const book::ColonyCase& record, const exchange::CasePlaces& places, const ReferenceData& reference,
                     const DoubtInWords& inWords) {
    const auto doubt = record.sure ? std::nullopt : unlikelyTare(record, reference);
    if (!doubt) return {};
    return {inWords(*doubt, places.of("hive.tare_kg"), record)};
}

book::ColonyCase caseToWrite(book::ColonyCase record, const ReferenceData& reference) {
    const auto doubts = doubtsOf(record, reference);
    const bool allSaid = std::all_of(doubts.begin(), doubts.end(), [](const DoubtedRecord& each) { return each.sure; });
    if (allSaid && unlikelyTare(record, reference)) record.sure = true;
    return record;
}

} // namespace winterlarder::answer
