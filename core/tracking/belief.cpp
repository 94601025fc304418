// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/belief.h"

#include "numerics/normal_law.h"
#include "tracking/nodes.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace winterlarder::tracking {

namespace {

constexpr double enoughWinters = 50; // effective, to tell what is expected
constexpr std::size_t mostStarvedCases = 3;

std::vector<std::size_t> byDate(const FollowQuestion& q) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < q.observations.size(); ++i)
        if (q.observations[i].day >= q.decided && q.observations[i].day <= q.today) order.push_back(i);
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return q.observations[a].day < q.observations[b].day; });
    return order;
}

// Light says that no more is there and heavy that no less is: what is expected anyway stands.
double asFarAsItSays(const Observation& seen, double reading, double expected) {
    const auto* lifted = std::get_if<HeftSeen>(&seen.what);
    if (!lifted) return reading;
    if (lifted->word == stores::HeftWord::Light) return std::min(reading, expected);
    return lifted->word == stores::HeftWord::Heavy ? std::max(reading, expected) : reading;
}

// Takes the observations in, one after the other. A hive that starved is a case of its own; words of lifts are taken as in the case of one that
// lives (`living`), so that the likelihoods of all cases are of the same readings.
class Reweighing {
public:
    Reweighing(const FollowQuestion& question, const HivePaths& paths, const std::vector<double>& proposal,
               const ModelConstants& constants, std::optional<SeasonDay> starved, const std::vector<Judged>& living)
        : q(question), p(paths), k(constants), unknowns(question, paths.winters(), constants),
          logLikelihood(paths.winters(), 0.0), fixed(proposal), starvedBy(starved), asLiving(living) {}

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
    std::vector<double> logLikelihood;
    const std::vector<double>& fixed;
    std::optional<SeasonDay> starvedBy;
    const std::vector<Judged>& asLiving;
    std::vector<Judged> judged;

private:
    void weigh(std::size_t at, const Observation& seen) {
        Unknowns::Reading reading = unknowns.reading(seen, q, k, starvedBy && seen.day >= *starvedBy);
        if (!starvedBy) judgeAndAllow(at, seen, reading);
        for (const Judged& each : starvedBy ? asLiving : judged)
            if (each.observation == at) reading.value = each.taken, reading.freshVariance += each.widened;
        std::vector<double> observed(p.winters());
        for (std::size_t i = 0; i < observed.size(); ++i)
            observed[i] = reading.value - Unknowns::winterPart(reading, p, seen.day, i);
        unknowns.belief().observe(reading.sum, observed, reading.freshVariance, logLikelihood);
    }

    void judgeAndAllow(std::size_t at, const Observation& seen, Unknowns::Reading& reading) {
        Judged verdict = judge(at, seen, reading);
        confirmEarlier(verdict);
        if (std::abs(verdict.deviations) > k.contradictionLimit && std::holds_alternative<HeftSeen>(seen.what)) {
            verdict.widened = widenedToLimit(verdict);
        } else if (std::abs(verdict.deviations) > k.contradictionLimit) {
            verdict.contradicts = true;
            unknowns.allowUnexplained(seen.day, k);
            reading = unknowns.reading(seen, q, k);
        }
        judged.push_back(verdict);
    }

    // So much more variance that it lies no farther off than what just does not contradict.
    double widenedToLimit(Judged& verdict) const {
        const double off = verdict.taken - verdict.expected.typical, sd = off / verdict.deviations,
                     wide = off / k.contradictionLimit;
        verdict.deviations = std::copysign(k.contradictionLimit, off);
        return wide * wide - sd * sd;
    }

    // A weighing that agrees with what follows from one that contradicted makes that one believable.
    void confirmEarlier(const Judged& now) {
        if (std::abs(now.deviations) > 2) return;
        for (Judged& earlier : judged)
            if (earlier.contradicts && earlier.observation != now.observation) earlier.confirmed = true;
    }

    Judged judge(std::size_t at, const Observation& seen, const Unknowns::Reading& reading) const {
        const double power =
            temperingPower(logLikelihood, fixed, std::min(enoughWinters, 0.5 * static_cast<double>(p.winters())));
        const auto weights = normalised(tempered(logLikelihood, fixed, power));
        double mean = 0, squares = 0;
        for (std::size_t i = 0; i < weights.size(); ++i) {
            const double expected =
                unknowns.belief().expected(i, reading.sum) + Unknowns::winterPart(reading, p, seen.day, i);
            mean += weights[i] * expected;
            squares += weights[i] * expected * expected;
        }
        const double taken = asFarAsItSays(seen, reading.value, mean);
        const double between = std::max(0.0, squares - mean * mean);
        const double sd = std::sqrt(between + unknowns.belief().spread(reading.sum) + reading.freshVariance);
        return {.observation = at,
                .expected = {mean - tenthPercentile * sd, mean, mean + tenthPercentile * sd},
                .seen = reading.value,
                .taken = taken,
                .deviations = (taken - mean) / sd};
    }

    void count(SeasonDay day, BeeCount bees, double logSd) {
        if (bees.count <= 0) return;
        for (std::size_t i = 0; i < logLikelihood.size(); ++i) {
            const double deviation = std::log(bees.count / std::max(1.0, p.bees(day, i))) / logSd;
            logLikelihood[i] -= 0.5 * deviation * deviation;
        }
    }
};

