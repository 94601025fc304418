// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/median.h"

#include "support/require.h"

#include <algorithm>

namespace winterlarder::scale {

double lowerMedian(std::vector<double>& values) {
    require(!values.empty(), "there is no median of nothing");
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>((values.size() - 1) / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

double median(std::vector<double>& values) {
    const double lower = lowerMedian(values);
    if (values.size() % 2 == 1) return lower;
    const auto upper = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    return lower + (*std::min_element(upper, values.end()) - lower) / 2;
}

Line robustLine(const std::vector<double>& x, const std::vector<double>& y, double steepest) {
    require(x.size() == y.size() && !x.empty(), "a line needs points: {} and {}", x.size(), y.size());
    std::vector<double> values;
    for (std::size_t i = 0; i < x.size(); ++i)
        for (std::size_t k = i + 1; k < x.size(); ++k)
            if (x[k] != x[i]) values.push_back((y[k] - y[i]) / (x[k] - x[i]));
    Line line;
    if (!values.empty()) line.slope = std::clamp(median(values), -steepest, steepest);
    values.clear();
    for (std::size_t i = 0; i < x.size(); ++i)
        values.push_back(y[i] - line.slope * x[i]);
    line.level = median(values);
    return line;
}

} // namespace winterlarder::scale
