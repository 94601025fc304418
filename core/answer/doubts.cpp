// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/doubts.h"

#include "answer/events_of_case.h"
#include "answer/question_of_case.h"

#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::answer {

namespace {

//! The weight of the whole hive; nothing for a heft.
std::optional<Mass> grossOf(const book::WeighingRecord& weighing) {
    if (const auto* scale = std::get_if<book::ScaleReading>(&weighing.reading)) return scale->gross;
    const auto* lift = std::get_if<book::LiftReading>(&weighing.reading);
    if (!lift || lift->sides.empty()) return std::nullopt;
    return lift->sides.size() == 2 ? lift->sides[0] + lift->sides[1] : 2 * lift->sides[0];
}

bool sameScale(const book::WeighingRecord& a, const book::WeighingRecord& b) {
    const auto sides = [](const book::WeighingRecord& weighing) {
        const auto* lift = std::get_if<book::LiftReading>(&weighing.reading);
        return lift ? lift->sides.size() : 0;
    };
    return a.reading.index() == b.reading.index() && sides(a) == sides(b);
}

//! Judges the records of one case, one kind after the other; a record in doubt is not held against the others.
class CaseJudge {
public:
    CaseJudge(const book::ColonyCase& record, const ReferenceData& reference, const std::vector<HiveChange>& changes)
        : record_(record), constants_(reference.constants), rules_(reference.decisions), changes_(changes),
          latitude_(exchange::latitudeOf(record.site, reference).value_or(0)),
          lookedOn_(record.lookedOn.value_or(record.asOf)) {
        parts_ = partsOf(record, reference);
        hive_ = boundsOfCase(record, reference);
        for (const auto& change : changes) changed_.push_back(boundsOfChange(change, reference));
    }

    std::vector<DoubtedRecord> all() {
        tare();
        look();
        weights();
        feeds();
        harvests();
        return std::move(found_);
    }

private:
    void add(DoubtedPart part, std::size_t index, Date day, std::string path, bool sure,
             std::optional<stores::Doubt> doubt) {
        if (doubt) found_.push_back({part, index, day, std::move(path), std::move(*doubt), sure || record_.sure});
    }
    bool doubted(DoubtedPart part, std::size_t index) const {
        return std::any_of(found_.begin(), found_.end(), [&](const DoubtedRecord& each) {
            return each.part == part && each.index == index && (each.doubt.impossible || !each.sure);
        });
    }
    bool hiveChanged(Date from, Date to) const {
        const Date first = std::min(from, to), last = std::max(from, to);
        return std::any_of(changes_.begin(), changes_.end(),
                           [&](const HiveChange& change) { return change.day >= first && change.day <= last; });
    }
    //! Nothing where it is not known, or has a format nobody ships.
    std::optional<stores::HiveBounds> boundsOfChange(const HiveChange& change, const ReferenceData& reference) const {
        if (!change.hive || change.hive->boxes.empty()) return std::nullopt;
        if (*change.hive == record_.hive) return hive_;
        book::ColonyCase then = record_;
        then.hive = *change.hive;
        then.combs = {}; // those listed stood in the case's hive
        if (!unknownFormats(then, {}, reference).empty()) return std::nullopt;
        return boundsOfCase(then, reference);
    }
    //! Of the hive on a day. On the day of a change the larger one counts: it may have been emptied, or filled, before.
    const stores::HiveBounds& hiveOn(Date day) const {
        const auto* before = &hive_;
        const auto* now = &hive_;
        for (std::size_t i = 0; i < changes_.size(); ++i) {
            if (!changed_[i] || changes_[i].day > day) continue;
            now = &*changed_[i];
            if (changes_[i].day < day) before = now;
        }
        return before->places > now->places ? *before : *now;
    }

    // A tare that is not likely is asked about where it is entered (a case file: askedOfCase), and counts as it stands.
    void tare() {
        if (!record_.hive.tare) return;
        const auto doubt = stores::doubtOfTare(*record_.hive.tare, parts_, constants_);
        if (doubt && doubt->impossible) add(DoubtedPart::Tare, 0, record_.asOf, "hive.tare_kg", false, doubt);
    }
    void look() {
        const auto& bees = record_.bees;
        const auto told = [&](DoubtedPart part, const char* path, std::optional<stores::Doubt> doubt) {
            add(part, 0, lookedOn_, path, bees.sure, std::move(doubt));
        };
        if (bees.coveredCombs)
            told(DoubtedPart::Bees, "bees.covered_combs",
                 stores::doubtOfCoveredCombs(*bees.coveredCombs, hive_, constants_));
        if (bees.seams) told(DoubtedPart::Bees, "bees.seams", stores::doubtOfSeams(*bees.seams, hive_, constants_));
        if (bees.count) told(DoubtedPart::Bees, "bees.count", stores::doubtOfBees(*bees.count, hive_, constants_));
        if (bees.broodCells)
            told(DoubtedPart::Brood, "bees.brood_cells", stores::doubtOfBrood(*bees.broodCells, hive_, constants_));
        if (const auto* quick = std::get_if<book::QuickCountRecord>(&record_.combs))
            told(DoubtedPart::Combs, "combs",
                 stores::doubtOfFullCombs(quick->fullOfStores + quick->half, hive_, constants_));
        if (record_.moisturePercent)
            told(DoubtedPart::Moisture, "moisture_percent",
                 stores::doubtOfMoisture(*record_.moisturePercent, constants_));
    }

