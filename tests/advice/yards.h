// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/colonies.h"
#include "advice/yard/yard_plan.h"

#include <deque>

namespace winterlarder::advice {

//! Colonies of one yard, weighed alone and then in its plan.
class TestYard {
public:
    explicit TestYard(winter::Sampling sampling = quick) : sampling_(sampling) {}
    void add(const char* name, ColonyQuestion question) {
        question.colony = name;
        question.yard = "Yard";
        question.stream = winter::colonyStream(name);
        questions_.push_back(std::move(question));
        alone_.push_back(weigh(questions_.back(), constants(), sampling_, 2)->advice);
    }
    void plan(MovingCombs combs = MovingCombs::Allowed) {
        std::vector<YardColony> yard;
        for (std::size_t i = 0; i < questions_.size(); ++i) yard.push_back({&questions_[i], &alone_[i]});
        plan_ = planFor(yard, combs);
        planned_.clear();
        for (std::size_t i = 0; i < yard.size(); ++i)
            planned_.push_back(*inPlan(yard, plan_, i, constants(), sampling_, 2));
    }
    std::size_t size() const { return questions_.size(); }
    ColonyQuestion& question(std::size_t i) { return questions_[i]; }
    const ColonyQuestion& question(std::size_t i) const { return questions_[i]; }
    const Advice& alone(std::size_t i) const { return alone_[i]; }
    const Advice& planned(std::size_t i) const { return planned_[i].answer.advice; }
    const ColonyInPlan& inPlanOf(std::size_t i) const { return planned_[i]; }
    const PartInYard& part(std::size_t i) const { return plan_.parts[i]; }
    const YardPlan& whole() const { return plan_; }

private:
    winter::Sampling sampling_;
    std::deque<ColonyQuestion> questions_;
    std::deque<Advice> alone_;
    YardPlan plan_;
    std::vector<ColonyInPlan> planned_;
};

//! A colony known to have a queen.
inline ColonyQuestion queenright(const Made& made) {
    auto q = colony(made);
    q.queenSeen = true;
    return q;
}

//! Three boxes: the nest below, stores above. 20 kg and more to spare in Halifax.
inline ColonyQuestion heavy() {
    auto q = queenright({.combs = 30, .covered = 9});
    for (auto& comb : q.combs) {
        comb.capped = comb.box == 0 ? 0.3 : comb.box == 1 ? 0.7 : 0.95;
        comb.brood = comb.box == 0 && comb.place > 2 && comb.place < 7 ? 0.2 : 0;
    }
    return q;
}

//! One box, short of some ten kilograms, its outer combs half empty.
inline ColonyQuestion light() {
    auto q = queenright({.capped = 0.3, .covered = 7});
    for (const std::size_t i : {3u, 4u, 5u, 6u}) q.combs[i].brood = 0.2;
    q.brood = stores::broodOnCombs(q.combs);
    return q;
}

inline Mass sugarOf(const Advice& advice) { return advice.feed ? advice.feed->syrup.sugar : kilograms(0); }

} // namespace winterlarder::advice
