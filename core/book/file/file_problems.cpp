// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/file_problems.h"

#include "book/form/limits.h"

#include <SQLiteCpp/Exception.h>
#include <cerrno>
#include <fmt/format.h>
#include <sqlite3.h>
#include <system_error>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;

constexpr const char* makeRoom = "nothing was changed; make room and do it again";

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

Problem readOnlyProblem(int extendedCode, const files::path& file) {
    switch (extendedCode) {
    case SQLITE_READONLY_ROLLBACK:
        return fileProblem(
            file, "the last change was interrupted and has to be taken back before the book can be read",
            fmt::format(
                "open the book again where it can be written; keep {}-journal beside it, a copy without it is damaged",
                file.filename().string()));
    case SQLITE_READONLY_DBMOVED:
        return fileProblem(file, "the file was moved, removed or replaced by another while the book was open",
                           "nothing was changed; open the book again and see what it holds");
    default:
        return fileProblem(file, "the book cannot be written here", "nothing was changed; copy it to where it can");
    }
}

Problem otherProblem(const std::exception& error, const files::path& file) {
    const auto* failure = dynamic_cast<const std::system_error*>(&error);
    if (failure && isDiskFull(failure->code().value())) return fileProblem(file, "the disk is full", makeRoom);
    return fileProblem(file, error.what(), "nothing was changed");
}

} // namespace

Problem fileProblem(const files::path& file, std::string what, std::string remedy) {
    return {ProblemKind::File, {file.string(), 0, 0}, std::move(what), std::move(remedy)};
}

bool isDiskFull(int systemError) { return systemError == ENOSPC || systemError == EDQUOT; }

bool saysInterrupted(const std::exception& error) {
    const auto* failure = dynamic_cast<const SQLite::Exception*>(&error);
    return failure && failure->getExtendedErrorCode() == SQLITE_READONLY_ROLLBACK;
}

Problem problemOf(const std::exception& error, const files::path& file, int systemError) {
    const auto* failure = dynamic_cast<const SQLite::Exception*>(&error);
    if (!failure) return otherProblem(error, file);
    const std::string unchanged = "nothing was changed; ";
    const int code = failure->getErrorCode();
    if (code == SQLITE_FULL || ((code == SQLITE_IOERR || code == SQLITE_CANTOPEN) && isDiskFull(systemError)))
        return fileProblem(file, "the disk is full", makeRoom);
    switch (code) {
    case SQLITE_CONSTRAINT: return constraintProblem(failure->what(), file);
    case SQLITE_IOERR:
        return fileProblem(file, "the disk does not read or write as it should",
                           unchanged + "check the disk and do it again");
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return fileProblem(file, "another program is using the book", unchanged + "do it again in a moment");
    case SQLITE_CORRUPT:
        return fileProblem(file, "the book is damaged",
                           "salvage what is readable into a new book, or restore a backup");
    case SQLITE_NOTADB: return fileProblem(file, "this is not a book", "choose a .larder file");
    case SQLITE_READONLY: return readOnlyProblem(failure->getExtendedErrorCode(), file);
    case SQLITE_CANTOPEN:
        return fileProblem(file, "the book or its journal cannot be opened", "check the folder and its permissions");
    case SQLITE_INTERRUPT:
        return fileProblem(file, "the book is damaged: reading it does not end",
                           "salvage what is readable into a new book");
    case SQLITE_TOOBIG: return {ProblemKind::Input, {}, "a text is too long", "shorten it"};
    default:
        return fileProblem(file, fmt::format("the book cannot be used: {}", failure->what()), "nothing was changed");
    }
}

} // namespace winterlarder::book
