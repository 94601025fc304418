// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace winterlarder {

//! A number to the nearest of `parts` parts of one (2, 4, 8 or 16), as it is printed on a rule or a jug: "3/8", "16 7/8", "2", "0", in lowest
//! terms; parseLength() and parseVolume() read it with its unit. ContractViolation for a negative or non-finite number. Tested:
//! tests/quantity/fractions_test.cpp.
std::string formatFraction(double value, int parts);

} // namespace winterlarder
