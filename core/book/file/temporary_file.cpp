// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/file/temporary_file.h"

#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <fmt/format.h>
#include <system_error>
#include <unistd.h>

namespace winterlarder::book {
namespace {

namespace files = std::filesystem;

bool isThere(const files::path& file) {
    std::error_code unknown;
    return files::exists(files::symlink_status(file, unknown));
}

files::path journalOf(const files::path& file) { return file.string() + "-journal"; }

//! Renames without replacing, also on file systems that cannot do so in one call.
bool renamedTo(const files::path& from, const files::path& to) {
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return true;
    if (errno == EEXIST) return false;
    if (errno != EINVAL && errno != ENOSYS) throw std::system_error(errno, std::generic_category(), to.string());
    if (::link(from.c_str(), to.c_str()) == 0) return files::remove(from);
    if (errno == EEXIST || isThere(to)) return false;
    files::rename(from, to);
    return true;
}

} // namespace

TemporaryFile::TemporaryFile(const files::path& wanted) : path_(wanted) {
    for (int number = 2;; ++number) {
        const int descriptor =
            isThere(journalOf(path_)) ? -1 : ::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644);
        if (descriptor >= 0) {
            ::close(descriptor);
            return;
        }
        const int error = errno;
        if (!isThere(path_) && !isThere(journalOf(path_)))
            throw std::system_error(error, std::generic_category(), path_.string());
        path_ = fmt::format("{}-{}", wanted.string(), number);
    }
}

TemporaryFile::~TemporaryFile() {
    if (path_.empty()) return;
    std::error_code ignored;
    files::remove(path_, ignored);
    files::remove(journalOf(path_), ignored);
}

bool TemporaryFile::giveName(const files::path& name) {
    if (!renamedTo(path_, name)) return false;
    path_.clear();
    syncFolder(name.parent_path());
    return true;
}

bool syncFolder(const files::path& folder) {
    const int descriptor = ::open(folder.empty() ? "." : folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) return false;
    const bool synced = ::fsync(descriptor) == 0;
    ::close(descriptor);
    return synced;
}

} // namespace winterlarder::book
