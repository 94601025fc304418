// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/case/object_reader.h"

#include "book/form/limits.h"
#include "exchange/json/json_output.h"
#include "exchange/json/suggestion.h"
#include "support/require.h"

#include <algorithm>
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

std::optional<double> CaseContext::checkedNumber(const JsonValue& value, std::string_view what,
                                                 std::string_view field) {
    const FieldLimits& bounds = limits(field);
    if (value.kind != JsonValue::Kind::Number) {
        wrongType(value, what, allowed(bounds));
        return std::nullopt;
    }
    const bool whole = bounds.type != "integer" || value.number == std::floor(value.number);
    if (std::isfinite(value.number) && whole && within(bounds, value.number)) return value.number + 0.0;
    fault(value.position, fmt::format("{} is {}", inQuotes(what), shortestNumber(value.number)), allowed(bounds));
    return std::nullopt;
}

std::optional<Date> CaseContext::checkedDate(const JsonValue& value, std::string_view what) {
    if (value.kind != JsonValue::Kind::Text) {
        wrongType(value, what, "a date as YYYY-MM-DD in double quotes");
        return std::nullopt;
    }
    const auto date = Date::parse(value.text);
    if (date) return date;
    fault(value.position, fmt::format("{} is {}, which is not a date", inQuotes(what), inQuotes(value.text)),
          dateForm);
    return std::nullopt;
}

std::optional<std::string> CaseContext::checkedText(const JsonValue& value, std::string_view what) {
    if (value.kind == JsonValue::Kind::Text && value.text.size() > static_cast<std::size_t>(limits::textCharacters)) {
        fault(value.position, fmt::format("{} has {} bytes", inQuotes(what), value.text.size()), fmt::format("at most {}", limits::textCharacters));
        return std::nullopt;
    }
    if (value.kind == JsonValue::Kind::Text && !value.text.empty()) return value.text;
    if (value.kind == JsonValue::Kind::Text)
        fault(value.position, fmt::format("{} is empty", inQuotes(what)), "a text, or leave the key out");
    else
        wrongType(value, what, "a text in double quotes");
    return std::nullopt;
}

std::string CaseContext::placeOf(std::string_view path) const {
    const Place place = places_.of(path);
    return fmt::format("{}:{}", place.line, place.column);
}

void CaseContext::checkRecorded(Date date, Position position, std::string_view what, bool observation) {
    if (!asOf) return;
    const int age = asOf->daysSince(date);
    if (age < 0)
        fault(position,
              fmt::format("{} {} is later than \"as_of\" {} at {}", inQuotes(what), date.iso(), asOf->iso(),
                          placeOf("as_of")),
              "a day not later than as_of");
    else if (observation && age > oldestObservationDays)
        fault(
            position,
            fmt::format("{} {} is {} days before \"as_of\" {} at {}", inQuotes(what), date.iso(), age, asOf->iso(),
                        placeOf("as_of")),
            fmt::format("at most {} days before as_of: look again, or ask for an earlier day", oldestObservationDays));
}

ObjectReader::ObjectReader(const JsonValue& object, std::string path, std::string fields, CaseContext& context)
    : object_(object), path_(std::move(path)), fields_(std::move(fields)), context_(context) {
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
    if (std::find(known_.begin(), known_.end(), key) == known_.end()) known_.emplace_back(key);
    const JsonMember* found = member(key);
    if (!found) return nullptr;
    context_.remember(pathOf(key), found->value.position);
    return &found->value;
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

std::optional<double> ObjectReader::number(std::string_view key) {
    const JsonValue* value = find(key);
    if (!value) return std::nullopt;
    return context_.checkedNumber(*value, key, fields_.empty() ? std::string(key) : fmt::format("{}.{}", fields_, key));
}

std::optional<double> ObjectReader::numberOrNull(std::string_view key) {
    const JsonValue* value = find(key);
    return value && value->kind == JsonValue::Kind::Null ? std::nullopt : number(key);
}

std::optional<int> ObjectReader::integer(std::string_view key) {
    const auto value = number(key);
    return value ? std::optional(static_cast<int>(*value)) : std::nullopt;
}

std::optional<bool> ObjectReader::flag(std::string_view key) {
    const JsonValue* value = find(key);
    if (!value) return std::nullopt;
    if (value->kind == JsonValue::Kind::Flag) return value->flag;
    context_.wrongType(*value, key, "true or false, without quotes");
    return std::nullopt;
}

std::optional<std::string> ObjectReader::text(std::string_view key) {
    const JsonValue* value = find(key);
    return value ? context_.checkedText(*value, key) : std::nullopt;
}

std::optional<std::string> ObjectReader::nameText(std::string_view key) {
    auto name = text(key);
    const auto characters = name ? static_cast<std::int64_t>(book::characters(*name)) : 0;
    if (characters <= limits::nameCharacters) return name;
    context_.fault(find(key)->position, fmt::format("{} has {} characters", inQuotes(key), characters), fmt::format("at most {}", limits::nameCharacters));
    return std::nullopt;
}

std::optional<Date> ObjectReader::date(std::string_view key) {
    const JsonValue* value = find(key);
    return value ? context_.checkedDate(*value, key) : std::nullopt;
}

const JsonValue* ObjectReader::ofKind(std::string_view key, JsonValue::Kind kind) {
    const JsonValue* value = find(key);
    if (!value || value->kind == kind) return value;
    context_.wrongType(*value, key, name(kind));
    return nullptr;
}

std::optional<std::string> ObjectReader::choiceWord(std::string_view key, const std::vector<std::string>& words) {
    const JsonValue* value = find(key);
    if (!value) return std::nullopt;
    const auto word = context_.checkedText(*value, key);
    if (!word) return std::nullopt;
    if (std::find(words.begin(), words.end(), *word) != words.end()) return word;
    context_.fault(value->position, fmt::format("{} is {}", inQuotes(key), inQuotes(*word)), suggestion(*word, words));
    return std::nullopt;
}

bool ObjectReader::oneOf(const std::vector<std::string_view>& keys, bool needed, std::string_view remedy) {
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
    if (written.empty() && needed) {
        std::string list;
        for (std::string_view key : keys)
            list += (list.empty() ? "" : ", ") + inQuotes(key);
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
        if (std::find(known_.begin(), known_.end(), candidate.name) == known_.end())
            context_.fault(candidate.position,
                           fmt::format("unknown key {}{}", inQuotes(candidate.name),
                                       path_.empty() ? "" : fmt::format(" in {}", inQuotes(path_))),
                           unknown++ < limits::suggestedKeys ? suggestion(candidate.name, known_) : std::string());
}

} // namespace winterlarder::exchange
