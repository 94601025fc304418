// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/yard_state.h"

#include "answer/style_of_place.h"

#include <algorithm>

namespace winterlarder::desk {

namespace {

bool isOf(const ColonyEntry& entry, const book::ColonyCase& record) {
    return entry.answered && entry.answered->record == record;
}

// Whether it is another than before.
bool put(ColonyEntry& entry, Outcome<book::ColonyCase> record) {
    if (!record.ok()) {
        entry.problems = record.problems();
        entry.pending = false;
        return true;
    }
    if (entry.record == *record) return false;
    entry.record = std::move(record).value();
    entry.problems.clear();
    entry.pending = !isOf(entry, entry.record);
    return true;
}

} // namespace

bool inSameWinter(Date one, Date other) {
    const auto same = [&](Hemisphere hemisphere) {
        return Winter::containing(one, hemisphere).autumn() == Winter::containing(other, hemisphere).autumn();
    };
    return same(Hemisphere::North) && same(Hemisphere::South);
}

// ---- what is shown ---------------------------------------------------------------------------------------------------

const ColonyEntry* YardState::find(ColonyId id) const {
    const int at = position(id);
    return at < 0 ? nullptr : &colonies[static_cast<std::size_t>(at)];
}

ColonyEntry* YardState::entry(ColonyId id) {
    const int at = position(id);
    return at < 0 ? nullptr : &colonies[static_cast<std::size_t>(at)];
}

int YardState::position(ColonyId id) const {
    const auto found =
        std::find_if(colonies.begin(), colonies.end(), [id](const auto& colony) { return colony.id == id; });
    return found == colonies.end() ? -1 : static_cast<int>(found - colonies.begin());
}

const book::Yard* YardState::shownYard() const {
    const auto found = std::find_if(yards.begin(), yards.end(), [this](const auto& yard) { return yard.id == shown; });
    return found == yards.end() ? nullptr : &*found;
}

text::Wording YardState::wording() const {
    std::optional<text::Wording> all;
    for (const auto& colony : colonies) {
        if (!colony.answered) continue;
        const auto own = answer::wordingOf(colony.answered->question);
        if (!all) all = own;
        all->frames = all->frames || own.frames;
    }
    return all.value_or(text::Wording{});
}

const book::ColonyHistory* YardState::historyOf(ColonyId id) const {
    return history && id == open && history->colony.id == id ? &*history : nullptr;
}

FollowedPointer YardState::followedOf(ColonyId id) const {
    const auto found = followed.find(id);
    return found == followed.end() ? nullptr : found->second;
}

bool YardState::awaitsFollowing(ColonyId id) const {
    const auto* colony = find(id);
    if (!colony || !colony->answered || !day || !awaited.contains(id) || followedOf(id)) return false;
    return answer::mayLead(colony->answered->question.winter, *day);
}

// ---- what is chosen --------------------------------------------------------------------------------------------------

void YardState::forgetBook() { *this = YardState{.day = day, .moving = moving}; }

YardChanges YardState::showDay(Date other) {
    if (day == other) return {};
    day = other;
    YardChanges changes;
    for (const auto& each : std::exchange(followed, {})) changes.emplace_back(YardChange::Followed, each.first);
    if (past && past->asOf && !inSameWinter(*past->asOf, other)) {
        past.reset();
        changes.emplace_back(YardChange::Past, ColonyId{});
    }
    return changes;
}

void YardState::look(ColonyId id) {
    open = id;
    history.reset();
}

// ---- what comes from outside -----------------------------------------------------------------------------------------

YardChanges YardState::take(YardReading reading) {
    day = reading.day;
    std::vector<ColonyEntry> next;
    std::vector<ColonyId> changed, anew;
    bool visitsOther = false;
    for (auto& [id, record] : reading.colonies) {
        auto* known = entry(id);
        if (!known && !reading.whole) continue;
        ColonyEntry made =
            known ? std::move(*known) : ColonyEntry{.id = id, .record = {.asOf = reading.day}, .answered = nullptr};
        const bool other = put(made, std::move(record));
        visitsOther = std::exchange(made.visits, std::move(reading.visits[id])) != made.visits || visitsOther;
        if (other || !known) changed.push_back(id);
        anew.push_back(id);
        if (reading.whole) next.push_back(std::move(made));
        else *known = std::move(made);
    }
    YardChanges changes;
    if (reading.whole) {
        colonies = std::move(next);
        yards = std::move(reading.yards);
        shown = reading.shown;
        changes.emplace_back(YardChange::Colonies, ColonyId{});
    }
    for (const auto id : changed) changes.emplace_back(YardChange::Record, id);
    if (visitsOther) changes.emplace_back(YardChange::Visits, ColonyId{});
    if (reading.open && reading.open->colony.id == open) {
        history = std::move(reading.open);
        changes.emplace_back(YardChange::History, open);
    }
    for (const auto id : anew) changes.emplace_back(YardChange::Read, id);
    return changes;
}

YardChanges YardState::showHistory(book::ColonyHistory after, const ReferenceData& reference) {
    auto* colony = entry(after.colony.id);
    if (!colony || !historyOf(colony->id)) return {};
    history = std::move(after);
    const auto* learned = past ? &past->learned : nullptr;
    if (!put(*colony, answer::learnedCase(*history, yards, reference, colony->record.asOf, learned))) return {};
    return {{YardChange::Record, colony->id}};
}

YardChanges YardState::takeAnswer(ColonyId id, const AnsweredPointer& answered) {
    auto* colony = entry(id);
    if (!colony || !answered || !(answered->record == colony->record)) return {};
    colony->answered = answered;
    colony->problems.clear();
    colony->pending = false;
    return {{YardChange::Answer, id}};
}

YardChanges YardState::takeProblems(ColonyId id, const book::ColonyCase& record, Problems problems) {
    auto* colony = entry(id);
    if (!colony || !(record == colony->record)) return {};
    colony->problems = std::move(problems);
    colony->pending = false;
    return {{YardChange::Answer, id}};
}

YardChanges YardState::takeFollowed(ColonyId id, const FollowedPointer& winter) {
    if (!find(id) || !winter || winter->reading.asOf != day) return {};
    followed[id] = winter;
    return {{YardChange::Followed, id}};
}

YardChanges YardState::forgetFollowed(ColonyId id) {
    if (followed.erase(id) == 0) return {};
    return {{YardChange::Followed, id}};
}

YardChanges YardState::followedTold(ColonyId id) {
    if (awaited.erase(id) == 0) return {};
    return {{YardChange::Followed, id}};
}

YardChanges YardState::takePast(const PastPointer& learned) {
    past = learned;
    pastFailed = false;
    return {{YardChange::Past, ColonyId{}}};
}

YardChanges YardState::moveCombs(advice::MovingCombs combs) {
    if (std::exchange(moving, combs) == combs) return {};
    return {{YardChange::Moving, ColonyId{}}};
}

YardChanges YardState::awaitPlan(bool wanted) {
    if (std::exchange(planAwaited, wanted) == wanted) return {};
    return {{YardChange::Plan, ColonyId{}}};
}

YardChanges YardState::takePastFailure() {
    pastFailed = true;
    return {{YardChange::Past, ColonyId{}}};
}

} // namespace winterlarder::desk
