// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/redraw.h"

#include "numerics/cholesky.h"
#include "winter/draws.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

constexpr double widened = 1.2; // variance of the proposal over the fitted one: tails of the weights stay light
constexpr double keptCorrelation = 0.8;
constexpr double leastVariance = 0.05;
constexpr double leastPivot = 1e-3;
constexpr std::uint32_t firstIndex = 1u << 15;

double squares(const std::array<double, winter::WinterLuck::parts>& z) {
    double total = 0;
    for (double each : z) total += each * each;
    return total;
}

} // namespace

LuckProposal::LuckProposal(const std::vector<winter::WinterLuck>& luck, const std::vector<double>& weights) {
    for (std::size_t i = 0; i < luck.size(); ++i)
        for (std::size_t a = 0; a < parts; ++a) mean_[a] += weights[i] * luck[i].z[a];
    std::array<std::array<double, parts>, parts> covariance{};
    for (std::size_t i = 0; i < luck.size(); ++i)
        for (std::size_t a = 0; a < parts; ++a)
            for (std::size_t b = 0; b <= a; ++b)
                covariance[a][b] += weights[i] * (luck[i].z[a] - mean_[a]) * (luck[i].z[b] - mean_[b]);
    for (std::size_t a = 0; a < parts; ++a) {
        for (std::size_t b = 0; b < a; ++b) covariance[a][b] *= widened * keptCorrelation;
        covariance[a][a] = widened * std::max(leastVariance, covariance[a][a]);
    }
    for (std::size_t a = 0; a < parts; ++a)
        for (std::size_t b = 0; b <= a; ++b) root_[a][b] = covariance[a][b];
    numerics::cholesky(
        parts, [this](std::size_t row, std::size_t column) -> double& { return root_[row][column]; },
        [](double pivot, std::size_t) { return std::max(pivot, leastPivot); });
    for (std::size_t a = 0; a < parts; ++a) logNormaliser_ += std::log(root_[a][a]);
}

std::vector<winter::WinterLuck> LuckProposal::draw(std::uint64_t seed, std::uint64_t stream,
                                                   std::size_t winters) const {
    std::vector<winter::WinterLuck> luck(winters);
    const auto asAtFirst = static_cast<std::size_t>(std::ceil(defensiveShare * static_cast<double>(winters)));
    for (std::size_t i = 0; i < winters; ++i) {
        std::array<double, parts> z{};
        for (std::size_t a = 0; a < parts; ++a)
            z[a] = winter::normal(seed, winter::Luck::Colony, stream, static_cast<std::uint32_t>(i),
                                  firstIndex + static_cast<std::uint32_t>(a));
        luck[i].z = z;
        if (i < asAtFirst) continue;
        for (std::size_t a = 0; a < parts; ++a) {
            luck[i].z[a] = mean_[a];
            for (std::size_t b = 0; b <= a; ++b) luck[i].z[a] += root_[a][b] * z[b];
        }
    }
    return luck;
}

double LuckProposal::logRatio(const winter::WinterLuck& luck) const {
    std::array<double, parts> z{};
    for (std::size_t a = 0; a < parts; ++a) {
        double rest = luck.z[a] - mean_[a];
        for (std::size_t b = 0; b < a; ++b) rest -= root_[a][b] * z[b];
        z[a] = rest / root_[a][a];
    }
    const double atFirst = -0.5 * squares(luck.z);
    const double around = -0.5 * squares(z) - logNormaliser_ + std::log(1 - defensiveShare);
    const double defensive = atFirst + std::log(defensiveShare);
    const double larger = std::max(around, defensive);
    return atFirst - (larger + std::log(std::exp(around - larger) + std::exp(defensive - larger)));
}

} // namespace winterlarder::tracking
