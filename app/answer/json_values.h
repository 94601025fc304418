// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "exchange/json/json_output.h"
#include "reference/reference.h"

#include <optional>
#include <vector>

//! The values of the core as JSON, in the keys of the manual.
namespace winterlarder::answer {

exchange::Json json(Mass mass);
exchange::Json json(const Spread<Mass>& spread);
exchange::Json json(const Spread<BeeCount>& spread);
exchange::Json json(const Share& share);
template <class T> exchange::Json jsonOrNull(const std::optional<T>& value) {
    return value ? json(*value) : exchange::Json();
}

//! Low, typical and high beside whatever `object` holds already.
void addSpread(exchange::Json& object, const Spread<Mass>& spread);

//! The dates of a season by their keys: {"date", "sd_days"} and, where wanted, "from"; null for a missing one.
void addSeasonDates(exchange::Json& object, const climate::SeasonDates& season, const Winter& winter, bool withOrigin);
//! "confined", "flying", "dearth", "not_derivable".
std::string_view word(climate::WinterClass kind);
std::string_view word(advice::Phase phase);
std::string_view word(advice::NextLookAt what);
std::string_view word(advice::Verdict verdict);
std::string_view word(advice::OptionKind kind);
std::string_view word(advice::LookKind look);
std::string_view word(feeding::VisitKind kind);

//! The dates a season may have, with their keys in the order of the manual.
struct NamedDate {
    const char* key;
    std::optional<climate::SeasonDate> climate::SeasonDates::*date;
};
extern const std::array<NamedDate, 8> seasonDateKeys;

} // namespace winterlarder::answer
