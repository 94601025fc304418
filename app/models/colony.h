// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "advice/advice.h"
#include "book/entries/ids.h"
#include "book/entries/records.h"
#include "series/winter_series.h"
#include "support/outcome.h"

#include <QMetaType>

#include <memory>
#include <optional>
#include <vector>

namespace winterlarder::desk {

//! Names a colony by its number in the book; edits, models and requests hold it, never pointers. Number 0: none.
using ColonyId = book::ColonyId;

//! A colony's records with everything computed from them: one immutable whole, made in the background and swapped in.
struct AnsweredColony {
    book::ColonyCase record; //!< exactly what was asked; an answer whose record is no longer the colony's is stale
    advice::ColonyQuestion question;
    advice::Answer answer;
    std::optional<std::vector<stores::CombStores>> combs; //!< in the order of the record's combs
    WinterPicture picture;                                //!< empty where no answer could be given
    std::shared_ptr<const AnsweredColony> alone; //!< as weighed alone, where the yard's other colonies changed it
    stores::CombSpreads spreads{};               //!< how far the honey of its combs may be off
    //! of an answer that let them go: there while anybody keeps them
    std::weak_ptr<const winter::DemandEnsemble> winters{};
};
using AnsweredPointer = std::shared_ptr<const AnsweredColony>;

//! The winters an answer was computed from; nothing where there are none or they were let go.
inline std::shared_ptr<const winter::DemandEnsemble> wintersOf(const AnsweredColony& colony) {
    const auto& own = colony.answer.workings.ensemble;
    return own ? own : colony.winters.lock();
}

} // namespace winterlarder::desk

Q_DECLARE_METATYPE(winterlarder::desk::ColonyId)
