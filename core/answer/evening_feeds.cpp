// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/evening_feeds.h"

#include "book/case_of.h"
#include "exchange/case/case_file.h"

#include <algorithm>

namespace winterlarder::answer {

namespace {

bool sameFeed(const book::FeedRecord& a, const book::FeedRecord& b) {
    return a.date == b.date && a.kind == b.kind && a.sugar == b.sugar && a.syrup == b.syrup && a.fondant == b.fondant;
}

// Those among the feeds of that day which the advice acted on knew of, by the case frozen with it.
std::vector<book::FeedRecord> knownThen(const book::ActedAdvice& advice, Date decided, const ReferenceData& reference) {
    std::vector<book::FeedRecord> known;
    const auto then = exchange::readCaseWithPlaces(advice.inputs, {}, reference, 1);
    if (then.record && then.problems.empty())
        for (const auto& feed : then.record->feeds)
            if (feed.date == decided) known.push_back(feed);
    return known;
}

} // namespace

const book::ActedAdvice* actedOn(const book::ColonyHistory& records, Date decided) {
    const book::ActedAdvice* last = nullptr;
    for (const auto& advice : records.advices)
        if (advice.date == decided) last = &advice;
    return last;
}

std::vector<book::FeedRecord> fedThatEvening(const book::ColonyHistory& records, Date decided,
                                             const ReferenceData& reference) {
    std::vector<book::FeedRecord> evening;
    const auto* advice = actedOn(records, decided);
    if (!advice) return evening;
    auto known = knownThen(*advice, decided, reference);
    for (const auto& entry : records.feeds) {
        if (entry.feed.date != decided) continue;
        const auto feed = book::oneAmount(entry.feed);
        const auto same =
            std::find_if(known.begin(), known.end(), [&](const auto& each) { return sameFeed(each, feed); });
        if (same == known.end()) evening.push_back(feed);
        else known.erase(same);
    }
    return evening;
}

book::ColonyCase asDecided(book::ColonyCase autumn, const std::vector<book::FeedRecord>& evening) {
    for (const auto& feed : evening) {
        const auto found = std::find_if(autumn.feeds.begin(), autumn.feeds.end(),
                                        [&](const auto& each) { return sameFeed(each, feed); });
        if (found != autumn.feeds.end()) autumn.feeds.erase(found);
    }
    return autumn;
}

} // namespace winterlarder::answer
