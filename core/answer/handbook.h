// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "climate/site.h"
#include "reference/reference.h"

#include <string>
#include <string_view>

namespace winterlarder::answer {

//! The plain rule of a region's handbooks, "so many kg for winter": what forecasts are held against.
struct HandbookFigure {
    Mass toHave{0};     //!< middle of the printed range: stores to have in autumn
    Mass use{0};        //!< less the kilograms never to be touched: what the rule takes a winter to eat
    std::string region; //!< as printed
    std::string rule;   //!< id in shared/rules/feeding.csv
    std::string source; //!< id in shared/sources.csv
    bool operator==(const HandbookFigure&) const = default;
};

//! The shipped rule "stores for winter" whose station lies nearest to the place's own station, in its hemisphere; a place without a
//! station gets the middle one of the rules of its hemisphere. Tested: tests/answer/handbook_test.cpp.
HandbookFigure handbookFor(const climate::Site& site, const ReferenceData& reference);

//! The topic these rules stand under.
inline constexpr std::string_view handbookTopic = "stores for winter";

} // namespace winterlarder::answer