// The days of the last weighings, each of which may be the first of a hive that had starved; none where something contradicts.
std::vector<SeasonDay> mayBeStarvedBy(const FollowQuestion& q, const std::vector<Judged>& judged) {
    if (std::any_of(judged.begin(), judged.end(), [](const Judged& each) { return each.contradicts; })) return {};
    std::vector<SeasonDay> days;
    for (std::size_t at : byDate(q))
        if (isWeighed(q.observations[at]) && (days.empty() || days.back() < q.observations[at].day))
            days.push_back(q.observations[at].day);
    if (days.size() > mostStarvedCases) days.erase(days.begin(), days.end() - mostStarvedCases);
    return days;
}

// Whether a case can count in any winter: e^-20 of the other one in none is as good as never.
bool thinkable(const std::vector<double>& likelihood, const std::vector<double>& never) {
    constexpr double hopeless = -20;
    for (std::size_t i = 0; i < likelihood.size(); ++i)
        if (likelihood[i] - never[i] > hopeless) return true;
    return false;
}

// The last weighing before a day on which the hive still had stores in that case.
std::optional<SeasonDay> weighedBefore(const FollowQuestion& q, std::optional<SeasonDay> day) {
    std::optional<SeasonDay> last;
    for (const auto& seen : q.observations)
        if (isWeighed(seen) && seen.day <= q.today && (!day || seen.day < *day) && (!last || seen.day > *last))
            last = seen.day;
    return last;
}

// Weights of the particles within their winters, and likelihoods of the winters: what each case makes of the readings, times what only a
// node can tell. False where no particle of any winter can be.
bool weighNodes(const std::vector<std::vector<double>>& caseLikelihood, const std::vector<double>& factor,
                Belief& belief) {
    const auto nodes = static_cast<std::size_t>(belief.nodes), winters = caseLikelihood.front().size();
    belief.logLikelihood.assign(winters, 0);
    bool some = false;
    for (std::size_t i = 0; i < winters; ++i) {
        double largest = caseLikelihood[0][i], sum = 0;
        for (const auto& each : caseLikelihood) largest = std::max(largest, each[i]);
        for (std::size_t c = 0; c < belief.parts.size(); ++c) {
            const auto& part = belief.parts[c];
            const double share = std::exp(caseLikelihood[c][i] - largest) / static_cast<double>(part.nodes);
            for (std::size_t p = i * nodes + part.first; p < i * nodes + part.first + part.nodes; ++p)
                sum += belief.weight[p] = share * factor[p];
        }
        belief.logLikelihood[i] = largest + std::log(sum);
        for (std::size_t p = i * nodes; p < (i + 1) * nodes; ++p) belief.weight[p] /= sum > 0 ? sum : 1;
        some = some || sum > 0;
    }
    return some;
}

void weighParticles(const FollowQuestion& q, const HivePaths& paths, const ModelConstants& k,
                    const std::vector<std::vector<double>>& caseLikelihood, const std::vector<double>& fixed,
                    Belief& belief) {
    const auto factor = nodeFactors(q, paths, k, belief);
    belief.fitsNoWinter = !weighNodes(caseLikelihood, factor, belief);
    if (belief.fitsNoWinter) weighNodes(caseLikelihood, std::vector<double>(factor.size(), 1), belief);
    belief.logWeight = belief.logLikelihood;
    for (std::size_t i = 0; i < fixed.size(); ++i) belief.logWeight[i] += fixed[i];
    const auto winters = normalised(belief.logWeight);
    for (std::size_t p = 0; p < belief.particles(); ++p) belief.weight[p] *= winters[belief.winterOf(p)];
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

Belief reweigh(const FollowQuestion& question, const HivePaths& paths, const std::vector<double>& logProposal,
               std::uint64_t seed, const ModelConstants& constants) {
    const auto fixed = logProposal.empty() ? std::vector<double>(paths.winters(), 0.0) : logProposal;
    Belief belief;
    std::vector<std::vector<double>> caseLikelihood;
    std::vector<Unknowns> cases;
    const auto take = [&](std::optional<SeasonDay> starvedBy, int nodes) {
        Reweighing reweighing(question, paths, fixed, constants, starvedBy, belief.judged);
        reweighing.takeAll();
        if (starvedBy && !thinkable(reweighing.logLikelihood, caseLikelihood.front())) return;
        if (!starvedBy) belief.judged = reweighing.judged;
        const auto first = static_cast<std::size_t>(belief.nodes);
        belief.parts.push_back({first, static_cast<std::size_t>(nodes), starvedBy, weighedBefore(question, starvedBy)});
        belief.nodes += nodes;
        caseLikelihood.push_back(std::move(reweighing.logLikelihood));
        cases.push_back(std::move(reweighing.unknowns));
    };
    belief.nodes = 0;
    take(std::nullopt, nodesPerWinter);
    for (SeasonDay day : mayBeStarvedBy(question, belief.judged)) take(day, nodesPerStarvedCase);
    belief.roster = std::make_shared<const Unknowns>(cases.front());
    drawNodes(question, paths, cases, seed, belief);
    belief.logLikelihood = caseLikelihood.front();
    weighParticles(question, paths, constants, caseLikelihood, fixed, belief);
    belief.logEvidence = logMean(belief.logWeight);
    return belief;
}

} // namespace winterlarder::tracking
