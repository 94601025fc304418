// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/due.h"

namespace winterlarder::desk {

namespace {

int rank(advice::Verdict verdict) {
    switch (verdict) {
    case advice::Verdict::Feed: return 0;
    case advice::Verdict::Unite: return 1;
    case advice::Verdict::CannotSay: return 2;
    case advice::Verdict::Harvest: return 3;
    case advice::Verdict::Leave: return 4;
    }
    return 5;
}

} // namespace

Due dueOf(const AnsweredColony& colony) {
    for (const auto& task : report::tasksOf(colony.question, colony.answer.advice))
        if (task.kind != DueKind::Check) return {task.kind, task.date};
    return {};
}

UrgencyKey urgencyOf(const AnsweredColony& colony) {
    const auto due = dueOf(colony);
    return {!due.date.has_value(), due.date, rank(colony.answer.advice.verdict)};
}

} // namespace winterlarder::desk
