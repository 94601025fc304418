// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/course.h"

#include "numerics/normal.h"
#include "numerics/normal_law.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

constexpr double farAbove = 2; // distances from the middle to the 90th percentile

struct Counted {
    const Observation* when = nullptr;
    BeeCount bees{0};
};

// The last count of bees there is.
Counted lastCount(const FollowQuestion& q) {
    Counted last;
    for (const auto& seen : q.observations) {
        const auto* cluster = std::get_if<ClusterSeen>(&seen.what);
        const auto* counted = std::get_if<BeesSeen>(&seen.what);
        const bool tells = counted || (cluster && cluster->bees);
        if (!tells || seen.day > q.today || (last.when && seen.day < last.when->day)) continue;
        last = {&seen, counted ? counted->bees : *cluster->bees};
    }
    return last;
}

// ---- weighings on one scale ----------------------------------------------------------------------------------------------

std::vector<std::size_t> weighingsByDay(const FollowQuestion& q) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < q.observations.size(); ++i) {
        const auto& seen = q.observations[i];
        if (std::holds_alternative<WeightSeen>(seen.what) && seen.day >= q.decided && seen.day <= q.today)
            found.push_back(i);
    }
    std::stable_sort(found.begin(), found.end(),
                     [&](std::size_t a, std::size_t b) { return q.observations[a].day < q.observations[b].day; });
    return found;
}

const Judged* judgementOf(const FollowBasis& r, std::size_t observation) {
    const auto& all = r.following.judged;
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const Judged& each) { return each.observation == observation; });
    return found == all.end() ? nullptr : &*found;
}

bool contradicts(const FollowBasis& r, std::size_t observation) {
    const Judged* judged = judgementOf(r, observation);
    return judged && judged->contradicts;
}

stores::WeighingKind kindOf(const FollowQuestion& q, std::size_t observation) {
    return std::get<WeightSeen>(q.observations[observation].what).kind;
}

// The last weighing and those it is compared with, none in doubt and none before a change nobody recorded.
struct Compared {
    std::size_t last = 0;
    std::vector<std::size_t> with; //!< the first and the one before
};

std::optional<Compared> compared(const FollowBasis& r) {
    const auto all = weighingsByDay(r.question);
    if (all.size() < 2) return std::nullopt;
    Compared result{all.back(), {}};
    std::vector<std::size_t> alike;
    for (std::size_t at : all) {
        if (at == result.last || r.question.observations[at].day >= r.question.observations[result.last].day) continue;
        if (contradicts(r, at)) alike.clear();
        if (judgementOf(r, at) && contradicts(r, at) && !judgementOf(r, at)->confirmed) continue;
        if (kindOf(r.question, at) == kindOf(r.question, result.last)) alike.push_back(at);
    }
    if (alike.empty()) return std::nullopt;
    result.with.push_back(alike.front());
    if (alike.size() > 1) result.with.push_back(alike.back());
    return result;
}

double stepVariance(const FollowQuestion& q, SeasonDay after, SeasonDay until, const ModelConstants& constants) {
    double variance = 0;
    for (const auto& step : q.steps) {
        if (step.day <= after || step.day > until) continue;
        const double sd = stepSd(step, constants).value();
        variance += sd * sd;
    }
    return variance;
}

// Share of the autumn's winters that lose less than so much, an error of the readings on top.
double shareBelow(const std::vector<double>& losses, double lost, double sd) {
    double share = 0;
    for (double loss : losses) share += sd > 0 ? numerics::normalBelow((lost - loss) / sd) : (loss < lost ? 1.0 : 0.0);
    return share / static_cast<double>(losses.size());
}

std::optional<EatenFaster> fasterBetween(const FollowBasis& r, std::size_t first, std::size_t second) {
    const FollowQuestion& q = r.question;
    const auto &earlier = q.observations[first], &later = q.observations[second];
    const auto& roster = *r.tracked.belief.roster;
    const auto before = roster.reading(earlier, q, r.constants), after = roster.reading(later, q, r.constants);
    const HivePaths& paths = *r.planned.paths;
    std::vector<double> losses(paths.winters());
    for (std::size_t i = 0; i < losses.size(); ++i)
        losses[i] =
            Unknowns::winterPart(before, paths, earlier.day, i) - Unknowns::winterPart(after, paths, later.day, i);
    const double sd =
        std::sqrt(before.freshVariance + after.freshVariance + stepVariance(q, earlier.day, later.day, r.constants));
    const double lost = before.value - after.value;
    if (shareBelow(losses, lost, sd) <= q.decisions.fasterThan) return std::nullopt;
    return EatenFaster{second,
                       earlier.date,
                       later.date,
                       kilograms(lost),
                       kilograms(winter::quantile(losses, 0.5)),
                       contradicts(r, second)};
}

} // namespace

std::optional<Dwindled> dwindled(const FollowBasis& r) {
    const Counted last = lastCount(r.question);
    if (!last.when || last.when->day < r.question.decided) return std::nullopt;
    const HivePaths& paths = *r.planned.paths;
    std::vector<double> expected(paths.winters());
    for (std::size_t i = 0; i < expected.size(); ++i) expected[i] = paths.bees(paths.within(last.when->day), i);
    const double least = winter::quantile(expected, 0.1);
    if (last.bees.count >= r.question.decisions.dwindlingShare * least) return std::nullopt;
    return Dwindled{last.when->date, last.bees, {least}};
}

std::optional<EatenFaster> eatenFaster(const FollowBasis& r) {
    const auto weighings = compared(r);
    if (!weighings) return std::nullopt;
    for (std::size_t first : weighings->with)
        if (auto faster = fasterBetween(r, first, weighings->last)) return faster;
    return std::nullopt;
}

std::optional<Heavier> heavierThanExpected(const FollowBasis& r) {
    const auto weighings = weighingsByDay(r.question);
    const Judged* last = weighings.empty() ? nullptr : judgementOf(r, weighings.back());
    if (!last || last->contradicts) return std::nullopt;
    const auto& expected = last->expected;
    if (last->seen <= expected.typical + farAbove * (expected.high - expected.typical)) return std::nullopt;
    return Heavier{r.question.observations[weighings.back()].date, kilograms(last->seen),
                   kilograms(std::max(0.0, expected.low)), kilograms(std::max(0.0, expected.high))};
}

bool lessThanThought(const FollowBasis& r) {
    const auto& at = r.question.stores;
    const auto& belief = r.tracked.belief;
    const double atTenth = at.mean.value() - tenthPercentile * at.sd.value();
    double below = 0;
    for (std::size_t p = 0; p < belief.particles(); ++p)
        if (belief.stores()[p] < atTenth) below += belief.weight[p];
    return below > 0.5;
}

bool moreThanNeeded(const FollowBasis& r) {
    const FollowQuestion& q = r.question;
    if (weighingsByDay(q).empty() || q.fullComb.value() <= 0) return false;
    const auto& rules = q.decisions;
    const bool springIsNear = q.today >= r.following.now.forage.typical - static_cast<int>(rules.moreSpringDays);
    const Mass spare = q.fullComb * (springIsNear ? rules.moreCombsInSpring : rules.moreCombs);
    return r.following.now.atForage.low >= q.springReserve + spare;
}

} // namespace winterlarder::tracking
