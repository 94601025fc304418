// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/answer_parts.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

// What hangs on a reading beside stores: hive, bee bread, equipment, bees and brood, and the lasting errors.
class Beside {
public:
    Beside(const FollowBasis& basis, const Observation& observation)
        : r(basis), seen(observation), reading_(r.tracked.belief.roster->reading(seen, r.question, r.constants)),
          known_(reading_.known) {
        for (const auto& change : r.tracked.belief.roster->changes()) {
            if (!change.ofStores || change.day > seen.day) continue;
            known_ -= change.kg;
            if (change.error) ofStores_.push_back(*change.error);
        }
    }

    SeenStores stores(std::size_t observation) const {
        const auto& belief = r.tracked.belief;
        double mean = 0, square = 0;
        for (std::size_t p = 0; p < belief.particles(); ++p) {
            const double kg = of(p);
            mean += belief.weight[p] * kg;
            square += belief.weight[p] * kg * kg;
        }
        const double variance = std::max(0.0, square - mean * mean) + reading_.freshVariance;
        return {observation, seen.day, kilograms(std::max(0.0, reading_.value - mean)), kilograms(std::sqrt(variance))};
    }

private:
    double of(std::size_t particle) const {
        const auto& belief = r.tracked.belief;
        double kg = known_ + (reading_.ofWeight ? r.tracked.paths->lifeKg(seen.day, belief.winterOf(particle)) : 0);
        for (const auto& part : reading_.sum) {
            const bool isStores = part.unknown == Unknowns::stores ||
                                  std::find(ofStores_.begin(), ofStores_.end(), part.unknown) != ofStores_.end();
            if (!isStores) kg += part.factor * belief.unknowns[part.unknown][particle];
        }
        return kg;
    }

    const FollowBasis& r;
    const Observation& seen;
    Unknowns::Reading reading_;
    double known_;
    std::vector<std::size_t> ofStores_;
};

} // namespace

std::vector<SeenStores> seenStores(const FollowBasis& r) {
    std::vector<SeenStores> all;
    const auto& observations = r.question.observations;
    for (std::size_t i = 0; i < observations.size(); ++i)
        if (isWeighed(observations[i]) && observations[i].day >= r.question.decided &&
            observations[i].day <= r.question.today)
            all.push_back(Beside(r, observations[i]).stores(i));
    std::stable_sort(all.begin(), all.end(), [](const SeenStores& a, const SeenStores& b) { return a.day < b.day; });
    return all;
}

} // namespace winterlarder::tracking
