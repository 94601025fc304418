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

std::shared_ptr<const advice::YardMember> memberOf(const AnsweredColony& colony) {
    if (colony.member || !colony.answer.workings.ensemble) return colony.member;
    return std::make_shared<advice::YardMember>(advice::yardMember(colony.question, colony.answer));
}

bool same(const std::vector<advice::CombGift>& some, const std::vector<advice::CombGift>& others) {
    return std::equal(some.begin(), some.end(), others.begin(), others.end(), [](const auto& a, const auto& b) {
        return a.from == b.from && a.to == b.to && a.combs == b.combs && a.honey == b.honey;
    });
}

// What the yard made of an answer. Where its winters were let go the picture goes without the options that came with the yard.
AnsweredPointer amongOthers(const AnsweredPointer& alone, const AnsweredColony& before, advice::Advice shared) {
    auto made = std::make_shared<AnsweredColony>(*alone);
    made->alone = alone;
    made->answer.advice = std::move(shared);
    advice::Answer whole{made->answer.advice, {wintersOf(before), made->answer.workings.flow}};
    if (!whole.workings.ensemble) whole.workings.ensemble = wintersOf(*alone);
    if (whole.workings.ensemble) made->picture = pictureOf(made->question, whole);
    return made;
}

} // namespace

std::vector<AnsweredPointer> CoreAdviser::shareOut(const std::vector<AnsweredPointer>& yard) const {
    std::vector<AnsweredPointer> shared;
    for (const auto& colony : yard) shared.push_back(colony->alone ? colony->alone : colony);
    // A colony nothing can be said of neither gives nor takes.
    std::vector<advice::YardMember> members;
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < shared.size(); ++i) {
        const auto member = memberOf(*shared[i]);
        if (!member || member->losses.largest.empty()) continue;
        members.push_back(*member);
        places.push_back(i);
    }
    std::vector<advice::YardMember*> together;
    for (auto& member : members) together.push_back(&member);
    advice::shareCombs(together);

    for (std::size_t i = 0; i < members.size(); ++i) {
        if (members[i].advice.gifts.empty()) continue;
        const auto& before = yard[places[i]];
        const bool known = before->alone && same(before->answer.advice.gifts, members[i].advice.gifts);
        shared[places[i]] = known ? before : amongOthers(shared[places[i]], *before, std::move(members[i].advice));
    }
    return shared;
}

} // namespace winterlarder::desk
