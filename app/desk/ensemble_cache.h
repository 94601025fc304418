// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/adviser.h"

#include <deque>
#include <mutex>

namespace winterlarder::desk {

//! Keeps a large yard's memory in bounds: the winters of an answer take ten megabytes, and only those of the last answers are kept. The
//! plan of a yard simulates those it needs anew. Tested: tests/app/ensemble_cache_test.cpp.
class EnsembleCache : public Adviser {
public:
    explicit EnsembleCache(std::shared_ptr<const Adviser> adviser, std::size_t kept = 16)
        : adviser_(std::move(adviser)), most_(kept) {}

    Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int position, std::stop_token stop) const override;
    Outcome<AnsweredPointer> preview(const book::ColonyCase& record, int position, std::stop_token stop) const override;
    AnsweredPointer recall(const AnsweredPointer& answered, std::stop_token stop) const override;
    std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>& yard,
                                          advice::MovingCombs combs) const override;

private:
    AnsweredPointer withoutWinters(const AnsweredPointer& answered) const;

    std::shared_ptr<const Adviser> adviser_;
    std::size_t most_;
    mutable std::mutex mutex_; //!< guards what follows
    mutable std::deque<std::shared_ptr<const winter::DemandEnsemble>> kept_;
};

} // namespace winterlarder::desk
