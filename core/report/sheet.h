// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "quantity/quantity.h"
#include "reference/remark.h"

#include <string>
#include <utility>
#include <variant>
#include <vector>

//! What a printed sheet holds, as data: ids, quantities and the keeper's own text. Words, numbers' form and locale are the
//! application's.
namespace winterlarder::report {

//! An id the application has words for: a verdict, an option, a kind of visit.
struct Word {
    std::string id;
    bool operator==(const Word&) const = default;
};
//! A plain number with so many decimals.
struct Count {
    double number = 0;
    int decimals = 0;
    bool operator==(const Count&) const = default;
};
//! Money in a currency by its ISO 4217 letters.
struct Money {
    double amount = 0;
    std::string currency;
};
//! A date that may be off by some days (1 standard deviation; 0 = known).
struct RoughDate {
    Date date;
    double sdDays = 0;
};

//! What stands in one place of a sheet; empty = nothing to say.
struct Cell : std::variant<std::monostate, std::string, Word, Count, Money, Mass, Volume, Date, RoughDate, Share,
                           Spread<Mass>, Spread<BeeCount>> {
    // Overloads for the same reason as in Detail: clang must not ask whether a mass is a volume.
    Cell() = default;
    Cell(std::string value) : variant(std::in_place_type<std::string>, std::move(value)) {}
    Cell(Word value) : variant(std::in_place_type<Word>, std::move(value)) {}
    Cell(Count value) : variant(std::in_place_type<Count>, value) {}
    Cell(Money value) : variant(std::in_place_type<Money>, std::move(value)) {}
    Cell(Mass value) : variant(std::in_place_type<Mass>, value) {}
    Cell(Volume value) : variant(std::in_place_type<Volume>, value) {}
    Cell(Date value) : variant(std::in_place_type<Date>, value) {}
    Cell(RoughDate value) : variant(std::in_place_type<RoughDate>, value) {}
    Cell(Share value) : variant(std::in_place_type<Share>, value) {}
    Cell(Spread<Mass> value) : variant(std::in_place_type<Spread<Mass>>, value) {}
    Cell(Spread<BeeCount> value) : variant(std::in_place_type<Spread<BeeCount>>, value) {}
    bool empty() const { return std::holds_alternative<std::monostate>(*this); }
};

//! A named value: "needed: 21 kg".
struct Fact {
    std::string id;
    Cell value;
};
//! Rows under headings; every row has a cell for every column.
struct Table {
    std::vector<std::string> columns; //!< ids
    std::vector<std::vector<Cell>> rows;
};
//! A reason or caution with the source it is shown with (an id of shared/sources.csv; empty: none).
struct SourcedRemark {
    Remark remark;
    std::string source;
};

//! A part of a sheet with its own heading.
struct Section {
    std::string id;
    bool winterPicture = false; //!< the winter picture belongs here
    std::vector<Fact> facts{};
    Table table{};
    std::vector<SourcedRemark> remarks{};
};

struct Sheet {
    std::string title; //!< the keeper's name for the colony or the yard
    std::string yard;  //!< on a colony's sheet, the yard it stands in
    Date date;         //!< the day asked for
    std::vector<Section> sections;
    std::vector<std::string> sources; //!< every source named above, each once, in the order they come

    const Section* section(std::string_view id) const; //!< nothing where there is none
};

} // namespace winterlarder::report
