// SPDX-License-Identifier: GPL-3.0-or-later
#include "winter/learned_remarks.h"

#include <cmath>
#include <string>

namespace winterlarder::winter {

namespace {

constexpr double worthSayingPercent = 2, worthSayingDays = 0.5;

Remark multiplierRemark(const std::string& id, double factor, int winters) {
    const double percent = 100 * (factor - 1);
    const char* word = std::abs(percent) < worthSayingPercent ? "same" : percent > 0 ? "more" : "less";
    return {id,
            {{"percent", std::abs(percent)}, {"class", std::string(word)}, {"winters", static_cast<double>(winters)}}};
}

} // namespace

std::vector<Remark> learnedRemarks(const std::optional<LearnedMultipliers>& learned, const LearnedFrom& from) {
    std::vector<Remark> said;
    if (learned) {
        said.push_back(multiplierRemark("learned-use", learned->use, from.winters));
        if (100 * std::abs(learned->death - 1) >= worthSayingPercent)
            said.push_back(multiplierRemark("learned-death", learned->death, from.winters));
    }
    if (from.forageYears > 0 && std::abs(from.forageShiftDays) >= worthSayingDays)
        said.push_back({"learned-forage",
                        {{"days", std::abs(from.forageShiftDays)},
                         {"class", std::string(from.forageShiftDays > 0 ? "later" : "earlier")},
                         {"springs", static_cast<double>(from.forageYears)}}});
    return said;
}

} // namespace winterlarder::winter
