// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/book_inside.h"

#include "book/file/interrupted.h"
#include "book/file/migrations.h"
#include "book/file/temporary_file.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <fmt/format.h>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;

//! Makes the tables of a new book in one transaction.
void makeTables(Store& store, const Limits& limits, const Opener& opener) {
    SQLite::Transaction all(store.database(), SQLite::TransactionBehavior::IMMEDIATE);
    store.run(fmt::format("PRAGMA application_id = {}; PRAGMA user_version = {}", applicationId, schemaVersion));
    for (const auto& part : schemaOf(limits)) store.run(part.sql);
    SQLite::Statement made(store.database(),
                           "INSERT INTO book_made (one, at, who, mark) VALUES (1, ?, ?, lower(hex(randomblob(16))))");
    made.bind(1, opener.now.iso());
    made.bind(2, opener.who);
    made.exec();
    all.commit();
}

std::vector<SchemaPart> withoutTables(std::vector<SchemaPart> parts) {
    std::erase_if(parts, [](const SchemaPart& part) { return part.type == "table" || part.type == "index"; });
    return parts;
}

void bringUpToDate(Store& store, int version, const std::vector<SchemaPart>& ours, const files::path& file,
                   Timestamp now, std::vector<std::string>& notices) {
    const auto backup = makeBackup(store.database(), file, now);
    if (!backup) throw std::runtime_error(backup.problems().front().detail);
    migrate(store, version, migrations(), ours);
    notices.push_back(fmt::format("the book was brought up to date; what it was before is {}", backup->file.string()));
}

Access accessAfter(BookLock::Failure failure) {
    switch (failure) {
    case BookLock::Failure::Held: return Access::OpenElsewhere;
    case BookLock::Failure::DiskFull: return Access::DiskFull;
    case BookLock::Failure::CannotWrite: break;
    }
    return Access::MediumReadOnly;
}

//! Takes the lock for writing, or notes why the book can only be read.
void takeLock(BookInside& inside, const Opening& opening) {
    if (hasManyNames(inside.file)) {
        inside.access = Access::ManyNames;
        return;
    }
    auto attempt = BookLock::take(inside.file, opening.opener,
                                  opening.purpose == OpenFor::TakingOver ? BookLock::OtherSign::Stale
                                                                         : BookLock::OtherSign::Holds);
    if (attempt.lock) inside.lock = std::move(attempt.lock);
    else inside.access = accessAfter(*attempt.failure);
    inside.holder = attempt.holder;
}

} // namespace

Outcome<std::unique_ptr<Store>> openChecked(const files::path& file, OpenMode mode, const Limits& limits, Timestamp now,
                                            Access& access, std::vector<std::string>& notices) {
    std::error_code unknown;
    if (!files::exists(file, unknown))
        return fileProblem(file, "there is no such book", "check the name, or make a new book");
    if (!files::is_regular_file(file, unknown)) return fileProblem(file, "this is not a file", "choose a .larder file");
    try {
        auto store = std::make_unique<Store>(file, mode);
        if (store->number("PRAGMA application_id") != applicationId)
            return fileProblem(file, "this is not a book", "choose a .larder file");
        const auto version = store->number("PRAGMA user_version");
        const auto ours = schemaOf(limits);
        const auto found = store->schema();
        const bool newer = version > schemaVersion, older = version < schemaVersion;
        if (version < 1)
            return fileProblem(file, "the book has no version", "salvage what is readable into a new book");
        auto comparison = compareSchema(newer || older ? withoutTables(found) : found,
                                        newer || older ? std::vector<SchemaPart>{} : ours);
        if (!comparison.surprises.empty())
            return fileProblem(file, "this is not a book this program made: " + comparison.surprises.front(),
                               "do not use it; salvage takes over what is readable");
        if (newer) access = Access::NewerVersion;
        const bool writing = mode != OpenMode::Read && !store->readOnly();
        if (older && !writing) {
            store = Store::memoryCopyOf(*store);
            migrate(*store, static_cast<int>(version), migrations(), ours);
        } else if (older) {
            bringUpToDate(*store, static_cast<int>(version), ours, file, now, notices);
        } else if (!newer && !comparison.exactly && writing) {
            try {
                bringUpToDate(*store, static_cast<int>(version), ours, file, now, notices);
            } catch (const std::exception&) {
                notices.emplace_back(
                    "some entries are outside what may be entered today; the book keeps its older limits");
            }
        }
        store->closeSchema();
        return store;
    } catch (const ContractViolation&) {
        throw;
    } catch (const std::exception& error) {
        return problemOf(error, file);
    }
}

Outcome<Book> Book::create(const files::path& file, const ReferenceData& reference, const Opening& opening) {
    const auto taken = fileProblem(file, "there is a file of that name", "choose another name");
    std::error_code unknown;
    if (files::exists(file, unknown)) return taken;
    try {
        TemporaryFile unfinished(file.string() + ".new");
        {
            const Limits limits(reference.fields);
            Store store(unfinished.path(), OpenMode::Create);
            makeTables(store, limits, opening.opener);
        }
        if (!unfinished.giveName(file)) return taken;
    } catch (const ContractViolation&) {
        throw;
    } catch (const std::exception& error) {
        return problemOf(error, file);
    }
    return open(file, reference, opening);
}

Outcome<Book> Book::open(const files::path& file, const ReferenceData& reference, const Opening& opening) {
    auto inside = std::make_unique<BookInside>(fileBehind(file), reference);
    if (opening.purpose == OpenFor::Reading) inside->access = Access::AskedReadOnly;
    std::error_code unknown;
    if (opening.purpose != OpenFor::Reading && files::is_regular_file(inside->file, unknown))
        takeLock(*inside, opening);
    if (!inside->lock)
        if (auto problem = takeBackInterrupted(inside->file, opening.opener)) return *std::move(problem);
    const auto mode = inside->lock ? OpenMode::Write : OpenMode::Read;
    auto store = openChecked(inside->file, mode, inside->limits, opening.opener.now, inside->access, inside->notices);
    if (!store) return store.problems();
    inside->store = std::move(store).value();
    if (inside->access == Access::Writable && inside->store->readOnly()) inside->access = Access::MediumReadOnly;
    if (inside->access != Access::Writable) inside->lock.reset();
    return Book(std::move(inside));
}

Book::Book(std::unique_ptr<BookInside> inside) : inside_(std::move(inside)) {}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

const files::path& Book::file() const { return inside_->file; }
Access Book::access() const { return inside_->access; }
const LockHolder& Book::holder() const { return inside_->holder; }
const std::vector<std::string>& Book::notices() const { return inside_->notices; }
const ReferenceData& Book::reference() const { return *inside_->reference; }

std::string Book::whyReadOnly() const {
    switch (access()) {
    case Access::Writable: return {};
    case Access::AskedReadOnly: return "The book was opened for reading only.";
    case Access::MediumReadOnly: return "The book lies where nothing can be written.";
    case Access::NewerVersion: return "The book was made by a newer version of this program; this one only reads it.";
    case Access::DiskFull: return "The disk is full, so the book can only be read.";
    case Access::ManyNames:
        return "The book's file has a second name (a hard link), so it is only read: a change under one name could not be taken back under the "
               "other. Make a copy and write in that, or remove the other name.";
    case Access::OpenElsewhere: break;
    }
    return fmt::format("The book is open elsewhere: {}.", saidOf(holder()));
}

} // namespace winterlarder::book
