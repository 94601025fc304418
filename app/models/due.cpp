// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/due.h"

namespace winterlarder::desk {

namespace {

std::optional<Date> dateOf(const AnsweredColony& colony, const std::optional<climate::SeasonDate>& date) {
    if (!date || date->day < colony.question.asOf) return std::nullopt;
    return colony.question.winter.date(date->day);
}

Due firstDose(const AnsweredColony& colony) {
    const auto& feed = colony.answer.advice.feed;
    if (!feed) return {};
    for (const auto& visit : feed->visits) {
        if (visit.kind == feeding::VisitKind::Syrup) return {DueKind::Syrup, visit.date};
        if (visit.kind == feeding::VisitKind::Fondant) return {DueKind::Fondant, visit.date};
    }
    return {};
}

Due whatIsUnknown(const AnsweredColony& colony) {
    for (const auto refusal : colony.answer.advice.refusals) {
        if (refusal == advice::RefusalKind::BeesUnknown) return {DueKind::CountBees, colony.record.asOf};
        if (refusal == advice::RefusalKind::StoresUnknown) return {DueKind::RecordStores, colony.record.asOf};
    }
    return {};
}

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
    const auto& advice = colony.answer.advice;
    switch (advice.verdict) {
    case advice::Verdict::Feed: return firstDose(colony);
    case advice::Verdict::Unite: return {DueKind::Unite, dateOf(colony, advice.season.broodStop)};
    case advice::Verdict::Harvest: return {DueKind::TakeHoney, dateOf(colony, advice.season.feedAdvisedBy)};
    case advice::Verdict::Leave: return {DueKind::Weigh, dateOf(colony, advice.season.lastIncome)};
    case advice::Verdict::CannotSay: return whatIsUnknown(colony);
    }
    return {};
}

UrgencyKey urgencyOf(const AnsweredColony& colony) {
    const auto due = dueOf(colony);
    return {!due.date.has_value(), due.date, rank(colony.answer.advice.verdict)};
}

} // namespace winterlarder::desk
