// SPDX-License-Identifier: GPL-3.0-or-later
#include "advice/advice.h"

#include "advice/amounts.h"
#include "advice/options.h"
#include "stores/harvest.h"

#include <algorithm>

namespace winterlarder::advice {

namespace {

// A colony that can spare combs, and what of it is still to give.
struct Donor {
    YardMember* member;
    std::vector<stores::HarvestComb> combs;
    Mass spare;
};

bool healthyYard(const std::vector<YardMember*>& yard) {
    return std::none_of(yard.begin(), yard.end(), [](const YardMember* member) { return member->question.trouble; });
}

bool answered(const YardMember& member) { return member.advice.verdict != Verdict::CannotSay; }

Wish wishOf(const YardMember& member) {
    const auto& a = member.advice;
    return {std::max(kilograms(0), a.estimate->mean), a.storesSd, a.shortRisk, a.reserve};
}

// What a colony can spare above its own target and what is usual; below its dead band nothing.
Mass spareToGive(const YardMember& member) {
    const Mass spare = member.advice.toSpare.value_or(kilograms(0));
    return spare >= member.advice.deadBand ? spare : kilograms(0);
}

std::vector<Donor> donorsOf(const std::vector<YardMember*>& yard) {
    std::vector<Donor> donors;
    for (YardMember* member : yard) {
        const ColonyQuestion& q = member->question;
        if (!answered(*member) || member->advice.feed || member->advice.verdict == Verdict::Unite || q.combs.empty() ||
            member->advice.estimate->contradictory)
            continue;
        const auto order = stores::harvestOrder(q.combs, q.boxes, q.coveredCombs, stores::openFactor(q.freshlyFilled));
        donors.push_back({member, order, spareToGive(*member)});
    }
    std::stable_sort(donors.begin(), donors.end(), [](const Donor& a, const Donor& b) { return a.spare > b.spare; });
    return donors;
}

// The neediest first; a colony to be united is not helped on its own.
std::vector<YardMember*> receiversOf(const std::vector<YardMember*>& yard) {
    std::vector<YardMember*> receivers;
    for (YardMember* member : yard)
        if (answered(*member) && member->advice.feed && member->advice.decidedBy == DecidedBy::Feed) receivers.push_back(member);
    std::stable_sort(receivers.begin(), receivers.end(), [](const YardMember* a, const YardMember* b) {
        return *a->advice.need - a->advice.estimate->mean > *b->advice.need - b->advice.estimate->mean;
    });
    return receivers;
}

bool fits(const stores::Comb& comb, const ColonyQuestion& receiver) {
    return std::any_of(receiver.boxes.begin(), receiver.boxes.end(),
                       [&](const hive::CombFormat& box) { return box.outline == comb.format.outline; });
}

// Combs leave the donor until the receiver has enough or the donor's need is reached.
CombGift giftFrom(Donor& donor, const YardMember& receiver, Mass missing) {
    CombGift gift{donor.member->question.colony, receiver.question.colony, {}, kilograms(0)};
    std::vector<stores::HarvestComb> kept;
    for (const auto& comb : donor.combs) {
        const auto& full = donor.member->question.combs[static_cast<std::size_t>(comb.position)];
        const bool goes = gift.honey < missing && comb.honey <= donor.spare && comb.honey.value() > 0 && fits(full, receiver.question);
        if (!goes) {
            kept.push_back(comb);
            continue;
        }
        gift.combs.push_back(comb.position);
        gift.honey += comb.honey;
        donor.spare -= comb.honey;
    }
    donor.combs = std::move(kept);
    return gift;
}

void record(const CombGift& gift, YardMember& donor, YardMember& receiver) {
    donor.advice.gifts.push_back(gift);
    receiver.advice.gifts.push_back(gift);
    receiver.advice.reasons.push_back(
        {"move-combs-first", {{"from", gift.from}, {"kg", gift.honey}, {"combs", double(gift.combs.size())}}});
}

void addCaution(Advice& advice) {
    const bool said = std::any_of(advice.cautions.begin(), advice.cautions.end(),
                                  [](const Remark& remark) { return remark.id == "move-combs"; });
    if (!said) advice.cautions.push_back({"move-combs", {}});
}

// What is given to a neighbour cannot be taken off as honey too.
void keepBackWhatWasGiven(const Donor& donor) {
    Advice& advice = donor.member->advice;
    if (!advice.harvest) return;
    Mass given{0};
    for (const CombGift& gift : advice.gifts)
        if (gift.from == donor.member->question.colony) given += gift.honey;
    if (given.value() <= 0) return;
    HarvestAdvice left;
    for (const auto& comb : stores::takeUpTo(donor.combs, std::max(kilograms(0), advice.harvest->upTo - given))) {
        left.combs.push_back(comb.position);
        left.combsHold += comb.honey;
    }
    left.upTo = left.combsHold;
    if (left.upTo.value() >= donor.member->question.decisions.harvestLeast) {
        advice.harvest = std::move(left);
        return;
    }
    advice.harvest.reset();
    advice.verdict = Verdict::Leave;
    advice.decidedBy = DecidedBy::Enough;
    std::erase_if(advice.options, [](const Option& option) { return option.kind == OptionKind::TakeNow; });
}

} // namespace

YardMember yardMember(const ColonyQuestion& question, const Answer& answer) {
    YardMember member{question, answer.advice, {}, {}};
    if (!answer.workings.ensemble) return member;
    member.losses = winter::lossesFrom(*answer.workings.ensemble, question.asOf, answer.workings.flow);
    member.lossesWithoutFlow = winter::lossesFrom(*answer.workings.ensemble, question.asOf, {}).largest;
    return member;
}

void shareCombs(std::vector<YardMember*>& yard) {
    if (!healthyYard(yard)) return;
    auto donors = donorsOf(yard);
    for (YardMember* receiver : receiversOf(yard)) {
        const Wish wish = wishOf(*receiver);
        const Mass missing = std::max(kilograms(0), receiver->advice.missing->typical);
        Mass given{0};
        for (Donor& donor : donors) {
            if (given >= missing) break;
            const CombGift gift = giftFrom(donor, *receiver, missing - given);
            if (gift.combs.empty()) continue;
            given += gift.honey;
            record(gift, *donor.member, *receiver);
            addCaution(donor.member->advice);
        }
        if (given.value() <= 0) continue;
        receiver->advice.options.push_back(giveOption(receiver->losses, wish, given));
        addCaution(receiver->advice);
    }
    for (const Donor& donor : donors) keepBackWhatWasGiven(donor);
}

} // namespace winterlarder::advice
