// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/answering.h"

#include "desk/reckoning.h"
#include "models/background.h"

namespace winterlarder::desk {

Answering::Answering(Yard* yard, QObject* parent) : QObject(parent), yard_(yard) {
    connect(yard_, &Yard::coloniesChanged, this, &Answering::askAll);
    connect(yard_, &Yard::recordChanged, this, [this](ColonyId id) { ask(id, id == yard_->openColony()); });
    connect(yard_, &Yard::recordsChanged, this, [this](ColonyId id) { if (reckoning_) reckoning_->hurry(id); });
}

Answering::~Answering() = default;

void Answering::useAdviser(std::shared_ptr<const Adviser> adviser) {
    adviser_ = std::move(adviser);
    reckoning_ = std::make_unique<Reckoning>(adviser_);
    connect(reckoning_.get(), &Reckoning::answered, this, [this](ColonyId id, const AnsweredPointer& answered) { yard_->takeAnswer(id, answered); });
    connect(reckoning_.get(), &Reckoning::contradicted, this,
            [this](ColonyId id, const book::ColonyCase& record, const Problems& problems) { yard_->takeProblems(id, record, problems); });
    connect(reckoning_.get(), &Reckoning::idleAgain, this, &Answering::shareOut);
    askAll();
}

bool Answering::idle() const {
    return !sharing_ && (!reckoning_ || reckoning_->idle());
}

void Answering::askAll() {
    if (!reckoning_) return;
    std::set<ColonyId> there;
    for (const auto& colony : yard_->colonies()) there.insert(colony.id);
    reckoning_->keepOnly(there);
    for (const auto id : there) ask(id, false);
}

void Answering::ask(ColonyId id, bool first) {
    const auto* colony = yard_->find(id);
    if (reckoning_ && colony && colony->pending && colony->problems.empty()) reckoning_->ask(id, yard_->position(id), colony->record, first);
}

// Once every colony has its answer, the yard is looked over as a whole: combs that could go from one to another.
void Answering::shareOut() {
    if (sharing_) {
        shareAgain_ = true;
        return;
    }
    std::vector<ColonyId> ids;
    std::vector<AnsweredPointer> answers;
    for (const auto& colony : yard_->colonies()) {
        if (colony.pending || !colony.answered || !colony.problems.empty()) continue;
        ids.push_back(colony.id);
        answers.push_back(colony.answered);
    }
    sharing_ = true;
    sharer_ = std::jthread([this, ids, answers, adviser = adviser_] {
        keepPace(Pace::Slow);
        auto shared = adviser->shareOut(answers);
        QMetaObject::invokeMethod(this, [this, ids, answers, shared = std::move(shared)] { takeShared(ids, answers, shared); }, Qt::QueuedConnection);
    });
}

void Answering::takeShared(const std::vector<ColonyId>& ids, const std::vector<AnsweredPointer>& asked, const std::vector<AnsweredPointer>& shared) {
    sharing_ = false;
    for (std::size_t i = 0; i < shared.size() && i < ids.size(); ++i)
        if (shared[i] != asked[i]) yard_->takeAnswer(ids[i], shared[i]);
    if (std::exchange(shareAgain_, false) && reckoning_->idle()) return shareOut();
    if (idle()) emit idleAgain();
}

} // namespace winterlarder::desk
