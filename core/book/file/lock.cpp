// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/lock.h"

#include "book/entries/plain_text.h"
#include "book/file/file_problems.h"

#include <array>
#include <cerrno>
#include <fcntl.h>
#include <fmt/format.h>
#include <sstream>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace winterlarder::book {
namespace {

std::string oneLine(const std::string& text) {
    auto line = visible(text).substr(0, 200);
    while (!isText(line)) line.pop_back(); // no half a character
    return line;
}

std::string textOf(int descriptor) {
    std::array<char, 1024> buffer{};
    const auto count = ::pread(descriptor, buffer.data(), buffer.size(), 0);
    return {buffer.data(), count > 0 ? static_cast<std::size_t>(count) : 0};
}

LockHolder holderOf(const std::string& text) {
    LockHolder holder;
    std::istringstream lines(text);
    std::string since;
    std::getline(lines, holder.who);
    std::getline(lines, holder.machine);
    std::getline(lines, since);
    holder.who = oneLine(holder.who);
    holder.machine = oneLine(holder.machine);
    holder.since = Timestamp::parse(since);
    return holder;
}

//! Between opening and locking somebody may have removed the file; a lock on that is none.
bool isStillThere(const std::filesystem::path& file, int descriptor) {
    struct stat opened {
    }, named{};
    return ::fstat(descriptor, &opened) == 0 && ::stat(file.c_str(), &named) == 0 && opened.st_ino == named.st_ino &&
           opened.st_dev == named.st_dev;
}

bool sign(int descriptor, const Opener& opener) {
    const auto text = fmt::format("{}\n{}\n{}\n", oneLine(opener.who), oneLine(opener.machine), opener.now.iso());
    return ::ftruncate(descriptor, 0) == 0 &&
           ::pwrite(descriptor, text.data(), text.size(), 0) == static_cast<ssize_t>(text.size());
}

BookLock::Failure failureOf(int systemError) {
    return isDiskFull(systemError) ? BookLock::Failure::DiskFull : BookLock::Failure::CannotWrite;
}

} // namespace

std::string saidOf(const LockHolder& holder) {
    return fmt::format("by {}{}{}", holder.who.empty() ? "somebody" : holder.who,
                       holder.machine.empty() ? "" : " on " + holder.machine,
                       holder.since ? " since " + holder.since->iso() : "");
}

std::filesystem::path fileBehind(const std::filesystem::path& book) {
    std::error_code unknown;
    auto file = std::filesystem::weakly_canonical(std::filesystem::absolute(book), unknown);
    return unknown ? std::filesystem::absolute(book) : file;
}

bool hasManyNames(const std::filesystem::path& book) {
    std::error_code unknown;
    const auto names = std::filesystem::hard_link_count(book, unknown);
    return !unknown && names > 1;
}

std::filesystem::path lockFileOf(const std::filesystem::path& book) { return fileBehind(book).string() + ".lock"; }

BookLock::Attempt BookLock::take(const std::filesystem::path& book, const Opener& opener, OtherSign other) {
    const auto file = lockFileOf(book);
    for (int attempt = 0; attempt < 100; ++attempt) {
        const int descriptor = ::open(file.c_str(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0644);
        if (descriptor < 0) return {std::nullopt, failureOf(errno), {}};
        BookLock lock(file, descriptor);
        if (::flock(descriptor, LOCK_EX | LOCK_NB) != 0) {
            const auto holder = holderOf(textOf(descriptor));
            ::close(std::exchange(lock.descriptor_, -1));
            return {std::nullopt, Failure::Held, holder};
        }
        if (!isStillThere(file, descriptor)) {
            ::close(std::exchange(lock.descriptor_, -1));
            continue;
        }
        const auto left = holderOf(textOf(descriptor));
        if (!left.machine.empty() && left.machine != oneLine(opener.machine) && other == OtherSign::Holds) {
            ::close(std::exchange(lock.descriptor_, -1)); // the other machine's sign stays
            return {std::nullopt, Failure::Held, left};
        }
        if (!sign(descriptor, opener)) return {std::nullopt, failureOf(errno), {}};
        return {std::move(lock), std::nullopt, {}};
    }
    return {std::nullopt, Failure::CannotWrite, {}};
}

BookLock::BookLock(BookLock&& other) noexcept
    : file_(std::move(other.file_)), descriptor_(std::exchange(other.descriptor_, -1)) {}

BookLock& BookLock::operator=(BookLock&& other) noexcept {
    std::swap(file_, other.file_);
    std::swap(descriptor_, other.descriptor_);
    return *this;
}

BookLock::~BookLock() {
    if (descriptor_ < 0) return;
    ::unlink(file_.c_str());
    ::close(descriptor_);
}

} // namespace winterlarder::book
