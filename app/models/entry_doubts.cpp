// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/entry_doubts.h"

#include <type_traits>

namespace winterlarder::desk {

namespace {

//! Calls `visit` with every entry the edit adds or changes that is judged.
template <class Visit> void eachEntry(book::SingleEdit& edit, Visit visit) {
    std::visit(
        [&](auto& verb) {
            if constexpr (requires { verb.entry; })
                if constexpr (answer::isJudged<std::remove_cvref_t<decltype(verb.entry)>>) visit(verb.entry);
            if constexpr (std::is_same_v<std::remove_cvref_t<decltype(verb)>, book::UniteColonies>) {
                book::Fate united{.colony = verb.from, .date = verb.on, .fate = book::FateKind::United};
                visit(united);
            }
        },
        static_cast<book::AnyVerb&>(edit));
}

template <class Visit> void eachEntry(book::Edit& edit, Visit visit) {
    if (auto* single = std::get_if<book::SingleEdit>(&edit)) eachEntry(*single, visit);
    if (auto* several = std::get_if<book::EditGroup>(&edit))
        for (auto& each : several->edits) eachEntry(each, visit);
}

} // namespace

std::optional<answer::Surroundings> surroundingsIn(const Yard& yard, ColonyId id) {
    const auto* records = yard.records(id);
    if (!records) return std::nullopt;
    const auto* shown = yard.shownYard();
    return answer::surroundingsOf(*records, shown ? shown->site : book::SiteRecord{});
}

std::optional<stores::Doubt> doubtOfEdit(const book::Edit& edit, const Yard& yard) {
    auto read = edit;
    std::optional<stores::Doubt> doubt;
    eachEntry(read, [&](const auto& entry) {
        const auto id = answer::colonyOf(entry);
        const auto known = id == ColonyId{} ? answer::Surroundings{} : surroundingsIn(yard, id);
        if (!known || doubt) return;
        doubt = answer::doubtOf(entry, *known, yard.book()->today(), *yard.book()->reference());
    });
    return doubt;
}

book::Edit withSure(book::Edit edit, bool sure) {
    eachEntry(edit, [&](auto& entry) {
        if (bool* is = answer::sureIn(entry)) *is = sure;
    });
    return edit;
}

} // namespace winterlarder::desk
