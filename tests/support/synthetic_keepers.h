// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "learning/keeper.h"
#include "learning/scores.h"
#include "tracking/winters.h"

#include <array>
#include <cmath>
#include <numbers>
#include <random>

//! Invented keepers whose bees lastingly eat and die by multipliers that are known, and winters of theirs drawn from the model.
namespace winterlarder::learning {

struct SyntheticKeepers {
    int keepers = 50;
    int years = 5;
    int winters = 1000; //!< of the ensembles that learn and of each that stands for the exact posterior
    std::uint64_t seed = 11;
};

inline constexpr std::array<int, 3> weighingDays{-30, 25, 80};
inline constexpr int scoredDay = 100; //!< net loss from the decision to the end of this day is what is forecast

//! Plenty of stores, so that nobody starves and the exact posterior has a closed form winter by winter.
inline tracking::FollowQuestion keepersQuestion() {
    auto q = tracking::oxfordColony(30, 1, 90);
    q.tare = {kilograms(15), kilograms(0)};
    q.winter.learned = unknownKeeper(constants());
    return q;
}

struct SyntheticWinter {
    std::array<double, 3> gross{}; //!< scale, on weighingDays
    double covered = 0;            //!< bees on the last of them
    double loss = 0;               //!< by scoredDay
};
struct SyntheticKeeper {
    double logUse = 0, logDeath = 0;
    std::vector<SyntheticWinter> winters;
};

inline std::vector<SyntheticKeeper> inventKeepers(const SyntheticKeepers& what) {
    const auto q = keepersQuestion();
    std::mt19937_64 generator(what.seed);
    std::normal_distribution<double> normal;
    std::vector<SyntheticKeeper> keepers(static_cast<std::size_t>(what.keepers));
    std::vector<winter::WinterLuck> luck;
    for (auto& keeper : keepers) {
        const double use = normal(generator), death = normal(generator);
        keeper.logUse = constants().lastingUseSd * use;
        keeper.logDeath = constants().lastingDeathSd * death;
        for (int year = 0; year < what.years; ++year) {
            luck.push_back(
                winter::drawnLuck(what.seed, q.winter.colonyStream, static_cast<std::uint32_t>(luck.size())));
            luck.back().z[winter::WinterLuck::LastingUse] = use;
            luck.back().z[winter::WinterLuck::LastingDeath] = death;
        }
    }
    const auto truth =
        *winter::simulateWith(q.winter, constants(), {what.seed, static_cast<int>(luck.size())}, luck, 2);
    const tracking::HivePaths paths(truth, {}, q.decided, constants());
    std::size_t i = 0;
    for (auto& keeper : keepers)
        for (int year = 0; year < what.years; ++year, ++i) {
            const double stores = 30 + normal(generator), tare = std::sqrt(1 - 0.09) * normal(generator);
            SyntheticWinter w;
            for (std::size_t k = 0; k < 3; ++k) {
                const SeasonDay day{weighingDays[k]};
                w.gross[k] = 15 + 0.7 + stores + tare + paths.lifeKg(day, i) -
                             static_cast<double>(paths.lossUntil(day - 1, i)) + 0.3 * normal(generator);
            }
            w.covered = paths.bees({weighingDays[2]}, i) * std::exp(0.15 * normal(generator));
            w.loss = static_cast<double>(paths.lossUntil({scoredDay}, i));
            keeper.winters.push_back(w);
        }
    return keepers;
}

inline tracking::FollowQuestion asked(const SyntheticWinter& winter) {
    auto q = keepersQuestion();
    for (std::size_t k = 0; k < 3; ++k)
        q.observations.push_back(tracking::weighed(q, weighingDays[k], winter.gross[k]));
    q.observations.push_back(tracking::on(q, weighingDays[2], tracking::BeesSeen{{winter.covered}, 0.15}));
    return q;
}

//! Learns as the program does, but all winters over one first ensemble; where too few of it count they are drawn again.
class Learner {
public:
    explicit Learner(const SyntheticKeepers& what)
        : sampling_{what.seed + 1, what.winters},
          ensemble_(*winter::simulate(withBrood(), constants(), {what.seed + 1, what.winters}, 2)),
          paths_(ensemble_, {}, keepersQuestion().decided, constants()) {}

