// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/yard_plan.h"

#include "report/colony_sheet.h"
#include "report/visits.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

namespace winterlarder::report {

namespace {

std::string stateId(tracking::FollowState state) {
    std::string id(tracking::word(state));
    std::replace(id.begin(), id.end(), '_', '-');
    return id;
}

using advice::Verdict;

YardTotals totalsOf(const std::vector<PlannedColony>& colonies) {
    YardTotals totals;
    for (const auto& colony : colonies) add(totals, colony);
    return totals;
}

//! What is still to be given: by the keeper's plan where there is one, else as advised.
struct Fed {
    Mass sugar{0}, fondant{0};
};

Fed fedAt(const PlannedColony& colony) {
    Fed fed;
    const auto& advice = *colony.advice;
    if (colony.tasks)
        for (const auto& task : *colony.tasks) {
            fed.sugar += task.sugar;
            fed.fondant += task.fondant;
        }
    else if (advice.feed) fed = {advice.feed->syrup.sugar, advice.feed->fondant};
    return fed;
}

// Of the syrup advised; more than one where more is planned.
double shareOfAdvised(Mass sugar, const feeding::FeedingPlan& feed) {
    return feed.syrup.sugar > Mass(0) ? sugar.value() / feed.syrup.sugar.value() : 0;
}

Section toBuy(const YardTotals& totals, const SugarPrice& price) {
    Section section{"to-buy"};
    if (totals.sugar > Mass(0)) {
        section.facts.push_back({"sugar", Cell(totals.sugar)});
        if (price.bag && *price.bag > Mass(0))
            section.facts.push_back({"bags", Cell(Count{std::ceil(totals.sugar.value() / price.bag->value() - 1e-9)})});
        if (price.perKg)
            section.facts.push_back({"cost", Cell(Money{totals.sugar.value() * *price.perKg, price.currency})});
        section.facts.push_back({"water", Cell(totals.water)});
    }
    if (totals.fondant > Mass(0)) section.facts.push_back({"fondant", Cell(totals.fondant)});
    if (totals.honey > Mass(0)) section.facts.push_back({"honey-to-take", Cell(totals.honey)});
    if (totals.lastSyrupDay) section.facts.push_back({"last-syrup-day", Cell(*totals.lastSyrupDay)});
    return section;
}

Cell amountOf(const Task& task) {
    if (task.syrup > Volume(0)) return task.syrup;
    if (task.fondant > Mass(0)) return task.fondant;
    return task.honey > Mass(0) ? Cell(task.honey) : Cell();
}

std::vector<Task> tasksOfPlanned(const PlannedColony& colony) {
    if (colony.tasks) return *colony.tasks;
    return colony.followed ? colony.followed->tasks : tasksOf(*colony.question, *colony.advice);
}

Section visits(const std::vector<PlannedColony>& colonies) {
    struct Line {
        Task task;
        std::string colony;
    };
    std::vector<Line> lines;
    for (const auto& colony : colonies)
        for (const auto& task : tasksOfPlanned(colony)) lines.push_back({task, colony.question->colony});
    std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) {
        if (a.task.date.has_value() != b.task.date.has_value()) return a.task.date.has_value();
        return a.task.date && *a.task.date < *b.task.date;
    });
    Section section{"visits"};
    section.table.columns = {"day", "colony", "what", "amount", "sugar", "done"};
    for (const auto& line : lines)
        section.table.rows.push_back({line.task.date ? Cell(*line.task.date) : Cell(Word{"any-day"}), Cell(line.colony),
                                      Cell(Word{idOf(line.task.kind)}), amountOf(line.task),
                                      line.task.sugar > Mass(0) ? Cell(line.task.sugar) : Cell(), Cell()});
    return section;
}

template <class Value> Cell known(const std::optional<Value>& value) {
    return value ? Cell(*value) : Cell(Word{"not-known"});
}

