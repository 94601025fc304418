// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/core_adviser.h"

#include "advice/yard/yard_plan.h"
#include "answer/question_of_case.h"

#include <algorithm>

namespace winterlarder::desk {

CoreAdviser::CoreAdviser(std::shared_ptr<const ReferenceData> reference, winter::Sampling sampling, int threads)
    : reference_(std::move(reference)), sampling_(sampling), threads_(threads) {}

Outcome<AnsweredPointer> CoreAdviser::answer(const book::ColonyCase& record, int position, std::stop_token stop) const {
    return answerOver(sampling_, record, position, stop);
}

Outcome<AnsweredPointer> CoreAdviser::preview(const book::ColonyCase& record, int position,
                                              std::stop_token stop) const {
    return answerOver({sampling_.seed, std::min(sampling_.winters, previewWinters)}, record, position, stop);
}

Outcome<AnsweredPointer> CoreAdviser::answerOver(winter::Sampling sampling, const book::ColonyCase& record,
                                                 int position, const std::stop_token& stop) const {
    auto question = answer::questionOf(record, {}, *reference_, static_cast<std::uint64_t>(position));
    if (!question.ok()) return question.problems();
    auto weighed = advice::weigh(*question, reference_->constants, sampling, threads_, stop);
    if (!weighed) return AnsweredPointer();
    auto made = std::make_shared<AnsweredColony>(
        AnsweredColony{.record = record, .question = std::move(*question), .answer = std::move(*weighed)});
    made->spreads = stores::combSpreads(reference_->constants);
    if (!made->question.combs.empty())
        made->combs = stores::storesOfCombs(made->question.combs, stores::openFactor(made->question.freshlyFilled));
    made->picture = pictureOf(made->question, made->answer);
    return AnsweredPointer(std::move(made));
}

// The same question and seed give the same winters.
AnsweredPointer CoreAdviser::recall(const AnsweredPointer& answered, std::stop_token stop) const {
    auto weighed = advice::weigh(answered->question, reference_->constants, sampling_, threads_, std::move(stop));
    if (!weighed) return nullptr;
    auto made = std::make_shared<AnsweredColony>(*answered);
    made->answer.workings = std::move(weighed->workings);
    made->picture = pictureOf(made->question, made->answer);
    return made;
}

namespace {

// What the yard's plan made of an answer. Where a colony was not weighed again its own winters stay.
AnsweredPointer amongOthers(const AnsweredPointer& alone, advice::ColonyInPlan planned) {
    auto made = std::make_shared<AnsweredColony>(*alone);
    made->alone = alone;
    made->question = std::move(planned.question);
    if (!planned.answer.workings.ensemble) planned.answer.workings = alone->answer.workings;
    made->answer = std::move(planned.answer);
    if (made->answer.workings.ensemble) made->picture = pictureOf(made->question, made->answer);
    return made;
}

} // namespace

std::vector<AnsweredPointer> CoreAdviser::shareOut(const std::vector<AnsweredPointer>& yard,
                                                   advice::MovingCombs combs) const {
    std::vector<AnsweredPointer> shared;
    std::vector<advice::YardColony> colonies;
    for (const auto& colony : yard) {
        shared.push_back(colony->alone ? colony->alone : colony);
        colonies.push_back({&shared.back()->question, &shared.back()->answer.advice});
    }
    const auto plan = advice::planFor(colonies, combs);
    std::vector<AnsweredPointer> planned = shared;
    for (std::size_t i = 0; i < yard.size(); ++i) {
        if (plan.parts[i] == advice::PartInYard{}) continue;
        const bool known = yard[i]->alone && yard[i]->answer.advice.plan == plan.parts[i];
        auto made =
            known ? std::nullopt : advice::inPlan(colonies, plan, i, reference_->constants, sampling_, threads_);
        planned[i] = made ? amongOthers(shared[i], *std::move(made)) : yard[i];
    }
    return planned;
}

} // namespace winterlarder::desk
