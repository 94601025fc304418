// SPDX-License-Identifier: GPL-3.0-or-later
#include "answer/supers_followed.h"

#include "advice/looking/evidence_today.h"

#include <algorithm>
#include <utility>

namespace winterlarder::answer {

namespace {

using tracking::KnownStep;

void addStep(std::vector<KnownStep>& steps, SeasonDay day, KnownStep::Kind kind, Mass change) {
    if (change == kilograms(0)) return;
    KnownStep step{day, kind, change, std::nullopt};
    if (kind == KnownStep::Kind::Equipment) step.sd = kilograms(0); // the look's error is in the stores it left
    steps.push_back(std::move(step));
}

} // namespace

SupersFollowed::SupersFollowed(const advice::ColonyQuestion& autumn)
    : decided_(autumn.asOf), apart_(!advice::supersCount(autumn)), honey_(advice::honeyApart(autumn, autumn.asOf)),
      tare_(apart_ ? autumn.supersTare : kilograms(0)) {}

void SupersFollowed::harvested(SeasonDay day, Mass honey) { events_.push_back({day, Event::Kind::Harvested, honey}); }
void SupersFollowed::seen(SeasonDay day, Mass apart) {
    if (apart_) events_.push_back({day, Event::Kind::Seen, apart});
}
void SupersFollowed::off(SeasonDay day) {
    if (apart_) events_.push_back({day, Event::Kind::Off, kilograms(0)});
}

std::vector<KnownStep> SupersFollowed::steps() const {
    auto events = events_;
    std::stable_sort(events.begin(), events.end(), [](const Event& a, const Event& b) {
        return std::pair(a.day, a.kind) < std::pair(b.day, b.kind);
    });
    std::vector<KnownStep> steps;
    Mass apart = honey_, tare = tare_;
    std::optional<SeasonDay> harvested;
    const auto becomes = [&](SeasonDay day, Mass now) {
        addStep(steps, day, KnownStep::Kind::Equipment, now - apart);
        apart = now;
    };
    addStep(steps, decided_, KnownStep::Kind::Equipment, apart);
    for (const Event& event : events) {
        switch (event.kind) {
        case Event::Kind::Harvested: {
            const Mass ofSupers = std::min(apart, event.kg);
            harvested = event.day;
            becomes(event.day, apart - ofSupers);
            addStep(steps, event.day, KnownStep::Kind::Harvest, -(event.kg - ofSupers));
            break;
        }
        case Event::Kind::Seen: // before that day's harvest or after it: it is off either way
            becomes(event.day, harvested == event.day ? std::min(apart, event.kg) : event.kg);
            break;
        case Event::Kind::Off:
            becomes(event.day, kilograms(0));
            addStep(steps, event.day, KnownStep::Kind::Equipment, -std::exchange(tare, kilograms(0)));
            break;
        }
    }
    return steps;
}

} // namespace winterlarder::answer
