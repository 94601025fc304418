// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/book.h"
#include "book/file/file_problems.h"
#include "book/file/store.h"
#include "book/form/limits.h"
#include "support/require.h"

#include <exception>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

//! The inside of book/book.h, shared by its .cpp files and nothing else.
namespace winterlarder::book {

struct BookInside {
    BookInside(std::filesystem::path path, const ReferenceData& data)
        : file(std::move(path)), reference(&data), limits(data.fields) {}

    std::filesystem::path file;
    const ReferenceData* reference;
    Limits limits;
    std::optional<BookLock> lock; //!< outlives the store: the sign goes last
    std::unique_ptr<Store> store;
    Access access = Access::Writable;
    LockHolder holder;
    std::vector<std::string> notices;
    std::optional<Date> lastBackup; //!< a day that is known to have its backup, or to need none
    bool inTogether = false;
};

//! Runs work on the store; what it throws becomes a problem, and no read is left open.
template <class Result> Outcome<Result> guarded(BookInside& inside, const std::function<Outcome<Result>()>& work) {
    inside.store->startCall();
    try {
        return work();
    } catch (const ContractViolation&) {
        throw;
    } catch (const std::exception& error) {
        inside.store->resetStatements();
        return problemOf(error, inside.file, inside.store->systemError());
    }
}

//! Opens a file and makes sure that it is a book: application id, version, schema. Sets access to NewerVersion for those of newer
//! releases. An older one is migrated: in the file when writing (a backup is made first), in memory when only reading.
Outcome<std::unique_ptr<Store>> openChecked(const std::filesystem::path& file, OpenMode mode, const Limits& limits,
                                            Timestamp now, Access& access, std::vector<std::string>& notices);

//! Carries targets out in one transaction and has them noted in the history.
using Targets = std::function<Outcome<std::vector<Target>>()>;
using Note = std::function<std::optional<StepId>(const std::vector<EntryChange>&)>;
Outcome<Applied> carryOut(BookInside& inside, Timestamp now, const Targets& targets, const Note& note);

//! The targets that make the entries of `present` those of `other`.
std::vector<Target> differences(Store& present, Store& other);

} // namespace winterlarder::book
