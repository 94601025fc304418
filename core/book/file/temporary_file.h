// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

namespace winterlarder::book {

//! A new, empty file to be filled and then given its name, under a name nobody had: the wanted one, or "WANTED-2", "WANTED-3" where a
//! file of that name (or a journal beside it) is there. No file that was there is ever removed or written over. Goes with its owner
//! unless it was given a name. Throws std::system_error where it cannot be made. Tested: tests/book/temporary_file_test.cpp.
class TemporaryFile {
public:
    explicit TemporaryFile(const std::filesystem::path& wanted);
    ~TemporaryFile();
    TemporaryFile(const TemporaryFile&) = delete;
    TemporaryFile& operator=(const TemporaryFile&) = delete;

    const std::filesystem::path& path() const { return path_; }
    //! Moves it there, in one step and for good (the folder is synced); false where something of that name is there, which stays.
    bool giveName(const std::filesystem::path& name);

private:
    std::filesystem::path path_;
};

//! Makes a rename or a new file in the folder last (fsync); false where the system cannot.
bool syncFolder(const std::filesystem::path& folder);

} // namespace winterlarder::book
