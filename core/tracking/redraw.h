// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "winter/luck.h"

#include <array>
#include <cstdint>
#include <vector>

namespace winterlarder::tracking {

//! A mixture the luck of winters is drawn from: a normal around what was learned, and a tenth of the standard normal it had at first.
class LuckProposal {
public:
    //! Fitted to weighted luck; weights sum to 1.
    LuckProposal(const std::vector<winter::WinterLuck>& luck, const std::vector<double>& weights);

    //! Luck of so many winters: the first tenth as at first, the rest around what was learned.
    std::vector<winter::WinterLuck> draw(std::uint64_t seed, std::uint64_t stream, std::size_t winters) const;
    //! log(density at first / density of the mixture).
    double logRatio(const winter::WinterLuck& luck) const;

    static constexpr double defensiveShare = 0.1;

private:
    static constexpr std::size_t parts = winter::WinterLuck::parts;
    std::array<double, parts> mean_{};
    std::array<std::array<double, parts>, parts> root_{}; //!< lower triangle of the covariance
    double logNormaliser_ = 0;                            //!< log of the product of the diagonal
};

} // namespace winterlarder::tracking
