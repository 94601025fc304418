// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/case_rules.h"

#include "book/entries/plain_text.h"
#include "exchange/case/hive_room.h"
#include "exchange/json/json_output.h"
#include "exchange/json/suggestion.h"
#include "support/as_number.h"

#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

// Rounding of ten shares written with a few decimals never adds up to more.
constexpr double shareTolerance = 1e-9;
constexpr std::string_view caseRemedy = "\"case\": 1, the only form of case file there is";

void checkForm(ObjectReader& whole) {
    whole.demand("case", caseRemedy);
    const JsonValue* form = whole.ask("case");
    if (!form) return;
    if (form->kind != JsonValue::Kind::Number) whole.context().wrongType(*form, "case", caseRemedy);
    else if (form->number != caseFileForm)
        whole.context().fault(form->position, fmt::format("\"case\" is {}", shortestNumber(form->number)),
                              std::string(caseRemedy));
}

void demandDate(ObjectReader& object) { object.demand("date", "the day as YYYY-MM-DD"); }

enum class Recorded { Event, Observation };
// A fault where a record is later than as_of, or an observation older than the oldest that still speaks.
void checkRecorded(ObjectReader& object, std::string_view key, Date date, Recorded what) {
    CaseContext& context = object.context();
    const auto asOf = context.asOf();
    if (!asOf || !object.sound(key)) return;
    const int age = asOf->daysSince(date);
    const Place place = context.places().of("as_of");
    const std::string day = fmt::format("\"as_of\" {} at {}:{}", asOf->iso(), place.line, place.column);
    const Position position = object.find(key)->position;
    if (age < 0)
        context.fault(position, fmt::format("{} {} is later than {}", inQuotes(key), date.iso(), day),
                      "a day not later than as_of");
    else if (what == Recorded::Observation && age > oldestObservationDays)
        context.fault(
            position, fmt::format("{} {} is {} days before {}", inQuotes(key), date.iso(), age, day),
            fmt::format("at most {} days before as_of: look again, or ask for an earlier day", oldestObservationDays));
}

// What each kind of feed is measured by; every other measure is a fault.
void checkFeedMeasures(ObjectReader& feed, book::FeedKind kind) {
    if (kind == book::FeedKind::Syrup) {
        feed.oneOf({"sugar_kg", "syrup_l"}, ObjectReader::Need::One,
                   "syrup is given as sugar_kg, or as syrup_l with its ratio");
        feed.forbid("fondant_kg", "does not go with syrup", "sugar_kg, or syrup_l with its ratio");
        if (feed.has("syrup_l")) feed.demand("ratio", "sugar to water by mass, such as \"3:2\"");
        return;
    }
    const bool fondant = kind == book::FeedKind::Fondant;
    const std::string_view wanted = fondant ? "fondant_kg" : "sugar_kg";
    feed.demand(wanted, "the kilograms given");
    for (std::string_view other : {"sugar_kg", "fondant_kg", "syrup_l", "ratio"})
        if (other != wanted)
            feed.forbid(other, fondant ? "does not go with fondant" : "does not go with dry sugar",
                        fmt::format("{} alone", wanted));
}

bool readNumber(std::string_view text) {
    for (char c : text)
        if ((c < '0' || c > '9') && c != '.') return false;
    const auto number = asNumber<double>(text);
    return number && *number > 0 && *number <= 1000;
}

void checkName(ObjectReader& whole, std::string_view key, std::optional<std::string>& name) {
    const auto characters = name ? static_cast<std::int64_t>(book::characters(*name)) : 0;
    if (characters <= limits::nameCharacters) return;
    whole.context().fault(whole.find(key)->position, fmt::format("{} has {} characters", inQuotes(key), characters),
                          fmt::format("at most {}", limits::nameCharacters));
}

// "fed_after_look" says it of every feed of that day which does not say it itself.
void feedsCameAfterTheLook(book::ColonyCase& record) {
    for (book::FeedRecord& feed : record.feeds)
        if (feed.date == record.lookedOn.value_or(record.asOf) && !feed.afterLook) feed.afterLook = true;
}

// An answer that belongs to a part of the case may as well stand at its top, but not in both places.
template <class T>
void answerAtTop(ObjectReader& whole, std::string_view field, std::string_view part, std::optional<T>& answer) {
    const auto atTop = whole.value<T>(field);
    if (atTop && answer)
        whole.context().fault(whole.keyPosition(keyOf(field)),
                              fmt::format("\"{}\" is given here and in \"{}\"", keyOf(field), part), "one of the two");
    if (atTop) answer = atTop;
}

} // namespace

void checkKeys(ObjectReader& object, const book::ColonyCase&) {
    checkForm(object);
    object.demand("as_of", "the day the question is asked, as YYYY-MM-DD");
    object.demand("site", "where the bees stand: {\"station\": ...}");
    object.demand("hive", "the hive: {\"format\": ..., \"boxes\": ...}");
}

