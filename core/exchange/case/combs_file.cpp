// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/combs_file.h"

#include "exchange/case/case_reader.h"
#include "exchange/case/hive_room.h"
#include "exchange/json/json_output.h"

#include <fmt/format.h>

namespace winterlarder::exchange {
namespace {

bool holdsOnlyCombs(const JsonValue& whole) {
    return whole.kind == JsonValue::Kind::Object && whole.members.size() == 1 && whole.members.front().name == "combs";
}

} // namespace

Outcome<book::CombsRecord> readCombsFile(std::string_view text, const std::string& file, const book::HiveRecord& hive,
                                         const ReferenceData& reference) {
    auto reading = readJson(text, file);
    if (!reading.value) return reading.problems;
    CaseContext context(reference, file);
    context.problems() = reading.problems;
    const JsonValue& combs = holdsOnlyCombs(*reading.value) ? reading.value->members.front().value : *reading.value;
    auto record = readCombs(combs, context);
    const int places = placesOf(hive, reference);
    if (const double listed = combsSaid(record); listed > places)
        context.fault(combs.position,
                      fmt::format("{} combs are listed, but the hive has {} places", shortestNumber(listed), places),
                      "at most one comb a place");
    if (auto fault = superFault(record, hive, context.places(), reference))
        context.problems().push_back(*std::move(fault));
    if (context.faults() > 0) return context.problems();
    return record;
}

} // namespace winterlarder::exchange
