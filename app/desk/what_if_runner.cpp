// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/what_if_runner.h"

#include "desk/answer_queue.h"

namespace winterlarder::desk {

namespace {

constexpr ColonyId tried{1}; // one thing is tried at a time

//! Answers over few winters.
class Previewing : public Adviser {
public:
    explicit Previewing(std::shared_ptr<const Adviser> adviser) : adviser_(std::move(adviser)) {}
    Outcome<AnsweredPointer> answer(const book::ColonyCase& record, int position, std::stop_token stop) const override {
        return adviser_->preview(record, position, std::move(stop));
    }
    std::vector<AnsweredPointer> shareOut(const std::vector<AnsweredPointer>& yard,
                                          advice::MovingCombs) const override {
        return yard;
    }

private:
    std::shared_ptr<const Adviser> adviser_;
};

} // namespace

WhatIfRunner::WhatIfRunner(std::shared_ptr<const Adviser> adviser, QObject* parent)
    : QObject(parent), preview_(std::make_unique<AnswerQueue>(std::make_shared<Previewing>(adviser), Pace::Prompt)),
      full_(std::make_unique<AnswerQueue>(adviser, Pace::Prompt)) {
    connect(preview_.get(), &AnswerQueue::answered, this, [this](ColonyId id, const AnsweredPointer& answer) {
        emit previewed(answer);
        full_->ask(id, position_, *asked_, NewestWork::Turn::First);
    });
    connect(full_.get(), &AnswerQueue::answered, this,
            [this](ColonyId, const AnsweredPointer& answer) { emit answered(answer); });
    for (auto* each : {preview_.get(), full_.get()})
        connect(each, &AnswerQueue::contradicted, this,
                [this](ColonyId, const book::ColonyCase&, const Problems& problems) { emit contradicted(problems); });
}

WhatIfRunner::~WhatIfRunner() = default;

void WhatIfRunner::ask(int position, const book::ColonyCase& record) {
    position_ = position;
    asked_ = record;
    full_->keepOnly({});
    preview_->ask(tried, position, record, NewestWork::Turn::First);
}

void WhatIfRunner::cancel() {
    const bool busy = !idle();
    preview_->keepOnly({});
    full_->keepOnly({});
    if (busy) emit cancelled();
}

bool WhatIfRunner::idle() const { return preview_->idle() && full_->idle(); }

} // namespace winterlarder::desk
