// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/core_adviser.h"

#include "answer/question_of_case.h"

#include <algorithm>

namespace winterlarder::desk {

CoreAdviser::CoreAdviser(std::shared_ptr<const ReferenceData> reference, winter::Sampling sampling, int threads)
    : reference_(std::move(reference)), sampling_(sampling), threads_(threads) {}

Outcome<AnsweredPointer> CoreAdviser::answer(const book::ColonyCase& record, int position, std::stop_token stop) const {
    return answerOver(sampling_, record, position, stop);
}

Outcome<AnsweredPointer> CoreAdviser::preview(const book::ColonyCase& record, int position, std::stop_token stop) const {
    return answerOver({sampling_.seed, std::min(sampling_.winters, previewWinters)}, record, position, stop);
}

Outcome<AnsweredPointer> CoreAdviser::answerOver(winter::Sampling sampling, const book::ColonyCase& record, int position, const std::stop_token& stop) const {
    auto question = answer::questionOf(record, {}, *reference_, static_cast<std::uint64_t>(position));
    if (!question.ok()) return question.problems();
    auto weighed = advice::weigh(*question, reference_->constants, sampling, threads_, stop);
    if (!weighed) return AnsweredPointer();
    auto made = std::make_shared<AnsweredColony>(AnsweredColony{record, std::move(*question), std::move(*weighed), {}, {}, nullptr});
    if (!made->question.combs.empty())
        made->combs = stores::storesOfCombs(made->question.combs, stores::openFactor(made->question.freshlyFilled));
    made->picture = pictureOf(made->question, made->answer);
    return AnsweredPointer(std::move(made));
}

std::vector<AnsweredPointer> CoreAdviser::shareOut(const std::vector<AnsweredPointer>& yard) const {
    std::vector<AnsweredPointer> alone;
    for (const auto& colony : yard) alone.push_back(colony->alone ? colony->alone : colony);
    // A colony nothing can be said of neither gives nor takes.
    std::vector<advice::YardMember> members;
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < alone.size(); ++i) {
        if (!alone[i]->answer.workings.ensemble) continue;
        members.push_back(advice::yardMember(alone[i]->question, alone[i]->answer));
        places.push_back(i);
    }
    std::vector<advice::YardMember*> together;
    for (auto& member : members) together.push_back(&member);
    advice::shareCombs(together);

    std::vector<AnsweredPointer> shared = alone;
    for (std::size_t i = 0; i < members.size(); ++i) {
        if (members[i].advice.gifts.empty()) continue;
        auto made = std::make_shared<AnsweredColony>(*alone[places[i]]);
        made->alone = alone[places[i]];
        made->answer.advice = std::move(members[i].advice);
        made->picture = pictureOf(made->question, made->answer);
        shared[places[i]] = std::move(made);
    }
    return shared;
}

} // namespace winterlarder::desk
