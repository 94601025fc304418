// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "calendar/date.h"
#include "quantity/quantity.h"

#include <map>
#include <string>
#include <variant>

namespace winterlarder {

//! A number, date or word a reason or caution is said with; the words are the application's.
using Detail = std::variant<double, Mass, Volume, Temperature, Date, std::string>;

//! One reason or caution: an id of shared/rules/cautions.csv and what it is to be said with, by name.
struct Remark {
    std::string id;
    std::map<std::string, Detail> details;
};

} // namespace winterlarder
