// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/words.h"
#include "calendar/date.h"
#include "calendar/season_day.h"
#include "exchange/case/case_file.h"
#include "exchange/json/json_tree.h"
#include "reference/reference.h"

#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <vector>

namespace winterlarder::exchange {

//! The key of a field of the data dictionary: the last part of its name, "capped" of "combs.capped".
constexpr std::string_view keyOf(std::string_view field) { return field.substr(field.rfind('.') + 1); }

class ObjectReader;

//! What all parts of a case are read with: limits to hold values against, and the faults and places found so far.
class CaseContext {
public:
    CaseContext(const ReferenceData& reference, std::string file) : reference_(reference) {
        places_.file = std::move(file);
    }
    const ReferenceData& reference() const { return reference_; }
    void fault(Position position, std::string detail, std::string remedy = {});
    void remember(const std::string& path, Position position) { places_.byPath.emplace(path, position); }
    std::size_t faults() const { return problems_.size(); }
    Problems& problems() { return problems_; }
    CasePlaces& places() { return places_; }

    //! Limits of a field of the data dictionary; its absence is a mistake of the program's own files.
    const FieldLimits& limits(std::string_view field) const;
    //! The value as the type of its member; a fault and nothing where it is none. Numbers lie within the field's
    //! limits, whole where it is an integer; texts are not empty; dates are of the years this program knows; choices
    //! are words of book/entries/words.h; a list of whole numbers is one of weekdays, which may be named.
    template <class T> std::optional<T> checked(const JsonValue& value, std::string_view field) {
        if constexpr (std::is_same_v<T, bool>) {
            return checkedFlag(value, field);
        } else if constexpr (std::is_same_v<T, Date>) {
            return checkedDate(value, field);
        } else if constexpr (std::is_same_v<T, std::string>) {
            return checkedText(value, field);
        } else if constexpr (std::is_same_v<T, std::vector<int>>) {
            return checkedWeekdays(value, field);
        } else if constexpr (std::is_enum_v<T>) {
            const auto word = checkedWord(value, field, book::allWords<T>());
            return word ? book::choiceOf<T>(*word) : std::nullopt;
        } else {
            const auto number = checkedNumber(value, field);
            return number ? std::optional(static_cast<T>(*number)) : std::nullopt;
        }
    }
    void wrongType(const JsonValue& value, std::string_view what, std::string_view wanted);

    //! The case that is being read; its records are held against its day and its winter, as soon as those are read.
    void begin(const ObjectReader& whole, const book::ColonyCase& record);
    std::optional<Date> asOf() const;
    std::optional<Winter> winter() const;
    //! Water in the honey [%] that a weighing tells: it is one of the whole case.
    std::optional<double> moistureOfWeighings;

private:
    std::optional<double> checkedNumber(const JsonValue& value, std::string_view field);
    std::optional<bool> checkedFlag(const JsonValue& value, std::string_view field);
    std::optional<Date> checkedDate(const JsonValue& value, std::string_view field);
    std::optional<std::string> checkedText(const JsonValue& value, std::string_view field);
    std::optional<std::string> checkedWord(const JsonValue& value, std::string_view field,
                                           const std::vector<std::string>& words);
    std::optional<int> checkedWeekday(const JsonValue& value, std::string_view field);
    std::optional<std::vector<int>> checkedWeekdays(const JsonValue& value, std::string_view field);

    const ReferenceData& reference_;
    CasePlaces places_;
    Problems problems_;
    const ObjectReader* whole_ = nullptr;
    const book::ColonyCase* record_ = nullptr;
};

//! Reads the members of one object, each key once, and in the end names the keys nobody asked for.
class ObjectReader {
public:
    //! `path` is where the object stands in the case: "site", "combs[2]", "" for the whole.
    ObjectReader(const JsonValue& object, std::string path, CaseContext& context);

    CaseContext& context() { return context_; }
    Position position() const { return object_.position; }
    const std::string& path() const { return path_; }
    std::string pathOf(std::string_view key) const;

    //! The value of a key, nothing where it is not written.
    const JsonValue* find(std::string_view key);
    //! As find, but nothing where the key is passed over. Asking makes the key known: known keys are told in the
    //! order in which they were asked for.
    const JsonValue* ask(std::string_view key);
    //! As find; a fault where the key is missing.
    const JsonValue* demand(std::string_view key, std::string_view remedy);
    //! The key was written, however badly.
    bool has(std::string_view key) { return find(key) != nullptr; }
    //! Where the key was written; the object's own place where it was not.
    Position keyPosition(std::string_view key) const;

    //! The value of a field (CaseContext::checked); nothing where its key is not written, or with a fault.
    template <class T> std::optional<T> value(std::string_view field) {
        const std::string_view key = keyOf(field);
        const JsonValue* written = ask(key);
        if (!written) return std::nullopt;
        auto value = context_.checked<T>(*written, field);
        if (value) sound_.emplace_back(key);
        return value;
    }
    //! The values of a key that holds a list of `least` to `most` of them, or the only one where one is enough; else
    //! a fault and none.
    std::vector<const JsonValue*> values(std::string_view key, std::size_t least, std::size_t most,
                                         std::string_view inWords);
    //! The key's object or list; a fault and nothing where it is of another type.
    const JsonValue* object(std::string_view key) { return ofKind(key, JsonValue::Kind::Object); }
    const JsonValue* list(std::string_view key) { return ofKind(key, JsonValue::Kind::List); }
    //! The key was written and read without a fault: by value(), or by another who says so.
    bool sound(std::string_view key) const { return listed(sound_, key); }
    void noteSound(std::string_view key) { sound_.emplace_back(key); }
    //! What stands under the key is at fault, or nothing, whatever it is: it is not read.
    void passOver(std::string_view key) { passedOver_.emplace_back(key); }

    enum class Need { One, OneOrNone };
    //! A fault where more than one of the keys is written (both places), or none where one is needed. True where exactly
    //! one is.
    bool oneOf(const std::vector<std::string_view>& keys, Need need, std::string_view remedy);
    //! A fault for the key if it is written.
    void forbid(std::string_view key, std::string_view because, std::string_view remedy);
    //! Names every key nobody asked for. To be called last.
    void finish();

private:
    static bool listed(const std::vector<std::string>& keys, std::string_view key);
    const JsonMember* member(std::string_view key) const;
    const JsonValue* ofKind(std::string_view key, JsonValue::Kind kind);

    const JsonValue& object_;
    std::string path_;
    CaseContext& context_;
    std::vector<std::string> known_, sound_, passedOver_;
};

} // namespace winterlarder::exchange
