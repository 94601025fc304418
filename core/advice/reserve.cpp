// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/reserve.h"

#include "hive/hive.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

double faceOf(const hive::CombFormat& box) { return hive::faceArea(box.outline).value(); }

} // namespace

bool isSuper(const ColonyQuestion& question, int box) {
    const auto at = static_cast<std::size_t>(box);
    if (at < question.boxUses.size() && question.boxUses[at].super) return true;
    int listed = 0, supers = 0;
    for (const auto& comb : question.combs)
        if (comb.box == box) ++listed, supers += comb.inSuper;
    return listed > 0 && listed == supers;
}

int broodBoxes(const ColonyQuestion& question) {
    double largest = 0;
    for (const auto& box : question.boxes) largest = std::max(largest, faceOf(box));
    int count = 0;
    for (std::size_t i = 0; i < question.boxes.size(); ++i)
        count += !isSuper(question, static_cast<int>(i)) &&
                 faceOf(question.boxes[i]) >= question.decisions.broodBoxShare * largest;
    return std::max(1, count);
}

Mass autumnReserve(const ColonyQuestion& question) {
    if (question.answers.reserve) return *question.answers.reserve;
    const auto& rules = question.decisions;
    if (question.nucleus) return kilograms(rules.reserveNucleus);
    return kilograms(broodBoxes(question) > 1 ? rules.reserveMoreBoxes : rules.reserveOneBox);
}

Mass reserveOn(const ColonyQuestion& question, const PhaseDays& days, SeasonDay day) {
    const Mass full = autumnReserve(question), least = std::min(full, kilograms(question.decisions.reserveInSpring));
    if (day <= days.winter) return full;
    const int length = std::max(days.winter, days.quietFrom) - days.winter;
    const double past = length > 0 ? std::min(1.0, double(day - days.winter) / length) : 1.0;
    return full + (least - full) * past;
}

double shortRiskOf(const ColonyQuestion& question, double lockedInDays) {
    if (question.answers.shortRisk) return *question.answers.shortRisk;
    const auto& rules = question.decisions;
    if (question.answers.visitsInWinter == false) return rules.riskUnvisited;
    const double lasting =
        std::clamp((lockedInDays - rules.lockedInShort) / (rules.lockedInLong - rules.lockedInShort), 0.0, 1.0);
    return rules.riskVisited + lasting * (rules.riskUnvisited - rules.riskVisited);
}

} // namespace winterlarder::advice
