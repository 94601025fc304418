// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/scale_records.h"

#include <fmt/format.h>
#include <set>
#include <utility>

namespace winterlarder::answer {

namespace {

constexpr const char* origin = "from the scale's log";

//! What is in the book of the colony already: a day's weighing and a day's record are not added twice.
struct Known {
    std::set<Date> weighed, fed, harvested, worked;
};

Outcome<Known> knownOf(book::Book& from, book::ColonyId colony) {
    const auto weighings = from.of<book::Weighing>(colony);
    if (!weighings) return weighings.problems();
    const auto feeds = from.of<book::Feed>(colony);
    if (!feeds) return feeds.problems();
    const auto harvests = from.of<book::Harvest>(colony);
    if (!harvests) return harvests.problems();
    const auto works = from.of<book::Manipulation>(colony);
    if (!works) return works.problems();
    Known known;
    for (const auto& each : *weighings) known.weighed.insert(each.weighing.date);
    for (const auto& each : *feeds) known.fed.insert(each.feed.date);
    for (const auto& each : *harvests) known.harvested.insert(each.harvest.date);
    for (const auto& each : *works) known.worked.insert(each.date);
    return known;
}

//! Records out of the proposals. A feed is syrup of the ratio; where none is said only its weight is known, and it stays a change of weight.
class Records {
public:
    Records(book::ColonyId colony, std::optional<feeding::Ratio> ratio, const Known& known)
        : made{.colony = colony}, ratio_(std::move(ratio)), known_(known) {}

    void add(const scale::ProposedWeighing& proposed) {
        if (known_.weighed.contains(proposed.date)) return void(++made.left);
        made.weighings.push_back({.colony = made.colony,
                                  .weighing = {proposed.date, book::ScaleReading{proposed.gross}},
                                  .wet = proposed.wet,
                                  .note = origin});
    }
    void add(const scale::ProposedRecord& proposed) {
        switch (proposed.sort) {
        case scale::ProposedRecord::Sort::Harvest: return addHarvest(proposed);
        case scale::ProposedRecord::Sort::Feed:
            return ratio_ ? addFeed(proposed) : addWork(proposed, "fed, of what is not known; from the scale's log");
        case scale::ProposedRecord::Sort::Manipulation: return addWork(proposed, origin);
        }
    }
    ScaleRecords made;

private:
    void addHarvest(const scale::ProposedRecord& proposed) {
        if (known_.harvested.contains(proposed.date)) return void(++made.left);
        made.harvests.push_back({.colony = made.colony, .harvest = {proposed.date, -proposed.change}, .note = origin});
    }
    void addFeed(const scale::ProposedRecord& proposed) {
        if (known_.fed.contains(proposed.date)) return void(++made.left);
        const double sugarShare = ratio_->sugarPerWater / (1 + ratio_->sugarPerWater);
        book::FeedRecord feed{.date = proposed.date, .sugar = proposed.change * sugarShare, .ratio = ratio_->printed};
        made.feeds.push_back({.colony = made.colony, .feed = std::move(feed), .note = origin});
    }
    void addWork(const scale::ProposedRecord& proposed, const char* note) {
        if (known_.worked.contains(proposed.date)) return void(++made.left);
        const auto what =
            proposed.change > Mass(0) ? book::ManipulationKind::BoxesAdded : book::ManipulationKind::BoxesRemoved;
        made.works.push_back({.colony = made.colony,
                              .date = proposed.date,
                              .what = what,
                              .weightChange = proposed.change,
                              .note = note});
    }

    std::optional<feeding::Ratio> ratio_;
    const Known& known_;
};

} // namespace

Outcome<ScaleRecords> scaleRecordsOf(book::Book& from, book::ColonyId colony, const scale::Proposals& proposals,
                                     const std::optional<feeding::Ratio>& ratio) {
    const auto known = knownOf(from, colony);
    if (!known) return known.problems();
    Records records(colony, ratio, *known);
    for (const auto& weighing : proposals.weighings) records.add(weighing);
    for (const auto& record : proposals.records) records.add(record);
    return std::move(records.made);
}

book::EditGroup ScaleRecords::asOneStep() const {
    book::EditGroup step{"add scale log", {}};
    const auto add = [&step](const auto& entries) {
        for (const auto& entry : entries)
            step.edits.emplace_back(book::Add<std::remove_cvref_t<decltype(entry)>>{entry});
    };
    add(weighings);
    add(feeds);
    add(harvests);
    add(works);
    return step;
}

} // namespace winterlarder::answer
