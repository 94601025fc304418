// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/book_inside.h"

#include "book/migrations.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <fmt/format.h>
#include <sqlite3.h>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;

Problem fileProblem(const files::path& file, std::string what, std::string remedy) {
    return {ProblemKind::File, {file.string(), 0, 0}, std::move(what), std::move(remedy)};
}

Problem constraintProblem(const std::string& message, const files::path& file) {
    const std::string check = "CHECK constraint failed: ";
    if (message.starts_with(check)) {
        const auto name = message.substr(check.size());
        for (const auto& rule : combinationRules())
            if (rule.name == name) return {ProblemKind::Input, {}, rule.sentence, rule.remedy};
        return {ProblemKind::Input, {}, name + " is outside what may be entered", "see the field's limits"};
    }
    if (message.starts_with("FOREIGN KEY"))
        return {ProblemKind::Input, {}, "an entry refers to one that is not in the book", "enter the other one first"};
    return fileProblem(file, "the change breaks a rule of the file: " + message, "nothing was changed");
}

//! The opposite of a name clash: makes the tables of a new book in one transaction.
void makeTables(Store& store, const Limits& limits, const Opener& opener) {
    SQLite::Transaction all(store.database(), SQLite::TransactionBehavior::IMMEDIATE);
    store.run(fmt::format("PRAGMA application_id = {}; PRAGMA user_version = {}", applicationId, schemaVersion));
    for (const auto& part : schemaOf(limits)) store.run(part.sql);
    SQLite::Statement made(store.database(), "INSERT INTO book_made (one, at, who) VALUES (1, ?, ?)");
    made.bind(1, opener.now.iso());
    made.bind(2, opener.who);
    made.exec();
    all.commit();
}

std::vector<SchemaPart> withoutTables(std::vector<SchemaPart> parts) {
    std::erase_if(parts, [](const SchemaPart& part) { return part.type == "table" || part.type == "index"; });
    return parts;
}

void bringUpToDate(Store& store, int version, const std::vector<SchemaPart>& ours, const files::path& file, Timestamp now,
                   std::vector<std::string>& notices) {
    const auto backup = makeBackup(store.database(), file, now);
    if (!backup) throw std::runtime_error(backup.problems().front().detail);
    migrate(store, version, migrations(), ours);
    notices.push_back(fmt::format("the book was brought up to date; what it was before is {}", backup->file.string()));
}

} // namespace

Problem problemOf(const std::exception& error, const files::path& file) {
    const auto* failure = dynamic_cast<const SQLite::Exception*>(&error);
    if (!failure) return fileProblem(file, error.what(), "nothing was changed");
    const std::string unchanged = "nothing was changed; ";
    switch (failure->getErrorCode()) {
    case SQLITE_CONSTRAINT: return constraintProblem(failure->what(), file);
    case SQLITE_FULL: return fileProblem(file, "the disk is full", unchanged + "make room and do it again");
    case SQLITE_IOERR: return fileProblem(file, "the disk does not read or write as it should", unchanged + "check the disk and do it again");
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return fileProblem(file, "another program is using the book", unchanged + "do it again in a moment");
    case SQLITE_CORRUPT: return fileProblem(file, "the book is damaged", "salvage what is readable into a new book, or restore a backup");
    case SQLITE_NOTADB: return fileProblem(file, "this is not a book", "choose a .larder file");
    case SQLITE_READONLY: return fileProblem(file, "the book cannot be written here", unchanged + "copy it to where it can");
    case SQLITE_CANTOPEN: return fileProblem(file, "the book or its journal cannot be opened", "check the folder and its permissions");
    case SQLITE_INTERRUPT: return fileProblem(file, "the book is damaged: reading it does not end", "salvage what is readable into a new book");
    case SQLITE_TOOBIG: return {ProblemKind::Input, {}, "a text is too long", "shorten it"};
    default: return fileProblem(file, fmt::format("the book cannot be used: {}", failure->what()), "nothing was changed");
    }
}

Outcome<std::unique_ptr<Store>> openChecked(const files::path& file, OpenMode mode, const Limits& limits, Timestamp now,
                                            Access& access, std::vector<std::string>& notices) {
    std::error_code unknown;
    if (!files::exists(file, unknown)) return fileProblem(file, "there is no such book", "check the name, or make a new book");
    if (!files::is_regular_file(file, unknown)) return fileProblem(file, "this is not a file", "choose a .larder file");
    try {
        auto store = std::make_unique<Store>(file, mode);
        if (store->number("PRAGMA application_id") != applicationId)
            return fileProblem(file, "this is not a book", "choose a .larder file");
        const auto version = store->number("PRAGMA user_version");
        const auto ours = schemaOf(limits);
        const auto found = store->schema();
        const bool newer = version > schemaVersion, older = version < schemaVersion;
        if (version < 1) return fileProblem(file, "the book has no version", "salvage what is readable into a new book");
        auto comparison = compareSchema(newer || older ? withoutTables(found) : found, newer || older ? std::vector<SchemaPart>{} : ours);
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
                notices.emplace_back("some entries are outside what may be entered today; the book keeps its older limits");
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
    std::error_code unknown;
    if (files::exists(file, unknown)) return fileProblem(file, "there is a file of that name", "choose another name");
    const files::path unfinished = file.string() + ".new";
    try {
        files::remove(unfinished);
        {
            const Limits limits(reference.fields);
            Store store(unfinished, OpenMode::Create);
            makeTables(store, limits, opening.opener);
        }
        files::create_hard_link(unfinished, file, unknown); // unlike a rename this never replaces a file
        if (unknown && files::exists(file)) throw std::runtime_error("there is a file of that name");
        if (unknown) files::rename(unfinished, file);
        else files::remove(unfinished);
        syncFolder(file.parent_path());
    } catch (const ContractViolation&) {
        throw;
    } catch (const std::exception& error) {
        files::remove(unfinished, unknown);
        return problemOf(error, file);
    }
    return open(file, reference, opening);
}

Outcome<Book> Book::open(const files::path& file, const ReferenceData& reference, const Opening& opening) {
    auto inside = std::make_unique<BookInside>(files::absolute(file), reference);
    if (opening.readOnly) inside->access = Access::AskedReadOnly;
    std::error_code unknown;
    if (!opening.readOnly && files::is_regular_file(file, unknown)) {
        auto attempt = BookLock::take(inside->file, opening.opener, opening.takeOver);
        if (attempt.lock) inside->lock = std::move(attempt.lock);
        else inside->access = attempt.failure == BookLock::Failure::Held ? Access::OpenElsewhere : Access::MediumReadOnly;
        inside->holder = attempt.holder;
    }
    const auto mode = inside->lock ? OpenMode::Write : OpenMode::Read;
    auto store = openChecked(inside->file, mode, inside->limits, opening.opener.now, inside->access, inside->notices);
    if (!store) return store.problems();
    inside->store = std::move(store).value();
    if (inside->access == Access::Writable && inside->store->readOnly()) inside->access = Access::MediumReadOnly;
    if (inside->access != Access::Writable) inside->lock.reset();
    if (const auto backups = backupsOf(inside->file); !backups.empty()) inside->lastBackup = backups.front().at.date();
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
    case Access::OpenElsewhere: break;
    }
    const auto& by = holder();
    return fmt::format("The book is open elsewhere: by {}{}{}.", by.who.empty() ? "somebody" : by.who,
                       by.machine.empty() ? "" : " on " + by.machine, by.since ? " since " + by.since->iso() : "");
}

} // namespace winterlarder::book