    WinterEvidence evidence(const SyntheticWinter& winter) const {
        const auto question = asked(winter);
        const auto belief = tracking::reweigh(question, paths_, {}, 1, constants());
        if (belief.effectiveWinters < constants().redrawBelow * sampling_.winters)
            return *evidenceOf({question, std::nullopt}, constants(), sampling_, 2);
        return evidenceIn(belief, ensemble_.draws(), constants());
    }
    LastingPair learned(const SyntheticKeeper& keeper, int years) const {
        std::vector<ColonyWinter> winters;
        for (int year = 0; year < years; ++year)
            winters.push_back({1, 1, evidence(keeper.winters[static_cast<std::size_t>(year)])});
        return learn(winters, constants()).colonies.at(1);
    }

private:
    static winter::WinterQuestion withBrood() {
        auto q = keepersQuestion().winter;
        q.keepBrood = true;
        return q;
    }
    winter::Sampling sampling_;
    winter::DemandEnsemble ensemble_;
    tracking::HivePaths paths_;
};

//! The exact posterior on a grid of both multipliers. Use only multiplies what is eaten, so it needs no simulation; for each of the
//! deaths an ensemble of its own is simulated. Nothing of core/tracking or core/learning is in it.
class ExactPosterior {
public:
    static constexpr int useCells = 29, deathCells = 13;
    static double useOf(int cell) { return -0.7 + 0.05 * cell; }
    static double deathOf(int cell) { return -0.6 + 0.1 * cell; }
    static std::size_t at(int use, int death) { return static_cast<std::size_t>(death * useCells + use); }
    using Grid = std::vector<double>;

    explicit ExactPosterior(const SyntheticKeepers& what) : n_(static_cast<std::size_t>(what.winters)) {
        for (int death = 0; death < deathCells; ++death) {
            auto q = keepersQuestion().winter;
            q.keepBrood = true;
            q.learned = winter::LearnedMultipliers{1, 0, std::exp(deathOf(death)), 0};
            tabulate(*winter::simulate(q, constants(), {what.seed + 2, what.winters}, 2), death);
        }
    }

    //! ln likelihood of a winter in every cell.
    Grid logLikelihood(const SyntheticWinter& w) const {
        Grid result(static_cast<std::size_t>(useCells) * deathCells);
        const double common = 1 + (1 - 0.09), fresh = 0.09; // stores and tare together, and the reading
        for (int death = 0; death < deathCells; ++death) {
            const auto& table = tables_[static_cast<std::size_t>(death)];
            for (int use = 0; use < useCells; ++use) {
                const double factor = std::exp(useOf(use));
                double sum = 0;
                for (std::size_t i = 0; i < n_; ++i) {
                    const Row& row = table[i];
                    double total = 0, squares = 0;
                    for (std::size_t k = 0; k < 3; ++k) {
                        const double r = w.gross[k] - 45.7 - row.rest[k] + factor * row.eaten[k];
                        total += r;
                        squares += r * r;
                    }
                    // Inverse of common x ones + fresh x identity (Sherman-Morrison).
                    const double square = (squares - common / (fresh + 3 * common) * total * total) / fresh;
                    const double bees = (std::log(w.covered) - row.logBees) / 0.15;
                    sum += std::exp(-0.5 * (square + bees * bees));
                }
                result[at(use, death)] = std::log(sum + 1e-300);
            }
        }
        return result;
    }

    Grid prior() const { return normalGrid({0, constants().lastingUseSd}, {0, constants().lastingDeathSd}); }
    Grid posterior(const SyntheticKeeper& keeper, int years) const {
        Grid logs = prior();
        for (double& each : logs) each = std::log(each);
        for (int year = 0; year < years; ++year) {
            const Grid more = logLikelihood(keeper.winters[static_cast<std::size_t>(year)]);
            for (std::size_t i = 0; i < logs.size(); ++i) logs[i] += more[i];
        }
        return tracking::normalised(logs);
    }
    Grid normalGrid(Lasting use, Lasting death) const {
        Grid grid(static_cast<std::size_t>(useCells) * deathCells);
        double sum = 0;
        for (int d = 0; d < deathCells; ++d)
            for (int u = 0; u < useCells; ++u) {
                const double a = (useOf(u) - use.logMean) / use.logSd, b = (deathOf(d) - death.logMean) / death.logSd;
                sum += grid[at(u, d)] = std::exp(-0.5 * (a * a + b * b));
            }
        for (double& each : grid) each /= sum;
        return grid;
    }
    static Lasting use(const Grid& grid) {
        double mean = 0, squares = 0;
        for (int d = 0; d < deathCells; ++d)
            for (int u = 0; u < useCells; ++u) {
                mean += grid[at(u, d)] * useOf(u);
                squares += grid[at(u, d)] * useOf(u) * useOf(u);
            }
        return {mean, std::sqrt(squares - mean * mean)};
    }

