// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/quantile.h"

#include "support/require.h"

#include <algorithm>

namespace winterlarder::numerics {

double sortedQuantile(const std::vector<double>& sorted, double q) {
    require(!sorted.empty() && q >= 0 && q <= 1, "quantile {} of {} values", q, sorted.size());
    const double position = q * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(position);
    const auto above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + (position - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

double quantile(std::vector<double> values, double q) {
    std::sort(values.begin(), values.end());
    return sortedQuantile(values, q);
}

} // namespace winterlarder::numerics
