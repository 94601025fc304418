// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/food_ahead.h"

#include <algorithm>

namespace winterlarder::tracking {

namespace {

// Every winter's largest net loss from today on, one day after the other.
class LargestLoss {
public:
    explicit LargestLoss(const FollowBasis& r)
        : paths_(*r.tracked.paths), yesterday_(r.tracked.paths->within(r.question.today) - 1),
          largest_(paths_.winters(), 0.0) {}

    SeasonDay last() const { return paths_.last(); }
    const std::vector<double>& until(SeasonDay day) {
        for (std::size_t i = 0; i < largest_.size(); ++i)
            largest_[i] =
                std::max(largest_[i], static_cast<double>(paths_.lossUntil(day, i) - paths_.lossUntil(yesterday_, i)));
        return largest_;
    }

private:
    const HivePaths& paths_;
    SeasonDay yesterday_;
    std::vector<double> largest_;
};

std::vector<double> winterWeights(const Belief& belief, std::size_t winters) {
    std::vector<double> weights(winters, 0.0);
    for (std::size_t p = 0; p < belief.particles(); ++p) weights[belief.winterOf(p)] += belief.weight[p];
    return weights;
}

double changedBefore(const Belief& belief, SeasonDay day, std::size_t particle) {
    double kg = 0;
    for (const auto& change : belief.changes)
        if (change.day < day) kg += change.kg[particle];
    return kg;
}

} // namespace

Mass storesNow(const FollowBasis& r) {
    Mass stores = r.following.now.today.typical;
    for (const auto& step : r.question.steps)
        if (step.day == r.question.today && step.kind != KnownStep::Kind::Equipment) stores += step.change;
    return std::max(kilograms(0), stores);
}

std::vector<double> hardUse(const FollowBasis& r, SeasonDay last) {
    LargestLoss losses(r);
    const auto weights = winterWeights(r.tracked.belief, r.tracked.paths->winters());
    WeightedKilograms kilos;
    std::vector<double> used;
    for (SeasonDay day = r.question.today; day <= std::min(last, losses.last()); day = day + 1) {
        const auto& largest = losses.until(day);
        kilos.clear();
        for (std::size_t i = 0; i < largest.size(); ++i)
            if (weights[i] > 0) kilos.add(largest[i], weights[i]);
        used.push_back(kilos.quantile(r.question.decisions.hardUse));
    }
    return used;
}

bool foodRunsShort(const FollowBasis& r) {
    const auto used = hardUse(r, r.question.today + (static_cast<int>(r.question.decisions.actNowDays) - 1));
    return !used.empty() && used.back() > storesNow(r).value();
}

std::optional<SeasonDay> neededBy(const FollowBasis& r, SeasonDay last) {
    const double spare = (storesNow(r) - r.question.reserve).value();
    const auto used = hardUse(r, last);
    const auto found = std::find_if(used.begin(), used.end(), [&](double kg) { return kg >= spare; });
    if (found == used.end()) return std::nullopt;
    return r.question.today + static_cast<int>(found - used.begin());
}

Spread<Mass> wantedBy(const FollowBasis& r, SeasonDay last, Mass given) {
    const auto& belief = r.tracked.belief;
    LargestLoss losses(r);
    std::vector<double> largest(r.tracked.paths->winters(), 0.0);
    for (SeasonDay day = r.question.today; day <= std::min(last, losses.last()); day = day + 1)
        largest = losses.until(day);
    WeightedKilograms wanted;
    bool living = false;
    const SeasonDay yesterday = r.tracked.paths->within(r.question.today) - 1;
    for (std::size_t p = 0; p < belief.particles(); ++p) {
        if (belief.outDay[p] != Belief::neverOut || belief.weight[p] <= 0) continue;
        const std::size_t winter = belief.winterOf(p);
        const double now = belief.stores()[p] + changedBefore(belief, r.question.today + 1, p) -
                           static_cast<double>(r.tracked.paths->lossUntil(yesterday, winter));
        wanted.add(std::max(0.0, r.question.reserve.value() + largest[winter] - now - given.value()), belief.weight[p]);
        living = true;
    }
    if (!living) return {kilograms(0), kilograms(0), kilograms(0)};
    return wanted.spread();
}

} // namespace winterlarder::tracking
