// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/median.h"

#include "numerics/normal_law.h"
#include "support/require.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::numerics {

namespace {

double slopeOf(const std::vector<double>& x, const std::vector<double>& y) {
    std::vector<double> slopes;
    for (std::size_t i = 0; i < x.size(); ++i)
        for (std::size_t k = i + 1; k < x.size(); ++k)
            if (x[k] != x[i]) slopes.push_back((y[k] - y[i]) / (x[k] - x[i]));
    return slopes.empty() ? 0 : median(slopes);
}

double levelOf(const std::vector<double>& x, const std::vector<double>& y, double slope) {
    std::vector<double> levels;
    for (std::size_t i = 0; i < x.size(); ++i) levels.push_back(y[i] - slope * x[i]);
    return median(levels);
}

double standardErrorOfSlope(const std::vector<double>& x, const std::vector<double>& y, const Line& line) {
    std::vector<double> away;
    double mean = 0, spread = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        away.push_back(std::abs(y[i] - line.at(x[i])));
        mean += x[i] / static_cast<double>(x.size());
    }
    for (const double each : x) spread += (each - mean) * (each - mean);
    return spread > 0 ? normalScatter * median(away) / std::sqrt(spread) : 0;
}

} // namespace

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
    Line line;
    line.slope = slopeOf(x, y);
    line.level = levelOf(x, y, line.slope);
    const bool told = std::abs(line.slope) >= 2 * standardErrorOfSlope(x, y, line);
    line.slope = told ? std::clamp(line.slope, -steepest, steepest) : 0;
    line.level = levelOf(x, y, line.slope);
    return line;
}

} // namespace winterlarder::numerics
