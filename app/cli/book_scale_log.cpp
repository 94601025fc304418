// SPDX-License-Identifier: GPL-3.0-or-later
// The log of a hive scale as records of a book.
#include "cli/book_commands.h"
#include "cli/open_book.h"
#include "cli/table.h"

#include "cli/tr.h"
#include "feeding/syrup.h"

#include <fmt/format.h>
#include <ostream>
#include <set>

namespace winterlarder::cli {
namespace {

using exchange::Json;

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
        : colony_(colony), ratio_(std::move(ratio)), known_(known) {}

    void add(const scale::ProposedWeighing& proposed) {
        if (known_.weighed.contains(proposed.date)) return void(++left_);
        edits.emplace_back(book::AddWeighing{{.colony = colony_,
                                              .weighing = {proposed.date, book::ScaleReading{proposed.gross}},
                                              .wet = proposed.wet,
                                              .note = origin}});
        ++weighings;
    }
    void add(const scale::ProposedRecord& proposed) {
        switch (proposed.sort) {
        case scale::ProposedRecord::Sort::Harvest: return addHarvest(proposed);
        case scale::ProposedRecord::Sort::Feed: return ratio_ ? addFeed(proposed) : addWork(proposed, "fed, of what is not known; from the scale's log");
        case scale::ProposedRecord::Sort::Manipulation: return addWork(proposed, origin);
        }
    }
    int left() const { return left_; }

    std::vector<book::SingleEdit> edits;
    int weighings = 0, feeds = 0, harvests = 0, works = 0;

private:
    void addHarvest(const scale::ProposedRecord& proposed) {
        if (known_.harvested.contains(proposed.date)) return void(++left_);
        edits.emplace_back(book::AddHarvest{{.colony = colony_, .harvest = {proposed.date, -proposed.change}, .note = origin}});
        ++harvests;
    }
    void addFeed(const scale::ProposedRecord& proposed) {
        if (known_.fed.contains(proposed.date)) return void(++left_);
        const double sugarShare = ratio_->sugarPerWater / (1 + ratio_->sugarPerWater);
        book::FeedRecord feed{proposed.date, book::FeedKind::Syrup, proposed.change * sugarShare, {}, ratio_->printed, {}};
        edits.emplace_back(book::AddFeed{{.colony = colony_, .feed = std::move(feed), .note = origin}});
        ++feeds;
    }
    void addWork(const scale::ProposedRecord& proposed, const char* note) {
        if (known_.worked.contains(proposed.date)) return void(++left_);
        const auto what = proposed.change > Mass(0) ? book::ManipulationKind::BoxesAdded : book::ManipulationKind::BoxesRemoved;
        edits.emplace_back(book::AddManipulation{
            {.colony = colony_, .date = proposed.date, .what = what, .weightChange = proposed.change, .note = note}});
        ++works;
    }

    book::ColonyId colony_;
    std::optional<feeding::Ratio> ratio_;
    const Known& known_;
    int left_ = 0;
};

Status told(Session& session, const Records& records) {
    if (session.json)
        session.print(Json::object()
                          .add("weighings", records.weighings)
                          .add("feeds", records.feeds)
                          .add("harvests", records.harvests)
                          .add("manipulations", records.works)
                          .add("left_out", records.left()));
    else
        session.print(tr("weighings: %1, feeds: %2, harvests: %3, changes of equipment: %4; on days the book has already: %5\n")
                          .arg(records.weighings)
                          .arg(records.feeds)
                          .arg(records.harvests)
                          .arg(records.works)
                          .arg(records.left()));
    return Status::Done;
}

} // namespace

Status addScaleLog(Session& session, const NewScaleLog& options, const ScaleOptions& log) {
    std::optional<feeding::Ratio> ratio;
    if (options.ratio) {
        const auto read = feeding::parseRatio(*options.ratio);
        if (!read) return session.fail({argumentProblem("--ratio: " + read.problems().front().detail, read.problems().front().remedy)});
        ratio = *read;
    }
    const auto found = readScale(session, log);
    if (!found) return session.fail(found.problems());
    auto opened = openBook(session, options, options.preview ? For::Reading : For::Writing);
    if (!opened) return session.fail(opened.problems());
    const auto colony = colonyOf(*opened, options.colony);
    if (!colony) return session.fail(colony.problems());
    const auto known = knownOf(*opened, colony->id);
    if (!known) return session.fail(known.problems());
    Records records(colony->id, std::move(ratio), *known);
    for (const auto& weighing : found->proposals.weighings) records.add(weighing);
    for (const auto& record : found->proposals.records) records.add(record);
    if (options.preview || records.edits.empty()) return told(session, records);
    const auto applied = opened->apply(book::Together{"add scale log", records.edits}, session.moment.now, writerOf(session, options));
    if (!applied) return session.fail(applied.problems());
    for (const auto& notice : applied->notices) session.err << notice << '\n';
    return told(session, records);
}

} // namespace winterlarder::cli
