// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/dead_hive.h"

namespace winterlarder::answer {

namespace {

const char* remarkOf(book::BroodPattern pattern) {
    switch (pattern) {
    case book::BroodPattern::None: return "dead-no-brood";
    case book::BroodPattern::Solid: return "dead-solid-brood";
    case book::BroodPattern::Patchy: break;
    }
    return "dead-patchy-brood";
}

} // namespace

std::vector<PointsTo> pointsTo(const book::WinterOutcome& outcome) {
    std::vector<PointsTo> said;
    if (outcome.alive) return said;
    const auto say = [&](std::size_t question, const char* id) {
        said.push_back({deathQuestions[question], {id, {}}});
    };
    if (outcome.foodLeft) say(0, *outcome.foodLeft ? "dead-with-food" : "dead-no-food");
    if (outcome.headsInCells) say(1, *outcome.headsInCells ? "dead-heads-in-cells" : "dead-heads-not-in-cells");
    if (outcome.mitesOnFloor) say(2, *outcome.mitesOnFloor ? "dead-many-mites" : "dead-few-mites");
    if (outcome.broodPattern) say(3, remarkOf(*outcome.broodPattern));
    if (outcome.queen) say(4, *outcome.queen ? "dead-queen-there" : "dead-queen-missing");
    return said;
}

} // namespace winterlarder::answer
