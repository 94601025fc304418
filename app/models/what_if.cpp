// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/what_if.h"

#include "advice/options.h"
#include "feeding/syrup.h"
#include "winter/larder.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

constexpr double usualSugarShare = 0.6; // 3:2 by mass

void scale(std::optional<double>& number, double factor) {
    if (number) *number *= factor;
}

// More than the combs of the hive hold is no count of combs or seams anybody could have made; it is said as a number.
void sayAsNumber(book::BeesRecord& bees, const advice::ColonyQuestion& question, double factor) {
    double places = 0;
    for (const auto& box : question.boxes) places += box.combsPerBox;
    if (!question.bees || std::max(bees.coveredCombs.value_or(0), bees.seams.value_or(0)) <= places) return;
    bees.coveredCombs.reset();
    bees.seams.reset();
    bees.count = question.bees->count * factor;
    bees.logSd = question.beesLogSd;
}

std::vector<winter::StoresStep> stepsOf(const WhatIf& wish, const std::optional<feeding::FeedingPlan>& plan,
                                        SeasonDay today) {
    std::vector<winter::StoresStep> steps;
    if (wish.take > Mass(0)) steps.push_back({today, -wish.take});
    if (plan)
        for (const auto& step : advice::stepsOf(*plan)) steps.push_back(step);
    return steps;
}

} // namespace

book::ColonyCase caseWith(const book::ColonyCase& record, const advice::ColonyQuestion& question, const WhatIf& wish) {
    auto changed = record;
    if (wish.wrapped) changed.hive.shell = book::Shell::Wrapped;
    const double factor = 1 + wish.beesPercent / 100;
    scale(changed.bees.count, factor);
    scale(changed.bees.coveredCombs, factor);
    scale(changed.bees.seams, factor);
    if (factor != 1) sayAsNumber(changed.bees, question, factor);
    if (wish.forageDaysLater != 0 && question.season.forage)
        changed.season.forage =
            question.winter.date(std::min(question.season.forage->day + wish.forageDaysLater, lastSimulatedDay));
    return changed;
}

std::optional<Trials> Trials::of(AnsweredPointer base, const ModelConstants& constants) {
    if (!base || !base->answer.advice.estimate || base->picture.empty()) return std::nullopt;
    auto winters = wintersOf(*base);
    if (!winters) return std::nullopt;
    return Trials(std::move(base), std::move(winters), constants.diurnalHalfRange);
}

Trials::Trials(AnsweredPointer base, std::shared_ptr<const winter::DemandEnsemble> winters, double diurnalHalfRange)
    : base_(std::move(base)), winters_(std::move(winters)), diurnalHalfRange_(diurnalHalfRange) {
    const auto& ensemble = *winters_;
    const auto& advice = base_->answer.advice;
    pairs_ = pairWithStores(ensemble.winters(), advice.estimate->mean, advice.storesSd);
    losses_ = winter::lossesFrom(ensemble, base_->question.asOf, base_->answer.workings.flow);
    drawn_ = standFor(pairs_, losses_.largest, drawnWinters);
}

std::optional<feeding::FeedingPlan> Trials::planFor(Mass sugar) const {
    const auto& q = base_->question;
    if (sugar <= Mass(0) || !q.site) return std::nullopt;
    const auto bees = winters_->bees(q.asOf);
    feeding::FeedingQuestion asked{sugar * feeding::storesPerKgSugar(usualSugarShare), q.winter, q.asOf};
    asked.curve = &q.site->curve;
    asked.season = q.season;
    asked.bees = {winter::quantile({bees.begin(), bees.end()}, 0.5)};
    asked.feeder = q.feeder;
    asked.freeRoom = base_->answer.advice.freeRoom;
    asked.visitEveryDays = q.visitEveryDays;
    asked.visitWeekdays = q.visitWeekdays;
    asked.diurnalHalfRange = TemperatureDifference(diurnalHalfRange_);
    return feeding::planFeeding(asked);
}

Trials::Trial Trials::tryOut(const WhatIf& wish) const {
    const auto& q = base_->question;
    const auto& answer = base_->answer;
    const auto& ensemble = *winters_;
    Trial trial;
    trial.plan = planFor(wish.sugar);
    auto& option = trial.option;
    option.kind = trial.plan ? advice::OptionKind::Feed : advice::OptionKind::TakeNow;
    option.amount = trial.plan ? trial.plan->stores : wish.take;
    option.steps = stepsOf(wish, trial.plan, q.asOf);
    const Mass mean = std::max(Mass(0), answer.advice.estimate->mean);
    const auto losses = lossesUnder(ensemble, answer.workings.flow, option, q.asOf);
    const auto outcome = winter::follow(losses.all, mean, answer.advice.storesSd, answer.advice.reserve);
    option.storesAfter = std::max(Mass(0), mean - wish.take);
    option.runOut = outcome.runsOut;
    option.touchReserve = outcome.touchesReserve;
    if (trial.plan)
        option.touchReserve = winter::shareShort(losses.touching, mean, answer.advice.storesSd, answer.advice.reserve,
                                                 winter::Short::Undercut);
    option.springReserve = outcome.atForage;
    option.springSurplus = advice::aboveReserve(outcome.atForage, answer.advice.reserve);
    auto picture = std::make_shared<WinterPicture>(base_->picture);
    std::erase_if(picture->options, [](const OptionPicture& each) { return each.kind != advice::OptionKind::Leave; });
    if (wish.changesAmounts())
        picture->options.push_back(pictureOption(ensemble, answer.workings.flow, losses, pairs_, drawn_, option,
                                                 picture->first, picture->last, picture->reserveKg, Readings::None));
    trial.picture = std::move(picture);
    return trial;
}

advice::Advice adviceOf(const Trials::Trial& trial, const AnsweredColony& base, const WhatIf& wish) {
    auto advice = base.answer.advice;
    advice.feed = trial.plan;
    advice.harvest.reset();
    if (wish.take > Mass(0)) advice.harvest = advice::HarvestAdvice{wish.take, {}, Mass(0), 0, wish.take};
    advice.verdict = trial.plan            ? advice::Verdict::Feed
                     : wish.take > Mass(0) ? advice::Verdict::Harvest
                                           : advice::Verdict::Leave;
    advice.decidedBy = trial.plan            ? advice::DecidedBy::Feed
                       : wish.take > Mass(0) ? advice::DecidedBy::Harvest
                                             : advice::DecidedBy::Enough;
    advice.springReserve = trial.option.springReserve;
    std::erase_if(advice.options, [](const auto& option) { return option.kind != advice::OptionKind::Leave; });
    if (wish.changesAmounts()) advice.options.push_back(trial.option);
    return advice;
}

} // namespace winterlarder::desk
