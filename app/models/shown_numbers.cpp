// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/shown_numbers.h"

namespace winterlarder::desk {

void ShownNumbers::note(const Issued& issued, const std::vector<book::Touched>& touched) {
    auto next = issued.begin();
    for (const auto& entry : touched) {
        if (entry.how != book::ChangeHow::Add || next == issued.end() || next->first != entry.kind) continue;
        given_[*next++] = entry.id;
    }
}

template <class Entry> void ShownNumbers::turn(book::Id<Entry>& id) const {
    const auto given = given_.find({book::kindOf<Entry>, id.number});
    if (given != given_.end()) id.number = given->second;
}

template <class Entry> void ShownNumbers::turnIn(book::AnyVerb& verb) const {
    if (auto* change = std::get_if<book::Change<Entry>>(&verb)) turn(change->entry.id);
    if (auto* removal = std::get_if<book::Remove<Entry>>(&verb)) turn(removal->id);
}

void ShownNumbers::turnIn(book::SingleEdit& edit) const {
    turnIn<book::Look>(edit);
    turnIn<book::Weighing>(edit);
    if (auto* comb = std::get_if<book::ChangeComb>(&static_cast<book::AnyVerb&>(edit))) turn(comb->look);
}

book::Edit ShownNumbers::asInBook(book::Edit edit) const {
    if (auto* single = std::get_if<book::SingleEdit>(&edit)) turnIn(*single);
    if (auto* several = std::get_if<book::EditGroup>(&edit))
        for (auto& each : several->edits) turnIn(each);
    return edit;
}

} // namespace winterlarder::desk
