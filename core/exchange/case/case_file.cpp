// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_file.h"

#include "exchange/case/case_reader.h"
#include "exchange/json/json_output.h"

#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

void readWhole(const JsonValue& value, CaseContext& context, CaseReading& reading) {
    book::ColonyCase record{.asOf = *Date::of(2000, 9, 15)}; // any day
    ObjectReader whole(value, "", context);
    context.begin(whole, record);
    checkKeys(whole, record);
    CaseReader reader(whole);
    describe(reader, record);
    checkValues(whole, record);
    whole.finish();
    if (!whole.sound("as_of")) return;
    reading.record = std::move(record);
    reading.datesSound = whole.sound("site") && (whole.sound("season") || !whole.has("season"));
}

} // namespace

const JsonValue* CaseReader::notTooLong(std::string_view key) {
    const JsonValue* list = object_.list(key);
    if (!list || list->items.size() <= limits::listMembers) return list;
    object_.context().fault(list->position, fmt::format("{} has {} members", inQuotes(key), list->items.size()),
                            fmt::format("at most {}", limits::listMembers));
    return nullptr;
}

void CaseReader::list(std::string_view key, std::vector<book::BoxRecord>& boxes) {
    book::BoxRecord usual;
    describeFormat(*this, "hive.format", usual.format);
    const JsonValue* written = object_.ask(key);
    if (!written || written->kind != JsonValue::Kind::List) {
        object_.demand("format", formatRemedy);
        boxes.assign(static_cast<std::size_t>(object_.value<int>("hive.boxes").value_or(1)), usual);
        return;
    }
    CaseContext& context = object_.context();
    const double most = context.limits("hive.boxes").maximum.value_or(12);
    if (written->items.empty() || static_cast<double>(written->items.size()) > most)
        return context.fault(written->position, fmt::format("{} boxes are listed", written->items.size()),
                             fmt::format("from 1 to {} boxes", shortestNumber(most)));
    boxes = readItems(*written, object_.pathOf(key), usual, context);
}

book::CombsRecord readCombs(const JsonValue& value, CaseContext& context) {
    if (value.kind == JsonValue::Kind::List) return readItems(value, "combs", book::CombRecord(), context);
    if (value.kind == JsonValue::Kind::Object) {
        book::QuickCountColumns quick;
        readRecord(value, "combs", quick, context);
        return quickCountOf(quick);
    }
    context.wrongType(value, "combs",
                      "a list of combs, or {\"full_of_stores\": ..., \"half\": ..., \"capped_share\": ...}");
    return std::monostate();
}

Place CasePlaces::of(std::string_view path) const {
    for (std::string_view part = path;;) {
        if (const auto found = byPath.find(part); found != byPath.end())
            return {file, found->second.line, found->second.column};
        if (part.empty()) return {file, 0, 0};
        const auto cut = part.find_last_of(".[");
        part = cut == std::string_view::npos ? std::string_view() : part.substr(0, cut);
    }
}

CaseReading readCaseWithPlaces(std::string_view text, std::string file, const ReferenceData& reference, int firstLine) {
    CaseReading reading;
    if (text.size() > limits::caseText.bytes) {
        reading.problems = {limits::tooLarge({std::move(file), firstLine, 1}, limits::caseText)};
        return reading;
    }
    JsonReading json = readJson(text, file, firstLine);
    CaseContext context(reference, std::move(file));
    if (json.value && json.value->kind != JsonValue::Kind::Object)
        context.fault(json.value->position, fmt::format("a case is {}", name(json.value->kind)), "one JSON object");
    else if (json.value) readWhole(*json.value, context, reading);
    reading.problems = std::move(context.problems());
    reading.problems.insert(reading.problems.end(), json.problems.begin(), json.problems.end());
    sortByPlace(reading.problems);
    reading.places = std::move(context.places());
    return reading;
}

Outcome<book::ColonyCase> readCase(std::string_view text, std::string file, const ReferenceData& reference) {
    CaseReading reading = readCaseWithPlaces(text, std::move(file), reference);
    if (!reading.problems.empty()) return reading.problems;
    return std::move(*reading.record);
}

} // namespace winterlarder::exchange
