// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/interrupted.h"

#include "book/file/file_problems.h"
#include "book/file/store.h"

#include <fmt/format.h>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;

//! Opens the book and reads a little: the first read meets a change that was interrupted.
std::optional<Problem> problemAtReading(const files::path& book, OpenMode mode) {
    try {
        Store(book, mode).number("PRAGMA user_version");
    } catch (const std::exception& error) {
        if (saysInterrupted(error)) return problemOf(error, book);
    }
    return std::nullopt;
}

Problem cannotTakeBack(const files::path& book, const std::string& why, const std::string& remedy) {
    return fileProblem(
        book, "the last change was interrupted and has to be taken back before the book can be read, but " + why,
        fmt::format("{}; a copy without {}-journal beside it is damaged", remedy, book.filename().string()));
}

Problem reasonOf(const files::path& book, const BookLock::Attempt& attempt) {
    switch (*attempt.failure) {
    case BookLock::Failure::Held:
        return cannotTakeBack(book, fmt::format("it is open elsewhere: {}", saidOf(attempt.holder)), "close it there");
    case BookLock::Failure::DiskFull: return cannotTakeBack(book, "the disk is full", "make room and open it again");
    case BookLock::Failure::CannotWrite: break;
    }
    return cannotTakeBack(book, "nothing can be written here", "open it where its file and folder can be written");
}

} // namespace

std::optional<Problem> takeBackInterrupted(const files::path& book, const Opener& opener) {
    std::error_code unknown;
    if (!files::exists(book.string() + "-journal", unknown) || !problemAtReading(book, OpenMode::Read))
        return std::nullopt;
    const auto attempt = BookLock::take(book, opener, BookLock::OtherSign::Holds);
    if (!attempt.lock) return reasonOf(book, attempt);
    if (!problemAtReading(book, OpenMode::Write)) return std::nullopt;
    return cannotTakeBack(book, "its file cannot be written here", "open it where its file and folder can be written");
}

} // namespace winterlarder::book
