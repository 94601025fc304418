// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ensemble_cache.h"

namespace winterlarder::desk {

Outcome<AnsweredPointer> EnsembleCache::answer(const book::ColonyCase& record, int position,
                                               std::stop_token stop) const {
    auto outcome = adviser_->answer(record, position, std::move(stop));
    if (!outcome.ok()) return outcome;
    return withoutWinters(outcome.value());
}

Outcome<AnsweredPointer> EnsembleCache::preview(const book::ColonyCase& record, int position,
                                                std::stop_token stop) const {
    return adviser_->preview(record, position, std::move(stop));
}

AnsweredPointer EnsembleCache::recall(const AnsweredPointer& answered, std::stop_token stop) const {
    return withoutWinters(adviser_->recall(answered, std::move(stop)));
}

std::vector<AnsweredPointer> EnsembleCache::shareOut(const std::vector<AnsweredPointer>& yard,
                                                     advice::MovingCombs combs) const {
    auto shared = adviser_->shareOut(yard, combs);
    for (auto& colony : shared) colony = withoutWinters(colony);
    return shared;
}

AnsweredPointer EnsembleCache::withoutWinters(const AnsweredPointer& answered) const {
    if (!answered || !answered->answer.workings.ensemble) return answered;
    auto made = std::make_shared<AnsweredColony>(*answered);
    auto winters = std::exchange(made->answer.workings.ensemble, nullptr);
    made->winters = winters;
    const std::lock_guard lock(mutex_);
    kept_.push_back(std::move(winters));
    if (kept_.size() > most_) kept_.pop_front();
    return made;
}

} // namespace winterlarder::desk
