// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/entry_doubts.h"

#include <type_traits>

namespace winterlarder::desk {

namespace {

template <class Entry>
bool* sureIn(Entry& entry) {
    if constexpr (std::is_same_v<Entry, book::Weighing>) return &entry.weighing.sure;
    else if constexpr (std::is_same_v<Entry, book::Feed>) return &entry.feed.sure;
    else if constexpr (std::is_same_v<Entry, book::Harvest>) return &entry.harvest.sure;
    else if constexpr (requires { entry.sure; }) return &entry.sure;
    else return nullptr;
}

template <class Entry>
inline constexpr bool isJudged = std::is_same_v<Entry, book::Look> || std::is_same_v<Entry, book::Weighing> || std::is_same_v<Entry, book::Feed> ||
                                 std::is_same_v<Entry, book::Harvest> || std::is_same_v<Entry, book::Sighting> ||
                                 std::is_same_v<Entry, book::WinterOutcome>;

//! Calls `visit` with every entry the edit adds or changes that is judged.
template <class Visit>
void eachEntry(book::SingleEdit& edit, Visit visit) {
    std::visit([&](auto& verb) {
        if constexpr (requires { verb.entry; })
            if constexpr (isJudged<std::remove_cvref_t<decltype(verb.entry)>>) visit(verb.entry);
    }, static_cast<book::AnyVerb&>(edit));
}

template <class Visit>
void eachEntry(book::Edit& edit, Visit visit) {
    if (auto* single = std::get_if<book::SingleEdit>(&edit)) eachEntry(*single, visit);
    if (auto* several = std::get_if<book::Together>(&edit))
        for (auto& each : several->edits) eachEntry(each, visit);
}

} // namespace

std::optional<answer::Surroundings> surroundingsIn(const Yard& yard, ColonyId id) {
    const auto* records = yard.records(id);
    if (!records) return std::nullopt;
    const auto* shown = yard.shownYard();
    return answer::Surroundings{records->colony,    shown ? shown->site : book::SiteRecord{}, records->housings, records->looks,
                                records->weighings, records->feeds,                           records->harvests};
}

std::optional<stores::Doubt> doubtOfEdit(const book::Edit& edit, const Yard& yard) {
    auto read = edit;
    std::optional<stores::Doubt> doubt;
    eachEntry(read, [&](const auto& entry) {
        const auto* colony = yard.find(entry.colony);
        const auto known = surroundingsIn(yard, entry.colony);
        if (!colony || !known || doubt) return;
        doubt = answer::doubtOf(entry, *known, colony->record.asOf, *yard.book()->reference());
    });
    return doubt;
}

book::Edit withSure(book::Edit edit, bool sure) {
    eachEntry(edit, [&](auto& entry) { *sureIn(entry) = sure; });
    return edit;
}

} // namespace winterlarder::desk
