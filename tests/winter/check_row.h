// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "winter/places.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder::winter {

//! One row of shared/reference/winter_checks.csv, its column `inputs` taken apart: parts separated by ; in any order.
struct CheckRow {
    std::string id, description, quantity;
    std::vector<std::string> parts;

    //! What follows NAME= (or "NAME ") in the part that begins so; nothing where no part does.
    std::optional<std::string> after(std::string_view beginning) const;
    std::optional<double> number(std::string_view beginning) const;
    bool says(std::string_view part) const;
};

CheckRow checkRow(const std::string& id, const std::string& description, const std::string& inputs,
                  const std::string& quantity);

//! What the model gives for a row of one of the usual forms: a use over days, a number of bees or brood on a day, a
//! season date, stores to
//! have, a worked example. Nothing where the row has another form. `ensemble` tells that it came out of drawn winters.
struct CheckValue {
    double value = 0;
    bool ensemble = false;
};
std::optional<CheckValue> valueOf(const CheckRow& row);

} // namespace winterlarder::winter
