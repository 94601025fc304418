// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/bees_of_case.h"

#include "stores/bees.h"

#include <fmt/format.h>
#include <string_view>

namespace winterlarder::answer {

namespace {

struct Seen {
    stores::BeesSeen how;
    double amount;
    std::string_view key;
};

std::optional<Seen> beesSeen(const book::BeesRecord& record) {
    if (record.count) return Seen{stores::BeesSeen::Counted, *record.count, "bees.count"};
    if (record.coveredCombs) return Seen{stores::BeesSeen::CoveredCombs, *record.coveredCombs, "bees.covered_combs"};
    if (record.seams) return Seen{stores::BeesSeen::Seams, *record.seams, "bees.seams"};
    return std::nullopt;
}

void countBees(advice::ColonyQuestion& question, const Seen& seen, const exchange::CasePlaces& places,
               const ReferenceData& reference, Problems& problems) {
    const BeeCount bees = stores::beesFrom(seen.how, seen.amount, question.combs, question.boxes.front());
    question.bees = bees;
    question.beesLogSd = stores::defaultLogSd(seen.how, reference.constants);
    question.coveredCombs = seen.how == stores::BeesSeen::CoveredCombs
                                ? seen.amount
                                : stores::coveredCombsOf(bees, question.combs, question.boxes.front());
    const double mostBees = reference.range("bees.count").most;
    if (bees.count > mostBees)
        problems.push_back({ProblemKind::Input, places.of(seen.key),
                            fmt::format("that would be {:.0f} bees", bees.count),
                            fmt::format("at most {:.0f} bees", mostBees)});
}

} // namespace

double raceFactor(const std::optional<book::BeeKind>& kind, const ModelConstants& constants) {
    if (kind == book::BeeKind::Dark) return constants.foodOfDarkBees;
    return kind == book::BeeKind::Italian ? constants.foodOfItalianBees : 1.0;
}

void fillBees(advice::ColonyQuestion& question, const book::BeesRecord& record, const exchange::CasePlaces& places,
              const ReferenceData& reference, Problems& problems) {
    const ModelConstants& constants = reference.constants;
    if (const auto seen = beesSeen(record)) countBees(question, *seen, places, reference, problems);
    question.drawnBeesLogSd = record.logSd.value_or(constants.beesSd);
    if (record.logSd) question.beesLogSd = *record.logSd;
    question.brood =
        record.broodCells ? std::optional(BeeCount{*record.broodCells}) : stores::broodOnCombs(question.combs);
    question.raceFactor = raceFactor(record.kind, constants);
    question.queenSeen = record.queenSeen;
    question.eggsSeen = record.eggsSeen;
    question.trouble = record.trouble;
}

} // namespace winterlarder::answer
