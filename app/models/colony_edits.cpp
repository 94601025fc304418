// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/colony_edits.h"

namespace winterlarder::desk {

BeesToldBy beesToldBy(const book::BeesRecord& bees) {
    if (bees.coveredCombs) return BeesToldBy::CoveredCombs;
    if (bees.seams) return BeesToldBy::Seams;
    if (bees.count) return BeesToldBy::Count;
    return BeesToldBy::NotTold;
}

double beesTold(const book::BeesRecord& bees) {
    return bees.coveredCombs.value_or(bees.seams.value_or(bees.count.value_or(0)));
}

book::BeesRecord withBees(book::BeesRecord bees, BeesToldBy kind, double value) {
    if (beesToldBy(bees) != kind) bees.logSd.reset();
    bees.coveredCombs.reset();
    bees.seams.reset();
    bees.count.reset();
    if (kind == BeesToldBy::CoveredCombs) bees.coveredCombs = value;
    if (kind == BeesToldBy::Seams) bees.seams = value;
    if (kind == BeesToldBy::Count) bees.count = value;
    return bees;
}

WeighedBy weighedBy(const std::optional<book::WeighingRecord>& weighing) {
    if (!weighing) return WeighedBy::NotWeighed;
    if (std::holds_alternative<book::ScaleReading>(weighing->reading)) return WeighedBy::Scale;
    if (std::holds_alternative<book::HeftWord>(weighing->reading)) return WeighedBy::Heft;
    return std::get<book::LiftReading>(weighing->reading).sides.size() == 2 ? WeighedBy::BothSides : WeighedBy::OneSide;
}

book::Edit planInstead(const book::AcceptAdvice& accepted, const ColonyRecords& records, Date asOf) {
    book::Together step{"accept advice", {}};
    for (const auto& visit : records.visits)
        if (visit.state == book::VisitState::Planned && visit.date >= asOf) step.edits.emplace_back(book::RemovePlannedVisit{visit.id});
    step.edits.emplace_back(accepted);
    return step;
}

book::MarkVisitDone madeOnItsDay(book::PlannedVisitId visit, Date planned, std::optional<Date> asOf) {
    return {visit, std::min(planned, asOf.value_or(planned)), std::nullopt};
}

} // namespace winterlarder::desk
