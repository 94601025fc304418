// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/nodes.h"

#include "numerics/golden.h"
#include "numerics/normal.h"
#include "winter/draws.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

constexpr double explainable = 1e-3; // share of all that must be able to explain a sign of life

// Changes of stores that have happened by the end of a day, of one particle.
double changedBy(const Belief& belief, SeasonDay endOf, std::size_t particle) {
    double total = 0;
    for (const auto& change : belief.changes)
        if (change.day <= endOf) total += change.kg[particle];
    return total;
}

// Places of a winter's nodes: strata of the normal, moved by a different part of a stratum in every winter.
double stratum(std::size_t winter, std::size_t node, std::size_t nodes) {
    const double shift = std::fmod(0.5 + numerics::goldenPart * static_cast<double>(winter), 1.0);
    const double p = (static_cast<double>(node) + shift) / static_cast<double>(nodes);
    return numerics::inverseNormal(std::clamp(p, 1e-6, 1 - 1e-6));
}

void drawCase(const LinearBelief& normal, std::uint64_t seed, std::uint64_t stream, const Belief::Part& part,
              std::size_t winters, Belief& belief) {
    constexpr std::uint32_t firstIndex = 1u << 16; // beyond what the simulation draws
    const auto root = normal.root();
    std::vector<double> z(normal.size());
    for (std::size_t i = 0; i < winters; ++i)
        for (std::size_t n = 0; n < part.nodes; ++n) {
            const std::size_t node = part.first + n, p = i * static_cast<std::size_t>(belief.nodes) + node;
            for (std::size_t a = 0; a < z.size(); ++a) {
                if (root[a][a] <= 0) continue;
                const auto index = firstIndex + static_cast<std::uint32_t>(node * z.size() + a);
                z[a] = a == 0
                           ? stratum(i, n, part.nodes)
                           : winter::normal(seed, winter::Luck::Colony, stream, static_cast<std::uint32_t>(i), index);
            }
            for (std::size_t a = 0; a < z.size(); ++a) {
                double value = normal.mean(i, a);
                for (std::size_t b = 0; b <= a; ++b) value += root[a][b] * z[b];
                belief.unknowns[a][p] = value;
            }
        }
}

// All cases know the same changes; where one was allowed for there is one case only.
void takeChanges(const Unknowns& unknowns, Belief& belief) {
    for (const auto& change : unknowns.changes()) {
        if (!change.ofStores) continue;
        Belief::Change drawn{change.day, std::vector<double>(belief.particles(), change.kg)};
        if (change.error)
            for (std::size_t p = 0; p < drawn.kg.size(); ++p) drawn.kg[p] += belief.unknowns[*change.error][p];
        belief.changes.push_back(std::move(drawn));
    }
    std::stable_sort(belief.changes.begin(), belief.changes.end(),
                     [](const Belief::Change& a, const Belief::Change& b) { return a.day < b.day; });
}

void followToToday(const FollowQuestion& q, const HivePaths& paths, Belief& belief) {
    belief.outDay.assign(belief.particles(), Belief::neverOut);
    std::vector<double> level = belief.stores();
    const auto nodes = static_cast<std::size_t>(belief.nodes);
    for (std::size_t p = 0; p < level.size(); ++p)
        if (level[p] <= 0) belief.outDay[p] = q.decided.w - 1;
    auto change = belief.changes.begin();
    for (SeasonDay day = q.decided; day < q.today && day <= paths.last(); day = day + 1) {
        for (; change != belief.changes.end() && change->day <= day; ++change)
            for (std::size_t p = 0; p < level.size(); ++p) level[p] += change->kg[p];
        const float* loss = paths.lossRow(day);
        const double most = static_cast<double>(*std::max_element(loss, loss + paths.winters()));
        if (most < *std::min_element(level.begin(), level.end())) continue;
        for (std::size_t i = 0; i < paths.winters(); ++i)
            for (std::size_t p = i * nodes; p < (i + 1) * nodes; ++p)
                if (belief.outDay[p] == Belief::neverOut && level[p] <= static_cast<double>(loss[i]))
                    belief.outDay[p] = day.w;
    }
}

} // namespace

