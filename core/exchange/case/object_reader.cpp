// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/object_reader.h"

#include "calendar/other_date_forms.h"
#include "exchange/json/json_output.h"
#include "exchange/json/suggestion.h"
#include "support/letters.h"
#include "support/require.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>

namespace winterlarder::exchange {

namespace {

std::string unitOf(const FieldLimits& field) { return field.unit.empty() || field.unit == "1" ? "" : " " + field.unit; }

std::string allowed(const FieldLimits& field) {
    const std::string sort = field.type == "integer" ? "a whole number" : "a number";
    if (field.minimum && field.maximum)
        return fmt::format("{} from {} to {}{}", sort, shortestNumber(*field.minimum), shortestNumber(*field.maximum),
                           unitOf(field));
    if (field.minimum) return fmt::format("{} of at least {}{}", sort, shortestNumber(*field.minimum), unitOf(field));
    if (field.maximum) return fmt::format("{} of at most {}{}", sort, shortestNumber(*field.maximum), unitOf(field));
    return sort;
}

bool within(const FieldLimits& field, double number) {
    return (!field.minimum || number >= *field.minimum) && (!field.maximum || number <= *field.maximum);
}

constexpr std::array<std::string_view, 7> weekdayNames{"monday", "tuesday",  "wednesday", "thursday",
                                                       "friday", "saturday", "sunday"};

// A name of at least three letters ("sat", "Saturday"), or nothing.
std::optional<int> weekdayNamed(std::string_view written) {
    const std::string text = lowered(written);
    for (std::size_t i = 0; i < weekdayNames.size(); ++i)
        if (text.size() >= 3 && weekdayNames[i].substr(0, text.size()) == text) return static_cast<int>(i) + 1;
    return std::nullopt;
}

} // namespace

void CaseContext::fault(Position position, std::string detail, std::string remedy) {
    problems_.push_back(
        {ProblemKind::Input, {places_.file, position.line, position.column}, std::move(detail), std::move(remedy)});
}

const FieldLimits& CaseContext::limits(std::string_view field) const {
    const FieldLimits* limits = reference_.field(field);
    require(limits != nullptr, "the data dictionary has no field {}", field);
    return *limits;
}

void CaseContext::wrongType(const JsonValue& value, std::string_view what, std::string_view wanted) {
    fault(value.position, fmt::format("{} is {}", inQuotes(what), name(value.kind)), std::string(wanted));
}

std::optional<double> CaseContext::checkedNumber(const JsonValue& value, std::string_view field) {
    const FieldLimits& bounds = limits(field);
    if (value.kind != JsonValue::Kind::Number) {
        wrongType(value, keyOf(field), allowed(bounds));
        return std::nullopt;
    }
    const bool whole = bounds.type != "integer" || value.number == std::floor(value.number);
    if (std::isfinite(value.number) && whole && within(bounds, value.number)) return value.number + 0.0;
    fault(value.position, fmt::format("{} is {}", inQuotes(keyOf(field)), shortestNumber(value.number)),
          allowed(bounds));
    return std::nullopt;
}

std::optional<Date> CaseContext::checkedDate(const JsonValue& value, std::string_view field) {
    if (value.kind != JsonValue::Kind::Text) {
        wrongType(value, keyOf(field), "a date as YYYY-MM-DD in double quotes");
        return std::nullopt;
    }
    const auto date = Date::parse(value.text);
    if (date) return date;
    fault(value.position, fmt::format("{} is {}, which is not a date", inQuotes(keyOf(field)), inQuotes(value.text)),
          dateMeant(value.text));
    return std::nullopt;
}

std::optional<std::string> CaseContext::checkedText(const JsonValue& value, std::string_view field) {
    if (value.kind == JsonValue::Kind::Text && value.text.size() > static_cast<std::size_t>(limits::textCharacters)) {
        fault(value.position, fmt::format("{} has {} bytes", inQuotes(keyOf(field)), value.text.size()),
              fmt::format("at most {}", limits::textCharacters));
        return std::nullopt;
    }
    if (value.kind == JsonValue::Kind::Text && !value.text.empty()) return value.text;
    if (value.kind == JsonValue::Kind::Text)
        fault(value.position, fmt::format("{} is empty", inQuotes(keyOf(field))), "a text, or leave the key out");
    else wrongType(value, keyOf(field), "a text in double quotes");
    return std::nullopt;
}

std::optional<bool> CaseContext::checkedFlag(const JsonValue& value, std::string_view field) {
    if (value.kind == JsonValue::Kind::Flag) return value.flag;
    wrongType(value, keyOf(field), "true or false, without quotes");
    return std::nullopt;
}

std::optional<std::string> CaseContext::checkedWord(const JsonValue& value, std::string_view field,
                                                    const std::vector<std::string>& words) {
    const auto word = checkedText(value, field);
    if (!word || std::find(words.begin(), words.end(), *word) != words.end()) return word;
    fault(value.position, fmt::format("{} is {}", inQuotes(keyOf(field)), inQuotes(*word)), suggestion(*word, words));
    return std::nullopt;
}

std::optional<int> CaseContext::checkedWeekday(const JsonValue& value, std::string_view field) {
    if (value.kind != JsonValue::Kind::Text) return checked<int>(value, field);
    const auto day = weekdayNamed(value.text);
    if (!day)
        fault(value.position, fmt::format("{} is not a weekday", inQuotes(value.text)),
              "Monday to Sunday, or 1 (Monday) to 7 (Sunday)");
    return day;
}

std::optional<std::vector<int>> CaseContext::checkedWeekdays(const JsonValue& value, std::string_view field) {
    if (value.kind != JsonValue::Kind::List) {
        wrongType(value, keyOf(field), name(JsonValue::Kind::List));
        return std::nullopt;
    }
    std::vector<int> days;
    for (const JsonValue& item : value.items) {
        const auto day = checkedWeekday(item, field);
        if (!day) continue;
        if (std::find(days.begin(), days.end(), *day) != days.end())
            fault(item.position, "the same weekday is given twice", "each weekday once");
        else days.push_back(*day);
    }
    return days;
}

void CaseContext::begin(const ObjectReader& whole, const book::ColonyCase& record) {
    whole_ = &whole;
    record_ = &record;
}

std::optional<Date> CaseContext::asOf() const {
    return whole_ && whole_->sound("as_of") ? std::optional(record_->asOf) : std::nullopt;
}

std::optional<Winter> CaseContext::winter() const {
    if (!asOf() || !whole_->sound("site")) return std::nullopt;
    return Winter::containing(record_->asOf, hemisphereOf(latitudeOf(record_->site, reference_).value()));
}

ObjectReader::ObjectReader(const JsonValue& object, std::string path, CaseContext& context)
    : object_(object), path_(std::move(path)), context_(context) {
    require(object.kind == JsonValue::Kind::Object, "{} is not an object", path_);
    context_.remember(path_, object.position);
}

std::string ObjectReader::pathOf(std::string_view key) const {
    return path_.empty() ? std::string(key) : fmt::format("{}.{}", path_, key);
}

const JsonMember* ObjectReader::member(std::string_view key) const {
    for (const JsonMember& candidate : object_.members)
        if (candidate.name == key) return &candidate;
    return nullptr;
}

const JsonValue* ObjectReader::find(std::string_view key) {
    const JsonMember* found = member(key);
    if (!found) return nullptr;
    context_.remember(pathOf(key), found->value.position);
    return &found->value;
}

const JsonValue* ObjectReader::ask(std::string_view key) {
    if (!listed(known_, key)) known_.emplace_back(key);
    return listed(passedOver_, key) ? nullptr : find(key);
}

const JsonValue* ObjectReader::demand(std::string_view key, std::string_view remedy) {
    const JsonValue* value = find(key);
    if (!value)
        context_.fault(object_.position, fmt::format("the key {} is missing", inQuotes(key)), std::string(remedy));
    return value;
}

Position ObjectReader::keyPosition(std::string_view key) const {
    const JsonMember* found = member(key);
    return found ? found->position : object_.position;
}

const JsonValue* ObjectReader::ofKind(std::string_view key, JsonValue::Kind kind) {
    const JsonValue* value = ask(key);
    if (!value || value->kind == kind) return value;
    context_.wrongType(*value, key, name(kind));
    return nullptr;
}

std::vector<const JsonValue*> ObjectReader::values(std::string_view key, std::size_t least, std::size_t most,
                                                   std::string_view inWords) {
    std::vector<const JsonValue*> values;
    const JsonValue* written = ask(key);
    if (written && written->kind != JsonValue::Kind::List && least == 1) return {written};
    const JsonValue* items = list(key);
    if (!items) return values;
    const std::size_t size = items->items.size();
    if (size < least || size > most)
        context_.fault(items->position, fmt::format("{} has {} values", inQuotes(key), size), std::string(inWords));
    else
        for (const JsonValue& item : items->items) values.push_back(&item);
    return values;
}

bool ObjectReader::listed(const std::vector<std::string>& keys, std::string_view key) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

bool ObjectReader::oneOf(const std::vector<std::string_view>& keys, Need need, std::string_view remedy) {
    std::vector<const JsonMember*> written;
    for (std::string_view key : keys) {
        find(key);
        if (const JsonMember* found = member(key)) written.push_back(found);
    }
    for (std::size_t i = 1; i < written.size(); ++i)
        context_.fault(written[i]->position,
                       fmt::format("{} is given beside {} at {}:{}", inQuotes(written[i]->name),
                                   inQuotes(written[0]->name), written[0]->position.line, written[0]->position.column),
                       std::string(remedy));
    if (written.empty() && need == Need::One) {
        std::string list;
        for (std::string_view key : keys) list += (list.empty() ? "" : ", ") + inQuotes(key);
        context_.fault(object_.position, fmt::format("none of {} is given", list), std::string(remedy));
    }
    return written.size() == 1;
}

void ObjectReader::forbid(std::string_view key, std::string_view because, std::string_view remedy) {
    if (!has(key)) return;
    context_.fault(keyPosition(key), fmt::format("{} {}", inQuotes(key), because), std::string(remedy));
}

void ObjectReader::finish() {
    std::size_t unknown = 0;
    for (const JsonMember& candidate : object_.members)
        if (!listed(known_, candidate.name))
            context_.fault(candidate.position,
                           fmt::format("unknown key {}{}", inQuotes(candidate.name),
                                       path_.empty() ? "" : fmt::format(" in {}", inQuotes(path_))),
                           unknown++ < limits::suggestedKeys ? suggestion(candidate.name, known_) : std::string());
}

} // namespace winterlarder::exchange
