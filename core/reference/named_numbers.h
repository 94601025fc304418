// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/shipped_files.h"

#include <string>
#include <string_view>
#include <vector>

namespace winterlarder {

//! A number of a shipped table that the program knows by name, and where it goes.
struct NamedNumber {
    std::string_view name;
    std::string_view unit;
    double* value;
};

//! Reads a table of named numbers with columns name, value, unit, low, high, mark, source and meaning among `columns`. Faults: a name
//! not known or missing, another unit, a value outside its own range. `what` names a row in faults. Internal to loadReference.
void readNumbers(ShippedFolder& folder, SourceUses& uses, const char* file, const std::vector<std::string>& columns,
                 std::string_view what, const std::vector<NamedNumber>& numbers);

} // namespace winterlarder
