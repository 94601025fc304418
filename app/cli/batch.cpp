// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/batch.h"

#include "answer/united_case.h"
#include "answer/units_of_place.h"
#include "support/caught.h"

#include <fmt/format.h>

namespace winterlarder::cli {

namespace {

constexpr std::size_t waitingPerThread = 4;

struct WeighedCase {
    book::ColonyCase record;
    WeighedColony member;
    Problems asked;
};

Outcome<WeighedCase> weighedCase(const BatchItem& item, const ReferenceData& reference, winter::Sampling sampling,
                                 int threads) {
    auto read = answer::readQuestion(item.text, item.file, reference, item.position, item.line > 0 ? item.line : 1);
    if (!read) return read.problems();
    read->question.setAside.insert(read->question.setAside.end(), item.setAside.begin(), item.setAside.end());
    if (item.record) read->question.united = answer::unitedRemarks(*item.record);
    if (item.units) {
        read->question.answers.units = item.units;
        read->question.steps = answer::stepsFor(*item.units);
    }
    auto weighed = advice::weigh(read->question, reference.constants, sampling, threads);
    return WeighedCase{item.record ? *item.record : std::move(read->record),
                       {std::move(read->question), std::move(weighed->advice)},
                       std::move(read->asked)};
}

} // namespace

std::string BatchItem::at() const { return line > 0 ? fmt::format("{}:{}", file, line) : file; }

BatchAnswer answerOf(const BatchItem& item, const ReferenceData& reference, winter::Sampling sampling, int threads) {
    BatchAnswer answer{.at = item.at(), .problems = item.problems};
    if (!answer.problems.empty()) return answer;
    auto weighed =
        caught({item.file, item.line, 0}, "this case", [&] { return weighedCase(item, reference, sampling, threads); });
    if (!weighed) {
        answer.problems = weighed.problems();
        return answer;
    }
    answer.record = std::move(weighed->record);
    answer.member = std::move(weighed->member);
    answer.asked = std::move(weighed->asked);
    return answer;
}

void OrderedAnswers::put(std::uint64_t position, BatchAnswer answer) {
    waiting_.emplace(position, std::move(answer));
    for (auto first = waiting_.begin(); !yardsOpen_ && first != waiting_.end() && first->first == next_;
         first = waiting_.begin()) {
        if (first->second.member && !first->second.member->question.yard.empty()) {
            yardsOpen_ = true;
            return;
        }
        show_(first->second);
        waiting_.erase(first);
        ++next_;
    }
}

// All are planned out of their answers alone, then each is answered in that plan.
void OrderedAnswers::plan(const std::vector<BatchAnswer*>& yard) const {
    if (yard.size() < 2) return;
    std::vector<advice::YardColony> colonies;
    for (const BatchAnswer* each : yard) colonies.push_back({&each->member->question, &each->member->advice});
    const auto plan = advice::planFor(colonies, planning_.combs);
    std::vector<Outcome<WeighedColony>> planned;
    for (std::size_t i = 0; i < yard.size(); ++i)
        planned.push_back(
            caught({yard[i]->at, 0, 0}, "this case in the plan of its yard", [&]() -> Outcome<WeighedColony> {
                auto colony = advice::inPlan(colonies, plan, i, planning_.reference.constants, planning_.sampling,
                                             planning_.threads);
                return WeighedColony{std::move(colony->question), std::move(colony->answer.advice)};
            }));
    for (std::size_t i = 0; i < yard.size(); ++i) {
        if (planned[i]) yard[i]->member = *std::move(planned[i]);
        else yard[i]->problems = planned[i].problems();
    }
}

void OrderedAnswers::finish() {
    std::map<std::string, std::vector<BatchAnswer*>> yards;
    for (auto& entry : waiting_)
        if (const auto& member = entry.second.member; member && !member->question.yard.empty())
            yards[member->question.yard].push_back(&entry.second);
    for (const auto& entry : yards) plan(entry.second);
    for (const auto& entry : waiting_) show_(entry.second);
    waiting_.clear();
}

Batch::Batch(const ReferenceData& reference, winter::Sampling sampling, int threads, OrderedAnswers& answers)
    : reference_(reference), sampling_(sampling), answers_(answers),
      most_(waitingPerThread * static_cast<std::size_t>(threads)) {
    for (int i = 0; i < threads; ++i) workers_.emplace_back([this] { work(); });
}

Batch::~Batch() { finish(); }

void Batch::add(BatchItem item) {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return unanswered_ < most_; });
    ++unanswered_;
    queue_.push_back(std::move(item));
    changed_.notify_all();
}

void Batch::finish() {
    {
        const std::lock_guard lock(mutex_);
        closed_ = true;
    }
    changed_.notify_all();
    for (std::thread& worker : workers_) worker.join();
    workers_.clear();
}

void Batch::work() {
    std::unique_lock lock(mutex_);
    for (;;) {
        changed_.wait(lock, [this] { return closed_ || !queue_.empty(); });
        if (queue_.empty()) return;
        const BatchItem item = std::move(queue_.front());
        queue_.pop_front();
        lock.unlock();
        BatchAnswer answer = answerOf(item, reference_, sampling_, 1);
        lock.lock();
        answers_.put(item.position, std::move(answer));
        --unanswered_;
        changed_.notify_all();
    }
}

} // namespace winterlarder::cli