void drawNodes(const FollowQuestion& question, const HivePaths& paths, const std::vector<Unknowns>& cases,
               std::uint64_t seed, Belief& belief) {
    const std::size_t particles = paths.winters() * static_cast<std::size_t>(belief.nodes);
    belief.weight.assign(particles, 0.0);
    belief.unknowns.assign(cases.front().belief().size(), std::vector<double>(particles));
    for (std::size_t c = 0; c < cases.size(); ++c)
        drawCase(cases[c].belief(), seed, question.winter.colonyStream, belief.parts[c], paths.winters(), belief);
    takeChanges(cases.front(), belief);
    followToToday(question, paths, belief);
}

namespace {

// Judges signs by what a particle still has.
class Signs {
public:
    Signs(const HivePaths& hivePaths, const ModelConstants& constants, const Belief& drawn, double foodElsewhere)
        : paths(hivePaths), k(constants), belief(drawn), elsewhere(foodElsewhere) {}

    bool dead(const Observation& seen, std::size_t particle) const { return belief.outDay[particle] < seen.day.w; }

    //! Stores at the start of the day, changes of that day counted, as if the particle had not starved.
    double stores(const Observation& seen, std::size_t particle) const {
        const SeasonDay yesterday = paths.within(seen.day) - 1;
        return belief.stores()[particle] + changedBy(belief, seen.day, particle) -
               static_cast<double>(paths.lossUntil(yesterday, belief.winterOf(particle)));
    }

    double factor(const Observation& seen, std::size_t particle) const {
        if (showsAlive(seen)) return dead(seen, particle) ? 0 : 1;
        if (std::holds_alternative<FlyingSeen>(seen.what)) return dead(seen, particle) ? k.flyingThoughDead : 1;
        if (const auto* comb = std::get_if<CombGlimpsed>(&seen.what)) {
            const double left = dead(seen, particle) ? 0 : stores(seen, particle);
            const double shown = numerics::normalBelow((left - k.glimpseHalf) / k.glimpseSd);
            return comb->stores ? shown : std::max(elsewhere, 1 - shown);
        }
        if (std::holds_alternative<StarvedOut>(seen.what)) return dead(seen, particle) ? 1 : 0;
        return 1;
    }

private:
    const HivePaths& paths;
    const ModelConstants& k;
    const Belief& belief;
    double elsewhere; // share of well filled hives whose food is out of the cluster's sight
};

// 1 where a particle ran out of stores in the time its case says, else 0.
double fitsItsCase(const Belief::Part& part, int outDay) {
    const bool hadStores = !part.notBefore || outDay >= part.notBefore->w;
    const bool hasStarved = !part.starvedBy || outDay < part.starvedBy->w;
    return hadStores && hasStarved ? 1 : 0;
}

std::vector<double> caseFactors(const Belief& belief) {
    std::vector<double> factor(belief.particles());
    const auto nodes = static_cast<std::size_t>(belief.nodes);
    for (const auto& part : belief.parts)
        for (std::size_t p = part.first; p < factor.size(); p += nodes)
            for (std::size_t n = 0; n < part.nodes; ++n) factor[p + n] = fitsItsCase(part, belief.outDay[p + n]);
    return factor;
}

} // namespace

std::vector<double> nodeFactors(const FollowQuestion& question, const HivePaths& paths, const ModelConstants& constants,
                                Belief& belief) {
    const Signs signs(paths, constants, belief, question.decisions.foodElsewhere);
    std::vector<double> factor = caseFactors(belief), each(belief.particles());
    const auto winters = normalised(belief.logLikelihood);
    for (std::size_t at = 0; at < question.observations.size(); ++at) {
        const Observation& seen = question.observations[at];
        if (seen.day < question.decided || seen.day > question.today || isWeighed(seen) ||
            std::holds_alternative<DeadOut>(seen.what))
            continue;
        double before = 0, after = 0;
        for (std::size_t p = 0; p < each.size(); ++p) {
            each[p] = signs.factor(seen, p);
            before += winters[belief.winterOf(p)] * factor[p];
            after += winters[belief.winterOf(p)] * factor[p] * each[p];
        }
        if (after < explainable * before) {
            belief.judged.push_back({.observation = at, .contradicts = true});
            continue;
        }
        for (std::size_t p = 0; p < each.size(); ++p) factor[p] *= each[p];
    }
    return factor;
}

} // namespace winterlarder::tracking
