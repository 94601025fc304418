// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_file.h"

#include "exchange/case/case_sections.h"
#include "exchange/json/json_output.h"

#include <algorithm>
#include <fmt/format.h>
#include <limits>

namespace winterlarder::exchange {

namespace {

constexpr std::string_view caseRemedy = "\"case\": 1, the only form of case file there is";

void readForm(ObjectReader& reader, CaseContext& context) {
    const JsonValue* form = reader.demand("case", caseRemedy);
    if (!form) return;
    if (form->kind != JsonValue::Kind::Number)
        context.wrongType(*form, "case", caseRemedy);
    else if (form->number != caseFileForm)
        context.fault(form->position, fmt::format("\"case\" is {}", shortestNumber(form->number)),
                      std::string(caseRemedy));
}

// Reads an object-valued part with `read`; nothing where it is missing or of another type.
template <class Read> void withObject(ObjectReader& reader, std::string_view key, Read read) {
    if (const JsonValue* value = reader.object(key)) read(*value);
}

// Runs one part and tells whether it added no fault.
template <class Part> bool soundly(CaseContext& context, Part part) {
    const std::size_t before = context.faults();
    part();
    return context.faults() == before;
}

void sortByPlace(Problems& problems) {
    std::stable_sort(problems.begin(), problems.end(), [](const Problem& a, const Problem& b) {
        return std::pair(a.place.line, a.place.column) < std::pair(b.place.line, b.place.column);
    });
}

struct Sound {
    bool asOf = false, site = false, hive = false, season = true;
};

// as_of and site first: every other part is held against them.
Sound readDayAndSite(ObjectReader& reader, book::ColonyCase& record, CaseContext& context) {
    Sound sound;
    sound.asOf = context.asOf.has_value();
    reader.demand("site", "where the bees stand: {\"station\": ...}");
    sound.site = soundly(context, [&] {
        withObject(reader, "site", [&](const JsonValue& value) {
            if (auto site = readSite(value, context)) record.site = std::move(*site);
        });
    });
    sound.site = sound.site && reader.has("site");
    if (sound.site)
        context.winter = Winter::containing(record.asOf, hemisphereOf(latitudeOf(record.site, context.reference()).value()));
    record.lookedOn = reader.date("looked_on");
    if (record.lookedOn) context.checkRecorded(*record.lookedOn, reader.find("looked_on")->position, "looked_on", true);
    return sound;
}

void readHiveAndColony(ObjectReader& reader, book::ColonyCase& record, Sound& sound, CaseContext& context) {
    reader.demand("hive", "the hive: {\"format\": ..., \"boxes\": ...}");
    sound.hive = soundly(context, [&] {
        withObject(reader, "hive", [&](const JsonValue& value) {
            if (auto hive = readHive(value, context)) record.hive = std::move(*hive);
        });
    });
    sound.hive = sound.hive && reader.has("hive");
    withObject(reader, "bees", [&](const JsonValue& value) { record.bees = readBees(value, context); });
    if (const JsonValue* combs = reader.find("combs")) record.combs = readCombs(*combs, context);
    for (Problem& problem : hiveFaults(record, context.places(), sound.hive ? &context.reference() : nullptr))
        context.problems().push_back(std::move(problem));
}

// "fed_after_look" says it of every feed of that day which does not say it itself.
void feedsCameAfterTheLook(book::ColonyCase& record) {
    for (book::FeedRecord& feed : record.feeds)
        if (feed.date == record.lookedOn.value_or(record.asOf) && !feed.afterLook) feed.afterLook = true;
}

void readEvents(ObjectReader& reader, book::ColonyCase& record, CaseContext& context) {
    if (const JsonValue* list = reader.find("weighings"))
        record.weighings = readWeighings(*list, context, record.moisturePercent);
    if (const auto moisture = reader.number("moisture_percent")) record.moisturePercent = moisture;
    if (const JsonValue* list = reader.find("feeds")) record.feeds = readFeeds(*list, context);
    if (const JsonValue* list = reader.find("harvests")) record.harvests = readHarvests(*list, context);
    if (const JsonValue* list = reader.find("treatments")) record.treatments = readTreatments(*list, context);
    if (reader.flag("fed_after_look", false)) feedsCameAfterTheLook(record);
}

// An answer that belongs to a part of the case may as well stand at its top, but not in both places.
template <class T>
void answerAtTop(ObjectReader& reader, std::string_view key, std::string_view part, std::optional<T>& answer, const std::optional<T>& atTop) {
    if (atTop && answer)
        reader.context().fault(reader.keyPosition(key), fmt::format("\"{}\" is given here and in \"{}\"", key, part), "one of the two");
    if (atTop) answer = atTop;
}

void readAnswers(ObjectReader& reader, book::ColonyCase& record) {
    record.honeyKind = reader.choice("honey_kind", honeyWords);
    record.fedOrTreated = reader.flag("fed_or_treated");
    record.fullCombs = reader.number("full_combs");
    record.units = reader.choice("units", unitWords);
    answerAtTop(reader, "supers_for", "hive", record.hive.supersFor, reader.choice("supers_for", supersForWords));
    answerAtTop(reader, "visits_in_winter", "wish", record.wish.visitsInWinter, reader.flag("visits_in_winter"));
}

void readWays(ObjectReader& reader, book::ColonyCase& record, Sound& sound, CaseContext& context) {
    sound.season = soundly(context, [&] {
        withObject(reader, "season", [&](const JsonValue& value) { record.season = readSeason(value, context); });
    });
    withObject(reader, "feeder", [&](const JsonValue& value) { record.feeder = readFeeder(value, context); });
    withObject(reader, "wish", [&](const JsonValue& value) { record.wish = readWish(value, context); });
    withObject(reader, "learned", [&](const JsonValue& value) { record.learned = readLearned(value, context); });
}

book::ColonyCase emptyCase(Date asOf) { return {{}, {}, asOf, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}}; }

// What stands in for as_of while the rest of a case without one is searched for faults.
Date anyDay() { return *Date::of(2000, 9, 15); }

void readWhole(const JsonValue& value, CaseContext& context, CaseReading& reading) {
    ObjectReader reader(value, "", "", context);
    readForm(reader, context);
    reader.demand("as_of", "the day the question is asked, as YYYY-MM-DD");
    context.asOf = reader.date("as_of");
    book::ColonyCase record = emptyCase(context.asOf.value_or(anyDay()));
    record.colony = reader.nameText("colony");
    record.yard = reader.nameText("yard");
    record.sure = reader.flag("sure", false);
    Sound sound = readDayAndSite(reader, record, context);
    if (!sound.asOf) context.winter.reset();
    readHiveAndColony(reader, record, sound, context);
    readEvents(reader, record, context);
    readWays(reader, record, sound, context);
    readAnswers(reader, record);
    reader.finish();
    if (!sound.asOf) return;
    reading.record = std::move(record);
    reading.datesSound = sound.site && sound.season;
}

} // namespace

