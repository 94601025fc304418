// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/entries/ids.h"
#include "book/entries/timestamp.h"
#include "book/form/edits.h"
#include "support/outcome.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace winterlarder::book {

class Store;

//! Done; taken back and can be done again; taken back for good because something else was done instead. Nothing is ever deleted
//! from the history.
enum class StepState { Done, Undone, Abandoned };
enum class ChangeHow { Add, Change, Remove };

//! What a step did to one entry.
struct StepChange {
    Kind kind{};
    std::int64_t entry = 0;
    ChangeHow how{};
    //! Values by name (book/canonical.h), nothing = not there: of a change only what differs; of a removal all of `before`; of
    //! an addition `after`, but only once it was taken back (till then the entry itself says it).
    std::map<std::string, std::optional<std::string>> before, after;
};

//! One step of the book's story: what undo takes back at once.
struct Step {
    StepId id{};
    Timestamp at;
    std::string who;
    std::string verb; //!< see verbOf
    StepState state = StepState::Done;
    std::optional<Timestamp> turnedAt{}; //!< when it was last undone or redone
    std::string turnedBy{};
    std::vector<StepChange> changes{};
};

//! Consecutive edits of the same field (or the same few) of the same entry by the same person merge into one step while no more than
//! this passes between them: typing a number, dragging a boundary.
inline constexpr std::int64_t mergeSeconds = 600;

//! One entry as an edit left it; what the steps of the history are made from.
struct EntryChange {
    Kind kind{};
    std::int64_t id = 0;
    std::optional<Row> before, after;
};

// The rest is the inside of book/book.h. Tested: tests/book/book_test.cpp.

struct Signature {
    Timestamp now;
    std::string who;
};

//! Writes the step down, or merges it into the last; the step it is now part of, or nothing where merging left nothing changed.
std::optional<StepId> record(Store& store, const Signature& signature, const std::string& verb,
                             const std::vector<EntryChange>& changes);

//! The step undo or redo would turn; nothing = there is none.
std::optional<StepId> nextToUndo(Store& store);
std::optional<StepId> nextToRedo(Store& store);

enum class Turned { Back, Forth };
//! What the entries become when the step is turned. Keeps what an undone addition said. Problem: damaged history.
Outcome<std::vector<Target>> turn(Store& store, StepId step, Turned turned, const Signature& signature);

//! The newest `count` steps before `before` (or of all), newest first.
Outcome<std::vector<Step>> steps(Store& store, std::optional<StepId> before, int count);
std::optional<Step> step(Store& store, StepId id);

} // namespace winterlarder::book
