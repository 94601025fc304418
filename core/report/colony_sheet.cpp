// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/colony_sheet.h"

#include "report/visits.h"

#include <algorithm>

namespace winterlarder::report {

namespace {

using advice::Advice;
using advice::ColonyQuestion;
using advice::Verdict;

constexpr Mass nothingWorthSaying = grams(50);

std::string optionId(advice::OptionKind kind) {
    switch (kind) {
    case advice::OptionKind::Leave: return "leave";
    case advice::OptionKind::TakeNow: return "take-now";
    case advice::OptionKind::TakeInSpring: return "take-in-spring";
    case advice::OptionKind::Feed: return "feed";
    case advice::OptionKind::MoveCombs: return "move-combs";
    case advice::OptionKind::Unite: return "unite";
    }
    return {};
}

template <class Value> void add(Section& section, std::string id, const std::optional<Value>& value) {
    if (value) section.facts.push_back({std::move(id), Cell(*value)});
}

void addAmounts(Section& answer, const Advice& advice) {
    if (advice.verdict == Verdict::Harvest && advice.harvest)
        answer.facts.push_back({"take", Cell(advice.harvest->upTo)});
    if (!advice.feed) return;
    if (advice.feed->syrup.sugar > nothingWorthSaying)
        answer.facts.push_back({"feed-sugar", Cell(advice.feed->syrup.sugar)});
    if (advice.feed->fondant > nothingWorthSaying) answer.facts.push_back({"feed-fondant", Cell(advice.feed->fondant)});
}

std::optional<Date> dayOf(const ColonyQuestion& question, const std::optional<climate::SeasonDate>& date) {
    return date ? std::optional(question.winter.date(date->day)) : std::nullopt;
}

Section answerSection(const ColonyQuestion& question, const Advice& advice, const std::vector<Task>& tasks) {
    Section answer{"answer"};
    answer.facts.push_back({"verdict", Cell(Word{idOf(advice.verdict)})});
    addAmounts(answer, advice);
    if (advice.estimate) answer.facts.push_back({"stores", Cell(advice.estimate->spread)});
    add(answer, "needed", advice.need);
    answer.facts.push_back({"reserve", Cell(advice.reserve)});
    add(answer, "bees", advice.bees);
    add(answer, "first-forage", dayOf(question, advice.season.forage));
    add(answer, "touches-reserve", advice.touchReserve);
    add(answer, "runs-out", advice.runOut);
    if (!tasks.empty() && tasks.front().date) answer.facts.push_back({"next", Cell(*tasks.front().date)});
    return answer;
}

// Honey that was not counted with the stores takes nothing off them.
Mass storesChanged(const Advice& advice, const advice::Option& option) {
    return option.kind == advice::OptionKind::TakeNow && advice.harvest ? advice.harvest->fromStores : option.amount;
}

Section optionsSection(const Advice& advice) {
    Section options{"options"};
    options.table.columns = {"option", "stores-changed", "touches-reserve", "runs-out", "at-first-forage"};
    for (const auto& option : advice.options) {
        const Mass changed = storesChanged(advice, option);
        options.table.rows.push_back({Cell(Word{optionId(option.kind)}),
                                      changed > nothingWorthSaying ? Cell(changed) : Cell(), Cell(option.touchReserve),
                                      Cell(option.runOut), Cell(option.springReserve)});
    }
    return options;
}

Section evidenceSection(const Advice& advice) {
    Section evidence{"evidence"};
    if (!advice.estimate) return evidence;
    evidence.table.columns = {"evidence", "day", "says"};
    for (const auto& share : advice.estimate->shares)
        evidence.table.rows.push_back(
            {Cell(Word{stores::idOf(share.evidence.kind)}), Cell(share.evidence.date), Cell(share.says)});
    return evidence;
}

Section takeSection(const ColonyQuestion& question, const Advice& advice) {
    Section take{"take"};
    if (advice.verdict != Verdict::Harvest || !advice.harvest || advice.harvest->combs.empty()) return take;
    take.table.columns = {"box", "comb"};
    for (const int position : advice.harvest->combs) {
        const auto& comb = question.combs[static_cast<std::size_t>(position)];
        take.table.rows.push_back({Cell(Count{comb.box + 1.0}), Cell(Count{comb.place + 1.0})});
    }
    take.facts.push_back({"combs-hold", Cell(advice.harvest->combsHold)});
    return take;
}

Section feedingSection(const ColonyQuestion& question, const Advice& advice, const std::vector<Task>& tasks) {
    Section feeding{"feeding"};
    if (!advice.feed) return feeding;
    const auto& plan = *advice.feed;
    if (plan.syrup.sugar > nothingWorthSaying) {
        feeding.facts.push_back({"ratio", Cell(plan.ratio.printed)});
        feeding.facts.push_back({"sugar", Cell(plan.syrup.sugar)});
        feeding.facts.push_back({"water", Cell(plan.syrup.water)});
        feeding.facts.push_back({"syrup", Cell(plan.syrup.volume)});
        if (plan.lastDay) feeding.facts.push_back({"last-day", Cell(question.winter.date(*plan.lastDay))});
    }
    if (plan.fondant > nothingWorthSaying) feeding.facts.push_back({"fondant", Cell(plan.fondant)});
    feeding.table.columns = {"day", "what", "syrup", "sugar", "fondant", "done"};
    for (const auto& task : tasks) {
        if (task.kind == TaskKind::MoveCombs) continue; // in a section of its own
        feeding.table.rows.push_back({task.date ? Cell(*task.date) : Cell(), Cell(Word{idOf(task.kind)}),
                                      task.syrup > Volume(0) ? Cell(task.syrup) : Cell(),
                                      task.sugar > Mass(0) ? Cell(task.sugar) : Cell(),
                                      task.fondant > Mass(0) ? Cell(task.fondant) : Cell(), Cell()});
    }
    return feeding;
}

Section seasonSection(const ColonyQuestion& question, const Advice& advice) {
    Section season{"season"};
    const auto& dates = advice.season;
    const auto say = [&](const char* id, const std::optional<climate::SeasonDate>& date) {
        if (date)
            season.facts.push_back(
                {id, Cell(RoughDate{question.winter.date(date->day), date->exact ? 0 : date->sdDays})});
    };
    say("last-income", dates.lastIncome);
    say("feed-advised-by", dates.feedAdvisedBy);
    say("syrup-deadline", dates.syrupDeadline);
    say("brood-stop", dates.broodStop);
    say("brood-restart", dates.broodRestart);
    say("buildup", dates.buildup);
    say("forage", dates.forage);
    return season;
}

bool saysNothing(const Section& section) {
    return section.facts.empty() && section.table.rows.empty() && section.remarks.empty() && !section.winterPicture;
}

} // namespace

std::string idOf(Verdict verdict) {
    switch (verdict) {
    case Verdict::Harvest: return "harvest";
    case Verdict::Leave: return "leave";
    case Verdict::Feed: return "feed";
    case Verdict::Unite: return "unite";
    case Verdict::CannotSay: return "cannot-say";
    }
    return {};
}

std::vector<SourcedRemark> withSources(const std::vector<Remark>& remarks, const ReferenceData& reference) {
    std::vector<SourcedRemark> sourced;
    for (const auto& remark : remarks) {
        const auto sources = reference.sourcesOf(remark);
        sourced.push_back({remark, sources.empty() ? std::string() : sources.front()});
    }
    return sourced;
}

void gatherSources(Sheet& sheet) {
    sheet.sources.clear();
    for (const auto& section : sheet.sections)
        for (const auto& remark : section.remarks)
            if (!remark.source.empty() &&
                std::find(sheet.sources.begin(), sheet.sources.end(), remark.source) == sheet.sources.end())
                sheet.sources.push_back(remark.source);
}

Sheet colonySheet(const ColonyQuestion& question, const Advice& advice, const ReferenceData& reference,
                  const std::optional<std::vector<Task>>& planned) {
    const auto tasks = planned ? *planned : tasksOf(question, advice);
    Sheet sheet{.title = question.colony, .yard = question.yard, .date = question.winter.date(question.asOf)};
    Section picture{"picture"};
    picture.winterPicture = !advice.options.empty();
    Section reasons{"reasons"}, cautions{"cautions"};
    reasons.remarks = withSources(advice.reasons, reference);
    cautions.remarks = withSources(advice.cautions, reference);
    for (auto& section : {answerSection(question, advice, tasks), picture, optionsSection(advice),
                          takeSection(question, advice), feedingSection(question, advice, tasks),
                          evidenceSection(advice), seasonSection(question, advice), reasons, cautions})
        if (!saysNothing(section)) sheet.sections.push_back(section);
    gatherSources(sheet);
    return sheet;
}

} // namespace winterlarder::report
