// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>

//! A damaged book as bytes, below SQLite: what salvage asks before it copies anything. Tested: tests/book/salvage_test.cpp.
namespace winterlarder::book {

//! A file opened for reading. Throws std::system_error where it cannot be read.
class RawFile {
public:
    explicit RawFile(const std::filesystem::path& file);
    ~RawFile();
    RawFile(const RawFile&) = delete;
    RawFile& operator=(const RawFile&) = delete;

    std::uint64_t size() const { return size_; }
    //! Up to `most` bytes from there; fewer at the end of the file.
    std::string bytes(std::uint64_t at, std::size_t most) const;
    //! Every stretch [begin, end) that holds data, holes of a sparse file left out, until `visit` says false.
    void eachStretch(const std::function<bool(std::uint64_t begin, std::uint64_t end)>& visit) const;

private:
    int descriptor_;
    std::uint64_t size_ = 0;
};

//! Whether the definition of any table of a book stands somewhere in the file: without one nothing can be read of it.
bool holdsTables(const RawFile& file);

//! The size of the file's pages, 512 to 65536 bytes: as its header says, or, where that is destroyed, the smallest at which nearly as many
//! page starts look like ones as at the best (https://sqlite.org/fileformat2.html sections 1.3.2 and 1.6).
std::uint32_t pageSizeOf(const RawFile& file);

//! Copies into a file that is there and empty; holes stay holes.
void copySparse(const RawFile& file, const std::filesystem::path& empty);

} // namespace winterlarder::book