    // ---- weights ------------------------------------------------------------------------------------------------------

    void weights() {
        for (std::size_t i = 0; i < record_.weighings.size(); ++i) addWeight(i, doubtOfWeighing(record_.weighings[i]));
        std::vector<std::size_t> order;
        for (std::size_t i = 0; i < record_.weighings.size(); ++i)
            if (grossOf(record_.weighings[i]) && !doubted(DoubtedPart::Weighing, i)) order.push_back(i);
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return record_.weighings[a].date < record_.weighings[b].date;
        });
        for (const bool betweenTwo : {true, false}) {
            std::vector<std::size_t> fitting;
            for (std::size_t at = 0; at < order.size(); ++at) {
                const auto odd = againstNeighbours(order, at, betweenTwo);
                addWeight(order[at], odd);
                if (!odd) fitting.push_back(order[at]);
            }
            order = std::move(fitting);
        }
    }
    std::optional<stores::Doubt> doubtOfWeighing(const book::WeighingRecord& weighing) const {
        const auto gross = grossOf(weighing);
        if (!gross) return std::nullopt;
        const auto& hive = hiveOn(weighing.date);
        const auto* lift = std::get_if<book::LiftReading>(&weighing.reading);
        return lift && lift->sides.size() == 1 ? stores::doubtOfOneSide(lift->sides.front(), hive, constants_)
                                               : stores::doubtOfWeight(*gross, hive, constants_);
    }
    void addWeight(std::size_t i, std::optional<stores::Doubt> doubt) {
        const auto& weighing = record_.weighings[i];
        const char* key = std::holds_alternative<book::ScaleReading>(weighing.reading) ? "gross_kg" : "lift_kg";
        add(DoubtedPart::Weighing, i, weighing.date, fmt::format("weighings[{}].{}", i, key), weighing.sure,
            std::move(doubt));
    }
    //! A weight is the odd one where it fits neither the one before nor the one after. First those between two are judged; then
    //! those at the ends, where a single neighbour decides.
    std::optional<stores::Doubt> againstNeighbours(const std::vector<std::size_t>& order, std::size_t at,
                                                   bool betweenTwo) const {
        std::optional<stores::Doubt> odd;
        for (int side : {-1, 1}) {
            const auto next = neighbour(order, at, side);
            if (!next && betweenTwo) return std::nullopt;
            if (!next) continue;
            auto doubt = pairDoubt(record_.weighings[order[at]], record_.weighings[*next]);
            if (!doubt) return std::nullopt;
            odd = std::move(doubt);
        }
        return odd;
    }
    std::optional<std::size_t> neighbour(const std::vector<std::size_t>& order, std::size_t at, int side) const {
        for (auto next = static_cast<std::ptrdiff_t>(at) + side;
             next >= 0 && next < static_cast<std::ptrdiff_t>(order.size()); next += side) {
            const auto i = order[static_cast<std::size_t>(next)];
            if (sameScale(record_.weighings[i], record_.weighings[order[at]])) return i;
        }
        return std::nullopt;
    }
    std::optional<stores::Doubt> pairDoubt(const book::WeighingRecord& judged,
                                           const book::WeighingRecord& other) const {
        if (judged.sure || other.sure || hiveChanged(judged.date, other.date)) return std::nullopt;
        const auto [first, last] = std::minmax(judged.date, other.date);
        return stores::doubtOfTwoWeights(
            {*grossOf(judged), *grossOf(other), other.date, last.daysSince(first),
             stores::flowDaysBetween(first, first.plusDays(std::min(last.daysSince(first), 400)), latitude_),
             fedBetween(first, last), takenBetween(first, last)},
            constants_);
    }

    // ---- feeds and harvests -------------------------------------------------------------------------------------------

    void feeds() {
        for (std::size_t i = 0; i < record_.feeds.size(); ++i) {
            const auto& feed = record_.feeds[i];
            stores::GivenAtOnce given{storesOfFeed(feed), kilograms(0), syrupOf(feed), solidOf(feed)};
            const Date first = feed.date.plusDays(-static_cast<int>(constants_.entryFeedDays));
            given.recently = given.stores + fedUpTo(first, i);
            add(DoubtedPart::Feed, i, feed.date, fmt::format("feeds[{}]{}", i, amountOf(feed)), feed.sure,
                stores::doubtOfFeed(given, hiveOn(feed.date), constants_));
        }
    }
    static const char* amountOf(const book::FeedRecord& feed) {
        return feed.sugar ? ".sugar_kg" : feed.syrup ? ".syrup_l" : feed.fondant ? ".fondant_kg" : "";
    }
    std::optional<Volume> syrupOf(const book::FeedRecord& feed) const {
        if (feed.kind != book::FeedKind::Syrup) return std::nullopt;
        if (feed.syrup) return feed.syrup;
        return feed.sugar ? std::optional(litres(rules_.syrupPerSugar * feed.sugar->value())) : std::nullopt;
    }
    static std::optional<Mass> solidOf(const book::FeedRecord& feed) {
        if (feed.kind == book::FeedKind::Syrup) return std::nullopt;
        return feed.kind == book::FeedKind::Fondant ? feed.fondant : feed.sugar;
    }
    //! What the other feeds from a day to the feed's own become; those listed after it on that day do not count yet.
    Mass fedUpTo(Date first, std::size_t judged) const {
        Mass total{0};
        const Date day = record_.feeds[judged].date;
        for (std::size_t i = 0; i < record_.feeds.size(); ++i) {
            const auto& other = record_.feeds[i];
            if (i == judged || other.date <= first || other.date > day || (other.date == day && i > judged)) continue;
            if (!doubted(DoubtedPart::Feed, i)) total += storesOfFeed(other);
        }
        return total;
    }
    Mass fedBetween(Date first, Date last) const {
        Mass total{0};
        for (const auto& feed : record_.feeds)
            if (feed.date >= first && feed.date <= last) total += storesOfFeed(feed);
        return total;
    }
    Mass takenBetween(Date first, Date last) const {
        Mass total{0};
        for (const auto& harvest : record_.harvests)
            if (harvest.date >= first && harvest.date <= last) total += harvest.honey;
        return total;
    }

    void harvests() {
        for (std::size_t i = 0; i < record_.harvests.size(); ++i) {
            const auto& harvest = record_.harvests[i];
            auto doubt = stores::doubtOfHarvest(harvest.honey, hiveOn(harvest.date), constants_);
            if (const auto before = thereBefore(i); before && !(doubt && doubt->impossible))
                if (auto there = stores::doubtOfHarvestOf(harvest.honey, *before, constants_);
                    there && (!doubt || there->impossible))
                    doubt = std::move(there);
            add(DoubtedPart::Harvest, i, harvest.date, fmt::format("harvests[{}].kg", i), harvest.sure,
                std::move(doubt));
        }
    }
    //! The newest weight or look that tells what there was before a harvest.
    std::optional<stores::ThereBefore> thereBefore(std::size_t harvest) const {
        const Date day = record_.harvests[harvest].date;
        std::optional<stores::ThereBefore> before;
        const auto tells = [&](Date seen) {
            return seen < day && day.daysSince(seen) <= rules_.oldestSight && !hiveChanged(seen, day) &&
                   (!before || seen > before->day);
        };
        const auto seen = storesSeen();
        if (seen && tells(lookedOn_)) before = stores::ThereBefore{lookedOn_, kilograms(0), *seen};
        for (std::size_t i = 0; i < record_.weighings.size(); ++i) {
            const auto gross = grossOf(record_.weighings[i]);
            if (!gross || doubted(DoubtedPart::Weighing, i) || !tells(record_.weighings[i].date)) continue;
            before = stores::ThereBefore{record_.weighings[i].date, *gross,
                                         *gross - hiveOn(record_.weighings[i].date).lightest};
        }
        if (!before) return std::nullopt;
        before->daysSince = day.daysSince(before->day);
        before->flowDays = stores::flowDaysBetween(before->day, day, latitude_);
        before->fed = fedBetween(before->day, day);
        before->taken = takenBefore(before->day, harvest);
        return before;
    }
    //! At the most: a look may have missed some.
    std::optional<Mass> storesSeen() const {
        const auto evidence = stores::evidenceOfVisit(parts_.combs, 1, stores::combSpreads(constants_), lookedOn_);
        if (!evidence) return std::nullopt;
        return rules_.sightAtMostTimes * evidence->typical + kilograms(rules_.sightAtMostMore);
    }
    Mass takenBefore(Date since, std::size_t harvest) const {
        Mass total{0};
        for (std::size_t i = 0; i < harvest; ++i)
            if (record_.harvests[i].date > since && !doubted(DoubtedPart::Harvest, i))
                total += record_.harvests[i].honey;
        return total;
    }

    const book::ColonyCase& record_;
    const ModelConstants& constants_;
    const DecisionConstants& rules_;
    const std::vector<HiveChange>& changes_;
    std::vector<std::optional<stores::HiveBounds>> changed_; //!< beside them
    double latitude_;
    Date lookedOn_;
    stores::TareQuestion parts_;
    stores::HiveBounds hive_;
    std::vector<DoubtedRecord> found_;
};

} // namespace

std::vector<DoubtedRecord> doubtsOf(const book::ColonyCase& record, const ReferenceData& reference,
                                    const std::vector<HiveChange>& changes) {
    // A foreign book may name hives nobody ships; nothing can be held against them.
    if (record.hive.boxes.empty() || !unknownFormats(record, {}, reference).empty()) return {};
    return CaseJudge(record, reference, changes).all();
}

} // namespace winterlarder::answer
