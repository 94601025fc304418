// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

#include <algorithm>
#include <cmath>

namespace winterlarder::desk {

//! Contrast of two colours, 1..21, by their relative luminance (WCAG 2.1).
inline double contrast(const QColor& one, const QColor& other) {
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    const auto light = [&](const QColor& colour) {
        return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF()) +
               0.05;
    };
    return std::max(light(one), light(other)) / std::min(light(one), light(other));
}

} // namespace winterlarder::desk
