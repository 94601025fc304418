// SPDX-License-Identifier: GPL-3.0-or-later
#include "tracking/track.h"

#include "tracking/redraw.h"

#include <algorithm>
#include <cmath>

namespace winterlarder::tracking {

namespace {

constexpr int mostRounds = 5;
constexpr double temperedShare = 0.25; // of the winters that count when the first proposal is fitted
constexpr double fewestFitted = 20;
constexpr std::uint64_t roundStep = 0x9e3779b97f4a7c15ULL;

winter::WinterQuestion withBrood(winter::WinterQuestion question) {
    question.keepBrood = true;
    return question;
}

std::vector<winter::WinterLuck> firstLuck(const winter::WinterQuestion& question, winter::Sampling sampling) {
    std::vector<winter::WinterLuck> luck;
    for (int i = 0; i < sampling.winters; ++i)
        luck.push_back(winter::drawnLuck(sampling.seed, question.colonyStream, static_cast<std::uint32_t>(i)));
    return luck;
}

Tracked believing(const FollowQuestion& question, const ModelConstants& constants, winter::DemandEnsemble&& ensemble,
                  const std::vector<double>& logProposal, std::uint64_t seed) {
    Tracked tracked;
    tracked.ensemble = std::make_shared<const winter::DemandEnsemble>(std::move(ensemble));
    tracked.paths = std::make_shared<const HivePaths>(*tracked.ensemble, question.flow, question.decided, constants);
    tracked.belief = reweigh(question, *tracked.paths, logProposal, seed, constants);
    return tracked;
}

// The first fit is to a broad share of the winters, each later one to half as many: the proposal closes in on what was learned.
LuckProposal fitted(const Belief& belief, const std::vector<winter::WinterLuck>& luck,
                    const std::vector<double>& logProposal, int round) {
    const double share = temperedShare * static_cast<double>(luck.size()) / std::exp2(round - 1);
    const double power = temperingPower(belief.logLikelihood, logProposal, std::max(share, fewestFitted));
    return LuckProposal(luck, normalised(tempered(belief.logLikelihood, logProposal, power)));
}

} // namespace

FollowQuestion withinRun(FollowQuestion question, const ModelConstants& constants) {
    question.today = std::min(question.today, winter::runEnd(question.winter, constants));
    return question;
}

std::optional<Tracked> track(const FollowQuestion& given, const ModelConstants& constants, winter::Sampling sampling,
                             int threads, std::stop_token stop) {
    const FollowQuestion question = withinRun(given, constants);
    const auto asked = withBrood(question.winter);
    auto simulated = winter::simulate(asked, constants, sampling, threads, stop);
    if (!simulated) return std::nullopt;
    Tracked tracked = believing(question, constants, std::move(*simulated), {}, sampling.seed);
    const double enough = constants.redrawBelow * sampling.winters;
    std::vector<winter::WinterLuck> luck;
    std::vector<double> logProposal(static_cast<std::size_t>(sampling.winters), 0.0);
    for (int round = 1; round <= mostRounds && tracked.belief.effectiveWinters < enough; ++round) {
        if (luck.empty()) luck = firstLuck(asked, sampling);
        const LuckProposal proposal = fitted(tracked.belief, luck, logProposal, round);
        const std::uint64_t seed = sampling.seed + roundStep * static_cast<std::uint64_t>(round);
        luck = proposal.draw(seed, asked.colonyStream, luck.size());
        for (std::size_t i = 0; i < luck.size(); ++i) logProposal[i] = proposal.logRatio(luck[i]);
        auto again = winter::simulateWith(asked, constants, {seed, sampling.winters}, luck, threads, stop);
        if (!again) return std::nullopt;
        tracked = believing(question, constants, std::move(*again), logProposal, seed);
        tracked.drawnAgain = round;
    }
    return tracked;
}

namespace {

FollowQuestion asPlanned(FollowQuestion question) {
    question.observations.clear();
    question.steps.clear();
    question.today = question.decided;
    for (const auto& step : question.planned) {
        question.today = std::max(question.today, step.day);
        const bool feed = step.change.value() >= 0;
        question.steps.push_back(
            {step.day, feed ? KnownStep::Kind::Feed : KnownStep::Kind::Harvest, step.change, kilograms(0)});
    }
    return question;
}

} // namespace

std::optional<Tracked> trackPlan(const FollowQuestion& question, const ModelConstants& constants,
                                 winter::Sampling sampling, const Tracked& tracked, int threads, std::stop_token stop) {
    FollowQuestion plan = withinRun(asPlanned(question), constants);
    const bool newWeather = !question.winter.weatherSoFar.empty();
    plan.winter.weatherSoFar.clear(); // nobody knew it then
    Tracked planned;
    planned.ensemble = tracked.ensemble;
    planned.paths = tracked.paths;
    if (tracked.drawnAgain > 0 || newWeather) {
        auto simulated = winter::simulate(withBrood(plan.winter), constants, sampling, threads, stop);
        if (!simulated) return std::nullopt;
        planned.ensemble = std::make_shared<const winter::DemandEnsemble>(std::move(*simulated));
        planned.paths = std::make_shared<const HivePaths>(*planned.ensemble, plan.flow, plan.decided, constants);
    }
    planned.belief = reweigh(plan, *planned.paths, {}, sampling.seed, constants);
    return planned;
}

} // namespace winterlarder::tracking
