// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace winterlarder::text {

//! Words of one remark. %{name} is a detail, %{name:2} one with so many decimals, %{name:hundreds} one rounded to
//! hundreds, %{name:kelvins} a difference of temperatures, %{name:amount} a mass to half a kilogram or a pound, %{name:halves} a number to
//! halves, %{name:season}, %{name:evidence}, %{name:flow} the name of a key; %{=15 °C} a quantity in the units shown; %{comb}, %{combs}, %{Comb}, %{Combs}, %{board}, %{Board} a noun of the
//! place (wording.h); %n the whole number named by `countOf`.
struct RemarkText {
    const char* id; //!< of the remark; after a slash a variant of it
    const char* text;
    const char* countOf = nullptr; //!< detail that %n stands for
    const char* forOne = nullptr;  //!< the text where that is 1
};

const std::vector<RemarkText>& cautionTexts();
const std::vector<RemarkText>& reasonTexts();
const std::vector<RemarkText>& doubtTexts();  //!< what is asked about an unlikely entry
const std::vector<RemarkText>& yardTexts();   //!< of colonies united, and of combs that are not given
const std::vector<RemarkText>& followTexts(); //!< of a winter that is followed

} // namespace winterlarder::text
