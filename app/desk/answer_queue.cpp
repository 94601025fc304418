// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/answer_queue.h"

namespace winterlarder::desk {

AnswerQueue::AnswerQueue(std::shared_ptr<const Adviser> adviser, Pace pace, QObject* parent)
    : QObject(parent), adviser_(std::move(adviser)), work_(nullptr, pace) {
    connect(&work_, &NewestWork::idleAgain, this, &AnswerQueue::idleAgain);
}

void AnswerQueue::ask(ColonyId id, int position, const book::ColonyCase& record, NewestWork::Turn turn) {
    work_.ask(
        id.number, turn, this,
        [adviser = adviser_, record, position](const std::stop_token& stop) {
            return adviser->answer(record, position, stop);
        },
        [this, id, record](const Outcome<AnsweredPointer>& outcome) {
            if (!outcome.ok()) emit contradicted(id, record, outcome.problems());
            else if (outcome.value()) emit answered(id, outcome.value());
        });
}

void AnswerQueue::keepOnly(const std::set<ColonyId>& wanted) {
    std::set<NewestWork::Key> keys;
    for (const auto id : wanted) keys.insert(id.number);
    work_.keepOnly(keys);
}

} // namespace winterlarder::desk
