// SPDX-License-Identifier: GPL-3.0-or-later
#include "stores/estimate.h"

#include "numerics/normal_law.h"
#include "stores/shared_errors.h"
#include "stores/weighing.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
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

//! The pieces with their errors at some stores of each: in all, and what they share of them.
struct Errors {
    std::vector<double> sds; //!< [kg]
    SharedErrors shared;
};

//! The part of a shared tare's variance that does not cancel between two days: pollen, wax, wood and bees change as much as makes the error of
//! a weighed tare.
double changedBetween(const Evidence& one, const Evidence& other) {
    if (one.date == other.date) return 0;
    const double kept = std::min({one.tareSd, other.tareSd, weighedTareSd}).value();
    return kept * kept;
}

//! One standard deviation of the difference of two pieces [kg]: what they share of their errors cancels.
double apart(const std::vector<Evidence>& pieces, const Errors& errors, std::size_t i, std::size_t j) {
    const double common = std::max(0.0, errors.shared.covariance(i, j) - changedBetween(pieces[i], pieces[j]));
    const double variance = errors.sds[i] * errors.sds[i] + errors.sds[j] * errors.sds[j] - 2 * common;
    return std::max(std::sqrt(std::max(0.0, variance)), exactKg);
}

Errors errorsAt(const std::vector<Evidence>& pieces, const std::vector<double>& at) {
    std::vector<double> sds;
    for (std::size_t i = 0; i < pieces.size(); ++i) sds.push_back(pieces[i].sd(kilograms(at[i])).value());
    return {std::move(sds), SharedErrors(pieces, at)};
}

std::vector<double> ownValues(const std::vector<Evidence>& pieces) {
    std::vector<double> values;
    for (const Evidence& piece : pieces) values.push_back(piece.typical.value());
    return values;
}

Weighted leastSquares(const std::vector<Evidence>& pieces, const Errors& errors) {
    std::vector<double> own;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const double variance = errors.sds[i] * errors.sds[i] - errors.shared.covariance(i, i);
        own.push_back(std::max(std::sqrt(std::max(0.0, variance)), exactKg));
    }
    Weighted result;
    result.weights = leastSquaresWeights(own, errors.shared);
    const double precision = std::accumulate(result.weights.begin(), result.weights.end(), 0.0);
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

// Of pieces of one kind, day and error, shared alike, only the lowest and the highest can differ most from anything.
std::vector<std::size_t> outermost(const std::vector<Evidence>& pieces, const Errors& errors) {
    using Alike = std::tuple<EvidenceKind, Date, double, std::vector<double>>;
    std::map<Alike, std::pair<std::size_t, std::size_t>> ends;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        Alike alike(pieces[i].kind, pieces[i].date, errors.sds[i], errors.shared.loadingsOf(i));
        auto& [low, high] = ends.try_emplace(std::move(alike), i, i).first->second;
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

std::optional<Contradiction> worstContradiction(const std::vector<Evidence>& pieces, const Errors& errors) {
    std::optional<Contradiction> worst;
    const auto places = outermost(pieces, errors);
    for (const std::size_t i : places) {
        for (const std::size_t j : places) {
            if (j <= i) continue;
            const double times =
                std::abs((pieces[i].typical - pieces[j].typical).value()) / apart(pieces, errors, i, j);
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
    const Errors atOwn = errorsAt(pieces, ownValues(pieces));
    const double combined = std::max(0.0, leastSquares(pieces, atOwn).mean);
    const Errors errors = pieces.size() == 1 ? atOwn : errorsAt(pieces, std::vector<double>(pieces.size(), combined));
    const Weighted secondPass = leastSquares(pieces, errors);
    const auto contradiction = worstContradiction(pieces, errors);

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
