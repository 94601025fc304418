// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tracking/error_model.h"
#include "tracking/weights.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

namespace winterlarder::tracking {

//! How one observation stood to what was expected just before it.
struct Judged {
    std::size_t observation = 0; //!< place in the question's list
    Spread<double> expected;     //!< weighed ones: of the reading [kg]
    double seen = 0;             //!< the reading [kg]
    double taken = 0;            //!< as it is taken in: the reading, or of a lift's word no more than it says
    double widened = 0;       //!< variance added to a lift's word beyond all that was expected: no word outdoes a scale
    double deviations = 0;    //!< standard deviations from the expected middle; 0 where it is no weight
    bool contradicts = false; //!< outside everything expected
    bool confirmed = false;   //!< a later weighing lies within two standard deviations of what follows from it
};

//! What is believed of one colony: winters with weights, and within each the stores and errors that are normal given it, drawn as a
//! few nodes. A particle is (winter, node); its place is winter x nodes + node.
//!
//! Likelihood. Given a winter, weighed observations are sums of normal unknowns (LinearBelief): their likelihood is exact, with the
//! stores, the tare and the other lasting errors integrated out, so two weighings on one scale tell more of the loss between them
//! than of the stores. Bees seen have a normal likelihood on the logarithm. Signs of life, flights and glimpses depend on whether a
//! particle still has stores that day, and weigh the nodes. A hive weighed after it starved weighs no stores: each of the last three
//! weighings may be the first such one, so every winter has nodes for each of these cases, weighted by what the case makes of the
//! readings and kept only where their stores run out in that time.
//! Observations are taken in by date. One that lies contradictionLimit standard deviations from all that was expected contradicts
//! every winter: a change nobody recorded is then allowed for just before it, and it is said. A lift's word never does: it then errs so much more. Where nothing at all fits (more was
//! taken than was there, and stores were weighed later) it says so, and the particles count as if no weighing had shown stores.
//! Nodes are stratified over the stores (Cochran 1977, systematic sampling), so a few of them leave the averages over winters
//! unbiased. Tested: tests/tracking/belief_test.cpp (rejection sampling).
struct Belief {
    int nodes = 1;
    std::vector<double> logWeight;             //!< of each winter, likelihood and proposal, not normalised
    std::vector<double> logLikelihood;         //!< of each winter, likelihood alone
    std::vector<double> weight;                //!< of each particle; all sum to 1
    std::shared_ptr<const Unknowns> roster;    //!< which unknown is what; everything read off this belief goes by it
    std::vector<std::vector<double>> unknowns; //!< [unknown][particle], see roster
    const std::vector<double>& stores() const {
        return unknowns[Unknowns::stores];
    } //!< at the start of the decision's day [kg]
    const std::vector<double>& tareError() const { return unknowns[Unknowns::tare]; } //!< lasting [kg]
    struct Change {
        SeasonDay day;          //!< in force at the end of it
        std::vector<double> kg; //!< of each particle
    };
    std::vector<Change> changes; //!< of stores, by day
    struct Part {                //!< nodes of a winter that share one case
        std::size_t first = 0, nodes = 0;
        std::optional<SeasonDay> starvedBy, notBefore; //!< weighed starved from this day on, with stores until that one
    };
    std::vector<Part> parts;
    std::vector<int> outDay;    //!< first season day at whose end nothing is left up to today; neverOut: there is some
    std::vector<Judged> judged; //!< by date
    bool fitsNoWinter = false;  //!< by the records nothing was left before a day on which stores were weighed
    double effectiveWinters = 0;
    double logEvidence = 0; //!< log of the mean likelihood over the winters

    static constexpr int neverOut = 1000;
    std::size_t particles() const { return weight.size(); }
    std::size_t winterOf(std::size_t particle) const { return particle / static_cast<std::size_t>(nodes); }
};

//! Reweighs the winters of some paths. `logProposal` per winter is log(prior density / proposal density) where they were drawn again;
//! empty: drawn from the prior. `seed` feeds the nodes.
Belief reweigh(const FollowQuestion& question, const HivePaths& paths, const std::vector<double>& logProposal,
               std::uint64_t seed, const ModelConstants& constants);

} // namespace winterlarder::tracking
