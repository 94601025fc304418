// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/estimate.h"

#include "numerics/normal_law.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace winterlarder::stores {

namespace {

constexpr double contradictionDistance = 3;
constexpr double exactKg = 0.001; // an error below a gram is no error; keeps the weights finite

struct Weighted {
    double mean = 0;
    double sd = 0;
    std::vector<double> weights;
};

Spread<Mass> cutSpread(Mass mean, Mass sd) {
    const auto cut = [](Mass mass) { return std::max(kilograms(0), mass); };
    return {cut(mean - tenthPercentile * sd), cut(mean), cut(mean + tenthPercentile * sd)};
}

std::vector<double> sdAtOwnValue(const std::vector<Evidence>& pieces) {
    std::vector<double> sds;
    for (const Evidence& piece : pieces) sds.push_back(piece.sd(piece.typical).value());
    return sds;
}

std::vector<double> sdAt(const std::vector<Evidence>& pieces, double combined) {
    std::vector<double> sds;
    for (const Evidence& piece : pieces) sds.push_back(piece.sd(kilograms(std::max(0.0, combined))).value());
    return sds;
}

//! The tare's error in each piece; an error one piece has alone is its own.
std::vector<double> sharedSds(const std::vector<Evidence>& pieces) {
    std::vector<double> sds;
    for (const Evidence& piece : pieces) sds.push_back(piece.tareSd.value());
    if (std::count_if(sds.begin(), sds.end(), [](double sd) { return sd > 0; }) < 2)
        std::fill(sds.begin(), sds.end(), 0.0);
    return sds;
}

double ownSd(double sd, double shared) { return shared > 0 ? std::sqrt(std::max(0.0, sd * sd - shared * shared)) : sd; }

//! Generalised least squares with variances D + t t', where t is the error that is shared and D what is each piece's own. By Sherman and
//! Morrison the weights are p (1 - t u) with p = 1 / D and u = sum(p t) / (1 + sum(p t^2)), before they are made to sum to 1.
Weighted leastSquares(const std::vector<Evidence>& pieces, const std::vector<double>& sds) {
    const auto shared = sharedSds(pieces);
    Weighted result;
    double lean = 0, stiff = 1;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const double counted = std::max(ownSd(sds[i], shared[i]), exactKg);
        result.weights.push_back(1 / (counted * counted));
        lean += result.weights[i] * shared[i];
        stiff += result.weights[i] * shared[i] * shared[i];
    }
    double precision = 0;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        result.weights[i] *= 1 - shared[i] * (lean / stiff);
        precision += result.weights[i];
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        result.weights[i] /= precision;
        result.mean += result.weights[i] * pieces[i].typical.value();
    }
    result.sd = 1 / std::sqrt(precision);
    return result;
}

//! The pair that differs most beyond what both allow, named in an order that does not depend on the list's.
struct Contradiction {
    double times = 0; //!< difference in joint standard deviations
    EvidenceKind first{}, second{};
};

// Of pieces of one kind and error only the lowest and the highest can differ most from anything.
std::vector<std::size_t> outermost(const std::vector<Evidence>& pieces, const std::vector<double>& sds) {
    std::map<std::pair<EvidenceKind, double>, std::pair<std::size_t, std::size_t>> ends;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        auto& [low, high] = ends.try_emplace({pieces[i].kind, sds[i]}, i, i).first->second;
        if (pieces[i].typical < pieces[low].typical) low = i;
        if (pieces[i].typical > pieces[high].typical) high = i;
    }
    std::vector<std::size_t> places;
    for (const auto& each : ends) {
        places.push_back(each.second.first);
        if (each.second.second != each.second.first) places.push_back(each.second.second);
    }
    return places;
}

std::optional<Contradiction> worstContradiction(const std::vector<Evidence>& pieces, const std::vector<double>& sds) {
    std::optional<Contradiction> worst;
    const auto places = outermost(pieces, sds);
    for (const std::size_t i : places) {
        for (const std::size_t j : places) {
            if (j <= i) continue;
            const double joint = std::max(std::hypot(sds[i], sds[j]), exactKg);
            const double times = std::abs((pieces[i].typical - pieces[j].typical).value()) / joint;
            if (times <= contradictionDistance) continue;
            const auto names = std::minmax(pieces[i].kind, pieces[j].kind);
            const Contradiction found{times, names.first, names.second};
            const auto rank = [](const Contradiction& c) { return std::tie(c.times, c.second, c.first); };
            if (!worst || rank(*worst) < rank(found)) worst = found;
        }
    }
    return worst;
}

StoresEstimate widest(const std::vector<Evidence>& pieces, const Contradiction& contradiction) {
    StoresEstimate estimate;
    double low = pieces.front().typical.value(), high = low;
    for (const Evidence& piece : pieces) {
        const double reach = tenthPercentile * piece.sd(piece.typical).value();
        low = std::min(low, std::max(0.0, piece.typical.value() - reach));
        high = std::max(high, piece.typical.value() + reach);
    }
    low = std::max(0.0, low);
    high = std::max(0.0, high);
    estimate.mean = kilograms((low + high) / 2);
    estimate.sd = kilograms((high - low) / 2 / tenthPercentile);
    estimate.contradictory = true;
    estimate.firstContradicting = contradiction.first;
    estimate.secondContradicting = contradiction.second;
    return estimate;
}

} // namespace

std::optional<StoresEstimate> combine(const std::vector<Evidence>& pieces) {
    if (pieces.empty()) return std::nullopt;
    const Weighted firstPass = leastSquares(pieces, sdAtOwnValue(pieces));
    const std::vector<double> sds = pieces.size() == 1 ? sdAtOwnValue(pieces) : sdAt(pieces, firstPass.mean);
    const Weighted secondPass = leastSquares(pieces, sds);
    const auto contradiction = worstContradiction(pieces, sds);

    StoresEstimate estimate;
    if (contradiction) estimate = widest(pieces, *contradiction);
    else std::tie(estimate.mean, estimate.sd) = std::pair(kilograms(secondPass.mean), kilograms(secondPass.sd));
    if (pieces.size() == 1) estimate.sd = pieces.front().sd(pieces.front().typical);
    estimate.spread = cutSpread(estimate.mean, estimate.sd);
    for (std::size_t i = 0; i < pieces.size(); ++i)
        estimate.shares.push_back({pieces[i], cutSpread(pieces[i].typical, pieces[i].sd(pieces[i].typical)),
                                   contradiction ? 0 : secondPass.weights[i]});
    return estimate;
}

double shareOfTare(const StoresEstimate& estimate) {
    double weight = 0;
    for (const auto& share : estimate.shares)
        if (share.evidence.tareSd > kilograms(0)) weight += share.weight;
    return weight;
}

double sdTogether(double oneSd, double otherSd, double covariance) {
    const double one = oneSd * oneSd, other = otherSd * otherSd, apart = one + other - 2 * covariance;
    if (covariance == 0) return 1 / std::sqrt(1 / one + 1 / other);
    return apart > 0 ? std::sqrt(std::max(0.0, one * other - covariance * covariance) / apart)
                     : std::min(oneSd, otherSd);
}

} // namespace winterlarder::stores