Section colonyList(const std::vector<PlannedColony>& colonies) {
    Section section{"colonies"};
    section.table.columns = {"colony", "verdict", "stores", "needed", "bees", "touches-reserve", "runs-out"};
    for (const auto& colony : colonies) {
        if (const auto& followed = colony.followed) {
            section.table.rows.push_back({Cell(colony.question->colony), Cell(Word{stateId(followed->state)}),
                                          Cell(followed->stores), Cell(), Cell(), Cell(followed->touchReserve),
                                          Cell(followed->runOut)});
            continue;
        }
        const auto& advice = *colony.advice;
        section.table.rows.push_back({Cell(colony.question->colony), Cell(Word{idOf(advice.verdict)}),
                                      advice.estimate ? Cell(advice.estimate->spread) : Cell(Word{"not-known"}),
                                      known(advice.need), known(advice.bees), known(advice.touchReserve),
                                      known(advice.runOut)});
    }
    return section;
}

// Each gift stands with its giver and its taker; it is listed where it is taken.
Section gifts(const std::vector<PlannedColony>& colonies) {
    Section section{"gifts"};
    section.table.columns = {"from", "to", "combs", "honey"};
    for (const auto& colony : colonies)
        for (const auto& gift : colony.advice->gifts)
            if (!colony.followed && gift.to == colony.question->colony)
                section.table.rows.push_back({Cell(gift.from), Cell(gift.to),
                                              Cell(Count{static_cast<double>(gift.combs.size())}), Cell(gift.honey)});
    return section;
}

Section toMix(const std::vector<PlannedColony>& colonies) {
    Section section{"to-mix"};
    section.table.columns = {"colony", "ratio", "sugar", "water", "syrup"};
    for (const auto& colony : colonies) {
        const auto& advice = *colony.advice;
        if (colony.followed || !advice.feed || advice.feed->syrup.sugar <= Mass(0)) continue;
        const auto& syrup = advice.feed->syrup;
        const double share = shareOfAdvised(fedAt(colony).sugar, *advice.feed);
        if (share <= 0) continue;
        section.table.rows.push_back({Cell(colony.question->colony), Cell(advice.feed->ratio.printed),
                                      Cell(syrup.sugar * share), Cell(syrup.water * share),
                                      Cell(syrup.volume * share)});
    }
    return section;
}

// Cautions about one colony's own numbers stay on its sheet; what is said here holds for all.
Section cautions(const std::vector<PlannedColony>& colonies, const ReferenceData& reference) {
    Section section{"cautions"};
    std::set<std::string> said;
    for (const auto& colony : colonies)
        for (const auto& remark : withSources(colony.advice->cautions, reference))
            if (remark.remark.details.empty() && said.insert(remark.remark.id).second)
                section.remarks.push_back(remark);
    return section;
}

} // namespace

void add(YardTotals& totals, const PlannedColony& colony) {
    if (colony.followed) {
        for (const auto& task : colony.followed->tasks) {
            totals.sugar += task.sugar;
            totals.fondant += task.fondant;
        }
        return;
    }
    const auto& advice = *colony.advice;
    if (advice.verdict == Verdict::Harvest && advice.harvest) totals.honey = totals.honey + advice.harvest->upTo;
    const Fed fed = fedAt(colony);
    totals.sugar += fed.sugar;
    totals.fondant += fed.fondant;
    if (!advice.feed) return;
    const auto& feed = *advice.feed;
    totals.water += feed.syrup.water * shareOfAdvised(fed.sugar, feed);
    if (!feed.lastDay || fed.sugar <= Mass(0)) return;
    const Date last = colony.question->winter.date(*feed.lastDay);
    totals.lastSyrupDay = totals.lastSyrupDay ? std::min(*totals.lastSyrupDay, last) : last;
}

Sheet yardPlan(const std::string& yard, Date date, const std::vector<PlannedColony>& colonies, const SugarPrice& price,
               const ReferenceData& reference) {
    Sheet sheet{.title = yard, .date = date};
    for (auto& section : {toBuy(totalsOf(colonies), price), visits(colonies), colonyList(colonies), gifts(colonies),
                          toMix(colonies), cautions(colonies, reference)})
        if (!section.facts.empty() || !section.table.rows.empty() || !section.remarks.empty())
            sheet.sections.push_back(section);
    gatherSources(sheet);
    return sheet;
}

} // namespace winterlarder::report
