// SPDX-License-Identifier: GPL-3.0-or-later
#include "quantity/fractions.h"

#include "support/require.h"

#include <cmath>
#include <fmt/format.h>
#include <numeric>

namespace winterlarder {

std::string formatFraction(double value, int parts) {
    require(std::isfinite(value) && value >= 0, "{} cannot be written as a fraction", value);
    require(parts == 2 || parts == 4 || parts == 8 || parts == 16, "a fraction of {} parts", parts);
    const long long all = std::llround(value * parts), whole = all / parts, over = all % parts;
    if (over == 0) return fmt::format("{}", whole);
    const auto common = std::gcd(over, static_cast<long long>(parts));
    const std::string fraction = fmt::format("{}/{}", over / common, parts / common);
    return whole == 0 ? fraction : fmt::format("{} {}", whole, fraction);
}

} // namespace winterlarder
