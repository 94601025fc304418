// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/belief.h"

#include "tracking/nodes.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace winterlarder::tracking {

namespace {

constexpr double tenth = 1.2816;   // SDs from the middle to the 10th and 90th percentile
constexpr double enoughWinters = 50; // effective, to tell what is expected

std::vector<std::size_t> byDate(const FollowQuestion& q) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < q.observations.size(); ++i)
        if (q.observations[i].day >= q.decided && q.observations[i].day <= q.today) order.push_back(i);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return q.observations[a].day < q.observations[b].day; });
    return order;
}

// Takes the observations in, one after the other.
class Reweighing {
public:
    Reweighing(const FollowQuestion& question, const HivePaths& paths, const std::vector<double>& logProposal,
               const ModelConstants& constants)
        : q(question), p(paths), k(constants), unknowns(question, paths.winters(), constants), logLikelihood(paths.winters(), 0.0),
          fixed(logProposal.empty() ? std::vector<double>(paths.winters(), 0.0) : logProposal) {}

    void takeAll() {
        for (std::size_t at : byDate(q)) {
            const Observation& seen = q.observations[at];
            if (isWeighed(seen)) weigh(at, seen);
            if (const auto* bees = std::get_if<BeesSeen>(&seen.what)) count(seen.day, bees->bees, bees->logSd);
            if (const auto* cluster = std::get_if<ClusterSeen>(&seen.what); cluster && cluster->bees)
                count(seen.day, *cluster->bees, k.clusterSeenSd);
        }
    }

    const FollowQuestion& q;
    const HivePaths& p;
    const ModelConstants& k;
    Unknowns unknowns;
    std::vector<double> logLikelihood, fixed;
    std::vector<Judged> judged;

private:
    void weigh(std::size_t at, const Observation& seen) {
        Unknowns::Reading reading = unknowns.reading(seen, q, k);
        Judged verdict = judge(at, seen, reading);
        confirmEarlier(verdict);
        if (std::abs(verdict.deviations) > k.contradictionLimit) {
            verdict.contradicts = true;
            unknowns.allowUnexplained(seen.day, k);
            reading = unknowns.reading(seen, q, k);
        }
        judged.push_back(verdict);
        std::vector<double> observed(p.winters());
        for (std::size_t i = 0; i < observed.size(); ++i)
            observed[i] = reading.value - Unknowns::winterPart(reading, p, seen.day, i);
        unknowns.belief().observe(reading.sum, observed, reading.freshVariance, logLikelihood);
    }

    // A weighing that agrees with what follows from one that contradicted makes that one believable.
    void confirmEarlier(const Judged& now) {
        if (std::abs(now.deviations) > 2) return;
        for (Judged& earlier : judged)
            if (earlier.contradicts && earlier.observation != now.observation) earlier.confirmed = true;
    }

    Judged judge(std::size_t at, const Observation& seen, const Unknowns::Reading& reading) const {
        const double power = temperingPower(logLikelihood, fixed, std::min(enoughWinters, 0.5 * static_cast<double>(p.winters())));
        std::vector<double> logs(p.winters());
        for (std::size_t i = 0; i < logs.size(); ++i) logs[i] = power * logLikelihood[i] + fixed[i];
        const auto weights = normalised(logs);
        double mean = 0, squares = 0;
        for (std::size_t i = 0; i < weights.size(); ++i) {
            const double expected =
                unknowns.belief().expected(i, reading.sum) + Unknowns::winterPart(reading, p, seen.day, i);
            mean += weights[i] * expected;
            squares += weights[i] * expected * expected;
        }
        const double between = std::max(0.0, squares - mean * mean);
        const double sd = std::sqrt(between + unknowns.belief().spread(reading.sum) + reading.freshVariance);
        return {at, {mean - tenth * sd, mean, mean + tenth * sd}, reading.value, (reading.value - mean) / sd, false, false};
    }

    void count(SeasonDay day, BeeCount bees, double logSd) {
        if (bees.count <= 0) return;
        for (std::size_t i = 0; i < logLikelihood.size(); ++i) {
            const double deviation = std::log(bees.count / std::max(1.0, p.bees(day, i))) / logSd;
            logLikelihood[i] -= 0.5 * deviation * deviation;
        }
    }
};

// Weights of the particles: their winters', shared among the nodes by what only a node can tell.
void weighParticles(const Reweighing& r, Belief& belief) {
    const auto nodes = static_cast<std::size_t>(belief.nodes);
    std::vector<double> factor = nodeFactors(r.q, r.p, r.unknowns, r.k, belief);
    for (std::size_t i = 0; i < r.p.winters(); ++i) {
        double sum = 0;
        for (std::size_t n = 0; n < nodes; ++n) sum += factor[i * nodes + n];
        belief.logLikelihood[i] += std::log(sum / static_cast<double>(nodes));
        belief.logWeight[i] = belief.logLikelihood[i] + r.fixed[i];
        for (std::size_t n = 0; n < nodes; ++n) factor[i * nodes + n] /= sum > 0 ? sum : 1;
    }
    const auto winters = normalised(belief.logWeight);
    for (std::size_t particle = 0; particle < factor.size(); ++particle)
        belief.weight[particle] = winters[belief.winterOf(particle)] * factor[particle];
    belief.effectiveWinters = effectiveSize(winters);
}

double logMean(const std::vector<double>& logs) {
    const double largest = *std::max_element(logs.begin(), logs.end());
    if (std::isinf(largest)) return largest;
    double sum = 0;
    for (double each : logs) sum += std::exp(each - largest);
    return largest + std::log(sum / static_cast<double>(logs.size()));
}

} // namespace

Belief reweigh(const FollowQuestion& question, const HivePaths& paths, const std::vector<double>& logProposal, std::uint64_t seed,
               const ModelConstants& constants) {
    Reweighing reweighing(question, paths, logProposal, constants);
    reweighing.takeAll();
    Belief belief;
    belief.judged = reweighing.judged;
    belief.logLikelihood = reweighing.logLikelihood;
    belief.logWeight = reweighing.logLikelihood;
    drawNodes(question, paths, reweighing.unknowns, seed, belief);
    weighParticles(reweighing, belief);
    belief.logEvidence = logMean(belief.logWeight);
    return belief;
}

} // namespace winterlarder::tracking
