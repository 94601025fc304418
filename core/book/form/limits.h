// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/plain_text.h"
#include "book/form/row.h"
#include "reference/reference.h"
#include "support/outcome.h"

#include <map>
#include <string>
#include <vector>

namespace winterlarder::book {

//! What shared/fields.csv allows in each column of the book. The same limits become the CHECK constraints of the file
//! (book/schema.h), so that a value no window would take cannot enter by another door. Tested: tests/book/tables_test.cpp.
class Limits {
public:
    //! ContractViolation where the dictionary lacks a field of the book, or has other choices than the program.
    explicit Limits(const std::vector<FieldLimits>& fields);

    const FieldLimits& of(const Column& column) const;
    //! Everything wrong with a row, each with the field it is about; place and remedy in words. Nothing = sound, as far as one
    //! column at a time goes; what columns say together is in combinationRules().
    Problems faults(const Table& table, const Row& row) const;
    //! What is wrong with one value; nothing = sound.
    std::optional<Problem> fault(const Column& column, const Value& value) const;

private:
    std::map<std::string, FieldLimits, std::less<>> fields_;
};

//! Something several columns of one row must satisfy together.
struct CombinationRule {
    std::string name;  //!< of the CHECK constraint, unique in the book
    std::string table; //!< of the file
    std::string sql;
    std::string sentence; //!< what is wrong when it does not hold
    std::string remedy;
};
const std::vector<CombinationRule>& combinationRules();

//! How many characters a text may have: names are short and never empty, anything else may be as long as a small book.
struct TextLength {
    std::int64_t least, most;
};
TextLength textLength(const Column& column);

//! What is wrong with a value as the name of a yard or colony that is new or changed (book/plain_text.h); nothing for other columns.
//! Not part of faults(): books of older releases may hold such names, and keep them.
std::optional<Problem> faultOfNewName(const Column& column, const Value& value);

} // namespace winterlarder::book
