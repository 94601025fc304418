// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "quantity/quantity.h"

#include <map>
#include <string>
#include <utility>
#include <variant>

namespace winterlarder {

//! A number, date or word a reason or caution is said with; the words are the application's.
struct Detail : std::variant<double, Mass, Volume, Temperature, Date, std::string> {
    Detail() = default;
    // Overloads instead of the variant's converting constructor: that one asks the units library whether a mass is a volume,
    // which clang takes as an error.
    Detail(double value) : variant(std::in_place_type<double>, value) {}
    Detail(Mass value) : variant(std::in_place_type<Mass>, value) {}
    Detail(Volume value) : variant(std::in_place_type<Volume>, value) {}
    Detail(Temperature value) : variant(std::in_place_type<Temperature>, value) {}
    Detail(Date value) : variant(std::in_place_type<Date>, value) {}
    Detail(std::string value) : variant(std::in_place_type<std::string>, std::move(value)) {}
};

//! One reason or caution: an id of shared/rules/cautions.csv and what it is to be said with, by name.
struct Remark {
    std::string id;
    std::map<std::string, Detail> details;
};

} // namespace winterlarder
