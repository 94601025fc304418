// SPDX-License-Identifier: GPL-3.0-or-later
#include "series/scale_series.h"

#include <algorithm>

namespace winterlarder::desk {

ScaleSeries scaleSeries(const WinterPicture& picture, int daysAhead) {
    ScaleSeries series;
    series.measured = picture.evidence;
    series.first = picture.first.w;
    series.last = std::min(picture.last.w, picture.first.w + daysAhead);
    for (const auto& point : series.measured) {
        series.first = std::min(series.first, point.day.w);
        series.mostKg = std::max(series.mostKg, point.stores.high.value());
    }
    const auto leave = std::find_if(picture.options.begin(), picture.options.end(),
                                    [](const auto& option) { return option.kind == advice::OptionKind::Leave; });
    if (leave == picture.options.end()) return series;
    for (std::size_t i = 0; i < leave->readings.size() && picture.first.w + static_cast<int>(i) <= series.last; ++i) {
        const auto& reading = leave->readings[i];
        series.expected.push_back({picture.first.w + static_cast<double>(i), reading.low, reading.high});
        series.mostKg = std::max(series.mostKg, reading.high);
    }
    return series;
}

} // namespace winterlarder::desk