Place CasePlaces::of(std::string_view path) const {
    for (std::string_view part = path;;) {
        if (const auto found = byPath.find(part); found != byPath.end())
            return {file, found->second.line, found->second.column};
        if (part.empty()) return {file, 0, 0};
        const auto cut = part.find_last_of(".[");
        part = cut == std::string_view::npos ? std::string_view() : part.substr(0, cut);
    }
}

namespace {

std::string shownPlace(const Place& place) { return place.line > 0 ? fmt::format(" at {}:{}", place.line, place.column) : std::string(); }

// The combs said to be there, listed or counted.
double combsSaid(const book::CombsRecord& combs) {
    if (const auto* list = std::get_if<std::vector<book::CombRecord>>(&combs)) return static_cast<double>(list->size());
    const auto* quick = std::get_if<book::QuickCountRecord>(&combs);
    return quick ? quick->fullOfStores + quick->half : 0;
}

Problem coveredFault(const book::ColonyCase& record, const CasePlaces& places, const std::string& room) {
    return {ProblemKind::Input, places.of("bees.covered_combs"),
            fmt::format("\"covered_combs\" is {}, but {}", shortestNumber(*record.bees.coveredCombs), room),
            "combs fully covered on both sides: not more than there are"};
}

} // namespace

Problems roomFaults(const book::ColonyCase& record, const CasePlaces& places, const ReferenceData* reference) {
    Problems problems;
    const double room = reference ? placesOf(record.hive, *reference) : std::numeric_limits<double>::infinity();
    const std::string hive = fmt::format("the hive{} has {} places", shownPlace(places.of("hive")), room);
    if (const double said = combsSaid(record.combs); said > room)
        problems.push_back({ProblemKind::Input, places.of("combs"), fmt::format("{} combs are listed, but {}", shortestNumber(said), hive),
                            "at most one comb a place"});
    if (record.bees.coveredCombs.value_or(0) > room) problems.push_back(coveredFault(record, places, hive));
    return problems;
}

Problems hiveFaults(const book::ColonyCase& record, const CasePlaces& places, const ReferenceData* reference) {
    const auto* list = std::get_if<std::vector<book::CombRecord>>(&record.combs);
    if (!list || record.bees.coveredCombs.value_or(0) <= static_cast<double>(list->size())) return roomFaults(record, places, reference);
    auto counted = record;
    counted.bees.coveredCombs.reset(); // said once, of the combs listed
    Problems problems = roomFaults(counted, places, reference);
    problems.push_back(coveredFault(record, places, fmt::format("{} combs are listed{}", list->size(), shownPlace(places.of("combs")))));
    return problems;
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
    else if (json.value)
        readWhole(*json.value, context, reading);
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
