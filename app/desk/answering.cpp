// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/answering.h"

#include "desk/answer_queue.h"
#include "desk/ensemble_cache.h"

namespace winterlarder::desk {

Answering::Answering(Yard* yard, QObject* parent) : QObject(parent), yard_(yard) {
    yard_->onChange(this, {YardChange::Colonies}, &Answering::askAll);
    yard_->onChange(this, {YardChange::Record}, [this](ColonyId id) {
        ask(id, id == yard_->openColony() ? NewestWork::Turn::First : NewestWork::Turn::Last);
        planAnew();
    });
    yard_->onChange(this, {YardChange::History}, &Answering::prefer);
    yard_->onChange(this, {YardChange::Moving}, &Answering::planAnew);
    connect(&recalling_, &NewestWork::idleAgain, this, &Answering::tellIfIdle);
    connect(&sharing_, &NewestWork::idleAgain, this, &Answering::tellIfIdle);
}

Answering::~Answering() = default;

void Answering::useAdviser(std::shared_ptr<const Adviser> adviser) {
    adviser_ = std::make_shared<EnsembleCache>(std::move(adviser));
    queue_ = std::make_unique<AnswerQueue>(adviser_);
    connect(queue_.get(), &AnswerQueue::answered, this,
            [this](ColonyId id, const AnsweredPointer& answered) { yard_->takeAnswer(id, answered); });
    connect(queue_.get(), &AnswerQueue::contradicted, this,
            [this](ColonyId id, const book::ColonyCase& record, const Problems& problems) {
                yard_->takeProblems(id, record, problems);
            });
    connect(queue_.get(), &AnswerQueue::idleAgain, this, &Answering::shareOut);
    askAll();
}

bool Answering::idle() const { return sharing_.idle() && recalling_.idle() && (!queue_ || queue_->idle()); }

void Answering::tellIfIdle() {
    if (idle()) emit idleAgain();
}

void Answering::askAll() {
    if (!queue_) return;
    std::set<ColonyId> there;
    for (const auto& colony : yard_->colonies()) there.insert(colony.id);
    queue_->keepOnly(there);
    for (const auto id : there) ask(id, NewestWork::Turn::Last);
    planAnew();
}

// The plan shown is of other records or another wish; it is made anew once all are answered.
void Answering::planAnew() {
    if (!queue_) return;
    yard_->awaitPlan();
    if (queue_->idle()) shareOut();
}

void Answering::ask(ColonyId id, NewestWork::Turn turn) {
    const auto* colony = yard_->find(id);
    if (queue_ && colony && colony->pending && colony->problems.empty())
        queue_->ask(id, yard_->position(id), colony->record, turn);
}

// The colony looked at is answered before others; the picture of what its neighbours give may still be to be made.
void Answering::prefer(ColonyId id) {
    if (queue_) queue_->hurry(id);
    const auto* colony = yard_->find(id);
    if (colony && colony->answered &&
        colony->answered->picture.options.size() < colony->answered->answer.advice.options.size())
        recall(id);
}

void Answering::recall(ColonyId id) {
    const auto* colony = yard_->find(id);
    if (!adviser_ || !colony || colony->pending || !colony->answered || colony->answered->picture.empty() ||
        wintersOf(*colony->answered))
        return;
    recalling_.ask(
        this,
        [answered = colony->answered, adviser = adviser_](const std::stop_token& stop) {
            return adviser->recall(answered, stop);
        },
        [this, id, answered = colony->answered](const Outcome<AnsweredPointer>& recalled) {
            if (!recalled.ok()) return emit failed(recalled.problems());
            const auto* now = yard_->find(id);
            if (now && now->answered == answered) yard_->takeAnswer(id, *recalled);
        });
}

// Once every colony has its answer, the yard is looked over as a whole: who is united, and which combs go from one to another.
void Answering::shareOut() {
    std::vector<ColonyId> ids;
    std::vector<AnsweredPointer> answers;
    for (const auto& colony : yard_->colonies()) {
        if (colony.pending || !colony.answered || !colony.problems.empty()) continue;
        ids.push_back(colony.id);
        answers.push_back(colony.answered);
    }
    sharing_.ask(
        this,
        [answers, adviser = adviser_, combs = yard_->state().moving](const std::stop_token&) {
            return adviser->shareOut(answers, combs);
        },
        [this, ids, answers](const Outcome<std::vector<AnsweredPointer>>& shared) {
            if (shared.ok()) takeShared(ids, answers, *shared);
            else emit failed(shared.problems()); // the answers stand as they are shown
            if (queue_->idle()) yard_->planTold();
        });
}

void Answering::takeShared(const std::vector<ColonyId>& ids, const std::vector<AnsweredPointer>& asked,
                           const std::vector<AnsweredPointer>& shared) {
    for (std::size_t i = 0; i < shared.size() && i < ids.size(); ++i)
        if (shared[i] != asked[i]) yard_->takeAnswer(ids[i], shared[i]);
    prefer(yard_->openColony());
}

} // namespace winterlarder::desk
