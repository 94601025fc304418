// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/program.h"

#include "calendar/date.h"
#include "exchange/json/json_output.h"

#include <algorithm>
#include <cmath>
#include <regex>

//! Conditions on JSON answers, as tests/advice_cases writes them. A condition stands behind the KEY of what it is about:
//! a path ("feed.visits[*].syrup_l": all; "cautions[0].id": one, -1 the last; "options[name=take_now].amount_kg": the first that matches;
//! "feed.visits[*kind=syrup]": all that match; "cautions.length"; "*": the whole answer; "$1.feed": of the second answer of the line),
//! or paths and numbers joined by " + " and " - " (two dates: the days between them).
//! CONDITION: {"is", "in", "not_in", "min", "max", "null", "multiple_of" (within 0.01), "has", "lacks" (lists), "each_min", "each_max",
//! "unique", "text_has", "text_lacks" (regular expressions), "or_null": what is missing is fine too}. Several in one object must all hold.
namespace winterlarder::testing {

using exchange::JsonValue;
using Kind = JsonValue::Kind;

inline std::string asText(const JsonValue& value) {
    switch (value.kind) {
    case Kind::Null: return "null";
    case Kind::Flag: return value.flag ? "true" : "false";
    case Kind::Number: return exchange::shortestNumber(value.number);
    case Kind::Text: return exchange::Json(value.text).compact();
    case Kind::List: {
        std::string all;
        for (const auto& item : value.items) all += (all.empty() ? "" : ", ") + asText(item);
        return "[" + all + "]";
    }
    case Kind::Object: break;
    }
    std::string all;
    for (const auto& member : value.members)
        all += (all.empty() ? "" : ", ") + exchange::Json(member.name).compact() + ": " + asText(member.value);
    return "{" + all + "}";
}

inline JsonValue numberValue(double number) {
    JsonValue value;
    value.kind = Kind::Number;
    value.number = number;
    return value;
}

//! One step of a path: a name, and what stands in brackets behind it.
struct PathStep {
    std::string name;
    std::optional<std::string> index;
};

//! Steps are cut at dots outside brackets.
inline std::vector<PathStep> stepsOf(const std::string& path) {
    std::vector<PathStep> steps;
    static const std::regex step(R"(([A-Za-z_0-9]*)(?:\[([^\]]*)\])?(?:\.|$))");
    for (std::sregex_iterator found(path.begin(), path.end(), step), end; found != end; ++found)
        if (!found->str().empty())
            steps.push_back({(*found)[1].str(), (*found)[2].matched ? std::optional((*found)[2].str()) : std::nullopt});
    return steps;
}

//! What a path leads to; nothing where it is missing or null.
using Found = std::optional<JsonValue>;

inline bool has(const JsonValue& item, const std::string& keyAndValue) {
    const auto equals = keyAndValue.find('=');
    const JsonValue* value = memberOf(item, keyAndValue.substr(0, equals));
    return value && (value->kind == Kind::Text ? value->text : asText(*value)) == keyAndValue.substr(equals + 1);
}

inline Found walk(const JsonValue& from, const std::vector<PathStep>& steps, std::size_t next = 0);

inline Found throughAll(const JsonValue& list, const std::string& filter, const std::vector<PathStep>& steps,
                        std::size_t next) {
    JsonValue all;
    all.kind = Kind::List;
    for (const auto& item : list.items) {
        if (!filter.empty() && !has(item, filter)) continue;
        const bool counts = next < steps.size() && steps[next].name == "length";
        if (const Found inner = counts ? Found(item) : walk(item, steps, next)) all.items.push_back(*inner);
    }
    if (next < steps.size() && steps[next].name == "length") return numberValue(static_cast<double>(all.items.size()));
    return all;
}

inline const JsonValue* one(const JsonValue& list, const std::string& index) {
    if (index.find('=') != std::string::npos) {
        for (const auto& item : list.items)
            if (has(item, index)) return &item;
        return nullptr;
    }
    const long count = static_cast<long>(list.items.size());
    const long at = std::stol(index) < 0 ? count + std::stol(index) : std::stol(index);
    return at >= 0 && at < count ? &list.items[static_cast<std::size_t>(at)] : nullptr;
}

inline Found walk(const JsonValue& from, const std::vector<PathStep>& steps, std::size_t next) {
    if (from.kind == Kind::Null) return std::nullopt;
    if (next == steps.size()) return from;
    const PathStep& step = steps[next];
    if (step.name == "length" && from.kind == Kind::List) return numberValue(static_cast<double>(from.items.size()));
    const JsonValue* value = step.name.empty()           ? &from
                             : from.kind == Kind::Object ? memberOf(from, step.name)
                                                         : nullptr;
    if (!value || value->kind == Kind::Null) return std::nullopt;
    if (!step.index) return walk(*value, steps, next + 1);
    if (value->kind != Kind::List) return std::nullopt;
    if (step.index->starts_with("*")) return throughAll(*value, step.index->substr(1), steps, next + 1);
    const JsonValue* item = one(*value, *step.index);
    return item ? walk(*item, steps, next + 1) : std::nullopt;
}

inline Found atPath(const std::string& path, const std::vector<JsonValue>& answers, std::size_t mine) {
    if (path == "*") return answers.at(mine);
    if (path.starts_with("$")) return atPath(path.substr(path.find('.') + 1), answers, std::stoul(path.substr(1)));
    return walk(answers.at(mine), stepsOf(path));
}

inline std::optional<Date> dateOf(const JsonValue& value) {
    return value.kind == Kind::Text ? Date::parse(value.text) : std::nullopt;
}

//! A number with its sign, or a date with it.
inline Found reckoned(const std::vector<std::pair<double, JsonValue>>& terms) {
    if (terms.size() == 2 && terms[1].first < 0) {
        const auto later = dateOf(terms[0].second), earlier = dateOf(terms[1].second);
        if (later && earlier) return numberValue(later->daysSince(*earlier));
    }
    double sum = 0;
    for (const auto& [sign, term] : terms) {
        if (term.kind != Kind::Number) return std::nullopt;
        sum += sign * term.number;
    }
    return numberValue(sum);
}

inline Found valueOf(const std::string& key, const std::vector<JsonValue>& answers, std::size_t mine) {
    static const std::regex sign(" ([+-]) ");
    if (!std::regex_search(key, sign)) return atPath(key, answers, mine);
    std::vector<std::pair<double, JsonValue>> terms;
    double next = 1;
    for (std::sregex_token_iterator part(key.begin(), key.end(), sign, {-1, 1}), end; part != end; ++part) {
        const std::string text = *part;
        if (text == "+" || text == "-") {
            next = text == "+" ? 1 : -1;
            continue;
        }
        const bool plain = text.find_first_not_of("0123456789.") == std::string::npos;
        const Found term = plain ? numberValue(std::stod(text)) : atPath(text, answers, mine);
        if (!term) return std::nullopt;
        terms.emplace_back(next, *term);
    }
    return reckoned(terms);
}

// ---- conditions -------------------------------------------------------------------------------------------------------

//! Words of states may be written with dashes or with underscores.
inline std::string withDashes(std::string text) {
    std::replace(text.begin(), text.end(), '_', '-');
    return text;
}

inline bool same(const JsonValue& a, const JsonValue& b) {
    if (a.kind != b.kind) return false;
    if (a.kind == Kind::Text) return withDashes(a.text) == withDashes(b.text);
    return a.kind == Kind::Number ? std::abs(a.number - b.number) < 1e-6 : asText(a) == asText(b);
}

//! a - b of numbers, or days between dates; not a number where they cannot be compared, so that no order holds.
inline double difference(const JsonValue& a, const JsonValue& b) {
    if (a.kind == Kind::Number && b.kind == Kind::Number) return a.number - b.number;
    const auto first = dateOf(a), second = dateOf(b);
    return first && second ? first->daysSince(*second) : std::nan("");
}
inline bool notBelow(const JsonValue& a, const JsonValue& b) { return difference(a, b) >= -1e-9; }
inline bool notAbove(const JsonValue& a, const JsonValue& b) { return difference(a, b) <= 1e-9; }

inline bool among(const JsonValue& list, const JsonValue& wanted) {
    return std::any_of(list.items.begin(), list.items.end(), [&](const JsonValue& item) { return same(item, wanted); });
}
template <class Test> bool each(const JsonValue& list, Test test) {
    return list.kind == Kind::List && std::all_of(list.items.begin(), list.items.end(), test);
}
//! The thing asked for, or all of the list of them.
template <class Test> bool everyWanted(const JsonValue& wanted, Test test) {
    return wanted.kind == Kind::List ? each(wanted, test) : test(wanted);
}

//! Texts as they are, line by line; anything else as JSON.
inline std::string shownText(const JsonValue& value) {
    if (value.kind == Kind::Text) return value.text;
    if (value.kind != Kind::List) return asText(value);
    std::string all;
    for (const auto& item : value.items) all += (all.empty() ? "" : "\n") + shownText(item);
    return all;
}
inline bool matches(const JsonValue& value, const std::string& pattern) {
    const bool anyCase = pattern.starts_with("(?i)");
    const auto how = anyCase ? std::regex::ECMAScript | std::regex::icase : std::regex::ECMAScript;
    return std::regex_search(shownText(value), std::regex(anyCase ? pattern.substr(4) : pattern, how));
}

inline bool holds(const JsonValue& value, const std::string& condition, const JsonValue& wanted) {
    if (condition == "is") return same(value, wanted);
    if (condition == "in") return among(wanted, value);
    if (condition == "not_in") return !among(wanted, value);
    if (condition == "min") return notBelow(value, wanted);
    if (condition == "max") return notAbove(value, wanted);
    if (condition == "multiple_of")
        return value.kind == Kind::Number &&
               std::abs(value.number - wanted.number * std::round(value.number / wanted.number)) <= 0.01;
    if (condition == "has")
        return value.kind == Kind::List && everyWanted(wanted, [&](const JsonValue& one) { return among(value, one); });
    if (condition == "lacks")
        return value.kind == Kind::List &&
               everyWanted(wanted, [&](const JsonValue& one) { return !among(value, one); });
    if (condition == "each_min") return each(value, [&](const JsonValue& one) { return notBelow(one, wanted); });
    if (condition == "each_max") return each(value, [&](const JsonValue& one) { return notAbove(one, wanted); });
    if (condition == "text_has") return matches(value, wanted.text);
    if (condition == "text_lacks") return !matches(value, wanted.text);
    if (condition == "unique") {
        std::vector<std::string> texts;
        for (const auto& item : value.items) texts.push_back(asText(item));
        std::sort(texts.begin(), texts.end());
        return value.kind == Kind::List &&
               (std::adjacent_find(texts.begin(), texts.end()) == texts.end()) == wanted.flag;
    }
    throw std::runtime_error("no condition " + condition);
}

inline bool meets(const Found& value, const JsonValue& conditions) {
    const JsonValue* null = memberOf(conditions, "null");
    const JsonValue* orNull = memberOf(conditions, "or_null");
    if (null && null->flag == value.has_value()) return false;
    if (!value) return (null && null->flag) || (orNull && orNull->flag);
    return std::all_of(conditions.members.begin(), conditions.members.end(), [&](const exchange::JsonMember& said) {
        return said.name == "null" || said.name == "or_null" || holds(*value, said.name, said.value);
    });
}

//! The conditions an answer does not meet, each with what was seen; a refused case meets none.
inline std::vector<std::string> unmet(const JsonValue& expected, const std::vector<JsonValue>& answers,
                                      std::size_t mine) {
    if (const JsonValue* faults = memberOf(answers.at(mine), "faults")) return {"refused: " + asText(*faults)};
    std::vector<std::string> failed;
    for (const auto& condition : expected.members) {
        const Found value = valueOf(condition.name, answers, mine);
        if (!meets(value, condition.value))
            failed.push_back(condition.name + " " + asText(condition.value) + ": " +
                             (value ? asText(*value).substr(0, 160) : "missing"));
    }
    return failed;
}

} // namespace winterlarder::testing