void checkValues(ObjectReader& object, book::ColonyCase& record) {
    checkName(object, "colony", record.colony);
    checkName(object, "yard", record.yard);
    if (record.lookedOn) checkRecorded(object, "looked_on", *record.lookedOn, Recorded::Observation);
    if (!record.moisturePercent) record.moisturePercent = object.context().moistureOfWeighings;
    if (object.value<bool>("fed_after_look").value_or(false)) feedsCameAfterTheLook(record);
    answerAtTop(object, "hive.supers_for", "hive", record.hive.supersFor);
    answerAtTop(object, "wish.visits_in_winter", "wish", record.wish.visitsInWinter);
    for (Problem& problem :
         hiveFaults(record, object.context().places(), object.sound("hive") ? &object.context().reference() : nullptr))
        object.context().problems().push_back(std::move(problem));
}

void checkKeys(ObjectReader& object, const book::OwnFormatColumns&) {
    for (std::string_view key : {"comb_width_mm", "comb_height_mm", "combs_per_box", "pitch_mm"})
        object.demand(key, "own measures need comb_width_mm, comb_height_mm, combs_per_box and pitch_mm");
}

void checkFormat(ObjectReader& object, const std::string& id) {
    if (object.context().reference().format(id)) return;
    std::vector<std::string> known;
    for (const HiveFormat& format : object.context().reference().formats) known.push_back(format.id);
    object.context().fault(object.find("format")->position, fmt::format("no hive format {}", inQuotes(id)),
                           nearWords(id, known).empty() ? std::string(formatRemedy) : suggestion(id, known));
}

// The empty id: the hive has no format that its boxes could have.
void checkKeys(ObjectReader& object, const book::BoxRecord& usual) {
    if (usual.format == book::FormatChoice(std::string())) object.demand("format", formatRemedy);
}

void checkValues(ObjectReader& object, book::BoxRecord& box) {
    if (box.putOn) checkRecorded(object, "put_on", *box.putOn, Recorded::Event);
}

void checkKeys(ObjectReader& object, const book::BeesRecord&) {
    object.oneOf({"count", "covered_combs", "seams"}, ObjectReader::Need::OneOrNone,
                 "one of count, covered_combs and seams");
}

void checkKeys(ObjectReader& object, const book::QuickCountColumns&) {
    object.demand("full_of_stores", "the number of combs full of stores; a list of combs is the other way to say it");
}

void checkValues(ObjectReader& object, book::CombRecord& comb) {
    if (comb.format) checkFormat(object, *comb.format);
    const double sum =
        comb.capped.value_or(0) + comb.open.value_or(0) + comb.brood.value_or(0) + comb.pollen.value_or(0);
    if (sum > 1 + shareTolerance)
        object.context().fault(object.position(), fmt::format("the shares of {} add up to {:.6g}", object.path(), sum),
                               "capped, open, brood and pollen together at most 1");
}

void checkKeys(ObjectReader& object, const book::WeighingRecord&) {
    demandDate(object);
    object.oneOf({"gross_kg", "lift_kg", "heft"}, ObjectReader::Need::One, "one of gross_kg, lift_kg and heft");
}

void checkValues(ObjectReader& object, book::WeighingRecord& weighing) {
    checkRecorded(object, "date", weighing.date, Recorded::Observation);
    if (const auto moisture = object.value<double>("moisture_percent")) object.context().moistureOfWeighings = moisture;
}

void checkKeys(ObjectReader& object, const book::FeedRecord&) {
    demandDate(object);
    const JsonValue* word = object.demand("kind", "one of syrup, fondant and dry-sugar");
    if (const auto kind = word ? book::choiceOf<book::FeedKind>(word->text) : std::nullopt)
        checkFeedMeasures(object, *kind);
}

void checkValues(ObjectReader& object, book::FeedRecord& feed) {
    checkRecorded(object, "date", feed.date, Recorded::Event);
    if (feed.ratio && !isRatio(*feed.ratio))
        object.context().fault(object.find("ratio")->position, fmt::format("\"ratio\" is {}", inQuotes(*feed.ratio)),
                               "kg of sugar to kg of water, both above 0, such as \"3:2\"");
}

bool isRatio(std::string_view text) {
    const auto colon = text.find(':');
    return colon != std::string_view::npos && readNumber(text.substr(0, colon)) && readNumber(text.substr(colon + 1));
}

void checkKeys(ObjectReader& object, const book::HarvestRecord&) {
    demandDate(object);
    object.demand("kg", "the kilograms of honey taken");
}

void checkValues(ObjectReader& object, book::HarvestRecord& harvest) {
    checkRecorded(object, "date", harvest.date, Recorded::Event);
}

void checkKeys(ObjectReader& object, const book::TreatmentRecord&) { demandDate(object); }

void checkValues(ObjectReader& object, book::TreatmentRecord& treatment) {
    checkRecorded(object, "date", treatment.date, Recorded::Event);
    if (object.sound("date") && treatment.until && *treatment.until < treatment.date)
        object.context().fault(object.find("until")->position,
                               fmt::format("\"until\" {} is before {}", treatment.until->iso(), treatment.date.iso()),
                               "the last day honey is not for people, as the label says");
}

} // namespace winterlarder::exchange
