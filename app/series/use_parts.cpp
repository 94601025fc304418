// SPDX-License-Identifier: GPL-3.0-or-later
#include "series/use_parts.h"

#include <algorithm>

namespace winterlarder::desk {

std::optional<text::UseParts> usePartsOf(const WinterPicture& picture, const climate::SeasonDates& season) {
    if (picture.empty() || !season.forage) return std::nullopt;
    text::UseParts parts;
    const auto days =
        std::min(picture.daily.size(), static_cast<std::size_t>(std::max(0, season.forage->day - picture.first)));
    for (std::size_t day = 0; day < days; ++day) {
        const auto& use = picture.daily[day];
        parts.adults = parts.adults + grams(use.adults);
        parts.broodWarmth = parts.broodWarmth + grams(use.broodWarmth);
        parts.broodFood = parts.broodFood + grams(use.broodFood);
        parts.income = parts.income + grams(use.income);
    }
    return parts;
}

} // namespace winterlarder::desk
