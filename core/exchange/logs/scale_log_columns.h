// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/logs/scale_log.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace winterlarder::exchange {

//! Number of a cell as people write it, with the decimal sign given: thousands signs in their places and blanks between digits are taken out, a
//! unit behind it is passed over. Nothing for anything else, "nan" and "inf" included.
std::optional<double> weightIn(std::string_view cell, char decimal);
//! The unit behind a number: "52.1 kg", "115lb".
std::optional<MassUnit> unitBehind(std::string_view cell);
//! The unit a header names: "Weight (kg)", "weight_g", "Gewicht [kg]", "lbs".
std::optional<MassUnit> unitInHeader(std::string_view header);
//! Empty, or a word for missing.
bool isMissing(std::string_view cell);

//! Where time and weight stand, from the first lines of a file.
struct FoundColumns {
    ScaleLogColumns columns;  //!< unit and date order still open
    std::size_t dataFrom = 0; //!< index of the first line with readings
    std::optional<std::size_t> date;
    std::size_t time = 0, weight = 0; //!< positions from 0
    std::optional<MassUnit> unit;     //!< from header or cells
};

//! Looks at the first lines under every delimiter, or the one given. Problems: no time, no weight, more than one column that may be meant.
Outcome<FoundColumns> findColumns(const std::vector<std::string>& lines, const std::vector<int>& numbers,
                                  const std::string& file, const ScaleLogOptions& options);

} // namespace winterlarder::exchange
