// SPDX-License-Identifier: GPL-3.0-or-later
#include "scale/proposals.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace winterlarder::scale {

namespace {

class Chooser {
public:
    explicit Chooser(const std::vector<DayWeight>& days) {
        const bool anyNight =
            std::any_of(days.begin(), days.end(), [](const DayWeight& day) { return day.basis != Basis::Day; });
        for (const DayWeight& day : days)
            if (!anyNight || day.basis != Basis::Day) usable_.emplace(day.date, &day);
    }
    void keep(Date date, KeepWhy why) {
        const auto day = usable_.find(date);
        if (day != usable_.end()) keep(*day->second, why);
    }
    void keepEnds() {
        if (usable_.empty()) return;
        keep(*usable_.begin()->second, KeepWhy::First);
        keep(*usable_.rbegin()->second, KeepWhy::Last);
    }
    void keepFirsts() {
        for (const auto& day : usable_)
            if (day.first.day() == 1) keep(*day.second, KeepWhy::FirstOfMonth);
    }
    std::vector<ProposedWeighing> chosen() const {
        std::vector<ProposedWeighing> list;
        for (const auto& one : chosen_) list.push_back(one.second);
        return list;
    }

private:
    void keep(const DayWeight& day, KeepWhy why) {
        chosen_.emplace(day.date, ProposedWeighing{day.date, day.weight, day.wet, why});
    }
    std::map<Date, const DayWeight*> usable_;
    std::map<Date, ProposedWeighing> chosen_;
};

ProposedRecord recordOf(const Step& step) {
    using Sort = ProposedRecord::Sort;
    const Sort sort = step.kind == StepKind::Feed      ? Sort::Feed
                      : step.kind == StepKind::Harvest ? Sort::Harvest
                                                       : Sort::Manipulation;
    return {step.date, sort, step.jump.change, step.kind != StepKind::Unknown};
}

// Put on and taken off again within three days: nothing a book needs.
bool passing(const Step& step, const std::vector<Step>& steps) {
    return step.rule == StepRule::CameAndWent && std::any_of(steps.begin(), steps.end(), [&](const Step& other) {
               const double on = std::max(step.jump.change.value(), other.jump.change.value());
               const double rest = std::abs((step.jump.change + other.jump.change).value());
               return other.rule == StepRule::CameAndWent &&
                      (step.jump.change < kilograms(0)) != (other.jump.change < kilograms(0)) &&
                      std::abs(step.date.daysSince(other.date)) <= 3 && rest <= std::max(0.4, 0.1 * on);
           });
}

} // namespace

Proposals propose(const Summary& summary) {
    Chooser chooser(summary.days);
    chooser.keepEnds();
    chooser.keepFirsts();
    Proposals proposals;
    for (const Step& step : summary.steps) {
        if (passing(step, summary.steps)) continue;
        chooser.keep(step.date, KeepWhy::BeforeStep);
        chooser.keep(step.date.plusDays(1), KeepWhy::AfterStep);
        proposals.records.push_back(recordOf(step));
    }
    proposals.weighings = chooser.chosen();
    return proposals;
}

} // namespace winterlarder::scale
