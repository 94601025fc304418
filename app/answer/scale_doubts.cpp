// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/scale_doubts.h"

#include "answer/doubt_words.h"
#include "answer/judged_entries.h"

#include <fmt/format.h>
#include <utility>

namespace winterlarder::answer {

namespace {

//! A new entry with a number no entry of a book has, so that it is held against all others.
template <class Entry> Entry numbered(Entry entry, std::size_t i) {
    entry.id = {-1 - static_cast<std::int64_t>(i)};
    return entry;
}

class ScaleJudge {
public:
    ScaleJudge(Surroundings around, const ScaleRecords& records, Date today, const ReferenceData& reference, bool sure)
        : around_(std::move(around)), today_(today), reference_(reference), sure_(sure) {
        know(records.weighings), know(records.feeds), know(records.harvests), know(records.works);
    }
    //! Calls `tell` with the number in the list and the doubt.
    template <class Entry, class Tell> void all(std::vector<Entry>& entries, Tell tell) const {
        for (std::size_t i = 0; i < entries.size(); ++i) {
            const auto doubt = doubtOf(numbered(entries[i], i), around_, today_, reference_);
            if (!doubt) continue;
            if (!sure_ || doubt->impossible) tell(i, *doubt);
            else if (bool* is = sureIn(entries[i])) *is = true;
        }
    }

private:
    template <class Entry> void know(const std::vector<Entry>& entries) {
        for (std::size_t i = 0; i < entries.size(); ++i) put(around_, numbered(entries[i], i));
    }
    Surroundings around_;
    Date today_;
    const ReferenceData& reference_;
    bool sure_;
};

} // namespace

Outcome<ScaleDoubts> judge(book::Book& from, ScaleRecords& records, const std::string& file, Date today, bool sure,
                           const std::string& whereSure, const text::WordStyle& style) {
    auto around = surroundingsOf(from, records.colony);
    if (!around) return around.problems();
    const ScaleJudge judging(std::move(around).value(), records, today, from.reference(), sure);
    ScaleDoubts found;
    const auto tell = [&](const char* what, Date day, const stores::Doubt& doubt) {
        found.problems.push_back(problemOf(doubt, {file, 0, 0}, whereSure, style));
        found.problems.back().detail = fmt::format("the {} of {}: {}", what, day.iso(), found.problems.back().detail);
        found.impossible = found.impossible || doubt.impossible;
    };
    judging.all(records.weighings, [&](std::size_t i, const stores::Doubt& doubt) {
        tell("weighing", records.weighings[i].weighing.date, doubt);
    });
    judging.all(records.feeds,
                [&](std::size_t i, const stores::Doubt& doubt) { tell("feed", records.feeds[i].feed.date, doubt); });
    judging.all(records.harvests, [&](std::size_t i, const stores::Doubt& doubt) {
        tell("harvest", records.harvests[i].harvest.date, doubt);
    });
    judging.all(records.works, [&](std::size_t i, const stores::Doubt& doubt) {
        tell("change of equipment", records.works[i].date, doubt);
    });
    return found;
}

} // namespace winterlarder::answer
