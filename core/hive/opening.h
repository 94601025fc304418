// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace winterlarder::hive {

//! How far a hive may be opened, by the daily maximum of the air [degC]: all of it, comb by comb; for a moment, a look between combs or
//! food laid on; the lid alone. Colder it stays closed. Judgement. Tested: tests/tracking/follow_test.cpp.
inline constexpr double fullLookFromC = 15, momentFromC = 10, lidFromC = 7;

} // namespace winterlarder::hive
