// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "calendar/season_day.h"
#include "exchange/case/case_file.h"
#include "exchange/case/words_of_records.h"
#include "exchange/json/json_tree.h"
#include "reference/reference.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder::exchange {

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
    //! The number where it is within the field's limits (and whole where the field is an integer); else a fault.
    std::optional<double> checkedNumber(const JsonValue& value, std::string_view what, std::string_view field);
    //! A date of the years this program knows, else a fault.
    std::optional<Date> checkedDate(const JsonValue& value, std::string_view what);
    //! A text that is not empty, else a fault.
    std::optional<std::string> checkedText(const JsonValue& value, std::string_view what);
    void wrongType(const JsonValue& value, std::string_view what, std::string_view wanted);

    //! The day of the question and its winter, once they are known: records of other parts are held against them.
    std::optional<Date> asOf;
    std::optional<Winter> winter;
    //! A fault where a record is later than as_of; `observation`: or older than the oldest that still speaks.
    void checkRecorded(Date date, Position position, std::string_view what, bool observation);

private:
    std::string placeOf(std::string_view path) const;
    const ReferenceData& reference_;
    CasePlaces places_;
    Problems problems_;
};

//! Reads the members of one object, each key once, and in the end names the keys nobody asked for.
class ObjectReader {
public:
    //! `path` is where the object stands in the case ("site", "combs[2]", "" for the whole); `fields` how the data
    //! dictionary calls its members ("site", "combs").
    ObjectReader(const JsonValue& object, std::string path, std::string fields, CaseContext& context);

    CaseContext& context() { return context_; }
    Position position() const { return object_.position; }
    const std::string& path() const { return path_; }
    std::string pathOf(std::string_view key) const;

    //! The value of a key, nothing where it is not written. Asking makes the key known.
    const JsonValue* find(std::string_view key);
    //! As find; a fault where the key is missing.
    const JsonValue* demand(std::string_view key, std::string_view remedy);
    //! The key was written, however badly.
    bool has(std::string_view key) { return find(key) != nullptr; }
    //! Where the key was written; the object's own place where it was not.
    Position keyPosition(std::string_view key) const;

    std::optional<double> number(std::string_view key);
    //! As number; null counts as not written.
    std::optional<double> numberOrNull(std::string_view key);
    std::optional<int> integer(std::string_view key);
    std::optional<bool> flag(std::string_view key);
    bool flag(std::string_view key, bool otherwise) { return flag(key).value_or(otherwise); }
    std::optional<std::string> text(std::string_view key);
    //! A text of at most limits::nameCharacters.
    std::optional<std::string> nameText(std::string_view key);
    std::optional<Date> date(std::string_view key);
    template <class Choice, std::size_t N>
    std::optional<Choice> choice(std::string_view key, const Words<Choice, N>& words) {
        const auto word = choiceWord(key, allWords(words));
        return word ? choiceOf(words, *word) : std::nullopt;
    }
    //! The key's object or list; a fault and nothing where it is of another type.
    const JsonValue* object(std::string_view key) { return ofKind(key, JsonValue::Kind::Object); }
    const JsonValue* list(std::string_view key) { return ofKind(key, JsonValue::Kind::List); }

    //! A fault where more than one of the keys is written (both places), or, if `needed`, none. True where exactly one
    //! is.
    bool oneOf(const std::vector<std::string_view>& keys, bool needed, std::string_view remedy);
    //! A fault for the key if it is written.
    void forbid(std::string_view key, std::string_view because, std::string_view remedy);
    //! Names every key nobody asked for. To be called last.
    void finish();

private:
    const JsonMember* member(std::string_view key) const;
    const JsonValue* ofKind(std::string_view key, JsonValue::Kind kind);
    std::optional<std::string> choiceWord(std::string_view key, const std::vector<std::string>& words);

    const JsonValue& object_;
    std::string path_, fields_;
    CaseContext& context_;
    std::vector<std::string> known_;
};

} // namespace winterlarder::exchange
