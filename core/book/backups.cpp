// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/backups.h"

#include "book/file/file_problems.h"
#include "book/file/guard.h"
#include "book/file/lock.h"
#include "book/file/temporary_file.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <algorithm>
#include <charconv>
#include <fmt/format.h>
#include <sstream>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;
constexpr std::size_t nameLength = 20; // 2026-11-25T09-27-36Z

std::string nameOf(Timestamp at) {
    auto name = at.iso();
    std::replace(name.begin(), name.end(), ':', '-');
    return name;
}

std::optional<Timestamp> timeOf(std::string name) {
    if (name.size() < nameLength) return std::nullopt;
    name.resize(nameLength);
    name[13] = name[16] = ':';
    return Timestamp::parse(name);
}

//! Backups of the same second are numbered on, so that the newest is never taken for the oldest.
files::path freeName(const files::path& book, Timestamp now) {
    const auto folder = backupFolderOf(book);
    const auto backups = backupsOf(book);
    const auto newest =
        std::find_if(backups.begin(), backups.end(), [&](const Backup& backup) { return backup.at == now; });
    if (newest == backups.end()) return folder / (nameOf(now) + ".larder");
    const auto suffix = newest->file.stem().string().substr(nameLength);
    int number = 1;
    if (!suffix.empty()) std::from_chars(suffix.data() + 1, suffix.data() + suffix.size(), number);
    auto name = folder / fmt::format("{}-{}.larder", nameOf(now), ++number);
    while (files::exists(name)) name = folder / fmt::format("{}-{}.larder", nameOf(now), ++number);
    return name;
}

Problem failed(const files::path& file, const std::string& why) {
    return {
        ProblemKind::File, {file.string(), 0, 0}, "no backup could be made: " + why, "make room, or check the folder"};
}

void copyInto(SQLite::Database& book, const files::path& file) {
    SQLite::Database copy(file.string(), SQLite::OPEN_READWRITE);
    SQLite::Backup backup(copy, book);
    backup.executeStep(-1);
}

std::vector<std::string> faultsOfFile(const files::path& file) {
    SQLite::Database copy(file.string(), SQLite::OPEN_READONLY);
    guard(copy, Connection::Reads);
    return integrityFaults(copy);
}

void prune(const files::path& book, const files::path& made, Timestamp now) {
    auto others = backupsOf(book);
    std::erase_if(others, [&](const Backup& backup) { return backup.file == made; });
    std::stable_partition(others.begin(), others.end(), [&](const Backup& backup) { return !isAhead(backup.at, now); });
    for (std::size_t at = backupsKept - 1; at < others.size(); ++at) {
        std::error_code ignored; // one too many is no harm
        files::remove(others[at].file, ignored);
    }
}

} // namespace

files::path backupFolderOf(const files::path& book) { return fileBehind(book).string() + "-backups"; }

bool isAhead(Timestamp at, Timestamp now) { return at.seconds - now.seconds > 86400; }

std::vector<Backup> backupsOf(const files::path& book) {
    std::vector<Backup> backups;
    std::error_code none;
    for (const auto& file : files::directory_iterator(backupFolderOf(book), none)) {
        const auto at = timeOf(file.path().filename().string());
        std::error_code unknown;
        if (at && file.path().extension() == ".larder" && file.is_regular_file(unknown))
            backups.push_back({file.path(), *at, file.file_size(unknown)});
    }
    std::sort(backups.begin(), backups.end(), [](const Backup& one, const Backup& other) {
        if (one.at != other.at) return one.at > other.at;
        const auto name = one.file.filename().string(), second = other.file.filename().string();
        return name.size() != second.size() ? name.size() > second.size() : name > second;
    });
    return backups;
}

Outcome<Backup> makeBackup(SQLite::Database& book, const files::path& file, Timestamp now) {
    const auto folder = backupFolderOf(file);
    try {
        files::create_directories(folder);
        files::remove(folder / "unfinished");
        TemporaryFile unfinished(folder / "unfinished");
        copyInto(book, unfinished.path());
        if (const auto faults = faultsOfFile(unfinished.path()); !faults.empty())
            return failed(file, "the copy is not sound (" + faults.front() + ")");
        const auto name = freeName(file, now);
        if (!unfinished.giveName(name)) return failed(file, "there is a file " + name.string());
        prune(file, name, now);
        return Backup{name, now, files::file_size(name)};
    } catch (const std::exception& error) {
        return failed(file, problemOf(error, file).detail);
    }
}

std::vector<std::string> integrityFaults(SQLite::Database& database) {
    SQLite::Statement check(database, "PRAGMA integrity_check(20)");
    std::vector<std::string> faults;
    while (check.executeStep()) {
        std::istringstream lines(check.getColumn(0).getString());
        for (std::string line; std::getline(lines, line);)
            if (line != "ok" && !line.starts_with("***")) faults.push_back(line);
    }
    return faults;
}

} // namespace winterlarder::book
