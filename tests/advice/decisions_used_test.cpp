// SPDX-License-Identifier: GPL-3.0-or-later
// A number that only stands in the table decides nothing: each of these, moved, moves the answer of some random colony.
#include "advice/drawn_colonies.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

namespace winterlarder::advice::decisions_used_test {
namespace {

struct Moved {
    const char* name;
    double DecisionConstants::*number;
    double to;
};

const std::vector<Moved> moved = {
    {"worthAskingLeast", &DecisionConstants::worthAskingLeast, 4},
    {"askMites", &DecisionConstants::askMites, 9},
    {"askQueen", &DecisionConstants::askQueen, 9},
    {"askFoodBeside", &DecisionConstants::askFoodBeside, 9},
    {"askFullCombs", &DecisionConstants::askFullCombs, 9},
    {"beeBreadLow", &DecisionConstants::beeBreadLow, 1.5},
    {"beeBreadDays", &DecisionConstants::beeBreadDays, 5},
    {"longColdDays", &DecisionConstants::longColdDays, 2},
    {"narrowMargin", &DecisionConstants::narrowMargin, 12},
    {"waspsFrom", &DecisionConstants::waspsFrom, 25},
    {"coldestDays", &DecisionConstants::coldestDays, 120},
    {"springUsualFrom", &DecisionConstants::springUsualFrom, 130},
    {"springUsualTo", &DecisionConstants::springUsualTo, 80},
    {"clusteredBelow", &DecisionConstants::clusteredBelow, -20},
    {"wholeSuperShare", &DecisionConstants::wholeSuperShare, 1.5},
    {"earlyLookBefore", &DecisionConstants::earlyLookBefore, -30},
    {"earlyLookSd", &DecisionConstants::earlyLookSd, 6},
    {"useOnBees", &DecisionConstants::useOnBees, 0.1},
    {"countSdLeast", &DecisionConstants::countSdLeast, 12},
    {"broodBoxShare", &DecisionConstants::broodBoxShare, 1.5},
    {"heightWorthSaying", &DecisionConstants::heightWorthSaying, 9},
};

std::string shown(const Remark& remark) {
    std::string words = remark.id;
    for (const auto& [name, detail] : remark.details) {
        words += "/" + name;
        if (const auto* word = std::get_if<std::string>(&detail)) words += "=" + *word;
        if (const auto* number = std::get_if<double>(&detail)) words += fmt::format("={}", *number);
        if (const auto* mass = std::get_if<Mass>(&detail)) words += fmt::format("={}", mass->value());
    }
    return words;
}

// What of an answer these numbers may move.
std::string shown(const Advice& a) {
    std::string all =
        fmt::format("{} {} {} {}", int(a.verdict), int(a.decidedBy), a.storesSd.value(), a.reserve.value());
    if (a.missing) all += fmt::format(" missing {} {}", a.missing->low.value(), a.missing->high.value());
    if (a.harvest) all += fmt::format(" take {} of {} combs", a.harvest->upTo.value(), a.harvest->combs.size());
    if (a.ask) all += fmt::format(" ask {} {}", int(a.ask->kind), a.ask->movesKg);
    all += fmt::format(" look {} {}", a.anotherLook.worthIt, a.anotherLook.narrowsToKg);
    for (const auto* remarks : {&a.reasons, &a.cautions, &a.goodPractice})
        for (const auto& remark : *remarks) all += " " + shown(remark);
    return all;
}

// Drawn as for the properties; now and then with bee bread, bees that are not drawn, combs that nobody looked at and a weight, or a place
// higher than its station.
ColonyQuestion colony(unsigned seed) {
    ColonyDraw draw(seed);
    auto q = draw.colony().question;
    if (draw.chance(0.5)) q.beeBread = kilograms(draw.between(0, 1));
    if (draw.chance(0.3)) q.drawnBeesLogSd = 0;
    if (draw.chance(0.2) && q.bees) {
        q.weighings.assign(1, onScale(q, kilograms(draw.between(25, 50))));
        q.combs.clear();
        q.tareSd = kilograms(5);
    }
    if (draw.chance(0.3) && q.site) {
        auto site = *q.site;
        site.heightShiftK = draw.between(-3, 3);
        q.site = site;
    }
    return q;
}

TEST(DecisionsUsed, EachMovesTheAnswerOfSomeColony) {
    constexpr unsigned most = 400;
    const winter::Sampling few{1, 40};
    std::vector<const Moved*> left;
    for (const auto& each : moved) left.push_back(&each);
    for (unsigned seed = 1; seed <= most && !left.empty(); ++seed) {
        const auto asShipped = colony(seed);
        const auto answer = shown(weigh(asShipped, constants(), few)->advice);
        std::erase_if(left, [&](const Moved* each) {
            auto q = asShipped;
            q.decisions.*(each->number) = each->to;
            return shown(weigh(q, constants(), few)->advice) != answer;
        });
    }
    for (const auto* each : left) ADD_FAILURE() << each->name << " moves nothing";
}

} // namespace
} // namespace winterlarder::advice::decisions_used_test
