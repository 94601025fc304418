// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/colony_edits.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

// The newest; of several on a day the one written last.
std::vector<book::WeighingRecord>::const_iterator newest(const std::vector<book::WeighingRecord>& weighings) {
    auto found = weighings.end();
    for (auto each = weighings.begin(); each != weighings.end(); ++each)
        if (found == weighings.end() || each->date >= found->date) found = each;
    return found;
}

} // namespace

BeesToldBy beesToldBy(const book::BeesRecord& bees) {
    if (bees.coveredCombs) return BeesToldBy::CoveredCombs;
    if (bees.seams) return BeesToldBy::Seams;
    if (bees.count) return BeesToldBy::Count;
    return BeesToldBy::NotTold;
}

double beesTold(const book::BeesRecord& bees) {
    return bees.coveredCombs.value_or(bees.seams.value_or(bees.count.value_or(0)));
}

book::ColonyCase withBees(book::ColonyCase record, BeesToldBy kind, double value) {
    auto& bees = record.bees;
    if (beesToldBy(bees) != kind) bees.logSd.reset();
    bees.coveredCombs.reset();
    bees.seams.reset();
    bees.count.reset();
    if (kind == BeesToldBy::CoveredCombs) bees.coveredCombs = value;
    if (kind == BeesToldBy::Seams) bees.seams = value;
    if (kind == BeesToldBy::Count) bees.count = value;
    return record;
}

WeighedBy weighedBy(const book::ColonyCase& record) {
    const auto weighing = newestWeighing(record);
    if (!weighing) return WeighedBy::NotWeighed;
    if (std::holds_alternative<book::ScaleReading>(weighing->reading)) return WeighedBy::Scale;
    if (std::holds_alternative<book::HeftWord>(weighing->reading)) return WeighedBy::Heft;
    return std::get<book::LiftReading>(weighing->reading).sides.size() == 2 ? WeighedBy::BothSides : WeighedBy::OneSide;
}

std::optional<book::WeighingRecord> newestWeighing(const book::ColonyCase& record) {
    const auto found = newest(record.weighings);
    return found == record.weighings.end() ? std::nullopt : std::optional(*found);
}

book::ColonyCase withNewestWeighing(book::ColonyCase record, const std::optional<book::WeighingRecord>& weighing) {
    auto& weighings = record.weighings;
    const auto found = newest(weighings);
    const bool there = found != weighings.end();
    const auto at = weighings.begin() + (found - weighings.cbegin());
    if (weighing && there) *at = *weighing;
    else if (weighing) weighings.push_back(*weighing);
    else if (there) weighings.erase(at);
    return record;
}

book::ColonyCase withCombs(book::ColonyCase record, std::vector<book::CombRecord> combs) {
    record.combs = std::move(combs);
    return record;
}

} // namespace winterlarder::desk
