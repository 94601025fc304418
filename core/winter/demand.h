// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reference/model_constants.h"
#include "support/outcome.h"
#include "winter/luck.h"
#include "winter/question.h"

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <stop_token>
#include <vector>

namespace winterlarder::winter {

//! Means over all winters of one simulated day. Bees at the start of the day, brood after laying.
struct DayMeans {
    double temperatureC = 0;
    double eggs = 0;
    double bees = 0;
    double longLivedBees = 0; //!< of those
    double broodCells = 0;
    double adultPowerW = 0;
    double broodPowerW = 0;
    double useG = 0;       //!< food eaten, all causes
    double broodFoodG = 0; //!< of that, to rear brood
    double incomeG = 0;    //!< spring and background income, autumn trickle; a flow the keeper counts on is not in it
};

//! What one winter drew, kept for grouping and for reading dates.
struct WinterDraw {
    double beesFactor = 1;                   //!< X_bees
    double lastingUse = 1, lastingDeath = 1; //!< learned multipliers as drawn; 1 where nothing was learned
    double seasonOffsetK = 0;
    int broodStop = 0, broodRestart = 0, buildup = 0, forage = 0; //!< season days after drawing and rounding
    int lastIncome = 0; //!< season day after drawing and rounding; neverIncome: none
    static constexpr int neverIncome = -1000000;
    double usedToForageKg = 0;
    int longestLockedIn = 0; //!< days before forage with T + dT below the locked-in limit, longest run
};

//! Demand of every simulated winter: rows are days, columns are winters, cumulative kg from the start day. No stores
//! are in it, and the autumn flow beyond the trickle of every autumn stands apart (the whole of it at strength 1), so one
//! ensemble answers every option and every flow.
//! Immutable once made; cheap to move, not copied by accident.
class DemandEnsemble {
public:
    DemandEnsemble(SeasonDay first, int days, int winters, bool keepBrood = false);
    DemandEnsemble(DemandEnsemble&&) = default;
    DemandEnsemble& operator=(DemandEnsemble&&) = default;

    SeasonDay firstDay() const { return first_; }
    SeasonDay lastDay() const { return first_ + (days_ - 1); }
    int days() const { return days_; }
    int winters() const { return winters_; }
    bool covers(SeasonDay day) const { return day >= first_ && day <= lastDay(); }

    //! Food eaten less spring and background income and autumn trickle, to the end of the day [kg]; may fall below 0.
    std::span<const float> netLoss(SeasonDay day) const { return row(NetLoss, day); }
    //! Food eaten to the end of the day [kg].
    std::span<const float> used(SeasonDay day) const { return row(Used, day); }
    //! Autumn income at flow strength 1 to the end of the day [kg].
    std::span<const float> autumnIncome(SeasonDay day) const { return row(AutumnIncome, day); }
    //! Adult bees at the start of the day.
    std::span<const float> bees(SeasonDay day) const { return row(Bees, day); }
    //! Brood cells of all ages after laying; ContractViolation where it was not kept.
    std::span<const float> brood(SeasonDay day) const;
    bool keepsBrood() const { return keepsBrood_; }
    std::span<const WinterDraw> draws() const { return draws_; }
    const DayMeans& means(SeasonDay day) const;
    //! The forage day before anything is drawn: the run's end is 45 days past it.
    SeasonDay medianForage() const { return medianForage_; }
    //! phi_a: the share of the autumn income that the net loss has taken off already.
    double autumnTrickle() const { return autumnTrickle_; }

private:
    friend class EnsembleWriter;
    enum Matrix : std::size_t { NetLoss, Used, AutumnIncome, Bees, Brood };
    std::span<const float> row(Matrix matrix, SeasonDay day) const;
    float* cells(Matrix matrix) const { return cells_.get() + matrix * matrixSize(); }
    std::size_t matrixSize() const { return static_cast<std::size_t>(days_) * static_cast<std::size_t>(winters_); }
    SeasonDay first_;
    SeasonDay medianForage_{};
    double autumnTrickle_ = 0;
    int days_;
    int winters_;
    bool keepsBrood_;
    //! The matrices one behind the other, each [day][winter], not cleared: every cell is written once. In one piece, so that the next
    //! ensemble gets this one's memory back: allocated apart, a fifth of a run went into pages asked for anew.
    std::unique_ptr<float[]> cells_;
    std::vector<DayMeans> means_;
    std::vector<WinterDraw> draws_;
};

//! Told the share of work done, 0..1, now and then, from any worker thread; may be empty.
using ProgressSink = std::function<void(double)>;

//! Simulates the ensemble (model specification, sections 5 and 6). The same question, seed and number of winters give the same digits whatever
//! `threads` is (0 = all cores). Nothing comes back when stopped. Throws ContractViolation on a question outside the model's limits: start outside
//! -153..180, season not derivable, bees below 0, seen before the start, measured days not ascending or not finite.
std::optional<DemandEnsemble> simulate(const WinterQuestion& question, const ModelConstants& constants,
                                       Sampling sampling, int threads = 1, std::stop_token stop = {},
                                       const ProgressSink& progress = {});

//! The same with the luck of each winter given instead of drawn (one entry a winter): winters drawn again around what was learned.
//! Daily weather, burst and last income stay those of the sampling. Tested: tests/winter/learned_test.cpp.
std::optional<DemandEnsemble> simulateWith(const WinterQuestion& question, const ModelConstants& constants,
                                           Sampling sampling, std::span<const WinterLuck> luck, int threads = 1,
                                           std::stop_token stop = {});

//! The single noiseless winter with median constants: no draws, no daily noise, T = normal + question.offset, spring and
//! forage moved by -ph x offset. For tests and hand checks, 2-13 % below the ensemble's median; never for advice.
DemandEnsemble simulateCentral(const WinterQuestion& question, const ModelConstants& constants);

//! Last day the model runs to: min(180, max(forage + 45, start)).
SeasonDay runEnd(const WinterQuestion& question, const ModelConstants& constants);

} // namespace winterlarder::winter