    //! Ranked score of the forecast of the loss by scoredDay that a grid of multipliers gives.
    double score(const Grid& grid, double observed) const {
        std::vector<double> mixture(bins, 0.0), values(bins);
        for (std::size_t cell = 0; cell < grid.size(); ++cell)
            if (grid[cell] > 1e-9)
                for (std::size_t b = 0; b < bins; ++b) mixture[b] += grid[cell] * forecast_[cell][b];
        for (std::size_t b = 0; b < bins; ++b) values[b] = (static_cast<double>(b) + 0.5) * binKg - 10;
        return rankedScore(values, mixture, observed);
    }

private:
    static constexpr std::size_t bins = 1000;
    static constexpr double binKg = 0.06;

    //! What a winter weighs on the three days beside stores and tare: bees, brood and income, and what it had eaten.
    struct Row {
        std::array<double, 3> rest{}, eaten{};
        double logBees = 0;
    };
    static double income(const winter::DemandEnsemble& e, int endOf, std::size_t i) {
        return static_cast<double>(e.used({endOf})[i]) - static_cast<double>(e.netLoss({endOf})[i]);
    }
    void tabulate(const winter::DemandEnsemble& e, int death) {
        std::vector<Row> table(n_);
        for (std::size_t i = 0; i < n_; ++i) {
            for (std::size_t k = 0; k < 3; ++k) {
                const int day = weighingDays[k];
                const double life =
                    0.000115 * static_cast<double>(e.bees({day})[i]) + 0.00015 * static_cast<double>(e.brood({day})[i]);
                table[i].rest[k] = life + income(e, day - 1, i);
                table[i].eaten[k] = static_cast<double>(e.used({day - 1})[i]);
            }
            table[i].logBees = std::log(static_cast<double>(e.bees({weighingDays[2]})[i]));
        }
        tables_.push_back(std::move(table));
        for (int use = 0; use < useCells; ++use) {
            forecast_.resize(std::max(forecast_.size(), at(use, death) + 1), std::vector<double>(bins, 0.0));
            for (std::size_t i = 0; i < n_; ++i) {
                const double kg =
                    std::exp(useOf(use)) * static_cast<double>(e.used({scoredDay})[i]) - income(e, scoredDay, i);
                const auto b = static_cast<std::size_t>(std::clamp((kg + 10) / binKg, 0.0, bins - 1.0));
                forecast_[at(use, death)][b] += 1.0 / static_cast<double>(n_);
            }
        }
    }
    std::size_t n_;
    std::vector<std::vector<Row>> tables_;      //!< [death][winter]
    std::vector<std::vector<double>> forecast_; //!< [cell][bin]
};

//! Share of keepers whose true multiplier on use lies in the learned 80 % interval, and of that on death.
struct Covered {
    double use = 0, death = 0;
};
inline Covered coverage(const SyntheticKeepers& what) {
    const auto keepers = inventKeepers(what);
    const Learner learner(what);
    Covered covered;
    for (const auto& keeper : keepers) {
        const LastingPair pair = learner.learned(keeper, what.years);
        covered.use += std::abs(keeper.logUse - pair.use.logMean) <= 1.2816 * pair.use.logSd ? 1 : 0;
        covered.death += std::abs(keeper.logDeath - pair.death.logMean) <= 1.2816 * pair.death.logSd ? 1 : 0;
    }
    covered.use /= what.keepers;
    covered.death /= what.keepers;
    return covered;
}

//! Mean ranked score of the fourth winter's loss, forecast after three winters: learned, exact, and with nothing learned [kg].
struct ForecastScores {
    double learned = 0, exact = 0, unlearned = 0;
};
inline ForecastScores scoresAfterThree(SyntheticKeepers what) {
    what.years = 4;
    const auto keepers = inventKeepers(what);
    const Learner learner(what);
    const ExactPosterior exact(what);
    ForecastScores scores;
    for (const auto& keeper : keepers) {
        const double truth = keeper.winters[3].loss;
        const LastingPair pair = learner.learned(keeper, 3);
        scores.learned += exact.score(exact.normalGrid(pair.use, pair.death), truth) / what.keepers;
        scores.exact += exact.score(exact.posterior(keeper, 3), truth) / what.keepers;
        scores.unlearned += exact.score(exact.prior(), truth) / what.keepers;
    }
    return scores;
}

} // namespace winterlarder::learning
